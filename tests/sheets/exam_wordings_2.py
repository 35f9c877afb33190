# ruff: noqa: E501
"""French and Dutch wordings of the exam sheets; unread by whoever works on the reading of sheets."""

from __future__ import annotations

_FR = """
[labels]
moisture: Eau (105 °C, 3 h) | Humidité à l'étuve | Humid. | Perte à la dessiccation | Humidité (EBC 4.2) | Eau, teneur
extract_fine_dry: Extrait, mouture 0,2 mm{b} | Rendement fine mouture{b} | Extrait (farine fine){b} | Extr. fine{b} | Rendement en extrait fin{b} | Extrait, broyage fin{b}
extract_coarse_dry: Extrait, mouture 1,0 mm{b} | Rendement grosse mouture{b} | Extr. grosse{b} | Extrait, broyage grossier{b}
extract_fine_as_is: Rendement fine mouture{b} | Extr. fine{b} | Extrait, broyage fin{b}
extract_coarse_as_is: Rendement grosse mouture{b} | Extrait, broyage grossier{b}
fine_coarse_difference: Différence des moutures | Écart fine/grosse | Diff. F/G | Différence d'extrait (fine - grosse) | Écart d'extrait
colour: Couleur, moût non bouilli | Coul. moût | Couleur (430 nm) | Moût, couleur | Couleur spectrophotométrique
boiled_colour: Couleur, moût bouilli | Couleur à la cuisson | Couleur après 2 h d'ébullition
total_nitrogen: Azote, total (Dumas){b} | N tot.{b} | Azote Kjeldahl du malt{b} | Azote du malt{b}
total_protein: Protéines, totales{b} | Prot. tot.{b} | Matières azotées totales (N × 6,25){b} | MAT{b}~either | Protéine brute{b}
soluble_nitrogen: Azote, soluble{b} | N sol.{b} | Azote soluble dans le moût{b}
soluble_protein: Protéines, solubles{b} | Prot. sol.{b} | Matières azotées solubles{b}
ratio_kolbach: Kolbach (indice) | Ind. Kolbach | Rapport N soluble/N total (Kolbach) | Indice de solubilisation (Kolbach)
ratio_st: Protéines solubles/totales | Rapport sol./tot.
fan: Azote aminé, libre | N aminé libre | N α-aminé | FAN du moût | Azote aminé (ninhydrine)
friability: Friab. | Friabilité (friabilimètre, 8 min) | Malt friable | Essai de friabilité
homogeneity: Homog. | Homogénéité (friabilimètre) | Régularité (homogénéité)
glassy_grains: Grains, vitreux | Grains entièrement vitreux | Vitreux entiers
whole_grains: Entiers (friabilimètre) | Grains entiers non friables
dp: Pouvoir diast. | Diastasique, pouvoir | Pouv. diastasique | Activité diastasique
alpha_amylase: Amylase, alpha | α-Amyl. | Unités dextrinisantes (alpha-amylase)
beta_glucan: Glucanes, bêta- (moût) | β-Glucanes (FIA) | B-glucanes du moût | Bêtaglucane, moût
viscosity: Visc. moût | Viscosité (8,6 %) | Viscosité, chute de bille | Moût, viscosité
saccharification_time: Saccharif. | Normalité à l'iode après | Sacch. (iode)
filtration: Durée d'écoulement | Écoulement du moût | Filtration du moût (durée)
turbidity: Trouble (90°) | Turbidité du moût
clarity: Moût, limpidité | Moût, aspect | Clarté
odour: Odeur à l'empâtage | Odeur de maische | Arôme de la maische
wort_ph: Acidité du moût (pH) | pH (20 °C) | Moût, pH
final_attenuation: Atténuation finale apparente | Att. limite app. | Degré final d'atténuation (apparent)
relative_extract_45: Extrait relatif 45 °C | Hartong à 45 °C | VZ45
sieve_over_2_8: Tamis I (plus de 2,8 mm) | + 2,8 mm | Retenu sur 2,8 mm | ≥ 2,8 mm
sieve_2_5_to_2_8: Tamis II (2,8 à 2,5 mm) | 2,8/2,5 mm
sieve_over_2_5: Tamis I + II (plus de 2,5 mm) | Retenu sur 2,5 mm | ≥ 2,5 mm
sieve_2_2_to_2_5: Tamis III (2,5 à 2,2 mm) | 2,5/2,2 mm
sieve_under_2_2: Passant 2,2 mm | Petits grains < 2,2 mm | Sous 2,2 mm
thousand_corn_weight: Poids, mille grains | P.M.G. | Masse de 1000 grains
hectolitre_weight: Masse volumique (hl) | Poids hl | Poids spécifique (PS)
foreign_matter: Impuretés diverses | Graines étrangères | Matières, étrangères
broken_grains: Grains, cassés | Grains endommagés | Casse~either
dms_precursor: Précurseur (DMS) | DMS potentiel | S-méthylméthionine (en DMS)
deoxynivalenol: DON (mycotoxine) | Mycotoxine DON
zearalenone: ZEA | Mycotoxine ZEA
ochratoxin_a: Ochratoxine-A | Mycotoxine OTA
lead: Plomb, Pb
cadmium: Cadmium, Cd
arsenic: Arsenic, As
ndma: N-DMA | Nitrosamine NDMA
gushing: Giclage
half_glassy: Grains, demi-vitreux
coagulable_nitrogen: N coagulable
germinative_energy: Énergie de germination
barley_moisture: Humidité de l'orge
barley_protein: Protéines de l'orge
[captions]
supplier: Fournisseur (malterie)
malt: Désignation du malt | Produit livré | Article
batch: Code lot | Notre lot | Lot de maltage | Identification du lot
certificate: Attestation n° | Réf. analyse
crop_year: Récolte (année) | Année récolte | Orge de la récolte
variety: Variété(s) | Variété d'orge brassicole
produced_on: Maltage du | Sortie touraille le | Produit le
analysed_on: Analyse du | Date de labo | Contrôlé le
delivered_on: Date de chargement | Enlèvement du
best_before: À consommer avant | Durabilité minimale
quantity: Tonnage livré | Poids net livré | Quantité livrée
order: V/commande | N° cde
customer: Livré à
[heads]
label: Détermination de | Paramètre analysé
result: Trouvé | Valeur labo | Notre résultat | Obtenu
unit: Exprimé en | U.
method: Méthode n° | Mode opératoire
min: pas moins de | Seuil bas | Limite inf.
max: pas plus de | Seuil haut | Limite sup.
spec: Plage convenue | Exigences | Limites contrat
typical: Valeur courante | Habituel
previous: Livraison précédente
number: Ligne
remark: Conforme ? | Appréciation
[titles]
batch: Certificat de qualité malt | Relevé d'analyse du malt | Analyse du malt livré | Fiche laboratoire malt
specification: Exigences malt
[sections]
physical: Caractéristiques du grain
chemical: Analyse de base
wort: Brassin de laboratoire
enzymes: Pouvoir enzymatique
nitrogen: Bilan azoté
contaminants: Sécurité sanitaire
sieving: Fractions de tamisage
barley: Orge réceptionnée
malt: Malt fini
[basis]
dry: , M.S. | (sur M.S.) | sur malt sec | (mat. sèche)
asis: , sur malt brut | (brut) | , tel que reçu
[unitbasis]
dry: % M.S. | % s/s | % sur malt sec
asis: % sur brut
[notes]
dry: Extrait, azote et protéines sont donnés sur matière sèche.
[family]
EBC: Méthodologie : Analytica-EBC | Analyses selon EBC, brassin Congrès
ASBC: Méthodologie : ASBC
[words]
clarity: limpide | légèrement trouble
odour: maltée, franche | habituelle
filtration: bonne | rapide
nd: non trouvé | n.d.
[x]
carried: Report de la page 1 | Report
continued: suite page 2 | à suivre
mean: Moyenne | Moy.
lowest: Valeur basse | Plus faible
highest: Valeur haute | Plus élevé
own: Labo malterie | Laboratoire interne
other: Labo indépendant | Laboratoire externe
certified: Valeur certifiée | Valeur attestée
now: Cette livraison | Lot actuel
before: Livraison précédente | Dernière livraison
crop: Récolte {y} | Nouvelle récolte {y}
oldcrop: Moyenne récolte {y} | Moy. récolte {y}
target: Visé | Objectif
inunit: en {u} : | Exprimé en {u} | Unité : {u}
watermark: COPIE | ORIGINAL | CONFIDENTIEL
det: 1er essai ; 2e essai ; Moyenne
ok: OK | conforme | oui
intro: Nous avons examiné l'échantillon reçu et vous communiquons ce qui suit. | Le lot a été échantillonné au chargement et analysé dans notre laboratoire.
say: {l} : {v} trouvés. | Pour {l}, nous avons trouvé {v}. | {l} s'élève à {v}.
small: Autres valeurs : | Également déterminé :
note: Bon de livraison ; Bon n° ; Poids brut ; Tare ; Poids net ; Palettes ; Sacs de 25 kg ; Ticket de pesée ; N° de scellé ; Téléphone ; Télécopie ; N° TVA ; Total page ; Article ; Prix la tonne ; Montant
intake: Réception de l'orge ; Échantillon n° ; Calibrage sur 2,5 mm
"""

_NL = """
[labels]
moisture: Vocht (105 °C, 3 u) | Droogverlies | Vochtgeh. | Water, droogstoof | Vocht (EBC 4.2) | Watergehalte mout
extract_fine_dry: Extract, maling 0,2 mm{b} | Rendement fijn{b} | Extract (fijn gemalen){b} | Extr. fijn{b} | Fijnmeel-extract{b}
extract_coarse_dry: Extract, maling 1,0 mm{b} | Rendement grof{b} | Extract (grof gemalen){b} | Extr. grof{b}
extract_fine_as_is: Rendement fijn{b} | Extract (fijn gemalen){b} | Extr. fijn{b}
extract_coarse_as_is: Rendement grof{b} | Extr. grof{b}
hwe_dry: Extract, heet water, 0,7 mm{b} | HWE bij 0,7 mm{b}
hwe_as_is: Extract, heet water, 0,7 mm{b} | HWE bij 0,7 mm{b}
fine_coarse_difference: Verschil maling fijn/grof | F-G verschil | Extractverschil (fijn - grof) | Verschil extract F/G
colour: Kleur, ongekookt wort | Kleur (430 nm) | Wort, kleur | Kleur fotometrisch
boiled_colour: Kleur, gekookt wort | Wortkleur na 2 uur koken | Kleur na het koken
total_nitrogen: Stikstof, totaal{b} | Tot. N{b} | N-gehalte mout{b} | Stikstof (Dumas){b}
total_protein: Eiwit, totaal{b} | Ruw eiwit (N × 6,25){b} | Tot. eiwit{b} | Mouteiwit{b}
soluble_nitrogen: Stikstof, oplosbaar{b} | Opl. N{b} | Oplosbare N in wort{b}
soluble_protein: Eiwit, oplosbaar{b} | Opl. eiwit{b} | Worteiwit{b}
ratio_kolbach: Kolbach (index) | Eiwitoplossingsgraad Kolbach | Kolbach-cijfer
ratio_snr: Stikstofverhouding opl./totaal | SNR (65 °C)
fan: Aminostikstof, vrij | Vrije amino-N (ninhydrine) | FAN in wort | α-aminostikstof vrij
friability: Friab. | Brosheid mout | Friabilimeterwaarde | Murwheid
homogeneity: Homog. | Homogeniteit (friabilimeter) | Egaliteit (homogeniteit)
glassy_grains: Korrels, glazig | Geheel glazige korrels | Volglazig
whole_grains: Hele korrels (friabilimeter) | Korrels, heel
dp: Vermogen, diastatisch | Diast. kracht | Diastase
alpha_amylase: Amylase, alfa- | α-Amyl. | Dextrine-eenheden (α-amylase)
beta_glucan: Glucaan, bèta- (wort) | ß-glucaan | β-Glucanen wort (FIA)
viscosity: Visc. wort | Viscositeit, kogelval | Wort, viscositeit
saccharification_time: Versuikerd na | Jodium-normaal na | Versuikeringsduur
filtration: Wortafloop | Aflooptijd | Filtreertijd
turbidity: Wort, troebelheid | Troebelheid (90°)
clarity: Wort, helderheid | Aspect wort
odour: Geur bij het maischen | Reuk
wort_ph: pH (20 °C) | pH, wort | Zuurgraad pH
final_attenuation: Eindvergisting, schijnbare | Vergistingsgraad, schijnbare eind- | SVG eind (schijnbaar)
relative_extract_45: Extract, relatief, 45 °C | Hartong bij 45 °C | VZ45
sieve_over_2_8: Zeef I (boven 2,8 mm) | + 2,8 mm | Op zeef 2,8 mm | ≥ 2,8 mm
sieve_2_5_to_2_8: Zeef II (2,8 tot 2,5 mm) | 2,8/2,5 mm
sieve_over_2_5: Zeef I + II (boven 2,5 mm) | Volgerst > 2,5 mm | ≥ 2,5 mm
sieve_2_2_to_2_5: Zeef III (2,5 tot 2,2 mm) | 2,5/2,2 mm
sieve_under_2_2: Doorval 2,2 mm | Beneden 2,2 mm | Afval < 2,2 mm
thousand_corn_weight: Gewicht 1000 korrels | D.K.G. | Duizendkorrelmassa
hectolitre_weight: Stortgewicht (hl) | hl-massa | Hectoliterg.
foreign_matter: Bijmengingen | Vreemd materiaal
broken_grains: Korrels, gebroken | Halve en gebroken korrels | Breuk~either
dms_precursor: Voorloper DMS | DMS-voorl.
deoxynivalenol: Mycotoxine DON | DON (vomitoxine)
ochratoxin_a: Mycotoxine OTA | Ochratoxine-A
lead: Lood, Pb
ndma: N-DMA | Nitrosamine NDMA
half_glassy: Korrels, halfglazig
barley_moisture: Vocht gerst
barley_protein: Eiwit gerst
[captions]
supplier: Geleverd door | Mouter
malt: Soort mout
batch: Lotcode | Ons lot | Chargecode | Productielot
certificate: Analysebewijs nr. | Rapportnr.
crop_year: Gerstoogst | Oogst (jaar)
variety: Gerstras(sen)
produced_on: Geëest op | Mouterijdatum | Productie d.d.
analysed_on: Analyse d.d. | Onderzocht op | Labdatum
delivered_on: Verzonden op | Levering d.d.
best_before: Houdbaar tot en met
quantity: Netto geleverd | Hoeveelheid geleverd
order: Bestelnr.
customer: Geleverd aan | Ontvanger
[heads]
label: Onderzocht op | Bepaald kenmerk | Analyse-item
result: Labwaarde | Bevinding | Bepaald
unit: Uitgedrukt in | Maat
method: Methode nr. | Werkwijze
min: niet onder | Minimaal
max: niet boven | Maximaal
spec: Afgesproken grenzen | Norm van/tot
typical: Doorgaans | Ervaringswaarde
previous: Vorige levering | Lot ervoor
number: Regel
remark: Oordeel
[titles]
batch: Moutattest | Analyse van de geleverde mout | Laboratoriumblad mout
specification: Moutspecificatie
[sections]
physical: Korreleigenschappen
chemical: Basisanalyse
wort: Laboratoriumbeslag
enzymes: Enzymkracht
nitrogen: Stikstofbalans
modification: Korreloplossing
contaminants: Voedselveiligheid
sieving: Zeeffracties
barley: Ontvangen gerst
malt: Afgewerkte mout
[basis]
dry: , d.s. | (droge stof) | op droge mout
asis: , op mout als zodanig | (ongedroogd) | , luchtdroge mout
[unitbasis]
dry: % op ds | % (d.s.)
asis: % luchtdr. | % a.z. mout
[notes]
dry: Extract, stikstof en eiwit zijn opgegeven op droge stof.
[family]
EBC: Methodiek: Analytica-EBC | Volgens EBC, Congresbeslag
IoB: Methodiek: Institute of Brewing (IoB)
[words]
clarity: blank | licht opaal
odour: moutig | zuiver
filtration: goed | vlot
nd: niet gevonden | n.a.
[x]
carried: Transport van pagina 1 | Transport
continued: vervolg op pagina 2 | zie volgende pagina
mean: Gemiddeld | Gem.
lowest: Laagste | Laagste waarde
highest: Hoogste | Hoogste waarde
own: Eigen lab | Lab mouterij
other: Extern lab | Onafhankelijk lab
certified: Gecertificeerde waarde
now: Deze levering | Huidige partij
before: Vorige levering | Laatste levering
crop: Oogst {y} | Nieuwe oogst {y}
oldcrop: Gemiddelde oogst {y} | Gem. oogst {y}
target: Streefwaarde | Doel
inunit: in {u}: | Uitgedrukt in {u} | Eenheid: {u}
watermark: KOPIE | ORIGINEEL | VERTROUWELIJK
det: 1e bep. ; 2e bep. ; Gemiddelde
ok: OK | akkoord | voldoet
intro: Wij hebben het toegezonden monster onderzocht en berichten als volgt. | De partij is bij het laden bemonsterd en in ons laboratorium onderzocht.
say: {l} bedraagt {v}. | Voor {l} vonden wij {v}. | {l} komt uit op {v}.
small: Overige waarden: | Verder bepaald:
note: Vrachtbrief ; Vrachtbrief nr. ; Bruto ; Tarra ; Nettogewicht ; Pallets ; Zakken van 25 kg ; Weegbon ; Zegelnr. ; Telefoon ; Fax ; Btw-nr. ; Paginatotaal ; Regel ; Prijs per ton ; Bedrag
intake: Gerstontvangst ; Monsternr. ; Sortering boven 2,5 mm
"""

TEXTS = {"fr": _FR, "nl": _NL}
