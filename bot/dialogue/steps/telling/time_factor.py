"""A time that is told as a multiple of the one that was given last."""

from __future__ import annotations

from bot.dialogue.facts import Facts
from bot.dialogue.meaning.said import Said
from bot.dialogue.meaning.time_factor import time_factor_in
from bot.dialogue.turn import Turn
from core.series import nearest, time_marks


def laid_over(turn: Turn, said: Said, facts: Facts) -> Facts:
    """What was read, with that time in the time's place.

    Args:
        turn: the answer under construction; without settings there is nothing to multiply.
        said: the message.
        facts: what was read in it; a time of its own counts.
    """
    given = turn.walk.given
    factor = None if given is None or facts.shutter_s is not None else time_factor_in(said.typed)
    if given is None or factor is None:
        return facts
    camera = turn.camera
    wanted_s = min(max(given.shutter_s * factor, camera.shortest_s), camera.longest_s)
    return facts.updated(Facts(shutter_s=nearest(time_marks(camera.dial), wanted_s).exact))
