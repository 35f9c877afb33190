"""Answers the layout stage's questions about wording from the mappings."""

from __future__ import annotations

import re
from functools import lru_cache

from importer.meaning.labels import LabelQuery, examined, ideas_of, recognise
from importer.reading.numbers import read_number
from importer.reading.values import split_number, split_value
from importer.vocabulary.captions import basis_statement, column_roles, document_title, header_caption
from importer.vocabulary.column_heads import listed_role
from importer.vocabulary.result_words import result_words
from importer.vocabulary.units import parse_unit, split_unit

VALUE_KINDS = ("number", "range", "not-detected", "several")
LENGTHS = ("mm", "in")
MAX_LABEL = 120
MAX_VALUE = 40
# The most words of a head that names a moisture basis and nothing else ("on dry matter, %").
BASIS_WORDS = 4
# Captions below the first are no captions, below the second their entries are in doubt.
# Letters up to here are Latin; a single sign of other scripts may be a word.
LATIN_END = "\u0250"
CAPTION_SCORE = 55.0
SURE_CAPTION = 80.0


_METHOD = re.compile(
    r"^\W*(?:(?:EBC|MEBAK|IoB|IOB|ASBC|ISO|Analytica|Malt|Wort|Method)[\s.:/-]*)*"
    r"(?:[RB]-)?\d+(?:[.-]\d+)+(?:\.?[A-Z])?(?:\s*\(\d{4}\))?\W*$|^\W*(?:EBC|MEBAK|IoB|IOB|ASBC)\s+(?:Malt|Wort)-\d+\W*$"
)


# "7. pH of wort" is a name with its number, not the value 7.
_COUNTED = re.compile(r"^\d{1,2}[.)]\s+(?=[^\W\d_])")
# Letters joined to many digits ("HL593622", "N-301") number a batch or a vehicle: no name with a number behind it.
_CODE = re.compile(r"^[^\W\d_]{1,4}(?:-?\d{4,}|[-/]\d{3,})$")


_OF_A_YEAR = re.compile(r"^\D*[^\W\d]\D*(?:19|20)\d\d(?:\s?[/-]\s?(?:(?:19|20)\d\d|\d\d))?$")
_AS_LETTERS = str.maketrans("10", "io")


class SheetTerms:
    """The wording of malt analysis sheets. Stateless; every answer is remembered by text."""

    def roles(self, text: str) -> tuple[str, ...]:
        return _roles(text)

    def is_label(self, text: str) -> bool:
        return _is_label(text)

    def is_value(self, text: str) -> bool:
        return _is_value(text)

    def is_unit(self, text: str) -> bool:
        return len(text) <= MAX_VALUE and parse_unit(text) is not None

    def basis(self, text: str) -> str | None:
        if len(text.split()) > BASIS_WORDS or _is_label(text):
            return None
        return basis_statement(text)

    def caption(self, text: str) -> str | None:
        found = _caption(text)
        return found[0] if found is not None else None

    def is_other_matter(self, text: str) -> bool:
        if len(text) > MAX_LABEL:
            return False
        # What a colon ends speaks of what follows it, whatever else it names.
        named = text.rstrip().endswith(":") and any("BARLEY" in ideas_of(word.strip(",.:")) for word in text.split())
        return named or examined(text) != "malt"

    def is_method(self, text: str) -> bool:
        return _METHOD.match(text.strip()) is not None

    def is_sieving(self, text: str) -> bool:
        return len(text) <= MAX_LABEL and "SIEVE" in ideas_of(text)

    def is_title(self, text: str) -> bool:
        return document_title(text) == "certificate"

    def is_telling(self, word: str) -> bool:
        return not (word[:1].isalpha() and any(c.isdigit() for c in word)) and bool(ideas_of(word) - {"FILLER", "AND"})

    def is_limit(self, word: str) -> bool:
        return bool(ideas_of(word) & {"LIMIT_MAX", "LIMIT_MIN", "MIN"})

    def is_plainer(self, other: str, text: str) -> bool:
        if (unit := parse_unit(text)) is not None:
            sound = parse_unit(other) if unit.damaged else None
            return sound is not None and not sound.damaged and (sound.code, sound.basis) == (unit.code, unit.basis)
        if not _is_wording(text) or not _is_wording(other):
            return False
        own, seen = recognise(LabelQuery(text=text)), recognise(LabelQuery(text=other))
        return own.state != "sure" and seen.state == "sure" and own.parameter in (None, seen.parameter)

    def is_sure_caption(self, text: str) -> bool:
        found = _caption(text)
        return found is not None and found[1] >= SURE_CAPTION


def _is_wording(text: str) -> bool:
    return 2 < len(text) <= MAX_LABEL and any(sign.isalpha() for sign in text)


def _is_letter(text: str) -> bool:
    """True for a lone letter, which names a sample ("A", "B") or stands for too many words to tell."""
    letter = text.strip(" .:")
    return len(letter) == 1 and letter.isalpha() and letter < LATIN_END


@lru_cache(maxsize=8192)
def _roles(text: str) -> tuple[str, ...]:
    if len(text) > MAX_LABEL:
        return ()
    if _is_value(text):
        # "Average 2024" reads like a rough number, and is the head of values that are no results.
        roles = tuple(column_roles(text)) if _OF_A_YEAR.search(text) else ()
        return roles if set(roles) & {"typical", "previous"} else ()
    if _is_letter(text):
        # "n" counts the determinations, "r" is their repeatability; capitals are names of samples.
        role = listed_role(text) if text.islower() else None
        return (role,) if role in ("number", "precision") else ()
    return tuple(column_roles(text))


@lru_cache(maxsize=8192)
def _is_label(text: str) -> bool:
    if not text or len(text) > MAX_LABEL or not any(c.isalpha() for c in text):
        return False
    if _METHOD.match(text.strip()) or _CODE.match(text.strip()) or (_is_letter(text) and text.islower()):
        # "n" counts the determinations; nitrogen is "N".
        return False
    if _is_value(text):
        # "> 2.5 mm" is the name of a sieve fraction; "8.4 EBC" is a value.
        unit = split_unit(text)[1]
        if unit is None or unit.code not in LENGTHS:
            return False
    # "Lot N-401 Pilsner malt" names no nitrogen.
    uncoded = " ".join(word for word in text.split() if not _CODE.match(word))
    match = recognise(LabelQuery(text=uncoded))
    if match.parameter is not None and "label" in (roles := _roles(text)) and len(roles) > 1:
        # "Analysis (EBC)" heads the names; the family is no colour.
        return False
    return match.parameter is not None and match.state in ("sure", "doubtful")


@lru_cache(maxsize=8192)
def _is_value(text: str) -> bool:
    numbered = _COUNTED.match(text)
    if numbered and _is_label(text[numbered.end() :]):
        return False
    if not text or len(text) > MAX_VALUE or _is_word_in_digits(text):
        return False
    for candidate in (text, split_value(text)[0]):
        number = read_number(candidate, None)
        if number is not None and number.kind in VALUE_KINDS:
            return True
    return split_number(text) is not None


def _is_word_in_digits(text: str) -> bool:
    """True for a known word of results whose letters were read as digits ("1.0." for "i.O."): no number ends so."""
    return text.endswith(".") and text.translate(_AS_LETTERS) in result_words().described_as_written


@lru_cache(maxsize=8192)
def _caption(text: str) -> tuple[str, float] | None:
    if not text or len(text) > MAX_LABEL or _is_letter(text):
        return None
    found = header_caption(text)
    if found is None or found[1] < CAPTION_SCORE:
        return None
    return found
