"""Printed figures to recognised ones: parameter, number, unit, family and moisture basis, and every doubt."""

from __future__ import annotations

from dataclasses import dataclass, replace

from importer.meaning.convert import at_basis, needs_basis
from importer.meaning.family import Clue, FamilyJudgement, judge_family, method_family, said_family
from importer.meaning.labels import LabelQuery, Match, recognise
from importer.meaning.recognised import Doubt, Recognised
from importer.meaning.relations import family_of_unit
from importer.meaning.said import NOTHING, Said, Statements
from importer.models import Family
from importer.printed import PrintedAnalysis, PrintedFigure
from importer.reading.numbers import Convention, Number, read_number
from importer.reading.values import split_value
from importer.vocabulary.captions import basis_statement
from importer.vocabulary.parameters import MoistureBasis, Parameter, parameters
from importer.vocabulary.units import Unit, parse_unit, split_unit

NUMBER_KINDS = ("number", "range")


@dataclass(frozen=True, slots=True)
class Resolved:
    """What became of the rows of one analysis. ``unknown`` are rows with a result that no parameter was found for, and
    ``unknown_rows`` their numbers."""

    figures: tuple[Recognised, ...]
    unknown: tuple[PrintedFigure, ...]
    family: FamilyJudgement
    unknown_rows: tuple[int, ...] = ()


@dataclass(frozen=True, slots=True)
class _Look:
    """A first look at a row: its number, its unit and where the unit was found. ``printed`` has what a person said in
    place of what was read, ``as_read`` has not."""

    printed: PrintedFigure
    number: Number | None
    unit: Unit | None
    unit_misread: bool
    as_read: PrintedFigure
    row: int
    said: Said | None


def resolve(analysis: PrintedAnalysis, convention: Convention, statements: Statements = NOTHING) -> Resolved:
    """Settles every row of an analysis. Rows without any result are left out; they hold nothing."""
    looks = [
        _look(figure, row, convention, analysis.is_specification, statements.rows.get(row))
        for row, figure in enumerate(analysis.figures)
    ]
    looks = [look for look in looks if _has_result(look) and not (look.said is not None and look.said.rejected)]
    matches = [_match(look, None) for look in looks]
    clues = [_clue(look, match) for look, match in zip(looks, matches, strict=True)]
    read = judge_family(analysis, clues)
    family = said_family(read, statements)
    sheet_basis = _sheet_basis(analysis)
    figures: list[Recognised] = []
    unknown: list[_Look] = []
    for look in looks:
        own = _own_family(look)
        match = _match(look, own or (family.family if family.source != "assumed" else None))
        if match.parameter is None or match.state == "unknown" or match.matrix != "malt":
            unknown.append(look)
            continue
        figure = _settle(look, match, family, sheet_basis, convention, analysis.is_specification)
        if statements.says_family and _family_doubts(parameters()[match.parameter], match, own, read, figure.family):
            figure = replace(figure, notes=(*figure.notes, "corrected-by-person"))
        figures.append(figure)
    return Resolved(
        tuple(figures), tuple(look.as_read for look in unknown), family, tuple(look.row for look in unknown)
    )


def _match(look: _Look, family: Family | None) -> Match:
    """What the label was taken for, or what it was said to be."""
    match = recognise(_query(look, family))
    said = look.said
    if said is None or said.parameter is None or (match.state == "sure" and said.is_weak("parameter")):
        return match
    return replace(match, parameter=said.parameter, state="sure", score=100.0, rivals=(), matrix="malt", why="")


def _has_result(look: _Look) -> bool:
    number = look.number
    return (number is None and bool(look.printed.value.strip())) or (number is not None and number.kind != "blank")


# ---------------------------------------------------------------------------------------------- numbers and units


def _look(figure: PrintedFigure, row: int, convention: Convention, specification: bool, said: Said | None) -> _Look:
    shown, signs = _with_said(figure, said), convention
    if said is not None and said.value is not None:
        signs = "."
    number = read_number(shown.value, signs)
    if specification and (number is None or number.kind == "blank"):
        number = _limits_as_number(shown, signs)
    text = shown.unit or ""
    unit = parse_unit(text) if text else None
    if unit is None and text:
        _, unit = split_unit(text)
    return _Look(shown, number, unit, bool(text) and unit is None, figure, row, said)


def _with_said(figure: PrintedFigure, said: Said | None) -> PrintedFigure:
    """The row with a person's value and unit in place of those read; a learned unit only where none is printed."""
    if said is None:
        return figure
    if said.value is not None:
        figure = replace(figure, value=said.value, doubts=())
    if said.unit is not None and not (said.is_weak("unit") and (figure.unit or figure.column_unit)):
        figure = replace(figure, unit=said.unit, column_unit=None)
    return replace(figure, column_family=said.family) if said.family is not None else figure


def _limits_as_number(figure: PrintedFigure, convention: Convention) -> Number | None:
    """The limits of a specification row as the figure itself: a range, "<" for a maximum, ">" for a minimum."""
    low, high = limit_values(figure, convention)
    shown = " - ".join(t for t in (figure.low, figure.high) if t) or figure.spec
    sample = read_number(split_value(figure.high or figure.low or figure.spec)[0], convention)
    if sample is None or (low is None and high is None):
        return sample
    if low is not None and high is not None:
        return replace(sample, value=None, bound="range", low=low, high=high, kind="range", text=shown)
    if high is not None:
        return replace(sample, value=high, bound="<", low=None, high=None, kind="number", text=shown)
    return replace(sample, value=low, bound=">", low=None, high=None, kind="number", text=shown)


def limit_values(figure: PrintedFigure, convention: Convention) -> tuple[float | None, float | None]:
    """Printed limits as numbers in the figure's unit: (low, high), None where there is none or it is not clear."""
    low = _limit(figure.low, convention, "low")
    high = _limit(figure.high, convention, "high")
    if figure.spec and low is None and high is None:
        spec = read_number(split_value(figure.spec)[0], convention)
        if spec is not None and not spec.ambiguous:
            if spec.bound == "range":
                return spec.low, spec.high
            if spec.bound in ("<", "max"):
                return None, spec.value
            if spec.bound in (">", "min"):
                return spec.value, None
    return low, high


def _with_limit_sides(figure: PrintedFigure, convention: Convention) -> PrintedFigure:
    """A limit of one cell put on the side that it belongs to, as printed; a range in one cell stays whole."""
    if not figure.spec or figure.low or figure.high:
        return figure
    low, high = limit_values(figure, convention)
    if low is not None and high is None:
        return replace(figure, low=figure.spec, spec="")
    return replace(figure, high=figure.spec, spec="") if high is not None and low is None else figure


def _limit(text: str, convention: Convention, side: str) -> float | None:
    number = read_number(split_value(text)[0], convention) if text else None
    if number is None or number.ambiguous:
        return None
    if number.bound == "range":
        return number.low if side == "low" else number.high
    return number.value


def _query(look: _Look, family: Family | None) -> LabelQuery:
    figure = look.printed
    value = None
    if look.number is not None and look.number.kind in NUMBER_KINDS:
        value = look.number.value if look.number.value is not None else look.number.high
    unit = look.unit
    if unit is None and figure.column_unit is not None:
        unit = parse_unit(figure.column_unit)
    return LabelQuery(
        text=figure.label,
        section=figure.section,
        column=figure.column,
        unit=unit,
        value=value,
        method=figure.method,
        family=figure.column_family or family,
    )


def _clue(look: _Look, match: Match) -> Clue:
    unit = look.unit or match.unit
    column = look.as_read.column_family
    implied = family_of_unit(match.parameter, unit.code) if match.parameter is not None and unit is not None else None
    weak = unit.family if unit is not None and unit.code != "EBC" else None
    return Clue(
        unit_family=(implied or weak) if column is None else None,
        label_family=match.family if column is None and match.state == "sure" else None,
        method=look.printed.method,
        mash=match.mash,
        column_family=column,
    )


def _own_family(look: _Look) -> Family | None:
    """The family that the row itself states: its column, then its method cell."""
    return look.printed.column_family or method_family(look.printed.method)


# ---------------------------------------------------------------------------------------------- settling a row


def _settle(
    look: _Look,
    match: Match,
    sheet: FamilyJudgement,
    sheet_basis: MoistureBasis | None,
    convention: Convention,
    specification: bool,
) -> Recognised:
    entry = parameters()[match.parameter or ""]
    doubts = [Doubt(concern.flag, concern.reason) for concern in look.printed.doubts]
    if match.state == "doubtful":
        doubts.append(Doubt("label-doubtful", match.why or f"“{look.printed.label}” could mean something else."))
    own = _own_family(look)
    known = _known_units(entry)
    # "mm" in "> 2.5 mm" belongs to the name of the figure and is not its unit.
    label_unit = match.unit if match.unit is not None and match.unit.code in known else None
    printed_unit = look.unit or label_unit or _column_unit(look.printed)
    implied = family_of_unit(entry.name, printed_unit.code) if printed_unit is not None else None
    family = own or implied or sheet.family
    doubts += _family_doubts(entry, match, own or implied, sheet, family)
    unit, unit_doubts = _unit(entry, look, label_unit, own, printed_unit, family)
    doubts += unit_doubts
    basis, basis_doubts = _basis(entry, look, match, printed_unit, sheet_basis, unit)
    doubts += basis_doubts
    number, text, number_doubts = _number(entry, look, specification)
    doubts += number_doubts
    mash = match.mash or (sheet.mash if family == sheet.family else None)
    low, high = (None, None) if specification else limit_values(look.printed, convention)
    return Recognised(
        printed=_with_limit_sides(look.as_read, convention),
        match=match,
        parameter=at_basis(entry.name, basis),
        number=number,
        unit=unit,
        family=family,
        mash=mash,
        basis=basis,
        low=low,
        high=high,
        doubts=tuple(doubts),
        notes=("food-safety",) if entry.food_safety else (),
        text=text,
        row=look.row,
        said=look.said,
    )


def _column_unit(figure: PrintedFigure) -> Unit | None:
    return parse_unit(figure.column_unit) if figure.column_unit else None


def _family_doubts(
    entry: Parameter,
    match: Match,
    said: Family | None,
    sheet: FamilyJudgement,
    family: Family,
) -> list[Doubt]:
    if entry.depends_on == "none":
        return []
    if (
        said is not None
        and match.family is not None
        and match.family != said
        and {match.family, said} != {"EBC", "ASBC"}
    ):
        return [Doubt("family-assumed", f"The label belongs to {match.family} and the row says {said}.")]
    if said is not None:
        return []
    if sheet.source == "assumed":
        return [Doubt("family-assumed", "The sheet does not say which method family (IoB, EBC, ASBC) it stands on.")]
    if sheet.conflict and match.family != family:
        return [
            Doubt("family-assumed", "The sheet uses methods of more than one family, and this row does not say which.")
        ]
    if match.family is not None and match.family != family and {match.family, family} != {"EBC", "ASBC"}:
        return [Doubt("family-assumed", f"The label belongs to {match.family} and the sheet to {family}.")]
    return []


def _unit(
    entry: Parameter, look: _Look, label: Unit | None, own: Family | None, printed: Unit | None, family: Family
) -> tuple[str | None, list[Doubt]]:
    """The unit code of a row, with a doubt where it is not printed and could be another."""
    if entry.kind == "text":
        return "text", []
    if printed is None and look.number is not None and look.number.kind not in NUMBER_KINDS:
        return entry.units[family], []
    if printed is not None:
        if look.unit is not None and label is not None and look.unit.code != label.code:
            return look.unit.code, [
                Doubt("unit-assumed", f"The label says {label.code} and the row says {look.unit.code}.")
            ]
        if printed.code in _known_units(entry):
            doubts = []
            if printed.damaged:
                doubts.append(Doubt("reading-doubtful", f"The unit was read as “{look.printed.unit or printed.code}”."))
            return printed.code, doubts
        if entry.sole_unit and look.number is not None and look.number.kind not in NUMBER_KINDS:
            return entry.units[family], []
        return printed.code, [Doubt("unit-assumed", f"{printed.code} is not a unit in use for {entry.title}.")]
    if look.unit_misread and own is None:
        return entry.units[family], [Doubt("unit-assumed", f"The unit “{look.printed.unit}” is not known.")]
    by_family = len(set(entry.units.values())) > 1
    choices = entry.printed_units[family]
    if entry.sole_unit or (by_family and own is not None) or (len(choices) == 1 and not by_family):
        return entry.units[family], []
    return entry.units[family], [
        Doubt("unit-assumed", f"No unit is printed; {entry.units[family]} is assumed for {entry.title}.")
    ]


def _known_units(entry: Parameter) -> set[str]:
    return (
        {code for codes in entry.printed_units.values() for code in codes}
        | set(entry.units.values())
        | set(entry.possible)
    )


def _basis(
    entry: Parameter,
    look: _Look,
    match: Match,
    unit: Unit | None,
    sheet_basis: MoistureBasis | None,
    code: str | None,
) -> tuple[MoistureBasis | None, list[Doubt]]:
    if entry.basis is None or code is None or not needs_basis(entry.name, code):
        return entry.basis if entry.sibling is None else None, []
    head = split_unit(look.printed.column)[1]
    column = basis_statement(look.printed.column) or (head.basis if head is not None else None)
    told = look.said.basis if look.said is not None else None
    if told is not None and look.said is not None and not look.said.is_weak("basis"):
        return told, []
    section = next((b for b in (basis_statement(text) for text in look.printed.section) if b is not None), None)
    said = [b for b in (unit.basis if unit is not None else None, match.basis, column) if b is not None]
    if said:
        if len(set(said)) > 1:
            return said[0], [Doubt("moisture-basis-assumed", "The row names both dry malt and malt as is.")]
        return said[0], []
    if section is not None:
        return section, []
    if sheet_basis is not None or told is not None:
        return sheet_basis or told, []
    if entry.basis_settled:
        return entry.basis, []
    return entry.basis, [
        Doubt(
            "moisture-basis-assumed",
            f"The sheet does not say whether {entry.title.split(',')[0].lower()} is on dry malt or as is.",
        )
    ]


def _sheet_basis(analysis: PrintedAnalysis) -> MoistureBasis | None:
    """The moisture basis that a note of the sheet gives for all results; None where there is none or two."""
    said = {basis for basis in (basis_statement(note) for note in analysis.notes if len(note.split()) > 2) if basis}
    return said.pop() if len(said) == 1 else None


def _number(entry: Parameter, look: _Look, specification: bool) -> tuple[Number, str | None, list[Doubt]]:
    """The number of a row, the text of a described result, and what is doubtful about either."""
    number = look.number
    raw = look.printed.value.strip()
    blank = Number(value=None, bound=None, low=None, high=None, decimals=0, text=raw, ambiguous=False, kind="word")
    if number is None:
        return blank, raw, [Doubt("reading-doubtful", f"“{raw}” could not be read as a number.")]
    if entry.kind == "text":
        doubts = (
            []
            if number.kind in ("word", "not-detected")
            else [Doubt("label-doubtful", f"{entry.title} is described in words, and the sheet gives {raw}.")]
        )
        return replace(blank, text=raw), raw, doubts
    if number.kind == "not-detected":
        return number, raw, []
    if number.kind == "word":
        described = entry.units["EBC"] in ("min",) or entry.name in ("turbidity",)
        doubts = [] if described else [Doubt("reading-doubtful", f"“{raw}” is not a number.")]
        return number, raw, doubts
    doubts = []
    if number.ambiguous:
        doubts.append(Doubt("reading-doubtful", number.why or f"“{raw}” can be read as more than one number."))
    if number.bound in ("max", "min") and not specification:
        doubts.append(Doubt("reading-doubtful", f"“{raw}” is a limit, not a result."))
    if number.bound == "approx":
        doubts.append(Doubt("reading-doubtful", f"“{raw}” is only an approximate figure."))
    if number.kind == "several":
        doubts.append(Doubt("reading-doubtful", f"“{raw}” holds more than one figure."))
    return number, None, doubts
