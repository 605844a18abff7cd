"""What is said on questions around a visit: packing, who waits at home, cards, groups, review."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue import reckoning, solving
from bot.dialogue.compose import Role
from bot.dialogue.reading import read
from bot.dialogue.reading.spoken_numbers import SIMPLE
from bot.dialogue.steps.anywhere import planning
from bot.dialogue.steps.asked import bag_filters
from bot.dialogue.steps.visits import rough_card
from bot.dialogue.steps.walk import base
from bot.dialogue.texts import TEXTS, measures
from bot.dialogue.turn import Turn
from core.camera import Camera
from core.light import LIGHTS
from core.series import f_number_label, iso_label, nearest, shutter_label, time_marks
from core.water import look_of

#: The filter for full sun (common practice).
_SUN_ND_STOPS: Final = 6.0
#: Cloths that are enough for a fall (common practice).
_LEAST_CLOTHS: Final = 4
_COUNT: Final = rf"\b(?P<n>\d{{1,2}}|an?|{'|'.join(SIMPLE)})"
_CLOTHS: Final = re.compile(rf"{_COUNT} (?:dry )?(?:cloths?|towels?)\b")
_LAMPS: Final = re.compile(rf"{_COUNT} (?:head ?)?(?:torch(?:es)?|lamps?|lights?)\b")
#: Asked for, it is answered alone.
_ONE_THING: Final = re.compile(
    r"\b(?:cloths?|towels?|rags?|gloves?|lamps?|torch(?:es)?|batter(?:y|ies)|cards?|tripods?)\b"
)
#: A picture in a round takes so long [min], and a group brings so many (common practice).
_MINUTES_EACH: Final = 4
_USUAL_PICTURES: Final = 8
_PICTURES: Final = re.compile(
    r"\b(?P<n>\d{1,2}|[a-z]+) (?:pictures|photos|frames|people|students|participants)\b"
)
#: Up to here a large sensor's grain will do (common practice).
_GRAINLESS: Final = 1600
#: Words beside which a light is none of now: a card is made for it.
_TO_COME: Final = re.compile(r"\b(?:if|when|tomorrow|will|later|forecast)\b", re.IGNORECASE)
_WANTS: Final = re.compile(
    r"\W*(?:tell|sing|write|recommend|translate|help|what|who|how|where|when|why|do|does|did|is|are"
    r"|can|could)\b",
    re.IGNORECASE,
)
#: Two times in a question: "why 1/5 and not 1 s".
_TIMES: Final = re.compile(
    r"(\d+/\d+|\d+(?:\.\d+)?)(?: ?(?:s|sec|seconds?)\b)?,?"
    r" (?:and not|instead of|rather than|not|or|over|better than|and no) (?:a |the )?"
    r"(\d+/\d+|\d+(?:\.\d+)?)(?: ?(?:s|sec|seconds?)\b)?"
)


def say_card(turn: Turn, text: str) -> None:
    """Rough settings for a card before the trip; those that were given, where there are some."""
    given = turn.walk.given
    if given is not None:
        settings = solving.settings_on(given, base.standing(turn).camera)
        turn.say(Role.SETTINGS, "where.given", settings=settings)
        return
    turn.parts.extend(rough_card.parts(turn, read(_TO_COME.sub(" ", text)).light))


def say_no_wait(turn: Turn, text: str) -> None:
    """Who does not wait for shade: a shaded section, or a filter with its time in the sun."""
    del text
    now = base.standing(turn)
    bare = turn.facts.nd_stops == ()
    turn.say(
        Role.SETTINGS,
        "asked.no_wait_bare" if bare else "asked.no_wait",
        f_number=f_number_label(now.wanted.f_number, now.camera.dial),
        iso=iso_label(now.wanted.iso, now.camera.dial),
        time=rough_card.right_time(
            now.wanted, LIGHTS["full sun"].ev100, now.camera, 0.0 if bare else _SUN_ND_STOPS
        ),
    )


def say_grain(turn: Turn, text: str) -> None:
    """Grain: which ISO shows it, and where it comes from."""
    review = turn.context.conversation.review
    of_frames = max((frame.iso or 0.0 for frame in review.frames), default=0.0) if review else 0.0
    now = base.standing(turn)
    iso = read(text).iso or of_frames or now.settings.iso
    key = "asked.grain_high" if iso > _GRAINLESS else "asked.grain"
    turn.say(Role.SETTINGS, key, iso=iso_label(iso, now.camera.dial))


def say_pack(turn: Turn, text: str) -> None:
    """What to pack; where too little of it was told, that first."""
    said = text.casefold()
    needed = ((_CLOTHS, _LEAST_CLOTHS), (_LAMPS, turn.trip.people or 1))
    for pattern, least in needed:
        found = pattern.search(said)
        if found and _count(found["n"]) < least:
            turn.say(Role.SETTINGS, "asked.pack_short")
            break
    turn.roomy = planning.is_planning(turn)
    turn.say(Role.SETTINGS, "asked.pack")
    if not (_ONE_THING.search(said) or reckoning.is_phone(turn.facts)):
        _say_camera(turn)
    for weather in turn.trip.weather:
        turn.say(Role.CHECK, f"asked.pack_{weather}")


def _say_camera(turn: Turn) -> None:
    """The camera's things, with the filters of one's own that are of use."""
    filters = bag_filters.usual_or_own(turn)
    key = "asked.pack_camera" if filters else "asked.pack_bare"
    turn.say(Role.CHECK, key, filters=filters)


def _count(said: str) -> float:
    return float(said) if said.isdigit() else SIMPLE.get(said, 1)


def say_group_review(turn: Turn, text: str) -> None:
    """A round of critique: what comes in which order, and how long it takes."""
    found = _PICTURES.search(text.casefold())
    said = found["n"] if found else ""
    number = int(said) if said.isdigit() else SIMPLE.get(said, _USUAL_PICTURES)
    minutes = str(round(number) * _MINUTES_EACH)
    turn.say(Role.SETTINGS, "asked.group_review", number=str(round(number)), minutes=minutes)


def say_why_time(turn: Turn, text: str) -> None:
    """Why this time and not that: what each of them makes of the water here."""
    now = base.standing(turn)
    found = _TIMES.search(text.casefold())
    times = [_seconds(piece) for piece in found.groups()] if found else []
    known = [time_s for time_s in times if time_s is not None]
    if len(known) < len(times) or not known:
        known = [now.settings.shutter_s, min(now.settings.shutter_s * 4, now.camera.longest_s)]
    first_s, other_s = known
    turn.say(
        Role.SETTINGS,
        "asked.why_time",
        time=_label(first_s, now.camera),
        look=_look(turn, first_s),
        other=_label(other_s, now.camera),
        other_look=_look(turn, other_s),
    )
    wished = reckoning.wished_look(turn.facts)
    fitting = (time_s for time_s in known if look_of(now.flow.share(time_s)) is wished)
    turn.say(
        Role.CHECK,
        "asked.card_look",
        look=TEXTS[f"look.{wished.value}"],
        time=_label(next(fitting, now.wanted.shutter_s), now.camera),
    )


def _seconds(piece: str) -> float | None:
    return read(piece, expecting=frozenset({"shutter_s"})).shutter_s


def _label(time_s: float, camera: Camera) -> str:
    return shutter_label(nearest(time_marks(camera.dial), time_s).exact, camera.dial)


def _look(turn: Turn, time_s: float) -> str:
    facts = turn.facts
    flow = reckoning.flow_of(facts)
    share = flow.share(time_s)
    return f"{TEXTS[f'look.{look_of(share).value}']}, {measures.crossed(share)}"


def say_next_time(turn: Turn, text: str) -> None:
    """One thing to try next time: the ladder around the time of this walk."""
    del text
    now = base.standing(turn)
    time_s = now.settings.shutter_s
    turn.say(
        Role.SETTINGS,
        "asked.next_time",
        shorter=_label(max(time_s / 2, now.camera.shortest_s), now.camera),
        time=_label(time_s, now.camera),
        longer=_label(min(time_s * 2, now.camera.longest_s), now.camera),
    )


def say_other(turn: Turn, text: str) -> None:
    """Talk of other things: what is asked is beyond the bot, what is told is only heard."""
    asked = text.strip().endswith("?") or _WANTS.match(text) is not None
    turn.say(Role.SETTINGS, "talk.other" if asked else "talk.other_told")


def say_channel(turn: Turn, text: str) -> None:
    """One of the three histograms at its right end."""
    del text
    given = turn.walk.given
    if given is None:
        turn.say(Role.SETTINGS, "asked.channel")
        return
    camera = turn.camera
    less_s = max(given.shutter_s * 2 ** (-1 / 3), camera.shortest_s)
    turn.say(
        Role.SETTINGS,
        "asked.channel_now",
        settings=solving.settings_on(given, camera),
        less=_label(less_s, camera),
    )
