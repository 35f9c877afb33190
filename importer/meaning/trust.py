"""Whether a reading can be believed: nothing is crossed out, and two readers of a scan agree on number and bound."""

from __future__ import annotations

import re
from collections.abc import Sequence

from importer.meaning.possible import possible_range, within_possible
from importer.meaning.recognised import Doubt, Recognised
from importer.printed import PrintedFigure
from importer.reading.numbers import Convention, Number, read_number, same_number
from importer.vocabulary.column_heads import column_roles
from importer.vocabulary.header_captions import exact_caption
from importer.vocabulary.result_words import result_words
from importer.vocabulary.unit_keys import shape
from importer.vocabulary.units import parse_unit, parse_units, split_unit
from importer.words import Box, Page, SecondReading

SURE_WORD = 0.8
NEAR, LONGEST_UNIT = 1.5, 4  # of its height, behind a figure; words of a unit
UNIT_START = 2  # letters that a misread unit has in common with the printed one
LEAST_READ = 0.34  # of a label's characters, from which a reading of all of it is one
WHOLE = 0.8  # of a label's width and height, from which a reading is one of all of it
# What is left of letters that could not be read.
_SCRAPS = re.compile(r"[©®™¢£¥{}~^]|-{2,}|—{2,}|_{2,}")
_NUMBER = re.compile(r"(?<![^\W\d_])\d+(?:[.,]\d+)*")
_COUNT = re.compile(r"^\s*\d{1,2}[.,)]\s+")
# A letter taken for a digit, in a word ("8-Glucan") or a unit ("mg/1"); neither tells sizes or temperatures apart.
_NO_NUMBER = re.compile(r"(?<![\w.,])\d(?=-[^\W\d_]{3})|(?<=[^\W\d_]/)1(?![\d.,])")
_IN_BRACKETS = re.compile(r"\s*[\[(][^\[\]()]*[\])]\s*$")
# A unit that holds a number, or the beginning of one.
_UNIT_BEGINS = re.compile(r"[^\W\d_]{1,3}\s*/\s*\d")
# What is left of a unit that was misread ("81,5 op" for "81,5 %").
_LETTERS_BEHIND = re.compile(r"(?<=\d)\s+[^\W\d_]{1,3}$")
_WORD_BEHIND = re.compile(r"(?<=\d)\s+([^\W\d_])[^\W\d_]{1,5}$")
_MARKS_BEHIND = re.compile(r"(?<=\d)\s*[^\w\s.,<>≤≥±+()/–−-]{1,2}$")
_WORDS_IN_BRACKETS = re.compile(r"(?<=[\d%])\s*[(\[][^\d()\[\]]*[)\]]?\s*$")
# The only word of one letter between numbers ("de 2,2 à 2,5 mm"), and what it is taken for.
_GLUED_A = re.compile(r"(?<=\d)[aàAÀ](?=\d)|(?<!\w)[aàAÀ](?=\d+[.,]\d)")
_LONE_A, LIKE_A = re.compile(r"(?<!\w)[aàAÀ](?!\w)"), "4"
# Nobody prints a sum as a result.
_PLUS = re.compile(r"(?<=\d)\s*[+土士]\s*(?=\d)")


def reading_doubts(figure: Recognised, page: Page, convention: Convention) -> list[Doubt]:
    """Why the reading of a figure on this page cannot be taken on trust; empty for a clean text layer."""
    if page.reading != "ocr":
        doubts = [Doubt("reading-doubtful", page.doubt)] if page.doubt else []
        return [*doubts, *(Doubt("reading-doubtful", reason) for reason in _marred(figure, page))]
    if page.doubt:
        return [Doubt("reading-doubtful", page.doubt)]
    if _SCRAPS.search(figure.printed.label):
        reason = f"The label was not read cleanly (“{figure.printed.label}”); words of it may be lost."
        return [Doubt("reading-doubtful", reason)]
    if (unit := figure.printed.unit) and parse_unit(unit) is None and not parse_units(unit):
        return [Doubt("reading-doubtful", f"The unit “{figure.printed.unit}” is not known.")]
    if _is_strange_head(figure.printed.column):
        return [Doubt("reading-doubtful", f"The head of its column (“{figure.printed.column}”) was not read cleanly.")]
    if _is_label_hidden(figure, page):
        reason = f"There is ink over the numbers of the label (“{figure.printed.label}”) that could not be read."
        return [Doubt("reading-doubtful", reason)]
    if (other := _other_numbers_in_label(figure, page)) is not None:
        return [
            Doubt("reading-doubtful", f"One reading of the label gives “{figure.printed.label}”, another “{other}”.")
        ]
    if figure.number.kind == "word" and _is_known_word(figure):
        return []
    if figure.number.kind in ("word", "not-detected") and _is_read_twice(figure):
        return []
    if figure.number.kind not in ("number", "range"):
        return [
            Doubt(
                "reading-doubtful", "It was read from a scan and is not a number that a second reading could confirm."
            )
        ]
    seen = [reading.text for reading in figure.printed.second if _may_be_number(reading.text)]
    if not seen:
        return [Doubt("reading-doubtful", "It was read from a scan, and no second reading confirms it.")]
    numbers = [_number(text, figure, convention) for text in seen]
    if not any(number is not None and _agree(number, figure.number) for number in numbers):
        other = "”, “".join(seen[:2])
        return [Doubt("reading-doubtful", f"One reading of the scan gives “{figure.number.text}”, another “{other}”.")]
    dissent = [
        text
        for text, number in zip(seen, numbers, strict=True)
        if number is not None and not _agree(number, figure.number)
    ]
    if dissent:
        return [Doubt("reading-doubtful", f"Readings of the scan differ: “{figure.number.text}” and “{dissent[0]}”.")]
    if figure.number.decimals >= 3 and _may_be_thousands(figure):
        return [Doubt("reading-doubtful", "Three decimals on a scan may be a thousands separator.")]
    return []


def _is_strange_head(head: str) -> bool:
    """True for words that head no column that is known; numbers may be those of batches."""
    known = not head or column_roles(head) or split_unit(head)[1] is not None or exact_caption(head) is not None
    return not known and not any(character.isdigit() for character in head)


def nameless_beside(figure: PrintedFigure, unknown: Sequence[PrintedFigure]) -> list[Doubt]:
    """A doubt where another number of the row belongs to no name: it may be the result, and this one a limit."""
    for other in unknown:
        low = min(other.box.bottom, figure.box.bottom) - max(other.box.top, figure.box.top)
        apart = other.box.x0 >= figure.box.x1 or other.box.x1 <= figure.box.x0
        level = other.page == figure.page and low > 0.5 * min(other.box.height, figure.box.height)
        if level and apart and not other.label.strip() and _NUMBER.search(other.value):
            return [Doubt("label-doubtful", f"The row also holds “{other.value}”, which no name stands for.")]
    return []


def other_unit_behind(figure: Recognised, page: Page) -> list[Doubt]:
    """A doubt where another unit stands right behind the figure than the one that its label or column gave it."""
    box, unit = figure.printed.box, figure.unit
    if unit is None:
        return []
    start, middle = box.x1 - 1, box.middle
    level = [w for w in page.words if w.x0 >= start and w.top < middle < w.bottom]
    behind = sorted(level, key=lambda w: w.x0)[:LONGEST_UNIT]
    if not behind or behind[0].x0 - box.x1 > NEAR * box.height:
        return []
    texts = [" ".join(word.text for word in behind[: count + 1]) for count in range(len(behind))]
    found = [other for text in texts if (other := parse_unit(text)) is not None]
    # What the parameter is never given in is no unit of it ("min." before a limit).
    found = [other for other in found if possible_range(figure.parameter, other.code) is not None]
    own = {parse_unit(figure.printed.unit or ""), *parse_units(figure.printed.unit or "")}
    if not found or any(other.code == unit or other in own for other in found):
        return []
    return [Doubt("unit-assumed", f"“{behind[0].text}” stands behind the figure, which is taken for one in {unit}.")]


def _is_known_word(figure: Recognised) -> bool:
    """True for words that describe results as they stand ("klar", "clean, malty"): misread ones are hardly others."""
    described = result_words().described_as_written
    text = figure.printed.value.strip(" .").casefold()
    known = text in described or all(part.strip() in described for part in text.split(","))
    return known and figure.printed.confidence >= SURE_WORD


def _is_read_twice(figure: Recognised) -> bool:
    """True where a second reader saw the same letters ("n.n."), as a whole or word by word."""
    own = _bare(figure.printed.value)
    ordered = sorted(figure.printed.second, key=lambda reading: reading.box.x0)
    joined = {
        _bare("".join(one.text for one in ordered if one.reader == name)) for name in {one.reader for one in ordered}
    }
    return own != "" and (own in joined or any(_bare(reading.text) == own for reading in ordered))


def _bare(text: str) -> str:
    return "".join(character for character in text.casefold() if character.isalnum())


def _other_numbers_in_label(figure: Recognised, page: Page) -> str | None:
    """Another reading of the label with other numbers in it, which may be the sizes of another sieve."""
    box, label = figure.printed.label_box, figure.printed.label
    if box is None or not _NUMBER.search(label):
        return None
    here = [r for r in page.second if box.x0 < r.box.centre < box.x1 and box.top < r.box.middle < box.bottom]
    return next((reading.text for reading in here if _differs(label, box, reading)), None)


def _is_label_hidden(figure: Recognised, page: Page) -> bool:
    box, label = figure.printed.label_box, figure.printed.label
    if box is None or not _NUMBER.search(label):
        return False
    return any(lost.x0 < box.x1 and lost.x1 > box.x0 and box.top < lost.middle < box.bottom for lost in page.lost)


def _differs(label: str, box: Box, reading: SecondReading) -> bool:
    """Whether a reading has other numbers than the label; one of a part of it may have fewer."""
    own, other = _numbers_of(label), _numbers_of(reading.text)
    if reading.box.x1 > box.x1 + box.height:  # a cell that holds more than the label
        return False
    whole = reading.box.width >= WHOLE * box.width and reading.box.height >= WHOLE * box.height
    if whole and len(reading.text) < LEAST_READ * len(label):  # what was lost is no other reading
        return False
    if _LONE_A.search(label) and LIKE_A not in own:
        other.discard(LIKE_A)
    return other != own if whole else not other <= own


def _numbers_of(label: str) -> set[str]:
    """The numbers in a label, without its own ("3. Moisture")."""
    plain = _GLUED_A.sub(" ", _NO_NUMBER.sub("", _COUNT.sub("", label)))
    return {number.replace(",", ".") for number in _NUMBER.findall(plain)}


def _may_be_thousands(figure: Recognised) -> bool:
    """False where a thousand times the number is not possible: 1.539 mPa·s is no 1539."""
    value, unit = figure.number.value, figure.unit
    if value is None or unit is None or possible_range(figure.parameter, unit) is None:
        return True
    return within_possible(figure.parameter, unit, 1000 * value)


def _marred(figure: Recognised, page: Page) -> list[str]:
    """What is wrong with the place of the value or of the label: a line through it, another text on it."""
    places = [place for place in (figure.printed.box, figure.printed.label_box) if place is not None]
    return [
        reason
        for box, reason in page.marred
        if any(place.x0 < box.centre < place.x1 and place.top < box.middle < place.bottom for place in places)
    ]


def _number(text: str, figure: Recognised, convention: Convention) -> Number | None:
    """The number in another reading: without its unit, which may read as a limit ("42 min"), and with ± for the + of
    a reader that does not know the sign.
    """
    text = _PLUS.sub("±", text)
    unit = figure.printed.unit
    bare = text.removesuffix(unit) if unit else text
    tries = (bare, text, _without_edges(text), split_unit(text)[0], *_without_brackets(text))
    behind = (_LETTERS_BEHIND, _MARKS_BEHIND, _WORDS_IN_BRACKETS)
    tries += (*_before_unit(text, unit or ""), *(what.sub("", text) for what in behind))
    tries += (split_unit(text.rpartition(": ")[2])[0],)
    found = [number for number in (read_number(one, convention) for one in tries) if number is not None]
    return next((number for number in found if _agree(number, figure.number)), found[0] if found else None)


def _before_unit(text: str, unit: str) -> tuple[str, ...]:
    """What a reading has before the first or last words of the unit ("11.4 % on" of "% on dry"), before one that begins
    as the printed one does and was misread behind ("181 mg.lI-1"), or before a word with its first letter ("134 mest").
    """
    head = _NUMBER.match(text)
    rest = text[head.end() :].strip() if head else ""
    lettered = any(character.isalpha() for character in rest)
    own, end = (shape(unit), shape(rest)) if lettered else (unit.casefold(), rest.casefold())
    least = UNIT_START + rest[:1].isdigit()  # a digit and a letter may be the end of the number
    if head and len(rest) >= least and (own.startswith(end) or (lettered and own.endswith(end))):
        return (head.group(),)
    start = unit.strip(" ([")[:UNIT_START]
    if start[:1].isalpha() and (word := _WORD_BEHIND.search(text)) and word[1].casefold() == start[0].casefold():
        return (text[: word.start()],)
    at = text.casefold().find(start.casefold()) if len(start) == UNIT_START and start.isalpha() else -1
    return (text[:at].strip(),) if at > 0 else ()


def _may_be_number(text: str) -> bool:
    """Whether a reading has digits and is not that of the unit beside the number ("mg/100 g", "mg.l-1")."""
    bare = text.strip()
    unit = _UNIT_BEGINS.match(bare) is not None or (bare[:1].isalpha() and parse_unit(bare) is not None)
    return any(c.isdigit() for c in text) and not unit


def _without_edges(text: str) -> str:
    """A reading without the rule of a table at its end, which looks like half a bracket."""
    plain = text.strip(" |_'’‘")
    return plain.strip(")]") if not any(bracket in plain for bracket in "([") else plain


def _without_brackets(text: str) -> list[str]:
    """A reading without what stands in brackets behind it, mostly limits."""
    plain = _IN_BRACKETS.sub("", text)
    return [plain, split_unit(plain)[0]] if plain != text else []


def _agree(one: Number, other: Number) -> bool:
    return one.decimals == other.decimals and same_number(one, other)
