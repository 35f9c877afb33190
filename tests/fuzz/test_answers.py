"""Answers of the reading process by chance: whatever a broken one says, the file is a sheet or has a problem."""

from __future__ import annotations

import io
import json
from pathlib import Path
from typing import Any

from hypothesis import given, settings
from hypothesis import strategies as st

from importer.errors import OwnFileError
from importer.guard import GuardedReader, InstallationError, _Process
from importer.models import Problem, Sheet
from tests.fuzz.json_values import values


class _Ended:
    def wait(self, timeout: float) -> int:
        return 1


class _Saying(_Process):
    """A reading process that says what it is given, and then ends."""

    def __init__(self, lines: list[bytes]) -> None:
        self.files, self.memory, self.child = 0, 1 << 30, _Ended()  # type: ignore[assignment]
        self._requests, self._lines = io.BytesIO(), iter(lines)

    def _answer(self, seconds: float) -> bytes:
        return next(self._lines, b"")

    def end(self) -> None:
        pass


class _Reader(GuardedReader):
    def __init__(self, lines: list[bytes]) -> None:
        super().__init__()
        self._told = lines

    def _ready(self) -> _Process:
        self._process = self._process or _Saying(self._told)
        return self._process


statuses = st.sampled_from(("read", "broken", "own-file", "", "READ"))
heads = st.one_of(
    st.fixed_dictionaries(
        {"status": statuses | values}, optional={"memory": st.integers() | values, "message": values}
    ),
    values,
)
problems = st.lists(st.builds(lambda text: {"file": "a.pdf", "code": "damaged", "message": text}, st.text(max_size=9)))
bodies = st.one_of(
    values,
    st.fixed_dictionaries({"analyses": st.lists(values, max_size=2), "problems": problems | values}),
    st.fixed_dictionaries({"problems": problems}),
)


def _line(value: Any) -> bytes:
    return json.dumps(value).encode()


lines = st.tuples(heads.map(_line) | st.binary(max_size=30), bodies.map(_line) | st.binary(max_size=30))


@settings(deadline=None, max_examples=200)
@given(st.lists(lines, max_size=2).map(lambda pairs: [line for pair in pairs for line in pair]))
def test_any_answer_is_a_sheet_or_a_problem(told: list[bytes]) -> None:
    reader = _Reader(told)
    try:
        sheet = reader.read(Path("a.pdf"))
    except (InstallationError, OwnFileError):
        return
    assert isinstance(sheet, Sheet)
    assert all(problem.file == "a.pdf" or told for problem in sheet.problems)


def test_nonsense_is_a_problem_of_the_file_and_an_answer_is_kept() -> None:
    for line, body in (
        (b"\x00", b"{}"),
        (b"[1]", b"{}"),
        (b"[" * 100_000, b"{}"),
        (b'{"status": "read", "memory": "much"}', b"{}"),
        (b'{"status": "read"}', b"none"),
        (b'{"status": "read"}', b'{"analyses": [{"id": 3}]}'),
    ):
        (problem,) = _Reader([line, body]).read(Path("a.pdf")).problems
        assert problem.code == "damaged"
        assert "no reading" in problem.message
    whole = Sheet(problems=(Problem(file="a.pdf", code="empty", message="a.pdf is empty."),))
    told = [b'{"status": "read", "memory": 5}', whole.model_dump_json().encode()]
    assert _Reader(told).read(Path("a.pdf")).problems == whole.problems
