"""Bulk import: everything stays where it is, only what is new is read, and an interrupted run is taken up again."""

from __future__ import annotations

import os
import signal
import subprocess
import sys
import time
from pathlib import Path
from typing import Any

import pytest

from importer.commands import bulk as command
from importer.commands.run import UsageError
from importer.store.ledger import Store
from importer.store.schema import StoreError
from tests.store.helpers import contents, dump, put, rows
from tests.store.parcels import mail, zipped
from tests.store.standins import READS, sheet

ROOT = Path(__file__).parents[2]


def run(folder: Path, store: Path, **changes: Any) -> int:
    options: dict[str, Any] = {"store": store, "workers": 1, "reads": READS, **changes}
    return command.bulk(command.Request(folder, **options))


@pytest.fixture
def tree(tmp_path: Path) -> Path:
    folder = tmp_path / "paperwork"
    for number in range(6):
        put(folder, f"{2020 + number % 2}/sheet {number}.pdf", sheet(f"B{number}"))
    put(folder, "mails/m.eml", bytes(mail(("cert.pdf", sheet("E1")), ("copy.pdf", sheet("B0")))))
    put(folder, "all.zip", zipped(("z.pdf", sheet("Z1", state="review"))))
    put(folder, "letter.txt", b"dear brewer")
    return folder


def test_a_tree_is_read_where_it_lies(tree: Path, store_folder: Path, capsys: pytest.CaptureFixture[str]) -> None:
    before = contents(tree)
    assert run(tree, store_folder) == 1
    assert contents(tree) == before
    assert contents(store_folder) == {}
    told = capsys.readouterr().out
    assert "9 files: 9 documents, 7 accepted, 1 review, 1 failed. 1 came more than once." in told
    assert "z.pdf: Moisture" in told
    assert "unsupported-type (1)" in told
    with Store(store_folder) as store:
        assert rows(store, "SELECT COUNT(*) FROM analyses") == [(8,)]


def test_entries_of_the_head_that_wait_are_counted(
    tmp_path: Path, store_folder: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    folder = tmp_path / "heads"
    put(folder, "one.pdf", sheet("A1", unsure="supplier"))
    put(folder, "two.pdf", sheet("B2", unsure="supplier"))
    put(folder, "three.pdf", sheet("C3"))
    assert run(folder, store_folder) == 0
    told = capsys.readouterr().out
    assert ", 2: supplier (2):" in told
    assert "  one.pdf: supplier\n" in told
    assert "three.pdf" not in told


def test_a_second_run_opens_nothing(tree: Path, store_folder: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    run(tree, store_folder)
    before = dump(store_folder)

    def opened(*_: object) -> None:
        raise AssertionError("a file was opened")

    monkeypatch.setattr(command, "open_delivery", opened)
    monkeypatch.setattr(command, "LocalReaders", opened)
    assert run(tree, store_folder) == 1
    assert dump(store_folder) == before


def test_what_is_new_or_changed_is_read(tree: Path, store_folder: Path) -> None:
    run(tree, store_folder)
    put(tree, "new.pdf", sheet("N1"))
    os.utime(tree / "2020/sheet 0.pdf", (1, 1))
    put(tree, "2021/sheet 1.pdf", sheet("B1", moisture=4.9))
    run(tree, store_folder)
    with Store(store_folder) as store:
        assert rows(store, "SELECT COUNT(*) FROM analyses") == [(10,)]
        assert rows(store, "SELECT COUNT(*) FROM supersessions") == [(1,)]
        assert rows(store, "SELECT COUNT(*) FROM arrivals WHERE name = 'sheet 0.pdf'") == [(1,)]


def test_retry_reads_only_what_failed(tree: Path, store_folder: Path) -> None:
    run(tree, store_folder)
    before = dump(store_folder)
    run(tree, store_folder, retry=True)
    after = dump(store_folder)
    assert {table for table in before if before[table] != after[table]} <= {"history"}


def test_of_a_reissued_certificate_both_files_are_named(
    tmp_path: Path, store_folder: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    put(tmp_path / "tree", "first.pdf", sheet(day="2024-11-14"))
    put(tmp_path / "tree", "second.pdf", sheet(moisture=4.4, day="2024-12-02"))
    run(tmp_path / "tree", store_folder)
    assert ", second.pdf in place of first.pdf: moisture 4.2 % → 4.4 %" in capsys.readouterr().out


def test_rows_without_a_parameter_are_counted(
    tmp_path: Path, store_folder: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    put(tmp_path / "tree", "a.pdf", sheet(rows=2))
    put(tmp_path / "tree", "b.pdf", sheet("B2"))
    run(tmp_path / "tree", store_folder)
    told = capsys.readouterr().out
    assert "Rows without a parameter" in told
    assert "  a.pdf: 2 rows" in told
    assert "b.pdf" not in told


def test_an_empty_folder_is_said(tmp_path: Path, store_folder: Path, capsys: pytest.CaptureFixture[str]) -> None:
    (tmp_path / "tree").mkdir()
    assert run(tmp_path / "tree", store_folder) == 0
    assert "No files were found in" in capsys.readouterr().err


def test_strict(tmp_path: Path, store_folder: Path) -> None:
    put(tmp_path / "tree", "a.pdf", sheet(state="review"))
    assert run(tmp_path / "tree", store_folder, strict=True) == 3
    assert run(tmp_path / "tree", store_folder) == 0


def test_a_store_within_the_tree_is_refused(tree: Path) -> None:
    with pytest.raises(UsageError, match="lies in the folder"):
        run(tree, tree / "store")


def test_another_run_at_work_is_not_disturbed(tree: Path, store_folder: Path) -> None:
    from importer.store.lock import only_writer

    with only_writer(store_folder), pytest.raises(StoreError, match="Another onebasis"):
        run(tree, store_folder)


def test_the_order_of_storing_does_not_depend_on_the_readers(tree: Path, tmp_path: Path) -> None:
    for number in range(0, 12, 3):
        put(tree, f"slow {number}.pdf", sheet(f"S{number}"))
    stores = [tmp_path / name for name in ("one", "four")]
    for store, workers in zip(stores, (1, 4), strict=True):
        run(tree, store, workers=workers)
    assert dump(stores[0]) == dump(stores[1])


BULK = """
import sys
from pathlib import Path
from importer.commands.bulk import Request, bulk
sys.exit(bulk(Request(Path(sys.argv[1]), Path(sys.argv[2]), workers=2, reads=sys.argv[3])))
"""


@pytest.mark.skipif(sys.platform == "win32", reason="signals")
def test_an_interruption_ends_at_once_and_a_rerun_completes_it(tree: Path, tmp_path: Path) -> None:
    for number in range(40):
        put(tree, f"slow {number:02}.pdf", sheet(f"S{number}"))
    process = subprocess.Popen(
        [sys.executable, "-c", BULK, tree, tmp_path / "stopped", READS],
        cwd=ROOT, stdout=subprocess.PIPE, stderr=subprocess.PIPE, text=True,
    )  # fmt: skip
    time.sleep(2.5)
    process.send_signal(signal.SIGINT)
    began = time.monotonic()
    _, err = process.communicate(timeout=20)
    assert time.monotonic() - began < 5
    assert process.returncode == 130
    assert "run again to go on" in err
    assert "Traceback" not in err
    for path in tree.glob("slow*"):
        path.rename(path.with_name(path.name.replace("slow", "quick")))
    run(tree, tmp_path / "stopped")
    run(tree, tmp_path / "undisturbed")
    with Store(tmp_path / "stopped") as stopped, Store(tmp_path / "undisturbed") as undisturbed:
        query = "SELECT id, batch, superseded_by FROM analyses ORDER BY id"
        assert rows(stopped, query) == rows(undisturbed, query)
