"""Analyses of invented malts, rich enough to exercise every writer."""

from __future__ import annotations

from importer.models import (
    AlsoPrinted,
    Analysis,
    Check,
    Document,
    Figure,
    HeaderField,
    Limits,
    MethodOffset,
    Printed,
    Problem,
    Quantity,
    Source,
    State,
    Step,
    Unrecognised,
)

BOX = (56.0, 120.5, 90.25, 131.0)
HASH = "3f6c" + "0" * 60


def printed(label: str, value: str, unit: str | None = "%", *, low: str = "", high: str = "") -> Printed:
    return Printed(label=label, value=value, unit=unit, low=low, high=high, page=1, box=BOX)


def header(state: State = "accepted", **values: str) -> dict[str, HeaderField]:
    return {key: HeaderField(value=value, text=value, page=1, box=BOX, state=state) for key, value in values.items()}


def moisture(value: float = 4.2) -> Figure:
    return Figure(
        parameter="moisture",
        value=value,
        unit="%",
        family="EBC",
        state="accepted",
        limits=Limits(high=5.0),
        printed=printed("Moisture", str(value), high="5.0"),
    )


def extract() -> Figure:
    """309 L°/kg of an IoB mash on the EBC basis; the numbers serve the writers and are no reference."""
    return Figure(
        parameter="extract_fine_dry",
        value=81.27,
        unit="%",
        family="EBC",
        state="accepted",
        estimated=True,
        spread=0.5,
        printed=printed("Extract 0.2 mm dry", "309", "L°/kg"),
        steps=(
            Step(
                kind="correlation",
                from_=Quantity(value=309, unit="L°/kg", family="IoB"),
                to=Quantity(value=81.27, unit="%", family="EBC"),
                formula="0.263 × L°/kg",
                source="a test",
            ),
        ),
        also_printed=(AlsoPrinted(family="EBC", value=81.4, unit="%", printed=printed("Extract EBC fine", "81.4")),),
    )


def ratio() -> Figure:
    return Figure(
        parameter="nitrogen_ratio",
        value=42.8,
        unit="%",
        family="EBC",
        state="review",
        flags=("nitrogen-ratio-offset-applied", "label-doubtful"),
        reasons=("The label could also mean soluble nitrogen.",),
        estimated=True,
        spread=2.5,
        limits=Limits(high=45.0),
        printed=printed("SNR", "38.0", high="40"),
        method_offset=MethodOffset(applied=True, points=4.8, from_="IoB", to="EBC"),
    )


def beta_glucan() -> Figure:
    return Figure(
        parameter="beta_glucan",
        value=110,
        unit="mg/L",
        family="IoB",
        state="accepted",
        flags=("not-convertible",),
        printed=printed("Beta Glucan", "110", "mg/l"),
    )


def ndma() -> Figure:
    return Figure(
        parameter="ndma",
        value=2.5,
        unit="µg/kg",
        family="EBC",
        bound="<",
        state="accepted",
        flags=("food-safety",),
        printed=printed("NDMA", "<2.5", "µg/kg"),
    )


def filtration() -> Figure:
    return Figure(
        parameter="saccharification_time",
        unit="min",
        family="EBC",
        bound="range",
        range=(10, 15),
        state="accepted",
        printed=printed("Saccharification", "10-15", "min"),
    )


def odour(text: str = "normal") -> Figure:
    return Figure(
        parameter="odour", text=text, family="EBC", state="accepted", printed=printed("Odour", text, unit=None)
    )


def ph() -> Figure:
    return Figure(
        parameter="wort_ph",
        value=5.94,
        unit="pH",
        family="EBC",
        state="accepted",
        flags=("outside-limits",),
        limits=Limits(low=5.95, high=6.05),
        printed=printed("pH", "5.94", None),
    )


def protein() -> Figure:
    return Figure(
        parameter="total_protein", value=9.69, unit="%", family="EBC", state="accepted", from_=("total_nitrogen",)
    )


def analysis(*figures: Figure, **changes: object) -> Analysis:
    values: dict[str, object] = {
        "id": f"{HASH[:16]}-1",
        "kind": "batch",
        "source": Source(file="sheet.pdf", sha256=HASH, pages=(1,), reading="text"),
        "header": header(supplier="Nordtal Malting", malt="Pale Ale Malt", batch="PA-2024-017", crop_year="2023"),
        "method_family": "IoB",
        "family_from": "stated",
        "mash": "isothermal-65",
        "state": "review",
        "figures": figures or (moisture(), extract(), ratio(), beta_glucan(), ndma(), filtration(), odour(), ph()),
        "derived": (protein(),),
        "unrecognised": (Unrecognised(label="Magic number", value="7", page=1, box=BOX),),
        "checks": (
            Check(check="fine above coarse", parameters=("extract_fine_dry",), holds=True, detail="81.3 > 79.9"),
            Check(
                check="ratio = soluble / total",
                parameters=("nitrogen_ratio",),
                holds=False,
                detail="0.60 / 1.55 gives 38.7, printed is 38.0",
            ),
        ),
    }
    return Analysis.model_validate(values | changes)


def problem(file: str = "locked.pdf") -> Problem:
    return Problem(file=file, code="password-protected", message=f"{file} is locked with a password.")


def document(*analyses: Analysis, **changes: object) -> Document:
    values: dict[str, object] = {
        "basis": "EBC",
        "analyses": analyses or (analysis(),),
        "problems": (problem(),),
    }
    return Document.model_validate(values | changes)
