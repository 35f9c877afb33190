"""Which batch is meant, which came before it, and which one is in use. Analyses come in the order of their day."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from importer.deciding.ground import day_of, header
from importer.models import Analysis
from importer.store.rows import key

MaltKey = tuple[str, str]


def malt_key(analysis: Analysis) -> MaltKey | None:
    """Supplier and malt without case and marks; None where the sheet does not name the malt."""
    malt = key(header(analysis, "malt"))
    return (key(header(analysis, "supplier")) or "", malt) if malt else None


def named_batch(analyses: Sequence[Analysis], name: str) -> tuple[Analysis, ...]:
    """The analyses with an id, or with a batch number; the whole number before a part of one, ids may be shortened."""
    by_id = [a for a in analyses if a.id == name]
    wanted = key(name)
    if by_id or wanted is None:
        return tuple(by_id)
    whole = [a for a in analyses if key(header(a, "batch")) == wanted]
    return tuple(whole or [a for a in analyses if len(name) >= 6 and a.id.startswith(name)])


def earlier_of(analyses: Sequence[Analysis], analysis: Analysis) -> tuple[Analysis, ...]:
    """The batches of the same malt and supplier that stand before this one, oldest first.

    Where it is not among them (a sheet that is not in the store), its day decides; without a day it is the newest.
    """
    own = malt_key(analysis)
    if own is None:
        return ()
    same = [a for a in analyses if a.kind == "batch" and malt_key(a) == own]
    place = next((number for number, a in enumerate(same) if a.id == analysis.id), None)
    if place is None:
        day = day_of(analysis)
        place = next((number for number, a in enumerate(same) if day and day_of(a) > day), len(same))
    batch = key(header(analysis, "batch"))
    return tuple(a for a in same[:place] if batch is None or key(header(a, "batch")) != batch)


def harvest_change(analysis: Analysis, before: Analysis | None) -> str:
    """Words where the harvest is another one than before; empty where it is not, or not known."""
    now, then = header(analysis, "crop_year"), header(before, "crop_year") if before else ""
    return f"another harvest: {now} after {then}" if now and then and now != then else ""


def in_use(analyses: Sequence[Analysis], pins: Mapping[str, str] | None = None) -> dict[MaltKey, Analysis]:
    """For each malt of a supplier the latest batch without anything in review, or the one that is pinned (see below).

    Raises ValueError where a pin names a malt or a batch that is not there.
    """
    found: dict[MaltKey, Analysis] = {}
    for analysis in analyses:
        own = malt_key(analysis)
        if own is not None and analysis.kind == "batch" and _without_doubt(analysis):
            found[own] = analysis
    return dict(sorted((found | pinned(analyses, pins or {})).items()))


def _without_doubt(analysis: Analysis) -> bool:
    """Nothing is in review, and the malt's name is certain: figures must not go out under another name."""
    return analysis.state == "accepted" and analysis.header["malt"].state == "accepted"


def pinned(analyses: Sequence[Analysis], pins: Mapping[str, str]) -> dict[MaltKey, Analysis]:
    """The batches that ``pins`` name: a batch number or an id for a malt, which may be written ``supplier/malt``.

    Raises ValueError where a pin names a malt or a batch that is not there, or leaves the supplier open.
    """
    chosen = (_pinned(analyses, malt, batch) for malt, batch in pins.items())
    return {own: analysis for analysis in chosen if (own := malt_key(analysis)) is not None}


def _pinned(analyses: Sequence[Analysis], malt: str, batch: str) -> Analysis:
    supplier, _, name = malt.rpartition("/")
    of_malt = [
        a
        for a in analyses
        if a.kind == "batch"
        and key(header(a, "malt")) == key(name)
        and (not supplier or key(header(a, "supplier")) == key(supplier))
    ]
    if not of_malt:
        raise ValueError(f"there is no malt {malt!r} to pin a batch of.")
    chosen = named_batch(of_malt, batch)
    if not chosen:
        raise ValueError(f"{malt} has no batch {batch!r} to pin.")
    if len({malt_key(a) for a in chosen}) > 1:
        raise ValueError(f"{malt} {batch} is there from several suppliers: write supplier/malt.")
    return chosen[-1]
