"""Numbers that were handed out to recipes, kept in the history so that a later change of them can be told."""

from __future__ import annotations

import json
import sqlite3
from collections.abc import Iterable, Mapping
from typing import Any

from importer.store import rows
from importer.store.ledger import Store
from importer.store.schema import explained, transaction

_EVENT = "handed-out"


def handed_out(store: Store) -> list[dict[str, Any]]:
    """The malts as they were handed out last, each with its numbers; empty where nothing was yet."""
    row = store.connection.execute(
        "SELECT detail FROM history WHERE event = ? ORDER BY id DESC LIMIT 1", (_EVENT,)
    ).fetchone()
    try:
        found = json.loads(row[0]) if row else []
    except ValueError:
        return []
    return [one for one in found if isinstance(one, dict)] if isinstance(found, list) else []


def record_handed_out(store: Store, malts: Iterable[Mapping[str, Any]]) -> None:
    """Remembers what was handed out; a malt that is not among it keeps its last numbers. Raises StoreError."""
    known = {_key(one): dict(one) for one in handed_out(store)}
    known |= {_key(one): dict(one) for one in malts}
    try:
        with transaction(store.connection):
            store.tell(_EVENT, detail=rows.as_json(list(known.values())))
    except sqlite3.Error as error:
        raise explained(store.path, error) from None


def _key(malt: Mapping[str, Any]) -> tuple[str | None, str | None]:
    return rows.key(str(malt.get("supplier", ""))), rows.key(str(malt.get("malt", "")))
