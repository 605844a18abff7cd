"""One event's turn: a working context, the draft of its answer, and the question that it puts."""

from __future__ import annotations

from collections.abc import Mapping
from datetime import datetime, tzinfo
from zlib import crc32

from bot.dialogue import history, own_sums
from bot.dialogue.actions import Action
from bot.dialogue.answer_draft import AnswerDraft
from bot.dialogue.compose import Part, Role, question_part
from bot.dialogue.context import Context
from bot.dialogue.events import Origin
from bot.dialogue.lateness import Arrival, Seen
from bot.dialogue.meaning.whites import White
from bot.dialogue.questions import QUESTIONS, Asked, mark_of
from bot.dialogue.trip import Trip
from bot.dialogue.walk_state import Question
from bot.dialogue.working_context import WorkingContext


class Turn(WorkingContext, AnswerDraft):
    """Lives for one event; the steps write into it, `finish` turns it into context and actions.

    Args:
        context: what the event is answered from.
        origin: where the event came from.
        now: the time of the answer, aware.
    """

    def __init__(self, context: Context, origin: Origin, now: datetime) -> None:
        WorkingContext.__init__(self, context, origin, now)
        AnswerDraft.__init__(self)
        self.actions: list[Action] = []
        #: When was seen what the message tells; the light that the answer rests on from now.
        self.seen = Arrival(origin.sent_at).seen
        self.light: Seen | None = None
        #: The zone that a frame's camera states.
        self.stated_zone: tzinfo | None = None
        #: The message that this one replies to.
        self.replies_to: str | None = None
        #: The bot's message that was tapped, and the option, when the event is a tap.
        self.tapped_on: str | None = None
        self.tapped: str | None = None
        #: What the message tells of the visit around the walk.
        self.trip_told = Trip()
        #: How the white of the frame in question is, where the message tells it; None once that
        #: was answered. Behind the clauses that stand beside it, it is answered last.
        self.white: White | None = None
        self.white_alone = False
        self.beside_white: tuple[str, ...] = ()
        #: The walk's question was put often enough: this answer leaves it out, not the first one
        #: that does; then the walk goes on without it.
        self.left_out_question = False
        self.passed_over = False
        #: Something that means nothing here does not end a silence.
        self.unheard = False
        self._question: Question | None = None

    def caution(self, name: str) -> None:
        """Say a caution once per walk; the text's key is `caution.NAME`."""
        given = self.context.person.cautions
        if name not in given:
            self.say(Role.CAUTION, f"caution.{name}")
            self.change_person(cautions=given | {name})

    def do(self, action: Action) -> None:
        """Ask the runtime for something beside the answer."""
        self.actions.append(action)

    # the question

    def ask(self, name: str, **values: str) -> None:
        """Put a question; it stands open until it is answered or another is put."""
        question = Question(
            name=name, asked_at=self.now, values=values, about=self._about(name, values)
        )
        self._put(question_part(name, values), question)

    def _about(self, name: str, values: Mapping[str, str]) -> str:
        """A short sign for the frame that a question is of, and for what it asks of it."""
        if not QUESTIONS[name].of_a_frame:
            return ""
        frame = next(reversed(self.context.conversation.measured), "")
        return f"{crc32(repr((frame, *values.items())).encode()):08x}"

    def ask_again(self, question: Question, *, briefly: bool = False) -> None:
        """Put a question once more and count it; briefly where its options were put often enough.

        Args:
            question: as it was put before, with how often.
            briefly: named only, without its options.
        """
        part = question_part(question.name, question.values, briefly=briefly)
        asked_at = question.asked_at if briefly else self.now
        counted = {"times": question.times + 1, "asked_at": asked_at}
        self._put(part, question.model_copy(update=counted))

    def _put(self, part: Part, question: Question) -> None:
        self.end_with(part)
        self._question = question
        self._pause(QUESTIONS[question.name])
        if not QUESTIONS[question.name].passing:
            self.change_conversation(away=False)
        if question.name not in self.walk.asked and self.context.conversation.walk is not None:
            self.change_walk(asked=(*self.walk.asked, question.name))

    def _pause(self, asked: Asked) -> None:
        """Keep the walk's own question while an interruption puts one."""
        conversation = self.context.conversation
        standing = conversation.question
        if not asked.passing:
            self.change_conversation(paused=None)
        elif standing is not None and not QUESTIONS[standing.name].passing:
            self.change_conversation(paused=standing)

    def leave_out(self, question: Question, *, passed_over: bool) -> None:
        """Count a question that stands open, and was put often enough, without putting it.

        Args:
            question: as it was put before, with how often.
            passed_over: it was left out before, too.
        """
        self.passed_over, self.left_out_question = passed_over, True
        if self.context.conversation.question == question:
            counted = question.model_copy(update={"times": question.times + 1})
            self.change_conversation(question=counted)

    def leave_question_unsaid(self) -> None:
        """The question stands open without being put: more messages wait, the last one puts it."""
        self.end_with(None)
        if self._question is not None:
            self.change_conversation(question=self._question)
            self._question = None

    def close_question(self) -> None:
        """Nothing stands open any more."""
        self.change_conversation(question=None, paused=None)

    def resume_question(self) -> None:
        """The walk's own question stands open again."""
        conversation = self.context.conversation
        self.change_conversation(question=conversation.paused, paused=None)
        self.rebase()

    def asked_before(self, name: str) -> bool:
        """Whether a question that is put only once was put already."""
        return name in self.walk.asked

    @property
    def question_put(self) -> bool:
        """Whether the answer ends with a question already."""
        return self._question is not None

    @property
    def question_name(self) -> str:
        """The question that the answer ends with so far, "" without one."""
        return self._question.name if self._question else ""

    @property
    def _mark(self) -> str:
        question = self._question
        return mark_of(question.name, question.about) if question else ""

    @property
    def open_question(self) -> Question | None:
        """The question that stands open behind this answer."""
        return self._question or self.context.conversation.question

    # the end

    def remember_for_back(self) -> None:
        """Keep the state before this answer, so that `back` can undo it."""
        snapshot = history.before(self.before, self.origin.event_id, self.tapped_on, self.tapped)
        kept = (*self.context.conversation.history, snapshot)[-history.HISTORY_LENGTH :]
        self.change_conversation(history=kept)

    def finish(self) -> tuple[Context, tuple[Action, ...]]:
        """The new context and all actions; what did not fit goes under `why`."""
        actions: list[Action] = []
        if self.parts:
            person = self.context.person
            own = own_sums.remembered(self.context.conversation.own, self.parts, self.notes)
            self.change_conversation(own=own)
            actions.extend(self.messages(person, self._mark, at_home=self.is_at_home))
        if self.notes and not self._keeps_why:
            self.change_conversation(why=tuple(self.notes), why_told=0)
        if self._question is not None:
            self.change_conversation(question=self._question)
        if not self.unheard:
            self.change_conversation(last_at=self.now)
        return self.context, (*actions, *self.actions)
