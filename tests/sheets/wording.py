"""Loads the wordings: labels, captions, column heads and phrases by language, the ones kept aside apart."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache
from importlib import import_module
from random import Random

LANGUAGES = ("en", "de", "fr", "nl", "es", "cs", "da", "it", "sk", "pl", "pt")
MAIN_LANGUAGES = LANGUAGES[:8]


def parse(text: str) -> dict[str, dict[str, tuple[str, ...]]]:
    """``[section]`` lines and ``key: wording | wording`` lines. A doubled key or an unknown form is an error."""
    sections: dict[str, dict[str, tuple[str, ...]]] = {}
    current: dict[str, tuple[str, ...]] = {}
    for line in text.strip().splitlines():
        line = line.strip()
        if line.startswith("["):
            current = sections.setdefault(line.strip("[]"), {})
            continue
        key, found, rest = line.partition(":")
        if not found or key in current:
            raise ValueError(f"bad or doubled line: {line!r}")
        current[key] = tuple(part.strip() for part in rest.split(" | ") if part.strip())
    return sections


@cache
def _language(language: str) -> dict[str, dict[str, tuple[str, ...]]]:
    return parse(import_module(f"tests.sheets.wordings.{language}").TEXT)


@cache
def _kept(language: str) -> dict[str, dict[str, tuple[str, ...]]]:
    texts: dict[str, str] = import_module("tests.sheets.kept_wordings").TEXTS
    return parse(texts[language]) if language in texts else {}


@dataclass(frozen=True, slots=True)
class Wording:
    """All wordings of one language, from the development part or from the part kept aside.

    ``avoid`` are pieces of text that would be untrue on a sheet: nothing of a 65 °C mash is called Congress wort.
    """

    language: str
    kept: bool
    avoid: tuple[str, ...] = ()

    def all(self, section: str, key: str) -> tuple[str, ...]:
        """Every wording of a key. Where the kept part has none, the development part's are used."""
        if self.kept:
            found = _kept(self.language).get(section, {}).get(key)
            if found:
                return found
        return _language(self.language).get(section, {}).get(key, ())

    def has(self, section: str, key: str) -> bool:
        return bool(self.all(section, key))

    def pick(self, rng: Random, section: str, key: str) -> str:
        found = self.all(section, key)
        found = tuple(f for f in found if not any(a in f.casefold() for a in self.avoid)) or found
        if not found:
            raise KeyError(f"{self.language}: no wording for [{section}] {key}")
        return rng.choice(found)
