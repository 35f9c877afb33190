"""Flags, codes and kinds in words for a brewer."""

from __future__ import annotations

from importer.models import Family, FamilyFrom, Figure, Flag, HeaderField, Mash, Printed, StepKind, Unrecognised
from importer.reading.dates import DayOrder, parse_date
from importer.words import ReadingKind

FLAG_WORDS: dict[Flag, str] = {
    "nitrogen-ratio-offset-applied": "The difference between the mashes was applied to the nitrogen ratio.",
    "nitrogen-ratio-offset-not-applied": "The nitrogen ratio still stands on the mash of the sheet.",
    "family-assumed": "The sheet does not say which method family it follows.",
    "unit-assumed": "No unit is printed for this figure.",
    "moisture-basis-assumed": "The sheet does not say whether this is on dry matter or as is.",
    "label-doubtful": "The label could mean something else.",
    "reading-doubtful": "The number could not be read with certainty.",
    "outside-possible": "No malt has such a value: it may be misread, or stand in another unit.",
    "unusual-for-malt": "The value is unusual for malt.",
    "check-failed": "It does not agree with other figures of the sheet.",
    "outside-limits": "The value lies outside the limits that are printed for it.",
    "no-moisture": "The sheet gives no moisture, so dry matter and as is cannot be told apart.",
    "not-convertible": "No relation leads from the sheet's method to the basis: the figure stays on its own.",
    "duplicate-row": "The sheet prints this parameter more than once.",
    "corrected-by-person": "A person has corrected or confirmed this figure.",
    "food-safety": "A residue or contaminant: shown as printed, never judged.",
}

# Flags that say nothing about doubt and that the table tells in another way.
TOLD_ELSEWHERE: frozenset[Flag] = frozenset(
    {"nitrogen-ratio-offset-applied", "nitrogen-ratio-offset-not-applied", "food-safety"}
)

CAUTION = (
    "Residues and contaminants are shown as the sheet prints them. Limits differ by country and change: whether a malt "
    "may be used is for your laboratory, your supplier and your authority to say. onebasis does not judge it."
)

MASH_WORDS: dict[Mash, str] = {"congress": "congress mash", "isothermal-65": "mash at a constant 65 °C"}
FROM_WORDS: dict[FamilyFrom, str] = {
    "stated": "stated on the sheet",
    "inferred": "inferred from units and labels",
    "assumed": "assumed",
}
STEP_WORDS: dict[StepKind, str] = {
    "unit": "exact change of unit",
    "moisture-basis": "exact, with the sheet's own moisture",
    "definition": "by definition",
    "scale": "formula that defines the scale",
    "correlation": "empirical relation between methods: an estimate",
}


_DAYS = frozenset({"produced_on", "analysed_on", "delivered_on", "best_before"})
_DAY_ORDERS: tuple[DayOrder, ...] = ("dmy", "mdy")
UNSURE_READING = "this could not be read with certainty"
UNSURE_DAY = "the date is read with certainty, but not what it is the date of"
UNSURE_ORDER = "day and month may stand the other way round"
UNSURE_ENTRY = "the sheet does not say plainly that this is it"


def entry_doubt(name: str, field: HeaderField, reading: ReadingKind) -> str:
    """Why an entry of the head is in review: how it reads, the order of a date, or what it is an entry of."""
    if reading == "ocr":
        return UNSURE_READING
    if name not in _DAYS:
        return UNSURE_ENTRY
    if parse_date(field.text) == (field.value, True):
        return UNSURE_DAY
    both = {read[0] for order in _DAY_ORDERS if (read := parse_date(field.text, order)) is not None}
    return UNSURE_ORDER if len(both) > 1 else UNSURE_READING


def row_words(row: Unrecognised) -> str:
    """A row that no parameter was found for, as printed; a unit that stands in the value is not said twice."""
    unit = row.unit if row.unit and not row.value.rstrip().endswith(row.unit) else ""
    return " ".join(f"{row.label}: {row.value} {unit}".split())


def offset_words(figure: Figure) -> str | None:
    """The difference between mashes on a nitrogen ratio, in words; None where there is none to tell."""
    offset = figure.method_offset
    if offset is None:
        return None
    points = f"{abs(offset.points):g} points"
    if offset.from_ == offset.to:
        return None
    came = f"from {_method(offset.from_)} to {_method(offset.to)}"
    if offset.applied:
        verb = "added" if offset.points >= 0 else "taken off"
        return f"{points} were {verb} to bring the ratio {came}, whose mashes dissolve different amounts of nitrogen."
    if offset.points:
        return f"The difference between the mashes ({points}, {came}) was not applied."
    return f"The difference between the mashes was not applied ({came})."


def _method(family: Family | None) -> str:
    return family or "an unknown method"


def as_printed(printed: Printed, figure: Figure) -> str:
    """What the sheet prints for a figure. A unit is said beside a number only: "normal" has none, nor has a dash."""
    described = figure.value is None and figure.range is None
    is_dash = printed.unit is not None and not printed.unit.strip(" -–—−.")
    return with_unit(printed.value, None if described or is_dash else printed.unit)


def with_unit(value: str, unit: str | None) -> str:
    """A printed value with its unit, once: where the value has it already, it is not said again."""
    value, unit = value.strip(), (unit or "").strip()
    return value if not unit or value.casefold().endswith(unit.casefold()) else f"{value} {unit}".strip()


def counted(count: int, one: str, many: str) -> str:
    """A number with the thing that is counted: "1 batch", "2 batches"."""
    return f"{count} {one if count == 1 else many}"


def spoken(key: str) -> str:
    """A key of the head as words: "crop year"."""
    return key.replace("_", " ")
