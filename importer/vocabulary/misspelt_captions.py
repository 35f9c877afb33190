"""Captions that optical reading has damaged ("8atch N0.", "Herstel1ungsdatum")."""

from __future__ import annotations

from collections.abc import Callable
from functools import cache
from typing import NamedTuple

from importer.vocabulary.caption_words import caption_table

FUZZY_FROM, FUZZY_MARGIN = 86.0, 6.0
"""A misspelt caption must be this close to a known one, and this much closer than to any of another entry."""
LOOKALIKE = 90.0
"""Score of a caption that differs by nothing but letters that look alike."""
_LOOKALIKES = str.maketrans("01|!i5869$£€", "ollllsbbgsee")
_PAIRS = (("rn", "m"), ("vv", "w"), ("cl", "d"))
SHORT = 4
"""Letters: so short a word must be right, for one letter makes another word of it (lot, lost)."""


def _skeleton(text: str) -> str:
    """A text with the letters that optical reading confuses brought into one."""
    text = text.translate(_LOOKALIKES)
    for pair, single in _PAIRS:
        text = text.replace(pair, single)
    return text


@cache
def _skeletons() -> dict[str, str]:
    """Captions by the skeletons of their words; "" where two entries share one."""
    found: dict[str, str] = {}
    for worded, key in caption_table().worded.items():
        form = _skeleton(worded)
        found[form] = key if found.get(form, key) == key else ""
    return found


class _Shape(NamedTuple):
    """A known caption prepared for comparison: its words, the same as skeletons, and its entry."""

    words: tuple[str, ...]
    skeletons: tuple[str, ...]
    key: str


@cache
def _by_shape() -> dict[tuple[int, str, int], list[_Shape]]:
    """Certain captions by number of words, first letter of the skeleton and length, for a search among few."""
    table = caption_table()
    shapes: dict[tuple[int, str, int], list[_Shape]] = {}
    for worded, key in table.worded.items():
        if worded not in table.doubtful_worded:
            words = tuple(worded.split())
            skeletons = tuple(_skeleton(worded).split())
            shapes.setdefault((len(words), skeletons[0][:1], sum(map(len, skeletons))), []).append(
                _Shape(words, skeletons, key)
            )
    return shapes


def misspelt_caption(words: list[str]) -> tuple[str, float] | None:
    """A caption that optical reading has damaged: the same but for letters that look alike, or close to one entry."""
    if len(words) > 5 or sum(len(word) for word in words) < 5 or all(word.isdigit() for word in words):
        return None
    skeletons = [_skeleton(word) for word in words]
    key = _skeletons().get(" ".join(skeletons))
    if key:
        return key, LOOKALIKE
    shapes, length = _by_shape(), sum(map(len, skeletons))
    scored: dict[str, float] = {}
    slack = min(len(words), 2)
    for near in range(length - slack, length + slack + 1):
        for shape in shapes.get((len(words), skeletons[0][:1], near), ()):
            score = _closeness(words, skeletons, shape)
            if score > scored.get(shape.key, 0.0):
                scored[shape.key] = score
    ranked = sorted(scored.items(), key=lambda item: -item[1])
    if not ranked or ranked[0][1] < FUZZY_FROM or (len(ranked) > 1 and ranked[0][1] - ranked[1][1] < FUZZY_MARGIN):
        return None
    return ranked[0][0], round(min(ranked[0][1], 95.0), 1)


@cache
def _ratio() -> Callable[..., float]:
    # Loaded at the first need: sheets with a text layer are often read without it.
    from rapidfuzz import fuzz

    return fuzz.ratio


def _closeness(words: list[str], skeletons: list[str], shape: _Shape) -> float:
    """How alike two captions of equally many words are, 0 to 100; 0 where a short word or a length differs."""
    total = weight = 0.0
    for word, skeleton, other, bare in zip(words, skeletons, shape.words, shape.skeletons, strict=True):
        if word == other:
            score = 100.0
        elif min(len(word), len(other)) <= SHORT + 1 or abs(len(word) - len(other)) > 1:
            return 0.0
        else:
            score = _ratio()(skeleton, bare, score_cutoff=82)
            if not score:
                return 0.0
        total += score * len(other)
        weight += len(other)
    return total / weight
