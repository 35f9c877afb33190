"""A pytest plugin for mutation testing: every test starts with empty caches, so that it meets the mutant itself.

``[tool.mutmut]`` in pyproject.toml names it; ordinary runs do without.
"""

from __future__ import annotations

import functools
import gc
import tomllib
from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest

PROJECT = Path(__file__).parents[1] / "pyproject.toml"
MUTATED = frozenset(
    path.removesuffix(".py").replace("/", ".")
    for path in tomllib.loads(PROJECT.read_text(encoding="utf-8"))["tool"]["mutmut"]["only_mutate"]
)
_CACHED = type(functools.lru_cache(lambda: None))


@functools.cache
def _caches() -> tuple[Callable[[], None], ...]:
    found: list[Any] = [thing for thing in gc.get_objects() if isinstance(thing, _CACHED)]
    return tuple(thing.cache_clear for thing in found if thing.__module__ in MUTATED)


@pytest.fixture(autouse=True)
def _empty_caches() -> None:
    for clear in _caches():
        clear()
