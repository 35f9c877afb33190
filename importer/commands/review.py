"""The command ``review``: the desk in the browser, or the same on the terminal."""

from __future__ import annotations

import getpass
import os
from dataclasses import dataclass
from pathlib import Path

from importer.commands.run import READ, UsageError, tell
from importer.commands.stored import known_store, opened
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
    if sum((request.show, request.write is not None, request.take is not None)) > 1:
        raise UsageError("Use one of --list, --write and --take at a time.")
    if request.show or request.write is not None or request.take is not None:
        return _on_terminal(request)
    folder = writable_store(request.store)
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


def _on_terminal(request: Request) -> int:
    from importer.commands import review_csv

    if request.take is not None:
        with Store(writable_store(request.store)) as store:
            return review_csv.take(store, request.take, request.reviewer or _login())
    with opened(request.store) as store:
        return review_csv.show(store) if request.write is None else review_csv.write(store, request.write)


def _login() -> str:
    """The name that the person is logged in with."""
    try:
        return getpass.getuser()
    except (KeyError, OSError):
        raise UsageError("Say who you are with --reviewer: every correction is kept with a name.") from None


def writable_store(named: Path | None) -> Path:
    """The folder of a store that is there and can be changed. Raises UsageError."""
    folder = known_store(named)
    if not all(os.access(path, os.W_OK) for path in (folder, folder / FILE_NAME)):
        raise UsageError(
            f"The store in {folder} cannot be written to, so nothing can be settled there. `onebasis review --list` "
            "and --write show what waits."
        )
    return folder
