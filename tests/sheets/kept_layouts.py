"""Layout kinds that are kept aside, drawn for sheets made with ``kept`` only.

Whoever works on the reading of sheets leaves this file unread, so that it can tell how well unseen layouts are read.
"""

from __future__ import annotations

from tests.sheets import blocks
from tests.sheets.cells import section_titles, table_of
from tests.sheets.content import Content, Need
from tests.sheets.draw import Column, Look, Pen, Table, with_rules
from tests.sheets.headers import ADDRESSES, CUSTOMERS
from tests.sheets.kept_phrases import GREETINGS, LIMIT_PHRASES
from tests.sheets.numbers import number
from tests.sheets.registry import layout
from tests.sheets.rows import Row
from tests.sheets.truth import TruthFigure, TruthHeader


def begin(content: Content, look: Look, own: bool = True) -> Pen:
    """A page with its head."""
    pen = Pen(look)
    blocks.footers(pen, content)
    blocks.top(pen, content, entries=None if own else list(content.shared))
    return pen


def finish(pen: Pen, content: Content) -> bytes:
    """The page with its closing lines, as a PDF."""
    blocks.closing(pen, content)
    return pen.finish()


@layout("two-tables", Need(rows=(12, 24)), kept=True)
def two_tables(content: Content, look: Look) -> bytes:
    """Two tables side by side, each with a heading of its own."""
    rng = content.rng
    look = with_rules(look, size=min(look.size, 8.0), margin=36.0, full_width=rng.random() < 0.5)
    pen = begin(content, look)
    titles = section_titles(content)
    half = (len(content.rows) + 1) // 2
    roles = rng.choice((["label", "result", "unit"], ["label", "unit", "result"]))
    gap = rng.choice((14.0, 24.0))
    width = (pen.right - pen.left - gap) / 2
    start, lowest = pen.y, pen.y
    headed = rng.random() < 0.6
    for k, rows in enumerate((content.rows[:half], content.rows[half:])):
        pen.y = start
        x = pen.left + k * (width + gap)
        if headed:
            pen.text(x, pen.y, titles[rows[0].group], bold=True)
            pen.y += look.size * 1.6
        table = table_of(content, roles, pen, rows=rows)
        table.columns[0].most = width * 0.58
        table.draw(pen, x=x, available=width)
        lowest = max(lowest, pen.y)
    pen.y = lowest
    return finish(pen, content)


@layout("previous-batch", Need(rows=(8, 18)), kept=True)
def previous_batch(content: Content, look: Look) -> bytes:
    """Results of an earlier batch or crop beside those of the batch."""
    rng = content.rng
    pen = begin(content, look)
    head = content.head("previous")
    table = table_of(content, rng.choice((["label", "unit", "result"], ["label", "result", "unit"])), pen)
    earlier = []
    for row in content.rows:
        truth = row.cells[0].truth
        text = row.cells[0].text
        if isinstance(truth, TruthFigure) and truth.number and not truth.bound:
            places = len(text.replace(",", ".").partition(".")[2])
            text = number(truth.number * rng.uniform(0.93, 1.07), places, content.comma)
        earlier.append(text)
    at = rng.choice((len(table.columns), len(table.columns) - 1))
    table.columns.insert(at, Column(head, look.value_align))
    for line, text in zip(table.rows, earlier, strict=True):
        line.insert(at, text)
    table.draw(pen)
    return finish(pen, content)


@layout("letter", Need(rows=(6, 10), missing_units=0.0), kept=True, languages=tuple(GREETINGS))
def letter(content: Content, look: Look) -> bytes:
    """A letter with figures in its sentences and a small table."""
    rng = content.rng
    look = with_rules(look, rules="none", size=max(look.size, 9.5), margin=70.0, full_width=False, head_shade=False)
    pen = Pen(look)
    blocks.footers(pen, content)
    blocks.letterhead(pen, content, full=True)
    pen.y += 20
    customer = rng.choice(CUSTOMERS[content.words.language])
    content.analyses[0].header.setdefault("customer", TruthHeader(customer, customer, "either", required=False))
    for line in (customer, *ADDRESSES[content.words.language]):
        pen.text(pen.left, pen.y, line)
        pen.y += look.size * 1.3
    pen.y += 20
    blocks.header_lines(pen, content, [*content.shared, *content.own[0]])
    before, after = GREETINGS[content.words.language]
    for text in before:
        _paragraph(pen, text)
    blocks.method_lines(pen, content)
    table = table_of(content, ["label", "result", "unit"], pen)
    table.head = rng.random() < 0.4
    table.draw(pen, x=pen.left + rng.choice((0.0, 20.0)))
    pen.y += look.size
    for text in after:
        _paragraph(pen, text)
    content.not_figures += [*before, *after]
    return pen.finish()


def _paragraph(pen: Pen, text: str) -> None:
    for line in pen.wrap(text, pen.right - pen.left):
        pen.text(pen.left, pen.y, line)
        pen.y += pen.look.size * 1.35
    pen.y += pen.look.size * 0.7


@layout("receipt", Need(rows=(8, 14)), kept=True)
def receipt(content: Content, look: Look) -> bytes:
    """A slip of 80 mm with values at the right edge."""
    rng = content.rng
    font = rng.choice(("Courier", "LiberationMono", "LiberationSansNarrow", "DejaVuSansCondensed"))
    look = with_rules(look, font=font, size=6.5, page=(227.0, 560.0), margin=12.0, rules="none", pad=1.5)
    pen = Pen(look)
    pen.text(pen.width / 2, pen.y, content.maker.supplier, bold=True, align="center", size=8)
    pen.y += 14
    for analysis in content.analyses:
        text = content.maker.supplier
        analysis.header.setdefault("supplier", TruthHeader(text, text, "either", required=False))
    pen.text(pen.width / 2, pen.y, content.title, align="center")
    pen.y += 12
    blocks.header_lines(pen, content, [*content.shared, *content.own[0]])
    blocks.method_lines(pen, content)
    if rng.random() < 0.6:
        pen.line(pen.left, pen.y - 2, pen.right, pen.y - 2)
    unit_width = max(pen.size_of(r.unit) for r in content.rows) + 4
    for row in content.rows:
        room = pen.right - pen.left - unit_width - pen.size_of(row.cells[0].text) - 8
        lines = pen.wrap(row.label, room)
        for line in lines[:-1]:
            pen.text(pen.left, pen.y, line)
            pen.y += look.size * 1.2
        pen.text(pen.left, pen.y, lines[-1])
        pen.text(pen.right - unit_width, pen.y, row.cells[0].text, align="right")
        pen.text(pen.right - unit_width + 4, pen.y, row.unit)
        pen.y += look.size * 1.5
    return finish(pen, content)


@layout("group-cell-left", Need(rows=(10, 20), limits=True), kept=True)
def group_cell_left(content: Content, look: Look) -> bytes:
    """A ruled table whose first column holds group names in cells merged over several rows."""
    rng = content.rng
    look = with_rules(look, rules="grid", size=min(look.size, 8.5), margin=42.0, full_width=True)
    pen = begin(content, look)
    titles = section_titles(content)
    roles = rng.choice((["label", "unit", "result"], ["label", "result", "unit", "spec"]))
    table = table_of(content, roles, pen)
    wide = max(pen.size_of(w, bold=True) for t in titles.values() for w in t.split()) + 8
    table.draw(pen, x=pen.left + wide)
    row_height = look.size * 1.18 + 2 * look.pad
    heights = [table.height(pen, line, k) for k, line in enumerate(table.rows)]
    at = pen.y - sum(heights)
    centred = rng.random() < 0.6
    k = 0
    while k < len(content.rows):
        group = content.rows[k].group
        n = k
        while n < len(content.rows) and content.rows[n].group == group:
            n += 1
        bottom = at + sum(heights[k:n])
        pen.box(pen.left, at, pen.left + wide, bottom)
        lines = pen.wrap(titles[group], wide - 6, bold=True)
        if len(lines) * look.size * 1.18 > bottom - at:
            lines = lines[:1]
        y = (
            at + (bottom - at - len(lines) * look.size * 1.18) / 2
            if centred
            else at + (row_height - look.size * 1.18) / 2
        )
        for line in lines:
            pen.text(pen.left + 3, y, line, bold=True)
            y += look.size * 1.18
        at, k = bottom, n
    return finish(pen, content)


@layout("value-with-range", Need(limits=True, limit_share=1.0), kept=True)
def value_with_range(content: Content, look: Look) -> bytes:
    """``4.2 (3.5 - 5.0)`` or ``4.2 ± 0.2`` in one cell."""
    rng = content.rng
    pen = begin(content, look)
    spread = rng.random() < 0.35
    open_, close = rng.choice((("(", ")"), ("[", "]"), ("(", ")")))
    for row in content.rows:
        for cell in row.cells:
            truth = cell.truth
            if not isinstance(truth, TruthFigure) or truth.text is not None:
                continue
            if spread and truth.number and not truth.bound:
                places = len(truth.value.replace(",", ".").partition(".")[2])
                cell.text += f" ± {number(max(truth.number * 0.02, 10**-places), places, content.comma)}"
                truth.low = truth.high = ""
            elif row.limit.spec and not spread:
                cell.text = f"{cell.text} {open_}{row.limit.spec}{close}"
    table_of(content, rng.choice((["label", "unit", "result"], ["label", "result", "unit"])), pen).draw(pen)
    return finish(pen, content)


@layout("sideways", Need(rows=(8, 16), limits=True), kept=True)
def sideways(content: Content, look: Look) -> bytes:
    """The sheet drawn on its side of an upright page, as a scanner's driver leaves it."""
    rng = content.rng
    pen = Pen(look, landscape=True, turn=rng.choice((90, 270)))
    blocks.footers(pen, content)
    blocks.top(pen, content)
    roles = rng.choice((["label", "unit", "min", "max", "result"], ["label", "result", "unit"]))
    table_of(content, roles, pen).draw(pen)
    return finish(pen, content)


def _cards(pen: Pen, cards: list[tuple[str, str]], many: int, big: float) -> None:
    """Boxes with a small caption over a larger text."""
    width = (pen.right - pen.left) / many
    small = 6.5
    for start in range(0, len(cards), many):
        part = cards[start : start + many]
        captions = [pen.wrap(c, width - 8, small) for c, _ in part]
        height = max(len(c) for c in captions) * small * 1.2 + big * 1.3 + 8
        if pen.y + height > pen.bottom:
            pen.new_page()
        for k, (lines, (_, text)) in enumerate(zip(captions, part, strict=True)):
            x = pen.left + k * width
            pen.box(x, pen.y, x + width - 3, pen.y + height - 3)
            y = pen.y + 2.5
            for line in lines:
                pen.text(x + 3, y, line, size=small, grey=0.3)
                y += small * 1.2
            size = big
            while size > 5 and pen.size_of(text, size, True) > width - 9:
                size -= 0.5
            pen.text(x + 3, pen.y + height - 5 - size, text, size=size, bold=True)
        pen.y += height


@layout("cards", Need(rows=(8, 16)), kept=True)
def cards(content: Content, look: Look) -> bytes:
    """Header fields and results in boxes, the caption over the text."""
    rng = content.rng
    look = with_rules(look, line=0.4, line_grey=0.4, margin=42.0)
    pen = Pen(look)
    blocks.footers(pen, content)
    blocks.letterhead(pen, content)
    blocks.title(pen, content)
    _cards(pen, [(e.caption, e.text) for e in (*content.shared, *content.own[0])], rng.choice((3, 4)), 9.0)
    pen.y += 8
    blocks.method_lines(pen, content)
    figures = [(r.label, f"{r.cells[0].text} {r.unit}".strip()) for r in content.rows]
    _cards(pen, figures, rng.choice((3, 4, 5)), 10.0)
    return finish(pen, content)


@layout("units-row", Need(batches=(2, 5), rows=(5, 9), words=False, limits=True, missing_units=0.0), kept=True)
def units_row(content: Content, look: Look) -> bytes:
    """Batches as rows, units under the heads, and rows of limits above or below the batches."""
    rng = content.rng
    look = with_rules(look, size=min(look.size, 8.0), margin=36.0, full_width=True)
    pen = Pen(look, landscape=True)
    blocks.footers(pen, content)
    blocks.top(pen, content, entries=list(content.shared))
    for own, analysis in zip(content.own, content.analyses, strict=True):
        for entry in own[2:]:
            analysis.header.pop(entry.key, None)
        del own[2:]
    keys = content.own[0]
    columns = [Column(e.caption) for e in keys]
    columns += [Column(r.label, look.value_align) for r in content.rows]
    blank = [""] * (len(keys) - 1)
    lines = [[*(e.text for e in own), *(r.cells[b].text for r in content.rows)] for b, own in enumerate(content.own)]
    limits = [
        [content.head("min"), *blank, *(r.limit.low for r in content.rows)],
        [content.head("max"), *blank, *(r.limit.high for r in content.rows)],
    ]
    lines = [*limits, *lines] if rng.random() < 0.5 else [*lines, *limits]
    table = Table(columns, lines, head_lines=[[""] * len(keys) + [r.unit for r in content.rows]])
    table.draw(pen)
    return finish(pen, content)


@layout("touching-units", kept=True)
def touching_units(content: Content, look: Look) -> bytes:
    """Values flush right against units flush left, hardly a gap between them."""
    rng = content.rng
    pen = begin(content, with_rules(look, rules="none"))
    edge = pen.left + (pen.right - pen.left) * rng.choice((0.55, 0.7))
    gap = rng.choice((0.6, 1.0, 1.5))
    for row in content.rows:
        room = edge - pen.left - pen.size_of(row.cells[0].text) - 12
        lines = pen.wrap(row.label, room)
        for line in lines[:-1]:
            pen.text(pen.left, pen.y, line)
            pen.y += look.size * 1.2
        pen.text(pen.left, pen.y, lines[-1])
        pen.text(edge, pen.y, row.cells[0].text, align="right")
        pen.text(edge + gap, pen.y, row.unit)
        pen.y += look.size * 1.6
    return finish(pen, content)


@layout("blank-template", Need(rows=(22, 34), blanks=0.55, methods=True), kept=True)
def blank_template(content: Content, look: Look) -> bytes:
    """One form for all malts: every parameter is printed, most results are blank."""
    look = with_rules(look, size=min(look.size, 8.0), pad=min(look.pad, 2.0))
    pen = begin(content, look)
    roles = content.rng.choice((["label", "method", "result", "unit"], ["label", "unit", "result"]))
    table_of(content, roles, pen, sections=content.rng.random() < 0.5).draw(pen)
    return finish(pen, content)


@layout("newspaper-lines", Need(rows=(10, 22)), kept=True)
def newspaper_lines(content: Content, look: Look) -> bytes:
    """``Label: value unit`` lines in two columns of the page."""
    rng = content.rng
    look = with_rules(look, size=min(look.size, 8.5), margin=42.0)
    pen = begin(content, look)
    width = (pen.right - pen.left) / 2
    half = (len(content.rows) + 1) // 2
    colon = rng.choice((":", " :", ":"))
    start, lowest = pen.y, pen.y
    for k, rows in enumerate((content.rows[:half], content.rows[half:])):
        pen.y = start
        x = pen.left + k * width
        for row in rows:
            _line(pen, x, width - 12, row, colon)
        lowest = max(lowest, pen.y)
    pen.y = lowest
    return finish(pen, content)


def _line(pen: Pen, x: float, width: float, row: Row, colon: str) -> None:
    value = f"{row.cells[0].text} {row.unit}" if row.unit and row.cells[0].truth else row.cells[0].text
    lines = pen.wrap(row.label + colon, width - pen.size_of(value, bold=True) - 4)
    for line in lines[:-1]:
        pen.text(x, pen.y, line)
        pen.y += pen.look.size * 1.2
    used = pen.text(x, pen.y, lines[-1])
    pen.text(x + used + 4, pen.y, value, bold=pen.look.value_bold)
    pen.y += pen.look.size * 1.55


@layout("limits-in-words", Need(limits=True, limit_share=1.0), kept=True, languages=tuple(LIMIT_PHRASES))
def limits_in_words(content: Content, look: Look) -> bytes:
    """``not more than 4.5 %`` in the column of limits."""
    rng = content.rng
    pen = begin(content, with_rules(look, size=min(look.size, 9.0)))
    most, least, between = LIMIT_PHRASES[content.words.language]
    table = table_of(
        content, rng.choice((["label", "result", "unit", "spec"], ["label", "unit", "spec", "result"])), pen
    )
    at = next(i for i, c in enumerate(table.columns) if c.title in content.words.all("heads", "spec"))
    for line, row in zip(table.rows, content.rows, strict=True):
        low, high = row.limit.low, row.limit.high
        unit = f" {row.unit}" if row.unit in ("%", "EBC") and rng.random() < 0.5 else ""
        if low and high:
            line[at] = between.format(low, high) + unit
        elif low or high:
            line[at] = (least if low else most).format(low or high) + unit
    table.draw(pen)
    return finish(pen, content)
