"""The store as a reader sees it: nothing can be written, and whoever writes is never in the way."""

from __future__ import annotations

import os
import threading
from pathlib import Path

from importer.models import Analysis
from importer.store.ledger import FILE_NAME, Store
from importer.store.schema import connect_to_read
from importer.store.selection import Wanted, choose, current


class ReadOnlyStore(Store):
    """The store in a folder, opened for reading only. The file has to be there. Raises StoreError."""

    writable = False

    def __init__(self, folder: Path) -> None:
        self.folder = folder
        self.path = folder / FILE_NAME
        self.connection = connect_to_read(self.path)


def open_to_look(folder: Path) -> Store:
    """The store in a folder, for reading only where nothing can be written there. Raises StoreError."""
    if all(os.access(path, os.W_OK) for path in (folder, folder / FILE_NAME)):
        return Store(folder)
    return ReadOnlyStore(folder)


def load_analyses(
    folder: str | Path,
    *,
    supplier: str | None = None,
    malt: str | None = None,
    batch: str | None = None,
    first_day: str | None = None,
    last_day: str | None = None,
) -> tuple[Analysis, ...]:
    """The current analyses of the store in a folder, on the EBC basis, in the order of their day.

    Names are compared without case, spaces and marks, and may be a part; days are ISO 8601. Raises StoreError.
    """
    with ReadOnlyStore(Path(folder).expanduser()) as store:
        return choose(store, Wanted(supplier, malt, batch, first_day, last_day)).analyses


class Current:
    """The current analyses of a store, read anew only where something changed. Safe to share between threads."""

    def __init__(self, folder: Path) -> None:
        self._folder = folder
        self._lock = threading.Lock()
        self._known: dict[str, Analysis] = {}
        self._now: tuple[int, tuple[Analysis, ...]] = (-1, ())

    def get(self) -> tuple[int, tuple[Analysis, ...]]:
        """The change that the store is at, and the analyses in the order of their day. Raises StoreError."""
        with ReadOnlyStore(self._folder) as store:
            (change,) = store.connection.execute("SELECT value FROM counters WHERE name = 'change'").fetchone()
            if change != self._now[0]:
                with self._lock:
                    if change > self._now[0]:
                        self._read(store)
        return self._now

    def _read(self, store: Store) -> None:
        """What changed since the last time; repeated where more is written in between."""
        since = max(self._now[0], 0)
        while True:
            chosen = choose(store, Wanted(), since=since)
            self._known |= {analysis.id: analysis for analysis in chosen.analyses}
            change, ids = current(store, Wanted())
            if change == chosen.change:
                break
        self._known = {identity: self._known[identity] for identity in ids}
        self._now = change, tuple(self._known.values())
