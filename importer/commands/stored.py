"""What the commands share that look into the store: opening it, and finding analyses by id, batch or file."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from contextlib import contextmanager
from pathlib import Path

from importer.commands.intake import store_folder
from importer.commands.run import UsageError, tell
from importer.deciding.choosing import named_batch
from importer.deciding.ground import day_of, header
from importer.models import Analysis, Family
from importer.store.ledger import FILE_NAME, Store
from importer.store.looking_in import open_to_look
from importer.store.reading import Options, cores
from importer.store.selection import Chosen, Wanted, choose, named, on_basis


def has_store(folder: Path | None) -> bool:
    """Whether there is a store to look into."""
    try:
        return (store_folder(folder, make=False) / FILE_NAME).is_file()
    except UsageError:
        return False


def no_store(folder: Path | None) -> str:
    """Why there is none, and what to do."""
    try:
        return _none_in(store_folder(folder, make=False))
    except UsageError as error:
        return str(error)


def _none_in(folder: Path) -> str:
    return f"There is no store in {folder}. Fill one with `onebasis inbox` or `bulk`, or name --store."


def known_store(chosen: Path | None) -> Path:
    """The folder of a store that is there. Raises UsageError."""
    folder = store_folder(chosen, make=False)
    if not (folder / FILE_NAME).is_file():
        raise UsageError(_none_in(folder))
    return folder


@contextmanager
def opened(folder: Path | None) -> Iterator[Store]:
    """The store, for reading only where it cannot be written to. Raises UsageError where there is none."""
    with open_to_look(known_store(folder)) as store:
        yield store


def told_where_nothing_is_kept(store: Store, what: str) -> bool:
    """True, once it is told, where the store cannot be written to: ``what`` is done, but not remembered."""
    if not store.writable:
        tell(f"The store in {store.folder} cannot be written to, so {what}.")
    return not store.writable


def stored_analyses(store: Store, wanted: Wanted | None = None) -> tuple[Analysis, ...]:
    """Every current analysis, in the order of its day, on the EBC basis."""
    return choose(store, wanted or Wanted()).analyses


def on_other_basis(store: Store, analyses: Sequence[Analysis], basis: Family) -> tuple[Analysis, ...]:
    """Stored analyses of the EBC basis on another one; their originals are read again the first time."""
    chosen = Chosen(tuple(analyses), 0, {analysis.source.sha256: analysis.source.file for analysis in analyses})
    return tuple(on_basis(store, chosen, Options(basis), cores()))


def read_file(path: Path, basis: Family) -> tuple[Analysis, ...]:
    """The analyses of a sheet that is no part of the store. Raises UsageError where it cannot be read."""
    from importer.guard import GuardedReader

    with GuardedReader() as reader:
        sheet = reader.read(path, basis)
    for problem in sheet.problems:
        tell(f"{path}: {problem.message} [{problem.code}]")
    if not sheet.analyses:
        raise UsageError(f"{path} holds no analysis that could be read.")
    return sheet.analyses


def one_batch(store: Store, name: str) -> Analysis:
    """The analysis of an id or a batch number. Raises UsageError where there is none, or more than one."""
    found = named_batch(named(store, name), name)
    if not found:
        raise UsageError(
            f"There is no batch or id {name!r} in the store, and no such file. `onebasis export` shows what is there."
        )
    if len(found) > 1:
        told = "; ".join(
            f"{a.id} ({header(a, 'supplier')} {header(a, 'malt')}, {day_of(a) or 'no day'})" for a in found
        )
        raise UsageError(f"There are {len(found)} analyses of batch {name}. Name one by its id: {told}.")
    return found[0]
