"""One figure as a line of the table, and what is to be said about it."""

from __future__ import annotations

import re
from dataclasses import dataclass
from decimal import ROUND_HALF_UP, Decimal

from importer.models import Analysis, Family, Figure, Limits
from importer.output.terminal import clean, fit
from importer.output.words import FLAG_WORDS, TOLD_ELSEWHERE, as_printed, offset_words
from importer.vocabulary.parameters import parameters

MOST_FOR_TEXT = 30
# From here on a ".0" says nothing.
WHOLE_FROM = 100
_DECIMALS = re.compile(r"\d[.,](\d+)(?!.*\d[.,]\d)")
_PLACES = re.compile(r"\.(\d+)")


@dataclass(frozen=True, slots=True)
class Line:
    """One figure as cells; ``doubts`` and ``remarks`` are told under it, ``apart`` once at the foot of the analysis.

    ``apart`` says why a figure that stands on its own method does so.
    """

    name: str
    printed: str
    value: str
    limits: str
    state: str
    doubts: tuple[str, ...] = ()
    remarks: tuple[str, ...] = ()
    apart: str | None = None


def to_line(figure: Figure, analysis: Analysis, basis: Family) -> Line:
    """The line of a figure. Everything of it is clean of what could steer a terminal."""
    known = parameters().get(figure.parameter)
    title = known.title if known else figure.parameter.replace("_", " ")
    printed = ""
    if figure.printed is not None:
        printed = clean(as_printed(figure.printed, figure))
    mark = own_mark(figure, analysis, basis)
    reasons = [clean(reason) for reason in figure.reasons]
    apart = None
    if mark:
        why = [reason for reason in reasons if reason.startswith(f"{title}: ")]
        reasons = [reason for reason in reasons if reason not in why]
        because = why[0].removeprefix(f"{title}: ") if why else "no relation leads from there to the basis."
        apart = f"({mark}) stays on the sheet's own method: {because}"
    doubts, remarks = _told(figure, reasons)
    value = _value(figure, known.decimals if known else 2)
    return Line(
        title,
        printed,
        f"{value} ({mark})" if mark else value,
        _limits(figure.limits, known.decimals if known and figure.steps else None),
        figure.state,
        tuple(doubts),
        tuple(remarks),
        apart,
    )


def own_mark(figure: Figure, analysis: Analysis, basis: Family) -> str | None:
    """What a figure stands on that is not on the basis; None for one that is."""
    if figure.family != basis:
        return figure.family
    if "not-convertible" not in figure.flags:
        return None
    return "65 °C mash" if analysis.mash == "isothermal-65" else "own method"


def _told(figure: Figure, reasons: list[str]) -> tuple[list[str], list[str]]:
    """What is said under a figure: its doubts, and remarks that are none."""
    flags = [flag for flag in figure.flags if flag not in TOLD_ELSEWHERE and flag != "not-convertible"]
    words = [FLAG_WORDS[flag] for flag in flags]
    offset = offset_words(figure)
    remarks = [offset] if offset else []
    if figure.state == "accepted":
        return [], [*(reasons or words), *remarks]
    doubts = reasons or words or ["Please compare it with the sheet."]
    if figure.printed is not None:
        doubts = [*doubts, f"printed as “{clean(figure.printed.label)}”, page {figure.printed.page}"]
    return doubts, remarks


def _value(figure: Figure, decimals: int) -> str:
    untouched = figure.printed is not None and not figure.steps
    if figure.range is not None:
        low, high = figure.range
        number = f"{plain(low)} – {plain(high)}" if untouched else rounded_range(low, high, decimals)
    elif figure.value is not None:
        bound = f"{figure.bound} " if figure.bound in ("<", ">") else ""
        number = bound + (_with_zeros(figure) if untouched else rounded(figure.value, decimals))
    else:
        return fit(clean(figure.text or "–"), MOST_FOR_TEXT)
    unit = f" {figure.unit}" if figure.unit and figure.unit not in ("pH", "–") else ""
    spread = f" ± {spread_text(figure.spread, number)}" if figure.spread is not None else ""
    estimate = " ~" if figure.estimated else ""
    return f"{number}{spread}{unit}{estimate}"


def _with_zeros(figure: Figure) -> str:
    """The value with the decimals that the sheet prints, so that 4.0 does not become 4."""
    value = figure.value or 0.0
    found = _DECIMALS.search(figure.printed.value) if figure.printed else None
    text = f"{value:.{len(found[1])}f}" if found else ""
    return text if text and float(text) == value else plain(value)


def rounded(value: float, decimals: int) -> str:
    """A converted value at the parameter's decimals, with more where those would lose a visible part of it."""
    while decimals < 6 and abs(round(value, decimals) - value) > 0.005 * abs(value):
        decimals += 1
    return f"{value:.{decimals}f}"


def rounded_range(low: float, high: float, decimals: int) -> str:
    """Both ends of a converted range, with the decimals that the finer of them needs."""
    most = max(len(rounded(end, decimals).partition(".")[2]) for end in (low, high))
    ends = [f"{end:.{most}f}" for end in (low, high)]
    if min(abs(low), abs(high)) >= WHOLE_FROM and all(end.endswith(".0") for end in ends):
        ends = [end.removesuffix(".0") for end in ends]
    return " – ".join(ends)


def spread_text(spread: float, number: str) -> str:
    """A spread at the decimals of its number, with more where those would change it by more than a fifth."""
    exact = Decimal(repr(spread))
    shown = max((len(places) for places in _PLACES.findall(number)), default=0)
    for decimals in range(shown, 7):
        text = exact.quantize(Decimal(1).scaleb(-decimals), ROUND_HALF_UP)
        if abs(text - exact) <= abs(exact) / 5:
            return plain(float(text))
    return plain(spread)


def short(value: float, digits: int = 2) -> str:
    """A number with so many digits that count, without an exponent."""
    return plain(float(f"{value:.{digits}g}"))


def plain(value: float) -> str:
    """A number without an exponent and without needless zeros."""
    text = f"{value:.10g}"
    return text if "e" not in text else f"{value:f}"


def _limits(limits: Limits, decimals: int | None) -> str:
    """Limits as they are printed, or at so many ``decimals`` where they were converted with their figure."""
    low, high = limits.low, limits.high
    if low is not None and high is not None:
        return f"{plain(low)} – {plain(high)}" if decimals is None else rounded_range(low, high, decimals)
    end = low if low is not None else high
    if end is None:
        return ""
    return f"{'max' if low is None else 'min'} {plain(end) if decimals is None else rounded(end, decimals)}"
