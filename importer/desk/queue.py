"""What waits, sheet by sheet and step by step, and which step comes next."""

from __future__ import annotations

import sqlite3
from dataclasses import dataclass
from typing import Literal

from importer.store.corrections import Case, load
from importer.store.ledger import Store
from importer.store.places import asked_rows, header_waits, waiting_rows
from importer.store.rows import DOUBTS, ROWS
from importer.store.schema import StoreError

_CURRENT = "superseded_by IS NULL AND set_aside IS NULL"
WAITING = f"waits = {DOUBTS} AND {_CURRENT}"
"""Sheets with a figure in doubt, or of which it is not sure whose figures they are."""
ONLY_ROWS = f"waits = {ROWS} AND {_CURRENT}"
"""Sheets on which nothing is in doubt, but rows without a parameter are open. They come after all others."""
Kind = Literal["waiting", "aside", "unknown", "rows", "all"]
_WHICH: dict[Kind, str] = {
    "waiting": WAITING,
    "aside": "set_aside IS NOT NULL",
    "unknown": "asked_rows > 0 AND superseded_by IS NULL",
    "rows": ONLY_ROWS,
    "all": "1",
}
HEAD = "head"
LATER_FIRST, EARLIER_FIRST = ("<", "DESC"), (">", "ASC")
"""How the list is gone through: the latest sheets first, and the other way round."""
AHEAD = 20
PAGE = 50


@dataclass(frozen=True, slots=True)
class Sheet:
    """A sheet on the list of what waits."""

    id: str
    supplier: str
    malt: str
    batch: str
    dated: str
    figures: int
    file: str
    set_aside: str | None = None


@dataclass(frozen=True, slots=True)
class Step:
    """One thing to settle: the head of a sheet, or one of its rows."""

    sheet: str
    what: str

    @property
    def row(self) -> int | None:
        """The number of the row; None for the head."""
        return None if self.what == HEAD else int(self.what)

    @property
    def address(self) -> str:
        """Its page."""
        return f"/sheet/{self.sheet}/{self.what}"


@dataclass(frozen=True, slots=True)
class Count:
    """What waits: sheets in all, figures in doubt, and sheets of which only the head is."""

    sheets: int
    figures: int
    heads: int


def count(connection: sqlite3.Connection) -> Count:
    """How much waits."""
    (sheets,) = connection.execute(f"SELECT COUNT(*) FROM analyses WHERE {WAITING}").fetchone()
    figures, with_figures = connection.execute(
        # CROSS: from the few sheets that wait to their figures, never the other way round
        "SELECT COUNT(*), COUNT(DISTINCT a.id) FROM analyses a CROSS JOIN figures f ON f.analysis = a.id"
        f" WHERE {WAITING} AND f.state = 'review' AND NOT derived"
    ).fetchone()
    return Count(int(sheets), int(figures), int(sheets) - int(with_figures))


def number_of(connection: sqlite3.Connection, kind: Kind) -> int:
    """How many sheets there are of a kind."""
    (found,) = connection.execute(f"SELECT COUNT(*) FROM analyses WHERE {_WHICH[kind]}").fetchone()
    return int(found)


def sheets(connection: sqlite3.Connection, page: int = 1, kind: Kind = "waiting") -> list[Sheet]:
    """One page of a list, the latest sheets first. ``figures`` are those in review, or rows without a parameter."""
    number = "(SELECT COUNT(*) FROM figures WHERE analysis = analyses.id AND state = 'review' AND NOT derived)"
    found = connection.execute(
        "SELECT id, COALESCE(supplier, ''), COALESCE(malt, ''), COALESCE(batch, ''), dated,"
        f" {'asked_rows' if kind == 'unknown' else number}, json_extract(json, '$.source.file'), set_aside"
        f" FROM analyses WHERE {_WHICH[kind]} ORDER BY dated DESC, id DESC LIMIT ? OFFSET ?",
        (PAGE, (page - 1) * PAGE),
    )
    return [Sheet(*row) for row in found]


def steps(case: Case) -> list[Step]:
    """What is to settle on a sheet: its head, the figures in doubt, then rows that no parameter was found for."""
    head = [Step(case.id, HEAD)] if header_waits(case) else []
    return head + [Step(case.id, str(row)) for row in (*waiting_rows(case.built), *asked_rows(case))]


def after(case: Case, what: str) -> Step | None:
    """The step behind one of this sheet; None where it is the last."""
    own = _order(case, what)
    return next((step for step in steps(case) if _order(case, step.what) > own), None)


def before(case: Case, what: str) -> Step | None:
    """The step ahead of one of this sheet; None where it is the first."""
    own = _order(case, what)
    return next((step for step in reversed(steps(case)) if _order(case, step.what) < own), None)


def _order(case: Case, what: str) -> tuple[bool, int]:
    return (False, -1) if what == HEAD else (int(what) in case.built.unknown_rows, int(what))


def next_step(store: Store, case: Case, what: str) -> Step | None:
    """The next step on this sheet, else the first one of the next sheet that waits."""
    step = after(case, what)
    if step is not None:
        return step
    for identity in _beyond(store, case, LATER_FIRST):
        try:
            found = first_step(store, identity)
        except StoreError:  # of an earlier version, and its original is gone: it can be seen, not settled
            continue
        if found is not None:
            return found
    return next(iter(steps(case)), None)


def next_address(store: Store, case: Case, what: str) -> str | None:
    """Where the next step is, without looking into another sheet."""
    step = after(case, what)
    ahead = None if step is not None else next(iter(_beyond(store, case, LATER_FIRST)), None)
    return step.address if step is not None else (f"/sheet/{ahead}" if ahead else None)


def previous_address(store: Store, case: Case, what: str) -> str | None:
    """The step ahead of one likewise, on this sheet or the one ahead of it."""
    step = before(case, what)
    behind = None if step is not None else next(iter(_beyond(store, case, EARLIER_FIRST)), None)
    return step.address if step is not None else (f"/sheet/{behind}?last=1" if behind else None)


def first_step(store: Store, identity: str) -> Step | None:
    """The first thing to settle on a sheet; None where there is nothing."""
    return next(iter(steps(load(store, identity))), None)


def _beyond(store: Store, case: Case, order: tuple[str, str]) -> list[str]:
    """Sheets in doubt behind one (or ahead of it), then those at the other end of the list; then the sheets of which
    only rows without a parameter are open, likewise."""
    sign, direction = order
    connection = store.connection
    row = connection.execute("SELECT dated, id FROM analyses WHERE id = ?", (case.id,)).fetchone()
    sorting = f"ORDER BY dated {direction}, id {direction} LIMIT {AHEAD}"
    found: list[str] = []
    for which in (WAITING, ONLY_ROWS):
        ahead = connection.execute(
            f"SELECT id FROM analyses WHERE {which} AND (dated, id) {sign} (?, ?) {sorting}", row
        )
        found += [identity for (identity,) in ahead]
        around = connection.execute(f"SELECT id FROM analyses WHERE {which} AND id <> ? {sorting}", (case.id,))
        found += [identity for (identity,) in around]
    return found
