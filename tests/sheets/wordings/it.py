# ruff: noqa: E501
"""Italian wordings of malt sheets."""

TEXT = """
[labels]
moisture: Umidità | Contenuto d'acqua | Umidità del malto
extract_fine_dry: Estratto{b}~either | Estratto macinazione fine{b} | Estratto fine{b} | Estratto farina{b} | Resa in estratto fine{b}
extract_coarse_dry: Estratto macinazione grossa{b} | Estratto grosso{b}
extract_fine_as_is: Estratto macinazione fine{b} | Estratto fine{b}
fine_coarse_difference: Differenza fine-grosso | Differenza estratto fine/grosso | Differenza F/G
colour: Colore | Colore del mosto | Colore mosto
boiled_colour: Colore dopo bollitura | Colore del mosto bollito
total_nitrogen: Azoto totale{b} | N totale{b}
total_protein: Proteine totali{b} | Proteine{b} | Proteine{b} (N x 6,25)
soluble_nitrogen: Azoto solubile{b} | N solubile{b}
soluble_protein: Proteine solubili{b}
ratio_kolbach: Indice di Kolbach | Indice Kolbach | Kolbach
ratio_snr: Rapporto azoto solubile/totale
ratio_st: Rapporto S/T
fan: Azoto amminico libero | FAN | Azoto alfa-amminico (FAN)
friability: Friabilità | Friabilità del malto
homogeneity: Omogeneità
pug: Grani parzialmente vitrei~either
whole_grains: Grani interi
glassy_grains: Grani vitrei | Vetrosità
dp: Potere diastatico | Potere diastasico | PD
alpha_amylase: Alfa-amilasi | α-amilasi
beta_glucan: Beta-glucani | β-glucani nel mosto | Betaglucani
viscosity: Viscosità | Viscosità del mosto
saccharification_time: Tempo di saccarificazione | Saccarificazione
filtration: Tempo di filtrazione | Filtrazione
turbidity: Torbidità
clarity: Limpidezza | Aspetto del mosto | Limpidità del mosto
odour: Odore | Odore dell'ammostamento
wort_ph: pH del mosto | pH | pH mosto
final_attenuation: Attenuazione limite apparente | Grado di attenuazione limite (apparente)
relative_extract_45: Hartong VZ 45 °C | VZ 45 °C
sieve_over_2_8: > 2,8 mm | Calibro > 2,8 mm
sieve_2_5_to_2_8: 2,5 - 2,8 mm | Calibro 2,5-2,8 mm
sieve_over_2_5: > 2,5 mm | Calibro > 2,5 mm
sieve_2_2_to_2_5: 2,2 - 2,5 mm | Calibro 2,2-2,5 mm
sieve_under_2_2: < 2,2 mm | Calibro < 2,2 mm | Scarto < 2,2 mm
thousand_corn_weight: Peso di mille semi | Peso 1000 semi
hectolitre_weight: Peso ettolitrico | Peso per ettolitro
foreign_matter: Impurità | Corpi estranei
broken_grains: Grani rotti | Grani spezzati
dms_precursor: Precursore del DMS | DMS-P
lead: Piombo
cadmium: Cadmio
arsenic: Arsenico
ndma: NDMA | Nitrosammine (NDMA)
deoxynivalenol: Deossinivalenolo | DON
zearalenone: Zearalenone
ochratoxin_a: Ocratossina A
aflatoxin_b1: Aflatossina B1
gushing: Gushing
t2_ht2: Tossine T-2 + HT-2
half_glassy: Grani semivitrei
real_attenuation: Attenuazione reale
wort_extract: Estratto del mosto (°P)
varietal_purity: Purezza varietale
germinative_energy: Energia germinativa
barley_moisture: Umidità
barley_protein: Proteine
[captions]
supplier: Fornitore | Malteria | Produttore
malt: Tipo di malto | Prodotto | Malto
batch: Lotto | Lotto n. | Numero di lotto | N. lotto
certificate: Certificato n. | N. certificato | Rapporto n.
crop_year: Raccolto | Annata | Anno di raccolto
variety: Varietà | Varietà d'orzo
produced_on: Data di produzione | Prodotto il
analysed_on: Data di analisi | Analizzato il
delivered_on: Data di consegna | Consegnato il
best_before: Da consumarsi preferibilmente entro | Scadenza
quantity: Quantità | Peso netto
order: Ordine n. | Vs. ordine | Numero d'ordine
customer: Cliente | Destinatario
[heads]
label: Parametro | Analisi | Determinazione | Caratteristica
result: Risultato | Valore | Risultati
unit: Unità | Unità di misura | U.M.
method: Metodo | Metodo di analisi
min: Min. | Minimo | Min
max: Max. | Massimo | Max
spec: Specifica | Limiti | Specifiche
typical: Valore tipico | Tipico
previous: Lotto precedente | Raccolto precedente
number: N.
remark: Note
[titles]
batch: Certificato di analisi | Foglio di analisi del malto | CERTIFICATO DI ANALISI | Analisi del malto
specification: Specifica di prodotto | Scheda tecnica
[sections]
physical: Analisi fisica
chemical: Analisi chimica | Analisi del malto
wort: Analisi del mosto | Mosto di laboratorio
enzymes: Enzimi
nitrogen: Azoto | Proteine
modification: Modificazione
contaminants: Contaminanti
sieving: Calibratura
barley: Orzo
malt: Malto
[basis]
dry: s.s. | sul secco | (s.s.) | su sostanza secca
asis: tal quale | (t.q.) | t.q.
[unitbasis]
dry: % s.s. | % ss | % sul secco
asis: % t.q. | % tal quale
[notes]
dry: Estratto e proteine sono riferiti alla sostanza secca.
[family]
EBC: Metodi EBC | Analisi secondo Analytica-EBC | Metodi di analisi: EBC
[words]
clarity: limpido | brillante | leggermente opalescente
odour: normale | puro
filtration: normale | rapida
nd: n.d. | non rilevato
[malts]
PIL: Malto Pilsner | Malto Pils
XP: Malto extra chiaro
ALE: Malto Pale Ale
VIE: Malto Vienna
MUN: Malto Monaco
CRY: Malto caramello
ROA: Malto cioccolato | Malto tostato
WHE: Malto di frumento
RYE: Malto di segale
OAT: Malto d'avena
DIS: Malto da distilleria
[children]
extract: Estratto
extract_fine_dry: macinazione fine{b} | fine{b}
extract_coarse_dry: macinazione grossa{b} | grosso{b}
extract_fine_as_is: macinazione fine{b} | fine{b}
fine_coarse_difference: differenza fine-grosso | differenza
nitrogen: Azoto
total_nitrogen: totale{b}
soluble_nitrogen: solubile{b}
protein: Proteine
total_protein: totali{b}
soluble_protein: solubili{b}
colour: Colore
wort_colour: del mosto
boiled_colour: dopo bollitura
sieving: Calibratura
"""
