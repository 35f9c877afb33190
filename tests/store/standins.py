"""Sheets of one line and a reader for them, so that the store is tested apart from the reading of real documents."""

from __future__ import annotations

import hashlib
import os
import signal
import time
from collections.abc import Callable
from concurrent.futures import Executor, Future
from pathlib import Path
from typing import Any

from importer.models import Analysis, Problem, Sheet
from importer.store.reading import Job
from tests.outputs import factory

READS = "tests.store.standins:read"
HEAD = "%SHEET"
UNSURE = "unsure: "
ROWS = "rows without a parameter: "


def sheet(
    batch: str = "A1",
    *,
    supplier: str = "Nordtal Malting",
    malt: str = "Pale Ale Malt",
    moisture: float = 4.2,
    day: str = "2024-11-14",
    state: str = "accepted",
    extra: str = "",
    rows: int = 0,
    unsure: str = "",
) -> bytes:
    """The content of a sheet; ``extra`` makes it another content without another meaning.

    So many ``rows`` have no parameter, and an entry of the head is ``unsure``.
    """
    extra = f"{ROWS}{rows}" if rows else f"{UNSURE}{unsure}" if unsure else extra
    return "|".join([HEAD, supplier, malt, batch, str(moisture), day, state, extra]).encode()


def read(path: Path, basis: str, *, estimates: bool, ratio_rule: str) -> Sheet:
    """What ``read_sheet`` would give for such a sheet; anything else is no sheet."""
    return read_bytes(Path(path).name, Path(path).read_bytes(), basis)


def read_bytes(name: str, data: bytes, basis: str = "EBC") -> Sheet:
    if name.startswith("crash"):
        os.kill(os.getpid(), signal.SIGSEGV)
    if name.startswith("slow"):
        time.sleep(0.5)
    if name.startswith("hang"):
        time.sleep(600)
    parts = data.decode("utf-8", "replace").split("|")
    if parts[0] != HEAD or len(parts) < 8:
        return Sheet(problems=(Problem(file=name, code="unsupported-type", message=f"{name} is no sheet."),))
    return Sheet(analyses=(_analysis(name, data, parts, basis),))


def _analysis(name: str, data: bytes, parts: list[str], basis: str) -> Analysis:
    _, supplier, malt, batch, moisture, day, state, extra = parts[:8]
    unknown = int(extra.removeprefix(ROWS)) if extra.startswith(ROWS) else 0
    header = {"supplier": supplier, "malt": malt, "batch": batch, "analysed_on": day}
    fields = factory.header(**{key: value for key, value in header.items() if value})
    if extra.startswith(UNSURE):
        entry = extra.removeprefix(UNSURE)
        fields[entry] = fields[entry].model_copy(update={"state": "review"})
    sha256 = hashlib.sha256(data).hexdigest()
    figure = factory.moisture(float(moisture)).model_copy(
        update={"state": state, "reasons": () if state == "accepted" else ("the label could mean something else",)}
    )
    return factory.analysis(
        figure,
        id=f"{sha256[:16]}-1",
        source={"file": name, "sha256": sha256, "pages": (1,), "reading": "text"},
        header=fields,
        derived=(),
        checks=(),
        unrecognised=tuple(
            {"label": f"Row {number}", "value": "7 %", "unit": "%", "page": 1, "box": factory.BOX}
            for number in range(1, unknown + 1)
        ),
        state=state,
        mash="congress" if basis == "EBC" else "isothermal-65",
    )


class Inline(Executor):
    """Reads in the calling thread, and counts."""

    def __init__(self) -> None:
        self.read: list[str] = []

    def submit(self, function: Callable[..., Any], /, *arguments: Any, **named: Any) -> Future[Any]:
        (job,) = arguments
        assert isinstance(job, Job)
        self.read.append(job.name)
        future: Future[Any] = Future()
        future.set_result(read_bytes(job.name, job.data))
        return future
