"""Files that a brewer writes: TOML, checked entry by entry, with errors that say where and what would be right."""

from __future__ import annotations

import math
import tomllib
from collections.abc import Iterable
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from importer.errors import OwnFileError
from importer.models import FAMILIES, Family
from importer.vocabulary.nearest import did_you_mean
from importer.vocabulary.parameters import Parameter, parameters
from importer.vocabulary.units import Unit, parse_unit

MOST_BYTES = 1_000_000
_FEW = 20


def read_toml(path: Path) -> dict[str, Any]:
    """The file as a table. Raises OwnFileError."""
    try:
        if not path.is_file():
            raise OwnFileError(f"{path}: there is no such file.")
        if path.stat().st_size > MOST_BYTES:
            raise OwnFileError(f"{path} is too large: more than {MOST_BYTES // 1000} kB.")
        return tomllib.loads(path.read_bytes().decode("utf-8-sig"))
    except OSError as error:
        raise OwnFileError(f"{path} cannot be read: {error.strerror or error}.") from None
    except UnicodeDecodeError:
        raise OwnFileError(f"{path} is not UTF-8 text. Save it as UTF-8.") from None
    except (tomllib.TOMLDecodeError, RecursionError) as error:
        hint = " A number has a decimal point, a text stands in quotes."
        raise OwnFileError(f"{path} is not valid TOML: {error or 'too deep'}.{hint}") from None


@dataclass(frozen=True, slots=True)
class Entry:
    """One table of a file, or the ``whole`` of it. ``where`` names it in errors."""

    raw: dict[str, Any]
    where: str
    whole: bool = False

    def fault(self, message: str) -> OwnFileError:
        """An error that says where."""
        return OwnFileError(f"{self.where}: {message}")

    def only(self, keys: Iterable[str]) -> None:
        """Refuses keys that are not known, with the nearest that are."""
        known = list(keys)
        for name in self.raw:
            if name not in known:
                raise self.fault(f"there is no key {name!r}.{_suggest(name, known)}")

    def text(self, name: str, *, needed: bool = False) -> str:
        """A text; empty where it is left out and not needed."""
        value = self.raw.get(name)
        if value is None and not needed:
            return ""
        if not isinstance(value, str) or not value.strip():
            raise self.fault(f"{name} must be a text in quotes.")
        return value.strip()

    def flag(self, name: str) -> bool:
        """True or false; false where it is left out."""
        value = self.raw.get(name, False)
        if not isinstance(value, bool):
            raise self.fault(f"{name} must be true or false.")
        return value

    def number(self, name: str, *, low: float = -math.inf, high: float = math.inf) -> float | None:
        """A number between two ends; None where it is left out."""
        value = self.raw.get(name)
        if value is None:
            return None
        if isinstance(value, bool) or not isinstance(value, (int, float)) or not math.isfinite(value):
            raise self.fault(f"{name} must be a number with a decimal point, without a unit.")
        if not low <= value <= high:
            raise self.fault(f"{name} = {value:g} is not possible: it must lie between {low:g} and {high:g}.")
        return float(value)

    def needed(self, name: str, *, low: float = -math.inf, high: float = math.inf) -> float:
        """A number that has to be there."""
        value = self.number(name, low=low, high=high)
        if value is None:
            raise self.fault(f"{name} is missing.")
        return value

    def tables(self, name: str) -> list[Entry]:
        """The tables of a list, each with its number in ``where``."""
        raw = self.raw.get(name, [])
        if not isinstance(raw, list) or not all(isinstance(one, dict) for one in raw):
            raise self.fault(f"{name} must be a list of tables.")
        shown = f"[[{name}]]" if self.whole else name
        return [Entry(one, f"{self.where}, {shown} {number}") for number, one in enumerate(raw, 1)]

    def table(self, name: str) -> Entry | None:
        """A table within this one; None where it is left out."""
        raw = self.raw.get(name)
        if raw is None:
            return None
        if not isinstance(raw, dict):
            raise self.fault(f"{name} must be a table: {{ value = …, unit = … }}.")
        return Entry(raw, f"{self.where}, {name}")

    def parameter(self) -> Parameter:
        """The parameter that is named, by its name or its title."""
        name = self.text("parameter", needed=True)
        by_title = {parameter.title.casefold(): parameter for parameter in parameters().values()}
        found = parameters().get(name) or by_title.get(name.casefold())
        if found is None:
            raise self.fault(f"there is no parameter {name!r}.{_suggest(name, [*parameters(), *by_title])}")
        return found

    def family(self) -> Family | None:
        """The method family that is named; None where it is left out."""
        name = self.text("family")
        if not name:
            return None
        found = next((family for family in FAMILIES if family.casefold() == name.casefold()), None)
        if found is None:
            raise self.fault(f"there is no method family {name!r}; it is EBC, IoB or ASBC.")
        return found

    def unit(self, parameter: Parameter) -> Unit | None:
        """The unit that is named, one in use for the parameter; None where it is left out."""
        name = self.text("unit")
        if not name:
            return None
        found = parse_unit(name)
        usable = dict.fromkeys(code for codes in parameter.printed_units.values() for code in codes)
        usable |= dict.fromkeys(parameter.units.values())
        if found is None or found.code not in usable:
            raise self.fault(f"{name!r} is no unit for {parameter.title.lower()}; in use are {', '.join(usable)}.")
        return found


def _suggest(name: str, known: Iterable[str]) -> str:
    names = list(known)
    return did_you_mean(name, names) or (f" Known are: {', '.join(names)}." if len(names) < _FEW else "")
