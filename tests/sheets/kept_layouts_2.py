"""More layout kinds that were kept aside, drawn for sheets made with ``kept`` only."""

from __future__ import annotations

from tests.sheets import blocks
from tests.sheets.cells import table_of
from tests.sheets.content import Content, Need
from tests.sheets.draw import Column, Look, Pen, Table, with_rules
from tests.sheets.headers import Entry
from tests.sheets.kept_layouts import begin, finish
from tests.sheets.registry import layout
from tests.sheets.wording import Wording


@layout("stacked-bilingual", Need(rows=(8, 16)), kept=True, languages=("de", "fr", "nl", "es", "cs", "da", "it"))
def stacked_bilingual(content: Content, look: Look) -> bytes:
    """The English label in small type under the label."""
    rng = content.rng
    english = Wording("en", True)
    pen = begin(content, with_rules(look, size=max(look.size, 8.5)))
    table = table_of(content, rng.choice((["label", "unit", "result"], ["label", "result", "unit"])), pen)
    for k, row in enumerate(content.rows):
        key = {"ratio": "ratio_st" if content.family == "ASBC" else "ratio_kolbach"}.get(row.concept, row.concept)
        choices = [w for w in english.all("labels", key) if "~" not in w]
        if choices:
            table.second_line[k] = rng.choice(choices).replace("{b}", "")
    table.draw(pen)
    return finish(pen, content)


@layout("two-level-heads", Need(limits=True, rows=(8, 18)), kept=True)
def two_level_heads(content: Content, look: Look) -> bytes:
    """``Specification`` over ``min`` and ``max``, beside the result."""
    rng = content.rng
    look = with_rules(look, rules=rng.choice(("grid", "rows", "frame")), full_width=True)
    pen = begin(content, look)
    roles = rng.choice((["label", "unit", "min", "max", "result"], ["label", "result", "unit", "min", "max"]))
    table = table_of(content, roles, pen)
    table.fit(pen, pen.right - pen.left)
    at = roles.index("min")
    x0 = pen.left + sum(c.width for c in table.columns[:at])
    x1 = x0 + table.columns[at].width + table.columns[at + 1].width
    height = look.size * 1.18 + 2 * look.pad
    if look.rules == "grid":
        pen.box(x0, pen.y, x1, pen.y + height)
    else:
        pen.line(x0, pen.y + height, x1, pen.y + height)
    pen.text((x0 + x1) / 2, pen.y + look.pad, content.head("spec"), bold=look.head_bold, align="center")
    pen.y += height
    table.draw(pen)
    return finish(pen, content)


@layout("one-row-blocks", Need(rows=(8, 14), words=False), kept=True)
def one_row_blocks(content: Content, look: Look) -> bytes:
    """Parameters as heads over one row of results, broken into blocks."""
    rng = content.rng
    look = with_rules(look, size=min(look.size, 8.5), rules=rng.choice(("grid", "rows", "none")), full_width=True)
    pen = begin(content, look)
    widest = max(pen.size_of(w.upper(), bold=True) for r in content.rows for w in r.label.split()) + 2 * look.pad + 6
    many = max(1, min(rng.choice((4, 5, 6)), int((pen.right - pen.left) / widest)))
    for start in range(0, len(content.rows), many):
        rows = content.rows[start : start + many]
        table = Table([Column(r.label, "center") for r in rows], [[r.cells[0].text for r in rows]])
        for column in table.columns:
            column.width = (pen.right - pen.left) / many
        table.head_lines = [[r.unit for r in rows]]
        table.draw(pen)
        pen.y += look.size
    return finish(pen, content)


@layout("header-below", Need(limits=True), kept=True)
def header_below(content: Content, look: Look) -> bytes:
    """The results first, batch and dates in a block under them, caption and text on separate lines."""
    rng = content.rng
    pen = Pen(look)
    blocks.footers(pen, content)
    blocks.letterhead(pen, content)
    blocks.title(pen, content)
    blocks.method_lines(pen, content)
    table_of(content, rng.choice((["label", "unit", "result", "spec"], ["label", "result", "unit"])), pen).draw(pen)
    pen.y += look.size * 1.5
    entries: list[Entry] = [*content.shared, *content.own[0]]
    third = (pen.right - pen.left) / 3
    for start in range(0, len(entries), 3):
        if pen.y + 4 * look.size > pen.bottom:
            pen.new_page()
        for k, e in enumerate(entries[start : start + 3]):
            size = look.size
            while size > 5 and max(pen.size_of(e.caption, size), pen.size_of(e.text, size, True)) > third - 6:
                size -= 0.5
            pen.text(pen.left + k * third, pen.y, e.caption, size=size, grey=0.3)
            pen.text(pen.left + k * third, pen.y + look.size * 1.3, e.text, size=size, bold=True)
        pen.y += look.size * 3.2
    return finish(pen, content)
