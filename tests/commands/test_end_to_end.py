"""The whole program, as a person runs it: the same sheet in every form gives the same figures."""

from __future__ import annotations

import csv
import io
import json
import os
import re
import subprocess
import sys
import zipfile
from pathlib import Path

import openpyxl
import pypdfium2
import pytest
from reportlab.pdfgen.canvas import Canvas

from importer import read_sheet
from importer.intake.ocr import find_program
from importer.models import Document

ROOT = Path(__file__).parents[2]
HEADER = [("Malt", "Pilsner Malt"), ("Batch No.", "PM-24-0311")]
ROWS = [
    ("Parameter", "Result", "Unit"),
    ("Moisture", "4.3", "%"),
    ("Extract, fine, dry basis", "81.4", "%"),
    ("Wort colour", "3.4", "EBC"),
    ("Total protein, dry basis", "10.6", "%"),
    ("Kolbach index", "41.2", "%"),
    ("Friability", "86.5", "%"),
]
EXPECTED = {
    "moisture": 4.3,
    "extract_fine_dry": 81.4,
    "colour": 3.4,
    "total_protein": 10.6,
    "nitrogen_ratio": 41.2,
    "friability": 86.5,
}


def onebasis(*arguments: object, status: int = 0) -> subprocess.CompletedProcess[str]:
    done = subprocess.run(
        [sys.executable, "-m", "importer", *map(str, arguments)],
        cwd=ROOT,
        capture_output=True,
        text=True,
        encoding="utf-8",
        check=False,
        env={**os.environ, "COLUMNS": "100"},
    )
    assert done.returncode == status, done.stderr
    return done


def draw(path: Path) -> None:
    canvas = Canvas(str(path), pagesize=(595, 842))
    for number, (caption, value) in enumerate(HEADER):
        canvas.drawString(60, 780 - 20 * number, f"{caption}:")
        canvas.drawString(160, 780 - 20 * number, value)
    for number, row in enumerate(ROWS):
        for x, text in zip((60, 300, 400), row, strict=True):
            canvas.drawString(x, 700 - 22 * number, text)
    canvas.save()


def make(folder: Path, kind: str) -> Path:
    path = folder / f"sheet.{kind}"
    if kind == "pdf":
        draw(path)
    elif kind == "png":
        draw(folder / "drawn")
        document = pypdfium2.PdfDocument(folder / "drawn")
        document[0].render(scale=300 / 72).to_pil().save(path)
        document.close()
        (folder / "drawn").unlink()
    elif kind == "csv":
        with path.open("w", newline="", encoding="utf-8") as file:
            csv.writer(file, delimiter=";").writerows([*HEADER, (), *ROWS])
    else:
        book = openpyxl.Workbook()
        for row in [*HEADER, (), *ROWS]:
            book.active.append([float(cell) if cell.replace(".", "").isdigit() else cell for cell in row])
        book.save(path)
    return path


@pytest.mark.parametrize("kind", ["pdf", "csv", "xlsx", pytest.param("png", marks=pytest.mark.ocr)])
def test_one_sheet_in_every_form(tmp_path: Path, kind: str) -> None:
    if kind == "png" and find_program() is None:
        pytest.skip("Tesseract is not installed")
    path = make(tmp_path, kind)
    doc = Document.model_validate_json(onebasis("read", path, "--json", "-").stdout)
    assert doc.problems == ()
    (analysis,) = doc.analyses
    figures = {figure.parameter: figure for figure in analysis.figures}
    assert {name: figure.value for name, figure in figures.items()} == EXPECTED
    assert analysis.header["batch"].value == "PM-24-0311"
    assert analysis.header["malt"].value == "Pilsner Malt"
    assert analysis.source.reading == {"pdf": "text", "png": "ocr"}.get(kind, "spreadsheet")
    if kind != "png":
        assert {name for name, figure in figures.items() if figure.state == "accepted"} == set(EXPECTED)
    assert analysis.unrecognised == ()
    assert doc.analyses == read_sheet(path).analyses


def test_the_same_content_gives_the_same_output(tmp_path: Path) -> None:
    path = make(tmp_path, "pdf")
    first = onebasis("read", path, "--json", "-").stdout
    assert onebasis("read", path, "--json", "-").stdout == first
    ids = [analysis["id"] for analysis in json.loads(first)["analyses"]]
    renamed = path.rename(tmp_path / "renamed.pdf")
    assert [a["id"] for a in json.loads(onebasis("read", renamed, "--json", "-").stdout)["analyses"]] == ids


def test_a_folder_with_good_and_bad_files(tmp_path: Path) -> None:
    make(tmp_path, "pdf")
    (tmp_path / "sub").mkdir()
    make(tmp_path / "sub", "csv")
    (tmp_path / "notes.docx").write_bytes(b"PK not really")
    (tmp_path / "empty.pdf").write_bytes(b"")
    done = onebasis("read", tmp_path, "--json", tmp_path / "out.json", "--wide", tmp_path / "out.csv", status=1)
    doc = json.loads((tmp_path / "out.json").read_text(encoding="utf-8"))
    assert [analysis["source"]["file"] for analysis in doc["analyses"]] == ["sheet.pdf", "sheet.csv"]
    assert {problem["file"]: problem["code"] for problem in doc["problems"]} == {
        "notes.docx": "unsupported-type",
        "empty.pdf": "empty",
    }
    assert "[empty]" in done.stdout
    assert "Pilsner Malt · batch PM-24-0311" in done.stdout
    rows = list(csv.DictReader(io.StringIO((tmp_path / "out.csv").read_text(encoding="utf-8"), newline="")))
    assert [row["extract_fine_dry_percent"] for row in rows] == ["81.4", "81.4"]
    again = onebasis("read", tmp_path, "--json", "-", status=1)
    assert again.stdout == (tmp_path / "out.json").read_text(encoding="utf-8")


def test_every_basis(tmp_path: Path) -> None:
    path = make(tmp_path, "pdf")
    for basis, unit in (("ebc", "EBC"), ("asbc", "°L")):
        doc = json.loads(onebasis("read", path, "--basis", basis, "--json", "-").stdout)
        (colour,) = [f for f in doc["analyses"][0]["figures"] if f["parameter"] == "colour"]
        assert colour["unit"] == unit


def test_the_demo_reads_everything_it_ships() -> None:
    doc = json.loads(onebasis("demo", "--json", "-").stdout)
    assert doc["problems"] == []
    assert doc["analyses"]


def test_the_picture_in_the_readme_is_what_the_program_prints() -> None:
    """When it changes on purpose: COLUMNS=100 onebasis read fixtures/demo/quillbrook-pale-ale-Q4127.pdf."""
    readme = (ROOT / "README.md").read_text(encoding="utf-8")
    (picture,) = re.findall(r"<!-- picture -->\n```text\n\$ onebasis read (\S+)\n(.+?)\n```", readme, re.DOTALL)
    assert onebasis("read", picture[0]).stdout.strip() == picture[1]


def test_emails_and_archives_are_pointed_to_the_commands_that_take_them(tmp_path: Path) -> None:
    (tmp_path / "Bulletin.eml").write_text("From: a@example.org\nTo: b@example.org\nSubject: Malt\n\nhello\n")
    with zipfile.ZipFile(tmp_path / "sheets.zip", "w") as archive:
        archive.writestr("a.csv", "Moisture;4.2;%")
    with zipfile.ZipFile(tmp_path / "letter.docx", "w") as archive:
        archive.writestr("[Content_Types].xml", "<Types/>")
        archive.writestr("word/document.xml", "<w/>")
    text = onebasis("read", tmp_path, status=1).stdout
    text = " ".join(text.split())
    assert "Bulletin.eml is an email. `onebasis inbox` or `onebasis bulk` takes it as it is." in text
    assert "sheets.zip is a ZIP archive. `onebasis inbox` or `onebasis bulk` takes it as it is." in text
    assert re.search(r"letter\.docx .{0,60}save it as PDF", text)
    assert "letter.docx is a ZIP" not in text


def test_labels() -> None:
    data = json.loads(onebasis("label", "Moisture", "Eiweißlösungsgrad", "Lunch menu", "--json").stdout)
    taken = {entry["text"]: (entry["parameter"], entry["state"]) for entry in data["labels"]}
    assert taken["Moisture"] == ("moisture", "sure")
    assert taken["Eiweißlösungsgrad"] == ("nitrogen_ratio", "sure")
    assert taken["Lunch menu"] == (None, "unknown")
    assert all(set(rival) == {"parameter", "score"} for entry in data["labels"] for rival in entry["rivals"])
    told = onebasis("label", "Moisture", "--unit", "%", "--family", "iob").stdout
    assert "moisture" in told
    assert "sure" in told
    assert "florins" in onebasis("label", "Moisture", "--unit", "florins", status=2).stderr
