"""Italian, Czech, Danish and Polish wordings of the unseen sheets; unread by whoever works on the reading."""

from __future__ import annotations

_IT = """
[labels]
moisture: Umidità (stufa) | Umidità malto | Contenuto di umidità
extract_fine_dry: Estratto (fine){b} | Estratto macinazione fine 0,2 mm{b} | Estratto da farina{b}
extract_coarse_dry: Estratto (grosso){b} | Estratto macinazione grossa 1,0 mm{b}
extract_fine_as_is: Estratto (fine){b} | Estratto da farina{b}
fine_coarse_difference: Differenza fine/grosso | Diff. estratto F-G
colour: Colore (mosto) | Colore mosto di laboratorio
boiled_colour: Colore mosto bollito | Colore dopo la bollitura
total_protein: Proteine (N x 6,25){b} | Proteine totali malto{b} | Contenuto proteico{b}
total_nitrogen: Azoto totale (Dumas){b}
soluble_nitrogen: Azoto solubile (mosto){b}
soluble_protein: Proteine solubili (mosto){b}
ratio_kolbach: Indice Kolbach (IK) | Kolbach (N sol./N tot.)
fan: FAN (azoto amminico libero) | Azoto alfa-amminico libero
friability: Friabilità (friabilimetro) | Friabilità malto
homogeneity: Omogeneità malto
glassy_grains: Grani vitrei interi | Vetrosità (friabilimetro)
whole_grains: Grani interi (friabilimetro)
dp: Potere diastatico PD | Potere diastatico totale
alpha_amylase: Alfa amilasi (DU)
beta_glucan: Beta-glucani (mosto) | β-glucani
viscosity: Viscosità mosto | Viscosità (8,6 %)
saccharification_time: Saccarificazione (iodio) | Tempo saccarificazione
filtration: Filtrazione (mosto)
clarity: Aspetto mosto
odour: Odore ammostamento
wort_ph: pH (mosto)
final_attenuation: Attenuazione limite | Attenuazione limite app.
relative_extract_45: Hartong 45 °C | VZ 45
sieve_over_2_8: sopra 2,8 mm | Setaccio > 2,8 mm
sieve_2_5_to_2_8: Setaccio 2,5 - 2,8 mm
sieve_over_2_5: Setaccio > 2,5 mm | Totale > 2,5 mm
sieve_2_2_to_2_5: Setaccio 2,2 - 2,5 mm
sieve_under_2_2: Setaccio < 2,2 mm | sotto 2,2 mm
thousand_corn_weight: Peso mille semi
hectolitre_weight: Peso ettolitrico (PE)
foreign_matter: Impurità totali
broken_grains: Chicchi spezzati
dms_precursor: DMS-P (precursore)
deoxynivalenol: Micotossine: DON
ochratoxin_a: Micotossine: OTA
lead: Piombo (Pb)
ndma: NDMA (nitrosammina)
[captions]
supplier: Stabilimento | Malteria di produzione
malt: Descrizione prodotto | Tipo malto
batch: Nr. lotto | Lotto di produzione | Lotto/silo
certificate: Nr. certificato | Certificato nr.
crop_year: Raccolto orzo
variety: Varietà orzo
produced_on: Data produzione
analysed_on: Data analisi | Data dell'analisi
delivered_on: Data spedizione
best_before: TMC | Preferibilmente entro
quantity: Quantità netta | Peso netto (t)
order: Vs. ordine
customer: Cliente/birrificio | Spett.le
[heads]
label: Analisi | Parametro | Prova
result: Risultato | Valore
unit: Unità | U.M.
method: Metodo
min: Min | min.
max: Max | max.
spec: Specifica | Limiti
typical: Valori tipici
remark: Conforme
[titles]
batch: Certificato di analisi malto | Bollettino di analisi
specification: Scheda prodotto
[basis]
dry: , s.s. | (s.s.) | su secco
asis: , t.q. | (tal quale)
[unitbasis]
dry: % s/s | % su s.s.
asis: % t.q.
[notes]
dry: Estratto e proteine espressi sul secco.
[family]
EBC: Metodi di analisi EBC | Metodi: Analytica EBC
[words]
clarity: limpido
odour: normale
filtration: normale
nd: n.r. | non rilevato
[x]
dear: Gentile cliente,
letter: Di seguito i risultati di analisi della Vostra fornitura.
regards: Cordiali saluti,
subject: Analisi malto
date: Data
page: Pagina {p} di {q}
sieve: Calibro
sievecols: Frazione ; %
ok: OK | sì
uncert: Incertezza ±
dryfoot: su sostanza secca
asisfoot: tal quale
legend: Legenda:
reject: Limite di rifiuto
contract: Valore contrattuale
analysis: Analisi della merce consegnata
annex: Allegato: residui e contaminanti
summary: Conclusione: lotto conforme.
auto: Documento elettronico, valido senza firma.
other: Silo ; Targa ; Trasportatore ; Campionato il
composite: Analisi del campione medio dei lotti sopra indicati
lots: Lotti caricati ; Silo ; Tonnellate
goods: Bolla di consegna ; Riga ; Articolo ; Quantità ; Imballo ; Lotto ; sfuso ; sacchi 25 kg
mail: Da ; A ; Oggetto ; Inviato
"""

_CS = """
[labels]
moisture: Obsah vody (vlhkost) | Vlhkost sladu při expedici | Vlhkost (sušárna)
extract_fine_dry: Extrakt (jemný šrot){b} | Extrakt, moučka{b} | Extrakt sladu, jemný šrot{b}
extract_coarse_dry: Extrakt (hrubý šrot){b} | Extrakt, hrubý šrot{b}
extract_fine_as_is: Extrakt (jemný šrot){b} | Extrakt, moučka{b}
fine_coarse_difference: Rozdíl extraktů moučka-šrot | Rozdíl extraktu F/G
colour: Barva sladiny (EBC) | Barva (sladina) | Barva, fotometricky
boiled_colour: Barva povařené sladiny (EBC) | Barva sladiny po povaření
total_nitrogen: Dusík celkový (Dumas){b}
total_protein: Bílkoviny (N x 6,25){b} | Obsah bílkovin sladu{b} | Dusíkaté látky celkem{b}
soluble_nitrogen: Rozpustný dusík (sladina){b}
soluble_protein: Rozpustné bílkoviny (sladina){b} | Bílkoviny rozp.{b}
ratio_kolbach: Kolbachovo číslo (KČ) | Kolbachovo č.
fan: FAN (volný aminodusík) | Volný α-aminodusík
friability: Friabilita (friabilimetr) | Friabilimetrická hodnota
homogeneity: Homogenita sladu
glassy_grains: Sklovitá zrna (celá) | Zrna zcela sklovitá
whole_grains: Celá zrna (friabilimetr)
dp: Diastatická mohutnost (DM) | Diastatická mohutnost sladu
alpha_amylase: Alfa-amyláza | α-amyláza
beta_glucan: Beta-glukany (sladina) | β-glukany v kongresní sladině
viscosity: Viskozita (sladina) | Viskozita sladiny při 8,6 %
saccharification_time: Zcukření (jod) | Doba zcukření při 70 °C
filtration: Stékání | Rychlost stékání
clarity: Čirost (sladina)
odour: Vůně sladiny
wort_ph: pH (sladina) | pH kongresní sladiny
final_attenuation: Dosažitelný stupeň prokvašení | DSP zdánlivý
relative_extract_45: Relativní extrakt 45 °C (RE45) | RE 45 °C dle Hartonga
sieve_over_2_8: nad 2,8 mm | Sítový podíl > 2,8 mm
sieve_2_5_to_2_8: Sítový podíl 2,5 - 2,8 mm
sieve_over_2_5: Přepad > 2,5 mm | Zrno nad 2,5 mm
sieve_2_2_to_2_5: Sítový podíl 2,2 - 2,5 mm
sieve_under_2_2: Propad pod 2,2 mm | Sítový podíl < 2,2 mm
thousand_corn_weight: HTZ (hmotnost tisíce zrn)
hectolitre_weight: Objemová hmotnost (hl)
foreign_matter: Cizí příměsi
broken_grains: Poškozená zrna
dms_precursor: DMS-P (prekurzor)
deoxynivalenol: Mykotoxiny: DON
ndma: NDMA (nitrosaminy)
lead: Olovo (Pb)
[captions]
supplier: Výrobní závod | Výrobce sladu
malt: Název výrobku | Slad
batch: Č. šarže | Šarže/silo | Výrobní šarže
certificate: Atest č. | Rozbor č.
crop_year: Sklizeň ječmene
variety: Odrůdy ječmene
produced_on: Datum hvozdění | Vyrobeno dne
analysed_on: Rozbor proveden | Datum rozboru sladu
delivered_on: Datum nakládky | Expedováno
best_before: Min. trvanlivost | Spotřebovat do
quantity: Dodané množství | Hmotnost (t)
order: Vaše objednávka
customer: Odběratel/pivovar
[heads]
label: Znak jakosti | Analýza | Parametr
result: Výsledek | Zjištěno
unit: Jednotka | Jedn.
method: Metoda | Postup
min: min. | Min
max: max. | Max
spec: Norma | Specifikace
typical: Obvyklé hodnoty
remark: Vyhovuje
[titles]
batch: Atest sladu | Osvědčení o jakosti sladu | Certifikát analýzy
[basis]
dry: , v suš. | (v sušině)
asis: , v původním vzorku | (v pův.)
[unitbasis]
dry: % v suš. | % (suš.)
asis: % v pův.
[family]
EBC: Metody analýz: EBC | Analyzováno dle Analytica EBC
[words]
clarity: čirá
odour: normální
filtration: normální
nd: nedetekováno | n.d.
[x]
dear: Vážený zákazníku,
letter: zasíláme výsledky rozboru dodaného sladu.
regards: S pozdravem
subject: Rozbor sladu
date: Datum
page: Strana {p}/{q}
sieve: Sítový rozbor
sievecols: Podíl ; %
ok: ano | OK
uncert: Nejistota ±
dryfoot: v sušině
asisfoot: v původním vzorku
legend: Zkratky:
reject: Mez odmítnutí
contract: Smluvní hodnota
analysis: Rozbor dodaného zboží
annex: Příloha: rezidua a kontaminanty
summary: Závěr: šarže vyhovuje.
auto: Dokument byl vystaven elektronicky a platí bez podpisu.
other: Silo ; SPZ ; Dopravce ; Datum odběru
composite: Rozbor směsného vzorku uvedených šarží
lots: Naložené šarže ; Silo ; Tuny
goods: Dodací list ; Pol. ; Zboží ; Množství ; Obal ; Šarže ; volně ; pytle 25 kg
mail: Od ; Komu ; Předmět ; Odesláno
"""

_DA = """
[labels]
moisture: Vandindhold (ovn) | Vandindhold ved levering | Fugtindhold
extract_fine_dry: Ekstrakt (fin){b} | Ekstrakt finformaling{b} | Ekstrakt 0,2 mm{b}
extract_coarse_dry: Ekstrakt (grov){b} | Ekstrakt grovformaling{b}
extract_fine_as_is: Ekstrakt (fin){b} | Ekstrakt finformaling{b}
fine_coarse_difference: Ekstraktforskel fin/grov | Differens fin-grov
colour: Farve (urt) | Urtfarve, fotometrisk
boiled_colour: Farve, kogt urt | Kogefarve
total_protein: Protein (N x 6,25){b} | Proteinindhold{b} | Protein total{b}
total_nitrogen: Total-N{b}
soluble_nitrogen: Opløseligt kvælstof (urt){b}
soluble_protein: Opløseligt protein (urt){b}
ratio_kolbach: Kolbach-tal | Kolbachindeks
fan: FAN (frit amino-N) | Fri amino-kvælstof (FAN)
friability: Friabilitet (friabilimeter) | Maltens friabilitet
homogeneity: Homogenitet (friabilimeter)
glassy_grains: Glasagtige kerner (hele)
whole_grains: Hele kerner (friabilimeter)
dp: Diastatisk kraft, DP | Diastatisk styrke
alpha_amylase: Alfa-amylase (DU)
beta_glucan: Beta-glucan (urt) | β-glucan
viscosity: Viskositet (urt) | Viskositet ved 8,6 %
saccharification_time: Forsukring (jod) | Forsukringstid 70 °C
filtration: Filtrering (urt)
clarity: Klarhed (urt)
odour: Lugt af mæsk
wort_ph: pH (urt)
final_attenuation: Slutforgæringsgrad, tilsyneladende
relative_extract_45: VZ 45 (Hartong)
sieve_over_2_8: over 2,8 mm
sieve_2_5_to_2_8: 2,5 til 2,8 mm
sieve_over_2_5: Sold > 2,5 mm | over 2,5 mm i alt
sieve_2_2_to_2_5: 2,2 til 2,5 mm
sieve_under_2_2: under 2,2 mm | Sold < 2,2 mm
thousand_corn_weight: Tusindkornsvægt (TKV)
hectolitre_weight: Hektolitervægt (HLV)
foreign_matter: Fremmede partikler
broken_grains: Brudte kerner
dms_precursor: DMS-P (forløber)
deoxynivalenol: Mykotoksiner: DON
ndma: NDMA (nitrosamin)
[captions]
malt: Produktbeskrivelse
batch: Batch nr. | Lot nr. | Batch/silo
certificate: Certifikat nummer
crop_year: Høst (byg)
variety: Byg, sort
produced_on: Produceret
analysed_on: Analyse dato
delivered_on: Afsendt den
best_before: Holdbar til
quantity: Leveret mængde (t)
customer: Kunde/bryggeri
[heads]
label: Analyse | Parameter
result: Resultat | Fundet
unit: Enhed
min: Min
max: Max
spec: Specifikation
remark: OK?
[titles]
batch: Analysecertifikat malt | Maltanalyse, certifikat
[basis]
dry: , tørstof | (i TS)
asis: , som leveret
[unitbasis]
dry: % af TS | % i TS
asis: % som er
[family]
EBC: Analysemetoder: EBC | Metoder: Analytica EBC
[x]
dear: Kære kunde,
letter: Hermed analysen af den leverede malt.
regards: Med venlig hilsen
subject: Maltanalyse
date: Dato
page: Side {p} af {q}
sieve: Sortering
sievecols: Fraktion ; %
ok: OK | ja
dryfoot: i tørstof
asisfoot: som leveret
legend: Forkortelser:
analysis: Analyse af leverede varer
"""

_PL = """
[labels]
moisture: Wilgotność słodu | Zawartość wilgoci
extract_fine_dry: Ekstrakt (mączka){b} | Ekstraktywność, drobny przemiał{b} | Zawartość ekstraktu, mączka{b}
fine_coarse_difference: Różnica ekstraktów M/S | Różnica mączka-śruta
colour: Barwa (brzeczka) | Barwa brzeczki kongresowej
boiled_colour: Barwa brzeczki po gotowaniu (EBC)
total_protein: Zawartość białka{b} | Białko (N x 6,25){b}
soluble_protein: Białko rozpuszczalne (brzeczka){b}
soluble_nitrogen: Azot rozpuszczalny (brzeczka){b}
ratio_kolbach: Liczba Kolbacha (LK) | Wskaźnik Kolbacha
fan: FAN (wolny azot aminowy) | Azot alfa-aminowy
friability: Kruchość (friabilimetr) | Kruchość słodu
homogeneity: Jednorodność
glassy_grains: Ziarna szkliste (całe)
dp: Siła diastatyczna słodu | Siła diastatyczna (SD)
alpha_amylase: α-amylaza
beta_glucan: β-glukany | Beta-glukan (brzeczka)
viscosity: Lepkość (brzeczka) | Lepkość przy 8,6 %
saccharification_time: Czas scukrzenia
filtration: Filtracja
wort_ph: pH (brzeczka)
final_attenuation: Stopień odfermentowania ostatecznego, pozorny
sieve_over_2_5: Celność > 2,5 mm
sieve_under_2_2: Pośład < 2,2 mm
thousand_corn_weight: Masa 1000 ziaren
foreign_matter: Zanieczyszczenia obce
broken_grains: Ziarna uszkodzone
[captions]
malt: Nazwa produktu
batch: Partia nr | Nr serii
certificate: Atest nr
crop_year: Zbiór
produced_on: Wyprodukowano
analysed_on: Data badania
quantity: Ilość (t)
customer: Odbiorca/browar
[heads]
label: Badanie | Cecha
result: Wynik badania | Wynik
unit: Jedn.
spec: Wymagania
[titles]
batch: Certyfikat analizy słodu | Atest słodu
[basis]
dry: , w s.m. | (s.s.)
[unitbasis]
dry: % w s.m. | % s.s.
[family]
EBC: Metody analiz: EBC
[x]
dear: Szanowni Państwo,
letter: Poniżej wyniki analizy dostarczonego słodu.
regards: Z poważaniem
subject: Analiza słodu
date: Data
page: Strona {p} z {q}
ok: tak
dryfoot: w suchej masie
"""

TEXTS = {"it": _IT, "cs": _CS, "da": _DA, "pl": _PL}
