"""A number at the end of a label that belongs to no wording: it may be the result, and the one behind it a limit."""

from __future__ import annotations

import re
from collections.abc import Collection, Sequence

from importer.meaning.possible import possible_range, within_possible
from importer.vocabulary.text import Token

# Signs and one unknown word that may stand between two values ("10.5 / 11.5", "86 of 100").
_BETWEEN = frozenset("/|:;=–%")
# What makes a number a limit, a range or a product ("< 5.0", "N x 6.25").
_BOUND = frozenset("<>≤≥±+–x*")
_DECIMAL = re.compile(r"\d+(?:\.\d+)?")
_RANGE = re.compile(r"\d\s*[-–]\s*\d[\d.,]*\W*$")


def number_left(text: str, found: Sequence[Token], explained: Collection[int]) -> str:
    """The last number of a label where nothing of the label follows it; "" where a size or the like ends it.

    ``explained`` are the tokens that wordings and sizes took. A single digit with nothing behind it counts footnotes.
    """
    last = next((i for i in reversed(range(len(found))) if found[i].kind == "number"), 0)
    behind = found[last + 1 :]
    if last == 0 or last in explained or found[last - 1].raw in _BOUND or _RANGE.search(text):
        return ""
    words = [i for i in range(last + 1, len(found)) if found[i].kind == "word"]
    if len(words) > 1 or any(i in explained for i in words):
        return ""
    if any(token.kind != "word" and token.raw not in _BETWEEN for token in behind):
        return ""
    return found[last].text if behind or len(found[last].text) > 1 else ""


def may_be_result(text: str, parameter: str, unit: str | None) -> bool:
    """True for a number that the parameter can have in this unit."""
    if unit is None or not _DECIMAL.fullmatch(text) or possible_range(parameter, unit) is None:
        return False
    return within_possible(parameter, unit, float(text))
