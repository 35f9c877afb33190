"""Which column of a table is what: labels, results, units, limits. From the heads first, from the content otherwise."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

from importer.layout.grid import Span
from importer.layout.tables import Table
from importer.layout.terms import Terms
from importer.models import Family
from importer.reading.column_content import Test, content_role, counts_rows, may_hold_names, share_of
from importer.reading.determinations import with_means_named
from importer.reading.limit_cells import is_signed, is_tolerance, limit_share, roles_but_brackets, unnamed_limits
from importer.reading.years import is_year
from importer.vocabulary.captions import basis_statement, sides_of

_LIMITS = frozenset({"spec", "min", "max", "typical", "previous"})
SEVERAL_RESULTS = "More than one column could hold the result, and no head says which."
SHIFTED = "Units stand under a head of results or limits; the heads do not belong to the columns below them."
NO_RESULT = "No value stands under the head of the results; it was found in another column."


@dataclass(frozen=True, slots=True)
class Panel:
    """Columns of one table that go together. ``results`` are (column, method family of the column or None).

    ``limits_only`` is true where the table has no result column but limits or typical values. ``doubt`` says why the
    result column is not sure, ``rivals`` are the other columns that could be it. ``sublabel`` is a column of words that
    go on with the labels left of it, where one label stands for several rows. ``tolerance`` is a column of "± 0.5"
    that goes on with the target in ``spec``.
    """

    label: int
    groups: tuple[int, ...]
    results: tuple[tuple[int, Family | None], ...]
    units: tuple[int, ...]
    method: int | None
    low: int | None
    high: int | None
    spec: int | None
    limits_only: bool = False
    doubt: str | None = None
    batches: bool = False
    rivals: tuple[int, ...] = ()
    sublabel: int | None = None
    tolerance: int | None = None


def find_panels(table: Table, terms: Terms, is_batch: Test, batch_spans: Sequence[Span] = ()) -> list[Panel]:
    """The panels of a table, left to right. ``batch_spans`` are the batch columns of a table above, which one without a
    head of its own goes on with."""
    roles = with_means_named(table, [_roles_of(table, i, terms) for i in range(len(table.columns))], terms)
    starts = [i for i, names in enumerate(roles) if "label" in names]
    if not starts:
        texts = [
            i for i, names in enumerate(roles) if names in (("text",), ("empty",)) or may_hold_names(table, i, terms)
        ]
        if not texts:
            return []
        starts = [texts[0]]
        roles[starts[0]] = ("label",)
    panels: list[Panel] = []
    bounds = _panel_bounds(starts, roles)
    for first, last in bounds:
        panel = _panel(table, roles, first, last, terms, is_batch, batch_spans)
        if panel is not None:
            panels.append(panel)
    if not table.headed and len(starts) > 1 and "value" in roles[0] and "label" in roles[-1]:
        # Values at the far left and names at the far right: each value may belong to the name behind it.
        return [replace(panel, doubt=panel.doubt or SEVERAL_RESULTS) for panel in panels]
    return panels


def _panel_bounds(starts: Sequence[int], roles: Sequence[tuple[str, ...]]) -> list[tuple[int, int]]:
    """Column ranges, one a panel: a second label column opens a panel if a value column lies between."""
    opened = [starts[0]]
    for start in starts[1:]:
        between = roles[opened[-1] + 1 : start]
        if any(_is_result(names) or "value" in names or "spec" in names for names in between):
            opened.append(start)
    bounds = []
    for i, start in enumerate(opened):
        end = opened[i + 1] if i + 1 < len(opened) else len(roles)
        bounds.append((0 if i == 0 else start, end))
    return bounds


def _is_result(names: tuple[str, ...]) -> bool:
    return "result" in names or any(name.startswith("family:") for name in names)


def _roles_of(table: Table, column: int, terms: Terms) -> tuple[str, ...]:
    names = roles_but_brackets(table, column, terms)
    content = content_role(table, column, terms)
    if names == ("method",) and content == "unit" and any("unit" in other.roles for other in table.columns):
        return names  # "EBC" down a column of methods
    # Units tell a column better than a head does: "U." is the uncertainty on one sheet and the unit on another.
    if not names or content == "unit":
        return (content,)
    if content == "label" and column == 0 and _is_result(names):
        # "Results by EBC" over the names.
        return ("label",)
    if names == ("label",) and content in ("value", "number"):
        return (content,)
    if content == "label" and set(names) <= {"number", "remark", "method", "precision", "date"}:
        # "Batch no." over the names heads the batch numbers to its right.
        return ("label",)
    if names == ("date",) and content == "value":
        # "Analysed" heads the result of some sheets and the day of others.
        return ("result",)
    # A family over a column of method numbers names the methods, not results.
    if any(name.startswith("family:") for name in names) and content == "method":
        return ("method",)
    if names == ("remark",) and content == "value" and share_of(table, column, is_signed) < 0.5:
        return ("value",)
    if "unit" in names and "result" not in names and content == "value":
        return ("result",)
    # "Contract limits", set over both of "from" and "to".
    head = table.columns[column].head
    end = terms.roles(head.split()[-1])
    return end if "spec" in names and end in (("min",), ("max",)) and len(set(sides_of(head))) == 1 else names


def _family(names: tuple[str, ...]) -> Family | None:
    for name in names:
        if name.startswith("family:"):
            return name.removeprefix("family:")  # type: ignore[return-value]
    return None


def _first(roles: Sequence[tuple[str, ...]], first: int, last: int, role: str) -> int | None:
    return next((i for i in range(first, last) if role in roles[i]), None)


def _panel(
    table: Table,
    roles: Sequence[tuple[str, ...]],
    first: int,
    last: int,
    terms: Terms,
    is_batch: Test,
    batch_spans: Sequence[Span],
) -> Panel | None:
    labels = [i for i in range(first, last) if "label" in roles[i]]
    if not labels:
        return None
    label = max(labels, key=lambda i: share_of(table, i, terms.is_label))
    groups = tuple(i for i in range(first, label) if i in labels or roles[i] in (("text",),))
    units = tuple(i for i in range(first, last) if "unit" in roles[i] and "result" not in roles[i] and i != label)
    low, high = _first(roles, first, last, "min"), _first(roles, first, last, "max")
    spec = _first(roles, first, last, "spec")
    if low is not None and low == high:
        spec, low, high = (spec if spec is not None else low), None, None
    stated = [i for i in range(first, last) if "result" in roles[i] and i != label]
    # "Outcome" heads the verdicts where values stand under another such head.
    stated = [i for i in stated if share_of(table, i, terms.is_value)] or stated
    results: list[tuple[int, Family | None]] = [(i, _family(roles[i])) for i in stated]
    limit_columns = {low, high, spec}
    if not results:
        results = [
            (i, _family(roles[i]))
            for i in range(first, last)
            if _family(roles[i]) is not None
            and i not in limit_columns
            and not {"typical", "previous", "label"} & set(roles[i])
        ]
        # "IoB method", beside "IoB", heads the numbers of its methods.
        plain = {family for i, family in results if "method" not in roles[i]}
        results = [(i, family) for i, family in results if "method" not in roles[i] or family not in plain]
    unknown = [i for i in range(first, last) if "value" in roles[i] and i > label]
    if not unknown:
        # Values may stand before the names.
        unknown = [i for i in range(first, last) if "value" in roles[i]]
    left = [i for i in range(first, label) if "value" in roles[i]] if unknown and unknown[0] > label else []
    uncounted = [i for i in left if not counts_rows(table, i)]
    if any(_holds_batch(table.columns[i].head, is_batch) for i in left):
        unknown = [*left, *unknown]
    if spec is low is high is None and len(unknown) + len(results) > 1:
        spec = unnamed_limits(table, unknown)
        unknown = [i for i in unknown if i != spec]
    doubt: str | None = None
    batches = False
    if unknown and results and not any(_is_filled(table, i) for i, _ in results):
        results, stated, doubt = [], [], NO_RESULT
    if by_basis := _by_moisture_basis(table, stated or unknown):
        results = [(i, _family(roles[i])) for i in by_basis]
    elif not results and len(unknown) > 1 and _goes_on(table, unknown, batch_spans):
        results, batches = [(i, None) for i in unknown], True
    elif not results and unknown:
        results, unsure, batches = _from_unknown(table, unknown, terms, is_batch)
        doubt = doubt or unsure
        if uncounted and left[0] not in unknown and not batches:
            # Values before the names as well: those behind them may be limits, and are where they look so.
            doubt = SEVERAL_RESULTS
            if len(uncounted) == 1 and spec is None and all(limit_share(table, i) >= 0.6 for i, _ in results):
                results, spec = [(uncounted[0], None)], results[0][0]
        others = [i for i in range(first, last) if {"previous", "typical", "spec"} & set(roles[i])]
        if others and not batches and any(_says_nothing(table, i, terms, is_batch) for i, _ in results):
            doubt = SEVERAL_RESULTS
        if not batches and any(_may_be_limit(table, roles, i, terms) for i, _ in results):
            doubt = doubt or SEVERAL_RESULTS
    elif len(stated) > 1 and all(family is None for _, family in results):
        heads = [table.columns[i].head for i in stated]
        if (
            any(_holds_batch(head, is_batch) for head in heads)
            or _has_batch_row(table, stated, terms, is_batch)
            or _goes_on(table, stated, batch_spans)
        ):
            batches = True
        else:
            doubt = SEVERAL_RESULTS
            results = results[-1:]
    elif results and (more := _further_batches(table, unknown, stated, terms, is_batch)):
        results += [(i, None) for i in more]
        batches = True
    elif results and not batches and _rivals(table, unknown, results):
        doubt = SEVERAL_RESULTS
    if any(_is_shifted(table.columns[i].roles, roles[i]) for i in range(first, last)):
        doubt = SHIFTED
    if any(_LIMITS & set(roles[i]) for i, _ in results):
        # Two heads over one column: whose values these are is not known.
        doubt = SEVERAL_RESULTS
    limits_only = False
    crops = [i for i in range(first, last) if roles[i] == ("previous",) and i > label]
    if not results and crops:
        # Harvests side by side and no head that names the result: the first is taken, in doubt.
        results, doubt = [(crops[0], None)], SEVERAL_RESULTS
    if not results:
        limits = [i for i in (low, high, spec) if i is not None]
        typical = _first(roles, first, last, "typical")
        texts = [i for i in range(label + 1, last) if roles[i] == ("text",)]
        if limits or typical is not None:
            limits_only = True
            if typical is not None:
                results = [(typical, _family(roles[typical]))]
        elif len(texts) == 1:
            results = [(texts[0], None)]
        else:
            return None
    return Panel(
        label,
        groups,
        tuple(results),
        units,
        _first(roles, first, last, "method"),
        low,
        high,
        spec,
        limits_only,
        doubt,
        batches,
        _others(table, roles, first, last, results, terms) if doubt else (),
        _sublabel(table, roles, label, results),
        _tolerance(table, roles, spec, last),
    )


def _by_moisture_basis(table: Table, columns: Sequence[int]) -> list[int]:
    """The columns of the results on malt as is and on dry malt, by their heads; empty where there are not two."""
    said = {i: basis for i in columns if (basis := basis_statement(table.columns[i].head))}
    return list(said) if len(said) == len(columns) == len(set(said.values())) == 2 else []


def _says_nothing(table: Table, column: int, terms: Terms, is_batch: Test) -> bool:
    """True for a head that neither names a role nor the batch ("Lot", "Lot 24-0815" over its results)."""
    head = table.columns[column].head
    named = terms.caption(head) == "batch" or _names_batch(head, terms, is_batch)
    return bool(head) and not table.columns[column].roles and not named


def _names_batch(head: str, terms: Terms, is_batch: Test) -> bool:
    """True for a caption of batches and a number, and nothing else."""
    caption, _, number = " ".join(head.split()).rpartition(" ")
    return bool(caption) and terms.caption(caption) == "batch" and bool(is_batch(number))


def _may_be_limit(table: Table, roles: Sequence[tuple[str, ...]], column: int, terms: Terms) -> bool:
    """True for a column without a head beside typical values, or beside limits of one number: it may hold the rest of
    the limits."""
    if not table.headed or table.columns[column].head:
        return False
    beside = [i for i in (column - 1, column + 1) if 0 <= i < len(roles)]
    single = any(roles[i] == ("spec",) and share_of(table, i, terms.is_value) > limit_share(table, i) for i in beside)
    return single or any({"typical", "previous"} & set(names) for names in roles)


def _others(
    table: Table,
    roles: Sequence[tuple[str, ...]],
    first: int,
    last: int,
    results: Sequence[tuple[int, Family | None]],
    terms: Terms,
) -> tuple[int, ...]:
    """The columns of values beside the one taken for the result, where it is not sure that it is."""
    taken = {column for column, _ in results}
    return tuple(
        i
        for i in range(first, last)
        if i not in taken
        and not {"label", "number", "method"} & set(roles[i])
        and share_of(table, i, terms.is_value) >= 0.5
    )


def _sublabel(
    table: Table, roles: Sequence[tuple[str, ...]], label: int, results: Sequence[tuple[int, Family | None]]
) -> int | None:
    """The column of words right of the labels, where rows with a result have no label of their own."""
    column = label + 1
    if column >= len(roles) or column in {i for i, _ in results}:
        return None
    if roles[column] != ("text",) and (roles[column] != ("label",) or not table.headed or table.columns[column].head):
        return None
    rows = [row for row in table.rows if row.has_value]
    unnamed = [row for row in rows if label not in row.cells and column in row.cells]
    return column if unnamed and len(unnamed) < len(rows) else None


def _tolerance(table: Table, roles: Sequence[tuple[str, ...]], spec: int | None, last: int) -> int | None:
    """The column of tolerances behind a column of targets ("4.5 | ± 0.5")."""
    if spec is None or share_of(table, spec, is_tolerance):
        return None
    behind = (i for i in range(spec + 1, last) if "spec" in roles[i] and share_of(table, i, is_tolerance) >= 0.5)
    return next(behind, None)


def _is_shifted(named: Sequence[str], found: Sequence[str]) -> bool:
    """True for a column of units under a head of results or limits."""
    return found == ("unit",) and "unit" not in named and bool({"result", *_LIMITS} & set(named))


def _is_filled(table: Table, column: int) -> bool:
    return any(column in row.cells for row in table.rows if row.has_value)


def _rivals(table: Table, unknown: Sequence[int], results: Sequence[tuple[int, Family | None]]) -> bool:
    """True where values stand under a head that says nothing ("Retest"), beside the column called the result. A bare
    year heads another harvest there."""
    taken = {column for column, _ in results}
    return any(i not in taken and not is_year(table.columns[i].head) and limit_share(table, i) < 0.6 for i in unknown)


def _further_batches(
    table: Table, unknown: Sequence[int], stated: Sequence[int], terms: Terms, is_batch: Test
) -> list[int]:
    """The columns beside the one called the result that are results of other batches, by their heads or by a row."""
    named = [i for i in unknown if is_batch(table.columns[i].head)]
    if named and not any(_holds_batch(table.columns[i].head, is_batch) for i in stated):
        # "This batch" beside a number: the number may be that of an earlier one.
        return []
    if not named and unknown and _has_batch_row(table, sorted((*unknown, *stated)), terms, is_batch):
        return list(unknown)
    return named


def _goes_on(table: Table, columns: Sequence[int], spans: Sequence[Span]) -> bool:
    """True where value columns stand under the batch columns of a table above, one under each."""
    if len(columns) != len(spans):
        return False
    pairs = zip((table.columns[i].span for i in columns), spans, strict=True)
    return all(min(a.x1, b.x1) - max(a.x0, b.x0) > -table.em for a, b in pairs)


def _from_unknown(
    table: Table, unknown: Sequence[int], terms: Terms, is_batch: Test
) -> tuple[list[tuple[int, Family | None]], str | None, bool]:
    """Results among value columns whose head says nothing: a lone one, or one a batch."""
    if len(unknown) == 1:
        return [(unknown[0], None)], None, False
    heads = [table.columns[i].head.strip() for i in unknown]
    if all(heads) and sum(bool(is_batch(head)) for head in heads) >= len(heads) - 1:
        return [(i, None) for i in unknown], None, True
    if _has_batch_row(table, unknown, terms, is_batch):
        return [(i, None) for i in unknown], None, True
    ranged = [i for i in unknown if limit_share(table, i) >= 0.6]
    plain = [i for i in unknown if i not in ranged]
    if len(plain) == 1 and ranged:
        return [(plain[0], None)], None, False
    if not plain:
        return [(unknown[0], None)], None, False
    return [(plain[0], None)], SEVERAL_RESULTS, False


def _holds_batch(head: str, is_batch: Test) -> bool:
    return is_batch(head) or any(is_batch(part) for part in head.split())


def _has_batch_row(table: Table, columns: Sequence[int], terms: Terms, is_batch: Test) -> bool:
    """True where one of the first rows gives every value column a batch number, a date or a malt of its own."""
    for row in table.rows[:4]:
        texts = [row.cells[i].text for i in columns if i in row.cells]
        if len(texts) < len(columns) or len(set(texts)) < 2:
            continue
        name = row.cells[min(row.cells)].text.rstrip(": ")
        captioned = terms.caption(name) not in (None, "ignore") and not terms.is_label(name)
        if captioned or all(is_batch(text) for text in texts):
            return True
    return False
