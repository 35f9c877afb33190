"""A year of an invented brewery from the sheets to the report: it finds what is bad, and nothing else."""

from __future__ import annotations

import json
import re
import subprocess
import sys
from pathlib import Path

import pytest

from importer import load_analyses, make_report, read_agreed, read_deliveries
from importer.deciding.feed import recipe_feed
from importer.deciding.ground import header
from tests.year.scenario import BAD, FILED_TWICE, KINDS, REISSUED, WITHOUT_SHEET, Delivery, number_of
from tests.year.sheets import lay_out

pytestmark = pytest.mark.timeout(600)


def onebasis(*arguments: object) -> subprocess.CompletedProcess[str]:
    command = [sys.executable, "-m", "importer", *map(str, arguments)]
    return subprocess.run(command, check=True, capture_output=True, text=True, encoding="utf-8")


@pytest.fixture(scope="module")
def year(tmp_path_factory: pytest.TempPathFactory) -> tuple[Path, list[Delivery]]:
    """The first half comes through the inbox, the second as a tree of paperwork."""
    folder = tmp_path_factory.mktemp("year")
    found = lay_out(folder)
    inbox, tree = folder / "inbox", folder / "sheets"
    inbox.mkdir()
    for month in sorted(tree.iterdir())[:6]:
        month.rename(inbox / month.name)
    onebasis("inbox", inbox, "--store", folder / "store", "--settle", "0.1")
    onebasis("bulk", tree, "--store", folder / "store")
    return folder, found


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


def test_every_batch_with_a_sheet_is_there_once(year: tuple[Path, list[Delivery]]) -> None:
    folder, found = year
    stored = [header(analysis, "batch") for analysis in load_analyses(folder / "store")]
    assert sorted(stored) == sorted(delivery.batch for delivery in found if delivery.sheet)
    (twice,) = batches([FILED_TWICE], found)
    (again,) = batches([REISSUED], found)
    assert stored.count(twice) == 1
    (current,) = [a for a in load_analyses(folder / "store") if header(a, "batch") == again]
    (delivery,) = [d for d in found if d.batch == again]
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
