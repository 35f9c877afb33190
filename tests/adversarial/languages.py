"""Languages and scripts, and words that mean another thing elsewhere."""

from tests.adversarial.case import Right, sheet, truth

sheet(
    "chinese-captions",
    "Chinese captions; the specification stands before the result.",
    """
# 麦芽检验报告
批号: L3101    方法: EBC

项目 | 标准值 | 检测结果 | 单位
水分 | 5.0 | 4.3 | %
色度 | 4.5 | 3.6 | EBC
脆度 | 80 | 86 | %
粘度 | 1.60 | 1.52 | mPa.s
""",
    truth("L3101", moisture="4.3", colour="3.6", friability="86", viscosity="1.52", doubtful="*"),
)

sheet(
    "chinese-unknown-heads",
    "Chinese heads for last batch and this batch.",
    """
# 麦芽检验报告
批号: L3102    方法: EBC

项目 | 上批 | 本批 | 单位
水分 | 4.6 | 4.3 | %
色度 | 4.1 | 3.6 | EBC
脆度 | 82 | 86 | %
""",
    truth("L3102", moisture="4.3", colour="3.6", friability="86", doubtful="*"),
)

# Right to left: the label column is the last one, and words are drawn from right to left.
sheet(
    "hebrew-mirrored",
    "Hebrew captions, in the order in which they are drawn, columns from right to left.",
    f"""
# {"תעודת אנליזה"[::-1]}
Batch: L3103    EBC

{"גבול"[::-1]} | {"תוצאה"[::-1]} | {"יחידה"[::-1]} | {"פרמטר"[::-1]}
5.0 | 4.3 | % | Moisture
11.5 | 10.5 | % | Protein, dry
92 | 86 | % | Friability
""",
    truth("L3103", moisture="4.3", total_protein="10.5", friability="86", doubtful="*"),
)

sheet(
    "arabic-digits",
    "Arabic-Indic digits with an Arabic decimal sign.",
    """
# Certificate of Analysis
Batch: L3104    Methods: EBC

Parameter | Unit | Result
Moisture | % | ٤٫٣
Friability | % | ٨٦
Colour | EBC | 3.6
""",
    truth("L3104", colour="3.6", moisture=Right("٤٫٣", 4.3), friability=Right("٨٦", 86), doubtful="*"),
)

sheet(
    "unknown-language-heads",
    "Turkish: label words and heads in a language that is hardly known; the limit is first.",
    """
# Malt Analiz Raporu
Parti No: L3105    EBC

Parametre | Sınır | Bulunan | Birim
Nem | 5.0 | 4.3 | %
Protein (kuru) | 11.5 | 10.5 | %
Renk | 4.5 | 3.6 | EBC
Viskozite | 1.60 | 1.52 | mPa.s
""",
    truth("L3105", moisture="4.3", total_protein="10.5", colour="3.6", viscosity="1.52", doubtful="*"),
)

sheet(
    "german-richtwert-istwert",
    "'Richtwert', 'Vorjahr' and 'Istwert' in this order.",
    """
# Analysenzertifikat
Pilsner Malz   Charge: L3106    Methoden: MEBAK

Merkmal | Einheit | Richtwert | Vorjahr | Istwert
Wassergehalt | % | 4,5 | 4,6 | 4,3
Extrakt Feinschrot, wfr. | % | 81,0 | 80,7 | 81,4
Eiweiß, wfr. | % | 10,8 | 11,2 | 10,5
Friabilimeterwert | % | 85 | 82 | 86
""",
    truth("L3106", moisture="4,3", extract_fine_dry="81,4", total_protein="10,5", friability="86"),
)

sheet(
    "german-gerste-und-malz",
    "Rows 'Gersteneiweiß' and 'Malzeiweiß'.",
    """
# Analysenzertifikat
Pilsner Malz   Charge: L3107    Methoden: MEBAK

Merkmal | Einheit | Ergebnis
Wassergehalt | % | 4,3
Gersteneiweiß, wfr. | % | 11,2
Malzeiweiß, wfr. | % | 10,5
Grünmalz Wassergehalt | % | 43,5
Würzefarbe 12 % | EBC | 7,9
""",
    truth("L3107", moisture="4,3", total_protein="10,5", doubtful="total_protein", shown="11,2 43,5 7,9"),
)

sheet(
    "french-norme-resultat",
    "'Norme' and 'Moyenne campagne' before 'Résultat'.",
    """
# Bulletin d'analyse
Malt Pils   Lot : L3108    Méthodes EBC

Analyse | Unité | Norme | Moyenne campagne | Résultat
Humidité | % | 5,0 | 4,6 | 4,3
Extrait fin, sec | % | 80,0 | 80,7 | 81,4
Protéines totales, sec | % | 11,5 | 11,2 | 10,5
Friabilité | % | 80 | 82 | 86
""",
    truth("L3108", moisture="4,3", extract_fine_dry="81,4", total_protein="10,5", friability="86"),
)

sheet(
    "spanish-ano-anterior",
    "'Año anterior' and 'Resultado'; the decimal comma.",
    """
# Certificado de análisis
Malta Pilsen   Lote: L3109    Métodos EBC

Parámetro | Unidad | Año anterior | Resultado
Humedad | % | 4,6 | 4,3
Extracto fino, seco | % | 80,7 | 81,4
Proteína total, seco | % | 11,2 | 10,5
Friabilidad | % | 82 | 86
""",
    truth("L3109", moisture="4,3", extract_fine_dry="81,4", total_protein="10,5", friability="86"),
)

sheet(
    "russian-barley-column",
    "Russian: barley and malt columns.",
    """
# Сертификат качества
Партия: L3110    EBC

Показатель | Ед. | Ячмень | Солод
Влажность | % | 12,8 | 4,3
Белок на сухое вещество | % | 11,2 | 10,5
""",
    truth("L3110", moisture="4,3", total_protein="10,5", doubtful="*"),
)

sheet(
    "two-languages-stacked",
    "Two languages one below the other; the second line has numbers of a standard.",
    """
# Zertifikat / Certificate
Pilsner Malz   Charge / Batch: L3111    EBC

Merkmal / Parameter | Einheit / Unit | Ergebnis / Result
Wassergehalt | % | 4.3
Moisture EBC 4.2 | |
Friabilimeterwert | % | 86
Friability EBC 4.15 | |
Viskosität | mPa.s | 1.52
Viscosity EBC 4.8 | |
""",
    truth("L3111", moisture="4.3", friability="86", viscosity="1.52", doubtful="*"),
)
