"""At home: the frames of the day, what was right with each, and one thing to try next time."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Final

from bot.dialogue import reckoning, solving
from bot.dialogue.actions import CancelTimer
from bot.dialogue.by_numbers import of_frame, share_told
from bot.dialogue.compose import Role
from bot.dialogue.facts import Facts
from bot.dialogue.meaning.asking import asks
from bot.dialogue.meaning.at_home import asks_where_to_begin, brings_frame, is_home, wants_review
from bot.dialogue.meaning.review_words import tells_of_taken
from bot.dialogue.reading.foreign import glossed
from bot.dialogue.reading.frame_list import told_in
from bot.dialogue.reading.frame_times import plain_times
from bot.dialogue.steps.anywhere import manner, repeat
from bot.dialogue.steps.frames import border_said, findings_said, raw_said, reviewing
from bot.dialogue.steps.frames.at_hand import known
from bot.dialogue.steps.home import editing, told_frames
from bot.dialogue.steps.walk import arrive
from bot.dialogue.steps.walk.highlights import clicks_within
from bot.dialogue.texts import TEXTS, frames, measures
from bot.dialogue.turn import Turn
from core.exposure import Settings
from core.frame.findings import Sharpness
from core.frame.report import Advice, AreaKind, FrameReport
from core.frame.room import is_capped, shows_nothing
from core.series import nearest, time_marks
from core.water import Look, look_of

#: From so many frames on it is a list (own rule).
_LIST: Final = 3
#: Thirds of a frame that tell "from near to far" at least (own rule).
_NEAR_AND_FAR: Final = 2
#: Settings are of a frame that is told with them.
_TAKEN_WITH: Final = frozenset({"f_number", "shutter_s", "iso"})
#: The white is where it shall be.
_HELD: Final = frozenset({Advice.KEEP, Advice.BRIGHTER, Advice.REFRAME})


def hear(turn: Turn, text: str, told: Facts) -> bool:
    """Begin to go through the frames where a message says so; whether it did no more.

    Args:
        turn: the answer under construction.
        text: as typed.
        told: what was read in it, to be answered from home.
    """
    home = is_home(text)
    if home and not _TAKEN_WITH & told.known().keys() and _opens(turn, text):
        return True
    if told.known() or _lists_frames(turn, text):
        if home:
            arrive_home(turn)
        return False
    if not home and not wants_review(text):
        return False
    if home:
        arrive_home(turn)
    if _asks_more(turn, text):
        return False
    if brings_frame(text):
        turn.say(Role.SETTINGS, "home.send")
    else:
        begin(turn)
    repeat.put_again_if_open(turn, whole=False)
    return True


def _opens(turn: Turn, text: str) -> bool:
    """Open the review where a message from home wants one, or asks where to begin; whether it does.

    What it tells besides is of frames that are taken: no light or look of now.
    """
    sorts = asks_where_to_begin(text)
    if _lists_frames(turn, text) or brings_frame(text) or editing.names_fault(text):
        return False
    if not (sorts or wants_review(text)):
        return False
    arrive_home(turn)
    if sorts:
        turn.say(Role.SETTINGS, "asked.choose")
        turn.say(Role.CHECK, "home.begin")
        turn.reason("why.practice")
    else:
        begin(turn)
    repeat.put_again_if_open(turn, whole=False)
    return True


def _asks_more(turn: Turn, text: str) -> bool:
    """Whether a message asks something else than to go through frames: that is answered then."""
    said = manner.as_said(turn, text)
    return asks(said) and not (wants_review(text) or brings_frame(text))


def _lists_frames(turn: Turn, text: str) -> bool:
    """Whether a message tells the times of several frames, which are its answer then."""
    said = plain_times(glossed(text, turn.context.person.language))
    return len(told_in(said).times) > 1


def brings_list(turn: Turn, typed: str, said: str) -> bool:
    """Whether frames that are taken are told in a list, before any walk: so they are gone through.

    At the water frames are told one by one, or two to be compared.

    Args:
        turn: the answer under construction.
        typed: the message as it came.
        said: the message in English.
    """
    if turn.context.conversation.walk is not None or not tells_of_taken(typed):
        return False
    return len(told_in(plain_times(said)).times) >= _LIST


def note_caption(turn: Turn, caption: str) -> None:
    """A frame that comes with "home now" is gone through like those after it."""
    if is_home(caption):
        arrive_home(turn)


def arrive_home(turn: Turn) -> None:
    """From now on frames are gone through: no question stands open, no reminder comes."""
    turn.change_conversation(home_at=turn.now)
    turn.close_question()
    for name in arrive.REMINDERS:
        turn.do(CancelTimer(name=name))


def begin(turn: Turn) -> None:
    """Go through the last frame at once where there is one; else say how it goes."""
    told_home = turn.is_at_home
    if turn.context.conversation.walk is None and not told_home:
        arrive_home(turn)
    own = [frame for frame in known(turn).values() if not frame.foreign]
    report = turn.context.conversation.report
    if not own or report is None:
        turn.say(Role.SETTINGS, "home.begin" if told_home else "asked.review")
        turn.reason("why.practice")
        return
    _go_through(turn, report)
    if len(own) > 1:
        turn.say_or_keep(Role.CHECK, "home.several", number=str(len(own)))
    else:
        turn.say_or_keep(Role.CHECK, "home.next")


def review(turn: Turn, report: FrameReport, picture: str | None) -> None:
    """A frame that was shared at home, with its marked picture."""
    _go_through(turn, report)
    reviewing.show_picture(turn, report, picture)
    turn.say_or_keep(Role.CHECK, "home.next")
    shared = next(reversed(turn.context.conversation.measured.values()))
    told_frames.take_shared(turn, shared, _seen(turn, report))


def _seen(turn: Turn, report: FrameReport) -> Iterator[str]:
    """What the picture shows, by the names under which it is told in words."""
    if report.advice is Advice.DARKER:
        yield "clipped"
    if findings_said.fault_of(turn, report) is not None:
        yield "soft"


def of_others(turn: Turn, report: FrameReport, picture: str | None) -> None:
    """Somebody else's frame: gone through like one's own; it tells nothing of the walk."""
    _go_through(turn, report, own=False)
    reviewing.show_picture(turn, report, picture)
    turn.say(Role.ASSUMPTION, "home.foreign")


def _go_through(turn: Turn, report: FrameReport, *, own: bool = True) -> None:
    """What the frame is, what was right with it, and the one thing to try next time.

    Args:
        turn: the answer under construction.
        report: of the frame.
        own: of this walk, so that its numbers hold for the frame.
    """
    if shows_nothing(report):
        turn.say(Role.SETTINGS, "frame.nothing")
        return
    turn.say(Role.SETTINGS, "home.frame", frame=_named(turn, report, own=own))
    if report.mat_left_out:
        turn.say(Role.ASSUMPTION, "frame.mat")
    look = _look(turn, report, own=own)
    right = [TEXTS[f"home.right.{name}"] for name in _right(turn, report, look)]
    if right:
        turn.say(Role.CHECK, "home.right", list=measures.listing(right, TEXTS["and"]))
    turn.say(Role.CHECK, "home.try", what=_to_try(turn, report, look if own else None))
    raw_said.explain(turn, report)
    for line in findings_said.lines_of_then(report):
        turn.reason(line.part.key, **line.part.values)


def _named(turn: Turn, report: FrameReport, *, own: bool) -> str:
    """The settings of the frame and its look, as far as they are known."""
    told = report.metadata.settings
    facts = Facts(f_number=told.f_number, shutter_s=told.shutter_s, iso=told.iso)
    f_number, shutter_s, iso = reckoning.exact_settings(facts)
    if shutter_s is None:
        return TEXTS["home.no_settings"]
    camera = turn.camera
    named = nearest(time_marks(camera.dial), shutter_s).label
    if f_number is not None and iso is not None:
        named = solving.settings_text(Settings(f_number, shutter_s, iso), camera)
    if not own:
        return named
    look = solving.look_is(of_frame(turn.facts, report), shutter_s)
    return f"{named}: {look}"


def _right(turn: Turn, report: FrameReport, look: Look | None) -> Iterator[str]:
    dark = is_capped(report)  # so that what has edges in it may be noise
    if report.advice in _HELD and not dark:
        yield "whites"
    if look is reckoning.wished_look(turn.facts):
        yield "look"
    if (
        not dark
        and _is_known_sharp(report.sharpness)
        and findings_said.fault_of(turn, report) is None
    ):
        yield "sharp"
    if report.borders is not None and not border_said.stated(report):
        yield "borders"


def _is_known_sharp(sharpness: Sharpness | None) -> bool:
    """Whether no third is softer than another, where there are edges to tell it by.

    Noise has edges of its own, which are always sharp.
    """
    if sharpness is None or sharpness.noisy or sharpness.softest is not None:
        return False
    return sum(width is not None for width in sharpness.thirds) >= _NEAR_AND_FAR


def _look(turn: Turn, report: FrameReport, *, own: bool) -> Look | None:
    """The look by the person's numbers, else the one that the picture shows alone."""
    told, seen = report.metadata.settings, report.look
    share = share_told(of_frame(turn.facts, report), told.shutter_s)
    if own and share is not None:
        return look_of(share)
    return seen.look if seen is not None and seen.neighbour is None else None


def _to_try(turn: Turn, report: FrameReport, look: Look | None) -> str:
    """The one thing that would have helped most: sharpness, whites, look, borders; the ladder."""
    fault = findings_said.fault_of(turn, report)
    if fault is not None:
        return TEXTS["home.try.sharp"].format(fault=fault[0], remedy=fault[1])
    whites = _whites_to_try(report)
    if whites is not None:
        return whites
    if look is not None and look is not reckoning.wished_look(turn.facts):
        return _other_time(turn, report)
    return _small_thing(turn, report)


def _whites_to_try(report: FrameReport) -> str | None:
    """What is to be done about the whites; None where they hold, and for room that was left."""
    unsure = [area for area in report.clipping.areas if area.kind is AreaKind.UNSURE]
    darker = measures.stops(report.room_stops or -2 / 3)
    if report.advice is Advice.ASK and unsure:
        return TEXTS["home.try.unsure"].format(stops=darker, **frames.area_values(unsure[0]))
    if report.advice in {Advice.DARKER, Advice.ASK}:
        return TEXTS["home.try.darker"].format(stops=darker)
    if report.advice is Advice.REFRAME:
        return TEXTS["home.try.sky"]
    if not is_capped(report):
        return None
    return TEXTS["home.try.far_brighter"].format(stops=measures.stops(report.room_stops or 0.0))


def _small_thing(turn: Turn, report: FrameReport) -> str:
    """A frame that holds: its borders, the room that was left, else the ladder."""
    stated = border_said.stated(report)
    if stated:
        key, values = border_said.line_of_then(stated[0])
        return TEXTS["home.try.border"].format(what=TEXTS[key].format(**values))
    if report.advice is Advice.BRIGHTER:
        dial = turn.camera.dial
        stops = clicks_within(report.room_stops or 0.0, dial) / dial.value
        return TEXTS["home.try.brighter"].format(stops=measures.stops(stops))
    return _ladder(turn, report)


def _other_time(turn: Turn, report: FrameReport) -> str:
    """From which time to which the water has the wished look from there."""
    shortest, longest = reviewing.ends_of_look(turn, of_frame(turn.facts, report))
    look = TEXTS[f"look.{reckoning.wished_look(turn.facts).value}"]
    return TEXTS["home.try.look"].format(look=look, shortest=shortest, longest=longest)


def _ladder(turn: Turn, report: FrameReport) -> str:
    """Nothing is wrong: half and double the time beside it."""
    shutter_s = report.metadata.settings.shutter_s
    if shutter_s is None:
        return TEXTS["home.try.ladder"]
    camera = turn.camera
    shorter, longer = (
        solving.time_text(time_s, camera) for time_s in (shutter_s / 2, shutter_s * 2)
    )
    return TEXTS["home.try.times"].format(shorter=shorter, longer=longer)
