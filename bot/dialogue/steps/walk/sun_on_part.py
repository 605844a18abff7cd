"""White that blinks where the sun is on it: a matter of waiting before it is one of a setting."""

from __future__ import annotations

from bot.dialogue import solving
from bot.dialogue.compose import Role
from bot.dialogue.facts import Blink
from bot.dialogue.meaning.whites import White
from bot.dialogue.steps.walk import highlights, sun_shared
from bot.dialogue.turn import Turn


def answer(turn: Turn, white: White) -> bool:
    """Say to wait, or that the frame of the shade holds; whether the sun is what makes it blink.

    Args:
        turn: the answer under construction; the settings of the frame are known.
        white: how the white of the frame is.
    """
    if not _is_of_the_sun(turn, white):
        return False
    turn.white = None
    highlights.enter(turn)
    if white.in_shade in {Blink.NOTHING, Blink.DOTS}:
        highlights.note_levels(turn, turn.given, clipped=False)
        highlights.holds(turn, "highlights.shade_holds")
        return True
    turn.change_walk(checks=turn.walk.checks | {sun_shared.CHECK: "part", sun_shared.WAITS: "said"})
    settings = solving.settings_on(turn.given, turn.camera)
    turn.say(Role.SETTINGS, "highlights.sun_on_part", settings=settings)
    turn.say(Role.CHECK, "highlights.sun_is_more")
    turn.reason("why.practice")
    turn.ask("blink_again")
    return True


def _is_of_the_sun(turn: Turn, white: White) -> bool:
    """Whether it is the sun that makes a part of it blink, by what is told now or was before."""
    if white.blink not in {Blink.PATCHES, Blink.SHEET}:
        return False
    sunny = sun_shared.is_told(turn) or turn.facts.light in solving.SUNLIT
    told = white.in_sun or (white.part and sunny)
    return told and (white.in_shade is not None or sun_shared.WAITS not in turn.walk.checks)
