# ruff: noqa: E501
"""Spanish wordings of the unseen sheets; unread by whoever works on the reading of sheets."""

from __future__ import annotations

_ES = """
[labels]
moisture: Humedad (estufa) | Humedad de malta | Humedad al despacho | Contenido en humedad
extract_fine_dry: Extracto (fino){b} | Extracto molienda fina 0,2 mm{b} | Extracto harina fina{b} | Extracto fino EBC{b}
extract_coarse_dry: Extracto (grueso){b} | Extracto molienda gruesa 1,0 mm{b}
extract_fine_as_is: Extracto (fino){b} | Extracto harina fina{b}
extract_coarse_as_is: Extracto (grueso){b}
fine_coarse_difference: Diferencia fino/grueso | Dif. extracto F-G | Diferencia de extracto F/G
colour: Color (mosto) | Color mosto laboratorio | Color a 430 nm | Color de mosto
boiled_colour: Color mosto hervido | Color tras ebullición | Color de cocción
total_nitrogen: Nitrógeno total (Dumas){b} | Contenido de nitrógeno{b}
total_protein: Proteína (N x 6,25){b} | Proteína total malta{b} | Contenido de proteína{b} | Proteínas de la malta{b}
soluble_nitrogen: Nitrógeno soluble (mosto){b} | N total soluble{b}
soluble_protein: Proteína soluble (mosto){b} | Proteína soluble total{b}
ratio_kolbach: Índice Kolbach (IK) | Kolbach (N sol./N total) | Índice de Kolbach IK
ratio_st: Relación S/T (proteína) | Relación soluble/total
fan: FAN (nitrógeno amínico) | Nitrógeno alfa-amínico libre | N amínico libre (FAN)
friability: Friabilidad por friabilímetro | Friabilidad malta | Friabilidad, friabilímetro
homogeneity: Homogeneidad (friabilímetro) | Homogeneidad de la malta
pug: PUG (parcialmente modificados)~either
glassy_grains: Granos vítreos enteros | Granos vítreos (friabilímetro)
whole_grains: Granos enteros (friabilímetro) | Granos enteros WUG
dp: Poder diastásico PD | Poder diastático total | Fuerza diastásica
alpha_amylase: Alfa amilasa (DU) | Actividad α-amilásica
beta_glucan: Beta glucanos (mosto) | β-glucanos | Betaglucanos en mosto
viscosity: Viscosidad mosto | Viscosidad (20 °C) | Viscosidad al 8,6 %
saccharification_time: Tiempo sacarificación | Sacarificación (yodo)
filtration: Filtración (mosto) | Velocidad filtración
turbidity: Turbidez mosto 90°
clarity: Aspecto mosto | Claridad (mosto)
odour: Olor del macerado | Olor empaste
wort_ph: pH mosto | pH (mosto) | pH del mosto a 20 °C
final_attenuation: Atenuación límite | Atenuación final aparente | Atenuación límite ap.
relative_extract_45: VZ 45 (Hartong) | Hartong 45 °C
sieve_over_2_8: sobre 2,8 mm | Tamiz > 2,8 mm
sieve_2_5_to_2_8: Tamiz 2,5 - 2,8 mm | de 2,5 a 2,8 mm
sieve_over_2_5: Tamiz > 2,5 mm | Total > 2,5 mm
sieve_2_2_to_2_5: Tamiz 2,2 - 2,5 mm | de 2,2 a 2,5 mm
sieve_under_2_2: Tamiz < 2,2 mm | Bajo zaranda < 2,2 mm
thousand_corn_weight: Peso mil granos (PMG) | Peso de 1000 semillas
hectolitre_weight: Peso hectolítrico (PH)
foreign_matter: Cuerpos extraños | Impurezas totales
broken_grains: Granos quebrados | Granos partidos/rotos
dms_precursor: DMS-P (precursor) | Precursor DMS (SMM)
deoxynivalenol: Micotoxinas: DON
ochratoxin_a: Micotoxinas: OTA
lead: Plomo (Pb)
cadmium: Cadmio (Cd)
ndma: NDMA (nitrosamina)
half_glassy: Granos medio vítreos
barley_moisture: Humedad cebada
barley_protein: Proteína cebada
[captions]
supplier: Planta | Maltería (planta) | Elaborador
malt: Descripción del producto | Tipo malta | Producto/malta
batch: Nº lote | Lote/silo | Lote de producción | Lote N°
certificate: Nº certificado | Certificado N°
crop_year: Cosecha (año) | Campaña
variety: Variedad cebada | Variedades de cebada
produced_on: Elaborado el | Fecha producción
analysed_on: Fecha análisis | Fecha del análisis
delivered_on: Fecha de envío | Despachado el
best_before: Consumo preferente | Fecha de vencimiento
quantity: Peso neto (t) | Cantidad despachada
order: Su pedido | Pedido cliente N°
customer: Cliente/cervecería | Razón social cliente
[heads]
label: Ensayo | Parámetros | Análisis
result: Resultado | Valor obtenido | Lote
unit: Unidad | Unid.
method: Método | Norma
min: Mín | mín.
max: Máx | máx.
spec: Especificación | Rango especificado
typical: Rango típico
number: Nº
remark: Cumple
[titles]
batch: Certificado de calidad de malta | Informe de análisis de malta | Protocolo de análisis
specification: Ficha de producto
[basis]
dry: , b.s. | (base seca) | s/seco | (sss)
asis: , tal cual | (t/c)
[unitbasis]
dry: % b/s | % sss | % base seca
asis: % t/c
[notes]
dry: Extracto y proteína sobre sustancia seca.
[family]
EBC: Métodos de análisis EBC | Metodología: Analytica EBC
ASBC: Métodos de análisis ASBC | Metodología: ASBC
[words]
clarity: claro | límpido
odour: normal
filtration: normal | buena
nd: n.d. | no detectado
[x]
dear: Estimado cliente:
letter: Adjuntamos los resultados del análisis de su entrega.
regards: Atentamente,
subject: Análisis de malta
date: Fecha
page: Página {p} de {q}
sieve: Granulometría
sievecols: Fracción ; %
uncert: Incertidumbre ±
loq: Límite de cuantificación
reject: Límite de rechazo
contract: Valor de contrato
ok: Sí | OK
dryfoot: sobre sustancia seca
asisfoot: tal cual
legend: Abreviaturas:
code: Código
composite: Análisis de la muestra compuesta de los lotes anteriores
lots: Lotes cargados ; Silo ; Toneladas
goods: Remito ; Línea ; Artículo ; Cantidad ; Envase ; Lote ; granel ; bolsas 25 kg
analysis: Análisis de la mercancía entregada
sample: Muestra nº ; Recibida el ; Estado de la muestra ; Tomada por ; Precinto ; intacto ; cliente
mail: De ; Para ; Asunto ; Enviado
fax: FAX DE ; PARA ; PÁG.
decl: Declaraciones ; Producto no modificado genéticamente según los Reglamentos (CE) n.º 1829/2003 y 1830/2003. ; Contiene gluten de cebada; libre de los otros 13 alérgenos del anexo II del Reglamento (UE) n.º 1169/2011.
auto: Documento emitido electrónicamente, válido sin firma.
annex: Anexo: residuos y contaminantes
summary: Conclusión: el lote cumple la especificación.
other: Silo ; Matrícula ; Transportista ; Muestreado el ; Contenedor nº
cover: Se adjunta el certificado ({n} páginas).
"""

TEXTS = {"es": _ES}
