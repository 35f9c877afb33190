"""``make_sheet``: one sheet by layout kind, language and method family."""

from __future__ import annotations

from importlib import import_module
from random import Random

from tests.sheets.content import Composer
from tests.sheets.draw import draw_look
from tests.sheets.registry import LAYOUTS, Layout
from tests.sheets.truth import Made
from tests.sheets.wording import LANGUAGES, MAIN_LANGUAGES, Wording

_MODULES = ("layouts", "layouts_many", "layouts_special", "kept_layouts", "kept_layouts_2")
_LANGUAGE_WEIGHTS = {"en": 8, "de": 5, "fr": 3, "nl": 2, "es": 3, "cs": 2, "da": 2, "it": 2, "sk": 1, "pl": 1, "pt": 1}
_FAMILIES = {
    "en": ("EBC", "EBC", "IoB", "IoB", "ASBC"),
    "de": ("EBC", "EBC", "EBC", "iso65"),
    "fr": ("EBC", "EBC", "EBC", "ASBC"),
    "es": ("EBC", "EBC", "EBC", "ASBC"),
    "nl": ("EBC", "EBC", "EBC", "IoB"),
}


def _load() -> None:
    for module in _MODULES:
        import_module(f"tests.sheets.{module}")


def kinds(kept: bool = False) -> list[str]:
    """Names of the layout kinds of the development part, or of the part kept aside."""
    _load()
    return [name for name, found in LAYOUTS.items() if found.kept == kept]


def families_of(language: str, layout: Layout) -> tuple[str, ...]:
    """Method families that a language's sheets are made in."""
    wording = Wording(language, False)
    found = tuple(
        f for f in _FAMILIES.get(language, ("EBC",)) if wording.has("family", f) and f in layout.need.families
    )
    return found or ("EBC",)


def make_sheet(
    seed: int, layout: str | None = None, language: str | None = None, family: str | None = None, kept: bool = False
) -> Made:
    """The sheet of a seed. What is not named is drawn by chance; the same arguments give the same bytes."""
    _load()
    rng = Random(f"{seed}/{layout}/{language}/{family}/{kept}")
    kind = LAYOUTS[layout] if layout else LAYOUTS[rng.choice(kinds(kept))]
    if language is None:
        choice = [name for name in LANGUAGES if not kind.languages or name in kind.languages]
        language = rng.choices(choice, [_LANGUAGE_WEIGHTS[name] for name in choice])[0]
    family = family or rng.choice(families_of(language, kind))
    composer = Composer(rng, kind.name, language, family, kept, seed)
    content = composer.compose(kind.need)
    pdf = kind.draw(content, draw_look(rng))
    content.truth.not_figures = content.not_figures
    return Made(pdf, content.truth)


__all__ = ["LANGUAGES", "MAIN_LANGUAGES", "families_of", "kinds", "make_sheet"]
