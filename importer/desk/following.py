"""Lays what was learned over a supplier's other sheets, behind the back of whoever works at the desk."""

from __future__ import annotations

import contextlib
import queue
import sqlite3
import threading
from collections.abc import Sequence
from pathlib import Path

from importer.output.atomic import WriteError
from importer.store import settling
from importer.store.filing import file_settled
from importer.store.learned import Lesson
from importer.store.ledger import Store
from importer.store.schema import StoreError


class Follower:
    """One thread that goes through the sheets; it starts with the first lesson."""

    def __init__(self, folder: Path) -> None:
        self._folder = folder
        self._waiting: queue.Queue[tuple[str, Sequence[Lesson], str] | None] = queue.Queue()
        self._thread: threading.Thread | None = None
        self._guard = threading.Lock()

    def follow(self, key: str | None, lessons: Sequence[Lesson], but: str = "") -> None:
        """Has lessons, new ones or such as were taken back, laid over the other sheets of a supplier."""
        if key is None or not lessons:
            return
        self._start()
        self._waiting.put((key, lessons, but))

    def _start(self) -> None:
        with self._guard:
            if self._thread is None:
                self._thread = threading.Thread(target=self._run, daemon=True)
                self._thread.start()

    def tidy(self) -> None:
        """Has the originals of settled sheets filed, unless `inbox` is at work: then it does that itself."""
        self._start()
        self._waiting.put(None)

    def done(self) -> None:
        """Waits until nothing is left to do."""
        self._waiting.join()

    def _run(self) -> None:
        while True:
            found = self._waiting.get()
            try:
                self._do(found)
            finally:
                self._waiting.task_done()

    def _do(self, found: tuple[str, Sequence[Lesson], str] | None) -> None:
        # A full disk, say, or `inbox` at work: the lesson itself is stored and holds from now on, and originals are
        # filed with the next chance.
        with contextlib.suppress(StoreError, WriteError, sqlite3.Error, OSError), Store(self._folder) as store:
            if found is not None:
                settling.follow(store, *found)
            else:
                file_settled(store)
