"""Taking in without processes, and what a store looks like from outside."""

from __future__ import annotations

import hashlib
import json
import sqlite3
from pathlib import Path
from typing import Any

from importer.store.filing import Filer
from importer.store.ledger import FILE_NAME, Delivery, Store, Taken, Way
from importer.store.reading import Options
from importer.store.taking import Taking, open_delivery
from tests.store.standins import Inline

# Columns that hold the moment of writing, and numbers that only tell rows apart.
_MOMENTS = {"taken_at", "arrived_at", "made_at", "at"}


def take(
    store: Store, *paths: Path, way: Way = "bulk", executor: Inline | None = None, retry: bool = False
) -> list[Taken]:
    """Takes in files as the commands do; returns what became of everything in them."""
    taken: list[Taken] = []
    filer = Filer(store) if way == "inbox" else None
    taking = Taking(
        store, executor or Inline(), 2, Options(), lambda _, found: taken.extend(found), filer=filer, retry=retry
    )
    deliveries = [open_delivery(path, way) for path in paths]
    taking.run(delivery for delivery in deliveries if isinstance(delivery, Delivery))
    return taken


def put(folder: Path, name: str, data: bytes) -> Path:
    path = folder / name
    path.parent.mkdir(parents=True, exist_ok=True)
    path.write_bytes(data)
    return path


def contents(folder: Path) -> dict[str, str]:
    """Every file below a folder that is not the store's own, by name, with the hash of its content."""
    return {
        path.relative_to(folder).as_posix(): hashlib.sha256(path.read_bytes()).hexdigest()
        for path in sorted(folder.rglob("*"))
        if path.is_file() and not path.name.startswith((FILE_NAME, ".lock"))
    }


def dump(folder: Path) -> dict[str, list[Any]]:
    """Everything in the store but the moments, so that two stores can be compared."""
    connection = sqlite3.connect(folder / FILE_NAME)
    connection.row_factory = sqlite3.Row
    try:
        assert connection.execute("PRAGMA integrity_check").fetchone()[0] == "ok"
        assert connection.execute("PRAGMA foreign_key_check").fetchall() == []
        tables = [name for (name,) in connection.execute("SELECT name FROM sqlite_schema WHERE type = 'table'")]
        return {
            table: sorted(
                (
                    {key: value for key, value in dict(row).items() if key not in _MOMENTS}
                    for row in connection.execute(f"SELECT * FROM {table}")
                ),
                key=lambda row: json.dumps(row, sort_keys=True, default=str),
            )
            for table in tables
        }
    finally:
        connection.close()


def rows(store: Store, sql: str, *values: object) -> list[Any]:
    return store.connection.execute(sql, values).fetchall()
