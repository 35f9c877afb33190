# ruff: noqa: E501
"""English wordings of the sealed sheets. Whoever works on the reading of sheets leaves the files ``sealed_*`` unread."""

from __future__ import annotations

_EN = """
[labels]
moisture: Moisture | Moisture (at despatch) | Moisture, as is | Moisture Content (oven) | Malt Moisture | H2O
extract_fine_dry: Extract, Fine Grind{b} | Fine Grind Extract{b} | Extract FG{b} | Extract F.G.D.B.~dry | Fine Grind Dry Basis~dry | Extract Fine Dry~dry | Extract, fine (dry)~dry | Extract fine grind (on dry)~dry | Ext. Fine{b} | Congress Extract (fine){b}
extract_coarse_dry: Extract, Coarse Grind{b} | Coarse Grind Extract{b} | Extract CG{b} | Coarse Grind Dry Basis~dry | Extract C.G.D.B.~dry | Ext. Coarse{b}
extract_fine_as_is: Extract, Fine Grind{b} | Fine Grind Extract{b} | Extract FG{b} | Fine Grind As Is~asis | Extract Fine As Is~asis | Extract fine grind (as received)~asis
extract_coarse_as_is: Extract, Coarse Grind{b} | Coarse Grind As Is~asis | Extract Coarse As Is~asis | Extract CG{b}
hwe_dry: Extract 0.7{b} | HWE at 0.7mm{b} | Hot Water Extract (0.7mm){b} | Extract, coarse 0.7 mm{b} | H.W.E. 0.7 mm{b}
hwe_as_is: Extract 0.7{b} | HWE at 0.7mm{b} | Hot Water Extract (0.7mm){b} | Extract, coarse 0.7 mm{b} | H.W.E. 0.7 mm{b}
hwe_fine_dry: Extract 0.2{b} | HWE at 0.2mm{b} | H.W.E. 0.2 mm{b}
fine_coarse_difference: F/C Diff. | Fine-Coarse Difference | Difference FG/CG | Extract Difference | F-C Difference | Diff. Fine/Coarse | Fine/Coarse Difference (FCD)
colour: Colour (Wort) | Wort Colour | Colour, wort | Colour | Congress Wort Colour | Colour (430 nm) | Colour - Spectro
boiled_colour: Colour after Boiling | Boiled Colour | Wort Colour (boiled) | Colour, boiled | Boiled wort colour (2 hrs)
total_nitrogen: Total Nitrogen{b} | T.N.{b} | TN (Dumas){b} | Malt TN{b} | Nitrogen (Total){b} | Total N (Dumas){b}
total_protein: Total Protein{b} | Protein{b} | Protein (Dumas){b} | Protein, total (N x 6.25){b} | Malt Protein{b} | Crude Protein{b} | T.P.{b}
soluble_nitrogen: Soluble Nitrogen{b} | T.S.N.{b} | TSN{b} | Total Soluble Nitrogen{b} | Sol. Nitrogen{b} | Nitrogen (Soluble){b}
soluble_protein: Soluble Protein{b} | Sol. Protein{b} | Wort Soluble Protein{b} | S.P.{b}
ratio_kolbach: Kolbach Index | Kolbach | K.I. | Kolbach Number | Kolbach Index (SN/TN) | Protein Modification (Kolbach)
ratio_snr: S.N.R. | SNR | Soluble Nitrogen Ratio | SNR (TSN/TN) | Nitrogen Ratio (SNR) | Index of Modification (SNR)
ratio_st: S/T | S/T Ratio | Ratio S/T | S/T Protein | Soluble / Total Protein
fan: FAN | F.A.N. | Free Amino Nitrogen | Free Amino N | FAN (wort) | Free Amino Nitrogen (ninhydrin)
friability: Friability | Friability Value | Friabilimeter | Total Friability | Friability (flour fraction)
homogeneity: Homogeneity | Homogeneity (Friabilimeter) | Homogeneity Value
pug: PUG | Partly Unmodified Grain | Partially Unmodified Grains | PUG's | P.U.G. (partly unmodified grains)
whole_grains: WUG | Whole Unmodified Grain | Whole Corns (friabilimeter) | Wholly Unmodified Grains | Whole corns
glassy_grains: Glassy | Glassy Corns | Glassy Kernels | Steely / glassy corns
dp: Diastatic Power | D.P. | DP | Diastatic Power (DP) | Diastase
alpha_amylase: Alpha Amylase | α-Amylase | Dextrinising Units | A-Amylase | Alpha-Amylase (DU) | Alpha Amylase, dry
beta_glucan: Beta Glucan | β-Glucan | Wort Beta Glucan | Beta-Glucan (wort) | B-Glucan (wort) | Beta-Glucans
beta_glucan_malt: Beta Glucan (malt)
viscosity: Viscosity | Wort Viscosity | Viscosity (wort) | Viscosity, 20 deg C | Laboratory Wort Viscosity
saccharification_time: Saccharification | Sacc. Time | Conversion | Saccharification Time | Saccharification (70 °C) | Conversion Time
filtration: Filtration | Filtration Time | Filtration Speed | Run-off | Speed of Filtration
turbidity: Turbidity | Wort Turbidity | Wort Haze
clarity: Clarity | Wort Clarity | Appearance of Wort | Clarity of filtrate
odour: Odour | Mash Odour | Odour of mash | Aroma
wort_ph: pH | Wort pH | pH (wort) | pH of Congress wort | pH Value
final_attenuation: Apparent Attenuation Limit | AAL | Limit of Attenuation (apparent) | Final Attenuation, apparent | Apparent Final Attenuation | Attenuation limit (app.)
relative_extract_45: Hartong 45 °C | VZ 45 | Hartong 45 | Relative Extract at 45°C | Hartong (VZ 45 °C)
sieve_over_2_8: >2.8mm | > 2.8 mm | Corn size >2.8 mm | Screen over 2.8 mm | Grading >2.8mm
sieve_2_5_to_2_8: 2.5-2.8mm | 2.5 - 2.8 mm | Corn size 2.5-2.8 mm | Screen 2.5-2.8 mm | Grading 2.5-2.8mm
sieve_over_2_5: >2.5mm | > 2.5 mm | Plumpness (>2.5 mm) | Corn size >2.5 mm | Retained over 2.5 mm
sieve_2_2_to_2_5: 2.2-2.5mm | 2.2 - 2.5 mm | Corn size 2.2-2.5 mm | Screen 2.2-2.5 mm | Grading 2.2-2.5mm
sieve_under_2_2: <2.2mm | Screenings <2.2mm | Screenings (<2.2 mm) | Corn size <2.2 mm | Screenings through 2.2 mm | Total screenings < 2.2 mm
sieve_7_64: on 7/64 | Assortment 7/64" | Plump 7/64 | 7/64 Screen
sieve_6_64: on 6/64 | Assortment 6/64" | Plump 6/64 | 6/64 Screen
sieve_5_64: on 5/64 | Assortment 5/64" | 5/64 Screen
sieve_5_64_through: Thru | Thru 5/64 | Thins (thru 5/64) | Thru 5/64"
thousand_corn_weight: TCW | 1000 Corn Weight | Thousand Corn Weight (dry) | 1000 Kernel Wt. | TKW
hectolitre_weight: Hectolitre Weight | HLW | Hectolitre Wt | Bulk Density (hectolitre)
bushel_weight: Bushel Weight | Bu. Wt. | Test Weight
foreign_matter: Foreign Matter | Foreign Seeds & Matter | Foreign Grains/Matter | Admixture
broken_grains: Broken Corns | Broken Kernels | Brokens | Half / Broken Corns
acrospire_length: Acrospire Length (mean)
lipoxygenase: LOX
dms_precursor: DMSP | DMS-P | SMM | DMS Precursor (as DMS)
sulphur_dioxide: SO2 | Sulphur Dioxide
arsenic: Arsenic | Arsenic (As)
lead: Lead | Lead (Pb)
cadmium: Cadmium | Cadmium (Cd)
gluten: Gluten
ndma: NDMA | Nitrosamine (NDMA) | N-Nitrosodimethylamine (NDMA)
deoxynivalenol: DON | Deoxynivalenol (DON) | DON (vomitoxin)
zearalenone: Zearalenone | ZON
ochratoxin_a: Ochratoxin A | OTA | Ochratoxin A (OTA)
aflatoxin_b1: Aflatoxin B1
glycosidic_nitrile: Glycosidic Nitrile | GN | G.N.
predicted_spirit_yield: Predicted Spirit Yield | PSY | P.S.Y.
fermentability: Fermentability | Fermentability (unboiled wort)
fermentable_extract: Fermentable Extract | F.E.
cold_water_extract: CWE | Cold Water Extract
t2_ht2: T2 + HT2 | Sum of T-2 and HT-2
gushing: Gushing Test
phenols: Phenols | Total Phenols
[captions]
supplier: Supplier | Maltings | Producer | Malting Company | Manufacturer | Production Site
malt: Product | Malt Type | Description | Material | Malt | Commodity | Product Description | Grade
batch: Batch | Batch No | Batch Number | Lot | Lot No. | Lot Number | Batch Ref. | Malt Batch | Batch ID | Lot #
certificate: Certificate No. | Certificate Number | CoA Number | Report Number | Analysis Ref. | Certificate Ref | COA #
crop_year: Crop Year | Crop | Harvest | Harvest Year | Season
variety: Variety | Barley Variety | Varieties | Barley
produced_on: Production Date | Date of Manufacture | Kilned On | Manufactured | Date Produced | Mfg. Date | Kiln Date
analysed_on: Analysis Date | Date Analysed | Date of Analysis | Date Tested | Analysed | Test Date
delivered_on: Delivery Date | Despatch Date | Date of Despatch | Ship Date | Date Shipped | Dispatched
best_before: Best Before | Best Before End | BBE | Expiry Date | Best By | Best before date
quantity: Quantity | Net Weight | Weight | Nett Weight | Delivered Quantity | Qty
order: Order No. | Customer PO | Your Order No. | PO Number | Purchase Order | Customer Order | Your Ref (PO)
customer: Customer | Customer Name | Sold To | Deliver To | Consignee | Ship To | Client
[heads]
label: Parameter | Analysis | Test | Analyte | Determination | Property | Characteristic | Item | Description
result: Result | Results | Value | Actual | Found | Batch Result | Measured
unit: Unit | Units | UoM | Unit of Measure
method: Method | Test Method | Method No. | Method Ref | Reference Method
min: Min | Min. | Minimum | Lower | Spec Min | LSL
max: Max | Max. | Maximum | Upper | Spec Max | USL
spec: Specification | Spec | Spec. | Limits | Agreed Limits | Contract Spec. | Tolerance | Customer Specification
typical: Typical | Typical Value | Typical Range | Typical Analysis
previous: Previous Batch | Last Delivery | Previous | Prior Lot
number: No. | Item | Line | Ref
remark: Comment | Remarks | Pass/Fail | Status
[titles]
batch: Certificate of Analysis | CERTIFICATE OF ANALYSIS | Malt Certificate of Analysis | Malt Analysis Certificate | Certificate of Conformity and Analysis | Malt Analysis | Quality Certificate | Analytical Report
specification: Malt Specification | Product Data Sheet | Typical Malt Analysis
[sections]
physical: Physical | Physical Analysis | Physical Tests | Grain Physical
chemical: Chemical | Malt Chemistry | Malt Analysis | Extract and Moisture
wort: Wort | Wort Analysis | Laboratory Wort Properties | Wort Properties
enzymes: Enzymes | Enzymatic | Enzyme Potential
nitrogen: Nitrogen | Protein | Protein / Nitrogen | Nitrogen Compounds
modification: Modification | Friabilimeter | Cell Wall Modification
contaminants: Contaminants | Residues | Mycotoxins & Residues | Food Safety Analysis
sieving: Screenings | Corn Size | Sieving | Screen Analysis
barley: Barley Intake | Barley used
malt: Malt | Finished Malt
[basis]
dry: dry | (dry) | DB | , d.b. | (D.B.) | dry basis | , dry basis
asis: as is | (as is) | , as is | AI | (as-is)
[unitbasis]
dry: % dry | % d.b. | %, dry basis | % (db)
asis: % as is | % (as is) | %, as-is
[notes]
dry: All results are reported on dry basis except moisture. | Extract, nitrogen and protein on dry matter basis.
[family]
EBC: Analysis by methods of the European Brewery Convention (EBC). | EBC methods | Test methods: Analytica EBC | Analysed by EBC Congress mash methods
IoB: Analysis by Institute of Brewing (IoB) methods. | IoB methods | Recommended Methods of the Institute of Brewing (IoB) | All analyses to IoB Recommended Methods
ASBC: Analyzed in accordance with ASBC Methods of Analysis. | ASBC methods | Test methods: ASBC
[words]
clarity: Clear | Bright | Slightly hazy | Sl. opalescent
odour: Normal | Aromatic | Clean
filtration: Normal | Fast | Slow
nd: ND | Not detected | n.d.
[malts]
PIL: Pilsner Malt | Lager Malt | Premium Pilsner Malt | Two Row Lager Malt
XP: Extra Light Pilsner Malt | Extra Pale Lager Malt
ALE: Pale Ale Malt | Best Ale Malt | Ale Malt Extra | Traditional Ale Malt
VIE: Vienna Malt
MUN: Munich Malt | Munich Malt II | Light Munich Malt
CRY: Crystal Malt 150 | Caramel Malt | Caramalt | Dark Crystal Malt
ROA: Chocolate Malt | Black Malt | Roasted Barley Malt
WHE: Wheat Malt | White Wheat Malt | Malted Wheat
RYE: Malted Rye | Rye Malt
OAT: Malted Oats | Oat Malt
DIS: Distilling Malt | Distillers Malt | Peated Distilling Malt
[x]
silo: Silo | Silo No. | Bin
truck: Vehicle | Truck No. | Vehicle Reg. | Trailer
note_no: Delivery Note | Delivery Note No. | Delivery No. | Bill of Lading
article: Product Code | Item Code | Material No. | SKU
sample: Sample No. | Sample Ref. | Sample ID
packing: Packaging | Packed In | Load Type
packing_text: Bulk | 25 kg bags | Bulk tanker | 1000 kg big bag
origin: Origin | Country of Origin | Barley Origin
origin_text: Northmark | Estavia
account: Customer No. | Account No. | Account
seal: Seal No. | Container No. | Seal
sampled: Sampled | Date Sampled | Sampling Date
issued: Date of Issue | Issued | Issue Date | Printed
page: Page {p} of {q} | Page {p}/{q} | {p} of {q}
tagline: Maltsters to brewers and distillers | Malt. Grain. Care. | Floor and drum maltings
auto: This certificate was produced electronically and is valid without signature. | Computer generated document - no signature required.
sample_only: Results relate only to the items tested. | The above results are from a composite sample taken at loading.
store: Store in a cool dry place, below 20 °C. Use within 12 months of production. | Keep dry and free from infestation. Shelf life 18 months from production date.
accredited: The laboratory is accredited to ISO/IEC 17025:2017, testing laboratory no. 0{n}. | Maltings certified to FSSC 22000 and ISO 9001.
verdict: The batch conforms to the agreed specification. | Batch released for delivery.
intro: We certify that the malt described below was analysed in our laboratory with these results: | Please find below the analysis of the malt supplied against your order.
signed: Quality Manager | Laboratory Manager | Head of Quality | Technical Director
checked: Approved by | Authorised by | Released by
lab: Malt Laboratory | Central Laboratory | Quality Control Laboratory
remarks: Remarks | Comments | Notes
none: None | -
fn_dry: on dry matter | reported on dry basis
weighted: Weighted average | Mean of deliveries
minmax: Lowest ; Highest
items: Pos ; Article ; Description ; Quantity
analysis_of: Analysis of the goods delivered | Malt analysis
letter_open: Dear Sir or Madam, | Dear customer,
letter_text: The malt left our works yesterday. Our laboratory found the following: | Further to your call we can give you the analysis of this lot:
letter_close: Kind regards | Yours sincerely
mail: From ; To ; Subject ; Sent
barley_rows: Barley moisture ; Barley protein ; Germinative energy
standard: Standard | Norm | Target
"""

TEXTS = {"en": _EN}
