"""Opening picture files: every form they come in, and files that are not what they claim to be."""

from __future__ import annotations

import contextlib
import io
import struct
import zlib
from pathlib import Path

import numpy as np
import pytest
from PIL import Image

from importer import read_sheet
from importer.errors import Damaged, EmptyFile, TooLarge, UnsupportedType
from importer.intake import picture
from importer.intake.picture import open_pictures


def stored(image: Image.Image, form: str, **options: object) -> bytes:
    out = io.BytesIO()
    image.save(out, form, **options)
    return out.getvalue()


def page(mode: str = "L", size: tuple[int, int] = (850, 1100)) -> Image.Image:
    image = Image.new("L", size, 255)
    image.paste(0, (100, 100, 300, 140))
    return image.convert(mode)


@pytest.mark.parametrize("form", ["PNG", "JPEG", "TIFF", "WEBP", "BMP", "GIF"])
def test_every_form_opens_as_one_upright_page(form: str) -> None:
    (opened,) = open_pictures(stored(page(), form), "sheet")
    assert opened.number == 1
    assert opened.image.mode in ("L", "RGB")
    assert opened.image.size == (850, 1100)
    assert opened.image.convert("L").getpixel((200, 120)) < 20
    assert opened.image.convert("L").getpixel((600, 600)) > 235


@pytest.mark.parametrize(
    ("mode", "form"),
    [("1", "TIFF"), ("L", "PNG"), ("LA", "PNG"), ("P", "PNG"), ("RGB", "PNG"), ("RGBA", "PNG"), ("CMYK", "JPEG"),
     ("CMYK", "TIFF"), ("YCbCr", "JPEG"), ("I;16", "PNG"), ("I;16", "TIFF"), ("F", "TIFF")],
)  # fmt: skip
def test_every_mode_becomes_dark_print_on_white(mode: str, form: str) -> None:
    if mode == "I;16":
        image = Image.fromarray(np.asarray(page(), dtype=np.uint16) * 257)
    elif mode == "RGBA":
        image = Image.new("RGBA", (850, 1100), (0, 0, 0, 0))  # black, but all of it transparent
        image.paste((0, 0, 0, 255), (100, 100, 300, 140))
    else:
        image = page("L").convert(mode)
    (opened,) = open_pictures(stored(image, form), "sheet")
    grey = opened.image.convert("L")
    assert grey.getpixel((200, 120)) < 20
    assert grey.getpixel((600, 600)) > 235


def test_stated_resolution_is_taken_where_it_makes_a_page() -> None:
    (opened,) = open_pictures(stored(page(), "PNG", dpi=(100, 100)), "sheet")
    assert opened.dpi == pytest.approx(100, abs=0.1)


@pytest.mark.parametrize("dpi", [(1, 1), (4000, 4000)])
def test_a_resolution_that_makes_no_page_is_unknown(dpi: tuple[int, int]) -> None:
    (opened,) = open_pictures(stored(page(), "TIFF", dpi=dpi), "sheet")
    assert opened.dpi is None


def test_a_camera_s_72_dpi_is_not_a_resolution() -> None:
    (opened,) = open_pictures(stored(page(size=(3000, 4000)), "JPEG", dpi=(72, 72)), "photo")
    assert opened.dpi is None


def test_fax_pixels_become_square() -> None:
    fax = page("1", (1728, 1100))
    (opened,) = open_pictures(stored(fax, "TIFF", dpi=(204, 98)), "fax")
    assert opened.dpi == pytest.approx(204)
    assert opened.image.size == (1728, round(1100 * 204 / 98))


def test_a_fax_without_resolution_is_known_by_its_line() -> None:
    """ITU-T Rec. T.4: 1728 pixels a line at 204 per inch, 98 lines per inch in standard resolution."""
    (opened,) = open_pictures(stored(page("1", (1728, 1078)), "TIFF"), "fax")
    assert opened.image.height == round(1078 * 204 / 98)


def test_all_pages_of_a_tiff_come_in_order() -> None:
    pages = [page(size=(500 + 100 * n, 900)) for n in range(3)]
    data = stored(pages[0], "TIFF", save_all=True, append_images=pages[1:])
    opened = list(open_pictures(data, "scan.tif"))
    assert [p.number for p in opened] == [1, 2, 3]
    assert [p.image.width for p in opened] == [500, 600, 700]


@pytest.mark.parametrize(("orientation", "corner"), [(3, (650, 980)), (6, (980, 200)), (8, (120, 650))])
def test_the_camera_s_note_of_its_turn_is_followed(orientation: int, corner: tuple[int, int]) -> None:
    """Exif 2.32: 3 turned by half, 6 to be turned clockwise by a quarter, 8 anticlockwise."""
    exif = Image.Exif()
    exif[0x0112] = orientation
    (opened,) = open_pictures(stored(page(), "JPEG", exif=exif), "photo")
    assert opened.image.size == ((850, 1100) if orientation == 3 else (1100, 850))
    assert opened.image.convert("L").getpixel(corner) < 60


def test_heic_opens_or_says_what_to_install(monkeypatch: pytest.MonkeyPatch) -> None:
    heif = pytest.importorskip("pillow_heif", reason="the heic extra is not installed")
    heif.register_heif_opener()
    data = stored(page("RGB"), "HEIF")
    (opened,) = open_pictures(data, "photo.heic")
    assert opened.image.size == (850, 1100)
    monkeypatch.setitem(__import__("sys").modules, "pillow_heif", None)
    with pytest.raises(UnsupportedType, match=r"onebasis\[heic\]"):
        list(open_pictures(data, "photo.heic"))


def test_nothing_is_an_empty_file() -> None:
    with pytest.raises(EmptyFile):
        list(open_pictures(b"", "sheet.png"))


@pytest.mark.parametrize("form", ["PNG", "JPEG", "TIFF", "WEBP", "BMP"])
@pytest.mark.parametrize("share", [0.02, 0.3, 0.7, 0.95])
def test_a_truncated_picture_is_damaged(form: str, share: float) -> None:
    noise = Image.fromarray(np.random.default_rng(3).integers(0, 255, (300, 400), dtype=np.uint8))
    data = stored(noise, form)
    with pytest.raises(Damaged):
        list(open_pictures(data[: max(12, int(len(data) * share))], "sheet"))


def test_flipped_bytes_give_a_page_or_a_typed_error() -> None:
    random = np.random.default_rng(11)
    for form in ("PNG", "JPEG", "TIFF", "WEBP", "BMP", "GIF"):
        good = stored(page(size=(200, 260)), form)
        for _ in range(25):
            bad = bytearray(good)
            for place in random.integers(0, len(bad), 6):
                bad[place] = int(random.integers(0, 256))
            with contextlib.suppress(Damaged, UnsupportedType, TooLarge):
                list(open_pictures(bytes(bad), "sheet"))


def fax_of(pages: int) -> bytes:
    """A TIFF of small pages, as fax machines write it."""
    small = [page("1", (40, 50))] * pages
    return stored(small[0], "TIFF", save_all=True, append_images=small[1:], compression="group4")


def test_a_damaged_tiff_says_so_wherever_the_damage_is() -> None:
    """Its directory is scattered over the file: a byte of it may send a reader anywhere."""
    random = np.random.default_rng(12)
    for good in (stored(page(size=(60, 80)), "TIFF"), fax_of(3)):
        start = int.from_bytes(good[4:8], "little")
        for place in range(start, min(start + 150, len(good))):
            bad = bytearray(good)
            bad[place] = int(random.integers(0, 256))
            with contextlib.suppress(Damaged, UnsupportedType, TooLarge):
                list(open_pictures(bytes(bad), "sheet.tif"))


def test_more_pages_than_are_read() -> None:
    with pytest.raises(TooLarge, match="201 pages; at most 200 are read"):
        list(open_pictures(fax_of(201), "fax.tif"))


@pytest.mark.ocr
@pytest.mark.parametrize("marks", [[], [20, 40], [9, 20, 40, 80], [3, 3, 3]])
@pytest.mark.parametrize("paper", [255, 128, 0])
def test_a_page_with_next_to_nothing_on_it_has_no_figures(tmp_path: Path, marks: list[int], paper: int) -> None:
    image = Image.new("L", (850, 1100), paper)
    for number, size in enumerate(marks):
        image.paste(255 - paper, (100 + 150 * number, 100, 110 + 150 * number, 100 + size))
    (tmp_path / "blank.png").write_bytes(stored(image, "PNG"))
    sheet = read_sheet(tmp_path / "blank.png")
    assert [problem.code for problem in sheet.problems] == ["no-figures-found"]
    assert not sheet.analyses


def test_a_damaged_page_does_not_hold_back_the_others() -> None:
    pages = [page(size=(400, 500)) for _ in range(3)]
    data = bytearray(stored(pages[0], "TIFF", save_all=True, append_images=pages[1:], compression="tiff_adobe_deflate"))
    starts = [i for i in range(len(data) - 1) if data[i : i + 2] == b"\x78\x9c"]
    middle = starts[len(starts) // 2]
    data[middle + 2 : middle + 12] = b"\xff" * 10
    seen: list[int] = []

    def open_all() -> None:
        for opened in open_pictures(bytes(data), "scan.tif"):
            seen.append(opened.number)

    with pytest.raises(Damaged, match="page 2"):
        open_all()
    assert seen == [1, 3]


def test_an_animation_is_no_sheet() -> None:
    data = stored(page(), "GIF", save_all=True, append_images=[page().rotate(90), page().rotate(180)])
    with pytest.raises(UnsupportedType, match="animation"):
        list(open_pictures(data, "party.gif"))


def test_text_is_no_picture() -> None:
    with pytest.raises(UnsupportedType):
        list(open_pictures(b"Moisture;4.2\n" * 20, "sheet.png"))


def test_huge_dimensions_are_refused_before_they_are_decoded() -> None:
    header = struct.pack(">IIBBBBB", 200_000, 200_000, 8, 0, 0, 0, 0)
    chunk = b"IHDR" + header
    png = b"\x89PNG\r\n\x1a\n" + struct.pack(">I", 13) + chunk + struct.pack(">I", zlib.crc32(chunk))
    png += struct.pack(">I", 0) + b"IEND" + struct.pack(">I", zlib.crc32(b"IEND"))
    with pytest.raises(TooLarge, match="300 dpi"):
        list(open_pictures(png, "bomb.png"))


def test_the_pixel_cap_is_the_programs_own(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(picture, "MAX_PIXELS", 100_000)
    with pytest.raises(TooLarge):
        list(open_pictures(stored(page(), "PNG"), "sheet.png"))
