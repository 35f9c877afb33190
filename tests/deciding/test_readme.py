"""What README shows of batches, recipes and the report can be copied and run."""

from __future__ import annotations

import dataclasses
import inspect
import io
import re
import runpy
import shlex
import shutil
import subprocess
import sys
import threading
from contextlib import redirect_stdout
from pathlib import Path

import pytest
from typer.testing import CliRunner
from werkzeug.serving import make_server

import importer
from importer.cli import app
from importer.data import demo_folder
from importer.serving.app import make_app

README = (Path(__file__).parents[2] / "README.md").read_text(encoding="utf-8")
DEMO = demo_folder()


def block(name: str) -> str:
    (found,) = re.findall(rf"<!-- {name} -->\n```\w+\n(.+?)\n```", README, re.DOTALL)
    return str(found)


def python_blocks() -> list[str]:
    return re.findall(r"```python\n(.+?)\n```", README, re.DOTALL)


@pytest.fixture(scope="module")
def home(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A home folder with a store of some demo sheets and the files that README shows."""
    folder = tmp_path_factory.mktemp("home")
    sheets = folder / "sheets"
    sheets.mkdir()
    for path in DEMO.glob("quillbrook-*.pdf"):
        shutil.copy(path, sheets)
    command = [sys.executable, "-m", "importer", "bulk", str(sheets), "--store", str(folder / "onebasis")]
    (folder / "onebasis").mkdir()
    subprocess.run(command, check=True, capture_output=True)
    (folder / "agreed.toml").write_text(block("agreed"), encoding="utf-8")
    (folder / "bitter.toml").write_text(block("recipe"), encoding="utf-8")
    (folder / "deliveries.csv").write_text(
        "day,supplier,malt,batch\n2025-01-25,Quillbrook Maltings,Best Pale Ale Malt,Q4163\n", encoding="utf-8"
    )
    shutil.copy(DEMO / "quillbrook-pale-ale-Q4127.pdf", folder / "certificate.pdf")
    return folder


@pytest.fixture
def at_home(home: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    monkeypatch.chdir(home)
    monkeypatch.setenv("HOME", str(home))
    monkeypatch.setenv("ONEBASIS_STORE", str(home / "onebasis"))
    monkeypatch.setenv("COLUMNS", "100")
    return home


def run_python(text: str, folder: Path) -> str:
    script = folder / "snippet.py"
    script.write_text(text, encoding="utf-8")
    out = io.StringIO()
    with redirect_stdout(out):
        runpy.run_path(str(script))
    return out.getvalue()


def test_python_examples_run(at_home: Path) -> None:
    plain = [text for text in python_blocks() if "urlopen" not in text]
    assert len(plain) == 2
    first, second = (run_python(text, at_home) for text in plain)
    assert "moisture 3.2 % accepted" in first
    assert "weight 183.0 kg" in second


@pytest.mark.parametrize("name", [name for name in importer.__all__ if name != "__version__"])
def test_every_public_name_is_documented_and_typed(name: str) -> None:
    found = getattr(importer, name)
    assert found.__doc__
    written_by_itself = dataclasses.is_dataclass(found) and found.__doc__.startswith(f"{name}(")
    assert not written_by_itself
    if inspect.isfunction(found):
        hints = inspect.signature(found)
        assert hints.return_annotation is not inspect.Signature.empty
        assert all(one.annotation is not inspect.Parameter.empty for one in hints.parameters.values())


def test_what_is_raised_can_be_caught_by_its_public_name(tmp_path: Path) -> None:
    with pytest.raises(importer.StoreError):
        importer.load_analyses(tmp_path / "none")
    with pytest.raises(importer.OwnFileError):
        importer.read_agreed(tmp_path / "none.toml")
    with pytest.raises(ValueError, match="No batch in the store is of 2031"):
        importer.make_report([], "2031")


def test_the_script_of_ten_lines_runs(at_home: Path) -> None:
    server = make_server("127.0.0.1", 0, make_app(at_home / "onebasis"), threaded=True)
    thread = threading.Thread(target=server.serve_forever)
    thread.start()
    try:
        script = block("script")
        assert len([line for line in script.splitlines() if line.strip()]) <= 10
        told = run_python(script.replace(":8642", f":{server.server_port}"), at_home)
    finally:
        server.shutdown()
        thread.join()
        server.server_close()
    assert told == "Best Pale Ale Malt Q4163: 183.0 kg\n"


def test_the_picture_of_effects_is_what_the_command_prints(at_home: Path) -> None:
    command = "onebasis batch Q4163 --agreed agreed.toml --recipe-lines bitter.toml"
    assert f"\n{command}\n" in README
    result = CliRunner().invoke(app, shlex.split(command)[1:])
    assert result.exit_code == 0, result.output
    assert block("effects") in result.stdout


@pytest.mark.parametrize(
    "command",
    [
        line
        for text in re.findall(r"```bash\n(.+?)\n```", README, re.DOTALL)
        for line in text.splitlines()
        if re.match(r"onebasis (batch|compare|report|export --recipe)", line)
    ],
)
def test_commands_can_be_copied(at_home: Path, command: str) -> None:
    result = CliRunner().invoke(app, shlex.split(command)[1:])
    assert result.exit_code == 0, result.output


def test_a_batch_on_another_basis_is_read_again_from_the_originals(at_home: Path) -> None:
    """The ASBC scale of diastatic power is °Lintner; no figure of it stands in the store before."""
    result = CliRunner().invoke(app, ["batch", "Q4163", "--basis", "asbc", "--recipe-lines", "bitter.toml"])
    assert result.exit_code == 0, result.output
    assert "on ASBC" in result.stdout
    assert "°Lintner ~" in result.stdout
    assert "weigh 183 kg instead of 180 kg" in result.stdout
