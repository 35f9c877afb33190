"""Text as browsers and layout programs set it: letter by letter, with ligatures, upright faces slanted into italics."""

from __future__ import annotations

import io

import pytest
from PIL import Image
from reportlab.pdfbase import pdfmetrics
from reportlab.pdfbase.ttfonts import TTFont
from reportlab.pdfgen.canvas import Canvas

from importer.intake.pdf import read_pdf
from importer.intake.pdf_text import Char, _parts
from importer.words import Box, Page

FACE = "Set"
LIGATURES = {"fi": "\ufb01", "ffi": "\ufb03", "ff": "\ufb00"}


def _never(image: Image.Image, number: int, dpi: float | None) -> Page:
    raise AssertionError("the page was taken for a picture")


def _page(lines: list[str], slant: float = 0.0) -> Page:
    """A page of lines, each letter a piece of text of its own; ligatures stand for their letters."""
    buffer = io.BytesIO()
    canvas = Canvas(buffer, pagesize=(500, 500), pageCompression=0)
    pdfmetrics.registerFont(TTFont(FACE, "/usr/share/fonts/truetype/dejavu/DejaVuSans.ttf"))
    for number, line in enumerate(lines):
        x = 60.0
        for letter in line:
            text = canvas.beginText()
            text.setFont(FACE, 8)
            text.setTextTransform(1, 0, slant, 1, x, 400 - 20 * number)
            text.textOut(letter)
            canvas.drawText(text)
            x += pdfmetrics.stringWidth(letter, FACE, 8)
    canvas.save()
    data = buffer.getvalue()
    for letters, ligature in LIGATURES.items():
        data = data.replace(f"<{ord(ligature):04X}>".encode(), b"<" + letters.encode("utf-16-be").hex().encode() + b">")
    (page,) = read_pdf(data, "sheet.pdf", _never)
    return page


@pytest.mark.parametrize("slant", [0.0, 0.21, 0.33])
def test_letters_that_are_drawn_one_by_one_make_words(slant: float) -> None:
    page = _page(["Total protein, dry", "Friability 88.4"], slant)
    assert [word.text for word in page.words] == ["Total", "protein,", "dry", "Friability", "88.4"]
    assert page.marred == ()


@pytest.mark.parametrize("slant", [0.0, 0.21])
def test_a_ligature_is_part_of_its_word(slant: float) -> None:
    page = _page(["Speci\ufb01cation", "Fine/coarse di\ufb00erence", "co\ufb03n \ufb01ltration"], slant)
    texts = [word.text for word in page.words]
    assert texts == ["Specification", "Fine/coarse", "difference", "coffin", "filtration"]
    assert page.marred == ()


def _char(text: str, x0: float, x1: float, top: float, bottom: float, piece: int = 0) -> Char:
    return Char(text, Box(x0, top, x1, bottom), 10, False, False, piece)


def test_a_raised_mark_of_the_same_size_is_no_part_of_the_number() -> None:
    digit, mark = _char("4", 0, 6, 100, 112), _char("*", 6, 10, 96, 108, 1)
    assert _parts(digit, mark, ())
    assert not _parts(digit, _char("f", 6, 10, 102, 109, 1), ())
