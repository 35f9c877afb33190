"""Reissued certificates: the same batch of the same supplier once more, with other figures or the same again.

The later one supersedes the earlier one: both stay, what changed is listed, and only the later one is current. Where
it is not certain that both are about the same thing, or which of the two is the later one, both stay current: losing a
figure is worse than a row too many.
"""

from __future__ import annotations

import sqlite3
from collections.abc import Callable
from dataclasses import dataclass

from importer.models import Analysis
from importer.store import rows

# A certificate of one or two figures more (residues, say) does not stand in for the whole analysis.
_SHARE = 0.5


@dataclass(frozen=True, slots=True)
class Superseded:
    """One analysis that another took the place of, and the figures that differ."""

    older: str
    newer: str
    supplier: str
    batch: str
    newer_file: str
    older_file: str
    changes: tuple[dict[str, str | None], ...]

    def detail(self) -> str:
        """For the history."""
        return rows.as_json({"by": self.newer, "changes": list(self.changes)})


def settle(connection: sqlite3.Connection, analysis: Analysis, next_change: Callable[[], int]) -> list[Superseded]:
    """Compares an analysis, just stored, with the current ones of its batch; empty where it stands on its own."""
    if analysis.kind != "batch" or not rows.is_sure(analysis):
        return []
    header = rows.values(analysis)
    malt = rows.key(header.get("malt"))
    found = connection.execute(
        "SELECT json FROM analyses WHERE supplier_key = ? AND batch_key = ?"
        " AND superseded_by IS NULL AND sure AND kind = 'batch' AND method_family = ? AND id <> ?"
        " AND sha256 <> ? AND (malt_key IS NULL OR ? IS NULL OR malt_key = ?) ORDER BY change DESC",
        (
            rows.key(header["supplier"]),
            rows.key(header["batch"]),
            analysis.method_family,
            analysis.id,
            analysis.source.sha256,
            malt,
            malt,
        ),
    ).fetchall()
    superseded: list[Superseded] = []
    own_time = _time(connection, analysis)
    for (text,) in found:
        other = Analysis.model_validate_json(text)
        others_time = _time(connection, other)
        overtaken = others_time > own_time
        older, newer = (analysis, other) if overtaken else (other, analysis)
        if not _covers(newer, older):
            continue
        changes = rows.changes_between(older, newer)
        if changes and others_time == own_time and _came_together(connection, analysis, other):
            continue  # nothing says which of them is the later one
        connection.execute("INSERT INTO supersessions VALUES (?, ?, ?)", (newer.id, older.id, rows.as_json(changes)))
        connection.execute(
            "UPDATE analyses SET superseded_by = ?, change = ? WHERE id = ?", (newer.id, next_change(), older.id)
        )
        files = newer.source.file, older.source.file
        superseded.append(Superseded(older.id, newer.id, header["supplier"], header["batch"], *files, tuple(changes)))
        if overtaken:
            break
    return superseded


def _time(connection: sqlite3.Connection, analysis: Analysis) -> tuple[str, str]:
    """What tells the later of two certificates: the day of analysis, then when its email or file was first sent."""
    (dated,) = connection.execute("SELECT dated FROM analyses WHERE id = ?", (analysis.id,)).fetchone()
    (arrived,) = connection.execute(
        "SELECT MIN(COALESCE(sent_at, modified)) FROM arrivals WHERE sha256 = ?", (analysis.source.sha256,)
    ).fetchone()
    return rows.values(analysis).get("analysed_on") or dated, arrived or ""


def _came_together(connection: sqlite3.Connection, one: Analysis, other: Analysis) -> bool:
    """True for two documents of one email or archive."""
    query = "SELECT 1 FROM arrivals a JOIN arrivals b USING (container) WHERE a.sha256 = ? AND b.sha256 = ? LIMIT 1"
    return connection.execute(query, (one.source.sha256, other.source.sha256)).fetchone() is not None


def _covers(newer: Analysis, older: Analysis) -> bool:
    """True where the newer one gives at least half of what the older one gave."""
    given = {figure.parameter for figure in older.figures}
    kept = given & {figure.parameter for figure in newer.figures}
    return bool(given) and len(kept) >= _SHARE * len(given)
