"""Light that has passed: asked about before settings are given, or answered as a review."""

from __future__ import annotations

from typing import Final

from bot.dialogue.compose import Role
from bot.dialogue.context import Waiting
from bot.dialogue.facts import Facts, Symptom
from bot.dialogue.lateness import KnownBy, Seen, Standing
from bot.dialogue.slots import KIT_SLOTS
from bot.dialogue.states import State
from bot.dialogue.steps.anywhere import repeat
from bot.dialogue.steps.anywhere.heard import is_queued, standing_of
from bot.dialogue.steps.frames import reviewing
from bot.dialogue.steps.walk import base
from bot.dialogue.steps.walk.light_named import named
from bot.dialogue.texts import late as texts
from bot.dialogue.turn import Turn
from bot.dialogue.way_out import zone_told

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
