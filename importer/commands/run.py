"""What every command shares: messages on standard error, exit statuses, and no traceback for a user."""

from __future__ import annotations

import os
import sys
from collections.abc import Callable
from pathlib import Path
from typing import NoReturn, TextIO

import typer

READ = 0
NOT_ALL_READ = 1
WRONG_USAGE = 2
IN_REVIEW = 3
INTERRUPTED = 130
PIPE_CLOSED = 141


class UsageError(Exception):
    """A request that makes no sense; the message says why."""


def check_target(option: str, path: Path) -> None:
    """Refuses a target that cannot be written before any work is done. Raises UsageError."""
    if path.is_dir():
        raise UsageError(f"{option}: {path} is a folder. Give the name of a file.")
    if not path.absolute().parent.is_dir():
        raise UsageError(f"{option}: there is no folder {path.parent}. Make it first.")


def run(command: Callable[[], int]) -> NoReturn:
    """Runs a command and ends the program with its exit status."""
    from importer.errors import DataError, OwnFileError
    from importer.guard import InstallationError
    from importer.output.atomic import WriteError

    _prepare_streams()
    try:
        status = command()
        sys.stdout.flush()
    except (UsageError, OwnFileError) as error:
        tell(f"Error: {error}")
        status = WRONG_USAGE
    except (WriteError, DataError, InstallationError) as error:
        tell(f"Error: {error}")
        status = NOT_ALL_READ
    except BrokenPipeError:
        _silence(sys.stdout)
        status = PIPE_CLOSED
    except KeyboardInterrupt:
        tell("Interrupted. Nothing was written.")
        status = INTERRUPTED
    except Exception as error:
        if os.environ.get("ONEBASIS_DEBUG"):
            raise
        tell(f"Error: an unexpected {type(error).__name__}: {error}")
        tell("This is a fault of the program. Please report it; with ONEBASIS_DEBUG=1 set, the details are shown.")
        status = NOT_ALL_READ
    raise typer.Exit(status)


def tell(message: str) -> None:
    """A line on standard error, without anything a terminal would act on."""
    from importer.output.terminal import clean

    print(clean(message), file=sys.stderr, flush=True)


def _prepare_streams() -> None:
    """Output is UTF-8 everywhere; a character that cannot be shown is replaced and never ends the program."""
    for stream in (sys.stdout, sys.stderr):
        reconfigure = getattr(stream, "reconfigure", None)
        if reconfigure is not None:
            reconfigure(encoding="utf-8", errors="replace")


def _silence(stream: TextIO) -> None:
    """The reader of a pipe is gone: what is still in the buffer must not raise again when the program ends."""
    try:
        nowhere = os.open(os.devnull, os.O_WRONLY)
        os.dup2(nowhere, stream.fileno())
    except (OSError, ValueError):
        sys.stdout = None
