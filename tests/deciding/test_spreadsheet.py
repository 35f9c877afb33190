"""The feed in a spreadsheet program: numbers arrive as numbers where its README is followed, whatever the locale."""

from __future__ import annotations

import csv
import shutil
import subprocess
from pathlib import Path

import openpyxl
import pytest
from typer.testing import CliRunner

from importer.cli import app
from tests.deciding.conftest import Fill
from tests.deciding.test_commands import pale

OFFICE = shutil.which("soffice")
LANGUAGE_OF_THE_LOCALE, ENGLISH_USA = 0, 1033
SETTINGS = """<?xml version="1.0" encoding="UTF-8"?>
<oor:items xmlns:oor="http://openoffice.org/2001/registry"><item oor:path="/org.openoffice.Setup/L10N">
<prop oor:name="ooSetupSystemLocale" oor:op="fuse"><value>{locale}</value></prop></item></oor:items>
"""
pytestmark = [pytest.mark.slow, pytest.mark.skipif(OFFICE is None, reason="LibreOffice is not installed")]


def opened(table: Path, locale: str, language: int) -> list[dict[str, object]]:
    """The rows as the program holds them after its own import, with the choice of language made in its window."""
    profile = table.parent / locale
    (profile / "user").mkdir(parents=True)
    (profile / "user" / "registrymodifications.xcu").write_text(SETTINGS.format(locale=locale), encoding="utf-8")
    comma, quote, utf8 = ord(","), ord('"'), 76
    subprocess.run(
        [
            str(OFFICE),
            f"-env:UserInstallation={profile.as_uri()}",
            "--headless",
            f"--infilter=Text - txt - csv (StarCalc):{comma},{quote},{utf8},1,,{language},false,false",
            *("--convert-to", "xlsx", "--outdir", str(table.parent), str(table)),
        ],
        check=True,
        capture_output=True,
        timeout=100,
    )
    head, *rows = openpyxl.load_workbook(table.with_suffix(".xlsx")).active.iter_rows(values_only=True)
    return [dict(zip(map(str, head), row, strict=True)) for row in rows]


@pytest.fixture
def table(filled: Fill, tmp_path: Path) -> Path:
    folder = filled(pale("B3", "2025-03-01", 4.1, malt="Märzen-Malz"))
    target = tmp_path / "malts.csv"
    assert CliRunner().invoke(app, ["export", "--recipe", str(target), "--store", str(folder)]).exit_code == 0
    return target


@pytest.mark.parametrize(
    ("locale", "language"), [("en-US", LANGUAGE_OF_THE_LOCALE), ("de-DE", ENGLISH_USA)], ids=["english", "german"]
)
def test_numbers_are_numbers_in_calc(table: Path, locale: str, language: int) -> None:
    (row,) = opened(table, locale, language)
    with table.open(encoding="utf-8", newline="") as file:
        (written,) = csv.DictReader(file)
    assert row["malt"] == "Märzen-Malz"
    numbers = [name for name, text in written.items() if text.replace(".", "", 1).isdigit()]
    assert {"moisture_percent", "extract_fine_as_is_percent", "extract_as_is_l_deg_per_kg"} <= set(numbers)
    assert {name: row[name] for name in numbers} == {name: float(written[name]) for name in numbers}


def test_without_the_choice_of_language_german_settings_make_texts_of_numbers(table: Path) -> None:
    """Why README asks for it."""
    (row,) = opened(table, "de-DE", LANGUAGE_OF_THE_LOCALE)
    assert row["moisture_percent"] == "4.1"
