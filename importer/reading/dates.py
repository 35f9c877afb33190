"""Dates and crop years as printed, to ISO 8601."""

from __future__ import annotations

import re
import tomllib
from collections.abc import Iterable
from datetime import date
from functools import cache
from typing import Literal

from importer.data import mappings_folder
from importer.errors import DataError
from importer.reading.plain_number import fold_signs
from importer.vocabulary.result_words import plain_word

DayOrder = Literal["dmy", "mdy"]
LONGEST = 80
"""Characters: longer texts are prose."""
_YEARS = range(1950, 2100)
_CENTURY_TURNS = 70
"""Two-digit years from here on are in the last century."""


@cache
def months() -> dict[str, int]:
    """Month names of mappings/dates.toml, plain. Raises DataError where the file cannot be used."""
    try:
        raw = tomllib.loads((mappings_folder() / "dates.toml").read_text(encoding="utf-8"))
        names: dict[str, int] = {}
        for number, spellings in raw["months"].items():
            for spelling in spellings:
                if names.setdefault(plain_word(spelling), int(number)) != int(number):
                    raise DataError(f"mappings/dates.toml: {spelling!r} stands for two months")
        return names
    except (KeyError, ValueError) as fault:
        raise DataError(f"mappings/dates.toml: {fault}") from fault


_NAME = r"[^\W\d_]{3,12}"
_YEAR = r"(?:19|20)\d\d"
_FORMS: tuple[tuple[str, re.Pattern[str]], ...] = (
    ("ymd", re.compile(rf"(?<![\d./-])({_YEAR})\s?([-/.年])\s?(\d{{1,2}})\s?(?:\2|月)\s?(\d{{1,2}})(?:日|(?!\d))")),
    ("xxy", re.compile(rf"(?<!\d)(\d{{1,2}})\s?([-/.])\s?(\d{{1,2}})\s?\2\s?({_YEAR}|\d\d)(?!\d)")),
    ("compact", re.compile(r"(?<!\d)(20\d\d)(0[1-9]|1[0-2])([0-3]\d)(?!\d)")),
    (
        "dNy",
        re.compile(
            rf"(?<!\d)(\d{{1,2}})(?:st|nd|rd|th|er|º|°|\.)?[\s./-]*(?:de\s|of\s)?\s*({_NAME})\.?,?[\s./'-]*(?:de\s|del\s)?\s*({_YEAR}|\d\d)(?!\d)"
        ),
    ),
    ("Ndy", re.compile(rf"({_NAME})\.?[\s./-]*(\d{{1,2}})(?:st|nd|rd|th)?,?[\s./-]+({_YEAR})(?!\d)")),
    ("yNd", re.compile(rf"(?<!\d)({_YEAR})[\s./-]+({_NAME})\.?[\s./-]*(\d{{1,2}})(?!\d)")),
)
_MONTH_FORMS: tuple[tuple[str, re.Pattern[str]], ...] = (
    ("ym", re.compile(rf"(?<![\d./-])({_YEAR})\s?[-/.年]\s?(\d{{1,2}})(?:月|(?![\d./-]))")),
    ("my", re.compile(rf"(?<![\d./-])(\d{{1,2}})\s?[-/.]\s?({_YEAR})(?!\d)")),
    ("Ny", re.compile(rf"({_NAME})\.?[\s./'-]*(?:de\s|del\s)?\s*({_YEAR}|\d\d)(?!\d)")),
    ("yN", re.compile(rf"(?<!\d)({_YEAR})[\s./-]+({_NAME})")),
    ("mY", re.compile(r"(?<![\d./-])(\d{1,2})\s?/\s?(\d\d)(?![\d./-])")),
)
_TIME = re.compile(
    r"[T\s]\s*\d{1,2}[:.h]\d{2}(?::\d{2}(?:\.\d+)?)?\s*(?:Z|[ap]\.?m\.?|Uhr|h|hrs|[+-]\d\d:?\d\d)?(?=$|[\s),;])",
    re.IGNORECASE,
)

_Result = tuple[str, bool]


def parse_date(text: str, order: DayOrder | None = None) -> _Result | None:
    """A printed date as ISO 8601 ("2026-03-04", or "2026-03" where the day is not printed) and whether it is certain.

    ``order`` is the sheet's order of day and month where known (``decide_day_order``). A date with strokes or hyphens
    that can be read both ways is read day first and is not certain. Dotted dates are day first (common practice, no
    source). None where the text holds no date.
    """
    if len(text) > LONGEST or not any(mark.isdigit() for mark in text):
        return None
    plain = fold_signs(text)
    plain = _TIME.sub(" ", plain)
    found, rest = _find(plain, _FORMS, order)
    if found is None:
        found, rest = _find(plain, _MONTH_FORMS, order)
    if found is None:
        return None
    if any(mark.isdigit() for mark in rest):
        again = parse_date(rest, order)
        return (max(found[0], again[0]), False) if again and again[0] else (found[0], False)
    return found


def _find(
    text: str, forms: tuple[tuple[str, re.Pattern[str]], ...], order: DayOrder | None
) -> tuple[_Result | None, str]:
    """The first date of a text and what is left of it."""
    for form, pattern in forms:
        for match in pattern.finditer(text):
            found = _read(form, match, order)
            if found:
                return found, f"{text[: match.start()]} {text[match.end() :]}"
    return None, text


def _read(form: str, match: re.Match[str], order: DayOrder | None) -> _Result | None:
    parts = match.groups()
    if form == "ymd":
        return _sure(_iso(parts[0], parts[2], parts[3]))
    if form == "compact":
        iso = _iso(parts[0], parts[1], parts[2])
        return (iso, False) if iso else None
    if form == "xxy":
        return _day_and_month(parts[0], parts[2], parts[3], parts[1], order)
    if form in ("ym", "my", "mY"):
        year, month = parts if form == "ym" else (parts[1], parts[0])
        iso = _iso_month(year, int(month))
        return (iso, form != "mY") if iso else None
    names = months()
    month_at = next(index for index, part in enumerate(parts) if not part.isdecimal())
    number = names.get(plain_word(parts[month_at]))
    if number is None:
        return None
    if form in ("Ny", "yN"):
        return _sure(_iso_month(parts[1 - month_at], number))
    year_at = {"dNy": 2, "Ndy": 2, "yNd": 0}[form]
    day_at = ({0, 1, 2} - {month_at, year_at}).pop()
    return _sure(_iso(parts[year_at], str(number), parts[day_at]))


def _sure(iso: str | None) -> _Result | None:
    return (iso, True) if iso else None


def _year(text: str) -> int:
    number = int(text)
    if len(text) > 2:
        return number
    return number + (1900 if number >= _CENTURY_TURNS else 2000)


def _iso(year: str, month: str, day: str) -> str | None:
    try:
        found = date(_year(year), int(month), int(day))
    except ValueError:
        return None
    return found.isoformat() if found.year in _YEARS else None


def _iso_month(year: str, month: int) -> str | None:
    number = _year(year)
    return f"{number:04d}-{month:02d}" if number in _YEARS and 1 <= month <= 12 else None


def _day_and_month(first: str, second: str, year: str, sign: str, order: DayOrder | None) -> _Result | None:
    day_first, month_first = _iso(year, second, first), _iso(year, first, second)
    year_first = _iso(first, second, year) if len(year) == 2 and sign == "-" and len(first) == 2 else None
    if sign == ".":
        return (day_first, True) if day_first else None
    if order and (year_first is None or year_first == day_first):
        chosen = day_first if order == "dmy" else month_first
        if chosen:
            return chosen, True
    readings = [reading for reading in (day_first, month_first, year_first) if reading]
    if not readings:
        return None
    return readings[0], len(set(readings)) == 1


def decide_day_order(texts: Iterable[str]) -> DayOrder | None:
    """The order of day and month that the dates of a sheet show; None without evidence and where they disagree."""
    seen: set[DayOrder] = set()
    for text in texts:
        if len(text) > LONGEST:
            continue
        plain = fold_signs(text)
        for form, pattern in _FORMS:
            for match in pattern.finditer(plain):
                shown = _order_shown(form, match)
                if shown:
                    seen.add(shown)
    return seen.pop() if len(seen) == 1 else None


def _order_shown(form: str, match: re.Match[str]) -> DayOrder | None:
    parts = match.groups()
    if form == "xxy":
        first, second = int(parts[0]), int(parts[2])
        if parts[1] == "." or (first > 12 >= second):
            return "dmy" if _iso(parts[3], parts[2], parts[0]) else None
        return "mdy" if second > 12 >= first and _iso(parts[3], parts[0], parts[2]) else None
    if form == "dNy":
        return "dmy" if plain_word(parts[1]) in months() else None
    if form == "Ndy":
        return "mdy" if plain_word(parts[0]) in months() else None
    return None


_CROP = re.compile(rf"(?<!\d)({_YEAR})(?:\s?[/-]\s?({_YEAR}|\d\d))?(?!\d)")
_SHORT_CROP = re.compile(r"(?<!\d)(\d\d)\s?/\s?(\d\d)(?!\d)")


def parse_crop_year(text: str) -> str | None:
    """A crop year: "2025" from "Ernte 2025"; "2024/2025" from "2024/25" or "24/25". None where there is none.

    Two years that do not follow each other, and anything else with digits, are None.
    """
    if len(text) > LONGEST:
        return None
    plain = fold_signs(text).replace("20''", "20")
    years: list[int] = []
    for match in _CROP.finditer(plain):
        first = int(match[1])
        years.append(first)
        if match[2]:
            years.append(int(match[2]) if len(match[2]) == 4 else first // 100 * 100 + int(match[2]))
    rest = _CROP.sub(" ", plain)
    if not years:
        for match in _SHORT_CROP.finditer(plain):
            years += [2000 + int(match[1]), 2000 + int(match[2])]
        rest = _SHORT_CROP.sub(" ", plain)
    distinct = sorted(set(years))
    if not distinct or any(mark.isdigit() for mark in rest) or distinct[-1] - distinct[0] > 1 or years != sorted(years):
        return None
    return "/".join(str(year) for year in distinct)
