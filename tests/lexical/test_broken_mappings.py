"""A file of mappings/ that was damaged while it was edited is named, with where it is wrong."""

from __future__ import annotations

import shutil
from collections.abc import Callable
from pathlib import Path
from types import ModuleType

import pytest

from importer.data import mappings_folder
from importer.errors import DataError
from importer.reading import dates
from importer.vocabulary import caption_words, column_heads, parameters, result_words, statements, unit_names

LOADERS: list[tuple[str, ModuleType, Callable[[], object]]] = [
    ("parameters.toml", parameters, parameters.parameters.__wrapped__),
    ("units.toml", unit_names, unit_names.unit_table.__wrapped__),
    ("results.toml", result_words, result_words.result_words.__wrapped__),
    ("statements.toml", statements, statements._statements.__wrapped__),
    ("dates.toml", dates, dates.months.__wrapped__),
    ("headers/common.toml", caption_words, caption_words.caption_table.__wrapped__),
    ("columns/en.toml", column_heads, column_heads.head_table.__wrapped__),
]


@pytest.mark.parametrize(("file", "module", "load"), LOADERS, ids=[file for file, *_ in LOADERS])
def test_a_file_that_is_no_toml_is_named(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, file: str, module: ModuleType, load: Callable[[], object]
) -> None:
    folder = tmp_path / "mappings"
    shutil.copytree(mappings_folder(), folder)
    monkeypatch.setattr(module, "mappings_folder", lambda: folder)
    assert load()
    with (folder / file).open("a", encoding="utf-8") as written:
        written.write("\nbroken = [\n")
    with pytest.raises(DataError, match=f"mappings/{file.partition('/')[0].removesuffix('.toml')}"):
        load()


def test_a_month_that_stands_for_two_is_named(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    (tmp_path / "dates.toml").write_text('[months]\n1 = ["January"]\n2 = ["january"]\n', encoding="utf-8")
    monkeypatch.setattr(dates, "mappings_folder", lambda: tmp_path)
    with pytest.raises(DataError, match="'january' stands for two months"):
        dates.months.__wrapped__()


def test_a_parameter_that_lacks_something_is_named(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    (tmp_path / "parameters.toml").write_text('[parameters.moisture]\ntitle = "Moisture"\n', encoding="utf-8")
    monkeypatch.setattr(parameters, "mappings_folder", lambda: tmp_path)
    with pytest.raises(DataError, match="parameter 'moisture' has no"):
        parameters.parameters.__wrapped__()
