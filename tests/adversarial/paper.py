"""Draws the text of a misleading sheet: as PDF with a text layer, CSV or a workbook.

A line with ``|`` is a row of a table; rows that follow each other are one table; its first row is bold. A cell ``<<``
is merged with the one left of it, ``^^`` with the one above; ``*text*`` is bold, ``text^1`` has a raised 1. Other lines
are text; ``# text`` is a title, ``~ text`` small print at the foot of the page, ``@50 text @200 text`` are texts that
begin so far from the left. ``===`` begins a new page.
"""

from __future__ import annotations

import csv
import io
import re
from collections.abc import Callable
from dataclasses import dataclass

from openpyxl import Workbook
from reportlab.lib.pagesizes import A4  # type: ignore[import-untyped]
from reportlab.pdfbase import pdfmetrics  # type: ignore[import-untyped]
from reportlab.pdfbase.cidfonts import UnicodeCIDFont  # type: ignore[import-untyped]
from reportlab.pdfbase.ttfonts import TTFont  # type: ignore[import-untyped]
from reportlab.pdfgen.canvas import Canvas  # type: ignore[import-untyped]

from tests.adversarial.case import Case

MARGIN = 50.0
_DEJAVU = "/usr/share/fonts/truetype/dejavu/DejaVuSans.ttf"
_RAISED = re.compile(r"^(.*\S)\^(\S+)$")
_PLACED = re.compile(r"@(\d+) ([^@]+)")
_CHINESE = re.compile(r"[\u3000-\u9fff]")


@dataclass(frozen=True, slots=True)
class Place:
    """Where a text was drawn, from the top left corner."""

    x0: float
    top: float
    x1: float
    bottom: float


def _font(text: str, bold: bool) -> str:
    if _CHINESE.search(text):
        pdfmetrics.registerFont(UnicodeCIDFont("STSong-Light"))
        return "STSong-Light"
    try:
        text.encode("cp1252")
    except UnicodeEncodeError:
        pdfmetrics.registerFont(TTFont("DejaVuSans", _DEJAVU))
        return "DejaVuSans"
    return "Helvetica-Bold" if bold else "Helvetica"


class Paper:
    """One document being drawn. ``where`` holds the place of each cell and line by its text, the last one drawn."""

    def __init__(self, size: float, rules: bool) -> None:
        self._buffer = io.BytesIO()
        self.canvas = Canvas(self._buffer, pagesize=A4, invariant=1)
        self.width, self.height = A4
        self.size, self.rules = size, rules
        self.y = MARGIN
        self.where: dict[str, Place] = {}

    def write(
        self, x: float, top: float, text: str, *, size: float = 0, bold: bool = False, grey: float = 0.0
    ) -> Place:
        """One line of text with its top at ``top``."""
        size = size or self.size
        font = _font(text, bold)
        width = float(pdfmetrics.stringWidth(text, font, size))
        self.canvas.setFont(font, size)
        self.canvas.setFillGray(grey)
        self.canvas.drawString(x, self.height - top - 0.8 * size, text)
        self.where[text] = Place(x, top, x + width, top + size)
        return self.where[text]

    def cell(self, x: float, top: float, text: str, bold: bool) -> None:
        if len(text) > 2 and text[0] == text[-1] == "*":
            text, bold = text[1:-1], True
        raised = _RAISED.match(text)
        place = self.write(x, top, raised[1] if raised else text, bold=bold)
        if raised:
            self.write(place.x1 + 0.5, top - 1.5, raised[2], size=0.6 * self.size)

    def table(self, rows: list[list[str]]) -> None:
        count = max(map(len, rows))
        rows = [row + [""] * (count - len(row)) for row in rows]
        pad = 5.0
        widths = [
            max(
                [
                    14.0,
                    *(
                        pdfmetrics.stringWidth(r[i], _font(r[i], True), self.size) + 2 * pad
                        for r in rows
                        if not _merged(r, i)
                    ),
                ]
            )
            for i in range(count)
        ]
        edges = [MARGIN + sum(widths[:i]) for i in range(count + 1)]
        high = self.size * 1.3 + 4
        for number, row in enumerate(rows):
            for i, text in enumerate(row):
                wide = next((j for j in range(i + 1, count) if row[j] != "<<"), count)
                deep = next((k for k in range(number + 1, len(rows)) if rows[k][i] != "^^"), len(rows))
                if text in ("<<", "^^"):
                    continue
                top, bottom = self.y + number * high, self.y + deep * high
                if self.rules:
                    self.frame(edges[i], top, edges[wide], bottom)
                if not text:
                    continue
                x = edges[i] + pad
                if wide > i + 1:
                    x = (edges[i] + edges[wide] - pdfmetrics.stringWidth(text, _font(text, True), self.size)) / 2
                self.cell(x, (top + bottom - self.size) / 2, text, number == 0)
        self.y += high * len(rows)

    def frame(self, x0: float, top: float, x1: float, bottom: float, fill: float | None = None) -> None:
        """A box, filled with a grey if ``fill`` is given."""
        self.canvas.setLineWidth(0.5)
        self.canvas.setStrokeGray(0.3)
        if fill is not None:
            self.canvas.setFillGray(fill)
        self.canvas.rect(x0, self.height - bottom, x1 - x0, bottom - top, stroke=1, fill=int(fill is not None))

    def strike(self, x0: float, x1: float, y: float) -> None:
        self.canvas.setLineWidth(0.9)
        self.canvas.setStrokeGray(0)
        self.canvas.line(x0, self.height - y, x1, self.height - y)

    def turned(self, x: float, top: float, text: str, degrees: float, size: float, grey: float = 0.0) -> None:
        """Text turned to the left by so many degrees."""
        self.canvas.saveState()
        self.canvas.translate(x, self.height - top)
        self.canvas.rotate(degrees)
        self.canvas.setFont(_font(text, False), size)
        self.canvas.setFillGray(grey)
        self.canvas.drawString(0, 0, text)
        self.canvas.restoreState()

    def finish(self) -> bytes:
        self.canvas.showPage()
        self.canvas.save()
        return self._buffer.getvalue()


def _merged(row: list[str], i: int) -> bool:
    """True for a cell that is not as wide as its own column."""
    return row[i] in ("<<", "^^") or (i + 1 < len(row) and row[i + 1] == "<<")


def _cells(line: str) -> list[str]:
    return [cell.strip() for cell in line.split("|")]


def draw(case: Case) -> bytes:
    """The sheet as the bytes of a file."""
    if case.form == "csv":
        return _csv(case).encode()
    return _xlsx(case) if case.form == "xlsx" else _pdf(case)


def _pdf(case: Case) -> bytes:
    paper = Paper(case.size, case.rules)
    foot: list[str] = []
    rows: list[list[str]] = []

    def end_table() -> None:
        if rows:
            paper.table(rows)
            rows.clear()

    def end_page() -> None:
        end_table()
        for number, text in enumerate(foot):
            paper.write(MARGIN, paper.height - 60 + 9 * number, text, size=7)
        foot.clear()

    for line in case.text.splitlines():
        if "|" in line:
            rows.append(_cells(line))
            continue
        end_table()
        if line == "===":
            end_page()
            paper.canvas.showPage()
            paper.y = MARGIN
        elif line.startswith("~ "):
            foot.append(line[2:])
        elif line.startswith("@"):
            for place, text in _PLACED.findall(line):
                paper.cell(float(place), paper.y, text.strip(), bold=False)
            paper.y += case.size * 1.5
        elif line.startswith("# "):
            paper.write(MARGIN, paper.y, line[2:], size=14, bold=True)
            paper.y += 22
        else:
            if line.strip():
                paper.write(MARGIN + 5 * (len(line) - len(line.lstrip())), paper.y, line.strip())
            paper.y += case.size * 1.5
    end_page()
    for extra in case.draw:
        extra(paper)
    return paper.finish()


def _plain(case: Case) -> list[list[str]]:
    """Rows of a spreadsheet; of merged cells the first alone holds the text."""
    rows = [_cells(line) if "|" in line else [line.lstrip("#~ ").strip()] for line in case.text.splitlines()]
    return [
        ["" if cell in ("<<", "^^") else cell.strip("*") if len(cell) > 1 else cell for cell in row] for row in rows
    ]


def _csv(case: Case) -> str:
    out = io.StringIO()
    csv.writer(out, delimiter=";").writerows(_plain(case))
    return out.getvalue()


def _xlsx(case: Case) -> bytes:
    book = Workbook()
    page = book.active
    assert page is not None
    for row in _plain(case):
        page.append([float(cell) if re.fullmatch(r"\d+(\.\d+)?", cell) else cell or None for cell in row])
    for number, row in enumerate(map(_cells, case.text.splitlines()), start=1):
        for i, _ in enumerate(row):
            wide = next((j for j in range(i + 1, len(row)) if row[j] != "<<"), len(row))
            if row[i] != "<<" and wide > i + 1:
                page.merge_cells(start_row=number, end_row=number, start_column=i + 1, end_column=wide)
    out = io.BytesIO()
    book.save(out)
    return out.getvalue()


# ------------------------------------------------------------------------------------- what is drawn on a sheet besides

Extra = Callable[[Paper], None]


def struck(text: str, beside: str = "") -> Extra:
    """Crosses a text out, and writes another beside it."""

    def draw_it(paper: Paper) -> None:
        at = paper.where[text]
        paper.strike(at.x0 - 2, at.x1 + 2, (at.top + at.bottom) / 2)
        if beside:
            paper.write(at.x1 + 5, at.top, beside, size=paper.size)

    return draw_it


def watermark(text: str, size: float = 60.0, degrees: float = 45.0, grey: float = 0.85) -> Extra:
    return lambda paper: paper.turned(70, 330, text, degrees, size, grey)


def beside(anchor: str, text: str, dx: float = 6.0, dy: float = 0.0, grey: float = 0.0, size: float = 0.0) -> Extra:
    """Writes a text at the right of another."""

    def draw_it(paper: Paper) -> None:
        at = paper.where[anchor]
        paper.write(at.x1 + dx, at.top + dy, text, grey=grey, size=size)

    return draw_it


def covered(anchor: str, over: str = "", fill: float = 1.0) -> Extra:
    """Paints a box over a text, and writes another on it."""

    def draw_it(paper: Paper) -> None:
        at = paper.where[anchor]
        paper.frame(at.x0 - 2, at.top - 1, at.x1 + 2, at.bottom + 1, fill)
        if over:
            paper.write(at.x0, at.top, over)

    return draw_it
