"""The command ``report``: one page about a year, a malt or a supplier."""

from __future__ import annotations

import contextlib
from dataclasses import dataclass
from pathlib import Path

from importer.commands.run import READ, UsageError, check_target, tell
from importer.commands.stored import opened, stored_analyses
from importer.deciding.agreed import read_agreed, without_malt
from importer.deciding.deliveries import read_deliveries
from importer.deciding.report import Complaint, NothingFoundError, make_report
from importer.drawing.pages import Pictures
from importer.output.atomic import write_text
from importer.store.ledger import Store
from importer.store.originals import original
from importer.telling.evidence import crop_of
from importer.telling.report_page import report_page


@dataclass(frozen=True, slots=True)
class Request:
    """One ``report``, as it was asked for. ``scope`` holds years, malts and suppliers."""

    scope: tuple[str, ...]
    html: Path
    store: Path | None = None
    agreed: Path | None = None
    deliveries: Path | None = None


def report(request: Request) -> int:
    """Writes the page. Raises UsageError where there is nothing to report on, OwnFileError where a file is wrong."""
    agreements = read_agreed(request.agreed) if request.agreed else ()
    deliveries = read_deliveries(request.deliveries) if request.deliveries else ()
    check_target("--html", request.html)
    with opened(request.store) as store:
        stored = stored_analyses(store)
        try:
            found = make_report(stored, request.scope, agreements=agreements, deliveries=deliveries)
        except NothingFoundError as nothing:
            raise UsageError(str(nothing)) from None
        with contextlib.closing(Pictures()) as pictures:
            page = report_page(found, lambda one: _evidence(store, pictures, one))
    write_text(request.html, page)
    bad = len({one.analysis.id for one in found.complaints})
    tell(f"Wrote the report on {found.batches} batches of {len(found.malts)} malts to {request.html}.")
    if found.undated:
        tell(f"Without a date on the sheet, so in no year and in no plot: {len(found.undated)}.")
    if agreements:
        tell(f"Outside what was agreed: {bad}.")
        for told in without_malt(agreements, stored):
            tell(told)
    if deliveries:
        tell(f"Delivered without a certificate: {len(found.missing)}.")
    return READ


def _evidence(store: Store, pictures: Pictures, one: Complaint) -> str | None:
    source = one.analysis.source
    data = original(store, source.sha256)
    if data is None or one.figure is None:
        return None
    return crop_of(pictures, data, source, one.figure)
