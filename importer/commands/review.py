"""The command ``review``: the desk in the browser, or the same on the terminal."""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path

from importer.commands.intake import store_folder
from importer.commands.run import READ, UsageError, tell
from importer.store.ledger import FILE_NAME


@dataclass(frozen=True, slots=True)
class Request:
    """One ``review``, as it was asked for."""

    store: Path | None = None
    host: str = "127.0.0.1"
    port: int = 0
    browser: bool = True


def review(request: Request) -> int:
    """Opens the desk; returns the exit status once it is stopped."""
    folder = known_store(request.store)
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


def known_store(named: Path | None) -> Path:
    """The folder of a store that is there. Raises UsageError."""
    folder = store_folder(named, make=False)
    if not (folder / FILE_NAME).is_file():
        raise UsageError(f"There is no store in {folder}. Fill one with `onebasis inbox` or `bulk`, or name --store.")
    return folder
