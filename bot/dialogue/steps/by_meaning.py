"""Messages matched by meaning: topics of the trade, sights of a frame, small talk."""

from __future__ import annotations

import re
from collections.abc import Callable, Mapping
from typing import Final

from bot.dialogue import causes, reckoning
from bot.dialogue.causes import Cause
from bot.dialogue.compose import Role
from bot.dialogue.facts import Facts, Symptom
from bot.dialogue.meaning import sights, topics
from bot.dialogue.meaning.words import tokens
from bot.dialogue.steps import base, diagnosis, questions_asked, reasons, repeat
from bot.dialogue.steps.questions_asked import is_asking, plainly
from bot.dialogue.texts import TEXTS, measures
from bot.dialogue.turn import Turn
from core.camera import POLARISER_STOPS
from core.series import iso_label, nearest, shutter_label, time_marks

#: A sight is meant from this nearness on, beside facts from the higher one on (own choice, on the
#: half of the messages on which rules may be written).
_SIGHT: Final = 0.35
_SIGHT_BESIDE_FACTS: Final = 0.5
#: Other causes are named for `why` down to this far behind the first (own rule).
_BEHIND: Final = 3.0
#: Most causes that `why` names (own rule: one line).
_MOST_CAUSES: Final = 4
#: Facts beside which a message may still be a complaint: of the frame, not of the place.
_OF_A_FRAME: Final = frozenset(
    {"f_number", "shutter_s", "iso", "focal_mm", "polariser_on", "nd_on_stops", "light", "wind"}
    | {"has_tripod", "hand_held", "camera_format"}
)
#: What asks for a change of brightness by itself.
_TOLD: Final = frozenset({"symptoms", "meter_stops", "change_stops", "blink"})
#: What answers a question that was put, whatever stands behind it.
_REPLY: Final = re.compile(r"\s*(?:no|yes|nope|yeah|yep)\b", re.IGNORECASE)
#: Causes that the answers to symptoms treat, with the person's numbers.
_SYMPTOMS: Final[Mapping[str, Symptom]] = {
    "time_too_long": Symptom.NO_TEXTURE,
    "time_too_short": Symptom.TOO_FROZEN,
    "water_clipped": Symptom.JUST_WHITE,
    "underexposed": Symptom.TOO_DARK,
    "near_too_close": Symptom.SOFT_NEAR,
    "shake": Symptom.SOFT_ALL,
    "diffraction": Symptom.SOFT_ALL,
    "wet_glass": Symptom.SOFT_SPOTS,
    "wind_in_leaves": Symptom.LEAVES_SMEARED,
    "unturned_polariser": Symptom.GLARE,
    "cool_white_balance": Symptom.BLUE_CAST,
    "tilted_camera": Symptom.LEANING,
    "too_wide": Symptom.TOO_SMALL,
}


def answer(turn: Turn, text: str, facts: Facts) -> bool:
    """Answer a message that asks something known, or tells of a cause without numbers.

    Args:
        turn: the answer under construction.
        text: the message in English.
        facts: what was read in it.

    Returns:
        Whether it was answered; otherwise its facts are to be taken in.
    """
    known = facts.known()
    if facts.ask_what_if or facts.unread or (known and not is_asking(text)):
        return False
    if _TOLD & known.keys() or _REPLY.match(text):
        return False
    topic = topics.topic_of(text)
    cause = None if is_asking(text) else _seen(turn, text, facts)
    if cause is not None and _is_nearer(text, cause, topic):
        if cause.name in _SYMPTOMS:
            return False
        _CAUSES[cause.name](turn, text)
    elif topic is not None:
        _TOPICS[topic](turn, text)
    else:
        return False
    if not turn.notes:
        turn.reason("why.practice")
    if not turn.question_put and (repeat.standing(turn) is not None or topic == "talk.greeting"):
        repeat.put_again(turn)
    return True


def with_sight(turn: Turn, text: str, facts: Facts) -> Facts:
    """The facts of a message, and the symptom of what it tells of where none was read."""
    known = facts.known()
    if known.keys() - _OF_A_FRAME or facts.ask_what_if or is_asking(text):
        return facts
    cause = _seen(turn, text, facts)
    symptom = _SYMPTOMS.get(cause.name) if cause is not None else None
    if symptom is None:
        return facts
    return facts.model_copy(update={"symptoms": (symptom,)})


def explain(turn: Turn, text: str, facts: Facts) -> None:
    """Name the causes behind a complaint, the likeliest first, for `why`."""
    if not facts.symptoms:
        return
    found = causes.diagnose(text, causes.scene_of(turn.facts.updated(facts), text))
    likely = [cause for cause in found if cause.score > found[0].score - _BEHIND]
    names = [TEXTS[f"cause_name.{cause.name}"] for cause in likely[:_MOST_CAUSES]]
    turn.reason("why.causes", list=", ".join(names))


def _seen(turn: Turn, text: str, facts: Facts) -> Cause | None:
    """The first cause of what a message tells, None where it tells of no frame."""
    if len(tokens(text)) < topics.LEAST_WORDS:
        return None
    near = sights.nearness(text)
    least = _SIGHT_BESIDE_FACTS if facts.known() else _SIGHT
    if max(near, key=lambda name: near[name]) == sights.TALK or max(near.values()) < least:
        return None
    return causes.diagnose(text, causes.scene_of(turn.facts.updated(facts), text))[0]


def _is_nearer(text: str, cause: Cause, topic: str | None) -> bool:
    """Whether a message is a complaint rather than a remark on a topic."""
    if topic is None:
        return True
    return sights.nearness(text)[cause.name] >= topics.model().nearness(text)[topic]


# answers with the person's own numbers


def _just_white(turn: Turn, text: str) -> None:
    del text
    given = turn.walk.given
    if given is None:
        turn.say(Role.SETTINGS, "answer.just_white")
        return
    now = base.standing(turn)
    less_s = given.shutter_s * 2 ** (-2 / 3)
    turn.say(
        Role.SETTINGS,
        "answer.just_white_now",
        time=shutter_label(given.shutter_s, now.camera.dial),
        less=nearest(time_marks(now.camera.dial), less_s).label,
        share=measures.percent(now.flow.share(given.shutter_s)),
    )
    reasons.explain_share(turn, now.flow, given.shutter_s, now.camera)


def _one_frame(turn: Turn, text: str) -> None:
    del text
    now = base.standing(turn)
    marks = time_marks(now.camera.dial)
    time_s = now.settings.shutter_s
    turn.say(
        Role.SETTINGS,
        "answer.one_frame",
        shorter=nearest(marks, time_s / 2).label,
        time=nearest(marks, time_s).label,
        longer=nearest(marks, min(time_s * 2, now.camera.longest_s)).label,
    )
    turn.reason("why.ladder")


def _polariser_left(turn: Turn, text: str) -> None:
    del text
    now, given = base.standing(turn), turn.walk.given
    on = given is not None and given.polariser_on
    without_s = now.settings.shutter_s / (2**POLARISER_STOPS if on else 1.0)
    marks = time_marks(now.camera.dial)
    turn.say(
        Role.SETTINGS,
        "answer.polariser_left",
        time=nearest(marks, without_s).label,
        longer=nearest(marks, min(without_s * 2**POLARISER_STOPS, now.camera.longest_s)).label,
    )


def _iso_raised(turn: Turn, text: str) -> None:
    del text
    facts, given = turn.facts, turn.walk.given
    camera = reckoning.camera_of(facts, reckoning.Assumed())
    iso = reckoning.exact_settings(facts)[2] or (given.iso if given else None)
    turn.say(
        Role.SETTINGS,
        "cause.iso_raised_plain" if iso is None else "cause.iso_raised",
        base=iso_label(camera.base_iso, camera.dial),
        iso=iso_label(iso or camera.base_iso, camera.dial),
    )


def _symptom(say: Callable[[Turn], None]) -> Callable[[Turn, str], None]:
    def said(turn: Turn, text: str) -> None:
        del text
        say(turn)

    return said


_Answer = Callable[[Turn, str], None]

_TOPICS: Final[Mapping[str, _Answer]] = {
    "silky_time": questions_asked.say_time,
    "just_white": _just_white,
    "too_long": questions_asked.say_time,
    "need_nd": questions_asked.say_nd,
    "noon": plainly("asked.noon"),
    "polariser_first": plainly("asked.polariser_first"),
    "polariser_stops": questions_asked.say_polariser_stops,
    "polariser_turn": plainly("asked.polariser_turn"),
    "polariser_left": _polariser_left,
    "both_filters": plainly("asked.both_filters"),
    "f_number": questions_asked.say_f_number,
    "why_not_f22": questions_asked.say_why_not_f22,
    "focus_where": questions_asked.say_focus,
    "focus_on_water": plainly("answer.focus_on_water"),
    "front_soft": _symptom(diagnosis.soft_depth),
    "tripod_blur": _symptom(diagnosis.soft_all),
    "iso": questions_asked.say_iso,
    "leaves": questions_asked.say_leaves,
    "spray": plainly("symptom.spots"),
    "raw": plainly("asked.raw"),
    "white_balance": plainly("asked.white_balance"),
    "histogram": plainly("asked.histogram"),
    "meter": plainly("asked.meter"),
    "by_hand": questions_asked.say_by_hand,
    "phone": plainly("asked.phone"),
    "lens": questions_asked.say_lens,
    "best_time": plainly("asked.best_time"),
    "sky": plainly("asked.sky"),
    "edges": plainly("answer.edges"),
    "tilted": plainly("answer.tilted"),
    "one_frame": _one_frame,
    "too_wide": _symptom(diagnosis.too_small),
    "tilted_up": _symptom(diagnosis.leaning),
    "eye_height": plainly("answer.eye_height"),
    "carrying": plainly("answer.carrying"),
    "looking_up": plainly("answer.looking_up"),
    "time_forgotten": questions_asked.say_turn_back,
    "stay": plainly("asked.stay"),
    "permit": plainly("asked.permit"),
    "choose": plainly("asked.choose"),
    "wading": plainly("answer.wading"),
    "climb": plainly("answer.climb"),
    "hunting": plainly("answer.hunting"),
    "stabiliser": plainly("asked.stabiliser"),
    "form": plainly("asked.form"),
    "mode": plainly("asked.mode"),
    "talk.thanks": plainly("thanks"),
    "talk.greeting": plainly("hello"),
    "talk.robot": plainly("talk.robot"),
    "talk.insult": plainly("talk.insult"),
    "talk.rescue": plainly("talk.rescue"),
    "talk.weather": plainly("talk.weather"),
    "talk.other": plainly("talk.other"),
}

_CAUSES: Final[Mapping[str, _Answer]] = {
    "contrast_too_great": plainly("cause.contrast_too_great"),
    "mixed_light": plainly("asked.noon"),
    "iso_raised": _iso_raised,
    "automatic_mode": plainly("asked.mode"),
    "focused_wrong": plainly("answer.focus_on_water"),
    "polariser_in_the_dark": _polariser_left,
    "nd_cast": plainly("cause.nd_cast"),
    "filter_corners": plainly("cause.filter_corners"),
    "fogged_glass": plainly("cause.fogged_glass"),
    "stray_light": plainly("cause.stray_light"),
    "sky_gap": plainly("asked.sky"),
    "border_clutter": plainly("answer.edges"),
    "horizon_tilted": plainly("answer.tilted"),
    "low_flow": plainly("cause.low_flow"),
}
