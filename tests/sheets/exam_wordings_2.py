# ruff: noqa: E501
"""French, Dutch and Spanish wordings of the exam sheets; unread by whoever works on the reading of sheets."""

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

_ES = """
[labels]
moisture: Humedad (105 °C, 3 h) | Hum. | Pérdida por secado | Agua, contenido de | Humedad (EBC 4.2) | Humedad en estufa
extract_fine_dry: Extracto, molienda 0,2 mm{b} | Rendimiento fino{b} | Extracto (harina fina){b} | Extr. fino{b} | Rendimiento en extracto, fina{b}
extract_coarse_dry: Extracto, molienda 1,0 mm{b} | Rendimiento grueso{b} | Extr. grueso{b}
extract_fine_as_is: Rendimiento fino{b} | Extr. fino{b}
extract_coarse_as_is: Rendimiento grueso{b} | Extr. grueso{b}
fine_coarse_difference: Diferencia de moliendas | Dif. F-G | Diferencia extracto (fina - gruesa) | Diferencia harina/grano grueso
colour: Color, mosto sin hervir | Color (430 nm) | Mosto, color | Color espectrofotométrico
boiled_colour: Color, mosto hervido | Color de cocción | Color tras 2 h de hervor
total_nitrogen: Nitrógeno, total{b} | N tot.{b} | Nitrógeno (Dumas){b} | Nitrógeno de la malta{b}
total_protein: Proteínas, totales{b} | Prot. tot.{b} | Proteína (6,25 × N){b} | Proteína cruda{b}
soluble_nitrogen: Nitrógeno, soluble{b} | N sol.{b} | Nitrógeno soluble del mosto{b}
soluble_protein: Proteínas, solubles{b} | Prot. sol.{b} | Proteína del mosto{b}
ratio_kolbach: Kolbach (índice) | Índ. Kolbach | Grado de solubilización (Kolbach)
ratio_st: Proteína sol./tot. | Relación soluble/total
fan: Nitrógeno amínico, libre | N amino libre | FAN del mosto | N α-amínico
friability: Friab. | Friabilidad (friabilímetro, 8 min) | Prueba de friabilidad
homogeneity: Homog. | Homogeneidad (friabilímetro) | Uniformidad (homogeneidad)
glassy_grains: Granos, vítreos | Granos vítreos enteros | Vítreos~either
whole_grains: Enteros (friabilímetro) | Granos, enteros
pug: Parcialmente modificados | Granos parc. modificados (PUG)
dp: Poder, diastásico | Pod. diastásico | Diastasa | Actividad diastásica
alpha_amylase: Amilasa, alfa- | α-Amil. | Unidades dextrinizantes (alfa-amilasa)
beta_glucan: Glucanos, beta- (mosto) | B-glucanos | β-Glucano en mosto (FIA)
viscosity: Visc. del mosto | Viscosidad, caída de bola | Viscosidad (mosto 8,6 %)
saccharification_time: Sacarif. | Tiempo de conversión (yodo) | Normalidad al yodo en
filtration: Escurrido del mosto | Tiempo de escurrido | Filtración, tiempo
turbidity: Turbiedad del mosto | Turbidez (90°)
clarity: Mosto, aspecto | Limpidez del mosto
odour: Olor de maceración | Aroma del macerado
wort_ph: Acidez del mosto (pH) | pH (20 °C) | Mosto, pH
final_attenuation: Atenuación final aparente | At. límite ap. | Grado final de atenuación (aparente)
relative_extract_45: Extracto relativo 45 °C | VZ45
sieve_over_2_8: Tamiz I (sobre 2,8 mm) | + 2,8 mm | Retenido en 2,8 mm | ≥ 2,8 mm
sieve_2_5_to_2_8: Tamiz II (2,8 a 2,5 mm) | 2,8/2,5 mm
sieve_over_2_5: Tamiz I + II (sobre 2,5 mm) | Retenido en 2,5 mm | ≥ 2,5 mm
sieve_2_2_to_2_5: Tamiz III (2,5 a 2,2 mm) | 2,5/2,2 mm
sieve_under_2_2: Pasa 2,2 mm | Fondo < 2,2 mm | Bajo 2,2 mm
thousand_corn_weight: Peso, mil granos | P.M.G. | Masa de 1000 granos
hectolitre_weight: Peso hl | Densidad aparente (hl)
foreign_matter: Materias, extrañas | Semillas extrañas
broken_grains: Granos, rotos | Granos dañados | Partidos~either
dms_precursor: Precursor (DMS) | DMS potencial
deoxynivalenol: Micotoxina DON | DON (vomitoxina)
ochratoxin_a: Micotoxina OTA | Ocratoxina-A
lead: Plomo, Pb
arsenic: Arsénico, As
cadmium: Cadmio, Cd
ndma: N-DMA | Nitrosamina NDMA
half_glassy: Granos, semivítreos
barley_moisture: Humedad de la cebada
barley_protein: Proteína de la cebada
[captions]
supplier: Suministrado por | Malteador
malt: Variedad de malta | Artículo | Denominación
batch: Nuestro lote | Identificación de lote | Lote de malteo
certificate: Boletín nº | Ref. análisis
crop_year: Cosecha (año) | Cebada de cosecha
variety: Variedad(es) | Variedad cervecera
produced_on: Malteado el | Salida de tostador | Fabricado el
analysed_on: Análisis del | Fecha laboratorio | Ensayado el
delivered_on: Despachado el | Fecha de carga
best_before: Consumo preferente antes de | Cad.
quantity: Neto entregado | Cantidad entregada | Tonelaje
order: S/pedido | Nº pedido
customer: Entregado a
[heads]
label: Determinación de | Parámetro analizado | Característica medida
result: Hallado | Valor lab. | Nuestro resultado
unit: Expresado en | Ud. | Medida en
method: Método nº | Procedimiento
min: no menor de | Lím. inf.
max: no mayor de | Lím. sup.
spec: Límites pactados | Exigencia
typical: Valor corriente | Habitual
previous: Entrega anterior
number: Renglón
remark: Dictamen
[titles]
batch: Certificado de calidad malta | Análisis de la malta entregada | Ficha de laboratorio malta
specification: Exigencias de malta
[sections]
physical: Características del grano
chemical: Análisis básico
wort: Maceración de laboratorio
enzymes: Poder enzimático
nitrogen: Balance nitrogenado
modification: Desagregación
contaminants: Inocuidad
sieving: Fracciones de tamiz
barley: Cebada recibida
malt: Malta terminada
[basis]
dry: , M.S. | (sobre M.S.) | sobre malta seca | (mat. seca)
asis: , sobre malta húmeda | (tal cual recibida) | , sin secar
[unitbasis]
dry: % M.S. | % s/m.s. | % sobre seco
asis: % húmedo
[notes]
dry: Extracto, nitrógeno y proteína se dan sobre materia seca.
[family]
EBC: Metodología: Analytica-EBC | Según EBC, maceración Congreso
ASBC: Metodología: ASBC
[words]
clarity: límpido | algo turbio
odour: a malta, limpio | habitual
filtration: buena | rápida
nd: no encontrado | n.d.
[x]
carried: Suma y sigue de la página 1 | Viene de la página 1
continued: sigue en la página 2 | continúa
mean: Media | Promedio
lowest: Valor mínimo del mes | Más bajo
highest: Valor máximo del mes | Más alto
own: Lab. maltería | Laboratorio propio
other: Lab. independiente | Laboratorio externo
certified: Valor certificado
now: Esta entrega | Lote actual
before: Entrega anterior | Última entrega
crop: Cosecha {y} | Nueva cosecha {y}
oldcrop: Promedio cosecha {y} | Media cosecha {y}
target: Objetivo | Meta
inunit: en {u}: | Expresado en {u} | Unidad: {u}
watermark: COPIA | ORIGINAL | CONFIDENCIAL
det: 1ª det. ; 2ª det. ; Media
ok: OK | cumple | conforme
intro: Hemos examinado la muestra recibida e informamos lo siguiente. | El lote se muestreó en la carga y se analizó en nuestro laboratorio.
say: {l} alcanza {v}. | Para {l} hallamos {v}. | {l} se sitúa en {v}.
small: Otros valores: | También determinado:
note: Albarán ; Albarán nº ; Peso bruto ; Tara ; Peso neto ; Palés ; Sacos de 25 kg ; Ticket de báscula ; Precinto nº ; Teléfono ; Fax ; NIF-IVA ; Total página ; Línea ; Precio por tonelada ; Importe
intake: Recepción de cebada ; Muestra nº ; Calibre sobre 2,5 mm
"""

TEXTS = {"fr": _FR, "nl": _NL, "es": _ES}
