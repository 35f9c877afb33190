"""Disks for tests: one that cannot be written to, and one that is full soon.

The administrator may mount them; for anybody else the permissions of folders do for the first, and the second is left
out.
"""

from __future__ import annotations

import contextlib
import os
import subprocess
import sys
from collections.abc import Iterator
from pathlib import Path

import pytest


@contextlib.contextmanager
def read_only(folder: Path) -> Iterator[None]:
    """Within the block nothing below the folder can be written."""
    if sys.platform == "win32":
        pytest.skip("folders are not read-only there")
    if os.geteuid() == 0:
        with _mounted(["--bind", str(folder), str(folder)], folder):
            _mount(["-o", "remount,ro,bind", str(folder)])
            yield
        return
    folders = [folder, *(path for path in folder.rglob("*") if path.is_dir())]
    for path in folders:
        path.chmod(0o500)
    try:
        yield
    finally:
        for path in folders:
            path.chmod(0o700)


@contextlib.contextmanager
def small_disk(folder: Path, size: int) -> Iterator[None]:
    """Within the block the folder is an empty disk of its own with room for so many bytes."""
    if sys.platform != "linux" or os.geteuid() != 0:
        pytest.skip("needs somebody who may mount disks")
    with _mounted(["-t", "tmpfs", "-o", f"size={size}", "small", str(folder)], folder):
        yield


def enlarge(folder: Path, size: int) -> None:
    """Gives a small disk more room."""
    _mount(["-o", f"remount,size={size}", str(folder)])


def fill(folder: Path, leave: int = 0) -> Path:
    """A file that takes all the room but so many bytes."""
    path = folder / "filler"
    with contextlib.suppress(OSError), path.open("wb", buffering=0) as file:
        while True:
            file.write(bytes(4096))
    if leave:
        os.truncate(path, max(0, path.stat().st_size - leave))
    return path


@contextlib.contextmanager
def _mounted(arguments: list[str], folder: Path) -> Iterator[None]:
    _mount(arguments)
    try:
        yield
    finally:
        subprocess.run(["umount", "--lazy", str(folder)], check=True)


def _mount(arguments: list[str]) -> None:
    done = subprocess.run(["mount", *arguments], capture_output=True, text=True, check=False)
    if done.returncode:
        pytest.skip(f"nothing can be mounted here: {done.stderr.strip()}")
