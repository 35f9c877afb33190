"""What can stand in a row of a malt sheet: parameter, units by family, digits, method references."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

Family = Literal["EBC", "IoB", "ASBC", "iso65"]


@dataclass(frozen=True, slots=True)
class Form:
    """One way to print a concept: unit code, name in the profile, decimals."""

    unit: str
    source: str
    decimals: int


@dataclass(frozen=True, slots=True)
class Concept:
    """A row. ``parameter`` None: no canonical parameter. ``share`` is how often an ordinary sheet has it."""

    name: str
    parameter: str | None
    group: str
    share: float
    forms: dict[str, tuple[Form, ...]]
    basis: Literal["dry", "as-is"] | None = None
    wording: str = ""
    may_be: tuple[str, ...] = ()

    def forms_for(self, family: str) -> tuple[Form, ...]:
        return self.forms.get(family, self.forms.get("*", ()))


CONCEPTS: dict[str, Concept] = {}


def _add(
    name: str,
    parameter: str | None,
    group: str,
    share: float,
    basis: Literal["dry", "as-is"] | None = None,
    may_be: tuple[str, ...] = (),
    **forms: str,
) -> None:
    """``EBC="% extract 1; mg/L fan 0"``: forms of a family, parted by semicolons; ``any`` is every other family."""
    table: dict[str, tuple[Form, ...]] = {}
    for family, text in forms.items():
        found = []
        for form in text.split(";"):
            unit, source, decimals = form.strip().rsplit(" ", 2)
            found.append(Form("" if unit == "-" else unit, source, int(decimals)))
        table["*" if family == "any" else family] = tuple(found)
    CONCEPTS[name] = Concept(name, parameter, group, share, table, basis, may_be=may_be)


_add("sieve_over_2_8", "sieve_over_2_8", "sieving", 0.45, EBC="% sieve_over_2_8 1", iso65="% sieve_over_2_8 1")
_add("sieve_2_5_to_2_8", "sieve_2_5_to_2_8", "sieving", 0.4, EBC="% sieve_2_5_to_2_8 1", iso65="% sieve_2_5_to_2_8 1")
_add("sieve_over_2_5", "sieve_over_2_5", "sieving", 0.35, EBC="% sieve_over_2_5 1", IoB="% sieve_over_2_5 1",
     iso65="% sieve_over_2_5 1")  # fmt: skip
_add("sieve_2_2_to_2_5", "sieve_2_2_to_2_5", "sieving", 0.3, EBC="% sieve_2_2_to_2_5 1", iso65="% sieve_2_2_to_2_5 1")
_add("sieve_under_2_2", "sieve_under_2_2", "sieving", 0.6, EBC="% sieve_under_2_2 1", IoB="% sieve_under_2_2 1",
     iso65="% sieve_under_2_2 1")  # fmt: skip
_add("sieve_7_64", None, "sieving", 0.8, may_be=("sieve_over_2_8",), ASBC="% sieve_7_64 1")
_add("sieve_6_64", None, "sieving", 0.8, ASBC="% sieve_6_64 1")
_add("sieve_5_64", None, "sieving", 0.5, ASBC="% sieve_5_64 1")
_add("sieve_5_64_through", None, "sieving", 0.7, ASBC="% sieve_5_64_through 1")
_add("thousand_corn_weight", "thousand_corn_weight", "physical", 0.35, any="g thousand_corn_weight 1")
_add("hectolitre_weight", "hectolitre_weight", "physical", 0.3, EBC="kg/hL hectolitre_weight 1",
     IoB="kg/hL hectolitre_weight 1", iso65="kg/hL hectolitre_weight 1")  # fmt: skip
_add("bushel_weight", "hectolitre_weight", "physical", 0.5, ASBC="lb/bu bushel_weight 1")
_add("foreign_matter", "foreign_matter", "physical", 0.25, any="% foreign_matter 1")
_add("broken_grains", "broken_grains", "physical", 0.25, any="% broken_grains 1")
_add("acrospire_length", "acrospire_length", "physical", 0.05, any="- acrospire_length 2")
_add("moisture", "moisture", "chemical", 1.0, any="% moisture 1")
_add("extract_fine_dry", "extract_fine_dry", "chemical", 1.0, "dry", EBC="% extract_fine_dry 1",
     ASBC="% extract_fine_dry 1", iso65="% extract_fine_dry 1")  # fmt: skip
_add("extract_fine_as_is", "extract_fine_as_is", "chemical", 0.45, "as-is", EBC="% extract_fine_as_is 1",
     ASBC="% extract_fine_as_is 1", iso65="% extract_fine_as_is 1")  # fmt: skip
_add("extract_coarse_dry", "extract_coarse_dry", "chemical", 0.35, "dry", EBC="% extract_coarse_dry 1",
     ASBC="% extract_coarse_dry 1")  # fmt: skip
_add("extract_coarse_as_is", "extract_coarse_as_is", "chemical", 0.15, "as-is", EBC="% extract_coarse_as_is 1",
     ASBC="% extract_coarse_as_is 1")  # fmt: skip
_add("hwe_dry", "extract_coarse_dry", "chemical", 1.0, "dry", IoB="L°/kg hwe_dry 0; L°/kg hwe_dry 1")
_add("hwe_as_is", "extract_coarse_as_is", "chemical", 0.7, "as-is", IoB="L°/kg hwe_as_is 0; L°/kg hwe_as_is 1")
_add("hwe_fine_dry", "extract_fine_dry", "chemical", 0.15, "dry", IoB="L°/kg hwe_fine_dry 0")
_add("fine_coarse_difference", "fine_coarse_difference", "chemical", 0.55, EBC="% fine_coarse_difference 1",
     ASBC="% fine_coarse_difference 1", IoB="L°/kg hwe_difference 1")  # fmt: skip
_add("relative_extract_45", "relative_extract_45", "chemical", 0.4, EBC="% relative_extract_45 1")
_add("total_protein", "total_protein", "nitrogen", 0.75, "dry", EBC="% total_protein 1", ASBC="% total_protein 1",
     iso65="% total_protein 1")  # fmt: skip
_add("total_nitrogen", "total_nitrogen", "nitrogen", 0.5, "dry", EBC="% total_nitrogen 2", IoB="% total_nitrogen 2")
_add("soluble_nitrogen", "soluble_nitrogen", "nitrogen", 0.5, "dry",
     EBC="% soluble_nitrogen 2; mg/100 g soluble_nitrogen*1000 0; % soluble_nitrogen 3",
     IoB="% soluble_nitrogen_iob 2; % soluble_nitrogen_iob 3",
     iso65="mg/100 g soluble_nitrogen_iob*1000 0")  # fmt: skip
_add("soluble_protein", "soluble_protein", "nitrogen", 0.4, "dry", EBC="% soluble_protein 2; % soluble_protein 1",
     ASBC="% soluble_protein 2")  # fmt: skip
_add("ratio", "nitrogen_ratio", "nitrogen", 0.9, EBC="% kolbach 1; % kolbach 0", IoB="% snr 1; % snr 0",
     ASBC="% kolbach 1", iso65="% snr 1")  # fmt: skip
_add("fan", "free_amino_nitrogen", "nitrogen", 0.6, EBC="mg/L fan 0; mg/100 g fan_100g 0", IoB="mg/L fan 0",
     ASBC="mg/L fan 0", iso65="mg/100 g fan_100g 0")  # fmt: skip
_add("colour", "colour", "wort", 1.0, EBC="EBC colour 1", IoB="EBC colour/1.17 1",
     ASBC="SRM colour/1.97 2; °L colour/1.97 2", iso65="EBC colour 1")  # fmt: skip
_add("boiled_colour", "boiled_colour", "wort", 0.35, EBC="EBC boiled_colour 1", iso65="EBC boiled_colour 1")
_add("saccharification_time", "saccharification_time", "wort", 0.5, EBC="min saccharification_time 0",
     ASBC="min saccharification_time 0", iso65="min saccharification_time 0")  # fmt: skip
_add(
    "filtration", "filtration", "wort", 0.35, EBC="min filtration 0", ASBC="min filtration 0", iso65="min filtration 0"
)
_add("clarity", "clarity", "wort", 0.35, any="text clarity 0")
_add("turbidity", "turbidity", "wort", 0.15, EBC="EBC turbidity 1", ASBC="NTU turbidity*4 1")
_add("odour", "odour", "wort", 0.25, any="text odour 0")
_add("wort_ph", "wort_ph", "wort", 0.55, any="pH wort_ph 2")
_add("viscosity", "viscosity", "wort", 0.6, EBC="mPa·s viscosity 2; mPa·s viscosity 3", IoB="mPa·s viscosity_65 2",
     ASBC="mPa·s viscosity 2", iso65="mPa·s viscosity_65 3")  # fmt: skip
_add("beta_glucan", "beta_glucan", "wort", 0.5, EBC="mg/L beta_glucan 0", IoB="mg/L beta_glucan_65 0",
     ASBC="mg/L beta_glucan 0", iso65="mg/L beta_glucan_65 0")  # fmt: skip
_add("beta_glucan_malt", "beta_glucan_malt", "modification", 0.04, any="% beta_glucan_malt 2")
_add("final_attenuation", "final_attenuation", "wort", 0.45, EBC="% final_attenuation 1", iso65="% final_attenuation 1")
_add("fermentability", "fermentability", "wort", 0.2, IoB="% fermentability 1")
_add("fermentable_extract", "fermentable_extract", "wort", 0.1, IoB="% fermentable_extract 1")
_add("predicted_spirit_yield", "predicted_spirit_yield", "wort", 0.2, IoB="L/t predicted_spirit_yield 0")
_add("friability", "friability", "modification", 0.8, any="% friability 1; % friability 0")
_add("homogeneity", "homogeneity", "modification", 0.35, any="% homogeneity 1")
_add("pug", "partly_unmodified_grains", "modification", 0.25, any="% pug 1")
_add("whole_grains", "whole_grains", "modification", 0.25, any="% whole_grains 1")
_add("glassy_grains", "glassy_grains", "modification", 0.3, any="% glassy_grains 1")
_add(
    "dp",
    "diastatic_power",
    "enzymes",
    0.65,
    EBC="WK wk 0",
    IoB="°IoB iob 0",
    ASBC="°Lintner lintner 0",
    iso65="WK wk 0",
)
_add("alpha_amylase", "alpha_amylase", "enzymes", 0.4, any="DU alpha_amylase 0; DU alpha_amylase 1")
_add("lipoxygenase", "lipoxygenase", "enzymes", 0.04, any="U/g lipoxygenase 1")
_add("dms_precursor", "dms_precursor", "contaminants", 0.25, any="mg/kg dms_precursor 1")
_add("glycosidic_nitrile", "glycosidic_nitrile", "contaminants", 0.15, IoB="g/t glycosidic_nitrile 1")
_add("ndma", "ndma", "contaminants", 0.3, any="µg/kg ndma 1")
_add("sulphur_dioxide", "sulphur_dioxide", "contaminants", 0.08, any="mg/kg sulphur_dioxide 1")
_add("arsenic", "arsenic", "contaminants", 0.08, any="mg/kg arsenic 2")
_add("lead", "lead", "contaminants", 0.08, any="mg/kg lead 2")
_add("cadmium", "cadmium", "contaminants", 0.06, any="mg/kg cadmium 3")
_add("gluten", "gluten", "contaminants", 0.02, any="mg/kg gluten 0")
_add("deoxynivalenol", "deoxynivalenol", "contaminants", 0.15, any="µg/kg deoxynivalenol 0",
     ASBC="mg/kg deoxynivalenol/1000 2")  # fmt: skip
_add("zearalenone", "zearalenone", "contaminants", 0.06, any="µg/kg zearalenone 1")
_add("ochratoxin_a", "ochratoxin_a", "contaminants", 0.1, any="µg/kg ochratoxin_a 1")
_add("aflatoxin_b1", "aflatoxin_b1", "contaminants", 0.05, any="µg/kg aflatoxin_b1 1")
# Rows with a result that are no canonical parameter.
_add("cold_water_extract", None, "chemical", 0.05, any="% cold_water_extract 1")
_add("limit_dextrinase", None, "enzymes", 0.03, any="U/kg limit_dextrinase 0")
_add("beta_amylase", None, "enzymes", 0.03, any="U/g beta_amylase 0")
_add("gushing", None, "contaminants", 0.04, any="g gushing 0")
_add("t2_ht2", None, "contaminants", 0.04, any="µg/kg t2_ht2 0")
_add("fumonisins", None, "contaminants", 0.02, any="µg/kg fumonisins 0")
_add(
    "half_glassy",
    None,
    "modification",
    0.03,
    may_be=("partly_unmodified_grains",),
    any="% half_glassy 1",
)
_add("mealy", None, "modification", 0.02, any="% mealy 1")
_add("real_attenuation", None, "wort", 0.03, EBC="% real_attenuation 1")
_add("wort_extract", None, "wort", 0.03, EBC="°P wort_extract 2")
_add("phenols", None, "contaminants", 0.02, any="mg/kg phenols 1")
_add("coagulable_nitrogen", None, "nitrogen", 0.03, EBC="mg/100 g coagulable_nitrogen 0")
_add("varietal_purity", None, "physical", 0.03, any="% varietal_purity 1")

METHODS: dict[str, dict[str, tuple[str, ...]]] = {
    "EBC": {
        "moisture": ("4.2",), "extract_fine_dry": ("4.5.1",), "extract_fine_as_is": ("4.5.1",),
        "extract_coarse_dry": ("4.5.1",), "extract_coarse_as_is": ("4.5.1",), "fine_coarse_difference": ("4.5.2",),
        "total_nitrogen": ("4.3.1", "4.3.2"), "total_protein": ("4.3.1", "4.3.2"), "colour": ("4.7.1", "4.7.2"),
        "boiled_colour": ("4.19",), "soluble_nitrogen": ("4.9.1", "4.9.3"), "soluble_protein": ("4.9.1", "4.9.3"),
        "ratio": ("4.9.1",), "fan": ("4.10",), "viscosity": ("4.8",), "dp": ("4.12",), "alpha_amylase": ("4.13",),
        "homogeneity": ("4.14",), "friability": ("4.15",), "pug": ("4.15",), "whole_grains": ("4.15",),
        "beta_glucan": ("4.16.2",), "final_attenuation": ("4.11.1",), "sieve_over_2_8": ("4.22",),
        "sieve_2_5_to_2_8": ("4.22",), "sieve_over_2_5": ("4.22",), "sieve_2_2_to_2_5": ("4.22",),
        "sieve_under_2_2": ("4.22",), "turbidity": ("4.23",), "thousand_corn_weight": ("4.4",),
        "saccharification_time": ("4.5.1",), "filtration": ("4.5.1",), "odour": ("4.5.1",), "wort_ph": ("4.5.1",),
        "hwe_dry": ("4.6.1",), "hwe_as_is": ("4.6.1",), "glycosidic_nitrile": ("4.21",),
    },
    "MEBAK": {
        "moisture": ("R-200.21.020",), "extract_fine_dry": ("R-206.00.002",), "extract_fine_as_is": ("R-206.00.002",),
        "extract_coarse_dry": ("R-206.00.002",), "friability": ("R-200.14.011",), "viscosity": ("R-205.10.282",),
        "soluble_nitrogen": ("R-205.11.030",), "colour": ("R-205.07.110",), "ratio": ("R-205.11.030",),
    },
    "iso65": {
        "extract_fine_dry": ("R-207.00.002",), "extract_fine_as_is": ("R-207.00.002",), "viscosity": ("R-205.10.282",),
        "friability": ("R-200.14.011",), "soluble_nitrogen": ("R-205.11.030",), "colour": ("R-205.07.110",),
    },
    "ASBC": {
        "moisture": ("Malt-3",), "extract_fine_dry": ("Malt-4",), "extract_fine_as_is": ("Malt-4",),
        "extract_coarse_dry": ("Malt-4",), "extract_coarse_as_is": ("Malt-4",), "fine_coarse_difference": ("Malt-4",),
        "dp": ("Malt-6",), "alpha_amylase": ("Malt-7",), "total_protein": ("Malt-8",), "friability": ("Malt-12",),
        "wort_ph": ("Wort-8",), "colour": ("Wort-9",), "fan": ("Wort-12",), "viscosity": ("Wort-13",),
        "soluble_protein": ("Wort-17",), "beta_glucan": ("Wort-18",), "sieve_7_64": ("Malt-2",),
        "sieve_6_64": ("Malt-2",), "bushel_weight": ("Malt-2",),
    },
    "IoB": {"moisture": ("2.1",), "dp": ("2.7",), "hwe_dry": ("2.3",), "hwe_as_is": ("2.3",),
            "fermentability": ("2.15",)},
}  # fmt: skip


def method(concept: str, body: str, pick: int) -> str:
    """The method reference as printed, or an empty text where none is known."""
    numbers = METHODS.get(body, {}).get(concept)
    if not numbers:
        return ""
    number = numbers[pick % len(numbers)]
    if body in ("MEBAK", "iso65"):
        return f"MEBAK {number}"
    if body == "ASBC":
        return f"ASBC {number}"
    return f"{body} {number}"
