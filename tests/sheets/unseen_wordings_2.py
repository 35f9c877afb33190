# ruff: noqa: E501
"""French and Dutch wordings of the unseen sheets; unread by whoever works on the reading of sheets."""

from __future__ import annotations

_FR = """
[labels]
moisture: Humidité malt | Teneur en humidité | Eau (étuve) | Taux d'humidité du malt | Humidité à l'expédition
extract_fine_dry: Extrait fin (0,2 mm){b} | Extrait farine{b} | Extrait (fin){b} | Extrait mouture fine 0,2 mm{b} | Rendement en extrait, mouture fine{b}
extract_coarse_dry: Extrait gros (1,0 mm){b} | Extrait (gros){b} | Extrait grosse mouture{b}
extract_fine_as_is: Extrait fin (0,2 mm){b} | Extrait farine{b} | Extrait (fin){b}
extract_coarse_as_is: Extrait (gros){b} | Extrait grosse mouture{b}
fine_coarse_difference: Différence Fine/Grosse | Différence d'extraits F-G | Écart d'extrait fine/grosse | Différence F/G
colour: Couleur (moût) | Couleur moût de laboratoire | Coloration | Couleur, spectro 430 nm | Couleur du moût congrès
boiled_colour: Couleur moût bouilli | Couleur après cuisson | Couleur bouillie
total_nitrogen: Azote total (Dumas){b} | Azote total malt{b} | Teneur en azote{b}
total_protein: Protéines (N x 6,25){b} | Protéines du malt, totales{b} | Matières azotées totales{b} | Teneur en protéines{b} | Protéines totales malt{b}
soluble_nitrogen: Azote soluble (moût){b} | Azote total soluble{b} | Azote soluble du malt{b}
soluble_protein: Protéines solubles moût{b} | Protéine soluble{b} | Matières protéiques solubles{b}
ratio_kolbach: Kolbach (IK) | Indice Kolbach IK | Indice de Kolbach (N sol./N total) | Index de Kolbach
ratio_st: Rapport soluble/total (S/T) | Rapport S/T protéines
fan: FAN (azote aminé libre) | Azote alpha-aminé | Azote aminé libre, FAN | Azote α-aminé libre
friability: Friabilité (friabilimètre) | Friabilité malt | Friabilimètre, friabilité
homogeneity: Homogénéité (friabilimètre PUG) | Homogénéité malt
pug: PUG (grains partiellement modifiés)~either
glassy_grains: Grains vitreux entiers | Grains vitreux (friabilimètre) | Entièrement vitreux
whole_grains: Friabilimètre, grains entiers | Grains entiers (WUG)
dp: Pouvoir diastasique PD | Pouvoir diastasique total | PD (pouvoir diastasique)
alpha_amylase: Alpha amylase (DU) | Activité α-amylasique | Alpha-amylases
beta_glucan: Béta-glucanes | Bêta-glucanes moût | β-glucanes (moût) | Bêta glucanes solubles
viscosity: Viscosité moût (20 °C) | Viscosité moût | Viscosité à 8,6 %
saccharification_time: Vitesse de saccharification | Saccharification (durée) | Saccharification à 70 °C
filtration: Filtration (moût) | Temps de filtration | Vitesse d'écoulement
turbidity: Turbidité moût | Turbidité 90°
clarity: Aspect moût | Limpidité moût
odour: Odeur empâtage | Odeur de la maische
wort_ph: pH (moût) | pH moût congrès | pH du moût à 20 °C
final_attenuation: Atténuation limite app. | Atténuation limite | Atténuation apparente finale
relative_extract_45: VZ 45 (Hartong) | Indice Hartong 45 °C | Hartong 45
sieve_over_2_8: Calibrage sup. à 2,8 mm | Refus tamis 2,8 mm | sup. à 2,8 mm
sieve_2_5_to_2_8: Calibrage 2,5/2,8 mm | de 2,5 à 2,8 mm
sieve_over_2_5: Calibrage sup. à 2,5 mm | Total > 2,5 mm | sup. à 2,5 mm
sieve_2_2_to_2_5: Calibrage 2,2/2,5 mm | de 2,2 à 2,5 mm
sieve_under_2_2: Calibrage inf. à 2,2 mm | Orgettes (< 2,2 mm) | inf. à 2,2 mm
thousand_corn_weight: Poids de mille grains (PMG) | PMG sec
hectolitre_weight: Poids spécifique | Poids à l'hectolitre PHL
foreign_matter: Impuretés totales | Corps étrangers
broken_grains: Grains cassés/brisés | Brisures
dms_precursor: DMS-P (précurseur) | Précurseurs de DMS | PDMS
deoxynivalenol: Mycotoxines : DON | DON (déoxynivalénol)
zearalenone: Mycotoxines : zéaralénone
ochratoxin_a: Mycotoxines : OTA | OTA (ochratoxine A)
aflatoxin_b1: Aflatoxine B1 (AFB1)
lead: Plomb (Pb)
cadmium: Cadmium (Cd)
arsenic: Arsenic (As)
ndma: NDMA (nitrosamines)
gushing: Test de gushing
half_glassy: Grains mi-vitreux
coagulable_nitrogen: Azote coagulable moût
varietal_purity: Pureté variétale (électrophorèse)
barley_moisture: Humidité orge
barley_protein: Protéines orge
[captions]
supplier: Site de production | Malterie (site) | Fabricant
malt: Désignation produit | Qualité de malt | Nature du malt | Libellé
batch: N° lot | Lot fabrication | Référence lot | Lot n° / silo | N° de lot malterie
certificate: Bulletin n° | N° du bulletin | N° analyse
crop_year: Récolte orge | Campagne | Millésime récolte
variety: Variété(s) d'orge | Orge (variété) | Variété orge
produced_on: Date de touraillage | Fabriqué le | Date fabrication
analysed_on: Date de l'analyse | Date analyse | Analyses effectuées le
delivered_on: Date d'expédition | Expédié le | Date de départ
best_before: DDM (date de durabilité minimale) | À utiliser de préférence avant le
quantity: Poids livré | Quantité expédiée | Poids net (t)
order: Réf. commande client | Votre n° de commande | Commande client
customer: Client / brasserie | Client destinataire | Destinataire (client)
[heads]
label: Critère | Analyses | Paramètres | Critère analysé
result: Résultat | Résultats | Valeur obtenue | Lot
unit: Unité | Unités | Un.
method: Méthode | Méthode analytique | Norme
min: Mini | Minimum | min.
max: Maxi | Maximum | max.
spec: Cahier des charges | Spécification client | Norme
typical: Valeurs habituelles | Plage typique
previous: Livraison préc.
number: N° | Code
remark: Conformité | Conforme
[titles]
batch: Bulletin d'analyse de malt | Certificat d'analyses | Bulletin de conformité | Résultats d'analyse
specification: Fiche produit | Fiche technique malt
[sections]
physical: Physique | Grain
chemical: Malt | Analyses chimiques
wort: Moût | Moût de laboratoire
enzymes: Enzymes
nitrogen: Protéines
modification: Désagrégation | Friabilimètre
contaminants: Contaminants | Sécurité alimentaire
sieving: Calibrage
barley: Orge
malt: Malt
[basis]
dry: / sec | (MS) | sur matière sèche | , s/s | (s.s.)
asis: / brut | tel quel | (t.q.)
[unitbasis]
dry: % m.s. | % sur sec | % s.s
asis: % t.q. | % tel quel
[notes]
dry: Les extraits et protéines sont exprimés sur matière sèche. | Résultats exprimés sur sec sauf humidité.
[family]
EBC: Méthodes d'analyse EBC | Analyses réalisées selon l'Analytica EBC | Méthodes : EBC (brassin congrès)
ASBC: Méthodes d'analyse ASBC
[words]
clarity: clair | limpide | légèrement opalescent
odour: normale | franche
filtration: normale | bonne
nd: n.d. | non détecté | ND
[x]
dear: Madame, Monsieur,
letter: Veuillez trouver ci-dessous les résultats d'analyse de votre livraison.
regards: Cordialement, | Veuillez agréer nos salutations distinguées.
subject: Analyse de malt | Votre livraison de malt
date: Date | Date d'émission
page: Page {p}/{q}
sieve: Calibrage | Granulométrie
sievecols: Fraction ; %
uncert: Incertitude ± | U (k=2)
loq: LQ | Limite de quantification
reject: Limite de refus | Refus
contract: Valeur contractuelle | Contrat
ok: OK | conforme | oui
dryfoot: sur matière sèche | exprimé sur sec
asisfoot: tel quel
legend: Abréviations : | Légende :
code: Code
composite: Analyse de l'échantillon moyen des lots ci-dessus | Échantillon moyen de tous les lots
lots: Lots chargés ; Cellule ; Tonnes
goods: Bon de livraison ; Ligne ; Article ; Quantité ; Conditionnement ; Lot ; vrac ; sacs 25 kg
analysis: Analyse de la marchandise livrée | Valeurs analytiques du lot
sample: Échantillon n° ; Reçu le ; État de l'échantillon ; Prélevé par ; Scellé ; intact ; client
mail: De ; À ; Objet ; Envoyé
fax: FAX DE ; À ; PAGE
decl: Déclarations ; Produit non soumis à l'étiquetage OGM selon les règlements (CE) n° 1829/2003 et 1830/2003. ; Contient du gluten d'orge, exempt des 13 autres allergènes de l'annexe II du règlement (UE) n° 1169/2011. ; Résidus et contaminants conformes aux règlements (CE) n° 396/2005 et (UE) 2023/915.
auto: Document édité informatiquement, valable sans signature.
annex: Annexe : résidus et contaminants
summary: Conclusion : lot conforme au cahier des charges.
other: Cellule ; Immatriculation ; Transporteur ; Prélevé le ; Conteneur n° ; Ticket de pesée
cover: Pièce jointe : bulletin d'analyse ({n} pages).
"""

_NL = """
[labels]
moisture: Vochtgehalte mout bij levering | Vocht (oven) | Vocht mout | Watergehalte (droogstoof)
extract_fine_dry: Extract (fijn){b} | Extract fijn 0,2 mm{b} | Extract fijnmeel{b} | Extractgehalte, fijne maling{b}
extract_coarse_dry: Extract (grof){b} | Extract grof 1,0 mm{b} | Extractgehalte, grove maling{b}
extract_fine_as_is: Extract (fijn){b} | Extract fijnmeel{b}
extract_coarse_as_is: Extract (grof){b}
hwe_dry: Extract 0,7 mm, IoB{b} | Heetwaterextract (0,7 mm){b}
hwe_as_is: Extract 0,7 mm, IoB{b} | Heetwaterextract (0,7 mm){b}
fine_coarse_difference: Fijn/grof verschil | Verschil fijn/grof extract | Extractverschil F/G
colour: Kleur (wort) | Kleur laboratoriumwort | Kleur EBC | Wortkleur fotometrisch
boiled_colour: Kleur gekookt wort | Kookkleur wort | Kleur na 2 h koken
total_nitrogen: Totaal stikstof (N){b} | Stikstofgehalte{b} | Totale N{b}
total_protein: Ruw eiwit{b} | Totaal eiwit (N x 6,25){b} | Eiwitgehalte mout{b} | Mout eiwit totaal{b}
soluble_nitrogen: Oplosbare stikstof (wort){b} | Totaal oplosbare stikstof{b}
soluble_protein: Oplosbaar eiwit (wort){b} | Totaal oplosbaar eiwit{b}
ratio_kolbach: Kolbach index (KI) | Kolbachgetal (KI) | Kolbach, N opl./N tot.
ratio_snr: SNR (opl. N / totaal N)
fan: FAN (vrije aminostikstof) | Vrije amino-stikstof | Vrije α-aminostikstof FAN
friability: Friabiliteit (friabilimeter) | Brosheid (friabilimeter) | Friabilimeter, bros
homogeneity: Homogeniteit mout | Homogeniteit friabilimeter
glassy_grains: Friabilimeter, glazig | Glazige korrels (heel)
whole_grains: Friabilimeter, hele korrels | Hele korrels (WUG)
dp: Diastatische kracht (WK)~either | Diastatisch vermogen DV | Diastatische kracht mout
alpha_amylase: Alfa-amylase (DU) | α-amylase activiteit
beta_glucan: Bèta-glucaan wort | Beta-glucanen (wort) | β-glucaan in wort
viscosity: Viscositeit (wort) | Viscositeit wort 20 °C | Viscositeit bij 8,6 %
saccharification_time: Versuikering (jodium) | Versuikeringstijd 70 °C
filtration: Filtratie wort | Filtratieduur
turbidity: Troebelheid wort 90°
clarity: Helderheid (wort) | Uitzicht wort
odour: Geur beslag | Geur maisch
wort_ph: pH (wort) | pH laboratoriumwort | pH-waarde
final_attenuation: Schijnbare eindvergisting | Eindvergistingsgraad, schijnbaar | SVG (eind)
relative_extract_45: Hartong (45 °C) | VZ 45 (Hartong)
sieve_over_2_8: boven 2,8 mm | Zeving > 2,8 mm
sieve_2_5_to_2_8: 2,5 tot 2,8 mm | Zeving 2,5 - 2,8 mm
sieve_over_2_5: Zeving > 2,5 mm | Totaal > 2,5 mm
sieve_2_2_to_2_5: 2,2 tot 2,5 mm | Zeving 2,2 - 2,5 mm
sieve_under_2_2: Zeving < 2,2 mm | Doorval < 2,2 mm
thousand_corn_weight: Duizendkorrelgewicht (DKG) | 1000-korrelgewicht
hectolitre_weight: Hectolitergewicht HLG
foreign_matter: Vreemde bijmenging
broken_grains: Gebroken/halve korrels
dms_precursor: DMS-P (precursor) | DMS precursor (SMM)
deoxynivalenol: Mycotoxinen: DON
ochratoxin_a: Mycotoxinen: OTA
lead: Lood (Pb)
ndma: NDMA (nitrosamine)
half_glassy: Friabilimeter, halfglazig
barley_moisture: Gerst, vocht
barley_protein: Gerst, eiwit
[captions]
supplier: Mouterijlocatie | Fabrikant
malt: Moutbenaming | Productomschrijving | Mouttype
batch: Lot nr. | Batch/lot | Partij nr. | Lotnr./silo
certificate: Certificaat nummer | Analyse nr.
crop_year: Oogst gerst | Oogst jaar
variety: Ras gerst | Brouwgerstras
produced_on: Geproduceerd op | Productie datum
analysed_on: Datum van analyse | Analyse datum
delivered_on: Leveringsdatum | Laaddatum
best_before: THT datum | Houdbaarheidsdatum
quantity: Netto gewicht | Geleverde hoeveelheid
order: Uw bestelnummer | Order klant
customer: Klant/brouwerij | Bestemd voor
[heads]
label: Analyse | Kenmerk | Parameter
result: Resultaat | Analysewaarde | Gemeten
unit: Eenheid | Eenh.
method: Methode | Analyse methode
min: Min | min.
max: Max | max.
spec: Specificatie | Eis
typical: Gebruikelijk
number: Nr
remark: Voldoet
[titles]
batch: Analyse certificaat | Moutanalyse certificaat | Certificaat van analyse
specification: Productblad mout
[basis]
dry: , op ds | (op d.s.) | o.d.s. | (DS)
asis: , als zodanig | (als zodanig)
[unitbasis]
dry: % op d.s. | % DS
asis: % a.z.
[notes]
dry: Extract en eiwit op droge stof.
[family]
EBC: Analysemethoden: EBC | Methoden: Analytica-EBC
IoB: Analysemethoden: Institute of Brewing (IoB)
[words]
clarity: helder | blank
odour: normaal | zuiver
filtration: normaal | goed
nd: n.a. | niet aantoonbaar
[x]
dear: Geachte heer/mevrouw,
letter: Hieronder vindt u de analyse van de geleverde mout.
regards: Met vriendelijke groet,
subject: Moutanalyse
date: Datum
page: Pagina {p}/{q}
sieve: Sortering
sievecols: Fractie ; %
uncert: Meetonzekerheid ±
loq: Bepalingsgrens
reject: Afkeurgrens
contract: Contractwaarde
ok: OK | ja
dryfoot: op droge stof
asisfoot: als zodanig
legend: Afkortingen:
code: Code
composite: Analyse van het verzamelmonster van bovenstaande partijen
lots: Geladen partijen ; Silo ; Ton
goods: Leverbon ; Regel ; Artikel ; Aantal ; Verpakking ; Partij ; los ; zak 25 kg
analysis: Analyse van de geleverde goederen
sample: Monsternr. ; Ontvangen ; Toestand monster ; Bemonsterd door ; Zegel ; intact ; klant
mail: Van ; Aan ; Onderwerp ; Verzonden
fax: FAX VAN ; AAN ; PAG.
decl: Verklaringen ; Het product is niet genetisch gemodificeerd (Verordeningen (EG) nr. 1829/2003 en 1830/2003). ; Bevat gluten uit gerst; vrij van de overige 13 allergenen van bijlage II van Verordening (EU) nr. 1169/2011.
auto: Dit document is elektronisch opgesteld en zonder handtekening geldig.
annex: Bijlage: residuen en contaminanten
summary: Beoordeling: de partij voldoet.
other: Silo ; Kenteken ; Vervoerder ; Bemonsterd op ; Container nr.
cover: Bijlage: analysecertificaat ({n} pagina's).
"""

TEXTS = {"fr": _FR, "nl": _NL}
