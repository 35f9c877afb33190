"""Batches that share a sheet, rows that are none, keys and blocks aside: in other words and languages."""

from tests.adversarial.case import sheet, truth

FIRST = {"moisture": "4.3", "extract_fine_dry": "81.4", "total_protein": "10.5", "friability": "86"}
SECOND = {"moisture": "4.6", "extract_fine_dry": "80.7", "total_protein": "11.2", "friability": "82"}
GERMAN = {"moisture": "4,3", "total_protein": "10,5", "friability": "86"}
GERMAN_TOO = {"moisture": "4,6", "total_protein": "11,2", "friability": "82"}
HOHENRIED = {"malt": "Pilsner Malz", "supplier": "Mälzerei Hohenried GmbH"}
LINDWOOD = {"malt": "Pilsner malt", "supplier": "Lindwood Maltings Ltd"}
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
WERTE = """
Merkmal | Einheit | Ergebnis
Wassergehalt | % | 4,3
Eiweiß, wfr. | % | 10,5
Friabilimeterwert | % | 86
"""
ANDERE = """
Merkmal | Einheit | Ergebnis
Wassergehalt | % | 4,6
Eiweiß, wfr. | % | 11,2
Friabilimeterwert | % | 82
"""
TOP = "# Lindwood Maltings Ltd\nProduct: Pilsner malt    Methods: EBC\n"
KOPF = "# Mälzerei Hohenried GmbH\nProdukt: Pilsner Malz    Methoden: MEBAK\n"

sheet(
    "weizenmalz-in-a-line",
    "German: the second malt is one word above its Charge.",
    f"{KOPF}\nCharge: W1601\n{WERTE}\n\nWeizenmalz\nCharge: W1602\n{ANDERE}",
    truth("W1601", **GERMAN, doubtful="*", head=HOHENRIED),
    truth("W1602", **GERMAN_TOO, doubtful="*", head={"malt": "Weizenmalz", "supplier": "Mälzerei Hohenried GmbH"}),
)

sheet(
    "malt-behind-the-lot",
    "The second malt stands in brackets behind its lot.",
    f"{TOP}\nLot no.: W1603\n{TABLE}\n\nLot no.: W1604 (wheat malt)\n{OTHER}",
    truth("W1603", **FIRST, doubtful="*", head=LINDWOOD),
    truth("W1604", **SECOND, doubtful="*", head={"malt": "wheat malt", "supplier": "Lindwood Maltings Ltd"}),
)

sheet(
    "malt-before-the-lot",
    "The second malt stands in the line of its lot, before the caption.",
    f"{TOP}\nLot no.: W1605\n{TABLE}\n\nWheat malt, lot no.: W1606\n{OTHER}",
    truth("W1605", **FIRST, doubtful="*", head=LINDWOOD),
    truth("W1606", **SECOND, doubtful="*", head={"malt": "Wheat malt", "supplier": "Lindwood Maltings Ltd"}),
)

sheet(
    "malts-as-groups-of-rows",
    "Lots in rows, grouped under the names of malts; the head names the first malt only.",
    f"""
{TOP}
Lot no. | Moisture % | Extract fine, dry % | Protein, dry % | Friability %
W1607 | 4.3 | 81.4 | 10.5 | 86
Wheat malt | | | |
W1608 | 4.6 | 80.7 | 11.2 | 82
""",
    truth("W1607", **FIRST, doubtful="*", head=LINDWOOD),
    truth("W1608", **SECOND, doubtful="*", head={"malt": "Wheat malt", "supplier": "Lindwood Maltings Ltd"}),
)

sheet(
    "lot-missing-in-a-row",
    "Lots in rows; in one row the number was not filled in.",
    f"""
{TOP}
Lot no. | Moisture % | Extract fine, dry % | Protein, dry % | Friability %
W1609 | 4.3 | 81.4 | 10.5 | 86
 | 4.4 | 81.2 | 10.9 | 84
W1610 | 4.6 | 80.7 | 11.2 | 82
""",
    truth("W1609", **FIRST, doubtful="*", shown="4.4 81.2 10.9 84", head=LINDWOOD),
    truth("W1610", **SECOND, doubtful="*", head=LINDWOOD),
)

sheet(
    "moyenne-and-contrat-in-rows",
    "French: rows of the mean and of the contract with its number.",
    """
# Malterie de Vaubressac SA
Produit : Malt pils    Méthodes : EBC

N° de lot | Humidité % | Protéines, sec % | Friabilité % | Viscosité mPa.s
W1611 | 4,3 | 10,5 | 86 | 1,52
W1612 | 4,6 | 11,2 | 82 | 1,56
Moyenne 24-25 | 4,5 | 10,9 | 84 | 1,54
CONTRAT 4711-25 | 5,0 | 11,5 | 80 | 1,60
""",
    truth("W1611", **GERMAN, viscosity="1,52", doubtful="*"),
    truth("W1612", **GERMAN_TOO, viscosity="1,56", doubtful="*"),
)

sheet(
    "vorherige-charge-alone",
    "German: the previous Charge is named with a caption, this one in the title.",
    f"# Mälzerei Hohenried GmbH\nProdukt: Pilsner Malz    Methoden: MEBAK\nVorherige Charge: W1590\n{WERTE}",
    truth(None, **GERMAN, doubtful="*", head=HOHENRIED),
)

sheet(
    "letzte-lieferung-aside",
    "German: a block beside the table with the last delivery.",
    """
# Mälzerei Hohenried GmbH
Produkt: Pilsner Malz
Charge: W1613
Methoden: MEBAK

@50 *Merkmal* @170 *Einheit* @230 *Ergebnis* @340 *Letzte Lieferung*
@50 Wassergehalt @170 % @235 4,3 @340 Charge: W1591
@50 Eiweiß, wfr. @170 % @235 10,5 @340 Menge: 24 t
@50 Friabilimeterwert @170 % @235 86 @340 Geliefert: 12.09.2025
""",
    truth("W1613", **GERMAN, doubtful="*", head=HOHENRIED),
)

sheet(
    "page-two-of-another-maltster",
    "Page 2 has the letterhead of another maltster and no lot.",
    f"""
{TOP}Lot no.: W1614
{TABLE}
===
# Cotterdale Maltings Ltd
Methods: EBC

Parameter | Unit | Result
Viscosity | mPa.s | 1.56
Kolbach index | % | 39.1
""",
    truth("W1614", **FIRST, doubtful="*", head=LINDWOOD),
    truth(None, viscosity="1.56", nitrogen_ratio="39.1", head={"supplier": "Cotterdale Maltings Ltd"}),
)

sheet(
    "key-between-two-tables",
    "One key between two tables that both use it.",
    f"""
{TOP}
Lot no. | A | B | C
W1615 | 4.3 | 10.5 | 86

A = Moisture %
B = Protein, dry %
C = Friability %

Lot no. | A | B | C
W1616 | 4.6 | 11.2 | 82
""",
    truth("W1615", moisture="4.3", total_protein="10.5", friability="86", doubtful="*", head=LINDWOOD),
    truth("W1616", moisture="4.6", total_protein="11.2", friability="82", doubtful="*", head=LINDWOOD),
)

sheet(
    "key-with-names-first",
    "The key gives the names first, the marks behind them in brackets.",
    f"""
{TOP}
Lot no. | A | B | C
W1617 | 4.3 | 10.5 | 86
W1618 | 4.6 | 11.2 | 82

Moisture % (A)
Protein, dry % (B)
Friability % (C)
""",
    truth("W1617", moisture="4.3", total_protein="10.5", friability="86", doubtful="*", head=LINDWOOD),
    truth("W1618", moisture="4.6", total_protein="11.2", friability="82", doubtful="*", head=LINDWOOD),
)

sheet(
    "legend-of-samples-with-barley-lots",
    "Columns A and B; the legend gives the lot of the barley before that of the malt.",
    f"""
{TOP}
Parameter | Unit | A | B
Moisture | % | 4.3 | 4.6
Extract fine grind, dry | % | 81.4 | 80.7
Protein, dry | % | 10.5 | 11.2
Friability | % | 86 | 82

A: barley lot B7701, malt lot W1619
B: barley lot B7702, malt lot W1620
""",
    truth("W1619", **FIRST, doubtful="*", head=LINDWOOD),
    truth("W1620", **SECOND, doubtful="*", head=LINDWOOD),
)

sheet(
    "lot-replaced-in-the-text",
    "A sentence says that one lot was delivered in place of another.",
    f"{TOP}Lot W1621 was delivered in place of lot W1622.\n{TABLE}",
    truth("W1621", **FIRST, doubtful="*", head=LINDWOOD),
)

sheet(
    "laboratory-of-another-maltings",
    "The analysis was made by the laboratory of another maltings, which is named first.",
    f"Analysed by: Brookline Maltings Laboratory\nDelivered by: Lindwood Maltings Ltd\n"
    f"Product: Pilsner malt    Lot no.: W1623    Methods: EBC\n{TABLE}",
    truth("W1623", **FIRST, doubtful="*", head=LINDWOOD),
)

sheet(
    "form-number-in-the-foot",
    "The lot is not filled in; the number of the form stands in the foot.",
    f"{TOP}Lot no.:\n{TABLE}\n~ Form QF-2511 rev. 3    Edition 4 of 01.02.2024",
    truth(None, **FIRST, doubtful="*", head=LINDWOOD),
)

sheet(
    "malts-of-columns-one-named",
    "Lots in columns; the row of malts names another malt for the second only.",
    f"""
{TOP}
Lot no. | | W1624 | W1625
Malt | | | Wheat malt
Moisture | % | 4.3 | 4.6
Extract fine grind, dry | % | 81.4 | 80.7
Protein, dry | % | 10.5 | 11.2
Friability | % | 86 | 82
""",
    truth("W1624", **FIRST, doubtful="*", head=LINDWOOD),
    truth("W1625", **SECOND, doubtful="*", head={"malt": "Wheat malt", "supplier": "Lindwood Maltings Ltd"}),
)

sheet(
    "lot-and-production-day",
    "'Lot' with the day of production before the number.",
    f"{TOP}Lot / production date: 12.11.2025 / W1626\n{TABLE}",
    truth("W1626", **FIRST, doubtful="*", head=LINDWOOD),
)

sheet(
    "spanish-lote-anterior",
    "Spanish: the lot before this one stands below it, in the same words.",
    """
# Maltería Valdenebro S.A.
Producto: Malta pilsen    Métodos: EBC
Lote anterior: W1592
Lote: W1627

Parámetro | Unidad | Resultado
Humedad | % | 4,3
Proteína, s.s. | % | 10,5
Friabilidad | % | 86
""",
    truth("W1627", **GERMAN, doubtful="*"),
)

sheet(
    "second-page-in-german-of-other-malt",
    "German: page 2 belongs to another malt, one word in its title, and gives no Charge.",
    f"""
{KOPF}Charge: W1628
{WERTE}
===
# Mälzerei Hohenried GmbH
# Weizenmalz

Merkmal | Einheit | Ergebnis
Viskosität | mPa.s | 1,56
Kolbachzahl | % | 39,1
""",
    truth("W1628", **GERMAN, doubtful="*", head=HOHENRIED),
    truth(
        None,
        viscosity="1,56",
        nitrogen_ratio="39,1",
        head={"malt": "Weizenmalz", "supplier": "Mälzerei Hohenried GmbH"},
    ),
)

sheet(
    "polish-second-supplier",
    "Polish: a merchant's sheet with the maltster of each batch above its number.",
    """
# Słodownia Brzozowa Sp. z o.o.
Produkt: Słód pilzneński    Metody: EBC

Nr partii: W1629
Parametr | Jednostka | Wynik
Wilgotność | % | 4,3
Białko w s.m. | % | 10,5
Kruchość | % | 86

Słodownia Jesionka S.A.
Nr partii: W1630
Parametr | Jednostka | Wynik
Wilgotność | % | 4,6
Białko w s.m. | % | 11,2
Kruchość | % | 82
""",
    truth(
        "W1629",
        **GERMAN,
        doubtful="*",
        head={"malt": "Słód pilzneński", "supplier": "Słodownia Brzozowa Sp. z o.o."},
    ),
    truth(
        "W1630",
        **GERMAN_TOO,
        doubtful="*",
        head={"malt": "Słód pilzneński", "supplier": "Słodownia Jesionka S.A."},
    ),
)
