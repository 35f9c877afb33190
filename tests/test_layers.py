"""Imports go one way: a stage knows nothing of the stages after it. DEVELOPERS.md draws the same line."""

from __future__ import annotations

import ast
from collections.abc import Iterator
from pathlib import Path

import pytest

ROOT = Path(__file__).parents[1]

# From the ground up. A part may import from lines below its own and from within itself, never upward or sideways.
LAYERS: tuple[tuple[str, ...], ...] = (
    ("limits", "models", "words"),
    ("errors", "printed"),
    ("kept",),
    ("data",),
    ("vocabulary",),
    ("intake",),
    ("layout",),
    ("reading",),
    ("meaning",),
    ("output",),
    ("pipeline", "walk"),
    ("worker",),
    ("guard",),
    ("drawing",),
    ("store",),
    ("deciding",),
    ("telling",),
    ("serving",),
    ("desk",),
    ("commands",),
    ("cli_options",),
    ("cli_deciding",),
    ("cli",),
    ("__main__",),
)
RANK = {part: number for number, layer in enumerate(LAYERS) for part in layer}
MODULES = sorted((ROOT / "importer").rglob("*.py"))
# Hands pictures to the OCR program in a temporary folder, which that program demands.
HANDS_OVER = "ocr.py"
# The package's own front door names things of every layer, without loading them.
FRONT_DOOR = ROOT / "importer" / "__init__.py"


def part_of(path: Path) -> str:
    """The stage that a module belongs to."""
    inside = path.relative_to(ROOT / "importer")
    return inside.parts[0] if len(inside.parts) > 1 else inside.stem


def imports(path: Path) -> Iterator[tuple[int, str]]:
    """Every import of the project's own modules, also those within functions and for type checking only."""
    for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
        if isinstance(node, ast.Import):
            names = [alias.name for alias in node.names]
        elif isinstance(node, ast.ImportFrom):
            assert node.level == 0, f"{path}: relative import in line {node.lineno}"
            module = node.module or ""
            names = [f"importer.{alias.name}" for alias in node.names] if module == "importer" else [module]
        else:
            continue
        for name in names:
            if name.startswith("importer."):
                yield node.lineno, name.split(".")[1]


@pytest.mark.parametrize("path", MODULES, ids=lambda path: str(path.relative_to(ROOT)))
def test_imports_go_one_way(path: Path) -> None:
    if path == FRONT_DOOR:
        return
    own = part_of(path)
    assert own in RANK, f"{own} has no layer: add it to LAYERS and to DEVELOPERS.md"
    for line, part in imports(path):
        if part in ("__version__", own):
            continue
        assert part in RANK, f"line {line}: {part} has no layer"
        assert RANK[part] < RANK[own], f"line {line}: {own} must not know {part}"


def test_stages_that_read_do_not_write() -> None:
    """Only the writers touch files for writing, and only there is the terminal printed to."""
    for path in MODULES:
        if part_of(path) in ("output", "commands", "cli", "worker", "store", "desk"):
            continue
        for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
            if isinstance(node, ast.Call) and isinstance(node.func, ast.Name):
                assert node.func.id != "print", f"{path}, line {node.lineno}: prints"
            if isinstance(node, ast.Attribute):
                writes = node.attr in ("write_text", "write_bytes") and path.name != HANDS_OVER
                assert not writes, f"{path}, line {node.lineno}: writes a file"


def test_modules_can_be_read_in_one_sitting() -> None:
    too_long = {str(path.relative_to(ROOT)): n for path in MODULES if (n := len(path.read_text().splitlines())) > 400}
    assert not too_long
