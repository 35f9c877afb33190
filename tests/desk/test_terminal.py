"""The same without a browser: a list, and a CSV that is filled in and taken back."""

from __future__ import annotations

import csv
import json
import socket
import subprocess
import sys
from collections.abc import Callable
from pathlib import Path

import pytest

from importer.commands import review
from importer.commands.run import UsageError
from importer.desk import queue
from importer.store.ledger import Store
from importer.store.selection import Wanted, choose
from tests.desk.conftest import Desk
from tests.desk.sheets import SOUND, changed, draw, take_in, two_columns, uncertain_malt
from tests.desk.test_settling import figure


@pytest.fixture
def folder(tmp_path: Path) -> Path:
    return take_in(
        tmp_path / "store",
        draw(tmp_path / "a.pdf", changed("Moisture", "45")),
        draw(tmp_path / "b.pdf", changed("Colour", "5.2", unit=""), batch="N-1042"),
        draw(tmp_path / "c.pdf", changed("Colour", "5.4", unit=""), batch="?"),
    )


def written(folder: Path, path: Path) -> list[dict[str, str]]:
    assert review.review(review.Request(folder, write=path)) == 0
    with path.open(encoding="utf-8", newline="") as file:
        return list(csv.DictReader(file))


def put(path: Path, rows: list[dict[str, str]], delimiter: str = ",") -> None:
    with path.open("w", encoding="utf-8-sig", newline="") as file:
        writer = csv.DictWriter(file, list(rows[0]), delimiter=delimiter)
        writer.writeheader()
        writer.writerows(rows)


def test_what_waits_is_listed(folder: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert review.review(review.Request(folder, show=True)) == 0
    told = capsys.readouterr().out
    assert "Nordtal Malting · Pale Ale Malt · N-1041" in told
    assert "Moisture: 45 %, printed “Moisture” 45" in told
    assert "45 % is not possible for Moisture." in told
    with Store(folder) as store:
        waiting = queue.count(store.connection)
    assert waiting.heads == 0
    assert f"To settle: {waiting.figures} figures on {waiting.sheets} sheets and 1 entry of heads." in told


def test_rows_without_a_parameter_and_uncertain_names_are_listed(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    folder = take_in(tmp_path / "store", draw(tmp_path / "a.pdf", (*SOUND, ("Zorblax index", "3.7", "%"))))
    assert review.review(review.Request(folder, show=True)) == 0
    told = capsys.readouterr().out
    assert "N-1041 (a.pdf), 1 row: Parameter / Zorblax index: 3.7 %" in told
    assert "Nothing waits." in told


def test_a_name_that_is_not_certain_waits_at_both_desks(
    tmp_path: Path, capsys: pytest.CaptureFixture[str], open_desk: Callable[..., Desk]
) -> None:
    """Whose figures these are is in doubt, though no figure is."""
    folder = take_in(tmp_path / "store", uncertain_malt(tmp_path / "a.pdf"))
    with Store(folder) as store:
        (analysis,) = choose(store, Wanted()).analyses
        assert (analysis.state, analysis.header["malt"].state) == ("accepted", "review")
    assert review.review(review.Request(folder, show=True)) == 0
    assert "To settle: 1 entry of heads." in capsys.readouterr().out
    desk = open_desk(folder)
    page = desk.text("/")
    assert "The head of 1 sheet." in page
    assert desk.client.get(f"/sheet/{analysis.id}").headers["Location"].endswith("/head")
    address = f"/sheet/{analysis.id}/head"
    desk.say(address, revision=desk.revision(address), action="header", **{"h-malt": "Pale Ale Malt"})
    assert "Nothing waits" in desk.text("/")
    assert review.review(review.Request(folder, show=True)) == 0
    assert "Nothing waits." in capsys.readouterr().out


def test_a_column_is_said_in_the_file_too(tmp_path: Path) -> None:
    folder = take_in(tmp_path / "store", two_columns(tmp_path / "a.pdf"))
    path = tmp_path / "waits.csv"
    rows = written(folder, path)
    assert len(rows) == len(SOUND)
    rows[0].update(say="column")
    put(path, rows)
    assert review.review(review.Request(folder, take=path, reviewer="Anna")) == 0
    assert written(folder, path) == []
    put(path, rows)
    assert review.review(review.Request(folder, take=path, reviewer="Anna")) == 0


def test_family_and_basis_are_taken_as_people_write_them(folder: Path, tmp_path: Path) -> None:
    path = tmp_path / "waits.csv"
    rows = [row for row in written(folder, path) if row["parameter"] == "Moisture"]
    rows[0].update(
        say="correct", value="81,5", unit="%", is_parameter="Extract, fine grind, dry", family="ebc", basis="As is"
    )
    put(path, rows)
    assert review.review(review.Request(folder, take=path, reviewer="Anna")) == 0
    with Store(folder) as store:
        said = [json.loads(text)["set"] for (text,) in store.connection.execute("SELECT value FROM corrections")]
    assert said[0]["basis"] == "as-is"
    assert said[0].get("family", "EBC") == "EBC"
    assert review.review(review.Request(folder, take=path, reviewer="Anna")) == 0


def test_what_a_column_settles_along_with_it_is_told(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    """A correction that could not be taken must not go under because another line settles the whole table."""
    folder = take_in(tmp_path / "store", two_columns(tmp_path / "a.pdf"))
    path = tmp_path / "waits.csv"
    rows = written(folder, path)
    rows[0].update(say="column")
    rows[1].update(say="correct", value="3.4 EBC")
    put(path, rows)
    assert review.review(review.Request(folder, take=path, reviewer="Anna")) == 1
    told = capsys.readouterr().err
    assert (
        "“3.4 EBC” is no single result. Write it with a decimal point and without a unit: 4.3, < 1.0 or 80 - 82."
        in told
    )
    assert "line 3: its figure was settled by another line all the same" in told
    assert f"1 taken, 1 not taken. {len(rows) - 1} more figures settled" in told


def test_what_was_taken_already_is_passed_over_the_second_time(
    folder: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    path = tmp_path / "waits.csv"
    rows = written(folder, path)
    for row in rows:
        if row["parameter"] == "Moisture":
            row.update(say="correct", value="4,5", is_parameter="Moisture")
        elif row["row"] == "head:batch":
            row.update(say="correct", value="N-1043")
        elif row["parameter"] == "Colour":
            row.update(say="accept")
    said = sum(1 for row in rows if row["say"])
    put(path, rows)
    assert review.review(review.Request(folder, take=path, reviewer="Anna Holt")) == 0
    capsys.readouterr()
    assert review.review(review.Request(folder, take=path, reviewer="Anna Holt")) == 0
    assert f"0 taken, 0 not taken. {said} already taken." in capsys.readouterr().err
    rows = [row for row in rows if row["parameter"] == "Moisture"]
    rows[0].update(value="4.6")
    put(path, rows)
    assert review.review(review.Request(folder, take=path, reviewer="Anna Holt")) == 1
    told = capsys.readouterr().err
    assert "or an earlier --take of it has" in told
    assert "--write" in told


@pytest.mark.parametrize("delimiter", [",", ";"])
def test_a_filled_in_file_is_taken_back(folder: Path, tmp_path: Path, delimiter: str) -> None:
    path = tmp_path / "waits.csv"
    rows = written(folder, path)
    for row in rows:
        if row["parameter"] == "Moisture":
            row.update(say="correct", value="4,5")
        elif row["row"] == "head:batch":
            row.update(say="Correct", value="N-1043")
        elif row["parameter"] == "Colour":
            row.update(say="accept")
    put(path, rows, delimiter)
    assert review.review(review.Request(folder, take=path, reviewer="Anna Holt")) == 0
    with Store(folder) as store:
        analyses = choose(store, Wanted()).analyses
        assert [one.state for one in analyses] == ["accepted"] * 3
        assert {one.header["batch"].value for one in analyses} == {"N-1041", "N-1042", "N-1043"}
        assert figure(next(a for a in analyses if a.header["batch"].value == "N-1041"), "moisture").value == 4.5
        people = store.connection.execute("SELECT DISTINCT person FROM corrections").fetchall()
        assert people == [("Anna Holt",)]
    assert written(folder, path) == []


def test_what_cannot_be_taken_is_told_by_line_and_the_rest_is_saved(
    folder: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    path = tmp_path / "waits.csv"
    rows = [row for row in written(folder, path) if row["parameter"] in ("Moisture", "Colour")]
    moisture = next(row for row in rows if row["parameter"] == "Moisture")
    moisture.update(say="correct", value="4.5 or 5")
    next(row for row in rows if row["parameter"] == "Colour").update(say="maybe")
    rows[-1].update(say="accept")
    rows.append({**moisture, "sheet": "nothing", "say": "accept"})
    rows.append({**moisture, "say": "correct", "value": ""})
    put(path, rows)
    assert review.review(review.Request(folder, take=path, reviewer="Anna")) == 1
    told = capsys.readouterr().err
    assert "“4.5 or 5” is no single result" in told
    assert "“maybe” is none of" in told
    assert "There is no analysis nothing" in told
    assert "it says correct, but not to what" in told
    assert "1 taken, 4 not taken." in told


def test_an_old_file_takes_nothing_over_a_newer_word(
    folder: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    path = tmp_path / "waits.csv"
    rows = [row for row in written(folder, path) if row["parameter"] == "Moisture"]
    rows[0].update(say="correct", value="4.5")
    put(path, rows)
    assert review.review(review.Request(folder, take=path, reviewer="Anna")) == 0
    rows[0].update(value="4.9")
    put(path, rows)
    assert review.review(review.Request(folder, take=path, reviewer="Bert")) == 1
    assert "Somebody else has changed this sheet" in capsys.readouterr().err
    with Store(folder) as store:
        (analysis,) = choose(store, Wanted(batch="N-1041")).analyses
    assert figure(analysis, "moisture").value == 4.5


@pytest.mark.parametrize("content", ["", "a,b\n1,2\n", "\x00", "sheet;row\n"])
def test_another_file_is_refused_whole(folder: Path, tmp_path: Path, content: str) -> None:
    path = tmp_path / "other.csv"
    path.write_text(content, encoding="utf-8")
    with pytest.raises(UsageError):
        review.review(review.Request(folder, take=path, reviewer="Anna"))
    with pytest.raises(UsageError, match="there is no such file"):
        review.review(review.Request(folder, take=tmp_path / "nowhere.csv", reviewer="Anna"))


def test_text_of_a_sheet_cannot_run_in_a_spreadsheet(tmp_path: Path) -> None:
    rows = changed("Colour", "5.2", unit="", rename="=HYPERLINK(1) Colour")
    folder = take_in(tmp_path / "store", draw(tmp_path / "a.pdf", rows, supplier="=1+1 Malting"))
    for row in written(folder, tmp_path / "waits.csv"):
        assert not [text for text in row.values() if text.startswith(("=", "+", "@"))]


def test_a_port_in_use_is_told_without_numbers_of_errors(folder: Path) -> None:
    with socket.socket() as taken:
        taken.bind(("127.0.0.1", 0))
        taken.listen()
        command = [sys.executable, "-c", "from importer.cli import main; main()", "review", "--no-browser"]
        command += ["--store", str(folder), "--port", str(taken.getsockname()[1])]
        ended = subprocess.run(command, capture_output=True, text=True, timeout=60, check=False)
    assert ended.returncode == 2
    assert ended.stderr.rstrip().endswith("Name another with --port.")
    assert "Errno" not in ended.stderr


def test_nothing_is_taken_without_a_name(folder: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    def nobody() -> str:
        raise OSError("no login")

    written(folder, tmp_path / "waits.csv")
    monkeypatch.setattr("getpass.getuser", nobody)
    with pytest.raises(UsageError, match="Say who you are with --reviewer"):
        review.review(review.Request(folder, take=tmp_path / "waits.csv"))


def test_one_thing_at_a_time_and_only_a_store_that_is_there(folder: Path, tmp_path: Path) -> None:
    with pytest.raises(UsageError, match="at a time"):
        review.review(review.Request(folder, show=True, write=tmp_path / "x.csv"))
    (tmp_path / "empty").mkdir()
    with pytest.raises(UsageError, match="no store"):
        review.review(review.Request(tmp_path / "empty", show=True))
