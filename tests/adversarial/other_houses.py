"""Forms of other houses: heads without a role, entries without colons, languages with few sheets."""

from tests.adversarial.case import Right, sheet, truth

FIRST = {"moisture": "4.3", "extract_fine_dry": "81.4", "total_protein": "10.5", "friability": "86"}
SECOND = {"moisture": "4.6", "extract_fine_dry": "80.7", "total_protein": "11.2", "friability": "82"}
GERMAN = {"moisture": "4,3", "extract_fine_dry": "81,4", "total_protein": "10,5", "friability": "86"}
TABLE = """
Parameter | Unit | Result
Moisture | % | 4.3
Extract fine grind, dry | % | 81.4
Protein, dry | % | 10.5
Friability | % | 86
"""
TOP = "# Lindwood Maltings Ltd\nProduct: Pilsner malt    Lot no.: {}    Methods: EBC\n\n"

sheet(
    "basis-columns-stand-for-themselves",
    "The moisture basis is all that the heads of two result columns say: each value has its own.",
    TOP.format("H2001")
    + """Analysis | As is | Dry basis
Moisture, % | 4.3 |
Extract, fine grind, % | 77.9 | 81.4
Difference, F–C, % | | 1.5
Protein, % | | 10.5
Friability, % | 86 |""",
    truth(
        "H2001",
        moisture="4.3",
        extract_fine_as_is="77.9",
        extract_fine_dry="81.4",
        fine_coarse_difference="1.5",
        total_protein="10.5",
        friability="86",
    ),
)

sheet(
    "vorlos-with-its-number",
    "German: the lot before, with its number, stands before the column of this batch.",
    """# Mälzerei Hohenried GmbH
Produkt: Pilsner Malz    Charge: H2002    Methoden: MEBAK

Kriterium | Einheit | Vorlos B-25-299 | Diese Charge | Vertrag
Feuchte | % | 4,4 | 4,3 | 3,5 bis 5,0
Extrakt fein, wfr. | % | 81,8 | 81,4 | 81,0 bis 84,0
Eiweiß, wfr. | % | 10,6 | 10,5 | 9,5 bis 11,2
Friabilimeterwert | % | 85 | 86 | 80 bis 100""",
    truth("H2002", **GERMAN),
)

sheet(
    "unknown-word-with-a-number-beside-this-batch",
    "Nobody knows the word before the number in the head; it may as well be an earlier lot.",
    TOP.format("H2003")
    + """Parameter | Unit | Zorn B-25-299 | This batch
Moisture | % | 4.6 | 4.3
Extract fine grind, dry | % | 80.7 | 81.4
Protein, dry | % | 11.2 | 10.5
Friability | % | 82 | 86""",
    truth("H2003", **FIRST, doubtful="*"),
)

sheet(
    "mean-of-the-harvest",
    "German: the mean of the harvest, with its year, stands behind the result.",
    """# Mälzerei Hohenried GmbH
Produkt: Pilsner Malz    Charge: H2004    Methoden: MEBAK

Analyse | Einheit | Ergebnis | Ernteschnitt 2024
Wassergehalt | % | 4,3 | 4,4
Extrakt fein, wfr. | % | 81,4 | 81,8
Eiweiß, wfr. | % | 10,5 | 10,6
Friabilimeterwert | % | 86 | 85""",
    truth("H2004", **GERMAN),
)

sheet(
    "family-over-result-and-unit",
    "The method family stands in the middle over a column of results and one of units, twice.",
    """# Lindwood Maltings Ltd
Product: Pilsner malt    Lot no.: H2005

@50 Parameter @220 EBC @400 IoB
@50 @190 Result @245 Unit @370 Result @425 Unit
@50 Moisture @190 4.3 @245 % @370 4.3 @425 %
@50 Extract, dry @190 81.4 @245 % @370 307 @425 L°/kg
@50 Colour @190 3.4 @245 EBC @370 3.1 @425 EBC
@50 Friability @190 86 @245 % @370 86 @425 %""",
    truth(
        "H2005",
        moisture="4.3",
        extract_fine_dry="81.4",
        extract_coarse_dry=Right("307", 307.0, "IoB"),
        colour="3.4",
        friability="86",
        doubtful="*",
    ),
)

sheet(
    "malts-over-the-columns",
    "French: the malts stand over the columns beside the units, the lots in a row below.",
    """# Malterie du Val Fleuri
Méthodes EBC

Produit | Unité | Malt Pilsen | Malt Munich
N° de lot | | H2006 | H2007
Humidité | % | 4,3 | 4,6
Extrait fin sur sec | % | 81,4 | 80,7
Protéines sur sec | % | 10,5 | 11,2
Friabilité | % | 86 | 82""",
    truth("H2006", **GERMAN, head={"malt": "Malt Pilsen", "supplier": "Malterie du Val Fleuri"}),
    truth(
        "H2007",
        moisture="4,6",
        extract_fine_dry="80,7",
        total_protein="11,2",
        friability="82",
        head={"malt": "Malt Munich", "supplier": "Malterie du Val Fleuri"},
    ),
)

sheet(
    "target-result-deviation-tolerance",
    "The result stands between its target and the deviation from it.",
    TOP.format("H2008")
    + """Parameter | Unit | Target | Actual | Deviation | Tolerance
Moisture | % | 4.4 | 4.3 | −0.1 | ± 0.5
Extract fine grind, dry | % | 82.0 | 81.4 | −0.6 | ± 1.0
Protein, dry | % | 10.2 | 10.5 | +0.3 | ± 0.8
Friability | % | 85 | 86 | +1 | ± 5""",
    truth("H2008", **FIRST),
)

sheet(
    "esito-holds-verdicts",
    "Italian: the word for result heads the verdicts, the results stand under another one.",
    """# Malteria Val d'Orbia S.p.A.
Prodotto: Malto Pils    Lotto: H2009    Metodi EBC

Determinazione | U.M. | Valore riscontrato | Massimo | Esito
Umidità | % | 4,3 | 5,0 | conforme
Estratto fine sul secco | % | 81,4 | | conforme
Proteine sul secco | % | 10,5 | 11,5 | conforme
Friabilità | % | 86 | | conforme""",
    truth("H2009", **GERMAN),
)

sheet(
    "results-head-over-the-names",
    "German: the title of the table stands over the names; rows that no parameter is known for must not vanish.",
    """# Mälzerei Hohenried GmbH
Produkt: Rauchmalz    Charge: H2010

Analysenwerte nach MEBAK | | | Spezifikation
Wasser | 4,3 | % | ≤ 5,0
Extrakt fein, wfr. | 81,4 | % | ≥ 80,0
Eiweiß, wfr. | 10,5 | % | ≤ 11,8
Friabilimeterwert | 86 | % | ≥ 80
Phenole gesamt | 18 | mg/kg | 15–30
Benzo(a)pyren | 0,4 | µg/kg | ≤ 1,0""",
    truth("H2010", **GERMAN, shown="18 0,4"),
)

sheet(
    "unit-in-the-head-of-the-names",
    "German: the head of the names says that units stand in brackets behind them.",
    """# Mälzerei Hohenried GmbH
Produkt: Pilsner Malz    Charge: H2011

Merkmal (Einheit) | Methode | Sollwert | Istwert
Wasser (%) | MEBAK 3.1.4.1 | max. 5,0 | 4,3
Extrakt fein, wfr. (%) | MEBAK 3.1.4.2 | min. 80,0 | 81,4
Eiweiß, wfr. (%) | MEBAK 3.1.4.5 | max. 11,5 | 10,5
Friabilimeterwert (%) | MEBAK 3.1.3.6 | min. 80 | 86""",
    truth("H2011", **GERMAN),
)

sheet(
    "entries-that-end-in-stops",
    "The entries of the head are sentences of their own.",
    f"# Lindwood Maltings Ltd\nMalt: Golden ale malt. Lot H20120. Crop year 2024. Methods: EBC.\n{TABLE}",
    truth(
        "H20120", **FIRST, head={"malt": "Golden ale malt", "supplier": "Lindwood Maltings Ltd", "crop_year": "2024"}
    ),
)

sheet(
    "entries-between-commas",
    "German: commas part the entries of the head, which have no colons.",
    """# Mälzerei Hohenried GmbH
Analyse Pilsner Malz, Partie D 2013, Ernte 2024, geliefert 07.02.2025
Methoden: MEBAK

Analyse | Einheit | Ergebnis
Wassergehalt | % | 4,3
Extrakt fein, wfr. | % | 81,4
Eiweiß, wfr. | % | 10,5
Friabilimeterwert | % | 86""",
    truth(
        "D 2013", **GERMAN, head={"malt": "Pilsner Malz", "supplier": "Mälzerei Hohenried GmbH", "crop_year": "2024"}
    ),
)

sheet(
    "groups-of-results-in-lines",
    "Each line holds a group of results behind its name; as is and dry go on with the extract.",
    """# Lindwood Maltings Ltd
Product: Mild ale malt    Lot no.: H2014    Methods: IoB
Physical: Moisture 3.4 %; Friability 90 %; on 7/64 68.1 %.
Extract (IoB 0.7 mm): as is 296 L°/kg; dry 306 L°/kg.
Nitrogen: TN 1.59 %; FAN 148 mg/l.
Enzymes: DP 44 °IoB; homogeneity 98 %.""",
    truth(
        "H2014",
        moisture="3.4",
        friability="90",
        homogeneity="98",
        extract_coarse_as_is=Right("296", 296.0, "IoB"),
        extract_coarse_dry=Right("306", 306.0, "IoB"),
        total_nitrogen="1.59",
        free_amino_nitrogen=Right("148", 148.0, "IoB"),
        diastatic_power=Right("44", 154.0, tolerance=20.0),
        shown="68.1",
        doubtful="*",
    ),
)

sheet(
    "romanian",
    "Romanian: words of its own for everything.",
    """# S.C. MALȚERIA BĂRĂGANUL S.R.L.
Produs: Malț Pilsen    Lot: H2015    Metode de analiză: EBC

Nr. crt. | Caracteristici | UM | Valori admise | Valori obținute
1 | Umiditate | % | max. 5,0 | 4,3
2 | Extract măciniș fin, s.u. | % | min. 80,5 | 81,4
3 | Proteină totală s.u. | % | max. 11,5 | 10,5
4 | Friabilitate | % | min. 80 | 86
5 | Vâscozitate must | mPa·s | max. 1,60 | 1,54
6 | Cădere sub 2,2 mm | % | max. 2,5 | 1,3
7 | pH must | unități | 5,7 – 6,1 | 5,94""",
    truth("H2015", **GERMAN, viscosity="1,54", sieve_under_2_2="1,3", wort_ph="5,94"),
)

sheet(
    "croatian",
    "Croatian: words of its own for everything.",
    """# Sladara Podravka Dol d.o.o.
Vrsta slada: Pilsner slad    Broj šarže: H2016    Metode: EBC

Parametar | Jedinica | Rezultat | Specifikacija
Vlaga | % | 4,3 | max. 5,0
Ekstrakt fine meljave na s.t. | % | 81,4 | min. 80,5
Bjelančevine na s.t. | % | 10,5 | max. 11,5
Friabilnost | % | 86 | min. 80
Dijastatska snaga | WK | 268 | min. 220""",
    truth("H2016", **GERMAN, diastatic_power="268"),
)

sheet(
    "turkish",
    "Turkish: words of its own for everything.",
    """# Bozkır Malt San. A.Ş.
Ürün: Pilsen malt    Parti no: H2017    Metot: EBC

Analiz | Birim | Sonuç | Limit
Rutubet | % | 4,3 | maks. 5,0
Ekstrakt (kuru madde, ince) | % | 81,4 | min. 80,0
Protein (kuru madde) | % | 10,5 | maks. 11,8
Friabilite | % | 86 | min. 80
Viskozite | mPa·s | 1,54 | maks. 1,60""",
    truth("H2017", **GERMAN, viscosity="1,54"),
)
