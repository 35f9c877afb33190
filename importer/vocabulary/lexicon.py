"""The words of row labels: mappings/concepts.toml and mappings/words/*.toml, indexed by wording, and a brewer's own words.

Own words come from the file or folder that the environment variable ONEBASIS_MAPPINGS names; they add to the words
that ship with the program.
"""

from __future__ import annotations

import os
import re
import tomllib
import unicodedata
from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from functools import cache, lru_cache
from pathlib import Path
from typing import Any, NamedTuple

from importer.data import mappings_folder
from importer.errors import DataError
from importer.vocabulary.parameters import parameters
from importer.vocabulary.text import Token, tokens, typeset

OWN_WORDS = "ONEBASIS_MAPPINGS"
"""Environment variable: a TOML file of own words, or a folder of such files."""

Ideas = frozenset[str]
Alternatives = tuple[Ideas, ...]
"""What a wording can mean: usually one set of ideas, several where the word file separates them by "|"."""


class Reading(NamedTuple):
    """One meaning of a wording in one language."""

    meanings: Alternatives
    language: str


class Short(NamedTuple):
    """An abbreviation. ``raw`` is its exact spelling where case decides, "" where it does not."""

    raw: str
    reading: Reading


@dataclass(frozen=True, slots=True)
class Concepts:
    """The ideas by kind; ``foreign`` has the words to tell the brewer."""

    plain: Ideas
    neutral: Ideas
    foreign: dict[str, str]


@dataclass(frozen=True, slots=True)
class Lexicon:
    """All wordings. Keys are folded tokens joined by single spaces.

    ``reach`` is the largest number of tokens of the wordings that start with a token. ``stems`` hold wordings whose
    last word may have any ending. ``labels`` are whole labels that mean a parameter as they stand. ``compounds`` are
    the single words of the languages that write words together, ``languages`` the names of all of them.
    """

    words: dict[str, list[Reading]]
    short: dict[str, list[Short]]
    stems: dict[str, list[Reading]]
    labels: dict[str, str]
    reach: dict[str, int]
    compounds: dict[str, frozenset[str]]
    languages: tuple[str, ...]

    def find(self, key: str, raw: str) -> tuple[list[Reading], bool] | None:
        """The readings of a wording, and whether only its case differs from an abbreviation's; None if not known."""
        short = self.short.get(key)
        if short:
            exact = [entry.reading for entry in short if not entry.raw or entry.raw == raw]
            if exact and (raw != raw.lower() or key not in self.words):
                return exact, False
            if exact and len(raw) <= 2:
                return exact, False
        known = self.words.get(key)
        if known:
            return known, False
        stem = self._stem(key)
        if stem:
            return stem, False
        if short:
            return [entry.reading for entry in short], True
        return None

    def _stem(self, key: str) -> list[Reading] | None:
        if not self.stems:
            return None
        last = key.rfind(" ") + 1
        for length in range(len(key), last + 2, -1):
            found = self.stems.get(key[:length])
            if found:
                return found
        return None


@cache
def concepts() -> Concepts:
    """The ideas of mappings/concepts.toml. Raises DataError where one stands under two kinds."""
    raw = _load(mappings_folder() / "concepts.toml", "mappings/concepts.toml")
    plain, neutral = (frozenset(re.findall(r"\w+", raw[kind])) for kind in ("plain", "neutral"))
    foreign = dict(raw["foreign"])
    twice = (plain & neutral) | (plain & foreign.keys()) | (neutral & foreign.keys())
    if twice:
        raise DataError(f"mappings/concepts.toml: {', '.join(sorted(twice))} stands under two kinds")
    return Concepts(plain, neutral, foreign)


def lexicon() -> Lexicon:
    """The words that ship with the program and the brewer's own, indexed. Raises DataError for a file that is wrong."""
    return _lexicon(os.environ.get(OWN_WORDS, ""))


@lru_cache(maxsize=4)
def _lexicon(own: str) -> Lexicon:
    builder = _Builder()
    folder = mappings_folder() / "words"
    for path in sorted(folder.glob("*.toml")):
        builder.add(_load(path, f"mappings/words/{path.name}"), f"mappings/words/{path.name}")
    for path in _own_files(own):
        builder.add(_load(path, str(path)), str(path))
    return builder.result()


def _own_files(own: str) -> list[Path]:
    if not own:
        return []
    path = Path(own)
    if path.is_dir():
        return sorted(path.glob("*.toml"))
    if path.is_file():
        return [path]
    raise DataError(f"{OWN_WORDS}: {own} is neither a file nor a folder")


def _load(path: Path, name: str) -> dict[str, Any]:
    try:
        with path.open("rb") as file:
            return tomllib.load(file)
    except OSError as problem:
        raise DataError(f"{name} cannot be read: {problem}") from None
    except (tomllib.TOMLDecodeError, UnicodeDecodeError) as problem:
        raise DataError(f"{name} is not valid TOML: {problem}") from None


# ---------------------------------------------------------------------------------------------- keys of wordings

_MARKS = re.compile("[\u0300-\u036f]")
_PLAIN = re.compile(r"[a-z\u0430-\u0481\u048a-\u04ff]+(?: [a-z\u0430-\u0481\u048a-\u04ff]+)*")
_BLOCK = str.maketrans(
    {"ł": "l", "ø": "o", "đ": "d", "ð": "d", "ı": "i", "þ": "th", "œ": "oe", "æ": "ae", "-": " ", "'": " ", "’": " ", "\r": ""}
)


def fold_block(text: str) -> str:
    """A whole list of wordings folded at once; gives the same keys as folding word by word, at a small part of the cost."""
    if text.isascii():
        return text.lower().translate(_BLOCK)
    return _MARKS.sub("", unicodedata.normalize("NFKD", text.casefold().translate(_BLOCK))).translate(_BLOCK)


def key_of(found: list[Token]) -> str:
    """The key of a run of tokens."""
    return " ".join(token.text for token in found)


def key(text: str) -> str:
    """The key of a wording."""
    return key_of(tokens(typeset(text)))


# ---------------------------------------------------------------------------------------------- building


class _Builder:
    def __init__(self) -> None:
        self.words: dict[str, list[Reading]] = {}
        self.short: dict[str, list[Short]] = {}
        self.stems: dict[str, list[Reading]] = {}
        self.labels: dict[str, str] = {}
        self.reach: dict[str, int] = {}
        self.compounds: dict[str, set[str]] = {}
        self.languages: dict[str, dict[tuple[str, str], Alternatives]] = {}

    def add(self, raw: Mapping[str, Any], name: str) -> None:
        language = raw.get("language")
        if not isinstance(language, str) or not language:
            raise DataError(f"{name} does not say its language")
        unknown = raw.keys() - {"language", "compounds", "words", "abbreviations", "labels"}
        if unknown:
            raise DataError(f"{name}: {', '.join(sorted(unknown))} is not a part of a word file")
        seen = self.languages.setdefault(language, {})
        for ideas, wordings in self._table(raw, "words", name):
            self._add_words(Reading(_meanings(ideas, name), language), wordings, seen, name)
        for ideas, wordings in self._table(raw, "abbreviations", name):
            self._add_short(Reading(_meanings(ideas, name), language), wordings, seen, name)
        for parameter, wordings in self._table(raw, "labels", name):
            self._add_labels(parameter, wordings, name)
        if raw.get("compounds"):
            parts = self.compounds.setdefault(language, set())
            parts.update(word for (kind, word) in seen if kind == "word" and " " not in word and len(word) > 2)

    @staticmethod
    def _table(raw: Mapping[str, Any], part: str, name: str) -> Iterator[tuple[str, str]]:
        table = raw.get(part, {})
        if not isinstance(table, dict):
            raise DataError(f"{name}: [{part}] must be a table")
        for entry, wordings in table.items():
            if not isinstance(wordings, str):
                raise DataError(f"{name}: the wordings of {entry} must be one text in quotes")
            yield entry, wordings

    def _add_words(
        self, reading: Reading, wordings: str, seen: dict[tuple[str, str], Alternatives], name: str
    ) -> None:
        # Folding may change no comma or line end, so the printed and the folded list have the same pieces.
        for wording in _pieces(fold_block(wordings)):
            target, star = self.words, wording.endswith("*")
            found = wording.rstrip("*")
            if not _PLAIN.fullmatch(found):
                found = key(found)
            if star:
                target = self.stems
            if not found:
                raise DataError(f"{name}: {wording!r} has no letters")
            earlier = seen.setdefault(("stem" if star else "word", found), reading.meanings)
            if earlier is reading.meanings:
                target.setdefault(found, []).append(reading)
                self._reach(found)
            elif earlier != reading.meanings:
                raise DataError(_twice(name, found, reading.language))

    def _add_short(
        self, reading: Reading, wordings: str, seen: dict[tuple[str, str], Alternatives], name: str
    ) -> None:
        for wording in _pieces(wordings):
            cut = tokens(typeset(wording))
            found = key_of(cut)
            raw = "".join(token.raw for token in cut if token.kind == "word")
            exact = raw if len(raw) <= 2 else ""
            if not found:
                raise DataError(f"{name}: {wording!r} has no letters")
            earlier = seen.setdefault(("short", f"{found}\n{exact}"), reading.meanings)
            if earlier is reading.meanings:
                self.short.setdefault(found, []).append(Short(exact, reading))
                self._reach(found)
            elif earlier != reading.meanings:
                raise DataError(_twice(name, wording, reading.language))

    def _add_labels(self, parameter: str, wordings: str, name: str) -> None:
        if parameter not in parameters():
            raise DataError(f"{name}: {parameter} is not a parameter")
        for wording in _pieces(wordings):
            if self.labels.setdefault(key(wording), parameter) != parameter:
                raise DataError(f"{name}: the label {wording!r} already means {self.labels[key(wording)]}")

    def _reach(self, found: str) -> None:
        space = found.find(" ")
        first, count = (found, 1) if space < 0 else (found[:space], found.count(" ") + 1)
        if self.reach.get(first, 0) < count:
            self.reach[first] = count

    def result(self) -> Lexicon:
        compounds = {language: frozenset(parts) for language, parts in self.compounds.items()}
        return Lexicon(
            self.words, self.short, self.stems, self.labels, self.reach, compounds, tuple(self.languages)
        )


def _pieces(wordings: str) -> Iterator[str]:
    for line in wordings.split("\n"):
        for piece in line.split(","):
            wording = piece.strip()
            if wording:
                yield wording


def _twice(name: str, word: str, language: str) -> str:
    return f"{name}: {word!r} already has another meaning in language {language!r}"


def _meanings(text: str, name: str) -> Alternatives:
    return _parse_meanings(text, name)


@lru_cache(maxsize=4096)
def _parse_meanings(text: str, name: str) -> Alternatives:
    known = concepts()
    meanings: list[Ideas] = []
    for part in text.split("|"):
        ideas = frozenset(part.split())
        wrong = [idea for idea in ideas if idea not in known.plain and idea not in known.neutral and idea not in known.foreign]
        if wrong or not ideas:
            raise DataError(f"{name}: {', '.join(wrong) or 'an empty name'} is not an idea of mappings/concepts.toml")
        meanings.append(ideas)
    return tuple(meanings)
