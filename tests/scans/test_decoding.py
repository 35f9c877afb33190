"""What the second reader's scores say: the best character of each step, wide signs as narrow ones."""

from __future__ import annotations

import numpy as np
import pytest

from importer.intake.second import _decode

ALPHABET = ["", "0", "3", "：", "％", "A", " "]


@pytest.mark.parametrize(
    ("steps", "text"),
    [
        ((1, 1, 0, 1, 2), "003"),  # a repeat is one character, unless nothing stands between
        ((3, 1, 2), ":03"),
        ((2, 0, 4), "3%"),
        ((6, 5, 6), "A"),
        ((0, 0), ""),
    ],
)
def test_signs_as_wide_as_a_chinese_character_are_the_common_ones(steps: tuple[int, ...], text: str) -> None:
    scores = np.zeros((len(steps), len(ALPHABET)), dtype=np.float32)
    scores[np.arange(len(steps)), steps] = 0.9
    assert _decode(scores, ALPHABET).text == text
