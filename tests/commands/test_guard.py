"""No file takes the program down: crashes, hangs and memory become problems, and the next file is read."""

from __future__ import annotations

import os
import sys
import time
from collections.abc import Iterator
from pathlib import Path

import pytest

from importer.guard import GuardedReader, InstallationError

READS = "tests.commands.guarded_readers:read"
pytestmark = pytest.mark.skipif(sys.platform == "win32", reason="the stand-ins use POSIX signals")


@pytest.fixture
def reader() -> Iterator[GuardedReader]:
    with GuardedReader(seconds=20, memory=600 * 1024 * 1024, reads=READS) as reader:
        yield reader


def pid_of(message: str) -> str:
    return message.split()[1]


def test_files_share_one_process(reader: GuardedReader, tmp_path: Path) -> None:
    first = reader.read(tmp_path / "a.pdf", "IoB", estimates=False, ratio_rule="plus-five")
    second = reader.read(tmp_path / "b.pdf")
    assert first.problems[0].message.endswith("basis IoB estimates False rule plus-five")
    assert second.problems[0].message.endswith("basis EBC estimates True rule published")
    assert pid_of(first.problems[0].message) == pid_of(second.problems[0].message)
    assert pid_of(first.problems[0].message) != str(os.getpid())


@pytest.mark.parametrize(
    ("name", "code", "words"),
    [
        ("crash.pdf", "damaged", "SIGSEGV"),
        ("exit.pdf", "damaged", "exit status 3"),
        ("memory.pdf", "too-large", "more memory than the 600 MB"),
        ("deep.pdf", "damaged", "nested too deeply"),
        ("bug.pdf", "damaged", "an unexpected ValueError"),
        ("locked.pdf", "password-protected", "locked with a password"),
    ],
)
def test_a_bad_file_is_a_problem_and_the_next_is_read(
    reader: GuardedReader, tmp_path: Path, name: str, code: str, words: str
) -> None:
    reader.read(tmp_path / "warm.pdf")
    (problem,) = reader.read(tmp_path / name).problems
    assert (problem.file, problem.code) == (name, code)
    assert name in problem.message
    assert words in problem.message
    assert "secret" not in problem.message
    assert reader.read(tmp_path / "next.pdf").problems[0].message.startswith("pid ")


def test_a_hang_ends_at_the_time_limit(tmp_path: Path) -> None:
    with GuardedReader(seconds=2, reads=READS) as reader:
        began = time.monotonic()
        (problem,) = reader.read(tmp_path / "hang.pdf").problems
        assert time.monotonic() - began < 10
        assert problem.code == "took-too-long"
        assert "2 seconds" in problem.message
        assert "--time-limit" in problem.message
        scratch = Path((tmp_path / "hang.tmp").read_text())
        assert scratch.name.startswith("onebasis-")
        assert not scratch.exists()
        assert reader.read(tmp_path / "next.pdf").problems[0].message.startswith("pid ")


def test_what_a_hanging_file_started_ends_with_it(tmp_path: Path) -> None:
    with GuardedReader(seconds=2, reads=READS) as reader:
        reader.read(tmp_path / "spawn-hang.pdf")
    pid = int((tmp_path / "spawn-hang.pid").read_text())
    for _ in range(50):
        status = Path(f"/proc/{pid}/stat")
        if not status.exists() or status.read_text().rpartition(")")[2].split()[0] == "Z":
            return
        time.sleep(0.1)
    pytest.fail("a process that the file started is still running")


def test_only_a_fresh_process_convicts_a_file(reader: GuardedReader, tmp_path: Path) -> None:
    reader.read(tmp_path / "first.pdf")
    (problem,) = reader.read(tmp_path / "second-crash.pdf").problems
    assert problem.message.startswith("pid ")


def test_what_libraries_print_does_not_disturb(reader: GuardedReader, tmp_path: Path) -> None:
    assert reader.read(tmp_path / "noise.pdf").problems[0].message.startswith("pid ")


def test_names_that_are_not_utf8(reader: GuardedReader, tmp_path: Path) -> None:
    path = Path(os.fsdecode(os.fsencode(tmp_path) + b"/locked-\xff\x1b[31m\n.pdf"))
    (problem,) = reader.read(path).problems
    assert problem.file.startswith("locked-")
    assert problem.file.isprintable()


def test_broken_data_is_no_fault_of_the_file(reader: GuardedReader, tmp_path: Path) -> None:
    with pytest.raises(InstallationError, match=r"parameters\.toml"):
        reader.read(tmp_path / "data.pdf")


def test_a_reader_that_does_not_load(tmp_path: Path) -> None:
    with (
        GuardedReader(reads="tests.commands.guarded_readers:missing") as reader,
        pytest.raises(InstallationError, match="cannot start"),
    ):
        reader.read(tmp_path / "a.pdf")
