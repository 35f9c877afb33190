"""Layout kinds of the exam, fourth part: forms and cards of several lines."""

from __future__ import annotations

from tests.sheets.cells import section_titles
from tests.sheets.content import Content, Need
from tests.sheets.draw import Look
from tests.sheets.exam_make import exam_layout
from tests.sheets.exam_parts import TINTS, doubt, end, look_of, shrunk, start, tint, unit_beside, with_unit
from tests.sheets.rows import Row


@exam_layout("method-under-label", Need(rows=(8, 16), methods=True))
def method_under_label(content: Content, look: Look) -> bytes:
    """The method stands in small type below the label, the unit in small type below the value."""
    rng = content.rng
    pen = start(content, look_of(look, 9.5))
    size = pen.look.size
    x = pen.left + (pen.right - pen.left) * rng.choice((0.6, 0.75))
    for row in content.rows:
        lines = pen.wrap(row.label, x - pen.left - 70)
        height = len(lines) * size * 1.2 + size * 0.95 + 4
        if pen.y + height > pen.bottom:
            pen.new_page()
        for n, line in enumerate(lines):
            pen.text(pen.left, pen.y + n * size * 1.2, line, bold=look.label_bold)
        pen.text(pen.left + 8, pen.y + len(lines) * size * 1.2, row.method, size=size * 0.72, grey=0.3)
        pen.text(x, pen.y, row.cells[0].text, bold=True, align="right")
        pen.text(x, pen.y + size * 1.2, row.unit, size=size * 0.72, align="right", grey=0.2)
        pen.y += height
        pen.line(pen.left, pen.y - 2, x + 6, pen.y - 2, 0.3)
    return end(pen, content)


@exam_layout("form-fields", Need(rows=(10, 22)))
def form_fields(content: Content, look: Look) -> bytes:
    """A printed form: numbered fields with a tiny label in the corner, filled in with larger type."""
    rng = content.rng
    pen = start(content, look_of(look, 9.0, margin=40.0))
    many = rng.choice((2, 3, 3))
    width = (pen.right - pen.left) / many
    colour = rng.choice(TINTS)
    size = pen.look.size * 1.15
    field = rng.randint(10, 20)
    for at in range(0, len(content.rows), many):
        rows = content.rows[at : at + many]
        names = [pen.wrap(f"{field + n} {r.label}", width - 8, 6.2) for n, r in enumerate(rows)]
        field += len(rows)
        height = max(len(n) for n in names) * 7.4 + size * 1.4 + 5
        if pen.y + height > pen.bottom:
            pen.new_page()
        for k, row in enumerate(rows):
            x = pen.left + k * width
            tint(pen, x, pen.y, x + width, pen.y + height, colour)
            pen.box(x, pen.y, x + width, pen.y + height)
            for i, line in enumerate(names[k]):
                pen.text(x + 3, pen.y + 2 + i * 7.4, line, size=6.2)
            y = pen.y + height - size * 1.35
            text = row.cells[0].text
            pen.text(x + width * 0.55, y, text, size=shrunk(pen, text, width * 0.5, size), align="right")
            unit = unit_beside(row)
            pen.text(x + width * 0.55 + 5, y, unit, size=shrunk(pen, unit, width * 0.42, size * 0.9))
        pen.y += height
    return end(pen, content)


@exam_layout("range-bars", Need(rows=(8, 15), limits=True, limit_share=1.0))
def range_bars(content: Content, look: Look) -> bytes:
    """A drawn bar between the limits, with a mark where the result lies; the figures stand left of it."""
    rng = content.rng
    pen = start(content, look_of(look, 9.0, margin=40.0))
    size = pen.look.size
    edges = [pen.left, pen.left + 190, pen.left + 260, pen.left + 325]
    low_x, high_x = pen.left + 375, pen.left + 455
    for k, key in enumerate(("label", "result", "unit")):
        text = content.head(key)
        pen.text(edges[k], pen.y, text, bold=True, size=shrunk(pen, text, edges[k + 1] - edges[k] - 6, size, True))
    for x, key, align in ((low_x - 6, "min", "right"), (high_x + 6, "max", "left")):
        text = content.head(key)
        pen.text(x, pen.y, text, size=shrunk(pen, text, 48, 6.5), align=align)  # type: ignore[arg-type]
    pen.y += size * 1.8
    for row in content.rows:
        lines = pen.wrap(row.label, 184)
        height = max(len(lines), 1) * size * 1.2 + 7
        if pen.y + height > pen.bottom:
            pen.new_page()
        for n, line in enumerate(lines):
            pen.text(edges[0], pen.y + n * size * 1.2, line)
        pen.text(edges[1], pen.y, row.cells[0].text, bold=True, size=shrunk(pen, row.cells[0].text, 66, size, True))
        pen.text(edges[2], pen.y, row.unit, size=shrunk(pen, row.unit, 60, size))
        if row.limit.spec:
            tint(pen, low_x, pen.y + 3, high_x, pen.y + 8, (0.75, 0.8, 0.75))
            mark = low_x + (high_x - low_x) * rng.uniform(0.2, 0.8)
            tint(pen, mark, pen.y + 1, mark + 2.5, pen.y + 10, (0.2, 0.2, 0.2))
            pen.text(low_x - 6, pen.y + 2, row.limit.low, size=6.5, align="right")
            pen.text(high_x + 6, pen.y + 2, row.limit.high, size=6.5)
        pen.y += height
    return end(pen, content)


def _by_group(rows: list[Row]) -> dict[str, list[Row]]:
    groups: dict[str, list[Row]] = {}
    for row in rows:
        groups.setdefault(row.group, []).append(row)
    return groups


@exam_layout("boxes-by-group", Need(rows=(12, 24)))
def boxes_by_group(content: Content, look: Look) -> bytes:
    """Every group of figures is a small frame with a title bar; two frames stand beside one another."""
    rng = content.rng
    pen = start(content, look_of(look, 8.0, margin=38.0))
    titles = section_titles(content)
    size = pen.look.size
    gap = 12.0
    width = (pen.right - pen.left - gap) / 2
    colour = rng.choice(TINTS)
    groups = list(_by_group(content.rows).items())
    unit_width = max(pen.size_of(r.unit) for r in content.rows) + 6
    for at in range(0, len(groups), 2):
        pair = groups[at : at + 2]
        value_width = max(pen.size_of(r.cells[0].text) for _, rows in pair for r in rows) + 8
        room = width - unit_width - value_width - 10
        heights = [
            size * 1.9 + sum(len(pen.wrap(r.label, room)) * size * 1.2 + 3 for r in rows) + 4 for _, rows in pair
        ]
        if pen.y + max(heights) > pen.bottom:
            pen.new_page()
        for k, (group, rows) in enumerate(pair):
            x, y = pen.left + k * (width + gap), pen.y
            tint(pen, x, y, x + width, y + size * 1.7, colour)
            pen.text(x + 4, y + 2, titles[group], bold=True)
            y += size * 1.9
            for row in rows:
                lines = pen.wrap(row.label, room)
                for n, line in enumerate(lines):
                    pen.text(x + 4, y + n * size * 1.2, line)
                pen.text(x + width - unit_width, y, row.cells[0].text, align="right")
                pen.text(x + width - unit_width + 4, y, unit_beside(row))
                y += len(lines) * size * 1.2 + 3
            pen.box(x, pen.y, x + width, pen.y + heights[k])
        pen.y += max(heights) + 10
    return end(pen, content)


@exam_layout("value-first-lines", Need(rows=(8, 16)))
def value_first_lines(content: Content, look: Look) -> bytes:
    """Each line begins with the value and its unit; what it is stands behind a dash."""
    rng = content.rng
    pen = start(content, look)
    dash = rng.choice((" - ", " – ", "  "))
    wide = max(pen.size_of(with_unit(r), bold=True) for r in content.rows) + 8
    for row in content.rows:
        pen.text(pen.left, pen.y, with_unit(row), bold=look.value_bold)
        x = pen.left + wide
        x += pen.text(x, pen.y, dash.strip()) + (6 if dash.strip() else 0)
        for line in pen.wrap(row.label, pen.right - x):
            pen.text(x, pen.y, line)
            pen.y += look.size * 1.25
        pen.y += look.size * 0.35
        doubt(row, "the value stands before the label")
    return end(pen, content)


@exam_layout("value-over-limit", Need(limits=True, limit_share=0.9, rows=(8, 16)))
def value_over_limit(content: Content, look: Look) -> bytes:
    """A ruled cell holds the value and, on a line below it, the limits in brackets."""
    rng = content.rng
    look = look_of(look, 9.0, rules="grid", valign="top")
    pen = start(content, look)
    open_, close = rng.choice((("(", ")"), ("[", "]")))
    unit_first = rng.random() < 0.5
    columns = [230.0, 60.0, 110.0] if unit_first else [230.0, 110.0, 60.0]
    heads = [content.head("label"), content.head("unit"), content.head("result")]
    if not unit_first:
        heads[1], heads[2] = heads[2], heads[1]
    step = look.size * 1.18
    rows: list[tuple[str, str, str, str]] = [(heads[0], heads[1], heads[2], "head")]
    for r in content.rows:
        second = f"{open_}{r.limit.spec}{close}" if r.limit.spec else ""
        cells = (r.unit, r.cells[0].text) if unit_first else (r.cells[0].text, r.unit)
        rows.append((r.label, *cells, second))
    for label, b, c, second in rows:
        lines = pen.wrap(label, columns[0] - 8, bold=second == "head")
        height = max(len(lines), 1 if second in ("", "head") else 2) * step + 6
        if pen.y + height > pen.bottom:
            pen.new_page()
        x = pen.left
        for k, (wide, text) in enumerate(zip(columns, (label, b, c), strict=True)):
            pen.box(x, pen.y, x + wide, pen.y + height)
            for n, line in enumerate(lines if k == 0 else [text]):
                size = shrunk(pen, line, wide - 6, look.size, second == "head")
                pen.text(x + 3, pen.y + 3 + n * step, line, size=size, bold=second == "head")
            if k == (2 if unit_first else 1) and second not in ("", "head"):
                pen.text(x + 3, pen.y + 3 + step, second, size=shrunk(pen, second, wide - 6, look.size * 0.9))
            x += wide
        pen.y += height
    return end(pen, content)
