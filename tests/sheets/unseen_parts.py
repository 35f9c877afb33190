"""What stands around the figures of the unseen sheets: letterheads, header blocks, closings, footers."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

from tests.sheets.content import Content
from tests.sheets.draw import Look
from tests.sheets.exam_parts import TINTS, figure_of, paragraph, phrase, phrases, shrunk, tint, unit_beside, with_unit
from tests.sheets.headers import Entry
from tests.sheets.rows import Row
from tests.sheets.truth import TruthHeader
from tests.sheets.unseen_grid import Col, Grid, Press, Style, draw_style
from tests.sheets.unseen_make import UnseenComposer, _Maker
from tests.sheets.unseen_names import STREETS

_BARE_DATES = ("Date", "Datum", "Fecha", "Data", "Dato")
_HABITS = ("lines", "lines", "words", "letters", "doubled", "padded")


def press(content: Content, look: Look, landscape: bool = False, page: tuple[float, float] | None = None) -> Press:
    """A document in the way of one program."""
    rng = content.rng
    pen = Press(look, landscape, page, habit=rng.choice(_HABITS), by_column=rng.random() < 0.12)
    if rng.random() < 0.6:
        _feet(pen, content)
    return pen


def small(look: Look, size: float = 9.0, margin: float | None = None) -> Look:
    return replace(look, size=min(look.size, size), margin=look.margin if margin is None else margin)


def maker_of(content: Content) -> _Maker:
    assert isinstance(content.maker, _Maker)
    return content.maker


def composer_of(content: Content) -> UnseenComposer:
    assert isinstance(content.composer, UnseenComposer)
    return content.composer


def _feet(pen: Press, content: Content) -> None:
    """Register, bank and tax numbers in two to four small columns, or a page number, at the foot of every page."""
    rng = content.rng
    n = rng.randint(1000, 9899)
    supplier = content.maker.supplier
    street = STREETS[content.words.language]
    blocks = [
        [supplier, *street],
        [f"Tel. +99 {n % 900 + 100} {n}-0", f"Fax +99 {n % 900 + 100} {n}-88", "www.maltings.example"],
        [f"IBAN XX00 {n} 0000 {n} 00", "BIC XXXXXX00"], [f"HRB {n}", f"VAT XX{n}{n}0", f"GMP+ {n}"],
    ]  # fmt: skip
    shown = blocks[: rng.choice((1, 3, 4, 4))]
    numbered = rng.random() < 0.5
    form = f"FB-{n % 90 + 10}-{rng.randint(1, 9):02d} / {rng.choice(('Rev.', 'V', 'Ed.'))} {rng.randint(1, 9)}"
    text = phrase(content, "page")

    def write(at: object) -> None:
        assert isinstance(at, Press)
        step = (at.right - at.left) / len(shown)
        low = at.height - 46
        if len(shown) > 1:
            at.line(at.left, low - 3, at.right, low - 3, 0.3)
        for k, lines in enumerate(shown):
            for i, line in enumerate(lines):
                at.text(at.left + k * step, low + i * 7.4, line, size=shrunk(at, line, step - 4, 6.0), grey=0.35)
        if numbered:
            at.text(at.right, at.height - 22, text.format(p=at.page, q=at.page), size=6.5, align="right", grey=0.3)
        else:
            at.text(at.left, at.height - 22, form, size=6.0, grey=0.3)

    content.not_figures.extend(line for lines in shown for line in lines)
    pen.before_show = write  # type: ignore[assignment]


def letterhead(pen: Press, content: Content, with_street: bool = True) -> None:
    """A drawn mark and the sender's name. Gives the supplier without a caption."""
    rng, size = content.rng, pen.look.size
    supplier = content.maker.supplier
    x = pen.left
    form = rng.choice(("mark", "plain", "centre", "right", "band"))
    if form == "mark":
        tint(pen, x, pen.y, x + 26, pen.y + 26, rng.choice(TINTS))
        pen.text(x + 13, pen.y + 7, supplier[:1], size=13, bold=True, align="center")
        pen.text(x + 34, pen.y + 6, supplier, size=size * 1.5, bold=True)
        pen.y += 32
    elif form == "band":
        tint(pen, pen.left, pen.y, pen.right, pen.y + size * 2.6, rng.choice(TINTS))
        pen.text(pen.left + 6, pen.y + size * 0.5, supplier, size=size * 1.5, bold=True)
        pen.y += size * 3.2
    else:
        place = {"plain": pen.left, "centre": pen.width / 2, "right": pen.right}[form]
        align = {"plain": "left", "centre": "center", "right": "right"}[form]
        pen.text(place, pen.y, supplier, size=size * 1.6, bold=True, align=align)
        pen.y += size * 2.1
        if with_street:
            pen.text(place, pen.y, " · ".join(STREETS[content.words.language]), size=size * 0.75, align=align, grey=0.3)
            pen.y += size * 1.6
    for analysis in content.analyses:
        analysis.header.setdefault("supplier", TruthHeader(supplier, supplier, "either", required=False))
    pen.y += size * 0.6


def title(pen: Press, content: Content, text: str = "") -> None:
    rng, size = content.rng, pen.look.size
    words = text or content.title
    words = words.upper() if rng.random() < 0.2 else words
    centred = rng.random() < 0.4
    big = shrunk(pen, words, pen.right - pen.left, size * rng.choice((1.3, 1.5, 1.9)), True)
    x, align = (pen.width / 2, "center") if centred else (pen.left, "left")
    pen.text(x, pen.y, words, size=big, bold=True, align=align)
    pen.y += big * 1.9


def _ruled_four(pen: Press, content: Content, entries: list[Entry]) -> None:
    """Captions in a tinted row over their texts, four to a row."""
    many = min(4, len(entries))
    step, size = (pen.right - pen.left) / many, pen.look.size
    colour = content.rng.choice(TINTS)
    for at in range(0, len(entries), many):
        for k, e in enumerate(entries[at : at + many]):
            x = pen.left + k * step
            tint(pen, x, pen.y, x + step, pen.y + size * 1.4, colour)
            pen.text(x + 3, pen.y + 2, e.caption, size=shrunk(pen, e.caption, step - 6, size * 0.85))
            pen.text(x + 3, pen.y + size * 1.4 + 3, e.text, size=shrunk(pen, e.text, step - 6, size))
            pen.box(x, pen.y, x + step, pen.y + size * 3.1)
        pen.y += size * 3.1
    pen.y += size


def _two_blocks(pen: Press, content: Content, entries: list[Entry]) -> None:
    half = (len(entries) + 1) // 2
    size, top, low = pen.look.size, pen.y, pen.y
    width = (pen.right - pen.left) / 2
    for k, part in enumerate((entries[:half], entries[half:])):
        if not part:
            continue
        x = pen.left + k * width
        edge = max(pen.size_of(e.caption + ":") for e in part) + 8
        pen.y = top
        for e in part:
            pen.text(x, pen.y, e.caption + ":")
            pen.text(
                x + edge, pen.y, e.text, size=shrunk(pen, e.text, width - edge - 4, size), bold=pen.look.value_bold
            )
            pen.y += size * 1.5
        low = max(low, pen.y)
    pen.y = low + size


def _two_columns(pen: Press, content: Content, entries: list[Entry]) -> None:
    """A ruled table of captions and texts."""
    rows: list[list[str] | str] = [[e.caption, e.text] for e in entries]
    style = replace(draw_style(content.rng, "all", "rows", "outer"), slack="no", lead=1.5)
    size = pen.look.size
    Grid([Col("", bold=content.rng.random() < 0.6), Col("")], rows, style, head=False).draw(pen)
    pen.look = replace(pen.look, size=size)
    pen.y += size


def _four_cells(pen: Press, content: Content, entries: list[Entry]) -> None:
    rows: list[list[str] | str] = []
    for at in range(0, len(entries), 2):
        pair = entries[at : at + 2]
        rows.append([t for e in pair for t in (e.caption, e.text)] + [""] * (4 - 2 * len(pair)))
    size = pen.look.size
    bold = content.rng.random() < 0.5
    style = replace(draw_style(content.rng, "all", "none", "rows"), slack="even", lead=1.5, stripe=None)
    Grid([Col("", bold=bold), Col(""), Col("", bold=bold), Col("")], rows, style, head=False).draw(pen)
    pen.look = replace(pen.look, size=size)
    pen.y += size


def _dotted(pen: Press, content: Content, entries: list[Entry]) -> None:
    edge = pen.left + max(pen.size_of(e.caption) for e in entries) + 36
    for e in entries:
        x = pen.left + pen.text(pen.left, pen.y, e.caption) + 2
        pen.text(x, pen.y, "." * int(max(edge - 4 - x, 0) / pen.size_of(".")))
        pen.text(edge, pen.y, e.text)
        pen.y += pen.look.size * 1.5
    pen.y += pen.look.size


def _running(pen: Press, content: Content, entries: list[Entry]) -> None:
    paragraph(pen, pen.left, pen.right - pen.left, ";  ".join(f"{e.caption}: {e.text}" for e in entries))
    pen.y += pen.look.size


def _tabbed(pen: Press, content: Content, entries: list[Entry]) -> None:
    bold = content.rng.random() < 0.5
    edge = pen.left + max(pen.size_of(e.caption, bold=bold) for e in entries) + content.rng.choice((12, 30, 60))
    for e in entries:
        pen.text(pen.left, pen.y, e.caption, bold=bold)
        pen.text(edge, pen.y, e.text, bold=not bold and pen.look.value_bold)
        pen.y += pen.look.size * 1.5
    pen.y += pen.look.size


HeadForm = Callable[[Press, Content, list[Entry]], None]
HEAD_FORMS: tuple[HeadForm, ...] = (
    _ruled_four, _two_blocks, _two_blocks, _two_columns, _four_cells, _dotted, _tabbed, _tabbed, _running,
)  # fmt: skip


def header(pen: Press, content: Content, entries: list[Entry] | None = None, form: HeadForm | None = None) -> None:
    """The entries in one of the usual forms, then the sentences that name methods and moisture basis."""
    found = entries if entries is not None else [*content.shared, *content.own[0]]
    if found:
        (form or content.rng.choice(HEAD_FORMS))(pen, content, found)
    if content.rng.random() < 0.7:  # else below the figures
        sentences(pen, content)


def sentences(pen: Press, content: Content) -> None:
    for text in (content.family_line, content.note_line):
        if text:
            paragraph(pen, pen.left, pen.right - pen.left, text, pen.look.size * 0.95)
    content.family_line = content.note_line = ""
    pen.y += pen.look.size * 0.5


def date_line(pen: Press, content: Content) -> None:
    """The day of issue, which is none of the header's keys; a bare "date" may be taken for the day of analysis."""
    maker = maker_of(content)
    day = maker.dates.write(maker.issued())
    caption = phrase(content, "date")
    pen.text(pen.right, pen.y, f"{caption}: {day.text}", align="right")
    for analysis in content.analyses if caption in _BARE_DATES else ():
        unsure = TruthHeader(day.text, day.iso, "ambiguous", required=False)
        analysis.header.setdefault("analysed_on", unsure)
    pen.y += pen.look.size * 1.6


def top(pen: Press, content: Content, entries: list[Entry] | None = None, form: HeadForm | None = None) -> None:
    """An ordinary upper part."""
    rng = content.rng
    if rng.random() < 0.8:
        letterhead(pen, content)
    if rng.random() < 0.3:
        date_line(pen, content)
    title(pen, content)
    header(pen, content, entries, form)


def close(pen: Press, content: Content) -> bytes:
    """A verdict, an automatic signature or a place to sign, then the end of the document."""
    rng, size = content.rng, pen.look.size
    pen.y += size * 1.2
    if pen.y + 4 * size > pen.bottom and (content.family_line or content.note_line):
        pen.new_page()
    sentences(pen, content)
    for key, share in (("summary", 0.25), ("auto", 0.4)):
        untrue = key == "summary" and (content.need.kind != "batch" or not content.need.limits)
        if not untrue and rng.random() < share and pen.y + 3 * size < pen.bottom:
            paragraph(pen, pen.left, pen.right - pen.left, phrase(content, key), size * 0.85, grey=0.2)
            pen.y += size * 0.5
    if rng.random() < 0.3 and pen.y + 5 * size < pen.bottom:
        pen.y += size * 2.5
        pen.line(pen.left, pen.y, pen.left + 120, pen.y)
        pen.text(
            pen.left, pen.y + 2, "i. A. M. Harlow" if content.words.language == "de" else "M. Harlow", size=size * 0.85
        )
        pen.y += size * 1.5
    return pen.finish()


def sized_grid(pen: Press, grid: Grid, x: float | None = None, width: float | None = None) -> None:
    """Draws a table and puts the type size back."""
    size = pen.look.size
    grid.draw(pen, x, width)
    pen.look = replace(pen.look, size=size)


def rows_of(content: Content, roles: list[str], rows: list[Row] | None = None) -> list[list[str] | str]:
    """Table rows; a role is ``label``, ``value``, ``unit``, ``both`` (value with unit), ``min`` and so on."""
    return [[cell(r, role) for role in roles] for r in (rows if rows is not None else content.rows)]


def cell(row: Row, role: str, batch: int = 0) -> str:
    return {
        "label": row.label, "value": row.cells[batch].text, "unit": row.unit, "both": with_unit(row, batch),
        "min": row.limit.low, "max": row.limit.high, "spec": row.limit.spec, "method": row.method,
        "labelled": f"{row.label} [{row.unit}]" if row.unit else row.label,
        "rounded": f"{row.label} ({row.unit})" if row.unit else row.label,
        "specunit": f"{row.limit.spec} {row.unit}".strip() if row.limit.spec else "",
    }[role]  # fmt: skip


_WRAPS = ("label", "spec", "method", "labelled", "rounded", "specunit")
_HEADS = {"value": "result", "both": "result", "labelled": "label", "rounded": "label", "specunit": "spec"}


def columns(content: Content, roles: list[str], align: str = "") -> list[Col]:
    """Columns for roles, with heads in the sheet's words."""
    rng = content.rng
    numbers = align or rng.choice(("right", "center", "decimal", "left", "right"))
    found = []
    for role in roles:
        side = numbers if role in ("value", "both", "min", "max") else rng.choice(("left", "left", "center"))
        if role in ("label", "labelled", "rounded") or (role == "both" and side == "decimal"):
            side = "left" if role != "both" else "right"
        found.append(Col(content.head(_HEADS.get(role, role)), side, role in _WRAPS,  # type: ignore[arg-type]
                         role in ("value", "both") and rng.random() < 0.3))  # fmt: skip
    return found


def plain_table(
    pen: Press, content: Content, roles: list[str], style: Style, rows: list[Row] | None = None, align: str = ""
) -> None:
    sized_grid(pen, Grid(columns(content, roles, align), rows_of(content, roles, rows), style))


__all__ = [
    "HEAD_FORMS", "TINTS", "cell", "close", "columns", "composer_of", "date_line", "draw_style", "figure_of", "header",
    "letterhead", "maker_of", "paragraph", "phrase", "phrases", "plain_table", "press", "rows_of", "sentences",
    "shrunk", "sized_grid", "small", "tint", "title", "top", "unit_beside", "with_unit",
]  # fmt: skip
