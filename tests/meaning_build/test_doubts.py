"""Why a row is not accepted, or is: what its label, unit, value, headings and notes leave open, one thing a row."""

from __future__ import annotations

import pytest

from importer.meaning.resolve import resolve
from importer.models import Analysis
from importer.printed import Concern, PrintedAnalysis, PrintedFigure
from tests.meaning_build.built import built, only, row

EBC = "Methods: EBC"
MOISTURE = row("Moisture", "4.3")
OPEN_BASIS = "The sheet does not say whether extract is on dry malt or as is."
NO_FAMILY = "The sheet does not say which method family (IoB, EBC, ASBC) it stands on."


def doubts(analysis: Analysis, parameter: str) -> list[tuple[str, str]]:
    """The flags of a figure that hold it back with their reasons, one for one."""
    figure = only(analysis, parameter)
    assert (figure.state == "review") == bool(figure.reasons and figure.flags)
    return list(zip(figure.flags, figure.reasons, strict=True)) if figure.state == "review" else []


@pytest.mark.parametrize(
    ("figure", "parameter", "flag", "reason"),
    [
        (row("Moisture", "4.3", doubts=(Concern("reading-doubtful", "It is smudged."),)), "moisture",
         "reading-doubtful", "It is smudged."),
        (row("Moisture", "4.3 foo"), "moisture", "reading-doubtful", "“4.3 foo” could not be read as a number."),
        (row("Moisture", "clear"), "moisture", "reading-doubtful", "“clear” is not a number."),
        (row("Moisture", "4.3 / 4.5"), "moisture", "reading-doubtful", "“4.3 / 4.5” holds more than one figure."),
        (row("Moisture", "4.3 5"), "moisture", "reading-doubtful", "“4.3 5” holds more than one figure."),
        (row("Moisture", "ca. 4.3"), "moisture", "reading-doubtful", "“ca. 4.3” is only an approximate figure."),
        (row("Moisture", "max. 4.3"), "moisture", "reading-doubtful", "“max. 4.3” is a limit, not a result."),
        (row("Moisture", "min. 4.3"), "moisture", "reading-doubtful", "“min. 4.3” is a limit, not a result."),
        (row("Moisture", "(4.3)"), "moisture", "reading-doubtful", "The figure stands in brackets."),
        (row("Odour", "3", None), "odour", "label-doubtful", "Odour is described in words, and the sheet gives 3."),
        (row("Wort pH 5.9", "6.0", None), "wort_ph", "label-doubtful",
         "Its label ends in a number, “5.9”, which may be the result."),
        (row("Colour max.", "4.5", "EBC"), "colour", "label-doubtful",
         "“Colour max.” names a limit; it may be no result."),
        (row("Viscosity", "1.5", "mPa·s (12 %)"), "viscosity", "label-doubtful",
         "It is of a wort of 12 %, not of the laboratory wort."),
        (row("Moisture", "4.3", "foo"), "moisture", "unit-assumed", "The unit “foo” is not known."),
        (row("Moisture", "4.3", "% of extract"), "moisture", "unit-assumed", "“of extract” in the unit is not known."),
        (row("Free amino nitrogen", "152", "my/l"), "free_amino_nitrogen", "reading-doubtful",
         "The unit was read as “my/l”."),
        (row("Colour", "4.2", None), "colour", "unit-assumed", "No unit is printed; EBC is assumed for Colour."),
        (row("FAN", "150", None), "free_amino_nitrogen", "unit-assumed",
         "No unit is printed; mg/L is assumed for Free amino nitrogen."),
        (row("TSN (IoB)", "0.6"), "soluble_nitrogen", "family-assumed",
         "The label belongs to IoB and the sheet to EBC."),
        (row("Extract, fine", "81.2"), "extract_fine_dry", "moisture-basis-assumed", OPEN_BASIS),
        (row("Extract, fine", "81.2", "% dry", column="as is"), "extract_fine_dry", "moisture-basis-assumed",
         "The row names both dry malt and malt as is."),
        (row("Extract, fine", "81.2", section=("as is", "dry basis")), "extract_fine_dry", "moisture-basis-assumed",
         "The headings over it name both dry malt and malt as is."),
        (row("Extract, fine", "81.2", section=("Protein, dry",)), "extract_fine_dry", "moisture-basis-assumed",
         OPEN_BASIS),
    ],
)  # fmt: skip
def test_one_thing_left_open_holds_a_figure_back_and_is_told(
    figure: PrintedFigure, parameter: str, flag: str, reason: str
) -> None:
    assert doubts(built(figure), parameter) == [(flag, reason)]


@pytest.mark.parametrize(
    ("figure", "parameter", "unit"),
    [
        (row("Colour (EBC)", "4.2", None), "colour", "EBC"),
        (row("Diastatic power WK", "280", None), "diastatic_power", "WK"),
        (row("FAN", "150", None, column_unit="mg/l"), "free_amino_nitrogen", "mg/L"),
        (row("FAN", "150", None, section=("in mg/l:",)), "free_amino_nitrogen", "mg/L"),
        (row("FAN", "150", None, section=("Wort", "given in mg/l")), "free_amino_nitrogen", "mg/L"),
        (row("Diastatic power", "280", None, column_family="EBC"), "diastatic_power", "WK"),
        (row("Colour", "4.2", "foo", column_family="EBC"), "colour", "EBC"),
        (row("Sieve > 2.5 mm", "91"), "sieve_over_2_5", "%"),
        (row("Viscosity", "1.5", "mPa·s (8.6 %)"), "viscosity", "mPa·s"),
        (row("Colour max.", "4.5", "EBC", low="3"), "colour", "EBC"),
        (row("Colour max. 5", "4.5", "EBC"), "colour", "EBC"),
        (row("Saccharification", "normal", None), "saccharification_time", "min"),
        (row("FAN", "n.d.", None), "free_amino_nitrogen", "mg/L"),
        (row("Friability", "n.d.", "EBC"), "friability", "%"),
        (row("Clarity", "clear", None), "clarity", "text"),
        (row("Clarity", "n.d.", None), "clarity", "text"),
    ],
)  # fmt: skip
def test_what_leaves_nothing_open_is_accepted(figure: PrintedFigure, parameter: str, unit: str) -> None:
    found = only(built(figure, MOISTURE), parameter)
    assert (found.state, found.unit, found.reasons) == ("accepted", unit, ())


@pytest.mark.parametrize("section", [("in mg/l", "Wort"), ("all of them are given in mg/l",), ("in EBC",), ()])
def test_a_heading_gives_a_unit_only_where_it_says_no_more_and_stands_next(section: tuple[str, ...]) -> None:
    found = only(built(row("FAN", "150", None, section=section)), "free_amino_nitrogen")
    assert "unit-assumed" in found.flags


def test_a_unit_that_the_label_contradicts_is_left_open() -> None:
    found = only(built(row("Colour (EBC)", "4.2", "°L")), "colour")
    assert found.flags == ("unit-assumed", "not-convertible")
    assert found.reasons[0] == "The label says EBC and the row says °L."
    assert only(built(row("Colour (EBC)", "4.2", "EBC")), "colour").state == "accepted"


def test_a_unit_that_a_figure_is_never_given_in_is_kept_and_doubted() -> None:
    found = only(built(row("Moisture", "4.3", "EBC")), "moisture")
    assert (found.value, found.unit) == (4.3, "EBC")
    assert found.flags == ("unit-assumed", "not-convertible")
    assert found.reasons[0] == "Moisture is not printed in EBC."


def test_a_unit_of_the_name_alone_has_to_fit_the_methods_of_the_sheet() -> None:
    iob = (row("Diastatic power WK", "280", None), row("TSN", "0.6"))
    assert doubts(built(*iob, notes=("Methods: IoB",)), "diastatic_power") == [
        ("unit-assumed", "Its name gives WK, which belongs to EBC; the sheet stands on IoB, and no unit is printed.")
    ]
    printed = (row("Diastatic power", "280", "WK"), row("TSN", "0.6"))
    assert only(built(*printed, notes=("Methods: IoB",)), "diastatic_power").state == "accepted"
    in_column = (row("Diastatic power WK", "280", None, column_family="EBC"), row("TSN", "0.6"))
    assert only(built(*in_column, notes=("Methods: IoB",)), "diastatic_power").state == "accepted"
    assert only(built(row("Diastatic power WK", "280", None), notes=()), "diastatic_power").state == "accepted"


def test_a_family_that_nothing_states_is_asked_only_where_it_matters() -> None:
    analysis = built(row("Extract, fine, dry", "81.2"), row("Kernel size > 2.5 mm", "90"), MOISTURE, notes=())
    assert analysis.family_from == "assumed"
    assert doubts(analysis, "extract_fine_dry") == [("family-assumed", NO_FAMILY)]
    assert only(analysis, "sieve_over_2_5").state == only(analysis, "moisture").state == "accepted"


def test_a_row_and_its_label_of_two_families_are_asked_and_the_congress_mash_is_one() -> None:
    found = built(row("TSN (IoB)", "0.6", column_family="EBC"))
    assert doubts(found, "soluble_nitrogen") == [("family-assumed", "The label belongs to IoB and the row says EBC.")]
    # EBC and ASBC share the Congress mash: nothing hangs on which of them a label names.
    for label, note in (("Soluble nitrogen (ASBC)", EBC), ("Soluble nitrogen (EBC)", "Methods: ASBC")):
        found = built(row(label, "0.7"), notes=(note,))
        assert only(found, "soluble_nitrogen").state == "accepted", label


@pytest.mark.parametrize(
    ("notes", "more", "parameter", "reasons"),
    [
        (("All results are on dry matter",), {}, "extract_fine_dry", ()),
        (("All results are stated as is",), {}, "extract_fine_as_is", ()),
        (("dry matter",), {}, "extract_fine_dry", (OPEN_BASIS,)),
        (("All results on dry matter", "All results are as is"), {}, "extract_fine_dry", (OPEN_BASIS,)),
        (("results (on dry matter",), {}, "extract_fine_dry", (OPEN_BASIS,)),
        (("All results on dry matter except the extract",), {}, "extract_fine_dry",
         ("A note gives the moisture basis of all figures but some: “All results on dry matter except the extract”",)),
        (("All results are stated as is",), {"column": "dry basis"}, "extract_fine_dry", ()),
        (("All results are stated as is",), {"section": ("On dry matter",)}, "extract_fine_dry", ()),
        ((), {"section": ("On dry matter",)}, "extract_fine_dry", ()),
        ((), {"column": "as is"}, "extract_fine_as_is", ()),
        ((), {"column": "Result % as is"}, "extract_fine_as_is", ()),
        ((), {"unit": "% dry"}, "extract_fine_dry", ()),
        (("* on dry matter",), {"label": "Extract, fine *"}, "extract_fine_dry", ()),
    ],
)  # fmt: skip
def test_the_moisture_basis_of_an_extract(
    notes: tuple[str, ...], more: dict[str, str], parameter: str, reasons: tuple[str, ...]
) -> None:
    fields = {"label": "Extract, fine", "value": "81.2", "unit": "%", **more}
    found = only(built(row(**fields), MOISTURE, notes=(EBC, *notes)), parameter)  # type: ignore[arg-type]
    assert found.reasons == reasons
    assert found.state == ("review" if reasons else "accepted")


@pytest.mark.parametrize(
    ("label", "value", "note", "reasons"),
    [
        ("Extract, fine, dry", "81*", "* see letter of May", ("A footnote belongs to it: “see letter of May”.",)),
        ("Extract, fine, dry", "81*", "* EBC method", ()),
        ("Extract, fine, dry*", "81", "* from the previous delivery",
         ("A footnote belongs to it: “from the previous delivery”.",)),
        ("Extract, fine, dry*", "81", "* see letter of May", ()),
    ],
)  # fmt: skip
def test_a_footnote_of_the_result_has_to_be_understood(
    label: str, value: str, note: str, reasons: tuple[str, ...]
) -> None:
    assert only(built(row(label, value), notes=(EBC, note)), "extract_fine_dry").reasons == reasons


def test_rows_between_rows_of_barley_are_in_doubt() -> None:
    def analyses(*labels: str) -> Analysis:
        rows = [row(label, "12", section=("Analyses",)) for label in labels]
        return built(row("Friability", "86", section=("Analyses",)), *rows, row("Colour", "4", "EBC"))

    two = analyses("Barley moisture", "Barley protein")
    assert doubts(two, "friability") == [("label-doubtful", "Other rows of its section are of barley, not of malt.")]
    assert only(two, "colour").state == "accepted"
    assert [entry.label for entry in two.unrecognised] == ["Analyses / Barley moisture", "Analyses / Barley protein"]
    assert only(analyses("Barley moisture"), "friability").state == "accepted"


def test_limits_of_the_row_are_read_by_the_sign_of_the_sheet_and_are_none_of_a_specification() -> None:
    figure = only(built(row("Colour", "3,8", "EBC", low="3,0", high="4,500")), "colour")
    assert (figure.limits.low, figure.limits.high) == (3.0, 4.5)
    assert only(built(row("Moisture (max 4.5)", "4.3")), "moisture").limits.high == 4.5
    limit = only(built(row("Moisture", "max 4.5"), specification=True, batch=None), "moisture")
    assert (limit.value, limit.bound, limit.state, limit.limits.high) == (4.5, "<", "accepted", None)
    assert only(built(row("Colour max.", "4.5", "EBC"), specification=True, batch=None), "colour").state == "accepted"


def test_every_row_with_a_result_is_a_figure_or_unknown_and_keeps_its_number() -> None:
    rows = (row("Moisture", ""), row("Zorblax", "3"), row("Colour", "-", "EBC"), row("pH", "5.9", None))
    found = resolve(PrintedAnalysis((1,), (), rows, notes=(EBC,)), None)
    assert [(figure.parameter, figure.row) for figure in found.figures] == [("wort_ph", 3)]
    assert found.unknown == (rows[1],)
    assert found.unknown_rows == (1,)
    assert found.figures[0].match.parameter == "wort_ph"


def test_figures_of_another_mash_or_family_stand_on_their_own_mash() -> None:
    rows = (row("SNR", "40", column_family="IoB"), row("Soluble nitrogen", "0.7"), row("Viscosity", "1.5", "mPa·s"))
    found = resolve(PrintedAnalysis((1,), (), rows, notes=(EBC,)), None).figures
    assert [(figure.family, figure.mash) for figure in found] == [
        ("IoB", None), ("EBC", "congress"), ("EBC", "congress"),
    ]  # fmt: skip
    label = row("Viscosity (65 °C mash)", "1.5", "mPa·s")
    (own,) = resolve(PrintedAnalysis((1,), (), (label,), notes=(EBC,)), None).figures
    assert own.mash == "isothermal-65"
