"""One event answered: danger first, then the words that work anywhere, then the step."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from datetime import datetime, timedelta
from typing import Final

from bot.dialogue.actions import Action, Say
from bot.dialogue.compose import Part, Role, message
from bot.dialogue.context import Context, Question
from bot.dialogue.danger import Level, read_danger
from bot.dialogue.events import (
    Event,
    FrameChecked,
    FrameReceived,
    Origin,
    OtherReceived,
    PlaceReceived,
    TextReceived,
    TimerFired,
    Withdrawn,
)
from bot.dialogue.facts import Blink, Facts
from bot.dialogue.questions import QUESTIONS, Asked
from bot.dialogue.reading import number_answer, read
from bot.dialogue.replies import chosen, meant, says_yes_or_no
from bot.dialogue.steps import (
    arrive,
    commands,
    composition,
    emergency,
    forget,
    frames,
    highlights,
    keep,
    lens,
    questions_asked,
    repeat,
    told,
)
from bot.dialogue.texts import TEXTS, domain_key, domain_values
from bot.dialogue.turn import Turn
from core.errors import OutOfDomainError

#: A walk that was silent for longer is asked about: go on or new? (own rule: a night).
STALE_WALK: Final = timedelta(hours=8)
#: Light that frames have told of holds for this long without a word (own rule).
LIGHT_KEPT: Final = timedelta(minutes=30)
#: A number typed this long before its question was put cannot answer it [s] (own rule: clocks
#: of server and bot differ by a little).
OLD_ANSWER_S: Final = 5.0
#: A shared position is kept this long (own rule: a day out).
POSITION_KEPT: Final = timedelta(hours=24)
#: Geometry may be told without its question while nothing of it is known.
_ALWAYS_EXPECTED: Final = frozenset({"fall_height_m", "distance_m", "nearest_m"})

Answer = Callable[[Turn, str], None]

_ANSWERS: Final[Mapping[str, Answer]] = {
    "format": lens.answer_format,
    "too_near": lens.answer_too_near,
    "top": lambda turn, value: composition.answer(turn, "top", value),
    "sides": lambda turn, value: composition.answer(turn, "sides", value),
    "anchor": lambda turn, value: composition.answer(turn, "anchor", value),
    "blink": lambda turn, value: highlights.blinked(turn, Blink(value)),
    "blink_again": lambda turn, value: highlights.blinked(turn, Blink(value)),
    "sky_gap": frames.answer_sky_gap,
    "seen": told.answer_seen,
    "leaves": keep.answer_leaves,
    "next": keep.answer_next,
    "rear_screen": frames.answer_rear_screen,
    "screen_says": frames.answer_screen_says,
    "area": frames.answer_area,
    "out_there": emergency.answer_out_there,
    "safe": emergency.answer_safe,
    "restart": commands.answer_restart,
    "forget": forget.answer,
}


def handle(context: Context, event: Event, now: datetime) -> tuple[Context, tuple[Action, ...]]:
    """Answer one event.

    Args:
        context: all that is known; not changed.
        event: what came.
        now: the time of the answer, aware.

    Returns:
        The new context, and what the runtime shall do, in order.
    """
    turn = Turn(_without_old_position(context, now), event.origin, now)
    try:
        _answer(turn, event)
    except OutOfDomainError as error:
        turn = Turn(_without_old_position(context, now), event.origin, now)
        turn.say(Role.SETTINGS, domain_key(error), **domain_values(error, turn.units))
        repeat.put_again(turn)
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
            _text(turn, event)
        case Withdrawn():
            frames.withdrawn(turn, event.event_id)
        case FrameReceived():
            _frame(turn, event)
        case _ if emergency.is_held(turn):
            _shared_while_held(turn, event)
        case FrameChecked():
            frames.checked(turn, event)
        case TimerFired():
            arrive.timer_fired(turn, event.name)
        case _ if event.origin.addressed:
            _shared(turn, event)


def _shared_while_held(
    turn: Turn, event: FrameChecked | TimerFired | PlaceReceived | OtherReceived
) -> None:
    """In an emergency a location helps; results and reminders stay unsaid."""
    match event:
        case PlaceReceived():
            emergency.place_shared(turn, event)
        case OtherReceived() if event.origin.addressed:
            emergency.held(turn)


def _shared(turn: Turn, event: PlaceReceived | OtherReceived) -> None:
    """Something without words of its own: a location, a voice message."""
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
    if _warned(turn, event.origin, event.caption) or not event.origin.addressed:
        return
    if emergency.is_held(turn):
        emergency.held(turn)
        return
    if event.caption:
        facts = read(event.caption, units=turn.units)
        if facts.known():
            turn.learn(facts)
    frames.received(turn, event)


def _warned(turn: Turn, origin: Origin, text: str) -> bool:
    """Whether the words told of danger and were answered; to others, of emergencies only."""
    danger = read_danger(text)
    if danger is None or not (origin.addressed or danger.level is Level.EMERGENCY):
        return False
    emergency.answer(turn, danger)
    return True


def _text(turn: Turn, event: TextReceived) -> None:
    if _warned(turn, event.origin, event.text):
        return
    if emergency.is_held(turn):
        _while_held(turn, event)
    elif event.origin.addressed:
        _addressed(turn, event)


def _forget_old_light(turn: Turn) -> None:
    """What frames told of the light is void after a silence at the water."""
    last_at = turn.context.conversation.last_at
    silent = last_at is not None and turn.now - last_at > LIGHT_KEPT
    if silent and turn.context.conversation.walk is not None:
        turn.change_walk(clean_stops=None, clipped_stops=None, first_stops=None)


def _addressed(turn: Turn, event: TextReceived) -> None:
    _forget_old_light(turn)
    if event.corrects is not None:
        _corrected(turn, event)
        return
    _words(turn, event)


def _while_held(turn: Turn, event: TextReceived) -> None:
    """Only the answer to "are all safe?" counts while an emergency is held."""
    if not event.origin.addressed:
        emergency.overheard(turn, event.text)
        return
    value = chosen(QUESTIONS["safe"], event.text) or emergency.worded("safe", event.text)
    if value is None:
        emergency.held(turn)
    else:
        emergency.answer_safe(turn, value)


def _corrected(turn: Turn, event: TextReceived) -> None:
    """An edit: the answer it corrects is undone if it was the last, then the new text is read."""
    history = turn.context.conversation.history
    if history and history[-1].event_id == event.corrects:
        last = history[-1]
        turn.change_conversation(history=history[:-1], walk=last.walk, question=last.question)
        turn.change_person(kit=last.kit)
        turn.rebase()
    _words(turn, event)


def _words(turn: Turn, event: TextReceived) -> None:
    command = commands.command_of(event.text)
    if _asks_to_resume(turn, event, command):
        return
    question = turn.context.conversation.question
    asked = QUESTIONS.get(question.name) if question else None
    offered = asked is not None and chosen(asked, event.text) is not None
    if command is not None and not offered:
        commands.run(turn, command)
        return
    if question and asked and asked.options and _answered(turn, event, question):
        return
    _facts(turn, event.text, asked)


#: Words that are answered after a night without asking whether the walk goes on.
_AT_ANY_HOUR: Final = frozenset({"forget", "help", "stop", "kit"})


def _asks_to_resume(turn: Turn, event: TextReceived, command: str | None) -> bool:
    """After a night: go on or new? The message waits until that is answered."""
    if command in _AT_ANY_HOUR:
        return False
    conversation = turn.context.conversation
    question = conversation.question
    if question is not None and question.name == "resume":
        return _resumed(turn, event, command)
    silent = conversation.walk is not None and (
        conversation.last_at is not None and turn.now - conversation.last_at > STALE_WALK
    )
    if not silent:
        return False
    if command == "start":
        arrive.start(turn)
        return True
    turn.change_conversation(held_text=event.text)
    turn.say(Role.SETTINGS, "resume", step=TEXTS[f"step.{turn.walk.state.value}"])
    turn.ask("resume")
    return True


def _resumed(turn: Turn, event: TextReceived, command: str | None) -> bool:
    """Go on with the old walk, or begin a new one, then read the message that waited."""
    value = "new" if command == "start" else chosen(QUESTIONS["resume"], event.text)
    waiting = turn.context.conversation.held_text
    if value is None:
        turn.say(Role.SETTINGS, "resume", step=TEXTS[f"step.{turn.walk.state.value}"])
        turn.ask("resume")
        return True
    turn.change_conversation(held_text=None)
    if value == "new":
        arrive.start(turn)
        return True
    turn.resume_question()
    if waiting is None or commands.command_of(waiting) is not None:
        repeat.put_again(turn)
        return True
    _words(turn, event.model_copy(update={"text": waiting}))
    return True


def _answered(turn: Turn, event: TextReceived, question: Question) -> bool:
    """Whether the message was a numbered or worded reply to the open question."""
    asked = QUESTIONS[question.name]
    number = number_answer(event.text)
    if number is not None and _is_old(event, question):
        turn.say(Role.SETTINGS, "old_answer", number=str(number))
        repeat.put_again(turn)
        return True
    value = (
        chosen(asked, event.text)
        or emergency.worded(asked.name, event.text)
        or meant(asked, event.text)
    )
    if value is not None:
        turn.remember_for_back()
        _ANSWERS[asked.name](turn, value)
        return True
    if number is None:
        return False
    turn.say(Role.SETTINGS, "no_such_option", number=str(number), most=str(len(asked.options)))
    turn.ask(question.name, **question.values)
    return True


def _is_old(event: TextReceived, question: Question) -> bool:
    """The number names another question, or was typed before this one was put."""
    if event.answers and event.answers != question.name:
        return True
    return (question.asked_at - event.origin.sent_at).total_seconds() > OLD_ANSWER_S


def _facts(turn: Turn, text: str, asked: Asked | None) -> None:
    """A message that is no command and no option: read its facts and go on from them."""
    expecting = frozenset(asked.expects) if asked else frozenset()
    if not _ALWAYS_EXPECTED & set(turn.facts.known()):
        expecting |= _ALWAYS_EXPECTED if not asked or not asked.expects else frozenset()
    rest = questions_asked.answer(turn, text)
    if rest is not None:
        expecting = frozenset()  # a bare number beside a question answers nothing
    facts = read(text if rest is None else rest, units=turn.units, expecting=expecting)
    if facts.known():
        turn.remember_for_back()
        told.take_in(turn, facts, text if rest is None else rest)
    elif rest is None:
        _not_understood(turn, facts, text)
    else:
        repeat.put_again(turn)


def _not_understood(turn: Turn, facts: Facts, text: str) -> None:
    if facts.unread:
        turn.say(Role.SETTINGS, "unread", pieces=", ".join(f"`{p}`" for p in facts.unread[:3]))
    elif says_yes_or_no(text) and repeat.standing(turn) is not None:
        turn.say(Role.SETTINGS, "which_one")
    else:
        turn.say(Role.SETTINGS, "not_understood")
    repeat.put_again(turn)
