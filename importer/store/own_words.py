"""A settled label written to the brewery's own words: shown as a change first, then written whole or not at all."""

from __future__ import annotations

import difflib
import hashlib
import re
import tomllib
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from importer.output.atomic import write_text
from importer.vocabulary.word_files import OWN_WORDS, key, own_words

FILE = "own-words.toml"
_NEW = """# Own words, as settled at the review desk. The head of mappings/words/en.toml explains the form.

language = "own"
"""
_HEAD = re.compile(r"^\[labels\][ \t]*(?:#.*)?$", re.MULTILINE)


class CannotWriteError(Exception):
    """The word cannot be written there; the message says why and what to do."""


@dataclass(frozen=True, slots=True)
class Draft:
    """A change of a file of own words. ``is_used`` is false where ONEBASIS_MAPPINGS does not name the file yet."""

    path: Path
    before: str
    after: str
    is_used: bool

    @property
    def fingerprint(self) -> str:
        """Of the file as it was shown."""
        return hashlib.sha256(self.before.encode()).hexdigest()

    @property
    def lines(self) -> list[str]:
        """The change line by line, as ``diff -u`` shows it."""
        old, new = self.before.splitlines(), self.after.splitlines()
        return list(difflib.unified_diff(old, new, self.path.name, self.path.name, lineterm=""))


def draft(folder: Path, parameter: str, wording: str) -> Draft:
    """What would be written so that a label always means a parameter. Raises CannotWriteError."""
    label = " ".join(wording.replace("'", "’").split())
    if not key(label) or "," in label:
        raise CannotWriteError(f"“{wording}” cannot stand in a word file: it has a comma, or no letters.")
    named = own_words()
    path = Path(named).expanduser() if named else folder / FILE
    if path.is_dir():
        path = path / FILE
    try:
        before = path.read_text(encoding="utf-8") if path.exists() else ""
        table = tomllib.loads(before)
    except (OSError, UnicodeDecodeError, tomllib.TOMLDecodeError) as error:
        raise CannotWriteError(f"{path} cannot be read: {error}. Put it right, then try again.") from None
    labels = table.get("labels", {})
    for name, texts in labels.items():
        if key(label) in {key(text) for text in re.split(r"[,\n]", texts)}:
            raise CannotWriteError(f"“{label}” stands in {path} already, for {name}. Change it there.")
    after = _with_label(before or _NEW, labels, parameter, label)
    wanted = {**labels, parameter: f"{labels[parameter].strip()}, {label}" if parameter in labels else label}
    _check(path, table, after, wanted)
    return Draft(path, before, after, bool(named))


def _with_label(text: str, labels: dict[str, str], parameter: str, label: str) -> str:
    if parameter in labels:
        line = re.compile(rf"^({re.escape(parameter)}[ \t]*=[ \t]*)'([^'\n]*)'", re.MULTILINE)
        return line.sub(lambda found: f"{found[1]}'{found[2].strip()}, {label}'", text, count=1)
    if _HEAD.search(text):
        return _HEAD.sub(lambda found: f"{found[0]}\n{parameter} = '{label}'", text, count=1)
    return f"{text.rstrip()}\n\n[labels]\n{parameter} = '{label}'\n"


def _check(path: Path, before: dict[str, Any], after: str, wanted: dict[str, str]) -> None:
    """Nothing but the one label may have changed, whatever form the file is in."""
    try:
        table = tomllib.loads(after)
    except tomllib.TOMLDecodeError:
        table = {}
    rest = {name: part for name, part in table.items() if name not in ("labels", "language")}
    same = rest == {name: part for name, part in before.items() if name not in ("labels", "language")}
    if not same or table.get("labels") != wanted:
        raise CannotWriteError(f"{path} is in a form that cannot be added to. Add the label to its [labels] by hand.")


def write(change: Draft) -> None:
    """Writes the file. Raises WriteError."""
    change.path.parent.mkdir(parents=True, exist_ok=True)
    write_text(change.path, change.after)


def how_to_use(change: Draft) -> str:
    """What has to be set so that the file is used."""
    return f"export {OWN_WORDS}={change.path}"
