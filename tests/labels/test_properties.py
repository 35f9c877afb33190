"""What must hold for any label: letters, marks and brackets around it change nothing, and slips never mislead."""

from __future__ import annotations

import json
import string
import time
import unicodedata
from pathlib import Path
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from importer.meaning.labels import LabelQuery, Match, describe, recognise
from importer.vocabulary.parameters import parameters
from importer.vocabulary.units import parse_unit

DATA = Path(__file__).parent / "data"
ROWS: list[dict[str, Any]] = [
    json.loads(line)
    for name in ("kept_aside.jsonl", "seen.jsonl")
    for line in (DATA / name).read_text(encoding="utf-8").splitlines()
]
CERTAIN = [row for row in ROWS if row["parameter"] in parameters() and describe(row["label"]).state == "sure"]
LONG_WORDS = [row for row in CERTAIN if any(len(word) >= 8 and word.isalpha() for word in row["label"].split())]


def same(first: Match, second: Match) -> bool:
    return (first.parameter, first.state, first.basis) == (second.parameter, second.state, second.basis)


def has_short_word(label: str) -> bool:
    """Words of one or two letters have a meaning of their own in capitals ("As"), and so has "mm" in small letters."""
    words = "".join(c if c.isalpha() else " " for c in label).split()
    return any(len(word) <= 2 for word in words)


@given(row=st.sampled_from(CERTAIN))
@settings(max_examples=150, deadline=None)
def test_capitals_make_no_difference(row: dict[str, Any]) -> None:
    label = row["label"]
    if not has_short_word(label) and "ß" not in label and "ẞ" not in label:
        assert same(describe(label), describe(label.upper()))


@given(row=st.sampled_from(CERTAIN))
@settings(max_examples=150, deadline=None)
def test_composed_and_decomposed_accents_are_one(row: dict[str, Any]) -> None:
    label = row["label"]
    assert same(describe(label), describe(unicodedata.normalize("NFD", label)))


@given(row=st.sampled_from(CERTAIN))
@settings(max_examples=150, deadline=None)
def test_lost_accents_never_mislead(row: dict[str, Any]) -> None:
    bare = "".join(c for c in unicodedata.normalize("NFD", row["label"]) if not unicodedata.combining(c))
    found = describe(bare)
    assert found.parameter == describe(row["label"]).parameter or found.state != "sure"


@given(
    row=st.sampled_from(CERTAIN),
    before=st.sampled_from(["", "• ", "- ", "* ", "3. ", "a) ", "  ", "▪ "]),
    after=st.sampled_from(["", ":", " *", " ......", "  ", "¹)", " †"]),
)
@settings(max_examples=300, deadline=None)
def test_bullets_and_marks_make_no_difference(row: dict[str, Any], before: str, after: str) -> None:
    label = row["label"]
    if before.strip()[:1].isdigit() and not label[:1].isalpha():
        return
    if label[-1].isalnum() or label[-1] in ")%":
        assert same(describe(label), describe(f"{before}{label}{after}"))


@given(row=st.sampled_from([row for row in CERTAIN if row.get("unit") == "%" and "%" not in row["label"]]))
@settings(max_examples=150, deadline=None)
def test_a_unit_in_brackets_is_a_unit_beside(row: dict[str, Any]) -> None:
    beside = recognise(LabelQuery(row["label"], unit=parse_unit("%")))
    assert same(beside, describe(f"{row['label']} (%)"))


@given(
    row=st.sampled_from(LONG_WORDS),
    place=st.integers(0, 200),
    letter=st.sampled_from(string.ascii_lowercase),
    kind=st.integers(0, 3),
)
@settings(max_examples=800, deadline=None)
def test_a_slip_in_a_long_word_never_makes_another_figure_certain(
    row: dict[str, Any], place: int, letter: str, kind: int
) -> None:
    words = row["label"].split()
    long = [i for i, word in enumerate(words) if len(word) >= 8 and word.isalpha()]
    which = long[place % len(long)]
    word = words[which]
    at = place % len(word)
    changed = (
        word[:at] + letter + word[at + 1 :],
        word[:at] + word[at + 1 :],
        word[:at] + letter + word[at:],
        word[:at] + word[at + 1 : at + 2] + word[at] + word[at + 2 :],
    )[kind]
    unit = parse_unit(row["unit"]) if row.get("unit") else None
    label = " ".join([*words[:which], changed, *words[which + 1 :]])
    found = recognise(LabelQuery(label, unit=unit, family=row.get("family")))
    meant = recognise(LabelQuery(row["label"], unit=unit, family=row.get("family")))
    assert found.state != "sure" or found.parameter in (meant.parameter, row["parameter"]), (label, found)


@given(text=st.text(max_size=60))
@settings(max_examples=300, deadline=None)
def test_any_text_gets_an_answer(text: str) -> None:
    found = describe(text)
    assert found.state in ("sure", "doubtful", "unknown")
    assert (found.parameter is None) == (found.state == "unknown")
    assert 0 <= found.score <= 100


@pytest.mark.parametrize(
    "text",
    [
        "", " ", "\x00", "\x00\x01\x02\x7f", "()[]{}", "/////", "|\n|\n|", "%", "°", "1", "mm", "> <",
        "\u202e\u200bMoisture", "𝔐𝔬𝔦𝔰𝔱𝔲𝔯𝔢", "(" * 5000, "a" * 10_000, "moisture " * 1200, "1.2.3.4.5." * 1000,
        "/".join(["protein"] * 2000), "ß" * 10_000, "?" * 10_000, "\ud800",
    ],
)  # fmt: skip
def test_hostile_text_is_answered_at_once(text: str) -> None:
    began = time.perf_counter()
    found = describe(text)
    assert time.perf_counter() - began < 1.0
    assert found.state in ("sure", "doubtful", "unknown")


def test_asking_again_costs_next_to_nothing() -> None:
    """A sheet asks for the same labels many times over; the bound is far above what is usual (3 µs)."""
    labels = [row["label"] for row in ROWS]
    for label in labels:
        describe(label)
    began = time.process_time()
    for label in labels:
        describe(label)
    assert (time.process_time() - began) / len(labels) < 200e-6
