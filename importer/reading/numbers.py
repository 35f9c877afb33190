"""Reads the number in a result or limit cell: a figure, a bound, a range, a tolerance, or words.

Strict: what does not fit the grammar is None, never a guess. The unit has to be taken off before
(``importer.vocabulary.units.split_unit``).
"""

from __future__ import annotations

import math
import re
from dataclasses import dataclass, replace
from functools import lru_cache
from typing import Literal

from importer.reading.plain_number import (
    NUMBER,
    Convention,
    Plain,
    Votes,
    count_votes,
    decide_convention,
    fold_signs,
    plain_number,
)
from importer.vocabulary.result_words import LimitBound, plain_word, result_words

__all__ = ["Convention", "Number", "Votes", "count_votes", "decide_convention", "is_word", "read_number", "same_number"]

NumberBound = Literal["<", ">", "range", "max", "min", "approx"]
NumberKind = Literal["number", "range", "not-detected", "blank", "word", "several"]
LONGEST = 100
"""Characters: longer cells are prose."""


@dataclass(frozen=True, slots=True)
class Number:
    """What a cell says.

    ``kind`` "number": ``value`` with its ``bound`` (None for a plain figure; "<" and ">" strict, "max" and "min" limits
    that may be reached, "approx"). "range": ``low`` and ``high``. "several": more than one figure, in ``pieces``.
    "not-detected": below what the method sees, with ``high`` where the cell gives that limit. "blank": no figure.
    "word": a described result. On a bounded number ``low`` or ``high`` repeats the value; on a plain one they are
    limits in brackets behind it. ``decimals`` are those printed. ``ambiguous`` readings have a reason in ``why`` and,
    where there are exactly two, the second in ``alternative``. ``mark`` is a footnote sign, ``tolerance`` a ± part.
    """

    value: float | None
    bound: NumberBound | None
    low: float | None
    high: float | None
    decimals: int
    text: str
    ambiguous: bool
    kind: NumberKind
    why: str = ""
    mark: str = ""
    tolerance: float | None = None
    alternative: float | None = None
    pieces: tuple[Number, ...] = ()


def same_number(one: Number, other: Number) -> bool:
    """True where two readings say the same: kind, bound and figures, however written."""

    def near(left: float | None, right: float | None) -> bool:
        if left is None or right is None:
            return left is right
        return math.isclose(left, right, rel_tol=1e-9, abs_tol=1e-12)

    if (one.kind, one.bound, len(one.pieces)) != (other.kind, other.bound, len(other.pieces)):
        return False
    if one.kind == "word":
        return plain_word(one.text) == plain_word(other.text)
    figures = near(one.value, other.value) and near(one.low, other.low) and near(one.high, other.high)
    pieces = zip(one.pieces, other.pieces, strict=True)
    return figures and near(one.tolerance, other.tolerance) and all(same_number(a, b) for a, b in pieces)


def read_number(text: str, convention: Convention, optical: bool = False) -> Number | None:
    """Reads a cell; None where it holds something that is neither a number nor a known word.

    ``convention`` is the decimal sign of the sheet (``decide_convention``). ``optical``: the text was read from a
    picture, so that a space inside a number may part two figures.
    """
    if len(text) > LONGEST:
        return None
    return _read(text, convention, optical)


def is_word(text: str) -> bool:
    """True for a known word that describes a result ("clear"), whatever else it may name."""
    number = read_number(text, None)
    return number is not None and number.kind == "word"


@lru_cache(maxsize=16384)
def _read(text: str, convention: Convention, optical: bool) -> Number | None:
    text = text.strip()
    said = _words_only(text)
    if said:
        return said
    body, mark = _take_mark(fold_signs(text).strip())
    if _EXPONENT.search(body) or not any(c.isdigit() for c in body):
        return None
    limit = _LIMIT_OF_DETECTION.match(body)
    if limit and plain_word(limit[1]) in result_words().not_detected:
        plain = plain_number(limit[2], convention, optical)
        return replace(_empty("not-detected", text, plain.value), mark=mark) if plain and not plain.why else None
    inside = _LIMIT_IN_BRACKETS.search(body)
    if inside and plain_word(inside[1]) in result_words().after:
        body = f"{body[: inside.start()]} {inside[1]}"
    parsed = _Parser(body, convention, optical).parse()
    return replace(parsed, text=text, mark=mark or parsed.mark) if parsed else None


def _empty(kind: NumberKind, text: str, high: float | None = None) -> Number:
    return Number(None, "<" if high is not None else None, None, high, 0, text, False, kind)


def _words_only(text: str) -> Number | None:
    words, plain = result_words(), plain_word(text) or text
    if not text or plain in words.blank:
        return _empty("blank", text)
    if plain in words.not_detected or plain.strip("() ") in words.not_detected:
        return _empty("not-detected", text)
    if plain in words.described:
        return _empty("word", text)
    parts = [part for part in re.split(r"\s*[,/;]\s*|\s+-\s+", plain) if part]
    if 1 < len(parts) <= 4 and all(plain_word(part) in words.described for part in parts):
        return _empty("word", text)
    return None


_MARK_BEHIND = re.compile(r"\s*((?:[*†‡#§!↑↓¹²³⁴⁵⁶⁷⁸⁹⁰ᵃᵇᶜ]+\)?|(?<=[\d\s])[a-e]\))(?:\s*[*†‡#])*)$")
_MARK_BEFORE = re.compile(r"^([*†‡#§]+)\s*(?=[\d<>≤≥+.,-])")
_EXPONENT = re.compile(r"\d[eE][+-]?\d")
_LIMIT_OF_DETECTION = re.compile(r"(\D+?)\s*[(\[]\s*<?\s*(\d[\d.,]*)\s*[)\]]$")
_LEADING = re.compile(r"^(?::|=(?![<>]))\s*")
_LIMIT_IN_BRACKETS = re.compile(r"[(\[]\s*([^\W\d_]{2,12}\.?)\s*[)\]]$")


def _take_mark(text: str) -> tuple[str, str]:
    """Takes footnote signs off: "4.5*", "4.5 ¹", "4.5 a)", "* 4.5"."""
    text = _LEADING.sub("", text)
    behind = _MARK_BEHIND.search(text)
    if behind and behind.start():
        return text[: behind.start()].rstrip(), behind[1].strip()
    before = _MARK_BEFORE.search(text)
    return (text[before.end() :], before[1]) if before else (text, "")


_TOKEN = re.compile(
    rf"(?P<num>{NUMBER})|(?P<op><=|>=|=<|=>|[<>≤≥≦≧⩽⩾])|(?P<pm>±|\+\s?/\s?-|\+-)|(?P<to>\.{{2,}}|…|÷|¸|--|- ?|~)"
    rf"|(?P<sep>[/;|,])|(?P<open>[(\[])|(?P<close>[)\]])|(?P<sign>\+)|(?P<about>[≈≃≅ø∅])"
    rf"|(?P<word>[^\W\d_]+(?:['./-][^\W\d_]+)*\.?:?|&)|(?P<space>\s+)|(?P<other>.)"
)
_LOWER, _UPPER = ("min", ">"), ("max", "<")


@dataclass(slots=True)
class _Quantity:
    """A number with what stands around it; ``link`` is how it hangs on to the one before."""

    plain: Plain
    bound: LimitBound | None
    link: str
    depth: int


class _Parser:
    """One pass over the tokens of a cell."""

    def __init__(self, body: str, convention: Convention, optical: bool) -> None:
        self.convention, self.optical = convention, optical
        self.words = result_words()
        self.tokens = [(m.lastgroup or "other", m[0]) for m in _TOKEN.finditer(body) if m.lastgroup != "space"]
        self.found: list[_Quantity] = []
        self.bound: LimitBound | None = None
        self.link, self.depth, self.negative, self.opening, self.fresh = "", 0, False, False, False
        self.not_detected = self.apart = False

    def parse(self) -> Number | None:
        place = 0
        while place < len(self.tokens):
            step = self._step(place)
            if not step:
                return None
            place += step
        if self.depth or self.bound or self.negative or not self.found or self.link:
            return None
        return self._assemble()

    def _step(self, place: int) -> int:
        """Takes in the token at a place; returns how many tokens were used, 0 where they make no sense."""
        kind, text = self.tokens[place]
        if kind == "num":
            return self._number(text)
        if kind == "op":
            return self._limit(_OPERATORS[text])
        if kind == "about":
            return self._limit("approx")
        if kind == "word":
            return self._word(place)
        if kind in ("open", "close"):
            self.depth += 1 if kind == "open" else -1
            self.fresh = False
            return 1 if 0 <= self.depth <= 1 and not self.negative else 0
        if kind == "to":
            return self._dash(text, place)
        if kind == "sign":
            return self._plus(place)
        if kind in ("sep", "pm"):
            return self._join(kind)
        return 0

    def _number(self, text: str) -> int:
        plain = plain_number(text, self.convention, self.optical)
        if plain is None:
            return 0
        if self.negative:
            other = -plain.other if plain.other is not None else None
            apart = "the dash stands apart from the figure; it may be no minus sign" if self.apart else ""
            plain = Plain(-plain.value, plain.decimals, plain.why or apart, other)
        self.found.append(_Quantity(plain, self.bound, self.link, self.depth))
        self.bound, self.link, self.negative, self.fresh = None, "", False, True
        return 1

    def _limit(self, bound: LimitBound) -> int:
        if self.bound and not {self.bound, bound} <= {*_UPPER, "approx"} and not {self.bound, bound} <= {*_LOWER}:
            return 0
        self.bound, self.fresh = self.bound or bound, False
        return 1

    def _join(self, link: str) -> int:
        if not self.found or self.link or self.bound or self.negative:
            return 0
        self.link, self.fresh = link, False
        return 1

    def _dash(self, text: str, place: int) -> int:
        if self.fresh or (self.found and not self.link and not self.bound and self.tokens[place - 1][0] != "open"):
            return self._join("to")
        if text == "~":
            return self._limit("approx")
        if text not in ("-", "- ") or self.negative or place + 1 >= len(self.tokens):
            return 0
        if self.tokens[place + 1][0] != "num":
            return 0
        self.negative, self.apart = True, text == "- "
        return 1

    def _plus(self, place: int) -> int:
        if self.fresh and place + 1 == len(self.tokens) and self.found[-1].bound is None:
            self.found[-1].bound = self.words.after.get("+")
            return 1 if self.found[-1].bound else 0
        return 1 if place + 1 < len(self.tokens) and self.tokens[place + 1][0] == "num" and not self.fresh else 0

    def _word(self, place: int) -> int:
        """The longest run of words that means something here."""
        run: list[str] = []
        while place + len(run) < len(self.tokens) and self.tokens[place + len(run)][0] == "word":
            run.append(self.tokens[place + len(run)][1])
        for count in range(min(len(run), 5), 0, -1):
            phrase = plain_word(" ".join(run[:count]).rstrip(":"))
            if self._phrase(phrase, self._number_follows(place + count)):
                return count
        return 0

    def _number_follows(self, place: int) -> bool:
        kinds = [kind for kind, _ in self.tokens[place : place + 2]]
        return bool(kinds) and (kinds[0] == "num" or (kinds[0] in ("to", "sign", "op") and "num" in kinds))

    def _phrase(self, phrase: str, number_follows: bool) -> bool:
        words = self.words
        if self.fresh:
            last = self.found[-1]
            if number_follows and phrase in words.range_between:
                return bool(self._join("to"))
            if phrase in words.after and last.bound is None:
                last.bound, self.fresh = words.after[phrase], False
                return True
        if self.found and not self.link and (phrase in words.range_and or phrase in ("and", "but")):
            return bool(self._join("and"))
        if phrase in words.range_before and not self.found and not self.bound and not self.opening:
            self.opening = True
            if phrase in words.before:
                self.bound = words.before[phrase]
            return True
        if phrase in words.before:
            return bool(self._limit(words.before[phrase]))
        if phrase in words.not_detected and not self.found:
            self.not_detected = True
            return True
        return phrase in words.not_detected and bool(self.found) and self.found[-1].bound == "<"

    # Putting together ---------------------------------------------------------------------------------------------

    def _assemble(self) -> Number | None:
        inner = [quantity for quantity in self.found if quantity.depth]
        outer = [quantity for quantity in self.found if not quantity.depth]
        if self.not_detected:
            plain = self.found[0].plain
            return _empty("not-detected", "", plain.value) if len(self.found) == 1 else None
        if not outer:
            number = self._together(inner)
            return number and _doubt(number, "the figure stands in brackets")
        main = self._together(outer)
        if not inner or main is None:
            return main
        beside = self._together(inner)
        if beside is None:
            return None
        if main.kind == "number" and main.bound is None and (beside.kind == "range" or beside.bound in ("max", "min")):
            return _doubt(replace(main, low=beside.low, high=beside.high), beside.why)
        if main.kind == "number" and beside.kind == "number":
            return _several([main, beside])
        return None

    def _together(self, parts: list[_Quantity]) -> Number | None:
        if len(parts) == 1:
            single = None if self.opening and parts[0].bound is None else _single(parts[0])
            return None if parts[0].link else single
        if len(parts) == 2 and not parts[0].link:
            first, second = parts
            if second.link == "pm":
                return _with_tolerance(first, second)
            bounds = (first.bound, second.bound)
            if self.opening and second.link in ("to", "and") and second.bound is None:
                return _range(first.plain, second.plain)
            if second.link == "to" and all(bound in (None, "approx") for bound in bounds):
                return _range(first.plain, second.plain)
            if first.bound in _LOWER and second.bound in _UPPER and second.link != "pm":
                return _range(first.plain, second.plain)
            if first.bound in _UPPER and second.bound in _LOWER and second.link != "pm":
                return _range(second.plain, first.plain)
        if len(parts) <= 6 and all(part.link in ("sep", "and", "") for part in parts):
            return _several([_single(part) for part in parts])
        return None


_OPERATORS: dict[str, LimitBound] = {
    "<": "<", ">": ">", "<=": "max", "=<": "max", "≤": "max", "≦": "max", "⩽": "max",
    ">=": "min", "=>": "min", "≥": "min", "≧": "min", "⩾": "min",
}  # fmt: skip


def _doubt(number: Number, why: str) -> Number:
    return replace(number, ambiguous=True, why=number.why or why) if why else number


def _single(quantity: _Quantity) -> Number:
    plain, bound = quantity.plain, quantity.bound
    low = plain.value if bound in _LOWER else None
    high = plain.value if bound in _UPPER else None
    doubtful = bool(plain.why)
    return Number(
        plain.value, bound, low, high, plain.decimals, "", doubtful, "number", plain.why, alternative=plain.other
    )


def _range(low: Plain, high: Plain) -> Number:
    why = low.why or high.why
    if low.value > high.value:
        why = "the first end of the range is above the second"
    decimals = max(low.decimals, high.decimals)
    return Number(None, "range", low.value, high.value, decimals, "", bool(why), "range", why)


def _with_tolerance(first: _Quantity, second: _Quantity) -> Number | None:
    if second.bound or first.bound not in (None, "approx"):
        return None
    return _doubt(replace(_single(first), tolerance=second.plain.value), second.plain.why)


def _several(parts: list[Number]) -> Number:
    decimals = max(part.decimals for part in parts)
    why = "the cell holds more than one figure"
    return Number(None, None, None, None, decimals, "", True, "several", why, pieces=tuple(parts))
