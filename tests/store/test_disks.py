"""Disks that cannot be written to, and full ones: said plainly, nothing by half, and later it goes on."""

from __future__ import annotations

import json
import shutil
import tempfile
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest
import typer
from typer.testing import CliRunner, Result

from importer.cli import app
from importer.commands import bulk, inbox
from importer.commands.run import run
from importer.guard import InstallationError
from importer.intake import ocr
from importer.store import schema
from importer.store.ledger import FILE_NAME, Store
from importer.store.looking_in import load_analyses
from importer.store.reading import Job, LocalReaders, Options, read_job
from tests.disks import enlarge, fill, read_only, small_disk
from tests.store.helpers import contents, dump, put, rows, take
from tests.store.standins import READS, sheet

KIB = 1024
Command = Callable[..., Result]


@pytest.fixture
def stored(store_folder: Path, tmp_path: Path) -> Command:
    """A store with three batches of two malts, and a command on it."""
    with Store(store_folder) as store:
        take(
            store,
            put(tmp_path, "a.pdf", sheet("A1", day="2024-10-05")),
            put(tmp_path, "b.pdf", sheet("B2", malt="Munich Malt", day="2024-11-14")),
            put(tmp_path, "c.pdf", sheet("C3", day="2024-11-20", state="review", rows=1)),
        )
    return lambda *arguments: CliRunner().invoke(app, [*map(str, arguments), "--store", str(store_folder)])


def ended(command: Callable[[], int]) -> int:
    """The exit status that a command ends the program with."""
    with pytest.raises(typer.Exit) as end:
        run(command)
    return end.value.exit_code


# ------------------------------------------------------------------------------------- a store that can only be read


def test_what_only_reads_works_on_a_store_that_cannot_be_written_to(
    stored: Command, store_folder: Path, tmp_path: Path
) -> None:
    before = contents(store_folder), (store_folder / FILE_NAME).read_bytes()
    with read_only(store_folder):
        for arguments in (
            ("export",),
            ("export", "--wide", tmp_path / "w.csv"),
            ("export", "--json", "-"),
            ("export", "--recipe", tmp_path / "r.csv"),
            ("review", "--list"),
            ("review", "--write", tmp_path / "say.csv"),
            ("batch", "A1"),
            ("compare", "A1", "B2"),
            ("report", "2024", "--html", tmp_path / "2024.html"),
        ):
            result = stored(*arguments)
            assert result.exit_code == 0, (arguments, result.output)
            assert "Error" not in result.stderr
        assert len(json.loads(stored("export", "--json", "-").stdout)["analyses"]) == 3
        assert len(load_analyses(store_folder)) == 3
        assert sorted(path.name for path in store_folder.iterdir()) == [FILE_NAME]
    assert (contents(store_folder), (store_folder / FILE_NAME).read_bytes()) == before
    assert (tmp_path / "w.csv").read_text(encoding="utf-8").count("\n") == 4
    assert "A1 (2024-10-05)" in (tmp_path / "2024.html").read_text(encoding="utf-8")


def test_an_export_that_cannot_be_remembered_says_so(stored: Command, store_folder: Path, tmp_path: Path) -> None:
    with read_only(store_folder):
        result = stored("export", "--json", tmp_path / "x.json", "--since-last-export")
    assert result.exit_code == 0
    assert "cannot be written to, so --since-last-export will not know of this one" in result.stderr


def test_another_basis_from_a_store_that_cannot_be_written_to(
    stored: Command, store_folder: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    from importer.commands import export as command

    monkeypatch.setattr(command, "Options", lambda *values: Options(*values, reads=READS))
    with read_only(store_folder):
        first = json.loads(stored("export", "--json", "-", "--basis", "iob").stdout)
    assert first == json.loads(stored("export", "--json", "-", "--basis", "iob").stdout)
    assert [analysis["mash"] for analysis in first["analyses"]] == ["isothermal-65"] * 3


def test_what_writes_refuses_a_store_that_cannot_be_written_to(
    stored: Command, store_folder: Path, tmp_path: Path
) -> None:
    put(tmp_path / "tree", "n.pdf", sheet("N"))
    put(tmp_path / "said", "say.csv", b"")
    with read_only(store_folder):
        for arguments in (
            ("review", "--no-browser"),
            ("review", "--take", tmp_path / "said/say.csv"),
            ("bulk", tmp_path / "tree"),
            ("inbox", tmp_path / "tree"),
        ):
            result = stored(*arguments)
            assert result.exit_code == 2, (arguments, result.output)
            assert "written to" in result.stderr
            assert "unexpected" not in result.stderr
    assert [path.name for path in (tmp_path / "tree").iterdir()] == ["n.pdf"]


def unclosed(store_folder: Path, tmp_path: Path) -> None:
    """The store as a power cut leaves it: the last changes in the log."""
    with Store(store_folder) as store:
        take(store, put(tmp_path, "d.pdf", sheet("D4")))
        shutil.copytree(store_folder, tmp_path / "copy")
    shutil.rmtree(store_folder)
    (tmp_path / "copy").rename(store_folder)
    assert (store_folder / f"{FILE_NAME}-wal").stat().st_size


def test_the_last_changes_of_a_store_that_was_not_closed_are_read_or_asked_for(
    stored: Command, store_folder: Path, tmp_path: Path
) -> None:
    unclosed(store_folder, tmp_path)
    with read_only(store_folder):
        assert len(json.loads(stored("export", "--json", "-").stdout)["analyses"]) == 4
    (store_folder / f"{FILE_NAME}-shm").unlink()
    with read_only(store_folder):
        result = stored("export", "--json", "-")
        assert result.exit_code == 1
        assert "last changes" in result.stderr
        assert "Copy the whole folder" in result.stderr
    assert len(json.loads(stored("export", "--json", "-").stdout)["analyses"]) == 4


def test_an_earlier_store_on_a_disk_that_cannot_be_written_to(
    store_folder: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    with monkeypatch.context() as earlier:
        earlier.setattr(schema, "MIGRATIONS", schema.MIGRATIONS[:1])
        earlier.setattr(schema, "VERSION", 1)
        schema.connect(store_folder / FILE_NAME).close()
    with read_only(store_folder):
        result = CliRunner().invoke(app, ["export", "--store", str(store_folder)])
    assert result.exit_code == 1
    assert "made by an earlier onebasis" in result.stderr


def test_a_tree_on_a_disk_that_cannot_be_written_to_is_read(tmp_path: Path, store_folder: Path) -> None:
    put(tmp_path / "tree", "n.pdf", sheet("N"))
    with read_only(tmp_path / "tree"):
        request = bulk.Request(tmp_path / "tree", store_folder, workers=1, reads=READS)
        assert bulk.bulk(request) == 0


def test_an_inbox_that_cannot_be_written_to_is_refused(
    inbox_folder: Path, store_folder: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    put(inbox_folder, "n.pdf", sheet("N"))
    with read_only(inbox_folder):
        assert ended(lambda: inbox.inbox(inbox.Request(inbox_folder, store_folder, reads=READS))) == 2
    assert "nothing can be taken out of it" in capsys.readouterr().err
    assert contents(store_folder) == {}


# -------------------------------------------------------------------------------------------------- where to write to


@pytest.mark.parametrize("option", ["--json", "--csv", "--wide"])
def test_an_export_to_a_folder_that_cannot_be_written_to(stored: Command, tmp_path: Path, option: str) -> None:
    old = put(tmp_path / "out", "x", b"as it was")
    with read_only(tmp_path / "out"):
        result = stored("export", option, old)
        new = stored("export", option, tmp_path / "out/new")
    assert (result.exit_code, new.exit_code) == (1, 1)
    for told in (result.stderr, new.stderr):
        assert "was not written" in told
        assert "Choose another folder" in told
    assert contents(tmp_path / "out") == contents(old.parent)
    assert [path.name for path in (tmp_path / "out").iterdir()] == ["x"]
    assert old.read_bytes() == b"as it was"


@pytest.mark.parametrize("option", ["--json", "--csv", "--wide", "--recipe"])
def test_an_export_to_a_full_disk(stored: Command, store_folder: Path, tmp_path: Path, option: str) -> None:
    out = tmp_path / "out"
    out.mkdir()
    before = dump(store_folder)
    with small_disk(out, 64 * KIB):
        old = put(out, "x", b"as it was")
        fill(out)
        result = stored("export", option, old)
        assert result.exit_code == 1
        assert "the disk is full" in result.stderr
        assert sorted(path.name for path in out.iterdir()) == ["filler", "x"]
        assert old.read_bytes() == b"as it was"
    assert dump(store_folder) == before


# ----------------------------------------------------------------------------------------- a store whose disk is full


@pytest.fixture
def many(tmp_path: Path) -> Path:
    folder = tmp_path / "many"
    for number in range(60):
        put(folder, f"{number:02}.pdf", sheet(f"B{number}", extra="x" * 9000))
    return folder


def undisturbed(command: Callable[[Path, Path], int], many: Path, tmp_path: Path) -> tuple[object, ...]:
    """What the same gives where nothing is in the way."""
    folder, store = tmp_path / "other", tmp_path / "other store"
    shutil.copytree(many, folder)
    assert command(folder, store) == 0
    return compared(folder, store)


def compared(folder: Path, store: Path) -> tuple[object, ...]:
    with Store(store) as opened:
        found = rows(opened, "SELECT id, batch, state, superseded_by FROM analyses ORDER BY id")
        found += rows(opened, "SELECT name, state, filed FROM documents ORDER BY name")
        found += rows(opened, "SELECT COUNT(*) FROM arrivals")
    return found, contents(store), contents(folder)


def by_bulk(folder: Path, store: Path) -> int:
    return ended(lambda: bulk.bulk(bulk.Request(folder, store, workers=1, reads=READS)))


def by_inbox(folder: Path, store: Path) -> int:
    return ended(lambda: inbox.inbox(inbox.Request(folder, store, settle=0.02, workers=1, reads=READS)))


@pytest.mark.parametrize("command", [by_bulk, by_inbox])
@pytest.mark.parametrize("room", [256, 400, 560, 680])
def test_a_store_on_a_disk_that_fills_up(
    many: Path,
    store_folder: Path,
    tmp_path: Path,
    capsys: pytest.CaptureFixture[str],
    command: Callable[[Path, Path], int],
    room: int,
) -> None:
    sheets = set(contents(many).values())
    with small_disk(store_folder, room * KIB):
        assert command(many, store_folder) == 1
        told = capsys.readouterr().err
        assert "disk is full" in told or "No space left" in told, told
        assert "unexpected" not in told
        assert sheets <= {*contents(many).values(), *contents(store_folder).values()}
        assert not [path for path in (store_folder / ".unfinished").glob("*") if path.stat().st_size]
        enlarge(store_folder, 64 * KIB * KIB)
        assert command(many, store_folder) == 0
        assert dump(store_folder)
        found = compared(many, store_folder)
    shutil.rmtree(many, ignore_errors=True)
    for number in range(60):
        put(many, f"{number:02}.pdf", sheet(f"B{number}", extra="x" * 9000))
    assert found == undisturbed(command, many, tmp_path)


# ------------------------------------------------------------------------------ a full disk for what lies in between


@pytest.fixture
def no_room(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Iterator[Path]:
    folder = tmp_path / "temporary"
    folder.mkdir()
    with small_disk(folder, 256 * KIB):
        monkeypatch.setenv("TMPDIR", str(folder))
        monkeypatch.setattr(tempfile, "tempdir", str(folder))
        yield folder


def test_no_room_for_temporary_files_fails_no_document(
    no_room: Path, many: Path, store_folder: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    filler = fill(no_room, leave=4 * KIB)
    assert by_inbox(many, store_folder) == 1
    told = capsys.readouterr().err
    assert "The folder for temporary files" in told
    assert "unexpected" not in told
    with Store(store_folder) as store:
        assert rows(store, "SELECT COUNT(*) FROM documents WHERE state = 'failed'") == [(0,)]
    assert not (store_folder / "set-aside").exists()
    filler.unlink()
    assert by_inbox(many, store_folder) == 0
    assert contents(many) == {}


def test_a_worker_without_room_blames_no_file(tmp_path: Path) -> None:
    path = put(tmp_path, "a.pdf", sheet())
    options = Options(reads="tests.store.test_disks:without_room")
    with LocalReaders(1, options) as readers, pytest.raises(InstallationError, match="folder for temporary files"):
        readers.submit(read_job, Job("a.pdf", path.read_bytes(), options)).result()


def without_room(path: Path, basis: str, **_: object) -> None:
    """A reading that runs out of room."""
    raise OSError(28, "No space left on device")


def test_optical_reading_on_a_full_disk_is_never_taken_for_whole(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """The program writes half of its words then, and ends as if all were well."""
    from PIL import Image

    monkeypatch.setattr(ocr, "_run", lambda *_: "head\n5\t1\t1\t1\t1\t1\t0\t0\t9\t9\t90\tMoist")
    image = Image.new("L", (100, 50), 255)
    assert [word.text for word in ocr.read_block(image)] == ["Moist"]
    monkeypatch.setattr(shutil, "disk_usage", lambda _: shutil._ntuple_diskusage(10, 10, 0))  # type: ignore[attr-defined]
    with pytest.raises(OSError, match="No space left"):
        ocr.read_block(image)
