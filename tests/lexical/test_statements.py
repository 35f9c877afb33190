"""Titles and notes. Sources: the names of method collections are those that their publishers print (Analytica-EBC of
the European Brewery Convention, MEBAK collections, ASBC Methods of Analysis, Recommended Methods of the Institute of
Brewing); the numbers of the mashes are EBC 4.5.1 and 4.6.1 and MEBAK R-206.00.002 and R-207.00.002."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from importer.vocabulary.captions import (
    basis_of_some,
    basis_statement,
    document_title,
    family_statement,
    mash_statement,
)


@pytest.mark.parametrize(
    ("text", "title"),
    [
        ("Certificate of Analysis", "certificate"), ("certificate of analysis (COA)", "certificate"),
        ("Malzanalyse", "certificate"),
        ("Analysenzertifikat", "certificate"), ("bulletin d'analyse", "certificate"),
        ("hoja de análisis de la malta", "certificate"),
        ("foglio di analisi del malto", "certificate"), ("Ficha de Análise do Malte", "certificate"),
        ("麦芽检验报告单", "certificate"),
        ("Certificate of Analysis according to specification 12", "certificate"),
        ("product specification", "specification"),
        ("Produktspezifikation", "specification"), ("fiche technique de malt", "specification"),
        ("moutspecificatieblad", "specification"),
        ("technical data sheet", "specification"), ("Malt Shipment Ranges", "specification"),
        ("TYPICAL ANALYSIS", "typical"),
        ("Typische Analyse Pilsner Malz", "typical"), ("valeurs typiques", "typical"), ("Moisture", None),
        ("Pilsner malt", None), ("", None),
        ("Kwaliteitscertificaat mout", "certificate"), ("Kvalitetscertifikat", "certificate"),
        ("Informe de análisis", "certificate"), ("Atest jakości", "certificate"), ("Laboratory report", "certificate"),
        ("Malzuntersuchung", "certificate"), ("Zpráva o rozboru sladu", "certificate"),
        ("Produktdatenblatt", "specification"), ("Capitolato malto", "specification"), ("Typická analýza", "typical"),
    ],
)  # fmt: skip
def test_titles(text: str, title: str | None) -> None:
    assert document_title(text) == title


@pytest.mark.parametrize(
    ("text", "basis"),
    [
        ("All results on dry matter basis", "dry"), ("Angaben in der Trockensubstanz", "dry"),
        ("results expressed as is unless stated", "as-is"),
        ("All results except moisture are stated as is.", "as-is"), ("Unless stated otherwise: dry basis", "dry"),
        ("Except for moisture, the chemical values are stated on the dry substance", "dry"),
        ("All results except moisture and extract on dry basis", None), ("Except extract, dry basis", None),
        ("All results on dry basis except moisture", "dry"), ("moisture as is, other results dry basis", "dry"),
        ("All results are on a dry basis unless stated as is", "dry"), ("In Trockensubstanz außer Wassergehalt", "dry"),
        ("résultats exprimés sur sec", "dry"), ("以干基计", "dry"), ("% dry", "dry"), ("dry", "dry"),
        ("(as is)", "as-is"), ("TrS", "dry"),
        ("lufttrocken", "as-is"), ("Extract dry", "dry"), ("Store in a cool, dry place", None),
        ("Trocken lagern", None), ("Farbe", None),
        ("Extract as is and dry basis", None),
        ("Extrakt- und Eiweißwerte auf Malztrockensubstanz bezogen", "dry"), ("figures on dry", "dry"),
        ("Extract en eiwit zijn uitgedrukt op droge stof", "dry"), ("Hodnoty jsou uvedeny v sušině", "dry"),
        ("v suchém sladu", "dry"), ("zoals ontvangen", "as-is"), ("come ricevuto", "as-is"), ("lufttørt", "as-is"),
        ("Opbevares tørt og køligt", None), ("Skladujte v suchu a chladu", None),
        ("dry matter content", None), ("", None),
        ("Høst (år)", None),
        ("Barley as received, laboratory value", None),
    ],
)  # fmt: skip
def test_moisture_basis(text: str, basis: str | None) -> None:
    assert basis_statement(text) == basis


@pytest.mark.parametrize(
    ("text", "some"),
    [
        ("All on dry matter except the extract", True), ("All results as is, except protein (dry)", True),
        ("All results except moisture and extract on dry basis", True),
        ("All results on dry basis except moisture", False), ("All on dry matter unless stated otherwise", False),
        ("Not to be reproduced except in full", False), ("All results on dry basis", False), ("", False),
    ],
)  # fmt: skip
def test_notes_that_except_figures_of_a_basis(text: str, some: bool) -> None:
    assert basis_of_some(text) is some


@pytest.mark.parametrize(
    ("text", "family"),
    [
        ("Methods: EBC", "EBC"), ("according to Analytica-EBC", "EBC"), ("MEBAK", "EBC"), ("EBC 4.2", "EBC"),
        ("EBC", "EBC"),
        ("IoB Recommended Methods", "IoB"), ("Institute of Brewing", "IoB"), ("IOB 2.7", "IoB"), ("EBC 4.6.1", "IoB"),
        ("ASBC Methods of Analysis", "ASBC"), ("ASBC Malt-4", "ASBC"), ("Analyzed according to ASBC methods", "ASBC"),
        ("Colour in EBC units", None), ("Farbe EBC-Einheiten", None), ("IoB and EBC methods", None),
        ("loB Recommended Methods", "IoB"), ("Analysis by loB Recommended Methods, EBC colour.", None),
        ("This malt was produced for brewing", None), ("", None),
        ("Analysenmethoden: EBC", "EBC"), ("Bestemt efter EBC", "EBC"), ("EBC Malt 4.3.1", "EBC"),
        ("Ensayos según ASBC", "ASBC"),
        # Rows of figures.
        ("alpha-Amylase (ASBC) 48", None), ("Viscosity EBC 1.55", None), ("Wort colour 3.5 EBC", None),
        ("HWE IoB 308 L°/kg", None), ("Friability (EBC) 85", None), ("Kolbach EBC 4.9.1 40", None),
    ],
)  # fmt: skip
def test_method_family(text: str, family: str | None) -> None:
    assert family_statement(text) == family


@pytest.mark.parametrize(
    ("text", "mash"),
    [
        ("Kongresswürze", "congress"), ("congress wort", "congress"), ("EBC 4.5.1", "congress"),
        ("MEBAK R-206.00.002 [2016-03]", "congress"),
        ("65 °C mash", "isothermal-65"), ("Isothermal 65°C", "isothermal-65"), ("MEBAK R-207.00.002", "isothermal-65"),
        ("nach MEBAK, isothermes 65 °C-Maischverfahren", "isothermal-65"), ("EBC 4.6.1", "isothermal-65"),
        ("VZ 45 °C", None),
        ("Congress mash and isothermal 65 °C mash", None), ("", None),
    ],
)  # fmt: skip
def test_mash(text: str, mash: str | None) -> None:
    assert mash_statement(text) == mash


@given(st.text(max_size=200))
def test_never_an_exception(text: str) -> None:
    assert document_title(text) in ("certificate", "specification", "typical", None)
    assert basis_statement(text) in ("dry", "as-is", None)
    assert family_statement(text) in ("EBC", "IoB", "ASBC", None)
    assert mash_statement(text) in ("congress", "isothermal-65", None)
