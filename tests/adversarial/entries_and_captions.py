"""Heads of sheets in which caption and entry could belong together in more than one way."""

from tests.adversarial.case import sheet, truth

RIGHT = {"moisture": "4.3", "extract_fine_dry": "81.4", "total_protein": "10.5", "friability": "86"}
TABLE = """
Parameter | Unit | Result
Moisture | % | 4.3
Extract fine grind, dry | % | 81.4
Protein, dry | % | 10.5
Friability | % | 86
"""
TOP = "# Ashgrove Maltings Ltd\nCertificate of Analysis    Methods: EBC\n"
NAMED = {"malt": "Pilsner malt", "supplier": "Ashgrove Maltings Ltd"}


def _sheet(
    name: str,
    idea: str,
    head: str,
    batch: str | None,
    named: dict[str, str] | None = None,
    top: str = TOP,
    foot: str = "",
    fails: str = "",
) -> None:
    text = f"{top}{head.strip(chr(10))}\n{TABLE}{foot}"
    sheet(name, idea, text, truth(batch, **RIGHT, doubtful="*", head=named or NAMED), fails=fails)


_sheet(
    "previous-lot-before-lot",
    "'Previous lot' stands before 'Lot'.",
    "Product: Pilsner malt\nPrevious lot: E1500    Lot: E1501",
    "E1501",
)

_sheet(
    "sample-lot-and-delivered-lot",
    "The sample is of one lot, the delivery of another.",
    "Product: Pilsner malt\nSample from lot: E1502\nLot delivered: E1503",
    "E1502",
)

_sheet(
    "replaces-certificate-of-lot",
    "A line says which lot's certificate this one replaces.",
    "Product: Pilsner malt\nThis certificate replaces that of lot E1504 of 12.09.2025.\nLot E1505",
    "E1505",
)

_sheet(
    "barley-lot-before-malt-lot",
    "The lot of the barley stands before that of the malt.",
    "Product: Pilsner malt\nBarley lot: B1506\nMalt lot: E1506",
    "E1506",
)

_sheet(
    "barley-lot-alone",
    "Only the lot of the barley is named.",
    "Product: Pilsner malt\nLot of the barley: B1507\nBarley batch no.: B1507",
    None,
)

_sheet(
    "order-like-a-lot",
    "The customer's order number looks like a lot and stands where the lot is expected.",
    "Product: Pilsner malt\n@50 Lot @150 Your order @260 Delivery note\n@150 E-15081 @260 LS-4402",
    None,
    {**NAMED, "order": "E-15081"},
)

_sheet(
    "empty-lot-in-a-grid",
    "Captions over entries; the lot is not filled in, its neighbour's number begins a little left.",
    "Product: Pilsner malt\n@50 Order no. @120 Lot no. @190 Contract no. @290 Quantity\n"
    "@50 4711 @172 K-2231-25 @290 24,860 kg",
    None,
    {**NAMED, "order": "4711"},
)

_sheet(
    "silo-lot-and-malting-lot",
    "The lot of the malting and that of the silo are different numbers.",
    "Product: Pilsner malt\nMalting lot: E1509    Silo lot: E1510",
    None,
)

_sheet(
    "customers-article",
    "The customer calls the malt otherwise than the maltster.",
    "Your article: Munich malt 15\nOur article: Vienna malt V-8\nLot no.: E1511",
    "E1511",
    {"malt": "Vienna malt V-8", "supplier": "Ashgrove Maltings Ltd"},
)

_sheet(
    "replaces-another-malt",
    "The sheet says which malt this one can stand in for.",
    "Product: Vienna malt\nReplaces: Munich malt\nLot no.: E1512",
    "E1512",
    {"malt": "Vienna malt", "supplier": "Ashgrove Maltings Ltd"},
)

_sheet(
    "best-before-before-production",
    "The best-before date lies before the day of production: the two have been mixed up.",
    "Product: Pilsner malt    Lot no.: E1513\nProduced on: 14.11.2026    Best before: 14.11.2025",
    "E1513",
    {**NAMED, "produced_on": "-", "best_before": "-"},
)

_sheet(
    "quantity-under-batch",
    "'Batch' heads the size of the batch.",
    "Product: Pilsner malt\nBatch: 24860 kg\nBatch size: 24.86 t",
    None,
)

_sheet(
    "lot-one-of-three",
    "'Lot: 1 of 3' counts the deliveries.",
    "Product: Pilsner malt\nLot: 1 of 3\nDelivery 3 of 2025",
    None,
)

_sheet(
    "two-lots-in-one-entry",
    "The entry names two lots: the malt was mixed of both.",
    "Product: Pilsner malt\nLot no.: E1514 / E1515",
    "E1514 / E1515",
)

_sheet(
    "laboratory-named-for-malting",
    "The letterhead is that of an institute with 'malting' in its name; the maltster is the client.",
    "Client: Ashgrove Maltings Ltd\nProduct: Pilsner malt\nLot no.: E1516",
    "E1516",
    top="# Institute of Brewing and Malting, Northmere\nTest report    Methods: EBC\n",
)

_sheet(
    "letter-to-a-maltings",
    "A laboratory's letter: the maltings in the address are its reader, the malt is another's.",
    "Product: Pilsner malt    Lot no.: E1517\nMalt made by Ashgrove Maltings Ltd",
    "E1517",
    top="Northmere Laboratories\nMessrs\n*Brookline Maltings Ltd*\n4 Quay Road\nNorthmere\n\n"
    "# Test report\nMethods: EBC\n",
)

_sheet(
    "toll-malting",
    "A maltings is the customer, in the larger type.",
    "Product: Pilsner malt    Lot no.: E1518\nSupplier: Ashgrove Maltings Ltd",
    "E1518",
    top="Certificate of Analysis    Methods: EBC\nDelivered to\n# Brookline Maltings Ltd\n",
)

_sheet(
    "merchant-and-maltster",
    "A merchant's letterhead; the maltster stands behind 'origin'.",
    "Product: Pilsner malt    Lot no.: E1519\nOrigin: Ashgrove Maltings Ltd",
    "E1519",
    {"malt": "Pilsner malt", "supplier": "Ashgrove Maltings Ltd|Dunmore Malt Trading Ltd"},
    top="# Dunmore Malt Trading Ltd\nCertificate of Analysis    Methods: EBC\n",
)

_sheet(
    "sold-to-and-shipped-to",
    "Two customers beside each other, their addresses below them.",
    "Product: Pilsner malt    Lot no.: E1520\n@50 Sold to @300 Shipped to\n"
    "@50 Moorgate Brewery @300 Brookline Maltings Ltd\n"
    "@50 4 Quay Road @300 Silo 7, Gate 2\n@50 Northmere @300 Eastfield",
    "E1520",
    {**NAMED, "customer": "Moorgate Brewery|Brookline Maltings Ltd"},
)

_sheet(
    "supplier-empty-over-address",
    "'Supplier' is not filled in; the line below it begins with the customer's name, a little to the right.",
    "Lot no.: E1521    Product: Pilsner malt\n@50 Supplier: @110 Customer:\n"
    "@110 Moorgate Brewery\n@110 4 Quay Road, Northmere",
    "E1521",
    {"malt": "Pilsner malt", "customer": "Moorgate Brewery|Moorgate Brewery 4 Quay Road, Northmere"},
    top="# Certificate of Analysis\nMethods: EBC\n",
)

_sheet(
    "forwarded-email-with-older-lot",
    "A forwarded email: the older one below its head speaks of another lot.",
    "From: quality of Ashgrove Maltings\nTo: Moorgate Brewery\nSubject: Analysis of lot E1522, Pilsner malt\n"
    "Sent: 14 November 2025",
    "E1522",
    {"malt": "Pilsner malt", "supplier": "Ashgrove Maltings|Ashgrove Maltings Ltd|quality of Ashgrove Maltings"},
    top="",
    foot="\nFrom: Moorgate Brewery\nSent: 2 November 2025\nSubject: Lot E1490, Vienna malt\n"
    "We miss the analysis of lot E1490. Please send it.\n",
)

_sheet(
    "name-of-malt-spaced-out",
    "The name in spaced letters, above it a spaced slogan with another malt.",
    "# V I E N N A   M A L T\nLot no.: E1523",
    "E1523",
    {"malt": "Vienna malt|V I E N N A M A L T", "supplier": "Ashgrove Maltings Ltd"},
    top="# Ashgrove Maltings Ltd\nThe home of pale malt since 1882\nCertificate of Analysis    Methods: EBC\n",
)

_sheet(
    "captions-without-colons",
    "Captions and entries in one line without colons, the number of the silo behind the lot.",
    "Product Pilsner malt\nLot E1524 Silo 4 Truck WX4471",
    "E1524",
)

_sheet(
    "lot-and-date-in-one",
    "'Lot/Date' with both behind it.",
    "Product: Pilsner malt\nLot/Date: E1525 / 12.11.2025",
    "E1525",
)

_sheet(
    "customers-lot-and-ours",
    "The customer's number for the lot beside that of the maltster.",
    "Product: Pilsner malt\nCustomer lot no.: MB-7701    Our lot no.: E1526",
    "E1526",
)

_sheet(
    "sample-name-is-a-malt-of-reference",
    "The laboratory ran a reference malt with the sample and names it in the head.",
    "Product: Pilsner malt\nLot no.: E1527\nReference malt: Standard pilsner malt, lot RM-25",
    "E1527",
)

_sheet(
    "german-charge-of-supplier-and-own",
    "German: the goods-in number of the brewery stands before the maltster's Charge.",
    "Produkt: Pilsner Malz\nWareneingang Charge: WE-15281\nLieferantencharge: E1528",
    "E1528",
    {"malt": "Pilsner Malz", "supplier": "Mälzerei Hohenried GmbH"},
    top="# Mälzerei Hohenried GmbH\nAnalysenzertifikat    Methoden: MEBAK\n",
)

_sheet(
    "lot-of-the-sack",
    "The lot of the packaging stands before that of the malt.",
    "Product: Pilsner malt\nBig bag lot: BB-88120\nLot: E1529",
    "E1529",
)

_sheet(
    "captions-below-entries",
    "A form whose captions stand in small type below the entries, with the next entry close below.",
    "@50 Pilsner malt @200 E1530 @300 K-2231\n@50 Product @200 Lot no. @300 Order no.\n"
    "@50 24,860 kg @200 B-7731 @300 2025\n@50 Quantity @200 Barley lot @300 Crop",
    "E1530",
    {**NAMED, "order": "K-2231", "crop_year": "2025"},
)
