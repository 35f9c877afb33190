"""A result with its limits and method behind commas: "4.3 %, max. 4.5, EBC 4.2"."""

from __future__ import annotations

import re
from dataclasses import dataclass, replace

from importer.reading.numbers import Number, read_number
from importer.reading.values import split_value
from importer.vocabulary.captions import column_roles, family_statement
from importer.vocabulary.units import parse_unit

_COMMA = re.compile(r"[,;]\s+")
_METHOD = re.compile(r"^[^\d\W]+\.?\s+(?:[RB]-)?\d+(?:[.-]\d+)*\.?$")
_LOWER, _UPPER = ("min", ">"), ("max", "<")


@dataclass(frozen=True, slots=True)
class Listed:
    """The parts of a listed result, as printed. A limit by itself is ``spec``; two are ``low`` and ``high``."""

    value: str
    unit: str | None
    spec: str = ""
    low: str = ""
    high: str = ""
    method: str | None = None


def value_parts(text: str) -> Listed:
    """The parts of a value cell: those of a list, else the value, its unit and the limits in brackets."""
    return listed(text) or Listed(*split_value(text))


def listed(text: str) -> Listed | None:
    """The parts of "4.3 %, max. 4.5, EBC 4.2"; None where there is one part only, or one that is not understood."""
    first, *rest = [part.strip() for part in _COMMA.split(text)]
    value, unit, spec = split_value(first)
    number = _number(value)
    if not rest or spec or number is None or number.kind != "number" or number.bound in ("min", "max"):
        return None
    found = Listed(value, unit)
    for part in rest:
        taken = _with(found, part)
        if taken is None:
            return None
        found = taken
    return found


def _with(found: Listed, part: str) -> Listed | None:
    """What was found so far with one more part, None where the part is not understood or one too many."""
    if _METHOD.match(part) and family_statement(part) is not None:
        return replace(found, method=part) if found.method is None else None
    limit = _without_word(part)
    text, unit, more = split_value(limit)
    number = _number(text) or _number(limit)
    if number is None or more or number.bound not in ("range", *_LOWER, *_UPPER) or not _same(unit, found.unit):
        return None
    if not (found.spec or found.low or found.high):
        return replace(found, spec=limit)
    earlier = _number(found.spec)
    sides = (earlier.bound if earlier is not None else None, number.bound)
    if sides[0] in _LOWER and sides[1] in _UPPER:
        return replace(found, spec="", low=found.spec, high=limit)
    return replace(found, spec="", low=limit, high=found.spec) if sides[0] in _UPPER and sides[1] in _LOWER else None


def _without_word(part: str) -> str:
    """A limit without the word for limits before it ("specification 3.0 - 5.0")."""
    word, _, rest = part.partition(" ")
    return rest if rest and column_roles(word.rstrip(":")) == ("spec",) else part


def _number(text: str) -> Number | None:
    return read_number(text, None) if text else None


def _same(limit: str | None, own: str | None) -> bool:
    """True for a limit in the unit of the figure, or without any."""
    left, right = parse_unit(limit or ""), parse_unit(own or "")
    return left is None or right is None or left.code == right.code
