"""The pages of what was learned: listed, changed, taken back, and written to the brewery's own words."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any

from flask import Blueprint, abort, redirect, render_template, request

from importer.desk.context import reviewer, store
from importer.desk.following import Follower
from importer.desk.views import Choice, all_parameters
from importer.errors import DataError
from importer.models import FAMILIES
from importer.output.atomic import WriteError
from importer.store import learned, own_words
from importer.store.learned import ASK, NO_PARAMETER, RESULTS, Kind, Learned, Lesson
from importer.store.ledger import now
from importer.store.schema import transaction
from importer.store.settling import MOST_LETTERS
from importer.vocabulary.units import parse_unit

Answer = Any


CHOICES: Mapping[Kind, Sequence[Choice]] = {
    "label": (*all_parameters(), Choice(NO_PARAMETER, "none: kept apart, and not asked")),
    "basis": (Choice("dry", "on dry malt"), Choice("as-is", "as is")),
    "family": tuple(Choice(family, family) for family in FAMILIES),
    "column": (Choice(RESULTS, "holds the results"), Choice(ASK, "asked on each sheet")),
}
"""What the kinds of things can mean; a unit is typed."""


def pages(follower: Follower) -> Blueprint:
    """The pages under /learned."""
    part = Blueprint("teaching", __name__)

    @part.get("/learned")
    def listed() -> Answer:
        return render_template(
            "learned.html",
            things=learned.everything(store().connection),
            titles=learned.TITLES,
            choices=CHOICES,
            no_parameter=NO_PARAMETER,
            told=request.args.get("told", ""),
        )

    @part.post("/learned/<int:identity>")
    def change(identity: int) -> Answer:
        thing = _thing(identity)
        means = request.form.get("means", "")
        withdrawn = request.form.get("action") == "withdraw"
        if not withdrawn:
            means = _checked(thing, means)
        with transaction(store().connection):
            if withdrawn:
                learned.withdraw(store().connection, identity, reviewer(), now())
            else:
                learned.change(store().connection, thing, means, reviewer(), now())
            store().tell("learned", analysis=thing.analysis, detail=f"{thing.wording}: {means or 'taken back'}")
        follower.follow(thing.supplier_key, [Lesson(thing.kind, thing.wording_key, thing.wording, means)])
        return redirect(f"/learned?told={'withdrawn' if withdrawn else 'changed'}", 303)

    @part.get("/learned/<int:identity>/words")
    def show_words(identity: int) -> Answer:
        thing = _thing(identity)
        try:
            draft = _words_of(thing)
        except (own_words.CannotWriteError, DataError) as error:
            abort(409, str(error))
        return render_template("words.html", thing=thing, draft=draft)

    @part.post("/learned/<int:identity>/words")
    def write_words(identity: int) -> Answer:
        thing = _thing(identity)
        try:
            draft = _words_of(thing)
            if request.form.get("before") != draft.fingerprint:
                abort(409, "The file has changed meanwhile. Look at the change once more.")
            own_words.write(draft)
        except (own_words.CannotWriteError, DataError, WriteError) as error:
            abort(409, str(error))
        return redirect("/learned?told=written", 303)

    return part


def _words_of(thing: Learned) -> own_words.Draft:
    """A label in the brewery's own file of words. Raises CannotWriteError, DataError."""
    if thing.kind != "label" or thing.means == NO_PARAMETER:
        abort(409, "Only what a label means can be written to your own words.")
    return own_words.draft(store().folder, thing.means, thing.wording.rsplit(" / ", 1)[-1])


def _checked(thing: Learned, means: str) -> str:
    """What a thing is to mean from now on, as it is kept."""
    if thing.kind == "unit":
        unit = parse_unit(means) if len(means) <= MOST_LETTERS else None
        if unit is None:
            abort(422, "This is no unit that is known here.")
        return unit.code
    if means not in {choice.name for choice in CHOICES[thing.kind]}:
        abort(422, "Choose one of what is offered.")
    return means


def _thing(identity: int) -> Learned:
    found = learned.one(store().connection, identity)
    if found is None:
        abort(404, "This is not known any more.")
    return found
