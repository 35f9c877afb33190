"""The commands that say what batches mean: options in, one call, exit status out."""

from __future__ import annotations

from pathlib import Path
from typing import Annotated

import typer

from importer.cli_options import Basis, BasisOption, PrintJson, StoreFolder, family_of

Agreed = Annotated[
    Path | None, typer.Option("--agreed", metavar="FILE", help="Limits that were agreed, in TOML; see README.")
]


def batch(
    name: Annotated[str, typer.Argument(metavar="BATCH", help="A batch number or an id of the store, or a sheet.")],
    agreed: Agreed = None,
    recipe_lines: Annotated[
        Path | None, typer.Option("--recipe-lines", metavar="FILE", help="A recipe with planning values, in TOML.")
    ] = None,
    mean_of: Annotated[
        int,
        typer.Option("--mean", metavar="NUMBER", min=2, max=1000, help="Hold it against the mean of so many before."),
    ] = 5,
    store: StoreFolder = None,
    basis: BasisOption = Basis.EBC,
    as_json: PrintJson = False,
) -> None:
    """Show what a batch means.

    It is held against the last batch of the same malt and supplier, the mean of some before, and what was agreed;
    what the figures do to a recipe is computed and told with its formula and source.
    """
    from importer.commands import deciding as command
    from importer.commands.run import run

    request = command.Request((name,), store, agreed, recipe_lines, mean_of, family_of(basis), as_json)
    run(lambda: command.batch(request))


def compare(
    names: Annotated[
        list[str], typer.Argument(metavar="BATCH", help="Batch numbers or ids of the store, or sheets; two or more.")
    ],
    store: StoreFolder = None,
    basis: BasisOption = Basis.EBC,
    as_json: PrintJson = False,
) -> None:
    """Show batches side by side.

    Each is held against the first; a difference within the method's own scatter is said to be no more than that.
    """
    from importer.commands import deciding as command
    from importer.commands.run import run

    request = command.Request(tuple(names), store, basis=family_of(basis), as_json=as_json)
    run(lambda: command.compare(request))


def report(
    scope: Annotated[
        list[str], typer.Argument(metavar="MALT|SUPPLIER|YEAR", help="A year, a malt or a supplier; several narrow it.")
    ],
    html: Annotated[Path, typer.Option("--html", metavar="FILE", help="Write the page to this file.")],
    agreed: Agreed = None,
    deliveries: Annotated[
        Path | None, typer.Option("--deliveries", metavar="FILE", help="What was delivered, as CSV; see README.")
    ] = None,
    store: StoreFolder = None,
) -> None:
    """Write a report as one page of HTML.

    Trends with agreed limits and the scatter of the methods, what was outside of what was agreed, worded for the
    supplier and with its place on the sheet, and deliveries without a certificate. Print it from a browser.
    """
    from importer.commands import report as command
    from importer.commands.run import run

    request = command.Request(tuple(scope), html, store, agreed, deliveries)
    run(lambda: command.report(request))


def serve(
    store: StoreFolder = None,
    port: Annotated[
        int, typer.Option("--port", metavar="NUMBER", min=0, max=65535, help="Answer on this port; 0 takes a free one.")
    ] = 8642,
) -> None:
    """Answer spreadsheets and scripts over HTTP.

    Gives the malts in use and the stored analyses, to be read only and on this machine only; see /openapi.json.
    """
    from importer.commands import serve as command
    from importer.commands.run import run

    run(lambda: command.serve(store, port))


def add_commands(app: typer.Typer) -> None:
    """Adds the commands of this module to the command line."""
    app.command(epilog="Example: onebasis batch Q4163 --agreed agreed.toml --recipe-lines bitter.toml")(batch)
    app.command(epilog="Example: onebasis compare Q4127 Q4163")(compare)
    app.command(epilog="Example: onebasis serve --port 8642")(serve)
    app.command(epilog="Example: onebasis report 2025 --html 2025.html --agreed agreed.toml")(report)
