# ruff: noqa: E501
"""Dutch, Spanish, Italian and Portuguese wordings of the sealed sheets."""

from __future__ import annotations

_NL = """
[labels]
moisture: Vocht | Vochtgehalte | Watergehalte
extract_fine_dry: Extract fijn{b} | Fijnschroot extract{b} | Extract fijne maling{b} | Extract d.s. fijn~dry
extract_coarse_dry: Extract grof{b} | Grofschroot extract{b} | Extract grove maling{b}
extract_fine_as_is: Extract fijn{b} | Extract fijne maling{b}
fine_coarse_difference: Verschil fijn/grof | F/G verschil | Extractverschil fijn-grof
colour: Kleur | Kleur wort | Wortkleur
boiled_colour: Kookkleur | Kleur na koken
total_nitrogen: Totaal stikstof{b} | Stikstof totaal{b}
total_protein: Eiwit{b} | Totaal eiwit{b} | Eiwitgehalte{b}
soluble_nitrogen: Oplosbare stikstof{b} | Opl. stikstof{b}
soluble_protein: Oplosbaar eiwit{b} | Opl. eiwit{b}
ratio_kolbach: Kolbach | Kolbachgetal | Kolbach index
fan: FAN | Vrije aminostikstof | Vrije amino-N
friability: Friabiliteit | Friabilimeter | Brosheid
homogeneity: Homogeniteit | Homogeniteit (friabilimeter)
whole_grains: Hele korrels | Hele korrels (WUG)
glassy_grains: Glazige korrels | Glazigheid
dp: Diastatisch vermogen | Diastatische kracht | DV
alpha_amylase: Alfa-amylase | α-amylase
beta_glucan: Bèta-glucaan | β-glucaan | Bètaglucanen in wort
viscosity: Viscositeit | Viscositeit wort
saccharification_time: Versuikering | Versuikeringstijd
filtration: Filtratie | Filtratietijd
clarity: Helderheid | Helderheid wort
odour: Geur
wort_ph: pH | pH wort
final_attenuation: Eindvergistingsgraad (schijnbaar) | EVG schijnbaar
relative_extract_45: Hartong 45 °C | VZ 45 °C
sieve_over_2_8: > 2,8 mm | Sortering > 2,8 mm
sieve_2_5_to_2_8: 2,5 - 2,8 mm | Sortering 2,5-2,8 mm
sieve_over_2_5: > 2,5 mm | Volkoren > 2,5 mm
sieve_2_2_to_2_5: 2,2 - 2,5 mm
sieve_under_2_2: < 2,2 mm | Doorval < 2,2 mm
thousand_corn_weight: Duizendkorrelgewicht | DKG
hectolitre_weight: Hectolitergewicht | HL-gewicht
ndma: NDMA | Nitrosamines (NDMA)
dms_precursor: DMS-P | DMS-precursor
[captions]
supplier: Leverancier | Mouterij
malt: Product | Moutsoort | Omschrijving
batch: Partij | Batchnummer | Lotnummer | Partijnr. | Charge
certificate: Certificaatnr. | Analysenummer
crop_year: Oogst | Oogstjaar
variety: Gerstras | Ras | Variëteit
produced_on: Productiedatum | Geproduceerd op
analysed_on: Analysedatum | Datum analyse
delivered_on: Leverdatum | Datum levering
best_before: THT | Ten minste houdbaar tot
quantity: Hoeveelheid | Netto gewicht | Gewicht
order: Uw ordernr. | Bestelnummer | Order
customer: Klant | Afnemer | Geleverd aan
[heads]
label: Parameter | Bepaling | Kenmerk | Analyse
result: Resultaat | Waarde | Uitslag | Meetwaarde
unit: Eenheid | Eenh.
method: Methode
min: Min. | Minimum
max: Max. | Maximum
spec: Specificatie | Norm | Grenzen
typical: Typische waarde
previous: Vorige partij
[titles]
batch: Analysecertificaat | Moutanalyse | Kwaliteitscertificaat | Analyserapport mout
[family]
EBC: Methoden: EBC | Analyses volgens Analytica-EBC
[x]
silo: Silo
truck: Kenteken | Vrachtwagen
note_no: Vrachtbon | Afleverbon nr.
article: Artikelnr.
sample: Monsternr.
packing: Verpakking
packing_text: Bulk | 25 kg zakken
origin: Herkomst
origin_text: Noordpolder
account: Klantnr.
seal: Zegelnr.
sampled: Bemonsterd op
issued: Datum uitgifte | Afgedrukt
page: Pagina {p}/{q}
tagline: Moutmeesters aan het water
auto: Dit certificaat is elektronisch opgemaakt en zonder handtekening geldig.
sample_only: De resultaten hebben alleen betrekking op het onderzochte monster.
store: Koel en droog bewaren, 12 maanden houdbaar.
accredited: Laboratorium geaccrediteerd volgens ISO/IEC 17025 (L 0{n}).
verdict: De partij voldoet aan de specificatie.
intro: Hierbij de analyse van de geleverde mout:
signed: Hoofd kwaliteit | Kwaliteitsdienst
checked: Vrijgegeven door
lab: Laboratorium
remarks: Opmerkingen
none: geen
fn_dry: op droge stof
items: Pos. ; Artikel ; Omschrijving ; Aantal
analysis_of: Analyse van de geleverde goederen
letter_open: Geachte klant,
letter_text: hierbij de waarden van de vandaag geladen partij:
letter_close: Met vriendelijke groet
mail: Van ; Aan ; Onderwerp ; Verzonden
weighted: Gemiddelde
minmax: Laagste ; Hoogste
standard: Streefwaarde
"""

_ES = """
[labels]
moisture: Humedad | Contenido de humedad | Humedad de la malta
extract_fine_dry: Extracto molienda fina{b} | Extracto fino{b} | Extracto M.F.{b} | Extracto fino s.s.s.~dry | Extracto b.s. (fina)~dry
extract_coarse_dry: Extracto molienda gruesa{b} | Extracto grueso{b} | Extracto M.G.{b}
extract_fine_as_is: Extracto molienda fina{b} | Extracto fino{b}
fine_coarse_difference: Diferencia fina-gruesa | Diferencia F/G | Dif. extractos
colour: Color | Color del mosto | Color mosto
boiled_colour: Color mosto hervido | Color después de hervir | Color tras ebullición
total_nitrogen: Nitrógeno total{b} | N total{b}
total_protein: Proteína{b} | Proteína total{b} | Proteínas totales{b}
soluble_nitrogen: Nitrógeno soluble{b} | N soluble{b}
soluble_protein: Proteína soluble{b} | Proteínas solubles{b}
ratio_kolbach: Índice de Kolbach | Kolbach | Índice Kolbach
ratio_st: Relación S/T | S/T
fan: FAN | Nitrógeno amínico libre | Amino nitrógeno libre
friability: Friabilidad | Friabilímetro
homogeneity: Homogeneidad | Homogeneidad (friabilímetro)
whole_grains: Granos enteros | Granos enteros (WUG)
glassy_grains: Granos vítreos | Vitrosidad
dp: Poder diastásico | Poder Diastático | P.D.
alpha_amylase: Alfa amilasa | α-amilasa
beta_glucan: Beta glucanos | β-glucanos | Betaglucanos en mosto
viscosity: Viscosidad | Viscosidad del mosto
saccharification_time: Sacarificación | Tiempo de sacarificación
filtration: Filtración | Tiempo de filtración
clarity: Aspecto del mosto | Claridad
odour: Olor | Olor del macerado
wort_ph: pH | pH del mosto
final_attenuation: Atenuación límite aparente | Atenuación límite | Grado de atenuación límite (aparente)
relative_extract_45: Hartong 45 °C | VZ 45 °C
sieve_over_2_8: > 2,8 mm | Calibre > 2,8 mm
sieve_2_5_to_2_8: 2,5 - 2,8 mm | Calibre 2,5-2,8 mm
sieve_over_2_5: > 2,5 mm | Calibre > 2,5 mm | 1.ª calidad (> 2,5 mm)
sieve_2_2_to_2_5: 2,2 - 2,5 mm | Calibre 2,2-2,5 mm
sieve_under_2_2: < 2,2 mm | Calibre < 2,2 mm | Desecho < 2,2 mm
thousand_corn_weight: Peso de 1000 granos | PMG
hectolitre_weight: Peso hectolítrico
ndma: NDMA | Nitrosaminas (NDMA)
dms_precursor: DMS-P | Precursor de DMS
[captions]
supplier: Proveedor | Maltería | Fabricante
malt: Producto | Tipo de malta | Descripción
batch: Lote | N.º de lote | Lote N° | Partida
certificate: Certificado N° | N.º certificado | Informe N°
crop_year: Cosecha | Año de cosecha | Campaña
variety: Variedad | Variedad de cebada
produced_on: Fecha de elaboración | Fecha de producción | Fecha fabricación
analysed_on: Fecha de análisis | Analizado el
delivered_on: Fecha de entrega | Fecha de despacho
best_before: Consumo preferente | Fecha de vencimiento | Consumir pref. antes de
quantity: Cantidad | Peso neto
order: Pedido | Orden de compra | Su pedido
customer: Cliente | Destinatario
[heads]
label: Parámetro | Análisis | Determinación | Característica
result: Resultado | Valor | Resultados
unit: Unidad | Unidades | Ud.
method: Método
min: Mín. | Mínimo
max: Máx. | Máximo
spec: Especificación | Especificaciones | Límites
typical: Valor típico
previous: Lote anterior
[titles]
batch: Certificado de Análisis | CERTIFICADO DE CALIDAD | Análisis de malta | Informe de análisis de malta
[family]
EBC: Métodos EBC | Métodos de análisis: Analytica EBC
ASBC: Métodos ASBC | Métodos de análisis: ASBC
[x]
silo: Silo
truck: Matrícula | Camión
note_no: Albarán | Remito N°
article: Código de producto | Código
sample: Muestra N°
packing: Envase | Presentación
packing_text: Granel | Sacos 25 kg
origin: Origen
origin_text: Valle Norte
account: N.º cliente
seal: Precinto
sampled: Fecha de muestreo
issued: Fecha de emisión | Emitido
page: Página {p} de {q}
tagline: Maltas para cerveceros
auto: Documento generado electrónicamente, válido sin firma.
sample_only: Los resultados corresponden a la muestra analizada.
store: Conservar en lugar fresco y seco. Vida útil 12 meses.
accredited: Laboratorio acreditado ISO/IEC 17025, n.º 0{n}.
verdict: El lote cumple la especificación.
intro: Certificamos que la malta suministrada presenta los siguientes resultados:
signed: Control de calidad | Jefe de laboratorio
checked: Aprobado por
lab: Laboratorio central
remarks: Observaciones
none: Sin observaciones
fn_dry: sobre sustancia seca
items: Pos. ; Código ; Descripción ; Cantidad
analysis_of: Análisis de la mercancía
letter_open: Estimados señores:
letter_text: les indicamos los valores del lote cargado hoy:
letter_close: Saludos cordiales
mail: De ; Para ; Asunto ; Enviado
weighted: Promedio ponderado
minmax: Valor más bajo ; Valor más alto
standard: Objetivo
barley_rows: Humedad cebada ; Proteína cebada ; Energía germinativa
"""

_IT = """
[labels]
moisture: Umidità | Contenuto di umidità | Umidità malto
extract_fine_dry: Estratto macinazione fine{b} | Estratto fine{b} | Resa estratto fine{b}
extract_coarse_dry: Estratto macinazione grossa{b} | Estratto grosso{b}
extract_fine_as_is: Estratto fine{b} | Estratto macinazione fine{b}
fine_coarse_difference: Differenza fine/grosso | Differenza F/G | Diff. estratto
colour: Colore | Colore mosto | Colore del mosto
boiled_colour: Colore dopo bollitura | Colore mosto bollito
total_protein: Proteine{b} | Proteine totali{b} | Sostanze azotate{b}
soluble_nitrogen: Azoto solubile{b}
soluble_protein: Proteine solubili{b}
ratio_kolbach: Indice di Kolbach | Indice Kolbach | Kolbach
fan: FAN | Azoto amminico libero
friability: Friabilità | Friabilità totale
homogeneity: Omogeneità
whole_grains: Grani interi | Grani interi (WUG)
glassy_grains: Grani vitrei | Vitrosità
dp: Potere diastatico | Potere diastasico
alpha_amylase: Alfa-amilasi | α-amilasi
beta_glucan: Beta-glucani | β-glucani | Betaglucani mosto
viscosity: Viscosità | Viscosità mosto
saccharification_time: Saccarificazione | Tempo di saccarificazione
filtration: Filtrazione | Tempo di filtrazione
clarity: Limpidità | Aspetto del mosto
wort_ph: pH | pH mosto
final_attenuation: Attenuazione limite apparente | Attenuazione limite
relative_extract_45: Hartong 45 °C | VZ 45 °C
sieve_over_2_8: > 2,8 mm | Calibro > 2,8 mm
sieve_2_5_to_2_8: 2,5 - 2,8 mm
sieve_over_2_5: > 2,5 mm | Calibro > 2,5 mm
sieve_2_2_to_2_5: 2,2 - 2,5 mm
sieve_under_2_2: < 2,2 mm | Scarto < 2,2 mm
thousand_corn_weight: Peso 1000 semi | Peso mille grani
hectolitre_weight: Peso ettolitrico
[captions]
supplier: Fornitore | Malteria
malt: Prodotto | Tipo di malto | Descrizione
batch: Lotto | N. lotto | Lotto n.
certificate: Certificato n. | Rapporto n.
crop_year: Raccolto | Anno di raccolto
variety: Varietà | Varietà orzo
produced_on: Data di produzione | Prodotto il
analysed_on: Data analisi | Data di analisi
best_before: TMC | Da consumarsi preferibilmente entro
quantity: Quantità | Peso netto
order: Vs. ordine | Ordine n.
customer: Cliente | Destinatario
[heads]
label: Parametro | Analisi | Determinazione
result: Risultato | Valore | Esito
unit: Unità | U.M. | Unità di misura
method: Metodo
min: Min. | Minimo
max: Max. | Massimo
spec: Specifica | Limiti | Capitolato
[titles]
batch: Certificato di analisi | Analisi malto | Certificato di qualità | Rapporto di analisi
[family]
EBC: Metodi EBC | Metodi di analisi: Analytica EBC
[x]
silo: Silo
truck: Targa | Automezzo
note_no: DDT n. | Bolla n.
article: Cod. articolo
sample: Campione n.
packing: Confezione
packing_text: Sfuso | Sacchi 25 kg
origin: Origine
origin_text: Piana Alta
account: Cod. cliente
seal: Sigillo n.
sampled: Campionato il
issued: Data emissione | Emesso il
page: Pag. {p} di {q}
tagline: Malti per birrifici
auto: Documento emesso elettronicamente, valido senza firma.
sample_only: I risultati si riferiscono al solo campione provato.
store: Conservare in luogo fresco e asciutto.
accredited: Laboratorio accreditato ISO/IEC 17025 n. 0{n}.
verdict: Il lotto è conforme alla specifica.
intro: Si certifica che il malto fornito presenta i seguenti valori:
signed: Responsabile qualità
checked: Approvato da
lab: Laboratorio
remarks: Note
none: nessuna
fn_dry: su sostanza secca
items: Pos. ; Articolo ; Descrizione ; Quantità
analysis_of: Analisi della merce
letter_open: Spettabile cliente,
letter_text: di seguito i valori del lotto caricato oggi:
letter_close: Cordiali saluti
mail: Da ; A ; Oggetto ; Inviato
weighted: Media ponderata
minmax: Valore più basso ; Valore più alto
standard: Valore di riferimento
barley_rows: Umidità orzo ; Proteine orzo ; Energia germinativa
"""

_PT = """
[labels]
moisture: Umidade | Teor de umidade | Humidade
extract_fine_dry: Extrato moagem fina{b} | Extrato fino{b}
fine_coarse_difference: Diferença fino-grosso | Diferença de extrato
colour: Cor | Cor do mosto
total_protein: Proteína total{b} | Proteína{b}
soluble_protein: Proteína solúvel{b}
ratio_kolbach: Índice de Kolbach | Índice Kolbach
fan: FAN | Nitrogênio amínico livre
friability: Friabilidade
homogeneity: Homogeneidade
dp: Poder diastático | Poder diastásico
alpha_amylase: Alfa-amilase
beta_glucan: Beta-glucanos | β-glucanos
viscosity: Viscosidade | Viscosidade do mosto
saccharification_time: Sacarificação | Tempo de sacarificação
wort_ph: pH | pH do mosto
sieve_under_2_2: < 2,2 mm
[captions]
malt: Produto | Tipo de malte
batch: Lote | N.º do lote
produced_on: Data de fabricação | Data de produção
best_before: Validade | Data de validade
[heads]
label: Parâmetro | Análise
result: Resultado | Resultados
unit: Unidade
spec: Especificação
[titles]
batch: Certificado de Análise | Análise de malte | Laudo de análise
[x]
silo: Silo
truck: Placa
note_no: Nota de entrega
article: Código
sample: Amostra n.º
packing: Embalagem
packing_text: Granel | Sacos de 25 kg
origin: Origem
origin_text: Planalto
account: Cód. cliente
seal: Lacre
sampled: Amostrado em
issued: Emitido em
page: Página {p}/{q}
tagline: Maltes para cerveja
auto: Documento emitido eletronicamente, válido sem assinatura.
sample_only: Os resultados referem-se à amostra analisada.
store: Conservar em local fresco e seco.
accredited: Laboratório acreditado ISO/IEC 17025 n.º 0{n}.
verdict: Lote aprovado.
intro: Certificamos que o malte fornecido apresenta os seguintes resultados:
signed: Controle de qualidade
checked: Aprovado por
lab: Laboratório
remarks: Observações
none: -
fn_dry: base seca
items: Pos. ; Código ; Descrição ; Quantidade
analysis_of: Análise da mercadoria
letter_open: Prezados senhores,
letter_text: seguem os valores do lote carregado hoje:
letter_close: Atenciosamente
mail: De ; Para ; Assunto ; Enviado
weighted: Média ponderada
minmax: Menor valor ; Maior valor
standard: Alvo
"""

TEXTS = {"nl": _NL, "es": _ES, "it": _IT, "pt": _PT}
