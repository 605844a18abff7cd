"""Composition: the borders and the anchor, asked in words, one at a time."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue import reckoning
from bot.dialogue.compose import Role
from bot.dialogue.facts import Facts, Units
from bot.dialogue.meaning.wordings import topic_by_words
from bot.dialogue.reading import read
from bot.dialogue.reading.edges import SETTLED, edges_told, is_covered, is_gone, is_moved_out
from bot.dialogue.states import State, Trigger
from bot.dialogue.steps.anywhere import repeat
from bot.dialogue.steps.walk import base
from bot.dialogue.turn import Turn

_OF_THE_FRAME: Final = frozenset({"top", "sides", "anchor"})
#: Every check; none stands in the way of the settings.
CHECKS: Final = _OF_THE_FRAME | {"light"}
_CLAUSES: Final = re.compile(r"[,.;!]\s+")
_OF_TOP: Final = re.compile(r"\b(?:top|edge|upper|above it|along it)\b")
#: Lights that words of sky at the edge sound like.
_OF_THE_SKY: Final = frozenset({"bright cloud", "deep slot"})
_BEFORE_BASE: Final = frozenset({State.ARRIVE, State.LENS, State.COMPOSITION})
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
    """Ask the next check, or move on to the base settings."""
    done = turn.walk.checks
    for name in checks_for(turn):
        if name not in done:
            repeat.ask(turn, name)
            return
    turn.be_in(State.BASE, Trigger.COMPOSED)
    base.give(turn)


def answer(turn: Turn, name: str, value: str) -> None:
    """Keep the answer to a check, say the remedy, and go on."""
    turn.change_walk(checks=turn.walk.checks | {name: value})
    _remark(turn, name, value)
    go_on(turn)


def _remark(turn: Turn, name: str, value: str) -> None:
    remark = _REMARKS.get((name, value))
    if remark is None:
        return
    if remark == "sides.twig" and turn.units is Units.IMPERIAL:
        remark = "sides.twig_feet"
    turn.say(Role.CHECK, remark)


def settles(turn: Turn, text: str) -> bool:
    """Whether a message says that what was wrong at an edge is gone, whatever is asked."""
    remark = _open_remark(turn)
    return remark is not None and (is_gone(text) or (remark == "top" and is_covered(text)))


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


def without_light_of_the_edge(told: Facts, text: str) -> Facts:
    """White sky at the top edge says nothing of the light."""
    white = told.light in _OF_THE_SKY and "sky" in text.casefold()
    if not white or edges_told(text).get("top") is None:
        return told
    return told.model_copy(update={"light": None})


def hear(turn: Turn, text: str) -> bool:
    """Keep what a message tells of the edges before or beside its question; whether it does.

    On the walk's way to the base only: afterwards the frame is taken, and good news is enough.
    """
    if topic_by_words(text) == "sky":
        return False  # a complaint of frames, with an answer of its own
    question = repeat.standing(turn)
    told = edges_told(text, question.name if question is not None else "")
    if turn.context.conversation.walk is None:
        return False
    remark = _open_remark(turn)
    covered = remark == "top" and is_covered(text)
    if remark is not None and (is_gone(text) or covered):
        told = {remark: SETTLED[remark]}
        turn.change_walk(checks=turn.walk.checks | told)
    if not told:
        return False
    if turn.walk.state not in _BEFORE_BASE:
        return _hear_later(turn, told)
    turn.remember_for_back()
    turn.change_walk(checks=turn.walk.checks | told)
    for name, value in told.items():
        _remark(turn, name, value)
    if not turn.parts:
        turn.say(Role.SETTINGS, "edges.noted")
    return True


def _hear_later(turn: Turn, told: dict[str, str]) -> bool:
    """Edges that are clean are good news at any step; what is wrong there has its own answer."""
    if set(told.values()) - {"clean", "covered"}:
        return False
    turn.say(Role.SETTINGS, "edges.noted")
    return True


def note_beside(turn: Turn, name: str, text: str) -> None:
    """Keep what the answer to one check tells of another: "leaves above, corners clean"."""
    if name in _OF_THE_FRAME:
        others = {check: value for check, value in edges_told(text).items() if check != name}
        turn.change_walk(checks=others | turn.walk.checks)
        light = read(_beside_the_edge(text) if name == "top" else text).light
        of_the_edge = light == "bright cloud" and "sky" in text.casefold()
        if light is not None and turn.facts.light is None and not of_the_edge:
            turn.learn(Facts(light=light))  # "grey sky, no trees over it" tells both


def _beside_the_edge(text: str) -> str:
    """What a message says beside the top edge: "the top is dark wood" tells of no light."""
    clauses = _CLAUSES.split(text)
    return ", ".join(clause for clause in clauses if not _OF_TOP.search(clause.casefold()))


def leave_out_told(turn: Turn) -> None:
    """Where the answer ends with a check that was told already, the next one is asked instead."""
    passed = repeat.standing(turn) if turn.left_out_question else None
    name = turn.question_name or (passed.name if passed is not None else "")
    lit = name == "light" and _light_known(turn)
    if lit:  # the settings for it say that it was heard
        turn.parts = [part for part in turn.parts if part.key != "noted"]
    if lit or (name in turn.walk.checks and name in checks_for(turn)):
        turn.passed_over = turn.left_out_question = False
        go_on(turn)


def skip(turn: Turn, name: str) -> None:
    """Leave a check out; it is not asked again on this walk."""
    answer(turn, name, "skipped")
