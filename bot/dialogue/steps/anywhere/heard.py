"""When the person was heard, when what they tell was seen, and what that light is good for now."""

from __future__ import annotations

from datetime import datetime, timedelta
from typing import Final

from bot.dialogue.lateness import (
    LOW_LIGHT_HOLDS,
    TOGETHER,
    Arrival,
    Seen,
    Standing,
    light_holds,
    seen_between,
    silence_before,
    standing,
)
from bot.dialogue.reading import number_answer, read
from bot.dialogue.reading.foreign import glossed
from bot.dialogue.reading.moments import split_moment
from bot.dialogue.steps.anywhere import edges_kept
from bot.dialogue.turn import Turn
from bot.dialogue.way_out import day_around, zone_around

#: What somebody has with them whatever happens; a tripod may be what fell in.
_OWNED: Final = frozenset({"camera_format", "camera_name", "megapixels", "lenses"})
#: Nobody reads a question and answers it in less (own rule).
_READ_AND_TYPED: Final = timedelta(seconds=3)


def listen(turn: Turn, text: str) -> str:
    """Note when the person was heard, and when what they tell was seen.

    Returns:
        The message without the words that told when.
    """
    conversation, sent_at = turn.context.conversation, turn.origin.sent_at
    since = _silent_since(turn, text)
    rest, when = split_moment(text)
    turn.seen = seen_between(Arrival(sent_at, since), when, zone_around(turn.context))
    heard_at = max(sent_at, conversation.heard_at or sent_at)
    turn.change_conversation(heard_at=heard_at, silent_since=since)
    _forget_old_light(turn)
    return rest


def _silent_since(turn: Turn, text: str) -> datetime | None:
    conversation, sent_at = turn.context.conversation, turn.origin.sent_at
    heard_at, before = conversation.heard_at, conversation.silent_since
    if heard_at is None or TOGETHER < sent_at - heard_at <= LOW_LIGHT_HOLDS:
        return None  # the usual case, whatever the sun does
    holds = light_holds(turn.now, day_around(turn.context, turn.now))
    since = silence_before(sent_at, heard_at, before, holds)
    if since is None or number_answer(text) is None:
        return since
    return _since_the_question(turn, since, holds)


def _since_the_question(turn: Turn, since: datetime, holds: timedelta) -> datetime | None:
    """A number was typed after the question that it answers, however long nothing came before."""
    question, sent_at = turn.context.conversation.question, turn.origin.sent_at
    if question is None or sent_at - question.asked_at < _READ_AND_TYPED:
        return since
    since = max(since, question.asked_at)
    return since if sent_at - since > holds else None


def _forget_old_light(turn: Turn) -> None:
    """What frames told of light that has passed is void; told light too, when the visit is over."""
    walk = turn.context.conversation.walk
    if walk is None or walk.light is None:
        return
    stands = standing_of(turn, walk.light)
    if stands in {Standing.PAST, Standing.GONE}:
        turn.change_walk(clean_stops=None, clipped_stops=None, first_stops=None)
    if stands is Standing.GONE:
        turn.unlearn("light")
        turn.change_walk(light=None)


def standing_of(turn: Turn, seen: Seen) -> Standing:
    """What light seen then is good for now; after "we have left" it is gone."""
    if turn.now - seen.earliest <= LOW_LIGHT_HOLDS:
        return Standing.LIVE  # the usual case, whatever the sun does
    left_at = turn.context.conversation.left_at
    found = standing(seen, turn.now, day_around(turn.context, turn.now))
    if found is Standing.PAST and left_at is not None and seen.latest <= left_at:
        return Standing.GONE
    return found


def keep(turn: Turn, text: str) -> None:
    """Read and keep quietly: the facts of a message that gets no answer of its own.

    Args:
        turn: the answer under construction.
        text: the message, as typed.
    """
    facts = read(glossed(text, turn.context.person.language), units=turn.units)
    edges_kept.keep(turn, text)
    if facts.known() and counts_now(turn):
        turn.learn(facts)


def keep_kit(turn: Turn, text: str) -> None:
    """Keep quietly which camera and lenses a message names, whatever danger it tells of.

    Args:
        turn: the answer under construction.
        text: the message, as typed.
    """
    facts = read(glossed(text, turn.context.person.language))
    turn.learn(facts.only(set(facts.known()) & _OWNED))


def is_queued(turn: Turn) -> bool:
    """Whether the message came late and others of the person wait behind it."""
    return turn.origin.behind > 0 and standing_of(turn, turn.seen) is not Standing.LIVE


def counts_now(turn: Turn) -> bool:
    """Whether what the message tells is of the light of now, as far as is known."""
    return standing_of(turn, turn.seen) in {Standing.LIVE, Standing.UNSURE}
