# ruff: noqa: E501
"""Danish wordings of malt sheets."""

TEXT = """
[labels]
moisture: Vandindhold | Vand | Fugtighed | Vandindhold i malt
extract_fine_dry: Ekstrakt{b}~either | Ekstrakt fin{b} | Ekstrakt, fin formaling{b} | Ekstrakt (finmel){b} | Fin ekstrakt{b}
extract_coarse_dry: Ekstrakt grov{b} | Ekstrakt, grov formaling{b}
extract_fine_as_is: Ekstrakt fin{b} | Ekstrakt, fin formaling{b}
fine_coarse_difference: Fin-grov differens | Differens fin/grov | Ekstraktdifferens fin-grov
colour: Farve | Urtfarve | Farve af urt
boiled_colour: Farve efter kogning | Kogt urtfarve
total_nitrogen: Total kvælstof{b} | Totalkvælstof{b} | Kvælstof total{b}
total_protein: Protein{b} | Totalprotein{b} | Råprotein{b}
soluble_nitrogen: Opløseligt kvælstof{b} | Opl. kvælstof{b}
soluble_protein: Opløseligt protein{b} | Opl. protein{b}
ratio_kolbach: Kolbachtal | Kolbach-indeks | Kolbach
fan: Frit aminokvælstof | FAN | Frit aminokvælstof (FAN)
friability: Friabilitet | Friabilimeter
homogeneity: Homogenitet
pug: Delvist glasagtige kerner~either
whole_grains: Hele kerner
glassy_grains: Glasagtige kerner | Glasagtighed
dp: Diastatisk kraft | Diastatisk aktivitet | DK (diastatisk kraft)
alpha_amylase: Alfa-amylase | α-amylase
beta_glucan: Betaglucan | β-glucan i urt | Beta-glucan
viscosity: Viskositet | Urtviskositet | Viskositet af urt
saccharification_time: Forsukringstid | Forsukring
filtration: Filtreringstid | Filtrering
turbidity: Turbiditet | Uklarhed
clarity: Klarhed | Urtens klarhed
odour: Lugt | Mæskens lugt
wort_ph: pH i urt | pH | Urt-pH
final_attenuation: Tilsyneladende slutforgæringsgrad | Slutforgæringsgrad (tilsyneladende)
relative_extract_45: VZ 45 °C | Hartong 45 °C
sieve_over_2_8: > 2,8 mm | Sortering > 2,8 mm
sieve_2_5_to_2_8: 2,5 - 2,8 mm | Sortering 2,5-2,8 mm
sieve_over_2_5: > 2,5 mm | Sortering over 2,5 mm
sieve_2_2_to_2_5: 2,2 - 2,5 mm | Sortering 2,2-2,5 mm
sieve_under_2_2: < 2,2 mm | Sortering under 2,2 mm
thousand_corn_weight: Tusindkornsvægt | TKV
hectolitre_weight: Hektolitervægt | HL-vægt
foreign_matter: Fremmede bestanddele | Urenheder
broken_grains: Knækkede kerner
dms_precursor: DMS-forløber | DMS-P
lead: Bly
cadmium: Cadmium
arsenic: Arsen
ndma: NDMA | Nitrosaminer (NDMA)
deoxynivalenol: Deoxynivalenol | DON
zearalenone: Zearalenon
ochratoxin_a: Ochratoxin A
aflatoxin_b1: Aflatoxin B1
cold_water_extract: Koldtvandsekstrakt
gushing: Gushing (overskumning)
t2_ht2: T-2 + HT-2 toksin
half_glassy: Halvglasagtige kerner
real_attenuation: Virkelig forgæringsgrad
wort_extract: Urtens ekstrakt (°P)
varietal_purity: Sortsrenhed
germinative_energy: Spireenergi
barley_moisture: Vandindhold
barley_protein: Protein
[captions]
supplier: Leverandør | Malteri | Producent
malt: Malttype | Produkt | Maltsort
batch: Batch | Batchnr. | Partinr. | Lotnr.
certificate: Certifikatnr. | Certifikat nr. | Rapportnr.
crop_year: Høst | Høstår
variety: Sort | Bygsort
produced_on: Produktionsdato | Fremstillingsdato
analysed_on: Analysedato | Analyseret den
delivered_on: Leveringsdato | Leveret den
best_before: Mindst holdbar til | Bedst før
quantity: Mængde | Nettovægt
order: Ordrenr. | Deres ordre
customer: Kunde | Modtager
[heads]
label: Parameter | Analyse | Bestemmelse | Egenskab
result: Resultat | Værdi | Målt værdi
unit: Enhed
method: Metode | Analysemetode
min: Min. | Minimum
max: Maks. | Maksimum | Max.
spec: Specifikation | Krav | Grænser
typical: Typisk værdi | Typisk
previous: Forrige parti | Sidste år
number: Nr.
remark: Bemærkning
[titles]
batch: Maltanalyse | Analysecertifikat | MALTANALYSE | Analyserapport for malt
specification: Produktspecifikation | Maltspecifikation
[sections]
physical: Fysisk analyse
chemical: Kemisk analyse | Maltanalyse
wort: Urtanalyse | Laboratorieurt
enzymes: Enzymer
nitrogen: Kvælstof | Protein
modification: Opløsning | Modifikation
contaminants: Forureninger | Restkoncentrationer
sieving: Sortering
barley: Byg
malt: Malt
[basis]
dry: i tørstof | (TS) | , tørstof
asis: som er | lufttør | (lufttør)
[unitbasis]
dry: % i TS | % TS | % tørstof
asis: % som er | % lufttør
[notes]
dry: Ekstrakt og protein er angivet i tørstof.
[family]
EBC: Metoder: EBC | Analyseret efter Analytica-EBC | EBC-metoder
[words]
clarity: klar | let opaliserende | blank
odour: normal | ren
filtration: normal | hurtig
nd: i.p. | ikke påvist
[malts]
PIL: Pilsnermalt
XP: Ekstra lys malt
ALE: Pale ale-malt
VIE: Wienermalt
MUN: Münchenermalt
CRY: Karamelmalt
ROA: Chokolademalt | Ristet malt
WHE: Hvedemalt
RYE: Rugmalt
OAT: Havremalt
DIS: Brænderimalt
[children]
extract: Ekstrakt
extract_fine_dry: fin{b} | fin formaling{b}
extract_coarse_dry: grov{b} | grov formaling{b}
extract_fine_as_is: fin{b}
fine_coarse_difference: differens fin-grov | differens
nitrogen: Kvælstof
total_nitrogen: total{b}
soluble_nitrogen: opløseligt{b}
protein: Protein
total_protein: total{b}
soluble_protein: opløseligt{b}
colour: Farve
wort_colour: urt
boiled_colour: efter kogning
sieving: Sortering
"""
