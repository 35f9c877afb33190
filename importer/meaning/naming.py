"""Names of parameters within a sentence."""

from __future__ import annotations

import re

from importer.vocabulary.parameters import parameters

_ORDINARY = re.compile(r"[A-Z][a-z]+")


def in_a_sentence(parameter: str) -> str:
    """The title without capitals at the beginning of ordinary words; DON, NDMA and pH stay as they are."""
    return _ORDINARY.sub(lambda word: word[0].lower(), parameters()[parameter].title)


def unit_not_in_use(parameter: str, unit: str) -> str:
    """Said once, whether the label or the row brings it up."""
    return f"{in_a_sentence(parameter)} is not printed in {unit}"
