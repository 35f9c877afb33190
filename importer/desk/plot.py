"""Earlier batches of a malt from a supplier as a small plot."""

from __future__ import annotations

from dataclasses import dataclass

from importer.models import Analysis, Figure
from importer.store import rows
from importer.store.ledger import Store

MOST = 40
WIDTH, HEIGHT, EDGE = 340.0, 96.0, 10.0


@dataclass(frozen=True, slots=True)
class Point:
    """One batch: where it is drawn, and what it says."""

    x: float
    y: float
    told: str


@dataclass(frozen=True, slots=True)
class Plot:
    """``now`` is the batch in question. ``limits`` are heights of printed limits. ``line`` joins the earlier ones."""

    earlier: tuple[Point, ...]
    now: Point | None
    limits: tuple[float, ...]
    lowest: str
    highest: str
    told: str

    @property
    def line(self) -> str:
        """Points of the line, as SVG wants them."""
        return " ".join(f"{point.x:.1f},{point.y:.1f}" for point in self.earlier)


def plot_of(store: Store, analysis: Analysis, figure: Figure) -> Plot | None:
    """Accepted figures of earlier batches that can be compared; None where there are fewer than two."""
    header = rows.values(analysis)
    supplier, malt = rows.key(header.get("supplier")), rows.key(header.get("malt"))
    if supplier is None or malt is None:
        return None
    found = store.connection.execute(
        "SELECT f.value, a.dated, a.batch FROM analyses a JOIN figures f ON f.analysis = a.id"
        " WHERE a.supplier_key = ? AND a.malt_key = ? AND a.id <> ? AND a.superseded_by IS NULL AND a.kind = 'batch'"
        " AND f.parameter = ? AND f.state = 'accepted' AND f.unit IS ? AND f.family = ? AND f.value IS NOT NULL"
        " AND f.bound IS NULL ORDER BY a.dated DESC LIMIT ?",
        (supplier, malt, analysis.id, figure.parameter, figure.unit, figure.family, MOST),
    ).fetchall()[::-1]
    if len(found) < 2:
        return None
    values = [value for value, _, _ in found]
    limits = [limit for limit in (figure.limits.low, figure.limits.high) if limit is not None]
    everything = [*values, *limits, *([figure.value] if figure.value is not None else [])]
    low, high = float(min(everything)), float(max(everything))

    def height(value: float) -> float:
        return HEIGHT - EDGE - (value - low) / ((high - low) or 1.0) * (HEIGHT - 2 * EDGE)

    step = (WIDTH - 2 * EDGE) / len(found)
    unit = figure.unit or ""
    earlier = tuple(
        Point(EDGE + step * number, height(value), f"{dated}, batch {batch or 'unknown'}: {value:g} {unit}")
        for number, (value, dated, batch) in enumerate(found)
    )
    here = None
    if figure.value is not None:
        here = Point(WIDTH - EDGE, height(figure.value), f"this batch: {figure.value:g} {unit}")
    told = f"{len(found)} earlier batches: {min(values):g} to {max(values):g} {unit}"
    return Plot(earlier, here, tuple(height(limit) for limit in limits), f"{low:g}", f"{high:g}", told)
