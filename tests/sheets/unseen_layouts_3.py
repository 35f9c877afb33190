"""Layout kinds of the unseen set, third part: several lots on a sheet, several malts in a file."""

from __future__ import annotations

from dataclasses import replace

from tests.sheets.content import Content, Need
from tests.sheets.draw import Look
from tests.sheets.rows import Row
from tests.sheets.truth import TruthFigure, TruthHeader
from tests.sheets.unseen_grid import Col, Grid, draw_style
from tests.sheets.unseen_make import FULL, unseen_layout
from tests.sheets.unseen_parts import (
    HEAD_FORMS,
    cell,
    close,
    columns,
    header,
    letterhead,
    paragraph,
    phrase,
    phrases,
    plain_table,
    press,
    sentences,
    sized_grid,
    small,
    title,
    top,
)


def _keep(content: Content, count: int) -> None:
    """Entries of the lots that have no place are not printed, so they are not in the answer."""
    for own, analysis in zip(content.own, content.analyses, strict=True):
        for entry in own[count:]:
            analysis.header.pop(entry.key, None)
        del own[count:]


@unseen_layout("u-lots-columns", Need(batches=(2, 4), rows=(8, 16), limits=True))
def lots_columns(content: Content, look: Look) -> bytes:
    """Every lot is a column; limits in front or behind."""
    rng = content.rng
    pen = press(content, small(look, 8.5, 42.0))
    top(pen, content, list(content.shared))
    spec = rng.choice(("", "front", "behind"))
    rows: list[list[str] | str] = []
    for k, entry in enumerate(content.own[0][1:], 1):
        rows.append([entry.caption, "", *(own[k].text for own in content.own)])
    for row in content.rows:
        rows.append([row.label, row.unit, *(c.text for c in row.cells)])
    cols = [Col(content.own[0][0].caption, wrap=True), Col(content.head("unit"))]
    side = rng.choice(("right", "center"))
    cols += [Col(own[0].text, side) for own in content.own]  # type: ignore[arg-type]
    if spec:
        at = 2 if spec == "front" else len(cols)
        cols.insert(at, Col(content.head("spec"), wrap=True))
        extra = ["" for _ in content.own[0][1:]] + [r.limit.spec for r in content.rows]
        for line, text in zip(rows, extra, strict=True):
            assert isinstance(line, list)
            line.insert(at, text)
    sized_grid(pen, Grid(cols, rows, draw_style(rng, "all", "rows", "cols", "outer")))
    return close(pen, content)


@unseen_layout("u-lots-rows", Need(batches=(2, 6), rows=(5, 9), words=False, missing_units=0.0))
def lots_rows(content: Content, look: Look) -> bytes:
    """Every lot is a row under wrapped heads; units in the heads or in a second line of heads."""
    rng = content.rng
    _keep(content, rng.randint(1, 3))
    pen = press(content, small(look, 8.5, 36.0), landscape=True)
    top(pen, content, list(content.shared))
    below = rng.random() < 0.5
    cols = [Col(e.caption) for e in content.own[0]]
    for row in content.rows:
        name = row.label if below else cell(row, "rounded")
        cols.append(Col(name, "center", sub=row.unit if below else ""))
    rows: list[list[str] | str] = [
        [*(e.text for e in own), *(r.cells[b].text for r in content.rows)] for b, own in enumerate(content.own)
    ]
    sized_grid(pen, Grid(cols, rows, draw_style(rng, "all", "rows", "cols")))
    return close(pen, content)


_CODES = {
    "moisture": "M", "extract_fine_dry": "EF", "extract_coarse_dry": "EC", "hwe_dry": "HWE", "colour": "C",
    "total_protein": "TP", "total_nitrogen": "TN", "friability": "F", "viscosity": "V", "wort_ph": "pH", "fan": "FAN",
    "ratio": "R", "beta_glucan": "BG", "dp": "DP", "homogeneity": "H",
}  # fmt: skip


@unseen_layout("u-lots-legend", Need(batches=(2, 6), rows=(6, 9), words=False, missing_units=0.0), FULL)
def lots_legend(content: Content, look: Look) -> bytes:
    """Lots as rows under short marks; a legend below the table says what the marks mean."""
    rng = content.rng
    _keep(content, 1)
    pen = press(content, small(look, 9.5))
    top(pen, content, list(content.shared))
    marks = [_CODES.get(r.concept, "") or f"P{k}" for k, r in enumerate(content.rows, 1)]
    numbered = rng.random() < 0.4 or content.words.language != "en" or len(set(marks)) < len(marks)
    if numbered:
        marks = [f"({k})" for k in range(1, len(content.rows) + 1)]
    cols = [Col(content.own[0][0].caption), *(Col(m, "center") for m in marks)]
    rows: list[list[str] | str] = [
        [own[0].text, *(r.cells[b].text for r in content.rows)] for b, own in enumerate(content.own)
    ]
    sized_grid(pen, Grid(cols, rows, draw_style(rng, "all", "rows")))
    pen.y += pen.look.size
    pen.text(pen.left, pen.y, phrase(content, "legend"), bold=True)
    pen.y += pen.look.size * 1.4
    for mark, row in zip(marks, content.rows, strict=True):
        sign = " " if numbered else " = "
        paragraph(pen, pen.left, pen.right - pen.left, f"{mark}{sign}{cell(row, 'rounded')}", pen.look.size * 0.9)
        for c in row.cells:  # the name stands far from the figure: asking about it is no fault
            if isinstance(c.truth, TruthFigure) and c.truth.certainty == "sure":
                c.truth.certainty, c.truth.why = "either", "named in a legend"
    return close(pen, content)


@unseen_layout("u-lots-beside", Need(batches=(2, 2), rows=(7, 13), missing_units=0.0))
def lots_beside(content: Content, look: Look) -> bytes:
    """Two lots of a load, each with a head and a table of its own, beside one another."""
    rng = content.rng
    pen = press(content, small(look, 8.0, 38.0))
    top(pen, content, list(content.shared))
    gap = 18.0
    width = (pen.right - pen.left - gap) / 2
    start, low = pen.y, pen.y
    style = replace(draw_style(rng, "all", "rows", "head"), slack="label")
    cols = columns(content, ["label", "both"], "right")
    for b, own in enumerate(content.own):
        x = pen.left + b * (width + gap)
        pen.y = start
        for e in own:
            pen.text(x, pen.y, f"{e.caption}: {e.text}", bold=e.key == "batch")
            pen.y += pen.look.size * 1.5
        pen.y += 4
        rows: list[list[str] | str] = [[r.label, cell(r, "both", b)] for r in content.rows]
        sized_grid(pen, Grid([replace(c) for c in cols], rows, style), x, width)
        low = max(low, pen.y)
    pen.y = low + 10
    return close(pen, content)


@unseen_layout("u-composite", Need(rows=(8, 15)), FULL)
def composite(content: Content, look: Look) -> bytes:
    """A shipment of several lots: they are listed with their tonnes, and one composite sample was analysed."""
    rng = content.rng
    pen = press(content, small(look, 9.0))
    entries = [*content.shared, *content.own[0]]
    batch = next(e for e in entries if e.key == "batch")
    top(pen, content, [e for e in entries if e.key not in ("batch", "quantity")])
    words = phrases(content, "lots")
    numbers = [batch.text, *(content.maker.batch_number() for _ in range(rng.randint(1, 3)))]
    rows: list[list[str] | str] = [[n, str(rng.randint(1, 40)), str(rng.randint(5, 26))] for n in numbers]
    style = draw_style(rng, "all", "rows", "head")
    sized_grid(pen, Grid([Col(words[0]), Col(words[1], "center"), Col(words[2], "right")], rows, style))
    header_ = content.analyses[0].header
    header_["batch"] = TruthHeader(batch.text, ", ".join(numbers), "ambiguous", required=False)
    header_.pop("quantity", None)
    pen.y += pen.look.size * 1.2
    pen.text(pen.left, pen.y, phrase(content, "composite"), bold=True)
    pen.y += pen.look.size * 1.8
    plain_table(pen, content, rng.choice((["label", "value", "unit"], ["label", "unit", "value"])), style)
    return close(pen, content)


@unseen_layout("u-two-malts", Need(rows=(7, 14), limits=True))
def two_malts(content: Content, look: Look) -> bytes:
    """Two certificates in one file, of two malts, in one form."""
    rng = content.rng
    pen = press(content, small(look, 9.5))
    roles = rng.choice((["label", "unit", "value"], ["label", "value", "unit", "spec"]))
    style = draw_style(rng)
    form = rng.choice(HEAD_FORMS)
    other = content.composer.compose(content.need)
    if len(other.rows) < 4:
        other = content
    for k, part in enumerate((content, other)):
        if k and part is content:
            break
        if k:
            pen.new_page()
        letterhead(pen, part)
        title(pen, part, content.title)
        header(pen, part, form=form)
        sentences(pen, part)
        plain_table(pen, part, list(roles), style)
    if other is content:
        return close(pen, content)
    return close(pen, other)


@unseen_layout("u-month-list", Need(batches=(3, 6), rows=(6, 10), words=False, limits=True), FULL)
def month_list(content: Content, look: Look) -> bytes:
    """A month's lots as rows, the limits in rows above or below them."""
    rng = content.rng
    _keep(content, rng.randint(1, 2))
    pen = press(content, small(look, 8.5, 36.0), landscape=True)
    top(pen, content, list(content.shared))
    names = len(content.own[0])
    cols = [Col(e.caption) for e in content.own[0]]
    cols += [Col(cell(r, "rounded"), "right") for r in content.rows]
    rows: list[list[str] | str] = [
        [*(e.text for e in own), *(r.cells[b].text for r in content.rows)] for b, own in enumerate(content.own)
    ]
    blank = [""] * (names - 1)
    limits: list[list[str] | str] = [
        [content.head("min"), *blank, *(r.limit.low for r in content.rows)],
        [content.head("max"), *blank, *(r.limit.high for r in content.rows)],
    ]
    rows = [*limits, *rows] if rng.random() < 0.5 else [*rows, *limits]
    sized_grid(pen, Grid(cols, rows, draw_style(rng, "all", "rows")))
    return close(pen, content)


@unseen_layout("u-lot-blocks", Need(batches=(2, 3), rows=(5, 9), missing_units=0.0))
def lot_blocks(content: Content, look: Look) -> bytes:
    """One table: a band with the lot's entries, its figures below, then the next band."""
    rng = content.rng
    pen = press(content, small(look, 9.0))
    top(pen, content, list(content.shared))
    roles = rng.choice((["label", "value", "unit"], ["label", "unit", "value"]))
    rows: list[list[str] | str] = []
    for b, own in enumerate(content.own):
        rows.append("   ".join(f"{e.caption}: {e.text}" for e in own[:2]))
        rows += [[cell(r, role, b) for role in roles] for r in content.rows]
    _keep(content, 2)
    sized_grid(pen, Grid(columns(content, list(roles)), rows, draw_style(rng, "all", "rows", "outer")))
    return close(pen, content)


def _families(content: Content) -> list[list[Row]]:
    half = [r for r in content.rows if r.group in ("physical", "sieving", "modification")]
    rest = [r for r in content.rows if r not in half]
    return [part for part in (rest, half) if part]


@unseen_layout("u-two-tables", Need(rows=(10, 20), limits=True))
def two_tables(content: Content, look: Look) -> bytes:
    """Malt and wort in one table, the grain in another with the same columns, without heads of its own."""
    rng = content.rng
    pen = press(content, small(look, 9.0))
    top(pen, content)
    roles = rng.choice((["label", "unit", "value"], ["label", "value", "unit"], ["label", "unit", "spec", "value"]))
    style = replace(draw_style(rng, "all", "rows", "head"), slack="even")
    cols = columns(content, list(roles))
    parts = _families(content)
    for k, rows in enumerate(parts):
        key = "physical" if rows[0].group in ("physical", "sieving", "modification") else "chemical"
        pen.text(pen.left, pen.y, content.words.pick(rng, "sections", key), bold=True, size=pen.look.size * 1.15)
        pen.y += pen.look.size * 1.8
        lines: list[list[str] | str] = [[cell(r, role) for role in roles] for r in rows]
        again = k == 0 or rng.random() < 0.5
        sized_grid(pen, Grid([replace(c) for c in cols], lines, style, head=again))
        pen.y += pen.look.size * 1.4
    return close(pen, content)
