"""Labels of rows by chance, with whatever may stand around them: each gets one answer that is whole."""

from __future__ import annotations

import json
from functools import cache
from pathlib import Path

from hypothesis import given, settings
from hypothesis import strategies as st

from importer.meaning.labels import LabelQuery, Match, examined, ideas_of, recognise
from importer.vocabulary.parameters import parameters
from importer.vocabulary.units import Unit, parse_unit
from tests.fuzz.tables import HEADS, ODD, UNITS

SEEN = Path(__file__).parent.parent / "labels" / "data" / "seen.jsonl"


@cache
def _known() -> tuple[str, ...]:
    """Labels that sheets have, and the words of them."""
    labels = [str(json.loads(line)["label"]) for line in SEEN.read_text(encoding="utf-8").splitlines()]
    return tuple(sorted({*labels, *(word for label in labels for word in label.split())}))


marks = st.sampled_from(
    ("(", ")", "/", ",", ":", "-", "%", ">", "2.5 mm", "2,2", "*", "¹", "65 °C", "12", "\u00ad", "|")
)
words = st.deferred(lambda: st.sampled_from(_known()))
pieces = st.one_of(words, words, marks, st.sampled_from(UNITS), st.text(max_size=5))
wordings = st.lists(pieces, max_size=7).flatmap(
    lambda parts: st.sampled_from((" ", "", "  ")).map(lambda gap: gap.join(parts))
)
units = st.none() | st.sampled_from(UNITS).map(parse_unit)
headings = st.lists(wordings | st.sampled_from((*HEADS, *ODD)), max_size=2).map(tuple)
queries = st.builds(
    LabelQuery,
    text=wordings,
    section=headings,
    column=st.just("") | st.sampled_from(HEADS) | wordings,
    unit=units,
    value=st.none() | st.floats(-1e9, 1e9),
    method=st.none() | wordings,
    family=st.sampled_from((None, "EBC", "IoB", "ASBC")),
)


@settings(deadline=None, max_examples=300)
@given(queries)
def test_any_label_among_anything_gets_a_whole_answer(query: LabelQuery) -> None:
    found = recognise(query)
    _is_whole(found)
    recognise.cache_clear()
    assert recognise(query) == found, "the answer hangs on what was asked before"


@settings(deadline=None, max_examples=150)
@given(wordings)
def test_any_heading_names_ideas_and_what_was_examined(text: str) -> None:
    assert isinstance(ideas_of(text), frozenset)
    assert examined(text) in ("malt", "barley", "other")


def _is_whole(found: Match) -> None:
    assert (found.parameter is None) == (found.state == "unknown")
    assert found.parameter is None or found.parameter in parameters()
    assert 0 <= found.score <= 100
    for name, score in found.rivals:
        assert name in parameters()
        assert name != found.parameter or found.state != "sure"
        assert 0 <= score <= 100
    assert found.unit is None or isinstance(found.unit, Unit)
    assert found.state != "sure" or found.score >= 50, "sure of what hardly fits"
