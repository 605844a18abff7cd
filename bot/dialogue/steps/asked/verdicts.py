"""Questions that want a yes or a no: that first, then the number behind it."""

from __future__ import annotations

import re
from collections.abc import Callable
from dataclasses import dataclass
from typing import Final

from bot.dialogue import reckoning
from bot.dialogue.compose import Role
from bot.dialogue.facts import Facts
from bot.dialogue.reading import read
from bot.dialogue.reading.inventory import POLARISER
from bot.dialogue.solving import time_text, watch_text
from bot.dialogue.steps.anywhere import repeat
from bot.dialogue.steps.walk import base, keep, reasons
from bot.dialogue.steps.walk.base_said import RIGHT_STOPS
from bot.dialogue.steps.walk.taken import DIM_EV
from bot.dialogue.texts import TEXTS, measures
from bot.dialogue.turn import Turn
from core.camera import POLARISER_STOPS
from core.exposure import Settings
from core.light import LIGHTS, metered_level
from core.optics import circle_of_confusion_mm, depth_limits_m
from core.series import f_number_label
from core.water import look_of

#: Up to so many heights away is usual for a whole fall, and up to so many a little beyond (common
#: practice: 1 to 1.5; own rule for the rest).
USUAL_HEIGHTS: Final = (1.0, 1.5)
_LITTLE_BEYOND: Final = 2.5

_IT: Final = r"(?:it|that|this)"
_MATTERS: Final = re.compile(
    rf"\b(?:does|do|will|would) (?:{_IT}|they) (?:really )?(?:matter|hurt|harm)\b\W*"
    rf"|\bis {_IT} (?:a problem|bad|wrong|ok|okay|fine|all right)\b\W*|\bdoes {_IT} cost\b[^?]*\?"
)
_POLARISER: Final = re.compile(rf"\b{POLARISER}\b")
_DISTANCE: Final = re.compile(
    rf"\b(?:is {_IT}|am i|are we|is (?P<told>\d[\w. ]*)|would {_IT} be|do i stand|i stand)"
    r" (?:(?:much|maybe|perhaps|standing|a bit|way) )*too (?P<way>far|close|near)\b"
    r"(?: (?:away|off|back|from it|to it))*\W*"
)
_FOCUS: Final = re.compile(
    rf"\b(?:is|could|was) (?:{_IT}|the)(?: be)? (?:a |the |my |out of |bad |wrong )*"
    r"(?:focus\w*)\b\W*"
)
_LEAVES: Final = re.compile(r"\b(?:leaf|leaves|ferns?|foliage|branches|twigs|grass)\b")
#: "Ferns smeared, rock beside them sharp: cause?"
_SMEARED: Final = re.compile(r"\b(?:smear\w*|blur\w*|soft|unsharp|streak\w*)\b")
_CAUSE: Final = re.compile(r"\bcauses?\b|\bwhy\b|\bwhat(?:'s| is| went)? (?:the reason|wrong)\b")
_RIGHT: Final = re.compile(
    rf"\b(?:(?:is|are|would) (?:{_IT}|they|those)(?: be)? )?"
    r"(?:right|ok|okay|good|correct|fine)(?: (?:here|now|for (?:this|that|here|it)|in this light))*"
    r"\W*$"
)
_ASKS_RIGHT: Final = re.compile(rf"\b(?:is|are|would) (?:{_IT}|they|those|f ?/?\d|1/\d|\d)")


@dataclass(frozen=True)
class _Asked:
    """A question that was found: who answers it, and what the message tells without it."""

    say: Callable[[Turn, str], None]
    rest: str


def answer(turn: Turn, text: str) -> str | None:
    """Answer a question for a yes or a no.

    Args:
        turn: the answer under construction.
        text: the message in English.

    Returns:
        What else the message says, to be read for facts; None when it asks nothing of the kind.
    """
    asked = _asked(text.casefold())
    if asked is None:
        return None
    asked.say(turn, text)
    if not turn.notes:
        turn.reason("why.practice")
    return asked.rest


def _asked(said: str) -> _Asked | None:
    if _MATTERS.search(said) and _POLARISER.search(said):
        return _Asked(_say_polariser_matters, _MATTERS.sub(" ", said))
    if found := _DISTANCE.search(said):
        told = f" {found['told']} away " if found["told"] else " "
        rest, far = said.replace(found[0], told), found["way"] == "far"
        return _Asked(lambda turn, _: _say_distance(turn, rest, far=far), rest)
    if _FOCUS.search(said) and _LEAVES.search(said):
        return _Asked(_say_focus, _LEAVES.sub(" ", _FOCUS.sub(" ", said)))
    if _CAUSE.search(said) and _LEAVES.search(said) and _SMEARED.search(said):
        return _Asked(_say_wind, "")
    asked = _ASKS_RIGHT.search(said) or said.rstrip().endswith("?")
    if _RIGHT.search(said) and asked and _tells_settings(said):
        return _Asked(_say_right, _RIGHT.sub(" ", said))
    return None


def _tells_settings(said: str) -> bool:
    told = read(said)
    return told.shutter_s is not None and not told.ask_what_if


def _say_polariser_matters(turn: Turn, text: str) -> None:
    """Whether a polariser that is on matters: where light is short, or the look is lost by it."""
    del text
    now, facts = base.standing(turn), turn.facts
    given = turn.walk.given
    on = given is not None and given.polariser_on
    bare_s = now.settings.shutter_s / (2**POLARISER_STOPS if on else 1.0)
    longer_s = min(bare_s * 2**POLARISER_STOPS, now.camera.longest_s)
    light = LIGHTS.get(facts.light or "")
    dim = light is not None and light.ev100 <= DIM_EV
    lost = look_of(now.flow.share(longer_s)) is not reckoning.wished_look(facts)
    turn.say(
        Role.SETTINGS,
        "verdict.polariser_yes" if dim or lost else "verdict.polariser_no",
        time=time_text(bare_s, now.camera),
        longer=time_text(longer_s, now.camera),
    )
    reasons.explain_polariser(turn, bare_s, longer_s)


def _say_distance(turn: Turn, told: str, *, far: bool) -> None:
    """Whether the place is too far, or else too near, in heights of the fall."""
    facts = turn.facts.updated(read(told, units=turn.units))
    if facts.fall_height_m is None or facts.distance_m is None or reckoning.is_stream(facts):
        turn.say(Role.SETTINGS, "verdict.distance_unknown")
        return
    heights = facts.distance_m / facts.fall_height_m
    framing = reckoning.framing_of(facts, None)
    focal = measures.focal(framing.focal_mm, reckoning.sensor_of(facts).crop_factor)
    if facts.camera_format is None:
        focal = f"{focal} ({TEXTS['format.full frame']})"
    key = f"verdict.{_far(heights) if far else _near(heights)}"
    turn.say(Role.SETTINGS, key, heights=measures.plain(heights), focal=focal)
    turn.reason(
        "why.heights",
        distance=measures.fine_length(facts.distance_m, turn.units),
        height=measures.fine_length(facts.fall_height_m, turn.units),
        heights=measures.plain(heights),
    )


def _far(heights: float) -> str:
    if heights <= USUAL_HEIGHTS[1]:
        return "distance_usual"
    return "far_little" if heights <= _LITTLE_BEYOND else "far_yes"


def _near(heights: float) -> str:
    return "distance_usual" if heights >= USUAL_HEIGHTS[0] else "near_yes"


def _say_focus(turn: Turn, text: str) -> None:
    """Leaves that are soft beside sharp rock: wind, or nearer than the depth reaches."""
    facts = turn.facts.updated(read(text))
    near_m = _sharp_from_m(turn, facts)
    told_m = reckoning.nearest_of(facts)
    now = base.standing(turn)
    if near_m is None:
        turn.say(Role.SETTINGS, "verdict.focus_plain")
    else:
        held = told_m is not None and near_m <= told_m * _NEARLY
        turn.say(
            Role.SETTINGS,
            "verdict.focus_no" if held else "verdict.focus_unless",
            f_number=f_number_label(now.settings.f_number, now.camera.dial),
            near=measures.length(told_m if held and told_m else near_m, turn.units),
        )
    standing = repeat.standing(turn)
    if standing is not None and standing.name == "leaves":
        keep.answer_leaves(turn, "yes")  # who tells of soft leaves has said that they move
    else:
        keep.leaf_frame(turn)


def _say_wind(turn: Turn, text: str) -> None:
    """Leaves that are smeared: the wind, and the frame that freezes them."""
    del text
    turn.say(Role.SETTINGS, "verdict.wind")
    keep.leaf_frame(turn)


#: A near limit that lies behind the thing by less holds it (own rule: the eye sees no 5 %).
_NEARLY: Final = 1.05


def _sharp_from_m(turn: Turn, facts: Facts) -> float | None:
    """From where on the frame is sharp [m], focused as it was told; None where that is unknown."""
    now = base.standing(turn)
    focal_mm, focus_m = reckoning.focal_of(facts), reckoning.focus_of(facts)
    given = turn.walk.given
    focus_m = given.focus_m if given is not None and given.focus_m else focus_m
    if focal_mm is None or focus_m is None or now.camera.sensor.fixed_f_number is not None:
        return None
    coc_mm = circle_of_confusion_mm(now.camera.sensor.diagonal_mm)
    return depth_limits_m(focal_mm, now.settings.f_number, focus_m, coc_mm)[0]


def _say_right(turn: Turn, text: str) -> None:
    """Whether told settings are right here: by the light, bare and with what is at hand."""
    told = read(text, units=turn.units)
    facts, now = turn.facts.updated(told), base.standing(turn)
    f_number, shutter_s, iso = reckoning.exact_settings(told)
    settings = Settings(
        f_number or now.settings.f_number,
        shutter_s or now.settings.shutter_s,
        iso or now.camera.base_iso,
    )
    reasons.explain_share(turn, now.flow, settings.shutter_s, now.camera)
    light = LIGHTS.get(facts.light or "")
    if light is None:
        _say_right_look(turn, now, settings)
        return
    filters = (POLARISER_STOPS if facts.polariser_on else 0.0) + (facts.nd_on_stops or 0.0)
    over = metered_level(settings, light.ev100, filters)
    named = TEXTS["verdict.filtered" if filters else "verdict.bare"]
    values = {"light": TEXTS[f"light.{facts.light}"], "filters": named}
    reasons.explain_level(turn, settings, facts.light or "", filters)
    if abs(over) <= RIGHT_STOPS:
        turn.say(Role.SETTINGS, "verdict.right_yes", **values)
    else:
        time = watch_text(settings.shutter_s * 2**-over, now.camera)
        turn.say(Role.SETTINGS, "verdict.right_no", **values, **_off(over), time=time)
    after = over - POLARISER_STOPS
    if facts.has_polariser and not facts.polariser_on and abs(after) > RIGHT_STOPS:
        turn.say(Role.CHECK, "verdict.right_polariser", **_off(after))


def _off(over: float) -> dict[str, str]:
    side = TEXTS["side.bright" if over > 0 else "side.dark"]
    return {"stops": measures.stops(over), "side": side}


def _say_right_look(turn: Turn, now: base.Standing, settings: Settings) -> None:
    """Without a light the look alone can be judged."""
    wished = reckoning.wished_look(turn.facts)
    right = look_of(now.flow.share(settings.shutter_s)) is wished
    turn.say(
        Role.SETTINGS,
        "verdict.look_yes" if right else "verdict.look_no",
        look=TEXTS[f"look.{wished.value}"],
        time=time_text(now.wanted.shutter_s, now.camera),
    )
