"""The pages of what was learned: listed, changed, taken back, and written to the brewery's own words."""

from __future__ import annotations

from typing import Any

from flask import Blueprint, abort, redirect, render_template, request

from importer.desk.context import reviewer, store
from importer.desk.following import Follower
from importer.desk.views import all_parameters
from importer.errors import DataError
from importer.output.atomic import WriteError
from importer.store import learned, own_words
from importer.store.learned import Learned, Lesson
from importer.store.ledger import now
from importer.store.schema import transaction
from importer.vocabulary.parameters import parameters

Answer = Any


def pages(follower: Follower) -> Blueprint:
    """The pages under /learned."""
    part = Blueprint("teaching", __name__)

    @part.get("/learned")
    def listed() -> Answer:
        return render_template(
            "learned.html",
            things=learned.everything(store().connection),
            titles=learned.TITLES,
            choices=all_parameters(),
            told=request.args.get("told", ""),
        )

    @part.post("/learned/<int:identity>")
    def change(identity: int) -> Answer:
        thing = _thing(identity)
        means = request.form.get("means", "")
        withdrawn = request.form.get("action") == "withdraw"
        if not withdrawn and (thing.kind != "label" or means not in parameters()):
            abort(422, "Choose a parameter.")
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
            draft = own_words.draft(store().folder, thing.means, thing.wording.rsplit(" / ", 1)[-1])
        except (own_words.CannotWriteError, DataError) as error:
            abort(409, str(error))
        return render_template("words.html", thing=thing, draft=draft)

    @part.post("/learned/<int:identity>/words")
    def write_words(identity: int) -> Answer:
        thing = _thing(identity)
        try:
            draft = own_words.draft(store().folder, thing.means, thing.wording.rsplit(" / ", 1)[-1])
            if request.form.get("before") != draft.fingerprint:
                abort(409, "The file has changed meanwhile. Look at the change once more.")
            own_words.write(draft)
        except (own_words.CannotWriteError, DataError, WriteError) as error:
            abort(409, str(error))
        return redirect("/learned?told=written", 303)

    return part


def _thing(identity: int) -> Learned:
    found = learned.one(store().connection, identity)
    if found is None:
        abort(404, "This is not known any more.")
    return found
