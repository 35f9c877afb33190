"""Printed figures to recognised ones: parameter, number, unit, family and moisture basis, and every doubt."""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace

from importer.meaning.convert import at_basis, needs_basis
from importer.meaning.family import FamilyJudgement, judge_family, said_family
from importer.meaning.footnotes import footnote_doubts, footnotes, footnotes_of, without_footnotes
from importer.meaning.label_numbers import may_be_result
from importer.meaning.label_sizes import is_congress_strength
from importer.meaning.labels import Match, describe
from importer.meaning.look import (
    NUMBER_KINDS,
    Look,
    clue_of,
    first_look,
    has_result,
    match_of,
    own_family,
    unit_of_column,
)
from importer.meaning.naming import unit_not_in_use
from importer.meaning.printed_limits import limit_values, with_label_limit, with_limit_sides
from importer.meaning.recognised import Doubt, Recognised
from importer.meaning.relations import family_of_unit
from importer.meaning.said import NOTHING, Statements
from importer.models import Family
from importer.printed import PrintedAnalysis, PrintedFigure
from importer.reading.numbers import Convention, Number
from importer.vocabulary.captions import basis_of_some, basis_statement
from importer.vocabulary.parameters import MoistureBasis, Parameter, parameters
from importer.vocabulary.units import Unit, split_unit

# Words before the unit in the heading of a group ("given in %").
UNIT_WORDS = 3
AMONG_BARLEY = Doubt("label-doubtful", "Other rows of its section are of barley, not of malt.")


@dataclass(frozen=True, slots=True)
class Resolved:
    """What became of the rows of one analysis. ``unknown`` are rows with a result that no parameter was found for, and
    ``unknown_rows`` their numbers."""

    figures: tuple[Recognised, ...]
    unknown: tuple[PrintedFigure, ...]
    family: FamilyJudgement
    unknown_rows: tuple[int, ...] = ()


def resolve(analysis: PrintedAnalysis, convention: Convention, statements: Statements = NOTHING) -> Resolved:
    """Settles every row of an analysis. Rows without any result are left out; they hold nothing."""
    notes = footnotes(analysis.notes, analysis.figures)
    general = without_footnotes(analysis.notes, notes)
    looks = [
        first_look(figure, row, convention, analysis.is_specification, statements)
        for row, figure in enumerate(analysis.figures)
    ]
    looks = [look for look in looks if has_result(look) and not (look.said is not None and look.said.rejected)]
    matches = [match_of(look, None) for look in looks]
    clues = [clue_of(look, match) for look, match in zip(looks, matches, strict=True)]
    read = judge_family(analysis, clues)
    family = said_family(read, statements)
    sheet_basis = _sheet_basis(general)
    but_some = next((note for note in general if len(note.split()) > 2 and basis_of_some(note)), "")
    figures: list[Recognised] = []
    unknown: list[Look] = []
    barley = _of_barley(looks, matches)
    for look in looks:
        own = own_family(look)
        match = match_of(look, own or (family.family if family.source != "assumed" else None))
        if match.parameter is None or match.state == "unknown" or match.matrix != "malt":
            unknown.append(look)
            continue
        entry = parameters()[match.parameter]
        figure = _settle(look, match, family, sheet_basis, but_some, notes, convention, analysis.is_specification)
        by_family = statements.says_family and _family_doubts(entry, match, own, read, figure.family)
        if by_family or any(concern.column in statements.columns for concern in look.as_read.doubts):
            figure = replace(figure, notes=(*figure.notes, "corrected-by-person"))
        figures.append(_doubted(figure, AMONG_BARLEY) if _place(look) in barley else figure)
    return Resolved(
        tuple(figures), tuple(look.as_read for look in unknown), family, tuple(look.row for look in unknown)
    )


def _place(look: Look) -> tuple[int, tuple[str, ...]]:
    return look.printed.page, look.printed.section


def _of_barley(looks: Sequence[Look], matches: Sequence[Match]) -> set[tuple[int, tuple[str, ...]]]:
    """The sections of which several rows say that barley was examined; the rows between them need not say it."""
    said = Counter(_place(look) for look, match in zip(looks, matches, strict=True) if match.matrix == "barley")
    return {place for place, count in said.items() if count > 1}


def _doubted(figure: Recognised, doubt: Doubt) -> Recognised:
    return replace(figure, doubts=(*figure.doubts, doubt))


# ---------------------------------------------------------------------------------------------- settling a row


def _settle(
    look: Look,
    match: Match,
    sheet: FamilyJudgement,
    sheet_basis: MoistureBasis | None,
    but_some: str,
    notes: Mapping[str, str],
    convention: Convention,
    specification: bool,
) -> Recognised:
    entry = parameters()[match.parameter or ""]
    doubts = [Doubt(concern.flag, concern.reason) for concern in look.printed.doubts]
    if match.state == "doubtful":
        doubts.append(
            Doubt("label-doubtful", _sentence(match.why or f"“{look.printed.label}” could mean something else."))
        )
    own = own_family(look)
    known = _known_units(entry)
    # "mm" in "> 2.5 mm" belongs to the name of the figure and is not its unit.
    label_unit = match.unit if match.unit is not None and match.unit.code in known else None
    printed_unit = look.unit or label_unit or unit_of_column(look.printed) or _section_unit(look.printed, known)
    implied = family_of_unit(entry.name, printed_unit.code) if printed_unit is not None else None
    family = own or implied or sheet.family
    doubts += _family_doubts(entry, match, own or implied, sheet, family)
    if look.unit is None and own is None and printed_unit is label_unit:
        meant = implied or _named_family(look, label_unit, sheet)
        doubts += _label_unit_doubts(label_unit, meant, sheet) if meant not in (None, sheet.family) else []
    unit, unit_doubts = _unit(entry, look, label_unit, own, printed_unit, family)
    doubts += unit_doubts
    doubts += _unit_cell_doubts(look, printed_unit)
    if may_be_result(match.number, entry.name, unit):
        reason = f"Its label ends in a number, “{match.number}”, which may be the result."
        doubts.append(Doubt("label-doubtful", reason))
    if match.limit is not None and not specification and _is_bare_limit(look):
        doubts.append(Doubt("label-doubtful", f"“{look.printed.label}” names a limit; it may be no result."))
    basis, basis_doubts = _basis(entry, look, match, printed_unit, sheet_basis, but_some, notes, unit)
    doubts += basis_doubts
    number, text, number_doubts = _number(entry, look, specification)
    doubts += [*number_doubts, *footnote_doubts(look.printed, notes, family)]
    mash = match.mash or (sheet.mash if family == sheet.family else None)
    low, high = (None, None) if specification else limit_values(with_label_limit(look.printed), convention)
    return Recognised(
        printed=with_limit_sides(with_label_limit(look.as_read), convention),
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


def _is_bare_limit(look: Look) -> bool:
    """True for "Colour max." without a number of its own or limits beside the value."""
    row = look.printed
    return not (row.low or row.high or row.spec or any(map(str.isdigit, row.label)))


def _named_family(look: Look, unit: Unit | None, sheet: FamilyJudgement) -> Family | None:
    """EBC where the name of a row on a sheet by ASBC has that word in it, and not in brackets: methods, or the unit."""
    if unit is None or unit.code != "EBC" or sheet.family != "ASBC":
        return None
    bracketed = re.search(r"[\[(][^\])]*\bEBC\b", look.printed.label)
    return None if bracketed else "EBC"


def _label_unit_doubts(unit: Unit | None, implied: Family | None, sheet: FamilyJudgement) -> list[Doubt]:
    """A doubt where only a name ("Diastatic power WK") gives a unit that the methods of the sheet do not give."""
    if unit is None or sheet.source == "assumed":
        return []
    said = f"Its name gives {unit.code}, which belongs to {implied}; the sheet stands on {sheet.family}"
    return [Doubt("unit-assumed", f"{said}, and no unit is printed.")]


def _section_unit(figure: PrintedFigure, known: set[str]) -> Unit | None:
    """The unit that the heading of a group of rows gives all of them ("in %:")."""
    heading = figure.section[-1].strip(" :") if figure.section else ""
    words, unit = split_unit(heading)
    return unit if unit is not None and unit.code in known and len(words.split()) <= UNIT_WORDS else None


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
    entry: Parameter, look: Look, label: Unit | None, own: Family | None, printed: Unit | None, family: Family
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
        return printed.code, [Doubt("unit-assumed", _sentence(unit_not_in_use(entry.name, printed.code)))]
    if look.unit_misread and own is None:
        return entry.units[family], [Doubt("unit-assumed", f"The unit “{look.printed.unit}” is not known.")]
    by_family = len(set(entry.units.values())) > 1
    choices = entry.printed_units[family]
    if entry.sole_unit or (by_family and own is not None) or (len(choices) == 1 and not by_family):
        return entry.units[family], []
    return entry.units[family], [
        Doubt("unit-assumed", f"No unit is printed; {entry.units[family]} is assumed for {entry.title}.")
    ]


def _unit_cell_doubts(look: Look, printed: Unit | None) -> list[Doubt]:
    """What else the unit says: words that are not known ("% of extract"), the strength of another wort."""
    doubts: list[Doubt] = []
    if look.unit_words:
        doubts.append(Doubt("unit-assumed", f"“{look.unit_words}” in the unit is not known."))
    strength, _, sign = (printed.reference or "").partition(" ") if printed is not None else ("", "", "")
    if sign in ("%", "°P") and not is_congress_strength(float(strength)):
        doubts.append(Doubt("label-doubtful", f"It is of a wort of {strength} {sign}, not of the laboratory wort."))
    return doubts


def _known_units(entry: Parameter) -> set[str]:
    return (
        {code for codes in entry.printed_units.values() for code in codes}
        | set(entry.units.values())
        | set(entry.possible)
    )


def _basis(
    entry: Parameter,
    look: Look,
    match: Match,
    unit: Unit | None,
    sheet_basis: MoistureBasis | None,
    but_some: str,
    notes: Mapping[str, str],
    code: str | None,
) -> tuple[MoistureBasis | None, list[Doubt]]:
    if entry.basis is None or code is None or not needs_basis(entry.name, code):
        return entry.basis if entry.sibling is None else None, []
    head = split_unit(look.printed.column)[1]
    column = basis_statement(look.printed.column) or (head.basis if head is not None else None)
    told = look.said.basis if look.said is not None else None
    if told is not None and look.said is not None and not look.said.is_weak("basis"):
        return told, []
    headings = [text for text in look.printed.section if not _is_row_of_other(text, entry)]
    sections = [b for b in map(basis_statement, headings) if b is not None]
    noted = [basis_statement(text) for text in footnotes_of(look.printed, notes)]
    said = [b for b in (unit.basis if unit is not None else None, match.basis, column, *noted) if b is not None]
    if said:
        if len(set(said)) > 1:
            return said[0], [Doubt("moisture-basis-assumed", "The row names both dry malt and malt as is.")]
        return said[0], []
    if sections:
        doubt = Doubt("moisture-basis-assumed", "The headings over it name both dry malt and malt as is.")
        return sections[-1], [doubt] if len(set(sections)) > 1 else []
    if but_some and told is None:
        reason = f"A note gives the moisture basis of all figures but some: “{but_some}”"
        return sheet_basis or entry.basis, [Doubt("moisture-basis-assumed", reason)]
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


def _is_row_of_other(text: str, entry: Parameter) -> bool:
    """True for the name of another parameter, whose result was left blank: it heads nothing."""
    match = describe(text)
    return match.state == "sure" and match.parameter not in (entry.name, entry.sibling)


def _sheet_basis(notes: Sequence[str]) -> MoistureBasis | None:
    """The moisture basis that a note of the sheet gives for all results; None where there is none or two."""
    whole = [note for note in notes if len(note.split()) > 2 and note.count("(") == note.count(")")]
    said = {basis for basis in (basis_statement(note) for note in whole) if basis}
    return said.pop() if len(said) == 1 else None


def _number(entry: Parameter, look: Look, specification: bool) -> tuple[Number, str | None, list[Doubt]]:
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
    if number.ambiguous and number.kind != "several":
        why = _sentence(number.why or f"“{raw}” can be read as more than one number.")
        doubts.append(Doubt("reading-doubtful", why))
    if number.bound in ("max", "min") and not specification:
        doubts.append(Doubt("reading-doubtful", f"“{raw}” is a limit, not a result."))
    if number.bound == "approx":
        doubts.append(Doubt("reading-doubtful", f"“{raw}” is only an approximate figure."))
    if number.kind == "several":
        doubts.append(Doubt("reading-doubtful", f"“{raw}” holds more than one figure."))
    return number, None, doubts


def _sentence(text: str) -> str:
    """A reason as a sentence of its own."""
    return text[:1].upper() + text[1:] + ("" if text.endswith((".", "!", "?", ".”")) else ".")
