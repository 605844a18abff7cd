"""Messages matched by meaning: topics of the trade, sights of a frame, small talk."""

from __future__ import annotations

import re
from collections.abc import Mapping
from typing import Final

from bot.dialogue import causes
from bot.dialogue.facts import Facts, Symptom
from bot.dialogue.meaning import topics
from bot.dialogue.meaning.arrival import is_arrival, names_fall_here, says_here
from bot.dialogue.meaning.said import Said
from bot.dialogue.meaning.wordings import topic_by_words
from bot.dialogue.reading.foreign import glossed
from bot.dialogue.steps.anywhere import repeat
from bot.dialogue.steps.asked import (
    filter_answers,
    handy_answers,
    told_beside_question,
    trade_answers,
)
from bot.dialogue.steps.asked.topic_answers import TOPICS, Answer
from bot.dialogue.steps.asked.topic_or_cause import (
    SYMPTOMS,
    cause_seen,
    is_nearer,
    is_no_topic,
    topic_meant,
)
from bot.dialogue.steps.asked.trade_answers import plainly
from bot.dialogue.steps.walk import diagnosis
from bot.dialogue.texts import TEXTS
from bot.dialogue.turn import Turn

#: Other causes are named for `why` down to this far behind the first (own rule).
_BEHIND: Final = 3.0
_MOST_CAUSES: Final = 4  # that `why` names (own rule: one line)
#: What a beginner asks for who stands there: the walk answers it step by step.
_BEGINNINGS: Final = frozenset({"begin", "silky_time", "phone", "lens", "choose", "mode"})
#: Who greets and tells a little of themselves is greeted.
_GREETS: Final = re.compile(
    r"\W*(?:oh |ah )?(?:hi|hello|hey|hiya|good (?:morning|day|evening|afternoon))\b[^?]*$",
    re.IGNORECASE,
)
_GREETING: Final = f"{topics.TALK}greeting"
_OTHER_TALK: Final = f"{topics.TALK}other"
#: Talk that needs no question behind it.
_WITHOUT_QUESTION: Final = frozenset({"talk.thanks"})


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
    if is_no_topic(said, facts) or is_arrival(text):
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
    cause = cause_seen(turn, said, facts)
    if cause is not None and (topic is None or is_nearer(said, cause, topic)):
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
    greets = topic == _OTHER_TALK and repeat.standing(turn) is None and _GREETS.match(said.english)
    return _GREETING if greets else topic


def _words_of(said: Said) -> str:
    """The words of a question in English, behind the one that its gloss makes of it as a whole.

    "Welche Zeit für seidiges Wasser" tells nothing, so that it is "what"; its answer wants "silky".
    """
    if said.english.strip() != "what":
        return said.english
    _, _, behind = said.typed.partition(" ")
    return glossed(behind, said.language)


def _close(turn: Turn, topic: str | None) -> None:
    """A reason for `why`, and the walk's question again where it is not out of place."""
    if not turn.notes:
        turn.reason("why.practice")
    if turn.question_put or topic in _WITHOUT_QUESTION:
        return
    if repeat.standing(turn) is not None or topic == _GREETING:
        repeat.put_again(turn)


def explain(turn: Turn, said: Said, facts: Facts) -> None:
    """Name the causes behind a complaint, the likeliest first, for `why`."""
    if not facts.symptoms:
        return
    if Symptom.LEAVES_SMEARED in facts.symptoms:
        handy_answers.say_why_leaves(turn, said.english)
    found = causes.diagnose(said, causes.scene_of(turn.facts.updated(facts), said.english))
    likely = [cause for cause in found if cause.score > found[0].score - _BEHIND]
    names = [TEXTS[f"cause_name.{cause.name}"] for cause in likely[:_MOST_CAUSES]]
    turn.reason("why.causes", list=", ".join(names))


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
