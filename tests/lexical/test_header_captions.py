"""Captions of header entries. Source for the certificate's own entries: ISO/IEC 17025:2017, 7.8.2.1 (what a report
names); the rest is common practice, no source."""

from __future__ import annotations

import tomllib

import pytest
from hypothesis import given
from hypothesis import strategies as st

from importer.data import mappings_folder
from importer.models import HEADER_KEYS
from importer.vocabulary.captions import header_caption
from importer.vocabulary.header_captions import DOUBTFUL, DOUBTFUL_WITH_COLON

FILES = sorted(path for path in (mappings_folder() / "headers").glob("*.toml") if path.stem != "common")
DATA = {path.stem: tomllib.loads(path.read_text(encoding="utf-8")) for path in FILES}
PARTS = ("doubtful", "beside", "events")
LISTED = [
    (key, caption) for raw in DATA.values() for key, captions in raw.items() if key not in PARTS for caption in captions
]


def key_of(text: str) -> str | None:
    found = header_caption(text)
    return found[0] if found else None


def test_every_listed_caption_is_known_and_nearly_all_mean_what_they_are_listed_for() -> None:
    # One word may mean two entries in two languages; those have a low score.
    for key, caption in LISTED:
        found = header_caption(caption)
        assert found is not None, caption
        assert found[0] == key or found[1] <= DOUBTFUL, (caption, key, found)


@pytest.mark.parametrize("language", DATA)
def test_a_language_file_names_known_entries_only(language: str) -> None:
    raw = dict(DATA[language])
    parts = [raw.pop(part, {}) for part in PARTS]
    assert set(raw).union(*parts) <= {*HEADER_KEYS, "date", "ignore"}
    assert {"batch", "supplier", "malt", "produced_on", "analysed_on", "ignore"} <= set(raw)


@pytest.mark.parametrize(
    ("text", "key"),
    [
        ("Batch no.", "batch"), ("Batch code:", "batch"), ("LOT NUMBER", "batch"), ("Lot #", "batch"),
        ("Charge/Los-Nummer", "batch"),
        ("Chargennummer", "batch"), ("Partie-Nr.", "batch"), ("n° de lot", "batch"), ("N°lot", "batch"),
        ("partijnummer", "batch"),
        ("Číslo šarže:", "batch"), ("č. šarže", "batch"), ("Lotto n°", "batch"), ("Numero di lotto", "batch"),
        ("批号", "batch"),
        ("Номер партии", "batch"), ("Maltster", "supplier"), ("Mälzerei", "supplier"), ("Sladovna", "supplier"),
        ("malterie", "supplier"),
        ("Name of Malting Company", "supplier"), ("Malt type", "malt"), ("Malzsorte", "malt"), ("druh sladu", "malt"),
        ("Certificate no.", "certificate"), ("Prüfbericht-Nr.", "certificate"), ("Lab no.", "certificate"),
        ("Analysen-Nr.", "certificate"),
        ("Crop year", "crop_year"), ("Erntejahr", "crop_year"), ("année de récolte", "crop_year"),
        ("sklizeň", "crop_year"),
        ("Barley variety", "variety"), ("Gerstensorte", "variety"), ("odrůda ječmene", "variety"),
        ("Production date", "produced_on"),
        ("Herstellungsdatum", "produced_on"), ("Kilned on", "produced_on"), ("Date of analysis", "analysed_on"),
        ("date(s) of performance of the test", "analysed_on"), ("date of issuance", "analysed_on"),
        ("Datum der Analyse", "analysed_on"),
        ("Delivery date", "delivered_on"), ("Lieferdatum", "delivered_on"), ("Best before:", "best_before"),
        ("MHD", "best_before"),
        ("DLUO", "best_before"), ("t.h.t.", "best_before"), ("Mindesthaltbarkeitsdatum/Verbrauchsdatum", "best_before"),
        ("Net weight (kg)", "quantity"), ("Batch size, tonnes", "quantity"), ("Menge", "quantity"),
        ("Order no.", "order"),
        ("P.O. No.", "order"), ("Bestell-Nr.:", "order"), ("Customer", "customer"), ("Ship to", "customer"),
        ("odběratel", "customer"),
        ("name and address of the customer", "customer"), ("Date", "date"), ("Datum:", "date"),
        ("Malt type (Malzsorte)", "malt"),
        ("Date of production / Herstellungsdatum", "produced_on"), ("生产日期 Production date", "produced_on"),
        ("Produit le", "produced_on"), ("Produit", "malt"), ("Prodotto da", "supplier"), ("Prodotto", "malt"),
        ("Variety/ies", "variety"), ("Gerstensorte/n", "variety"), ("Gerstensorte(n)", "variety"),
        ("Client destinataire", "customer"), ("Bestellzeichen", "order"), ("Netto geleverd", "quantity"),
        ("Tonnes shipped", "quantity"), ("Vare-parti", "batch"), ("Silo lot", "batch"),
    ],
)  # fmt: skip
def test_captions(text: str, key: str) -> None:
    assert key_of(text) == key


@pytest.mark.parametrize(
    "text",
    [
        "Phone:", "Fax", "VAT no.", "Page", "Version", "Approved by", "Customer no.", "Artikelnummer",
        "Product code:", "Vehicle",
        "Sampling date", "Probeneingang", "Silo", "IBAN", "Accreditation no.", "Form no.", "Supplier no.",
        "Invoice no.", "Country of origin",
        "name and address of the laboratory", "Unterschrift/Verantwortlicher", "NUMERO DE REGISTRO SANITARIO",
        "Sample no.",
    ],
)  # fmt: skip
def test_captions_that_lead_nowhere(text: str) -> None:
    assert key_of(text) == "ignore"


@pytest.mark.parametrize(
    "text",
    [
        "Extract", "Moisture", "Protein", "Colour", "Malting loss", "Pregermination %", "assortment", "DU",
        "Kolbach index", "Wort pH",
        "The batch was analysed according to the methods of the convention", "", "  ", "12", "4.5 %",
        "Product: Pilsner", ":", "#",
        "All of these results were found in the malt that was delivered in March", "x" * 500,
    ],
)  # fmt: skip
def test_what_is_no_caption(text: str) -> None:
    assert header_caption(text) is None


@pytest.mark.parametrize(
    ("text", "key"),
    [
        # None of these stands in the mappings; they are made of words that do.
        ("Date touraillage malt", "produced_on"), ("Röstungsdatum", "produced_on"),
        ("Date of kilning end", "produced_on"),
        ("Datum einde analyse mout", "analysed_on"), ("Datum der letzten Verladung", None),
        ("Fecha final de carga", "delivered_on"), ("Date order received", "ignore"), ("Faktureringsdato", None),
        ("Contract signing date", None), ("Bestelldatum", "ignore"), ("Date of birth", None),
        ("Réf. interne du lot", "batch"), ("Internal lot number", "batch"), ("Malt order no.", "order"),
        ("Ref. certificado de calidad", "certificate"), ("Full name of malt supplier", "supplier"),
        ("MHD bis Ende", "best_before"), ("Total quantity loaded (t)", "quantity"),
        ("Raw material variety used", "variety"), ("Harvest year of malting barley", "crop_year"),
        ("Supplier batch size", None), ("Malt colour", None), ("Barley protein", None), ("Malt no.", "ignore"),
    ],
)  # fmt: skip
def test_captions_made_of_known_words(text: str, key: str | None) -> None:
    assert key_of(text) == key


@pytest.mark.parametrize(
    "text",
    [
        "Extracto del mosto (°P)", "Extract of wort (°P)", "pH (moût)", "Rapport S/T", "F.A.N.", "D.P.", "P", "S/T",
        "Analyse", "Essai", "Ensayo", "Analysis data", "Analysenwert", "Analyte", "Resultate", "Weight per hectolitre",
    ],
)  # fmt: skip
def test_labels_heads_and_their_units_name_no_entry_for_sure(text: str) -> None:
    found = header_caption(text)
    assert found is None or found[1] <= DOUBTFUL


@pytest.mark.parametrize(("text", "key"), [("P.O.", "order"), ("P. O. no.", "order"), ("T.H.T.", "best_before")])
def test_dotted_abbreviations(text: str, key: str) -> None:
    assert key_of(text) == key


@pytest.mark.parametrize("text", ["Malt", "Sorte", "Barley", "Date", "Certificate of Analysis", "Quality"])
def test_a_word_with_other_meanings_is_doubtful_and_less_so_with_a_colon(text: str) -> None:
    bare, with_colon = header_caption(text), header_caption(f"{text}:")
    assert bare is not None
    assert with_colon is not None
    assert (bare[1], with_colon[1]) == (DOUBTFUL, DOUBTFUL_WITH_COLON)


@pytest.mark.parametrize(
    ("text", "key"),
    [
        ("8atch No.", "batch"), ("Batch N0.", "batch"), ("Supp1ier", "supplier"), ("Suppiier", "supplier"),
        ("Chargennurnmer", "batch"),
        ("Prcduction date", "produced_on"), ("Herstel1ungsdatum", "produced_on"), ("Customcr", "customer"),
    ],
)  # fmt: skip
def test_damage_of_optical_reading(text: str, key: str) -> None:
    found = header_caption(text)
    assert found is not None
    assert found[0] == key
    assert found[1] < 100


@given(st.sampled_from([caption for _, caption in LISTED]))
def test_case_and_colon_do_not_matter(caption: str) -> None:
    found = key_of(caption)
    assert key_of(caption.upper()) == found
    assert key_of(f" {caption} :") == found


@given(st.text(max_size=100))
def test_never_an_exception(text: str) -> None:
    found = header_caption(text)
    assert found is None or (found[0] in {*HEADER_KEYS, "date", "ignore"} and 0 < found[1] <= 100)
