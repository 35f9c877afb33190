"""The command line: what goes where, what is refused, and what the exit status says. Reading itself is stood in for."""

from __future__ import annotations

import csv
import hashlib
import io
import json
import os
import subprocess
import sys
from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest
from typer.testing import CliRunner, Result

from importer import __version__
from importer.cli import app
from importer.commands import read as command
from importer.commands.convert import number
from importer.guard import InstallationError
from importer.models import Document, Sheet
from importer.output import atomic
from importer.output.renderers import RENDERERS
from tests.outputs import factory

ROOT = Path(__file__).parents[2]


class StandInReader:
    """Gives a sheet by the name of a file: ``bad…`` cannot be read, ``clean…`` has nothing in review."""

    asked: list[dict[str, Any]] = []  # noqa: RUF012

    def __init__(self, seconds: float) -> None:
        self.seconds = seconds

    def __enter__(self) -> StandInReader:
        return self

    def __exit__(self, *_: object) -> None:
        pass

    def start(self) -> StandInReader:
        return self

    def read(self, path: Path, basis: str, **options: Any) -> Sheet:
        self.asked.append({"path": path.name, "basis": basis, "seconds": self.seconds, **options})
        if path.name.startswith("bad"):
            return Sheet(problems=(factory.problem(path.name),))
        if path.name.startswith("interrupt"):
            raise KeyboardInterrupt
        if path.name.startswith("broken"):
            raise InstallationError("mappings/parameters.toml is missing. Install it again.")
        if path.name.startswith("bug"):
            raise RuntimeError("something nobody thought of")
        figures = (factory.moisture(),) if path.name.startswith("clean") else ()
        changes: dict[str, Any] = {"derived": (), "state": "accepted"} if figures else {}
        content = hashlib.sha256(path.read_bytes()).hexdigest()
        source = {"file": path.name, "sha256": content, "pages": (1,), "reading": "text"}
        return Sheet(analyses=(factory.analysis(*figures, id=path.name, source=source, **changes),))


@pytest.fixture(autouse=True)
def _stand_in(monkeypatch: pytest.MonkeyPatch) -> None:
    StandInReader.asked = []
    monkeypatch.setattr(command, "GuardedReader", StandInReader)
    monkeypatch.setenv("COLUMNS", "100")
    monkeypatch.delenv("ONEBASIS_DEBUG", raising=False)


@pytest.fixture
def onebasis() -> Callable[..., Result]:
    return lambda *arguments: CliRunner().invoke(app, [str(argument) for argument in arguments])


@pytest.fixture
def sheets(tmp_path: Path) -> Path:
    folder = tmp_path / "sheets"
    folder.mkdir()
    for name in ("clean.pdf", "doubtful.pdf"):
        (folder / name).write_text(name)
    return folder


def test_a_table_is_printed(onebasis: Callable[..., Result], sheets: Path) -> None:
    result = onebasis("read", sheets)
    assert result.exit_code == 0
    assert "Pale Ale Malt · batch PA-2024-017" in result.stdout
    assert "2 analyses" in result.stdout
    assert result.stderr == ""


def test_options_reach_the_reading(onebasis: Callable[..., Result], sheets: Path) -> None:
    path = sheets / "clean.pdf"
    onebasis("read", path, "--basis", "IOB", "--no-estimates", "--ratio-rule", "plus-five", "--time-limit", "7")
    onebasis("read", path)
    assert StandInReader.asked == [
        {"path": "clean.pdf", "basis": "IoB", "seconds": 7.0, "estimates": False, "ratio_rule": "plus-five"},
        {"path": "clean.pdf", "basis": "EBC", "seconds": 300.0, "estimates": True, "ratio_rule": "published"},
    ]


def test_files_are_written_and_the_table_still_printed(
    onebasis: Callable[..., Result], sheets: Path, tmp_path: Path
) -> None:
    out = tmp_path / "out"
    out.mkdir()
    result = onebasis(
        "read", sheets, "--json", out / "m.json", "--csv", out / "m.csv", "--wide", out / "w.csv", "--basis", "asbc"
    )
    assert result.exit_code == 0
    assert "batch PA-2024-017" in result.stdout
    assert f"Wrote JSON of 2 analyses to {out / 'm.json'}." in result.stderr
    assert sorted(path.name for path in out.iterdir()) == ["m.csv", "m.json", "m.schema.json", "w.csv", "w.schema.json"]
    doc = Document.model_validate_json((out / "m.json").read_text(encoding="utf-8"))
    assert doc.basis == "ASBC"
    assert [analysis.id for analysis in doc.analyses] == ["clean.pdf", "doubtful.pdf"]
    assert (out / "m.csv").read_bytes().startswith(b"analysis_id,kind,file,sha256,")
    schema = json.loads((out / "w.schema.json").read_text(encoding="utf-8"))
    assert schema["fields"][0]["name"] == "analysis_id"
    again = onebasis("read", tmp_path)
    assert again.exit_code == 0
    assert "2 analyses" in again.stdout


@pytest.mark.parametrize(
    ("option", "check"),
    [
        ("--json", lambda text: json.loads(text)["format"] == "onebasis/1"),
        ("--csv", lambda text: len(list(csv.DictReader(io.StringIO(text, newline="")))) == 10),
        ("--wide", lambda text: len(list(csv.DictReader(io.StringIO(text, newline="")))) == 2),
    ],
)
def test_standard_output_holds_the_data_and_nothing_else(
    onebasis: Callable[..., Result], sheets: Path, option: str, check: Callable[[str], bool]
) -> None:
    (sheets / "bad.pdf").write_text("x")
    result = onebasis("read", sheets, option, "-")
    assert result.exit_code == 1
    assert check(result.stdout_bytes.decode("utf-8"))
    assert "bad.pdf is locked with a password. [password-protected]" in result.stderr


def test_review_figures_in_the_wide_form(onebasis: Callable[..., Result], sheets: Path) -> None:
    def ratio(*options: str) -> str:
        result = onebasis("read", sheets / "doubtful.pdf", "--wide", "-", *options)
        (row,) = csv.DictReader(io.StringIO(result.stdout_bytes.decode("utf-8"), newline=""))
        return str(row["nitrogen_ratio_percent"])

    assert ratio() == ""
    assert ratio("--include-review") == "42.8"


@pytest.mark.parametrize(
    ("names", "options", "status"),
    [
        (["clean.pdf"], [], 0),
        (["clean.pdf"], ["--strict"], 0),
        (["doubtful.pdf"], [], 0),
        (["doubtful.pdf"], ["--strict"], 3),
        (["clean.pdf", "bad.pdf"], [], 1),
        (["bad.pdf"], [], 1),
        (["clean.pdf", "bad.pdf"], ["--strict"], 1),
        (["doubtful.pdf", "bad.pdf"], ["--strict"], 3),
    ],
)
def test_exit_status(
    onebasis: Callable[..., Result], sheets: Path, names: list[str], options: list[str], status: int
) -> None:
    (sheets / "bad.pdf").write_text("x")
    assert onebasis("read", *(sheets / name for name in names), *options).exit_code == status


@pytest.mark.parametrize(
    ("arguments", "words"),
    [
        (["read"], "Missing argument"),
        (["read", "missing.pdf"], "does not exist"),
        (["read", "{clean}", "--basis", "mebak"], "MEBAK counts as ebc"),
        (["label", "Colour", "--family", "mebak"], "MEBAK counts as ebc"),
        (["label", " "], "label is empty"),
        (["read", "{clean}", "--json", "-", "--csv", "-"], "Only one of"),
        (["read", "{clean}", "--csv", "{out}/a.csv", "--wide", "{out}/a.csv"], "would both write"),
        (["read", "{clean}", "--csv", "{out}/a.csv", "--wide", "{out}/a.txt"], "would both write"),
        (["read", "{clean}", "--json", "{out}/a.schema.json", "--csv", "{out}/a.csv"], "would both write"),
        (["read", "{clean}", "--json", "{out}"], "is a folder"),
        (["read", "{clean}", "--json", "{out}/no/such/a.json"], "there is no folder"),
        (["read", "{clean}", "--json", "{clean}"], "one of the sheets to read"),
        (["read", "{clean}", "--json", ""], "needs the name of a file"),
        (["read", "{clean}", "--time-limit", "0"], "--time-limit"),
        (["bulk", "{clean}"], "Name the folder that it lies in"),
        (["unknown"], "No such command"),
        (["convert", "many", "SRM", "--to", "EBC"], "VALUE"),
        (["convert", "3", "SRM"], "--to"),
        (["convert", "nan", "SRM", "--to", "EBC"], "VALUE"),
        (["convert", "1,500", "mg/kg", "--to", "%"], "two ways"),
        (["convert", "1.500,5", "mg/kg", "--to", "%"], "VALUE"),
        (["convert", "3", "florins", "--to", "EBC"], "florins"),
        (["convert", "3", "foo", "--to", "EBC"], "SRM"),
        (["convert", "3", "Lintnr", "--to", "WK"], "Did you mean °Lintner"),
        (["convert", "3", "WK", "--to", "EBC"], "relation"),
    ],
)
def test_wrong_usage(
    onebasis: Callable[..., Result], sheets: Path, tmp_path: Path, arguments: list[str], words: str
) -> None:
    result = onebasis(*(part.format(clean=sheets / "clean.pdf", out=tmp_path) for part in arguments))
    assert result.exit_code == 2
    assert words in result.stderr
    assert result.stdout == ""
    assert (sheets / "clean.pdf").read_text() == "clean.pdf"


def test_copies_are_told(onebasis: Callable[..., Result], sheets: Path) -> None:
    (sheets / "doubtful-copy.pdf").write_text("doubtful.pdf")
    result = onebasis("read", sheets)
    assert "doubtful.pdf has the same content as doubtful-copy.pdf" in result.stderr


def test_an_empty_folder_is_told(onebasis: Callable[..., Result], tmp_path: Path) -> None:
    result = onebasis("read", tmp_path)
    assert result.exit_code == 0
    assert "No sheets were found" in result.stderr


def test_an_interruption_writes_nothing(onebasis: Callable[..., Result], sheets: Path, tmp_path: Path) -> None:
    (sheets / "interrupt.pdf").write_text("x")
    result = onebasis("read", sheets, "--json", tmp_path / "m.json")
    assert result.exit_code == 130
    assert "Interrupted. Nothing was written." in result.stderr
    assert not (tmp_path / "m.json").exists()


def test_a_fault_of_the_program_is_told_without_a_traceback(
    onebasis: Callable[..., Result], sheets: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    (sheets / "bug.pdf").write_text("x")
    result = onebasis("read", sheets / "bug.pdf")
    assert result.exit_code == 1
    assert "unexpected RuntimeError" in result.stderr
    assert "Traceback" not in result.output
    monkeypatch.setenv("ONEBASIS_DEBUG", "1")
    assert isinstance(onebasis("read", sheets / "bug.pdf").exception, RuntimeError)


def test_a_broken_installation_is_told(onebasis: Callable[..., Result], sheets: Path) -> None:
    (sheets / "broken.pdf").write_text("x")
    result = onebasis("read", sheets)
    assert result.exit_code == 1
    assert "Error: mappings/parameters.toml is missing. Install it again." in result.stderr


def test_a_full_disk_is_told(
    onebasis: Callable[..., Result], sheets: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    def full(*_: object) -> None:
        raise OSError(28, "No space left on device")

    monkeypatch.setattr(atomic.os, "fsync", full)
    result = onebasis("read", sheets, "--json", tmp_path / "m.json")
    assert result.exit_code == 1
    assert "the disk is full" in result.stderr


def test_names_of_files_cannot_steer_the_terminal(onebasis: Callable[..., Result], tmp_path: Path) -> None:
    (tmp_path / "bad\x1b[2J.pdf").write_text("x")
    result = onebasis("read", tmp_path, "--json", "-")
    assert "\x1b" not in result.output


def test_version(onebasis: Callable[..., Result]) -> None:
    assert onebasis("--version").stdout == f"onebasis {__version__}\n"


@pytest.mark.parametrize(
    "arguments", [(), ("--help",), ("read", "-h"), ("demo", "-h"), ("label", "-h"), ("convert", "-h")]
)
def test_help_has_an_example(onebasis: Callable[..., Result], arguments: tuple[str, ...]) -> None:
    result = onebasis(*arguments)
    assert "Example: onebasis" in result.output
    assert "Usage:" in result.output


def test_convert(onebasis: Callable[..., Result]) -> None:
    """SRM and EBC colour are 12.7 and 25 times the same absorbance (ASBC Beer-10A, EBC 9.6; from memory)."""
    result = onebasis("convert", "3.5", "SRM", "--to", "EBC")
    assert result.exit_code == 0
    assert "EBC" in result.stdout.splitlines()[0]
    for word in ("kind", "formula", "source"):
        assert word in result.stdout
    data = json.loads(onebasis("convert", "3.5", "SRM", "--to", "EBC", "--json").stdout)
    assert data["conversions"][0]["value"] == pytest.approx(3.5 * 25 / 12.7, rel=0.005)
    assert data["conversions"][0]["kind"] == "scale"


@pytest.mark.parametrize(
    ("typed", "value"), [("3,5", 3.5), ("0,125", 0.125), (",5", 0.5), ("-3,5", -3.5), ("1e3", 1000)]
)
def test_a_decimal_comma_is_a_decimal_point(typed: str, value: float) -> None:
    assert number(typed) == value


@pytest.mark.parametrize("basis", ["ebc", "EBC", "Iob"])
def test_the_case_of_a_basis_does_not_matter(onebasis: Callable[..., Result], sheets: Path, basis: str) -> None:
    assert onebasis("read", str(sheets / "clean.pdf"), "--basis", basis, "--json", "-").exit_code == 0


@pytest.mark.parametrize("value", ["-1", "-0.5"])
def test_negative_values_are_no_options(onebasis: Callable[..., Result], value: str) -> None:
    result = onebasis("convert", value, "SRM", "--to", "SRM", "--json")
    assert "No such option" not in result.output


def test_the_module_is_the_command() -> None:
    done = subprocess.run(
        [sys.executable, "-m", "importer", "--version"], cwd=ROOT, capture_output=True, text=True, check=True
    )
    assert done.stdout == f"onebasis {__version__}\n"


@pytest.mark.skipif(sys.platform == "win32", reason="POSIX pipes")
def test_a_closed_pipe_is_quiet() -> None:
    read_end, write_end = os.pipe()
    os.close(read_end)
    done = subprocess.run(
        [sys.executable, "-m", "importer", "convert", "3.5", "SRM", "--to", "EBC"],
        cwd=ROOT,
        stdout=write_end,
        stderr=subprocess.PIPE,
        text=True,
        check=False,
    )
    os.close(write_end)
    assert done.stderr == ""
    assert done.returncode == 141


def test_help_comes_without_heavy_modules() -> None:
    """What makes a start slow must not be loaded before a command needs it."""
    code = "import sys, importer.cli; print(*sorted(m.partition('.')[0] for m in sys.modules))"
    done = subprocess.run([sys.executable, "-c", code], cwd=ROOT, capture_output=True, text=True, check=True)
    heavy = {"pydantic", "pypdfium2", "PIL", "rapidfuzz", "openpyxl", "numpy", "pytesseract", "rich", "cv2"}
    assert heavy.isdisjoint(done.stdout.split())


def test_a_format_that_is_forgotten_in_the_table_of_renderers_fails_at_once() -> None:
    """Every output of a request has its renderer, and there is none that no request can ask for."""
    request = command.Request((), json="a", csv="b", wide="c", parquet="d")
    assert set(request.outputs) == set(RENDERERS)


@pytest.mark.parametrize("option", RENDERERS)
def test_each_renderer_makes_a_schema_where_it_says_so(option: str) -> None:
    made = RENDERERS[option].render(factory.document(), False)
    assert made.data
    assert (made.schema is not None) == RENDERERS[option].with_schema
