"""Text for a terminal: nothing that came from a sheet may steer it, and columns line up whatever the script."""

from __future__ import annotations

import os
import shutil
import sys
import textwrap
import unicodedata
from typing import TextIO

# Marks that reorder or hide text.
_STEERING = frozenset({0x061C, *range(0x200B, 0x2010), *range(0x2028, 0x202F), *range(0x2060, 0x2070), 0xFEFF})
_COLOURS = {"bold": "1", "dim": "2", "red": "31", "green": "32", "yellow": "33", "cyan": "36"}
NARROWEST = 72
WIDEST = 140


def clean(text: str) -> str:
    """Text without control characters, escape sequences and marks that reorder text; line breaks become spaces."""
    if text.isascii() and text.isprintable():
        return text
    return "".join(_shown(c) for c in text)


def _shown(c: str) -> str:
    if c.isspace():
        return " "
    return c if c.isprintable() and ord(c) not in _STEERING else "\ufffd"


def columns(text: str) -> int:
    """The columns that a text takes on a terminal: wide characters take two, combining ones none."""
    if text.isascii():
        return len(text)
    return sum(_columns_of(c) for c in text)


def _columns_of(c: str) -> int:
    if unicodedata.combining(c) or unicodedata.category(c) in ("Mn", "Me"):
        return 0
    return 2 if unicodedata.east_asian_width(c) in ("W", "F") else 1


def fit(text: str, width: int) -> str:
    """The text cut to a width, with an ellipsis where something is missing."""
    if columns(text) <= width:
        return text
    taken, kept = 0, []
    for c in text:
        taken += _columns_of(c)
        if taken > width - 1:
            break
        kept.append(c)
    return "".join(kept) + "…"


def pad(text: str, width: int, *, right: bool = False) -> str:
    """The text filled with spaces to a width."""
    gap = " " * max(0, width - columns(text))
    return gap + text if right else text + gap


def wrap(text: str, width: int, indent: str) -> list[str]:
    """Paragraph lines of at most a width, all indented. A no-break space keeps its neighbours together."""
    lines = textwrap.wrap(text, max(20, width), initial_indent=indent, subsequent_indent=indent, break_on_hyphens=False)
    return [line.replace("\u00a0", " ") for line in lines]


class Style:
    """Colours where they are wanted: on a terminal, unless NO_COLOR is set (https://no-color.org)."""

    def __init__(self, stream: TextIO | None = None) -> None:
        stream = stream or sys.stdout
        asked_not_to = bool(os.environ.get("NO_COLOR")) or os.environ.get("TERM") == "dumb"
        self.on = stream.isatty() and not asked_not_to
        self.width = min(WIDEST, max(NARROWEST, shutil.get_terminal_size((100, 24)).columns))

    def __call__(self, text: str, *names: str) -> str:
        if not self.on or not text:
            return text
        codes = ";".join(_COLOURS[name] for name in names)
        return f"\x1b[{codes}m{text}\x1b[0m"
