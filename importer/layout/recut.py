"""Heads that stand so close that they run together, cut by the columns below them."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from importer.layout.grid import Span, cells_by_column, nearest
from importer.layout.head_cells import HeadCell
from importer.layout.lines import Cell, Line
from importer.layout.terms import Terms

_LIMITS = frozenset({"min", "max", "spec", "typical"})


def heads_by_column(
    heads: Sequence[HeadCell], lines: Sequence[Line], spans: Sequence[Span], terms: Terms
) -> Sequence[HeadCell]:
    """The heads, cut anew where one reaches over two columns and leaves one of them without ("Maximum batch" with
    "Your" above it); as they are where the words over the columns are no heads by themselves."""
    own = {nearest(spans, head.box) for head in heads}
    wide = [head for head in heads if _leaves_one_out(head, own, spans)]
    if not wide:
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
    if all(head.roles for head in cut) and len(cut) > len(heads):
        return cut
    # A limit that may head either column says of neither what it holds.
    return [replace(head, roles=()) if head in wide and _LIMITS.issuperset(head.roles) else head for head in heads]


def _leaves_one_out(head: HeadCell, own: set[int], spans: Sequence[Span]) -> bool:
    """Whether a head reaches over a column that is no head's own."""
    return any(at not in own and span.overlap(head.box) > 0.5 * (span.x1 - span.x0) for at, span in enumerate(spans))
