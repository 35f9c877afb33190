"""What the batches in use do to a recipe: weights, colour, diastatic power of the grist, mash temperature.

Every number carries its formula, and nothing is computed from a figure that is in review, or across methods.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass

from importer.deciding.choosing import MaltKey, malt_key
from importer.deciding.effects_data import effect_constants, grist_power, mash_temperature
from importer.deciding.ground import Ground, Reading, figures_of, ground_of, header, readings
from importer.deciding.recipe_file import Line, Planned, Recipe
from importer.deciding.results import Effect
from importer.meaning.convert import Context, Start, to_basis
from importer.meaning.formulas import as_is_from_dry, constants, mass_for_new_extract, weighted_mean
from importer.meaning.one_value import ConversionError, convert_value
from importer.meaning.possible import class_of, is_pale_barley
from importer.meaning.relations import source_text
from importer.models import Analysis, Family, Figure
from importer.store.rows import key
from importer.vocabulary.parameters import parameters


class MissingError(Exception):
    """Why an effect cannot be computed, in words that end a sentence."""


@dataclass(frozen=True, slots=True)
class Power:
    """Diastatic power of malt as is, ± spread, on one scale."""

    value: float
    spread: float
    estimated: bool


# ---------------------------------------------------------------- arithmetic

# Places behind the point from a weight in kg on: no scale for malt shows finer than about a thousandth of its load.
_PLACES = ((1000, 0), (10, 1), (1, 2))


def rounded_to(kg: float, step: float | None) -> float:
    """kg rounded to a multiple of ``step``; to the gram where nothing is asked."""
    return round(kg, 3) if not step else round(round(kg / step) * step, 6)


def shown_weight(kg: float, step: float | None) -> str:
    """A weight in words: as rounded where a step is asked, else three digits or more, and whole kg from a tonne on."""
    places = 6 if step else next((places for least, places in _PLACES if abs(kg) >= least), 3)
    told = f"{kg:.{places}f}"
    return told.rstrip("0").rstrip(".") if "." in told else told


def wort_colour(parts: Iterable[tuple[float, float]], litres: float, yield_share: float = 1.0) -> float:
    """EBC units before boiling, from (kg, EBC of the congress wort) and litres of wort; straight dilution."""
    return sum(kg * colour for kg, colour in parts) * effect_constants().wort_litres_per_kg / litres * yield_share


# ---------------------------------------------------------------- batches of a recipe


def batches_of(
    recipe: Recipe, in_use: Mapping[MaltKey, Analysis], this: Analysis | None = None
) -> dict[int, Analysis | None]:
    """The batch for each line: this one where the line is about its malt, else the one in use, else None."""
    return {number: _batch_of(line, in_use, this) for number, line in enumerate(recipe.lines) if not line.adjunct}


def _batch_of(line: Line, in_use: Mapping[MaltKey, Analysis], this: Analysis | None) -> Analysis | None:
    if this is not None and _is_about(line, malt_key(this)):
        return this
    found = [analysis for own, analysis in in_use.items() if _is_about(line, own)]
    return found[0] if len(found) == 1 else None


def _is_about(line: Line, own: MaltKey | None) -> bool:
    if own is None or key(line.name) != own[1]:
        return False
    return not line.supplier or key(line.supplier) == own[0]


def recipe_effects(
    recipe: Recipe, in_use: Mapping[MaltKey, Analysis], this: Analysis | None = None
) -> tuple[Effect, ...]:
    """Everything that can be said of a recipe; what cannot is there too, with the reason."""
    batches = batches_of(recipe, in_use, this)
    effects: list[Effect] = []
    if this is not None and not any(batch is this for batch in batches.values()):
        words = f"no line is about {header(this, 'malt') or 'this malt'}; what follows is of the batches in use"
        effects.append(Effect(subject="recipe", kind="withheld", malt=header(this, "malt"), words=words))
    for number, line in enumerate(recipe.lines):
        if line.adjunct:
            continue
        batch = batches[number]
        if line.colouring:
            effects += _attempt("colour", line, lambda line=line, batch=batch: _reweighed(line, batch, recipe))
        elif line.extract is not None:
            effects += _attempt("weight", line, lambda line=line, batch=batch: _weighed(line, batch, recipe))
    effects += _attempt("colour", None, lambda: _colour(recipe, batches))
    effects += _attempt("grist power", None, lambda: _grist(recipe, batches))
    effects += _mash_hint(recipe, batches)
    return tuple(effects)


def _attempt(subject: str, line: Line | None, compute: object) -> list[Effect]:
    assert callable(compute)
    try:
        found = compute()
    except MissingError as why:
        return [Effect(subject=subject, kind="withheld", malt=line.name if line else "", words=f"not computed: {why}")]
    return [found] if found is not None else []


def _name(line: Line, batch: Analysis) -> str:
    number = header(batch, "batch")
    return f"{line.name} {number}".strip()


def _accepted(batch: Analysis, parameter: str) -> Figure:
    """The accepted figure of a parameter. Raises MissingError."""
    title = parameters()[parameter].title.lower()
    same = [figure for figure in figures_of(batch) if figure.parameter == parameter]
    if not same:
        raise MissingError(f"the sheet of {header(batch, 'batch') or batch.source.file} gives no {title}")
    accepted = [
        figure for figure in same if figure.state == "accepted" and figure.value is not None and not figure.bound
    ]
    if not accepted:
        raise MissingError(f"{title} of {header(batch, 'batch') or batch.source.file} is in review or no plain number")
    return accepted[0]


def _like_planned(batch: Analysis | None, planned: Planned, line: Line) -> float:
    """The batch's figure on the method and in the unit of the planning value. Raises MissingError."""
    if batch is None:
        raise MissingError(
            f"no accepted batch of {line.name} is known, or several suppliers have one: name the supplier"
        )
    wanted = ground_of(planned.parameter, planned.unit, planned.family)
    _accepted(batch, planned.parameter)
    for figure in figures_of(batch):
        if figure.parameter == planned.parameter and figure.state == "accepted":
            for reading in readings(figure, batch):
                value = _brought(reading, wanted, planned.family)
                if value is not None and value > 0:
                    return value
    title = parameters()[planned.parameter].title.lower()
    raise MissingError(
        f"it needs {title} on {planned.family}, and the sheet of {_name(line, batch)} is on another method"
    )


def _brought(reading: Reading, wanted: Ground, family: Family) -> float | None:
    """A measured number on another ground, where nothing but units lies between; None where an estimate would."""
    if reading.estimated or reading.ground == wanted:
        return None if reading.estimated else reading.value
    start = Start(wanted.parameter, reading.value, reading.ground.unit, reading.family, reading.mash)
    result = to_basis(start, family, Context())
    mash = reading.mash if "not-convertible" in result.flags else None
    there = ground_of(result.parameter, result.unit, result.family, mash)
    exact = all(step.kind != "correlation" for step in result.steps)
    return result.value if there == wanted and exact else None


# ---------------------------------------------------------------- weight and colour


def _weighed(line: Line, batch: Analysis | None, recipe: Recipe) -> Effect:
    assert line.extract is not None
    plan = line.extract
    actual = _like_planned(batch, plan, line)
    assert batch is not None
    kg = mass_for_new_extract(line.kg, plan.value, actual)
    told = rounded_to(kg, recipe.round_kg)
    factor = plan.value / actual
    words = f"{_name(line, batch)}: {_weigh(told, line, recipe.round_kg)} (factor {factor:.4f})"
    if recipe.efficiency is not None:
        per_kg = actual if plan.unit == "L°/kg" else actual * constants().litre_degrees_per_percent
        degrees = told * per_kg * recipe.efficiency / 100
        words += f"; at {recipe.efficiency:g} % brewhouse efficiency that brings {degrees:,.0f} litre-degrees"
    return Effect(
        subject="weight",
        kind="computed",
        malt=line.name,
        words=words,
        value=told,
        unit="kg",
        formula=f"{line.kg:g} kg × {plan.value:g} ÷ {actual:g} {plan.unit}",
        validity=f"{parameters()[plan.parameter].title.lower()}, {plan.family}, plan and batch alike; "
        "a change of brewhouse efficiency is not in it",
        source=source_text("extract-proportion"),
    )


def _weigh(kg: float, line: Line, step: float | None) -> str:
    """What to weigh, in words."""
    told, planned = shown_weight(kg, step), f"{line.kg:.6f}".rstrip("0").rstrip(".")
    return f"weigh {told} kg, as planned" if float(told) == line.kg else f"weigh {told} kg instead of {planned} kg"


def _reweighed(line: Line, batch: Analysis | None, recipe: Recipe) -> Effect:
    if line.colour is None:
        raise MissingError(f"{line.name} is weighed for its colour, and the line gives no planned colour")
    actual = _like_planned(batch, line.colour, line)
    assert batch is not None
    kg = mass_for_new_extract(line.kg, line.colour.value, actual)
    told = rounded_to(kg, recipe.round_kg)
    return Effect(
        subject="colour",
        kind="computed",
        malt=line.name,
        words=f"{_name(line, batch)}: {_weigh(told, line, recipe.round_kg)} for the same colour; then make good the "
        "extract with the pale malt",
        value=told,
        unit="kg",
        formula=f"{line.kg:g} kg × {line.colour.value:g} ÷ {actual:g} {line.colour.unit}",
        validity="for the colouring malt only",
        source=source_text("colour-proportion"),
    )


def _colour(recipe: Recipe, batches: Mapping[int, Analysis | None]) -> Effect | None:
    """Colour of the wort from all malts of the grist, by dilution."""
    if recipe.volume is None:
        return None
    parts: list[tuple[float, float]] = []
    for number, line in enumerate(recipe.lines):
        if not line.adjunct:
            parts.append((line.kg, _like_planned(batches[number], Planned("colour", 0.0, "EBC", "EBC"), line)))
    share = (recipe.efficiency or 100.0) / 100
    data = effect_constants()
    colour = wort_colour(parts, recipe.volume, share)
    low, high = data.colour_boiling
    words = f"about {colour:.1f} EBC in {recipe.volume:g} L before boiling"
    words += f", which adds {low:g} to {high:g} EBC to a pale wort"
    if colour > data.colour_bends_above:
        words += f"; above {data.colour_bends_above:g} EBC the true colour lies lower"
    return Effect(
        subject="colour",
        kind="computed",
        words=words,
        value=round(colour, 2),
        unit="EBC",
        formula=f"Σ kg × EBC × {data.wort_litres_per_kg:g} ÷ {recipe.volume:g} L × {share:g}",
        validity=f"EBC colours of the congress wort, up to about {data.colour_bends_above:g} EBC",
        source=f"{source_text('wort-dilution')}; boiling: {source_text(data.colour_boiling_source)}",
    )


# ---------------------------------------------------------------- diastatic power


def power_of(batch: Analysis, unit: str) -> Power:
    """Diastatic power of malt as is on a scale: dry × (1 − moisture ÷ 100). Raises MissingError."""
    figure = _accepted(batch, "diastatic_power")
    moisture = _accepted(batch, "moisture").value or 0.0
    direct = next((r for r in readings(figure, batch) if r.ground.unit == unit and not r.estimated), None)
    if direct is not None:
        return Power(as_is_from_dry(direct.value, moisture), 0.0, False)
    source = list(readings(figure, batch))[-1]
    dry = _on_scale(source.value, source.ground.unit, unit, source.spread or 0.0, source.estimated)
    return Power(as_is_from_dry(dry.value, moisture), as_is_from_dry(dry.spread, moisture), dry.estimated)


def _on_scale(value: float, unit: str, wanted: str, spread: float, estimated: bool) -> Power:
    if unit == wanted:
        return Power(value, spread, estimated)
    try:
        found = convert_value(value, unit, wanted)[0]
    except ConversionError as why:
        raise MissingError(str(why)) from None
    scale = found.exact / value if value else 1.0
    return Power(found.exact, spread * scale + (found.spread or 0.0), estimated or found.estimated)


def _line_power(line: Line, batch: Analysis | None, unit: str) -> Power:
    if line.adjunct:
        return Power(0.0, 0.0, False)
    if line.diastatic_power is not None:
        return _on_scale(line.diastatic_power.value, line.diastatic_power.unit, unit, 0.0, False)
    if batch is None:
        raise MissingError(f"no accepted batch of {line.name} is known")
    given = any(figure.parameter == "diastatic_power" for figure in figures_of(batch))
    if not given and class_of(line.name) in grist_power().without_power:
        return Power(0.0, 0.0, False)
    return power_of(batch, unit)


def _grist(recipe: Recipe, batches: Mapping[int, Analysis | None]) -> Effect:
    data = grist_power()
    powers = [_line_power(line, batches.get(number), data.unit) for number, line in enumerate(recipe.lines)]
    weights = [line.kg for line in recipe.lines]
    mean = weighted_mean(zip(weights, (power.value for power in powers), strict=True))
    spread = weighted_mean(zip(weights, (power.spread for power in powers), strict=True))
    share = 100 * sum(line.kg for line in recipe.lines if line.adjunct) / sum(weights)
    told = f"{mean:.0f}{f' ± {spread:.0f}' if spread else ''} {data.unit}"
    words = f"{told} over the whole grist, {share:.0f} % of it unmalted: "
    kind = "computed"
    if mean + spread < data.minimum:
        words, kind = (
            words + f"it may not convert itself, {data.minimum:g} to {data.comfortable:g} are needed",
            "caution",
        )
    elif mean - spread < data.comfortable:
        words, kind = words + f"close to the {data.minimum:g} to {data.comfortable:g} that are needed", "caution"
    else:
        words += f"enough to convert itself ({data.minimum:g} to {data.comfortable:g} are needed)"
    return Effect.model_validate(
        {
            "subject": "grist power",
            "kind": kind,
            "words": words,
            "value": round(mean, 1),
            "unit": data.unit,
            "spread": round(spread, 1) or None,
            "formula": "Σ kg × power as is ÷ Σ kg, adjunct with 0",
            "validity": "malt as is; caramel and roasted malts without a figure count as 0",
            "source": f"{source_text('weighted-mean')}; minimum: {source_text(data.source)}",
        }
    )


def _mash_hint(recipe: Recipe, batches: Mapping[int, Analysis | None]) -> Sequence[Effect]:
    """A warmer mash for an enzyme-rich pale malt in a weak beer."""
    data = mash_temperature()
    weak_by = recipe.strength is not None and recipe.strength <= data.strength
    weak_by_gravity = recipe.strength is None and recipe.gravity is not None and recipe.gravity <= data.gravity_plato
    if not (weak_by or weak_by_gravity):
        return []
    heaviest = max((n for n in batches if batches[n]), key=lambda n: recipe.lines[n].kg, default=None)
    batch = batches[heaviest] if heaviest is not None else None
    if heaviest is None or batch is None or is_pale_barley(class_of(recipe.lines[heaviest].name)) is not True:
        return []
    try:
        power = power_of(batch, data.unit)
    except MissingError:
        return []
    if power.value - power.spread < data.power:
        return []
    line = recipe.lines[heaviest]
    strength = f"{recipe.strength:g} % by volume" if weak_by else f"{recipe.gravity:g} °P"
    words = (
        f"{_name(line, batch)} is rich in enzymes ({power.value:.0f} {data.unit}) and the beer weak ({strength}): "
        f"to keep body, a mash near {data.temperature:g} °C instead of {data.usual:g} °C may help"
    )
    note = "" if weak_by else f"; {data.gravity_note}"
    return [
        Effect(
            subject="mash temperature",
            kind="caution",
            malt=line.name,
            words=words,
            value=data.temperature,
            unit="°C",
            validity=f"pale malts from {data.power:g} {data.unit} on, beers up to {data.strength:g} % by volume{note}",
            source=source_text(data.source),
        )
    ]
