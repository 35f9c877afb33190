"""Which method family and mash a sheet stands on, from what it says and from the units and words that it uses."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace

from importer.meaning.said import Statements
from importer.models import FAMILIES, Family, FamilyFrom, Mash
from importer.printed import PrintedAnalysis
from importer.vocabulary.captions import family_statement, mash_statement

# Rows whose units and words have to speak against what the sheet states, before it is doubted.
CONTRARY_ROWS = 2


@dataclass(frozen=True, slots=True)
class FamilyJudgement:
    """``conflict`` is true where the sheet names or implies more than one family outside of columns of their own."""

    family: Family
    source: FamilyFrom
    mash: Mash | None
    mash_stated: bool
    conflict: bool = False


@dataclass(frozen=True, slots=True)
class Clue:
    """What one row says of the family: its unit, its label, its method cell and its column."""

    unit_family: Family | None
    label_family: Family | None
    method: str | None
    mash: Mash | None
    column_family: Family | None


def method_family(method: str | None) -> Family | None:
    """The family that a method cell names ("EBC 4.5.1"), None where it names none."""
    return family_statement(method) if method else None


def judge_family(analysis: PrintedAnalysis, clues: Sequence[Clue]) -> FamilyJudgement:
    """Statements of the sheet first, then method cells and columns, then units and words; EBC is assumed last."""
    mash, mash_stated = _mash(analysis, clues)
    said = _count(family_statement(note) for note in analysis.notes)
    methods = _count(method_family(clue.method) for clue in clues)
    columns = {clue.column_family for clue in clues if clue.column_family is not None}
    stated = said + methods
    if len(stated) == 1 or (stated and _leads(stated)):
        family = stated.most_common(1)[0][0]
        conflict = len(stated) > 1 or _contradicted(family, clues)
        return FamilyJudgement(family, "stated", _mash_of(family, mash), mash_stated, conflict)
    if columns:
        family = next(name for name in FAMILIES if name in columns)
        return FamilyJudgement(family, "stated", _mash_of(family, mash), mash_stated)
    hints = _count(clue.unit_family for clue in clues)
    hints += _count(clue.label_family for clue in clues)
    if stated:
        hints += stated
    if not hints and mash is not None:
        hints["EBC"] = 1
    if hints and _leads(hints):
        family = hints.most_common(1)[0][0]
        return FamilyJudgement(family, "inferred", _mash_of(family, mash), mash_stated, conflict=len(hints) > 1)
    return FamilyJudgement("EBC", "assumed", mash, mash_stated, conflict=bool(hints))


def said_family(read: FamilyJudgement, statements: Statements) -> FamilyJudgement:
    """The family that a person named; one that was learned only where the sheet itself gives no sign of any."""
    family = statements.family
    if family is None or (statements.family_learned and (read.source != "assumed" or read.conflict)):
        return read
    mash = read.mash if read.mash_stated else _mash_of(family, None)
    return replace(read, family=family, source="inferred", mash=mash, conflict=False)


def _count(families: Iterable[Family | None]) -> Counter[Family]:
    return Counter(family for family in families if family is not None)


def _leads(counts: Counter[Family]) -> bool:
    """True where one family has clearly more evidence than any other."""
    ranked = counts.most_common(2)
    return len(ranked) == 1 or ranked[0][1] > 2 * ranked[1][1]


def _contradicted(stated: Family, clues: Sequence[Clue]) -> bool:
    """True where the units of rows, with their words, are those of another family, and none are of the stated one.

    A note of a form ("Methods: EBC") may not be about this sheet. Words alone do not tell: labels are kept for years.
    """
    units = {clue.unit_family for clue in clues} - {None}
    labels = {clue.label_family for clue in clues} - {None}
    rows = sum(clue.unit_family is not None or clue.label_family is not None for clue in clues)
    return rows >= CONTRARY_ROWS and bool(units) and stated not in units | labels


def _mash_of(family: Family, stated: Mash | None) -> Mash | None:
    if stated is not None:
        return stated
    return "isothermal-65" if family == "IoB" else "congress"


def _mash(analysis: PrintedAnalysis, clues: Sequence[Clue]) -> tuple[Mash | None, bool]:
    """The mash that the sheet names. A mash named only on single rows does not hold for the sheet."""
    said = Counter(mash for mash in (mash_statement(note) for note in analysis.notes) if mash is not None)
    if len(said) == 1:
        return next(iter(said)), True
    return None, False
