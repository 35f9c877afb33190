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


Columns = Sequence[tuple[str, float]]
COLUMNS: Columns = (("Parameter", 60), ("Result", 320), ("Unit", 430))
"""The heads of a table of results, and where its columns begin."""


def draw(
    path: Path,
    rows: Sequence[Sequence[str]] = SOUND,
    *,
    method: str = "Methods: EBC",
    columns: Columns = COLUMNS,
    more: Sequence[tuple[str, str]] = (),
    **head: str,
) -> Path:
    """One page with a head (and ``more`` entries of it), a statement of method and a table of results."""
    path.parent.mkdir(parents=True, exist_ok=True)
    canvas = Canvas(str(path), pagesize=A4, invariant=True)
    height = 780.0
    canvas.setFont("Helvetica", 11)
    entries = [(caption, head.get(caption.lower().split()[0], text)) for caption, text in HEAD]
    for caption, text in (*entries, *more):
        canvas.drawString(60, height, f"{caption}:")
        canvas.drawString(200, height, text)
        height -= 20
    canvas.drawString(60, height - 10, method)
    height -= 50
    canvas.setFont("Helvetica-Bold", 11)
    for text, x in columns:
        canvas.drawString(x, height, text)
    canvas.setFont("Helvetica", 11)
    for row in rows:
        height -= 22
        for (_, x), text in zip(columns, row, strict=True):
            canvas.drawString(x, height, text)
    canvas.save()
    return path


def uncertain_malt(path: Path, **head: str) -> Path:
    """A sheet that names two malts; nothing else of it is in doubt."""
    return draw(path, more=(("Malt", "Pilsner Malt"),), **head)


TWO_LABORATORIES: Columns = (("Parameter", 60), ("Laboratory A", 270), ("Laboratory B", 370), ("Unit", 480))


def two_columns(
    path: Path,
    rows: Sequence[Row] = SOUND,
    *,
    columns: Columns = TWO_LABORATORIES,
    more: Sequence[tuple[str, str]] = (),
    **head: str,
) -> Path:
    """A sheet on which a second column of values, one in a hundred higher, stands behind that of the results."""
    both = [(label, value, _higher(value), unit) for label, value, unit in rows]
    return draw(path, both, columns=columns, more=more, **head)


def _higher(value: str) -> str:
    return f"{float(value) * 1.01:.{len(value.partition('.')[2])}f}"


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
