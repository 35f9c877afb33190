"""What the commands share that fill the store: its folder, the readers, progress, and what is told in the end."""

from __future__ import annotations

import os
import sys
import time
from collections import Counter
from collections.abc import Sequence
from dataclasses import dataclass, field
from pathlib import Path
from typing import TYPE_CHECKING

from importer.commands.run import UsageError, tell
from importer.output.terminal import clean
from importer.output.words import spoken
from importer.store.rows import waiting_entries

if TYPE_CHECKING:
    from importer.store.ledger import Delivery, Taken

ENVIRONMENT = "ONEBASIS_STORE"
# Where nobody looks at a terminal, a line now and then is enough.
_EVERY = 30.0
_REDRAW = 0.2


def store_folder(named: Path | None, *, make: bool) -> Path:
    """The store's folder: named, or from the environment, or in the user's home. Raises UsageError."""
    chosen = named or (Path(os.environ[ENVIRONMENT]) if os.environ.get(ENVIRONMENT) else Path.home() / "onebasis")
    folder = chosen.expanduser().absolute()
    try:
        if make:
            folder.mkdir(parents=True, exist_ok=True)
    except OSError as error:
        raise UsageError(
            f"The store's folder {folder} cannot be made: {error.strerror or error}. Name another with --store."
        ) from None
    if not folder.is_dir():
        raise UsageError(f"There is no store at {folder}. Fill one with `onebasis inbox` or `bulk`, or name --store.")
    if make and not os.access(folder, os.W_OK):
        raise UsageError(f"The store's folder {folder} may not be written to. Choose another with --store.")
    return folder


def keep_apart(folder: Path, store: Path, what: str) -> None:
    """Refuses a store within the folder that is taken in, and the other way round."""
    outer, inner = folder.resolve(), store.resolve()
    if inner == outer or inner.is_relative_to(outer):
        raise UsageError(f"The store {store} lies in the {what} {folder}. Choose another --store.")
    if outer.is_relative_to(inner):
        raise UsageError(f"The {what} {folder} lies in the store {store}. Choose another folder.")


@dataclass(slots=True)
class Counts:
    """Documents by what became of them, and the last of those that need somebody."""

    states: Counter[str] = field(default_factory=Counter)
    again: int = 0
    failed: list[tuple[str, str, str]] = field(default_factory=list)
    review: list[str] = field(default_factory=list)
    superseded: list[str] = field(default_factory=list)
    heads: list[tuple[str, list[str]]] = field(default_factory=list)
    unknown: list[tuple[str, int]] = field(default_factory=list)

    def add(self, delivery: Delivery, taken: Sequence[Taken]) -> None:
        """Counts what a delivery brought. An email or archive counts only where something is wrong with itself."""
        for one in taken:
            if one.again and not one.analyses and one.state in ("accepted", "review", "passed-over"):
                self.again += one.item.kind == "sheet"
                continue
            if one.item.kind == "sheet" or one.state == "failed":
                self.states[one.state] += 1
            name = one.item.name if one.item is delivery.item else f"{delivery.item.name}: {one.item.name}"
            if one.state == "failed":
                self.failed += [(name, code, message) for code, message in one.problems]
            if one.state == "review":
                self.review.append(name)
            entries = [entry for analysis in one.analyses for entry in waiting_entries(analysis)]
            if entries:
                self.heads.append((name, list(dict.fromkeys(entries))))
            rows = sum(len(analysis.unrecognised) for analysis in one.analyses)
            if rows:
                self.unknown.append((name, rows))
            for found in one.supersedes:
                head = superseded_head(found.supplier, found.batch, found.newer_file, found.older_file)
                self.superseded.append(superseded_words(head, list(found.changes)))

    def add_unopened(self, name: str, code: str, reason: str) -> None:
        """Counts a file that was set aside as it came."""
        self.states["failed"] += 1
        self.failed.append((name, code, reason))

    def words(self) -> str:
        """The counts in short."""
        parts = [f"{self.states[state]} {state}" for state in ("accepted", "review", "failed")]
        if self.states["passed-over"]:
            parts.append(f"{self.states['passed-over']} passed over")
        return ", ".join(parts)


def superseded_head(supplier: str, batch: str, newer_file: str, older_file: str) -> str:
    """What a reissued certificate is of, and which of the two stands now."""
    return f"{supplier}, batch {batch}, {newer_file} in place of {older_file}"


def superseded_words(head: str, changes: Sequence[dict[str, str | None]]) -> str:
    """A reissued certificate in one line."""
    told = "; ".join(
        f"{change['parameter']} {change['before'] or 'not given'} → {change['after'] or 'not given'}"
        for change in changes
    )
    return f"{head}: {told or 'the same figures again'}"


class Progress:
    """How far it is, on standard error: one line that is drawn anew on a terminal, else a line now and then."""

    def __init__(self, total: int, counts: Counts) -> None:
        self._total = total
        self._counts = counts
        self._done = 0
        self._began = time.monotonic()
        self._last = self._began
        self._terminal = sys.stderr.isatty()

    def step(self) -> None:
        """One file more is done."""
        self._done += 1
        now = time.monotonic()
        if now - self._last < (_REDRAW if self._terminal else _EVERY) and self._done < self._total:
            return
        self._last = now
        line = f"{self._done}/{self._total} files, {self._counts.words()}{self._left(now)}"
        if self._terminal:
            print(f"\r\x1b[K{clean(line)}", end="", file=sys.stderr, flush=True)
        else:
            tell(line)

    def _left(self, now: float) -> str:
        taken = now - self._began
        if self._done < 3 or taken < 1:
            return ""
        seconds = round((self._total - self._done) * taken / self._done)
        minutes, seconds = divmod(seconds, 60)
        hours, minutes = divmod(minutes, 60)
        left = (
            f"{hours} h {minutes:02} min"
            if hours
            else f"{minutes} min"
            if minutes >= 2
            else f"{minutes * 60 + seconds} s"
        )
        return f", {self._done / taken:.1f} a second, {left} left"

    def end(self) -> None:
        """Leaves the terminal on a fresh line."""
        if self._terminal and self._done:
            print(file=sys.stderr, flush=True)


def head_words(heads: Sequence[tuple[str, list[str]]], most: int = 20) -> list[str]:
    """How many entries of the head are in review on sheets that wait, which, and on which files."""
    if not heads:
        return []
    counts = Counter(entry for _, entries in heads for entry in entries)
    often = "; ".join(f"{spoken(entry)} ({count})" for entry, count in counts.most_common())
    lines = [f"Entries of the head to look at (`onebasis review` shows them), {counts.total()}: {often}:"]
    lines += [f"  {clean(name)}: {'; '.join(map(spoken, entries))}" for name, entries in heads[:most]]
    return [*lines, f"  and {len(heads) - most} more files"] if len(heads) > most else lines


def unknown_words(unknown: Sequence[tuple[str, int]], most: int = 20) -> list[str]:
    """Which files have rows that no parameter was found for, and how many; where to look at them."""
    if not unknown:
        return []
    lines = ["Rows without a parameter (`onebasis review`, All sheets, shows them):"]
    lines += [f"  {clean(name)}: {count} {'row' if count == 1 else 'rows'}" for name, count in unknown[:most]]
    return [*lines, f"  and {len(unknown) - most} more files"] if len(unknown) > most else lines


def grouped(failed: Sequence[tuple[str, str, str]], most: int = 10) -> list[str]:
    """Failures by their code, the most frequent first; of each at most so many files by name."""
    groups: dict[str, list[str]] = {}
    for name, code, message in failed:
        groups.setdefault(code, []).append(message if name in message else f"{name}: {message}")
    lines: list[str] = []
    for code, told in sorted(groups.items(), key=lambda group: (-len(group[1]), group[0])):
        lines.append(f"  {code} ({len(told)})")
        lines += [f"    {clean(one)}" for one in told[:most]]
        if len(told) > most:
            lines.append(f"    and {len(told) - most} more")
    return lines
