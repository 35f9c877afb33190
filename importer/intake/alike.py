"""Whether two readings of one place say the same."""

from __future__ import annotations

import re

SIGNED_NUMBER = re.compile(r"[<>≤≥-]?\s?(?<![\w.])\d+(?:\.\d+)*(?!\w)")
DASHES = str.maketrans(
    {
        "−": "-",
        "–": "-",
        "—": "-",
        "一": "-",
        ",": ".",
        "±": "+",
        "土": "+",
        "士": "+",
        "≦": "≤",
        "≧": "≥",
        "＜": "<",
        "＞": ">",
    }
)


def alike(one: str, other: str) -> bool:
    """The same characters but for spaces, the decimal sign and the kind of dash."""
    return bool(one) and plain(one) == plain(other)


def same_numbers(one: str, other: str) -> bool:
    """The same numbers with the same signs, beside a unit or other letters that may differ."""
    signed = SIGNED_NUMBER.findall(one.translate(DASHES))
    return bool(signed) and signed == SIGNED_NUMBER.findall(other.translate(DASHES))


def plain(text: str) -> str:
    return "".join(text.translate(DASHES).split())
