"""What is written when a file was taken in: one transaction a file, so that it is in the store whole or not at all."""

from __future__ import annotations

import contextlib
import sqlite3
from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field
from datetime import UTC, datetime
from pathlib import Path
from types import TracebackType
from typing import TYPE_CHECKING, ClassVar, Literal, Self

from importer import __version__
from importer.intake.parcel import Item
from importer.kept import KeptSheet
from importer.store import evidence, reissue, rows
from importer.store.schema import connect, explained, transaction

if TYPE_CHECKING:
    from importer.models import Analysis, Sheet

Way = Literal["inbox", "bulk"]
DocumentState = Literal["accepted", "review", "failed", "passed-over"]
FILE_NAME = "onebasis.sqlite"
# Why a picture that belongs to the text of an email is no sheet: most are logos.
_LOGO_CODES = frozenset({"no-figures-found", "unsupported-type", "empty", "too-large", "damaged"})


@dataclass(frozen=True, slots=True)
class Delivery:
    """A file that came in, with all that is in it. ``modified`` is in nanoseconds."""

    path: Path
    size: int
    modified: int
    way: Way
    item: Item

    @property
    def written(self) -> str:
        """When the file was written, ISO 8601 in UTC."""
        moment = min(max(self.modified // 1_000_000_000, 0), 253_402_300_799)
        return datetime.fromtimestamp(moment, UTC).isoformat(timespec="seconds")


@dataclass(frozen=True, slots=True)
class Taken:
    """What became of one item of a delivery. ``again`` is true for a content that was there before."""

    item: Item
    arrival: int
    state: DocumentState
    again: bool
    analyses: tuple[Analysis, ...] = ()
    problems: tuple[tuple[str, str], ...] = ()
    supersedes: tuple[reissue.Superseded, ...] = field(default=())


def now() -> str:
    """This moment, as the store writes it."""
    return datetime.now(UTC).isoformat(timespec="milliseconds")


class Store:
    """The store in a folder. One writer at a time, any number of readers.

    What the database complains about within a ``with`` block leaves that as StoreError, in words that help.
    """

    writable: ClassVar[bool] = True

    def __init__(self, folder: Path, *, durable: bool = True) -> None:
        self.folder = folder
        self.path = folder / FILE_NAME
        self.connection: sqlite3.Connection = connect(self.path, durable=durable)

    def __enter__(self) -> Self:
        return self

    def __exit__(
        self, kind: type[BaseException] | None, error: BaseException | None, trace: TracebackType | None
    ) -> None:
        with contextlib.suppress(sqlite3.Error):
            self.close()
        if isinstance(error, sqlite3.Error):
            raise explained(self.path, error) from None

    def close(self) -> None:
        """Closes the file."""
        self.connection.close()

    def state_of(self, sha256: str) -> DocumentState | None:
        """What became of a content; None where it is not there yet."""
        row = self.connection.execute("SELECT state FROM documents WHERE sha256 = ?", (sha256,)).fetchone()
        return row[0] if row else None

    def looked(self) -> dict[rows.PathValue, tuple[int, int]]:
        """Size and time of each file that a bulk import has dealt with."""
        found = self.connection.execute("SELECT path, size, modified FROM looked")
        return {path: (size, modified) for path, size, modified in found}

    def record(self, delivery: Delivery, sheets: Mapping[str, Sheet]) -> list[Taken]:
        """Writes a delivery; ``sheets`` holds what was read of contents that were not there, by hash.

        Within an open transaction it becomes part of that. Raises StoreError.
        """
        try:
            if self.connection.in_transaction:
                return list(self._record(delivery, sheets))
            with transaction(self.connection):
                return list(self._record(delivery, sheets))
        except sqlite3.Error as error:
            raise explained(self.path, error) from None

    def _record(self, delivery: Delivery, sheets: Mapping[str, Sheet]) -> Iterator[Taken]:
        from importer.store import learned  # loads all that gives rows their meaning: not before it is needed

        known = {sha256: learned.lay_over(self.connection, sheet) for sha256, sheet in sheets.items()}
        yield from self._item(delivery, delivery.item, known, None, 0)
        if delivery.way == "bulk":
            self.connection.execute(
                "INSERT OR REPLACE INTO looked VALUES (?, ?, ?, ?)",
                (rows.path_value(delivery.path), delivery.size, delivery.modified, delivery.item.sha256),
            )

    def _item(
        self, delivery: Delivery, item: Item, sheets: Mapping[str, Sheet], container: int | None, position: int
    ) -> Iterator[Taken]:
        before = self.state_of(item.sha256)
        again = before is not None
        sheet = sheets.get(item.sha256)
        if before is None:
            state, problems = self._judge(item, sheets)
            self._insert_document(item, state)
        elif before in ("failed", "passed-over") and (sheet is not None or item.kind != "sheet"):
            state, problems = self._judge(item, sheets)
            self.connection.execute("UPDATE documents SET state = ? WHERE sha256 = ?", (state, item.sha256))
        else:
            state, problems, sheet = before, self.problems_of(item.sha256), None
        arrival = self._insert_arrival(delivery, item, container, position)
        self.tell("arrived-again" if again else "taken", item.sha256, detail=item.name)
        if not again or sheet is not None:
            self._insert_problems(item.sha256, problems)
        superseded: list[reissue.Superseded] = []
        if sheet is not None:
            superseded = self._insert_analyses(sheet, item, delivery)
            self.tell("read", item.sha256, detail=f"{state}, {len(sheet.analyses)} analyses")
        analyses = sheet.analyses if sheet is not None else ()
        yield Taken(item, arrival, state, again, analyses, tuple(problems), tuple(superseded))
        for number, inner in enumerate(item.items, 1):
            yield from self._item(delivery, inner, sheets, arrival, number)

    def _insert_document(self, item: Item, state: DocumentState) -> None:
        self.connection.execute(
            "INSERT INTO documents VALUES (?, ?, ?, ?, ?, NULL, ?)",
            (item.sha256, item.name, item.kind, len(item.data), state, now()),
        )

    def _insert_arrival(self, delivery: Delivery, item: Item, container: int | None, position: int) -> int:
        letter = item.letter
        if delivery.way == "bulk":
            # The same file looked at once more is no new arrival.
            known = self.connection.execute(
                "SELECT id FROM arrivals WHERE path = ? AND sha256 = ? AND position = ? AND container IS ?"
                " AND way = 'bulk'",
                (rows.path_value(delivery.path), item.sha256, position, container),
            ).fetchone()
            if known is not None:
                return int(known[0])
        cursor = self.connection.execute(
            "INSERT INTO arrivals (sha256, container, position, way, path, name, modified, sender, subject, sent_at,"
            " arrived_at) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
            (
                item.sha256,
                container,
                position,
                delivery.way,
                rows.path_value(delivery.path),
                item.name,
                delivery.written,
                letter.sender if letter else None,
                letter.subject if letter else None,
                letter.sent if letter else None,
                now(),
            ),
        )
        assert cursor.lastrowid is not None
        return cursor.lastrowid

    def _insert_problems(self, sha256: str, problems: list[tuple[str, str]]) -> None:
        self.connection.execute("DELETE FROM problems WHERE sha256 = ?", (sha256,))
        self.connection.executemany(
            "INSERT INTO problems VALUES (?, ?, ?, ?)",
            [(sha256, position, code, message) for position, (code, message) in enumerate(problems)],
        )

    def _insert_analyses(self, sheet: Sheet, item: Item, delivery: Delivery) -> list[reissue.Superseded]:
        arrived = (item.letter.sent if item.letter else None) or delivery.written
        superseded: list[reissue.Superseded] = []
        evidence.keep(self.connection, item.sha256, sheet)
        for number, analysis in enumerate(sheet.analyses, 1):
            asked = len({(row.page, row.box) for row in analysis.unrecognised}) - _passed(sheet, number)
            self._insert_analysis(analysis, number, item.sha256, arrived, asked)
            superseded += self.settle_reissue(analysis)
        evidence.keep_as_read(self.connection, sheet)
        return superseded

    def settle_reissue(self, analysis: Analysis) -> list[reissue.Superseded]:
        """Compares a stored analysis with the current ones of its batch; returns what took whose place."""
        superseded = reissue.settle(self.connection, analysis, self.next_change)
        for found in superseded:
            self.tell("superseded", analysis.source.sha256, found.older, found.detail())
        return superseded

    def _insert_analysis(self, analysis: Analysis, number: int, sha256: str, arrived: str, asked: int) -> None:
        header = rows.values(analysis)
        named = ("supplier", "malt", "batch", "certificate", "crop_year", "analysed_on", "produced_on", "delivered_on")
        values = (
            analysis.id,
            sha256,
            number,
            analysis.kind,
            analysis.state,
            *(header.get(name) for name in named),
            rows.date_of(analysis, arrived),
            *(rows.key(header.get(name)) for name in ("supplier", "malt", "batch")),
            rows.is_sure(analysis),
            analysis.method_family,
            None,
            self.next_change(),
            __version__,
            analysis.model_dump_json(by_alias=True),
            None,
            len(analysis.unrecognised),
            asked,
            rows.waits(analysis, asked),
        )
        self.connection.execute(f"INSERT INTO analyses VALUES ({', '.join('?' * len(values))})", values)
        self.write_figures(analysis)

    def write_figures(self, analysis: Analysis) -> None:
        """The figures of an analysis in place of those that were there."""
        self.connection.execute("DELETE FROM figures WHERE analysis = ?", (analysis.id,))
        self.connection.executemany(
            f"INSERT INTO figures VALUES ({', '.join('?' * 19)})", list(rows.figure_rows(analysis))
        )

    def _judge(self, item: Item, sheets: Mapping[str, Sheet]) -> tuple[DocumentState, list[tuple[str, str]]]:
        """What a content is worth, and what is wrong with it."""
        if item.kind == "sheet":
            return _judge_sheet(item, sheets[item.sha256])
        if item.trouble is not None:
            return "failed", [(item.trouble.code, item.trouble.message)]
        for inner in item.sheets():
            sheet = sheets.get(inner.sha256)
            state = self.state_of(inner.sha256) if sheet is None else _judge_sheet(inner, sheet)[0]
            if state != "passed-over":
                return "accepted", []
        if any(inner.kind != "sheet" for inner in item.items):
            return "accepted", []  # what is wrong is told of the email or archive further inside
        message = f"{item.name} holds nothing that could be a malt analysis. Check that the right one was sent."
        return "failed", [("no-figures-found", message)]

    def next_change(self) -> int:
        """A number that is higher than any before."""
        self.connection.execute("UPDATE counters SET value = value + 1 WHERE name = 'change'")
        (value,) = self.connection.execute("SELECT value FROM counters WHERE name = 'change'").fetchone()
        return int(value)

    def tell(self, event: str, sha256: str | None = None, analysis: str | None = None, detail: str = "") -> None:
        """Adds a line to the history."""
        self.connection.execute(
            "INSERT INTO history (at, event, sha256, analysis, detail) VALUES (?, ?, ?, ?, ?)",
            (now(), event, sha256, analysis, detail),
        )

    def problems_of(self, sha256: str) -> list[tuple[str, str]]:
        """Code and message of each problem with a content."""
        found = self.connection.execute(
            "SELECT code, message FROM problems WHERE sha256 = ? ORDER BY position", (sha256,)
        )
        return [(code, message) for code, message in found]


def _passed(sheet: Sheet, number: int) -> int:
    """How many rows of an analysis are known to be none of the parameters."""
    return sheet.passed_rows[number - 1] if isinstance(sheet, KeptSheet) and sheet.passed_rows else 0


def _judge_sheet(item: Item, sheet: Sheet) -> tuple[DocumentState, list[tuple[str, str]]]:
    problems: list[tuple[str, str]] = [(problem.code, problem.message) for problem in sheet.problems]
    if not sheet.analyses:
        logo = item.inline and all(code in _LOGO_CODES for code, _ in problems)
        state: DocumentState = "passed-over" if logo else "failed"
    else:
        doubtful = bool(problems) or any(analysis.state == "review" for analysis in sheet.analyses)
        state = "review" if doubtful else "accepted"
    return state, problems
