"""Files inside a PDF: nothing of them is read, and that is said where they may be sheets."""

from __future__ import annotations

import ctypes
import io
from pathlib import Path

import pypdfium2 as pdfium2
import pypdfium2.raw as pdfium_c
import pytest
from reportlab.pdfgen.canvas import Canvas

from importer import read_sheet


def pdf(*rows: tuple[str, str, str]) -> bytes:
    out = io.BytesIO()
    canvas = Canvas(out)
    canvas.drawString(60, 760, "Nordtal Malting, Batch: N-1")
    for number, row in enumerate(rows):
        for x, text in zip((60, 300, 400), row, strict=True):
            canvas.drawString(x, 700 - 20 * number, text)
    canvas.save()
    return out.getvalue()


SHEET = pdf(("Moisture", "4.2", "%"), ("Extract, fine, dry", "81.2", "%"), ("Colour", "3.5", "EBC"))


def carrying(data: bytes, *names: str, pinned: bool = False) -> bytes:
    """The PDF with files in its list, or behind pins on its first page."""
    document = pdfium2.PdfDocument(data)
    page = document[0]
    for name in names:
        if not pinned:
            document.new_attachment(name).set_data(SHEET)
            continue
        annotation = pdfium_c.FPDFPage_CreateAnnot(page, pdfium_c.FPDF_ANNOT_FILEATTACHMENT)
        wide = name.encode("utf-16-le") + b"\0\0"
        pointer = ctypes.cast(ctypes.create_string_buffer(wide), ctypes.POINTER(ctypes.c_ushort))
        assert pdfium_c.FPDFAnnot_AddFileAttachment(annotation, pointer)
        pdfium_c.FPDFPage_CloseAnnot(annotation)
    out = io.BytesIO()
    page.close()
    document.save(out)
    return out.getvalue()


def read(tmp_path: Path, data: bytes) -> tuple[int, list[tuple[str, str]]]:
    path = tmp_path / "sheet.pdf"
    path.write_bytes(data)
    sheet = read_sheet(path)
    return len(sheet.analyses), [(problem.code, problem.message) for problem in sheet.problems]


@pytest.mark.parametrize("pinned", [False, True], ids=["in the list", "behind pins"])
def test_sheets_inside_a_sheet_are_told_of(tmp_path: Path, pinned: bool) -> None:
    analyses, problems = read(tmp_path, carrying(SHEET, "cert Ä.pdf", "lab.XLSX", pinned=pinned))
    assert analyses == 1
    ((code, message),) = problems
    assert code == "unsupported-type"
    assert "not read: cert Ä.pdf, lab.XLSX. Open it in a PDF program" in message


def test_a_cover_page_with_nothing_but_files_inside(tmp_path: Path) -> None:
    analyses, problems = read(tmp_path, carrying(pdf(), *(f"{n}.pdf" for n in range(9))))
    assert analyses == 0
    ((code, message),) = problems
    assert code == "unsupported-type"
    assert "3.pdf, 4.pdf and 4 more" in message


def test_the_data_of_an_invoice_and_the_like_are_no_sheets(tmp_path: Path) -> None:
    assert read(tmp_path, carrying(SHEET, "factur-x.xml", "logo.svg")) == (1, [])


def test_names_of_files_inside_are_safe_to_show(tmp_path: Path) -> None:
    _, ((_, message),) = read(tmp_path, carrying(SHEET, "../../\x07[2Jx\n.pdf", "../../\x1b[2Jno ending"))
    assert message.isprintable()
    assert "../" not in message
