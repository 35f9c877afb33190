"""A store with analyses that were made, not read."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest

from importer.intake.parcel import Item
from importer.models import Analysis, Sheet
from importer.store.ledger import Delivery, Store

Fill = Callable[..., Path]


def put(store: Store, *analyses: Analysis) -> None:
    """Takes in each as a document of its own."""
    for analysis in analyses:
        source = analysis.source
        item = Item(name=source.file, data=b"", sha256=source.sha256, kind="sheet")
        delivery = Delivery(Path(f"/sheets/{source.sha256}/{source.file}"), 0, 1_700_000_000_000_000_000, "bulk", item)
        store.record(delivery, {source.sha256: Sheet(analyses=(analysis,))})


@pytest.fixture
def filled(tmp_path: Path) -> Fill:
    """Makes a store with analyses, or adds them to it; gives its folder."""

    def fill(*analyses: Analysis) -> Path:
        folder = tmp_path / "store"
        folder.mkdir(exist_ok=True)
        with Store(folder) as store:
            put(store, *analyses)
        return folder

    return fill
