"""File names that are safe to show and to write."""

from __future__ import annotations

import os
from pathlib import Path

from importer.limits import MAX_NAME

# Marks that reorder or hide text: shown on a terminal they make one name look like another.
_INVISIBLE = frozenset({*range(0x200B, 0x2010), *range(0x202A, 0x202F), *range(0x2060, 0x2070), 0xFEFF})


def safe_name(path: str | os.PathLike[str]) -> str:
    """The last part of a path without anything that a terminal, a JSON file or a spreadsheet could trip over."""
    raw = os.fsencode(Path(path).name or os.fspath(path)).decode("utf-8", "replace")
    shown = "".join("\ufffd" if ord(c) in _INVISIBLE or not c.isprintable() else c for c in raw)
    return shown if len(shown) <= MAX_NAME else shown[: MAX_NAME - 1] + "…"
