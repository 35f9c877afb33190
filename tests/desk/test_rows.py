"""Rows that no parameter was found for come up behind the figures in doubt, and are settled once for a supplier."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest

from importer.desk import queue
from importer.store import learned, settling
from importer.store.corrections import Case, load
from importer.store.ledger import Store
from importer.store.selection import Wanted, choose
from tests.desk.conftest import Desk
from tests.desk.sheets import SOUND, Row, changed, draw, take_in, uncertain_malt
from tests.desk.test_settling import figure, row_of

OpenDesk = Callable[..., Desk]
CaseIn = Callable[..., tuple[Store, Case]]
ODD: Row = ("Zorblax index", "3.7", "%")
STRANGE: Row = ("Quibble factor", "12", "")


def identity(folder: Path, batch: str = "N-1041") -> str:
    with Store(folder) as store:
        return str(store.connection.execute("SELECT id FROM analyses WHERE batch = ?", (batch,)).fetchone()[0])


def test_they_come_behind_the_figures_in_doubt(tmp_path: Path, case_in: CaseIn) -> None:
    rows = (ODD, *changed("Colour", "5.2", unit=""), STRANGE)
    _, case = case_in(take_in(tmp_path / "store", draw(tmp_path / "a.pdf", rows)))
    labels = [case.part.figures[step.row or 0].label for step in queue.steps(case)]
    assert labels == ["Colour", "Zorblax index", "Quibble factor"]


def test_one_key_says_that_it_is_no_figure_and_leads_on(tmp_path: Path, open_desk: OpenDesk) -> None:
    folder = take_in(
        tmp_path / "store",
        draw(tmp_path / "a.pdf", (*changed("Colour", "5.2", unit=""), ODD), date="2024-11-20"),
        draw(tmp_path / "b.pdf", (*SOUND, STRANGE), batch="N-1042", date="2024-11-25"),
        draw(tmp_path / "c.pdf", changed("Colour", "5.3", unit="", rename="Wort colour"), batch="N-1043"),
    )
    desk = open_desk(folder)
    page = desk.text("/")
    assert "2 figures on 2 sheets." in page
    assert "1 sheet has nothing in doubt but rows" in page
    first, only_rows, last = (f"/sheet/{identity(folder, batch)}" for batch in ("N-1041", "N-1042", "N-1043"))
    answer = desk.say(f"{first}/3", revision=desk.revision(f"{first}/3"), action="accept")
    assert answer.headers["Location"].startswith(f"{first}/8")
    page = desk.text(f"{first}/8")
    assert "No parameter found" in page
    assert 'data-key="x"' in page
    assert 'data-key="Enter a"' not in page
    answer = desk.say(f"{first}/8", revision=desk.revision(f"{first}/8"), action="reject")
    assert answer.headers["Location"].startswith(f"{last}/3")  # figures in doubt first, on whichever sheet
    answer = desk.say(f"{last}/3", revision=desk.revision(f"{last}/3"), action="accept")
    assert answer.headers["Location"].startswith(f"{only_rows}/8")
    page = desk.text("/")
    assert "Nothing is in doubt." in page
    assert f'href="{only_rows}" data-key="Enter"' in page
    answer = desk.say(f"{only_rows}/8", revision=desk.revision(f"{only_rows}/8"), action="reject")
    assert answer.headers["Location"] == "/?told=saved"
    assert "Nothing waits." in desk.text("/")
    assert "There are none." in desk.text("/sheets?kind=unknown")


@pytest.fixture
def passed(tmp_path: Path, case_in: CaseIn) -> Path:
    """A store in which a row of the supplier was said to be none of the parameters."""
    folder = take_in(tmp_path / "store", draw(tmp_path / "a.pdf", (*SOUND, ODD)))
    store, case = case_in(folder)
    saved = settling.reject(store, case, row_of(case, ODD[0]), "Anna")
    assert [(lesson.kind, lesson.means) for lesson in saved.lessons] == [("label", "none")]
    return folder


def test_the_next_sheet_keeps_the_row_and_does_not_ask(passed: Path, tmp_path: Path, case_in: CaseIn) -> None:
    take_in(passed, draw(tmp_path / "b.pdf", (*SOUND, ODD, STRANGE), batch="N-1042"))
    store, case = case_in(passed, "N-1042")
    labels = [row.label for row in case.built.analysis.unrecognised]
    assert labels == ["Parameter / Zorblax index", "Parameter / Quibble factor"]
    assert [step.row for step in queue.steps(case)] == [row_of(case, STRANGE[0])]
    waits = store.connection.execute("SELECT unknown_rows, asked_rows, waits FROM analyses WHERE id = ?", (case.id,))
    assert waits.fetchone() == (2, 1, 1)


def test_taking_it_back_has_it_asked_again(passed: Path, tmp_path: Path, open_desk: OpenDesk) -> None:
    take_in(passed, draw(tmp_path / "b.pdf", (*SOUND, ODD), batch="N-1042"))
    desk = open_desk(passed)
    assert "Nothing waits." in desk.text("/")
    desk.say("/undo/1")
    desk.done()
    with Store(passed) as store:
        assert store.connection.execute("SELECT asked_rows, waits FROM analyses").fetchall() == [(1, 1), (1, 1)]
        assert len(choose(store, Wanted(batch="N-1041")).analyses[0].unrecognised) == 1


def test_one_that_waits_already_is_not_asked_any_more(tmp_path: Path, open_desk: OpenDesk) -> None:
    folder = take_in(
        tmp_path / "store",
        draw(tmp_path / "a.pdf", (*SOUND, ODD)),
        draw(tmp_path / "b.pdf", (*SOUND, ODD), batch="N-1042"),
    )
    desk = open_desk(folder)
    address = f"/sheet/{identity(folder)}/8"
    desk.say(address, revision=desk.revision(address), action="reject")
    desk.done()
    assert "Nothing waits." in desk.text("/")
    with Store(folder) as store:
        assert len(choose(store, Wanted(batch="N-1042")).analyses[0].unrecognised) == 1


def test_one_that_is_known_now_is_read_all_the_same(passed: Path, case_in: CaseIn) -> None:
    """What was learned takes nothing away: a label that the program knows keeps its meaning."""
    store, case = case_in(passed)
    lesson = learned.Lesson("label", "parameter / friability", "Parameter / Friability", learned.NO_PARAMETER)
    learned.learn(store.connection, case.built.analysis, [lesson], 0, "Anna", "2024-11-30T10:00:00+00:00")
    assert figure(load(store, case.id).built.analysis, "friability").value == 88.0


def test_what_its_label_comes_near_to_is_offered(tmp_path: Path, open_desk: OpenDesk) -> None:
    label = "Kolbach zz qq yy ww"
    folder = take_in(tmp_path / "store", draw(tmp_path / "a.pdf", changed("Kolbach index", "40.6", rename=label)))
    desk = open_desk(folder)
    address = f"/sheet/{identity(folder)}/6"
    page = desk.text(address)
    assert "what the label could mean</span>" in page
    assert 'name="parameter" value="nitrogen_ratio"' in page
    desk.say(address, revision=desk.revision(address), action="change", parameter="nitrogen_ratio")
    with Store(folder) as store:
        assert figure(choose(store, Wanted()).analyses[0], "nitrogen_ratio").value == 40.6


def test_a_store_from_before_knows_what_waits(tmp_path: Path) -> None:
    """The columns of what waits are filled for what was taken in by an earlier version."""
    from importer.store import schema

    folder = take_in(
        tmp_path / "store",
        draw(tmp_path / "a.pdf", (*SOUND, ODD)),
        draw(tmp_path / "b.pdf", changed("Colour", "5.2", unit=""), batch="N-1042"),
        draw(tmp_path / "c.pdf", batch="N-1043"),
        uncertain_malt(tmp_path / "d.pdf", batch="N-1044"),
    )
    asked = "SELECT batch, asked_rows, waits FROM analyses ORDER BY batch"
    with Store(folder) as store:
        now = store.connection.execute(asked).fetchall()
        assert now == [("N-1041", 1, 1), ("N-1042", 0, 2), ("N-1043", 0, 0), ("N-1044", 0, 2)]
        for statement in (
            "DROP INDEX analyses_asked",
            "DROP INDEX analyses_waiting",
            "ALTER TABLE analyses DROP COLUMN asked_rows",
            "ALTER TABLE analyses DROP COLUMN waits",
            "CREATE INDEX analyses_unknown ON analyses (dated)",
            "CREATE INDEX analyses_waiting ON analyses (dated)",
            "CREATE INDEX figures_parameter ON figures (parameter, state)",
            f"PRAGMA user_version = {schema.VERSION - 2}",
        ):
            store.connection.execute(statement)
    with Store(folder) as store:
        assert store.connection.execute(asked).fetchall() == now


def test_what_waits_is_found_by_an_index(tmp_path: Path) -> None:
    """Of a store with years of sheets only those that wait are looked at."""
    (tmp_path / "store").mkdir()
    with Store(tmp_path / "store") as store:
        for which in (queue.WAITING, queue.ONLY_ROWS):
            query = f"SELECT id FROM analyses WHERE {which} AND (dated, id) < ('2024', '') ORDER BY dated DESC, id DESC"
            (plan,) = [row[3] for row in store.connection.execute(f"EXPLAIN QUERY PLAN {query}")]
            assert "USING INDEX analyses_waiting (waits=? AND (dated,id)<(?,?))" in plan
