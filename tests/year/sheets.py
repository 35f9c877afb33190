"""Draws the sheets of the year, each maltster in a layout of its own, and lays them in a folder."""

from __future__ import annotations

import os
from datetime import datetime, timedelta
from pathlib import Path

from tests.sheets.draw import Column, Look, Pen, Table
from tests.year.scenario import (
    AGREED,
    CARELESS,
    CUSTOMER,
    FILED_TWICE,
    NO_BATCH,
    REISSUED,
    Delivery,
    Slip,
    deliveries,
    deliveries_csv,
    number_of,
    wrongly_typed,
)

LOOKS = {
    "Quillbrook Maltings": Look(font="Helvetica", rules="grid", head_shade=True, size=9),
    "Mälzerei Harzbrunn-Ost": Look(font="LiberationSans", rules="rows", size=9.5),
    "Malterie de Vrainville-le-Sec": Look(font="Times-Roman", rules="zebra", head_shade=True, size=10),
    "Tarnlow Malt Company": Look(font="Helvetica", rules="frame", size=9, full_width=False),
}
METHODS = {
    "IoB": "IoB Recommended Methods of Analysis",
    "EBC": "Analytica-EBC",
    "ASBC": "ASBC Methods of Analysis",
}
TITLES = {"en": "Certificate of Analysis", "de": "Analysenzertifikat", "fr": "Certificat d'analyse"}
CAPTIONS = {
    "en": ("Customer", "Malt type", "Batch no.", "Crop year", "Date of analysis", "Quantity"),
    "de": ("Kunde", "Malzsorte", "Charge", "Erntejahr", "Analysendatum", "Menge"),
    "fr": ("Client", "Type de malt", "N° de lot", "Récolte", "Date d'analyse", "Quantité"),
}
HEADS = {
    "en": ("Parameter", "Unit", "Result"),
    "de": ("Parameter", "Einheit", "Ergebnis"),
    "fr": ("Paramètre", "Unité", "Résultat"),
}
DECIMALS = {"total_nitrogen": 2, "soluble_nitrogen": 2, "viscosity": 2}
WHOLE = {"friability", "diastatic_power", "alpha_amylase", "beta_glucan", "free_amino_nitrogen"}
LABELS: dict[str, dict[str, tuple[str, str]]] = {
    "en": {
        "moisture": ("Moisture", "%"),
        "extract_coarse_dry": ("Hot water extract 0.7 mm, dry", "L°/kg"),
        "extract_fine_dry": ("Extract, fine grind, dry basis", "%"),
        "colour": ("Colour", "EBC"),
        "total_nitrogen": ("Total nitrogen, dry", "%"),
        "nitrogen_ratio": ("Soluble nitrogen ratio (SNR)", "%"),
        "total_protein": ("Total protein, dry basis", "%"),
        "friability": ("Friability", "%"),
        "diastatic_power": ("Diastatic power", "°IoB"),
        "alpha_amylase": ("Alpha amylase", "DU"),
        "viscosity": ("Viscosity", "mPa·s"),
    },
    "de": {
        "moisture": ("Wassergehalt", "%"),
        "extract_fine_dry": ("Extrakt Feinschrot, wfr.", "%"),
        "colour": ("Farbe", "EBC"),
        "total_protein": ("Rohprotein, wfr.", "%"),
        "nitrogen_ratio": ("Eiweißlösungsgrad", "%"),
        "friability": ("Friabilimeter", "%"),
        "beta_glucan": ("β-Glucan", "mg/l"),
        "viscosity": ("Viskosität (8,6 %)", "mPas"),
        "free_amino_nitrogen": ("Freier Aminostickstoff (FAN)", "mg/l"),
    },
    "fr": {
        "moisture": ("Humidité", "%"),
        "extract_fine_dry": ("Extrait, mouture fine, sur sec", "%"),
        "colour": ("Couleur", "EBC"),
        "total_protein": ("Protéines totales, sur sec", "%"),
        "nitrogen_ratio": ("Indice de Kolbach", "%"),
        "friability": ("Friabilité", "%"),
    },
}
ASBC_LABELS = {
    "colour": ("Color", "SRM"),
    "nitrogen_ratio": ("Soluble/total protein ratio (S/T)", "%"),
    "diastatic_power": ("Diastatic power", "°Lintner"),
}


def draw(delivery: Delivery, *, issue: int = 1) -> bytes:
    """The certificate of a batch as PDF."""
    kind = delivery.kind
    pen = Pen(LOOKS[kind.supplier])
    pen.text(pen.left, pen.y, kind.supplier, size=15, bold=True)
    pen.y += 30
    pen.text(pen.left, pen.y, TITLES[kind.language] + (f" · {issue}" if issue > 1 else ""), size=12, bold=True)
    pen.y += 26
    day = delivery.day - timedelta(days=3)
    facts = (CUSTOMER, kind.malt, delivery.batch, str(delivery.crop), day.isoformat(), f"{delivery.tonnes:g} t")
    careless = CARELESS.get(number_of(delivery), {})
    for caption, text in zip(CAPTIONS[kind.language], facts, strict=True):
        if text == delivery.batch and NO_BATCH in careless:
            continue
        pen.text(pen.left, pen.y, f"{caption}:")
        pen.text(pen.left + 110, pen.y, text)
        pen.y += 14
    pen.y += 6
    pen.text(pen.left, pen.y, METHODS[kind.family])
    pen.y += 18
    names = HEADS[kind.language]
    rows = [_row(delivery, name, careless.get(name, Slip())) for name in delivery.values]
    Table([Column(names[0], width=210), Column(names[1]), Column(names[2], align="right")], rows).draw(pen)
    return pen.finish()


def _row(delivery: Delivery, name: str, slip: Slip) -> list[str]:
    label, unit, result = as_it_should_be(delivery, name)
    return [
        label if slip.label is None else slip.label,
        unit if slip.unit is None else slip.unit,
        result if slip.result is None else slip.result,
    ]


def as_it_should_be(delivery: Delivery, name: str) -> tuple[str, str, str]:
    """Label, unit and result of a row without any slip."""
    kind, value = delivery.kind, delivery.values[name]
    label, unit = LABELS[kind.language][name]
    if kind.family == "ASBC":
        label, unit = ASBC_LABELS.get(name, (label, unit))
    decimals = 0 if name in WHOLE or unit == "L°/kg" else DECIMALS.get(name, 1)
    if name == "colour":
        decimals = 2 if unit == "SRM" else 0 if value >= 100 else 1
    text = f"{value:.{decimals}f}"
    return label, unit, text if kind.language == "en" else text.replace(".", ",")


def lay_out(folder: Path) -> list[Delivery]:
    """Every sheet of the year as a file, with the agreed limits and the goods-in book beside the folder ``sheets``."""
    found = deliveries()
    sheets = folder / "sheets"
    for delivery in found:
        if not delivery.sheet:
            continue
        where = sheets / f"{delivery.day:%m}"
        where.mkdir(parents=True, exist_ok=True)
        name = f"{delivery.batch}.pdf"
        number = number_of(delivery)
        if number == REISSUED:
            _put(where / name, draw(wrongly_typed(delivery)), delivery, 0)
            _put(where / f"{delivery.batch} corrected.pdf", draw(delivery, issue=2), delivery, 4)
            continue
        _put(where / name, draw(delivery), delivery, 0)
        if number == FILED_TWICE:
            _put(where / f"copy of {name}", draw(delivery), delivery, 1)
    (folder / "agreed.toml").write_text(AGREED, encoding="utf-8")
    (folder / "deliveries.csv").write_text(deliveries_csv(found), encoding="utf-8")
    return found


def _put(path: Path, data: bytes, delivery: Delivery, later: int) -> None:
    """Writes a sheet with the time of its arrival, days after the delivery."""
    path.write_bytes(data)
    at = datetime(delivery.day.year, delivery.day.month, delivery.day.day, 9).timestamp() + later * 86400
    os.utime(path, (at, at))
