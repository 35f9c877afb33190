"""Readings made from the answer instead of the sheet: they show that the comparison counts what it should."""

from __future__ import annotations

from importer.models import Analysis, Figure, HeaderField, Limits, Printed, Sheet, Source, Unrecognised
from tests.sheets.truth import Truth, TruthAnalysis, TruthFigure

_BOX = (0.0, 0.0, 1.0, 1.0)


def perfect_figure(truth: TruthFigure, specification: bool = False) -> Figure:
    """The figure as a faultless reader gives it."""
    target = truth.targets[0] if truth.targets else None
    flags: tuple[str, ...] = ("not-convertible",) if target and target.unconverted else ()
    return Figure(
        parameter=truth.parameter,
        value=target.value if target else None,
        unit=target.unit if target else None,
        family=(target.family if target and target.family else truth.family),
        bound=truth.bound,
        range=truth.range,
        text=truth.text,
        state="review" if truth.certainty == "ambiguous" else "accepted",
        flags=flags,
        estimated=bool(target and target.estimated),
        limits=Limits(),
        printed=Printed(
            label=truth.label,
            value=truth.value,
            unit=truth.unit_text or None,
            low=truth.low,
            high=truth.high,
            page=1,
            box=_BOX,
        ),
    )


def perfect_analysis(truth: TruthAnalysis, number: int) -> Analysis:
    """The analysis as a faultless reader gives it."""
    header = {
        key: HeaderField(
            value=field.value,
            text=field.text,
            page=1,
            box=_BOX,
            state="review" if field.certainty == "ambiguous" else "accepted",
        )
        for key, field in truth.header.items()
    }
    figures = tuple(perfect_figure(f) for f in truth.figures if not f.also)
    besides = tuple(perfect_figure(f) for f in truth.figures if f.also)
    strange = tuple(
        Unrecognised(label=r.label, value=r.value, unit=r.unit_text, page=1, box=_BOX) for r in truth.unrecognised
    )
    return Analysis(
        id=f"made-{number}",
        kind=truth.kind,
        source=Source(file="made.pdf", sha256="0" * 64, pages=(1,), reading="text"),
        header=header,
        method_family=truth.families[0],
        family_from="stated",
        mash=truth.mash,
        state="accepted",
        figures=figures + besides,
        unrecognised=strange,
    )


def perfect(truth: Truth) -> Sheet:
    """A whole sheet read without a fault."""
    return Sheet(analyses=tuple(perfect_analysis(a, k + 1) for k, a in enumerate(truth.analyses)))
