"""Pictures of pages read whole, by the real readers; and what happens where one of them is missing."""

from __future__ import annotations

import shutil
from dataclasses import replace
from pathlib import Path

import numpy as np
import pytest
from PIL import Image

from benchmarks.scans_reading import score, value
from importer.errors import NoTextAndNoOcr, TookTooLong
from importer.intake import cellwise, ocr, scan, second, spacing
from importer.intake.picture import open_pictures, read_picture
from importer.intake.prepare.ink import Marks, thickened
from importer.intake.prepare.page import prepare
from importer.words import Box, Page
from tests.scans import degrade, tables

tesseract = pytest.mark.skipif(shutil.which("tesseract") is None, reason="the tesseract program is not installed")
both = pytest.mark.skipif(
    shutil.which("tesseract") is None or not second.available(),
    reason="tesseract and the second reader are both needed",
)
pytestmark = pytest.mark.ocr


def table(seed: int = 21, style: str = "grid") -> tables.Drawn:
    """The upper half of a page: everything printed stands there."""
    drawn = tables.draw(seed, faces=("DejaVuSans",), rows=10, style=style, columns=2)
    return replace(drawn, image=drawn.image.crop((0, 0, drawn.image.width, 1700)))


def read(drawn: tables.Drawn, name: str, seed: int = 1) -> Page:
    (picture,) = open_pictures(degrade.stored(degrade.degrade(drawn.image, name, seed)), f"{name}.tif")
    return read_picture(picture.image, picture.number, picture.dpi)


# Of some twenty figures; a machine without the third reader's data agrees on one or two fewer.
LEAST_AGREED = 0.75
QUICK = ("clean300", "dpi100", "noiseblur", "phone", "phone_hard", "fax", "photocopy", "rot180", "stamp", "penticks")


@both
@pytest.mark.parametrize(
    "name", [pytest.param(name, marks=() if name in QUICK else pytest.mark.slow) for name in degrade.CLASSES]
)
def test_what_both_readers_agree_on_is_right(name: str) -> None:
    drawn = table()
    page = read(drawn, name)
    found = [row["kind"] for row in score(drawn, page)]
    if page.doubt is None:
        assert "AGREED-WRONG" not in found
    if name not in (*degrade.HARD, "stamp", "penticks"):
        assert page.doubt is None
        assert found.count("agreed") >= LEAST_AGREED * sum(value(c.text) is not None for c in drawn.cells if c.is_value)


@tesseract
@pytest.mark.parametrize("name", ["clean300", "skew", "rot180"])
def test_words_lie_where_they_are_printed(name: str) -> None:
    """Within 4 points of their place on the drawn page; a skewed page grows by its turn, so only distances count."""
    drawn = table()
    page = read(drawn, name)
    places = {c.text: c.box for c in drawn.cells if " " not in c.text and len(c.text) > 5}
    pairs = [((places[w.text][0] + places[w.text][2]) / 2 * 0.24, (places[w.text][1] + places[w.text][3]) / 2 * 0.24,
              w.box.centre, w.box.middle) for w in page.words if w.text in places]  # fmt: skip
    assert len(pairs) >= 3
    offsets = np.array([[c - a, d - b] for a, b, c, d in pairs])
    limit = 4.0 if name != "skew" else 6.0
    assert np.abs(offsets - (np.median(offsets, axis=0) if name == "skew" else 0)).max() < limit


@tesseract
def test_ruling_lines_come_in_points() -> None:
    page = read(table(), "clean300")
    level = [rule for rule in page.rules if rule.height == 0]
    assert len(level) == 11
    assert all(0 < rule.x0 < rule.x1 < page.width and 0 < rule.top < page.height for rule in level)


@tesseract
def test_without_a_second_reader_the_words_are_still_read(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(second, "_recogniser", lambda: None)
    monkeypatch.setattr(second, "_classifier", lambda: None)
    monkeypatch.setattr(ocr, "legacy_data", lambda: None)
    page = read(table(), "rot180")
    assert len(page.words) > 30
    assert "Certificate" in [word.text for word in page.words]
    assert page.second == ()
    assert page.doubt is None


@tesseract
def test_the_older_engine_stands_in_where_its_data_are_there(monkeypatch: pytest.MonkeyPatch) -> None:
    if ocr.legacy_data() is None:
        pytest.skip("the standard English data with letter shapes are not installed")
    monkeypatch.setattr(second, "_recogniser", lambda: None)
    page = read(table(), "clean300")
    assert {reading.reader for reading in page.second} == {ocr.LEGACY}


@pytest.mark.parametrize("fill", [0, 255])
def test_a_plain_page_has_no_words(fill: int) -> None:
    page = read_picture(Image.new("L", (600, 800), fill), 4, None)
    assert (page.number, page.words, page.reading) == (4, (), "ocr")
    assert max(page.width, page.height) == pytest.approx(842)


@pytest.mark.parametrize("size", [(1, 1), (20000, 10)])
def test_a_picture_without_room_has_no_words(size: tuple[int, int]) -> None:
    assert read_picture(Image.new("L", size, 255), 1, None).words == ()


@tesseract
def test_noise_is_no_figure() -> None:
    noise = np.random.default_rng(2).integers(0, 255, (700, 500), dtype=np.uint8)
    page = read_picture(Image.fromarray(noise), 1, None)
    figures = {word.text for word in page.words if value(word.text)} & {
        r.text for r in page.second if r.confidence > 0.9
    }
    assert page.doubt is not None or not figures


def test_a_missing_program_says_how_to_get_it(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(ocr, "find_program", lambda: None)
    with pytest.raises(NoTextAndNoOcr, match="apt install tesseract-ocr"):
        read_picture(table().image, 1, 300)


@tesseract
def test_time_is_limited(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(ocr, "SECONDS_A_PAGE", 0.01)
    with pytest.raises(TookTooLong):
        read_picture(table().image, 1, 300)


def test_data_without_letter_shapes_are_passed_over(tmp_path: Path) -> None:
    (tmp_path / "eng.traineddata").write_bytes(b"\x05\x00\x00\x00" + b"\xff" * 40)
    assert not ocr._holds_shapes(tmp_path / "eng.traineddata")
    assert not ocr._holds_shapes(tmp_path / "none.traineddata")


@pytest.mark.parametrize(
    ("one", "other", "same"),
    [("4.2", "4,2", True), ("< 0.5", "<0.5", True), ("−3.1", "-3.1", True), ("81.2", "812", False), ("<4", "4", False),
     ("", "", False), ("1 234", "1234", True)],
)  # fmt: skip
def test_readings_are_compared_as_printed(one: str, other: str, same: bool) -> None:
    assert cellwise.alike(one, other) is same


def test_a_figure_wider_than_its_reading_is_reported() -> None:
    digits = {"4.2": 44.0, "81.3": 69.0, "12.5": 69.0, "7.42": 69.0, "340": 62.0, "5.8": 44.0, "66.1": 69.0, "95": 37.0}
    cells = [[spacing.Piece(text, width, 32.0)] for text, width in digits.items()]
    assert not any(spacing.too_wide(cells))
    lost = [*cells, [spacing.Piece("813", 74.0, 32.0)]]
    assert spacing.too_wide(lost) == [False] * len(cells) + [True]


def test_a_poor_page_is_doubted_with_a_way_out() -> None:
    drawn = tables.draw(21, faces=("DejaVuSans",), rows=10, columns=2)
    page = scan.prepare(np.asarray(drawn.image), 300, lambda _: None)
    assert page is not None
    good = cellwise.CellsRead((), (), (), 20, 19, 2)
    assert scan.doubt(page, good) is None
    poor = scan.doubt(page, cellwise.CellsRead((), (), (), 20, 9, 2))
    assert poor is not None
    assert "9 of 20" in poor
    assert "300 dpi" in poor
    eaten = scan.doubt(page, cellwise.CellsRead((), (), (), 20, 19, 9))
    assert eaten is not None
    assert "9 of 20" in eaten


def _piece(text: str, advance: float, point: float, lost: str = "") -> spacing.Piece:
    """A figure set with one advance for all digits; ``lost`` is what was printed, where that is more than was read."""
    printed = lost or text
    at, places = 0.0, []
    for character in printed:
        places.append(at)
        at += point if character in ".," else advance
    digits = [place for place, character in zip(places, printed, strict=True) if character.isdigit()]
    seen = [character.isdigit() for character in text]
    steps = tuple(
        b - a for a, b, left, right in zip(digits, digits[1:], seen, seen[1:], strict=False) if left and right
    )
    return spacing.Piece(text, 20 * (at - 0.15), 20.0, steps if text.isdigit() else ())


USUAL = [_piece(text, 0.75, 0.38) for text in ("812", "305", "1495", "27.4", "36.9", "4.1", "80.2")]


def test_digits_of_one_width_with_their_points_are_not_too_wide() -> None:
    typed = [_piece(text, 0.95, 0.95) for text in ("59.3", "63.0", "27.2", "92.4", "81.4", "212", "305", "128", "446")]
    assert not any(spacing.too_wide([[piece] for piece in typed]))


def test_bold_digits_that_stand_evenly_are_not_too_wide() -> None:
    assert not spacing.too_wide([[piece] for piece in [*USUAL, _piece("334", 0.88, 0.4)]])[-1]


@pytest.mark.parametrize(("read", "printed"), [("3617", "361.7"), ("812", "8.12"), ("34", "3.4"), ("1539", "1.539")])
def test_a_lost_point_shows_in_the_steps_of_the_digits(read: str, printed: str) -> None:
    assert spacing.too_wide([[piece] for piece in [*USUAL, _piece(read, 0.75, 0.38, lost=printed)]])[-1]


@pytest.mark.parametrize(
    ("steps", "over", "wide"),
    [
        ((0.92,), (1.9,), False),  # type of one width: a point has the room of a digit
        ((0.74,), (1.12,), False),
        ((1.9,), (1.9,), True),  # the step over a lost point is as long as the one over the point that was read
    ],
)
def test_a_step_is_compared_with_the_one_over_a_point_that_was_read(
    steps: tuple[float, ...], over: tuple[float, ...], wide: bool
) -> None:
    figure = spacing.Piece("78.0", 60.0, 20.0, steps, over)
    assert spacing.too_wide([[piece] for piece in [*USUAL, figure]])[-1] is wide


def test_a_one_beside_another_digit_is_no_gap() -> None:
    one = [spacing.Piece(text, 31.0, 20.0, steps) for text, steps in (("217", (0.63, 0.86)), ("287", (0.63, 0.86)))]
    assert spacing.too_wide([[piece] for piece in [*USUAL, *one]])[-2:] == [False, True]


def test_the_room_behind_a_sign_is_no_part_of_a_figure() -> None:
    sign = (0, 4, 14, 16)
    digits = [(60, 0, 66, 20), (70, 0, 84, 20)]
    (near,) = spacing.pieces(_ink(*digits), "15", 20.0)
    (far,) = spacing.pieces(_ink(sign, *digits), "<15", 20.0)
    assert (far.text, far.width) == (near.text, near.width) == ("15", 24.0)


def _ink(*boxes: tuple[int, int, int, int]) -> Marks:
    """Marks of full ink: left, top, right, bottom."""
    x0, top, x1, bottom = np.array(boxes).T
    return Marks(x0, top, x1, bottom, (x1 - x0) * (bottom - top))


FOUR, POINT, FIVE = (0, 0, 14, 20), (18, 17, 21, 20), (25, 0, 39, 20)


@pytest.mark.parametrize(
    ("boxes", "text", "shown"),
    [
        ((FOUR, POINT, FIVE), "4.5", True),
        ((FOUR, POINT, FIVE), "4,5", True),
        ((FOUR, POINT, FIVE), "45", False),
        ((FOUR, FIVE), "4.5", False),
        ((FOUR, (18, 8, 21, 11), FIVE), "4.5", False),  # dirt half-way up
        ((FOUR, FIVE, (43, 17, 46, 20)), "4.5", False),  # a stop behind the figure
        ((FOUR, POINT, FIVE, (43, 0, 57, 20)), "4.5", False),  # a digit that nobody read
    ],
)
def test_a_point_is_confirmed_by_its_ink(boxes: tuple[tuple[int, int, int, int], ...], text: str, shown: bool) -> None:
    assert spacing.points_seen(_ink(*boxes), text, 20.0) is shown


def test_a_unit_close_behind_a_number_is_not_a_part_of_it() -> None:
    percent = ((45, 0, 51, 7), (48, 0, 60, 20), (57, 13, 63, 20))
    text, marks = spacing.leading_number(_ink(FOUR, POINT, FIVE, *percent), "4.5%", 20.0)
    assert (text, len(marks)) == ("4.5", 3)
    assert spacing.leading_number(marks, "4.5-5.0", 20.0)[0] == "4.5-5.0"


def test_heavy_noise_is_kept_from_the_main_reader() -> None:
    """A page dark with noise would keep it busy for minutes; print and its soft edges stay as they are."""
    clean = np.asarray(table().image.convert("L").resize((1240, 850)), dtype=np.float32)
    noise = np.random.default_rng(5).normal(0, 45, clean.shape)
    page = prepare(np.clip(np.minimum(clean, 215) + noise, 0, 255).astype(np.uint8), 150, lambda _: None)
    assert page is not None
    beside = ~thickened(page.ink, scan.NEAR_INK)
    assert ((page.even < scan.WHITE) & beside).mean() > scan.MOST_NOISE
    freed = scan._without_dirt(page)
    assert ((freed < scan.WHITE) & beside).mean() == 0
    assert np.array_equal(freed[page.ink], page.even[page.ink])


@pytest.mark.parametrize(
    ("main", "other", "taken"),
    [
        ("7A", "7.1", True),
        ("7A", "71", False),
        ("A12345", "8.12345", False),
        ("7.4", "7.1", False),
        ("EBC", "7.1", True),
    ],
)
def test_letters_in_a_number_give_way_to_a_point(main: str, other: str, taken: bool) -> None:
    cell = cellwise.Cell(Box(10, 10, 60, 26), (ocr.Seen(main, 10, 10, 60, 26, 0.6),))
    assert cellwise._takes_over(cell, second.Read(other, 0.99), False, 16.0) is taken


def test_bold_figures_stick_out_of_nothing_on_a_page_of_such_digits() -> None:
    own = Marks(*(np.array([value, value]) for value in (10, 10, 24, 34, 100)))
    assert cellwise._sticks_out(own, "4", 16.0, 16.0)
    assert not cellwise._sticks_out(own, "4", 16.0, 20.0)
