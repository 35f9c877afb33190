"""What titles and notes of a sheet say: kind of document, moisture basis, methods, mash (mappings/statements.toml)."""

from __future__ import annotations

import re
import tomllib
from dataclasses import dataclass
from functools import cache, lru_cache
from typing import Any, Literal

from importer.data import mappings_folder
from importer.errors import DataError
from importer.models import FAMILIES, Family, Mash
from importer.vocabulary.result_words import plain_word
from importer.vocabulary.unit_keys import unit_key
from importer.vocabulary.unit_names import Basis, unit_table

Title = Literal["certificate", "specification", "typical"]
TITLES: tuple[Title, ...] = ("typical", "certificate", "specification")
LONGEST_TITLE, LONGEST_NOTE = 120, 600
"""Characters: longer texts are not looked at."""
_SHORT = 4
"""Words: up to here an abbreviation at the end ("db", "TrS") is a statement."""

Phrase = tuple[str, ...]


@dataclass(frozen=True, slots=True)
class _Phrases:
    """A set of phrases, and the lengths that occur by first word, for a search in one pass."""

    lengths: dict[str, tuple[int, ...]]
    known: frozenset[Phrase]
    han: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class _Statements:
    titles: dict[Title, _Phrases]
    basis: dict[Basis, _Phrases]
    exceptions: _Phrases
    conditions: _Phrases
    ignored: _Phrases
    unless_stated: _Phrases
    moisture: _Phrases
    sure: dict[Family, _Phrases]
    names: dict[Family, _Phrases]
    numbers: dict[Family, _Phrases]
    methods: frozenset[str]
    beside: frozenset[str]
    units: frozenset[str]
    mashes: dict[Mash, _Phrases]
    harmless: _Phrases
    another: _Phrases
    another_alone: _Phrases
    another_nouns: _Phrases
    another_own: _Phrases


_TOKEN = re.compile(r"[^\W_]+")
_HAN = re.compile(r"[\u3040-\u9fff]")


def _tokens(text: str) -> Phrase:
    return tuple(_TOKEN.findall(plain_word(text)))


def _phrases(raw: Any, where: str) -> _Phrases:
    if not isinstance(raw, list) or not all(isinstance(text, str) for text in raw):
        raise DataError(f"mappings/statements.toml: {where} must be a list of texts")
    known = frozenset(_tokens(text) for text in raw) - {()}
    lengths: dict[str, set[int]] = {}
    for phrase in known:
        lengths.setdefault(phrase[0], set()).add(len(phrase))
    ordered = {word: tuple(sorted(counts, reverse=True)) for word, counts in lengths.items()}
    return _Phrases(ordered, known, tuple(text for text in raw if _HAN.search(text)))


@cache
def _statements() -> _Statements:
    path = mappings_folder() / "statements.toml"
    try:
        raw = tomllib.loads(path.read_text(encoding="utf-8"))
        families = raw["family"]
        return _Statements(
            titles={kind: _phrases(raw["title"][kind], f"title.{kind}") for kind in TITLES},
            basis={
                "dry": _phrases(raw["basis"]["dry"], "basis.dry"),
                "as-is": _phrases(raw["basis"]["as-is"], "basis.as-is"),
            },
            exceptions=_phrases(raw["basis"]["except"], "basis.except"),
            conditions=_phrases(raw["basis"]["unless"], "basis.unless"),
            ignored=_phrases(raw["basis"]["ignored"], "basis.ignored"),
            unless_stated=_phrases(raw["basis"]["unless-stated"], "basis.unless-stated"),
            moisture=_phrases(raw["basis"]["moisture"], "basis.moisture"),
            sure={family: _phrases(families[family]["sure"], f"family.{family}") for family in FAMILIES},
            names={family: _phrases(families[family]["names"], f"family.{family}") for family in FAMILIES},
            numbers={family: _phrases(families[family].get("numbers", []), f"family.{family}") for family in FAMILIES},
            methods=frozenset(plain_word(word) for word in families["methods"]),
            beside=frozenset(plain_word(word) for word in families["beside"]),
            units=frozenset(plain_word(word) for word in families["units"]),
            mashes={
                "congress": _phrases(raw["mash"]["congress"], "mash.congress"),
                "isothermal-65": _phrases(raw["mash"]["isothermal-65"], "mash.isothermal-65"),
            },
            harmless=_phrases(raw["footnote"]["harmless"], "footnote.harmless"),
            another=_phrases(raw["another"]["sample"], "another.sample"),
            another_alone=_phrases(raw["another"]["alone"], "another.alone"),
            another_nouns=_phrases(raw["another"]["nouns"], "another.nouns"),
            another_own=_phrases(raw["another"]["own"], "another.own"),
        )
    except (KeyError, tomllib.TOMLDecodeError) as fault:
        raise DataError(f"mappings/statements.toml: {fault}") from fault


def _first(phrases: _Phrases, words: Phrase, text: str = "") -> int:
    """Where the first phrase stands in the words, -1 without one."""
    for place, word in enumerate(words):
        for count in phrases.lengths.get(word, ()):
            if words[place : place + count] in phrases.known:
                return place
    if phrases.han and _HAN.search(text):
        # Chinese is written without spaces between words.
        return 0 if any(phrase in text for phrase in phrases.han) else -1
    return -1


def _without(phrases: _Phrases, words: Phrase) -> Phrase:
    kept: list[str] = []
    place = 0
    while place < len(words):
        counts = phrases.lengths.get(words[place], ())
        count = next((n for n in counts if words[place : place + n] in phrases.known), 0)
        if not count:
            kept.append(words[place])
        place += count or 1
    return tuple(kept)


@lru_cache(maxsize=2048)
def document_title(text: str) -> Title | None:
    """What kind of document a title names; where it names two, the first counts ("Certificate … specification")."""
    if not text or len(text) > LONGEST_TITLE:
        return None
    words = _tokens(text)
    best: Title | None = None
    first = len(words) + 1
    for kind in TITLES:
        place = _first(_statements().titles[kind], words, text)
        if 0 <= place < first:
            best, first = kind, place
    return best


def beside_title(text: str) -> tuple[str, ...]:
    """What stands beside the name of a document in its title ("Pilsner malt" of "Test report Pilsner malt")."""
    if document_title(text) is None:
        return ()
    words = text.split()
    known = frozenset().union(*(phrases.known for phrases in _statements().titles.values()))
    spans = [(a, b) for a in range(len(words)) for b in range(a + 1, len(words) + 1)]
    titles = [(a, b) for a, b in spans if _tokens(" ".join(words[a:b])) in known]
    return tuple(" ".join(rest) for a, b in titles for rest in (words[:a], words[b:]) if rest)


@lru_cache(maxsize=4096)
def basis_statement(text: str) -> Basis | None:
    """The moisture basis that a note, section or head puts its figures on; None where it says none, or both."""
    if not text or len(text) > LONGEST_NOTE:
        return None
    words, _ = _before_exception(text)
    found = _bases(words, text)
    if not found and 0 < len(words) <= _SHORT:
        found = _short_bases(words, text)
    return found.pop() if len(found) == 1 else None


@lru_cache(maxsize=4096)
def basis_of_some(text: str) -> bool:
    """True for a note that puts all but some figures on a moisture basis: "all on dry matter except the extract"."""
    if not text or len(text) > LONGEST_NOTE:
        return False
    return _before_exception(text)[1] and bool(_bases(_tokens(text), text))


def _before_exception(text: str) -> tuple[Phrase, bool]:
    """The words of a note up to an exception, and whether it excepts figures other than the moisture."""
    said = _statements()
    words = _without(said.unless_stated, _without(said.ignored, _tokens(text)))
    exception = _first(said.exceptions, words)
    if exception >= 0:
        words = _without_moisture(words, exception)
        exception = _first(said.exceptions, words)
    ends = [place for place in (exception, _first(said.conditions, words)) if place >= 0]
    return words[: min(ends, default=len(words))], exception >= 0


def _without_moisture(words: Phrase, exception: int) -> Phrase:
    """The words without an exception that is of moisture alone: "all results except moisture are stated as is"."""
    said = _statements()
    count = next(n for n in said.exceptions.lengths[words[exception]] if words[exception:][:n] in said.exceptions.known)
    rest = words[exception + count :]
    named = (
        next((n for n in said.moisture.lengths.get(rest[0], ()) if rest[:n] in said.moisture.known), 0) if rest else 0
    )
    if not named or rest[named : named + 1] in _AND:
        return words
    return words[:exception] + rest[named:]


# Words behind which further exceptions follow: "except moisture and extract".
_AND = {(word,) for word in ("and", "und", "et", "en", "y", "e", "a", "og", "och", "i", "и", "та", "és", "or", "oder")}


def _bases(words: Phrase, text: str) -> set[Basis]:
    return {basis for basis, phrases in _statements().basis.items() if _first(phrases, words, text) >= 0}


def _short_bases(words: Phrase, text: str) -> set[Basis]:
    """The abbreviations that stand beside units ("db", "TrS", "s.m."), at the end of a short text.

    Two letters are an abbreviation only as they stand: "år" is a year and not "a.r.", and the single letters "a i" are
    what a scan has left of words.
    """
    beside = unit_table().beside_after
    accented = not (_WORD.findall(text) or [""])[-1].isascii()
    for count in range(len(words), 0, -1):
        abbreviation = unit_key(" ".join(words[-count:]))
        basis = beside.get(abbreviation)
        if basis and not (len(abbreviation) <= 2 and (accented or _LETTERS_APART.search(text))):
            return {basis}
    return set()


_WORD = re.compile(r"[^\W\d_]+")
_LETTERS_APART = re.compile(r"\b[^\W\d_] [^\W\d_]\W*$")


@lru_cache(maxsize=4096)
def family_statement(text: str) -> Family | None:
    """The method family that a note or a method cell names; None where it names none or several.

    A bare name needs a word about methods beside it, or nothing of another kind: "colour in EBC units", "alpha-amylase
    (ASBC)" say nothing of the sheet.
    """
    if not text or len(text) > LONGEST_NOTE:
        return None
    said, words = _statements(), _tokens(text)
    numbered = [family for family in FAMILIES if _first(said.numbers[family], words) >= 0]
    if len(numbered) == 1:
        return numbered[0]
    sure = [family for family in FAMILIES if _first(said.sure[family], words, text) >= 0]
    named = [family for family in FAMILIES if _first(said.names[family], words) >= 0]
    both = [family for family in FAMILIES if family in sure or family in named]
    if len(both) != 1:
        return None
    if sure:
        return sure[0]
    about_units = any(word in said.units for word in words) or _is_figure(both[0], text)
    other = [word for word in words if not word.isdigit() and (word,) not in said.names[both[0]].known]
    about_methods = any(word in said.methods for word in words) or all(word in said.beside for word in other)
    return both[0] if about_methods and not about_units else None


def _is_figure(family: Family, text: str) -> bool:
    """True where the name stands behind a number and so is its unit: "Colour 3.5 EBC"."""
    return re.search(rf"\d\s*°?\s*{family}(?!\w)", text, re.IGNORECASE) is not None


@lru_cache(maxsize=4096)
def mash_statement(text: str) -> Mash | None:
    """The mash that a note, section or method names; None where it names none or both."""
    if not text or len(text) > LONGEST_NOTE:
        return None
    words = _tokens(text)
    named = [mash for mash, phrases in _statements().mashes.items() if _first(phrases, words, text) >= 0]
    return named[0] if len(named) == 1 else None


@lru_cache(maxsize=1024)
def is_harmless_footnote(text: str) -> bool:
    """True for a footnote that changes nothing about the result that it belongs to: of accreditation, say."""
    return bool(text) and len(text) <= LONGEST_NOTE and _first(_statements().harmless, _tokens(text), text) >= 0


@lru_cache(maxsize=2048)
def names_another_sample(text: str) -> bool:
    """True for a heading over figures of a reference sample, an earlier lot, an average, guaranteed values ..."""
    if not text or len(text) > LONGEST_TITLE:
        return False
    words = _tokens(text)
    return words in _statements().another_alone.known or _first(_statements().another, words, text) >= 0


@lru_cache(maxsize=2048)
def heads_another_sample(heading: str) -> bool:
    """The same for a heading between figures, where a word like "sample", "customer" or "average" is enough."""
    if names_another_sample(heading):
        return True
    if not heading or len(heading) > LONGEST_TITLE or ":" in heading or document_title(heading) is not None:
        return False
    said, words = _statements(), _tokens(heading)
    for family in FAMILIES:  # "European Brewery Convention" is no brewery
        words = _without(said.names[family], _without(said.sure[family], words))
    return _first(said.another_nouns, words) >= 0 > _first(said.another_own, words)
