# ruff: noqa: E501
"""German and French wordings of the sealed sheets."""

from __future__ import annotations

_DE = """
[labels]
moisture: Wassergehalt | Wasser | Feuchte | Feuchtigkeit | Wassergehalt Malz
extract_fine_dry: Extrakt Feinschrot{b} | Extrakt fein{b} | Feinschrotextrakt{b} | Extrakt Feinmehl{b} | Extrakt TrS~dry | Extraktgehalt, Feinschrot{b} | Extrakt wfr. (Feinschrot)~dry | Extraktausbeute{b}~either
extract_coarse_dry: Extrakt Grobschrot{b} | Extrakt grob{b} | Grobschrotextrakt{b} | Extrakt wfr. (Grobschrot)~dry
extract_fine_as_is: Extrakt Feinschrot{b} | Extrakt fein{b} | Extrakt lftr. (Feinschrot)~asis | Extrakt lftr.~asis
extract_coarse_as_is: Extrakt Grobschrot{b} | Extrakt lftr. (Grobschrot)~asis
fine_coarse_difference: Extraktdifferenz | M/S-Differenz | Mehl/Schrot-Differenz | Differenz fein/grob | Mehlschrotdifferenz
colour: Farbe | Würzefarbe | Farbe der Würze | Farbe (photometrisch) | Malzfarbe
boiled_colour: Kochfarbe | Farbe nach Kochen | Würzefarbe, gekocht | Kochfarbe (2 h)
total_nitrogen: Gesamtstickstoff{b} | N gesamt{b} | Stickstoff, gesamt{b} | Gesamt-N{b}
total_protein: Eiweiß{b} | Rohprotein{b} | Eiweißgehalt{b} | Eiweiß gesamt{b} | Protein{b} | Rohprotein (N x 6,25){b}
soluble_nitrogen: Löslicher Stickstoff{b} | Lösl. Stickstoff{b} | N löslich{b} | Lösl. N{b}
soluble_protein: Lösliches Eiweiß{b} | Eiweiß löslich{b} | Lösl. Protein{b}
ratio_kolbach: Kolbachzahl | Eiweißlösungsgrad | ELG | Eiweißlösungsgrad (Kolbach) | Eiweißlösung | Kolbach-Index
ratio_snr: Eiweißlösungsgrad | ELG | Eiweißlösung | Lösungsgrad (Eiweiß)
fan: FAN | Freier Aminostickstoff | Freier Amino-N | FAN (Ninhydrin) | Freier α-Aminostickstoff
friability: Friabilimeter | Mürbigkeit | Friabilimeterwert | Mürbigkeit (Friabilimeter) | Friabilität
homogeneity: Homogenität | Homogenität (Friabilimeter) | Homogenität n. Friabilimeter
pug: Teilglasige Körner (Friabilimeter > 2,2 mm) | Teilglasige Körner (PUG)
whole_grains: Ganze Körner (Friabilimeter) | Ganzkörner (WUG)
glassy_grains: Ganzglasige | Ganzglasige Körner | Glasige Körner | Glasigkeit (ganzglasig)
dp: Diastatische Kraft | Diastatische Kraft (DK) | DK | Diastatische Kraft n. Windisch-Kolbach
alpha_amylase: α-Amylase | Alpha-Amylase | α-Amylase (DU) | Alpha-Amylase-Aktivität
beta_glucan: β-Glucan | Beta-Glucan | β-Glucan in Würze | Beta-Glucan (Würze)
viscosity: Viskosität | Viskosität (8,6 %) | Würzeviskosität | Viskosität Kongresswürze
saccharification_time: Verzuckerungszeit | Verzuckerung | Verzuckerungsdauer | Verzuckerung (70 °C)
filtration: Ablauf~either | Filtrationszeit | Filtration | Abläuterung
turbidity: Trübung | Trübung (90°)
clarity: Aussehen der Würze | Klarheit | Klarheit der Würze
odour: Geruch | Geruch der Maische
wort_ph: pH | pH-Wert | pH der Würze | pH-Wert Würze
final_attenuation: Endvergärungsgrad | EVG scheinbar | Endvergärung, scheinbar | Scheinb. Endvergärungsgrad | Vs end
relative_extract_45: VZ 45 °C | VZ 45°C | Hartong VZ 45 | Relativer Extrakt 45 °C | VZ45
sieve_over_2_8: > 2,8 mm | über 2,8 mm | Sortierung > 2,8 mm | Sieb > 2,8 mm
sieve_2_5_to_2_8: 2,5 - 2,8 mm | 2,5 bis 2,8 mm | Sortierung 2,5 - 2,8 mm
sieve_over_2_5: > 2,5 mm | Vollgerstenanteil > 2,5 mm | Sortierung > 2,5 mm | Summe > 2,5 mm
sieve_2_2_to_2_5: 2,2 - 2,5 mm | 2,2 bis 2,5 mm | Sortierung 2,2 - 2,5 mm
sieve_under_2_2: < 2,2 mm | unter 2,2 mm | Ausputz < 2,2 mm | Sortierung < 2,2 mm | Ausputz (< 2,2 mm)
thousand_corn_weight: Tausendkorngewicht | TKG | TKM | Tausendkorngewicht wfr.
hectolitre_weight: Hektolitergewicht | HL-Gewicht | HLG
foreign_matter: Fremdbesatz | Besatz | Fremdkörner
broken_grains: Bruchkörner | Halbe Körner / Bruch | Kornbruch
dms_precursor: DMS-P | DMS-Vorläufer | DMS-P (SMM)
sulphur_dioxide: SO2 | Schwefeldioxid
arsenic: Arsen | Arsen (As)
lead: Blei | Blei (Pb)
cadmium: Cadmium | Cadmium (Cd)
ndma: NDMA | Nitrosamine (NDMA) | N-Nitrosodimethylamin
deoxynivalenol: DON | Deoxynivalenol | Deoxynivalenol (DON)
zearalenone: Zearalenon | ZEA
ochratoxin_a: Ochratoxin A | OTA
aflatoxin_b1: Aflatoxin B1
t2_ht2: Summe T2/HT2
gushing: Gushing | Gushingtest
[captions]
supplier: Hersteller | Lieferant | Mälzerei | Herstellwerk | Lieferwerk
malt: Produkt | Sorte (Malz) | Artikelbezeichnung | Malzsorte | Ware | Malzart | Bezeichnung
batch: Charge | Chargen-Nr. | Ch.-Nr. | Chargennr. | Partie-Nr. | Los | Losnummer | Charge Nr.
certificate: Zertifikat-Nr. | Analysennummer | Prüfbericht-Nr. | Attest-Nr. | Zertifikat Nr.
crop_year: Ernte | Erntejahr | Ernte/Jahrgang | Jahrgang
variety: Gerstensorte | Gerstensorte(n) | Braugerstensorte | Gerste
produced_on: Herstelldatum | Produziert am | Abdarrdatum | Herstellungsdatum | Darrdatum
analysed_on: Analysedatum | Datum der Analyse | Analysiert am | Geprüft am | Untersucht am
delivered_on: Lieferdatum | Versanddatum | Liefertag | Geliefert am | Verladen am
best_before: MHD | Mindesthaltbar bis | Mind. haltbar bis | Haltbar bis
quantity: Menge | Liefermenge | Nettogewicht | Gewicht netto | Netto
order: Ihre Bestellung | Bestellnummer | Bestell-Nr. | Ihre Bestell-Nr. | Auftrag
customer: Kunde | Empfänger | Warenempfänger | Abnehmer | Besteller
[heads]
label: Analysenmerkmal | Merkmal | Parameter | Prüfmerkmal | Bezeichnung | Prüfung | Kriterium
result: Ergebnis | Istwert | Ist | Wert | Messwert | Analysenwert | Befund
unit: Einheit | Einh. | ME | Dim.
method: Methode | Prüfmethode | Prüfvorschrift | Verfahren
min: min. | Min | von | Untere Grenze | UG | Soll min
max: max. | Max | bis | Obere Grenze | OG | Soll max
spec: Soll | Sollwert | Spezifikation | Vorgabe | Grenzwerte | Vereinbarte Werte | Toleranz
typical: Richtwert | Üblicher Bereich | Normalwert | Erfahrungswert
previous: Letzte Lieferung | Vorige Charge | Vorlieferung
number: Nr. | Pos. | lfd. Nr.
remark: Bemerkung | Bewertung | i.O.
[titles]
batch: Analysenzertifikat | Malzanalyse | Analysenattest | Prüfzeugnis | Werkszeugnis / Malzanalyse | Analysenbericht | Qualitätszertifikat | Malz-Analysenzertifikat
specification: Malzspezifikation | Produktdatenblatt
[sections]
physical: Physikalische Merkmale | Mechanische Untersuchung | Physikalisch
chemical: Chemisch-technische Analyse | Chemische Merkmale | Chemisch
wort: Würze | Würzemerkmale | Laborwürze
enzymes: Enzyme | Enzymkräfte
nitrogen: Eiweiß | Eiweiß und Stickstoff | Proteolyse
modification: Auflösung | Cytolyse | Zytolytische Merkmale
contaminants: Rückstände/Kontaminanten | Mykotoxine, Rückstände | Kontaminanten
sieving: Sortierung | Siebung
barley: Gerste (Rohware) | Rohgerste
malt: Fertigmalz | Malz
[basis]
dry: wfr. | (wfr.) | i. Tr. | , TrS | in TrS | i.TrS.
asis: lftr. | (lftr.) | , lufttr.
[unitbasis]
dry: % wfr. | % TrS. | % i.TrS | % i. Tr.
asis: % lftr. | % (lftr.)
[notes]
dry: Extrakt- und Eiweißwerte bezogen auf Trockensubstanz. | Alle Werte außer Wassergehalt in der Trockensubstanz.
[family]
EBC: Analysenmethoden: EBC | Untersuchungen nach MEBAK, Kongressmaischverfahren | Methoden gemäß Analytica EBC | Analytik nach EBC/MEBAK (Kongressmaische)
iso65: Maischverfahren: Isotherme 65 °C-Maische nach MEBAK | Methode: MEBAK isotherm 65 °C
[words]
clarity: klar | blank | leicht opal
odour: rein | normal | arteigen
filtration: normal | schnell | gut
nd: n.n. | n. nachw. | nicht nachweisbar
[malts]
PIL: Pilsner Malz | Helles Malz | Pilsener Braumalz | Helles Gerstenmalz
XP: Pilsner Malz extra hell
ALE: Pale-Ale-Malz
VIE: Wiener Malz
MUN: Münchner Malz | Münchner Malz II | Dunkles Malz
CRY: Karamellmalz dunkel | Caramelmalz hell | Karamellmalz
ROA: Röstmalz | Farbmalz
WHE: Weizenmalz | Weizenmalz hell | Helles Weizenmalz
RYE: Roggenmalz
OAT: Hafermalz
DIS: Brennereimalz | Rauchmalz für Brennereien
[x]
silo: Silo | Silo-Nr. | Zelle
truck: LKW | Kfz-Kennzeichen | Fahrzeug | Kennzeichen
note_no: Lieferschein | Lieferschein-Nr. | Lieferschein Nr.
article: Artikel-Nr. | Material-Nr. | Art.-Nr.
sample: Proben-Nr. | Muster-Nr. | Probennummer
packing: Verpackung | Gebinde | Lieferform
packing_text: lose | Sack 25 kg | Big Bag
origin: Herkunft | Ursprung | Anbaugebiet
origin_text: Nordmark | Hügelland
account: Kunden-Nr. | Kd.-Nr. | Kundennummer
seal: Plomben-Nr. | Plombe | Container-Nr.
sampled: Probenahme | Probenahme am | Muster gezogen am
issued: Ausstellungsdatum | Ausgestellt am | Druckdatum | Erstellt am
page: Seite {p} von {q} | Seite {p}/{q} | Blatt {p}
tagline: Braumalz seit Generationen | Malz für Brauer und Brenner | Gerste · Malz · Vertrauen
auto: Dieses Zertifikat wurde maschinell erstellt und ist ohne Unterschrift gültig. | EDV-Ausdruck, gültig ohne Unterschrift.
sample_only: Die Ergebnisse beziehen sich ausschließlich auf den Prüfgegenstand. | Untersucht wurde ein Durchschnittsmuster der Verladung.
store: Trocken und kühl lagern (unter 20 °C). Haltbarkeit 12 Monate ab Herstellung. | Lagerung trocken, vor Schädlingen geschützt; 18 Monate haltbar.
accredited: Das Labor ist nach DIN EN ISO/IEC 17025 akkreditiert (D-PL-0{n}). | Zertifiziert nach FSSC 22000 und GMP+ B1.
verdict: Die Ware entspricht den vereinbarten Werten. | Die Charge ist zur Auslieferung freigegeben.
intro: Für die unten genannte Lieferung bestätigen wir folgende Analysenwerte: | Hiermit bescheinigen wir die Qualität der gelieferten Ware.
signed: Leitung Labor | Qualitätssicherung | Leiter Qualitätswesen | Betriebslabor
checked: Freigabe | Geprüft | Freigegeben durch
lab: Zentrallabor | Betriebslabor | Labor Qualitätssicherung
remarks: Bemerkungen | Anmerkungen
none: keine | -
fn_dry: wasserfrei | bezogen auf Trockensubstanz
weighted: Gewichtetes Mittel | Mittelwert der Lieferungen
minmax: Kleinster Wert ; Größter Wert
items: Pos. ; Artikel ; Bezeichnung ; Menge
analysis_of: Analyse der gelieferten Ware | Malzanalyse zur Lieferung
letter_open: Sehr geehrte Damen und Herren,
letter_text: wie besprochen teilen wir Ihnen die Analysenwerte der Partie mit: | anbei die Werte des heute verladenen Malzes:
letter_close: Mit freundlichen Grüßen
mail: Von ; An ; Betreff ; Gesendet
barley_rows: Wassergehalt Gerste ; Eiweiß Gerste ; Keimenergie
standard: Soll | Zielwert
"""

_FR = """
[labels]
moisture: Humidité | Teneur en eau | Eau | Humidité du malt
extract_fine_dry: Extrait fine mouture{b} | Extrait fin{b} | Extrait mouture fine{b} | Extrait sur sec, mouture fine~dry | Extrait fin s/sec~dry | Extrait Congrès fin{b}
extract_coarse_dry: Extrait grosse mouture{b} | Extrait gros{b} | Extrait mouture grossière{b} | Extrait gros s/sec~dry
extract_fine_as_is: Extrait fine mouture{b} | Extrait fin{b} | Extrait fin s/brut~asis
extract_coarse_as_is: Extrait grosse mouture{b} | Extrait gros s/brut~asis
fine_coarse_difference: Différence fin-gros | Différence F/G | Écart fin/gros | Différence d'extrait | Diff. F-G
colour: Couleur | Couleur du moût | Coloration | Couleur moût
boiled_colour: Couleur après cuisson | Couleur moût cuit | Couleur après ébullition | Coloration après ébullition
total_nitrogen: Azote total{b} | N total{b}
total_protein: Protéines{b} | Protéines totales{b} | Matières azotées totales{b} | Protéines totales (N x 6,25){b} | Mat. azotées{b}
soluble_nitrogen: Azote soluble{b} | N soluble{b} | Azote sol.{b}
soluble_protein: Protéines solubles{b} | Mat. azotées solubles{b}
ratio_kolbach: Indice de Kolbach | Kolbach | Indice Kolbach | Rapport Kolbach
ratio_st: Rapport S/T | S/T
fan: FAN | Azote aminé libre | Azote alpha-aminé | Azote aminé (FAN)
friability: Friabilité | Friabilité totale | Friabilimètre
homogeneity: Homogénéité | Homogénéité (friabilimètre)
pug: Grains partiellement désagrégés (PUG) | PUG
whole_grains: Grains entiers | Grains entiers (WUG) | Entiers au friabilimètre
glassy_grains: Grains vitreux | Vitreux
dp: Pouvoir diastasique | PD | Pouvoir diastasique (PD)
alpha_amylase: Alpha-amylase | α-amylase | Alpha amylases
beta_glucan: Béta-glucanes | β-glucanes | Bêta-glucanes du moût | Béta glucanes moût
viscosity: Viscosité | Viscosité du moût | Viscosité moût
saccharification_time: Saccharification | Temps de saccharification | Durée de saccharification
filtration: Filtration | Vitesse de filtration | Temps de filtration
turbidity: Turbidité | Trouble du moût
clarity: Limpidité | Limpidité du moût | Aspect du moût
odour: Odeur | Odeur de la trempe
wort_ph: pH | pH du moût | pH moût
final_attenuation: Atténuation limite apparente | Atténuation limite | AFL apparente
relative_extract_45: Hartong 45 °C | VZ 45 °C | Extrait relatif 45 °C | Indice Hartong 45
sieve_over_2_8: > 2,8 mm | Calibrage > 2,8 mm | Tamis 2,8 mm
sieve_2_5_to_2_8: 2,5 - 2,8 mm | Calibrage 2,5-2,8 mm | 2,5 à 2,8 mm
sieve_over_2_5: > 2,5 mm | Calibrage > 2,5 mm | Total > 2,5 mm
sieve_2_2_to_2_5: 2,2 - 2,5 mm | Calibrage 2,2-2,5 mm | 2,2 à 2,5 mm
sieve_under_2_2: < 2,2 mm | Calibrage < 2,2 mm | Passage < 2,2 mm | Petits grains < 2,2 mm
thousand_corn_weight: Poids de 1000 grains | PMG | P.M.G.
hectolitre_weight: Poids à l'hectolitre | Poids hectolitre
foreign_matter: Corps étrangers | Impuretés
broken_grains: Grains cassés | Brisures
dms_precursor: DMS-P | Précurseur du DMS | DMSP
sulphur_dioxide: SO2 | Anhydride sulfureux
arsenic: Arsenic
lead: Plomb | Plomb (Pb)
cadmium: Cadmium | Cadmium (Cd)
ndma: NDMA | Nitrosamines (NDMA)
deoxynivalenol: DON | Déoxynivalénol (DON) | Déoxynivalénol
zearalenone: Zéaralénone | ZEA
ochratoxin_a: Ochratoxine A | OTA
aflatoxin_b1: Aflatoxine B1
t2_ht2: T2 + HT2
gushing: Gushing
[captions]
supplier: Fournisseur | Malterie | Producteur | Usine
malt: Produit | Type de malt | Désignation | Malt | Article | Qualité
batch: Lot | N° de lot | Lot n° | Numéro de lot | Batch
certificate: Certificat n° | N° certificat | Bulletin n° | Rapport n° | N° d'analyse
crop_year: Récolte | Année de récolte | Campagne
variety: Variété | Variété d'orge | Variétés | Orge
produced_on: Date de fabrication | Fabriqué le | Date de production | Date de touraillage
analysed_on: Date d'analyse | Analysé le | Date de l'analyse
delivered_on: Date de livraison | Livré le | Date d'expédition | Expédié le
best_before: DDM | À consommer de préférence avant le | DLUO | Date limite
quantity: Quantité | Poids net | Tonnage | Quantité livrée
order: Votre commande | Commande n° | N° de commande | Réf. commande
customer: Client | Destinataire | Livré à | Nom du client
[heads]
label: Paramètre | Analyse | Détermination | Critère | Désignation | Caractéristique
result: Résultat | Valeur | Résultats | Mesure | Valeur mesurée
unit: Unité | Unités | U
method: Méthode | Réf. méthode | Norme
min: Mini | Min | Min. | Minimum
max: Maxi | Max | Max. | Maximum
spec: Spécification | Cahier des charges | Limites | Norme client | Tolérance
typical: Valeur type | Valeur habituelle
previous: Lot précédent | Livraison précédente
number: N° | Rang
remark: Remarque | Conformité
[titles]
batch: Certificat d'analyse | Bulletin d'analyse | BULLETIN D'ANALYSE MALT | Certificat de qualité | Rapport d'analyse malt | Analyse du malt
specification: Fiche technique | Spécification malt
[sections]
physical: Analyses physiques | Physique | Caractéristiques physiques
chemical: Analyses chimiques | Chimie | Malt
wort: Moût | Analyse du moût | Moût de laboratoire
enzymes: Enzymes
nitrogen: Protéines | Matières azotées | Azote
modification: Désagrégation
contaminants: Contaminants | Résidus et contaminants | Sécurité alimentaire
sieving: Calibrage | Tamisage
barley: Orge
malt: Malt fini
[basis]
dry: sur sec | (sur sec) | s/sec | , sur MS | / sec
asis: sur brut | (tel quel) | s/brut
[unitbasis]
dry: % sec | % s/sec | % MS | % sur sec
asis: % brut | % tel quel
[notes]
dry: Extraits et protéines exprimés sur matière sèche. | Résultats sur sec, sauf humidité.
[family]
EBC: Méthodes EBC | Méthodes d'analyse : Analytica EBC | Analyses selon EBC (brassin Congrès) | Analyses effectuées selon les méthodes EBC
ASBC: Méthodes ASBC | Analyses selon ASBC
[words]
clarity: clair | limpide | légèrement opalescent
odour: normale | franche
filtration: normale | rapide
nd: nd | non détecté | n.d.
[malts]
PIL: Malt Pilsen | Malt blond | Malt Pils 2 rangs
XP: Malt Pilsen extra pâle
ALE: Malt Pale Ale
VIE: Malt Vienne
MUN: Malt Munich | Malt Munich 25
CRY: Malt caramel 120 | Malt cara
ROA: Malt chocolat | Malt torréfié
WHE: Malt de blé | Malt de froment
RYE: Malt de seigle
OAT: Malt d'avoine
DIS: Malt distillerie | Malt tourbé
[x]
silo: Silo | Cellule
truck: Camion | Immatriculation
note_no: Bon de livraison | BL n°
article: Code article | Réf. article
sample: Échantillon n° | N° échantillon
packing: Conditionnement | Emballage
packing_text: Vrac | Sacs 25 kg | Big bag
origin: Origine
origin_text: Plaine du Nord | Beaulande
account: Code client | N° client
seal: Plomb n° | Scellé n°
sampled: Prélevé le | Date de prélèvement
issued: Édité le | Date d'édition | Date d'émission
page: Page {p}/{q} | Page {p} sur {q}
tagline: Maltiers de père en fils | Le malt au service du brasseur
auto: Document édité informatiquement, valable sans signature. | Certificat généré automatiquement.
sample_only: Les résultats ne se rapportent qu'à l'échantillon soumis à l'essai. | Échantillon moyen prélevé au chargement.
store: À conserver au sec et à moins de 20 °C. Durabilité 12 mois.
accredited: Laboratoire accrédité ISO/IEC 17025, n° 1-0{n}. | Site certifié FSSC 22000.
verdict: Lot conforme au cahier des charges. | Lot libéré.
intro: Nous certifions que le malt désigné ci-dessous présente les caractéristiques suivantes : | Veuillez trouver ci-dessous l'analyse du malt livré.
signed: Responsable qualité | Le responsable du laboratoire
checked: Validé par | Visa
lab: Laboratoire central | Laboratoire qualité
remarks: Remarques | Observations
none: néant | -
fn_dry: sur matière sèche
weighted: Moyenne pondérée
minmax: Plus petite valeur ; Plus grande valeur
items: Pos. ; Article ; Désignation ; Quantité
analysis_of: Analyse de la marchandise livrée
letter_open: Madame, Monsieur,
letter_text: veuillez trouver les valeurs du lot chargé ce jour : | suite à votre appel, voici l'analyse du lot :
letter_close: Cordialement
mail: De ; À ; Objet ; Envoyé
barley_rows: Humidité orge ; Protéines orge ; Énergie germinative
standard: Cible
"""

TEXTS = {"de": _DE, "fr": _FR}
