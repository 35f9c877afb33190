# ruff: noqa: E501
"""Spanish wordings of malt sheets."""

TEXT = """
[labels]
moisture: Humedad | Contenido de humedad | Humedad de la malta | Contenido de agua
extract_fine_dry: Extracto{b}~either | Extracto molienda fina{b} | Extracto fino{b} | Extracto{b} (molienda fina) | Extracto M.F.{b}
extract_coarse_dry: Extracto molienda gruesa{b} | Extracto grueso{b}
extract_fine_as_is: Extracto molienda fina{b} | Extracto fino{b}
extract_coarse_as_is: Extracto molienda gruesa{b}
hwe_dry: Extracto en agua caliente 0,7 mm{b}
hwe_as_is: Extracto en agua caliente 0,7 mm{b}
fine_coarse_difference: Diferencia fina-gruesa | Diferencia de extracto fino-grueso | Diferencia F/G
colour: Color | Color del mosto | Color de la malta
boiled_colour: Color después de cocción | Color del mosto hervido
total_nitrogen: Nitrógeno total{b} | N total{b}
total_protein: Proteína total{b} | Proteínas totales{b} | Proteína{b} | Proteína{b} (N x 6,25)
soluble_nitrogen: Nitrógeno soluble{b} | N soluble{b} | Nitrógeno soluble total{b}
soluble_protein: Proteína soluble{b} | Proteínas solubles{b}
ratio_kolbach: Índice de Kolbach | Índice Kolbach | Kolbach
ratio_snr: Relación nitrógeno soluble / total
ratio_st: Relación S/T | S/T | Proteína soluble / total
fan: Nitrógeno amínico libre | FAN | Nitrógeno amino libre (FAN) | Amino nitrógeno libre
friability: Friabilidad | Friabilidad de la malta
homogeneity: Homogeneidad
pug: Granos parcialmente modificados (PUG) | PUG
whole_grains: Granos enteros
glassy_grains: Granos vítreos | Vitrosidad
dp: Poder diastásico | Poder diastático | PD
alpha_amylase: Alfa-amilasa | α-amilasa | Actividad alfa-amilasa
beta_glucan: Betaglucanos | β-glucanos en mosto | Beta-glucanos
viscosity: Viscosidad | Viscosidad del mosto
saccharification_time: Tiempo de sacarificación | Sacarificación
filtration: Tiempo de filtración | Velocidad de filtración | Filtración
turbidity: Turbidez | Turbidez del mosto
clarity: Claridad del mosto | Aspecto del mosto | Claridad
odour: Olor de la maceración | Olor
wort_ph: pH del mosto | pH
final_attenuation: Atenuación límite aparente | Atenuación límite (aparente)
relative_extract_45: Hartong VZ 45 °C | VZ 45 °C | Índice de Hartong 45 °C
sieve_over_2_8: > 2,8 mm | Calibre > 2,8 mm | Retención 2,8 mm
sieve_2_5_to_2_8: 2,5 - 2,8 mm | Calibre 2,5 - 2,8 mm
sieve_over_2_5: > 2,5 mm | Calibre > 2,5 mm
sieve_2_2_to_2_5: 2,2 - 2,5 mm | Calibre 2,2 - 2,5 mm
sieve_under_2_2: < 2,2 mm | Calibre < 2,2 mm
sieve_7_64: Sobre tamiz 7/64
sieve_6_64: Sobre tamiz 6/64
sieve_5_64: Sobre tamiz 5/64
sieve_5_64_through: Pasante 5/64
thousand_corn_weight: Peso de mil granos | Peso de 1000 granos
hectolitre_weight: Peso hectolítrico | Peso hectolitro
bushel_weight: Peso por bushel
foreign_matter: Materias extrañas | Impurezas
broken_grains: Granos partidos | Granos rotos
acrospire_length: Longitud media del acrospiro
lipoxygenase: Actividad LOX
dms_precursor: Precursor de DMS | DMS-P
sulphur_dioxide: Dióxido de azufre
arsenic: Arsénico
lead: Plomo
cadmium: Cadmio
ndma: NDMA | Nitrosaminas (NDMA)
deoxynivalenol: Deoxinivalenol | DON | Deoxinivalenol (DON)
zearalenone: Zearalenona
ochratoxin_a: Ocratoxina A | OTA
aflatoxin_b1: Aflatoxina B1
cold_water_extract: Extracto en agua fría
beta_amylase: Beta-amilasa
limit_dextrinase: Dextrinasa límite
gushing: Gushing (sobreespumado)
t2_ht2: Toxinas T-2 + HT-2
fumonisins: Fumonisinas
half_glassy: Granos semivítreos
mealy: Granos harinosos
real_attenuation: Atenuación real
wort_extract: Extracto del mosto (°P)
coagulable_nitrogen: Nitrógeno coagulable
varietal_purity: Pureza varietal
germinative_energy: Energía germinativa
barley_moisture: Humedad
barley_protein: Proteína
[captions]
supplier: Proveedor | Maltería | Fabricante
malt: Tipo de malta | Producto | Malta
batch: Lote | N.º de lote | Número de lote | Lote nº
certificate: Certificado nº | N.º de certificado | Informe nº
crop_year: Cosecha | Año de cosecha
variety: Variedad | Variedad de cebada
produced_on: Fecha de producción | Fecha de fabricación | Fecha de elaboración
analysed_on: Fecha de análisis | Analizado el
delivered_on: Fecha de entrega | Fecha de despacho
best_before: Consumir preferentemente antes de | Fecha de caducidad
quantity: Cantidad | Peso neto
order: Pedido nº | N.º de pedido | Orden de compra
customer: Cliente | Destinatario
[heads]
label: Parámetro | Análisis | Determinación | Característica
result: Resultado | Valor | Resultados
unit: Unidad | Unidades
method: Método | Método de análisis
min: Mín. | Mín | Mínimo
max: Máx. | Máx | Máximo
spec: Especificación | Límites | Especificaciones
typical: Valor típico | Típico
previous: Lote anterior | Cosecha anterior
number: N.º
remark: Observaciones
[titles]
batch: Certificado de análisis | Hoja de análisis de malta | CERTIFICADO DE ANÁLISIS | Análisis de malta
specification: Especificación de producto | Ficha técnica
[sections]
physical: Análisis físico | Características físicas
chemical: Análisis químico | Análisis de la malta
wort: Análisis del mosto | Mosto de laboratorio
enzymes: Enzimas | Actividad enzimática
nitrogen: Nitrógeno | Proteínas
modification: Modificación
contaminants: Contaminantes | Residuos
sieving: Granulometría | Calibre
barley: Cebada
malt: Malta
[basis]
dry: s.s.s. | sobre seco | (s.s.) | base seca | , b.s.
asis: tal cual | (tal cual) | s/ tal cual
[unitbasis]
dry: % s.s. | % b.s. | % s.s.s.
asis: % tal cual | % t.c.
[notes]
dry: Extracto y proteína expresados sobre sustancia seca.
[family]
EBC: Métodos EBC | Análisis según Analytica-EBC | Métodos de análisis: EBC
ASBC: Métodos ASBC | Análisis según métodos ASBC
[words]
clarity: claro | brillante | ligeramente opalescente
odour: normal | puro
filtration: normal | rápida
nd: n.d. | no detectado
[malts]
PIL: Malta Pilsen | Malta Pilsner
XP: Malta extra pálida
ALE: Malta Pale Ale
VIE: Malta Viena
MUN: Malta Múnich
CRY: Malta caramelo | Malta cristal
ROA: Malta chocolate | Malta tostada
WHE: Malta de trigo
RYE: Malta de centeno
OAT: Malta de avena
DIS: Malta para destilería
[children]
extract: Extracto
extract_fine_dry: molienda fina{b} | fino{b}
extract_coarse_dry: molienda gruesa{b} | grueso{b}
extract_fine_as_is: molienda fina{b} | fino{b}
fine_coarse_difference: diferencia fino-grueso | diferencia
nitrogen: Nitrógeno
total_nitrogen: total{b}
soluble_nitrogen: soluble{b}
protein: Proteína
total_protein: total{b}
soluble_protein: soluble{b}
colour: Color
wort_colour: del mosto
boiled_colour: después de cocción
sieving: Granulometría
"""
