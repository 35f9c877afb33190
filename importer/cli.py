"""The command line: options in, one call, exit status out. What the commands do is in ``importer.commands``.

Nothing heavy is imported here: ``onebasis --help`` has to come at once.
"""

from __future__ import annotations

from pathlib import Path
from typing import Annotated

import typer

from importer import __version__
from importer.cli_deciding import add_commands
from importer.cli_options import (
    Basis,
    BasisOption,
    CsvFile,
    Folder,
    IncludeReview,
    JsonFile,
    NoEstimates,
    ParquetFile,
    Pins,
    PrintJson,
    RatioOption,
    RatioRule,
    RecipeFile,
    StoreFolder,
    Strict,
    TimeLimit,
    WideFile,
    Workers,
    basis_named,
    family_of,
)
from importer.limits import MAX_SECONDS

app = typer.Typer(
    name="onebasis",
    help="Reads malt analysis sheets of any layout, language and method family and puts every figure on one basis.",
    epilog="Example: onebasis read sheet.pdf --json sheet.json",
    no_args_is_help=True,
    add_completion=False,
    rich_markup_mode=None,
    pretty_exceptions_enable=False,
    context_settings={"help_option_names": ["-h", "--help"], "max_content_width": 100},
)


def _version(asked: bool) -> None:
    if asked:
        typer.echo(f"onebasis {__version__}")
        raise typer.Exit


@app.callback()
def _main(
    version: Annotated[
        bool, typer.Option("--version", callback=_version, is_eager=True, help="Show the version and exit.")
    ] = False,
) -> None:
    pass


@app.command(epilog="Example: onebasis read sheets/ --basis ebc --json malts.json --wide malts.csv")
def read(
    paths: Annotated[list[Path], typer.Argument(metavar="PATH", exists=True, help="Sheets, or folders of sheets.")],
    json_file: JsonFile = None,
    csv_file: CsvFile = None,
    wide_file: WideFile = None,
    basis: BasisOption = Basis.EBC,
    no_estimates: NoEstimates = False,
    ratio_rule: RatioOption = RatioRule.PUBLISHED,
    strict: Strict = False,
    include_review: IncludeReview = False,
    time_limit: TimeLimit = MAX_SECONDS,
) -> None:
    """Read sheets and print them on one basis.

    PDF files, scans and photographs, spreadsheets and CSV files are read; folders are walked through their subfolders.
    Exit status: 0 all were read, 1 some could not be read, 2 wrong usage, 3 figures need review and --strict was given.
    """
    from importer.commands import read as command
    from importer.commands.run import run

    request = command.Request(
        paths=tuple(paths),
        json=json_file,
        csv=csv_file,
        wide=wide_file,
        basis=family_of(basis),
        estimates=not no_estimates,
        ratio_rule=ratio_rule.value,
        strict=strict,
        include_review=include_review,
        seconds=time_limit,
    )
    run(lambda: command.read(request))


@app.command(epilog="Example: onebasis demo --basis asbc")
def demo(
    json_file: JsonFile = None,
    csv_file: CsvFile = None,
    wide_file: WideFile = None,
    basis: BasisOption = Basis.EBC,
    no_estimates: NoEstimates = False,
    ratio_rule: RatioOption = RatioRule.PUBLISHED,
    strict: Strict = False,
    include_review: IncludeReview = False,
) -> None:
    """Read the invented sheets that come along.

    The same as `read` on a folder, to see what it does before any sheet of one's own is at hand.
    """
    from importer.commands import read as command
    from importer.commands.run import run

    def request() -> int:
        return command.demo(
            json=json_file,
            csv=csv_file,
            wide=wide_file,
            basis=family_of(basis),
            estimates=not no_estimates,
            ratio_rule=ratio_rule.value,
            strict=strict,
            include_review=include_review,
        )

    run(request)


@app.command(epilog="Example: onebasis inbox ~/inbox --watch")
def inbox(
    folder: Folder,
    store: StoreFolder = None,
    watch: Annotated[bool, typer.Option("--watch", help="Go on until stopped, and take in what arrives.")] = False,
    every: Annotated[
        float, typer.Option("--every", metavar="SECONDS", min=1.0, help="With --watch, look at least so often.")
    ] = 30.0,
    settle: Annotated[
        float,
        typer.Option("--settle", metavar="SECONDS", min=0.1, help="A file is complete when it is still for so long."),
    ] = 2.0,
    workers: Workers = None,
    strict: Strict = False,
    time_limit: TimeLimit = MAX_SECONDS,
) -> None:
    """Take in what arrives in a folder.

    Sheets, emails (.eml, .msg) and ZIP archives are read into the store. The originals leave the folder: they are filed
    under supplier, year and batch; what needs a person or cannot be read is set aside with a note that says why.
    """
    from importer.commands import inbox as command
    from importer.commands.run import run

    request = command.Request(folder, store, watch, every, settle, workers, time_limit, strict)
    run(lambda: command.inbox(request))


@app.command(epilog="Example: onebasis bulk paperwork/2024")
def bulk(
    folder: Folder,
    store: StoreFolder = None,
    retry: Annotated[bool, typer.Option("--retry", help="Read once more what could not be read before.")] = False,
    workers: Workers = None,
    scheduler: Annotated[
        str | None, typer.Option("--scheduler", metavar="ADDRESS", help="Read on the Dask cluster of this scheduler.")
    ] = None,
    strict: Strict = False,
    time_limit: TimeLimit = MAX_SECONDS,
) -> None:
    """Import a whole tree of paperwork.

    Everything stays where it is. Run again after an interruption, or when files have been added: what is in the store
    already is only looked at.
    """
    from importer.commands import bulk as command
    from importer.commands.run import run

    request = command.Request(folder, store, retry, workers, time_limit, strict, scheduler=scheduler)
    run(lambda: command.bulk(request))


@app.command(
    epilog="Example: onebasis export --supplier quillbrook --wide malts.csv; for a recipe tool: "
    "onebasis export --recipe malts.csv; only what is new: onebasis export --json new.json --since-last-export"
)
def export(
    json_file: JsonFile = None,
    csv_file: CsvFile = None,
    wide_file: WideFile = None,
    supplier: Annotated[
        str | None, typer.Option("--supplier", help="Only of this supplier, or part of a name.")
    ] = None,
    malt: Annotated[str | None, typer.Option("--malt", help="Only of this malt, or part of a name.")] = None,
    batch: Annotated[str | None, typer.Option("--batch", help="Only this batch, or part of a number.")] = None,
    first_day: Annotated[
        str | None, typer.Option("--from", metavar="DAY", help="Only from this day on, such as 2024-11-30.")
    ] = None,
    last_day: Annotated[str | None, typer.Option("--to", metavar="DAY", help="Only up to this day.")] = None,
    since_last: Annotated[
        bool, typer.Option("--since-last-export", help="Only what is new or changed since the same export before.")
    ] = False,
    superseded: Annotated[
        bool, typer.Option("--superseded", help="Also certificates that a later one has taken the place of.")
    ] = False,
    store: StoreFolder = None,
    basis: BasisOption = Basis.EBC,
    no_estimates: NoEstimates = False,
    ratio_rule: RatioOption = RatioRule.PUBLISHED,
    strict: Strict = False,
    include_review: IncludeReview = False,
    parquet_file: ParquetFile = None,
    recipe_file: RecipeFile = None,
    pins: Pins = None,
) -> None:
    """Write stored analyses as JSON, CSV or Parquet, or the malts in use for a recipe tool.

    Without an output a table is printed. A day is that of the analysis where the sheet tells it.
    """
    from importer.commands import export as command
    from importer.commands import read as outputs
    from importer.commands.run import run
    from importer.store.selection import Wanted

    def request() -> int:
        target = outputs.Request(
            paths=(),
            json=json_file,
            csv=csv_file,
            wide=wide_file,
            basis=family_of(basis),
            estimates=not no_estimates,
            ratio_rule=ratio_rule.value,
            strict=strict,
            include_review=include_review,
            parquet=parquet_file,
        )
        wanted = Wanted(supplier, malt, batch, first_day, last_day, superseded)
        return command.export(command.Request(wanted, target, store, since_last, recipe_file, tuple(pins or ())))

    run(request)


@app.command(
    epilog="Example: onebasis review --store ~/onebasis; without a browser: onebasis review --write waits.csv, "
    "fill in the column say, then onebasis review --take waits.csv"
)
def review(
    store: StoreFolder = None,
    host: Annotated[
        str, typer.Option("--host", metavar="ADDRESS", help="Listen there instead of on this machine alone.")
    ] = "127.0.0.1",
    port: Annotated[int, typer.Option("--port", min=0, max=65535, help="Port; a free one if left out.")] = 0,
    no_browser: Annotated[bool, typer.Option("--no-browser", help="Only print the address.")] = False,
    show: Annotated[bool, typer.Option("--list", help="Print what waits, and open nothing.")] = False,
    write: Annotated[
        Path | None, typer.Option("--write", metavar="FILE", help="Write what waits as CSV, to be filled in.")
    ] = None,
    take: Annotated[
        Path | None, typer.Option("--take", metavar="FILE", help="Take a filled-in CSV back into the store.")
    ] = None,
    reviewer: Annotated[
        str | None, typer.Option("--reviewer", metavar="NAME", help="With --take, who says it; your login if left out.")
    ] = None,
) -> None:
    """Open the review desk, where a person settles what is in doubt.

    A local web page shows each doubtful figure beside its place on the sheet. What is settled is laid over the reading,
    with who said it and when, and is remembered for the supplier's next sheets.
    """
    from importer.commands import review as command
    from importer.commands.run import run

    request = command.Request(store, host, port, not no_browser, show, write, take, reviewer)
    run(lambda: command.review(request))


@app.command(epilog='Example: onebasis label "Extract, fine grind, dry" "TSN" --family iob')
def label(
    texts: Annotated[list[str], typer.Argument(metavar="TEXT", help="Labels as they are printed on a sheet.")],
    unit: Annotated[str | None, typer.Option("--unit", help="The unit that is printed beside the label.")] = None,
    family: Annotated[
        Basis | None,
        typer.Option("--family", parser=basis_named, metavar="[ebc|iob|asbc]", help="The method family of the sheet."),
    ] = None,
    as_json: PrintJson = False,
) -> None:
    """Show what a printed label is taken for.

    Tells the parameter, how sure that is, and what else it could be.
    """
    from importer.commands import label as command
    from importer.commands.run import run

    run(lambda: command.label(texts, unit, family_of(family) if family else None, as_json=as_json))


@app.command(
    epilog="Example: onebasis convert 3.5 SRM --to EBC",
    context_settings={"ignore_unknown_options": True},
)
def convert(
    value: Annotated[str, typer.Argument(metavar="VALUE", help="A number, with a decimal point or comma.")],
    unit: Annotated[str, typer.Argument(metavar="UNIT", help="Its unit, such as L°/kg or SRM.")],
    to: Annotated[str, typer.Option("--to", metavar="UNIT", help="The unit to convert to.")],
    moisture: Annotated[
        float | None, typer.Option("--moisture", metavar="PERCENT", help="The malt's moisture, for dry and as-is.")
    ] = None,
    extract: Annotated[
        float | None,
        typer.Option(
            "--extract", metavar="PERCENT", help="The malt's extract, for figures in the wort and in the malt."
        ),
    ] = None,
    density: Annotated[
        float | None, typer.Option("--density", metavar="KG_PER_L", help="The density of the wort.")
    ] = None,
    plato: Annotated[float | None, typer.Option("--plato", metavar="DEGREES", help="The strength of the wort.")] = None,
    ratio_rule: RatioOption = RatioRule.PUBLISHED,
    as_json: PrintJson = False,
) -> None:
    """Convert one value from unit to unit.

    Shows the kind of the conversion, its formula, its spread and its source.
    Where a unit is in use for several things, every way is shown.
    """
    from importer.commands import convert as command
    from importer.commands.run import run

    def request() -> int:
        number = command.number(value)
        asked = command.Request(number, unit, to, moisture, extract, density, plato, ratio_rule.value)
        return command.convert(asked, as_json=as_json)

    run(request)


add_commands(app)


def main() -> None:
    """Entry point of the ``onebasis`` command."""
    app(prog_name="onebasis")
