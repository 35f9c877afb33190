"""What waits, sheet by sheet and step by step, and which step comes next."""

from __future__ import annotations

import sqlite3
from dataclasses import dataclass
from typing import Literal

from importer.store.corrections import Case, load
from importer.store.ledger import Store
from importer.store.schema import StoreError
from importer.store.settling import header_waits, waiting_rows

WAITING = "state = 'review' AND superseded_by IS NULL AND set_aside IS NULL"
Kind = Literal["waiting", "aside", "unknown", "all"]
_WHICH: dict[Kind, str] = {
    "waiting": WAITING,
    "aside": WAITING.replace("set_aside IS NULL", "set_aside IS NOT NULL"),
    "unknown": "unknown_rows > 0 AND superseded_by IS NULL",
    "all": "1",
}
HEAD = "head"
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


def count(connection: sqlite3.Connection) -> tuple[int, int]:
    """How many sheets wait, and how many figures on them."""
    (sheets,) = connection.execute(f"SELECT COUNT(*) FROM analyses WHERE {WAITING}").fetchone()
    (figures,) = connection.execute(
        "SELECT COUNT(*) FROM figures f JOIN analyses a ON a.id = f.analysis"
        " WHERE a.state = 'review' AND superseded_by IS NULL AND set_aside IS NULL"
        " AND f.state = 'review' AND NOT derived"
    ).fetchone()
    return int(sheets), int(figures)


def number_of(connection: sqlite3.Connection, kind: Kind) -> int:
    """How many sheets there are of a kind."""
    (found,) = connection.execute(f"SELECT COUNT(*) FROM analyses WHERE {_WHICH[kind]}").fetchone()
    return int(found)


def sheets(connection: sqlite3.Connection, page: int = 1, kind: Kind = "waiting") -> list[Sheet]:
    """One page of a list, the latest sheets first. ``figures`` are those in review, or rows without a parameter."""
    number = "(SELECT COUNT(*) FROM figures WHERE analysis = analyses.id AND state = 'review' AND NOT derived)"
    found = connection.execute(
        "SELECT id, COALESCE(supplier, ''), COALESCE(malt, ''), COALESCE(batch, ''), dated,"
        f" {'unknown_rows' if kind == 'unknown' else number}, json_extract(json, '$.source.file'), set_aside"
        f" FROM analyses WHERE {_WHICH[kind]} ORDER BY dated DESC, id DESC LIMIT ? OFFSET ?",
        (PAGE, (page - 1) * PAGE),
    )
    return [Sheet(*row) for row in found]


def steps(case: Case) -> list[Step]:
    """What is to settle on a sheet, from top to bottom."""
    head = [Step(case.id, HEAD)] if header_waits(case) else []
    return head + [Step(case.id, str(row)) for row in waiting_rows(case.built)]


def after(case: Case, what: str) -> Step | None:
    """The step behind one of this sheet; None where it is the last."""
    own = _order(what)
    return next((step for step in steps(case) if _order(step.what) > own), None)


def before(case: Case, what: str) -> Step | None:
    """The step ahead of one of this sheet; None where it is the first."""
    own = _order(what)
    return next((step for step in reversed(steps(case)) if _order(step.what) < own), None)


def _order(what: str) -> int:
    return -1 if what == HEAD else int(what)


def next_step(store: Store, case: Case, what: str) -> Step | None:
    """The next step on this sheet, else the first one of the next sheet that waits, else of the first one."""
    return after(case, what) or _beyond(store, case, "<", "DESC")


def previous_step(store: Store, case: Case, what: str) -> Step | None:
    """The step ahead of one, on this sheet or the one ahead of it."""
    return before(case, what) or _beyond(store, case, ">", "ASC")


def first_step(store: Store, identity: str) -> Step | None:
    """The first thing to settle on a sheet; None where there is nothing."""
    return next(iter(steps(load(store, identity))), None)


def _beyond(store: Store, case: Case, sign: str, direction: str) -> Step | None:
    connection = store.connection
    row = connection.execute("SELECT dated, id FROM analyses WHERE id = ?", (case.id,)).fetchone()
    order = f"ORDER BY dated {direction}, id {direction} LIMIT 20"
    ahead = connection.execute(f"SELECT id FROM analyses WHERE {WAITING} AND (dated, id) {sign} (?, ?) {order}", row)
    found = [identity for (identity,) in ahead]
    around = connection.execute(f"SELECT id FROM analyses WHERE {WAITING} AND id <> ? {order}", (case.id,))
    found += [identity for (identity,) in around]
    for identity in found:
        try:
            other = steps(load(store, identity))
        except StoreError:  # of an earlier version, and its original is gone: it can be seen, not settled
            continue
        if other:
            return other[0] if sign == "<" else other[-1]
    own = steps(case)
    return (own[0] if sign == "<" else own[-1]) if own else None
