"""Where the rows of a printed sheet have gone in its analysis as it stands, and which of them wait for a person."""

from __future__ import annotations

from dataclasses import dataclass

from importer.meaning.build import REVIEW_FLAGS, Built
from importer.meaning.recognised import Doubt, Recognised
from importer.models import Figure
from importer.store import learned, rows
from importer.store.corrections import Case
from importer.vocabulary.parameters import parameters


@dataclass(frozen=True, slots=True)
class Place:
    """A row within an analysis as it stands: its figure and doubts, or neither where it has no parameter."""

    row: int
    figure: Figure | None
    recognised: Recognised | None
    doubts: tuple[Doubt, ...]

    @property
    def open_doubts(self) -> tuple[Doubt, ...]:
        """The doubts that keep it in review."""
        settled = self.recognised.settled if self.recognised is not None else frozenset()
        return tuple(doubt for doubt in self.doubts if doubt.flag in REVIEW_FLAGS - settled)


def place_of(built: Built, row: int) -> Place:
    """Where a row has gone."""
    for figure, group, doubts in zip(built.analysis.figures, built.groups, built.doubts, strict=True):
        for number, one in enumerate(group):
            if one.row == row:
                return Place(row, figure, one, doubts if number == 0 else one.doubts)
    return Place(row, None, None, ())


def waiting_rows(built: Built) -> list[int]:
    """The rows of figures in review, in the order of the sheet."""
    figures = zip(built.analysis.figures, built.groups, strict=True)
    return sorted(group[0].row for figure, group in figures if figure.state == "review")


def asked_rows(case: Case) -> list[int]:
    """The rows without a parameter that nobody has said anything of, in the order of the sheet."""
    return sorted(learned.asked_rows(case.built, case.statements))


def header_waits(case: Case) -> bool:
    """True where something waits on the sheet and an entry of the head is in doubt, the batch is missing, or the method
    family is not known."""
    analysis = case.built.analysis
    if not rows.is_doubtful(analysis):
        return False
    if any(field.state == "review" for field in analysis.header.values()):
        return True
    if analysis.kind == "batch" and "batch" not in analysis.header:
        return True
    return family_waits(case)


def family_waits(case: Case) -> bool:
    """True where figures are in doubt only because the sheet does not say its method family."""
    if case.built.analysis.family_from != "assumed":
        return False
    waiting = (place_of(case.built, row) for row in waiting_rows(case.built))
    return any(doubt.flag == "family-assumed" for place in waiting for doubt in place.open_doubts)


def told_of(place: Place) -> str:
    """A row in short, for the records."""
    if place.figure is None:
        return ""
    return f"{parameters()[place.figure.parameter].title} {rows.told(place.figure)}".strip()
