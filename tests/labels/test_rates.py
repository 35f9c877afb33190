"""How often labels are certain and right. Certain and wrong is never allowed; the other bounds are those reached, with
a little room."""

from __future__ import annotations

from collections import Counter
from typing import Any

from importer.meaning.labels import LabelQuery, Match, recognise
from importer.vocabulary.lexicon import lexicon
from importer.vocabulary.parameters import parameters
from importer.vocabulary.units import parse_unit

Row = dict[str, Any]


def match(row: Row) -> Match:
    unit = parse_unit(row["unit"]) if row.get("unit") else None
    return recognise(LabelQuery(row["label"], unit=unit, family=row.get("family"), value=row.get("value")))


def is_parameter(row: Row) -> bool:
    return row["parameter"] in parameters()


def right(found: Match, wanted: str) -> bool:
    """The same parameter, or its other moisture basis where the label says nothing of moisture."""
    if found.parameter == wanted:
        return True
    sibling = found.parameter and parameters()[found.parameter].sibling
    return found.basis is None and sibling == wanted


def known(row: Row) -> bool:
    return all(part in lexicon_names() for part in row["language"].split("+"))


def lexicon_names() -> set[str]:
    return {language.name for language in lexicon().languages}


def outcome(row: Row) -> str:
    found = match(row)
    if found.state == "unknown":
        return "unknown"
    return f"{found.state} {'right' if is_parameter(row) and right(found, row['parameter']) else 'wrong'}"


def failures(rows: list[Row]) -> list[str]:
    return [
        f"{row['label']!r}: {match(row).parameter}, not {row['parameter']}"
        for row in rows
        if outcome(row) == "sure wrong"
    ]


def test_published_labels_are_never_certain_and_wrong(seen: list[Row]) -> None:
    assert not failures(seen)


def test_published_labels_of_other_figures_are_never_certain(seen: list[Row]) -> None:
    others = [row for row in seen if not is_parameter(row)]
    assert len(others) > 40
    assert not [row["label"] for row in others if match(row).state == "sure"]


def test_published_labels_are_mostly_certain(seen: list[Row]) -> None:
    rows = [row for row in seen if is_parameter(row) and known(row)]
    found = Counter(outcome(row) for row in rows)
    assert len(rows) > 180
    assert found["sure right"] / len(rows) >= 0.8
    assert found["unknown"] / len(rows) <= 0.07


def test_labels_kept_aside_are_never_certain_and_wrong(kept_aside: list[Row]) -> None:
    assert not failures(kept_aside)


def test_labels_kept_aside_are_mostly_certain(kept_aside: list[Row]) -> None:
    rows = [row for row in kept_aside if is_parameter(row) and known(row)]
    found = Counter(outcome(row) for row in rows)
    assert len(rows) > 140
    assert found["sure right"] / len(rows) >= 0.93
    assert found["unknown"] / len(rows) <= 0.03


def test_neither_label_of_a_trap_is_certain_and_wrong(traps: list[Row]) -> None:
    assert len(traps) == 68
    wrong = []
    for row in traps:
        for side in "ab":
            found = recognise(LabelQuery(row[side], value=row.get(f"{side}_value")))
            wanted = row[f"{side}_parameter"].split("/")
            if found.state == "sure" and not any(right(found, name) for name in wanted if name in parameters()):
                wrong.append(f"{row[side]!r}: {found.parameter}, not {wanted}")
    assert not wrong


def test_traps_of_two_parameters_are_kept_apart(traps: list[Row]) -> None:
    """Both labels certain means two parameters, unless they mean the same."""
    for row in traps:
        first, second = (recognise(LabelQuery(row[side], value=row.get(f"{side}_value"))) for side in "ab")
        if first.state == second.state == "sure" and row["a_parameter"] != row["b_parameter"]:
            same = first.parameter == second.parameter and first.basis == second.basis
            assert not same or {row["a_parameter"], row["b_parameter"]} == {
                "extract_coarse_as_is",
                "extract_coarse_dry",
            }, row


def test_most_traps_are_certain_and_right(traps: list[Row]) -> None:
    sides = [(row[side], row[f"{side}_parameter"]) for row in traps for side in "ab"]
    sides = [(label, name) for label, name in sides if name in parameters() and label.isascii()]
    certain = [label for label, name in sides if recognise(LabelQuery(label)).state == "sure"]
    assert len(certain) / len(sides) >= 0.75
