"""A frame that held, told as the measure for the next: "the wide one was fine at f/11, 1/6"."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue import reckoning, solving
from bot.dialogue.facts import Facts
from bot.dialogue.folding import folded
from bot.dialogue.meaning.claims import claim_in
from bot.dialogue.meaning.said import Said
from bot.dialogue.meaning.sentences import sentences_of
from bot.dialogue.reading import read
from bot.dialogue.states import State
from bot.dialogue.steps.anywhere import manner
from bot.dialogue.steps.walk import base
from bot.dialogue.tongues import whole_words
from bot.dialogue.turn import Turn
from bot.dialogue.walk_state import GivenSettings

_FRAME: Final = whole_words("reference.frame")
_HELD: Final = whole_words("reference.held")
_NOT_HELD: Final = whole_words("reference.not_held")
#: A question at the end of a sentence tells of nothing.
_ASKS: Final = re.compile(r"\?\s*$")
#: Steps at which settings stand that follow from it.
_WITH_SETTINGS: Final = frozenset({State.BASE, State.HIGHLIGHTS, State.KEEP})


def answer(turn: Turn, said: Said) -> bool:
    """Keep the brightness of such a frame, and give the settings anew that follow from it.

    Args:
        turn: the answer under construction.
        said: the message.

    Returns:
        Whether settings were given; without a plan to mend the level alone is kept.
    """
    told = _told(turn, said)
    if told is None:
        return False
    level = solving.level_of(_as_given(turn, told))
    turn.change_walk(clean_stops=level, clipped_stops=None, first_stops=None)
    if turn.walk.state not in _WITH_SETTINGS:
        return False
    turn.remember_for_back()
    base.give(turn)
    return True


def _told(turn: Turn, said: Said) -> Facts | None:
    """The settings of the sentence that tells of another frame, and that it held."""
    if turn.context.conversation.walk is None or turn.walk.given is None:
        return None
    if claim_in(said) is not None:
        return None  # "it was fine at 1/6, that's 3 over": the sum is checked
    for one in sentences_of(said.typed):
        text = folded(one)
        facts = read(manner.as_said(turn, one).english)
        held = _FRAME.search(text) and _HELD.search(text) and not _NOT_HELD.search(text)
        if held and facts.f_number and facts.shutter_s and not _ASKS.search(one):
            return facts
    return None


def _as_given(turn: Turn, told: Facts) -> GivenSettings:
    """The frame as settings; a polariser that is not told off stands before it as now."""
    f_number, shutter_s, iso = reckoning.exact_settings(turn.facts.updated(told))
    given = turn.given
    on = told.polariser_on if told.polariser_on is not None else given.polariser_on
    return GivenSettings(
        f_number=f_number or given.f_number,
        shutter_s=shutter_s or given.shutter_s,
        iso=iso or turn.camera.base_iso,
        polariser_on=bool(on),
        nd_on_stops=told.nd_on_stops or 0.0,
    )
