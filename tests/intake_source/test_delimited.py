"""Text with columns, as office programs of several countries write it."""

from __future__ import annotations

import csv
import io

import pytest
from hypothesis import given
from hypothesis import strategies as st

from importer.intake.delimited import find_delimiter, looks_delimited, rows
from importer.intake.encoding import decode

GERMAN = "Parameter;Ergebnis;Einheit\nWassergehalt;4,2;%\nEiweißlösungsgrad;41,3;%\nFarbe;3,5;EBC\nβ-Glucan;110;mg/l\n"


@pytest.mark.parametrize("encoding", ["utf-8", "utf-8-sig", "utf-16", "utf-16-le", "utf-16-be", "utf-32"])
def test_unicode_encodings(encoding: str) -> None:
    assert decode(GERMAN.encode(encoding)) == GERMAN


@pytest.mark.parametrize(
    ("text", "encoding"),
    [
        ("Eiweißlösungsgrad;41,3 °C;µg/kg", "cp1252"),
        ("Eiweißlösungsgrad;41,3", "cp850"),
        ("Extrait à 45 °C;humidité", "cp1252"),
        ("Extrait à 45 °C;humidité;protéines;couleur", "mac_roman"),
        ("Vlhkost;Barva při 20 °C;Bílkoviny celkové", "cp1250"),
        ("Wilgotność;Białko ogółem;Gęstość;Świeżość", "cp1250"),
        ("Влажность;Экстракт;Цвет", "cp1251"),
        ("Υγρασία;Εκχύλισμα;Χρώμα", "cp1253"),
        ("Vand;Farve ved 20 °C;Størrelse;Ånd", "cp1252"),
        ("Malt nem oranı;Renk;Çözünür azot;Şeker", "cp1254"),
        ("Vlhkost;Bílkoviny celkové;Barva při", "cp852"),
        ("Humedad;Proteína;Índice de Kolbach;Año", "cp1252"),
    ],
)
def test_one_byte_encodings(text: str, encoding: str) -> None:
    assert decode(text.encode(encoding)) == text


def test_bytes_that_are_no_text() -> None:
    assert decode(bytes(range(256))) is None
    assert decode(b"\x00\x01\x02\x03") is None


@pytest.mark.parametrize(
    ("text", "delimiter"),
    [
        (GERMAN, ";"),
        (GERMAN.replace(";", "\t"), "\t"),
        (GERMAN.replace(";", "|"), "|"),
        ("Parameter,Result,Unit\nMoisture,4.2,%\nColour,3.5,EBC\n", ","),
        ('Parameter,Result\n"Extract, fine, dry",81.2\n"Nitrogen, total",1.62\n', ","),
        ("Supplier;Nordtal, Süd & Co\n\nMoisture;4,2\nColour;3,5\n", ";"),
        ("just words\nand more words\n", None),
    ],
)
def test_the_delimiter_is_found(text: str, delimiter: str | None) -> None:
    assert find_delimiter(text) == delimiter


def test_decimal_commas_stay_in_their_cells() -> None:
    assert list(rows(GERMAN))[1:3] == [["Wassergehalt", "4,2", "%"], ["Eiweißlösungsgrad", "41,3", "%"]]


def test_a_stated_delimiter_is_believed() -> None:
    assert list(rows("sep=|\nMoisture|4,2;x\n")) == [["Moisture", "4,2;x"]]


def test_quoted_cells_may_hold_anything() -> None:
    assert list(rows('a;"b;""c""\nd"\ne;f\n')) == [["a", 'b;"c"\nd'], ["e", "f"]]


def test_tables_are_told_from_prose() -> None:
    assert looks_delimited(GERMAN)
    assert not looks_delimited("Dear brewer, hello.\nThanks, and so on, and more.\nBye.\n")
    assert not looks_delimited("one;two\n")


CELLS = st.text(st.characters(codec="utf-8", exclude_categories=("Cc", "Cs")), min_size=1, max_size=8).map(
    lambda text: text.strip().removeprefix("sep=")
)


@given(st.lists(st.lists(CELLS, min_size=3, max_size=3), min_size=2, max_size=6), st.sampled_from([";", "\t"]))
def test_what_a_general_library_wrote_is_read(table: list[list[str]], delimiter: str) -> None:
    """Written by the csv module with every cell quoted, so that the delimiter is beyond doubt."""
    out = io.StringIO()
    csv.writer(out, delimiter=delimiter, quoting=csv.QUOTE_ALL, lineterminator="\n").writerows(table)
    assert decode(out.getvalue().encode()) == out.getvalue()
    assert list(rows(out.getvalue())) == table
