"""The position that was shared last, in an emergency: to be read out, and on a map."""

from __future__ import annotations

from zoneinfo import ZoneInfo

from bot.dialogue.actions import Say, SharedPlace
from bot.dialogue.context import Position
from bot.dialogue.texts import TEXTS, measures
from bot.dialogue.turn import Turn
from core.sun.zone import zone_name


def place_and_time(position: Position) -> tuple[str, str]:
    """The position as it is read out, and when it was shared, in the zone of the place."""
    zone = ZoneInfo(zone_name(position.latitude, position.longitude))
    place = f"{position.latitude:.4f}, {position.longitude:.4f}"
    return place, measures.clock(position.shared_at.astimezone(zone))


def show(turn: Turn) -> None:
    """The last shared position as a place that clients show on a map; once, when it begins."""
    position = turn.position
    if position is None:
        return
    place, time = place_and_time(position)
    turn.do(
        Say(
            body=TEXTS["danger.on_map"].format(place=place, time=time),
            keys=("danger.on_map",),
            urgent=True,
            place=SharedPlace(
                latitude=position.latitude,
                longitude=position.longitude,
                shared_at=position.shared_at,
            ),
        )
    )
