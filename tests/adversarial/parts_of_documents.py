"""Several batches in one document: where one ends and the next begins."""

from tests.adversarial.case import sheet, truth

FIRST = {"moisture": "4.3", "extract_fine_dry": "81.4", "total_protein": "10.5", "friability": "86"}
SECOND = {"moisture": "4.6", "extract_fine_dry": "80.7", "total_protein": "11.2", "friability": "82"}
PILSNER = {"malt": "Pilsner malt", "supplier": "Wexcombe Maltings Ltd"}
TABLE = """
Parameter | Unit | Result
Moisture | % | 4.3
Extract fine grind, dry | % | 81.4
Protein, dry | % | 10.5
Friability | % | 86
"""
OTHER = """
Parameter | Unit | Result
Moisture | % | 4.6
Extract fine grind, dry | % | 80.7
Protein, dry | % | 11.2
Friability | % | 82
"""
REST = """
Parameter | Unit | Result
Viscosity | mPa.s | {}
Kolbach index | % | {}
Free amino nitrogen | mg/l | {}
"""

sheet(
    "second-malt-in-its-title",
    "The second batch is of another malt, which only the title above its table says.",
    f"""
# Wexcombe Maltings Ltd
Product: Pilsner malt    Methods: EBC

Lot no.: S1401
{TABLE}
# Vienna malt
Lot no.: S1402
{OTHER}
""",
    truth("S1401", **FIRST, doubtful="*", head=PILSNER),
    truth("S1402", **SECOND, doubtful="*", head={"malt": "Vienna malt", "supplier": "Wexcombe Maltings Ltd"}),
)

sheet(
    "second-malt-in-a-line",
    "The second batch is of another malt, which a plain line above its lot says.",
    f"""
# Wexcombe Maltings Ltd
Product: Pilsner malt    Methods: EBC

Lot no.: S1403
{TABLE}

Wheat malt
Lot no.: S1404
{OTHER}
""",
    truth("S1403", **FIRST, doubtful="*", head=PILSNER),
    truth("S1404", **SECOND, doubtful="*", head={"malt": "Wheat malt", "supplier": "Wexcombe Maltings Ltd"}),
)

sheet(
    "second-supplier-in-its-title",
    "A merchant's sheet: the second batch is of another maltster, which a title says.",
    f"""
# Wexcombe Maltings Ltd
Product: Pilsner malt    Methods: EBC

Lot no.: S1405
{TABLE}
# Cotterdale Maltings Ltd
Lot no.: S1406
{OTHER}
""",
    truth("S1405", **FIRST, doubtful="*", head=PILSNER),
    truth("S1406", **SECOND, doubtful="*", head={"malt": "Pilsner malt", "supplier": "Cotterdale Maltings Ltd"}),
)

sheet(
    "second-supplier-in-a-line",
    "The second batch was malted elsewhere, which the line beside its number says.",
    f"""
# Wexcombe Maltings Ltd
Product: Pilsner malt    Methods: EBC
Maltster: Wexcombe Maltings Ltd

Lot no.: S1407
{TABLE}

Lot no.: S1408, malted under contract at Cotterdale Maltings Ltd
{OTHER}
""",
    truth("S1407", **FIRST, doubtful="*", head=PILSNER),
    truth("S1408", **SECOND, doubtful="*", head={"malt": "Pilsner malt", "supplier": "Cotterdale Maltings Ltd"}),
)

sheet(
    "page-two-batch-without-caption",
    "Page 2 is the certificate of another batch; its number stands alone in the title.",
    f"""
# Wexcombe Maltings Ltd
Product: Pilsner malt    Methods: EBC
Lot no.: S1409
{TABLE}
===
# Wexcombe Maltings Ltd
# S1410
{REST.format("1.56", "39.1", "144")}
""",
    truth("S1409", **FIRST, doubtful="*", head=PILSNER),
    truth("S1410", viscosity="1.56", nitrogen_ratio="39.1", free_amino_nitrogen="144", doubtful="*", head=PILSNER),
)

sheet(
    "page-two-malt-in-its-title",
    "Page 2 is of another malt, which only its title says; the batch number is not repeated.",
    f"""
# Wexcombe Maltings Ltd
Product: Pilsner malt    Methods: EBC
Lot no.: S1411
{TABLE}
===
# Wexcombe Maltings Ltd
# Crystal malt 120
{REST.format("1.56", "39.1", "144")}
""",
    truth("S1411", **FIRST, doubtful="*", head=PILSNER),
    truth(None, viscosity="1.56", nitrogen_ratio="39.1", free_amino_nitrogen="144", doubtful="*"),
)

sheet(
    "delivery-note-with-lots-above",
    "The page lists four lots that were delivered; the analysis is of the mixed sample.",
    f"""
# Wexcombe Maltings Ltd
Delivery note and certificate    Methods: EBC

Lot no. | Product | Net weight
S1412 | Pilsner malt | 6,000 kg
S1413 | Pilsner malt | 6,000 kg
S1414 | Pilsner malt | 6,000 kg
S1415 | Pilsner malt | 6,000 kg

Analysis of the mixed sample
{TABLE}
""",
    truth(None, **FIRST, doubtful="*", head=PILSNER),
)

sheet(
    "delivery-note-with-lots-below",
    "Below the analysis the lots of the load are listed; the analysis names one of them.",
    f"""
# Wexcombe Maltings Ltd
Product: Pilsner malt    Methods: EBC

Analysis of lot S1417
{TABLE}
Load:
Lot no.: S1416    6,000 kg
Lot no.: S1417    6,000 kg
Lot no.: S1418    12,000 kg
""",
    truth("S1417", **FIRST, doubtful="*", head=PILSNER),
)

sheet(
    "pages-of-two-lots-shuffled",
    "The second page of the first lot comes after the first page of the second lot.",
    f"""
# Wexcombe Maltings Ltd
Product: Pilsner malt    Lot no.: S1419    Methods: EBC
{TABLE}
===
# Wexcombe Maltings Ltd
Product: Vienna malt    Lot no.: S1420    Methods: EBC
{OTHER}
===
# Wexcombe Maltings Ltd
Continued: lot S1419, page 2 of 2
{REST.format("1.52", "41.2", "152")}
===
# Wexcombe Maltings Ltd
Continued: lot S1420, page 2 of 2
{REST.format("1.56", "39.1", "144")}
""",
    truth(
        "S1419",
        **FIRST,
        viscosity="1.52",
        nitrogen_ratio="41.2",
        free_amino_nitrogen="152",
        doubtful="*",
        head=PILSNER,
    ),
    truth(
        "S1420",
        **SECOND,
        viscosity="1.56",
        nitrogen_ratio="39.1",
        free_amino_nitrogen="144",
        doubtful="*",
        head={"malt": "Vienna malt", "supplier": "Wexcombe Maltings Ltd"},
    ),
)

sheet(
    "pages-shuffled-and-second-pages-mute",
    "Page 1 of two lots, then a second page that says of which lot it is in its foot only.",
    f"""
# Wexcombe Maltings Ltd
Product: Pilsner malt    Lot no.: S1421    Methods: EBC
{TABLE}
===
# Wexcombe Maltings Ltd
Product: Pilsner malt    Lot no.: S1422    Methods: EBC
{OTHER}
===
{REST.format("1.52", "41.2", "152")}
~ Page 2 of 2 of the certificate of lot S1421
""",
    truth(
        "S1421",
        **FIRST,
        viscosity="1.52",
        nitrogen_ratio="41.2",
        free_amino_nitrogen="152",
        doubtful="*",
        head=PILSNER,
    ),
    truth("S1422", **SECOND, doubtful="*", head=PILSNER),
)

sheet(
    "lot-at-the-foot-of-each-page",
    "Each page names its lot below the table.",
    f"""
# Wexcombe Maltings Ltd
Product: Pilsner malt    Methods: EBC
{TABLE}
Lot no.: S1423
===
# Wexcombe Maltings Ltd
Product: Pilsner malt    Methods: EBC
{OTHER}
Lot no.: S1424
""",
    truth("S1423", **FIRST, doubtful="*", head=PILSNER),
    truth("S1424", **SECOND, doubtful="*", head=PILSNER),
)

sheet(
    "lot-below-each-table",
    "Two tables on a page, each with the line of its lot right below it.",
    f"""
# Wexcombe Maltings Ltd
Product: Pilsner malt    Methods: EBC
{TABLE.rstrip()}
Lot no.: S1425



{OTHER.strip()}
Lot no.: S1426
""",
    truth("S1425", **FIRST, doubtful="*", head=PILSNER),
    truth("S1426", **SECOND, doubtful="*", head=PILSNER),
)

sheet(
    "two-malts-without-numbers",
    "Two malts below each other, named in plain lines; neither has a number.",
    f"""
# Wexcombe Maltings Ltd
Methods: EBC

Product: Pilsner malt
{TABLE}

Product: Vienna malt
{REST.format("1.56", "39.1", "144")}
""",
    truth(None, **FIRST, doubtful="*", head=PILSNER),
    truth(
        None,
        viscosity="1.56",
        nitrogen_ratio="39.1",
        free_amino_nitrogen="144",
        doubtful="*",
        head={"malt": "Vienna malt", "supplier": "Wexcombe Maltings Ltd"},
    ),
)

sheet(
    "crops-of-batches-below-each-other",
    "The head names crop and order; the second batch has a crop of its own.",
    f"""
# Wexcombe Maltings Ltd
Product: Pilsner malt    Crop year: 2025    Methods: EBC

Lot no.: S1429
{TABLE}

Lot no.: S1430    Crop year: 2024
{OTHER}
""",
    truth("S1429", **FIRST, doubtful="*", head={**PILSNER, "crop_year": "2025"}),
    truth("S1430", **SECOND, doubtful="*", head={**PILSNER, "crop_year": "2024"}),
)
