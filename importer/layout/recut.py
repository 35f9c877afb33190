"""Heads that stand so close that they run together, cut by the columns below them."""

from __future__ import annotations

from collections.abc import Sequence

from importer.layout.grid import Span, cells_by_column, nearest
from importer.layout.head_cells import HeadCell
from importer.layout.lines import Cell, Line
from importer.layout.terms import Terms


def heads_by_column(
    heads: Sequence[HeadCell], lines: Sequence[Line], spans: Sequence[Span], terms: Terms
) -> Sequence[HeadCell]:
    """The heads, cut anew where one reaches over two columns and leaves one of them without ("Maximum batch" with
    "Your" above it); as they are where the words over the columns are no heads by themselves."""
    if not _leaves_one_out(heads, spans):
        return heads
    stacks: dict[int, list[Cell]] = {}
    for line in lines:
        for column, cell in cells_by_column(line, spans).items():
            stacks.setdefault(column, []).append(cell)
    cut: list[HeadCell] = []
    for column in sorted(stacks):
        box = stacks[column][0].box
        for cell in stacks[column][1:]:
            box = box.union(cell.box)
        text = " ".join(cell.text for cell in stacks[column])
        cut.append(HeadCell(text, box, terms.roles(text)))
    return cut if all(head.roles for head in cut) and len(cut) > len(heads) else heads


def _leaves_one_out(heads: Sequence[HeadCell], spans: Sequence[Span]) -> bool:
    own = {nearest(spans, head.box) for head in heads}
    return any(
        at not in own and span.overlap(head.box) > 0.5 * (span.x1 - span.x0)
        for head in heads
        for at, span in enumerate(spans)
    )
