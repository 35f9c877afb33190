"""onebasis: malt analysis sheets of any layout, language and method family, every figure on one basis.

``read_sheet(path, basis="EBC")`` gives a :class:`Sheet` with ``.analyses`` and ``.problems``; ``load_analyses(folder)``
gives what is in a store. ``compare``, ``batch_meaning``, ``recipe_feed`` and ``make_report`` say what the figures mean;
``read_agreed``, ``read_recipe`` and ``read_deliveries`` read the files of a brewery's own. A store that cannot be used
raises :class:`StoreError`, a file of the brewery's own that is wrong :class:`OwnFileError`; a sheet that cannot be read
raises nothing. The names are loaded when they are first used, so that importing the package costs nothing.
"""

from __future__ import annotations

from importlib import import_module
from typing import TYPE_CHECKING, Any

if TYPE_CHECKING:
    from importer.deciding.agreed import Agreement, read_agreed
    from importer.deciding.compare import compare
    from importer.deciding.deliveries import Delivery, read_deliveries
    from importer.deciding.feed import Feed, recipe_feed
    from importer.deciding.meaning_of import batch_meaning
    from importer.deciding.recipe_file import Recipe, read_recipe
    from importer.deciding.report import Report, make_report
    from importer.deciding.results import Batch, Comparison
    from importer.errors import OwnFileError
    from importer.models import Analysis, Document, Figure, Problem, Sheet
    from importer.pipeline import read_sheet
    from importer.store.looking_in import load_analyses
    from importer.store.schema import StoreError
    from importer.telling.report_page import report_page

__version__ = "1.0.0"
__all__ = [
    "Agreement",
    "Analysis",
    "Batch",
    "Comparison",
    "Delivery",
    "Document",
    "Feed",
    "Figure",
    "OwnFileError",
    "Problem",
    "Recipe",
    "Report",
    "Sheet",
    "StoreError",
    "__version__",
    "batch_meaning",
    "compare",
    "load_analyses",
    "make_report",
    "read_agreed",
    "read_deliveries",
    "read_recipe",
    "read_sheet",
    "recipe_feed",
    "report_page",
]

_HOMES = {
    "Agreement": "importer.deciding.agreed",
    "Analysis": "importer.models",
    "Batch": "importer.deciding.results",
    "Comparison": "importer.deciding.results",
    "Delivery": "importer.deciding.deliveries",
    "Document": "importer.models",
    "Feed": "importer.deciding.feed",
    "Figure": "importer.models",
    "OwnFileError": "importer.errors",
    "Problem": "importer.models",
    "Recipe": "importer.deciding.recipe_file",
    "Report": "importer.deciding.report",
    "Sheet": "importer.models",
    "StoreError": "importer.store.schema",
    "batch_meaning": "importer.deciding.meaning_of",
    "compare": "importer.deciding.compare",
    "load_analyses": "importer.store.looking_in",
    "make_report": "importer.deciding.report",
    "read_agreed": "importer.deciding.agreed",
    "read_deliveries": "importer.deciding.deliveries",
    "read_recipe": "importer.deciding.recipe_file",
    "read_sheet": "importer.pipeline",
    "recipe_feed": "importer.deciding.feed",
    "report_page": "importer.telling.report_page",
}


def __getattr__(name: str) -> Any:
    home = _HOMES.get(name)
    if home is None:
        raise AttributeError(f"module {__name__!r} has no attribute {name!r}")
    return getattr(import_module(home), name)


def __dir__() -> list[str]:
    return __all__
