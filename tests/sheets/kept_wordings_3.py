"""Wordings that are kept aside, in Danish and Italian."""

from __future__ import annotations

_DA = """
[labels]
moisture: Vandprocent | Vand i malt
extract_fine_dry: Ekstraktudbytte fin{b} | Ekstrakt, finmalet{b}
extract_coarse_dry: Ekstrakt, grovmalet{b}
extract_fine_as_is: Ekstrakt, finmalet{b}
fine_coarse_difference: Ekstraktforskel fin-grov | F/G-differens
colour: Urtens farve | Maltfarve
boiled_colour: Farve, kogt urt
total_nitrogen: N total{b}
total_protein: Protein, total{b} | Proteinindhold{b}
soluble_nitrogen: Kvælstof, opløseligt{b}
soluble_protein: Protein, opløseligt{b}
ratio_kolbach: Kolbach-tal | Kolbachs indeks
fan: Frit α-aminokvælstof | Aminokvælstof, frit
friability: Friabilitet (friabilimeter) | Skørhed (friabilitet)
homogeneity: Homogenitetsgrad
glassy_grains: Helt glasagtige kerner
dp: Diastatisk kraft WK
alpha_amylase: Alfaamylase
beta_glucan: Betaglucan i urt | β-glucanindhold
viscosity: Viskositet (8,6 %)
saccharification_time: Tid til forsukring
filtration: Filtrerbarhed (tid)
clarity: Udseende af urt
odour: Lugt af mæsk
wort_ph: Urtens pH | pH-værdi, urt
final_attenuation: Slutforgæring, tilsyneladende
relative_extract_45: Relativ ekstrakt 45 °C
sieve_over_2_8: over 2,8 mm
sieve_2_5_to_2_8: mellem 2,5 og 2,8 mm
sieve_over_2_5: over 2,5 mm
sieve_2_2_to_2_5: mellem 2,2 og 2,5 mm
sieve_under_2_2: under 2,2 mm
thousand_corn_weight: 1000-kornsvægt
hectolitre_weight: Rumvægt (hl)
foreign_matter: Fremmedlegemer
broken_grains: Brudkerner
dms_precursor: DMS-prækursor
[captions]
supplier: Maltleverandør
malt: Malt | Varebetegnelse
batch: Parti | Batch nr.
certificate: Attest nr.
crop_year: Høst fra
variety: Byg
produced_on: Produceret den
analysed_on: Dato for analyse
delivered_on: Afsendt den
best_before: Holdbar til
quantity: Vægt
order: Bestilling
customer: Bryggeri
[heads]
label: Analysepunkt | Egenskaber
result: Fundet | Analyseresultat
unit: Enh.
method: Fremgangsmåde
min: Nedre grænse
max: Øvre grænse
spec: Tolerance
typical: Normalværdi
previous: Sidste høst
[titles]
batch: Analyseattest | Analysebevis malt
specification: Datablad for malt
[basis]
dry: (tørstof) | på tørstof | (i TS)
asis: (som er) | som modtaget
[unitbasis]
dry: % af TS
asis: % lufttørt
[family]
EBC: Bestemt efter EBC
[words]
clarity: opaliserende
odour: typisk
filtration: langsom
nd: ikke fundet
"""

_IT = """
[labels]
moisture: Acqua | Umidità residua
extract_fine_dry: Resa macinazione fine{b} | Estratto, macinato fine{b}
extract_coarse_dry: Estratto, macinato grosso{b}
extract_fine_as_is: Estratto, macinato fine{b}
fine_coarse_difference: Diff. F-G estratto | Differenza fine/grosso
colour: Colore mosto congresso | Colore del malto
boiled_colour: Colore mosto dopo bollitura
total_nitrogen: Azoto (totale){b}
total_protein: Proteine grezze{b} | Contenuto proteico{b}
soluble_nitrogen: Azoto in soluzione{b}
soluble_protein: Proteine in soluzione{b}
ratio_kolbach: Numero di Kolbach
fan: Azoto aminico libero (FAN) | Alfa amino azoto
friability: Friabilità (friabilimetro)
homogeneity: Grado di omogeneità
glassy_grains: Grani totalmente vitrei
dp: Potere diast. WK | Forza diastatica
alpha_amylase: Amilasi alfa
beta_glucan: Beta glucani (mosto)
viscosity: Viscosità mosto 8,6 %
saccharification_time: Velocità di saccarificazione
filtration: Filtrabilità (tempo)
clarity: Aspetto | Chiarezza del mosto
odour: Odore della miscela
wort_ph: pH mosto congresso
final_attenuation: Attenuazione apparente limite
relative_extract_45: Indice di Hartong 45 °C
sieve_over_2_8: maggiore di 2,8 mm
sieve_2_5_to_2_8: tra 2,5 e 2,8 mm
sieve_over_2_5: maggiore di 2,5 mm
sieve_2_2_to_2_5: tra 2,2 e 2,5 mm
sieve_under_2_2: minore di 2,2 mm
thousand_corn_weight: Peso 1000 grani
hectolitre_weight: Peso ettolitro
foreign_matter: Sostanze estranee
broken_grains: Grani spaccati
dms_precursor: DMS-P (precursore)
[captions]
supplier: Maltatore
malt: Denominazione | Articolo
batch: Partita | Cod. lotto
certificate: Rif. certificato
crop_year: Raccolto anno
variety: Orzo
produced_on: Data produzione
analysed_on: Data prova
delivered_on: Spedito il
best_before: TMC | Termine minimo di conservazione
quantity: Peso | Q.tà
order: Rif. ordine
customer: Birrificio
[heads]
label: Prova | Grandezza
result: Valore trovato | Esito
unit: Misura
method: Norma
min: Inferiore
max: Superiore
spec: Tolleranza
typical: Valore usuale
previous: Annata precedente
[titles]
batch: Rapporto di prova malto | Bollettino di analisi
specification: Capitolato malto
[basis]
dry: s/s | (sul secco) | su secco
asis: (tal quale) | come ricevuto
[unitbasis]
dry: % s/s
asis: % (t.q.)
[family]
EBC: Prove secondo metodi EBC
[words]
clarity: opalescente
odour: tipico
filtration: lenta
nd: non ril.
"""

REST = {"da": _DA, "it": _IT}
