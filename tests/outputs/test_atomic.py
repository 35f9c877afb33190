"""Files are written whole or not at all."""

from __future__ import annotations

import os
import signal
import stat
import subprocess
import sys
import time
from pathlib import Path

import pytest

from importer.output.atomic import WriteError, write_text
from tests.permissions import needs_permissions


def leftovers(folder: Path) -> list[str]:
    return [path.name for path in folder.iterdir() if path.name.endswith(".part")]


def test_a_file_is_written_and_replaced(tmp_path: Path) -> None:
    target = tmp_path / "out.json"
    write_text(target, "first — °\n")
    write_text(target, "second\n")
    assert target.read_bytes() == b"second\n"
    assert leftovers(tmp_path) == []


@pytest.mark.parametrize("step", ["fsync", "fdopen", "replace"])
def test_after_an_error_the_old_file_is_whole_and_nothing_is_left(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, step: str
) -> None:
    target = tmp_path / "out.json"
    write_text(target, "old")

    def fail(*_: object, **__: object) -> None:
        raise OSError(28, "No space left on device")

    monkeypatch.setattr(Path if step == "replace" else os, step, fail)
    with pytest.raises(WriteError, match="disk is full"):
        write_text(target, "new")
    monkeypatch.undo()
    assert target.read_text() == "old"
    assert leftovers(tmp_path) == []


def test_an_interruption_leaves_the_old_file(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    target = tmp_path / "out.json"
    write_text(target, "old")

    def interrupt(_: int) -> None:
        raise KeyboardInterrupt

    monkeypatch.setattr(os, "fsync", interrupt)
    with pytest.raises(KeyboardInterrupt):
        write_text(target, "new")
    monkeypatch.undo()
    assert target.read_text() == "old"
    assert leftovers(tmp_path) == []


@pytest.mark.skipif(sys.platform == "win32", reason="POSIX permissions")
def test_permissions_are_kept_and_new_files_follow_the_umask(tmp_path: Path) -> None:
    target = tmp_path / "out.json"
    before = os.umask(0o027)
    try:
        write_text(target, "new")
        assert stat.S_IMODE(target.stat().st_mode) == 0o640
        target.chmod(0o604)
        write_text(target, "again")
        assert stat.S_IMODE(target.stat().st_mode) == 0o604
    finally:
        os.umask(before)


def test_what_cannot_be_written_is_explained(tmp_path: Path) -> None:
    with pytest.raises(WriteError, match="does not exist"):
        write_text(tmp_path / "missing" / "out.json", "x")
    with pytest.raises(WriteError, match="is a folder"):
        write_text(tmp_path, "x")
    (tmp_path / "file").write_text("x")
    with pytest.raises(WriteError, match="not a folder"):
        write_text(tmp_path / "file" / "out.json", "x")
    with pytest.raises(WriteError, match="too long"):
        write_text(tmp_path / ("n" * 300), "x")


@needs_permissions
def test_a_read_only_folder_or_file_is_explained(tmp_path: Path) -> None:
    target = tmp_path / "out.json"
    target.write_text("old")
    target.chmod(0o444)
    with pytest.raises(WriteError, match="no permission"):
        write_text(target, "new")
    tmp_path.chmod(0o555)
    try:
        with pytest.raises(WriteError, match="no permission"):
            write_text(tmp_path / "new.json", "new")
    finally:
        tmp_path.chmod(0o755)


@pytest.mark.skipif(sys.platform == "win32", reason="links and pipes")
def test_links_are_written_through_and_devices_directly(tmp_path: Path) -> None:
    target = tmp_path / "real.json"
    target.write_text("old")
    link = tmp_path / "link.json"
    link.symlink_to(target)
    write_text(link, "new")
    assert link.is_symlink()
    assert target.read_text() == "new"
    write_text(Path(os.devnull), "gone")
    assert Path(os.devnull).exists()


@pytest.mark.skipif(sys.platform == "win32", reason="SIGKILL")
def test_a_killed_program_leaves_a_whole_file(tmp_path: Path) -> None:
    """Killed at any moment of rewriting, the file holds one of the two texts from its first byte to its last."""
    target = tmp_path / "out.json"
    texts = {"a" * 200_000, "b" * 300_000}
    script = (
        "from pathlib import Path; from importer.output.atomic import write_text\n"
        f"target = Path({str(target)!r})\n"
        "while True:\n"
        "    write_text(target, 'a' * 200_000)\n"
        "    write_text(target, 'b' * 300_000)\n"
    )
    for delay in (0.0, 0.01, 0.03):
        child = subprocess.Popen([sys.executable, "-c", script], cwd=Path(__file__).parents[2])
        while not target.exists():
            time.sleep(0.005)
        time.sleep(delay)
        child.send_signal(signal.SIGKILL)
        child.wait()
        assert target.read_text() in texts
        target.unlink()


@pytest.mark.skipif(not Path("/proc/self").is_dir(), reason="needs a folder in which nothing can be made")
def test_a_folder_in_which_nothing_can_be_made_is_not_said_to_be_missing() -> None:
    with pytest.raises(WriteError, match="nothing can be made in that folder"):
        write_text(Path("/proc/onebasis.json"), "x")
