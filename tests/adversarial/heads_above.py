"""Heads in two lines, heads that say little, columns without a head, and what stands beside a table."""

from tests.adversarial.case import sheet, truth

RIGHT = {"moisture": "4.3", "extract_fine_dry": "81.4", "total_protein": "10.5", "friability": "86"}
NAMED = {"malt": "Pilsner malt", "supplier": "Cotterdale Maltings Ltd"}
HEAD = """
# Cotterdale Maltings Ltd
Product: Pilsner malt
Lot no.: {}
Methods: EBC
"""

ROWS = """Moisture | % | {0} | {1}
Extract fine grind, dry | % | {2} | {3}
Protein, dry | % | {4} | {5}
Friability | % | {6} | {7}"""
FIRST = ROWS.format("4.3", "4.6", "81.4", "80.7", "10.5", "11.2", "86", "82")
LAST = ROWS.format("4.6", "4.3", "80.7", "81.4", "11.2", "10.5", "82", "86")
BOTH = "4.3 81.4 10.5 86"


def _heads(lot: str, heads: str, rows: str) -> str:
    return f"{HEAD.format(lot)}\nParameter | Unit | {heads}\n{rows}\n"


sheet(
    "customer-over-value",
    "Heads in two lines: 'Customer | Measured' over 'value | value'.",
    HEAD.format("H1301") + f"\nParameter | Unit | Customer | Measured\n | | value | value\n{LAST}\n",
    truth("H1301", **RIGHT, doubtful="*", head=NAMED),
)

sheet(
    "two-laboratories",
    "The maltster's laboratory and a neutral one, side by side.",
    _heads("H1302", "Neutral laboratory | Own laboratory", LAST),
    truth("H1302", shown="4.6 80.7 11.2 82", **RIGHT, doubtful="*", head=NAMED),
)

sheet(
    "column-called-ebc-holds-limits",
    "The column 'EBC' holds what the EBC recommends.",
    _heads("H1303", "EBC | Lot", LAST),
    truth("H1303", **RIGHT, doubtful="*", head=NAMED),
)

sheet(
    "ebc-beside-result",
    "The results in the column 'Result', other figures under 'EBC'.",
    _heads("H1304", "EBC | Result", LAST),
    truth("H1304", **RIGHT, doubtful="*", head=NAMED),
)

sheet(
    "three-years-last-is-this",
    "Columns of three years; the lot is of the last of them.",
    HEAD.format("H1305")
    + """Crop year: 2025

Parameter | Unit | 2023 | 2024 | 2025
Moisture | % | 4.7 | 4.6 | 4.3
Extract fine grind, dry | % | 80.2 | 80.7 | 81.4
Protein, dry | % | 11.4 | 11.2 | 10.5
Friability | % | 80 | 82 | 86
""",
    truth("H1305", **RIGHT, doubtful="*", head=NAMED),
)

sheet(
    "contract-last-delivery",
    "Contract, last delivery, and this one.",
    HEAD.format("H1306")
    + """
Parameter | Unit | Contract | Last | Delivery
Moisture | % | 4.7 | 4.6 | 4.3
Extract fine grind, dry | % | 80.2 | 80.7 | 81.4
Protein, dry | % | 11.4 | 11.2 | 10.5
Friability | % | 80 | 82 | 86
""",
    truth("H1306", **RIGHT, doubtful="*", head=NAMED),
)

sheet(
    "last-delivery-named-delivery",
    "'Delivery 12 Sept.' and 'Delivery 14 Nov.' side by side; the head dates the certificate November.",
    _heads("H1307", "Delivery 12 Sept. | Delivery 14 Nov.", LAST).replace("Methods", "Date: 14.11.2025\nMethods"),
    truth("H1307", **RIGHT, doubtful="*", head=NAMED),
)

sheet(
    "uncertainty-without-head",
    "No heads at all: the result, then its uncertainty.",
    HEAD.format("H1308")
    + """
Moisture | 4.3 | 0.2 | %
Extract fine grind, dry | 81.4 | 0.5 | %
Protein, dry | 10.5 | 0.3 | %
Friability | 86 | 3 | %
""",
    truth("H1308", **RIGHT, doubtful="*", head=NAMED),
)

sheet(
    "uncertainty-first-without-head",
    "No heads at all: the number of determinations, then the result.",
    HEAD.format("H1309")
    + """
Moisture | 2 | 4.3 | %
Extract fine grind, dry | 2 | 81.4 | %
Protein, dry | 3 | 10.5 | %
Friability | 2 | 86 | %
""",
    truth("H1309", **RIGHT, doubtful="*", head=NAMED),
)

sheet(
    "count-mean-scatter",
    "Heads n, x, s: the number of tests, the mean and the scatter.",
    HEAD.format("H1310")
    + """
Parameter | Unit | n | x | s
Moisture | % | 6 | 4.3 | 0.1
Extract fine grind, dry | % | 6 | 81.4 | 0.2
Protein, dry | % | 6 | 10.5 | 0.1
Friability | % | 6 | 86 | 1.2
""",
    truth("H1310", **RIGHT, doubtful="*", head=NAMED),
)

sheet(
    "points-beside-results",
    "Points from 1 to 10 are given for each figure; their column is called 'Value'.",
    HEAD.format("H1311")
    + """
Parameter | Unit | Found | Value
Moisture | % | 4.3 | 8
Extract fine grind, dry | % | 81.4 | 9
Protein, dry | % | 10.5 | 9
Friability | % | 86 | 7
""",
    truth("H1311", **RIGHT, doubtful="*", head=NAMED),
)

sheet(
    "result-between-limits-without-head",
    "The result stands without a head between Min. and Max.",
    HEAD.format("H1312")
    + """
Parameter | Unit | Min. | | Max.
Moisture | % | 3.5 | 4.3 | 5.0
Extract fine grind, dry | % | 81.0 | 81.4 | 83.0
Protein, dry | % | 9.5 | 10.5 | 11.5
Friability | % | 80 | 86 | 95
""",
    truth("H1312", **RIGHT, doubtful="*", head=NAMED),
)

sheet(
    "limits-close-together",
    "'Min. Max.' as one text over two columns that nearly meet, the result behind them.",
    HEAD.format("H1313")
    + """
@50 *Parameter* @200 *Unit* @250 *Min. Max.* @330 *Result*
@50 Moisture @200 % @252 3.5 @276 5.0 @335 4.3
@50 Extract fine grind, dry @200 % @248 81.0 @272 83.0 @335 81.4
@50 Protein, dry @200 % @252 9.5 @272 11.5 @335 10.5
@50 Friability @200 % @254 80 @277 95 @335 86
""",
    truth("H1313", **RIGHT, doubtful="*", head=NAMED),
)

sheet(
    "result-close-to-limits",
    "Result, min. and max. so close that numbers are a word space apart.",
    HEAD.format("H1314")
    + """
@50 *Parameter* @200 *Unit* @240 *Min.* @262 *Max.* @286 *Result*
@50 Moisture @200 % @243 3.5 @264 5.0 @284 4.3
@50 Extract fine grind, dry @200 % @239 81.0 @260 83.0 @281 81.4
@50 Protein, dry @200 % @243 9.5 @260 11.5 @281 10.5
@50 Friability @200 % @245 80 @266 95 @286 86
""",
    truth("H1314", **RIGHT, doubtful="*", head=NAMED),
)

sheet(
    "method-numbers-before-names",
    "Numbers of methods before the names look like results before names.",
    HEAD.format("H1315")
    + """
4.2 | Moisture | % | 4.3
4.5 | Extract fine grind, dry | % | 81.4
4.3 | Protein, dry | % | 10.5
4.15 | Friability | % | 86
""",
    truth("H1315", **RIGHT, doubtful="*", head=NAMED),
)

sheet(
    "numbers-in-names",
    "Numbers of paragraphs in one cell with the names.",
    HEAD.format("H1316")
    + """
Analysis | Value | Guaranteed
3.5 Moisture (%) | 4.3 | 4.6
3.6 Extract fine grind, dry (%) | 81.4 | 80.7
3.7 Protein, dry (%) | 10.5 | 11.2
3.8 Friability (%) | 86 | 82
""",
    truth("H1316", **RIGHT, doubtful="*", head=NAMED),
)

sheet(
    "sidebar-of-last-lot",
    "Beside the table stands a box with the last lot delivered and its figures.",
    HEAD.format("H1317")
    + """
@50 *Parameter* @190 *Unit* @230 *Result* @340 *Last delivery*
@50 Moisture @190 % @235 4.3 @340 Lot no.: H1309
@50 Extract fine grind, dry @190 % @235 81.4 @340 Moisture: 4.6 %
@50 Protein, dry @190 % @235 10.5 @340 Quantity: 24 t
@50 Friability @190 % @235 86 @340 Delivered: 12.09.2025
""",
    truth("H1317", **RIGHT, doubtful="*", head=NAMED),
)

sheet(
    "sidebar-of-customer",
    "Left of the table stands a block with the customer's article and the contract.",
    """
# Cotterdale Maltings Ltd
Certificate of Analysis

@50 Lot no. @170 *Parameter* @330 *Unit* @370 *Value*
@50 H1318 @170 Moisture @330 % @375 4.3
@50 Contract @170 Extract fine grind, dry @330 % @375 81.4
@50 K-2231 @170 Protein, dry @330 % @375 10.5
@50 Your article @170 Friability @330 % @375 86
@50 Munich malt M-20
""",
    truth("H1318", **RIGHT, doubtful="*", head={"malt": "Munich malt M-20", "supplier": "Cotterdale Maltings Ltd"}),
)

sheet(
    "lot-over-typical",
    "'Lot' heads the values of the lot, beside 'Typical'; a second table has 'Lot' over limits.",
    _heads("H1319", "Lot | Typical", FIRST)
    + """
Parameter | Unit | Guaranteed for the lot
Viscosity | mPa.s | 1.60
Kolbach index | % | 38
""",
    truth("H1319", **RIGHT, doubtful="*", head=NAMED),
)

sheet(
    "previous-lot-in-the-heads",
    "Columns are headed with lot numbers; the second lot is the one delivered before.",
    _heads("H1320", "H1320 | H1309 (last delivery)", FIRST),
    truth("H1320", **RIGHT, doubtful="*", head=NAMED),
    truth("H1309", moisture="4.6", extract_fine_dry="80.7", total_protein="11.2", friability="82", doubtful="*"),
)

sheet(
    "ist-after-soll-in-two-lines",
    "German heads in two lines: 'Vertrag' over both limits, 'Probe' over nothing but the unit's line.",
    """
# Mälzerei Hohenried GmbH
Produkt: Pilsner Malz
Charge: H1321
Methoden: MEBAK

Merkmal | Vertrag | << | Ware
 | von | bis |
Wassergehalt % | 3,5 | 5,0 | 4,3
Eiweiß, wfr. % | 9,5 | 11,5 | 10,5
Friabilimeterwert % | 80 | 95 | 86
""",
    truth(
        "H1321",
        moisture="4,3",
        total_protein="10,5",
        friability="86",
        doubtful="*",
        head={"malt": "Pilsner Malz", "supplier": "Mälzerei Hohenried GmbH"},
    ),
)

sheet(
    "danish-krav-and-fundet",
    "Danish heads: the demand before the finding.",
    """
# Maltfabrikken Vesterlund A/S
Produkt: Pilsnermalt
Parti nr.: H1322
Metoder: EBC

Parameter | Enhed | Krav | Fundet
Vandindhold | % | 4,6 | 4,3
Protein, tørstof | % | 11,2 | 10,5
Friabilitet | % | 82 | 86
""",
    truth(
        "H1322",
        moisture="4,3",
        total_protein="10,5",
        friability="86",
        doubtful="*",
        head={"malt": "Pilsnermalt", "supplier": "Maltfabrikken Vesterlund A/S"},
    ),
)

sheet(
    "units-and-limits-meet",
    "Values, units and the limit are typed without wide spaces: '4.3 % 5.0'.",
    HEAD.format("H1323")
    + """
@50 *Parameter* @200 *Result* @236 *Max.*
@50 Moisture @200 4.3 % 5.0
@50 Extract fine grind, dry @200 81.4 % 83.0
@50 Protein, dry @200 10.5 % 11.5
@50 Friability @200 86 % 95
""",
    truth("H1323", **RIGHT, doubtful="*", head=NAMED),
)

sheet(
    "our-value-your-value",
    "'Your value' and 'Our value': the maltster writes of the brewery's own test.",
    _heads("H1324", "Your value | Our value", LAST),
    truth("H1324", **RIGHT, shown="4.6 80.7 11.2 82", doubtful="*", head=NAMED),
)
