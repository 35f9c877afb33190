"""What a person said of a sheet, or what was learned from that before: laid over the rows as they were read."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field

from importer.models import Family, Flag
from importer.vocabulary.parameters import MoistureBasis

NEVER_SETTLED: frozenset[Flag] = frozenset({"no-moisture"})
"""Doubts that no word can lift: the figure itself is not there before something else is given."""
KEPT_IN_SIGHT: frozenset[Flag] = frozenset({"check-failed"})
"""Doubts that stay to be seen on a figure that a person has settled all the same."""


@dataclass(frozen=True, slots=True)
class Said:
    """What was said of one row; None where the reading stands.

    ``value`` is the result as a person writes it, with a decimal point; ``unit`` a unit as it is written. ``settled``
    are the flags that the word lifts, as long as the row is still ``about`` the same (empty: whatever it is about).
    What was only learned (all of it where ``by_person`` is false, else the fields named in ``taught``) gives way to
    whatever the sheet itself says. ``passed``: learned that it is none of the parameters; it is kept, and not asked.
    """

    value: str | None = None
    unit: str | None = None
    parameter: str | None = None
    family: Family | None = None
    basis: MoistureBasis | None = None
    settled: frozenset[Flag] = frozenset()
    about: str = ""
    rejected: bool = False
    by_person: bool = True
    taught: frozenset[str] = frozenset()
    remark: str = ""
    passed: bool = False

    def is_weak(self, name: str) -> bool:
        """True for something that was only learned."""
        return not self.by_person or name in self.taught


@dataclass(frozen=True, slots=True)
class Statements:
    """All that was said of one analysis: of its rows by number, its method family, and its header entries by key.

    A header entry that is None is not there. ``family_learned``: the family only holds where the sheet gives none.
    ``columns`` are tables, by the text of ``Concern.column``, whose results stand where they were read, as a person has
    said of this sheet; ``columns_learned`` those of which it was learned.
    """

    rows: Mapping[int, Said] = field(default_factory=dict)
    family: Family | None = None
    family_learned: bool = False
    header: Mapping[str, str | None] = field(default_factory=dict)
    columns: frozenset[str] = frozenset()
    columns_learned: frozenset[str] = frozenset()

    @property
    def says_family(self) -> bool:
        """True where a person has settled the method family."""
        return self.family is not None and not self.family_learned


NOTHING = Statements()
