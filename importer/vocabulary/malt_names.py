"""Words by which a sheet names maltsters and malts (mappings/letterhead.toml)."""

from __future__ import annotations

import re
import tomllib
import unicodedata
from collections.abc import Sequence
from dataclasses import dataclass, fields
from functools import cache, lru_cache

from importer.data import mappings_folder


@dataclass(frozen=True, slots=True)
class NameWords:
    """The words of mappings/letterhead.toml, folded as ``fold`` does."""

    maltsters: tuple[str, ...]
    brewers: tuple[str, ...]
    legal_forms: tuple[str, ...]
    malts: tuple[str, ...]
    stems: tuple[str, ...]
    not_malts: tuple[str, ...]
    unfinished: tuple[str, ...]


@cache
def name_words() -> NameWords:
    """The words, read once."""
    with (mappings_folder() / "letterhead.toml").open("rb") as file:
        raw = tomllib.load(file)
    return NameWords(**{field.name: tuple(raw[field.name]) for field in fields(NameWords)})


# Letters whose mark Unicode does not part from them.
_UNSPLIT = str.maketrans({"ß": "ss", "ł": "l", "ø": "o", "đ": "d", "ı": "i", "æ": "ae", "œ": "oe"})


@lru_cache(maxsize=4096)
def fold(text: str) -> str:
    """A text without case and accents."""
    plain = unicodedata.normalize("NFKD", text.casefold().translate(_UNSPLIT))
    return "".join(c for c in plain if not unicodedata.combining(c))


@cache
def _any_of(words: tuple[str, ...]) -> re.Pattern[str]:
    return re.compile(rf"(?<!\w)(?:{'|'.join(map(re.escape, words))})(?!\w)")


def has_word(folded: str, words: tuple[str, ...]) -> bool:
    """True for a folded text in which one of the words stands by itself."""
    return bool(words) and _any_of(words).search(folded) is not None


def names_malt(text: str) -> bool:
    """True for a text with a word for malt, which may end a compound ("Weizenmalz"), or for a kind of malt."""
    folded = fold(text)
    stems = tuple(name_words().stems)
    return any(word.endswith(stems) for word in re.findall(r"\w+", folded)) or has_word(folded, name_words().malts)


def is_malt_name(text: str) -> bool:
    """True for the name of a malt ("Wheat malt"), which is no caption although its words occur in captions."""
    return len(text.split()) > 1 and has_word(fold(text), name_words().malts)


def names_one_malt(text: str) -> bool:
    """True for the name of a malt, of several words or of one ("Weizenmalz")."""
    folded = fold(text)
    compound = folded.isalpha() and folded.endswith(name_words().stems) and folded not in name_words().stems
    return (is_malt_name(text) or compound) and not has_word(folded, name_words().not_malts)


def names_only_malt(text: str) -> bool:
    """True for the name of a malt: a word for malt with others or in a compound, and no word of anything else."""
    folded = fold(text)
    words = re.findall(r"\w+", folded)
    more = len(words) > 1 or folded not in name_words().stems
    plain = not has_word(folded, name_words().not_malts) and not any(len(re.findall(r"\d", w)) > 2 for w in words)
    return len(words) <= 6 and more and plain and names_malt(text)


def names_maltster(text: str) -> bool:
    """True for the name of a company that makes malt, by a word of it; more than the word itself."""
    return _names_company(text, name_words().maltsters)


def names_brewer(text: str) -> bool:
    """True for the name of a company that brews or distils."""
    return _names_company(text, name_words().brewers)


def _names_company(text: str, words: Sequence[str]) -> bool:
    folded = fold(text)
    return len(text.split()) > 1 and any(word in folded for word in words)


def is_legal_form(text: str) -> bool:
    """True for the form of a company and nothing else ("a.s.", "Lda.", "GmbH & Co. KG")."""
    words = fold(text).replace("&", " ").split()
    return bool(words) and all(
        word in name_words().legal_forms or f"{word}." in name_words().legal_forms for word in words
    )


def has_legal_form(text: str) -> bool:
    """True for a text with a company form; "as" and "co" are words as well, and forms only in capitals."""
    folded = fold(text)
    if not has_word(folded, name_words().legal_forms):
        return False
    found = [form for form in name_words().legal_forms if has_word(folded, (form,))]
    return any(
        not form.isalpha() or len(form) > 3 or re.search(rf"(?<!\w){form}(?!\w)", text) is None for form in found
    )
