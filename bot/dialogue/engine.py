"""One event answered: danger first, then a held emergency, then what the event is."""

from __future__ import annotations

import re
from datetime import datetime, timedelta
from typing import Final

from bot.dialogue import taps
from bot.dialogue.actions import Action, Say
from bot.dialogue.compose import Part, Role, message
from bot.dialogue.context import Context, Snapshot
from bot.dialogue.danger import Level, read_danger
from bot.dialogue.events import (
    Event,
    FrameChecked,
    FrameReceived,
    FramesMeasured,
    Origin,
    OtherReceived,
    PlaceReceived,
    TextReceived,
    TimerFired,
    Withdrawn,
)
from bot.dialogue.own_words import is_own
from bot.dialogue.questions import QUESTIONS
from bot.dialogue.reading import number_answer, read
from bot.dialogue.reading.foreign import glossed
from bot.dialogue.replies import chosen
from bot.dialogue.steps import (
    arrive,
    closed_place,
    doubt,
    emergency,
    frames,
    heard,
    light_named,
    limits,
    manner,
    measured,
    repeat,
)
from bot.dialogue.texts import domain_key, domain_values, speaking
from bot.dialogue.turn import Turn
from bot.dialogue.words import answer_words
from core.errors import OutOfDomainError

#: No number that means something has so many digits; patterns would take long over more (own rule).
_LONG_NUMBER: Final = re.compile(r"(\d{30})\d+")
#: A shared position is kept this long (own rule: a day out).
POSITION_KEPT: Final = timedelta(hours=24)


def handle(context: Context, event: Event, now: datetime) -> tuple[Context, tuple[Action, ...]]:
    """Answer one event.

    Args:
        context: all that is known; not changed.
        event: what came.
        now: the time of the answer, aware.

    Returns:
        The new context, and what the runtime shall do, in order.
    """
    with speaking(context.person.language):
        return _handled(context, event, now)


def _handled(context: Context, event: Event, now: datetime) -> tuple[Context, tuple[Action, ...]]:
    turn = Turn(_without_old_position(context, now), event.origin, now)
    try:
        _answer(turn, event)
        closed_place.close(turn)
        light_named.close(turn)
    except OutOfDomainError as error:
        spent = turn.context.person.spent
        turn = Turn(_without_old_position(context, now), event.origin, now)
        turn.change_person(spent=spent)
        turn.say(Role.SETTINGS, domain_key(error), **domain_values(error, turn.units))
        repeat.put_again(turn)
    if not (event.origin.addressed or turn.parts):
        turn.unheard = True  # what others say to each other leaves no trace
    return turn.finish()


def failure(origin: Origin, reference: str) -> Say:
    """What is said when the bot itself broke; everything given is kept."""
    del origin
    return message([Part(Role.SETTINGS, "failed", {"reference": reference})])


def _without_old_position(context: Context, now: datetime) -> Context:
    position = context.person.position
    if position is None or now - position.shared_at <= POSITION_KEPT:
        return context
    person = context.person.model_copy(update={"position": None})
    return context.model_copy(update={"person": person})


def _answer(turn: Turn, event: Event) -> None:
    match event:
        case TextReceived():
            _typed_or_tapped(turn, event)
        case Withdrawn():
            frames.withdrawn(turn, event.event_id)
            taps.withdrawn(turn, event.event_id)
        case FrameReceived():
            _frame(turn, event)
        case _ if emergency.is_held(turn):
            _shared_while_held(turn, event)
        case FrameChecked() | FramesMeasured():
            _measured(turn, event)
        case TimerFired():
            arrive.timer_fired(turn, event)
        case _ if event.origin.addressed:
            _shared(turn, event)


def _measured(turn: Turn, event: FrameChecked | FramesMeasured) -> None:
    """A result: of one frame, or of several together; unsaid while a place is closed."""
    if closed_place.is_open(turn):
        return
    if isinstance(event, FrameChecked):
        frames.checked(turn, event)
    else:
        measured.came(turn, event)


def _shared_while_held(
    turn: Turn, event: FrameChecked | FramesMeasured | TimerFired | PlaceReceived | OtherReceived
) -> None:
    """In an emergency a location helps; results and reminders stay unsaid."""
    match event:
        case PlaceReceived():
            emergency.place_shared(turn, event)
        case OtherReceived() if event.origin.addressed:
            emergency.held(turn)


def _shared(turn: Turn, event: PlaceReceived | OtherReceived) -> None:
    """Something without words of its own: a location, a voice message."""
    if limits.message_refused(turn):
        return
    heard.listen(turn, "")
    match event:
        case PlaceReceived():
            arrive.place_shared(turn, event)
        case _:
            turn.say(Role.SETTINGS, f"other.{event.what}")
            if repeat.standing(turn) is not None:
                repeat.put_again(turn)


def _frame(turn: Turn, event: FrameReceived) -> None:
    """A frame is measured; its caption is read like a message, without an answer of its own.

    In danger it is not measured: nobody gets settings for that place.
    """
    if _warned(turn, event.origin, event.caption, asking=False) or not event.origin.addressed:
        return
    if emergency.is_held(turn):
        emergency.held(turn)
        return
    if closed_place.is_open(turn):
        emergency.insist(turn)
        return
    if limits.message_refused(turn):
        return
    caption = heard.listen(turn, event.caption)
    facts = read(caption, units=turn.units)
    if facts.known() and heard.counts_now(turn):
        turn.learn(facts)
    if not limits.frame_refused(turn):
        frames.received(turn, event)


def _warned(turn: Turn, origin: Origin, text: str, *, asking: bool = True) -> bool:
    """Whether the words told of danger and were answered; to others, of emergencies only.

    What only sounds like danger is asked about, unless a frame would wait for the answer.
    """
    danger = None if is_own(text) else read_danger(text)
    if danger is None or not (origin.addressed or danger.level is Level.EMERGENCY):
        return False
    if danger.level is Level.UNSURE:
        return asking and not closed_place.is_open(turn) and doubt.ask(turn, text)
    emergency.answer(turn, danger)
    return True


def _text(turn: Turn, event: TextReceived) -> None:
    event = event.model_copy(update={"text": _LONG_NUMBER.sub(r"\1", event.text)})
    if _warned(turn, event.origin, event.text):
        return
    if emergency.is_held(turn):
        _while_held(turn, event)
    elif event.origin.addressed and not _is_one_too_many(turn, event):
        _addressed(turn, event)
        manner.offer(turn, event.text)


def _is_one_too_many(turn: Turn, event: TextReceived) -> bool:
    """Past the person's limit; who takes "all are safe" back is heard whatever came before."""
    return event.answers != "safe" and limits.message_refused(turn, event.text)


def _typed_or_tapped(turn: Turn, event: TextReceived) -> None:
    """A message, or a tap: the option in a message's place, or nothing at all."""
    words = taps.as_words(turn, event) if event.tapped else event
    if words is not None:
        _text(turn, words)
    elif not turn.parts:
        turn.unheard = True


def _addressed(turn: Turn, event: TextReceived) -> None:
    rest = heard.listen(turn, event.text)
    turn.replies_to = event.replies_to
    if rest:
        event = event.model_copy(update={"text": rest})
    if event.corrects is not None:
        _corrected(turn, event)
        return
    answer_words(turn, event)


def _while_held(turn: Turn, event: TextReceived) -> None:
    """Only the answer to "are all safe?" counts while an emergency is held."""
    if not event.origin.addressed:
        emergency.overheard(turn, glossed(event.text, turn.context.person.language))
        return
    said = glossed(event.text, turn.context.person.language)
    value = chosen(QUESTIONS["safe"], event.text) or emergency.worded("safe", said)
    history = turn.context.conversation.history
    of_the_walk = event.answers not in {None, "safe"} or _is_of_an_older_answer(event, history)
    if value is None or of_the_walk:
        emergency.held(turn)
    else:
        emergency.answer_safe(turn, value)


def _corrected(turn: Turn, event: TextReceived) -> None:
    """An edit: the answer it corrects is undone if it was the last, then the new text is read."""
    history = turn.context.conversation.history
    if history and history[-1].event_id == event.corrects:
        turn.undo()
        turn.rebase()
    elif _is_of_an_older_answer(event, history):
        turn.say(Role.SETTINGS, "old_answer", number=event.text.strip())
        repeat.put_again(turn)
        return
    if emergency.is_held(turn):
        _while_held(turn, event)
    else:
        answer_words(turn, event)


def _is_of_an_older_answer(event: TextReceived, history: tuple[Snapshot, ...]) -> bool:
    """A number that corrects an answer before the last one cannot answer what is asked now."""
    corrected = any(answer.event_id == event.corrects for answer in history)
    return corrected and number_answer(event.text) is not None
