"""Borders of a frame: what glares is said with its remedy, what may be meant is asked."""

from __future__ import annotations

import math
from collections.abc import Sequence
from typing import Final

from bot.dialogue import reckoning
from bot.dialogue.compose import Role
from bot.dialogue.facts import Units
from bot.dialogue.kept import MOST_BORDER_ANSWERS, BorderAnswer, BorderSaid
from bot.dialogue.states import State
from bot.dialogue.steps.anywhere import repeat
from bot.dialogue.steps.walk import composition
from bot.dialogue.texts import TEXTS, measures
from bot.dialogue.texts.borders import MOST_ASKED, border_place
from bot.dialogue.turn import Turn
from core.camera import FORMATS
from core.frame.findings import Border, BorderFinding, BorderKind
from core.frame.report import FrameReport

#: Findings of one kind on one side this near to each other are one thing, frame by frame (own
#: rule: hand and tripod move a little between two frames).
_SAME_PLACE: Final = 0.12
#: Further in than this nobody turns or crops for it (own rule) [share of the short side].
_MOST_DEPTH: Final = 0.12
#: A little more than the thing itself is turned or cropped away (own rule).
_SPARE: Final = 0.01
_TURNED_OUT: Final = frozenset({BorderKind.BRIGHT, BorderKind.SKY, BorderKind.CUT})


def stated(report: FrameReport) -> tuple[BorderFinding, ...]:
    """What is sure enough to be said, strongest first."""
    return tuple(finding for finding in report.borders or () if finding.stated)


def known(turn: Turn, finding: BorderFinding) -> bool:
    """Whether a thing like it was said or asked on this walk already."""
    return any(_alike(finding, told) for told in turn.walk.borders_told)


def _alike(one: BorderFinding, other: BorderFinding) -> bool:
    return (one.border, one.kind) == (other.border, other.kind) and (
        abs(one.position - other.position) <= _SAME_PLACE
    )


def note(turn: Turn, findings: Sequence[BorderFinding]) -> None:
    """These were said or asked: on this walk they are not news again."""
    news = [finding for finding in findings if not known(turn, finding)]
    if news:
        turn.change_walk(borders_told=(*turn.walk.borders_told, *news))


# in words


def line(turn: Turn, report: FrameReport, finding: BorderFinding) -> tuple[str, dict[str, str]]:
    """The sentence about a thing at a border: its key and what is put in."""
    name = finding.kind.name.lower()
    values = {
        "place": border_place(finding),
        "shade": _shade(finding),
        "remedy": remedy(turn, report, finding),
    }
    return f"border.{name}", values


def line_of_then(finding: BorderFinding) -> tuple[str, dict[str, str]]:
    """The same of a frame that was taken long ago: what a crop can still do."""
    crop = finding.depth <= _MOST_DEPTH
    values = {"thing": _thing(finding), "place": border_place(finding), "part": _part(finding)}
    return "border.then_crop" if crop else "border.then", values


def _thing(finding: BorderFinding) -> str:
    thing = TEXTS[f"border.thing.{finding.kind.name.lower()}"]
    return thing.format(shade=_shade(finding))


def _part(finding: BorderFinding) -> str:
    """How much of the short side a crop takes: the thing, and a little more."""
    return measures.percent(math.ceil((finding.depth + _SPARE) * 100) / 100)


def _shade(finding: BorderFinding) -> str:
    return TEXTS["border.dark" if finding.dark else "border.pale"]


def remedy(turn: Turn, report: FrameReport | None, finding: BorderFinding) -> str:
    """What takes it out of the frame: turn, tilt, crop, move."""
    turned_out = finding.kind in _TURNED_OUT and finding.depth <= _MOST_DEPTH
    if not turned_out:
        return TEXTS["remedy.move_feet" if turn.units is Units.IMPERIAL else "remedy.move"]
    part = _part(finding)
    angle_deg = _angle_deg(turn, report, finding)
    if angle_deg is None:
        return TEXTS["remedy.crop_alone"].format(part=part)
    side = TEXTS[f"remedy.turn.{finding.border.value}"]
    turned = side.format(angle=measures.degrees(max(angle_deg, 0.5)))
    key = "remedy.leaves" if finding.kind is BorderKind.SKY else "remedy.crop"
    return TEXTS[key].format(turn=turned, part=part)


def _angle_deg(turn: Turn, report: FrameReport | None, finding: BorderFinding) -> float | None:
    """By how much to turn or tilt, from the focal length [deg]; None while it is unknown."""
    focal_mm, short_mm = reckoning.focal_of(turn.facts), _short_mm(turn)
    if report is not None and report.metadata.focal_full_frame_mm is not None:
        focal_mm, short_mm = report.metadata.focal_full_frame_mm, FORMATS["full frame"].short_mm
    if focal_mm is None:
        return None
    across_mm, edge_mm = (finding.depth + _SPARE) * short_mm, short_mm / 2
    whole = math.atan(edge_mm / focal_mm) - math.atan((edge_mm - across_mm) / focal_mm)
    return math.degrees(whole)


def _short_mm(turn: Turn) -> float:
    return reckoning.sensor_of(turn.facts).short_mm


# asked


def ask_later(turn: Turn, report: FrameReport) -> None:
    """Keep what is to be asked about this frame: at most two things, none that is known."""
    unsure = [one for one in report.borders or () if not one.stated and not known(turn, one)]
    turn.change_walk(borders_open=tuple(unsure[:MOST_ASKED]))


def ask_next(turn: Turn) -> bool:
    """Ask about the next thing; whether there was one."""
    if not turn.walk.borders_open:
        return False
    finding = turn.walk.borders_open[0]
    note(turn, [finding])
    turn.ask("border", thing=_thing(finding), place=border_place(finding))
    return True


def answer(turn: Turn, value: str) -> None:
    """Meant, not meant, or nothing there: kept as truth, and answered with the remedy."""
    turn.resume_question()
    for finding in turn.walk.borders_open[:1]:  # none: another frame came before the answer
        turn.change_walk(borders_open=turn.walk.borders_open[1:])
        _keep(turn, finding, value)
        _say_answered(turn, finding, value)
    if ask_next(turn):
        return
    if turn.walk.state is State.COMPOSITION:
        composition.go_on(turn)
    else:
        repeat.put_again(turn)


def _keep(turn: Turn, finding: BorderFinding, value: str) -> None:
    said: BorderSaid = "yes" if value == "yes" else "no" if value == "no" else "none"
    names = turn.context.conversation.measured
    frame = next(reversed(names), "")
    one = BorderAnswer(finding=finding, said=said, at=turn.now, frame_event_id=frame)
    # An answer that is put right takes the place of the first: two would be no truth.
    others = [
        other
        for other in turn.context.person.border_answers
        if (other.finding, other.frame_event_id) != (finding, frame)
    ]
    turn.change_person(border_answers=(*others, one)[-MOST_BORDER_ANSWERS:])


def _say_answered(turn: Turn, finding: BorderFinding, value: str) -> None:
    if value == "yes":
        turn.say(Role.SETTINGS, "border.meant")
    elif value == "none":
        turn.say(Role.SETTINGS, "border.not_there")
    else:
        way = remedy(turn, turn.context.conversation.report, finding)
        turn.say(Role.SETTINGS, "border.out", remedy=way)


# the composition step


def compose(turn: Turn, report: FrameReport) -> None:
    """Answer the checks of the composition by a frame: what enters, then what is asked."""
    found = stated(report)
    for finding in found[:MOST_ASKED]:
        key, values = line(turn, report, finding)
        turn.say(Role.SETTINGS if finding is found[0] else Role.CHECK, key, **values)
    ask_later(turn, report)
    if not found and not turn.walk.borders_open:
        turn.say(Role.SETTINGS, "border.clean")
    note(turn, found)
    sky = any(one.kind is BorderKind.SKY and one.border is Border.TOP for one in found)
    checks = {"top": "sky" if sky else "covered", "sides": "measured"}
    turn.change_walk(checks=turn.walk.checks | checks)
    if not ask_next(turn):
        composition.go_on(turn)
