# ruff: noqa: E501
"""English and German wordings of the unseen sheets.

Whoever works on the reading of sheets leaves the files of this set unread, so that it can tell how well words and
layouts are read that nobody has prepared for.
"""

from __future__ import annotations

_EN = """
[labels]
moisture: Moisture of malt | Moisture at despatch | Moisture - oven | Malt moisture content | Water (oven drying) | Moisture, ex works
extract_fine_dry: Extract - Fine Grind{b} | Extract (fine){b} | Congress mash extract, fine{b} | Extract Fine Grind, Dry Basis~dry | Ext. FG DB~dry | Extract - FGDB~dry | Fine Extract, D.M.~dry | Extract, Congress 0.2 mm{b}
extract_coarse_dry: Extract - Coarse Grind{b} | Extract (coarse){b} | Extract Coarse Grind, Dry Basis~dry | Extract - CGDB~dry | Coarse Extract, D.M.~dry
extract_fine_as_is: Extract - Fine Grind{b} | Extract (fine){b} | Extract Fine Grind, As Is~asis | Extract - FGAI~asis
extract_coarse_as_is: Extract - Coarse Grind{b} | Extract (coarse){b} | Extract Coarse Grind, As Is~asis | Extract - CGAI~asis
hwe_dry: HWE 0.7mm{b} | Extract (0.7 mm){b} | Hot Water Extract @ 0.7 mm{b} | Extract 0.7 mm, IoB{b} | Extract, IoB mash (0.7 mm grind){b}
hwe_as_is: HWE 0.7mm{b} | Extract (0.7 mm){b} | Hot Water Extract @ 0.7 mm{b} | Extract 0.7 mm, IoB{b}
hwe_fine_dry: Extract (0.2 mm){b} | Hot Water Extract @ 0.2 mm{b}
fine_coarse_difference: Fine/Coarse Extract Difference | F/C Extract Difference | FG - CG difference | Extract Difference (Fine - Coarse) | Difference F/C | Fine-Coarse Diff. (FCD)
colour: Colour (laboratory wort) | Colour, spectrophotometric | Colour - wort | Wort colour at 430 nm | Malt Colour (wort) | Wort Colour, unboiled
boiled_colour: Colour after Boil | Wort Colour, boiled 2 h | Colour - after boiling | Boiled Colour (2 hours)
total_nitrogen: Total Nitrogen (TN){b} | Nitrogen - total{b} | Malt Nitrogen{b} | Total N (Dumas combustion){b} | Nitrogen content{b}
total_protein: Protein - Total{b} | Total Protein (TP){b} | Protein (Nx6.25){b} | Malt Protein, total{b} | Protein by combustion{b} | Protein, Dumas{b}
soluble_nitrogen: Soluble Nitrogen (SN){b} | Total Soluble Nitrogen (TSN){b} | Nitrogen - soluble{b} | Sol. Nitrogen, spectrophotometric{b}
soluble_protein: Protein - Soluble{b} | Soluble Protein (SP){b} | Soluble Protein, wort{b}
ratio_kolbach: Kolbach Index, KI | Kolbach Index (SN/TN) | KI (Kolbach) | Kolbach index, sol. N/total N | Modification (Kolbach Index)
ratio_snr: Soluble N Ratio, SNR | SNR (TSN/TN x 100) | Soluble Nitrogen Ratio - SNR | Index of Modification (SNR) | S.N.R. (TSN/TN)
ratio_st: S/T (Kolbach) | S/T Ratio (soluble/total protein) | Soluble/Total Protein (S/T) | Ratio S/T Protein
fan: Free Amino Nitrogen, FAN | FAN (ninhydrin) | FAN - wort | Free α-Amino Nitrogen (FAN) | Free Amino N (FAN)
friability: Friability (Friabilimeter) | Friability - total | Friability, 8 min | Malt Friability Value
homogeneity: Homogeneity by Friabilimeter | Malt Homogeneity (100 - PUG) | Homogeneity - friabilimeter
pug: Partly Unmodified Grain (PUG) | PUG (partially unmodified grains) | PUG, residue over 2.2 mm
whole_grains: Whole Unmodified Grain (WUG) | WUG (whole unmodified grains) | Friabilimeter - whole grains
glassy_grains: Glassy Corns (whole) | Glassy Kernels, whole | Glassy corns, full
dp: Diastatic Power, DP | DP (Diastatic Power) | Diastatic Power - total | Diastatic power of malt
alpha_amylase: Alpha Amylase, DU | Alpha-Amylase (20 °C) | Dextrinising Units (DU) | D.U. (alpha amylase) | α-Amylase activity
beta_glucan: Beta Glucan - wort | β-Glucan (Calcofluor FIA) | Beta-Glucan, laboratory wort | Wort Beta-Glucan (HMW)
beta_glucan_malt: Beta Glucan - malt
viscosity: Viscosity, wort | Wort Viscosity @ 20°C | Viscosity - laboratory wort | Viscosity at 8.6 °P
saccharification_time: Saccharification Time (iodine) | Conversion Time - iodine test | Sacch. Time @ 70 °C | Saccharification within
filtration: Filtration Time - wort | Speed of Filtration (wort) | Filtering Rate | Wort filtration time
turbidity: Turbidity (90°) | Wort Turbidity - 90 deg | Haze - laboratory wort
clarity: Clarity - wort | Wort Clarity (visual) | Appearance of laboratory wort
odour: Odour - mash | Aroma of the mash | Mash Odour/Aroma
wort_ph: pH - wort | Wort pH @ 20 °C | pH laboratory wort | pH value
final_attenuation: Apparent Attenuation Limit (AAL) | Final Attenuation - apparent | Apparent Final Attenuation (AFA) | Limit Attenuation, apparent
relative_extract_45: Relative Extract VZ 45 °C | Hartong Index 45 °C | VZ45 (Hartong)
sieve_over_2_8: Over 2.8 mm | On 2.8 mm screen | Screen: + 2.8 mm
sieve_2_5_to_2_8: 2.8-2.5 mm | 2.5 mm to 2.8 mm | From 2.5 to 2.8 mm
sieve_over_2_5: Plump > 2.5 mm | Total over 2.5 mm | Over 2.5 mm (total)
sieve_2_2_to_2_5: 2.5-2.2 mm | 2.2 mm to 2.5 mm | From 2.2 to 2.5 mm
sieve_under_2_2: Thru 2.2 mm | Thin corns through 2.2 mm | Fines < 2.2 mm | Passing 2.2 mm
sieve_7_64: Assortment: on 7/64 | Plump - on 7/64" | 7/64" retained
sieve_6_64: Assortment: on 6/64 | On 6/64" screen | 6/64" retained
sieve_5_64: Assortment: on 5/64 | On 5/64" screen | 5/64" retained
sieve_5_64_through: Thru 5/64" (thin) | Assortment: thru 5/64 | Thin - thru 5/64"
thousand_corn_weight: 1000 Kernel Weight (TKW) | Thousand Corn Weight, dry | TCW (1000 corns)
hectolitre_weight: Hectolitre Weight (HLW) | Specific weight (hl) | Hectoliter Wt.
bushel_weight: Bushel Wt. | Test Weight (bushel) | Bushel Weight (US)
foreign_matter: Foreign Matter & Seeds | Extraneous Material | Foreign Material (non-malt)
broken_grains: Broken / Half corns | Broken & Damaged Corns | Split and broken corns
acrospire_length: Acrospire (average)
lipoxygenase: LOX (lipoxygenase)
dms_precursor: DMS Precursor (DMSP) | SMM / DMS-P | DMS-precursor content
sulphur_dioxide: Sulphur Dioxide (SO2) | SO2 - total
arsenic: Arsenic - As | Heavy metals: arsenic
lead: Lead - Pb | Heavy metals: lead
cadmium: Cadmium - Cd | Heavy metals: cadmium
gluten: Gluten content
ndma: NDMA (nitrosodimethylamine) | Nitrosamine, NDMA
deoxynivalenol: Mycotoxins: DON | DON - Deoxynivalenol
zearalenone: Mycotoxins: zearalenone | ZEA
ochratoxin_a: Mycotoxins: ochratoxin A | Ochratoxin A - OTA
aflatoxin_b1: Mycotoxins: aflatoxin B1 | Aflatoxin B1 (AFB1)
predicted_spirit_yield: Predicted Spirit Yield (PSY) | PSY - spirit yield | Spirit Yield (PSY), dry
fermentability: Fermentability (IoB) | Fermentability - wort | Fermentability %
fermentable_extract: Fermentable Extract (FE) | Fermentable extract, dry
glycosidic_nitrile: Glycosidic Nitrile (GN) | GN | Measurable glycosidic nitrile
cold_water_extract: Cold Water Extract, CWE
limit_dextrinase: Limit Dextrinase (total)
beta_amylase: Beta Amylase
gushing: Gushing (modified Carlsberg)
half_glassy: Half glassy corns
coagulable_nitrogen: Coagulable N
varietal_purity: Varietal purity (electrophoresis)
mealy: Mealy corns (cut test)
phenols: Phenols (total) | Peating level (phenols)
germinative_energy: Germinative Energy 4 ml
barley_moisture: Barley moisture, intake
barley_protein: Barley protein, intake
[captions]
supplier: Maltings | Supplier name | Manufactured by
malt: Product description | Malt grade | Malt product | Description
batch: Batch/Lot | Lot No | Batch number(s) | Malt batch | Lot ID | Batch No./Bin
certificate: CoA No | Certificate ref | Report number | Our analysis ref.
crop_year: Barley crop year | Crop/Season | Harvest (crop)
variety: Barley variety/ies | Malting barley variety | Barley type
produced_on: Date malted/kilned | Kiln date | Date of manufacture | Made on
analysed_on: Analysis completed on | Date of analysis | Lab test date
delivered_on: Despatch date | Delivery date | Date loaded | Shipped
best_before: Best before date | Best Before End | BB date
quantity: Net weight | Load weight | Delivered quantity | Qty (t)
order: Your P/O | Customer PO No. | Purchase order no.
customer: Customer name | Sold to | Deliver to | Brewery
[heads]
label: Test | Analysis | Malt Parameter | Specification item | Quality test
result: Result | Batch Result | As tested | Results obtained | Your batch
unit: Units | Unit | UoM
method: Test Method | Method | Ref. method
min: Min | Minimum | Low limit
max: Max | Maximum | High limit
spec: Specification | Spec | Customer spec. | Agreed spec
typical: Typical range | Typical | Usual range
previous: Last delivery
number: No | Item
remark: Complies | In spec? | Status
[titles]
batch: Certificate of Analysis | Malt Certificate of Analysis | Certificate of Analysis / Conformity | Malt Laboratory Certificate | Analysis of Malt Delivered
specification: Malt Product Sheet | Technical Data Sheet | Malt Specification
[sections]
physical: Physical Tests | Grain
chemical: Malt | Malt Analysis | Extract & Moisture
wort: Wort | Laboratory Wort
enzymes: Enzymes | Enzymatic Potential
nitrogen: Nitrogen / Protein | Protein
modification: Modification | Friabilimeter
contaminants: Food Safety | Residues & Contaminants
sieving: Screenings | Sieve Test
barley: Barley
malt: Malt
[basis]
dry: , dry basis | (dry basis) | , dry weight | , d.m. | - dry | (on dry)
asis: , as is | (as is basis) | , as-is | - as is | , as received
[unitbasis]
dry: % (dry basis) | % dry | %, d.m. | % w/w dry
asis: % (as is) | % as is | % w/w as is
[notes]
dry: Extract, nitrogen and protein results are reported on a dry basis. | All results other than moisture are on the dry basis.
[family]
EBC: Analysed to Analytica-EBC | Test methods: EBC | Methods of analysis: European Brewery Convention | EBC methods (Congress wort)
IoB: Methods of analysis: Institute of Brewing | Analysed to IoB Recommended Methods | Test methods: IoB
ASBC: Methods of analysis: American Society of Brewing Chemists | Test methods: ASBC | Analyzed per ASBC Methods of Analysis
[words]
clarity: clear | bright | slightly hazy | opalescent
odour: normal | clean, malty | satisfactory
filtration: normal | fast | good
nd: nd | not detected | N.D.
[x]
dear: Dear Sir or Madam, | Dear customer, | Dear brewer,
letter: Please find below the analysis of the malt loaded for you. | We have pleasure in reporting the analysis of the above lot.
regards: Yours faithfully, | Kind regards,
subject: Malt analysis | Your delivery of malt | Analysis of malt
date: Date | Date of issue
page: Page {p} of {q}
sieve: Sieve analysis | Screening test | Assortment
sievecols: Fraction ; % retained
uncert: U (k=2) | Uncertainty ± | Exp. uncertainty
loq: LOQ | Limit of quantification
reject: Reject limit | Rejection
contract: Contract value | Contract
ok: OK | Pass | Yes
dryfoot: on dry matter | calculated on dry matter | dry basis
asisfoot: on malt as is | as-is basis
legend: Key: | Abbreviations:
code: Code
tonnes: Tonnes in lot
composite: Analysis of the composite sample of all lots | Composite of the lots listed above
lots: Lots loaded ; Silo ; Tonnes
goods: Delivery note ; Item ; Article ; Quantity ; Packing ; Batch ; bulk ; bags 25 kg
analysis: Analysis of the goods delivered | Analytical values of the batch
sample: Sample no. ; Sample received ; Condition of sample ; Sampled by ; Seal ; intact ; customer
mail: From ; To ; Subject ; Sent
fax: FAX FROM ; TO ; PAGE
decl: Statements ; This product is not genetically modified and needs no labelling under Regulations (EC) No 1829/2003 and 1830/2003. ; Contains gluten from barley (allergen). Free from the other 13 allergens of Annex II to Regulation (EU) No 1169/2011. ; Residues and contaminants comply with Regulations (EC) No 396/2005 and (EU) 2023/915. ; Not treated with ionising radiation (Directive 1999/2/EC).
auto: This document was produced by computer and is valid without signature. | Issued electronically; no signature needed.
annex: Annex: residues and contaminants
summary: Assessment: the lot lies within the agreed limits. | Conclusion: the sample meets the order.
other: Silo ; Vehicle reg. ; Haulier ; Sampled on ; Container no. ; Weighbridge ticket
cover: Enclosed: certificate of analysis ({n} pages). | Please see the certificate on the following page.
"""

_DE = """
[labels]
moisture: Wassergehalt (Malz) | Wassergehalt bei Verladung | Malzfeuchtigkeit | Wasser im Malz | Feuchtigkeitsgehalt | Wassergehalt, Ofen
extract_fine_dry: Extrakt (Feinschrot){b} | Extrakt F{b}~either | Extraktgehalt Feinschrot{b} | Extrakt, Feinschrot{b} | Extrakt MEBAK, fein{b} | Extrakt FS (0,2 mm){b} | Malzextrakt Feinschrot{b}
extract_coarse_dry: Extrakt (Grobschrot){b} | Extraktgehalt Grobschrot{b} | Extrakt, Grobschrot{b} | Extrakt GS (1,0 mm){b}
extract_fine_as_is: Extrakt (Feinschrot){b} | Extraktgehalt Feinschrot{b} | Extrakt, Feinschrot{b}
extract_coarse_as_is: Extrakt (Grobschrot){b} | Extraktgehalt Grobschrot{b}
fine_coarse_difference: Extraktdifferenz Mehl/Schrot | Mehlschrotdifferenz | Extraktdifferenz F/G | Extraktdiff. (EBC) | Mehl-Schrotdifferenz
colour: Farbe (Würze) | Würzefarbe, photometrisch | Farbe Laborwürze | Farbe bei 430 nm | Farbe EBC
boiled_colour: Kochfarbe (Würze) | Farbe gekochte Laborwürze | Würzekochfarbe
total_nitrogen: Gesamtstickstoff (N){b} | Gesamtstickstoff, Dumas{b} | Stickstoffgehalt{b}
total_protein: Rohprotein (Nx6,25){b} | Gesamtprotein{b} | Malzprotein{b} | Proteingehalt{b} | Eiweiß im Malz{b} | Eiweißgehalt Malz{b}
soluble_nitrogen: Lösl. Stickstoff (Würze){b} | löslicher Gesamtstickstoff{b} | lösl. Gesamt-N{b} | Löslicher N im Malz{b}
soluble_protein: Lösl. Eiweiß{b} | lösliches Rohprotein{b} | Eiweiß gelöst{b}
ratio_kolbach: Kolbachzahl (ELG) | Eiweißlösungsgrad ELG | Eiweißlösungsgrad n. Kolbach | Kolbach-Zahl | Lösungsgrad Eiweiß
ratio_snr: Eiweißlösungsgrad ELG | Eiweißlösungsgrad, isotherm
fan: FAN (freier Amino-N) | freier Amino-N | Freier Aminostickstoff, Ninhydrin | freier Amino-Stickstoff FAN
friability: Mürbigkeit Friabilimeter | Friabilimeter, mürb | Friabilimeter-Mürbigkeit | Mürbigkeit, Friabilimeterwert
homogeneity: Homogenität Friabilimeter | Homogenität Malz
pug: Friabilimeter, teilglasig~either
whole_grains: Friabilimeter, ganze Körner | Ganze Körner (Friab.)
glassy_grains: Friabilimeter, ganzglasig | Ganzglasige Körner (Friabilimeter) | Ganzglasigkeit (Friab.)
dp: Diastatische Kraft DK | Diastatische Kraft Malz | Diastatische Kraft nach Windisch-Kolbach
alpha_amylase: Alpha-Amylase (ASBC) | α-Amylase-Aktivität DU | alpha-Amylase
beta_glucan: ß-Glucan (Würze) | β-Glucan Laborwürze | beta-Glucan in der Würze
viscosity: Viskosität Würze (8,6 %) | Viskosität, Laborwürze | Viskosität 8,6 °P | Würzeviskosität bei 20 °C
saccharification_time: Verzuckerungszeit (Jod) | Verzuckerung innerhalb | Verzuckerungszeit 70 °C
filtration: Filtrationsdauer | Ablauf der Laborwürze | Filtration Würze
turbidity: Trübung 90° | Würzetrübung 90°
clarity: Aussehen Würze | Klarheit Laborwürze
odour: Geruch Maische | Maischegeruch
wort_ph: pH-Wert (Würze) | pH Würze | pH-Wert Laborwürze | Würze pH-Wert
final_attenuation: Endvergärungsgrad, scheinbar | Endvergärungsgrad (EVGs) | EVG s | scheinb. Endvergärungsgrad
relative_extract_45: VZ 45 °C (Hartong) | Hartongzahl VZ 45 | Relativextrakt VZ 45 °C
sieve_over_2_8: Siebung > 2,8 mm | über 2,8 mm | Sortierung: > 2,8
sieve_2_5_to_2_8: Siebung 2,5 - 2,8 mm | 2,5 bis 2,8 mm
sieve_over_2_5: Siebung > 2,5 mm | Summe > 2,5 mm | Vollkorn > 2,5 mm
sieve_2_2_to_2_5: Siebung 2,2 - 2,5 mm | 2,2 bis 2,5 mm
sieve_under_2_2: Siebung < 2,2 mm | Ausputz (< 2,2 mm) | unter 2,2 mm
thousand_corn_weight: Tausendkorngewicht TKG | TKG (wfr.) | Tausendkornmasse TKM
hectolitre_weight: Hektolitergewicht HLG | hl-Gewicht Malz
foreign_matter: Fremdbestandteile | Besatz, Unkraut | Fremdbesatz Malz
broken_grains: Bruchkorn | Beschädigte Körner | Halbe/gebrochene Körner
dms_precursor: DMS-P (Vorläufer) | DMS-Vorläufer (DMS-P) | DMS-Precursor SMM
sulphur_dioxide: SO2 gesamt
arsenic: Arsen (As)
lead: Blei - Pb | Schwermetalle: Blei
cadmium: Cadmium (Cd) | Schwermetalle: Cadmium
ndma: NDMA (Nitrosamin) | Nitrosodimethylamin NDMA
deoxynivalenol: DON (Deoxynivalenol) | Mykotoxine: DON
zearalenone: ZEA (Zearalenon)
ochratoxin_a: OTA (Ochratoxin A)
aflatoxin_b1: Aflatoxin B1 (AFB1)
gushing: Gushingtest (MCT)
half_glassy: Friabilimeter, halbglasig
beta_amylase: beta-Amylase
coagulable_nitrogen: koag. Stickstoff
varietal_purity: Sortenreinheit (Elektrophorese)
barley_moisture: Gerste Wassergehalt
barley_protein: Gerste Eiweiß
[captions]
supplier: Mälzereibetrieb | Lieferwerk | Erzeuger
malt: Malzbezeichnung | Ware | Malz-Typ | Artikel/Sorte
batch: Charge/Silo | Chargen-Bez. | Ch.-Nr. | Malzcharge | Los-Nummer | Lot-Nr.
certificate: Analysennummer | Zertifikat Nr. | Untersuchungs-Nr.
crop_year: Ernte/Jahrgang | Gerste Ernte | Ernte-Jahr
variety: Gerste (Sorte) | Sorte/n | Braugerste
produced_on: Herstellung am | Darrdatum | Prod.-Datum
analysed_on: Analysedatum | Untersucht am | Datum Analyse
delivered_on: Verladedatum | Versanddatum | Lieferung am
best_before: Mindesthaltbarkeitsdatum | MHD bis | haltbar bis
quantity: Liefermenge netto | Gewicht netto | Menge (t)
order: Ihre Bestell-Nr. | Bestellnummer Kunde | Auftr.-Nr.
customer: Warenempfänger/Brauerei | Besteller/Kunde | Lieferung an
[heads]
label: Analysenmerkmal | Kriterium | Prüfmerkmal | Analyse | Parameter
result: Ergebnis | Analysenwert | Ist | Werte | Resultat
unit: Einheit | Einh. | Dim.
method: Analysenmethode | Methode | Norm
min: Min. | min | untere Grenze
max: Max. | max | obere Grenze
spec: Spezifikation | Soll | Vorgabe | Vereinbarung
typical: Übliche Werte | Richtbereich | Normbereich
previous: Vorlieferung
number: Nr. | Merkmal
remark: Bewertung | i.O.
[titles]
batch: Malzanalysenzertifikat | Werksattest | Analysenbericht Malz | Malzuntersuchung | Qualitätszertifikat
specification: Produktdatenblatt | Malzspezifikation
[sections]
physical: Kornuntersuchung | Mechanisch-physikalisch
chemical: Malz | Allgemeine Werte
wort: Laborwürze | Würze
enzymes: Enzyme
nitrogen: Eiweiß und Stickstoff
modification: Friabilimeter | Auflösung
contaminants: Rückstände und Kontaminanten
sieving: Siebanalyse
barley: Gerste
malt: Malz
[basis]
dry: , wfr. | (wfr) | i.TrS. | (TrS) | , wasserfrei | bez. auf TrS
asis: , lftr. | (lftr) | lufttrocken | im Original
[unitbasis]
dry: % wfr | % i.TrS. | % TrS. | % (wfr.)
asis: % lftr | % (lftr.)
[notes]
dry: Extrakt und Eiweiß sind auf wasserfreie Substanz berechnet. | Angaben bezogen auf Trockensubstanz (außer Wassergehalt).
[family]
EBC: Analysen nach EBC/MEBAK, Kongressmaische | Untersuchungsmethoden: Analytica-EBC | Methoden: MEBAK (Kongressmaischverfahren) | Analytik nach EBC
iso65: Maischverfahren: isotherme 65 °C-Maische (MEBAK) | Analysen nach MEBAK, Isotherme 65 °C-Maische
[words]
clarity: klar | leicht opal | blank
odour: normal | arteigen, rein | aromatisch
filtration: normal | rasch | zügig
nd: n. n. | nicht nachweisbar | n.b.
[x]
dear: Sehr geehrte Damen und Herren, | Guten Tag,
letter: zu o. g. Lieferung teilen wir Ihnen folgende Analysenwerte mit: | anbei die Analyse der für Sie verladenen Partie:
regards: Mit freundlichen Grüßen
subject: Malzanalyse | Ihre Malzlieferung | Analyse zur Lieferung
date: Datum | Ausstellungsdatum
page: Seite {p} von {q}
sieve: Sortierung | Siebanalyse
sievecols: Fraktion ; Anteil %
uncert: Messunsicherheit ± | U (k=2)
loq: BG | Bestimmungsgrenze
reject: Zurückweisung | Rückweisungsgrenze
contract: Vertragswert | lt. Kontrakt
ok: i.O. | ja | erfüllt
dryfoot: wasserfrei | bezogen auf Trockensubstanz
asisfoot: lufttrocken
legend: Abkürzungen: | Legende:
code: Kürzel
composite: Analyse der Sammelprobe aller Chargen | Sammelprobe aus den oben genannten Chargen
lots: Verladene Chargen ; Silo ; Tonnen
goods: Lieferschein ; Pos. ; Artikel ; Menge ; Gebinde ; Charge ; lose ; Sack 25 kg
analysis: Analysenwerte der gelieferten Ware | Analysenwerte der Charge
sample: Proben-Nr. ; Probeneingang ; Zustand der Probe ; Probenahme durch ; Siegel ; unversehrt ; Auftraggeber
mail: Von ; An ; Betreff ; Gesendet
fax: FAX VON ; AN ; SEITE
decl: Erklärungen ; Das Produkt ist nicht kennzeichnungspflichtig nach den Verordnungen (EG) Nr. 1829/2003 und 1830/2003. ; Enthält Gluten aus Gerste; frei von den übrigen 13 Allergenen nach Anhang II der Verordnung (EU) Nr. 1169/2011. ; Rückstände und Kontaminanten entsprechen den Verordnungen (EG) Nr. 396/2005 und (EU) 2023/915. ; Keine Behandlung mit ionisierender Strahlung (Richtlinie 1999/2/EG).
auto: Dieses Dokument wurde maschinell erstellt und ist ohne Unterschrift gültig.
annex: Anlage: Rückstände und Kontaminanten
summary: Beurteilung: Die Partie entspricht der Vereinbarung.
other: Silo ; Kfz-Kennzeichen ; Spediteur ; Probenahme am ; Container-Nr. ; Wiegeschein-Nr.
cover: Anlage: Analysenzertifikat ({n} Seiten). | Das Zertifikat finden Sie auf der folgenden Seite.
"""

TEXTS = {"en": _EN, "de": _DE}
