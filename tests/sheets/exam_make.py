"""Sheets for the exam: layouts, wordings and unit spellings that nobody has seen who works on the reading."""

from __future__ import annotations

from collections.abc import Callable
from functools import cache
from importlib import import_module
from random import Random

from tests.sheets.content import Composer, Need
from tests.sheets.draw import draw_look
from tests.sheets.headers import HeaderMaker
from tests.sheets.make import families_of
from tests.sheets.registry import Draw, Layout
from tests.sheets.truth import Made
from tests.sheets.unitwords import SPELLINGS
from tests.sheets.wording import LANGUAGES, Wording, parse

EXAM: dict[str, Layout] = {}
_MODULES = tuple(f"exam_layouts{n}" for n in ("", "_2", "_3", "_4"))
_WEIGHTS = {"en": 8, "de": 5, "fr": 4, "nl": 3, "es": 4, "cs": 3, "da": 3, "it": 3, "sk": 1, "pl": 1, "pt": 1}
# Pieces of wording that would be untrue on a sheet of the family.
_UNTRUE = {
    "EBC": ("lintner", "i.o.b"),
    "IoB": ("ongre", "olbach", "ebc", "w.-k", "(wk", "8.6", "8,6", "vz"),
    "ASBC": ("ebc", "w.-k", "(wk", "0.2 mm", "0,2 mm", "1,0 mm", "vz"),
    "iso65": ("ongre", "olbach", "ebc"),
}
_UNITS: dict[str, tuple[str, ...]] = {
    "EBC": ("EBC", "°E.B.C.", "E.B.C.", "EBC"), "SRM": ("SRM", "S.R.M."), "°L": ("°L", "° Lovibond", "°L"),
    "mg/L": ("mg/l", "ppm", "mg l-1", "mg/litre", "mg/L"), "mg/100 g": ("mg/100 g", "mg/100g", "mg per 100 g"),
    "WK": ("WK", "W.-K.", "°W.K.", "U. WK", "WK"), "°IoB": ("°I.o.B.", "IOB units", "°IoB"),
    "°Lintner": ("°L", "° Lint.", "deg. Lintner", "°L"), "DU": ("DU", "D.U.", "DU (20 °C)"),
    "mPa·s": ("mPa.s", "mPa × s", "cP", "mPa s"), "L°/kg": ("L°/kg", "l.°/kg", "LDK", "l°/kg"),
    "min": ("min", "min.", "Min."), "g": ("g", "gr", "g"), "kg/hL": ("kg/hl", "kg/Hl"),
    "lb/bu": ("lb/bu", "lb./bu.", "lb per bu"), "mg/kg": ("mg/kg", "ppm", "mg kg-1"),
    "µg/kg": ("µg/kg", "ppb", "mcg/kg"), "g/t": ("g/t", "g/MT"), "L/t": ("L/t", "LPA/t", "l/tonne"),
    "NTU": ("NTU", "N.T.U."), "°P": ("°P", "°Plato"),
}  # fmt: skip
_LOCAL_UNITS = {
    ("de", "EBC"): ("EBC", "Einh. EBC"), ("fr", "EBC"): ("EBC", "unités EBC"), ("cs", "EBC"): ("EBC", "j. EBC"),
    ("cs", "WK"): ("WK", "j. WK"), ("es", "EBC"): ("EBC", "uds. EBC"), ("da", "min"): ("min", "min."),
}  # fmt: skip
_ENGLISH = ("litre", "per", "units", "deg.", "tonne")


def exam_layout(name: str, need: Need | None = None, languages: tuple[str, ...] = ()) -> Callable[[Draw], Draw]:
    """Registers a layout kind of the exam. ``languages`` empty: all."""

    def register(draw: Draw) -> Draw:
        if name in EXAM:
            raise ValueError(f"layout {name!r} is registered twice")
        EXAM[name] = Layout(name, need or Need(), draw, True, languages)
        return draw

    return register


@cache
def _texts(language: str) -> dict[str, dict[str, tuple[str, ...]]]:
    for part in ("", "_2", "_3", "_4", "_5"):
        texts: dict[str, str] = import_module(f"tests.sheets.exam_wordings{part}").TEXTS
        if language in texts:
            return parse(texts[language])
    return {}


class ExamWording(Wording):
    """The wordings of the exam; what they lack comes from the development part."""

    def all(self, section: str, key: str) -> tuple[str, ...]:
        found = _texts(self.language).get(section, {}).get(key)
        if found is None and section == "x":
            found = _texts("en")[section].get(key)
        return found or Wording(self.language, False).all(section, key)


class _Maker(HeaderMaker):
    """Batch numbers and quantities in other forms."""

    def batch_number(self) -> str:
        self.serial += self.rng.randint(1, 40)
        n, y = self.serial, self.year % 100
        return (
            f"{n:04d}/{y}/K2", f"S4-{n}", f"MB.{y}.{n:04d}", f"{y}K{n:04d}", f"{n:04d} {y}", f"PIL{y}-{n:03d}",
            f"7{n:05d}", f"L{n:04d}.{y}",
        )[self.number_form]  # fmt: skip

    def quantity(self) -> str:
        rng = self.rng
        sign = rng.choice((" ", "." if self.comma else ","))
        kilos = rng.randint(40, 280) * 100 + rng.choice((0, 40, 60))
        return rng.choice((f"{kilos:,} kg".replace(",", sign), f"{rng.randint(4, 28)} MT", super().quantity()))


class ExamComposer(Composer):
    """Draws content with the exam's words and unit spellings."""

    def __init__(self, rng: Random, layout: str, language: str, family: str, seed: int) -> None:
        super().__init__(rng, layout, language, family, True, seed)
        self.words = ExamWording(language, True, _UNTRUE.get(family, ()))
        self.comma = (language != "en") != (rng.random() < 0.25)
        self.marker = {k: rng.choice(self.words.all("basis", k)) for k in ("dry", "asis")}
        self.unit_marker = {k: rng.choice(self.words.all("unitbasis", k)) for k in ("dry", "asis")}
        self.maker = _Maker(rng, self.words, self.comma, american=family == "ASBC")

    def spell_unit(self, code: str) -> str:
        if code not in self.spellings:
            found = _LOCAL_UNITS.get((self.language, code)) or _UNITS.get(code) or SPELLINGS[code]
            if self.language != "en":
                found = tuple(s for s in found if not any(w in s for w in _ENGLISH)) or found
            self.spellings[code] = self.rng.choice(found)
        return self.spellings[code]


def _load() -> None:
    for module in _MODULES:
        import_module(f"tests.sheets.{module}")


def exam_kinds() -> list[str]:
    """Names of the layout kinds of the exam."""
    _load()
    return list(EXAM)


def make_exam(seed: int, layout: str | None = None, language: str | None = None, family: str | None = None) -> Made:
    """The exam's sheet of a seed. What is not named is drawn by chance; the same arguments give the same bytes."""
    _load()
    rng = Random(f"exam/{seed}/{layout}/{language}/{family}")
    kind = EXAM[layout or rng.choice(list(EXAM))]
    if language is None:
        choice = [name for name in LANGUAGES if not kind.languages or name in kind.languages]
        language = rng.choices(choice, [_WEIGHTS[name] for name in choice])[0]
    family = family or rng.choice(families_of(language, kind))
    content = ExamComposer(rng, kind.name, language, family, seed).compose(kind.need)
    pdf = kind.draw(content, draw_look(rng))
    for figure in (f for analysis in content.truth.analyses for f in analysis.figures):
        if figure.why == "grouped digits":  # the other figures show which sign parts the decimals
            figure.certainty = "either"
    content.truth.not_figures = content.not_figures
    return Made(pdf, content.truth)
