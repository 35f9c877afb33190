"""Rows of a sheet that prints IoB, EBC and ASBC figures side by side."""

from __future__ import annotations

from dataclasses import dataclass
from random import Random

from tests.sheets.numbers import number
from tests.sheets.rows import basis_of_label
from tests.sheets.targets import targets
from tests.sheets.truth import Certainty, TruthFigure
from tests.sheets.values import Profile
from tests.sheets.wording import Wording

COLUMNS = ("IoB", "EBC", "ASBC")


@dataclass(frozen=True, slots=True)
class Stack:
    """One row: for each family its parameter, unit, profile source and decimals, parted by spaces; ``-`` is a blank."""

    labels: tuple[str, ...]
    iob: str
    ebc: str
    asbc: str
    share: float = 1.0
    basis: bool = False


STACKS = (
    Stack(("moisture",), "moisture % moisture 1", "moisture % moisture 1", "moisture % moisture 1"),
    Stack(("extract",), "extract_coarse_dry L°/kg hwe_dry 0", "extract_fine_dry % extract_fine_dry 1",
          "extract_fine_dry % extract_fine_dry 1", basis=True),
    Stack(("fine_coarse_difference",), "-", "fine_coarse_difference % fine_coarse_difference 1",
          "fine_coarse_difference % fine_coarse_difference 1", 0.4),
    Stack(("colour",), "colour EBC colour/1.17 1", "colour EBC colour 1", "colour SRM colour/1.97 1"),
    Stack(("total_nitrogen", "total_protein"), "total_nitrogen % total_nitrogen 2", "total_nitrogen % total_nitrogen 2",
          "total_protein % total_protein 1", 0.8, True),
    Stack(("soluble_nitrogen", "soluble_protein"), "soluble_nitrogen % soluble_nitrogen_iob 2",
          "soluble_nitrogen % soluble_nitrogen 2", "soluble_protein % soluble_protein 2", 0.5, True),
    Stack(("ratio_snr", "ratio_kolbach", "ratio_st"), "nitrogen_ratio % snr 0", "nitrogen_ratio % kolbach 0",
          "nitrogen_ratio % kolbach 0"),
    Stack(("dp",), "diastatic_power °IoB iob 0", "diastatic_power WK wk 0", "diastatic_power °Lintner lintner 0", 0.8),
    Stack(("friability",), "friability % friability 0", "friability % friability 0", "friability % friability 0", 0.7),
    Stack(("viscosity",), "-", "viscosity mPa·s viscosity 2", "-", 0.4),
    Stack(("fan",), "-", "free_amino_nitrogen mg/L fan 0", "free_amino_nitrogen mg/L fan 0", 0.4),
    Stack(("sieve_under_2_2",), "sieve_under_2_2 % sieve_under_2_2 1", "sieve_under_2_2 % sieve_under_2_2 1", "-", 0.4),
)  # fmt: skip

_UNIT_TEXT = {"°Lintner": "°L", "°IoB": "IoB", "mPa·s": "mPas"}


@dataclass(slots=True)
class StackRow:
    label: str
    units: tuple[str, str, str]
    texts: list[str]


def stack_rows(
    rng: Random, words: Wording, profile: Profile, comma: bool, marker: str, how_units: str
) -> tuple[list[StackRow], list[TruthFigure]]:
    """Rows and answers. ``how_units`` is ``label``, ``column`` or ``none``; without units less is certain."""
    rows: list[StackRow] = []
    figures: list[TruthFigure] = []
    for stack in STACKS:
        if rng.random() > stack.share or stack.labels[0] in profile.absent:
            continue
        label = _label(rng, words, stack, marker)
        texts, units = [], []
        forms = (stack.iob, stack.ebc, stack.asbc)
        for family, form in zip(COLUMNS, forms, strict=True):
            if form == "-":
                texts.append("")
                units.append("-")
                continue
            parameter, unit, source, decimals = form.split(" ")
            name, _, factor = source.partition("/")
            value = profile[name] / float(factor or 1)
            places = 0 if parameter == "colour" and value > 60 else int(decimals)
            text = number(value, places, comma)
            texts.append(text)
            unit_text = _UNIT_TEXT.get(unit, unit)
            units.append(unit_text)
            printed = float(text.replace(",", "."))
            mash = "isothermal-65" if family == "IoB" else "congress"
            same = any(f.startswith(parameter + " ") for f in forms if f != form)
            main = family == "EBC" or not any(f.startswith(parameter + " ") for f in forms[1:2])
            certainty: Certainty = "sure" if family == "EBC" and how_units != "none" else "either"
            figures.append(TruthFigure(
                parameter, label, text, unit, unit_text if how_units != "none" else "", family,
                "dry" if stack.basis else None, number=printed, targets=targets(parameter, unit, family, mash, printed),
                certainty=certainty, why="families side by side", also=same and not main,
            ))  # fmt: skip
        seen = " / ".join(dict.fromkeys(u for u in units if u != "-"))
        if how_units == "label":
            label = f"{label} ({seen})"
        rows.append(StackRow(label, (seen, seen, seen), texts))
    _one_figure_each(figures)
    return rows, figures


def _one_figure_each(figures: list[TruthFigure]) -> None:
    """Where EBC has no column for a parameter, the first family that has it is the figure, the rest stand beside it."""
    seen = {f.parameter for f in figures if f.family == "EBC"}
    for figure in figures:
        if figure.family != "EBC":
            figure.also = figure.parameter in seen
            seen.add(figure.parameter)


def _label(rng: Random, words: Wording, stack: Stack, marker: str) -> str:
    if stack.labels == ("extract",):
        found = words.pick(rng, "children", "extract") + (" (0.7/0.2 mm)" if rng.random() < 0.6 else "")
        return f"{found}{marker}"
    parts = []
    for name in stack.labels:
        choices = [w for w in words.all("labels", name) if "(" not in w] or list(words.all("labels", name))
        shortest = sorted(choices, key=len)[: 2 if len(stack.labels) > 1 else 9]
        parts.append(basis_of_label(rng.choice(shortest))[0].replace("{b}", ""))
    return " / ".join(parts) + (marker if stack.basis else "")
