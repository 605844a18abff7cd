"""A message that only sounds like danger: that is asked first; what it tells waits meanwhile."""

from __future__ import annotations

from typing import Final

from bot.dialogue.compose import Role
from bot.dialogue.context import Doubt
from bot.dialogue.danger import (
    Danger,
    DangerKind,
    Level,
    read_danger,
    whose,
)
from bot.dialogue.danger.aftermath import asks_if_safe
from bot.dialogue.danger.cold_child import child_is_cold
from bot.dialogue.danger.cry import cry_of
from bot.dialogue.danger.people_here import may_be_of_somebody
from bot.dialogue.danger.whose import names_somebody
from bot.dialogue.events import FrameChecked, FramesMeasured, TextReceived
from bot.dialogue.meaning.sentences import sentences_of, without
from bot.dialogue.meaning.water_colour import Brown, brown_asked
from bot.dialogue.questions import QUESTIONS
from bot.dialogue.reading import number_answer
from bot.dialogue.reading.access import needs_of
from bot.dialogue.reading.command_words import command_of
from bot.dialogue.reading.foreign import glossed
from bot.dialogue.reading.normal import normalise
from bot.dialogue.reading.party import is_only_party
from bot.dialogue.reading.standing import asks_to_stand
from bot.dialogue.replies import chosen, names_part_of_frame
from bot.dialogue.steps.anywhere import heard, manner, repeat
from bot.dialogue.steps.home import home_words
from bot.dialogue.steps.incoming import measured, shared
from bot.dialogue.steps.safety import closed_place, doubt_reply, emergency
from bot.dialogue.steps.visits import dusk_out
from bot.dialogue.turn import Turn

_QUESTION: Final = "in_danger"
_WHY: Final = "danger.doubt_why"
#: So often it is put; after that one line says how to go on (own rule: a third time is nagging).
_MOST_TIMES: Final = 2


def is_open(turn: Turn) -> bool:
    """Whether somebody may be in danger, by what was written last."""
    return turn.context.conversation.doubted is not None


def is_aside(turn: Turn) -> bool:
    """Whether the message is said to others; in the bot's own thread only while nothing is open."""
    if not turn.origin.addressed:
        return True
    return turn.origin.aside and not (is_open(turn) or closed_place.is_open(turn))


def ask(turn: Turn, text: str, *, reason: str = "danger.doubt") -> bool:
    """Ask whether anybody is in danger, before anything of the message is answered.

    Args:
        turn: the answer under construction.
        text: the message, which waits.
        reason: what stands before the question.

    Returns:
        Whether it is asked: not while it stands open, nor while an emergency is held.
    """
    conversation = turn.context.conversation
    if conversation.doubted is not None or conversation.emergency is not None:
        return False
    if cry_of(text) is None and is_harmless(turn, text):
        return False
    if asks_to_stand(text):
        emergency.answer(turn, Danger(DangerKind.WADING, Level.STOP), text)
        return True
    standing = conversation.question
    passing = standing is not None and QUESTIONS[standing.name].passing
    doubt = Doubt(event_id=turn.origin.event_id, interrupted=standing if passing else None)
    turn.change_conversation(doubted=text, doubt=doubt)
    _put(turn, reason)
    return True


def is_harmless(turn: Turn, text: str) -> bool:
    """Whether words that sound like danger are of something else, as far as can be told."""
    told = _answers_the_walk(turn, text) or _tells_of_visit(turn, text)
    answered = brown_asked(text) is Brown.CLEAR or child_is_cold(text)
    return told or answered or _tells_of_ears(turn, text)


def _tells_of_ears(turn: Turn, text: str) -> bool:
    """Whether a message says that its writer hears or sees badly, and names nobody else."""
    said = glossed(text, turn.context.person.language)
    return bool(needs_of(said) or needs_of(text)) and not whose(text).others


def _answers_the_walk(turn: Turn, text: str) -> bool:
    """Whether a message names what was asked of a frame, or is seen in one at home, and nobody."""
    question = turn.context.conversation.question
    said = glossed(text, turn.context.person.language)
    named = question is not None and names_part_of_frame(QUESTIONS[question.name], said)
    return (named or home_words.is_of_frames(turn, text)) and not names_somebody(text)


def _tells_of_visit(turn: Turn, text: str) -> bool:
    """Whether a message says who walks along and no more, or asks of the way out at dusk."""
    said = glossed(text, turn.context.person.language)
    return is_only_party(normalise(said, with_others=True)) or dusk_out.is_way_out(said)


def cry(turn: Turn, text: str) -> None:
    """A shout for help, and nothing else: the number to call, and what happened."""
    turn.urgent = True
    if emergency.is_held(turn):
        emergency.repeat_card(turn)
    elif not turn.origin.addressed:
        turn.say(Role.SAFETY, "danger.cry")
    elif is_open(turn):
        turn.say(Role.SAFETY, "danger.cry")
        turn.ask(_QUESTION)
    else:
        ask(turn, text, reason="danger.cry")


def _put(turn: Turn, reason: str) -> None:
    """The question with its reason; once it was put often enough, only how to go on."""
    turn.urgent = True
    doubt = turn.context.conversation.doubt
    if doubt.asked < _MOST_TIMES:
        turn.say(Role.SAFETY, reason)
        turn.ask(_QUESTION)
        turn.change_conversation(doubt=doubt.model_copy(update={"asked": doubt.asked + 1}))
        return
    turn.ask(_QUESTION)
    turn.leave_question_unsaid()
    if reason == _WHY:
        turn.say(Role.SAFETY, reason)
    turn.say(Role.CHECK, "danger.doubt_open")


def text_to_answer(turn: Turn, event: TextReceived) -> str | None:
    """The words to go on with: those that came, or those that waited; None when answered here.

    Nothing but an answer ends the doubt: until then what is told is kept, and gets no settings.
    """
    doubted, doubt = turn.context.conversation.doubted, turn.context.conversation.doubt
    if doubted is None:
        return _taken_back(turn, event)
    if event.corrects == doubt.event_id:
        _end(turn)
        return event.text
    if closed_place.is_for_an_interruption(turn) and event.answers != _QUESTION:
        return event.text
    danger = doubt_reply.answer(turn, event, doubted)
    if danger is None:
        return _unanswered(turn, event, doubted)
    _end(turn)
    if danger:
        heard.keep(turn, doubted)
        emergency.answer(turn, Danger(DangerKind.UNCLEAR, Level.EMERGENCY), doubted)
        return None
    return _go_on(turn, event.text, doubted, doubt)


def _is_let_go(turn: Turn, text: str, doubted: str) -> bool:
    """Whether words that seldom tell of danger are followed by others that tell or ask something.

    Who needs help does not go on about filters.
    """
    danger = read_danger(doubted)
    seldom = danger is not None and danger.level is Level.HINT
    return seldom and read_danger(text) is None and manner.tells_or_asks(turn, text)


def _taken_back(turn: Turn, event: TextReceived) -> str | None:
    """Who replies "yes" to the question later, after a "no", takes that back."""
    if event.answers != _QUESTION or chosen(QUESTIONS[_QUESTION], event.text) != "yes":
        return event.text
    emergency.answer(turn, Danger(DangerKind.UNCLEAR, Level.EMERGENCY), event.text)
    return None


def _unanswered(turn: Turn, event: TextReceived, doubted: str) -> str | None:
    """Words that answer nothing: kept, unless they lead to no settings anyway."""
    if _is_let_go(turn, event.text, doubted):
        heard.keep(turn, doubted)
        _end(turn)
        return event.text
    command = command_of(event.text)
    if closed_place.leads_to_no_settings(event.text, command):
        return event.text
    heard.keep(turn, event.text)
    _put(turn, _WHY if command == "why" else "danger.doubt_again")
    return None


def _go_on(turn: Turn, reply: str, doubted: str, doubt: Doubt) -> str | None:
    """Nobody is in danger: what waited is answered, a result of frames before any words.

    Who asks something in the reply wants that answered.
    """
    asked = doubt_reply.asked_behind(turn, reply)
    if number_answer(reply) is None:
        heard.keep(turn, reply)  # "we're there, all well: it is 18 m tall"
    if doubt.unsaid is None and not asked:
        return _waited(turn, doubted)
    heard.keep(turn, doubted)
    if isinstance(doubt.unsaid, FrameChecked):
        shared.checked(turn, doubt.unsaid)
    elif doubt.unsaid is not None:
        measured.came(turn, doubt.unsaid)
    return _beside_wading(turn, asked) or None


def _beside_wading(turn: Turn, asked: str) -> str:
    """What is asked, without whether the water is safe: that is answered at once."""
    rest = without(sentences_of(asked), asks_if_safe)
    if rest is None:
        return asked
    turn.say(Role.SAFETY, "answer.wading")
    if "?" in rest:
        return rest
    repeat.put_again_if_open(turn)
    return ""


def _waited(turn: Turn, doubted: str) -> str | None:
    """The words that waited; where they told and asked nothing, that is all."""
    if cry_of(doubted):
        return "commands"
    if manner.tells_or_asks(turn, doubted):
        return doubted
    turn.say(Role.SAFETY, "danger.retracted")
    repeat.put_again(turn, whole=True)
    return None


def _end(turn: Turn) -> None:
    """What stood open before stands open again."""
    interrupted = turn.context.conversation.doubt.interrupted
    paused = turn.context.conversation.paused
    turn.change_conversation(doubted=None, doubt=Doubt())
    turn.resume_question()
    if interrupted is not None:
        turn.change_conversation(question=interrupted, paused=paused)
        turn.rebase()


def overheard(turn: Turn, event: TextReceived) -> None:
    """In a group room people answer each other: that nobody is in danger counts.

    What would be an emergency of anybody but a name is asked about, though nobody asked Linn.
    """
    doubted = turn.context.conversation.doubted
    if doubted is None:
        if may_be_of_somebody(event.text):
            ask(turn, event.text)
    elif doubt_reply.answer_by_words(event, doubted) is False:
        _end(turn)


def hold(turn: Turn, result: FrameChecked | FramesMeasured) -> None:
    """A result that comes meanwhile: said when nobody is in danger."""
    doubt = turn.context.conversation.doubt.model_copy(update={"unsaid": result})
    turn.change_conversation(doubt=doubt)


def insist(turn: Turn) -> None:
    """A frame or the like that comes meanwhile: asked again."""
    _put(turn, "danger.doubt_again")


def close(turn: Turn) -> None:
    """Whatever else was answered, the question stands open as long as nobody has answered it."""
    question = turn.open_question
    if not is_open(turn) or not turn.parts:
        return
    if question is not None and question.name in {_QUESTION, *closed_place.BEFORE_IT}:
        return
    _put(turn, "danger.doubt")
    if question is not None and not QUESTIONS[question.name].passing:
        turn.change_conversation(paused=question)  # the walk's own waits behind it
