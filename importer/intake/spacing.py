"""Does the ink of a figure have the width of what was read in it?

Both readers can lose the same decimal point or sign, above all where a copier has eaten it. The digits then still
stand as far apart as the point made them. The advance of a digit, a point and a sign is learnt from the page itself,
so no font needs to be known, and a figure that is wider than its reading explains is reported.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING

import numpy as np

if TYPE_CHECKING:
    from numpy.typing import NDArray

    from importer.intake.prepare.ink import Marks, Mask

    Floats = NDArray[np.float64]

DIGITS, SEPARATORS, DASHES, SIGNS = "0123456789", ".,", "-–−", "<>≤≥"
# Widths over the height of a digit, the middle of common text faces: digit, point, dash, comparison sign, what a 1 is
# narrower by, at an end of the figure and inside, and what the outer side bearings take off.
EXPECTED = np.array([0.78, 0.39, 0.55, 0.82, -0.12, -0.03, -0.10])
# How many figures' worth of evidence the expectation counts for.
STIFFNESS = 2.0
LEAST_FIGURES = 4
OWN_WIDTHS = 8  # so many figures of one size of print have widths of their own
NARROW = 40.0  # percentile of the pieces that starts the learning
SAME_SIZE = 0.15
# Two sizes of print on a page differ by at least this share, with nothing between them.
SIZE_STEP = 0.1
# Of the page's own width of a point: half-way between 'no point' and 'a point' and a little more.
SURPLUS = 0.58
MOST_SURPLUS = 0.72
LEAST_SURPLUS = 0.17
# A point, of the glyph height: its greatest size, its least area (squared), how far from the digits' foot it may end.
POINT, LEAST_POINT, FOOT = 0.34, 0.016, 0.12
# A step from digit to digit is at most so many times another one; over a lost point it is half as much again or more.
# The ink of a 1 does not stand in the middle of its place.
EVEN = 1.25
GAP, GAP_BESIDE_ONE = 1.3, 1.4
SHORTER = 0.8  # of the step over a point that was read: so short is no step over one that was lost
WHOLE = 0.8  # a mark of this share of the digits' height can be a digit
LOW = 0.4  # of the digits' height over their foot: a point or comma does not reach higher
SPECK = 0.28  # of the glyph height; smaller marks are points or dirt
_LEADING = re.compile(r"\d(?:[\d.,]*\d)?")
DASH_TO_SPACE = str.maketrans(dict.fromkeys(DASHES, " "))


@dataclass(frozen=True, slots=True)
class Piece:
    """A numeric piece of a cell: what was read in it, the width of its ink and the height of its digits in pixels.

    ``steps`` are the distances from digit to digit over their height, ``over`` those across a point that was read; None
    unless each mark is one of the digits.
    """

    text: str
    width: float
    height: float
    steps: tuple[float, ...] | None = None
    over: tuple[float, ...] | None = None


def pieces(marks: Marks, text: str, glyph: float) -> list[Piece]:
    """The numeric pieces of a cell's marks, cut at the widest gaps where the reading has spaces and at range dashes."""
    found = []
    for token, own in _tokens(marks, text):
        own = own.take(np.maximum(own.width, own.height) >= SPECK * glyph)  # points and dirt have no say in a width
        for piece, end in _ends(*_without_sign(token, own), glyph):
            height = float(end.height.max(initial=0))
            if _numeric(piece) and height >= 0.5 * glyph:
                width = float(end.x1.max() - end.x0.min())
                steps = _steps(piece, end, height) or {}
                found.append(Piece(piece, width, height, steps.get(1), steps.get(2)))
    return found


def _tokens(marks: Marks, text: str) -> list[tuple[str, Marks]]:
    """The words of a reading, each with its marks, cut at the widest gaps; none where there are too few marks."""
    marks = marks.take(np.argsort(marks.x0, kind="stable"))
    tokens = text.split()
    if not tokens or len(marks) < len(tokens):
        return []
    gaps = marks.x0[1:] - np.maximum.accumulate(marks.x1)[:-1]
    cuts = np.sort(np.argsort(-gaps, kind="stable")[: len(tokens) - 1]) + 1
    parts = np.split(np.arange(len(marks)), cuts)
    return [(token, marks.take(part)) for token, part in zip(tokens, parts, strict=True)]


def leading_number(marks: Marks, text: str, glyph: float) -> tuple[str, Marks]:
    """The number that a reading starts with, and its marks, where a unit may stand close behind; else all of it."""
    number = _LEADING.match(text)
    if number is None or any(character in DIGITS for character in text[number.end() :]):
        return text, marks
    tall = marks.take(marks.height >= WHOLE * glyph)
    count = sum(character in DIGITS for character in number.group())
    if len(tall) < count:
        return text, marks
    end = np.sort(tall.x1)[count - 1]
    return number.group(), marks.take(marks.x1 <= end)


def points_seen(marks: Marks, text: str, glyph: float) -> bool:
    """Whether the ink shows each digit of a reading, and a point or comma just where one was read and nowhere else."""
    numeric = [(token, own) for token, own in _tokens(marks, text) if _numeric(token)]
    return bool(numeric) and all(_shows_points(token, own, glyph) for token, own in numeric)


def _shows_points(token: str, marks: Marks, glyph: float) -> bool:
    height = float(marks.height.max(initial=0))
    tall = marks.take(marks.height >= WHOLE * height)
    if height < 0.5 * glyph or len(tall) != sum(character in DIGITS for character in token):
        return False
    small = marks.take((marks.height < WHOLE * height) & (marks.area >= LEAST_POINT * glyph * glyph))
    low = small.top > float(np.median(tall.bottom)) - LOW * height
    middle = (tall.x0 + tall.x1) / 2
    places = [int(np.count_nonzero(middle < x)) for x in ((small.x0 + small.x1) / 2).tolist()]
    wanted = [sum(c in DIGITS for c in token[:at]) for at, character in enumerate(token) if character in SEPARATORS]
    return bool(low.all()) and sorted(places) == wanted


def _steps(text: str, marks: Marks, height: float) -> dict[int, tuple[float, ...]] | None:
    """From the middle of one digit to that of the next: 1 where nothing was read between them, 2 where one sign was."""
    digits = [at for at, character in enumerate(text) if character in DIGITS]
    signs = any(character in DASHES + SIGNS for character in text)
    tall = marks.take(marks.height >= WHOLE * height)
    points = len(marks) - len(tall)  # those too large to be specks
    if signs or len(tall) != len(digits) or points > len(text) - len(digits):
        return None
    middle = (tall.x0 + tall.x1) / 2
    pairs = list(zip(digits, digits[1:], np.diff(middle).tolist(), strict=False))
    return {n: tuple(step / height for left, right, step in pairs if right == left + n) for n in (1, 2)}


def _without_sign(token: str, marks: Marks) -> tuple[str, Marks]:
    """A figure without the sign before it: between the two there may be a space that is no lost point."""
    if len(token) < 2 or token[0] not in SIGNS or not len(marks):
        return token, marks
    return token[1:], marks.take(marks.x0 >= marks.x1[0])


def _ends(token: str, marks: Marks, glyph: float) -> list[tuple[str, Marks]]:
    """A range as its two ends, where its dash is to be seen; anything else as it is."""
    ends = token[0] + token[1:].translate(DASH_TO_SPACE)
    if " " not in ends.strip():
        return [(token, marks)]
    flat = np.flatnonzero((marks.height <= 0.3 * glyph) & (marks.width >= 0.2 * glyph))
    flat = flat[(flat > 0) & (flat < len(marks) - 1)]
    parts = ends.split(" ")
    if len(flat) != 1 or len(parts) != 2:
        return []
    middle = int(flat[0])
    return [(parts[0], marks.take(np.arange(middle))), (parts[1], marks.take(np.arange(middle + 1, len(marks))))]


def unread_points(marks: Marks, text: str, glyph: float) -> bool:
    """Whether more points stand at the foot of a figure's digits than were read in it."""
    if not _numeric("".join(text.split())):
        return False
    small = (np.maximum(marks.width, marks.height) <= POINT * glyph) & (marks.area >= LEAST_POINT * glyph * glyph)
    digits = marks.take(marks.height >= 0.6 * glyph)
    if not len(digits):
        return False
    foot = float(np.median(digits.bottom))
    points = marks.take(small)
    middle = (points.x0 + points.x1) / 2
    within = (middle > digits.x0.min()) & (middle < digits.x1.max())
    at_foot = np.abs(points.bottom - foot) <= FOOT * glyph
    beside = ~((middle[:, None] > digits.x0 + 1) & (middle[:, None] < digits.x1 - 1)).any(axis=1)
    read = sum(character in SEPARATORS for character in text)
    return int(np.count_nonzero(within & at_foot & beside)) > read


def too_wide(cells: Sequence[Sequence[Piece]]) -> list[bool]:
    """For each cell: is one of its pieces wider than its characters are on this page?"""
    flat = [piece for cell in cells for piece in cell]
    if len(flat) < LEAST_FIGURES:
        return [False] * len(cells)
    usual = [min(piece.steps) for piece in flat if piece.steps and len(piece.steps) > 1]
    step = float(np.median(usual)) if len(usual) >= LEAST_FIGURES else None
    wide = np.zeros(len(flat), dtype=bool)
    for own in _by_size(flat):
        wide[own] = _wide_of([flat[index] for index in own.tolist()], step)
    ends = np.cumsum([len(cell) for cell in cells])
    return [bool(wide[end - len(cell) : end].any()) for cell, end in zip(cells, ends, strict=True)]


def _by_size(flat: Sequence[Piece]) -> list[NDArray[np.int64]]:
    """The pieces of each size of print with enough of them to learn from (large print is often bold), and the rest."""
    heights = np.array([piece.height for piece in flat], dtype=float)
    groups = [np.flatnonzero(own) for own in _sizes(heights)]
    large = [group for group in groups if len(group) >= OWN_WIDTHS]
    rest = np.setdiff1d(np.arange(len(flat)), np.concatenate(large)) if large else np.arange(len(flat))
    if len(rest) < LEAST_FIGURES:  # too few to be told from: they are measured with all others
        return [np.arange(len(flat))] if not large else [*large[:-1], np.concatenate([large[-1], rest])]
    return [*large, rest]


def _wide_of(flat: Sequence[Piece], step: float | None) -> Mask:
    """Which pieces of one kind of print are too wide; ``step`` is the usual distance of two digits on the page."""
    surplus, point = surpluses(flat)
    spread = 1.4826 * float(np.median(np.abs(surplus - np.median(surplus))))
    low, high = max(LEAST_SURPLUS, SURPLUS * point), max(LEAST_SURPLUS, MOST_SURPLUS * point)
    limit = min(max(low, 3.0 * spread), high)
    # Bold type and type of one width for all signs are wide, too; there the digits stand evenly.
    even = np.array([_stands_evenly(piece, step) for piece in flat])
    found: Mask = ((surplus > limit) & ~even) | np.array([_has_gap(piece, step) for piece in flat])
    return found


def _stands_evenly(piece: Piece, usual: float | None) -> bool:
    """Whether every mark is a digit that was read and none stands farther from the next, as over a lost point."""
    if piece.steps is None:
        return False
    if not piece.steps:
        return _is_pointed(piece)
    # Two digits have one step, which nothing can be compared with where a point may be lost in it.
    if max(piece.steps) > EVEN * min(piece.steps) or (len(piece.steps) < 2 and not _is_pointed(piece)):
        return False
    if piece.over and max(piece.steps) <= SHORTER * min(piece.over):
        return True
    return usual is not None and max(piece.steps) <= EVEN * usual


def _has_gap(piece: Piece, usual: float | None) -> bool:
    """Whether two digits, with nothing read between them, stand farther apart than others of the figure or page."""
    if not piece.steps or _is_pointed(piece):
        return False
    least = min(piece.steps) if len(piece.steps) > 1 else usual
    most = GAP_BESIDE_ONE if "1" in piece.text else GAP
    return least is not None and max(piece.steps) > most * least


def _is_pointed(piece: Piece) -> bool:
    return any(character in SEPARATORS for character in piece.text)


def surpluses(flat: Sequence[Piece]) -> tuple[Floats, float]:
    """How much wider each piece is than its characters, and the width of a point, in heights of a digit."""
    heights = np.array([piece.height for piece in flat], dtype=float)
    heights = _print_sizes(heights)
    widths = np.array([piece.width for piece in flat]) / heights
    counts = np.array([_counts(piece.text) for piece in flat])
    advance = _learnt(counts, widths)
    return widths - counts @ advance, float(advance[1])


def _print_sizes(heights: Floats) -> Floats:
    """The middle height of each piece's size of print: surer than one piece's own, which is off by a pixel."""
    usual = float(np.median(heights))
    sizes = np.where(np.abs(heights - usual) <= SAME_SIZE * usual, usual, heights)
    for own in _sizes(heights):
        if np.count_nonzero(own) >= LEAST_FIGURES:
            sizes[own] = np.median(heights[own])
    return sizes


def _sizes(heights: Floats) -> list[Mask]:
    """Which pieces have each size of print: sizes that nothing lies between are two."""
    steps = np.sort(heights)
    bounds = [*steps[:-1][np.diff(steps) > SIZE_STEP * steps[:-1]], steps[-1]]
    return [(heights > low) & (heights <= high) for low, high in zip([0.0, *bounds[:-1]], bounds, strict=True)]


def _learnt(counts: Floats, widths: Floats) -> Floats:
    """Least squares held near the expectation, from the narrower pieces: what was lost makes a piece wider only."""
    ratio = widths / np.maximum(counts @ EXPECTED, 0.3)
    expected = EXPECTED * float(np.percentile(ratio, NARROW))
    advance: Floats = expected
    for _ in range(4):
        surplus = widths - counts @ advance
        keep = (surplus <= 0.12) & (surplus >= -0.35)
        a, b = counts[keep], widths[keep]
        pull = STIFFNESS * np.eye(len(EXPECTED))
        advance = np.asarray(np.linalg.solve(a.T @ a + pull, a.T @ b + pull @ expected), dtype=np.float64)
    return advance


def _numeric(token: str) -> bool:
    known = DIGITS + SEPARATORS + DASHES + SIGNS
    figure = all(character in known for character in token) and any(character in DIGITS for character in token)
    return figure and not any(character in DASHES for character in token[1:])


def _counts(token: str) -> list[float]:
    def count(kind: str) -> float:
        return float(sum(character in kind for character in token))

    ends = float((token[0] == "1") + (token[-1] == "1"))
    return [count(DIGITS), count(SEPARATORS), count(DASHES), count(SIGNS), ends, count("1") - ends, 1.0]
