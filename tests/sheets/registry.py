"""The kinds of layout: each is a function that draws a content, with what it needs of that content."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

from tests.sheets.content import Content, Need
from tests.sheets.draw import Look

Draw = Callable[[Content, Look], bytes]


@dataclass(frozen=True, slots=True)
class Layout:
    name: str
    need: Need
    draw: Draw
    kept: bool
    languages: tuple[str, ...] = ()


LAYOUTS: dict[str, Layout] = {}


def layout(
    name: str, need: Need | None = None, kept: bool = False, languages: tuple[str, ...] = ()
) -> Callable[[Draw], Draw]:
    """Registers a layout kind. ``languages`` empty: all."""

    def register(draw: Draw) -> Draw:
        if name in LAYOUTS:
            raise ValueError(f"layout {name!r} is registered twice")
        LAYOUTS[name] = Layout(name, need or Need(), draw, kept, languages)
        return draw

    return register
