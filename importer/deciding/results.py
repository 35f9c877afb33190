"""What this package hands on: plain frozen models, the same for JSON and for Python."""

from __future__ import annotations

from typing import Literal

from importer.models import Bound, Family, Model, State

Verdict = Literal["equal", "within-scatter", "different", "not-said"]
Standing = Literal["within", "outside", "not-said"]
EffectKind = Literal["computed", "caution", "withheld"]


class Named(Model):
    """Which analysis: its id and what the sheet says of it; empty where it says nothing. ``day`` is ISO 8601."""

    id: str
    supplier: str = ""
    malt: str = ""
    batch: str = ""
    crop_year: str = ""
    day: str = ""
    method_family: Family
    file: str


class Shown(Model):
    """One figure as it is shown. ``number`` counts the results behind a mean. ``printed`` is what the sheet prints."""

    value: float | None = None
    unit: str | None = None
    family: Family
    ground: str = ""
    bound: Bound | None = None
    range: tuple[float, float] | None = None
    text: str | None = None
    state: State
    estimated: bool = False
    spread: float | None = None
    number: int = 1
    printed: str = ""


class Difference(Model):
    """One figure against another. ``difference`` is the later or other less the reference, both in ``unit``.

    ``compared_on`` names the method where it is not that of the values shown: an estimate is compared as it was
    before it was estimated, where both sheets stand on one method.
    """

    verdict: Verdict
    difference: float | None = None
    allowance: float | None = None
    unit: str | None = None
    compared_on: str = ""
    words: str
    formula: str = ""
    source: str = ""


class Row(Model):
    """One parameter on one ground: a cell for each column, and each against the column ``reference`` (from 0)."""

    parameter: str
    title: str
    ground: str = ""
    cells: tuple[Shown | None, ...]
    differences: tuple[Difference | None, ...]
    reference: int = 0


class Residue(Model):
    """A residue or contaminant: shown with its unit and bound, never judged."""

    parameter: str
    title: str
    cells: tuple[Shown | None, ...]


class Comparison(Model):
    """Analyses side by side on one basis; the first is the one that the others are held against."""

    basis: Family
    analyses: tuple[Named, ...]
    rows: tuple[Row, ...]
    residues: tuple[Residue, ...] = ()
    notice: str = ""


class AgainstLimit(Model):
    """One figure against an agreed limit. ``low`` and ``high`` are the limit in the unit that was compared in."""

    parameter: str
    title: str
    standing: Standing
    value: float | None = None
    unit: str | None = None
    ground: str = ""
    low: float | None = None
    high: float | None = None
    agreed: str
    words: str
    within_scatter: bool = False


class Effect(Model):
    """What a figure does. ``withheld`` says why nothing was computed; a caution is no more than that."""

    subject: str
    kind: EffectKind
    malt: str = ""
    words: str
    value: float | None = None
    unit: str | None = None
    spread: float | None = None
    formula: str = ""
    validity: str = ""
    source: str = ""


class Batch(Model):
    """What a batch means: against the last one, the mean of some before, what was agreed, and what it does."""

    basis: Family
    analysis: Named
    rows: tuple[Row, ...]
    against: tuple[str, ...]
    harvest: str = ""
    agreed: tuple[AgainstLimit, ...] = ()
    agreed_from: str = ""
    effects: tuple[Effect, ...] = ()
    residues: tuple[Residue, ...] = ()
    notice: str = ""
