"""What corrections are laid over: the printed stage of each document, and analyses as they were read."""

from __future__ import annotations

import sqlite3

from importer import kept
from importer.kept import Kept, KeptSheet
from importer.models import Analysis, Sheet


def keep(connection: sqlite3.Connection, sha256: str, sheet: Sheet) -> None:
    """Keeps the printed stage of a document; a reading without one keeps nothing."""
    if isinstance(sheet, KeptSheet) and sheet.printed:
        connection.execute("INSERT OR REPLACE INTO readings VALUES (?, ?)", (sha256, kept.pack(sheet.printed)))


def keep_as_read(connection: sqlite3.Connection, sheet: Sheet) -> None:
    """Keeps analyses that something learned was laid over, as they were read."""
    for analysis in sheet.as_read if isinstance(sheet, KeptSheet) else ():
        keep_reading(connection, analysis.id, analysis.model_dump_json(by_alias=True))


def keep_reading(connection: sqlite3.Connection, identity: str, json: str) -> None:
    """Keeps one analysis as it was read, where that is not kept yet."""
    connection.execute("INSERT OR IGNORE INTO as_read VALUES (?, ?)", (identity, json))


def kept_of(connection: sqlite3.Connection, sha256: str) -> Kept | None:
    """The printed stage of a document; None for one that was taken in by a version that kept none."""
    row = connection.execute("SELECT printed FROM readings WHERE sha256 = ?", (sha256,)).fetchone()
    return kept.unpack(row[0]) if row is not None else None


def as_read(connection: sqlite3.Connection, identity: str) -> Analysis | None:
    """An analysis as it was read; None where nothing was ever laid over it."""
    row = connection.execute("SELECT json FROM as_read WHERE id = ?", (identity,)).fetchone()
    return Analysis.model_validate_json(row[0]) if row is not None else None
