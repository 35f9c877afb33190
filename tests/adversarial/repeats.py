"""Determinations and their mean, and means of something else."""

from tests.adversarial.case import sheet, truth

TITLE = """
# Certificate of Analysis
Pilsner malt   Batch: {}    Methods: EBC
"""

sheet(
    "mean-of-two-determinations",
    "Two determinations and their mean, which is the result.",
    TITLE.format("W3101")
    + """
Parameter | Unit | Det. 1 | Det. 2 | Mean
Moisture | % | 4.42 | 4.46 | 4.44
Extract fine grind, dry | % | 81.3 | 81.5 | 81.4
Protein, dry | % | 10.52 | 10.60 | 10.56
Friability | % | 86.1 | 86.9 | 86.5
""",
    truth("W3101", moisture="4.44", extract_fine_dry="81.4", total_protein="10.56", friability="86.5"),
)

sheet(
    "mean-that-is-none-of-the-determinations",
    "Beside two determinations stands a mean of other samples.",
    TITLE.format("W3102")
    + """
Parameter | Unit | Det. 1 | Det. 2 | Mean
Moisture | % | 4.42 | 4.46 | 4.70
Extract fine grind, dry | % | 81.3 | 81.5 | 80.9
Protein, dry | % | 10.52 | 10.60 | 10.95
Friability | % | 86.1 | 86.9 | 84.0
""",
    truth("W3102", shown="4.42 81.3 10.52 86.1 4.46 81.5 10.60 86.9"),
)

sheet(
    "mean-of-two-lots",
    "The mean of two lots is the result of neither.",
    TITLE.format("W3103")
    + """
Parameter | Unit | Lot 1 | Lot 2 | Mean
Moisture | % | 4.2 | 4.6 | 4.4
Extract fine grind, dry | % | 81.0 | 81.8 | 81.4
Protein, dry | % | 10.2 | 10.8 | 10.5
Friability | % | 84 | 88 | 86
""",
    truth("1", moisture="4.2", extract_fine_dry="81.0", total_protein="10.2", friability="84"),
    truth("2", moisture="4.6", extract_fine_dry="81.8", total_protein="10.8", friability="88"),
)

sheet(
    "mean-of-harvests",
    "The mean of two harvests stands beside them.",
    TITLE.format("W3104")
    + """
Parameter | Unit | 2022 | 2023 | Mean
Moisture | % | 4.2 | 4.6 | 4.4
Extract fine grind, dry | % | 81.0 | 81.8 | 81.4
Protein, dry | % | 10.2 | 10.8 | 10.5
Friability | % | 84 | 88 | 86
""",
    truth("W3104", shown="4.2 81.0 10.2 84 4.6 81.8 10.8 88"),
)

sheet(
    "mean-row-of-counted-samples",
    "Two counted samples in rows and their mean.",
    TITLE.format("W3105")
    + """
No. | Moisture % | Extract fine grind, dry % | Protein, dry % | Friability %
1 | 4.3 | 81.5 | 10.4 | 87
2 | 4.5 | 81.3 | 10.6 | 85
Mean | 4.4 | 81.4 | 10.5 | 86
""",
    truth("W3105", moisture="4.4", extract_fine_dry="81.4", total_protein="10.5", friability="86", doubtful="*"),
)

sheet(
    "mean-row-of-something-else",
    "The row of a mean is not that of the counted rows above it.",
    TITLE.format("W3106")
    + """
No. | Moisture % | Extract fine grind, dry % | Protein, dry % | Friability %
1 | 4.3 | 81.5 | 10.4 | 87
2 | 4.5 | 81.3 | 10.6 | 85
Mean | 4.7 | 80.8 | 10.9 | 83
""",
    truth("W3106", shown="4.3 81.5 10.4 87 4.7 80.8 10.9 83"),
)

sheet(
    "second-opinion-in-lines",
    "Below the results stand those of another laboratory, as a line says with its name.",
    """
# Certificate of Analysis
Pilsner malt   Batch: W3107    Methods: EBC

Moisture: 4.3 %
Extract fine grind, dry: 81.4 %
Colour: 3.2 EBC
Second opinion: Laboratory Westing
Protein, dry: 10.9 %
Kolbach index: 40.4 %
Friability: 84 %
""",
    truth("W3107", moisture="4.3", extract_fine_dry="81.4", colour="3.2", shown="10.9 40.4 84"),
)

sheet(
    "remark-names-another-harvest",
    "A remark says that one figure is of an earlier harvest.",
    """
# Certificate of Analysis
Pilsner malt   Batch: W3108    Crop: 2024    Methods: EBC

Parameter | Unit | Result | Remark
Moisture | % | 4.3 |
Extract fine grind, dry | % | 81.4 |
Protein, dry | % | 10.5 | from crop 2023
Friability | % | 86 |
""",
    truth("W3108", moisture="4.3", extract_fine_dry="81.4", friability="86", shown="10.5"),
)

sheet(
    "year-in-the-column-of-batches",
    "Below the batch stands the mean of a year, in the column of batch numbers.",
    """
# Malt analyses
Methods: EBC

Batch | Moisture % | Colour EBC | Friability %
W3109 | 4.4 | 3.2 | 88
2023 | 4.6 | 3.6 | 84
""",
    truth("W3109", moisture="4.4", colour="3.2", friability="88"),
    truth(None, shown="4.6 3.6 84"),
)

sheet(
    "limits-under-a-group-beside-the-heads",
    "The heads stand half-way between a group of limits and what is below it.",
    """
# Certificate of Analysis
Pilsner malt   Batch: W3110    Methods: EBC

@300 Specification
@50 Parameter @180 Unit @230 Result @400 Method
@290 min @340 max
@50 Moisture @180 % @230 4.3 @340 5.0 @400 4.2
@50 Extract fine grind, dry @180 % @230 81.4 @290 80.5 @400 4.5.1
@50 Protein, dry @180 % @230 10.5 @290 9.5 @340 11.2 @400 4.3.2
@50 Friability @180 % @230 86 @290 82 @400 4.15
""",
    truth("W3110", moisture="4.3", extract_fine_dry="81.4", total_protein="10.5", friability="86"),
)

sheet(
    "subject-is-a-batch",
    "The subject of a letter names the batch and no malt.",
    """
Subject: Analysis batch W3111
Methods: EBC

Parameter | Unit | Result
Moisture | % | 4.3
Extract fine grind, dry | % | 81.4
Friability | % | 86
""",
    truth("W3111", moisture="4.3", extract_fine_dry="81.4", friability="86", head={"batch": "W3111"}),
)

sheet(
    "kind-of-malt-as-variety",
    "The word before the malt means the variety of barley on other sheets.",
    """
# Malzanalyse
Sorte: Münchner Malz Typ I   Partie: W3112    Methoden: MEBAK

Parameter | Einheit | Ergebnis
Wassergehalt | % | 4,3
Extrakt wfr. | % | 80,4
Friabilität | % | 86
""",
    truth(
        "W3112",
        moisture="4,3",
        extract_fine_dry="80,4",
        friability="86",
        head={"malt": "Münchner Malz Typ I", "variety": ""},
    ),
)

sheet(
    "malt-before-the-caption-of-batches",
    "The name of the malt ends in the word that the next caption could begin with.",
    """
# Certificate of Analysis
Malt: Pale Malt Batch: W3113 Crop: 2024
Methods: EBC

Parameter | Unit | Result
Moisture | % | 4.3
Extract fine grind, dry | % | 81.4
Friability | % | 86
""",
    truth("W3113", moisture="4.3", extract_fine_dry="81.4", friability="86", head={"malt": "Pale Malt"}),
)

sheet(
    "title-with-the-number-of-the-certificate",
    "The number in the title is that of the certificate; the batch has one of its own.",
    """
# Protokol o rozboru sladu č. 318/2025
Druh sladu: Plzeňský slad    Šarže: W3114    Metody: EBC

Ukazatel | Jednotka | Hodnota
Vlhkost | % | 4,3
Extrakt v sušině | % | 81,4
Friabilita | % | 86
""",
    truth("W3114", moisture="4,3", extract_fine_dry="81,4", friability="86"),
)
