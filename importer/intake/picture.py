"""Picture files -> upright pages of words: opens scans and photographs, page by page, and has them read."""

from __future__ import annotations

import io
import struct
import warnings
import zlib
from collections.abc import Iterator
from typing import NamedTuple

import numpy as np
from PIL import Image, ImageOps, UnidentifiedImageError

from importer.errors import Damaged, EmptyFile, SheetError, TooLarge, UnsupportedType
from importer.intake.prepare.coloured import part
from importer.intake.scan import read_page
from importer.limits import MAX_PAGES, MAX_PIXELS
from importer.words import Page

FORMATS = ("PNG", "JPEG", "TIFF", "WEBP", "BMP", "GIF")
# Pages between a receipt and A2: a resolution that makes the page smaller or larger than this was never measured
# (cameras and editors write 72 or 96 into every file).
PLAUSIBLE_LONGER_SIDE_INCHES = (2.5, 24.0)
# Brands of the ISO base media file format that hold HEIF still pictures (ISO/IEC 23008-12).
HEIF_BRANDS = (b"heic", b"heix", b"hevc", b"heim", b"heis", b"hevm", b"hevs", b"mif1", b"msf1")
# Widths of a fax line in pixels at 204 per inch: A4, B4 and A3 (ITU-T Rec. T.4).
FAX_WIDTHS = (1728, 2048, 2432)
FAX_SQUARE = 204.0
FAX_STANDARD_LINES = 98.0
# What Pillow's readers raise on files that are not what they claim to be.
BROKEN = (
    OSError,
    SyntaxError,
    ValueError,
    EOFError,
    KeyError,
    TypeError,
    IndexError,
    OverflowError,
    struct.error,
    zlib.error,
)


class Picture(NamedTuple):
    """One page of a picture file: page number from 1, the picture as L or RGB, pixels per inch (None: unknown)."""

    number: int
    image: Image.Image
    dpi: float | None


def open_pictures(data: bytes, name: str) -> Iterator[Picture]:
    """Yield every page of a picture file, turned as its camera noted, pixels square.

    Raises ``EmptyFile``, ``UnsupportedType``, ``TooLarge`` or ``Damaged``. A damaged page of a file with several does
    not hold back the others: the error comes after the last good page.
    """
    if not data:
        raise EmptyFile(f"{name} is empty (0 bytes); ask for it again")
    image, frames = _open(data, name)
    if frames > 1 and image.format in ("GIF", "WEBP", "PNG"):
        raise UnsupportedType(f"{name} is an animation; send the page as PDF, PNG, JPEG or TIFF")
    if image.format == "MPO":  # a camera's JPEG with a preview behind the photograph
        frames = 1
    if frames > MAX_PAGES:
        raise TooLarge(f"{name} has {frames} pages; at most {MAX_PAGES} are read. Split it and try again.")
    failure: SheetError | None = None
    for index in range(frames):
        try:
            yield _frame(image, index, name)
        except (SheetError, *BROKEN, Image.DecompressionBombError) as error:
            failure = _explain(error, name, index + 1, frames)
    if failure is not None:
        raise failure


def _explain(error: Exception, name: str, number: int, frames: int) -> SheetError:
    if isinstance(error, SheetError):
        return error
    if isinstance(error, Image.DecompressionBombError):
        return _too_large(name)
    where = f"page {number} of {name}" if frames > 1 else name
    return Damaged(f"{where} is damaged and cannot be opened ({error}); ask for it again")


def _too_large(name: str) -> TooLarge:
    millions = MAX_PIXELS // 1_000_000
    return TooLarge(f"{name} has more than {millions} million pixels; scan the page at 300 dpi")


def _open(data: bytes, name: str) -> tuple[Image.Image, int]:
    """The picture, nothing of it decoded yet, and how many frames it has."""
    formats = [*FORMATS]
    if data[4:8] == b"ftyp" and data[8:12] in HEIF_BRANDS:
        _register_heif(name)
        formats = ["HEIF"]
    try:
        with warnings.catch_warnings():
            warnings.simplefilter("ignore")
            image = Image.open(io.BytesIO(data), formats=formats)
            # Counting walks through the whole file, and a damaged one may trip it up.
            return image, int(getattr(image, "n_frames", 1))
    except Image.DecompressionBombError as error:
        raise _too_large(name) from error
    except UnidentifiedImageError as error:
        if _looks_like_picture(data):
            raise Damaged(f"{name} is damaged and cannot be opened; ask for it again") from error
        raise UnsupportedType(f"{name} is not a picture that can be read: send PDF, PNG, JPEG or TIFF") from error
    except BROKEN as error:
        raise Damaged(f"{name} is damaged and cannot be opened ({error}); ask for it again") from error


def _looks_like_picture(data: bytes) -> bool:
    starts = (b"\x89PNG", b"\xff\xd8\xff", b"II*\x00", b"MM\x00*", b"BM", b"GIF8")
    return data.startswith(starts) or (data[:4] == b"RIFF" and data[8:12] == b"WEBP") or data[4:8] == b"ftyp"


def _register_heif(name: str) -> None:
    try:
        import pillow_heif
    except ImportError as error:
        raise UnsupportedType(
            f"{name} is a HEIC photograph: install the extra with pip install 'onebasis[heic]', or send it as JPEG"
        ) from error
    pillow_heif.register_heif_opener()


def _frame(image: Image.Image, index: int, name: str) -> Picture:
    with warnings.catch_warnings():
        warnings.simplefilter("ignore")
        image.seek(index)
        if image.width * image.height > MAX_PIXELS:  # before load(): opening has decoded nothing yet
            raise _too_large(name)
        image.load()
    x_dpi, y_dpi = _resolution(image)
    upright = ImageOps.exif_transpose(image) or image
    if upright.size != image.size:
        x_dpi, y_dpi = y_dpi, x_dpi
    plain = _plain(upright)
    if x_dpi and y_dpi and abs(x_dpi - y_dpi) > 0.03 * max(x_dpi, y_dpi):
        plain, x_dpi = _square(plain, x_dpi, y_dpi, name)
    return Picture(index + 1, plain, _plausible(x_dpi, plain))


def _resolution(image: Image.Image) -> tuple[float | None, float | None]:
    """Pixels per inch across and down as the file states them; a fax page without them is known by its line."""
    stated = image.info.get("dpi")
    try:
        x_dpi, y_dpi = (float(stated[0]), float(stated[1])) if stated else (0.0, 0.0)
    except (TypeError, ValueError, IndexError, ZeroDivisionError):
        x_dpi = y_dpi = 0.0
    known = 1.0 < x_dpi < 10_000.0 and 1.0 < y_dpi < 10_000.0
    squashed = image.mode == "1" and image.width in FAX_WIDTHS and image.height < 0.85 * image.width
    if squashed and (not known or x_dpi == y_dpi):
        return FAX_SQUARE, FAX_STANDARD_LINES
    return (x_dpi, y_dpi) if known else (None, None)


def _square(image: Image.Image, x_dpi: float, y_dpi: float, name: str) -> tuple[Image.Image, float]:
    """Stretch the coarser axis so that pixels are square."""
    fine = max(x_dpi, y_dpi)
    size = (max(1, round(image.width * fine / x_dpi)), max(1, round(image.height * fine / y_dpi)))
    if max(fine / x_dpi, fine / y_dpi) > 5.0:  # no device has such pixels: the file is wrong about itself
        return image, 0.0
    if size[0] * size[1] > MAX_PIXELS:
        raise _too_large(name)
    return image.resize(size, Image.Resampling.BICUBIC), fine


def _plausible(dpi: float | None, image: Image.Image) -> float | None:
    low, high = PLAUSIBLE_LONGER_SIDE_INCHES
    return dpi if dpi and low <= max(image.size) / dpi <= high else None


def _plain(image: Image.Image) -> Image.Image:
    """The picture as 8-bit grey or RGB on white paper, whatever it was stored as."""
    if image.mode in ("L", "RGB"):
        return image
    if image.mode == "1":
        return image.convert("L")
    if image.mode.startswith("I") or image.mode == "F":
        return _eight_bit(image)
    if image.mode in ("LA", "PA", "RGBA", "La", "RGBa") or "transparency" in image.info:
        layer = image.convert("RGBA")
        paper = Image.new("RGBA", layer.size, "white")
        return Image.alpha_composite(paper, layer).convert("RGB")
    return image.convert("RGB")


def _eight_bit(image: Image.Image) -> Image.Image:
    """Deep grey to 8 bits; ``convert`` would clip everything above 255 to white."""
    levels = np.nan_to_num(np.asarray(image, dtype=np.float64))
    high = float(levels.max(initial=0.0))
    if image.mode == "F" and high <= 1.0:
        top = 1.0
    else:
        top = 65535.0 if image.mode.startswith("I;16") or high > 255 else 255.0
    return Image.fromarray(np.clip(levels * (255.0 / top), 0, 255).astype(np.uint8))


def read_picture(image: Image.Image, number: int, dpi: float | None = None) -> Page:
    """Read one picture of a page; coordinates are points of the upright page.

    Where the resolution is unknown the longer side is taken for 842 pt (A4). Raises ``NoTextAndNoOcr``.
    """
    parted = part(image)
    return read_page(parted.grey, number, dpi, parted.taken)
