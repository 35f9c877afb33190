"""Analyses of invented malts, made figure by figure."""

from __future__ import annotations

import hashlib

from importer.models import (
    Analysis,
    Bound,
    Family,
    Figure,
    Flag,
    HeaderField,
    Mash,
    Printed,
    Quantity,
    Source,
    State,
    Step,
)

BOX = (50.0, 100.0, 200.0, 110.0)


def figure(
    parameter: str,
    value: float | None,
    unit: str | None = "%",
    family: Family = "EBC",
    *,
    state: State = "accepted",
    flags: tuple[Flag, ...] = (),
    bound: Bound | None = None,
    between: tuple[float, float] | None = None,
    text: str | None = None,
    method: str | None = None,
) -> Figure:
    """A printed figure that needed no conversion."""
    shown = Printed(label=parameter, value=str(value), unit=unit, method=method, page=1, box=BOX)
    return Figure(
        parameter=parameter,
        value=value,
        unit=unit,
        family=family,
        state=state,
        flags=flags,
        bound=bound,
        range=between,
        text=text,
        printed=shown,
    )


def estimate(
    parameter: str,
    value: float,
    unit: str,
    spread: float | None,
    came: tuple[float, str, Family],
    family: Family = "EBC",
) -> Figure:
    """A printed figure that a correlation brought to the basis; ``came`` is what the sheet prints."""
    start, start_unit, start_family = came
    step = Step(
        kind="correlation",
        from_=Quantity(value=start, unit=start_unit, family=start_family),
        to=Quantity(value=value, unit=unit, family=family),
        formula="a relation",
        source="a test",
    )
    plain = figure(parameter, value, unit, family)
    return plain.model_copy(update={"estimated": True, "spread": spread, "steps": (step,)})


def analysis(
    *figures: Figure,
    batch: str = "B1",
    malt: str = "Pale Ale Malt",
    supplier: str = "Nordtal Malting",
    day: str = "2025-03-01",
    crop: str = "2024",
    family: Family = "EBC",
    mash: Mash | None = "congress",
    state: State | None = None,
) -> Analysis:
    """A batch with these figures. It is in review where any figure is, unless ``state`` says otherwise."""
    sha256 = hashlib.sha256(f"{supplier}/{malt}/{batch}/{day}".encode()).hexdigest()
    header = {"supplier": supplier, "malt": malt, "batch": batch, "analysed_on": day, "crop_year": crop}
    doubtful = any(one.state == "review" for one in figures)
    return Analysis(
        id=f"{sha256[:16]}-1",
        kind="batch",
        source=Source(file=f"{batch}.pdf", sha256=sha256, pages=(1,), reading="text"),
        header={
            key: HeaderField(value=value, text=value, page=1, box=BOX, state="accepted")
            for key, value in header.items()
            if value
        },
        method_family=family,
        family_from="stated",
        mash=mash,
        state=state or ("review" if doubtful else "accepted"),
        figures=figures,
    )
