"""HTML as lines of cells: workbooks that are HTML in truth, pages of laboratory systems, and the text of emails."""

from __future__ import annotations

import codecs
import html
import re
from dataclasses import dataclass, field
from html.parser import HTMLParser

from importer.intake.cells import Cell, Table
from importer.intake.encoding import decode

_LOOK_AT = 4096
_CHARSET = re.compile(rb"""<meta[^>]{1,200}?charset\s*=\s*["']?([\w.:-]{1,40})""", re.IGNORECASE)
LETTER_MARK = b'<meta name="source" content="text of an email">'
_OF_A_LETTER = "It stands in the text of an email and on no sheet."
# Without an end tag, after the HTML standard.
_VOID = {"area", "base", "br", "col", "embed", "hr", "img", "input", "link", "meta", "source", "track", "wbr"}
# What no reader sees, and what is struck out.
_UNSEEN = {"script", "style", "head", "template", "noscript", "svg", "object", "select", "del", "s", "strike"}
_HIDDEN = re.compile(r"display\s*:\s*none|visibility\s*:\s*hidden", re.IGNORECASE)
_BREAKS = {
    *("address", "article", "blockquote", "caption", "center", "dd", "div", "dl", "dt", "fieldset", "footer", "form"),
    *("h1", "h2", "h3", "h4", "h5", "h6", "header", "hr", "li", "ol", "p", "pre", "section", "ul"),
}
# What ends these without an end tag of their own.
_ENDS = {"p": {"div", "td", "th", "tr", "table"}, "li": {"ul", "ol"}, "td": {"tr", "table"}, "th": {"tr", "table"}}
_TAG = re.compile(r"</?[A-Za-z]")
_MOST_SPANNED = 200


@dataclass(slots=True)
class Line:
    """The filled cells of a row by column, or a line of text in column 0. ``quoted``: it stands in a quotation."""

    cells: dict[int, str]
    quoted: bool = False
    spans: dict[int, int] = field(default_factory=dict)


def is_web_table(data: bytes) -> bool:
    """True for HTML with a table in it, whatever the file is called."""
    start = data[:_LOOK_AT].lstrip(b"\xef\xbb\xbf \t\r\n").lower()
    marked = start.startswith((b"<!doctype html", b"<html", b"<table", b"<meta", b"<head", b"<body", b"<div"))
    return marked and b"<table" in data.lower()


def read_web(data: bytes, name: str) -> list[Table]:
    """The one page of an HTML file as a table of cells; none where the file is not text."""
    table = Table(1, doubt=_OF_A_LETTER if LETTER_MARK in data[:_LOOK_AT] else None)
    for row, line in enumerate(lines_of(_text(data))):
        for column, text in line.cells.items():
            table.put(row, column, Cell(text, columns=line.spans.get(column, 1)), name)
    return [table]


def _text(data: bytes) -> str:
    found = _CHARSET.search(data[:_LOOK_AT])
    if found and not data.startswith((codecs.BOM_UTF16_LE, codecs.BOM_UTF16_BE)):
        try:
            return data.decode(found[1].decode("ascii"))
        except (LookupError, UnicodeError):
            pass  # what it says of itself is wrong
    return decode(data) or ""


def lines_of(text: str) -> list[Line]:
    """The rows and lines of HTML in their order; a table within a cell follows what stands before it there."""
    reader = _Reader()
    reader.feed(_plain(text))
    reader.close()
    reader.end_line()
    return reader.lines


def _plain(text: str) -> str:
    """HTML without comments, declarations and "<" that begins no tag.

    The parser of the standard library looks for the end of each of them again and again where there is none.
    """
    parts: list[str] = []
    at, last = 0, text.rfind(">")
    while (start := text.find("<", at)) >= 0:
        parts.append(text[at:start])
        if start > last:
            return "".join([*parts, html.escape(text[start:])])
        opening = next((mark for mark in ("<!--", "<!", "<?") if text.startswith(mark, start)), "")
        if not opening and not _TAG.match(text, start):
            parts.append("&lt;")
            at = start + 1
            continue
        closing = "-->" if opening == "<!--" else ">"
        end = text.find(closing, start + len(opening))
        if end < 0:
            return "".join(parts)
        at = end + len(closing)
        if not opening:
            tag = text[start:at]
            inner = tag.rfind("<")
            parts.append(f"{html.escape(tag[:inner])}{tag[inner:]}" if inner else tag)
    return "".join([*parts, text[at:]])


class _Reader(HTMLParser):
    def __init__(self) -> None:
        super().__init__(convert_charrefs=True)
        self.lines: list[Line] = []
        self._parts: list[str] = []
        self._line = Line({})
        self._column = 0
        self._columns = 1
        self._in_row = self._in_cell = False
        self._held: dict[int, int] = {}
        self._tables: list[dict[int, int]] = []
        self._unseen: list[str] = []
        self._quotes = 0

    # ------------------------------------------------------------------------------------------------- tags and text

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        named = {name: value or "" for name, value in attrs}
        if self._unseen[-1:] == [tag] and tag in _ENDS:
            self._unseen.pop()
        if self._unseen or tag in _UNSEEN or "hidden" in named or _HIDDEN.search(named.get("style", "")):
            if tag not in _VOID and (not self._unseen or tag == self._unseen[-1]):
                self._unseen.append(tag)
            return
        if tag == "table":
            self.end_line()
            self._tables.append(self._held)
            self._held = {}
        elif tag == "tr":
            self.end_line()
            self._in_row = True
            self._held = {column: left - 1 for column, left in self._held.items() if left > 1}
        elif tag in ("td", "th"):
            self._begin_cell(_number(named.get("colspan", "")), _number(named.get("rowspan", "")))
        elif tag == "br" or tag in _BREAKS:
            self._break()
        self._quotes += tag == "blockquote"

    def handle_endtag(self, tag: str) -> None:
        if self._unseen and tag not in _ENDS.get(self._unseen[-1], ()):
            if tag == self._unseen[-1]:
                self._unseen.pop()
            return
        self._unseen.clear()
        if tag in ("td", "th"):
            self._end_cell()
        elif tag in ("tr", "table"):
            self.end_line()
            if tag == "table" and self._tables:
                self._held = self._tables.pop()
        elif tag in _BREAKS:
            self._break()
        self._quotes -= tag == "blockquote" and self._quotes > 0

    def handle_data(self, data: str) -> None:
        if not self._unseen:
            self._parts.append(" ".join(data.split()) if data.strip() else " ")
            if data[-1:].isspace():
                self._parts.append(" ")

    # ---------------------------------------------------------------------------------------------- cells and lines

    def _begin_cell(self, columns: int, rows: int) -> None:
        self._end_cell()
        while self._held.get(self._column):
            self._column += 1
        self._columns, self._in_cell = columns, True
        if rows > 1:
            self._held |= dict.fromkeys(range(self._column, self._column + columns), rows)

    def _end_cell(self) -> None:
        text = "\n".join(" ".join(line.split()) for line in "".join(self._parts).split("\n")).strip()
        self._parts.clear()
        if text:
            self._line.cells[self._column] = re.sub(r"\n{2,}", "\n", text)
            if self._columns > 1:
                self._line.spans[self._column] = self._columns
        self._column += self._columns if self._in_cell else 0
        self._columns, self._in_cell = 1, False

    def _break(self) -> None:
        if self._in_cell:
            self._parts.append("\n")
        else:
            self.end_line()

    def end_line(self) -> None:
        """What was gathered becomes a line; empty ones are left out."""
        self._end_cell()
        if self._line.cells:
            self._line.quoted = self._quotes > 0
            self.lines.append(self._line)
        self._line, self._column, self._in_row = Line({}), 0, False


def _number(text: str) -> int:
    return min(int(text), _MOST_SPANNED) if text.isascii() and text.isdigit() and int(text) > 0 else 1
