"""Files as they should not be: each gives a sheet or a problem with a remedy, and the next file is read as ever."""

from __future__ import annotations

import io
import os
import random
import sys
from collections.abc import Iterator
from pathlib import Path

import openpyxl
import pytest
from PIL import Image
from reportlab.lib.pdfencrypt import StandardEncryption
from reportlab.pdfgen.canvas import Canvas

from importer.guard import GuardedReader
from importer.models import Sheet

ROWS = [("Moisture", "4.2", "%"), ("Extract, fine, dry", "81.2", "%"), ("Colour", "3.5", "EBC"), ("pH", "5.94", "")]


@pytest.fixture(scope="module")
def reader() -> Iterator[GuardedReader]:
    with GuardedReader(seconds=60) as reader:
        yield reader


def pdf(pages: int = 1, size: tuple[float, float] = (595, 842), password: str | None = None) -> bytes:
    out = io.BytesIO()
    canvas = Canvas(out, pagesize=size, encrypt=StandardEncryption(password, canPrint=0) if password else None)
    for _ in range(pages):
        for number, row in enumerate(ROWS):
            for x, text in zip((60, 300, 400), row, strict=True):
                canvas.drawString(x, 700 - 20 * number, text)
        canvas.showPage()
    canvas.save()
    return out.getvalue()


def codes(sheet: Sheet) -> list[str]:
    return [problem.code for problem in sheet.problems]


def read(reader: GuardedReader, path: Path, data: bytes) -> Sheet:
    path.write_bytes(data)
    sheet = reader.read(path)
    assert sheet.analyses or sheet.problems
    for problem in sheet.problems:
        assert problem.file == path.name
        assert problem.message
        assert "Traceback" not in problem.message
        assert "unexpected" not in problem.message, problem.message
    return sheet


def test_the_good_file_is_good(reader: GuardedReader, tmp_path: Path) -> None:
    sheet = read(reader, tmp_path / "good.pdf", pdf())
    assert codes(sheet) == []
    assert {figure.parameter for figure in sheet.analyses[0].figures} >= {"moisture", "colour", "wort_ph"}


def test_locked(reader: GuardedReader, tmp_path: Path) -> None:
    sheet = read(reader, tmp_path / "locked.pdf", pdf(password="secret"))
    assert codes(sheet) == ["password-protected"]


@pytest.mark.parametrize("data", [b"", b"\0" * 10_000, b"\n\n"])
def test_empty(reader: GuardedReader, tmp_path: Path, data: bytes) -> None:
    assert codes(read(reader, tmp_path / "empty.pdf", data)) == ["empty"]


@pytest.mark.parametrize("share", range(5, 100, 10))
def test_cut_off(reader: GuardedReader, tmp_path: Path, share: int) -> None:
    data = pdf()
    sheet = read(reader, tmp_path / "cut.pdf", data[: len(data) * share // 100])
    assert set(codes(sheet)) <= {"damaged", "no-figures-found", "empty", "unsupported-type"}


@pytest.mark.parametrize("seed", range(20))
def test_altered_bytes(reader: GuardedReader, tmp_path: Path, seed: int) -> None:
    chance = random.Random(seed)
    data = bytearray(pdf())
    for _ in range(1 + seed):
        data[chance.randrange(len(data))] = chance.randrange(256)
    read(reader, tmp_path / "altered.pdf", bytes(data))


def test_noise_behind_a_header(reader: GuardedReader, tmp_path: Path) -> None:
    noise = random.Random(1).randbytes(20_000)
    assert codes(read(reader, tmp_path / "noise.pdf", b"%PDF-1.7\n" + noise)) == ["damaged"]
    for name, header in {"a.png": b"\x89PNG\r\n\x1a\n", "a.jpg": b"\xff\xd8\xff\xe0", "a.tif": b"II*\0"}.items():
        assert codes(read(reader, tmp_path / name, header + noise)) == ["damaged"]
    assert codes(read(reader, tmp_path / "a.xlsx", b"PK\x03\x04" + noise)) == ["damaged"]


def test_too_many_pages(reader: GuardedReader, tmp_path: Path) -> None:
    assert codes(read(reader, tmp_path / "long.pdf", pdf(pages=201))) == ["too-large"]


def test_a_page_the_size_of_a_field(reader: GuardedReader, tmp_path: Path) -> None:
    read(reader, tmp_path / "field.pdf", pdf(size=(200_000, 200_000)))


def test_a_picture_that_unpacks_to_too_much(reader: GuardedReader, tmp_path: Path) -> None:
    out = io.BytesIO()
    Image.new("1", (20_000, 10_000)).save(out, "PNG")
    assert codes(read(reader, tmp_path / "bomb.png", out.getvalue())) == ["too-large"]


def test_pages_that_contain_each_other(reader: GuardedReader, tmp_path: Path) -> None:
    loop = (
        b"%PDF-1.4\n1 0 obj<</Type/Catalog/Pages 2 0 R>>endobj\n2 0 obj<</Type/Pages/Kids[2 0 R]/Count 1>>endobj\n"
        b"trailer<</Root 1 0 R>>\n%%EOF"
    )
    read(reader, tmp_path / "loop.pdf", loop)


def test_no_figures(reader: GuardedReader, tmp_path: Path) -> None:
    out = io.BytesIO()
    canvas = Canvas(out)
    canvas.drawString(60, 700, "Dear brewer, thank you for your order.")
    canvas.save()
    assert codes(read(reader, tmp_path / "letter.pdf", out.getvalue())) == ["no-figures-found"]


@pytest.mark.parametrize("name", ["notes.txt", "letter.docx", "sheet"])
def test_other_types(reader: GuardedReader, tmp_path: Path, name: str) -> None:
    assert codes(read(reader, tmp_path / name, b"Dear brewer,\nplease call.\n")) == ["unsupported-type"]


@pytest.mark.parametrize("name", ["sheet.png", "sheet", "sheet.xlsx", "two\nlines.pdf", "a\x1b[2J.pdf", "Prüf.pdf"])
def test_the_name_does_not_matter(reader: GuardedReader, tmp_path: Path, name: str) -> None:
    if sys.platform == "win32" and not name.isprintable():
        pytest.skip("no such names on Windows")
    path = tmp_path / name
    path.write_bytes(pdf())
    sheet = reader.read(path)
    assert sheet.problems == ()
    assert sheet.analyses[0].source.file.isprintable()


@pytest.mark.skipif(sys.platform == "win32", reason="pipes and devices")
def test_pipes_and_devices(reader: GuardedReader, tmp_path: Path) -> None:
    os.mkfifo(tmp_path / "pipe.pdf")
    assert codes(reader.read(tmp_path / "pipe.pdf")) == ["unsupported-type"]
    assert codes(reader.read(Path("/dev/zero"))) == ["unsupported-type"]


def test_what_is_gone_meanwhile(reader: GuardedReader, tmp_path: Path) -> None:
    assert codes(reader.read(tmp_path / "gone.pdf")) == ["damaged"]


def test_a_workbook_full_of_formulas_and_nothing_else(reader: GuardedReader, tmp_path: Path) -> None:
    book = openpyxl.Workbook()
    for row in ROWS:
        book.active.append(row)
    for row in range(1, 200):
        book.active.cell(row + 10, 5, f"=SUM(A1:A{row})")
    out = io.BytesIO()
    book.save(out)
    sheet = read(reader, tmp_path / "formulas.xlsx", out.getvalue())
    assert all(figure.state == "review" for analysis in sheet.analyses for figure in analysis.figures)
