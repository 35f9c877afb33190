"""Slovak wordings of malt sheets."""

TEXT = """
[labels]
moisture: Vlhkosť | Obsah vody
extract_fine_dry: Extrakt v sušine~dry | Extrakt jemné mletie{b}
extract_coarse_dry: Extrakt hrubé mletie{b}
extract_fine_as_is: Extrakt jemné mletie{b}
fine_coarse_difference: Rozdiel extraktov | Rozdiel extraktov jemný-hrubý
colour: Farba | Farba sladiny
boiled_colour: Farba po povarení
total_nitrogen: Celkový dusík{b}
total_protein: Bielkoviny{b} | Bielkoviny celkom{b}
soluble_nitrogen: Rozpustný dusík{b}
soluble_protein: Rozpustné bielkoviny{b}
ratio_kolbach: Kolbachovo číslo
fan: Voľný aminodusík | FAN
friability: Friabilita
homogeneity: Homogenita
glassy_grains: Sklovité zrná
dp: Diastatická mohutnosť
alpha_amylase: α-amyláza
beta_glucan: β-glukány | Beta-glukány v sladine
viscosity: Viskozita | Viskozita sladiny
saccharification_time: Doba scukrenia | Scukrenie
filtration: Doba stekania
clarity: Čírosť sladiny
wort_ph: pH sladiny | pH
final_attenuation: Dosiahnuteľný stupeň prekvasenia (zdanlivý)
relative_extract_45: Relatívny extrakt pri 45 °C
sieve_over_2_8: > 2,8 mm
sieve_2_5_to_2_8: 2,5 - 2,8 mm
sieve_over_2_5: > 2,5 mm | Prepad nad 2,5 mm
sieve_2_2_to_2_5: 2,2 - 2,5 mm
sieve_under_2_2: < 2,2 mm | Prepad pod 2,2 mm
thousand_corn_weight: Hmotnosť tisíc zŕn
hectolitre_weight: Objemová hmotnosť
foreign_matter: Nečistoty
dms_precursor: DMS-P
ndma: NDMA
deoxynivalenol: DON
ochratoxin_a: Ochratoxín A
gushing: Gushing
barley_moisture: Vlhkosť
barley_protein: Bielkoviny
germinative_energy: Energia klíčenia
varietal_purity: Odrodová čistota
[captions]
supplier: Dodávateľ | Sladovňa
malt: Druh sladu | Výrobok
batch: Šarža | Číslo šarže
certificate: Certifikát č.
crop_year: Zber | Rok zberu
variety: Odroda
produced_on: Dátum výroby
analysed_on: Dátum analýzy
delivered_on: Dátum dodania
best_before: Minimálna trvanlivosť do
quantity: Množstvo
order: Objednávka č.
customer: Odberateľ
[heads]
label: Parameter | Ukazovateľ
result: Výsledok | Hodnota
unit: Jednotka
method: Metóda
min: Min.
max: Max.
spec: Špecifikácia
typical: Typická hodnota
previous: Predchádzajúca šarža
number: Č.
remark: Poznámka
[titles]
batch: Rozbor sladu | Certifikát kvality
specification: Špecifikácia výrobku
[sections]
physical: Mechanický rozbor
chemical: Chemický rozbor
wort: Sladina
enzymes: Enzýmy
nitrogen: Dusíkaté látky
modification: Rozlúštenie
contaminants: Kontaminanty
sieving: Triedenie
barley: Jačmeň
malt: Slad
[basis]
dry: v sušine | (v suš.)
asis: v pôvodnom slade
[unitbasis]
dry: % v sušine
asis: % v pôv. slade
[notes]
dry: Extrakt a bielkoviny sú uvedené v sušine.
[family]
EBC: Metódy EBC | Rozbor podľa Analytica-EBC
[words]
clarity: číra | slabo opalizujúca
odour: normálna
filtration: normálna
nd: n.d.
[malts]
PIL: Plzenský slad
XP: Extra svetlý slad
ALE: Slad Pale Ale
VIE: Viedenský slad
MUN: Mníchovský slad
CRY: Karamelový slad
ROA: Pražený slad
WHE: Pšeničný slad
RYE: Ražný slad
OAT: Ovsený slad
DIS: Liehovarský slad
"""
