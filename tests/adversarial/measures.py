"""Units, method families and moisture bases that contradict the numbers or each other."""

from tests.adversarial.case import Right, sheet, truth

sheet(
    "colour-unit-contradicts",
    "The head of the units says EBC, the number and the rest of the sheet are °Lovibond.",
    """
# Certificate of Analysis
Two-row malt   Lot: U9101    ASBC methods of analysis

Parameter | Unit | Result
Moisture | % | 4.3
Colour (SRM) | EBC | 1.8
Diastatic power (Lintner) | WK | 130
""",
    truth("U9101", moisture="4.3", shown="1.8 130"),
)

sheet(
    "extract-as-percent-with-degrees",
    "An extract of 308 in percent: the unit belongs to another method.",
    """
# Certificate of Analysis
Ale malt   Batch: U9102    IoB methods

Parameter | Unit | Result
Moisture | % | 3.2
Extract 0.7 mm, dry | % | 308
Diastatic power | % | 48
Soluble nitrogen ratio | L°/kg | 38.2
""",
    truth("U9102", moisture="3.2", shown="308 48 38.2"),
)

sheet(
    "units-swapped-between-rows",
    "The units of two neighbouring rows are swapped.",
    """
# Certificate of Analysis
Pilsner malt   Batch: U9103    Methods: EBC

Parameter | Unit | Result
Moisture | % | 4.3
Colour | mPa.s | 3.6
Viscosity | EBC | 1.52
Free amino nitrogen | WK | 152
Diastatic power | mg/l | 310
""",
    truth("U9103", moisture="4.3", shown="3.6 1.52 152 310"),
)

sheet(
    "scale-contradicts-unit",
    "The numbers are on the scale of mg/100 g, the column says mg/l; β-glucan in percent printed as mg/l.",
    """
# Certificate of Analysis
Pilsner malt   Batch: U9104    Methods: EBC

Parameter | Unit | Result
Moisture | % | 4.3
Soluble nitrogen | mg/l | 690
Beta-glucan in malt | mg/l | 0.42
Arsenic | µg/kg | 0.04
Deoxynivalenol | mg/kg | 64
""",
    truth(
        "U9104",
        moisture="4.3",
        arsenic=Right("0.04", 0.00004),
        soluble_nitrogen=Right("690", None),
        shown="0.42 64",
        doubtful="arsenic soluble_nitrogen",
    ),
)

sheet(
    "unit-in-head-of-neighbour",
    "The head of the result column names a unit that only its first rows have.",
    """
# Certificate of Analysis
Pilsner malt   Batch: U9105    Methods: EBC

Parameter | Result (%) | Max
Moisture | 4.3 | 5.0
Protein, dry | 10.5 | 11.5
Colour | 3.6 | 4.5
Viscosity | 1.52 | 1.60
Diastatic power | 310 | 400
""",
    truth("U9105", moisture="4.3", total_protein="10.5", shown="3.6 1.52 310"),
)

sheet(
    "us-and-metric-mixed",
    "Metric and US units in one table.",
    """
# Certificate of Analysis
Two-row malt   Lot: U9106    ASBC methods

Parameter | Unit | Result
Moisture | % | 4.3
Extract FG, dry basis | % | 80.9
Color | °L | 1.8
Bushel weight | lb/bu | 42.5
Diastatic power | °Lintner | 130
Thousand kernel weight | oz | 1.36
""",
    truth(
        "U9106",
        moisture="4.3",
        extract_fine_dry=Right("80.9", 80.9, tolerance=0.3),
        colour=Right("1.8", 3.54, tolerance=0.7),
        diastatic_power=Right("130", 439, tolerance=10),
        hectolitre_weight=Right("42.5", 54.7, tolerance=0.1),
        shown="1.36",
        doubtful="*",
    ),
)

sheet(
    "dry-basis-in-footer",
    "The footer alone says that all but the moisture is as is.",
    """
# Certificate of Analysis
Pilsner malt   Batch: U9107    Methods: EBC

Parameter | Unit | Result
Moisture | % | 4.3
Extract fine grind | % | 77.9
Total protein | % | 10.0

~ All results except moisture are stated as is.
""",
    truth(
        "U9107",
        moisture="4.3",
        extract_fine_as_is="77.9",
        total_protein=Right("10.0", 10.45, tolerance=0.06),
        doubtful="*",
    ),
)

sheet(
    "footer-and-label-differ",
    "The footer says that all is on dry basis, one label says as is.",
    """
# Certificate of Analysis
Pilsner malt   Batch: U9108    Methods: EBC

Parameter | Unit | Result
Moisture | % | 4.3
Extract fine grind, as is | % | 77.9
Total protein | % | 10.5

~ Unless stated otherwise all results are on dry basis.
""",
    truth("U9108", moisture="4.3", extract_fine_as_is="77.9", total_protein="10.5", doubtful="*"),
)

sheet(
    "all-dry-but-one",
    "The footer puts all results on dry matter but the extract, whose row says nothing.",
    """
# Certificate of Analysis
Pilsner malt   Batch: U9116    Methods: EBC

Parameter | Unit | Result
Moisture | % | 4.3
Extract fine grind | % | 77.9
Total protein, dry | % | 10.5
Friability | % | 86

~ All results are stated on dry basis with the exception of the extract.
""",
    truth("U9116", moisture="4.3", total_protein="10.5", friability="86", shown="77.9"),
)

sheet(
    "extract-without-grind-or-basis",
    "Extract without saying fine or coarse, dry or as is.",
    """
# Certificate of Analysis
Pilsner malt   Batch: U9109    Methods: EBC

Parameter | Unit | Result
Moisture | % | 4.3
Extract | % | 79.8
Protein | % | 10.5
""",
    # Nitrogen and protein are on dry malt unless the sheet says otherwise (common practice, no source).
    truth("U9109", moisture="4.3", total_protein="10.5", shown="79.8"),
)

sheet(
    "two-families-stated",
    "The header says IoB, the footer EBC; the ratio differs by several points between them.",
    """
# Certificate of Analysis
Ale malt   Batch: U9110    Analysis according to IoB

Parameter | Unit | Result
Moisture | % | 3.6
Soluble nitrogen ratio | % | 39.5
Total nitrogen, dry | % | 1.52
Colour | EBC | 5.2

~ Methods: Analytica-EBC
""",
    truth("U9110", moisture="3.6", total_nitrogen="1.52", doubtful="*", shown="39.5 5.2"),
)

sheet(
    "family-of-other-certificate",
    "The text mentions a family that the results are not of.",
    """
# Certificate of Analysis
Ale malt   Batch: U9111

Parameter | Unit | Result
Moisture | % | 3.2
Extract 0.7 mm, dry | L°/kg | 308
Soluble nitrogen ratio | % | 38.2
Diastatic power | °IoB | 48

Results by EBC methods are sent on request.
""",
    truth(
        "U9111",
        moisture="3.2",
        extract_coarse_dry=Right("308", 308, "IoB"),
        nitrogen_ratio=Right("38.2", 43.0, tolerance=0.1),
        diastatic_power=Right("48", 168, tolerance=8),
        doubtful="*",
    ),
)

sheet(
    "ratio-of-hot-water-mash",
    "Kolbach index on a sheet of a 65 °C mash.",
    """
# Certificate of Analysis
Ale malt   Batch: U9112    Methods: IoB, mash at constant 65 °C

Parameter | Unit | Result
Moisture | % | 3.2
Kolbach index | % | 38.2
Total nitrogen, dry | % | 1.52
Soluble nitrogen, dry | % | 0.58
""",
    truth(
        "U9112",
        moisture="3.2",
        total_nitrogen="1.52",
        soluble_nitrogen=Right("0.58", 0.58, "IoB"),
        nitrogen_ratio=Right("38.2", 43.0, tolerance=0.1),
        doubtful="*",
    ),
)

sheet(
    "percent-moisture-of-dry",
    "Dry matter instead of moisture.",
    """
# Certificate of Analysis
Pilsner malt   Batch: U9113    Methods: EBC

Parameter | Unit | Result
Dry matter | % | 95.7
Dry substance of extract | % | 81.4
Friability | % | 86
""",
    truth("U9113", friability="86", extract_fine_dry="81.4", shown="95.7", doubtful="extract_fine_dry"),
)

sheet(
    "per-litre-and-per-kilogram",
    "FAN in the malt, not in the wort; β-glucan in the malt, not in the wort.",
    """
# Certificate of Analysis
Pilsner malt   Batch: U9114    Methods: EBC

Parameter | Unit | Result
Moisture | % | 4.3
Free amino nitrogen | mg/100 g | 152
Beta-glucan | mg/kg | 165
Soluble nitrogen | mg/100 g | 690
""",
    truth(
        "U9114",
        moisture="4.3",
        soluble_nitrogen=Right("690", 0.69),
        free_amino_nitrogen=Right("152", 170, tolerance=10),
        shown="165",
        doubtful="*",
    ),
)

sheet(
    "diastatic-power-without-unit",
    "Diastatic power without unit on a sheet that could be any.",
    """
# Certificate of Analysis
Malt   Batch: U9115

Parameter | Result
Moisture % | 4.3
Diastatic power | 110
Colour | 3.6
Extract % | 80.1
""",
    truth("U9115", moisture="4.3", shown="110 3.6 80.1"),
)
