"""The command ``export``: stored analyses as JSON, long CSV, wide CSV or a table."""

from __future__ import annotations

import re
from dataclasses import dataclass
from pathlib import Path

from importer.commands import read
from importer.commands.run import IN_REVIEW, READ, UsageError, tell
from importer.commands.stored import opened, told_where_nothing_is_kept
from importer.models import Sheet
from importer.output.json_out import document
from importer.output.terminal import clean
from importer.store.reading import Options, cores
from importer.store.rows import is_day
from importer.store.selection import Wanted, choose, last_export, nothing_chosen, on_basis, record_export

_DAY = re.compile(r"\d{4}(?:-\d{2}(?:-\d{2})?)?")


@dataclass(frozen=True, slots=True)
class Request:
    """One ``export``, as it was asked for; ``outputs`` says where to and how."""

    wanted: Wanted
    outputs: read.Request
    store: Path | None = None
    since_last: bool = False
    recipe: str | None = None
    pins: tuple[str, ...] = ()


def export(request: Request) -> int:
    """Writes the outputs, returns the exit status."""
    outputs = request.outputs
    wanted = request.wanted
    for option, day in (("--from", wanted.first_day), ("--to", wanted.last_day)):
        if day is not None and not (_DAY.fullmatch(day) and is_day(day)):
            raise UsageError(f"{option}: {day} is no day such as 2024-11-30.")
    if request.pins and request.recipe is None:
        raise UsageError("--pin goes with --recipe.")
    if request.recipe is not None:
        return _recipe(request)
    read.check_outputs(outputs)
    with opened(request.store) as store:
        since = last_export(store, wanted) if request.since_last else 0
        chosen = choose(store, wanted, since=since)
        if since and not chosen.analyses and read.STANDARD_OUTPUT not in outputs.outputs.values():
            for target in outputs.outputs.values():
                tell(f"Nothing new since the last export; {target} was left as it was.")
            return READ
        if not chosen.analyses and not since:
            tell(clean(nothing_chosen(store, wanted)))
        options = Options(outputs.basis, outputs.estimates, outputs.ratio_rule, outputs.seconds)
        doc = document([Sheet(analyses=tuple(on_basis(store, chosen, options, cores())))], outputs.basis)
        read.write_outputs(outputs, doc, table=not outputs.outputs)
        forgotten = "--since-last-export will not know of this one"
        if outputs.outputs and not told_where_nothing_is_kept(store, forgotten):
            record_export(store, wanted, chosen)
    for target in outputs.outputs.values():
        if target != read.STANDARD_OUTPUT:
            count = len(doc.analyses)
            tell(f"Wrote {count} {'analysis' if count == 1 else 'analyses'} to {target}.")
    if outputs.strict and any(analysis.state == "review" for analysis in doc.analyses):
        return IN_REVIEW
    return READ


def _recipe(request: Request) -> int:
    """The malts in use instead of analyses."""
    from importer.commands.recipe import export_recipe

    outputs = request.outputs
    if outputs.outputs or request.since_last or request.wanted.superseded:
        raise UsageError("--recipe stands alone: give the other outputs in a command of their own.")
    if outputs.basis != "EBC" or not outputs.estimates:
        raise UsageError("--recipe names the method beside each figure and takes no --basis or --no-estimates.")
    return export_recipe(request.recipe or "", request.wanted, request.pins, request.store)
