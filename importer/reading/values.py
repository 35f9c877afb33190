"""Takes value cells apart: the value, the unit as printed, limits in brackets."""

from __future__ import annotations

import re

from importer.reading.plain_number import ends_sentence
from importer.vocabulary.text import has_digit
from importer.vocabulary.units import parse_unit, split_unit
from importer.vocabulary.units import split_value as take_off_unit

_BRACKETED_LIMITS = re.compile(
    r"^(?P<value>[^(\[]*\d[^(\[]*?)\s*[(\[](?P<limits>[^)\]]*\d[^)\]]*)[)\]]\s*(?P<rest>\S{0,12})$"
)
_PLAIN = re.compile(r"^\s*\d+(?:[.,]\d+)?\s*$")
_NUMBER_FIRST = re.compile(r"^(?P<number>[<>≤≥~]?\s?\d{1,5}(?:[.,]\d+)?)\s?(?P<rest>\D.{0,24})$")
# The colon or the dotted leader of a label, before its value.
_LED = re.compile(r"[:：….\s]*")


def split_value(text: str) -> tuple[str, str | None, str]:
    """A value cell as (value, unit as printed or None, limits in brackets)."""
    text = _without_leader(text.strip().rstrip("; "))
    text = text[:-1] if ends_sentence(text) else text
    match = _BRACKETED_LIMITS.match(text)
    # A plain number in brackets is no limit but a second figure: both stay in the cell.
    if match and parse_unit(match["limits"]) is None and not _PLAIN.match(match["limits"]):
        value, unit = _parted(match["value"].strip())
        if unit is None and match["rest"] and parse_unit(match["rest"]) is not None:
            unit = match["rest"]
        return value, unit, match["limits"]
    value, unit = _parted(text)
    return value, unit, ""


def _without_leader(text: str) -> str:
    led = _LED.match(text)
    length = led.end() if led else 0
    # One point may be that of a number (".5"), and what holds nothing else stays.
    return text[length:] if length < len(text) and text[:length].strip() not in ("", ".") else text


def _parted(text: str) -> tuple[str, str | None]:
    value, found = split_unit(text)
    if found is not None and not has_digit(value) and (has_digit(text) or not value):
        # "min. 88 %" is no unit of time with a condition.
        value, found = take_off_unit(text)
    if value.count("(") > value.count(")"):
        value = f"{value})"
    if found is not None and (has_digit(value) or not has_digit(text)):
        return value, unit_text(text, value)
    return split_number(text) or (text, None)


def split_number(text: str) -> tuple[str, str] | None:
    """A number and what follows it, where that begins with a unit but is not known as a whole ("80.6% af TS")."""
    match = _NUMBER_FIRST.match(text.strip())
    if match is None:
        return None
    words = match["rest"].split()
    if any(parse_unit(" ".join(words[:count])) is not None for count in range(1, min(len(words), 3) + 1)):
        return match["number"], match["rest"].strip()
    return (match["number"], match["rest"].strip()) if words[0].startswith("%") else None


def unit_text(whole: str, value: str) -> str:
    """What was taken off ``whole`` to leave ``value``: the unit as printed."""
    if whole.startswith(value):
        return whole[len(value) :].strip(" ,()[]")
    return whole.replace(value, " ", 1).strip(" ,()[]")
