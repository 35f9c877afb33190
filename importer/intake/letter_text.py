"""The text of an email as a page: what its sender wrote or, where that holds no numbers, the newest quotation."""

from __future__ import annotations

import html
import re
from collections.abc import Sequence
from itertools import takewhile

from importer.intake.web import LETTER_MARK, Line, lines_of

# Fewer lines with a name and a decimal number in them are no sheet: signatures are full of whole numbers.
_LEAST = 3
_NUMBER = re.compile(r"(?<![\d.,:/-])\d{1,4}[.,]\d{1,3}(?![\d.,:/-]*\d)")
_NAME = re.compile(r"[^\W\d_]{2,}")
_QUOTE = re.compile(r"^(?:\s?>)+ ?")
_GAP = re.compile(r"\t+| {2,}")
# The head of an email that is quoted: lines with captions, an address and the time of day among them.
_CAPTIONED = re.compile(r"^\W{0,3}[^\W\d][^:\d\n]{0,24}:\s*\S")
_TIME = re.compile(r"\d{1,2}[:.h]\d{2}")
_RULED = re.compile(r"^\s*[-_=*]{5,}|^\s*-{2,}[^-]+-{2,}\s*$")
_MOST_CAPTIONS = 8


def page_of_text(text: str, *, is_html: bool) -> bytes | None:
    """The part of an email's text that may be a sheet, as HTML; None where there is none."""
    lines = lines_of(text) if is_html else _plain_lines(text)
    part = next((part for part in _parts(lines) if _numbers(part) >= _LEAST), None)
    return None if part is None else _page(part)


def _plain_lines(text: str) -> list[Line]:
    """Lines of plain text, parted where tabs or several spaces stand; empty ones stay, they end a head."""
    found: list[Line] = []
    for line in text.splitlines():
        quoted = _QUOTE.match(line)
        pieces = [piece.strip() for piece in _GAP.split(line[quoted.end() :] if quoted else line)]
        filled = [piece for piece in pieces if piece]
        found.append(Line(dict(enumerate(filled)), quoted is not None or (not filled and _is_quoted(found))))
    return found


def _is_quoted(lines: Sequence[Line]) -> bool:
    return bool(lines) and lines[-1].quoted


def _parts(lines: Sequence[Line]) -> list[list[Line]]:
    """The lines by who wrote them: parted at quotations and at the heads of quoted emails, which are left out."""
    parts: list[list[Line]] = [[]]
    at = 0
    while at < len(lines):
        length = _head_of_letter(lines[at : at + _MOST_CAPTIONS])
        if length or (at and lines[at].quoted and not lines[at - 1].quoted):
            parts.append([])
        if not length:
            parts[-1].append(lines[at])
        at += length or 1
    return parts


def _head_of_letter(lines: Sequence[Line]) -> int:
    """How many lines are the head of a quoted email, or the rule or the sentence before it."""
    first = " ".join(lines[0].cells.values())
    if _RULED.match(first) or (first.endswith(":") and "@" in first and any(c.isdigit() for c in first)):
        return 1
    texts = [" ".join(line.cells.values()) for line in lines]
    run = list(takewhile(lambda text: all(_CAPTIONED.match(part) for part in text.split("\n")), texts))
    marked = [n for n, text in enumerate(run) if "@" in text or _TIME.search(text)]
    if not marked or marked[0] > 1:
        return 0
    head = "\n".join(run[: marked[-1] + 1])
    if "\n" not in head or "@" not in head or not _TIME.search(head):
        return 0
    # To whom and about what may follow.
    return len(run) if len(run) < len(texts) and not texts[len(run)] else min(len(run), marked[-1] + 3)


def _numbers(lines: Sequence[Line]) -> int:
    """Lines that hold a name and a decimal number."""
    texts = [part for line in lines for part in _rows(line)]
    return sum(bool(_NAME.search(text) and _NUMBER.search(text)) for text in texts)


def _rows(line: Line) -> list[str]:
    return next(iter(line.cells.values())).split("\n") if len(line.cells) == 1 else [" ".join(line.cells.values())]


def _page(lines: Sequence[Line]) -> bytes:
    rows = []
    for line in filter(lambda line: line.cells, lines):
        cells = []
        for column in range(max(line.cells) + 1):
            span = line.spans.get(column, 1)
            text = html.escape(line.cells.get(column, "")).replace("\n", "<br>")
            cells.append(f'<td colspan="{span}">{text}</td>' if span > 1 else f"<td>{text}</td>")
        rows.append(f"<tr>{''.join(cells)}</tr>")
    head = f'<meta charset="utf-8">{LETTER_MARK.decode()}'
    page = f"<!DOCTYPE html><html><head>{head}</head><body><table>{''.join(rows)}</table></body></html>"
    return page.encode("utf-8")
