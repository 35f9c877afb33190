"""The place of a figure on its sheet, cut out of the original as a picture."""

from __future__ import annotations

import base64
import io
from typing import TYPE_CHECKING

from importer.limits import MAX_PIXELS

if TYPE_CHECKING:
    from PIL import Image

    from importer.models import Figure

_DPI = 144.0
_ABOVE = 7.0  # points of the sheet that are shown above and below the row
_LEAST = 4


def crop_of(data: bytes, name: str, figure: Figure, reading: str) -> str | None:
    """The row of a figure, as wide as the page, as the address of an inline PNG; None where there is no picture."""
    if figure.printed is None or reading == "spreadsheet":
        return None
    try:
        found = _page(data, name, figure.printed.page, reading)
    except Exception:  # whatever a reader of other people's formats stumbles over: the report goes without a picture
        return None
    if found is None:
        return None
    image, scale = found
    _, top, _, bottom = figure.printed.box
    upper, lower = max(0, round((top - _ABOVE) * scale)), min(image.height, round((bottom + _ABOVE) * scale))
    if lower - upper < _LEAST:
        return None
    cut = image.crop((0, upper, image.width, lower))
    out = io.BytesIO()
    cut.convert("L").save(out, "PNG", optimize=True)
    return "data:image/png;base64," + base64.b64encode(out.getvalue()).decode("ascii")


def _page(data: bytes, name: str, number: int, reading: str) -> tuple[Image.Image, float] | None:
    """A page, upright as it was read, and its pixels a point."""
    from importer.intake.kind import kind_of

    if kind_of(data, name) == "pdf":
        return _pdf_page(data, number, reading)
    from importer.intake.picture import open_pictures

    found = next((one for one in open_pictures(data, name) if one.number == number), None)
    return _as_read(found.image, found.dpi) if found is not None else None


def _pdf_page(data: bytes, number: int, reading: str) -> tuple[Image.Image, float]:
    import pypdfium2

    from importer.intake.pdf_drawing import read_drawing
    from importer.intake.pdf_text import read_text_layer
    from importer.words import Box

    document = pypdfium2.PdfDocument(data)
    try:
        page = document[number - 1]
        width, height = page.get_size()
        scale = (300.0 if reading == "ocr" else _DPI) / 72
        scale = min(scale, (MAX_PIXELS / (width * height)) ** 0.5)
        image: Image.Image = page.render(scale=scale).to_pil().convert("RGB")
        if reading == "ocr":
            return _as_read(image, 72 * scale)
        area, page_turn = Box(*page.get_cropbox()), page.get_rotation() // 90
        layer = read_text_layer(page.raw, read_drawing(page.raw, area), area, page_turn)
        turns = (layer.turn - page_turn) % 4
        return (image.rotate(-90 * turns, expand=True) if turns else image), scale
    finally:
        document.close()


def _as_read(image: Image.Image, dpi: float | None) -> tuple[Image.Image, float]:
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
