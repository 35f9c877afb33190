"""What a made sheet really says: the answer that a reading is compared with."""

from __future__ import annotations

import json
from dataclasses import asdict, dataclass, field
from typing import Any, Literal

Certainty = Literal["sure", "either", "ambiguous"]
"""``sure``: a good reader accepts it. ``either``: a careful one may ask. ``ambiguous``: an honest one must ask."""

Basis = Literal["dry", "as-is"]


@dataclass(frozen=True, slots=True)
class Target:
    """One value on the EBC basis that is right for a figure.

    ``family`` None means that the family of the answer plays no part. ``low`` and ``high`` are used for ranges.
    ``estimated`` targets rest on a correlation and are right only if the figure says so; ``unconverted`` ones are
    the sheet's own value on the sheet's own family, right only with the flag that says that nothing was converted.
    """

    unit: str
    value: float | None
    tolerance: float = 0.0
    family: str | None = None
    low: float | None = None
    high: float | None = None
    estimated: bool = False
    unconverted: bool = False


@dataclass(slots=True)
class TruthFigure:
    """One printed figure. ``unit`` is the canonical code, ``unit_text`` what is printed (empty: nothing)."""

    parameter: str
    label: str
    value: str
    unit: str
    unit_text: str
    family: str
    basis: Basis | None = None
    number: float | None = None
    bound: Literal["<", ">", "range"] | None = None
    range: tuple[float, float] | None = None
    text: str | None = None
    low: str = ""
    high: str = ""
    targets: tuple[Target, ...] = ()
    certainty: Certainty = "sure"
    why: str = ""
    also: bool = False


@dataclass(slots=True)
class TruthRow:
    """A row with a result that is no canonical parameter. ``may_be`` names parameters that are tolerated for it."""

    label: str
    value: str
    unit_text: str
    may_be: tuple[str, ...] = ()


@dataclass(slots=True)
class TruthHeader:
    """One header entry. ``required`` is False where the sheet prints it without a caption (a letterhead, say)."""

    text: str
    value: str
    certainty: Certainty = "sure"
    required: bool = True


@dataclass(slots=True)
class TruthAnalysis:
    """One batch or one specification. ``limits_only`` marks a specification without typical values."""

    kind: Literal["batch", "specification"]
    families: tuple[str, ...]
    mash: str | None
    header: dict[str, TruthHeader] = field(default_factory=dict)
    figures: list[TruthFigure] = field(default_factory=list)
    unrecognised: list[TruthRow] = field(default_factory=list)
    actual: dict[str, float] = field(default_factory=dict)


@dataclass(slots=True)
class Truth:
    """The whole answer for one file."""

    layout: str
    language: str
    family: str
    seed: int
    analyses: list[TruthAnalysis] = field(default_factory=list)
    not_figures: list[str] = field(default_factory=list)

    def as_dict(self) -> dict[str, Any]:
        return asdict(self)

    def as_json(self) -> str:
        return json.dumps(self.as_dict(), ensure_ascii=False, indent=1)


@dataclass(frozen=True, slots=True)
class Made:
    """A made sheet: the PDF and what it says."""

    pdf_bytes: bytes
    truth: Truth
