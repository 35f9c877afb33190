"""Reissued certificates: the same batch of the same supplier once more, with other figures or the same again.

The later one supersedes the earlier one: both stay, what changed is listed, and only the later one is current. Where
it is not certain that both are about the same thing, both stay current: losing a figure is worse than a row too many.
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
    changes: tuple[dict[str, str | None], ...]

    def detail(self) -> str:
        """For the history."""
        return rows.as_json({"by": self.newer, "changes": list(self.changes)})


def settle(connection: sqlite3.Connection, analysis: Analysis, next_change: Callable[[], int]) -> Superseded | None:
    """Compares an analysis, just stored, with the current ones of its batch. None where it stands on its own."""
    if analysis.kind != "batch" or not rows.is_sure(analysis):
        return None
    header = rows.values(analysis)
    found = connection.execute(
        "SELECT id, json, dated, change FROM analyses WHERE supplier_key = ? AND batch_key = ?"
        " AND superseded_by IS NULL AND sure AND kind = 'batch' AND method_family = ? AND id <> ?"
        " AND sha256 <> ? AND (malt_key IS NULL OR ? IS NULL OR malt_key = ?) ORDER BY change DESC",
        (
            rows.key(header["supplier"]),
            rows.key(header["batch"]),
            analysis.method_family,
            analysis.id,
            analysis.source.sha256,
            rows.key(header.get("malt")),
            rows.key(header.get("malt")),
        ),
    ).fetchall()
    (dated,) = connection.execute("SELECT dated FROM analyses WHERE id = ?", (analysis.id,)).fetchone()
    for other_id, other_json, other_dated, _ in found:
        other = Analysis.model_validate_json(other_json)
        older, newer = (analysis, other) if _is_later(other, other_dated, analysis, dated) else (other, analysis)
        if not _covers(newer, older):
            continue
        changes = rows.changes_between(older, newer)
        connection.execute("INSERT INTO supersessions VALUES (?, ?, ?)", (newer.id, older.id, rows.as_json(changes)))
        connection.execute(
            "UPDATE analyses SET superseded_by = ?, change = ? WHERE id = ?", (newer.id, next_change(), older.id)
        )
        return Superseded(older.id, newer.id, header["supplier"], header["batch"], tuple(changes))
    return None


def _is_later(other: Analysis, other_dated: str, analysis: Analysis, dated: str) -> bool:
    """True where ``other``, stored before, is the later certificate: by the day of analysis, else as it arrived."""
    return _day(other, other_dated) > _day(analysis, dated)


def _day(analysis: Analysis, dated: str) -> str:
    return rows.values(analysis).get("analysed_on") or dated


def _covers(newer: Analysis, older: Analysis) -> bool:
    """True where the newer one gives at least half of what the older one gave."""
    given = {figure.parameter for figure in older.figures}
    kept = given & {figure.parameter for figure in newer.figures}
    return bool(given) and len(kept) >= _SHARE * len(given)
