"""Reading for the store: contents in, sheets out, through the standard Executor interface.

On this machine each worker is a thread with a watched reading process of its own. On a cluster the same function runs
there; contents travel as bytes, so that no shared disk is needed.
"""

from __future__ import annotations

import contextlib
import os
import tempfile
import threading
from concurrent.futures import Executor, ThreadPoolExecutor
from dataclasses import dataclass, field
from pathlib import Path
from typing import TYPE_CHECKING, Any

from importer.errors import no_room
from importer.guard import GuardedReader, InstallationError, RatioRule
from importer.limits import MAX_SECONDS
from importer.store.names import safe_file

if TYPE_CHECKING:
    from importer.models import Family, Sheet

KEEPS = "importer.pipeline:read_and_keep"
"""Reads for the store, which keeps what corrections are laid over."""
_LONGEST_NAME = 240
_own = threading.local()


@dataclass(frozen=True, slots=True)
class Options:
    """How contents are read. ``reads`` names the function that does it."""

    basis: Family = "EBC"
    estimates: bool = True
    ratio_rule: RatioRule = "published"
    seconds: float = MAX_SECONDS
    reads: str = KEEPS


@dataclass(frozen=True, slots=True)
class Job:
    """One content to read, under the name that it came with."""

    name: str
    data: bytes = field(repr=False)
    options: Options


class StoppedError(Exception):
    """The run was interrupted: this content was not read."""


class _Reader(GuardedReader):
    """A reader that starts no process once the run is stopped."""

    def __init__(self, options: Options, stopped: threading.Event) -> None:
        super().__init__(options.seconds, reads=options.reads)
        self._stopped = stopped

    def _ready(self) -> Any:
        if self._stopped.is_set():
            raise StoppedError
        return super()._ready()

    def stop(self) -> None:
        """Ends the process at once; to be called from another thread."""
        process = self._process
        if process is not None:
            process.child.kill()


def read_job(job: Job) -> Sheet:
    """Reads one content with this thread's own reader, which is kept for the next. It runs anywhere."""
    kept: tuple[Options, GuardedReader] | None = getattr(_own, "reader", None)
    if kept is None or kept[0] != job.options:
        if kept is not None:
            kept[1].close()
        kept = (job.options, GuardedReader(job.options.seconds, reads=job.options.reads))
        _own.reader = kept
    return _read(kept[1], job)


def _read(reader: GuardedReader, job: Job) -> Sheet:
    options = job.options
    with contextlib.ExitStack() as stack:
        try:
            folder = stack.enter_context(tempfile.TemporaryDirectory(prefix="onebasis-in-", ignore_cleanup_errors=True))
            path = Path(folder, _file_name(job.name))
            path.write_bytes(job.data)
        except OSError as error:
            raise InstallationError(no_room(error)) from None
        return reader.read(path, options.basis, estimates=options.estimates, ratio_rule=options.ratio_rule)


def _file_name(name: str) -> str:
    """The name itself where it can be one, so that messages and results show it."""
    plain = not any(c in name for c in '/\\<>:"|?*\0') and name.strip(" .") == name
    if plain and name and len(os.fsencode(name)) <= _LONGEST_NAME:
        return name
    return safe_file(name)


class LocalReaders(Executor):
    """Reads on this machine, one watched process for each worker. Leaving the ``with`` block ends them."""

    def __init__(self, workers: int, options: Options) -> None:
        self.workers = workers
        self._options = options
        self._stopped = threading.Event()
        self._readers: list[_Reader] = []
        self._free: list[_Reader] = []
        self._guard = threading.Lock()
        self._threads = ThreadPoolExecutor(workers, "reader")

    def warm_up(self) -> None:
        """Starts the reading processes ahead of the first file."""
        for _ in range(self.workers - len(self._readers)):
            reader = self._new()
            reader.start()
            self._free.append(reader)

    def _new(self) -> _Reader:
        reader = _Reader(self._options, self._stopped)
        self._readers.append(reader)
        return reader

    def submit(self, function: Any, /, *arguments: Any, **named: Any) -> Any:
        """Reads a job where the function is ``read_job``; anything else is simply run."""
        if function is read_job:
            return self._threads.submit(self._read, *arguments, **named)
        return self._threads.submit(function, *arguments, **named)

    def _read(self, job: Job) -> Sheet:
        with self._guard:
            reader = self._free.pop() if self._free else self._new()
        try:
            sheet = _read(reader, job)
        finally:
            with self._guard:
                self._free.append(reader)
        if self._stopped.is_set():
            raise StoppedError  # the process was ended under it: what it says about the file means nothing
        return sheet

    def shutdown(self, wait: bool = True, *, cancel_futures: bool = False) -> None:
        """Ends the processes; with ``cancel_futures`` also those that are in the midst of a file."""
        if cancel_futures:
            self._stopped.set()
            for reader in list(self._readers):
                reader.stop()
        self._threads.shutdown(wait=True, cancel_futures=cancel_futures)
        for reader in self._readers:
            with contextlib.suppress(OSError):
                reader.close()

    def __exit__(self, kind: Any, error: Any, trace: Any) -> bool | None:
        self.shutdown(cancel_futures=kind is not None)
        return None


def cores() -> int:
    """Processors that this process may use."""
    count = getattr(os, "process_cpu_count", None)
    if count is not None:
        return int(count() or 1)
    if hasattr(os, "sched_getaffinity"):
        return len(os.sched_getaffinity(0))
    return os.cpu_count() or 1
