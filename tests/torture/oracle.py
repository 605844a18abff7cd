"""Whether what was heard is what the pure dialogue says, played over the same events.

Within a conversation the order of events is known: it is that of the room. Between the
conversations of one person, and for the results of slow work, it is not: the search looks for one
order in which `handle` says exactly what was heard. The times of the answers are those of the
bot's rows, since some answers carry the time.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import dataclass, field, replace
from datetime import datetime
from itertools import groupby

from bot.dialogue.actions import Action, CheckFrame, DrawCard, Say
from bot.dialogue.context import Context, Conversation, Person, Place, Room
from bot.dialogue.engine import handle
from bot.dialogue.events import Event, FrameChecked, FrameReceived, MediaRef, Origin, TextReceived
from bot.runtime.origins import derived_origin
from bot.store.rows import ConversationKey, conversation_key
from core.frame.report import FrameReport
from tests.torture.people import Sent
from tests.torture.record import Heard, Row

#: From the number of a frame and the pixels of the camera to what was measured.
Measure = Callable[[int, tuple[int, int] | None], FrameReport]


@dataclass(frozen=True)
class Answer:
    """What the bot said to one event: messages that were written in one transaction."""

    key: ConversationKey
    at: datetime
    said: tuple[tuple[Row, Heard], ...]

    def is_said_by(self, says: Sequence[Say]) -> bool:
        """Whether these are the messages."""
        return len(says) == len(self.said) and all(
            (say.body, say.urgent, say.question, say.picture is not None)
            == (heard.body, row.urgent, row.question, row.has_picture)
            for say, (row, heard) in zip(says, self.said, strict=True)
        )


def answers_of(said: Sequence[tuple[Row, Heard]]) -> tuple[Answer, ...]:
    """The messages of one person, in the order of their rows, as answers."""
    groups = groupby(said, lambda pair: (pair[0].key, pair[0].created_at))
    return tuple(Answer(key, at, tuple(pairs)) for (key, at), pairs in groups)


@dataclass(frozen=True)
class Known:
    """What does not change during the search.

    Attributes:
        sent_at: of each event, as the homeserver stamped it.
        taken_at: when the bot took it in.
        questions: of each message of the bot, its conversation and the question that it put.
        measure: what is measured on a frame.
    """

    sent_at: Mapping[str, datetime]
    taken_at: Mapping[str, datetime]
    questions: Mapping[str, tuple[ConversationKey, str]]
    measure: Measure

    def event(self, sent: Sent) -> Event:
        """What a person sent, as the dialogue takes it."""
        sent_at = self.sent_at[sent.event_id]
        taken_at = self.taken_at.get(sent.event_id, sent_at)
        origin = Origin(
            event_id=sent.event_id,
            room_id=sent.room_id,
            person_id=sent.person_id,
            thread_id=sent.thread_id,
            direct=sent.direct,
            addressed=sent.addressed,
            sent_at=sent_at,
            age_s=max(0.0, (taken_at - sent_at).total_seconds()),
        )
        if sent.frame is not None:
            media = MediaRef(address=f"mxc://torture/{sent.frame}")
            return FrameReceived(origin=origin, media=media, caption=sent.text)
        key, question = self.questions.get(sent.replies_to or "", (None, ""))
        return TextReceived(
            origin=origin,
            text=sent.text,
            corrects=sent.corrects,
            replies_to=sent.replies_to,
            answers=(question or None) if key == conversation_key(origin) else None,
        )


@dataclass(frozen=True)
class Job:
    """Slow work that is under way: a frame to measure, or a card to draw."""

    origin: Origin
    action: CheckFrame | DrawCard


@dataclass(frozen=True)
class Play:
    """How far a person's conversations are played, and what they rest on."""

    waiting: Mapping[ConversationKey, tuple[Event, ...]]
    jobs: Mapping[ConversationKey, tuple[Job, ...]]
    conversations: Mapping[ConversationKey, Conversation]
    person: Person
    place: Place | None = None
    #: Rooms by their ids: an emergency is the room's, and its teller is alone with the host.
    rooms: Mapping[str, Room] = field(default_factory=dict)
    #: How many answers are explained.
    explained: int = 0
    #: Frames whose result was said.
    measured: frozenset[str] = frozenset()

    def take(
        self, key: ConversationKey, event: Event, now: datetime
    ) -> tuple[Play, tuple[Say, ...]]:
        """Play one event; what is said by it."""
        fresh = Context.fresh(event.origin)
        context = Context(
            conversation=self.conversations.get(key, fresh.conversation),
            person=self.person,
            place=self.place,
            room=self.rooms.get(key.room_id, fresh.room),
        )
        after, actions = handle(context, event, now)
        # As it comes back from the store.
        after = Context.model_validate_json(after.model_dump_json())
        played = replace(
            self,
            conversations={**self.conversations, key: after.conversation},
            person=after.person,
            place=after.place,
            rooms={**self.rooms, key.room_id: after.room},
            jobs={**self.jobs, key: (*self.jobs.get(key, ()), *_jobs(event.origin, actions))},
        )
        return played, tuple(action for action in actions if isinstance(action, Say))

    def without(self, key: ConversationKey, job: Job) -> Play:
        """The same, with that work done."""
        rest = tuple(other for other in self.jobs[key] if other is not job)
        return replace(self, jobs={**self.jobs, key: rest})


def _jobs(origin: Origin, actions: Sequence[Action]) -> tuple[Job, ...]:
    return tuple(
        Job(origin, action) for action in actions if isinstance(action, CheckFrame | DrawCard)
    )


def _alone_or_before_others(waiting: Sequence[Event]) -> Iterator[Event]:
    """The next event, as if nothing waited behind it, and as if something did: it may matter."""
    if not waiting:
        return
    event = waiting[0]
    yield event
    if len(waiting) > 1:
        origin = event.origin.model_copy(update={"behind": len(waiting) - 1})
        yield event.model_copy(update={"origin": origin})


@dataclass
class Explanation:
    """What came of the search.

    Attributes:
        found: an order in which everything is explained, None when there is none.
        explained: how many answers the best attempt explained.
        expected: what could have been said next, where the best attempt ended.
    """

    found: Play | None = None
    explained: int = -1
    expected: tuple[tuple[str, ...], ...] = ()


class Oracle:
    """Explains what one person heard.

    Args:
        known: what does not change.
        sent: all that the person sent, in the order of the rooms.
        answers: all that was said to the person, in the order of the rows.
    """

    def __init__(self, known: Known, sent: Sequence[Sent], answers: Sequence[Answer]) -> None:
        self._known = known
        self._sent = sent
        self._answers = answers
        self._expected: list[tuple[str, ...]] = []

    def explain(self) -> Explanation:
        """Look for an order in which the dialogue says what was heard."""
        best = Explanation()
        open_plays = [self._start()]
        while open_plays:
            play = open_plays.pop()
            self._expected = []
            if play.explained == len(self._answers):
                over = self._silent_end(play)
                if over is not None:
                    return Explanation(over, play.explained)
                nexts: list[Play] = []
            else:
                nexts = list(self._next(play))
            if play.explained > best.explained:
                best = Explanation(None, play.explained, tuple(self._expected))
            open_plays += reversed(nexts)
        return best

    def _start(self) -> Play:
        waiting: dict[ConversationKey, tuple[Event, ...]] = {}
        for sent in self._sent:
            event = self._known.event(sent)
            key = conversation_key(event.origin)
            waiting[key] = (*waiting.get(key, ()), event)
        return Play(waiting, {}, {}, Person())

    def _next(self, play: Play) -> Iterator[Play]:
        """The plays in which the next answer is explained."""
        answer = self._answers[play.explained]
        for quiet in self._silent_moves(play, answer.key, answer.at):
            yield from self._by_event(quiet, answer)
            yield from self._by_job(quiet, answer)

    def _by_event(self, play: Play, answer: Answer) -> Iterator[Play]:
        waiting = play.waiting.get(answer.key, ())
        for event in _alone_or_before_others(waiting):
            played, says = play.take(answer.key, event, answer.at)
            if says:
                played = replace(played, waiting={**play.waiting, answer.key: waiting[1:]})
                yield from self._if_said(played, answer, says)

    def _by_job(self, play: Play, answer: Answer) -> Iterator[Play]:
        for job in play.jobs.get(answer.key, ()):
            done = play.without(answer.key, job)
            if isinstance(job.action, DrawCard):
                say = Say(body=job.action.caption, picture="card")
                yield from self._if_said(done, answer, (say,))
                continue
            played, says = self._checked(done, answer.key, job.action, job.origin, answer.at)
            frame = job.action.frame_event_id
            if says and all(heard.replies_to == frame for _, heard in answer.said):
                measured = replace(played, measured=played.measured | {frame})
                yield from self._if_said(measured, answer, says)

    def _if_said(self, play: Play, answer: Answer, says: tuple[Say, ...]) -> Iterator[Play]:
        self._expected.append(tuple(say.body for say in says))
        if answer.is_said_by(says):
            yield replace(play, explained=play.explained + 1)

    def _checked(
        self, play: Play, key: ConversationKey, action: CheckFrame, origin: Origin, now: datetime
    ) -> tuple[Play, tuple[Say, ...]]:
        frame = next(sent.frame for sent in self._sent if sent.event_id == action.frame_event_id)
        event = FrameChecked(
            origin=derived_origin(origin, f"checked-{action.frame_event_id}", now, now),
            frame_event_id=action.frame_event_id,
            report=self._known.measure(frame or 0, action.camera_pixels),
            picture="picture",
        )
        return play.take(key, event, now)

    def _silent_moves(self, play: Play, key: ConversationKey, now: datetime) -> Iterator[Play]:
        """The play, and those in which the conversation took in what it says nothing to."""
        yield play
        waiting = play.waiting.get(key, ())
        tried: list[Play] = []
        for event in _alone_or_before_others(waiting):
            taken_at = self._known.taken_at.get(event.origin.event_id, now)
            played, says = play.take(key, event, min(taken_at, now))
            if not says and played not in tried:
                tried.append(played)
                rest = {**play.waiting, key: waiting[1:]}
                yield from self._silent_moves(replace(played, waiting=rest), key, now)
        for job in play.jobs.get(key, ()):
            if isinstance(job.action, CheckFrame):
                done = play.without(key, job)
                played, says = self._checked(done, key, job.action, job.origin, now)
                if not says:
                    yield from self._silent_moves(played, key, now)

    def _silent_end(self, play: Play) -> Play | None:
        """The play in which nothing waits any more and nothing more was to be said."""
        for key in list(play.waiting):
            rest = self._last_move(play, key)
            if rest is None:
                return None
            play = rest
        return play

    def _last_move(self, play: Play, key: ConversationKey) -> Play | None:
        for quiet in self._silent_moves(play, key, self._last_at()):
            if not quiet.waiting.get(key) and not quiet.jobs.get(key):
                return quiet
            self._expected += [
                (f"(an answer to {event.kind} {event.origin.event_id})",)
                for event in quiet.waiting.get(key, ())[:1]
            ]
            self._expected += [(f"(a {job.action.kind})",) for job in quiet.jobs.get(key, ())]
        return None

    def _last_at(self) -> datetime:
        return max((*self._known.taken_at.values(), *(answer.at for answer in self._answers)))
