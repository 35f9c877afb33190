"""The place of a figure on its sheet, cut out of the original as a picture."""

from __future__ import annotations

import base64
import io
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from importer.drawing.pages import Pictures
    from importer.models import Figure, Source

_ABOVE = 7.0  # points of the sheet that are shown above and below the row
_LEAST = 4


def crop_of(pictures: Pictures, data: bytes, source: Source, figure: Figure) -> str | None:
    """The row of a figure, as wide as the page, as the address of an inline PNG; None where there is no picture."""
    if figure.printed is None or source.reading == "spreadsheet":
        return None
    drawn = pictures.draw(source.sha256, data, source.file, figure.printed.page, source.reading)
    if drawn is None:
        return None
    from PIL import Image

    image = Image.open(io.BytesIO(drawn))
    scale = image.info["dpi"][1] / 72
    _, top, _, bottom = figure.printed.box
    upper, lower = max(0, round((top - _ABOVE) * scale)), min(image.height, round((bottom + _ABOVE) * scale))
    if lower - upper < _LEAST:
        return None
    cut = image.crop((0, upper, image.width, lower))
    out = io.BytesIO()
    cut.convert("L").save(out, "PNG", optimize=True)
    return "data:image/png;base64," + base64.b64encode(out.getvalue()).decode("ascii")
