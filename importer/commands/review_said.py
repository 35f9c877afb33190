"""A line of a filled-in list of corrections: what it says, and whether that has been taken already."""

from __future__ import annotations

import contextlib

from importer.meaning.header import read_entry
from importer.models import FAMILIES
from importer.store import rows, settling
from importer.store.corrections import HEADER, Case, Record, RefusedError
from importer.store.places import place_of
from importer.vocabulary.parameters import parameters
from importer.vocabulary.units import parse_unit


def stands_as_said(case: Case, row: dict[str, str], person: str) -> bool:
    """True where this person has said exactly this already, and nothing was said of it since."""
    say, target = " ".join(row["say"].casefold().split()), row["row"].strip()
    key = target.removeprefix("head:") if target.startswith("head:") else None
    about = [
        one
        for one in case.records
        if not one.withdrawn
        and ("column" in one.value) == (say == "column")
        and one.action != "withdraw"
        and (one.target == f"rows/{target}" if key is None else key in one.value.get("set", {}))
    ]
    if not about or about[-1].person != " ".join(person.split()):
        return False
    last = about[-1]
    if key is not None:
        field = case.built.analysis.header.get(key)
        shown = field.value if field is not None and say == "accept" else None
        wanted = read_entry(key, row["value"]) if say == "correct" and row["value"].strip() else shown
        return last.target == HEADER and bool(last.value["set"][key] == wanted)
    if say != "correct":
        return last.action == {"accept": "confirm", "not a figure": "reject", "column": "confirm"}.get(say)
    return last.action == "change" and _is_said(case, int(target), last, row)


def _is_said(case: Case, number: int, last: Record, row: dict[str, str]) -> bool:
    recognised = place_of(case.built, number).recognised
    if recognised is None:
        return False
    said = {name: text for name, text in corrected(row).items() if text.strip()}
    if "value" in said:
        with contextlib.suppress(RefusedError):
            said["value"] = settling.plain_result(said["value"])
    if "unit" in said and (unit := parse_unit(said["unit"])) is not None:
        said["unit"] = unit.code
    stands: dict[str, str | None] = {}
    stands.update(parameter=recognised.parameter, family=recognised.family)
    stands.update(last.value["set"])
    if "unit" in stands:
        stands["unit"] = recognised.unit
    return bool(said) and all(stands.get(name) == text for name, text in said.items())


def corrected(row: dict[str, str]) -> dict[str, str]:
    """What a line that says `correct` gives, by field; the parameter by its name, family and basis as they are kept."""
    family, basis = row["family"].strip(), "-".join(row["basis"].casefold().split())
    kept = next((name for name in FAMILIES if name.casefold() == family.casefold()), family)
    return {
        "value": row["value"],
        "unit": row["unit"],
        "parameter": _parameter(row["is_parameter"]),
        "family": kept,
        "basis": basis,
    }


def _parameter(text: str) -> str:
    """The name of a parameter that may be given by its title."""
    wanted = rows.key(text)
    return next((name for name, entry in parameters().items() if wanted and rows.key(entry.title) == wanted), text)
