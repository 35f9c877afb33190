"""A person's words on an analysis: checked, recorded with who, when, before and after, and laid over at once.

Every save names the revision that the person was looking at. Where the analysis has changed since, it is refused.
"""

from __future__ import annotations

import re
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace
from typing import Any

from importer.meaning.build import REVIEW_FLAGS
from importer.meaning.header import read_entry
from importer.meaning.said import NEVER_SETTLED
from importer.models import FAMILIES, HEADER_KEYS, Flag
from importer.printed import NO_HEAD
from importer.reading.numbers import read_number
from importer.store import learned, lessons, rows
from importer.store.corrections import (
    HEADER,
    SHEET,
    Action,
    Case,
    Record,
    RefusedError,
    StaleError,
    following,
    insert,
    load,
    records_of,
    write_standing,
)
from importer.store.learned import Lesson
from importer.store.ledger import Store, now
from importer.store.places import Place, place_of, told_of
from importer.store.schema import transaction
from importer.vocabulary.parameters import parameters
from importer.vocabulary.units import parse_unit

# The doubt that is settled by saying what the field is.
SETTLES: Mapping[str, Flag] = {
    "value": "reading-doubtful",
    "unit": "unit-assumed",
    "parameter": "label-doubtful",
    "family": "family-assumed",
    "basis": "moisture-basis-assumed",
}
MOST_LETTERS = 200
_GROUP = re.compile(r",\d{3}(?!\d)")
"""A comma that may part thousands just as well."""


@dataclass(frozen=True, slots=True)
class Saved:
    """What became of a save: the analysis as it stands, the number of the record, and what was learned from it (or was
    before it was taken back)."""

    case: Case
    record: int
    lessons: tuple[Lesson, ...] = ()


# ---------------------------------------------------------------------------------------------- the words


def accept(store: Store, case: Case, row: int, person: str) -> Saved:
    """The figure is right as it is shown: all its doubts are settled. Raises RefusedError, StaleError."""
    place = place_of(case.built, row)
    if place.recognised is None or place.figure is None:
        raise RefusedError("Say first which parameter this row is.")
    told = {doubt.flag for doubt in place.doubts}
    if told & NEVER_SETTLED:
        raise RefusedError(
            "The sheet gives no moisture, so this figure cannot be brought to dry malt. Give the malt's moisture as a "
            "missing row, or say that the figure is on dry malt."
        )
    value = {
        "settled": sorted(told & REVIEW_FLAGS),
        "about": place.recognised.about,
        "before": told_of(place),
        "after": told_of(place),
    }
    draft = Record(0, f"rows/{row}", "confirm", value, person, now())
    taught = lessons.of_row(case, place, place, {})
    if lessons.column_of(case.part.figures[row]):
        taught += lessons.of_settled_column(case, row, None, case.with_record(draft).built)
    return _save(store, case, f"rows/{row}", "confirm", value, person, taught)


def change(store: Store, case: Case, row: int, person: str, said: Mapping[str, str]) -> Saved:
    """The row reads otherwise: any of value, unit, parameter, family and basis. Raises RefusedError, StaleError.

    What was shown as doubtful is settled with it; a doubt that only comes up now stays for another look.
    """
    before = place_of(case.built, row)
    told = _checked(said, before)
    if not told:
        raise RefusedError("Nothing was changed. Accept the figure as it is shown, or say what is right.")
    draft = Record(0, f"rows/{row}", "change", {"set": told}, person, now())
    built = case.with_record(draft).built
    after = place_of(built, row)
    if after.recognised is None:
        raise RefusedError("Say as well which parameter this row is.")
    shown = {(doubt.flag, doubt.reason) for doubt in before.doubts}
    named = {SETTLES[name] for name in told}
    fresh = {d.flag for d in after.doubts if (d.flag, d.reason) not in shown and d.flag not in named}
    settled = ({d.flag for d in after.doubts} | named) & REVIEW_FLAGS - fresh
    value = {
        "set": told,
        "settled": sorted(settled),
        "about": after.recognised.about,
        "before": told_of(before),
        "after": told_of(after),
    }
    taught = lessons.of_row(case, before, after, told)
    taught += lessons.of_settled_column(case, row, told.get("value"), built)
    return _save(store, case, f"rows/{row}", "change", value, person, taught)


def reject(store: Store, case: Case, row: int, person: str) -> Saved:
    """The row is no figure: it is left out, and stays on record."""
    place = place_of(case.built, row)
    value = {"before": told_of(place), "after": ""}
    return _save(store, case, f"rows/{row}", "reject", value, person, lessons.of_no_figure(case, place))


def say_column(store: Store, case: Case, row: int, person: str) -> Saved:
    """The results of the row's table stand in the column that they were taken from. Raises RefusedError, StaleError."""
    column = lessons.column_of(case.part.figures[row])
    if not column or column in case.statements.columns | case.statements.columns_learned:
        raise RefusedError("The column of this figure is not in doubt.")
    told = f"the results stand under {case.part.figures[row].column or NO_HEAD}"
    value = {"column": column, "before": "", "after": told}
    return _save(store, case, f"rows/{row}", "confirm", value, person, lessons.of_column(case, column))


def say_header(store: Store, case: Case, person: str, entries: Mapping[str, str], family: str | None = None) -> Saved:
    """The head of the sheet: entries by key ("" for one that is not there), and the method family of all its figures.

    Raises RefusedError, StaleError.
    """
    told: dict[str, str | None] = {}
    for key, text in entries.items():
        if key not in HEADER_KEYS or len(text) > MOST_LETTERS:
            raise RefusedError(f"{key}: this cannot be an entry of the head.")
        told[key] = read_entry(key, text) if text.strip() else None
        if text.strip() and told[key] is None:
            raise RefusedError(f"{key.replace('_', ' ')}: “{text}” is not understood. Write a day as 2024-11-30.")
    if family is not None:
        if family not in FAMILIES:
            raise RefusedError(f"{family} is no method family: EBC, IoB or ASBC.")
        saved = _save(
            store,
            case,
            SHEET,
            "change",
            {"set": {"family": family}, "after": family},
            person,
            lessons.of_family(case, family),
        )
        if not told:
            return saved
        case = saved.case
    header = rows.values(case.built.analysis)
    value = {"set": told, "before": {key: header.get(key) for key in told}, "after": told}
    return _save(store, case, HEADER, "change", value, person)


def add_row(store: Store, case: Case, person: str, printed: Mapping[str, Any], parameter: str) -> Saved:
    """A row that the reading missed: label, value, unit, page and box, and what it is."""
    row = len(case.part.figures)
    raw = {"label": printed["label"], "value": printed["value"], "unit": printed.get("unit")}
    raw |= {"page": int(printed["page"]), "box": [round(float(edge), 1) for edge in printed["box"]]}
    said = {"value": str(raw["value"]), "unit": str(raw["unit"] or ""), "parameter": parameter}
    told = _checked({name: text for name, text in said.items() if text}, None)
    draft = Record(0, f"rows/{row}", "change", {"added": raw, "set": told}, person, now())
    after = place_of(case.with_record(draft).built, row)
    if after.recognised is None:
        raise RefusedError("This row holds no result.")
    fresh = {doubt.flag for doubt in after.doubts} - {SETTLES["value"], SETTLES["parameter"]}
    value = {
        "added": raw,
        "set": told,
        "settled": sorted({SETTLES["value"], SETTLES["parameter"]} - fresh),
        "about": after.recognised.about,
        "before": "",
        "after": told_of(after),
    }
    return _save(store, case, f"rows/{row}", "change", value, person)


def set_aside(store: Store, case: Case, person: str, why: str) -> Saved:
    """The sheet leaves the list of what waits; its doubtful figures stay in review."""
    return _save(store, case, SHEET, "reject", {"why": why[:MOST_LETTERS] or "set aside", "after": "set aside"}, person)


def undo(store: Store, case: Case, record: int, person: str) -> Saved:
    """Takes one record back, with what was learned from it."""
    found = next((one for one in case.records if one.id == record), None)
    if found is None or found.withdrawn or found.action == "withdraw":
        raise RefusedError("This was taken back already.")
    value = {"withdraws": record, "before": found.value.get("after"), "after": found.value.get("before")}
    return _save(store, case, found.target, "withdraw", value, person)


# ---------------------------------------------------------------------------------------------- saving


def _save(
    store: Store,
    case: Case,
    target: str,
    action: Action,
    value: Mapping[str, Any],
    person: str,
    taught: Sequence[Lesson] = (),
) -> Saved:
    person = " ".join(person.split())[:MOST_LETTERS]
    if not person:
        raise RefusedError("Say who you are first: every correction is kept with a name.")
    record = Record(0, target, action, value, person, now())
    with transaction(store.connection):
        row = store.connection.execute("SELECT change FROM analyses WHERE id = ?", (case.id,)).fetchone()
        if row is None or row[0] != case.revision:
            raise StaleError(
                "Somebody else has changed this sheet since you opened it. Nothing of yours was saved over it: look at "
                "it as it stands now, and say it again."
            )
        number = insert(store, case, record)
        kept = learned.learn(store.connection, case.built.analysis, taught, number, person, record.made_at)
        if action == "withdraw":
            kept += learned.unlearn(store.connection, int(value["withdraws"]), person, record.made_at)
        aside = _set_aside(store, case.id)
        store.connection.execute("UPDATE analyses SET set_aside = ? WHERE id = ?", (aside, case.id))
        standing = write_standing(store, case.id)
        detail = rows.as_json({"target": target, "action": action, "person": person})
        store.tell("corrected", case.sha256, case.id, detail)
    return Saved(standing, number, tuple(kept))


def _set_aside(store: Store, identity: str) -> str | None:
    said = [one for one in records_of(store.connection, identity) if one.target == SHEET and one.action == "reject"]
    return next((str(one.value["why"]) for one in reversed(said) if not one.withdrawn), None)


def follow(store: Store, key: str, lessons: Sequence[Lesson], but: str = "") -> int:
    """Lays new lessons over a supplier's other sheets, each on its own; returns how many have changed."""
    return sum(refresh(store, identity) for identity in following(store, key, lessons, but))


def refresh(store: Store, identity: str) -> bool:
    """Stores an analysis anew where what was learned makes it stand otherwise."""
    with transaction(store.connection):
        before = store.connection.execute("SELECT json, asked_rows FROM analyses WHERE id = ?", (identity,)).fetchone()
        try:
            case = load(store, identity)
        except Exception:  # taken in by an earlier version: nothing can be laid over it
            return False
        stands = case.built.analysis.model_dump_json(by_alias=True)
        if before == (stands, len(learned.asked_rows(case.built, case.statements))):
            return False
        write_standing(store, identity)
    return True


# ---------------------------------------------------------------------------------------------- checking


def plain_result(text: str) -> str:
    """A result as a person writes it, as it is kept: with a decimal point. Raises RefusedError."""
    text = " ".join(text.split())
    plain = text if "." in text or _GROUP.search(text) else text.replace(",", ".")
    number = read_number(plain, ".")
    if "," in plain or number is None or number.ambiguous or number.kind in ("blank", "several", "word"):
        raise RefusedError(
            f"“{text}” is no single result. Write it with a decimal point and without a unit: 4.3, < 1.0 or 80 - 82."
        )
    return plain


def _checked(said: Mapping[str, str], before: Place | None) -> dict[str, str]:
    """What was said in the form in which it is kept, without what is no change. Raises RefusedError."""
    told = {name: " ".join(text.split()) for name, text in said.items() if name in SETTLES and text.strip()}
    if any(len(text) > MOST_LETTERS for text in told.values()):
        raise RefusedError("That is too long.")
    parameter = told.get("parameter") or (before.recognised.parameter if before and before.recognised else None)
    if parameter is None:
        raise RefusedError("Say first which parameter this row is.")
    entry = parameters().get(parameter)
    if entry is None:
        raise RefusedError(f"“{parameter}” is no parameter.")
    if "value" in told and entry.kind != "text":
        told["value"] = plain_result(told["value"])
    if "unit" in told:
        unit = parse_unit(told["unit"])
        known = sorted({code for codes in entry.printed_units.values() for code in codes} | set(entry.units.values()))
        if unit is None or unit.code not in known:
            raise RefusedError(f"“{told['unit']}” is no unit in use for {entry.title}: {', '.join(known)}.")
    if told.get("family", "EBC") not in FAMILIES or told.get("basis", "dry") not in ("dry", "as-is"):
        raise RefusedError("A method family is EBC (MEBAK too), IoB or ASBC; a moisture basis is dry or as is.")
    if before is not None and before.recognised is not None:
        now_is = {"parameter": before.recognised.parameter, "family": before.recognised.family}
        told = {name: text for name, text in told.items() if now_is.get(name) != text}
    if "parameter" in told and entry.basis is not None and "basis" not in told:
        told["basis"] = entry.basis
    return told


def with_revision(case: Case, revision: int) -> Case:
    """The case as seen by somebody who looked at ``revision``: a save is refused where it is an older one."""
    return replace(case, revision=revision)
