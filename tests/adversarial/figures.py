"""The number itself: its marks, its exponent, its bound, its footnote."""

from tests.adversarial.case import Right, sheet, truth

sheet(
    "comma-and-point-mixed",
    "Decimal comma in one row, decimal point in the next, a thousands mark in a third.",
    """
# Certificate of Analysis
Pilsner malt   Batch: N8101    Methods: EBC

Parameter | Unit | Result
Moisture | % | 4,3
Extract fine grind, dry | % | 81.4
Diastatic power | WK | 1.310
Free amino nitrogen | mg/l | 1,152
""",
    truth("N8101", moisture="4,3", extract_fine_dry="81.4", doubtful="*", shown="1.310 1,152"),
)

sheet(
    "three-decimals-or-thousands",
    "'1.520' may be one and a half or fifteen hundred; the sheet has no other number with a mark.",
    """
# Certificate of Analysis
Pilsner malt   Batch: N8102    Methods: EBC

Parameter | Unit | Result
Friability | % | 86
Free amino nitrogen | mg/l | 1.152
Beta-glucan | mg/l | 1.165
""",
    truth("N8102", friability="86", shown="1.152 1.165"),
)

sheet(
    "thousands-point-with-decimal-comma",
    "Decimal commas, and a thousands point in the row of the weight of the lot.",
    """
# Analysenzertifikat
Pilsner Malz   Charge: N8103    Methoden: EBC

Parameter | Einheit | Ergebnis
Wassergehalt | % | 4,3
Extrakt Feinschrot, wfr. | % | 81,4
Tausendkorngewicht | g | 38,600
Liefermenge | kg | 24.860
""",
    truth(
        "N8103", moisture="4,3", extract_fine_dry="81,4", thousand_corn_weight="38,600", doubtful="thousand_corn_weight"
    ),
)

sheet(
    "footnote-digit-raised",
    "Raised footnote numbers behind the results.",
    """
# Certificate of Analysis
Pilsner malt   Batch: N8104    Methods: EBC

Parameter | Unit | Result
Moisture | % | 4.3^1
Extract fine grind, dry | % | 81.4^2
Friability | % | 86^3

~ 1 oven at 105 °C   2 mean of two   3 friabilimeter
""",
    truth("N8104", moisture="4.3", extract_fine_dry="81.4", friability="86", doubtful="*"),
)

sheet(
    "footnote-digit-glued",
    "Footnote numbers of the same size, glued to the result.",
    """
# Certificate of Analysis
Pilsner malt   Batch: N8105    Methods: EBC

Parameter | Unit | Result
Moisture | % | 4.3 1)
Extract fine grind, dry | % | 81.4 2)
Friability | % | 86 3)

~ 1) oven at 105 °C   2) mean of two   3) friabilimeter
""",
    truth("N8105", moisture="4.3", extract_fine_dry="81.4", friability="86", doubtful="*"),
)

sheet(
    "footnote-changes-the-basis",
    "One star is as is, two are dry; the label says neither.",
    """
# Certificate of Analysis
Pilsner malt   Batch: N8106    Methods: EBC

Parameter | Unit | Result
Moisture | % | 4.3
Extract fine grind * | % | 77.9
Total protein ** | % | 10.5

~ * as is   ** dry basis
""",
    truth("N8106", moisture="4.3", extract_fine_as_is="77.9", total_protein="10.5", doubtful="*"),
)

sheet(
    "footnote-of-one-row",
    "Only the extract is as is, as its star says; the protein is dry.",
    """
# Certificate of Analysis
Pilsner malt   Batch: N8119    Methods: EBC

Parameter | Unit | Result
Moisture | % | 4.3
Extract fine grind * | % | 77.9
Total protein | % | 10.5
Total nitrogen | % | 1.68

~ * as is
""",
    truth("N8119", moisture="4.3", extract_fine_as_is="77.9", total_protein="10.5", total_nitrogen="1.68"),
)

sheet(
    "footnote-of-accreditation",
    "A star behind most results says that the method is accredited: nothing to look at.",
    """
# Certificate of Analysis
Pilsner malt   Batch: N8120    Methods: EBC

Parameter | Unit | Result
Moisture | % | 4.3*
Extract fine grind, dry | % | 81.4*
Total protein, dry | % | 10.5*
Friability | % | 86

~ * accredited method according to ISO 17025
""",
    truth("N8120", moisture="4.3", extract_fine_dry="81.4", total_protein="10.5", friability="86"),
)

sheet(
    "footnote-takes-the-result-back",
    "A star says that the result is the one of the supplier's barley, not measured in this malt.",
    """
# Certificate of Analysis
Pilsner malt   Batch: N8107    Methods: EBC

Parameter | Unit | Result
Moisture | % | 4.3
Protein, dry | % | 11.2 *
Friability | % | 86

~ * value of the barley, not determined in the malt
""",
    truth("N8107", moisture="4.3", friability="86", shown="11.2"),
)

sheet(
    "exponent-notation",
    "Exponents, as spreadsheets write them.",
    """
# Certificate of Analysis
Pilsner malt   Batch: N8108    Methods: EBC

Parameter | Unit | Result
Moisture | % | 4.3E+00
Free amino nitrogen | mg/l | 1.52E+02
Diastatic power | WK | 3.1E2
Colour | EBC | 3.6
""",
    truth(
        "N8108",
        moisture=Right("4.3E+00", 4.3),
        free_amino_nitrogen=Right("1.52E+02", 152),
        diastatic_power=Right("3.1E2", 310),
        colour="3.6",
        doubtful="moisture free_amino_nitrogen diastatic_power",
    ),
)

sheet(
    "negative-numbers",
    "A minus before a result that cannot be negative.",
    """
# Certificate of Analysis
Pilsner malt   Batch: N8109    Methods: EBC

Parameter | Unit | Result
Moisture | % | -4.3
Friability | % | 86
Fine-coarse difference | % | −1.6
Colour | EBC | - 3.6
""",
    truth("N8109", friability="86", shown="4.3 1.6 3.6"),
)

sheet(
    "dash-before-the-number",
    "A list dash glued to each value by a space.",
    """
Certificate of Analysis
Batch: N8110    Methods: EBC

Moisture - 4.3 %
Friability - 86 %
Viscosity - 1.52 mPa.s
Fine-coarse difference - 1.6 %
""",
    truth(
        "N8110",
        moisture="4.3",
        friability="86",
        viscosity="1.52",
        fine_coarse_difference="1.6",
        doubtful="*",
    ),
)

sheet(
    "ranges-as-results",
    "Results that are ranges beside limits that are numbers.",
    """
# Certificate of Analysis
Pilsner malt   Batch: N8111    Methods: EBC

Parameter | Unit | Result | Max
Moisture | % | 4.1 - 4.5 | 5.0
Friability | % | 84 - 88 | 95
Saccharification time | min | 10 - 15 | 20
Colour | EBC | 3.6 | 4.0
""",
    truth(
        "N8111",
        moisture=Right("4.1 - 4.5", None, bound="range", range=(4.1, 4.5)),
        friability=Right("84 - 88", None, bound="range", range=(84.0, 88.0)),
        saccharification_time=Right("10 - 15", None, bound="range", range=(10.0, 15.0)),
        colour="3.6",
        doubtful="moisture friability saccharification_time",
    ),
)

sheet(
    "below-the-limit-of-detection",
    "'<LOD' and '<LOQ' with the limits of detection in a column beside.",
    """
# Certificate of Analysis
Pilsner malt   Batch: N8112    Methods: EBC

Parameter | Unit | LOQ | Result
Moisture | % | 0.1 | 4.3
Ochratoxin A | µg/kg | 0.5 | <LOQ
Deoxynivalenol | µg/kg | 20 | 64
Zearalenone | µg/kg | 5 | < LOD
NDMA | µg/kg | 0.5 | n.d.
""",
    truth(
        "N8112",
        moisture="4.3",
        deoxynivalenol="64",
        ochratoxin_a=Right("<LOQ", None),
        zearalenone=Right("< LOD", None),
        ndma=Right("n.d.", None),
        doubtful="ochratoxin_a zearalenone ndma",
    ),
)

sheet(
    "reporting-limit-after-result",
    "The limit of quantification stands after the result and looks like one.",
    """
# Residue report
Malt: Pilsner   Batch: N8113

Analyte | Result | LOQ | Unit
Ochratoxin A | not detected | 0.5 | µg/kg
Deoxynivalenol | 64 | 20 | µg/kg
Zearalenone | not detected | 5 | µg/kg
Arsenic | < 0.05 | 0.05 | mg/kg
""",
    truth(
        "N8113",
        deoxynivalenol="64",
        arsenic=Right("< 0.05", 0.05, bound="<"),
        ochratoxin_a=Right("not detected", None),
        zearalenone=Right("not detected", None),
        doubtful="ochratoxin_a zearalenone",
    ),
)

sheet(
    "dates-as-numbers",
    "Dates that look like results: '4.3' is also the fourth of March.",
    """
# Certificate of Analysis
Pilsner malt   Batch: N8114    Methods: EBC

Parameter | Date | Unit | Result
Moisture | 4.3. | % | 4.6
Extract fine grind, dry | 5.3. | % | 81.4
Friability | 6.3.25 | % | 86
""",
    truth("N8114", moisture="4.6", extract_fine_dry="81.4", friability="86", doubtful="*"),
)

sheet(
    "times-as-numbers",
    "A saccharification time as minutes and seconds, and as hours.",
    """
# Certificate of Analysis
Pilsner malt   Batch: N8115    Methods: EBC

Parameter | Unit | Result
Moisture | % | 4.3
Saccharification time | min | 12:30
Filtration | h:min | 0:45
""",
    truth("N8115", moisture="4.3", shown="12:30 0:45"),
)

sheet(
    "letter-for-digit",
    "An O for a zero and an l for a one, as optical readers write them into a text layer.",
    """
# Certificate of Analysis
Pilsner malt   Batch: N8116    Methods: EBC

Parameter | Unit | Result
Moisture | % | 4.O
Friability | % | 8l
Protein, dry | % | lO.5
Colour | EBC | 3.6
""",
    truth("N8116", colour="3.6", shown="4.O 8l lO.5"),
)

sheet(
    "spaces-within-numbers",
    "Numbers with a space within: a thousands mark in one, two numbers in the other.",
    """
# Certificate of Analysis
Pilsner malt   Batch: N8117    Methods: EBC

Parameter | Unit | Result
Moisture | % | 4. 3
Diastatic power | WK | 3 10
Protein, dry | % | 10 5
Colour | EBC | 3.6
""",
    truth(
        "N8117",
        moisture=Right("4. 3", 4.3),
        diastatic_power=Right("3 10", 310),
        colour="3.6",
        doubtful="moisture diastatic_power",
    ),
)

sheet(
    "fractions-and-approximations",
    "'approx. 4.3', '≈ 86', '3½'.",
    """
# Certificate of Analysis
Pilsner malt   Batch: N8118    Methods: EBC

Parameter | Unit | Result
Moisture | % | approx. 4.3
Friability | % | ≈ 86
Colour | EBC | 3½
Viscosity | mPa.s | 1.52
""",
    truth(
        "N8118",
        moisture=Right("4.3", 4.3),
        friability=Right("86", 86),
        colour=Right("3½", 3.5),
        viscosity="1.52",
        doubtful="moisture friability colour",
    ),
)
