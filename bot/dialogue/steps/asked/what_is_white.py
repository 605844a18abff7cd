"""White water without lines: how clipping and too long a time are told apart."""

from __future__ import annotations

from bot.dialogue import reckoning
from bot.dialogue.compose import Role
from bot.dialogue.meaning.of_others import asks_blown_or_long
from bot.dialogue.meaning.said import Said
from bot.dialogue.reading import read
from bot.dialogue.steps.asked.told_around import rest_of
from bot.dialogue.steps.walk import base, reasons
from bot.dialogue.texts import TEXTS
from bot.dialogue.turn import Turn
from core.series import exact_shutter_s, nearest, shutter_label, time_marks
from core.water import Look, look_of


def answer(turn: Turn, said: Said) -> str | None:
    """Tell the two apart for the frame that is spoken of.

    Args:
        turn: the answer under construction.
        said: the message.

    Returns:
        What else the message tells; None when it asks nothing of the kind.
    """
    if not asks_blown_or_long(said):
        return None
    say_which(turn, read(said.english).shutter_s)
    return rest_of("")


def say_which(turn: Turn, told_s: float | None) -> None:
    """What blinking says of the white, and what the time does to the water.

    Args:
        turn: the answer under construction.
        told_s: the time that is told of the frame; None: the one that is set.
    """
    now, dial = base.standing(turn), turn.camera.dial
    given = turn.walk.given
    time_s = None if told_s is None else exact_shutter_s(told_s, dial)
    time_s = time_s or (None if given is None else given.shutter_s)
    turn.say(Role.SETTINGS, "white.which")
    if time_s is None:
        return
    marks = time_marks(dial)
    share = now.flow.share(time_s)
    textured_s = now.flow.times(Look.TEXTURED)[1]
    shorter_s = min(time_s / 4, textured_s)
    turn.say(
        Role.CHECK,
        "white.time" if look_of(share) in {Look.MISTY, Look.SILKY} else "white.time_short",
        time=shutter_label(time_s, dial),
        look=TEXTS[f"look.{look_of(share).value}"],
        shorter=nearest(marks, shorter_s).label,
        shortest=nearest(marks, shorter_s / 2).label,
    )
    reasons.explain_share(turn, now.flow, time_s, now.camera)
    assumed = reckoning.Assumed()
    reckoning.flowing_or_usual(turn.facts, reckoning.focal_of(turn.facts), assumed)
    reasons.tell_assumed(turn, assumed, now.camera)
