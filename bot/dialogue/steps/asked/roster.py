"""Who leads asks how far the others are: who waits longest, who is where, who has no frame."""

from __future__ import annotations

import re
from collections.abc import Iterable
from datetime import timedelta
from typing import Final

from bot.dialogue.compose import Role
from bot.dialogue.meaning import roster
from bot.dialogue.states import State
from bot.dialogue.steps.anywhere import repeat
from bot.dialogue.terms import Companion
from bot.dialogue.texts import TEXTS, measures
from bot.dialogue.turn import Turn

#: Who has not answered for so long waits (common practice: who is late by it is asked after), and
#: who was asked so often is stuck (own rule).
_LONG: Final = timedelta(minutes=10)
_OFTEN: Final = 3
#: So many are named as waiting; a teacher goes to one after the other (own rule).
_MOST: Final = 3
#: What a shown name may hold and how long it is here (own rule): it is set by people.
_NAME: Final = re.compile(r"[^\w .'@:-]+")
_LONGEST: Final = 24


def answer(turn: Turn, text: str) -> bool:
    """Answer how far the others are, from what was said in this room; whether that was asked."""
    if not roster.asks(text):
        return False
    if turn.origin.direct or not turn.origin.leader:
        turn.say(Role.SETTINGS, "roster.in_group" if turn.origin.direct else "roster.leads")
        repeat.put_again_if_open(turn, whole=False)
        return True
    turn.in_full = turn.roomy = True
    company = turn.context.terms.company
    if not company:
        turn.say(Role.SETTINGS, "roster.alone")
        return True
    _say_waiting(turn, company)
    for step in State:
        _say_list(turn, (one for one in company if one.step == step.value), step)
    _list(turn, "roster.not_begun", (one for one in company if not one.step))
    _list(turn, "roster.no_frame", (one for one in company if one.step and not one.kept))
    turn.reason("why.roster")
    return True


def _say_waiting(turn: Turn, company: tuple[Companion, ...]) -> None:
    """Emergencies first; then who waits longest, or that nobody does."""
    told = [one for one in company if one.emergency]
    if told:
        turn.say(Role.SAFETY, "roster.emergency", list=_names(told))
    waits = _waiting(turn, company)
    if not waits:
        turn.say(Role.SETTINGS, "roster.nobody_waits", limit=_age(_LONG))
        return
    named = (
        TEXTS["roster.waits"].format(who=_names([one]), age=_age(age), step=_step(one.step))
        for age, one in waits[:_MOST]
    )
    turn.say(Role.SETTINGS, "roster.waiting", list=", ".join(named))


def _waiting(turn: Turn, company: tuple[Companion, ...]) -> list[tuple[timedelta, Companion]]:
    """Who is on a walk and has not answered for long, or was asked often; the longest first."""
    waits = [
        (turn.now - one.waits_since, one)
        for one in company
        if one.step and one.waits_since is not None
    ]
    long = [(age, one) for age, one in waits if age >= _LONG or one.times >= _OFTEN]
    return sorted(long, key=lambda pair: pair[0], reverse=True)


def _say_list(turn: Turn, company: Iterable[Companion], step: State) -> None:
    if names := _names(company):
        name = _step(step.value)
        turn.say(Role.CHECK, "roster.step", step=name[:1].upper() + name[1:], list=names)


def _list(turn: Turn, key: str, company: Iterable[Companion]) -> None:
    if names := _names(company):
        turn.say(Role.CHECK, key, list=names)


def _names(company: Iterable[Companion]) -> str:
    return ", ".join(_NAME.sub(" ", one.name).strip()[:_LONGEST] for one in company)


def _step(step: str) -> str:
    return TEXTS[f"step.{step}"]


def _age(age: timedelta) -> str:
    return measures.minutes(age.total_seconds() / 60)
