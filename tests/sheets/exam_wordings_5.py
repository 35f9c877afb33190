# ruff: noqa: E501
"""Spanish wordings of the exam sheets; unread by whoever works on the reading of sheets."""

from __future__ import annotations

_ES = """
[labels]
moisture: Humedad (105 °C, 3 h) | Hum. | Pérdida por secado | Agua, contenido de | Humedad (EBC 4.2) | Humedad en estufa
extract_fine_dry: Extracto, molienda 0,2 mm{b} | Rendimiento fino{b} | Extracto (harina fina){b} | Extr. fino{b} | Rendimiento en extracto, fina{b}
extract_coarse_dry: Extracto, molienda 1,0 mm{b} | Rendimiento grueso{b} | Extr. grueso{b}
extract_fine_as_is: Rendimiento fino{b} | Extr. fino{b}
extract_coarse_as_is: Rendimiento grueso{b} | Extr. grueso{b}
fine_coarse_difference: Diferencia de moliendas | Dif. F-G | Diferencia extracto (fina - gruesa) | Diferencia harina/grano grueso
colour: Color, mosto sin hervir | Color (430 nm) | Mosto, color | Color espectrofotométrico
boiled_colour: Color, mosto hervido | Color de cocción | Color tras 2 h de hervor
total_nitrogen: Nitrógeno, total{b} | N tot.{b} | Nitrógeno (Dumas){b} | Nitrógeno de la malta{b}
total_protein: Proteínas, totales{b} | Prot. tot.{b} | Proteína (6,25 × N){b} | Proteína cruda{b}
soluble_nitrogen: Nitrógeno, soluble{b} | N sol.{b} | Nitrógeno soluble del mosto{b}
soluble_protein: Proteínas, solubles{b} | Prot. sol.{b} | Proteína del mosto{b}
ratio_kolbach: Kolbach (índice) | Índ. Kolbach | Grado de solubilización (Kolbach)
ratio_st: Proteína sol./tot. | Relación soluble/total
fan: Nitrógeno amínico, libre | N amino libre | FAN del mosto | N α-amínico
friability: Friab. | Friabilidad (friabilímetro, 8 min) | Prueba de friabilidad
homogeneity: Homog. | Homogeneidad (friabilímetro) | Uniformidad (homogeneidad)
glassy_grains: Granos, vítreos | Granos vítreos enteros | Vítreos~either
whole_grains: Enteros (friabilímetro) | Granos, enteros
pug: Parcialmente modificados | Granos parc. modificados (PUG)
dp: Poder, diastásico | Pod. diastásico | Diastasa | Actividad diastásica
alpha_amylase: Amilasa, alfa- | α-Amil. | Unidades dextrinizantes (alfa-amilasa)
beta_glucan: Glucanos, beta- (mosto) | B-glucanos | β-Glucano en mosto (FIA)
viscosity: Visc. del mosto | Viscosidad, caída de bola | Viscosidad (mosto 8,6 %)
saccharification_time: Sacarif. | Tiempo de conversión (yodo) | Normalidad al yodo en
filtration: Escurrido del mosto | Tiempo de escurrido | Filtración, tiempo
turbidity: Turbiedad del mosto | Turbidez (90°)
clarity: Mosto, aspecto | Limpidez del mosto
odour: Olor de maceración | Aroma del macerado
wort_ph: Acidez del mosto (pH) | pH (20 °C) | Mosto, pH
final_attenuation: Atenuación final aparente | At. límite ap. | Grado final de atenuación (aparente)
relative_extract_45: Extracto relativo 45 °C | VZ45
sieve_over_2_8: Tamiz I (sobre 2,8 mm) | + 2,8 mm | Retenido en 2,8 mm | ≥ 2,8 mm
sieve_2_5_to_2_8: Tamiz II (2,8 a 2,5 mm) | 2,8/2,5 mm
sieve_over_2_5: Tamiz I + II (sobre 2,5 mm) | Retenido en 2,5 mm | ≥ 2,5 mm
sieve_2_2_to_2_5: Tamiz III (2,5 a 2,2 mm) | 2,5/2,2 mm
sieve_under_2_2: Pasa 2,2 mm | Fondo < 2,2 mm | Bajo 2,2 mm
thousand_corn_weight: Peso, mil granos | P.M.G. | Masa de 1000 granos
hectolitre_weight: Peso hl | Densidad aparente (hl)
foreign_matter: Materias, extrañas | Semillas extrañas
broken_grains: Granos, rotos | Granos dañados | Partidos~either
dms_precursor: Precursor (DMS) | DMS potencial
deoxynivalenol: Micotoxina DON | DON (vomitoxina)
ochratoxin_a: Micotoxina OTA | Ocratoxina-A
lead: Plomo, Pb
arsenic: Arsénico, As
cadmium: Cadmio, Cd
ndma: N-DMA | Nitrosamina NDMA
half_glassy: Granos, semivítreos
barley_moisture: Humedad de la cebada
barley_protein: Proteína de la cebada
[captions]
supplier: Suministrado por | Malteador
malt: Variedad de malta | Artículo | Denominación
batch: Nuestro lote | Identificación de lote | Lote de malteo
certificate: Boletín nº | Ref. análisis
crop_year: Cosecha (año) | Cebada de cosecha
variety: Variedad(es) | Variedad cervecera
produced_on: Malteado el | Salida de tostador | Fabricado el
analysed_on: Análisis del | Fecha laboratorio | Ensayado el
delivered_on: Despachado el | Fecha de carga
best_before: Consumo preferente antes de | Cad.
quantity: Neto entregado | Cantidad entregada | Tonelaje
order: S/pedido | Nº pedido
customer: Entregado a
[heads]
label: Determinación de | Parámetro analizado | Característica medida
result: Hallado | Valor lab. | Nuestro resultado
unit: Expresado en | Ud. | Medida en
method: Método nº | Procedimiento
min: no menor de | Lím. inf.
max: no mayor de | Lím. sup.
spec: Límites pactados | Exigencia
typical: Valor corriente | Habitual
previous: Entrega anterior
number: Renglón
remark: Dictamen
[titles]
batch: Certificado de calidad malta | Análisis de la malta entregada | Ficha de laboratorio malta
specification: Exigencias de malta
[sections]
physical: Características del grano
chemical: Análisis básico
wort: Maceración de laboratorio
enzymes: Poder enzimático
nitrogen: Balance nitrogenado
modification: Desagregación
contaminants: Inocuidad
sieving: Fracciones de tamiz
barley: Cebada recibida
malt: Malta terminada
[basis]
dry: , M.S. | (sobre M.S.) | sobre malta seca | (mat. seca)
asis: , sobre malta húmeda | (tal cual recibida) | , sin secar
[unitbasis]
dry: % M.S. | % s/m.s. | % sobre seco
asis: % húmedo
[notes]
dry: Extracto, nitrógeno y proteína se dan sobre materia seca.
[family]
EBC: Metodología: Analytica-EBC | Según EBC, maceración Congreso
ASBC: Metodología: ASBC
[words]
clarity: límpido | algo turbio
odour: a malta, limpio | habitual
filtration: buena | rápida
nd: no encontrado | n.d.
[x]
carried: Suma y sigue de la página 1 | Viene de la página 1
continued: sigue en la página 2 | continúa
mean: Media | Promedio
lowest: Valor mínimo del mes | Más bajo
highest: Valor máximo del mes | Más alto
own: Lab. maltería | Laboratorio propio
other: Lab. independiente | Laboratorio externo
certified: Valor certificado
now: Esta entrega | Lote actual
before: Entrega anterior | Última entrega
crop: Cosecha {y} | Nueva cosecha {y}
oldcrop: Promedio cosecha {y} | Media cosecha {y}
target: Objetivo | Meta
inunit: en {u}: | Expresado en {u} | Unidad: {u}
watermark: COPIA | ORIGINAL | CONFIDENCIAL
det: 1ª det. ; 2ª det. ; Media
ok: OK | cumple | conforme
intro: Hemos examinado la muestra recibida e informamos lo siguiente. | El lote se muestreó en la carga y se analizó en nuestro laboratorio.
say: {l} alcanza {v}. | Para {l} hallamos {v}. | {l} se sitúa en {v}.
small: Otros valores: | También determinado:
note: Albarán ; Albarán nº ; Peso bruto ; Tara ; Peso neto ; Palés ; Sacos de 25 kg ; Ticket de báscula ; Precinto nº ; Teléfono ; Fax ; NIF-IVA ; Total página ; Línea ; Precio por tonelada ; Importe
intake: Recepción de cebada ; Muestra nº ; Calibre sobre 2,5 mm
"""

TEXTS = {"es": _ES}
