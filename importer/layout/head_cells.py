"""The cells of a head of several lines: words that stand over one column are one head of it."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from itertools import pairwise

from importer.layout.lines import Cell, Line, make_cell
from importer.layout.terms import Terms
from importer.words import Box

# Heads of a narrow table can stand closer than cells do; a gap this wide (em) still parts two of them.
CLOSE_HEADS = 0.42


@dataclass(frozen=True, slots=True)
class HeadCell:
    """One column head: its words over all lines of the head, and the roles that they name."""

    text: str
    box: Box
    roles: tuple[str, ...]


def merge_heads(lines: Sequence[Line], terms: Terms) -> tuple[HeadCell, ...]:
    """Head cells of several lines stacked by place; a group head is written before each head that it spans."""
    base = max(lines, key=lambda line: len(line.cells))
    stacks, groups = _parted_groups(base, lines, terms)
    stacks += [[part] for part in _below_groups(base, lines, terms)]
    placed = {id(stack[0]) for stack in stacks}
    for line in lines:
        families = _over_pairs(line, base, terms) if line.box.bottom < base.box.middle else {}
        others = [cell for cell in line.cells if id(cell) not in placed]
        parts = groups if line is base else [part for cell in others for part in _apart(cell, base.cells, line.em)]
        for cell in parts:
            if cell.box in families:
                for stack in stacks:
                    if any(stack[0] is head for head in families[cell.box]):
                        stack.append(cell)
                continue
            touched = [s for s in stacks if overlap(s[0].box, cell.box) > 0.3 * min(s[0].box.width, cell.box.width)]
            if not touched:
                touched = [s for s in stacks if overlap(_hull(s), cell.box) > 0]
            for stack in touched:
                stack.append(cell)
            if not touched:
                stacks.append([cell])
    cells: list[HeadCell] = []
    for stack in stacks:
        stack.sort(key=lambda cell: cell.box.middle)
        own = [cell for cell in stack if _is_own(cell, stacks)]
        hull = _hull(own or stack)
        text = " ".join(cell.text for cell in stack)
        roles = terms.roles(text)
        if not roles:
            roles = tuple(dict.fromkeys(role for cell in stack for role in terms.roles(cell.text)))
        cells.append(HeadCell(text, hull, roles))
    return tuple(sorted(cells, key=lambda cell: cell.box.x0))


def _over_pairs(line: Line, base: Line, terms: Terms) -> dict[Box, tuple[Cell, Cell]]:
    """The two heads below each method family of a line, where each stands in the middle over a pair of its own ("EBC"
    and "IoB", each over "Result" and "Unit"); empty for any other line."""
    pairs: dict[Box, tuple[Cell, Cell]] = {}
    for cell in line.cells:
        if not any(role.startswith("family:") for role in terms.roles(cell.text)):
            continue
        middle = (cell.box.x0 + cell.box.x1) / 2
        for left, right in pairwise(base.cells):
            centre = (left.box.x0 + left.box.x1 + right.box.x0 + right.box.x1) / 4
            if left.box.x1 <= cell.box.x0 and cell.box.x1 <= right.box.x0 and abs(centre - middle) < line.em:
                pairs[cell.box] = (left, right)
    heads = [id(head) for pair in pairs.values() for head in pair]
    return pairs if len(pairs) > 1 and len(set(heads)) == len(heads) else {}


def _parted_groups(base: Line, lines: Sequence[Line], terms: Terms) -> tuple[list[list[Cell]], list[Cell]]:
    """The heads of the line with most of them, and those among them that are groups: a head with two or more heads of
    another line right under it ("Specification" over "min" and "max") makes room for these."""
    stacks: list[list[Cell]] = []
    groups: list[Cell] = []
    for cell in base.cells:
        under = [
            parts
            for line in lines
            if line is not base
            and len(parts := [part for part in line.cells if overlap(part.box, cell.box) > 0]) > 1
            and (all(terms.roles(part.text) for part in parts) or all(_is_numbered(part.text, terms) for part in parts))
        ]
        stacks += [[part] for part in under[0]] if under else [[cell]]
        groups += [cell] if under else []
    return stacks, groups


def _is_numbered(text: str, terms: Terms) -> bool:
    """True for what may be the number of a batch: digits, and neither a parameter nor a unit."""
    return sum(c.isdigit() for c in text) > 2 and not (terms.is_label(text) or terms.is_unit(text))


def _below_groups(base: Line, lines: Sequence[Line], terms: Terms) -> list[Cell]:
    """Heads that stand side by side below one head beside the line with most of them ("from" and "to" under "Limits",
    where all other heads stand between the two lines)."""
    found: list[Cell] = []
    for line in lines:
        for cell in line.cells if line is not base else ():
            below = [
                part
                for other in lines
                if other is not base and other is not line and other.box.middle > line.box.middle
                for part in other.cells
                if overlap(part.box, cell.box) > 0
            ]
            free = not any(overlap(head.box, part.box) > 0 for head in base.cells for part in (cell, *below))
            apart = all(overlap(a.box, b.box) <= 0 for a, b in pairwise(below))
            if len(below) > 1 and free and apart and all(terms.roles(part.text) for part in (cell, *below)):
                found += [part for part in below if part not in found]
    return found


def _apart(cell: Cell, heads: Sequence[Cell], em: float) -> list[Cell]:
    """The cell, cut at a wide space that stands over the space between two heads ("Measured  Customer" over "value"
    and "spec."); a group of heads has ordinary spaces."""
    for left, right in pairwise(heads):
        for cut in range(1, len(cell.words)):
            start, end = cell.words[cut - 1].x1, cell.words[cut].x0
            if end - start > CLOSE_HEADS * em and min(end, right.box.x0) - max(start, left.box.x1) > -0.5:
                first, rest = make_cell(cell.words[:cut]), make_cell(cell.words[cut:])
                if overlap(first.box, left.box) > 0 and overlap(rest.box, right.box) > 0:
                    return [first, *_apart(rest, heads, em)]
    return [cell]


def _is_own(cell: Cell, stacks: Sequence[Sequence[Cell]]) -> bool:
    return sum(cell in stack for stack in stacks) == 1


def _hull(cells: Sequence[Cell]) -> Box:
    box = cells[0].box
    for cell in cells[1:]:
        box = box.union(cell.box)
    return box


def overlap(a: Box, b: Box) -> float:
    """How far two boxes share their width, in points; negative where they stand apart."""
    return min(a.x1, b.x1) - max(a.x0, b.x0)
