"""Draws a page before and after preparation, with what was read on it.

    python -m tests.scans.look PICTURE [OUT.png]
    python -m tests.scans.look --drawn 12 --as phone [OUT.png]

Left the picture as it came, right the prepared page: words of the main reader in green boxes (paler where less sure),
second readings in red under their cells, ruling lines blue, places with unread ink magenta.
"""

from __future__ import annotations

import argparse
from pathlib import Path

import numpy as np
from PIL import Image, ImageDraw, ImageFont

from importer.intake import second
from importer.intake.picture import Picture, open_pictures, read_picture
from importer.intake.prepare.page import prepare
from importer.words import Page
from tests.scans import degrade, tables

HEIGHT = 1400


def drawn_over(picture: Picture, page: Page) -> Image.Image:
    """The two pictures side by side."""
    grey = np.asarray(picture.image.convert("L"))
    prepared = prepare(grey, picture.dpi, second.upside_down)
    after = Image.fromarray(grey if prepared is None else prepared.even).convert("RGB")
    after = after.resize((round(after.width * HEIGHT / after.height), HEIGHT))
    scale = HEIGHT / page.height
    pen = ImageDraw.Draw(after)
    font = ImageFont.load_default(11)
    for rule in page.rules:
        pen.line([edge * scale for edge in rule], fill=(0, 0, 255), width=2)
    for word in page.words:
        pale = round(180 * (1 - word.confidence))
        pen.rectangle([edge * scale for edge in word.box], outline=(pale, 150, pale))
        pen.text((word.x0 * scale, word.top * scale - 11), word.text, fill=(0, 110, 0), font=font)
    for reading in page.second:
        pen.text((reading.box.x0 * scale, reading.box.bottom * scale), reading.text, fill=(220, 0, 0), font=font)
    for box in page.lost:
        pen.rectangle([edge * scale for edge in box], outline=(255, 0, 255), width=2)
    if page.doubt:
        pen.text((10, 4), page.doubt, fill=(255, 0, 255), font=font)
    before = picture.image.convert("RGB")
    before = before.resize((round(before.width * HEIGHT / before.height), HEIGHT))
    both = Image.new("RGB", (before.width + after.width + 10, HEIGHT), "grey")
    both.paste(before, (0, 0))
    both.paste(after, (before.width + 10, 0))
    return both


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("picture", nargs="?")
    parser.add_argument("out", nargs="?", default="look.png")
    parser.add_argument("--drawn", type=int, help="seed of an invented table instead of a picture file")
    parser.add_argument("--as", dest="kind", default="clean300", choices=degrade.CLASSES)
    options = parser.parse_args()
    if options.drawn is not None:
        data = degrade.stored(degrade.degrade(tables.draw(options.drawn).image, options.kind, options.drawn))
        out = Path(options.picture or options.out)
    else:
        data, out = Path(options.picture).read_bytes(), Path(options.out)
    for picture in open_pictures(data, "picture"):
        page = read_picture(picture.image, picture.number, picture.dpi)
        place = out if picture.number == 1 else out.with_stem(f"{out.stem}-{picture.number}")
        drawn_over(picture, page).save(place)
        print(
            f"{place}: {len(page.words)} words, {len(page.second)} second readings, {len(page.lost)} lost",
            page.doubt or "",
        )


if __name__ == "__main__":
    main()
