"""Export: the analyses that are wanted, in the forms of ``read``, and the next time only what is new."""

from __future__ import annotations

import csv
import io
import json
from collections.abc import Callable
from pathlib import Path

import pytest
from typer.testing import CliRunner, Result

from importer.cli import app
from importer.models import Document
from importer.store.ledger import Store
from tests.store.helpers import put, take
from tests.store.standins import READS, sheet

Export = Callable[..., Result]


@pytest.fixture
def export(store_folder: Path, tmp_path: Path) -> Export:
    with Store(store_folder) as store:
        paths = [
            put(tmp_path, "a.pdf", sheet("A 1", supplier="Mälzerei Nord", malt="Pilsner", day="2024-10-05")),
            put(tmp_path, "b.pdf", sheet("B-2", supplier="Sud Malting", malt="Pale Ale Malt", day="2024-11-14")),
            put(tmp_path, "c.pdf", sheet("B-2", supplier="Sud Malting", moisture=4.4, day="2024-11-20")),
            put(tmp_path, "d.pdf", sheet("D", supplier="", day="", state="review")),
        ]
        take(store, *paths)
    return lambda *arguments: CliRunner().invoke(app, ["export", "--store", str(store_folder), *map(str, arguments)])


def exported(result: Result) -> list[str]:
    assert result.exit_code == 0, result.output
    return [analysis.header["batch"].value for analysis in Document.model_validate_json(result.stdout).analyses]


def test_current_analyses_in_the_order_of_their_day(export: Export) -> None:
    assert exported(export("--json", "-")) == ["A 1", "B-2", "D"]
    values = [a["figures"][0]["value"] for a in json.loads(export("--json", "-").stdout)["analyses"]]
    assert values == [4.2, 4.4, 4.2]
    assert exported(export("--json", "-", "--superseded")) == ["A 1", "B-2", "B-2", "D"]


@pytest.mark.parametrize(
    ("choice", "batches"),
    [
        (["--supplier", "malzerei NORD"], ["A 1"]),
        (["--malt", "pale"], ["B-2", "D"]),
        (["--batch", "b2"], ["B-2"]),
        (["--from", "2024-11-01", "--to", "2024-11-30"], ["B-2"]),
        (["--to", "2024-10"], ["A 1"]),
        (["--from", "2024", "--to", "2024"], ["A 1", "B-2"]),
        (["--supplier", "nobody"], []),
        (["--supplier", "%"], []),
        (["--batch", "' OR 1=1 --"], []),
    ],
)
def test_choices(export: Export, choice: list[str], batches: list[str]) -> None:
    assert exported(export("--json", "-", *choice)) == batches


@pytest.mark.parametrize("day", ["2024-13", "2024-02-30", "30.11.2024", "0000"])
def test_a_day_that_is_none_is_refused(export: Export, day: str) -> None:
    result = export("--from", day)
    assert result.exit_code == 2
    assert f"--from: {day} is no day such as 2024-11-30." in result.stderr


def test_the_same_forms_as_read(export: Export, tmp_path: Path) -> None:
    result = export("--csv", tmp_path / "f.csv", "--wide", tmp_path / "w.csv", "--include-review")
    assert result.exit_code == 0
    assert result.stdout == ""
    assert "Wrote 3 analyses" in result.stderr
    long = list(csv.DictReader(io.StringIO((tmp_path / "f.csv").read_text(encoding="utf-8"), newline="")))
    wide = list(csv.DictReader(io.StringIO((tmp_path / "w.csv").read_text(encoding="utf-8"), newline="")))
    assert [row["parameter"] for row in long] == ["moisture"] * 3
    assert [row["moisture_percent"] for row in wide] == ["4.2", "4.4", "4.2"]
    assert (tmp_path / "f.schema.json").exists()
    assert (tmp_path / "w.schema.json").exists()


def test_a_table_where_nothing_else_is_asked_for(export: Export) -> None:
    result = export("--supplier", "nord")
    assert "Pilsner · batch A 1" in result.stdout


def test_since_the_last_export_of_the_same_choice(export: Export, store_folder: Path, tmp_path: Path) -> None:
    target = tmp_path / "new.json"

    def new(*choice: str) -> list[str]:
        assert export("--json", target, "--since-last-export", *choice).exit_code == 0
        return [a["header"]["batch"]["value"] for a in json.loads(target.read_text(encoding="utf-8"))["analyses"]]

    assert new() == ["A 1", "B-2", "D"]
    assert new("--supplier", "sud") == ["B-2"]
    with Store(store_folder) as store:
        take(store, put(tmp_path, "e.pdf", sheet("E", supplier="Sud Malting")))
    assert new() == ["E"]
    assert new("--supplier", "sud") == ["E"]


def test_nothing_new_leaves_the_file_as_it_was(export: Export, tmp_path: Path) -> None:
    target = tmp_path / "n.csv"
    assert export("--csv", target, "--since-last-export").exit_code == 0
    before = target.read_bytes()
    result = export("--csv", target, "--since-last-export")
    assert result.exit_code == 0
    assert result.stderr == f"Nothing new since the last export; {target} was left as it was.\n"
    assert target.read_bytes() == before
    assert exported(export("--json", "-", "--since-last-export")) == []


def test_a_supplier_that_is_not_there_is_told_with_those_that_are(export: Export) -> None:
    result = export("--supplier", "nobody", "--json", "-")
    assert "of a supplier “nobody”. There are: Mälzerei Nord, Sud Malting." in result.stderr
    assert "There are:" not in export("--supplier", "sud", "--batch", "99", "--json", "-").stderr


def test_an_export_that_fails_does_not_count(export: Export, tmp_path: Path) -> None:
    assert export("--json", tmp_path / "nowhere" / "x.json", "--since-last-export").exit_code == 2
    assert exported(export("--json", "-", "--since-last-export")) == ["A 1", "B-2", "D"]


def test_ids_are_stable(export: Export, tmp_path: Path) -> None:
    first = json.loads(export("--json", "-").stdout)
    with Store(tmp_path) as other:
        take(other, *(tmp_path / f"{name}.pdf" for name in "dcba"))
    second = CliRunner().invoke(app, ["export", "--store", str(tmp_path), "--json", "-"])
    assert json.loads(second.stdout) == first


def test_another_basis_is_read_from_the_originals_once(
    export: Export, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    from importer.commands import export as command
    from importer.store.reading import Options

    monkeypatch.setattr(command, "Options", lambda *values: Options(*values, reads=READS))
    document = json.loads(export("--json", "-", "--basis", "iob").stdout)
    assert document["basis"] == "IoB"
    assert [a["mash"] for a in document["analyses"]] == ["isothermal-65"] * 3
    for name in "abcd":
        (tmp_path / f"{name}.pdf").unlink()
    assert json.loads(export("--json", "-", "--basis", "iob").stdout) == document
    gone = export("--json", "-", "--basis", "asbc")
    assert gone.exit_code == 1
    assert "is not there any more" in gone.stderr


def test_strict_and_wrong_usage(export: Export, tmp_path: Path) -> None:
    assert export("--json", "-", "--strict").exit_code == 3
    assert export("--from", "yesterday").exit_code == 2
    missing = CliRunner().invoke(app, ["export", "--store", str(tmp_path / "no such folder")])
    assert missing.exit_code == 2
    assert not (tmp_path / "no such folder").exists()
    (tmp_path / "empty").mkdir()
    assert CliRunner().invoke(app, ["export", "--store", str(tmp_path / "empty")]).exit_code == 2
    assert list((tmp_path / "empty").iterdir()) == []
