"""Composition: the borders and the anchor, asked in words, one at a time."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue import reckoning
from bot.dialogue.compose import Role
from bot.dialogue.facts import Facts, Units
from bot.dialogue.meaning.sentences import sentences_of
from bot.dialogue.meaning.wordings import topic_by_words
from bot.dialogue.reading import read
from bot.dialogue.reading.edges import (
    SETTLED,
    edges_told,
    is_covered,
    is_gone,
    is_moved_out,
    things_told,
)
from bot.dialogue.states import BEFORE_BASE, State, Trigger
from bot.dialogue.steps.anywhere import edges_kept, repeat
from bot.dialogue.steps.walk import base
from bot.dialogue.turn import Turn

_OF_THE_FRAME: Final = frozenset({"top", "sides", "anchor"})
#: Every check; none stands in the way of the settings.
CHECKS: Final = _OF_THE_FRAME | {"light"}
_CLAUSES: Final = re.compile(r"[,.;!]\s+")
#: Where another clause begins; how bright the sky is belongs to the one before.
_AND_HOW: Final = re.compile(
    r"[.;!]\s+|,\s+(?!(?:(?:quite|pretty|very|too|rather|a bit|really|so) )*"
    r"(?:bright|white|pale)\b)"
)
_OF_TOP: Final = re.compile(r"\b(?:top|edge|upper|above it|along it)\b")
#: What is asked where a frame was taken meanwhile, so that no check leads back to the base.
_ASKED_LATER: Final = {State.HIGHLIGHTS: "blink", State.KEEP: "next"}
#: The light of each option (own rule: the middle of what it names).
_LIGHTS: Final = {
    "sun": "full sun",
    "cloud": "overcast",
    "trees": "light canopy",
    "dark": "wooded gorge",
}
#: What needs a remark, and the text of it; the other answers are fine as they are.
_REMARKS: Final = {
    ("top", "sky"): "top.sky",
    ("top", "lip"): "top.lip",
    ("sides", "twig"): "sides.twig",
    ("sides", "bright"): "sides.bright",
    ("anchor", "none"): "anchor.none",
    ("anchor", "cut"): "anchor.cut",
}


def checks_for(turn: Turn) -> tuple[str, ...]:
    """The checks that this frame needs, in order: a stream has no top edge of sky to look at.

    The anchor is asked about only while nothing near is known; who names a rock has one, and a
    part of the fall, shown with a set focal length, has none.
    """
    facts = turn.facts
    top = () if reckoning.is_stream(facts) else ("top",)
    part = facts.section and facts.focal_mm
    anchor = () if facts.nearest_m is not None or part else ("anchor",)
    light = ("light",) if reckoning.is_phone(facts) and not _light_known(turn) else ()
    return (*top, "sides", *anchor, *light)


def _light_known(turn: Turn) -> bool:
    """Whether the light was told or measured: a phone has no meter that its owner could read."""
    return turn.facts.light is not None or turn.walk.light_is_measured


def answer_light(turn: Turn, value: str) -> None:
    """The light by number."""
    turn.learn(Facts(light=_LIGHTS[value]))
    answer(turn, "light", value)


def go_on(turn: Turn) -> None:
    """Ask the next check, or move on to the base settings; who is past them stays there."""
    state = turn.walk.state
    put = turn.question_put and turn.question_name not in CHECKS
    if put and state is not State.COMPOSITION:
        return
    if state in _ASKED_LATER:
        turn.ask(_ASKED_LATER[state])
        return
    turn.be_in(State.COMPOSITION, Trigger.LENS_CHOSEN)
    _say_waiting(turn)
    done = turn.walk.checks
    for name in checks_for(turn):
        if name not in done:
            repeat.ask(turn, name)
            return
    turn.be_in(State.BASE, Trigger.COMPOSED)
    base.give(turn)


def answer(turn: Turn, name: str, value: str) -> None:
    """Keep the answer to a check, say the remedy, and go on."""
    keep(turn, name, value)
    _remark(turn, name, value)
    go_on(turn)


def keep(turn: Turn, name: str, value: str) -> None:
    """Keep the answer to a check, so that it is not asked again; no other question is one."""
    if name in CHECKS:
        turn.change_walk(checks=turn.walk.checks | {name: value})


def _remark(turn: Turn, name: str, value: str) -> None:
    remark = _REMARKS.get((name, value))
    if remark is None:
        return
    if remark == "sides.twig" and turn.units is Units.IMPERIAL:
        remark = "sides.twig_feet"
    if all(part.key != remark for part in turn.parts):
        turn.say(Role.CHECK, remark)


def settles(turn: Turn, text: str) -> bool:
    """Whether a message says that what was wrong at an edge is gone, whatever is asked."""
    remark = _open_remark(turn)
    return remark is not None and _mends(remark, text)


def tells_of_a_step(turn: Turn, text: str) -> bool:
    """Whether "moved left, now it's gone" is of a thing in the frame, as its edges are looked at.

    Args:
        turn: the answer under construction.
        text: in English or glossed.
    """
    question = repeat.standing(turn)
    asked = question is not None and question.name in SETTLED
    return is_moved_out(text, looked_at=asked or _open_remark(turn) is not None)


def _open_remark(turn: Turn) -> str | None:
    """The check whose remedy was said, and not yet done."""
    walk = turn.context.conversation.walk
    checks = {} if walk is None else walk.checks
    return next((name for name in ("sides", "top") if (name, checks.get(name)) in _REMARKS), None)


def without_light_of_the_edge(turn: Turn, told: Facts, text: str) -> Facts:
    """Bright sky through the branches of the top edge says nothing of the light, nor of a frame.

    Args:
        turn: the answer under construction.
        told: what was read in the message.
        text: the message, in English or glossed.
    """
    question = repeat.standing(turn)
    asked = question.name if question is not None else ""
    if "sky" not in text.casefold() or edges_told(text, asked).get("top") is None:
        return told
    clauses = _AND_HOW.split(text)
    beside = ", ".join(one for one in clauses if not things_told(one, asked))
    rest = read(beside)
    symptoms = tuple(one for one in told.symptoms if one in rest.symptoms)
    light = told.light if rest.light == told.light else None
    return told.model_copy(update={"light": light, "symptoms": symptoms})


def hear(turn: Turn, text: str) -> bool:
    """Keep what a message tells of the edges before or beside its question; whether it does.

    On the walk's way to the base only: afterwards the frame is taken, and good news is enough.
    """
    question = repeat.standing(turn)
    asked = question.name if question is not None else ""
    if topic_by_words(text) == "sky" and asked != "top":
        return False  # a complaint of frames, with an answer of its own
    told = things_told(text, asked)
    if turn.context.conversation.walk is None:
        return False
    remark = _open_remark(turn)
    if remark is not None and _mends(remark, text):
        beside = " ".join(one for one in sentences_of(text) if not _mends(remark, one))
        others = (one for one in things_told(beside, asked) if one[0] != remark)
        told = ((remark, SETTLED[remark]), *others)
        turn.change_walk(checks=turn.walk.checks | dict(told))
    if not told:
        return False
    if turn.walk.state not in BEFORE_BASE:
        return _hear_later(turn, told)
    turn.remember_for_back()
    _keep_all(turn, told)
    if not turn.parts:
        turn.say(Role.SETTINGS, "edges.noted")
    return True


def _mends(remark: str, text: str) -> bool:
    """Whether words say that what was wrong at an edge is out of the frame, or covered."""
    return is_gone(text) or (remark == "top" and is_covered(text))


def _keep_all(turn: Turn, told: tuple[tuple[str, str], ...]) -> None:
    """Keep everything that was told of the edges, and say the remedy of each."""
    turn.change_walk(checks=turn.walk.checks | dict(reversed(told)))
    for name, value in told:
        _remark(turn, name, value)


def _hear_later(turn: Turn, told: tuple[tuple[str, str], ...]) -> bool:
    """Edges that are clean are good news at any step; what is wrong there has its own answer."""
    if {value for _, value in told} - {"clean", "covered"}:
        return False
    turn.say(Role.SETTINGS, "edges.noted")
    return True


def note_beside(turn: Turn, name: str, value: str, text: str) -> None:
    """Keep what the answer to one check tells beside it: "leaves above, corners clean".

    Args:
        turn: the answer under construction.
        name: the question that is answered.
        value: the option that was chosen.
        text: in English or glossed.
    """
    if name in _OF_THE_FRAME:
        told = things_told(text, name)
        same = (name, value) in told  # "a branch on the left, a white stone on the right"
        known = turn.walk.checks
        _keep_all(
            turn, tuple(one for one in told if (same if one[0] == name else one[0] not in known))
        )
        light = read(_beside_the_edge(text) if name == "top" else text).light
        of_the_edge = light == "bright cloud" and "sky" in text.casefold()
        if light is not None and turn.facts.light is None and not of_the_edge:
            turn.learn(Facts(light=light))  # "grey sky, no trees over it" tells both


def _beside_the_edge(text: str) -> str:
    """What a message says beside the top edge: "the top is dark wood" tells of no light."""
    clauses = _CLAUSES.split(text)
    return ", ".join(clause for clause in clauses if not _OF_TOP.search(clause.casefold()))


def asked_now(turn: Turn) -> str:
    """The question that the answer ends with, or would if it had not been put often enough."""
    passed = repeat.standing(turn) if turn.left_out_question else None
    return turn.question_name or (passed.name if passed is not None else "")


def _say_waiting(turn: Turn) -> None:
    """The remedies of what was told while something else had to be answered first."""
    for name, value in edges_kept.waiting(turn).items():
        _remark(turn, name, value)


def leave_out_told(turn: Turn) -> None:
    """Where the answer ends with a check that was told already, the next one is asked instead."""
    name = asked_now(turn)
    lit = name == "light" and _light_known(turn)
    if lit:  # the settings for it say that it was heard
        turn.parts = [part for part in turn.parts if part.key != "noted"]
    if lit or (name in turn.walk.checks and name in checks_for(turn)):
        turn.passed_over = turn.left_out_question = False
        go_on(turn)


def skip(turn: Turn, name: str) -> None:
    """Leave a check out; it is not asked again on this walk."""
    answer(turn, name, "skipped")
