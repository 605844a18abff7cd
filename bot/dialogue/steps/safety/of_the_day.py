"""What is asked of the day while a place is closed or water rises: no setting is in the answers."""

from __future__ import annotations

from typing import Final

from bot.dialogue.meaning.asking import asks
from bot.dialogue.meaning.said import Said
from bot.dialogue.meaning.topics import topic_of
from bot.dialogue.steps.asked.questions_asked import topic_asked
from bot.dialogue.steps.asked.topic_answers import TOPICS
from bot.dialogue.turn import Turn

#: What is asked of the day: no setting stands in the answers, and none sends anybody anywhere.
_OF_THE_DAY: Final = frozenset(
    {"pack", "tell_home", "path_open", "permit", "stay", "time_forgotten", "choose", "copy_card"}
    | {"battery_cold", "best_time", "after_rain"}
)


#: Of these, what is asked once everybody is away from the water.
AFTERWARDS: Final = frozenset(
    {"tell_home", "path_open", "choose", "copy_card", "best_time", "after_rain"}
)


def answer(turn: Turn, said: Said, topics: frozenset[str] = _OF_THE_DAY) -> bool:
    """Answer what is asked of the day and not of the picture.

    Args:
        turn: the answer under construction.
        said: the message, or what is left of it.
        topics: what is answered.

    Returns:
        Whether it was that.
    """
    topic = topic_asked(said.english) or (topic_of(said) if asks(said) else None)
    if topic not in topics:
        return False
    TOPICS[topic](turn, said.english)
    return True
