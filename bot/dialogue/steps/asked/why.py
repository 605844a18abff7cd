"""`why`: the reasons behind the last answer page by page, what they rest on, and then no more."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from bot.dialogue.compose import Part, Role, fit
from bot.dialogue.steps.anywhere import repeat
from bot.dialogue.texts import known
from bot.dialogue.turn import Turn
from bot.dialogue.walk_state import Note

#: `why` answers in five lines at most (own rule: one screen of a phone).
_WHY_LINES: Final = 5
#: What times, depth and framing are reckoned from.
_RESTS_ON: Final = frozenset(
    {"camera_format", "focal_mm", "fall_height_m", "distance_m", "nearest_m", "farthest_m"}
    | {"water_speed_mps", "water_depth_m", "section_height_m", "look", "light"}
)
#: Texts that are reckoned from what the person told, as their keys begin.
_RECKONED: Final = (
    *("why.share", "why.speed", "why.depth", "why.f_number", "why.focus", "why.angle"),
    *("why.framing", "why.coverage", "why.level", "why.stand_back", "why.heights"),
)


def tell(turn: Turn) -> None:
    """The next page of the reasons; none is told twice, and they stay for another `why`."""
    notes, told = turn.context.conversation.why, turn.context.conversation.why_told
    if not notes:
        turn.say(Role.SETTINGS, "why.nothing")
        repeat.put_again_if_open(turn)
        return
    if told < len(notes):
        shown = _fitting(notes[told:])
        for note in shown:
            turn.say(Role.SETTINGS, note.key, **note.values)
        told += len(shown)
        if told < len(notes):
            turn.say(Role.ASSUMPTION, "why.more")
    elif told == len(notes) and (rests_on := _rests_on(turn, notes)):
        turn.say(Role.SETTINGS, "why.rests_on", list=rests_on)
        told += 1
    else:
        turn.say(Role.SETTINGS, "why.all")
    turn.change_conversation(why_told=told)
    turn.keep_why()


def _rests_on(turn: Turn, notes: Sequence[Note]) -> str:
    """What the person told, from which the reasons were reckoned; "" where they were not."""
    if not any(note.key.startswith(_RECKONED) for note in notes):
        return ""
    # Others read in a group room: only what was told there is named there.
    facts = turn.facts if turn.origin.direct else turn.walk.facts
    return known(facts, turn.units, only=_RESTS_ON)


def _fitting(notes: Sequence[Note]) -> list[Note]:
    """As many of the reasons as one message holds, with the word for the next ones."""
    more = Part(Role.ASSUMPTION, "why.more")
    parts = [Part(Role.SETTINGS, note.key, note.values) for note in notes[:_WHY_LINES]]
    if len(parts) == len(notes) and not fit(parts)[1]:
        return list(notes)
    most = 1
    while most < len(parts) and not fit([*parts[: most + 1], more])[1]:
        most += 1
    return list(notes[:most])
