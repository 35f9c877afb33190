"""Documents taken in before anything was kept for corrections: they are read once more when they are needed."""

from __future__ import annotations

from importer.kept import KeptSheet
from importer.store import evidence
from importer.store.corrections import NOTHING_KEPT, Case, load, write_standing
from importer.store.ledger import Store
from importer.store.originals import original
from importer.store.reading import Job, LocalReaders, Options, read_job
from importer.store.schema import StoreError, transaction


def load_anyway(store: Store, identity: str) -> Case:
    """An analysis with everything laid over it, read again first where nothing of it was kept. Raises StoreError."""
    row = store.connection.execute(
        "SELECT a.sha256, d.name FROM analyses a JOIN documents d USING (sha256) WHERE a.id = ?", (identity,)
    ).fetchone()
    if row is not None and evidence.kept_of(store.connection, row[0]) is None:
        _read_again(store, *row)
    return load(store, identity)


def _read_again(store: Store, sha256: str, name: str) -> None:
    if not store.writable:
        raise StoreError(
            f"{name} was taken in by an earlier version and has to be read once more for this, but the store cannot be "
            "written to."
        )
    data = original(store, sha256)
    if data is None:
        raise StoreError(NOTHING_KEPT.format(name))
    options = Options()
    with LocalReaders(1, options) as readers:
        sheet = readers.submit(read_job, Job(name, data, options)).result()
    found = [
        i for (i,) in store.connection.execute("SELECT id FROM analyses WHERE sha256 = ? ORDER BY number", (sha256,))
    ]
    if not isinstance(sheet, KeptSheet) or not sheet.printed or [one.id for one in sheet.analyses] != found:
        raise StoreError(f"{name} reads differently now than when it was taken in, so nothing can be laid over it.")
    with transaction(store.connection):
        evidence.keep(store.connection, sha256, sheet)
        for identity in found:
            write_standing(store, identity)
        store.tell("read", sha256, detail="once more, for corrections")
