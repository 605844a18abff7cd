"""Which topic of the trade a message asks of, or which cause of a bad frame it complains of."""

from __future__ import annotations

import re
from collections.abc import Mapping
from typing import Final

from bot.dialogue import causes
from bot.dialogue.causes import Cause
from bot.dialogue.facts import Facts, Symptom
from bot.dialogue.meaning import sights, topics
from bot.dialogue.meaning.arrival import is_arrival
from bot.dialogue.meaning.asking import asks, asks_at_once, offers_two
from bot.dialogue.meaning.said import Said
from bot.dialogue.meaning.wordings import topic_by_words
from bot.dialogue.meaning.words import tokens
from bot.dialogue.slots import KIT_SLOTS
from bot.dialogue.steps.anywhere import planning
from bot.dialogue.tongues import in_any
from bot.dialogue.turn import Turn

#: A sight is meant from this nearness on; beside facts, sights and topics from the higher one on
#: (own rule, on the half of the messages on which rules may be written).
_SIGHT: Final = 0.26
_SURE: Final = 0.31
#: A topic beside facts from here on (own rule, as above).
_SURE_BESIDE: Final = 0.35
#: From here on a message complains of a frame at all, whatever the cause (own rule, as above).
_DOUBTED: Final = 0.23
#: So much nearer than the symptom that was read, another cause is meant (own rule, as above).
_SURELY_OTHER: Final = 0.1
#: Facts beside which a message may still be a complaint: of the frame, not of the place.
_OF_A_FRAME: Final = frozenset(
    {"f_number", "shutter_s", "iso", "focal_mm", "polariser_on", "nd_on_stops", "light", "wind"}
    | {"has_tripod", "hand_held", "camera_format"}
)
#: What the water is called tells nothing: "the cascade burns out".
_BY_NAME: Final = frozenset({"stream", "section"})
#: Light and wind are told of a day, not of a frame.
_COMPLAINING: Final = (_OF_A_FRAME - {"light", "wind"}) | {"symptoms"} | _BY_NAME
#: Facts that words of a topic hold without telling them: "my cascades", "on the tripod".
_VAGUE: Final = frozenset(
    {"stream", "has_tripod", "hand_held", "has_polariser", "polariser_on", "light", "look", "wind"}
    | {"automatic", "camera_format", "section", "portrait", "flow"}
)
#: So much nearer to a topic than to what tells facts, a message asks without a word that asks
#: (own rule, on the examples left out in turn: 2 in 100 of what tells facts come so near).
_PLAINLY: Final = 0.2
#: What the words of a question hold without telling it: "nothing blinks here, where's that shown".
IN_ITS_WORDS: Final[Mapping[str, frozenset[str]]] = {
    "warning_where": frozenset({"blink"}),
    "white_or_long": frozenset({"symptoms", "blink"}),
}
#: What is asked of the water and of wet rock is answered, whatever else is told.
_OF_SAFETY: Final = frozenset({"wading", "climb"})
#: What a question may tell beside what it asks: "only my phone here, can it do this".
_BESIDE_A_QUESTION: Final = _VAGUE | _OF_A_FRAME | KIT_SLOTS
#: Causes that the answers to these symptoms treat, too.
_ALSO: Final[Mapping[Symptom, frozenset[str]]] = {
    Symptom.BLACK_ROCK: frozenset({"underexposed", "contrast_too_great"}),
    Symptom.JUST_WHITE: frozenset({"time_too_long"}),
    Symptom.NO_TEXTURE: frozenset({"water_clipped"}),
    Symptom.TOO_BRIGHT: frozenset({"water_clipped"}),
    Symptom.SOFT_NEAR: frozenset({"focused_wrong"}),
    Symptom.SOFT_FAR: frozenset({"focused_wrong", "near_too_close"}),
    Symptom.SOFT_ALL: frozenset({"focused_wrong"}),
}
#: What answers a question that was put, whatever stands behind it; "no tripod with me" does not,
#: nor do the many sentences that begin with a "no" in Spanish.
_REPLY: Final = re.compile(
    rf"\s*(?:(?:yes|nope|yeah|yep)\b|{in_any('replies.bare')}\s*(?:[,.;!]|$)"
    r"|no (?:it|i|i'm|we|there|not|the|they|that|this)\b)",
    re.IGNORECASE,
)
#: Topics that complain of what a cause makes: stated, it is treated with the person's numbers.
_COMPLAINTS: Final[Mapping[str, str]] = {
    "just_white": "water_clipped",
    "too_long": "time_too_long",
    "tripod_blur": "shake",
    "front_soft": "near_too_close",
    "leaves": "wind_in_leaves",
    "tilted_up": "tilted_camera",
    "too_wide": "too_wide",
    "grain": "iso_raised",
}
#: Causes that the answers to symptoms treat, with the person's numbers.
SYMPTOMS: Final[Mapping[str, Symptom]] = {
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


def is_no_topic(said: Said, facts: Facts) -> bool:
    """Whether a message tries something, tells numbers that have no place, or replies."""
    unread = bool(facts.unread) and not offers_two(said)
    return facts.ask_what_if or unread or _REPLY.match(said.typed) is not None


def topic_meant(said: Said, facts: Facts) -> str | None:
    """The topic of a message: surely meant where it also tells something."""
    topic = topics.topic_of(said)
    if topic is None or _is_told(topic, said, facts):
        return None
    known = facts.known().keys() - IN_ITS_WORDS.get(topic, frozenset())
    # What is told, not asked, is kept: "just my phone" is a kit, whatever topic it is near to.
    if not known or (topic in _OF_SAFETY and asks(said)):
        return topic
    asked = asks(said) or topics.before_told(said, topic) >= _PLAINLY
    complains = known <= _VAGUE | {"symptoms"} and asks_at_once(said)
    sure = topics.nearness(said)[topic] >= _SURE_BESIDE
    return topic if sure and (complains or (asked and known <= _BESIDE_A_QUESTION)) else None


def _is_told(topic: str, said: Said, facts: Facts) -> bool:
    """Whether what a message tells leads on by itself, where it is near to a topic, too."""
    if topic.startswith(topics.TALK):
        return bool(facts.known())
    if _COMPLAINTS.get(topic) in treated(facts.symptoms):
        return True  # "how come it is nothing but white" has settings, and a reason behind them
    if topic == "polariser_left":
        return facts.light is not None and asks(said)  # the light that is now has settings
    if topic == "noon":
        return facts.light not in {None, "full sun", "hazy sun"}  # "sun's gone now, what settings"
    # "I zoomed in to 55, what settings now" tells which
    return (topic == "lens" and bool(facts.focal_mm)) or (topic, facts.hand_held) == (
        "by_hand",
        False,
    )


def cause_seen(turn: Turn, said: Said, facts: Facts) -> Cause | None:
    """The first cause of what a message tells, None where it tells of no frame or is read well.

    While a visit is planned there are no frames.
    """
    least = _SURE if facts.known().keys() - _BY_NAME else _SIGHT
    plain = Symptom.TOO_BRIGHT in facts.symptoms  # no sight says it better
    if plain or planning.is_planning(turn) or is_arrival(said.english):
        return None
    if not _tells_of_a_frame(said, facts, least):
        return _complained_of(turn, said, facts)
    cause = causes.diagnose(said, causes.scene_of(turn.facts.updated(facts), said.english))[0]
    return None if _is_read(said, cause, facts.symptoms) else cause


def _complained_of(turn: Turn, said: Said, facts: Facts) -> Cause | None:
    """The cause that a topic complains of, where it is stated of a frame that was taken."""
    topic = topics.topic_of(said)
    named = _COMPLAINTS.get(topic or "")
    stated = not asks(said) and not facts.known().keys() - _COMPLAINING
    return Cause(named, 0.0, ()) if named and stated and turn.walk.given is not None else None


def _tells_of_a_frame(said: Said, facts: Facts, least: float) -> bool:
    """Whether the words are near to sights of a frame, and tell nothing of the place."""
    known = facts.known().keys()
    if asks(said) or len(tokens(said.own)) < topics.LEAST_WORDS or known - _COMPLAINING:
        return False
    seen, near = sights.nearest(said)
    return seen not in sights.NO_FRAME and near >= least


def complaint(turn: Turn, said: Said, facts: Facts) -> tuple[Cause, ...]:
    """The causes of what a message complains of, the likeliest first; none of other messages."""
    text = said.english
    if is_no_topic(said, facts) or topic_by_words(text):
        return ()
    if planning.is_planning(turn) or not _tells_of_a_frame(said, facts, _DOUBTED):
        return ()
    found = causes.diagnose(said, causes.scene_of(turn.facts.updated(facts), text))
    topic = topic_meant(said, facts)
    return found if topic is None or is_nearer(said, found[0], topic) else ()


def with_sight(turn: Turn, said: Said, facts: Facts) -> Facts:
    """The facts of a message, and the symptom of what it tells of where words say it better."""
    cause = None if facts.ask_what_if or facts.unread else cause_seen(turn, said, facts)
    symptom = SYMPTOMS.get(cause.name) if cause is not None else None
    if facts.light is not None and facts.symptoms == (Symptom.BLUE_CAST,):
        return facts.model_copy(update={"symptoms": ()})  # it is the light that is blue
    if symptom is Symptom.NO_TEXTURE and Symptom.TOO_FROZEN in facts.symptoms:
        return facts  # "too streaky": words say which way, where the sense knows only streaks
    return facts if symptom is None else facts.model_copy(update={"symptoms": (symptom,)})


def treated(symptoms: tuple[Symptom, ...]) -> set[str]:
    """The causes that the answers to these symptoms treat."""
    own = {name for name, symptom in SYMPTOMS.items() if symptom in symptoms}
    return own.union(*(_ALSO.get(symptom, frozenset()) for symptom in symptoms))


def _is_read(said: Said, cause: Cause, symptoms: tuple[Symptom, ...]) -> bool:
    """Whether the symptoms that were read say the same, or nearly as well."""
    near = sights.nearness(said)
    same = [near[name] for name in treated(symptoms)]
    return bool(symptoms) and near[cause.name] - max(same, default=0.0) < _SURELY_OTHER


def is_nearer(said: Said, cause: Cause, topic: str) -> bool:
    """Whether a message is a complaint rather than a remark on a topic."""
    if _COMPLAINTS.get(topic) == cause.name:
        return True  # a question is never a sight
    return sights.nearness(said)[cause.name] >= topics.nearness(said)[topic]
