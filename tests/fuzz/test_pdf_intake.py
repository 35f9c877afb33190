"""PDF files by chance: damaged bytes, and drawings that no program would make."""

from __future__ import annotations

import io
from functools import cache

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from PIL import Image
from reportlab.pdfgen.canvas import Canvas

from importer.errors import SheetError
from importer.intake.pdf import read_pdf
from importer.words import Page
from tests.fuzz.damage import altered, changes
from tests.sheets.make import make_sheet


def _blind(image: Image.Image, number: int, dpi: float | None) -> Page:
    """Stands for the optical reader, which is not what is tested here."""
    return Page(number, 10, 10, (), "ocr")


@cache
def _good(which: int) -> bytes:
    return make_sheet(20 + which, ("ruled-grid", "unruled", "several-pages")[which], "en").pdf_bytes


@settings(deadline=None, max_examples=60)
@given(st.integers(0, 2), changes)
def test_a_damaged_file_gives_pages_or_a_reason(which: int, how: list[tuple[str, float, int, bytes]]) -> None:
    pages, problem = _pages_or_problem(altered(_good(which), how))
    assert pages or "sheet.pdf" in problem
    for page in pages:
        _is_sound(page)


def _pages_or_problem(data: bytes) -> tuple[list[Page], str]:
    pages: list[Page] = []
    try:
        for page in read_pdf(data, "sheet.pdf", _blind):
            pages.append(page)
    except SheetError as problem:
        return pages, str(problem)
    return pages, ""


def _is_sound(page: Page) -> None:
    assert page.width > 0
    assert page.height > 0
    for word in page.words:
        assert word.text
        assert not word.text.isspace()
        assert word.x0 <= word.x1
        assert word.top <= word.bottom
        # What lies outside of the page is no part of it.
        assert word.x1 >= 0
        assert word.bottom >= 0
        assert word.x0 <= page.width
        assert word.top <= page.height


strokes = st.tuples(
    st.sampled_from(("text", "text", "text", "box", "line", "turned", "white", "unseen")),
    st.floats(-100, 700),
    st.floats(-100, 900),
    st.floats(0.2, 80),
    st.text(alphabet="Moisture 4.3%1²½éœ水\t\x00", min_size=1, max_size=12),
    st.integers(-180, 180),
)


@settings(deadline=None, max_examples=50)
@given(st.lists(strokes, max_size=25), st.sampled_from((0, 90, 180, 270)))
def test_any_drawing_gives_sound_pages(ops: list[tuple[str, float, float, float, str, int]], turn: int) -> None:
    out = io.BytesIO()
    canvas = Canvas(out, pagesize=(595, 842))
    canvas.setPageRotation(turn)
    for kind, x, y, size, text, degrees in ops:
        _draw(canvas, kind, x, y, size, text, degrees)
    canvas.showPage()
    canvas.save()
    for page in read_pdf(out.getvalue(), "sheet.pdf", _blind):
        if page.reading == "text":
            _is_sound(page)


def _draw(canvas: Canvas, kind: str, x: float, y: float, size: float, text: str, degrees: int) -> None:
    canvas.saveState()
    if kind == "box":
        canvas.setFillGray(0.9 if degrees > 0 else 0.1)
        canvas.rect(x, y, size * 5, size, stroke=1, fill=1)
    elif kind == "line":
        canvas.line(x, y, x + size * 4, y + degrees)
    else:
        canvas.setFillGray(1 if kind == "white" else 0)
        canvas.translate(x, y)
        canvas.rotate(degrees if kind == "turned" else 0)
        piece = canvas.beginText(0, 0)
        piece.setFont("Helvetica", size)
        piece.setTextRenderMode(3 if kind == "unseen" else 0)
        piece.textOut(text)
        canvas.drawText(piece)
    canvas.restoreState()


@pytest.mark.parametrize(
    "data", [b"%PDF-1.4", b"%PDF-1.4\n%%EOF", b"%PDF-1.4\ntrailer<</Root 1 0 R>>\nstartxref\n0\n%%EOF"]
)
def test_a_file_of_a_head_alone_is_a_problem(data: bytes) -> None:
    with pytest.raises(SheetError, match=r"sheet\.pdf"):
        list(read_pdf(data, "sheet.pdf", _blind))
