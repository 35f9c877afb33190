"""The unseen set: sheets as maltsters, merchants and laboratories send them, in forms that nobody prepared for.

Whoever works on the reading of sheets leaves the files ``unseen_*`` unread and looks at counts only.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, replace
from datetime import date, timedelta
from functools import cache
from importlib import import_module
from random import Random

from tests.sheets.concepts import Concept, Form
from tests.sheets.content import Composer, Content, Need
from tests.sheets.draw import Look, draw_look
from tests.sheets.headers import Entry, HeaderMaker
from tests.sheets.make import families_of
from tests.sheets.numbers import Limit
from tests.sheets.registry import Draw, Layout
from tests.sheets.truth import Made, TruthFigure, TruthHeader
from tests.sheets.unitwords import SPELLINGS
from tests.sheets.unseen_names import BRANDS, CUSTOMERS, RANGE_FORMS, SUPPLIERS, UNITS, UNTRUE, VARIETIES
from tests.sheets.values import Profile
from tests.sheets.wording import Wording, parse

LANGUAGES = ("en", "de", "fr", "nl", "es", "it", "cs", "da", "pl")
WEIGHTS = (9, 7, 5, 2, 2, 2, 2, 1, 1)
FULL = LANGUAGES[:5]
_PARTS = range(1, 5)
_LAYOUTS = range(1, 6)
_PALE = ("PIL", "XP", "ALE", "VIE", "DIS")  # others are still mashed by the Congress programme
_DAYS = ("produced_on", "analysed_on", "delivered_on")
_OWN_WORDS = 0.6  # how often a label is of this set; the others are the trade's most usual ones


@dataclass(frozen=True, slots=True)
class Unseen(Layout):
    """A layout kind. ``classes`` empty: any malt."""

    classes: tuple[str, ...] = ()


UNSEEN: dict[str, Unseen] = {}


def unseen_layout(
    name: str, need: Need | None = None, languages: tuple[str, ...] = LANGUAGES, classes: tuple[str, ...] = ()
) -> Callable[[Draw], Draw]:
    """Registers a layout kind of the unseen set."""

    def register(draw: Draw) -> Draw:
        if name in UNSEEN:
            raise ValueError(f"layout {name!r} is registered twice")
        UNSEEN[name] = Unseen(name, need or Need(), draw, True, languages, classes)
        return draw

    return register


@cache
def _texts(language: str) -> dict[str, dict[str, tuple[str, ...]]]:
    for part in _PARTS:
        texts: dict[str, str] = import_module(f"tests.sheets.unseen_wordings_{part}").TEXTS
        if language in texts:
            return parse(texts[language])
    return {}


class UnseenWording(Wording):
    """The wordings of this set; what they lack comes from the development part."""

    def all(self, section: str, key: str) -> tuple[str, ...]:
        found = _texts(self.language).get(section, {}).get(key)
        if found is None and section == "x":
            found = _texts("en")[section].get(key)
        return found or Wording(self.language, False).all(section, key)

    def pick(self, rng: Random, section: str, key: str) -> str:
        if section in ("labels", "heads", "captions", "titles") and rng.random() > _OWN_WORDS:
            usual = Wording(self.language, False, self.avoid)
            if usual.has(section, key):
                return usual.pick(rng, section, key)
        return super().pick(rng, section, key)


class _Maker(HeaderMaker):
    """Other names, batch numbers and quantities, and captions that are none of the header's keys."""

    def __init__(self, rng: Random, words: Wording, comma: bool, american: bool) -> None:
        super().__init__(rng, words, comma, american)
        self.supplier = rng.choice(SUPPLIERS[words.language])
        self.customer = rng.choice(CUSTOMERS[words.language])
        self.weight_form = rng.randint(0, 3)
        self.latest = date(self.year, 11, 2)

    def batch_number(self) -> str:
        self.serial += self.rng.randint(1, 60)
        n, y = self.serial, self.year % 100
        return (
            f"{y}-{n:04d}-PA", f"{n}", f"B{y}{n:05d}", f"{n:06d}/{self.rng.randint(1, 9)}", f"HL{n:04d}{y}",
            f"{y}.{n:04d}", f"{self.year}{n:05d}", f"T{n % 90 + 10}/{y}-{n % 12 + 1:02d}",
        )[self.number_form]  # fmt: skip

    def quantity(self) -> str:
        rng = self.rng
        tonnes = f"{rng.randint(4, 27)}.{rng.randint(0, 99):02d}".replace(".", "," if self.comma else ".")
        heavy = "to" if self.words.language == "de" else "mt"
        thousand = "." if self.comma else ","
        kilos = f"{rng.randint(40, 275) * 100:,}".replace(",", thousand if rng.random() < 0.7 else " ")
        return (f"{tonnes} t", f"{kilos} kg", f"{rng.randint(4, 27)} t", f"{tonnes} {heavy}")[self.weight_form]

    def malt_name(self, malt_class: str) -> str:
        return self.words.pick(self.rng, "malts", malt_class) + self.rng.choice(BRANDS)

    def entries(self, malt_class: str, batches: int, kind: str) -> tuple[list[Entry], list[list[Entry]]]:
        shared, own = super().entries(malt_class, batches, kind)
        rng = self.rng
        others = [e for e in shared if e.key]
        for k, e in enumerate(others):
            if e.key in ("supplier", "customer"):
                text = self.supplier if e.key == "supplier" else self.customer
                others[k] = replace(e, text=text, truth=TruthHeader(text, text))
        for part in own:
            for k, e in enumerate(part):
                if e.key == "variety":
                    text = rng.choice(VARIETIES)
                    part[k] = replace(e, text=text, truth=TruthHeader(text, text))
            self._in_order(part)
        days = [e.truth.value for e in (*others, *(e for part in own for e in part)) if e.key in _DAYS]
        self.latest = max([self.latest, *(date.fromisoformat(d) for d in days)])
        if kind != "specification":
            captions = [c.strip() for c in self.words.pick(rng, "x", "other").split(" ; ")]
            for k in rng.sample(range(min(4, len(captions))), rng.choice((0, 0, 1, 2))):
                others.append(self.plain_entry(captions[k], k))
        return others, own

    def _in_order(self, part: list[Entry]) -> None:
        """Nothing is analysed before it is made."""
        made = next((e.truth.value for e in part if e.key == "produced_on"), "")
        for k, e in enumerate(part):
            if e.key == "analysed_on" and e.truth.value < made:
                part[k] = self._date("analysed_on", date.fromisoformat(made) + timedelta(days=self.rng.randint(0, 3)))

    def plain_entry(self, caption: str, k: int) -> Entry:
        """An entry of no header key: silo, vehicle, haulier, day of sampling."""
        rng = self.rng
        day = self.dates.write(self.issued())
        text = (f"{rng.randint(2, 48)}", f"QB {rng.randint(100, 999)} TN", "Harlow & Penn", day.text)[k]
        return Entry("", caption, text, TruthHeader(text, text, required=False))

    def issued(self) -> date:
        """The day of the last entry, or one soon after it."""
        return self.latest + timedelta(days=self.rng.randint(0, 5))


class UnseenComposer(Composer):
    """Draws content with this set's words, unit spellings, digits and ways to write limits."""

    def __init__(self, rng: Random, layout: str, language: str, family: str, seed: int) -> None:
        super().__init__(rng, layout, language, family, True, seed)
        self.words = UnseenWording(language, True, UNTRUE.get(family, ()))
        self.comma = (language != "en") != (rng.random() < 0.1)
        self.marker = {k: rng.choice(self.words.all("basis", k)) for k in ("dry", "asis")}
        self.unit_marker = {k: rng.choice(self.words.all("unitbasis", k)) for k in ("dry", "asis")}
        self.maker = _Maker(rng, self.words, self.comma, american=family == "ASBC")
        if layout == "u-footnoted":
            self.basis_mode = "none"
        self.two_digits = rng.random() < 0.25
        self.range_form = rng.choice(RANGE_FORMS.get(language, RANGE_FORMS["en"]))
        self.method_form = rng.choice(("{b} {n}", "{b} {n}", "Analytica-{b} {n}", "{b} {n}."))

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
        """Some laboratories print one digit more than others."""
        chosen = super()._choose(need, profile)
        if profile.malt_class not in ("DIS", "ALE", "PIL", "XP"):  # nobody distils from crystal malt
            chosen = [c for c in chosen if c.name not in _FOR_SPIRIT]
        return [_finer(c) if self.two_digits else c for c in chosen]

    def spell_unit(self, code: str) -> str:
        if code not in self.spellings:
            found = UNITS.get((self.language, code)) or UNITS.get(("", code)) or SPELLINGS[code]
            self.spellings[code] = self.rng.choice(found)
        return self.spellings[code]


_FINER = ("moisture", "extract", "fine_coarse", "total_protein", "colour", "boiled_colour", "ratio", "friability")


_FOR_SPIRIT = ("predicted_spirit_yield", "fermentability", "fermentable_extract", "glycosidic_nitrile", "phenols")


def _finer(concept: Concept) -> Concept:
    if not concept.name.startswith(_FINER):
        return concept
    forms = {
        family: tuple(Form(f.unit, f.source, f.decimals + 1 if f.decimals == 1 else f.decimals) for f in found)
        for family, found in concept.forms.items()
    }
    return replace(concept, forms=forms)


def _load() -> None:
    for part in _LAYOUTS:
        import_module(f"tests.sheets.unseen_layouts_{part}")


def unseen_kinds() -> list[str]:
    """Names of the layout kinds of the unseen set."""
    _load()
    return list(UNSEEN)


def _composed(kind: Unseen, language: str, family: str, seed: int) -> tuple[Random, Content]:
    classes = kind.classes or (_PALE if family == "iso65" else ())
    for attempt in range(2000):
        rng = Random(f"unseen/{seed}/{kind.name}/{language}/{family}/{attempt}")
        content = UnseenComposer(rng, kind.name, language, family, seed).compose(kind.need)
        if not classes or content.malt_class in classes:
            return rng, content
    raise ValueError(f"no malt of {classes} found")


def make_unseen(seed: int, layout: str | None = None, language: str | None = None, family: str | None = None) -> Made:
    """The unseen sheet of a seed. What is not named is drawn by chance; the same arguments give the same bytes."""
    _load()
    rng = Random(f"unseen/{seed}/{layout}/{language}/{family}")
    kind = UNSEEN[layout or rng.choice(list(UNSEEN))]
    if language is None:
        weights = [w for name, w in zip(LANGUAGES, WEIGHTS, strict=True) if name in kind.languages]
        language = rng.choices([x for x in LANGUAGES if x in kind.languages], weights)[0]
    family = family or rng.choice(families_of(language, kind))
    rng, content = _composed(kind, language, family, seed)
    look: Look = draw_look(rng)
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
