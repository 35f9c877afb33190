"""Taking in: files are opened, what is new in them is read in parallel, and each is stored in the order of arrival.

The order does not depend on which reading ends first, nor on whether a run was interrupted.
"""

from __future__ import annotations

from collections import deque
from collections.abc import Callable, Iterable
from concurrent.futures import Executor, Future
from concurrent.futures import TimeoutError as FutureTimeoutError
from dataclasses import dataclass
from pathlib import Path
from typing import TYPE_CHECKING

from importer.intake.names import safe_name
from importer.intake.parcel import unpack
from importer.limits import MAX_BYTES, MIB
from importer.store.filing import Filer
from importer.store.ledger import Delivery, Store, Taken, Way
from importer.store.originals import read_whole
from importer.store.reading import Job, Options, read_job
from importer.store.schema import transaction

if TYPE_CHECKING:
    from importer.models import ProblemCode, Sheet

# What is opened ahead of the reading: enough that no worker waits, little enough that memory stays flat.
_AHEAD_BYTES = 256 * MIB
_AHEAD_FOR_EACH = 10


@dataclass(frozen=True, slots=True)
class Refused:
    """A file that cannot even be opened, or is too large to be. ``code`` is that of a problem."""

    path: Path
    reason: str
    code: ProblemCode = "damaged"


@dataclass(slots=True)
class _Waiting:
    delivery: Delivery
    readings: dict[str, Future[Sheet]]


class Taking:
    """One run of taking in. ``told`` is called with each delivery once it is in the store and filed."""

    def __init__(
        self,
        store: Store,
        executor: Executor,
        workers: int,
        options: Options,
        told: Callable[[Delivery, list[Taken]], None],
        *,
        filer: Filer | None = None,
        retry: bool = False,
    ) -> None:
        self._store = store
        self._executor = executor
        self._options = options
        self._told = told
        self._filer = filer
        self._retry = retry
        self._most = workers * _AHEAD_FOR_EACH
        self._waiting: deque[_Waiting] = deque()
        self._reading: dict[str, Future[Sheet]] = {}
        self._bytes = 0

    def run(self, deliveries: Iterable[Delivery]) -> None:
        """Takes in deliveries, in their order."""
        for delivery in deliveries:
            self._begin(delivery)
            while self._waiting and (len(self._waiting) > self._most or self._bytes > _AHEAD_BYTES):
                self._finish()
        while self._waiting:
            self._finish()

    def _begin(self, delivery: Delivery) -> None:
        readings: dict[str, Future[Sheet]] = {}
        for item in delivery.item.sheets():
            sha256 = item.sha256
            if sha256 in readings or not self._is_wanted(sha256):
                continue
            if sha256 not in self._reading:
                job = Job(item.name, item.data, self._options)
                self._reading[sha256] = self._executor.submit(read_job, job)
            readings[sha256] = self._reading[sha256]
        self._bytes += _size(delivery)
        self._waiting.append(_Waiting(delivery, readings))

    def _is_wanted(self, sha256: str) -> bool:
        if sha256 in self._reading:
            return True
        state = self._store.state_of(sha256)
        return state is None or (self._retry and state in ("failed", "passed-over"))

    def _finish(self) -> None:
        """Stores and files the delivery that has waited longest."""
        waiting = self._waiting[0]
        delivery = waiting.delivery
        sheets = {sha256: _result(future) for sha256, future in waiting.readings.items()}
        self._waiting.popleft()
        self._bytes -= _size(delivery)
        with transaction(self._store.connection):
            taken = self._store.record(delivery, sheets)
            if self._filer is not None:
                self._filer.plan(delivery, taken)
        for sha256 in waiting.readings:
            self._reading.pop(sha256, None)
        if self._filer is not None:
            self._filer.carry_out({item.sha256: item.data for item in delivery.item.walk()})
        self._told(delivery, taken)


def _size(delivery: Delivery) -> int:
    return sum(len(item.data) for item in delivery.item.walk())


def _result(future: Future[Sheet]) -> Sheet:
    while True:
        # In short waits, because on Windows an interruption is only noticed between them.
        try:
            return future.result(timeout=0.5)
        except FutureTimeoutError:
            if future.done():
                raise


def too_large(path: Path) -> Refused:
    """What is said of a file that is larger than any that is opened."""
    reason = (
        f"{safe_name(path)} is larger than {MAX_BYTES // MIB} MB, so it was not opened. Split it, or save the pages "
        "with the figures on their own."
    )
    return Refused(path, reason, "too-large")


def open_delivery(path: Path, way: Way, expected: tuple[int, int] | None = None) -> Delivery | Refused | None:
    """A file with everything in it; None where it is not, or no longer, as ``expected`` (size and time)."""
    name = safe_name(path)
    try:
        if path.lstat().st_size > MAX_BYTES:
            return too_large(path)
        found = read_whole(path)
    except FileNotFoundError:
        return None
    except OSError as error:
        return Refused(path, f"{name} cannot be opened: {error.strerror or error}. Check that it may be read.")
    if found is None:
        return None
    data, status = found
    if len(data) != status.st_size or expected not in (None, (status.st_size, status.st_mtime_ns)):
        return None
    return Delivery(path.absolute(), status.st_size, status.st_mtime_ns, way, unpack(data, name))
