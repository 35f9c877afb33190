"""What one batch means: everything of this package for one analysis."""

from __future__ import annotations

from collections.abc import Sequence

from importer.deciding.agreed import Agreement, against_limits, agreement_for
from importer.deciding.brewing import recipe_effects
from importer.deciding.cautions import cautions_of
from importer.deciding.choosing import earlier_of, harvest_change, in_use
from importer.deciding.compare import held_by_ground, mean_column, named, rows_of
from importer.deciding.ground import header
from importer.deciding.recipe_file import Recipe
from importer.deciding.results import Batch
from importer.models import Analysis, Family
from importer.output.words import CAUTION


def batch_meaning(
    analysis: Analysis,
    analyses: Sequence[Analysis] = (),
    *,
    agreements: Sequence[Agreement] = (),
    recipe: Recipe | None = None,
    mean_of: int = 5,
    basis: Family = "EBC",
) -> Batch:
    """What a batch means beside the others. ``analyses`` come in the order of their day and may hold the batch itself.

    The first column of each row is the batch; then the last batch of the same malt and supplier and the mean of the
    last ``mean_of`` before it, where there are any. Differences are those of the batch from them. ``basis`` is the one
    that all of them were read on: nothing is converted here. Without ``recipe`` its effects are left out.
    """
    earlier = earlier_of(analyses, analysis)
    last = earlier[-1] if earlier else None
    own = held_by_ground(analysis)
    references, against = [], []
    if last is not None:
        references.append(held_by_ground(last))
        against.append(f"last batch {header(last, 'batch')}".strip())
    if mean_of > 1 and len(earlier) > 1:
        chosen = earlier[-mean_of:]
        references.append(mean_column(chosen))
        against.append(f"mean of {len(chosen)} before")
    rows, residues = rows_of([own, *references], basis, first_is_reference=False)
    agreement = agreement_for(analysis, agreements)
    effects = [*cautions_of(analysis), *(recipe_effects(recipe, in_use(analyses), analysis) if recipe else ())]
    return Batch(
        basis=basis,
        analysis=named(analysis),
        rows=rows,
        against=tuple(against),
        harvest=harvest_change(analysis, last),
        agreed=against_limits(analysis, agreement, basis) if agreement else (),
        agreed_from=agreement.where if agreement else "",
        effects=tuple(effects),
        residues=residues,
        notice=CAUTION if residues else "",
    )
