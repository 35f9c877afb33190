"""Layout kinds of the sealed set, sixth part: pages that lie on their side, forms filled in, small tickets."""

from __future__ import annotations

from dataclasses import replace

from tests.sheets.content import Content, Need
from tests.sheets.draw import Look, font_for
from tests.sheets.sealed_make import sealed_layout
from tests.sheets.sealed_parts import (
    close,
    entries_of,
    header,
    letterhead,
    phrase,
    press,
    sentences,
    shrunk,
    small,
    title,
    turned,
)
from tests.sheets.sealed_tables import Roles, Style, cell, table
from tests.sheets.unseen_grid import Press

_GREY = (0.87, 0.87, 0.87)


@sealed_layout("s-n06", Need(rows=(9, 16), limits=True, missing_units=0.0))
def on_its_side(content: Content, look: Look) -> bytes:
    """A page that was put in the scanner's tray sideways: a viewer turns it back."""
    rng = content.rng
    look = small(look, 9.5)
    pen = Press(look, True, habit=rng.choice(("lines", "words")))
    pen.turn, pen.rotate = 90, 90
    pen._start()
    pen.canvas.setPageSize((pen.width, pen.height))  # reportlab turns the box of a page that is turned
    letterhead(pen, content, rng.choice(("centred", "address")))
    title(pen, content)
    header(pen, content, rng.choice(("halves", "pairs", "over")))
    sentences(pen, content)
    roles: Roles = rng.choice((("label", "unit", "spec", "value"), ("label", "value", "unit", "min", "max")))
    table(
        pen,
        content,
        roles,
        Style(rng.choice(("all", "rows", "head")), None, pad=4, lead=1.5),
        rng.choice(("right", "center")),
    )
    return close(pen, content, "none", extras=False)


@sealed_layout("s-n07", Need(rows=(14, 22), blanks=0.3, missing_units=0.0))
def filled_in(content: Content, look: Look) -> bytes:
    """A printed form with every name; a typewriter has filled in some, not quite on the lines."""
    rng = content.rng
    pen = press(
        content, replace(small(look, 9), font=rng.choice(("Helvetica", "LiberationSans", "Times-Roman"))), "page"
    )
    letterhead(pen, content, rng.choice(("centred", "lab")))
    title(pen, content, "center")
    size = pen.look.size
    step = max(size * 1.75, min(size * 2.1, (pen.bottom - pen.y - 60) / (len(content.rows) + 12)))
    entries = entries_of(content)
    edge = pen.left + max(pen.size_of(e.caption) for e in entries) + 12
    for e in entries:
        pen.text(pen.left, pen.y, e.caption)
        pen.line(edge, pen.y + size, edge + 190, pen.y + size, 0.4)
        _typed(pen, edge + 5, pen.y - rng.uniform(0.0, 2.5), e.text)
        pen.y += step
    pen.y += size
    sentences(pen, content)
    room = (pen.right - pen.left) * 0.56
    at = pen.left + min(room, max(pen.size_of(r.label) for r in content.rows) + 14)
    off = rng.uniform(0.0, 2.5)
    for row in content.rows:
        pen.text(pen.left, pen.y, row.label, size=shrunk(pen, row.label, at - pen.left - 6, size))
        pen.line(at, pen.y + size, at + 62, pen.y + size, 0.4)
        if row.cells[0].text:
            _typed(pen, at + 6 + rng.uniform(0, 3), pen.y - off, row.cells[0].text)
        pen.text(at + 68, pen.y, row.unit)
        pen.y += step
    return close(pen, content, "person", extras=False)


def _typed(pen: Press, x: float, y: float, text: str) -> None:
    """Typewriter letters, darker and on another line than the print."""
    name = font_for("Courier", False, text)
    pen.canvas.setFont(name, 9.5)
    pen.canvas.setFillGray(0)
    pen.canvas.drawString(x, pen.height - y - 0.8 * 9.5, text)


@sealed_layout("s-n08", Need(batches=(3, 6), rows=(7, 11), missing_units=0.0, words=False, seconds=False))
def upright_heads(content: Content, look: Look) -> bytes:
    """Names run upwards over narrow columns; one line a batch."""
    rng = content.rng
    pen = press(content, small(look, 8.5, margin=44.0), "page")
    letterhead(pen, content, rng.choice(("small", "centred")))
    title(pen, content)
    header(pen, content, "stack", list(content.shared))
    sentences(pen, content)
    size = pen.look.size
    own = content.own
    first = [
        max(pen.size_of(t, bold=True) for t in (own[0][k].caption, *(o[k].text for o in own))) + 8
        for k in range(len(own[0]))
    ]
    names = [f"{r.label} ({r.unit})" if r.unit else r.label for r in content.rows]
    step = min(46.0, (pen.right - pen.left - sum(first)) / len(names))
    high = max(pen.size_of(n, size * 0.9, True) for n in names) + 10
    right = pen.left + sum(first) + step * len(names)
    top, x = pen.y, pen.left
    for k, width in enumerate(first):
        pen.text(x + 3, top + high - size - 4, own[0][k].caption, bold=True)
        x += width
    for k, name in enumerate(names):
        turned(pen, x + step * (k + 0.5) + size * 0.3, top + high - 4, name, size * 0.9, True)
    pen.y = top + high
    for b, entries in enumerate(own):
        pen.line(pen.left, pen.y, right, pen.y)
        x = pen.left
        for e, width in zip(entries, first, strict=True):
            pen.text(x + 3, pen.y + 4, e.text)
            x += width
        for k, row in enumerate(content.rows):
            text = row.cells[b].text
            pen.text(x + step * (k + 0.5), pen.y + 4, text, size=shrunk(pen, text, step - 4, size), align="center")
        pen.y += size * 2
    pen.line(pen.left, pen.y, right, pen.y)
    x = pen.left
    for width in (*first, *[step] * len(names), 0.0):
        pen.line(x, top, x, pen.y)
        x += width
    pen.line(pen.left, top, right, top)
    return close(pen, content, "none", extras=False)


@sealed_layout("s-n09", Need(rows=(5, 8), missing_units=0.0, seconds=False))
def ticket(content: Content, look: Look) -> bytes:
    """A ticket tied to the sack: a few lines on a small card."""
    rng = content.rng
    card = (298.0, 420.0)
    pen = press(
        content,
        replace(look, page=card, margin=16.0, size=8.0, font=rng.choice(("Helvetica", "LiberationSansNarrow"))),
        "none",
    )
    letterhead(pen, content, "small")
    title(pen, content, scale=1.3)
    header(pen, content, "stack")
    sentences(pen, content)
    pen.line(pen.left, pen.y, pen.right, pen.y, 1.0)
    pen.y += 5
    for row in content.rows:
        pen.text(pen.left, pen.y, row.label, size=shrunk(pen, row.label, 165, 8.0))
        pen.text(pen.right, pen.y, cell(row, "both"), align="right")
        pen.y += 11.5
    pen.text(
        pen.left,
        pen.height - 22,
        phrase(content, "store"),
        size=shrunk(pen, phrase(content, "store"), pen.right - pen.left, 6.0),
    )
    return pen.finish()
