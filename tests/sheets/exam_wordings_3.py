# ruff: noqa: E501
"""Czech and Danish wordings of the exam sheets; unread by whoever works on the reading of sheets."""

from __future__ import annotations

_CS = """
[labels]
moisture: Vlhkost (105 °C, 3 h) | Ztráta sušením | Vlhk. | Vlhkost, sušárna | Voda, obsah | Vlhkost (EBC 4.2)
extract_fine_dry: Extrakt, mletí 0,2 mm{b} | Výtěžek extraktu, moučka{b} | Extr. jemný{b} | Extrakt (jemně mletý){b} | Extrakt sladu, jemný šrot{b}
extract_coarse_dry: Extrakt, mletí 1,0 mm{b} | Extr. hrubý{b} | Extrakt (hrubě mletý){b}
extract_fine_as_is: Extr. jemný{b} | Extrakt (jemně mletý){b}
extract_coarse_as_is: Extr. hrubý{b} | Extrakt (hrubě mletý){b}
fine_coarse_difference: Diference extraktů | Rozdíl jemné/hrubé mletí | Rozdíl extraktů (moučka - šrot) | Dif. J/H
colour: Barva, nepovařená sladina | Barva (430 nm) | Sladina, barva | Barva fotometricky
boiled_colour: Barva, povařená sladina | Barva po 2 h varu | Barva po varu
total_nitrogen: Dusík, celkem{b} | Celk. N{b} | Dusík (Dumas){b} | Obsah dusíku ve sladu{b}
total_protein: Bílkoviny, celkové{b} | Dusíkaté látky (N × 6,25){b} | NL{b}~either | Bílkoviny sladu{b} | Celk. bílkoviny{b}
soluble_nitrogen: Dusík, rozpustný{b} | Rozp. N{b} | Rozpustný dusík sladiny{b}
soluble_protein: Bílkoviny, rozpustné{b} | Rozp. NL{b}~either
ratio_kolbach: Kolbach (číslo) | Kolbachovo č. | Relativní rozpustnost dusíku (Kolbach) | KČ (Kolbach)
fan: Aminodusík, volný | Volný α-aminodusík | Aminodusík (ninhydrin) | FAN ve sladině
friability: Friab. | Friabilita (8 min) | Křehkost sladu | Friabilimetr
homogeneity: Homog. | Homogenita sladu | Stejnoměrnost (homogenita)
glassy_grains: Zrna, sklovitá | Zrna zcela sklovitá | Podíl sklovitých zrn
whole_grains: Zrna, celá | Celá zrna (friabilimetr)
dp: Mohutnost, diastatická | Diastatická mohut. | Diastatická aktivita | Diastáza
alpha_amylase: Amylasa, α- | α-amyl. | Dextrinogenní jednotky (α-amylasa)
beta_glucan: Glukany, β- (sladina) | β-glukan FIA | Betaglukan sladiny
viscosity: Visk. sladiny | Viskozita, Höppler | Sladina, viskozita
saccharification_time: Zcukřeno za | Zcukření rmutu, doba | Čas zcukření
filtration: Doba filtrace | Stékání, doba | Doba scezení
turbidity: Zákal 90° | Sladina, zákal
clarity: Sladina, čirost | Sladina, vzhled
odour: Rmut, vůně | Pach rmutu
wort_ph: pH (20 °C) | pH, sladina | Kyselost pH
final_attenuation: Prokvašení, dosažitelné zdánlivé | DSP zdánl. | Konečné prokvašení (zdánlivé)
relative_extract_45: Extrakt, relativní, 45 °C | Hartong 45 °C | VZ45
sieve_over_2_8: Síto I (nad 2,8 mm) | + 2,8 mm | Zůstatek na 2,8 mm | ≥ 2,8 mm
sieve_2_5_to_2_8: Síto II (2,8 až 2,5 mm) | 2,8/2,5 mm
sieve_over_2_5: Síto I + II (nad 2,5 mm) | Přepad I + II > 2,5 mm | ≥ 2,5 mm
sieve_2_2_to_2_5: Síto III (2,5 až 2,2 mm) | 2,5/2,2 mm
sieve_under_2_2: Propad 2,2 mm | Podsítné < 2,2 mm | Propad pod 2,2 mm
thousand_corn_weight: Hmotnost, 1000 zrn | H.T.Z. | Tisíc zrn, hmotnost
hectolitre_weight: Hl váha | Hmotnost hektolitru
foreign_matter: Příměsi, cizí | Cizí semena a nečistoty
broken_grains: Zrna, zlomky | Půlky zrn
dms_precursor: PDMS | Prekurzory DMS
deoxynivalenol: Mykotoxin DON
lead: Olovo, Pb
ndma: N-DMA | Nitrosamin NDMA
half_glassy: Zrna, polosklovitá
barley_moisture: Vlhkost ječmene
barley_protein: Bílkoviny ječmene
[captions]
supplier: Vyrábí sladovna | Dodává
malt: Sortiment | Zboží | Druh zboží
batch: Označení šarže | Šarže/lot | Výrobní šarže | Lot
certificate: Atest č. | Č. rozboru
crop_year: Sklizeň ječmene | Sklizňový rok
variety: Odrůda(y) | Odrůdy ječmene
produced_on: Odhvozděno | Vyrobeno dne
analysed_on: Rozbor ze dne | Zkoušeno dne
delivered_on: Expedováno | Dodávka ze dne
best_before: Trvanlivost | Použít do
quantity: Dodané množství | Netto
order: Vaše objednávka | Obj.
customer: Příjemce | Pro pivovar
[heads]
label: Stanovovaný znak | Zkoušený parametr
result: Zjištěná hodnota | Nález
unit: Vyjádřeno v | Měr. jedn.
method: Metoda č. | Zkušební postup
min: nejméně | Dolní mez
max: nejvýše | Horní mez
spec: Dohodnuté meze | Přípustné
typical: Běžně | Zkušenostní hodnota
previous: Předchozí dodávka | Šarže předtím
number: Poř.
remark: Hodnocení
[titles]
batch: Atest jakosti sladu | Laboratorní list sladu | Analýza dodaného sladu
[sections]
physical: Vlastnosti zrna
chemical: Základní rozbor
wort: Laboratorní rmut
enzymes: Enzymatická síla
nitrogen: Dusíková bilance
modification: Rozluštění zrna
contaminants: Nezávadnost
sieving: Sítové frakce
barley: Přijatý ječmen
malt: Hotový slad
[basis]
dry: , v suš. | (suš.) | v suš. sladu
asis: , původní slad | (pův.)
[unitbasis]
dry: % suš | % (v suš.) | % s.
asis: % pův.
[notes]
dry: Extrakt, dusík a bílkoviny jsou udány v sušině sladu.
[family]
EBC: Metodicky: Analytica-EBC | Dle EBC, kongresní rmut
[words]
clarity: čirá, jiskrná | slabý zákal
odour: sladová, čistá | obvyklá
filtration: dobré | rychlá
nd: nenal. | n.d.
[x]
carried: Převod ze strany 1
continued: pokračování na straně 2
mean: Průměr
lowest: Nejnižší
highest: Nejvyšší
own: Vlastní laboratoř
other: Nezávislá laboratoř
certified: Certifikovaná hodnota
now: Tato dodávka
before: Předchozí dodávka
crop: Sklizeň {y}
oldcrop: Průměr sklizně {y}
target: Cílová hodnota | Cíl
inunit: v {u}: | Vyjádřeno v {u} | Jednotka: {u}
watermark: KOPIE | ORIGINÁL
det: 1. stan. ; 2. stan. ; Průměr
ok: OK | vyhovuje
intro: Zaslaný vzorek jsme vyšetřili a sdělujeme následující.
say: {l} činí {v}. | Pro {l} bylo zjištěno {v}.
small: Další hodnoty: | Dále stanoveno:
note: Dodací list ; Dodací list č. ; Brutto ; Tára ; Čistá hmotnost ; Palety ; Pytle po 25 kg ; Vážní lístek ; Plomba č. ; Telefon ; Fax ; DIČ ; Součet strany ; Položka ; Cena za tunu ; Částka
intake: Příjem ječmene ; Vzorek č. ; Přepad nad 2,5 mm
"""

_DA = """
[labels]
moisture: Vand (105 °C, 3 t) | Tørretab | Fugt | Vand, ovntørring | Vand (EBC 4.2)
extract_fine_dry: Ekstrakt, formaling 0,2 mm{b} | Udbytte fin{b} | Ekstr. fin{b} | Ekstrakt (fint formalet){b} | Finmelsekstrakt{b}
extract_coarse_dry: Ekstrakt, formaling 1,0 mm{b} | Udbytte grov{b} | Ekstr. grov{b}
extract_fine_as_is: Udbytte fin{b} | Ekstr. fin{b}
extract_coarse_as_is: Udbytte grov{b} | Ekstr. grov{b}
fine_coarse_difference: Forskel fin/grov | F-G forskel | Ekstraktforskel (fin - grov) | Differens i ekstrakt F/G
colour: Farve, ukogt urt | Farve (430 nm) | Urt, farve | Farve fotometrisk
boiled_colour: Kogefarve | Farve efter 2 timers kogning
total_nitrogen: Kvælstof, total{b} | Tot. N{b} | N i malt (Dumas){b} | Kvælstof i malt{b}
total_protein: Råprotein (N × 6,25){b} | Tot. protein{b} | Protein i malt{b}
soluble_nitrogen: Opl. N{b} | Opløst kvælstof{b} | Kvælstof, opl. i urt{b}
soluble_protein: Opløst protein{b} | Protein, opl.{b}
ratio_kolbach: Kolbach (tal) | Proteinopløsning (Kolbach) | Kolbachs tal
fan: Aminokvælstof, fri (ninhydrin) | Fri amino-N | FAN i urt | α-aminokvælstof
friability: Friab. | Friabilitet (8 min) | Sprødhed (friabilitet)
homogeneity: Homog. | Homogenitet (friabilimeter) | Ensartethed (homogenitet)
glassy_grains: Kerner, glasagtige | Helglasagtige kerner | Glaserede kerner
whole_grains: Kerner, hele | Hele kerner (friabilimeter)
dp: Kraft, diastatisk | Diast. kraft | Diastase
alpha_amylase: Amylase, alfa- | α-amyl. | Dextrinenheder (α-amylase)
beta_glucan: Glucan, beta- (urt) | β-glucan (FIA) | Betaglukan i urt
viscosity: Visk. urt | Viskositet, kuglefald | Urt, viskositet
saccharification_time: Forsukret efter | Jodnormal efter | Forsukringens varighed
filtration: Urtafløb | Afløbstid | Filtreringsvarighed
turbidity: Urt, uklarhed | Turbiditet (90°)
clarity: Urt, klarhed | Urt, udseende
odour: Lugt ved mæskning | Mæsk, lugt
wort_ph: pH (20 °C) | pH, urt | Surhedsgrad pH
final_attenuation: Slutforgæring, tils. | Forgæringsgrad, tilsyneladende slut- | Endelig forgæringsgrad (tilsyneladende)
relative_extract_45: Ekstrakt, relativ, 45 °C | Hartong ved 45 °C | VZ45
sieve_over_2_8: Sold I (over 2,8 mm) | + 2,8 mm | På 2,8 mm sold | ≥ 2,8 mm
sieve_2_5_to_2_8: Sold II (2,8 til 2,5 mm) | 2,8/2,5 mm
sieve_over_2_5: Sold I + II (over 2,5 mm) | Fyldige kerner > 2,5 mm | ≥ 2,5 mm
sieve_2_2_to_2_5: Sold III (2,5 til 2,2 mm) | 2,5/2,2 mm
sieve_under_2_2: Gennemfald 2,2 mm | Under 2,2 mm sold | Afrens < 2,2 mm
thousand_corn_weight: Vægt af 1000 kerner | T.K.V. | Tusindkornsmasse
hectolitre_weight: Rumvægt | hl-masse
foreign_matter: Iblanding | Fremmed materiale
broken_grains: Kerner, knækkede | Halve kerner
dms_precursor: Forløber DMS | DMS-forl.
deoxynivalenol: Mykotoksin DON
ochratoxin_a: Mykotoksin OTA
lead: Bly, Pb
ndma: N-DMA | Nitrosamin NDMA
half_glassy: Kerner, halvglasagtige
barley_moisture: Vand i byg
barley_protein: Protein i byg
[captions]
supplier: Leveret af | Maltfabrik
malt: Vareart | Artikel
batch: Lotkode | Vores parti | Batchkode | Produktionsparti
certificate: Analysebevis nr. | Rapport nr.
crop_year: Byghøst | Høst (år)
variety: Bygsort(er) | Sorter
produced_on: Tørret den | Maltet den
analysed_on: Analyse af | Undersøgt den | Laboratoriedato
delivered_on: Sendt den | Læsset den
best_before: Mindst holdbar til og med | Anvendes før
quantity: Leveret mængde | Netto
customer: Leveret til
[heads]
label: Undersøgt for | Målt egenskab
result: Laboratorieværdi | Målt
unit: Udtrykt i | Måleenhed
method: Metode nr. | Forskrift
min: ikke under | Nedre
max: ikke over | Øvre
spec: Aftalte grænser | Tilladt
typical: Sædvanlig | Erfaringstal
previous: Forrige levering | Parti før
number: Linje
remark: Vurdering
[titles]
batch: Maltattest | Analyse af leveret malt | Laboratorieark malt
[sections]
physical: Kerneegenskaber
chemical: Grundanalyse
wort: Laboratoriemæsk
enzymes: Enzymkraft
nitrogen: Kvælstofbalance
modification: Kerneopløsning
contaminants: Fødevaresikkerhed
sieving: Soldfraktioner
barley: Modtaget byg
malt: Færdig malt
[basis]
dry: , t.s. | (tørst.) | i maltens tørstof
asis: , som leveret | (utørret)
[unitbasis]
dry: % t.s. | % i tørst. | % (t.s.)
asis: % som leveret
[notes]
dry: Ekstrakt, kvælstof og protein er angivet i tørstof.
[family]
EBC: Metodik: Analytica-EBC | Efter EBC, kongresmæsk
[words]
clarity: blank | svagt opal
odour: maltagtig, ren | sædvanlig
filtration: god | hurtig
nd: ikke påv. | i.p.
[x]
carried: Transport fra side 1
continued: fortsættes på side 2
mean: Gennemsnit | Middel
lowest: Laveste
highest: Højeste
own: Eget laboratorium
other: Uafhængigt laboratorium
certified: Certificeret værdi
now: Denne levering
before: Forrige levering
crop: Høst {y}
oldcrop: Middel af høst {y}
target: Mål | Målværdi
inunit: i {u}: | Udtrykt i {u} | Enhed: {u}
watermark: KOPI | ORIGINAL
det: 1. best. ; 2. best. ; Middel
ok: OK | godkendt
intro: Vi har undersøgt den tilsendte prøve og rapporterer som følger.
say: {l} er {v}. | For {l} fandt vi {v}.
small: Øvrige værdier: | Desuden bestemt:
note: Følgeseddel ; Følgeseddel nr. ; Brutto ; Tara ; Nettovægt ; Paller ; Sække à 25 kg ; Vejeseddel ; Plombe nr. ; Telefon ; Fax ; CVR-nr. ; Sidetotal ; Linje ; Pris pr. ton ; Beløb
intake: Bygmodtagelse ; Prøve nr. ; Sortering over 2,5 mm
"""

TEXTS = {"cs": _CS, "da": _DA}
