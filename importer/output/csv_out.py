"""Long CSV: one row a figure."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

from importer.models import HEADER_KEYS, AlsoPrinted, Analysis, Document, Figure, Step
from importer.output.cells import Cell, Column, joined, safe_text, table_schema, to_text

HEADER_TITLES = {
    "supplier": "Who made or sold the malt",
    "malt": "Name of the malt",
    "batch": "Batch or lot number",
    "certificate": "Number of the certificate",
    "crop_year": "Harvest year",
    "variety": "Barley or other grain variety",
    "produced_on": "Date of production (ISO 8601)",
    "analysed_on": "Date of analysis (ISO 8601)",
    "delivered_on": "Date of delivery (ISO 8601)",
    "best_before": "Best before date (ISO 8601)",
    "quantity": "Quantity delivered",
    "order": "Order number",
    "customer": "Customer",
}

ANALYSIS_COLUMNS = (
    Column("analysis_id", "string", "The same for the same file content"),
    Column("kind", "string", "batch or specification"),
    Column("file", "string", "Name of the file"),
    Column("sha256", "string", "Hash of the file's content"),
    Column("pages", "string", "Pages the analysis stands on, from 1"),
    Column("reading", "string", "text, ocr or spreadsheet"),
    *(Column(key, "string", HEADER_TITLES[key]) for key in HEADER_KEYS),
    Column("method_family", "string", "Method family of the sheet: IoB, EBC or ASBC"),
    Column("family_from", "string", "Whether the family was stated, inferred or assumed"),
    Column("mash", "string", "congress or isothermal-65"),
    Column("basis", "string", "Method family that the values are converted to"),
    Column("analysis_state", "string", "review if any figure or the batch number is"),
)
FIGURE_COLUMNS = (
    Column("derived", "boolean", "True for a figure that was computed and not printed"),
    Column("parameter", "string", "Name of the parameter"),
    Column("value", "number", "The figure on the basis; empty for ranges and described results"),
    Column("unit", "string", "Unit of the value"),
    Column("family", "string", "Method family that the value stands on"),
    Column("bound", "string", "< or > where the value is a limit of detection, range for a range"),
    Column("range_low", "number", "Lower end of a range"),
    Column("range_high", "number", "Upper end of a range"),
    Column("text", "string", "A described result"),
    Column("state", "string", "accepted, or review where anything is in doubt"),
    Column("flags", "string", "Why the figure is in review, and other remarks, separated by spaces"),
    Column("reasons", "string", "The same in words"),
    Column("estimated", "boolean", "True where a correlation between methods lies on the way"),
    Column("spread", "number", "Plus or minus, in the unit of the value"),
    Column("limit_low", "number", "Printed lower limit, on the basis"),
    Column("limit_high", "number", "Printed upper limit, on the basis"),
    Column("steps", "string", "The conversions, in order"),
    Column("offset_applied", "boolean", "For a nitrogen ratio: whether the difference between mashes was applied"),
    Column("offset_points", "number", "That difference, in percentage points"),
    Column("offset_from", "string", "Family that the ratio was printed on"),
    Column("offset_to", "string", "Family that the ratio stands on now"),
    Column("printed_label", "string", "Label as printed"),
    Column("printed_value", "string", "Value as printed"),
    Column("printed_unit", "string", "Unit as printed"),
    Column("printed_method", "string", "Method as printed"),
    Column("printed_low", "string", "Lower limit as printed"),
    Column("printed_high", "string", "Upper limit as printed"),
    Column("page", "integer", "Page that the figure stands on"),
    Column("confidence", "number", "How sure the reading is, from 0 to 1"),
    Column("also_printed", "string", "The same parameter as printed under another family or unit"),
    Column("computed_from", "string", "Parameters that a derived figure was computed from"),
)
LONG_COLUMNS = (*ANALYSIS_COLUMNS, *FIGURE_COLUMNS)


def schema_path(path: Path) -> Path:
    """Where the schema of a CSV file stands: beside it, ``malts.csv`` and ``malts.schema.json``."""
    return path.with_name((path.stem or path.name) + ".schema.json")


def to_csv(doc: Document) -> tuple[str, str]:
    """The long CSV and its Table Schema."""
    text = to_text(LONG_COLUMNS, long_rows(doc))
    return text, table_schema(LONG_COLUMNS, "Malt analyses, one row a figure", None)


def long_rows(doc: Document) -> Iterator[list[Cell]]:
    """The cells of LONG_COLUMNS, one row a figure."""
    for analysis in doc.analyses:
        head = analysis_cells(analysis, doc.basis)
        for derived, figures in ((False, analysis.figures), (True, analysis.derived)):
            for figure in figures:
                yield [*head, *_figure_cells(figure, derived)]


def analysis_cells(analysis: Analysis, basis: str) -> list[Cell]:
    """The cells of ANALYSIS_COLUMNS."""
    header = analysis.header
    return [
        analysis.id,
        analysis.kind,
        safe_text(analysis.source.file),
        analysis.source.sha256,
        joined(str(page) for page in analysis.source.pages),
        analysis.source.reading,
        *(safe_text(header[key].value) if key in header else "" for key in HEADER_KEYS),
        analysis.method_family,
        analysis.family_from,
        analysis.mash,
        basis,
        analysis.state,
    ]


def _figure_cells(figure: Figure, derived: bool) -> list[Cell]:
    low, high = figure.range or (None, None)
    offset, printed = figure.method_offset, figure.printed
    return [
        derived,
        figure.parameter,
        figure.value,
        figure.unit,
        figure.family,
        figure.bound,
        low,
        high,
        safe_text(figure.text),
        figure.state,
        joined(figure.flags),
        safe_text(joined(figure.reasons)),
        figure.estimated,
        figure.spread,
        figure.limits.low,
        figure.limits.high,
        "; ".join(_step(step) for step in figure.steps),
        offset.applied if offset else None,
        offset.points if offset else None,
        offset.from_ if offset else None,
        offset.to if offset else None,
        *(
            [
                safe_text(printed.label),
                safe_text(printed.value),
                safe_text(printed.unit),
                safe_text(printed.method),
                safe_text(printed.low),
                safe_text(printed.high),
                printed.page,
                printed.confidence,
            ]
            if printed
            else [None] * 8
        ),
        safe_text("; ".join(_also(other) for other in figure.also_printed)),
        joined(figure.from_),
    ]


def _step(step: Step) -> str:
    def quantity(value: float, unit: str, family: str | None) -> str:
        return f"{value:g} {unit} ({family})" if family else f"{value:g} {unit}"

    before = quantity(step.from_.value, step.from_.unit, step.from_.family)
    after = quantity(step.to.value, step.to.unit, step.to.family)
    return f"{step.kind}: {before} to {after} [{step.formula}]"


def _also(other: AlsoPrinted) -> str:
    family = f" ({other.family})" if other.family else ""
    return f"{other.printed.label} {other.printed.value} {other.printed.unit or ''}".strip() + family
