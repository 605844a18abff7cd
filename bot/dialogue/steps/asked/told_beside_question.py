"""What a question tells beside what it asks: kit, light, and the look that who asks wishes."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue.facts import Facts
from bot.dialogue.meaning.arrival import names_fall_here, says_here
from bot.dialogue.meaning.asking import told_beside
from bot.dialogue.meaning.said import Said
from bot.dialogue.reading import read
from bot.dialogue.slots import KIT_SLOTS
from bot.dialogue.steps.walk import arrive
from bot.dialogue.turn import Turn

#: What is told of a walk.
_OF_THE_WALK: Final = frozenset({"hand_held", "light"})
#: Who asks how to get a look, or says that they want it, wishes it.
_WISHES: Final = re.compile(
    r"\b(?:i|we)(?:'d| would|'m| am|'re| are)? (?:really |just |rather |both |all )?(?:want|wanted"
    r"|like|love|prefer|after|going for|hoping for)\b"
    r"|\bhow (?:do|can|could|would|should) (?:i|we) (?:get|make|do|achieve|have)\b"
    r"|\bhow to (?:get|make|do|achieve)\b"
)


def learn(turn: Turn, said: Said, facts: Facts) -> None:
    """Keep what a message tells beside its question: "tripod at home, can it be done".

    Args:
        turn: the answer under construction.
        said: the message.
        facts: what was read in it.
    """
    known = facts.known().keys()
    told = Facts()
    if known & (KIT_SLOTS | _OF_THE_WALK):
        told = read(told_beside(said), units=turn.units)
    kit = told.only(told.known().keys() & KIT_SLOTS)
    if facts.has_polariser is False and kit.has_polariser:
        kit = kit.updated(Facts(has_polariser=False))  # the whole list was denied
    turn.change_person(kit=turn.context.person.kit.updated(kit))
    if "sky" in said.english.casefold():
        told = told.model_copy(update={"light": None})  # it stands in the frame
    of_walk = told.only(told.known().keys() & known & _OF_THE_WALK).updated(wished(said.english))
    if not of_walk.known():
        return
    if turn.context.conversation.walk is None:
        if not (says_here(said.typed) or names_fall_here(said.english)):
            return
        arrive.begin_quietly(turn)
    turn.learn(of_walk)


def wished(text: str) -> Facts:
    """The look that who asks wishes, as a fact.

    Args:
        text: the message in English.
    """
    if not _WISHES.search(text.casefold()):
        return Facts()
    return Facts(look=read(text).look)
