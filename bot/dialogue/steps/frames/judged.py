"""A measured frame judged: its whites, what else it shows, the next setting, what is asked."""

from __future__ import annotations

from typing import Final

from bot.dialogue import solving
from bot.dialogue.compose import Role
from bot.dialogue.facts import Blink, Facts
from bot.dialogue.states import State, Trigger
from bot.dialogue.steps.anywhere import repeat
from bot.dialogue.steps.frames import (
    beside,
    border_said,
    findings_said,
    leaf_shared,
    look_said,
    raw_said,
    reviewing,
)
from bot.dialogue.steps.walk import highlights, keep
from bot.dialogue.steps.walk.taken import ask_for_settings, take_settings
from bot.dialogue.texts import TEXTS, frames, measures
from bot.dialogue.turn import Turn
from core.frame.report import Advice, AreaKind, ClippedArea, FrameReport, SizeNote
from core.frame.room import is_capped, is_lost, shows_nothing

#: Said once on a walk: who shares copies knows it then.
_RESIZED: Final = "frame.resized"


def judge(turn: Turn, report: FrameReport) -> None:
    """Say what the frame shows and what to set next."""
    reviewing.show_picture(turn, report, turn.context.conversation.picture)
    turn.change_conversation(picture=None)
    _let_go_of_older(turn)
    if leaf_shared.is_one(turn, report.metadata.settings.shutter_s):
        leaf_shared.say(turn)
        return
    _learn_settings(turn, report)
    raw_said.learn_preview(turn, report)
    raw_said.mention_correction(turn, report)
    turn.light = turn.seen
    if turn.walk.state is State.COMPOSITION and report.borders is not None:
        _note_level(turn, report)
        if is_lost(report):
            _say_mostly_white(turn, report)
        border_said.compose(turn, report)
        return
    turn.be_in(State.HIGHLIGHTS, Trigger.NEW_FRAME)
    if shows_nothing(report):
        turn.say(Role.SETTINGS, "frame.nothing")
        repeat.put_again(turn)
        return
    _note_source(turn, report)
    _advise(turn, report)
    findings_said.say(turn, findings_said.lines(turn, report))
    beside.say(turn, report)


def _let_go_of_older(turn: Turn) -> None:
    """A is a letter of its own frame: what was asked of an older one's A is not asked again."""
    standing = repeat.standing(turn)
    if standing is not None and standing.name == "area":
        turn.ask("blink_again")
        turn.leave_question_unsaid()


def _note_source(turn: Turn, report: FrameReport) -> None:
    """What the numbers rest on: a small copy, a file without data, a JPEG or a raw."""
    given = turn.walk.given
    if not report.metadata.present and given is not None:
        settings = solving.settings_on(given, turn.camera)
        turn.say(Role.ASSUMPTION, "frame.no_metadata", settings=settings)
    if report.mat_left_out:
        turn.say(Role.ASSUMPTION, "frame.mat")
    if report.size_note is SizeNote.RESIZED and _RESIZED not in turn.walk.checks:
        turn.say(Role.ASSUMPTION, _RESIZED)
        turn.change_walk(checks=turn.walk.checks | {_RESIZED: "told"})
    raw_said.explain(turn, report)


def _advise(turn: Turn, report: FrameReport) -> None:
    """The next setting, by what the whites ask for."""
    unsure = next((area for area in report.clipping.areas if area.kind is AreaKind.UNSURE), None)
    match report.advice:
        case Advice.ASK if unsure is not None:
            key = f"frame.unsure{frames.of_part(unsure)}"
            turn.say(Role.SETTINGS, key, **frames.area_values(unsure))
            turn.ask("area", letter=unsure.letter)
        case Advice.DARKER:
            _darker(turn, report)
        case Advice.REFRAME:
            _sky(turn, report)
        case Advice.BRIGHTER:
            _brighter(turn, report)
        case _:
            _holds(turn, report)


def _note_level(turn: Turn, report: FrameReport) -> None:
    """A frame for the composition tells the light too: how bright may be, or was too bright.

    One that is far too bright doesn't say by how much; one that is far too dark, at least so much.
    """
    given, room = turn.walk.given, report.room_stops
    if given is None or room is None or is_lost(report):
        return
    level = solving.level_of(given)
    if report.advice is Advice.DARKER:
        turn.change_walk(clipped_stops=level)
    else:
        bound = {"at_least": f"{level + room}"} if is_capped(report) else {}
        turn.change_walk(clean_stops=level + room, checks=turn.walk.checks | bound)


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
    _learn_crop(turn, report)
    if report.metadata.taken_offset_min is not None:
        turn.change_walk(offset_min=report.metadata.taken_offset_min)
    if settings.focal_mm is not None:
        turn.change_walk(checks=turn.walk.checks | {"focal": "set"})
    take_settings(turn)


def _learn_crop(turn: Turn, report: FrameReport) -> None:
    """While no format was told the file's two focal lengths tell how large the sensor is."""
    full_mm, real_mm = report.metadata.focal_full_frame_mm, report.metadata.settings.focal_mm
    if turn.facts.camera_format is None and full_mm is not None and real_mm is not None:
        turn.learn(Facts(crop_factor=full_mm / real_mm))


def _worst(report: FrameReport, kind: AreaKind) -> ClippedArea | None:
    areas = [area for area in report.clipping.areas if area.kind is kind]
    return max(areas, key=lambda area: area.share, default=None)


def _darker(turn: Turn, report: FrameReport) -> None:
    area = _worst(report, AreaKind.WHITE_WATER)
    if area is not None:
        turn.say(Role.CHECK, "frame.white_water", **frames.area_values(area))
    elif any(one.kind is AreaKind.UNSURE for one in report.clipping.areas):
        _say_mostly_white(turn, report)
    _mention_sparkle(turn, report)
    highlights.darker(turn, -(report.room_stops or -2 / 3), "frame.next")


def _say_mostly_white(turn: Turn, report: FrameReport) -> None:
    turn.say(Role.CHECK, "frame.mostly_white", share=measures.percent(report.clipping.share))


def _sky(turn: Turn, report: FrameReport) -> None:
    gap = max(report.clipping.areas, key=lambda area: area.kind is AreaKind.SKY_GAP)
    turn.say(Role.SETTINGS, "frame.sky", **frames.area_values(gap))
    turn.ask("sky_gap")


def _brighter(turn: Turn, report: FrameReport) -> None:
    room = report.room_stops or 0.0
    if report.raw is None:
        key = f"frame.room{frames.or_more(report)}"
        turn.say(Role.CHECK, key, stops=measures.stops(room), kind=report.file_kind)
    else:
        raw_said.room(turn, report.raw, room)
    other_look = look_said.misses_wish(turn, report)
    lamp = _worst(report, AreaKind.LAMP) is not None
    highlights.brighter(turn, room, far=is_capped(report), other_look=other_look, lamp=lamp)


def _holds(turn: Turn, report: FrameReport) -> None:
    if _worst(report, AreaKind.WHITE_WATER) is not None and report.preview_over_stops is not None:
        turn.say(Role.CHECK, "raw.holds")
    _mention_sparkle(turn, report)
    fault = findings_said.fault_of(turn, report)
    if fault is not None:
        _not_a_keeper(turn, *fault)
    elif take_settings(turn) is None:
        turn.say(Role.SETTINGS, "frame.holds")
        repeat.put_again(turn)
    elif look_said.misses_wish(turn, report):
        highlights.for_look(turn)
    else:
        highlights.holds(turn, look=look_said.in_picture(turn, report))


def _not_a_keeper(turn: Turn, fault: str, remedy: str) -> None:
    """The whites hold, but the frame moved or is out of focus: the same once more."""
    given = take_settings(turn)
    settings = TEXTS["seen.same_settings"]
    if given is not None:
        camera = turn.camera
        settings = solving.settings_on(given, camera)
    turn.say(Role.SETTINGS, "seen.unsharp", fault=fault, settings=settings)
    turn.say(Role.CHECK, "seen.remedy", remedy=remedy[:1].upper() + remedy[1:])
    turn.ask("blink_again")


def _mention_sparkle(turn: Turn, report: FrameReport) -> None:
    letters = [area.letter for area in report.clipping.areas if area.kind is AreaKind.SPARKLE]
    if letters:
        turn.say(Role.CHECK, "frame.sparkle", letters=measures.listing(letters, TEXTS["and"]))


def answer_area(turn: Turn, value: str) -> None:
    """Water or sky, or neither: then the water is not what was lost."""
    if value == "neither":
        turn.say(Role.CHECK, "frame.neither")
        highlights.holds(turn)
        return
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
        if take_settings(turn) is None:
            ask_for_settings(turn, Facts(blink=Blink.SKY))
            return
        highlights.bracket(turn)
        keep.reached(turn)
        return
    turn.say(Role.CHECK, "highlights.new_frame")
    turn.ask("blink_again")
