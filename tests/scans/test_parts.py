"""Parts of a page whose lines are not level, and cells that hold more than one line, against drawn pages."""

from __future__ import annotations

import numpy as np
import pytest
from PIL import Image, ImageDraw, ImageFont

from importer.intake import ocr
from importer.intake.cell_boxes import Cell, cells_of
from importer.intake.cellwise import may_hold_figure
from importer.intake.lettering import reworded
from importer.intake.prepare.cells import find_cells
from importer.intake.prepare.page import Prepared, prepare
from importer.intake.prepare.parts import find_parts
from importer.intake.scan import _with_plus_minus, read_words
from importer.intake.second import Read
from importer.words import Box

FACE = ImageFont.truetype("DejaVuSans.ttf", 40)
LEFT = ["Moisture", "Extract", "Protein", "Friability", "Viscosity", "Colour"]
RIGHT = ["4.31", "81.47", "10.52", "86.25", "1.537", "3.48"]


def page_of(drop: int, pitch: int = 90, title: str = "") -> Prepared:
    """Names at the left and figures at the right, these ``drop`` pixels lower."""
    image = Image.new("L", (2480, 1200), 255)
    pen = ImageDraw.Draw(image)
    if title:
        pen.text((200, 60), title, font=FACE, fill=0)
    for number, (name, figure) in enumerate(zip(LEFT, RIGHT, strict=True)):
        pen.text((200, 200 + pitch * number), name, font=FACE, fill=0)
        pen.text((1500, 200 + pitch * number + drop), figure, font=FACE, fill=0)
    page = prepare(np.asarray(image), 300, lambda _: None)
    assert page is not None
    return page


def parts_of(page: Prepared) -> list[tuple[int, int, int, int]]:
    height, width = page.even.shape
    return find_parts(find_cells(page.marks, page.upright_rules, page.glyph), page.glyph, (0, 0, width, height))


def test_level_lines_are_one_part() -> None:
    assert len(parts_of(page_of(0))) == 1


@pytest.mark.parametrize("drop", [24, 30, -26])
def test_lines_half_a_line_apart_are_parts_and_read_as_they_stand(drop: int) -> None:
    page = page_of(drop, pitch=60)
    parts = parts_of(page)
    assert len(parts) > 1
    for one in page_cells(page):
        inside = [p for p in parts if p[0] <= one.centre <= p[2] and p[1] <= one.middle <= p[3]]
        assert len(inside) == 1, "every cell is in one part"
    words = [word.text.replace(",", ".") for word in read_words(page)]
    assert sorted(words) == sorted([*LEFT, *RIGHT])


def page_cells(page: Prepared) -> list[Box]:
    return [cell.box for cell in cells_of(page, [])]


def test_a_line_across_the_page_is_cut_nowhere() -> None:
    page = page_of(
        26, pitch=60, title="Certificate of analysis for a batch of malt with a name that runs over all of it"
    )
    title = min(page_cells(page), key=lambda box: box.top)
    (over,) = [p for p in parts_of(page) if p[1] <= title.middle <= p[3] and p[0] <= title.x0 and title.x1 <= p[2]]
    assert over[3] > title.bottom


def test_noise_of_any_kind_is_no_harm() -> None:
    random = np.random.default_rng(4)
    for share in (0.01, 0.1, 0.3):
        grey = np.where(random.random((400, 500)) < share, 0, 255).astype(np.uint8)
        page = prepare(grey, 300, lambda _: None)
        if page is not None and len(page.marks):
            assert all(x1 >= x0 and bottom >= top for x0, top, x1, bottom in parts_of(page))


def test_lines_that_touch_are_cells_of_their_own() -> None:
    image = Image.new("L", (900, 300), 255)
    pen = ImageDraw.Draw(image)
    pen.text((100, 100), "jqpgy 2,5 mm", font=FACE, fill=0)
    pen.text((100, 134), "ÄÖÜ lkhd 4.22", font=FACE, fill=0)
    page = prepare(np.asarray(image), 300, lambda _: None)
    assert page is not None
    middles = (float(page.marks.top.min() + 12), float(page.marks.bottom.max() - 12))
    left, right = float(page.marks.x0.min()), float(page.marks.x1.max())
    words = [ocr.Seen(f"line{i}", left, y - 9, right, y + 9, 0.9) for i, y in enumerate(middles)]
    with_words = [cell for cell in cells_of(page, words) if cell.words]
    assert [cell.text for cell in with_words] == ["line0", "line1"]
    assert with_words[0].box.bottom <= with_words[1].box.top


@pytest.mark.parametrize(
    ("old", "new", "taken"),
    [
        ("VZAS (Hartong)", "VZ45 (Hartong)", True),
        ("REAS", "RE45", True),
        ("VZ45", "VZ65", False),
        ("1AS", "145", False),
    ],
)
def test_digits_of_a_name_are_taken_and_those_of_a_number_are_not(old: str, new: str, taken: bool) -> None:
    box = Box(0, 0, 200, 20)
    words = [ocr.Seen(text, 0, 0, 100, 20, 0.8) for text in old.split()]
    found = reworded(words, box, Read(new, 0.99))
    assert (found is not None and " ".join(word.text for word in found) == new) is taken


@pytest.mark.parametrize(
    ("text", "asked"), [("5.6 EBC Units", True), ("Sieve > 2.8 mm", False), ("< 12 degrees", True)]
)
def test_a_result_with_a_long_unit_is_read_again(text: str, asked: bool) -> None:
    words = tuple(ocr.Seen(word, 0, 0, 10, 10, 0.95) for word in text.split())
    cell = Cell(Box(0, 0, 10, 10), words)
    assert may_hold_figure(cell) is asked


@pytest.mark.parametrize(
    ("texts", "told"),
    [
        (["84,8", "+", "1,7"], ["84,8", "±", "1,7"]),
        (["84,8+", "1,7"], ["84,8±", "1,7"]),
        (["84,8+", "%"], ["84,8+", "%"]),
        (["84,8+"], ["84,8+"]),
        (["Tel.", "+", "99"], ["Tel.", "+", "99"]),
        (["4.6", "+", "%"], ["4.6", "+", "%"]),
    ],
)
def test_a_plus_between_numbers_is_plus_minus(texts: list[str], told: list[str]) -> None:
    words = [ocr.Seen(text, 40 * i, 0, 40 * i + 30, 20, 0.9) for i, text in enumerate(texts)]
    assert [word.text for word in _with_plus_minus(words)] == told
