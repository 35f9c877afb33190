"""Reads the word files (mappings/words/*.toml and a brewer's own) and folds wordings into the keys of the lexicon."""

from __future__ import annotations

import os
import re
import tomllib
import unicodedata
from collections.abc import Iterator
from pathlib import Path
from typing import Any

from importer.data import mappings_folder
from importer.errors import DataError
from importer.vocabulary.text import Token, tokens, typeset

OWN_WORDS = "ONEBASIS_MAPPINGS"
"""Environment variable: a TOML file of own words, or a folder of such files."""


def own_words() -> str:
    """The file or folder of own words, "" where there is none."""
    return os.environ.get(OWN_WORDS, "")


def word_files() -> Iterator[tuple[str, dict[str, Any]]]:
    """The word files that ship with the program, by name. Raises DataError for one that cannot be read."""
    for path in sorted((mappings_folder() / "words").glob("*.toml")):
        name = f"mappings/words/{path.name}"
        yield name, _load_words(path, name)


def own_word_files(own: str) -> Iterator[tuple[str, dict[str, Any]]]:
    """The brewer's own word files, by path. Raises DataError for one that cannot be read."""
    path = Path(own).expanduser()
    if path.is_dir():
        files = sorted(path.glob("*.toml"))
    elif path.is_file():
        files = [path]
    else:
        raise DataError(f"{OWN_WORDS}: {own} is neither a file nor a folder")
    for file in files:
        yield str(file), load_toml(file, str(file))


def load_toml(path: Path, name: str) -> dict[str, Any]:
    """A file of words; ``name`` is how it is called in messages. Raises DataError where it cannot be read."""
    try:
        with path.open("rb") as file:
            return tomllib.load(file)
    except OSError as problem:
        raise DataError(f"{name} cannot be read: {problem}") from None
    except UnicodeDecodeError:
        raise DataError(f"{name} is not UTF-8 text; save it as UTF-8") from None
    except (tomllib.TOMLDecodeError, RecursionError) as problem:
        raise DataError(f"{name} is not valid TOML: {problem or 'too deep'}") from None


_ENTRY = re.compile(
    r"""(?:\s++|\#[^\n]*+)*+
    (?: \[(\w+)\]
      | "?([\w\ |]+?)"?[ \t]*=[ \t]*(?: '''\n?([^']*(?:'(?!'')[^']*)*)''' | '([^'\n]*)' | ("[^"\\\n]*"|true|false) )
    )[ \t]*(?=\n|\#|$)""",
    re.VERBOSE,
)
_REST = re.compile(r"(?:\s++|#[^\n]*+)*+")


def _load_words(path: Path, name: str) -> dict[str, Any]:
    """A word file in its plain form: parts, and texts in single quotes. Anything else is left to the TOML reader, which
    gives the same for these files and takes many times as long."""
    return plain_toml(path.read_text(encoding="utf-8")) or load_toml(path, name)


def plain_toml(text: str) -> dict[str, Any] | None:
    """A word file as a table, None where it is not in the plain form."""
    table: dict[str, Any] = {}
    part: dict[str, Any] = table
    end = 0
    while found := _ENTRY.match(text, end):
        end = found.end()
        heading, entry, long, short, other = found.groups()
        if heading is not None:
            if heading in table:
                return None
            part = table[heading] = {}
        elif entry in part:
            return None
        elif other is None:
            part[entry] = short if long is None else long
        else:
            part[entry] = other == "true" if other in ("true", "false") else other[1:-1]
    rest = _REST.match(text, end)
    return table if rest is not None and rest.end() == len(text) else None


# ---------------------------------------------------------------------------------------------- keys of wordings

_COMMON_MARKS = "\u0301\u0300\u0302\u0303\u0308\u030a\u030c\u0327\u0328\u0306\u030b"
_MARKS = re.compile("[\u0300-\u036f]")
_LETTERS = (("ł", "l"), ("ø", "o"), ("đ", "d"), ("ð", "d"), ("ı", "i"), ("þ", "th"), ("œ", "oe"), ("æ", "ae"))


def fold_block(text: str) -> str:
    """A whole list of wordings folded at once: the keys that folding word by word gives, at a part of the cost."""
    text = text.replace("-", " ").replace("'", " ").replace("’", " ")
    if text.isascii():
        return text.lower()
    text = text.casefold()
    for letter, plain in _LETTERS:
        text = text.replace(letter, plain)
    text = unicodedata.normalize("NFKD", text)
    for mark in _COMMON_MARKS:
        text = text.replace(mark, "")
    return _MARKS.sub("", text)


def key_of(found: list[Token]) -> str:
    """The key of a run of tokens."""
    return " ".join([token.text for token in found])


def key(text: str) -> str:
    """The key of a wording."""
    return key_of(tokens(typeset(text)))
