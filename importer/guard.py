"""Reads files in a process of its own, so that no file can take the program down, hang it or eat the machine.

One warm process serves many files. It is replaced when a file crashed it or kept it too long, and now and then for
good measure. What it sends back is JSON that is checked against the models: nothing of the process is trusted.
"""

from __future__ import annotations

import contextlib
import json
import os
import queue
import signal
import subprocess
import sys
import tempfile
import threading
import time
from pathlib import Path
from types import TracebackType
from typing import IO, TYPE_CHECKING, Any, Literal, Self

from importer.errors import no_room
from importer.limits import FILES_PER_WORKER, MAX_MEMORY, MAX_SECONDS, MIB, WORKER_GROWTH

if TYPE_CHECKING:
    from importer.models import Family, ProblemCode, Sheet

RatioRule = Literal["published", "plus-five"]

_BOOT = "import json, sys; sys.path[:] = json.loads(sys.argv[1]); from importer.worker import serve; serve()"
READS = "importer.pipeline:read_sheet"
_LONGEST_ANSWER = 256 * MIB
# A process that died of memory leaves no message; having come this close to the cap is the evidence.
_NEAR_CAP = 0.6


class InstallationError(Exception):
    """The reading process does not start, cannot load its data or has no room to work: no file is to blame."""


class _DeathError(Exception):
    """The process ended while it read; ``status`` is its exit status, ``near_cap`` whether memory was short.

    ``status`` is None where it answered with something that is no reading.
    """

    def __init__(self, status: int | None, near_cap: bool = False) -> None:
        super().__init__(status)
        self.status = status
        self.near_cap = near_cap


class _Process:
    """One reading process and the thread that waits for its answers."""

    def __init__(self, memory: int, reads: str) -> None:
        options: dict[str, Any] = {}
        if sys.platform == "win32":
            options["creationflags"] = subprocess.CREATE_NEW_PROCESS_GROUP
        else:
            options["start_new_session"] = True
        search = [entry or str(Path.cwd()) for entry in sys.path]
        # A process that is killed cannot tidy up: its temporary files are in a folder that goes with it.
        try:
            self._scratch = tempfile.TemporaryDirectory(prefix="onebasis-", ignore_cleanup_errors=True)
        except OSError as error:
            raise InstallationError(no_room(error)) from None
        options["env"] = {
            # One file keeps one core busy; threads of number libraries would only reserve memory.
            "OMP_THREAD_LIMIT": "1",
            "OPENBLAS_NUM_THREADS": "1",
            **os.environ,
            "TMPDIR": self._scratch.name,
            "TEMP": self._scratch.name,
        }
        self.memory = memory
        self.files = 0
        self.child = subprocess.Popen(
            [sys.executable, "-I", "-c", _BOOT, json.dumps(search), str(memory), reads],
            stdin=subprocess.PIPE,
            stdout=subprocess.PIPE,
            stderr=subprocess.DEVNULL,
            **options,
        )
        assert self.child.stdin is not None
        assert self.child.stdout is not None
        self._requests: IO[bytes] = self.child.stdin
        self._answers: queue.Queue[bytes] = queue.Queue()
        self._stdout: IO[bytes] = self.child.stdout
        self._listener = threading.Thread(target=self._listen, daemon=True)
        self._listener.start()

    def _listen(self) -> None:
        with contextlib.suppress(OSError, ValueError):
            while line := self._stdout.readline(_LONGEST_ANSWER):
                self._answers.put(line)
        self._answers.put(b"")

    def ask(self, request: dict[str, Any], seconds: float) -> tuple[dict[str, Any], bytes]:
        """Sends one request; returns the head and the body of the answer. Raises TimeoutError or _DeathError."""
        self.files += 1
        with contextlib.suppress(BrokenPipeError, OSError):
            self._requests.write(json.dumps(request).encode() + b"\n")
            self._requests.flush()
        head = self._answer(seconds)
        body = self._answer(30) if head else b""
        if not head or not body:
            raise self._death()
        return _head(head), body

    def _answer(self, seconds: float) -> bytes:
        """The next line of an answer, b"" where the process ended. Raises TimeoutError."""
        end = time.monotonic() + seconds
        while (left := end - time.monotonic()) > 0:
            # In short waits, because on Windows an interruption is only noticed between them.
            with contextlib.suppress(queue.Empty):
                return self._answers.get(timeout=min(left, 0.5))
        raise TimeoutError

    def _death(self) -> _DeathError:
        before = _largest_child()
        try:
            status = self.child.wait(timeout=10)
        except subprocess.TimeoutExpired:
            self.end()
            status = self.child.returncode
        largest = _largest_child()
        return _DeathError(status, largest > before and largest > _NEAR_CAP * self.memory)

    def end(self) -> None:
        """Ends the process and whatever it started, also where the process itself is gone already.

        It holds nothing that is worth a tidy end.
        """
        if sys.platform != "win32":
            with contextlib.suppress(ProcessLookupError, PermissionError):
                os.killpg(self.child.pid, signal.SIGKILL)
        elif self.child.poll() is None:
            subprocess.run(
                ["taskkill", "/F", "/T", "/PID", str(self.child.pid)],
                stdout=subprocess.DEVNULL,
                stderr=subprocess.DEVNULL,
                check=False,
            )
        with contextlib.suppress(OSError):
            self._requests.close()
        self.child.wait()
        self._listener.join(timeout=5)
        if not self._listener.is_alive():
            self._stdout.close()
        self._scratch.cleanup()


def _head(line: bytes) -> dict[str, Any]:
    """The first line of an answer. Raises _DeathError where it is none."""
    try:
        head = json.loads(line)
    except (ValueError, RecursionError):
        head = None
    if not isinstance(head, dict) or not isinstance(head.get("memory", 0), int):
        raise _DeathError(None)
    return head


def _largest_child() -> int:
    """The most memory that any ended child has held, in bytes; 0 where the system does not tell."""
    if sys.platform == "win32":
        return 0
    import resource

    most = resource.getrusage(resource.RUSAGE_CHILDREN).ru_maxrss
    return most if sys.platform == "darwin" else most * 1024


class GuardedReader:
    """Reads files one after another under guard; one reader per thread. Use it in a ``with`` block."""

    def __init__(self, seconds: float = MAX_SECONDS, memory: int = MAX_MEMORY, reads: str = READS) -> None:
        self._seconds = seconds
        self._memory = memory
        self._reads = reads
        self._process: _Process | None = None

    def start(self) -> Self:
        """Starts the reading process ahead of the first file, so that it warms up meanwhile."""
        self._ready()
        return self

    def _ready(self) -> _Process:
        if self._process is None:
            self._process = _Process(self._memory, self._reads)
        return self._process

    def read(
        self,
        path: Path,
        basis: Family = "EBC",
        *,
        estimates: bool = True,
        ratio_rule: RatioRule = "published",
    ) -> Sheet:
        """One file as a sheet; whatever goes wrong with it is among the sheet's problems.

        Raises InstallationError, and OwnFileError where the brewer's own words cannot be used.
        """
        request = {
            "path": os.fsencode(path.absolute()).hex(),
            "basis": basis,
            "estimates": estimates,
            "ratio_rule": ratio_rule,
            "seconds": self._seconds,
        }
        while True:
            # An earlier file may have left the process in a bad state: only a fresh one convicts a file of a crash.
            fresh = self._process is None or self._process.files == 0
            try:
                return self._read_once(request)
            except TimeoutError:
                self.close()
                return _failed(
                    path,
                    "took-too-long",
                    f"took longer than {self._seconds:g} seconds and was given up. "
                    "Try again with a larger --time-limit, or split the file.",
                )
            except _DeathError as death:
                self.close()
                if fresh:
                    return _explain_death(path, death, self._memory)

    def _read_once(self, request: dict[str, Any]) -> Sheet:
        process = self._ready()
        head, body = process.ask(request, self._seconds)
        if process.files >= FILES_PER_WORKER or head.get("memory", 0) > WORKER_GROWTH:
            self.close()
        if head.get("status") != "read":
            self.close()
            if head.get("status") == "own-file":
                from importer.errors import OwnFileError

                raise OwnFileError(str(head.get("message")))
            raise InstallationError(str(head.get("message", "the reading process does not start")))
        from importer.kept import KeptSheet

        try:
            return KeptSheet.model_validate_json(body)
        except ValueError:
            raise _DeathError(None) from None

    def close(self) -> None:
        """Ends the reading process."""
        if self._process is not None:
            self._process.end()
            self._process = None

    def __enter__(self) -> Self:
        return self

    def __exit__(
        self, kind: type[BaseException] | None, error: BaseException | None, trace: TracebackType | None
    ) -> None:
        self.close()


def _failed(path: Path, code: ProblemCode, message: str) -> Sheet:
    from importer.intake.names import safe_name
    from importer.models import Problem, Sheet

    name = safe_name(path)
    return Sheet(problems=(Problem(file=name, code=code, message=f"{name} {message}"),))


def _explain_death(path: Path, death: _DeathError, memory: int) -> Sheet:
    killed = sys.platform != "win32" and death.status == -signal.SIGKILL
    if death.near_cap or killed:
        return _failed(
            path,
            "too-large",
            f"needs more memory than the {memory // MIB} MB that one file may use. Split it, or scan it at 300 dpi.",
        )
    return _failed(
        path,
        "damaged",
        f"broke the reader ({_cause(death.status)}): it is damaged or harmful. Ask the sender for another copy.",
    )


def _cause(status: int | None) -> str:
    if status is None:
        return "an answer that is no reading"
    if status < 0:
        with contextlib.suppress(ValueError):
            return signal.Signals(-status).name
    return f"exit status {status}"
