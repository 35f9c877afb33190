"""Figures told in sentences ("moisture: target 4.5 %, found 4.8 %"): never certain, but never without a trace."""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence

from importer.layout.lines import Line, make_cell
from importer.layout.terms import Terms
from importer.printed import Concern, PrintedFigure
from importer.reading.events import Event, Place
from importer.reading.readings import readings_at, unread_beside
from importer.reading.rows import clean_label
from importer.reading.values import split_value
from importer.words import Page, Word

IN_A_SENTENCE = Concern("label-doubtful", "It was found in a sentence; whether it is the result is not known.")
LONGEST_LABEL = 6
LONGEST_VALUE = 3
# A value follows its name within this many words of a sentence.
REACH = 8
SHORT = 3
# A number without a unit stands closer.
NEAR = 4
_DECIMAL = re.compile(r"\d{1,3}[.,]\d{1,2}[.,;)]*")
# Lines of one text stand no farther from each other than this (em).
APART = 2.0
_PUNCTUATION = ".,;:()[]"


def told_events(lines: Sequence[Line], silent: Sequence[int], page: Page, terms: Terms) -> list[Event]:
    """Names with a value and unit somewhere behind them, on lines (by number) from which nothing else was taken.

    Lines that follow each other are one text, as sentences go on in the next line.
    """
    events: list[Event] = []
    run: list[int] = []
    for number in [*silent, -1]:
        if run and (number != run[-1] + 1 or _is_apart(lines[run[-1]], lines[number])):
            words = [word for i in run for cell in lines[i].cells for word in cell.words]
            events += _told(words, page, terms)
            run = []
        run.append(number)
    return events


def _is_apart(above: Line, below: Line) -> bool:
    """True for lines too far from each other for a sentence to go on."""
    return below.box.top - above.box.bottom > APART * max(above.em, below.em)


def _told(words: Sequence[Word], page: Page, terms: Terms) -> Iterator[Event]:
    at = 0
    while at < len(words):
        length = _label_at(words, at, terms)
        if not length or (length == 1 and _ends_code(words, at)):
            at += 1
            continue
        start = at + length
        names = (i for i in range(start, len(words)) if not _is_unit_of(words, i, terms) and _label_at(words, i, terms))
        end = next(names, len(words))
        found = _value_in(words, start, min(end, start + REACH), terms) or _bare_value_in(words, start, end, terms)
        at = start
        if found is not None:
            more = _values_in(words, found[1], end, terms)
            yield _event(words[start - length : start], words[found[0] : found[1]], more, page)
            at = found[1]


def _is_unit_of(words: Sequence[Word], at: int, terms: Terms) -> bool:
    """True for the unit of the number before it, which may be the name of a parameter elsewhere ("EBC")."""
    return words[at - 1].text[:1].isdigit() and terms.is_unit(words[at].text.strip(_PUNCTUATION))


def _ends_code(words: Sequence[Word], at: int) -> bool:
    """True for the last letters of a number plate and the like ("QB 498 TN")."""
    return at > 0 and len(words[at].text) <= SHORT and words[at - 1].text[-1:].isdigit()


def _text(words: Sequence[Word]) -> str:
    return " ".join(word.text for word in words).strip(_PUNCTUATION + " ")


def _label_at(words: Sequence[Word], at: int, terms: Terms) -> int:
    """How many words from here on are the name of a parameter; 0 where none begins."""
    if not terms.is_telling(words[at].text.strip(_PUNCTUATION)):
        return 0
    longest = 0
    for length in range(1, min(LONGEST_LABEL, len(words) - at) + 1):
        last = words[at + length - 1].text
        if last[:1].isdigit() or last in "<>≤≥=":
            break
        if terms.is_telling(last.strip(_PUNCTUATION)) and terms.is_label(clean_label(_text(words[at : at + length]))):
            longest = length
        if last.endswith((".", ";", ":")):
            break
    return longest


def _value_in(words: Sequence[Word], start: int, end: int, terms: Terms) -> tuple[int, int] | None:
    """The first run of words that is a number with a unit."""
    for i in range(start, end):
        for length in range(min(LONGEST_VALUE, len(words) - i), 0, -1):
            text = _text(words[i : i + length])
            unit = split_value(text)[1] if text[:1].isdigit() or text[:1] in "<>≤≥" else None
            if unit is not None and terms.is_unit(unit):
                return i, i + length
    return None


def _bare_value_in(words: Sequence[Word], start: int, end: int, terms: Terms) -> tuple[int, int] | None:
    """The number with decimals that ends what a sentence says of a name ("a Kolbach index of 41.3."), as ratios have no
    unit. The number of a method is none."""
    for i in range(start, min(end, start + NEAR)):
        if _DECIMAL.fullmatch(words[i].text) and not terms.is_method(f"{words[i - 1].text} {_text(words[i : i + 1])}"):
            return i, i + 1
    return None


def _values_in(words: Sequence[Word], start: int, end: int, terms: Terms) -> list[str]:
    """All values that a sentence gives before it comes to the next name."""
    texts: list[str] = []
    while (found := _value_in(words, start, end, terms)) is not None:
        texts.append(_text(words[found[0] : found[1]]))
        start = found[1]
    return texts


def _event(label: Sequence[Word], words: Sequence[Word], more: Sequence[str], page: Page) -> Event:
    cell = make_cell(list(words))
    concern = IN_A_SENTENCE
    if more:
        concern = concern._replace(reason=f"{concern.reason} The sentence also holds {', '.join(more)}.")
    value, unit, spec = split_value(_text(words))
    figure = PrintedFigure(
        label=clean_label(_text(label)),
        value=value,
        unit=unit,
        page=page.number,
        box=cell.box,
        label_box=make_cell(list(label)).box,
        spec=spec,
        confidence=cell.confidence,
        second=readings_at(page, cell.box),
        doubts=(concern, *unread_beside(page, cell.box)),
        in_sentence=True,
        rivals=tuple(more),
    )
    return Event(Place(page.number, cell.box.middle, cell.box.x0), figure)
