"""What options of the command line have in common."""

from __future__ import annotations

from enum import StrEnum
from pathlib import Path
from typing import TYPE_CHECKING, Annotated

import typer

if TYPE_CHECKING:
    from importer.models import Family


class Basis(StrEnum):
    """The method family that results are converted to."""

    EBC = "ebc"
    IOB = "iob"
    ASBC = "asbc"


class RatioRule(StrEnum):
    """How a nitrogen ratio goes from one mash to another."""

    PUBLISHED = "published"
    PLUS_FIVE = "plus-five"


def basis_named(text: str) -> Basis:
    """The basis of this name. Raises BadParameter with the names that there are."""
    try:
        return Basis(text.strip().lower())
    except ValueError:
        names = ", ".join(Basis)
        raise typer.BadParameter(f"{text!r} is none of {names}. MEBAK counts as ebc.") from None


BasisOption = Annotated[
    Basis,
    typer.Option(
        "--basis",
        parser=basis_named,
        metavar="[ebc|iob|asbc]",
        help="The method family that results are converted to; MEBAK counts as ebc.",
    ),
]
NoEstimates = Annotated[
    bool, typer.Option("--no-estimates", help="Leave out every result that rests on a correlation between methods.")
]
RatioOption = Annotated[
    RatioRule,
    typer.Option(
        "--ratio-rule",
        case_sensitive=False,
        help="How a nitrogen ratio goes from one mash to another: published factor, or 5 points as a rule of thumb.",
    ),
]
JsonFile = Annotated[str | None, typer.Option("--json", metavar="FILE", help="Write JSON; - is standard output.")]
CsvFile = Annotated[
    str | None, typer.Option("--csv", metavar="FILE", help="Write CSV (UTF-8), one row a figure; - is standard output.")
]
WideFile = Annotated[
    str | None,
    typer.Option("--wide", metavar="FILE", help="Write CSV (UTF-8), one row an analysis; - is standard output."),
]
ParquetFile = Annotated[
    str | None,
    typer.Option("--parquet", metavar="FILE", help="Write Parquet, one row a figure; - is standard output."),
]
RecipeFile = Annotated[
    str | None,
    typer.Option("--recipe", metavar="FILE", help="Write the malts in use for a recipe tool: CSV, and JSON beside it."),
]
Pins = Annotated[
    list[str] | None,
    typer.Option("--pin", metavar="MALT=BATCH", help="With --recipe, use this batch of a malt; may be repeated."),
]
IncludeReview = Annotated[
    bool, typer.Option("--include-review", help="In --wide, fill in figures that need review as well.")
]
Strict = Annotated[bool, typer.Option("--strict", help="Exit with status 3 where any figure needs review.")]
TimeLimit = Annotated[
    float, typer.Option("--time-limit", metavar="SECONDS", min=1.0, help="Give up a file after so many seconds.")
]
StoreFolder = Annotated[
    Path | None, typer.Option("--store", metavar="FOLDER", help="The store's folder; ~/onebasis if nothing is said.")
]
Workers = Annotated[
    int | None, typer.Option("--workers", metavar="NUMBER", min=1, help="Files read at once; one a core if left out.")
]


def folder_only(path: Path) -> Path:
    """Refuses a file, and says what would be right."""
    if path.is_file():
        raise typer.BadParameter(
            f"{path} is a file. Name the folder that it lies in; `onebasis read` prints a single sheet."
        )
    return path


Folder = Annotated[
    Path, typer.Argument(metavar="FOLDER", exists=True, callback=folder_only, help="The folder to take in.")
]
PrintJson = Annotated[bool, typer.Option("--json", help="Print JSON.")]


def family_of(basis: Basis) -> Family:
    """The family that a choice on the command line stands for."""
    families: dict[Basis, Family] = {Basis.EBC: "EBC", Basis.IOB: "IoB", Basis.ASBC: "ASBC"}
    return families[basis]
