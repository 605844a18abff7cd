"""What a message tells of a visit: who walks along, the start, the way in time."""

from __future__ import annotations

from functools import lru_cache

from bot.dialogue.facts import Facts
from bot.dialogue.reading.back_by import back_by_in
from bot.dialogue.reading.normal import normalise
from bot.dialogue.reading.party import all_alike, people_in, slowest_in
from bot.dialogue.reading.walking import is_round_trip, start_in, way_min_in
from bot.dialogue.trip import Trip


def read_visit(text: str, *, start_asked: bool = False) -> Trip:
    """All that a message tells of the visit around the walk.

    Args:
        text: the message in English.
        start_asked: the open question asks when the walk starts, and who goes.
    """
    told = _told(text)
    if not start_asked:
        return told
    start = start_in(normalise(text, with_others=True), asked=True)
    return told.model_copy(update={"start_at": start})


@lru_cache(maxsize=32)
def _told(text: str) -> Trip:
    """What a message tells, whatever is asked."""
    said = normalise(text, with_others=True)
    back_by = back_by_in(said)
    return Trip(
        people=people_in(said),
        slowest=slowest_in(said),
        start_at=None if back_by else start_in(said),
        back_by=back_by,
        walk_min=way_min_in(said),
        round_trip=is_round_trip(said) or None,
    )


def with_pace(facts: Facts, text: str) -> Facts:
    """The facts of a message, and whether somebody slow walks along, where words tell it.

    Args:
        facts: what was read.
        text: the message in English.
    """
    if facts.group_mixed is None and all_alike(normalise(text, with_others=True)):
        return facts.updated(Facts(group_mixed=False))
    slow = read_visit(text).slowest is not None
    return facts.updated(Facts(group_mixed=True)) if slow else facts
