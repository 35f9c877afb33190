"""Draws text and tables on PDF pages, with coordinates from the top left corner."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, field, replace
from functools import cache
from io import BytesIO
from random import Random
from typing import Literal

from reportlab.lib.pagesizes import A4, LETTER  # type: ignore[import-untyped]
from reportlab.pdfbase import pdfmetrics  # type: ignore[import-untyped]
from reportlab.pdfbase.ttfonts import TTFont  # type: ignore[import-untyped]
from reportlab.pdfgen.canvas import Canvas  # type: ignore[import-untyped]

_FOLDER = "/usr/share/fonts/truetype"
_FILES = {
    "DejaVuSans": "dejavu/DejaVuSans", "DejaVuSansCondensed": "dejavu/DejaVuSansCondensed",
    "DejaVuSerif": "dejavu/DejaVuSerif", "LiberationSans": "liberation/LiberationSans-Regular",
    "LiberationSansNarrow": "liberation/LiberationSansNarrow-Regular",
    "LiberationSerif": "liberation/LiberationSerif-Regular", "LiberationMono": "liberation/LiberationMono-Regular",
}  # fmt: skip
STANDARD = {"Helvetica": "LiberationSans", "Times-Roman": "LiberationSerif", "Courier": "LiberationMono"}
_BOLD = {"Helvetica": "Helvetica-Bold", "Times-Roman": "Times-Bold", "Courier": "Courier-Bold"}
FONTS = (*STANDARD, *(f for f in _FILES if "Mono" not in f), "Helvetica", "LiberationSans", "LiberationSans")
Align = Literal["left", "right", "center", "decimal"]


@cache
def _font(name: str) -> str:
    """Registers a font file the first time that it is used."""
    if name in STANDARD or name in _BOLD.values():
        return name
    base = name.removesuffix("-Bold")
    path = _FILES[base]
    if name.endswith("-Bold"):
        path = path.removesuffix("-Regular") + "-Bold"
    pdfmetrics.registerFont(TTFont(name, f"{_FOLDER}/{path}.ttf"))
    return name


def font_for(family: str, bold: bool, text: str) -> str:
    """The font to draw a text with: the standard fonts lack Greek and Central European letters."""
    if family in STANDARD:
        try:
            text.encode("cp1252")
        except UnicodeEncodeError:
            family = STANDARD[family]
    if family in _BOLD:
        return _font(_BOLD[family] if bold else family)
    return _font(family + ("-Bold" if bold else ""))


@dataclass(frozen=True, slots=True)
class Look:
    """How a sheet looks. Sizes in points."""

    font: str = "Helvetica"
    size: float = 9.0
    page: tuple[float, float] = A4
    margin: float = 50.0
    pad: float = 3.0
    rules: Literal["grid", "rows", "zebra", "none", "frame", "columns"] = "grid"
    line: float = 0.5
    line_grey: float = 0.0
    shade: float = 0.9
    head_shade: bool = False
    head_bold: bool = True
    upper_heads: bool = False
    label_bold: bool = False
    value_bold: bool = False
    value_align: Align = "right"
    full_width: bool = True
    valign: Literal["top", "middle"] = "middle"


def draw_look(rng: Random) -> Look:
    """A look by chance."""
    size = rng.choice((7.5, 8.0, 8.5, 9.0, 9.0, 9.5, 10.0, 10.5))
    return Look(
        font=rng.choice(FONTS), size=size, page=rng.choice((A4, A4, A4, LETTER)),
        margin=rng.choice((36.0, 48.0, 57.0, 70.0)),
        pad=rng.choice((1.5, 2.5, 3.5, 5.0)), rules=rng.choice(("grid", "rows", "zebra", "none", "frame")),
        line=rng.choice((0.25, 0.5, 0.5, 0.8, 1.2)), line_grey=rng.choice((0.0, 0.0, 0.3, 0.6)),
        shade=rng.choice((0.8, 0.88, 0.93)), head_shade=rng.random() < 0.5, head_bold=rng.random() < 0.8,
        upper_heads=rng.random() < 0.2, label_bold=rng.random() < 0.12, value_bold=rng.random() < 0.2,
        value_align=rng.choice(("right", "right", "center", "left", "decimal")), full_width=rng.random() < 0.7,
        valign=rng.choice(("top", "middle")),
    )  # fmt: skip


class Pen:
    """Writes on the pages of one document. ``y`` is the place of the next line, from the top.

    ``turn`` draws everything turned to the left by 90, 180 or 270 degrees; ``rotate`` is the page's own rotation
    entry, by which a viewer turns it to the right.
    """

    def __init__(self, look: Look, landscape: bool = False, turn: int = 0, rotate: int = 0) -> None:
        self.look = look
        self.width, self.height = (look.page[1], look.page[0]) if landscape else look.page
        self.buffer = BytesIO()
        self.canvas = Canvas(self.buffer, pagesize=(self.width, self.height), invariant=1)
        self.page = 1
        self.y = look.margin
        self.turn, self.rotate = turn, rotate
        self.before_show: Callable[[Pen], None] | None = None
        self._start()

    def _start(self) -> None:
        sheet = (self.height, self.width) if self.turn in (90, 270) else (self.width, self.height)
        # The library takes the size as a viewer shows the page, after its rotation.
        self.canvas.setPageSize(sheet[::-1] if self.rotate in (90, 270) else sheet)
        if self.turn == 180:
            self.canvas.translate(self.width, self.height)
            self.canvas.rotate(180)
        elif self.turn:  # what is drawn lies on its side
            self.canvas.translate(*((self.height, 0) if self.turn == 90 else (0, self.width)))
            self.canvas.rotate(self.turn)

    @property
    def left(self) -> float:
        return self.look.margin

    @property
    def right(self) -> float:
        return self.width - self.look.margin

    @property
    def bottom(self) -> float:
        return self.height - self.look.margin - 30

    def size_of(self, text: str, size: float | None = None, bold: bool = False) -> float:
        return float(pdfmetrics.stringWidth(text, font_for(self.look.font, bold, text), size or self.look.size))

    def text(
        self, x: float, y: float, text: str, size: float | None = None, bold: bool = False, align: Align = "left",
        grey: float = 0.0,
    ) -> float:  # fmt: skip
        """Writes one line with its top at ``y``; gives the width."""
        size = size or self.look.size
        name = font_for(self.look.font, bold, text)
        width = float(pdfmetrics.stringWidth(text, name, size))
        if align == "right":
            x -= width
        elif align == "center":
            x -= width / 2
        self.canvas.setFont(name, size)
        self.canvas.setFillGray(grey)
        self.canvas.drawString(x, self.height - y - 0.8 * size, text)
        return width

    def line(self, x0: float, y0: float, x1: float, y1: float, width: float | None = None) -> None:
        self.canvas.setLineWidth(width or self.look.line)
        self.canvas.setStrokeGray(self.look.line_grey)
        self.canvas.line(x0, self.height - y0, x1, self.height - y1)

    def box(self, x0: float, y0: float, x1: float, y1: float, fill: float | None = None, stroke: bool = True) -> None:
        if fill is not None:
            self.canvas.setFillGray(fill)
        self.canvas.setLineWidth(self.look.line)
        self.canvas.setStrokeGray(self.look.line_grey)
        self.canvas.rect(x0, self.height - y1, x1 - x0, y1 - y0, stroke=int(stroke), fill=int(fill is not None))

    def wrap(self, text: str, width: float, size: float | None = None, bold: bool = False) -> list[str]:
        """Breaks a text at spaces."""
        lines: list[str] = []
        for word in text.split():
            joined = f"{lines[-1]} {word}" if lines else word
            if lines and self.size_of(joined, size, bold) <= width:
                lines[-1] = joined
            else:
                lines.append(word)
        return lines or [""]

    def new_page(self) -> None:
        self._show()
        self._start()
        self.page += 1
        self.y = self.look.margin

    def _show(self) -> None:
        if self.before_show:
            self.before_show(self)
        if self.rotate:
            self.canvas.setPageRotation(self.rotate)
        self.canvas.showPage()

    def finish(self) -> bytes:
        self._show()
        self.canvas.save()
        return self.buffer.getvalue()


@dataclass(slots=True)
class Column:
    """A table column; ``width`` 0 means as wide as its widest text, ``most`` caps that (then the text wraps)."""

    title: str
    align: Align = "left"
    width: float = 0.0
    most: float = 0.0
    bold: bool = False


@dataclass(slots=True)
class Table:
    """Rows of texts under columns; a row of one text is a section row. ``marks``: footnote signs by (row, column)."""

    columns: list[Column]
    rows: list[list[str]]
    head: bool = True
    repeat_head: bool = True
    marks: dict[tuple[int, int], str] = field(default_factory=dict)
    head_lines: list[list[str]] = field(default_factory=list)
    second_line: dict[int, str] = field(default_factory=dict)

    def fit(self, pen: Pen, available: float) -> None:
        """Sets the widths of the columns; the type gets smaller where they would not fit otherwise."""
        fixed = [c.width for c in self.columns]
        while True:
            widths = [max(w, self._longest_word(pen, i)) if w else self._natural(pen, i) for i, w in enumerate(fixed)]
            excess = sum(widths) - available
            widest = max(range(len(widths)), key=widths.__getitem__)
            least = max(60.0, self._longest_word(pen, widest))
            if excess <= max(widths[widest] - least, 0.0) or pen.look.size < 5:
                break
            pen.look = replace(pen.look, size=pen.look.size * 0.93)
        if excess > 0:
            widths[widest] = max(widths[widest] - excess, least)
        for column, width in zip(self.columns, widths, strict=True):
            column.width = width + (-excess / len(widths) if excess < 0 and pen.look.full_width else 0.0)

    def _natural(self, pen: Pen, i: int) -> float:
        """The width of a column's widest text, of the words of its heads, or what it may have at most."""
        column, look = self.columns[i], pen.look
        title = column.title.upper() if look.upper_heads else column.title
        words = [*title.split(), *(w for line in self.head_lines for w in line[i].split())]
        texts = [r[i] for r in self.rows if len(r) > 1]
        wide = max([18.0, *(pen.size_of(t, bold=True) for t in (*texts, *words))]) + 2 * max(look.pad, 2.5) + 2
        return max(min(wide, column.most), self._longest_word(pen, i)) if column.most else wide

    def _longest_word(self, pen: Pen, i: int) -> float:
        words = [w for r in self.rows if len(r) > 1 for w in r[i].split()]
        return max([0.0, *(pen.size_of(w, bold=True) for w in words)]) + 2 * max(pen.look.pad, 2.5) + 2

    def draw(self, pen: Pen, x: float | None = None, available: float | None = None) -> None:
        """Draws from ``pen.y`` downwards and leaves ``pen.y`` below the table, on new pages where needed."""
        x = pen.left if x is None else x
        self.fit(pen, available or pen.right - x)
        if self.head:
            self._head(pen, x)
        top = pen.y
        for number, row in enumerate(self.rows):
            height = self.height(pen, row, number)
            if pen.y + height > pen.bottom:
                self._frame(pen, x, top)
                pen.new_page()
                if self.head and self.repeat_head:
                    self._head(pen, x)
                top = pen.y
            self._row(pen, x, row, number, height)
            pen.y += height
        self._frame(pen, x, top)

    def _frame(self, pen: Pen, x: float, top: float) -> None:
        look = pen.look
        right = x + sum(c.width for c in self.columns)
        if look.rules in ("frame", "columns"):
            pen.box(x, top, right, pen.y)
        if look.rules == "columns":
            at = x
            for column in self.columns[:-1]:
                at += column.width
                pen.line(at, top, at, pen.y)
        if look.rules == "rows":
            pen.line(x, pen.y, right, pen.y)

    def _lines(self, pen: Pen, row: list[str], bold: bool = False) -> list[list[str]]:
        gap = 2 * max(pen.look.pad, 2.5)
        return [pen.wrap(t, c.width - gap, bold=bold or c.bold) for t, c in zip(row, self.columns, strict=True)]

    def height(self, pen: Pen, row: list[str], number: int) -> float:
        """How high a row is when its texts are wrapped to the columns."""
        look = pen.look
        count = 1 if len(row) == 1 else max(len(lines) for lines in self._lines(pen, row, look.label_bold))
        extra = 0.95 * look.size if number in self.second_line else 0.0
        return count * look.size * 1.18 + 2 * look.pad + extra

    def _head(self, pen: Pen, x: float) -> None:
        look = pen.look
        titles = [c.title.upper() if look.upper_heads else c.title for c in self.columns]
        heads = [titles, *self.head_lines]
        right = x + sum(c.width for c in self.columns)
        start = pen.y
        heights = []
        for texts in heads:
            lines = self._lines(pen, texts, bold=True)
            heights.append(max(len(t) for t in lines) * look.size * 1.18 + 2 * look.pad)
        if look.head_shade:
            pen.box(x, start, right, start + sum(heights), fill=look.shade, stroke=False)
        for level, texts in enumerate(heads):
            self._texts(pen, x, self._lines(pen, texts, bold=True), heights[level], look.head_bold and level == 0, True)
            if look.rules == "grid":
                self._cells(pen, x, heights[level])
            pen.y += heights[level]
        if look.rules in ("rows", "frame", "columns"):
            pen.line(x, start, right, start)
            pen.line(x, pen.y, right, pen.y)

    def _cells(self, pen: Pen, x: float, height: float) -> None:
        for column in self.columns:
            pen.box(x, pen.y, x + column.width, pen.y + height)
            x += column.width

    def _row(self, pen: Pen, x: float, row: list[str], number: int, height: float) -> None:
        look = pen.look
        right = x + sum(c.width for c in self.columns)
        if look.rules == "zebra" and number % 2:
            pen.box(x, pen.y, right, pen.y + height, fill=look.shade, stroke=False)
        if len(row) == 1:
            pen.text(x + max(look.pad, 2.5), pen.y + look.pad, row[0], bold=True)
            if look.rules == "grid":
                pen.box(x, pen.y, right, pen.y + height)
            return
        if look.rules == "grid":
            self._cells(pen, x, height)
        elif look.rules == "rows":
            pen.line(x, pen.y, right, pen.y)
        self._texts(pen, x, self._lines(pen, row, look.label_bold), height, False, False, number)
        if number in self.second_line:
            pen.text(x + max(look.pad, 2.5), pen.y + height - look.pad - 0.9 * look.size, self.second_line[number],
                     size=0.8 * look.size, grey=0.35)  # fmt: skip

    def _texts(
        self, pen: Pen, x: float, cells: list[list[str]], height: float, bold: bool, head: bool, number: int = -1
    ) -> None:
        look = pen.look
        pad = max(look.pad, 2.5)
        step = look.size * 1.18
        for i, (column, lines) in enumerate(zip(self.columns, cells, strict=True)):
            used = len(lines) * step
            second = number in self.second_line
            y = pen.y + look.pad if look.valign == "top" or second else pen.y + (height - used) / 2
            heavy = bold or (not head and (column.bold or (i == 0 and look.label_bold)))
            for text in lines:
                width = pen.size_of(text, bold=heavy)
                if column.align == "left" or (head and column.align == "decimal"):
                    at = x + pad
                elif column.align == "right":
                    at = x + column.width - pad - width
                elif column.align == "center":
                    at = x + (column.width - width) / 2
                else:  # the decimal sign stands on one line through the column
                    whole = text.replace(",", ".").partition(".")[0]
                    at = max(x + pad, x + column.width * 0.55 - pen.size_of(whole, bold=heavy))
                    at = min(at, max(x + column.width - pad - width, x + pad))
                pen.text(at, y, text, bold=heavy)
                mark = self.marks.get((number, i))
                if mark and text == lines[-1]:
                    pen.text(at + width + 0.4, y - 0.18 * look.size, mark, size=look.size * 0.66)
                y += step
            x += column.width


def with_rules(look: Look, **changes: object) -> Look:
    """The look with some of its settings fixed by the layout."""
    return replace(look, **changes)  # type: ignore[arg-type]
