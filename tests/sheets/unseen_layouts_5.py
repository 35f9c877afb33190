"""Layout kinds of the unseen set, fifth part: sieve tables, families side by side, two languages, data sheets."""

from __future__ import annotations

from dataclasses import replace

from tests.sheets.content import Content, Need
from tests.sheets.draw import Look
from tests.sheets.families import stack_rows
from tests.sheets.layouts_special import limits_only
from tests.sheets.rows import Row
from tests.sheets.truth import TruthFigure
from tests.sheets.unseen_grid import Col, Grid, Press, draw_style
from tests.sheets.unseen_make import FULL, LANGUAGES, UnseenWording, unseen_layout
from tests.sheets.unseen_parts import (
    cell,
    close,
    columns,
    header,
    letterhead,
    phrase,
    phrases,
    press,
    rows_of,
    sized_grid,
    small,
    title,
    top,
)
from tests.sheets.wording import Wording

_FRACTIONS = {
    "sieve_over_2_8": "> 2.8", "sieve_2_5_to_2_8": "2.5 - 2.8", "sieve_over_2_5": "> 2.5",
    "sieve_2_2_to_2_5": "2.2 - 2.5",
    "sieve_under_2_2": "< 2.2", "sieve_7_64": '7/64"', "sieve_6_64": '6/64"', "sieve_5_64": '5/64"',
}  # fmt: skip


def _sieve_rows(content: Content, sieves: list[Row]) -> list[list[str] | str]:
    """Rows of the small table; the label of the answer becomes what is printed in it."""
    rows: list[list[str] | str] = []
    for row in sieves:
        text = _FRACTIONS.get(row.concept, row.label)
        if row.concept in _FRACTIONS and "64" not in text:
            text = f"{text} mm"
        text = text.replace(".", ",") if content.comma and row.concept in _FRACTIONS else text
        for c in row.cells:
            if c.truth is not None:
                c.truth.label, c.truth.unit_text = text, "%"
        rows.append([text, row.cells[0].text])
    return rows


@unseen_layout("u-sieve-table", Need(rows=(13, 22), missing_units=0.0), FULL)
def sieve_table(content: Content, look: Look) -> bytes:
    """The sieve fractions in a small table of their own, beside or below the other figures."""
    rng = content.rng
    pen = press(content, small(look, 8.5, 42.0))
    top(pen, content)
    sieves = [r for r in content.rows if r.concept.startswith("sieve")]
    rest = [r for r in content.rows if r not in sieves]
    style = draw_style(rng, "all", "rows", "head", "outer")
    beside = rng.random() < 0.5 and len(sieves) > 1
    roles = rng.choice((["label", "value", "unit"], ["label", "unit", "value"]))
    start = pen.y
    room = (pen.right - pen.left) * (0.66 if beside else 1.0)
    sized_grid(pen, Grid(columns(content, list(roles)), rows_of(content, list(roles), rest), style), pen.left, room)
    if sieves:
        low = pen.y
        x = pen.left + room + 16 if beside else pen.left
        pen.y = start if beside else pen.y + pen.look.size * 1.5
        pen.text(x, pen.y, phrase(content, "sieve"), bold=True)
        pen.y += pen.look.size * 1.7
        heads = phrases(content, "sievecols")
        cols = [Col(heads[0]), Col(heads[1], "right")]
        grid = Grid(cols, _sieve_rows(content, sieves), replace(style, slack="no"))
        sized_grid(pen, grid, x, pen.right - x)
        pen.y = max(pen.y, low)
    return close(pen, content)


@unseen_layout("u-three-families", Need(rows=(5, 9), families=("EBC",), seconds=False), ("en", "de", "fr", "nl"))
def three_families(content: Content, look: Look) -> bytes:
    """IoB, EBC and ASBC figures of one malt in columns."""
    rng = content.rng
    pen = press(content, small(look, 9.0))
    content.family_line = ""
    top(pen, content)
    marker = content.composer.marker["dry"]
    how = rng.choice(("label", "column", "column", "none"))
    analysis = content.analyses[0]
    analysis.families, analysis.mash, analysis.unrecognised = ("EBC", "IoB", "ASBC"), None, []
    spaced = marker if marker.startswith(",") else f" {marker}"
    found, analysis.figures = stack_rows(rng, content.words, content.profiles[0], content.comma, spaced, how)
    order = rng.choice(((0, 1, 2), (1, 0, 2), (1, 2, 0)))
    names = [("IoB", "EBC", "ASBC")[k] for k in order]
    rows: list[list[str] | str] = [
        [r.label, *([r.units[0]] if how == "column" else []), *(r.texts[k] or "-" for k in order)] for r in found
    ]
    cols = [Col(content.head("label"), wrap=True), *([Col(content.head("unit"), wrap=True)] if how == "column" else [])]
    cols += [Col(n, rng.choice(("center", "right"))) for n in names]
    sized_grid(pen, Grid(cols, rows, draw_style(rng)))
    return close(pen, content)


def _english(content: Content, row: Row) -> str:
    key = row.concept.removesuffix("_second")
    if key == "ratio":
        key = {"ASBC": "ratio_st", "IoB": "ratio_snr", "iso65": "ratio_snr"}.get(content.family, "ratio_kolbach")
    words = UnseenWording("en", True)
    found = [w for w in words.all("labels", key) if "~" not in w]
    found = [w for w in found if not any(a in w.casefold() for a in content.words.avoid)]
    return content.rng.choice(found).replace("{b}", "") if found else ""


_FOREIGN = tuple(x for x in LANGUAGES if x != "en")


@unseen_layout("u-english-below", Need(rows=(8, 16)), _FOREIGN)
def english_below(content: Content, look: Look) -> bytes:
    """The English name in small type below the local one."""
    rng = content.rng
    pen = press(content, small(look, 9.5))
    top(pen, content)
    roles = rng.choice((["label", "value", "unit"], ["label", "unit", "value"]))
    grid = Grid(columns(content, list(roles)), rows_of(content, list(roles)), draw_style(rng, "rows", "all", "head"))
    grid.notes = {k: text for k, r in enumerate(content.rows) if (text := _english(content, r))}
    sized_grid(pen, grid)
    return close(pen, content)


@unseen_layout("u-english-slash", Need(rows=(8, 16), limits=True), _FOREIGN)
def english_slash(content: Content, look: Look) -> bytes:
    """``Wassergehalt / Moisture``, heads in both languages too."""
    rng = content.rng
    pen = press(content, small(look, 9.0))
    top(pen, content)
    words = UnseenWording("en", True)
    roles = rng.choice((["label", "unit", "value"], ["label", "value", "unit", "min", "max"]))
    cols = columns(content, list(roles))
    for role, col in zip(roles, cols, strict=True):
        other = words.pick(rng, "heads", {"value": "result"}.get(role, role))
        col.head = col.head if other.casefold() == col.head.casefold() else f"{col.head} / {other}"
    rows = rows_of(content, list(roles))
    for line, row in zip(rows, content.rows, strict=True):
        assert isinstance(line, list)
        other = _english(content, row)
        if other and other.casefold() != line[0].casefold():
            line[0] = f"{line[0]} / {other}"
    sized_grid(pen, Grid(cols, rows, draw_style(rng)))
    return close(pen, content)


def _sheet_top(pen: Press, content: Content) -> None:
    letterhead(pen, content)
    title(pen, content)
    header(pen, content, list(content.shared))


@unseen_layout(
    "u-data-sheet",
    Need(kind="specification", limits=True, limit_share=0.9, rows=(9, 16), missing_units=0.0, seconds=False),
)
def data_sheet(content: Content, look: Look) -> bytes:
    """A product's typical figures with limits beside them; no batch."""
    rng = content.rng
    pen = press(content, small(look, 9.5))
    _sheet_top(pen, content)
    roles = rng.choice((["label", "unit", "value", "min", "max"], ["label", "value", "unit"]))
    cols = columns(content, list(roles))
    usual = Wording(content.words.language, False).all("heads", "typical")
    plain = [w for w in usual if not w.startswith(("Richt", "Norm"))]  # a guide value may be a limit
    cols[roles.index("value")].head = rng.choice(plain)
    sized_grid(pen, Grid(cols, rows_of(content, list(roles)), draw_style(rng)))
    return close(pen, content)


@unseen_layout(
    "u-limits-sheet",
    Need(kind="specification", limits=True, limit_share=1.0, rows=(9, 16), missing_units=0.0, seconds=False),
)
def limits_sheet(content: Content, look: Look) -> bytes:
    """A product's limits only; no batch."""
    rng = content.rng
    pen = press(content, small(look, 9.5))
    limits_only(content)
    _sheet_top(pen, content)
    roles = rng.choice((["label", "unit", "min", "max"], ["label", "spec", "unit"], ["label", "specunit"]))
    rows: list[list[str] | str] = []
    for row in content.rows:
        line = [cell(row, role) for role in roles]
        truth = row.cells[0].truth
        if isinstance(truth, TruthFigure) and truth.text is not None:
            line[2 if "min" in roles else 1] = truth.value
        rows.append(line)
    sized_grid(pen, Grid(columns(content, list(roles)), rows, draw_style(rng)))
    return close(pen, content)


@unseen_layout("u-long-list", Need(rows=(26, 36), contaminants=0.8, limits=True))
def long_list(content: Content, look: Look) -> bytes:
    """A full certificate over two pages, the head repeated or not."""
    rng = content.rng
    pen = press(content, replace(look, size=max(look.size, 9.5)))
    top(pen, content)
    roles = rng.choice((["label", "unit", "value"], ["label", "value", "unit", "spec"]))
    grid = Grid(columns(content, list(roles)), rows_of(content, list(roles)), replace(draw_style(rng), lead=2.0))
    grid.repeat = rng.random() < 0.6
    sized_grid(pen, grid)
    return close(pen, content)
