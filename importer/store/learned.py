"""What was settled once for a supplier's wording or layout, and how it is laid over the supplier's next sheet.

It lifts a doubt about what a label, a unit, a moisture basis or a method family means, or about which column of a form
holds the results. It never outvotes what the sheet itself says, picks no other value, and a figure that is impossible
or fails a check stays in review.
"""

from __future__ import annotations

import hashlib
import sqlite3
from collections.abc import Iterable, Mapping
from dataclasses import dataclass, replace
from typing import Literal, cast

from importer.kept import KeptSheet, from_json
from importer.meaning.build import Built, Options
from importer.meaning.said import Said, Statements
from importer.models import Analysis, Family, Sheet
from importer.pipeline import rebuild
from importer.printed import PrintedAnalysis, PrintedFigure
from importer.store import rows
from importer.vocabulary.parameters import MoistureBasis, parameters

Kind = Literal["label", "unit", "basis", "family", "column"]
TITLES: dict[Kind, str] = {
    "label": "label",
    "unit": "unit",
    "basis": "moisture basis",
    "family": "method family",
    "column": "column of results",
}
NO_PARAMETER = "none"
"""What a label means that is none of the parameters: its row is kept apart, and not asked."""
RESULTS, ASK = "results", "ask"
"""What a column of a form means: it holds the results, or that has to be asked on each sheet."""
_COLUMNS = "id, supplier_key, supplier, kind, wording_key, wording, means, analysis, correction, person, made_at"


@dataclass(frozen=True, slots=True)
class Learned:
    """One thing learned: for this wording (or layout) of this supplier it is ``means``."""

    id: int
    supplier_key: str
    supplier: str
    kind: Kind
    wording_key: str
    wording: str
    means: str
    analysis: str
    correction: int | None
    person: str | None
    made_at: str


@dataclass(frozen=True, slots=True)
class Lesson:
    """Something to be learned from what a person just said."""

    kind: Kind
    wording_key: str
    wording: str
    means: str


def wording_key(figure: PrintedFigure) -> str:
    """The label of a row with the headings above it. Only case and spaces do not matter: "> 2.2 mm" and "< 2.2 mm"
    must never be taken for the same."""
    return " / ".join(" ".join(text.casefold().split()) for text in (*figure.section, figure.label))


def wording(figure: PrintedFigure) -> str:
    """The same to be shown."""
    return " / ".join((*figure.section, figure.label))


def layout_key(part: PrintedAnalysis) -> str:
    """A supplier's form by its captions and the heads of its columns, whatever stands in them."""
    words = {rows.key(entry.caption) or "" for entry in part.header} | {rows.key(f.column) or "" for f in part.figures}
    return hashlib.sha256("|".join(sorted(words - {""})).encode()).hexdigest()[:16]


def column_key(part: PrintedAnalysis, column: str) -> str:
    """A table of a supplier's form by its heads, those taken for the results, and why that was in doubt."""
    words = " ".join(column.casefold().split())
    return hashlib.sha256(f"{layout_key(part)}|{words}".encode()).hexdigest()[:16]


def doubtful_columns(part: PrintedAnalysis) -> frozenset[str]:
    """The tables of a sheet of which it is not sure which column holds the results (the text of ``Concern.column``)."""
    return frozenset(concern.column for figure in part.figures for concern in figure.doubts if concern.column)


def known(connection: sqlite3.Connection, supplier_key: str | None) -> list[Learned]:
    """What holds for a supplier."""
    if not supplier_key:
        return []
    found = connection.execute(
        f"SELECT {_COLUMNS} FROM learned WHERE supplier_key = ? AND withdrawn_at IS NULL ORDER BY id", (supplier_key,)
    )
    return [Learned(*row) for row in found]


def everything(connection: sqlite3.Connection) -> list[Learned]:
    """All that holds, by supplier."""
    found = connection.execute(
        f"SELECT {_COLUMNS} FROM learned WHERE withdrawn_at IS NULL ORDER BY supplier_key, kind, wording_key"
    )
    return [Learned(*row) for row in found]


def one(connection: sqlite3.Connection, identity: int) -> Learned | None:
    """One thing that holds; None where it was taken back."""
    row = connection.execute(
        f"SELECT {_COLUMNS} FROM learned WHERE id = ? AND withdrawn_at IS NULL", (identity,)
    ).fetchone()
    return Learned(*row) if row is not None else None


def statements(
    part: PrintedAnalysis, things: Iterable[Learned], said_columns: frozenset[str] = frozenset()
) -> Statements:
    """What was learned, as it bears on the rows of a sheet of which a person has said of some columns already."""
    by_wording: dict[str, list[Learned]] = {}
    for thing in things:
        by_wording.setdefault(thing.wording_key, []).append(thing)
    if not by_wording:
        return Statements()
    columns = {
        column: thing
        for column in doubtful_columns(part) - said_columns
        for thing in by_wording.get(column_key(part, column), ())
        if (thing.kind, thing.means) == ("column", RESULTS)
    }
    said = {
        row: _said((*by_wording.get(wording_key(figure), ()), *_of_column(figure, columns)))
        for row, figure in enumerate(part.figures)
    }
    families = [thing.means for thing in by_wording.get(layout_key(part), ()) if thing.kind == "family"]
    return Statements(
        rows={row: one for row, one in said.items() if one is not None},
        family=cast(Family, families[-1]) if families else None,
        family_learned=True,
        columns_learned=frozenset(columns),
    )


def _of_column(figure: PrintedFigure, columns: Mapping[str, Learned]) -> list[Learned]:
    return [columns[concern.column] for concern in figure.doubts if concern.column in columns]


def _said(things: Iterable[Learned]) -> Said | None:
    found: Mapping[Kind, Learned] = {thing.kind: thing for thing in things if thing.kind != "family"}
    if not found:
        return None
    label, unit, basis = found.get("label"), found.get("unit"), found.get("basis")
    return Said(
        parameter=label.means if label and label.means in parameters() else None,
        unit=unit.means if unit else None,
        basis=cast(MoistureBasis, basis.means) if basis else None,
        by_person=False,
        remark=" ".join(_remark(thing) for thing in found.values()),
        passed=label is not None and label.means == NO_PARAMETER,
    )


def _remark(thing: Learned) -> str:
    if thing.kind == "column":
        return "This column holds the results on this supplier's form (settled by a person)."
    meaning = parameters()[thing.means].title if thing.kind == "label" and thing.means in parameters() else thing.means
    return f"“{thing.wording}” of this supplier means {meaning} ({TITLES[thing.kind]} settled by a person)."


def lay_over(connection: sqlite3.Connection, sheet: Sheet) -> Sheet:
    """A sheet just read, with what was learned of its suppliers; the sheet itself where nothing was."""
    if not isinstance(sheet, KeptSheet) or not sheet.printed:
        return sheet
    things = {key: known(connection, key) for key in {supplier_key(analysis) for analysis in sheet.analyses}}
    if not any(things.values()):
        return sheet
    stage = from_json(sheet.printed)
    made: list[Analysis] = []
    unasked: list[int] = []
    for number, analysis in enumerate(sheet.analyses, 1):
        told = statements(stage.parts[number - 1], things[supplier_key(analysis)])
        built = rebuild(stage, number, analysis, Options(), told)
        made.append(built.analysis)
        unasked.append(len(set(built.unknown_rows)) - len(asked_rows(built, told)))
    changed = {} if tuple(made) == sheet.analyses else {"analyses": tuple(made), "as_read": sheet.analyses}
    return sheet.model_copy(update={"passed_rows": tuple(unasked), **changed})


def asked_rows(built: Built, told: Statements) -> list[int]:
    """The rows that no parameter was found for and that nobody has said to be none."""
    return [row for row in dict.fromkeys(built.unknown_rows) if row not in told.rows or not told.rows[row].passed]


def supplier_key(analysis: Analysis) -> str | None:
    """The supplier of an analysis, for comparing."""
    field = analysis.header.get("supplier")
    return rows.key(field.value) if field is not None else None


def under(person: Statements, learnt: Statements) -> Statements:
    """Both together: what a person said of this sheet itself goes before what was learned from others."""
    told = dict(learnt.rows)
    for row, said in person.rows.items():
        below = told.get(row)
        if below is not None:
            taught = {name for name in ("parameter", "unit", "basis") if getattr(said, name) is None}
            said = replace(
                said,
                parameter=said.parameter or below.parameter,
                unit=said.unit or below.unit,
                basis=said.basis or below.basis,
                taught=frozenset(taught),
            )
        told[row] = said
    family = person.family or learnt.family
    return Statements(told, family, person.family is None, person.header, person.columns, learnt.columns_learned)


def learn(
    connection: sqlite3.Connection,
    analysis: Analysis,
    lessons: Iterable[Lesson],
    correction: int,
    person: str,
    made_at: str,
) -> list[Lesson]:
    """Remembers lessons for the supplier of an analysis; a new one takes the place of an older one of its wording."""
    key = supplier_key(analysis)
    if key is None:
        return []
    taught: list[Lesson] = []
    holds = {(thing.kind, thing.wording_key): thing for thing in known(connection, key)}
    for lesson in lessons:
        before = holds.get((lesson.kind, lesson.wording_key))
        if before is not None and before.means == lesson.means:
            continue
        if before is not None:
            withdraw(connection, before.id, person, made_at)
        _insert(connection, key, analysis.header["supplier"].value, lesson, analysis.id, correction, person, made_at)
        taught.append(lesson)
    return taught


def _insert(
    connection: sqlite3.Connection,
    key: str,
    supplier: str,
    lesson: Lesson,
    analysis: str,
    correction: int | None,
    person: str,
    made_at: str,
) -> None:
    connection.execute(
        "INSERT INTO learned (supplier_key, supplier, kind, wording_key, wording, means, analysis, correction, person,"
        " made_at) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
        (
            key,
            supplier,
            lesson.kind,
            lesson.wording_key,
            lesson.wording,
            lesson.means,
            analysis,
            correction,
            person,
            made_at,
        ),
    )


def change(connection: sqlite3.Connection, thing: Learned, means: str, person: str, at: str) -> None:
    """Says that it means something else."""
    withdraw(connection, thing.id, person, at)
    lesson = Lesson(thing.kind, thing.wording_key, thing.wording, means)
    _insert(connection, thing.supplier_key, thing.supplier, lesson, thing.analysis, thing.correction, person, at)


def withdraw(connection: sqlite3.Connection, identity: int, person: str, at: str) -> None:
    """Takes one thing back; it stays in the table with who did it, and when."""
    connection.execute(
        "UPDATE learned SET withdrawn_at = ?, withdrawn_by = ? WHERE id = ? AND withdrawn_at IS NULL",
        (at, person, identity),
    )


def unlearn(connection: sqlite3.Connection, correction: int, person: str, at: str) -> list[Lesson]:
    """Takes back what was learned from a correction; returns it."""
    found = connection.execute(
        f"SELECT {_COLUMNS} FROM learned WHERE correction = ? AND withdrawn_at IS NULL", (correction,)
    )
    things = [Learned(*row) for row in found]
    for thing in things:
        withdraw(connection, thing.id, person, at)
    return [Lesson(thing.kind, thing.wording_key, thing.wording, thing.means) for thing in things]
