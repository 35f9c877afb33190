"""Every row of check_values.csv through the code that converts sheets.

Rows of provenance "exact-definition" and "published" are checks against something outside of this project: a
definition, or a number or formula that the source in the row prints. Rows of "common-practice" and "from-memory" have
no source that was at hand: they test that the program is consistent with itself and the trade, not that it is right.
"""

from __future__ import annotations

import csv
from collections.abc import Callable
from pathlib import Path

import pytest

from importer.meaning import formulas
from importer.meaning.convert import Context, Start, convert_value, to_basis
from importer.meaning.derive import derive
from importer.meaning.relations import Link, relations
from importer.models import Family, Figure, Printed
from importer.vocabulary.parameters import MoistureBasis

with (Path(__file__).parent / "check_values.csv").open(encoding="utf-8", newline="") as file:
    ROWS = {row["id"]: row for row in csv.DictReader(file)}
OUTSIDE = {"exact-definition", "published"}


def numbers(row_id: str) -> list[float]:
    """The inputs of a row: "dry=81.5;M=4.5" or "62.5;30.1" or "7/64" or "80 kg at 60;20 kg at 0"."""
    found = []
    for part in ROWS[row_id]["input"].split(";"):
        text = part.split("=")[-1].split(" with ")[0].strip()
        top, _, bottom = text.partition("/")
        found.append(float(top) / float(bottom) if bottom else float(text))
    return found


def conv(row_id: str, start: str, end: str, which: int = 0, **given: float) -> float:
    """The row's first input by the `convert` command's function, before rounding."""
    return convert_value(numbers(row_id)[0], start, end, **given)[which].exact  # type: ignore[arg-type]


def link(name: str, value: float, *, backward: bool = False) -> float:
    return Link(relations()[name], backward=backward).apply(value, formulas.Inputs())


def figure(parameter: str, value: float, unit: str = "%", family: Family = "EBC") -> Figure:
    printed = Printed(label=parameter, value=str(value), page=1, box=(0, 0, 1, 1))
    return Figure(parameter=parameter, value=value, unit=unit, family=family, state="accepted", printed=printed)


def derived(wanted: str, *figures: Figure, basis: Family = "EBC") -> float:
    found = {f.parameter: f for f in derive(figures, basis, Context())}
    value = found[wanted].value
    assert value is not None
    return value


def on_basis(parameter: str, value: float, unit: str, family: Family = "EBC", moisture: float | None = None) -> float:
    basis: MoistureBasis | None = "as-is" if moisture is not None else None
    return to_basis(Start(parameter, value, unit, family, basis=basis), "EBC", Context(moisture=moisture)).value


def dry_extract(row_id: str, unit: str, family: Family) -> float:
    as_is, moisture = numbers(row_id)
    return derived(
        "extract_fine_dry",
        figure("extract_fine_as_is", as_is, unit, family),
        figure("moisture", moisture),
        basis=family,
    )


def extract_as_is(row_id: str, unit: str, family: Family) -> float:
    dry, moisture = numbers(row_id)
    return derived(
        "extract_fine_as_is", figure("extract_fine_dry", dry, unit, family), figure("moisture", moisture), basis=family
    )


def ratio(soluble: float, total: float) -> float:
    return derived("nitrogen_ratio", figure("soluble_nitrogen", soluble), figure("total_nitrogen", total))


def ratio_of_worts(row_id: str) -> float:
    ebc, iob = numbers(row_id)
    total = 1.6
    return formulas.nitrogen_ratio(ebc, total) / formulas.nitrogen_ratio(iob, total)


def per_100g(row_id: str) -> float:
    _, extract, moisture = numbers(row_id)
    return conv(row_id, "mg/L", "mg/100 g", extract=extract, moisture=moisture)


def spirit(row_id: str, unit: str = "%") -> float:
    extract, fermentability = numbers(row_id)
    percent = extract if unit == "%" else convert_value(extract, unit, "%")[0].exact
    return formulas.spirit_yield(percent, fermentability)


CODE: dict[str, Callable[[str], float]] = {
    "mb-01": lambda i: extract_as_is(i, "%", "EBC"),
    "mb-02": lambda i: extract_as_is(i, "L°/kg", "IoB"),
    "mb-03": lambda i: dry_extract(i, "%", "EBC"),
    "mb-04": lambda i: dry_extract(i, "L°/kg", "IoB"),
    "mb-05": lambda i: on_basis("total_nitrogen", numbers(i)[0], "%", moisture=numbers(i)[1]),
    "mb-06": lambda i: on_basis("alpha_amylase", numbers(i)[0], "DU", moisture=numbers(i)[1]),
    "mb-07": lambda i: formulas.nitrogen_ratio(*(formulas.dry_from_as_is(x, 5.0) for x in numbers(i))),
    "np-04": lambda i: derived("total_protein", figure("total_nitrogen", numbers(i)[0])),
    "np-05": lambda i: derived("total_protein", figure("total_nitrogen", numbers(i)[0])),
    "np-06": lambda i: derived("total_nitrogen", figure("total_protein", numbers(i)[0])),
    "np-07": lambda i: conv(i, "% N", "% protein", which=1),
    "np-08": lambda i: conv(i, "% N", "% protein"),
    "pl-12r": lambda i: conv(i, "°P", "SG"),
    "pl-11r": lambda i: conv(i, "°P", "SG"),
    "de-10": lambda i: formulas.sucrose_density(numbers(i)[0]),
    "ex-01": lambda i: formulas.sucrose_litre_degrees(8.6) * numbers(i)[0] / 100,
    "ex-02": lambda i: conv(i, "L°/kg", "%"),
    "ex-03": lambda i: conv(i, "L°/kg", "%"),
    "ex-04": lambda i: conv(i, "%", "L°/kg"),
    "ex-05": lambda i: conv(i, "pt/lb/gal", "L°/kg"),
    "ex-06": lambda i: conv(i, "pt/lb/gal", "L°/kg"),
    "ex-07": lambda i: conv(i, "L°/kg", "pt/lb/gal"),
    "ex-08": lambda i: conv(i, "%", "pt/lb/gal"),
    "ex-09": lambda i: conv(i, "lb/qr", "L°/kg"),
    "ex-10": lambda i: conv(i, "pt/lb/imp gal", "L°/kg"),
    "cg-01": lambda i: formulas.congress_extract_as_is(*numbers(i)),
    "cg-02": lambda i: formulas.congress_extract_as_is(*numbers(i)),
    "cg-03": lambda i: formulas.congress_extract_as_is(*numbers(i)),
    "cd-01": lambda i: formulas.congress_extract_dry(*numbers(i)),
    "cd-02": lambda i: formulas.congress_extract_dry(*numbers(i)),
    "cd-03": lambda i: formulas.congress_extract_dry(*numbers(i)),
    "ps-01": spirit,
    "ps-02": spirit,
    "ps-03": spirit,
    "ps-04": lambda i: spirit(i, "L°/kg"),
    "sn-01": lambda i: conv(i, "%", "mg/100 g"),
    "sn-02": lambda i: ratio(*numbers(i)),
    "sn-03": lambda i: ratio(on_basis("soluble_nitrogen", numbers(i)[0], "mg/100 g"), numbers(i)[1]),
    "sn-04": lambda i: derived("soluble_protein", figure("soluble_nitrogen", numbers(i)[0])),
    "sn-05": ratio_of_worts,
    "sn-06": ratio_of_worts,
    "sn-07": lambda i: on_basis("nitrogen_ratio", numbers(i)[0], "%", "IoB"),
    "fn-01": per_100g,
    "fn-02": per_100g,
    "fn-03": per_100g,
    "fn-04": per_100g,
    "fn-05": per_100g,
    "fn-06": lambda i: convert_value(150, "mg/100 g", "mg/L", extract=81, moisture=numbers(i)[-1])[0].exact,
    "dp-01": lambda i: conv(i, "WK", "°Lintner"),
    "dp-02": lambda i: conv(i, "WK", "°Lintner"),
    "dp-03": lambda i: conv(i, "WK", "°Lintner"),
    "dp-05": lambda i: conv(i, "WK", "°Lintner"),
    "dp-06": lambda i: on_basis("diastatic_power", numbers(i)[0], "°Lintner", "ASBC"),
    "dp-08": lambda i: on_basis("diastatic_power", numbers(i)[0], "°L", "ASBC"),
    "co-01": lambda i: on_basis("colour", numbers(i)[0], "SRM", "ASBC"),
    "co-02": lambda i: on_basis("colour", numbers(i)[0], "°L", "ASBC"),
    "co-03": lambda i: conv(i, "SRM", "EBC"),
    "co-04": lambda i: link("absorbance-ebc", link("absorbance-srm", numbers(i)[0], backward=True)),
    "co-05": lambda i: conv(i, "EBC", "SRM"),
    "co-06": lambda i: conv(i, "°Lovibond", "SRM"),
    "co-07": lambda i: conv(i, "°Lovibond", "SRM"),
    "co-08": lambda i: conv(i, "EBC", "°Lovibond"),
    "co-09": lambda i: link("srm-ebc", link("lovibond-srm", 10) - link("lovibond-srm", 9)),
    "co-10": lambda i: link("ebc-lovibond", numbers(i)[0], backward=True),
    "co-11": lambda i: link("lovibond-ebc-older", numbers(i)[0]),
    "co-12": lambda i: conv(i, "A430", "EBC"),
    "co-13": lambda i: conv(i, "A430", "SRM"),
    "vi-01": lambda i: conv(i, "cP", "mPa·s"),
    "vi-02": lambda i: conv(i, "mm²/s", "mPa·s", density=numbers(i)[1]),
    "vi-03": lambda i: conv(i, "mPa·s", "mPa·s at 8.6 %", plato=numbers(i)[1]),
    "wt-01": lambda i: on_basis("hectolitre_weight", numbers(i)[0], "lb/bu", "ASBC"),
    "wt-02": lambda i: on_basis("hectolitre_weight", numbers(i)[0], "lb/bu", "ASBC"),
    "wt-03": lambda i: conv(i, "kg/hL", "lb/bu imperial"),
    "wt-04": lambda i: conv(i, "lb/bu imperial", "kg/hL"),
    "wt-05": lambda i: conv(i, "kg/hL", "lb/bu US"),
    "sv-7": lambda i: conv(i, "in", "mm"),
    "sv-6": lambda i: conv(i, "in", "mm"),
    "sv-5": lambda i: conv(i, "in", "mm"),
    "sv-8": lambda i: derived(
        "sieve_over_2_5",
        figure("sieve_over_2_8", numbers(i)[0]),
        figure("sieve_2_5_to_2_8", numbers(i)[1]),
    ),
    "un-01": lambda i: conv(i, "ppm", "ppb"),
    "un-02": lambda i: on_basis("arsenic", numbers(i)[0], "µg/kg"),
    "un-03": lambda i: conv(i, "%", "mg/kg"),
    "un-04": lambda i: conv(i, "mg/100 g", "mg/kg"),
    "un-05": lambda i: on_basis("sulphur_dioxide", numbers(i)[0], "g/t"),
    "fc-01": lambda i: derived(
        "fine_coarse_difference",
        figure("extract_fine_dry", numbers(i)[0]),
        figure("extract_coarse_dry", numbers(i)[1]),
    ),
    "fc-02": lambda i: conv(i, "L°/kg", "%"),
    "gr-01": lambda i: formulas.weighted_mean(
        (float(part.split()[0]), float(part.split()[-1])) for part in ROWS[i]["input"].split(";")
    ),
    "gr-02": lambda i: formulas.mass_for_new_extract(*numbers(i)),
    "tr-01": lambda i: formulas.rounding_tolerance(lambda n: 6.25 * n, [(numbers(i)[0], 0.005)], 0.05),
    "tr-02": lambda i: formulas.rounding_tolerance(
        formulas.nitrogen_ratio, [(value, 0.005) for value in numbers(i)], 0.5
    ),
    "cd-R": lambda i: formulas.critical_difference(numbers(i)[0], numbers(i)[1]),
    "cd-S": lambda i: formulas.critical_difference(numbers(i)[0], numbers(i)[1], 2, 2),
}
for strength in ("5", "8_6", "10", "12", "15", "20"):
    CODE[f"pl-{strength}"] = lambda i: conv(i, "°P", "SG")
    CODE[f"pb-{strength}"] = lambda i: conv(i, "SG", "°P")


def agrees(row_id: str) -> None:
    row = ROWS[row_id]
    expected, tolerance = float(row["output"]), float(row["tolerance"])
    assert CODE[row_id](row_id) == pytest.approx(expected, rel=1e-12, abs=tolerance * (1 + 1e-9)), row["relation"]


def test_every_row_is_computed() -> None:
    assert set(CODE) == set(ROWS)


@pytest.mark.parametrize("row_id", [i for i, row in ROWS.items() if row["provenance"] in OUTSIDE])
def test_published_or_defined(row_id: str) -> None:
    """Source: the row's own."""
    agrees(row_id)


@pytest.mark.parametrize("row_id", [i for i, row in ROWS.items() if row["provenance"] not in OUTSIDE])
def test_consistent_with_the_trade(row_id: str) -> None:
    """Common practice, no source, or from memory: consistency, not truth."""
    agrees(row_id)
