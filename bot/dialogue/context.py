"""What a conversation rests on: the walk, the person, the place, the room; frozen and storable."""

from __future__ import annotations

from datetime import datetime, timedelta
from typing import Final, Literal

from pydantic import AwareDatetime, Field

from bot.dialogue.events import FrameChecked, FramesMeasured, MediaRef, Origin, PlaceReceived
from bot.dialogue.facts import Facts, Need, Units
from bot.dialogue.kept import BorderAnswer, Measured, Review, Together
from bot.dialogue.lateness import Seen
from bot.dialogue.stored import Stored
from bot.dialogue.terms import Spent, Terms
from bot.dialogue.trip import Trip
from bot.dialogue.walk_state import Note, Question, Walk
from core.frame.report import FrameReport

#: Shape of what is stored; raised when a field changes its meaning.
SCHEMA_NUMBER: Final = 1

#: A shared position is kept this long (own rule: a day out).
POSITION_KEPT: Final = timedelta(hours=24)

#: How long messages are, as the person wants them.
Length = Literal["short", "usual", "long"]


class Emergency(Stored):
    """An emergency that holds the walk until the person says that all are safe."""

    kind: str
    since: AwareDatetime
    #: Whether who writes is in it, and how many others: 0, 1, or 2 for several.
    own: bool = True
    others: int = 2
    #: The message that told of it, as long as it is the only one.
    event_id: str = ""
    #: All kinds that were told of since, this one and milder ones.
    told: frozenset[str] = frozenset()
    #: In a group room it holds all: whether it was told in this conversation, or heard of here.
    shared: Literal["", "told", "heard"] = ""


class Doubt(Stored):
    """What stands around the open question whether anybody is in danger."""

    #: The message that sounded like it, and how often the question was put.
    event_id: str = ""
    asked: int = 0
    #: The question of another interruption that stood open before.
    interrupted: Question | None = None
    #: The result of frames that came meanwhile.
    unsaid: FrameChecked | FramesMeasured | None = Field(default=None, discriminator="kind")


class Position(Stored):
    """A shared location with the time it was shared."""

    latitude: float
    longitude: float
    shared_at: AwareDatetime
    #: Where it was shared: it is given back in a group room only if it was shared there.
    room_id: str = ""

    @classmethod
    def shared(cls, event: PlaceReceived) -> Position:
        """The location of an event that shares one."""
        return cls(
            latitude=event.latitude,
            longitude=event.longitude,
            shared_at=event.origin.sent_at,
            room_id=event.origin.room_id,
        )

    def is_for(self, origin: Origin) -> bool:
        """Whether it may be spoken of where an event came from."""
        return origin.direct or self.room_id == origin.room_id


class Snapshot(Stored):
    """What `back` returns to, and the message whose answer is undone by it."""

    event_id: str
    walk: Walk | None
    question: Question | None
    kit: Facts
    place_facts: Facts
    #: The walk's question, when that of an interruption was answered.
    paused: Question | None = None
    emergency: Emergency | None = None
    #: What was told at home by then.
    review: Review | None = None
    #: The bot's message that was tapped for this answer, and the option.
    tapped_on: str | None = None
    tapped: str | None = None


class Shared(Stored):
    """A shared frame whose result is awaited: when it came, and what its words say of when."""

    sent_at: AwareDatetime
    seen: Seen
    #: When a frame like this was asked for, if that was just before it came.
    asked_at: AwareDatetime | None = None
    #: Somebody else took it, as its words or those before it say.
    foreign: bool = False


class Before(Stored):
    """The walk, its question and its last frame, as they were before a frame was judged."""

    walk: Walk | None = None
    question: Question | None = None
    report: FrameReport | None = None


class Waiting(Stored):
    """A report of light that has passed, kept while "is it still as then?" is open."""

    #: The words of the message, and the question that they reply to, where they reply to one.
    text: str = ""
    answers: str | None = None
    #: The measured frame in place of words, and the name of its marked picture.
    report: FrameReport | None = None
    picture: str | None = None
    seen: Seen
    #: When it reached the server, and what then is called.
    sent_at: AwareDatetime
    when: str


class Conversation(Stored):
    """What belongs to one conversation: the walk, the open question, the way back."""

    schema_number: int = SCHEMA_NUMBER
    walk: Walk | None = None
    question: Question | None = None
    #: The walk's question while an interruption has one of its own.
    paused: Question | None = None
    history: tuple[Snapshot, ...] = ()
    why: tuple[Note, ...] = ()
    #: How many of these notes were told already.
    why_told: int = 0
    #: What was said in numbers last, and the sums behind it, newest last.
    own: tuple[Note, ...] = ()
    #: What a "what if" tried last, for the next one that goes on from it.
    tried: Facts | None = None
    #: The question of the last message that no answer was of, "" without one.
    unanswered: str = ""
    #: When somebody else's scene or frame was asked about last.
    others_at: AwareDatetime | None = None
    emergency: Emergency | None = None
    #: When a storm ended with all in shelter.
    sheltered_at: AwareDatetime | None = None
    #: Somebody may stand where nobody should: no settings until they say that nobody does.
    closed: bool = False
    #: What kind of place that is, and whether only others than who wrote were there.
    closed_kind: str = ""
    closed_others: bool = False
    #: Leave was asked for it, and nobody was told to be there.
    closed_asked: bool = False
    #: All went away from rising water or a storm: the walk's question waits until they begin again.
    away: bool = False
    last_at: AwareDatetime | None = None
    #: A message that waits while "go on or new?" is open.
    held_text: str | None = None
    #: When that message was seen.
    held_seen: Seen | None = None
    #: A message that waits while "is anybody in danger?" is open.
    doubted: str | None = None
    doubt: Doubt = Doubt()
    #: When the person was heard last, by the server's stamp, and since when they were silent
    #: before, if they were.
    heard_at: AwareDatetime | None = None
    silent_since: AwareDatetime | None = None
    #: A report of light that waits for an answer, and when they said that they had left.
    waiting: Waiting | None = None
    left_at: AwareDatetime | None = None
    #: Frames whose results are awaited, by their event ids.
    shared: dict[str, Shared] = Field(default_factory=dict)
    #: Frames under way or measured: event id of the frame by time, newest last.
    frames: tuple[str, ...] = ()
    #: Where the files of these frames lie, and their keys, to measure them again: by event id.
    #: It goes with the frame, and after the same time as stored pictures.
    media: dict[str, MediaRef] = Field(default_factory=dict)
    #: What is kept of the measured ones among them, by event id, in the order of their results.
    measured: dict[str, Measured] = Field(default_factory=dict)
    #: What was asked of some of them together last.
    together: Together | None = None
    #: The walk as it was before the last frame was judged, should it be somebody else's.
    walk_before: Before | None = None
    #: When a frame of somebody else's was announced.
    foreign_at: AwareDatetime | None = None
    #: When they said that they are home: frames are gone through from then on.
    home_at: AwareDatetime | None = None
    #: What they told since then of the frames of the day; it ends with being home.
    review: Review | None = None
    #: The last measured frame, of which more may be asked.
    report: FrameReport | None = None
    #: Name of its marked picture while it has not been shown.
    picture: str | None = None


class Person(Stored):
    """What belongs to a person and follows them through rooms."""

    schema_number: int = SCHEMA_NUMBER
    units: Units | None = None
    kit: Facts = Facts()
    #: Cautions given on the present walk, by name; emptied when a new walk starts.
    cautions: frozenset[str] = frozenset()
    #: The last location shared, kept for emergencies and for sun times only.
    position: Position | None = None
    #: How far the clocks of the person's cameras are ahead of UTC [s], by maker and model.
    clocks: dict[str, float] = Field(default_factory=dict)
    #: By how much the pictures of the person's cameras clip before their sensors do [stops], by
    #: maker and model, as their last raws have shown.
    previews: dict[str, float] = Field(default_factory=dict)
    #: Shares of the frame that the water crosses in frames that the person kept, by look, newest
    #: last.
    kept_shares: dict[str, tuple[float, ...]] = Field(default_factory=dict)
    #: What the person said of things at the borders of their frames, newest last.
    border_answers: tuple[BorderAnswer, ...] = ()
    #: What was used of each limit, by its name.
    spent: dict[str, Spent] = Field(default_factory=dict)
    #: Questions with options go out as polls, to be answered by a tap.
    taps: bool = False
    #: The language that is spoken with the person, by its code.
    language: str = "en"
    #: Whether the person was told once that Linn speaks theirs, too.
    language_offered: bool = False
    #: Whether the person chose a language, or was heard to write clearly in one.
    language_heard: bool = False
    #: Times of day are told with am and pm, as the person does.
    halves: bool = False
    #: How long messages are.
    length: Length = "usual"
    #: What the person told of their ears and eyes.
    needs: frozenset[Need] = frozenset()


class Place(Stored):
    """What belongs to a fall or reach of a creek."""

    schema_number: int = SCHEMA_NUMBER
    facts: Facts = Facts()


class Room(Stored):
    """What belongs to a room."""

    schema_number: int = SCHEMA_NUMBER
    direct: bool = True
    #: What who teaches there told of the fall and the look, for everybody's walk there.
    facts: Facts = Facts()
    #: What was told of there and is not said to be over: it holds everybody's walk.
    emergency: Emergency | None = None


class Context(Stored):
    """All that one event is answered from."""

    conversation: Conversation = Conversation()
    person: Person = Person()
    place: Place | None = None
    room: Room = Room()
    #: Laid in for each event by the runtime; not a part that is stored.
    terms: Terms = Terms()

    @classmethod
    def fresh(cls, origin: Origin) -> Context:
        """The context of somebody who has never written."""
        return cls(room=Room(direct=origin.direct))

    def without_old_position(self, now: datetime) -> Context:
        """The context without a shared position whose time is over."""
        position = self.person.position
        if position is None or now - position.shared_at <= POSITION_KEPT:
            return self
        person = self.person.model_copy(update={"position": None})
        return self.model_copy(update={"person": person})

    @property
    def trip(self) -> Trip:
        """What was told of the visit around the walk."""
        walk = self.conversation.walk
        return Trip() if walk is None else walk.trip

    @property
    def facts(self) -> Facts:
        """Everything known: kit, place or room, this walk, and its review, the latest on top.

        The place was told in the direct room, and is not for a group room to read of.
        """
        facts = self.person.kit
        if self.place is not None and self.room.direct:
            facts = facts.updated(self.place.facts)
        if not self.room.direct:
            facts = facts.updated(self.room.facts)
        if self.conversation.walk is not None:
            facts = facts.updated(self.conversation.walk.facts)
        if self.conversation.review is not None:
            facts = facts.updated(self.conversation.review.facts)
        return facts
