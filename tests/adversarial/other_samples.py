"""Headings and labels of other samples, harvests and values, in the places and languages in which sheets print them."""

from tests.adversarial.case import sheet, truth

_TABLE = """
# Certificate of Analysis
Pilsner malt   Batch: {batch}   Crop: 2024   Methods: EBC

Parameter | Unit | Result
Moisture | % | 4.3
Protein, dry | % | 10.5

{heading}
Friability | % | 83
Colour | EBC | 3.2
"""
_GERMAN = """
# Analysenzertifikat
Pilsner Malz   Charge: {batch}   Ernte: 2024   Methoden: EBC

Merkmal | Einheit | Ergebnis
Wassergehalt | % | 4.3
Eiweiß wfr. | % | 10.5

{heading}
Friabilität | % | 83
Farbe | EBC | 3.2
"""
_FRENCH = """
# Bulletin d'analyse
Malt Pilsen   Lot : {batch}   Récolte : 2024   Méthodes : EBC

Paramètre | Unité | Résultat
Humidité | % | 4.3
Protéines sur sec | % | 10.5

{heading}
Friabilité | % | 83
Couleur | EBC | 3.2
"""
_LINES = """
# Certificate of Analysis
Pilsner malt   Batch: {batch}   Crop: 2024   Methods: EBC

Moisture: 4.3 %
Protein, dry: 10.5 %

{heading}
Friability: 83 %
Colour: 3.2 EBC
"""

_HEADINGS = (
    (_TABLE, "Reference sample"),
    (_TABLE, "Reference"),
    (_TABLE, "Muestra de referencia"),
    (_TABLE, "Referenční vzorek"),
    (_TABLE, "Sample taken at the buyer's"),
    (_TABLE, "Before kilning"),
    (_TABLE, "Counter-analysis"),
    (_TABLE, "Second opinion: Lab Nord"),
    (_TABLE, "Wort of the brewery"),
    (_TABLE, "Crop 2023"),
    (_TABLE, "Crop year 2023"),
    (_TABLE, "2023 crop results"),
    (_TABLE, "Cosecha 2023/24"),
    (_TABLE, "Last harvest"),
    (_GERMAN, "Vergleichsmuster"),
    (_GERMAN, "Rückstellmuster der Vorlieferung"),
    (_GERMAN, "Durchschnitt Ernte 2023"),
    (_GERMAN, "Typische Werte"),
    (_FRENCH, "Échantillon de référence"),
    (_FRENCH, "Échantillon de réserve"),
    (_FRENCH, "Récolte 2023"),
    (_LINES, "Reference sample"),
    (_LINES, "Crop 2023"),
    (_LINES, "Barley"),
    (_LINES, "Specification"),
    (_LINES, "Results of the customer"),
)
for _number, (_text, _heading) in enumerate(_HEADINGS):
    sheet(
        f"other-sample-{_number}",
        f"Rows under '{_heading}' below the results.",
        _text.format(batch=f"S10{_number:02}", heading=_heading),
        truth(f"S10{_number:02}", moisture="4.3", total_protein="10.5", shown="83 3.2"),
    )

sheet(
    "other-sample-unruled",
    "The heading falls into the columns of a table without drawn borders.",
    _TABLE.format(batch="S1101", heading="Échantillon de référence"),
    truth("S1101", moisture="4.3", total_protein="10.5", shown="83 3.2"),
    rules=False,
)

for _number, _heading in enumerate(("Physical analysis", "Congress wort", "Results of this sample", "Crop 2024")):
    sheet(
        f"same-sample-{_number}",
        f"'{_heading}' below the first results speaks of the batch itself.",
        _TABLE.format(batch=f"S120{_number}", heading=_heading),
        truth(f"S120{_number}", moisture="4.3", total_protein="10.5", friability="83", colour="3.2"),
    )

_LABELS = (
    "Colour, typical", "Typical colour", "Colour (guaranteed)", "Target colour", "Colour spec.", "Expected colour",
    "Average colour", "Colour max.", "Colour, reference malt", "Colour crop 2023", "Farbe (typisch)", "Typische Farbe",
    "Farbe (Garantie)", "Farbe (Soll)", "Couleur (typique)", "Color típico", "Colore tipico", "Cor típica",
    "Kleur (typisch)", "Barva (typická)", "Farve (typisk)", "Цветность, норма",
)  # fmt: skip
for _number, _label in enumerate(_LABELS):
    sheet(
        f"label-of-another-value-{_number}",
        f"The row '{_label}' gives no result of the batch.",
        f"""
# Certificate of Analysis
Pilsner malt   Batch: S13{_number:02}   Methods: EBC

Parameter | Unit | Result
Moisture | % | 4.3
Friability | % | 86
{_label} | EBC | 3.9
""",
        truth(f"S13{_number:02}", moisture="4.3", friability="86", shown="3.9"),
    )

sheet(
    "kolbach-of-the-last-year",
    "The Kolbach index of another year beside that of the batch.",
    """
# Certificate of Analysis
Pilsner malt   Batch: S1401   Crop: 2024   Methods: EBC

Parameter | Unit | Result
Moisture | % | 4.3
Kolbach index | % | 41.2
Kolbach index 2023 | % | 43.9
""",
    truth("S1401", moisture="4.3", nitrogen_ratio="41.2", doubtful="nitrogen_ratio", shown="43.9"),
)

sheet(
    "limits-in-labels",
    "What is agreed stands in brackets behind the names; the results are those of the batch.",
    """
# Certificate of Analysis
Pilsner malt   Batch: S1402   Methods: EBC

Parameter | Unit | Result
Moisture (spec. max. 5.0) | % | 4.3
Friability (guaranteed: 80 - 95) | % | 86
Colour (target 3.5) | EBC | 3.2
""",
    truth("S1402", moisture="4.3", friability="86", colour="3.2"),
)

for _number, _sample in enumerate(("Reference malt", "Previous delivery", "Crop 2023", "Typical")):
    sheet(
        f"sample-in-a-merged-cell-{_number}",
        "A merged cell beside the names says of which sample the rows are.",
        f"""
# Certificate of Analysis
Pilsner malt   Batch: S15{_number}0   Methods: EBC

Sample | Parameter | Unit | Result
This lot | Moisture | % | 4.3
^^ | Protein, dry | % | 10.5
^^ | Friability | % | 86
{_sample} | Viscosity | mPa.s | 1.52
^^ | Kolbach index | % | 41
""",
        truth(f"S15{_number}0", moisture="4.3", total_protein="10.5", friability="86", shown="1.52 41"),
    )
    sheet(
        f"sample-in-a-remark-{_number}",
        "A remark behind the results says of which sample the row is.",
        f"""
# Certificate of Analysis
Pilsner malt   Batch: S16{_number}0   Methods: EBC

Parameter | Unit | Result | Remark
Moisture | % | 4.3 | within limits
Protein, dry | % | 10.5 |
Viscosity | mPa.s | 1.52 | {_sample}
""",
        truth(f"S16{_number}0", moisture="4.3", total_protein="10.5", shown="1.52"),
    )
    sheet(
        f"sample-in-a-footnote-{_number}",
        "A footnote says of which sample the row is.",
        f"""
# Certificate of Analysis
Pilsner malt   Batch: S17{_number}0   Methods: EBC

Parameter | Unit | Result
Moisture | % | 4.3
Protein, dry | % | 10.5
Viscosity * | mPa.s | 1.52

~ * {_sample}
""",
        truth(f"S17{_number}0", moisture="4.3", total_protein="10.5", shown="1.52"),
    )

sheet(
    "determinations-counted-in-a-row",
    "Lots in rows, and a row that counts the determinations.",
    """
# Certificate of Analysis
Pilsner malt   Methods: EBC

Batch | Moisture, % | Protein, dry, % | Friability, %
n | 2 | 2 | 2
S1801 | 4.3 | 10.5 | 86
""",
    truth("S1801", moisture="4.3", total_protein="10.5", friability="86", doubtful="*"),
)
