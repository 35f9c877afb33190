"""The inbox: filed or set aside, never lost, never outside of the store, and again the same when it is run again."""

from __future__ import annotations

import errno
import io
import os
import signal
import subprocess
import sys
import threading
import time
from pathlib import Path
from typing import Any

import pytest

from importer.commands import inbox as command
from importer.commands.run import UsageError
from importer.output.atomic import WriteError
from importer.store import filing
from importer.store.filing import Filer
from importer.store.ledger import Store
from importer.store.looking import Looking
from tests.permissions import needs_permissions
from tests.store.helpers import contents, dump, put, rows, take
from tests.store.parcels import compound, mail, outlook, zipped
from tests.store.standins import READS, sheet

ROOT = Path(__file__).parents[2]


def run(folder: Path, store: Path, **changes: Any) -> int:
    options: dict[str, Any] = {"store": store, "settle": 0.1, "workers": 1, "reads": READS, **changes}
    return command.inbox(command.Request(folder, **options))


def test_rows_without_a_parameter_are_told(
    inbox_folder: Path, store_folder: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    put(inbox_folder, "good.pdf", sheet("A1", rows=1))
    put(inbox_folder, "doubt.pdf", sheet("B2", rows=2).replace(b"accepted", b"review"))
    assert run(inbox_folder, store_folder) == 0
    told = capsys.readouterr().out
    assert "  good.pdf: 1 row\n" in told
    assert "  doubt.pdf: 2 rows\n" in told
    why = (store_folder / "set-aside/to-review/doubt.pdf.why.txt").read_text(encoding="utf-8")
    assert "rows without a parameter: Row 1: 7 %; Row 2: 7 %\n" in why


def test_entries_of_the_head_that_wait_are_counted(
    inbox_folder: Path, store_folder: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    """Nothing else is in doubt on the first two; a date in doubt keeps no sheet waiting."""
    put(inbox_folder, "one.pdf", sheet("A1", unsure="supplier"))
    put(inbox_folder, "two.pdf", sheet("B2", unsure="malt"))
    put(inbox_folder, "three.pdf", sheet("C3", unsure="supplier"))
    put(inbox_folder, "four.pdf", sheet("D4", unsure="analysed_on"))
    assert run(inbox_folder, store_folder) == 0
    told = capsys.readouterr().out
    assert ", 3: supplier (2); malt (1):" in told
    assert "  one.pdf: supplier\n" in told
    assert "  two.pdf: malt\n" in told
    assert "four.pdf" not in told


def test_everything_finds_its_place(inbox_folder: Path, store_folder: Path, capsys: pytest.CaptureFixture[str]) -> None:
    put(inbox_folder, "good.pdf", sheet("24/0417", supplier="Mälzerei Nord: Ost"))
    put(inbox_folder, "sub/doubt.pdf", sheet("B2", state="review"))
    put(inbox_folder, "notes.txt", b"call the lab")
    inner = mail(("fwd.pdf", sheet("F1")), sender="lab@example.org")
    put(inbox_folder, "mail.eml", bytes(mail(("cert.pdf", sheet("E1")), forwards=inner)))
    put(inbox_folder, "mail.msg", compound(outlook(("cert.pdf", sheet("M1")))))
    put(
        inbox_folder,
        "all.zip",
        zipped(("a/cert.pdf", sheet("Z1")), ("b/good copy.pdf", sheet("24/0417", supplier="Mälzerei Nord: Ost"))),
    )
    before = set(contents(inbox_folder).values())
    assert run(inbox_folder, store_folder) == 1
    filed = contents(store_folder)
    assert set(filed) == {
        "filed/Mälzerei Nord- Ost/2024/24-0417/good copy.pdf",
        "filed/Nordtal Malting/2024/E1/cert.pdf",
        "filed/Nordtal Malting/2024/F1/fwd.pdf",
        "filed/Nordtal Malting/2024/M1/cert.pdf",
        "filed/Nordtal Malting/2024/Z1/cert.pdf",
        "filed/_archives/" + time.strftime("%Y", time.gmtime()) + "/all.zip",
        "filed/_emails/2024/mail.eml",
        "filed/_emails/2024/mail.msg",
        "set-aside/to-review/doubt.pdf",
        "set-aside/to-review/doubt.pdf.why.txt",
        "set-aside/unreadable/notes.txt",
        "set-aside/unreadable/notes.txt.why.txt",
    }
    assert before <= set(filed.values())
    assert contents(inbox_folder) == {}
    why = (store_folder / "set-aside/to-review/doubt.pdf.why.txt").read_text(encoding="utf-8")
    assert "Moisture: 4.2 %. the label could mean something else" in why
    assert "notes.txt is no sheet. [unsupported-type]" in (
        store_folder / "set-aside/unreadable/notes.txt.why.txt"
    ).read_text(encoding="utf-8")
    told = capsys.readouterr().out
    assert "doubt.pdf" in told
    assert "unsupported-type (1)" in told


def test_a_second_run_changes_nothing(inbox_folder: Path, store_folder: Path) -> None:
    put(inbox_folder, "a.pdf", sheet())
    assert run(inbox_folder, store_folder) == 0
    before = (dump(store_folder), contents(store_folder))
    assert run(inbox_folder, store_folder) == 0
    assert (dump(store_folder), contents(store_folder)) == before


def test_strict_tells_of_review(inbox_folder: Path, store_folder: Path) -> None:
    put(inbox_folder, "a.pdf", sheet(state="review"))
    assert run(inbox_folder, store_folder, strict=True) == 3


def test_times_of_originals_are_kept(inbox_folder: Path, store_folder: Path) -> None:
    os.utime(put(inbox_folder, "a.pdf", sheet()), (1_700_000_000, 1_700_000_000))
    run(inbox_folder, store_folder)
    (filed,) = (store_folder / "filed").rglob("a.pdf")
    assert filed.stat().st_mtime == 1_700_000_000


def test_a_duplicate_leaves_the_inbox_and_is_not_filed_twice(inbox_folder: Path, store_folder: Path) -> None:
    put(inbox_folder, "a.pdf", sheet())
    run(inbox_folder, store_folder)
    put(inbox_folder, "again.pdf", sheet())
    run(inbox_folder, store_folder)
    assert list(contents(store_folder)) == ["filed/Nordtal Malting/2024/A1/a.pdf"]
    assert contents(inbox_folder) == {}
    with Store(store_folder) as store:
        assert rows(store, "SELECT COUNT(*) FROM arrivals") == [(2,)]


def test_a_filed_original_that_was_removed_is_filed_again(inbox_folder: Path, store_folder: Path) -> None:
    put(inbox_folder, "a.pdf", sheet())
    run(inbox_folder, store_folder)
    (store_folder / "filed/Nordtal Malting/2024/A1/a.pdf").unlink()
    put(inbox_folder, "again.pdf", sheet())
    run(inbox_folder, store_folder)
    assert list(contents(store_folder)) == ["filed/Nordtal Malting/2024/A1/again.pdf"]


def test_names_that_are_taken(inbox_folder: Path, store_folder: Path) -> None:
    put(store_folder, "filed/Nordtal Malting/2024/A1/a.pdf", b"put there by a person")
    put(inbox_folder, "a.pdf", sheet())
    run(inbox_folder, store_folder)
    assert len(contents(store_folder)) == 2
    assert (store_folder / "filed/Nordtal Malting/2024/A1/a.pdf").read_bytes() == b"put there by a person"


def test_names_that_differ_in_case_only(inbox_folder: Path, store_folder: Path) -> None:
    put(inbox_folder, "x/a.pdf", sheet(extra="1"))
    put(inbox_folder, "y/A.PDF", sheet(extra="2"))
    run(inbox_folder, store_folder)
    assert len({name.casefold() for name in contents(store_folder)}) == 2


def test_what_a_sheet_says_leads_nowhere_else(inbox_folder: Path, store_folder: Path, tmp_path: Path) -> None:
    for number, name in enumerate(
        ["../../up", "/etc", "..", "C:\\x", "a\nb", "CON", ".hidden", "x" * 300, "~root", "-rf"]
    ):
        put(inbox_folder, f"{number}.pdf", sheet(name, supplier=name, day=f"{name}"))
    before = set(tmp_path.rglob("*"))
    run(inbox_folder, store_folder)
    written = set(tmp_path.rglob("*")) - before
    assert all(path.is_relative_to(store_folder) for path in written)
    assert len([name for name in contents(store_folder) if name.startswith("filed/")]) == 10
    for path in (store_folder / "filed").rglob("*"):
        assert not path.name.startswith((".", "-", "~"))
        assert path.name.isprintable()


@pytest.mark.skipif(sys.platform == "win32", reason="links, pipes and such names")
def test_odd_files_do_no_harm(inbox_folder: Path, store_folder: Path, tmp_path: Path) -> None:
    secret = put(tmp_path, "secret.pdf", sheet("secret"))
    (inbox_folder / "link.pdf").symlink_to(secret)
    (inbox_folder / "folder").symlink_to(tmp_path)
    os.mkfifo(inbox_folder / "pipe.pdf")
    put(inbox_folder, "two\nlines.pdf", sheet("N1"))
    put(inbox_folder, ".hidden.pdf", sheet("H1"))
    (inbox_folder / os.fsdecode(b"\xff\xfe.pdf")).write_bytes(sheet("U1"))
    run(inbox_folder, store_folder)
    assert sorted(path.name for path in inbox_folder.iterdir()) == [".hidden.pdf", "folder", "link.pdf", "pipe.pdf"]
    assert secret.exists()
    assert len(contents(store_folder)) == 2


@pytest.mark.skipif(sys.platform == "win32", reason="links need rights there")
def test_a_link_in_the_store_is_not_written_through(inbox_folder: Path, store_folder: Path, tmp_path: Path) -> None:
    outside = tmp_path / "outside"
    outside.mkdir()
    (store_folder / "filed").mkdir()
    (store_folder / "filed" / "Nordtal Malting").symlink_to(outside)
    put(inbox_folder, "a.pdf", sheet())
    with pytest.raises(WriteError, match="through a link"):
        run(inbox_folder, store_folder)
    assert contents(outside) == {}
    assert len(contents(inbox_folder)) == 1
    (store_folder / "filed" / "Nordtal Malting").unlink()
    assert run(inbox_folder, store_folder) == 0
    assert list(contents(store_folder)) == ["filed/Nordtal Malting/2024/A1/a.pdf"]


def test_folders_in_each_other_are_refused(inbox_folder: Path, store_folder: Path) -> None:
    with pytest.raises(UsageError, match="lies in the inbox"):
        run(inbox_folder, inbox_folder / "store")
    with pytest.raises(UsageError, match="lies in the inbox"):
        run(inbox_folder, inbox_folder)
    (store_folder / "filed").mkdir()
    with pytest.raises(UsageError, match="lies in the store"):
        run(store_folder / "filed", store_folder)


@needs_permissions
def test_a_read_only_inbox_is_refused(inbox_folder: Path, store_folder: Path) -> None:
    inbox_folder.chmod(0o500)
    with pytest.raises(UsageError, match="may not be written to"):
        run(inbox_folder, store_folder)


@pytest.mark.parametrize("step", ["write", "rename"])
def test_a_full_disk_leaves_the_file_in_the_inbox(
    inbox_folder: Path, store_folder: Path, monkeypatch: pytest.MonkeyPatch, step: str
) -> None:
    path = put(inbox_folder, "a.pdf", sheet())

    def full(*_: object, **__: object) -> None:
        raise OSError(errno.ENOSPC, os.strerror(errno.ENOSPC))

    with Store(store_folder) as store:
        with monkeypatch.context() as patch:
            if step == "write":
                patch.setattr(filing.os, "fsync", full)
            else:
                patch.setattr(Path, "replace", full)
            with pytest.raises(WriteError, match="No space left"):
                take(store, path, way="inbox")
        assert path.exists()
        assert contents(store_folder) == {}
        Filer(store).carry_out()
    assert contents(inbox_folder) == {}
    assert list(contents(store_folder)) == ["filed/Nordtal Malting/2024/A1/a.pdf"]


def test_a_file_that_was_changed_after_reading_stays_and_is_taken_in_again(
    inbox_folder: Path, store_folder: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    path = put(inbox_folder, "a.pdf", sheet("A1"))
    carry_out = Filer.carry_out

    def meanwhile(self: Filer, contents: Any = None) -> None:
        if contents:
            path.write_bytes(sheet("A2"))
        carry_out(self, contents)

    with monkeypatch.context() as patch, Store(store_folder) as store:
        patch.setattr(Filer, "carry_out", meanwhile)
        take(store, path, way="inbox")
    assert path.read_bytes() == sheet("A2")
    run(inbox_folder, store_folder)
    assert set(contents(store_folder)) == {f"filed/Nordtal Malting/2024/{batch}/a.pdf" for batch in ("A1", "A2")}


def test_a_plan_whose_original_is_gone_is_told_in_the_history(inbox_folder: Path, store_folder: Path) -> None:
    path = put(inbox_folder, "a.pdf", sheet())
    with Store(store_folder) as store:
        with pytest.MonkeyPatch.context() as patch:
            patch.setattr(Filer, "carry_out", lambda *_: None)
            take(store, path, way="inbox")
        path.unlink()
        Filer(store).carry_out()
        assert rows(store, "SELECT state FROM filings") == [("left",)]
        assert rows(store, "SELECT COUNT(*) FROM history WHERE event = 'left'") == [(1,)]
        assert rows(store, "SELECT COUNT(*) FROM removals") == [(0,)]


def test_what_was_unreadable_is_filed_once_it_can_be_read(
    inbox_folder: Path, store_folder: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    from tests.store import standins

    with Store(store_folder) as store:
        with monkeypatch.context() as patch:
            patch.setattr(standins, "HEAD", "another form")
            take(store, put(inbox_folder, "a.pdf", b"%SHEET|S|M|B|4.2|2024-11-14|accepted|"), way="inbox")
        assert set(contents(store_folder)) == {"set-aside/unreadable/a.pdf", "set-aside/unreadable/a.pdf.why.txt"}
        take(store, put(inbox_folder, "a.pdf", b"%SHEET|S|M|B|4.2|2024-11-14|accepted|"), way="inbox", retry=True)
    assert set(contents(store_folder)) == {"filed/S/2024/B/a.pdf"}


def test_a_file_that_is_being_copied_is_left_until_it_is_still(inbox_folder: Path) -> None:
    now = [0.0]
    looking = Looking(inbox_folder, 2.0, clock=lambda: now[0])
    path = put(inbox_folder, "a.pdf", b"begin")
    assert list(looking.look()) == []
    assert looking.moving == [path]
    now[0] = 3.0
    path.write_bytes(b"begin, more")
    assert list(looking.look()) == []
    now[0] = 4.0
    assert list(looking.look()) == []
    now[0] = 5.0
    assert [found for found, _ in looking.look()] == [path]
    # The full size from the beginning, as network shares show it: the time still tells.
    os.utime(path, ns=(1, 1))
    now[0] = 9.0
    assert list(looking.look()) == []


def test_a_slow_copy_is_left_by_a_single_run(
    inbox_folder: Path, store_folder: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    path = inbox_folder / "slow.pdf"
    stop = threading.Event()

    def copy() -> None:
        with path.open("wb", buffering=0) as file:
            while not stop.is_set():
                file.write(b"x")
                time.sleep(0.01)

    thread = threading.Thread(target=copy)
    thread.start()
    try:
        time.sleep(0.05)
        assert run(inbox_folder, store_folder) == 0
    finally:
        stop.set()
        thread.join()
    assert path.exists()
    assert "still being copied" in capsys.readouterr().err
    assert contents(store_folder) == {}


@pytest.mark.skipif(sys.platform == "win32", reason="signals")
def test_a_crash_costs_one_document(inbox_folder: Path, store_folder: Path) -> None:
    put(inbox_folder, "a.pdf", sheet("A1"))
    put(inbox_folder, "crash.pdf", sheet("C1"))
    put(inbox_folder, "hang.pdf", sheet("H1"))
    put(inbox_folder, "z.pdf", sheet("Z1"))
    assert run(inbox_folder, store_folder, seconds=1.5) == 1
    with Store(store_folder) as store:
        assert rows(store, "SELECT name, code FROM problems JOIN documents USING (sha256) ORDER BY name") == [
            ("crash.pdf", "damaged"), ("hang.pdf", "took-too-long"),
        ]  # fmt: skip
        assert rows(store, "SELECT COUNT(*) FROM analyses") == [(2,)]


WATCH = """
import sys
from pathlib import Path
from importer.commands.inbox import Request, inbox
sys.exit(inbox(Request(Path(sys.argv[1]), Path(sys.argv[2]), True, float(sys.argv[3]), 0.2, 1, reads=sys.argv[4])))
"""


@pytest.mark.skipif(sys.platform == "win32", reason="signals")
@pytest.mark.parametrize("every", [1.0, 600.0], ids=["by looking", "by waking"])
def test_watching_takes_in_what_is_there_and_what_comes(inbox_folder: Path, store_folder: Path, every: float) -> None:
    if every > 1:
        pytest.importorskip("watchfiles")
    put(inbox_folder, "before.pdf", sheet("B1"))
    process = subprocess.Popen(
        [sys.executable, "-c", WATCH, inbox_folder, store_folder, str(every), READS],
        cwd=ROOT, stdout=subprocess.PIPE, stderr=subprocess.PIPE, text=True,
    )  # fmt: skip
    try:
        _until(lambda: len(contents(store_folder)) == 1)
        time.sleep(0.5)
        put(inbox_folder, "new/after.pdf", sheet("B2"))
        _until(lambda: len(contents(store_folder)) == 2)
        _until(lambda: contents(inbox_folder) == {})
        time.sleep(0.5)  # it is counted and told after it has left
    finally:
        process.send_signal(signal.SIGINT)
        out, err = process.communicate(timeout=20)
    assert process.returncode == 0, err
    assert "Traceback" not in err
    assert "2 accepted" in out
    assert "after.pdf: accepted, in filed/Nordtal Malting/2024/B2/after.pdf\n" in err


def _until(holds: Any) -> None:
    end = time.monotonic() + 20
    while not holds():
        assert time.monotonic() < end, "it took too long"
        time.sleep(0.05)


def test_notes_are_plain_text(inbox_folder: Path, store_folder: Path) -> None:
    put(inbox_folder, "m.eml", bytes(mail(sender="\x1b[31mred <a@example.org>", subject="=?utf-8?q?a=0Ab=1B[2J?=")))
    run(inbox_folder, store_folder)
    (note,) = store_folder.rglob("*.why.txt")
    assert all(line.isprintable() for line in io.StringIO(note.read_text(encoding="utf-8")).read().splitlines())
