"""Prints numbers, limits and dates the way laboratories of a language do."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date
from random import Random

from tests.sheets.names import names
from tests.sheets.truth import Certainty

POINT_LANGUAGES = ("en",)
_MONTHS = {
    "en": "January February March April May June July August September October November December",
    "de": "Januar Februar März April Mai Juni Juli August September Oktober November Dezember",
    "fr": "janvier février mars avril mai juin juillet août septembre octobre novembre décembre",
    "nl": "januari februari maart april mei juni juli augustus september oktober november december",
    "es": "enero febrero marzo abril mayo junio julio agosto septiembre octubre noviembre diciembre",
    "cs": "ledna února března dubna května června července srpna září října listopadu prosince",
    "da": "januar februar marts april maj juni juli august september oktober november december",
    "it": "gennaio febbraio marzo aprile maggio giugno luglio agosto settembre ottobre novembre dicembre",
    "sk": "januára februára marca apríla mája júna júla augusta septembra októbra novembra decembra",
    "pl": "stycznia lutego marca kwietnia maja czerwca lipca sierpnia września października listopada grudnia",
    "pt": "janeiro fevereiro março abril maio junho julho agosto setembro outubro novembro dezembro",
}


def number(value: float, decimals: int, comma: bool) -> str:
    """A plain decimal number."""
    text = f"{value:.{decimals}f}"
    if text.startswith("-") and float(text) == 0:
        text = text[1:]
    return text.replace(".", ",") if comma else text


@dataclass(frozen=True, slots=True)
class PrintedDate:
    text: str
    iso: str
    certainty: Certainty


class DateStyle:
    """One way of writing dates, kept through a sheet. American sheets put the month first."""

    def __init__(self, rng: Random, language: str, american: bool) -> None:
        self.language = language
        self.american = american
        forms: tuple[str, ...]
        if language == "en":
            forms = ("words", "short", "slash", "slash", "iso", "dots")
        elif language in ("de", "cs", "sk", "pl", "da"):
            forms = ("dots", "dots", "dots", "iso", "words", "dots2")
        elif language == "nl":
            forms = ("dash", "slash", "words", "iso")
        else:
            forms = ("slash", "slash", "dots", "words", "iso")
        self.form = rng.choice(forms)
        self.order_shown = False

    def write(self, day: date) -> PrintedDate:
        iso = day.isoformat()
        months = _MONTHS[self.language].split()
        month = months[day.month - 1]
        unsure: Certainty = "sure" if day.day > 12 or day.day == day.month else "either"
        if self.form == "words":
            if self.american:
                return PrintedDate(f"{month} {day.day}, {day.year}", iso, "sure")
            stop = "." if self.language in ("de", "cs", "sk", "da") else ""
            of = " de " if self.language in ("es", "pt") else " "
            return PrintedDate(f"{day.day}{stop}{of}{month}{of}{day.year}", iso, "sure")
        if self.form == "short":
            return PrintedDate(f"{day.day:02d}-{month[:3]}-{day.year}", iso, "sure")
        if self.form == "iso":
            return PrintedDate(iso, iso, "sure")
        if self.form == "dots":
            return PrintedDate(
                f"{day.day:02d}.{day.month:02d}.{day.year}", iso, unsure if self.language == "en" else "sure"
            )
        if self.form == "dots2":
            return PrintedDate(f"{day.day:02d}.{day.month:02d}.{day.year % 100:02d}", iso, "either")
        if self.form == "dash":
            return PrintedDate(f"{day.day:02d}-{day.month:02d}-{day.year}", iso, unsure)
        if self.language == "en":  # with a stroke, English does not say which comes first
            self.order_shown |= day.day > 12
            doubtful: Certainty = "sure" if day.day > 12 or day.day == day.month else "ambiguous"
            first, second = (day.month, day.day) if self.american else (day.day, day.month)
            return PrintedDate(f"{first:02d}/{second:02d}/{day.year}", iso, doubtful)
        return PrintedDate(f"{day.day:02d}/{day.month:02d}/{day.year}", iso, unsure)


@dataclass(frozen=True, slots=True)
class Limit:
    """Limits of one row: the two cells, and both in one cell."""

    low: str
    high: str
    spec: str


_MAXIMUM = names(
    "moisture fine_coarse_difference viscosity beta_glucan pug whole_grains glassy_grains sieve_under_2_2 "
    "foreign_matter broken_grains dms_precursor glycosidic_nitrile ndma sulphur_dioxide arsenic lead cadmium "
    "deoxynivalenol zearalenone ochratoxin_a aflatoxin_b1 turbidity saccharification_time filtration "
    "boiled_colour sieve_5_64_through half_glassy gushing t2_ht2 fumonisins phenols lipoxygenase"
)
_MINIMUM = names(
    "extract_fine_dry extract_fine_as_is extract_coarse_dry extract_coarse_as_is hwe_dry hwe_as_is "
    "hwe_fine_dry friability homogeneity dp alpha_amylase fan sieve_over_2_8 sieve_over_2_5 final_attenuation "
    "relative_extract_45 fermentability predicted_spirit_yield thousand_corn_weight hectolitre_weight "
    "bushel_weight varietal_purity"
)


def limit(rng: Random, concept: str, value: float, decimals: int, comma: bool, style: str) -> Limit:
    """Limits that the value keeps. ``style`` is words, signs or hyphen (for the single cell)."""
    step = max(abs(value) * rng.uniform(0.02, 0.09), 2 * 10**-decimals)
    shown = (
        max(0, decimals - 1)
        if decimals and rng.random() < 0.25 and concept not in ("viscosity", "wort_ph")
        else decimals
    )

    def text(number_: float, up: bool) -> str:
        scale = 10**shown
        rounded = (int(number_ * scale) + (1 if up else 0)) / scale
        return number(rounded, shown, comma)

    upper = text(value + step, True)
    lower = text(max(value - step, 0.0), False)
    if concept in _MAXIMUM:
        return Limit("", upper, {"words": f"max. {upper}", "signs": f"≤ {upper}"}.get(style, f"{upper} max"))
    if concept in _MINIMUM:
        return Limit(lower, "", {"words": f"min. {lower}", "signs": f"≥ {lower}"}.get(style, f"{lower} min"))
    dash = {"words": " - ", "signs": " – "}.get(style, "-")
    return Limit(lower, upper, f"{lower}{dash}{upper}")
