"""The table: everything a brewer has to know, nothing that a sheet could make a terminal do."""

from __future__ import annotations

import io
import re
import unicodedata

import pytest
from hypothesis import given
from hypothesis import strategies as st

from importer.models import Document, Limits, Step, Unrecognised
from importer.output.table_line import rounded_range, spread_text
from importer.output.table_out import to_table
from importer.output.terminal import Style, clean, columns, fit
from tests.outputs import factory


class Terminal(io.StringIO):
    def isatty(self) -> bool:
        return True


def test_head_figures_doubts_rows_checks_and_problems_are_told() -> None:
    text = to_table(factory.document())
    assert "Pale Ale Malt · batch PA-2024-017" in text
    assert "Nordtal Malting" in text
    assert "IoB methods (stated on the sheet), mash at a constant 65 °C" in text
    assert "sheet.pdf, page 1" in text
    assert re.search(r"Moisture +4\.2 % +4\.2 % +max 5 +accepted", text)
    assert re.search(r"Extract, fine grind, dry +309 L°/kg +81\.3 ± 0\.5 % ~ +accepted", text)
    assert re.search(r"38\.0 % +42\.8 ± 2\.5 % ~ +max 45 +review", text)
    assert "? The label could also mean soluble nitrogen." in text
    assert "printed as “SNR”, page 1" in text
    assert "4.8 points were added to bring the ratio from IoB to EBC" in text
    assert "110 mg/L (IoB)" in text
    assert "< 2.5 µg/kg" in text
    assert "10 – 15 min" in text
    assert "Magic number: 7 (page 1)" in text
    assert "0.60 / 1.55 gives 38.7" in text
    assert "fine above coarse" not in text
    assert "does not judge" in text
    assert "locked.pdf is locked with a password. [password-protected]" in text
    assert "1 analysis; 8 figures, 1 to review; 1 row not recognised; 1 problem." in text


def test_a_specification_is_never_called_a_batch() -> None:
    text = to_table(factory.document(factory.analysis(kind="specification")))
    assert "specification, not a batch" in text
    assert "PA-2024-017" not in text.splitlines()[0]


def test_a_missing_or_doubtful_batch_number_is_told() -> None:
    assert "no batch number found" in to_table(factory.document(factory.analysis(header={})))
    doubtful = factory.analysis(header=factory.header("review", batch="PA-1"))
    assert "batch PA-1 (not certain)" in to_table(factory.document(doubtful))


def test_a_question_mark_in_the_head_is_explained() -> None:
    doubtful = factory.header("review", malt="Pale Ale Malt", supplier="Nordtal Malting")
    text = to_table(factory.document(factory.analysis(header=doubtful)))
    assert text.startswith("Pale Ale Malt? · ")
    assert "supplier Nordtal Malting?" in text
    assert "? in the head, malt, supplier: the sheet does not say plainly that this is it." in text
    assert "? in the head" not in to_table(factory.document())


@pytest.mark.parametrize(
    ("text", "reading", "told"),
    [
        ("2025-03-04", "spreadsheet", "not what it is the date of"),
        ("4.3.2025", "text", "not what it is the date of"),
        ("04/03/2025", "text", "day and month may stand the other way round"),
        ("2025-03-04", "ocr", "could not be read with certainty"),
    ],
)
def test_a_date_that_reads_in_one_way_is_not_told_to_be_unreadable(text: str, reading: str, told: str) -> None:
    head = factory.header("review", analysed_on="2025-03-04")
    head["analysed_on"] = head["analysed_on"].model_copy(update={"text": text})
    source = {**factory.analysis().source.model_dump(), "reading": reading}
    shown = to_table(factory.document(factory.analysis(header=head, source=source)))
    (note,) = [line for line in shown.splitlines() if "? in the head" in line]
    assert told in note


def test_an_offset_that_was_not_applied_is_told() -> None:
    ratio = factory.ratio()
    assert ratio.method_offset is not None
    offset = ratio.method_offset.model_copy(update={"applied": False})
    kept = ratio.model_copy(update={"method_offset": offset, "family": "IoB", "value": 38.0})
    assert "was not applied" in to_table(factory.document(factory.analysis(kept)))


def test_what_stays_on_its_own_method_is_explained_once() -> None:
    why = "no published relation leads from the IoB mash at 65 °C to the Congress mash."
    glucan = factory.beta_glucan().model_copy(update={"reasons": (f"β-Glucan in wort: {why}",)})
    viscosity = glucan.model_copy(
        update={"parameter": "viscosity", "unit": "mPa·s", "value": 1.6, "reasons": (f"Viscosity: {why}",)}
    )
    text = to_table(factory.document(factory.analysis(glucan, viscosity)))
    assert "110 mg/L (IoB)" in text
    assert "1.6 mPa·s (IoB)" in text
    assert " ".join(text.split()).count(f"(IoB) stays on the sheet's own method: {why}") == 1
    assert text.count("relation leads") == 1
    mebak = glucan.model_copy(update={"family": "EBC"})
    assert "110 mg/L (65 °C mash)" in to_table(factory.document(factory.analysis(mebak, method_family="EBC")))


def test_values_keep_the_decimals_of_the_sheet() -> None:
    whole = factory.moisture(4.0).model_copy(update={"printed": factory.printed("Wasser", "4,0")})
    assert re.search(r"4,0 % +4\.0 %", to_table(factory.document(factory.analysis(whole))))


def test_a_check_is_told_once() -> None:
    detail = "0.60 / 1.55 gives 38.7, printed is 38.0"
    ratio = factory.ratio().model_copy(update={"reasons": (f"It does not agree with other figures: {detail}",)})
    assert " ".join(to_table(factory.document(factory.analysis(ratio))).split()).count(detail) == 1


def test_figures_in_review_without_reasons_still_say_why() -> None:
    bare = factory.moisture().model_copy(update={"state": "review", "flags": ("unit-assumed",)})
    assert "No unit is printed for this figure." in to_table(factory.document(factory.analysis(bare)))
    barest = factory.moisture().model_copy(update={"state": "review"})
    assert "Please compare it with the sheet." in to_table(factory.document(factory.analysis(barest)))


def test_nothing_read_is_told() -> None:
    assert to_table(Document(basis="EBC")) == "0 analyses.\n"


def test_a_unit_that_stands_in_the_value_is_not_said_twice() -> None:
    rows = [("96.9 %", "%"), ("3.7", "%"), ("12", None)]
    unknown = tuple(
        {"label": f"Row {n}", "value": value, "unit": unit, "page": 1, "box": factory.BOX}
        for n, (value, unit) in enumerate(rows)
    )
    text = to_table(factory.document(factory.analysis(factory.moisture(4.2), unrecognised=unknown)))
    for line in ("Row 0: 96.9 % (page 1)", "Row 1: 3.7 % (page 1)", "Row 2: 12 (page 1)"):
        assert line in text


@pytest.mark.parametrize(
    "attack",
    ["\x1b[2J\x1b[31mred", "\x1b]0;title\x07", "\x9b31m", "a\u202egnp.exe", "a\rb", "a\x08\x08b", "a\u2066b", "\x00"],
)
def test_nothing_of_a_sheet_reaches_the_terminal_unseen(attack: str) -> None:
    figure = factory.odour(attack).model_copy(
        update={"state": "review", "reasons": (attack,), "printed": factory.printed(attack, attack, attack)}
    )
    sheet = factory.analysis(
        figure,
        header=factory.header(supplier=attack, malt=attack, batch=attack, variety=attack),
        source={"file": attack, "sha256": factory.HASH, "pages": (1,), "reading": "text"},
        unrecognised=({"label": attack, "value": attack, "unit": attack, "page": 1, "box": factory.BOX},),
        checks=({"check": attack, "parameters": (), "holds": False, "detail": attack},),
    )
    problem = factory.problem().model_copy(update={"message": attack})
    text = to_table(factory.document(sheet, problems=(problem,)))
    assert not [c for c in text if c != "\n" and (unicodedata.category(c) in ("Cc", "Cf", "Cs") or not c.isprintable())]


@given(st.text())
def test_cleaned_text_is_one_printable_line(text: str) -> None:
    assert clean(text).isprintable()


@given(st.text(), st.integers(1, 40))
def test_cut_text_fits(text: str, width: int) -> None:
    assert columns(fit(clean(text), width)) <= width


@pytest.mark.parametrize("width", [72, 80, 100, 140])
def test_lines_fit_the_width(width: int, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setenv("COLUMNS", str(width))
    assert max(columns(line) for line in to_table(factory.document()).splitlines()) <= width


def test_wide_characters_keep_columns_in_line() -> None:
    figure = factory.moisture().model_copy(update={"printed": factory.printed("水分", "4.2", "％")})
    lines = to_table(factory.document(factory.analysis(figure, factory.extract(), derived=()))).splitlines()
    rows = [line for line in lines if line.endswith(" accepted")]
    assert len({columns(row) for row in rows}) == 1
    assert len(rows) == 2


def test_colour_only_on_a_terminal_and_never_against_the_users_wish(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.delenv("NO_COLOR", raising=False)
    monkeypatch.setenv("TERM", "xterm")
    assert "\x1b[" in to_table(factory.document(), Style(Terminal()))
    assert "\x1b[" not in to_table(factory.document(), Style(io.StringIO()))
    monkeypatch.setenv("NO_COLOR", "1")
    assert "\x1b[" not in to_table(factory.document(), Style(Terminal()))


def test_a_unit_that_stands_in_the_value_is_said_once() -> None:
    row = Unrecognised(label="Malttest", value="96.9 %", unit="%", page=1, box=factory.BOX)
    assert "Malttest: 96.9 % (page 1)" in to_table(factory.document(factory.analysis(unrecognised=(row,))))


@pytest.mark.parametrize(
    ("spread", "number", "shown"),
    [(0.075, "7.5", "0.08"), (2.5, "42.8", "2.5"), (0.1, "4.0", "0.1"), (0.14, "7.5", "0.14"), (12.6, "250", "13")],
)
def test_a_spread_has_the_decimals_of_its_number_unless_they_would_change_it(
    spread: float, number: str, shown: str
) -> None:
    assert spread_text(spread, number) == shown


def test_converted_limits_are_shown_at_the_decimals_of_the_parameter() -> None:
    step = {
        "kind": "unit",
        "from": {"value": 4.0, "unit": "SRM"},
        "to": {"value": 7.88, "unit": "EBC"},
        "formula": "SRM × 1.97",
        "source": "a test",
    }
    plain = factory.moisture(4.2).model_copy(update={"limits": Limits(low=3.955, high=4.5)})
    assert "3.955 – 4.5" in to_table(factory.document(factory.analysis(plain)))
    converted = plain.model_copy(
        update={"parameter": "colour", "unit": "EBC", "steps": (Step.model_validate(step),)}
        | {"limits": Limits(low=7.092, high=8.077)}
    )
    assert "7.1 – 8.1" in to_table(factory.document(factory.analysis(converted)))


RATIO_STEP = {
    "kind": "correlation",
    "from": {"value": 36, "unit": "%"},
    "to": {"value": 40.5, "unit": "%"},
    "formula": "ratio × 1.125",
    "source": "a test",
}


def test_the_ends_of_a_converted_range_are_rounded_alike() -> None:
    made = {"parameter": "colour", "value": None, "unit": "EBC", "bound": "range", "range": (4.1368, 5.02354)}
    steps = (Step.model_validate(RATIO_STEP),)
    colour = factory.moisture().model_copy(update=made | {"spread": 0.041, "steps": steps, "limits": Limits()})
    shown = to_table(factory.document(factory.analysis(colour, factory.odour(), derived=())))
    assert "4.14 – 5.02 ± 0.04 EBC" in shown
    rows = [line for line in shown.splitlines() if line.endswith(" accepted")]
    assert len({columns(row) for row in rows}) == 1, "a long range keeps the states in line"
    assert rounded_range(304.96, 312.0, 1) == "305 – 312"
    assert rounded_range(99.96, 312.0, 1) == "100.0 – 312.0"


@pytest.mark.parametrize("unit", ["min", "EBC", "-", "–", None])
def test_a_described_result_has_no_unit(unit: str | None) -> None:
    """ "normal" in a row whose unit is min is no number of minutes; a dash in the column of units is no unit."""
    described = factory.odour().model_copy(
        update={
            "parameter": "saccharification_time",
            "unit": "min",
            "printed": factory.printed("Saccharification", "normal", unit),
        }
    )
    (line,) = (
        line for line in to_table(factory.document(factory.analysis(described))).splitlines() if " normal " in line
    )
    assert re.fullmatch(r"  Saccharification time +normal +normal +accepted", line)


def test_a_dash_is_no_unit_of_a_number_either() -> None:
    figure = factory.ph().model_copy(update={"printed": factory.printed("pH", "5.94", "–")})
    assert "5.94 –" not in to_table(factory.document(factory.analysis(figure, derived=())))
    wide = factory.moisture().model_copy(update={"printed": factory.printed("水分", "4.2", "％")})
    assert "4.2 ％" in to_table(factory.document(factory.analysis(wide, derived=())))
