"""Which files a command is about: folders are walked through their subfolders, what is no sheet is passed over."""

from __future__ import annotations

import os
import re
import stat
from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from pathlib import Path

# What other programs leave beside documents; hidden where it comes from, and no sheet anywhere.
_LITTER = ("~$", ".~lock.")
_LITTER_NAMES = frozenset({"thumbs.db", "desktop.ini", "ehthumbs.db"})
_OWN_JSON = re.compile(rb'\s*\{\s*"format"\s*:\s*"onebasis/1"')
OWN_CSV_HEAD = b"analysis_id,kind,file,sha256,"
# The small text beside a file that is set aside. Who puts that file back into the inbox often takes the text along.
NOTE_ENDING = ".why.txt"
NOTE_REVIEW = "This was read, but something in it needs a person to look at:"
NOTE_UNREADABLE = "This could not be read:"
_OWN_NOTE = tuple(f"\n\n{line}\n".encode() for line in (NOTE_REVIEW, NOTE_UNREADABLE))
_NOTE_WITHIN = 20_000
_LOOK_AT = 200
_HIDDEN = getattr(stat, "FILE_ATTRIBUTE_HIDDEN", 2)


@dataclass(frozen=True, slots=True)
class Found:
    """A file to read; ``error`` is set for a folder that could not be looked into."""

    path: Path
    error: str | None = None


def find_files(paths: Iterable[Path]) -> Iterator[Found]:
    """The files behind the given files and folders, each once, in the order given and sorted within a folder.

    Inside folders hidden files, links, pipes and the program's own outputs are passed over. A file named outright is
    always handed on: whoever named it wants to know what becomes of it.
    """
    seen: set[tuple[int, int]] = set()
    for path in paths:
        candidates = _walk(path) if path.is_dir() else iter([Found(path)])
        for found in candidates:
            key = None if found.error else _identity(found.path)
            if key is not None:
                if key in seen:
                    continue
                seen.add(key)
            yield found


def _identity(path: Path) -> tuple[int, int] | None:
    try:
        status = path.stat()
    except OSError:
        return None
    return (status.st_dev, status.st_ino) if status.st_ino else None


def _walk(folder: Path) -> Iterator[Found]:
    errors: list[OSError] = []
    for root, folders, files in os.walk(folder, onerror=errors.append, followlinks=False):
        for error in errors:
            yield Found(Path(error.filename or root), error.strerror or str(error))
        errors.clear()
        folders[:] = sorted(name for name in folders if not _is_hidden(Path(root, name)))
        for name in sorted(files):
            path = Path(root, name)
            if not _is_hidden(path) and not is_own_output(path):
                yield Found(path)
    for error in errors:
        yield Found(Path(error.filename or folder), error.strerror or str(error))


def _is_hidden(path: Path) -> bool:
    """True for hidden files and folders, links, pipes, devices, and the litter of other programs."""
    name = path.name
    if name.startswith((".", *_LITTER)) or name.lower() in _LITTER_NAMES:
        return True
    try:
        status = path.lstat()
    except OSError:
        return False  # it is handed on, so that the reason is told
    if getattr(status, "st_file_attributes", 0) & _HIDDEN:
        return True
    return not (stat.S_ISREG(status.st_mode) or stat.S_ISDIR(status.st_mode))


def is_own_output(path: Path) -> bool:
    """True for a file that this program wrote: JSON and schemas by their format entry, CSV by its first columns.

    The text beside a file that is set aside is known by its name and by the line that stands in each.
    """
    is_note = path.name.endswith(NOTE_ENDING)
    try:
        with path.open("rb") as file:
            head = file.read(_NOTE_WITHIN if is_note else _LOOK_AT).lstrip(b"\xef\xbb\xbf")
    except OSError:
        return False
    if is_note and any(line in head for line in _OWN_NOTE):
        return True
    return head.startswith(OWN_CSV_HEAD) or bool(_OWN_JSON.match(head))
