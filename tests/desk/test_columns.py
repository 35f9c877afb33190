"""Which column of a supplier's form holds the results is settled once: it lifts that doubt, and nothing else."""

from __future__ import annotations

import json
from collections.abc import Callable
from pathlib import Path

import pytest

from importer.models import Analysis
from importer.store import learned, settling
from importer.store.corrections import Case, RefusedError, load
from importer.store.ledger import Store
from importer.store.selection import Wanted, choose
from tests.desk.conftest import Desk
from tests.desk.sheets import SOUND, TWO_LABORATORIES, Columns, changed, take_in, two_columns
from tests.desk.test_settling import figure, row_of

CaseIn = Callable[..., tuple[Store, Case]]


@pytest.fixture
def taught(tmp_path: Path, case_in: CaseIn) -> Path:
    """A store in which the column of results of a form was settled."""
    folder = take_in(tmp_path / "store", two_columns(tmp_path / "first.pdf"))
    store, case = case_in(folder)
    assert {one.state for one in case.built.analysis.figures} == {"review"}
    saved = settling.say_column(store, case, 0, "Anna")
    assert [(lesson.kind, lesson.means) for lesson in saved.lessons] == [("column", "results")]
    return folder


def second(folder: Path, path: Path, case_in: CaseIn) -> Analysis:
    """The analysis of one more sheet of batch N-1042."""
    take_in(folder, path)
    return case_in(folder, "N-1042")[1].built.analysis


def test_one_word_settles_the_column_of_the_sheet(taught: Path, case_in: CaseIn) -> None:
    _, case = case_in(taught)
    assert case.built.analysis.state == "accepted"
    assert all("corrected-by-person" in one.flags for one in case.built.analysis.figures)
    assert [one.value for one in case.built.analysis.figures] == [one.value for one in case.as_read.figures]


def test_the_next_sheet_of_the_form_is_not_asked(taught: Path, tmp_path: Path, case_in: CaseIn) -> None:
    analysis = second(taught, two_columns(tmp_path / "second.pdf", batch="N-1042"), case_in)
    assert analysis.state == "accepted"
    moisture = figure(analysis, "moisture")
    assert "corrected-by-person" not in moisture.flags
    assert any("settled by a person" in reason for reason in moisture.reasons)


@pytest.mark.parametrize(
    ("rows", "parameter", "flag"),
    [
        (changed("Moisture", "45"), "moisture", "outside-possible"),
        (changed("Kolbach index", "48.6"), "nitrogen_ratio", "check-failed"),
        (changed("Colour", "5.2", unit=""), "colour", "unit-assumed"),
        (changed("Soluble nitrogen, dry", "0.65", rename="Nitrogen"), "soluble_nitrogen", "label-doubtful"),
    ],
)
def test_other_doubts_stay(
    taught: Path, tmp_path: Path, case_in: CaseIn, rows: tuple[tuple[str, str, str], ...], parameter: str, flag: str
) -> None:
    analysis = second(taught, two_columns(tmp_path / "second.pdf", rows, batch="N-1042"), case_in)
    found = figure(analysis, parameter)
    assert found.state == "review"
    assert flag in found.flags


@pytest.mark.parametrize(
    "columns",
    [
        (("Parameter", 60), ("Laboratory B", 270), ("Laboratory A", 370), ("Unit", 480)),
        (("Parameter", 60), ("Laboratory A", 270), ("Laboratory C", 370), ("Unit", 480)),
        (("Parameter", 60), ("", 270), ("", 370), ("Unit", 480)),
    ],
)
def test_other_heads_are_asked(taught: Path, tmp_path: Path, case_in: CaseIn, columns: Columns) -> None:
    analysis = second(taught, two_columns(tmp_path / "second.pdf", columns=columns, batch="N-1042"), case_in)
    assert {one.state for one in analysis.figures} == {"review"}


def test_another_supplier_and_another_form_are_asked(taught: Path, tmp_path: Path, case_in: CaseIn) -> None:
    other = two_columns(tmp_path / "second.pdf", batch="N-1042", supplier="Ostmark Maltings")
    assert figure(second(taught, other, case_in), "moisture").state == "review"
    take_in(taught, two_columns(tmp_path / "third.pdf", batch="N-1043", more=(("Crop year", "2024"),)))
    assert figure(case_in(taught, "N-1043")[1].built.analysis, "moisture").state == "review"


def test_a_column_without_a_head_is_settled_for_its_sheet_only(tmp_path: Path, case_in: CaseIn) -> None:
    columns = (("Parameter", 60), ("", 270), ("", 370), ("Unit", 480))
    folder = take_in(tmp_path / "store", two_columns(tmp_path / "first.pdf", columns=columns))
    store, case = case_in(folder)
    saved = settling.say_column(store, case, 0, "Anna")
    assert saved.case.built.analysis.state == "accepted"
    assert saved.lessons == ()
    analysis = second(folder, two_columns(tmp_path / "second.pdf", columns=columns, batch="N-1042"), case_in)
    assert analysis.state == "review"


def test_accepting_all_of_its_figures_settles_the_column_for_the_next_sheet(tmp_path: Path, case_in: CaseIn) -> None:
    folder = take_in(tmp_path / "store", two_columns(tmp_path / "first.pdf"))
    store, case = case_in(folder)
    for row in range(len(SOUND)):
        assert not learned.everything(store.connection)
        case = settling.accept(store, case, row, "Anna").case
    (thing,) = learned.everything(store.connection)
    assert (thing.kind, thing.means) == ("column", "results")
    assert "Parameter | [Laboratory A] | Laboratory B | Unit" in thing.wording
    assert second(folder, two_columns(tmp_path / "second.pdf", batch="N-1042"), case_in).state == "accepted"


def test_a_figure_taken_from_the_other_column_teaches_nothing(tmp_path: Path, case_in: CaseIn) -> None:
    folder = take_in(tmp_path / "store", two_columns(tmp_path / "first.pdf"))
    store, case = case_in(folder)
    case = settling.change(store, case, 0, "Anna", {"value": case.part.figures[0].rivals[0]}).case
    for row in (*range(1, len(SOUND)), 0):
        case = settling.accept(store, case, row, "Anna").case
    assert case.built.analysis.state == "accepted"
    assert not learned.everything(store.connection)


def test_a_figure_taken_from_the_other_column_later_has_it_asked_again(
    taught: Path, tmp_path: Path, case_in: CaseIn
) -> None:
    second(taught, two_columns(tmp_path / "second.pdf", batch="N-1042"), case_in)
    second(taught, two_columns(tmp_path / "third.pdf", batch="N-1043"), case_in)
    store, case = case_in(taught, "N-1042")
    other = case.part.figures[row_of(case, "Friability")].rivals[0]
    saved = settling.change(store, case, row_of(case, "Friability"), "Anna", {"value": other})
    assert [(lesson.kind, lesson.means) for lesson in saved.lessons] == [("column", "ask")]
    assert figure(saved.case.built.analysis, "moisture").state == "review"
    key = learned.supplier_key(case.as_read)
    settling.follow(store, key or "", saved.lessons, case.id)
    _, third = case_in(taught, "N-1043")
    assert figure(third.built.analysis, "moisture").state == "review"
    _, first = case_in(taught)  # of which a person has said it outright
    assert first.built.analysis.state == "accepted"


def test_taking_it_back_brings_the_doubt_back_on_all_sheets(
    taught: Path, tmp_path: Path, open_desk: Callable[..., Desk]
) -> None:
    take_in(taught, two_columns(tmp_path / "second.pdf", batch="N-1042"))
    desk = open_desk(taught)
    with Store(taught) as store:
        (record,) = store.connection.execute("SELECT id FROM corrections").fetchone()
        assert {one.state for one in choose(store, Wanted()).analyses} == {"accepted"}
    assert desk.say(f"/undo/{record}").headers["Location"].endswith("/0?told=undone")
    desk.done()
    with Store(taught) as store:
        assert {one.state for one in choose(store, Wanted()).analyses} == {"review"}


def test_it_is_listed_and_can_be_changed_and_taken_back(
    taught: Path, tmp_path: Path, open_desk: Callable[..., Desk]
) -> None:
    take_in(taught, two_columns(tmp_path / "second.pdf", batch="N-1042"))
    desk = open_desk(taught)
    assert "[Laboratory A] | Laboratory B" in desk.text("/learned")
    with Store(taught) as store:
        (thing,) = learned.everything(store.connection)
    desk.say(f"/learned/{thing.id}", 422, action="change", means="colour")
    desk.say(f"/learned/{thing.id}", action="change", means="ask")
    desk.done()
    with Store(taught) as store:
        assert choose(store, Wanted(batch="N-1042")).analyses[0].state == "review"
        (thing,) = learned.everything(store.connection)
    desk.say(f"/learned/{thing.id}", action="withdraw")
    assert "Laboratory" not in desk.text("/learned")


def test_the_desk_offers_the_column_and_the_other_value(tmp_path: Path, open_desk: Callable[..., Desk]) -> None:
    folder = take_in(tmp_path / "store", two_columns(tmp_path / "first.pdf"))
    desk = open_desk(folder)
    with Store(folder) as store:
        (identity,) = store.connection.execute("SELECT id FROM analyses").fetchone()
    address = f"/sheet/{identity}/3"
    page = desk.text(address)
    assert "another value of the row" in page
    assert "<q>Laboratory A</q>" in page
    answer = desk.say(address, revision=desk.revision(address), action="column")
    assert answer.headers["Location"] == "/?told=saved"
    assert "<q>Laboratory A</q>" not in desk.text(address)
    desk.say(address, 422, revision=desk.revision(address), action="column")


def test_a_column_that_is_sure_cannot_be_settled(tmp_path: Path, case_in: CaseIn) -> None:
    folder = take_in(tmp_path / "store", two_columns(tmp_path / "a.pdf", columns=_WITH_LIMIT))
    store, case = case_in(folder)
    with pytest.raises(RefusedError, match="not in doubt"):
        settling.say_column(store, case, 0, "Anna")


_WITH_LIMIT: Columns = (("Parameter", 60), ("Result", 270), ("Maximum", 370), ("Unit", 480))


def test_what_was_kept_by_an_earlier_version_has_no_tables(tmp_path: Path, case_in: CaseIn) -> None:
    """The printed stage of a store may say why a column is in doubt, and not of which table."""
    from importer import kept
    from importer.store import evidence

    folder = take_in(tmp_path / "store", two_columns(tmp_path / "first.pdf", columns=TWO_LABORATORIES))
    store, case = case_in(folder)
    text = kept._adapter().dump_json(evidence.kept_of(store.connection, case.sha256) or case.kept).decode()
    column = next(iter(learned.doubtful_columns(case.part)))
    older = text.replace(f",{json.dumps(column, ensure_ascii=False)}]", "]")
    assert older != text
    store.connection.execute("UPDATE readings SET printed = ?", (kept.pack(older),))
    again = load(store, case.id)
    assert again.built.analysis == case.built.analysis
    with pytest.raises(RefusedError, match="not in doubt"):
        settling.say_column(store, again, 0, "Anna")
