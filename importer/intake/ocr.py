"""The main optical reader: Tesseract through pytesseract. No other module knows that program.

Debian's and most installers' ``eng`` data are the fast LSTM data, which lose fewer decimal points than the
"standard" ones.
"""

from __future__ import annotations

import os
import shutil
import tempfile
from collections.abc import Iterable, Iterator
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
SECONDS_A_PAGE = 120
LONGEST_SIDE = 32_000  # Tesseract refuses 32,768 pixels and more
BLOCK = "--psm 6 --oem 1"
TSV_CONFIDENCE, TSV_TEXT = 10, 11


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
        return list(_words(_run(path, f"{options} --dpi {round(dpi)}")))


@contextmanager
def _as_file(image: Image.Image) -> Iterator[str]:
    """A plain grey file: compressing a page as PNG costs more than reading it."""
    with tempfile.TemporaryDirectory(prefix="onebasis-") as folder:
        path = Path(folder) / "page.pgm"
        image.convert("L").save(path)
        yield str(path)


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
        raise Damaged(f"Tesseract could not read this page ({error.message})") from error
    except RuntimeError as error:  # pytesseract's own way to say that the time is up
        raise TookTooLong(f"reading this page took more than {SECONDS_A_PAGE} seconds; scan it at 300 dpi") from error


def _words(tsv: str) -> Iterable[Seen]:
    for line in tsv.splitlines()[1:]:
        cells = line.split("\t")
        if len(cells) <= TSV_TEXT or not cells[TSV_TEXT].strip():
            continue
        left, top, width, height = (float(cell) for cell in cells[6:10])
        confidence = max(0.0, min(1.0, float(cells[TSV_CONFIDENCE]) / 100.0))
        yield Seen(cells[TSV_TEXT].strip(), left, top, left + width, top + height, confidence)
