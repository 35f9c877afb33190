"""Tables of the sealed sheets: which columns stand in which order, and how a row fills them."""

from __future__ import annotations

from dataclasses import replace

from tests.sheets.cells import section_titles
from tests.sheets.content import Content
from tests.sheets.exam_parts import with_unit
from tests.sheets.rows import Row
from tests.sheets.unseen_grid import Align, Col, Grid, Press, Style

_WRAPS = ("label", "labelled", "rounded", "comma", "spec", "method", "specunit")
_HEADS = {
    "value": "result",
    "both": "result",
    "labelled": "label",
    "rounded": "label",
    "comma": "label",
    "specunit": "spec",
}
Roles = tuple[str, ...]


def cell(row: Row, role: str, batch: int = 0) -> str:
    """The text of a row in a column of a role."""
    return {
        "label": row.label,
        "value": row.cells[batch].text,
        "unit": row.unit,
        "both": with_unit(row, batch),
        "min": row.limit.low,
        "max": row.limit.high,
        "spec": row.limit.spec,
        "method": row.method,
        "labelled": f"{row.label} [{row.unit}]" if row.unit else row.label,
        "rounded": f"{row.label} ({row.unit})" if row.unit else row.label,
        "comma": f"{row.label}, {row.unit}" if row.unit else row.label,
        "specunit": f"{row.limit.spec} {row.unit}".strip() if row.limit.spec else "",
        "blank": "",
    }[role]


def head_of(content: Content, role: str, taken: set[str]) -> str:
    """A head in the sheet's words that no other column has."""
    key = _HEADS.get(role, role)
    for _ in range(40):
        found = content.head(key)
        if found.casefold() not in taken:
            break
    taken.add(found.casefold())
    return found


def columns(content: Content, roles: Roles, numbers: Align, bold: bool = False) -> list[Col]:
    found: list[Col] = []
    taken: set[str] = set()
    for role in roles:
        figure = role in ("value", "min", "max")
        side: Align = numbers if figure else "center" if role in ("spec", "unit") and numbers == "center" else "left"
        if role == "both":
            side = "left" if numbers == "decimal" else numbers
        found.append(Col(head_of(content, role, taken), side, role in _WRAPS, bold and role in ("value", "both")))
    return found


def body(content: Content, roles: Roles, rows: list[Row], sections: bool, batch: int = 0) -> list[list[str] | str]:
    titles = section_titles(content) if sections else {}
    lines: list[list[str] | str] = []
    group = ""
    for row in rows:
        if sections and row.group != group:
            group = row.group
            lines.append(titles[group])
        lines.append([cell(row, role, batch) for role in roles])
    return lines


def draw_grid(pen: Press, grid: Grid, x: float | None = None, width: float | None = None) -> None:
    """Draws a table and puts the type size back."""
    size = pen.look.size
    grid.draw(pen, x, width)
    pen.look = replace(pen.look, size=size)


def table(
    pen: Press,
    content: Content,
    roles: Roles,
    style: Style,
    numbers: Align = "right",
    sections: bool = False,
    rows: list[Row] | None = None,
    bold: bool = False,
    batch: int = 0,
    x: float | None = None,
    width: float | None = None,
) -> None:
    """An ordinary table of results."""
    found = rows if rows is not None else content.rows
    grid = Grid(columns(content, roles, numbers, bold), body(content, roles, found, sections, batch), style)
    draw_grid(pen, grid, x, width)


__all__ = ["Align", "Col", "Grid", "Roles", "Style", "body", "cell", "columns", "draw_grid", "head_of", "table"]
