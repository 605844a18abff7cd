"""Whether a message tells what holds a camera that has no tripod."""

from __future__ import annotations

from typing import Final

from bot.dialogue.facts import Facts
from bot.dialogue.reading.phrases import any_of, plain

#: What a camera without a tripod rests on.
_REST: Final = (
    r"(?:bench|wall|railing|rail|parapet|post|rocks?|stone|boulder|bag|rucksack|backpack|bean ?bag"
    r"|table|log|stump|fence|arm ?rest|ground|tree|pole|jacket)"
)
_RESTED: Final = any_of(
    r"(?:rest|prop|lean|brace|put|set|lay|laid)(?:s|ed|ing|ped|ping|ting)?"
    r" (?:it|this|(?:the|my) (?:camera|cam|phone))(?: \w+)? (?:on|against|onto|upon) (?:the |a "
    r"|an |my )?"
    rf"(?:\w+ )?{_REST}\b",
    rf"(?:it|camera|phone)(?:'s| is) (?:resting|propped|leaning|lying) (?:on"
    rf"|against) (?:\w+ ){{0,2}}{_REST}\b",
)
#: Beside "no tripod": "but there's a bench with a flat armrest".
_RESTS: Final = any_of(
    rf"(?:could|can|might|will|would|gonna|i'll) use (?:a |an |the |my )?(?:\w+ )?{_REST}\b",
    rf"(?:there's|there is|got|have|found|but) (?:a |an |the |my )?(?:\w+ )?{_REST}\b(?! (?:from"
    rf"|at|\d))",
)


def with_rest(told: Facts, text: str) -> Facts:
    """What a message tells, with its camera held by more than hands where it rests on something.

    Args:
        told: what was read in it.
        text: the message in English.
    """
    said = plain(text)
    lacks = told.has_tripod is False and _RESTS.search(said)
    if told.hand_held is not None or not (lacks or _RESTED.search(said)):
        return told
    return told.model_copy(update={"hand_held": False})
