# ruff: noqa: E501
"""German wordings of malt sheets."""

TEXT = """
[labels]
moisture: Wassergehalt | Wasser | Feuchtigkeit | Feuchte | Malzwassergehalt
extract_fine_dry: Extrakt{b}~either | Extrakt Feinschrot{b} | Extrakt{b} (Feinschrot) | Feinschrotextrakt{b} | Extrakt fein{b} | Extraktgehalt{b} (0,2 mm) | Extraktausbeute Feinschrot{b}
extract_coarse_dry: Extrakt Grobschrot{b} | Grobschrotextrakt{b} | Extrakt grob{b}
extract_fine_as_is: Extrakt Feinschrot{b} | Feinschrotextrakt{b} | Extrakt fein{b}
extract_coarse_as_is: Extrakt Grobschrot{b} | Grobschrotextrakt{b}
hwe_dry: Heißwasserextrakt 0,7 mm{b} | Heisswasserextrakt (0,7 mm){b}
hwe_as_is: Heißwasserextrakt 0,7 mm{b} | Heisswasserextrakt (0,7 mm){b}
hwe_fine_dry: Heißwasserextrakt 0,2 mm{b}
fine_coarse_difference: Mehl-Schrot-Differenz | MS-Differenz | Extraktdifferenz | Mehl/Schrot-Differenz | Extraktdifferenz fein-grob
colour: Farbe | Würzefarbe | Farbe der Kongresswürze | Farbe (photometrisch) | Malzfarbe
boiled_colour: Kochfarbe | Farbe nach dem Kochen | Würzefarbe gekocht
total_nitrogen: Gesamtstickstoff{b} | Stickstoff gesamt{b} | Gesamt-N{b}
total_protein: Rohprotein{b} | Eiweiß{b} | Eiweißgehalt{b} | Gesamteiweiß{b} | Protein{b} (N x 6,25)
soluble_nitrogen: löslicher Stickstoff{b} | lösl. Stickstoff{b} | Lösl. N{b} | Löslicher Stickstoff{b}
soluble_protein: lösliches Eiweiß{b} | Lösl. Protein{b} | Lösliches Protein{b}
ratio_kolbach: Kolbachzahl | Eiweißlösungsgrad | Eiweißlösungsgrad (Kolbach) | ELG | Kolbach-Index
ratio_snr: Stickstofflösungsgrad (SNR) | SNR
ratio_st: Eiweißlösungsgrad
fan: FAN | Freier Aminostickstoff | Freier Amino-Stickstoff (FAN) | freier α-Aminostickstoff
friability: Friabilimeter | Mürbigkeit | Friabilimeterwert | Mürbigkeit (Friabilimeter)
homogeneity: Homogenität | Homogenität (Friabilimeter)
pug: teilglasige Körner~either | Teilglasigkeit~either
whole_grains: Ganze Körner (Friabilimeter) | ganze Körner
glassy_grains: Ganzglasigkeit | ganzglasige Körner | Ganzglasige
dp: Diastatische Kraft | Diastatische Kraft (WK) | Diast. Kraft | DK
alpha_amylase: α-Amylase | Alpha-Amylase | α-Amylase-Aktivität
beta_glucan: β-Glucan | Beta-Glucan | ß-Glucan in der Würze | β-Glucan (Würze)
beta_glucan_malt: β-Glucan im Malz
viscosity: Viskosität | Würzeviskosität | Viskosität (8,6 %) | Viskosität der Würze
saccharification_time: Verzuckerungszeit | Verzuckerung | Verzuckerungsdauer
filtration: Filtrationszeit | Ablauf | Ablauf der Würze
turbidity: Trübung | Trübung der Würze
clarity: Aussehen der Würze | Klarheit | Klarheit der Würze
odour: Geruch der Maische | Geruch
wort_ph: pH-Wert | pH der Würze | Würze-pH | pH
final_attenuation: Endvergärungsgrad scheinbar | EVG scheinbar | scheinbarer Endvergärungsgrad | Endvergärung (scheinbar)
relative_extract_45: VZ 45 °C | Hartong VZ 45 °C | Relativer Extrakt 45 °C | Maischmethode Hartong 45 °C
sieve_over_2_8: > 2,8 mm | Sortierung > 2,8 mm | Sortierung über 2,8 mm
sieve_2_5_to_2_8: 2,5 - 2,8 mm | Sortierung 2,5-2,8 mm | Sortierung 2,5 bis 2,8 mm
sieve_over_2_5: > 2,5 mm | Vollgerste > 2,5 mm | Sortierung > 2,5 mm
sieve_2_2_to_2_5: 2,2 - 2,5 mm | Sortierung 2,2-2,5 mm
sieve_under_2_2: < 2,2 mm | Ausputz < 2,2 mm | Sortierung < 2,2 mm | Abputz (< 2,2 mm)
sieve_7_64: Sieb 7/64
sieve_6_64: Sieb 6/64
sieve_5_64: Sieb 5/64
sieve_5_64_through: Durchgang 5/64
thousand_corn_weight: Tausendkorngewicht | TKG | Tausendkornmasse
hectolitre_weight: Hektolitergewicht | hl-Gewicht
bushel_weight: Bushelgewicht
foreign_matter: Fremdbesatz | Besatz
broken_grains: Bruchkörner | gebrochene Körner
acrospire_length: Blattkeimlänge (Mittel)
lipoxygenase: LOX-Aktivität | Lipoxygenase
dms_precursor: DMS-Vorläufer | DMS-P | DMS-Precursor
sulphur_dioxide: Schwefeldioxid | SO2
arsenic: Arsen
lead: Blei | Blei (Pb)
cadmium: Cadmium
gluten: Gluten
ndma: NDMA | Nitrosamine (NDMA)
deoxynivalenol: Deoxynivalenol | DON | Deoxynivalenol (DON)
zearalenone: Zearalenon
ochratoxin_a: Ochratoxin A | OTA
aflatoxin_b1: Aflatoxin B1
glycosidic_nitrile: Glykosidisches Nitril
predicted_spirit_yield: Alkoholausbeute (PSY)
fermentability: Vergärbarkeit
fermentable_extract: Vergärbarer Extrakt
cold_water_extract: Kaltwasserextrakt
limit_dextrinase: Grenzdextrinase
beta_amylase: β-Amylase
gushing: Gushing | Gushing-Potenzial (Überschäumvolumen)
t2_ht2: T-2 + HT-2 Toxin
fumonisins: Fumonisine
half_glassy: Halbglasige Körner
mealy: Mehlige Körner
real_attenuation: Wirklicher Vergärungsgrad
wort_extract: Extrakt der Würze (°P)
phenols: Gesamtphenole
coagulable_nitrogen: Koagulierbarer Stickstoff
varietal_purity: Sortenreinheit
germinative_energy: Keimenergie
barley_moisture: Wassergehalt
barley_protein: Eiweiß
[captions]
supplier: Lieferant | Hersteller | Mälzerei
malt: Malzsorte | Produkt | Malztyp | Bezeichnung | Artikel
batch: Charge | Chargen-Nr. | Chargennummer | Charge/Los-Nr. | Partie | Partie-Nr. | Los-Nr.
certificate: Zertifikat-Nr. | Analysen-Nr. | Prüfbericht Nr. | Bericht-Nr.
crop_year: Ernte | Erntejahr | Erntejahrgang
variety: Gerstensorte | Sorte | Sorten
produced_on: Herstellungsdatum | Produktionsdatum | Herstelldatum
analysed_on: Analysendatum | Datum der Analyse | Untersuchungsdatum | analysiert am
delivered_on: Lieferdatum | Auslieferung am | Lieferung vom
best_before: Mindestens haltbar bis | MHD | Mindesthaltbarkeit
quantity: Menge | Liefermenge | Nettogewicht
order: Auftrags-Nr. | Bestell-Nr. | Ihre Bestellung | Auftragsnummer
customer: Kunde | Auftraggeber | Empfänger
[heads]
label: Parameter | Analyse | Bezeichnung | Merkmal | Untersuchung | Bestimmung
result: Ergebnis | Messwert | Wert | Istwert | Befund
unit: Einheit | Einh. | Dimension
method: Methode | Prüfmethode | Verfahren
min: min. | Min | Minimum | Untergrenze
max: max. | Max | Maximum | Obergrenze
spec: Spezifikation | Sollwert | Grenzwert | Soll
typical: Richtwert | Normwert | Typischer Wert
previous: Vorjahr | Letzte Charge
number: Nr. | Pos.
remark: Bemerkung
[titles]
batch: Malzanalyse | Analysenzertifikat | MALZANALYSE | Untersuchungsbefund Malz | Analysenprotokoll
specification: Produktspezifikation | Spezifikation Malz | Datenblatt
[sections]
physical: Mechanische Analyse | Physikalische Untersuchung
chemical: Chemische Analyse | Malzanalyse
wort: Kongresswürze | Würzeanalyse | Würze
enzymes: Enzyme | Enzymaktivität
nitrogen: Stickstoff | Eiweiß
modification: Lösung | Zytolyse
contaminants: Rückstände | Schadstoffe und Mykotoxine
sieving: Sortierung
barley: Gerste | Rohstoff Gerste
malt: Malz
[basis]
dry: , wfr. | (wfr.) | wfr. | i. TrS | TrS | , wasserfrei | i.d. TrS
asis: lftr. | , lftr. | (lftr.) | lufttrocken
[unitbasis]
dry: % wfr. | % TrS | % i. TrS | %, wfr. | % (TrS)
asis: % lftr. | %, lftr.
[notes]
dry: Alle Angaben zu Extrakt und Eiweiß beziehen sich auf Trockensubstanz. | Werte wasserfrei, sofern nicht anders angegeben.
[family]
EBC: Methoden nach EBC | Analyse nach Analytica-EBC | Untersuchung nach MEBAK (Kongressmaische) | MEBAK-Methoden, Kongressmaischverfahren
IoB: Methoden nach IoB (Institute of Brewing) | Analyse nach IoB
ASBC: Methoden nach ASBC
iso65: Isotherme 65 °C-Maische (MEBAK R-207.00.002) | Maischverfahren: isotherm 65 °C | Untersuchung nach MEBAK, Isotherme 65 °C Maische
[words]
clarity: klar | blank | leicht opal | opal
odour: normal | rein | aromatisch
filtration: normal | schnell
nd: n.n. | n. n. | nicht nachweisbar
normal: normal
yes: entspricht
[malts]
PIL: Pilsner Malz | Pilsener Malz hell
XP: Extra helles Malz
ALE: Pale Ale Malz
VIE: Wiener Malz
MUN: Münchner Malz | Münchner Malz Typ I
CRY: Caramelmalz | Karamellmalz hell
ROA: Röstmalz | Schokoladenmalz
WHE: Weizenmalz hell | Weizenmalz
RYE: Roggenmalz
OAT: Hafermalz
DIS: Brennmalz
[children]
extract: Extrakt | Extraktausbeute
extract_fine_dry: Feinschrot{b} | fein{b}
extract_coarse_dry: Grobschrot{b} | grob{b}
extract_fine_as_is: Feinschrot{b} | fein{b}
fine_coarse_difference: Differenz | Mehl-Schrot-Differenz
nitrogen: Stickstoff
total_nitrogen: gesamt{b} | Gesamt{b}
soluble_nitrogen: löslich{b} | lösl.{b}
protein: Eiweiß
total_protein: gesamt{b} | Gesamt{b}
soluble_protein: löslich{b} | lösl.{b}
colour: Farbe
wort_colour: Würze | ungekocht
boiled_colour: nach dem Kochen | gekocht
sieving: Sortierung | Siebanalyse
"""
