"""The year of Wren & Anvil Brewery: six malts of four maltsters, a delivery of each every two weeks. All invented.

Three batches are bad, one certificate is issued again because a figure was typed wrongly, one sheet is filed twice, two
batches come without a sheet, and some sheets are typed so carelessly that a person has to look. The harvest changes in
September.
"""

from __future__ import annotations

from dataclasses import dataclass, field, replace
from datetime import date, timedelta
from random import Random

YEAR = 2025
FIRST_DAY = date(YEAR, 1, 7)
DELIVERIES = 26
NEW_HARVEST_FROM = date(YEAR, 9, 1)
CUSTOMER = "Wren & Anvil Brewery"


@dataclass(frozen=True, slots=True)
class Kind:
    """A malt as its maltster makes it: figures as (middle, half width, decimals), and what the new harvest adds."""

    supplier: str
    malt: str
    prefix: str
    language: str
    family: str
    figures: dict[str, tuple[float, float, int]]
    harvest: dict[str, float] = field(default_factory=dict)


@dataclass(frozen=True, slots=True)
class Delivery:
    """One batch as it was delivered, with what its sheet prints. ``sheet`` False: it came without one."""

    kind: Kind
    batch: str
    day: date
    crop: int
    values: dict[str, float]
    tonnes: float
    sheet: bool = True


KINDS = (
    Kind(
        "Quillbrook Maltings", "Best Pale Ale Malt", "Q", "en", "IoB",
        {"moisture": (3.0, 0.3, 1), "extract_coarse_dry": (309, 2, 0), "colour": (5.2, 0.5, 1),
         "total_nitrogen": (1.54, 0.05, 2), "nitrogen_ratio": (38.5, 1.5, 1), "friability": (92, 2, 0),
         "diastatic_power": (50, 4, 0), "viscosity": (1.53, 0.03, 2)},
        {"total_nitrogen": 0.04, "extract_coarse_dry": -1},
    ),
    Kind(
        "Quillbrook Maltings", "Crystal Malt 150", "C", "en", "IoB",
        {"moisture": (4.6, 0.4, 1), "extract_coarse_dry": (284, 3, 0), "colour": (150, 8, 0),
         "total_nitrogen": (1.66, 0.04, 2)},
        {"total_nitrogen": 0.03},
    ),
    Kind(
        "Mälzerei Harzbrunn-Ost", "Pilsner Malz", "H", "de", "EBC",
        {"moisture": (4.3, 0.3, 1), "extract_fine_dry": (81.8, 0.4, 1), "colour": (3.3, 0.3, 1),
         "total_protein": (10.3, 0.3, 1), "nitrogen_ratio": (41.5, 1.5, 1), "friability": (88, 2, 0),
         "beta_glucan": (140, 25, 0), "viscosity": (1.51, 0.03, 2), "free_amino_nitrogen": (165, 8, 0)},
        {"total_protein": 0.3, "beta_glucan": 15, "extract_fine_dry": -0.3},
    ),
    Kind(
        "Mälzerei Harzbrunn-Ost", "Weizenmalz hell", "W", "de", "EBC",
        {"moisture": (5.0, 0.3, 1), "extract_fine_dry": (84.5, 0.4, 1), "colour": (4.1, 0.4, 1),
         "total_protein": (12.6, 0.3, 1), "nitrogen_ratio": (39.0, 1.5, 1), "viscosity": (1.72, 0.05, 2)},
        {"total_protein": 0.2},
    ),
    Kind(
        "Malterie de Vrainville-le-Sec", "Malt Pale Ale", "V", "fr", "EBC",
        {"moisture": (3.7, 0.3, 1), "extract_fine_dry": (81.5, 0.4, 1), "colour": (6.5, 0.6, 1),
         "total_protein": (9.9, 0.3, 1), "nitrogen_ratio": (42.5, 1.2, 1), "friability": (90, 2, 0)},
        {"total_protein": 0.2, "friability": -1},
    ),
    Kind(
        "Tarnlow Malt Company", "Two-Row Base Malt", "T", "en", "ASBC",
        {"moisture": (4.1, 0.3, 1), "extract_fine_dry": (81.2, 0.4, 1), "colour": (1.9, 0.15, 2),
         "total_protein": (11.2, 0.3, 1), "nitrogen_ratio": (43.0, 1.2, 1), "diastatic_power": (132, 8, 0),
         "alpha_amylase": (58, 4, 0)},
        {"total_protein": 0.2},
    ),
)  # fmt: skip

# (prefix, number of the delivery from 0): what is bad about it.
BAD = {("Q", 8): {"extract_coarse_dry": 300.0}, ("H", 14): {"friability": 77.0}, ("T", 20): {"total_protein": 12.8}}
# First printed with a figure that was typed wrongly, then issued again as it should have been.
REISSUED = ("V", 5)
TYPED_WRONGLY = {"colour": 9.6}
FILED_TWICE = ("W", 3)
WITHOUT_SHEET = (("C", 11), ("H", 6))


@dataclass(frozen=True, slots=True)
class Slip:
    """How a row is printed where it is typed carelessly: another label, unit or result; None leaves it as it is."""

    label: str | None = None
    unit: str | None = None
    result: str | None = None


NO_BATCH = "batch"
# What a person has to settle, by row. One of these figures is a bad one; one sheet tells no batch number.
CARELESS: dict[tuple[str, int], dict[str, Slip]] = {
    ("Q", 3): {"colour": Slip(unit="")},
    ("H", 2): {"moisture": Slip(result="43")},
    ("C", 4): {NO_BATCH: Slip()},
    ("H", 14): {"friability": Slip(result="77 ?")},
    ("T", 9): {"extract_fine_dry": Slip(label="Extract, fine grind")},
    ("W", 17): {"nitrogen_ratio": Slip(label="ELG oder Kolbach", result="3O,5"), "colour": Slip(unit="")},
}

AGREED = """\
# What Wren & Anvil Brewery has agreed with its maltsters.

[[agreed]]
supplier = "Quillbrook Maltings"
malt = "Best Pale Ale Malt"
limits = [
  { parameter = "moisture", max = 3.5 },
  { parameter = "extract_coarse_dry", min = 305, unit = "L°/kg", family = "IoB" },
  { parameter = "colour", min = 4.0, max = 6.5, unit = "EBC", family = "IoB" },
  { parameter = "total_nitrogen", min = 1.40, max = 1.68 },
  { parameter = "nitrogen_ratio", min = 36, max = 42, family = "IoB" },
  { parameter = "friability", min = 86 },
]

[[agreed]]
supplier = "Quillbrook Maltings"
malt = "Crystal Malt 150"
limits = [
  { parameter = "moisture", max = 6 },
  { parameter = "colour", min = 135, max = 165, unit = "EBC", family = "IoB" },
]

[[agreed]]
supplier = "Mälzerei Harzbrunn-Ost"
malt = "Pilsner Malz"
limits = [
  { parameter = "moisture", max = 5 },
  { parameter = "extract_fine_dry", min = 80.5, family = "EBC" },
  { parameter = "total_protein", max = 11.2 },
  { parameter = "friability", min = 84 },
  { parameter = "beta_glucan", max = 220, family = "EBC" },
]

[[agreed]]
supplier = "Mälzerei Harzbrunn-Ost"
malt = "Weizenmalz hell"
limits = [
  { parameter = "moisture", max = 6 },
  { parameter = "total_protein", max = 13.6 },
]

[[agreed]]
supplier = "Malterie de Vrainville-le-Sec"
malt = "Malt Pale Ale"
limits = [
  { parameter = "moisture", max = 4.5 },
  { parameter = "colour", min = 5.0, max = 8.0, unit = "EBC", family = "EBC" },
  { parameter = "friability", min = 84 },
]

[[agreed]]
supplier = "Tarnlow Malt Company"
malt = "Two-Row Base Malt"
limits = [
  { parameter = "moisture", max = 5 },
  { parameter = "extract_fine_dry", min = 80, family = "ASBC" },
  { parameter = "total_protein", max = 12.2 },
  { parameter = "diastatic_power", min = 110, unit = "°Lintner" },
]
"""


def deliveries(seed: int = 7) -> list[Delivery]:
    """Every batch of the year in the order of its day; the same seed gives the same."""
    rng = Random(seed)
    found: list[Delivery] = []
    for place, kind in enumerate(KINDS):
        for number in range(DELIVERIES):
            day = FIRST_DAY + timedelta(days=14 * number + 2 * place)
            crop = YEAR if day >= NEW_HARVEST_FROM else YEAR - 1
            values = _values(rng, kind, new_harvest=crop == YEAR)
            values |= BAD.get((kind.prefix, number), {})
            batch = f"{kind.prefix}{YEAR % 100}-{number * 7 + 11:03d}"
            sheet = (kind.prefix, number) not in WITHOUT_SHEET
            found.append(Delivery(kind, batch, day, crop, values, rng.choice((2.0, 5.0, 7.5, 10.0)), sheet))
    return sorted(found, key=lambda delivery: (delivery.day, delivery.batch))


def _values(rng: Random, kind: Kind, *, new_harvest: bool) -> dict[str, float]:
    values: dict[str, float] = {}
    for name, (middle, half, decimals) in kind.figures.items():
        shift = kind.harvest.get(name, 0.0) if new_harvest else 0.0
        values[name] = round(middle + shift + rng.uniform(-half, half), decimals)
    return values


def number_of(delivery: Delivery) -> tuple[str, int]:
    """Prefix and number of a delivery, as BAD and the others name it."""
    return delivery.kind.prefix, (int(delivery.batch.partition("-")[2]) - 11) // 7


def wrongly_typed(delivery: Delivery) -> Delivery:
    """The first, wrong certificate of the batch that was issued again."""
    return replace(delivery, values=delivery.values | TYPED_WRONGLY)


def deliveries_csv(found: list[Delivery]) -> str:
    """What the goods-in book says, with the batches that came without a sheet."""
    lines = ["day,supplier,malt,batch,tonnes"]
    lines += [f"{d.day.isoformat()},{d.kind.supplier},{d.kind.malt},{d.batch},{d.tonnes:g}" for d in found]
    return "\n".join(lines) + "\n"
