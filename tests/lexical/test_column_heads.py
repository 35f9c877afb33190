"""Column heads: common practice, no source."""

from __future__ import annotations

import tomllib

import pytest
from hypothesis import given
from hypothesis import strategies as st

from importer.data import mappings_folder
from importer.vocabulary.captions import ROLES, column_role, column_roles

FILES = sorted((mappings_folder() / "columns").glob("*.toml"))
DATA = {path.stem: tomllib.loads(path.read_text(encoding="utf-8")) for path in FILES}


def test_every_listed_head_is_known() -> None:
    for raw in DATA.values():
        for role in (key for key in raw if key in ROLES):
            for head in raw[role]:
                assert column_roles(head), head


@pytest.mark.parametrize(
    ("text", "role"),
    [
        ("Parameter", "label"), ("Analysis", "label"), ("Merkmal", "label"), ("Kenmerk", "label"),
        ("Ukazatel", "label"),
        ("Наименование показателя", "label"), ("检验项目", "label"), ("Result", "result"), ("Ergebnis [%]", "result"),
        ("Messwert", "result"),
        ("Uitslag", "result"), ("Výsledek", "result"), ("Found", "result"), ("Hodnota / Value", "result"),
        ("Result / Ergebnis", "result"),
        ("Unit", "unit"), ("Unidades", "unit"), ("U.M.", "unit"), ("Ед. изм.", "unit"), ("Method", "method"),
        ("Prüfmethoden", "method"),
        ("Test method", "method"), ("identification of the method used", "method"), ("Min.", "min"),
        ("Minimum", "min"), ("von", "min"),
        ("from", "min"), ("Min. limit", "min"), ("Specification min", "min"), ("Maks.", "max"), ("to", "max"),
        ("upper supply limits", "max"),
        ("Spec. max", "max"), ("Specification", "spec"), ("Sollwert", "spec"), ("Richtwert", "spec"),
        ("Guarantee", "spec"),
        ("Spezifikationen (Akzeptanzgrenzen)", "spec"), ("Min - Max", "spec"), ("von - bis", "spec"),
        ("Typical Value", "typical"),
        ("Beispielwert", "typical"), ("Normwert", "typical"), ("valeur type", "typical"),
        ("Previous batch", "previous"),
        ("Vorjahr", "previous"), ("crop 2024", "previous"), ("IoB", "family:IoB"), ("IOB %", "family:IoB"),
        ("EBC", "family:EBC"),
        ("Analytica-EBC", "family:EBC"), ("MEBAK", "family:EBC"), ("ASBC", "family:ASBC"), ("No.", "number"),
        ("N°", "number"), ("#", "number"),
        ("Lp.", "number"), ("Remark", "remark"), ("Bewertung", "remark"), ("R95", "precision"), ("±", "precision"),
        ("Messunsicherheit", "precision"), ("Uncertainty (k=2)", "precision"), ("Date", "date"),
        ("Result Batch 24-0815", "result"),
        ("Prüfgröße", "label"), ("Zkouška", "label"), ("Prova", "label"), ("Ensayo", "label"), ("Bepaling", "label"),
        ("Analyte", "label"), ("Nalezeno", "result"), ("Zjištěno", "result"), ("Fundet", "result"),
        ("Gevonden", "result"), ("VALOR HALLADO", "result"), ("Valore trovato", "result"), ("Outcome", "result"),
        ("Reading", "result"), ("Misura", "unit"), ("in", "unit"), ("Enh.", "unit"), ("Meth.", "method"),
        ("unterer Wert", "min"), ("Nedre grænse", "min"), ("Ondergrens", "min"), ("oberer Wert", "max"),
        ("Inferiore", "min"), ("Agreed", "spec"), ("Kravet", "spec"), ("Meze", "spec"), ("Eis", "spec"),
        ("Grens", "spec"), ("Seuil", "spec"), ("from - to", "spec"), ("van - tot", "spec"), ("od - do", "spec"),
        ("Běžná hodnota", "typical"), ("Valeur usuelle", "typical"), ("Moyenne", "typical"),
        ("Gemiddelde", "typical"), ("Gns.", "typical"), ("Průměr", "typical"), ("Mean", "typical"), ("Ø", "typical"),
        ("Vorcharge", "previous"), ("lot précédent", "previous"), ("vorige partij", "previous"),
        ("lote anterior", "previous"), ("předchozí šarže", "previous"), ("forrige parti", "previous"),
        ("lotto precedente", "previous"), ("Prior crop", "previous"), ("Last delivery", "previous"),
        ("Loňská sklizeň", "previous"), ("LOQ", "precision"), ("Incertezza", "precision"),
        ("conform", "remark"), ("i.O.", "remark"), ("Laboratory", "remark"), ("Vyhovuje", "remark"), ("Data", "date"),
        ("(k=2)", "precision"), ("charges", "spec"), ("Č. ř.", "number"), ("Mass-Einh.", "unit"),
    ],
)  # fmt: skip
def test_heads(text: str, role: str) -> None:
    assert column_role(text) == role


@pytest.mark.parametrize(
    ("text", "roles"),
    [
        ("Result (EBC)", {"result", "family:EBC"}),
        ("EBC Result %", {"result", "family:EBC"}),
        ("Method / Unit", {"method", "unit"}),
        ("Sollwert min", {"min", "spec"}),
        ("Result (Pilsner)", {"result"}),
        ("Value (% dry)", {"result"}),
    ],
)
def test_heads_that_join_several(text: str, roles: set[str]) -> None:
    assert set(column_roles(text)) == roles


@pytest.mark.parametrize(
    "text",
    [
        "", "  ", "Total Protein", "Colour EBC", "Moisture %", "%", "mg/l", "2024", "Extract difference", "pH-Wert",
        "m.c.", "Malt", "Pilsner",
        "S/T ratio", "T.N.", "P.U.G.", "supérieur à 2,8 mm", "mayor de 2,5 mm", "SO2 Gehalt", "Total N", "DP",
        "24-0815", "Min. extract", "Protein value", "Viscosity", "Variety", "x" * 500,
    ],
)  # fmt: skip
def test_labels_and_parameters_are_no_heads(text: str) -> None:
    assert column_roles(text) == ()
    assert column_role(text) is None


@given(st.text(max_size=130))
def test_never_an_exception(text: str) -> None:
    assert set(column_roles(text)) <= set(ROLES)
    assert column_role(text) is None or column_role(text) in ROLES


@pytest.mark.parametrize(
    ("text", "role"),
    [
        ("Limite sup.", "max"), ("Limite inf.", "min"), ("Seuil haut", "max"), ("Cota inferior", "min"),
        ("Soglia sup.", "max"), ("unt. Grenze", "min"), ("Ondergr.", "min"), ("Øvre gr.", "max"), ("hor. mez", "max"),
        ("Górna gr.", "max"), ("Upper lim.", "max"), ("Ihre Partie", "result"), ("Votre lot", "result"),
        ("Zjišť.", "result"), ("Val. trouvée", "result"), ("Uw partij", "result"), ("Lotto prec.", "previous"),
        ("Předch. šarže", "previous"), ("Sædvanligvis", "typical"), ("Sjednané meze", "spec"), ("Según", "method"),
        ("Bestimmt nach", "method"), ("Udtr. i", "unit"), ("Gemessene Größe", "label"),
        ("Elemento determinato", "label"),
    ],
)  # fmt: skip
def test_shortened_and_paraphrased_heads(text: str, role: str) -> None:
    assert column_role(text) == role


@pytest.mark.parametrize("text", ["Onder 2,2 mm", "Boven 2,5 mm", "Højst 2,2 mm", "Malt", "Farbe nach Kochen", "Lot"])
def test_words_of_heads_make_no_heads_of_labels(text: str) -> None:
    assert column_role(text) is None


@pytest.mark.parametrize(
    ("head", "role"),
    [("≥", "min"), ("(≤)", "max"), (">=", "min"), ("Spec. ≥", "min"), ("Limit <=", "max"), ("Result ≥", "result")],
)
def test_signs_name_the_side_of_limits_alone_or_behind_a_word_for_limits(head: str, role: str) -> None:
    assert column_role(head) == role


@pytest.mark.parametrize("head", ["Friability >", "≥ 2.5 mm", "> 2.8", "Tol. -", "Tol. +"])
def test_signs_in_other_heads_name_no_side(head: str) -> None:
    assert column_role(head) not in ("min", "max")
