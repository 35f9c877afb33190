"""Units in the names of columns."""

from __future__ import annotations

import re

# Units whose sign has no letters, or whose letters would mean something else.
_NAMES = {
    "%": "percent",
    "°L": "lovibond",
    "°Lovibond": "lovibond",
    "L°/kg": "l_deg_per_kg",
    "°C": "celsius",
    "°P": "plato",
    "–": "",
    "-": "",
}


def unit_suffix(unit: str) -> str:
    """A unit as the ending of a column name: ``mg/L`` gives ``mg_per_l``, ``°Lintner`` gives ``lintner``."""
    if unit in _NAMES:
        return _NAMES[unit]
    text = unit.replace("/", " per ").replace("µ", "u").replace("μ", "u").replace("²", "2").replace("%", " percent ")
    return re.sub(r"[^0-9a-z]+", "_", text.lower()).strip("_")
