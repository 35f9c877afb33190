"""Invented names, unit spellings and small habits of the unseen sheets."""

from __future__ import annotations

SUPPLIERS = {
    "en": ("Hobbleford Maltings", "Marrick & Toll Maltsters Ltd", "Sallowfield Malt Co.", "Corrieburn Maltings"),
    "de": ("Mälzerei Untergriesholz GmbH", "Malzfabrik Sprollenbach KG", "Vereinigte Mälzereien Elbgerst"),
    "fr": ("Malterie de l'Ourmelle", "Malteries Bréhault et Fils", "Malterie du Val Cressin"),
    "nl": ("Mouterij Lindeakker", "Mouterij Van Grootenhof"),
    "es": ("Maltería Alcornal", "Malterías del Tajuelo S.A."),
    "it": ("Malteria Ponteverzo S.r.l.", "Malteria Colle Spigato"),
    "cs": ("Sladovna Lhota pod Břízou", "Sladovna Dubnice a.s."),
    "da": ("Malteriet Nordager A/S", "Sønderbæk Malt"),
    "pl": ("Słodownia Złotokłos Sp. z o.o.", "Słodownia Brzezinka"),
}
CUSTOMERS = {
    "en": ("Otterstone Brewing Co.", "The Pied Plover Brewery", "Hallam Weir Brewers Ltd"),
    "de": ("Brauhaus Zum Wiedehopf", "Brauerei Gänsbichl GmbH & Co. KG"),
    "fr": ("Brasserie de la Fauvette", "Brasserie Quatre Noyers"),
    "nl": ("Brouwerij De Kluut", "Stadsbrouwerij Zilverberk"),
    "es": ("Cervecería El Alcaraván", "Cervezas Fuentelagua"),
    "it": ("Birrificio dell'Upupa", "Birrificio Tre Gelsi"),
    "cs": ("Pivovar Modrý Ledňáček", "Pivovar Na Výsluní"),
    "da": ("Bryghuset Strandskaden", "Engsø Bryggeri"),
    "pl": ("Browar Zimorodek", "Browar Stary Jawor"),
}
STREETS = {
    "en": ("Granary Lane 3", "HB7 2XX Hobbleford"),
    "de": ("Gerstenweg 21", "00999 Griesholz"),
    "fr": ("8, quai aux Grains", "00220 Ourmelle"),
    "nl": ("Graanhaven 5", "0099 XX Lindeakker"),
    "es": ("Polígono El Trigal, nave 4", "00450 Alcornal"),
    "it": ("Via del Grano 33", "00770 Ponteverzo"),
    "cs": ("Obilní 14", "000 33 Lhota"),
    "da": ("Havnegade 77", "0099 Nordager"),
    "pl": ("ul. Zbożowa 6", "00-099 Złotokłos"),
}
VARIETIES = ("Orlana", "Quintal", "Brindale, Corvane", "Halveric", "Sulmira", "Ostrava Gold", "Penhale")
BRANDS = ("", "", "", " Extra", " 'Heron'", " 2-row", " Special", " 3.5")
_SIGNS = ("≥ {v}", "≤ {v}", "{a} - {b}")
RANGE_FORMS: dict[str, tuple[tuple[str, str, str], ...]] = {
    "en": (("min. {v}", "max. {v}", "{a} - {b}"), ("{v} min.", "{v} max.", "{a} to {b}"), _SIGNS,
           ("minimum {v}", "maximum {v}", "{a}–{b}"), ("not less than {v}", "not more than {v}", "{a} to {b}"),
           ("Min {v}", "Max {v}", "{a}-{b}")),
    "de": (("min. {v}", "max. {v}", "{a} - {b}"), ("mind. {v}", "max. {v}", "{a} bis {b}"), _SIGNS,
           ("> {v}", "< {v}", "{a}-{b}")),
    "fr": (("min. {v}", "max. {v}", "{a} - {b}"), ("{v} mini", "{v} maxi", "{a} à {b}"), _SIGNS),
    "nl": (("min. {v}", "max. {v}", "{a} - {b}"), ("minimaal {v}", "maximaal {v}", "{a} tot {b}"), _SIGNS),
    "es": (("mín. {v}", "máx. {v}", "{a} - {b}"), ("{v} mín.", "{v} máx.", "{a} a {b}"), _SIGNS),
    "it": (("min. {v}", "max. {v}", "{a} - {b}"), _SIGNS),
    "cs": (("min. {v}", "max. {v}", "{a} - {b}"), ("nejméně {v}", "nejvýše {v}", "{a} až {b}"), _SIGNS),
    "da": (("min. {v}", "maks. {v}", "{a} - {b}"), _SIGNS),
    "pl": (("min. {v}", "maks. {v}", "{a} - {b}"), ("nie mniej niż {v}", "nie więcej niż {v}", "{a} - {b}")),
}  # fmt: skip
# Unit spellings by language and code; an empty language is any.
UNITS: dict[tuple[str, str], tuple[str, ...]] = {
    ("", "EBC"): ("EBC", "°EBC", "EBC"), ("de", "EBC"): ("EBC", "EBC-Einheiten", "EBC"),
    ("en", "EBC"): ("EBC", "EBC Units", "°EBC", "EBC"), ("cs", "EBC"): ("EBC", "j. EBC", "jedn. EBC"),
    ("fr", "EBC"): ("EBC", "U. EBC", "°EBC"), ("", "SRM"): ("SRM", "SRM units", "°SRM"), ("", "°L"): ("°L", "°Lov"),
    ("", "mg/L"): ("mg/l", "mg/L", "mg/l wort", "mg/l"), ("de", "mg/L"): ("mg/l", "mg/L"),
    ("fr", "mg/L"): ("mg/l", "mg/L", "mg/l moût"), ("nl", "mg/L"): ("mg/l",), ("es", "mg/L"): ("mg/l", "ppm"),
    ("it", "mg/L"): ("mg/l",), ("cs", "mg/L"): ("mg/l",), ("da", "mg/L"): ("mg/l",), ("pl", "mg/L"): ("mg/l", "mg/dm3"),
    ("", "mg/100 g"): ("mg/100 g", "mg/100g"), ("de", "mg/100 g"): ("mg/100 g", "mg/100g", "mg/100g MTrS."),
    ("", "WK"): ("WK", "°WK", "W-K"), ("de", "WK"): ("WK", "WK-Einh.", "°WK"), ("", "°IoB"): ("°IoB", "IoB", "deg IoB"),
    ("", "°Lintner"): ("°Lintner", "Lintner", "°L"), ("", "DU"): ("DU", "D.U."), ("de", "DU"): ("DU", "ASBC DU"),
    ("", "mPa·s"): ("mPa.s", "mPas", "mPa·s", "cP"), ("de", "mPa·s"): ("mPas", "mPa·s", "mPa s"),
    ("", "L°/kg"): ("L°/kg", "l°/kg", "Lº/kg", "L°/kg"), ("", "min"): ("min", "min."), ("de", "min"): ("min", "Min."),
    ("en", "min"): ("min", "mins", "minutes"), ("fr", "min"): ("min", "minutes"), ("", "g"): ("g",),
    ("", "kg/hL"): ("kg/hl", "kg/hL"), ("", "lb/bu"): ("lb/bu", "lbs/bu"), ("", "mg/kg"): ("mg/kg", "ppm"),
    ("", "µg/kg"): ("µg/kg", "ppb", "μg/kg"), ("", "g/t"): ("g/t", "g/tonne"), ("", "L/t"): ("la/t", "L/t", "LA/tonne"),
    ("", "NTU"): ("NTU",), ("", "°P"): ("°P", "°Plato"),
}  # fmt: skip
# Pieces of wording that would be untrue on a sheet of the family.
UNTRUE = {
    "EBC": ("lintner", "iob"),
    "IoB": ("ongre", "olbach", "ebc", "w.-k", "(wk", "8.6", "8,6", "vz", "isotherm"),
    "ASBC": ("ebc", "w.-k", "(wk", "0.2 mm", "0,2 mm", "1,0 mm", "vz", "ongr", "windisch"),
    "iso65": ("ongre", "olbach", "ebc", "vz"),
}
