"""Free lines, outside of any table: "Label: value unit", dotted leaders, and header entries in any block form."""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace

from importer.layout.lines import Cell, Line, make_cell
from importer.layout.terms import Terms
from importer.printed import Concern, PrintedFigure, PrintedHeader
from importer.reading.events import Event, Place
from importer.reading.panels import SEVERAL_RESULTS
from importer.reading.rows import clean_label, readings_at, unread_beside
from importer.reading.running_text import told_events
from importer.reading.under import below, has_unit, more_below, value_under
from importer.reading.values import split_value
from importer.vocabulary.captions import document_title, looks_like_batch
from importer.words import Box, Page

NAME_BEHIND = "The name was found behind the value; it may belong to another value."
_RUNNING_NUMBER = re.compile(r"^\d{1,2}\s+(?=[^\W\d_])")
_MAX_CAPTION_WORDS = 6
_SENTENCE_WORDS = 11
_SIGNS = (":", "：", "=", "|")


@dataclass(frozen=True, slots=True)
class _Piece:
    """A part of a line: a caption that ended with a colon (or stands alone), or plain text."""

    text: str
    cell: Cell
    colon: bool


def free_events(lines: Sequence[Line], used: frozenset[int], page: Page, terms: Terms) -> list[Event]:
    """Header entries and figures of the lines that no table has taken."""
    events: list[Event] = []
    silent: list[int] = []
    section: tuple[str, ...] = ()
    for number, line in enumerate(lines):
        if number in used:
            section = ()
            continue
        heading = _heading(line, terms)
        if heading is not None:
            section = (heading,)
        pieces = _pieces(line, terms)
        found = list(_line_events(pieces, line, number, lines, used, page, terms, section))
        events += found
        if not found:
            silent.append(number)
    return [*events, *told_events(lines, silent, page, terms)]


def _heading(line: Line, terms: Terms) -> str | None:
    """The text of a lone short cell that could head the lines below it."""
    if len(line.cells) != 1:
        return None
    text = clean_label(line.cells[0].text)
    if not text or ":" in text or len(text.split()) > 5 or any(c.isdigit() for c in text) or terms.caption(text):
        return None
    return text


def _pieces(line: Line, terms: Terms) -> list[_Piece]:
    """Cuts the cells of a line at colons; the caption before a colon is parted from the words before it."""
    pieces: list[_Piece] = []
    for cell in line.cells:
        if cell.text in _SIGNS and pieces:
            # A colon or an equals sign set apart from its caption; a stroke between two entries.
            pieces[-1] = _Piece(pieces[-1].text, pieces[-1].cell, cell.text != "|")
            continue
        run: list[int] = []
        for i, word in enumerate(cell.words):
            if not run and word.text in (":", "：") and pieces and pieces[-1].colon:
                continue
            run.append(i)
            if (word.text.endswith((":", "：")) and len(word.text) > 1) or word.text in (":", "：", "="):
                caption = _caption_tail(cell, run, terms)
                rest = run[: len(run) - len(caption)]
                if rest:
                    pieces.append(_piece(cell, rest, colon=False))
                pieces.append(_piece(cell, caption, colon=True))
                run = []
        if run:
            pieces.append(_piece(cell, run, colon=False))
    return pieces


def _piece(cell: Cell, indices: Sequence[int], colon: bool) -> _Piece:
    part = make_cell([cell.words[i] for i in indices], cell.after_leader and indices[0] == 0)
    if len(indices) == len(cell.words):
        part = Cell(cell.text, part.box, part.words, part.after_leader)
    text = part.text
    if colon:
        text = text.rstrip(":：= ")
    return _Piece(text.strip(), part, colon)


def _caption_tail(cell: Cell, run: Sequence[int], terms: Terms) -> list[int]:
    """The longest run of words before a colon that is a known caption or label; all of them where none is known."""
    if run[0] == 0 and cell.words and len(run) <= _MAX_CAPTION_WORDS:
        whole = " ".join(cell.words[i].text for i in run).rstrip(":：= ")
        if terms.caption(whole) or terms.is_label(whole):
            return list(run)
    for start in range(max(0, len(run) - _MAX_CAPTION_WORDS), len(run)):
        text = " ".join(cell.words[i].text for i in run[start:]).rstrip(":：= ")
        if terms.caption(text) or terms.is_label(text):
            return list(run[start:])
    return list(run)


def _line_events(
    pieces: Sequence[_Piece],
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
        if terms.is_label(label) and following is not None and not following.colon and _is_result(following, terms):
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
            swapped = [piece, _Piece(f"{after.text} {following.text}", after.cell, False), *pieces[i + 3 :]]
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
        alone = _value_inside(piece, terms) if not piece.colon else None
        if alone is not None:
            yield _inside_event(alone, piece, line, page, section)
            i += 1
            continue
        title = not piece.colon and not terms.is_sure_caption(label) and document_title(label) is not None
        caption = None if title else terms.caption(label)
        under = value_under(piece.cell, label, line, number, lines, used, terms)
        if under is not None and (following is None or not terms.is_value(following.text)):
            figure, _ = _figure(label, piece, [piece, _Piece(under.text, under, False)], 0, line, page, terms, section)
            yield _in_doubt(figure, SEVERAL_RESULTS) if more_below(under, lines, used, terms) else figure
            i += 1
            continue
        if caption is not None and not (terms.is_label(label) and not piece.colon and following is None):
            entry, step = _header(caption, label, pieces, i, line, number, lines, used, terms)
            if entry is not None:
                yield entry
            i += step
            continue
        if following is not None and _is_unknown_result(piece, following, label, terms):
            event, step = _figure(label, piece, pieces, i, line, page, terms, section)
            yield event
            i += step
            continue
        if not piece.colon and caption is None:
            inner = _caption_inside(piece, terms)
            if inner is not None:
                key, text, value = inner
                box, confidence = piece.cell.box, piece.cell.confidence
                found = PrintedHeader(key, text, value, line.page, box, sure=False, confidence=confidence)
                yield Event(Place(line.page, line.box.middle, box.x0), header=found)
        i += 1


def _label_of(piece: _Piece, terms: Terms) -> str:
    """The text as a label; a bare running number before a known name is taken off ("20 Moisture")."""
    label = clean_label(piece.text)
    match = _RUNNING_NUMBER.match(label)
    if match and terms.is_label(label[match.end() :]):
        return label[match.end() :]
    return label


def _is_value_first(piece: _Piece, following: _Piece | None, after: _Piece | None, terms: Terms) -> bool:
    """True for "4.5 %  Moisture": a value with its unit before the name, and nothing behind it."""
    if following is None or piece.colon or following.colon or not has_unit(piece.text, terms):
        return False
    return terms.is_label(clean_label(following.text)) and (after is None or has_unit(after.text, terms))


def _in_doubt(event: Event, reason: str) -> Event:
    if event.figure is None:
        return event
    concern = Concern("label-doubtful", reason)
    return replace(event, figure=replace(event.figure, doubts=(*event.figure.doubts, concern)))


def _unit_first(unit: _Piece, value: _Piece, terms: Terms) -> bool:
    """True for "% 4.5" behind a name."""
    return not value.colon and terms.is_unit(unit.text) and terms.is_value(value.text)


def _is_unknown_result(piece: _Piece, following: _Piece, label: str, terms: Terms) -> bool:
    """True for a value with a unit behind a caption that is not known: it must not vanish."""
    led = piece.colon or following.cell.after_leader
    return led and not following.colon and has_unit(following.text, terms) and len(label.split()) <= 8


def _is_result(piece: _Piece, terms: Terms) -> bool:
    """True for something that can be the result of the label before it: a value, or a short word ("clear")."""
    if terms.is_value(piece.text):
        return True
    return (
        len(piece.text.split()) <= 3
        and not terms.is_label(piece.text)
        and not terms.is_unit(piece.text)
        and (not any(c.isdigit() for c in piece.text))
    )


def _figure(
    label: str,
    piece: _Piece,
    pieces: Sequence[_Piece],
    at: int,
    line: Line,
    page: Page,
    terms: Terms,
    section: tuple[str, ...],
) -> tuple[Event, int]:
    following = pieces[at + 1]
    value, unit, spec = split_value(following.text)
    box = following.cell.box
    step = 2
    while at + step < len(pieces) and not pieces[at + step].colon:
        extra = pieces[at + step]
        if unit is None and terms.is_unit(extra.text):
            unit = extra.text
        elif not spec and terms.is_value(extra.text) and re.search(r"[<>≤≥]|max|min|\d\s*[-–]\s*\d", extra.text, re.I):
            spec = extra.text.strip("()[] ")
        else:
            break
        step += 1
    rival = pieces[at + step] if at + step < len(pieces) else None
    several = rival is not None and not rival.colon and terms.is_value(rival.text) and not terms.is_label(rival.text)
    doubts = (Concern("label-doubtful", SEVERAL_RESULTS),) if several else ()
    figure = PrintedFigure(
        label=label,
        value=value,
        unit=unit,
        page=line.page,
        box=box,
        label_box=piece.cell.box,
        spec=spec,
        section=section,
        confidence=following.cell.confidence,
        second=readings_at(page, box),
        doubts=(*doubts, *unread_beside(page, box)),
    )
    return Event(Place(line.page, line.box.middle, box.x0), figure), step


def _value_inside(piece: _Piece, terms: Terms) -> tuple[str, str, Box] | None:
    """A label and its value written without any gap ("Moisture 4.5 %"): the longest known label with a value behind."""
    words = piece.cell.words
    if not 2 <= len(words) <= _SENTENCE_WORDS or not any(c.isdigit() for c in piece.text):
        return None
    for cut in range(len(words) - 1, 0, -1):
        tail = " ".join(word.text for word in words[cut:])
        if not tail[:1].isdigit() and tail[:1] not in "<>≤≥+-–−":
            continue
        if words[cut - 1].text.endswith(","):
            continue
        head = clean_label(" ".join(word.text for word in words[:cut]))
        if terms.is_value(tail) and terms.is_label(head):
            box = words[cut].box
            for word in words[cut + 1 :]:
                box = box.union(word.box)
            return head, tail, box
    return None


def _inside_event(
    found: tuple[str, str, Box], piece: _Piece, line: Line, page: Page, section: tuple[str, ...]
) -> Event:
    label, text, box = found
    value, unit, spec = split_value(text)
    figure = PrintedFigure(
        label=label,
        value=value,
        unit=unit,
        page=line.page,
        box=box,
        label_box=piece.cell.box,
        spec=spec,
        section=section,
        confidence=piece.cell.confidence,
        second=readings_at(page, box),
        doubts=unread_beside(page, box),
    )
    return Event(Place(line.page, line.box.middle, box.x0), figure)


def _caption_inside(piece: _Piece, terms: Terms) -> tuple[str, str, str] | None:
    """A caption and its value in one run of words without a colon ("Batch 24-0815")."""
    words = piece.text.split()
    if not 2 <= len(words) <= _SENTENCE_WORDS:
        return None
    for start in range(len(words) - 1):
        for cut in range(min(len(words) - 1, start + 4), start, -1):
            caption, value = " ".join(words[start:cut]), words[cut].strip(",;()")
            if terms.is_sure_caption(caption) and terms.caption(caption) == "batch" and looks_like_batch(value):
                return "batch", caption, value
    for cut in range(min(len(words) - 1, 4), 0, -1):
        caption, value = " ".join(words[:cut]), " ".join(words[cut:])
        key = terms.caption(caption)
        if len(words) <= 6 and key in ("certificate", "crop_year", "order") and any(c.isdigit() for c in value):
            return key, caption, value
    return None


def _header(
    key: str,
    caption: str,
    pieces: Sequence[_Piece],
    at: int,
    line: Line,
    number: int,
    lines: Sequence[Line],
    used: frozenset[int],
    terms: Terms,
) -> tuple[Event | None, int]:
    """The entry of a caption: the text to its right, or the text below it where the right is another caption."""
    piece = pieces[at]
    following = pieces[at + 1] if at + 1 < len(pieces) else None
    step = 1
    value: Cell | None = None
    text = ""
    if following is not None and not following.colon and terms.caption(clean_label(following.text)) is None:
        value, text, step = following.cell, following.text, 2
        # The value of an inline entry may itself have been parted by a wide space.
        while at + step < len(pieces) and _continues(pieces, at + step, value, terms):
            text = f"{text} {pieces[at + step].text}"
            value = make_cell([*value.words, *pieces[at + step].cell.words])
            step += 1
    if value is None:
        value = below(piece.cell, line, number, lines, used, terms)
        text = value.text if value is not None else ""
    if value is None or key == "ignore" or not text.strip(" -–—_."):
        return None, step
    sure = terms.is_sure_caption(caption)
    entry = PrintedHeader(key, caption, text.strip(), line.page, value.box, sure=sure, confidence=value.confidence)
    return Event(Place(line.page, line.box.middle, piece.cell.box.x0), header=entry), step


def _continues(pieces: Sequence[_Piece], at: int, value: Cell, terms: Terms) -> bool:
    piece = pieces[at]
    if piece.colon or terms.caption(clean_label(piece.text)) or terms.is_label(piece.text):
        return False
    height = max(value.box.height, 1.0)
    return piece.cell.box.x0 - value.box.x1 < 1.0 * height
