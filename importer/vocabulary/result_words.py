"""Words of result and limit cells, read from mappings/results.toml."""

from __future__ import annotations

import re
import tomllib
import unicodedata
from dataclasses import dataclass
from functools import cache, lru_cache
from typing import Any, Literal

from importer.data import mappings_folder
from importer.errors import DataError

LimitBound = Literal["max", "min", "<", ">", "approx"]
BOUNDS: tuple[LimitBound, ...] = ("max", "min", "<", ">", "approx")
_COMBINING = re.compile("[\u0300-\u036f\u20d0-\u20ff]")


@lru_cache(maxsize=16384)
def plain_word(text: str) -> str:
    """A word for comparison: no case, no accents, single spaces, no full stop at the end."""
    return " ".join(plain_lines(text).split()).rstrip(".").rstrip()


def plain_lines(text: str) -> str:
    """A text of any length without case and accents."""
    plain = text.casefold()
    return plain if plain.isascii() else _COMBINING.sub("", unicodedata.normalize("NFKD", plain.replace("’", "'")))


@dataclass(frozen=True, slots=True)
class ResultWords:
    """``before`` and ``after`` give the comparison that a plain word beside a number means.

    ``before_words`` and ``after_words`` are the same words, longest first, as one alternative of a pattern.
    ``described_as_written`` are the words for results with their accents. ``allowed`` holds every single word that may
    stand beside a number in a value.
    """

    not_detected: frozenset[str]
    blank: frozenset[str]
    described: frozenset[str]
    described_as_written: frozenset[str]
    before: dict[str, LimitBound]
    after: dict[str, LimitBound]
    range_between: frozenset[str]
    range_signs: tuple[str, ...]
    range_before: frozenset[str]
    range_and: frozenset[str]
    allowed: frozenset[str]


def _plain(raw: Any, where: str) -> list[str]:
    if not isinstance(raw, list) or not all(isinstance(entry, str) for entry in raw):
        raise DataError(f"mappings/results.toml: {where} must be a list of words")
    return [plain_word(entry) or entry for entry in raw]


@cache
def result_words() -> ResultWords:
    """The words of mappings/results.toml.

    Raises DataError where the file cannot be used.
    """
    path = mappings_folder() / "results.toml"
    try:
        raw = tomllib.loads(path.read_text(encoding="utf-8"))
        before: dict[str, LimitBound] = {}
        after: dict[str, LimitBound] = {}
        for bound in BOUNDS:
            before |= dict.fromkeys(_plain(raw["limits"][bound]["before"], f"limits.{bound}"), bound)
            after |= dict.fromkeys(_plain(raw["limits"][bound]["after"], f"limits.{bound}"), bound)
        spans = raw["range"]
        between, joins = _plain(spans["between"], "range.between"), _plain(spans["and"], "range.and")
        opening = _plain(spans["before"], "range.before")
        beside = [*before, *after, *between, *joins, *opening]
        return ResultWords(
            not_detected=frozenset(_plain(raw["not_detected"]["words"], "not_detected")),
            blank=frozenset(_plain(raw["blank"]["words"], "blank")),
            described=frozenset(_plain(raw["described"]["words"], "described")),
            described_as_written=frozenset(word.casefold() for word in raw["described"]["words"]),
            before=before,
            after=after,
            range_between=frozenset(between),
            range_signs=tuple(spans["signs"]),
            range_before=frozenset(opening),
            range_and=frozenset(joins),
            allowed=frozenset(part for word in beside for part in word.replace(".", " ").split()),
        )
    except (KeyError, tomllib.TOMLDecodeError) as fault:
        raise DataError(f"mappings/results.toml: {fault}") from fault
