"""What stood near is left out of the frame: nothing near has to be sharp any more."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.compose import Role
from bot.dialogue.facts import Facts
from bot.dialogue.reading.phrases import plain
from bot.dialogue.steps.anywhere import repeat
from bot.dialogue.steps.walk import composition, skip
from bot.dialogue.texts import TEXTS
from bot.dialogue.turn import Turn

_THING: Final = (
    r"(?:rocks?|stones?|boulders?|logs?|roots?|ferns?|foreground"
    r"(?: rocks?| stones?)?)"
)
_THE: Final = rf"(?:(?:the|that|this|my|those)(?: \w+)? )?{_THING}"
#: A whole message of it: "I'll leave the rock out", "without the stone, then", "rock's out".
_LEFT_OUT: Final = re.compile(
    r"(?:(?:ok(?:ay)?|no|well|so|hm+|actually|then|just|please|yes|and|but|i|i'll|i'd|ill|we|we'll"
    r"|let's"
    r"|lets|can|could|will|want to|rather|better|going to|now|i've|moved|to)[ ,]+)*"
    rf"(?:(?:leave|left|leaving|keep|kept|crop(?:ped)?|cut) (?:{_THE} out|out {_THE})"
    rf"|(?:drop|skip|lose|forget|without|ignore) {_THE}|{_THE}(?:'s| is| are)? out)"
    r"(?: of (?:it|this|that|(?:the |my )?(?:frame|picture|shot|photo|view)))?"
    r"(?:[ ,]+(?:then|now|please|this time|for this one|after all|instead|altogether|again))*"
)


#: What a message names that tells of nothing near, asked or not.
_NEAR: Final = re.compile(r"\b(?:near\w*|close\w*|in front|foreground|no (?:rocks?|stones?))\b")
#: Asked for the nearest thing: "there is a fence in front of me", and not how far it is.
_WITHOUT_DISTANCE: Final = re.compile(
    r"(?:(?:there's|there is|i have|i see|only|just|well|um|oh|yes)[ ,]+)*(?:an?|the|some|my)"
    r"(?: \w+){0,2} (?:fence|railing|rail|rocks?|stones?|boulders?|logs?|wall|bush|branch|grass"
    r"|ferns?"
    r"|flowers?|tree|roots?|bench)(?: (?:right|just|directly|close|there|here))*"
    r"(?: (?:in front(?: of (?:me|us|it))?|near(?: by)?|nearby|at my feet|close by))?"
)
#: Asked for the nearest thing: "nothing really in front, just the water".
_NONE: Final = re.compile(
    r"(?:(?:there's|there is|i have|i've got|well|no|oh|um)[ ,]+)*(?:nothing|none|no (?:rocks?"
    r"|stones?"
    r"|foreground|near thing))(?: (?:really|much|at all|near|nearby|close|closer"
    r"|in front(?: of (?:me"
    r"|it|us))?|in the foreground|there|here|by|that (?:must|has to) be sharp))*"
    r"(?:[.,;]* (?:it's |its |only |just )*(?:the )?(?:water|falls?|waterfall|air|open water"
    r"|railings?|grass|path|pool|river|stream|creek)(?: (?:in front(?: of (?:me|us))?|(?:below"
    r"|under"
    r"|beneath|behind|beyond|around|all)(?: (?:the|a|me|us|it|this))*(?: \w+)?))?)?"
)


_CLAUSE: Final = re.compile(r"[.,;!]\s+|\s(?:and|but) (?=(?:there's |there is )?(?:nothing|no)\b)")


def _tells_beside(said: str) -> bool:
    """Whether one sentence of a message says that nothing near is there."""
    clauses = _CLAUSE.split(said)
    return any(_NONE.fullmatch(one.strip(" .!,")) and _NEAR.search(one) for one in clauses)


def hear_beside(turn: Turn, text: str, told: Facts) -> None:
    """Note that nothing stands near, or no longer in the frame, where facts are told beside it."""
    if told.nearest_m is not None:
        return
    said = plain(text, " .!")
    if any(_LEFT_OUT.fullmatch(one.strip(" .!,")) for one in _CLAUSE.split(said)):
        turn.unlearn("nearest_m")
        note_none(turn)
    elif _tells_beside(said):
        note_none(turn)


def note_none(turn: Turn) -> None:
    """Nothing near has to be sharp: neither it nor the anchor is asked for."""
    asked_before = (*turn.walk.asked, "nearest")
    turn.change_walk(checks=turn.walk.checks | {"anchor": "none"}, asked=asked_before)


def hear(turn: Turn, text: str, told: Facts) -> bool:
    """Take back what was nearest; where it is asked for, that is the answer.

    Args:
        turn: the answer under construction.
        text: the message in English.
        told: what was read in it; a message with facts is no such one.

    Returns:
        Whether it was one, and is answered.
    """
    walk, question = turn.context.conversation.walk, repeat.standing(turn)
    told_more = told.known() or told.unread
    asked = "" if question is None else question.name.removesuffix("_feet")
    said = plain(text, " .!")
    if walk is None or told_more:
        return False
    if asked == "nearest" and (_LEFT_OUT.fullmatch(said) or _NONE.fullmatch(said)):
        skip.tell(turn)
        return True
    if asked == "nearest" and _WITHOUT_DISTANCE.fullmatch(said):
        turn.say(Role.SETTINGS, "nearest.how_far")
        repeat.put_again(turn)
        return True
    none = _NONE.fullmatch(said) and _NEAR.search(said) and turn.facts.nearest_m is None
    if not (none or _LEFT_OUT.fullmatch(said)):
        return False
    turn.remember_for_back()
    turn.unlearn("nearest_m")
    if asked == "anchor":
        composition.answer(turn, "anchor", "none")
        return True
    note_none(turn)
    turn.say(Role.SETTINGS, "noted", list=TEXTS["ask.anchor.none"])
    repeat.put_again_if_open(turn)
    return True
