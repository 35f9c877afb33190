"""Column borders of a table, from drawn rules or from the white rivers that run down through its lines."""

from __future__ import annotations

from bisect import bisect
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from itertools import pairwise

from importer.layout.lines import Cell, Line, make_cell
from importer.words import Box, Word

# Share of lines that may cross a river (a long label, a remark).
CROSSING = 0.06
# A river is at least this wide, in em.
RIVER = 0.3
# A drawn rule is a border if rules at its place cover this share of the table's height.
RULE_COVER = 0.5
# Type so much larger than that of a table is that of a title.
LARGE = 1.2


@dataclass(frozen=True, slots=True)
class Span:
    """Horizontal extent of a column in points."""

    x0: float
    x1: float

    def overlap(self, box: Box) -> float:
        return min(self.x1, box.x1) - max(self.x0, box.x0)

    def distance(self, box: Box) -> float:
        return max(0.0, -self.overlap(box))


def rule_borders(rules: Iterable[Box], top: float, bottom: float, em: float) -> list[float]:
    """Places of upright rules that run through most of the height between ``top`` and ``bottom``."""
    height = max(bottom - top, 1.0)
    cover: dict[int, list[Box]] = {}
    for rule in rules:
        if rule.width < 2 and rule.bottom > top and rule.top < bottom:
            cover.setdefault(round(rule.x0 / 2), []).append(rule)
    borders: list[float] = []
    for key in sorted(cover):
        group = cover[key] + cover.get(key + 1, [])
        # Tiles overlap where a grid is drawn cell by cell: sum the union, not the pieces.
        reached, total = top, 0.0
        for rule in sorted(group, key=lambda r: r.top):
            start, end = max(rule.top, reached), min(rule.bottom, bottom)
            if end > start:
                total += end - start
                reached = end
        if total >= RULE_COVER * height and (not borders or group[0].x0 - borders[-1] > 0.5 * em):
            borders.append(group[0].x0)
    return borders


def river_spans(lines: Sequence[Line], em: float, river: float = RIVER) -> list[Span]:
    """Columns parted by white rivers through ``lines``; ``river`` is their least width in em."""
    cells = [cell for line in lines for cell in line.cells]
    if not cells:
        return []
    left = min(cell.box.x0 for cell in cells)
    right = max(cell.box.x1 for cell in cells)
    step = 0.5
    size = int((right - left) / step) + 2
    cover = [0] * (size + 1)
    for cell in cells:
        cover[int((cell.box.x0 - left) / step)] += 1
        cover[int((cell.box.x1 - left) / step) + 1] -= 1
    allowed = int(CROSSING * len(lines))
    spans: list[Span] = []
    start: int | None = None
    gap = 0
    depth = 0
    for i in range(size):
        depth += cover[i]
        if depth > allowed:
            if start is None:
                start = i
            elif gap * step >= river * em:
                spans.append(Span(left + start * step, left + (i - gap) * step))
                start = i
            gap = 0
        elif start is not None:
            gap += 1
    if start is not None:
        spans.append(Span(left + start * step, left + (size - gap) * step))
    return spans


def ruled_spans(borders: Sequence[float], lines: Sequence[Line]) -> list[Span]:
    """Columns between drawn borders, with the open ones at either side where text stands there."""
    left = min(line.box.x0 for line in lines)
    right = max(line.box.x1 for line in lines)
    edges = list(borders)
    if left < edges[0] - 1:
        edges.insert(0, left - 1)
    if right > edges[-1] + 1:
        edges.append(right + 1)
    return [Span(a, b) for a, b in pairwise(edges)]


def one_cell_each(borders: Sequence[float], lines: Sequence[Line]) -> bool:
    """Whether drawn borders enclose all text and part all the cells of every line: what is set to the left in some
    lines and to the right in others is one column."""
    if len(borders) < 3 or any(line.box.x0 < borders[0] - 1 or line.box.x1 > borders[-1] + 1 for line in lines):
        return False
    places = [[bisect(borders, cell.box.centre) for cell in line.cells] for line in lines]
    return all(len(own) == len(set(own)) for own in places)


def cut_spans(spans: Sequence[Span], borders: Sequence[float]) -> list[Span]:
    """Spans parted where a drawn border runs through them."""
    out: list[Span] = []
    for span in spans:
        inside = [x for x in borders if span.x0 + 1 < x < span.x1 - 1]
        edges = [span.x0, *inside, span.x1]
        out.extend(Span(a, b) for a, b in pairwise(edges))
    return out


def split_span(span: Span, heads: Sequence[Box], lines: Sequence[Line]) -> list[Span]:
    """Parts one column that holds several heads, between each two where the fewest words of the lines stand."""
    ordered = sorted(heads, key=lambda box: box.x0)
    words = [word for line in lines for cell in line.cells for word in cell.words if span.overlap(word.box) > 0]
    cuts = [_cut(a, b, words) for a, b in pairwise(ordered)]
    edges = [span.x0, *cuts, span.x1]
    return [Span(a, b) for a, b in pairwise(edges)]


def _cut(left: Box, right: Box, words: Sequence[Word]) -> float:
    """The place between the middles of two heads that the fewest words cross; of several the one nearest half-way."""
    middle = (left.x1 + right.x0) / 2
    start, end = left.centre, right.centre
    places = [start + (end - start) * i / 60 for i in range(61)]
    return min(places, key=lambda x: (sum(word.x0 - 0.3 < x < word.x1 + 0.3 for word in words), abs(x - middle)))


def in_order(spans: Sequence[Span], heads: Sequence[Box]) -> bool:
    """True where each head begins within its own wide column: right of the one before, and not beyond its values."""
    if len(spans) != len(heads) or heads[0].x0 > spans[0].x1:
        return False
    return all(before.x1 < head.x0 <= span.x1 for before, span, head in zip(spans, spans[1:], heads[1:], strict=False))


def nearest(spans: Sequence[Span], box: Box) -> int:
    """The column that a box belongs to: the one it shares most with, else the closest."""
    return max(
        range(len(spans)), key=lambda i: (spans[i].overlap(box), -abs((spans[i].x0 + spans[i].x1) / 2 - box.centre))
    )


def cells_by_column(line: Line, spans: Sequence[Span]) -> dict[int, Cell]:
    """The cells of a line by column; a cell that reaches over a border is parted between its words."""
    columns: dict[int, list[Cell]] = {}
    for cell in line.cells:
        touched = [i for i, span in enumerate(spans) if span.overlap(cell.box) > 0.15 * line.em]
        if len(touched) <= 1 or len(cell.words) == 1:
            columns.setdefault(nearest(spans, cell.box), []).append(cell)
            continue
        run: list[Word] = []
        at = -1
        colon = max((i for i, word in enumerate(cell.words[:-1]) if word.text.endswith(":")), default=-1)
        for i, word in enumerate(cell.words):
            # What stands before a colon is one caption, however far it reaches.
            column = nearest(spans, word.box) if i > colon else nearest(spans, cell.words[0].box)
            if column != at and run:
                columns.setdefault(at, []).append(make_cell(run))
                run = []
            at = column
            run.append(word)
        columns.setdefault(at, []).append(make_cell(run))
    return {i: join_cells(parts) for i, parts in columns.items()}


def by_edges(cell: Cell, spans: Sequence[Span], em: float) -> dict[int, Cell]:
    """The words of several close heads by column, where each begins with the values below it or ends with them."""
    touched = [i for i, span in enumerate(spans) if span.overlap(cell.box) > 0]
    near = 0.35 * em
    for left in (True, False):
        starts: list[int] = []
        for i in touched[1:]:
            places = [
                k
                for k in range(1, len(cell.words))
                if abs(
                    cell.words[k].x0 - spans[i].x0 if left else cell.words[k - 1].x1 - spans[touched[len(starts)]].x1
                )
                < near
            ]
            if len(places) != 1 or (starts and places[0] <= starts[-1]):
                break
            starts.append(places[0])
        if len(starts) == len(touched) - 1:
            edges = [0, *starts, len(cell.words)]
            return {i: make_cell(cell.words[a:b]) for i, (a, b) in zip(touched, pairwise(edges), strict=True)}
    return {}


def join_cells(parts: Sequence[Cell]) -> Cell:
    """One cell of several, in reading order."""
    if len(parts) == 1:
        return parts[0]
    return make_cell([word for part in parts for word in part.words], parts[0].after_leader)


def is_title(line: Line, spans: Sequence[Span], em: float) -> bool:
    """True for a line in larger type across several columns: what it heads is no part of the table."""
    crossed = sum(span.overlap(line.box) > 0 for span in spans)
    return len(line.cells) == 1 and line.em > LARGE * em and crossed > 1
