"""Moving a file of any size: within a disk by its name, to another one by a copy that is whole before it counts."""

from __future__ import annotations

import contextlib
import errno
import os
import shutil
import tempfile
from pathlib import Path

# What has to stay free for the store itself.
_SPARE = 64 * 1024 * 1024


def move(path: Path, target: Path, workshop: Path) -> None:
    """Moves a file to a name that is free. ``workshop`` is a folder on the disk of the target. Raises OSError."""
    target.parent.mkdir(parents=True, exist_ok=True)
    try:
        path.rename(target)
    except OSError as error:
        if error.errno != errno.EXDEV:
            raise
        _copy(path, target, workshop)
        path.unlink()


def _copy(path: Path, target: Path, workshop: Path) -> None:
    before = path.stat()
    if before.st_size + _SPARE > shutil.disk_usage(workshop).free:
        raise OSError(errno.ENOSPC, os.strerror(errno.ENOSPC))
    handle, name = tempfile.mkstemp(dir=workshop)
    unfinished = Path(name)
    try:
        with path.open("rb") as source, os.fdopen(handle, "wb") as stream:
            shutil.copyfileobj(source, stream, 1024 * 1024)
            stream.flush()
            os.fsync(stream.fileno())
        after = path.stat()
        if (after.st_size, after.st_mtime_ns) != (before.st_size, before.st_mtime_ns):
            raise OSError(errno.EBUSY, "it was changed meanwhile")
        os.utime(unfinished, ns=(before.st_atime_ns, before.st_mtime_ns))
        unfinished.rename(target)
    except BaseException:
        with contextlib.suppress(OSError):
            unfinished.unlink()
        raise
