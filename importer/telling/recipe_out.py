"""The feed of a recipe tool as CSV, with its Table Schema, and as JSON. Columns never change within a format."""

from __future__ import annotations

from importer.deciding.feed import Change, Feed
from importer.output.cells import Cell, Column, safe_text, table_schema, to_text
from importer.output.terminal import clean

COLUMNS = (
    Column("supplier", "string", "Who made or sold the malt"),
    Column("malt", "string", "Name of the malt"),
    Column("batch", "string", "The batch in use: the latest without anything in review, or the one pinned"),
    Column("crop_year", "string", "Harvest year"),
    Column("day", "string", "Day of the analysis (ISO 8601), else of production or delivery"),
    Column("pinned", "boolean", "True where the batch was pinned"),
    Column("analysis_id", "string", "Id of the analysis in the store"),
    Column("moisture_percent", "number", "Moisture, %"),
    Column("extract_family", "string", "Method family that the extracts were measured on; they are not converted"),
    Column("extract_mash", "string", "Mash that the extracts were measured on: congress or isothermal-65"),
    Column("extract_fine_as_is_percent", "number", "Extract, fine grind, as is, % (L°/kg ÷ 3.86 on IoB)"),
    Column("extract_fine_dry_percent", "number", "Extract, fine grind, dry, %"),
    Column("extract_coarse_as_is_percent", "number", "Extract, coarse grind, as is, %"),
    Column("extract_coarse_dry_percent", "number", "Extract, coarse grind, dry, %"),
    Column("planning_grind", "string", "Grind of the next two: coarse where the sheet gives it, else fine"),
    Column("extract_as_is_l_deg_per_kg", "number", "Extract as is, litre-degrees per kg, same mash"),
    Column("extract_as_is_points_per_lb_us_gal", "number", "Extract as is, points per pound per US gallon, same mash"),
    Column("colour_ebc", "number", "Colour, EBC units"),
    Column("colour_srm", "number", "Colour, SRM (EBC ÷ 1.97)"),
    Column("colour_family", "string", "Method family that the colour stands on"),
    Column("colour_mash", "string", "Mash of that colour"),
    Column("diastatic_power_wk", "number", "Diastatic power, WK, dry"),
    Column("diastatic_power_lintner", "number", "Diastatic power, degrees Lintner, dry"),
    Column("diastatic_power_estimated", "boolean", "True where it rests on a correlation between methods"),
    Column("diastatic_power_spread_wk", "number", "Plus or minus, WK, where it is an estimate"),
    Column("protein_percent", "number", "Total protein, dry, %"),
    Column("nitrogen_ratio_percent", "number", "Soluble to total nitrogen, %"),
    Column("nitrogen_ratio_family", "string", "Method family that the ratio stands on"),
    Column("nitrogen_ratio_mash", "string", "Mash that the ratio stands on"),
    Column("nitrogen_ratio_estimated", "boolean", "True where it was brought there by a correlation"),
    Column("nitrogen_ratio_spread", "number", "Plus or minus, percentage points, where it is an estimate"),
    Column(
        "review",
        "string",
        "Parameters of the batch in doubt, their numbers are empty; rows of the sheet without a parameter",
    ),
)


def to_recipe_csv(feed: Feed) -> tuple[str, str]:
    """The CSV and its Table Schema."""
    rows: list[list[Cell]] = []
    for malt in feed.malts:
        values = malt.model_dump()
        rows.append([_cell(column, values[column.name]) for column in COLUMNS])
    schema = table_schema(COLUMNS, "Malts in use, one row a malt", ("supplier", "malt"))
    return to_text(COLUMNS, rows), schema


def _cell(column: Column, value: Cell) -> Cell:
    return safe_text(value) if column.type == "string" and isinstance(value, str) else value


def to_recipe_json(feed: Feed) -> str:
    """The feed as JSON text; the same feed gives the same text."""
    return feed.model_dump_json(indent=2) + "\n"


def change_words(change: Change) -> str:
    """A change in one line."""
    batch = (
        change.batch_now if change.batch_now == change.batch_before else f"{change.batch_before} → {change.batch_now}"
    )
    before, now = (_told(value) for value in (change.before, change.now))
    return clean(f"{change.malt} ({batch}), {change.column}: {before} → {now}")


def _told(value: object) -> str:
    return "none" if value is None or value == "" else f"{value:g}" if isinstance(value, float) else str(value)
