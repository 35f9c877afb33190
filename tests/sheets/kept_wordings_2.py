"""Wordings that are kept aside, in Dutch, Spanish and Czech."""

from __future__ import annotations

from tests.sheets.kept_wordings_3 import REST

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

MORE = {"nl": _NL, "es": _ES, "cs": _CS, **REST}
