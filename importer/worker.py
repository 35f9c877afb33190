"""The reading process: takes requests on standard input, answers on standard output, one JSON line each.

It is started by ``guard``, which watches over it. Limits that the system can enforce are set here, before anything
of a file is touched.
"""

from __future__ import annotations

import contextlib
import errno
import json
import os
import signal
import sys
from collections.abc import Callable
from importlib import import_module
from pathlib import Path
from typing import IO, TYPE_CHECKING, Any

from importer.limits import MIB

if TYPE_CHECKING:
    from importer.models import ProblemCode, Sheet

# The watcher ends a reading that takes too long. Should the watcher itself be gone, this many seconds later the
# process ends on its own.
_GRACE = 15


def serve() -> None:
    """Answers requests until standard input ends."""
    memory, reads = int(sys.argv[2]), sys.argv[3]
    requests, answers = _private_streams()
    _limit(memory)
    read_sheet, failure = _load(reads)
    from importer.errors import OwnFileError

    for line in requests:
        request = json.loads(line)
        _alarm(request["seconds"] + _GRACE)
        status, body = "broken", None
        if read_sheet is not None:
            try:
                body, failure = _read(read_sheet, request, memory)
            except OwnFileError as error:
                status, failure = "own-file", str(error)
        if body is None:
            _answer(answers, {"status": status, "message": failure}, "{}")
        else:
            _answer(answers, {"status": "read"}, body)
        _alarm(0)


def _private_streams() -> tuple[IO[bytes], IO[bytes]]:
    """The two ends of the conversation, out of reach of whatever else prints or reads in this process."""
    requests = os.fdopen(os.dup(0), "rb")
    answers = os.fdopen(os.dup(1), "wb")
    nothing = os.open(os.devnull, os.O_RDWR)
    os.dup2(nothing, 0)
    os.dup2(nothing, 1)
    os.close(nothing)
    return requests, answers


def _limit(memory: int) -> None:
    if sys.platform == "win32":
        return
    import resource

    for kind, value in ((resource.RLIMIT_AS, memory), (resource.RLIMIT_CORE, 0)):
        with contextlib.suppress(OSError, ValueError):  # not every system enforces every limit
            resource.setrlimit(kind, (value, value))
    signal.signal(signal.SIGINT, signal.SIG_IGN)  # it is the watcher that is interrupted


def _alarm(seconds: float) -> None:
    if sys.platform != "win32":
        signal.setitimer(signal.ITIMER_REAL, seconds)


def _load(reads: str) -> tuple[Callable[..., Sheet] | None, str]:
    """Loads the function ``module:name`` that reads a file; None and the reason where that fails."""
    module, _, name = reads.partition(":")
    try:
        function: Callable[..., Sheet] = getattr(import_module(module), name)
    except Exception as error:
        return None, f"onebasis cannot start: {error}. Install it again."
    return function, ""


def _answer(answers: IO[bytes], head: dict[str, Any], body: str) -> None:
    head["memory"] = _held()
    answers.write(json.dumps(head).encode() + b"\n" + body.encode() + b"\n")
    answers.flush()


def _held() -> int:
    """The memory this process holds, in bytes; 0 where the system does not tell."""
    try:
        pages = Path("/proc/self/statm").read_text(encoding="ascii").split()[1]
    except (OSError, IndexError):
        return 0
    return int(pages) * os.sysconf("SC_PAGE_SIZE")


def _read(read_sheet: Callable[..., Sheet], request: dict[str, Any], memory: int) -> tuple[str | None, str]:
    """The sheet as JSON; None and a reason where the fault is not with the file but with the installation.

    Raises OwnFileError where the brewer's own words are at fault.
    """
    from importer.errors import DataError, OwnFileError, SheetError, no_room
    from importer.intake.names import safe_name

    path = Path(os.fsdecode(bytes.fromhex(request["path"])))
    name = safe_name(path)
    try:
        sheet = read_sheet(path, request["basis"], estimates=request["estimates"], ratio_rule=request["ratio_rule"])
        return sheet.model_dump_json(by_alias=True), ""
    except OwnFileError:
        raise
    except DataError as error:
        return None, str(error)
    except SheetError as error:
        return _problem(name, error.code, str(error)), ""
    except OSError as error:
        if error.errno in (errno.ENOSPC, errno.EDQUOT):
            return None, no_room(error)
        return _problem(name, "damaged", _unexpected(name, error)), ""
    except MemoryError:
        allowed = f"the {memory // MIB} MB that one file may use"
        message = f"{name} needs more memory than {allowed}. Split it, or scan it at 300 dpi."
        return _problem(name, "too-large", message), ""
    except RecursionError:
        message = f"{name} is nested too deeply for a document. Ask the sender for another copy."
        return _problem(name, "damaged", message), ""
    except Exception as error:
        return _problem(name, "damaged", _unexpected(name, error)), ""


def _problem(name: str, code: ProblemCode, message: str) -> str:
    from importer.models import Problem, Sheet

    return Sheet(problems=(Problem(file=name, code=code, message=message),)).model_dump_json(by_alias=True)


def _unexpected(name: str, error: Exception) -> str:
    return f"{name} could not be read: {_where(error)}. Please report this with the file."


def _where(error: Exception) -> str:
    """An unexpected error in words that help whoever has to find it, without the contents of the file."""
    trace = error.__traceback__
    place = ""
    while trace is not None:
        code = trace.tb_frame.f_code
        if "importer" in Path(code.co_filename).parts:
            place = f" in {Path(code.co_filename).name}, line {trace.tb_lineno}"
        trace = trace.tb_next
    return f"an unexpected {type(error).__name__}{place}"
