"""The word lists of result cells: consistent with each other; their meanings are common practice, no source."""

from __future__ import annotations

import itertools
import tomllib

import pytest

from importer.data import mappings_folder
from importer.reading.numbers import read_number
from importer.vocabulary.result_words import plain_word, result_words

RAW = tomllib.loads((mappings_folder() / "results.toml").read_text(encoding="utf-8"))
KINDS = {"not_detected": "not-detected", "blank": "blank", "described": "word"}


def test_no_word_stands_in_two_lists() -> None:
    words = result_words()
    lists = [words.not_detected, words.blank, words.described]
    for one, other in itertools.combinations(lists, 2):
        assert not one & other


@pytest.mark.parametrize("section", KINDS)
def test_every_listed_word_reads_as_its_kind(section: str) -> None:
    for word in RAW[section]["words"]:
        number = read_number(word, None)
        assert number is not None, word
        assert number.kind == KINDS[section], word
        assert number.value is None


@pytest.mark.parametrize(
    "text",
    [
        "< NG", "< BG", "< LOD", "< LOQ", "< LQ", "ND", "n.d.", "n.n.", "nn", "nicht nachgewiesen", "below detection",
        "beneden detectiegrens", "no detectado", "non rilevato", "nezjištěno", "ej påvist", "ikke påvist", "sous LD",
        "niet aant.", "nenalezeno", "ikke fundet", "non ril.", "не обн.", "nie wykryto", "未检出",
    ],
)  # fmt: skip
def test_nothing_found(text: str) -> None:
    number = read_number(text, None)
    assert number is not None
    assert (number.kind, number.value) == ("not-detected", None)


@pytest.mark.parametrize(
    "text",
    [
        "opalisierend",
        "típico",
        "opaal",
        "opalizující",
        "brillante",
        "limpio",
        "puro",
        "čirá",
        "ren",
        "klar",
        "normal",
        "rapide",
        "lent",
        "schnell",
        "träge",
        "snel",
        "vlot",
        "opalino",
        "arttypisch",
        "klarowna",
        "traces",
    ],
)
def test_described_results(text: str) -> None:
    number = read_number(text, None)
    assert number is not None
    assert number.kind == "word"


@pytest.mark.parametrize("bound", list(RAW["limits"]))
def test_every_word_before_a_number_gives_its_bound(bound: str) -> None:
    for word in RAW["limits"][bound]["before"]:
        number = read_number(f"{word} 4.5", None)
        assert number is not None, word
        assert (number.value, number.bound) == (4.5, bound), word


@pytest.mark.parametrize("bound", list(RAW["limits"]))
def test_every_word_behind_a_number_gives_its_bound(bound: str) -> None:
    for word in RAW["limits"][bound]["after"]:
        number = read_number(f"4.5 {word}", None)
        assert number is not None, word
        assert number.value == 4.5
        assert number.bound == bound, word


def test_words_between_two_numbers_make_a_range() -> None:
    for word in [*RAW["range"]["between"], *RAW["range"]["signs"]]:
        number = read_number(f"4 {word} 5", None)
        assert number is not None, word
        assert (number.kind, number.low, number.high) == ("range", 4, 5), word


@pytest.mark.parametrize(
    ("text", "plain"), [("Máx.", "max"), ("  N. D. ", "n. d"), ("MÄSSIG", "massig"), ("ß", "ss"), ("", "")]
)
def test_plain_words(text: str, plain: str) -> None:
    assert plain_word(text) == plain


@pytest.mark.parametrize(
    "text",
    ["obvyklá", "slabý zákal", "limpido, brillante", "wie üblich", "as usual", "schw. opal", "algo turbio",
     "voile léger",
     "zoals gebruikelijk", "svag uklarhed", "lekka opalescencja", "číra, iskrivá"],
)  # fmt: skip
def test_looks_and_smells_are_results(text: str) -> None:
    number = read_number(text, None)
    assert number is not None
    assert number.kind == "word"
