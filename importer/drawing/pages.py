"""Pictures of pages, drawn from the originals in a process of its own: a harmful document takes nothing down."""

from __future__ import annotations

import io
import threading
from collections import OrderedDict
from collections.abc import Sequence
from concurrent.futures import ProcessPoolExecutor
from concurrent.futures.process import BrokenProcessPool
from multiprocessing import get_context
from typing import TYPE_CHECKING, Any

from importer.drawing.boxes import RowRead, read_box
from importer.limits import MAX_MEMORY, MAX_PIXELS
from importer.words import Box, Word

if TYPE_CHECKING:
    from PIL import Image

    from importer.intake.source import Source

    _Drawn = tuple[Image.Image, float]  # with its pixels a point

SECONDS = 60.0
DPI = 144.0
MOST_KEPT = 24
_PAPER, _INK = "white", "#222222"


class Pictures:
    """Draws pages and keeps the last ones. One page is drawn at a time."""

    def __init__(self) -> None:
        self._kept: OrderedDict[tuple[str, int], bytes] = OrderedDict()
        self._guard = threading.Lock()
        self._pool: ProcessPoolExecutor | None = None

    def warm_up(self) -> None:
        """Starts the drawing process ahead of the first page."""
        self._ready().submit(_prepare)

    def _ready(self) -> ProcessPoolExecutor:
        if self._pool is None:
            self._pool = ProcessPoolExecutor(1, get_context("spawn"), _limit)
        return self._pool

    def draw(self, sha256: str, data: bytes, name: str, number: int, reading: str) -> bytes | None:
        """A page as PNG, with its dots an inch; None where it cannot be drawn."""
        with self._guard:
            if (sha256, number) in self._kept:
                self._kept.move_to_end((sha256, number))
                return self._kept[sha256, number]
            try:
                drawn: bytes | None = self._ready().submit(draw_page, data, name, number, reading).result(SECONDS)
            except (TimeoutError, BrokenProcessPool):
                self.close()
                return None
            except Exception:  # whatever a reader of other people's formats stumbles over
                return None
            if drawn is not None:
                self._kept[sha256, number] = drawn
                while len(self._kept) > MOST_KEPT:
                    self._kept.popitem(last=False)
            return drawn

    def read(
        self, data: bytes, name: str, number: int, reading: str, box: tuple[float, float, float, float], width: float
    ) -> RowRead | None:
        """What stands in a box of a page ``width`` points wide; None where it cannot be read."""
        with self._guard:
            try:
                asked = self._ready().submit(read_box, data, name, number, reading, box, width)
                read: RowRead = asked.result(SECONDS)
            except (TimeoutError, BrokenProcessPool):
                self.close()
                return None
            except Exception:  # as above
                return None
            return read

    def close(self) -> None:
        """Ends the drawing process, also in the midst of a page."""
        pool, self._pool = self._pool, None
        if pool is not None:
            for process in list((pool._processes or {}).values()):
                process.kill()
            pool.shutdown(wait=False, cancel_futures=True)


def _limit() -> None:
    """Sets the limits of the drawing process, and has it end with the one that started it, however that ends."""
    import multiprocessing
    import os
    import sys
    from multiprocessing.connection import wait

    parent = multiprocessing.parent_process()

    def end_with_parent() -> None:
        if parent is not None:
            wait([parent.sentinel])
            os._exit(0)

    threading.Thread(target=end_with_parent, daemon=True).start()

    if sys.platform != "win32":
        import resource
        import signal

        resource.setrlimit(resource.RLIMIT_AS, (MAX_MEMORY, MAX_MEMORY))
        signal.signal(signal.SIGINT, signal.SIG_IGN)


def _prepare() -> None:
    import pypdfium2  # noqa: F401

    import importer.intake.picture  # noqa: F401


def draw_page(data: bytes, name: str, number: int, reading: str) -> bytes | None:
    """One page as PNG, upright and level as it was read, so that places in points lie on it at its dots an inch."""
    from importer.intake.kind import kind_of

    drawn: _Drawn | None
    kind = kind_of(data, name)
    if kind == "pdf":
        drawn = _pdf_page(data, number, reading)
    elif kind == "picture":
        from importer.intake.picture import open_pictures

        found = next((one for one in open_pictures(data, name) if one.number == number), None)
        drawn = _as_read(found.image, found.dpi) if found is not None else None
    else:
        drawn = _table_page(data, name, number)
    if drawn is None:
        return None
    image, scale = drawn
    out = io.BytesIO()
    image.save(out, "PNG", optimize=False, compress_level=4, dpi=(72 * scale, 72 * scale))
    return out.getvalue()


def page_words(data: bytes, name: str, number: int, reading: str, box: Box, width: float) -> Sequence[Word]:
    """The words of a page ``width`` points wide; of a scan those that the optical reader finds in the box."""
    from importer.intake.kind import kind_of

    kind = kind_of(data, name)
    if kind == "pdf" and reading != "ocr":
        import pypdfium2 as pdfium2

        from importer.intake.pdf_drawing import read_drawing
        from importer.intake.pdf_text import read_text_layer

        page = pdfium2.PdfDocument(data)[number - 1]
        area = Box(*page.get_cropbox())
        return read_text_layer(page.raw, read_drawing(page.raw, area), area, page.get_rotation() // 90).words
    if kind not in ("pdf", "picture"):
        from importer.intake.table_file import read_table_file

        pages = read_table_file(_source(data, name))
        return next((one.words for one in pages if one.number == number), ())
    return _words_by_eye(data, name, number, box, width)


def _words_by_eye(data: bytes, name: str, number: int, box: Box, width: float) -> list[Word]:
    from PIL import Image

    from importer.intake import ocr

    drawn = draw_page(data, name, number, "ocr")
    if drawn is None:
        return []
    image = Image.open(io.BytesIO(drawn)).convert("L")
    points = width / image.width
    part = image.crop(tuple(round(edge / points) for edge in box))  # type: ignore[arg-type]
    enlarge = 2
    seen = ocr.read_block(part.resize((part.width * enlarge, part.height * enlarge)), dpi=72.0 / points * enlarge)
    unit = points / enlarge
    return [
        Word(w.text, box.x0 + w.x0 * unit, box.top + w.top * unit, box.x0 + w.x1 * unit, box.top + w.bottom * unit)
        for w in seen
    ]


def _pdf_page(data: bytes, number: int, reading: str) -> _Drawn:
    import pypdfium2 as pdfium2

    from importer.intake.pdf_drawing import read_drawing
    from importer.intake.pdf_text import read_text_layer
    from importer.words import Box

    document = pdfium2.PdfDocument(data)
    page = document[number - 1]
    width, height = page.get_size()
    scale = (300.0 if reading == "ocr" else DPI) / 72
    if width * height * scale * scale > MAX_PIXELS:
        scale = (MAX_PIXELS / (width * height)) ** 0.5
    image: Image.Image = page.render(scale=scale).to_pil().convert("RGB")
    if reading == "ocr":
        return _as_read(image, 72 * scale)
    area, page_turn = Box(*page.get_cropbox()), page.get_rotation() // 90
    layer = read_text_layer(page.raw, read_drawing(page.raw, area), area, page_turn)
    turns = (layer.turn - page_turn) % 4
    return (image.rotate(-90 * turns, expand=True) if turns else image), scale


def _as_read(image: Image.Image, dpi: float | None) -> _Drawn:
    """A scan brought upright and level the way the reader does it."""
    import numpy as np

    from importer.intake import second
    from importer.intake.prepare import geometry
    from importer.intake.prepare.page import A4_LONGER_SIDE, prepare

    page = prepare(np.asarray(image.convert("L")), dpi, second.upside_down)
    if page is None:
        return image, dpi / 72 if dpi else max(image.size) / A4_LONGER_SIDE
    height, width = page.even.shape
    return geometry.resample(image.convert("RGB"), page.matrix, (width, height)), 1 / page.points


def _source(data: bytes, name: str) -> Source:
    import hashlib
    from datetime import UTC, datetime
    from pathlib import Path

    from importer.intake.kind import kind_of
    from importer.intake.source import Source

    return Source(Path(name), name, hashlib.sha256(data).hexdigest(), kind_of(data, name), data, datetime.now(UTC))


def _table_page(data: bytes, name: str, number: int) -> _Drawn | None:
    """A sheet of a spreadsheet, its cells drawn where the reader placed them."""
    from PIL import Image, ImageDraw, ImageFont

    from importer.intake.table_file import read_table_file

    page: Any = next((one for one in read_table_file(_source(data, name)) if one.number == number), None)
    if page is None:
        return None
    scale = min(DPI / 72, (MAX_PIXELS / max(page.width * page.height, 1.0)) ** 0.5)
    image = Image.new("RGB", (max(1, round(page.width * scale)), max(1, round(page.height * scale))), _PAPER)
    pen = ImageDraw.Draw(image)
    for word in page.words:
        size = max(6.0, 0.8 * (word.bottom - word.top) * scale)
        pen.text((word.x0 * scale, word.top * scale), word.text, fill=_INK, font=ImageFont.load_default(size))
    return image, scale
