"""PDF bytes to pages of words. Whether a page is text or a picture of text is decided here, page by page."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from typing import TYPE_CHECKING, Any

import pypdfium2 as pdfium2

from importer.errors import Damaged, EmptyFile, PasswordProtected, TooLarge, UnsupportedType
from importer.intake import pdf_attachments
from importer.intake.glyphs import first_mismatch
from importer.intake.marred import Stroke, marred_words
from importer.intake.pdf_drawing import Drawing, read_drawing
from importer.intake.pdf_text import TextLayer, read_text_layer, upright
from importer.limits import MAX_PAGES, MAX_PIXELS, MAX_WORDS_PER_PAGE
from importer.words import Box, Page, SecondReading, Word

if TYPE_CHECKING:
    from PIL import Image

ReadPicture = Callable[["Image.Image", int, "float | None"], Page]

# More characters than this share without a Unicode value: the font's mapping is missing and the text is garbage.
DAMAGED_SHARE = 0.03
# A layer of which this share cannot be seen is somebody's old reading of the picture above it.
HIDDEN_SHARE = 0.5
RENDER_DPI = 300
# With fewer visible characters than this on a page that is mostly a picture, the picture is the sheet.
FEW_CHARACTERS = 40
PICTURE_SHARE = 0.35


def read_pdf(
    data: bytes, name: str, read_picture: ReadPicture, *, by_eye: bool = False, most: int = MAX_PAGES
) -> Iterator[Page]:
    """Yields the pages of a PDF in order; ``read_picture`` reads a rendered page that has no usable text.

    ``by_eye`` has every page read as a picture, whatever its text layer says; ``most`` pages at the most.

    Raises PasswordProtected, Damaged, TooLarge, EmptyFile, whatever ``read_picture`` raises, and after the last page
    UnsupportedType where there are files inside that may be sheets.
    """
    try:
        document = pdfium2.PdfDocument(data)
    except pdfium2.PdfiumError as error:
        if "password" in str(error).lower():
            raise PasswordProtected(
                f"{name} is locked with a password. Ask the sender for an open copy, or print it to a new PDF."
            ) from None
        raise Damaged(f"{name} is not a readable PDF. Ask the sender to send it again.") from None
    try:
        count = len(document)
        if count > MAX_PAGES:
            raise TooLarge(f"{name} has {count} pages; at most {MAX_PAGES} are read. Split it and try again.")
        if count == 0:
            raise EmptyFile(f"{name} has no pages. Ask the sender to send it again.")
        inside = list(pdf_attachments.names_in_list(document))
        for index in range(min(count, most)):
            yield _read_page(document, index, name, read_picture, by_eye, inside)
        told = pdf_attachments.told_of(inside, name)
        if told is not None and not by_eye:
            raise UnsupportedType(told)
    finally:
        document.close()


def _read_page(
    document: Any, index: int, name: str, read_picture: ReadPicture, by_eye: bool, inside: list[str]
) -> Page:
    """One page; the names of files behind pins on it are added to ``inside``."""
    try:
        page = document[index]
    except pdfium2.PdfiumError:
        raise Damaged(f"Page {index + 1} of {name} cannot be opened. Ask the sender to send it again.") from None
    try:
        left, bottom, right, top = page.get_cropbox()
        area = Box(left, bottom, right, top)
        page_turn = page.get_rotation() // 90
        inside += pdf_attachments.names_on_page(page.raw)
        drawing = read_drawing(page.raw, area)
        layer = read_text_layer(page.raw, drawing, area, page_turn)
        if by_eye or _is_picture(layer, drawing) or first_mismatch(page, layer.samples) is not None:
            return _read_as_picture(page, index + 1, layer, read_picture)
        rules = tuple(upright(rule, layer.turn, area) for rule in drawing.rules)
        return Page(
            number=index + 1,
            width=layer.width,
            height=layer.height,
            words=layer.words[:MAX_WORDS_PER_PAGE],
            reading="text",
            rules=rules,
            hidden=layer.hidden + layer.aslant,
            marred=marred_words(layer.words, layer.hidden, rules, _strokes(drawing, layer.turn, area)),
            doubt=None if len(layer.words) <= MAX_WORDS_PER_PAGE else "The page holds more words than are read.",
        )
    finally:
        page.close()


def _strokes(drawing: Drawing, turn: int, area: Box) -> list[Stroke]:
    """The slanting lines of a page as they lie on the upright page."""
    ends = [
        (upright(Box(x0, y0, x0, y0), turn, area), upright(Box(x1, y1, x1, y1), turn, area))
        for x0, y0, x1, y1 in drawing.strokes
    ]
    return [(a.x0, a.top, b.x0, b.top) for a, b in ends]


def _is_picture(layer: TextLayer, drawing: Drawing) -> bool:
    """True where the page has to be read by eye: no text, garbage, or text nobody sees under a picture."""
    seen = sum(len(word.text) for word in layer.words)
    unseen = sum(len(word.text) for word in layer.hidden)
    if seen == 0:
        return drawing.picture_share > 0.02 or unseen > 0 or bool(drawing.covers or drawing.rules)
    if layer.damaged > DAMAGED_SHARE:
        return True
    if unseen > HIDDEN_SHARE * (seen + unseen):
        return True
    return seen < FEW_CHARACTERS and drawing.picture_share > PICTURE_SHARE


def _read_as_picture(page: Any, number: int, layer: TextLayer, read_picture: ReadPicture) -> Page:
    width, height = page.get_size()
    scale = RENDER_DPI / 72
    if width * height * scale * scale > MAX_PIXELS:
        scale = (MAX_PIXELS / (width * height)) ** 0.5
    bitmap = page.render(scale=scale, grayscale=True)
    try:
        image = bitmap.to_pil().convert("L")
    finally:
        bitmap.close()
    seen = read_picture(image, number, 72 * scale)
    if not layer.hidden or layer.damaged > DAMAGED_SHARE:
        return seen
    return Page(
        number=seen.number,
        width=seen.width,
        height=seen.height,
        words=seen.words,
        reading=seen.reading,
        rules=seen.rules,
        second=seen.second + tuple(_old_reading(word) for word in layer.hidden),
        doubt=seen.doubt,
        lost=seen.lost,
    )


def _old_reading(word: Word) -> SecondReading:
    return SecondReading(word.text, word.box, "text layer")
