"""Parts of the exam's pages: header blocks in other forms, tinted boxes, turned text, labels broken at hyphens."""

from __future__ import annotations

from collections.abc import Callable

from tests.sheets import blocks
from tests.sheets.content import Content
from tests.sheets.draw import Look, Pen, font_for, with_rules
from tests.sheets.headers import Entry
from tests.sheets.numbers import number
from tests.sheets.rows import Row
from tests.sheets.targets import targets
from tests.sheets.truth import TruthFigure, TruthRow

Colour = tuple[float, float, float]
TINTS: tuple[Colour, ...] = ((0.86, 0.91, 0.97), (0.93, 0.9, 0.82), (0.88, 0.95, 0.88), (0.97, 0.9, 0.86))
DARKS: tuple[Colour, ...] = ((0.1, 0.22, 0.42), (0.35, 0.12, 0.1), (0.12, 0.32, 0.2), (0.2, 0.2, 0.2))


def phrase(content: Content, key: str) -> str:
    return content.words.pick(content.rng, "x", key)


def phrases(content: Content, key: str) -> list[str]:
    """A phrase that is a list parted by semicolons."""
    return [part.strip() for part in phrase(content, key).split(" ; ")]


def tint(pen: Pen, x0: float, y0: float, x1: float, y1: float, colour: Colour) -> None:
    """A filled box without an outline."""
    pen.canvas.setFillColorRGB(*colour)
    pen.canvas.rect(x0, pen.height - y1, x1 - x0, y1 - y0, stroke=0, fill=1)


def turned(pen: Pen, x: float, y: float, text: str, size: float, bold: bool = False) -> None:
    """Text that runs upwards from ``y``, its baseline at ``x``."""
    pen.canvas.saveState()
    pen.canvas.translate(x, pen.height - y)
    pen.canvas.rotate(90)
    pen.canvas.setFillGray(0)
    pen.canvas.setFont(font_for(pen.look.font, bold, text), size)
    pen.canvas.drawString(0, 0, text)
    pen.canvas.restoreState()


def watermark(pen: Pen, text: str) -> None:
    """Large pale text across the page, below everything that is drawn later."""
    pen.canvas.saveState()
    pen.canvas.translate(pen.width / 2, pen.height / 2)
    pen.canvas.rotate(48)
    pen.canvas.setFillGray(0.88)
    pen.canvas.setFont(font_for(pen.look.font, True, text), min(110.0, 900.0 / max(len(text), 1)))
    pen.canvas.drawCentredString(0, -20, text)
    pen.canvas.restoreState()


def paragraph(
    pen: Pen, x: float, width: float, text: str, size: float | None = None, bold: bool = False, grey: float = 0.0
) -> None:
    """Wrapped lines from ``pen.y`` downwards."""
    size = size or pen.look.size
    for line in pen.wrap(text, width, size, bold):
        pen.text(x, pen.y, line, size=size, bold=bold, grey=grey)
        pen.y += size * 1.22


def shrunk(pen: Pen, text: str, width: float, size: float, bold: bool = False) -> float:
    """The size at which a text fits a width."""
    while size > 4.5 and pen.size_of(text, size, bold) > width:
        size -= 0.25
    return size


def hyphenated(pen: Pen, text: str, width: float) -> list[str]:
    """Breaks a text at spaces, and long words with a hyphen after a vowel and a consonant."""
    lines: list[str] = []
    for word in text.split():
        joined = f"{lines[-1]} {word}" if lines else word
        if lines and pen.size_of(joined) <= width:
            lines[-1] = joined
            continue
        while pen.size_of(word) > width and len(word) > 7:
            fits = max((n for n in range(3, len(word) - 2) if pen.size_of(word[:n] + "-") <= width), default=3)
            good = [n for n in range(3, fits + 1) if _may_break(word, n)]
            cut = good[-1] if good else fits
            sign = "" if word[cut - 1] in "-/" else "-"
            lines.append(word[:cut] + sign)
            word = word[cut:]
        lines.append(word)
    return lines


def _may_break(word: str, n: int) -> bool:
    return word[n - 1].isalpha() and word[n].isalpha() and word[n].lower() not in "aeiouyäöüåæøéíěý" and (
        word[n - 1].lower() in "aeiouyäöüåæøéíěý"
    )  # fmt: skip


def figure_of(row: Row, batch: int = 0) -> TruthFigure | None:
    truth = row.cells[batch].truth
    return truth if isinstance(truth, TruthFigure) else None


def plain_number(row: Row, batch: int = 0) -> float | None:
    """The number of a cell that holds a plain one."""
    truth = row.cells[batch].truth
    if isinstance(truth, TruthFigure) and truth.bound is None:
        return truth.number
    if isinstance(truth, TruthRow):
        try:
            return float(truth.value.replace(",", "."))
        except ValueError:
            return None
    return None


def places(text: str) -> int:
    return len(text.replace(",", ".").partition(".")[2])


def near(content: Content, row: Row, low: float, high: float, batch: int = 0) -> str:
    """A figure like the printed one: another delivery's, another laboratory's. Words and bounds stay as they are."""
    value = plain_number(row, batch)
    text = row.cells[batch].text
    if value is None:
        return text
    other = value * content.rng.uniform(low, high)
    if row.unit.startswith("%") and value <= 100:
        other = min(other, 100.0)
    return number(other, places(text), content.comma)


def doubt(row: Row, why: str) -> None:
    """Nobody can blame a careful reader for asking about the row."""
    for k in range(len(row.cells)):
        figure = figure_of(row, k)
        if figure and figure.certainty == "sure":
            figure.certainty, figure.why = "either", why


def negative_difference(content: Content) -> None:
    """Now and then coarse extract comes out above fine extract: the difference is negative."""
    row = next((r for r in content.rows if r.concept == "fine_coarse_difference"), None)
    figure = figure_of(row) if row else None
    names = {r.concept for r in content.rows}
    if row is None or figure is None or figure.unit != "%" or content.rng.random() < 0.5:
        return
    if any(n.startswith("extract_coarse") for n in names):
        return
    sign = content.rng.choice(("-", "- ", "−"))
    value = content.rng.choice((0.1, 0.2, 0.3))
    figure.value = row.cells[0].text = sign + number(value, 1, content.comma)
    figure.number = -value
    figure.targets = targets("fine_coarse_difference", "%", figure.family, content.composer.mash, -value)
    if figure.certainty == "sure":
        figure.certainty, figure.why = "either", "negative difference"


def unit_beside(row: Row, batch: int = 0) -> str:
    """The unit as it stands right beside a value: none beside a word or a blank."""
    truth = row.cells[batch].truth
    said = truth is None or (isinstance(truth, TruthFigure) and truth.text is not None)
    return "" if said else row.unit


def with_unit(row: Row, batch: int = 0) -> str:
    """``4.5 %``; only the value where there is no unit or no number."""
    return f"{row.cells[batch].text} {unit_beside(row, batch)}".strip()


def _numbered(pen: Pen, content: Content, entries: list[Entry]) -> None:
    colon = content.rng.choice((":", "", " ="))
    caption = max(pen.size_of(f"99. {e.caption}{colon}") for e in entries) + 10
    for k, e in enumerate(entries, 1):
        pen.text(pen.left, pen.y, f"{k}. {e.caption}{colon}")
        pen.text(pen.left + caption, pen.y, e.text, bold=pen.look.value_bold)
        pen.y += pen.look.size * 1.45
    pen.y += pen.look.size * 0.8


def _colon_column(pen: Pen, content: Content, entries: list[Entry]) -> None:
    caption = max(pen.size_of(e.caption) for e in entries) + 14
    for e in entries:
        pen.text(pen.left, pen.y, e.caption)
        pen.text(pen.left + caption, pen.y, ":")
        pen.text(pen.left + caption + 10, pen.y, e.text)
        pen.y += pen.look.size * 1.45
    pen.y += pen.look.size * 0.8


def _right_captions(pen: Pen, content: Content, entries: list[Entry]) -> None:
    edge = pen.left + max(pen.size_of(e.caption, bold=True) for e in entries) + 6
    start = pen.y
    for e in entries:
        pen.text(edge, pen.y, e.caption, bold=True, align="right")
        pen.text(edge + 12, pen.y, e.text)
        pen.y += pen.look.size * 1.5
    pen.line(edge + 6, start, edge + 6, pen.y)
    pen.y += pen.look.size


def _piped(pen: Pen, content: Content, entries: list[Entry]) -> None:
    x = pen.left
    for k, e in enumerate(entries):
        text = f"{e.caption}: {e.text}"
        gap = pen.size_of("   |   ")
        if x > pen.left and x + pen.size_of(text) > pen.right:
            x, pen.y = pen.left, pen.y + pen.look.size * 1.5
        x += pen.text(x, pen.y, text)
        following = f"{entries[k + 1].caption}: {entries[k + 1].text}" if k + 1 < len(entries) else ""
        if following and x + gap + pen.size_of(following) <= pen.right:
            pen.text(x, pen.y, "   |   ", grey=0.4)
            x += gap
        else:
            x = pen.right
    pen.y += pen.look.size * 2.2


def _form_boxes(pen: Pen, content: Content, entries: list[Entry]) -> None:
    half = (pen.right - pen.left) / 2
    small = 6.0
    height = small * 1.3 + pen.look.size * 1.3 + 6
    for start in range(0, len(entries), 2):
        for k, e in enumerate(entries[start : start + 2]):
            x = pen.left + k * half
            pen.box(x, pen.y, x + half, pen.y + height)
            pen.text(x + 3, pen.y + 2, e.caption, size=small, grey=0.25)
            pen.text(x + 8, pen.y + small * 1.3 + 3, e.text, size=shrunk(pen, e.text, half - 12, pen.look.size))
        pen.y += height
    pen.y += pen.look.size


HeaderForm = Callable[[Pen, Content, list[Entry]], None]
HEADS: tuple[HeaderForm, ...] = (_numbered, _colon_column, _right_captions, _piped, _form_boxes)


def head(pen: Pen, content: Content, entries: list[Entry] | None = None) -> None:
    """Letterhead (often), title, header entries, method lines."""
    rng = content.rng
    if rng.random() < 0.6:
        blocks.letterhead(pen, content)
    blocks.title(pen, content)
    found = entries if entries is not None else [*content.shared, *content.own[0]]
    if found:
        rng.choice(HEADS)(pen, content, found)
    blocks.method_lines(pen, content)


def start(content: Content, look: Look, shared_only: bool = False, landscape: bool = False, pages: int = 1) -> Pen:
    pen = Pen(look, landscape=landscape)
    blocks.footers(pen, content, pages)
    head(pen, content, list(content.shared) if shared_only else None)
    return pen


def end(pen: Pen, content: Content) -> bytes:
    blocks.closing(pen, content)
    return pen.finish()


def look_of(look: Look, size: float = 9.0, **changes: object) -> Look:
    """The look with a largest type size."""
    return with_rules(look, size=min(look.size, size), **changes)
