"""Heads of several lines over the columns of a table whose columns are parameters: which words head which column."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from itertools import pairwise

from importer.layout.grid import Span, by_edges, cells_by_column
from importer.layout.lines import Cell, Line
from importer.layout.terms import Terms
from importer.words import Box

# Lines of one wrapped head are closer than this share of their height.
WRAP_GAP = 0.5
# Of the type size: how far words that begin, or end, at one place may be off.
FLUSH = 0.3


def under(line: Line, texts: Mapping[int, Sequence[Cell]]) -> dict[Cell, int]:
    """The columns of the cells of a line each of which begins where a head above it begins: short units may stand
    nearer to the values of the column before."""
    begins = {column: min(cell.box.x0 for cell in cells) for column, cells in texts.items()}
    found: dict[Cell, int] = {}
    for cell in line.cells:
        flush = [column for column, x0 in begins.items() if abs(cell.box.x0 - x0) < FLUSH * line.em]
        over = [column for column, x0 in begins.items() if cell.box.x0 < x0 < cell.box.x1 and column not in flush]
        if len(flush) == 1 and not over:
            found[cell] = flush[0]
    return found if len(found) == len(line.cells) == len(set(found.values())) else {}


def parts_of_head(cell: Cell, line: Line, lower: Sequence[Line], spans: Sequence[Span], em: float) -> dict[int, Cell]:
    """What of a cell of a head stands over each column; nothing for a title or a group of heads over several columns,
    which names none of them."""
    both = _both_below(cell, line, lower, spans, em)
    if both:
        return dict.fromkeys(both, cell)
    crossed = sum(span.overlap(cell.box) > 0.5 * em for span in spans)
    if crossed > 1 and len(line.cells) == 1 and not are_apart(cell, spans, lower, em):
        return {}
    return (by_edges(cell, spans, em) if crossed > 1 else {}) or cells_by_column(_alone(cell, line), spans)


def _alone(cell: Cell, line: Line) -> Line:
    return Line((cell,), cell.box, line.em, line.page)


def _both_below(
    cell: Cell, line: Line, lower: Sequence[Line], spans: Sequence[Span], em: float
) -> tuple[int, int] | None:
    """The two columns in whose middle a head stands that has lower heads of its own in each ("as is" and "dry")."""
    middle = (cell.box.x0 + cell.box.x1) / 2
    for at, (left, right) in enumerate(pairwise(spans)):
        if abs(left.x0 + left.x1 + right.x0 + right.x1 - 4 * middle) > 4 * em:
            continue
        others = [other.box for other in line.cells if other is not cell]
        alone = not any(span.overlap(box) > 0 for box in others for span in (left, right))
        headed = any(all(any(s.overlap(c.box) > 0 for c in row.cells) for s in (left, right)) for row in lower)
        if alone and headed and not are_apart(cell, (left, right), lower, em):
            return at, at + 1
    return None


def are_apart(cell: Cell, spans: Sequence[Span], lower: Sequence[Line], em: float) -> bool:
    """Whether the words of a cell over several columns are heads of their own, each flush with the lower line of its
    own ("Extract Fine/coarse" over "0.7 mm" and "difference")."""
    if not lower:
        return False
    parts = cells_by_column(_alone(cell, lower[0]), spans)
    below = [box for line in lower[:1] for own in line.cells for box in (own.box, *(word.box for word in own.words))]
    return len(parts) > 1 and all(any(_are_flush(part.box, box, em) for box in below) for part in parts.values())


def _are_flush(one: Box, other: Box, em: float) -> bool:
    """Whether one stands over the other: in the middle, or beginning or ending with it."""
    return min(abs(one.centre - other.centre), abs(one.x0 - other.x0), abs(one.x1 - other.x1)) < FLUSH * em


def unit_of_head(cells: Sequence[Cell], terms: Terms) -> str:
    """The unit with which a head of more words ends."""
    return _text(_as_read(cells)[_unit_from(cells, terms) :])


def _unit_from(cells: Sequence[Cell], terms: Terms) -> int:
    """The cell of a head, as it is read, at which the unit begins; their number where it ends with none."""
    ordered = _as_read(cells)
    return next((at for at in range(1, len(ordered)) if terms.is_unit(_text(ordered[at:]))), len(ordered))


def _as_read(cells: Sequence[Cell]) -> list[Cell]:
    """The cells of a head from its first word to its last: downwards, or upwards where the words are turned."""
    turned = sum(cell.box.height > cell.box.width for cell in cells if len(cell.text) > 2)
    upwards = turned > 0 and 2 * turned > sum(len(cell.text) > 2 for cell in cells)
    return sorted(cells, key=lambda cell: -cell.box.middle if upwards else cell.box.middle)


def head_text(cells: Sequence[Cell], em: float, terms: Terms) -> str:
    ordered = _as_read(cells)[: _unit_from(cells, terms)]
    kept = ordered[-1:]
    for cell in reversed(ordered[:-1]):
        if _is_far(cell, kept[0], em) and _is_known(_text(kept), terms):
            break
        kept.insert(0, cell)
    return _text(kept)


def _is_far(upper: Cell, lower: Cell, em: float) -> bool:
    """Whether a line stands farther off than the lines of one head do: it is a title above. On a scan middles tell."""
    size = max(em, upper.box.height)
    if lower.box.top - upper.box.bottom <= WRAP_GAP * size:
        return False
    return not upper.is_ink or lower.box.middle - upper.box.middle > (1 + WRAP_GAP) * size


def _is_known(text: str, terms: Terms) -> bool:
    return terms.is_label(text) or terms.caption(text) is not None


def _text(cells: Sequence[Cell]) -> str:
    text = ""
    for cell in cells:
        if text.endswith("-") and text[-2:-1].isalpha() and cell.text[:1].islower():
            text = text[:-1] + cell.text
        else:
            text = f"{text} {cell.text}".strip()
    return text
