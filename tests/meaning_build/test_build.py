"""What becomes of recognised rows: the value on the basis, its state, and all that is said about it."""

from __future__ import annotations

import pytest

from importer.meaning.build import Options
from importer.meaning.outward import box_list
from importer.words import Box, Marred, Page
from tests.meaning_build.built import built, only, row

MOISTURE = row("Moisture", "4.3")
EXTRACT = row("Extract fine, dry", "81.4")


def test_a_settled_figure_is_accepted_with_all_that_was_printed() -> None:
    analysis = built(MOISTURE, row("Total protein, dry", "10.5", method="EBC 4.3.1", confidence=0.98765))
    figure = only(analysis, "total_protein")
    assert (figure.value, figure.unit, figure.family, figure.state) == (10.5, "%", "EBC", "accepted")
    assert (figure.flags, figure.reasons, figure.bound, figure.range, figure.text) == ((), (), None, None, None)
    assert figure.printed is not None
    assert figure.printed.model_dump() == {
        "label": "Total protein, dry",
        "value": "10.5",
        "unit": "%",
        "method": "EBC 4.3.1",
        "low": "",
        "high": "",
        "page": 1,
        "box": (10.0, 20.1, 30.1, 41.0),
        "confidence": 0.988,
    }
    assert (analysis.kind, analysis.state, analysis.id) == ("batch", "accepted", "id-1")
    assert (analysis.method_family, analysis.family_from, analysis.mash) == ("EBC", "stated", "congress")


# ---------------------------------------------------------------------------------------------- what raises doubt


@pytest.mark.parametrize(
    ("figure", "flag", "words"),
    [
        (row("Moisture", "45"), "outside-possible", "45 % is not possible for Moisture."),
        (row("Moisture", "7.9"), "unusual-for-malt", "7.9 % is unusual for Moisture."),
        (row("Moisture", "4.3 - 45"), "outside-possible", "45 %"),
        (row("Moisture", "abc"), "reading-doubtful", "abc"),
        (row("Moisture", "< 45"), "outside-possible", "45 %"),
        (row("Friability", "8.6", "EBC"), "unit-assumed", "EBC"),
    ],
)
def test_a_doubt_sends_the_figure_and_the_analysis_to_review(figure: object, flag: str, words: str) -> None:
    analysis = built(figure, row("Viscosity", "1.52", "mPa·s"))  # type: ignore[arg-type]
    doubted = analysis.figures[0]
    assert doubted.state == "review"
    assert flag in doubted.flags
    assert any(words in reason for reason in doubted.reasons)
    assert analysis.state == "review"
    assert only(analysis, "viscosity").state == "accepted"


def test_a_bound_may_be_unusual() -> None:
    figure = only(built(row("Moisture", "< 7.9")), "moisture")
    assert (figure.state, figure.value, figure.bound) == ("accepted", 7.9, "<")


def test_a_crossed_out_place_is_in_review() -> None:
    inside, beside = Marred(Box(15, 25, 25, 35), "It is crossed out."), Marred(Box(200, 25, 220, 35), "Other.")
    page = Page(1, 595, 842, (), "text", marred=(inside, beside))
    figure = only(built(MOISTURE, page=page), "moisture")
    assert (figure.state, figure.flags, figure.reasons) == ("review", ("reading-doubtful",), ("It is crossed out.",))
    elsewhere = Page(1, 595, 842, (), "text", marred=(beside,))
    assert only(built(MOISTURE, page=elsewhere), "moisture").state == "accepted"


def test_a_page_in_doubt_puts_its_figures_in_review() -> None:
    page = Page(1, 595, 842, (), "text", doubt="The page holds more words than are read.")
    figure = only(built(MOISTURE, page=page), "moisture")
    assert figure.reasons == ("The page holds more words than are read.",)


@pytest.mark.parametrize(
    ("batch", "sure", "specification", "state"),
    [
        ("A-114", True, False, "accepted"),
        ("to follow", False, False, "review"),
        ("24117", True, False, "accepted"),
        ("A-114 EBC methods", True, False, "review"),
        (None, True, False, "review"),
        (None, True, True, "accepted"),
    ],
)
def test_a_batch_needs_its_number(batch: str | None, sure: bool, specification: bool, state: str) -> None:
    analysis = built(MOISTURE, batch=batch, sure=sure, specification=specification)
    assert (analysis.state, analysis.kind) == (state, "specification" if specification else "batch")


# ---------------------------------------------------------------------------------------------- the same figure twice


def test_two_values_of_one_figure_are_both_kept_and_doubted() -> None:
    figure = only(built(MOISTURE, row("Water content", "4.9"), row("H2O", "4.3")), "moisture")
    assert figure.state == "review"
    assert "duplicate-row" in figure.flags
    assert "The sheet gives it more than once: 4.3 and 4.9." in figure.reasons
    assert [other.printed.value for other in figure.also_printed] == ["4.9", "4.3"]
    beside = figure.also_printed[0]
    assert (beside.family, beside.value, beside.unit, beside.bound, beside.range) == ("EBC", 4.9, "%", None, None)


def test_the_same_value_twice_is_no_doubt() -> None:
    figure = only(built(MOISTURE, row("Water content", "4.3")), "moisture")
    assert (figure.state, len(figure.also_printed)) == ("accepted", 1)


@pytest.mark.parametrize(("one", "other"), [("4.3", "< 4.3"), ("4.1 - 4.5", "4.1 - 4.6"), ("4.1 - 4.5", "4.0 - 4.5")])
def test_a_bound_or_another_end_is_another_value(one: str, other: str) -> None:
    assert "duplicate-row" in only(built(row("Moisture", one), row("Water content", other)), "moisture").flags


def test_the_figure_of_the_basis_comes_first() -> None:
    rows = (
        row("Extract 0.2 mm, dry", "310", "L°/kg", column_family="IoB"),
        row("Extract fine, dry", "81.4", column_family="EBC"),
    )
    figure = only(built(*rows, notes=()), "extract_fine_dry")
    assert (figure.value, figure.unit, figure.family) == (81.4, "%", "EBC")
    assert [(o.value, o.unit, o.family) for o in figure.also_printed] == [(310.0, "L°/kg", "IoB")]
    iob = only(built(*rows, notes=(), options=Options(basis="IoB")), "extract_fine_dry")
    assert (iob.value, iob.unit, iob.family) == (310.0, "L°/kg", "IoB")
    assert [other.value for other in iob.also_printed] == [81.4]


def test_ranges_and_bounds_beside_are_kept() -> None:
    figure = only(built(MOISTURE, row("Water content", "4.1 - 4.5"), row("H2O", "< 4.6")), "moisture")
    assert [(o.value, o.bound, o.range) for o in figure.also_printed] == [
        (None, "range", (4.1, 4.5)),
        (4.6, "<", None),
    ]


# ---------------------------------------------------------------------------------------------- checks between figures


def test_figures_that_contradict_each_other_are_in_review_and_others_are_not() -> None:
    analysis = built(MOISTURE, row("Total protein, dry", "10.5"), row("Total nitrogen, dry", "1.86"), malt="Pilsner")
    for name in ("total_protein", "total_nitrogen"):
        figure = only(analysis, name)
        assert (figure.state, figure.flags) == ("review", ("check-failed",))
        assert figure.reasons[0].startswith("It does not agree with other figures: ")
        assert "10.5 %" in figure.reasons[0]
    assert only(analysis, "moisture").state == "accepted"
    assert [(check.holds, set(check.parameters)) for check in analysis.checks] == [
        (False, {"total_protein", "total_nitrogen"})
    ]


def test_a_bound_takes_no_part_in_checks() -> None:
    analysis = built(row("Total protein, dry", "< 10.5"), row("Total nitrogen, dry", "1.86"))
    assert analysis.checks == ()
    assert {figure.state for figure in analysis.figures} == {"accepted"}


# ---------------------------------------------------------------------------------------------- the value on the basis


def test_a_range_is_carried_to_the_basis_at_both_ends() -> None:
    """lb/bu to kg/hL: 1 lb/bu (US) is 1.287 kg/hL, by the definitions of pound and US bushel."""
    figure = only(built(row("Bushel weight", "42.0 - 43.0", "lb/bu"), notes=("ASBC methods",)), "hectolitre_weight")
    assert (figure.value, figure.bound, figure.unit) == (None, "range", "kg/hL")
    assert figure.range == pytest.approx((54.06, 55.35), abs=0.02)


def test_moisture_brings_a_figure_to_dry_malt_and_its_limits_with_it() -> None:
    """dry = as is ÷ (1 − M/100): 10.0 % as is at 4.3 % moisture is 10.45 %."""
    figure = only(built(MOISTURE, row("Total protein, as is", "10.0", low="9.0", high="11.0")), "total_protein")
    assert figure.value == pytest.approx(10.45, abs=0.006)
    assert figure.limits.low == pytest.approx(9.40, abs=0.006)
    assert figure.limits.high == pytest.approx(11.49, abs=0.006)
    assert [step.kind for step in figure.steps] == ["moisture-basis"]


@pytest.mark.parametrize(
    "moisture", [(), (row("Moisture", "4.3"), row("Water content", "4.9")), (row("Moisture", "< 5"),)]
)
def test_without_one_plain_moisture_nothing_is_brought_to_dry_malt(moisture: tuple[object, ...]) -> None:
    figure = only(built(*moisture, row("Total protein, as is", "10.0")), "total_protein")  # type: ignore[arg-type]
    assert figure.state == "review"
    assert "no-moisture" in figure.flags
    assert figure.reasons


@pytest.mark.parametrize(
    ("value", "low", "high", "outside"),
    [
        ("4.3", "", "4.2", True),
        ("4.3", "4.4", "", True),
        ("4.3", "4.3", "4.3", False),
        ("4.3", "4.0", "5.0", False),
        ("4.3", "", "", False),
    ],
)
def test_limits_are_held_beside_the_value_but_do_not_doubt_it(value: str, low: str, high: str, outside: bool) -> None:
    figure = only(built(row("Moisture", value, low=low, high=high)), "moisture")
    assert ("outside-limits" in figure.flags) is outside
    assert figure.state == "accepted"
    assert figure.limits.low == (float(low) if low else None)
    assert figure.limits.high == (float(high) if high else None)


def test_limits_of_a_described_or_ranged_result_stay_as_printed() -> None:
    figure = only(built(row("Moisture", "4.1 - 4.5", low="3.0", high="5.0")), "moisture")
    assert (figure.limits.low, figure.limits.high, figure.range) == (3.0, 5.0, (4.1, 4.5))


@pytest.mark.parametrize(
    ("spec", "low", "high"),
    [("max. 5.0", "", "max. 5.0"), ("min. 3.0", "min. 3.0", ""), ("3.0 - 5.0", "", "3.0 - 5.0")],
)
def test_a_limit_of_one_cell_is_shown_on_its_side(spec: str, low: str, high: str) -> None:
    printed = only(built(row("Moisture", "4.3", spec=spec)), "moisture").printed
    assert printed is not None
    assert (printed.low, printed.high) == (low, high)


def test_what_no_relation_converts_keeps_its_family() -> None:
    analysis = built(row("Beta-glucan", "165", "mg/l"), row("Viscosity", "1.52", "mPa·s"), notes=("IoB methods",))
    figure = only(analysis, "beta_glucan")
    assert (figure.value, figure.family, figure.state) == (165.0, "IoB", "accepted")
    assert "not-convertible" in figure.flags
    assert any("elation" in reason for reason in figure.reasons)
    assert analysis.mash == "isothermal-65"


def test_an_imperial_or_american_bushel_is_not_guessed() -> None:
    """They differ by 3 %: 36.37 and 35.24 litres."""
    figure = only(built(row("Bushel weight", "42.5", "lb/bu")), "hectolitre_weight")
    assert (figure.value, figure.unit) == (42.5, "lb/bu")
    assert "not-convertible" in figure.flags
    assert "bushel" in figure.reasons[0]


def test_without_a_family_what_depends_on_it_is_in_review() -> None:
    analysis = built(row("Viscosity", "1.52", "mPa·s"), row("Friability", "86"), notes=())
    assert only(analysis, "viscosity").flags == ("family-assumed",)
    assert only(analysis, "viscosity").state == "review"
    assert only(analysis, "friability").state == "accepted"
    assert analysis.family_from == "assumed"


@pytest.mark.parametrize(
    ("notes", "estimates", "value", "applied", "estimated"),
    [
        (("EBC methods",), True, 41.0, False, False),
        # The published factor between the mashes is 1.125 (mappings/conversions.toml).
        (("IoB methods",), True, 46.125, True, True),
        (("IoB methods",), False, 41.0, False, False),
    ],
)
def test_a_ratio_says_whether_the_offset_was_applied(
    notes: tuple[str, ...], estimates: bool, value: float, applied: bool, estimated: bool
) -> None:
    options = Options(estimates=estimates)
    figure = only(built(row("Soluble nitrogen ratio", "41.0"), notes=notes, options=options), "nitrogen_ratio")
    assert figure.value == pytest.approx(value, abs=0.1)
    assert ("nitrogen-ratio-offset-applied" in figure.flags) is applied
    assert ("nitrogen-ratio-offset-not-applied" in figure.flags) is not applied
    assert figure.estimated is estimated
    assert figure.method_offset is not None
    assert figure.method_offset.applied is applied


def test_the_rule_of_thumb_adds_five_points() -> None:
    """The trade's five points between S/T of the two mashes: common practice, no source."""
    options = Options(ratio_rule="plus-five")
    figure = only(
        built(row("Soluble nitrogen ratio", "38.0"), notes=("IoB methods",), options=options), "nitrogen_ratio"
    )
    assert figure.value == pytest.approx(43.0)


def test_degrees_lovibond_become_ebc_with_the_pair_of_the_sheet() -> None:
    figure = only(built(row("Colour", "1.8", "°L"), notes=("ASBC methods",)), "colour")
    assert figure.value == pytest.approx(1.97 * 1.8, abs=0.01)  # EBC = 1.97 × SRM, ASBC Beer-10
    assert (figure.unit, figure.family) == ("EBC", "EBC")


# ---------------------------------------------------------------------------------------------- words, remains


def test_a_described_result_has_words_and_no_number() -> None:
    figure = only(built(row("Clarity of wort", "clear", None)), "clarity")
    assert (figure.value, figure.text, figure.unit, figure.state) == (None, "clear", "text", "accepted")
    assert (figure.steps, figure.bound, figure.range) == ((), None, None)


def test_not_detected_is_text_and_a_contaminant_carries_its_caution() -> None:
    figure = only(built(row("Ochratoxin A", "not detected", "µg/kg")), "ochratoxin_a")
    assert (figure.value, figure.text, figure.state, figure.flags) == (
        None,
        "not detected",
        "accepted",
        ("food-safety",),
    )


def test_rows_of_no_parameter_are_kept_with_their_headings() -> None:
    rows = (
        row("Wort flavour index", "7.5", None, section=("Wort", "Sensory")),
        row("Steeping degree", "", "%", low="44", high="46"),
        row("Moisture of barley", "12.8", "%"),
        MOISTURE,
    )
    analysis = built(*rows)
    kept = {entry.label: (entry.value, entry.unit, entry.page, entry.box) for entry in analysis.unrecognised}
    assert kept["Wort / Sensory / Wort flavour index"] == ("7.5", None, 1, (10.0, 20.1, 30.1, 41.0))
    assert kept["Moisture of barley"][0] == "12.8"
    assert [figure.parameter for figure in analysis.figures] == ["moisture"]


def test_figures_stand_in_the_order_of_the_sheet() -> None:
    analysis = built(row("Viscosity", "1.52", "mPa·s"), MOISTURE, EXTRACT)
    assert [figure.parameter for figure in analysis.figures] == ["viscosity", "moisture", "extract_fine_dry"]


def test_what_is_derived_is_no_surer_than_its_sources() -> None:
    plain = built(MOISTURE, EXTRACT)
    (as_is,) = [figure for figure in plain.derived if figure.parameter == "extract_fine_as_is"]
    assert as_is.value == pytest.approx(81.4 * (1 - 0.043), abs=0.05)
    assert (as_is.state, as_is.printed) == ("accepted", None)
    doubted = built(row("Moisture", "7.9"), EXTRACT)
    assert {figure.state for figure in doubted.derived if "moisture" in figure.from_} <= {"review"}


def test_the_family_nearest_to_the_basis_comes_first() -> None:
    iob, asbc = row("S/T", "38", column_family="IoB"), row("S/T", "41", column_family="ASBC")
    for rows in ((iob, asbc), (asbc, iob)):
        figure = only(built(*rows, notes=()), "nitrogen_ratio")
        assert (figure.value, figure.printed.value if figure.printed else "") == (41.0, "41")
        assert [other.family for other in figure.also_printed] == ["IoB"]


def test_the_unit_of_the_basis_and_the_surest_label_come_first() -> None:
    colours = row("Colour", "2.0", "°L", column_family="EBC"), row("Colour", "3.9", "EBC", column_family="EBC")
    assert only(built(*colours), "colour").value == 3.9
    doubtful, sure = row("Moisture zzz", "4.9"), row("Moisture", "4.3")
    figure = only(built(doubtful, sure), "moisture")
    assert figure.value == 4.3
    assert "label-doubtful" not in figure.flags


def test_a_ratio_keeps_its_mash_and_its_spread() -> None:
    figure = only(built(row("Soluble nitrogen ratio", "38"), notes=("IoB methods",)), "nitrogen_ratio")
    assert (figure.spread, figure.family) == (2.5, "EBC")
    steady = built(row("Kolbach index", "38"), notes=("MEBAK methods", "Isothermal 65 °C mash"))
    ratio = only(steady, "nitrogen_ratio")
    assert steady.mash == "isothermal-65"
    assert ratio.value == 38.0
    assert "nitrogen-ratio-offset-not-applied" in ratio.flags


def test_a_described_result_of_another_mash_keeps_its_family() -> None:
    figure = only(built(row("Clarity", "clear", None), notes=("IoB methods",)), "clarity")
    assert (figure.text, figure.family, figure.flags) == ("clear", "IoB", ("not-convertible",))
    plain = only(built(row("Clarity", "clear", None)), "clarity")
    assert (plain.family, plain.flags, plain.estimated) == ("EBC", (), False)


def test_limits_of_unknown_rows_of_a_specification_are_kept() -> None:
    rows = row("Steeping degree", "", "%", low="44", high="46"), row("Moisture", "", high="5.0")
    analysis = built(*rows, batch=None, specification=True)
    assert [(entry.label, entry.value, entry.unit) for entry in analysis.unrecognised] == [
        ("Steeping degree", "44 46", "%")
    ]
    figure = only(analysis, "moisture")
    assert (figure.value, figure.bound) == (5.0, "<")


def test_places_are_given_to_a_tenth_of_a_point() -> None:
    assert box_list(Box(10.16, 20.14, 30.06, 40.28)) == (10.2, 20.1, 30.1, 40.3)


def test_a_decimal_comma_is_read_by_the_sheet() -> None:
    analysis = built(
        row("Moisture", "4,3"), row("Extract fine, dry", "81,4"), row("Thousand corn weight", "38,600", "g")
    )
    assert only(analysis, "thousand_corn_weight").value == 38.6
    assert only(analysis, "thousand_corn_weight").state == "accepted"
