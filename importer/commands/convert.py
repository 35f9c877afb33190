"""The command ``convert``: one value, every way that leads to the other unit, and what stands behind each."""

from __future__ import annotations

import json
import re
from dataclasses import dataclass
from typing import TYPE_CHECKING, Any

from importer.commands.run import READ, UsageError
from importer.guard import RatioRule
from importer.output.terminal import Style, clean, wrap
from importer.output.words import STEP_WORDS

if TYPE_CHECKING:
    from importer.meaning.one_value import Conversion


@dataclass(frozen=True, slots=True)
class Request:
    """A value, its unit, the unit wanted, and what else is known: moisture and extract in %, density, °Plato."""

    value: float
    unit: str
    to: str
    moisture: float | None = None
    extract: float | None = None
    density: float | None = None
    plato: float | None = None
    ratio_rule: RatioRule = "published"


_NUMBER = re.compile(r"[+\-−]?(?:\d+(?:[.,]\d*)?|[.,]\d+)(?:[eE][+\-]?\d+)?")
# Three figures after a single sign: a thousand to one reader, a number near one to another.
_THOUSANDS = re.compile(r"[+\-−]?[1-9]\d{0,2},\d{3}")


def number(text: str) -> float:
    """The number that a person typed, with a decimal point or comma. Raises UsageError where it is none or two."""
    plain = text.strip()
    if not _NUMBER.fullmatch(plain):
        raise UsageError(
            f"VALUE: {text!r} is not a number. Write it like 3.5 or 3,5, without signs between the thousands."
        )
    if _THOUSANDS.fullmatch(plain):
        whole = plain.replace(",", "")
        raise UsageError(f"{text!r} can be read in two ways. Write {whole} or {plain.replace(',', '.')}.")
    return float(plain.replace(",", ".").replace("−", "-"))


def convert(request: Request, *, as_json: bool) -> int:
    """Prints the conversions. Raises UsageError where there is none, with the reason."""
    from importer.meaning.one_value import ConversionError, convert_value

    try:
        found = convert_value(
            request.value,
            request.unit,
            request.to,
            moisture=request.moisture,
            extract=request.extract,
            density=request.density,
            plato=request.plato,
            ratio_rule=request.ratio_rule,
        )
    except ConversionError as error:
        message = str(error)
        raise UsageError(message[:1].upper() + message[1:]) from None
    if as_json:
        print(json.dumps(_document(request, found), indent=2, ensure_ascii=False, allow_nan=False))
    else:
        style = Style()
        print("\n\n".join(_told(request, conversion, style) for conversion in found))
    return READ


def _document(request: Request, found: list[Conversion]) -> dict[str, Any]:
    return {
        "value": request.value,
        "unit": request.unit,
        "to": request.to,
        "conversions": [
            {
                "value": conversion.value,
                "unit": conversion.unit,
                "topic": conversion.topic,
                "kind": conversion.kind,
                "estimated": conversion.estimated,
                "spread": conversion.spread,
                "formula": conversion.formula,
                "source": conversion.source,
                "notes": list(conversion.notes),
                "steps": [step.model_dump(by_alias=True) for step in conversion.steps],
            }
            for conversion in found
        ],
    }


def _told(request: Request, conversion: Conversion, style: Style) -> str:
    spread = f" ± {conversion.spread:g}" if conversion.spread is not None else ""
    sign = "≈" if conversion.estimated else "="
    result = f"{request.value:g} {clean(request.unit)} {sign} {conversion.value:g}{spread} {conversion.unit}"
    details = [
        ("topic", conversion.topic),
        ("kind", f"{conversion.kind}: {STEP_WORDS[conversion.kind]}"),
        ("formula", conversion.formula),
        ("source", conversion.source),
        *(("note", note) for note in conversion.notes),
    ]
    lines = [style(result, "bold")]
    for name, text in details:
        first, *more = wrap(text, style.width - 12, " " * 12) or [""]
        lines += [f"  {name:<10}" + first[12:], *more]
    return "\n".join(lines)
