"""What became of an average and of an illustration of other times, in words."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from bot.dialogue import reckoning
from bot.dialogue.compose import Role
from bot.dialogue.steps.frames.compared import look_named
from bot.dialogue.texts import TEXTS, measures
from bot.dialogue.turn import Turn
from core.frame.comparison import (
    AverageMade,
    IllustratedTime,
    IllustrationMade,
    LeftOutFrame,
    Refusal,
)
from core.series import shutter_label

#: Times that are named with the shares of their streaks: more lines can't be read (own rule).
_WITH_SHARES: Final = 2


def average(turn: Turn, made: AverageMade) -> None:
    """Say what averaging did, and what was left out."""
    if len(made.used) < 2:
        turn.say(Role.SETTINGS, "average.only_one", reasons=_reasons(made.left_out))
        return
    turn.say(
        Role.SETTINGS,
        "average.made",
        number=str(len(made.used)),
        noise=measures.percent(made.noise if made.noise is not None else made.law),
        time=_as_long(turn, made),
    )
    if made.left_out:
        turn.say(Role.CHECK, "average.left_out", reasons=_reasons(made.left_out))
    law = measures.percent(made.law)
    turn.reason("why.average", number=str(len(made.used)), law=law)


def _as_long(turn: Turn, made: AverageMade) -> str:
    if made.total_s is None:
        return ""
    time = shutter_label(made.total_s, reckoning.dial_of(turn.facts))
    text = TEXTS["average.as_long"].format(time=time)
    return text + look_named(made.look, "average.look")


def _reasons(left_out: Sequence[LeftOutFrame]) -> str:
    return "; ".join(
        TEXTS[f"average.out.{one.why.value}"].format(letter=chr(ord("A") + one.frame))
        for one in left_out
    )


def illustration(turn: Turn, made: IllustrationMade) -> None:
    """Say what was drawn and that it is an illustration, or why there is none."""
    if made.refusal is not None:
        _refuse(turn, made.refusal)
        return
    times = ", ".join(_time(turn, one, len(made.times)) for one in made.times)
    turn.say(Role.SETTINGS, "drawn.made", times=times)
    turn.say(Role.CHECK, "drawn.correct")


def _refuse(turn: Turn, refusal: Refusal) -> None:
    """Why there is none; what only seems to run across the person can set right."""
    if refusal is Refusal.NOT_PLUNGING:
        turn.say(Role.SETTINGS, "drawn.runs_across")
    else:
        turn.say(Role.SETTINGS, f"drawn.{refusal.value.replace(' ', '_')}")


def _time(turn: Turn, one: IllustratedTime, number: int) -> str:
    key = "drawn.time" if number <= _WITH_SHARES else "drawn.time_alone"
    return TEXTS[key].format(
        time=shutter_label(one.shutter_s, reckoning.dial_of(turn.facts)),
        look=TEXTS[f"look.{one.look.value}"],
        low=measures.percent(one.share_low).removesuffix(" %"),
        high=measures.percent(one.share_high),
    )
