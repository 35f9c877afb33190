"""Builds the outward records of a conversion whose JSON name is a Python keyword ("from")."""

from __future__ import annotations

from importer.models import Family, MethodOffset, Quantity, Step, StepKind


def make_step(kind: StepKind, start: Quantity, end: Quantity, formula: str, source: str) -> Step:
    """One change of a figure."""
    return Step.model_validate({"kind": kind, "from": start, "to": end, "formula": formula, "source": source})


def make_offset(start: Family, end: Family, points: float | None) -> MethodOffset:
    """What was added to a ratio on the way between two families; None where nothing was."""
    applied = points is not None
    return MethodOffset.model_validate({"applied": applied, "points": points or 0.0, "from": start, "to": end})
