"""A first look at a printed row: its number, its unit, what its label may be, and what a person said of it."""

from __future__ import annotations

from dataclasses import dataclass, replace

from importer.meaning.family import Clue, method_family
from importer.meaning.labels import LabelQuery, Match, recognise
from importer.meaning.printed_limits import limits_as_number
from importer.meaning.relations import family_of_unit
from importer.meaning.said import Said, Statements
from importer.models import Family
from importer.printed import PrintedFigure
from importer.reading.numbers import Convention, Number, read_number
from importer.vocabulary.parameters import parameters
from importer.vocabulary.units import Unit, parse_unit, split_unit

NUMBER_KINDS = ("number", "range")
# What stands in a column of units beside a figure that has none.
_NO_UNIT = ("-", "–", "—", "/")


@dataclass(frozen=True, slots=True)
class Look:
    """A first look at a row: its number, its unit, and words of the unit cell that nothing explains. ``printed`` has
    what a person said in place of what was read, ``as_read`` has not."""

    printed: PrintedFigure
    number: Number | None
    unit: Unit | None
    unit_misread: bool
    as_read: PrintedFigure
    row: int
    said: Said | None
    unit_words: str = ""


def first_look(
    figure: PrintedFigure, row: int, convention: Convention, specification: bool, statements: Statements
) -> Look:
    """The first look at a row, with what a person said of it. ``row`` counts the printed rows of the analysis."""
    said = statements.rows.get(row)
    shown, signs = _with_said(_without_settled(figure, statements), said), convention
    if said is not None and said.value is not None:
        signs = "."
    number = read_number(shown.value, signs)
    if specification and (number is None or number.kind == "blank"):
        number = limits_as_number(shown, signs)
        if number is not None and number.bound is None and shown.spec and not (shown.low or shown.high):
            # A plain number in a specification is a value to go by, no limit.
            shown, figure = (replace(f, value=f.spec, spec="") for f in (shown, figure))
    text = "" if shown.unit is None or shown.unit.strip() in _NO_UNIT else shown.unit
    unit = parse_unit(text) if text else None
    words = ""
    if unit is None and text:
        words, unit = split_unit(text)
    unexplained = words if unit is not None and any(c.isalnum() for c in words) else ""
    return Look(shown, number, unit, bool(text) and unit is None, figure, row, said, unexplained)


def _without_settled(figure: PrintedFigure, statements: Statements) -> PrintedFigure:
    """The row without doubt about its column, where that is known to hold the results."""
    known = statements.columns | statements.columns_learned
    doubts = tuple(concern for concern in figure.doubts if concern.column not in known)
    return figure if doubts == figure.doubts else replace(figure, doubts=doubts)


def _with_said(figure: PrintedFigure, said: Said | None) -> PrintedFigure:
    """The row with a person's value and unit in place of those read; a learned unit only where none is printed."""
    if said is None:
        return figure
    if said.value is not None:
        figure = replace(figure, value=said.value, doubts=())
    if said.unit is not None and not (said.is_weak("unit") and (figure.unit or figure.column_unit)):
        figure = replace(figure, unit=said.unit, column_unit=None)
    return replace(figure, column_family=said.family) if said.family is not None else figure


def has_result(look: Look) -> bool:
    """False for a row that holds nothing."""
    number = look.number
    return (number is None and bool(look.printed.value.strip())) or (number is not None and number.kind != "blank")


def match_of(look: Look, family: Family | None) -> Match:
    """What the label was taken for, or what it was said to be."""
    match = recognise(_query(look, family))
    said = look.said
    if said is None or said.parameter is None or (match.state == "sure" and said.is_weak("parameter")):
        return match
    return replace(match, parameter=said.parameter, state="sure", score=100.0, rivals=(), matrix="malt", why="")


def _query(look: Look, family: Family | None) -> LabelQuery:
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


def clue_of(look: Look, match: Match) -> Clue:
    """What a row says of the method family of its sheet."""
    unit = look.unit or match.unit
    column = look.as_read.column_family
    implied = family_of_unit(match.parameter, unit.code) if match.parameter is not None and unit is not None else None
    weak = unit.family if unit is not None and unit.code != "EBC" else None
    return Clue(
        unit_family=(implied or weak) if column is None else None,
        label_family=match.family if column is None and match.state == "sure" and _tells_family(match) else None,
        method=look.printed.method,
        mash=match.mash,
        column_family=column,
    )


def _tells_family(match: Match) -> bool:
    """False for what is the same in all families: "α-amylase (ASBC)" stands on sheets of any."""
    return match.parameter is None or parameters()[match.parameter].depends_on != "none"


def own_family(look: Look) -> Family | None:
    """The family that the row itself states: its column, then its method cell."""
    return look.printed.column_family or method_family(look.printed.method)


def unit_of_column(figure: PrintedFigure) -> Unit | None:
    """The unit that the head of a column gives."""
    return parse_unit(figure.column_unit) if figure.column_unit else None
