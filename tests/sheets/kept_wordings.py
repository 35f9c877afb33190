# ruff: noqa: E501
"""Wordings that are kept aside: about a third of each language, used on sheets made with ``kept`` only.

Whoever works on the reading of sheets leaves this file unread, so that it can tell how well unseen words are read.
"""

from __future__ import annotations

from tests.sheets.kept_wordings_2 import MORE

_EN = """
[labels]
moisture: Moisture (oven) | Water in malt | Moisture as is | Residual moisture
extract_fine_dry: Extract, F.G., D.B.~dry | Congress extract, fine grind{b} | Fine-grind extract{b} | Laboratory extract 0.2 mm{b} | Extract on fine grind{b} | Ext. fine{b}
extract_coarse_dry: Extract, C.G., D.B.~dry | Coarse-grind extract{b} | Extract on coarse grind{b} | Ext. coarse{b}
extract_fine_as_is: Fine grind, as-is extract~asis | Ext. fine{b} | Extract, F.G.{b}
extract_coarse_as_is: Coarse grind, as-is extract~asis | Ext. coarse{b}
hwe_dry: Extract (HWE, 0.7 mm){b} | Hot-water extract at 0.7 mm{b} | HWE 7 (0.7 mm grind){b}
hwe_as_is: Extract (HWE, 0.7 mm){b} | Hot-water extract at 0.7 mm{b}
hwe_fine_dry: Hot-water extract at 0.2 mm{b}
fine_coarse_difference: F/C diff. | Fine minus coarse | FG/CG difference | Grind difference (fine-coarse) | Extract diff. F-C
colour: Colour of laboratory wort | Wort color | Malt color | Col.
boiled_colour: Colour of boiled wort | Wort colour after boiling | Boiled colour
total_nitrogen: Nitrogen (total){b} | Total N2{b} | Tot. nitrogen{b}
total_protein: Malt protein{b} | Total prot.{b} | Protein content{b}
soluble_nitrogen: Sol. nitrogen{b} | Nitrogen, soluble{b} | Wort soluble nitrogen{b}
soluble_protein: Sol. protein{b} | Soluble prot.{b}
ratio_kolbach: Kolbach no. | Kolbach number | K.I. (Kolbach) | Kolbach ratio
ratio_snr: SNR ratio | Sol. N ratio (SNR) | Soluble/total nitrogen ratio
ratio_st: Soluble/total protein | S/T protein | STR (S/T)
fan: F.A.N. in wort | alpha-Amino nitrogen (FAN) | Free amino N | Amino nitrogen, free
friability: Friab. | Malt friability | Friability index
homogeneity: Homogen. | Uniformity (homogeneity)
pug: Partly unmodified (PUG) | Partly glassy corns (PUG)
whole_grains: Whole unmodified corns | Unmodified whole grains (WUG)
glassy_grains: Glassy grains | Vitreous corns | Steely (glassy) corns
dp: Diastatic pwr | Diastatic power (DP), dry | Diast. power
alpha_amylase: Alpha-amylase (dextrinizing units) | Amylase, alpha | A-amylase, 20° DU
beta_glucan: β-Glucan, wort | Beta glucan content of wort | B-glucan (wort)
beta_glucan_malt: Beta-glucan, malt
viscosity: Wort visc. | Viscosity (20 °C) | Viscosity, laboratory wort
saccharification_time: Saccharification rate | Time of saccharification | Iodine conversion time
filtration: Time of filtration | Filtration | Wort filtration
turbidity: Turbidity of wort
clarity: Wort appearance | Clearness
odour: Odor of mash | Smell of mash | Aroma of mash
wort_ph: pH, laboratory wort | pH value of wort | pH-value
final_attenuation: Attenuation limit (apparent) | AAL, apparent | Apparent degree of final attenuation
relative_extract_45: VZ 45 | RE 45 °C | Hartong number VZ 45 °C
sieve_over_2_8: Above 2.8 mm | over 2.8 mm | Grain size > 2.8 mm
sieve_2_5_to_2_8: Between 2.5 and 2.8 mm | Fraction 2.5/2.8 mm
sieve_over_2_5: Above 2.5 mm | over 2.5 mm | Plump corns > 2.5 mm
sieve_2_2_to_2_5: Between 2.2 and 2.5 mm | Fraction 2.2/2.5 mm
sieve_under_2_2: Below 2.2 mm | under 2.2 mm | Thin corns < 2.2 mm
thousand_corn_weight: 1000 kernel weight | Weight of 1000 corns | 1000-grain weight
hectolitre_weight: Weight per hectolitre | Hectolitre wt.
bushel_weight: Bushel wt | Weight per bushel
foreign_matter: Foreign seeds and matter | Admixture
broken_grains: Broken grains | Damaged (broken) kernels
dms_precursor: DMS precursors (SMM) | DMS potential
sulphur_dioxide: Sulfur dioxide | SO2 residue
lead: Pb (lead)
arsenic: As (arsenic)
cadmium: Cd (cadmium)
ndma: Nitrosodimethylamine (NDMA)
deoxynivalenol: DON (deoxynivalenol) | Vomitoxin (DON)
zearalenone: ZON (zearalenone)
ochratoxin_a: OTA (ochratoxin A)
aflatoxin_b1: Aflatoxin B 1
predicted_spirit_yield: PSY (predicted spirit yield) | Spirit yield, predicted
fermentability: Fermentability of wort
glycosidic_nitrile: Glycosidic nitriles (GN)
cold_water_extract: Cold water extract (CWE)
beta_amylase: Beta amylase activity
gushing: Gushing test
half_glassy: Semi-glassy corns
phenols: Phenols
[captions]
supplier: Malt supplier | Name of maltster
malt: Malt description | Grade | Malt variety/type | Item
batch: Batch ID | Lot/Batch | Lot code | Charge no. | Batch ref.
certificate: Certificate ref. | Document no. | Analysis report no.
crop_year: Crop of | Year of harvest | Barley crop
variety: Barley | Variety of barley
produced_on: Produced on | Manufacturing date | Malting date
analysed_on: Date analysed | Test date | Date of test
delivered_on: Shipped on | Dispatch date | Delivered
best_before: Best before end | Expiry date | BBE
quantity: Qty | Batch size | Weight
order: Customer order | Order ref. | P.O. no.
customer: Delivered to | Buyer | Consigned to
[heads]
label: Analyte | Quality parameter | Test item | Criterion
result: Found | Test result | Batch result | Analysis result
unit: Dim. | Measure
method: Procedure | Analysis method | Meth.
min: Low | from | LSL
max: High | to | USL
spec: Tolerance | Requirement | Contract limits
typical: Guide value | Typical result
previous: Previous batch | Prior crop
number: Nr
[titles]
batch: Malt quality certificate | Laboratory report | Certificate of quality | MALT ANALYSIS CERTIFICATE
specification: Malt data sheet | Typical malt specification | Product data sheet
[sections]
physical: Physical properties | Grain analysis
chemical: Malt chemistry | General analysis
wort: Properties of wort | Wort
enzymes: Enzymatic activity
nitrogen: Nitrogenous matter
modification: Degree of modification
contaminants: Undesirable substances
sieving: Sieve test
barley: Barley analysis
malt: Malt analysis
[basis]
dry: dry matter | , DM | (d.m.) | on dry basis | (dry matter)
asis: , as-is | (as received) | on as-is basis
[unitbasis]
dry: % on dry | % d.m. | % (d.b.)
asis: % (as is) | % a.i.
[notes]
dry: Extract and nitrogen are expressed on a dry matter basis. | Figures for extract and protein refer to dry malt.
[family]
EBC: Determined by the methods of the European Brewery Convention (EBC) | All tests to Analytica EBC
IoB: Tests carried out to Institute of Brewing methods (IoB) | IoB methods of analysis
ASBC: Tested by ASBC methods | American Society of Brewing Chemists (ASBC) methods
[words]
clarity: brilliant | opal | turbid
odour: typical | clean
filtration: slow | normal
nd: not det. | ND
[malts]
PIL: Lager malt 2-row | Pilsner base malt
ALE: Ale base malt | Pale malt
MUN: Munich dark malt
CRY: Crystal malt 150 | Caramalt
ROA: Roast barley malt | Chocolate
WHE: Pale wheat malt
"""

_DE = """
[labels]
moisture: Wassergehalt des Malzes | Wasser (Trockenschrank) | H2O
extract_fine_dry: Extrakt (Feinmehl){b} | Extraktgehalt fein{b} | Extrakt Feinmehl{b} | Extrakt FS{b}~either
extract_coarse_dry: Extrakt (Grobmehl){b} | Extrakt GS{b}~either | Extraktgehalt grob{b}
extract_fine_as_is: Extrakt Feinmehl{b} | Extraktgehalt fein{b}
fine_coarse_difference: Differenz Mehl/Schrot | Differenz fein/grob | M/S-Differenz | Extraktdiff. Mehl-Schrot
colour: Farbe der Würze | Würzefarbe (Spektralphotometer) | Farbwert
boiled_colour: Farbe nach Kochung | Gekochte Würze, Farbe
total_nitrogen: N gesamt{b} | Gesamt-Stickstoff{b}
total_protein: Eiweiss{b} | Rohprotein (N × 6,25){b} | Eiweißgehalt gesamt{b}
soluble_nitrogen: Stickstoff löslich{b} | lösl. Gesamt-N{b} | Löslicher N{b}
soluble_protein: Eiweiß löslich{b} | lösl. Eiweiß{b}
ratio_kolbach: Eiweisslösungsgrad | Kolbach (ELG) | Kolbach-Zahl | Lösungsgrad (Eiweiß)
fan: Freier Aminostickst. (FAN) | α-Amino-N (FAN) | Freier Amino-N
friability: Friabilimeterwert (Mürbigkeit) | Mürbigkeit im Friabilimeter | Friabilität
homogeneity: Homogenitätsgrad | Gleichmäßigkeit (Homogenität)
pug: Teilglasige~either | teilglasig~either
whole_grains: Ganze, ungelöste Körner
glassy_grains: ganzglasig | Ganzglasige Körner
dp: Diast. Kraft (Windisch-Kolbach) | Diastatische Kraft nach Windisch-Kolbach
alpha_amylase: alpha-Amylase (ASBC) | Amylase (α)
beta_glucan: beta-Glucan, Würze | β-Glucangehalt der Würze
viscosity: Viskosität, bez. auf 8,6 % | Visk. (8,6 %) | Viskosität bei 20 °C
saccharification_time: Verzuckerung der Maische | Verz.-Zeit
filtration: Abläuterung | Filtration der Würze
turbidity: Trübung (90°)
clarity: Würze Aussehen | Durchsicht der Würze
odour: Maischegeruch
wort_ph: pH (Würze) | pH-Wert der Würze
final_attenuation: Endvergärung scheinb. | EVG, scheinbar | Vs end (scheinb. Endvergärungsgrad)
relative_extract_45: VZ 45 | Hartong-Zahl VZ 45 °C | rel. Extrakt (45 °C)
sieve_over_2_8: über 2,8 mm | I. Sorte > 2,8 mm
sieve_2_5_to_2_8: zwischen 2,5 und 2,8 mm | II. Sorte 2,5-2,8 mm
sieve_over_2_5: über 2,5 mm | Vollgersteanteil > 2,5 mm
sieve_2_2_to_2_5: zwischen 2,2 und 2,5 mm | III. Sorte 2,2-2,5 mm
sieve_under_2_2: unter 2,2 mm | Ausputz unter 2,2 mm
thousand_corn_weight: 1000-Korn-Gewicht | Tausendkorngew.
hectolitre_weight: hl-Gew. | Hektolitermasse
foreign_matter: Verunreinigungen | Fremdbestandteile
broken_grains: Bruchkorn | Halbe und gebrochene Körner
dms_precursor: DMS-P (Vorläufer) | DMS-Vorstufe
lead: Pb (Blei)
ndma: Nitrosodimethylamin (NDMA)
deoxynivalenol: DON (Deoxynivalenol)
ochratoxin_a: OTA (Ochratoxin A)
gushing: Gushingtest
half_glassy: halbglasig
coagulable_nitrogen: koagulierbarer N
[captions]
supplier: Malzlieferant | Absender
malt: Sortenbezeichnung | Malz | Ware
batch: Los | Chargenbezeichnung | Charge Nr. | Silo/Charge
certificate: Dokument-Nr. | Analysenbericht Nr.
crop_year: Jahrgang | Ernte Jahr
variety: Braugerste | Gerste
produced_on: hergestellt am | Abdarrdatum
analysed_on: untersucht am | Prüfdatum
delivered_on: geliefert am | Versanddatum
best_before: haltbar bis | MHD bis
quantity: Gewicht | Partiegröße
order: Bestellung Nr. | Auftrag
customer: Lieferung an | Brauerei
[heads]
label: Prüfgröße | Kenngröße | Untersuchungskriterium
result: Analysenwert | Prüfergebnis | Ist
unit: Maßeinheit | in
method: Meth. | Vorschrift
min: von | unterer Wert
max: bis | oberer Wert
spec: Vorgabe | Toleranz | Sollbereich
typical: Normalwert | üblicher Wert
previous: Vorherige Charge | Vorjahreswert
number: lfd. Nr.
[titles]
batch: Analysenbericht | Malzuntersuchung | Prüfbericht Malz
specification: Malzspezifikation | Technisches Datenblatt
[sections]
physical: Mechanische Untersuchung
chemical: Chemisch-technische Analyse
wort: Laborwürze
enzymes: Enzymatik
nitrogen: Eiweißlösung
modification: Zytolytische Lösung
contaminants: Unerwünschte Stoffe
sieving: Korngrößen
[basis]
dry: i.Tr. | (i. Tr.) | in der Trockensubstanz | , TS | bez. auf TrS
asis: (luftr.) | luftrocken | , lufttrocken
[unitbasis]
dry: % i.Tr. | % (wfr.) | % i.d.TrS
asis: % (lftr.) | % lufttr.
[notes]
dry: Extrakt- und Eiweißwerte auf Malztrockensubstanz bezogen.
[family]
EBC: Analysenmethoden: EBC | nach MEBAK, Kongresswürze | EBC-Analyse
iso65: Würzebereitung: isothermes 65 °C-Maischverfahren | isotherme Maische bei 65 °C, MEBAK
[words]
clarity: blank | leicht trüb | opalisierend
odour: arttypisch | sauber
filtration: träge | normal
nd: nicht nachw. | < NG
[malts]
PIL: Pilsner Malz Basis | Helles Braumalz Pilsner
MUN: Münchner Malz dunkel
WHE: Weizenmalz dunkel
CRY: Caramelmalz hell
ROA: Röstmalz dunkel
"""

_FR = """
[labels]
moisture: Eau | Teneur en humidité
extract_fine_dry: Extrait sur mouture fine{b} | Rendement en extrait, mouture fine{b}
extract_coarse_dry: Extrait sur mouture grosse{b}
extract_fine_as_is: Extrait sur mouture fine{b}
fine_coarse_difference: Diff. fin/gros | Différence d'extrait F-G
colour: Couleur EBC du moût | Coloration
boiled_colour: Coloration après cuisson | Couleur du moût après ébullition
total_nitrogen: Azote (total){b}
total_protein: Protéines brutes{b} | Teneur en protéines{b}
soluble_nitrogen: Azote solubilisé{b} | Azote soluble du moût{b}
soluble_protein: Protéines solubilisées{b}
ratio_kolbach: Nombre de Kolbach | Taux de Kolbach
fan: Azote α-aminé | Acides aminés libres (FAN)
friability: Taux de friabilité | Friabilité au friabilimètre
homogeneity: Taux d'homogénéité
glassy_grains: Grains vitreux entiers | Taux de vitrosité
whole_grains: Grains entiers non désagrégés
dp: Pouvoir diastasique WK | Force diastasique
alpha_amylase: Amylase alpha
beta_glucan: Bêta-glucanes (moût) | Teneur en β-glucanes
viscosity: Viscosité moût 8,6 % | Viscosité du moût congrès
saccharification_time: Temps de sacch. | Vitesse de saccharification
filtration: Temps de filtration | Filtrabilité
clarity: Aspect | Clarté du moût
odour: Odeur de la trempe
wort_ph: pH du moût congrès | pH (moût)
final_attenuation: ALA (atténuation limite apparente) | Atténuation apparente limite
relative_extract_45: Indice Hartong 45 °C
sieve_over_2_8: supérieur à 2,8 mm
sieve_2_5_to_2_8: entre 2,5 et 2,8 mm
sieve_over_2_5: supérieur à 2,5 mm
sieve_2_2_to_2_5: entre 2,2 et 2,5 mm
sieve_under_2_2: inférieur à 2,2 mm
thousand_corn_weight: Poids de 1000 grains
hectolitre_weight: Masse à l'hectolitre | PS (poids spécifique)
foreign_matter: Corps étrangers
broken_grains: Brisures
dms_precursor: PDMS | Précurseurs DMS
deoxynivalenol: Déoxynivalénol DON
gushing: Test de gushing
[captions]
supplier: Malteur | Expéditeur
malt: Qualité | Nature du malt
batch: Réf. lot | Lot de fabrication | N° lot
certificate: Réf. bulletin | Bulletin n°
crop_year: Campagne | Millésime
variety: Orge
produced_on: Fabriqué le | Date touraillage
analysed_on: Date des analyses | Date d'essai
delivered_on: Expédié le
best_before: À utiliser avant | DLUO
quantity: Poids | Qté
order: Réf. commande
customer: Brasserie
[heads]
label: Critère | Essai
result: Valeur trouvée | Mesure
unit: Unité de mesure
method: Norme
min: Mini
max: Maxi
spec: Tolérances | Cible
typical: Valeur usuelle
previous: Campagne précédente
[titles]
batch: Bulletin d'analyses malt | Rapport d'analyse
specification: Cahier des charges malt
[basis]
dry: (s/sec) | sur produit sec | , sec
asis: (tel quel) | sur produit brut
[unitbasis]
dry: % sec | % /sec
asis: % t.q.
[family]
EBC: Analyses effectuées suivant les méthodes EBC
[words]
clarity: brillant | opalescent
odour: typique
filtration: lente
nd: non dét.
"""

TEXTS = {"en": _EN, "de": _DE, "fr": _FR, **MORE}
