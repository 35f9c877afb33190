# ruff: noqa: E501
"""Wordings that are kept aside: about a third of each language, used on sheets made with ``kept`` only.

Whoever works on the reading of sheets leaves this file unread, so that it can tell how well unseen words are read.
"""

from __future__ import annotations

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

_NL = """
[labels]
moisture: Vocht in mout | Vochtpercentage
extract_fine_dry: Extract fijngemalen{b} | Rendement fijne maling{b}
extract_coarse_dry: Extract grofgemalen{b}
extract_fine_as_is: Extract fijngemalen{b}
fine_coarse_difference: F/G-verschil extract | Verschil in extract fijn/grof
colour: Kleur wort EBC | Moutkleur
boiled_colour: Kleur gekookt wort
total_nitrogen: N-totaal{b}
total_protein: Ruw eiwit{b} | Totaal-eiwit{b}
soluble_nitrogen: Opgeloste stikstof{b}
soluble_protein: Opgelost eiwit{b}
ratio_kolbach: Kolbach-getal | Kolbach index (eiwitoplossing)
fan: Vrije α-aminostikstof | Amino-N vrij (FAN)
friability: Brosheid (friabilimeter) | Friabiliteit mout
homogeneity: Gelijkmatigheid (homogeniteit)
glassy_grains: Volledig glazige korrels
whole_grains: Hele, niet-gemodificeerde korrels
dp: Diast. vermogen WK | Diastatische kracht (WK)
alpha_amylase: Alfa-amylaseactiviteit
beta_glucan: β-glucaan (wort) | Gehalte bètaglucaan wort
viscosity: Viscositeit (8,6 %) | Viscositeit bij 20 °C
saccharification_time: Tijd tot versuikering
filtration: Filtratieduur
clarity: Uiterlijk wort
odour: Geur beslag
wort_ph: Zuurtegraad wort (pH) | pH-wort
final_attenuation: Eindvergisting schijnbaar | SEV (schijnbare eindvergistingsgraad)
relative_extract_45: Relatief extract 45 °C
sieve_over_2_8: groter dan 2,8 mm
sieve_2_5_to_2_8: tussen 2,5 en 2,8 mm
sieve_over_2_5: groter dan 2,5 mm
sieve_2_2_to_2_5: tussen 2,2 en 2,5 mm
sieve_under_2_2: kleiner dan 2,2 mm
thousand_corn_weight: 1000-korrelgewicht
hectolitre_weight: Gewicht per hectoliter
foreign_matter: Verontreinigingen
broken_grains: Breukkorrels
dms_precursor: DMS-voorloper
[captions]
supplier: Moutleverancier
malt: Mout | Omschrijving
batch: Charge | Partij nr. | Lot
certificate: Attest nr.
crop_year: Oogst van
variety: Gerst
produced_on: Geproduceerd op | Eestdatum
analysed_on: Geanalyseerd op
delivered_on: Geleverd op
best_before: Tenminste houdbaar tot
quantity: Gewicht | Partijgrootte
order: Bestelling
customer: Brouwerij
[heads]
label: Kenmerk | Test
result: Gevonden | Analyse-uitslag
unit: Eenh.
method: Voorschrift
min: Ondergrens
max: Bovengrens
spec: Eis | Tolerantie
typical: Gebruikelijke waarde
previous: Vorige oogst
[titles]
batch: Analyserapport | Kwaliteitscertificaat mout
specification: Technische fiche mout
[basis]
dry: o.d.s. | (op ds) | in droge stof
asis: (als zodanig) | zoals ontvangen
[unitbasis]
dry: % o.d.s. | % (ds)
asis: % a.z.
[family]
EBC: Bepaald volgens EBC-voorschrift
IoB: Bepaald volgens Institute of Brewing (IoB)
[words]
clarity: opaal | troebel
odour: typisch
filtration: traag
nd: niet aant.
"""

_ES = """
[labels]
moisture: Agua | Humedad (estufa)
extract_fine_dry: Extracto, molienda fina{b} | Rendimiento molienda fina{b}
extract_coarse_dry: Extracto, molienda gruesa{b}
extract_fine_as_is: Extracto, molienda fina{b}
fine_coarse_difference: Dif. fino-grueso | Diferencia de extractos (F-G)
colour: Color mosto | Color EBC del mosto
boiled_colour: Color tras ebullición | Color mosto cocido
total_nitrogen: Nitrógeno (total){b}
total_protein: Proteína bruta{b} | Proteína de malta{b}
soluble_nitrogen: N soluble en mosto{b}
soluble_protein: Proteína solubilizada{b}
ratio_kolbach: Número de Kolbach | I. Kolbach
ratio_st: Relación proteína soluble/total
fan: N-amínico libre (FAN) | Aminonitrógeno libre
friability: Friabilidad (friabilímetro)
homogeneity: Grado de homogeneidad
glassy_grains: Granos totalmente vítreos
whole_grains: Granos enteros no modificados
dp: Poder diast. | Fuerza diastásica
alpha_amylase: Amilasa alfa
beta_glucan: Beta glucanos (mosto) | Contenido de β-glucanos
viscosity: Viscosidad mosto (8,6 %) | Viscosidad a 20 °C
saccharification_time: Velocidad de sacarificación
filtration: Filtrabilidad (tiempo)
clarity: Aspecto | Brillantez del mosto
odour: Olor del macerado
wort_ph: pH mosto | pH (mosto)
final_attenuation: Atenuación aparente límite
relative_extract_45: VZ 45 (Hartong)
sieve_over_2_8: mayor de 2,8 mm
sieve_2_5_to_2_8: entre 2,5 y 2,8 mm
sieve_over_2_5: mayor de 2,5 mm
sieve_2_2_to_2_5: entre 2,2 y 2,5 mm
sieve_under_2_2: menor de 2,2 mm
thousand_corn_weight: Peso mil granos
hectolitre_weight: Peso por hectolitro
foreign_matter: Cuerpos extraños
broken_grains: Granos quebrados
dms_precursor: DMS-P (precursor)
gushing: Prueba de gushing
[captions]
supplier: Maltero
malt: Clase de malta | Descripción
batch: Partida | Código de lote | Lote de producción
certificate: Ref. certificado
crop_year: Campaña
variety: Cebada
produced_on: Elaborado el | Producción
analysed_on: Fecha del ensayo
delivered_on: Entregado el
best_before: Caducidad | Vence
quantity: Peso | Cant.
order: Ref. pedido
customer: Cervecera
[heads]
label: Ensayo | Propiedad
result: Valor obtenido | Valor hallado
unit: U.M.
method: Norma
min: Inferior
max: Superior
spec: Tolerancia | Requisito
typical: Valor habitual
previous: Campaña anterior
[titles]
batch: Informe de análisis | Boletín de análisis de malta
specification: Especificación técnica de malta
[basis]
dry: s/seco | (s/s) | en base seca
asis: (b. húmeda) | tal como está
[unitbasis]
dry: % s/s | % (b.s.)
asis: % (t.c.)
[family]
EBC: Ensayos según métodos EBC
ASBC: Ensayos según ASBC
[words]
clarity: opalino | turbio
odour: típico
filtration: lenta
nd: no det.
"""

_CS = """
[labels]
moisture: Voda ve sladu | Vlhkost (sušárna)
extract_fine_dry: Extrakt (moučka){b} | Extraktivnost, jemné mletí{b}
extract_coarse_dry: Extrakt (šrot){b}
extract_fine_as_is: Extrakt (moučka){b}
fine_coarse_difference: Rozdíl moučka-šrot | Rozdíl v extraktu
colour: Barva kongresní sladiny EBC | Zabarvení sladiny
boiled_colour: Barva sladiny po povaření
total_nitrogen: N celkový{b}
total_protein: Celkové bílkoviny{b} | Hrubý protein{b}
soluble_nitrogen: N rozpustný{b}
soluble_protein: Rozp. bílkoviny{b}
ratio_kolbach: Stupeň rozluštění (Kolbach) | Kolbach. číslo
fan: Aminodusík volný | α-aminodusík (FAN)
friability: Friabilita (friabilimetr)
homogeneity: Stejnorodost (homogenita)
glassy_grains: Celosklovitá zrna
dp: Diast. mohutnost | Diastatická mohutnost WK
alpha_amylase: Alfa-amyláza
beta_glucan: Obsah β-glukanů ve sladině | Beta-glukan (sladina)
viscosity: Viskozita sladiny 8,6 %
saccharification_time: Zcukření (doba)
filtration: Rychlost stékání
clarity: Vzhled | Průhlednost sladiny
odour: Vůně při rmutování
wort_ph: Hodnota pH sladiny | pH kongresní sladiny
final_attenuation: DSP zdánlivý (dosažitelný stupeň prokvašení)
relative_extract_45: VZ 45 °C (relativní extrakt) | Rel. extrakt 45 °C
sieve_over_2_8: nad 2,8 mm
sieve_2_5_to_2_8: mezi 2,5 a 2,8 mm
sieve_over_2_5: nad 2,5 mm
sieve_2_2_to_2_5: mezi 2,2 a 2,5 mm
sieve_under_2_2: pod 2,2 mm
thousand_corn_weight: Hmotnost 1000 zrn
hectolitre_weight: Hektolitrová váha
foreign_matter: Cizí příměsi
broken_grains: Půlky a zlomky
dms_precursor: DMS-P (prekurzor)
[captions]
supplier: Dodavatel sladu
malt: Slad | Název výrobku
batch: Č. šarže | Dávka
certificate: Doklad č.
crop_year: Ze sklizně
variety: Ječmen
produced_on: Datum hvozdění
analysed_on: Analyzováno dne
delivered_on: Dodáno dne
best_before: Trvanlivost do
quantity: Hmotnost
order: Obj. č.
customer: Pivovar
[heads]
label: Sledovaný znak | Zkouška
result: Zjištěno | Výsledek zkoušky
unit: Jednotky
method: Postup
min: od
max: do
spec: Tolerance
typical: Běžná hodnota
previous: Předchozí sklizeň
[titles]
batch: Atest sladu | Zpráva o rozboru sladu
specification: Technická specifikace sladu
[basis]
dry: na sušinu | (v sušině) | suš.
asis: v pův. hmotě
[unitbasis]
dry: % v suš.
asis: % v pův.
[family]
EBC: Stanoveno podle EBC
[words]
clarity: opalizující
odour: typická
filtration: pomalé
nd: nenalezeno
"""

_DA = """
[labels]
moisture: Vandprocent | Vand i malt
extract_fine_dry: Ekstraktudbytte fin{b} | Ekstrakt, finmalet{b}
extract_coarse_dry: Ekstrakt, grovmalet{b}
extract_fine_as_is: Ekstrakt, finmalet{b}
fine_coarse_difference: Ekstraktforskel fin-grov | F/G-differens
colour: Urtens farve | Maltfarve
boiled_colour: Farve, kogt urt
total_nitrogen: N total{b}
total_protein: Protein, total{b} | Proteinindhold{b}
soluble_nitrogen: Kvælstof, opløseligt{b}
soluble_protein: Protein, opløseligt{b}
ratio_kolbach: Kolbach-tal | Kolbachs indeks
fan: Frit α-aminokvælstof | Aminokvælstof, frit
friability: Friabilitet (friabilimeter) | Skørhed (friabilitet)
homogeneity: Homogenitetsgrad
glassy_grains: Helt glasagtige kerner
dp: Diastatisk kraft WK
alpha_amylase: Alfaamylase
beta_glucan: Betaglucan i urt | β-glucanindhold
viscosity: Viskositet (8,6 %)
saccharification_time: Tid til forsukring
filtration: Filtrerbarhed (tid)
clarity: Udseende af urt
odour: Lugt af mæsk
wort_ph: Urtens pH | pH-værdi, urt
final_attenuation: Slutforgæring, tilsyneladende
relative_extract_45: Relativ ekstrakt 45 °C
sieve_over_2_8: over 2,8 mm
sieve_2_5_to_2_8: mellem 2,5 og 2,8 mm
sieve_over_2_5: over 2,5 mm
sieve_2_2_to_2_5: mellem 2,2 og 2,5 mm
sieve_under_2_2: under 2,2 mm
thousand_corn_weight: 1000-kornsvægt
hectolitre_weight: Rumvægt (hl)
foreign_matter: Fremmedlegemer
broken_grains: Brudkerner
dms_precursor: DMS-prækursor
[captions]
supplier: Maltleverandør
malt: Malt | Varebetegnelse
batch: Parti | Batch nr.
certificate: Attest nr.
crop_year: Høst fra
variety: Byg
produced_on: Produceret den
analysed_on: Dato for analyse
delivered_on: Afsendt den
best_before: Holdbar til
quantity: Vægt
order: Bestilling
customer: Bryggeri
[heads]
label: Analysepunkt | Egenskaber
result: Fundet | Analyseresultat
unit: Enh.
method: Fremgangsmåde
min: Nedre grænse
max: Øvre grænse
spec: Tolerance
typical: Normalværdi
previous: Sidste høst
[titles]
batch: Analyseattest | Analysebevis malt
specification: Datablad for malt
[basis]
dry: (tørstof) | på tørstof | (i TS)
asis: (som er) | som modtaget
[unitbasis]
dry: % af TS
asis: % lufttørt
[family]
EBC: Bestemt efter EBC
[words]
clarity: opaliserende
odour: typisk
filtration: langsom
nd: ikke fundet
"""

_IT = """
[labels]
moisture: Acqua | Umidità residua
extract_fine_dry: Resa macinazione fine{b} | Estratto, macinato fine{b}
extract_coarse_dry: Estratto, macinato grosso{b}
extract_fine_as_is: Estratto, macinato fine{b}
fine_coarse_difference: Diff. F-G estratto | Differenza fine/grosso
colour: Colore mosto congresso | Colore del malto
boiled_colour: Colore mosto dopo bollitura
total_nitrogen: Azoto (totale){b}
total_protein: Proteine grezze{b} | Contenuto proteico{b}
soluble_nitrogen: Azoto in soluzione{b}
soluble_protein: Proteine in soluzione{b}
ratio_kolbach: Numero di Kolbach
fan: Azoto aminico libero (FAN) | Alfa amino azoto
friability: Friabilità (friabilimetro)
homogeneity: Grado di omogeneità
glassy_grains: Grani totalmente vitrei
dp: Potere diast. WK | Forza diastatica
alpha_amylase: Amilasi alfa
beta_glucan: Beta glucani (mosto)
viscosity: Viscosità mosto 8,6 %
saccharification_time: Velocità di saccarificazione
filtration: Filtrabilità (tempo)
clarity: Aspetto | Chiarezza del mosto
odour: Odore della miscela
wort_ph: pH mosto congresso
final_attenuation: Attenuazione apparente limite
relative_extract_45: Indice di Hartong 45 °C
sieve_over_2_8: maggiore di 2,8 mm
sieve_2_5_to_2_8: tra 2,5 e 2,8 mm
sieve_over_2_5: maggiore di 2,5 mm
sieve_2_2_to_2_5: tra 2,2 e 2,5 mm
sieve_under_2_2: minore di 2,2 mm
thousand_corn_weight: Peso 1000 grani
hectolitre_weight: Peso ettolitro
foreign_matter: Sostanze estranee
broken_grains: Grani spaccati
dms_precursor: DMS-P (precursore)
[captions]
supplier: Maltatore
malt: Denominazione | Articolo
batch: Partita | Cod. lotto
certificate: Rif. certificato
crop_year: Raccolto anno
variety: Orzo
produced_on: Data produzione
analysed_on: Data prova
delivered_on: Spedito il
best_before: TMC | Termine minimo di conservazione
quantity: Peso | Q.tà
order: Rif. ordine
customer: Birrificio
[heads]
label: Prova | Grandezza
result: Valore trovato | Esito
unit: Misura
method: Norma
min: Inferiore
max: Superiore
spec: Tolleranza
typical: Valore usuale
previous: Annata precedente
[titles]
batch: Rapporto di prova malto | Bollettino di analisi
specification: Capitolato malto
[basis]
dry: s/s | (sul secco) | su secco
asis: (tal quale) | come ricevuto
[unitbasis]
dry: % s/s
asis: % (t.q.)
[family]
EBC: Prove secondo metodi EBC
[words]
clarity: opalescente
odour: tipico
filtration: lenta
nd: non ril.
"""

TEXTS = {"en": _EN, "de": _DE, "fr": _FR, "nl": _NL, "es": _ES, "cs": _CS, "da": _DA, "it": _IT}
