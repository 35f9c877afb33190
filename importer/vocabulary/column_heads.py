"""Heads of table columns ("Result (EBC)", "Spezifikation min.") and what the columns hold."""

from __future__ import annotations

import re
import tomllib
from dataclasses import dataclass
from functools import cache, lru_cache
from typing import Any

from importer.data import mappings_folder
from importer.errors import DataError
from importer.models import HEADER_KEYS
from importer.vocabulary.caption_words import caption_table, caption_words, join_dotted
from importer.vocabulary.result_words import plain_word
from importer.vocabulary.unit_names import parse_plain
from importer.vocabulary.units import split_label

ROLES = (
    "previous", "typical", "precision", "min", "max", "spec", "remark", "method", "unit", "date", "number", "result",
    "family:IoB", "family:EBC", "family:ASBC", "label",
)  # fmt: skip
"""All roles, the one that decides first: a head of "typical" and "result" is one of typical values."""
SIDES = ("min", "max")
_FAMILIES = tuple(role for role in ROLES if role.startswith("family:"))
LONGEST = 120
_LANGUAGES_FIRST = ("en", "de", "fr", "nl", "es", "cs", "da", "it")

Phrase = tuple[str, ...]


@dataclass(frozen=True, slots=True)
class HeadTable:
    """Known heads by their words; ``alone`` those that must be the whole head; ``small`` words that do not count;
    ``signs`` ("≥") may also stand beside a word for limits."""

    phrases: dict[Phrase, str]
    alone: dict[Phrase, str]
    small: frozenset[str]
    signs: dict[str, str]
    words: frozenset[str]
    longest: int


_TOKEN = re.compile(r"[^\W_]+|[±#№%]|\+/-")
_NUMERO = re.compile(r"\b[nN]\s?[°º]")


def _tokens(text: str) -> Phrase:
    return tuple(_TOKEN.findall(plain_word(join_dotted(_NUMERO.sub("no", text)))))


def _phrases(raw: dict[str, Any], where: str) -> dict[Phrase, str]:
    found: dict[Phrase, str] = {}
    for role, words in raw.items():
        if role not in ROLES:
            raise DataError(f"{where}: there is no column role {role!r}")
        if not isinstance(words, list) or not all(isinstance(word, str) for word in words):
            raise DataError(f"{where}: {role} must be a list of words")
        for word in words:
            found.setdefault(_tokens(word), role)
    return found


@cache
def head_table() -> HeadTable:
    """The heads of mappings/columns. Raises DataError where a file cannot be used."""
    folder = mappings_folder() / "columns"
    phrases: dict[Phrase, str] = {}
    alone: dict[Phrase, str] = {}
    small: set[str] = set()
    signs: dict[str, str] = {}
    order = {stem: place for place, stem in enumerate(_LANGUAGES_FIRST)}
    for path in sorted(folder.glob("*.toml"), key=lambda path: (order.get(path.stem, len(order)), path.stem)):
        where = f"mappings/columns/{path.name}"
        try:
            raw = tomllib.loads(path.read_text(encoding="utf-8"))
        except tomllib.TOMLDecodeError as fault:
            raise DataError(f"{where}: {fault}") from fault
        small.update(token for word in raw.pop("small", []) for token in _tokens(word))
        # The first language that knows a word decides over it.
        single = raw.pop("alone", {})
        alone = _phrases(single, where) | alone
        signs |= {word: role for role, words in single.items() for word in words if role in SIDES and not _tokens(word)}
        phrases = _phrases(raw, where) | phrases
    phrases.pop((), None)
    # A letter ("U", "r") is a head on its own only: "S/T ratio" is the label of a row.
    for phrase in [phrase for phrase in phrases if len(phrase) == 1 and phrase[0].isascii() and phrase[0].isalpha()]:
        if len(phrase[0]) == 1:
            alone.setdefault(phrase, phrases.pop(phrase))
    words = frozenset(word for phrase in phrases for word in phrase)
    return HeadTable(phrases, alone, frozenset(small), signs, words, max(len(phrase) for phrase in phrases))


def column_roles(text: str) -> tuple[str, ...]:
    """All roles that a column head names, the deciding one first; empty where it is no head.

    Every word of the head has to be known, so that the label of a row or a parameter over a column is not taken for
    a head. Units, numbers and batch numbers beside the words do not count.
    """
    return _column_roles(text) if text and len(text) <= LONGEST else ()


def sides_of(head: str) -> tuple[str, ...]:
    """The ends of limits that a head names, in its order ("Max / Min")."""
    return tuple(side for word in re.findall(r"[^\W\d_]+", head) for side in _column_roles(word) if side in SIDES)


def column_role(text: str) -> str | None:
    """The role of a column from its head, or None. A head of "min" and "max" is one of limits ("spec")."""
    roles = column_roles(text)
    if not roles:
        return None
    if "min" in roles and "max" in roles:
        return "spec"
    return roles[0]


def listed_role(text: str) -> str | None:
    """The role of a head that stands in the mappings word for word."""
    table, words = head_table(), _tokens(text) if len(text) <= LONGEST else ()
    return table.alone.get(words) or table.phrases.get(words)


# "Bestimmungs- grenze", set on two lines.
_BROKEN = re.compile(r"(?<=[^\W\d_]{3})-\s*(?=[a-zà-ÿ]{3})")
# "SpecMin".
_GLUED = re.compile(r"(?<=[a-zà-ÿ]{3})(?=[A-Z][a-z]{2})")
_PARTS = re.compile(r"\s*[/|;()\[\]\n:]\s*|\s+[-–—]\s+|,\s+")


@lru_cache(maxsize=8192)
def _column_roles(text: str) -> tuple[str, ...]:
    whole = _tokens(text)
    table = head_table()
    sign = next((sign for sign in sorted(table.signs, key=len, reverse=True) if text.strip("() ").endswith(sign)), "")
    if sign and text.strip("() ") == sign:
        return (table.signs[sign],)
    if not whole:
        return ()
    if sign and _column_roles(text.strip("() ").removesuffix(sign)) == ("spec",):
        return (table.signs[sign], "spec")
    if whole in table.alone:
        return (table.alone[whole],)
    if whole in table.phrases:
        return (table.phrases[whole],)
    between = tuple(table.alone.get((word,), "") for word in whole)
    if between == ("min", "max"):
        return ("spec",)
    if _is_crop(text):
        return ("previous",)
    for mended in (_BROKEN.sub("", text), _GLUED.sub(" ", text)):
        if mended != text and (found := _column_roles(mended)):
            return found
    if table.words.isdisjoint(whole):
        return _of_glued(whole[0]) if len(whole) == 1 else ()
    roles = _roles_of(whole)
    if roles is None:
        rest, unit = split_label(text)
        roles = _roles_of(_tokens(rest)) if unit else None
    if roles is None:
        roles = _of_parts(text)
    if not roles or (roles <= {"min", "max"} and _SIZE.search(text)):
        return ()
    if _is_caption(text):
        roles &= {"number", "date"}
    return tuple(role for role in ROLES if role in roles)


def _of_glued(word: str) -> tuple[str, ...]:
    """The role of two words whose space was lost, above all in turned heads ("Upperlimit")."""
    pairs = ((word[:cut], word[cut:]) for cut in range(3, len(word) - 2))
    roles = {head_table().phrases[pair] for pair in pairs if pair in head_table().phrases}
    return tuple(roles) if len(roles) == 1 else ()


def _is_caption(text: str) -> bool:
    """True for a sure caption of the header ("Lot n°", "Contract no."), which heads no results or limits."""
    table, words = caption_table(), caption_words(text)
    if " ".join(words) in table.doubtful_worded:
        return False
    return table.worded.get(" ".join(words)) in HEADER_KEYS


# "supérieur à 2,8 mm" is a sieve fraction.
_SIZE = re.compile(r"\d\s?(?:mm|µm|/64)")


def _roles_of(words: Phrase) -> set[str] | None:
    """Roles of a run of words, longest phrase first; None where a word is not known."""
    table = head_table()
    roles: set[str] = set()
    place = 0
    while place < len(words):
        for count in range(min(table.longest, len(words) - place), 0, -1):
            role = table.phrases.get(words[place : place + count])
            if role:
                roles.add(role)
                place += count
                break
        else:
            word, *later = words[place:]
            # "Previous lot B-25-299"
            begins = len(word) == 1 and bool(later) and later[0].isdigit()
            if word not in table.small and not _CODE.fullmatch(word) and not begins and not _is_unit(word):
                return None
            place += 1
    return roles


# Numbers and batch numbers beside the words of a head; "SO2" is the name of a substance.
_CODE = re.compile(r"\d+|(?=(?:\D*\d){3})\w+")


def _is_unit(word: str) -> bool:
    unit = parse_plain(word)
    return unit is not None and unit.label != "never"


def _of_parts(text: str) -> set[str] | None:
    """Roles of a head in parts ("Result (Pilsner)", "Hodnota / Value"), where the first part is known."""
    parts = [part for part in _PARTS.split(text) if part and _tokens(part)]
    if len(parts) < 2:
        return None
    found = [_roles_of(_tokens(part)) for part in parts]
    if not found[0]:
        return None
    roles = set().union(*(part for part in found if part))
    # A family beside words that are not known may belong to the name of a parameter: "Result EBC (Colour)".
    return roles if all(part is not None for part in found) else roles - set(_FAMILIES)


_YEAR = re.compile(r"\b(?:19|20)\d\d(?:\s?[/-]\s?(?:\d\d|(?:19|20)\d\d))?\b")


def _is_crop(text: str) -> bool:
    """ "Crop 2024": the figures of a whole harvest, not of this batch."""
    if not _YEAR.search(text):
        return False
    rest = plain_word(_YEAR.sub(" ", text))
    return caption_table().keys.get(rest) == "crop_year"
