"""Whether a figure can be right at all, and whether it is usual for its malt."""

from __future__ import annotations

import re
import unicodedata
from dataclasses import dataclass
from functools import cache, lru_cache
from typing import Any

from importer.meaning.tables import table
from importer.vocabulary.parameters import parameters

Ranges = dict[str, dict[str, tuple[float, float]]]


@dataclass(frozen=True, slots=True)
class MaltClass:
    """A class of malt. ``words`` start its name; ``pale_barley`` says whether estimates between methods hold for it."""

    name: str
    title: str
    words: re.Pattern[str]
    pale_barley: bool
    cereal: str
    typical: Ranges
    possible: Ranges


def _fold(text: str) -> str:
    plain = unicodedata.normalize("NFKD", text.casefold())
    return "".join(c for c in plain if not unicodedata.combining(c))


def _words(raw: list[str]) -> re.Pattern[str]:
    parts = [rf"{re.escape(_fold(w[1:]))}\b" if w.startswith("=") else re.escape(_fold(w)) for w in raw]
    return re.compile(r"(?:\b|(?<=_))(?:" + "|".join(parts) + ")")


def _ranges(raw: dict[str, Any]) -> Ranges:
    return {name: {unit: (float(p[0]), float(p[1])) for unit, p in units.items()} for name, units in raw.items()}


@cache
def malt_classes() -> dict[str, MaltClass]:
    """All classes by name, special ones first."""
    return {
        name: MaltClass(
            name=name,
            title=raw["title"],
            words=_words(raw["words"]),
            pale_barley=raw["pale_barley"],
            cereal=raw.get("cereal", "barley"),
            typical=_ranges(raw.get("typical", {})),
            possible=_ranges(raw.get("possible", {})),
        )
        for name, raw in table("malt_classes")["classes"].items()
    }


@lru_cache(maxsize=1024)
def class_of(name: str) -> str | None:
    """The class that a malt's printed name places it in, None where it does not."""
    folded = _fold(name)
    return next((c.name for c in malt_classes().values() if c.words.search(folded)), None)


def is_pale_barley(malt_class: str | None) -> bool | None:
    """Whether the class is a pale barley malt; None where the class is not known."""
    entry = malt_classes().get(malt_class or "")
    return None if entry is None else entry.pale_barley


def cereal_of(malt_class: str | None) -> str | None:
    """The cereal of a class of malt, None where the class is not known."""
    entry = malt_classes().get(malt_class or "")
    return None if entry is None else entry.cereal


def possible_range(parameter: str, unit: str, malt_class: str | None = None) -> tuple[float, float] | None:
    """Outside this range the reading is wrong; None where nothing is known for the unit."""
    entry = malt_classes().get(malt_class or "")
    special = entry.possible.get(parameter, {}).get(unit) if entry else None
    return special or parameters()[parameter].possible.get(unit)


def typical_range(parameter: str, unit: str, malt_class: str | None = None) -> tuple[float, float] | None:
    """Where an ordinary malt of the class stands, slack included; over all malts where the class says nothing."""
    entry = malt_classes().get(malt_class or "")
    special = entry.typical.get(parameter, {}).get(unit) if entry else None
    if special is None:
        return parameters()[parameter].typical.get(unit)
    slack = float(table("malt_classes")["slack"]) * (special[1] - special[0])
    return special[0] - slack, special[1] + slack


def _inside(bounds: tuple[float, float] | None, value: float) -> bool:
    return bounds is None or bounds[0] <= value <= bounds[1]


def within_possible(parameter: str, unit: str, value: float, malt_class: str | None = None) -> bool:
    """False for a value that can only be a misreading. True proves nothing: it may be the wrong unit."""
    return _inside(possible_range(parameter, unit, malt_class), value)


def within_typical(parameter: str, unit: str, value: float, malt_class: str | None = None) -> bool:
    """False for a value that is unusual for the malt; True where no range is known for the unit."""
    return _inside(typical_range(parameter, unit, malt_class), value)
