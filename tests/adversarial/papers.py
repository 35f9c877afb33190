"""More than one page, more than one kind of paper."""

from tests.adversarial.case import sheet, truth

RIGHT = {"moisture": "4.3", "extract_fine_dry": "81.4", "total_protein": "10.5", "friability": "86"}

CERTIFICATE = """
# Certificate of Analysis
Pilsner malt   Batch: {}    Methods: EBC

Parameter | Unit | Result
Moisture | % | 4.3
Extract fine grind, dry | % | 81.4
Protein, dry | % | 10.5
Friability | % | 86
"""

sheet(
    "delivery-note-follows",
    "Delivery-note pages full of numbers follow the certificate.",
    CERTIFICATE.format("P2101")
    + """
===
# Delivery note 4402-25
Item | Article | Quantity | Unit | Net weight
1 | Pilsner malt, big bag | 24 | pcs | 24,000 kg
2 | Caramel malt 120 EBC | 10 | bags | 250 kg
3 | Moisture absorber | 86 | pcs | 4.6 kg
Gross weight | 24.860 | kg | |
Moisture at loading | 4.6 | % | |
===
# Weighing slip
Gross | 41,280 | kg
Tare | 16,420 | kg
Net | 24,860 | kg
""",
    truth("P2101", **RIGHT, doubtful="moisture"),
)

sheet(
    "invoice-table-above",
    "An invoice table with a colour and an extract in the article names stands above the results.",
    """
# Delivery note and certificate
Batch: P2102    Methods: EBC

Pos | Article | Qty | Price
1 | Caramel malt colour 120 EBC | 500 | 1.42
2 | Malt extract 80 % | 25 | 4.10
3 | Diastatic malt 300 WK | 50 | 2.05

Parameter | Unit | Result
Moisture | % | 4.3
Colour | EBC | 3.6
Diastatic power | WK | 310
""",
    truth("P2102", moisture="4.3", colour="3.6", diastatic_power="310", doubtful="colour diastatic_power"),
)

sheet(
    "continued-without-head",
    "The table goes on on page 2 without a head; there the limit stands where nothing says so.",
    """
# Certificate of Analysis
Pilsner malt   Batch: P2103    Methods: EBC

Parameter | Max | Result | Unit
Moisture | 5.0 | 4.3 | %
Extract fine grind, dry | 83.0 | 81.4 | %
Protein, dry | 11.5 | 10.5 | %
===
Friability | 92 | 86 | %
Viscosity | 1.60 | 1.52 | mPa.s
Free amino nitrogen | 170 | 152 | mg/l
""",
    truth(
        "P2103",
        **RIGHT,
        viscosity="1.52",
        free_amino_nitrogen="152",
        doubtful="friability viscosity free_amino_nitrogen",
    ),
)

sheet(
    "second-page-other-order",
    "The table of page 2 has its columns in another order, and a head.",
    """
# Certificate of Analysis
Pilsner malt   Batch: P2104    Methods: EBC

Parameter | Max | Result | Unit
Moisture | 5.0 | 4.3 | %
Extract fine grind, dry | 83.0 | 81.4 | %
===
Parameter | Result | Max | Unit
Protein, dry | 10.5 | 11.5 | %
Friability | 86 | 92 | %
""",
    truth("P2104", **RIGHT),
)

sheet(
    "second-page-other-batch-in-prose",
    "The second page is of another batch, which only a sentence says.",
    CERTIFICATE.format("P2105")
    + """
===
The following results were obtained for batch P2077 of the same variety.

Parameter | Unit | Result
Colour | EBC | 4.1
Viscosity | mPa.s | 1.56
Kolbach index | % | 39.1
""",
    truth("P2105", **RIGHT),
    truth("P2077", colour="4.1", viscosity="1.56", nitrogen_ratio="39.1", doubtful="*"),
)

sheet(
    "specification-page-follows",
    "The product specification follows the certificate, with the same rows.",
    CERTIFICATE.format("P2106")
    + """
===
# Product specification Pilsner malt
Valid from 01.08.2025

Parameter | Unit | Value
Moisture | % | 4.6
Extract fine grind, dry | % | 80.7
Protein, dry | % | 11.2
Friability | % | 82
Colour | EBC | 4.1
Viscosity | mPa.s | 1.56
""",
    truth("P2106", **RIGHT, doubtful="*"),
    truth(None, kind="specification"),
)

sheet(
    "order-table-below",
    "What was ordered, below what was found.",
    CERTIFICATE.format("P2107")
    + """

Your order 4711-B:
Moisture | % | 4.6
Extract fine grind, dry | % | 80.7
Colour | EBC | 4.1
""",
    truth("P2107", **RIGHT, doubtful="*"),
)

sheet(
    "tables-side-by-side",
    "Two tables side by side share one label column in the middle.",
    """
# Certificate of Analysis
Pilsner malt    Methods: EBC

Batch P2108 | Parameter | Batch P2109 | Unit
4.3 | Moisture | 4.6 | %
81.4 | Extract fine grind, dry | 80.7 | %
10.5 | Protein, dry | 11.2 | %
86 | Friability | 82 | %
""",
    truth("P2108", **RIGHT, doubtful="*"),
    truth("P2109", moisture="4.6", extract_fine_dry="80.7", total_protein="11.2", friability="82", doubtful="*"),
)

sheet(
    "label-value-twice-in-a-row",
    "Two label-value pairs in each row, the second pair of another material.",
    """
# Certificate of Analysis
Batch: P2110    Methods: EBC

Malt | | Barley |
Moisture % | 4.3 | Moisture % | 12.8
Protein, dry % | 10.5 | Protein, dry % | 11.2
Friability % | 86 | Germination % | 98
""",
    truth("P2110", moisture="4.3", total_protein="10.5", friability="86", doubtful="*"),
)

sheet(
    "two-malts-one-number",
    "Two malts under one order number; no batch number at all.",
    """
# Certificate of Analysis
Order: P2111    Methods: EBC

Parameter | Unit | Pilsner malt | Munich malt
Moisture | % | 4.3 | 3.9
Colour | EBC | 3.6 | 18.5
Protein, dry | % | 10.5 | 11.0
""",
    truth(None, moisture="4.3", colour="3.6", total_protein="10.5", doubtful="*"),
    truth(None, moisture="3.9", colour="18.5", total_protein="11.0", doubtful="*"),
)

sheet(
    "rows-merged",
    "One value cell is merged over two rows: fine and coarse extract have one figure.",
    """
# Certificate of Analysis
Pilsner malt   Batch: P2112    Methods: EBC

Parameter | Unit | Result
Moisture | % | 4.3
Extract fine grind, dry | % | 81.4
Extract coarse grind, dry | % | ^^
Friability | % | 86
""",
    truth("P2112", moisture="4.3", friability="86", shown="81.4"),
)

sheet(
    "prose-only",
    "All figures in sentences, of two batches.",
    """
Dear brewer,

the malt of batch P2113 has a moisture of 4.3 % and an extract (fine, dry) of 81.4 %.
Unlike batch P2077, whose friability was 82 % and whose protein was 11.2 %, it has a friability
of 86 % and a protein (dry) of 10.5 %. All by EBC methods.
""",
    truth("P2113", **RIGHT, doubtful="*"),
    truth("P2077", friability="82", total_protein="11.2", doubtful="*"),
)

sheet(
    "address-and-phone-as-results",
    "Letterhead lines with numbers and words of the trade.",
    """
# Quillbrook Maltings - malt, colour and extract since 1887
Moisture Lane 4, 81200 Extract Hill    Tel. 0511 86 152    ISO 9001
Certificate of Analysis   Batch: P2114   Methods: EBC

Parameter | Unit | Result
Moisture | % | 4.3
Extract fine grind, dry | % | 81.4

~ Form 10.5 rev. 86   Page 1 of 1   Friability laboratory, room 82
""",
    truth("P2114", moisture="4.3", extract_fine_dry="81.4"),
)

sheet(
    "method-paragraph-with-conditions",
    "Notes on methods under the table give conditions that look like figures.",
    CERTIFICATE.format("P2115")
    + """

Moisture: dried at 105 °C for 3 h.   Extract: mill gap 0.2 mm, 50 g malt, 200 ml water of 45 °C.
Colour: read at 430 nm.   Viscosity at 20 °C.   Friability: 50 g malt, 8 min.
Kolbach index: soluble nitrogen x 100 / total nitrogen; good values: 38 - 42 %.
""",
    truth("P2115", **RIGHT, doubtful="moisture"),
)
