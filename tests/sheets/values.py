"""Draws one believable, mutually consistent malt: the true figures of a batch before they are printed.

Ranges by malt class are common practice of the trade (no single source); the relations between figures are
definitions: as is = dry x (1 - M/100), protein = 6.25 x N, ratio = 100 x soluble N / total N, sieves add to 100.
"""

from __future__ import annotations

from dataclasses import dataclass
from random import Random

MALT_CLASSES = ("PIL", "ALE", "XP", "VIE", "MUN", "CRY", "ROA", "WHE", "RYE", "OAT", "DIS")
CLASS_WEIGHTS = (34, 24, 6, 6, 8, 6, 4, 7, 1, 1, 3)

_RANGES: dict[str, dict[str, tuple[float, float]]] = {
    "moisture": {
        "PIL": (3.9, 5.0), "XP": (3.9, 5.0), "ALE": (2.5, 4.0), "VIE": (3.5, 5.0), "MUN": (3.4, 4.9),
        "CRY": (3.0, 6.8), "ROA": (1.2, 4.0), "WHE": (4.2, 6.0), "RYE": (4.2, 6.0), "OAT": (4.2, 6.0),
        "DIS": (4.0, 5.4),
    },
    "extract": {
        "PIL": (80.5, 83.4), "XP": (81.0, 83.4), "ALE": (80.5, 82.9), "VIE": (79.6, 81.9), "MUN": (77.5, 81.0),
        "CRY": (71.0, 79.5), "ROA": (62.0, 74.0), "WHE": (82.2, 86.5), "RYE": (81.5, 87.0), "OAT": (58.0, 74.0),
        "DIS": (80.2, 83.6),
    },
    "hwe": {
        "PIL": (301, 311), "XP": (301, 311), "ALE": (304, 314), "VIE": (299, 307), "MUN": (291, 302),
        "CRY": (262, 288), "ROA": (234, 276), "WHE": (307, 323), "RYE": (302, 322), "OAT": (215, 276),
        "DIS": (301, 311),
    },
    "colour": {
        "PIL": (2.6, 4.0), "XP": (2.0, 3.0), "ALE": (4.2, 7.0), "VIE": (6.2, 9.8), "MUN": (13.0, 28.0),
        "CRY": (30.0, 390.0), "ROA": (620.0, 1480.0), "WHE": (3.2, 5.8), "RYE": (4.5, 9.5), "OAT": (3.2, 7.5),
        "DIS": (2.4, 4.6),
    },
    "nitrogen": {
        "PIL": (1.56, 1.79), "XP": (1.52, 1.74), "ALE": (1.42, 1.64), "VIE": (1.6, 1.79), "MUN": (1.62, 1.88),
        "CRY": (1.62, 1.88), "ROA": (1.62, 1.95), "WHE": (1.92, 2.34), "RYE": (1.62, 2.1), "OAT": (1.65, 2.3),
        "DIS": (1.38, 1.64),
    },
    "kolbach": {
        "PIL": (38.2, 44.6), "XP": (38.2, 43.6), "ALE": (40.2, 45.4), "VIE": (38.2, 43.6), "MUN": (36.4, 43.4),
        "CRY": (17.0, 34.0), "ROA": (20.0, 34.0), "WHE": (35.0, 45.0), "RYE": (42.0, 58.0), "OAT": (26.0, 39.0),
        "DIS": (38.4, 47.0),
    },
    "fan": {  # mg/100 g dry
        "PIL": (132, 178), "XP": (132, 168), "ALE": (132, 174), "VIE": (131, 168), "MUN": (112, 158),
        "CRY": (60, 110), "ROA": (50, 90), "WHE": (92, 148), "RYE": (122, 195), "OAT": (82, 148), "DIS": (132, 188),
    },
    "wk": {
        "PIL": (225, 345), "XP": (245, 345), "ALE": (125, 218), "VIE": (152, 256), "MUN": (82, 215),
        "CRY": (40, 60), "ROA": (40, 60), "WHE": (255, 440), "RYE": (205, 395), "OAT": (62, 195), "DIS": (205, 345),
    },
    "du": {
        "PIL": (41, 64), "XP": (41, 64), "ALE": (31, 49), "VIE": (36, 54), "MUN": (26, 44), "CRY": (8, 20),
        "ROA": (8, 20), "WHE": (31, 59), "RYE": (42, 88), "OAT": (22, 58), "DIS": (42, 69),
    },
    "friability": {
        "PIL": (82.5, 94.5), "XP": (81, 92.5), "ALE": (85.5, 97), "VIE": (81, 94.5), "MUN": (79, 94),
        "CRY": (70, 90), "ROA": (70, 90), "WHE": (60, 85), "RYE": (60, 85), "OAT": (60, 85), "DIS": (88.5, 97.5),
    },
    "viscosity": {
        "PIL": (1.45, 1.59), "XP": (1.45, 1.59), "ALE": (1.43, 1.57), "VIE": (1.46, 1.59), "MUN": (1.46, 1.59),
        "CRY": (1.46, 1.6), "ROA": (1.46, 1.6), "WHE": (1.58, 1.84), "RYE": (2.3, 4.6), "OAT": (1.6, 2.4),
        "DIS": (1.43, 1.54),
    },
    "ph": {
        "PIL": (5.86, 6.04), "XP": (5.91, 6.08), "ALE": (5.72, 5.98), "VIE": (5.72, 5.98), "MUN": (5.55, 5.88),
        "CRY": (4.6, 5.4), "ROA": (4.1, 5.1), "WHE": (5.9, 6.14), "RYE": (5.91, 6.18), "OAT": (5.82, 6.18),
        "DIS": (5.81, 6.08),
    },
    "attenuation": {
        "PIL": (79.2, 83.8), "XP": (79.2, 83.8), "ALE": (76.4, 82.8), "VIE": (77.2, 82.8), "MUN": (72.4, 79.6),
        "CRY": (55, 70), "ROA": (50, 65), "WHE": (76.4, 82.6), "RYE": (70.5, 79.5), "OAT": (70, 79),
        "DIS": (80.2, 84.8),
    },
}  # fmt: skip

_ABSENT = {
    "CRY": {"fan", "dp", "alpha_amylase", "friability", "homogeneity", "pug", "whole_grains", "glassy_grains",
            "saccharification_time", "final_attenuation", "relative_extract_45", "viscosity", "beta_glucan",
            "boiled_colour", "ratio", "dms_precursor", "lipoxygenase", "soluble_nitrogen", "soluble_protein"},
    "WHE": {"friability", "homogeneity", "pug", "whole_grains", "glassy_grains"},
}  # fmt: skip
_ABSENT["ROA"] = _ABSENT["CRY"] | {"fine_coarse_difference", "wort_ph", "odour"}
_ABSENT["RYE"] = _ABSENT["OAT"] = _ABSENT["WHE"] | {"relative_extract_45", "fine_coarse_difference"}


@dataclass(frozen=True, slots=True)
class Profile:
    """True figures of one malt, by an internal name. Congress figures unless the name ends in ``_iob``."""

    malt_class: str
    figures: dict[str, float]
    absent: frozenset[str]

    def __getitem__(self, name: str) -> float:
        return self.figures[name]


def draw_class(rng: Random) -> str:
    """A malt class, pale ones most often."""
    return rng.choices(MALT_CLASSES, CLASS_WEIGHTS)[0]


def draw_profile(rng: Random, malt_class: str) -> Profile:
    """A consistent malt of the class. Figures that are printed together are derived from the rounded ones."""

    def between(name: str) -> float:
        low, high = _RANGES[name][malt_class]
        return rng.uniform(low, high)

    f: dict[str, float] = {}
    f["moisture"] = round(between("moisture"), 1)
    f["extract_fine_dry"] = round(between("extract"), 1)
    f["fine_coarse_difference"] = round(rng.uniform(0.6, 2.2), 1)
    f["extract_coarse_dry"] = round(f["extract_fine_dry"] - f["fine_coarse_difference"], 1)
    wet = 1 - f["moisture"] / 100
    f["extract_fine_as_is"] = f["extract_fine_dry"] * wet
    f["extract_coarse_as_is"] = f["extract_coarse_dry"] * wet
    f["hwe_dry"] = round(between("hwe"), 0) if rng.random() < 0.6 else round(between("hwe"), 1)
    f["hwe_difference"] = round(rng.uniform(2.0, 7.0), 1)
    f["hwe_fine_dry"] = f["hwe_dry"] + f["hwe_difference"]
    f["hwe_as_is"] = f["hwe_dry"] * wet
    colour = between("colour")
    f["colour"] = round(colour, 1) if colour < 60 else float(round(colour))
    f["boiled_colour"] = round(f["colour"] * rng.uniform(1.15, 1.5) + 0.6, 1)
    f["colour_visual"] = 0.375 * f["colour"] + 0.56
    f["total_nitrogen"] = round(between("nitrogen"), 2)
    f["total_protein"] = 6.25 * f["total_nitrogen"]
    kolbach = between("kolbach")
    f["soluble_nitrogen"] = round(kolbach * f["total_nitrogen"] / 100, 3)
    f["soluble_protein"] = 6.25 * f["soluble_nitrogen"]
    f["kolbach"] = 100 * f["soluble_nitrogen"] / f["total_nitrogen"]
    f["soluble_nitrogen_iob"] = round(f["soluble_nitrogen"] / 1.125, 3)
    f["snr"] = 100 * f["soluble_nitrogen_iob"] / f["total_nitrogen"]
    f["fan_100g"] = between("fan")
    f["fan"] = f["fan_100g"] / 0.895
    f["wk"] = between("wk")
    f["lintner"] = (f["wk"] + 16) / 3.5
    f["iob"] = f["wk"] / 3.5
    f["alpha_amylase"] = between("du")
    f["friability"] = round(between("friability"), 1)
    rest = 100 - f["friability"]
    f["pug"] = round(rest * rng.uniform(0.05, 0.25), 1)
    f["whole_grains"] = round(min(rest * 0.2, rng.uniform(0.1, 1.8)), 1)
    f["glassy_grains"] = round(rng.uniform(0.0, 2.0), 1)
    f["homogeneity"] = round(100 - f["pug"], 1)
    f["beta_glucan"] = rng.uniform(70, 210) if malt_class not in ("RYE", "OAT") else rng.uniform(250, 600)
    f["beta_glucan_65"] = f["beta_glucan"] * rng.uniform(1.4, 1.9)
    f["beta_glucan_malt"] = rng.uniform(0.22, 0.9)
    f["viscosity"] = between("viscosity")
    f["viscosity_65"] = f["viscosity"] + rng.uniform(0.03, 0.09)
    f["saccharification_time"] = float(rng.choice((8, 9, 10, 11, 12, 13, 14, 15)))
    f["filtration"] = float(rng.randint(20, 58))
    f["turbidity"] = rng.uniform(0.8, 6.0)
    f["wort_ph"] = round(between("ph"), 2)
    f["final_attenuation"] = between("attenuation")
    f["relative_extract_45"] = rng.uniform(35.5, 45.0)
    f["fermentability"] = rng.uniform(85.2, 88.9)
    f["fermentable_extract"] = f["hwe_dry"] / 3.86 * f["fermentability"] / 100
    f["predicted_spirit_yield"] = f["fermentable_extract"] * 6.06
    small = round(rng.uniform(0.2, 1.6), 1)
    thin = round(rng.uniform(1.5, 7.0), 1)
    middle = round(rng.uniform(18, 34), 1)
    f["sieve_under_2_2"], f["sieve_2_2_to_2_5"], f["sieve_2_5_to_2_8"] = small, thin, middle
    f["sieve_over_2_8"] = round(100 - small - thin - middle, 1)
    f["sieve_over_2_5"] = round(f["sieve_over_2_8"] + middle, 1)
    f["sieve_7_64"] = round(rng.uniform(55, 80), 1)
    f["sieve_5_64_through"] = round(rng.uniform(0.3, 1.6), 1)
    f["sieve_6_64"] = round((100 - f["sieve_7_64"] - f["sieve_5_64_through"]) * 0.82, 1)
    f["sieve_5_64"] = round(100 - f["sieve_7_64"] - f["sieve_6_64"] - f["sieve_5_64_through"], 1)
    f["thousand_corn_weight"] = rng.uniform(33, 43)
    f["hectolitre_weight"] = rng.uniform(51, 59)
    f["bushel_weight"] = f["hectolitre_weight"] / 1.28719
    f["foreign_matter"] = rng.uniform(0.0, 0.5)
    f["broken_grains"] = rng.uniform(0.1, 1.5)
    f["acrospire_length"] = rng.uniform(0.7, 0.82)
    f["lipoxygenase"] = rng.uniform(1.0, 9.0)
    f["dms_precursor"] = rng.uniform(2.4, 6.6)
    f["sulphur_dioxide"] = rng.uniform(2.0, 14.0)
    f["arsenic"] = rng.uniform(0.01, 0.12)
    f["lead"] = rng.uniform(0.01, 0.14)
    f["cadmium"] = rng.uniform(0.01, 0.08)
    f["gluten"] = float(rng.randint(24, 58)) * 1000
    f["ndma"] = rng.uniform(0.4, 2.0)
    f["deoxynivalenol"] = rng.uniform(60, 620)
    f["zearalenone"] = rng.uniform(3, 40)
    f["ochratoxin_a"] = rng.uniform(0.2, 2.1)
    f["aflatoxin_b1"] = rng.uniform(0.1, 0.9)
    f["glycosidic_nitrile"] = rng.uniform(0.4, 1.4)
    f["cold_water_extract"] = rng.uniform(17.5, 20.4)
    f["limit_dextrinase"] = rng.uniform(250, 480)
    f["beta_amylase"] = rng.uniform(700, 1200)
    f["gushing"] = rng.uniform(0, 4)
    f["t2_ht2"] = rng.uniform(5, 60)
    f["fumonisins"] = rng.uniform(20, 120)
    f["half_glassy"] = rng.uniform(0.5, 3.0)
    f["mealy"] = rng.uniform(94, 99)
    f["real_attenuation"] = 0.81 * f["final_attenuation"]
    f["wort_extract"] = rng.uniform(8.5, 9.0)
    f["phenols"] = rng.uniform(2, 45)
    f["malting_loss"] = rng.uniform(6.5, 10.5)
    f["germinative_energy"] = rng.uniform(94, 99.5)
    f["varietal_purity"] = rng.uniform(95, 99.8)
    f["screenings_dust"] = rng.uniform(0.05, 0.6)
    f["coagulable_nitrogen"] = rng.uniform(28, 60)
    return Profile(malt_class, f, frozenset(_ABSENT.get(malt_class, set())))
