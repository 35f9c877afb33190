"""Layouts of one table with a row for each figure."""

from __future__ import annotations

from tests.sheets import blocks
from tests.sheets.cells import label_with_unit, number_rows, table_of
from tests.sheets.content import Content, Need
from tests.sheets.draw import Column, Look, Pen, Table, with_rules
from tests.sheets.numbers import number
from tests.sheets.registry import layout
from tests.sheets.truth import TruthFigure


def _page(content: Content, look: Look) -> Pen:
    pen = Pen(look)
    blocks.footers(pen, content)
    blocks.top(pen, content)
    return pen


def _close(pen: Pen, content: Content) -> bytes:
    blocks.closing(pen, content)
    return pen.finish()


@layout("ruled-grid", Need(limits=True, blanks=0.04))
def ruled_grid(content: Content, look: Look) -> bytes:
    """Every cell in a box."""
    pen = _page(content, with_rules(look, rules="grid"))
    roles = ["label", "unit", "result"] if content.rng.random() < 0.5 else ["label", "unit", "result", "spec"]
    table_of(content, roles, pen, sections=content.rng.random() < 0.4).draw(pen)
    return _close(pen, content)


@layout("horizontal-rules")
def horizontal_rules(content: Content, look: Look) -> bytes:
    """Lines between rows only."""
    pen = _page(content, with_rules(look, rules="rows"))
    table_of(content, ["label", "result", "unit"], pen, sections=content.rng.random() < 0.3).draw(pen)
    return _close(pen, content)


@layout("zebra", Need(limits=True))
def zebra(content: Content, look: Look) -> bytes:
    """Every other row shaded, no lines."""
    pen = _page(content, with_rules(look, rules="zebra", head_shade=True))
    roles = content.rng.choice((["label", "result", "unit"], ["label", "unit", "spec", "result"]))
    table_of(content, list(roles), pen).draw(pen)
    return _close(pen, content)


@layout("unruled")
def unruled(content: Content, look: Look) -> bytes:
    """Columns by position alone."""
    pen = _page(content, with_rules(look, rules="none", head_shade=False))
    table = table_of(content, ["label", "unit", "result"], pen, sections=content.rng.random() < 0.5)
    table.head = content.rng.random() < 0.6
    table.draw(pen)
    return _close(pen, content)


@layout("columns-shuffled", Need(limits=True, methods=True))
def columns_shuffled(content: Content, look: Look) -> bytes:
    """Parameter, method, unit, limits and result in any order."""
    rng = content.rng
    pen = _page(content, look)
    roles = ["method", "unit", "min", "max", "result"]
    rng.shuffle(roles)
    roles.insert(0 if rng.random() < 0.9 else 1, "label")
    if rng.random() < 0.3:
        roles.remove("method")
    table = table_of(content, roles, pen, sections=rng.random() < 0.2)
    if rng.random() < 0.15:
        number_rows(table, rng, content.head("number"))
    table.draw(pen)
    return _close(pen, content)


@layout("method-first", Need(methods=True))
def method_first(content: Content, look: Look) -> bytes:
    """The method reference stands left of the label."""
    pen = _page(content, look)
    table_of(content, ["method", "label", "result", "unit"], pen).draw(pen)
    return _close(pen, content)


@layout("result-before-unit", Need(methods=True, limits=True))
def result_before_unit(content: Content, look: Look) -> bytes:
    """The unit in a column of its own right of the result."""
    rng = content.rng
    pen = _page(content, with_rules(look, value_align="right"))
    roles = ["label", "result", "unit", *rng.choice(([], ["method"], ["spec"], ["min", "max"]))]
    table_of(content, roles, pen).draw(pen)
    return _close(pen, content)


@layout("unit-in-label", Need(limits=True))
def unit_in_label(content: Content, look: Look) -> bytes:
    """Labels such as ``Moisture (%)`` and no unit column."""
    rng = content.rng
    pen = _page(content, look)
    form = rng.choice(("round", "comma", "square", "space", "round"))
    for row in content.rows:
        row.label = label_with_unit(row, form)
    roles = ["label", "result"] if rng.random() < 0.6 else ["label", "min", "result", "max"]
    table_of(content, roles, pen, sections=rng.random() < 0.3).draw(pen)
    return _close(pen, content)


@layout("unit-behind-value", Need(limits=True))
def unit_behind_value(content: Content, look: Look) -> bytes:
    """``4.2 %`` in one cell."""
    rng = content.rng
    pen = _page(content, look)
    space = rng.choice((" ", " ", ""))
    for row in content.rows:
        for cell in row.cells:
            if row.unit and cell.truth is not None:
                gap = space if row.unit[0] in "%°" else " "
                cell.text = f"{cell.text}{gap}{row.unit}"
        row.unit = ""
    roles = ["label", "result"] if rng.random() < 0.6 else ["label", "result", "spec"]
    table = table_of(content, roles, pen)
    table.head = rng.random() < 0.6
    table.draw(pen)
    return _close(pen, content)


@layout("dotted-leaders")
def dotted_leaders(content: Content, look: Look) -> bytes:
    """``Moisture ........ 4.2 %``."""
    rng = content.rng
    pen = _page(content, look)
    x_value = pen.left + (pen.right - pen.left) * rng.choice((0.55, 0.65, 0.8))
    dot = rng.choice((".", " .", "…"))
    for row in content.rows:
        width = pen.text(pen.left, pen.y, row.label)
        if pen.left + width > x_value - 10:
            pen.y += look.size * 1.4
            width = 0
        step = pen.size_of(dot)
        count = int((x_value - 6 - pen.left - width - 2) / step)
        pen.text(pen.left + width + 2, pen.y, dot * max(count, 0))
        value = row.cells[0].text + (f" {row.unit}" if row.unit and row.cells[0].truth else "")
        pen.text(x_value, pen.y, value, bold=look.value_bold)
        pen.y += look.size * 1.5
    return _close(pen, content)


@layout("label-colon-lines")
def label_colon_lines(content: Content, look: Look) -> bytes:
    """``Label: value unit`` lines, the values aligned or not."""
    rng = content.rng
    pen = _page(content, look)
    aligned = rng.random() < 0.5
    colon = rng.choice((":", ":", " :"))
    column = max(pen.size_of(r.label + colon) for r in content.rows) + 12
    for row in content.rows:
        width = pen.text(pen.left, pen.y, row.label + colon, bold=look.label_bold)
        value = row.cells[0].text + (f" {row.unit}" if row.unit and row.cells[0].truth else "")
        pen.text(pen.left + (column if aligned else width + 4), pen.y, value, bold=look.value_bold)
        pen.y += look.size * 1.5
    return _close(pen, content)


@layout("spec-beside", Need(limits=True))
def spec_beside(content: Content, look: Look) -> bytes:
    """A specification or typical-value column beside the results."""
    rng = content.rng
    pen = _page(content, look)
    roles = rng.choice(
        (
            ["label", "unit", "spec", "result"],
            ["label", "result", "spec", "unit"],
            ["label", "typical", "result", "unit"],
            ["label", "unit", "result", "typical"],
            ["label", "unit", "typical", "min", "max", "result"],
        )
    )
    table_of(content, list(roles), pen).draw(pen)
    return _close(pen, content)


@layout("wrapped-labels", Need(methods=True))
def wrapped_labels(content: Content, look: Look) -> bytes:
    """Long labels broken over two or three lines in a narrow column."""
    rng = content.rng
    rules, valign = rng.choice(("grid", "none", "rows")), rng.choice(("top", "middle"))
    look = with_rules(look, rules=rules, valign=valign, full_width=False, pad=max(look.pad, 3.5))
    pen = _page(content, look)
    table = table_of(content, ["label", "method", "unit", "result"], pen)
    table.columns[0].width = rng.choice((75.0, 85.0, 95.0))
    table.draw(pen)
    return _close(pen, content)


@layout("letterhead", Need(limits=True))
def full_letterhead(content: Content, look: Look) -> bytes:
    """All the furniture of a company's paper: logo line, addresses, disclaimers, signature, register numbers."""
    pen = Pen(look)
    blocks.footers(pen, content)
    blocks.letterhead(pen, content, full=True)
    blocks.title(pen, content)
    blocks.header_pairs(pen, content, [*content.shared, *content.own[0]])
    blocks.method_lines(pen, content)
    table_of(content, ["label", "unit", "result", "spec"], pen).draw(pen)
    blocks.closing(pen, content, full=True)
    return pen.finish()


@layout("footnotes")
def footnotes(content: Content, look: Look) -> bytes:
    """Raised figures or asterisks on labels and values, with their texts below."""
    rng = content.rng
    pen = _page(content, look)
    table = table_of(content, ["label", "unit", "result"], pen)
    signs = rng.choice((("1", "2", "3"), ("*", "**", "***"), ("a", "b", "c"), ("1)", "2)", "3)")))
    texts = _NOTES.get(content.words.language, _NOTES["en"])
    used = []
    for k, (sign, text) in enumerate(zip(signs, texts, strict=True)):
        line = rng.randrange(len(table.rows))
        if (line, 0) not in table.marks:
            table.marks[(line, 0)] = sign
            used.append(f"{sign} {text}")
        if k == 0 and rng.random() < 0.4 and signs[0] == "*":
            table.marks[(rng.randrange(len(table.rows)), 2)] = sign
    table.draw(pen)
    pen.y += 5
    for text in used:
        pen.text(pen.left, pen.y, text, size=look.size * 0.8)
        pen.y += look.size * 1.1
    content.not_figures.extend(used)
    return _close(pen, content)


_NOTES = {
    "en": ("outside the scope of accreditation", "mean of 2 determinations", "subcontracted analysis, report 4471"),
    "de": ("nicht akkreditiertes Verfahren", "Mittelwert aus 2 Bestimmungen", "Fremdvergabe, Bericht 4471"),
    "fr": ("hors du domaine d'accréditation", "moyenne de 2 essais", "sous-traité, rapport 4471"),
    "nl": ("buiten de accreditatie", "gemiddelde van 2 bepalingen", "uitbesteed, rapport 4471"),
    "es": ("fuera del alcance de acreditación", "media de 2 ensayos", "subcontratado, informe 4471"),
    "cs": ("mimo rozsah akreditace", "průměr ze 2 stanovení", "subdodávka, protokol 4471"),
    "da": ("uden for akkrediteringen", "gennemsnit af 2 bestemmelser", "underleverandør, rapport 4471"),
    "it": ("fuori accreditamento", "media di 2 determinazioni", "subappaltato, rapporto 4471"),
}


@layout("uncertainty-column", Need(methods=True))
def uncertainty_column(content: Content, look: Look) -> bytes:
    """The laboratory's uncertainty of measurement in a column of its own."""
    rng = content.rng
    pen = _page(content, with_rules(look, size=min(look.size, 9.0)))
    table = table_of(content, rng.choice((["label", "unit", "result"], ["label", "method", "result", "unit"])), pen)
    at = next(i for i, c in enumerate(table.columns) if c.title in content.words.all("heads", "result")) + 1
    table.columns.insert(at, Column(rng.choice(("U (k=2)", "±", "u (95 %)", "+/-")), look.value_align))
    sign = rng.choice(("± ", "±", ""))
    for line, row in zip(table.rows, content.rows, strict=True):
        truth = row.cells[0].truth
        text = ""
        if isinstance(truth, TruthFigure) and truth.number and not truth.bound and rng.random() < 0.9:
            places = len(truth.value.replace(",", ".").partition(".")[2])
            text = sign + number(max(truth.number * 0.02, 10**-places), places, content.comma)
        line.insert(at, text)
    table.draw(pen)
    return _close(pen, content)


@layout("assessment-column", Need(limits=True))
def assessment_column(content: Content, look: Look) -> bytes:
    """A last column that says whether the result keeps the limits."""
    rng = content.rng
    pen = _page(content, look)
    roles = rng.choice((["label", "unit", "spec", "result"], ["label", "result", "unit", "min", "max"]))
    table = table_of(content, roles, pen)
    word = rng.choice(("OK", "ok", "+", "i.O." if content.words.language == "de" else "OK", "✓"))
    table.columns.append(Column(content.head("remark"), "center"))
    for line, row in zip(table.rows, content.rows, strict=True):
        line.append(word if row.limit.spec else "")
    table.draw(pen)
    return _close(pen, content)


@layout("sections", Need(rows=(14, 26), limits=True))
def sections(content: Content, look: Look) -> bytes:
    """Section rows between the figures."""
    pen = _page(content, look)
    roles = content.rng.choice((["label", "result", "unit"], ["label", "unit", "min", "max", "result"]))
    table_of(content, list(roles), pen, sections=True).draw(pen)
    return _close(pen, content)


@layout("bordered-pairs")
def bordered_pairs(content: Content, look: Look) -> bytes:
    """Two figures a row: label, value, unit twice over in one ruled table."""
    look = with_rules(look, rules=content.rng.choice(("grid", "rows")), size=min(look.size, 8.5))
    pen = _page(content, look)
    rows = content.rows
    half = (len(rows) + 1) // 2
    lines = []
    for i in range(half):
        line = [rows[i].label, rows[i].cells[0].text, rows[i].unit]
        if half + i < len(rows):
            other = rows[half + i]
            line += [other.label, other.cells[0].text, other.unit]
        else:
            line += ["", "", ""]
        lines.append(line)
    heads = [content.head("label"), content.head("result"), content.head("unit")] * 2
    most = 0.3 * (pen.right - pen.left)
    columns = [
        Column(t, "left" if k % 3 != 1 else "right", most=most if k % 3 == 0 else 0.0) for k, t in enumerate(heads)
    ]
    heads_twice = {c: columns[c].title for c in (3, 4, 5)}
    for c, text in heads_twice.items():
        columns[c].title = columns[c - 3].title or text
    Table(columns, lines).draw(pen)
    return _close(pen, content)
