"""The data files of this stage as plain tables, each read once."""

from __future__ import annotations

import tomllib
from functools import cache
from typing import Any

from importer.data import mappings_folder
from importer.errors import DataError


@cache
def table(name: str) -> dict[str, Any]:
    """A file of mappings/ by its name without ending. Raises DataError where it is missing or not TOML."""
    try:
        with (mappings_folder() / f"{name}.toml").open("rb") as file:
            return tomllib.load(file)
    except OSError as problem:
        raise DataError(f"mappings/{name}.toml cannot be read: {problem}") from None
    except tomllib.TOMLDecodeError as problem:
        raise DataError(f"mappings/{name}.toml is not valid TOML: {problem}") from None
