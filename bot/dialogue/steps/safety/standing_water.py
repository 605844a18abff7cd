"""What speaks against standing in told water, and what is not known of it: never a leave."""

from __future__ import annotations

from typing import Final

from bot.dialogue.compose import Role
from bot.dialogue.reading.standing import speed_told, water_to_stand_in
from bot.dialogue.texts import TEXTS, measures
from bot.dialogue.turn import Turn
from core.wading import STRONGEST_FLOW_M2PS, Reason, Standing, WaterToStandIn, may_wade

#: So many things are named at most (own rule: who wades in spite of three will in spite of nine).
_NAMED: Final = 3


def say(turn: Turn, text: str) -> None:
    """Say it behind the warning, where a message tells of the water itself.

    Args:
        turn: the answer under construction; that nobody wades is said already.
        text: the message, as typed.
    """
    water = water_to_stand_in(text)
    if water == WaterToStandIn():
        return
    verdict = may_wade(water)
    if verdict.standing is Standing.NO:
        reasons = [_reason(reason, water, text) for reason in verdict.reasons[:_NAMED]]
        turn.say(Role.SAFETY, "standing.no", reasons=", ".join(reasons))
    elif verdict.standing is Standing.ASK:
        unknown = [TEXTS[f"standing.unknown.{name}"] for name in verdict.unknown[:_NAMED]]
        turn.say(Role.SAFETY, "standing.ask", unknown=", ".join(unknown))
    else:
        turn.say(Role.SAFETY, "standing.with_care")
    turn.reason("why.standing", limit=measures.plain(STRONGEST_FLOW_M2PS))


def _reason(reason: Reason, water: WaterToStandIn, text: str) -> str:
    """A reason in words, with the number where its speed was told by one."""
    said = TEXTS[f"standing.{reason.value}"]
    if reason is not Reason.TOO_STRONG:
        return said
    depth_m, speed_mps = water.depth_m or 0.0, water.speed_mps or 0.0
    about = "" if speed_told(text) is not None else "≈ "
    limit = measures.plain(STRONGEST_FLOW_M2PS)
    return said.format(flow=about + measures.plain(depth_m * speed_mps, 2), limit=limit)
