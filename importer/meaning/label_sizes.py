"""Sizes in millimetres, temperatures and strengths in a label: sieves, mill slots, mashes and worts."""

from __future__ import annotations

import re
from dataclasses import dataclass
from functools import cache
from typing import Any

from importer.meaning.tables import table
from importer.vocabulary.lexicon import Ideas
from importer.vocabulary.text import Token

Span = tuple[int, int, Ideas]


@dataclass(frozen=True, slots=True)
class Measures:
    """``ideas`` by what was found, ``at`` where (token number), ``used`` the tokens that belong to it."""

    ideas: frozenset[str]
    at: dict[int, Ideas]
    used: frozenset[int]


@dataclass(frozen=True, slots=True)
class _Sizes:
    sieves: tuple[str, ...]
    mills: dict[str, str]
    temperatures: dict[str, str]
    congress: tuple[float, float]
    strong: Ideas


_COUNTING = re.compile("i{1,3}|iv|v")
"""Roman numbers count the sieves of a set ("Sieve II (2.5 mm)"); the size says which sieve it is."""

NOTHING = Measures(frozenset(), {}, frozenset())


@cache
def _sizes() -> _Sizes:
    raw: dict[str, Any] = table("label_rules")
    temperatures = {str(degrees): idea for degrees, idea in raw["temperatures"].items()}
    low, high = raw["strengths"]["congress"]
    return _Sizes(
        sieves=tuple(raw["sizes"]["sieves"]),
        mills=dict(raw["sizes"]["mills"]),
        temperatures=temperatures,
        congress=(low, high),
        strong=frozenset(raw["strengths"]["beside"]),
    )


def is_congress_strength(strength: float) -> bool:
    """True where a wort of so many °P (or %) can be the laboratory wort of a pale malt."""
    low, high = _sizes().congress
    return low <= strength <= high


def measures(found: list[Token], spans: list[Span]) -> Measures:
    """Reads the numbers of a label that no wording took."""
    taken = {i for start, end, _ in spans for i in range(start, end)}
    numbers = [i for i, token in enumerate(found) if token.kind == "number" and i not in taken]
    if not numbers:
        return NOTHING
    ideas = {i: said for start, end, said in spans for i in range(start, end)}
    at: dict[int, Ideas] = {}
    used: set[int] = set()
    rest = [i for i in numbers if not _strength(found, i, ideas, at, used)]
    rest = [i for i in rest if not _wavelength(found, i, used) and not _end_point(found, i, ideas, at, used)]
    if any("ACROSPIRE" in said for said in ideas.values()):
        # "Acrospire 3/4 – 1": the share of the grains of one length.
        at.update((i, frozenset(("LENGTH_CLASS",))) for i in rest)
    rest = [i for i in rest if not _temperature(found, i, ideas, at, used)]
    rest = [i for i in rest if not _inches(found, i, at, used)]
    _millimetres(found, rest, ideas, at, used)
    return Measures(frozenset().union(*at.values()) if at else frozenset(), at, frozenset(used))


def _text(found: list[Token], place: int) -> str:
    return found[place].text if 0 <= place < len(found) else ""


# Strengths that a wort can have at all; other numbers before a percent sign are something else.
POSSIBLE_STRENGTH = (5.0, 25.0)
_SCALES = ("p", "plato", "bx", "brix", "balling", "blg", "gg")


def _strength(found: list[Token], place: int, ideas: dict[int, Ideas], at: dict[int, Ideas], used: set[int]) -> bool:
    """ "wort 12 °P", "Viscosity (8.6 %)"."""
    behind = [_text(found, place + step) for step in (1, 2)]
    if behind[0] == "°" and behind[1] in _SCALES:
        width = 3
    elif behind[0] in _SCALES[1:] or (behind[0] == "%" and behind[1] in _SCALES[1:]):
        width = 2 if behind[0] != "%" else 3
    elif behind[0] == "%" and any(said & _sizes().strong for said in ideas.values()):
        width = 2
    else:
        return False
    strength = float(found[place].text) if found[place].text.replace(".", "", 1).isdigit() else 0.0
    if not POSSIBLE_STRENGTH[0] <= strength <= POSSIBLE_STRENGTH[1]:
        return False
    if not is_congress_strength(strength):
        at[place] = frozenset(("STRENGTH_OTHER",))
    used.update(range(place, place + width))
    return True


def _wavelength(found: list[Token], place: int, used: set[int]) -> bool:
    """ "430 nm": the light that a colour or a haze is measured in, which makes no other figure of it."""
    if _text(found, place + 1) != "nm":
        return False
    used.update((place, place + 1))
    return True


def _end_point(found: list[Token], place: int, ideas: dict[int, Ideas], at: dict[int, Ideas], used: set[int]) -> bool:
    """ "Acidity, pH 8.2": the pH at which a titration ends."""
    if _text(found, place - 1) != "ph" or not any("ACIDITY" in said for said in ideas.values()):
        return False
    at[place] = frozenset(("TITRATED",))
    used.add(place)
    return True


def _temperature(found: list[Token], place: int, ideas: dict[int, Ideas], at: dict[int, Ideas], used: set[int]) -> bool:
    """ "45 °C", "65°", "VZ 45"."""
    known = _sizes().temperatures.get(found[place].text)
    following = _text(found, place + 1)
    if following == "°":
        letter = _text(found, place + 2)
        if letter in ("c", "celsius") or (known and letter not in ("p", "l", "plato", "f")):
            at[place] = frozenset((known or "T_OTHER",))
            used.update((place, place + 1, *((place + 2,) if letter in ("c", "celsius") else ())))
            return True
        return False
    if following in ("c", "celsius"):
        at[place] = frozenset((known or "T_OTHER",))
        used.update((place, place + 1))
        return True
    before = ideas.get(place - 1, frozenset())
    if known and before & {"RELATIVE", "HARTONG", "ISOTHERMAL_65", "MASH"}:
        at[place] = frozenset((known,))
        used.add(place)
        return True
    return False


def _inches(found: list[Token], place: int, at: dict[int, Ideas], used: set[int]) -> bool:
    """ "7/64"."""
    if found[place].text == "64" and _text(found, place - 1) == "/":
        at[place] = frozenset(("SIEVE_INCH",))
        used.update((place - 2, place - 1, place))
        return True
    return found[place].text.isdigit() and _text(found, place + 1) == "/" and _text(found, place + 2) == "64"


def _is_mm(found: list[Token], place: int) -> bool:
    """True where the number, or a number just behind it, is in mm."""
    for token in found[place + 1 : place + 7]:
        if token.text == "mm":
            return True
        if token.kind == "word" and len(token.text) > 4:
            return False
    return False


def _millimetres(
    found: list[Token], numbers: list[int], ideas: dict[int, Ideas], at: dict[int, Ideas], used: set[int]
) -> None:
    sizes = _sizes()
    every: set[str] = set().union(*ideas.values()) if ideas else set()
    signs = {token.raw for token in found}
    sieving = bool(
        every & {"SIEVE", "SCREENINGS", "OVER", "UNDER", "BETWEEN", "OVER_25"}
        or signs & set("<>≤≥")
        or not any(token.kind == "word" and token.text != "mm" for token in found)
    )
    mills = [i for i in numbers if found[i].text in sizes.mills and _is_mm(found, i) and not signs & set("<>≤≥")]
    if not mills and every & {"EXTRACT", "DIFFERENCE"}:
        mills = [i for i in numbers if found[i].text in sizes.mills and found[i].text != "1"]
    if mills:
        grinds = {sizes.mills[found[i].text] for i in mills}
        for i in mills:
            at[i] = frozenset(("MILL_PAIR",)) if len(grinds) > 1 else frozenset(grinds)
            used.add(i)
            if found[i].text == "0.7" and len(grinds) == 1:
                at[i] |= {"MILL_07"}
        _use_strokes(found, mills, used)
    sieves = [i for i in numbers if i not in used and found[i].text in sizes.sieves and (sieving or _is_mm(found, i))]
    if sieves:
        at[sieves[0]] = frozenset((_sieve(found, sieves, ideas, every),))
        used.update(sieves)
        used.update(i for i, token in enumerate(found) if token.raw in "<>≤≥+" and _near(i, sieves))
        used.update(i for i, token in enumerate(found) if token.kind == "word" and _COUNTING.fullmatch(token.text))
        _use_strokes(found, sieves, used)
    elif sieving and every & {"SIEVE", "OVER", "UNDER", "SCREENINGS"}:
        for i in numbers:
            if i not in used and _text(found, i + 1) == "mm" and "x" not in _text(found, i - 1):
                at[i] = frozenset(("SIEVE_OTHER",))
                used.add(i)


def _near(place: int, sieves: list[int]) -> bool:
    return sieves[0] - 2 <= place <= sieves[-1] + 2


def _use_strokes(found: list[Token], places: list[int], used: set[int]) -> None:
    used.update(i for i in range(places[0], places[-1]) if found[i].kind == "break")


def _sieve(found: list[Token], sieves: list[int], ideas: dict[int, Ideas], every: set[str]) -> str:
    """The idea of the sieve sizes of a label, from the signs and words around them."""
    names = sorted({found[i].text for i in sieves}, reverse=True)
    low, high = sieves[0], sieves[-1]
    between = [found[i].raw for i in range(low + 1, high)]
    over, under = any(token.raw in ">≥" for token in found), any(token.raw in "<≤" for token in found)
    if not (over or under):
        over, under = "OVER" in every, "UNDER" in every
    if len(names) > 2:
        return "SIEVE_OTHER"
    if len(names) == 2:
        return _pair(names, between, ideas, low, high, over and under, "BETWEEN" in every)
    name = names[0].replace(".", "")
    behind = _text(found, len(found) - 1) == "+" and high >= len(found) - 3
    words = sum(token.kind in ("word", "number") for token in found[:low])
    if not (over or under) and (behind or (_text(found, low - 1) == "+" and words < 2 and found[0].kind != "number")):
        # "+ 2.8 mm", "Sieve + 2.8 mm", "2.8 mm +": what is larger.
        over = True
    if over == under:
        return f"BARE_{name}"
    if over:
        return f"OVER_{name}"
    return "UNDER_22" if name == "22" else "SIEVE_OTHER"


def _pair(
    names: list[str], between: list[str], ideas: dict[int, Ideas], low: int, high: int, both: bool, joined: bool
) -> str:
    summed = "+" in between or any("AND" in ideas.get(i, ()) for i in range(low + 1, high))
    if names == ["2.8", "2.2"]:
        return "SIEVE_OTHER"
    if summed and not joined and not both:
        return "OVER_25" if names == ["2.8", "2.5"] else "SIEVE_OTHER"
    if "/" in between and not both:
        return f"STROKE_{names[1].replace('.', '')}"
    return "FROM_25_TO_28" if names == ["2.8", "2.5"] else "FROM_22_TO_25"
