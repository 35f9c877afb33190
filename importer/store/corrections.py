"""What a person said of an analysis: each word a record of its own, laid over the reading, never into it.

The rows of ``analyses`` and ``figures`` always show what stands: the reading with everything said since laid over it.
"""

from __future__ import annotations

import json
import sqlite3
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace
from functools import cached_property
from typing import Any, Literal

from importer.kept import Kept
from importer.meaning.build import Built, Options
from importer.meaning.said import Said, Statements
from importer.models import Analysis
from importer.pipeline import rebuild
from importer.printed import PrintedAnalysis, PrintedFigure
from importer.store import evidence, learned, rows
from importer.store.learned import Lesson
from importer.store.ledger import Store
from importer.store.schema import StoreError
from importer.words import Box

Action = Literal["confirm", "change", "reject", "withdraw"]
HEADER, SHEET = "header", "sheet"
_NOT_THERE = "There is no analysis {} in the store."
NOTHING_KEPT = (
    "{} was taken in by an earlier version, which kept nothing that corrections can be laid over, and its original is "
    "not there any more. Put it back where it was."
)


class StaleError(Exception):
    """Somebody else has changed the analysis meanwhile; nothing was saved, nothing is lost."""


class RefusedError(Exception):
    """What was said makes no sense; the message says why."""


@dataclass(frozen=True, slots=True)
class Record:
    """One thing that was said. ``value`` has what was set, what that settles, and before and after in words."""

    id: int
    target: str
    action: Action
    value: Mapping[str, Any]
    person: str
    made_at: str
    withdrawn: bool = False

    @property
    def row(self) -> int | None:
        """The row that it is about; None for the header or the sheet."""
        kind, _, number = self.target.partition("/")
        return int(number) if kind == "rows" else None


@dataclass(frozen=True, eq=False)
class Case:
    """One analysis as it stands, with all that it rests on. ``revision`` grows with every change of it; ``before`` is
    what the store shows of it so far."""

    id: str
    sha256: str
    number: int
    revision: int
    set_aside: str | None
    as_read: Analysis
    before: Analysis
    kept: Kept
    records: tuple[Record, ...]
    learnt: Statements

    @property
    def part(self) -> PrintedAnalysis:
        """The printed rows, those that a person added at the end."""
        return self.kept.parts[self.number - 1]

    @cached_property
    def statements(self) -> Statements:
        """All that was said and learned, and not taken back."""
        return learned.under(statements_of(self.records), self.learnt)

    @cached_property
    def built(self) -> Built:
        """The analysis as it stands."""
        return self.with_statements(self.statements)

    def with_statements(self, statements: Statements, options: Options | None = None) -> Built:
        """The analysis as it would stand."""
        return rebuild(self.kept, self.number, self.as_read, options or Options(), statements)

    def with_record(self, record: Record) -> Case:
        """The case with one record more."""
        records = (*self.records, record)
        return replace(self, records=records, kept=_with_added(self._plain, self.number, records))

    @property
    def _plain(self) -> Kept:
        added = sum(1 for record in self.records if "added" in record.value)
        return self.kept if not added else _with_figures(self.kept, self.number, self.part.figures[:-added])


def load(store: Store, identity: str) -> Case:
    """An analysis with everything laid over it. Raises StoreError where it cannot be corrected."""
    row = store.connection.execute(
        "SELECT sha256, number, change, json, set_aside FROM analyses WHERE id = ?", (identity,)
    ).fetchone()
    if row is None:
        raise StoreError(_NOT_THERE.format(identity))
    sha256, number, change, text, set_aside = row
    standing = Analysis.model_validate_json(text)
    as_read = evidence.as_read(store.connection, identity) or standing
    kept = evidence.kept_of(store.connection, sha256)
    if kept is None or len(kept.parts) < number:
        raise StoreError(NOTHING_KEPT.format(as_read.source.file))
    records = records_of(store.connection, identity)
    things = learned.known(store.connection, learned.supplier_key(standing))
    learnt = learned.statements(kept.parts[number - 1], things, statements_of(records).columns)
    return Case(
        id=identity,
        sha256=sha256,
        number=number,
        revision=change,
        set_aside=set_aside,
        as_read=as_read,
        before=standing,
        kept=_with_added(kept, number, records),
        records=records,
        learnt=learnt,
    )


def records_of(connection: sqlite3.Connection, identity: str) -> tuple[Record, ...]:
    """Everything that was said of an analysis, in order; what was taken back is marked."""
    found = connection.execute(
        "SELECT id, target, action, value, person, made_at FROM corrections WHERE analysis = ? ORDER BY id", (identity,)
    ).fetchall()
    records = [
        Record(n, target, action, json.loads(value or "{}"), who or "", at)
        for n, target, action, value, who, at in found
    ]
    gone = {record.value.get("withdraws") for record in records if record.action == "withdraw"}
    return tuple(replace(record, withdrawn=record.id in gone) for record in records)


# ---------------------------------------------------------------------------------------------- from records


def statements_of(records: Sequence[Record]) -> Statements:
    """What the records come to, later ones over earlier ones."""
    said: dict[int, Said] = {}
    header: dict[str, str | None] = {}
    family = None
    columns: set[str] = set()
    for record in records:
        if record.action == "withdraw" or record.withdrawn:
            continue
        row = record.row
        told = record.value.get("set", {})
        if "column" in record.value:
            columns.add(record.value["column"])
        elif row is not None:
            said[row] = _with(said.get(row, Said()), record, told)
        elif record.target == HEADER:
            header.update(told)
        elif "family" in told:
            family = told["family"]
    for record in records:  # an added row keeps its number when it is taken back, so that later ones keep theirs
        if record.withdrawn and record.row is not None and "added" in record.value:
            said[record.row] = Said(rejected=True)
    return Statements(said, family, False, header, frozenset(columns))


def _with(before: Said, record: Record, told: Mapping[str, Any]) -> Said:
    return replace(
        before,
        **told,
        settled=frozenset(record.value.get("settled", ())),
        about=record.value.get("about", ""),
        rejected=record.action == "reject",
    )


def _with_added(kept: Kept, number: int, records: Sequence[Record]) -> Kept:
    """The printed stage with the rows that a person added behind those that were read."""
    added = tuple(_added(record.value["added"]) for record in records if "added" in record.value)
    return _with_figures(kept, number, (*kept.parts[number - 1].figures, *added)) if added else kept


def _with_figures(kept: Kept, number: int, figures: tuple[PrintedFigure, ...]) -> Kept:
    parts = list(kept.parts)
    parts[number - 1] = replace(parts[number - 1], figures=figures)
    return replace(kept, parts=tuple(parts))


def _added(raw: Mapping[str, Any]) -> PrintedFigure:
    return PrintedFigure(
        label=str(raw["label"]),
        value=str(raw["value"]),
        unit=raw.get("unit"),
        page=int(raw["page"]),
        box=Box(*(float(edge) for edge in raw["box"])),
        confidence=float(raw.get("confidence", 1.0)),
    )


# ---------------------------------------------------------------------------------------------- into the store


def insert(store: Store, case: Case, record: Record) -> int:
    """Writes one record; returns its number. To be called in a transaction."""
    cursor = store.connection.execute(
        "INSERT INTO corrections (analysis, target, action, value, person, made_at) VALUES (?, ?, ?, ?, ?, ?)",
        (case.id, record.target, record.action, rows.as_json(dict(record.value)), record.person, record.made_at),
    )
    assert cursor.lastrowid is not None
    return cursor.lastrowid


def write_standing(store: Store, identity: str) -> Case:
    """Lays everything said over the reading once more and stores what stands. To be called in a transaction."""
    connection = store.connection
    connection.execute("UPDATE analyses SET change = ? WHERE id = ?", (store.next_change(), identity))
    case = load(store, identity)
    analysis = case.built.analysis
    text, dated, overtaken = connection.execute(
        "SELECT json, dated, superseded_by FROM analyses WHERE id = ?", (identity,)
    ).fetchone()
    evidence.keep_reading(connection, identity, text)
    header = rows.values(analysis)
    named = ("supplier", "malt", "batch", "certificate", "crop_year", "analysed_on", "produced_on", "delivered_on")
    columns: dict[str, object] = {name: header.get(name) for name in named}
    columns |= {f"{name}_key": rows.key(header.get(name)) for name in ("supplier", "malt", "batch")}
    columns |= {"state": analysis.state, "dated": rows.date_of(analysis, dated), "sure": rows.is_sure(analysis)}
    columns |= {"method_family": analysis.method_family, "unknown_rows": len(analysis.unrecognised)}
    asked = len(learned.asked_rows(case.built, case.statements))
    columns |= {"asked_rows": asked, "waits": rows.waits(analysis, asked)}
    columns["json"] = analysis.model_dump_json(by_alias=True)
    assignments = ", ".join(f"{name} = ?" for name in columns)
    connection.execute(f"UPDATE analyses SET {assignments} WHERE id = ?", (*columns.values(), identity))
    store.write_figures(analysis)
    connection.execute("DELETE FROM renderings WHERE id = ?", (identity,))
    _write_document_state(connection, case.sha256)
    known_before = rows.is_sure(case.before) and rows.key_of_batch(case.before) == rows.key_of_batch(analysis)
    if overtaken is None and not known_before:
        store.settle_reissue(analysis)
    return case


def _write_document_state(connection: sqlite3.Connection, sha256: str) -> None:
    """A document is accepted once all of its analyses are and nothing of it failed."""
    connection.execute(
        "UPDATE documents SET state = CASE WHEN EXISTS (SELECT 1 FROM analyses WHERE sha256 = ?1 AND state = 'review')"
        " OR EXISTS (SELECT 1 FROM problems WHERE sha256 = ?1) THEN 'review' ELSE 'accepted' END"
        " WHERE sha256 = ?1 AND state IN ('accepted', 'review')",
        (sha256,),
    )


def following(store: Store, key: str, lessons: Sequence[Lesson], but: str) -> list[str]:
    """Other current analyses of a supplier on which lessons may bear, by id."""
    found: set[str] = set()
    for lesson in lessons:
        text = lesson.wording.rsplit(" / ", 1)[-1]
        condition, values = "INSTR(json, ?)", [json.dumps(text, ensure_ascii=False)[1:-1]]
        if lesson.kind in ("family", "column"):  # those in doubt, and those that such a lesson may bear already
            condition, values = "(state = 'review' OR id IN (SELECT id FROM as_read))", []
        found |= {
            identity
            for (identity,) in store.connection.execute(
                f"SELECT id FROM analyses WHERE supplier_key = ? AND superseded_by IS NULL AND id <> ? AND {condition}",
                (key, but, *values),
            )
        }
    return sorted(found)
