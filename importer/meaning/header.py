"""Header entries as printed to clean header fields: dates in ISO 8601, names and numbers as they stand."""

from __future__ import annotations

import re
import unicodedata
from collections.abc import Callable, Mapping, Sequence
from dataclasses import replace
from itertools import pairwise

from rapidfuzz.fuzz import ratio

from importer.meaning.possible import class_of
from importer.models import HEADER_KEYS, HeaderField
from importer.printed import PrintedAnalysis, PrintedHeader
from importer.reading.dates import decide_day_order, parse_crop_year, parse_date
from importer.vocabulary.caption_words import caption_table
from importer.vocabulary.captions import header_caption, looks_like_batch
from importer.vocabulary.column_heads import column_roles
from importer.vocabulary.malt_names import fold, name_words, names_brewer, names_malt, names_maltster, names_only_malt
from importer.vocabulary.text import bare
from importer.vocabulary.units import split_unit
from importer.words import Box, Page, SecondReading

_CLOCK = re.compile(r"\d\s+\d{1,2}:\d\d\b")
_YEAR = re.compile(r"\b(?:19|20)\d\d\b")
# A number with a word or a sign behind or before it that may say what it counts ("12 big bags", "kg 24 500").
_AMOUNT = re.compile(r"[^\W\d_]")
_MASS = re.compile(r"\d\s*(kg|t|to|tonnes?|lbs?|q)\b", re.IGNORECASE)
# Shorter numbers under a caption of batches may be results that stand in the wrong column.
MIN_DIGITS = 4
# Letters and digits from which a word is a batch number by itself; and the score of a caption that means one thing.
WHOLE_NUMBER, CERTAIN = 5, 100.0
DATE_KEYS = frozenset({"produced_on", "analysed_on", "delivered_on", "best_before"})


def build_header(printed: PrintedAnalysis, pages: Mapping[int, Page]) -> dict[str, HeaderField]:
    """One field a key, in the contract's order. A key printed with two different values is kept in review."""
    entries: dict[str, list[PrintedHeader]] = {}
    for entry in printed.header:
        key = "analysed_on" if entry.key == "date" else entry.key
        if key in HEADER_KEYS:
            entries.setdefault(key, []).append(entry)
    order = decide_day_order([e.text for key in entries for e in entries[key] if key in DATE_KEYS])
    fields: dict[str, HeaderField] = {}
    for key in HEADER_KEYS:
        field = _field(key, entries.get(key, []), order, pages)
        if field is not None:
            fields[key] = field
    return _with_order_of_days(fields)


def _with_order_of_days(fields: dict[str, HeaderField]) -> dict[str, HeaderField]:
    """Malt is no better before the day it was made: one of two such dates is wrong, and neither says which."""
    made, until = fields.get("produced_on"), fields.get("best_before")
    if made is None or until is None or until.value > made.value:
        return fields
    doubted = {
        key: field.model_copy(update={"state": "review"})
        for key, field in (("produced_on", made), ("best_before", until))
    }
    return {key: doubted.get(key, field) for key, field in fields.items()}


def with_said_header(
    fields: Mapping[str, HeaderField], said: Mapping[str, str | None], pages: Sequence[int]
) -> dict[str, HeaderField]:
    """The fields with a person's entries in place of those read; what was read, and where, stays with them."""
    if not said:
        return dict(fields)
    page = pages[0] if pages else 1
    result: dict[str, HeaderField] = {}
    for key in HEADER_KEYS:
        field = fields.get(key)
        value = said.get(key, field.value if field is not None else None)
        if value is None:
            continue
        if key not in said and field is not None:
            result[key] = field
        elif field is not None:
            result[key] = field.model_copy(update={"value": value, "state": "accepted"})
        else:
            result[key] = HeaderField(value=value, text="", page=page, box=(0.0, 0.0, 0.0, 0.0), state="accepted")
    return result


def read_entry(key: str, text: str) -> str | None:
    """A person's header entry as it is kept (dates in ISO 8601); None where it is nothing that the key can hold."""
    value, _ = _clean(key, text, decide_day_order([]), captioned=True)
    return value or None


def _field(key: str, entries: Sequence[PrintedHeader], order: object, pages: Mapping[int, Page]) -> HeaderField | None:
    cleaned = [
        (_supported(entry), *_clean(key, entry.text, order, bool(entry.caption) and entry.sure)) for entry in entries
    ]
    usable = [item for item in cleaned if item[1]]
    if not usable:
        return None
    named = [item for item in usable if item[0].key != "date"] or usable
    best = next((item for item in named if item[0].sure and item[2]), named[0])
    entry, value, sure = best
    rivals = {bare(item[1]) for item in named if item[0].sure} - {bare(value)}
    trusted = entry.page not in pages or _is_confirmed(entry, value, pages[entry.page])
    doubt = not sure or not entry.sure or bool(rivals) or entry.key == "date" or not trusted or _goes_on(entry.text)
    box = entry.box
    return HeaderField(
        value=value,
        text=entry.text,
        page=entry.page,
        box=(round(box.x0, 1), round(box.top, 1), round(box.x1, 1), round(box.bottom, 1)),
        state="review" if doubt else "accepted",
    )


# In a number every stroke counts: "23/858" is no 23858.
_NUMBERED = ("batch", "certificate", "order")
_MAIN = "tesseract"
_NEARLY, _LINE = 85.0, 6.0  # percent of the letters of two names; points within which words stand on a line
_OPENING, _CLOSING = re.compile(r"(?<!\S)['\"‘“„]"), re.compile(r"['\"’”“](?!\S)")
_QUOTES = re.compile(r"['\"‘’‚‛“”„´`]")
_DAY = re.compile(r"(?:19|20)\d\d-\d\d(?:-\d\d)?")
_GAP = re.compile(r"\d\s+\d")
_SCRAPS = re.compile(r"[|©®_~=¢]|^\s*[—–-]")


def _is_confirmed(entry: PrintedHeader, value: str, page: Page) -> bool:
    """True for a text layer, and on a scan where a second reader saw the same characters."""
    if page.reading == "spreadsheet" and entry.key == "batch" and _DAY.fullmatch(entry.text.strip()):
        return False  # spreadsheets make dates of numbers such as "11-25", and do not keep what was typed
    if page.reading != "ocr":
        return page.doubt is None
    if entry.key == "supplier" and _is_kind(entry.caption) and not names_maltster(entry.text):
        return False  # large letters stand apart: "Malting Company" may be a part of the name
    if _SCRAPS.search(entry.text) or (entry.key == "quantity" and split_unit(entry.text)[1] is None):
        return False  # what is left of a rule, and a unit that was not read
    if len(_OPENING.findall(entry.text)) != len(_CLOSING.findall(entry.text)):
        return False  # one of a pair of quotation marks was lost
    if entry.key in _NUMBERED and _GAP.search(entry.text):
        return False  # both readers can lose the same stroke
    if entry.key == "supplier" and _is_spelt_otherwise(entry, page):
        return False
    same = _as_numbered if entry.key in _NUMBERED else bare
    seen = [reading for reading in page.second if reading.box.is_place_of(entry.box)]
    return page.doubt is None and any(_holds(reading, entry, page, same) for reading in seen)


def _holds(reading: SecondReading, entry: PrintedHeader, page: Page, same: Callable[[str], str]) -> bool:
    """Whether a reading holds the entry, and before and behind it what the main reader saw there: no word is lost.

    Where no caption stands before a name, the reading has to be the name alone: a part of it may have been lost.
    """
    wanted, text = same(entry.text), same(reading.text)
    if entry.key not in _NUMBERED and len(_QUOTES.findall(reading.text)) != len(_QUOTES.findall(entry.text)):
        return False  # marks around a name are part of it, and only one reader saw them
    if reading.reader == _MAIN and _dotless(entry.text) == _dotless(reading.text):
        return True
    if not wanted or not (entry.caption or entry.key in _NUMBERED):
        return bool(wanted) and text == wanted
    level = sorted((w for w in page.words if _is_level(w.box, entry.box)), key=lambda word: word.x0)
    if text.endswith(wanted):
        inside = [w.text for w in level if w.x0 > reading.box.x0 - _LINE and w.x1 < entry.box.x0 + 1]
        before = bare(text.removesuffix(wanted))
        return not entry.caption or before in ("", bare(entry.caption)) or before[-2:] == bare("".join(inside))[-2:]
    behind = bare("".join(w.text for w in level if w.x0 >= entry.box.x1 - 1 and w.x1 < reading.box.x1 + _LINE))
    words, count = reading.text.split(), len(entry.text.split())
    return any(
        same("".join(words[at : at + count]).strip(",;")) == wanted
        and (rest := bare("".join(words[at + count :])))[:1] == behind[:1]
        and ratio(rest, behind) >= _NEARLY
        for at in range(len(words) - count)
    )


def _dotless(text: str) -> str:
    """Letters without the two dots of an umlaut, which the main reader does not know: of two readings it is one."""
    return bare(unicodedata.normalize("NFC", unicodedata.normalize("NFD", text).replace("\u0308", "")))


def _is_level(one: Box, other: Box) -> bool:
    return other.top < one.middle < other.bottom


def _goes_on(text: str) -> bool:
    """True for words that more have to follow, in a line that was not found: "Brasserie de la", "Brindale,"."""
    words = text.split()
    last = words[-1] if len(words) > 1 else ""
    if fold(" ".join(words)).endswith(name_words().unfinished):
        return True
    return text.rstrip().endswith(",") or (last.islower() and len(last) > 1 and last in caption_table().small)


def _is_spelt_otherwise(entry: PrintedHeader, page: Page) -> bool:
    """Whether nearly the same name stands elsewhere on the page, in the letterhead or at its foot."""
    wanted, count, box = bare(entry.text), len(entry.text.split()), entry.box
    elsewhere = [w for w in page.words if not (_is_level(w.box, box) and box.x0 <= w.box.centre <= box.x1)]
    words = sorted(elsewhere, key=lambda word: (round(word.bottom / _LINE), word.x0))
    runs = (bare("".join(word.text for word in words[at : at + count])) for at in range(len(words) - count + 1))
    return any(run != wanted and ratio(run, wanted) >= _NEARLY for run in runs)


def _is_kind(caption: str) -> bool:
    """True for the word of a kind of company: "Maltings"."""
    return any(word in fold(caption) for word in name_words().maltsters)


def _supported(entry: PrintedHeader) -> PrintedHeader:
    """The entry, sure where its value can only belong to its key although the caption could mean something else."""
    if entry.sure or entry.several or not entry.caption:
        return entry
    text = entry.text
    fits = {
        "batch": looks_like_batch(text),
        "malt": (class_of(text) is not None or names_only_malt(text)) and not _names_batch(text),
        "variety": class_of(text) is None and not any(c.isdigit() for c in text),
        "crop_year": parse_crop_year(text) is not None,
        "quantity": split_unit(text)[1] is not None or bool(_MASS.search(text)),
        "certificate": any(c.isdigit() for c in text),
        "supplier": names_maltster(text) and not names_brewer(text),
        "customer": names_brewer(text) and not names_maltster(text),
    }
    return replace(entry, sure=fits.get(entry.key, False))


def _names_batch(text: str) -> bool:
    """True for a subject that names a batch besides the malt ("Lot E1490, Vienna malt")."""
    words = [word.strip(",;:()") for word in text.split()]
    return any(
        (found := header_caption(a)) is not None and found[0] == "batch" and looks_like_batch(b)
        for a, b in pairwise(words)
    )


def _as_numbered(text: str) -> str:
    return re.sub(r"[–−—]", "-", "".join(text.split())).casefold()


def _may_be_number(text: str) -> bool:
    """True for what can be a batch number under a caption that says so, although it looks like a plain number."""
    if any(len(word) > 1 and not any(c.isdigit() for c in word) for word in text.split()):
        return False
    return sum(c.isdigit() for c in text) >= MIN_DIGITS and parse_date(text) is None and split_unit(text)[1] is None


def _number_alone(text: str) -> str:
    """A batch number without the date, the words in brackets, or the head of the next column behind it
    ("E1525 / 12.11.2025", "E1525 Unit")."""
    words = re.sub(r"\s+\([^()\d]*\)$", "", text).split()
    while len(words) > 1 and (
        parse_date(words[-1]) is not None
        or not any(c.isalnum() for c in words[-1])
        or (len(words) == 2 and words[-1].isalpha() and len(words[-1]) > 2 and column_roles(words[-1]))
    ):
        words.pop()
    return " ".join(words)


def _are_several(text: str) -> bool:
    """True for batch numbers of one form beside each other, which may be those of as many columns."""
    words = text.split()
    forms = {re.sub(r"\d+", "0", word) for word in words}
    return len(words) > 1 and len(forms) == 1 and all(len(w) >= WHOLE_NUMBER and looks_like_batch(w) for w in words)


def _are_captions(text: str) -> bool:
    """True for words each of which is a caption itself: heads of columns, and no entry."""
    found = [header_caption(word) for word in text.split()]
    return len(found) > 1 and all(caption is not None and caption[1] >= CERTAIN for caption in found)


def _clean(key: str, text: str, order: object, captioned: bool) -> tuple[str, bool]:
    """The clean value of an entry and whether nothing about it is in doubt; "" where it holds nothing usable.

    ``captioned``: it stands under a caption that is certain.
    """
    text = " ".join(text.split()).strip(" :;,")
    if not any(c.isalnum() for c in text):
        return "", False
    if _are_captions(text):
        return text, False
    if key in DATE_KEYS:
        found = parse_date(text, order)  # type: ignore[arg-type]
        if found is None:
            return "", False
        # With a time of day it may be that of the message.
        return found[0], found[1] and not (key == "delivered_on" and _CLOCK.search(text))
    if key == "crop_year":
        year = parse_crop_year(text)
        return (year, True) if year is not None else ("", False)
    if key == "batch":
        if split_unit(text)[1] is not None and not looks_like_batch(text):
            return "", False  # a result: "Lot" may head the column of results
        text = _number_alone(text)
        return text, (looks_like_batch(text) or (captioned and _may_be_number(text))) and not _are_several(text)
    if key in ("certificate", "order"):
        return text, any(c.isdigit() for c in text)
    if key == "variety":
        return text, not names_only_malt(text) and not _YEAR.search(text)
    if key == "malt":
        return text, not (_names_batch(text) and not names_malt(text))
    if key == "quantity":
        unit = split_unit(text)[1]
        if unit is not None and unit.dimension != "mass":
            return "", False
        return text, split_unit(text)[1] is not None or _AMOUNT.search(text) is not None
    return text, True
