"""The commands ``batch`` and ``compare``: what batches mean, beside each other and beside what was agreed."""

from __future__ import annotations

import json
from collections.abc import Sequence
from dataclasses import dataclass
from pathlib import Path
from typing import TYPE_CHECKING, TypeVar

from importer.commands.run import READ, UsageError
from importer.commands.stored import has_store, on_other_basis, one_batch, opened, read_file, stored_analyses
from importer.deciding.agreed import Agreement, read_agreed
from importer.deciding.choosing import malt_key
from importer.deciding.compare import compare as compared
from importer.deciding.files import OwnFileError
from importer.deciding.meaning_of import batch_meaning
from importer.deciding.recipe_file import Recipe, read_recipe
from importer.models import Analysis, Family
from importer.store.rows import key
from importer.telling.batch_table import batch_table, comparison_table

if TYPE_CHECKING:
    from collections.abc import Callable

_T = TypeVar("_T")


@dataclass(frozen=True, slots=True)
class Request:
    """One ``batch`` or ``compare``, as it was asked for. Names are ids, batch numbers or files."""

    names: tuple[str, ...]
    store: Path | None = None
    agreed: Path | None = None
    recipe: Path | None = None
    mean_of: int = 5
    basis: Family = "EBC"
    as_json: bool = False


def batch(request: Request) -> int:
    """Prints what a batch means."""
    agreements: tuple[Agreement, ...] = checked(request.agreed, read_agreed) or ()
    recipe: Recipe | None = checked(request.recipe, read_recipe)
    chosen, stored = _chosen(request, recipe)
    meanings = [
        batch_meaning(
            analysis,
            stored,
            agreements=agreements,
            recipe=recipe,
            mean_of=request.mean_of,
            basis=request.basis,
        )
        for analysis in chosen
    ]
    if request.as_json:
        document = {
            "format": "onebasis-batch/1",
            "batches": [one.model_dump(mode="json", by_alias=True) for one in meanings],
        }
        print(json.dumps(document, indent=2, ensure_ascii=False, allow_nan=False))
    else:
        print("\n".join(batch_table(one) for one in meanings), end="")
    return READ


def compare(request: Request) -> int:
    """Prints analyses side by side."""
    chosen, _ = _chosen(request)
    if len(chosen) < 2:
        raise UsageError("A comparison needs two batches or more.")
    if len({analysis.id for analysis in chosen}) < len(chosen):
        raise UsageError("One batch is named twice.")
    found = compared(chosen, request.basis)
    if request.as_json:
        document = {"format": "onebasis-comparison/1", "comparison": found.model_dump(mode="json", by_alias=True)}
        print(json.dumps(document, indent=2, ensure_ascii=False, allow_nan=False))
    else:
        print(comparison_table(found), end="")
    return READ


def _chosen(request: Request, recipe: Recipe | None = None) -> tuple[list[Analysis], Sequence[Analysis]]:
    """The analyses that are named, and all that are stored. A store is needed only where no file is meant."""
    read = {name: read_file(Path(name), request.basis) for name in request.names if Path(name).is_file()}
    if len(read) == len(request.names) and not has_store(request.store):
        return [one for name in request.names for one in read[name]], ()
    with opened(request.store) as store:
        stored = stored_analyses(store)
        found = {name: one_batch(stored, name) for name in request.names if name not in read}
        if request.basis != "EBC":
            named = [*found.values(), *(one for name in read for one in read[name])]
            stored = on_other_basis(store, _needed(stored, named, recipe), request.basis)
    by_id = {analysis.id: analysis for analysis in stored}
    chosen = [read[name] if name in read else (by_id[found[name].id],) for name in request.names]
    return [one for some in chosen for one in some], stored


def _needed(stored: Sequence[Analysis], named: Sequence[Analysis], recipe: Recipe | None) -> list[Analysis]:
    """What has to be put on another basis: the malts of the batches that are named, and those of the recipe."""
    malts = {malt_key(one) for one in named}
    lines = {key(line.name) for line in recipe.lines} if recipe else set()
    ids = {one.id for one in named}
    return [a for a in stored if a.id in ids or ((own := malt_key(a)) and (own in malts or own[1] in lines))]


def checked(path: Path | None, read: Callable[[Path], _T]) -> _T | None:
    """What a file of the brewer's own says; None where none is named. Raises UsageError where it is wrong."""
    if path is None:
        return None
    try:
        return read(path)
    except OwnFileError as fault:
        raise UsageError(str(fault)) from None
