"""Analyses as rows of the store."""

from __future__ import annotations

import json
import os
import re
import unicodedata
from collections.abc import Iterator
from datetime import date
from functools import lru_cache
from pathlib import Path

from importer.models import Analysis, Figure
from importer.output.words import with_unit

PathValue = str | bytes
# Characters that an id may be shortened to.
LEAST_OF_ID = 6
DOUBTS, ROWS = 2, 1
_MARKS = re.compile(r"[\W_]+")


@lru_cache(maxsize=8192)
def key(text: str | None) -> str | None:
    """A name or a number without case, accents, spaces and marks, so that two spellings compare equal."""
    if not text:
        return None
    plain = unicodedata.normalize("NFKD", text.casefold())
    return _MARKS.sub("", "".join(c for c in plain if not unicodedata.combining(c))) or None


def path_value(path: Path) -> PathValue:
    """A path as the store keeps it: text, or bytes where the name is no valid Unicode."""
    text = os.fspath(path)
    try:
        text.encode("utf-8")
    except UnicodeEncodeError:
        return os.fsencode(path)
    return text


def path_of(value: PathValue) -> Path:
    """The path behind a stored value."""
    return Path(os.fsdecode(value))


def values(analysis: Analysis) -> dict[str, str]:
    """The header as plain text."""
    return {name: field.value for name, field in analysis.header.items()}


def is_sure(analysis: Analysis) -> bool:
    """True where supplier and batch are both there and not in doubt."""
    fields = [analysis.header.get("supplier"), analysis.header.get("batch")]
    return all(field is not None and field.state == "accepted" for field in fields)


IDENTITY = ("supplier", "malt", "batch")
"""Entries of the head that say whose figures these are: a doubt about one of them waits for a person."""


def is_doubtful(analysis: Analysis) -> bool:
    """True where a figure is in doubt, or whose figures these are."""
    fields = (analysis.header.get(name) for name in IDENTITY)
    return analysis.state == "review" or any(field is not None and field.state == "review" for field in fields)


def waiting_entries(analysis: Analysis) -> list[str]:
    """The entries of the head in review, where the sheet waits for a person."""
    return [name for name, field in analysis.header.items() if field.state == "review"] if is_doubtful(analysis) else []


def waits(analysis: Analysis, asked: int) -> int:
    """What waits for a person: DOUBTS, or only rows without a parameter (ROWS), of which ``asked`` are open, or 0."""
    return DOUBTS if is_doubtful(analysis) else (ROWS if asked else 0)


def key_of_batch(analysis: Analysis) -> tuple[str | None, str | None]:
    """Supplier and batch, for comparing."""
    header = values(analysis)
    return key(header.get("supplier")), key(header.get("batch"))


def is_day(text: str) -> bool:
    """True for a day, a month or a year that the calendar has: 2024-11-30, 2024-11 or 2024."""
    try:
        date.fromisoformat((text + "-01-01")[:10])
    except ValueError:
        return False
    return True


def date_of(analysis: Analysis, arrived: str) -> str:
    """The day an analysis is filed and chosen by; ``arrived`` is when its email was sent or its file was written."""
    found = values(analysis)
    for name in ("analysed_on", "produced_on", "delivered_on"):
        if re.match(r"\d{4}-", found.get(name, "")):
            return found[name]
    return arrived[:10]


def figure_rows(analysis: Analysis) -> Iterator[tuple[object, ...]]:
    """The rows of ``figures``."""
    printed = [(figure, False) for figure in analysis.figures]
    derived = [(figure, True) for figure in analysis.derived]
    for position, (figure, is_derived) in enumerate(printed + derived):
        yield _figure_row(analysis.id, position, figure, is_derived)


def _figure_row(analysis: str, position: int, figure: Figure, derived: bool) -> tuple[object, ...]:
    low, high = figure.range or (None, None)
    printed = figure.printed
    return (
        analysis,
        position,
        figure.parameter,
        figure.value,
        figure.unit,
        figure.family,
        figure.bound,
        low,
        high,
        figure.text,
        figure.state,
        " ".join(figure.flags),
        derived,
        figure.estimated,
        printed.label if printed else None,
        printed.value if printed else None,
        printed.unit if printed else None,
        printed.page if printed else None,
        " ".join(f"{edge:g}" for edge in printed.box) if printed else None,
    )


def changes_between(older: Analysis, newer: Analysis) -> list[dict[str, str | None]]:
    """The figures that differ, as they read: ``before`` or ``after`` is None where the parameter is not there."""
    before, after = _told(older), _told(newer)
    names = [*before, *(name for name in after if name not in before)]
    return [
        {"parameter": name, "before": before.get(name), "after": after.get(name)}
        for name in names
        if before.get(name) != after.get(name)
    ]


def _told(analysis: Analysis) -> dict[str, str]:
    return {figure.parameter: told(figure) for figure in analysis.figures}


def title_of(parameter: str) -> str:
    """What a brewer calls a parameter."""
    from importer.vocabulary.parameters import parameters  # loads the mappings: not before it is needed

    known = parameters().get(parameter)
    return known.title if known else parameter


def unrecognised_words(analysis: Analysis) -> str:
    """The rows that no parameter was found for, as they are printed; empty where there are none."""
    return "; ".join(f"{row.label}: {with_unit(row.value, row.unit)}" for row in analysis.unrecognised)


def told(figure: Figure) -> str:
    """A figure in short: value with bound and unit, range or text."""
    if figure.range is not None:
        value = f"{figure.range[0]:g} – {figure.range[1]:g}"
    elif figure.value is not None:
        value = f"{figure.bound or ''}{figure.value:g}"
    else:
        return figure.text or ""
    return f"{value} {figure.unit or ''}".strip()


def as_json(value: object) -> str:
    """Compact JSON for a column."""
    return json.dumps(value, ensure_ascii=False, separators=(",", ":"), allow_nan=False)
