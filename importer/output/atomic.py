"""Files that are written whole or not at all."""

from __future__ import annotations

import contextlib
import errno
import os
import stat
import tempfile
from pathlib import Path


class WriteError(Exception):
    """A result that could not be written; the message says why and what to do."""


def write_text(path: Path, text: str) -> None:
    """Writes UTF-8 text to a file in one step: until the last moment the old file stays as it was.

    The text goes to a hidden file in the same folder, which then takes the place of the target. A target that is a
    link is written through; a target that is a device or a pipe is written to directly. Raises WriteError.
    """
    write_bytes(path, text.encode("utf-8"))


def write_bytes(path: Path, data: bytes) -> None:
    """The same for data that is no text. Raises WriteError."""
    try:
        if path.is_dir():
            raise WriteError(f"{path} is a folder. Give the name of a file.")
        if path.exists() and not path.is_file():
            with path.open("wb") as stream:
                stream.write(data)
            return
        if path.exists() and not os.access(path, os.W_OK):
            raise PermissionError(errno.EACCES, os.strerror(errno.EACCES))
        _replace(path.resolve() if path.is_symlink() else path, data)
    except OSError as error:
        raise WriteError(_explain(path, error)) from None


def _replace(target: Path, data: bytes) -> None:
    mode = _mode_for(target)
    handle, name = tempfile.mkstemp(prefix=f".{target.name[:40]}.", suffix=".part", dir=target.parent)
    try:
        with os.fdopen(handle, "wb") as stream:
            stream.write(data)
            stream.flush()
            os.fsync(stream.fileno())
        with contextlib.suppress(OSError):  # a file system without permissions still holds the file
            Path(name).chmod(mode)
        Path(name).replace(target)
    except BaseException:
        with contextlib.suppress(OSError):
            Path(name).unlink()
        raise
    sync_folder(target.parent)


def _mode_for(target: Path) -> int:
    """The permissions of the file that is replaced, or those that a new file gets from the umask."""
    try:
        return stat.S_IMODE(target.stat().st_mode)
    except OSError:
        mask = os.umask(0)
        os.umask(mask)
        return 0o666 & ~mask


def sync_folder(folder: Path) -> None:
    """Makes the new name durable where the system allows a folder to be synchronised."""
    with contextlib.suppress(OSError):
        handle = os.open(folder, os.O_RDONLY)
        try:
            os.fsync(handle)
        finally:
            os.close(handle)


_REASONS = {
    errno.ENOSPC: "the disk is full. Free some space or choose another folder.",
    errno.EDQUOT: "the disk quota is used up. Free some space or choose another folder.",
    errno.EACCES: "there is no permission to write there. Choose another folder.",
    errno.EPERM: "there is no permission to write there. Choose another folder.",
    errno.EROFS: "the folder is read-only. Choose another folder.",
    errno.ENOENT: "the folder does not exist. Make it first.",
    errno.ENOTDIR: "a part of that path is a file, not a folder.",
    errno.ENAMETOOLONG: "the name is too long.",
}


def _explain(path: Path, error: OSError) -> str:
    if error.errno == errno.ENOENT and path.absolute().parent.is_dir():
        return f"{path} was not written: nothing can be made in that folder. Choose another folder."
    reason = _REASONS.get(error.errno or 0, f"{error.strerror or error}.")
    return f"{path} was not written: {reason} The file that was there before, if any, is unchanged."
