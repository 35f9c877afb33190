"""What is drawn over, under and beside the figures."""

from tests.adversarial.case import sheet, truth
from tests.adversarial.paper import Paper, beside, covered, struck, watermark

RIGHT = {"moisture": "4.3", "extract_fine_dry": "81.4", "total_protein": "10.5", "friability": "86"}


def _table(batch: str, protein: str = "10.5", friability: str = "86") -> str:
    return f"""
# Certificate of Analysis
Pilsner malt   Batch: {batch}    Methods: EBC

Parameter | Unit | Result | Remarks of the laboratory
Moisture | % | 4.3 |
Extract fine grind, dry | % | 81.4 |
Protein, dry | % | {protein} |
Friability | % | {friability} |
"""


sheet(
    "struck-with-another-beside",
    "A value crossed out, the right one written beside it.",
    _table("D1101", protein="11.2"),
    truth("D1101", moisture="4.3", extract_fine_dry="81.4", friability="86", shown="10.5"),
    draw=struck("11.2", "10.5"),
)

sheet(
    "struck-alone",
    "A value crossed out, nothing beside it.",
    _table("D1102", protein="11.2"),
    truth("D1102", moisture="4.3", extract_fine_dry="81.4", friability="86"),
    draw=struck("11.2"),
)


def _strike_row(paper: Paper) -> None:
    at = paper.where["Friability"]
    paper.strike(at.x0 - 3, 300, (at.top + at.bottom) / 2)


sheet(
    "struck-row",
    "A whole row crossed out: it was not determined.",
    _table("D1103"),
    truth("D1103", moisture="4.3", extract_fine_dry="81.4", total_protein="10.5"),
    draw=_strike_row,
)

sheet(
    "watermark-of-digits",
    "A large pale watermark of digits over the table.",
    _table("D1104"),
    truth("D1104", **RIGHT, doubtful="*"),
    draw=watermark("2024 COPY 2024"),
)


def _watermark_over(paper: Paper) -> None:
    at = paper.where["81.4"]
    paper.write(at.x0 - 9, at.top - 2, "9", size=14, grey=0.8)
    paper.write(at.x0 + 2, at.top - 2, "0", size=14, grey=0.8)


sheet(
    "watermark-digit-before-the-number",
    "A digit of an upright watermark stands right before and on a number.",
    _table("D1105"),
    truth("D1105", moisture="4.3", total_protein="10.5", friability="86", doubtful="*"),
    draw=_watermark_over,
)

sheet(
    "white-result-beside",
    "White text that nobody sees beside the results.",
    _table("D1106"),
    truth("D1106", **RIGHT),
    draw=(
        beside("10.5", "11.2", dx=2, grey=1.0),
        beside("86", "5", dx=0, grey=1.0),
        beside("4.3", "1", dx=0, grey=1.0),
    ),
)

sheet(
    "result-under-a-box",
    "A number is covered by a box that holds another one.",
    _table("D1107", protein="11.2"),
    truth("D1107", **RIGHT, doubtful="total_protein"),
    draw=covered("11.2", "10.5"),
)

sheet(
    "corrected-last-digit",
    "The numbers under the boxes differ in the last digit: of two same digits in one place one may be lost.",
    _table("D1118", protein="10.8", friability="82"),
    truth("D1118", **RIGHT, doubtful="total_protein friability"),
    draw=(covered("10.8", "10.5"), covered("82", "86")),
)

sheet(
    "blackened-result",
    "A number is covered by a black box.",
    _table("D1108", protein="11.2"),
    truth("D1108", moisture="4.3", extract_fine_dry="81.4", friability="86"),
    draw=covered("11.2", fill=0.0),
)

sheet(
    "pale-text-of-the-form",
    "The form's example values in pale grey, the results typed beside them.",
    _table("D1109", protein="", friability=""),
    truth("D1109", moisture="4.3", extract_fine_dry="81.4", doubtful="*"),
    draw=(beside("81.4", "11.2", dx=-17, dy=15.7, grey=0.9), beside("81.4", "82", dx=-17, dy=31.4, grey=0.9)),
)

sheet(
    "remark-with-other-value",
    "A remark beside the row mentions another value.",
    """
# Certificate of Analysis
Pilsner malt   Batch: D1110    Methods: EBC

Parameter | Unit | Result | Remark
Moisture | % | 4.3 | last time 4.6
Extract fine grind, dry | % | 81.4 | contract 81.0
Protein, dry | % | 10.5 | 11.2 at your laboratory
Friability | % | 86 | was 82 in October
""",
    truth("D1110", **RIGHT, doubtful="*"),
)

sheet(
    "arrow-to-corrected-value",
    "'11.2 → 10.5' in one cell.",
    _table("D1111", protein="11.2 → 10.5"),
    truth("D1111", moisture="4.3", extract_fine_dry="81.4", friability="86", shown="10.5"),
)

sheet(
    "brackets-around-estimates",
    "A value in brackets is not accredited, one in square brackets is an estimate.",
    _table("D1112", protein="(10.5)", friability="[86]"),
    truth("D1112", **RIGHT, doubtful="total_protein friability"),
)


def _turned_note(paper: Paper) -> None:
    paper.turned(560, 500, "Friability 82 %   Moisture 4.6 %   Extract 80.7 %", 90, 9)


sheet(
    "turned-margin",
    "The margin, turned by 90 degrees, repeats other values.",
    _table("D1113"),
    truth("D1113", **RIGHT, doubtful="*"),
    draw=_turned_note,
)


def _slanted_stamp(paper: Paper) -> None:
    at = paper.where["10.5"]
    paper.turned(at.x0 + 30, at.bottom + 14, "REJECTED 11.2", 20, 12, 0.3)


sheet(
    "stamp-with-number",
    "A slanted stamp with another number over the remarks.",
    _table("D1114"),
    truth("D1114", **RIGHT, doubtful="*"),
    draw=_slanted_stamp,
)


def _second_text_layer(paper: Paper) -> None:
    for first, other in (("4.3", "4.6"), ("81.4", "80.7"), ("10.5", "11.2"), ("86", "82")):
        at = paper.where[first]
        paper.canvas.saveState()
        text = paper.canvas.beginText(at.x0, paper.height - at.top - 0.8 * paper.size)
        text.setFont("Helvetica", paper.size)
        text.setTextRenderMode(3)
        text.textLine(other)
        paper.canvas.drawText(text)
        paper.canvas.restoreState()


sheet(
    "invisible-layer-with-other-values",
    "An invisible text layer lies over the visible one and says something else.",
    _table("D1115"),
    truth("D1115", **RIGHT, doubtful="*"),
    draw=_second_text_layer,
)


def _overprint(paper: Paper) -> None:
    at = paper.where["10.5"]
    paper.write(at.x0 + 1.2, at.top + 0.8, "11.2")


sheet(
    "two-numbers-on-each-other",
    "Two numbers printed on each other.",
    _table("D1116"),
    truth("D1116", moisture="4.3", extract_fine_dry="81.4", friability="86"),
    draw=_overprint,
)

sheet(
    "tick-boxes-between",
    "Crossed boxes and ticks beside results, as words of the text layer.",
    """
# Certificate of Analysis
Pilsner malt   Batch: D1117    Methods: EBC

Parameter | Unit | Result | OK | 1 | 2 | 3
Moisture | % | 4.3 | x | 1 | |
Extract fine grind, dry | % | 81.4 | x | | 2 |
Protein, dry | % | 10.5 | x | | | 3
Friability | % | 86 | x | 1 | |
""",
    truth("D1117", **RIGHT, doubtful="*"),
)
