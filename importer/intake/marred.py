"""Which words of a page cannot be taken as they stand: crossed out, or printed over another text."""

from __future__ import annotations

from bisect import bisect_left
from collections.abc import Sequence
from itertools import pairwise

from importer.words import Box, Marred, Word

Stroke = tuple[float, float, float, float]
"""A straight line from (x, y) to (x, y), points from the top left of the upright page."""

STRUCK = "It is crossed out on the sheet."
OVERPRINTED = "Another text is printed in the same place."

# A line through this part of a word's height crosses it out; below runs an underline, above the rule of a table.
UPPER, LOWER = 0.3, 0.68
# So much of the width of a word has to be crossed.
CROSSED_SHARE = 0.7
# A line so many times as steep as flat runs past the words, as an edge or a bracket does.
STEEPEST = 1.2
# Two words that share so much of the smaller one's area lie on each other.
SHARED_AREA = 0.3
# Height of the bands of a page (points) in which words are compared; two sets of bands, half a band apart.
BAND = 10


def marred_words(
    words: Sequence[Word], hidden: Sequence[Word], rules: Sequence[Box], strokes: Sequence[Stroke]
) -> tuple[Marred, ...]:
    """The words that a level rule or a slanting stroke runs through, and those that lie on another text.

    What lies under a word matters even where it cannot be seen: of two letters in one place a text layer may give one.
    """
    struck = [Marred(word.box, STRUCK) for word in _struck(words, rules, strokes)]
    return (*struck, *(Marred(word.box, OVERPRINTED) for word in _overprinted(words, hidden)))


def _struck(words: Sequence[Word], rules: Sequence[Box], strokes: Sequence[Stroke]) -> list[Word]:
    level = sorted((r.middle, r.x0, r.x1) for r in rules if r.width > 3 and r.width > r.height)
    heights = [y for y, _, _ in level]
    slanting = [_leftmost_first(stroke) for stroke in strokes]
    found: list[Word] = []
    for word in words:
        high = word.bottom - word.top
        within = slice(bisect_left(heights, word.top + UPPER * high), bisect_left(heights, word.top + LOWER * high))
        lines = [(x0, y, x1, y) for y, x0, x1 in level[within]] + slanting
        if any(_crosses(line, word) for line in lines):
            found.append(word)
    return found


def _leftmost_first(stroke: Stroke) -> Stroke:
    x0, y0, x1, y1 = stroke
    return stroke if x0 <= x1 else (x1, y1, x0, y0)


def _crosses(line: Stroke, word: Word) -> bool:
    x0, y0, x1, y1 = line
    if min(y0, y1) > word.bottom or max(y0, y1) < word.top or abs(y1 - y0) > STEEPEST * (x1 - x0):
        return False
    left, right = max(x0, word.x0), min(x1, word.x1)
    if right <= left or right - left < CROSSED_SHARE * (word.x1 - word.x0):
        return False
    middle = y0 + (y1 - y0) * ((left + right) / 2 - x0) / (x1 - x0)
    height = word.bottom - word.top
    return word.top + UPPER * height < middle < word.top + LOWER * height


def _overprinted(words: Sequence[Word], hidden: Sequence[Word]) -> list[Word]:
    """Words on another text. Of a line, sorted from left to right, only neighbours can lie on each other."""
    visible = set(words)
    found: dict[Word, None] = {}
    for shift in (0.0, BAND / 2):
        bands: dict[int, list[Word]] = {}
        for word in (*words, *hidden):
            bands.setdefault(int((word.top + word.bottom) / 2 + shift) // BAND, []).append(word)
        for band in bands.values():
            band.sort(key=lambda word: word.x0)
            for one, other in pairwise(band):
                if other.x0 < one.x1 and other.text != one.text and _on_each_other(one, other):
                    found.update(dict.fromkeys(word for word in (one, other) if word in visible))
    return list(found)


def _on_each_other(one: Word, other: Word) -> bool:
    wide = min(one.x1, other.x1) - max(one.x0, other.x0)
    high = min(one.bottom, other.bottom) - max(one.top, other.top)
    if wide <= 0 or high <= 0:
        return False
    smaller = min(one.box.width * one.box.height, other.box.width * other.box.height)
    return wide * high > SHARED_AREA * smaller
