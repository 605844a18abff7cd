"""Light that has passed: asked about before settings are given, or answered as a review."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta
from typing import Final

from bot.dialogue.compose import Role
from bot.dialogue.context import KIT_SLOTS, Waiting
from bot.dialogue.facts import Facts, Symptom
from bot.dialogue.lateness import (
    LOW_LIGHT_HOLDS,
    TOGETHER,
    Arrival,
    KnownBy,
    Seen,
    Standing,
    light_holds,
    seen_between,
    silence_before,
    standing,
)
from bot.dialogue.reading import number_answer
from bot.dialogue.reading.moments import split_moment
from bot.dialogue.states import State
from bot.dialogue.steps import base, repeat, reviewing
from bot.dialogue.texts import late as texts
from bot.dialogue.texts import measures
from bot.dialogue.turn import Turn
from bot.dialogue.way_out import day_around, zone_around, zone_told

#: Questions whose answers tell of the light of a frame, or ask for settings made for it; with the
#: options that do neither.
_LIGHT_QUESTIONS: Final = {
    "blink": (),
    "blink_again": (),
    "seen": ("soft",),
    "screen_says": (),
    "area": ("sky",),
    "leaves": ("no",),
    "sky_gap": ("moved",),
}
#: Slots that tell how bright a frame was.
_BRIGHTNESS: Final = frozenset({"meter_stops", "change_stops", "blink", "histogram_at_right"})
#: Symptoms whose answers hold settings for the light of the frame; focus and drops do not.
_LIGHT_SYMPTOMS: Final = frozenset(
    {
        Symptom.NO_TEXTURE,
        Symptom.TOO_FROZEN,
        Symptom.JUST_WHITE,
        Symptom.TOO_BRIGHT,
        Symptom.TOO_DARK,
        Symptom.BLACK_ROCK,
        Symptom.LEAVES_SMEARED,
        Symptom.GLARE,
    }
)
_EMPTY: Final = {name: field.get_default() for name, field in Facts.model_fields.items()}
#: Steps in which light that is told changes the settings at once.
_WITH_SETTINGS: Final = frozenset({State.BASE, State.HIGHLIGHTS, State.KEEP})
#: A setting alone is looked over only with others: then the answer is for the light of its frame.
_SETTINGS: Final = frozenset({"f_number", "shutter_s", "iso"})


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


def is_queued(turn: Turn) -> bool:
    """Whether the message came late and others of the person wait behind it."""
    return turn.origin.behind > 0 and standing_of(turn, turn.seen) is not Standing.LIVE


def counts_now(turn: Turn) -> bool:
    """Whether what the message tells is of the light of now, as far as is known."""
    return standing_of(turn, turn.seen) in {Standing.LIVE, Standing.UNSURE}


# what has passed is held back


def holds_back_reply(turn: Turn, question: str, value: str, text: str) -> bool:
    """Whether a reply to a question was about light that has passed, and was answered so."""
    harmless = _LIGHT_QUESTIONS.get(question)
    if harmless is None or value in harmless:
        return False
    return _holds_back(turn, reviewing.replied(question, value), text, question)


def holds_back_facts(turn: Turn, facts: Facts, text: str) -> bool:
    """Whether facts were about light that has passed, and were answered so."""
    if facts.ask_what_if or not _needs_light(turn, facts):
        return False
    return _holds_back(turn, facts, text, None)


def _needs_light(turn: Turn, facts: Facts) -> bool:
    slots = set(facts.known())
    if slots & _BRIGHTNESS or _LIGHT_SYMPTOMS & set(facts.symptoms):
        return True
    if facts.light is not None:
        turn.light = turn.seen  # kept with its time, also where nothing is set by it yet
        gone = standing_of(turn, turn.seen) is Standing.GONE
        return gone or turn.walk.state in _WITH_SETTINGS
    return len(slots & _SETTINGS) > 1


def _holds_back(turn: Turn, told: Facts, text: str, question: str | None) -> bool:
    stands = standing_of(turn, turn.seen)
    if stands in {Standing.LIVE, Standing.UNSURE}:
        _forget_told_light(turn, told)
        turn.light = turn.seen
        return False
    turn.light = None
    _take_the_rest(turn, told)
    if stands is Standing.GONE or is_queued(turn):
        reviewing.told(turn, told, named(turn, turn.seen))
        return True
    waiting = Waiting(
        text=text,
        answers=question,
        seen=turn.seen,
        sent_at=turn.origin.sent_at,
        when=named(turn, turn.seen),
    )
    ask(turn, waiting, "light_still")
    return True


def _take_the_rest(turn: Turn, told: Facts) -> None:
    """Kit, fall and depth do not grow old: they are kept, whatever becomes of the light."""
    of_light = _BRIGHTNESS | _SETTINGS | {"symptoms", "light", "polariser_on", "nd_on_stops"}
    lasting = set(told.known()) - of_light
    walk = turn.context.conversation.walk
    if walk is None:
        lasting &= KIT_SLOTS
    if lasting:
        turn.learn(told.model_copy(update={slot: _EMPTY[slot] for slot in of_light}))
        turn.change_conversation(walk=walk and turn.walk)


def _forget_told_light(turn: Turn, told: Facts) -> None:
    """A new frame speaks for itself: light in words of long ago does not count beside it."""
    walk = turn.context.conversation.walk
    if walk is None or walk.light is None or told.light is not None:
        return
    if standing_of(turn, walk.light) is Standing.PAST:
        turn.unlearn("light")


def ask(turn: Turn, waiting: Waiting, question: str) -> None:
    """Ask whether the light is still as it was; what was told of it waits."""
    seen, when = waiting.seen, waiting.when
    turn.change_conversation(waiting=waiting)
    with_age = seen.likely is not None and zone_told(turn) is not None
    key = "late.seen" if with_age else "late.seen_about"
    turn.say(Role.SETTINGS, key, when=when, age=texts.age(seen, turn.now))
    turn.ask(question, when=when)


def answered(turn: Turn, value: str) -> Waiting | None:
    """The light is the same, another, or left behind.

    Returns:
        What waited, to be answered as if it were of now; None when all is said.
    """
    waiting = turn.context.conversation.waiting
    turn.change_conversation(waiting=None)
    turn.resume_question()
    if waiting is None:
        repeat.put_again(turn)
        return None
    if value == "left":
        _left(turn, waiting)
        return None
    if value in {"darker", "brighter"}:
        _other_light(turn)
        return None
    by = KnownBy.CONFIRMED
    turn.seen = Seen(earliest=turn.now, latest=turn.now, by=by, likely=turn.now)
    turn.light = turn.seen
    return waiting


def _left(turn: Turn, waiting: Waiting) -> None:
    """They are gone from the water: a review, and the walk is closed."""
    turn.change_conversation(left_at=turn.now)
    if waiting.report is None:
        reviewing.told(turn, reviewing.read_again(turn, waiting), waiting.when)
    else:
        reviewing.frame(turn, waiting.report, waiting.when, waiting.picture)
    turn.change_conversation(walk=None, history=())
    turn.close_question()


def _other_light(turn: Turn) -> None:
    """Another light: what was known of the old one is void, look and depth are not."""
    turn.say(Role.CHECK, "late.new_frame")
    if turn.walk.given is None:
        repeat.put_again(turn)
        return
    turn.unlearn("light")
    turn.change_walk(clean_stops=None, clipped_stops=None, first_stops=None, light=None)
    base.give(turn)


# at the end of an answer


#: Texts that give settings made for a light.
_FOR_A_LIGHT: Final = ("highlights.", "adjust.", "frame.next", "keep.leaf_frame", "told.better")
#: Texts that repeat settings or compare with them: their light is named once it may have gone.
_OF_A_LIGHT: Final = (
    "keep.ladder",
    "told.settings",
    "where.given",
    "what_if.",
    "symptom.glare_time",
    "symptom.black_rock_numbers",
)
#: Texts of the base settings, which are made for a light only where one is known.
_BASE: Final = "base."
#: Texts among those that hold no settings.
_NO_SETTINGS: Final = frozenset(
    {"highlights.sky", "highlights.new_frame", "what_if.nothing", "what_if.fixed"}
)


def _rests_on_light(turn: Turn, *, live: bool) -> bool:
    """Whether the answer holds settings that rest on a light."""
    keys = {part.key for part in turn.parts} - _NO_SETTINGS
    walk = turn.walk
    measured = walk.clean_stops is not None or walk.clipped_stops is not None
    begun = (_BASE,) if measured or turn.facts.light is not None else ()
    resting = (*_FOR_A_LIGHT, *begun) if live else (*_FOR_A_LIGHT, *_OF_A_LIGHT, *begun)
    return any(key.startswith(resting) for key in keys)


def close(turn: Turn) -> None:
    """Say which light the settings are for, and leave the question to the last of several."""
    if turn.context.conversation.walk is not None:
        if turn.light is not None:
            turn.change_walk(light=turn.light)
        _say_light(turn)
    if is_queued(turn) and not turn.urgent:
        turn.leave_question_unsaid()
        if not turn.parts and not turn.actions:
            turn.say(Role.SETTINGS, "late.noted")


def _say_light(turn: Turn) -> None:
    light = turn.walk.light
    if light is None or turn.urgent:
        return
    live = standing_of(turn, light) is Standing.LIVE
    if not _rests_on_light(turn, live=live):
        return
    if any(part.key == "where.given" for part in turn.parts):
        turn.say(Role.CHECK, "light.at", when=light_of(turn, light))
    elif live:
        turn.say(Role.ASSUMPTION, "light.at", when=light_of(turn, light))
    elif light.by is KnownBy.SILENCE:
        silence = (light.latest - light.earliest).total_seconds() / 60
        turn.say(Role.SETTINGS, "light.if_silent", age=measures.minutes(silence))
    else:
        turn.say(Role.SETTINGS, "light.if", when=named(turn, light))


def named(turn: Turn, seen: Seen) -> str:
    """When something was, in words that may be said here."""
    return texts.named(seen, turn.now, zone_told(turn))


def light_of(turn: Turn, light: Seen) -> str:
    """The clock time of a light, in the zone of the place, else in UTC."""
    zone = zone_told(turn) or UTC
    return texts.clock(light.likely or light.latest, turn.now, zone)
