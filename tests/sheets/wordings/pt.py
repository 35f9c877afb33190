"""Portuguese wordings of malt sheets."""

TEXT = """
[labels]
moisture: Umidade | Humidade | Teor de água
extract_fine_dry: Extrato moagem fina{b} | Extrato fino{b}
extract_coarse_dry: Extrato moagem grossa{b} | Extrato grosso{b}
extract_fine_as_is: Extrato moagem fina{b}
fine_coarse_difference: Diferença fino-grosso | Diferença de extrato fino/grosso
colour: Cor | Cor do mosto
boiled_colour: Cor após fervura
total_nitrogen: Nitrogênio total{b} | Azoto total{b}
total_protein: Proteína total{b} | Proteínas totais{b}
soluble_nitrogen: Nitrogênio solúvel{b} | Azoto solúvel{b}
soluble_protein: Proteína solúvel{b}
ratio_kolbach: Índice de Kolbach | Índice Kolbach
ratio_st: Relação S/T
fan: FAN | Nitrogênio amínico livre
friability: Friabilidade
homogeneity: Homogeneidade
glassy_grains: Grãos vítreos
whole_grains: Grãos inteiros
dp: Poder diastático | Poder diastásico
alpha_amylase: Alfa-amilase
beta_glucan: Beta-glucanos | Beta-glucanas no mosto
viscosity: Viscosidade | Viscosidade do mosto
saccharification_time: Tempo de sacarificação | Sacarificação
filtration: Tempo de filtração
clarity: Claridade do mosto | Aspecto do mosto
wort_ph: pH do mosto | pH
final_attenuation: Atenuação limite aparente
relative_extract_45: Hartong VZ 45 °C
sieve_over_2_8: > 2,8 mm
sieve_2_5_to_2_8: 2,5 - 2,8 mm
sieve_over_2_5: > 2,5 mm
sieve_2_2_to_2_5: 2,2 - 2,5 mm
sieve_under_2_2: < 2,2 mm
thousand_corn_weight: Peso de mil grãos
hectolitre_weight: Peso hectolitro | Peso hectolítrico
foreign_matter: Matérias estranhas | Impurezas
broken_grains: Grãos quebrados
dms_precursor: Precursor de DMS
ndma: NDMA
deoxynivalenol: Desoxinivalenol | DON
ochratoxin_a: Ocratoxina A
lead: Chumbo
gushing: Gushing
barley_moisture: Umidade
barley_protein: Proteína
germinative_energy: Energia germinativa
varietal_purity: Pureza varietal
[captions]
supplier: Fornecedor | Maltaria
malt: Tipo de malte | Produto
batch: Lote | Número do lote | Lote n.º
certificate: Certificado n.º
crop_year: Safra | Colheita
variety: Variedade
produced_on: Data de produção | Data de fabricação
analysed_on: Data da análise
delivered_on: Data de entrega
best_before: Validade | Consumir de preferência antes de
quantity: Quantidade | Peso líquido
order: Pedido n.º | Encomenda n.º
customer: Cliente
[heads]
label: Parâmetro | Análise
result: Resultado | Valor
unit: Unidade
method: Método
min: Mín.
max: Máx.
spec: Especificação
typical: Valor típico
previous: Lote anterior
number: N.º
remark: Observações
[titles]
batch: Certificado de análise | Ficha de Análise do Malte
specification: Especificação do produto
[sections]
physical: Análise física
chemical: Análise química
wort: Análise do mosto
enzymes: Enzimas
nitrogen: Proteínas
modification: Modificação
contaminants: Contaminantes
sieving: Classificação
barley: Cevada
malt: Malte
[basis]
dry: base seca | (b.s.) | sobre seco
asis: tal qual | (tal qual)
[unitbasis]
dry: % b.s. | % base seca
asis: % tal qual
[notes]
dry: Extrato e proteína expressos em base seca.
[family]
EBC: Métodos EBC | Análise segundo Analytica-EBC
ASBC: Métodos ASBC
[words]
clarity: límpido | claro
odour: normal
filtration: normal
nd: n.d.
[malts]
PIL: Malte Pilsen
XP: Malte extra claro
ALE: Malte Pale Ale
VIE: Malte Viena
MUN: Malte Munique
CRY: Malte caramelo
ROA: Malte chocolate
WHE: Malte de trigo
RYE: Malte de centeio
OAT: Malte de aveia
DIS: Malte para destilaria
"""
