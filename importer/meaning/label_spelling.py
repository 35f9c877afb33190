"""Misspelt and misread words of labels: letters that optical reading confuses, lost accents, small slips."""

from __future__ import annotations

import re
from bisect import bisect_left
from collections import defaultdict
from collections.abc import Iterable
from dataclasses import dataclass
from functools import cache, lru_cache

from importer.meaning.tables import table
from importer.vocabulary.caption_words import caption_table
from importer.vocabulary.column_heads import head_table
from importer.vocabulary.lexicon import Lexicon, concepts
from importer.vocabulary.text import LOST, Token, fold

SHORTEST = 5
"""Letters: shorter words are taken as they stand or not at all, for one letter makes another word of them."""
LONG = 8
"""Letters: words from here on may be two letters off."""
SHORTEST_CUT = 4
"""Letters that are left of a shortened word ("Wilg.") at least."""
CERTAIN = 7
"""Letters of a reading in mappings/misread.toml from which it stands for its word and nothing else."""
OTHER_MATTER = frozenset({"BARLEY", "PRODUCT"})
"""Ideas of what was examined where it is no malt."""
TOO_FAR = 2.0
"""Cost of a reading that is never certain."""
LOOK_ALIKE = 0.5
"""Cost of letters that optical reading confuses; an ordinary slip costs 1."""

_ALIKE = (
    ("rn", "m"),
    ("ri", "n"),
    ("vv", "w"),
    ("ii", "u"),
    ("cl", "d"),
    ("1", "l"),
    ("i", "l"),
    ("j", "l"),
    ("0", "o"),
    ("5", "s"),
    ("8", "b"),
)
_UMLAUTS = (("ae", "a"), ("oe", "o"), ("ue", "u"), ("aa", "a"))


@dataclass(frozen=True, slots=True)
class _Spelling:
    """All words of all wordings; by look-alike form; by length and start or end; by length; in order."""

    known: frozenset[str]
    alike: dict[str, tuple[str, ...]]
    near: dict[tuple[int, str], list[str]]
    by_length: dict[int, list[str]]
    listed: list[str]


@lru_cache(maxsize=2)
def _spelling(words: Lexicon) -> _Spelling:
    known = set(" ".join(words.known).split(" "))
    for language in words.languages:
        known.update(" ".join(language.stems).split(" "))
    alike: dict[str, set[str]] = defaultdict(set)
    by_length: dict[int, list[str]] = defaultdict(list)
    near: dict[tuple[int, str], list[str]] = defaultdict(list)
    # Words of captions and column heads are no misspelt labels ("votre", "Plombe").
    others = {word for phrases in _other_phrases() for phrase in phrases for word in phrase.split(" ")}
    listed = sorted(word for word in known if len(word) >= SHORTEST and word.isalpha())
    for word, form in zip(listed, look("\n".join(listed)).split("\n"), strict=True):
        alike[form].add(word)
        by_length[len(word)].append(word)
        near[len(word), word[0]].append(word)
        near[len(word), word[-2:]].append(word)
    return _Spelling(
        frozenset(known | others),
        {form: tuple(sorted(found)) for form, found in alike.items()},
        dict(near),
        dict(by_length),
        listed,
    )


def _other_phrases() -> tuple[Iterable[str], ...]:
    captions = caption_table()
    return captions.worded, captions.doubtful_worded, head_table().words


def look(word: str) -> str:
    """A word as it looks: letters that optical reading takes for each other are one."""
    for seen, meant in _ALIKE:
        word = word.replace(seen, meant)
    return word


def respell(
    found: list[Token], words: Lexicon, cut_off: frozenset[str] = frozenset()
) -> tuple[list[Token], dict[int, float]]:
    """Puts known words in the place of misread ones and of those that are ``cut_off``; tells which tokens were changed
    and at what cost."""
    needed = [i for i, token in enumerate(found) if token.kind == "word" and not _plain(token, words)]
    if not needed:
        return found, {}
    spelling = _spelling(words)
    result: list[Token] = []
    costs: dict[int, float] = {}
    place = 0
    while place < len(found):
        token = found[place]
        run = _glued(found, place)
        if run > place + 1:
            word = _known_run("".join(t.raw for t in found[place:run]), spelling)
            if word:
                costs[len(result)] = LOOK_ALIKE
                result.append(Token(word, word, "word"))
                place = run
                continue
        if token.text in misread() and not _plain(token, words):
            if len(token.text) < CERTAIN:
                costs[len(result)] = LOOK_ALIKE
            token = _respelt(token, misread()[token.text])
        elif token.kind == "word" and token.text not in spelling.known:
            beside = (found[place - 1].text if place else "", found[place + 1].text if place + 1 < len(found) else "")
            word = _completed(token.text, words, spelling) if token.text in cut_off else None
            cost = LOOK_ALIKE
            if word is None:
                word, cost = _nearest(token, beside, words, spelling)
            if cost:
                costs[len(result)] = cost
            if word:
                token = _respelt(token, word)
        result.append(token)
        place += 1
    return result, costs


def _respelt(token: Token, word: str) -> Token:
    return Token(word, word, "word", token.dotted, token.glued)


@cache
def misread() -> dict[str, str]:
    """Short words by what they are misread as, from mappings/misread.toml."""
    return {seen: word for word, line in table("misread")["words"].items() for seen in line.split(", ")}


def _completed(text: str, words: Lexicon, spelling: _Spelling) -> str | None:
    """The word that a shortened one stands for, where all words that begin so mean the same."""
    if len(text) < SHORTEST_CUT or _derived(text, words):
        return None
    listed = spelling.listed
    found: list[str] = []
    for word in listed[bisect_left(listed, text) :]:
        if not word.startswith(text):
            break
        # What is joined on to a word that was found already is no other reading of the same letters.
        if not (found and word.startswith(found[-1])):
            found.append(word)
    if not found or len(found[0]) < len(text) + 2 or not _ideas(found[0], words):
        return None
    return max(found, key=len) if _same(tuple(found), words) else None


def _plain(token: Token, words: Lexicon) -> bool:
    return token.text in words.known or words.find(token.text, token.raw) is not None


def _glued(found: list[Token], place: int) -> int:
    """The end of a run of letters and single figures without gaps ("m0isture")."""
    end = place + 1
    while end < len(found) and found[end].glued and (found[end].kind in ("word", "number") or found[end].raw == "|"):
        end += 1
    kinds = {found[i].kind for i in range(place, end)}
    return (
        end
        if "word" in kinds and len(kinds) > 1 and any(len(found[i].text) > 1 for i in range(place, end))
        else place + 1
    )


def _known_run(raw: str, spelling: _Spelling) -> str | None:
    if sum(c.isdigit() for c in raw) > 2 or not raw[0].isalnum():
        return None
    form = look(fold(raw.replace("|", "l")))
    found = spelling.alike.get(form, ())
    return found[0] if len(found) == 1 and len(raw) >= SHORTEST else None


def _nearest(token: Token, beside: tuple[str, str], words: Lexicon, spelling: _Spelling) -> tuple[str | None, float]:
    text = token.text
    if len(text) < SHORTEST:
        return None, 0.0
    said = _derived(text, words)
    if said:
        # An ending or a compound that no list has: a slip of a listed word of another meaning looks the same.
        near = [word for word, _ in _near(text, spelling, 1)]
        if any(_ideas(word, words) != said for word in near):
            return None, TOO_FAR
        return (near[0], 0.0) if len(near) == 1 else (None, 0.0)
    for seen, meant in _UMLAUTS:
        if seen in text[:-2] and text.replace(seen, meant) in spelling.known:
            return text.replace(seen, meant), 0.0
    if LOST in text:
        return _with_lost(text, words, spelling)
    sharp = fold(re.sub("(?<=[a-zäöü])B", "ss", token.raw))
    if sharp != text and sharp in spelling.known:
        return sharp, LOOK_ALIKE
    alike = spelling.alike.get(look(text), ())
    if alike:
        return (alike[0], LOOK_ALIKE) if _same(alike, words) else (None, 0.0)
    return _slip(text, beside, words, spelling)


def _derived(text: str, words: Lexicon) -> frozenset[str]:
    """The ideas of a word that is known by its stem or its parts only; none where it is not."""
    if words.find(text, text):
        return _ideas(text, words)
    cuts = words.cut(text)
    return frozenset().union(*(_ideas(part, words, language) for language, cut in cuts.items() for part in cut))


def _ideas(word: str, words: Lexicon, language: str = "") -> frozenset[str]:
    known = words.find(word, word)
    readings = known[0] if known else ()
    chosen = [reading for reading in readings if reading.language == language] or readings
    said = frozenset().union(*(ideas for reading in chosen for ideas in reading.meanings))
    return said & concepts().plain | (said & concepts().foreign.keys())


def _with_lost(text: str, words: Lexicon, spelling: _Spelling) -> tuple[str | None, float]:
    pattern = re.compile(re.escape(text).replace(re.escape(LOST), "[a-z]{1,2}"))
    lengths = range(len(text), len(text) + text.count(LOST) + 1)
    found = [word for n in lengths for word in spelling.by_length.get(n, ()) if pattern.fullmatch(word)]
    if not found or not _same(tuple(found), words):
        return None, 0.0
    # One lost letter in a word of eight leaves nothing open.
    return found[0], (0.0 if len(text) >= LONG and text.count(LOST) == 1 else LOOK_ALIKE)


def _near(text: str, spelling: _Spelling, most: int) -> list[tuple[str, float]]:
    """Known words at most so many letters off, nearest first."""
    from rapidfuzz.distance import OSA
    from rapidfuzz.process import extract

    # A word a letter or two off starts or ends as it should; the others are not worth the time.
    lengths = range(len(text) - most, len(text) + most + 1)
    pool = list({word for n in lengths for part in (text[0], text[-2:]) for word in spelling.near.get((n, part), ())})
    found = extract(text, pool, scorer=OSA.distance, score_cutoff=most, limit=12)
    return [(word, distance) for word, distance, _ in found]


def _slip(text: str, beside: tuple[str, str], words: Lexicon, spelling: _Spelling) -> tuple[str | None, float]:
    """The word at most one letter off (two in long words), where no word of another meaning is as near."""
    most = 2 if len(text) >= LONG else 1
    found = _near(text, spelling, most)
    if not found:
        return None, 0.0
    least = found[0][1]
    nearest = tuple(word for word, distance in found if distance == least)
    # Two letters off, every word within reach has to mean the same.
    every = tuple(word for word, _ in found) if least > 1 else nearest
    if not _same(every, words):
        return None, 0.0
    # That no malt was examined is too much to say by a word that is two letters off ("Adjuntamos", "adjuntos").
    if least > 1 and any(_tells_matter(word, words) for word in nearest):
        return None, 0.0
    # Words that mean the same by themselves may still be parts of different wordings.
    fitting = [w for w in nearest if f"{beside[0]} {w}" in words.known or f"{w} {beside[1]}" in words.known]
    return (fitting or nearest)[0], float(least)


def _same(found: tuple[str, ...], words: Lexicon) -> bool:
    """True where all words mean the same."""
    first = _sense(found[0], words)
    return all(_sense(word, words) == first for word in found[1:])


def _sense(word: str, words: Lexicon) -> frozenset[object]:
    known = words.find(word, word)
    return frozenset(reading.meanings for reading in known[0]) if known else frozenset({word})


def _tells_matter(word: str, words: Lexicon) -> bool:
    """True for words that say what was examined where it is not malt."""
    known = words.find(word, word)
    meanings = [ideas for reading in (known[0] if known else ()) for ideas in reading.meanings]
    return any(not OTHER_MATTER.isdisjoint(ideas) for ideas in meanings)
