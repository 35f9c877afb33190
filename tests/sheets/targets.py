"""What a printed figure becomes on the EBC basis, computed here independently of the program under test.

Exact: mass and volume units, ppm = mg/kg, ppb = µg/kg, 1 lb/US bushel = 1.28719 kg/hL, 1 cP = 1 mPa·s.
Definition: 100 % = 1000 mg/100 g. Scale: EBC = 25 A430 and SRM = 12.7 A430, so EBC = 1.97 SRM;
WK = 3.5 °Lintner - 16. Correlation: wort to malt factor 0.895 for 450 g mashes; Congress soluble nitrogen =
1.125 x that of the 65 °C mash; WK = 3.5 °IoB (unverified, ±12 %); % = L°/kg / 3.86 + 1.5 for pale malts (±1).
"""

from __future__ import annotations

from tests.sheets.names import names
from tests.sheets.truth import Target

# Another wort or another procedure: a figure of the 65 °C mash is not the Congress one.
MASH_DEPENDENT = names(
    "extract_fine_dry extract_fine_as_is extract_coarse_dry extract_coarse_as_is fine_coarse_difference colour "
    "boiled_colour soluble_nitrogen soluble_protein nitrogen_ratio free_amino_nitrogen beta_glucan viscosity "
    "saccharification_time filtration turbidity clarity odour wort_ph final_attenuation relative_extract_45 "
    "fermentability fermentable_extract"
)
_LOOSE = names("saccharification_time filtration turbidity clarity odour wort_ph")
_SAME = {
    ("hectolitre_weight", "lb/bu"): (1.28719, "kg/hL"),
    ("deoxynivalenol", "mg/kg"): (1000.0, "µg/kg"),
    ("glycosidic_nitrile", "mg/kg"): (1.0, "g/t"),
    ("beta_glucan", "mg/kg"): (1.0, "mg/L"),
    ("turbidity", "NTU"): (0.25, "EBC"),
}
# unit on the basis, factor, relative tolerance, whether a correlation lies on the way
_CONGRESS: dict[tuple[str, str], tuple[str, float, float, float, bool]] = {
    ("colour", "SRM"): ("EBC", 1.97, 0.0, 0.011, False),
    ("colour", "°L"): ("EBC", 1.97, 0.0, 0.011, False),
    ("boiled_colour", "SRM"): ("EBC", 1.97, 0.0, 0.011, False),
    ("free_amino_nitrogen", "mg/100 g"): ("mg/L", 1.117, 0.0, 0.03, False),
    ("soluble_nitrogen", "mg/100 g"): ("%", 0.001, 0.0, 0.001, False),
    ("soluble_nitrogen", "mg/L"): ("%", 0.000895, 0.0, 0.03, False),
    ("beta_glucan", "mg/100 g"): ("mg/L", 1.117, 0.0, 0.03, False),
    ("diastatic_power", "°Lintner"): ("WK", 3.5, -16.0, 0.011, False),
}


def targets(parameter: str, unit: str, family: str, mash: str | None, value: float | None) -> tuple[Target, ...]:
    """All answers on the EBC basis that are right for a number printed in ``unit`` on ``family``."""
    if value is None:
        return ()
    if parameter == "diastatic_power" and unit == "°IoB":
        return (
            Target("WK", 3.5 * value, 0.12 * 3.5 * value, "EBC", estimated=True),
            Target(unit, value, 0.001, "IoB", unconverted=True),
        )
    congress = _CONGRESS.get((parameter, unit))
    if family == "IoB" and parameter in MASH_DEPENDENT:
        return _from_iob(parameter, unit, value)
    if congress and (parameter == "diastatic_power" or mash != "isothermal-65"):
        to, factor, offset, share, estimated = congress
        found = factor * value + offset
        right = [Target(to, found, share * found + 0.006, estimated=estimated)]
        if share > 0.02:  # without extract and moisture a reader may leave the figure as it stands
            right.append(Target(unit, value, 0.001, unconverted=True))
        return tuple(right)
    if congress:  # 65 °C mash: the unit may change, the mash may not
        to, factor, offset, share, _ = congress
        found = factor * value + offset
        return (Target(to, found, share * found + 0.006), Target(unit, value, 0.001))
    factor, to = _SAME.get((parameter, unit), (1.0, unit))
    found = factor * value
    right = [Target(to, found, 0.006 * found + 0.0005 if factor != 1.0 else 1e-6)]
    if to != unit and parameter == "turbidity":
        right.append(Target(unit, value, 0.001, unconverted=True))
    return tuple(right)


def _from_iob(parameter: str, unit: str, value: float) -> tuple[Target, ...]:
    own = Target(unit, value, 1e-6, "IoB", unconverted=True)
    if parameter in _LOOSE:
        return (Target(unit, value, 1e-6),)
    if unit == "L°/kg" and parameter == "fine_coarse_difference":
        return (own, Target("%", 0.26 * value, 0.06 + 0.02 * value))
    if unit == "L°/kg":
        restated = Target("%", value / 3.86, 0.25, "IoB")
        return (own, restated, Target("%", value / 3.86 + 1.5, 0.6, "EBC", estimated=True))
    if parameter == "fermentable_extract":
        return (own, Target("%", value, 1e-6, "IoB"), Target("L°/kg", 3.86 * value, 0.01 * value, "IoB"))
    if parameter in ("colour", "boiled_colour"):
        return (own, Target(unit, 1.17 * value, 0.18 * value, "EBC", estimated=True))
    if parameter in ("soluble_nitrogen", "soluble_protein", "nitrogen_ratio"):
        scale = 0.001 if unit == "mg/100 g" else 1.0
        to = "%" if unit == "mg/100 g" else unit
        found = 1.125 * scale * value
        return (
            own,
            Target(to, scale * value, 1e-3 * value * scale, "IoB"),
            Target(to, found, 0.012 * found + 0.005, "EBC", estimated=True),
        )
    if unit == "mg/100 g":
        return (own, Target("mg/L", 1.08 * value, 0.09 * value, "IoB"))
    return (own,)
