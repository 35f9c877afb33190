"""Folders are walked; what is no sheet is passed over, and nothing else."""

from __future__ import annotations

import os
import sys
from pathlib import Path

import pytest

from importer.output.csv_out import to_csv
from importer.output.json_out import to_json
from importer.output.wide_out import to_wide
from importer.walk import find_files, is_own_output
from tests.outputs import factory
from tests.permissions import needs_permissions


def names(*paths: Path) -> list[str]:
    return [found.path.name for found in find_files(paths)]


def test_folders_are_walked_in_order(tmp_path: Path) -> None:
    for name in ("b.pdf", "a.pdf", "sub/z.pdf", "sub/deeper/y.csv", "notes.docx"):
        path = tmp_path / name
        path.parent.mkdir(parents=True, exist_ok=True)
        path.write_text("x")
    assert names(tmp_path) == ["a.pdf", "b.pdf", "notes.docx", "z.pdf", "y.csv"]
    assert names(tmp_path / "b.pdf", tmp_path) == ["b.pdf", "a.pdf", "notes.docx", "z.pdf", "y.csv"]


def test_hidden_files_and_litter_are_passed_over(tmp_path: Path) -> None:
    (tmp_path / ".git").mkdir()
    for name in (".hidden.pdf", ".git/x.pdf", "~$malt.xlsx", "Thumbs.db", "desktop.ini", ".~lock.malt.ods#", "a.pdf"):
        (tmp_path / name).write_text("x")
    assert names(tmp_path) == ["a.pdf"]
    assert names(tmp_path / ".hidden.pdf") == [".hidden.pdf"]


@pytest.mark.skipif(sys.platform == "win32", reason="links and pipes")
def test_links_and_pipes_are_passed_over(tmp_path: Path) -> None:
    outside = tmp_path / "outside"
    inside = tmp_path / "inside"
    outside.mkdir()
    inside.mkdir()
    (outside / "secret.pdf").write_text("x")
    (inside / "a.pdf").write_text("x")
    (inside / "link.pdf").symlink_to(outside / "secret.pdf")
    (inside / "folder").symlink_to(outside)
    (inside / "loop").symlink_to(inside)
    os.mkfifo(inside / "pipe.pdf")
    assert names(inside) == ["a.pdf"]


def test_own_outputs_are_passed_over(tmp_path: Path) -> None:
    doc = factory.document()
    (tmp_path / "malts.json").write_text(to_json(doc), encoding="utf-8")
    for name, (text, schema) in {"long": to_csv(doc), "wide": to_wide(doc)}.items():
        (tmp_path / f"{name}.csv").write_text(text, encoding="utf-8")
        (tmp_path / f"{name}.schema.json").write_text(schema, encoding="utf-8")
    (tmp_path / "others.csv").write_text("Parameter;Value\nMoisture;4,2\n")
    (tmp_path / "others.json").write_text('{"name": "something else"}')
    assert names(tmp_path) == ["others.csv", "others.json"]
    assert is_own_output(tmp_path / "wide.csv")


def test_a_file_is_handed_on_once(tmp_path: Path) -> None:
    (tmp_path / "a.pdf").write_text("x")
    assert names(tmp_path / "a.pdf", tmp_path, tmp_path / "." / "a.pdf") == ["a.pdf"]


@needs_permissions
def test_a_closed_folder_is_told(tmp_path: Path) -> None:
    closed = tmp_path / "closed"
    closed.mkdir()
    closed.chmod(0)
    try:
        (found,) = find_files([tmp_path])
    finally:
        closed.chmod(0o755)
    assert found.path == closed
    assert found.error
