"""The words of row labels: mappings/concepts.toml and mappings/words/*.toml by wording, and a brewer's own words.

Own words come from the file or folder that the environment variable ONEBASIS_MAPPINGS names; they add to the words
that ship with the program.
"""

from __future__ import annotations

import gc
import re
from collections.abc import Mapping
from dataclasses import dataclass, field
from functools import cache, lru_cache
from typing import Any, NamedTuple

from importer.data import mappings_folder
from importer.errors import DataError, OwnFileError
from importer.vocabulary.nearest import did_you_mean
from importer.vocabulary.parameters import parameters
from importer.vocabulary.text import tokens, typeset
from importer.vocabulary.word_files import fold_block, key, key_of, load_toml, own_word_files, own_words, word_files

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
    meanings: Alternatives


@dataclass(frozen=True, slots=True)
class Concepts:
    """The ideas by kind; ``foreign`` has the words to tell the brewer."""

    plain: Ideas
    neutral: Ideas
    foreign: dict[str, str]

    def __contains__(self, idea: object) -> bool:
        return idea in self.plain or idea in self.neutral or idea in self.foreign

    def names(self) -> list[str]:
        """All of them in the order of the alphabet."""
        return sorted({*self.plain, *self.neutral, *self.foreign})


@dataclass(frozen=True, slots=True, eq=False)
class Language:
    """The wordings of one language. Keys are folded tokens joined by single spaces.

    ``stems`` hold wordings whose last word may have any ending. ``compounds``: words are written together.
    """

    name: str
    words: dict[str, Alternatives] = field(default_factory=dict)
    short: dict[str, list[Short]] = field(default_factory=dict)
    stems: dict[str, Alternatives] = field(default_factory=dict)
    compounds: bool = False


@dataclass(frozen=True, slots=True, eq=False)
class Lexicon:
    """All wordings by language. ``known`` are the keys of words and abbreviations of all languages together, ``labels``
    whole labels that mean a parameter as they stand."""

    languages: tuple[Language, ...]
    labels: dict[str, str]
    known: frozenset[str]

    def find(self, key: str, raw: str) -> tuple[tuple[Reading, ...], bool] | None:
        """The readings of a wording, and whether only its case differs from an abbreviation's; None if not known."""
        if key in self.known:
            return self._find(key, raw)
        stems = tuple(
            Reading(found, one.name) for one in self.languages if one.stems and (found := self._stem(one.stems, key))
        )
        return (stems, False) if stems else None

    def _find(self, key: str, raw: str) -> tuple[tuple[Reading, ...], bool]:
        exact: list[Reading] = []
        loose: list[Reading] = []
        words: list[Reading] = []
        for one in self.languages:
            word = one.words.get(key)
            if word is not None:
                words.append(Reading(word, one.name))
            for short in one.short.get(key, ()):
                fits = not short.raw or short.raw == raw
                (exact if fits else loose).append(Reading(short.meanings, one.name))
        # "DON" is a toxin and "don" a word; two letters have their exact case and need no capitals.
        if exact and (not words or len(raw) <= 2 or raw != raw.lower()):
            return tuple(exact), False
        if words:
            return tuple(words), False
        return tuple(loose), True

    def _stem(self, stems: dict[str, Alternatives], key: str) -> Alternatives | None:
        last = key.rfind(" ") + 1
        for length in range(len(key), max(last + 2, len(key) - LONGEST_ENDING - 1), -1):
            found = stems.get(key[:length])
            if found:
                ending = key[length:]
                # "Extraktdiff" is no form of "Extrakt": a word of its own is joined on.
                return None if len(ending) > 2 and ending in self.known else found
        return None

    def cut(self, word: str) -> dict[str, tuple[str, ...]]:
        """A long word cut into known ones, by language, for the languages that write words together."""
        if len(word) < SHORTEST_COMPOUND:
            return {}
        cuts = {one.name: _split(word, _parts(one), 3) for one in self.languages if one.compounds}
        return {language: cut for language, cut in cuts.items() if cut}

    def meanings(self, language: str, word: str) -> Alternatives:
        """What a word means in one language; nothing where it has no meaning there."""
        return next((one.words.get(word, ()) for one in self.languages if one.name == language), ())


@cache
def concepts() -> Concepts:
    """The ideas of mappings/concepts.toml. Raises DataError where one stands under two kinds."""
    raw = load_toml(mappings_folder() / "concepts.toml", "mappings/concepts.toml")
    plain, neutral = (frozenset(re.findall(r"\w+", raw[kind])) for kind in ("plain", "neutral"))
    foreign = dict(raw["foreign"])
    twice = (plain & neutral) | (plain & foreign.keys()) | (neutral & foreign.keys())
    if twice:
        raise DataError(f"mappings/concepts.toml: {', '.join(sorted(twice))} stands under two kinds")
    return Concepts(plain, neutral, foreign)


def lexicon() -> Lexicon:
    """The words that ship with the program and the brewer's own, indexed. Raises DataError for a file that is wrong."""
    return _lexicon(own_words())


@lru_cache(maxsize=4)
def _lexicon(own: str) -> Lexicon:
    # Thousands of small objects that all stay: looking for garbage among them takes half of the time.
    collecting = gc.isenabled()
    gc.disable()
    try:
        return _build(own)
    finally:
        if collecting:
            gc.enable()


def _build(own: str) -> Lexicon:
    builder = _Builder()
    for name, table in word_files():
        builder.add(table, name)
    try:
        for name, table in own_word_files(own) if own else ():
            builder.add(table, name)
    except DataError as fault:
        raise OwnFileError(str(fault) if str(fault).endswith("?") else f"{fault}.") from None
    return builder.result()


# ---------------------------------------------------------------------------------------------- compounds

LONGEST_ENDING = 4
"""Letters that a star stands for at most; a longer rest is another word joined on."""
SHORTEST_COMPOUND = 7
"""Letters: shorter words are not cut up."""
LINKS = ("", "s", "n", "en", "es", "e", "er")
"""Letters between the words of a compound."""


SMALL_WORDS: tuple[Alternatives, ...] = ((frozenset({"FILLER"}),), (frozenset({"AND"}),))


@lru_cache(maxsize=64)
def _parts(language: Language) -> frozenset[str]:
    """The words that compounds are made of: no small words, which would make one of any slip ("ein" + "schrot")."""
    return frozenset(w for w, said in language.words.items() if len(w) > 2 and " " not in w and said not in SMALL_WORDS)


def _split(word: str, parts: frozenset[str], most: int) -> tuple[str, ...] | None:
    """Two or three known words that a long one is made of, the longest first; None where there are none."""
    for end in range(len(word) - 2, 2, -1):
        head = word[:end]
        if head not in parts:
            continue
        for link in LINKS:
            rest = word[end:]
            if not rest.startswith(link):
                continue
            rest = rest[len(link) :]
            if rest in parts:
                return head, rest
            if most > 2 and len(rest) > 5:
                more = _split(rest, parts, most - 1)
                if more:
                    return head, *more
    return None


# ---------------------------------------------------------------------------------------------- building

_PLAIN = re.compile(r"[a-z\u0430-\u0481\u048a-\u04ff]+(?: [a-z\u0430-\u0481\u048a-\u04ff]+)*")
_IDEOGRAPHS = re.compile("[\u4e00-\u9fff]+")
_LETTERS_AND_FIGURES = re.compile("[a-z0-9]+(?: [a-z0-9]+)*")
_EDGE = re.compile("(?<=[a-z])(?=[0-9])|(?<=[0-9])(?=[a-z])")
_SPACES = re.compile(r"\s+")
_AROUND = re.compile(r" ?([,\x1e]) ?")
_SIMPLE_SHORT = re.compile(r"[A-Za-z]+(?:[ -][A-Za-z]+)*")
_END = "\x1e"


# What a word file may hold, and of what kind.
_WORD_FILE: dict[str, type[str | bool | dict[str, str]]] = {
    "language": str,
    "compounds": bool,
    "words": dict,
    "abbreviations": dict,
    "labels": dict,
}
_KINDS = {str: "a text in quotes", bool: "true or false", dict: "a table"}


class _Builder:
    def __init__(self) -> None:
        self.languages: dict[str, Language] = {}
        self.labels: dict[str, str] = {}

    def add(self, raw: Mapping[str, Any], name: str) -> None:
        for part in raw.keys() - _WORD_FILE.keys():
            near = did_you_mean(part, _WORD_FILE) or f" Its parts are {', '.join(_WORD_FILE)}"
            raise DataError(f"{name}: {part} is not a part of a word file.{near}")
        for part, kind in _WORD_FILE.items():
            if not isinstance(raw.get(part, kind()), kind):
                raise DataError(f"{name}: {part} must be {_KINDS[kind]}")
        title = raw.get("language")
        if not title:
            raise DataError(f'{name} does not say its language. Begin it with language = "own"')
        language = self.languages.get(title) or Language(title, compounds=raw.get("compounds", False))
        self.languages[title] = language
        self._add_words(language, _table(raw, "words", name), name)
        for ideas, wordings in _table(raw, "abbreviations", name).items():
            _add_short(language, _meanings(ideas, f"{name}, [abbreviations]"), wordings, f"{name}, {ideas}")
        for parameter, wordings in _table(raw, "labels", name).items():
            self._add_labels(parameter, wordings, f"{name}, [labels]")

    @staticmethod
    def _add_words(language: Language, table: dict[str, str], name: str) -> None:
        if not table:
            return
        block = _tidy(fold_block(_END.join(table.values())))
        for ideas, wordings in zip(table, block.split(_END), strict=True):
            meanings, where = _meanings(ideas, f"{name}, [words]"), f"{name}, {ideas}"
            pieces = list(filter(None, wordings.split(",")))
            if "*" in wordings:
                stems = _keys([piece.rstrip("*") for piece in pieces if piece.endswith("*")], where)
                _put(language.stems, stems, meanings, language, where)
                pieces = [piece for piece in pieces if not piece.endswith("*")]
            if not _all_plain(pieces):
                pieces = _keys(pieces, where)
            _put(language.words, pieces, meanings, language, where)

    def _add_labels(self, parameter: str, wordings: str, where: str) -> None:
        if parameter not in parameters():
            raise DataError(f"{where}: {parameter} is not a parameter.{_near_parameter(parameter)}")
        for wording in _pieces(wordings):
            found = key(wording)
            if not found:
                raise DataError(f"{where} {parameter}: {wording!r} has no letters")
            earlier = self.labels.setdefault(found, parameter)
            if earlier != parameter:
                raise DataError(f"{where} {parameter}: the label {wording!r} already means {earlier}")

    def result(self) -> Lexicon:
        languages = tuple(self.languages.values())
        known = frozenset().union(*(one.words for one in languages), *(one.short for one in languages))
        return Lexicon(languages, self.labels, known)


def _table(raw: Mapping[str, Any], part: str, name: str) -> dict[str, str]:
    table: dict[str, str] = raw.get(part, {})
    for entry, wordings in table.items():
        if not isinstance(wordings, str):
            raise DataError(f"{name}, [{part}]: the wordings of {entry} must be one text in quotes")
    return table


def _pieces(wordings: str) -> list[str]:
    return list(filter(None, _tidy(wordings).strip().split(",")))


def _tidy(wordings: str) -> str:
    """Lists of wordings with nothing but a comma between them."""
    wordings = wordings.replace("\n", ",").replace(", ", ",")
    if " ," in wordings or "  " in wordings or f" {_END}" in wordings or f"{_END} " in wordings:
        wordings = _AROUND.sub(r"\1", _SPACES.sub(" ", wordings))
    return wordings.strip(" ")


def _all_plain(pieces: list[str]) -> bool:
    """True where every folded wording is its own key. Asks the whole list at once, for there are thousands."""
    letters = "".join(pieces).replace(" ", "")
    return letters.isalpha() and (letters.isascii() or _PLAIN.fullmatch(letters) is not None)


def _keys(pieces: list[str], name: str) -> list[str]:
    """The keys of folded wordings; nearly all are their own."""
    return [p if p.isascii() and p.replace(" ", "").isalpha() else _key_of_piece(p, name) for p in pieces]


def _key_of_piece(piece: str, name: str) -> str:
    if _IDEOGRAPHS.fullmatch(piece):
        return " ".join(piece)
    if _LETTERS_AND_FIGURES.fullmatch(piece):
        return _EDGE.sub(" ", piece)
    found = piece if _PLAIN.fullmatch(piece) else key(piece)
    if not found:
        raise DataError(f"{name}: {piece!r} has no letters")
    return found


def _put(
    table: dict[str, Alternatives], keys: list[str], meanings: Alternatives, language: Language, name: str
) -> None:
    if not table.keys().isdisjoint(keys):
        twice = [found for found in keys if table.get(found, meanings) != meanings]
        if twice:
            raise DataError(_twice(name, ", ".join(twice), language.name))
    table.update(dict.fromkeys(keys, meanings))


def _add_short(language: Language, meanings: Alternatives, wordings: str, name: str) -> None:
    for wording in _pieces(wordings):
        if _SIMPLE_SHORT.fullmatch(wording):
            found, raw = wording.lower().replace("-", " "), wording.replace("-", "").replace(" ", "")
        else:
            cut = tokens(typeset(wording))
            found, raw = key_of(cut), "".join(token.raw for token in cut if token.kind == "word")
        if not found:
            raise DataError(f"{name}: {wording!r} has no letters")
        entry = Short(raw if len(raw) <= 2 else "", meanings)
        earlier = language.short.setdefault(found, [])
        if any(other.raw == entry.raw and other.meanings != meanings for other in earlier):
            raise DataError(_twice(name, wording, language.name))
        if entry not in earlier:
            earlier.append(entry)


def _twice(name: str, word: str, language: str) -> str:
    told = f"{name}: {word!r} already has another meaning in language {language!r}"
    return f"{told}. Leave it out, or give the file a language of its own"


def _meanings(text: str, name: str) -> Alternatives:
    meanings, wrong = _parse_meanings(text)
    if wrong:
        near = "".join(did_you_mean(idea, concepts().names()) for idea in wrong) or " It lists all there are"
        told = ", ".join(idea or "an empty name" for idea in wrong)
        raise DataError(f"{name}: {told} is not an idea of mappings/concepts.toml.{near}")
    return meanings


def _near_parameter(name: str) -> str:
    """The parameters that are spelt most like a name, which may be the title of one."""
    by_title = {one.title: one.name for one in parameters().values()}
    return did_you_mean(by_title.get(name, name), parameters()) or " README lists all there are"


@lru_cache(maxsize=4096)
def _parse_meanings(text: str) -> tuple[Alternatives, tuple[str, ...]]:
    """The ideas of an entry, and the names in it that are none; an empty name among them."""
    known = concepts()
    meanings = tuple(frozenset(part.split()) for part in text.split("|"))
    wrong = frozenset().union(*meanings) - known.plain - known.neutral - known.foreign.keys()
    return meanings, (*sorted(wrong), *(() if all(meanings) else ("",)))
