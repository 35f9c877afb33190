"""The store: what is written, what counts as the same, and what a reissued certificate does."""

from __future__ import annotations

import json
import os
import sqlite3
import sys
import threading
from pathlib import Path

import pytest
import typer

from importer.models import Analysis
from importer.store import schema
from importer.store.ledger import FILE_NAME, Store
from importer.store.lock import only_writer
from importer.store.originals import original
from importer.store.schema import StoreError
from tests.store.helpers import dump, put, rows, take
from tests.store.parcels import mail, zipped
from tests.store.standins import READS, Inline, sheet


@pytest.fixture
def store(store_folder: Path) -> Store:
    return Store(store_folder)


@pytest.fixture(autouse=True)
def _closed(store: Store) -> object:
    yield
    store.close()


def test_a_sheet_with_its_figures_and_evidence(store: Store, tmp_path: Path) -> None:
    take(store, put(tmp_path, "a.pdf", sheet("24/0417")))
    ((name, state, filed),) = rows(store, "SELECT name, state, filed FROM documents")
    assert (name, state, filed) == ("a.pdf", "accepted", None)
    ((text, batch_key, dated),) = rows(store, "SELECT json, batch_key, dated FROM analyses")
    assert Analysis.model_validate_json(text).header["batch"].value == "24/0417"
    assert json.loads(text)["header"]["batch"]["value"] == "24/0417"
    assert (batch_key, dated) == ("240417", "2024-11-14")
    ((parameter, value, unit, label, printed, page, box),) = rows(
        store, "SELECT parameter, value, unit, label, printed, page, box FROM figures"
    )
    assert (parameter, value, unit, label, printed, page) == ("moisture", 4.2, "%", "Moisture", "4.2", 1)
    assert box == "56 120.5 90.25 131"


def test_the_same_content_twice_is_one_document_with_two_arrivals(store: Store, tmp_path: Path) -> None:
    executor = Inline()
    letter = bytes(mail(("again.pdf", sheet()), sender="lab@example.org", subject="Certificate"))
    take(store, put(tmp_path, "a.pdf", sheet()), put(tmp_path, "m.eml", letter), executor=executor)
    take(store, put(tmp_path, "z.zip", zipped(("b.pdf", sheet()))), executor=executor)
    assert executor.read == ["a.pdf"]
    assert rows(store, "SELECT COUNT(*) FROM documents WHERE kind = 'sheet'") == [(1,)]
    assert rows(store, "SELECT COUNT(*) FROM analyses") == [(1,)]
    found = rows(store, "SELECT a.name, a.sender, a.subject, a.sent_at FROM arrivals a JOIN documents d USING (sha256)"
                        " WHERE d.kind = 'sheet' ORDER BY a.id")  # fmt: skip
    assert found == [
        ("a.pdf", None, None, None),
        ("again.pdf", "lab@example.org", "Certificate", "2024-11-18T09:00:00+00:00"),
        ("b.pdf", None, None, None),
    ]


def test_the_same_content_twice_in_one_run(store: Store, tmp_path: Path) -> None:
    executor = Inline()
    letter = bytes(mail(("x.pdf", sheet()), ("y.pdf", sheet())))
    take(store, put(tmp_path, "m.eml", letter), put(tmp_path, "a.pdf", sheet()), executor=executor)
    assert executor.read == ["x.pdf"]
    assert rows(store, "SELECT COUNT(*) FROM arrivals") == [(4,)]


def test_a_reissued_certificate_supersedes_and_the_change_is_listed(store: Store, tmp_path: Path) -> None:
    take(store, put(tmp_path, "a.pdf", sheet("24-0417", moisture=4.2)))
    (*_, taken) = take(store, put(tmp_path, "b.pdf", sheet("24/0417", supplier="NORDTAL Malting", moisture=4.4)))
    (found,) = taken.supersedes
    assert found.changes == ({"parameter": "moisture", "before": "4.2 %", "after": "4.4 %"},)
    current = rows(store, "SELECT json FROM analyses WHERE superseded_by IS NULL")
    assert [json.loads(text)["figures"][0]["value"] for (text,) in current] == [4.4]
    assert rows(store, "SELECT COUNT(*) FROM analyses") == [(2,)]
    ((changes,),) = rows(store, "SELECT changes FROM supersessions")
    assert json.loads(changes)[0]["after"] == "4.4 %"


@pytest.mark.parametrize("moisture", [4.2, 4.4])
def test_of_two_in_one_email_neither_is_taken_for_the_later_one(store: Store, tmp_path: Path, moisture: float) -> None:
    one, two = sheet(moisture=4.2), sheet(moisture=moisture, rows=1)
    take(store, put(tmp_path, "m.eml", bytes(mail(("rev2.pdf", one), ("first.pdf", two)))))
    current = rows(store, "SELECT COUNT(*) FROM analyses WHERE superseded_by IS NULL")
    assert current == [(1 if moisture == 4.2 else 2,)]


def test_the_later_day_wins_whatever_comes_first(store: Store, tmp_path: Path) -> None:
    take(store, put(tmp_path, "b.pdf", sheet(moisture=4.4, day="2024-12-02")))
    take(store, put(tmp_path, "a.pdf", sheet(moisture=4.2, day="2024-11-14")))
    current = rows(store, "SELECT json FROM analyses WHERE superseded_by IS NULL")
    assert [json.loads(text)["figures"][0]["value"] for (text,) in current] == [4.4]


def test_a_chain_of_reissues_leaves_one_current(store: Store, tmp_path: Path) -> None:
    for number in range(5):
        take(store, put(tmp_path, f"{number}.pdf", sheet(moisture=4.0 + number / 10)))
    assert rows(store, "SELECT COUNT(*) FROM analyses WHERE superseded_by IS NULL") == [(1,)]
    assert rows(store, "SELECT COUNT(*) FROM supersessions") == [(4,)]


@pytest.mark.parametrize(
    "other",
    [
        sheet("A2", moisture=4.4),
        sheet(supplier="Südtal Malting", moisture=4.4),
        sheet(malt="Munich Malt", moisture=4.4),
        sheet(supplier="", moisture=4.4),
    ],
    ids=["batch", "supplier", "malt", "no supplier"],
)
def test_what_may_be_something_else_supersedes_nothing(store: Store, tmp_path: Path, other: bytes) -> None:
    take(store, put(tmp_path, "a.pdf", sheet()), put(tmp_path, "b.pdf", other))
    assert rows(store, "SELECT COUNT(*) FROM analyses WHERE superseded_by IS NULL") == [(2,)]


def test_what_cannot_be_read_is_kept_with_its_reason_and_read_again_when_asked(store: Store, tmp_path: Path) -> None:
    path = put(tmp_path, "notes.txt", b"hello")
    executor = Inline()
    take(store, path, executor=executor)
    assert rows(store, "SELECT state, code, message FROM documents JOIN problems USING (sha256)") == [
        ("failed", "unsupported-type", "notes.txt is no sheet.")
    ]
    take(store, path, executor=executor)
    take(store, path, executor=executor, retry=True)
    assert executor.read == ["notes.txt", "notes.txt"]
    assert rows(store, "SELECT COUNT(*) FROM arrivals") == [(1,)]
    assert rows(store, "SELECT COUNT(*) FROM problems") == [(1,)]


def test_logos_of_an_email_are_passed_over_unless_nothing_else_is_in_it(store: Store, tmp_path: Path) -> None:
    def letter(*attachments: tuple[str, bytes]) -> bytes:
        message = mail(*attachments)
        message.get_body().add_related(b"\x89PNG\r\n\x1a\nlogo", "image", "png", cid="<l@example.org>")  # type: ignore[union-attr]
        return bytes(message)

    good = take(store, put(tmp_path, "a.eml", letter(("cert.pdf", sheet()))))
    assert [(one.item.kind, one.state) for one in good] == [
        ("email", "accepted"), ("sheet", "passed-over"), ("sheet", "accepted"),
    ]  # fmt: skip
    alone = take(store, put(tmp_path, "b.eml", letter()))
    assert alone[0].state == "failed"
    assert alone[0].problems[0][0] == "no-figures-found"


def test_originals_come_from_wherever_they_are(store: Store, tmp_path: Path) -> None:
    letter = bytes(mail(("x.zip", zipped(("deep.pdf", sheet("deep"))))))
    take(store, put(tmp_path, "m.eml", letter))
    ((sha256,),) = rows(store, "SELECT sha256 FROM documents WHERE kind = 'sheet'")
    assert original(store, sha256) == sheet("deep")
    (tmp_path / "m.eml").write_bytes(b"something else")
    assert original(store, sha256) is None
    assert original(store, "0" * 64) is None


@pytest.mark.skipif(sys.platform in ("win32", "darwin"), reason="names there are always valid Unicode")
def test_names_that_are_no_unicode(store: Store, tmp_path: Path) -> None:
    path = Path(os.fsdecode(os.fsencode(tmp_path) + b"/\xff.pdf"))
    path.write_bytes(sheet())
    take(store, path)
    assert list(store.looked()) == [os.fsencode(path)]
    ((sha256,),) = rows(store, "SELECT sha256 FROM documents")
    assert original(store, sha256) == sheet()


def test_nothing_of_a_delivery_is_stored_when_a_part_of_it_fails(
    store: Store, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    path = put(tmp_path, "m.eml", bytes(mail(("a.pdf", sheet("A")), ("b.pdf", sheet("B")))))
    before = dump(store.folder)
    with monkeypatch.context() as patch:
        insert = store._insert_analysis

        def fails(analysis: Analysis, *rest: object) -> None:
            if analysis.header["batch"].value == "B":
                raise sqlite3.OperationalError("database or disk is full")
            insert(analysis, *rest)  # type: ignore[arg-type]

        patch.setattr(store, "_insert_analysis", fails)
        with pytest.raises(StoreError, match="The disk is full"):
            take(store, path)
    assert dump(store.folder) == before
    take(store, path)
    assert rows(store, "SELECT COUNT(*) FROM analyses") == [(2,)]


def test_a_disk_that_is_full_is_told_as_such_whatever_was_being_done(
    store_folder: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    from importer.commands import bulk
    from importer.commands.run import run
    from importer.store import taking

    def full(_: object) -> object:
        raise sqlite3.OperationalError("database or disk is full")

    put(tmp_path / "tree", "a.pdf", sheet())
    monkeypatch.setattr(taking, "transaction", full)
    request = bulk.Request(tmp_path / "tree", store_folder, workers=1, reads=READS)
    with pytest.raises(typer.Exit) as ended:
        run(lambda: bulk.bulk(request))
    assert ended.value.exit_code == 1
    err = capsys.readouterr().err
    assert "The disk is full. Free some space and run the same command again" in err
    assert "unexpected" not in err


def test_reading_never_waits_for_writing(store: Store, tmp_path: Path) -> None:
    take(store, put(tmp_path, "a.pdf", sheet()))
    store.connection.execute("BEGIN IMMEDIATE")
    store.connection.execute("DELETE FROM problems")
    try:
        seen: list[object] = []

        def look() -> None:
            connection = sqlite3.connect(store.path, timeout=0)
            seen.extend(connection.execute("SELECT COUNT(*) FROM analyses").fetchone())
            connection.close()

        thread = threading.Thread(target=look)
        thread.start()
        thread.join(5)
        assert seen == [1]
    finally:
        store.connection.execute("ROLLBACK")


def test_one_writer_at_a_time(store_folder: Path) -> None:
    with only_writer(store_folder), pytest.raises(StoreError, match="Another onebasis"), only_writer(store_folder):
        pass
    with only_writer(store_folder):
        pass


def test_settings_of_the_file(store: Store) -> None:
    assert rows(store, "PRAGMA journal_mode") == [("wal",)]
    assert rows(store, "PRAGMA user_version") == [(schema.VERSION,)]
    assert rows(store, "PRAGMA foreign_keys") == [(1,)]
    assert rows(store, "SELECT COUNT(*) FROM corrections") == [(0,)]


def test_every_column_is_explained_in_the_file(store: Store) -> None:
    for name, sql in rows(store, "SELECT name, sql FROM sqlite_schema WHERE type = 'table'"):
        assert "--" in sql or name == "counters", name


def test_migrations_run_once_and_in_order(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    schema.connect(tmp_path / "s.sqlite").close()
    added = (*schema.MIGRATIONS, "ALTER TABLE documents ADD COLUMN remark TEXT; CREATE INDEX r ON documents (remark);")
    monkeypatch.setattr(schema, "MIGRATIONS", added)
    monkeypatch.setattr(schema, "VERSION", len(added))
    for _ in range(2):
        connection = schema.connect(tmp_path / "s.sqlite")
        assert connection.execute("PRAGMA user_version").fetchone() == (len(added),)
        connection.execute("SELECT remark FROM documents")
        connection.close()


def test_a_migration_is_whole_or_not_at_all(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    schema.connect(tmp_path / "s.sqlite").close()
    broken = (*schema.MIGRATIONS, "ALTER TABLE documents ADD COLUMN remark TEXT; SELECT nothing FROM nowhere;")
    with monkeypatch.context() as patch:
        patch.setattr(schema, "MIGRATIONS", broken)
        patch.setattr(schema, "VERSION", len(broken))
        with pytest.raises(StoreError):
            schema.connect(tmp_path / "s.sqlite")
    connection = schema.connect(tmp_path / "s.sqlite")
    assert "remark" not in [row[1] for row in connection.execute("PRAGMA table_info (documents)")]
    connection.close()


def test_files_that_are_no_store(tmp_path: Path) -> None:
    (tmp_path / FILE_NAME).write_bytes(b"this is no database, it is a letter to the brewer" * 100)
    with pytest.raises(StoreError, match="damaged"):
        Store(tmp_path)
    other = tmp_path / "other"
    other.mkdir()
    connection = sqlite3.connect(other / FILE_NAME)
    connection.execute("CREATE TABLE recipes (name TEXT)")
    connection.close()
    with pytest.raises(StoreError, match="another program"):
        Store(other)
    newer = tmp_path / "newer"
    newer.mkdir()
    connection = schema.connect(newer / FILE_NAME)
    connection.execute("PRAGMA user_version = 99")
    connection.close()
    with pytest.raises(StoreError, match="newer onebasis"):
        Store(newer)
