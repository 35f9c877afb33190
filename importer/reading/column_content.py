"""What the cells of a column hold, whatever its head says."""

from __future__ import annotations

import re
from collections.abc import Callable, Sequence
from itertools import pairwise

from importer.layout.tables import Table
from importer.layout.terms import Terms

_METHOD = re.compile(
    r"(\d+\.\d+(\.\d+)+|\b(EBC|MEBAK|IoB|IOB|ASBC|ISO|R-\d{3}|Malt-\d+|Wort-\d+|Analytica)\b)", re.IGNORECASE
)
# "min. 81.0 %" is a limit, not minutes.
_BOUNDED = re.compile(r"\s*(?:[<>≤≥]|(?:max|min)[^\W\d]*\.?)\s*\d", re.IGNORECASE)
_COUNT = re.compile(r"(\d+(?:\.\d+)*)[.)]?(?:\s+[^\W\d].*)?")
Test = Callable[[str], bool]


def share_of(table: Table, column: int, test: Test) -> float:
    """The share of the filled cells of a column that pass a test."""
    texts = [row.cells[column].text for row in table.rows if row.has_value and column in row.cells]
    if not texts:
        return 0.0
    return sum(bool(test(text)) for text in texts) / len(texts)


def content_role(table: Table, column: int, terms: Terms) -> str:
    """What a column holds by its cells alone: "unit", "label", "number", "method", "value", "text" or "empty"."""
    texts = [row.cells[column].text for row in table.rows if row.has_value and column in row.cells]
    if not texts:
        return "empty"
    total = len(texts)

    def share(hits: int) -> bool:
        return hits >= 0.5 * total

    if share(sum(terms.is_unit(text) and not _BOUNDED.match(text) for text in texts)):
        return "unit"
    if share(sum(terms.is_label(text) for text in texts)):
        return "label"
    if column == 0 and total > 2 and _is_count(texts):
        return "number"
    if column == 0 and total > 4 and _is_outline(texts):
        return "number"
    # "4.2 EBC" is a value.
    if share(sum(bool(_METHOD.search(t)) and (terms.is_method(t) or not terms.is_value(t)) for t in texts)):
        return "method"
    if share(sum(terms.is_value(text) for text in texts)):
        return "value"
    return "text"


def _is_count(texts: Sequence[str]) -> bool:
    """True for a column of row numbers."""
    numbers = [int(text.strip(".):")) for text in texts if text.strip(".):").isdigit()]
    return len(numbers) >= 0.8 * len(texts) and all(b > a for a, b in pairwise(numbers))


def _is_outline(texts: Sequence[str]) -> bool:
    """True for a column of numbers of paragraphs ("1.1", "1.2", "2.1")."""
    numbers = [tuple(map(int, text.split("."))) for text in texts if re.fullmatch(r"\d{1,2}\.\d{1,2}", text)]
    return len(numbers) >= 0.9 * len(texts) and all(b > a for a, b in pairwise(numbers))


def counts_rows(table: Table, column: int) -> bool:
    """True for a column of numbers of rows or sections ("3.1", "3.2", "4 Wort"), which only ever rise."""
    found = [_COUNT.fullmatch(row.cells[column].text.strip()) for row in table.rows if column in row.cells]
    numbers = [tuple(map(int, match[1].split("."))) for match in found if match is not None]
    return len(numbers) == len(found) and all(one < other for one, other in pairwise(numbers))


def may_hold_names(table: Table, column: int, terms: Terms) -> bool:
    """True for a first column of words, some of them names, below "Batch no.", which heads the numbers to its right."""
    numbered = column == 0 and table.columns[0].roles == ("number",)
    return numbered and content_role(table, 0, terms) == "text" and share_of(table, 0, terms.is_label) > 0
