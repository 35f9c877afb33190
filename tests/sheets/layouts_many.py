"""Layouts with several batches, several certificates, several pages, or several method families."""

from __future__ import annotations

from dataclasses import replace

from tests.sheets import blocks
from tests.sheets.cells import label_with_unit, section_titles, table_of
from tests.sheets.content import Content, Need
from tests.sheets.draw import Column, Look, Pen, Table, with_rules
from tests.sheets.families import stack_rows
from tests.sheets.registry import layout


@layout("batches-as-columns", Need(batches=(2, 6), rows=(8, 18)))
def batches_as_columns(content: Content, look: Look) -> bytes:
    """A column for each batch, with the batch numbers and dates above the figures."""
    rng = content.rng
    pen = Pen(with_rules(look, size=min(look.size, 9.0), margin=min(look.margin, 48.0)))
    blocks.footers(pen, content)
    blocks.top(pen, content, entries=list(content.shared))
    count = len(content.own)
    in_head = rng.random() < 0.5
    unit_last = rng.random() < 0.25
    unit_in_label = not unit_last and rng.random() < 0.3
    lines: list[list[str]] = []
    keys = [e.key for e in content.own[0]]
    for k, key in enumerate(keys):
        if in_head and key == "batch":
            continue
        caption = content.own[0][k].caption
        lines.append([caption, *(own[k].text for own in content.own)])
    for row in content.rows:
        label = label_with_unit(row, "round") if unit_in_label else row.label
        lines.append([label, *(c.text for c in row.cells)])
    units = [""] * (len(lines) - len(content.rows)) + [r.unit for r in content.rows]
    first = content.own[0][0].caption if in_head else content.head("label")
    titles = [own[0].text for own in content.own] if in_head else [str(i + 1) for i in range(count)]
    columns = [Column(first, most=0.3 * (pen.right - pen.left))]
    columns += [Column(t, look.value_align) for t in titles]
    if not unit_in_label:
        at = len(columns) if unit_last else 1
        columns.insert(at, Column(content.head("unit") if not in_head or rng.random() < 0.7 else ""))
        for line, unit in zip(lines, units, strict=True):
            line.insert(at, unit)
    table = Table(columns, lines, head=in_head or rng.random() < 0.6)
    table.draw(pen)
    blocks.closing(pen, content)
    return pen.finish()


@layout("batches-as-rows", Need(batches=(2, 6), rows=(5, 9), words=False))
def batches_as_rows(content: Content, look: Look) -> bytes:
    """A row for each batch under wrapped heads, the units in the heads or on a line of their own."""
    rng = content.rng
    look = with_rules(look, size=min(look.size, 8.0), margin=36.0, full_width=True)
    pen = Pen(look, landscape=rng.random() < 0.7)
    blocks.footers(pen, content)
    blocks.top(pen, content, entries=list(content.shared))
    own_line = rng.random() < 0.4
    keys = content.own[0][: rng.randint(1, 3)]
    rest = content.own[0][len(keys) :]
    for own in content.own:  # what has no column is not printed, so it is not in the answer
        for entry in rest:
            own[:] = [e for e in own if e.key != entry.key]
    for analysis in content.analyses:
        for entry in rest:
            analysis.header.pop(entry.key, None)
    columns = [Column(k.caption) for k in keys]
    for row in content.rows:
        columns.append(Column(row.label if own_line else label_with_unit(row, "round"), look.value_align))
    lines = []
    for b, own in enumerate(content.own):
        lines.append([*(e.text for e in own), *(r.cells[b].text for r in content.rows)])
    table = Table(columns, lines)
    if own_line:
        table.head_lines = [[""] * len(keys) + [r.unit for r in content.rows]]
    table.draw(pen)
    blocks.closing(pen, content)
    return pen.finish()


@layout("several-pages", Need(rows=(24, 36), contaminants=0.8, limits=True))
def several_pages(content: Content, look: Look) -> bytes:
    """A table that goes on over two or three pages, with the head repeated or not."""
    rng = content.rng
    look = with_rules(look, size=max(look.size, 9.5), pad=max(look.pad, 5.0))
    pen = Pen(look)
    blocks.footers(pen, content, pages=2)
    blocks.top(pen, content)
    roles = rng.choice(
        (["label", "unit", "result"], ["label", "result", "unit", "spec"], ["label", "unit", "min", "max", "result"])
    )
    table = table_of(content, list(roles), pen, sections=rng.random() < 0.5)
    table.repeat_head = rng.random() < 0.5
    if pen.y + len(table.rows) * (look.size * 1.18 + 2 * look.pad) < pen.bottom:  # it would fit: break it by hand
        later = replace(table, rows=table.rows[len(table.rows) // 2 :], head=table.repeat_head)
        table.rows = table.rows[: len(table.rows) // 2]
        table.draw(pen)
        later.columns = [replace(c) for c in table.columns]
        pen.new_page()
        later.draw(pen)
    else:
        table.draw(pen)
    blocks.closing(pen, content)
    return pen.finish()


@layout("several-certificates", Need(rows=(8, 16), limits=True))
def several_certificates(content: Content, look: Look) -> bytes:
    """Two to four certificates, each on its own page, in one file."""
    rng = content.rng
    pen = Pen(look)
    pages = rng.randint(2, 4)
    blocks.footers(pen, content, pages)
    roles = rng.choice((["label", "unit", "result"], ["label", "result", "unit"], ["label", "unit", "spec", "result"]))
    form = rng.choice(blocks.HEADER_FORMS)
    for k in range(pages):
        part = content if k == 0 else content.composer.compose(content.need)
        if k:
            pen.new_page()
        blocks.top(pen, part, form=form)
        table_of(part, list(roles), pen).draw(pen)
        blocks.closing(pen, part)
    return pen.finish()


@layout("two-on-a-page", Need(rows=(6, 9), missing_units=0.0))
def two_on_a_page(content: Content, look: Look) -> bytes:
    """Two short certificates under one another on one page."""
    rng = content.rng
    look = with_rules(look, size=min(look.size, 8.5), pad=min(look.pad, 2.5))
    pen = Pen(look)
    blocks.footers(pen, content)
    blocks.letterhead(pen, content)
    form = rng.choice((blocks.header_lines, blocks.header_pairs, blocks.header_inline))
    for k in range(2):
        part = content if k == 0 else content.composer.compose(content.need)
        if k:
            pen.y += 14
            pen.line(pen.left, pen.y - 6, pen.right, pen.y - 6)
        blocks.title(pen, part, content.title)
        form(pen, part, [*part.shared, *part.own[0]])
        blocks.method_lines(pen, part)
        table_of(part, ["label", "result", "unit"], pen).draw(pen)
    return pen.finish()


@layout("sections-of-batches", Need(batches=(2, 4), rows=(12, 20)))
def sections_of_batches(content: Content, look: Look) -> bytes:
    """Batches as columns with section rows between the figures."""
    pen = Pen(with_rules(look, size=min(look.size, 9.0)))
    blocks.footers(pen, content)
    blocks.top(pen, content, entries=list(content.shared))
    titles = section_titles(content)
    lines: list[list[str]] = []
    for k, entry in enumerate(content.own[0]):
        lines.append([entry.caption, "", *(own[k].text for own in content.own)])
    group = ""
    for row in content.rows:
        if row.group != group:
            group = row.group
            lines.append([titles[group]])
        lines.append([row.label, row.unit, *(c.text for c in row.cells)])
    columns = [Column("", most=0.36 * (pen.right - pen.left)), Column("")]
    columns += [Column("", look.value_align) for _ in content.own]
    Table(columns, lines, head=False).draw(pen)
    blocks.closing(pen, content)
    return pen.finish()


@layout(
    "families-columns",
    Need(rows=(5, 9), families=("EBC",), missing_units=0.0),
    languages=("en", "de", "fr", "es", "nl", "it"),
)
def families_columns(content: Content, look: Look) -> bytes:
    """IoB, EBC and ASBC columns side by side: parameter and unit depend on the column."""
    rng, words = content.rng, content.words
    pen = Pen(look)
    blocks.footers(pen, content)
    content.family_line = ""
    blocks.top(pen, content)
    marker = content.composer.marker["dry"]
    how = rng.choice(("label", "column", "column", "none"))
    analysis = content.analyses[0]
    analysis.families, analysis.mash, analysis.unrecognised = ("EBC", "IoB", "ASBC"), None, []
    spaced = marker if marker.startswith(",") else f" {marker}"
    rows, analysis.figures = stack_rows(rng, words, content.profiles[0], content.comma, spaced, how)
    heads = rng.choice((("IoB", "EBC", "ASBC"), ("IOB", "EBC", "ASBC")))
    lines = [[r.label, *([r.units[0]] if how == "column" else []), *r.texts] for r in rows]
    columns = [Column(content.head("label"), most=0.45 * (pen.right - pen.left))]
    if how == "column":
        columns.append(Column(content.head("unit")))
    columns += [Column(h, look.value_align) for h in heads]
    if rng.random() < 0.3:
        for line in lines:
            line[0] = line[0].upper()
    Table(columns, lines).draw(pen)
    blocks.closing(pen, content)
    return pen.finish()
