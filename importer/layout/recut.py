"""Heads that run together, cut by the columns below them, and words of one head put together over its column."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import replace

from importer.layout.grid import Span, cells_by_column, nearest, split_span
from importer.layout.head_cells import HeadCell
from importer.layout.lines import Cell, Line
from importer.layout.terms import Terms

_LIMITS = frozenset({"min", "max", "spec", "typical"})


def heads_by_column(
    heads: Sequence[HeadCell], lines: Sequence[Line], spans: Sequence[Span], terms: Terms
) -> Sequence[HeadCell]:
    """The heads, cut anew where one reaches over two columns and leaves one of them without ("Maximum batch" with
    "Your" above it, batch numbers of one form); as they are where the words over the columns are no heads by
    themselves."""
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
    plain = [head for head in cut if not head.roles]
    if len(cut) > len(heads) and (not plain or _are_of_one_form(plain)):
        return cut
    # A limit that may head either column says of neither what it holds.
    return [replace(head, roles=()) if head in wide and _LIMITS.issuperset(head.roles) else head for head in heads]


def _are_of_one_form(heads: Sequence[HeadCell]) -> bool:
    """Whether heads are numbers that only differ in their digits."""
    forms = {re.sub(r"\d+", "0", head.text) for head in heads}
    return len(heads) > 1 and len(forms) == 1 and all("0" in form for form in forms)


def _leaves_one_out(head: HeadCell, own: set[int], spans: Sequence[Span]) -> bool:
    """Whether a head reaches over a column that is no head's own."""
    return any(at not in own and span.overlap(head.box) > 0.5 * (span.x1 - span.x0) for at, span in enumerate(spans))


def heads_by_brackets(
    heads: Sequence[HeadCell], lines: Sequence[Line], spans: Sequence[Span], terms: Terms
) -> Sequence[HeadCell]:
    """The heads, those made one that would cut brackets of their column in two ("Test" and "result" over
    "83.3 (79.5 - 85)"); a head of limits is left apart."""
    out: list[HeadCell] = []
    for head in heads:
        before = out[-1] if out else head
        at = nearest(spans, head.box)
        if out and nearest(spans, before.box) == at and _cut_brackets(before, head, spans[at], lines):
            text = f"{before.text} {head.text}"
            roles = terms.roles(text)
            if len(roles) == 1 and not _LIMITS.intersection(before.roles + head.roles + roles):
                out[-1] = HeadCell(text, before.box.union(head.box), roles)
                continue
        out.append(head)
    return out


def _cut_brackets(left: HeadCell, right: HeadCell, span: Span, lines: Sequence[Line]) -> bool:
    """Whether columns of their own for both heads would part brackets, or numbers from the brackets behind them, in
    more than one line."""
    border = split_span(span, [left.box, right.box], lines)[0].x1
    cells = [cell for line in lines for cell in line.cells if cell.box.x0 < border < cell.box.x1]
    return sum(_ends_at_bracket(cell, border) for cell in cells) > 1


def _ends_at_bracket(cell: Cell, border: float) -> bool:
    before = " ".join(word.text for word in cell.words if word.box.centre < border)
    behind = " ".join(word.text for word in cell.words if word.box.centre >= border)
    is_open = before.count("(") + before.count("[") > before.count(")") + before.count("]")
    return is_open or (before != "" and behind.startswith(("(", "[")))
