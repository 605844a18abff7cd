"""The line for the log: place, day, hours, where one stood, the settings kept, the light."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Final

from bot.dialogue import solving
from bot.dialogue.compose import Role
from bot.dialogue.kept import ToldFrame
from bot.dialogue.steps.home import told_frames
from bot.dialogue.texts import TEXTS, known, measures
from bot.dialogue.turn import Turn
from bot.dialogue.way_out import zone_of
from core.series import exact_f_number, exact_shutter_s, f_number_label, iso_label

#: What of the place belongs into the log (common practice: where one stood, the lens).
_LOGGED: Final = frozenset({"fall_height_m", "stream", "distance_m", "focal_mm", "water_speed_mps"})


def say(turn: Turn, place: int, conditions: str = "") -> None:
    """Say the line of one frame.

    Args:
        turn: the answer under construction.
        place: of the frame among those told.
        conditions: how the water stood, in the person's words; "" where nothing tells it.
    """
    settings = _settings(turn, told_frames.frames_of(turn)[place])
    stood = known(turn.facts, turn.units, only=_LOGGED)
    pieces = [*_of_the_day(turn), stood, *settings, *_of_the_sky(turn), conditions]
    turn.say(Role.CHECK, "home.log", list=", ".join(piece for piece in pieces if piece))


def _settings(turn: Turn, frame: ToldFrame) -> list[str]:
    """F-number, ISO and time; those of the walk where only times were told at home."""
    camera, given = turn.camera, turn.walk.given
    f_number = exact_f_number(frame.f_number) if frame.f_number else None
    iso = frame.iso
    if given is not None and f_number is None and iso is None:
        f_number, iso = given.f_number, given.iso
    return [
        f_number_label(f_number, camera.dial) if f_number else "",
        iso_label(iso, camera.dial) if iso else "",
        solving.time_text(exact_shutter_s(frame.shutter_s), camera),
    ]


def _of_the_day(turn: Turn) -> Iterator[str]:
    """The place, and the day and hours of a walk."""
    trip = turn.trip
    yield told_frames.review_of(turn).place or trip.place
    if turn.context.conversation.walk is None:
        return  # frames of whatever day
    zone = zone_of(turn.position)
    home_at = turn.context.conversation.home_at or turn.now
    yield measures.date(home_at.astimezone(zone) if zone is not None else home_at)
    if trip.there_at and trip.seen_at:
        ends = (measures.told_clock(trip.there_at), measures.told_clock(trip.seen_at))
        yield TEXTS["home.log_hours"].format(first=ends[0], last=ends[1])
    elif trip.there_at:
        yield measures.told_clock(trip.there_at)


def _of_the_sky(turn: Turn) -> Iterator[str]:
    """The light, and rain that was told at the water."""
    light = turn.facts.light
    yield TEXTS[f"known.light.{light}"] if light else ""
    if "rain.now" in turn.walk.checks:
        yield TEXTS["sky.rain"]
