"""Layout kinds of the sealed set, first part: the plain certificates of many houses."""

from __future__ import annotations

from tests.sheets.content import Need
from tests.sheets.sealed_houses import House, register
from tests.sheets.sealed_tables import Style

_GREY = (0.87, 0.87, 0.87)
_BLUE = (0.82, 0.88, 0.95)
_GREEN = (0.85, 0.92, 0.84)
_SAND = (0.95, 0.92, 0.84)
_LIMITS = Need(rows=(10, 18), limits=True, missing_units=0.015)
_METHODS = Need(rows=(10, 18), limits=True, methods=True, missing_units=0.015)
_OPEN = Need(rows=(9, 17), missing_units=0.015)
_US = ("ASBC",)

HOUSES = (
    House(
        "s-p01",
        (("label", "unit", "spec", "value"), ("label", "value", "unit", "spec")),
        "logo",
        ("halves",),
        Style("all", _GREY, pad=4, lead=1.6, slack="label"),
        _LIMITS,
        signed="person",
    ),
    House(
        "s-p02",
        (("label", "method", "unit", "min", "max", "value"),),
        "address",
        ("pairs",),
        Style("all", _BLUE, pad=4, lead=1.5),
        _METHODS,
        numbers="center",
        place="center",
        issued=True,
    ),
    House(
        "s-p03",
        (("label", "value", "unit"),),
        "centred",
        ("stack",),
        Style("head", pad=4, lead=1.7, slack="no"),
        _OPEN,
        fonts=("Times-Roman", "LiberationSerif"),
        size=10.5,
        place="center",
        scale=1.4,
        signed="person",
        feet="line",
    ),
    House(
        "s-p04",
        (("label", "unit", "method", "value", "min", "max"), ("label", "method", "value", "unit", "min", "max")),
        "banner",
        ("over",),
        Style("rows", None, pad=4, lead=1.7, slack="label"),
        _METHODS,
        bold=True,
        feet="page",
    ),
    House(
        "s-p05",
        (("label", "value", "unit", "min", "max"),),
        "none",
        ("corner",),
        Style("rows", _GREY, pad=3, lead=1.5),
        _LIMITS,
        title_last=True,
        intro=True,
        said="below",
        signed="person",
    ),
    House(
        "s-p06",
        (("labelled", "spec", "value"), ("labelled", "value", "spec")),
        "logo",
        ("single",),
        Style("outer", _GREEN, stripe=(0.95, 0.97, 0.95), pad=4, lead=1.6),
        _LIMITS,
        numbers="center",
        feet="line",
    ),
    House(
        "s-p07",
        (("label", "unit", "min", "max", "value", "method"),),
        "lab",
        ("pairs", "halves"),
        Style("all", None, pad=3, lead=1.4),
        _METHODS,
        sections=True,
        size=9,
        said="below",
        signed="person",
        issued=True,
    ),
    House(
        "s-p08",
        (("label", "both"),),
        "small",
        ("spread",),
        Style("none", pad=3, lead=1.6, slack="even"),
        _OPEN,
        fonts=("Helvetica", "DejaVuSansCondensed"),
        feet="page",
        said="title",
    ),
    House(
        "s-p09",
        (("label", "unit", "value"),),
        "address",
        ("stack",),
        Style("rows", _SAND, pad=4, lead=1.6),
        Need(rows=(14, 24), missing_units=0.015),
        sections=True,
        size=9,
        place="left",
        bold=True,
    ),
    House(
        "s-p10",
        (("label", "spec", "value", "unit"), ("label", "specunit", "both")),
        "logo",
        ("pairs",),
        Style("cols", _GREY, pad=4, lead=1.5),
        _LIMITS,
        numbers="center",
        feet="columns",
        signed="person",
    ),
    House(
        "s-p11",
        (("label", "method", "value", "unit"),),
        "centred",
        ("halves", "spread"),
        Style("all", pad=4, lead=1.45),
        Need(rows=(10, 18), methods=True, missing_units=0.015),
        fonts=("LiberationSans", "LiberationSansNarrow"),
        size=10,
    ),
    House(
        "s-p12",
        (("label", "value", "min", "max", "unit"),),
        "address",
        ("heads-over",),
        Style("all", _GREY, pad=3, lead=1.35),
        _LIMITS,
        numbers="right",
        feet="none",
        fonts=("LiberationSans", "DejaVuSans"),
        size=9,
        signed="none",
    ),
    House(
        "s-p13",
        (("label", "unit", "value", "spec"),),
        "banner",
        ("stack", "halves"),
        Style("head", stripe=(0.95, 0.95, 0.95), pad=5, lead=1.8),
        Need(rows=(9, 15), limits=True, missing_units=0.015, families=("ASBC",)),
        languages=("en",),
        place="center",
        said="below",
    ),
    House(
        "s-p14",
        (("label", "both", "spec"), ("label", "both", "min", "max")),
        "centred",
        ("over",),
        Style("outer", pad=4, lead=1.6),
        Need(rows=(9, 15), limits=True, missing_units=0.015, families=("ASBC",)),
        languages=("en", "es"),
        feet="page",
        signed="person",
    ),
)
for _house in HOUSES:
    register(_house)
