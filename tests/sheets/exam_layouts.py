"""Layout kinds of the exam, first part: one row a figure, arranged in new ways.

Whoever works on the reading of sheets leaves the exam's files unread, so that it can tell how well unseen layouts are
read.
"""

from __future__ import annotations

from tests.sheets import blocks
from tests.sheets.cells import section_titles, table_of
from tests.sheets.content import Content, Need
from tests.sheets.draw import Column, Look, Pen, Table
from tests.sheets.exam_make import exam_layout
from tests.sheets.exam_parts import (
    DARKS,
    TINTS,
    doubt,
    end,
    head,
    hyphenated,
    look_of,
    near,
    negative_difference,
    phrase,
    phrases,
    places,
    plain_number,
    shrunk,
    start,
    tint,
    unit_beside,
    watermark,
    with_unit,
)
from tests.sheets.numbers import number
from tests.sheets.rows import Row
from tests.sheets.truth import TruthHeader
from tests.sheets.wording import MAIN_LANGUAGES


@exam_layout("numbered-halves", Need(rows=(14, 24), limits=True), MAIN_LANGUAGES)
def numbered_halves(content: Content, look: Look) -> bytes:
    """Row numbers run on from the left half of the page to the right one; each row ends in a verdict."""
    rng = content.rng
    pen = start(content, look_of(look, 7.2, margin=34.0, full_width=True, pad=min(look.pad, 2.5)))
    half = (len(content.rows) + 1) // 2
    gap = 12.0
    width = (pen.right - pen.left - gap) / 2
    top, lowest = pen.y, pen.y
    heads = [content.head(r) for r in ("number", "label", "result", "unit", "remark")]
    verdict = phrase(content, "ok")
    marked = rng.random() < 0.7
    size = pen.look.size
    for k, rows in enumerate((content.rows[:half], content.rows[half:])):
        pen.y = top
        lines = [
            [str(k * half + n), r.label, r.cells[0].text, r.unit, verdict if r.limit.spec else ""]
            for n, r in enumerate(rows, 1)
        ]
        columns = [Column(h, "right" if i in (0, 2) else "left") for i, h in enumerate(heads)]
        columns[1].most = width * 0.42
        if not marked:
            lines = [line[:4] for line in lines]
            columns = columns[:4]
        pen.look = look_of(pen.look, size)
        Table(columns, lines).draw(pen, x=pen.left + k * (width + gap), available=width)
        lowest = max(lowest, pen.y)
    pen.y = lowest
    return end(pen, content)


@exam_layout("value-box", Need(limits=True, rows=(8, 16)))
def value_box(content: Content, look: Look) -> bytes:
    """Results stand in a tinted column, the limits in small type under them."""
    rng = content.rng
    pen = start(content, look_of(look, 9.5, margin=max(look.margin, 48.0)))
    colour = rng.choice(TINTS)
    x0 = pen.left + (pen.right - pen.left) * rng.choice((0.55, 0.62, 0.7))
    wide = 88.0
    unit_left = rng.random() < 0.4
    unit_width = max(pen.size_of(r.unit) for r in content.rows) + 10
    size = pen.look.size
    for row in content.rows:
        lines = pen.wrap(row.label, x0 - pen.left - 8 - (unit_width if unit_left else 0))
        height = max(size * 2.5, len(lines) * size * 1.2 + 5)
        if pen.y + height > pen.bottom:
            pen.new_page()
        tint(pen, x0, pen.y, x0 + wide, pen.y + height, colour)
        pen.line(pen.left, pen.y + height, x0 + wide, pen.y + height, 0.3)
        for n, line in enumerate(lines):
            pen.text(pen.left, pen.y + 2 + n * size * 1.2, line)
        small = row.limit.spec
        y = pen.y + (2 if small else height / 2 - size * 0.6)
        pen.text(x0 + wide / 2, y, row.cells[0].text, bold=True, align="center",
                 size=shrunk(pen, row.cells[0].text, wide - 4, size, True))  # fmt: skip
        pen.text(x0 + wide / 2, pen.y + 2 + size * 1.25, small, size=size * 0.68, align="center", grey=0.2)
        pen.text(x0 - unit_width + 4 if unit_left else x0 + wide + 6, pen.y + 2, row.unit)
        pen.y += height
    return end(pen, content)


@exam_layout("limit-in-label", Need(limits=True))
def limit_in_label(content: Content, look: Look) -> bytes:
    """``Moisture (max. 5.0 %)``: the limits stand in brackets in the label's cell."""
    rng = content.rng
    pen = start(content, look)
    open_, close = rng.choice((("(", ")"), ("[", "]"), ("(", ")")))
    in_value = rng.random() < 0.4
    lines = []
    for row in content.rows:
        label = row.label
        if row.limit.spec:
            gap = "" if not row.unit else " "
            label = f"{label} {open_}{row.limit.spec}{gap}{row.unit}{close}"
        lines.append([label, with_unit(row)] if in_value else [label, row.cells[0].text, row.unit])
    columns = [Column(content.head("label"), most=0.55 * (pen.right - pen.left)),
               Column(content.head("result"), look.value_align)]  # fmt: skip
    if not in_value:
        columns.append(Column(content.head("unit")))
    Table(columns, lines).draw(pen)
    return end(pen, content)


@exam_layout("head-beside-table", Need(rows=(9, 18)))
def head_beside_table(content: Content, look: Look) -> bytes:
    """What the lot is stands in a narrow column at the left, the figures at the right of it."""
    rng = content.rng
    look = look_of(look, 8.5, margin=40.0, full_width=True)
    pen = Pen(look)
    blocks.footers(pen, content)
    blocks.letterhead(pen, content)
    blocks.title(pen, content)
    top = pen.y
    wide = (pen.right - pen.left) * 0.27
    tint(pen, pen.left - 4, top - 4, pen.left + wide, pen.height - 70, rng.choice(TINTS))
    for e in (*content.shared, *content.own[0]):
        for line in pen.wrap(e.caption, wide - 8, look.size * 0.8):
            pen.text(pen.left, pen.y, line, size=look.size * 0.8, grey=0.3)
            pen.y += look.size
        for line in pen.wrap(e.text, wide - 8, bold=True):
            pen.text(pen.left, pen.y, line, bold=True, size=shrunk(pen, line, wide - 8, look.size, True))
            pen.y += look.size * 1.2
        pen.y += look.size * 0.7
    pen.y = top
    x = pen.left + wide + 14
    for text in (content.family_line, content.note_line):
        for line in pen.wrap(text, pen.right - x) if text else ():
            pen.text(x, pen.y, line)
            pen.y += look.size * 1.3
    pen.y += 4
    roles = rng.choice((["label", "result", "unit"], ["label", "unit", "result"]))
    table = table_of(content, roles, pen)
    table.columns[0].most = (pen.right - x) * 0.5
    table.draw(pen, x=x)
    return pen.finish()


@exam_layout("unit-cards", Need(rows=(9, 17)))
def unit_cards(content: Content, look: Look) -> bytes:
    """Three columns of figures, each with its name above, the value in the middle, the unit below."""
    rng = content.rng
    look = look_of(look, 9.0, margin=42.0)
    pen = start(content, look)
    many = rng.choice((3, 3, 4))
    width = (pen.right - pen.left) / many
    big = look.size * 1.5
    for k in range(0, len(content.rows), many):
        rows = content.rows[k : k + many]
        names = [pen.wrap(r.label, width - 10, 7.5, True) for r in rows]
        tall = max(len(n) for n in names) * 9.0
        height = tall + big * 1.2 + 20
        if pen.y + height > pen.bottom:
            pen.new_page()
        for n, row in enumerate(rows):
            x = pen.left + (n + 0.5) * width
            for i, line in enumerate(names[n]):
                pen.text(x, pen.y + i * 9.0, line, size=7.5, bold=True, align="center")
            text = row.cells[0].text
            pen.text(x, pen.y + tall + 2, text, size=shrunk(pen, text, width - 10, big), align="center")
            pen.text(x, pen.y + tall + big * 1.2 + 3, unit_beside(row), size=7.0, align="center", grey=0.3)
        pen.y += height
        pen.line(pen.left, pen.y - 4, pen.right, pen.y - 4, 0.4)
    return end(pen, content)


@exam_layout("unit-before-value")
def unit_before_value(content: Content, look: Look) -> bytes:
    """``Moisture ...... % 4.5``: the unit stands before the value."""
    rng = content.rng
    negative_difference(content)
    pen = start(content, look)
    at = pen.left + (pen.right - pen.left) * rng.choice((0.6, 0.7))
    unit_width = max(pen.size_of(r.unit) for r in content.rows) + 6
    aligned = rng.random() < 0.5
    dotted = rng.random() < 0.7
    for row in content.rows:
        lines = pen.wrap(row.label, at - pen.left - 20)
        for line in lines[:-1]:
            pen.text(pen.left, pen.y, line)
            pen.y += look.size * 1.2
        x = pen.left + pen.text(pen.left, pen.y, lines[-1]) + 3
        if dotted:
            pen.text(x, pen.y, "." * max(0, int((at - 6 - x) / pen.size_of("."))))
        unit = unit_beside(row)
        pen.text(at, pen.y, unit)
        value = at + (unit_width if aligned else pen.size_of(unit) + (4 if unit else 0))
        pen.text(value, pen.y, row.cells[0].text, bold=look.value_bold)
        pen.y += look.size * 1.55
    return end(pen, content)


@exam_layout("unit-group-rows", Need(rows=(10, 20), missing_units=0.0, seconds=False), MAIN_LANGUAGES)
def unit_group_rows(content: Content, look: Look) -> bytes:
    """``in %:`` above all the rows that are given in per cent, and so on for every unit."""
    rng = content.rng
    pen = start(content, look)
    pattern = phrase(content, "inunit")
    groups: dict[str, list[Row]] = {}
    for row in content.rows:
        groups.setdefault(row.unit, []).append(row)
    lines: list[list[str]] = [[r.label, r.cells[0].text] for r in groups.pop("", [])]
    for unit in sorted(groups, key=lambda u: -len(groups[u])):
        lines.append([pattern.format(u=unit)])
        lines += [[r.label, r.cells[0].text] for r in groups[unit]]
    columns = [Column(content.head("label"), most=0.6 * (pen.right - pen.left)),
               Column(content.head("result"), look.value_align)]  # fmt: skip
    table = Table(columns, lines)
    table.head = rng.random() < 0.7
    table.draw(pen)
    return end(pen, content)


@exam_layout("hyphenated-labels", Need(rows=(9, 16), methods=True))
def hyphenated_labels(content: Content, look: Look) -> bytes:
    """A column so narrow that long words of the labels are broken with hyphens."""
    rng = content.rng
    pen = start(content, look_of(look, 9.0))
    x_value, x_unit = pen.left + 92, pen.left + 170
    method = rng.random() < 0.5
    size = pen.look.size
    captions = [content.head("label"), content.head("result"), content.head("unit")]
    for x, text in zip((pen.left, x_value, x_unit), captions, strict=True):
        pen.text(x, pen.y, text, bold=True, size=shrunk(pen, text, 72, size, True))
    if method:
        pen.text(x_unit + 90, pen.y, content.head("method"), bold=True)
    pen.y += size * 1.8
    pen.line(pen.left, pen.y - 3, pen.right, pen.y - 3)
    for row in content.rows:
        lines = hyphenated(pen, row.label, 76)
        height = len(lines) * size * 1.18 + 6
        if pen.y + height > pen.bottom:
            pen.new_page()
        for n, line in enumerate(lines):
            pen.text(pen.left, pen.y + n * size * 1.18, line, size=shrunk(pen, line, 86, size))
        pen.text(x_value, pen.y, row.cells[0].text, size=shrunk(pen, row.cells[0].text, 74, size))
        pen.text(x_unit, pen.y, row.unit)
        if method:
            pen.text(x_unit + 90, pen.y, row.method)
        pen.y += height
        pen.line(pen.left, pen.y - 3, pen.right, pen.y - 3, 0.25)
    return end(pen, content)


@exam_layout("white-on-dark", Need(rows=(12, 24), limits=True))
def white_on_dark(content: Content, look: Look) -> bytes:
    """Section rows and the head in white letters on a dark band, rows on alternating tints."""
    rng = content.rng
    look = look_of(look, 9.0, pad=max(look.pad, 2.5), margin=46.0)
    pen = start(content, look)
    dark, light = rng.choice(DARKS), rng.choice(TINTS)
    titles = section_titles(content)
    roles = rng.choice((["label", "result", "unit"], ["label", "unit", "result", "spec"], ["label", "unit", "result"]))
    table = table_of(content, roles, pen)
    table.fit(pen, pen.right - pen.left)
    edges = [pen.left]
    for column in table.columns:
        edges.append(edges[-1] + column.width)
    step = pen.look.size * 1.18

    def band(texts: list[str], xs: list[float]) -> None:
        tint(pen, pen.left, pen.y, edges[-1], pen.y + step + 6, dark)
        for x, right, text in zip(xs, [*xs[1:], edges[-1]], texts, strict=True):
            size = shrunk(pen, text, right - x - 5, pen.look.size, True)
            pen.text(x + 3, pen.y + 3, text, bold=True, grey=1.0, size=size)
        pen.y += step + 6

    band([c.title for c in table.columns], edges[:-1])
    group = ""
    for n, (row, line) in enumerate(zip(content.rows, table.rows, strict=True)):
        height = table.height(pen, line, n)
        if pen.y + height + step + 8 > pen.bottom:
            pen.new_page()
        if row.group != group:
            group = row.group
            band([titles[group]], [pen.left])
        if n % 2:
            tint(pen, pen.left, pen.y, edges[-1], pen.y + height, light)
        for column, x, text in zip(table.columns, edges, line, strict=False):
            for i, part in enumerate(pen.wrap(text, column.width - 6)):
                pen.text(x + 3, pen.y + look.pad + i * step, part, bold=column.bold)
        pen.y += height
    return end(pen, content)


@exam_layout("watermark", Need(limits=True), MAIN_LANGUAGES)
def behind_watermark(content: Content, look: Look) -> bytes:
    """Large pale words lie across the page under the figures."""
    rng = content.rng
    pen = Pen(look_of(look, 9.5, rules=rng.choice(("grid", "rows", "none")), head_shade=False))
    blocks.footers(pen, content)
    watermark(pen, phrase(content, "watermark"))
    head(pen, content)
    table_of(content, rng.choice((["label", "unit", "result"], ["label", "result", "unit", "spec"])), pen).draw(pen)
    return end(pen, content)


@exam_layout("crop-comparison", Need(rows=(8, 16)), MAIN_LANGUAGES)
def crop_comparison(content: Content, look: Look) -> bytes:
    """This crop's result beside the average of the crop before."""
    rng = content.rng
    pen = start(content, look)
    year = content.maker.year
    now = phrase(content, "crop").format(y=year)
    old = phrase(content, "oldcrop").format(y=year - 1)
    content.analyses[0].header.setdefault("crop_year", TruthHeader(str(year), str(year), "either", required=False))
    roles = rng.choice((["label", "unit", "result"], ["label", "result", "unit"]))
    table = table_of(content, roles, pen)
    at = 2 if roles[2] == "result" else 1
    table.columns[at].title = now
    table.columns.insert(at + 1, Column(old, look.value_align))
    for line, row in zip(table.rows, content.rows, strict=True):
        line.insert(at + 1, near(content, row, 0.94, 1.06))
    table.draw(pen)
    return end(pen, content)


@exam_layout("target-first", Need(rows=(8, 18), limits=True), MAIN_LANGUAGES)
def target_first(content: Content, look: Look) -> bytes:
    """The supplier's target stands before the result."""
    rng = content.rng
    pen = start(content, look)
    table = table_of(content, ["label", "unit", "typical", "result"], pen)
    table.columns[2].title = phrase(content, "target")
    if rng.random() < 0.4:
        for line in table.rows:
            line[1], line[2] = line[2], line[1]
        table.columns[1].title, table.columns[2].title = table.columns[2].title, table.columns[1].title
    table.draw(pen)
    return end(pen, content)


@exam_layout("head-at-foot", Need(rows=(10, 20)))
def head_at_foot(content: Content, look: Look) -> bytes:
    """The column heads stand below the table, or once more in the middle of it."""
    rng = content.rng
    pen = start(content, look_of(look, 9.5))
    table = table_of(content, rng.choice((["label", "unit", "result"], ["label", "result", "unit"])), pen)
    heads = [c.title for c in table.columns]
    if rng.random() < 0.5:
        table.head = False
        table.rows.append(heads)
        for row in content.rows:
            doubt(row, "heads below")
    else:
        table.rows.insert(len(table.rows) // 2, heads)
    table.draw(pen)
    return end(pen, content)


@exam_layout("double-determination", Need(rows=(8, 15)), MAIN_LANGUAGES)
def double_determination(content: Content, look: Look) -> bytes:
    """Two single determinations and their mean, which is the result."""
    rng = content.rng
    pen = start(content, look_of(look, 9.0))
    titles = phrases(content, "det")
    columns = [Column(content.head("label"), most=0.4 * (pen.right - pen.left)), Column(content.head("unit"))]
    columns += [Column(t, "right") for t in titles]
    lines = []
    for row in content.rows:
        value, text = plain_number(row), row.cells[0].text
        apart = 0.0 if value is None else round(value * rng.uniform(-0.008, 0.008), places(text))
        first, second = (
            (text, text) if value is None else (number(value + d, places(text), content.comma) for d in (apart, -apart))
        )
        lines.append([row.label, row.unit, first, second, row.cells[0].text])
        doubt(row, "mean beside determinations")
    Table(columns, lines).draw(pen)
    return end(pen, content)
