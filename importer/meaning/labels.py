"""Printed row labels to parameters: which one, how sure, and what else the wording says (basis, unit, family, mash)."""

from __future__ import annotations

from dataclasses import dataclass
from functools import lru_cache
from typing import Literal

from importer.meaning.label_choice import rules, unit_fits
from importer.meaning.label_verdict import MINIMUM, Verdict, decide, with_section
from importer.meaning.label_words import Wording, understand
from importer.models import Family, Mash
from importer.vocabulary.captions import family_statement
from importer.vocabulary.lexicon import Ideas
from importer.vocabulary.parameters import MoistureBasis, parameters
from importer.vocabulary.units import Unit, parse_unit

State = Literal["sure", "doubtful", "unknown"]
Matrix = Literal["malt", "barley", "other"]
Limit = Literal["min", "max"]
NAMED: dict[str, Family] = {"IOB": "IoB", "EBC": "EBC", "ASBC": "ASBC"}


@dataclass(frozen=True, slots=True)
class LabelQuery:
    """A label and what stands around it. ``section`` are the headings above it, outermost first; ``unit`` and ``value``
    those of its row; ``family`` the method family of the row's column or, failing that, of the sheet."""

    text: str
    section: tuple[str, ...] = ()
    column: str = ""
    unit: Unit | None = None
    value: float | None = None
    method: str | None = None
    family: Family | None = None


@dataclass(frozen=True, slots=True)
class Match:
    """What a label was taken for.

    ``parameter`` is None where it is none of the parameters (``state`` is then "unknown" and ``why`` says why).
    ``score`` runs from 0 to 100; ``rivals`` are other parameters it could mean. ``basis``, ``family``, ``mash`` and
    ``limit`` are None where the wording says nothing; ``unit`` is the unit inside the label; ``matrix`` what was
    examined; ``number`` a number at the end of the label that nothing explains.
    """

    parameter: str | None
    state: State
    score: float
    rivals: tuple[tuple[str, float], ...] = ()
    basis: MoistureBasis | None = None
    unit: Unit | None = None
    family: Family | None = None
    mash: Mash | None = None
    limit: Limit | None = None
    matrix: Matrix = "malt"
    why: str = ""
    number: str = ""


def describe(text: str, unit: str | Unit | None = None, family: Family | None = None) -> Match:
    """``recognise`` for a bare label. A unit text that is no known unit counts as none."""
    parsed = parse_unit(unit) if isinstance(unit, str) else unit
    return recognise(LabelQuery(text, unit=parsed, family=family))


@lru_cache(maxsize=16384)
def recognise(query: LabelQuery) -> Match:
    """Which parameter a label is. What stands around it chooses between rivals or raises doubt; it invents nothing."""
    sections = tuple(understand(text) for text in reversed(query.section) if text.strip())
    wording = understand(query.text)
    verdict = _verdict(wording, sections, query)
    if wording.unit_may_be_word and not (verdict.sure and _may_be_in(verdict.parameter, wording.unit)):
        # "Colour (IOB)", "Protéines / sec": what looks like a unit may be a word of the label.
        worded = understand(query.text, with_unit=True)
        other = _verdict(worded, sections, query)
        if other.sure or (other.parameter is not None and verdict.parameter is None):
            wording, verdict = worded, other
    ideas = verdict.ideas or _first(wording)
    basis, clash = _basis(ideas, wording, query)
    parameter = verdict.parameter
    if parameter is not None and basis == "as-is" and verdict.as_is is not None:
        parameter = verdict.as_is
    state: State = "unknown" if parameter is None else ("sure" if verdict.sure and not clash else "doubtful")
    return Match(
        parameter=parameter,
        state=state,
        score=round(verdict.score if not clash else min(verdict.score, 75.0), 1),
        rivals=verdict.rivals,
        basis=basis,
        unit=wording.unit,
        family=_family(ideas, parameter, wording),
        mash=_mash(ideas),
        limit=_limit(ideas, parameter, wording),
        matrix=_matrix(ideas, sections),
        why=verdict.why or ("the label names both dry malt and malt as is" if clash else ""),
        number=wording.number,
    )


def _may_be_in(parameter: str | None, unit: Unit | None) -> bool:
    return parameter is None or unit is None or unit_fits(parameter, unit) is not False


def ideas_of(text: str) -> Ideas:
    """The ideas that a text names; none where it is not known."""
    return _first(understand(text))


def examined(text: str) -> Matrix:
    """What a heading says was examined; malt where it says nothing."""
    return _matrix(ideas_of(text), ())


def _verdict(wording: Wording, sections: tuple[Wording, ...], query: LabelQuery) -> Verdict:
    unit, value = query.unit or wording.unit, query.value
    named = _named_family(wording)
    family = (
        (unit.family if unit is not None and not unit.doubtful else None)
        or named
        or query.family
        or wording.method_family
        or (family_statement(query.method) if query.method else None)
    )
    if wording.parameter is not None:
        return Verdict(wording.parameter, True, 100.0, ideas=_first(wording))
    verdict = decide(wording, family, unit, value)
    if not verdict.sure and query.unit is not None and query.unit.doubtful and query.unit.family is not None:
        # A bare "EBC" beside a row is the unit of colour or the name of the method.
        plain = decide(wording, named or query.unit.family, wording.unit, value)
        verdict = plain if plain.sure else verdict
    for section in sections:
        verdict = with_section(verdict, wording, section, family, unit, value)
        if verdict.settled:
            break
    return verdict


def _named_family(wording: Wording) -> Family | None:
    """The method family that a label names itself: "Extract (ASBC)"."""
    said = {family for name, family in NAMED.items() if name in _first(wording)}
    return said.pop() if len(said) == 1 else None


def _first(wording: Wording) -> Ideas:
    return wording.whole.meanings[0] if wording.whole.meanings else frozenset()


# ---------------------------------------------------------------------------------------------- what the wording says


def _basis(ideas: Ideas, wording: Wording, query: LabelQuery) -> tuple[MoistureBasis | None, bool]:
    """The moisture basis of label, unit or column, and whether the label names both."""
    dry, as_is = "DRY" in ideas, "AS_IS" in ideas
    if dry and as_is:
        return None, True
    if dry or as_is:
        return ("dry" if dry else "as-is"), False
    for unit in (wording.unit, query.unit):
        if unit is not None and unit.basis is not None:
            return unit.basis, False
    column = understand(query.column) if query.column else None
    if column is not None:
        said = _first(column)
        if "DOUBT" in said:  # "BH25-0711" is a batch, not "b. h."
            return None, False
        if ("DRY" in said) != ("AS_IS" in said):
            return ("dry" if "DRY" in said else "as-is"), False
        if column.unit is not None:
            return column.unit.basis, False
    return None, False


def _family(ideas: Ideas, parameter: str | None, wording: Wording) -> Family | None:
    """The one method family that the wording belongs to, None where it names none or several."""
    said = {family for idea, family in rules().families.items() if idea in ideas and not _is_unit(idea, parameter)}
    if not said and wording.method_family is not None:
        return wording.method_family
    return said.pop() if len(said) == 1 else None


def _is_unit(idea: str, parameter: str | None) -> bool:
    """A name of a family that is a unit of the parameter ("Colour EBC") says nothing of the family."""
    if parameter is None or parameters()[parameter].kind == "text":
        return False
    unit = parse_unit(idea)
    return unit is not None and unit_fits(parameter, unit) is True


def _mash(ideas: Ideas) -> Mash | None:
    said = {mash for idea, mash in rules().mashes.items() if idea in ideas}
    return said.pop() if len(said) == 1 else None


def _limit(ideas: Ideas, parameter: str | None, wording: Wording) -> Limit | None:
    timed = parameter is not None and parameters()[parameter].units["EBC"] == "min"
    highest = "LIMIT_MAX" in ideas or wording.limit_sign in ("<", "≤")
    lowest = "LIMIT_MIN" in ideas or (MINIMUM in ideas and not timed) or wording.limit_sign in (">", "≥")
    return None if lowest == highest else ("min" if lowest else "max")


def _matrix(ideas: Ideas, sections: tuple[Wording, ...]) -> Matrix:
    for said in (ideas, *(frozenset().union(*section.whole.meanings[:1]) for section in sections)):
        if "MALT" in said and not said & {"PRODUCT"}:
            return "malt"
        if "PRODUCT" in said:
            return "other"
        if "BARLEY" in said:
            return "barley"
    return "malt"
