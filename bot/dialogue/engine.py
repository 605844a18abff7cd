"""One event answered: danger first, then a held emergency, then what the event is."""

from __future__ import annotations

import re
from datetime import datetime
from typing import Final

from bot.dialogue import out_of_range, taps
from bot.dialogue.actions import Action, Say
from bot.dialogue.compose import Part, Role, message
from bot.dialogue.context import Context, Emergency
from bot.dialogue.danger import Danger, Level
from bot.dialogue.danger.cry import Cry, cry_of
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
from bot.dialogue.history import is_of_an_older_answer
from bot.dialogue.hours import with_hours
from bot.dialogue.reading.command_words import command_of
from bot.dialogue.steps.anywhere import edges_kept, heard, limits, manner, repeat
from bot.dialogue.steps.incoming import measured, shared
from bot.dialogue.steps.safety import (
    all_safe,
    closed_place,
    danger_here,
    doubt,
    emergency,
    hint,
    precaution,
    rain_asked,
    slick_side,
    whole_room,
)
from bot.dialogue.steps.walk import arrive, light_named, patience
from bot.dialogue.texts import speaking
from bot.dialogue.turn import Turn
from bot.dialogue.words import answer_rest, answer_words
from core.errors import OutOfDomainError

#: No number that means something has so many digits; patterns would take long over more (own rule).
_LONG_NUMBER: Final = re.compile(r"(\d{30})\d+")


def handle(context: Context, event: Event, now: datetime) -> tuple[Context, tuple[Action, ...]]:
    """Answer one event.

    Args:
        context: all that is known; not changed.
        event: what came.
        now: the time of the answer, aware.

    Returns:
        The new context, and what the runtime shall do, in order.
    """
    context = with_hours(context, event)
    with speaking(context.person.language, halves=context.person.halves):
        return _handled(context, event, now)


def _handled(context: Context, event: Event, now: datetime) -> tuple[Context, tuple[Action, ...]]:
    context = context.without_old_position(now)
    turn = Turn(context, event.origin, now)
    try:
        _answered(turn, event)
    except OutOfDomainError as error:
        spent = turn.context.person.spent
        turn = out_of_range.answered(context, event, now, error, _answered)
        turn.change_person(spent=spent)
        if not turn.question_put:
            repeat.put_again(turn)
    if not (event.origin.is_for_linn or turn.parts):
        turn.unheard = True  # what others say to each other leaves no trace
    return turn.finish()


def _answered(turn: Turn, event: Event) -> None:
    if isinstance(event, TextReceived | FrameReceived | PlaceReceived | OtherReceived):
        whole_room.enter(turn)
    _answer(turn, event)
    whole_room.leave(turn)
    doubt.close(turn)
    closed_place.close(turn)
    patience.close(turn, wanted=_asks_to_see(event))
    light_named.close(turn)
    slick_side.mind(turn)


def _asks_to_see(event: Event) -> bool:
    """Whether the event is a word that works anywhere: who asks where they are sees it."""
    return isinstance(event, TextReceived) and command_of(event.text) is not None


def failure(origin: Origin, reference: str) -> Say:
    """What is said when the bot itself broke; everything given is kept."""
    del origin
    return message([Part(Role.SETTINGS, "failed", {"reference": reference})])


def _answer(turn: Turn, event: Event) -> None:
    match event:
        case TextReceived():
            _typed_or_tapped(turn, event)
        case Withdrawn():
            shared.withdrawn(turn, event.event_id)
            taps.withdrawn(turn, event.event_id)
        case FrameReceived():
            _frame(turn, event)
        case _ if emergency.is_held(turn):
            _shared_while_held(turn, event)
        case FrameChecked() | FramesMeasured():
            _measured(turn, event)
        case TimerFired():
            arrive.timer_fired(turn, event)
        case _ if not doubt.is_aside(turn):
            _shared(turn, event)


def _measured(turn: Turn, event: FrameChecked | FramesMeasured) -> None:
    """A result: of one frame, or of several together; unsaid while a place is closed."""
    if closed_place.is_open(turn):
        return
    if doubt.is_open(turn):
        doubt.hold(turn, event)
    elif isinstance(event, FrameChecked):
        shared.checked(turn, event)
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

    In danger it is not measured: nobody gets settings for that place. Where its caption only
    sounds like danger, that is asked, and the result waits.
    """
    danger = danger_here.danger_in(turn, event.caption)
    if _warned(turn, event.origin, event.caption, danger) or doubt.is_aside(turn):
        return
    if emergency.is_held(turn):
        emergency.held(turn)
    elif closed_place.is_open(turn):
        heard.keep(turn, heard.listen(turn, event.caption))
        emergency.insist(turn)
    elif not limits.message_refused(turn):
        heard.keep(turn, heard.listen(turn, event.caption))
        if not limits.frame_refused(turn):
            shared.received(turn, event)
        if doubt.is_open(turn):
            doubt.insist(turn)
        else:
            _asked_first(turn, event.caption, danger)


def _warned(turn: Turn, origin: Origin, text: str, danger: Danger | None) -> bool:
    """Whether the words told of danger and were answered; to others, of emergencies only."""
    emergency_told = danger is not None and danger.level is Level.EMERGENCY
    if not emergency_told and cry_of(text) is Cry.SHOUTED:
        doubt.cry(turn, text)
        return True
    if not (origin.addressed or emergency_told):
        return False
    if danger is None or not danger.is_told:
        return emergency.rumbles_on(turn, text)
    edges_kept.keep(turn, text)
    heard.keep_kit(turn, text)
    emergency.answer(turn, danger, danger_here.with_friends(turn, text))
    return True


def _text(turn: Turn, event: TextReceived) -> None:
    event = event.model_copy(update={"text": _LONG_NUMBER.sub(r"\1", event.text)})
    manner.begin(turn, event.text)
    danger = danger_here.danger_in(turn, event.text)
    if _warned(turn, event.origin, event.text, danger):
        return
    event = event.model_copy(update={"text": manner.in_full(turn, event.text)})
    held = turn.context.conversation.emergency
    if held is not None:
        _while_held(turn, held, event)
    elif doubt.is_aside(turn):
        doubt.overheard(turn, event)
    elif _asked_first(turn, event.text, danger):
        return
    elif not _is_one_too_many(turn, event):
        _addressed(turn, event)
        manner.offer(turn, event.text)


def _asked_first(turn: Turn, text: str, danger: Danger | None) -> bool:
    """Whether words that sound like danger are asked about before anything else."""
    if danger is None or closed_place.is_open(turn):
        return False
    if danger.level is Level.HINT and hint.goes_on(turn, text):
        return False
    return doubt.ask(turn, text)


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
    rest, whole = heard.listen(turn, event.text), event.text
    turn.replies_to = event.replies_to
    if rest:
        event = event.model_copy(update={"text": rest})
    if doubt.is_open(turn) or closed_place.is_open(turn) or event.corrects is not None:
        _as_asked(turn, event, whole)
        return
    beside = slick_side.hear(turn, event.text)
    if beside is None:
        repeat.put_again_if_open(turn)
        return
    _as_asked(turn, event.model_copy(update={"text": beside}), whole)


def _as_asked(turn: Turn, event: TextReceived, whole: str) -> None:
    """Answer a message that is for Linn; `whole` has the words that told when, too."""
    if event.corrects is not None:
        _corrected(turn, event)
    elif cry_of(event.text) is Cry.PLAIN:
        _asked_for_help(turn, event)
    elif doubt.is_open(turn) or not _is_cautioned(turn, event.text, whole):
        answer_words(turn, event)


def _is_cautioned(turn: Turn, text: str, whole: str) -> bool:
    """Whether a message asks or tells of what people do so that nothing happens."""
    return rain_asked.answer(turn, whole) or precaution.answer(turn, text)


def _asked_for_help(turn: Turn, event: TextReceived) -> None:
    """A bare call for help, however it is worded, is the word that works anywhere."""
    if doubt.is_open(turn):
        doubt.cry(turn, event.text)
    else:
        answer_words(turn, event.model_copy(update={"text": "help"}))


def _while_held(turn: Turn, held: Emergency, event: TextReceived) -> None:
    """Only the answer to "are all safe?" counts while an emergency is held, and another cry."""
    event = event.model_copy(update={"text": danger_here.with_friends(turn, event.text)})
    if not event.origin.addressed:
        all_safe.overheard(turn, held, event)
    elif cry_of(event.text) is not None:
        emergency.repeat_card(turn)
    elif not all_safe.taken_back(turn, held, event):
        history = turn.context.conversation.history
        older = event.answers not in {None, "safe"} or is_of_an_older_answer(event, history)
        rest = all_safe.answer(turn, held, event, of_the_walk=older)
        if rest:
            answer_rest(turn, event.model_copy(update={"text": rest, "answers": None}))


def _corrected(turn: Turn, event: TextReceived) -> None:
    """An edit: the answer it corrects is undone if it was the last, then the new text is read."""
    history = turn.context.conversation.history
    if history and history[-1].event_id == event.corrects:
        turn.undo()
        turn.rebase()
    elif is_of_an_older_answer(event, history):
        turn.say(Role.SETTINGS, "old_answer", number=event.text.strip())
        repeat.put_again(turn)
        return
    held = turn.context.conversation.emergency
    if held is not None:
        _while_held(turn, held, event)
    else:
        answer_words(turn, event)
