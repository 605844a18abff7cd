"""Whether the water falls or runs: a height that is told makes a fall of it, whatever its name."""

from __future__ import annotations

from typing import Final

from bot.dialogue.facts import Facts
from bot.dialogue.reading.phrases import any_of, exactly
from bot.dialogue.states import BEFORE_LENS
from bot.dialogue.steps.walk.free_drop import OVER_ROCK
from bot.dialogue.turn import Turn

_CASCADE: Final = any_of(
    "cascades?",
    r"water ?slides?",
    r"(?:the|a|long|low|m|ft|feet|foot|met(?:re|er)s?) (?:long |low |smooth |wide )*slide",
    r"(?:it's|its|it is|is|more of|like) (?:more )?(?:like )?a (?:long |low |smooth )*slide",
    r"(?:water|fall|falls|it) (?:\w+ )?(?:slides|slips|runs|slithers|tumbles) (?:down|over)"
    r" (?:the |a |bare |smooth |wet |its )*(?:rocks?|slabs?|ledges?|steps)",
)
_IS_ONE: Final = any_of(
    r"(?:it's|its|it is|this is|that's|more|rather|like) (?:\w+ ){0,3}(?:cascade|slide)"
)
#: Words of a stream, those of a cascade left out.
_RUNS: Final = any_of("streams?|creeks?|brooks?|becks?|burn|rapids|riffles?|(?:small|little) river")
#: What takes a fall back that was told before: that it is a stream, not that one is near.
_ONLY_RUNS: Final = any_of(
    r"(?:it's|its|it is|this is|that's|just|only|rather|really) (?:just |only |really |rather )*"
    r"(?:a |the )?"
    r"(?:small |little )?(?:stream|creek|brook|beck|burn|rapids)",
    r"no (?:real |proper )?(?:water)?falls?",
)
_RUNS_ALONE: Final = exactly(r"(?:a |the )?(?:stream|creek|brook)")


def settled(turn: Turn, told: Facts, text: str) -> Facts:
    """The facts of a message, with what they say of the water made one.

    A drop whose height is known falls; a stream's name ("at the beck") changes nothing about it.

    Args:
        turn: the answer under construction.
        told: what was read.
        text: the message in English.
    """
    said = text.casefold()
    if told.section is not None:
        told = told.updated(Facts(at_crest=bool(told.at_crest)))
    cascade = _CASCADE.search(said) is not None
    if cascade and _tells_of_it(turn, told, said) and OVER_ROCK not in turn.walk.checks:
        turn.change_walk(checks=turn.walk.checks | {OVER_ROCK: "told"})
    if told.fall_height_m is not None:
        runs = told.stream or turn.facts.stream
        return told.updated(Facts(stream=False)) if runs else told
    if not told.stream:
        return told
    if cascade and not _RUNS.search(said):
        turn.unlearn("stream")
        return told.model_copy(update={"stream": None})
    if turn.facts.fall_height_m is None:
        return told
    if _ONLY_RUNS.search(said) or _RUNS_ALONE.match(said):
        turn.unlearn("fall_height_m")
        return told
    return told.model_copy(update={"stream": None})


def _tells_of_it(turn: Turn, told: Facts, said: str) -> bool:
    """Whether a message that names a cascade says that this water is one: "I burn it" does not."""
    measured = told.fall_height_m is not None or told.distance_m is not None
    return measured or turn.walk.state in BEFORE_LENS or bool(_IS_ONE.search(said))
