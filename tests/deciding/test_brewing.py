"""What batches do to a recipe: worked examples, and when nothing may be computed."""

from __future__ import annotations

from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from importer.deciding.brewing import power_of, recipe_effects, rounded_to, wort_colour
from importer.deciding.choosing import in_use
from importer.deciding.recipe_file import read_recipe
from importer.deciding.results import Effect
from importer.errors import OwnFileError
from importer.meaning.formulas import mass_for_new_extract, weighted_mean
from importer.models import Analysis, Family
from tests.deciding.factory import analysis, estimate, figure

EBC_PLAN = '{ value = 77.8, unit = "%", family = "EBC", grind = "fine" }'


def effects(tmp_path: Path, text: str, *batches: Analysis) -> list[Effect]:
    path = tmp_path / "recipe.toml"
    path.write_text(text, encoding="utf-8")
    return list(recipe_effects(read_recipe(path), in_use(batches)))


def only(found: list[Effect], subject: str) -> Effect:
    (one,) = [effect for effect in found if effect.subject == subject]
    return one


def line(malt: str = "Pale Ale Malt", kg: float = 100, **more: str) -> str:
    rest = "".join(f"{name} = {value}\n" for name, value in more.items())
    return f'[[line]]\nmalt = "{malt}"\nkg = {kg}\n{rest}'


# ---------------------------------------------------------------- worked examples


def test_weight_for_a_new_extract(tmp_path: Path) -> None:
    """100 kg planned at 77.8 % as is, the batch has 76.2 %: 102.10 kg (check value gr-02, inverse proportion)."""
    batch = analysis(figure("extract_fine_as_is", 76.2))
    found = only(effects(tmp_path, line(extract=EBC_PLAN), batch), "weight")
    assert found.value == pytest.approx(102.10, abs=0.01)
    assert found.formula == "100 kg × 77.8 ÷ 76.2 %"
    assert "inverse proportion" in found.source


def test_weights_are_rounded_as_asked_and_efficiency_is_the_brewers(tmp_path: Path) -> None:
    batch = analysis(figure("extract_fine_as_is", 76.2))
    found = only(effects(tmp_path, f"round = 0.5\nefficiency = 90\n{line(extract=EBC_PLAN)}", batch), "weight")
    assert found.value == 102.0
    # 102 kg × 76.2 % × 3.86 L°/kg a per cent × 0.90 (trade factor 386, common practice, no source)
    assert "27,001 litre-degrees" in found.words


@pytest.mark.parametrize(
    ("kg", "told"),
    [
        (100, "weigh 102.1 kg instead of 100 kg"),
        (5, "weigh 5.11 kg instead of 5 kg"),
        (0.5, "weigh 0.51 kg instead of 0.5 kg"),
        (4321.5, "weigh 4412 kg instead of 4321.5 kg"),
        (1000000, "weigh 1020997 kg instead of 1000000 kg"),
    ],
)
def test_weights_have_no_more_digits_in_words_than_a_scale_shows(tmp_path: Path, kg: float, told: str) -> None:
    batch = analysis(figure("extract_fine_as_is", 76.2))
    found = only(effects(tmp_path, line(kg=kg, extract=EBC_PLAN), batch), "weight")
    assert told in found.words
    assert found.value == pytest.approx(round(kg * 77.8 / 76.2, 3))


def test_a_change_that_no_scale_shows_is_none(tmp_path: Path) -> None:
    batch = analysis(figure("extract_fine_as_is", 77.81))
    found = only(effects(tmp_path, line(extract=EBC_PLAN), batch), "weight")
    assert "weigh 100 kg, as planned" in found.words
    assert found.value == pytest.approx(99.987)


def test_a_batch_that_the_recipe_does_not_use_is_told(tmp_path: Path) -> None:
    """Otherwise the numbers of other batches would be taken for those of the batch that was asked for."""
    path = tmp_path / "recipe.toml"
    path.write_text(line(extract=EBC_PLAN), encoding="utf-8")
    used = analysis(figure("extract_fine_as_is", 76.2))
    other = analysis(figure("extract_fine_as_is", 76.2), malt="Wheat Malt", batch="W7")
    found = only(list(recipe_effects(read_recipe(path), in_use([used, other]), other)), "recipe")
    assert (found.kind, found.words) == (
        "withheld",
        "no line is about Wheat Malt; what follows is of the batches in use",
    )
    assert not [e for e in recipe_effects(read_recipe(path), in_use([used]), used) if e.subject == "recipe"]


def test_moisture_alone_changes_the_weight(tmp_path: Path) -> None:
    """The same 81.5 % dry with 4.5 % moisture (77.83 % as is, check value mb-01) and with 6.5 % (76.20 %)."""
    plan = '{ value = 77.83, unit = "%", family = "EBC", grind = "fine" }'
    found = only(effects(tmp_path, line(extract=plan), analysis(figure("extract_fine_as_is", 76.20))), "weight")
    assert found.value == pytest.approx(100 * (1 - 0.045) / (1 - 0.065), abs=0.01)


def test_planning_values_in_points_per_pound(tmp_path: Path) -> None:
    """37 points per pound per US gallon are 308.78 L°/kg (check value ex-06), or 80.0 % at 3.86 L°/kg a per cent."""
    plan = '{ value = 37, unit = "pt/lb/gal", family = "ASBC", grind = "coarse" }'
    batch = analysis(figure("extract_coarse_as_is", 80.0, "%", "EBC"))
    found = only(effects(tmp_path, line(extract=plan), batch), "weight")
    assert found.value == pytest.approx(100.0, abs=0.05)


@pytest.mark.parametrize(("value", "unit", "family"), [(165, "EBC", "EBC"), (83.76, "°L", "ASBC")])
def test_a_plan_in_srm_for_a_colour_on_either_basis(tmp_path: Path, value: float, unit: str, family: Family) -> None:
    """75 SRM are 147.75 EBC, 165 EBC are 83.76 SRM (EBC = 1.97 × SRM, factors of the Standard Reference Method)."""
    batch = analysis(figure("colour", value, unit, family), malt="Crystal Malt", family=family)
    text = line("Crystal Malt", 10, colouring="true", colour='{ value = 75, unit = "SRM", family = "ASBC" }')
    found = only(effects(tmp_path, text, batch), "colour")
    assert found.value == pytest.approx(10 * 75 / 83.76, abs=0.005)


def test_power_of_a_grist_with_adjunct() -> None:
    """80 kg at 60 and 20 kg at 0 give 48 (check value gr-01, weighted mean)."""
    assert weighted_mean([(80, 60), (20, 0)]) == pytest.approx(48)


def test_power_of_a_grist_is_taken_as_is(tmp_path: Path) -> None:
    """334 WK are 100 °Lintner (encyclopaedia entry, check value dp-01); 95 as is at 5 % moisture; 20 % adjunct: 76."""
    batch = analysis(figure("diastatic_power", 334, "WK"), figure("moisture", 5.0))
    assert power_of(batch, "°Lintner").value == pytest.approx(95.0, abs=0.1)
    text = line(kg=80) + '[[line]]\nadjunct = "Flaked maize"\nkg = 20\n'
    found = only(effects(tmp_path, text, batch), "grist power")
    assert found.value == pytest.approx(76, abs=0.1)
    assert found.kind == "computed"
    assert "20 % of it unmalted" in found.words


def test_too_little_power_is_a_caution(tmp_path: Path) -> None:
    """A mash needs about 35 to 40 °Lintner (Oxford Companion and encyclopaedia, degree Lintner)."""
    batch = analysis(figure("diastatic_power", 60, "°Lintner", "ASBC"), figure("moisture", 4.0))
    text = line(kg=50) + '[[line]]\nadjunct = "Flaked maize"\nkg = 50\n'
    found = only(effects(tmp_path, text, batch), "grist power")
    assert (found.kind, found.value) == ("caution", pytest.approx(28.8))
    assert "may not convert itself" in found.words


def test_colour_by_dilution(tmp_path: Path) -> None:
    """(95 × 4 + 5 × 150) × 8.54 ÷ 600 = 16.08 EBC (8.54 L of congress wort a kg: from memory)."""
    assert wort_colour([(95, 4), (5, 150)], 600) == pytest.approx(16.08, abs=0.01)
    pale = analysis(figure("colour", 4, "EBC"), malt="Pilsner Malt")
    crystal = analysis(figure("colour", 150, "EBC"), malt="Crystal Malt")
    text = "volume = 600\n" + line("Pilsner Malt", 95) + line("Crystal Malt", 5)
    found = [e for e in effects(tmp_path, text, pale, crystal) if e.subject == "colour" and e.value is not None]
    assert found[0].value == pytest.approx(16.08, abs=0.01)
    assert "before boiling" in found[0].words


def test_the_colouring_malt_is_weighed_for_its_colour(tmp_path: Path) -> None:
    """10 kg planned at 150 EBC, the batch has 165: 9.09 kg (inverse proportion; common practice, no source)."""
    batch = analysis(figure("colour", 165, "EBC"), malt="Crystal Malt")
    text = line("Crystal Malt", 10, colouring="true", colour='{ value = 150, unit = "EBC", family = "EBC" }')
    found = only(effects(tmp_path, text, batch), "colour")
    assert found.value == pytest.approx(9.091)
    assert "make good the extract" in found.words


@given(st.floats(1, 5000), st.floats(50, 90), st.floats(50, 90))
def test_factor_times_extract_is_constant(kg: float, planned: float, actual: float) -> None:
    """Whatever the batch has, the new weight brings the extract that was planned."""
    assert mass_for_new_extract(kg, planned, actual) * actual == pytest.approx(kg * planned)


@given(st.floats(0.01, 5000), st.sampled_from([0.01, 0.1, 0.5, 1, 5, 25]))
def test_rounding_moves_by_no_more_than_half_a_step(kg: float, step: float) -> None:
    found = rounded_to(kg, step)
    assert abs(found - kg) <= step / 2 + 1e-6
    assert found / step == pytest.approx(round(found / step), abs=1e-6)


@given(st.lists(st.tuples(st.floats(0.1, 1000), st.floats(0, 200)), min_size=1, max_size=8))
def test_a_mean_lies_within_its_parts(parts: list[tuple[float, float]]) -> None:
    found = weighted_mean(parts)
    assert min(f for _, f in parts) - 1e-6 <= found <= max(f for _, f in parts) + 1e-6


# ---------------------------------------------------------------- when nothing may be computed


@pytest.mark.parametrize(
    ("batch", "told"),
    [
        (analysis(figure("extract_fine_as_is", 76.2, state="review"), state="accepted"), "in review"),
        (analysis(figure("moisture", 4.0)), "gives no extract, fine grind, as is"),
        (analysis(figure("extract_fine_as_is", 296, "L°/kg", "IoB"), family="IoB", mash=None), "another method"),
        (analysis(estimate("extract_fine_as_is", 78, "%", 1, (296, "L°/kg", "IoB"))), "another method"),
        (analysis(figure("extract_fine_as_is", 76.2, flags=("not-convertible",)), mash="isothermal-65"), "another"),
        (analysis(figure("extract_fine_as_is", 76.2), malt="Munich Malt"), "no accepted batch of Pale Ale Malt"),
    ],
)
def test_no_weight_without_a_figure_of_the_plans_own_kind(tmp_path: Path, batch: Analysis, told: str) -> None:
    found = only(effects(tmp_path, line(extract=EBC_PLAN), batch), "weight")
    assert (found.kind, found.value) == ("withheld", None)
    assert told in found.words


def test_no_colour_of_the_wort_from_iob_colours(tmp_path: Path) -> None:
    batch = analysis(figure("colour", 5, "EBC", "IoB", flags=("not-convertible",)), family="IoB", mash=None)
    found = only(effects(tmp_path, "volume = 600\n" + line(), batch), "colour")
    assert found.kind == "withheld"


def test_the_grist_needs_the_power_of_every_malt(tmp_path: Path) -> None:
    known = analysis(figure("diastatic_power", 334, "WK"), figure("moisture", 5.0))
    unknown = analysis(figure("moisture", 5.0), malt="Munich Malt")
    found = only(effects(tmp_path, line() + line("Munich Malt"), known, unknown), "grist power")
    assert found.kind == "withheld"
    crystal = analysis(figure("moisture", 5.0), malt="Crystal Malt 150")
    found = only(effects(tmp_path, line() + line("Crystal Malt 150", 10), known, crystal), "grist power")
    assert found.kind == "computed"


def test_two_suppliers_of_one_malt_need_to_be_told_apart(tmp_path: Path) -> None:
    one = analysis(figure("extract_fine_as_is", 76.2), supplier="A Maltings")
    other = analysis(figure("extract_fine_as_is", 79.0), supplier="B Maltings")
    found = only(effects(tmp_path, line(extract=EBC_PLAN), one, other), "weight")
    assert found.kind == "withheld"
    found = only(effects(tmp_path, line(extract=EBC_PLAN, supplier='"b maltings"'), one, other), "weight")
    assert found.value == pytest.approx(100 * 77.8 / 79.0, abs=0.001)


# ---------------------------------------------------------------- mash temperature


@pytest.mark.parametrize(
    ("head", "power", "hinted"),
    [
        ("strength = 3.8", 80, True),
        ("gravity = 9.0", 80, True),
        ("strength = 5.2", 80, False),
        ("strength = 3.8", 45, False),
        ("", 80, False),
    ],
)
def test_a_warmer_mash_for_a_strong_malt_in_a_weak_beer(tmp_path: Path, head: str, power: float, hinted: bool) -> None:
    """Near 68 instead of 65 °C at about 3.8 % by volume: common practice, no source."""
    batch = analysis(
        figure("diastatic_power", power, "°IoB", "IoB"), figure("moisture", 3.0), malt="Pilsner Malt", family="IoB"
    )
    found = [e for e in effects(tmp_path, f"{head}\n{line('Pilsner Malt')}", batch) if e.subject == "mash temperature"]
    assert bool(found) == hinted
    if hinted:
        assert (found[0].value, found[0].kind) == (68, "caution")
        assert "common practice, no source" in found[0].source


# ---------------------------------------------------------------- the file


@pytest.mark.parametrize(
    ("text", "told"),
    [
        ("", "there is no [[line]]"),
        ("[[line]]\nkg = 5\n", "either malt or adjunct"),
        ('[[line]]\nmalt = "A"\nadjunct = "B"\nkg = 5\n', "either malt or adjunct"),
        ('[[line]]\nmalt = "A"\n', "kg is missing"),
        ('[[line]]\nmalt = "A"\nkg = -1\n', "must lie between"),
        ("efficiency = 920\n" + line(), "must lie between 1 and 110"),
        (line(extract='{ value = 80, unit = "%", family = "EBC" }'), "grind must be a text"),
        (line(extract='{ value = 80, unit = "%", family = "EBC", grind = "rough" }'), 'grind is "fine" or "coarse"'),
        (line(extract='{ value = 80, unit = "%", grind = "fine" }'), "family is missing"),
        (line(extract='{ value = 80, family = "EBC", grind = "fine" }'), "unit is missing"),
        (line(extract="80"), "must be a table"),
        (line(colouring='"yes"'), "true or false"),
        (line(colours="5"), "Did you mean colour"),
    ],
)
def test_faults_of_the_file(tmp_path: Path, text: str, told: str) -> None:
    path = tmp_path / "recipe.toml"
    path.write_text(text, encoding="utf-8")
    with pytest.raises(OwnFileError) as fault:
        read_recipe(path)
    assert told in str(fault.value)
