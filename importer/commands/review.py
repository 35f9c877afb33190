"""The command ``review``: the desk in the browser, or the same on the terminal."""

from __future__ import annotations

import getpass
from dataclasses import dataclass
from pathlib import Path

from importer.commands.intake import store_folder
from importer.commands.run import READ, UsageError, tell
from importer.store.ledger import FILE_NAME, Store


@dataclass(frozen=True, slots=True)
class Request:
    """One ``review``, as it was asked for."""

    store: Path | None = None
    host: str = "127.0.0.1"
    port: int = 0
    browser: bool = True
    show: bool = False
    write: Path | None = None
    take: Path | None = None
    reviewer: str | None = None


def review(request: Request) -> int:
    """Opens the desk, or does the same on the terminal; returns the exit status."""
    folder = known_store(request.store)
    if sum((request.show, request.write is not None, request.take is not None)) > 1:
        raise UsageError("Use one of --list, --write and --take at a time.")
    if request.show or request.write is not None or request.take is not None:
        return _on_terminal(request, folder)
    try:
        from importer.desk.serve import AddressTakenError, serve
    except ModuleNotFoundError as error:
        raise UsageError(f"The desk needs {error.name}: pip install 'onebasis[desk]'.") from None
    try:
        serve(folder, request.host, request.port, browser=request.browser, told=tell)
    except AddressTakenError as error:
        raise UsageError(str(error)) from None
    except KeyboardInterrupt:
        tell("The desk is closed. Everything that was saved is in the store.")
    return READ


def _on_terminal(request: Request, folder: Path) -> int:
    from importer.commands import review_csv

    with Store(folder) as store:
        if request.write is not None:
            return review_csv.write(store, request.write)
        if request.take is not None:
            return review_csv.take(store, request.take, request.reviewer or _login())
        return review_csv.show(store)


def _login() -> str:
    """The name that the person is logged in with."""
    try:
        return getpass.getuser()
    except (KeyError, OSError):
        raise UsageError("Say who you are with --reviewer: every correction is kept with a name.") from None


def known_store(named: Path | None) -> Path:
    """The folder of a store that is there. Raises UsageError."""
    folder = store_folder(named, make=False)
    if not (folder / FILE_NAME).is_file():
        raise UsageError(f"There is no store in {folder}. Fill one with `onebasis inbox` or `bulk`, or name --store.")
    return folder
