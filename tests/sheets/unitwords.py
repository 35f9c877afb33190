"""How a unit is spelled on a sheet: the development part and the part kept aside."""

from __future__ import annotations

from random import Random

SPELLINGS: dict[str, tuple[str, ...]] = {
    "%": ("%",),
    "EBC": ("EBC", "°EBC", "EBC units", "EBC"),
    "SRM": ("SRM", "°ASBC", "°SRM"),
    "°L": ("°L", "°Lovibond"),
    "mg/L": ("mg/l", "mg/L", "mg/l", "ppm"),
    "mg/100 g": ("mg/100 g", "mg/100g", "mg / 100 g"),
    "WK": ("WK", "°WK", "WK", "W.K."),
    "°IoB": ("°IoB", "IoB", "°IOB"),
    "°Lintner": ("°L", "°Lintner", "°Lintner"),
    "DU": ("DU", "DU", "D.U."),
    "mPa·s": ("mPa·s", "mPas", "mPa.s", "cP"),
    "L°/kg": ("L°/kg", "l°/kg", "ld/kg", "Ldk"),
    "min": ("min", "min.", "min"),
    "g": ("g", "g"),
    "kg/hL": ("kg/hl", "kg/hL"),
    "lb/bu": ("lb/bu", "lbs/bu"),
    "pH": ("",),
    "U/g": ("U/g",),
    "U/kg": ("U/kg",),
    "mg/kg": ("mg/kg", "ppm"),
    "µg/kg": ("µg/kg", "ppb", "μg/kg"),
    "g/t": ("g/t",),
    "L/t": ("L/t", "LA/t", "l/t"),
    "NTU": ("NTU",),
    "°P": ("°P",),
    "": ("",),
    "text": ("", ""),
}
KEPT_SPELLINGS: dict[str, tuple[str, ...]] = {
    "EBC": ("EBC-U", "° EBC", "EBC"),
    "SRM": ("SRM", "deg. SRM"),
    "°L": ("° Lov.", "°L"),
    "mg/L": ("mg/l", "mg / l", "mg.l-1"),
    "mg/100 g": ("mg/100 g", "mg/100gr"),
    "WK": ("WK", "W-K", "° WK", "WK units"),
    "°IoB": ("deg. IoB", "IOB", "°IoB"),
    "°Lintner": ("Lintner", "° Lintner", "deg L"),
    "DU": ("DU", "du"),
    "mPa·s": ("mPa s", "mPa*s", "mPas", "cp"),
    "L°/kg": ("l deg/kg", "L°/kg", "litre°/kg", "LDK"),
    "min": ("minutes", "mins", "min"),
    "g": ("g", "gm"),
    "kg/hL": ("kg/hl", "kg / hl"),
    "lb/bu": ("lb/bushel", "lbs./bu."),
    "mg/kg": ("mg/kg", "mg / kg"),
    "µg/kg": ("µg/kg", "µg / kg", "ug/kg"),
    "g/t": ("g/tonne", "g/t"),
    "L/t": ("litres/tonne", "L/tonne"),
}
_GERMAN_ONLY = {"min": ("min", "Min.", "min"), "EBC": ("EBC", "EBC-Einheiten", "EBC-Einh.")}


def spell(code: str, rng: Random, language: str, kept: bool) -> str:
    """One spelling of a unit code."""
    if language == "de" and not kept and code in _GERMAN_ONLY:
        return rng.choice(_GERMAN_ONLY[code])
    if kept and code in KEPT_SPELLINGS:
        found = KEPT_SPELLINGS[code]
        if language != "en":  # words such as "minutes" and "deg" are English
            english = ("minute", "mins", "deg", "litre", "units")
            found = tuple(s for s in found if not any(w in s for w in english)) or found
        return rng.choice(found)
    found = SPELLINGS[code]
    if language != "en":
        found = tuple(s for s in found if "units" not in s) or found
    return rng.choice(found)
