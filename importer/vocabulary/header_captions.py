"""Captions of header entries ("Batch no.", "Charge/Los-Nummer") and the entry they stand for."""

from __future__ import annotations

import re
import tomllib
from collections.abc import Callable
from dataclasses import dataclass
from functools import cache, lru_cache
from pathlib import Path
from typing import Any

from importer.data import mappings_folder
from importer.errors import DataError
from importer.models import HEADER_KEYS
from importer.vocabulary.result_words import plain_word

Found = tuple[str, float]
EXTRA_KEYS = ("date", "ignore")
LONGEST = 80
"""Characters: a longer text is a sentence."""
MOST_WORDS = 9
DOUBTFUL, DOUBTFUL_WITH_COLON, PARTLY = 60.0, 85.0, 82.0
"""Scores of a caption that has other meanings, of the same with a colon behind, and of one known half of two."""
FUZZY_FROM, FUZZY_MARGIN = 86.0, 6.0
"""A misspelt caption must be this close to a known one, and this much closer than to any of another entry."""
_NUMBER = "#"


@dataclass(frozen=True, slots=True)
class CaptionTable:
    """Known captions. ``keys`` holds the certain entry by folded form, ``doubtful`` the possible one.

    ``worded`` and ``doubtful_worded`` have the same by all words in their order: "prodotto da" is not "prodotto".
    """

    worded: dict[str, str]
    doubtful_worded: dict[str, str]
    keys: dict[str, str]
    doubtful: dict[str, str]
    numbers: frozenset[str]
    endings: tuple[str, ...]
    small: frozenset[str]
    numbered: frozenset[str]


_WORD = re.compile(r"[^\W_]+|[#№]")
_NUMERO = re.compile(r"\b[nN]\s?[°º]\s?|(?<!\w)č\.|(?<!\w)č(?=\s)")
_PLURAL = re.compile(r"\((?:s|es|en|n|e|er)\)")


def _words(text: str) -> list[str]:
    if "(" in text:
        text = _PLURAL.sub("", text)
    if not text.isascii():
        text = _NUMERO.sub("no ", text)
    return _WORD.findall(plain_word(text))


def _fold(words: list[str], table: CaptionTable) -> str:
    """The comparison form: number words as one sign at the end, small words dropped, the rest in order of letters."""
    kept: list[str] = []
    numbered = False
    for word in words:
        if word in table.numbers:
            numbered = True
            continue
        if word.endswith(table.endings):
            ending = next((e for e in table.endings if word.endswith(e) and len(word) > len(e) + 2), "")
            numbered = numbered or bool(ending)
            word = word[: len(word) - len(ending)]
        if word not in table.small:
            kept.append(word)
    if not kept:
        kept = [word for word in words if word not in table.numbers]
    return " ".join([*sorted(kept), _NUMBER] if numbered else sorted(kept))


def _lists(raw: dict[str, Any], where: str) -> list[tuple[str, list[str]]]:
    known = {*HEADER_KEYS, *EXTRA_KEYS}
    for key, captions in raw.items():
        if key not in known:
            raise DataError(f"{where}: there is no header entry {key!r}")
        if not isinstance(captions, list) or not all(isinstance(caption, str) for caption in captions):
            raise DataError(f"{where}: {key} must be a list of captions")
    return list(raw.items())


def _add(table: CaptionTable, path: Path) -> None:
    where = f"mappings/headers/{path.name}"
    raw = tomllib.loads(path.read_text(encoding="utf-8"))
    for key, captions in _lists(raw.pop("doubtful", {}), where):
        for caption in captions:
            table.doubtful.setdefault(_fold(_words(caption), table), key)
            table.doubtful_worded.setdefault(" ".join(_words(caption)), key)
    for key, captions in _lists(raw, where):
        for caption in captions:
            words = _words(caption)
            _keep(table.keys, table.doubtful, _fold(words, table), key)
            _keep(table.worded, table.doubtful_worded, " ".join(words), key)


def _keep(certain: dict[str, str], doubtful: dict[str, str], form: str, key: str) -> None:
    known = certain.setdefault(form, key)
    if known != key:
        # Two languages, or two uses of one word: kept, but never certain.
        doubtful.setdefault(form, known if known != "ignore" else key)


@cache
def caption_table() -> CaptionTable:
    """The captions of mappings/headers. Raises DataError where a file cannot be used."""
    folder = mappings_folder() / "headers"
    try:
        common = tomllib.loads((folder / "common.toml").read_text(encoding="utf-8"))
        table = CaptionTable(
            worded={},
            doubtful_worded={},
            keys={},
            doubtful={},
            numbers=frozenset(plain_word(word) for word in common["number"]),
            endings=tuple(sorted(common["number_endings"], key=len, reverse=True)),
            small=frozenset(plain_word(word) for word in common["small"]),
            numbered=frozenset(common["numbered"]),
        )
        # English first: where two languages differ over a word, its reading is the likelier one.
        for path in sorted(folder.glob("*.toml"), key=lambda path: (path.stem != "en", path.stem)):
            if path.stem != "common":
                _add(table, path)
    except (KeyError, OSError, tomllib.TOMLDecodeError) as fault:
        raise DataError(f"mappings/headers: {fault}") from fault
    table.keys.pop("", None)
    table.doubtful.pop("", None)
    return table


_PARTS = re.compile(
    r"\s*[/|;(){}\[\]]\s*|\s+[-–—]\s+|\n"
    r"|(?<=[\u3040-\u9fff])\s+(?=[A-Za-z])|(?<=[a-z.])\s+(?=[\u3040-\u9fff])"
)


def header_caption(text: str) -> Found | None:
    """The header entry that a caption names, with a score of 0 to 100, or None.

    The entry is one of ``HEADER_KEYS``, "date" (a date of which nothing more is said), or "ignore" (a known caption
    that leads to no entry of ours: telephone, page, vehicle, customer number).
    """
    return _header_caption(text) if text and len(text) <= LONGEST else None


@lru_cache(maxsize=8192)
def _header_caption(text: str) -> Found | None:
    body = text.strip().strip("*•▪-–—").strip()
    colon = body.endswith((":", "："))
    body = body.rstrip(":： .…_")
    words = _words(body)
    if not words or len(words) > MOST_WORDS or not any(mark.isalpha() for mark in body):
        return None
    found = _exact(words, colon)
    if found:
        return found
    parts = [part for part in _PARTS.split(body) if part and _words(part)]
    if len(parts) > 1:
        return _of_parts(parts, colon)
    return _misspelt(words)


def exact_caption(text: str) -> Found | None:
    """As ``header_caption``, for a caption written without fault."""
    words = _words(text.rstrip(":： "))
    return _exact(words, True) if 0 < len(words) <= MOST_WORDS else None


def _exact(words: list[str], colon: bool) -> Found | None:
    table = caption_table()
    form, worded = _fold(words, table), " ".join(words)
    doubt = DOUBTFUL_WITH_COLON if colon else DOUBTFUL
    for certain, doubtful, text in (
        (table.worded, table.doubtful_worded, worded),
        (table.keys, table.doubtful, form),
    ):
        if text in doubtful:
            return doubtful[text], doubt
        if text in certain:
            return certain[text], 100.0
    if form.endswith(f" {_NUMBER}"):
        stem = form[:-2]
        key = table.keys.get(stem) or table.doubtful.get(stem)
        if key in table.numbered:
            return key, 100.0
        return ("ignore", 90.0) if key else None
    key = table.keys.get(f"{form} {_NUMBER}")
    if key == "certificate":
        # "Certificate of analysis" is the title of a sheet as often as a caption.
        return key, doubt
    return (key, 95.0) if key and key in table.numbered else None


def _of_parts(parts: list[str], colon: bool) -> Found | None:
    """Captions in two languages, or with an addition in brackets; None where the parts name different entries."""
    found = [_exact(_words(part), colon) for part in parts]
    known = [hit for hit in found if hit]
    wanted = {key for key, _ in known if key not in EXTRA_KEYS}
    if len(wanted) > 1:
        certain = {key for key, score in known if key not in EXTRA_KEYS and score >= PARTLY}
        if len(certain) != 1:
            return None
        wanted = certain
    if wanted:
        key = wanted.pop()
        best = max(score for name, score in known if name == key)
        # A first part that is known carries the caption; additions in brackets take little away.
        return key, best if len(known) == len(parts) or (found[0] and best >= 95) else min(best, PARTLY)
    if known and len(known) == len(parts):
        return ("date" if any(key == "date" for key, _ in known) else "ignore"), min(score for _, score in known)
    return None


_LOOKALIKES = str.maketrans("01|!i5869$£€", "ollllsbbgsee")
_PAIRS = (("rn", "m"), ("vv", "w"), ("cl", "d"))
SHORT = 4
"""Letters: so short a word must be right, for one letter makes another word of it (lot, lost)."""


def _skeleton(word: str) -> str:
    """A word with the letters that optical reading confuses brought into one."""
    word = word.translate(_LOOKALIKES)
    for pair, single in _PAIRS:
        word = word.replace(pair, single)
    return word


@cache
def _skeletons() -> dict[str, str]:
    """Captions by the skeletons of their words; "" where two entries share one."""
    found: dict[str, str] = {}
    for worded, key in caption_table().worded.items():
        form = " ".join(_skeleton(word) for word in worded.split())
        found[form] = key if found.get(form, key) == key else ""
    return found


@dataclass(frozen=True, slots=True)
class _Shape:
    """A known caption prepared for comparison: its words, the same as skeletons, and its entry."""

    words: tuple[str, ...]
    skeletons: tuple[str, ...]
    key: str


@cache
def _by_shape() -> dict[tuple[int, str, int], list[_Shape]]:
    """Certain captions by number of words, first letter of the skeleton and length, for a search among few."""
    table = caption_table()
    shapes: dict[tuple[int, str, int], list[_Shape]] = {}
    for worded, key in table.worded.items():
        if worded not in table.doubtful_worded:
            words = tuple(worded.split())
            skeletons = tuple(_skeleton(word) for word in words)
            shapes.setdefault((len(words), skeletons[0][:1], sum(map(len, skeletons))), []).append(
                _Shape(words, skeletons, key)
            )
    return shapes


def _misspelt(words: list[str]) -> Found | None:
    """A caption that optical reading has damaged: the same but for letters that look alike, or close to one entry."""
    if len(words) > 5 or sum(len(word) for word in words) < 5 or all(word.isdigit() for word in words):
        return None
    skeletons = [_skeleton(word) for word in words]
    key = _skeletons().get(" ".join(skeletons))
    if key:
        return key, 90.0
    shapes, length = _by_shape(), sum(map(len, skeletons))
    scored: dict[str, float] = {}
    slack = min(len(words), 2)
    for near in range(length - slack, length + slack + 1):
        for shape in shapes.get((len(words), skeletons[0][:1], near), ()):
            score = _closeness(words, skeletons, shape)
            if score > scored.get(shape.key, 0.0):
                scored[shape.key] = score
    ranked = sorted(scored.items(), key=lambda item: -item[1])
    if not ranked or ranked[0][1] < FUZZY_FROM or (len(ranked) > 1 and ranked[0][1] - ranked[1][1] < FUZZY_MARGIN):
        return None
    return ranked[0][0], round(min(ranked[0][1], 95.0), 1)


@cache
def _ratio() -> Callable[..., float]:
    # Loaded at the first need: sheets with a text layer are often read without it.
    from rapidfuzz import fuzz

    return fuzz.ratio


def _closeness(words: list[str], skeletons: list[str], shape: _Shape) -> float:
    """How alike two captions of equally many words are, 0 to 100; 0 where a short word or a length differs."""
    total = weight = 0.0
    for word, skeleton, other, bare in zip(words, skeletons, shape.words, shape.skeletons, strict=True):
        if word == other:
            score = 100.0
        elif min(len(word), len(other)) <= SHORT + 1 or abs(len(word) - len(other)) > 1:
            return 0.0
        else:
            score = _ratio()(skeleton, bare, score_cutoff=82)
            if not score:
                return 0.0
        total += score * len(other)
        weight += len(other)
    return total / weight
