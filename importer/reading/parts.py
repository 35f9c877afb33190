"""The events of a document shared out to its certificates: where another batch, certificate or malt begins."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass, field

from importer.printed import PrintedHeader
from importer.reading.events import Event

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
    for event in events:
        part = parts[-1]
        header = event.header
        if header is not None and event.lane is None and _begins(part, header):
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
        if event.header is not None and event.header.key in SHARED:
            head.append(event)
    part.events = [*head, *part.events]
    return part


def _note(part: Part, header: PrintedHeader) -> None:
    text = _plain(header.text)
    if header.key == "batch" and part.batch is None:
        part.batch = text
    elif header.key == "certificate" and part.certificate is None:
        part.certificate = text
    elif header.key == "malt" and part.malt is None:
        part.malt = text


def _plain(text: str) -> str:
    return re.sub(r"\W+", "", text).casefold()


def _begins(part: Part, header: PrintedHeader) -> bool:
    if not part.has_figures:
        return False
    text = _plain(header.text)
    if header.key == "batch":
        return part.batch is not None and part.batch != text
    if header.key == "certificate" and header.sure:
        return part.certificate is not None and part.certificate != text
    if header.key == "malt" and header.caption and header.sure:
        of_page = any(e.figure is not None and e.place.page == header.page for e in part.events)
        return part.malt is not None and part.malt != text and not of_page
    return False
