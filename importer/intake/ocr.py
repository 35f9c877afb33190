"""The main optical reader: Tesseract through pytesseract. No other module knows that program.

Debian's and most installers' ``eng`` data are the fast LSTM data, which lose fewer decimal points than the
"standard" ones.
"""

from __future__ import annotations

import errno
import os
import shutil
import site
import struct
import sysconfig
import tempfile
from collections.abc import Iterator, Sequence
from contextlib import contextmanager
from functools import cache
from pathlib import Path
from typing import TYPE_CHECKING, NamedTuple

from importer.errors import Damaged, NoTextAndNoOcr, TookTooLong

if TYPE_CHECKING:
    from PIL import Image

REMEDY = (
    "this page is a picture and has to be read by Tesseract, which was not found. Install it: Debian or Ubuntu "
    "'apt install tesseract-ocr', macOS 'brew install tesseract', Windows the UB Mannheim installer with its folder "
    "added to PATH; then read the sheet again"
)
# Folders that the usual Windows installers write to without touching PATH.
WINDOWS_FOLDERS = (
    r"%ProgramFiles%\Tesseract-OCR",
    r"%ProgramFiles(x86)%\Tesseract-OCR",
    r"%LocalAppData%\Programs\Tesseract-OCR",
    r"%LocalAppData%\Tesseract-OCR",
)
SECONDS_A_PAGE = 60
LEAST_FREE = 1024 * 1024  # bytes on the disk of temporary files
LONGEST_SIDE = 32_000  # Tesseract refuses 32,768 pixels and more
# Lines are not read a second time as white on black: dark bands have been turned before.
BLOCK = "--psm 6 --oem 1 -c tessedit_do_invert=0"
TSV_PAGE, TSV_CONFIDENCE, TSV_TEXT = 1, 10, 11
# The older engine: a classifier of single letter shapes. It loses other marks than the network does, but needs the
# "standard" data; the common fast data do not hold it.
LEGACY = "tesseract-legacy"
NAME = "tesseract"
LEGACY_LINE = "--psm 7 --oem 0"
LEGACY_SHAPES = 3  # where a data file states the place of its letter shapes


class Seen(NamedTuple):
    """One word as the reader saw it: text, box in pixels of the picture given, confidence 0..1."""

    text: str
    x0: float
    top: float
    x1: float
    bottom: float
    confidence: float


@cache
def find_program() -> str | None:
    """Where the Tesseract program is, or None."""
    found = shutil.which("tesseract")
    if found:
        return found
    candidates = [Path(os.path.expandvars(folder)) / "tesseract.exe" for folder in WINDOWS_FOLDERS]
    return next((str(candidate) for candidate in candidates if candidate.is_file()), None)


def read_block(image: Image.Image, dpi: float = 300.0, options: str = BLOCK) -> list[Seen]:
    """Read a picture as one block of lines; raises ``NoTextAndNoOcr``, ``TookTooLong`` or ``Damaged``."""
    if max(image.size) > LONGEST_SIDE or min(image.size) < 3:
        return []
    with _as_file(image) as path:
        return [word for _, word in _rows(_run(path, f"{options} --dpi {round(dpi)}"))]


def read_blocks(images: Sequence[Image.Image], dpi: float = 300.0) -> list[list[Seen]]:
    """The words of several pictures, each a block of lines, in one run; raises like ``read_block``."""
    kept = [i for i, image in enumerate(images) if max(image.size) <= LONGEST_SIDE and min(image.size) >= 3]
    found: list[list[Seen]] = [[] for _ in images]
    with _as_files([images[i] for i in kept]) as listing:
        for page, word in _rows(_run(listing, f"{BLOCK} --dpi {round(dpi)}")):
            if 1 <= page <= len(kept):
                found[kept[page - 1]].append(word)
    return found


def read_lines(images: Sequence[Image.Image]) -> list[tuple[str, float]]:
    """Text and confidence (0..1) of pictures of one line each, by the older engine; ("", 0.0) for what it cannot read.

    Call only where ``legacy_data()`` is not None. Raises like ``read_block``.
    """
    data = legacy_data()
    if data is None or not images:
        return [("", 0.0)] * len(images)
    with _as_files(images) as listing:
        try:
            tsv = _run(listing, f'{LEGACY_LINE} --dpi 300 --tessdata-dir "{data}"')
        except Damaged:  # one picture that it cannot digest ends its run; it is only ever a further opinion
            return [("", 0.0)] * len(images)
    found: list[list[Seen]] = [[] for _ in images]
    for page, word in _rows(tsv):
        if 1 <= page <= len(found):
            found[page - 1].append(word)
    return [
        (" ".join(word.text for word in words), min((word.confidence for word in words), default=0.0))
        for words in found
    ]


@cache
def legacy_data() -> str | None:
    """The folder with English data that the older engine can use, or None."""
    folders = [Path(sysconfig.get_path("data")) / "share" / "tessdata", Path(site.getuserbase()) / "share" / "tessdata"]
    if os.environ.get("TESSDATA_PREFIX"):
        folders.append(Path(os.environ["TESSDATA_PREFIX"]))
    program = find_program()
    if program is None:
        return None
    folders.append(Path(program).parent / "tessdata")
    folders += sorted(Path("/usr/share/tesseract-ocr").glob("*/tessdata"))
    folders += [Path("/usr/share/tessdata"), Path("/usr/local/share/tessdata"), Path("/opt/homebrew/share/tessdata")]
    return next((str(folder) for folder in folders if _holds_shapes(folder / "eng.traineddata")), None)


def _holds_shapes(path: Path) -> bool:
    """A data file starts with the number of its parts and the offset of each, -1 for one that it does not hold."""
    try:
        with path.open("rb") as file:
            head = file.read(4 + 8 * (LEGACY_SHAPES + 1))
        count, *offsets = struct.unpack(f"<i{LEGACY_SHAPES + 1}q", head)
    except (OSError, struct.error):
        return False
    return bool(count > LEGACY_SHAPES and offsets[LEGACY_SHAPES] > 0)


@contextmanager
def _as_file(image: Image.Image) -> Iterator[str]:
    """A plain grey file: compressing a page as PNG costs more than reading it."""
    with tempfile.TemporaryDirectory(prefix="onebasis-") as folder:
        path = Path(folder) / "page.pgm"
        image.convert("L").save(path)
        try:
            yield str(path)
        finally:
            _check_room(folder)


@contextmanager
def _as_files(images: Sequence[Image.Image]) -> Iterator[str]:
    """A file that lists one plain grey file for each picture."""
    with tempfile.TemporaryDirectory(prefix="onebasis-") as folder:
        paths = [Path(folder) / f"{index}.pgm" for index in range(len(images))]
        for path, image in zip(paths, images, strict=True):
            image.convert("L").save(path)
        listing = Path(folder) / "pictures.txt"
        listing.write_text("\n".join(map(str, paths)), encoding="utf-8")
        try:
            yield str(listing)
        finally:
            _check_room(folder)


def _check_room(folder: str) -> None:
    """Raises OSError where the disk was full: the program writes what it read by half then, and does not tell."""
    if shutil.disk_usage(folder).free < LEAST_FREE:
        raise OSError(errno.ENOSPC, os.strerror(errno.ENOSPC), folder)


def _run(path: str, options: str, language: str = "eng") -> str:
    """Tesseract's TSV for a picture file or a list of them."""
    program = find_program()
    if program is None:
        raise NoTextAndNoOcr(REMEDY)
    import pytesseract

    os.environ.setdefault("OMP_THREAD_LIMIT", "1")  # its threads fight each other: one is fastest
    pytesseract.pytesseract.tesseract_cmd = program
    try:
        return str(pytesseract.image_to_data(path, lang=language, config=options, timeout=SECONDS_A_PAGE))
    except pytesseract.TesseractNotFoundError as error:
        raise NoTextAndNoOcr(REMEDY) from error
    except pytesseract.TesseractError as error:
        if "load" in str(error) and "language" in str(error):
            raise NoTextAndNoOcr(f"Tesseract has no '{language}' data: install tesseract-ocr-{language}") from error
        raise Damaged(f"Tesseract could not read this page ({str(error.message)[-200:]})") from error
    except RuntimeError as error:  # pytesseract's own way to say that the time is up
        raise TookTooLong(
            f"no text was found on a page within {SECONDS_A_PAGE} seconds. If it shows a sheet, scan it at 300 dpi or "
            "photograph it flat and filling the frame."
        ) from error


def _rows(tsv: str) -> Iterator[tuple[int, Seen]]:
    """Page number and word of each word row."""
    for line in tsv.splitlines()[1:]:
        cells = line.split("\t")
        if len(cells) <= TSV_TEXT or not cells[TSV_TEXT].strip():
            continue
        left, top, width, height = (float(cell) for cell in cells[6:10])
        confidence = max(0.0, min(1.0, float(cells[TSV_CONFIDENCE]) / 100.0))
        yield int(cells[TSV_PAGE]), Seen(cells[TSV_TEXT].strip(), left, top, left + width, top + height, confidence)
