"""What a misread figure may have been: offered where it makes the value possible and the checks hold, never applied."""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from importer.meaning.possible import class_of, within_possible, within_typical
from importer.meaning.recognised import Recognised
from importer.reading.numbers import read_number
from importer.store.corrections import Case, Record
from importer.store.places import Place, place_of
from importer.vocabulary.units import split_unit

MISREAD = frozenset({"outside-possible", "unusual-for-malt", "check-failed", "reading-doubtful"})
_ALIKE = {"1": "7", "7": "1", "0": "8", "8": "0"}
_SECOND, _POINT, _DIGIT, _COMMA = "another reading", "a lost decimal point", "a digit misread", "a comma for a point"
_BESIDE = "another value of the row"


@dataclass(frozen=True, slots=True)
class Repair:
    """A value that may have been printed: how it differs from what was read, and what it would make true."""

    value: str
    how: str
    effect: str


def repairs(case: Case, place: Place) -> list[Repair]:
    """Other readings of the place, and the one repair of a known kind under which all is well, where there is one."""
    figure = place.recognised
    flags = {doubt.flag for doubt in place.open_doubts}
    if figure is None:
        return []
    beside = figure.printed.rivals if "label-doubtful" in flags else ()
    offered = [_tried(case, place, value, _BESIDE) for value in _other_numbers(case, figure, beside)]
    if not MISREAD & flags:
        return [repair for repair, _ in offered]
    seen = _other_numbers(case, figure, [reading.text for reading in figure.printed.second])
    offered += [_tried(case, place, value, _SECOND) for value in seen]
    known = {repair.value for repair, _ in offered}
    if figure.number.kind == "number" and figure.unit is not None:
        good = [
            (repair, sound)
            for repair, sound in (_tried(case, place, value, how) for value, how in _likely(case, place))
            if sound
        ]
        if len({repair.value for repair, _ in good}) == 1 and good[0][0].value not in known:
            offered.append(good[0])
    return [repair for repair, _ in offered]


def _other_numbers(case: Case, figure: Recognised, texts: Sequence[str]) -> list[str]:
    """The plain numbers among texts that stand for the same place, where they differ from what was read."""
    found: dict[str, None] = {}
    for text in texts:
        number = read_number(text, case.kept.convention)
        if number is None:
            rest, unit = split_unit(text)
            number = read_number(rest, case.kept.convention) if unit is None or unit.code == figure.unit else None
        if number is None or number.value is None or number.bound is not None:
            continue
        if number.value != figure.number.value:
            found[f"{number.value:.{number.decimals}f}"] = None
    return list(found)


def _likely(case: Case, place: Place) -> Iterator[tuple[str, str]]:
    """Repairs that are possible and usual for the parameter, before any check is tried."""
    figure = place.recognised
    assert figure is not None
    header = case.built.analysis.header
    malt = class_of(header["malt"].value) if "malt" in header else None
    for text, how in _variants(figure.number.text, figure.number.value):
        number = read_number(text, ".")
        if number is None or number.value is None or number.value == figure.number.value:
            continue
        unit = figure.unit or ""
        if within_possible(figure.parameter, unit, number.value, malt) and within_typical(
            figure.parameter, unit, number.value, malt
        ):
            yield text, how


def _variants(text: str, value: float | None) -> Iterator[tuple[str, str]]:
    found = re.search(r"\d[\d.,]*", text)
    if found is None or value is None:
        return
    digits = found.group().rstrip(".,")
    if digits.isdigit():
        for at in range(1, len(digits)):
            yield f"{digits[:at]}.{digits[at:]}", _POINT
    elif digits.count(",") == 1 and "." not in digits:
        yield digits.replace(",", "."), _COMMA
    plain = digits if digits.isdigit() else f"{value:.{len(digits) - 1 - max(digits.rfind('.'), digits.rfind(','))}f}"
    for at, digit in enumerate(plain):
        if digit in _ALIKE:
            yield f"{plain[:at]}{_ALIKE[digit]}{plain[at + 1 :]}", f"{_DIGIT}: {digit} for {_ALIKE[digit]}"


def _tried(case: Case, place: Place, value: str, how: str) -> tuple[Repair, bool]:
    """A repair with what it would make true, and whether all would be well."""
    draft = Record(0, f"rows/{place.row}", "change", {"set": {"value": value}}, "", "")
    built = case.with_record(draft).built
    after = place_of(built, place.row)
    wrong = {doubt.flag for doubt in after.doubts} & {"outside-possible", "unusual-for-malt", "check-failed"}
    held = {check.check for check in built.analysis.checks if check.holds}
    gained = [check for check in case.built.analysis.checks if not check.holds and check.check in held]
    told = []
    if "outside-possible" in wrong:
        told.append("not possible for this parameter either")
    elif "unusual-for-malt" in wrong:
        told.append("possible, but unusual for malt")
    elif {"outside-possible", "unusual-for-malt"} & {doubt.flag for doubt in place.doubts}:
        told.append("a usual value")
    told += [f"then this holds: {check.check}" for check in gained]
    if "check-failed" in wrong:
        told.append("a check with other figures still fails")
    return Repair(value, how, "; ".join(told)), not wrong
