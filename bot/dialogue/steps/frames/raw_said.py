"""What a raw file tells beyond its picture: the sensor's own room, and how its preview is off."""

from __future__ import annotations

from typing import Final

from bot.dialogue.compose import Role
from bot.dialogue.steps.frames.frame_time import camera_name
from bot.dialogue.texts import TEXTS, measures
from bot.dialogue.turn import Turn
from core.frame.findings import RawExposure
from core.frame.report import FrameReport
from core.frame.room import as_in_raw

#: Cameras whose previews are remembered for one person (own rule).
_CAMERAS: Final = 8
#: Less is not worth a word, nor a correction [stops] (own rule: half a click).
_WORTH_STOPS: Final = 1 / 6
#: Kinds of files that move codes, so that what is clipped in them is told about.
_WITH_LOSS: Final = frozenset({"JPEG", "HEIC"})


def learn_preview(turn: Turn, report: FrameReport) -> None:
    """Keep by how much this camera's pictures overstate, and say so when it matters."""
    raw, camera = report.raw, camera_name(report.metadata)
    if raw is None or raw.preview_over_stops is None or not camera:
        return
    others = [pair for pair in turn.context.person.previews.items() if pair[0] != camera]
    over = raw.preview_over_stops
    turn.change_person(previews=dict([*others[1 - _CAMERAS :], (camera, over)]))
    if over >= _WORTH_STOPS:
        turn.say(Role.CHECK, "raw.preview_over", stops=measures.stops(over))


def corrected(turn: Turn, report: FrameReport) -> FrameReport:
    """The report of a picture of a camera whose raws have shown how its pictures are off."""
    over = turn.context.person.previews.get(camera_name(report.metadata), 0.0)
    if report.raw is not None or over < _WORTH_STOPS:
        return report
    return as_in_raw(report, over)


def mention_correction(turn: Turn, report: FrameReport) -> None:
    """Say that a report counts on the raw."""
    if report.preview_over_stops is not None:
        turn.say(Role.ASSUMPTION, "raw.counted_on", stops=measures.stops(report.preview_over_stops))


def room(turn: Turn, raw: RawExposure, stops: float) -> None:
    """The room to the right, and which channel ends it."""
    first = min(raw.room_stops, key=lambda colour: raw.room_stops[colour])
    key = "raw.room" if raw.saturation_found else "raw.room_stated"
    turn.say(Role.CHECK, key, stops=measures.stops(stops), channel=TEXTS[first])


def explain(turn: Turn, report: FrameReport) -> None:
    """What is clipped, for `why`: of a raw by channel, of a picture how far it can be known."""
    raw = report.raw
    if raw is None:
        _explain_picture(turn, report)
        return
    turn.reason(
        "why.raw" if raw.saturation_found else "why.raw_stated",
        **{f"{colour}_room": measures.stops(room) for colour, room in raw.room_stops.items()},
        **{f"{colour}_clipped": measures.percent(part) for colour, part in raw.clipped.items()},
    )


def _explain_picture(turn: Turn, report: FrameReport) -> None:
    share = measures.percent(report.clipping.share)
    if not report.clipping.share:
        turn.reason("why.frame_none")
    elif report.file_kind in _WITH_LOSS:
        turn.reason("why.frame", share=share, kind=report.file_kind)
    else:
        turn.reason("why.frame_exact", share=share)
