"""Which of the columns holds the result."""

from tests.adversarial.case import Right, sheet, truth

RIGHT = {
    "moisture": "4.3",
    "extract_fine_dry": "81.4",
    "total_protein": "10.5",
    "friability": "86",
    "viscosity": "1.52",
}

sheet(
    "limits-before-result",
    "The limits stand where the result is expected, the result in the last column.",
    """
# Certificate of Analysis
Pilsner Malt   Batch: K5101
Analysis methods: EBC

Parameter | Min | Max | Unit | Result
Moisture | 3.5 | 4.5 | % | 4.3
Extract fine grind, dry basis | 81.0 | 83.0 | % | 81.4
Total protein, dry basis | 9.5 | 11.0 | % | 10.5
Friability | 80 | 90 | % | 86
Viscosity (8.6 %) | 1.45 | 1.58 | mPa.s | 1.52
""",
    truth("K5101", **RIGHT),
)

sheet(
    "guaranteed-before-found",
    "'Guaranteed' and 'found' instead of 'limit' and 'result'; both columns look alike.",
    """
# Malt analysis
Lot No.: K5102    Methods: EBC

Test | Guaranteed | Found | Unit
Moisture | 4.6 | 4.3 | %
Extract fine grind, dry basis | 80.7 | 81.4 | %
Total protein, dry basis | 11.2 | 10.5 | %
Friability | 82 | 86 | %
Viscosity (8.6 %) | 1.56 | 1.52 | mPa.s
""",
    truth("K5102", **RIGHT, doubtful="*"),
)

sheet(
    "no-heads-two-numbers",
    "Two columns of numbers without heads: nothing says which is the result.",
    """
# Malt analysis certificate
Batch: K5103   EBC methods

Moisture % | 4.3 | 4.6
Extract fine, dry % | 81.4 | 80.7
Protein, dry % | 10.5 | 11.2
Friability % | 86 | 82
""",
    truth("K5103", shown="4.3 4.6 81.4 80.7 10.5 11.2 86 82"),
)

sheet(
    "value-and-value",
    "Two columns with the same head 'Value'.",
    """
# Malt analysis certificate
Batch: K5104   EBC methods

Parameter | Unit | Value | Value
Moisture | % | 4.3 | 4.6
Extract fine, dry | % | 81.4 | 80.7
Protein, dry | % | 10.5 | 11.2
Friability | % | 86 | 82
""",
    truth("K5104", shown="4.3 4.6 81.4 80.7 10.5 11.2 86 82"),
)

sheet(
    "typical-in-bold",
    "The typical values are bold and come first, the results are plain.",
    """
# Certificate of Analysis
Malt: Pale malt   Batch number: K5105
All analyses by EBC methods

Parameter | Typical | Actual | Unit
Moisture | *4.5* | 4.3 | %
Extract fine grind, dry | *81.0* | 81.4 | %
Protein, dry | *10.8* | 10.5 | %
Friability | *85* | 86 | %
Viscosity | *1.55* | 1.52 | mPa.s
""",
    truth("K5105", **RIGHT),
)

sheet(
    "typical-only",
    "The sheet of a batch that has typical values only: no result is printed.",
    """
# Product data
Pilsner Malt   Batch: K5106
Methods: EBC

Parameter | Typical value | Unit
Moisture | 4.3 | %
Extract fine grind, dry | 81.4 | %
Protein, dry | 10.5 | %
Friability | 86 | %
""",
    truth("K5106", shown="4.3 81.4 10.5 86"),
)

sheet(
    "min-mean-max",
    "Three columns of one determination: mean between its minimum and maximum.",
    """
# Certificate of Analysis
Batch: K5107  Methods: EBC

Parameter | Unit | Min. found | Mean | Max. found
Moisture | % | 4.1 | 4.3 | 4.6
Extract fine grind, dry | % | 80.9 | 81.4 | 81.8
Protein, dry | % | 10.2 | 10.5 | 10.9
Friability | % | 83 | 86 | 88
""",
    truth("K5107", moisture="4.3", extract_fine_dry="81.4", total_protein="10.5", friability="86", doubtful="*"),
)

sheet(
    "deviation-beside-result",
    "The column after the result is the deviation from the contract, in the same unit.",
    """
# Certificate of Analysis
Batch: K5108  Methods: EBC

Parameter | Unit | Contract | Deviation | Result
Moisture | % | 4.5 | -0.2 | 4.3
Extract fine grind, dry | % | 81.0 | +0.4 | 81.4
Protein, dry | % | 10.8 | -0.3 | 10.5
Friability | % | 85 | +1 | 86
""",
    truth("K5108", moisture="4.3", extract_fine_dry="81.4", total_protein="10.5", friability="86"),
)

sheet(
    "uncertainty-beside-result",
    "The uncertainty of the measurement stands in a column of numbers of its own.",
    """
# Certificate of Analysis
Batch: K5109  Methods: EBC

Parameter | Unit | U (k=2) | Result
Moisture | % | 0.2 | 4.3
Extract fine grind, dry | % | 0.6 | 81.4
Protein, dry | % | 0.3 | 10.5
Friability | % | 4 | 86
Viscosity | mPa.s | 0.03 | 1.52
""",
    truth("K5109", **RIGHT),
)

sheet(
    "row-numbers-and-method-numbers",
    "Row numbers before the label and method numbers that look like results.",
    """
# Certificate of Analysis
Batch: K5110

No. | Parameter | EBC method | Result | Unit
1 | Moisture | 4.2 | 4.3 | %
2 | Extract fine grind, dry | 4.5.1 | 81.4 | %
3 | Protein, dry | 4.3.1 | 10.5 | %
4 | Friability | 4.15 | 86 | %
5 | Viscosity | 4.8 | 1.52 | mPa.s
""",
    truth("K5110", **RIGHT),
)

sheet(
    "determinations-one-and-two",
    "Two determinations and their mean; the mean is the result.",
    """
# Laboratory report
Sample: Pilsner malt   Batch: K5111    EBC methods

Parameter | Unit | Det. 1 | Det. 2 | Mean
Moisture | % | 4.2 | 4.4 | 4.3
Extract fine grind, dry | % | 81.2 | 81.6 | 81.4
Protein, dry | % | 10.4 | 10.6 | 10.5
Friability | % | 85 | 87 | 86
""",
    truth("K5111", moisture="4.3", extract_fine_dry="81.4", total_protein="10.5", friability="86", doubtful="*"),
)

sheet(
    "mirrored-columns",
    "Unit and result left of the label, limits at its right.",
    """
# Certificate of Analysis
Batch: K5112   Methods: EBC

Result | Unit | Parameter | Min | Max
4.3 | % | Moisture | 3.5 | 4.5
81.4 | % | Extract fine grind, dry | 81.0 | 83.0
10.5 | % | Protein, dry | 9.5 | 11.0
86 | % | Friability | 80 | 90
""",
    truth("K5112", moisture="4.3", extract_fine_dry="81.4", total_protein="10.5", friability="86"),
)

sheet(
    "two-panels-one-label-column",
    "One label column, two panels of figures: ours, and those of the customer's laboratory.",
    """
# Certificate of Analysis
Batch: K5113   Methods: EBC

Parameter | Maltings laboratory | << | Customer laboratory | <<
 | Result | Unit | Result | Unit
Moisture | 4.3 | % | 4.6 | %
Extract fine grind, dry | 81.4 | % | 80.7 | %
Protein, dry | 10.5 | % | 11.2 | %
Friability | 86 | % | 82 | %
""",
    truth("K5113", shown="4.3 81.4 10.5 86 4.6 80.7 11.2 82"),
)

sheet(
    "heads-shifted",
    "The heads stand one column to the left of what they are the heads of.",
    """
# Certificate of Analysis
Batch: K5114   Methods: EBC

Parameter | Result | Max | |
Moisture | % | 4.3 | 4.5
Extract fine grind, dry | % | 81.4 | 83.0
Protein, dry | % | 10.5 | 11.0
Friability | % | 86 | 90
""",
    truth("K5114", moisture="4.3", extract_fine_dry="81.4", total_protein="10.5", friability="86", doubtful="*"),
)

sheet(
    "specification-head-over-both",
    "One merged head 'Specification' over result and limits.",
    """
# Certificate of Analysis
Batch: K5115   Methods: EBC

Parameter | Unit | Specification | << | <<
 | | min | max | actual
Moisture | % | 3.5 | 4.5 | 4.3
Extract fine grind, dry | % | 81.0 | 83.0 | 81.4
Protein, dry | % | 9.5 | 11.0 | 10.5
Friability | % | 80 | 90 | 86
""",
    truth("K5115", moisture="4.3", extract_fine_dry="81.4", total_protein="10.5", friability="86"),
)

sheet(
    "target-and-tolerance",
    "A target with its tolerance before the result: '4.5 ± 0.3'.",
    """
# Certificate of Analysis
Batch: K5116   Methods: EBC

Parameter | Unit | Target | Result
Moisture | % | 4.5 ± 0.3 | 4.3
Extract fine grind, dry | % | 81.5 ± 0.5 | 81.4
Protein, dry | % | 10.5 ± 0.8 | 10.6
Friability | % | 85 ± 4 | 86
""",
    truth("K5116", moisture="4.3", extract_fine_dry="81.4", total_protein="10.6", friability="86"),
)

sheet(
    "result-missing-in-some-rows",
    "Where the result cell is empty the limit must not slip into its place.",
    """
# Certificate of Analysis
Batch: K5117   Methods: EBC

Parameter | Unit | Result | Limit
Moisture | % | 4.3 | 4.5
Extract fine grind, dry | % | | 81.0
Protein, dry | % | 10.5 | 11.0
Friability | % | | 80
Viscosity | mPa.s | 1.52 | 1.58
""",
    truth("K5117", moisture="4.3", total_protein="10.5", viscosity="1.52"),
)

sheet(
    "result-missing-without-rules",
    "The same without ruling lines.",
    """
# Certificate of Analysis
Batch: K5118   Methods: EBC

Parameter | Unit | Result | Limit
Moisture | % | 4.3 | 4.5
Extract fine grind, dry | % | | 81.0
Protein, dry | % | 10.5 | 11.0
Friability | % | | 80
Viscosity | mPa.s | 1.52 | 1.58
""",
    truth("K5118", moisture="4.3", total_protein="10.5", viscosity="1.52"),
    rules=False,
)

sheet(
    "methods-side-by-side",
    "Columns of three method families; the figure of the basis is the Congress one.",
    """
# Certificate of Analysis
Batch: K5119

Parameter | EBC | << | IoB | << | ASBC | <<
Moisture | 4.3 | % | 4.3 | % | 4.3 | %
Extract fine grind, dry | 81.4 | % | 310 | L°/kg | 81.2 | %
Colour | 3.6 | EBC | 3.4 | EBC | 1.9 | °L
Soluble nitrogen ratio | 41.1 | % | 37.5 | % | 41.0 | %
""",
    truth(
        "K5119",
        moisture="4.3",
        extract_fine_dry="81.4",
        colour="3.6",
        nitrogen_ratio=Right("41.1", 41.1),
        doubtful="*",
    ),
)
