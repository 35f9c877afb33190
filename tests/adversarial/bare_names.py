"""Names without what tells them from values: sizes without mm, heads of method numbers, names under their values."""

from tests.adversarial.case import sheet, truth

_SIEVES = {"sieve_over_2_8": "85.1", "sieve_2_5_to_2_8": "9.0", "sieve_2_2_to_2_5": "4.7", "sieve_under_2_2": "1.2"}
_SIZES = (
    ("Sieving", "> 2.8", "2.5 - 2.8", "2.2 - 2.5", "< 2.2"),
    ("Sortierung", ">2,8", "2,8-2,5", "2,5 - 2,2", "<2,2"),
    ("Grading", "over 2.8", "2.5 to 2.8", "2.2 to 2.5", "below 2.2"),
    ("Calibrage", "> 2,8", "2,5 à 2,8", "2,2 à 2,5", "< 2,2"),
)
for _number, (_heading, _over, _first, _second, _under) in enumerate(_SIZES):
    sheet(
        f"sizes-without-mm-{_number}",
        f"Rows of sieves under '{_heading}' without a unit of length.",
        f"""
# Certificate of Analysis
Pilsner malt   Batch: N10{_number}0   Methods: EBC

Parameter | Unit | Result
Moisture | % | 4.3
{_heading} | |
{_over} | % | 85.1
{_first} | % | 9.0
{_second} | % | 4.7
{_under} | % | 1.2
""",
        truth(f"N10{_number}0", moisture="4.3", **_SIEVES),
    )

sheet(
    "sizes-in-a-table-of-their-own",
    "A table of sieves whose head names no result.",
    """
# Certificate of Analysis
Pilsner malt   Batch: N1101   Methods: EBC

Sieving mm | %
> 2.8 | 85.1
2.5 - 2.8 | 9.0
< 2.2 | 1.2

Parameter | Unit | Result
Moisture | % | 4.3
""",
    truth("N1101", moisture="4.3", sieve_over_2_8="85.1", sieve_2_5_to_2_8="9.0", sieve_under_2_2="1.2"),
)

sheet(
    "bare-sizes-may-be-sums",
    "Sizes without a sign: what stays on the sieve, or what lies between two.",
    """
# Certificate of Analysis
Pilsner malt   Batch: N1102   Methods: EBC

Parameter | Unit | Result
Moisture | % | 4.3
Sieve fractions (mm) | |
2.8 | % | 85.1
2.5 | % | 9.0
2.2 | % | 4.7
""",
    truth("N1102", moisture="4.3", shown="85.1 9.0 4.7"),
)

_RUNNING = (
    "Sieving: > 2.8 mm 85.1 %, 2.5-2.8 mm 9.0 %, < 2.2 mm 1.2 %",
    "Sieving: > 2.8 mm 85.1 %; 2.5-2.8 mm 9.0 %; < 2.2 mm 1.2 %",
    "Sieving >2.8 mm: 85.1 %, 2.5-2.8 mm: 9.0 %, <2.2 mm: 1.2 %",
    "Sieve analysis: > 2.8 mm = 85.1 %, 2.5 - 2.8 mm = 9.0 %, < 2.2 mm = 1.2 %",
    "Sieving (> 2.8 / 2.5-2.8 / < 2.2 mm): 85.1 / 9.0 / 1.2 %",
    "Sieving: 85.1 % > 2.8 mm, 9.0 % 2.5-2.8 mm, 1.2 % < 2.2 mm",
)
for _number, _line in enumerate(_RUNNING):
    sheet(
        f"sieves-in-a-line-{_number}",
        "Several sieves in one running line.",
        f"""
# Certificate of Analysis
Pilsner malt   Batch: N12{_number}0   Methods: EBC

Moisture: 4.3 %
Friability: 86 %
{_line}
""",
        truth(
            f"N12{_number}0",
            moisture="4.3",
            friability="86",
            sieve_over_2_8="85.1",
            sieve_2_5_to_2_8="9.0",
            sieve_under_2_2="1.2",
            doubtful="sieve_over_2_8 sieve_2_5_to_2_8 sieve_under_2_2" if _number == 5 else "",
        ),
    )

for _number, _heads in enumerate(("4.5.1 | 4.9", "EBC 4.5.1 | EBC 4.9.1", "R-205.01.080 | R-205.02.080")):
    sheet(
        f"heads-of-method-numbers-{_number}",
        "The heads of two columns are numbers of methods, not of batches.",
        f"""
# Certificate of Analysis
Pilsner malt   Batch: N13{_number}0   Methods: EBC

Parameter | Unit | {_heads}
Friability | % | 81.4 | 79.8
Moisture | % | 4.3 | 4.4
""",
        truth(f"N13{_number}0", shown="81.4 79.8 4.3 4.4"),
    )

_CARDS = {
    "beside": """
@50 4.3 % @150 81.4 % @250 10.5 % @350 86 %
@50 Moisture @150 Extract, dry @250 Protein, dry @350 Friability
""",
    "with-units-below": """
@50 4.3 @150 81.4 @250 10.5 @350 86
@50 % @150 % @250 % @350 %
@50 Moisture @150 Extract, dry @250 Protein, dry @350 Friability
""",
    "with-limits": """
@50 4.3 % @150 81.4 % @250 10.5 % @350 86 %
@50 Moisture @150 Extract, dry @250 Protein, dry @350 Friability
@50 max. 5.0 @150 min. 80.5 @250 9.5 - 11.0 @350 min. 80
""",
    "in-two-rows": """
@50 4.3 @150 81.4
@50 Moisture, % @150 Extract, dry, %
@50 10.5 @150 86
@50 Protein, dry, % @150 Friability, %
""",
    "below-each-other": """
4.3 %
Moisture

81.4 %
Extract, dry

10.5 %
Protein, dry

86 %
Friability
""",
}
for _number, (_name, _text) in enumerate(_CARDS.items()):
    sheet(
        f"value-above-its-name-{_name}",
        "Cards with the value above the name.",
        f"""
# Certificate of Analysis
Pilsner malt   Batch: N14{_number}0   Methods: EBC
{_text}""",
        truth(
            f"N14{_number}0",
            moisture="4.3",
            extract_fine_dry="81.4",
            total_protein="10.5",
            friability="86",
            doubtful="*",
        ),
    )

sheet(
    "value-below-its-name",
    "Cards with the value below the name, in two rows.",
    """
# Certificate of Analysis
Pilsner malt   Batch: N1501   Methods: EBC

@50 Moisture @150 Extract, dry
@50 4.3 % @150 81.4 %
@50 Protein, dry @150 Friability
@50 10.5 % @150 86 %
""",
    truth("N1501", moisture="4.3", extract_fine_dry="81.4", total_protein="10.5", friability="86"),
)
