"""What people wonder about beside the numbers: a tilt, two looks in one frame, a filter's doing."""

from __future__ import annotations

import math
import re
from collections.abc import Callable, Mapping
from typing import Final

from bot.dialogue import reckoning
from bot.dialogue.aims import aim_of
from bot.dialogue.compose import Role
from bot.dialogue.meaning.asking import asked_directly, is_asking
from bot.dialogue.meaning.said import Said
from bot.dialogue.meaning.sentences import sentences_of
from bot.dialogue.reading import read
from bot.dialogue.reading.foreign import glossed
from bot.dialogue.solving import watch_text
from bot.dialogue.steps.asked import filter_answers
from bot.dialogue.steps.walk import base, reasons
from bot.dialogue.texts import measures
from bot.dialogue.tongues import of_each, whole_words
from bot.dialogue.turn import Turn
from core.water import Look

_Say = Callable[[Turn, str], bool]
#: A tilt below this leans nothing that is seen (own rule) [deg].
_LEAST_TILT_DEG: Final = 0.5
#: A pool is calm in so many times the fall's time at least (own rule: three stops).
_POOL_TIMES: Final = 8.0
_CONTRAST: Final = whole_words("wondered.contrast")


def answer(turn: Turn, said: Said) -> str | None:
    """Answer such a question on a walk.

    Args:
        turn: the answer under construction.
        said: the message.

    Returns:
        The other sentences of the message, in English; None when it wonders about nothing here.
    """
    if turn.context.conversation.walk is None or turn.is_at_home:
        return None
    sentences = sentences_of(said.typed)
    for place, sentence in enumerate(sentences):
        say = _asked(sentence.casefold(), said)
        if say is not None and say(turn, said.english):
            others = [*sentences[:place], *sentences[place + 1 :]]
            turn.reason("why.practice")
            if say is _say_polariser_water:
                return ""  # what else is said of it is of the same
            return ". ".join(glossed(other, said.language).strip(" .") for other in others)
    return None


def _asked(sentence: str, said: Said) -> _Say | None:
    """Who answers a sentence that asks; None where it wonders about nothing here."""
    direct = asked_directly(sentence)
    if direct == sentence and not is_asking(sentence, said.language) and "?" not in sentence:
        return None
    for name, say in _SAY.items():
        pattern = _PATTERNS[name].get(said.language, _PATTERNS[name]["en"])
        if pattern.search(direct):
            of_light = name == "two_looks" and _CONTRAST.search(said.typed.casefold())
            return None if of_light else say
    return None


def _say_tilt(turn: Turn, text: str) -> bool:
    """A level camera, where it holds the top: from which focal length, and what the tilt leans."""
    del text
    facts = turn.facts
    if facts.fall_height_m is None or facts.distance_m is None or reckoning.is_stream(facts):
        turn.say(Role.SETTINGS, "wondered.tilt_plain")
        return True
    sensor = reckoning.sensor_of(facts)
    framing = reckoning.framing_of(facts, reckoning.nearest_of(facts))
    focal_mm = reckoning.focal_of(facts) or framing.focal_mm
    tilt_deg = framing.tilt_deg
    if tilt_deg < _LEAST_TILT_DEG or math.isinf(framing.level_mm):
        turn.say(Role.SETTINGS, "wondered.tilt_plain")
        return True
    across_mm = sensor.short_mm if reckoning.upright(facts) else sensor.long_mm
    turn.say(
        Role.SETTINGS,
        "wondered.tilt",
        level=measures.focal(framing.level_mm, sensor.crop_factor),
        tilt=measures.plain(tilt_deg),
        lean=measures.plain(_lean_deg(tilt_deg, across_mm / 2, focal_mm)),
    )
    side_mm = reckoning.vertical_side_mm(facts, sensor)
    reasons.explain_framing(turn, framing, side_mm, reckoning.nearest_of(facts))
    return True


def _lean_deg(tilt_deg: float, aside_mm: float, focal_mm: float) -> float:
    """How far an upright line at the border leans in [deg].

    Upright lines meet where the picture's middle is focal / tan(tilt) away.

    Source: central projection, the vanishing point of the vertical.
    """
    return math.degrees(math.atan(aside_mm * math.tan(math.radians(tilt_deg)) / focal_mm))


def _say_two_looks(turn: Turn, text: str) -> bool:
    """Two exposures of one frame, with the times that the two looks take here."""
    now = base.standing(turn)
    if now.camera.sensor.fixed_f_number is not None:
        return False
    fall_s = reckoning.exact_settings(read(text))[1] or now.settings.shutter_s
    pool_s = max(now.flow.times(Look.SILKY)[1], fall_s * _POOL_TIMES)
    turn.say(
        Role.SETTINGS,
        "wondered.two_looks",
        time=watch_text(fall_s, now.camera),
        long=watch_text(pool_s, now.camera),
    )
    return True


def _say_why_long(turn: Turn, text: str) -> bool:
    """What a short time and a longer one make of this water, and that only it shall move."""
    del text
    now = base.standing(turn)
    if now.camera.sensor.fixed_f_number is not None:
        turn.say(Role.SETTINGS, "wondered.why_long_phone")
        return True
    crisp_s = max(now.flow.times(Look.TEXTURED)[0] / 2, now.camera.shortest_s)
    thread_s = now.flow.time_for(aim_of(turn, Look.TEXTURED))
    turn.say(
        Role.SETTINGS,
        "wondered.why_long",
        short=watch_text(crisp_s, now.camera),
        long=watch_text(thread_s, now.camera),
    )
    reasons.explain_share(turn, now.flow, thread_s, now.camera)
    return True


def _say_filter_dark(turn: Turn, text: str) -> bool:
    """The polariser takes light: the time that makes up for it."""
    del text
    if turn.walk.given is None or (turn.facts.nd_on_stops and not turn.facts.polariser_on):
        return False
    filter_answers.say_polariser_dark(turn)
    return True


def _say_long_mode(turn: Turn, text: str) -> bool:
    """Where a phone has its long exposure; a camera has times."""
    del text
    if not reckoning.is_phone(turn.facts):
        return False
    turn.say(Role.SETTINGS, "wondered.long_mode")
    return True


def _say_polariser_water(turn: Turn, text: str) -> bool:
    """That the filter hardly changes white water."""
    del text
    turn.say(Role.SETTINGS, "wondered.polariser_water")
    return True


_SAY: Final[Mapping[str, _Say]] = {
    "tilt": _say_tilt,
    "two_looks": _say_two_looks,
    "polariser_water": _say_polariser_water,
    "why_long": _say_why_long,
    "filter_dark": _say_filter_dark,
    "long_mode": _say_long_mode,
}
_PATTERNS: Final = {
    name: {
        language: re.compile(said, re.IGNORECASE)
        for language, said in of_each(f"wondered.{name}").items()
    }
    for name in _SAY
}
