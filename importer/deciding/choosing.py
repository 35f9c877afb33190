"""Which batch is meant, which came before it, and which one is in use. Analyses come in the order of their day."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from importer.deciding.ground import day_of, header
from importer.models import Analysis
from importer.store.rows import LEAST_OF_ID, key

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
    return tuple(whole or [a for a in analyses if len(name) >= LEAST_OF_ID and a.id.startswith(name)])


def earlier_of(analyses: Sequence[Analysis], analysis: Analysis) -> tuple[Analysis, ...]:
    """The batches of the same malt and supplier that stand before this one, oldest first.

    Where it is not among them (a sheet that is not in the store), its day decides; without a day it is the newest.
    Beside a dated sheet those without a date of their own are passed over: nobody knows whether they came before.
    """
    own = malt_key(analysis)
    if own is None:
        return ()
    same = [
        a
        for a in analyses
        if a.kind == "batch" and malt_key(a) == own and (is_dated(a) or a.id == analysis.id or not is_dated(analysis))
    ]
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

    A malt of which no sheet can be called the latest is left out. Raises ValueError where a pin names a malt or a batch
    that is not there.
    """
    latest = {own: one for own, found in _without_doubt(analyses).items() if (one := _latest(found)) is not None}
    return dict(sorted((latest | pinned(analyses, pins or {})).items()))


def not_taken_as_latest(analyses: Sequence[Analysis], used: Mapping[MaltKey, Analysis]) -> tuple[Analysis, ...]:
    """Sheets without a date of their own that came in after the batch in use, and might be a later one."""
    found: list[Analysis] = []
    for own, same in _without_doubt(analyses).items():
        chosen = used.get(own)
        place = next((n + 1 for n, a in enumerate(same) if chosen is not None and a.id == chosen.id), 0)
        found += [a for a in same[place:] if not is_dated(a) and not (chosen and _is_older_crop(a, chosen))]
    return tuple(found)


def of_the_same_day(analyses: Sequence[Analysis], used: Mapping[MaltKey, Analysis]) -> dict[str, tuple[str, ...]]:
    """Other sheets with nothing in review of the day of the batch in use: their batches, by the id of that one."""
    found: dict[str, tuple[str, ...]] = {}
    for own, same in _without_doubt(analyses).items():
        chosen = used.get(own)
        if chosen is not None and is_dated(chosen):
            others = [header(a, "batch") for a in same if day_of(a) == day_of(chosen) and a.id != chosen.id]
            found[chosen.id] = tuple(dict.fromkeys(others))
    return found


def is_dated(analysis: Analysis) -> bool:
    """True where the sheet itself tells its day, so that its place among others does not rest on when it came in."""
    return day_of(analysis)[:4].isdigit()


def is_certain(analysis: Analysis) -> bool:
    """The malt's name is certain: figures must not go out under another name."""
    return analysis.header["malt"].state == "accepted"


def _without_doubt(analyses: Sequence[Analysis]) -> dict[MaltKey, list[Analysis]]:
    """The batches of each malt with nothing in review, in the order given."""
    found: dict[MaltKey, list[Analysis]] = {}
    for analysis in analyses:
        own = malt_key(analysis)
        if own is not None and analysis.kind == "batch" and analysis.state == "accepted" and is_certain(analysis):
            found.setdefault(own, []).append(analysis)
    return found


def _latest(same: Sequence[Analysis]) -> Analysis | None:
    """The last dated sheet. Where none is dated the one of the newest crop year; None where that decides nothing."""
    dated = [a for a in same if is_dated(a)]
    if dated:
        return dated[-1]
    crops = [header(a, "crop_year") for a in same]
    newest = [a for a, crop in zip(same, crops, strict=True) if crop == max(crops)] if all(crops) else same
    return newest[-1] if len({key(header(a, "batch")) for a in newest}) == 1 else None


def _is_older_crop(analysis: Analysis, other: Analysis) -> bool:
    own, others = header(analysis, "crop_year"), header(other, "crop_year")
    return bool(own) and own < others


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
