"""Tables of the unseen sheets, drawn in the ways of word processors, spreadsheets and report generators."""

from __future__ import annotations

import re
from dataclasses import dataclass, field, replace
from random import Random
from typing import Literal

from tests.sheets.draw import Look, Pen, font_for
from tests.sheets.exam_parts import Colour, tint

Align = Literal["left", "right", "center", "decimal"]
_PALE: tuple[Colour, ...] = ((0.93, 0.95, 0.98), (0.95, 0.95, 0.95), (0.98, 0.95, 0.89), (0.92, 0.96, 0.92))
_STRONG: tuple[Colour, ...] = ((0.83, 0.87, 0.93), (0.82, 0.82, 0.82), (0.93, 0.86, 0.7), (0.8, 0.89, 0.8))


class Press(Pen):
    """Puts text on the page as different programs do: whole lines, single words, single letters, doubled bold type.

    With ``by_column`` nothing is written in reading order: the page's texts are sorted from left to right first.
    """

    def __init__(
        self, look: Look, landscape: bool = False, page: tuple[float, float] | None = None, habit: str = "lines",
        by_column: bool = False,
    ) -> None:  # fmt: skip
        self.habit, self.by_column = habit, by_column
        self.waiting: list[tuple[float, float, str, str, float, float]] = []
        super().__init__(replace(look, page=page) if page else look, landscape=landscape)

    def text(
        self, x: float, y: float, text: str, size: float | None = None, bold: bool = False, align: str = "left",
        grey: float = 0.0,
    ) -> float:  # fmt: skip
        size = size or self.look.size
        width = self.size_of(text, size, bold)
        x -= {"right": width, "center": width / 2}.get(align, 0.0)
        plain = bold and self.habit == "doubled"
        name = font_for(self.look.font, bold and not plain, text)
        self.waiting.append((x, y, text, name, size, grey))
        if plain:
            self.waiting.append((x + 0.25, y, text, name, size, grey))
        if not self.by_column:
            self._flush()
        return width

    def _flush(self) -> None:
        if self.by_column:
            self.waiting.sort(key=lambda w: (round(w[0] / 40), w[1]))
        for x, y, text, name, size, grey in self.waiting:
            self.canvas.setFont(name, size)
            self.canvas.setFillGray(grey)
            base = self.height - y - 0.8 * size
            pieces = [text]
            if self.habit == "words":
                pieces = text.split(" ")
            elif self.habit == "letters":
                pieces = list(text)
            gap = self.canvas.stringWidth(" ", name, size) if self.habit == "words" else 0.0
            for piece in pieces:
                self.canvas.drawString(x, base, piece + (" " if self.habit == "padded" else ""))
                x += self.canvas.stringWidth(piece, name, size) + gap
        self.waiting.clear()

    def _show(self) -> None:
        before, self.before_show = self.before_show, None
        if before:
            before(self)
        self._flush()
        super()._show()
        self.before_show = before


@dataclass(frozen=True, slots=True)
class Style:
    """How a table looks. ``slack`` says which columns take the room that is left."""

    rules: Literal["all", "rows", "head", "none", "outer", "cols", "double"] = "all"
    fill: Colour | None = None
    stripe: Colour | None = None
    pad: float = 4.0
    lead: float = 1.6
    heads: Literal["same", "left", "center"] = "same"
    bold: bool = True
    upper: bool = False
    slack: Literal["label", "even", "no"] = "even"
    top: bool = False


def draw_style(rng: Random, *rules: str) -> Style:
    """A style by chance; ``rules`` narrows the kinds of lines."""
    kind = rng.choice(rules or ("all", "all", "rows", "head", "none", "outer", "cols", "double"))
    return Style(
        rules=kind,  # type: ignore[arg-type]
        fill=rng.choice((None, None, *_STRONG)), stripe=rng.choice((None, None, None, *_PALE)),
        pad=rng.choice((2.5, 4.0, 5.5)), lead=rng.choice((1.35, 1.6, 1.6, 2.0)),
        heads=rng.choice(("same", "same", "left", "center")), bold=rng.random() < 0.8, upper=rng.random() < 0.15,
        slack=rng.choice(("label", "even", "even", "no")), top=rng.random() < 0.3,
    )  # fmt: skip


@dataclass(slots=True)
class Col:
    """A column; only ``wrap`` ones may break their texts."""

    head: str
    align: Align = "left"
    wrap: bool = False
    bold: bool = False
    width: float = 0.0
    sub: str = ""


@dataclass(slots=True)
class Grid:
    """Rows under heads. A row that is a text is a band across the table."""

    cols: list[Col]
    rows: list[list[str] | str]
    style: Style
    head: bool = True
    repeat: bool = True
    notes: dict[int, str] = field(default_factory=dict)

    def _cells(self, i: int) -> list[str]:
        return [r[i] for r in self.rows if not isinstance(r, str)]

    def _least(self, pen: Pen, i: int, words: bool) -> float:
        col = self.cols[i]
        heads = [w for text in (col.head, col.sub) for w in self._case(text).split()]
        texts = [w for t in self._cells(i) for w in t.split()] if words else self._cells(i)
        return max([12.0, *(pen.size_of(t, bold=True) for t in (*heads, *texts))]) + 2 * self.style.pad + 1

    def _case(self, text: str) -> str:
        return text.upper() if self.style.upper else text

    def fit(self, pen: Pen, room: float) -> None:
        """Sets widths: natural ones if they fit, else wrapped columns narrower, else smaller type."""
        while True:
            widths = [self._least(pen, i, False) for i in range(len(self.cols))]
            excess = sum(widths) - room
            for i in sorted((k for k, c in enumerate(self.cols) if c.wrap), key=lambda k: -widths[k]):
                least = max(self._least(pen, i, True), min(widths[i], 70.0))
                if excess > 0 and widths[i] > least:
                    cut = min(excess, widths[i] - least)
                    widths[i] -= cut
                    excess -= cut
            if excess <= 0.5 or pen.look.size < 4.6:
                break
            pen.look = replace(pen.look, size=pen.look.size * 0.95)
        spare = max(-excess, 0.0)
        share = {"even": spare / len(widths), "label": 0.0, "no": 0.0}[self.style.slack]
        for i, col in enumerate(self.cols):
            col.width = widths[i] + share + (spare if self.style.slack == "label" and i == 0 else 0.0)

    def draw(self, pen: Pen, x: float | None = None, width: float | None = None) -> None:
        """Draws from ``pen.y`` downwards, on further pages where needed."""
        x = pen.left if x is None else x
        self.fit(pen, width or pen.right - x)
        right = x + sum(c.width for c in self.cols)
        if self.head:
            self._head(pen, x, right)
        top = pen.y
        size = pen.look.size
        for k, row in enumerate(self.rows):
            lines = [[row]] if isinstance(row, str) else self._wrapped(pen, row)
            note = pen.wrap(self.notes[k], self.cols[0].width - 2 * self.style.pad, size * 0.78) if (
                k in self.notes) else []  # fmt: skip
            height = (max(len(t) for t in lines) - 1) * size * 1.15 + size * self.style.lead + len(note) * size * 0.92
            if pen.y + height > pen.bottom:
                self._frame(pen, x, right, top)
                pen.new_page()
                if self.head and self.repeat:
                    self._head(pen, x, right)
                top = pen.y
            self._row(pen, x, right, row, lines, note, height, k)
            pen.y += height
        self._frame(pen, x, right, top)

    def _wrapped(self, pen: Pen, row: list[str]) -> list[list[str]]:
        room = [c.width - 2 * self.style.pad + 0.5 for c in self.cols]
        return [pen.wrap(t, w, bold=c.bold) if c.wrap else [t] for t, w, c in zip(row, room, self.cols, strict=True)]

    def _head(self, pen: Pen, x: float, right: float) -> None:
        style, size = self.style, pen.look.size
        for part in ("head", "sub"):
            texts = [self._case(c.head) if part == "head" else c.sub for c in self.cols]
            if part == "sub" and not any(texts):
                break
            bold = style.bold and part == "head"
            lines = [
                pen.wrap(t, c.width - 2 * style.pad + 0.5, bold=True) for t, c in zip(texts, self.cols, strict=True)
            ]
            height = (max(len(t) for t in lines) - 1) * size * 1.15 + size * style.lead
            if style.fill:
                tint(pen, x, pen.y, right, pen.y + height, style.fill)
            at = x
            for col, part_lines in zip(self.cols, lines, strict=True):
                align = {"same": col.align, "left": "left", "center": "center"}[style.heads]
                y = pen.y + (size * style.lead - size) / 2
                if not style.top:  # heads of fewer lines stand at the bottom
                    y += (max(len(t) for t in lines) - len(part_lines)) * size * 1.15
                self._write(pen, at, col.width, y, part_lines, "right" if align == "decimal" else align, bold)
                if style.rules == "all":
                    pen.box(at, pen.y, at + col.width, pen.y + height)
                at += col.width
            if style.rules in ("rows", "outer", "cols") and part == "head":
                pen.line(x, pen.y, right, pen.y)
            pen.y += height
        if style.rules != "none":
            pen.line(x, pen.y, right, pen.y, 1.0 if style.rules in ("head", "double") else None)
        if style.rules == "double":
            pen.line(x, pen.y - 2, right, pen.y - 2)

    def _row(
        self, pen: Pen, x: float, right: float, row: list[str] | str, lines: list[list[str]], note: list[str],
        height: float, k: int,
    ) -> None:  # fmt: skip
        style, size = self.style, pen.look.size
        y = pen.y + (size * style.lead - size) / 2
        if isinstance(row, str):
            if style.fill:
                tint(pen, x, pen.y, right, pen.y + height, style.fill)
            pen.text(x + style.pad, y, row, bold=True)
            if style.rules == "all":
                pen.box(x, pen.y, right, pen.y + height)
            return
        if style.stripe and k % 2:
            tint(pen, x, pen.y, right, pen.y + height, style.stripe)
        at = x
        most = max(len(t) for t in lines)
        for i, (col, texts) in enumerate(zip(self.cols, lines, strict=True)):
            down = 0.0 if style.top or note else (most - len(texts)) * size * 1.15 / 2
            if col.align == "decimal" and texts[0]:
                self._decimal(pen, at, i, y + down, texts[0])
            else:
                self._write(pen, at, col.width, y + down, texts, col.align, col.bold)
            if i == 0:
                for n, text in enumerate(note):
                    pen.text(
                        at + style.pad, y + len(texts) * size * 1.15 + n * size * 0.92, text, size * 0.78, grey=0.3
                    )
            if style.rules == "all":
                pen.box(at, pen.y, at + col.width, pen.y + height)
            at += col.width
        if style.rules == "rows":
            pen.line(x, pen.y + height, right, pen.y + height)

    def _write(self, pen: Pen, x: float, width: float, y: float, lines: list[str], align: str, bold: bool) -> None:
        at = {"left": x + self.style.pad, "center": x + width / 2}.get(align, x + width - self.style.pad)
        for n, text in enumerate(lines):
            if text:
                pen.text(at, y + n * pen.look.size * 1.15, text, bold=bold, align=align)  # type: ignore[arg-type]

    def _decimal(self, pen: Pen, x: float, i: int, y: float, text: str) -> None:
        bold = self.cols[i].bold

        def tail(t: str) -> float:
            sign = re.search(r"[.,]", t)
            return pen.size_of(t[sign.start() :], bold=bold) if sign and re.search(r"\d", t) else 0.0

        most = max(tail(t) for t in self._cells(i))
        end = x + self.cols[i].width - self.style.pad - most + tail(text)
        pen.text(min(max(end, x + 1 + pen.size_of(text, bold=bold)), x + self.cols[i].width - 1), y, text, bold=bold,
                 align="right")  # fmt: skip

    def _frame(self, pen: Pen, x: float, right: float, top: float) -> None:
        rules = self.style.rules
        if rules in ("outer", "cols"):
            pen.box(x, top, right, pen.y)
        if rules == "cols":
            at = x
            for col in self.cols[:-1]:
                at += col.width
                pen.line(at, top, at, pen.y)
        if rules in ("head", "double"):
            pen.line(x, pen.y, right, pen.y, 0.8)
