"""The sealed set: plain and awkward post as it comes, the exam of the reading.

Whoever works on the reading of sheets leaves the files ``sealed_*`` unread and looks at counts only.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, replace
from datetime import date, timedelta
from functools import cache
from importlib import import_module
from random import Random

from reportlab.lib.pagesizes import LETTER  # type: ignore[import-untyped]

from tests.sheets.concepts import Concept
from tests.sheets.content import Composer, Content, Need
from tests.sheets.draw import draw_look
from tests.sheets.headers import OFTEN, Entry, HeaderMaker
from tests.sheets.numbers import Limit
from tests.sheets.registry import Draw, Layout
from tests.sheets.sealed_names import BRANDS, CUSTOMERS, RANGE_FORMS, SUPPLIERS, UNITS, UNTRUE, VARIETIES, Dates
from tests.sheets.truth import Made, Truth, TruthFigure, TruthHeader
from tests.sheets.unitwords import SPELLINGS
from tests.sheets.values import Profile
from tests.sheets.wording import LANGUAGES as DRAWN
from tests.sheets.wording import Wording, parse

LANGUAGES = ("en", "de", "fr", "nl", "es", "cs", "da", "it", "pl", "pt", "sv")
WEIGHTS = (10, 7, 4, 2, 3, 2, 1, 2, 1, 1, 1)
MAIN = LANGUAGES[:8]
FAMILIES = {
    "en": ("EBC", "EBC", "EBC", "IoB", "IoB", "ASBC", "ASBC"), "de": ("EBC", "EBC", "EBC", "EBC", "iso65"),
    "fr": ("EBC", "EBC", "EBC", "EBC", "ASBC"), "es": ("EBC", "EBC", "EBC", "ASBC"),
}  # fmt: skip
_PARTS = range(1, 5)
_LAYOUTS = range(1, 7)
_PALE = ("PIL", "XP", "ALE", "VIE", "DIS")  # others are still mashed by the Congress programme
_FOR_SPIRIT = ("predicted_spirit_yield", "fermentability", "fermentable_extract", "glycosidic_nitrile", "phenols")
_OWN_WORDS = 0.75  # how often a label is of this set; the others are the trade's most usual ones
_PLAIN = ("silo", "truck", "note_no", "article", "sample", "packing", "origin", "account", "seal", "sampled")


@dataclass(frozen=True, slots=True)
class Sealed(Layout):
    """A layout kind. ``classes`` empty: any malt."""

    classes: tuple[str, ...] = ()


SEALED: dict[str, Sealed] = {}


def sealed_layout(
    name: str, need: Need | None = None, languages: tuple[str, ...] = LANGUAGES, classes: tuple[str, ...] = ()
) -> Callable[[Draw], Draw]:
    """Registers a layout kind of the sealed set."""

    def register(draw: Draw) -> Draw:
        if name in SEALED:
            raise ValueError(f"layout {name!r} is registered twice")
        SEALED[name] = Sealed(name, need or Need(), draw, True, languages, classes)
        return draw

    return register


@cache
def _texts(language: str) -> dict[str, dict[str, tuple[str, ...]]]:
    for part in _PARTS:
        texts: dict[str, str] = import_module(f"tests.sheets.sealed_wordings_{part}").TEXTS
        if language in texts:
            return parse(texts[language])
    return {}


class SealedWording(Wording):
    """The wordings of this set; what they lack comes from the development part, if that has the language."""

    def all(self, section: str, key: str) -> tuple[str, ...]:
        found = _texts(self.language).get(section, {}).get(key)
        if found is None and section == "x":
            found = _texts("en")[section].get(key)
        if found is None and self.language in DRAWN:
            found = Wording(self.language, False).all(section, key)
        return found or ()

    def pick(self, rng: Random, section: str, key: str) -> str:
        if (
            self.language in DRAWN
            and section in ("labels", "heads", "captions", "titles")
            and rng.random() > _OWN_WORDS
        ):
            usual = Wording(self.language, False, self.avoid)
            if usual.has(section, key):
                return usual.pick(rng, section, key)
        return super().pick(rng, section, key)


class SealedMaker(HeaderMaker):
    """Header entries with this set's names and numbers, and captions that are none of the header's keys."""

    def __init__(self, rng: Random, words: Wording, comma: bool, american: bool) -> None:
        self.rng, self.words, self.comma = rng, words, comma
        self.dates = Dates(rng, words.language, american)  # type: ignore[assignment]
        self.year = rng.choice((2023, 2024, 2025))
        self.number_form = rng.randint(0, 8)
        self.serial = rng.randint(110, 8400)
        self.supplier = rng.choice(SUPPLIERS[words.language])
        self.customer = rng.choice(CUSTOMERS[words.language])
        self.captions: dict[str, str] = {}
        self.weight_form = rng.randint(0, 4)
        self.latest = date(self.year, 11, 12)

    def batch_number(self) -> str:
        self.serial += self.rng.randint(1, 50)
        n, y = self.serial, self.year % 100
        return (
            f"{n}",
            f"{y}{n:04d}",
            f"BH{y}-{n:04d}",
            f"{n:05d}/{y}",
            f"L{y}{n:05d}",
            f"{self.year}-{n:04d}",
            f"10{n:06d}",
            f"K{n % 7 + 1}/{n:04d}",
            f"{n:04d}{chr(65 + n % 6)}",
        )[self.number_form]

    def quantity(self) -> str:
        rng = self.rng
        tonnes = f"{rng.randint(3, 28)}.{rng.randint(1, 99):02d}".replace(".", "," if self.comma else ".")
        kilos = f"{rng.randint(60, 285) * 100 + 20 * rng.randint(0, 4)}"
        loose = f"{kilos[:-3]} {kilos[-3:]}"
        return (f"{tonnes} t", f"{kilos} kg", f"{loose} kg", f"{rng.randint(3, 28)} t", f"{tonnes} MT")[
            self.weight_form
        ]

    def malt_name(self, malt_class: str) -> str:
        return self.words.pick(self.rng, "malts", malt_class) + self.rng.choice(BRANDS)

    def entries(self, malt_class: str, batches: int, kind: str) -> tuple[list[Entry], list[list[Entry]]]:
        """Entries that hold for the whole sheet, and those of each batch, in an order as forms have it."""
        rng = self.rng
        shared = [self._entry("malt", self.malt_name(malt_class))]
        if rng.random() < 0.6:
            shared.insert(rng.randint(0, 1), self._entry("customer", self.customer))
        if rng.random() < 0.45:
            n = rng.randint(10200, 99800)
            shared.append(self._entry("order", rng.choice((f"{n}", f"PO{n}", f"45000{n}", f"B-{n}"))))
        if rng.random() < 0.35:
            n = rng.randint(100, 9899)
            shared.append(
                self._entry("certificate", rng.choice((f"{n}", f"C{self.year % 100}-{n}", f"{self.year}/{n:05d}")))
            )
        if rng.random() < 0.15:
            shared.append(self._entry("supplier", self.supplier))
        if rng.random() < 0.65:
            shared.append(self._entry("crop_year", str(self.year)))
        start = date(self.year, 10, 5) + timedelta(days=rng.randint(0, 270))
        own = self._of_batches(batches, start)
        if rng.random() < 0.35:
            shared.append(self._date("delivered_on", start + timedelta(days=rng.randint(34, 50))))
        self.latest = start + timedelta(days=51)
        for key in rng.sample(_PLAIN, rng.choice((0, 1, 1, 2, 3))):
            shared.append(self._plain(key, start))
        if rng.random() < 0.4:
            head, rest = shared[:1], shared[1:]
            rng.shuffle(rest)
            shared = head + rest
        return shared, own

    def _of_batches(self, batches: int, start: date) -> list[list[Entry]]:
        rng = self.rng
        wanted = [key for key, share in OFTEN.items() if rng.random() < share]
        own = []
        for _ in range(batches):
            made = start + timedelta(days=rng.randint(0, 12))
            entries = [self._entry("batch", self.batch_number())]
            for key in wanted:
                if key == "produced_on":
                    entries.append(self._date(key, made))
                elif key == "analysed_on":
                    entries.append(self._date(key, made + timedelta(days=rng.randint(14, 20))))
                elif key == "best_before":
                    entries.append(self._date(key, made + timedelta(days=rng.choice((365, 547, 730)))))
                elif key == "quantity":
                    entries.append(self._entry(key, self.quantity()))
                else:
                    entries.append(self._entry(key, rng.choice(VARIETIES)))
            own.append(entries)
        return own

    def _plain(self, key: str, start: date) -> Entry:
        """An entry of no header key."""
        rng = self.rng
        n = rng.randint(1000, 9899)
        made = self.dates.write(start + timedelta(days=13)).text if key == "sampled" else ""
        chosen = {
            "silo": f"{n % 40 + 2}",
            "truck": f"QX {n} B",
            "note_no": f"80{n}",
            "article": f"1{n}0",
            "sample": f"S-{n}",
            "account": f"K{n}",
            "seal": f"{n}7",
            "sampled": made,
        }
        text = chosen[key] if key in chosen else self.words.pick(rng, "x", f"{key}_text")
        return Entry("", self.words.pick(rng, "x", key), text, TruthHeader(text, text, required=False))

    def issued(self) -> str:
        """A day after everything else on the sheet."""
        return self.dates.write(self.latest + timedelta(days=self.rng.randint(0, 6))).text


class SealedComposer(Composer):
    """Draws content with this set's words, unit spellings and ways to write limits."""

    def __init__(self, rng: Random, layout: str, language: str, family: str, seed: int) -> None:
        super().__init__(rng, layout, language if language in DRAWN else "en", family, True, seed)
        self.language = language
        self.truth = Truth(layout, language, family, seed)
        self.words = SealedWording(language, True, UNTRUE.get(family, ()))
        self.comma = (language != "en") != (rng.random() < 0.08)
        self.marker = {k: rng.choice(self.words.all("basis", k)) for k in ("dry", "asis")}
        self.unit_marker = {k: rng.choice(self.words.all("unitbasis", k)) for k in ("dry", "asis")}
        self.maker = SealedMaker(rng, self.words, self.comma, american=family == "ASBC")
        self.range_form = rng.choice(RANGE_FORMS[language])
        if layout == "s-a08":  # the basis is told by a footnote
            self.basis_mode = "none"
        self.method_form = rng.choice(("{b} {n}", "{b} {n}", "{b}-{n}", "Analytica EBC {n}"))

    def compose(self, need: Need) -> Content:
        content = super().compose(need)
        for row in content.rows:
            if row.unit.startswith("%") and row.limit.high and float(row.limit.high.replace(",", ".")) > 100:
                row.limit = replace(row.limit, high="")  # nobody sets a limit above all there is
                for cell in row.cells:
                    if isinstance(cell.truth, TruthFigure):
                        cell.truth.high = ""
            row.limit = self._limit(row.limit)
            if row.method.startswith("EBC "):
                row.method = self.method_form.format(b="EBC", n=row.method.removeprefix("EBC "))
        return content

    def _limit(self, limit: Limit) -> Limit:
        low, high, between = self.range_form
        if limit.low and limit.high:
            return replace(limit, spec=between.format(a=limit.low, b=limit.high))
        if limit.low or limit.high:
            return replace(limit, spec=low.format(v=limit.low) if limit.low else high.format(v=limit.high))
        return limit

    def _choose(self, need: Need, profile: Profile) -> list[Concept]:
        chosen = super()._choose(need, profile)
        if profile.malt_class not in ("DIS", "ALE", "PIL", "XP"):  # nobody distils from crystal malt
            chosen = [c for c in chosen if c.name not in _FOR_SPIRIT]
        return chosen

    def spell_unit(self, code: str) -> str:
        if code not in self.spellings:
            found = UNITS.get((self.language, code)) or UNITS.get(("", code)) or SPELLINGS[code]
            self.spellings[code] = self.rng.choice(found)
        return self.spellings[code]


def sealed_families(language: str, layout: Layout) -> tuple[str, ...]:
    """Method families that a language's sheets of a layout are made in."""
    return tuple(f for f in FAMILIES.get(language, ("EBC",)) if f in layout.need.families) or ("EBC",)


def _load() -> None:
    for part in _LAYOUTS:
        import_module(f"tests.sheets.sealed_layouts_{part}")


def sealed_kinds() -> list[str]:
    """Names of the layout kinds of the sealed set."""
    _load()
    return list(SEALED)


def _composed(kind: Sealed, language: str, family: str, seed: int) -> tuple[Random, Content]:
    classes = kind.classes or (_PALE if family == "iso65" else ())
    for attempt in range(2000):
        rng = Random(f"sealed/{seed}/{kind.name}/{language}/{family}/{attempt}")
        content = SealedComposer(rng, kind.name, language, family, seed).compose(kind.need)
        if not classes or content.malt_class in classes:
            return rng, content
    raise ValueError(f"no malt of {classes} found")


def make_sealed(seed: int, layout: str | None = None, language: str | None = None, family: str | None = None) -> Made:
    """The sealed sheet of a seed. What is not named is drawn by chance; the same arguments give the same bytes."""
    _load()
    rng = Random(f"sealed/{seed}/{layout}/{language}/{family}")
    kind = SEALED[layout or rng.choice(list(SEALED))]
    if language is None:
        weights = [w for name, w in zip(LANGUAGES, WEIGHTS, strict=True) if name in kind.languages]
        language = rng.choices([x for x in LANGUAGES if x in kind.languages], weights)[0]
    family = family or rng.choice(sealed_families(language, kind))
    rng, content = _composed(kind, language, family, seed)
    look = draw_look(rng)
    if family == "ASBC" and language == "en":
        look = replace(look, page=LETTER)
    pdf = kind.draw(content, look)
    for figure in (f for analysis in content.truth.analyses for f in analysis.figures):
        if figure.why == "grouped digits":  # the other figures show which sign parts the decimals
            figure.certainty = "either"
    if content.maker.dates.order_shown:  # 25/03 beside 02/03 settles which is the month; a bare "date" stays unsure
        for entry in (h for analysis in content.truth.analyses for h in analysis.header.values()):
            if entry.certainty == "ambiguous" and entry.required and entry.text != entry.value:
                entry.certainty = "either"
    content.truth.not_figures = content.not_figures
    return Made(pdf, content.truth)


__all__ = ["LANGUAGES", "MAIN", "SEALED", "make_sealed", "sealed_kinds", "sealed_layout"]
