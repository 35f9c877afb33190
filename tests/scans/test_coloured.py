"""Ink of pens and stamps on colour pictures: taken out where it is told from print, and never trusted below."""

from __future__ import annotations

import shutil
from dataclasses import replace

import numpy as np
import pytest
from PIL import Image, ImageDraw, ImageFont

from importer.intake import second
from importer.intake.picture import read_picture
from importer.intake.prepare.coloured import part
from importer.intake.prepare.ink import connected
from importer.intake.prepare.ticks import find_ticks
from tests.scans import degrade, tables

BLUE, RED, GREEN = (30, 40, 160), (190, 20, 30), (20, 120, 50)
both = pytest.mark.skipif(
    shutil.which("tesseract") is None or not second.available(),
    reason="tesseract and the second reader are both needed",
)


def table(seed: int = 21) -> tables.Drawn:
    """The upper half of a drawn page, in colour."""
    drawn = tables.draw(seed, faces=("DejaVuSans",), rows=10, style="grid", columns=2)
    return replace(drawn, image=drawn.image.crop((0, 0, drawn.image.width, 1700)).convert("RGB"))


def tick(image: Image.Image, x: float, y: float, ink: tuple[int, int, int], size: float = 1.0) -> None:
    """A tick that begins at a place; about seven millimetres wide at 300 dpi."""
    way = [(0, 0), (18, 26), (88, -40)]
    ImageDraw.Draw(image).line([(x + size * a, y + size * b) for a, b in way], fill=ink, width=6, joint="curve")


def ring(image: Image.Image, x: int, y: int, ink: tuple[int, int, int]) -> None:
    ImageDraw.Draw(image).ellipse((x, y, x + 400, y + 400), outline=ink, width=7)


@pytest.mark.parametrize("ink", [BLUE, RED, GREEN])
def test_ticks_and_stamps_are_taken_out_and_print_stays(ink: tuple[int, int, int]) -> None:
    plain = table().image
    marked = plain.copy()
    tick(marked, 2300, 900, ink)
    ring(marked, 1900, 60, ink)
    parted = part(marked)
    assert parted.taken is not None
    black = np.asarray(plain.convert("L")) < 128
    assert (parted.grey[black] < 160).mean() > 0.99  # print below the ring may have lost an edge
    drawn = (np.asarray(marked.convert("L")) < 200) & (np.asarray(plain.convert("L")) > 250)
    assert (parted.grey[drawn] > 240).mean() > 0.97


def test_print_in_colour_stays() -> None:
    """Blue figures, a blue title in large letters and blue rules are no pen's, nor is a stamp of the same blue."""
    plain = table().image
    grey = np.asarray(plain.convert("L"))
    coloured = np.full((*grey.shape, 3), 255, dtype=np.uint8)
    coloured[grey < 128] = BLUE
    page = Image.fromarray(coloured)
    ring(page, 1900, 60, BLUE)
    parted = part(page)
    assert parted.taken is None
    assert np.array_equal(parted.grey, np.asarray(page.convert("L")))


def test_a_coloured_band_and_a_frame_stay() -> None:
    page = table().image
    pen = ImageDraw.Draw(page)
    pen.rectangle((100, 20, 2300, 90), fill=BLUE)
    pen.rectangle((100, 1400, 2300, 1650), outline=RED, width=5)
    assert part(page).taken is None


def test_a_page_without_colour_costs_no_second_look() -> None:
    page = table().image
    tinted = Image.merge("RGB", [channel.point(lambda v, k=k: v * k // 255) for channel, k in
                                 zip(page.split(), (250, 240, 205), strict=True)])  # fmt: skip
    assert part(tinted).taken is None  # yellowed paper is no ink
    assert part(page.convert("L")).taken is None


@both
@pytest.mark.ocr
def test_ticks_beside_results_hold_nothing_back() -> None:
    drawn = table()
    clean = read_picture(drawn.image, 1, 300)
    marked = drawn.image.copy()
    for cell in drawn.cells:
        if cell.is_value:
            tick(marked, cell.box[2] + 40, cell.box[1] + 10, BLUE)
    page = read_picture(marked, 1, 300)
    assert page.doubt is None
    assert sorted(word.text for word in page.words) == sorted(word.text for word in clean.words)
    assert len(page.lost) <= len(clean.lost)


@both
@pytest.mark.ocr
def test_what_a_pen_has_covered_is_not_trusted() -> None:
    """An opaque stroke over the last digit hides it: the reading of what is left is marked as unread ink."""
    drawn = table()
    cells = [cell for cell in drawn.cells if cell.is_value and len(cell.text) > 3 and cell.text[-1].isdigit()]
    marked = drawn.image.copy()
    for cell in cells:
        tick(marked, cell.box[2] - 24, (cell.box[1] + cell.box[3]) / 2 + 4, BLUE)
    page = read_picture(marked, 1, 300)
    for cell in cells:
        x, y = 0.24 * cell.box[0] + 2, 0.24 * (cell.box[1] + cell.box[3]) / 2
        assert any(lost.x0 - 3 <= x <= lost.x1 and lost.top <= y <= lost.bottom for lost in page.lost), cell.text


@both
@pytest.mark.ocr
def test_a_stamp_makes_no_page_unreadable() -> None:
    drawn = table()
    stamped = degrade.degrade(drawn.image.convert("L"), "stamp", 3)
    page = read_picture(stamped.image, 1, 200)
    assert page.doubt is None


def ticked(text: str, letters: bool = False) -> tuple[np.ndarray, np.ndarray]:
    """Even grey page and its mask of ink: a line of print, with a tick of the pen behind it or large letters."""
    image = Image.new("L", (900, 160), 255)
    pen = ImageDraw.Draw(image)
    font = ImageFont.truetype(tables.installed_faces()["DejaVuSans"], 44 if letters else 22)
    pen.text((30, 60), text, font=font, fill=20)
    if not letters:
        pen.line([(600, 70), (608, 82), (634, 46)], fill=70, width=3, joint="curve")
    even = np.asarray(image)
    return even, even < 140


def test_a_tick_that_stands_alone_is_taken_out_of_a_grey_page() -> None:
    even, mask = ticked("Moisture 4.2 %   7 V J y / 1 4 L")
    found = find_ticks(even, mask, connected(mask), 16.0, 20, 255)
    assert found is not None
    assert found[:, 595:640].sum() >= mask[:, 595:640].sum()
    assert not (found & mask)[:, :590].any()


@pytest.mark.parametrize("text", ["7 V J y / 1 4 L Z", "Juni Jahr Vitry", "JULY 1/2 <> Ny"])
def test_large_letters_are_no_ticks(text: str) -> None:
    even, mask = ticked(text, letters=True)
    assert find_ticks(even, mask, connected(mask), 16.0, 20, 255) is None


def test_a_large_figure_in_colour_is_no_stroke_of_a_pen() -> None:
    """Even one that stands alone, and a few printed in the colour of the stamp that lies over one of them."""
    page = table().image
    pen = ImageDraw.Draw(page)
    pen.text((2250, 1250), "7", font=ImageFont.truetype(tables.installed_faces()["DejaVuSans"], 90), fill=RED)
    assert part(page).taken is None
    small = ImageFont.truetype(tables.installed_faces()["DejaVuSans"], 36)
    for y in (230, 1350, 1450):
        pen.text((2050, y), "5.8", font=small, fill=RED)
    ring(page, 1900, 60, RED)
    assert part(page).taken is None
