"""Layout kinds of the unseen set, fourth part: short sheets, narrow paper, printed screens and forms."""

from __future__ import annotations

from dataclasses import replace

from tests.sheets.content import Content, Need
from tests.sheets.draw import Look
from tests.sheets.headers import Entry
from tests.sheets.truth import TruthFigure, TruthHeader
from tests.sheets.unseen_grid import Col, Grid, draw_style
from tests.sheets.unseen_make import FULL, unseen_layout
from tests.sheets.unseen_parts import (
    TINTS,
    cell,
    close,
    columns,
    header,
    letterhead,
    maker_of,
    paragraph,
    phrase,
    plain_table,
    press,
    rows_of,
    sentences,
    shrunk,
    sized_grid,
    small,
    tint,
    title,
    top,
)


@unseen_layout(
    "u-roasted", Need(rows=(4, 7), limits=True, families=("EBC", "EBC", "IoB", "ASBC")), classes=("ROA", "CRY")
)
def roasted(content: Content, look: Look) -> bytes:
    """A crystal or roasted malt: a handful of figures, most of the page empty."""
    rng = content.rng
    pen = press(content, look)
    top(pen, content)
    roles = rng.choice(
        (["label", "value", "unit"], ["label", "unit", "spec", "value"], ["label", "value", "unit", "min", "max"])
    )
    plain_table(pen, content, list(roles), draw_style(rng))
    return close(pen, content)


@unseen_layout("u-distilling", Need(rows=(9, 18), limits=True, families=("IoB",), contaminants=0.8), ("en",), ("DIS",))
def distilling(content: Content, look: Look) -> bytes:
    """A distilling malt by IoB methods."""
    rng = content.rng
    pen = press(content, small(look, 9.5))
    top(pen, content)
    roles = rng.choice(
        (["label", "unit", "value", "spec"], ["label", "value", "unit"], ["label", "unit", "min", "max", "value"])
    )
    plain_table(pen, content, list(roles), draw_style(rng))
    return close(pen, content)


@unseen_layout("u-thermal", Need(rows=(6, 13), missing_units=0.0))
def thermal(content: Content, look: Look) -> bytes:
    """A strip of 80 mm from a receipt printer: names and figures, long names on a line of their own."""
    rng = content.rng
    size = 7.5
    tall = 300 + 30.0 * (len(content.rows) + len(content.shared) + len(content.own[0]))
    look = replace(look, font=rng.choice(("LiberationMono", "Courier")), size=size, margin=12.0)
    pen = press(content, look, page=(227.0, tall))
    pen.before_show = None
    supplier = content.maker.supplier
    for analysis in content.analyses:
        analysis.header.setdefault("supplier", TruthHeader(supplier, supplier, "either", required=False))
    pen.text(pen.width / 2, pen.y, supplier, bold=True, align="center", size=shrunk(pen, supplier, 200, 9, True))
    pen.y += 14
    pen.text(pen.width / 2, pen.y, content.title, align="center", size=shrunk(pen, content.title, 200, size))
    pen.y += 12
    rule = rng.choice(("-", "=", "*")) * 45
    for line in (rule, *(f"{e.caption}: {e.text}" for e in (*content.shared, *content.own[0])), rule):
        paragraph(pen, pen.left, pen.right - pen.left, line)
    for row in content.rows:
        value = cell(row, "both")
        room = pen.right - pen.left - pen.size_of(value + "  ")
        lines = pen.wrap(row.label, room)
        for n, text in enumerate(lines):
            pen.text(pen.left, pen.y, text)
            if n + 1 == len(lines):
                pen.text(pen.right, pen.y, value, align="right")
            pen.y += size * 1.3
    pen.text(pen.left, pen.y, rule)
    pen.y += 12
    sentences(pen, content)
    return pen.finish()


@unseen_layout("u-bag-label", Need(rows=(4, 6), missing_units=0.0))
def bag_label(content: Content, look: Look) -> bytes:
    """The label of a bag: large type, few figures."""
    pen = press(content, replace(look, size=9.5, margin=16.0), page=(420.0, 298.0))
    pen.before_show = None
    entries = []
    for e in (*content.shared, *content.own[0]):
        if e.key in ("malt", "batch", "crop_year", "produced_on", "best_before", "variety", "supplier"):
            entries.append(e)
        else:
            content.analyses[0].header.pop(e.key, None)
    malt = next(e for e in entries if e.key == "malt")
    for analysis in content.analyses:
        analysis.header["malt"].required = False
        analysis.header["malt"].certainty = "either"
    pen.text(pen.width / 2, pen.y, malt.text, size=shrunk(pen, malt.text, 380, 22, True), bold=True, align="center")
    pen.y += 30
    x, start = pen.left, pen.y
    for e in entries:
        if e is not malt:
            text = f"{e.caption}: {e.text}"
            pen.text(x, pen.y, text, size=shrunk(pen, text, 185, 8.5))
            pen.y += 12
    low = pen.y
    pen.y = start
    at = pen.width / 2 + 4
    for row in content.rows:
        lines = pen.wrap(row.label, 110)
        for n, text in enumerate(lines):
            pen.text(at, pen.y + n * 10.5, text, size=8.5)
        pen.text(pen.right, pen.y, cell(row, "both"), bold=True, align="right", size=8.5)
        pen.y += len(lines) * 10.5 + 3
    pen.y = max(low, pen.y) + 4
    pen.look = replace(pen.look, size=8.0)
    sentences(pen, content)
    return pen.finish()


@unseen_layout("u-spreadsheet", Need(rows=(9, 18), limits=True))
def spreadsheet(content: Content, look: Look) -> bytes:
    """A sheet printed from a spreadsheet: grid lines everywhere, captions and texts in the table's own columns."""
    rng = content.rng
    pen = press(
        content, replace(look, font=rng.choice(("LiberationSans", "DejaVuSansCondensed")), size=8.5, margin=40.0)
    )
    style = replace(draw_style(rng, "all"), fill=None, stripe=None, pad=2.5, lead=1.45, slack="even", upper=False)
    roles = rng.choice(
        (["label", "unit", "value", "spec"], ["label", "value", "unit", "min", "max"], ["label", "unit", "value"])
    )
    heads = [content.head(h) for h in ({"value": "result"}.get(r, r) for r in roles)]
    blank = [""] * len(roles)
    rows: list[list[str] | str] = [[content.title, *blank[1:]], list(blank)]
    for e in (*content.shared, *content.own[0]):
        rows.append([e.caption, e.text, *blank[2:]])
    rows.append(list(blank))
    for text in (content.family_line, content.note_line):
        if text:
            rows.append([text, *blank[1:]])
    content.family_line = content.note_line = ""
    rows.append(heads)
    rows += rows_of(content, list(roles))
    cols = [Col("", "left" if r in ("label", "unit", "spec") else rng.choice(("right", "left")),
                r in ("label", "value", "spec", "unit")) for r in roles]  # fmt: skip
    sized_grid(pen, Grid(cols, rows, style, head=False))
    pen.before_show = None
    pen.text(pen.width / 2, pen.height - 30, f"COA_{rng.randint(100, 999)}.xlsx", size=7, align="center")
    return pen.finish()


@unseen_layout("u-portal", Need(rows=(7, 14)), FULL)
def portal(content: Content, look: Look) -> bytes:
    """A page printed from a web browser: address and time at the edges, names in bold over or beside figures."""
    rng = content.rng
    pen = press(content, replace(look, font="LiberationSans", size=9.5, margin=40.0))
    maker = maker_of(content)
    day = maker.dates.write(maker.issued()).text
    pen.before_show = None
    pen.text(28, 14, f"{day}, 09:{rng.randint(10, 59)}", size=7)
    pen.text(pen.width / 2, 14, content.title, size=7, align="center")
    pen.text(28, pen.height - 20, f"https://portal.maltings.example/coa/{rng.randint(10000, 99999)}?print=1", size=7)
    pen.text(pen.width - 28, pen.height - 20, "1/1", size=7, align="right")
    letterhead(pen, content, with_street=False)
    title(pen, content)
    header(pen, content)
    sentences(pen, content)
    beside = rng.random() < 0.5
    for k, row in enumerate(content.rows):
        height = pen.look.size * (1.7 if beside else 2.8)
        if pen.y + height > pen.bottom:
            pen.new_page()
        if k % 2 == 0:
            tint(pen, pen.left - 3, pen.y - 2, pen.right, pen.y + height - 3, (0.96, 0.96, 0.97))
        pen.text(pen.left, pen.y, row.label, bold=True)
        if beside:
            edge = max(pen.left + 250, pen.left + pen.size_of(row.label, bold=True) + 8)
            pen.text(edge, pen.y, cell(row, "both"))
        else:
            pen.text(pen.left + 10, pen.y + pen.look.size * 1.3, cell(row, "both"))
        pen.y += height
    return close(pen, content)


@unseen_layout("u-erp", Need(rows=(8, 16), limits=True, methods=True), FULL)
def erp(content: Content, look: Look) -> bytes:
    """A certificate from a stock program: numbered characteristics, limits and value on one line, the method below."""
    rng = content.rng
    pen = press(content, small(look, 9.0, 50.0))
    top(pen, content)
    cols = [Col(content.head("number")), *columns(content, ["label", "unit", "min", "max", "value"], "right")]
    rows: list[list[str] | str] = []
    grid = Grid(cols, rows, replace(draw_style(rng, "head", "none", "double"), lead=1.5))
    for k, row in enumerate(content.rows, 1):
        rows.append([f"{10 * k:04d}", *(cell(row, role) for role in ("label", "unit", "min", "max", "value"))])
    cols.insert(0, cols.pop(0))
    sized_grid(pen, grid)
    return close(pen, content)


@unseen_layout("u-typed-form", Need(rows=(8, 16), missing_units=0.0))
def typed_form(content: Content, look: Look) -> bytes:
    """A printed form whose boxes were filled in with a typewriter; the unit is printed behind the box."""
    rng = content.rng
    pen = press(content, replace(look, font="LiberationSans", size=8.5, margin=46.0))
    typed = replace(pen.look, font="LiberationMono", size=9.5)
    printed = pen.look
    letterhead(pen, content)
    title(pen, content)
    half = (pen.right - pen.left) / 2

    def box(x: float, y: float, width: float, text: str) -> None:
        pen.box(x, y, x + width, y + 15)
        pen.look = typed
        pen.text(x + 4, y + 3.5 + rng.choice((-0.6, 0.0, 0.8)), text, size=shrunk(pen, text, width - 7, 9.5))
        pen.look = printed

    entries: list[Entry] = [*content.shared, *content.own[0]]
    for k, e in enumerate(entries):
        x = pen.left + (k % 2) * half
        pen.text(x, pen.y + 4, e.caption, size=shrunk(pen, e.caption, 88, 8.0))
        box(x + 92, pen.y, half - 100, e.text)
        if k % 2 or k + 1 == len(entries):
            pen.y += 20
    pen.y += 8
    sentences(pen, content)
    for row in content.rows:
        lines = pen.wrap(row.label, 215)
        height = max(20.0, len(lines) * 10.0 + 6)
        if pen.y + height > pen.bottom:
            pen.new_page()
        for n, text in enumerate(lines):
            pen.text(pen.left, pen.y + 4 + n * 10.0, text)
        box(pen.left + 225, pen.y, 95, row.cells[0].text)
        pen.text(pen.left + 326, pen.y + 4, row.unit)
        pen.y += height
    return close(pen, content)


@unseen_layout("u-compact-pairs", Need(rows=(10, 20)))
def compact_pairs(content: Content, look: Look) -> bytes:
    """Name, value, unit twice beside one another in one ruled table, rows counted down or across."""
    rng = content.rng
    pen = press(content, small(look, 8.0, 38.0))
    top(pen, content)
    rows_ = list(content.rows)
    half = (len(rows_) + 1) // 2
    pairs = list(zip(rows_[:half], [*rows_[half:], None], strict=False))
    if rng.random() < 0.5:
        pairs = [(rows_[k], rows_[k + 1] if k + 1 < len(rows_) else None) for k in range(0, len(rows_), 2)]
    roles = rng.choice((["label", "value", "unit"], ["label", "unit", "value"], ["label", "both"]))
    cols = columns(content, list(roles), "right")
    lines: list[list[str] | str] = [
        [*(cell(a, r) for r in roles), *(cell(b, r) if b else "" for r in roles)] for a, b in pairs
    ]
    grid = Grid([*cols, *(replace(c) for c in cols)], lines, draw_style(rng, "all", "rows", "cols"))
    grid.head = rng.random() < 0.7
    sized_grid(pen, grid)
    return close(pen, content)


@unseen_layout("u-three-panels", Need(rows=(12, 22), missing_units=0.0))
def three_panels(content: Content, look: Look) -> bytes:
    """Three panels beside one another across the page, each with a title."""
    rng = content.rng
    pen = press(content, small(look, 7.8, 34.0), landscape=True)
    top(pen, content)
    parts = (("chemical", ("chemical", "nitrogen")), ("wort", ("wort", "enzymes", "contaminants")),
             ("physical", ("physical", "sieving", "modification")))  # fmt: skip
    width = (pen.right - pen.left - 24) / 3
    start, low = pen.y, pen.y
    colour = rng.choice(TINTS)
    for k, (key, groups) in enumerate(parts):
        rows = [r for r in content.rows if r.group in groups]
        x, size = pen.left + k * (width + 12), pen.look.size
        pen.y = start
        tint(pen, x, pen.y, x + width, pen.y + size * 1.8, colour)
        pen.text(x + 4, pen.y + size * 0.35, content.words.pick(rng, "sections", key), bold=True)
        pen.y += size * 2.2
        value = max([30.0, *(pen.size_of(cell(r, "both")) for r in rows)]) + 6
        for row in rows:
            lines = pen.wrap(row.label, width - value - 6)
            for n, text in enumerate(lines):
                pen.text(x + 4, pen.y + n * size * 1.15, text)
            pen.text(x + width - 3, pen.y, cell(row, "both"), align="right")
            pen.y += (len(lines) - 1) * size * 1.15 + size * 1.55
        pen.box(x, start, x + width, pen.y)
        low = max(low, pen.y)
    pen.y = low + 8
    return close(pen, content)


@unseen_layout("u-panel-right", Need(rows=(8, 16)), FULL)
def panel_right(content: Content, look: Look) -> bytes:
    """The figures at the left, the lot's entries in a tinted panel at the right."""
    rng = content.rng
    pen = press(content, small(look, 8.5, 40.0))
    letterhead(pen, content)
    title(pen, content)
    sentences(pen, content)
    start, size = pen.y, pen.look.size
    wide = 150.0
    x = pen.right - wide
    entries = [*content.shared, *content.own[0]]
    tint(pen, x, start, pen.right, start + len(entries) * size * 2.7 + 8, rng.choice(TINTS))
    for e in entries:
        pen.text(x + 6, pen.y + 4, e.caption, size=size * 0.8, grey=0.35)
        pen.text(x + 6, pen.y + 4 + size, e.text, bold=True, size=shrunk(pen, e.text, wide - 12, size, True))
        pen.y += size * 2.7
    low, pen.y = pen.y, start
    roles = rng.choice((["label", "value", "unit"], ["label", "both"], ["label", "unit", "value"]))
    grid = Grid(columns(content, list(roles)), rows_of(content, list(roles)), draw_style(rng))
    sized_grid(pen, grid, pen.left, x - pen.left - 14)
    pen.y = max(pen.y, low)
    return close(pen, content)


@unseen_layout("u-footnoted", Need(rows=(8, 16), missing_units=0.0), FULL)
def footnoted(content: Content, look: Look) -> bytes:
    """The moisture basis is given by footnote signs on the names."""
    rng = content.rng
    pen = press(content, look)
    for row in content.rows:
        figure = row.cells[0].truth
        if isinstance(figure, TruthFigure) and figure.why == "no moisture basis":
            figure.certainty, figure.why = (
                ("sure", "") if content.composer.signal != "units" else ("either", "footnote")
            )
    signs = rng.choice((("*", "**"), ("1)", "2)"), ("¹", "²"), ("(a)", "(b)")))
    bases = {r.cells[0].truth.basis for r in content.rows if isinstance(r.cells[0].truth, TruthFigure)}
    top(pen, content)
    roles = rng.choice((["label", "value", "unit"], ["label", "unit", "value"]))
    rows = rows_of(content, list(roles))
    for row, line in zip(content.rows, rows, strict=True):
        figure = row.cells[0].truth
        assert isinstance(line, list)
        if isinstance(figure, TruthFigure) and figure.basis:
            line[0] = f"{row.label}{'' if signs[0] == '*' else ' '}{signs[figure.basis == 'as-is']}"
    sized_grid(pen, Grid(columns(content, list(roles)), rows, draw_style(rng)))
    pen.y += 4
    for sign, basis, key in ((signs[0], "dry", "dryfoot"), (signs[1], "as-is", "asisfoot")):
        if basis in bases:
            pen.text(pen.left, pen.y, f"{sign} {phrase(content, key)}", size=pen.look.size * 0.85)
            pen.y += pen.look.size * 1.2
    return close(pen, content)
