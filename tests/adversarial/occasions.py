"""Results of another season, batch, sample or time beside those of this one."""

from tests.adversarial.case import sheet, truth

RIGHT = {"moisture": "4.3", "extract_fine_dry": "81.4", "total_protein": "10.5", "friability": "86"}
OTHER = {"moisture": "4.6", "extract_fine_dry": "80.7", "total_protein": "11.2", "friability": "82"}

sheet(
    "last-year-first",
    "Last year's results stand left of this year's.",
    """
# Crop comparison and certificate
Pilsner malt   Batch: S6101    Crop 2025    Methods: EBC

Parameter | Unit | Crop 2024 | Crop 2025
Moisture | % | 4.6 | 4.3
Extract fine grind, dry | % | 80.7 | 81.4
Protein, dry | % | 11.2 | 10.5
Friability | % | 82 | 86
""",
    truth("S6101", **RIGHT, doubtful="*"),
)

sheet(
    "previous-delivery-last",
    "The previous delivery stands in the last column, where a result may stand.",
    """
# Certificate of Analysis
Pilsner malt   Batch: S6102    Methods: EBC

Parameter | Unit | This delivery | Previous delivery
Moisture | % | 4.3 | 4.6
Extract fine grind, dry | % | 81.4 | 80.7
Protein, dry | % | 10.5 | 11.2
Friability | % | 86 | 82
""",
    truth("S6102", **RIGHT, doubtful="*"),
)

sheet(
    "mean-of-season",
    "The mean of the season before the result of the batch.",
    """
# Certificate of Analysis
Pilsner malt   Batch: S6103    Methods: EBC

Parameter | Unit | Season average | Batch
Moisture | % | 4.6 | 4.3
Extract fine grind, dry | % | 80.7 | 81.4
Protein, dry | % | 11.2 | 10.5
Friability | % | 82 | 86
""",
    truth("S6103", **RIGHT, doubtful="*"),
)

sheet(
    "reference-lot-column",
    "The head of the last column names another lot, without the word lot: its results are that lot's.",
    """
# Certificate of Analysis
Pilsner malt   Batch: S6104    Methods: EBC

Parameter | Unit | Result | S6077
Moisture | % | 4.3 | 4.6
Extract fine grind, dry | % | 81.4 | 80.7
Protein, dry | % | 10.5 | 11.2
Friability | % | 86 | 82
""",
    truth("S6104", **RIGHT, doubtful="*"),
    truth("S6077", **OTHER, doubtful="*"),
)

sheet(
    "before-and-after-cleaning",
    "One sample before, one after cleaning; the malt is delivered cleaned.",
    """
# Certificate of Analysis
Pilsner malt   Batch: S6105    Methods: EBC

Parameter | Unit | before cleaning | after cleaning
Moisture | % | 4.6 | 4.3
Extract fine grind, dry | % | 80.7 | 81.4
Friability | % | 82 | 86
Foreign matter | % | 1.4 | 0.2
""",
    truth("S6105", moisture="4.3", extract_fine_dry="81.4", friability="86", foreign_matter="0.2", doubtful="*"),
)

sheet(
    "retest",
    "A retest beside the first result; the retest counts, but not all rows were tested again.",
    """
# Certificate of Analysis
Pilsner malt   Batch: S6106    Methods: EBC

Parameter | Unit | First test | Retest
Moisture | % | 4.6 | 4.3
Extract fine grind, dry | % | 81.4 |
Protein, dry | % | 11.2 | 10.5
Friability | % | 86 |
""",
    truth("S6106", **RIGHT, doubtful="*"),
)

sheet(
    "four-weeks-ago",
    "The date in a head says that the column is old.",
    """
# Certificate of Analysis
Pilsner malt   Batch: S6107    Methods: EBC    Date: 28.10.2025

Parameter | Unit | 30.09.2025 | 28.10.2025
Moisture | % | 4.6 | 4.3
Extract fine grind, dry | % | 80.7 | 81.4
Protein, dry | % | 11.2 | 10.5
Friability | % | 82 | 86
""",
    truth("S6107", **RIGHT, doubtful="*"),
)

sheet(
    "reported-four-weeks-ago",
    "A second table, of what was reported four weeks ago, with the same rows.",
    """
# Certificate of Analysis
Pilsner malt   Batch: S6108    Methods: EBC

Parameter | Unit | Result
Moisture | % | 4.3
Extract fine grind, dry | % | 81.4
Protein, dry | % | 10.5
Friability | % | 86

Reported 4 weeks ago for comparison:

Parameter | Unit | Result
Moisture | % | 4.6
Extract fine grind, dry | % | 80.7
Protein, dry | % | 11.2
Friability | % | 82
""",
    truth("S6108", **RIGHT, doubtful="*"),
)

sheet(
    "prose-names-other-batch",
    "Prose under the table gives figures of another batch.",
    """
# Certificate of Analysis
Pilsner malt   Batch: S6109    Methods: EBC

Parameter | Unit | Result
Moisture | % | 4.3
Extract fine grind, dry | % | 81.4

The batch S6088 that was delivered before had a friability of 82 % and a total protein of 11.2 %.
Its viscosity was 1.56 mPa.s, its colour 4.1 EBC.
""",
    truth("S6109", moisture="4.3", extract_fine_dry="81.4"),
)

sheet(
    "two-batch-numbers-in-head",
    "The header names two batches; the table has one column of results.",
    """
# Certificate of Analysis
Pilsner malt   Batch: S6110 / S6111    Methods: EBC

Parameter | Unit | Result
Moisture | % | 4.3
Extract fine grind, dry | % | 81.4
Protein, dry | % | 10.5
Friability | % | 86
""",
    truth("S6110 / S6111", **RIGHT, doubtful="*"),
)

sheet(
    "merged-batch-heads",
    "Each batch number is a merged cell over result and limit.",
    """
# Certificate of Analysis
Pilsner malt   Methods: EBC

Parameter | Unit | Batch S6112 | << | Batch S6113 | <<
 | | Result | Max | Result | Max
Moisture | % | 4.3 | 5.0 | 4.6 | 5.0
Extract fine grind, dry | % | 81.4 | 83.0 | 80.7 | 83.0
Protein, dry | % | 10.5 | 11.5 | 11.2 | 11.5
Friability | % | 86 | 92 | 82 | 92
""",
    truth("S6112", **RIGHT),
    truth("S6113", **OTHER),
)

sheet(
    "merged-batch-rows",
    "The batch number is a cell merged over the rows of its results.",
    """
# Certificate of Analysis
Pilsner malt   Methods: EBC

Batch | Parameter | Unit | Result
S6114 | Moisture | % | 4.3
^^ | Extract fine grind, dry | % | 81.4
^^ | Protein, dry | % | 10.5
^^ | Friability | % | 86
S6115 | Moisture | % | 4.6
^^ | Extract fine grind, dry | % | 80.7
^^ | Protein, dry | % | 11.2
^^ | Friability | % | 82
""",
    truth("S6114", **RIGHT, doubtful="*"),
    truth("S6115", **OTHER, doubtful="*"),
)

sheet(
    "batches-differ-by-one-sign",
    "Two batches whose numbers differ in the last sign, heads without captions.",
    """
# Certificate of Analysis
Pilsner malt   Methods: EBC

Parameter | Unit | S6116-A | S6116-B
Moisture | % | 4.3 | 4.6
Extract fine grind, dry | % | 81.4 | 80.7
Protein, dry | % | 10.5 | 11.2
Friability | % | 86 | 82
""",
    truth("S6116-A", **RIGHT, doubtful="*"),
    truth("S6116-B", **OTHER, doubtful="*"),
)

sheet(
    "blend-of-batches",
    "Two batches and their blend; the blend has no batch number.",
    """
# Certificate of Analysis
Pilsner malt   Methods: EBC

Parameter | Unit | Batch S6117 | Batch S6118 | Blend 50:50
Moisture | % | 4.3 | 4.6 | 4.5
Extract fine grind, dry | % | 81.4 | 80.7 | 81.1
Protein, dry | % | 10.5 | 11.2 | 10.9
Friability | % | 86 | 82 | 84
""",
    truth("S6117", **RIGHT, shown="4.5 81.1 10.9 84"),
    truth("S6118", **OTHER),
)

sheet(
    "values-one-row-down",
    "Every value is printed one row too low: the last one stands beside no label.",
    """
# Certificate of Analysis
Pilsner malt   Batch: S6119    Methods: EBC

Parameter | Unit | Result
Moisture | % |
Extract fine grind, dry | % | 4.3
Protein, dry | % | 81.4
Friability | % | 10.5
 | | 86
""",
    truth("S6119", shown="4.3 81.4 10.5 86"),
)

sheet(
    "half-a-row-down",
    "The values stand half a row lower than their labels, without ruling lines.",
    """
# Certificate of Analysis
Pilsner malt   Batch: S6120    Methods: EBC

Moisture, %
 | | | | | | | | | | | | | | 4.3
Protein, dry, %
 | | | | | | | | | | | | | | 10.5
Kolbach index, %
 | | | | | | | | | | | | | | 41.1
Friability, %
 | | | | | | | | | | | | | | 86
""",
    truth("S6120", moisture="4.3", total_protein="10.5", nitrogen_ratio="41.1", friability="86", doubtful="*"),
    rules=False,
    size=11,
)
