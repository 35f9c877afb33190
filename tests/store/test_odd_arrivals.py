"""What nobody expects to arrive: files too large to open, names that clash, clocks that go back, parcels in parcels."""

from __future__ import annotations

import datetime
import itertools
import os
import shutil
import signal
import subprocess
import sys
import time
import unicodedata
from pathlib import Path
from typing import Any

import pytest

from importer.commands import bulk, inbox
from importer.limits import MAX_BYTES
from importer.store import ledger, taking
from importer.store.ledger import Store
from tests.disks import small_disk
from tests.store.helpers import contents, dump, put, rows, take
from tests.store.parcels import mail, zipped
from tests.store.standins import READS, Inline, sheet
from tests.store.test_inbox import WATCH

ROOT = Path(__file__).parents[2]
GIB = 1024**3


def run(folder: Path, store: Path, **changes: Any) -> int:
    options: dict[str, Any] = {"store": store, "settle": 0.05, "workers": 1, "reads": READS, **changes}
    return inbox.inbox(inbox.Request(folder, **options))


def sparse(path: Path, size: int) -> Path:
    """A file of any size that takes no room."""
    with path.open("wb") as file:
        file.truncate(size)
    return path


# ----------------------------------------------------------------------------------------------- too large to be opened


@pytest.mark.skipif(sys.platform != "linux", reason="files with holes")
@pytest.mark.parametrize("size", [MAX_BYTES + 1, 2000 * GIB])
def test_a_file_too_large_to_open_is_set_aside_and_blocks_nothing(
    inbox_folder: Path, store_folder: Path, capsys: pytest.CaptureFixture[str], size: int
) -> None:
    sparse(inbox_folder / "0 scan.pdf", size)
    put(inbox_folder, "a.pdf", sheet("A1"))
    put(inbox_folder, "z.pdf", sheet("Z1"))
    assert run(inbox_folder, store_folder) == 1
    assert list(inbox_folder.iterdir()) == []
    aside = store_folder / "set-aside/unreadable"
    assert (aside / "0 scan.pdf").stat().st_size == size
    why = (aside / "0 scan.pdf.why.txt").read_text(encoding="utf-8")
    assert "0 scan.pdf is larger than 100 MB, so it was not opened. Split it" in why
    assert "[too-large]" in why
    assert {"A1", "Z1"} == {path.parent.name for path in (store_folder / "filed").rglob("*.pdf")}
    told = capsys.readouterr()
    assert "Taken in: 2 accepted, 0 review, 1 failed." in told.out
    assert "too-large (1)" in told.out
    with Store(store_folder) as store:
        assert rows(store, "SELECT detail FROM history WHERE event = 'set-aside'") == [
            ("set-aside/unreadable/0 scan.pdf",)
        ]
    assert run(inbox_folder, store_folder) == 0


@pytest.fixture
def low_limit(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(taking, "MAX_BYTES", 1000)


@pytest.mark.usefixtures("low_limit")
def test_two_too_large_files_of_one_name(inbox_folder: Path, store_folder: Path) -> None:
    for number in range(3):
        put(inbox_folder, f"{number}/big.pdf", bytes([number]) * 2000)
    assert run(inbox_folder, store_folder) == 1
    found = {path.name for path in (store_folder / "set-aside/unreadable").iterdir()}
    assert found == {f"big{n}.pdf{ending}" for n in ("", "-2", "-3") for ending in ("", ".why.txt")}


@pytest.mark.usefixtures("low_limit")
def test_a_too_large_file_from_another_disk(inbox_folder: Path, store_folder: Path) -> None:
    with small_disk(inbox_folder, 512 * 1024):
        path = put(inbox_folder, "big.pdf", b"x" * 2000)
        os.utime(path, (1_700_000_000, 1_700_000_000))
        assert run(inbox_folder, store_folder) == 1
        assert contents(inbox_folder) == {}
    aside = store_folder / "set-aside/unreadable/big.pdf"
    assert aside.read_bytes() == b"x" * 2000
    assert aside.stat().st_mtime == 1_700_000_000
    assert list((store_folder / ".unfinished").iterdir()) == []


@pytest.mark.usefixtures("low_limit")
def test_a_too_large_file_that_there_is_no_room_for_stays_and_blocks_nothing(
    inbox_folder: Path, store_folder: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    usage = shutil.disk_usage(store_folder)
    with small_disk(inbox_folder, 512 * 1024):
        put(inbox_folder, "big.pdf", b"x" * 2000)
        put(inbox_folder, "z.pdf", sheet("Z1"))
        with monkeypatch.context() as full:
            full.setattr(shutil, "disk_usage", lambda _: usage._replace(free=0))
            assert run(inbox_folder, store_folder) == 1
        assert list(contents(inbox_folder)) == ["big.pdf"]
        assert list(contents(store_folder)) == ["filed/Nordtal Malting/2024/Z1/z.pdf"]
        assert "is too large to be opened and cannot be moved: No space left on device." in capsys.readouterr().err


@pytest.mark.skipif(sys.platform != "linux", reason="files with holes")
def test_bulk_tells_of_a_file_too_large_to_open(
    tmp_path: Path, store_folder: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    tree = tmp_path / "tree"
    put(tree, "a.pdf", sheet("A1"))
    sparse(tree / "big.pdf", 2000 * GIB)
    request = bulk.Request(tree, store_folder, workers=1, reads=READS)
    assert bulk.bulk(request) == 1

    def started(*_: object) -> None:
        raise AssertionError("it was opened")

    monkeypatch.setattr(bulk, "LocalReaders", started)
    assert bulk.bulk(request) == 1
    assert capsys.readouterr().out.count("big.pdf is larger than 100 MB") == 2


# -------------------------------------------------------------------------------------------------- names and contents


def test_what_was_set_aside_may_be_put_back_with_its_text(inbox_folder: Path, store_folder: Path) -> None:
    put(inbox_folder, "a.pdf", b"no sheet")
    put(inbox_folder, "b.pdf", sheet("B1", state="review"))
    run(inbox_folder, store_folder)
    before = contents(store_folder)
    for path in sorted((store_folder / "set-aside").rglob("*.*")):
        path.rename(inbox_folder / path.name)
    run(inbox_folder, store_folder)
    assert contents(store_folder) == before
    assert sorted(contents(inbox_folder)) == ["a.pdf.why.txt", "b.pdf.why.txt"]


def test_the_text_beside_a_file_takes_no_originals_place(inbox_folder: Path, store_folder: Path) -> None:
    """A supplier may call a file as the program calls its texts."""
    sent = b"why this malt? because.\n"
    put(inbox_folder, "a.pdf.why.txt", sent)
    run(inbox_folder, store_folder)
    put(inbox_folder, "a.pdf", b"no sheet")
    run(inbox_folder, store_folder)
    put(inbox_folder, "z.zip", zipped(("c.pdf", b"nor this"), ("c.pdf.why.txt", b"and this neither")))
    run(inbox_folder, store_folder)
    kept = [path.read_bytes() for path in (store_folder / "set-aside").rglob("*") if path.is_file()]
    assert {sent, b"no sheet", b"nor this", b"and this neither"} <= set(kept)
    assert len(kept) == 8


def test_an_altered_original_does_not_stand_for_its_content(inbox_folder: Path, store_folder: Path) -> None:
    put(inbox_folder, "a.pdf", sheet())
    run(inbox_folder, store_folder)
    (filed,) = (store_folder / "filed").rglob("a.pdf")
    filed.write_bytes(b"saved once more by a spreadsheet program")
    put(inbox_folder, "a.pdf", sheet())
    run(inbox_folder, store_folder)
    assert {path.read_bytes() for path in (store_folder / "filed").rglob("*.pdf")} == {filed.read_bytes(), sheet()}


def folded(store: Path) -> list[str]:
    """Names of all that is filed, as a disk sees them that knows no case and one form of accents."""
    return [unicodedata.normalize("NFC", name).casefold() for name in contents(store)]


def test_suppliers_and_files_that_some_disks_take_for_the_same(inbox_folder: Path, store_folder: Path) -> None:
    names = ["Mälzerei Nord", "MÄLZEREI NORD", unicodedata.normalize("NFD", "Mälzerei Nord"), "Mälzerei  Nord."]
    for number, supplier in enumerate(names):
        file = ["Zeugnis ä.pdf", unicodedata.normalize("NFD", "Zeugnis ä.pdf"), "ZEUGNIS Ä.PDF"][number % 3]
        put(inbox_folder, f"{number}/{file}", sheet("A1", supplier=supplier, extra=str(number)))
    assert run(inbox_folder, store_folder) == 0
    assert contents(inbox_folder) == {}
    assert len(contents(store_folder)) == 4
    assert len(set(folded(store_folder))) == 4


@pytest.mark.parametrize(
    "text",
    [
        "../../x",
        "..\\..\\x",
        "CON",
        "nul.txt",
        "24/08\\15",
        "24\n08\r15",
        "B" * 500,
        "ä" * 500,
        "\u202e\u200b",
        "%00",
        " . ",
    ],
)
def test_a_batch_may_be_called_anything(inbox_folder: Path, store_folder: Path, tmp_path: Path, text: str) -> None:
    put(inbox_folder, "a.pdf", sheet(text, supplier=text))
    put(inbox_folder, "b.pdf", sheet("B", supplier=text))
    before = set(tmp_path.rglob("*"))
    assert run(inbox_folder, store_folder) == 0
    assert all(path.is_relative_to(store_folder) for path in set(tmp_path.rglob("*")) - before)
    filed = contents(store_folder)
    assert len(filed) == 2
    for name in filed:
        parts = name.split("/")
        assert len(parts) == 5
        assert all(len(part.encode()) <= 170 and part.isprintable() and part.strip(" .") for part in parts)
        assert not {part.split(".")[0].upper() for part in parts} & {"CON", "NUL", "AUX", "PRN"}


# ------------------------------------------------------------------------------------------------------- time and turns


@pytest.mark.skipif(sys.platform == "win32", reason="signals")
def test_one_content_under_two_names_while_watching(inbox_folder: Path, store_folder: Path) -> None:
    process = subprocess.Popen(
        [sys.executable, "-c", WATCH, inbox_folder, store_folder, "0.3", READS],
        cwd=ROOT, stdout=subprocess.PIPE, stderr=subprocess.PIPE, text=True,
    )  # fmt: skip
    try:
        for turn in range(3):
            for name in ("one.pdf", "two.pdf", "sub/three.pdf"):
                put(inbox_folder, name, sheet("T1"))
            put(inbox_folder, f"{turn}.eml", bytes(mail(("four.pdf", sheet("T1")), subject=str(turn))))
            end = time.monotonic() + 30
            while contents(inbox_folder):
                assert time.monotonic() < end, "it took too long"
                time.sleep(0.05)
    finally:
        process.send_signal(signal.SIGINT)
        _, err = process.communicate(timeout=20)
    assert process.returncode == 0, err
    assert "Traceback" not in err
    sheets = [name for name in contents(store_folder) if name.endswith(".pdf")]
    assert len(sheets) == 1
    with Store(store_folder) as store:
        assert rows(store, "SELECT COUNT(*) FROM analyses") == [(1,)]
        assert rows(store, "SELECT COUNT(*) FROM arrivals WHERE name LIKE '%.pdf'") == [(12,)]
        assert rows(store, "SELECT COUNT(*) FROM removals") == [(0,)]


def arrivals(folder: Path) -> list[Path]:
    made = [put(folder, f"{n}.pdf", sheet(f"B{n % 3}", moisture=4 + n / 10)) for n in range(7)]
    for path in made:
        os.utime(path, (1_700_000_000, 1_700_000_000))
    return made


def test_a_clock_that_goes_back_changes_nothing(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """Which certificate is the later one, what was exported and what was said last do not hang on the clock."""
    stores = [tmp_path / "one", tmp_path / "other"]
    ticks = itertools.count()
    start = datetime.datetime(2024, 12, 1, tzinfo=datetime.UTC)

    def backwards() -> str:
        return (start - datetime.timedelta(days=next(ticks))).isoformat(timespec="milliseconds")

    for folder, clock in zip(stores, (ledger.now, backwards), strict=True):
        folder.mkdir()
        monkeypatch.setattr(ledger, "now", clock)
        with Store(folder) as store:
            take(store, *arrivals(tmp_path / "tree"))
    assert dump(stores[0]) == dump(stores[1])
    for moment in (-10_000_000_000, 0, 2**33):
        path = put(tmp_path, "times.pdf", sheet("T", extra=str(moment)))
        os.utime(path, (moment, moment))
        with Store(stores[0]) as store:
            (taken,) = take(store, path, way="inbox")
        assert taken.state == "accepted"


# --------------------------------------------------------------------------------------------------- parcels in parcels


def states(store: Store, path: Path) -> list[tuple[str, str, str | None]]:
    """What became of everything in a file: name, state, code of the first problem."""
    taken = take(store, path, executor=Inline())
    return [(one.item.name, one.state, one.problems[0][0] if one.problems else None) for one in taken]


def test_an_email_in_an_archive_in_an_email(store_folder: Path, tmp_path: Path) -> None:
    inner = bytes(mail(("cert.pdf", sheet("E1")), sender="lab@example.org"))
    path = put(tmp_path, "m.eml", bytes(mail(("all.zip", zipped(("inner.eml", inner))), sender="office@example.org")))
    with Store(store_folder) as store:
        assert states(store, path) == [
            ("m.eml", "accepted", None), ("all.zip", "accepted", None),
            ("inner.eml", "accepted", None), ("cert.pdf", "accepted", None),
        ]  # fmt: skip
        assert rows(store, "SELECT sender FROM arrivals WHERE name = 'cert.pdf'") == [("lab@example.org",)]


def test_an_archive_of_ten_thousand_files(store_folder: Path, tmp_path: Path) -> None:
    path = put(tmp_path, "many.zip", zipped(*((f"{n:05}.pdf", sheet(f"B{n}")) for n in range(10_000))))
    with Store(store_folder) as store:
        found = states(store, path)
        ((message,),) = rows(store, "SELECT message FROM problems")
    assert found[0] == ("many.zip", "failed", "too-large")
    assert len(found) == 1001
    assert {state for _, state, _ in found[1:]} == {"accepted"}
    assert "Unpack it first" in message


def test_a_locked_archive_in_an_email(store_folder: Path, tmp_path: Path) -> None:
    locked = bytearray(zipped(("a.pdf", sheet())))
    for at in (locked.find(b"PK\x03\x04") + 6, locked.find(b"PK\x01\x02") + 8):
        locked[at] |= 1
    path = put(tmp_path, "m.eml", bytes(mail(("locked.zip", bytes(locked)))))
    with Store(store_folder) as store:
        assert ("locked.zip", "failed", "password-protected") in states(store, path)
        ((message,),) = rows(store, "SELECT message FROM problems")
    assert "Unpack it first" in message


@pytest.mark.parametrize("charset", [b"nonsense-8", b"utf-16", b"us-ascii", b"\xff\xfe", b"iso-2022-jp"])
def test_an_email_that_names_a_wrong_charset(store_folder: Path, tmp_path: Path, charset: bytes) -> None:
    data = (
        b"From: =?" + charset + b"?q?K=E4the?= <lab@example.org>\r\nTo: b@example.org\r\n"
        b"Subject: =?" + charset + b"?b?4oKs/w==?= Pr\xfcfung \x80\r\nMIME-Version: 1.0\r\n"
        b"Content-Type: multipart/mixed; boundary=x\r\n\r\n--x\r\nContent-Type: text/plain; charset="
        + charset
        + b"\r\n"
        b"Content-Transfer-Encoding: 8bit\r\n\r\nGr\xfc\xdfe \xff\r\n--x\r\n"
        b"Content-Type: application/octet-stream; charset=" + charset + b"\r\n"
        b"Content-Disposition: attachment; filename*=" + charset + b"''Pr%FCfung.pdf; filename=\"Pr\xfcf.pdf\"\r\n"
        b"Content-Transfer-Encoding: 8bit\r\n\r\n" + sheet("E1") + b"\r\n--x--\r\n"
    )
    with Store(store_folder) as store:
        found = states(store, put(tmp_path, "m.eml", data))
        assert [state for _, state, _ in found] == ["accepted", "accepted"]
        assert all(name.isprintable() for name, _, _ in found)
        ((sender, subject),) = rows(store, "SELECT sender, subject FROM arrivals WHERE container IS NOT NULL")
        assert "lab@example.org" in sender
        assert subject.isprintable()
