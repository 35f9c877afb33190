"""Reads the label data of this folder."""

from __future__ import annotations

import json
from pathlib import Path
from typing import Any

import pytest

DATA = Path(__file__).parent / "data"


def rows(name: str) -> list[dict[str, Any]]:
    return [json.loads(line) for line in (DATA / name).read_text(encoding="utf-8").splitlines()]


@pytest.fixture(scope="session")
def seen() -> list[dict[str, Any]]:
    """Labels of published sheets and lists with the parameter that each means; "other:…" is none of the parameters."""
    return rows("seen.jsonl")


@pytest.fixture(scope="session")
def traps() -> list[dict[str, Any]]:
    """Pairs of published labels that are near in letters and far in meaning."""
    return rows("traps.jsonl")


@pytest.fixture(scope="session")
def kept_aside() -> list[dict[str, Any]]:
    """Labels written down before the rules, for a check that the rules were not made for."""
    return rows("kept_aside.jsonl")


@pytest.fixture(scope="session")
def wordings() -> list[dict[str, Any]]:
    """Wordings of many languages with the parameter that each means; common practice, no source."""
    return rows("wordings.jsonl")


@pytest.fixture(scope="session")
def false_friends() -> list[dict[str, Any]]:
    """Labels near to those of a parameter that mean another figure, or leave open which; common practice, no source."""
    return rows("false_friends.jsonl")
