"""One written number without anything beside it, and which sign a sheet uses for decimals.

A number has digits, at most one decimal sign, and either no grouping of thousands or a well-formed one (a point, comma,
apostrophe or space before every three digits). Everything else is refused rather than guessed at. Grouping and decimal
signs follow ISO 80000-1, 7.3: either comma or point is the decimal sign, and groups of three digits.
"""

from __future__ import annotations

import re
import unicodedata
from collections.abc import Iterable
from dataclasses import dataclass
from typing import Literal

Convention = Literal[".", ","] | None

_FOLDED = {
    **dict.fromkeys("‐‑‒–—―−﹣－", "-"),
    **dict.fromkeys("’‘ʼ´`′", "'"),
    **dict.fromkeys("\u202f\u2009\u2007\u2008\u200a", "\u00a0"),
    **dict.fromkeys("\u2002\u2003\u3000\t\n\r", " "),
    "٫": ".",
    "٬": "'",
    "，": ",",
    "．": ".",
    "·": ".",
    "＜": "<",
    "＞": ">",
    "﹤": "<",
    "﹥": ">",
    "＋": "+",
    "（": "(",
    "）": ")",
    "／": "/",
    "∼": "~",
    "〜": "~",
    "～": "~",
    "\u200b": "",
    "\ufeff": "",
}
_TABLE = str.maketrans(_FOLDED)


def fold_signs(text: str) -> str:
    """One form for all dashes, apostrophes, spaces and digits of any script; superscripts are left as they are."""
    if text.isascii():
        return text.replace("&lt;", "<").replace("&gt;", ">").replace("&nbsp;", "\u00a0").replace("\n", " ")
    text = text.translate(_TABLE)
    return "".join(
        str(unicodedata.decimal(mark)) if not mark.isascii() and unicodedata.category(mark) == "Nd" else mark
        for mark in text
    )


@dataclass(frozen=True, slots=True)
class Plain:
    """A plain number. ``why`` says in a sentence why it is in doubt; ``other`` is the second possible reading."""

    value: float
    decimals: int
    why: str = ""
    other: float | None = None


NUMBER = (
    r"\d{1,3}(?:[ \u00a0]\d{3})+(?:[.,]\d+)?(?![.,']?\d)"  # thousands set apart by spaces
    r"|\d+(?:[.,']\d+)*(?:\s[.,]\d+|\.\s\d+)?[.,]?(?![.,\d])"  # with or without signs inside, or a stray space
    r"|\d+(?:[.,']\d+)*"
    r"|[.,]\d+"
)
_SPACED = re.compile(r"(\d{1,3})((?:[ \u00a0]\d{3})+)(?:([.,])(\d+))?$")
_STRAY = re.compile(r"(\d+)\s?([.,])\s?(\d+)$")
_ONE_SIGN = re.compile(r"(\d*)([.,])(\d+)$")
_GROUPED = re.compile(r"(\d{1,3})((?:[.,']\d{3})+)(?:([.,])(\d+))?$")
_INTEGER = re.compile(r"\d+$")
_SIGNS = re.compile(r"[.,']")


MOST_DIGITS = 15
"""A binary number of 64 bits holds so many digits unchanged (IEEE 754); more would come out as another number."""


def _whole(digits: str) -> bool:
    """True for digits that may stand before a decimal sign: no needless zero in front."""
    return digits == "0" or (digits != "" and digits[0] != "0")


def _decimal(before: str, after: str, why: str = "", other: float | None = None) -> Plain:
    return Plain(float(f"{before or '0'}.{after}"), len(after), why, other)


def plain_number(text: str, convention: Convention, optical: bool = False) -> Plain | None:
    """Reads one unsigned number; None where the writing is not one of the known forms.

    ``optical``: the text comes from optical reading, where a space may be the gap between two figures.
    """
    if _INTEGER.match(text):
        return Plain(float(text), 0) if _whole(text) and len(text) <= 12 else None
    if len(text) > 24 or sum(map(str.isdigit, text)) > MOST_DIGITS:
        return None
    if text[-1] in ".,":
        inner = plain_number(text[:-1], convention, optical)
        lost = f"“{text}” ends in a decimal sign; digits may be missing"
        if not optical and ends_sentence(text):
            lost = ""
        return Plain(inner.value, inner.decimals, inner.why or lost, inner.other) if inner else None
    one = _ONE_SIGN.match(text)
    if one:
        return _with_one_sign(one, convention, optical)
    spaced = _SPACED.match(text)
    if spaced:
        return _with_spaces(text, spaced, convention, optical)
    grouped = _GROUPED.match(text)
    if grouped:
        return _with_groups(text, grouped, convention)
    stray = _STRAY.match(text)
    if stray and _whole(stray[1]):
        return _decimal(stray[1], stray[3], f"there is a space inside “{text}”")
    return None


def ends_sentence(text: str) -> bool:
    """True for a full stop behind a number with a decimal comma: no further digit can follow ("5,91.")."""
    one = _ONE_SIGN.match(text[:-1])
    return text.endswith(".") and one is not None and one[2] == "," and len(one[3]) != 3


def _with_one_sign(match: re.Match[str], convention: Convention, optical: bool) -> Plain | None:
    text, before, sign, after = match[0], match[1], match[2], match[3]
    if not before:
        return _decimal("0", after, f"there is no digit before the decimal sign of “{text}”")
    if not _whole(before):
        return None
    if len(after) != 3 or before == "0" or len(before) > 3 or convention == sign:
        return _decimal(before, after)
    thousands = float(before + after)
    if convention is None:
        why = f"“{text}” may be a decimal number or thousands; the sheet does not show which"
        return _decimal(before, after, why, thousands)
    if sign == "," and not optical:
        return Plain(thousands, 0)
    as_decimal = float(f"{before}.{after}")
    return Plain(
        thousands, 0, f"“{text}” is thousands by the decimal sign of the sheet, but may be a decimal", as_decimal
    )


def _with_spaces(text: str, match: re.Match[str], convention: Convention, optical: bool) -> Plain | None:
    if match[1][0] == "0":
        return None
    digits = match[1] + match[2].replace(" ", "").replace("\u00a0", "")
    after = match[4] or ""
    value = float(f"{digits}.{after or '0'}")
    why = ""
    if " " in match[2] and (optical or len(match[1]) > 1):
        why = f"the space in “{text}” may part two figures"
    elif match[3] and convention not in (None, match[3]):
        why = f"“{text}” does not follow the decimal sign of the sheet"
    return Plain(value, len(after), why)


def _with_groups(text: str, match: re.Match[str], convention: Convention) -> Plain | None:
    groups, sign, after = match[2], match[3], match[4] or ""
    marks = set(_SIGNS.findall(groups))
    if len(marks) > 1 or match[1][0] == "0":
        # "1,234.567": the last sign is the decimal one, three digits or not.
        return _mixed_groups(match, convention) if not sign else None
    mark = marks.pop()
    if sign == mark:
        return None
    digits = match[1] + _SIGNS.sub("", groups)
    why = ""
    if convention is not None and (mark == convention or (sign and sign != convention)):
        why = f"“{text}” does not follow the decimal sign of the sheet"
    return Plain(float(f"{digits}.{after or '0'}"), len(after), why)


def _mixed_groups(match: re.Match[str], convention: Convention) -> Plain | None:
    marks = _SIGNS.findall(match[2])
    if match[1][0] == "0" or len(set(marks[:-1])) != 1 or marks[-1] == "'":
        return None
    parts = _SIGNS.split(match[2])
    why = f"“{match[0]}” does not follow the decimal sign of the sheet" if convention not in (None, marks[-1]) else ""
    return Plain(float(f"{match[1]}{''.join(parts[:-1])}.{parts[-1]}"), 3, why)


@dataclass(frozen=True, slots=True)
class Votes:
    """How many numbers of a sheet can only be read with a decimal point, and how many only with a decimal comma."""

    point: int
    comma: int

    @property
    def convention(self) -> Convention:
        """The decimal sign of the sheet; None without evidence and where the evidence is at odds."""
        if self.point and not self.comma:
            return "."
        return "," if self.comma and not self.point else None


_TOKEN = re.compile(r"(?<![\d.,'/])\d+(?:[.,']\d+)+(?![\d.,'/]*\d)")


def count_votes(texts: Iterable[str]) -> Votes:
    """Counts the numbers in the texts that can be read in one way only."""
    counts = {".": 0, ",": 0}
    for text in texts:
        for token in _TOKEN.findall(fold_signs(text[:200])):
            sign = _certain_sign(token)
            if sign:
                counts[sign] += 1
    return Votes(counts["."], counts[","])


def _certain_sign(token: str) -> str | None:
    marks = _SIGNS.findall(token)
    one = _ONE_SIGN.match(token)
    if one:
        certain = _whole(one[1]) and (len(one[3]) != 3 or one[1] == "0" or len(one[1]) > 3)
        return one[2] if certain else None
    grouped = _GROUPED.match(token)
    if not grouped or grouped[1][0] == "0":
        return None
    if marks[-1] != marks[0]:
        return marks[-1] if marks[-1] != "'" else None
    return {".": ",", ",": "."}.get(marks[0])


def decide_convention(texts: Iterable[str]) -> Convention:
    """The decimal sign that the values of a sheet agree on; None without evidence or where it is at odds."""
    return count_votes(texts).convention
