"""Free lines, outside of any table: "Label: value unit", dotted leaders, and header entries in any block form."""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from dataclasses import replace

from importer.layout.cards import Card
from importer.layout.lines import Line
from importer.layout.terms import Terms
from importer.printed import Concern, PrintedFigure, PrintedHeader
from importer.reading.entries import entries_inside, header_event
from importer.reading.events import Event, Place
from importer.reading.inside import Inside, plain_value, value_inside
from importer.reading.listed import value_parts
from importer.reading.numbers import is_word
from importer.reading.panels import SEVERAL_RESULTS
from importer.reading.pieces import Piece, joined, pieces_of, running_lines
from importer.reading.readings import readings_at, unread_beside
from importer.reading.rows import clean_label
from importer.reading.running_text import told_events
from importer.reading.surroundings import is_of_another, of_other_kind
from importer.reading.under import has_unit, more_below, nearer_above, value_under
from importer.reading.years import heads_harvest
from importer.vocabulary.captions import document_title
from importer.vocabulary.malt_names import is_malt_name
from importer.vocabulary.statements import heads_another_sample, names_another_sample
from importer.words import Box, Page

NAME_BEHIND = "The name was found behind the value; it may belong to another value."
# A value with more words behind it is a sentence.
MOST_WORDS = 8
_NUMBERS = re.compile(r"[<>≤≥~]?\s?\d[\d.,]*\s.*\d")
NAME_UNDER = "The name was found under the value; it may belong to another value."
_RUNNING_NUMBER = re.compile(r"^\d{1,2}\s+(?=[^\W\d_])")


def free_events(
    lines: Sequence[Line], used: frozenset[int], page: Page, terms: Terms, later: bool = False
) -> list[Event]:
    """Header entries and figures of the lines that no table has taken. ``later``: the sheet has figures before them."""
    events: list[Event] = []
    silent: list[int] = []
    section: tuple[str, ...] = ()
    concern: Concern | None = None
    read_on = 0
    for number, line in enumerate(lines):
        if number in used:
            section, concern = (), None
            continue
        if number < read_on:
            continue
        running = running_lines(lines, number, used, terms)
        if running:
            read_on = number + running
            line = joined(lines[number:read_on])
        heading = _heading(line, terms)
        if heading is None and (later or any(event.figure for event in events)):
            heading = _named_heading(line, terms)
        if heading is not None:
            section = (heading,)
        if heading is not None or (len(line.cells) == 1 and line.text.rstrip().endswith(":")):
            concern = of_other_kind((line.text,), terms, later or any(event.figure for event in events))
        parts = pieces_of(line, terms)
        told = [list(_line_events(pieces, line, number, lines, used, page, terms, section)) for pieces in parts]
        if len(parts) > 1:
            told = _with_unknown(parts, told, line, page, section)
        found = [event for events in told for event in events]
        events += [_doubted(event, concern) for event in found] if concern is not None else found
        # Captions beside their entries are no sentence.
        if not any(event.figure or (event.header and len(line.cells) > 1) for event in found):
            silent.append(number)
    return [*events, *told_events(lines, silent, page, terms)]


def card_events(cards: Sequence[Card], page: Page, terms: Terms) -> list[Event]:
    """Figures whose names stand under them, in doubt."""
    events: list[Event] = []
    for card in cards:
        name, value = Piece(card.name.text, card.name, False), Piece(card.value.text, card.value, False)
        event, _ = _figure(clean_label(name.text), name, [name, value], 0, card.line, page, terms, ())
        if event.figure is not None and card.limit:
            event = replace(event, figure=replace(event.figure, spec=card.limit))
        events.append(_in_doubt(event, NAME_UNDER))
    return events


def _with_unknown(
    parts: Sequence[Sequence[Piece]], told: Sequence[list[Event]], line: Line, page: Page, section: tuple[str, ...]
) -> list[list[Event]]:
    """The events of a list of results with those of its entries that nothing was made of ("on 7/64 68.1 %"). A caption
    heads what follows it, up to the next."""
    taken = [event.figure.box for events in told for event in events if event.figure is not None]
    more: list[list[Event]] = []
    head: tuple[str, ...] = ()
    for pieces, events in zip(parts, told, strict=True):
        found = list(events)
        for piece in pieces:
            if piece.colon:
                head = (clean_label(piece.text),)
                continue
            value = plain_value(piece)
            if value is not None and not any(_overlap(value.box, box) for box in taken):
                found.append(_inside_event(value, piece, line, page, (*section, *head)))
        more.append(found)
    return more if sum(event.figure is not None for events in more for event in events) > 1 else list(told)


def _overlap(a: Box, b: Box) -> bool:
    return min(a.x1, b.x1) > max(a.x0, b.x0) and min(a.bottom, b.bottom) > max(a.top, b.top)


def box_events(rows: Sequence[Line], page: Page, terms: Terms) -> list[Event]:
    """Figures and header entries of boxes that hold a name and its value each, known or not."""
    events: list[Event] = []
    for line in rows:
        name, value = (Piece(cell.text, cell, False) for cell in line.cells)
        label = _label_of(name, terms)
        if terms.is_label(label) or (terms.caption(label) is None and terms.is_value(value.text)):
            events.append(_figure(label, name, [name, value], 0, line, page, terms, ())[0])
        else:
            events += _line_events([name, value], line, 0, [line], frozenset(), page, terms, ())
    return events


def _heading(line: Line, terms: Terms) -> str | None:
    """The text of a lone short cell that could head the lines below it."""
    if len(line.cells) != 1:
        return None
    text = clean_label(line.cells[0].text)
    words = len(text.split())
    if not text or ":" in text:
        return None
    other = is_of_another(text, terms) or heads_harvest(text, terms) or terms.is_other_matter(text)
    if other and words <= MOST_WORDS and not terms.is_label(text):
        return text
    return None if words > 5 or any(c.isdigit() for c in text) or terms.caption(text) else text


def _named_heading(line: Line, terms: Terms) -> str | None:
    """The text of a line that says whose figures follow ("Second opinion: Laboratory Westing")."""
    words, colon, rest = line.text.partition(":")
    other = bool(colon) and len(line.cells) == 1 and heads_another_sample(words) and not terms.is_label(words)
    plain = rest.strip() and not terms.is_value(rest) and len(line.text.split()) <= MOST_WORDS
    return line.text.strip() if other and plain else None


def _line_events(
    pieces: Sequence[Piece],
    line: Line,
    number: int,
    lines: Sequence[Line],
    used: frozenset[int],
    page: Page,
    terms: Terms,
    section: tuple[str, ...],
) -> Iterator[Event]:
    i = 0
    while i < len(pieces):
        piece = pieces[i]
        following = pieces[i + 1] if i + 1 < len(pieces) else None
        label = _label_of(piece, terms)
        own = _own_value(piece, following, terms)
        if own is not None:
            yield _inside_event(own, piece, line, page, section)
            i += 1
            continue
        if terms.is_label(label) and following is not None and _follows(piece, following, terms):
            event, step = _figure(label, piece, pieces, i, line, page, terms, section)
            yield event
            i += step
            continue
        after = pieces[i + 2] if i + 2 < len(pieces) else None
        if (
            terms.is_label(label)
            and following is not None
            and after is not None
            and _unit_first(following, after, terms)
        ):
            swapped = [piece, Piece(f"{after.text} {following.text}", after.cell, False), *pieces[i + 3 :]]
            event, step = _figure(label, piece, swapped, 0, line, page, terms, section)
            yield event
            i += step + 1
            continue
        if _is_value_first(piece, following, after, terms):
            assert following is not None
            name = clean_label(following.text)
            event, _ = _figure(name, following, [following, piece], 0, line, page, terms, section)
            yield _in_doubt(event, NAME_BEHIND)
            i += 2
            continue
        basis = plain_value(following) if piece.colon and following is not None and terms.is_label(label) else None
        if basis is not None and terms.basis(basis.label) is not None:
            # "Extract: as is 296 L°/kg; dry 306 L°/kg"
            assert following is not None
            yield _inside_event(basis, following, line, page, (*section, label))
            i += 2
            continue
        alone = value_inside(piece, terms) if not piece.colon else None
        if alone is not None:
            yield _inside_event(alone, piece, line, page, section)
            i += 1
            continue
        title = not piece.colon and not terms.is_sure_caption(label) and document_title(label) is not None
        named = not piece.colon and is_malt_name(label)
        caption = None if title or named else terms.caption(label)
        under = value_under(piece.cell, label, line, number, lines, used, terms)
        if under is not None and (following is None or not terms.is_value(following.text)):
            figure, _ = _figure(label, piece, [piece, Piece(under.text, under, False)], 0, line, page, terms, section)
            unsure = more_below(under, lines, used, terms) or nearer_above(
                piece.cell, under, line, number, lines, terms
            )
            yield _in_doubt(figure, SEVERAL_RESULTS) if unsure else figure
            i += 1
            continue
        if caption is not None and not (terms.is_label(label) and not piece.colon and following is None):
            entry, step = header_event(caption, label, pieces, i, line, number, lines, used, terms)
            if entry is not None:
                yield entry
                taken = entry.header.text if entry.header is not None else ""
                if caption == "malt" and following is not None and taken != following.text:
                    # "Subject: lot 24-0815 Pale ale malt"
                    yield from _entry_inside(following, line, terms)
            elif following is not None and not following.colon:
                yield from _entry_inside(following, line, terms)
            i += step
            continue
        if following is not None and _is_unknown_result(piece, following, label, terms):
            event, step = _figure(label, piece, pieces, i, line, page, terms, section)
            yield event
            i += step
            continue
        if piece.colon and caption is None and following is not None and not following.colon:
            # What stands behind an unknown caption is its entry, no caption itself; it may head a list of results.
            i += 1
            piece = following
            listed = value_inside(piece, terms)
            if listed is not None:
                yield _inside_event(listed, piece, line, page, (*section, label))
                i += 1
                continue
        if not piece.colon and caption is None:
            yield from _entry_inside(piece, line, terms)
        i += 1


def _own_value(piece: Piece, following: Piece | None, terms: Terms) -> Inside | None:
    """The value within a piece that holds a name as well, beside another such piece ("Friability 86 %  pH 5.9")."""
    if following is None or piece.colon or following.colon or not following.text[:1].isalpha():
        return None
    numbers = all(any(map(str.isdigit, text)) for text in (piece.text, following.text))
    return value_inside(piece, terms) if numbers and value_inside(following, terms) is not None else None


def _entry_inside(piece: Piece, line: Line, terms: Terms) -> Iterator[Event]:
    """An entry among other words ("Analysis of lot 24-0815")."""
    if names_another_sample(line.text):
        return
    for key, text, value in entries_inside(piece, terms):
        # The malt may stand beside its harvest in the same words.
        year = next((word.box for word in piece.cell.words if key == "crop_year" and value in word.text), None)
        box, confidence = year or piece.cell.box, piece.cell.confidence
        found = PrintedHeader(key, text, value, line.page, box, sure=False, confidence=confidence)
        yield Event(Place(line.page, line.box.middle, box.x0), header=found)


def _label_of(piece: Piece, terms: Terms) -> str:
    """The text as a label; a bare running number before a known name is taken off ("20 Moisture")."""
    label = clean_label(piece.text)
    match = _RUNNING_NUMBER.match(label)
    if match and terms.is_label(label[match.end() :]):
        return label[match.end() :]
    return label


def _is_value_first(piece: Piece, following: Piece | None, after: Piece | None, terms: Terms) -> bool:
    """True for "4.5 %  Moisture": a value with its unit before the name, and nothing behind it."""
    if following is None or piece.colon or following.colon or not has_unit(piece.text, terms):
        return False
    return terms.is_label(clean_label(following.text)) and (after is None or has_unit(after.text, terms))


def _in_doubt(event: Event, reason: str) -> Event:
    return _doubted(event, Concern("label-doubtful", reason))


def _doubted(event: Event, concern: Concern) -> Event:
    if event.figure is None:
        return event
    return replace(event, figure=replace(event.figure, doubts=(*event.figure.doubts, concern)))


def _unit_first(unit: Piece, value: Piece, terms: Terms) -> bool:
    """True for "% 4.5" behind a name."""
    return not value.colon and terms.is_unit(unit.text) and terms.is_value(value.text)


def _is_unknown_result(piece: Piece, following: Piece, label: str, terms: Terms) -> bool:
    """True for a value with a unit behind a caption that is not known: it must not vanish."""
    led = piece.colon or following.cell.after_leader
    if label.count("(") != label.count(")"):
        return False
    return led and not following.colon and has_unit(following.text, terms) and len(label.split()) <= 8


def _follows(piece: Piece, following: Piece, terms: Terms) -> bool:
    """True for a result behind its name, and for words among several numbers behind a colon ("4.3 against 5.0 %")."""
    if following.colon or _is_result(following, terms):
        return not following.colon
    led = piece.colon or following.cell.after_leader
    return led and len(following.text.split()) <= MOST_WORDS and _NUMBERS.match(following.text) is not None


def _is_result(piece: Piece, terms: Terms) -> bool:
    """True for something that can be the result of the label before it: a value, or a short word ("clear")."""
    if terms.is_value(piece.text) or is_word(piece.text):
        return True
    return (
        len(piece.text.split()) <= 3
        and not terms.is_label(piece.text)
        and not terms.is_unit(piece.text)
        and (not any(c.isdigit() for c in piece.text))
    )


def _figure(
    label: str,
    piece: Piece,
    pieces: Sequence[Piece],
    at: int,
    line: Line,
    page: Page,
    terms: Terms,
    section: tuple[str, ...],
) -> tuple[Event, int]:
    following = pieces[at + 1]
    parts = value_parts(following.text)
    unit, spec = parts.unit, parts.spec
    box = following.cell.box
    step = 2
    while at + step < len(pieces) and not pieces[at + step].colon:
        extra = pieces[at + step]
        if unit is None and terms.is_unit(extra.text):
            unit = extra.text
        elif (
            not (spec or parts.low)
            and terms.is_value(extra.text)
            and re.search(r"[<>≤≥]|max|min|\d\s*[-–]\s*\d", extra.text, re.I)
        ):
            spec = extra.text.strip("()[] ")
        else:
            break
        step += 1
    rival = pieces[at + step] if at + step < len(pieces) else None
    several = rival is not None and not rival.colon and terms.is_value(rival.text) and not terms.is_label(rival.text)
    doubts = (Concern("label-doubtful", SEVERAL_RESULTS),) if several else ()
    figure = PrintedFigure(
        label=label,
        value=parts.value,
        unit=unit,
        page=line.page,
        box=box,
        label_box=piece.cell.box,
        method=parts.method,
        low=parts.low,
        high=parts.high,
        spec=spec,
        section=section,
        confidence=following.cell.confidence,
        second=readings_at(page, box),
        doubts=(*doubts, *unread_beside(page, box)),
    )
    return Event(Place(line.page, line.box.middle, box.x0), figure), step


def _inside_event(found: Inside, piece: Piece, line: Line, page: Page, section: tuple[str, ...]) -> Event:
    parts = value_parts(found.text)
    several = (Concern("label-doubtful", f"{SEVERAL_RESULTS} It also holds {found.rival}."),) if found.rival else ()
    figure = PrintedFigure(
        label=found.label,
        value=parts.value,
        unit=parts.unit,
        page=line.page,
        box=found.box,
        label_box=piece.cell.box,
        method=parts.method,
        low=parts.low,
        high=parts.high,
        spec=parts.spec,
        section=section,
        confidence=piece.cell.confidence,
        second=readings_at(page, found.box),
        doubts=(*several, *unread_beside(page, found.box)),
        rivals=(found.rival,) if found.rival else (),
    )
    return Event(Place(line.page, line.box.middle, found.box.x0), figure)
