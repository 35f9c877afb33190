"""Numbers as a spreadsheet shows them: the common part of the number format codes of ECMA-376 part 1, 18.8.31."""

from __future__ import annotations

from dataclasses import dataclass
from decimal import ROUND_HALF_UP, Decimal
from functools import lru_cache


@dataclass(frozen=True, slots=True)
class _Section:
    """One section of a format code. ``least`` and ``most`` are decimals that are always and at most shown, ``whole``
    the digits before them that always are. ``pattern`` is the code of a whole number with signs between its digits
    ("00-0000"), each character with whether it stands for a digit."""

    before: str
    after: str
    least: int
    most: int
    percent: int
    thousands: int
    digits: bool
    exponent: bool
    whole: int
    pattern: tuple[tuple[str, bool], ...]


def shown(value: float, code: str) -> str:
    """A number as its format code shows it, with a decimal point and without thousands separators."""
    sections = _sections(code or "General")
    section, sign = _choose(sections, value)
    if section is None:
        return general(value)
    if not section.digits:
        return (section.before + section.after).strip()
    number = Decimal(repr(value)).copy_abs() * (Decimal(100) ** section.percent) / (Decimal(1000) ** section.thousands)
    if section.pattern:
        return sign + _by_pattern(format(number.quantize(Decimal(1), ROUND_HALF_UP), "f"), section)
    if section.exponent:
        text = f"{number:.{section.most}E}"
    else:
        text = format(number.quantize(Decimal(1).scaleb(-section.most), ROUND_HALF_UP), "f")
        text = _without_optional(text, section.least)
        whole, point, decimals = text.partition(".")
        text = f"{whole.zfill(section.whole)}{point}{decimals}"
    return f"{sign}{section.before}{text}{section.after}".strip()


def general(value: float) -> str:
    """A number without a format: the shortest text, whole numbers in full."""
    if value == int(value) and abs(value) < 1e15:
        return str(int(value))
    text = f"{value:.10g}"
    return text if "e" not in text else format(Decimal(text), "f") if 1e-9 < abs(value) < 1e15 else text


def _by_pattern(digits: str, section: _Section) -> str:
    """A whole number with the signs of its format between its digits, filled from the right."""
    left = list(digits.zfill(section.whole))
    places = sum(is_digit for _, is_digit in section.pattern)
    parts: list[str] = []
    for character, is_digit in reversed(section.pattern):
        if not is_digit:
            parts.append(character if left else "")
            continue
        places -= 1
        parts.append("".join(left) if not places else left.pop() if left else "")
        left = left if places else []
    return section.before + "".join(reversed(parts)) + section.after


def _without_optional(text: str, least: int) -> str:
    """Drops trailing zeros that a ``#`` leaves out."""
    whole, _, decimals = text.partition(".")
    while len(decimals) > least and decimals.endswith("0"):
        decimals = decimals[:-1]
    return f"{whole}.{decimals}" if decimals else whole


def _choose(sections: tuple[_Section | None, ...], value: float) -> tuple[_Section | None, str]:
    """The section for a value and the sign that still has to be shown."""
    if value < 0:
        return (sections[1], "") if len(sections) > 1 else (sections[0], "-")
    if value == 0 and len(sections) > 2:
        return sections[2], ""
    return sections[0], ""


@lru_cache(maxsize=512)
def _sections(code: str) -> tuple[_Section | None, ...]:
    """The sections of a format code; None stands for the general format and for what is not understood."""
    parts: list[str] = [""]
    quoted, i = False, 0
    while i < len(code):
        c = code[i]
        if c == '"':
            quoted = not quoted
        elif c == "\\" and not quoted:
            parts[-1] += code[i : i + 2]
            i += 2
            continue
        elif c == ";" and not quoted:
            parts.append("")
            i += 1
            continue
        parts[-1] += c
        i += 1
    return tuple(_section(part) for part in parts[:4])


def _section(code: str) -> _Section | None:
    if "general" in code.lower() or "@" in code:
        return None
    before, after, digits = "", "", ""
    order: list[tuple[str, bool]] = []
    percent, exponent = 0, False
    i = 0
    while i < len(code):
        c = code[i]
        literal = ""
        if c == '"':
            end = code.find('"', i + 1)
            end = len(code) if end < 0 else end
            literal, i = code[i + 1 : end], end
        elif c == "\\":
            literal, i = code[i + 1 : i + 2], i + 1
        elif c == "[":
            end = code.find("]", i)
            i = len(code) if end < 0 else end
        elif c in "_*":
            i += 1
        elif c in "0#?.,":
            digits += c
            order.append((c, True))
        elif c in "eE" and digits:
            exponent = True
            i += 1
            while i + 1 < len(code) and code[i + 1] in "0#?":
                i += 1
        elif c == "/" and digits:
            return None  # a fraction: its decimal value says as much
        else:
            literal = c
            percent += c == "%"
        if literal:
            order += [(sign, False) for sign in literal] if digits else []
            before, after = (before, after + literal) if digits else (before + literal, after)
        i += 1
    whole, _, decimals = digits.partition(".")
    trailing = len(digits) - len(digits.rstrip(","))
    decimals = decimals.replace(",", "")
    last = max((at for at, (_, is_digit) in enumerate(order) if is_digit), default=-1)
    pattern = tuple(order[: last + 1])
    if all(is_digit for _, is_digit in pattern) or percent or exponent or set(digits) - set("0#?"):
        pattern = ()
    return _Section(
        before=before,
        after="".join(sign for sign, _ in order[last + 1 :]) if pattern else after,
        least=decimals.count("0"),
        most=len(decimals),
        percent=percent,
        thousands=trailing,
        digits=bool(whole.strip(",") or decimals),
        exponent=exponent,
        whole=whole.count("0"),
        pattern=pattern,
    )
