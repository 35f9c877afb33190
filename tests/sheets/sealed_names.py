"""Invented names, places, unit spellings, dates and small habits of the sealed sheets."""

from __future__ import annotations

from datetime import date
from random import Random

from tests.sheets.numbers import PrintedDate
from tests.sheets.truth import Certainty

SUPPLIERS = {
    "en": (
        "Brackenholt Maltings Ltd",
        "Pellworth Malt",
        "Stourmere Malting Company",
        "Tallow Creek Malt Co.",
        "Kirrabilla Malt Pty Ltd",
        "Ashgrove & Dunmore Maltsters",
    ),
    "de": (
        "Mälzerei Lindhorst & Söhne GmbH",
        "Malzfabrik Haselrieth",
        "Mälzerei Obersteinach AG",
        "Malzkontor Wiesgrund",
    ),
    "fr": ("Malteries Lagrenée", "Malterie des Hauts Plateaux", "Malterie Sauveterre-Grains"),
    "nl": ("Mouterij De Korenaar B.V.", "Mouterij Waterlander"),
    "es": ("Malteros Unidos de Robledal S.A.", "Maltería San Telmo Alto"),
    "it": ("Malteria Rocca Fiorita", "Malteria Valbruna S.p.A."),
    "pt": ("Malteria Vale Dourado", "Maltaria Ribeirinha"),
    "cs": ("Sladovna Kamenná Lhota", "Sladovny Horní Vlčice s.r.o."),
    "da": ("Malteriet Egelund A/S", "Vesterhede Malteri"),
    "pl": ("Słodownia Jarzębiec Sp. z o.o.", "Słodownia Wierzbno"),
    "sv": ("Mälteriet Nornäs AB", "Södra Ekens Mälteri"),
}
CUSTOMERS = {
    "en": ("Marlpit Brewery Ltd", "The Long Acre Brewing Company", "Two Tides Brewhouse", "Glen Arrochbeg Distillery"),
    "de": ("Brauerei Kranichhof", "Schlossbrauerei Wolkenberg KG", "Brauhaus am Lechgraben"),
    "fr": ("Brasserie de l'Écluse Neuve", "Brasserie Montferrand-le-Vieux"),
    "nl": ("Brouwerij De Rietvink", "Brouwerij Oude Sluis"),
    "es": ("Cervecera del Puerto Hondo", "Cervezas La Encina"),
    "it": ("Birrificio Acquachiara", "Birra Torrevecchia"),
    "pt": ("Cervejaria Ponte Alta", "Cervejaria Rio Claro Velho"),
    "cs": ("Pivovar Zlatá Vydra", "Pivovar Hradební"),
    "da": ("Bryggeriet Havnegården", "Lille Ask Bryghus"),
    "pl": ("Browar Srebrny Staw", "Browar Wądół"),
    "sv": ("Bryggeri Lommen", "Hamnens Ångbryggeri"),
}
STREETS = {
    "en": ("The Maltings, Station Road 14", "QZ12 8AB Brackenholt"),
    "de": ("Mühlenweg 6-8", "00873 Haselrieth"),
    "fr": ("ZI des Orges, 27 rue du Silo", "00310 Lagrenée"),
    "nl": ("Havenkade 112", "0081 AB Korenaar"),
    "es": ("Ctra. Robledal km 7", "00712 Robledal"),
    "it": ("Via Orzaiola 9", "00125 Valbruna"),
    "pt": ("Rua do Silo 210", "00045-090 Ribeirinha"),
    "cs": ("Nádražní 318", "000 12 Kamenná Lhota"),
    "da": ("Industrivej 41", "0071 Egelund"),
    "pl": ("ul. Kolejowa 17", "00-041 Wierzbno"),
    "sv": ("Spannmålsgatan 3", "000 17 Nornäs"),
}
TOWNS = {  # where the customers are
    "en": ("2 Brewhouse Yard", "PX3 1ZZ Marlpit"),
    "de": ("Brauereistraße 1", "00455 Kranichhof"),
    "fr": ("3, place du Brassin", "00640 Écluse"),
    "nl": ("Brouwersgracht 8", "0044 XZ Rietvink"),
    "es": ("Calle Lúpulo 22", "00933 Puerto Hondo"),
    "it": ("Piazza del Tino 4", "00844 Torrevecchia"),
    "pt": ("Largo do Lúpulo 6", "00081-110 Ponte Alta"),
    "cs": ("Pivovarská 5", "000 71 Hradec"),
    "da": ("Bryggervej 12", "0083 Lille Ask"),
    "pl": ("ul. Browarna 2", "00-052 Staw"),
    "sv": ("Bryggargatan 9", "000 44 Lommen"),
}
PEOPLE = ("K. Aldridge", "M. Thorvik", "S. Pellerin", "A. Brandau", "J. Novotka", "L. Farrugi")
VARIETIES = ("Caldera Spring", "Marenka", "Ortolan", "Vidrona", "Pelican", "Sunniva", "Marenka / Vidrona", "Tolmie")
BRANDS = ("", "", "", "", " Classic", " Select", " 'Otter'", " 2RS", " Organic")
_SIGNS = ("≥ {v}", "≤ {v}", "{a} - {b}")
_BARE = (">{v}", "<{v}", "{a}-{b}")
RANGE_FORMS: dict[str, tuple[tuple[str, str, str], ...]] = {
    "en": (
        ("min {v}", "max {v}", "{a} - {b}"),
        ("{v} min", "{v} max", "{a}-{b}"),
        _SIGNS,
        _BARE,
        ("Min. {v}", "Max. {v}", "{a} to {b}"),
        ("> {v}", "< {v}", "{a} - {b}"),
        (">= {v}", "<= {v}", "{a} - {b}"),
    ),
    "de": (
        ("min. {v}", "max. {v}", "{a} - {b}"),
        ("mind. {v}", "max. {v}", "{a} - {b}"),
        _SIGNS,
        _BARE,
        ("> {v}", "< {v}", "{a} - {b}"),
        ("min {v}", "max {v}", "{a} bis {b}"),
    ),
    "fr": (
        ("mini {v}", "maxi {v}", "{a} à {b}"),
        ("min. {v}", "max. {v}", "{a} - {b}"),
        _SIGNS,
        ("> {v}", "< {v}", "{a} à {b}"),
    ),
    "nl": (("min. {v}", "max. {v}", "{a} - {b}"), ("> {v}", "< {v}", "{a} - {b}"), _SIGNS),
    "es": (("mín. {v}", "máx. {v}", "{a} - {b}"), ("Min {v}", "Max {v}", "{a} a {b}"), _SIGNS),
    "it": (("min. {v}", "max. {v}", "{a} - {b}"), ("> {v}", "< {v}", "{a} - {b}"), _SIGNS),
    "pt": (("mín. {v}", "máx. {v}", "{a} - {b}"), _SIGNS),
    "cs": (("min. {v}", "max. {v}", "{a} - {b}"), _SIGNS, ("min. {v}", "max. {v}", "{a} až {b}")),
    "da": (("min. {v}", "maks. {v}", "{a} - {b}"), ("min. {v}", "max. {v}", "{a}-{b}")),
    "pl": (("min. {v}", "max. {v}", "{a} - {b}"), ("≥ {v}", "≤ {v}", "{a} ÷ {b}")),
    "sv": (("min. {v}", "max. {v}", "{a} - {b}"), ("lägst {v}", "högst {v}", "{a} - {b}")),
}
# Unit spellings by language and code; an empty language is any.
UNITS: dict[tuple[str, str], tuple[str, ...]] = {
    ("", "EBC"): ("EBC", "EBC", "°EBC"),
    ("en", "EBC"): ("EBC", "°EBC", "EBC units", "deg EBC", "EBC"),
    ("de", "EBC"): ("EBC", "EBC", "EBC-Einh."),
    ("cs", "EBC"): ("j. EBC", "EBC", "j.EBC"),
    ("pl", "EBC"): ("EBC", "j. EBC"),
    ("da", "EBC"): ("EBC", "°EBC"),
    ("", "SRM"): ("SRM", "°SRM", "SRM"),
    ("", "°L"): ("°L", "°Lovibond"),
    ("", "mg/L"): ("mg/l", "mg/L"),
    ("en", "mg/L"): ("mg/l", "mg/L", "ppm", "mg/l"),
    ("es", "mg/L"): ("mg/l", "ppm", "mg/L"),
    ("", "mg/100 g"): ("mg/100g", "mg/100 g"),
    ("de", "mg/100 g"): ("mg/100 g", "mg/100g", "mg/100 g TrS"),
    ("", "WK"): ("WK", "°WK"),
    ("de", "WK"): ("WK", "°WK", "W.-K."),
    ("cs", "WK"): ("j. WK", "WK", "j.WK"),
    ("en", "WK"): ("WK", "°WK", "WK units"),
    ("", "°IoB"): ("°IoB", "IoB", "IOB"),
    ("", "°Lintner"): ("°L", "°Lintner", "Lintner"),
    ("", "DU"): ("DU", "D.U.", "DU"),
    ("", "mPa·s"): ("mPa.s", "mPas", "mPa·s", "cP"),
    ("de", "mPa·s"): ("mPas", "mPa·s", "mPa*s"),
    ("", "L°/kg"): ("L°/kg", "l°/kg", "LDK", "L deg/kg"),
    ("", "min"): ("min", "min."),
    ("en", "min"): ("min", "mins", "Mins"),
    ("de", "min"): ("min", "Min.", "Min"),
    ("", "g"): ("g",),
    ("", "kg/hL"): ("kg/hl", "kg/hL"),
    ("", "lb/bu"): ("lb/bu", "lbs/bu"),
    ("", "mg/kg"): ("mg/kg", "ppm", "mg/kg"),
    ("", "µg/kg"): ("µg/kg", "ppb", "μg/kg", "ug/kg"),
    ("", "g/t"): ("g/t", "g/t", "g/tonne"),
    ("", "L/t"): ("L/t", "LA/t", "l/tonne"),
    ("", "NTU"): ("NTU",),
    ("", "°P"): ("°P",),
    ("", "%"): ("%", "%", "%"),
}
UNTRUE = {
    "EBC": ("lintner", "iob"),
    "IoB": ("ongr", "olbach", "ebc", "windisch", "k.i.", "8.6", "8,6", "vz", "isotherm"),
    "ASBC": ("ebc", "windisch", "0.2 mm", "1.0 mm", "8.6", "8,6", "vz", "ongr", "kolbach"),
    "iso65": ("ongr", "olbach", "ebc", "vz", "8,6"),
}
MONTHS = {
    "en": "January February March April May June July August September October November December",
    "de": "Januar Februar März April Mai Juni Juli August September Oktober November Dezember",
    "fr": "janvier février mars avril mai juin juillet août septembre octobre novembre décembre",
    "nl": "januari februari maart april mei juni juli augustus september oktober november december",
    "es": "enero febrero marzo abril mayo junio julio agosto septiembre octubre noviembre diciembre",
    "cs": "ledna února března dubna května června července srpna září října listopadu prosince",
    "da": "januar februar marts april maj juni juli august september oktober november december",
    "it": "gennaio febbraio marzo aprile maggio giugno luglio agosto settembre ottobre novembre dicembre",
    "pl": "stycznia lutego marca kwietnia maja czerwca lipca sierpnia września października listopada grudnia",
    "pt": "janeiro fevereiro março abril maio junho julho agosto setembro outubro novembro dezembro",
    "sv": "januari februari mars april maj juni juli augusti september oktober november december",
}
_FORMS = {
    "en": ("words", "brief", "brief-dash", "short-year", "slash", "slash", "iso", "dots", "ordinal"),
    "us": ("us-words", "us-brief", "us-slash", "us-bare", "iso"),
    "de": ("dots", "dots", "dots", "dots2", "words", "bare-dots", "iso"),
    "fr": ("slash", "slash", "slash2", "words", "dots"),
    "nl": ("dash", "dash", "words", "slash"),
    "es": ("slash", "slash", "dash", "words"),
    "it": ("slash", "slash", "dots", "words"),
    "pt": ("slash", "slash", "words"),
    "cs": ("bare-dots", "spaced-dots", "dots"),
    "da": ("dots", "dash", "words"),
    "pl": ("dots", "iso", "dots-r"),
    "sv": ("iso", "iso", "words"),
}


class Dates:
    """One way of writing dates, kept through a sheet."""

    def __init__(self, rng: Random, language: str, american: bool) -> None:
        self.language = language
        self.form = rng.choice(_FORMS["us" if american and language == "en" else language])
        self.order_shown = False

    def write(self, day: date) -> PrintedDate:
        d, m, y, iso = day.day, day.month, day.year, day.isoformat()
        month = MONTHS[self.language].split()[m - 1]
        stop = "." if self.language in ("de", "da") else ""
        of = " de " if self.language in ("es", "pt") else " "
        ordinal = "th" if d in (11, 12, 13) else {1: "st", 2: "nd", 3: "rd"}.get(d % 10, "th")
        text, certainty = {
            "words": (f"{d}{stop}{of}{month}{of}{y}", "sure"),
            "brief": (f"{d:02d} {month[:3]} {y}", "sure"),
            "brief-dash": (f"{d:02d}-{month[:3]}-{y}", "sure"),
            "short-year": (f"{d:02d}-{month[:3]}-{y % 100}", "either"),
            "ordinal": (f"{d}{ordinal} {month} {y}", "sure"),
            "us-words": (f"{month} {d}, {y}", "sure"),
            "us-brief": (f"{month[:3]} {d}, {y}", "sure"),
            "iso": (iso, "sure"),
            "dots2": (f"{d:02d}.{m:02d}.{y % 100:02d}", "either"),
            "bare-dots": (f"{d}.{m}.{y}", "sure"),
            "spaced-dots": (f"{d}. {m}. {y}", "sure"),
            "dots-r": (f"{d:02d}.{m:02d}.{y} r.", "sure"),
            "dots": (f"{d:02d}.{m:02d}.{y}", self._doubt(d, m)),
            "slash": (f"{d:02d}/{m:02d}/{y}", self._doubt(d, m)),
            "slash2": (f"{d:02d}/{m:02d}/{y % 100:02d}", "either"),
            "dash": (f"{d:02d}-{m:02d}-{y}", self._doubt(d, m)),
            "us-slash": (f"{m:02d}/{d:02d}/{y}", self._doubt(d, m)),
            "us-bare": (f"{m}/{d}/{y}", self._doubt(d, m)),
        }[self.form]
        self.order_shown |= d > 12
        sure: Certainty = certainty  # type: ignore[assignment]
        return PrintedDate(text, iso, sure)

    def _doubt(self, d: int, m: int) -> Certainty:
        """In English a figure does not say whether day or month comes first; elsewhere a careful reader may ask."""
        if d > 12 or d == m:
            return "sure"
        if self.language == "en":
            return "either" if self.form == "dots" else "ambiguous"  # who writes the month first writes strokes
        return "sure" if self.form == "dots" else "either"
