"""Composes what a sheet says, before any layout: rows with labels, values, units, limits, and the truth of each."""

from __future__ import annotations

from dataclasses import dataclass, field
from random import Random

from tests.sheets.concepts import CONCEPTS, Concept, Form, method
from tests.sheets.decorate import decorate, largest_decoration
from tests.sheets.headers import Entry, HeaderMaker
from tests.sheets.names import names
from tests.sheets.numbers import Limit, limit, number
from tests.sheets.rows import Cell, Row, basis_in, basis_of_label, evaluate
from tests.sheets.targets import MASH_DEPENDENT, targets
from tests.sheets.truth import Certainty, Truth, TruthAnalysis, TruthFigure, TruthRow
from tests.sheets.unitwords import spell
from tests.sheets.values import Profile, draw_class, draw_profile
from tests.sheets.variations import print_twice, rewrite_labels
from tests.sheets.wording import Wording

CORE = ("moisture", "extract_fine_dry", "hwe_dry", "colour", "ratio")
GROUPS = ("sieving", "physical", "chemical", "nitrogen", "modification", "wort", "enzymes", "contaminants")
# Units without which a figure cannot be known: other units of the same size are in use.
UNIT_DECIDES = names("colour boiled_colour dp fan beta_glucan turbidity deoxynivalenol soluble_nitrogen")
UNIT_NAMES = ("Windisch", "WK", "DU", "EBC", "SRM", "Lintner")
SIEVES = (
    ("sieve_over_2_8", "sieve_2_5_to_2_8", "sieve_2_2_to_2_5", "sieve_under_2_2"),
    ("sieve_over_2_8", "sieve_2_5_to_2_8", "sieve_over_2_5", "sieve_2_2_to_2_5", "sieve_under_2_2"),
    ("sieve_over_2_5", "sieve_under_2_2"),
    (),
)


@dataclass(frozen=True, slots=True)
class Need:
    """What a layout asks of the content."""

    batches: tuple[int, int] = (1, 1)
    rows: tuple[int, int] = (9, 20)
    limits: bool = False
    limit_share: float = 0.85
    methods: bool = False
    sections: bool = False
    kind: str = "batch"
    contaminants: float = 0.3
    words: bool = True
    blanks: float = 0.0
    missing_units: float = 0.03
    families: tuple[str, ...] = ("EBC", "EBC", "IoB", "ASBC", "iso65")
    seconds: bool = True


@dataclass(slots=True)
class Content:
    """A sheet's words. Layouts print all of ``rows`` and every header entry that is in ``shared`` and ``own``."""

    rng: Random
    words: Wording
    family: str
    comma: bool
    title: str
    family_line: str
    note_line: str
    rows: list[Row]
    shared: list[Entry]
    own: list[list[Entry]]
    truth: Truth
    maker: HeaderMaker
    malt_class: str
    kept: bool
    composer: Composer
    need: Need
    analyses: list[TruthAnalysis]
    profiles: list[Profile]
    not_figures: list[str] = field(default_factory=list)

    def head(self, role: str) -> str:
        return self.words.pick(self.rng, "heads", role)


class Composer:
    """Draws the content of one sheet."""

    def __init__(self, rng: Random, layout: str, language: str, family: str, kept: bool, seed: int) -> None:
        self.rng = rng
        untrue = {"IoB": ("ongre",), "iso65": ("ongre", "olbach")}.get(family, ())
        self.words = Wording(language, kept, untrue)
        self.spellings: dict[str, str] = {}
        self.maker: HeaderMaker | None = None
        self.language, self.family, self.kept = language, family, kept
        self.comma = (language != "en") != (rng.random() < 0.1)
        self.truth = Truth(layout, language, family, seed)
        roll = rng.random()
        # Where the sheet says "dry": in the label, in the unit, in a sentence, or nowhere.
        self.basis_mode = "label" if roll < 0.55 else "unit" if roll < 0.85 else "note" if roll < 0.95 else "none"
        self.marker = {k: rng.choice(self.words.all("basis", k)) for k in ("dry", "asis")}
        self.unit_marker = {k: rng.choice(self.words.all("unitbasis", k)) for k in ("dry", "asis")}
        self.signal = "stated" if rng.random() < 0.8 else "methods" if rng.random() < 0.6 else "units"
        self.limit_style = rng.choice(("words", "signs", "hyphen"))
        self.body = family
        if family == "EBC" and language == "de" and rng.random() < 0.4:
            self.body = "MEBAK"

    @property
    def true_family(self) -> str:
        return "EBC" if self.family == "iso65" else self.family

    @property
    def mash(self) -> str:
        return "isothermal-65" if self.family in ("iso65", "IoB") else "congress"

    def compose(self, need: Need) -> Content:
        rng = self.rng
        batches = rng.randint(*need.batches)
        malt_class = draw_class(rng)
        profiles = [draw_profile(rng, malt_class) for _ in range(batches)]
        if self.maker is None:
            self.maker = HeaderMaker(rng, self.words, self.comma, american=self.family == "ASBC")
        maker = self.maker
        shared, own = maker.entries(malt_class, batches, need.kind)
        if self.family == "iso65":
            self.signal = "stated"
        if self.signal == "methods" and not need.methods:
            self.signal = "stated"
        analyses = [self._analysis(need.kind, p) for p in profiles]
        for entries, analysis in zip(own, analyses, strict=True):
            for entry in (*shared, *entries):
                if entry.key:
                    analysis.header[entry.key] = entry.truth
        rows = [self._row(c, need, profiles, analyses) for c in self._choose(need, profiles[0])]
        if need.seconds and rng.random() < 0.12:
            print_twice(rng, self, rows, profiles, analyses)
        rewrite_labels(rng, rows)
        self.truth.analyses.extend(analyses)
        family_line = ""
        if self.signal == "stated":
            family_line = self.words.pick(rng, "family", self.family)
        note = self.words.pick(rng, "notes", "dry") if self.basis_mode == "note" else ""
        return Content(
            rng=rng,
            words=self.words,
            family=self.family,
            comma=self.comma,
            title=self.words.pick(rng, "titles", need.kind),
            family_line=family_line,
            note_line=note,
            rows=rows,
            shared=shared,
            own=own,
            truth=self.truth,
            maker=maker,
            malt_class=malt_class,
            kept=self.kept,
            composer=self,
            need=need,
            analyses=analyses,
            profiles=profiles,
        )

    def _analysis(self, kind: str, profile: Profile) -> TruthAnalysis:
        families = ("EBC", "IoB") if self.family == "iso65" else (self.true_family,)
        analysis = TruthAnalysis("specification" if kind == "specification" else "batch", families, self.mash)
        analysis.actual = profile.figures
        return analysis

    def _choose(self, need: Need, profile: Profile) -> list[Concept]:
        rng = self.rng
        chosen = []
        sieves = rng.choices(SIEVES, (3, 1, 2, 4))[0]
        for concept in CONCEPTS.values():
            forms = concept.forms_for(self.family)
            if not forms or concept.name in profile.absent or not self.words.has("labels", self._wording_key(concept)):
                continue
            if not need.words and forms[0].unit == "text":
                continue
            share = concept.share
            if concept.name.startswith("sieve") and self.family != "ASBC":
                share = float(concept.name in sieves)
            if concept.group == "contaminants":
                share *= 1.0 if need.contaminants >= 1 else need.contaminants
                share = min(1.0, share * 3) if need.contaminants >= 1 else share
            if need.rows[0] > 24 and concept.group != "sieving":
                share = min(1.0, share * 2 + 0.15)
            if concept.name in CORE or rng.random() < share:
                chosen.append(concept)
        limit_ = rng.randint(*need.rows)
        while len(chosen) > limit_:
            removable = [c for c in chosen if c.name not in CORE and (c.name not in sieves or len(sieves) > limit_ - 6)]
            if not removable:
                break
            chosen.remove(rng.choice(removable))
        order = {g: i for i, g in enumerate(GROUPS)}
        if rng.random() < 0.5:  # chemistry first
            for i, g in enumerate(("chemical", "nitrogen", "wort", "modification", "enzymes", "physical", "sieving")):
                order[g] = i
        return sorted(chosen, key=lambda c: order[c.group])

    def _wording_key(self, concept: Concept) -> str:
        if concept.name != "ratio":
            return concept.name
        return {"IoB": "ratio_snr", "ASBC": "ratio_st"}.get(self.family, "ratio_kolbach")

    def _label(self, concept: Concept) -> tuple[str, bool, str]:
        """The label, whether it says its moisture basis, and a doubt tag."""
        basis = concept.basis
        mode = "label" if basis == "as-is" and self.basis_mode in ("note", "none") else self.basis_mode
        wording, tag = basis_of_label(self.words.pick(self.rng, "labels", self._wording_key(concept)))
        says = tag in ("dry", "asis")
        marker = ""
        if basis and mode == "label" and "{b}" in wording:
            chosen = self.marker["dry" if basis == "dry" else "asis"]
            marker = chosen if chosen.startswith(",") else f" {chosen}"
            says = True
        return wording.replace("{b}", marker), says, tag

    def _row(self, concept: Concept, need: Need, profiles: list[Profile], analyses: list[TruthAnalysis]) -> Row:
        rng = self.rng
        form = rng.choice(concept.forms_for(self.family))
        label, says, tag = self._label(concept)
        unit = self.spell_unit(form.unit)
        if form.unit == "pH" and rng.random() < 0.25:
            unit = "pH"
        mode = "label" if concept.basis == "as-is" and self.basis_mode in ("note", "none") else self.basis_mode
        if concept.basis and not says and mode in ("unit", "label"):
            key = "dry" if concept.basis == "dry" else "asis"
            marker = self.unit_marker[key]
            unit = marker if form.unit == "%" else f"{unit} {marker.lstrip('%, ')}"
            says = True
        certainty, why = self._certainty(concept, form, label, says, tag)
        reference = method(concept.name, self.body, rng.randint(0, 5)) if need.methods else ""
        if form.unit not in ("text", "pH", "") and rng.random() < need.missing_units and concept.parameter:
            unit = ""
            # A method number or a scale's name in the label may tell the unit.
            named = any(w in label for w in UNIT_NAMES) or reference
            told = named and concept.group != "contaminants"
            if not told and (concept.name in UNIT_DECIDES or concept.group == "contaminants"):
                certainty, why = "ambiguous", "no unit"
            elif certainty != "ambiguous":
                certainty, why = "either", "no unit"
            if concept.basis and not basis_in(label, self.marker) and not tag:
                extract = concept.name.startswith(("extract", "hwe"))
                certainty, why = ("ambiguous", "no moisture basis") if extract else ("either", "no unit")
        true = [0.0 if form.unit == "text" else evaluate(p, form.source) for p in profiles]
        decimals = form.decimals
        if concept.name == "colour" and form.unit == "EBC" and true[0] > 60:
            decimals = 0
        if concept.name == "colour" and form.unit in ("SRM", "°L"):
            decimals = 0 if true[0] > 60 else rng.choice((1, 2))
        bounds = Limit("", "", "")
        typical = ""
        if form.unit != "text" and need.limits and rng.random() < need.limit_share:
            middle = max(sum(true) / len(true), largest_decoration(concept.name, form.unit))
            bounds = limit(rng, concept.name, middle, decimals, self.comma, self.limit_style)
            typical = number(middle * rng.uniform(0.97, 1.03), decimals, self.comma)
        cells = [self._cell(concept, form, t, decimals, label, unit, certainty, why, bounds, a, need)
                 for t, a in zip(true, analyses, strict=True)]  # fmt: skip
        return Row(concept.name, concept.group, label, unit, reference, bounds, cells, typical)

    def spell_unit(self, code: str) -> str:
        """A laboratory spells a unit one way through a sheet."""
        if code not in self.spellings:
            self.spellings[code] = spell(code, self.rng, self.language, self.kept)
        return self.spellings[code]

    def _certainty(self, concept: Concept, form: Form, label: str, says: bool, tag: str) -> tuple[Certainty, str]:
        if concept.basis and not says:
            if self.basis_mode == "note":
                return "either", "basis in a sentence"
            if concept.name.startswith(("extract", "hwe")):
                return "ambiguous", "no moisture basis"
            return "either", "no moisture basis"
        if tag == "either":
            return "either", "label"
        if concept.name.startswith("hwe") and not any(d in label for d in ("0.7", "0,7", "0.2", "0,2")):
            return "either", "mill gap not named"
        if form.unit == "°L" and concept.parameter == "colour":
            return "either", "°L on an ASBC sheet"
        if self.signal == "units" and concept.parameter in MASH_DEPENDENT:
            return "either", "family not stated"
        if concept.name in ("acrospire_length", "gluten", "lipoxygenase", "beta_glucan_malt", "turbidity"):
            return "either", "rare"
        return "sure", ""

    def _cell(
        self, concept: Concept, form: Form, true: float, decimals: int, label: str, unit: str, certainty: Certainty,
        why: str, bounds: Limit, analysis: TruthAnalysis, need: Need,
    ) -> Cell:  # fmt: skip
        rng = self.rng
        if need.blanks and concept.name not in CORE and rng.random() < need.blanks:
            return Cell(rng.choice(("", "", "-", "–")))
        text = number(true, decimals, self.comma)
        printed = float(text.replace(",", "."))
        figure = TruthFigure(
            concept.parameter or "", label, text, form.unit, unit, self.true_family, concept.basis,
            number=printed, low=bounds.low, high=bounds.high, certainty=certainty, why=why,
        )  # fmt: skip
        decorate(rng, self.words, self.comma, concept, form, figure)
        if figure.certainty == "sure" and _outside(figure):
            figure.certainty, figure.why = "either", "outside the limits"
        if concept.parameter is None:
            row = TruthRow(label, figure.value, unit, concept.may_be)
            analysis.unrecognised.append(row)
            return Cell(row.value, row)
        if need.kind == "batch":
            figure.targets = targets(concept.parameter, form.unit, self.true_family, self.mash, figure.number)
        analysis.figures.append(figure)
        return Cell(figure.value, figure)


def _outside(figure: TruthFigure) -> bool:
    """Whether a result breaks its own printed limits."""
    low, high = (float(x.replace(",", ".")) if x else None for x in (figure.low, figure.high))
    shown = figure.range or ((figure.number, figure.number) if figure.number is not None else None)
    return shown is not None and ((low is not None and shown[0] < low) or (high is not None and shown[1] > high))
