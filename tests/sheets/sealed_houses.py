"""A house's form: the one certificate that a maltster's system prints for every delivery."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from tests.sheets.content import Content, Need
from tests.sheets.draw import Look
from tests.sheets.rows import Row
from tests.sheets.sealed_make import LANGUAGES, sealed_layout
from tests.sheets.sealed_parts import (
    close,
    header,
    letterhead,
    maker_of,
    paragraph,
    phrase,
    press,
    sentences,
    small,
    title,
)
from tests.sheets.sealed_tables import Align, Grid, Roles, Style, body, columns, draw_grid
from tests.sheets.truth import TruthFigure
from tests.sheets.unseen_grid import Press

_FINE = {"de": "i.O.", "fr": "conforme", "es": "Conforme", "it": "conforme"}


@dataclass(frozen=True, slots=True)
class House:
    """How one house's certificates look; where several forms are named, one is drawn by chance."""

    name: str
    roles: tuple[Roles, ...]
    letter: str
    head: tuple[str, ...]
    style: Style
    need: Need
    numbers: Align = "right"
    sections: bool = False
    size: float = 9.5
    fonts: tuple[str, ...] = ("Helvetica", "LiberationSans")
    margin: float = 52.0
    feet: str = "columns"
    place: str = "left"
    scale: float = 1.5
    said: Literal["above", "below", "title"] = "above"
    signed: str = "auto"
    intro: bool = False
    issued: bool = False
    bold: bool = False
    title_last: bool = False
    languages: tuple[str, ...] = LANGUAGES
    classes: tuple[str, ...] = ()


def _issued(pen: Press, content: Content) -> None:
    text = f"{phrase(content, 'issued')}: {maker_of(content).issued()}"
    pen.text(pen.right, pen.y, text, align="right")
    pen.y += pen.look.size * 1.6


def _status(content: Content, row: Row) -> str:
    """The word for a kept limit; a star where the result breaks it."""
    truth = row.cells[0].truth
    broken = isinstance(truth, TruthFigure) and truth.why == "outside the limits"
    kept = _FINE.get(content.words.language, "OK")
    return "*" if broken else kept if row.limit.low or row.limit.high else ""


def results(pen: Press, content: Content, house: House, roles: Roles, rows: list[Row] | None = None) -> None:
    """The table of a house, with a column of numbers or of verdicts where it has one."""
    found = rows if rows is not None else content.rows
    inner = tuple("blank" if r in ("status", "number") else r for r in roles)
    lines = body(content, inner, found, house.sections)
    places = [k for k, line in enumerate(lines) if not isinstance(line, str)]
    for n, (place, row) in enumerate(zip(places, found, strict=True), 1):
        line = lines[place]
        assert isinstance(line, list)
        for i, role in enumerate(roles):
            if role in ("status", "number"):
                line[i] = f"{n}" if role == "number" else _status(content, row)
    heads = tuple("remark" if r == "status" else r for r in roles)
    draw_grid(pen, Grid(columns(content, heads, house.numbers, house.bold), lines, house.style))


def draw(house: House, content: Content, look: Look) -> bytes:
    rng = content.rng
    look = small(look, house.size, font=rng.choice(house.fonts), margin=house.margin)
    pen = press(content, look, house.feet)
    letterhead(pen, content, house.letter)
    if house.issued:
        _issued(pen, content)
    if not house.title_last:
        title(pen, content, house.place, scale=house.scale)
    if house.said == "title":
        sentences(pen, content)
    header(pen, content, rng.choice(house.head))
    if house.title_last:
        title(pen, content, house.place, scale=house.scale)
    if house.intro:
        paragraph(pen, pen.left, pen.right - pen.left, phrase(content, "intro"))
        pen.y += pen.look.size * 0.8
    if house.said == "above":
        sentences(pen, content)
    results(pen, content, house, rng.choice(house.roles))
    return close(pen, content, house.signed)


def register(house: House) -> None:
    """Makes a layout kind of a house's form."""

    def drawn(content: Content, look: Look) -> bytes:
        return draw(house, content, look)

    sealed_layout(house.name, house.need, house.languages, house.classes)(drawn)
