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
from importer.store.reading import Options, cores
from importer.store.selection import Wanted, choose, on_basis


def has_store(named: Path | None) -> bool:
    """Whether there is a store to look into."""
    try:
        return (store_folder(named, make=False) / FILE_NAME).is_file()
    except UsageError:
        return False


@contextmanager
def opened(named: Path | None) -> Iterator[Store]:
    """The store. Raises UsageError where there is none."""
    folder = store_folder(named, make=False)
    if not (folder / FILE_NAME).is_file():
        raise UsageError(f"There is no store in {folder}. Fill one with `onebasis inbox` or `bulk`, or name --store.")
    with Store(folder) as store:
        yield store


def stored_analyses(store: Store, basis: Family = "EBC", wanted: Wanted | None = None) -> tuple[Analysis, ...]:
    """Every current analysis, in the order of its day, on a basis."""
    chosen = choose(store, wanted or Wanted())
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


def one_batch(analyses: Sequence[Analysis], name: str) -> Analysis:
    """The analysis of an id or a batch number. Raises UsageError where there is none, or more than one."""
    found = named_batch(analyses, name)
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
