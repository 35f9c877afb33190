"""Limits beside a result as the sheet prints them: as numbers, and each on its side."""

from __future__ import annotations

import re
from dataclasses import replace

from importer.meaning.label_limits import limit_in
from importer.printed import PrintedFigure
from importer.reading.numbers import Convention, Number, read_number
from importer.reading.values import split_value
from importer.vocabulary.result_words import plain_word, result_words
from importer.vocabulary.units import parse_unit

_END = r"(\d+(?:[.,]\d+)?|[-–—]?)"
_SIDES = re.compile(rf"^{_END}\s*/\s*{_END}$")


def limits_as_number(figure: PrintedFigure, convention: Convention) -> Number | None:
    """The limits of a specification row as the figure itself: a range, "<" for a maximum, ">" for a minimum."""
    low, high = limit_values(figure, convention)
    shown = " - ".join(t for t in (figure.low, figure.high) if t) or figure.spec
    sample = read_number(split_value(figure.high or figure.low or figure.spec)[0], convention)
    if sample is None or (low is None and high is None):
        return sample
    if low is not None and high is not None:
        return replace(sample, value=None, bound="range", low=low, high=high, kind="range", text=shown)
    if high is not None:
        return replace(sample, value=high, bound="<", low=None, high=None, kind="number", text=shown)
    return replace(sample, value=low, bound=">", low=None, high=None, kind="number", text=shown)


def with_label_limit(figure: PrintedFigure) -> PrintedFigure:
    """The figure with the limit that its label holds ("Moisture (max. 4.5 %)"), where nothing else gives one."""
    if figure.low or figure.high or figure.spec:
        return figure
    text, unit = limit_in(figure.label)
    own = parse_unit(figure.unit or "")
    same = unit is None or own is None or unit.code == own.code
    return replace(figure, spec=text) if text and same else figure


def limit_values(figure: PrintedFigure, convention: Convention) -> tuple[float | None, float | None]:
    """Printed limits as numbers in the figure's unit: (low, high), None where there is none or it is not clear."""
    low = _limit(figure.low, convention, "low")
    high = _limit(figure.high, convention, "high")
    if figure.spec and low is None and high is None:
        sides = _SIDES.match(figure.spec)
        if sides:
            return _of_sides(sides[1], sides[2], convention)
        spec = read_number(_without_unit(figure), convention)
        if spec is not None and not spec.ambiguous:
            if spec.value is not None and spec.tolerance is not None and spec.bound is None:
                return _around(spec.value, spec.tolerance, spec.decimals)
            if spec.bound == "range":
                return spec.low, spec.high
            if spec.bound in ("<", "max"):
                return None, spec.value
            if spec.bound in (">", "min"):
                return spec.value, None
    return low, high


def _of_sides(lower: str, upper: str, convention: Convention) -> tuple[float | None, float | None]:
    """Least and greatest with a stroke between, where a dash stands for none ("9.8 / 11.2", "– / 4.5")."""
    low, high = _limit(lower, convention, "low"), _limit(upper, convention, "high")
    return (low, high) if low is None or high is None or low < high else (None, None)


def _around(value: float, tolerance: float, decimals: int) -> tuple[float, float]:
    """The ends of "10.5 ± 0.7" in a cell of limits."""
    places = decimals + 2
    return round(value - tolerance, places), round(value + tolerance, places)


def _without_unit(figure: PrintedFigure) -> str:
    """A limit without its unit. "295 min" beside a figure that is no time is a least value, not minutes."""
    value, unit, _ = split_value(figure.spec)
    own = parse_unit(figure.unit or "")
    says_bound = unit is not None and plain_word(unit) in result_words().after
    return figure.spec if says_bound and own is not None and own != parse_unit(unit or "") else value


def with_limit_sides(figure: PrintedFigure, convention: Convention) -> PrintedFigure:
    """A limit of one cell put on the side that it belongs to, as printed; a range in one cell stays whole."""
    if not figure.spec or figure.low or figure.high:
        return figure
    low, high = limit_values(figure, convention)
    if low is not None and high is None:
        return replace(figure, low=figure.spec, spec="")
    return replace(figure, high=figure.spec, spec="") if high is not None and low is None else figure


def _limit(text: str, convention: Convention, side: str) -> float | None:
    number = read_number(split_value(text)[0], convention) if text else None
    if number is None or number.ambiguous:
        return None
    if number.bound == "range":
        return number.low if side == "low" else number.high
    return number.value
