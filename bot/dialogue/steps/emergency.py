"""Danger and emergencies: the instruction that protects first, no settings, the walk held."""

from __future__ import annotations

from typing import Final
from zoneinfo import ZoneInfo

from bot.dialogue import reckoning
from bot.dialogue.actions import Say, SharedPlace
from bot.dialogue.compose import Role
from bot.dialogue.context import Emergency, Position
from bot.dialogue.danger import Danger, DangerKind, Level, all_safe, anyone_out_there, gravest
from bot.dialogue.events import PlaceReceived
from bot.dialogue.lateness import CLOCKS_DIFFER
from bot.dialogue.reckoning import Assumed
from bot.dialogue.steps import repeat
from bot.dialogue.texts import TEXTS, measures
from bot.dialogue.turn import Turn
from core.framing import section_focal_mm
from core.sun.zone import zone_name

#: What a safe picture of the crest shows [m] where its width is unknown (own rule: about the
#: width of a small fall's crest).
_SHOWN_M: Final = 12.0
#: A place nearer to the fall than this is not taken for a safe one [m] (own rule).
_AWAY_M: Final = 10.0


def answer(turn: Turn, danger: Danger) -> None:
    """Say what protects; hold the walk if it is an emergency, else offer a safe picture."""
    turn.urgent = True
    turn.change_conversation(doubted=None)
    turn.say(Role.SAFETY, f"danger.{danger.kind.value}")
    age = turn.now - turn.origin.sent_at
    if age > CLOCKS_DIFFER:
        turn.say(Role.ASSUMPTION, "danger.late", age=measures.minutes(age.total_seconds() / 60))
    if danger.level is Level.EMERGENCY:
        if not is_held(turn):
            _show_on_map(turn)
        _hold(turn, danger.kind.value)
    elif turn.context.conversation.emergency is None:
        _safe_picture(turn)
        turn.change_conversation(closed=True)
        turn.ask("out_there")
        return
    _position_and_question(turn)


def _hold(turn: Turn, kind: str) -> None:
    """Hold the walk; a second danger leaves the first one's time and the graver kind."""
    held = turn.context.conversation.emergency
    emergency = (
        Emergency(kind=kind, since=turn.now)
        if held is None
        else Emergency(kind=gravest(held.kind, kind), since=held.since)
    )
    turn.change_conversation(emergency=emergency, closed=False)


def _position_and_question(turn: Turn) -> None:
    position = turn.context.person.position
    if position is None:
        turn.say(Role.CHECK, "danger.position_unknown")
    elif not _may_be_told(turn, position):
        turn.say(Role.CHECK, "danger.position_elsewhere")
    else:
        _say_position(turn, position)
    turn.ask("safe")


def _may_be_told(turn: Turn, position: Position) -> bool:
    """What was shared in the direct room stays there."""
    return turn.origin.direct or position.room_id == turn.origin.room_id


def _say_position(turn: Turn, position: Position) -> None:
    """The position with its time and its age, to be read out."""
    age_min = max(0.0, (turn.now - position.shared_at).total_seconds() / 60)
    place, time = _place_and_time(position)
    turn.say(Role.CHECK, "danger.position", place=place, time=time, age=measures.minutes(age_min))


def _place_and_time(position: Position) -> tuple[str, str]:
    """The position as it is read out, and when it was shared, in the zone of the place."""
    zone = ZoneInfo(zone_name(position.latitude, position.longitude))
    place = f"{position.latitude:.4f}, {position.longitude:.4f}"
    return place, measures.clock(position.shared_at.astimezone(zone))


def _show_on_map(turn: Turn) -> None:
    """The last shared position as a place that clients show on a map; once, when it begins."""
    position = turn.context.person.position
    if position is None or not _may_be_told(turn, position):
        return
    place, time = _place_and_time(position)
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


def _safe_picture(turn: Turn) -> None:
    """A like picture from the walk's own place if that is known and away, else advice."""
    facts = turn.facts
    if facts.distance_m is None or facts.distance_m < _AWAY_M:
        turn.say(Role.CHECK, "danger.from_afar")
        return
    sensor = reckoning.sensor_of(facts, Assumed())
    shown_m = facts.fall_width_m or _SHOWN_M
    focal_mm = section_focal_mm(shown_m, facts.distance_m, sensor.long_mm, 0.0)
    turn.say(
        Role.CHECK,
        "danger.from_there",
        distance=measures.length(facts.distance_m, turn.units),
        focal=measures.focal(focal_mm, sensor.crop_factor),
        shown=measures.length(shown_m, turn.units),
    )


def is_held(turn: Turn) -> bool:
    """Whether an emergency holds this conversation."""
    return turn.context.conversation.emergency is not None


def held(turn: Turn) -> None:
    """Anything else while an emergency is held: no settings, only the question."""
    turn.urgent = True
    emergency = turn.context.conversation.emergency
    if emergency is not None and emergency.kind in _STAY_AWAY:  # leaving may not wait
        turn.say(Role.SAFETY, f"danger.{emergency.kind}.again")
    else:
        turn.say(Role.SAFETY, "danger.held")
    _position_and_question(turn)


def place_shared(turn: Turn, event: PlaceReceived) -> None:
    """A location shared in an emergency: kept and given back to be read out, nothing else."""
    position = Position(
        latitude=event.latitude,
        longitude=event.longitude,
        shared_at=event.origin.sent_at,
        room_id=event.origin.room_id,
    )
    turn.change_person(position=position)
    held(turn)


def worded(question: str, text: str) -> str | None:
    """The option that a reply in free words means, for the two questions of this step."""
    if question == "safe":
        safe = all_safe(text)
        return None if safe is None else ("yes" if safe else "not_yet")
    if question == "out_there":
        out = anyone_out_there(text)
        return None if out is None else ("yes" if out else "no")
    return None


def overheard(turn: Turn, text: str) -> None:
    """A message to others in the room while an emergency is held: only good news counts."""
    if all_safe(text):
        answer_safe(turn, "yes")


def answer_safe(turn: Turn, value: str) -> None:
    """All safe, or not yet."""
    turn.urgent = True
    emergency = turn.context.conversation.emergency
    if value == "not_yet" and emergency is not None:
        turn.say(Role.SAFETY, f"danger.{emergency.kind}.again")
        _position_and_question(turn)
        return
    turn.remember_for_back()
    turn.change_conversation(emergency=None)
    away = emergency is not None and emergency.kind in _STAY_AWAY
    turn.say(Role.SAFETY, f"danger.{emergency.kind}.over" if emergency and away else "danger.over")
    if turn.context.conversation.walk is not None:
        turn.say(Role.CHECK, "danger.walk_waits" if away else "danger.walk_kept")
    if away:
        turn.change_conversation(question=None)  # the walk's own stays paused
    else:
        repeat.put_again(turn, whole=True)


#: So often it is asked with the reason before the question stands alone (own rule).
_INSISTED: Final = 3
#: After these nobody goes back to the water at once: the walk waits until somebody begins.
_STAY_AWAY: Final = frozenset({DangerKind.FLOOD.value, DangerKind.THUNDER.value})


def insist(turn: Turn) -> None:
    """Words that answer nothing while somebody may be out there: that place stays closed."""
    question = turn.context.conversation.question
    times = question.times if question is not None else 1
    turn.urgent = True
    if times < _INSISTED:
        turn.say(Role.SAFETY, "danger.insist")
    turn.ask("out_there")
    turn.count_question(times + 1)


def answer_out_there(turn: Turn, value: str) -> None:
    """Is anybody out at the dangerous place?"""
    turn.urgent = True
    if value == "yes":
        turn.say(Role.SAFETY, "danger.call_back")
        turn.ask("out_there")
        return
    turn.change_conversation(closed=False)
    turn.say(Role.SAFETY, "danger.nobody_there")
    repeat.put_again(turn, whole=True)
