"""Supplier and malt where no caption names them: from the letterhead and the title of a sheet."""

from __future__ import annotations

import re
from collections.abc import Sequence
from statistics import median

from importer.layout.lines import Cell, Line, make_cell, page_em
from importer.layout.terms import Terms
from importer.printed import PrintedHeader
from importer.reading.events import Event, Place
from importer.vocabulary.captions import beside_title, document_title, family_statement, looks_like_batch
from importer.vocabulary.malt_names import (
    fold,
    has_legal_form,
    has_word,
    is_legal_form,
    name_words,
    names_malt,
    names_one_malt,
)
from importer.words import Page

# Letterheads and titles stand in this share of the page, from its top.
TOP = 0.42
# The last lines of a page are its foot below this share of it.
FOOT = 0.6
MAX_WORDS = 7
# A maltster's word at the top of a page may be a caption ("Malting batch"): larger or bold type speaks for a name.
SURE_COMPANY = 2.4
# Names in type this much larger than the page's may be spaced out, by at most so much of their size.
LARGE, SPACED = 1.2, 1.6
# Lines of one name stand no farther from each other than this (em).
TIGHT = 0.35
# Boxes of ink differ by their letters: so many times higher is larger type.
LARGER_LETTERS = 1.25
_BESIDE_NUMBER = re.compile(r"[,;:()]|\s[–—-]\s")
_PARTS = re.compile(r"\s+[–—|·•-]\s+|:\s+|,\s+")


def _is_other(text: str, terms: Terms) -> bool:
    """True for a text that names neither a company nor a malt: a title, a head, a caption, a note on methods."""
    return (
        terms.is_label(text)
        or bool(terms.roles(text))
        or terms.caption(text) is not None
        or document_title(text) is not None
        or family_statement(text) is not None
    )


def letterhead_events(page: Page, lines: Sequence[Line], events: Sequence[Event], terms: Terms) -> list[Event]:
    """A supplier and a malt for a page whose header entries do not name them."""
    known = {event.header.key for event in events if event.header is not None}
    taken = {event.header.box for event in events if event.header is not None}
    usual = page_em(page)
    cells = [
        (cell, line)
        for line in lines
        if line.box.top < TOP * page.height
        for cell in _spaced_out(line, usual)
        if cell.box not in taken
    ]
    found: list[Event] = []
    if "supplier" not in known:
        found += _supplier(cells, page, terms) or _supplier_at_foot(page, lines, terms)
    if "malt" not in known:
        found += _malt(cells, page, terms)
    return found


def _spaced_out(line: Line, usual: float) -> list[Cell]:
    """The cells of a line, with the words of a name in large and widely spaced type as one."""
    cells: list[Cell] = []
    for cell in line.cells:
        size = cell.words[0].size
        before = cells[-1] if cells else None
        if (
            before is not None
            and size > LARGE * usual
            and before.words[-1].size == size
            and cell.box.x0 - before.box.x1 < SPACED * size
        ):
            cells[-1] = make_cell([*before.words, *cell.words])
        else:
            cells.append(cell)
    return cells


def page_titles(page: Page, lines: Sequence[Line], terms: Terms) -> tuple[str, ...]:
    """Titles at the head of a page, in larger type than its text; a company's name is none."""
    top = [line for line in lines if line.box.top < TOP * page.height]
    usual = sorted(line.em for line in lines)[len(lines) // 2] if lines else 10.0
    return tuple(
        line.cells[0].text
        for line in top
        if len(line.cells) == 1
        and line.em > 1.15 * usual
        and not _is_company(line.cells[0].text)
        and not terms.is_label(line.cells[0].text)
    )


def _supplier_at_foot(page: Page, lines: Sequence[Line], terms: Terms) -> list[Event]:
    """In doubt, the maltster with the form of the company that the address at the foot of a page begins with."""
    for line in lines[-2:]:
        for cell in line.cells if line.box.top > FOOT * page.height else ():
            name = _PARTS.split(cell.text.strip())[0]
            short = len(name.split()) <= MAX_WORDS and not any(c.isdigit() for c in name)
            if short and has_legal_form(name) and _is_maltster(name) and not _is_other(name, terms):
                return [_event("supplier", name, cell, page, sure=False)]
    return []


def _is_maltster(text: str) -> bool:
    return any(word in fold(text) for word in name_words().maltsters)


def _supplier(cells: Sequence[tuple[Cell, Line]], page: Page, terms: Terms) -> list[Event]:
    best: tuple[float, Cell] | None = None
    for cell, line in cells:
        text = cell.text.strip()
        folded = fold(text)
        if len(text.split()) > MAX_WORDS or ":" in text or any(c.isdigit() for c in text) or _is_other(text, terms):
            continue
        maltster = any(word in folded for word in name_words().maltsters)
        legal = has_legal_form(text)
        score = 2.0 * maltster + 1.0 * legal
        if score and not (legal and len(text.split()) < 2):
            score += (
                0.8 * _is_large(cell, line, cells, page, 1.2)
                + 0.4 * cell.bold
                + 0.3 * (cell.box.top < 0.15 * page.height)
            )
            if best is None or score > best[0]:
                best = (score, cell)
    if best is None or best[0] < 1.5:
        return []
    name = _without_caption(_company_in(best[1].text.strip()), terms)
    if best[1].text.strip() == name and not has_legal_form(name):
        name = f"{name} {_rest_below(best[1], cells, terms)}".strip()
    return [_event("supplier", name, best[1], page, sure=best[0] >= SURE_COMPANY)]


def _rest_below(cell: Cell, cells: Sequence[tuple[Cell, Line]], terms: Terms) -> str:
    """The end of a name that goes on in the line below, in the same type and with the form of the company."""
    for other, line in cells:
        if len(line.cells) > 1 or not 0 <= other.box.top - cell.box.bottom + TIGHT * line.em <= 2 * TIGHT * line.em:
            continue
        alike = other.words[0].size == cell.words[0].size and other.bold == cell.bold
        level = abs(other.box.x0 - cell.box.x0) < TIGHT * line.em or abs(other.box.centre - cell.box.centre) < line.em
        text = other.text.strip()
        plain = len(text.split()) <= MAX_WORDS and not any(c.isdigit() for c in text) and not _is_other(text, terms)
        if alike and level and plain and has_legal_form(text) and "," not in text:
            return text
    return ""


def _company_in(text: str) -> str:
    """The part of a text with a maltster's word, and the form of the company behind it ("Sladovna Hradec, a.s.")."""
    marks = [(mark.start(), mark.end()) for mark in _PARTS.finditer(text)]
    named = list(zip([0, *(b for _, b in marks)], [*(a for a, _ in marks), len(text)], strict=True))
    part = next(((a, b) for a, b in named if any(w in fold(text[a:b]) for w in name_words().maltsters)), None)
    if part is None:
        return text
    start, end = part
    behind = [(a, b) for a, b in named if a > end]
    if behind and text[end : behind[0][0]].strip() == "," and is_legal_form(text[behind[0][0] : behind[0][1]]):
        end = behind[0][1]
    return text[start:end]


def _without_caption(name: str, terms: Terms) -> str:
    """ "Malt made by Ashgrove Maltings Ltd" without the words that say whose name it is."""
    words = name.split()
    for n in range(len(words) - 2, 1, -1):
        rest = " ".join(words[n:])
        if terms.caption(" ".join(words[:n])) == "supplier" and any(w in fold(rest) for w in name_words().maltsters):
            return rest
    return name


def _usual(cells: Sequence[tuple[Cell, Line]]) -> float:
    sizes = sorted(line.em for _, line in cells)
    return sizes[len(sizes) // 2] if sizes else 10.0


def _is_large(cell: Cell, line: Line, cells: Sequence[tuple[Cell, Line]], page: Page, times: float) -> bool:
    """Whether the type of a cell is so many times larger than the usual one; on a scan the letters have to show it."""
    if page.reading != "ocr":
        return line.em > times * _usual(cells)
    # The lowest word of a name has no long letters, which would make its type seem larger.
    usual = median(word.box.height for word in page.words)
    return min(word.box.height for word in cell.words) > max(times, LARGER_LETTERS) * usual


def _malt(cells: Sequence[tuple[Cell, Line]], page: Page, terms: Terms) -> list[Event]:
    best: tuple[float, str, Cell] | None = None
    for cell, line in cells:
        for part in _PARTS.split(cell.text.strip()):
            text = _without_of(part)
            folded = fold(text)
            if not text or len(text.split()) > 5 or _is_other(text, terms) or _is_company(text):
                continue
            if not names_malt(text) or has_word(folded, name_words().not_malts):
                continue
            if folded in name_words().stems or any(map(looks_like_batch, text.split())):
                continue
            score = 1.0 + _is_large(cell, line, cells, page, 1.1) + 0.5 * cell.bold
            if best is None or score > best[0]:
                best = (score, text, cell)
    if best is None:
        return _malt_in_title(cells, page, terms)
    # A title may have words for malt; a kind of malt makes it the name of one.
    named = has_word(fold(best[1]), name_words().malts)
    return [_event("malt", best[1], best[2], page, sure=best[0] >= 2.0 and named)]


def _malt_in_title(cells: Sequence[tuple[Cell, Line]], page: Page, terms: Terms) -> list[Event]:
    """The malt that titles hold beside the name of the document ("Test report Pilsner malt"), where it is only one."""
    named: dict[str, Event] = {}
    for cell, _ in cells:
        rests = [_without_of(rest) for part in _PARTS.split(cell.text.strip()) for rest in beside_title(part)]
        # More of the title than its shortest name may be left over, so that the malt has its word ("Pilsner malt").
        for text in sorted(rests, key=len, reverse=True):
            if names_one_malt(text) and len(_stems(text)) <= 1 and not (_is_other(text, terms) or _is_company(text)):
                named.setdefault(fold(text), _event("malt", text, cell, page, sure=False))
                break
    return list(named.values()) if len(named) == 1 else []


def _without_of(text: str) -> str:
    return re.sub(r"^(for|of|für|von|de|du|van|di)\s+", "", text.strip(" ,;:–—-"), flags=re.IGNORECASE)


def _stems(text: str) -> list[str]:
    return [word for word in re.findall(r"\w+", fold(text)) if word.endswith(name_words().stems)]


def names_above_batches(page: Page, lines: Sequence[Line], events: Sequence[Event], terms: Terms) -> list[Event]:
    """Maltsters and malts that lone lines name between the figures of one batch and the number of the next.

    They are in doubt; what the head of the sheet says of all its batches does not hold where they say otherwise.
    """
    figures = sorted(event.place.y for event in events if event.figure is not None)
    found: list[Event] = []
    for event in events:
        if event.header is None or event.header.key != "batch" or event.lane is not None:
            continue
        above = max((y for y in figures if y < event.place.y), default=None)
        if above is None:
            continue
        for line in lines:
            if line.box.top < event.place.y < line.box.bottom:
                texts = _BESIDE_NUMBER.split(line.text)
                found += [e for text in texts for e in _named_in(text.strip(), line.cells[0], page, terms)]
            elif len(line.cells) == 1 and above < line.box.middle < event.place.y:
                found += _named_in(line.text.strip(), line.cells[0], page, terms)
    return found


def _named_in(text: str, cell: Cell, page: Page, terms: Terms) -> list[Event]:
    if len(text.split()) > MAX_WORDS or ":" in text or terms.is_label(text) or terms.roles(text):
        return []
    text = _without_caption(text, terms)
    if _is_company(text):
        return [_event("supplier", text, cell, page, sure=False)] if not _is_other(text, terms) else []
    # "Wheat malt" sounds like a caption of the grain.
    return [_event("malt", text, cell, page, sure=False)] if names_one_malt(text) else []


def _is_company(text: str) -> bool:
    return any(word in fold(text) for word in name_words().maltsters) or has_legal_form(text)


def _event(key: str, text: str, cell: Cell, page: Page, sure: bool) -> Event:
    entry = PrintedHeader(key, "", text, page.number, cell.box, sure=sure, confidence=cell.confidence)
    return Event(Place(page.number, cell.box.middle, cell.box.x0), header=entry)
