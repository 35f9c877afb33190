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
    best, best_score = None, 0.0
    for delimiter in DELIMITERS:
        widths, well_formed = _widths(text, delimiter)
        divided = [width for width in widths if width > 1]
        if not divided:
            continue
        common = max(set(divided), key=divided.count)
        score = len(divided) / len(widths) + divided.count(common) / len(divided)
        score -= (0.35 if delimiter == "," else 0.0) + (0.0 if well_formed else 0.5)
        if score > best_score:
            best, best_score = delimiter, score
    return best


def _widths(text: str, delimiter: str) -> tuple[list[int], bool]:
    """How many cells each filled line of a sample has, and whether quotes stand only where they may."""
    sample = "\n".join(text.splitlines()[:_LINES_LOOKED_AT])
    for strict in (True, False):
        try:
            lines = csv.reader(io.StringIO(sample, newline=""), delimiter=delimiter, strict=strict)
            return [len(line) for line in lines if any(cell.strip() for cell in line)], strict
        except csv.Error:
            continue
    return [], False


def looks_delimited(text: str) -> bool:
    """True for a text that is a table whatever its name says: nearly every line has the same number of columns."""
    delimiter = find_delimiter(text)
    if delimiter is None:
        return False
    widths, _ = _widths(text, delimiter)
    if len(widths) < 3:
        return False
    common = max(set(widths), key=widths.count)
    share = widths.count(common) / len(widths)
    return common >= 2 and share >= (0.9 if delimiter == "," else 0.6)
