"""Captions that optical reading has damaged ("8atch N0.", "Herstel1ungsdatum")."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from functools import cache

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


_Shape = tuple[str, str, str]
"""A known caption, its skeleton and its entry."""


@dataclass(frozen=True, slots=True)
class _Shapes:
    """``keys``: entries by skeleton, "" where two share one.

    ``near``: certain captions by number of words, first letter and letters of the skeleton, for a search among few.
    ``words``: all words that captions are made of; none of them is a misprint of another ("ontvangen", "ontvanger").
    """

    keys: dict[str, str]
    near: dict[tuple[int, str, int], list[_Shape]]
    words: frozenset[str]


@cache
def _shapes() -> _Shapes:
    table = caption_table()
    keys: dict[str, str] = {}
    near: dict[tuple[int, str, int], list[_Shape]] = {}
    for worded, key in table.worded.items():
        skeleton = _skeleton(worded)
        keys[skeleton] = key if keys.get(skeleton, key) == key else ""
        if worded not in table.doubtful_worded:
            gaps = skeleton.count(" ")
            place = (gaps + 1, skeleton[:1], len(skeleton) - gaps)
            near.setdefault(place, []).append((worded, skeleton, key))
    words = {word for worded in (*table.worded, *table.doubtful_worded) for word in worded.split()}
    return _Shapes(keys, near, frozenset(words.union(table.events, *table.beside.values())))


def misspelt_caption(words: list[str]) -> tuple[str, float] | None:
    """A caption that optical reading has damaged: the same but for letters that look alike, or close to one entry."""
    if len(words) > 5 or sum(len(word) for word in words) < 5 or all(word.isdigit() for word in words):
        return None
    skeletons = [_skeleton(word) for word in words]
    known = _shapes()
    key = known.keys.get(" ".join(skeletons))
    if key:
        return key, LOOKALIKE
    length = sum(map(len, skeletons))
    scored: dict[str, float] = {}
    slack = min(len(words), 2)
    for near in range(length - slack, length + slack + 1):
        for shape in known.near.get((len(words), skeletons[0][:1], near), ()):
            score = _closeness(words, skeletons, shape, known.words)
            if score > scored.get(shape[2], 0.0):
                scored[shape[2]] = score
    ranked = sorted(scored.items(), key=lambda item: -item[1])
    if not ranked or ranked[0][1] < FUZZY_FROM or (len(ranked) > 1 and ranked[0][1] - ranked[1][1] < FUZZY_MARGIN):
        return None
    return ranked[0][0], round(min(ranked[0][1], 95.0), 1)


@cache
def _ratio() -> Callable[..., float]:
    # Loaded at the first need: sheets with a text layer are often read without it.
    from rapidfuzz import fuzz

    return fuzz.ratio


def _closeness(words: list[str], skeletons: list[str], shape: _Shape, known: frozenset[str]) -> float:
    """How alike two captions of equally many words are, 0 to 100; 0 where a short or known word or a length differs."""
    total = weight = 0.0
    for word, skeleton, other, bare in zip(words, skeletons, shape[0].split(), shape[1].split(), strict=True):
        if word == other:
            score = 100.0
        elif word in known or min(len(word), len(other)) <= SHORT + 1 or abs(len(word) - len(other)) > 1:
            return 0.0
        else:
            # A letter may be read as another one, or be lost; both at once make another word of it.
            lost = 200.0 * min(len(skeleton), len(bare)) / (len(skeleton) + len(bare)) - 0.1
            score = _ratio()(skeleton, bare, score_cutoff=max(82.0, lost if len(skeleton) != len(bare) else 0.0))
            if not score:
                return 0.0
        total += score * len(other)
        weight += len(other)
    return total / weight
