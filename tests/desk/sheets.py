"""Sheets of invented malts as PDF, drawn row by row, and a store that has taken them in without any process."""

from __future__ import annotations

import tempfile
from collections.abc import Callable, Sequence
from concurrent.futures import Executor, Future
from pathlib import Path
from typing import Any

from reportlab.lib.pagesizes import A4
from reportlab.pdfgen.canvas import Canvas

from importer.pipeline import read_and_keep
from importer.store.filing import Filer
from importer.store.ledger import Delivery, Store
from importer.store.reading import Job, Options
from importer.store.taking import Taking, open_delivery

Row = tuple[str, str, str]
HEAD = (
    ("Supplier", "Nordtal Malting"),
    ("Malt", "Pale Ale Malt"),
    ("Batch", "N-1041"),
    ("Date of analysis", "2024-11-14"),
)
# As is = dry × (1 − moisture ÷ 100): 82.0 × (1 − 0.045) = 78.3, and soluble ÷ total nitrogen = 0.65 ÷ 1.60 = 40.6 %.
SOUND: tuple[Row, ...] = (
    ("Moisture", "4.5", "%"),
    ("Extract, fine grind, dry", "82.0", "%"),
    ("Extract, fine grind, as is", "78.3", "%"),
    ("Colour", "5.2", "EBC"),
    ("Total nitrogen, dry", "1.60", "%"),
    ("Soluble nitrogen, dry", "0.65", "%"),
    ("Kolbach index", "40.6", "%"),
    ("Friability", "88", "%"),
)


def changed(label: str, value: str, *, rename: str | None = None, unit: str | None = None) -> tuple[Row, ...]:
    """The sound rows with one that is printed otherwise."""
    return tuple(
        (rename or row[0], value, row[2] if unit is None else unit) if row[0] == label else row for row in SOUND
    )


def draw(path: Path, rows: Sequence[Row] = SOUND, *, method: str = "Methods: EBC", **head: str) -> Path:
    """One page with a head, a statement of method and a table of results."""
    path.parent.mkdir(parents=True, exist_ok=True)
    canvas = Canvas(str(path), pagesize=A4, invariant=True)
    height = 780.0
    canvas.setFont("Helvetica", 11)
    for caption, text in HEAD:
        canvas.drawString(60, height, f"{caption}:")
        canvas.drawString(200, height, head.get(caption.lower().split()[0], text))
        height -= 20
    canvas.drawString(60, height - 10, method)
    height -= 50
    canvas.setFont("Helvetica-Bold", 11)
    for x, text in zip((60, 320, 430), ("Parameter", "Result", "Unit"), strict=True):
        canvas.drawString(x, height, text)
    canvas.setFont("Helvetica", 11)
    for label, value, unit in rows:
        height -= 22
        canvas.drawString(60, height, label)
        canvas.drawString(320, height, value)
        canvas.drawString(430, height, unit)
    canvas.save()
    return path


class Here(Executor):
    """Reads in the calling thread."""

    def submit(self, function: Callable[..., Any], /, *arguments: Any, **named: Any) -> Future[Any]:
        (job,) = arguments
        assert isinstance(job, Job)
        future: Future[Any] = Future()
        with tempfile.TemporaryDirectory() as folder:
            path = Path(folder, job.name)
            path.write_bytes(job.data)
            future.set_result(read_and_keep(path))
        return future


def take_in(folder: Path, *paths: Path, filed: bool = False) -> Path:
    """A store in a folder that holds these sheets; returns the folder."""
    folder.mkdir(exist_ok=True)
    with Store(folder) as store:
        filer = Filer(store) if filed else None
        taking = Taking(store, Here(), 1, Options(), lambda *_: None, filer=filer)
        deliveries = [open_delivery(path, "inbox" if filed else "bulk") for path in paths]
        taking.run(delivery for delivery in deliveries if isinstance(delivery, Delivery))
    return folder
