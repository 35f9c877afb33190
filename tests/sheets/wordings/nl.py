# ruff: noqa: E501
"""Dutch wordings of malt sheets."""

TEXT = """
[labels]
moisture: Vochtgehalte | Vocht | Watergehalte | Vochtgehalte mout
extract_fine_dry: Extract{b}~either | Extract fijn{b} | Extract fijne maling{b} | Extractgehalte fijn{b} | Extract fijnschroot{b}
extract_coarse_dry: Extract grof{b} | Extract grove maling{b}
extract_fine_as_is: Extract fijn{b} | Extract fijne maling{b}
extract_coarse_as_is: Extract grof{b}
hwe_dry: Heetwaterextract 0,7 mm{b}
hwe_as_is: Heetwaterextract 0,7 mm{b}
fine_coarse_difference: Verschil fijn-grof | Extractverschil fijn-grof | Fijn-grof verschil
colour: Kleur | Wortkleur | Kleur van het wort
boiled_colour: Kookkleur | Kleur na koken
total_nitrogen: Totaal stikstof{b} | Totale stikstof{b} | Stikstof totaal{b}
total_protein: Totaal eiwit{b} | Eiwit{b} | Eiwitgehalte{b} | Eiwit totaal{b}
soluble_nitrogen: Oplosbare stikstof{b} | Stikstof oplosbaar{b}
soluble_protein: Oplosbaar eiwit{b} | Eiwit oplosbaar{b}
ratio_kolbach: Kolbachindex | Kolbach-index | Kolbachgetal | Kolbach
ratio_snr: Oplosbare stikstofverhouding (SNR) | SNR
ratio_st: S/T-verhouding
fan: Vrije aminostikstof | FAN | Vrije aminostikstof (FAN) | Vrije amino-N
friability: Brosheid | Friabiliteit | Friabilimeter
homogeneity: Homogeniteit
pug: Gedeeltelijk glazige korrels~either | PUG
whole_grains: Hele korrels
glassy_grains: Glazige korrels | Glazigheid
dp: Diastatisch vermogen | Diastatische kracht | DV (diastatisch vermogen)
alpha_amylase: α-amylase | Alfa-amylase
beta_glucan: Bètaglucaan | β-glucaan | Bètaglucanen in wort
viscosity: Viscositeit | Viscositeit wort | Wortviscositeit
saccharification_time: Versuikeringstijd | Versuikering
filtration: Filtratietijd | Filtratie | Doorlooptijd
turbidity: Troebelheid | Troebeling wort
clarity: Helderheid | Helderheid wort
odour: Geur van het beslag | Geur
wort_ph: pH wort | pH | pH van het wort
final_attenuation: Schijnbare eindvergistingsgraad | Eindvergistingsgraad (schijnbaar)
relative_extract_45: VZ 45 °C | Hartong 45 °C
sieve_over_2_8: > 2,8 mm | Sortering > 2,8 mm
sieve_2_5_to_2_8: 2,5 - 2,8 mm | Sortering 2,5-2,8 mm
sieve_over_2_5: > 2,5 mm | Sortering > 2,5 mm
sieve_2_2_to_2_5: 2,2 - 2,5 mm | Sortering 2,2-2,5 mm
sieve_under_2_2: < 2,2 mm | Sortering < 2,2 mm | Uitschot < 2,2 mm
thousand_corn_weight: Duizendkorrelgewicht | DKG
hectolitre_weight: Hectolitergewicht | HL-gewicht
foreign_matter: Onzuiverheden | Vreemde bestanddelen
broken_grains: Gebroken korrels
dms_precursor: DMS-precursor | DMS-P
sulphur_dioxide: Zwaveldioxide
arsenic: Arseen
lead: Lood
cadmium: Cadmium
ndma: NDMA | Nitrosaminen (NDMA)
deoxynivalenol: Deoxynivalenol | DON
zearalenone: Zearalenon
ochratoxin_a: Ochratoxine A | OTA
aflatoxin_b1: Aflatoxine B1
fermentability: Vergistbaarheid
glycosidic_nitrile: Glycosidisch nitril
cold_water_extract: Koudwaterextract
beta_amylase: Bèta-amylase
gushing: Gushing (overschuimen)
t2_ht2: T-2 + HT-2 toxinen
half_glassy: Halfglazige korrels
real_attenuation: Werkelijke vergistingsgraad
wort_extract: Extract van het wort (°P)
varietal_purity: Raszuiverheid
germinative_energy: Kiemenergie
barley_moisture: Vochtgehalte
barley_protein: Eiwit
[captions]
supplier: Leverancier | Mouterij | Producent
malt: Moutsoort | Product | Type mout | Artikel
batch: Partij | Partijnummer | Batchnummer | Lotnummer
certificate: Certificaatnummer | Certificaat nr. | Rapportnummer
crop_year: Oogst | Oogstjaar
variety: Ras | Gerstras | Rassen
produced_on: Productiedatum | Datum van productie
analysed_on: Analysedatum | Datum analyse
delivered_on: Leverdatum | Datum levering
best_before: Ten minste houdbaar tot | THT | Houdbaar tot
quantity: Hoeveelheid | Nettogewicht
order: Ordernummer | Uw order | Bestelnummer
customer: Klant | Afnemer
[heads]
label: Parameter | Analyse | Bepaling | Eigenschap
result: Resultaat | Uitslag | Waarde | Gemeten waarde
unit: Eenheid
method: Methode | Analysemethode
min: Min. | Min | Minimum
max: Max. | Max | Maximum
spec: Specificatie | Norm | Grenswaarden
typical: Typische waarde | Richtwaarde
previous: Vorige partij | Vorig jaar
number: Nr.
remark: Opmerking
[titles]
batch: Analysecertificaat | Moutanalyse | ANALYSECERTIFICAAT | Analyserapport mout
specification: Productspecificatie | Moutspecificatieblad
[sections]
physical: Fysische analyse
chemical: Chemische analyse | Moutanalyse
wort: Wortanalyse | Laboratoriumwort
enzymes: Enzymen
nitrogen: Stikstof | Eiwit
modification: Oplossing | Modificatie
contaminants: Contaminanten | Residuen
sieving: Sortering | Zeefanalyse
barley: Gerst
malt: Mout
[basis]
dry: op droge stof | (ds) | , op d.s. | droge stof
asis: luchtdroog | als zodanig | (luchtdroog)
[unitbasis]
dry: % ds | % d.s. | % op droge stof
asis: % luchtdroog | % als zodanig
[notes]
dry: Extract en eiwit zijn uitgedrukt op droge stof.
[family]
EBC: Methoden volgens EBC | Analyse volgens Analytica-EBC | EBC-methoden (congresmaisch)
IoB: Methoden volgens IoB (Institute of Brewing)
[words]
clarity: helder | licht opaal | blank
odour: normaal | zuiver
filtration: normaal | vlot
nd: n.a. | niet aantoonbaar
[malts]
PIL: Pilsmout | Pilsenmout
XP: Extra bleke mout
ALE: Pale-ale mout | Palemout
VIE: Weense mout
MUN: Münchener mout
CRY: Karamelmout | Caramout
ROA: Chocolademout | Roostmout
WHE: Tarwemout
RYE: Roggemout
OAT: Gemoute haver
DIS: Distilleermout
[children]
extract: Extract
extract_fine_dry: fijn{b} | fijne maling{b}
extract_coarse_dry: grof{b} | grove maling{b}
extract_fine_as_is: fijn{b}
hwe_dry: 0,7 mm{b}
hwe_as_is: 0,7 mm{b}
fine_coarse_difference: verschil fijn-grof | verschil
nitrogen: Stikstof
total_nitrogen: totaal{b}
soluble_nitrogen: oplosbaar{b}
protein: Eiwit
total_protein: totaal{b}
soluble_protein: oplosbaar{b}
colour: Kleur
wort_colour: wort
boiled_colour: na koken
sieving: Sortering
"""
