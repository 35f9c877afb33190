"""Columns that drawn rules part, whose cells are set to the left in some lines and to the right in others."""

from __future__ import annotations

import pytest

from importer.layout.grid import one_cell_each
from importer.layout.lines import Cell, Line
from importer.words import Box, Word


def line(top: float, *places: tuple[float, float]) -> Line:
    cells = tuple(
        Cell("4.5", Box(x0, top, x1, top + 8), (Word("4.5", x0, top, x1, top + 8, size=8),)) for x0, x1 in places
    )
    return Line(cells, Box(places[0][0], top, places[-1][1], top + 8), 8, 1)


LEFT, RIGHT = line(10, (42, 90), (217, 242), (304, 330)), line(30, (42, 70), (255, 290), (350, 380))


@pytest.mark.parametrize(
    ("borders", "lines", "told"),
    [
        ((36, 212, 299, 386), (LEFT, RIGHT), True),
        ((36, 212, 299), (LEFT, RIGHT), False),  # the last column is open
        ((36, 212, 386), (LEFT, RIGHT), False),  # two cells of a line between two rules
        ((36, 386), (LEFT,), False),  # a frame
        ((), (LEFT,), False),
    ],
)
def test_a_grid_around_one_cell_of_each_line_tells_the_columns(
    borders: tuple[float, ...], lines: tuple[Line, ...], told: bool
) -> None:
    assert one_cell_each(borders, lines) is told
