"""The text layer of PDF pages: positions, turns, what cannot be seen, and layers that lie."""

from __future__ import annotations

import io
import re
from collections.abc import Callable

import pdfplumber
import pytest
from PIL import Image
from reportlab.lib.utils import ImageReader
from reportlab.pdfbase import pdfmetrics
from reportlab.pdfbase.ttfonts import TTFont
from reportlab.pdfgen.canvas import Canvas

from importer.errors import Damaged, PasswordProtected
from importer.intake.pdf import read_pdf
from importer.words import Page, Word

ROWS = [("Moisture", "4.5", "%"), ("Extract fine, dry", "81.2", "%"), ("Colour", "3.4", "EBC"), ("FAN", "156", "mg/l")]
FONT = "/usr/share/fonts/truetype/dejavu/DejaVuSans.ttf"


def _never(image: Image.Image, number: int, dpi: float | None) -> Page:
    raise AssertionError("the page was taken for a picture")


class _Seen:
    """Stands for the optical reader and notes that it was asked."""

    def __init__(self) -> None:
        self.pages: list[int] = []

    def __call__(self, image: Image.Image, number: int, dpi: float | None) -> Page:
        self.pages.append(number)
        return Page(number, image.width * 72 / (dpi or 72), image.height * 72 / (dpi or 72), (), "ocr")


def _make(draw: Callable[[Canvas], None], **options: object) -> bytes:
    buffer = io.BytesIO()
    canvas = Canvas(buffer, pagesize=(842, 842), **options)
    draw(canvas)
    canvas.showPage()
    canvas.save()
    return buffer.getvalue()


def _table(canvas: Canvas, font: str = "Helvetica") -> None:
    canvas.setFont(font, 10)
    for i, (label, value, unit) in enumerate(ROWS):
        canvas.drawString(60, 700 - 18 * i, label)
        canvas.drawRightString(300, 700 - 18 * i, value)
        canvas.drawString(320, 700 - 18 * i, unit)


def _read(data: bytes) -> Page:
    (page,) = read_pdf(data, "sheet.pdf", _never)
    return page


def test_words_stand_where_pdfplumber_finds_them() -> None:
    data = _make(_table)
    ours = sorted(_read(data).words, key=lambda w: (w.text, w.bottom))
    with pdfplumber.open(io.BytesIO(data)) as document:
        theirs = sorted(document.pages[0].extract_words(), key=lambda w: (w["text"], w["bottom"]))
    assert [w.text for w in ours] == [w["text"] for w in theirs]
    for mine, word in zip(ours, theirs, strict=True):
        assert mine.x0 == pytest.approx(word["x0"], abs=1.0)
        assert mine.x1 == pytest.approx(word["x1"], abs=1.0)
        assert mine.bottom == pytest.approx(word["bottom"], abs=1.5)


def _texts_in_order(page: Page) -> list[str]:
    return [w.text for w in sorted(page.words, key=lambda w: (round(w.bottom), w.x0))]


@pytest.mark.parametrize("turn", [90, 180, 270])
def test_a_turned_page_reads_like_an_upright_one(turn: int) -> None:
    upright = _read(_make(_table))

    def sideways(canvas: Canvas) -> None:
        canvas.saveState()
        canvas.translate(300, 400)
        canvas.rotate(turn)
        canvas.translate(-300, -600)
        _table(canvas)
        canvas.restoreState()

    drawn = _read(_make(sideways))
    assert _texts_in_order(drawn) == _texts_in_order(upright)

    def entry(canvas: Canvas) -> None:
        canvas.setPageRotation(turn)
        sideways(canvas)

    assert _texts_in_order(_read(_make(entry))) == _texts_in_order(upright)


def test_a_page_turned_by_its_rotation_entry_alone_is_read() -> None:
    def draw(canvas: Canvas) -> None:
        canvas.setPageRotation(90)
        _table(canvas)

    assert _texts_in_order(_read(_make(draw))) == _texts_in_order(_read(_make(_table)))


def test_white_covered_tiny_and_outlying_text_is_not_read() -> None:
    def draw(canvas: Canvas) -> None:
        _table(canvas)
        canvas.setFillGray(1)
        canvas.drawString(60, 500, "white9.9")
        canvas.setFillGray(0)
        canvas.drawString(60, 480, "covered8.8")
        canvas.setFillGray(1)
        canvas.rect(50, 470, 200, 25, stroke=0, fill=1)
        canvas.setFillGray(0)
        canvas.setFont("Helvetica", 1)
        canvas.drawString(60, 440, "tiny7.7")
        canvas.setFont("Helvetica", 10)
        canvas.drawString(900, 440, "outside6.6")

    page = _read(_make(draw))
    texts = {w.text for w in page.words}
    assert {"4.5", "81.2"} <= texts
    assert not texts & {"white9.9", "covered8.8", "tiny7.7", "outside6.6"}
    assert {w.text for w in page.hidden} == {"white9.9", "covered8.8", "tiny7.7", "outside6.6"}


def test_white_text_on_a_dark_band_is_read() -> None:
    def draw(canvas: Canvas) -> None:
        _table(canvas)
        canvas.setFillGray(0.2)
        canvas.rect(50, 715, 400, 18, stroke=0, fill=1)
        canvas.setFillGray(1)
        canvas.drawString(60, 720, "Parameter")

    assert "Parameter" in {w.text for w in _read(_make(draw)).words}


def test_fake_bold_is_read_once() -> None:
    def draw(canvas: Canvas) -> None:
        _table(canvas)
        canvas.translate(0.3, 0)
        _table(canvas)

    assert _texts_in_order(_read(_make(draw))) == _texts_in_order(_read(_make(_table)))


def test_old_text_behind_a_picture_is_a_second_reading_only() -> None:
    def draw(canvas: Canvas) -> None:
        text = canvas.beginText(60, 700)
        text.setFont("Helvetica", 10)
        text.setTextRenderMode(3)
        text.textLine("Moisture 4.5 %")
        canvas.drawText(text)
        canvas.drawImage(ImageReader(Image.new("L", (400, 500), 230)), 0, 0, 842, 842)

    seen = _Seen()
    (page,) = read_pdf(_make(draw), "sheet.pdf", seen)
    assert seen.pages == [1]
    assert page.reading == "ocr"
    assert {r.text for r in page.second} == {"Moisture", "4.5", "%"}
    assert {r.reader for r in page.second} == {"text layer"}


def _with_swapped_digits(data: bytes, swap: dict[str, str]) -> bytes:
    """The document with another character map: what is drawn stays, what the text says changes."""
    start, end = data.index(b"beginbfchar"), data.index(b"endbfchar")

    def one(found: re.Match[bytes]) -> bytes:
        char = chr(int(found.group(2), 16))
        return found.group(1) + f"{ord(swap.get(char, char)):04X}".encode() + b">"

    mapped = re.sub(rb"(<[0-9A-Fa-f]{2}>\s*<)([0-9A-Fa-f]{4})>", one, data[start:end])
    assert mapped != data[start:end]
    return data[:start] + mapped + data[end:]


def _embedded(canvas: Canvas) -> None:
    pdfmetrics.registerFont(TTFont("Embedded", FONT))
    _table(canvas, "Embedded")
    canvas.drawString(60, 560, "0123456789")


def test_text_that_is_not_what_is_drawn_is_read_as_a_picture() -> None:
    data = _make(_embedded, pageCompression=0)
    assert "81.2" in {w.text for w in _read(data).words}
    swapped = _with_swapped_digits(data, {"1": "8", "8": "1", "4": "6", "6": "4"})
    seen = _Seen()
    list(read_pdf(swapped, "sheet.pdf", seen))
    assert seen.pages == [1]


def test_a_font_without_a_character_map_is_read_as_a_picture() -> None:
    data = _make(_embedded, pageCompression=0)
    garbage = _with_swapped_digits(data, {chr(c): chr(0xE000 + c) for c in range(33, 127)})
    seen = _Seen()
    list(read_pdf(garbage, "sheet.pdf", seen))
    assert seen.pages == [1]


def test_locked_and_broken_documents_say_so() -> None:
    from reportlab.lib.pdfencrypt import StandardEncryption

    locked = _make(_table, encrypt=StandardEncryption("secret"))
    with pytest.raises(PasswordProtected, match=r"sheet\.pdf is locked"):
        list(read_pdf(locked, "sheet.pdf", _never))
    with pytest.raises(Damaged, match=r"sheet\.pdf"):
        list(read_pdf(b"%PDF-1.4 nothing", "sheet.pdf", _never))


@pytest.mark.parametrize("cut", range(1, 10))
def test_a_truncated_document_never_crashes(cut: int) -> None:
    data = _make(_table)
    try:
        pages = list(read_pdf(data[: len(data) * cut // 10], "sheet.pdf", _Seen()))
    except Damaged:
        return
    assert all(isinstance(word, Word) for page in pages for word in page.words)


def _crossing(*lines: tuple[float, float, float, float]) -> Callable[[Canvas], None]:
    def draw(canvas: Canvas) -> None:
        _table(canvas)
        for line in lines:
            canvas.line(*line)

    return draw


@pytest.mark.parametrize(
    "line", [(275, 703, 305, 703), (50, 703.5, 330, 703.5), (276, 698, 304, 709), (276, 709, 304, 698)]
)
def test_a_line_through_a_word_crosses_it_out(line: tuple[float, float, float, float]) -> None:
    page = _read(_make(_crossing(line)))
    value = next(word for word in page.words if word.text == "4.5")
    assert value.box in [mark.box for mark in page.marred if "crossed out" in mark.reason]
    assert all(mark.box.middle == value.box.middle for mark in page.marred)


@pytest.mark.parametrize("turn", [90, 180, 270])
def test_a_slanting_stroke_crosses_out_on_a_turned_page_too(turn: int) -> None:
    def sideways(canvas: Canvas) -> None:
        canvas.translate(300, 400)
        canvas.rotate(turn)
        canvas.translate(-300, -600)
        _crossing((276, 698, 304, 709))(canvas)

    page = _read(_make(sideways))
    marred = {mark.box for mark in page.marred}
    assert [word.text for word in page.words if word.box in marred] == ["4.5"]


@pytest.mark.parametrize("line", [(50, 698, 330, 698), (50, 711, 330, 711), (290, 600, 290, 800), (300, 690, 500, 720)])
def test_underlines_table_rules_and_passing_lines_cross_nothing_out(line: tuple[float, float, float, float]) -> None:
    assert _read(_make(_crossing(line))).marred == ()


def test_a_watermark_aslant_stays_out_of_the_words() -> None:
    def draw(canvas: Canvas) -> None:
        _table(canvas)
        canvas.saveState()
        canvas.translate(150, 600)
        canvas.rotate(40)
        canvas.setFont("Helvetica", 60)
        canvas.setFillGray(0.8)
        canvas.drawString(0, 0, "COPY 2024")
        canvas.restoreState()

    page, plain = _read(_make(draw)), _read(_make(_table))
    assert [word[:5] for word in page.words] == [word[:5] for word in plain.words]
    assert "COPY" in "".join(word.text for word in page.hidden)


def test_a_page_that_is_aslant_as_a_whole_is_read() -> None:
    def draw(canvas: Canvas) -> None:
        canvas.rotate(7)
        _table(canvas)

    assert {"4.5", "81.2", "3.4", "156"} <= {word.text for word in _read(_make(draw)).words}


@pytest.mark.parametrize("covered", [True, False])
def test_a_word_on_another_word_is_marked(covered: bool) -> None:
    def draw(canvas: Canvas) -> None:
        _table(canvas)
        canvas.drawString(60, 500, "11.2")
        if covered:
            canvas.setFillGray(1)
            canvas.rect(58, 496, 30, 14, stroke=0, fill=1)
            canvas.setFillGray(0)
        canvas.drawString(61, 500, "11.5")

    page = _read(_make(draw))
    left = [word for word in page.words if word.bottom > 330]
    assert left
    marked = {mark.box for mark in page.marred if "Another text" in mark.reason}
    assert {word.box for word in left} <= marked


def test_fake_bold_and_raised_footnotes_lie_on_nothing() -> None:
    def draw(canvas: Canvas) -> None:
        _table(canvas)
        canvas.drawString(60.3, 700, "Moisture")
        canvas.setFont("Helvetica", 6)
        canvas.drawString(300.5, 704, "1)")

    assert _read(_make(draw)).marred == ()


def test_white_and_outlying_text_is_not_read_sideways_either() -> None:
    def draw(canvas: Canvas) -> None:
        _table(canvas)
        for x, grey, text in ((500, 0.0, "seen"), (520, 1.0, "white"), (900, 0.0, "outside")):
            canvas.saveState()
            canvas.translate(x, 400)
            canvas.rotate(90)
            canvas.setFillGray(grey)
            canvas.drawString(0, 0, text)
            canvas.restoreState()

    page = _read(_make(draw))
    assert "seen" in {word.text for word in page.words}
    assert not {"white", "outside"} & {word.text for word in page.words}
    assert {"white", "outside"} <= {word.text for word in page.hidden}


@pytest.mark.parametrize("angle", [0, 90, 180, 270])
def test_the_letters_of_a_ligature_stay_in_their_word(angle: int) -> None:
    pdfmetrics.registerFont(TTFont("WithLigatures", FONT))

    def draw(canvas: Canvas) -> None:
        canvas.setFont("WithLigatures", 11)
        canvas.translate(420, 420)
        canvas.rotate(angle)
        canvas.drawString(-200, 0, "Löslicher Sticksto\ufb00 Extract \ufb01ne dry o\ufb03ce 81.4")
        canvas.drawString(-200, -20, "Moisture 4.5 Colour 3.4 EBC Friability 86 %")

    texts = [word.text for word in sorted(_read(_make(draw)).words, key=lambda w: (round(w.top), w.x0))]
    assert texts[:7] == ["Löslicher", "Stickstoff", "Extract", "fine", "dry", "office", "81.4"]
