"""Layout kinds of the sealed set, third part: certificates that ask for a second look."""

from __future__ import annotations

from dataclasses import replace

from tests.sheets.content import Content, Need
from tests.sheets.draw import Look
from tests.sheets.exam_parts import near, places
from tests.sheets.families import stack_rows
from tests.sheets.numbers import number
from tests.sheets.rows import Row
from tests.sheets.sealed_make import sealed_layout
from tests.sheets.sealed_parts import (
    close,
    header,
    letterhead,
    paragraph,
    phrase,
    press,
    sentences,
    shrunk,
    small,
    title,
)
from tests.sheets.sealed_tables import Align, Col, Grid, Roles, Style, body, cell, columns, draw_grid

_GREY = (0.87, 0.87, 0.87)


@sealed_layout("s-a01", Need(rows=(12, 20), missing_units=0.0))
def beside(content: Content, look: Look) -> bytes:
    """Two tables side by side, each with its own heads."""
    rng = content.rng
    pen = press(content, small(look, 8.5, margin=40.0))
    letterhead(pen, content, rng.choice(("logo", "address")))
    title(pen, content)
    header(pen, content, rng.choice(("halves", "pairs")))
    sentences(pen, content)
    groups = list(dict.fromkeys(r.group for r in content.rows))
    cut = next(
        k
        for k in range(1, len(groups) + 1)
        if sum(r.group in groups[:k] for r in content.rows) >= len(content.rows) / 2
    )
    halves = [[r for r in content.rows if (r.group in groups[:cut]) == first] for first in (True, False)]
    roles: Roles = rng.choice((("label", "value", "unit"), ("label", "unit", "value"), ("label", "both")))
    style = Style(rng.choice(("all", "rows", "outer")), rng.choice((None, _GREY)), pad=3, lead=1.5, slack="label")
    width = (pen.right - pen.left - 14) / 2
    cols = columns(content, roles, "right")
    sections = rng.random() < 0.6
    top, low = pen.y, pen.y
    for k, rows in enumerate(halves):
        if rows:
            pen.y = top
            grid = Grid([replace(c) for c in cols], body(content, roles, rows, sections), style)
            draw_grid(pen, grid, pen.left + k * (width + 14), width)
            low = max(low, pen.y)
    pen.y = low
    return close(pen, content, "person")


@sealed_layout("s-a02", Need(batches=(2, 4), rows=(9, 16), limits=True, missing_units=0.0))
def across(content: Content, look: Look) -> bytes:
    """One column a batch; what is known of the batches stands in the first rows of the table."""
    rng = content.rng
    pen = press(content, small(look, 9, margin=44.0))
    letterhead(pen, content, rng.choice(("centred", "logo", "small")))
    title(pen, content)
    header(pen, content, rng.choice(("stack", "spread")), list(content.shared))
    sentences(pen, content)
    number_ = len(content.own)
    spec = rng.random() < 0.6
    first = content.own[0]
    numbers: Align = rng.choice(("right", "center"))
    cols = [Col(first[0].caption, wrap=True), Col(content.head("unit"))]
    cols += [Col(own[0].text, numbers) for own in content.own] + ([Col(content.head("spec"))] if spec else [])
    lines: list[list[str] | str] = []
    for k in range(1, len(first)):
        lines.append([first[k].caption, "", *(own[k].text for own in content.own), *([""] if spec else [])])
    for row in content.rows:
        values = [row.cells[b].text for b in range(number_)]
        lines.append([row.label, row.unit, *values, *([row.limit.spec] if spec else [])])
    style = Style(rng.choice(("all", "rows", "cols")), _GREY, pad=3, lead=1.5, slack="label")
    draw_grid(pen, Grid(cols, lines, style))
    if not spec:
        _forget_limits(content)
    return close(pen, content)


def _forget_limits(content: Content) -> None:
    """Limits that are not printed are none."""
    for analysis in content.analyses:
        for figure in analysis.figures:
            figure.low = figure.high = ""
            if figure.why == "outside the limits":
                figure.certainty, figure.why = "sure", ""


@sealed_layout("s-a03", Need(batches=(3, 7), rows=(7, 11), missing_units=0.0, words=False, seconds=False))
def down(content: Content, look: Look) -> bytes:
    """One row a batch below wrapped heads with the unit under the name; the sheet lies on its side."""
    rng = content.rng
    pen = press(content, small(look, 8.5, margin=36.0), "page", landscape=True)
    letterhead(pen, content, rng.choice(("centred", "small")))
    title(pen, content)
    header(pen, content, "spread", list(content.shared))
    sentences(pen, content)
    cols = [Col(e.caption, "left", False) for e in content.own[0]]
    cols += [Col(r.label, "center", False, sub=f"[{r.unit}]" if r.unit else "") for r in content.rows]
    lines: list[list[str] | str] = []
    for b, own in enumerate(content.own):
        lines.append([*(e.text for e in own), *(r.cells[b].text for r in content.rows)])
    draw_grid(
        pen, Grid(cols, lines, Style(rng.choice(("all", "rows")), _GREY, pad=2.5, lead=1.6, bold=rng.random() < 0.6))
    )
    return close(pen, content, extras=False)


@sealed_layout("s-a04", Need(rows=(9, 16), missing_units=0.0))
def before(content: Content, look: Look) -> bytes:
    """The delivery before stands beside the present one."""
    rng = content.rng
    pen = press(content, small(look, 9.5))
    letterhead(pen, content, rng.choice(("logo", "banner", "address")))
    title(pen, content)
    header(pen, content, rng.choice(("halves", "stack")))
    sentences(pen, content)
    cols = columns(content, ("label", "unit", "value"), "right", True)
    cols.append(Col(content.head("previous"), "right"))
    lines: list[list[str] | str] = []
    for row in content.rows:
        lines.append([row.label, row.unit, row.cells[0].text, near(content, row, 0.95, 1.05)])
    draw_grid(pen, Grid(cols, lines, Style(rng.choice(("all", "head")), _GREY, pad=4, lead=1.6, slack="label")))
    return close(pen, content)


def _around(row: Row, comma: bool) -> str:
    """``4,5 ± 0,5`` for two limits; one limit as it is."""
    if not (row.limit.low and row.limit.high):
        return row.limit.spec
    low, high = (float(t.replace(",", ".")) for t in (row.limit.low, row.limit.high))
    digits = max(places(row.limit.low), places(row.limit.high)) + 1
    middle, half = (number(v, digits, comma) for v in ((low + high) / 2, (high - low) / 2))
    if middle.endswith("0") and half.endswith("0"):
        middle, half = (t[:-1].rstrip(",.") for t in (middle, half))
    return f"{middle} ± {half}"


@sealed_layout("s-a05", Need(rows=(9, 16), limits=True, missing_units=0.0))
def around(content: Content, look: Look) -> bytes:
    """What is aimed at, with its tolerance, before the result."""
    rng = content.rng
    pen = press(content, small(look, 9.5))
    letterhead(pen, content, rng.choice(("logo", "centred")))
    title(pen, content, "center")
    header(pen, content, rng.choice(("pairs", "over")))
    sentences(pen, content)
    roles: Roles = rng.choice((("label", "unit", "spec", "value"), ("label", "spec", "value", "unit")))
    cols = columns(content, roles, "center")
    cols[roles.index("spec")].head = phrase(content, "standard")
    lines: list[list[str] | str] = []
    for row in content.rows:
        line = [cell(row, r) for r in roles]
        line[roles.index("spec")] = _around(row, content.comma)
        lines.append(line)
    draw_grid(pen, Grid(cols, lines, Style("all", _GREY, pad=4, lead=1.6)))
    return close(pen, content, "person")


@sealed_layout("s-a06", Need(rows=(5, 9), families=("EBC",), missing_units=0.0), languages=("en",))
def conventions(content: Content, look: Look) -> bytes:
    """One column for each of three conventions."""
    rng = content.rng
    pen = press(content, small(look, 9.5))
    letterhead(pen, content, rng.choice(("logo", "address")))
    title(pen, content)
    content.family_line = ""
    header(pen, content, rng.choice(("halves", "stack")))
    sentences(pen, content)
    marker = content.composer.marker["dry"]
    how = rng.choice(("label", "column"))
    analysis = content.analyses[0]
    analysis.families, analysis.mash, analysis.unrecognised = ("EBC", "IoB", "ASBC"), None, []
    spaced = marker if marker.startswith(",") else f" {marker}"
    found, analysis.figures = stack_rows(rng, content.words, content.profiles[0], content.comma, spaced, how)
    cols = [Col(content.head("label"), wrap=True)]
    cols += [Col(content.head("unit"))] if how == "column" else []
    cols += [
        Col(h, "right") for h in rng.choice((("IoB", "EBC", "ASBC"), ("IOB", "EBC", "ASBC"), ("EBC", "IoB", "ASBC")))
    ]
    swap = cols[-3].head == "EBC"
    lines: list[list[str] | str] = []
    for row in found:
        texts = [row.texts[1], row.texts[0], row.texts[2]] if swap else row.texts
        lines.append([row.label, *([row.units[0]] if how == "column" else []), *texts])
    draw_grid(pen, Grid(cols, lines, Style(rng.choice(("all", "rows", "head")), None, pad=5, lead=1.7)))
    return close(pen, content)


@sealed_layout("s-a07", Need(rows=(8, 15), limits=True, limit_share=0.4, missing_units=0.0))
def leaders(content: Content, look: Look) -> bytes:
    """Names, dots up to the values, limits in brackets behind some of them."""
    rng = content.rng
    pen = press(content, small(look, 10))
    letterhead(pen, content, rng.choice(("centred", "small")))
    title(pen, content, rng.choice(("left", "center")))
    header(pen, content, "stack")
    sentences(pen, content)
    sign = rng.choice((".", ".", "_"))
    edge = pen.left + (pen.right - pen.left) * 0.55
    for row in content.rows:
        x = (
            pen.left
            + pen.text(pen.left, pen.y, row.label, size=shrunk(pen, row.label, edge - pen.left - 20, pen.look.size))
            + 3
        )
        pen.text(x, pen.y, sign * int((edge - x - 3) / pen.size_of(sign)))
        text = cell(row, "both") + (f"   ({row.limit.spec})" if row.limit.spec else "")
        pen.text(edge, pen.y, text)
        pen.y += pen.look.size * 1.7
    return close(pen, content, rng.choice(("person", "auto")))


@sealed_layout("s-a08", Need(rows=(9, 16), limits=True, missing_units=0.0))
def footnoted(content: Content, look: Look) -> bytes:
    """Signs behind the names; what they mean stands below the table: dry matter."""
    rng = content.rng
    pen = press(content, small(look, 9.5))
    letterhead(pen, content, rng.choice(("address", "lab")))
    title(pen, content)
    header(pen, content, rng.choice(("halves", "pairs")))
    sentences(pen, content)
    sign = rng.choice(("*", "1)", "¹", "(1)"))
    dry = set()
    for figure in content.analyses[0].figures:
        if figure.basis == "dry" and figure.why == "no moisture basis":
            figure.certainty, figure.why = "either", "basis in a footnote"
            dry.add(figure.label)
    roles: Roles = rng.choice((("label", "unit", "value", "spec"), ("label", "value", "unit")))
    if "spec" not in roles:
        _forget_limits(content)
    lines = body(content, roles, content.rows, False)
    for line in lines:
        if isinstance(line, list) and line[0] in dry:
            line[0] += f" {sign}" if sign != "¹" else sign
    draw_grid(pen, Grid(columns(content, roles, "right"), lines, Style("rows", _GREY, pad=4, lead=1.6, slack="label")))
    if dry:
        pen.y += 4
        paragraph(pen, pen.left, pen.right - pen.left, f"{sign} {phrase(content, 'fn_dry')}", pen.look.size * 0.85)
    return close(pen, content, "person")
