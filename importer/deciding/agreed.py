"""Agreed limits: a plain file in which a brewery writes what was agreed for a malt, in any unit and method family.

    [[agreed]]
    supplier = "Quillbrook Maltings"      # left out: from whichever supplier
    malt = "Best Pale Ale Malt"
    limits = [
      { parameter = "moisture", max = 3.5 },
      { parameter = "extract_coarse_dry", min = 305, unit = "L°/kg", family = "IoB" },
    ]

A figure that depends on the mash needs the family that the limit was agreed on. Residues have no place in it.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from pathlib import Path
from typing import TypeVar

from importer.deciding.files import Entry, read_toml
from importer.deciding.ground import Reading, figures_of, ground_of, ground_title, header, readings
from importer.deciding.precision import against_a_value
from importer.deciding.results import AgainstLimit
from importer.errors import OwnFileError
from importer.meaning.convert import Context, Start, to_basis
from importer.meaning.possible import class_of, within_possible
from importer.meaning.relations import family_of_unit
from importer.models import Analysis, Family, Figure, Mash
from importer.output.table_line import short
from importer.store.rows import key
from importer.vocabulary.parameters import MoistureBasis, Parameter

_T = TypeVar("_T")
_LIMIT_KEYS = ("parameter", "min", "max", "unit", "family", "mash", "basis")
_MASHES: dict[str, Mash] = {"congress": "congress", "isothermal-65": "isothermal-65"}
_BASES: dict[str, MoistureBasis] = {"dry": "dry", "as-is": "as-is"}


@dataclass(frozen=True, slots=True)
class Limit:
    """One agreed limit, as it was written: ends in ``unit`` on ``family`` and ``mash``."""

    parameter: Parameter
    low: float | None
    high: float | None
    unit: str
    family: Family
    mash: Mash | None
    basis: MoistureBasis | None

    def told(self) -> str:
        """As a brewer would say it."""
        ends = [
            f"min {self.low:g}" if self.low is not None else "",
            f"max {self.high:g}" if self.high is not None else "",
        ]
        on = f" ({self.family})" if self.parameter.depends_on == "mash" and self.unit != self.family else ""
        on = " (65 °C mash)" if self.mash == "isothermal-65" and self.family != "IoB" else on
        return f"{' and '.join(end for end in ends if end)} {self.unit}{on}".strip()


@dataclass(frozen=True, slots=True)
class Agreement:
    """What was agreed for a malt; ``supplier`` empty: whoever supplies it. ``where`` is the place in the file."""

    supplier: str
    malt: str
    limits: tuple[Limit, ...]
    where: str


def read_agreed(path: str | Path) -> tuple[Agreement, ...]:
    """The agreements of a file. Raises OwnFileError, which says where it is wrong and what would be right."""
    path = Path(path)
    whole = Entry(read_toml(path), path.name, whole=True)
    whole.only(["agreed"])
    found = tuple(_agreement(entry) for entry in whole.tables("agreed"))
    if not found:
        raise OwnFileError(f"{path.name} has no [[agreed]] entry.")
    seen: dict[tuple[str | None, str | None], Agreement] = {}
    for agreement in found:
        twice = seen.setdefault((key(agreement.supplier), key(agreement.malt)), agreement)
        if twice is not agreement:
            raise OwnFileError(f"{agreement.where}: {agreement.malt} of this supplier stands in {twice.where} already.")
    return found


def _agreement(entry: Entry) -> Agreement:
    entry.only(["supplier", "malt", "limits"])
    malt = entry.text("malt", needed=True)
    if key(malt) is None:
        raise entry.fault("malt needs letters or digits.")
    limits = tuple(_limit(one) for one in entry.tables("limits"))
    if not limits:
        raise entry.fault("there are no limits.")
    return Agreement(entry.text("supplier"), malt, limits, entry.where)


def _limit(entry: Entry) -> Limit:
    entry.only(_LIMIT_KEYS)
    parameter = entry.parameter()
    if parameter.food_safety:
        raise entry.fault(
            f"{parameter.title} is a residue. onebasis shows it and never judges it: that is for food law and a "
            "qualified person. Take this limit out."
        )
    if parameter.kind == "text":
        raise entry.fault(f"{parameter.title} is described in words and has no limits.")
    low, high = entry.number("min"), entry.number("max")
    if low is None and high is None:
        raise entry.fault("min or max is missing.")
    if low is not None and high is not None and low > high:
        raise entry.fault(f"min {low:g} lies above max {high:g}.")
    unit = entry.unit(parameter)
    family = _family(entry, parameter, unit.code if unit else "")
    code = unit.code if unit else parameter.units[family]
    for end in (low, high):
        if end is not None and not within_possible(parameter.name, code, end):
            raise entry.fault(f"no malt has {parameter.title.lower()} of {end:g} {code}. Is the unit right?")
    mash = _choice(entry, "mash", _MASHES)
    return Limit(parameter, low, high, code, family, mash, _basis(entry, parameter, unit.basis if unit else None))


def _family(entry: Entry, parameter: Parameter, unit: str) -> Family:
    named = entry.family()
    of_unit = family_of_unit(parameter.name, unit) if unit else None
    if named is not None:
        if of_unit is not None and of_unit != named:
            raise entry.fault(f"{unit} belongs to {of_unit}, not to {named}.")
        return named
    if of_unit is not None:
        return of_unit
    if parameter.depends_on == "mash":
        raise entry.fault(
            f"{parameter.title} differs from mash to mash: say which family the limit was agreed on, "
            'such as family = "EBC".'
        )
    if parameter.depends_on == "scale" and not unit:
        raise entry.fault(f"{parameter.title} needs its unit: {', '.join(dict.fromkeys(parameter.units.values()))}.")
    return "EBC"


def _basis(entry: Entry, parameter: Parameter, of_unit: MoistureBasis | None) -> MoistureBasis | None:
    stated = _choice(entry, "basis", _BASES) or of_unit
    if stated is not None and parameter.basis is None:
        raise entry.fault(f"{parameter.title} is the same dry and as is.")
    if stated is not None and parameter.sibling is not None and stated != parameter.basis:
        raise entry.fault(f"for {stated} name {parameter.sibling} instead.")
    return stated


def _choice(entry: Entry, name: str, known: dict[str, _T]) -> _T | None:
    text = entry.text(name)
    if text and text not in known:
        raise entry.fault(f"{name} is {' or '.join(known)}, not {text!r}.")
    return known.get(text)


# ---------------------------------------------------------------- judging

_MOST_NEAR = 5


def agreement_for(analysis: Analysis, agreements: Sequence[Agreement]) -> Agreement | None:
    """What was agreed for the malt: with its supplier before with any. Names are compared without case and marks."""
    malt, supplier = key(header(analysis, "malt")), key(header(analysis, "supplier"))
    fitting = [a for a in agreements if key(a.malt) == malt and (not a.supplier or key(a.supplier) == supplier)]
    return min(fitting, key=lambda a: not a.supplier, default=None)


def without_malt(agreements: Sequence[Agreement], analyses: Sequence[Analysis]) -> tuple[str, ...]:
    """A sentence for each agreement that holds for none of the analyses, with the names that were perhaps meant."""
    names = {(header(a, "malt"), header(a, "supplier")) for a in analyses if a.kind == "batch"}
    used = {id(agreement_for(a, agreements)) for a in analyses}
    return tuple(_unused(one, names) for one in agreements if id(one) not in used)


def _unused(agreement: Agreement, names: set[tuple[str, str]]) -> str:
    wanted = f"{agreement.malt} of {agreement.supplier}" if agreement.supplier else agreement.malt
    malt, supplier = key(agreement.malt) or "", key(agreement.supplier) or ""
    near = sorted(
        f"{theirs} of {whose}" if whose else theirs
        for theirs, whose in names
        if (own := key(theirs) or "")
        and (malt in own or own in malt)
        and (not supplier or supplier in (key(whose) or supplier))
    )
    meant = f" There is {'; '.join(near[:_MOST_NEAR])}." if near else ""
    return f"{agreement.where}: no sheet is of {wanted}. Names have to be those of the sheets.{meant}"


def against_limits(analysis: Analysis, agreement: Agreement, basis: Family = "EBC") -> tuple[AgainstLimit, ...]:
    """Every agreed limit with the figure that it is about."""
    found: list[AgainstLimit] = []
    for limit in agreement.limits:
        same = [f for f in figures_of(analysis) if f.parameter == limit.parameter.name]
        results = [_judge(limit, figure, analysis, basis) for figure in same]
        results.sort(key=lambda result: result.standing == "not-said")
        found += results[:1] or [_said(limit, "not-said", "the sheet does not give it")]
    return tuple(found)


def _said(limit: Limit, standing: str, words: str, **more: object) -> AgainstLimit:
    return AgainstLimit.model_validate(
        {
            "parameter": limit.parameter.name,
            "title": limit.parameter.title,
            "standing": standing,
            "agreed": limit.told(),
            "words": words,
            **more,
        }
    )


def _judge(limit: Limit, figure: Figure, analysis: Analysis, basis: Family) -> AgainstLimit:
    ground = ground_title(figure, analysis, basis)
    if figure.state == "review":
        return _said(limit, "not-said", "in review: cannot be said", ground=ground)
    moisture = next((f.value for f in analysis.figures if f.parameter == "moisture" and f.state == "accepted"), None)
    context = Context(moisture=moisture, malt_class=class_of(header(analysis, "malt")))
    options: list[tuple[Reading, _Ends]] = []
    for reading in _plain(figure, analysis):
        ends = _ends(limit, reading, context)
        if ends is not None:
            options.append((reading, ends))
    if not options:
        return _said(limit, "not-said", "the sheet follows another method: cannot be said", ground=ground)
    reading, ends = min(options, key=lambda option: option[0].estimated + option[1].estimated)
    if figure.bound is not None:
        return _bounded(limit, figure, ends, ground)
    return _placed(limit, reading, ends, ground)


def _plain(figure: Figure, analysis: Analysis) -> Iterator[Reading]:
    """The readings of a figure; of a bound or a range only what it stands on."""
    if figure.bound is None:
        yield from readings(figure, analysis)
    elif figure.unit is not None:
        ends = figure.range or (figure.value or 0.0,)
        plain = figure.model_copy(update={"bound": None, "value": ends[0]})
        yield next(readings(plain, analysis))


@dataclass(frozen=True, slots=True)
class _Ends:
    low: float | None
    high: float | None
    estimated: bool
    spread: float
    converted: bool


def _ends(limit: Limit, reading: Reading, context: Context) -> _Ends | None:
    """The limit in the unit and on the method of a reading; None where no relation leads there."""
    found: list[float | None] = []
    estimated, spread, converted = False, 0.0, False
    for end in (limit.low, limit.high):
        if end is None:
            found.append(None)
            continue
        value = _end(limit, end, reading, context)
        if value is None:
            return None
        found.append(value[0])
        estimated, spread = estimated or value[1], max(spread, value[2])
        converted = converted or value[3]
    return _Ends(found[0], found[1], estimated, spread, converted)


def _end(limit: Limit, end: float, reading: Reading, context: Context) -> tuple[float, bool, float, bool] | None:
    own = ground_of(limit.parameter.name, limit.unit, limit.family, limit.mash)
    if own == reading.ground and limit.basis in (None, limit.parameter.basis):
        return end, False, 0.0, False
    start = Start(limit.parameter.name, end, limit.unit, limit.family, limit.mash, limit.basis)
    result = to_basis(start, reading.family, context)
    if "no-moisture" in result.flags:
        return None
    kept = "not-convertible" in result.flags
    mash = limit.mash if kept and result.family == limit.family else None
    there = ground_of(result.parameter, result.unit, result.family, mash)
    if there != reading.ground or (result.estimated and result.spread is None):
        return None
    return result.value, result.estimated, result.spread or 0.0, bool(result.steps)


def _bounded(limit: Limit, figure: Figure, ends: _Ends, ground: str) -> AgainstLimit:
    """A limit of detection or a range: said only where the whole of what it may be lies on one side."""
    if figure.range is not None:
        low, high = figure.range
    elif figure.bound == "<":
        low, high = float("-inf"), figure.value or 0.0
    else:
        low, high = figure.value or 0.0, float("inf")
    if (ends.low is None or low >= ends.low) and (ends.high is None or high <= ends.high):
        return _said(limit, "within", "within what was agreed", ground=ground, unit=figure.unit)
    if (ends.low is not None and high < ends.low) or (ends.high is not None and low > ends.high):
        return _said(limit, "outside", "outside what was agreed", ground=ground, unit=figure.unit)
    return _said(limit, "not-said", "only a bound or a range is given: cannot be said", ground=ground, unit=figure.unit)


def _placed(limit: Limit, reading: Reading, ends: _Ends, ground: str) -> AgainstLimit:
    # A limit that was converted is not taken more exactly than the parameter is written.
    slack = 0.05 * 10.0**-limit.parameter.decimals if ends.converted else 1e-9 * abs(reading.value)
    over = max(
        ends.low - reading.value if ends.low is not None else float("-inf"),
        reading.value - ends.high if ends.high is not None else float("-inf"),
    )
    spread = (reading.spread or 0.0) + ends.spread
    place = {"value": reading.value, "unit": reading.ground.unit, "ground": ground, "low": ends.low, "high": ends.high}
    if reading.estimated and reading.spread is None:
        return _said(limit, "not-said", "an estimate whose spread is not known: cannot be said", **place)
    if (reading.estimated or ends.estimated) and -spread < over <= spread:
        return _said(
            limit, "not-said", f"an estimate, and its spread (±{short(spread)}) reaches over the limit", **place
        )
    if over <= slack:
        return _said(limit, "within", "within what was agreed", **place)
    found = against_a_value(reading)
    small = found is not None and over <= found.allowance
    words = f"outside what was agreed by {short(over, 3)} {reading.ground.unit}"
    if found is not None:
        words += f", {'no more' if small else 'more'} than the method's own scatter (±{short(found.allowance)})"
    return _said(limit, "outside", words, within_scatter=small, **place)
