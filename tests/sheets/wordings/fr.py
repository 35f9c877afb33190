# ruff: noqa: E501
"""French wordings of malt sheets."""

TEXT = """
[labels]
moisture: Humidité | Teneur en eau | Humidité du malt | Taux d'humidité
extract_fine_dry: Extrait{b}~either | Extrait mouture fine{b} | Extrait fin{b} | Extrait{b} (mouture fine) | Extrait 0,2 mm{b}
extract_coarse_dry: Extrait mouture grossière{b} | Extrait grossier{b} | Extrait gros{b}
extract_fine_as_is: Extrait mouture fine{b} | Extrait fin{b}
extract_coarse_as_is: Extrait mouture grossière{b}
hwe_dry: Extrait à l'eau chaude 0,7 mm{b}
hwe_as_is: Extrait à l'eau chaude 0,7 mm{b}
fine_coarse_difference: Différence fin-gros | Écart F-G | Différence d'extrait fine/grossière | Différence mouture fine/grossière
colour: Couleur | Couleur du moût | Coloration du moût | Couleur du malt
boiled_colour: Couleur après ébullition | Couleur du moût bouilli
total_nitrogen: Azote total{b} | Azote total du malt{b} | N total{b}
total_protein: Protéines totales{b} | Matières protéiques{b} | Protéines{b} (N x 6,25) | Protéines du malt{b}
soluble_nitrogen: Azote soluble{b} | Azote soluble total{b} | N soluble{b}
soluble_protein: Protéines solubles{b} | Protéines solubles du moût{b}
ratio_kolbach: Indice de Kolbach | Indice Kolbach | Kolbach | Rapport Kolbach
ratio_snr: Rapport azote soluble / azote total
ratio_st: Rapport S/T | S/T | Indice S/T
fan: Azote aminé libre | FAN | Azote alpha-aminé libre (FAN) | Azote aminé libre (FAN)
friability: Friabilité | Friabilité du malt | Friabilimètre
homogeneity: Homogénéité | Homogénéité du malt
pug: Grains partiellement désagrégés~either | Grains mi-vitreux (PUG)
whole_grains: Grains entiers | Grains entiers (friabilimètre)
glassy_grains: Grains vitreux | Vitrosité
dp: Pouvoir diastasique | Pouvoir diastasique (PD) | PD
alpha_amylase: Alpha-amylase | α-amylase | Activité alpha-amylase
beta_glucan: Bêta-glucanes | β-glucanes du moût | Bêta-glucanes dans le moût
viscosity: Viscosité | Viscosité du moût | Viscosité à 20 °C
saccharification_time: Saccharification | Durée de saccharification | Temps de saccharification
filtration: Filtration | Durée de filtration | Vitesse de filtration
turbidity: Turbidité | Trouble du moût
clarity: Limpidité | Aspect du moût | Limpidité du moût
odour: Odeur du brassin | Odeur
wort_ph: pH du moût | pH | pH moût
final_attenuation: Atténuation limite apparente | Atténuation limite (apparente)
relative_extract_45: Hartong VZ 45 °C | VZ 45 °C | Extrait relatif à 45 °C
sieve_over_2_8: > 2,8 mm | Calibrage > 2,8 mm | Refus 2,8 mm
sieve_2_5_to_2_8: 2,5 - 2,8 mm | Calibrage 2,5 à 2,8 mm
sieve_over_2_5: > 2,5 mm | Calibrage > 2,5 mm
sieve_2_2_to_2_5: 2,2 - 2,5 mm | Calibrage 2,2 à 2,5 mm
sieve_under_2_2: < 2,2 mm | Calibrage < 2,2 mm | Orgettes < 2,2 mm
sieve_7_64: Refus 7/64
sieve_6_64: Refus 6/64
sieve_5_64: Refus 5/64
sieve_5_64_through: Passant 5/64
thousand_corn_weight: Poids de mille grains | PMG
hectolitre_weight: Poids à l'hectolitre | Poids hectolitre
bushel_weight: Poids au boisseau
foreign_matter: Impuretés | Matières étrangères
broken_grains: Grains cassés | Grains brisés
acrospire_length: Longueur moyenne de plumule
lipoxygenase: Activité LOX
dms_precursor: Précurseur du DMS | DMS-P
sulphur_dioxide: Dioxyde de soufre | SO2
arsenic: Arsenic
lead: Plomb
cadmium: Cadmium
ndma: NDMA | Nitrosamines (NDMA)
deoxynivalenol: Déoxynivalénol | DON | Déoxynivalénol (DON)
zearalenone: Zéaralénone
ochratoxin_a: Ochratoxine A | OTA
aflatoxin_b1: Aflatoxine B1
cold_water_extract: Extrait à froid
beta_amylase: Bêta-amylase
gushing: Gushing (giclage)
t2_ht2: Toxines T-2 + HT-2
fumonisins: Fumonisines
half_glassy: Grains demi-vitreux
real_attenuation: Atténuation réelle
wort_extract: Extrait du moût (°P)
coagulable_nitrogen: Azote coagulable
varietal_purity: Pureté variétale
germinative_energy: Énergie germinative
barley_moisture: Humidité
barley_protein: Protéines
[captions]
supplier: Fournisseur | Malterie | Producteur
malt: Type de malt | Produit | Malt | Désignation
batch: Lot | N° de lot | Numéro de lot | Lot n°
certificate: N° de certificat | Certificat n° | Rapport n°
crop_year: Récolte | Année de récolte
variety: Variété | Variété d'orge | Variétés
produced_on: Date de production | Date de fabrication
analysed_on: Date d'analyse | Analysé le
delivered_on: Date de livraison | Livré le
best_before: DDM | À consommer de préférence avant | Date de durabilité
quantity: Quantité | Poids net | Tonnage
order: N° de commande | Commande n° | Votre commande
customer: Client | Destinataire
[heads]
label: Paramètre | Analyse | Détermination | Caractéristique
result: Résultat | Valeur | Résultats | Valeur mesurée
unit: Unité | Unités
method: Méthode | Méthode d'analyse | Référence
min: Min | Min. | Minimum
max: Max | Max. | Maximum
spec: Spécification | Spécifications | Limites
typical: Valeur type | Valeur typique
previous: Lot précédent | Récolte précédente
number: N°
remark: Remarque
[titles]
batch: Bulletin d'analyse | Certificat d'analyse | BULLETIN D'ANALYSE | Analyse de malt
specification: Fiche technique | Spécification produit
[sections]
physical: Analyse physique | Caractéristiques physiques
chemical: Analyse chimique | Analyse du malt
wort: Analyse du moût | Moût de laboratoire
enzymes: Enzymes | Activité enzymatique
nitrogen: Azote | Matières azotées
modification: Désagrégation | Modification
contaminants: Contaminants | Résidus
sieving: Calibrage | Granulométrie
barley: Orge
malt: Malt
[basis]
dry: sur sec | (sur sec) | s.s. | sur matière sèche
asis: tel quel | (tel quel) | sur brut
[unitbasis]
dry: % s.s. | % sur sec | % MS
asis: % tel quel | % brut
[notes]
dry: Extraits et protéines exprimés sur matière sèche.
[family]
EBC: Méthodes EBC | Analyses selon Analytica-EBC | Méthodes d'analyse : EBC
ASBC: Méthodes ASBC | Analyses selon les méthodes ASBC
[words]
clarity: limpide | clair | légèrement opalescent
odour: normale | franche
filtration: normale | rapide
nd: n.d. | non détecté
[malts]
PIL: Malt Pilsen | Malt Pils
XP: Malt extra pâle
ALE: Malt Pale Ale
VIE: Malt Vienna
MUN: Malt Munich
CRY: Malt caramel | Malt cristal
ROA: Malt chocolat | Malt torréfié
WHE: Malt de blé | Malt de froment
RYE: Malt de seigle
OAT: Malt d'avoine
DIS: Malt de distillerie
[children]
extract: Extrait
extract_fine_dry: mouture fine{b} | fin{b}
extract_coarse_dry: mouture grossière{b} | gros{b}
extract_fine_as_is: mouture fine{b} | fin{b}
fine_coarse_difference: différence fin-gros | écart
nitrogen: Azote
total_nitrogen: total{b}
soluble_nitrogen: soluble{b}
protein: Protéines
total_protein: totales{b}
soluble_protein: solubles{b}
colour: Couleur
wort_colour: du moût
boiled_colour: après ébullition
sieving: Calibrage
"""
