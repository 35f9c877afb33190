"""Originals by their content: where they are filed, or in the file that they came in."""

from __future__ import annotations

import hashlib
import os
import stat
from pathlib import Path

from importer.intake.parcel import unpack
from importer.limits import MAX_BYTES
from importer.store import rows
from importer.store.ledger import Store


def read_whole(path: Path) -> tuple[bytes, os.stat_result] | None:
    """A regular file's content and what the system says about it; None for anything else, or where it is too large.

    Links are not followed and pipes are not opened. Raises OSError.
    """
    if not stat.S_ISREG(path.lstat().st_mode):
        return None
    flags = os.O_RDONLY | getattr(os, "O_BINARY", 0) | getattr(os, "O_CLOEXEC", 0)
    flags |= getattr(os, "O_NONBLOCK", 0) | getattr(os, "O_NOFOLLOW", 0)
    with os.fdopen(os.open(path, flags), "rb") as file:
        # Looked at once more, now that it is open: what the name stood for may have been exchanged meanwhile.
        status = os.fstat(file.fileno())
        if not stat.S_ISREG(status.st_mode) or status.st_size > MAX_BYTES:
            return None
        data = file.read(MAX_BYTES + 1)
    return (data, status) if len(data) <= MAX_BYTES else None


def hash_of(path: Path) -> str | None:
    """The hash of a file's content; None where there is no such file, or one larger than any that is taken in."""
    try:
        found = read_whole(path)
    except OSError:
        return None
    return hashlib.sha256(found[0]).hexdigest() if found else None


def original(store: Store, sha256: str) -> bytes | None:
    """A content from wherever it is now; None where it is nowhere any more."""
    row = store.connection.execute("SELECT filed FROM documents WHERE sha256 = ?", (sha256,)).fetchone()
    if row is None:
        return None
    if row[0] is not None:
        data = _checked(store.folder / row[0], sha256)
        if data is not None:
            return data
    arrivals = store.connection.execute("SELECT id FROM arrivals WHERE sha256 = ? ORDER BY id", (sha256,)).fetchall()
    found = (original_of_arrival(store, arrival, sha256) for (arrival,) in arrivals)
    return next((data for data in found if data is not None), None)


def original_of_arrival(store: Store, arrival: int, sha256: str) -> bytes | None:
    """A content from the file that it came in, or from where the email or archive around it is filed."""
    outermost = arrival
    while True:
        container, path, name = store.connection.execute(
            "SELECT container, path, name FROM arrivals WHERE id = ?", (outermost,)
        ).fetchone()
        if container is None:
            break
        outermost = container
    (filed,) = store.connection.execute(
        "SELECT d.filed FROM arrivals a JOIN documents d USING (sha256) WHERE a.id = ?", (outermost,)
    ).fetchone()
    places = [rows.path_of(path), *([store.folder / filed] if filed else [])]
    for place in places:
        try:
            found = read_whole(place)
        except OSError:
            continue
        if found is None:
            continue
        for item in unpack(found[0], name).walk():
            if item.sha256 == sha256:
                return item.data
    return None


def _checked(path: Path, sha256: str) -> bytes | None:
    try:
        found = read_whole(path)
    except OSError:
        return None
    return found[0] if found and hashlib.sha256(found[0]).hexdigest() == sha256 else None
