"""Recognises a whole text as a unit: spellings, moisture basis and reference strength, from mappings/units.toml."""

from __future__ import annotations

import re
import tomllib
from collections.abc import Iterable
from dataclasses import dataclass, field, replace
from functools import cache, lru_cache
from typing import Any, Literal, get_args

from importer.data import mappings_folder
from importer.errors import DataError
from importer.models import FAMILIES, Family
from importer.vocabulary.nearest import did_you_mean
from importer.vocabulary.unit_keys import DEGREES, MARKED, PER, shape, strict_key, unit_key

LabelUse = Literal["word", "bracket", "never"]
_LABEL_USES = get_args(LabelUse)
_ENTRY = frozenset({"dimension", "family", "spellings", "damaged", "doubtful", "label", "before", "case"})
Basis = Literal["dry", "as-is"]
LONGEST = 80
"""Characters: a longer text is never a unit."""
LEAST_LETTERS = 2
"""A text with fewer is not known by the shapes of its letters: "1/t", "°|"."""


@dataclass(frozen=True, slots=True)
class Unit:
    """A unit as printed.

    ``code`` is the canonical code of mappings/units.toml. ``basis`` is what the words beside it say ("% TrS"),
    ``reference`` a strength or temperature that it is stated for ("8.6 %"), ``family`` the method family that uses it.
    ``damaged``: recognised only after undoing damage of optical reading beyond letters that print alike.
    ``doubtful``: the spelling has another meaning too (a bare "EBC" is a unit or a method family, "min" minutes or a
    limit). ``text`` is as printed and plays no part in comparisons.
    """

    code: str
    basis: Basis | None = None
    reference: str | None = None
    family: Family | None = None
    damaged: bool = False
    doubtful: bool = False
    dimension: str = ""
    label: LabelUse = "word"
    text: str = field(default="", compare=False)

    @property
    def is_plain(self) -> bool:
        """True for what is only a unit before a number: no word for a limit, no single letter, no size."""
        written = "".join(self.text.split())
        named = self.label == "word" and (len(written) > 1 or not written.isalpha())
        return named and not (self.doubtful or self.damaged or self.dimension in ("length", "temperature", "time"))


@dataclass(frozen=True, slots=True)
class _Entry:
    code: str
    dimension: str
    family: Family | None
    label: LabelUse
    before: bool
    case: bool


@dataclass(frozen=True, slots=True)
class UnitTable:
    """The unit data, indexed by folded spelling."""

    entries: dict[str, _Entry]
    spelled: dict[str, str]
    damaged: dict[str, str]
    doubtful: frozenset[str]
    exact: dict[str, str]
    shapes: dict[str, str | None]
    beside_after: dict[str, Basis | None]
    beside_before: dict[str, Basis | None]
    prepositions: frozenset[str]
    first_words: frozenset[str]


def _strings(raw: Any, where: str) -> list[str]:
    if not isinstance(raw, list) or not all(isinstance(entry, str) for entry in raw):
        raise DataError(f"mappings/units.toml: {where} must be a list of texts")
    return raw


def _entry(code: str, raw: dict[str, Any], dimensions: Iterable[str]) -> _Entry:
    where = f"mappings/units.toml: {code}"
    for name in sorted(raw.keys() - _ENTRY):
        raise DataError(f"{where}: there is no entry {name!r}.{did_you_mean(name, _ENTRY)}")
    for name in ("dimension", "spellings"):
        if name not in raw:
            raise DataError(f"{where}: {name} is missing")
    dimension, family, label = raw["dimension"], raw.get("family"), raw.get("label", "word")
    if dimension not in dimensions:
        near = did_you_mean(str(dimension), dimensions) or " A new one is added there first"
        raise DataError(f"{where}: dimension {dimension!r} is none of [dimensions].{near}")
    if family is not None and family not in FAMILIES:
        raise DataError(f"{where}: there is no method family {family!r}.{did_you_mean(str(family), FAMILIES)}")
    if label not in _LABEL_USES:
        raise DataError(f"{where}: label must be {', '.join(_LABEL_USES)}")
    before, case = bool(raw.get("before", False)), bool(raw.get("case", False))
    return _Entry(code, dimension, family, label, before, case)


def _beside(raw: dict[str, Any], place: str) -> dict[str, Basis | None]:
    words: dict[str, Basis | None] = {unit_key(word): None for word in _strings(raw["ignored"][place], "ignored")}
    named: tuple[Basis, ...] = ("dry", "as-is")
    for basis in named:
        for word in _strings(raw["basis"][basis][place], f"basis.{basis}"):
            if words.get(unit_key(word), basis) not in (basis, None):
                raise DataError(f"mappings/units.toml: {word!r} stands for two moisture bases")
            words[unit_key(word)] = basis
    words.pop("", None)
    return words


def _add(table: dict[str, str], key: str, code: str, spelling: str) -> None:
    if key and table.setdefault(key, code) != code:
        raise DataError(f"mappings/units.toml: {spelling!r} stands for {table[key]} and for {code}")


@cache
def unit_table() -> UnitTable:
    """The units of mappings/units.toml. Raises DataError where the file cannot be used."""
    path = mappings_folder() / "units.toml"
    try:
        raw = tomllib.loads(path.read_text(encoding="utf-8"))
        entries = {code: _entry(code, unit, raw["dimensions"]) for code, unit in raw["units"].items()}
        spelled: dict[str, str] = {}
        damaged: dict[str, str] = {}
        doubtful: set[str] = set()
        exact: dict[str, str] = {}
        for code, unit in raw["units"].items():
            for spelling in _strings(unit["spellings"], code):
                _add(spelled, unit_key(spelling), code, spelling)
            for spelling in _strings(unit.get("damaged", []), code):
                _add(damaged, strict_key(spelling), code, spelling)
            doubtful |= {unit_key(spelling) for spelling in _strings(unit.get("doubtful", []), code)}
        for code, spellings in raw["exact"].items():
            for spelling in spellings:
                _add(exact, spelling, code, spelling)
        after, before = _beside(raw, "after"), _beside(raw, "before")
        prepositions = frozenset(word.casefold() for word in _strings(raw["label_words"]["before_unit"], "label_words"))
        listed = [spelling for unit in raw["units"].values() for spelling in unit["spellings"]]
        first_words = frozenset([unit_key(spelling.split()[0]) for spelling in listed] + [*exact, *before])
        return UnitTable(
            entries,
            spelled,
            damaged,
            frozenset(doubtful),
            exact,
            _shapes(raw["units"]),
            after,
            before,
            prepositions,
            first_words,
        )
    except (KeyError, tomllib.TOMLDecodeError) as fault:
        raise DataError(f"mappings/units.toml: {fault}") from fault


def _shapes(units: dict[str, dict[str, Any]]) -> dict[str, str | None]:
    """Units by the shapes of their letters; None where two units look the same."""
    found: dict[str, str | None] = {}
    for code, unit in units.items():
        for spelling in unit["spellings"]:
            if found.setdefault(shape(spelling), code) != code or not shape(spelling):
                found[shape(spelling)] = None
    return found


_Found = tuple[str, Basis | None]


def _join(one: Basis | None, other: Basis | None) -> Basis | None:
    """The basis that two words beside a unit give together; None where they contradict each other."""
    if one is None or other is None or one == other:
        return one or other
    return None


_CHUNKS = re.compile(r"[\s.,·*×∙•⋅()\[\]{}_–—−‐‑‧-]+|(?<=[a-zа-я])(?=[A-ZА-Я])")


@lru_cache(maxsize=8192)
def _joints(printed: str) -> frozenset[int]:
    """Places of the folded form where the printed text has a gap, or goes from small letters to a capital."""
    plain = PER.sub(r"ⁿ\1", printed) if MARKED.search(printed) else printed
    places: set[int] = set()
    end = 0
    for chunk in _CHUNKS.split(plain):
        end += len(unit_key(chunk))
        places.add(end)
    return frozenset(places)


def _may_cut(key: str, cut: int, printed: str) -> bool:
    """True where a unit and a word beside it may part: never inside a run of letters ("grain" is no "gr ai n")."""
    return not (key[cut - 1].isalpha() and key[cut].isalpha()) or "/" in key[:cut] or cut in _joints(printed)


def _find(table: UnitTable, key: str, printed: str, start: int = 0, depth: int = 2) -> _Found | None:
    """A unit spelling with words beside it, shortest addition first. ``key`` begins at ``start`` of the folded form."""
    code = table.spelled.get(key)
    if code is not None:
        return code, None
    if not depth:
        return None
    whole = unit_key(printed)
    for cut in range(len(key) - 1, 0, -1):
        tail = key[cut:]
        if tail in table.beside_after and _may_cut(whole, start + cut, printed):
            inner = _find(table, key[:cut], printed, start, depth - 1)
            if inner:
                return inner[0], _join(inner[1], table.beside_after[tail])
    for cut in range(1, len(key)):
        head = key[:cut]
        if head in table.beside_before and _may_cut(whole, start + cut, printed):
            inner = _find(table, key[cut:], printed, start + cut, depth - 1)
            if inner:
                return inner[0], _join(inner[1], table.beside_before[head])
    return None


_ONE_LETTER = re.compile(r"([A-Za-z])(?:$|(?:[\s,(\[/]+|(?=[A-Z]))(.+)$)")


def _find_letter(table: UnitTable, text: str) -> _Found | None:
    """Units of one letter, which have to stand apart from the words beside them."""
    match = _ONE_LETTER.match(text.strip("()[] .,"))
    if not match or match[1] not in table.exact:
        return None
    beside = unit_key(match[2] or "")
    if beside and beside not in table.beside_after:
        return None
    return table.exact[match[1]], table.beside_after.get(beside)


def _find_damaged(table: UnitTable, text: str) -> _Found | None:
    strict = strict_key(text.strip("()[] "))
    if strict in table.damaged:
        return table.damaged[strict], None
    for cut in range(len(strict) - 1, 1, -1):
        code = table.damaged.get(strict[:cut])
        if code and unit_key(strict[cut:]) in table.beside_after:
            return code, table.beside_after[unit_key(strict[cut:])]
    return None


_REFERENCE = re.compile(
    r"[\s,;@(\[]*\b(?:(?:at|bei|à|a|ved|při|przy|vid|auf|(?:ber|bez)\.?(?:\s+auf)?)\s+|@\s*)?"
    r"(\d{1,2}(?:[.,]\d{1,2})?)\s*(%|°\s?C|°\s?P(?:lato)?)"
    r"(?:\s*(?:extract|extrakt|extrait|sol\.?|w/w|m/m|GG))?\s*[)\]]?\s*$",
    re.IGNORECASE,
)


def _take_reference(text: str) -> tuple[str, str | None]:
    """Takes "(8,6 %)", "@ 8.6 %", "(20 °C)" off the end of a unit; a strength counts before a temperature."""
    reference: str | None = None
    for _ in range(2):
        match = _REFERENCE.search(text) if any(mark.isdigit() for mark in text) else None
        if not match or not match.start():
            break
        sign = match[2].replace(" ", "")[:2]
        if reference is None or sign == "%":
            reference = f"{match[1].replace(',', '.')} {sign}"
        text = text[: match.start()]
    return text, reference


def _is_doubtful(table: UnitTable, printed: str) -> bool:
    words = printed.split(None, 1)
    core = words[1] if len(words) == 2 and unit_key(words[0]) in table.beside_before else printed
    return unit_key(core) in table.doubtful


_OPEN_ENDS = "-–—−~÷±<>/"
# The lower ring of a percent sign, read once more as a sign of its own.
_RING = re.compile(r"(?<=%)[$§]")
# A percent sign, or its upper ring, taken for "&": no unit has that sign.
_AMPERSAND = re.compile(r"^&%|^&(?= [^\W\d])")


@lru_cache(maxsize=8192)
def parse_unit(text: str) -> Unit | None:
    """The unit that the whole of ``text`` spells, or None.

    Several names for one unit ("LAA/MT or L/MT") are that unit; names of different units are None
    (see ``parse_units``). A heading of several words may end with a colon ("in %:").
    """
    printed = _AMPERSAND.sub("%", _RING.sub("", text.strip()))
    if printed.endswith(":") and " " in printed:
        printed = printed[:-1].rstrip()
    if not printed or len(printed) > LONGEST:
        return None
    table = unit_table()
    # What looks damaged is looked up first: loosely read, "mPa-s" would pass for "mPas".
    if strict_key(printed) not in table.damaged:
        plain = parse_plain(printed)
        if plain:
            return plain
    damaged = _find_damaged(table, printed)
    if damaged:
        code, basis = damaged
        entry = table.entries[code]
        doubtful = _is_doubtful(table, printed)
        words = printed.split()
        alike = any(table.shapes.get(shape(" ".join(words[: n + 1]))) == code for n in range(len(words)))
        damage = not alike or sum(mark.isalpha() for mark in printed) < LEAST_LETTERS
        return Unit(code, basis, None, entry.family, damage, doubtful, entry.dimension, entry.label, printed)
    return _one_of(parse_units(printed), printed) or _by_shape(table, printed)


_HAS_SHAPE = re.compile(r"&$|.*[a-z][A-Z][^:]*$|(?!\d)(?=.*[|/.·!\d°])(?=.*[^\W\d_].*[^\W\d_])")


def _by_shape(table: UnitTable, printed: str) -> Unit | None:
    """The unit that a text looks like ("mg.|-1"); never for a word or a number, which may look like one as well."""
    code = table.shapes.get(shape(printed)) if _HAS_SHAPE.match(printed) else None
    if code is None:
        return None
    entry = table.entries[code]
    return Unit(code, None, None, entry.family, False, False, entry.dimension, entry.label, printed)


@lru_cache(maxsize=8192)
def parse_plain(text: str) -> Unit | None:
    """As ``parse_unit``, but undamaged and one unit only: quick, for the many tails of a label."""
    printed = text.strip()
    if not printed or len(printed) > LONGEST:
        return None
    table = unit_table()
    reference: str | None = None
    found = _find_letter(table, printed) or _find(table, unit_key(printed), printed)
    if not found and printed[-1] in "%C)" and any(mark.isdigit() for mark in printed):
        rest, reference = _take_reference(printed.translate(DEGREES))
        found = _find(table, unit_key(rest), rest) if reference and rest[-1] not in _OPEN_ENDS else None
        if found and table.entries[found[0]].dimension == "fraction":
            return None
    if not found:
        return None
    code, basis = found
    entry = table.entries[code]
    doubtful = _is_doubtful(table, printed)
    return Unit(code, basis, reference, entry.family, False, doubtful, entry.dimension, entry.label, printed)


_ALTERNATIVES = (
    re.compile(
        r"\s+/\s+|\s*;\s*|\s+(?:or|oder|ou|of|o|nebo|eller|and|und|et|en|y|и|или|resp\.?|bzw\.)\s+|\s*,\s+|\s+(?=\()",
        re.IGNORECASE,
    ),
    re.compile(r"\s*(?:/|\||\s+(?=\())\s*"),
)
"""What stands between two names of units: clear separators first, the stroke that is also in "mg/L" last."""


def parse_units(text: str) -> tuple[Unit, ...]:
    """All units of a text that names several ("IoB / WK / °L"); empty unless every part is a unit."""
    text = " ".join(text.split())
    if len(text) > LONGEST:
        return ()
    for separator in _ALTERNATIVES:
        parts = [part for part in separator.split(text) if part and part.strip()]
        if len(parts) > 1 and len(parts) < 6:
            units = _all_units(parts)
            if units:
                return units
    return ()


def _all_units(parts: list[str]) -> tuple[Unit, ...]:
    """The units of the parts. A part that only names a moisture basis repeats the unit before it on that basis."""
    beside = unit_table().beside_after
    units: list[Unit] = []
    for part in parts:
        unit = parse_unit(part.strip())
        key = unit_key(part)
        if unit is None and units and key in beside:
            unit = replace(units[-1], basis=beside[key])
        if unit is None:
            return ()
        units.append(unit)
    return tuple(units)


def _one_of(units: tuple[Unit, ...], printed: str) -> Unit | None:
    """One unit for several names of it; the basis only where all agree."""
    if not units or len({unit.code for unit in units}) > 1:
        return None
    first = units[0]
    basis = first.basis if len({unit.basis for unit in units}) == 1 else None
    damaged = any(unit.damaged for unit in units)
    return Unit(first.code, basis, first.reference, first.family, damaged, False, first.dimension, first.label, printed)
