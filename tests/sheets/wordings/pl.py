"""Polish wordings of malt sheets."""

TEXT = """
[labels]
moisture: Wilgotność | Zawartość wody
extract_fine_dry: Ekstraktywność mączki{b} | Ekstrakt drobny przemiał{b} | Ekstrakt (mączka){b}
extract_coarse_dry: Ekstraktywność śruty{b} | Ekstrakt gruby przemiał{b}
extract_fine_as_is: Ekstrakt drobny przemiał{b}
fine_coarse_difference: Różnica ekstraktów | Różnica ekstraktów mączka-śruta
colour: Barwa | Barwa brzeczki
boiled_colour: Barwa po gotowaniu | Barwa brzeczki po gotowaniu
total_nitrogen: Azot ogólny{b}
total_protein: Białko ogółem{b} | Białko{b}
soluble_nitrogen: Azot rozpuszczalny{b}
soluble_protein: Białko rozpuszczalne{b}
ratio_kolbach: Liczba Kolbacha | Indeks Kolbacha
fan: Wolny azot aminowy | FAN
friability: Kruchość | Friabilność
homogeneity: Homogeniczność
glassy_grains: Ziarna szkliste | Szklistość
dp: Siła diastatyczna
alpha_amylase: Alfa-amylaza
beta_glucan: Beta-glukany | Beta-glukany w brzeczce
viscosity: Lepkość | Lepkość brzeczki
saccharification_time: Czas scukrzania
filtration: Czas filtracji
clarity: Klarowność brzeczki
wort_ph: pH brzeczki | pH
final_attenuation: Stopień ostatecznego odfermentowania (pozorny)
relative_extract_45: Ekstrakt względny 45 °C | VZ 45 °C
sieve_over_2_8: > 2,8 mm
sieve_2_5_to_2_8: 2,5 - 2,8 mm
sieve_over_2_5: > 2,5 mm
sieve_2_2_to_2_5: 2,2 - 2,5 mm
sieve_under_2_2: < 2,2 mm
thousand_corn_weight: Masa tysiąca ziaren
hectolitre_weight: Masa hektolitra | Gęstość w stanie zsypnym
foreign_matter: Zanieczyszczenia
broken_grains: Ziarna połamane
dms_precursor: Prekursor DMS
ndma: NDMA
deoxynivalenol: Deoksyniwalenol | DON
ochratoxin_a: Ochratoksyna A
lead: Ołów
gushing: Gushing
barley_moisture: Wilgotność
barley_protein: Białko
germinative_energy: Energia kiełkowania
varietal_purity: Czystość odmianowa
[captions]
supplier: Dostawca | Słodownia
malt: Rodzaj słodu | Produkt
batch: Partia | Nr partii | Numer partii
certificate: Nr certyfikatu | Świadectwo nr
crop_year: Zbiory | Rok zbioru
variety: Odmiana | Odmiana jęczmienia
produced_on: Data produkcji
analysed_on: Data analizy
delivered_on: Data dostawy
best_before: Najlepiej spożyć przed
quantity: Ilość | Masa netto
order: Nr zamówienia
customer: Odbiorca | Klient
[heads]
label: Parametr | Oznaczenie
result: Wynik | Wartość
unit: Jednostka
method: Metoda
min: Min.
max: Maks.
spec: Specyfikacja
typical: Wartość typowa
previous: Poprzednia partia
number: Lp.
remark: Uwagi
[titles]
batch: Świadectwo jakości | Analiza słodu
specification: Specyfikacja produktu
[sections]
physical: Analiza fizyczna
chemical: Analiza chemiczna
wort: Analiza brzeczki
enzymes: Enzymy
nitrogen: Związki azotowe
modification: Rozluźnienie
contaminants: Zanieczyszczenia i pozostałości
sieving: Sortowanie
barley: Jęczmień
malt: Słód
[basis]
dry: w s.s. | w suchej masie | (s.m.)
asis: w stanie powietrznie suchym
[unitbasis]
dry: % s.m. | % s.s.
asis: % pow. suchy
[notes]
dry: Ekstrakt i białko podano w suchej masie.
[family]
EBC: Metody EBC | Analiza według Analytica-EBC
[words]
clarity: klarowna | lekko opalizująca
odour: normalny
filtration: normalna
nd: n.w.
[malts]
PIL: Słód pilzneński
XP: Słód bardzo jasny
ALE: Słód Pale Ale
VIE: Słód wiedeński
MUN: Słód monachijski
CRY: Słód karmelowy
ROA: Słód czekoladowy
WHE: Słód pszeniczny
RYE: Słód żytni
OAT: Słód owsiany
DIS: Słód gorzelniany
"""
