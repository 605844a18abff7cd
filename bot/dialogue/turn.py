"""One answer under construction: the context as it changes, the parts said, the reasons kept."""

from __future__ import annotations

from datetime import datetime, tzinfo
from typing import Any

from bot.dialogue import history, resting
from bot.dialogue.actions import Action, Say
from bot.dialogue.compose import AT_HOME, WHOLE, Part, Role, answer, has_room, question_part
from bot.dialogue.context import Context, Length, Position
from bot.dialogue.events import Origin
from bot.dialogue.facts import Facts, Units
from bot.dialogue.lateness import Arrival, Seen
from bot.dialogue.learning import learned, unlearned
from bot.dialogue.questions import QUESTIONS, Asked
from bot.dialogue.reckoning import camera_of
from bot.dialogue.states import State, Trigger, move
from bot.dialogue.trip import Trip
from bot.dialogue.walk_state import GivenSettings, Note, Question, Walk
from core.camera import Camera


class Turn:
    """Lives for one event; the steps write into it, `finish` turns it into context and actions.

    Args:
        context: what the event is answered from.
        origin: where the event came from.
        now: the time of the answer, aware.
    """

    def __init__(self, context: Context, origin: Origin, now: datetime) -> None:
        self.before = context
        self.context = context
        self.origin = origin
        self.now = now
        self.parts: list[Part] = []
        self.notes: list[Note] = []
        self.actions: list[Action] = []
        self.urgent = False
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
        #: Something that means nothing here does not end a silence.
        self.unheard = False
        #: Read at home, where there is light and time: the answer may be longer.
        self.roomy = False
        #: Asked for as a whole, like `where am i`: a person's short messages do not cut it.
        self.in_full = False
        self._keeps_why = False
        self._known, self._known_of = context.facts, context
        self._question: Question | None = None

    # what is known

    @property
    def facts(self) -> Facts:
        """Everything known, the latest word on top."""
        if self._known_of is not self.context:
            self._known, self._known_of = self.context.facts, self.context
        return self._known

    @property
    def camera(self) -> Camera:
        """The person's camera as far as it is known; what had to be assumed is not noted."""
        return camera_of(self.facts)

    @property
    def trip(self) -> Trip:
        """What was told of the visit around the walk."""
        return self.context.trip

    @property
    def units(self) -> Units | None:
        """The units that the person uses, None while unknown."""
        return self.context.person.units

    @property
    def position(self) -> Position | None:
        """The last location shared; in a group room only if it was shared there."""
        position = self.context.person.position
        return position if position is not None and position.is_for(self.origin) else None

    @property
    def is_at_home(self) -> bool:
        """Whether the person is home from the water, as far as they said."""
        return resting.is_at_home(self.context, self.now)

    @property
    def walk(self) -> Walk:
        """The walk under way, a fresh one when there is none."""
        return self.context.conversation.walk or Walk()

    @property
    def given(self) -> GivenSettings:
        """The settings given last; asked for only by steps that come after the base."""
        given = self.walk.given
        assert given is not None  # noqa: S101  # the base gives them, or a frame brings them
        return given

    # what changes

    def change_conversation(self, **changes: Any) -> None:
        """Lay new values over the conversation."""
        conversation = self.context.conversation.model_copy(update=changes)
        self.context = self.context.model_copy(update={"conversation": conversation})

    def change_person(self, **changes: Any) -> None:
        """Lay new values over what belongs to the person."""
        person = self.context.person.model_copy(update=changes)
        self.context = self.context.model_copy(update={"person": person})

    def change_walk(self, **changes: Any) -> None:
        """Lay new values over the walk; begins one when there is none."""
        self.change_conversation(walk=self.walk.model_copy(update=changes))

    def move(self, trigger: Trigger) -> None:
        """Take the walk along one move of the table."""
        self.change_walk(state=move(self.walk.state, trigger))

    def be_in(self, state: State, trigger: Trigger) -> None:
        """Take the walk along a move unless it stands in `state` already."""
        if self.walk.state is not state:
            self.move(trigger)

    def learn(self, facts: Facts) -> None:
        """Keep what was read, each fact where it belongs."""
        self.context = learned(self.context, facts, teaches=self.origin.teaches)

    def change_room(self, **changes: Any) -> None:
        """Lay new values over what belongs to the room."""
        room = self.context.room.model_copy(update=changes)
        self.context = self.context.model_copy(update={"room": room})

    def unlearn(self, *slots: str) -> None:
        """Drop slots of the walk and its place that a new answer has made void."""
        self.context = unlearned(self.context, slots)

    def remember_for_back(self) -> None:
        """Keep the state before this answer, so that `back` can undo it."""
        snapshot = history.before(self.before, self.origin.event_id, self.tapped_on, self.tapped)
        kept = (*self.context.conversation.history, snapshot)[-history.HISTORY_LENGTH :]
        self.change_conversation(history=kept)

    def undo(self) -> None:
        """Take the last accepted answer back; frames and cautions stay."""
        self.context = history.undone(self.context)

    def rebase(self) -> None:
        """Take the present context as the one that `back` returns to."""
        self.before = self.context

    def resume_question(self) -> None:
        """The walk's own question stands open again."""
        conversation = self.context.conversation
        self.change_conversation(question=conversation.paused, paused=None)
        self.rebase()

    def asked_before(self, name: str) -> bool:
        """Whether a question that is put only once was put already."""
        return name in self.walk.asked

    # what is said

    def say(self, role: Role, key: str, **values: str) -> None:
        """Add a part to the answer."""
        self.parts.append(Part(role, key, values))

    def say_or_keep(self, role: Role, key: str, **values: str) -> None:
        """Add a part where nothing else has to go for it; else keep it for `why`."""
        part = Part(role, key, values)
        if self.has_room_for(part):
            self.parts.append(part)
        else:
            self.reason(key, **values)

    def caution(self, name: str) -> None:
        """Say a caution once per walk; the text's key is `caution.NAME`."""
        given = self.context.person.cautions
        if name not in given:
            self.say(Role.CAUTION, f"caution.{name}")
            self.change_person(cautions=given | {name})

    def ask(self, name: str, **values: str) -> None:
        """Put a question; it stands open until it is answered or another is put."""
        question = Question(name=name, asked_at=self.now, values=values)
        self._put(question_part(name, values), question)

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
        self.parts = [part for part in self.parts if part.role is not Role.QUESTION]
        self.parts.append(part)
        self._question = question
        self._pause(QUESTIONS[question.name])
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

    def leave_question_unsaid(self) -> None:
        """The question stands open without being put: more messages wait, the last one puts it."""
        self.parts = [part for part in self.parts if part.role is not Role.QUESTION]
        if self._question is not None:
            self.change_conversation(question=self._question)
            self._question = None

    def close_question(self) -> None:
        """Nothing stands open any more."""
        self.change_conversation(question=None, paused=None)

    def reason(self, key: str, **values: str) -> None:
        """Keep a line of reasoning for `why`."""
        self.notes.append(Note(key=key, values=values))

    def do(self, action: Action) -> None:
        """Ask the runtime for something beside the answer."""
        self.actions.append(action)

    # the end

    @property
    def question_put(self) -> bool:
        """Whether the answer ends with a question already."""
        return self._question is not None

    @property
    def question_name(self) -> str:
        """The question that the answer ends with so far, "" without one."""
        return self._question.name if self._question else ""

    @property
    def open_question(self) -> Question | None:
        """The question that stands open behind this answer."""
        return self._question or self.context.conversation.question

    def has_room_for(self, part: Part) -> bool:
        """Whether a part fits beside what is said so far."""
        return has_room(self.parts, part)

    def keep_why(self) -> None:
        """The reasons of the answer before stay the ones that `why` tells."""
        self._keeps_why = True

    def finish(self) -> tuple[Context, tuple[Action, ...]]:
        """The new context and all actions; what did not fit goes under `why`."""
        actions: list[Action] = []
        if self.parts:
            actions.extend(self._messages())
        if self.notes and not self._keeps_why:
            self.change_conversation(why=tuple(self.notes), why_told=0)
        if self._question is not None:
            self.change_conversation(question=self._question)
        if not self.unheard:
            self.change_conversation(last_at=self.now)
        return self.context, (*actions, *self.actions)

    def _length(self) -> Length:
        """As the person wants messages, but what has to be whole is never short."""
        length = self.context.person.length
        in_full = self.in_full or self.is_at_home
        if self.urgent or self._keeps_why or (in_full and length == "short"):
            return "usual"
        return length

    def _messages(self) -> list[Say]:
        """The answer in one or two messages; danger is never cut short, nor put as a poll."""
        person = self.context.person
        said, left = answer(
            self.parts,
            [Part(Role.ASSUMPTION, note.key, note.values) for note in self.notes],
            question=self.question_name,
            length=self._length(),
            whole=AT_HOME if self.roomy else WHOLE,
            urgent=self.urgent,
            taps=person.taps and not self.urgent,
        )
        self.notes += [Note(key=part.key, values=dict(part.values)) for part in left]
        return said
