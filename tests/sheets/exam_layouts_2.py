"""Layout kinds of the exam, second part: several columns or rows of figures of which not all are results."""

from __future__ import annotations

from random import Random

from tests.sheets.cells import label_with_unit, table_of
from tests.sheets.content import Content, Need
from tests.sheets.draw import Column, Look, Pen, Table, with_rules
from tests.sheets.exam_make import exam_layout
from tests.sheets.exam_parts import (
    doubt,
    end,
    figure_of,
    look_of,
    near,
    phrase,
    places,
    plain_number,
    shrunk,
    start,
    turned,
)
from tests.sheets.numbers import number
from tests.sheets.rows import Row, basis_of_label
from tests.sheets.targets import targets
from tests.sheets.truth import Certainty, TruthFigure
from tests.sheets.values import Profile
from tests.sheets.wording import MAIN_LANGUAGES, Wording


@exam_layout("bands-with-limits", Need(rows=(9, 16), words=False, limits=True))
def bands_with_limits(content: Content, look: Look) -> bytes:
    """Parameters as heads in two or three bands; under them rows of units, limits and the result."""
    rng = content.rng
    pen = start(content, look_of(look, 7.5, margin=36.0, full_width=True, head_bold=True), landscape=True)
    captions = {k: content.head(k) for k in ("unit", "min", "max", "result")}
    last = rng.random() < 0.6
    with_limits = rng.random() < 0.7
    many = rng.choice((5, 6, 7))
    while len(content.rows) % many in (1, 2) and many > 4:
        many -= 1
    for at in range(0, len(content.rows), many):
        rows = content.rows[at : at + many]
        lines = [[captions["unit"], *(r.unit for r in rows)]]
        if with_limits:
            lines.append([captions["min"], *(r.limit.low for r in rows)])
            lines.append([captions["max"], *(r.limit.high for r in rows)])
        lines.insert(len(lines) if last else 1, [captions["result"], *(r.cells[0].text for r in rows)])
        size = pen.look.size
        Table([Column(""), *(Column(r.label, "center", most=95.0) for r in rows)], lines).draw(pen)
        pen.look = with_rules(pen.look, size=size)
        pen.y += 12
    return end(pen, content)


def _trim_own(content: Content, keep: int) -> None:
    """What has no column is not printed, so it is not in the answer."""
    for own, analysis in zip(content.own, content.analyses, strict=True):
        for entry in own[keep:]:
            analysis.header.pop(entry.key, None)
        del own[keep:]


def _statistics(content: Content, row: Row) -> tuple[str, str, str]:
    """Mean, lowest and highest of the batches, blank where one of them is no plain number."""
    values = [plain_number(row, k) for k in range(len(row.cells))]
    found = [v for v in values if v is not None]
    if len(found) < len(values):
        return "", "", ""
    digits = max(places(c.text) for c in row.cells)
    mean, low, high = (number(v, digits, content.comma) for v in (sum(found) / len(found), min(found), max(found)))
    return mean, low, high


@exam_layout("batches-with-mean", Need(batches=(3, 6), rows=(5, 8), words=False, missing_units=0.0), MAIN_LANGUAGES)
def batches_with_mean(content: Content, look: Look) -> bytes:
    """Batches as rows, then their mean and the smallest and largest value, which belong to no batch."""
    rng = content.rng
    _trim_own(content, rng.randint(1, 2))
    pen = start(content, look_of(look, 8.0, margin=36.0, full_width=True), shared_only=True, landscape=True)
    keys = content.own[0]
    columns = [Column(e.caption) for e in keys]
    columns += [Column(label_with_unit(r, "round"), look.value_align) for r in content.rows]
    lines = [[*(e.text for e in own), *(r.cells[b].text for r in content.rows)] for b, own in enumerate(content.own)]
    found = [_statistics(content, r) for r in content.rows]
    names = [phrase(content, k) for k in ("mean", "lowest", "highest")]
    blank = [""] * (len(keys) - 1)
    for k in range(3 if rng.random() < 0.7 else 1):
        lines.append([names[k], *blank, *(s[k] for s in found)])
    Table(columns, lines).draw(pen)
    return end(pen, content)


@exam_layout("spec-batches-mean", Need(batches=(2, 5), rows=(7, 15), limits=True), MAIN_LANGUAGES)
def spec_batches_mean(content: Content, look: Look) -> bytes:
    """The month's batches as columns behind a column of limits, their mean in the last column."""
    rng = content.rng
    pen = start(content, look_of(look, 8.5, margin=38.0), shared_only=True)
    _trim_own(content, 3)
    lines = []
    for k, entry in enumerate(content.own[0][1:], 1):
        lines.append([entry.caption, "", "", *(own[k].text for own in content.own), ""])
    for row in content.rows:
        line = [row.label, row.limit.spec, row.unit, *(c.text for c in row.cells), _statistics(content, row)[0]]
        lines.append(line)
    columns = [Column(content.own[0][0].caption, most=0.26 * (pen.right - pen.left)),
               Column(content.head("spec")), Column(content.head("unit"))]  # fmt: skip
    columns += [Column(own[0].text, look.value_align) for own in content.own]
    columns.append(Column(phrase(content, "mean"), look.value_align))
    if rng.random() < 0.5:
        for line in lines:
            line.pop()
        columns.pop()
    Table(columns, lines).draw(pen)
    return end(pen, content)


@exam_layout("two-laboratories", Need(rows=(7, 15)), MAIN_LANGUAGES)
def two_laboratories(content: Content, look: Look) -> bytes:
    """The maltster's and another laboratory's figures, and the value that is certified."""
    rng = content.rng
    pen = start(content, look_of(look, 9.0))
    columns = [Column(content.head("label"), most=0.34 * (pen.right - pen.left)), Column(content.head("unit"))]
    columns += [Column(phrase(content, k), look.value_align) for k in ("own", "other", "certified")]
    columns[-1].bold = rng.random() < 0.5
    lines = []
    for row in content.rows:
        value = row.cells[0].text
        lines.append([row.label, row.unit, near(content, row, 0.98, 1.02), near(content, row, 0.97, 1.03), value])
        doubt(row, "certified value beside single ones")
    Table(columns, lines).draw(pen)
    return end(pen, content)


@exam_layout("bold-typical", Need(rows=(8, 16), limits=True))
def bold_typical(content: Content, look: Look) -> bytes:
    """Typical values in bold type beside results in plain type."""
    rng = content.rng
    pen = start(content, with_rules(look, value_bold=False, label_bold=False))
    roles = rng.choice((["label", "typical", "unit", "result"], ["label", "unit", "result", "typical"]))
    table = table_of(content, roles, pen)
    table.columns[roles.index("typical")].bold = True
    table.draw(pen)
    return end(pen, content)


@exam_layout("max-before-min", Need(rows=(9, 18), limits=True, methods=True))
def max_before_min(content: Content, look: Look) -> bytes:
    """The upper limit stands left of the lower one, the result anywhere among them."""
    pen = start(content, look_of(look, 9.0))
    roles = content.rng.choice(
        (
            ["label", "max", "min", "result", "unit"],
            ["result", "unit", "label", "max", "min"],
            ["label", "unit", "max", "result", "min"],
            ["label", "method", "max", "min", "unit", "result"],
        )
    )
    table_of(content, list(roles), pen).draw(pen)
    return end(pen, content)


@exam_layout("delivery-before", Need(rows=(8, 16), limits=True), MAIN_LANGUAGES)
def delivery_before(content: Content, look: Look) -> bytes:
    """The delivery before stands left of this one, with the limits at the far right."""
    rng = content.rng
    pen = start(content, look_of(look, 9.0))
    table = table_of(content, ["label", "unit", "result", "spec"], pen)
    table.columns[2].title = phrase(content, "now")
    at = rng.choice((2, 3))
    table.columns.insert(at, Column(phrase(content, "before"), look.value_align))
    for line, row in zip(table.rows, content.rows, strict=True):
        line.insert(at, near(content, row, 0.93, 1.07))
    table.draw(pen)
    return end(pen, content)


@exam_layout("turned-heads", Need(batches=(1, 4), rows=(7, 14), words=False, missing_units=0.0))
def turned_heads(content: Content, look: Look) -> bytes:
    """Batches as rows; the heads of the columns run upwards."""
    rng = content.rng
    _trim_own(content, 1)
    pen = start(content, look_of(look, 8.5, margin=40.0), shared_only=True, landscape=rng.random() < 0.6)
    labels = [label_with_unit(r, "round") for r in content.rows]
    size = pen.look.size
    first = max(pen.size_of(t) for t in (content.own[0][0].caption, *(own[0].text for own in content.own))) + 8
    values = max(pen.size_of(c.text) for r in content.rows for c in r.cells) + 5
    width = max(values, min(34.0, (pen.right - pen.left - first) / len(labels)))
    if width * len(labels) > pen.right - pen.left - first:
        width = (pen.right - pen.left - first) / len(labels)
    tall = min(max(pen.size_of(t, bold=True) for t in labels) + 8, 190.0)
    right = pen.left + first + width * len(labels)
    pen.box(pen.left, pen.y, right, pen.y + tall)
    pen.text(pen.left + 3, pen.y + tall - size * 1.5, content.own[0][0].caption, bold=True)
    for k, label in enumerate(labels):
        x = pen.left + first + k * width
        pen.line(x, pen.y, x, pen.y + tall)
        small = shrunk(pen, label, tall - 7, size, True)
        turned(pen, x + width / 2 + size * 0.35, pen.y + tall - 4, label, small, True)
    pen.y += tall
    step = size * 1.9
    for b, own in enumerate(content.own):
        pen.box(pen.left, pen.y, right, pen.y + step)
        pen.text(pen.left + 3, pen.y + 3, own[0].text)
        for k, row in enumerate(content.rows):
            x = pen.left + first + k * width
            pen.line(x, pen.y, x, pen.y + step)
            text = row.cells[b].text
            pen.text(x + width / 2, pen.y + 3, text, align="center", size=shrunk(pen, text, width - 2, size))
        pen.y += step
    return end(pen, content)


# Label words; then for IoB and for EBC: parameter, unit, source, decimals, method number; ``-`` is a blank.
_PAIRS: tuple[tuple[tuple[str, ...], str, str, bool], ...] = (
    (("moisture",), "moisture % moisture 1 2.1", "moisture % moisture 1 4.2", False),
    (("extract",), "extract_coarse_dry L°/kg hwe_dry 0 2.3", "extract_fine_dry % extract_fine_dry 1 4.5.1", True),
    (("colour",), "colour EBC colour/1.17 1 -", "colour EBC colour 1 4.7.1", False),
    (("total_nitrogen",), "total_nitrogen % total_nitrogen 2 -", "total_nitrogen % total_nitrogen 2 4.3.1", True),
    (("soluble_nitrogen",), "soluble_nitrogen % soluble_nitrogen_iob 2 -",
     "soluble_nitrogen % soluble_nitrogen 2 4.9.1", True),
    (("ratio_snr", "ratio_kolbach"), "nitrogen_ratio % snr 0 -", "nitrogen_ratio % kolbach 0 4.9.1", False),
    (("dp",), "diastatic_power °IoB iob 0 2.7", "diastatic_power WK wk 0 4.12", False),
    (("friability",), "-", "friability % friability 0 4.15", False),
    (("viscosity",), "viscosity mPa·s viscosity_65 2 -", "viscosity mPa·s viscosity 2 4.8", False),
    (("fan",), "-", "free_amino_nitrogen mg/L fan 0 4.10", False),
)  # fmt: skip


def _pair_label(rng: Random, words: Wording, keys: tuple[str, ...]) -> str:
    if keys == ("extract",):
        return words.pick(rng, "children", "extract")
    plain = []
    for key in keys:
        choices = [w for w in words.all("labels", key) if not any(s in w.casefold() for s in ("~", "ebc", "65", "(wk"))]
        plain.append(basis_of_label(rng.choice(choices or words.all("labels", key)))[0].replace("{b}", ""))
    return " / ".join(plain)


def _pair_cell(
    content: Content, profile: Profile, text: str, family: str, label: str, dry: bool, unit_text: str
) -> tuple[str, TruthFigure, str]:
    parameter, unit, source, decimals, method = text.split(" ")
    name, _, factor = source.partition("/")
    value = profile[name] / float(factor or 1)
    printed = number(value, 0 if parameter == "colour" and value > 60 else int(decimals), content.comma)
    figure = float(printed.replace(",", "."))
    mash = "isothermal-65" if family == "IoB" else "congress"
    certainty: Certainty = "sure" if family == "EBC" else "either"
    truth = TruthFigure(
        parameter, label, printed, unit, unit_text, family, "dry" if dry else None, number=figure,
        targets=targets(parameter, unit, family, mash, figure), certainty=certainty, why="families side by side",
        also=family == "IoB" and parameter != "extract_coarse_dry",
    )  # fmt: skip
    return printed, truth, "" if method == "-" else method


@exam_layout("families-with-methods", Need(rows=(5, 9), families=("EBC",), seconds=False), ("en", "nl", "de"))
def families_with_methods(content: Content, look: Look) -> bytes:
    """IoB and EBC figures of one malt, each with a unit and a method number in columns of their own."""
    rng, analysis = content.rng, content.analyses[0]
    content.family_line = ""
    pen = start(content, look_of(look, 8.0, margin=38.0, full_width=True))
    analysis.families, analysis.mash, analysis.unrecognised, analysis.figures = ("EBC", "IoB"), None, [], []
    spell = content.composer.spell_unit
    marker = content.composer.marker["dry"]
    method_columns = rng.random() < 0.75
    lines = []
    for keys, iob, ebc, dry in _PAIRS:
        if keys[0] in content.profiles[0].absent or (keys[0] not in ("moisture", "extract") and rng.random() < 0.2):
            continue
        label = _pair_label(rng, content.words, keys)
        if dry:
            label += marker if marker.startswith(",") else f" {marker}"
        line = [label]
        for family, text in (("IoB", iob), ("EBC", ebc)):
            if text == "-":
                line += ["", "", ""] if method_columns else ["", ""]
                continue
            unit = spell(text.split(" ")[1])
            printed, truth, method = _pair_cell(content, content.profiles[0], text, family, label, dry, unit)
            analysis.figures.append(truth)
            line += [printed, unit, method] if method_columns else [printed, unit]
        lines.append(line)
    columns = [Column(content.head("label"), most=0.3 * (pen.right - pen.left))]
    for family in ("IoB", "EBC"):
        columns.append(Column(rng.choice((family, family.upper())), look.value_align))
        columns.append(Column(content.head("unit") if rng.random() < 0.5 else ""))
        if method_columns:
            columns.append(Column(f"{family} {content.head('method').lower()}"))
    Table(columns, lines).draw(pen)
    return end(pen, content)


def _taken(content: Content, names: tuple[str, ...]) -> list[Row]:
    return [r for r in content.rows if r.concept in names]


@exam_layout("sieve-strip", Need(rows=(12, 22), missing_units=0.0), MAIN_LANGUAGES)
def sieve_strip(content: Content, look: Look) -> bytes:
    """The sieve fractions lie in a table of their own across the page; the rest follows in rows."""
    rng = content.rng
    pen = start(content, look_of(look, 9.0))
    sieves = [r for r in content.rows if r.concept.startswith("sieve")]
    if len(sieves) < 2:
        sieves = []
    rest = [r for r in content.rows if r not in sieves]
    first = rng.random() < 0.5

    def strip(at: Pen) -> None:
        if not sieves:
            return
        at.text(at.left, at.y, content.words.pick(rng, "sections", "sieving"), bold=True)
        at.y += at.look.size * 1.6
        lines = [[r.cells[0].text for r in sieves]]
        unit_row = rng.random() < 0.5
        heads = [r.label if unit_row else label_with_unit(r, "round") for r in sieves]
        if unit_row:
            lines.insert(0, [r.unit for r in sieves])
        size = at.look.size
        Table([Column(h, "center", width=78.0) for h in heads], lines).draw(at)
        at.look = with_rules(at.look, size=size)
        at.y += size * 1.5

    if first:
        strip(pen)
    table_of(content, rng.choice((["label", "unit", "result"], ["label", "result", "unit"])), pen, rows=rest).draw(pen)
    if not first:
        pen.y += look.size * 1.5
        strip(pen)
    return end(pen, content)


def _mark(row: Row, why: str, **changes: object) -> None:
    figure = figure_of(row)
    if figure is None:
        return
    for name, value in changes.items():
        setattr(figure, name, value)
    figure.certainty, figure.why = "ambiguous", why


# A unit that the figure cannot have, by what the row is and the unit that would be right.
_UNFIT = {
    ("soluble_nitrogen", "mg/100 g"): "%", ("hwe_dry", "L°/kg"): "%", ("hwe_as_is", "L°/kg"): "%",
    ("viscosity", "mPa·s"): "mg/l", ("fan", "mg/L"): "%", ("fan", "mg/100 g"): "%", ("dp", "WK"): "min",
}  # fmt: skip


def _contradict(content: Content, row: Row) -> bool:
    """Makes the row contradict itself; an honest reader has to ask."""
    figure = figure_of(row)
    if figure is None or figure.number is None or figure.bound:
        return False
    labels = content.words.all("labels", "total_protein")
    if row.concept == "total_nitrogen":
        label = basis_of_label(next(w for w in labels if "6" not in w))[0].replace("{b}", "")
        row.label = figure.label = label
        _mark(row, "nitrogen labelled protein")
    elif (row.concept, figure.unit) in _UNFIT:
        row.unit = figure.unit_text = _UNFIT[row.concept, figure.unit]
        _mark(row, "unit contradicts the figure")
    else:
        return False
    return True


@exam_layout("contradictions", Need(rows=(10, 18), missing_units=0.0, seconds=False), MAIN_LANGUAGES)
def contradictions(content: Content, look: Look) -> bytes:
    """One or two rows contradict themselves: nitrogen is called protein, a unit does not fit the figure."""
    rng = content.rng
    names = ("total_nitrogen", "soluble_nitrogen", "hwe_dry", "hwe_as_is", "viscosity", "fan", "dp")
    rows = _taken(content, names)
    rng.shuffle(rows)
    if any(r.concept == "total_protein" for r in content.rows):  # two rows of one name would be another riddle
        rows = [r for r in rows if r.concept != "total_nitrogen"]
    done: list[Row] = []
    for row in rows:
        if len(done) < 2 and _contradict(content, row):
            done.append(row)
    if done:
        for row in content.rows:
            if row.group in ("nitrogen", "chemical") and row not in done:
                doubt(row, "beside a contradiction")
    pen = start(content, look)
    table_of(content, rng.choice((["label", "unit", "result"], ["label", "result", "unit"])), pen).draw(pen)
    return end(pen, content)
