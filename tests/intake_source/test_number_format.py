"""Number formats as spreadsheet programs show them.

Expected texts follow the rules and examples of ECMA-376 part 1, 18.8.31; those without one there are marked.
"""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from importer.intake.number_format import general, shown


@pytest.mark.parametrize(
    ("value", "code", "text"),
    [
        (1234.59, "####.#", "1234.6"),  # 18.8.31, digit placeholders
        (8.9, "#.000", "8.900"),  # 18.8.31
        (0.631, "0.#", "0.6"),  # 18.8.31
        (12, "0.#", "12"),  # Excel shows "12."; the lone point is left out here
        (12000, "#,##0", "12000"),  # without separators, on purpose
        (12000, "#,", "12"),  # 18.8.31, scaling by thousands
        (12200000, "0.0,,", "12.2"),  # 18.8.31
        (0.042, "0.0%", "4.2%"),
        (0.042, "0.00%", "4.20%"),
        (4.25, "0.0", "4.3"),  # half away from zero, common practice
        (-4.25, "0.0", "-4.3"),
        (4.2, "0.00", "4.20"),
        (4177, "000000", "004177"),  # 18.8.31, "0" shows a digit also where there is none
        (240815, "00-0000", "24-0815"),
        (815, "00-0000", "00-0815"),
        (1240815, "00-0000", "124-0815"),
        (5550100, "(000) 0000", "(555) 0100"),
        (15, '##"/"####', "15"),
        (4.2, "General", "4.2"),
        (4.2, "", "4.2"),
        (4.2, "@", "4.2"),
        (4.2, '0.0" %"', "4.2 %"),
        (309, '0 "L°/kg"', "309 L°/kg"),
        (0.5, '"<"0.0', "<0.5"),
        (0.5, "\\<0.0", "<0.5"),
        (5, "0.0_);(0.0)", "5.0"),
        (-5, "0.0_);(0.0)", "(5.0)"),
        (-5, "0.0;[Red]-0.0", "-5.0"),
        (0, '0.0;-0.0;"n.d."', "n.d."),
        (3.5, "[Blue]0.0", "3.5"),
        (3.5, "[$-407]0.00", "3.50"),
        (12345, "0.00E+00", "1.23E+4"),  # the exponent's own zeros are not kept
        (5.25, "# ?/?", "5.25"),  # fractions are shown as decimals
        (2024, "0", "2024"),
        (4.2, '"a;b" 0.0', "a;b 4.2"),
    ],
)
def test_shown(value: float, code: str, text: str) -> None:
    assert shown(value, code) == text


@pytest.mark.parametrize(
    ("value", "text"),
    [
        (4.0, "4"),
        (4.3, "4.3"),
        (0.1 + 0.2, "0.3"),
        (240317, "240317"),
        (1234567890123, "1234567890123"),
        (0.00025, "0.00025"),
        (1e-7, "0.0000001"),
        (-1.5, "-1.5"),
    ],
)
def test_general(value: float, text: str) -> None:
    assert general(value) == text


@given(st.floats(-1e12, 1e12), st.text(max_size=20))
def test_any_format_code_gives_a_text(value: float, code: str) -> None:
    assert isinstance(shown(value, code), str)


@given(st.integers(-(10**9), 10**9), st.integers(1, 4))
def test_fixed_decimals_keep_the_number(digits: int, decimals: int) -> None:
    value = digits / 10**decimals
    assert float(shown(value, "0." + "0" * decimals)) == value
