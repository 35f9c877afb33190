"""The word files and the rules hold together, and every parameter can be named in every main language."""

from __future__ import annotations

import re
import subprocess
import sys
import tomllib
from collections.abc import Iterator
from itertools import islice, product
from pathlib import Path

import pytest

from importer.data import mappings_folder
from importer.errors import DataError, OwnFileError
from importer.meaning.label_choice import Rule, fitting, read_rule, rules
from importer.meaning.label_words import understand
from importer.meaning.labels import describe, recognise
from importer.vocabulary import lexicon as module
from importer.vocabulary.lexicon import Language, concepts, lexicon
from importer.vocabulary.parameters import parameters
from importer.vocabulary.text import tokens
from importer.vocabulary.word_files import OWN_WORDS, fold_block, key, plain_toml

MAIN_LANGUAGES = ("en", "de", "fr", "nl", "es", "cs", "da", "it")

# Ideas that come from numbers and not from words.
MEASURED = {
    "OVER_28": "> 2.8 mm",
    "FROM_25_TO_28": "2.5-2.8 mm",
    "OVER_25": "> 2.5 mm",
    "FROM_22_TO_25": "2.2-2.5 mm",
    "UNDER_22": "< 2.2 mm",
    "T45": "45 °C",
}
# Parameters that the trade of a language does not name; brewers there print the English abbreviation.
ENGLISH_EVERYWHERE = {"predicted_spirit_yield", "glycosidic_nitrile", "fermentability", "fermentable_extract"}


def forget() -> None:
    module._lexicon.cache_clear()
    understand.cache_clear()
    recognise.cache_clear()


@pytest.fixture
def own_words(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Iterator[Path]:
    """A brewer's own word file; the index is built anew with it and without it afterwards."""
    path = tmp_path / "own.toml"
    monkeypatch.setenv(OWN_WORDS, str(path))
    yield path
    monkeypatch.undo()
    forget()


# ---------------------------------------------------------------------------------------------- rules


@pytest.mark.parametrize("rule", rules().rules, ids=lambda rule: f"{rule.number}-{rule.parameter}")
def test_every_rule_can_be_satisfied(rule: Rule) -> None:
    """Its own needs alone lead to it, unless a rule that asks for the same stands before it on purpose (rivals)."""
    for ideas in product(*rule.needs):
        chosen = frozenset(ideas)
        if rule in fitting(chosen, None):
            return
    pytest.fail("another rule always takes its place")


def test_every_parameter_has_a_certain_rule() -> None:
    named = {name for rule in rules().rules if not rule.doubt for name in (rule.parameter, rule.as_is)}
    assert set(parameters()) <= named


def test_every_idea_of_a_rule_can_be_said() -> None:
    said = {
        idea
        for language in lexicon().languages
        for table in (
            language.words.values(),
            language.stems.values(),
            (s.meanings for all_ in language.short.values() for s in all_),
        )
        for meanings in table
        for ideas in meanings
        for idea in ideas
    }
    made = {
        "SLASH",
        "MILL_PAIR",
        "MILL_07",
        "BARE_28",
        "BARE_25",
        "BARE_22",
        "OVER_22",
        "STROKE_25",
        "STROKE_22",
        "T20",
        "T45",
        "T65",
        "T70",
        "T_OTHER",
        *MEASURED,
    }
    needed = {idea for rule in rules().rules for idea in rule.named | rule.unless}
    assert needed <= said | made


def test_twins_have_ranges_that_tell_them_apart() -> None:
    for name, twins in rules().twins.items():
        assert name in parameters()
        for other in twins.twins:
            shared = parameters()[name].possible.keys() & parameters()[other].possible.keys()
            assert shared or parameters()[other].possible


# ---------------------------------------------------------------------------------------------- reachability


def wordings(language: Language, idea: str) -> list[str]:
    """Wordings that mean the idea, the plainest first."""
    found = [
        (len(ideas), word)
        for word, meanings in language.words.items()
        for ideas in meanings
        if idea in ideas and len(meanings) == 1
    ]
    found += [(len(ideas), word) for word, meanings in language.stems.items() for ideas in meanings if idea in ideas]
    return [word for _, word in sorted(found)[:3]]


def labels_for(rule: Rule, language: Language, as_is: bool) -> Iterator[str]:
    for ideas in product(*rule.needs):
        choices = [[MEASURED[idea]] if idea in MEASURED else wordings(language, idea) for idea in ideas]
        if as_is:
            choices.append(wordings(language, "AS_IS"))
        for chosen in islice(product(*choices), 27):
            yield " ".join(chosen)


def whole_wordings(rule: Rule, language: Language) -> Iterator[str]:
    """Single wordings that satisfy a rule by themselves ("Feinschrotextrakt")."""
    short = ((word, entry.meanings) for word, entries in language.short.items() for entry in entries if not entry.raw)
    for word, meanings in (*language.words.items(), *short):
        if len(meanings) == 1 and all(need & meanings[0] for need in rule.needs):
            yield word


@pytest.mark.parametrize("code", MAIN_LANGUAGES)
def test_every_parameter_can_be_named_in_every_main_language(code: str) -> None:
    language = next((one for one in lexicon().languages if one.name == code), None)
    if language is None:
        pytest.skip(f"there is no word file for {code}")
    missing = []
    for name in parameters():
        ways = [rule for rule in rules().rules if name in (rule.parameter, rule.as_is) and not rule.doubt]
        tried = (
            label
            for rule in ways
            for label in (*islice(whole_wordings(rule, language), 12), *labels_for(rule, language, name == rule.as_is))
        )
        if not any((found := describe(label)).parameter == name and found.state == "sure" for label in tried):
            missing.append(name)
    assert set(missing) <= (set() if code == "en" else ENGLISH_EVERYWHERE)


# ---------------------------------------------------------------------------------------------- word files


def test_folding_a_list_is_folding_each_word() -> None:
    for text in (
        "Mürbigkeit",
        "Extrait sec",
        "śruta",
        "køl",
        "Œuf",
        "Łódź",
        "Eiweiß-Gehalt",
        "l'extrait",
        "číslo",
        "вологість",
        "Æble",
    ):
        assert fold_block(text) == " ".join(token.text for token in tokens(text))


def test_keys_of_lists_are_keys_of_words() -> None:
    """The quick ways to a key give what the tokens of a sheet's text give."""
    for text in (
        "moisture",
        "t2 ht2",
        "1000 kernels",
        "1ere classe",
        "b1",
        "糖化时间",
        "ph 值",
        "вологість",
        "no 1",
        "1e sortering",
    ):
        assert module._keys([text], "") == [key(text)]


def test_word_files_use_known_parts_and_ideas() -> None:
    names = sorted(path.name for path in (mappings_folder() / "words").glob("*.toml"))
    assert {"en.toml", "de.toml"} <= set(names)
    assert len({language.name for language in lexicon().languages}) == len(names)


@pytest.mark.parametrize("path", sorted((mappings_folder() / "words").glob("*.toml")), ids=lambda path: str(path.name))
def test_word_files_are_plain_and_read_as_toml(path: Path) -> None:
    text = path.read_text(encoding="utf-8")
    assert plain_toml(text) == tomllib.loads(text)


def test_other_toml_is_left_to_the_toml_reader() -> None:
    for text in (
        "a = 1\n",
        'language = "x"\nlanguage = "y"\n',
        "[words]\n[words]\n",
        'A = ["x"]\n',
        "A = 'x' B = 'y'\n",
        'A = "\\n"\n',
    ):
        assert plain_toml(text) is None


def test_ideas_stand_under_one_kind() -> None:
    known = concepts()
    assert not known.plain & known.neutral
    assert not (known.plain | known.neutral) & known.foreign.keys()
    assert all(why for why in known.foreign.values())


def test_own_words_add_to_the_known_ones(own_words: Path) -> None:
    own_words.write_text(
        'language = "mine"\n[words]\nMOISTURE = "dampfness"\n[labels]\ncolour = "Hue of the day"\n', encoding="utf-8"
    )
    forget()
    assert describe("Dampfness").parameter == "moisture"
    assert describe("hue of the DAY").parameter == "colour"
    assert describe("Moisture").state == "sure"


def test_a_folder_of_own_words(own_words: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    (own_words.parent / "a.toml").write_text('language = "mine"\n[words]\nVISCOSITY = "thickness"\n', encoding="utf-8")
    (own_words.parent / "b.toml").write_text('language = "mine"\n[words]\nCOLOUR = "hue"\n', encoding="utf-8")
    monkeypatch.setenv(OWN_WORDS, str(own_words.parent))
    forget()
    assert (describe("Thickness").parameter, describe("Hue").parameter) == ("viscosity", "colour")


def test_own_words_may_add_to_a_shipped_language(own_words: Path) -> None:
    own_words.write_text('language = "en"\n[words]\nMOISTURE = "moisture, wetness of malt"\n', encoding="utf-8")
    forget()
    assert describe("Wetness of malt").parameter == "moisture"


OWN = 'language = "own"\n'


@pytest.mark.parametrize(
    ("text", "told"),
    [
        ('language = "en"\n[words]\nCOLOUR = "viscosity"\n', ", COLOUR: 'viscosity' already has another meaning"),
        (OWN + '[words]\nCOLUOR = "hue"\n', ", [words]: COLUOR is not an idea of .*. Did you mean COLOUR"),
        (OWN + '[words]\nmoisture = "damp"\n', ", [words]: moisture is not an idea of .*. Did you mean MOISTURE"),
        (OWN + '[words]\n"COLOUR | " = "hue"\n', ", [words]: an empty name is not an idea"),
        (OWN + '[words]\nQQQ = "hue"\n', ", [words]: QQQ is not an idea .* It lists all there are."),
        (OWN + '[abbreviations]\nPROTIEN = "XQ"\n', ", [abbreviations]: PROTIEN is .*. Did you mean PROTEIN"),
        (OWN + '[wrods]\nCOLOUR = "hue"\n', ": wrods is not a part of a word file. Did you mean words?"),
        ('[units."g/x"]\nspellings = ["g/x"]\n', ": units is not a part of a word file. Its parts are language,"),
        ('[words]\nCOLOUR = "hue"\n', ' does not say its language. Begin it with language = "own".'),
        ("language = 5\n", ": language must be a text in quotes."),
        (OWN + 'compounds = "no"\n', ": compounds must be true or false."),
        (OWN + 'words = "hue"\n', ": words must be a table."),
        (OWN + '[words]\nCOLOUR = ["hue"]\n', ", [words]: the wordings of COLOUR must be one text in quotes."),
        (OWN + '[labels]\ncoluor = "hue"\n', ", [labels]: coluor is not a parameter. Did you mean colour?"),
        (OWN + '[labels]\n"Soluble to total nitrogen" = "hue"\n', "is not a parameter. Did you mean nitrogen_ratio?"),
        (OWN + '[labels]\nQQQ = "hue"\n', ", [labels]: QQQ is not a parameter. README lists all there are."),
        (OWN + '[labels]\ncolour = "hue"\nmoisture = "Hue"\n', ", [labels] moisture: the label 'Hue' already means"),
        (OWN + '[labels]\ncolour = "--"\n', ", [labels] colour: '--' has no letters."),
        (OWN + "[words\n", " is not valid TOML"),
        (OWN + "x = " + "[" * 4000, " is not valid TOML"),
        (OWN + '[words]\nCOLOUR = "***"\n', "has no letters"),
        ("\udcff", " is not UTF-8 text"),
    ],
)
def test_a_wrong_word_file_is_told(own_words: Path, text: str, told: str) -> None:
    """File, entry, what is wrong, and the nearest name there is."""
    own_words.write_bytes(text.encode("utf-8", "surrogateescape"))
    forget()
    with pytest.raises(OwnFileError) as raised:
        lexicon()
    message = str(raised.value)
    assert message.startswith(str(own_words))
    assert re.search(re.escape(told).replace(r"\.\*", ".*"), message), message
    assert message[-1] in ".?"


@pytest.mark.parametrize("command", [["label", "Hue"], ["read", "SHEET"], ["bulk", "FOLDER"], ["inbox", "FOLDER"]])
def test_a_wrong_word_file_is_wrong_usage_in_every_command(own_words: Path, command: list[str]) -> None:
    """Status 2 by the contract, as for the other files that a brewer writes; the inbox keeps what is in it."""
    own_words.write_text(OWN + '[labels]\ncoluor = "hue"\n', encoding="utf-8")
    folder = own_words.parent / "paper"
    folder.mkdir()
    sheet = folder / "sheet.csv"
    sheet.write_text("Batch;N-12\nParameter;Unit;Result\nMoisture;%;4.2\nFriability;%;88\n", encoding="utf-8")
    places = {"SHEET": str(sheet), "FOLDER": str(folder)}
    arguments = [places.get(word, word) for word in command]
    if command[0] in ("bulk", "inbox"):
        arguments += ["--store", str(own_words.parent / "store")]
    if command[0] == "inbox":
        arguments += ["--settle", "0.1"]
    ended = subprocess.run(
        [sys.executable, "-m", "importer", *arguments], capture_output=True, text=True, timeout=60, check=False
    )
    assert ended.returncode == 2, ended.stderr
    assert "own.toml, [labels]: coluor is not a parameter. Did you mean colour?" in ended.stderr
    assert "Traceback" not in ended.stderr
    assert ended.stdout == ""
    assert sheet.is_file()


def test_a_missing_own_file_is_told(own_words: Path) -> None:
    forget()
    with pytest.raises(DataError, match="neither a file nor a folder"):
        lexicon()


def test_keys_have_no_case_accents_or_hyphens() -> None:
    assert key("Alpha-Amylase") == key("alpha amylase") == "alpha amylase"
    assert key("Eiweiß") == "eiweiss"
    assert key("1000-Korn") == "1000 korn"


def test_a_misspelt_idea_of_a_rule_is_answered_with_those_like_it() -> None:
    with pytest.raises(DataError, match=r"MOISTUR is not an idea .* Did you mean MOISTURE"):
        read_rule(1, {"parameter": "moisture", "needs": ["MOISTUR"]})
