"""The commands ``batch`` and ``compare``: what batches mean, beside each other and beside what was agreed."""

from __future__ import annotations

import json
from collections.abc import Sequence
from dataclasses import dataclass
from pathlib import Path

from importer.commands.run import READ, UsageError, tell
from importer.commands.stored import has_store, no_store, on_other_basis, one_batch, opened, read_file
from importer.deciding.agreed import read_agreed
from importer.deciding.choosing import malt_key
from importer.deciding.compare import compare as compared
from importer.deciding.meaning_of import batch_meaning
from importer.deciding.recipe_file import Recipe, read_recipe
from importer.deciding.results import Batch
from importer.models import Analysis, Family
from importer.store.ledger import Store
from importer.store.rows import key
from importer.store.selection import of_malts
from importer.telling.batch_table import batch_table, comparison_table


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
    """Prints what a batch means. Raises OwnFileError where a file of the brewer's own is wrong."""
    agreements = read_agreed(request.agreed) if request.agreed else ()
    recipe = read_recipe(request.recipe) if request.recipe else None
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
    for one in meanings if request.agreed else ():
        if not one.agreed_from:
            tell(f"{request.agreed} has nothing for {_malt_of(one)}. Names have to be those of the sheet.")
    if request.as_json:
        document = {
            "format": "onebasis-batch/1",
            "batches": [one.model_dump(mode="json", by_alias=True) for one in meanings],
        }
        print(json.dumps(document, indent=2, ensure_ascii=False, allow_nan=False))
    else:
        print("\n".join(batch_table(one) for one in meanings), end="")
    return READ


def _malt_of(batch: Batch) -> str:
    return (
        " of ".join(name for name in (batch.analysis.malt, batch.analysis.supplier) if name) or "a malt without a name"
    )


def compare(request: Request) -> int:
    """Prints analyses side by side."""
    chosen, _ = _chosen(request, alone=True)
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


def _chosen(
    request: Request, recipe: Recipe | None = None, *, alone: bool = False
) -> tuple[list[Analysis], Sequence[Analysis]]:
    """The analyses that are named and, unless they stand ``alone``, what the store has of their malts and the recipe's.

    Nothing else of the store is read, and none is needed where only files are meant.
    """
    read = {name: read_file(Path(name), request.basis) for name in request.names if Path(name).is_file()}
    if len(read) == len(request.names) and (alone or not has_store(request.store)):
        return [one for name in request.names for one in read[name]], ()
    unread = [name for name in request.names if name not in read]
    if unread and not has_store(request.store):
        raise UsageError(f"{unread[0]} is no file, and no batch of a store. {no_store(request.store)}")
    with opened(request.store) as store:
        stored = {name: one_batch(store, name) for name in request.names if name not in read}
        named = [*stored.values(), *(one for some in read.values() for one in some)]
        beside = () if alone else _beside(store, named, recipe)
        needed = {one.id: one for one in (*beside, *stored.values())}
        found = on_other_basis(store, list(needed.values()), request.basis)
    by_id = {one.id: one for one in found}
    chosen = [read[name] if name in read else (by_id[stored[name].id],) for name in request.names]
    return [one for some in chosen for one in some], found


def _beside(store: Store, named: Sequence[Analysis], recipe: Recipe | None) -> Sequence[Analysis]:
    """What is stored of the malts of the batches that are named, and of the malts of the recipe."""
    malts = {own for one in named if (own := malt_key(one))}
    lines = {name for line in recipe.lines if (name := key(line.name))} if recipe else set()
    return of_malts(store, malts, lines)
