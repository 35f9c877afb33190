"""The pages themselves, asked without a browser: what they show, save, refuse and offer."""

from __future__ import annotations

import io
from collections.abc import Callable
from pathlib import Path

import pytest
from PIL import Image

from importer.desk.repairs import repairs
from importer.drawing.boxes import row_of
from importer.drawing.pages import Pictures, draw_page
from importer.store import places
from importer.store.corrections import load
from importer.store.ledger import Store
from tests.desk.conftest import Desk
from tests.desk.sheets import SOUND, changed, draw, take_in

OpenDesk = Callable[..., Desk]


def identity(folder: Path, batch: str = "N-1041") -> str:
    with Store(folder) as store:
        return str(store.connection.execute("SELECT id FROM analyses WHERE batch = ?", (batch,)).fetchone()[0])


@pytest.fixture
def lost_point(tmp_path: Path) -> Path:
    return take_in(tmp_path / "store", draw(tmp_path / "sheet.pdf", changed("Moisture", "45")))


def test_an_empty_store_says_so(tmp_path: Path, open_desk: OpenDesk) -> None:
    (tmp_path / "store").mkdir()
    assert "Nothing waits" in open_desk(tmp_path / "store").text("/")


def test_the_list_leads_to_the_first_step(lost_point: Path, open_desk: OpenDesk) -> None:
    desk = open_desk(lost_point)
    page = desk.text("/")
    assert "3 figures on 1 sheet." in page
    assert "Pale Ale Malt · batch N-1041" in page
    answer = desk.client.get(f"/sheet/{identity(lost_point)}")
    assert answer.headers["Location"].endswith(f"/sheet/{identity(lost_point)}/0")


def test_a_figure_is_shown_with_everything_that_helps(lost_point: Path, open_desk: OpenDesk) -> None:
    page = open_desk(lost_point).text(f"/sheet/{identity(lost_point)}/0")
    for told in ("45 % is not possible for Moisture", "a lost decimal point", "as is = dry", "1 of 3 on this sheet"):
        assert told in page, told
    assert 'data-key="Enter a"' not in page  # what no malt has is not accepted by a slip of the finger
    assert f'href="/page/{identity(lost_point)}/1.png"' in page


def test_a_saved_correction_leads_to_the_next_thing_that_waits(tmp_path: Path, open_desk: OpenDesk) -> None:
    folder = take_in(
        tmp_path / "store",
        draw(tmp_path / "a.pdf", changed("Moisture", "45"), date="2024-11-20"),
        draw(tmp_path / "b.pdf", changed("Colour", "5.2", unit=""), batch="N-1042", date="2024-11-12"),
    )
    desk = open_desk(folder)
    address = f"/sheet/{identity(folder)}/0"
    answer = desk.say(address, revision=desk.revision(address), action="change", value="4.5")
    assert answer.headers["Location"].startswith(f"/sheet/{identity(folder, 'N-1042')}/3")
    address = answer.headers["Location"].partition("?")[0]
    assert desk.say(address, revision=desk.revision(address), action="accept").headers["Location"] == "/?told=saved"
    assert "Nothing waits" in desk.text("/")


def test_a_stale_save_keeps_what_was_typed_and_saves_nothing(lost_point: Path, open_desk: OpenDesk) -> None:
    one, other = open_desk(lost_point), open_desk(lost_point, name="Bert")
    address = f"/sheet/{identity(lost_point)}/0"
    seen = other.revision(address)
    one.say(address, revision=one.revision(address), action="change", value="4.5")
    answer = other.say(address, 409, revision=seen, action="change", value="4.6")
    page = answer.get_data(as_text=True)
    assert "Somebody else has changed this sheet" in page
    assert 'value="4.6"' in page
    with Store(lost_point) as store:
        assert store.connection.execute("SELECT person FROM corrections").fetchall() == [("Anna Holt",)]


def test_undo_takes_back_ones_own_last_word(lost_point: Path, open_desk: OpenDesk) -> None:
    desk = open_desk(lost_point)
    address = f"/sheet/{identity(lost_point)}/0"
    desk.say(address, revision=desk.revision(address), action="change", value="4.5")
    assert "/undo/1" in desk.text("/?told=saved")
    assert desk.say("/undo/1").headers["Location"].endswith("/0?told=undone")
    assert "3 figures on 1 sheet." in desk.text("/")
    desk.say("/undo/1", 409)


def test_a_repair_is_offered_only_where_it_is_the_one_that_fits(tmp_path: Path) -> None:
    folder = take_in(
        tmp_path / "store",
        draw(tmp_path / "a.pdf", changed("Moisture", "45")),
        draw(tmp_path / "b.pdf", changed("Friability", "18"), batch="N-1042"),
    )
    with Store(folder) as store:
        case = load(store, identity(folder))
        (offered,) = repairs(case, places.place_of(case.built, 0))
        assert (offered.value, offered.how) == ("4.5", "a lost decimal point")
        assert "then this holds" in offered.effect
        sound = places.place_of(case.built, 3)
        assert repairs(case, sound) == []


def test_the_batch_page_has_every_figure_with_its_steps_and_history(lost_point: Path, open_desk: OpenDesk) -> None:
    desk = open_desk(lost_point)
    address = f"/sheet/{identity(lost_point)}/0"
    desk.say(address, revision=desk.revision(address), action="change", value="4.5")
    page = desk.text(f"/batch/{identity(lost_point)}")
    for told in ("Friability", "corrected by Anna Holt", "Moisture 45 %", "from Total nitrogen", "6.25", "holds"):
        assert told in page, told
    assert "5.2 EBC" in page
    assert "°L" in desk.text(f"/batch/{identity(lost_point)}?basis=ASBC")


def test_earlier_batches_are_drawn(tmp_path: Path, open_desk: OpenDesk) -> None:
    sheets = [
        draw(tmp_path / f"{n}.pdf", changed("Friability", str(84 + n)), batch=f"N-10{n}0", date=f"2024-1{n % 3}-1{n}")
        for n in range(5)
    ]
    folder = take_in(tmp_path / "store", *sheets, draw(tmp_path / "x.pdf", changed("Friability", "8.8")))
    page = open_desk(folder).text(f"/sheet/{identity(folder)}/7")
    assert "5 earlier batches: 84 to 88 %" in page


def test_a_missing_row_is_read_in_its_box_and_added(tmp_path: Path, open_desk: OpenDesk) -> None:
    folder = take_in(tmp_path / "store", draw(tmp_path / "sheet.pdf"))
    desk = open_desk(folder)
    address = f"/sheet/{identity(folder)}/missing"
    box = {"page": "1", "x0": "50", "top": "310", "x1": "480", "bottom": "330"}
    page = desk.say(address, 200, action="read", **box).get_data(as_text=True)
    with Store(folder) as store:
        case = load(store, identity(folder))
        printed = next(f for f in case.part.figures if 310 <= f.box.middle <= 330)
    assert f'value="{printed.label}"' in page
    assert f'value="{printed.value}"' in page
    desk.say(
        address,
        422,
        action="add",
        revision=desk.revision(address),
        label="Wort pH",
        value="",
        parameter="wort_ph",
        **box,
    )
    form = {"label": "Wort pH", "value": "5.9", "unit": "", "parameter": "wort_ph", **box}
    desk.say(address, action="add", revision=desk.revision(address), **form)
    assert "Wort pH" in desk.text(f"/batch/{identity(folder)}")
    desk.say(address, 422, action="add", revision=desk.revision(address), label="x", value="1", parameter="", **box)
    assert "Draw a box" in desk.say(address, 200, action="read", page="1").get_data(as_text=True)
    small = {"x0": "10", "x1": "11", "top": "10", "bottom": "40"}
    assert "too small" in desk.say(address, 200, action="read", page="1", **small).get_data(as_text=True)


@pytest.mark.parametrize(
    ("words", "row"),
    [
        (["Moisture", "4.5", "%"], ("Moisture", "4.5", "%")),
        (["Sieve", ">", "2.5", "mm", "92.1", "%"], ("Sieve > 2.5 mm", "92.1", "%")),
        (["NDMA", "<", "1.0", "µg/kg"], ("NDMA", "< 1.0", "µg/kg")),
        (["Farbe", "5,2", "EBC"], ("Farbe", "5,2", "EBC")),
        (["Colour"], ("Colour", "", "")),
        ([], ("", "", "")),
    ],
)
def test_words_of_a_box_as_label_value_and_unit(words: list[str], row: tuple[str, str, str]) -> None:
    read = row_of(words)
    assert (read.label, read.value, read.unit) == row


def test_pages_are_drawn_where_the_reader_saw_them(tmp_path: Path) -> None:
    """The ink of a value lies within the box that the reader gave for it."""
    path = draw(tmp_path / "sheet.pdf")
    folder = take_in(tmp_path / "store", path)
    with Store(folder) as store:
        case = load(store, identity(folder))
        drawn = draw_page(path.read_bytes(), "sheet.pdf", 1, "text")
        assert drawn is not None
        image = Image.open(io.BytesIO(drawn)).convert("L")
        scale = image.width / case.kept.by_number[1].width
        for printed in case.part.figures:
            part = image.crop(tuple(round(edge * scale) for edge in printed.box))  # type: ignore[arg-type]
            assert part.getextrema()[0] < 120, printed.label


def test_a_spreadsheet_is_drawn_too(tmp_path: Path) -> None:
    data = (
        "\n".join(",".join(row) for row in (("Parameter", "Result", "Unit"), *SOUND))
        .replace("grind, ", "grind ")
        .encode()
    )
    drawn = draw_page(data, "sheet.csv", 1, "spreadsheet")
    assert drawn is not None
    assert Image.open(io.BytesIO(drawn)).convert("L").getextrema()[0] < 120


def test_a_harmful_document_costs_its_picture_and_nothing_else(tmp_path: Path) -> None:
    pictures = Pictures()
    try:
        assert pictures.draw("1", b"%PDF-1.7 broken", "x.pdf", 1, "text") is None
        assert pictures.draw("2", b"\x89PNG\r\n\x1a\n broken", "x.png", 1, "ocr") is None
        sound = draw(tmp_path / "sheet.pdf").read_bytes()
        assert pictures.draw("3", sound, "sheet.pdf", 7, "text") is None
        first = pictures.draw("3", sound, "sheet.pdf", 1, "text")
        assert first is not None
        assert pictures.draw("3", b"", "sheet.pdf", 1, "text") == first
    finally:
        pictures.close()


def test_the_original_of_a_settled_sheet_leaves_the_set_aside_folder(tmp_path: Path, open_desk: OpenDesk) -> None:
    path = draw(tmp_path / "in" / "sheet.pdf", changed("Colour", "5.2", unit=""))
    data = path.read_bytes()
    folder = take_in(tmp_path / "store", path, filed=True)
    aside = folder / "set-aside" / "to-review" / "sheet.pdf"
    assert aside.read_bytes() == data
    desk = open_desk(folder)
    address = f"/sheet/{identity(folder)}/3"
    desk.say(address, revision=desk.revision(address), action="accept")
    desk.done()
    filed = folder / "filed" / "Nordtal Malting" / "2024" / "N-1041" / "sheet.pdf"
    assert filed.read_bytes() == data
    assert list(aside.parent.iterdir()) == []
    assert desk.client.get(f"/page/{identity(folder)}/1.png").status_code == 200


def test_nothing_is_moved_while_files_are_taken_in(tmp_path: Path, open_desk: OpenDesk) -> None:
    from importer.store.lock import only_writer

    path = draw(tmp_path / "in" / "sheet.pdf", changed("Colour", "5.2", unit=""))
    folder = take_in(tmp_path / "store", path, filed=True)
    desk = open_desk(folder)
    address = f"/sheet/{identity(folder)}/3"
    with only_writer(folder):
        desk.say(address, revision=desk.revision(address), action="accept")
        desk.done()
        assert (folder / "set-aside" / "to-review" / "sheet.pdf").is_file()


def test_the_head_is_told_in_words(tmp_path: Path, open_desk: OpenDesk) -> None:
    folder = take_in(tmp_path / "store", draw(tmp_path / "sheet.pdf", batch="?"))
    with Store(folder) as store:
        (sheet,) = store.connection.execute("SELECT id FROM analyses").fetchone()
    desk = open_desk(folder)
    address = f"/sheet/{sheet}/head"
    desk.say(
        address, revision=desk.revision(address), action="header", **{"h-batch": "N-1049", "h-malt": "Pale Ale Malt"}
    )
    assert "corrected: head of the sheet" in desk.text("/?told=saved")
    page = desk.text(f"/batch/{sheet}")
    assert "Batch: N-1049" in page
    assert "{" not in page.partition("What was said")[2]


@pytest.mark.ocr
def test_a_box_on_a_scan_is_read_by_eye() -> None:
    """The row of friability on the drawn scan of the demo, in the place that the reader gave for it."""
    from importer.drawing.boxes import read_box
    from importer.kept import from_json
    from importer.pipeline import read_and_keep

    path = Path(__file__).parents[2] / "fixtures" / "demo" / "quillbrook-lager-scan.png"
    kept = from_json(read_and_keep(path).printed)
    row = next(one for one in kept.parts[0].figures if one.label == "Friability")
    page = kept.by_number[1]
    box = (20.0, row.box.top - 5, page.width - 20, row.box.bottom + 5)
    read = read_box(path.read_bytes(), path.name, 1, "ocr", box, page.width)
    assert (read.label, read.value, read.unit) == ("Friability", "88", "%")
