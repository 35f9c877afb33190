"""Plain text with columns: its delimiter and its cells."""

from __future__ import annotations

import csv
import io
from collections.abc import Iterator

DELIMITERS = (";", "\t", "|", ",")
_LINES_LOOKED_AT = 200


def rows(text: str) -> Iterator[list[str]]:
    """The cells of a text, row by row, with the delimiter that makes the most regular table of it."""
    body, stated = _stated_delimiter(text)
    delimiter = stated or find_delimiter(body) or ";"
    for row in csv.reader(io.StringIO(body, newline=""), delimiter=delimiter):
        yield [cell.strip() for cell in row]


def _stated_delimiter(text: str) -> tuple[str, str | None]:
    """Some spreadsheet programs write a first line ``sep=;``."""
    first, end, rest = text.partition("\n")
    line = first.strip().strip('"').lower()
    if end and line.startswith("sep=") and len(line) == 5:
        return rest, first.strip().strip('"')[4]
    return text, None


def find_delimiter(text: str) -> str | None:
    """The delimiter whose columns are the most regular; None where no delimiter gives two columns.

    A comma between digits is as likely a decimal comma, so commas compete only where nothing else divides the text.
    """
    sample = "\n".join(text.splitlines()[:_LINES_LOOKED_AT])
    best, best_score = None, 0.0
    for delimiter in DELIMITERS:
        widths = [width for width in _widths(sample, delimiter) if width > 0]
        divided = [width for width in widths if width > 1]
        if not divided:
            continue
        common = max(set(divided), key=divided.count)
        score = len(divided) / len(widths) + divided.count(common) / len(divided)
        if delimiter == ",":
            score -= 0.35
        if score > best_score:
            best, best_score = delimiter, score
    return best


def _widths(sample: str, delimiter: str) -> list[int]:
    try:
        return [
            len(row) if any(cell.strip() for cell in row) else 0
            for row in csv.reader(io.StringIO(sample, newline=""), delimiter=delimiter)
        ]
    except csv.Error:
        return []


def looks_delimited(text: str) -> bool:
    """True for a text that is a table whatever its name says: nearly every line has the same number of columns."""
    delimiter = find_delimiter(text)
    if delimiter is None:
        return False
    sample = "\n".join(text.splitlines()[:_LINES_LOOKED_AT])
    widths = [width for width in _widths(sample, delimiter) if width > 0]
    if len(widths) < 3:
        return False
    common = max(set(widths), key=widths.count)
    share = widths.count(common) / len(widths)
    return common >= 2 and share >= (0.9 if delimiter == "," else 0.6)
