"""The events of a document shared out to its certificates: where another batch, certificate or malt begins."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field, replace

from importer.printed import Concern, PrintedHeader
from importer.reading.events import Event
from importer.vocabulary.text import bare

# What a head says of all batches below it.
SHARED = frozenset({"supplier", "malt", "certificate", "crop_year", "variety", "delivered_on", "order", "customer"})


@dataclass(slots=True)
class Part:
    """One certificate of a document: its events in reading order."""

    batch: str | None = None
    certificate: str | None = None
    malt: str | None = None
    events: list[Event] = field(default_factory=list)
    since_figure: list[Event] = field(default_factory=list)
    has_figures: bool = False


def parts_of(events: Sequence[Event]) -> list[Part]:
    """Parts the events where another batch, certificate or malt begins after figures have been read."""
    parts: list[Part] = [Part()]
    for number, event in enumerate(events):
        part = parts[-1]
        header = event.header
        if header is not None and event.lane is None and _begins(part, header, events[number + 1 :]):
            if header.key == "batch" and _is_foot(part, header, events[number + 1 :]):
                part.events = [_of_page(e, header) for e in part.events]
            fresh = Part(events=list(part.since_figure))
            part.events = part.events[: len(part.events) - len(part.since_figure)]
            for moved in fresh.events:
                if moved.header is not None:
                    _note(fresh, moved.header)
            parts.append(fresh)
            part = fresh
        part.events.append(event)
        part.since_figure.append(event)
        if header is not None and event.lane is None:
            _note(part, header)
        if event.figure is not None:
            part.has_figures = True
            part.since_figure = []
    parts = [part for part in parts if part.events]
    return [parts[0], *(_with_shared(part, parts[0]) for part in parts[1:])] if parts else []


def _with_shared(part: Part, first: Part) -> Part:
    """A part that is one of several batches under one head, with what the head said before the first batch."""
    own = {e.header.key for e in part.events if e.header is not None and e.header.caption}
    pages = {event.place.page for event in first.events}
    if own & SHARED or part.events[0].place.page not in pages:
        return part
    head: list[Event] = []
    for event in first.events:
        if event.figure is not None or (event.header is not None and event.header.key == "batch"):
            break
        if event.header is not None and event.header.key in SHARED and not _says_otherwise(part, event.header):
            head.append(event)
    part.events = [*head, *part.events]
    return part


def _says_otherwise(part: Part, header: PrintedHeader) -> bool:
    """True where a part names another malt or maltster than the head of the sheet, though without a caption."""
    said = [e.header for e in part.events if e.header is not None and e.header.key == header.key]
    return any(bare(other.text) != bare(header.text) for other in said)


def _is_foot(part: Part, header: PrintedHeader, later: Sequence[Event]) -> bool:
    """True for another batch number below all figures of a page that names no batch above them."""
    on_page = [event for event in part.events if event.place.page == header.page]
    named = any(event.header is not None and event.header.key == "batch" for event in on_page)
    return not named and not _has_figures(header.page, later)


def _has_figures(page: int, events: Sequence[Event]) -> bool:
    return any(event.figure is not None and event.place.page == page for event in events)


def _of_page(event: Event, header: PrintedHeader) -> Event:
    """A figure of the page at whose foot another batch is named, in doubt."""
    if event.figure is None or event.place.page != header.page:
        return event
    concern = Concern("label-doubtful", f"The foot of its page names another batch, “{header.text}”.")
    return replace(event, figure=replace(event.figure, doubts=(*event.figure.doubts, concern)))


def _note(part: Part, header: PrintedHeader) -> None:
    text = bare(header.text)
    if header.key == "batch" and part.batch is None:
        part.batch = text
    elif header.key == "certificate" and part.certificate is None:
        part.certificate = text
    elif header.key == "malt" and part.malt is None:
        part.malt = text


def _begins(part: Part, header: PrintedHeader, later: Sequence[Event]) -> bool:
    if not part.has_figures:
        return False
    text = bare(header.text)
    if header.key == "batch":
        return part.batch is not None and part.batch != text
    if header.key == "certificate" and header.sure:
        return part.certificate is not None and part.certificate != text
    if header.key == "malt" and header.caption and header.sure:
        apart = not _has_figures(header.page, part.events)
        # Malts without numbers may stand below each other on a page.
        follows = part.batch is None and _has_figures(header.page, later)
        return part.malt is not None and part.malt != text and (apart or follows)
    return False
