"""What a person says is laid over the reading: values, checks and states follow, and the reading stays as it was."""

from __future__ import annotations

import json
import sqlite3
from collections.abc import Callable
from pathlib import Path

import pytest

from importer.models import Analysis, Figure
from importer.store import places, settling
from importer.store.corrections import Case, RefusedError, StaleError, load
from importer.store.ledger import Store
from importer.store.reading import Options
from importer.store.selection import Wanted, choose, on_basis
from tests.desk.sheets import SOUND, changed, draw, take_in

CaseIn = Callable[..., tuple[Store, Case]]


def figure(analysis: Analysis, parameter: str) -> Figure:
    return next(one for one in (*analysis.figures, *analysis.derived) if one.parameter == parameter)


def row_of(case: Case, label: str) -> int:
    return next(n for n, printed in enumerate(case.part.figures) if printed.label == label)


def exported(store: Store) -> Analysis:
    (analysis,) = choose(store, Wanted()).analyses
    return analysis


@pytest.fixture
def lost_point(tmp_path: Path) -> Path:
    """A sheet on which the decimal point of the moisture was lost."""
    return take_in(tmp_path / "store", draw(tmp_path / "sheet.pdf", changed("Moisture", "45")))


def test_a_corrected_value_goes_through_to_checks_states_and_export(lost_point: Path, case_in: CaseIn) -> None:
    store, case = case_in(lost_point)
    assert [case.part.figures[row].label for row in places.waiting_rows(case.built)] == [
        "Moisture",
        "Extract, fine grind, dry",
        "Extract, fine grind, as is",
    ]
    saved = settling.change(store, case, row_of(case, "Moisture"), "Anna Holt", {"value": "4.5"})
    analysis = exported(store)
    assert analysis == saved.case.built.analysis
    moisture = figure(analysis, "moisture")
    assert (moisture.value, moisture.state, moisture.flags) == (4.5, "accepted", ("corrected-by-person",))
    assert moisture.printed is not None
    assert moisture.printed.value == "45"
    assert analysis.state == "accepted"
    assert all(check.holds for check in analysis.checks)
    assert figure(analysis, "extract_fine_dry").flags == ()


def test_every_word_is_kept_with_who_when_before_and_after(lost_point: Path, case_in: CaseIn) -> None:
    store, case = case_in(lost_point)
    settling.change(store, case, 0, "  Anna   Holt ", {"value": "4.5"})
    action, person, at, value = store.connection.execute(
        "SELECT action, person, made_at, value FROM corrections"
    ).fetchone()
    assert (action, person, at[:2]) == ("change", "Anna Holt", "20")
    assert (json.loads(value)["before"], json.loads(value)["after"]) == ("Moisture 45 %", "Moisture 4.5 %")
    with pytest.raises(RefusedError, match="who you are"):
        settling.accept(store, load(store, case.id), 0, "  ")


def test_the_reading_itself_stays_and_undo_brings_it_back_whole(lost_point: Path, case_in: CaseIn) -> None:
    store, case = case_in(lost_point)
    as_read = exported(store)
    saved = settling.change(store, case, 0, "Anna", {"value": "4.5"})
    (kept,) = store.connection.execute("SELECT json FROM as_read").fetchone()
    assert Analysis.model_validate_json(kept) == as_read
    again = settling.undo(store, saved.case, saved.record, "Anna")
    assert exported(store) == as_read
    assert [record.withdrawn for record in again.case.records] == [True, False]
    with pytest.raises(RefusedError, match="taken back already"):
        settling.undo(store, again.case, saved.record, "Anna")


def test_accepting_lifts_the_doubts_but_a_failed_check_stays_in_sight(lost_point: Path, case_in: CaseIn) -> None:
    store, case = case_in(lost_point)
    row = row_of(case, "Extract, fine grind, dry")
    settling.accept(store, case, row, "Anna")
    extract = figure(exported(store), "extract_fine_dry")
    assert extract.state == "accepted"
    assert set(extract.flags) == {"check-failed", "corrected-by-person"}
    assert any("does not agree" in reason for reason in extract.reasons)


def test_a_new_doubt_is_not_settled_by_what_was_seen_before(lost_point: Path, case_in: CaseIn) -> None:
    """145 is as impossible as 45, but nobody has looked at it yet."""
    store, case = case_in(lost_point)
    saved = settling.change(store, case, 0, "Anna", {"value": "145"})
    moisture = figure(exported(store), "moisture")
    assert (moisture.value, moisture.state) == (145.0, "review")
    assert "outside-possible" in moisture.flags
    assert figure(settling.accept(store, saved.case, 0, "Anna").case.built.analysis, "moisture").state == "accepted"


def test_a_word_holds_only_for_what_it_was_about(lost_point: Path, case_in: CaseIn) -> None:
    store, case = case_in(lost_point)
    accepted = settling.accept(store, case, 0, "Anna").case
    assert figure(accepted.built.analysis, "moisture").state == "accepted"
    assert "45" in accepted.records[0].value["about"]
    later = settling.change(store, accepted, 0, "Bert", {"value": "46"}).case
    assert figure(later.built.analysis, "moisture").state == "review"


def test_two_at_once_lose_nothing(lost_point: Path, case_in: CaseIn) -> None:
    store, first = case_in(lost_point)
    other_store, second = case_in(lost_point)
    settling.change(store, first, 0, "Anna", {"value": "4.5"})
    with pytest.raises(StaleError, match="Somebody else"):
        settling.accept(other_store, second, 0, "Bert")
    assert other_store.connection.execute("SELECT person FROM corrections").fetchall() == [("Anna",)]
    assert figure(exported(store), "moisture").value == 4.5


def test_a_unit_a_family_and_a_basis_can_be_said(tmp_path: Path, case_in: CaseIn) -> None:
    rows = (*changed("Colour", "5.2", unit="")[:2], *changed("Colour", "5.2", unit="")[3:])
    rows = tuple(
        ("Extract", value, unit) if label == "Extract, fine grind, dry" else (label, value, unit)
        for label, value, unit in rows
    )
    folder = take_in(tmp_path / "store", draw(tmp_path / "sheet.pdf", rows))
    store, case = case_in(folder)
    assert "moisture-basis-assumed" in figure(case.built.analysis, "extract_fine_dry").flags
    case = settling.change(store, case, row_of(case, "Extract"), "Anna", {"basis": "as-is"}).case
    extract = figure(case.built.analysis, "extract_fine_as_is")
    assert (extract.value, extract.state) == (82.0, "accepted")
    # 82.0 ÷ (1 − 0.045): as is to dry matter, by definition of dry matter.
    assert figure(case.built.analysis, "extract_fine_dry").value == pytest.approx(85.9, abs=0.05)
    case = settling.change(store, case, row_of(case, "Colour"), "Anna", {"unit": "SRM"}).case
    # SRM = 12.7 × A430 (ASBC Beer-10A), EBC = 25 × A430 (EBC 9.6): 25 ÷ 12.7 = 1.97.
    assert figure(case.built.analysis, "colour").value == pytest.approx(5.2 * 1.97, rel=0.1)
    case = settling.change(store, case, row_of(case, "Kolbach index"), "Anna", {"family": "IoB"}).case
    ratio = figure(case.built.analysis, "nitrogen_ratio")
    assert ratio.method_offset is not None
    assert (ratio.method_offset.applied, ratio.method_offset.from_) == (True, "IoB")


@pytest.mark.parametrize(
    ("said", "message"),
    [
        ({"value": "4.5 or 5"}, "no single result"),
        ({"value": "1,234"}, "decimal point"),
        ({"value": "about fine"}, "no single result"),
        ({"unit": "EBC"}, "no unit in use for Moisture"),
        ({"parameter": "wetness"}, "no parameter"),
        ({"family": "XYZ"}, "method family"),
        ({"basis": "moist"}, "moisture basis"),
        ({}, "Nothing was changed"),
        ({"parameter": "moisture", "value": " "}, "Nothing was changed"),
        ({"value": "4" * 300}, "too long"),
    ],
)
def test_what_makes_no_sense_is_refused_and_nothing_saved(
    lost_point: Path, case_in: CaseIn, said: dict[str, str], message: str
) -> None:
    store, case = case_in(lost_point)
    with pytest.raises(RefusedError, match=message):
        settling.change(store, case, 0, "Anna", said)
    assert store.connection.execute("SELECT COUNT(*) FROM corrections").fetchone() == (0,)


def test_a_word_needs_a_name(lost_point: Path, case_in: CaseIn) -> None:
    store, case = case_in(lost_point)
    with pytest.raises(RefusedError, match="Say who you are first"):
        settling.change(store, case, 0, " ", {"value": "4.5"})


@pytest.mark.parametrize(("typed", "value", "bound"), [("4,5", 4.5, None), ("< 5.0", 5.0, "<"), ("4.50", 4.5, None)])
def test_numbers_as_people_write_them(
    lost_point: Path, case_in: CaseIn, typed: str, value: float, bound: str | None
) -> None:
    store, case = case_in(lost_point)
    moisture = figure(settling.change(store, case, 0, "Anna", {"value": typed}).case.built.analysis, "moisture")
    assert (moisture.value, moisture.bound) == (value, bound)


def test_not_a_figure_leaves_the_row_out_and_on_record(lost_point: Path, case_in: CaseIn) -> None:
    store, case = case_in(lost_point)
    saved = settling.reject(store, case, 0, "Anna")
    assert all(one.parameter != "moisture" for one in exported(store).figures)
    assert saved.case.records[0].value["before"] == "Moisture 45 %"
    assert figure(settling.undo(store, saved.case, saved.record, "Anna").case.built.analysis, "moisture").value == 45.0


def test_the_head_is_settled_and_filed_under(tmp_path: Path, case_in: CaseIn) -> None:
    folder = take_in(tmp_path / "store", draw(tmp_path / "sheet.pdf", batch="?", date="14/11/2024"))
    with Store(folder) as store:
        (identity,) = store.connection.execute("SELECT id FROM analyses").fetchone()
        case = load(store, identity)
        assert case.built.analysis.state == "review"
        with pytest.raises(RefusedError, match="2024-11-30"):
            settling.say_header(store, case, "Anna", {"analysed_on": "some day"})
        case = settling.say_header(store, case, "Anna", {"batch": "N-1049", "analysed_on": "2024-11-15"}).case
        assert case.built.analysis.state == "accepted"
        found = store.connection.execute("SELECT state, batch, batch_key, dated, sure FROM analyses").fetchone()
        assert found == ("accepted", "N-1049", "n1049", "2024-11-15", 1)
        assert [one.id for one in choose(store, Wanted(batch="1049")).analyses] == [identity]
        assert store.connection.execute("SELECT state FROM documents").fetchone() == ("accepted",)


def test_the_method_family_of_a_sheet_settles_all_its_figures(tmp_path: Path, case_in: CaseIn) -> None:
    rows = tuple(row for row in SOUND if row[0] in ("Moisture", "Colour", "Friability", "Total nitrogen, dry"))
    rows = (*rows, ("Viscosity", "1.52", "mPa·s"), ("Free amino nitrogen", "150", "mg/l"))
    folder = take_in(tmp_path / "store", draw(tmp_path / "sheet.pdf", rows, method=""))
    store, case = case_in(folder)
    assert case.built.analysis.family_from == "assumed"
    assert places.family_waits(case)
    case = settling.say_header(store, case, "Anna", {}, "IoB").case
    assert case.built.analysis.method_family == "IoB"
    viscosity = figure(case.built.analysis, "viscosity")
    assert viscosity.family == "IoB"
    assert "corrected-by-person" in viscosity.flags
    assert not places.family_waits(case)


def test_a_missing_row_is_added_and_used(tmp_path: Path, case_in: CaseIn) -> None:
    rows = tuple(row for row in SOUND if row[0] != "Moisture")
    folder = take_in(tmp_path / "store", draw(tmp_path / "sheet.pdf", rows))
    store, case = case_in(folder)
    printed = {"label": "Moisture", "value": "4.5", "unit": "%", "page": 1, "box": (60, 100, 300, 112)}
    saved = settling.add_row(store, case, "Anna", printed, "moisture")
    moisture = figure(exported(store), "moisture")
    assert (moisture.value, moisture.state) == (4.5, "accepted")
    assert moisture.printed is not None
    assert moisture.printed.box == (60.0, 100.0, 300.0, 112.0)
    assert any("moisture" in check.check for check in exported(store).checks)
    again = settling.change(store, saved.case, len(case.part.figures), "Anna", {"value": "4.6"}).case
    assert figure(again.built.analysis, "moisture").value == 4.6
    gone = settling.undo(store, again, saved.record, "Anna").case
    assert all(one.parameter != "moisture" for one in gone.built.analysis.figures)


def test_no_word_brings_a_figure_to_dry_malt_without_moisture(tmp_path: Path, case_in: CaseIn) -> None:
    rows = (("Total nitrogen, as is", "1.53", "%"), ("Colour", "5.2", "EBC"), ("Friability", "88", "%"))
    folder = take_in(tmp_path / "store", draw(tmp_path / "sheet.pdf", rows))
    store, case = case_in(folder)
    assert "no-moisture" in figure(case.built.analysis, "total_nitrogen").flags
    with pytest.raises(RefusedError, match="moisture"):
        settling.accept(store, case, 0, "Anna")


def test_other_bases_follow_without_the_original(lost_point: Path, case_in: CaseIn) -> None:
    store, case = case_in(lost_point)
    settling.change(store, case, 0, "Anna", {"value": "4.5"})
    (lost_point.parent / "sheet.pdf").unlink()
    (asbc,) = on_basis(store, choose(store, Wanted()), Options("ASBC"), 1)
    assert figure(asbc, "moisture").value == 4.5
    # EBC ÷ 1.97 = °L within what both scales resolve (EBC 4.7.1, ASBC Malt-4): 5.2 ÷ 1.97 = 2.6, °L a little above.
    assert figure(asbc, "colour").unit == "°L"
    settling.change(store, load(store, case.id), 0, "Anna", {"value": "4.7"})
    (again,) = on_basis(store, choose(store, Wanted()), Options("ASBC"), 1)
    assert figure(again, "moisture").value == 4.7


def test_a_corrected_analysis_is_new_to_the_next_export(lost_point: Path, case_in: CaseIn) -> None:
    store, case = case_in(lost_point)
    since = choose(store, Wanted()).change
    assert choose(store, Wanted(), since=since).analyses == ()
    settling.change(store, case, 0, "Anna", {"value": "4.5"})
    assert [one.id for one in choose(store, Wanted(), since=since).analyses] == [case.id]


def test_setting_aside_takes_a_sheet_off_the_list_and_changes_no_figure(lost_point: Path, case_in: CaseIn) -> None:
    store, case = case_in(lost_point)
    before = exported(store)
    saved = settling.set_aside(store, case, "Anna", "asked for a better copy")
    assert saved.case.set_aside == "asked for a better copy"
    assert exported(store) == before
    assert settling.undo(store, saved.case, saved.record, "Anna").case.set_aside is None


def test_a_store_from_before_is_read_once_more_when_it_is_needed(tmp_path: Path) -> None:
    from importer.store.catching_up import load_anyway

    folder = take_in(tmp_path / "store", draw(tmp_path / "sheet.pdf", changed("Moisture", "45")))
    with Store(folder) as store:
        store.connection.execute("DELETE FROM readings")
        (identity,) = store.connection.execute("SELECT id FROM analyses").fetchone()
        saved = settling.change(store, load_anyway(store, identity), 0, "Anna", {"value": "4.5"})
        assert saved.case.built.analysis.state == "accepted"


def test_older_stores_are_brought_up_to_date(tmp_path: Path) -> None:
    from importer.store import schema

    path = tmp_path / "onebasis.sqlite"
    old = sqlite3.connect(path, isolation_level=None)
    old.executescript(schema.MIGRATIONS[0])
    old.execute(f"PRAGMA application_id = {schema.APPLICATION_ID}")
    old.execute("PRAGMA user_version = 1")
    old.close()
    with Store(tmp_path) as store:
        assert store.connection.execute("SELECT COUNT(*) FROM learned").fetchone() == (0,)
        assert store.connection.execute("PRAGMA integrity_check").fetchone() == ("ok",)
