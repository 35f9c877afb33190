"""Layout kinds of the unseen set, first part: certificates with one table."""

from __future__ import annotations

from dataclasses import replace

from tests.sheets.cells import section_titles
from tests.sheets.content import Content, Need
from tests.sheets.draw import Look
from tests.sheets.rows import Row
from tests.sheets.unseen_grid import Col, Grid, draw_style
from tests.sheets.unseen_make import FULL, unseen_layout
from tests.sheets.unseen_parts import (
    cell,
    close,
    columns,
    composer_of,
    phrase,
    plain_table,
    press,
    rows_of,
    sized_grid,
    small,
    top,
)


@unseen_layout("u-classic", Need(rows=(9, 18), limits=True))
def classic(content: Content, look: Look) -> bytes:
    """Letterhead, header block, a ruled table with unit, limits and result."""
    rng = content.rng
    pen = press(content, small(look, 9.5))
    top(pen, content)
    roles = rng.choice(
        (["label", "unit", "min", "max", "value"], ["label", "unit", "value", "min", "max"],
         ["label", "value", "unit", "spec"], ["label", "spec", "value", "unit"], ["label", "unit", "spec", "value"])
    )  # fmt: skip
    plain_table(pen, content, roles, draw_style(rng, "all", "all", "rows"))
    return close(pen, content)


@unseen_layout("u-plain-three", Need(rows=(8, 18)))
def plain_three(content: Content, look: Look) -> bytes:
    """Name, value, unit; no limits."""
    rng = content.rng
    pen = press(content, look)
    top(pen, content)
    roles = rng.choice((["label", "value", "unit"], ["label", "unit", "value"], ["label", "both"]))
    plain_table(pen, content, roles, draw_style(rng))
    return close(pen, content)


@unseen_layout("u-unit-in-label", Need(rows=(8, 18), limits=True))
def unit_in_label(content: Content, look: Look) -> bytes:
    """The unit stands in brackets behind the name; results at the right edge."""
    rng = content.rng
    pen = press(content, look)
    top(pen, content)
    form = rng.choice(("labelled", "rounded"))
    roles = rng.choice(([form, "value"], [form, "spec", "value"], [form, "value", "min", "max"]))
    plain_table(pen, content, roles, draw_style(rng), align=rng.choice(("right", "decimal")))
    return close(pen, content)


@unseen_layout("u-result-between", Need(rows=(8, 16), limits=True, methods=True))
def result_between(content: Content, look: Look) -> bytes:
    """The result between the lower and the upper limit, the method at the end."""
    rng = content.rng
    pen = press(content, small(look))
    top(pen, content)
    roles = rng.choice((["label", "unit", "min", "value", "max", "method"], ["label", "min", "value", "max", "unit"]))
    plain_table(pen, content, list(roles), draw_style(rng, "all", "rows", "cols"), align="center")
    return close(pen, content)


@unseen_layout("u-typical-range", Need(rows=(8, 16), limits=True, limit_share=1.0))
def typical_range(content: Content, look: Look) -> bytes:
    """The maltster's usual range beside the batch's result."""
    rng = content.rng
    pen = press(content, small(look, 9.5))
    top(pen, content)
    roles = rng.choice((["label", "unit", "spec", "value"], ["label", "value", "spec", "unit"]))
    cols = columns(content, roles)
    cols[roles.index("spec")].head = content.head("typical")
    form = composer_of(content).range_form[2]
    rows: list[list[str] | str] = []
    for row in content.rows:
        line = [cell(row, role) for role in roles]
        if row.limit.low and row.limit.high:
            line[roles.index("spec")] = form.format(a=row.limit.low, b=row.limit.high)
        rows.append(line)
    sized_grid(pen, Grid(cols, rows, draw_style(rng)))
    return close(pen, content)


@unseen_layout("u-numbered-sections", Need(rows=(12, 22), limits=True))
def numbered_sections(content: Content, look: Look) -> bytes:
    """Sections with numbers, rows numbered 2.1, 2.2 in a column of their own or before the name."""
    rng = content.rng
    pen = press(content, small(look))
    top(pen, content)
    titles = section_titles(content)
    own = rng.random() < 0.5
    roles = rng.choice((["label", "unit", "value"], ["label", "value", "unit", "spec"]))
    rows: list[list[str] | str] = []
    group, section, n = "", 0, 0
    for row in content.rows:
        if row.group != group:
            group, section, n = row.group, section + 1, 0
            rows.append(f"{section}  {titles[group]}")
        n += 1
        line = [cell(row, role) for role in roles]
        if own:
            line.insert(0, f"{section}.{n}")
        else:
            line[0] = f"{section}.{n} {line[0]}"
        rows.append(line)
    cols = columns(content, list(roles))
    if own:
        cols.insert(0, Col(content.head("number")))
    sized_grid(pen, Grid(cols, rows, draw_style(rng, "all", "rows", "head")))
    return close(pen, content)


@unseen_layout("u-merged-groups", Need(rows=(10, 20)))
def merged_groups(content: Content, look: Look) -> bytes:
    """The group's name stands once in a first column that spans its rows."""
    rng = content.rng
    pen = press(content, small(look))
    top(pen, content)
    titles = section_titles(content)
    roles = rng.choice((["label", "unit", "value"], ["label", "value", "unit"]))
    middle = rng.random() < 0.5
    rows: list[list[str] | str] = []
    members: dict[str, list[Row]] = {}
    for row in content.rows:
        members.setdefault(row.group, []).append(row)
    for group, found in members.items():
        for k, row in enumerate(found):
            named = k == ((len(found) - 1) // 2 if middle else 0)
            rows.append([titles[group] if named else "", *(cell(row, role) for role in roles)])
    cols = [Col("", wrap=False, bold=True), *columns(content, list(roles))]
    sized_grid(pen, Grid(cols, rows, draw_style(rng, "rows", "head", "cols")))
    return close(pen, content)


@unseen_layout("u-landscape", Need(rows=(9, 16), limits=True, methods=True))
def landscape(content: Content, look: Look) -> bytes:
    """A certificate across the page with every column one can think of."""
    rng = content.rng
    pen = press(content, small(look, 9.0, 42.0), landscape=True)
    top(pen, content)
    roles = rng.choice(
        (["label", "method", "unit", "spec", "value"], ["label", "value", "unit", "min", "max", "method"],
         ["label", "method", "unit", "min", "max", "value"])
    )  # fmt: skip
    cols = columns(content, list(roles))
    rows = rows_of(content, list(roles))
    if rng.random() < 0.5:
        cols.append(Col(content.head("remark"), "center"))
        yes = phrase(content, "ok")
        for line, row in zip(rows, content.rows, strict=True):
            assert isinstance(line, list)
            line.append(yes if row.limit.spec else "")
    sized_grid(pen, Grid(cols, rows, draw_style(rng, "all", "rows", "outer")))
    return close(pen, content)


@unseen_layout("u-quiet-lines", Need(rows=(8, 16)))
def quiet_lines(content: Content, look: Look) -> bytes:
    """No heads: the name at the left, value and unit at the right, thin lines between."""
    rng = content.rng
    pen = press(content, replace(look, margin=max(look.margin, 57.0)))
    top(pen, content)
    size = pen.look.size
    apart = rng.random() < 0.5
    wide = max(pen.size_of(r.unit) for r in content.rows) + 8
    for row in content.rows:
        if pen.y + 2 * size > pen.bottom:
            pen.new_page()
        lines = pen.wrap(row.label, (pen.right - pen.left) * 0.62)
        for n, text in enumerate(lines):
            pen.text(pen.left, pen.y + n * size * 1.15, text)
        if apart:
            pen.text(pen.right - wide, pen.y, row.cells[0].text, align="right", bold=look.value_bold)
            pen.text(pen.right - wide + 5, pen.y, row.unit)
        else:
            pen.text(pen.right, pen.y, cell(row, "both"), align="right", bold=look.value_bold)
        pen.y += (len(lines) - 1) * size * 1.15 + size * 1.8
        pen.line(pen.left, pen.y - size * 0.5, pen.right, pen.y - size * 0.5, 0.25)
    return close(pen, content)


@unseen_layout("u-method-behind-label", Need(rows=(8, 16), methods=True, limits=True))
def method_behind_label(content: Content, look: Look) -> bytes:
    """The method follows the name in brackets, or stands below it in small type."""
    rng = content.rng
    pen = press(content, small(look, 9.5))
    top(pen, content)
    roles = rng.choice((["label", "unit", "value"], ["label", "value", "unit", "spec"], ["label", "spec", "both"]))
    grid = Grid(
        columns(content, list(roles)), rows_of(content, list(roles)), draw_style(rng, "rows", "head", "none", "all")
    )
    below = rng.random() < 0.5
    for k, (row, line) in enumerate(zip(content.rows, grid.rows, strict=True)):
        if not row.method:
            continue
        if below:
            grid.notes[k] = row.method
        else:
            assert isinstance(line, list)
            line[0] = f"{row.label} ({row.method})"
    sized_grid(pen, grid)
    return close(pen, content)


@unseen_layout("u-contract", Need(rows=(8, 16), limits=True, limit_share=1.0), FULL)
def contract(content: Content, look: Look) -> bytes:
    """The contract's limit and the result; the unit follows the limit in its cell."""
    rng = content.rng
    pen = press(content, small(look, 9.5))
    top(pen, content)
    roles = rng.choice((["label", "specunit", "value", "unit"], ["label", "specunit", "both"]))
    cols = columns(content, list(roles))
    cols[1].head = phrase(content, "contract")
    rows = rows_of(content, list(roles))
    if rng.random() < 0.5:
        cols.append(Col(content.head("remark"), "center"))
        yes = phrase(content, "ok")
        for line in rows:
            assert isinstance(line, list)
            line.append(yes if line[1] else "–")
    sized_grid(pen, Grid(cols, rows, draw_style(rng, "all", "rows", "outer")))
    return close(pen, content)


@unseen_layout("u-check-boxes", Need(rows=(8, 15), limits=True), FULL)
def check_boxes(content: Content, look: Look) -> bytes:
    """A release form of the maltings: limits, result, a drawn box that is ticked."""
    rng = content.rng
    pen = press(content, small(look, 9.0))
    top(pen, content)
    roles = ["label", "unit", "spec", "value"]
    mark = rng.choice(("[x]", "X", "☑" if look.font.startswith("DejaVu") else "x"))
    cols = [
        *columns(content, roles),
        Col(phrase(content, "ok"), "center"),
        Col("n. " + phrase(content, "ok"), "center"),
    ]
    rows: list[list[str] | str] = []
    for row in content.rows:
        rows.append(
            [*(cell(row, role) for role in roles), mark if row.limit.spec else "", "[ ]" if mark == "[x]" else ""]
        )
    sized_grid(pen, Grid(cols, rows, draw_style(rng, "all")))
    return close(pen, content)
