"""Whether a text can be a batch number."""

from __future__ import annotations

import re
from functools import lru_cache

from importer.vocabulary.header_captions import exact_caption
from importer.vocabulary.units import parse_unit

SHORTEST, LONGEST = 3, 40
_MOST_PARTS = 5
_CODE = re.compile(r"[\w./\\+#:()_-]+$")
_DATE = re.compile(
    r"(?:\d{1,2}[./-]\d{1,2}[./-](?:\d{2}|\d{4})|(?:19|20)\d\d[./-]\d{1,2}(?:[./-]\d{1,2})?|\d{1,2}[./-](?:19|20)\d\d"
    r"|\d{1,2}[. -]*[^\W\d_]{3,10}[. -]*(?:19|20)\d\d|[^\W\d_]{3,10}[. -]*(?:19|20)\d\d)$"
)
_DATE_INSIDE = re.compile(r"\b\d{1,2}[./-]\d{1,2}[./-](?:19|20)\d\d\b|\b(?:19|20)\d\d-\d\d-\d\d\b")
_FIGURE_BEHIND = re.compile(r"[^\d]+\s\d+[.,]\d{1,2}$")
# Alone or beside a word ("2024 Result", "Result (2024)"), and quarters of a year.
_YEAR = re.compile(
    r"(?:[^\W\d_]{3,}\s+)?\(?(?:Q[1-4][\s/-]?)?(?:19|20)\d\d(?:/(?:\d\d|(?:19|20)\d\d))?\)?(?:\s+[^\W\d_]{3,})?$"
)
_DECIMAL = re.compile(r"[<>≤≥~±+-]?\s?\d+(?:[.,]\d+)?\s?%?$|[<>≤≥±%€$£°]")
_RANGE = re.compile(r"(\d+)\s?[-–]\s?(\d+)$")
_PHONE = re.compile(r"(?:\+|00)\d[\d\s()/.-]{6,}$|\(?0\d{1,5}\)?[\s/-]\d[\d\s/-]{4,}$")
_METHOD = re.compile(
    r"\b(?:EBC|IoB|IOB|ASBC|MEBAK|ISO|DIN|EN|AOAC|ICC|NEN|ČSN|STN|GOST|ГОСТ|Malt-\d+|Wort-\d+)\b|^R-\d{3}\."
)
# "4.5.1", "EBC4.9.1", "B-400.08.080": a method where no caption says that it is a batch.
_BARE_METHOD = re.compile(
    r"(?:EBC|MEBAK|ASBC|IoB|IOB)?[ -]?\d(?:\.\d{1,2}){2,3}[A-Za-z]?(?::\d{4})?|[A-Z]-\d{3}\.\d{2}\.\d{3}"
)
_SIZE = re.compile(r"\d\s?(?:mm|cm|kg|g|mg|ml|l|t|h|min|EUR|USD|GBP|in|°C)\b|\d/64", re.IGNORECASE)
_WORDS = re.compile(r"[^\W\d_]+")
_LONGEST_WORD = 5


@lru_cache(maxsize=4096)
def looks_like_batch(text: str) -> bool:
    """True for codes such as "24-0815", "L2405A", "PM 2411/03"; not for dates, years, figures, sizes, telephones.

    "Batch 24-0815" and "Lot L2405" are taken with their caption.
    """
    if len(text) > 2 * LONGEST or not any(mark.isdigit() for mark in text):
        return False
    body = _without_caption(text.strip().strip(".,;:*"))
    digits = sum(mark.isdigit() for mark in body)
    if not SHORTEST <= len(body) <= LONGEST or digits < 2 or len(body.split()) > _MOST_PARTS:
        return False
    if _DATE.match(body) or _YEAR.match(body) or _PHONE.match(body) or _METHOD.search(body) or _SIZE.search(body):
        return False
    if body == text.strip().strip(".,;:*") and _BARE_METHOD.fullmatch(re.split(r"\s*[/;+]\s*", body.strip("() "))[0]):
        return False
    if _FIGURE_BEHIND.match(body) or not any(mark.isdigit() for mark in _DATE_INSIDE.sub("", body)):
        return False
    if body.isdigit():
        return digits >= 4
    if _DECIMAL.match(body) or "%" in body or "°" in body or _is_range(body) or _is_figures(body):
        return False
    parts = body.split()
    if not all(_CODE.match(part) for part in parts) or not any(mark.isdigit() for mark in parts[-1] + parts[0]):
        return False
    return _reads_as_code(body, digits) and parse_unit(body) is None


def _without_caption(body: str) -> str:
    """ "Batch no. 24-0815" without the caption before it."""
    if not body[:1].isalpha():
        return body
    for match in re.finditer(r"[\s:]+", body):
        rest = body[match.end() :]
        found = exact_caption(body[: match.start()])
        if found and found[0] == "batch" and any(mark.isdigit() for mark in rest):
            return _without_caption(rest)
    return body


def _is_range(body: str) -> bool:
    """ "380-420" is a range; "24-1815" and "2405-01" are not."""
    match = _RANGE.match(body)
    if not match:
        return False
    low, high = match[1], match[2]
    plain = not (len(low) > 1 and low[0] == "0") and not (len(high) > 1 and high[0] == "0")
    return plain and len(high) - len(low) in (0, 1) and int(low) <= int(high) and len(high) <= 4


_FIGURES = re.compile(
    r"\d+(?:[.,]\d+)?(?:\s*[/;–-]\s*\d+[.,]\d+)+$|\d+[.,]\d+\s*[/;–-]\s*\d+$|\d+(?:\s+/\s+\d+)+$"
    r"|\d{1,3}(?:[ .,']\d{3})+$"
)


def _is_figures(body: str) -> bool:
    return bool(_FIGURES.match(body))


def _reads_as_code(body: str, digits: int) -> bool:
    """Digits with at most short words beside them; a longer word has to share its part with digits."""
    words = _WORDS.findall(body)
    long_words = [word for word in words if len(word) > _LONGEST_WORD]
    if long_words:
        return digits >= 4 and len(long_words) == 1 and len(body.split()) <= 2
    if not words:
        return digits >= 3
    apart = [part for part in body.split() if not any(mark.isdigit() for mark in part)]
    if apart and digits < 3:
        return False
    return digits >= 3 or (len(body) >= 4 and not apart and body.upper() == body)


def holds_several(text: str) -> bool:
    """True for numbers of one shape side by side ("BF-9001 BF-8987"): those of several batches, and of none."""
    shapes = [re.sub(r"\d", "9", word) for word in text.split() if looks_like_batch(word)]
    return len(set(shapes)) < len(shapes)
