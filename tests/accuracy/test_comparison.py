"""The comparison itself, measured with readings that are made from the answer and then spoilt on purpose."""

from __future__ import annotations

import pytest

from importer.models import Figure, Printed, Sheet
from tests.accuracy.bounds import binomial_at_most, upper_bound
from tests.accuracy.compare import Comparison, compare, same_value
from tests.accuracy.report import Count, summary, tally, wrong_lines
from tests.accuracy.standins import perfect
from tests.sheets import Made, kinds, make_sheet


@pytest.fixture(scope="module")
def made() -> Made:
    return make_sheet(5, "ruled-grid", "en", "EBC")


def _count(comparison: Comparison) -> Count:
    return tally([comparison])["all"]["all"]


def _with(sheet: Sheet, place: int, figure: Figure | None) -> Sheet:
    """The sheet with one figure of the first analysis changed or left out."""
    analysis = sheet.analyses[0]
    figures = list(analysis.figures)
    figures[place : place + 1] = [figure] if figure else []
    return Sheet(analyses=(analysis.model_copy(update={"figures": tuple(figures)}),))


@pytest.mark.parametrize("kept", [False, True])
def test_faultless_reading_has_no_fault(kept: bool) -> None:
    for number, layout in enumerate(kinds(kept)):
        truth = make_sheet(number, layout, kept=kept).truth
        count = _count(compare(truth, perfect(truth)))
        assert (count.accepted_wrong, count.missed, count.ambiguous_accepted) == (0, 0, 0), layout
        assert (count.header_wrong, count.header_missed, count.unrecognised_lost, count.also_lost) == (0, 0, 0, 0), (
            layout
        )
        assert count.analyses_wrong == count.kinds_wrong == count.families_wrong == count.limits_wrong == 0, layout
        assert count.right + count.review == count.figures


def _plain_figure(sheet: Sheet) -> int:
    """The place of a figure with a plain number."""
    return next(i for i, f in enumerate(sheet.analyses[0].figures) if f.value is not None and not f.bound)


def test_wrong_value_is_accepted_wrong(made: Made) -> None:
    sheet = perfect(made.truth)
    place = _plain_figure(sheet)
    figure = sheet.analyses[0].figures[place]
    assert figure.printed
    spoilt = figure.model_copy(update={"printed": figure.printed.model_copy(update={"value": "999"})})
    comparison = compare(made.truth, _with(sheet, place, spoilt))
    assert _count(comparison).wrong == 1
    assert any(line.startswith("WRONG") and "999" in line for line in wrong_lines([comparison]))


def test_wrong_on_the_basis_is_counted_apart(made: Made) -> None:
    sheet = perfect(made.truth)
    place = _plain_figure(sheet)
    figure = sheet.analyses[0].figures[place]
    assert figure.value is not None
    count = _count(compare(made.truth, _with(sheet, place, figure.model_copy(update={"value": figure.value * 1.05}))))
    assert (count.wrong, count.wrong_on_basis) == (1, 1)


def test_the_same_fault_in_review_is_not_wrong(made: Made) -> None:
    sheet = perfect(made.truth)
    place = _plain_figure(sheet)
    figure = sheet.analyses[0].figures[place].model_copy(update={"value": -1.0, "state": "review"})
    before = _count(compare(made.truth, sheet)).review
    count = _count(compare(made.truth, _with(sheet, place, figure)))
    assert (count.wrong, count.review) == (0, before + 1)


def test_left_out_figure_is_missed(made: Made) -> None:
    sheet = perfect(made.truth)
    count = _count(compare(made.truth, _with(sheet, _plain_figure(sheet), None)))
    assert (count.missed, count.wrong) == (1, 0)


def test_wrong_parameter_is_accepted_wrong(made: Made) -> None:
    sheet = perfect(made.truth)
    place = _plain_figure(sheet)
    figure = sheet.analyses[0].figures[place].model_copy(update={"parameter": "ndma"})
    count = _count(compare(made.truth, _with(sheet, place, figure)))
    assert (count.wrong, count.missed) == (1, 0)


def test_wrong_unit_is_accepted_wrong(made: Made) -> None:
    sheet = perfect(made.truth)
    place = _plain_figure(sheet)
    figure = sheet.analyses[0].figures[place].model_copy(update={"unit": "WK"})
    assert _count(compare(made.truth, _with(sheet, place, figure))).wrong == 1


def test_figure_that_is_not_on_the_sheet_is_accepted_wrong(made: Made) -> None:
    sheet = perfect(made.truth)
    printed = Printed(label="Form", value="27", page=1, box=(0, 0, 1, 1))
    extra = Figure(parameter="gluten", value=27.0, unit="mg/kg", family="EBC", state="accepted", printed=printed)
    analysis = sheet.analyses[0]
    more = Sheet(analyses=(analysis.model_copy(update={"figures": (*analysis.figures, extra)}),))
    assert _count(compare(made.truth, more)).phantom_wrong == 1
    asked = extra.model_copy(update={"state": "review"})
    more = Sheet(analyses=(analysis.model_copy(update={"figures": (*analysis.figures, asked)}),))
    assert _count(compare(made.truth, more)).phantom_review == 1


def test_limit_taken_for_the_result_is_counted() -> None:
    truth = make_sheet(3, "sections", "en", "EBC").truth
    sheet = perfect(truth)
    place = next(i for i, f in enumerate(sheet.analyses[0].figures) if f.printed and f.printed.high and not f.bound)
    figure = sheet.analyses[0].figures[place]
    assert figure.printed
    taken = figure.model_copy(update={"printed": figure.printed.model_copy(update={"value": figure.printed.high})})
    count = _count(compare(truth, _with(sheet, place, taken)))
    assert (count.wrong, count.limits_taken) == (1, 1)


def test_lost_analysis_and_swapped_batches() -> None:
    truth = make_sheet(4, "batches-as-columns", "en", "EBC").truth
    sheet = perfect(truth)
    fewer = _count(compare(truth, Sheet(analyses=sheet.analyses[1:])))
    assert fewer.analyses_wrong == 1
    assert fewer.missed == len(truth.analyses[0].figures)
    assert _count(compare(truth, Sheet(analyses=sheet.analyses[::-1]))).accepted_wrong == 0  # paired by batch number


def test_ambiguous_figure_that_is_accepted_is_counted() -> None:
    for seed in range(60):
        truth = make_sheet(seed, "ruled-grid", "en").truth
        unsure = [f for f in truth.analyses[0].figures if f.certainty == "ambiguous"]
        if unsure:
            break
    sheet = perfect(truth)
    bold = tuple(f.model_copy(update={"state": "accepted"}) for f in sheet.analyses[0].figures)
    count = _count(compare(truth, Sheet(analyses=(sheet.analyses[0].model_copy(update={"figures": bold}),))))
    assert count.ambiguous_accepted == len(unsure)


def test_wrong_batch_number_is_counted(made: Made) -> None:
    sheet = perfect(made.truth)
    analysis = sheet.analyses[0]
    batch = analysis.header["batch"].model_copy(update={"value": "X-1"})
    other = analysis.model_copy(update={"header": {**analysis.header, "batch": batch}})
    count = _count(compare(made.truth, Sheet(analyses=(other,))))
    assert (count.header_wrong, count.batch_wrong) == (1, 1)


@pytest.mark.parametrize(
    ("read", "truth", "same"),
    [
        ("4,2", "4.2", True), ("<0.5", "< 0.5", True), ("4.2 %", "4.2", True), ("4.2*", "4.2", True),
        ("10–15", "10 - 15", True), ("4.25", "4.2", False), ("4.2.1", "4.2", False), ("14.2", "4.2", False),
        ("42", "4.2", False), ("", "4.2", False),
    ],
)  # fmt: skip
def test_printed_values_are_compared_by_their_characters(read: str, truth: str, same: bool) -> None:
    assert same_value(read, truth) is same


@pytest.mark.parametrize(
    ("errors", "trials", "bound"),
    # 0 of n: 1 - 0.05 ** (1/n), by definition. The others: upper ends of the 90 % two-sided Clopper-Pearson interval,
    # checked against the tail of the binomial distribution below.
    [(0, 1, 0.95), (0, 10, 0.2588656), (0, 59, 0.0495057), (0, 299, 0.0099692), (0, 2995, 0.0009998)],
)
def test_upper_bound_without_errors(errors: int, trials: int, bound: float) -> None:
    assert upper_bound(errors, trials) == pytest.approx(bound, abs=2e-6)
    assert upper_bound(errors, trials) == pytest.approx(1 - 0.05 ** (1 / trials), abs=1e-9)


@pytest.mark.parametrize(("errors", "trials"), [(1, 10), (2, 50), (5, 1000), (12, 400)])
def test_upper_bound_is_where_the_tail_is_five_per_cent(errors: int, trials: int) -> None:
    assert binomial_at_most(errors, trials, upper_bound(errors, trials)) == pytest.approx(0.05, abs=1e-6)


def test_summary_names_every_count() -> None:
    truth = make_sheet(1, "zebra", "en", "EBC").truth
    text = summary(tally([compare(truth, perfect(truth))]), ("layout", "language", "family"))
    for word in ("accepted wrong", "review", "ambiguous accepted", "missed", "analyses", "header", "zebra", "EBC"):
        assert word in text
