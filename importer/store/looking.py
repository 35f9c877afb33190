"""Which files of an inbox are still: nobody is copying them any more."""

from __future__ import annotations

import time
from collections.abc import Callable, Iterator
from dataclasses import dataclass
from pathlib import Path

from importer.walk import Found, find_files

SETTLE_SECONDS = 2.0


@dataclass(frozen=True, slots=True)
class _Look:
    size: int
    modified: int
    since: float


class Looking:
    """Remembers how files looked. No system tells when a copy is complete, and a share may show the full size at once.

    A file is still when size and time have been the same for ``settle`` seconds.
    """

    def __init__(
        self, folder: Path, settle: float = SETTLE_SECONDS, clock: Callable[[], float] = time.monotonic
    ) -> None:
        self._folder = folder
        self._settle = settle
        self._clock = clock
        self._looks: dict[Path, _Look] = {}
        self.moving: list[Path] = []
        self.closed: list[Found] = []

    def look(self) -> Iterator[tuple[Path, tuple[int, int]]]:
        """Files that are still, with size and time; ``moving`` are the others, ``closed`` folders without access."""
        self.moving, self.closed = [], []
        looks: dict[Path, _Look] = {}
        still: list[tuple[Path, tuple[int, int]]] = []
        now = self._clock()
        for found in find_files([self._folder]):
            if found.error is not None:
                self.closed.append(found)
                continue
            try:
                status = found.path.lstat()
            except OSError:
                continue
            size, modified = status.st_size, status.st_mtime_ns
            before = self._looks.get(found.path)
            if before is None or (before.size, before.modified) != (size, modified):
                looks[found.path] = _Look(size, modified, now)
                self.moving.append(found.path)
                continue
            looks[found.path] = before
            if now - before.since >= self._settle:
                still.append((found.path, (size, modified)))
            else:
                self.moving.append(found.path)
        self._looks = looks
        return iter(still)
