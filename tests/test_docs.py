"""README and DEVELOPERS say what the program does: every command, option, flag, code, parameter and key is in them."""

from __future__ import annotations

import re
from pathlib import Path
from typing import Any, get_args

import pytest
import typer.main
from pydantic import BaseModel

from importer import models
from importer.cli import app
from importer.output.words import FLAG_WORDS, STEP_WORDS
from importer.vocabulary.parameters import parameters

ROOT = Path(__file__).parents[1]
README = (ROOT / "README.md").read_text(encoding="utf-8")
DEVELOPERS = (ROOT / "DEVELOPERS.md").read_text(encoding="utf-8")
COMMANDS: dict[str, Any] = typer.main.get_group(app).commands


def cells_of(first: str) -> list[str]:
    """The cells of the README's table row that begins with a name in back quotes."""
    for line in README.splitlines():
        if line.startswith(f"| `{first}`"):
            return [cell.strip().replace("\\", "") for cell in re.split(r"(?<!\\)\|", line)[1:-1]]
    raise AssertionError(f"README.md has no row for {first}")


@pytest.mark.parametrize("name", COMMANDS)
def test_every_command_is_documented_and_has_help(name: str) -> None:
    command = COMMANDS[name]
    assert f"| `{name}" in README
    assert command.help
    assert command.epilog.startswith("Example: onebasis " + name)


@pytest.mark.parametrize(
    ("command", "option"),
    [
        (name, option)
        for name, command in COMMANDS.items()
        for p in command.params
        for option in p.opts
        if option[:2] == "--"
    ],
)
def test_every_option_is_documented_for_its_command(command: str, option: str) -> None:
    if option == "--help":
        return
    rows = [
        line
        for line in README.splitlines()
        if re.match(rf"\| `{option}[ `]", line) and f"`{command}`" in line.replace("\\|", "").split("|")[2]
    ]
    assert rows, f"README.md has no row for {option} of {command}"


def test_no_option_is_documented_that_is_not_there() -> None:
    known = {option for command in COMMANDS.values() for parameter in command.params for option in parameter.opts}
    documented = set(re.findall(r"^\| `(--[a-z-]+)", README, re.MULTILINE))
    assert documented <= known


@pytest.mark.parametrize("flag", get_args(models.Flag))
def test_every_flag_is_explained(flag: models.Flag) -> None:
    assert cells_of(flag)[1] == FLAG_WORDS[flag]


@pytest.mark.parametrize("code", get_args(models.ProblemCode))
def test_every_problem_code_has_a_cause_and_a_remedy(code: str) -> None:
    cause, remedy = cells_of(code)[1:]
    assert cause
    assert remedy


@pytest.mark.parametrize("name", parameters())
def test_every_parameter_is_listed_with_its_units(name: str) -> None:
    parameter = parameters()[name]
    units = ["text"] * 3 if parameter.kind == "text" else [parameter.units[f] for f in ("EBC", "IoB", "ASBC")]
    assert cells_of(name)[1:] == [parameter.title, *units]


@pytest.mark.parametrize("kind", get_args(models.StepKind))
def test_every_kind_of_step_is_explained(kind: models.StepKind) -> None:
    assert f"`{kind}`" in README
    assert STEP_WORDS[kind]


@pytest.mark.parametrize("key", models.HEADER_KEYS)
def test_every_header_key_is_named(key: str) -> None:
    assert f"`{key}`" in README


def outward_models() -> list[type[BaseModel]]:
    return [
        kind
        for kind in vars(models).values()
        if isinstance(kind, type) and issubclass(kind, models.Model) and kind is not models.Model
    ]


@pytest.mark.parametrize("model", outward_models(), ids=lambda model: model.__name__)
def test_every_json_key_is_documented(model: type[BaseModel]) -> None:
    for name, field in model.model_fields.items():
        assert f"`{field.alias or name}`" in README, f"README.md does not explain {field.alias or name}"


def test_every_environment_variable_is_documented() -> None:
    files = [*(ROOT / "importer").rglob("*.py"), *(ROOT / "mappings").rglob("*.toml")]
    named = {name for path in files for name in re.findall(r"ONEBASIS_[A-Z]+", path.read_text(encoding="utf-8"))}
    assert named
    for name in named:
        assert f"`{name}" in README, name


def test_exit_statuses_are_documented() -> None:
    from importer.commands import run

    (told,) = re.findall(r"\*\*Exit status:\*\*(.+?)\n\n", README, re.DOTALL)
    for status in (run.READ, run.NOT_ALL_READ, run.WRONG_USAGE, run.IN_REVIEW, run.INTERRUPTED, run.PIPE_CLOSED):
        assert re.search(rf"\b{status}\b", told)


@pytest.mark.parametrize("name", ["demo", "tests"])
def test_the_two_commands_can_be_copied(name: str) -> None:
    """.ci/run takes the commands from between these marks."""
    (block,) = re.findall(rf"<!-- {name} -->\n```bash\n(.+?)\n```", README, re.DOTALL)
    assert ".venv/bin/pip install" in block


@pytest.mark.parametrize("document", [README, DEVELOPERS], ids=["README", "DEVELOPERS"])
def test_links_and_paths_lead_somewhere(document: str) -> None:
    for target in re.findall(r"\]\(([^)#:]+)\)", document):
        assert (ROOT / target).exists(), target
    for target in re.findall(r"`((?:importer|mappings|tests|fixtures|benchmarks|\.ci)/[\w./-]*)`", document):
        assert (ROOT / target).exists(), target


def test_every_module_has_a_place_on_the_map() -> None:
    for path in sorted((ROOT / "importer").iterdir()):
        if path.name.startswith(("_", ".")) or not (path.is_dir() or path.suffix == ".py"):
            continue
        assert f"`{path.name}`" in DEVELOPERS or f"`{path.name}/`" in DEVELOPERS, f"DEVELOPERS.md has no {path.name}"


def test_python_examples_use_public_names() -> None:
    import importer

    imported = {
        name.strip()
        for line in re.findall(r"^from importer import (.+)", README, re.MULTILINE)
        for name in line.split(",")
    }
    assert imported
    for name in imported:
        assert name in importer.__all__
        assert callable(getattr(importer, name))
