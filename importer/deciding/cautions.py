"""Cautions from single figures: run-off, fermentation, conversion. Said as cautions, with what they rest on."""

from __future__ import annotations

from collections.abc import Iterator

from importer.deciding.effects_data import Caution, cautions
from importer.deciding.ground import Reading, figures_of, header, readings
from importer.deciding.results import Effect
from importer.meaning.one_value import ConversionError, convert_value
from importer.meaning.possible import class_of, malt_classes
from importer.models import Analysis, Figure
from importer.output.table_line import short
from importer.vocabulary.parameters import parameters


def cautions_of(analysis: Analysis) -> tuple[Effect, ...]:
    """The cautions of a batch, in the order of mappings/effects.toml; figures in review give none, and that is said."""
    malt_class = class_of(header(analysis, "malt"))
    by_parameter: dict[str, list[Caution]] = {}
    for caution in cautions():
        if caution.holds_for(malt_class):
            by_parameter.setdefault(caution.parameter, []).append(caution)
    return tuple(effect for name, rules in by_parameter.items() for effect in _of_parameter(analysis, name, rules))


def _of_parameter(analysis: Analysis, name: str, rules: list[Caution]) -> Iterator[Effect]:
    figures = [figure for figure in figures_of(analysis) if figure.parameter == name]
    title = parameters()[name].title
    accepted = [figure for figure in figures if figure.state == "accepted"]
    if figures and not accepted:
        words = f"{title} is in review: no caution is drawn from it"
        yield Effect(subject=rules[0].subject, kind="withheld", malt=header(analysis, "malt"), words=words)
        return
    pairs = [
        (rule, reading)
        for figure in accepted
        for rule in rules
        for reading in (*readings(figure, analysis), *_on_scale(figure, rule))
        if rule.fits(reading)
    ]
    if not pairs:
        return
    rule, reading = min(pairs, key=lambda pair: pair[1].estimated)
    effect = _said(rule, reading, analysis, title)
    if effect is not None:
        yield effect


def _on_scale(figure: Figure, rule: Caution) -> Iterator[Reading]:
    """The figure on the scale of the threshold, where only the scale differs and not the mash."""
    entry = parameters()[figure.parameter]
    if entry.depends_on != "scale" or figure.value is None or figure.bound or figure.unit in (None, rule.unit):
        return
    try:
        best = convert_value(figure.value, figure.unit or "", rule.unit)[0]
    except ConversionError:
        return
    if best.estimated and best.spread is None:
        return
    spread = (figure.spread or 0.0) * (best.exact / figure.value if figure.value else 1.0) + (best.spread or 0.0)
    family = rule.family or figure.family
    yield Reading(rule.ground(family), best.exact, family, None, best.estimated or figure.estimated, spread)


def _said(rule: Caution, reading: Reading, analysis: Analysis, title: str) -> Effect | None:
    """A caution where the figure lies beyond a threshold, an estimate with the whole of its spread."""
    if reading.estimated and reading.spread is None:
        return None
    spread = reading.spread or 0.0 if reading.estimated else 0.0
    if rule.below is not None and reading.value + spread < rule.below:
        words, edge, source = rule.low, f"below {rule.below:g}", rule.low_source
    elif rule.above is not None and reading.value - spread > rule.above:
        words, edge, source = rule.high, f"above {rule.above:g}", rule.high_source
    else:
        return None
    told = f"{short(reading.value, 4)}{f' ± {short(spread)}' if spread else ''} {rule.unit}"
    return Effect(
        subject=rule.subject,
        kind="caution",
        malt=header(analysis, "malt"),
        words=f"{title} {told} is {edge}: {words}",
        value=reading.value,
        unit=rule.unit,
        spread=spread or None,
        validity=_validity(rule),
        source=source,
    )


def _validity(rule: Caution) -> str:
    mash = {"congress": "congress mash", "isothermal-65": "mash at 65 °C", None: ""}[rule.mash]
    method = " ".join(part for part in (rule.family or "", mash) if part)
    known = malt_classes()
    kinds = ", ".join(known[name].title for name in known if name in rule.classes)
    others = ", ".join(known[name].title for name in known if name in rule.not_classes)
    parts = [f"for {method}" if method else "", f"for {kinds}" if kinds else "", f"not for {others}" if others else ""]
    return "; ".join(part for part in parts if part)
