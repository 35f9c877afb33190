"""What was settled once is not asked again, and never outvotes a sheet or lifts a failed check."""

from __future__ import annotations

import tomllib
from collections.abc import Callable
from pathlib import Path

import pytest

from importer.store import learned, own_words, settling
from importer.store.corrections import Case, load
from importer.store.ledger import Store
from importer.store.selection import Wanted, choose
from tests.desk.conftest import Desk
from tests.desk.sheets import SOUND, Row, changed, draw, take_in
from tests.desk.test_settling import figure, row_of

CaseIn = Callable[..., tuple[Store, Case]]
ODD = "Nitr. gehalt X"


def odd(value: str = "1.60") -> tuple[Row, ...]:
    return changed("Total nitrogen, dry", value, rename=ODD)


@pytest.fixture
def taught(tmp_path: Path, case_in: CaseIn) -> Path:
    """A store in which a label was settled on one sheet of the supplier."""
    folder = take_in(tmp_path / "store", draw(tmp_path / "first.pdf", odd()))
    store, case = case_in(folder)
    assert [one.label for one in case.built.analysis.unrecognised] == [f"Parameter / {ODD}"]
    saved = settling.change(store, case, row_of(case, ODD), "Anna", {"parameter": "total_nitrogen"})
    assert [lesson.kind for lesson in saved.lessons] == ["label", "basis"]
    assert figure(saved.case.built.analysis, "total_nitrogen").value == 1.6
    return folder


def test_the_next_sheet_of_the_supplier_is_accepted(taught: Path, tmp_path: Path, case_in: CaseIn) -> None:
    take_in(taught, draw(tmp_path / "second.pdf", odd(), batch="N-1042"))
    store, case = case_in(taught, "N-1042")
    nitrogen = figure(case.built.analysis, "total_nitrogen")
    assert nitrogen.state == "accepted"
    assert "corrected-by-person" not in nitrogen.flags
    assert any("settled by a person" in reason for reason in nitrogen.reasons)
    assert case.as_read.unrecognised[0].label == f"Parameter / {ODD}"
    assert store.connection.execute("SELECT state FROM documents WHERE name = 'second.pdf'").fetchone() == ("accepted",)


def test_another_supplier_is_asked(taught: Path, tmp_path: Path, case_in: CaseIn) -> None:
    take_in(taught, draw(tmp_path / "second.pdf", odd(), batch="N-1042", supplier="Ostmark Maltings"))
    _, case = case_in(taught, "N-1042")
    assert all(one.parameter != "total_nitrogen" for one in case.built.analysis.figures)


def test_a_failed_check_and_an_impossible_value_stay_in_review(taught: Path, tmp_path: Path, case_in: CaseIn) -> None:
    take_in(taught, draw(tmp_path / "second.pdf", odd("1.25"), batch="N-1042"))
    take_in(taught, draw(tmp_path / "third.pdf", odd("16.0"), batch="N-1043"))
    _, failed = case_in(taught, "N-1042")
    assert "check-failed" in figure(failed.built.analysis, "total_nitrogen").flags
    assert figure(failed.built.analysis, "total_nitrogen").state == "review"
    _, impossible = case_in(taught, "N-1043")
    assert figure(impossible.built.analysis, "total_nitrogen").state == "review"


def test_a_sheet_that_says_otherwise_is_believed(tmp_path: Path, case_in: CaseIn) -> None:
    """A label that the program is sure of keeps its meaning, whatever was learned for the same wording."""
    folder = take_in(tmp_path / "store", draw(tmp_path / "first.pdf", SOUND))
    store, case = case_in(folder)
    lesson = learned.Lesson("label", "parameter / friability", "Parameter / Friability", "homogeneity")
    learned.learn(store.connection, case.built.analysis, [lesson], 0, "Anna", "2024-11-30T10:00:00+00:00")
    again = load(store, case.id)
    assert again.learnt.rows
    assert figure(again.built.analysis, "friability").value == 88.0


def test_taking_it_back_brings_the_doubt_back(taught: Path, tmp_path: Path, case_in: CaseIn) -> None:
    take_in(taught, draw(tmp_path / "second.pdf", odd(), batch="N-1042"))
    store, first = case_in(taught)
    settling.undo(store, first, first.records[0].id, "Anna")
    assert learned.everything(store.connection) == []
    (withdrawn,) = store.connection.execute("SELECT DISTINCT withdrawn_by FROM learned").fetchall()
    assert withdrawn == ("Anna",)
    lesson = learned.Lesson("label", "", f"Parameter / {ODD}", "")
    assert settling.follow(store, "nordtalmalting", [lesson]) == 1
    _, second = case_in(taught, "N-1042")
    assert len(second.built.analysis.unrecognised) == 1


def test_sheets_that_wait_already_follow_at_once(tmp_path: Path, open_desk: Callable[..., Desk]) -> None:
    folder = take_in(
        tmp_path / "store",
        draw(tmp_path / "first.pdf", odd()),
        draw(tmp_path / "second.pdf", odd(), batch="N-1042"),
    )
    desk = open_desk(folder)
    with Store(folder) as store:
        (identity,) = store.connection.execute("SELECT id FROM analyses WHERE batch = 'N-1041'").fetchone()
        row = row_of(load(store, identity), ODD)
    address = f"/sheet/{identity}/{row}"
    desk.say(address, revision=desk.revision(address), action="change", parameter="total_nitrogen")
    desk.done()
    with Store(folder) as store:
        second = next(one for one in choose(store, Wanted(batch="N-1042")).analyses)
    assert figure(second, "total_nitrogen").state == "accepted"


def test_a_method_family_holds_for_the_form_of_the_supplier(tmp_path: Path, case_in: CaseIn) -> None:
    rows = (*SOUND[:1], SOUND[7], ("Viscosity", "1.52", "mPa·s"), ("Free amino nitrogen", "150", "mg/l"))
    folder = take_in(tmp_path / "store", draw(tmp_path / "first.pdf", rows, method=""))
    store, case = case_in(folder)
    settling.say_header(store, case, "Anna", {}, "IoB")
    take_in(folder, draw(tmp_path / "second.pdf", rows, method="", batch="N-1042"))
    take_in(folder, draw(tmp_path / "third.pdf", rows, method="Methods: EBC", batch="N-1043"))
    _, second = case_in(folder, "N-1042")
    assert second.built.analysis.method_family == "IoB"
    assert figure(second.built.analysis, "viscosity").family == "IoB"
    _, third = case_in(folder, "N-1043")
    assert (third.built.analysis.method_family, third.built.analysis.family_from) == ("EBC", "stated")


def test_a_unit_that_is_never_printed_is_asked_once(tmp_path: Path, case_in: CaseIn) -> None:
    folder = take_in(tmp_path / "store", draw(tmp_path / "first.pdf", changed("Colour", "5.2", unit="")))
    store, case = case_in(folder)
    settling.accept(store, case, row_of(case, "Colour"), "Anna")
    take_in(folder, draw(tmp_path / "second.pdf", changed("Colour", "5.6", unit=""), batch="N-1042"))
    take_in(folder, draw(tmp_path / "third.pdf", changed("Colour", "2.8", unit="SRM"), batch="N-1043"))
    _, second = case_in(folder, "N-1042")
    assert (figure(second.built.analysis, "colour").value, second.built.analysis.state) == (5.6, "accepted")
    _, third = case_in(folder, "N-1043")
    assert figure(third.built.analysis, "colour").value == pytest.approx(2.8 * 1.97, rel=0.1)


def test_signs_of_a_label_tell_two_wordings_apart(tmp_path: Path, case_in: CaseIn) -> None:
    """What lies on a sieve must never be taken for what falls through it."""
    over, under = ("Fraction > 2.2 X", "3.1", "%"), ("Fraction < 2.2 X", "0.8", "%")
    folder = take_in(tmp_path / "store", draw(tmp_path / "first.pdf", (*SOUND, over)))
    store, case = case_in(folder)
    settling.change(store, case, row_of(case, over[0]), "Anna", {"parameter": "sieve_2_2_to_2_5"})
    take_in(folder, draw(tmp_path / "second.pdf", (*SOUND, under), batch="N-1042"))
    _, second = case_in(folder, "N-1042")
    assert not second.learnt.rows
    assert all(one.parameter != "sieve_2_2_to_2_5" for one in second.built.analysis.figures)


def test_a_unit_in_the_head_of_the_column_outvotes_a_learned_one() -> None:
    from importer.meaning.resolve import resolve
    from importer.meaning.said import Said, Statements
    from importer.printed import PrintedAnalysis, PrintedFigure
    from importer.words import Box

    printed = PrintedFigure("Colour", "2.6", None, 1, Box(0, 0, 1, 1), column_unit="SRM")
    part = PrintedAnalysis((1,), (), (printed,))
    (figure_read,) = resolve(part, ".", Statements({0: Said(unit="EBC", by_person=False)})).figures
    assert figure_read.unit != "EBC"


def test_learned_things_are_listed_changed_and_taken_back(taught: Path, open_desk: Callable[..., Desk]) -> None:
    desk = open_desk(taught)
    page = desk.text("/learned")
    assert "Nordtal Malting" in page
    assert ODD in page
    with Store(taught) as store:
        thing = next(one for one in learned.everything(store.connection) if one.kind == "label")
    desk.say(f"/learned/{thing.id}", 422, action="change", means="nothing of the kind")
    desk.say(f"/learned/{thing.id}", action="change", means="total_protein")
    with Store(taught) as store:
        (changed_thing,) = [one for one in learned.everything(store.connection) if one.kind == "label"]
    assert changed_thing.means == "total_protein"
    desk.say(f"/learned/{changed_thing.id}", action="withdraw")
    desk.done()
    page = desk.text("/learned")
    assert "Total protein" not in page
    assert "on dry malt" in page  # the moisture basis of the same wording still stands
    desk.say(f"/learned/{changed_thing.id}", 404, action="withdraw")


def test_a_label_goes_to_the_brewerys_own_words_as_it_was_shown(
    taught: Path, tmp_path: Path, open_desk: Callable[..., Desk], monkeypatch: pytest.MonkeyPatch
) -> None:
    own = tmp_path / "words.toml"
    text = (
        "language = \"ours\"\n\n[words]\nMOISTURE = 'wetness'\n\n[labels]  # whole labels\nfriability = 'brittleness'\n"
    )
    own.write_text(text, encoding="utf-8")
    monkeypatch.setenv("ONEBASIS_MAPPINGS", str(own))
    desk = open_desk(taught)
    with Store(taught) as store:
        thing = next(one for one in learned.everything(store.connection) if one.kind == "label")
    page = desk.text(f"/learned/{thing.id}/words")
    assert "+total_nitrogen = &#39;Nitr. gehalt X&#39;" in page
    assert own.read_text(encoding="utf-8") == text
    before = page.partition('name="before" value="')[2].partition('"')[0]
    own.write_text(text + "# touched\n", encoding="utf-8")
    desk.say(f"/learned/{thing.id}/words", 409, before=before)
    own.write_text(text, encoding="utf-8")
    desk.say(f"/learned/{thing.id}/words", before=before)
    table = tomllib.loads(own.read_text(encoding="utf-8"))
    assert table["labels"] == {"friability": "brittleness", "total_nitrogen": ODD}
    assert table["words"] == {"MOISTURE": "wetness"}
    with pytest.raises(own_words.CannotWriteError, match="already"):
        own_words.draft(taught, "moisture", ODD)


@pytest.mark.parametrize("label", ["Colour, boiled", "…", "'''"])
def test_words_that_a_word_file_cannot_hold_are_refused(
    tmp_path: Path, label: str, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.delenv("ONEBASIS_MAPPINGS", raising=False)
    with pytest.raises(own_words.CannotWriteError):
        own_words.draft(tmp_path, "colour", label)
    assert not list(tmp_path.iterdir())


def test_a_file_in_another_form_is_left_alone(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    own = tmp_path / "words.toml"
    own.write_text('language = "o"\nlabels = { friability = "brittle" }\n', encoding="utf-8")
    monkeypatch.setenv("ONEBASIS_MAPPINGS", str(own))
    with pytest.raises(own_words.CannotWriteError, match="by hand"):
        own_words.draft(tmp_path, "colour", "tint of wort")


def test_the_written_file_is_understood(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """What the desk writes, the program reads as it was meant: in a fresh process, as a user would."""
    import os
    import subprocess
    import sys

    monkeypatch.delenv("ONEBASIS_MAPPINGS", raising=False)
    draft = own_words.draft(tmp_path, "total_nitrogen", "Nitr. gehalt X")
    assert not draft.is_used
    own_words.write(draft)
    told = subprocess.run(
        [sys.executable, "-m", "importer", "label", "Nitr. gehalt X", "--json"],
        env={**os.environ, "ONEBASIS_MAPPINGS": str(draft.path)},
        capture_output=True,
        text=True,
        check=True,
    )
    assert '"parameter": "total_nitrogen"' in told.stdout
    assert '"state": "sure"' in told.stdout
