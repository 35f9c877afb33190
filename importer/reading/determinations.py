"""Columns of repeated determinations and of their mean, which is the result."""

from __future__ import annotations

import re
from collections.abc import Sequence

from importer.layout.tables import Table
from importer.layout.terms import Terms
from importer.reading.numbers import read_number
from importer.reading.values import split_value

# So many rows have to show that a column is the mean of the others.
LEAST_ROWS = 3
# Of a batch, a malt or a harvest in each column the mean is no result of this one.
_OTHER_SAMPLES = frozenset({"batch", "malt", "variety", "crop_year", "supplier", "customer", "quantity", "ignore"})
_INDEX = re.compile(r"[\s.(]*(?:\b|(?<=\b[Rr])(?=\d))(\d{1,2}|[a-d]|i{1,3}|iv)[.)]*$", re.IGNORECASE)
_COUNTED = re.compile(r"^(\d{1,2})(st|nd|rd|th|[.)ªº°]|er|ère|e|ème)?\s+", re.IGNORECASE)


def with_means_named(table: Table, roles: Sequence[tuple[str, ...]], terms: Terms) -> list[tuple[str, ...]]:
    """The roles of columns, with the mean of determinations as the result and those as nothing of their own."""
    single = [i for i, names in enumerate(roles) if names == ("value",)]
    means = [i for i, names in enumerate(roles) if names == ("typical",)]
    column = mean_column(table, single, means, terms) if not any("result" in names for names in roles) else None
    if column is None:
        return list(roles)
    named: dict[int, tuple[str, ...]] = {column: ("result",), **dict.fromkeys(single, ("determination",))}
    return [named.get(i, names) for i, names in enumerate(roles)]


def mean_column(table: Table, single: Sequence[int], means: Sequence[int], terms: Terms) -> int | None:
    """The column that holds the mean of the determinations in the columns ``single``; None where nothing shows it.

    The heads have to count the determinations of one kind ("Value 1", "Value 2"), and each row has to hold their mean
    as it is rounded.
    """
    if len(single) < 2 or len(means) != 1 or not _are_counted([table.columns[i].head for i in single], terms):
        return None
    rows = [row.cells for row in table.rows if row.has_value and means[0] in row.cells]
    shown = 0
    for cells in rows:
        found = is_mean(cells[means[0]].text, [cells[i].text if i in cells else "" for i in single])
        if found is False:
            return None
        shown += found is True
    return means[0] if shown >= LEAST_ROWS else None


def is_mean(text: str, others: Sequence[str]) -> bool | None:
    """Whether a number is the mean of others as it is rounded; None where it is no number."""
    mean = _decimal(text)
    if mean is None:
        return None
    numbers = [value[0] for other in others if (value := _decimal(other)) is not None]
    return len(numbers) == len(others) > 1 and abs(sum(numbers) / len(numbers) - mean[0]) <= 0.51 * 10 ** -mean[1]


def _are_counted(heads: Sequence[str], terms: Terms) -> bool:
    """True for heads that are alike but for a number, and name nothing that differs from sample to sample."""
    stems, numbers = [], set()
    for head in heads:
        text = " ".join(head.split())
        match = _INDEX.search(text) or _COUNTED.search(text)
        if match is None:
            return False
        stems.append((text[: match.start()] + text[match.end() :]).strip(" .:").casefold())
        numbers.add(match[1].casefold())
    alike = len(set(stems)) == 1 and len(numbers) == len(heads)
    return alike and terms.caption(stems[0]) not in _OTHER_SAMPLES


def _decimal(text: str) -> tuple[float, int] | None:
    """A number and its decimals."""
    number = read_number(split_value(text)[0], None)
    if number is None or number.kind != "number" or number.bound is not None or number.value is None:
        return None
    return number.value, number.decimals
