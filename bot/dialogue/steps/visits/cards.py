"""The card: settings, focus, ladder and turn-back as one picture to save before the signal goes."""

from __future__ import annotations

import math
from typing import Final

from bot.dialogue import reckoning, solving
from bot.dialogue.actions import CardLine, DrawCard
from bot.dialogue.compose import Role
from bot.dialogue.steps.anywhere import access, planning, repeat
from bot.dialogue.steps.visits import rough_card
from bot.dialogue.steps.walk import base_said, keep, light_named
from bot.dialogue.steps.walk.day_plan import clock_of
from bot.dialogue.texts import TEXTS, measures
from bot.dialogue.turn import Turn
from bot.dialogue.walk_state import GivenSettings
from bot.dialogue.way_out import turn_back_of


def draw(turn: Turn) -> None:
    """Draw the card of this walk; without settings say what is missing."""
    given = turn.walk.given if turn.context.conversation.walk is not None else None
    if given is None and planning.is_planning(turn):
        turn.parts.extend(rough_card.parts(turn))
        return
    if given is None:
        turn.say(Role.SETTINGS, "card.nothing")
        if repeat.standing(turn) is not None:
            repeat.put_again(turn)
        return
    lines = _lines(turn, given)
    spoken = "; ".join(f"{line.label} {line.value}" for line in lines)
    caption, footer = TEXTS["card.caption"], TEXTS["card.footer"]
    alternative = f"{TEXTS['card.alt'].format(lines=spoken)} {footer}"
    turn.do(
        DrawCard(
            title=TEXTS["card.title"],
            lines=tuple(lines),
            footer=footer,
            caption=access.caption(turn, caption, f"{caption} {alternative}"),
            alt=alternative,
        )
    )


def _lines(turn: Turn, given: GivenSettings) -> list[CardLine]:
    camera = turn.camera
    values = {"settings": solving.settings_text(given, camera)}
    if given.focal_mm is not None:
        values["lens"] = measures.focal(given.focal_mm, camera.sensor.crop_factor)
    values["focus"] = _focus(turn, given)
    values["filter"] = solving.filters_on(given)
    values["ladder"] = ", ".join(keep.ladder(turn))
    light = turn.walk.light
    if light is not None:
        values["light"] = light_named.light_of(turn, light)
    values["turn_back"] = _turn_back(turn)
    return [
        CardLine(label=TEXTS[f"card.{name}"], value=value)
        for name, value in values.items()
        if value
    ]


def _focus(turn: Turn, given: GivenSettings) -> str:
    """Where to focus, or from where to where in how many frames; "" when nothing tells it."""
    if given.focus_m is None or not math.isfinite(given.focus_m):
        return ""
    if given.focal_mm is not None:
        depth = reckoning.depth_of(turn.facts, given.focal_mm)
        stack = base_said.stack_of(turn, depth)
        if stack is not None and given.f_number <= depth.exact * _SAME:
            return TEXTS["card.stack"].format(**stack)
    return measures.length(given.focus_m, turn.units)


#: F-numbers nearer than this factor are the same mark (own rule: a tenth of a stop).
_SAME: Final = 2**0.05


def _turn_back(turn: Turn) -> str:
    position = turn.position
    moment = turn_back_of(turn)
    if moment is None:
        return TEXTS["card.turn_back_unknown"]
    return clock_of(moment, sure=position is not None)
