"""The command ``bulk``: a whole tree of paperwork into the store, where it lies."""

from __future__ import annotations

import contextlib
from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path
from typing import TYPE_CHECKING

from importer.commands.intake import (
    Counts,
    Progress,
    grouped,
    head_words,
    keep_apart,
    store_folder,
    superseded_head,
    superseded_words,
    unknown_words,
)
from importer.commands.run import IN_REVIEW, INTERRUPTED, NOT_ALL_READ, READ, UsageError, tell
from importer.limits import MAX_BYTES, MAX_SECONDS
from importer.output.terminal import clean
from importer.store.ledger import Delivery, Store, Taken
from importer.store.lock import only_writer
from importer.store.reading import KEEPS, LocalReaders, Options, cores
from importer.store.rows import path_value
from importer.store.summary import Summary, summary_of
from importer.store.taking import Refused, Taking, open_delivery, too_large
from importer.walk import find_files

if TYPE_CHECKING:
    from concurrent.futures import Executor


@dataclass(frozen=True, slots=True)
class Request:
    """One ``bulk``, as it was asked for."""

    folder: Path
    store: Path | None = None
    retry: bool = False
    workers: int | None = None
    seconds: float = MAX_SECONDS
    strict: bool = False
    reads: str = KEEPS
    scheduler: str | None = None


def bulk(request: Request) -> int:
    """Reads what is new or changed in a tree; returns the exit status."""
    folder = store_folder(request.store, make=True)
    keep_apart(request.folder, folder, "folder")
    with only_writer(folder), Store(folder, durable=False) as store:
        run = _Run(request, store)
        try:
            run.go()
        except KeyboardInterrupt:
            tell("Interrupted. What was read so far is in the store; run again to go on.")
            return INTERRUPTED
        return run.tell_outcome()


class _Run:
    def __init__(self, request: Request, store: Store) -> None:
        self._request = request
        self._store = store
        self._root = request.folder.absolute()
        self._refused: list[tuple[str, str, str]] = []
        self._looked_at = 0

    def go(self) -> None:
        """Looks at everything, opens what is new."""
        wanted = self._new_files()
        if not self._looked_at and not self._refused:
            tell(f"No files were found in {self._request.folder}.")
        if not wanted:
            return
        counts = Counts()
        progress = Progress(len(wanted), counts)

        def told(delivery: Delivery, taken: list[Taken]) -> None:
            counts.add(delivery, taken)
            progress.step()

        options = Options(seconds=self._request.seconds, reads=self._request.reads)
        with self._readers(options, len(wanted)) as (readers, workers):
            try:
                taking = Taking(self._store, readers, workers, options, told, retry=self._request.retry)
                taking.run(self._deliveries(wanted))
            finally:
                progress.end()

    @contextlib.contextmanager
    def _readers(self, options: Options, files: int) -> Iterator[tuple[Executor, int]]:
        """What reads, here or on a cluster, and how many files at once. Raises UsageError."""
        if self._request.scheduler is not None:
            from importer.store.cluster import ClusterError, cluster_readers

            try:
                with cluster_readers(self._request.scheduler) as found:
                    yield found
            except ClusterError as error:
                raise UsageError(str(error)) from None
            return
        workers = min(self._request.workers or cores(), files)
        with LocalReaders(workers, options) as readers:
            readers.warm_up()
            yield readers, workers

    def _new_files(self) -> list[Path]:
        """Files that were not dealt with before, or have changed since."""
        looked = self._store.looked()
        if self._request.retry:
            for path in self._failed_paths():
                looked.pop(path, None)
        wanted: list[Path] = []
        for found in find_files([self._root]):
            if found.error is not None:
                reason = f"The folder {found.path} cannot be looked into: {found.error}. Check that it may be read."
                self._refused.append((str(found.path), "damaged", reason))
                continue
            self._looked_at += 1
            try:
                status = found.path.lstat()
            except OSError:
                continue
            if status.st_size > MAX_BYTES:
                self._refuse(too_large(found.path))
            elif looked.get(path_value(found.path)) != (status.st_size, status.st_mtime_ns):
                wanted.append(found.path)
        return wanted

    def _failed_paths(self) -> list[str | bytes]:
        found = self._store.connection.execute(
            "SELECT DISTINCT path FROM arrivals JOIN documents USING (sha256) WHERE state = 'failed'"
        )
        return [path for (path,) in found]

    def _deliveries(self, wanted: list[Path]) -> Iterator[Delivery]:
        for path in wanted:
            opened = open_delivery(path, "bulk")
            if isinstance(opened, Refused):
                self._refuse(opened)
            elif opened is not None:
                yield opened

    def _refuse(self, refused: Refused) -> None:
        self._refused.append((str(refused.path), refused.code, refused.reason))

    def tell_outcome(self) -> int:
        """The whole tree as it is in the store now, whichever run brought it in; returns the exit status."""
        summary = summary_of(self._store, self._root)
        _print(summary, self._looked_at)
        failed = [*summary.failed, *self._refused]
        if failed:
            print("Not readable:")
            print("\n".join(grouped(failed)))
            return NOT_ALL_READ
        return IN_REVIEW if self._request.strict and summary.review else READ


_MOST = 20


def _print(summary: Summary, looked_at: int) -> None:
    counts = Counts(states=summary.states)
    documents = sum(summary.states.values())
    told = f"{looked_at} files: {documents} documents, {counts.words()}."
    print(f"{told} {summary.again} came more than once." if summary.again else told)
    if summary.superseded:
        print("Reissued certificates:")
        for *names, changes in summary.superseded:
            print(f"  {clean(superseded_words(superseded_head(*names), changes))}")
    if summary.review:
        often = "; ".join(f"{name} ({count})" for name, count in summary.doubtful.most_common(8))
        print(f"To look at, most often {often}:")
        for name, parameters in summary.review[:_MOST]:
            print(f"  {clean(name)}: {parameters}")
        if len(summary.review) > _MOST:
            print(f"  and {len(summary.review) - _MOST} more")
    for line in [*head_words(summary.heads), *unknown_words(summary.unknown)]:
        print(line)
