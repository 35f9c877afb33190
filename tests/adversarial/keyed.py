"""Keys that say what marks in heads and names stand for, and lists that look like such keys."""

from tests.adversarial.case import sheet, truth

RIGHT = {"moisture": "4.3", "extract_fine_dry": "81.4", "total_protein": "10.5", "friability": "86"}
NAMED = {"malt": "Pilsner malt", "supplier": "Lindwood Maltings Ltd"}

HEAD = """
# Lindwood Maltings Ltd
Certificate of Analysis
Product: Pilsner malt
Lot no.: {}
Methods: EBC
"""

sheet(
    "samples-counted-and-a-list-of-services",
    "Heads 1 to 4 count samples; the numbered list below says what else could be determined.",
    HEAD.format("M1101")
    + """
Parameter | Unit | 1 | 2 | 3 | 4
Moisture | % | 4.3 | 4.6 | 4.4 | 4.5
Friability | % | 86 | 82 | 84 | 83
Extract fine grind, dry | % | 81.4 | 80.7 | 81.1 | 80.9

We also determine on request:
1 Kolbach index
2 Viscosity
3 Colour
4 Total protein, dry
""",
    truth("M1101", shown="4.3 86 81.4 4.6 82 80.7", head=NAMED),
)

sheet(
    "remarks-on-samples-a-to-c",
    "Heads A to C are samples; remarks on the samples begin with names of parameters.",
    HEAD.format("M1102")
    + """
Parameter | Unit | A | B | C
Moisture | % | 4.3 | 5.1 | 4.4
Friability | % | 86 | 82 | 71
Extract fine grind, dry | % | 81.4 | 79.2 | 81.1

A: Extract in order
B: Moisture above contract
C: Friability below contract
""",
    truth("M1102", shown="4.3 86 81.4 5.1 79.2 71", head=NAMED),
)

sheet(
    "key-of-laboratories",
    "The marks in the heads are laboratories; the key names what each of them is known for.",
    HEAD.format("M1103")
    + """
Parameter | Unit | M | N | R
Moisture | % | 4.3 | 4.6 | 4.4
Extract fine grind, dry | % | 81.4 | 80.7 | 81.1
Friability | % | 86 | 82 | 84

M = Moisture laboratory, Lindwood
N = Nitrogen laboratory, Ostrava
R = Reference laboratory
""",
    truth("M1103", shown="4.3 81.4 86", head=NAMED),
)

sheet(
    "two-tables-two-keys",
    "Two tables with heads A to D, each with a key of its own below it.",
    """
# Lindwood Maltings Ltd
Product: Pilsner malt    Methods: EBC

Lot no. | A | B | C | D
M1104 | 4.3 | 81.4 | 10.5 | 86
M1105 | 4.6 | 80.7 | 11.2 | 82
A = Moisture, %
B = Extract fine grind, dry, %
C = Protein, dry, %
D = Friability, %

Lot no. | A | B | C | D
M1104 | 39.1 | 5.94 | 152 | 310
M1105 | 41.2 | 5.88 | 144 | 295
A = Kolbach index, %
B = pH
C = Free amino nitrogen, mg/l
D = Diastatic power, WK
""",
    truth(
        "M1104",
        **RIGHT,
        nitrogen_ratio="39.1",
        wort_ph="5.94",
        free_amino_nitrogen="152",
        diastatic_power="310",
        doubtful="*",
        head=NAMED,
    ),
    truth(
        "M1105",
        moisture="4.6",
        extract_fine_dry="80.7",
        total_protein="11.2",
        friability="82",
        nitrogen_ratio="41.2",
        wort_ph="5.88",
        free_amino_nitrogen="144",
        diastatic_power="295",
        doubtful="*",
        head=NAMED,
    ),
)

sheet(
    "two-keys-below-both-tables",
    "The keys of two tables stand below both; the same letters mean something else in each.",
    """
# Lindwood Maltings Ltd
Product: Pilsner malt    Methods: EBC

Grain
Lot no. | A | B | C
M1106 | 4.3 | 10.5 | 86
M1107 | 4.6 | 11.2 | 82

Wort
Lot no. | A | B | C
M1106 | 39.1 | 5.94 | 152
M1107 | 41.2 | 5.88 | 144

Grain: A = Moisture %; B = Protein, dry %; C = Friability %
Wort: A = Kolbach index %; B = pH; C = Free amino nitrogen mg/l
""",
    truth(
        "M1106",
        moisture="4.3",
        total_protein="10.5",
        friability="86",
        nitrogen_ratio="39.1",
        wort_ph="5.94",
        free_amino_nitrogen="152",
        doubtful="*",
        head=NAMED,
    ),
    truth(
        "M1107",
        moisture="4.6",
        total_protein="11.2",
        friability="82",
        nitrogen_ratio="41.2",
        wort_ph="5.88",
        free_amino_nitrogen="144",
        doubtful="*",
        head=NAMED,
    ),
)

sheet(
    "key-and-unit-contradict",
    "The key says colour, the line of units below the mark says mg/l; two more say % of dry extract.",
    """
# Lindwood Maltings Ltd
Product: Pilsner malt    Methods: EBC

Lot no. | (1) | (2) | (3) | (4)
 | % | % | mg/l | %
M1108 | 4.3 | 81.4 | 4.1 | 86
M1109 | 4.6 | 80.7 | 3.9 | 82

(1) Moisture
(2) Extract fine grind, dry
(3) Colour
(4) Friability
""",
    truth("M1108", moisture="4.3", extract_fine_dry="81.4", friability="86", shown="4.1", doubtful="*", head=NAMED),
    truth("M1109", moisture="4.6", extract_fine_dry="80.7", friability="82", shown="3.9", doubtful="*", head=NAMED),
)

sheet(
    "key-on-the-next-page",
    "The key of page 2 stands on page 1, where the same marks mean other columns.",
    """
# Lindwood Maltings Ltd
Product: Pilsner malt    Methods: EBC

Lot no. | A | B | C
M1110 | 4.3 | 10.5 | 86
M1111 | 4.6 | 11.2 | 82

A = Moisture %
B = Protein, dry %
C = Friability %
===
Lot no. | A | B | C
M1110 | 81.4 | 5.94 | 39.1
M1111 | 80.7 | 5.88 | 41.2

A = Extract fine grind, dry %
B = pH
C = Kolbach index %
""",
    truth("M1110", **RIGHT, wort_ph="5.94", nitrogen_ratio="39.1", doubtful="*", head=NAMED),
    truth(
        "M1111",
        moisture="4.6",
        total_protein="11.2",
        friability="82",
        extract_fine_dry="80.7",
        wort_ph="5.88",
        nitrogen_ratio="41.2",
        doubtful="*",
        head=NAMED,
    ),
)

sheet(
    "key-of-page-one-only",
    "Page 2 has the marks of page 1 in another order and no key of its own.",
    """
# Lindwood Maltings Ltd
Product: Pilsner malt    Methods: EBC

Lot no. | A | B | C
M1112 | 4.3 | 10.5 | 86

A = Moisture %
B = Protein, dry %
C = Friability %
===
Lot no. | C | A | B
M1113 | 82 | 4.6 | 11.2
""",
    truth("M1112", moisture="4.3", total_protein="10.5", friability="86", doubtful="*", head=NAMED),
    truth("M1113", moisture="4.6", total_protein="11.2", friability="82", doubtful="*", head=NAMED),
)

sheet(
    "key-in-two-columns",
    "The key runs down two columns, which a reader along the lines would mix up.",
    """
# Mälzerei Hohenried GmbH
Produkt: Pilsner Malz    Methoden: MEBAK

Charge | (1) | (2) | (3) | (4) | (5) | (6)
M1114 | 4,3 | 81,4 | 10,5 | 86 | 39,1 | 5,94
M1115 | 4,6 | 80,7 | 11,2 | 82 | 41,2 | 5,88

@50 (1) Wassergehalt, % @260 (4) Friabilimeterwert, %
@50 (2) Extrakt, wfr., % @260 (5) Kolbachzahl, %
@50 (3) Eiweiß, wfr., % @260 (6) pH
""",
    truth(
        "M1114",
        moisture="4,3",
        extract_fine_dry="81,4",
        total_protein="10,5",
        friability="86",
        nitrogen_ratio="39,1",
        wort_ph="5,94",
        doubtful="*",
        head={"malt": "Pilsner Malz", "supplier": "Mälzerei Hohenried GmbH"},
    ),
    truth(
        "M1115",
        moisture="4,6",
        extract_fine_dry="80,7",
        total_protein="11,2",
        friability="82",
        nitrogen_ratio="41,2",
        wort_ph="5,88",
        doubtful="*",
        head={"malt": "Pilsner Malz", "supplier": "Mälzerei Hohenried GmbH"},
    ),
)

sheet(
    "ranks-that-equal-marks",
    "A line of ranks 3, 1, 4, 2 stands above the numbered heads, and the key is numbered 1 to 4.",
    """
# Lindwood Maltings Ltd
Product: Pilsner malt    Methods: EBC

Column of the ledger | 3 | 1 | 4 | 2
Lot no. | (1) | (2) | (3) | (4)
M1116 | 4.3 | 81.4 | 10.5 | 86
M1117 | 4.6 | 80.7 | 11.2 | 82

1 Moisture %
2 Extract fine grind, dry %
3 Protein, dry %
4 Friability %
""",
    truth("M1116", **RIGHT, doubtful="*", head=NAMED),
    truth(
        "M1117",
        moisture="4.6",
        extract_fine_dry="80.7",
        total_protein="11.2",
        friability="82",
        doubtful="*",
        head=NAMED,
    ),
)

sheet(
    "glossary-that-holds-units",
    "A glossary of abbreviations, among them names that are units as well.",
    HEAD.format("M1118")
    + """
Parameter | Unit | Result
M | % | 4.3
FAN | mg/l | 152
DP | WK | 310
Col | EBC | 3.6

M: Moisture
FAN: Free amino nitrogen
DP: Diastatic power
Col: Colour after boiling
EBC: Colour units
""",
    truth(
        "M1118",
        moisture="4.3",
        free_amino_nitrogen="152",
        diastatic_power="310",
        boiled_colour="3.6",
        doubtful="*",
        head=NAMED,
    ),
)

sheet(
    "footnotes-behind-values",
    "Footnote signs behind results; the footnotes begin with names of parameters.",
    HEAD.format("M1119")
    + """
Parameter | Unit | Result | Note
Moisture | % | 4.3 | 3
Extract fine grind, dry | % | 81.4 | 1
Protein, dry | % | 10.5 | 2
Friability | % | 86 | 4

1 Moisture of the sample before grinding was used
2 Kjeldahl nitrogen x 6.25
3 Extract dishes, 105 °C
4 Viscosity on request
""",
    truth("M1119", **RIGHT, doubtful="*", head=NAMED),
)

sheet(
    "key-of-sieves",
    "Marks a to d are sieves in one table, and parameters in the key of another.",
    """
# Lindwood Maltings Ltd
Product: Pilsner malt    Lot no.: M1120    Methods: EBC

Sorting | a | b | c | d
% | 62.1 | 31.0 | 5.4 | 1.5

Analysis | a | b | c | d
Result | 4.3 | 81.4 | 10.5 | 86

a) Moisture, %
b) Extract fine grind, dry, %
c) Protein, dry, %
d) Friability, %
""",
    truth("M1120", **RIGHT, shown="62.1", doubtful="*", head=NAMED),
)
