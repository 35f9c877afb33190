"""One writer at a time: a lock that the system takes back when its holder ends, however it ends."""

from __future__ import annotations

import contextlib
import os
import sys
from collections.abc import Iterator
from pathlib import Path

from importer.store.schema import StoreError

FILE_NAME = ".lock"


@contextlib.contextmanager
def only_writer(folder: Path) -> Iterator[None]:
    """Holds the lock of a store's folder. Raises StoreError where another process has it."""
    try:
        handle = os.open(folder / FILE_NAME, os.O_RDWR | os.O_CREAT | getattr(os, "O_NOFOLLOW", 0), 0o666)
    except OSError as error:
        raise StoreError(f"The store's folder {folder} cannot be written to: {error.strerror or error}.") from None
    try:
        try:
            _lock(handle)
        except OSError:
            raise StoreError(
                f"Another onebasis is taking in files for {folder}. Wait until it has ended, or stop it first."
            ) from None
        yield
    finally:
        os.close(handle)


def _lock(handle: int) -> None:
    if sys.platform == "win32":
        import msvcrt

        msvcrt.locking(handle, msvcrt.LK_NBLCK, 1)
    else:
        import fcntl

        fcntl.flock(handle, fcntl.LOCK_EX | fcntl.LOCK_NB)
