"""What can be a batch number: common practice, no source."""

from __future__ import annotations

from datetime import date

import pytest
from hypothesis import given
from hypothesis import strategies as st

from importer.vocabulary.captions import looks_like_batch


@pytest.mark.parametrize(
    "text",
    [
        "24-0815", "L2405A", "PM 2411/03", "M4318", "24-1815", "CHARGE-2024-113", "2RP-24-011", "K/24/117",
        "L 24 305", "24305/1", "123456",
        "Batch 24-0815", "Lot L2405", "Batch no.: 12345", "Pilsen 2024-113", "1450",
    ],
)  # fmt: skip
def test_codes(text: str) -> None:
    assert looks_like_batch(text)


@pytest.mark.parametrize(
    "text",
    [
        "", " ", "04.03.2026", "2026-03-04", "BB 24.11.2026", "12/2025", "March 2026", "Nov-25", "2025", "2024/25",
        "Crop 2025",
        "+49 123 456789", "0123 456 789", "€ 12.50", "4.5", "82", "1 450", "380-420", "10-15", "10 / 20 / 70",
        "1.55 / 9.7", "2.5-2.8 mm",
        "25 kg", "6/64", "EBC 4.2", "R-200.14.011", "Malt-4", "VZ 45", "65 °C", "α-amylase 45", "N 1.65", "max 4.5",
        "Pilsner malt", "Result",
        "Silo 4", "x" * 200,
    ],
)  # fmt: skip
def test_what_is_no_code(text: str) -> None:
    assert not looks_like_batch(text)


@given(
    st.dates(date(2000, 1, 1), date(2049, 12, 31)),
    st.sampled_from(["%d.%m.%Y", "%Y-%m-%d", "%d/%m/%Y", "%d.%m.%y", "%d %B %Y"]),
)
def test_a_date_alone_is_never_a_batch(day: date, form: str) -> None:
    assert not looks_like_batch(day.strftime(form))


@given(st.decimals(0, 999, places=2), st.sampled_from(["", " %", " mg/l", " EBC", " mPa·s"]))
def test_a_figure_is_never_a_batch(number: object, unit: str) -> None:
    assert not looks_like_batch(f"{number}{unit}")


@given(st.text(max_size=60))
def test_never_an_exception(text: str) -> None:
    assert looks_like_batch(text) in (True, False)
