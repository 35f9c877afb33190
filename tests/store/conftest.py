"""Proofs that take minutes run only when they are asked for: ``pytest -m slow tests/store``."""

from __future__ import annotations

from pathlib import Path

import pytest


@pytest.fixture(autouse=True)
def _slow_only_when_asked_for(request: pytest.FixtureRequest) -> None:
    if request.node.get_closest_marker("slow") and "slow" not in (request.config.option.markexpr or ""):
        pytest.skip("takes minutes: run with -m slow")


@pytest.fixture
def inbox_folder(tmp_path: Path) -> Path:
    folder = tmp_path / "inbox"
    folder.mkdir()
    return folder


@pytest.fixture
def store_folder(tmp_path: Path) -> Path:
    folder = tmp_path / "store"
    folder.mkdir()
    return folder
