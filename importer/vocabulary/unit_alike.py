"""Units that a reader of scans took for letters that print alike."""

from __future__ import annotations

from importer.vocabulary.unit_names import Unit, parse_unit, parse_units


def parse_alike(text: str) -> Unit | None:
    """The unit with a stroke or degree sign that prints like the text ("Id/kg", "°loB"), or None."""
    unit = parse_unit(text) if "/" in text or "°" in text else None
    return None if unit is None or unit.damaged or parse_units(text) else unit
