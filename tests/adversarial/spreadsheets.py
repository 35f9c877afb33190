"""Workbooks and delimited text that mislead."""

from tests.adversarial.case import sheet, truth

RIGHT = {"moisture": "4.3", "extract_fine_dry": "81.4", "total_protein": "10.5", "friability": "86"}
OTHER = {"moisture": "4.6", "extract_fine_dry": "80.7", "total_protein": "11.2", "friability": "82"}

sheet(
    "workbook-last-year-column",
    "A workbook with the season before in the first number column.",
    """
Batch: X4101 | Methods: EBC
Parameter | Unit | Season 2024 | Season 2025
Moisture | % | 4.6 | 4.3
Extract fine grind, dry | % | 80.7 | 81.4
Protein, dry | % | 11.2 | 10.5
Friability | % | 82 | 86
""",
    truth("X4101", **RIGHT, doubtful="*"),
    form="xlsx",
)

sheet(
    "workbook-merged-batches",
    "A workbook with each batch number merged over value and limit.",
    """
Methods: EBC |
Parameter | Unit | Batch X4102 | << | Batch X4103 | <<
 | | Result | Max | Result | Max
Moisture | % | 4.3 | 5.0 | 4.6 | 5.0
Extract fine grind, dry | % | 81.4 | 83.0 | 80.7 | 83.0
Protein, dry | % | 10.5 | 11.5 | 11.2 | 11.5
Friability | % | 86 | 92 | 82 | 92
""",
    truth("X4102", **RIGHT),
    truth("X4103", **OTHER),
    form="xlsx",
)

sheet(
    "workbook-batches-down-mean-last",
    "Batches in rows, with mean and limits as further rows.",
    """
Methods: EBC |
Batch | Moisture % | Extract fine grind, dry % | Protein, dry % | Friability %
X4104 | 4.3 | 81.4 | 10.5 | 86
X4105 | 4.6 | 80.7 | 11.2 | 82
Mean | 4.5 | 81.1 | 10.9 | 84
Max | 5.0 | 83.0 | 11.5 | 92
""",
    truth("X4104", **RIGHT),
    truth("X4105", **OTHER),
    form="xlsx",
)

sheet(
    "csv-two-values",
    "Delimited text, two columns of numbers under heads that say little.",
    """
Batch: X4106 | EBC
Parameter | Unit | V1 | V2
Moisture | % | 4.3 | 4.6
Extract fine grind, dry | % | 81.4 | 80.7
Protein, dry | % | 10.5 | 11.2
Friability | % | 86 | 82
""",
    truth("X4106", shown="4.3 4.6 81.4 80.7 10.5 11.2 86 82"),
    form="csv",
)

sheet(
    "csv-barley-and-malt",
    "Delimited text with barley and malt blocks.",
    """
Batch: X4107 | EBC
Barley | |
Moisture | % | 12.8
Protein, dry | % | 11.2
Malt | |
Moisture | % | 4.3
Protein, dry | % | 10.5
""",
    truth("X4107", moisture="4.3", total_protein="10.5", doubtful="*"),
    form="csv",
)

sheet(
    "csv-comma-and-point",
    "Delimited text that mixes decimal comma and point.",
    """
Batch: X4108 | EBC
Parameter | Unit | Result
Moisture | % | 4,3
Extract fine grind, dry | % | 81.4
Free amino nitrogen | mg/l | 1.152
Diastatic power | WK | 1,310
""",
    truth("X4108", moisture="4,3", extract_fine_dry="81.4", doubtful="*", shown="1.152 1,310"),
    form="csv",
)

sheet(
    "workbook-sheet-of-last-batch-below",
    "A workbook with the batch before further down on the same page.",
    """
Batch: V5124 | Methods: EBC
Parameter | Unit | Result
Moisture | % | 4.3
Friability | % | 86
Batch: V5125 | Methods: EBC
Parameter | Unit | Result
Moisture | % | 4.6
Colour | EBC | 4.1
""",
    truth("V5124", moisture="4.3", friability="86"),
    truth("V5125", moisture="4.6", colour="4.1"),
    form="xlsx",
)

sheet(
    "csv-previous-batch-column",
    "Delimited text, the column of the previous batch named by its number alone.",
    """
Batch: V5126 | EBC
Parameter | Unit | V5126 | V5099
Moisture | % | 4.3 | 4.6
Protein, dry | % | 10.5 | 11.2
Friability | % | 86 | 82
""",
    truth("V5126", moisture="4.3", total_protein="10.5", friability="86", doubtful="*"),
    truth("V5099", moisture="4.6", total_protein="11.2", friability="82", doubtful="*"),
    form="csv",
)
