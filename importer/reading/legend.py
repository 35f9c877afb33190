"""Columns that are only counted ("A", "B"; "Sample 1", "Sample 2"), and the legend that says which batch each is."""

from __future__ import annotations

import re
from collections.abc import Sequence
from itertools import pairwise

from importer.layout.lines import Line
from importer.layout.tables import Table
from importer.reading.dates import parse_date
from importer.vocabulary.batch_code import looks_like_batch
from importer.vocabulary.captions import header_caption
from importer.vocabulary.units import parse_unit

_COUNTED = re.compile(r"^(?P<stem>.*?)\s*(?P<count>[A-Z]|\d{1,2}|[IVX]{1,4})$")
# A batch number stands within so many words behind its name in a legend.
REACH = 4
_MARKS = ":=–—-.,;()[]"


def batches_by_head(table: Table, lines: Sequence[Line]) -> dict[str, str]:
    """The batch number of each counted head of a table; empty where the lines of the page do not say all of them."""
    heads = _counted_heads(table)
    counts = {count: head for head, count in heads.items()}
    found: dict[str, str] = {}
    for i, line in enumerate(lines):
        if i not in table.lines and i != table.head_line:
            for count, batch in _named(line.text.split(), counts).items():
                if found.setdefault(count, batch) != batch:
                    return {}
    if len(found) < len(counts) or len(set(found.values())) < len(found):
        return {}
    return {counts[count]: batch for count, batch in found.items()}


def _counted_heads(table: Table) -> dict[str, str]:
    """Heads that differ in a letter or number at their end only, each with that."""
    groups: dict[str, dict[str, str]] = {}
    for column in table.columns:
        match = _COUNTED.match(column.head.strip(" ().:#"))
        if match:
            groups.setdefault(match["stem"].casefold(), {})[column.head] = match["count"]
    best = max(groups.values(), key=len, default={})
    return best if len(best) > 1 and len(set(best.values())) == len(best) else {}


def _named(words: Sequence[str], counts: dict[str, str]) -> dict[str, str]:
    found: dict[str, str] = {}
    plain = [word.strip(_MARKS) for word in words]
    for at, word in enumerate(plain):
        if word not in counts or word in found:
            continue
        end = next((i for i in range(at + 1, len(plain)) if plain[i] in counts), len(plain))
        near = [later for later in plain[at + 1 : min(end, at + 1 + REACH)] if _is_number(later)]
        # Of two numbers with captions ("barley lot B7701, malt lot W1619") none is taken.
        named = {b for a, b in pairwise(plain[at:end]) if _is_number(b) and _is_batch_caption(a)}
        if near and len(named) < 2:
            found[word] = near[0]
    return found


def _is_number(text: str) -> bool:
    return looks_like_batch(text) and parse_date(text) is None and parse_unit(text) is None


def _is_batch_caption(text: str) -> bool:
    found = header_caption(text)
    return found is not None and found[0] == "batch"
