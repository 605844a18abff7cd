"""Messages matched by meaning: topics of the trade, sights of a frame, small talk."""

from __future__ import annotations

import re
from collections.abc import Mapping
from typing import Final

from bot.dialogue import causes
from bot.dialogue.causes import Cause
from bot.dialogue.facts import Facts, Symptom
from bot.dialogue.meaning import sights, topics
from bot.dialogue.meaning.arrival import is_arrival, names_fall_here, says_here
from bot.dialogue.meaning.asking import asks, asks_at_once, offers_two
from bot.dialogue.meaning.likeness import TOLD
from bot.dialogue.meaning.said import Said
from bot.dialogue.meaning.wordings import topic_by_words
from bot.dialogue.meaning.words import tokens
from bot.dialogue.reading.foreign import glossed
from bot.dialogue.replies import places_what_blinks
from bot.dialogue.slots import KIT_SLOTS
from bot.dialogue.steps.anywhere import planning, repeat
from bot.dialogue.steps.asked import filter_answers, told_beside_question, trade_answers
from bot.dialogue.steps.asked.topic_answers import TOPICS, Answer
from bot.dialogue.steps.asked.trade_answers import plainly
from bot.dialogue.steps.walk import diagnosis
from bot.dialogue.texts import TEXTS
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
#: Other causes are named for `why` down to this far behind the first (own rule).
_BEHIND: Final = 3.0
_MOST_CAUSES: Final = 4  # that `why` names (own rule: one line)
#: Facts beside which a message may still be a complaint: of the frame, not of the place.
_OF_A_FRAME: Final = frozenset(
    {"f_number", "shutter_s", "iso", "focal_mm", "polariser_on", "nd_on_stops", "light", "wind"}
    | {"has_tripod", "hand_held", "camera_format"}
)
#: The cause of frames that the camera set, and what somebody sets who gives the numbers.
_MODE: Final = "automatic_mode"
_DIALLED: Final = frozenset({"f_number", "shutter_s"})
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
#: In so few words an option that is named is meant: "está limpio todo, che" (own rule).
_SHORT: Final = 4
#: What the options of open questions are about.
_OPTION_TOPICS: Final = frozenset({"just_white", "sky", "edges", "histogram", "leaves"})
_OPTION_SIGHTS: Final = frozenset({"water_clipped", "sky_gap", "border_clutter", "wind_in_leaves"})
#: What answers a question that was put, whatever stands behind it; "no tripod with me" does not,
#: nor do the many sentences that begin with a "no" in Spanish.
_REPLY: Final = re.compile(
    rf"\s*(?:(?:yes|nope|yeah|yep)\b|{in_any('replies.bare')}\s*(?:[,.;!]|$)"
    r"|no (?:it|i|i'm|we|there|not|the|they|that|this)\b)",
    re.IGNORECASE,
)
#: What a beginner asks for who stands there: the walk answers it step by step.
_BEGINNINGS: Final = frozenset({"begin", "silky_time", "phone", "lens", "choose", "mode"})
#: Who greets and tells a little of themselves is greeted.
GREETS: Final = re.compile(
    r"\W*(?:oh |ah )?(?:hi|hello|hey|hiya|good (?:morning|day|evening|afternoon))\b[^?]*$",
    re.IGNORECASE,
)
_GREETING: Final = f"{topics.TALK}greeting"
_OTHER_TALK: Final = f"{topics.TALK}other"
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
#: Talk that needs no question behind it.
_WITHOUT_QUESTION: Final = frozenset({"talk.thanks"})
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


def answer(turn: Turn, said: Said, facts: Facts) -> bool:
    """Answer a message that asks something known, or tells of a cause without numbers.

    Args:
        turn: the answer under construction.
        said: the message.
        facts: what was read in it.

    Returns:
        Whether it was answered; otherwise its facts are to be taken in.
    """
    text = said.english
    if _is_no_topic(said, facts) or is_arrival(text):
        return False
    named = topic_by_words(text)
    if named == "support" and diagnosis.is_held(turn, facts):
        return False  # what holds the camera gives it longer times
    if named is not None:
        TOPICS[named](turn, text)
        _close(turn, named)
        return True
    return _answer_meant(turn, said, facts)


def _answer_meant(turn: Turn, said: Said, facts: Facts) -> bool:
    """Answer what a message means by its likeness to examples, if anything."""
    text = said.english
    topic = _greeting(turn, said, topic_meant(said, facts))
    if topic in _BEGINNINGS and _begins_here(turn, said):
        return False
    cause = _seen(turn, said, facts)
    if cause is not None and (topic is None or _is_nearer(said, cause, topic)):
        if cause.name in SYMPTOMS:
            return False
        CAUSES[cause.name](turn, text)
    elif topic is not None:
        told_beside_question.learn(turn, said, facts)
        TOPICS[topic](turn, _words_of(said))
    else:
        return False
    _close(turn, topic)
    return True


def _begins_here(turn: Turn, said: Said) -> bool:
    """Whether somebody without a walk says that they stand at a fall: then the walk begins."""
    here = names_fall_here(said.english) or says_here(said.typed)
    return turn.context.conversation.walk is None and here


def _greeting(turn: Turn, said: Said, topic: str | None) -> str | None:
    """The topic, where other talk that begins with a greeting is a greeting first."""
    greets = topic == _OTHER_TALK and repeat.standing(turn) is None and GREETS.match(said.english)
    return _GREETING if greets else topic


def _words_of(said: Said) -> str:
    """The words of a question in English, behind the one that its gloss makes of it as a whole.

    "Welche Zeit für seidiges Wasser" tells nothing, so that it is "what"; its answer wants "silky".
    """
    if said.english.strip() != "what":
        return said.english
    _, _, behind = said.typed.partition(" ")
    return glossed(behind, said.language)


def _is_no_topic(said: Said, facts: Facts) -> bool:
    """Whether a message tries something, tells numbers that have no place, or replies."""
    unread = bool(facts.unread) and not offers_two(said)
    return facts.ask_what_if or unread or _REPLY.match(said.typed) is not None


def _close(turn: Turn, topic: str | None) -> None:
    """A reason for `why`, and the walk's question again where it is not out of place."""
    if not turn.notes:
        turn.reason("why.practice")
    if turn.question_put or topic in _WITHOUT_QUESTION:
        return
    if repeat.standing(turn) is not None or topic == _GREETING:
        repeat.put_again(turn)


def complaint(turn: Turn, said: Said, facts: Facts) -> tuple[Cause, ...]:
    """The causes of what a message complains of, the likeliest first; none of other messages."""
    text = said.english
    if _is_no_topic(said, facts) or topic_by_words(text):
        return ()
    if planning.is_planning(turn) or not _tells_of_a_frame(said, facts, _DOUBTED):
        return ()
    found = causes.diagnose(said, causes.scene_of(turn.facts.updated(facts), text))
    topic = topic_meant(said, facts)
    return found if topic is None or _is_nearer(said, found[0], topic) else ()


def with_sight(turn: Turn, said: Said, facts: Facts) -> Facts:
    """The facts of a message, and the symptom of what it tells of where words say it better."""
    cause = None if facts.ask_what_if or facts.unread else _seen(turn, said, facts)
    symptom = SYMPTOMS.get(cause.name) if cause is not None else None
    if facts.light is not None and facts.symptoms == (Symptom.BLUE_CAST,):
        return facts.model_copy(update={"symptoms": ()})  # it is the light that is blue
    return facts if symptom is None else facts.model_copy(update={"symptoms": (symptom,)})


def is_beside(said: Said) -> bool:
    """Whether a message is about something else than what blinks or stands at the borders.

    Such a message holds words of an option ("everything", "point") without choosing it.
    """
    short = len(said.typed.split()) <= _SHORT and not asks_at_once(said)
    if short or places_what_blinks(said.english) or len(tokens(said.own)) <= topics.LEAST_WORDS:
        return False
    (topic, asked), (sight, seen) = topics.nearest(said), sights.nearest(said)
    if topic.startswith(topics.TALK):  # "we left, back at the car" answers a question
        return False
    of_topic = topic not in _OPTION_TOPICS | {TOLD} and asked >= _SURE
    return of_topic or (sight not in _OPTION_SIGHTS | sights.NO_FRAME and seen >= _SURE)


def explain(turn: Turn, said: Said, facts: Facts) -> None:
    """Name the causes behind a complaint, the likeliest first, for `why`."""
    if not facts.symptoms:
        return
    found = causes.diagnose(said, causes.scene_of(turn.facts.updated(facts), said.english))
    likely = [cause for cause in found if cause.score > found[0].score - _BEHIND]
    names = [TEXTS[f"cause_name.{cause.name}"] for cause in likely[:_MOST_CAUSES]]
    turn.reason("why.causes", list=", ".join(names))


def topic_meant(said: Said, facts: Facts) -> str | None:
    """The topic of a message: surely meant where it also tells something."""
    known = facts.known().keys()
    topic = topics.topic_of(said)
    if topic is None or _is_told(topic, said, facts):
        return None
    # What is told, not asked, is kept: "just my phone" is a kit, whatever topic it is near to.
    if not known:
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


def _seen(turn: Turn, said: Said, facts: Facts) -> Cause | None:
    """The first cause of what a message tells, None where it tells of no frame or is read well.

    While a visit is planned there are no frames.
    """
    least = _SURE if facts.known().keys() - _BY_NAME else _SIGHT
    if planning.is_planning(turn) or is_arrival(said.english):
        return None
    if not _tells_of_a_frame(said, facts, least):
        return _complained_of(turn, said, facts)
    cause = causes.diagnose(said, causes.scene_of(turn.facts.updated(facts), said.english))[0]
    if cause.name == "shake" and diagnosis.only_lacks_a_tripod(said.english, facts):
        return None  # "no tripod either" tells of the kit
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
    if seen == _MODE and known & _DIALLED and facts.automatic is None:
        return False  # numbers stand beside the names of modes, too
    return seen not in sights.NO_FRAME and near >= least


def treated(symptoms: tuple[Symptom, ...]) -> set[str]:
    """The causes that the answers to these symptoms treat."""
    own = {name for name, symptom in SYMPTOMS.items() if symptom in symptoms}
    return own.union(*(_ALSO.get(symptom, frozenset()) for symptom in symptoms))


def _is_read(said: Said, cause: Cause, symptoms: tuple[Symptom, ...]) -> bool:
    """Whether the symptoms that were read say the same, or nearly as well."""
    near = sights.nearness(said)
    same = [near[name] for name in treated(symptoms)]
    return bool(symptoms) and near[cause.name] - max(same, default=0.0) < _SURELY_OTHER


def _is_nearer(said: Said, cause: Cause, topic: str) -> bool:
    """Whether a message is a complaint rather than a remark on a topic."""
    if _COMPLAINTS.get(topic) == cause.name:
        return True  # a question is never a sight
    return sights.nearness(said)[cause.name] >= topics.nearness(said)[topic]


CAUSES: Final[Mapping[str, Answer]] = {
    "contrast_too_great": plainly("cause.contrast_too_great"),
    "mixed_light": filter_answers.say_noon,
    "iso_raised": trade_answers.say_iso_raised,
    "automatic_mode": plainly("asked.mode"),
    "focused_wrong": plainly("answer.focus_on_water"),
    "polariser_in_the_dark": filter_answers.say_polariser_left,
    "nd_cast": plainly("cause.nd_cast"),
    "filter_corners": plainly("cause.filter_corners"),
    "fogged_glass": plainly("cause.fogged_glass"),
    "stray_light": plainly("cause.stray_light"),
    "sky_gap": plainly("asked.sky"),
    "border_clutter": plainly("answer.edges"),
    "horizon_tilted": plainly("answer.tilted"),
    "low_flow": plainly("cause.low_flow"),
}
