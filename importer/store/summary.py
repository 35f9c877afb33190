"""What the store knows about the files of a tree: counts, what is in review, what failed, what was reissued."""

from __future__ import annotations

import json
import os
from collections import Counter
from dataclasses import dataclass, field
from pathlib import Path

from importer.store import rows
from importer.store.ledger import Store

_FILES = "WITH came AS (SELECT DISTINCT sha256 FROM arrivals WHERE way = 'bulk' AND {within})"


@dataclass(slots=True)
class Summary:
    """Documents by state; each with review, entries of the head in review, rows without a parameter (and how many)
    or failure by name; reissued certificates by supplier, batch, the file that stands now and the one before."""

    states: Counter[str] = field(default_factory=Counter)
    again: int = 0
    review: list[tuple[str, str]] = field(default_factory=list)
    doubtful: Counter[str] = field(default_factory=Counter)
    heads: list[tuple[str, list[str]]] = field(default_factory=list)
    unknown: list[tuple[str, int]] = field(default_factory=list)
    failed: list[tuple[str, str, str]] = field(default_factory=list)
    superseded: list[tuple[str, str, str, str, list[dict[str, str | None]]]] = field(default_factory=list)


def summary_of(store: Store, root: Path) -> Summary:
    """The summary of everything that came from a folder or from below it."""
    within, bounds = _within(root)
    files = _FILES.format(within=within)
    read = store.connection.execute
    summary = Summary()
    for state, count in read(
        f"{files} SELECT state, COUNT(*) FROM documents JOIN came USING (sha256)"
        " WHERE kind = 'sheet' OR state = 'failed' GROUP BY state",
        bounds,
    ):
        summary.states[state] = count
    (summary.again,) = read(
        "SELECT COUNT(*) - COUNT(DISTINCT sha256) FROM arrivals JOIN documents USING (sha256)"
        f" WHERE way = 'bulk' AND {within} AND kind = 'sheet'",
        bounds,
    ).fetchone()
    review = read(
        f"{files} SELECT d.name, COALESCE((SELECT GROUP_CONCAT(parameter, ', ') FROM (SELECT DISTINCT parameter"
        " FROM figures f JOIN analyses a ON f.analysis = a.id WHERE a.sha256 = d.sha256 AND f.state = 'review')),"
        " 'batch or a part of it') FROM documents d JOIN came USING (sha256) WHERE d.state = 'review' ORDER BY d.name",
        bounds,
    ).fetchall()
    for name, parameters in review:
        titles = [rows.title_of(parameter) for parameter in parameters.split(", ")]
        summary.review.append((name, "; ".join(titles)))
        summary.doubtful.update(titles)
    for name, entries in read(
        f"{files} SELECT d.name, GROUP_CONCAT(DISTINCT entry.key) FROM analyses a JOIN documents d USING (sha256)"
        " JOIN came USING (sha256), json_each(a.json, '$.header') entry WHERE json_extract(entry.value, '$.state') ="
        f" 'review' AND waits = {rows.DOUBTS} AND superseded_by IS NULL AND set_aside IS NULL"
        " GROUP BY sha256 ORDER BY d.name",
        bounds,
    ):
        summary.heads.append((name, entries.split(",")))
    summary.unknown = read(
        f"{files} SELECT d.name, SUM(unknown_rows) FROM analyses a JOIN documents d USING (sha256)"
        " JOIN came USING (sha256) WHERE unknown_rows > 0 AND superseded_by IS NULL GROUP BY sha256 ORDER BY d.name",
        bounds,
    ).fetchall()
    summary.failed = read(
        f"{files} SELECT d.name, code, message FROM problems JOIN documents d USING (sha256) JOIN came USING (sha256)"
        " WHERE d.state = 'failed' ORDER BY d.name, position",
        bounds,
    ).fetchall()
    for *told, changes in read(
        f"{files} SELECT a.supplier, a.batch, now.name, before.name, s.changes FROM supersessions s"
        " JOIN analyses a ON a.id = s.newer JOIN came USING (sha256) JOIN documents now USING (sha256)"
        " JOIN analyses b ON b.id = s.older JOIN documents before ON before.sha256 = b.sha256"
        " ORDER BY a.supplier, a.batch, a.id",
        bounds,
    ):
        supplier, batch, newer, older = told
        summary.superseded.append((supplier, batch, newer, older, json.loads(changes)))
    return summary


def _within(root: Path) -> tuple[str, tuple[str | bytes, ...]]:
    """A condition on paths, as text and as bytes: after the folder's separator, before the character behind that."""
    start = os.fspath(root).rstrip(os.sep) + os.sep
    end = start[:-1] + chr(ord(os.sep) + 1)
    raw = (os.fsencode(start), os.fsencode(end))
    try:
        start.encode("utf-8")
    except UnicodeEncodeError:
        return "(path >= ? AND path < ?)", raw
    return "((path >= ? AND path < ?) OR (path >= ? AND path < ?))", (start, end, *raw)
