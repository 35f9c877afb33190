"""The malts in use for a recipe: which batch, which numbers, and what changed since they were handed out."""

from __future__ import annotations

import csv
import io
import json

import pytest

from importer.deciding.choosing import in_use, named_batch
from importer.deciding.feed import Malt, recipe_feed
from importer.models import Unrecognised
from importer.telling.recipe_out import COLUMNS, change_words, to_recipe_csv, to_recipe_json
from tests.deciding.factory import analysis, estimate, figure


def pale(batch: str = "B1", day: str = "2025-01-01", extract: float = 78.0, **more: str):  # type: ignore[no-untyped-def]
    return analysis(
        figure("moisture", 4.0),
        figure("extract_fine_as_is", extract),
        figure("extract_fine_dry", 81.3),
        figure("colour", 5.0, "EBC"),
        figure("diastatic_power", 334, "WK"),
        figure("total_protein", 10.2),
        figure("nitrogen_ratio", 42.0),
        batch=batch,
        day=day,
        **more,
    )


def test_numbers_in_the_units_of_the_trade() -> None:
    """78.0 % × 3.86 = 301.1 L°/kg, ÷ 8.3454 = 36.08 points (factor 8.34540 by definition, check value ex-05);
    5.0 EBC = 2.54 SRM (check value co-05); 334 WK = 100 °Lintner (encyclopaedia entry, check value dp-01)."""
    (malt,) = recipe_feed([pale()]).malts
    assert malt.extract_as_is_l_deg_per_kg == pytest.approx(301.1)
    assert malt.extract_as_is_points_per_lb_us_gal == pytest.approx(36.08)
    assert malt.colour_srm == pytest.approx(2.54)
    assert malt.diastatic_power_lintner == pytest.approx(100.0)
    assert (malt.extract_family, malt.extract_mash, malt.planning_grind) == ("EBC", "congress", "fine")
    assert (malt.nitrogen_ratio_percent, malt.nitrogen_ratio_family) == (42.0, "EBC")


def test_extracts_stay_on_their_own_mash_and_estimates_of_them_are_left_out() -> None:
    iob = analysis(
        figure("extract_coarse_as_is", 298, "L°/kg", "IoB", flags=("not-convertible",)),
        estimate("extract_fine_as_is", 78.7, "%", 1.0, (77.2, "%", "IoB")),
        estimate("nitrogen_ratio", 43.0, "%", 2.5, (38.2, "%", "IoB")),
        family="IoB",
        mash="isothermal-65",
    )
    (malt,) = recipe_feed([iob]).malts
    assert malt.extract_as_is_l_deg_per_kg == 298
    assert malt.extract_coarse_as_is_percent == pytest.approx(77.20)
    assert (malt.extract_family, malt.extract_mash, malt.planning_grind) == ("IoB", "isothermal-65", "coarse")
    assert malt.nitrogen_ratio_estimated is True
    assert malt.nitrogen_ratio_spread == 2.5


def test_a_german_mash_at_65_degrees_is_named() -> None:
    one = analysis(
        figure("extract_fine_as_is", 78, flags=("not-convertible",)),
        figure("nitrogen_ratio", 37, flags=("not-convertible",)),
        mash="isothermal-65",
    )
    (malt,) = recipe_feed([one]).malts
    assert (malt.extract_mash, malt.nitrogen_ratio_mash) == ("isothermal-65", "isothermal-65")


def test_the_latest_batch_without_doubt_is_in_use() -> None:
    old, new = pale("B1", "2025-01-01"), pale("B2", "2025-02-01")
    doubtful = analysis(figure("moisture", 4.0, state="review"), batch="B3", day="2025-03-01")
    assert [a.header["batch"].value for a in in_use([old, new, doubtful]).values()] == ["B2"]
    feed = recipe_feed([old, new, doubtful])
    assert (feed.malts[0].batch, feed.malts[0].pinned) == ("B2", False)


def test_a_batch_whose_malt_is_not_certain_is_not_in_use() -> None:
    one = pale()
    doubtful = one.model_copy(
        update={"header": one.header | {"malt": one.header["malt"].model_copy(update={"state": "review"})}}
    )
    assert recipe_feed([doubtful]).malts == ()
    feed = recipe_feed([doubtful])
    assert feed.without_batch == ("Nordtal Malting Pale Ale Malt",)
    assert feed.remarks == (
        "Nordtal Malting Pale Ale Malt B1: left out: the malt's name is not certain. Open it in `onebasis review`, "
        "All sheets.",
    )


def test_of_batches_of_one_day_the_others_are_told() -> None:
    one, two = pale("B1", "2025-02-01"), pale("B2", "2025-02-01", 75.0)
    feed = recipe_feed([pale("B0", "2025-01-01"), one, two])
    assert feed.malts[0].batch == "B2"
    assert feed.remarks == (
        "Nordtal Malting Pale Ale Malt B2 is of the same day as B1. Pin the one in use with --pin.",
    )
    assert recipe_feed([one, two], {"pale ale malt": "B1"}).remarks == ()


def test_a_sheet_without_a_date_of_its_own_is_not_the_latest() -> None:
    dated, undated = pale("B2", "2025-02-01"), pale("B0", "", 75.0, crop="")
    feed = recipe_feed([dated, undated], days={undated.id: "2026-11-27"})
    assert [malt.batch for malt in feed.malts] == ["B2"]
    assert feed.remarks == (
        "Nordtal Malting Pale Ale Malt B0 has no date on its sheet (filed under 2026-11-27); not taken as the latest. "
        "Pin it with --pin.",
    )
    assert recipe_feed([dated, undated], {"pale ale malt": "B0"}).malts[0].batch == "B0"


def test_an_older_crop_without_a_date_is_passed_over_and_a_newer_one_without_dates_is_taken() -> None:
    old, new = pale("B1", "", crop="2023"), pale("B2", "", crop="2024")
    for order in ([old, new], [new, old]):
        feed = recipe_feed(order)
        assert ([malt.batch for malt in feed.malts], feed.remarks) == (["B2"], ())


def test_several_sheets_without_dates_leave_the_malt_out() -> None:
    feed = recipe_feed([pale("B1", ""), pale("B2", "")])
    assert feed.malts == ()
    assert [remark.split(" has ")[0] for remark in feed.remarks] == [
        "Nordtal Malting Pale Ale Malt B1",
        "Nordtal Malting Pale Ale Malt B2",
    ]
    assert [malt.batch for malt in recipe_feed([pale("B1", "")]).malts] == ["B1"]


def test_rows_without_a_parameter_are_told_beside_the_batch() -> None:
    row = Unrecognised(label="Hardness", value="4.1", unit="kp", page=1, box=(0, 0, 1, 1))
    feed = recipe_feed([pale().model_copy(update={"unrecognised": (row, row)})])
    assert feed.malts[0].review == "2 rows of the sheet have no parameter"
    assert feed.remarks == ("Nordtal Malting Pale Ale Malt B1: 2 rows of the sheet have no parameter.",)


def test_a_pinned_batch_is_used_whatever_came_later() -> None:
    old, new = pale("B1", "2025-01-01"), pale("B2", "2025-02-01")
    feed = recipe_feed([old, new], {"pale ale malt": "b1"})
    assert (feed.malts[0].batch, feed.malts[0].pinned) == ("B1", True)


def test_of_a_pinned_batch_in_review_only_accepted_numbers_are_given() -> None:
    one = analysis(figure("moisture", 4.0), figure("colour", 5.0, "EBC", state="review"), batch="B1")
    assert recipe_feed([one]).without_batch == ("Nordtal Malting Pale Ale Malt",)
    (malt,) = recipe_feed([one], {"Pale Ale Malt": "B1"}).malts
    assert (malt.moisture_percent, malt.colour_ebc, malt.review) == (4.0, None, "colour")


@pytest.mark.parametrize(
    ("pins", "told"),
    [
        ({"Munich": "B1"}, "no malt 'Munich'"),
        ({"Pale Ale Malt": "B9"}, "no batch 'B9'"),
        ({"Pale Ale Malt": "B1"}, "several suppliers"),
    ],
)
def test_pins_that_lead_nowhere(pins: dict[str, str], told: str) -> None:
    with pytest.raises(ValueError, match=told):
        recipe_feed([pale(), pale(supplier="Other Maltings")], pins)


def test_a_pin_with_its_supplier() -> None:
    feed = recipe_feed([pale(), pale(supplier="Other Maltings")], {"other maltings/Pale Ale Malt": "B1"})
    assert {(malt.supplier, malt.pinned) for malt in feed.malts} == {
        ("Nordtal Malting", False),
        ("Other Maltings", True),
    }


def test_changes_of_numbers_already_handed_out_are_told() -> None:
    before = recipe_feed([pale()]).malts
    feed = recipe_feed([pale(), pale("B2", "2025-02-01", extract=77.0)], handed_out=[m.model_dump() for m in before])
    told = {change.column: (change.before, change.now) for change in feed.changes}
    assert told["extract_fine_as_is_percent"] == (78.0, 77.0)
    assert set(told) == {
        "extract_fine_as_is_percent",
        "extract_as_is_l_deg_per_kg",
        "extract_as_is_points_per_lb_us_gal",
    }
    assert change_words(feed.changes[0]) == "Pale Ale Malt (B1 → B2), extract_fine_as_is_percent: 78 → 77"


def test_a_new_batch_with_the_same_numbers_and_a_new_malt_change_nothing() -> None:
    before = [m.model_dump() for m in recipe_feed([pale()]).malts]
    again = [pale("B2", "2025-02-01"), pale("M1", malt="Munich Malt")]
    assert recipe_feed(again, handed_out=before).changes == ()


def test_columns_are_those_of_the_model_and_stay() -> None:
    """A spreadsheet or script relies on them: new ones may come at a new format only."""
    assert [column.name for column in COLUMNS] == list(Malt.model_fields)
    text, schema = to_recipe_csv(recipe_feed([pale()]))
    (row,) = csv.DictReader(io.StringIO(text))
    assert row["extract_as_is_l_deg_per_kg"] == "301.1"
    assert [field["name"] for field in json.loads(schema)["fields"]] == list(row)
    assert json.loads(to_recipe_json(recipe_feed([pale()])))["format"] == "onebasis-recipe/1"


def test_names_never_run_as_formulas() -> None:
    text, _ = to_recipe_csv(recipe_feed([pale(malt='=HYPERLINK("http://x")')]))
    (row,) = csv.DictReader(io.StringIO(text))
    assert row["malt"].startswith("'=")


def test_batches_are_found_by_number_and_by_id() -> None:
    one, other = pale("24/0417"), pale("24/0417", supplier="Other Maltings")
    assert named_batch([one, other], "24-0417") == (one, other)
    assert named_batch([one, other], one.id) == (one,)
    assert named_batch([one, other], one.id[:8]) == (one,)
    assert named_batch([one, other], "0417") == ()
    assert named_batch([one, other], "!!") == ()
