"""What stands around the figures of the sealed sheets: letterheads, header blocks, closings, feet."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

from tests.sheets.content import Content
from tests.sheets.draw import Look
from tests.sheets.exam_parts import TINTS, paragraph, phrase, phrases, shrunk, tint, turned
from tests.sheets.headers import Entry
from tests.sheets.sealed_make import SealedComposer, SealedMaker
from tests.sheets.sealed_names import PEOPLE, STREETS, TOWNS
from tests.sheets.truth import TruthHeader
from tests.sheets.unseen_grid import Press

_HABITS = ("lines", "lines", "lines", "words", "padded")
_DARK = ((0.12, 0.25, 0.22), (0.15, 0.2, 0.38), (0.36, 0.18, 0.1), (0.25, 0.25, 0.25))


def maker_of(content: Content) -> SealedMaker:
    assert isinstance(content.maker, SealedMaker)
    return content.maker


def composer_of(content: Content) -> SealedComposer:
    assert isinstance(content.composer, SealedComposer)
    return content.composer


def press(content: Content, look: Look, feet: str = "columns", landscape: bool = False, pages: int = 1) -> Press:
    """A document in the way of one program. ``feet`` is what stands at the foot of every page; 0 pages: not known."""
    pen = Press(look, landscape, habit=content.rng.choice(_HABITS))
    if feet != "none":
        _feet(pen, content, feet, pages)
    return pen


def _feet(pen: Press, content: Content, feet: str, pages: int) -> None:
    rng = content.rng
    n = rng.randint(1100, 9800)
    supplier, street = content.maker.supplier, STREETS[content.words.language]
    contact = [f"T +99 {n % 800 + 100} {n} 00", f"quality@{supplier.split()[0].lower()[:5]}.example"]
    blocks = [
        [supplier, *street],
        contact,
        [f"IBAN XX{n % 90 + 10} {n} 0000 {n} 11", "BIC XXXXXX00"],
        [f"VAT XX {n}{n}", f"Reg. {n}77"],
    ]
    page_text = phrase(content, "page") if pages else f"{phrase(content, 'page').partition('{p}')[0]}{{p}}"
    form = f"QF {n % 90 + 10}.{n % 9 + 1}  Rev {n % 7 + 1}"

    def write(at: object) -> None:
        assert isinstance(at, Press)
        low = at.height - 48
        if feet == "columns":
            at.line(at.left, low - 3, at.right, low - 3, 0.4)
            step = (at.right - at.left) / 4
            for k, lines in enumerate(blocks):
                for i, line in enumerate(lines):
                    at.text(at.left + k * step, low + i * 7.6, line, size=shrunk(at, line, step - 6, 6.2), grey=0.35)
        elif feet == "line":
            line = "  |  ".join([supplier, *street, contact[0]])
            at.text(
                at.width / 2, low + 8, line, size=shrunk(at, line, at.right - at.left, 6.8), align="center", grey=0.3
            )
        if feet in ("page", "line"):
            at.text(at.right, at.height - 24, page_text.format(p=at.page, q=pages), size=7, align="right", grey=0.2)
            at.text(at.left, at.height - 24, form, size=6.5, grey=0.35)

    if feet != "page":
        content.not_figures.extend(line for lines in blocks for line in lines)
    pen.before_show = write


def _supplied(content: Content) -> None:
    """The letterhead tells the supplier without a caption."""
    supplier = content.maker.supplier
    for analysis in content.analyses:
        analysis.header.setdefault("supplier", TruthHeader(supplier, supplier, "either", required=False))


def letterhead(pen: Press, content: Content, form: str) -> None:
    """``logo``, ``address``, ``centred``, ``banner``, ``lab``, ``small`` or ``none``."""
    size, supplier = pen.look.size, content.maker.supplier
    street = STREETS[content.words.language]
    if form == "none":
        return
    _supplied(content)
    top = pen.y
    if form == "logo":
        colour = content.rng.choice(_DARK)
        pen.canvas.setFillColorRGB(*colour)
        pen.canvas.circle(pen.right - 20, pen.height - top - 20, 19, stroke=0, fill=1)
        pen.text(
            pen.right - 20,
            top + 11,
            "".join(w[0] for w in supplier.split()[:2]),
            size=15,
            bold=True,
            align="center",
            grey=1.0,
        )
        pen.text(pen.left, top + 4, supplier, size=size * 1.8, bold=True)
        pen.text(pen.left, top + 4 + size * 2.2, phrase(content, "tagline"), size=size * 0.85, grey=0.35)
        pen.y = top + 50
    elif form == "address":
        pen.text(pen.left, top, supplier, size=size * 1.6, bold=True)
        n = content.rng.randint(200, 890)
        lines = [*street, f"Tel +99 {n} 55 21 {n}", f"Fax +99 {n} 55 21 99", "www.malt.example"]
        content.not_figures.extend(lines)
        for k, line in enumerate(lines):
            pen.text(pen.right, top + k * size * 1.05, line, size=size * 0.8, align="right", grey=0.3)
        pen.y = top + max(5 * size * 1.05, 40) + size
    elif form == "centred":
        pen.text(pen.width / 2, top, supplier, size=size * 1.9, bold=True, align="center")
        pen.text(pen.width / 2, top + size * 2.3, ", ".join(street), size=size * 0.85, align="center", grey=0.3)
        pen.line(pen.left, top + size * 3.8, pen.right, top + size * 3.8, 1.4)
        pen.line(pen.left, top + size * 3.8 + 2.4, pen.right, top + size * 3.8 + 2.4, 0.5)
        pen.y = top + size * 5.2
    elif form == "banner":
        tint(pen, 0, 0, pen.width, 46, content.rng.choice(_DARK))
        pen.text(pen.left, 14, supplier, size=16, bold=True, grey=1.0)
        pen.text(pen.right, 19, phrase(content, "tagline"), size=8, align="right", grey=1.0)
        pen.y = max(top, 46) + size * 1.6
    elif form == "lab":
        pen.text(pen.left, top, supplier, size=size * 1.3, bold=True)
        pen.text(pen.left, top + size * 1.7, phrase(content, "lab"), size=size)
        pen.text(pen.left, top + size * 3.0, " - ".join(street), size=size * 0.8, grey=0.3)
        text = phrase(content, "accredited").format(n=content.rng.randint(110, 890))
        for k, line in enumerate(pen.wrap(text, 170, size * 0.75)):
            pen.text(pen.right, top + k * size, line, size=size * 0.75, align="right", grey=0.25)
        pen.y = top + size * 5.2
    else:
        pen.text(pen.left, top, supplier, size=size, bold=True)
        pen.y = top + size * 2.4


def title(pen: Press, content: Content, place: str = "left", text: str = "", scale: float = 1.5) -> None:
    words = text or content.title
    big = shrunk(pen, words, pen.right - pen.left, pen.look.size * scale, True)
    x = {"left": pen.left, "center": pen.width / 2, "right": pen.right}[place]
    pen.text(x, pen.y, words, size=big, bold=True, align=place)
    pen.y += big * 1.8


def _stack(pen: Press, content: Content, entries: list[Entry]) -> None:
    """One entry a line, texts under one another."""
    bold, colon = content.rng.random() < 0.5, content.rng.choice((":", "", ":"))
    edge = pen.left + max(pen.size_of(e.caption + colon, bold=True) for e in entries) + content.rng.choice((10, 24, 45))
    for e in entries:
        pen.text(pen.left, pen.y, e.caption + colon, bold=bold)
        pen.text(edge, pen.y, e.text, bold=pen.look.value_bold and not bold)
        pen.y += pen.look.size * 1.4
    pen.y += pen.look.size


def _halves(pen: Press, content: Content, entries: list[Entry]) -> None:
    """Two columns of entries side by side, colons under one another."""
    size, top, middle = pen.look.size, pen.y, (pen.left + pen.right) / 2
    cut = (len(entries) + 1) // 2
    low = top
    for x, part in ((pen.left, entries[:cut]), (middle + 6, entries[cut:])):
        pen.y = top
        edge = x + max((pen.size_of(e.caption, bold=True) for e in part), default=0.0) + 8
        for e in part:
            room = (middle if x == pen.left else pen.right) - edge - 8
            pen.text(x, pen.y, e.caption, bold=True)
            pen.text(edge, pen.y, ":")
            pen.text(edge + 7, pen.y, e.text, size=shrunk(pen, e.text, room, size))
            pen.y += size * 1.5
        low = max(low, pen.y)
    pen.y = low + size


def _cells(pen: Press, content: Content, entries: list[Entry], across: int, over: bool) -> None:
    """Ruled cells: the caption over its text in one cell, or in a tinted cell at its left."""
    size = pen.look.size
    step = (pen.right - pen.left) / across
    small = size * (0.75 if over else 0.95)
    height = size * (2.9 if over else 1.7)
    colour = content.rng.choice(TINTS)
    caption = 0.42 * step
    for at in range(0, len(entries), across):
        for k, e in enumerate(entries[at : at + across]):
            x = pen.left + k * step
            if over:
                pen.text(x + 4, pen.y + 2, e.caption, size=shrunk(pen, e.caption, step - 8, small), grey=0.3)
                pen.text(x + 4, pen.y + 3 + size, e.text, size=shrunk(pen, e.text, step - 8, size), bold=True)
            else:
                tint(pen, x, pen.y, x + caption, pen.y + height, colour)
                pen.text(x + 4, pen.y + size * 0.35, e.caption, size=shrunk(pen, e.caption, caption - 8, small))
                pen.text(
                    x + caption + 4, pen.y + size * 0.35, e.text, size=shrunk(pen, e.text, step - caption - 8, size)
                )
                pen.box(x, pen.y, x + caption, pen.y + height)
            pen.box(x, pen.y, x + step, pen.y + height)
        pen.y += height
    pen.y += size * 1.2


def _pairs(pen: Press, content: Content, entries: list[Entry]) -> None:
    _cells(pen, content, entries, 2, False)


def _over(pen: Press, content: Content, entries: list[Entry]) -> None:
    _cells(pen, content, entries, content.rng.choice((3, 4)), True)


def _single(pen: Press, content: Content, entries: list[Entry]) -> None:
    _cells(pen, content, entries, 1, False)


def _corner(pen: Press, content: Content, entries: list[Entry]) -> None:
    """The recipient's address at the left, a box of entries at the right, as letters have it."""
    size = pen.look.size
    caption = max(pen.size_of(e.caption) for e in entries) + 17
    width = max(caption + max(pen.size_of(e.text) for e in entries) + 10, 170.0)
    x = pen.right - width
    top = pen.y
    if not any(e.key == "customer" for e in entries):
        customer = maker_of(content).customer
        for k, line in enumerate((customer, *TOWNS[content.words.language])):
            if pen.left + pen.size_of(line) < x - 6:
                pen.text(pen.left, top + 10 + k * size * 1.3, line)
        for analysis in content.analyses:
            analysis.header.setdefault("customer", TruthHeader(customer, customer, "either", required=False))
    for e in entries:
        pen.text(x + 5, pen.y + 3, e.caption)
        pen.text(x + caption, pen.y + 3, e.text)
        pen.y += size * 1.45
    pen.box(x, top - 2, pen.right, pen.y + 4)
    pen.y = max(pen.y, top + 10 + size * 5) + size * 1.6


def _spread(pen: Press, content: Content, entries: list[Entry]) -> None:
    """``Caption: text`` with wide gaps, two or three a line at fixed stops."""
    size = pen.look.size
    across = 2 if any(pen.size_of(f"{e.caption}: {e.text}") > (pen.right - pen.left) / 3 - 8 for e in entries) else 3
    step = (pen.right - pen.left) / across
    for k, e in enumerate(entries):
        text = f"{e.caption}: {e.text}"
        pen.text(pen.left + k % across * step, pen.y, text, size=shrunk(pen, text, step - 6, size))
        if k % across == across - 1 or k == len(entries) - 1:
            pen.y += size * 1.5
    pen.y += size


def _heads_over(pen: Press, content: Content, entries: list[Entry]) -> None:
    """A table of one row below its heads, as a spreadsheet prints it; five columns at most."""
    size = pen.look.size
    many = 4 if len(entries) % 4 == 0 or len(entries) > 5 else len(entries)
    for at in range(0, len(entries), many):
        part = entries[at : at + many]
        step = (pen.right - pen.left) / many
        for k, e in enumerate(part):
            x = pen.left + k * step
            tint(pen, x, pen.y, x + step, pen.y + size * 1.7, (0.88, 0.88, 0.88))
            pen.text(
                x + 3, pen.y + size * 0.35, e.caption, size=shrunk(pen, e.caption, step - 6, size, True), bold=True
            )
            pen.text(x + 3, pen.y + size * 2.05, e.text, size=shrunk(pen, e.text, step - 6, size))
            pen.box(x, pen.y, x + step, pen.y + size * 1.7)
            pen.box(x, pen.y + size * 1.7, x + step, pen.y + size * 3.4)
        pen.y += size * 3.4
    pen.y += size


HeadForm = Callable[[Press, Content, list[Entry]], None]
HEAD_FORMS: dict[str, HeadForm] = {
    "stack": _stack, "halves": _halves, "pairs": _pairs, "over": _over, "single": _single, "corner": _corner,
    "spread": _spread, "heads-over": _heads_over,
}  # fmt: skip


def entries_of(content: Content, batch: int = 0) -> list[Entry]:
    """All entries of a batch; the batch number near the top, as forms have it."""
    shared, own = list(content.shared), list(content.own[batch])
    cut = content.rng.randint(1, max(1, len(shared)))
    return [*shared[:cut], *own, *shared[cut:]]


def header(pen: Press, content: Content, form: str, entries: list[Entry] | None = None) -> None:
    found = entries if entries is not None else entries_of(content)
    if found:
        HEAD_FORMS[form](pen, content, found)


def sentences(pen: Press, content: Content) -> None:
    """The sentences that name methods and moisture basis."""
    for text in (content.family_line, content.note_line):
        if text:
            paragraph(pen, pen.left, pen.right - pen.left, text, pen.look.size * 0.95)
            pen.y += pen.look.size * 0.3
    content.family_line = content.note_line = ""


def close(pen: Press, content: Content, signed: str = "auto", extras: bool = True) -> bytes:
    """Remarks, verdict, disclaimers and a signature, then the end of the document."""
    rng, size = content.rng, pen.look.size
    pen.y += size
    if pen.y + 3 * size > pen.bottom and (content.family_line or content.note_line):
        pen.new_page()
    sentences(pen, content)
    texts = [phrase(content, key) for key in ("sample_only", "store") if extras and rng.random() < 0.45]
    if content.need.kind == "batch" and extras and rng.random() < 0.3:
        pen.y += size * 0.5
        pen.text(pen.left, pen.y, f"{phrase(content, 'remarks')}: {phrase(content, 'none')}")
        pen.y += size * 1.5
    if content.need.limits and extras and rng.random() < 0.3:
        texts.insert(0, phrase(content, "verdict"))
    if signed == "auto":
        texts.append(phrase(content, "auto"))
    for text in texts:
        if pen.y + 2 * size < pen.bottom:
            paragraph(pen, pen.left, pen.right - pen.left, text, size * 0.8, grey=0.2)
            pen.y += size * 0.4
    content.not_figures.extend(texts)
    if signed == "person" and pen.y + 5 * size < pen.bottom:
        pen.y += size * 2.2
        for k, who in enumerate((phrase(content, "signed"), phrase(content, "checked"))):
            x = pen.left + k * (pen.right - pen.left) * 0.6
            pen.text(x, pen.y - size * 1.1, rng.choice(PEOPLE), size=size * 0.95)
            pen.line(x, pen.y, x + 110, pen.y, 0.5)
            pen.text(x, pen.y + 2, who, size=size * 0.8, grey=0.2)
        pen.y += size * 2
    return pen.finish()


def small(look: Look, size: float = 9.5, **changes: object) -> Look:
    """The look with a largest type size."""
    return replace(look, size=min(look.size, size), **changes)  # type: ignore[arg-type]


__all__ = [
    "HEAD_FORMS",
    "TINTS",
    "close",
    "composer_of",
    "entries_of",
    "header",
    "letterhead",
    "maker_of",
    "paragraph",
    "phrase",
    "phrases",
    "press",
    "sentences",
    "shrunk",
    "small",
    "tint",
    "title",
    "turned",
]
