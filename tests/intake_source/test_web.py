"""HTML as sheets: tables of laboratory systems, workbooks that are HTML in truth, and the text of emails."""

from __future__ import annotations

import time
from email.message import EmailMessage
from pathlib import Path

import pytest

from importer import read_sheet
from importer.errors import UnsupportedType
from importer.intake.kind import kind_of
from importer.intake.letter_text import page_of_text
from importer.intake.parcel import unpack
from importer.intake.web import lines_of
from importer.models import Analysis
from tests.store.parcels import compound, outlook

ROWS = (("Moisture", "%", "4.2"), ("Extract fine grind, dry", "%", "81.2"), ("Colour", "EBC", "3.5"))
OLD = (("Moisture", "%", "4.9"), ("Extract fine grind, dry", "%", "80.1"), ("Colour", "EBC", "4.4"))
VALUES = {"moisture": 4.2, "extract_fine_dry": 81.2, "colour": 3.5}


def marked(batch: str, rows: tuple[tuple[str, ...], ...] = ROWS) -> str:
    cells = "".join(f"<tr>{''.join(f'<td>{cell}' for cell in row)}" for row in rows)
    return f"<p>Batch no.: {batch}<p>Method: EBC<table><tr><th>Parameter<th>Unit<th>Result{cells}</table>"


def plain(batch: str, rows: tuple[tuple[str, ...], ...] = ROWS) -> str:
    return f"Batch {batch}, EBC methods:\n" + "\n".join(f"{name}: {value} {unit}" for name, unit, value in rows)


def quoted(text: str) -> str:
    return "\n".join(f"> {line}" for line in text.splitlines())


def read(tmp_path: Path, name: str, data: bytes) -> list[Analysis]:
    path = tmp_path / name
    path.write_bytes(data)
    return list(read_sheet(path).analyses)


def letter(text: str, *, html: str = "", attached: bool = False) -> bytes:
    message = EmailMessage()
    message["From"], message["Subject"] = "lab@example.org", "Results"
    message.set_content(text)
    if html:
        message.add_alternative(html, subtype="html")
    if attached:
        message.add_attachment(b"%PDF-1.7", maintype="application", subtype="pdf", filename="a.pdf")
    return bytes(message)


def results(tmp_path: Path, data: bytes) -> dict[str, dict[str, float | None]]:
    (item,) = unpack(data, "m").sheets()
    found = read(tmp_path, item.name, item.data)
    return {a.header["batch"].value: {figure.parameter: figure.value for figure in a.figures} for a in found}


@pytest.mark.parametrize("name", ["a.html", "a.xls", "a.csv"])
def test_tables_of_html_are_read_whatever_the_file_is_called(tmp_path: Path, name: str) -> None:
    page = f'<html><head><meta charset="iso-8859-1"><title>x</title></head><body>{marked("Süd-1234")}</body></html>'
    (analysis,) = read(tmp_path, name, page.encode("iso-8859-1"))
    assert analysis.header["batch"].value == "Süd-1234"
    assert {figure.parameter: figure.value for figure in analysis.figures} == VALUES
    assert analysis.source.reading == "spreadsheet"


def test_html_without_a_table_is_none_of_these() -> None:
    with pytest.raises(UnsupportedType, match="web page"):
        kind_of(b"<html><body>4.2 %</body></html>", "a.html")


def test_cells_stand_in_the_columns_that_they_are_shown_in() -> None:
    page = (
        "<table><tr><th rowspan=2>A</th><th colspan=2>B</th><th rowspan=2>C</th></tr><tr><th>b<th>c</tr>"
        "<tr><td>1<br>2</td><td></td><td>3&nbsp;%</td><td><table><tr><td>4<td>5</table></table>"
    )
    assert [line.cells for line in lines_of(page)] == [
        {0: "A", 1: "B", 3: "C"}, {1: "b", 2: "c"}, {0: "1\n2", 2: "3 %"}, {0: "4", 1: "5"},
    ]  # fmt: skip


@pytest.mark.parametrize(
    "unseen",
    [
        '<p style="display: none">4.9<p>',
        "<div hidden><div>4.9</div></div>",
        "<s>4.9</s>",
        "<!-- 4.9 -->",
        "<style>4.9</style>",
    ],
)
def test_what_nobody_sees_is_not_read(unseen: str) -> None:
    assert [line.cells for line in lines_of(f"a{unseen}b < 5.0")] in ([{0: "a"}, {0: "b < 5.0"}], [{0: "ab < 5.0"}])


@pytest.mark.parametrize(
    "part", ["<!--", "<a ", "<![CDATA[", "</a ", "<a b='", "<title>", "<td>", "<table>", "&#", "a: b@c 1:00\n"]
)
def test_no_text_of_an_email_takes_long(part: str) -> None:
    began = time.process_time()
    page_of_text(part * (100_000 // len(part)), is_html=True)
    assert time.process_time() - began < 5


def test_an_email_without_attachments_is_read_itself(tmp_path: Path) -> None:
    signature = "\n\nBest regards\nA. Example\nMill Lane 4, 12345 Town\nTel. 0044 1234 567\nFax 0044 1234 568"
    assert results(tmp_path, letter(plain("N-1001") + signature)) == {"N-1001": VALUES}
    assert results(tmp_path, letter("see below", html=marked("N-1002"))) == {"N-1002": VALUES}
    columns = "Batch no.: N-1003\nMethod: EBC\n\n" + "\n".join(f"{n:<30}{v:<8}{u}" for n, u, v in ROWS)
    assert results(tmp_path, letter(columns)) == {"N-1003": VALUES}


def test_figures_of_an_emails_text_wait_for_a_person(tmp_path: Path) -> None:
    (item,) = unpack(letter(plain("N-1008")), "m").sheets()
    (analysis,) = read(tmp_path, item.name, item.data)
    assert {figure.state for figure in analysis.figures} == {"review"}
    assert all("It stands in the text of an email and on no sheet." in figure.reasons for figure in analysis.figures)


def test_an_outlook_email_without_attachments_is_read_itself(tmp_path: Path) -> None:
    for number, content in (("1000001F", plain("N-1004").encode("utf-16-le")), ("10130102", marked("N-1004").encode())):
        tree = {**outlook(), f"__substg1.0_{number}": content}
        assert results(tmp_path, compound(tree)) == {"N-1004": VALUES}


HEAD = "From: Lab <lab@example.org>\nSent: Monday, 3 March 2025 09:00\nTo: Brewer\nSubject: N-0900\n\n"


@pytest.mark.parametrize(
    "text",
    [
        f"{plain('N-1005')}\n\nOn 3 Mar 2025 at 09:00, Lab <lab@example.org> wrote:\n{quoted(plain('N-0900', OLD))}",
        f"{plain('N-1005')}\n\n-----Original Message-----\n{HEAD}{plain('N-0900', OLD)}",
        f"FYI\n\n{HEAD.replace('N-0900', 'N-1005')}{plain('N-1005')}\n\n{HEAD}{plain('N-0900', OLD)}",
        f"FYI\n{quoted(plain('N-1005'))}",
    ],
)
def test_of_a_chain_of_emails_the_newest_figures_are_read(tmp_path: Path, text: str) -> None:
    assert results(tmp_path, letter(text)) == {"N-1005": VALUES}


def test_a_quotation_in_html_is_not_read_beside_what_was_written(tmp_path: Path) -> None:
    page = f"{marked('N-1006')}<p>Lab &lt;lab@example.org&gt; wrote on 3.3.2025:<blockquote>{marked('N-0900', OLD)}"
    assert results(tmp_path, letter("", html=f"{page}</blockquote>")) == {"N-1006": VALUES}


def test_what_is_attached_goes_before_the_text(tmp_path: Path) -> None:
    assert [item.name for item in unpack(letter(plain("N-1007"), attached=True), "m").sheets()] == ["a.pdf"]


def test_a_letter_without_figures_is_told_as_before() -> None:
    item = unpack(letter("See you at 12.\nTel. 0123 4567\nRoom 4"), "m")
    assert item.trouble is not None
    assert "no attachment" in item.trouble.message
