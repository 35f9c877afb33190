"""Layout kinds of the unseen set, second part: letters, laboratory reports, papers that go with goods."""

from __future__ import annotations

from dataclasses import replace

from tests.sheets.content import Content, Need
from tests.sheets.decorate import DETECTION_LIMITS
from tests.sheets.draw import Look
from tests.sheets.exam_parts import places, plain_number
from tests.sheets.headers import Entry
from tests.sheets.numbers import number
from tests.sheets.truth import TruthHeader
from tests.sheets.unseen_grid import Col, Grid, Press, draw_style
from tests.sheets.unseen_make import FULL, unseen_layout
from tests.sheets.unseen_names import STREETS
from tests.sheets.unseen_parts import (
    cell,
    close,
    columns,
    date_line,
    header,
    letterhead,
    maker_of,
    paragraph,
    phrase,
    phrases,
    plain_table,
    press,
    rows_of,
    sentences,
    sized_grid,
    small,
    title,
    top,
)


def _addressee(pen: Press, content: Content) -> None:
    """The customer in the window of an envelope; without a caption it may be taken for the customer or not."""
    maker = maker_of(content)
    street = STREETS[content.words.language]
    pen.text(pen.left, pen.y, f"{maker.supplier}, {street[0]}, {street[1]}", size=6, grey=0.3)
    pen.y += 10
    for line in (maker.customer, "P.O. Box 71" if content.words.language == "en" else "", street[1]):
        if line:
            pen.text(pen.left, pen.y, line)
            pen.y += pen.look.size * 1.3
    pen.y += pen.look.size * 2
    for analysis in content.analyses:
        captioned = "customer" in analysis.header
        analysis.header["customer"] = TruthHeader(maker.customer, maker.customer, "either", captioned)


@unseen_layout("u-letter", Need(rows=(6, 13)), FULL)
def letter(content: Content, look: Look) -> bytes:
    """A business letter: address, reference line, subject, salutation, a small table, greetings."""
    rng = content.rng
    pen = press(content, replace(look, size=max(look.size, 9.5), margin=64.0))
    letterhead(pen, content)
    _addressee(pen, content)
    date_line(pen, content)
    entries = [*content.shared, *content.own[0]]
    first = next(e for e in entries if e.key == "batch")
    subject = f"{phrase(content, 'subject')} - {first.caption} {first.text}"
    pen.text(pen.left, pen.y, subject, bold=True)
    pen.y += pen.look.size * 2
    pen.text(pen.left, pen.y, phrase(content, "dear"))
    pen.y += pen.look.size * 2
    paragraph(pen, pen.left, pen.right - pen.left, phrase(content, "letter"))
    pen.y += pen.look.size
    header(pen, content, [e for e in entries if e is not first] or None)
    style = replace(draw_style(rng, "none", "none", "head", "all"), slack="no", lead=1.4)
    roles = rng.choice((["label", "value", "unit"], ["label", "both"]))
    grid = Grid(columns(content, list(roles)), rows_of(content, list(roles)), style, head=rng.random() < 0.4)
    indent = rng.choice((0.0, 24.0))
    sized_grid(pen, grid, pen.left + indent, pen.right - pen.left - indent)
    pen.y += pen.look.size * 1.5
    sentences(pen, content)
    pen.text(pen.left, pen.y, phrase(content, "regards"))
    pen.y += pen.look.size * 2
    return pen.finish()


def _sample_block(pen: Press, content: Content) -> None:
    """Sample number, arrival, state, seal: facts about the sample that are no header keys."""
    maker, rng = maker_of(content), content.rng
    words = phrases(content, "sample")
    texts = (f"{rng.randint(10, 99)}-{rng.randint(10000, 99999)}", maker.dates.write(maker.issued()).text, "OK",
             words[6], f"{rng.randint(100000, 999999)} ({words[5]})")  # fmt: skip
    rows: list[list[str] | str] = [[a, b] for a, b in zip(words, texts, strict=False)]
    style = replace(draw_style(rng, "none", "rows"), slack="no", lead=1.4, stripe=None)
    sized_grid(pen, Grid([Col(""), Col("")], rows, style, head=False))
    pen.y += pen.look.size


@unseen_layout("u-laboratory", Need(rows=(8, 16), methods=True), FULL)
def laboratory(content: Content, look: Look) -> bytes:
    """An independent laboratory: facts about the sample, then analyte, method, unit, result, uncertainty."""
    rng = content.rng
    pen = press(content, small(look, 9.0))
    top(pen, content)
    if rng.random() < 0.7:
        _sample_block(pen, content)
    roles = rng.choice((["label", "method", "unit", "value"], ["label", "value", "unit", "method"]))
    cols, rows = columns(content, list(roles)), rows_of(content, list(roles))
    at = roles.index("value") + 1
    cols.insert(at, Col(phrase(content, "uncert"), "right"))
    for line, row in zip(rows, content.rows, strict=True):
        value = plain_number(row)
        assert isinstance(line, list)
        text = ""
        if value:
            spread = number(value * rng.choice((0.02, 0.03, 0.05)), places(row.cells[0].text), content.comma)
            text = spread if float(spread.replace(",", ".")) else ""
        line.insert(at, text)
    sized_grid(pen, Grid(cols, rows, draw_style(rng)))
    return close(pen, content)


@unseen_layout("u-plus-minus", Need(rows=(8, 14), methods=True, words=False), FULL)
def plus_minus(content: Content, look: Look) -> bytes:
    """``4.5 ± 0.2``: result and uncertainty in one cell."""
    rng = content.rng
    pen = press(content, small(look, 9.5))
    top(pen, content)
    roles = rng.choice((["label", "method", "value", "unit"], ["label", "unit", "value"]))
    cols, rows = columns(content, list(roles), align="center"), rows_of(content, list(roles))
    at = roles.index("value")
    for line, row in zip(rows, content.rows, strict=True):
        value = plain_number(row)
        assert isinstance(line, list)
        if value and rng.random() < 0.85:
            spread = number(value * rng.choice((0.02, 0.04)), places(row.cells[0].text), content.comma)
            if float(spread.replace(",", ".")):
                line[at] = f"{line[at]} ± {spread}"
    sized_grid(pen, Grid(cols, rows, draw_style(rng)))
    return close(pen, content)


@unseen_layout("u-conformity", Need(rows=(8, 16), limits=True), FULL)
def conformity(content: Content, look: Look) -> bytes:
    """A merchant's sheet: who made the malt stands in the header, the merchant in the letterhead."""
    rng = content.rng
    pen = press(content, small(look, 9.5))
    pen.before_show = None
    maker = maker_of(content)
    trader = {"en": "Penhallow Grain & Malt Merchants", "de": "Rohstoffhandel Vossbrink GmbH", "fr": "Négoce Lartigaud",
              "nl": "Graanhandel Ter Weyde", "es": "Comercial Cerealista Bornos"}[content.words.language]  # fmt: skip
    pen.text(pen.left, pen.y, trader, size=pen.look.size * 1.5, bold=True)
    pen.y += pen.look.size * 2.6
    shared = [e for e in content.shared if e.key != "supplier"]
    made = maker._entry("supplier", maker.supplier)
    for analysis in content.analyses:
        analysis.header["supplier"] = made.truth
    title(pen, content)
    header(pen, content, [made, *shared, *content.own[0]])
    cols = columns(content, ["label", "specunit", "both"])
    rows = rows_of(content, ["label", "specunit", "both"])
    if rng.random() < 0.6:
        cols.append(Col(content.head("remark"), "center"))
        yes = phrase(content, "ok")
        for line in rows:
            assert isinstance(line, list)
            line.append(yes if line[1] else "")
    sized_grid(pen, Grid(cols, rows, draw_style(rng)))
    return close(pen, content)


@unseen_layout("u-delivery-note", Need(rows=(6, 13)), FULL)
def delivery_note(content: Content, look: Look) -> bytes:
    """A delivery note with articles and quantities, the analysis of the goods below."""
    rng = content.rng
    pen = press(content, small(look, 9.0))
    words = phrases(content, "goods")
    letterhead(pen, content)
    _addressee(pen, content)
    pen.text(pen.left, pen.y, f"{words[0]} {rng.randint(100000, 989999)}", bold=True, size=pen.look.size * 1.5)
    pen.y += pen.look.size * 2.6
    date_line(pen, content)
    entries = [*content.shared, *content.own[0]]
    malt = next(e for e in entries if e.key == "malt")
    batch = next(e for e in entries if e.key == "batch")
    weight = next((e for e in entries if e.key == "quantity"), None)
    amount = weight.text if weight else maker_of(content).quantity()
    style = draw_style(rng, "all", "rows", "head")
    line: list[list[str] | str] = [["10", malt.text, amount, words[6] if rng.random() < 0.6 else words[7], batch.text]]
    heads = [words[1], words[2], words[3], words[4], words[5]]
    sized_grid(pen, Grid([Col(h, "left", wrap=k == 1) for k, h in enumerate(heads)], line, style))
    header_ = content.analyses[0].header
    header_["malt"].required = header_["batch"].required = False
    header_["quantity"] = TruthHeader(amount, amount, "either", required=False)
    pen.y += pen.look.size
    rest = [e for e in entries if e not in (malt, batch, weight)]
    if rest:
        header(pen, content, rest)
    pen.y += pen.look.size
    pen.text(pen.left, pen.y, phrase(content, "analysis"), bold=True)
    pen.y += pen.look.size * 1.8
    sentences(pen, content)
    plain_table(pen, content, rng.choice((["label", "value", "unit"], ["label", "unit", "value"])), style)
    return close(pen, content)


@unseen_layout("u-cover-letter", Need(rows=(9, 18), limits=True), FULL)
def cover_letter(content: Content, look: Look) -> bytes:
    """A first page with a letter and no figures, the certificate on the next one."""
    rng = content.rng
    pen = press(content, small(look, 10.0))
    letterhead(pen, content)
    _addressee(pen, content)
    date_line(pen, content)
    pen.text(pen.left, pen.y, phrase(content, "subject"), bold=True)
    pen.y += 24
    for key in ("dear", "letter", "cover", "regards"):
        paragraph(pen, pen.left, pen.right - pen.left, phrase(content, key).format(n=1))
        pen.y += 12
    pen.new_page()
    title(pen, content)
    header(pen, content)
    roles = rng.choice((["label", "unit", "value", "spec"], ["label", "value", "unit", "min", "max"]))
    plain_table(pen, content, list(roles), draw_style(rng))
    return close(pen, content)


@unseen_layout("u-declarations", Need(rows=(7, 13), limits=True), ("en", "de", "fr", "nl", "es"))
def declarations(content: Content, look: Look) -> bytes:
    """Below the figures stand declarations full of numbers of regulations."""
    rng = content.rng
    pen = press(content, small(look, 9.0))
    top(pen, content)
    roles = rng.choice((["label", "unit", "spec", "value"], ["label", "value", "unit"]))
    plain_table(pen, content, list(roles), draw_style(rng))
    pen.y += pen.look.size * 1.5
    head, *texts = phrases(content, "decl")
    pen.text(pen.left, pen.y, head, bold=True)
    pen.y += pen.look.size * 1.6
    for k, text in enumerate(texts, 1):
        paragraph(pen, pen.left, pen.right - pen.left, f"{k}. {text}", pen.look.size * 0.9)
        content.not_figures.append(text)
        pen.y += 3
    return close(pen, content)


@unseen_layout("u-residue-annex", Need(rows=(12, 20), contaminants=1.0), FULL)
def residue_annex(content: Content, look: Look) -> bytes:
    """The certificate, and an annex of residues with limits of quantification beside the results."""
    rng = content.rng
    pen = press(content, small(look, 9.5))
    top(pen, content)
    residues = [r for r in content.rows if r.concept in DETECTION_LIMITS]
    rest = [r for r in content.rows if r not in residues]
    plain_table(
        pen, content, rng.choice((["label", "value", "unit"], ["label", "unit", "value"])), draw_style(rng), rest
    )
    if not residues:
        return close(pen, content)
    if rng.random() < 0.6:
        pen.new_page()
    else:
        pen.y += pen.look.size * 2
    pen.text(pen.left, pen.y, phrase(content, "annex"), bold=True, size=pen.look.size * 1.2)
    pen.y += pen.look.size * 2.2
    cols = columns(content, ["label", "unit", "value"])
    cols.insert(2, Col(phrase(content, "loq"), cols[2].align))
    rows: list[list[str] | str] = []
    for row in residues:
        least = DETECTION_LIMITS[row.concept]
        if row.concept == "deoxynivalenol" and row.unit in ("mg/kg", "ppm"):
            least = 0.2
        digits = 0 if least >= 5 else 2 if least < 0.1 else 1
        low = number(least, digits, content.comma)
        line = [cell(row, role) for role in ("label", "unit", "value")]
        line.insert(2, low)
        rows.append(line)
    sized_grid(pen, Grid(cols, rows, draw_style(rng)))
    return close(pen, content)


@unseen_layout("u-mail", Need(rows=(6, 13), missing_units=0.0), FULL)
def mail(content: Content, look: Look) -> bytes:
    """A printed e-mail: sender, subject, and the figures as lines of text."""
    rng = content.rng
    pen = press(
        content, replace(look, size=10.0, margin=57.0, font=rng.choice(("Helvetica", "LiberationMono", "Times-Roman")))
    )
    maker = maker_of(content)
    words = phrases(content, "mail")
    entries = [*content.shared, *content.own[0]]
    batch = next(e for e in entries if e.key == "batch")
    day = maker.dates.write(maker.issued()).text
    about = f"{phrase(content, 'subject')} {batch.text}"
    for caption, text in zip(words, (maker.supplier, maker.customer, about, f"{day} 10:42"), strict=True):
        pen.text(pen.left, pen.y, f"{caption}:", bold=True)
        pen.text(pen.left + 60, pen.y, text)
        pen.y += 14
    pen.line(pen.left, pen.y, pen.right, pen.y, 1.5)
    pen.y += 14
    for analysis in content.analyses:
        for key, text in (("supplier", maker.supplier), ("customer", maker.customer)):
            required = key in analysis.header and any(e.key == key for e in entries)
            analysis.header[key] = TruthHeader(text, text, "either", required=required)
    for text in (phrase(content, "dear"), phrase(content, "letter")):
        paragraph(pen, pen.left, pen.right - pen.left, text)
        pen.y += 8
    _lines(pen, content, entries)
    sentences(pen, content)
    sign = rng.choice((": ", ":  ", " = ", " - "))
    bullet = rng.choice(("", "", "- ", "• "))
    if bullet == "- ":
        sign = ": "
    for row in content.rows:
        paragraph(pen, pen.left, pen.right - pen.left, f"{bullet}{row.label.rstrip(':')}{sign}{cell(row, 'both')}")
        pen.y += 2
    pen.y += 12
    pen.text(pen.left, pen.y, phrase(content, "regards"))
    return pen.finish()


def _lines(pen: Press, content: Content, entries: list[Entry]) -> None:
    for e in entries:
        pen.text(pen.left, pen.y, f"{e.caption}: {e.text}")
        pen.y += pen.look.size * 1.3
    pen.y += 8


@unseen_layout("u-fax", Need(rows=(7, 14)), FULL)
def fax(content: Content, look: Look) -> bytes:
    """A fax: the machine's line at the top edge, plain type, no rules."""
    rng = content.rng
    pen = press(content, replace(look, size=10.0, font=rng.choice(("Courier", "LiberationMono")), margin=60.0))
    pen.before_show = None
    words = phrases(content, "fax")
    maker = maker_of(content)
    day = maker.dates.write(maker.issued()).text
    line = f"{day} 14:0{rng.randint(0, 9)}  {words[0]} +99 {rng.randint(1000, 9999)} 55  {words[2]} 01/01"
    pen.text(12, 10, line, size=7)
    content.not_figures.append(line)
    pen.y += 16
    title(pen, content)
    _lines(pen, content, [*content.shared, *content.own[0]])
    sentences(pen, content)
    style = replace(draw_style(rng, "none"), slack="no", lead=1.4, stripe=None, fill=None, upper=False)
    roles = rng.choice((["label", "value", "unit"], ["label", "unit", "value"]))
    grid = Grid(columns(content, list(roles)), rows_of(content, list(roles)), style, head=rng.random() < 0.4)
    sized_grid(pen, grid)
    return close(pen, content)
