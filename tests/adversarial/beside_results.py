"""What stands beside results, or in one cell with them: limits, marks of footnotes, limits of quantification."""

from tests.adversarial.case import sheet, truth

_VERSUS = (
    "4.3 vs. 5.0 %", "4.3 % vs. max. 5.0 %", "4.3 versus 5.0 %", "4.3 gegenüber 5.0 %", "4.3 contre 5.0 %",
    "4.3 against 5.0 %", "4.3 instead of 5.0 %", "4.3 % of 5.0 % allowed",
)  # fmt: skip
for _number, _text in enumerate(_VERSUS):
    sheet(
        f"result-versus-limit-{_number}",
        "A result and its limit with a word between them.",
        f"""
# Certificate of Analysis
Pilsner malt   Batch: B10{_number}0   Methods: EBC

Moisture: {_text}
Friability: 86 %
Colour: 3.4 EBC
""",
        truth(f"B10{_number}0", moisture="4.3", friability="86", colour="3.4", doubtful="moisture"),
    )

_AMONG_LIMITS = (
    "Parameter | Limit\nMoisture 4.3 % | max. 5.0\nFriability 86 % | min. 80",
    "Parameter | Limit\nMoisture: 4.3 % | max. 5.0\nFriability: 86 % | min. 80",
    "Parameter | Limit\nMoisture | 4.3 % (max. 5.0)\nFriability | 86 % (min. 80)",
    "Analyse | Grenzwert\nWassergehalt 4.3 % | max. 5.0\nFriabilität 86 % | min. 80",
    "Parameter | Limit |\nMoisture | max. 5.0 % | 4.3\nFriability | min. 80 % | 86",
    "Parameter | Limit |\nMoisture | 5.0 | 4.3 %\nFriability | 80 | 86 %",
)
for _number, _text in enumerate(_AMONG_LIMITS):
    sheet(
        f"results-among-limits-{_number}",
        "No head names the results; they stand in another cell.",
        f"""
# Certificate of Analysis
Pilsner malt   Batch: B11{_number}0   Methods: EBC

{_text}
""",
        truth(f"B11{_number}0", moisture="4.3", friability="86", doubtful="*"),
    )

_MARKS = (
    ("~ 1) determined by the external laboratory", "4.31", ""),
    ("~ 1 determined by the external laboratory", "4.31", ""),
    ("~ ¹ not accredited", "4.31", ""),
    ("~ 1) calculated\n~ 2) not accredited", "4.32", "max 5.0"),
)
for _number, (_notes, _value, _limit) in enumerate(_MARKS):
    sheet(
        f"mark-of-a-footnote-as-large-as-the-number-{_number}",
        f"{_value} is 4.3 with the mark of a footnote.",
        f"""
# Certificate of Analysis
Pilsner malt   Batch: B12{_number}0   Methods: EBC

Parameter | Unit | Limit | Result
Moisture | % | {_limit} | {_value}
Extract fine grind, dry | % | | 81.4
Protein, dry | % | | 10.5
{_notes}
""",
        truth(f"B12{_number}0", extract_fine_dry="81.4", total_protein="10.5", shown=_value),
    )

for _number, (_label, _notes, _other) in enumerate(
    (
        ("Moisture", "", "10.5"),
        ("Moisture ¹", "~ ¹ not accredited", "10.5"),
        ("Moisture", "~ 2) not accredited", "10.5"),
        ("Moisture", "~ 1) not accredited", "10.52"),
    )
):
    sheet(
        f"last-digit-is-no-mark-{_number}",
        "No note has the last digit, the row has its mark elsewhere, or all figures are as precise.",
        f"""
# Certificate of Analysis
Pilsner malt   Batch: B13{_number}0   Methods: EBC

Parameter | Unit | Result
{_label} | % | 4.31
Protein, dry | % | {_other}
{_notes}
""",
        truth(f"B13{_number}0", moisture="4.31", total_protein=_other),
    )

for _number, _head in enumerate(
    ("BG", "NG", "NWG", "LOQ", "LQ", "RL", "Messunsicherheit", "Bestimmungs-grenze", "Messuns.", "n", "r")
):
    sheet(
        f"column-beside-the-result-{_number}",
        f"The column '{_head}' beside that of the results.",
        f"""
# Analysenzertifikat
Pilsner Malz   Charge: B14{_number:02}   Methoden: EBC

Parameter | Einheit | {_head} | Ergebnis
NDMA | µg/kg | 0.5 | 1.2
Arsen | mg/kg | 0.01 | 0.04
Wassergehalt | % | 0.1 | 4.3
""",
        truth(f"B14{_number:02}", ndma="1.2", arsenic="0.04", moisture="4.3"),
    )

for _number, (_low, _high) in enumerate(
    (("min.Spez.", "max.Spez."), ("min.-Soll", "max.-Soll"), ("SpecMin", "SpecMax"))
):
    sheet(
        f"glued-heads-of-limits-{_number}",
        "The words of the heads of limits stand close to each other.",
        f"""
# Analysenzertifikat
Pilsner Malz   Charge: B15{_number}0   Methoden: EBC

Merkmal | Einheit | Ergebnis | {_low} | {_high}
Wassergehalt | % | 4.3 | | 5.0
Eiweiß, wfr. | % | 10.5 | 9.5 | 11.0
Friabilität | % | 86 | 80 |
""",
        truth(f"B15{_number}0", moisture="4.3", total_protein="10.5", friability="86"),
    )

sheet(
    "limits-by-number-of-the-row",
    "A second table gives the limits of each row by its number.",
    """
# Certificate of Analysis
Pilsner malt   Batch: B1601   Methods: EBC

No. | Parameter | Unit | Result
1 | Moisture | % | 4.3
2 | Protein, dry | % | 10.5
3 | Friability | % | 86

Limits
No. | min | max
1 | | 5.0
2 | 9.5 | 11.0
3 | 80 |
""",
    truth("B1601", moisture="4.3", total_protein="10.5", friability="86"),
)
