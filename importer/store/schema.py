"""The store's one file: how it is opened, its tables, and how an older one is brought up to date.

The tables are for reading, too: any SQLite program can open the file while onebasis works with it. Every column is
explained beside it; `kind`, `state`, `flags` and units are those of the JSON (README). Times are UTC, ISO 8601. Paths
are text, or a blob where a name is no valid Unicode.
"""

from __future__ import annotations

import contextlib
import os
import sqlite3
from collections.abc import Iterator
from pathlib import Path

from importer.output.atomic import WriteError

APPLICATION_ID = 0x6F6E6562  # "oneb", as PRAGMA application_id shows it
BUSY_SECONDS = 30.0
CACHE_KIB = 8 * 1024

# One entry a version; an entry that was released is never changed, a later one is added.
MIGRATIONS: tuple[str, ...] = (
    """
    CREATE TABLE documents (          -- one row a content: a sheet, or an email or archive that holds some
        sha256   TEXT PRIMARY KEY,    -- of the content
        name     TEXT NOT NULL,       -- file name at its first arrival
        kind     TEXT NOT NULL CHECK (kind IN ('sheet', 'email', 'archive')),
        size     INTEGER NOT NULL,    -- bytes
        state    TEXT NOT NULL CHECK (state IN ('accepted', 'review', 'failed', 'passed-over')),
        filed    TEXT,                -- where the original is, from the store's folder on; NULL: where it arrived
        taken_at TEXT NOT NULL
    ) WITHOUT ROWID;

    CREATE TABLE arrivals (           -- one row each time that a content came in
        id        INTEGER PRIMARY KEY,
        sha256    TEXT NOT NULL REFERENCES documents (sha256),
        container INTEGER REFERENCES arrivals (id),  -- the arrival of the email or archive that it was in
        position  INTEGER NOT NULL DEFAULT 0,        -- place within that, from 1
        way       TEXT NOT NULL CHECK (way IN ('inbox', 'bulk')),
        path      NOT NULL,           -- the file it came in, absolute
        name      TEXT NOT NULL,
        modified  TEXT NOT NULL,      -- time of that file
        sender    TEXT,               -- of the email it came with, and so on
        subject   TEXT,
        sent_at   TEXT,
        arrived_at TEXT NOT NULL
    );
    CREATE INDEX arrivals_sha256 ON arrivals (sha256);
    CREATE INDEX arrivals_path ON arrivals (path, sha256);
    CREATE INDEX arrivals_container ON arrivals (container) WHERE container IS NOT NULL;

    CREATE TABLE analyses (           -- one row an analysis, as read on the EBC basis
        id            TEXT PRIMARY KEY,   -- as in the JSON: the same for the same content
        sha256        TEXT NOT NULL REFERENCES documents (sha256),
        number        INTEGER NOT NULL,   -- within its document, from 1
        kind          TEXT NOT NULL,
        state         TEXT NOT NULL,
        supplier      TEXT, malt TEXT, batch TEXT, certificate TEXT, crop_year TEXT,
        analysed_on   TEXT, produced_on TEXT, delivered_on TEXT,
        dated         TEXT,               -- analysed, else produced, else delivered, else the day of its email or file
        supplier_key  TEXT, malt_key TEXT, batch_key TEXT,   -- the same without case, spaces and marks, for comparing
        sure          INTEGER NOT NULL,   -- 1: supplier and batch are not in doubt
        method_family TEXT NOT NULL,
        superseded_by TEXT REFERENCES analyses (id),         -- NULL: this one is current
        change        INTEGER NOT NULL,   -- grows with every change of any analysis
        program       TEXT NOT NULL,      -- version that read it
        json          TEXT NOT NULL       -- the whole of it, as the JSON output shows it
    );
    CREATE INDEX analyses_sha256 ON analyses (sha256);
    CREATE INDEX analyses_batch ON analyses (supplier_key, batch_key) WHERE superseded_by IS NULL;
    CREATE INDEX analyses_change ON analyses (change);
    CREATE INDEX analyses_dated ON analyses (dated);

    CREATE TABLE figures (            -- one row a figure, with its evidence
        analysis  TEXT NOT NULL REFERENCES analyses (id) ON DELETE CASCADE,
        position  INTEGER NOT NULL,   -- printed figures first, then derived ones
        parameter TEXT NOT NULL,
        value     REAL, unit TEXT, family TEXT NOT NULL, bound TEXT, low REAL, high REAL, text TEXT,
        state     TEXT NOT NULL,
        flags     TEXT NOT NULL,      -- separated by spaces
        derived   INTEGER NOT NULL,
        estimated INTEGER NOT NULL,
        label TEXT, printed TEXT, printed_unit TEXT,   -- as it stands on the sheet
        page  INTEGER, box TEXT,      -- and where: x0 top x1 bottom, in points
        PRIMARY KEY (analysis, position)
    ) WITHOUT ROWID;
    CREATE INDEX figures_parameter ON figures (parameter, state);

    CREATE TABLE problems (           -- why a content, or a part of it, could not be read
        sha256   TEXT NOT NULL REFERENCES documents (sha256) ON DELETE CASCADE,
        position INTEGER NOT NULL,
        code     TEXT NOT NULL,
        message  TEXT NOT NULL,
        PRIMARY KEY (sha256, position)
    ) WITHOUT ROWID;

    CREATE TABLE supersessions (      -- reissued certificates: same supplier and batch, other figures
        newer   TEXT NOT NULL REFERENCES analyses (id),
        older   TEXT NOT NULL REFERENCES analyses (id),
        changes TEXT NOT NULL,        -- JSON: [{"parameter", "before", "after", "unit"}]; empty: the same figures again
        PRIMARY KEY (newer, older)
    ) WITHOUT ROWID;

    CREATE TABLE corrections (        -- what a person said: laid over a reading, never into it
        id        INTEGER PRIMARY KEY,
        analysis  TEXT NOT NULL REFERENCES analyses (id),
        target    TEXT NOT NULL,      -- 'figures/3', 'header/batch', 'unrecognised/0': a place in the JSON
        action    TEXT NOT NULL CHECK (action IN ('confirm', 'change', 'reject', 'withdraw')),
        value     TEXT,               -- JSON of what replaces it
        person    TEXT,
        remark    TEXT,
        made_at   TEXT NOT NULL
    );
    CREATE INDEX corrections_analysis ON corrections (analysis);

    CREATE TABLE renderings (         -- analyses on another basis, kept once they were asked for
        id         TEXT NOT NULL REFERENCES analyses (id) ON DELETE CASCADE,
        basis      TEXT NOT NULL,
        estimates  INTEGER NOT NULL,
        ratio_rule TEXT NOT NULL,
        program    TEXT NOT NULL,
        json       TEXT NOT NULL,
        PRIMARY KEY (id, basis, estimates, ratio_rule)
    ) WITHOUT ROWID;

    CREATE TABLE filings (            -- moves that are planned: written before the first file is touched
        id        INTEGER PRIMARY KEY,
        sha256    TEXT NOT NULL REFERENCES documents (sha256),
        arrival   INTEGER NOT NULL REFERENCES arrivals (id),
        target    TEXT NOT NULL,      -- from the store's folder on
        target_key TEXT NOT NULL UNIQUE,  -- without case: some file systems know no difference
        note      TEXT,               -- text of the file that says why it is set aside
        state     TEXT NOT NULL CHECK (state IN ('planned', 'done', 'left'))
    );
    CREATE INDEX filings_open ON filings (state) WHERE state = 'planned';
    CREATE INDEX filings_sha256 ON filings (sha256);

    CREATE TABLE removals (           -- files that leave the inbox once all that was in them is filed
        arrival  INTEGER PRIMARY KEY REFERENCES arrivals (id),
        path     NOT NULL,
        sha256   TEXT NOT NULL
    );

    CREATE TABLE looked (             -- files of a bulk import that are dealt with; unchanged ones are not opened again
        path     PRIMARY KEY,
        size     INTEGER NOT NULL,
        modified INTEGER NOT NULL,    -- nanoseconds
        sha256   TEXT NOT NULL
    ) WITHOUT ROWID;

    CREATE TABLE history (            -- what happened, in order
        id       INTEGER PRIMARY KEY,
        at       TEXT NOT NULL,
        event    TEXT NOT NULL,       -- taken, arrived-again, read, superseded, filed, set-aside, left, exported …
        sha256   TEXT,
        analysis TEXT,
        detail   TEXT                 -- JSON or words
    );
    CREATE INDEX history_sha256 ON history (sha256);

    CREATE TABLE exports (
        id      INTEGER PRIMARY KEY,
        at      TEXT NOT NULL,
        wanted  TEXT NOT NULL,        -- JSON of what was asked for
        change  INTEGER NOT NULL,     -- analyses up to this change were in it
        count   INTEGER NOT NULL
    );

    CREATE TABLE counters (name TEXT PRIMARY KEY, value INTEGER NOT NULL) WITHOUT ROWID;
    INSERT INTO counters VALUES ('change', 0);
    """,
    """
    -- From here on `analyses` and `figures` show what stands now: the reading with what persons said laid over it. A
    -- correction's target is 'rows/7' (a row of the printed stage, from 0), 'header' or 'sheet'. Its value has what was
    -- said ("set"), the doubts that this lifts ("settled") and what they were about, and "before" and "after" in words.
    CREATE TABLE readings (           -- the printed stage of a document as it was read, never changed
        sha256  TEXT PRIMARY KEY REFERENCES documents (sha256) ON DELETE CASCADE,
        printed BLOB NOT NULL         -- JSON, packed with zlib
    );

    CREATE TABLE as_read (            -- analyses before any correction, from the first one on
        id   TEXT PRIMARY KEY REFERENCES analyses (id) ON DELETE CASCADE,
        json TEXT NOT NULL
    );

    CREATE TABLE learned (            -- what was settled once for a supplier's wording or layout
        id           INTEGER PRIMARY KEY,
        supplier_key TEXT NOT NULL,
        supplier     TEXT NOT NULL,   -- as it was written on the sheet
        kind         TEXT NOT NULL CHECK (kind IN ('label', 'unit', 'basis', 'family')),
        wording_key  TEXT NOT NULL,   -- of label and headings, or of the layout where it is a family
        wording      TEXT NOT NULL,   -- to be shown
        means        TEXT NOT NULL,   -- a parameter, a unit, a moisture basis or a method family
        analysis     TEXT NOT NULL REFERENCES analyses (id),
        correction   INTEGER,         -- that it came from
        person       TEXT,
        made_at      TEXT NOT NULL,
        withdrawn_at TEXT,
        withdrawn_by TEXT
    );
    CREATE INDEX learned_supplier ON learned (supplier_key) WHERE withdrawn_at IS NULL;

    ALTER TABLE analyses ADD COLUMN set_aside TEXT;  -- why a person has set it aside, NULL: it was not
    ALTER TABLE analyses ADD COLUMN unknown_rows INTEGER NOT NULL DEFAULT 0;  -- rows that no parameter was found for
    UPDATE analyses SET unknown_rows = json_array_length(json, '$.unrecognised');
    CREATE INDEX analyses_unknown ON analyses (dated, id) WHERE unknown_rows > 0 AND superseded_by IS NULL;
    CREATE INDEX analyses_waiting ON analyses (dated, id)
        WHERE state = 'review' AND superseded_by IS NULL AND set_aside IS NULL;
    CREATE INDEX analyses_aside ON analyses (dated, id) WHERE set_aside IS NOT NULL;
    CREATE INDEX analyses_malt ON analyses (supplier_key, malt_key, dated);
    """,
    """
    CREATE TABLE learned_of_all_kinds (  -- what was settled once for a supplier's wording or layout
        id           INTEGER PRIMARY KEY,
        supplier_key TEXT NOT NULL,
        supplier     TEXT NOT NULL,   -- as it was written on the sheet
        kind         TEXT NOT NULL,   -- label, unit, basis, family or column
        wording_key  TEXT NOT NULL,   -- of label and headings, of the layout (family), or of a table of it (column)
        wording      TEXT NOT NULL,   -- to be shown
        means        TEXT NOT NULL,   -- a parameter or none, a unit, a moisture basis, a method family; results or ask
        analysis     TEXT NOT NULL REFERENCES analyses (id),
        correction   INTEGER,         -- that it came from
        person       TEXT,
        made_at      TEXT NOT NULL,
        withdrawn_at TEXT,
        withdrawn_by TEXT
    );
    INSERT INTO learned_of_all_kinds SELECT * FROM learned;
    DROP TABLE learned;
    ALTER TABLE learned_of_all_kinds RENAME TO learned;
    CREATE INDEX learned_supplier ON learned (supplier_key) WHERE withdrawn_at IS NULL;

    -- What waits for a person: 2 figures or whose they are, 1 only rows that no parameter was found for, 0 nothing.
    ALTER TABLE analyses ADD COLUMN asked_rows INTEGER NOT NULL DEFAULT 0;  -- those of unknown_rows to be asked about
    ALTER TABLE analyses ADD COLUMN waits INTEGER NOT NULL DEFAULT 0;
    UPDATE analyses SET asked_rows = unknown_rows;
    UPDATE analyses SET waits = CASE
        WHEN state = 'review' OR json_extract(json, '$.header.supplier.state') = 'review'
            OR json_extract(json, '$.header.malt.state') = 'review'
            OR json_extract(json, '$.header.batch.state') = 'review' THEN 2
        WHEN unknown_rows > 0 THEN 1 ELSE 0 END;
    DROP INDEX analyses_unknown;
    DROP INDEX analyses_waiting;
    CREATE INDEX analyses_asked ON analyses (dated, id) WHERE asked_rows > 0 AND superseded_by IS NULL;
    CREATE INDEX analyses_waiting ON analyses (waits, dated, id) WHERE superseded_by IS NULL AND set_aside IS NULL;
    """,
    """
    -- No question is asked by parameter over all suppliers, and keeping this up made storing dearer as the store grew.
    DROP INDEX figures_parameter;
    """,
)
VERSION = len(MIGRATIONS)


class StoreError(WriteError):
    """The store cannot be used; the message says why and what to do."""


def connect(path: Path, *, durable: bool = True) -> sqlite3.Connection:
    """Opens the store, making or updating it where that is needed. Raises StoreError.

    With ``durable`` every commit is on the disk before anything goes on; without it the last ones may be lost, whole,
    in a power cut (never when a process ends).
    """
    try:
        connection = sqlite3.connect(path, timeout=BUSY_SECONDS, isolation_level=None)
    except sqlite3.Error as error:
        raise explained(path, error) from None
    try:
        connection.execute("PRAGMA journal_mode = WAL")
        connection.execute("PRAGMA foreign_keys = ON")
        connection.execute("PRAGMA trusted_schema = OFF")
        connection.execute(f"PRAGMA cache_size = -{CACHE_KIB}")
        connection.execute(f"PRAGMA synchronous = {'FULL' if durable else 'NORMAL'}")
        migrate(connection, path)
    except BaseException as error:
        connection.close()
        if isinstance(error, sqlite3.Error):
            raise explained(path, error) from None
        raise
    return connection


def connect_to_read(path: Path) -> sqlite3.Connection:
    """Opens the store so that nothing can be written, also on a disk that cannot be. Raises StoreError."""
    address = f"{path.absolute().as_uri()}?mode=ro"
    try:
        try:
            connection = _opened(address)
        except sqlite3.OperationalError:
            # SQLite wants to make files beside a store even to read it, unless it is told that nothing changes.
            log = path.with_name(f"{path.name}-wal")
            if os.access(path.parent, os.W_OK) or not path.is_file():
                raise
            if log.is_file() and log.stat().st_size:
                raise StoreError(
                    f"The last changes of the store {path} are still in {log.name}, and on a disk that cannot be "
                    "written to they cannot be put together. Copy the whole folder to another disk and name that one "
                    "with --store."
                ) from None
            connection = _opened(f"{address}&immutable=1")
        version = _version(connection, path)
    except (sqlite3.Error, OSError) as error:
        raise explained(path, error) from None
    if version < VERSION:
        connection.close()
        raise StoreError(
            f"The store {path} was made by an earlier onebasis and has to be brought up to date first, which needs a "
            "disk that can be written to. Copy the whole folder there and name that one with --store."
        )
    return connection


def _opened(address: str) -> sqlite3.Connection:
    """A connection that can read, tried out."""
    connection = sqlite3.connect(address, uri=True, timeout=BUSY_SECONDS, isolation_level=None)
    try:
        connection.execute("PRAGMA query_only = ON")
        connection.execute("PRAGMA trusted_schema = OFF")
        connection.execute("SELECT 1 FROM sqlite_schema LIMIT 1").fetchone()
    except BaseException:
        connection.close()
        raise
    return connection


def migrate(connection: sqlite3.Connection, path: Path) -> None:
    """Brings the tables to this program's version, each step whole or not at all."""
    found = _version(connection, path)
    for version, script in enumerate(MIGRATIONS[found:], found + 1):
        with transaction(connection):
            if _version(connection, path) >= version:
                continue  # another process was faster
            for statement in _statements(script):
                connection.execute(statement)
            connection.execute(f"PRAGMA application_id = {APPLICATION_ID}")
            connection.execute(f"PRAGMA user_version = {version}")


def _version(connection: sqlite3.Connection, path: Path) -> int:
    (version,) = connection.execute("PRAGMA user_version").fetchone()
    (application,) = connection.execute("PRAGMA application_id").fetchone()
    if version > VERSION:
        raise StoreError(f"{path} was made by a newer onebasis. Install that one, or use another --store.")
    if application not in (0, APPLICATION_ID) or (version == 0 and _has_tables(connection)):
        raise StoreError(f"{path} is a database of another program. Use another --store.")
    return int(version)


def _has_tables(connection: sqlite3.Connection) -> bool:
    return connection.execute("SELECT 1 FROM sqlite_schema LIMIT 1").fetchone() is not None


def _statements(script: str) -> Iterator[str]:
    """The statements of a script one by one; running it whole would end the transaction."""
    pending = ""
    for piece in script.split(";"):
        pending += f"{piece};"
        if sqlite3.complete_statement(pending):
            if pending.strip(" \n;"):
                yield pending
            pending = ""


@contextlib.contextmanager
def transaction(connection: sqlite3.Connection) -> Iterator[None]:
    """All or nothing, and no other writer in between."""
    connection.execute("BEGIN IMMEDIATE")
    try:
        yield
    except BaseException:
        with contextlib.suppress(sqlite3.Error):  # a full disk has rolled back already
            connection.execute("ROLLBACK")
        raise
    connection.execute("COMMIT")


def explained(path: Path, error: Exception) -> StoreError:
    """A database error in words that help."""
    told = str(error)
    if "full" in told:
        remedy = "The disk is full. Free some space and run the same command again: it goes on where it was."
    elif "readonly" in told or "unable to open" in told:
        remedy = "Check that the folder is there and may be written to, or use another --store."
    elif "locked" in told:
        remedy = "Another program holds it. Close that one and try again."
    elif "malformed" in told or "not a database" in told:
        remedy = "It is damaged. Put back a copy from your backup, or use another --store."
    else:
        remedy = "Check the disk, then run the same command again."
    return StoreError(f"The store {path} could not be used ({told}). {remedy}")
