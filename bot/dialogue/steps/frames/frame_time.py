"""When a shared frame was taken, by its file and its message; the camera's clock is learned."""

from __future__ import annotations

import math
from datetime import datetime, timedelta, timezone
from typing import Final

from bot.dialogue.camera_clock import AT_ONCE, Stamp, ahead_of_utc, stamp_of, taken_between
from bot.dialogue.context import Shared
from bot.dialogue.lateness import Arrival, Seen
from bot.dialogue.turn import Turn
from bot.dialogue.walk_state import GivenSettings
from bot.dialogue.way_out import zone_around
from core.frame.report import CameraSettings, FrameMetadata
from core.series import SAME_STOPS

#: Questions that ask for a frame to be taken now.
_FRAME_WANTED: Final = frozenset({"blink", "blink_again", "phone_again"})
#: Cameras whose clocks are remembered for one person (own rule).
_CAMERAS: Final = 8


def shared_now(turn: Turn) -> Shared:
    """What is known of a frame's time when it comes: its message, and whether it was asked for."""
    question, sent_at = turn.context.conversation.question, turn.origin.sent_at
    asked = question is not None and question.name in _FRAME_WANTED
    asked_at = question.asked_at if question is not None and asked else None
    at_once = asked_at is not None and timedelta(0) <= sent_at - asked_at <= AT_ONCE
    return Shared(sent_at=sent_at, seen=turn.seen, asked_at=asked_at if at_once else None)


def seen_of(turn: Turn, metadata: FrameMetadata, shared: Shared) -> Seen:
    """Between which moments a measured frame was taken.

    A frame that was asked for, comes within minutes and has the settings that were given was
    taken then, whatever its camera's clock says; the clock is learned from it.
    """
    stamp = stamp_of(metadata.taken_at, metadata.taken_offset_min)
    if stamp is None:
        return shared.seen
    if stamp.offset is not None:
        turn.stated_zone = timezone(stamp.offset)
    ahead_s = turn.context.person.clocks.get(_camera(metadata, stamp))
    ahead = None if ahead_s is None else timedelta(seconds=ahead_s)
    found = taken_between(stamp, shared.sent_at, zone=zone_around(turn.context), ahead=ahead)
    unsure = found is None or ahead is None
    if shared.asked_at is not None and unsure and _as_given(metadata.settings, turn.walk.given):
        learn_clock(turn, metadata, shared.asked_at + (shared.sent_at - shared.asked_at) / 2)
        return Arrival(shared.sent_at).seen
    return shared.seen if found is None else found


def learn_clock(turn: Turn, metadata: FrameMetadata, taken: datetime) -> None:
    """Keep how far a camera's clock is off, from a frame whose time is known.

    A phone's clock is set by its network, and is never learned.
    """
    stamp = stamp_of(metadata.taken_at, metadata.taken_offset_min)
    named = metadata.maker or metadata.model
    if stamp is None or metadata.from_phone or not named:
        return
    camera = _camera(metadata, stamp)
    others = [(name, s) for name, s in turn.context.person.clocks.items() if name != camera]
    ahead_s = ahead_of_utc(stamp, taken).total_seconds()
    turn.change_person(clocks=dict([*others[1 - _CAMERAS :], (camera, ahead_s)]))


def may_be_unset(turn: Turn, metadata: FrameMetadata) -> bool:
    """Whether a camera's clock may be at its beginning: then nobody but the person knows."""
    stamp = stamp_of(metadata.taken_at, metadata.taken_offset_min)
    if stamp is None or _camera(metadata, stamp) in turn.context.person.clocks:
        return False
    return stamp.may_be_unset


def camera_name(metadata: FrameMetadata) -> str:
    """A camera by maker and model; "" where the file names neither."""
    return f"{metadata.maker or ''} {metadata.model or ''}".strip()


def _camera(metadata: FrameMetadata, stamp: Stamp) -> str:
    """A camera by maker and model; set to state its zone, it is off by something else."""
    name = camera_name(metadata)
    return name if stamp.offset is None else f"{name}, with its zone"


def _as_given(taken: CameraSettings, given: GivenSettings | None) -> bool:
    """Whether a frame has the settings that were given for it."""
    if given is None or taken.shutter_s is None:
        return False
    pairs = (
        (taken.shutter_s, given.shutter_s, 1.0),
        (taken.f_number, given.f_number, 2.0),
        (taken.iso, given.iso, 1.0),
    )
    return all(
        one is None or abs(math.log2(one / other)) * stops <= SAME_STOPS
        for one, other, stops in pairs
    )
