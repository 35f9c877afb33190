# ruff: noqa: E501
"""English and German wordings of the exam sheets.

Whoever works on the reading of sheets leaves this file unread, so that it can tell how well unseen words are read.
"""

from __future__ import annotations

_EN = """
[labels]
moisture: Moisture (105 °C, 3 h) | Moisture, oven method | Moist. | Loss on drying | Moisture (EBC 4.2) | H2O content | Malt, moisture of
extract_fine_dry: Extract yield, fine grist{b} | Yield of extract, 0.2 mm mill gap{b} | FG extract{b} | Extract, fine-ground malt{b} | D.B.F.G.~dry | Extract fine, EBC 4.5.1{b} | Extract (fine grist){b}
extract_coarse_dry: Extract yield, coarse grist{b} | CG extract{b} | D.B.C.G.~dry | Extract, coarsely ground malt{b} | Extract (coarse grist){b}
extract_fine_as_is: Extract yield, fine grist{b} | FG extract{b} | Extract (fine grist){b} | A.I.F.G.~asis
extract_coarse_as_is: Extract yield, coarse grist{b} | CG extract{b} | A.I.C.G.~asis
hwe_dry: Extract, hot water, 0.7 mm setting{b} | HWE @ 0.7 mm{b} | Hot water ext. (mill 0.7 mm){b} | H.W. Extract, 0.7 mm grind{b}
hwe_as_is: Extract, hot water, 0.7 mm setting{b} | HWE @ 0.7 mm{b} | Hot water ext. (mill 0.7 mm){b} | H.W. Extract, 0.7 mm grind{b}
hwe_fine_dry: HWE @ 0.2 mm{b} | Extract, hot water, 0.2 mm setting{b}
fine_coarse_difference: Difference between fine and coarse grist extract | FGCG | Extract difference (F minus C) | Diff. fine/coarse grist | F-C spread
colour: Colour, unboiled wort | Wort colour (430 nm) | Spectrophotometric colour | Colour (photometer) | Wort, colour of | Color of wort, lab mash
boiled_colour: Colour, boiled | Wort colour after 2 h boil | Post-boil colour | Boiled wort, colour of
total_nitrogen: Nitrogen, total (Dumas){b} | N, total{b} | Total nitrogen content of malt{b} | N{b}~either | Tot. N (Kjeldahl){b}
total_protein: Protein, total{b} | Total protein (6.25 × N){b} | Prot.{b} | Protein in malt, Kjeldahl{b} | Protein content, Dumas{b}
soluble_nitrogen: N, soluble{b} | Total sol. N{b} | Soluble nitrogen in wort{b} | Nitrogen, total soluble (TSN){b} | Permanently soluble nitrogen{b}~either
soluble_protein: Protein, wort soluble{b} | Soluble protein in wort{b} | Wort sol. protein{b} | SP{b}~either
ratio_kolbach: Index, Kolbach | Kolbach I. | Kolbach value (Kz.) | Proteolytic index (Kolbach) | Ratio SN/TN (Kolbach)
ratio_snr: Ratio, soluble N : total N | TSN/TN | SNR (65 °C mash) | Soluble N ratio | Nitrogen modification (SNR)
ratio_st: S : T | Soluble over total protein | Ratio sol./tot. protein (S/T) | SP/TP
fan: Amino nitrogen, free (ninhydrin) | FAN in laboratory wort | Free alpha amino N | Free amino nitrogen, wort | F A N
friability: Friability, friabilimeter | Friab. value | Friability test | FRI~either | Friabilimeter (8 min)
homogeneity: Homogeneity of friabilimeter residue | Homog. | Evenness (homogeneity) | Homogeneity, malt
pug: PUG (partly unmodified) | Grains, partly unmodified | Part. unmod. grains | Residue > 2.2 mm (PUG)~either
whole_grains: WUG | Whole grains (friabilimeter) | Corns, whole unmodified | Whole corns after friabilimeter
glassy_grains: Corns, glassy | Fully glassy corns | Completely vitreous kernels | Glassy, whole~either
dp: Power, diastatic | Diast. pwr. | Diastatic power, total | DP (diastase) | Diastatic pow.
alpha_amylase: Amylase (alpha) | α-Amylase (DU) | Dextrinising power | Dextrinizing units (alpha amylase) | a-amylase
beta_glucan: Glucan, beta- (wort) | β-Glucans, wort, FIA | Wort beta glucan content | β-glucan in laboratory wort | HMW beta-glucan, wort
beta_glucan_malt: Glucan, beta- (malt) | Total β-glucan of malt
viscosity: Visc. of wort, 20 °C | Viscosity, falling ball | Viscosity (wort, 8.6 %) | Wort, viscosity of
saccharification_time: Iodine normality reached after | Conversion (iodine) | Time to saccharify | Starch conversion time | Sacch'n time
filtration: Run-off of wort | Filtering time | Wort run-off time | Filtration of mash, time
turbidity: Wort haze | Turbidity, lab wort, 90° | Haze (wort)
clarity: Appearance, wort | Wort, clarity of | Clarity (visual) | Look of wort
odour: Mash aroma | Smell | Odour during mashing | Aroma
wort_ph: pH (20 °C) | pH, wort | Acidity (pH) of wort | pH of lab wort | Wort reaction, pH
final_attenuation: Final attenuation, app. | Attenuation, apparent final | AAL | Apparent final degree of attenuation | Att. limit (app.)
relative_extract_45: Extract, relative, 45 °C | Hartong (VZ 45) | Rel. extract at 45 °C | VZ-45 value
sieve_over_2_8: Sieve I (over 2.8 mm) | + 2.8 mm | Retained by 2.8 mm slots | Sorting: above 2.8 mm | ≥ 2.8 mm
sieve_2_5_to_2_8: Sieve II (2.8 to 2.5 mm) | 2.8/2.5 mm | Sorting: 2.5 up to 2.8 mm
sieve_over_2_5: Sieves I + II (over 2.5 mm) | + 2.5 mm | Total above 2.5 mm | ≥ 2.5 mm
sieve_2_2_to_2_5: Sieve III (2.5 to 2.2 mm) | 2.5/2.2 mm | Sorting: 2.2 up to 2.5 mm
sieve_under_2_2: Sieve IV (through 2.2 mm) | - 2.2 mm~either | Sorting: under 2.2 mm | Throughs 2.2 mm | Rejects < 2.2 mm
sieve_7_64: 7/64 in. | Plump, over 7/64" | On 7/64 inch sieve
sieve_6_64: 6/64 in. | Plump, over 6/64" | On 6/64 inch sieve
sieve_5_64: 5/64 in. | On 5/64 inch sieve
sieve_5_64_through: Thin, thru 5/64" | Through 5/64 inch sieve | Pan (thru 5/64)
thousand_corn_weight: Weight, thousand corns | TGW | 1000-corn mass | Mass of 1,000 kernels | TCW (as is)
hectolitre_weight: Weight, hectolitre | Bulk density (hl weight) | HL mass | Hectolitre mass
bushel_weight: Weight, bushel | Test wt. | Bulk weight per bushel
foreign_matter: Matter, foreign | Foreign seeds / matter | Impurities | Extraneous
broken_grains: Corns, broken | Half and broken corns | Damaged kernels | Skinned and broken
acrospire_length: Acrospire, mean length | Acrospire growth (mean)
lipoxygenase: LOX | Lipoxygenase activity
dms_precursor: Precursor, DMS (SMM) | DMS-Prec. | S-methylmethionine (as DMS)
sulphur_dioxide: Sulphite (SO2) | SO2, total | Sulphur dioxide residue
arsenic: Total arsenic | Arsenic, As
lead: Total lead | Lead, Pb
cadmium: Total cadmium | Cadmium, Cd
gluten: Gluten (R5 ELISA) | Total gluten
ndma: N-DMA | NDMA (nitrosamine) | Dimethylnitrosamine (NDMA)
deoxynivalenol: DON, mycotoxin | Deoxynivalenol, LC-MS | Mycotoxin: deoxynivalenol
zearalenone: ZEN | Zearalenone (ZEN)
ochratoxin_a: Ochratoxin-A | Mycotoxin: ochratoxin A
aflatoxin_b1: Aflatoxin-B1 | AFB1
predicted_spirit_yield: Spirit yield (predicted) | PSY, dry | Predicted spirit yld
fermentability: Fermentability, unboiled wort | Ferm. (IoB) | Fermentability of extract
fermentable_extract: Extract, fermentable | FE (fermentable extract)
glycosidic_nitrile: Nitrile, glycosidic | EPH (glycosidic nitrile) | G.N. (glycosidic nitrile)
cold_water_extract: Extract, cold water | C.W.E.
limit_dextrinase: Limit dextrinase activity
beta_amylase: Amylase (beta) | B-amylase activity
gushing: Gushing, overflow | MCT (gushing)
half_glassy: Corns, half glassy
coagulable_nitrogen: Nitrogen, coagulable
varietal_purity: Purity of variety | Variety purity
mealy: Corns, mealy
phenols: Phenolics, total
germinative_energy: Germ. energy | Germination (4 ml)
barley_moisture: Moisture of barley | Barley moist.
barley_protein: Barley protein (dry) | Protein of barley
[captions]
supplier: Supplied by | Malthouse | From (maltster)
malt: Commodity/grade | Malt (type) | Description of goods | Kind of malt | Article
batch: Lot ref. | Our lot no. | Batch/Lot No. | Malting batch | Production lot | Lot #
certificate: Analysis cert. no. | Lab report ref.
crop_year: Barley harvest | Crop (year) | From the harvest of | Season
variety: Variety/ies | Barley var. | Cultivar
produced_on: Kilned on | Date malted | Mfg. date | Kilning completed
analysed_on: Analysis completed | Date tested | Lab date | Date of testing
delivered_on: Date shipped | Despatched | Delivery made on
best_before: Best-before | Use before | Expires
quantity: Consignment weight | Amount | Net qty. | Tonnes shipped
order: Your order ref. | Cust. PO | PO no.
customer: Consignee / brewery | For | Sold to | Attn. brewery
[heads]
label: Test parameter | Measurand | Quality characteristic | Analysis item | Determination of
result: Our result | Analysed | Lab value | Figure found | Obtained
unit: Expressed in | Units of measure | U/M
method: Method used | Std. method | Method no.
min: Min. permitted | Lower spec. | not below
max: Max. permitted | Upper spec. | not above
spec: Spec. range | Agreed limits | Purchase spec. | Permitted
typical: Usual value | Norm | Customary
previous: Previous delivery | Lot before | Preceding lot
number: Line | Seq. | S/N
remark: Pass? | Verdict | Assessment
[titles]
batch: Malt Test Certificate | Statement of Malt Analysis | Quality record – malt | Analysis of malt as delivered | Malt lab sheet
specification: Malt purchase specification | Typical figures
[sections]
physical: Mechanical tests | Corn properties
chemical: Basic analysis | Malt, chemical
wort: Laboratory mash | Wort characteristics
enzymes: Enzyme power | Enzymic activity
nitrogen: Nitrogen balance | Protein modification
modification: Cell wall modification | Corn modification
contaminants: Safety parameters | Trace substances
sieving: Sorting | Size fractions
barley: Barley as received | Barley intake
malt: Malt as delivered | Malt made from it
[basis]
dry: , d.m. basis | (on dry malt) | d/b | , moisture free | (dry wt)
asis: , a.i. | (on malt as is) | undried | , as delivered
[unitbasis]
dry: % (on dry) | % db | % dry wt | % d/b
asis: % as rec'd | % (as-is) | % a/i
[notes]
dry: Except for moisture, chemical values of the malt are stated on the dry substance. | Extract, nitrogen and protein: on dry malt.
[family]
EBC: European Brewery Convention procedures (Analytica-EBC) apply | Method basis: Analytica-EBC, Congress mash | Tested per EBC
IoB: Institute of Brewing recommended methods apply (65 °C mash, 0.7 mm) | Method basis: IoB | Results by I.o.B. recommended methods
ASBC: ASBC procedures apply | Method basis: ASBC Methods of Analysis | Run by ASBC methods
[words]
clarity: clear to bright | sl. opalescent | hazy
odour: malty, clean | sweet | as usual
filtration: good | rapid
nd: not found | n/d | none detected
[x]
carried: carried over from page 1 | brought forward
continued: continued overleaf | to be continued on page 2
mean: Mean | Average | Weighted mean
lowest: Lowest | Min. of batches
highest: Highest | Max. of batches
own: Maltings lab | Own laboratory
other: Independent lab | Referee lab
certified: Certified value | Value certified
now: This delivery | Present lot
before: Previous delivery | Last delivery
crop: Crop {y} | New crop {y}
oldcrop: Average crop {y} | Mean of crop {y}
target: Target | Aim
inunit: in {u}: | Results in {u} | Unit: {u}
watermark: COPY | ORIGINAL | CONTROLLED DOCUMENT
det: 1st det. ; 2nd det. ; Mean of both
ok: OK | pass | conforms
intro: We have examined the sample that you were sent and report as follows. | The lot was sampled at loading and tested in our laboratory.
say: The {l} was {v}. | For {l} we found {v}. | {l} came to {v}.
small: Further figures: | Also determined:
note: Delivery note ; Delivery note no. ; Gross weight ; Tare ; Net weight ; Pallets ; Bags of 25 kg ; Weighbridge ticket ; Seal no. ; Telephone ; Fax ; VAT no. ; Total of page ; Item ; Price per tonne ; Amount
intake: Barley intake report ; Sample no. ; Sieving over 2.5 mm
"""

_DE = """
[labels]
moisture: Wasser, Trockenschrank 105 °C | Feuchtegehalt | Wassergeh. | Trocknungsverlust | Wasser (EBC 4.2) | Malzfeuchte
extract_fine_dry: Ausbeute Feinschrot{b} | Extrakt, 0,2 mm Mahlspalt{b} | Extrakt (fein geschrotet){b} | Feinschrot-Extraktgehalt{b} | Extr. Feinschr.{b} | Extraktausbeute fein (EBC 4.5.1){b}
extract_coarse_dry: Ausbeute Grobschrot{b} | Extrakt, 1,0 mm Mahlspalt{b} | Extrakt (grob geschrotet){b} | Extr. Grobschr.{b}
extract_fine_as_is: Ausbeute Feinschrot{b} | Extrakt (fein geschrotet){b} | Extr. Feinschr.{b}
extract_coarse_as_is: Ausbeute Grobschrot{b} | Extr. Grobschr.{b}
fine_coarse_difference: Fein-/Grobschrotdifferenz | Ausbeutedifferenz fein/grob | Differenz Fein-Grob | Mehl-Schrot-Diff. | M-S-Diff.
colour: Farbe, ungekochte Würze | Würzefarbe 430 nm | Farbtiefe der Würze | Farbe Kongreßwürze | Farbe, spektralphotometrisch
boiled_colour: Farbe, gekochte Würze | Kochfarbe (2 h) | Koch-Farbe | Farbe nach 2 h Kochen
total_nitrogen: Stickstoff, gesamt{b} | N-Gehalt{b} | Gesamt-N (Dumas){b} | Ges.-N{b} | Gesamtstickstoff nach Kjeldahl{b}
total_protein: Eiweiß, gesamt{b} | Roheiweiß{b} | Protein (Faktor 6,25){b} | Eiweiß (N × 6,25){b} | Eiweißgeh.{b} | Malzeiweiß{b}
soluble_nitrogen: Stickstoff, löslich{b} | Lösl. N der Würze{b} | Gesamtlöslicher Stickstoff{b} | N löslich{b} | Würze-N{b}~either
soluble_protein: Eiweiß, löslich{b} | Lösl. Eiweiß in Würze{b} | Würzeeiweiß{b}
ratio_kolbach: Kolbachindex (ELG) | Eiweißlösung nach Kolbach | Kolbach-Z. | Lösungsgrad n. Kolbach | ELG n. Kolbach
ratio_snr: Eiweißlösungsgrad (isoth. 65 °C) | Eiweißlösungsgrad 65 °C | ELG (65 °C)
fan: Aminostickstoff, frei | Freier Aminostickstoff (Ninhydrin) | FAN der Würze | frei. Amino-N | α-Amino-Stickstoff
friability: Mürbigkeit (Friab.) | Mürbigkeitswert | Friabilim. | Malzmürbigkeit | Friabilimeter, mürbe
homogeneity: Homogenität des Malzes | Homog. | Homogenität (F.)
pug: Körner, teilglasig~either | Teilglasigkeit (Friabilimeter)~either | Rückstand > 2,2 mm (PUG)~either
whole_grains: Ganzkörner | Ganze Körner im Friabilimeter | ungelöste ganze Körner
glassy_grains: Körner, ganzglasig | Ganzglasigkeit (Friabilimeter) | Glasige Körner, ganz | ggl. Körner~either
dp: Kraft, diastatische | Diast. Kraft, gesamt | Diastase | Diastatische Kraft (W.-K.) | Diastat. Kraft
alpha_amylase: Amylase, α- | α-Amyl. | a-Amylase | Dextrinierungseinheiten (α-Amylase)
beta_glucan: Glucan, β- (Würze) | β-Glucan fluorim. | Betaglucan in Würze | ß-Glukan | b-Glucan (Laborwürze)
viscosity: Würze-Viskosität 20 °C | Visk. Würze | Zähigkeit (Viskosität) der Würze | Viskosität (Kugelfall) | Viskosität bei 8,6 % Extr.
saccharification_time: Zeit bis zur Verzuckerung | Jodnormal nach | Verz.-Dauer | Verzuckerung bei 70 °C
filtration: Würzeablauf | Ablaufzeit | Filtrierdauer | Läuterdauer
turbidity: Würzetrübung | Trübung, 90° Streulicht
clarity: Würze, Klarheit | Optik der Würze | Klarheit (visuell)
odour: Geruch beim Maischen | Maische, Geruch | Maischeduft
wort_ph: pH (20 °C) | pH, Würze | Säuregrad pH | pH Kongreßwürze | Würze (pH)
final_attenuation: Vergärungsgrad, scheinbarer End- | EVG (scheinb.) | Endvergärungsgr. s. | Scheinbare Endvergärung | Vs,end
relative_extract_45: Extrakt, relativer, 45 °C | Hartong (VZ 45) | VZ45 | Verhältniszahl 45 °C
sieve_over_2_8: Sieb I (über 2,8 mm) | + 2,8 mm | Rückstand auf 2,8 mm | ≥ 2,8 mm
sieve_2_5_to_2_8: Sieb II (2,8 bis 2,5 mm) | 2,8/2,5 mm
sieve_over_2_5: Sieb I + II (über 2,5 mm) | Vollkornanteil > 2,5 mm | ≥ 2,5 mm
sieve_2_2_to_2_5: Sieb III (2,5 bis 2,2 mm) | 2,5/2,2 mm
sieve_under_2_2: Sieb IV (Durchfall 2,2 mm) | Durchgang 2,2 mm | Abputz unter 2,2 mm
thousand_corn_weight: Gewicht von 1000 Körnern | TKM | 1000-Kornmasse
hectolitre_weight: Gewicht, Hektoliter- | HLG | Schüttgewicht (hl) | hl-Masse
foreign_matter: Besatz, fremd | Fremdkörper | Unkrautsamen und Besatz
broken_grains: Körner, gebrochen | Kornbruch | Halbe Körner, Bruch
dms_precursor: DMS-Vorl. | Vorläufer DMS (SMM) | S-Methylmethionin (als DMS)
lead: Blei, Pb
cadmium: Cadmium, Cd
arsenic: Arsen, As
ndma: N-DMA | Nitrosamin NDMA
deoxynivalenol: Mykotoxin DON | Desoxynivalenol
zearalenone: ZEA | Mykotoxin Zearalenon
ochratoxin_a: Ochratoxin-A | Mykotoxin OTA
gushing: Gushing, Überlauf
half_glassy: Körner, halbglasig
beta_amylase: Amylase, β-
coagulable_nitrogen: Stickstoff, koagulierbar
varietal_purity: Sortenechtheit
germinative_energy: Keimfähigkeit
barley_moisture: Gerste, Wasser
barley_protein: Gerste, Eiweiß wfr.
[captions]
supplier: Liefernde Mälzerei | Malzhersteller | Lieferfirma
malt: Erzeugnis | Malzart | Artikelbezeichnung | Type
batch: Chargenkennung | Los/Charge | Lotnummer | Ch.-B. | Produktionslos | Unsere Charge
certificate: Attest-Nr. | Zeugnis Nr. | Laborbericht-Nr.
crop_year: Gerstenernte | aus Ernte | Ernte (Jahr)
variety: Sorte(n) | Braugerstensorte | Gerstensorten
produced_on: Darrtag | Produziert am | Mälzungsdatum | Abgedarrt am
analysed_on: Analyse vom | Labordatum | geprüft am | Tag der Untersuchung
delivered_on: Ausgeliefert am | Liefertag | Verladen am
best_before: verwendbar bis | Mindesthaltb. | Haltbarkeit bis
quantity: Netto | Gelieferte Menge | Lieferumfang | Tonnage
order: Best.-Nr. | Kundenauftrag | Bestellzeichen
customer: Abnehmer | Warenempfänger | Besteller
[heads]
label: Untersuchte Größe | Analysenpunkt | Messgröße | Prüfparameter
result: Laborwert | Ermittelt | Gefunden | Analysenergebnis
unit: Maß-Einh. | Angabe in | ME
method: Methode Nr. | Prüfvorschrift | Verf.
min: mind. | Minimalwert | nicht unter
max: höchst. | Maximalwert | nicht über
spec: Liefervorgabe | Vereinbart | Soll-Bereich | zulässig
typical: Erfahrungswert | Üblich | Norm
previous: Vorlieferung | Vorige Partie | Lieferung davor
number: Zeile | Lfd.
remark: Beurteilung | Urteil
[titles]
batch: Malzattest | Werksanalyse Malz | Qualitätszeugnis Malz | Befund der Malzuntersuchung
specification: Liefervorgabe Malz
[sections]
physical: Kornbeschaffenheit | Äußere Merkmale
chemical: Grundanalyse | Malz, chemisch
wort: Labormaische und Würze | Würzekennzahlen
enzymes: Enzymkräfte
nitrogen: Stickstoffhaushalt | Proteolyse
modification: Zellwandlösung | Kornauflösung
contaminants: Kontaminanten | Sicherheitswerte
sieving: Siebfraktionen | Kornsortierung
barley: Gerste (Annahme) | Verarbeitete Gerste
malt: Fertigmalz | Malz (Auslieferung)
[basis]
dry: in TrS | (bez. TrS) | wasserfr. | , a. Tr.S. | (Trockenmasse)
asis: luftt. | , luftr. | (lufttr.) | im Anlieferungszustand
[unitbasis]
dry: % i. Tr.S. | % TS | % (i.TrS) | % wasserfrei
asis: % lufttr. Malz | % luftr. | % (lufttr.)
[notes]
dry: Extrakt-, Stickstoff- und Eiweißwerte sind wasserfrei angegeben.
[family]
EBC: Methodik: Analytica-EBC | Kongressmaische nach EBC/MEBAK | Untersucht gemäß EBC
iso65: Maische isotherm 65 °C | Laborwürze nach isothermem 65-°C-Verfahren (MEBAK) | 65 °C isotherm gemaischt (R-207.00.002)
[words]
clarity: klar bis blank | schw. opal | trüb
odour: malzig, rein | wie üblich | unauffällig
filtration: zügig | gut
nd: nicht best. | n.nachw. | nicht gefunden
[x]
carried: Übertrag von Seite 1 | Übertrag
continued: Fortsetzung auf Seite 2 | weiter nächste Seite
mean: Mittel | Durchschnitt
lowest: Kleinster Wert | Tiefstwert
highest: Größter Wert | Höchstwert
own: Eigenes Labor | Betriebslabor
other: Fremdlabor | Schiedslabor
certified: Zertifizierter Wert | Attestwert
now: Diese Lieferung | Aktuelle Partie
before: Vorige Lieferung | Letzte Lieferung
crop: Ernte {y} | Neue Ernte {y}
oldcrop: Mittel Ernte {y} | Durchschnitt Ernte {y}
target: Ziel | Zielwert
inunit: in {u}: | Angaben in {u} | Einheit: {u}
watermark: KOPIE | ORIGINAL | VERTRAULICH
det: 1. Best. ; 2. Best. ; Mittelwert
ok: i.O. | erfüllt | OK
intro: Wir haben das übersandte Muster untersucht und berichten wie folgt. | Die Partie wurde bei der Verladung bemustert und in unserem Labor geprüft.
say: {l} beträgt {v}. | Für {l} wurden {v} ermittelt. | {l} liegt bei {v}.
small: Weitere Werte: | Ferner bestimmt:
note: Lieferschein ; Lieferschein-Nr. ; Brutto ; Tara ; Nettogewicht ; Paletten ; Säcke zu 25 kg ; Wiegeschein ; Plomben-Nr. ; Telefon ; Telefax ; USt-IdNr. ; Seitensumme ; Position ; Preis je Tonne ; Betrag
intake: Gerstenannahme ; Muster-Nr. ; Sortierung über 2,5 mm
"""

TEXTS = {"en": _EN, "de": _DE}
