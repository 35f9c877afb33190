"""Layout kinds of the sealed set, second part: more plain certificates."""

from __future__ import annotations

from tests.sheets.content import Need
from tests.sheets.sealed_houses import House, register
from tests.sheets.sealed_tables import Style

_GREY = (0.85, 0.85, 0.85)
_RED = (0.95, 0.86, 0.84)
_BLUE = (0.8, 0.86, 0.94)
_LIMITS = Need(rows=(10, 18), limits=True, missing_units=0.015)
_METHODS = Need(rows=(10, 18), limits=True, methods=True, missing_units=0.015)
_UK = Need(rows=(8, 15), limits=True, missing_units=0.015, families=("IoB",))
_COLOURED = ("CRY", "ROA")

HOUSES = (
    House("s-p15", (("label", "unit", "value", "min", "max"), ("label", "unit", "min", "max", "value")), "address", ("halves",),
          Style("rows", pad=4, lead=1.55, slack="label"), _UK, languages=("en",), signed="person", feet="line"),
    House("s-p16", (("rounded", "value", "spec"), ("comma", "spec", "value")), "centred", ("pairs",), Style("all", _GREY, pad=4, lead=1.5),
          _UK, languages=("en",), numbers="center", place="center", fonts=("Times-Roman",), size=10.5),
    House("s-p17", (("label", "value", "unit"), ("label", "unit", "value")), "logo", ("stack",), Style("double", pad=4, lead=1.7),
          Need(rows=(6, 12), missing_units=0.015), classes=_COLOURED, place="center", signed="none"),
    House("s-p18", (("label", "unit", "spec", "value", "status"), ("label", "spec", "value", "unit", "status")), "lab", ("heads-over", "pairs"),
          Style("all", _BLUE, pad=3, lead=1.5), _LIMITS, numbers="center", size=9, issued=True),
    House("s-p19", (("number", "label", "method", "unit", "value"), ("number", "label", "unit", "value", "method")), "small", ("halves",),
          Style("all", pad=4, lead=1.5), Need(rows=(12, 20), methods=True, missing_units=0.015), signed="person", feet="line"),
    House("s-p20", (("label", "min", "max", "unit", "value"),), "banner", ("pairs",), Style("cols", _GREY, pad=4, lead=1.5, heads="center"),
          _LIMITS, numbers="decimal", fonts=("DejaVuSansCondensed", "Helvetica"), size=9),
    House("s-p21", (("label", "value", "unit", "method"),), "address", ("corner",), Style("head", pad=3, lead=1.6, slack="label"),
          Need(rows=(10, 16), methods=True, missing_units=0.015), languages=("de", "da", "nl", "cs", "sv", "pl"), intro=True, title_last=True),
    House("s-p22", (("label", "unit", "value"),), "centred", ("spread", "stack"), Style("none", pad=4, lead=1.5, slack="label", bold=True),
          Need(rows=(10, 18), missing_units=0.015), sections=True, fonts=("Courier", "LiberationMono"), size=9, feet="page", signed="none"),
    House("s-p23", (("label", "unit", "spec", "value"),), "logo", ("over", "single"), Style("outer", _RED, pad=5, lead=1.7, upper=True),
          Need(rows=(9, 15), limits=True, missing_units=0.015), bold=True, numbers="center", feet="columns"),
    House("s-p24", (("label", "value", "unit", "spec", "method"),), "lab", ("stack",), Style("rows", _GREY, pad=3, lead=1.45),
          Need(rows=(14, 22), limits=True, methods=True, contaminants=1.0, missing_units=0.015), sections=True, size=8.5, signed="person"),
    House("s-p25", (("label", "unit", "value", "min", "max"),), "address", ("pairs", "halves"), Style("all", (0.9, 0.93, 0.87), pad=4, lead=1.5),
          Need(rows=(9, 15), limits=True, missing_units=0.015), classes=("WHE", "RYE", "OAT", "MUN", "VIE"), place="right"),
    House("s-p26", (("label", "both", "spec"), ("label", "spec", "both")), "logo", ("heads-over",), Style("rows", None, pad=5, lead=1.9),
          Need(rows=(8, 13), limits=True, missing_units=0.015), fonts=("LiberationSans",), size=10.5, signed="none", feet="line"),
    House("s-p27", (("label", "method", "spec", "unit", "value"), ("label", "spec", "method", "value", "unit")), "small", ("single",),
          Style("all", _GREY, pad=3, lead=1.4, top=True), _METHODS, size=9, issued=True, said="title"),
    House("s-p28", (("label", "unit", "min", "max", "value"), ("label", "min", "max", "value", "unit")), "banner", ("spread",),
          Style("rows", _BLUE, pad=4, lead=1.6, slack="even", heads="center"), _LIMITS, numbers="center", place="center", said="below"),
    House("s-p29", (("comma", "value"), ("labelled", "value")), "centred", ("single", "stack"), Style("all", None, pad=5, lead=1.6, slack="no"),
          Need(rows=(9, 15), missing_units=0.015), fonts=("Times-Roman", "LiberationSans"), size=10.5, signed="person", feet="line"),
)  # fmt: skip
for _house in HOUSES:
    register(_house)
