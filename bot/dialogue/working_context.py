"""The context while an event is answered: what is known in it, and what is laid over it."""

from __future__ import annotations

from datetime import datetime
from typing import Any

from bot.dialogue import history, resting
from bot.dialogue.context import Context, Position
from bot.dialogue.events import Origin
from bot.dialogue.facts import Facts, Units
from bot.dialogue.learning import learned, unlearned
from bot.dialogue.reckoning import camera_of
from bot.dialogue.states import State, Trigger, is_listed, move, way
from bot.dialogue.trip import Trip
from bot.dialogue.walk_state import GivenSettings, Walk
from core.camera import Camera


class WorkingContext:
    """Each change makes a new frozen context; the one before stays as it was.

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
        #: Slots that are not learnt: with them nothing could be reckoned.
        self.left_out: frozenset[str] = frozenset()
        self._known, self._known_of = context.facts, context

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

    def change_room(self, **changes: Any) -> None:
        """Lay new values over what belongs to the room."""
        room = self.context.room.model_copy(update=changes)
        self.context = self.context.model_copy(update={"room": room})

    def change_walk(self, **changes: Any) -> None:
        """Lay new values over the walk; begins one when there is none."""
        self.change_conversation(walk=self.walk.model_copy(update=changes))

    def move(self, trigger: Trigger) -> None:
        """Take the walk along one move of the table."""
        self.change_walk(state=move(self.walk.state, trigger))

    def be_in(self, state: State, trigger: Trigger) -> None:
        """Take the walk to a state unless it stands there already.

        Args:
            state: where it is to stand.
            trigger: what usually leads there; a question of another step may stand open, so from
                where it doesn't, the walk goes the way of the table.
        """
        here = self.walk.state
        if here is state:
            return
        for one in (trigger,) if is_listed(here, trigger) else way(here, state):
            self.move(one)

    def learn(self, facts: Facts) -> None:
        """Keep what was read, each fact where it belongs."""
        facts = facts.model_copy(update=dict.fromkeys(self.left_out))
        self.context = learned(self.context, facts, teaches=self.origin.teaches)

    def unlearn(self, *slots: str) -> None:
        """Drop slots of the walk and its place that a new answer has made void."""
        self.context = unlearned(self.context, slots)

    # the way back

    def undo(self) -> None:
        """Take the last accepted answer back; frames and cautions stay."""
        self.context = history.undone(self.context)

    def rebase(self) -> None:
        """Take the present context as the one that `back` returns to."""
        self.before = self.context
