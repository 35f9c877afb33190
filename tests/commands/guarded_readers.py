"""Stand-ins for the reading of a file, chosen by the file's name: what the guard has to survive."""

from __future__ import annotations

import os
import signal
import tempfile
import time
from pathlib import Path

from importer.errors import DataError, PasswordProtected
from importer.models import Problem, Sheet

_served: list[str] = []


def read(path: Path, basis: str, *, estimates: bool, ratio_rule: str) -> Sheet:
    name = path.name
    _served.append(name)
    if name.startswith("crash"):
        os.kill(os.getpid(), signal.SIGSEGV)
    if name.startswith("second-crash") and len(_served) > 1:
        os.kill(os.getpid(), signal.SIGSEGV)
    if name.startswith("exit"):
        os._exit(3)
    if name.startswith("hang"):
        tempfile.mkdtemp(prefix="left-behind-")
        path.with_suffix(".tmp").write_text(tempfile.gettempdir())
        time.sleep(600)
    if name.startswith("spawn-hang"):
        import subprocess

        child = subprocess.Popen(["sleep", "600"])
        path.with_suffix(".pid").write_text(str(child.pid))
        child.wait()
    if name.startswith("memory"):
        kept = []
        while True:
            kept.append(bytearray(32 * 1024 * 1024))
    if name.startswith("deep"):
        return read(path, basis, estimates=estimates, ratio_rule=ratio_rule)
    if name.startswith("bug"):
        raise ValueError("the file's secret content")
    if name.startswith("locked"):
        raise PasswordProtected("locked.pdf is locked with a password.")
    if name.startswith("data"):
        raise DataError("mappings/parameters.toml: nothing in it")
    if name.startswith("noise"):
        print("something a library prints")
        os.write(1, b"straight to the descriptor\n")
    told = f"pid {os.getpid()} basis {basis} estimates {estimates} rule {ratio_rule}"
    return Sheet(problems=(Problem(file=name, code="damaged", message=told),))
