"""Layout kinds of the exam, third part: more pages, running text, numbers beside the figures."""

from __future__ import annotations

from dataclasses import replace

from tests.sheets import blocks
from tests.sheets.cells import table_of
from tests.sheets.content import Content, Need
from tests.sheets.draw import Column, Look, Pen, Table, with_rules
from tests.sheets.exam_make import ExamWording, exam_layout
from tests.sheets.exam_parts import (
    doubt,
    end,
    head,
    look_of,
    negative_difference,
    paragraph,
    phrase,
    phrases,
    shrunk,
    start,
    with_unit,
)
from tests.sheets.numbers import number
from tests.sheets.rows import Row
from tests.sheets.truth import TruthHeader
from tests.sheets.wording import LANGUAGES, MAIN_LANGUAGES


@exam_layout("carried-over", Need(rows=(14, 26), limits=True), MAIN_LANGUAGES)
def carried_over(content: Content, look: Look) -> bytes:
    """The table goes on overleaf under a repeated head; lines say so at the foot and at the top."""
    rng = content.rng
    pen = start(content, look_of(look, 9.5), pages=2)
    roles = rng.choice((["label", "unit", "result"], ["label", "result", "unit", "spec"]))
    table = table_of(content, list(roles), pen)
    cut = rng.randint(4, len(table.rows) - 3)
    later = replace(table, rows=table.rows[cut:], columns=[replace(c) for c in table.columns])
    table.rows = table.rows[:cut]
    size = pen.look.size
    table.draw(pen)
    pen.y += 4
    pen.text(pen.right, pen.y, f"{phrase(content, 'continued')}  ({cut}/{len(content.rows)})", align="right")
    pen.new_page()
    pen.look = with_rules(pen.look, size=size)
    batch = content.own[0][0]
    pen.text(pen.left, pen.y, f"{content.title} - {batch.text}", size=size * 0.9)
    pen.y += size * 1.8
    pen.text(pen.left, pen.y, f"{phrase(content, 'carried')}  ({cut}/{len(content.rows)})", bold=True)
    pen.y += size * 1.8
    later.draw(pen)
    return end(pen, content)


def _goods(content: Content) -> tuple[list[tuple[str, str]], list[list[str]], list[str]]:
    """Captions with numbers of a delivery note, its lines and their heads."""
    rng, comma = content.rng, content.comma
    words = phrases(content, "note")
    net = rng.randint(80, 280) * 100
    tare = rng.randint(120, 160) * 100
    sign = "." if comma else ","

    def kilos(value: int) -> str:
        return f"{value:,} kg".replace(",", sign)

    facts = [
        (words[1], f"{rng.randint(100000, 999999)}"), (words[2], kilos(net + tare)), (words[3], kilos(tare)),
        (words[4], kilos(net)), (words[7], f"W {rng.randint(10000, 99999)}"), (words[8], f"{rng.randint(1000, 9999)}"),
        (words[9], f"+99 {rng.randint(100, 999)} {rng.randint(1000, 9999)}"),
        (words[10], f"+99 {rng.randint(100, 999)} {rng.randint(1000, 9999)}"),
        (words[11], f"XX{rng.randint(10**8, 10**9)}"),
    ]  # fmt: skip
    lines = []
    total = 0.0
    for k in range(rng.randint(2, 4)):
        price, tonnes = rng.uniform(420, 690), rng.randint(2, 12)
        total += price * tonnes
        goods = content.maker.malt_name(rng.choice(("PIL", "ALE", "MUN", "WHE")))
        lines.append([str(10 * (k + 1)), goods, str(tonnes * 40), number(price, 2, comma),
                      number(price * tonnes, 2, comma)])  # fmt: skip
    lines.append(["", words[12], "", "", number(total, 2, comma)])
    header = content.analyses[0].header
    if "quantity" in header:  # two quantities would contradict one another
        facts = [f for f in facts if f[0] not in (words[2], words[3], words[4])]
    else:
        header["quantity"] = TruthHeader(kilos(net), kilos(net), "either", required=False)
    content.not_figures.extend(f"{a} {b}" for a, b in facts)
    return facts, lines, [words[13], content.maker.caption("malt"), words[6], words[14], words[15]]


@exam_layout("delivery-note-after", Need(rows=(8, 18)), MAIN_LANGUAGES)
def delivery_note_after(content: Content, look: Look) -> bytes:
    """The certificate, then a page of a delivery note with weights, prices and sums."""
    rng = content.rng
    pen = start(content, look_of(look, 9.5), pages=2)
    table_of(content, rng.choice((["label", "unit", "result"], ["label", "result", "unit"])), pen).draw(pen)
    blocks.closing(pen, content)
    pen.new_page()
    pen.look = look_of(look, 9.0, rules="grid")
    pen.text(pen.left, pen.y, phrases(content, "note")[0], size=13, bold=True)
    pen.y += 24
    facts, lines, heads = _goods(content)
    for caption, text in facts:
        pen.text(pen.left, pen.y, caption)
        pen.text(pen.left + 130, pen.y, text)
        pen.y += look.size * 1.4
    pen.y += 10
    columns = [Column(h, "right" if k > 1 else "left", most=150.0 if k == 1 else 0.0) for k, h in enumerate(heads)]
    Table(columns, lines).draw(pen)
    return pen.finish()


@exam_layout("sidebar-numbers", Need(rows=(8, 16)), MAIN_LANGUAGES)
def sidebar_numbers(content: Content, look: Look) -> bytes:
    """Weighbridge, telephone, fax and tax numbers stand in a box right beside the figures."""
    rng = content.rng
    pen = start(content, look_of(look, 8.5, margin=40.0, full_width=True))
    facts, _, _ = _goods(content)
    wide = 150.0
    size = pen.look.size
    y = top = pen.y
    for caption, text in facts[: rng.randint(5, 9)]:
        pen.text(pen.right - wide + 5, y + 3, caption, size=7.0, grey=0.3)
        pen.text(pen.right - wide + 5, y + 11, text, size=8.0)
        y += 22
    pen.box(pen.right - wide, top, pen.right, y + 4)
    roles = rng.choice((["label", "result", "unit"], ["label", "unit", "result"]))
    table = table_of(content, roles, pen)
    table.columns[0].most = 170.0
    table.draw(pen, available=pen.right - pen.left - wide - 14)
    pen.y = max(pen.y, y + 10)
    pen.look = with_rules(pen.look, size=size)
    return end(pen, content)


@exam_layout("barley-page-first", Need(rows=(8, 18)), MAIN_LANGUAGES)
def barley_page_first(content: Content, look: Look) -> bytes:
    """A page about the barley that was taken in, with rows of the same names, then the malt's certificate."""
    rng, words = content.rng, content.words
    pen = Pen(look_of(look, 9.5))
    blocks.footers(pen, content, 2)
    blocks.letterhead(pen, content)
    intake = phrases(content, "intake")
    size = pen.look.size

    def barley() -> None:
        pen.text(pen.left, pen.y, intake[0], size=size * 1.4, bold=True)
        pen.y += size * 2.4
        pen.text(pen.left, pen.y, f"{intake[1]}: {rng.randint(1000, 9999)}")
        pen.y += size * 2
        lines = []
        for key, low, high in (("barley_moisture", 11.0, 14.0), ("barley_protein", 9.5, 11.5),
                               ("germinative_energy", 94.0, 99.0), ("varietal_purity", 95.0, 99.5)):  # fmt: skip
            label = words.pick(rng, "labels", key).replace("{b}", "")
            lines.append([label, number(rng.uniform(low, high), 1, content.comma), "%"])
        lines.append([intake[2], number(rng.uniform(85, 97), 1, content.comma), "%"])
        title = words.pick(rng, "sections", "barley")
        Table([Column(title), Column(content.head("result"), "right"), Column(content.head("unit"))], lines).draw(pen)
        pen.look = with_rules(pen.look, size=size)
        content.not_figures.extend(f"{a} {b}" for a, b, _ in lines)

    def malt() -> None:
        blocks.title(pen, content)
        blocks.header_lines(pen, content, [*content.shared, *content.own[0]])
        blocks.method_lines(pen, content)
        table_of(content, ["label", "result", "unit"], pen).draw(pen)
        pen.look = with_rules(pen.look, size=size)

    for k, part in enumerate((barley, malt) if rng.random() < 0.7 else (malt, barley)):
        if k:
            pen.new_page()
        part()
    return pen.finish()


def _justified(pen: Pen, text: str, width: float) -> None:
    lines = pen.wrap(text, width)
    for n, line in enumerate(lines):
        parts = line.split()
        gap = pen.size_of(" ")
        if n + 1 < len(lines) and len(parts) > 1:
            gap = (width - sum(pen.size_of(p) for p in parts)) / (len(parts) - 1)
        x = pen.left
        for part in parts:
            pen.text(x, pen.y, part)
            x += pen.size_of(part) + gap
        pen.y += pen.look.size * 1.4
    pen.y += pen.look.size * 0.8


@exam_layout("prose", Need(rows=(7, 13), words=False, missing_units=0.0, contaminants=0.0), MAIN_LANGUAGES)
def prose(content: Content, look: Look) -> bytes:
    """All figures stand in justified sentences."""
    rng = content.rng
    look = with_rules(look, size=max(look.size, 10.0), margin=70.0)
    pen = start(content, look)
    forms = content.words.all("x", "say")
    _justified(pen, phrase(content, "intro"), pen.right - pen.left)
    said = []
    for row in content.rows:
        row.label = row.label.rstrip(":")
        said.append(rng.choice(forms).format(l=row.label, v=with_unit(row)))
        doubt(row, "in a sentence")
    many = rng.choice((4, 5, 20))
    for k in range(0, len(said), many):
        _justified(pen, " ".join(said[k : k + many]), pen.right - pen.left)
    return end(pen, content)


@exam_layout("run-on-lines", Need(rows=(8, 15), missing_units=0.0))
def run_on_lines(content: Content, look: Look) -> bytes:
    """``Moisture 4.5 %; Extract 81.2 %; ...`` runs on from line to line."""
    rng = content.rng
    pen = start(content, with_rules(look, margin=max(look.margin, 57.0)))
    stop, sign = rng.choice((";", " /", ";")), rng.choice((" ", ": ", " = "))
    parts = []
    for row in content.rows:
        parts.append(f"{row.label.rstrip(':')}{sign}{with_unit(row)}{stop}")
        doubt(row, "runs on from line to line")
    paragraph(pen, pen.left, pen.right - pen.left, " ".join(parts).rstrip(";/ "), look.size * 1.05)
    return end(pen, content)


@exam_layout("fine-print-values", Need(rows=(10, 20), missing_units=0.0), MAIN_LANGUAGES)
def fine_print_values(content: Content, look: Look) -> bytes:
    """The rarer figures stand in small type below the table."""
    rng = content.rng
    pen = start(content, look_of(look, 9.5))
    count = rng.randint(2, 4)
    rare = [r for r in content.rows if r.concept not in ("moisture", "extract_fine_dry", "hwe_dry", "colour", "ratio")]
    small = rare[-count:]
    rest = [r for r in content.rows if r not in small]
    table_of(content, rng.choice((["label", "unit", "result"], ["label", "result", "unit"])), pen, rows=rest).draw(pen)
    pen.y += 8
    for row in small:
        doubt(row, "in the small print")
    texts = [f"{r.label.rstrip(':')} {with_unit(r)}" for r in small]
    paragraph(pen, pen.left, pen.right - pen.left, f"{phrase(content, 'small')} " + "; ".join(texts), 6.8)
    return end(pen, content)


def _english(content: Content, row: Row, words: ExamWording) -> str:
    key = row.concept.removesuffix("_second")
    if key == "ratio":
        key = {"ASBC": "ratio_st", "IoB": "ratio_snr", "iso65": "ratio_snr"}.get(content.family, "ratio_kolbach")
    choices = [w for w in words.all("labels", key) if "~" not in w]
    choices = [w for w in choices if not any(a in w.casefold() for a in content.words.avoid)]
    return content.rng.choice(choices).replace("{b}", "") if choices else ""


@exam_layout("language-columns", Need(rows=(8, 17)), tuple(x for x in LANGUAGES if x != "en"))
def language_columns(content: Content, look: Look) -> bytes:
    """The labels in the sheet's language and in English, each in a column of its own."""
    rng = content.rng
    english = ExamWording("en", True)
    pen = start(content, look_of(look, 8.5, margin=42.0, full_width=True))
    first = rng.random() < 0.5
    roles = rng.choice((["label", "result", "unit"], ["label", "unit", "result"]))
    table = table_of(content, roles, pen)
    table.columns[0].most = 150.0
    table.columns.insert(0 if first else 1, Column(english.pick(rng, "heads", "label"), most=150.0))
    for line, row in zip(table.rows, content.rows, strict=True):
        line.insert(0 if first else 1, _english(content, row, english))
    table.draw(pen)
    return end(pen, content)


@exam_layout("typewriter", Need(rows=(9, 18), limits=True))
def typewriter(content: Content, look: Look) -> bytes:
    """Type of one width, rules of hyphens and strokes, columns held by spaces."""
    rng = content.rng
    negative_difference(content)
    look = with_rules(look, font=rng.choice(("Courier", "LiberationMono")), size=8.5, margin=48.0)
    pen = Pen(look)
    blocks.footers(pen, content)
    head(pen, content)
    barred = rng.random() < 0.6
    limits = rng.random() < 0.5
    texts = [[r.label, r.cells[0].text, r.unit, *([r.limit.spec] if limits else [])] for r in content.rows]
    heads = [content.head(k) for k in ("label", "result", "unit", *(("spec",) if limits else ()))]
    every = [heads, *texts]
    widths = [max(len(t[k]) for t in every) for k in range(len(heads))]
    widths[0] = min(widths[0], 36)
    between = " | " if barred else "   "
    if sum(widths) + len(between) * len(widths) > 94:
        widths[0] = max(20, 94 - sum(widths[1:]) - len(between) * len(widths))
    rule = ("-+-" if barred else "---").join("-" * w for w in widths)

    def write(cells: list[str]) -> None:
        lines = _chopped(cells[0], widths[0])
        for n, part in enumerate(lines):
            rest = cells[1:] if n + 1 == len(lines) else [""] * (len(cells) - 1)
            padded = [part.ljust(widths[0])]
            padded.append(rest[0].rjust(widths[1]))
            padded += [c.ljust(w) for c, w in zip(rest[1:], widths[2:], strict=True)]
            text = between.join(padded).rstrip()
            if pen.y > pen.bottom:
                pen.new_page()
            pen.text(pen.left, pen.y, text, size=shrunk(pen, text, pen.right - pen.left, look.size))
            pen.y += look.size * 1.3

    for line in (rule, None, rule):
        if line is None:
            write(heads)
        else:
            pen.text(pen.left, pen.y, line)
            pen.y += look.size * 1.3
    for cells in texts:
        write(cells)
    pen.text(pen.left, pen.y, rule)
    pen.y += look.size * 2
    return end(pen, content)


def _chopped(text: str, width: int) -> list[str]:
    lines: list[str] = []
    for word in text.split():
        if lines and len(lines[-1]) + 1 + len(word) <= width:
            lines[-1] += f" {word}"
        else:
            lines.append(word)
    return lines or [""]


@exam_layout("lot-in-two-parts", Need(rows=(10, 20)), MAIN_LANGUAGES)
def lot_in_two_parts(content: Content, look: Look) -> bytes:
    """Two tables under one another with different columns: the grain in one, the wort in the other."""
    rng = content.rng
    pen = start(content, look_of(look, 9.0))
    half = [r for r in content.rows if r.group in ("physical", "sieving", "modification")]
    rest = [r for r in content.rows if r not in half]
    size = pen.look.size
    for rows, key in ((rest, "chemical"), (half, "physical")):
        if not rows:
            continue
        pen.text(pen.left, pen.y, content.words.pick(rng, "sections", key), bold=True, size=size * 1.1)
        pen.y += size * 1.7
        roles = rng.choice((["label", "unit", "result"], ["label", "result", "unit"], ["unit", "result", "label"]))
        table_of(content, roles, pen, rows=rows).draw(pen)
        pen.look = with_rules(pen.look, size=size)
        pen.y += size * 1.6
    return end(pen, content)
