"""A shared frame: from what was measured on it to the next setting."""

from __future__ import annotations

from typing import Final

from bot.dialogue.actions import CheckFrame, DropFrame
from bot.dialogue.compose import Role
from bot.dialogue.context import Shared, Waiting
from bot.dialogue.events import FrameChecked, FrameReceived
from bot.dialogue.facts import Blink, Facts
from bot.dialogue.lateness import KnownBy, Standing
from bot.dialogue.states import State, Trigger
from bot.dialogue.steps import (
    arrive,
    frame_time,
    heard,
    highlights,
    keep,
    late,
    light_named,
    repeat,
    reviewing,
)
from bot.dialogue.steps.taken import take_settings
from bot.dialogue.texts import TEXTS, frames, measures
from bot.dialogue.turn import Turn
from core.errors import FrameFault
from core.frame.report import Advice, AreaKind, ClippedArea, FrameReport, SizeNote

#: Frames that one conversation remembers, for edits and withdrawals (own rule).
_REMEMBERED: Final = 20


def received(turn: Turn, event: FrameReceived) -> None:
    """A frame came: have it measured; the answer follows with the result."""
    kept = (*turn.context.conversation.frames, event.origin.event_id)[-_REMEMBERED:]
    shared = turn.context.conversation.shared | {event.origin.event_id: frame_time.shared_now(turn)}
    known = {frame: shared[frame] for frame in kept if frame in shared}
    turn.change_conversation(frames=kept, shared=known)
    turn.do(
        CheckFrame(
            frame_event_id=event.origin.event_id,
            media=event.media,
            camera_pixels=_camera_pixels(turn.facts),
        )
    )


def _camera_pixels(facts: Facts) -> tuple[int, int] | None:
    """Long and short side of the camera's pictures from its megapixels, taken as 3:2."""
    if facts.megapixels is None:
        return None
    short = (facts.megapixels * 1e6 / 1.5) ** 0.5
    return round(short * 1.5), round(short)


def withdrawn(turn: Turn, event_id: str) -> None:
    """The person took a frame back: delete it, say nothing."""
    if event_id in turn.context.conversation.frames:
        rest = tuple(frame for frame in turn.context.conversation.frames if frame != event_id)
        awaited = turn.context.conversation.shared
        left = {frame: shared for frame, shared in awaited.items() if frame != event_id}
        turn.change_conversation(frames=rest, shared=left)
        turn.do(DropFrame(frame_event_id=event_id))


def checked(turn: Turn, event: FrameChecked) -> None:
    """The result of a check: say it, or say why there is none."""
    if event.frame_event_id not in turn.context.conversation.frames:
        return
    shared = _taken_off(turn, event.frame_event_id)
    if event.report is None:
        key = frames.fault_key(event.fault or FrameFault.CRASHED, event.fault_numbers)
        turn.say(Role.SETTINGS, key, **frames.fault_values(event.fault_numbers))
        repeat.put_again(turn)
        return
    if shared is not None:
        turn.seen = frame_time.seen_of(turn, event.report.metadata, shared)
        if not heard.counts_now(turn):
            _of_then(turn, event.report, event.picture, shared)
            return
    turn.change_conversation(report=event.report, picture=event.picture)
    if turn.context.conversation.walk is None:
        arrive.begin_quietly(turn)
    if _contradicts_kit(turn.facts, event.report):
        turn.say(Role.SETTINGS, "frame.from_phone")
        turn.ask("rear_screen")
        return
    judge(turn, event.report)


def _taken_off(turn: Turn, event_id: str) -> Shared | None:
    """What was noted of a frame when it came; it is awaited no longer."""
    shared = dict(turn.context.conversation.shared)
    found = shared.pop(event_id, None)
    turn.change_conversation(shared=shared)
    return found


def _of_then(turn: Turn, report: FrameReport, picture: str | None, shared: Shared) -> None:
    """A frame of light that has passed: the last of several asks whether it still is."""
    gone = heard.standing_of(turn, turn.seen) is Standing.GONE
    when = light_named.named(turn, turn.seen)
    if gone or turn.context.conversation.shared:
        reviewing.frame(turn, report, when, picture)
        return
    waiting = Waiting(
        report=report, picture=picture, seen=turn.seen, sent_at=shared.sent_at, when=when
    )
    stamped = turn.seen.by is KnownBy.STAMP
    late.ask(turn, waiting, "light_still_frame" if stamped else "light_still")


def judge_waiting(turn: Turn, waiting: Waiting, report: FrameReport, *, clock_is_off: bool) -> None:
    """A frame whose light is still the same, or whose camera's clock was wrong."""
    if clock_is_off:
        frame_time.learn_clock(turn, report.metadata, waiting.sent_at)
    turn.change_conversation(report=report, picture=waiting.picture)
    if turn.context.conversation.walk is None:
        arrive.begin_quietly(turn)
    judge(turn, report)


def _contradicts_kit(facts: Facts, report: FrameReport) -> bool:
    """A phone's picture although the kit has a camera: perhaps its rear screen."""
    return (
        report.metadata.from_phone
        and facts.camera_format is not None
        and facts.camera_format != "phone"
    )


def answer_rear_screen(turn: Turn, value: str) -> None:
    """Is it a picture of the camera's screen? Then its own numbers say nothing."""
    report = turn.context.conversation.report
    if value == "yes" or report is None:
        turn.change_conversation(report=None, picture=None)
        turn.say(Role.CHECK, "frame.screen_unusable")
        turn.ask("screen_says")
        return
    judge(turn, report)


def answer_screen_says(turn: Turn, value: str) -> None:
    """What the camera's own screen shows."""
    if value == "histogram":
        highlights.darker(turn, 1 / 3, "highlights.histogram")
        return
    highlights.blinked(turn, Blink(value))


def judge(turn: Turn, report: FrameReport) -> None:
    """Say what the frame shows and what to set next."""
    reviewing.show_picture(turn, report, turn.context.conversation.picture)
    turn.change_conversation(picture=None)
    _learn_settings(turn, report)
    turn.light = turn.seen
    turn.be_in(State.HIGHLIGHTS, Trigger.NEW_FRAME)
    if report.size_note is SizeNote.RESIZED:
        turn.say(Role.ASSUMPTION, "frame.resized")
    elif not report.metadata.present and turn.walk.given is not None:
        turn.say(Role.ASSUMPTION, "frame.no_metadata")
    turn.reason("why.frame", share=measures.percent(report.clipping.share))
    unsure = next((area for area in report.clipping.areas if area.kind is AreaKind.UNSURE), None)
    match report.advice:
        case Advice.ASK if unsure is not None:
            turn.say(Role.SETTINGS, "frame.unsure", **frames.area_values(unsure))
            turn.ask("area", letter=unsure.letter)
        case Advice.DARKER:
            _darker(turn, report)
        case Advice.REFRAME:
            _sky(turn, report)
        case Advice.BRIGHTER:
            _brighter(turn, report)
        case _:
            _holds(turn, report)


def _learn_settings(turn: Turn, report: FrameReport) -> None:
    """The settings of the file are the settings of the frame."""
    settings = report.metadata.settings
    told = Facts(
        shutter_s=settings.shutter_s,
        f_number=settings.f_number,
        iso=settings.iso,
        focal_mm=settings.focal_mm,
    )
    turn.learn(told)
    if report.metadata.taken_offset_min is not None:
        turn.change_walk(offset_min=report.metadata.taken_offset_min)
    if settings.focal_mm is not None:
        turn.change_walk(checks=turn.walk.checks | {"focal": "set"})
    take_settings(turn)


def _worst(report: FrameReport, kind: AreaKind) -> ClippedArea | None:
    areas = [area for area in report.clipping.areas if area.kind is kind]
    return max(areas, key=lambda area: area.share, default=None)


def _darker(turn: Turn, report: FrameReport) -> None:
    area = _worst(report, AreaKind.WHITE_WATER)
    if area is not None:
        turn.say(Role.CHECK, "frame.white_water", **frames.area_values(area))
    _mention_sparkle(turn, report)
    highlights.darker(turn, -(report.room_stops or -2 / 3), "frame.next")


def _sky(turn: Turn, report: FrameReport) -> None:
    gap = max(report.clipping.areas, key=lambda area: area.kind is AreaKind.SKY_GAP)
    turn.say(Role.SETTINGS, "frame.sky", **frames.area_values(gap))
    turn.ask("sky_gap")


def _brighter(turn: Turn, report: FrameReport) -> None:
    room = report.room_stops or 0.0
    turn.say(Role.CHECK, "frame.room", stops=measures.stops(room))
    highlights.brighter(turn, room)


def _holds(turn: Turn, report: FrameReport) -> None:
    _mention_sparkle(turn, report)
    highlights.holds(turn)


def _mention_sparkle(turn: Turn, report: FrameReport) -> None:
    letters = [area.letter for area in report.clipping.areas if area.kind is AreaKind.SPARKLE]
    if letters:
        turn.say(Role.CHECK, "frame.sparkle", letters=measures.listing(letters, TEXTS["and"]))


def answer_area(turn: Turn, value: str) -> None:
    """Water or sky?"""
    report = turn.context.conversation.report
    areas = report.clipping.areas if report is not None else ()
    if value == "sky":
        turn.say(Role.SETTINGS, "highlights.sky")
        turn.ask("sky_gap")
        return
    share = max((area.share for area in areas if area.kind is AreaKind.UNSURE), default=0.0)
    highlights.darker(turn, frames.step_for_share(share), "frame.next")


def answer_sky_gap(turn: Turn, value: str) -> None:
    """Moved for a new frame, or bracketed."""
    if value == "bracket":
        highlights.bracket(turn)
        keep.reached(turn)
        return
    turn.say(Role.CHECK, "highlights.new_frame")
    turn.ask("blink_again")
