"""What two spellings of a unit have in common: forms of them that can be looked up and compared."""

from __future__ import annotations

import re
import unicodedata
from functools import lru_cache

DEGREES = str.maketrans({"º": "°", "˚": "°", "ᵒ": "°", "⁰": "°", "∘": "°", "◦": "°", "ß": "ss"})
_DROPPED = str.maketrans("", "", " .,·*×∙•⋅()[]{}-_–—−‐‑\t\n‧")
PER = re.compile(r"(?<=[a-zа-я])\s*(?:\^\s*-?|[-−–‑])\s*([123])(?!\d)")
MARKED = re.compile(r"[-^−⁻–‑]")
_SPACE = re.compile(r"\s+")


def strict_key(text: str) -> str:
    """Folds case, width, degree signs and spaces only."""
    return _SPACE.sub("", unicodedata.normalize("NFKC", text.translate(DEGREES)).casefold())


@lru_cache(maxsize=8192)
def unit_key(text: str) -> str:
    """Folds all that does not tell units apart: case, accents, spaces, brackets, dots and multiplication signs."""
    plain = text.translate(DEGREES).casefold()
    if not plain.isascii():
        plain = unicodedata.normalize("NFKD", plain)
        plain = "".join(mark for mark in plain if not unicodedata.combining(mark)).replace("μ", "u").casefold()
    if MARKED.search(plain):
        plain = PER.sub(r"ⁿ\1", plain)
    return plain.translate(_DROPPED)


# Letters, digits and strokes that print alike, and the marks between the parts of a unit.
_ALIKE = str.maketrans(
    {**dict.fromkeys("|!1i/\\", "l"), "0": "o", "q": "g", "9": "g", "&": "%", **dict.fromkeys("-~:'=*+»«\"^?®", "")}
)


@lru_cache(maxsize=8192)
def shape(text: str) -> str:
    """What a unit looks like: one letter for all that optical reading takes for each other without more damage."""
    return unit_key(text).replace("ⁿ", "").translate(_ALIKE).replace("rn", "m")
