"""The outward data: what ``onebasis read --json`` prints and ``read_sheet`` returns.

Units and names are those of the parameter table in README. All models are frozen and refuse unknown keys.
"""

from __future__ import annotations

from typing import Literal

from pydantic import BaseModel, ConfigDict, Field

Family = Literal["IoB", "EBC", "ASBC"]
FAMILIES: tuple[Family, ...] = ("EBC", "IoB", "ASBC")
State = Literal["accepted", "review"]
Bound = Literal["<", ">", "range"]
Mash = Literal["congress", "isothermal-65"]
FamilyFrom = Literal["stated", "inferred", "assumed"]
StepKind = Literal["unit", "moisture-basis", "definition", "scale", "correlation"]
Flag = Literal[
    "nitrogen-ratio-offset-applied",
    "nitrogen-ratio-offset-not-applied",
    "family-assumed",
    "unit-assumed",
    "moisture-basis-assumed",
    "label-doubtful",
    "reading-doubtful",
    "outside-possible",
    "unusual-for-malt",
    "check-failed",
    "outside-limits",
    "no-moisture",
    "not-convertible",
    "duplicate-row",
    "corrected-by-person",
    "food-safety",
]
ProblemCode = Literal[
    "password-protected",
    "damaged",
    "unsupported-type",
    "no-text-and-no-ocr",
    "no-figures-found",
    "too-large",
    "took-too-long",
    "empty",
]
HEADER_KEYS = (
    "supplier",
    "malt",
    "batch",
    "certificate",
    "crop_year",
    "variety",
    "produced_on",
    "analysed_on",
    "delivered_on",
    "best_before",
    "quantity",
    "order",
    "customer",
)
BoxList = tuple[float, float, float, float]


class Model(BaseModel):
    """Frozen, strict about names, populated by field name or by the name used in JSON."""

    model_config = ConfigDict(frozen=True, extra="forbid", populate_by_name=True, allow_inf_nan=False)


class Source(Model):
    """Where an analysis was read: file name, content hash, page numbers (from 1) and the kind of reading."""

    file: str
    sha256: str
    pages: tuple[int, ...]
    reading: Literal["text", "ocr", "spreadsheet"]


class HeaderField(Model):
    """One header entry: ``value`` is cleaned (dates ISO 8601), ``text`` is as printed."""

    value: str
    text: str
    page: int
    box: BoxList
    state: State


class Printed(Model):
    """A figure as it stands on the sheet, character for character. ``confidence`` is 1.0 for a text layer."""

    label: str
    value: str
    unit: str | None = None
    method: str | None = None
    low: str = ""
    high: str = ""
    page: int
    box: BoxList
    confidence: float = 1.0


class Quantity(Model):
    """A number with its unit and the method family it stands on (None: the same in all families)."""

    value: float
    unit: str
    family: Family | None = None


class Step(Model):
    """One change of a figure on its way to the basis, never two in one."""

    kind: StepKind
    from_: Quantity = Field(alias="from")
    to: Quantity
    formula: str
    source: str


class Limits(Model):
    """Printed limits, on the basis and in the figure's unit."""

    low: float | None = None
    high: float | None = None


class MethodOffset(Model):
    """What was added to a nitrogen ratio because the families mash differently, in percentage points."""

    applied: bool
    points: float
    from_: Family | None = Field(alias="from")
    to: Family


class AlsoPrinted(Model):
    """The same parameter printed once more on the sheet under another family or unit; kept and used as a check."""

    family: Family | None = None
    value: float | None = None
    unit: str | None = None
    bound: Bound | None = None
    range: tuple[float, float] | None = None
    printed: Printed


class Figure(Model):
    """One parameter of an analysis. See README for every key and flag."""

    parameter: str
    value: float | None = None
    unit: str | None = None
    family: Family
    bound: Bound | None = None
    range: tuple[float, float] | None = None
    text: str | None = None
    state: State
    flags: tuple[Flag, ...] = ()
    reasons: tuple[str, ...] = ()
    estimated: bool = False
    spread: float | None = None
    limits: Limits = Limits()
    printed: Printed | None = None
    steps: tuple[Step, ...] = ()
    method_offset: MethodOffset | None = None
    also_printed: tuple[AlsoPrinted, ...] = ()
    from_: tuple[str, ...] = Field(default=(), alias="from")


class Unrecognised(Model):
    """A row with a result that no parameter was found for."""

    label: str
    value: str
    unit: str | None = None
    page: int
    box: BoxList


class Check(Model):
    """One arithmetic or limit check between figures of the sheet."""

    check: str
    parameters: tuple[str, ...]
    holds: bool
    detail: str


class Analysis(Model):
    """The results of one malt batch, or a general specification."""

    id: str
    kind: Literal["batch", "specification"]
    source: Source
    header: dict[str, HeaderField]
    method_family: Family
    family_from: FamilyFrom
    mash: Mash | None
    state: State
    figures: tuple[Figure, ...]
    derived: tuple[Figure, ...] = ()
    unrecognised: tuple[Unrecognised, ...] = ()
    checks: tuple[Check, ...] = ()


class Problem(Model):
    """Why a file, or a part of it, could not be read, and what to do."""

    file: str
    code: ProblemCode
    message: str


class Sheet(Model):
    """Everything that was read from one file."""

    analyses: tuple[Analysis, ...] = ()
    problems: tuple[Problem, ...] = ()


class Document(Model):
    """The JSON document as written: many sheets on one basis."""

    format: Literal["onebasis/1"] = "onebasis/1"
    basis: Family
    analyses: tuple[Analysis, ...] = ()
    problems: tuple[Problem, ...] = ()
