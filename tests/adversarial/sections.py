"""The same row means something else in another section, or under another name."""

from tests.adversarial.case import Right, sheet, truth

sheet(
    "barley-and-malt-sections",
    "Barley and malt sections have the same rows; the barley comes first.",
    """
# Certificate of Analysis
Pilsner malt   Batch: T7101    Methods: EBC

Barley | Unit | Result
Moisture | % | 12.8
Protein, dry | % | 11.2
Thousand corn weight | g | 45.2
Malt | Unit | Result
Moisture | % | 4.3
Protein, dry | % | 10.5
Thousand corn weight | g | 38.6
""",
    truth("T7101", moisture="4.3", total_protein="10.5", thousand_corn_weight="38.6", doubtful="*", shown="12.8 45.2"),
)

sheet(
    "barley-section-below",
    "The barley stands below the malt, after a line of text, and has rows that the malt has not.",
    """
# Certificate of Analysis
Pilsner malt   Batch: T7102    Methods: EBC

Parameter | Unit | Result
Moisture | % | 4.3
Extract fine grind, dry | % | 81.4

Raw material: spring barley, variety Brindale

Parameter | Unit | Result
Protein, dry | % | 11.2
Thousand corn weight | g | 45.2
Sieve fraction over 2.5 mm | % | 93.1
""",
    truth("T7102", moisture="4.3", extract_fine_dry="81.4", shown="11.2 45.2 93.1"),
)

sheet(
    "green-malt-column",
    "Green malt and kilned malt side by side.",
    """
# Certificate of Analysis
Pilsner malt   Batch: T7103    Methods: EBC

Parameter | Unit | Green malt | Kilned malt
Moisture | % | 43.5 | 4.3
Protein, dry | % | 10.6 | 10.5
Diastatic power | WK | 410 | 310
Alpha-amylase | DU | 62 | 51
""",
    truth("T7103", moisture="4.3", total_protein="10.5", diastatic_power="310", alpha_amylase="51", doubtful="*"),
)

sheet(
    "green-malt-rows",
    "Rows named for the green malt among those of the malt.",
    """
# Certificate of Analysis
Pilsner malt   Batch: T7104    Methods: EBC

Parameter | Unit | Result
Green malt moisture | % | 43.5
Moisture | % | 4.3
Protein of barley, dry | % | 11.2
Protein, dry | % | 10.5
Friability | % | 86
""",
    truth("T7104", moisture="4.3", total_protein="10.5", friability="86", shown="43.5 11.2"),
)

sheet(
    "nitrogen-labelled-protein",
    "The row says protein, the figure is nitrogen; soluble nitrogen and the ratio contradict it.",
    """
# Certificate of Analysis
Pilsner malt   Batch: T7105    Methods: EBC

Parameter | Unit | Result
Moisture | % | 4.3
Total protein, dry | % | 1.68
Soluble nitrogen, dry | % | 0.69
Kolbach index | % | 41.1
""",
    truth("T7105", moisture="4.3", soluble_nitrogen="0.69", nitrogen_ratio="41.1", shown="1.68"),
)

sheet(
    "protein-labelled-nitrogen",
    "The row says nitrogen, the figure is protein.",
    """
# Certificate of Analysis
Pilsner malt   Batch: T7106    Methods: EBC

Parameter | Unit | Result
Moisture | % | 4.3
Total nitrogen, dry | % | 10.5
Soluble nitrogen, dry | % | 4.31
Kolbach index | % | 41.0
""",
    truth("T7106", moisture="4.3", nitrogen_ratio="41.0", shown="10.5 4.31"),
)

sheet(
    "other-protein-factor",
    "Protein by the factor 5.7, as the footnote says: not the protein of the trade's factor 6.25.",
    """
# Certificate of Analysis
Wheat malt   Batch: T7107    Methods: EBC

Parameter | Unit | Result
Moisture | % | 4.9
Total nitrogen, dry | % | 1.95
Total protein (N x 5.7), dry | % | 11.1

~ Protein is calculated with the factor 5.7.
""",
    truth("T7107", moisture="4.9", total_nitrogen="1.95", shown="11.1"),
)

sheet(
    "wort-at-twelve-plato",
    "Figures of a wort of 12 °P, not of the Congress wort.",
    """
# Certificate of Analysis
Pilsner malt   Batch: T7108    Methods: EBC

Parameter | Unit | Result
Moisture | % | 4.3
Free amino nitrogen (wort 12 °P) | mg/l | 214
Viscosity (wort 12 °P) | mPa.s | 1.78
Beta-glucan (wort 12 °P) | mg/l | 240
""",
    truth("T7108", moisture="4.3", shown="214 1.78 240"),
)

sheet(
    "wort-strength-in-the-head",
    "The strength of the wort is named in the head of the section alone.",
    """
# Certificate of Analysis
Pilsner malt   Batch: T7109    Methods: EBC

Malt | Unit | Result
Moisture | % | 4.3
Friability | % | 86
Brewhouse wort 12.0 °P | Unit | Result
Free amino nitrogen | mg/l | 214
Viscosity | mPa.s | 1.78
Colour | EBC | 7.9
""",
    truth("T7109", moisture="4.3", friability="86", shown="214 1.78 7.9"),
)

sheet(
    "viscosity-of-other-strength",
    "Viscosity corrected to 12 % beside the one at 8.6 %.",
    """
# Certificate of Analysis
Pilsner malt   Batch: T7110    Methods: EBC

Parameter | Unit | Result
Moisture | % | 4.3
Viscosity at 12 % | mPa.s | 1.78
Viscosity at 8.6 % | mPa.s | 1.52
""",
    truth("T7110", moisture="4.3", viscosity="1.52", shown="1.78", doubtful="viscosity"),
)

sheet(
    "percent-of-extract",
    "Soluble nitrogen in percent of the extract, extract in percent of another thing.",
    """
# Certificate of Analysis
Pilsner malt   Batch: T7111    Methods: EBC

Parameter | Unit | Result
Moisture | % | 4.3
Soluble nitrogen | % of extract | 0.85
Beta-glucan | % of extract | 0.21
Fermentable extract | % of extract | 68.4
""",
    truth("T7111", moisture="4.3", shown="0.85 0.21 68.4"),
)

sheet(
    "extract-yield-of-brewhouse",
    "The yield of the brewhouse is called extract as well.",
    """
# Certificate of Analysis
Pilsner malt   Batch: T7112    Methods: EBC

Parameter | Unit | Result
Moisture | % | 4.3
Brewhouse extract yield | % | 76.2
Extract content of wort | % | 12.1
Extract fine grind, dry | % | 81.4
""",
    truth("T7112", moisture="4.3", extract_fine_dry="81.4", shown="76.2 12.1", doubtful="extract_fine_dry"),
)

sheet(
    "boiled-and-plain-colour",
    "Colour after boiling and plain colour under one label cell 'Colour'.",
    """
# Certificate of Analysis
Pilsner malt   Batch: T7113    Methods: EBC

Parameter | | Unit | Result
Colour | after boiling | EBC | 5.4
^^ | of wort | EBC | 3.6
Moisture | of malt | % | 4.3
""",
    truth("T7113", moisture="4.3", boiled_colour="5.4", colour="3.6", doubtful="*"),
)

sheet(
    "sieves-of-barley-and-malt",
    "Sieve rows whose group cell says what they are of; the groups have the same sizes.",
    """
# Certificate of Analysis
Pilsner malt   Batch: T7114    Methods: EBC

Material | Fraction | Unit | Result
Barley | over 2.8 mm | % | 71.3
^^ | 2.5 - 2.8 mm | % | 21.8
^^ | below 2.2 mm | % | 1.2
Malt | over 2.8 mm | % | 66.4
^^ | 2.5 - 2.8 mm | % | 25.1
^^ | below 2.2 mm | % | 1.9
""",
    truth(
        "T7114",
        sieve_over_2_8="66.4",
        sieve_2_5_to_2_8="25.1",
        sieve_under_2_2="1.9",
        doubtful="*",
        shown="71.3 21.8 1.2",
    ),
)

sheet(
    "label-of-two-parameters",
    "One row holds two parameters and two figures.",
    """
# Certificate of Analysis
Pilsner malt   Batch: T7115    Methods: EBC

Parameter | Unit | Result
Moisture | % | 4.3
Friability / homogeneity | % | 86 / 97
Extract fine / coarse, dry | % | 81.4 / 79.8
""",
    truth(
        "T7115",
        moisture="4.3",
        friability=Right("86", 86),
        homogeneity=Right("97", 97),
        extract_fine_dry=Right("81.4", 81.4),
        extract_coarse_dry=Right("79.8", 79.8),
        doubtful="friability homogeneity extract_fine_dry extract_coarse_dry",
    ),
)

sheet(
    "final-attenuation-real-and-apparent",
    "Real attenuation is not the apparent one.",
    """
# Certificate of Analysis
Pilsner malt   Batch: T7116    Methods: EBC

Parameter | Unit | Result
Moisture | % | 4.3
Real final attenuation | % | 66.1
Real degree of fermentation | % | 66.1
""",
    truth("T7116", moisture="4.3", shown="66.1"),
)

_LATER = """
# Certificate of Analysis
Pilsner malt   Batch: {batch}    Methods: EBC

Parameter | Unit | Result
Moisture | % | 4.3
Protein, dry | % | 10.5

{heading}
Friability | % | 83
Colour | EBC | 3.2
"""

for _number, _heading in enumerate(
    (
        "Retained sample of lot D1099",
        "Averages of the last 12 months",
        "Limits of the contract",
        "Tolerances",
        "Recommended for lager",
        "Quality control of the laboratory: control malt",
        "Repeat analysis",
        "Rückstellmuster",
        "Malt de référence",
    )
):
    sheet(
        f"later-rows-of-another-sample-{_number}",
        f"Rows under '{_heading}' below the results: nothing of the delivered batch.",
        _LATER.format(batch=f"H86{_number}0", heading=_heading),
        truth(f"H86{_number}0", moisture="4.3", total_protein="10.5", shown="83 3.2"),
    )

sheet(
    "annex-of-a-reference-sample",
    "The second page has results of a reference sample.",
    """
# Certificate of Analysis
Pilsner malt   Batch: H8701    Methods: EBC

Parameter | Unit | Result
Moisture | % | 4.3
Protein, dry | % | 10.5
===
Annex: reference sample
Parameter | Unit | Result
Friability | % | 83
Colour | EBC | 3.2
""",
    truth("H8701", moisture="4.3", total_protein="10.5", shown="83 3.2"),
)

sheet(
    "values-of-control-malt-throughout",
    "The heading stands over all rows: the sheet is about this sample.",
    """
# Certificate of Analysis: reference malt
Pilsner malt   Batch: H8702    Methods: EBC

Parameter | Unit | Result
Moisture | % | 4.3
Protein, dry | % | 10.5
Friability | % | 83
""",
    truth("H8702", moisture="4.3", total_protein="10.5", friability="83"),
)

sheet(
    "later-rows-below-a-chopped-heading",
    "The words of the heading fall into the columns of the table above it, none of them into that of the results.",
    _LATER.format(batch="H8703", heading="Échantillon de référence"),
    truth("H8703", moisture="4.3", total_protein="10.5", shown="83 3.2"),
)
