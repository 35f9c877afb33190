"""Choosing stored analyses, and putting them on another basis where that is asked for."""

from __future__ import annotations

import contextlib
import sqlite3
from collections.abc import Collection, Iterator, Sequence
from concurrent.futures import Future
from dataclasses import asdict, dataclass

from importer import __version__
from importer.models import Analysis, Sheet
from importer.store import rows
from importer.store.evidence import kept_of
from importer.store.ledger import Store, now
from importer.store.originals import original
from importer.store.reading import Job, LocalReaders, Options, read_job
from importer.store.schema import StoreError, explained, transaction

# What analyses are stored on.
STORED = Options()
# Batches of one day by their number: it tells as good as always which was made later.
_ORDER = "dated, supplier_key, batch_key, id"
# Behind every character that an id may hold.
_LAST = chr(0x10FFFF)


@dataclass(frozen=True, slots=True)
class Wanted:
    """Which analyses. Names are compared without case, spaces and marks, and may be a part; days are ISO 8601."""

    supplier: str | None = None
    malt: str | None = None
    batch: str | None = None
    first_day: str | None = None
    last_day: str | None = None
    superseded: bool = False

    def as_json(self) -> str:
        """The same wish gives the same text."""
        return rows.as_json(asdict(self))


@dataclass(frozen=True, slots=True)
class Chosen:
    """Analyses in the order of their day, and the change that the store was at."""

    analyses: tuple[Analysis, ...]
    change: int
    names: dict[str, str]


def choose(store: Store, wanted: Wanted, *, since: int = 0) -> Chosen:
    """The stored analyses that are wanted and were new or changed after ``since``. Raises StoreError."""
    conditions, values = _conditions(wanted)
    try:
        store.connection.execute("BEGIN")
        try:
            (change,) = store.connection.execute("SELECT value FROM counters WHERE name = 'change'").fetchone()
            found = store.connection.execute(
                "SELECT json, sha256 FROM analyses WHERE change > ?"
                f"{''.join(f' AND {condition}' for condition in conditions)} ORDER BY {_ORDER}",
                (since, *values),
            ).fetchall()
        finally:
            store.connection.execute("COMMIT")
    except sqlite3.Error as error:
        raise explained(store.path, error) from None
    analyses = tuple(Analysis.model_validate_json(text) for text, _ in found)
    return Chosen(analyses, change, {analysis.source.sha256: analysis.source.file for analysis in analyses})


def current(store: Store, wanted: Wanted) -> tuple[int, tuple[str, ...]]:
    """The change that the store is at, and the ids that ``choose`` would give now, in its order. Raises StoreError."""
    conditions, values = _conditions(wanted)
    condition = " AND ".join(conditions) or "TRUE"
    try:
        with contextlib.closing(store.connection.cursor()) as cursor:
            cursor.execute("BEGIN")
            try:
                (change,) = cursor.execute("SELECT value FROM counters WHERE name = 'change'").fetchone()
                found = cursor.execute(
                    f"SELECT id FROM analyses WHERE {condition} ORDER BY {_ORDER}", values
                ).fetchall()
            finally:
                cursor.execute("COMMIT")
    except sqlite3.Error as error:
        raise explained(store.path, error) from None
    return int(change), tuple(identity for (identity,) in found)


def named(store: Store, name: str) -> tuple[Analysis, ...]:
    """The current analyses that a name may mean, as an id or the beginning of one or a batch. Raises StoreError."""
    condition, values = "id = ? OR batch_key = ?", [name, rows.key(name)]
    if len(name) >= rows.LEAST_OF_ID:
        condition, values = f"{condition} OR id >= ? AND id < ?", [*values, name, name + _LAST]
    return _current(store, condition, values)


def of_malts(store: Store, malts: Collection[tuple[str, str]], names: Collection[str]) -> tuple[Analysis, ...]:
    """The current analyses of ``malts``, by keys of supplier and malt, and of malts by ``names``, by key, of whichever
    supplier; in the order of their day. Raises StoreError."""
    conditions = ["supplier_key IS ? AND malt_key = ?"] * len(malts) + ["malt_key = ?"] * len(names)
    values = [value for supplier, malt in malts for value in (supplier or None, malt)]
    return _current(store, " OR ".join(conditions) or "FALSE", [*values, *names])


def _current(store: Store, condition: str, values: Sequence[str | None]) -> tuple[Analysis, ...]:
    try:
        found = store.connection.execute(
            f"SELECT json FROM analyses WHERE superseded_by IS NULL AND ({condition}) ORDER BY {_ORDER}", values
        ).fetchall()
    except sqlite3.Error as error:
        raise explained(store.path, error) from None
    return tuple(Analysis.model_validate_json(text) for (text,) in found)


def days(store: Store) -> dict[str, str]:
    """The day that each analysis is filed under, by id: also where its sheet tells none. Raises StoreError."""
    try:
        return dict(store.connection.execute("SELECT id, dated FROM analyses WHERE dated IS NOT NULL"))
    except sqlite3.Error as error:
        raise explained(store.path, error) from None


def nothing_chosen(store: Store, wanted: Wanted) -> str:
    """Why a choice is empty, in words: which suppliers there are where one was asked for. Raises StoreError."""
    if wanted.supplier is None:
        return "Nothing in the store is like that."
    try:
        found = store.connection.execute(
            "SELECT DISTINCT supplier FROM analyses WHERE supplier_key IS NOT NULL GROUP BY supplier_key ORDER BY 1"
        ).fetchall()
    except sqlite3.Error as error:
        raise explained(store.path, error) from None
    names = ", ".join(name for (name,) in found)
    if any((rows.key(wanted.supplier) or "\0") in (rows.key(name) or "") for (name,) in found):
        return "Nothing in the store is like that."
    return f"Nothing in the store is of a supplier “{wanted.supplier}”. There are: {names or 'none yet'}."


def _conditions(wanted: Wanted) -> tuple[list[str], list[str]]:
    conditions: list[str] = []
    values: list[str] = []
    for column, text in (("supplier", wanted.supplier), ("malt", wanted.malt), ("batch", wanted.batch)):
        if text is not None:
            conditions.append(f"INSTR({column}_key, ?)")
            values.append(rows.key(text) or "\0")
    if wanted.first_day is not None:
        conditions.append("dated >= ?")
        values.append(wanted.first_day)
    if wanted.last_day is not None:
        conditions.append("SUBSTR(dated, 1, LENGTH(?)) <= ?")
        values += [wanted.last_day, wanted.last_day]
    if not wanted.superseded:
        conditions.append("superseded_by IS NULL")
    return conditions, values


def last_export(store: Store, wanted: Wanted) -> int:
    """The change that the last export of the same choice was at; 0 where there was none."""
    row = store.connection.execute("SELECT MAX(change) FROM exports WHERE wanted = ?", (wanted.as_json(),)).fetchone()
    return int(row[0] or 0)


def record_export(store: Store, wanted: Wanted, chosen: Chosen) -> None:
    """Remembers an export once it is written. Raises StoreError."""
    try:
        with transaction(store.connection):
            store.connection.execute(
                "INSERT INTO exports (at, wanted, change, count) VALUES (?, ?, ?, ?)",
                (now(), wanted.as_json(), chosen.change, len(chosen.analyses)),
            )
            store.tell("exported", detail=f"{len(chosen.analyses)} analyses")
    except sqlite3.Error as error:
        raise explained(store.path, error) from None


def on_basis(store: Store, chosen: Chosen, options: Options, workers: int) -> Iterator[Analysis]:
    """The chosen analyses as ``options`` wants them. What was not asked for before is read again from the originals.

    Raises StoreError where an original is not there any more.
    """
    if (options.basis, options.estimates, options.ratio_rule) == (STORED.basis, STORED.estimates, STORED.ratio_rule):
        yield from chosen.analyses
        return
    made: dict[str, Analysis] = {}
    for sheet in _made(store, chosen, options, workers):
        if store.writable:
            _keep(store, sheet, options)
        made |= {analysis.id: analysis for analysis in sheet.analyses}
    for analysis in chosen.analyses:
        found = made.get(analysis.id) or _rendering(store, analysis.id, options)
        if found is None:
            raise StoreError(f"{analysis.source.file} reads differently now than when it was taken in.")
        yield found


def _made(store: Store, chosen: Chosen, options: Options, workers: int) -> Iterator[Sheet]:
    """What was not put on this basis before: from what was kept of it, else from the originals."""
    missing: list[str] = []
    for name in chosen.names:
        if _is_rendered(store, name, options):
            continue
        sheet = _rebuilt(store, name, options)
        if sheet is None:
            missing.append(name)
        else:
            yield sheet
    if missing:
        yield from _render(store, chosen, missing, options, workers)


def _rendering(store: Store, identity: str, options: Options) -> Analysis | None:
    row = store.connection.execute(
        "SELECT json FROM renderings WHERE id = ? AND basis = ? AND estimates = ? AND ratio_rule = ?",
        (identity, options.basis, options.estimates, options.ratio_rule),
    ).fetchone()
    return None if row is None else Analysis.model_validate_json(row[0])


def _is_rendered(store: Store, sha256: str, options: Options) -> bool:
    (missing,) = store.connection.execute(
        "SELECT COUNT(*) FROM analyses a WHERE sha256 = ? AND NOT EXISTS (SELECT 1 FROM renderings r WHERE r.id = a.id"
        " AND r.basis = ? AND r.estimates = ? AND r.ratio_rule = ? AND r.program = a.program)",
        (sha256, options.basis, options.estimates, options.ratio_rule),
    ).fetchone()
    return int(missing) == 0


def _rebuilt(store: Store, sha256: str, options: Options) -> Sheet | None:
    """The analyses of a document on another basis from what was kept of it; None where nothing was."""
    from importer.meaning import build
    from importer.store.corrections import load

    found = store.connection.execute("SELECT id FROM analyses WHERE sha256 = ?", (sha256,)).fetchall()
    if kept_of(store.connection, sha256) is None:
        return None
    wanted = build.Options(options.basis, options.estimates, options.ratio_rule)
    cases = [load(store, identity) for (identity,) in found]
    return Sheet(analyses=tuple(case.with_statements(case.statements, wanted).analysis for case in cases))


def _render(store: Store, chosen: Chosen, missing: Sequence[str], options: Options, workers: int) -> Iterator[Sheet]:
    with LocalReaders(min(workers, len(missing)), options) as readers:
        for start in range(0, len(missing), workers * 4):
            running: list[Future[Sheet]] = []
            for sha256 in missing[start : start + workers * 4]:
                data = original(store, sha256)
                name = chosen.names[sha256]
                if data is None:
                    raise StoreError(
                        f"The original of {name} is not there any more, so it cannot be put on another basis. "
                        "Put it back where it was, or export on the EBC basis with estimates."
                    )
                running.append(readers.submit(read_job, Job(name, data, options)))
            for future in running:
                yield future.result()


def _keep(store: Store, sheet: Sheet, options: Options) -> None:
    with transaction(store.connection):
        known = {
            name
            for (name,) in store.connection.execute(
                f"SELECT id FROM analyses WHERE id IN ({', '.join('?' * len(sheet.analyses))})",
                [analysis.id for analysis in sheet.analyses],
            )
        }
        store.connection.executemany(
            "INSERT OR REPLACE INTO renderings VALUES (?, ?, ?, ?, ?, ?)",
            [
                (
                    analysis.id,
                    options.basis,
                    options.estimates,
                    options.ratio_rule,
                    __version__,
                    analysis.model_dump_json(by_alias=True),
                )
                for analysis in sheet.analyses
                if analysis.id in known
            ],
        )
