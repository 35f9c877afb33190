"""A printed label cut into what it says: the ideas of its words, sizes and temperatures, and what stays unexplained."""

from __future__ import annotations

import re
from dataclasses import dataclass
from functools import lru_cache
from itertools import pairwise, product
from typing import NamedTuple

from importer.meaning.label_limits import without_limits
from importer.meaning.label_numbers import number_left
from importer.meaning.label_sizes import measures
from importer.meaning.label_spelling import respell
from importer.models import Family
from importer.vocabulary.lexicon import Alternatives, Ideas, Lexicon, Reading, lexicon
from importer.vocabulary.text import Token, clean, fold, tokens
from importer.vocabulary.units import Unit, parse_unit, split_label
from importer.vocabulary.word_files import key_of

MAX_READINGS = 12
"""Combinations of meanings of ambiguous words that are tried; more is prose."""
MOST_TOKENS = 7
"""Tokens of the longest wordings that are looked for."""
SHORT = 2
"""Letters of a label that a number beside them makes doubtful."""
FILLER: Ideas = frozenset({"FILLER"})
SMALL: Ideas = FILLER | {"AND"}


class Hit(NamedTuple):
    """A run of tokens with a meaning. ``cost`` is the distance to the wording it was read as (0: as it stands)."""

    start: int
    end: int
    readings: tuple[Reading, ...]
    cost: float = 0.0
    shouted: bool = False


@dataclass(frozen=True, slots=True)
class Part:
    """A label or one half of it: the sets of ideas it can mean, most consistent first, and what is unexplained.

    ``explained`` are letters, ``guessed`` those of them that stand in misspelt words; ``cost`` is the distance of these
    to the words they were read as. ``measured`` are the ideas that come from sizes and temperatures.
    """

    meanings: tuple[Ideas, ...]
    unexplained: tuple[str, ...]
    explained: int
    cost: float = 0.0
    guessed: int = 0
    measured: Ideas = frozenset()

    @property
    def share(self) -> float:
        """Share of the letters that are explained."""
        lost = sum(len(word) for word in self.unexplained)
        return self.explained / (self.explained + lost) if self.explained + lost else 0.0


@dataclass(frozen=True, slots=True)
class Wording:
    """A label as understood word by word. ``halves`` are the parts between strokes, empty where there is one part.

    ``limit_sign`` is a comparison sign of the label that belongs to no sieve, ``number`` one at its end that nothing
    explains.
    """

    text: str
    whole: Part
    halves: tuple[Part, ...]
    unit: Unit | None
    unit_may_be_word: bool
    method_family: Family | None
    parameter: str | None = None
    limit_sign: str = ""
    number: str = ""


_METHOD = re.compile(
    r"[\[(]?\b(?:Analytica[\s-]*)?(?P<body>EBC|MEBAK|ASBC|IoB|IOB|IBD|ISO|DIN|AOAC|ICC|EN|PN|[ČC]SN|GOST|ГОСТ|NEN|NF|UNE|UNI|SOP)"
    r"(?:[\s,:/-]*(?:method|methode|m[ée]thode|metoda|m[ée]todo|metodo|norm|analytica|band|vol|nr|no|Malt|Wort|R|EN|ISO))*"
    r"[\s.,:#-]*(?:[IV]{1,3}[\s,]+)?(?:R-|(?<=PN-)[A-Z]-|(?<=NF )[A-Z])?\d+(?:[.\-]\d+[a-z]?)*\b[\])]?",
)


_BODIES: dict[str, Family] = {"EBC": "EBC", "MEBAK": "EBC", "ASBC": "ASBC", "IOB": "IoB", "IBD": "IoB"}


def _without_method(text: str) -> tuple[str, Family | None]:
    """Takes a method reference ("EBC 4.5.1", "MEBAK R-200.05.011") off a label."""
    found = _METHOD.search(text)
    if not found or (not re.search(r"\d[.\-]\d|Malt|R-|\d{3}", found.group()) and found.end() - found.start() < 5):
        return text, None
    family = _BODIES.get(found["body"].upper())
    rest = f"{text[: found.start()]} {text[found.end() :]}".strip(" ,;:-–/()")
    return (rest, family) if any(letter.isalpha() for letter in rest) else (text, family)


@lru_cache(maxsize=16384)
def understand(text: str, with_unit: bool = False) -> Wording:
    """Cuts up one label. Never fails; a text without meaning has no ideas. ``with_unit``: a unit stays words."""
    words = lexicon()
    text, limit_unit = without_limits(_TENTHS.sub(r"2.\1 mm", _PLURAL.sub("", text[:240])))
    label, unit, bare = _split(text, with_unit)
    cleaned = clean(label, numbered=not _counted(label, words))
    known = words.labels.get(key_of(tokens(cleaned))) if words.labels else None
    cleaned, method = _without_method(cleaned)
    found = _codes([token for token in tokens(_CODE.sub(r"\1\2", cleaned)) if token.raw != "\n"])
    found = _spelt_out(found, words)
    found, costs = respell(found, words, _cut_off(label, found))
    hits = _hits(found, costs, words)
    sizes = measures(found, [(hit.start, hit.end, _ideas_of(hit)) for hit in hits])
    whole, halves = _parts(found, hits, sizes.at, sizes.used)
    sign = next((token.raw for i, token in enumerate(found) if token.raw in "<>≤≥" and i not in sizes.used), "")
    telling = [hit for hit in hits if _ideas_of(hit) - SMALL]
    explained = {i for hit in telling for i in range(hit.start, hit.end)} | sizes.used | sizes.at.keys()
    number = number_left(cleaned, found, explained)
    return Wording(cleaned, whole, halves, unit or limit_unit, bare, method, known, sign, number)


# "Sorte/n", "Sorte(n)": one or several; "(s)" may be seconds.
_PLURAL = re.compile(r"(?<=[^\W\d_]{3})(?:\((?:n|en|es|er|ies)\)|/(?:n|en|ies))(?![^\W_])")
# "Refus 25/10": sieves in tenths of a millimetre.
_TENTHS = re.compile(r"(?<![\d.,/])2([258])/10(?:\s?mm)?(?![\d.,/])")
# "HL593622", "TN-12345": the number of a batch. The weight of a thousand corns may be "TKG1000".
_CODE = re.compile(r"(?<![^\W_])([^\W\d_]{1,6})[-/]?(?!1000(?!\d))(\d{4,})(?![^\W_])")


def _codes(found: list[Token]) -> list[Token]:
    """The tokens with the number of a batch as one word, which no list of words has."""
    result: list[Token] = []
    for token in found:
        before = result[-1] if result else None
        if before is not None and before.kind == "word" and token.glued and _CODE.fullmatch(before.raw + token.raw):
            result[-1] = Token(before.text + token.text, before.raw + token.raw, "word")
        else:
            result.append(token)
    return result


def _split(text: str, with_unit: bool) -> tuple[str, Unit | None, bool]:
    """A label, the unit in it, and whether the unit may be a word of the label just as well."""
    label, unit = (text, None) if with_unit else _take_unit(text)
    if unit is None and not with_unit:
        tidied, unit = _take_unit(clean(text))
        label = tidied if unit is not None else text
    if unit is not None and unit.dimension == "length":
        # The mm of a sieve, which is part of the label.
        return text, None, False
    if not any(letter.isalnum() for letter in label) or _NUMBER_ONLY.fullmatch(label):
        return text, unit, unit is not None
    # "Viscosity 8.6 °P" names a strength.
    strength = label[-1:].isdigit() and len(label) > 4
    return label, unit, unit is not None and (unit.doubtful or strength or _is_small_word(unit))


def _is_small_word(unit: Unit) -> bool:
    """ "PH DU MOÛT": DU is a word there."""
    first = fold(unit.text.split(" ", 1)[0])
    return any(FILLER in language.words.get(first, ()) for language in lexicon().languages)


def _take_unit(text: str) -> tuple[str, Unit | None]:
    whole = parse_unit(text)
    return ("", whole) if whole is not None and whole.label != "never" else split_label(text)


def _spelt_out(found: list[Token], words: Lexicon) -> list[Token]:
    """Letters with stops as words of their own where a wording has them so: "i.d. TrS"."""
    if not any(token.dotted for token in found):
        return found
    result: list[Token] = []
    for token, following in zip(found, [*found[1:], None], strict=True):
        letters = " ".join(token.text)
        further = f"{letters} {following.text}" if following else ""
        if token.dotted and (further in words.known or (letters in words.known and token.text not in words.known)):
            result += [Token(fold(letter), letter, "word") for letter in token.raw]
        else:
            result.append(token)
    return result


def _cut_off(label: str, found: list[Token]) -> Ideas:
    """Words that a stop cuts short ("Grobschr."); at the end of a label the stop may be lost."""
    stopped = {fold(word) for word in _STOPPED.findall(label)}
    last = next((token.text for token in reversed(found) if token.kind == "word"), "")
    return frozenset(stopped | {last})


_STOPPED = re.compile(r"([^\W\d_]{4,})\.")
_NUMBER_ONLY = re.compile(r"\W*(?:\d{1,2}\W*|[A-Za-z]\)\W*)")
_COUNTED = re.compile(r"\W*(\d{1,2}|[ivxIVX]{1,4})[.):]?\s+([^\W\d_]+)")


def _counted(label: str, words: Lexicon) -> bool:
    """True where the number at the start belongs to the wording: "1. Sorte"."""
    found = _COUNTED.match(label)
    return found is not None and f"{fold(found[1])} {fold(found[2])}" in words.known


# ---------------------------------------------------------------------------------------------- words to ideas


def _ideas_of(hit: Hit) -> Ideas:
    return frozenset().union(*(ideas for reading in hit.readings for ideas in reading.meanings))


def _hits(found: list[Token], costs: dict[int, float], words: Lexicon) -> list[Hit]:
    """The longest known wordings from left to right."""
    hits: list[Hit] = []
    place = 0
    while place < len(found):
        hit = _longest(found, place, words)
        if hit is None and found[place].kind == "word":
            hit = _compound(found[place], place, words)
        if hit is None or _is_mark(hit, found):
            place += 1
            continue
        cost = sum(costs.get(i, 0.0) for i in range(hit.start, hit.end))
        hits.append(hit._replace(cost=cost) if cost else hit)
        place = hit.end
    return hits


def _is_mark(hit: Hit, found: list[Token]) -> bool:
    """A capital by itself tells one row from another ("Extract C") and is no small word."""
    token = found[hit.start]
    if hit.end != hit.start + 1 or len(token.raw) != 1 or not token.raw.isupper() or not token.raw.isalpha():
        return False
    degree = hit.start > 0 and found[hit.start - 1].raw == "°"
    return (
        not degree
        and _ideas_of(hit) == FILLER
        and not all(other.raw.isupper() for other in found if other.kind == "word")
    )


def _longest(found: list[Token], place: int, words: Lexicon) -> Hit | None:
    for end in range(min(len(found), place + MOST_TOKENS), place, -1):
        run = found[place:end]
        known = words.find(key_of(run), "".join([token.raw for token in run if token.kind == "word"]))
        if known:
            return Hit(place, end, known[0], shouted=known[1])
    return None


def _compound(token: Token, place: int, words: Lexicon) -> Hit | None:
    cuts = words.cut(token.text)
    readings = tuple(Reading(_together(cut, language, words), language) for language, cut in cuts.items())
    return Hit(place, place + 1, readings) if readings else None


def _together(cut: tuple[str, ...], language: str, words: Lexicon) -> Alternatives:
    choices = [words.meanings(language, part) for part in cut]
    return tuple(frozenset().union(*chosen) for chosen in product(*choices))[:4]


# ---------------------------------------------------------------------------------------------- halves


def _parts(
    found: list[Token], hits: list[Hit], at: dict[int, Ideas], used: frozenset[int]
) -> tuple[Part, tuple[Part, ...]]:
    """The whole label and its halves between strokes."""
    inside = {i for hit in hits for i in range(hit.start, hit.end)}
    cuts = [i for i, token in enumerate(found) if token.kind == "break" and i not in inside and i not in used]
    taken = inside | used | _initials(found, inside) | _degrees(found)
    whole = _part(found, hits, at, taken, 0, len(found), "SLASH" if cuts else "")
    if not cuts:
        return whole, ()
    edges = [-1, *cuts, len(found)]
    halves = tuple(_part(found, hits, at, taken, left + 1, right, "") for left, right in pairwise(edges))
    return whole, halves


def _part(
    found: list[Token], hits: list[Hit], at: dict[int, Ideas], taken: set[int] | frozenset[int], start: int, end: int,
    extra: str,
) -> Part:  # fmt: skip
    own = [hit for hit in hits if start <= hit.start < end]
    fixed: set[str] = {extra} if extra else set()
    for place, ideas in at.items():
        if start <= place < end:
            fixed |= ideas
    if any(hit.shouted for hit in own):
        fixed.add("DOUBT")
    lost = tuple(found[i].text for i in range(start, end) if found[i].kind == "word" and i not in taken)
    explained = sum(len(found[i].text) for i in range(start, end) if found[i].kind == "word" and i in taken)
    explained += 3 * sum(1 for place in at if start <= place < end)
    measured = frozenset().union(*(ideas for place, ideas in at.items() if start <= place < end))
    guessed = sum(len(found[i].text) for hit in own if hit.cost >= 1 for i in range(hit.start, hit.end))
    bare = any(token.kind == "number" and i not in taken for i, token in enumerate(found[start:end], start))
    if bare and explained <= SHORT:
        # "N-1" is a year as well as a figure of nitrogen.
        fixed.add("DOUBT")
    cost = sum(hit.cost for hit in own)
    return Part(_combine(own, frozenset(fixed)), lost, explained, cost, guessed, measured)


def _combine(hits: list[Hit], fixed: Ideas) -> tuple[Ideas, ...]:
    """The sets of ideas that a run of hits can mean, kept to one language where its words have one in common."""
    if not hits:
        return (fixed,) if fixed else ()
    weight: dict[str, int] = {}
    for hit in hits:
        for language in {reading.language for reading in hit.readings}:
            weight[language] = weight.get(language, 0) + hit.end - hit.start
    best = max(weight.values())
    leading = {language for language, count in weight.items() if count == best}
    choices: list[list[Ideas]] = []
    for hit in hits:
        distinct = list(dict.fromkeys(ideas for reading in hit.readings for ideas in reading.meanings))
        if len(distinct) > 1:
            near = [r for r in hit.readings if r.language in leading]
            distinct = list(dict.fromkeys(ideas for reading in near for ideas in reading.meanings)) or distinct
        choices.append(distinct)
    while _count(choices) > MAX_READINGS:
        largest = max(range(len(choices)), key=lambda i: len(choices[i]))
        choices[largest] = choices[largest][:1]
    return tuple(dict.fromkeys(fixed.union(*chosen) for chosen in product(*choices)))


def _count(choices: list[list[Ideas]]) -> int:
    total = 1
    for choice in choices:
        total *= len(choice)
    return total


def _degrees(found: list[Token]) -> set[int]:
    """Letters of a unit that begins with the degree sign ("8.6 °P")."""
    return {i for i in range(1, len(found)) if found[i - 1].raw == "°" and found[i].glued and len(found[i].text) < 3}


def _initials(found: list[Token], inside: set[int]) -> set[int]:
    """Bracketed abbreviations that repeat the label by its initials explain themselves: "(F)" behind "Fine"."""
    initials = "".join(found[i].text[0] for i in range(len(found)) if found[i].kind == "word" and i in inside)
    explained: set[int] = set()
    for i in range(1, len(found) - 1):
        token = found[i]
        bracketed = found[i - 1].raw in "([" and found[i + 1].raw in ")]"
        if i not in inside and token.kind == "word" and bracketed and token.raw.isupper() and len(token.text) <= 5:
            letters = iter(initials)
            if all(letter in letters for letter in token.text):
                explained.add(i)
    return explained
