"""Tables by chance: cells as sheets of the trade have them, and as they should not."""

from __future__ import annotations

from hypothesis import strategies as st

LABELS = (
    "Moisture",
    "Extract fine, dry",
    "Colour",
    "Protein, dry",
    "Eiweiß wfr.",
    "Friability",
    "Humidité",
    "pH",
    "FAN",
)
HEADS = (
    "Parameter",
    "Result",
    "Unit",
    "Min",
    "Max",
    "Batch A-114",
    "Specification",
    "Crop 2024",
    "Ergebnis",
    "EBC",
    "IoB",
)
UNITS = ("%", "EBC", "mg/l", "WK", "L°/kg", "% dry", "mPa·s", "°L", "-")
ODD = (
    "",
    "=",
    "n.d.",
    "< 0.5",
    "4.1 - 4.5",
    "± 0.2",
    "*",
    "ok",
    "24.10.2025",
    "1,234",
    "٤٫٣",
    "水分",
    "\u202e4.3",
    "a" * 90,
)

numbers = st.builds(lambda n, d, sign: f"{n / 10**d:.{d}f}".replace(".", sign), st.integers(0, 9999), st.integers(0, 3),
                    st.sampled_from(".,"))  # fmt: skip
cells = st.one_of(
    st.sampled_from(LABELS), st.sampled_from(HEADS), st.sampled_from(UNITS), st.sampled_from(ODD), numbers, numbers,
    st.text(max_size=8),
)  # fmt: skip
grids = st.integers(1, 6).flatmap(lambda wide: st.lists(st.lists(cells, min_size=wide, max_size=wide), max_size=9))
