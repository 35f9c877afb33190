"""Layout kinds of the sealed set, fifth part: papers that are no certificates, and certificates gone astray."""

from __future__ import annotations

from dataclasses import replace

from reportlab.lib.pagesizes import A4  # type: ignore[import-untyped]

from tests.sheets.content import Content, Need
from tests.sheets.draw import Look
from tests.sheets.exam_parts import doubt
from tests.sheets.numbers import number
from tests.sheets.sealed_make import sealed_layout
from tests.sheets.sealed_names import PEOPLE
from tests.sheets.sealed_parts import (
    close,
    entries_of,
    header,
    letterhead,
    maker_of,
    paragraph,
    phrase,
    phrases,
    press,
    sentences,
    small,
    title,
)
from tests.sheets.sealed_tables import Col, Grid, Style, body, cell, columns, draw_grid
from tests.sheets.truth import TruthFigure, TruthHeader, TruthRow

_GREY = (0.87, 0.87, 0.87)


@sealed_layout("s-n01", Need(rows=(5, 9), missing_units=0.0, words=False, seconds=False))
def told(content: Content, look: Look) -> bytes:
    """A letter that tells the figures in one sentence."""
    rng = content.rng
    pen = press(content, small(look, 10.5), "line")
    letterhead(pen, content, rng.choice(("address", "centred")))
    pen.y += 20
    header(pen, content, "stack")
    for text in (phrase(content, "letter_open"), phrase(content, "letter_text")):
        paragraph(pen, pen.left, pen.right - pen.left, text)
        pen.y += pen.look.size * 0.7
    between = rng.choice((" ", ": ", " = "))
    told_ = [f"{r.label}{between}{cell(r, 'both')}" for r in content.rows]
    paragraph(pen, pen.left, pen.right - pen.left, rng.choice(("; ", "; ", ";  ")).join(told_) + ".")
    for row in content.rows:
        doubt(row, "told in a sentence")
    pen.y += pen.look.size * 0.7
    sentences(pen, content)
    paragraph(pen, pen.left, pen.right - pen.left, phrase(content, "letter_close"))
    pen.y += pen.look.size * 2
    pen.text(pen.left, pen.y, rng.choice(PEOPLE))
    pen.y += pen.look.size
    return pen.finish()


@sealed_layout("s-n02", Need(rows=(8, 14), missing_units=0.0), languages=("en", "de", "fr", "cs", "es", "it"))
def grain_first(content: Content, look: Look) -> bytes:
    """Figures of the grain stand above those of the malt, under bands of their own."""
    rng, words = content.rng, content.words
    pen = press(content, small(look, 9.5))
    letterhead(pen, content, rng.choice(("logo", "lab")))
    title(pen, content)
    header(pen, content, rng.choice(("halves", "pairs")))
    sentences(pen, content)
    own = rng.random() < 0.5  # the grain's rows say so themselves, or only their band does
    if own:
        names = phrases(content, "barley_rows")
    else:
        names = [
            words.pick(rng, "labels", k).replace("{b}", "")
            for k in ("barley_moisture", "barley_protein", "germinative_energy")
        ]
    lines: list[list[str] | str] = [words.pick(rng, "sections", "barley")]
    for name, low, high in zip(names, (11.4, 9.6, 95.0), (13.8, 11.2, 99.0), strict=False):
        text = number(rng.uniform(low, high), 1, content.comma)
        lines.append([name, "%", text])
        content.analyses[0].unrecognised.append(TruthRow(name, text, "%"))
    lines.append(words.pick(rng, "sections", "malt"))
    lines += body(content, ("label", "unit", "value"), content.rows, False)
    draw_grid(
        pen, Grid(columns(content, ("label", "unit", "value"), "right"), lines, Style("rows", _GREY, pad=4, lead=1.5))
    )
    return close(pen, content)


@sealed_layout("s-n03", Need(batches=(4, 9), rows=(6, 9), missing_units=0.0, words=False, seconds=False))
def a_month(content: Content, look: Look) -> bytes:
    """What was delivered in a month, a line each; below the lines their average, smallest and largest."""
    rng = content.rng
    pen = press(content, small(look, 8.5, margin=34.0), "page", landscape=True)
    letterhead(pen, content, "small")
    title(pen, content)
    header(pen, content, rng.choice(("spread", "stack")), list(content.shared))
    sentences(pen, content)
    own = content.own
    cols = [Col(e.caption) for e in own[0]] + [Col(f"{r.label} {r.unit}".strip(), "right") for r in content.rows]
    lines: list[list[str] | str] = [
        [*(e.text for e in o), *(r.cells[b].text for r in content.rows)] for b, o in enumerate(own)
    ]
    every = [[_plain(r.cells[b].truth) for b in range(len(own))] for r in content.rows]
    places = [_places(r.cells[0].text) for r in content.rows]
    sums = (phrase(content, "weighted"), *phrases(content, "minmax"))[: rng.choice((1, 3))]
    for word, of in zip(sums, (_mean, min, max), strict=False):
        told_ = [number(of(v), p, content.comma) if None not in v else "" for v, p in zip(every, places, strict=True)]  # type: ignore[operator]
        lines.append([word, *[""] * (len(own[0]) - 1), *told_])
    draw_grid(pen, Grid(cols, lines, Style(rng.choice(("all", "rows", "head")), _GREY, pad=2.5, lead=1.6)))
    return close(pen, content, "none", extras=False)


def _mean(values: list[float]) -> float:
    return sum(values) / len(values)


def _plain(truth: object) -> float | None:
    if isinstance(truth, TruthFigure):
        return truth.number if truth.bound is None and truth.text is None else None
    try:
        return float(truth.value.replace(",", ".")) if isinstance(truth, TruthRow) else None
    except ValueError:
        return None


def _places(text: str) -> int:
    return len(text.replace(",", ".").partition(".")[2])


@sealed_layout("s-n04", Need(rows=(8, 14), limits=True, missing_units=0.0))
def corrected(content: Content, look: Look) -> bytes:
    """One or two results are struck out and written anew beside."""
    rng = content.rng
    pen = press(content, small(look, 10))
    letterhead(pen, content, rng.choice(("logo", "address", "centred")))
    title(pen, content)
    header(pen, content, rng.choice(("halves", "stack")))
    sentences(pen, content)
    plain = [
        k for k, r in enumerate(content.rows) if isinstance(r.cells[0].truth, TruthFigure) and _plain(r.cells[0].truth)
    ]
    chosen = rng.sample(plain, min(len(plain), rng.choice((1, 1, 2))))
    struck: dict[str, str] = {}
    lines = body(content, ("label", "unit", "spec", "value"), content.rows, False)
    for k in chosen:
        truth = content.rows[k].cells[0].truth
        assert isinstance(truth, TruthFigure)
        assert truth.number is not None
        factor = rng.choice((0.93, 0.95, 1.06, 1.08))
        old = number(
            min(truth.number * factor, 99.9) if truth.unit == "%" else truth.number * factor,
            _places(truth.value),
            content.comma,
        )
        if old == truth.value:
            continue
        truth.certainty, truth.why = "ambiguous", "struck out and written anew"
        struck[f"{old} {truth.value}"] = old
        line = lines[k]
        assert isinstance(line, list)
        line[3] = f"{old} {truth.value}"
    grid = Grid(
        columns(content, ("label", "unit", "spec", "value"), "left"), lines, Style("all", _GREY, pad=4, lead=1.7)
    )
    draw = pen.text

    def text(x: float, y: float, words: str, *rest: object, **more: object) -> float:
        width = draw(x, y, words, *rest, **more)  # type: ignore[arg-type]
        if words in struck:
            pen.line(x - 1, y + pen.look.size * 0.5, x + pen.size_of(struck[words]) + 1, y + pen.look.size * 0.5, 0.9)
        return width

    pen.text = text  # type: ignore[assignment, method-assign]
    draw_grid(pen, grid)
    return close(pen, content, "person")


@sealed_layout("s-n05", Need(rows=(7, 14), limits=True, limit_share=0.5, missing_units=0.0))
def mailed(content: Content, look: Look) -> bytes:
    """A printed message: lines of type of one width, set in columns with spaces."""
    rng = content.rng
    pen = press(
        content, replace(look, font=rng.choice(("Courier", "LiberationMono")), size=8.5, margin=56.0, page=A4), "none"
    )
    maker = maker_of(content)
    heads = phrases(content, "mail")
    sender = f"quality@{maker.supplier.split()[0].lower()[:6]}.example"
    day = maker.dates.write(maker.latest).text
    for caption, text in zip(
        heads, (sender, "intake@brewery.example", content.title, f"{day} 09:{rng.randint(10, 59)}"), strict=True
    ):
        pen.text(pen.left, pen.y, f"{caption}:", bold=True)
        pen.text(pen.left + 62, pen.y, text)
        pen.y += 12
    pen.line(pen.left, pen.y + 2, pen.right, pen.y + 2, 0.8)
    pen.y += 16
    lines = [phrase(content, "letter_open"), "", phrase(content, "letter_text"), ""]
    entries = entries_of(content)
    wide = max(len(e.caption) for e in entries) + 2
    lines += [f"{(e.caption + ':').ljust(wide)}{e.text}" for e in entries] + [""]
    lines += [t for t in (content.family_line, content.note_line) if t] + [""]
    content.family_line = content.note_line = ""
    first = max(len(r.label) for r in content.rows) + 3
    second = max(len(cell(r, "both")) for r in content.rows) + 3
    for row in content.rows:
        lines.append(f"{row.label.ljust(first)}{cell(row, 'both').ljust(second)}{row.limit.spec}".rstrip())
    lines += ["", phrase(content, "letter_close"), rng.choice(PEOPLE), maker.supplier]
    for analysis in content.analyses:
        analysis.header.setdefault("supplier", TruthHeader(maker.supplier, maker.supplier, "either", required=False))
    longest = max(pen.size_of(t) for t in lines)
    if longest > pen.right - pen.left:
        pen.look = replace(pen.look, size=pen.look.size * (pen.right - pen.left) / longest)
    for text in lines:
        if text:
            pen.text(pen.left, pen.y, text)
        pen.y += pen.look.size * 1.3
    return pen.finish()
