"""Other ways to mislead with the same ideas: columns of samples, rows of samples, headings, inline results."""

from tests.adversarial.case import Right, sheet, truth

RIGHT = {"moisture": "4.3", "extract_fine_dry": "81.4", "total_protein": "10.5", "friability": "86"}
OTHER = {"moisture": "4.6", "extract_fine_dry": "80.7", "total_protein": "11.2", "friability": "82"}
ALL = "4.3 81.4 10.5 86 4.6 80.7 11.2 82"

ROWS = """Moisture | % | {0} | {1}
Extract fine grind, dry | % | {2} | {3}
Protein, dry | % | {4} | {5}
Friability | % | {6} | {7}"""
FIRST = ROWS.format("4.3", "4.6", "81.4", "80.7", "10.5", "11.2", "86", "82")
LAST = ROWS.format("4.6", "4.3", "80.7", "81.4", "11.2", "10.5", "82", "86")


def _two_columns(batch: str, heads: str, rows: str) -> str:
    return f"""
# Certificate of Analysis
Pilsner malt   Batch: {batch}    Methods: EBC

Parameter | Unit | {heads}
{rows}
"""


sheet(
    "silos",
    "Two silos under one batch number.",
    _two_columns("V5101", "Silo 4 | Silo 7", FIRST),
    truth("V5101", shown=ALL),
)

sheet(
    "harvests-in-german",
    "Two harvests, the older one first, in German.",
    """
# Analysenzertifikat
Pilsner Malz   Charge: V5102    Methoden: MEBAK

Merkmal | Einheit | Ernte 2023 | Ernte 2024
Wassergehalt | % | 4,6 | 4,3
Eiweiß, wfr. | % | 11,2 | 10,5
Friabilimeterwert | % | 82 | 86
""",
    truth("V5102", moisture="4,3", total_protein="10,5", friability="86", doubtful="*"),
)

sheet(
    "pilot-and-plant",
    "Pilot malting and plant.",
    _two_columns("V5103", "Pilot malting | Plant", LAST),
    truth("V5103", **RIGHT, doubtful="*"),
)

sheet(
    "retained-sample-last",
    "Result and retained sample.",
    _two_columns("V5104", "Result | Retained sample", FIRST),
    truth("V5104", **RIGHT, doubtful="*"),
)

sheet(
    "sample-before-result",
    "Pre-shipment sample before the result.",
    _two_columns("V5105", "Pre-shipment sample | Result", LAST),
    truth("V5105", **RIGHT, doubtful="*"),
)

sheet(
    "as-is-and-dry-columns",
    "The moisture basis stands in the heads of two result columns.",
    """
# Certificate of Analysis
Pilsner malt   Batch: V5106    Methods: EBC

Parameter | Unit | as is | dry basis
Moisture | % | 4.3 |
Extract fine grind | % | 77.9 | 81.4
Total protein | % | 10.0 | 10.5
""",
    truth(
        "V5106",
        moisture="4.3",
        extract_fine_dry="81.4",
        extract_fine_as_is="77.9",
        total_protein="10.5",
        doubtful="*",
    ),
)

sheet(
    "limits-and-last-year-as-rows",
    "A table on its side: rows for limits, last year and the result.",
    """
# Certificate of Analysis
Pilsner malt   Batch: V5107    Methods: EBC

 | Moisture % | Extract fine, dry % | Protein, dry % | Friability %
Maximum | 5.0 | 83.0 | 11.5 | 92
Last year | 4.6 | 80.7 | 11.2 | 82
Result | 4.3 | 81.4 | 10.5 | 86
""",
    truth("V5107", **RIGHT, doubtful="*"),
)

sheet(
    "mean-and-contract-as-rows",
    "Batches as rows, between them a mean and the contract.",
    """
# Certificate of Analysis
Pilsner malt    Methods: EBC

Batch | Moisture % | Extract fine, dry % | Protein, dry % | Friability %
Contract | 5.0 | 81.0 | 11.0 | 85
V5108 | 4.3 | 81.4 | 10.5 | 86
Mean | 4.5 | 81.1 | 10.9 | 84
V5109 | 4.6 | 80.7 | 11.2 | 82
""",
    truth("V5108", **RIGHT, doubtful="*"),
    truth("V5109", **OTHER, doubtful="*"),
)

sheet(
    "sales-specification-below",
    "A sales specification with single values below the results.",
    """
# Certificate of Analysis
Pilsner malt   Batch: V5110    Methods: EBC

Parameter | Unit | Result
Moisture | % | 4.3
Extract fine grind, dry | % | 81.4

Sales specification
Parameter | Unit | Value
Moisture | % | 4.6
Colour | EBC | 4.1
Viscosity | mPa.s | 1.56
""",
    truth("V5110", moisture="4.3", extract_fine_dry="81.4", doubtful="*"),
)

sheet(
    "contract-values-in-lines",
    "Contract values as lines of text below the results.",
    """
# Certificate of Analysis
Pilsner malt   Batch: V5111    Methods: EBC

Parameter | Unit | Result
Moisture | % | 4.3
Extract fine grind, dry | % | 81.4

Contract values:
Protein, dry: 11.2 %
Friability: 82 %
Colour: 4.1 EBC
""",
    truth("V5111", moisture="4.3", extract_fine_dry="81.4", doubtful="*"),
)

sheet(
    "raw-barley-in-lines",
    "The barley as lines of text above the results.",
    """
# Certificate of Analysis
Pilsner malt   Batch: V5112    Methods: EBC

Malted from barley of the variety Brindale with:
Protein, dry: 11.2 %
Thousand corn weight: 45.2 g

Parameter | Unit | Result
Moisture | % | 4.3
Extract fine grind, dry | % | 81.4
""",
    truth("V5112", moisture="4.3", extract_fine_dry="81.4", doubtful="*"),
)

sheet(
    "previous-batch-in-header",
    "The header names the previous batch before the own one.",
    """
# Certificate of Analysis
Previous batch: V5100
Batch: V5113    Methods: EBC

Parameter | Unit | Result
Moisture | % | 4.3
Extract fine grind, dry | % | 81.4
""",
    truth("V5113", moisture="4.3", extract_fine_dry="81.4", doubtful="*"),
)

sheet(
    "replaces-other-certificate",
    "A sentence names the certificate and the value that this one replaces.",
    """
# Certificate of Analysis
Pilsner malt   Batch: V5114    Methods: EBC
Replaces the certificate of 12.10.2025, where the moisture was given as 4.6 %.

Parameter | Unit | Result
Moisture | % | 4.3
Extract fine grind, dry | % | 81.4
""",
    truth("V5114", moisture="4.3", extract_fine_dry="81.4", doubtful="moisture"),
)

sheet(
    "inline-target-and-result",
    "Target and result within one line of text.",
    """
Certificate of Analysis
Batch: V5115    Methods: EBC

Moisture: target 4.6 %, result 4.3 %
Friability: target 82 %, result 86 %
Colour: target 4.1 EBC, result 3.6 EBC
""",
    truth("V5115", moisture="4.3", friability="86", colour="3.6", doubtful="*"),
)

sheet(
    "groups-left-of-fine-and-coarse",
    "'dry' and 'as is' rows under a merged label, the order not the usual one.",
    """
# Certificate of Analysis
Pilsner malt   Batch: V5116    Methods: EBC

Parameter | Basis | Unit | Result
Extract fine grind | as is | % | 77.9
^^ | dry | % | 81.4
Moisture | | % | 4.3
""",
    truth("V5116", extract_fine_as_is="77.9", extract_fine_dry="81.4", moisture="4.3", doubtful="*"),
)

sheet(
    "cast-wort-in-german",
    "'Ausschlagwürze' with its strength in GG-% as a section.",
    """
# Analysenzertifikat
Pilsner Malz   Charge: V5117    Methoden: MEBAK

Merkmal | Einheit | Ergebnis
Wassergehalt | % | 4,3
Ausschlagwürze 12 GG-%
Farbe | EBC | 7,9
Viskosität | mPa.s | 1,78
FAN | mg/l | 214
""",
    truth("V5117", moisture="4,3", shown="7,9 1,78 214"),
)

sheet(
    "laboratory-wort-strength",
    "The strength of the ordinary Congress wort is no reason to look.",
    """
# Certificate of Analysis
Pilsner malt   Batch: V5118    Methods: EBC

Parameter | Unit | Result
Moisture | % | 4.3
Viscosity (8.6 %) | mPa.s | 1.52
Free amino nitrogen (8.6 °P) | mg/l | 152
Beta-glucan, wort 8.6 % | mg/l | 165
""",
    truth("V5118", moisture="4.3", viscosity="1.52", free_amino_nitrogen="152", beta_glucan="165"),
)

sheet(
    "protein-as-nitrogen-in-brackets",
    "Protein with its nitrogen in brackets, and the other way round.",
    """
# Certificate of Analysis
Pilsner malt   Batch: V5119    Methods: EBC

Parameter | Unit | Result
Moisture | % | 4.3
Total protein (N), dry | % | 10.5 (1.68)
Soluble nitrogen (protein), dry | % | 0.69 (4.31)
""",
    truth(
        "V5119",
        moisture="4.3",
        total_protein=Right("10.5", 10.5),
        soluble_nitrogen=Right("0.69", 0.69),
        doubtful="*",
        shown="1.68 4.31",
    ),
)

sheet(
    "ratio-as-fraction",
    "The soluble nitrogen ratio as a fraction under a percent sign.",
    """
# Certificate of Analysis
Pilsner malt   Batch: V5120    Methods: EBC

Parameter | Unit | Result
Moisture | % | 4.3
Kolbach index | % | 0.411
Friability | % | 0.86
""",
    truth("V5120", moisture="4.3", shown="0.411 0.86"),
)

sheet(
    "two-colours-in-a-cell",
    "Plain and boiled colour in one cell.",
    """
# Certificate of Analysis
Pilsner malt   Batch: V5121    Methods: EBC

Parameter | Unit | Result
Moisture | % | 4.3
Colour / boiled colour | EBC | 3.6 / 5.4
Friability (glassy) | % | 86 (1.2)
""",
    truth("V5121", moisture="4.3", shown="3.6 5.4 86 1.2"),
)

sheet(
    "copy-for-file-differs",
    "Page 2 repeats the certificate of the same batch with other values.",
    """
# Certificate of Analysis
Pilsner malt   Batch: V5122    Methods: EBC

Parameter | Unit | Result
Moisture | % | 4.3
Extract fine grind, dry | % | 81.4
===
# Certificate of Analysis
Pilsner malt   Batch: V5122    Methods: EBC

Parameter | Unit | Result
Moisture | % | 4.6
Extract fine grind, dry | % | 80.7
""",
    truth("V5122", shown="4.3 81.4 4.6 80.7"),
)

sheet(
    "moisture-at-other-times",
    "Moisture after kilning, at loading, at delivery.",
    """
# Certificate of Analysis
Pilsner malt   Batch: V5123    Methods: EBC

Parameter | Unit | Result
Moisture after kilning | % | 3.9
Moisture at loading | % | 4.3
Moisture on arrival | % | 4.6
Friability | % | 86
""",
    truth("V5123", friability="86", shown="3.9 4.3 4.6"),
)
