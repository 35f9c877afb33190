"""Words of a scan: what the second reader makes of letters that the main reader is not sure of.

The main reader's English data know no accents, no ß and no Greek letters, and it guesses the nearest English ones:
"Wurze", "moit", "wg/kg". The second reader knows them all, but is not cheap. A number is never taken from it here:
where the two differ about a number in a cell, the main reader's words stay as they are.
"""

from __future__ import annotations

import re
import unicodedata
from collections.abc import Callable, Sequence
from difflib import SequenceMatcher
from functools import cache
from itertools import zip_longest

from rapidfuzz.distance import Levenshtein

from importer.intake import ocr, second
from importer.vocabulary.lexicon import lexicon
from importer.vocabulary.unit_names import parse_plain
from importer.vocabulary.word_files import key
from importer.words import Box

# Confidence of the main reader's least sure word: below the first a cell is always read again, above the second never;
# between them where the page has letters that the main reader does not know.
DOUBTFUL, SURE = 0.86, 0.935
SAMPLE = 8
LEAST_CERTAINTY = 0.9
LEAST_LETTERS = 2
# Of the glyph height: what is wider is a sentence that the second reader would have to squeeze.
WIDEST = 64.0
SAME_WIDTH = 0.2  # of the glyph height: one text printed twice differs by less
WORD = re.compile(r"[^\W\d_]+")
LEAST_WORD = 4  # letters: shorter ones are known by chance
# The share of letters that two readings of one word have in common.
LEAST_LIKENESS = 0.5
# Digits behind a letter are part of a word ("H2O").
NUMBER = re.compile(r"(?<![^\W\d_])\d+(?:[.,]\d+)*")
LOOKALIKES = str.maketrans("OoαIilL|!SsBβß,à", "00011111155888.4")
# What the main reader takes a sign for that it does not know, and a digit of a plain number.
SHAPES = (
    {"≤": "[≤<=sS$£]", "≥": "[≥>=sSzZ$£]", "±": "[±+*]"} | dict.fromkeys(",.", "[.,]") | dict.fromkeys("-–", "[-–−]")
)
DIGIT_SHAPES = {"0": "[0oO]", "1": r"[1lI|!\]]", "5": "[5S]", "8": "[8B]"}
PLAIN_NUMBER = re.compile(r"\d{1,4}(?:[.,]\d+)?")
# Only between two numbers with decimals is a ± what a 4 was read for: elsewhere the 4 may be a digit.
WITH_SPREAD = re.compile(r"\d+[.,]\d+\s*±\s*\d+[.,]\d+\s*%?")
# "[2 77.7]" is how it reads "[≥ 77.7]".
LONE_DIGIT = re.compile(r"(?<![\w.,])[25]\s+(?=\d)")
SIGNS = frozenset("<>≤≥±")
# A name of letters and digits ("VZ45"), and capitals that its digits are taken for.
SHORT_NAME = re.compile(r"\(?[A-Z][A-Za-z]{0,3}\d{1,3}\)?")
CAPITALS = str.maketrans("OISBA", "01584")


def unsure(cells: Sequence[tuple[Box, Sequence[ocr.Seen]]], glyph: float) -> list[int]:
    """Which cells hold letters that the main reader may have misread, the least sure first."""
    found = [
        (min(word.confidence for word in words), index)
        for index, (box, words) in enumerate(cells)
        if words and box.x1 - box.x0 <= WIDEST * glyph and _letters("".join(w.text for w in words)) >= LEAST_LETTERS
    ]
    return [index for confidence, index in sorted(found) if confidence < SURE]


def read_unsure(
    cells: Sequence[tuple[Box, Sequence[ocr.Seen]]], glyph: float, read: Callable[[list[int]], list[second.Read]]
) -> dict[int, second.Read]:
    """The second reader's answers for the cells whose letters are not sure; ``read`` takes places in ``cells``.

    Cells of middling confidence are read where a sample of the page holds letters beyond the English ones. English
    words and units that the trade uses need no look there, and what looks the same is read once: the unit of every
    second row.
    """
    repeated = _repeated(cells, glyph)
    order = [index for index in unsure(cells, glyph) if index not in repeated]
    first = [index for index in order if min(word.confidence for word in cells[index][1]) < DOUBTFUL]
    later = [index for index in order[len(first) :] if not _is_known(" ".join(word.text for word in cells[index][1]))]
    now = [*first, *later[:SAMPLE]]
    answers = dict(zip(now, read(now), strict=True)) if now else {}
    rest = later[SAMPLE:]
    if rest and any(not answer.text.isascii() and answer.confidence >= LEAST_CERTAINTY for answer in answers.values()):
        answers.update(zip(rest, read(rest), strict=True))
    return answers | {index: answers[first] for index, first in repeated.items() if first in answers}


def _is_known(text: str) -> bool:
    """Whether a text is a unit, or made of English words that the mappings know: others may have lost an accent."""
    if parse_plain(text) is not None:
        return True
    words = WORD.findall(text)
    return any(len(word) >= LEAST_WORD for word in words) and all(key(word) in _english() for word in words)


@cache
def _english() -> frozenset[str]:
    """The single words and abbreviations of the English labels, folded."""
    own = [language for language in lexicon().languages if language.name == "en"]
    return frozenset(
        word for language in own for wording in (*language.words, *language.short) for word in wording.split()
    )


def _repeated(cells: Sequence[tuple[Box, Sequence[ocr.Seen]]], glyph: float) -> dict[int, int]:
    """Cells without a digit that have the text and the width of another one, and that one: the least sure of them."""
    order = unsure(cells, glyph)
    texts = {index: " ".join(word.text for word in cells[index][1]) for index in order}
    found: dict[int, int] = {}
    kept: dict[str, list[int]] = {}
    for index in order:
        text, width = texts[index], cells[index][0].width
        alike = [other for other in kept.get(text, ()) if abs(cells[other][0].width - width) <= SAME_WIDTH * glyph]
        if alike and not any(character.isdigit() for character in text):
            found[index] = alike[0]
        else:
            kept.setdefault(text, []).append(index)
    return found


def reworded(words: Sequence[ocr.Seen], box: Box, answer: second.Read) -> list[ocr.Seen] | None:
    """The words of a cell as the second reader has them, each with its place; None where the main reader's stand.

    They stand where the two differ about a number or a sign before one, and where they have little in common: one of
    them has then lost a part.
    """
    text = " ".join(answer.text.split())
    if answer.confidence < LEAST_CERTAINTY or not text:
        return None
    if not words:
        return _spread(text, box, answer.confidence) if _letters(text) > LEAST_LETTERS else None
    old = " ".join(word.text for word in words)
    if text == old or _breaks_off(old, text) or not (agrees(old, text) or _only_respells(old, text)):
        return None
    return _placed(words, text.split(), box, answer.confidence)


def _placed(words: Sequence[ocr.Seen], tokens: list[str], box: Box, confidence: float) -> list[ocr.Seen]:
    """The new words where the old ones stand: what is the same keeps its place, and with it the gaps of columns."""
    matcher = SequenceMatcher(None, [word.text for word in words], tokens, autojunk=False)
    found: list[ocr.Seen] = []
    for kind, first, last, start, end in matcher.get_opcodes():
        own, new = words[first:last], tokens[start:end]
        if kind == "equal":
            found += own
        elif len(own) == len(new):
            found += [word._replace(text=token, confidence=confidence) for word, token in zip(own, new, strict=True)]
        elif new:
            left = own[0].x0 if own else (found[-1].x1 if found else box.x0)
            right = own[-1].x1 if own else (words[last].x0 if last < len(words) else box.x1)
            found += _spread(" ".join(new), Box(left, box.top, max(left + 1, right), box.bottom), confidence)
    return found


def agrees(old: str, new: str) -> bool:
    """Whether the main reader saw what the second one did: all characters, or what it takes unknown signs for."""
    seen = "".join(LONE_DIGIT.sub("s", old).split())
    shapes = SHAPES | DIGIT_SHAPES if PLAIN_NUMBER.fullmatch(new) else SHAPES
    shapes = shapes | {"±": "[±+*4]"} if WITH_SPREAD.fullmatch(new) else shapes
    wanted = "".join(shapes.get(character, re.escape(character)) for character in "".join(new.split()))
    return bool(seen) and re.fullmatch(wanted, seen) is not None


def _breaks_off(old: str, new: str) -> bool:
    """Whether the new reading is the old one without its narrow end: "mg/" for "mg/l"."""
    return old.startswith(new) and not new[-1].isalnum()


def _only_respells(old: str, new: str) -> bool:
    if _signs(old) - _signs(new):
        return False
    if _letters_for_digits(old, new) or _only_accents(old, new) or _digits_of_names(old, new):
        return True
    return _same_word(old, new) and numbers(new) == numbers(old) and not _other_digits(old, new)


def _other_digits(old: str, new: str) -> bool:
    """Whether a word has other digits in the new reading ("VZ65" for "VZ45"); none in the old one are no others."""
    pairs = zip(map(_digits, old.split()), map(_digits, new.split()), strict=False)
    return any(a and b and a != b for a, b in pairs)


def _digits(text: str) -> str:
    return "".join(character for character in text if character.isdigit())


def numbers(text: str) -> list[str]:
    """The numbers in a text, with one decimal sign for all; digits of a word ("H2O") are none."""
    return [match.group().replace(",", ".") for match in NUMBER.finditer(text)]


def _letters_for_digits(old: str, new: str) -> bool:
    """Whether the new reading only has letters where the old one had digits like them: "i.O." for "1.0,"."""
    fewer = sum(c.isdigit() for c in new) < sum(c.isdigit() for c in old)
    return fewer and "".join(old.split()).translate(LOOKALIKES) == "".join(new.split()).translate(LOOKALIKES)


def _digits_of_names(old: str, new: str) -> bool:
    """Whether the new reading only has the digits of a name where the old one had capitals: "VZ45" for "VZAS"."""
    pairs = [(a, b) for a, b in zip_longest(old.split(), new.split(), fillvalue="") if a != b]
    return all(SHORT_NAME.fullmatch(b) and a.translate(CAPITALS) == b.translate(CAPITALS) for a, b in pairs)


def _only_accents(old: str, new: str) -> bool:
    """Whether the new reading has the same characters, with accents: "2,2 à 2,5" for "2,2a2,5"."""
    plain = "".join(c for c in unicodedata.normalize("NFKD", new) if not unicodedata.combining(c))
    return plain != new and "".join(plain.split()) == "".join(old.split())


def _signs(text: str) -> set[str]:
    return {character for character in text if character in SIGNS} | ({"-"} if re.search(r"[-−–]\d", text) else set())


def _letters(text: str) -> int:
    return sum(character.isalpha() for character in text)


def _same_word(one: str, other: str) -> bool:
    return Levenshtein.normalized_similarity(_bare(one), _bare(other)) >= LEAST_LIKENESS


def _bare(text: str) -> str:
    """Letters and digits in small, without accents and spaces."""
    apart = unicodedata.normalize("NFKD", text.casefold())
    return "".join(character for character in apart if character.isalnum())


def _spread(text: str, box: Box, confidence: float) -> list[ocr.Seen]:
    """The words of a text side by side in a box, each as wide as its share of the characters."""
    advance = (box.x1 - box.x0) / len(text)
    return [
        ocr.Seen(
            match.group(),
            box.x0 + match.start() * advance,
            box.top,
            box.x0 + match.end() * advance,
            box.bottom,
            confidence,
        )
        for match in re.finditer(r"\S+", text)
    ]
