"""The command ``inbox``: what arrives in a folder is read, stored and filed."""

from __future__ import annotations

import os
import time
from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path

from importer.commands.intake import Counts, Progress, grouped, head_words, keep_apart, store_folder, unknown_words
from importer.commands.run import IN_REVIEW, INTERRUPTED, NOT_ALL_READ, READ, UsageError, tell
from importer.limits import MAX_SECONDS
from importer.output.terminal import clean
from importer.store.filing import TO_REVIEW, UNREADABLE, Filer, Stuck
from importer.store.ledger import Delivery, Store, Taken
from importer.store.lock import only_writer
from importer.store.looking import Looking
from importer.store.reading import KEEPS, LocalReaders, Options, cores
from importer.store.rows import path_value
from importer.store.taking import Refused, Taking, open_delivery
from importer.store.waking import Waking


@dataclass(frozen=True, slots=True)
class Request:
    """One ``inbox``, as it was asked for. Times are in seconds."""

    folder: Path
    store: Path | None = None
    watch: bool = False
    every: float = 30.0
    settle: float = 2.0
    workers: int | None = None
    seconds: float = MAX_SECONDS
    strict: bool = False
    reads: str = KEEPS


def inbox(request: Request) -> int:
    """Takes in what is there, once or for as long as it runs; returns the exit status."""
    if not os.access(request.folder, os.W_OK):
        raise UsageError(f"{request.folder} may not be written to, so nothing can be taken out of it once it is filed.")
    folder = store_folder(request.store, make=True)
    keep_apart(request.folder, folder, "inbox")

    with only_writer(folder), Store(folder) as store:
        run = _Run(request, store)
        try:
            if request.watch:
                run.watch()
            else:
                run.once()
        except KeyboardInterrupt:
            tell("Interrupted. What was not taken in yet is still in the inbox; run again to go on.")
            run.tell_outcome()
            return READ if request.watch else INTERRUPTED
        run.tell_outcome()
        return run.status()


class _Run:
    def __init__(self, request: Request, store: Store) -> None:
        self._request = request
        self._store = store
        self._filer = Filer(store)
        self._looking = Looking(request.folder, request.settle)
        self._counts = Counts()
        self._refused: dict[Path, str] = {}
        self._too_large: list[Refused] = []

    def once(self) -> None:
        """Everything that is still by now."""
        self._filer.tidy()
        with self._readers() as readers:
            list(self._looking.look())
            if not self._looking.moving:
                if not self._looking.closed:
                    tell(f"No files were found in {self._request.folder}.")
                return
            readers.warm_up()
            time.sleep(self._request.settle)
            self._take_in(readers, list(self._looking.look()))
        for path in self._looking.moving:
            tell(f"{path} is still being copied: it was left where it is.")

    def watch(self) -> None:
        """Everything that comes, until interrupted. A regular look is what counts; a wake-up only makes it sooner."""
        self._filer.tidy()
        tell(f"Watching {self._request.folder}. Stop with Ctrl-C.")
        with self._readers() as readers, Waking(self._request.folder) as waking:
            while True:
                still = list(self._looking.look())
                if still or self._filer.waiting():
                    self._take_in(readers, still)
                waking.wait(self._request.settle if self._looking.moving else self._request.every)

    def _readers(self) -> LocalReaders:
        return LocalReaders(self._request.workers or cores(), self._options())

    def _options(self) -> Options:
        return Options(seconds=self._request.seconds, reads=self._request.reads)

    def _take_in(self, readers: LocalReaders, still: list[tuple[Path, tuple[int, int]]]) -> None:
        waiting = self._filer.waiting()
        if waiting:
            self._filer.carry_out()
            waiting = self._filer.waiting()
        found = [(path, look) for path, look in still if path_value(path.absolute()) not in waiting]
        progress = Progress(len(found), self._counts)

        def told(delivery: Delivery, taken: list[Taken]) -> None:
            self._counts.add(delivery, taken)
            progress.step()
            if self._request.watch:
                self._tell_filed(delivery, taken)

        try:
            taking = Taking(self._store, readers, readers.workers, self._options(), told, filer=self._filer, retry=True)
            taking.run(self._deliveries(found))
        finally:
            progress.end()
        self._set_aside_unopened()
        for stuck in self._filer.stuck:
            self._refuse(stuck.path, f"{stuck.path} {stuck.reason}.")
        for closed in self._looking.closed:
            self._refuse(closed.path, f"The folder {closed.path} cannot be looked into: {closed.error}.")

    def _tell_filed(self, delivery: Delivery, taken: list[Taken]) -> None:
        """One line a document for the log: its name, what became of it and where it lies now."""
        for one in taken:
            if one.state == "passed-over":
                continue
            name = one.item.name if one.item is delivery.item else f"{delivery.item.name}: {one.item.name}"
            place = self._filer.place_of(one.item.sha256)
            state = "was there before" if one.again and not one.analyses else one.state
            tell(clean(f"{name}: {state}" + (f", in {place}" if place else "")))

    def _deliveries(self, found: list[tuple[Path, tuple[int, int]]]) -> Iterator[Delivery]:
        for path, look in found:
            opened = open_delivery(path, "inbox", look)
            if isinstance(opened, Refused) and opened.code == "too-large":
                self._too_large.append(opened)
            elif isinstance(opened, Refused):
                self._refuse(path, opened.reason)
            elif opened is not None:
                yield opened

    def _set_aside_unopened(self) -> None:
        """Files that are too large to be opened, after everything else: moving them may take its time."""
        for refused in self._too_large:
            place = self._filer.set_aside_unopened(refused.path, f"{refused.reason} [{refused.code}]")
            if isinstance(place, Stuck):
                self._refuse(place.path, f"{place.path} {place.reason}.")
                continue
            self._counts.add_unopened(refused.path.name, refused.code, refused.reason)
            if self._request.watch:
                tell(clean(f"{refused.path.name}: not opened, in {place}"))
        self._too_large.clear()

    def _refuse(self, path: Path, reason: str) -> None:
        """Told once; it stays where it is."""
        if self._refused.get(path) != reason:
            self._refused[path] = reason
            tell(reason)

    def tell_outcome(self) -> None:
        """What was taken in, what has to be looked at and what could not be read."""
        counts = self._counts
        print(f"Taken in: {counts.words()}." + (f" {counts.again} were there before." if counts.again else ""))
        if counts.superseded:
            print("Reissued certificates:")
            print("\n".join(f"  {clean(line)}" for line in counts.superseded))
        if counts.review:
            print(f"To look at, in {self._store.folder / TO_REVIEW}:")
            print("\n".join(f"  {clean(name)}" for name in counts.review))
        for line in [*head_words(counts.heads), *unknown_words(counts.unknown)]:
            print(line)
        if counts.failed:
            print(f"Not readable, in {self._store.folder / UNREADABLE}:")
            print("\n".join(grouped(counts.failed)))

    def status(self) -> int:
        """The exit status."""
        if self._counts.failed or self._refused:
            return NOT_ALL_READ
        return IN_REVIEW if self._request.strict and self._counts.states["review"] else READ
