"""A store of every earlier version opens, is brought up to date and keeps all that was in it."""

from __future__ import annotations

import hashlib
import json
import sqlite3
from pathlib import Path
from typing import Any

import pytest
from typer.testing import CliRunner

from importer.cli import app
from importer.kept import pack
from importer.store import rows as as_rows
from importer.store import schema
from importer.store.ledger import FILE_NAME, Store
from tests.store.helpers import dump, put, rows, take
from tests.store.standins import read_bytes, sheet

# What was released is never changed: a store in somebody's cellar was made by it.
RELEASED = ("9afd066fa1ee1512", "f92a6c36d8ba0ec3", "999033dea0dbb425", "2b4cb0c1e01c6758")
AT = "2024-11-20T10:00:00.000+00:00"


def digest(script: str) -> str:
    """Of the statements without their layout."""
    return hashlib.sha256(" ".join(script.split()).encode()).hexdigest()[:16]


def inserted(connection: sqlite3.Connection, table: str, **values: Any) -> None:
    names = ", ".join(values)
    marks = ", ".join("?" * len(values))
    connection.execute(f"INSERT INTO {table} ({names}) VALUES ({marks})", list(values.values()))


def fill(connection: sqlite3.Connection, version: int) -> None:
    """Something in every table of a version: two certificates of one batch, and one that could not be read."""
    for number, data in enumerate((sheet("A1", rows=2), sheet("A1", moisture=4.6)), 1):
        (analysis,) = read_bytes(f"{number}.pdf", data).analyses
        sha256, header = analysis.source.sha256, as_rows.values(analysis)
        keys = {f"{name}_key": as_rows.key(header[name]) for name in ("supplier", "malt", "batch")}
        inserted(
            connection, "documents", sha256=sha256, name=f"{number}.pdf", kind="sheet", size=len(data),
            state="accepted", filed=None, taken_at=AT,
        )  # fmt: skip
        inserted(
            connection, "arrivals", sha256=sha256, way="bulk", path=f"/old/{number}.pdf", name=f"{number}.pdf",
            modified=AT, arrived_at=AT, sender="lab@example.org",
        )  # fmt: skip
        inserted(
            connection, "analyses", id=analysis.id, sha256=sha256, number=1, kind="batch", state="accepted",
            supplier=header["supplier"], malt=header["malt"], batch=header["batch"], dated="2024-11-14",
            method_family=analysis.method_family, sure=1, change=number, program="0.1",
            json=analysis.model_dump_json(by_alias=True), **keys,
        )  # fmt: skip
        marks = ", ".join("?" * 19)
        connection.executemany(f"INSERT INTO figures VALUES ({marks})", list(as_rows.figure_rows(analysis)))
        inserted(connection, "looked", path=f"/old/{number}.pdf", size=len(data), modified=7, sha256=sha256)
        inserted(connection, "history", at=AT, event="taken", sha256=sha256, detail=f"{number}.pdf")
    older, newer = (name for (name,) in connection.execute("SELECT id FROM analyses ORDER BY change"))
    connection.execute("UPDATE analyses SET superseded_by = ? WHERE id = ?", (newer, older))
    inserted(connection, "supersessions", newer=newer, older=older, changes="[]")
    inserted(
        connection, "corrections", analysis=newer, target="header", action="change",
        value='{"set": {}}', person="brewer", made_at=AT,
    )  # fmt: skip
    inserted(
        connection, "renderings", id=newer, basis="IoB", estimates=1, ratio_rule="published", program="0.1", json="{}"
    )
    inserted(
        connection, "documents", sha256="f" * 64, name="notes.txt", kind="sheet", size=5, state="failed",
        filed="set-aside/unreadable/notes.txt", taken_at=AT,
    )  # fmt: skip
    inserted(
        connection, "arrivals", sha256="f" * 64, way="inbox", path=b"/old/\xff.txt", name="notes.txt", modified=AT,
        arrived_at=AT,
    )  # fmt: skip
    inserted(connection, "problems", sha256="f" * 64, position=0, code="unsupported-type", message="no sheet")
    inserted(
        connection, "filings", sha256="f" * 64, arrival=3, target="set-aside/unreadable/notes.txt",
        target_key="set-aside/unreadable/notes.txt", note="why", state="done",
    )  # fmt: skip
    inserted(connection, "removals", arrival=3, path="/old/notes.txt", sha256="f" * 64)
    inserted(connection, "exports", at=AT, wanted="{}", change=2, count=2)
    connection.execute("UPDATE counters SET value = 2 WHERE name = 'change'")
    if version >= 2:
        fill_second(connection, older, newer)


def fill_second(connection: sqlite3.Connection, older: str, newer: str) -> None:
    """What the second version added."""
    connection.execute("UPDATE analyses SET unknown_rows = 2 WHERE id = ?", (older,))
    inserted(connection, "readings", sha256="f" * 64, printed=pack("{}"))
    inserted(connection, "as_read", id=older, json="{}")
    inserted(
        connection, "learned", supplier_key="s", supplier="S", kind="label", wording_key="w", wording="W",
        means="colour", analysis=newer, correction=1, person="brewer", made_at=AT,
    )  # fmt: skip


def made_by(version: int, folder: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """A filled store as a program of that version leaves it."""
    with monkeypatch.context() as earlier:
        earlier.setattr(schema, "MIGRATIONS", schema.MIGRATIONS[:version])
        earlier.setattr(schema, "VERSION", version)
        connection = schema.connect(folder / FILE_NAME)
    fill(connection, version)
    connection.close()


EARLIER = range(1, schema.VERSION)


@pytest.mark.parametrize("version", EARLIER)
def test_everything_is_kept(store_folder: Path, monkeypatch: pytest.MonkeyPatch, version: int) -> None:
    made_by(version, store_folder, monkeypatch)
    before = dump(store_folder)
    assert all(before[table] for table in before), "the test fills every table"
    with Store(store_folder) as store:
        assert rows(store, "PRAGMA user_version") == [(schema.VERSION,)]
    after = dump(store_folder)
    for table, entries in before.items():
        kept = [{key: value for key, value in row.items() if key in entries[0]} for row in after[table]]
        assert sorted(kept, key=str) == sorted(entries, key=str), table


@pytest.mark.parametrize("version", EARLIER)
def test_its_tables_are_those_of_a_new_store(
    store_folder: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch, version: int
) -> None:
    made_by(version, store_folder, monkeypatch)
    found = []
    (tmp_path / "new").mkdir()
    for folder in (store_folder, tmp_path / "new"):
        with Store(folder) as store:
            found.append(rows(store, "SELECT type, name, tbl_name, sql FROM sqlite_schema ORDER BY name"))
    assert found[0] == found[1]


@pytest.mark.parametrize("version", EARLIER)
def test_work_goes_on_with_it(
    store_folder: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch, version: int
) -> None:
    made_by(version, store_folder, monkeypatch)

    def exported() -> list[float]:
        result = CliRunner().invoke(app, ["export", "--json", "-", "--store", str(store_folder)])
        assert result.exit_code == 0, result.output
        return [analysis["figures"][0]["value"] for analysis in json.loads(result.stdout)["analyses"]]

    assert exported() == [4.6]
    listed = CliRunner().invoke(app, ["review", "--list", "--store", str(store_folder)])
    assert listed.exit_code == 0, listed.output
    with Store(store_folder) as store:
        assert rows(store, "SELECT unknown_rows FROM analyses ORDER BY change") == [(2,), (0,)]
        again, reissued, other = take(
            store,
            put(tmp_path, "again.pdf", sheet("A1", moisture=4.6)),
            put(tmp_path, "reissued.pdf", sheet("A1", moisture=4.9, day="2024-12-01")),
            put(tmp_path, "other.pdf", sheet("B2")),
        )
        assert (again.again, reissued.again, other.again) == (True, False, False)
        assert len(reissued.supersedes) == 1
    assert exported() == [4.2, 4.9]


def test_what_was_released_is_never_changed() -> None:
    assert tuple(digest(script) for script in schema.MIGRATIONS) == RELEASED
