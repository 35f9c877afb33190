"""One file, read once: its bytes, their hash, and what kind of document they are."""

from __future__ import annotations

import hashlib
import os
import stat
from dataclasses import dataclass, field
from datetime import UTC, datetime
from pathlib import Path

from importer.errors import Damaged, EmptyFile, TooLarge, UnsupportedType
from importer.intake.kind import Kind, kind_of
from importer.intake.names import safe_name
from importer.limits import MAX_BYTES, MIB


@dataclass(frozen=True, slots=True)
class Source:
    """A document as it was delivered. ``name`` is the file's name, safe to show and to write."""

    path: Path
    name: str
    sha256: str
    kind: Kind
    data: bytes = field(repr=False)
    modified: datetime


def open_source(path: str | os.PathLike[str], *, follow_links: bool = True) -> Source:
    """Reads a file whole, at most ``MAX_BYTES`` of it, and tells its kind from its content, whatever its name ends in.

    Pipes, devices and folders are never opened for reading; with ``follow_links`` off a link is not followed either.
    Raises EmptyFile, TooLarge, UnsupportedType, PasswordProtected, or Damaged where the file cannot be read at all.
    """
    name = safe_name(path)
    try:
        data, modified = _read(Path(path), name, follow_links)
    except OSError as error:
        raise Damaged(
            f"{name} cannot be opened: {error.strerror or error}. Check that it is there and may be read."
        ) from None
    if not data.strip(b"\x00 \t\r\n\f\v"):
        raise EmptyFile(f"{name} is empty. Ask the sender to send it again.")
    return Source(
        path=Path(path),
        name=name,
        sha256=hashlib.sha256(data).hexdigest(),
        kind=kind_of(data, name),
        data=data,
        modified=datetime.fromtimestamp(modified, UTC),
    )


def _read(path: Path, name: str, follow_links: bool) -> tuple[bytes, float]:
    before = path.stat() if follow_links else path.lstat()
    _refuse_unless_file(before.st_mode, name)
    flags = os.O_RDONLY | getattr(os, "O_BINARY", 0) | getattr(os, "O_CLOEXEC", 0) | getattr(os, "O_NONBLOCK", 0)
    if not follow_links:
        flags |= getattr(os, "O_NOFOLLOW", 0)
    handle = os.open(path, flags)
    with os.fdopen(handle, "rb") as file:
        # Looked at once more, now that it is open: what the name stood for may have been exchanged meanwhile.
        now = os.fstat(file.fileno())
        _refuse_unless_file(now.st_mode, name)
        if now.st_size > MAX_BYTES:
            raise _too_large(name)
        data = file.read(MAX_BYTES + 1)
    if len(data) > MAX_BYTES:
        raise _too_large(name)
    return data, now.st_mtime


def _too_large(name: str) -> TooLarge:
    return TooLarge(f"{name} is larger than {MAX_BYTES // MIB} MB. Split it, or scan it at 300 dpi, and try again.")


def _refuse_unless_file(mode: int, name: str) -> None:
    if stat.S_ISREG(mode):
        return
    what = "a folder" if stat.S_ISDIR(mode) else "a link" if stat.S_ISLNK(mode) else "a pipe or a device"
    raise UnsupportedType(f"{name} is {what}, not a file. Give the document itself.")
