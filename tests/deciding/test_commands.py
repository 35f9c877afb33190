"""`batch`, `compare`, `export --recipe`, `export --parquet` and `report` from the command line."""

from __future__ import annotations

import csv
import json
import sqlite3
import sys
from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest
from typer.testing import CliRunner, Result

from importer import batch_meaning, load_analyses, read_recipe
from importer.cli import app
from importer.commands import stored
from importer.models import Analysis, Problem, Sheet
from importer.output.words import CAUTION
from tests.deciding.conftest import Fill
from tests.deciding.factory import analysis, figure

Run = Callable[..., Result]
AGREED = '[[agreed]]\nmalt = "Pale Ale Malt"\nlimits = [{ parameter = "moisture", max = 4.2 }]\n'
RECIPE = """\
recipe = "Bitter"
round = 0.5
[[line]]
malt = "Pale Ale Malt"
kg = 100
extract = { value = 77.8, unit = "%", family = "EBC", grind = "fine" }
"""


def pale(batch: str, day: str, moisture: float = 4.0, **more: Any) -> Analysis:
    return analysis(
        figure("moisture", moisture),
        figure("extract_fine_as_is", 76.2),
        figure("ndma", 1.0, "µg/kg", bound="<", flags=("food-safety",)),
        batch=batch,
        day=day,
        **more,
    )


@pytest.fixture
def run(filled: Fill) -> Run:
    folder = filled(pale("B1", "2025-01-01"), pale("B2", "2025-02-01", 4.9), pale("B3", "2025-03-01", 4.1))
    return lambda *arguments: CliRunner().invoke(app, [*map(str, arguments), "--store", str(folder)])


@pytest.fixture
def files(tmp_path: Path) -> Path:
    (tmp_path / "agreed.toml").write_text(AGREED, encoding="utf-8")
    (tmp_path / "recipe.toml").write_text(RECIPE, encoding="utf-8")
    return tmp_path


def test_batch_says_everything_in_one_table(run: Run, files: Path) -> None:
    result = run("batch", "B2", "--agreed", files / "agreed.toml", "--recipe-lines", files / "recipe.toml")
    assert result.exit_code == 0, result.output
    shown = " ".join(result.stdout.split())
    assert "Pale Ale Malt · batch B2" in shown
    assert "held against the last batch B1" in shown
    assert "against last batch B1: +0.9 %, more than the method's own scatter (±0.45)" in shown
    assert "max 4.2 % outside" in shown
    assert "weigh 102 kg instead of 100 kg" in shown
    assert "100 kg × 77.8 ÷ 76.2 %" in shown
    assert "NDMA < 1" in shown
    assert CAUTION in shown


def test_batch_as_json(run: Run, files: Path) -> None:
    result = run("batch", "B3", "--json", "--mean", 2, "--agreed", files / "agreed.toml")
    (found,) = json.loads(result.stdout)["batches"]
    assert found["against"] == ["last batch B2", "mean of 2 before"]
    assert found["agreed"][0]["standing"] == "within"
    moisture = next(row for row in found["rows"] if row["parameter"] == "moisture")
    assert [d and d["verdict"] for d in moisture["differences"]] == [None, "different", "within-scatter"]


def test_nothing_is_read_but_what_is_needed(run: Run, filled: Fill, files: Path) -> None:
    """Sheets of other malts cannot even be read here; those of the recipe's malts are there, of whichever supplier."""
    crystal = pale("C1", "2025-02-02", malt="Crystal", supplier="Other Maltings")
    folder = filled(crystal, pale("O1", "2025-02-03", malt="Other Malt"), pale("B9", "2025-02-04", supplier="Else"))
    recipe = files / "two.toml"
    recipe.write_text(RECIPE + RECIPE.partition("round = 0.5\n")[2].replace("Pale Ale Malt", "Crystal"), "utf-8")
    everything = load_analyses(folder)
    with sqlite3.connect(folder / "onebasis.sqlite") as store:
        store.execute("UPDATE analyses SET json = 'unreadable' WHERE batch = 'O1'")
    result = run("batch", "B3", "--recipe-lines", recipe, "--json")
    assert result.exit_code == 0, result.output
    (found,) = json.loads(result.stdout)["batches"]
    (chosen,) = (one for one in everything if one.header["batch"].value == "B3")
    meant = batch_meaning(chosen, everything, recipe=read_recipe(recipe))
    assert found == json.loads(meant.model_dump_json(by_alias=True))
    assert "Crystal C1: weigh 102 kg" in str(found["effects"])
    assert run("compare", "B1", crystal.id[:6]).exit_code == 0
    assert run("compare", "B1", crystal.id[:5]).exit_code == 2, "an id may be shortened to six characters"


def test_compare(run: Run) -> None:
    result = run("compare", "B1", "B3", "B2")
    assert result.exit_code == 0, result.output
    assert "C against A: +0.9 %" in " ".join(result.stdout.split())
    found = json.loads(run("compare", "B1", "B2", "--json").stdout)["comparison"]
    assert [one["batch"] for one in found["analyses"]] == ["B1", "B2"]


@pytest.mark.parametrize(
    ("arguments", "told"),
    [
        (("batch", "B9"), "There is no batch or id 'B9' in the store"),
        (("compare", "B1"), "two batches or more"),
        (("compare", "B1", "B1"), "named twice"),
        (("batch", "B1", "--agreed", "none.toml"), "none.toml: there is no such file"),
        (("batch", "B1", "--recipe-lines", "none.toml"), "none.toml: there is no such file"),
        (("export", "--recipe", "x.json"), "needs the name of the CSV file"),
        (("export", "--recipe", "x.csv", "--pin", "Pale"), "is not like"),
        (("export", "--recipe", "x.csv", "--pin", "Pale=B1"), "no malt 'Pale'"),
        (("export", "--recipe", "x.csv", "--json", "y.json"), "stands alone"),
        (("export", "--recipe", "x.csv", "--basis", "iob"), "takes no --basis"),
        (("export", "--pin", "Pale=B1"), "goes with --recipe"),
        (("report", "2031", "--html", "x.html"), "No batch in the store is of 2031"),
        (("report", "2025", "--html", "no/such/x.html"), "there is no folder no/such"),
        (("report", "2025", "--html", "x.html", "--deliveries", "none.csv"), "none.csv: there is no such file"),
    ],
)
def test_what_cannot_be_is_said(
    run: Run, tmp_path: Path, monkeypatch: pytest.MonkeyPatch, arguments: tuple[str, ...], told: str
) -> None:
    monkeypatch.chdir(tmp_path)
    result = run(*arguments)
    assert result.exit_code == 2
    assert told in result.output
    assert "Traceback" not in result.output
    assert not list(tmp_path.glob("x.*"))


def test_two_batches_with_one_number_are_told_apart_by_id(run: Run, filled: Fill) -> None:
    other = pale("B1", "2025-01-05", supplier="Other Maltings")
    filled(other)
    result = run("batch", "B1")
    assert result.exit_code == 2
    assert "2 analyses of batch B1" in result.output
    assert other.id in result.output
    assert run("batch", other.id).exit_code == 0


def test_an_agreement_that_holds_for_no_sheet_is_told(run: Run, files: Path) -> None:
    agreed = files / "agreed.toml"
    agreed.write_text('[[agreed]]\nsupplier = "Nordtal"\n' + AGREED.split("\n", 1)[1], encoding="utf-8")
    result = run("batch", "B2", "--agreed", agreed)
    assert "has nothing for Pale Ale Malt of Nordtal Malting" in result.stderr
    written = run("report", "2025", "--html", files / "r.html", "--agreed", agreed)
    assert "no sheet is of Pale Ale Malt of Nordtal. " in written.stderr
    assert "There is Pale Ale Malt of Nordtal Malting." in written.stderr
    agreed.write_text(AGREED, encoding="utf-8")
    assert "no sheet is of" not in run("report", "2025", "--html", files / "r.html", "--agreed", agreed).stderr
    assert "has nothing for" not in run("batch", "B2", "--agreed", agreed).stderr


def test_no_store(tmp_path: Path) -> None:
    for command in (["batch", "B1"], ["compare", "B1", "B2"], ["report", "2025", "--html", "x.html"], ["serve"]):
        result = CliRunner().invoke(app, [*command, "--store", str(tmp_path / "none")])
        assert result.exit_code == 2
        assert "There is no store" in result.output
    assert (
        "B1 is no file, and no batch of a store."
        in CliRunner().invoke(app, ["batch", "B1", "--store", str(tmp_path / "none")]).output
    )


def test_an_empty_store(filled: Fill, tmp_path: Path) -> None:
    folder = str(filled())
    assert CliRunner().invoke(app, ["batch", "B1", "--store", folder]).exit_code == 2
    target = tmp_path / "malts.csv"
    assert CliRunner().invoke(app, ["export", "--recipe", str(target), "--store", folder]).exit_code == 0
    assert len(target.read_text(encoding="utf-8").splitlines()) == 1


def test_sheets_are_taken_as_they_are(run: Run, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    class Reader:
        def __enter__(self) -> Reader:
            return self

        def __exit__(self, *_: object) -> None:
            pass

        def read(self, path: Path, basis: str) -> Sheet:
            if path.name == "bad.pdf":
                return Sheet(problems=(Problem(file="bad.pdf", code="empty", message="bad.pdf is empty."),))
            return Sheet(analyses=(pale("NEW", "2025-05-01", 4.0),))

    monkeypatch.setattr("importer.guard.GuardedReader", Reader)
    sheet, bad = tmp_path / "new.pdf", tmp_path / "bad.pdf"
    sheet.write_bytes(b"x")
    bad.write_bytes(b"")
    result = run("batch", sheet)
    assert "held against the last batch B3" in result.stdout
    assert run("compare", sheet, "B1").exit_code == 0
    result = run("batch", bad)
    assert result.exit_code == 2
    assert "bad.pdf is empty. [empty]" in result.output
    assert stored.has_store(tmp_path / "none") is False


def test_text_of_a_sheet_steers_no_terminal(filled: Fill) -> None:
    folder = filled(pale("B\x1b[31m1", "2025-01-01", malt="Pale\x1b]0;x\x07\u202e"))
    result = CliRunner().invoke(app, ["batch", "B[31m1", "--store", str(folder)])
    assert result.exit_code == 0, result.output
    assert "\x1b" not in result.stdout
    assert "\u202e" not in result.stdout


def test_described_results_steer_no_terminal(filled: Fill) -> None:
    texts = ("normal", "musty\x1b[2J\u202e")
    folder = filled(*(analysis(figure("odour", None, None, text=t), batch=f"B{n}") for n, t in enumerate(texts)))
    result = CliRunner().invoke(app, ["compare", "B0", "B1", "--store", str(folder)])
    assert result.exit_code == 0, result.output
    assert "musty" in result.stdout
    assert "\x1b" not in result.stdout
    assert "\u202e" not in result.stdout


@pytest.mark.parametrize(
    ("package", "command", "told"),
    [
        ("pyarrow", ("export", "--parquet", "a.parquet"), "onebasis[parquet]"),
        ("waitress", ("serve",), "onebasis[serve]"),
        ("flask", ("serve",), "onebasis[serve]"),
    ],
)
def test_a_package_that_is_not_installed_is_named(
    run: Run, tmp_path: Path, monkeypatch: pytest.MonkeyPatch, package: str, command: tuple[str, ...], told: str
) -> None:
    monkeypatch.chdir(tmp_path)
    for name in [name for name in sys.modules if name.partition(".")[0] == package or name == "importer.serving.app"]:
        monkeypatch.delitem(sys.modules, name)
    monkeypatch.setitem(sys.modules, package, None)
    result = run(*command)
    assert result.exit_code in (1, 2)
    assert told in result.output
    assert not list(tmp_path.glob("a.*"))


# ---------------------------------------------------------------- feed and report


def test_the_feed_is_three_files_and_tells_what_changed(run: Run, filled: Fill, tmp_path: Path) -> None:
    target = tmp_path / "malts.csv"
    result = run("export", "--recipe", target)
    assert result.exit_code == 0, result.output
    with target.open(encoding="utf-8", newline="") as stream:
        (row,) = csv.DictReader(stream)
    assert (row["batch"], row["moisture_percent"]) == ("B3", "4.1")
    assert json.loads((tmp_path / "malts.json").read_text(encoding="utf-8"))["malts"][0]["batch"] == "B3"
    assert (tmp_path / "malts.schema.json").is_file()
    assert "others than those handed out" not in result.output

    filled(pale("B4", "2025-04-01", 4.6))
    again = run("export", "--recipe", tmp_path / "elsewhere.csv")
    assert "Pale Ale Malt (B3 → B4), moisture_percent: 4.1 → 4.6" in again.output
    assert json.loads((tmp_path / "elsewhere.json").read_text(encoding="utf-8"))["changes"][0]["now"] == 4.6
    assert "others than those" not in run("export", "--recipe", "-").stderr


def test_a_pin_holds_against_a_later_batch(run: Run, tmp_path: Path) -> None:
    result = run("export", "--recipe", tmp_path / "m.csv", "--pin", "pale ale malt=B1")
    assert result.exit_code == 0, result.output
    assert json.loads((tmp_path / "m.json").read_text(encoding="utf-8"))["malts"][0]["pinned"] is True


def test_parquet_has_the_rows_of_the_csv(run: Run, tmp_path: Path) -> None:
    parquet = pytest.importorskip("pyarrow.parquet")
    assert run("export", "--parquet", tmp_path / "a.parquet").exit_code == 0
    assert run("export", "--csv", tmp_path / "a.csv").exit_code == 0
    table = parquet.read_table(tmp_path / "a.parquet")
    with (tmp_path / "a.csv").open(encoding="utf-8", newline="") as stream:
        rows = list(csv.DictReader(stream))
    assert table.column_names == list(rows[0])
    assert [str(v) if v is not None else "" for v in table["value"].to_pylist()] == [row["value"] for row in rows]
    assert table.schema.metadata[b"basis"] == b"EBC"
    assert table["batch"].to_pylist() == [row["batch"] for row in rows]


def test_report_writes_one_file(run: Run, files: Path) -> None:
    target = files / "2025.html"
    result = run("report", "2025", "--html", target, "--agreed", files / "agreed.toml")
    assert result.exit_code == 0, result.output
    assert "Outside what was agreed: 1." in result.output
    page = target.read_text(encoding="utf-8")
    assert page.startswith("<!doctype html>")
    assert "batch B2" in page
    assert [path.name for path in files.glob("*.html")] == ["2025.html"]


def test_a_report_says_which_of_folder_or_missing_folder_is_wrong(run: Run, files: Path) -> None:
    result = run("report", "2025", "--html", files)
    assert "is a folder. Give the name of a file." in result.output
    result = run("report", "2025", "--html", files / "nodir" / "r.html")
    assert "there is no folder" in result.output
    assert "is a folder. Give" not in result.output


def test_own_files_name_their_tables_as_they_are_written(run: Run, files: Path) -> None:
    (files / "recipe.toml").write_text('recipe = "X"\n[[line]]\nkg = 5\n', encoding="utf-8")
    assert "recipe.toml, [[line]] 1: give either" in run("batch", "B2", "--recipe-lines", files / "recipe.toml").output
    (files / "d.csv").write_text("date,malt\n", encoding="utf-8")
    result = run("report", "2025", "--html", files / "r.html", "--deliveries", files / "d.csv")
    assert "the head lacks day, supplier, batch. Its columns are: date, malt." in result.output
