# ruff: noqa: E501
"""Czech wordings of malt sheets."""

TEXT = """
[labels]
moisture: Vlhkost | Obsah vody | Vlhkost sladu | Voda
extract_fine_dry: Extrakt{b}~either | Extrakt v sušině sladu~dry | Extrakt jemné mletí{b} | Extrakt v sušině (jemný šrot)~dry | Extrakt, jemné mletí{b}
extract_coarse_dry: Extrakt hrubé mletí{b} | Extrakt hrubý šrot{b}
extract_fine_as_is: Extrakt jemné mletí{b} | Extrakt, jemný šrot{b}
extract_coarse_as_is: Extrakt hrubé mletí{b}
fine_coarse_difference: Rozdíl extraktů | Rozdíl extraktů jemný-hrubý | Diference extraktů moučka/šrot
colour: Barva | Barva sladiny | Barva kongresní sladiny
boiled_colour: Barva po povaření | Barva povařené sladiny
total_nitrogen: Celkový dusík{b} | Dusík celkový{b}
total_protein: Bílkoviny{b} | Dusíkaté látky{b} | Bílkoviny celkem{b} | Obsah bílkovin{b}
soluble_nitrogen: Rozpustný dusík{b} | Dusík rozpustný{b}
soluble_protein: Rozpustné bílkoviny{b} | Bílkoviny rozpustné{b}
ratio_kolbach: Kolbachovo číslo | Kolbachův index | Kolbach
fan: Volný aminodusík | Volný aminodusík (FAN) | FAN
friability: Friabilita | Křehkost (friabilimetr) | Friabilita sladu
homogeneity: Homogenita | Homogenita (friabilimetr)
pug: Částečně sklovitá zrna~either
whole_grains: Celá zrna
glassy_grains: Sklovitá zrna | Sklovitost | Zcela sklovitá zrna
dp: Diastatická mohutnost | Diastatická síla | DM (diastatická mohutnost)
alpha_amylase: α-amylasa | Alfa-amylasa | Aktivita α-amylasy
beta_glucan: β-glukany | Beta-glukany ve sladině | β-glukany ve sladině
viscosity: Viskozita | Viskozita sladiny | Viskozita (8,6 %)
saccharification_time: Doba zcukření | Zcukření
filtration: Doba stékání | Stékání sladiny | Filtrace
turbidity: Zákal | Zákal sladiny
clarity: Čirost | Čirost sladiny | Vzhled sladiny
odour: Vůně rmutu | Vůně
wort_ph: pH sladiny | pH
final_attenuation: Dosažitelný stupeň prokvašení (zdánlivý) | Dosažitelné prokvašení, zdánlivé
relative_extract_45: Relativní extrakt při 45 °C | RE 45 °C | VZ 45 °C
sieve_over_2_8: > 2,8 mm | Síto > 2,8 mm
sieve_2_5_to_2_8: 2,5 - 2,8 mm | Síto 2,5-2,8 mm
sieve_over_2_5: > 2,5 mm | Přepad na sítě 2,5 mm | Podíl > 2,5 mm
sieve_2_2_to_2_5: 2,2 - 2,5 mm | Síto 2,2-2,5 mm
sieve_under_2_2: < 2,2 mm | Propad sítem 2,2 mm | Propad < 2,2 mm
thousand_corn_weight: Hmotnost tisíce zrn | HTZ
hectolitre_weight: Objemová hmotnost | Hektolitrová hmotnost
foreign_matter: Nečistoty | Příměsi
broken_grains: Zlomky zrn | Poškozená zrna (zlomky)
dms_precursor: Prekurzor DMS | DMS-P
lead: Olovo
cadmium: Kadmium
arsenic: Arsen
ndma: NDMA | Nitrosaminy (NDMA)
deoxynivalenol: Deoxynivalenol | DON
zearalenone: Zearalenon
ochratoxin_a: Ochratoxin A
aflatoxin_b1: Aflatoxin B1
beta_amylase: β-amylasa
gushing: Gushing (přepěňování)
t2_ht2: T-2 a HT-2 toxiny
half_glassy: Polosklovitá zrna
real_attenuation: Skutečné prokvašení
wort_extract: Extrakt sladiny (°P)
varietal_purity: Odrůdová čistota
germinative_energy: Klíčivá energie
barley_moisture: Vlhkost
barley_protein: Bílkoviny
[captions]
supplier: Dodavatel | Sladovna | Výrobce
malt: Druh sladu | Výrobek | Typ sladu
batch: Šarže | Číslo šarže | Šarže č. | Partie
certificate: Certifikát č. | Číslo certifikátu | Protokol č.
crop_year: Sklizeň | Rok sklizně | Ročník sklizně
variety: Odrůda | Odrůda ječmene
produced_on: Datum výroby | Vyrobeno
analysed_on: Datum analýzy | Datum rozboru
delivered_on: Datum dodání | Datum expedice
best_before: Minimální trvanlivost do | Spotřebujte do
quantity: Množství | Hmotnost netto
order: Objednávka č. | Číslo objednávky
customer: Odběratel | Zákazník
[heads]
label: Parametr | Ukazatel | Znak | Stanovení
result: Výsledek | Hodnota | Naměřená hodnota
unit: Jednotka | Jedn.
method: Metoda | Metodika
min: Min. | Minimum | min
max: Max. | Maximum | max
spec: Specifikace | Požadavek | Limit
typical: Typická hodnota | Obvyklá hodnota
previous: Minulá šarže | Loňská sklizeň
number: Č.
remark: Poznámka
[titles]
batch: Rozbor sladu | Certifikát kvality | ROZBOR SLADU | Protokol o rozboru sladu
specification: Specifikace výrobku | Technický list sladu
[sections]
physical: Mechanický rozbor
chemical: Chemický rozbor | Rozbor sladu
wort: Kongresní sladina | Sladina
enzymes: Enzymy
nitrogen: Dusíkaté látky
modification: Rozluštění
contaminants: Kontaminanty
sieving: Třídění | Sítový rozbor
barley: Ječmen
malt: Slad
[basis]
dry: v sušině | (v suš.) | , v sušině
asis: v původním sladu | v původní hmotě
[unitbasis]
dry: % suš. | % v sušině
asis: % v pův. hm. | % původní
[notes]
dry: Extrakt a bílkoviny jsou uvedeny v sušině.
[family]
EBC: Metody EBC | Rozbor podle Analytica-EBC | Metodika: Analytica EBC
[words]
clarity: čirá | slabě opalizující | jiskrná
odour: normální | čistá
filtration: normální | rychlé
nd: n.d. | nezjištěno
[malts]
PIL: Plzeňský slad | Slad plzeňského typu
XP: Extra světlý slad
ALE: Slad Pale Ale
VIE: Vídeňský slad
MUN: Mnichovský slad
CRY: Karamelový slad
ROA: Čokoládový slad | Barevný slad
WHE: Pšeničný slad
RYE: Žitný slad
OAT: Ovesný slad
DIS: Lihovarský slad
[children]
extract: Extrakt
extract_fine_dry: jemné mletí{b} | moučka{b}
extract_coarse_dry: hrubé mletí{b} | šrot{b}
extract_fine_as_is: jemné mletí{b}
fine_coarse_difference: rozdíl jemný-hrubý | rozdíl
nitrogen: Dusík
total_nitrogen: celkový{b}
soluble_nitrogen: rozpustný{b}
protein: Bílkoviny
total_protein: celkové{b}
soluble_protein: rozpustné{b}
colour: Barva
wort_colour: sladiny
boiled_colour: po povaření
sieving: Třídění
"""
