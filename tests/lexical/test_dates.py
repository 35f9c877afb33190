"""Dates. Source: ISO 8601-1:2019 (4.1.2, calendar dates and reduced precision), the proleptic calendar of Python's
datetime as an outside check; order of day and month by separator is common practice, no source."""

from __future__ import annotations

from datetime import date

import pytest
from hypothesis import given
from hypothesis import strategies as st

from importer.reading.dates import DayOrder, decide_day_order, months, parse_crop_year, parse_date


@pytest.mark.parametrize(
    "text",
    [
        "2026-03-04", "2026/03/04", "2026.03.04", "04.03.2026", "4.3.2026", "04.03.26", "4 March 2026", "4. März 2026",
        "4 mars 2026", "4 de marzo de 2026", "4 marzo 2026", "4 maart 2026", "4. března 2026", "4. marts 2026",
        "4 марта 2026",
        "4 marca 2026", "4 de março de 2026", "04-Mar-26", "04MAR2026", "March 4, 2026", "4th of March 2026",
        "2026年3月4日",
        "2026. március 4.", "2026-03-04 10:22", "2026-03-04T10:22:00Z", "04.03.2026 08:15 Uhr", "Wed, 4 March 2026",
        "Mittwoch, den 4. März 2026", "Hafenstadt, 4 March 2026",
    ],
)  # fmt: skip
def test_dates_that_can_be_read_in_one_way(text: str) -> None:
    assert parse_date(text) == ("2026-03-04", True)


@pytest.mark.parametrize(
    "text", ["Mar-2026", "03/2026", "03.2026", "2026-03", "March 2026", "März 2026", "mars 2026", "3/2026"]
)
def test_a_month_without_a_day_stays_a_month(text: str) -> None:
    assert parse_date(text) == ("2026-03", True)


@pytest.mark.parametrize(
    ("text", "order", "found"),
    [
        ("4/3/2026", None, ("2026-03-04", False)),
        ("4/3/2026", "dmy", ("2026-03-04", True)),
        ("4/3/2026", "mdy", ("2026-04-03", True)),
        ("14/3/2026", None, ("2026-03-14", True)),
        ("3/14/2026", None, ("2026-03-14", True)),
        ("14/3/2026", "mdy", ("2026-03-14", True)),
        ("4-3-2026", None, ("2026-03-04", False)),
        ("4/4/2026", None, ("2026-04-04", True)),
        ("03/26", None, ("2026-03", False)),
        ("01.03.2026 - 04.03.2026", None, ("2026-03-04", False)),
        ("20260304", None, ("2026-03-04", False)),
    ],
)
def test_order_of_day_and_month(text: str, order: DayOrder | None, found: tuple[str, bool]) -> None:
    assert parse_date(text, order) == found


def test_a_two_digit_year_that_may_stand_first_is_not_certain() -> None:
    found = parse_date("26-03-04", "dmy")
    assert found is not None
    assert not found[1]


@pytest.mark.parametrize(
    "text", ["", "Batch 5", "24-0815", "31.02.2026", "32/13/2026", "Pilsner", "4.5", "2026", "²²²00", "1" * 500]
)
def test_what_is_no_date(text: str) -> None:
    assert parse_date(text) is None


@pytest.mark.parametrize(
    ("texts", "order"),
    [
        (["4/3/2026", "25/3/2026"], "dmy"),
        (["4/3/2026", "3/25/2026"], "mdy"),
        (["25/3/2026", "3/25/2026"], None),
        (["4/3/2026"], None),
        (["4.3.2026"], "dmy"),
        (["March 4, 2026"], "mdy"),
        ([], None),
    ],
)
def test_the_other_dates_of_a_sheet_settle_the_order(texts: list[str], order: str | None) -> None:
    assert decide_day_order(texts) == order


@pytest.mark.parametrize(
    ("text", "year"),
    [
        ("2025", "2025"), ("Ernte 2025", "2025"), ("crop 2025", "2025"), ("2024/25", "2024/2025"),
        ("2024-2025", "2024/2025"),
        ("24/25", "2024/2025"), ("2023 & 2024", "2023/2024"), ("récolte 2025", "2025"), ("25", None),
        ("2021/2024", None),
        ("2025/24", None), ("2-row 2025", None), ("", None), ("Pilsner", None),
    ],
)  # fmt: skip
def test_crop_years(text: str, year: str | None) -> None:
    assert parse_crop_year(text) == year


FORMS = ["%Y-%m-%d", "%d.%m.%Y", "%d.%m.%y", "%d %B %Y", "%B %d, %Y", "%d-%b-%Y", "%Y/%m/%d", "%Y%m%d"]


@given(st.dates(date(2000, 1, 1), date(2069, 12, 31)), st.sampled_from(FORMS))
def test_every_day_of_the_calendar_reads_back(day: date, form: str) -> None:
    found = parse_date(day.strftime(form))
    assert found is not None
    assert found[0] == day.isoformat()


@given(st.dates(date(2000, 1, 1), date(2069, 12, 31)), st.sampled_from(["/", "-"]))
def test_a_date_is_certain_only_where_it_has_one_reading(day: date, sign: str) -> None:
    found = parse_date(day.strftime(f"%d{sign}%m{sign}%Y"))
    assert found is not None
    assert found[1] == (day.day > 12 or day.day == day.month)
    assert found[0] == day.isoformat() or not found[1]


@given(st.text(max_size=100))
def test_never_an_exception(text: str) -> None:
    found = parse_date(text)
    assert found is None or date.fromisoformat(found[0] if len(found[0]) > 7 else f"{found[0]}-01")
    assert parse_crop_year(text) is None or text
    assert decide_day_order([text]) in ("dmy", "mdy", None)


def test_all_months_are_named() -> None:
    assert set(months().values()) == set(range(1, 13))
