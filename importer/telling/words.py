"""Figures and verdicts in the words and signs that tables and pages share."""

from __future__ import annotations

from importer.deciding.results import Difference, Named, Shown, Verdict
from importer.output.table_line import WHOLE_FROM, rounded, rounded_range, spread_text
from importer.output.terminal import clean
from importer.vocabulary.parameters import parameters

SIGNS: dict[Verdict, str] = {"equal": "=", "within-scatter": "≈", "not-said": "?", "different": "≠"}
LEGEND = (
    "= the same · ≈ no more than the method's own scatter, or than the spread of an estimate · "
    "↑ ↓ more than that · ? cannot be said: no precision is known, or the reason is told below"
)


def number(value: float, parameter: str) -> str:
    """A value at the decimals of its parameter."""
    entry = parameters().get(parameter)
    text = rounded(value, entry.decimals if entry else 2).replace("-", "−")
    return text.removesuffix(".0") if abs(value) >= WHOLE_FROM else text


def shown_text(shown: Shown | None, parameter: str) -> str:
    """A figure with bound, spread and unit; ``~`` for an estimate, ``?`` for one in review."""
    if shown is None:
        return "–"
    if shown.range is not None:
        entry = parameters().get(parameter)
        text = rounded_range(*shown.range, entry.decimals if entry else 2).replace("-", "−")
    elif shown.value is not None:
        text = f"{f'{shown.bound} ' if shown.bound else ''}{number(shown.value, parameter)}"
    else:
        return clean(shown.text or "–")
    spread = f" ± {spread_text(shown.spread, text)}" if shown.spread is not None else ""
    unit = f" {shown.unit}" if shown.unit and shown.unit not in ("pH", "–") else ""
    marks = (" ~" if shown.estimated else "") + (" ?" if shown.state == "review" else "")
    return f"{text}{spread}{unit}{marks}"


def sign(difference: Difference | None) -> str:
    """The sign of a difference: an arrow where it is more than scatter."""
    if difference is None:
        return ""
    if difference.verdict == "different" and difference.difference is not None:
        return "↑" if difference.difference > 0 else "↓"
    return SIGNS[difference.verdict]


def who(named: Named) -> str:
    """Malt and batch in short."""
    malt = clean(named.malt) or "Malt without a name"
    return f"{malt} · batch {clean(named.batch)}" if named.batch else f"{malt} · no batch number found"
