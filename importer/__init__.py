"""onebasis: malt analysis sheets of any layout, language and method family, every figure on one basis.

``read_sheet(path, basis="EBC")`` gives a :class:`Sheet` with ``.analyses`` and ``.problems``. The names are loaded
when they are first used, so that importing the package costs nothing.
"""

from __future__ import annotations

from importlib import import_module
from typing import TYPE_CHECKING, Any

if TYPE_CHECKING:
    from importer.models import Analysis, Document, Figure, Problem, Sheet
    from importer.pipeline import read_sheet

__version__ = "1.0.0"
__all__ = ["Analysis", "Document", "Figure", "Problem", "Sheet", "__version__", "read_sheet"]

_HOMES = {
    "Analysis": "importer.models",
    "Document": "importer.models",
    "Figure": "importer.models",
    "Problem": "importer.models",
    "Sheet": "importer.models",
    "read_sheet": "importer.pipeline",
}


def __getattr__(name: str) -> Any:
    home = _HOMES.get(name)
    if home is None:
        raise AttributeError(f"module {__name__!r} has no attribute {name!r}")
    return getattr(import_module(home), name)


def __dir__() -> list[str]:
    return __all__
