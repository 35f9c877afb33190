"""A year of an invented brewery: inbox, review, report. The report finds what is bad, and nothing else."""

from __future__ import annotations

import csv
import json
import re
import subprocess
import sys
from pathlib import Path

import pytest

from importer import load_analyses, make_report, read_agreed, read_deliveries
from importer.deciding.feed import recipe_feed
from importer.deciding.ground import header
from importer.vocabulary.parameters import parameters
from tests.year.scenario import (
    BAD,
    CARELESS,
    FILED_TWICE,
    KINDS,
    NO_BATCH,
    REISSUED,
    TYPED_WRONGLY,
    WITHOUT_SHEET,
    Delivery,
    number_of,
)
from tests.year.sheets import as_it_should_be, lay_out

pytestmark = pytest.mark.timeout(600)


def onebasis(*arguments: object) -> subprocess.CompletedProcess[str]:
    command = [sys.executable, "-m", "importer", *map(str, arguments)]
    return subprocess.run(command, check=True, capture_output=True, text=True, encoding="utf-8")


@pytest.fixture(scope="module")
def year(tmp_path_factory: pytest.TempPathFactory) -> tuple[Path, list[Delivery]]:
    """The first half comes through the inbox, the second as a tree of paperwork."""
    folder = tmp_path_factory.mktemp("year")
    found = lay_out(folder)
    inbox, tree, store = folder / "inbox", folder / "sheets", folder / "store"
    inbox.mkdir()
    for month in sorted(tree.iterdir())[:6]:
        month.rename(inbox / month.name)
    (folder / "taken").write_text(onebasis("inbox", inbox, "--store", store, "--settle", "0.1").stdout, "utf-8")
    settle(store, found, folder / "first")
    onebasis("bulk", tree, "--store", store)
    settle(store, found, folder / "second")
    return folder, found


def settle(store: Path, found: list[Delivery], notes: Path) -> None:
    """Everything that waits, settled on the terminal by what is true; what was listed before and after is kept."""
    notes.mkdir()
    (notes / "before").write_text(onebasis("review", "--list", "--store", store).stdout, encoding="utf-8")
    table = notes / "waits.csv"
    onebasis("review", "--write", table, "--store", store)
    with table.open(encoding="utf-8", newline="") as file:
        rows = list(csv.DictReader(file))
    for row in rows:
        row.update(truth(row, next(delivery for delivery in found if row["file"].startswith(delivery.batch))))
    with table.open("w", encoding="utf-8", newline="") as file:
        writer = csv.DictWriter(file, list(rows[0]))
        writer.writeheader()
        writer.writerows(rows)
    told = onebasis("review", "--take", table, "--reviewer", "Anna Holt", "--store", store).stderr
    assert f"{len(rows)} taken, 0 not taken." in told
    (notes / "after").write_text(onebasis("review", "--list", "--store", store).stdout, encoding="utf-8")


def truth(row: dict[str, str], delivery: Delivery) -> dict[str, str]:
    """What a person who knows the batch writes into a line: that it is read rightly, or what is right."""
    if row["row"] == "head:batch":
        return {"say": "correct", "value": delivery.batch}
    (name,) = (name for name, entry in parameters().items() if entry.title == row["parameter"])
    _, unit, result = as_it_should_be(delivery, name)
    if row["reading"] == f"{result.replace(',', '.')} {unit}":
        return {"say": "accept"}
    return {"say": "correct", "value": result, "unit": unit, "is_parameter": row["parameter"]}


def settled(folder: Path) -> list[dict[str, str]]:
    found: list[dict[str, str]] = []
    for part in ("first", "second"):
        with (folder / part / "waits.csv").open(encoding="utf-8", newline="") as file:
            found += csv.DictReader(file)
    return found


def batches(names: object, found: list[Delivery]) -> set[str]:
    wanted = set(names)  # type: ignore[call-overload]
    return {delivery.batch for delivery in found if number_of(delivery) in wanted}


def test_the_year_is_as_large_as_it_says(year: tuple[Path, list[Delivery]]) -> None:
    folder, found = year
    filed = [*(folder / "store" / "filed").rglob("*.pdf"), *(folder / "sheets").rglob("*.pdf")]
    assert len(found) >= 150
    assert len(filed) >= 150
    assert len(KINDS) == 6
    assert len({kind.supplier for kind in KINDS}) == 4


def test_what_was_typed_carelessly_waits_and_nothing_else(year: tuple[Path, list[Delivery]]) -> None:
    folder, found = year
    careless = [(d, row) for d in found for row in CARELESS.get(number_of(d), {})]
    waited = {(row["file"], "batch" if row["row"] == "head:batch" else row["parameter"]) for row in settled(folder)}
    titles = {row: parameters()[row].title for _, row in careless if row != NO_BATCH}
    assert waited == {(f"{d.batch}.pdf", titles.get(row, NO_BATCH)) for d, row in careless}
    for part in ("first", "second"):
        listed = (folder / part / "before").read_text(encoding="utf-8")
        assert re.search(r"^To settle: \d figures? on \d sheets?", listed, re.MULTILINE), listed
        with (folder / part / "waits.csv").open(encoding="utf-8", newline="") as file:
            for row in csv.DictReader(file):
                assert f"  {row['parameter']}: " in listed
                assert all(why in listed for why in row["why"].split("; "))
        assert (folder / part / "after").read_text(encoding="utf-8") == "Nothing waits.\n"


def test_what_was_settled_is_in_the_store_as_it_should_be(year: tuple[Path, list[Delivery]]) -> None:
    folder, found = year
    stored = {header(analysis, "batch"): analysis for analysis in load_analyses(folder / "store")}
    assert all(analysis.state == "accepted" for analysis in stored.values())
    for delivery in found:
        for row in CARELESS.get(number_of(delivery), {}):
            if row != NO_BATCH:
                (figure,) = (f for f in stored[delivery.batch].figures if f.parameter == row)
                assert figure.value == delivery.values[row]
                assert "corrected-by-person" in figure.flags
    assert not list((folder / "store" / "set-aside").rglob("*.pdf")), "what is settled is filed"


def test_every_batch_with_a_sheet_is_there_once(year: tuple[Path, list[Delivery]]) -> None:
    folder, found = year
    stored = [header(analysis, "batch") for analysis in load_analyses(folder / "store")]
    assert sorted(stored) == sorted(delivery.batch for delivery in found if delivery.sheet)
    (twice,) = batches([FILED_TWICE], found)
    (again,) = batches([REISSUED], found)
    assert stored.count(twice) == 1
    (current,) = [a for a in load_analyses(folder / "store") if header(a, "batch") == again]
    (delivery,) = [d for d in found if d.batch == again]
    taken = (folder / "taken").read_text(encoding="utf-8")
    reissued = [line for line in taken.partition("Reissued certificates:\n")[2].splitlines() if "→" in line]
    (line,) = reissued
    assert line.startswith(f"  {delivery.kind.supplier}, batch {again}, ")
    assert line.endswith(f": colour {TYPED_WRONGLY['colour']} EBC → {delivery.values['colour']} EBC")
    assert next(f.value for f in current.figures if f.parameter == "colour") == delivery.values["colour"]


def test_the_report_finds_the_three_bad_batches_and_nothing_else(year: tuple[Path, list[Delivery]]) -> None:
    folder, found = year
    target = folder / "2025.html"
    agreed, book = folder / "agreed.toml", folder / "deliveries.csv"
    told = onebasis("report", "2025", "--html", target, "--agreed", agreed, "--deliveries", book,
                    "--store", folder / "store").stderr  # fmt: skip
    assert "Outside what was agreed: 3." in told
    assert "Delivered without a certificate: 2." in told
    report = make_report(
        load_analyses(folder / "store"),
        "2025",
        agreements=read_agreed(agreed),
        deliveries=read_deliveries(book),
    )
    bad = {(header(one.analysis, "batch"), one.found.parameter) for one in report.complaints}
    assert bad == {(d.batch, name) for d in found for name in BAD.get(number_of(d), {})}
    assert {one.batch for one in report.missing} == batches(WITHOUT_SHEET, found)
    assert all(malt.not_said == () for malt in report.malts)
    assert all(len(malt.harvests) == 1 for malt in report.malts)
    page = target.read_text(encoding="utf-8")
    complaints = page.partition("<h2>Trends")[0]
    assert set(re.findall(r"batch ([A-Z]25-\d+)</strong>", complaints)) == {batch for batch, _ in bad}
    assert complaints.count("data:image/png;base64,") == 3
    assert page.count(">crop 2025</text>") == sum(len(malt.series) for malt in report.malts)


def test_what_goes_out_is_the_last_good_batch_of_each_malt(year: tuple[Path, list[Delivery]]) -> None:
    folder, found = year
    onebasis("export", "--recipe", folder / "malts.csv", "--store", folder / "store")
    out = json.loads((folder / "malts.json").read_text(encoding="utf-8"))["malts"]
    last = {d.kind.malt: d.batch for d in found if d.sheet}
    assert {one["malt"]: one["batch"] for one in out} == last
    assert [one.model_dump() for one in recipe_feed(load_analyses(folder / "store")).malts] == out
