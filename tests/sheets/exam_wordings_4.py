# ruff: noqa: E501
"""Italian, Slovak, Polish and Portuguese wordings of the exam sheets; unread by whoever works on the reading."""

from __future__ import annotations

_IT = """
[labels]
moisture: Umidità (105 °C, 3 h) | Perdita all'essiccamento | Umid. | Acqua, contenuto | Umidità in stufa | Umidità (EBC 4.2)
extract_fine_dry: Estratto, macinazione 0,2 mm{b} | Resa fine{b} | Estr. fine{b} | Estratto (farina fine){b} | Rendimento in estratto, fine{b}
extract_coarse_dry: Estratto, macinazione 1,0 mm{b} | Resa grossa{b} | Estr. grosso{b}
extract_fine_as_is: Resa fine{b} | Estr. fine{b}
extract_coarse_as_is: Resa grossa{b} | Estr. grosso{b}
fine_coarse_difference: Differenza macinazioni | Diff. F/G | Differenza d'estratto (fine - grosso) | Scarto fine/grosso
colour: Colore, mosto non bollito | Colore (430 nm) | Mosto, colore | Colore spettrofotometrico
boiled_colour: Colore, mosto bollito | Colore di cottura | Colore dopo 2 h di bollitura
total_nitrogen: Azoto, totale{b} | N tot.{b} | Azoto (Dumas){b} | Azoto del malto{b}
total_protein: Proteine, totali{b} | Prot. tot.{b} | Proteina (N × 6,25){b} | Proteine del malto{b}
soluble_nitrogen: Azoto, solubile{b} | N sol.{b} | Azoto solubile nel mosto{b}
soluble_protein: Proteine, solubili{b} | Prot. sol.{b}
ratio_kolbach: Kolbach (indice) | Ind. Kolbach | Grado di solubilizzazione (Kolbach)
fan: Azoto amminico, libero | N amminico libero | FAN nel mosto | α-ammino azoto
friability: Friab. | Friabilità (8 min) | Prova di friabilità
homogeneity: Omog. | Omogeneità (friabilimetro) | Uniformità (omogeneità)
glassy_grains: Grani, vitrei | Chicchi vitrei | Grani interamente vitrei
whole_grains: Interi (friabilimetro) | Chicchi interi
dp: Potere, diastatico | Pot. diastatico | Diastasi | Attività diastatica
alpha_amylase: Amilasi, alfa- | α-Amil. | Unità destrinizzanti (alfa-amilasi)
beta_glucan: Glucani, beta- (mosto) | β-glucano (FIA) | B-glucani del mosto
viscosity: Visc. mosto | Viscosità, caduta di sfera | Mosto, viscosità
saccharification_time: Saccarif. | Normalità allo iodio in | Durata saccarificazione
filtration: Deflusso del mosto | Tempo di deflusso | Filtrazione, durata
turbidity: Torbidità del mosto | Torbidità (90°)
clarity: Mosto, aspetto | Mosto, limpidezza
odour: Odore all'ammostamento | Aroma della miscela
wort_ph: Acidità del mosto (pH) | pH (20 °C) | Mosto, pH
final_attenuation: Attenuazione finale apparente | Att. limite app. | Grado finale di attenuazione (apparente)
relative_extract_45: Estratto relativo 45 °C | Hartong a 45 °C | VZ45
sieve_over_2_8: Vaglio I (oltre 2,8 mm) | + 2,8 mm | Trattenuto 2,8 mm | ≥ 2,8 mm
sieve_2_5_to_2_8: Vaglio II (2,8 - 2,5 mm) | 2,8/2,5 mm
sieve_over_2_5: Vaglio I + II (oltre 2,5 mm) | Trattenuto 2,5 mm | ≥ 2,5 mm
sieve_2_2_to_2_5: Vaglio III (2,5 - 2,2 mm) | 2,5/2,2 mm
sieve_under_2_2: Passante 2,2 mm | Sotto 2,2 mm | Fondo < 2,2 mm
thousand_corn_weight: Peso, mille semi | P.M.S. | Massa di 1000 semi
hectolitre_weight: Peso hl | Massa ettolitrica
foreign_matter: Impurezze | Semi estranei
broken_grains: Grani, rotti | Chicchi rotti
dms_precursor: Precursore (DMS) | DMS potenziale
deoxynivalenol: Micotossina DON
ochratoxin_a: Micotossina OTA
lead: Piombo, Pb
ndma: N-DMA | Nitrosammina NDMA
half_glassy: Grani, semivitrei
barley_moisture: Umidità dell'orzo
barley_protein: Proteine dell'orzo
[captions]
supplier: Fornito da
malt: Qualità di malto | Merce | Descrizione merce
batch: Codice lotto | Nostro lotto | Lotto di maltazione
certificate: Attestato n. | Rif. analisi
crop_year: Raccolto (anno) | Annata orzo
variety: Varietà orzo | Cultivar
produced_on: Maltato il | Essiccato il | Fabbricato il
analysed_on: Analisi del | Data laboratorio | Provato il
delivered_on: Caricato il
best_before: Preferibilmente entro
quantity: Netto consegnato | Quantità consegnata
order: N. ordine
customer: Consegnato a
[heads]
label: Determinazione di | Parametro analizzato
result: Riscontrato | Valore lab. | Ns. risultato
unit: Espresso in
method: Metodo n. | Procedura
min: non meno di | Lim. inf.
max: non più di | Lim. sup.
spec: Limiti concordati | Richiesto
typical: Valore abituale | Consueto
previous: Consegna precedente
number: Riga
remark: Giudizio
[titles]
batch: Certificato qualità malto | Analisi del malto consegnato | Scheda laboratorio malto
[sections]
physical: Caratteristiche del chicco
chemical: Analisi di base
enzymes: Potere enzimatico
nitrogen: Bilancio azotato
modification: Disgregazione
contaminants: Sicurezza alimentare
sieving: Frazioni di vagliatura
barley: Orzo ricevuto
malt: Malto finito
[basis]
dry: , s.s. | (su s.s.) | sul malto secco
asis: , sul malto umido | (t.q. ricevuto)
[unitbasis]
dry: % su secco | % (s.s.)
asis: % umido
[notes]
dry: Estratto, azoto e proteine sono riferiti alla sostanza secca.
[family]
EBC: Metodologia: Analytica-EBC | Secondo EBC, ammostamento Congress
[words]
clarity: limpido, brillante | poco torbido
odour: di malto, pulito | abituale
filtration: buona | rapida
nd: non trovato | n.d.
[x]
carried: Riporto da pagina 1
continued: segue a pagina 2
mean: Media
lowest: Valore più basso
highest: Valore più alto
own: Lab. malteria
other: Lab. indipendente
certified: Valore certificato
now: Questa consegna
before: Consegna precedente
crop: Raccolto {y}
oldcrop: Media raccolto {y}
target: Obiettivo
inunit: in {u}: | Espresso in {u} | Unità: {u}
watermark: COPIA | ORIGINALE
det: 1ª det. ; 2ª det. ; Media
ok: OK | conforme
intro: Abbiamo esaminato il campione ricevuto e comunichiamo quanto segue.
say: {l} ammonta a {v}. | Per {l} abbiamo trovato {v}.
small: Altri valori: | Inoltre determinato:
note: Bolla di consegna ; Bolla n. ; Peso lordo ; Tara ; Peso netto ; Bancali ; Sacchi da 25 kg ; Scontrino pesa ; Sigillo n. ; Telefono ; Fax ; Partita IVA ; Totale pagina ; Riga ; Prezzo a tonnellata ; Importo
intake: Ricevimento orzo ; Campione n. ; Calibro sopra 2,5 mm
"""

_SK = """
[labels]
moisture: Vlhkosť (105 °C, 3 h) | Vlhk. | Strata sušením
extract_fine_dry: Extrakt, mletie 0,2 mm{b} | Extr. jemný{b}
extract_coarse_dry: Extrakt, mletie 1,0 mm{b} | Extr. hrubý{b}
extract_fine_as_is: Extr. jemný{b}
fine_coarse_difference: Diferencia extraktov | Rozdiel jemné/hrubé mletie
colour: Farba (430 nm) | Sladina, farba
boiled_colour: Farba, povarená sladina
total_nitrogen: Dusík, celkový{b} | Celk. N{b}
total_protein: Bielkoviny, celkové{b} | Bielkoviny (N × 6,25){b}
soluble_nitrogen: Dusík, rozpustný{b} | Rozp. N{b}
soluble_protein: Bielkoviny, rozpustné{b}
ratio_kolbach: Kolbach (číslo) | Kolbachovo č.
fan: Aminodusík, voľný | FAN v sladine
friability: Friab. | Krehkosť (friabilimeter)
homogeneity: Homog. | Homogenita (friabilimeter)
glassy_grains: Zrná, sklovité | Celosklovité zrná
dp: Mohutnosť, diastatická | Diastatická sila
alpha_amylase: Amyláza, α-
beta_glucan: Glukány, β- (sladina)
viscosity: Visk. sladiny | Sladina, viskozita
saccharification_time: Scukrené za | Čas scukrenia
filtration: Čas filtrácie
wort_ph: pH (20 °C) | pH, sladina
final_attenuation: Prekvasenie, konečné zdanlivé
relative_extract_45: Hartong 45 °C | VZ45
sieve_over_2_8: + 2,8 mm | ≥ 2,8 mm
sieve_over_2_5: Nad 2,5 mm spolu | ≥ 2,5 mm
sieve_under_2_2: Prepad 2,2 mm | Pod sitom 2,2 mm
thousand_corn_weight: HTZ | Hmotnosť 1000 zŕn
[captions]
supplier: Dodáva
malt: Druh tovaru
batch: Označenie šarže | Lot
crop_year: Zberový rok
produced_on: Vyrobené dňa
analysed_on: Rozbor zo dňa
quantity: Dodané množstvo
customer: Príjemca
[heads]
label: Skúšaný znak
result: Zistená hodnota
unit: Vyjadrené v
spec: Dohodnuté medze
[basis]
dry: , v suš. | (suš.)
asis: , pôvodný slad
[unitbasis]
dry: % suš. | % v suš.
[family]
EBC: Metodicky: Analytica-EBC
"""

_PL = """
[labels]
moisture: Wilgotność (105 °C, 3 h) | Wilg. | Ubytek przy suszeniu
extract_fine_dry: Ekstrakt, mielenie 0,2 mm{b} | Ekstr. drobny{b} | Ekstraktywność, przemiał drobny{b}
extract_coarse_dry: Ekstrakt, mielenie 1,0 mm{b} | Ekstr. gruby{b}
extract_fine_as_is: Ekstr. drobny{b}
fine_coarse_difference: Różnica przemiałów | Różnica drobny/gruby
colour: Barwa (430 nm) | Brzeczka, barwa
boiled_colour: Barwa, brzeczka gotowana
total_nitrogen: Azot, ogólny{b} | N og.{b}
total_protein: Białko, ogółem{b} | Białko (N × 6,25){b}
soluble_nitrogen: Azot, rozpuszczalny{b} | N rozp.{b}
soluble_protein: Białko, rozpuszczalne{b}
ratio_kolbach: Kolbach (liczba) | L. Kolbacha
fan: Azot aminowy, wolny | FAN w brzeczce
friability: Friab. | Kruchość (friabilimetr)
homogeneity: Homog. | Jednorodność (homogeniczność)
glassy_grains: Ziarna, szkliste | Ziarna całkowicie szkliste
dp: Siła, diastatyczna | Zdolność diastatyczna
alpha_amylase: Amylaza, alfa-
beta_glucan: Glukany, beta- (brzeczka)
viscosity: Lepk. brzeczki | Brzeczka, lepkość
saccharification_time: Scukrzanie, czas | Scukrzono po
filtration: Filtracja, czas
wort_ph: pH (20 °C) | pH, brzeczka
final_attenuation: Odfermentowanie ostateczne pozorne
relative_extract_45: Hartong 45 °C
sieve_over_2_8: + 2,8 mm | ≥ 2,8 mm
sieve_over_2_5: Powyżej 2,5 mm razem | ≥ 2,5 mm
sieve_under_2_2: Odsiew 2,2 mm | Poniżej 2,2 mm
thousand_corn_weight: MTZ | Masa 1000 ziaren
[captions]
supplier: Dostarcza
batch: Oznaczenie partii | Nr lotu
crop_year: Rok zbioru jęczmienia
produced_on: Wyprodukowano dnia
analysed_on: Zbadano dnia
quantity: Ilość dostarczona
[heads]
label: Badana cecha
result: Stwierdzono
unit: Wyrażone w
spec: Uzgodnione granice
[basis]
dry: , w s.m.
asis: , słód wilgotny
[unitbasis]
dry: % w s.m.
[family]
EBC: Metodyka: Analytica-EBC
"""

_PT = """
[labels]
moisture: Umidade (105 °C, 3 h) | Perda por secagem | Água, teor
extract_fine_dry: Extrato, moagem 0,2 mm{b} | Rendimento fino{b} | Extr. fino{b}
extract_coarse_dry: Extrato, moagem 1,0 mm{b} | Extr. grosso{b}
extract_fine_as_is: Extr. fino{b}
fine_coarse_difference: Diferença das moagens | Dif. F/G
colour: Cor (430 nm) | Mosto, cor
boiled_colour: Cor, mosto fervido
total_nitrogen: Nitrogênio, total{b} | N tot.{b}
total_protein: Proteínas, totais{b} | Proteína (N × 6,25){b} | Proteína bruta{b}
soluble_nitrogen: Nitrogênio, solúvel{b} | N sol.{b}
soluble_protein: Proteínas, solúveis{b}
ratio_kolbach: Kolbach (índice) | Índ. Kolbach
ratio_st: Proteína solúvel/total
fan: Aminonitrogênio livre | FAN no mosto
friability: Friab. | Friabilidade (friabilímetro)
homogeneity: Homog. | Homogeneidade (friabilímetro)
glassy_grains: Grãos, vítreos
whole_grains: Grãos, inteiros
dp: Poder, diastático | Atividade diastática
alpha_amylase: Amilase, alfa-
beta_glucan: Glucanos, beta- (mosto)
viscosity: Visc. do mosto | Mosto, viscosidade
saccharification_time: Sacarif. | Tempo de conversão (iodo)
filtration: Filtração, tempo | Escoamento do mosto
wort_ph: pH (20 °C) | Mosto, pH
final_attenuation: Atenuação final aparente
relative_extract_45: VZ45 | Extrato relativo 45 °C
sieve_over_2_8: + 2,8 mm | ≥ 2,8 mm
sieve_over_2_5: Retido 2,5 mm | ≥ 2,5 mm
sieve_under_2_2: Passante 2,2 mm | Fundo < 2,2 mm
thousand_corn_weight: PMG | Massa de 1000 grãos
[captions]
supplier: Fornecido por
malt: Tipo de malte entregue
batch: Nosso lote | Lote nº
crop_year: Safra (ano)
produced_on: Malteado em
analysed_on: Analisado em
quantity: Quantidade entregue
customer: Destinatário
[heads]
label: Determinação de
result: Encontrado
unit: Expresso em
spec: Limites acordados
[basis]
dry: , M.S. | (base seca)
asis: , como recebido
[unitbasis]
dry: % M.S.
[family]
EBC: Metodologia: Analytica-EBC
"""

TEXTS = {"it": _IT, "sk": _SK, "pl": _PL, "pt": _PT}
