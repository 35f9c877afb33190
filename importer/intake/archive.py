"""ZIP archives: the files in them, within limits."""

from __future__ import annotations

import io
import stat
import zipfile

from importer.intake.names import safe_name
from importer.intake.parcel import Opened, Part, Trouble
from importer.limits import MAX_BYTES, MAX_PARCEL_BYTES, MIB

_STARTS = (b"PK\x03\x04", b"PK\x05\x06")
# Parts that make an archive an office document: Open Packaging and OpenDocument.
_OFFICE = frozenset({"[Content_Types].xml", "mimetype", "META-INF/manifest.xml"})
_LITTER = ("__MACOSX/",)
_LITTER_NAMES = frozenset({"thumbs.db", "desktop.ini"})
_PIECE = 1024 * 1024
# An archive's list of contents takes memory before anything is unpacked.
_MOST_ENTRIES = 20_000


def is_archive(data: bytes) -> bool:
    """True for a ZIP archive that is no office document."""
    if not data.startswith(_STARTS):
        return False
    try:
        with zipfile.ZipFile(io.BytesIO(data)) as archive:
            return not any(name in _OFFICE for name in archive.namelist())
    except (zipfile.BadZipFile, NotImplementedError, OSError, ValueError, EOFError):
        return False  # the reading of sheets tells what is wrong with it


def open_archive(data: bytes, name: str, most_bytes: int = MAX_PARCEL_BYTES, most_items: int = 1000) -> Opened:
    """The files in an archive. Folders, hidden files and links are passed over.

    What goes beyond the limits or cannot be unpacked ends it: the files before that are kept, the trouble is told.
    """
    parts: list[Part] = []
    with zipfile.ZipFile(io.BytesIO(data)) as archive:
        entries = archive.infolist()
        if len(entries) > _MOST_ENTRIES:
            return Opened((), trouble=Trouble("too-large", f"{name} lists {len(entries)} files. Unpack it first."))
        for entry in entries:
            if _passed_over(entry):
                continue
            if entry.flag_bits & 1:
                message = f"{name} is locked with a password. Unpack it first, or ask the sender for an open one."
                return Opened(tuple(parts), trouble=Trouble("password-protected", message))
            most = min(MAX_BYTES, most_bytes)
            unpacked = _unpacked(archive, entry, most)
            if unpacked is None or len(parts) >= most_items:
                message = (
                    f"{name} holds too many files, or more than {most // MIB} MB once unpacked. "
                    "Unpack it first, and take what is wanted."
                )
                return Opened(tuple(parts), trouble=Trouble("too-large", message))
            most_bytes -= len(unpacked)
            parts.append(Part(safe_name(entry.filename.replace("\\", "/")), unpacked))
    return Opened(tuple(parts))


def _passed_over(entry: zipfile.ZipInfo) -> bool:
    pieces = entry.filename.replace("\\", "/").split("/")
    if entry.is_dir() or entry.filename.startswith(_LITTER) or pieces[-1].lower() in _LITTER_NAMES:
        return True
    if any(piece.startswith((".", "~$")) and piece not in (".", "..") for piece in pieces) or not pieces[-1]:
        return True
    mode = entry.external_attr >> 16
    return bool(mode) and stat.S_IFMT(mode) not in (0, stat.S_IFREG)


def _unpacked(archive: zipfile.ZipFile, entry: zipfile.ZipInfo, most: int) -> bytes | None:
    """The content of a file; None where it is more than ``most``, whatever the archive says about it."""
    out = bytearray()
    with archive.open(entry) as stream:
        while piece := stream.read(_PIECE):
            out += piece
            if len(out) > most:
                return None
    return bytes(out)
