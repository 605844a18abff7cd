"""A shared frame: from what was measured on it to the next setting."""

from __future__ import annotations

from datetime import timedelta
from typing import Final

from bot.dialogue.actions import CheckFrame, DropFrame
from bot.dialogue.by_numbers import of_frame, share_told
from bot.dialogue.compose import Role
from bot.dialogue.context import Before, Shared, Waiting
from bot.dialogue.events import FrameChecked, FrameReceived
from bot.dialogue.facts import Blink, Facts
from bot.dialogue.lateness import KnownBy, Standing
from bot.dialogue.meaning.frame_owner import is_of_the_last, is_theirs, tells_whose
from bot.dialogue.steps.anywhere import heard, repeat
from bot.dialogue.steps.frames import frame_time, leaf_shared, measuring, raw_said, reviewing, views
from bot.dialogue.steps.frames.judged import judge
from bot.dialogue.steps.home import at_home
from bot.dialogue.steps.telling import late
from bot.dialogue.steps.walk import arrive, highlights, light_named
from bot.dialogue.texts import frames
from bot.dialogue.turn import Turn
from core.errors import FrameFault
from core.frame.report import FrameReport

#: So long after words about a frame to come the next one is meant (own rule).
_ANNOUNCED: Final = timedelta(minutes=5)
#: Frames that one conversation remembers, for edits and withdrawals (own rule).
_REMEMBERED: Final = 20


def received(turn: Turn, event: FrameReceived) -> None:
    """A frame came: have it measured; the answer follows with the result."""
    at_home.note_caption(turn, event.caption)
    kept = (*turn.context.conversation.frames, event.origin.event_id)[-_REMEMBERED:]
    foreign = is_theirs(event.caption) or _was_announced(turn)
    now = frame_time.shared_now(turn).model_copy(update={"foreign": foreign})
    shared = turn.context.conversation.shared | {event.origin.event_id: now}
    known = {frame: shared[frame] for frame in kept if frame in shared}
    lies = turn.context.conversation.media | {
        event.origin.event_id: event.media.model_copy(update={"shared_at": event.origin.sent_at})
    }
    media = {frame: lies[frame] for frame in kept if frame in lies}
    turn.change_conversation(frames=kept, shared=known, media=media)
    turn.do(
        CheckFrame(
            frame_event_id=event.origin.event_id,
            media=event.media,
            camera_pixels=measuring.camera_pixels(turn.facts),
            language=turn.context.person.language,
        )
    )


def _was_announced(turn: Turn) -> bool:
    """Whether the words just before a frame said that it is somebody else's; once for each."""
    said_at = turn.context.conversation.foreign_at
    turn.change_conversation(foreign_at=None)
    return said_at is not None and turn.origin.sent_at - said_at <= _ANNOUNCED


def whose(turn: Turn, text: str) -> bool:
    """A message that says whose a frame is: the last one, or one to come; whether it does."""
    if not tells_whose(text):
        return False
    last = next(reversed(turn.context.conversation.measured), None)
    if last is None or not is_of_the_last(text):
        turn.change_conversation(foreign_at=turn.origin.sent_at)
        turn.say(Role.SETTINGS, "home.foreign_next")
    else:
        turn.say(Role.SETTINGS, "home.foreign_last" if _disown(turn, last) else "home.foreign")
    repeat.put_again_if_open(turn, whole=False)
    return True


def _disown(turn: Turn, name: str) -> bool:
    """Somebody else took this frame: whether the walk had to go back to before it."""
    conversation = turn.context.conversation
    foreign = conversation.measured[name].model_copy(update={"foreign": True, "kept": False})
    before = conversation.walk_before
    turn.change_conversation(measured=conversation.measured | {name: foreign}, walk_before=None)
    if before is None:
        return False
    turn.change_conversation(walk=before.walk, question=before.question, report=before.report)
    return True


def withdrawn(turn: Turn, event_id: str) -> None:
    """The person took a frame back: delete it, say nothing."""
    if event_id in turn.context.conversation.frames:
        rest = tuple(frame for frame in turn.context.conversation.frames if frame != event_id)
        awaited = turn.context.conversation.shared
        left = {frame: shared for frame, shared in awaited.items() if frame != event_id}
        media = {
            frame: ref
            for frame, ref in turn.context.conversation.media.items()
            if frame != event_id
        }
        measured = {
            frame: kept
            for frame, kept in turn.context.conversation.measured.items()
            if frame != event_id
        }
        turn.change_conversation(frames=rest, shared=left, media=media, measured=measured)
        measuring.let_go(turn, event_id)
        turn.do(DropFrame(frame_event_id=event_id))


def checked(turn: Turn, event: FrameChecked) -> None:
    """The result of a check: say it, or say why there is none."""
    if event.frame_event_id not in turn.context.conversation.frames:
        return
    shared = _taken_off(turn, event.frame_event_id)
    if event.report is None or event.report.of_screen or event.report.several_in_one:
        _refuse(turn, event)
        return
    note_measured(turn, event.frame_event_id, event.report, shared)
    report = raw_said.corrected(turn, event.report)
    if _only_gone_through(turn, shared, report, event.picture):
        return
    if shared is not None:
        turn.seen = frame_time.seen_of(turn, event.report.metadata, shared)
        if not heard.counts_now(turn):
            _of_then(turn, report, event.picture, shared)
            return
    _note_before(turn, report, event.picture)
    if turn.context.conversation.walk is None:
        arrive.begin_quietly(turn)
    if _contradicts_kit(turn.facts, report):
        turn.say(Role.SETTINGS, "frame.from_phone")
        turn.ask("rear_screen")
        return
    judge(turn, report)


def _refuse(turn: Turn, event: FrameChecked) -> None:
    """A file that can't be judged, or is no frame."""
    if event.report is not None:
        of_screen = event.report.of_screen
        turn.say(Role.SETTINGS, "frame.screenshot" if of_screen else "frame.several")
    else:
        key = frames.fault_key(event.fault or FrameFault.CRASHED, event.fault_numbers)
        turn.say(Role.SETTINGS, key, **frames.fault_values(event.fault_numbers))
    repeat.put_again(turn)


def _note_before(turn: Turn, report: FrameReport, picture: str | None) -> None:
    """The frame is the last one now; the walk before it is kept, should it be somebody else's."""
    conversation = turn.context.conversation
    before = Before(
        walk=conversation.walk, question=conversation.question, report=conversation.report
    )
    turn.change_conversation(report=report, picture=picture, walk_before=before)


def _only_gone_through(
    turn: Turn, shared: Shared | None, report: FrameReport, picture: str | None
) -> bool:
    """Whether a frame asks for no next setting: somebody else's, or one shared at home."""
    turn.change_conversation(walk_before=None)
    if shared is not None and shared.foreign:
        at_home.of_others(turn, report, picture)
        repeat.put_again_if_open(turn, whole=False)
        return True
    if turn.is_at_home:
        turn.change_conversation(report=report)
        at_home.review(turn, report, picture)
        return True
    return False


def note_measured(
    turn: Turn, event_id: str, report: FrameReport, shared: Shared | None = None
) -> None:
    """Keep what tells which frames are of one view; where its water is stays as it was told."""
    known = dict(turn.context.conversation.measured)
    sent_at = shared.sent_at if shared is not None else turn.origin.sent_at
    found = views.measured_of(report, sent_at)
    share = share_told(of_frame(turn.facts, report), found.shutter_s)
    foreign = shared is not None and shared.foreign
    leaf = leaf_shared.is_one(turn, found.shutter_s)
    of_water = None if foreign or leaf else share
    found = found.model_copy(update={"foreign": foreign, "leaf": leaf, "share": of_water})
    before = known.get(event_id)
    if before is not None:
        kept = {"sent_at", "water_cells", "axis_deg", "kept", "foreign", "leaf", "share"}
        found = found.model_copy(update={name: getattr(before, name) for name in kept})
    known[event_id] = found
    frames_now = turn.context.conversation.frames
    turn.change_conversation(measured={name: known[name] for name in frames_now if name in known})


def _taken_off(turn: Turn, event_id: str) -> Shared | None:
    """What was noted of a frame when it came; it is awaited no longer."""
    shared = dict(turn.context.conversation.shared)
    found = shared.pop(event_id, None)
    turn.change_conversation(shared=shared)
    return found


def _of_then(turn: Turn, report: FrameReport, picture: str | None, shared: Shared) -> None:
    """A frame of light that has passed: the last of several asks whether it still is."""
    gone = heard.standing_of(turn, turn.seen) is Standing.GONE and not frame_time.may_be_unset(
        turn, report.metadata
    )
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
