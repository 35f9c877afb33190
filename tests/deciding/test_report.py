"""The report: what it finds, that it stands alone, and that nothing of a sheet can act in it."""

from __future__ import annotations

import base64
import contextlib
import io
import re
import xml.etree.ElementTree as ElementTree
from dataclasses import replace
from html.parser import HTMLParser
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st
from PIL import Image

from importer.deciding.agreed import read_agreed
from importer.deciding.deliveries import read_deliveries, without_sheet
from importer.deciding.report import NothingFoundError, Report, make_report
from importer.drawing.pages import Pictures
from importer.errors import OwnFileError
from importer.models import Analysis, Source
from importer.output.words import CAUTION
from importer.telling.evidence import crop_of
from importer.telling.report_page import report_page
from importer.telling.svg import nice_ticks, trend
from tests.deciding.factory import BOX, analysis, estimate, figure

SOURCE = Source(file="sheet.pdf", sha256="0" * 64, pages=(1,), reading="text")


def year(*values: float, malt: str = "Pale Ale Malt", supplier: str = "Nordtal Malting") -> list[Analysis]:
    return [
        analysis(
            figure("friability", value),
            batch=f"B{number}",
            day=f"2025-{number:02d}-10",
            crop="2024" if number < 4 else "2025",
            malt=malt,
            supplier=supplier,
        )
        for number, value in enumerate(values, 1)
    ]


def reported(tmp_path: Path, analyses: list[Analysis], **more: object) -> Report:
    path = tmp_path / "agreed.toml"
    path.write_text(
        '[[agreed]]\nmalt = "Pale Ale Malt"\nlimits = [{ parameter = "friability", min = 84 }]\n', encoding="utf-8"
    )
    return make_report(analyses, "2025", agreements=read_agreed(path), **more)  # type: ignore[arg-type]


class Page(HTMLParser):
    """Every tag and attribute of a page."""

    def __init__(self, text: str) -> None:
        super().__init__()
        self.tags: list[str] = []
        self.attributes: list[tuple[str, str | None]] = []
        self.feed(text)

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        self.tags.append(tag)
        self.attributes += attrs


def test_bad_batches_are_found_and_no_others(tmp_path: Path) -> None:
    found = reported(tmp_path, year(90, 91, 77, 89, 90, 80))
    assert [one.analysis.header["batch"].value for one in found.complaints] == ["B3", "B6"]
    page = report_page(found)
    assert "Friability: <strong>77.0 %</strong>; agreed: <strong>min 84 %</strong>" in page
    assert "B1<" not in page.partition("<h2>Trends")[0]


def test_a_trend_shows_limits_bands_and_the_new_harvest(tmp_path: Path) -> None:
    found = reported(tmp_path, year(90, 91, 77, 89, 90, 88))
    (malt,) = found.malts
    (series,) = malt.series
    assert (series.low, series.high, len(series.points), len(series.bands)) == (84.0, None, 6, 2)
    assert malt.harvests == (("2025-04-10", "2025"),)
    drawn = ElementTree.fromstring(trend(series, malt.harvests))
    kinds = [element.get("class") for element in drawn.iter()]
    assert (kinds.count("point"), kinds.count("out"), kinds.count("limit"), kinds.count("band")) == (5, 1, 1, 2)
    assert kinds.count("harvest") == 1
    assert {"min 84", "crop 2025", "B3"} <= {element.text for element in drawn.iter() if element.text}


def test_methods_have_trends_of_their_own_and_limits_stay_on_theirs(tmp_path: Path) -> None:
    path = tmp_path / "agreed.toml"
    path.write_text(
        '[[agreed]]\nmalt = "Pale Ale Malt"\nlimits = [{ parameter = "nitrogen_ratio", max = 46, family = "EBC" }]\n',
        encoding="utf-8",
    )
    iob = [
        analysis(
            estimate("nitrogen_ratio", 42.8, "%", 2.5, (38.0 + n / 10, "%", "IoB")),
            batch=f"I{n}",
            day=f"2025-01-0{n}",
            family="IoB",
            mash="isothermal-65",
        )
        for n in range(1, 5)
    ]
    ebc = [analysis(figure("nitrogen_ratio", 43.0 + n), batch=f"E{n}", day=f"2025-02-0{n}") for n in range(1, 5)]
    (malt,) = make_report([*iob, *ebc], "2025", agreements=read_agreed(path)).malts
    assert [(s.ground, len(s.points), s.high) for s in malt.series] == [("IoB", 4, None), ("", 4, 46.0)]
    assert [point.value for point in malt.series[0].points] == [38.1, 38.2, 38.3, 38.4]
    assert [one.analysis.header["batch"].value for one in malt.complaints] == ["E4"]


def test_figures_in_review_and_residues_have_no_trend(tmp_path: Path) -> None:
    analyses = [
        analysis(
            figure("friability", 20, state="review"),
            figure("ndma", 1.0 + n, "µg/kg"),
            batch=f"B{n}",
            day=f"2025-01-0{n}",
        )
        for n in range(1, 6)
    ]
    found = reported(tmp_path, analyses)
    assert found.malts[0].series == ()
    page = report_page(found)
    assert CAUTION in page
    assert "in review: cannot be said" in page


def test_the_page_needs_nothing_else(tmp_path: Path) -> None:
    page = report_page(reported(tmp_path, year(90, 91, 77, 89)), lambda _: "data:image/png;base64,AAAA")
    parsed = Page(page)
    assert not {"script", "link", "iframe", "object", "base", "form"} & set(parsed.tags)
    for name, value in parsed.attributes:
        assert not name.startswith("on")
        if name in ("src", "href"):
            assert (value or "").startswith("data:image/png;base64,")
    assert not re.search(r"url\(|@import|https?://", page)
    assert "default-src 'none'" in page


HOSTILE = '<script>alert(1)</script>"><img src=x onerror=alert(1)>\x1b[2J\u202e'


def test_nothing_of_a_sheet_acts_in_the_page(tmp_path: Path) -> None:
    analyses = year(90, 91, 92, 77, malt=HOSTILE, supplier=HOSTILE)
    path = tmp_path / "deliveries.csv"
    path.write_text(
        f'day,supplier,malt,batch\n2025-01-01,X,Y,"{HOSTILE.replace(chr(34), chr(34) * 2)}"\n', encoding="utf-8"
    )
    agreed = tmp_path / "agreed.toml"
    agreed.write_text(
        '[[agreed]]\nmalt = "script alert 1 script img src x onerror alert 1 2J"\n'
        'limits = [{ parameter = "friability", min = 84 }]\n',
        encoding="utf-8",
    )
    found = make_report(analyses, "2025", agreements=read_agreed(agreed), deliveries=read_deliveries(path))
    assert len(found.complaints) == 1
    page = report_page(found)
    parsed = Page(page)
    assert "script" not in parsed.tags
    assert "img" not in parsed.tags
    assert "\x1b" not in page
    assert "\u202e" not in page


def test_scopes_narrow_each_other(tmp_path: Path) -> None:
    analyses = year(90, 91, 92) + year(90, 91, 92, supplier="Other Maltings")
    assert make_report(analyses, ["2025", "other"]).batches == 3
    assert make_report(analyses, "nordtal").batches == 3
    assert make_report(analyses, "PALE-ALE").batches == 6
    for scope in (["2024"], ["Munich"], ["2025", "nobody"], ["--"]):
        with pytest.raises(NothingFoundError, match="No batch"):
            make_report(analyses, scope)


def test_batches_without_a_day_are_in_no_year_and_are_named() -> None:
    undated = [analysis(figure("friability", 90.0), batch=f"U{n}", day="") for n in range(3)]
    found = make_report([*year(90, 91), *undated], "2025")
    assert (found.batches, len(found.undated)) == (2, 3)
    page = report_page(found)
    assert "3 batches without a date on the sheet, in no year and in no plot: Pale Ale Malt U0, " in page
    found = make_report([*year(90, 91, 92), *undated], "nordtal")
    assert found.batches == 6
    assert [point.batch[0] for point in found.malts[0].series[0].points] == ["B"] * 3


def test_a_year_without_limits_complains_of_nothing() -> None:
    found = make_report(year(90, 20, 91), "2025")
    assert found.complaints == ()
    assert "No limits were given" in report_page(found)


def test_deliveries_without_a_certificate(tmp_path: Path) -> None:
    path = tmp_path / "book.csv"
    path.write_bytes(
        "\ufeffDay;Supplier;Malt;Batch;Tonnes\r\n2025-01-10;NORDTAL malting;Pale-Ale Malt;b1;5\r\n"
        "2025-02-10;Nordtal Malting;Pale Ale Malt;B99;5\r\n2025-02-10;Other;Pale Ale Malt;B2;5\r\n".encode()
    )
    book = read_deliveries(path)
    assert [one.batch for one in without_sheet(book, year(90, 91))] == ["B99", "B2"]


def test_a_delivery_may_name_a_part_of_the_supplier(tmp_path: Path) -> None:
    """Goods-in books leave out the legal form; a supplier must not be told that a certificate is missing for that."""
    path = tmp_path / "book.csv"
    path.write_text("day,supplier,malt,batch\n2025-01-10,Nordtal,Pale Ale,B1\n2025-01-10,Nordtal,Wheat,B2\n")
    assert [one.batch for one in without_sheet(read_deliveries(path), year(90, 91))] == ["B2"]


@pytest.mark.parametrize(
    ("content", "told"),
    [
        (b"", "is empty"),
        (b"supplier,malt,batch\n", "the head lacks day. Its columns are: supplier, malt, batch."),
        (b"day,supplier,malt,batch\n31.12.2025,A,B,C\n", "row 2: '31.12.2025' is no day"),
        (b"day,supplier,malt,batch\n2025-02-30,A,B,C\n", "row 2: '2025-02-30' is no day"),
        (b"day,supplier,malt,batch\n2025-01-01,A,B\n", "row 2: malt or batch is missing"),
        (b"day,supplier,malt,batch\n2025-01-01,\xff,B,C\n", "not UTF-8"),
    ],
)
def test_faults_of_the_goods_in_book(tmp_path: Path, content: bytes, told: str) -> None:
    path = tmp_path / "book.csv"
    path.write_bytes(content)
    with pytest.raises(OwnFileError) as fault:
        read_deliveries(path)
    assert told in str(fault.value)
    with pytest.raises(OwnFileError, match="no such file"):
        read_deliveries(tmp_path / "none.csv")


@given(st.floats(-1e4, 1e4), st.floats(1e-3, 1e4))
def test_ticks_are_round_and_inside(low: float, width: float) -> None:
    ticks = nice_ticks(low, low + width)
    assert 3 <= len(ticks) <= 12
    assert all(low - width * 1e-3 <= tick <= low + width * 1.001 for tick in ticks)
    assert ticks == sorted(set(ticks))


def test_a_trend_of_equal_values_is_drawn(tmp_path: Path) -> None:
    found = make_report(year(90, 90, 90), "2025")
    drawn = ElementTree.fromstring(trend(found.malts[0].series[0], ()))
    assert drawn.get("viewBox")


@pytest.mark.parametrize("data", [b"", b"%PDF-1.7 broken", b"\x89PNG\r\n\x1a\n broken"])
def test_an_original_that_cannot_be_drawn_leaves_no_picture(data: bytes) -> None:
    with contextlib.closing(Pictures()) as pictures:
        assert crop_of(pictures, data, SOURCE, figure("friability", 77)) is None


class OnePage(Pictures):
    """A page of 100 × 200 points at 144 dots an inch, with a line where the figure stands."""

    def draw(self, sha256: str, data: bytes, name: str, number: int, reading: str) -> bytes | None:
        top, bottom = round(BOX[1] * 2), round(BOX[3] * 2)
        image = Image.new("RGB", (200, 400), "white")
        image.paste("black", (0, top, 200, bottom))
        out = io.BytesIO()
        image.save(out, "PNG", dpi=(144, 144))
        return out.getvalue()


def test_the_picture_of_a_figure_is_its_row_and_a_little_above_and_below() -> None:
    address = crop_of(OnePage(), b"", SOURCE, figure("friability", 77))
    assert address is not None
    shown = Image.open(io.BytesIO(base64.b64decode(address.partition(",")[2])))
    assert shown.size == (200, round((BOX[3] - BOX[1]) * 2) + 28)
    rows = [shown.getpixel((100, y)) for y in range(shown.height)]
    assert rows == [255] * 14 + [0] * (shown.height - 28) + [255] * 14
    assert (
        crop_of(OnePage(), b"", SOURCE.model_copy(update={"reading": "spreadsheet"}), figure("friability", 77)) is None
    )


def test_plots_name_their_batches_and_a_malt_without_plot_says_why() -> None:
    few = [analysis(figure("friability", 88.0), batch=f"M{n}", malt="Munich", day=f"2025-0{n}-01") for n in (1, 2)]
    page = report_page(make_report([*year(90, 91, 92), *few], "2025"))
    assert "No plot: no figure is accepted on 3 dated batches or more." in page
    assert "Batches, from left to right: M1 (2025-01-01), M2 (2025-02-01)." in page
    assert page.count("No plot:") == 1


def test_residues_stand_in_the_report_as_they_are_printed() -> None:
    one = figure("ndma", 1.0, "µg/kg", bound="<", flags=("food-safety",))
    one = one.model_copy(update={"printed": one.printed and one.printed.model_copy(update={"value": "<1.0 <b>"})})
    page = report_page(make_report([analysis(one, batch="B7")], "2025"))
    after = page.partition("Residues and contaminants</h2>")[2]
    assert "<td>B7</td><td>2025-03-01</td>" in after
    assert "<td>&lt;1.0 &lt;b&gt; µg/kg</td>" in after
    assert "outside" not in after


def test_a_converted_limit_is_written_no_more_exactly_than_its_figure() -> None:
    found = make_report(
        [analysis(figure("colour", v, "EBC"), batch=f"C{v}", day=f"2025-0{v}-01") for v in (4, 5, 6)], "2025"
    )
    series = replace(found.malts[0].series[0], low=7.0923, high=8.0771)
    drawn = trend(series, ())
    assert ">min 7.1<" in drawn
    assert ">max 8.1<" in drawn
