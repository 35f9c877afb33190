"""Layout kinds of the sealed set, fourth part: several pages, papers of other kinds, two languages."""

from __future__ import annotations

from dataclasses import replace

from tests.sheets.content import Content, Need
from tests.sheets.draw import Look
from tests.sheets.rows import basis_of_label
from tests.sheets.sealed_make import SealedWording, sealed_layout
from tests.sheets.sealed_names import TOWNS, UNTRUE
from tests.sheets.sealed_parts import (
    close,
    composer_of,
    entries_of,
    header,
    letterhead,
    maker_of,
    phrase,
    phrases,
    press,
    sentences,
    small,
    title,
)
from tests.sheets.sealed_tables import Col, Grid, Roles, Style, cell, columns, draw_grid, table
from tests.sheets.truth import TruthFigure, TruthHeader, TruthRow

_GREY = (0.87, 0.87, 0.87)


@sealed_layout("s-a09", Need(batches=(2, 3), rows=(8, 14), limits=True, missing_units=0.0))
def one_each(content: Content, look: Look) -> bytes:
    """A certificate a page, one for each batch."""
    rng = content.rng
    pen = press(content, small(look, 9.5), rng.choice(("line", "page", "columns")), pages=len(content.own))
    letter, form = rng.choice(("logo", "centred", "address")), rng.choice(("pairs", "halves", "stack"))
    roles: Roles = rng.choice((("label", "unit", "spec", "value"), ("label", "value", "unit", "min", "max")))
    style = Style(rng.choice(("all", "rows")), _GREY, pad=4, lead=1.5)
    family, note = content.family_line, content.note_line
    cols = columns(content, roles, "right")
    for b in range(len(content.own)):
        if b:
            pen.new_page()
        letterhead(pen, content, letter)
        title(pen, content)
        header(pen, content, form, [*content.shared[:1], *content.own[b], *content.shared[1:]])
        content.family_line, content.note_line = family, note
        sentences(pen, content)
        lines: list[list[str] | str] = [[cell(r, role, b) for role in roles] for r in content.rows]
        draw_grid(pen, Grid([replace(c) for c in cols], lines, style))
    return close(pen, content)


@sealed_layout("s-a10", Need(rows=(7, 12), missing_units=0.0))
def delivered(content: Content, look: Look) -> bytes:
    """A delivery note: recipient, goods, and below them the analysis."""
    rng = content.rng
    maker = maker_of(content)
    pen = press(content, small(look, 9.5), "columns")
    letterhead(pen, content, rng.choice(("address", "logo")))
    size = pen.look.size
    for line in (maker.customer, *TOWNS[content.words.language]):
        pen.text(pen.left, pen.y, line)
        pen.y += size * 1.3
    content.analyses[0].header.setdefault(
        "customer", TruthHeader(maker.customer, maker.customer, "either", required=False)
    )
    pen.y += size * 2
    title(pen, content, text=f"{phrase(content, 'note_no')} 80{rng.randint(1000, 9899)}", scale=1.3)
    entries = entries_of(content)
    malt = next(e for e in entries if e.key == "malt")
    header(
        pen, content, rng.choice(("spread", "heads-over")), [e for e in entries if e.key not in ("malt", "quantity")]
    )
    weight = next((e.text for e in entries if e.key == "quantity"), "")
    if not weight:
        weight = maker.quantity()
    content.analyses[0].header["quantity"] = TruthHeader(weight, weight, "either", required=False)
    content.analyses[0].header["malt"] = TruthHeader(malt.text, malt.text, "either", required=False)
    heads = phrases(content, "items")
    goods = [Col(heads[0]), Col(heads[1]), Col(heads[2]), Col(heads[3], "right")]
    draw_grid(
        pen, Grid(goods, [["10", f"1{rng.randint(1000, 9899)}0", malt.text, weight]], Style("head", pad=4, lead=1.6))
    )
    pen.y += size * 2
    pen.text(pen.left, pen.y, phrase(content, "analysis_of"), bold=True)
    pen.y += size * 1.8
    sentences(pen, content)
    table(pen, content, rng.choice((("label", "value", "unit"), ("label", "both"), ("label", "unit", "value"))),
          Style(rng.choice(("rows", "none", "head")), None, pad=4, lead=1.5, slack="no"))  # fmt: skip
    return close(pen, content, "none")


@sealed_layout(
    "s-a11", Need(rows=(9, 16), limits=True, missing_units=0.0, families=("EBC",), seconds=False),
    languages=("de", "fr", "cs", "pl", "es", "nl", "da"),
)  # fmt: skip
def two_tongues(content: Content, look: Look) -> bytes:
    """Every name in the house's language and in English, in one cell or under one another."""
    rng = content.rng
    pen = press(content, small(look, 9))
    letterhead(pen, content, rng.choice(("logo", "centred")))
    title(pen, content, text=f"{content.title} / Certificate of Analysis")
    header(pen, content, rng.choice(("pairs", "halves")))
    sentences(pen, content)
    english = SealedWording("en", True, UNTRUE["EBC"])
    under = rng.random() < 0.5
    composer = composer_of(content)
    notes: dict[int, str] = {}
    for k, row in enumerate(content.rows):
        key = "ratio_kolbach" if row.concept == "ratio" else row.concept
        said, tag = basis_of_label(english.pick(rng, "labels", key)) if english.has("labels", key) else (row.label, "")
        truth = row.cells[0].truth
        basis = truth.basis if isinstance(truth, TruthFigure) else None
        marked = said.replace("{b}", "" if not basis else " (dry)" if basis == "dry" else " (as is)")
        told = basis and (tag in ("dry", "asis") or "{b}" in said)  # the English name says the basis
        if told and isinstance(truth, TruthFigure) and truth.why in ("no moisture basis", "basis in a sentence"):
            truth.certainty, truth.why = "sure", ""
        if under:
            notes[k] = marked
        else:
            row.label = f"{row.label} / {marked}"
            if isinstance(truth, (TruthFigure, TruthRow)):
                truth.label = row.label
    assert composer.family == "EBC"
    roles: Roles = rng.choice((("label", "unit", "spec", "value"), ("label", "value", "unit", "spec")))
    lines: list[list[str] | str] = [[cell(r, role) for role in roles] for r in content.rows]
    style = Style(rng.choice(("all", "rows")), _GREY, pad=4, lead=1.5, slack="label")
    draw_grid(pen, Grid(columns(content, roles, "center"), lines, style, notes=notes))
    return close(pen, content, "person")


@sealed_layout("s-a12", Need(rows=(27, 36), limits=True, methods=True, contaminants=1.0, missing_units=0.0))
def pages(content: Content, look: Look) -> bytes:
    """A long list on two pages; the heads come again, the signature stands at the end."""
    rng = content.rng
    pen = press(content, small(look, 10.5), "page", pages=0)
    letterhead(pen, content, rng.choice(("lab", "logo")))
    title(pen, content)
    header(pen, content, rng.choice(("single", "stack")))
    sentences(pen, content)
    roles: Roles = rng.choice((("label", "method", "unit", "value", "spec"), ("label", "value", "unit", "min", "max")))
    table(pen, content, roles, Style(rng.choice(("all", "rows")), _GREY, pad=4, lead=1.9), "right", rng.random() < 0.7)
    return close(pen, content, "person")


@sealed_layout("s-a13", Need(rows=(8, 15), limits=True, limit_share=1.0, missing_units=0.0))
def usual(content: Content, look: Look) -> bytes:
    """The house's usual figures beside the batch's."""
    rng = content.rng
    pen = press(content, small(look, 9.5))
    letterhead(pen, content, rng.choice(("banner", "centred")))
    title(pen, content)
    header(pen, content, rng.choice(("halves", "over")))
    sentences(pen, content)
    first = rng.random() < 0.5
    cols = columns(content, ("label", "unit", "value"), "center", True)
    cols.insert(2 if first else 3, Col(content.head("typical"), "center"))
    lines: list[list[str] | str] = []
    for row in content.rows:
        line = [row.label, row.unit, row.cells[0].text]
        line.insert(2 if first else 3, row.typical)
        lines.append(line)
    for figure in content.analyses[0].figures:  # one usual figure is no limit
        figure.low = figure.high = ""
        if figure.why == "outside the limits":
            figure.certainty, figure.why = "sure", ""
    draw_grid(pen, Grid(cols, lines, Style(rng.choice(("rows", "all", "outer")), _GREY, pad=4, lead=1.6)))
    return close(pen, content)
