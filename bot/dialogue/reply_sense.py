"""Which option of the open question a reply in other words means, where words name none."""

from __future__ import annotations

from typing import Final

from bot.dialogue.facts import Facts, Symptom
from bot.dialogue.meaning import sights, topics
from bot.dialogue.meaning.asides import aside_of
from bot.dialogue.meaning.asking import asks_at_once
from bot.dialogue.meaning.likeness import TOLD
from bot.dialogue.meaning.options import OTHER, Meant, meant_at
from bot.dialogue.meaning.said import Said
from bot.dialogue.meaning.words import tokens
from bot.dialogue.questions import Asked
from bot.dialogue.reading.not_known import is_no_answer, says_not_known
from bot.dialogue.replies import bare, is_lost, places_what_blinks, says_yes_or_no

#: An option is meant so far before all else (own rule, on a writer's replies that were left out:
#: 62 in 100 in free words are heard, 2 are taken for another; of what answers something else, or
#: nothing, 2 in 100 are taken for one).
_AHEAD: Final = 0.1
#: A single word has to be this near: any unknown one is a little like something (own rule).
_NEAR_ONE_WORD: Final = 0.6
#: A message is surely no reply from here on (own rule, as above: 1 in 100 replies is).
_OTHER_AHEAD: Final = 0.3
#: A topic or sight is another thing than the options from this nearness on (own rule, on the half
#: of the messages on which rules may be written).
_SURE: Final = 0.31
#: In so few words an option that is named is meant: "está limpio todo, che" (own rule).
_SHORT: Final = 4
#: What the options of open questions are about.
_OPTION_TOPICS: Final = frozenset({"just_white", "sky", "edges", "histogram", "leaves"})
_OPTION_SIGHTS: Final = frozenset({"water_clipped", "sky_gap", "border_clutter", "wind_in_leaves"})
#: Questions that hear the same replies as another.
_LIKE: Final = {
    "blink_again": "blink",
    "screen_says": "blink",
    "light_still_frame": "light_still",
    "restart": "resume",
}


def option_of(asked: Asked, said: Said, told: Facts) -> str | None:
    """The option that a reply means by its sense; None where it asks, tells facts or is unsure.

    Args:
        asked: the open question.
        said: the message.
        told: what was read in it.
    """
    more = told.unread or told.known() or asks_at_once(said) or _is_no_answer(said)
    if more or says_yes_or_no(said.english) or aside_of(said.typed) is not None:
        return None
    found = _meant(asked, said)
    if found is None or found.option == OTHER or found.ahead < _AHEAD:
        return None
    if len(said.typed.split()) == 1 and found.near < _NEAR_ONE_WORD:
        return None
    lost = is_lost(bare(said.english))  # "a bright nothing" is white
    return None if lost and found.option == "nothing" else found.option


def _is_no_answer(said: Said) -> bool:
    """Whether a message says not to know, or speaks of people: no option means that."""
    return says_not_known(said.typed) or is_no_answer(said.typed)


def surer(asked: Asked, said: Said, named: str) -> str:
    """The option that words name by chance, or another that the sense surely means.

    Args:
        asked: the open question.
        said: the message: "nope, all of it is quiet now".
        named: the option that its words name.
    """
    if places_what_blinks(said.english):
        return named
    found = meant_at(_question(asked), asked.options, said)
    return named if found is None or found.ahead < _OTHER_AHEAD else found.option


def is_other(asked: Asked, said: Said, told: Facts) -> bool:
    """Whether a message is surely no reply to a question, whatever words of it it holds.

    Args:
        asked: the open question.
        said: the message.
        told: what was read in it; what it tells of white water or wind is a reply.
    """
    more = set(told.known()) - {"symptoms"} or Symptom.JUST_WHITE in told.symptoms
    if more or places_what_blinks(said.english):
        return False
    found = _meant(asked, said)
    return found is not None and found.option == OTHER and found.ahead >= _OTHER_AHEAD


def _meant(asked: Asked, said: Said) -> Meant | None:
    return meant_at(_question(asked), (*asked.options, OTHER), said)


def _question(asked: Asked) -> str:
    return _LIKE.get(asked.name, asked.name)


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
