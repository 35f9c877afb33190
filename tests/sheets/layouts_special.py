"""Layouts that ask for judgement: specifications, barley beside malt, rotated pages, labels without a noun."""

from __future__ import annotations

from tests.sheets import blocks
from tests.sheets.cells import table_of
from tests.sheets.content import Content, Need
from tests.sheets.draw import Column, Look, Pen, Table, with_rules
from tests.sheets.numbers import number
from tests.sheets.registry import layout
from tests.sheets.rows import Row, basis_of_label
from tests.sheets.truth import TruthFigure, TruthHeader, TruthRow
from tests.sheets.wording import Wording


@layout("rotated-page", Need(limits=True))
def rotated_page(content: Content, look: Look) -> bytes:
    """A rotation entry on the page, with or without the text turned against it."""
    rng = content.rng
    rotate = rng.choice((90, 180, 270))
    turn = rotate if rng.random() < 0.6 else 0
    pen = Pen(look, landscape=rotate != 180 and rng.random() < 0.3, turn=turn, rotate=rotate)
    blocks.footers(pen, content)
    blocks.top(pen, content)
    roles = rng.choice((["label", "unit", "result"], ["label", "result", "unit"], ["label", "unit", "spec", "result"]))
    table_of(content, list(roles), pen).draw(pen)
    blocks.closing(pen, content)
    return pen.finish()


def limits_only(content: Content) -> None:
    """Turns the answer into that of a specification without typical values: limits and no result."""
    for analysis in content.analyses:
        for figure in analysis.figures:
            if figure.text is None:
                figure.value, figure.number, figure.bound, figure.range = "", None, None, None
                figure.certainty = "either" if figure.certainty == "sure" else figure.certainty
    for row in content.rows:
        truth = row.cells[0].truth
        if isinstance(truth, TruthRow):
            truth.value = row.limit.low or row.limit.high


@layout("specification", Need(kind="specification", limits=True, limit_share=1.0, rows=(10, 20), missing_units=0.0))
def specification(content: Content, look: Look) -> bytes:
    """Limits or typical values of a product, no batch."""
    rng = content.rng
    pen = Pen(look)
    blocks.footers(pen, content)
    blocks.letterhead(pen, content)
    blocks.title(pen, content)
    rng.choice((blocks.header_lines, blocks.header_over, blocks.header_pairs))(pen, content, list(content.shared))
    blocks.method_lines(pen, content)
    form = rng.choice(("limits", "spec", "typical"))
    if form == "typical":
        table = table_of(content, ["label", "unit", "result"], pen)
        table.columns[2].title = content.head("typical")
        if rng.random() < 0.5:
            for line, row in zip(table.rows, content.rows, strict=True):
                line.extend((row.limit.low, row.limit.high))
            table.columns += [
                Column(content.head("min"), look.value_align),
                Column(content.head("max"), look.value_align),
            ]
    else:
        limits_only(content)
        roles = ["label", "unit", "min", "max"] if form == "limits" else ["label", "spec", "unit"]
        table = table_of(content, roles, pen)
        for line, row in zip(table.rows, content.rows, strict=True):
            truth = row.cells[0].truth
            if isinstance(truth, TruthFigure) and truth.text is not None:
                line[2 if form == "limits" else 1] = truth.value
    table.draw(pen)
    blocks.closing(pen, content, full=True)
    return pen.finish()


@layout("barley-and-malt", Need(rows=(9, 16)))
def barley_and_malt(content: Content, look: Look) -> bytes:
    """A barley section above the malt section, with rows of the same names."""
    rng, words = content.rng, content.words
    pen = Pen(look)
    blocks.footers(pen, content)
    blocks.top(pen, content)
    table = table_of(content, ["label", "result", "unit"], pen)
    barley = [[words.pick(rng, "sections", "barley")]]
    facts = (("barley_moisture", 11.0, 14.0), ("barley_protein", 9.5, 11.5), ("germinative_energy", 94.0, 99.0),
             ("varietal_purity", 95.0, 99.5))  # fmt: skip
    for name, low, high in facts:
        label = words.pick(rng, "labels", name).replace("{b}", "")
        text = number(rng.uniform(low, high), 1, content.comma)
        barley.append([label, text, "%"])
        content.analyses[0].unrecognised.append(TruthRow(label, text, "%"))
    malt = [[words.pick(rng, "sections", "malt")]]
    table.rows = [*barley, *malt, *table.rows] if rng.random() < 0.8 else [*malt, *table.rows, *barley]
    table.draw(pen)
    blocks.closing(pen, content)
    return pen.finish()


PARENTS = {
    "extract": (
        "extract_fine_dry",
        "extract_fine_as_is",
        "extract_coarse_dry",
        "hwe_dry",
        "hwe_as_is",
        "fine_coarse_difference",
    ),
    "protein": ("total_protein", "soluble_protein"),
    "nitrogen": ("total_nitrogen", "soluble_nitrogen"),
    "colour": ("colour", "boiled_colour"),
    "sieving": ("sieve_over_2_8", "sieve_2_5_to_2_8", "sieve_2_2_to_2_5", "sieve_under_2_2"),
}


@layout(
    "nounless-children",
    Need(rows=(12, 20), missing_units=0.0, seconds=False),
    languages=("en", "de", "fr", "nl", "es", "cs", "da", "it"),
)
def nounless_children(content: Content, look: Look) -> bytes:
    """The noun stands in a heading (Nitrogen), the rows below say only ``total`` and ``soluble``."""
    rng, words = content.rng, content.words
    pen = Pen(look)
    blocks.footers(pen, content)
    blocks.top(pen, content)
    by_name = {r.concept: r for r in content.rows}
    indent = rng.choice(("", "- ", "   ", "a"))
    lines: list[list[str]] = []
    done: set[str] = set()
    in_label = rng.random() < 0.5

    def line(row: Row, label: str) -> list[str]:
        return [f"{label} ({row.unit})" if in_label and row.unit else label, row.cells[0].text] + (
            [] if in_label else [row.unit]
        )

    for row in content.rows:
        if row.concept in done:
            continue
        parent = next((p for p, kids in PARENTS.items() if row.concept in kids), None)
        kids = [
            k
            for k in PARENTS.get(parent or "", ())
            if k in by_name and (parent == "sieving" or words.has("children", _child(k)))
        ]
        if parent is None or len(kids) < 2 or row.concept not in kids:
            done.add(row.concept)
            lines.append(line(row, row.label))
            continue
        lines.append([words.pick(rng, "children", parent)])
        for n, kid in enumerate(kids):
            done.add(kid)
            found = by_name[kid]
            label = found.label if parent == "sieving" else _child_label(content, kid, found)
            sign = f"{'abcdefg'[n]}) " if indent == "a" else indent
            truth = found.cells[0].truth
            if truth is not None:
                truth.label = label
            lines.append(line(found, sign + label))
    columns = [Column(content.head("label")), Column(content.head("result"), look.value_align)]
    if not in_label:
        columns.append(Column(content.head("unit")))
    Table(columns, lines).draw(pen)
    blocks.closing(pen, content)
    return pen.finish()


def _child(concept: str) -> str:
    return "wort_colour" if concept == "colour" else concept


def _child_label(content: Content, concept: str, row: Row) -> str:
    text, _ = basis_of_label(content.words.pick(content.rng, "children", _child(concept)))
    truth = row.cells[0].truth
    basis = truth.basis if isinstance(truth, TruthFigure) else None
    marker = content.composer.marker["asis" if basis == "as-is" else "dry"]
    says_unit = any(m.split()[-1] in row.unit for m in content.composer.unit_marker.values()) and " " in row.unit
    if not basis or says_unit or (content.composer.basis_mode in ("note", "none") and basis == "dry"):
        return text.replace("{b}", "")
    return text.replace("{b}", marker if marker.startswith(",") else f" {marker}")


@layout("bilingual", Need(rows=(8, 18)), languages=("de", "fr", "nl", "es", "cs", "da", "it", "sk", "pl", "pt"))
def bilingual(content: Content, look: Look) -> bytes:
    """Every label, caption and head in the sheet's language and in English."""
    rng = content.rng
    english = Wording("en", content.kept)
    sign = rng.choice((" / ", " / ", "/ ", " - "))
    look = with_rules(look, size=min(look.size, 9.0))
    pen = Pen(look)
    blocks.footers(pen, content)
    entries = []
    for entry in (*content.shared, *content.own[0]):
        second = f" / {english.pick(rng, 'captions', entry.key)}" if entry.key else ""
        caption = entry.caption + second
        entries.append(type(entry)(entry.key, caption, entry.text, entry.truth))
    blocks.top(pen, content, form=rng.choice((blocks.header_lines, blocks.header_pairs)), entries=entries)
    for row in content.rows:
        key = {"ratio": "ratio_st" if content.family == "ASBC" else "ratio_kolbach"}.get(row.concept, row.concept)
        choices = [w for w in english.all("labels", key) if "~" not in w and "{b}" not in w[:3]]
        if choices:
            row.label = f"{row.label}{sign}{rng.choice(choices).replace('{b}', '')}"
            if row.cells[0].truth is not None:
                row.cells[0].truth.label = row.label
    roles = rng.choice((["label", "unit", "result"], ["label", "result", "unit"]))
    table = table_of(content, list(roles), pen)
    for column, role in zip(table.columns, roles, strict=True):
        column.title = f"{column.title} / {english.pick(rng, 'heads', role)}"
    table.draw(pen)
    blocks.closing(pen, content)
    return pen.finish()


@layout("dense-contaminants", Need(rows=(32, 44), contaminants=1.0, limits=True, methods=True))
def dense_contaminants(content: Content, look: Look) -> bytes:
    """Forty small rows with residues, ``<0.5`` and ``n.d.``."""
    rng = content.rng
    look = with_rules(look, size=7.0, pad=1.2, margin=min(look.margin, 48.0))
    pen = Pen(look)
    blocks.footers(pen, content)
    blocks.top(pen, content)
    roles = rng.choice((["label", "method", "unit", "spec", "result"], ["label", "result", "unit", "max", "method"]))
    table_of(content, list(roles), pen, sections=rng.random() < 0.7).draw(pen)
    blocks.closing(pen, content)
    return pen.finish()


@layout("title-holds-batch", Need(missing_units=0.0))
def title_holds_batch(content: Content, look: Look) -> bytes:
    """The batch number and the malt are part of the title lines, not of a block."""
    pen = Pen(look)
    blocks.footers(pen, content)
    blocks.letterhead(pen, content)
    blocks.title(pen, content)
    own = {e.key or "other": e for e in (*content.shared, *content.own[0])}
    first = f"{own['malt'].text}, {own['batch'].caption} {own['batch'].text}"
    pen.text(pen.left, pen.y, first, bold=True, size=look.size * 1.15)
    pen.y += look.size * 1.8
    rest = [e for e in own.values() if e.key not in ("malt", "batch")]
    if rest:
        blocks.header_inline(pen, content, rest)
    header = content.analyses[0].header
    header["malt"] = TruthHeader(own["malt"].text, own["malt"].text, "either", required=False)
    header["batch"].certainty = "either"
    blocks.method_lines(pen, content)
    table_of(content, ["label", "result", "unit"], pen).draw(pen)
    blocks.closing(pen, content)
    return pen.finish()
