"""Batches in rows: which row is one, and which column a value belongs to."""

from tests.adversarial.case import sheet, truth

NAMED = {"malt": "Pilsner malt", "supplier": "Harrowby Maltings Ltd"}
TOP = """
# Harrowby Maltings Ltd
Product: Pilsner malt    Methods: EBC
"""
HEADS = "Lot no. | Moisture % | Extract fine, dry % | Protein, dry % | Friability %"


def _figures(moisture: str, extract: str, protein: str, friability: str) -> dict[str, str]:
    return {
        "moisture": moisture,
        "extract_fine_dry": extract,
        "total_protein": protein,
        "friability": friability,
    }


FIRST = _figures("4.3", "81.4", "10.5", "86")
SECOND = _figures("4.6", "80.7", "11.2", "82")

sheet(
    "season-mean-as-row",
    "Between the lots stands the mean of season 24/25, which looks like a number.",
    TOP
    + f"""
{HEADS}
R1201 | 4.3 | 81.4 | 10.5 | 86
R1202 | 4.6 | 80.7 | 11.2 | 82
Ø 2024/25 | 4.5 | 81.0 | 10.9 | 84
""",
    truth("R1201", **FIRST, doubtful="*", head=NAMED),
    truth("R1202", **SECOND, doubtful="*", head=NAMED),
)

sheet(
    "contract-number-as-row",
    "A row holds the values of contract K-2231, the others are lots.",
    TOP
    + f"""
{HEADS}
R1203 | 4.3 | 81.4 | 10.5 | 86
Contract K-2231 | 5.0 | 80.5 | 11.5 | 80
R1204 | 4.6 | 80.7 | 11.2 | 82
""",
    truth("R1203", **FIRST, doubtful="*", head=NAMED),
    truth("R1204", **SECOND, doubtful="*", head=NAMED),
)

sheet(
    "average-of-lots-as-row",
    "The last row is the weighted average of lots R1205-R1206.",
    TOP
    + f"""
{HEADS}
R1205 | 4.3 | 81.4 | 10.5 | 86
R1206 | 4.6 | 80.7 | 11.2 | 82
Average R1205-R1206 | 4.4 | 81.1 | 10.8 | 84
""",
    truth("R1205", **FIRST, doubtful="*", head=NAMED),
    truth("R1206", **SECOND, doubtful="*", head=NAMED),
)

sheet(
    "totals-in-polish",
    "Rows of lots in Polish with a mean, a minimum and a maximum below.",
    """
# Słodownia Brzozowa Sp. z o.o.
Produkt: Słód pilzneński    Metody: EBC

Nr partii | Wilgotność % | Białko w s.m. % | Kruchość % | Lepkość mPa.s
R1207 | 4,3 | 10,5 | 86 | 1,52
R1208 | 4,6 | 11,2 | 82 | 1,56
Średnia | 4,5 | 10,9 | 84 | 1,54
Min. | 4,3 | 10,5 | 82 | 1,52
Maks. | 4,6 | 11,2 | 86 | 1,56
""",
    truth(
        "R1207",
        moisture="4,3",
        total_protein="10,5",
        friability="86",
        viscosity="1,52",
        doubtful="*",
        head={"malt": "Słód pilzneński", "supplier": "Słodownia Brzozowa Sp. z o.o."},
    ),
    truth(
        "R1208",
        moisture="4,6",
        total_protein="11,2",
        friability="82",
        viscosity="1,56",
        doubtful="*",
        head={"malt": "Słód pilzneński", "supplier": "Słodownia Brzozowa Sp. z o.o."},
    ),
)

sheet(
    "cell-missing-in-a-row",
    "Lines without rules; one lot has no protein, and its friability stands between the columns.",
    TOP
    + """
@50 *Lot no.* @120 *Moisture %* @200 *Protein, dry %* @290 *Kolbach %* @360 *Friability %*
@50 R1209 @130 4.3 @215 10.5 @300 41 @375 86
@50 R1210 @130 4.6 @300 39 @375 82
@50 R1211 @130 4.4 @215 10.8 @300 40 @375 84
""",
    truth("R1209", moisture="4.3", total_protein="10.5", nitrogen_ratio="41", friability="86", head=NAMED),
    truth("R1210", moisture="4.6", nitrogen_ratio="39", friability="82", head=NAMED),
    truth("R1211", moisture="4.4", total_protein="10.8", nitrogen_ratio="40", friability="84", head=NAMED),
)

sheet(
    "cells-shifted-in-a-row",
    "One value is missing, the others were typed one column too far left: nothing can be said of this row.",
    TOP
    + """
@50 *Lot no.* @120 *Extract fine, dry %* @220 *Extract coarse, dry %* @330 *Kolbach %* @400 *Hartong 45 %*
@50 R1212 @140 81.4 @240 80.1 @345 41.0 @420 38.2
@50 R1213 @140 80.0 @240 39.5 @345 37.4
@50 R1214 @140 81.0 @240 79.6 @345 40.2 @420 37.9
""",
    truth(
        "R1212",
        extract_fine_dry="81.4",
        extract_coarse_dry="80.1",
        nitrogen_ratio="41.0",
        relative_extract_45="38.2",
        doubtful="*",
        head=NAMED,
    ),
    truth("R1213", extract_fine_dry="80.0", shown="39.5 37.4", doubtful="*", head=NAMED),
    truth(
        "R1214",
        extract_fine_dry="81.0",
        extract_coarse_dry="79.6",
        nitrogen_ratio="40.2",
        relative_extract_45="37.9",
        doubtful="*",
        head=NAMED,
    ),
)

sheet(
    "lot-tested-again",
    "One lot stands in two rows with different values: it was tested twice.",
    TOP
    + f"""
{HEADS}
R1215 | 4.3 | 81.4 | 10.5 | 86
R1215 | 4.6 | 80.7 | 11.2 | 82
R1216 | 4.4 | 81.1 | 10.9 | 84
""",
    truth("R1215", shown="4.3 81.4 10.5 86 4.6 80.7 11.2 82", head=NAMED),
    truth("R1216", **_figures("4.4", "81.1", "10.9", "84"), doubtful="*", head=NAMED),
)

sheet(
    "trucks-before-lots",
    "The first column holds number plates, the second lots.",
    TOP
    + """
Truck | Lot no. | Moisture % | Extract fine, dry % | Protein, dry % | Friability %
WX-4471 | R1217 | 4.3 | 81.4 | 10.5 | 86
WX-9902 | R1218 | 4.6 | 80.7 | 11.2 | 82
""",
    truth("R1217", **FIRST, doubtful="*", head=NAMED),
    truth("R1218", **SECOND, doubtful="*", head=NAMED),
)

sheet(
    "plates-without-head-before-lots",
    "Number plates of trucks in a first column without a head, the lots in the last one.",
    TOP
    + """
 | Moisture % | Extract fine, dry % | Protein, dry % | Friability % | Lot no.
WX4471 | 4.3 | 81.4 | 10.5 | 86 | R1219
WX9902 | 4.6 | 80.7 | 11.2 | 82 | R1220
""",
    truth("R1219", **FIRST, doubtful="*", head=NAMED),
    truth("R1220", **SECOND, doubtful="*", head=NAMED),
)

sheet(
    "breweries-in-the-first-column",
    "The first column names the breweries that were supplied.",
    """
# Harrowby Maltings Ltd
Product: Pilsner malt    Methods: EBC
Deliveries of week 46

 | Lot no. | Moisture % | Extract fine, dry % | Protein, dry % | Friability %
Moorgate Brewery | R1221 | 4.3 | 81.4 | 10.5 | 86
Wheat Sheaf Brewery | R1222 | 4.6 | 80.7 | 11.2 | 82
""",
    truth("R1221", **FIRST, doubtful="*", head=NAMED),
    truth("R1222", **SECOND, doubtful="*", head=NAMED),
)

sheet(
    "sampled-days-without-lots",
    "Rows are days of one lot that the head names.",
    """
# Harrowby Maltings Ltd
Product: Pilsner malt    Lot no.: R1223    Methods: EBC

Sampled | Moisture % | Extract fine, dry % | Protein, dry % | Friability %
10.11.2025 | 4.3 | 81.4 | 10.5 | 86
11.11.2025 | 4.6 | 80.7 | 11.2 | 82
""",
    truth("R1223", shown="4.3 81.4 10.5 86 4.6 80.7 11.2 82", head=NAMED),
)

sheet(
    "second-table-without-lots",
    "Below a table of lots stands one with other heads, which counts its rows only, in reverse order.",
    TOP
    + f"""
{HEADS}
R1224 | 4.3 | 81.4 | 10.5 | 86
R1225 | 4.6 | 80.7 | 11.2 | 82

No. | Viscosity mPa.s | Kolbach % | pH | FAN mg/l
2 | 1.56 | 39.1 | 5.88 | 144
1 | 1.52 | 41.2 | 5.94 | 152
""",
    truth("R1224", **FIRST, doubtful="*", head=NAMED),
    truth("R1225", **SECOND, doubtful="*", head=NAMED),
)

sheet(
    "second-table-other-lots",
    "Two tables below each other with other heads; the second has the lots in another order.",
    TOP
    + f"""
{HEADS}
R1226 | 4.3 | 81.4 | 10.5 | 86
R1227 | 4.6 | 80.7 | 11.2 | 82

Lot no. | Viscosity mPa.s | Kolbach % | pH | FAN mg/l
R1227 | 1.56 | 39.1 | 5.88 | 144
R1226 | 1.52 | 41.2 | 5.94 | 152
""",
    truth(
        "R1226",
        **FIRST,
        viscosity="1.52",
        nitrogen_ratio="41.2",
        wort_ph="5.94",
        free_amino_nitrogen="152",
        doubtful="*",
        head=NAMED,
    ),
    truth(
        "R1227",
        **SECOND,
        viscosity="1.56",
        nitrogen_ratio="39.1",
        wort_ph="5.88",
        free_amino_nitrogen="144",
        doubtful="*",
        head=NAMED,
    ),
)

sheet(
    "weights-that-look-like-lots",
    "The first column is the weight, four digits and a dash; the lots stand last and look like figures.",
    TOP
    + """
Net kg | Moisture % | Protein, dry % | Friability % | Lot
24860 | 4.3 | 10.5 | 86 | 81.4
25120 | 4.6 | 11.2 | 82 | 80.7
""",
    truth(None, moisture="4.3", total_protein="10.5", friability="86", doubtful="*", head=NAMED),
    truth(None, moisture="4.6", total_protein="11.2", friability="82", doubtful="*", head=NAMED),
)

sheet(
    "figures-under-lot-head",
    "Four-digit figures of beta-glucan stand right of the lots, both without a space between their heads.",
    TOP
    + """
Lot | Beta-glucan mg/l | Moisture % | Protein, dry % | Friability %
2511 | 1210 | 4.3 | 10.5 | 86
2512 | 1180 | 4.6 | 11.2 | 82
""",
    truth("2511", moisture="4.3", total_protein="10.5", friability="86", beta_glucan="1210", doubtful="*", head=NAMED),
    truth("2512", moisture="4.6", total_protein="11.2", friability="82", beta_glucan="1180", doubtful="*", head=NAMED),
)

sheet(
    "sample-mark-against-the-head",
    "The head names the lot; the one row of the table names the sample of the laboratory.",
    """
# Harrowby Maltings Ltd
Product: Pilsner malt    Lot no.: R1230    Methods: EBC

 | Moisture % | Extract fine, dry % | Protein, dry % | Friability %
S-10422 | 4.3 | 81.4 | 10.5 | 86
""",
    truth("R1230", **FIRST, doubtful="*", head=NAMED),
)

sheet(
    "malts-of-rows-in-german",
    "Rows of lots of different malts, the head names one of them as the main product.",
    """
# Mälzerei Hohenried GmbH
Sammelzertifikat    Methoden: MEBAK
Produkt: Pilsner Malz

Charge | Sorte | Wassergehalt % | Eiweiß, wfr. % | Friabilimeterwert %
R1231 | Pilsner Malz | 4,3 | 10,5 | 86
R1232 | Wiener Malz | 4,6 | 11,2 | 82
""",
    truth(
        "R1231",
        moisture="4,3",
        total_protein="10,5",
        friability="86",
        doubtful="*",
        head={"malt": "Pilsner Malz", "supplier": "Mälzerei Hohenried GmbH"},
    ),
    truth(
        "R1232",
        moisture="4,6",
        total_protein="11,2",
        friability="82",
        doubtful="*",
        head={"malt": "Wiener Malz", "supplier": "Mälzerei Hohenried GmbH"},
    ),
)
