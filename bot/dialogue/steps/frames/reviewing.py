"""Reviews: what a frame of light that has gone shows, without settings for a next one."""

from __future__ import annotations

from typing import Final

from bot.dialogue import reckoning, solving
from bot.dialogue.actions import Say
from bot.dialogue.compose import Role
from bot.dialogue.context import Waiting
from bot.dialogue.facts import Blink, Facts, Symptom
from bot.dialogue.questions import QUESTIONS
from bot.dialogue.reading import read
from bot.dialogue.replies import chosen, meant
from bot.dialogue.steps.anywhere import access
from bot.dialogue.steps.frames import findings_said
from bot.dialogue.steps.walk import adjust
from bot.dialogue.texts import TEXTS, frames, measures
from bot.dialogue.turn import Turn
from bot.dialogue.way_out import day_around
from core.exposure import Settings
from core.frame.report import Advice, AreaKind, ClippedArea, FrameReport
from core.frame.room import shows_nothing

#: What the options of the questions about a frame tell.
_TOLD: Final = {
    "no_texture": Facts(symptoms=(Symptom.NO_TEXTURE,)),
    "too_white": Facts(symptoms=(Symptom.JUST_WHITE,)),
    "too_dark": Facts(symptoms=(Symptom.TOO_DARK,)),
    "histogram": Facts(histogram_at_right=True),
    "water": Facts(blink=Blink.PATCHES),
    "bracket": Facts(blink=Blink.SKY),
    "yes": Facts(symptoms=(Symptom.LEAVES_SMEARED,)),
}
_LOOKS: Final = frozenset({Symptom.NO_TEXTURE, Symptom.TOO_FROZEN})


def replied(question: str, value: str) -> Facts:
    """What an option of a question about a frame tells."""
    if value in _TOLD:
        return _TOLD[value]
    if question in {"blink", "blink_again", "screen_says"}:
        return Facts(blink=Blink(value))
    return Facts(blink=Blink.DOTS)  # "nothing is wrong with it"


def read_again(turn: Turn, waiting: Waiting) -> Facts:
    """What a message that waited tells."""
    asked = QUESTIONS.get(waiting.answers or "")
    text = waiting.text or ""
    value = (chosen(asked, text) or meant(asked, text)) if asked else None
    if asked is not None and value is not None:
        return replied(asked.name, value)
    return read(text, units=turn.units)


def told(turn: Turn, facts: Facts, when: str) -> None:
    """Answer what was told of a frame of then, without a next setting."""
    _say_verdict(turn, facts, _capital(when))
    _close(turn)


def _capital(text: str) -> str:
    return text[:1].upper() + text[1:]


def _close(turn: Turn) -> None:
    """Where the light is to come from; after the turn-back time only the way out."""
    leave_at = day_around(turn.context, turn.now).leave_at
    if leave_at is not None and turn.context.conversation.walk and leave_at <= turn.now:
        turn.say(Role.SAFETY, "review.leave", time=measures.clock(leave_at))
        return
    if not (turn.origin.behind or turn.context.conversation.shared):
        turn.say(Role.CHECK, "review.next")


def _say_verdict(turn: Turn, facts: Facts, when: str) -> None:
    exposure = set(facts.symptoms) & adjust.EXPOSURE
    if exposure & _LOOKS:
        _say_look(turn, when)
        return
    if set(facts.symptoms) - adjust.EXPOSURE and not exposure:
        turn.say(Role.SETTINGS, "review.leaves", when=when)
        return
    if facts.blink is Blink.SKY:
        turn.say(Role.SETTINGS, "review.sky", when=when)
        return
    if not adjust.is_complaint(facts):
        _say_given(turn, facts, when)
        return
    change = adjust.wanted_change(facts, exposure)
    if facts.histogram_at_right:
        change = -1 / 3
    if facts.blink is Blink.NOTHING and not change:
        turn.say(Role.SETTINGS, "review.room", when=when, stops=measures.stops(2 / 3))
        return
    key = "review.held" if not change else "review.dark" if change > 0 else "review.clipped"
    turn.say(Role.SETTINGS, key, when=when, stops=measures.stops(change))


def _say_look(turn: Turn, when: str) -> None:
    """A look is a matter of time and water, whatever the light."""
    shortest, longest = ends_of_look(turn, turn.facts)
    turn.say(
        Role.SETTINGS,
        "review.look",
        when=when,
        look=TEXTS[f"look.{reckoning.wished_look(turn.facts).value}"],
        shortest=shortest,
        longest=longest,
    )


def ends_of_look(turn: Turn, facts: Facts) -> tuple[str, str]:
    """The shortest and the longest time of the wished look, as the dial shows them."""
    camera = turn.camera
    ends = reckoning.flow_of(facts).times(reckoning.wished_look(facts))
    shortest, longest = (solving.time_text(time_s, camera) for time_s in ends)
    return shortest, longest


def _say_given(turn: Turn, facts: Facts, when: str) -> None:
    """Settings or light alone: what they make, or that they are noted."""
    f_number, shutter_s, iso = reckoning.exact_settings(turn.facts.updated(facts))
    if shutter_s is None or f_number is None:
        light = TEXTS[f"light.{facts.light}"] if facts.light else TEXTS["late.settings"]
        turn.say(Role.SETTINGS, "review.light", when=when, light=light)
        return
    camera = turn.camera
    settings = Settings(f_number, shutter_s, iso or camera.base_iso)
    look = solving.look_is(turn.facts, shutter_s)
    text = solving.settings_text(settings, camera)
    turn.say(Role.SETTINGS, "review.settings", when=when, settings=text, look=look)


# a measured frame


def frame(turn: Turn, report: FrameReport, when: str, picture: str | None) -> None:
    """What a frame of then shows, with its marked picture."""
    when = _capital(when)
    areas = report.clipping.areas
    match report.advice:
        case _ if shows_nothing(report):
            turn.say(Role.SETTINGS, "review.frame_nothing", when=when)
        case Advice.DARKER:
            stops = measures.stops(report.room_stops or -2 / 3)
            turn.say(Role.SETTINGS, "review.frame_darker", when=when, stops=stops)
            _say_area(turn, Role.CHECK, areas, AreaKind.WHITE_WATER, "frame.white_water", when)
        case Advice.BRIGHTER:
            stops = measures.stops(report.room_stops or 0.0)
            key = f"review.frame_room{frames.or_more(report)}"
            turn.say(Role.SETTINGS, key, when=when, stops=stops)
        case Advice.REFRAME:
            _say_area(turn, Role.SETTINGS, areas, AreaKind.SKY_GAP, "review.frame_sky", when)
        case Advice.ASK:
            _say_area(turn, Role.SETTINGS, areas, AreaKind.UNSURE, "review.frame_unsure", when)
        case _:
            turn.say(Role.SETTINGS, "review.frame_held", when=when)
    if report.mat_left_out:
        turn.say(Role.ASSUMPTION, "frame.mat")
    show_picture(turn, report, picture)
    _close(turn)
    if not any(part.role is Role.SAFETY for part in turn.parts):
        findings_said.say(turn, findings_said.lines_of_then(report))


def _say_area(
    turn: Turn, role: Role, areas: tuple[ClippedArea, ...], kind: AreaKind, key: str, when: str
) -> None:
    found = [area for area in areas if area.kind is kind]
    if found:
        worst = max(found, key=lambda area: area.share)
        key = f"review.frame_unsure{frames.of_part(worst)}" if kind is AreaKind.UNSURE else key
        turn.say(role, key, when=when, **frames.area_values(worst))


def show_picture(turn: Turn, report: FrameReport, picture: str | None) -> None:
    """The marked picture goes after the answer, with a caption of its own."""
    if picture is None:
        return
    alternative = frames.alternative_text(report)
    turn.do(
        Say(
            body=access.caption(turn, frames.caption(report), alternative),
            keys=("frame.caption",),
            picture=picture,
            alt=alternative,
        )
    )
