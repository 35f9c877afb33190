# ruff: noqa: E501
"""English wordings of malt sheets."""

TEXT = """
[labels]
moisture: Moisture | Moisture content | Water content | MOISTURE | Malt moisture
extract_fine_dry: Extract{b}~either | Extract fine grind{b} | Fine grind extract{b} | Extract F.G.{b} | Extract (0.2 mm){b} | FGDB~dry | Extract, fine{b} | Fine extract{b} | Extract FG{b}
extract_coarse_dry: Extract coarse grind{b} | Coarse grind extract{b} | CGDB~dry | Extract, coarse{b} | Extract (1.0 mm){b}
extract_fine_as_is: Extract fine grind{b} | Extract F.G.{b} | FGAI~asis | Extract (0.2 mm){b} | Fine extract{b}
extract_coarse_as_is: Extract coarse grind{b} | CGAI~asis | Extract, coarse{b}
hwe_dry: Hot Water Extract 0.7 mm{b} | HWE (0.7 mm){b} | Hot water extract{b} | Extract 0.7mm{b} | H.W.E.{b}
hwe_as_is: Hot Water Extract 0.7 mm{b} | HWE (0.7 mm){b} | Hot water extract{b} | Extract 0.7mm{b}
hwe_fine_dry: Hot Water Extract 0.2 mm{b} | HWE (0.2 mm){b}
fine_coarse_difference: Fine/coarse difference | F/C difference | Extract difference fine-coarse | F-C diff. | Difference fine - coarse | Fine-coarse extract difference
colour: Colour | Wort colour | Color | Malt colour | Colour of wort | Laboratory wort colour
boiled_colour: Boiled wort colour | Colour after boiling | Colour, boiled wort | Color after boiling
total_nitrogen: Total nitrogen{b} | TN{b} | Total N{b} | Nitrogen, total{b} | T.N.{b}
total_protein: Total protein{b} | Protein{b} | Crude protein{b} | Protein (N x 6.25){b} | Protein total{b}
soluble_nitrogen: Total soluble nitrogen{b} | Soluble nitrogen{b} | TSN{b} | Soluble N{b} | T.S.N.{b}
soluble_protein: Soluble protein{b} | Wort protein{b} | Protein, soluble{b}
ratio_kolbach: Kolbach index | Kolbach Index (KI) | KI | Kolbach | Index of modification (Kolbach)
ratio_snr: Soluble nitrogen ratio | SNR | Soluble Nitrogen Ratio (SNR) | S.N.R. | Nitrogen ratio (TSN/TN)
ratio_st: S/T ratio | S/T | Ratio S/T | Ratio of soluble to total protein
fan: Free amino nitrogen | FAN | Free Amino Nitrogen (FAN) | Free alpha-amino nitrogen | F.A.N.
friability: Friability | Friabilimeter value | Friability (flour)
homogeneity: Homogeneity | Homogeneity (friabilimeter) | Malt homogeneity
pug: Partly unmodified grains | PUG | Partially unmodified grains (PUG) | P.U.G.~either
whole_grains: Whole grains | Whole corns | Whole unmodified grains (WUG)
glassy_grains: Glassy corns | Glassy kernels | Glassiness | Vitreous grains
dp: Diastatic power | DP | Diastatic Power (DP) | D.P. | Diastatic activity
alpha_amylase: Alpha-amylase | α-amylase | Alpha amylase (DU) | Dextrinising units | Alpha amylase activity
beta_glucan: Beta-glucan | β-glucan | Beta glucan in wort | Wort β-glucan | Beta-glucans (wort)
beta_glucan_malt: Beta-glucan in malt | Malt β-glucan
viscosity: Viscosity | Wort viscosity | Viscosity of wort | Viscosity at 20 °C
saccharification_time: Saccharification time | Saccharification | Conversion time | Sacch. time
filtration: Filtration time | Speed of filtration | Filtration rate | Run-off time
turbidity: Turbidity | Wort turbidity | Haze of wort
clarity: Clarity of wort | Wort clarity | Clarity | Appearance of wort
odour: Odour of mash | Odour | Mash odour
wort_ph: Wort pH | pH of wort | pH | pH (wort)
final_attenuation: Final attenuation (apparent) | Apparent final attenuation | Limit of attenuation, apparent | Apparent attenuation limit
relative_extract_45: Relative extract 45 °C | Hartong VZ 45 | VZ 45 °C | Hartong 45 °C
sieve_over_2_8: > 2.8 mm | Sieve > 2.8 mm | Retained on 2.8 mm | Screening above 2.8 mm | Grading > 2.8 mm
sieve_2_5_to_2_8: 2.5 - 2.8 mm | Sieve 2.5-2.8 mm | Screening 2.5 - 2.8 mm | Grading 2.5 to 2.8 mm
sieve_over_2_5: > 2.5 mm | Sieve > 2.5 mm | Screening above 2.5 mm | Grading > 2.5 mm | Retained on 2.5 mm
sieve_2_2_to_2_5: 2.2 - 2.5 mm | Sieve 2.2-2.5 mm | Grading 2.2 to 2.5 mm
sieve_under_2_2: < 2.2 mm | Screenings < 2.2 mm | Sieve < 2.2 mm | Through 2.2 mm | Screenings (< 2.2 mm)
sieve_7_64: On 7/64" | Assortment on 7/64 | 7/64 screen
sieve_6_64: On 6/64" | Assortment on 6/64 | 6/64 screen
sieve_5_64: On 5/64" | Assortment on 5/64 | 5/64 screen
sieve_5_64_through: Through 5/64" | Thru | Thru 5/64
thousand_corn_weight: Thousand corn weight | TCW | 1000 corn weight | TKW | Thousand kernel weight
hectolitre_weight: Hectolitre weight | HLW | Hectoliter weight
bushel_weight: Bushel weight | Test weight | Bu. wt.
foreign_matter: Foreign matter | Extraneous matter | Foreign material
broken_grains: Broken corns | Broken kernels | Half corns, broken
acrospire_length: Acrospire length (average) | Mean acrospire length
lipoxygenase: LOX activity | Lipoxygenase (LOX)
dms_precursor: DMS precursor | DMS-P | SMM (DMS precursor) | DMSP
sulphur_dioxide: Sulphur dioxide | SO2 | Total SO2
arsenic: Arsenic | Arsenic (As)
lead: Lead | Lead (Pb)
cadmium: Cadmium | Cadmium (Cd)
gluten: Gluten
ndma: NDMA | Nitrosamines (NDMA) | N-nitrosodimethylamine
deoxynivalenol: Deoxynivalenol | DON | Deoxynivalenol (DON)
zearalenone: Zearalenone | ZEA (zearalenone)
ochratoxin_a: Ochratoxin A | OTA | Ochratoxin A (OTA)
aflatoxin_b1: Aflatoxin B1
glycosidic_nitrile: Glycosidic nitrile | GN (glycosidic nitrile) | Glycosidic nitrile potential
predicted_spirit_yield: Predicted spirit yield | PSY
fermentability: Fermentability
fermentable_extract: Fermentable extract
cold_water_extract: Cold water extract | CWE
limit_dextrinase: Limit dextrinase
beta_amylase: Beta-amylase | β-amylase activity
gushing: Gushing potential | Gushing (overfoaming)
t2_ht2: T-2 + HT-2 toxins | T2/HT2
fumonisins: Fumonisins B1+B2
half_glassy: Half-glassy corns
mealy: Mealy corns
real_attenuation: Real degree of fermentation
wort_extract: Extract of wort (°P)
phenols: Total phenols
coagulable_nitrogen: Coagulable nitrogen
varietal_purity: Varietal purity
germinative_energy: Germinative energy
barley_moisture: Moisture
barley_protein: Protein
[captions]
supplier: Supplier | Maltster | Malting company | Producer
malt: Malt type | Product | Malt | Product name | Type of malt | Commodity
batch: Batch | Batch no. | Batch number | Lot no. | Lot | Batch code | Lot number | Batch No
certificate: Certificate no. | Certificate number | Report no. | COA no. | Analysis no.
crop_year: Crop year | Crop | Harvest | Harvest year
variety: Variety | Barley variety | Varieties
produced_on: Production date | Date of production | Produced | Date of manufacture | Kilning date
analysed_on: Date of analysis | Analysis date | Analysed on | Tested on
delivered_on: Delivery date | Date of delivery | Despatch date | Date of dispatch
best_before: Best before | Best before date | BBD | Use by
quantity: Quantity | Net weight | Amount delivered | Tonnage
order: Order no. | Your order | Purchase order | PO number | Sales order
customer: Customer | Client | Consignee | Ship to
[heads]
label: Parameter | Analysis | Test | Determination | Characteristic | PARAMETER | Property
result: Result | Results | Value | Measured value | Actual
unit: Unit | Units | UOM
method: Method | Test method | Method ref. | Reference
min: Min | Min. | Minimum | Lower limit
max: Max | Max. | Maximum | Upper limit
spec: Specification | Spec. | Limits | Spec limit | Target range
typical: Typical value | Typical | Typical analysis
previous: Previous lot | Last crop | Last year
number: No. | # | Item
remark: Remarks | Comment
[titles]
batch: Certificate of Analysis | Malt Analysis Report | CERTIFICATE OF ANALYSIS | Malt Analysis | Analysis Certificate | Report of Malt Analysis
specification: Product Specification | Malt Specification | Typical Analysis | Technical Data Sheet
[sections]
physical: Physical analysis | Physical characteristics | PHYSICAL | Grain
chemical: Chemical analysis | CHEMICAL ANALYSIS | Malt | Analysis of malt
wort: Wort analysis | Laboratory wort | WORT | Congress wort
enzymes: Enzymes | Enzyme activity
nitrogen: Nitrogen | Protein and nitrogen
modification: Modification | Cytolytic modification
contaminants: Contaminants | Residues and contaminants | Food safety
sieving: Grading | Screening | Assortment
barley: Barley | BARLEY | Raw material (barley)
malt: Malt | MALT | Finished malt
[basis]
dry: , dry | (dry) | dry basis | d.b. | , on dry | (DB) | on dry matter
asis: as is | , as is | (as is) | as-is | as received
[unitbasis]
dry: % dry | % d.b. | %, dry | % dm | % (dry)
asis: % as is | %, as is | % as-is
[notes]
dry: All extract, nitrogen and protein figures are given on dry matter. | Results on dry basis unless stated otherwise.
[family]
EBC: Methods: Analytica-EBC | Analysed according to EBC methods | EBC methods of analysis (Congress mash) | Congress mash, EBC
IoB: IoB Recommended Methods of Analysis | Analysed by IoB methods | Methods of analysis: Institute of Brewing (IoB) | IOB methods
ASBC: ASBC Methods of Analysis | Analyzed according to ASBC methods | Methods: ASBC
[words]
clarity: clear | bright | slightly opalescent | opalescent
odour: normal | pure | aromatic
filtration: normal | fast
nd: n.d. | not detected | nd
normal: normal
yes: complies
[malts]
PIL: Pilsner malt | Lager malt | Pilsen malt
XP: Extra pale malt | Extra Pale Pilsner
ALE: Pale ale malt | Ale malt | Best pale ale malt
VIE: Vienna malt
MUN: Munich malt | Munich malt type 1
CRY: Crystal malt | Caramel malt | Crystal medium
ROA: Chocolate malt | Black malt | Roasted malt
WHE: Wheat malt | Malted wheat
RYE: Rye malt
OAT: Oat malt | Malted oats
DIS: Distilling malt | Pot still malt
[children]
extract: Extract | Extract yield
extract_fine_dry: fine grind{b} | fine{b} | 0.2 mm{b}
extract_coarse_dry: coarse grind{b} | coarse{b}
extract_fine_as_is: fine grind{b} | fine{b}
hwe_dry: 0.7 mm{b}
hwe_as_is: 0.7 mm{b}
fine_coarse_difference: difference fine-coarse | difference
nitrogen: Nitrogen
total_nitrogen: total{b} | Total{b}
soluble_nitrogen: soluble{b} | Soluble{b}
protein: Protein
total_protein: total{b} | Total{b}
soluble_protein: soluble{b} | Soluble{b}
colour: Colour
wort_colour: wort | of wort
boiled_colour: after boiling | boiled wort
sieving: Grading | Sieve analysis
"""
