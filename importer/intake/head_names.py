"""Where the head of a scanned page names maltsters, malts and customers: places worth a second reading.

The main reader is sure of most letters, and sure of some that are wrong. A figure gets its second reading because it
has digits; a name gets one because a caption stands before it, or because it holds a word that names of the trade have.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import pairwise

import numpy as np

from importer.intake.ocr import Seen
from importer.intake.prepare.ink import Marks
from importer.vocabulary.captions import header_caption
from importer.vocabulary.malt_names import fold, has_legal_form, has_word, name_words, names_malt
from importer.words import Box

NAMED = frozenset({"supplier", "malt", "variety", "customer"})
# Scores of captions: for one that stands alone ("Malt"), and for words at the start of a text.
ALONE, WITHIN = 60.0, 82.0
LONGEST_CAPTION = 4  # words
HEAD = 0.5  # of the page's height, from its top
GAP = 1.3  # times the height of a line: so far apart words are of different texts
REACH = 30.0  # times the height of a line, from a caption to its entry
BELOW = 4.0  # times the height of a line, from the middle of a caption to that of the entry under it
SPACE = 0.9  # times the height of a name: a space in it is not wider
TALLEST = 1.6  # times the height of a name: no letter of it is taller
MOST_WORDS = 8  # longer texts are sentences
MOST_PLACES = 8

Run = tuple[Seen, ...]


def name_places(words: Sequence[Seen], height: float, marks: Marks, known: Sequence[Box] = ()) -> list[Box]:
    """The places of names in the head of a page so high, those with captions first; there are few on any page.

    Each takes in the ink close beside it, which the main reader may have lost. What lies in ``known`` is left out.
    """
    lines = [list(_runs(line)) for line in _lines([word for word in words if word.bottom < HEAD * height])]
    captioned: list[Run] = []
    alone: list[Run] = []
    for number, line in enumerate(lines):
        for at, run in enumerate(line):
            if len(run) > MOST_WORDS:
                continue
            length = _caption_length(run)
            if length == len(run):
                captioned += _entries(run, line[at + 1 :], lines[number + 1 :])
            elif length:
                captioned.append(run[length:])
            elif _names(" ".join(word.text for word in run)):
                alone.append(run)
    places = dict.fromkeys(_box(run) for run in (*captioned, *alone) if any(c.isalpha() for w in run for c in w.text))
    new = [box for box in places if not any(_covers(other, box) for other in known)]
    return [_with_ink_beside(box, marks) for box in new[:MOST_PLACES]]


def _covers(other: Box, box: Box) -> bool:
    slack = 0.5 * box.height
    return other.x0 - slack < box.x0 and box.x1 < other.x1 + slack and other.top < box.middle < other.bottom


def _with_ink_beside(box: Box, marks: Marks) -> Box:
    """The box with the marks of its line that no wide gap parts from it."""
    middle = (marks.top + marks.bottom) / 2
    level = marks.take((middle > box.top) & (middle < box.bottom) & (marks.height < TALLEST * box.height))
    left, right = box.x0, box.x1
    for x0, x1 in sorted(zip(level.x0.tolist(), level.x1.tolist(), strict=True)):
        right = max(right, x1) if x0 < right + SPACE * box.height and x1 > left else right
    for x1, x0 in sorted(zip(level.x1.tolist(), level.x0.tolist(), strict=True), reverse=True):
        left = min(left, x0) if x1 > left - SPACE * box.height and x0 < right else left
    near = level.take((level.x0 >= left) & (level.x1 <= right))
    if not len(near):
        return box
    return Box(left, min(box.top, float(np.min(near.top))), right, max(box.bottom, float(np.max(near.bottom))))


def _lines(words: Sequence[Seen]) -> list[list[Seen]]:
    lines: list[list[Seen]] = []
    for word in sorted(words, key=lambda word: word.top + word.bottom):
        middle = (word.top + word.bottom) / 2
        if lines and any(other.top < middle < other.bottom for other in lines[-1]):
            lines[-1].append(word)
        else:
            lines.append([word])
    return [sorted(line, key=lambda word: word.x0) for line in lines]


def _runs(line: Sequence[Seen]) -> Iterator[Run]:
    """The texts of a line: words with no wide gap between them, and none that a colon ends before."""
    start = 0
    for at, (before, word) in enumerate(pairwise(line), start=1):
        if word.x0 - before.x1 > GAP * max(_height(before), _height(word)):
            yield tuple(line[start:at])
            start = at
    yield tuple(line[start:])


def _caption_length(run: Run) -> int:
    """How many words at the start of a text are the caption of a name; 0 for none."""
    colon = next((at for at, word in enumerate(run[:LONGEST_CAPTION], start=1) if word.text.endswith(":")), None)
    lengths = [colon] if colon else [n for n in (len(run), 1, 2, 3) if n <= min(len(run), LONGEST_CAPTION)]
    for length in lengths:
        found = header_caption(" ".join(word.text for word in run[:length]))
        if found is not None and found[0] in NAMED and found[1] >= (ALONE if length == len(run) else WITHIN):
            return length
    return 0


def _entries(caption: Run, beside: Sequence[Run], lower: Sequence[Sequence[Run]]) -> Iterator[Run]:
    """The text to the right of a caption that stands alone, and the one below it."""
    high = max(map(_height, caption))
    own = _box(caption)
    if (
        beside
        and beside[0][0].x0 - own.x1 < REACH * high
        and len(beside[0]) <= MOST_WORDS
        and not _is_caption(beside[0])
    ):
        yield beside[0]
        return
    for line in lower[:2]:
        for run in line:
            box = _box(run)
            near = 0 < box.middle - own.middle < BELOW * high
            if near and box.x0 < own.x1 and box.x1 > own.x0 and len(run) <= MOST_WORDS:
                yield run
                return


def _is_caption(run: Run) -> bool:
    return header_caption(" ".join(word.text for word in run)) is not None


def _names(text: str) -> bool:
    """Whether a text holds a word that names of maltsters and malts have, and none of a title."""
    folded = fold(text)
    if any(character.isdigit() for character in text):
        return False
    if any(word in folded for word in name_words().maltsters) or has_legal_form(text):
        return True
    return names_malt(text) and not has_word(folded, name_words().not_malts)


def _height(word: Seen) -> float:
    return word.bottom - word.top


def _box(run: Run) -> Box:
    return Box(run[0].x0, min(word.top for word in run), run[-1].x1, max(word.bottom for word in run))
