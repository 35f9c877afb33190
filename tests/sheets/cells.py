"""Turns rows of a content into table columns: which columns a sheet has and in what order."""

from __future__ import annotations

from random import Random

from tests.sheets.content import Content
from tests.sheets.draw import Column, Pen, Table
from tests.sheets.rows import Row


def section_titles(content: Content) -> dict[str, str]:
    """A heading for every group of rows, in the sheet's language."""
    rng, words = content.rng, content.words
    return {
        g: words.pick(rng, "sections", g)
        for g in ("physical", "chemical", "wort", "enzymes", "nitrogen", "modification", "contaminants", "sieving")
    }


def label_with_unit(row: Row, form: str) -> str:
    """``Moisture (%)``, ``Moisture, %``, ``Moisture [%]`` or ``Moisture %``."""
    if not row.unit:
        return row.label
    return {
        "round": f"{row.label} ({row.unit})",
        "comma": f"{row.label}, {row.unit}",
        "square": f"{row.label} [{row.unit}]",
        "space": f"{row.label} {row.unit}",
    }[form]


def text_of(row: Row, role: str, batch: int = 0) -> str:
    return {
        "label": row.label,
        "unit": row.unit,
        "method": row.method,
        "min": row.limit.low,
        "max": row.limit.high,
        "spec": row.limit.spec,
        "typical": row.typical,
        "result": row.cells[batch].text,
    }[role]


def table_of(
    content: Content, roles: list[str], pen: Pen, sections: bool = False, rows: list[Row] | None = None, batch: int = 0
) -> Table:
    """A table with a column for every role, in that order."""
    look = pen.look
    columns = []
    for role in roles:
        align = look.value_align if role in ("result", "min", "max", "typical") else "left"
        if role in ("spec", "unit") and content.rng.random() < 0.3:
            align = "center"
        most = 0.42 * (pen.right - pen.left) if role == "label" else 0.0
        columns.append(Column(content.head(role), align, most=most, bold=role == "result" and look.value_bold))
    lines: list[list[str]] = []
    group = ""
    titles = section_titles(content) if sections else {}
    for row in rows if rows is not None else content.rows:
        if sections and row.group != group:
            group = row.group
            lines.append([titles[group]])
        lines.append([text_of(row, role, batch) for role in roles])
    return Table(columns, lines)


def number_rows(table: Table, rng: Random, title: str) -> None:
    """Puts a column of row numbers in front."""
    table.columns.insert(0, Column(title, "right"))
    n = 0
    stop = rng.choice(("", ".", ")"))
    for line in table.rows:
        if len(line) > 1:
            n += 1
            line.insert(0, f"{n}{stop}")
