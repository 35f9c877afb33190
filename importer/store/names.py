"""Names of folders and files that are safe on every system, whatever a sheet or an email says."""

from __future__ import annotations

import re
import unicodedata
from pathlib import PurePath

# Not allowed by Windows, or with a meaning for shells and programs that are handed the name.
_FORBIDDEN = re.compile(r'[<>:"/\\|?*\x00-\x1f\x7f]+')
_RESERVED = re.compile(r"(?i)(con|prn|aux|nul|com[0-9¹²³]|lpt[0-9¹²³])(?= *(?:\.|$))")
_LONGEST = 80
_LONGEST_BYTES = 160
_ENDING = re.compile(r"\.[A-Za-z0-9]{1,6}")


def safe_part(text: str | None, otherwise: str) -> str:
    """A text as the name of one folder, never empty, upward or hidden; ``otherwise`` where nothing is left of it."""
    plain = unicodedata.normalize("NFC", text or "")
    plain = "".join(c if c.isprintable() else " " for c in plain)
    plain = _FORBIDDEN.sub("-", plain)
    plain = " ".join(plain.split())
    plain = plain.lstrip(" ._-~'=+@").rstrip(" .-")
    plain = _shortened(plain).rstrip(" .-")
    if not plain:
        return otherwise
    reserved = _RESERVED.match(plain)  # whatever follows its first point, Windows takes it for a device
    return f"{reserved[1]}_{plain[reserved.end() :]}" if reserved else plain


def safe_file(name: str, otherwise: str = "sheet") -> str:
    """A file name that keeps its ending."""
    ending = PurePath(name.replace("\\", "/")).suffix
    if not _ENDING.fullmatch(ending):
        ending = ""
    stem = name[: len(name) - len(ending)] if ending else name
    return safe_part(stem, otherwise) + ending


def _shortened(text: str) -> str:
    text = text[:_LONGEST]
    while len(text.encode("utf-8", "replace")) > _LONGEST_BYTES:
        text = text[:-1]
    return text
