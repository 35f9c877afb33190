"""What the layout stage may ask about the wording of a cell. The mappings answer."""

from __future__ import annotations

from typing import Protocol


class Terms(Protocol):
    """Questions about one cell's text; every answer is a guess about the wording alone, never about the figure."""

    def roles(self, text: str) -> tuple[str, ...]:
        """Column roles that a head names ("result", "unit", "family:EBC", ...); empty where it names none."""

    def is_label(self, text: str) -> bool:
        """True for the name of a parameter."""

    def is_value(self, text: str) -> bool:
        """True for a number, a range, a limit or a bound, with or without a unit."""

    def is_unit(self, text: str) -> bool:
        """True for a unit and nothing else."""

    def basis(self, text: str) -> str | None:
        """The moisture basis ("dry", "as-is") that a head names and nothing else; None for any other text."""

    def caption(self, text: str) -> str | None:
        """The header key that a caption names, "ignore" for one that is of no interest, None for no caption."""

    def is_sure_caption(self, text: str) -> bool:
        """True for a caption that can mean nothing else."""

    def is_other_matter(self, text: str) -> bool:
        """True for a text that speaks of barley, beer or another product, and not of malt."""

    def is_sieving(self, text: str) -> bool:
        """True for a heading over fractions by sieves ("Sieving (mm)")."""

    def is_title(self, text: str) -> bool:
        """True for the title of a sheet of results ("Certificate of analysis")."""

    def is_telling(self, word: str) -> bool:
        """True for a word that says something in the name of a parameter: neither unknown nor an article."""

    def is_limit(self, word: str) -> bool:
        """True for words in a label that a limit follows ("max.", "not less than")."""

    def is_plainer(self, other: str, text: str) -> bool:
        """True where ``other`` surely names a parameter, or a unit, that ``text`` may name, but not surely."""

    def is_method(self, text: str) -> bool:
        """True for the reference of a method and nothing else ("EBC 4.5.1", "R-205.01.080")."""
