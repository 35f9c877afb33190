"""The steps that bring a picture upright, level, evenly lit and free of rules, against drawn pages."""

from __future__ import annotations

import numpy as np
import pytest
from PIL import Image, ImageDraw, ImageFont

from importer.intake.prepare import bands, geometry, ink, outline, rules, skew, turn
from importer.intake.prepare.broken_lines import find_broken
from importer.intake.prepare.cells import NO_RULES, find_cells
from importer.intake.prepare.page import Prepared, letters_of, prepare
from tests.scans import degrade, tables


def never(_: list[Image.Image]) -> bool | None:
    return None


def grey(image: Image.Image) -> np.ndarray:
    return np.asarray(image.convert("L"))


@pytest.mark.filterwarnings("error")
@pytest.mark.parametrize("heights", [[], [10], [20, 40], [5, 10, 20, 40], [12, 12, 12, 40], [30, 40, 50, 60]])
def test_marks_of_any_heights_have_a_middle_height(heights: list[int]) -> None:
    mask = np.zeros((100, 40 * len(heights) + 40), dtype=bool)
    for number, height in enumerate(heights):
        mask[10 : 10 + height, 40 * number + 10 : 40 * number + 20] = True
    _, middle = letters_of(ink.connected(mask))
    assert min(heights, default=0) <= middle <= max(heights, default=0)
    page = prepare(np.where(mask, 0, 255).astype(np.uint8), None, never)
    assert page is not None
    assert np.isfinite([page.points, page.glyph, page.print_pixels]).all()


def table(style: str = "plain", seed: int = 5) -> tables.Drawn:
    return tables.draw(seed, faces=("DejaVuSans",), rows=14, style=style, columns=2)


def prepared(image: Image.Image, dpi: float | None = 300) -> Prepared:
    page = prepare(grey(image), dpi, never)
    assert page is not None
    return page


def test_running_extremes_are_those_of_every_window() -> None:
    random = np.random.default_rng(1).integers(0, 255, (17, 23), dtype=np.uint8)
    for reach in (1, 2, 5):
        for axis in (0, 1):
            pad = [(reach, reach) if a == axis else (0, 0) for a in (0, 1)]
            windows = np.lib.stride_tricks.sliding_window_view(np.pad(random, pad, mode="edge"), 2 * reach + 1, axis)
            assert np.array_equal(ink.widen(random, reach, axis), windows.max(axis=-1))
            assert np.array_equal(ink.narrow(random, reach, axis), windows.min(axis=-1))


def flooded(mask: np.ndarray) -> list[tuple[int, int, int, int, int]]:
    """Connected marks by flooding, diagonal neighbours included: the definition, one pixel at a time."""
    left = {(int(y), int(x)) for y, x in zip(*np.nonzero(mask), strict=True)}
    found = []
    while left:
        todo, own = [left.pop()], []
        while todo:
            y, x = todo.pop()
            own.append((y, x))
            near = {(y + a, x + b) for a in (-1, 0, 1) for b in (-1, 0, 1)} & left
            left -= near
            todo += near
        ys, xs = [p[0] for p in own], [p[1] for p in own]
        found.append((min(xs), min(ys), max(xs) + 1, max(ys) + 1, len(own)))
    return sorted(found)


@pytest.mark.parametrize("share", [0.05, 0.3, 0.45, 0.6])
def test_connected_marks_are_those_of_flooding(share: float) -> None:
    mask = np.random.default_rng(int(100 * share)).random((40, 60)) < share
    marks = ink.connected(mask)
    assert sorted((*marks.box(i), int(marks.area[i])) for i in range(len(marks))) == flooded(mask)


def test_quarter_turns_agree_with_pillow() -> None:
    image = Image.new("L", (40, 30), 255)
    image.putpixel((31, 7), 0)
    for turns, method in (
        (1, Image.Transpose.ROTATE_270),
        (2, Image.Transpose.ROTATE_180),
        (3, Image.Transpose.ROTATE_90),
    ):
        turned = grey(image.transpose(method))
        ((x, y),) = geometry.apply(geometry.quarter_turns(turns, 40, 30), np.array([[31.5, 7.5]]))
        assert turned[int(y), int(x)] == 0


def test_a_projective_map_takes_its_corners_where_told() -> None:
    source = np.array([[10.0, 20.0], [300.0, 40.0], [280.0, 400.0], [5.0, 380.0]])
    matrix = geometry.from_corners(source, geometry.frame(200, 300))
    assert np.allclose(geometry.apply(matrix, source), geometry.frame(200, 300))


@pytest.mark.parametrize("degrees", [-11.0, -3.3, -0.4, 0.0, 0.7, 2.0, 8.5])
def test_skew_is_found_within_a_seventh_of_a_degree(degrees: float) -> None:
    image = table("lines").image.rotate(degrees, Image.Resampling.BICUBIC, fillcolor=255).resize((1130, 1600))
    assert skew.find_skew(grey(image) < 128) == pytest.approx(degrees, abs=0.15)


@pytest.mark.parametrize("style", ["plain", "grid", "zebra"])
def test_the_direction_of_lines_is_found(style: str) -> None:
    image = table(style).image.resize((1130, 1600))
    for turned, upright in ((image, True), (image.transpose(Image.Transpose.ROTATE_90), False)):
        axis = turn.find_axis(ink.connected(grey(turned) < 128), 10.0)
        assert axis.upright is upright
        assert axis.share > 0.7


def test_a_sheet_on_a_desk_is_outlined() -> None:
    corners = np.array([[160.0, 120.0], [1330.0, 190.0], [1260.0, 1850.0], [90.0, 1780.0]])
    photo = Image.new("L", (1500, 2000), 70)
    ImageDraw.Draw(photo).polygon([tuple(corner) for corner in corners], fill=215)
    shadow = np.linspace(0.6, 1.0, 1500)[None, :]
    found = outline.find_outline((grey(photo) * shadow).astype(np.uint8))
    assert found is not None
    assert np.abs(found - corners).max() < 8


@pytest.mark.parametrize("name", ["clean300", "shaded", "faxfine", "photocopy", "noiseblur"])
def test_a_scan_has_no_outline(name: str) -> None:
    assert outline.find_outline(grey(degrade.degrade(table("grid").image, name, 2).image)) is None


def test_a_blank_dark_or_noisy_picture_has_no_outline() -> None:
    noise = np.random.default_rng(4).integers(0, 255, (500, 400), dtype=np.uint8)
    for picture in (np.full((500, 400), 255, np.uint8), np.zeros((500, 400), np.uint8), noise):
        assert outline.find_outline(picture) is None


def test_shadow_and_tint_become_paper() -> None:
    page = degrade.degrade(table("zebra").image, "shaded", 1).image
    even = ink.even_paper(grey(page), 20, 2)
    paper = even[even > 150]
    assert np.percentile(paper, 95) - np.percentile(paper, 10) < 20


@pytest.mark.parametrize(("style", "level", "upright"), [("grid", 15, 4), ("heavy", 15, 4), ("lines", 14, 0)])
def test_rules_are_found_and_taken_out(style: str, level: int, upright: int) -> None:
    page = prepared(table(style).image)
    assert len(page.level_rules) == level
    assert len(page.upright_rules) == upright
    plain = prepared(table("plain").image)
    assert len(page.marks) == pytest.approx(len(plain.marks), abs=6)


def test_the_sides_of_boxes_are_taken_out() -> None:
    assert prepared(table("boxes").image).marks.height.max() < 30


def test_letters_that_touch_are_no_rule() -> None:
    page = prepared(tables.draw(3, faces=("LiberationSansNarrow-Regular",), style="plain", rows=14).image)
    assert len(page.level_rules) == 0


def test_leaders_are_told_from_decimal_points() -> None:
    image = Image.new("L", (1200, 80), 255)
    pen, font = ImageDraw.Draw(image), ImageFont.truetype(tables.installed_faces()["DejaVuSans"], 22)
    pen.text((10, 20), "Moisture" + "." * 40 + " 4.2 0.1 3.7", font=font, fill=0)
    marks = ink.connected(grey(image) < 128)
    assert int(rules.find_leaders(marks, 16.0).sum()) == 40


def test_pale_print_on_a_dark_band_becomes_dark() -> None:
    image = Image.new("L", (900, 200), 250)
    pen, font = ImageDraw.Draw(image), ImageFont.truetype(tables.installed_faces()["DejaVuSans"], 22)
    pen.rectangle((40, 50, 860, 90), fill=60)
    pen.text((60, 58), "Parameter Result Unit", font=font, fill=255)
    turned = bands.turn_bands(grey(image), 16.0)
    assert np.median(turned[55:85, 50:850]) > 230
    assert turned[55:85, 50:400].min() < 60


def test_dark_print_on_a_tint_stays() -> None:
    page = grey(table("zebra").image.resize((1240, 1754)))
    assert np.array_equal(bands.turn_bands(page, 16.0), page)


WAYS = ["clean300", "dpi150", "dpi100", "jpeg30", "lowcon", "shaded", "rot90", "rot270", "faxfine"]


def read_places(page: Prepared) -> np.ndarray:
    cells = find_cells(page.marks, page.upright_rules, page.glyph)
    return np.column_stack([cells.x0, cells.top, cells.x1, cells.bottom]) * page.points


@pytest.mark.parametrize("name", WAYS)
def test_cells_come_back_in_points_of_the_upright_page(name: str) -> None:
    """A drawn result lies on the 300 dpi page at 72/300 points a pixel; its cell has to be there within 3 points."""
    drawn = table("grid")
    arrived = degrade.degrade(drawn.image, name, 1)
    assert arrived.dpi is not None
    picture = arrived.image.convert("L")
    if arrived.dpi[0] != arrived.dpi[1]:
        picture = picture.resize((picture.width, round(picture.height * arrived.dpi[0] / arrived.dpi[1])))

    def head_down(_: list[Image.Image]) -> bool:
        return name == "rot90"  # Pillow turns anticlockwise; a turn back by a quarter clockwise is tried first

    page = prepare(grey(picture), arrived.dpi[0], head_down if name == "rot270" else never)
    if name == "rot270":
        page = prepare(grey(picture), arrived.dpi[0], lambda _: True)
    assert page is not None
    assert (page.width, page.height) == pytest.approx((595, 842), abs=3)
    places = read_places(page)
    for cell in drawn.cells:
        if cell.is_value:
            x0, top, x1, bottom = (edge * 72 / 300 for edge in cell.box)
            off = np.abs((places[:, 0] + places[:, 2]) / 2 - (x0 + x1) / 2)
            off += np.abs((places[:, 1] + places[:, 3]) / 2 - (top + bottom) / 2)
            assert off.min() < 3.0, cell.text


def test_points_map_through_skew_and_perspective() -> None:
    """The matrix takes each place of the picture to where its ink is on the prepared page."""
    for name in ("skew", "phone"):
        arrived = degrade.degrade(table("plain").image, name, 3)
        picture = grey(arrived.image)
        page = prepare(picture, None, never)
        assert page is not None
        x = (page.marks.x0 + page.marks.x1) / 2
        y = (page.marks.top + page.marks.bottom) / 2
        inner = (page.marks.area > 30) & (y > 100) & (y < page.even.shape[0] - 100)
        back = geometry.apply(np.linalg.inv(page.matrix), np.column_stack([x, y])[inner]).astype(int)
        back = back[(back > 30).all(axis=1)]
        ink_there = [picture[v - 9 : v + 10, u - 9 : u + 10].min() for u, v in back]
        paper_there = [picture[v - 30 : v + 31, u - 30 : u + 31].max() for u, v in back]
        assert np.mean(np.array(ink_there) < 0.7 * np.array(paper_there)) > 0.95


def line(text: str) -> tuple[list[tuple[int, int]], int]:
    image = Image.new("L", (1400, 60), 255)
    font = ImageFont.truetype(tables.installed_faces()["DejaVuSans"], 22)
    ImageDraw.Draw(image).text((20, 15), text, font=font, fill=0)
    found = find_cells(ink.connected(grey(image) < 128), NO_RULES, 16.0)
    length = int(font.getlength(text))
    return [(int(a), int(b)) for a, b in zip(found.x0, found.x1, strict=True)], length


@pytest.mark.parametrize("text", ["< 0.5", "-0.35", "4,2", "81.2 %", "1.4 - 2.1", "≤ 5.0", "max. 4.5", "0.05"])
def test_signs_points_and_units_are_inside_the_cell(text: str) -> None:
    cells, length = line(text)
    assert len(cells) == 1
    assert cells[0][1] - cells[0][0] == pytest.approx(length, abs=6)


def test_columns_are_cells_of_their_own() -> None:
    cells, _ = line("4.2          81.3          1.52")
    assert len(cells) == 3


@pytest.mark.parametrize("size", [(1, 1), (20000, 10), (10, 3000), (12, 12)])
def test_pictures_without_room_for_a_line_hold_nothing(size: tuple[int, int]) -> None:
    page = prepare(np.full((size[1], size[0]), 255, np.uint8), None, never)
    assert page is None or len(page.marks) == 0


@pytest.mark.parametrize("level", [0, 128, 255])
def test_an_empty_page_has_no_marks(level: int) -> None:
    page = prepare(np.full((800, 600), level, np.uint8), None, never)
    assert page is not None
    assert len(page.marks) == 0


def test_noise_is_prepared_without_harm() -> None:
    noise = np.random.default_rng(9).integers(0, 255, (900, 700), dtype=np.uint8)
    assert prepare(noise, None, never) is not None


def test_noise_on_tinted_stripes_makes_no_cells() -> None:
    """Where noise is not cut off by white paper it is twice as strong; the paper below is its middle, not its top."""
    drawn = table("zebra")
    noisy = degrade.degrade(drawn.image.point(lambda v: v if v != 238 else 225), "noiseblur", 4)
    assert noisy.dpi is not None
    page = prepare(grey(noisy.image), noisy.dpi[0], never)
    assert page is not None
    places = read_places(page)
    printed = np.array([cell.box for cell in drawn.cells]) * 72 / 300
    middle = (places[:, :2] + places[:, 2:]) / 2
    over = (printed[None, :, 0] - 4 < middle[:, None, 0]) & (middle[:, None, 0] < printed[None, :, 2] + 4)
    over &= (printed[None, :, 1] - 4 < middle[:, None, 1]) & (middle[:, None, 1] < printed[None, :, 3] + 4)
    assert over.any(axis=1).mean() > 0.9
    assert np.median(places[:, 3] - places[:, 1]) < 14  # rows are not grown together


def test_print_between_tinted_stripes_is_not_taken_for_noise() -> None:
    page = np.full((600, 800), 200, dtype=np.uint8)
    for top in range(0, 600, 60):
        page[top : top + 13], page[top + 13 : top + 17] = 160, 194  # the edge is soft
    for top in range(24, 580, 20):
        for left in range(20, 780, 14):
            page[top : top + 9, left : left + 2] = 30
        for left in range(26, 780, 28):
            page[top + 7 : top + 9, left : left + 2] = 30  # points
    marks = ink.connected(ink.ink_of(page))
    assert np.count_nonzero(marks.height == 9) > 1000


def test_heavy_rules_close_together_are_no_dark_band() -> None:
    image = Image.new("L", (1000, 500), 255)
    pen = ImageDraw.Draw(image)
    pen.rectangle((80, 80, 900, 130), fill=205)
    for y in range(130, 300, 28):
        pen.rectangle((80, y, 900, y + 6), fill=0)
        pen.text((120, y + 8), "25-0651-PA", font=ImageFont.truetype("DejaVuSans.ttf", 14), fill=0)
    page = np.asarray(image)
    assert np.array_equal(bands.turn_bands(page, 12.0), page)


def _dashes(pen: ImageDraw.ImageDraw, start: tuple[int, int], end: tuple[int, int], step: int) -> None:
    """A broken line, level or upright; every third gap has run together."""
    for axis in (0, 1):
        for number, at in enumerate(range(start[axis], end[axis], step)):
            length = step if number % 3 == 2 else round(0.6 * step)
            first, last = (at, start[1]), (at + length - 1, start[1] + 2)
            pen.rectangle((*first, *last) if axis == 0 else (start[0], at, start[0] + 2, at + length - 1), fill=0)


def test_broken_lines_whose_dots_run_together_are_taken_out_and_print_stays() -> None:
    """Dashes of a table's lines, and leaders of dots that a scan has joined to dashes of all lengths."""
    font = ImageFont.truetype(tables.installed_faces()["DejaVuSans"], 22)

    def drawn(lines: bool) -> Image.Image:
        image = Image.new("L", (900, 400), 255)
        pen = ImageDraw.Draw(image)
        for row, text in enumerate(("Total  4.1", "lilli  1.1", "Illit  0.2", "llill  7.3")):
            pen.text((60, 40 + 30 * row), text, font=font, fill=0)
            pen.text((400, 40 + 30 * row), "1.1 - - 2.5", font=font, fill=0)
        if lines:
            _dashes(pen, (40, 30), (800, 30), 8)
            _dashes(pen, (40, 30), (40, 380), 9)
            _dashes(pen, (382, 30), (382, 380), 9)
        return image

    plain, ruled = (ink.connected(grey(drawn(lines)) < 128) for lines in (False, True))
    assert not find_broken(plain, 16.0)[0].any()
    broken, columns = find_broken(ruled, 16.0)
    assert int((~broken).sum()) == len(plain)
    assert sorted(int(x) // 10 for x in columns.x0) == [4, 38]
