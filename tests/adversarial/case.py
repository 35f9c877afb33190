"""One misleading sheet: its text, what is drawn on it besides, and the truth."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from typing import TYPE_CHECKING, Literal

if TYPE_CHECKING:
    from tests.adversarial.paper import Paper


@dataclass(frozen=True, slots=True)
class Right:
    """A figure that may be accepted: as printed, and what it is on the EBC basis."""

    printed: str
    value: float | None
    family: str = "EBC"
    tolerance: float = 0.006
    bound: str | None = None
    range: tuple[float, float] | None = None


@dataclass(frozen=True, slots=True)
class Batch:
    """The truth about one batch.

    ``right`` are the figures that may be accepted, ``doubtful`` those of them for which a look is not needless,
    ``shown`` other printed results that must not vanish but that nothing may be accepted of. ``head`` holds what may be
    accepted as each entry of the head; None where that is not looked at.
    """

    number: str | None
    right: dict[str, Right]
    doubtful: frozenset[str] = frozenset()
    shown: tuple[str, ...] = ()
    kind: Literal["batch", "specification"] = "batch"
    head: dict[str, tuple[str, ...]] | None = None


@dataclass(frozen=True, slots=True)
class Case:
    """``text`` is drawn as it stands: lines with ``|`` are rows of a table, ``===`` begins a page (see paper.py).

    ``fails`` says what goes wrong with the sheet as yet; empty where nothing does.
    """

    name: str
    idea: str
    text: str
    truth: tuple[Batch, ...]
    draw: tuple[Callable[[Paper], None], ...] = ()
    form: Literal["pdf", "csv", "xlsx"] = "pdf"
    rules: bool = True
    size: float = 9.0
    fails: str = ""


SHEETS: dict[str, Case] = {}


def truth(
    number: str | None = None,
    *,
    shown: str = "",
    doubtful: str = "",
    kind: Literal["batch", "specification"] = "batch",
    head: dict[str, str] | None = None,
    **right: str | Right,
) -> Batch:
    """The truth in short: ``moisture="4.2"`` is printed 4.2 and 4.2 on the basis; lists are words with spaces.

    ``doubtful="*"`` says that a look is not needless for any of the figures. In ``head``, ``|`` parts texts that are
    as good as each other.
    """
    figures = {name: Right(r, float(r.replace(",", "."))) if isinstance(r, str) else r for name, r in right.items()}
    unsure = frozenset(figures) if doubtful == "*" else frozenset(doubtful.split())
    assert unsure <= figures.keys(), f"not among the figures: {unsure - figures.keys()}"
    entries = {key: tuple(text.split("|")) for key, text in head.items()} if head is not None else None
    return Batch(number, figures, unsure, tuple(shown.split()), kind, entries)


def sheet(
    name: str,
    idea: str,
    text: str,
    *truths: Batch,
    draw: Callable[[Paper], None] | tuple[Callable[[Paper], None], ...] = (),
    form: Literal["pdf", "csv", "xlsx"] = "pdf",
    rules: bool = True,
    size: float = 9.0,
    fails: str = "",
) -> None:
    """Adds a sheet to the collection."""
    assert name not in SHEETS, f"two sheets are called {name}"
    extra = draw if isinstance(draw, tuple) else (draw,)
    SHEETS[name] = Case(name, idea, text.strip("\n"), truths, extra, form, rules, size, fails)
