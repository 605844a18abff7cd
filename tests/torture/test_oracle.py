"""The checks of a torture notice what they are there for: on a talk that is played, then spoilt."""

from __future__ import annotations

from collections.abc import Callable
from copy import deepcopy
from dataclasses import replace
from datetime import timedelta

import pytest

from bot.dialogue.actions import Say
from bot.store.rows import ConversationKey
from core.frame.report import FrameReport
from tests.dialogue.player import REPORTS, START, Player
from tests.torture import checks
from tests.torture.oracle import Known
from tests.torture.people import Sent
from tests.torture.record import Heard, Row, Rows

PERSON = "@fern:example.org"
ROOM = "!creek"
KEY = ConversationKey(ROOM, PERSON, "")
LINES = ("start", "12 m tall, 18 m away, rock at 1.5 m", "full frame, 24-70, tripod", "1", "why")


class Talk:
    """What a person sent and heard, as a torture records it.

    Attributes:
        sent: what was sent.
        rows: the bot's rows.
        heard: what stands in the room.
    """

    def __init__(self) -> None:
        player = Player()
        self.sent: list[Sent] = []
        self.rows = Rows([], {}, {})
        self.heard: list[Heard] = []
        for line in LINES:
            player.now += timedelta(seconds=5)
            said = player.say(line)
            self._note(f"$event{len(self.sent) + 1}", said, player, text=line)
        player.now += timedelta(seconds=5)
        said = player.frame("clipped")
        self._note(f"$event{len(self.sent) + 1}", said, player, frame=0)

    def _note(self, event_id: str, said: list[Say], player: Player, **what: object) -> None:
        self.sent.append(Sent(event_id, ROOM, PERSON, True, True, **what))  # type: ignore[arg-type]
        self.rows.taken_at[event_id] = player.now
        for say in said:
            number = len(self.heard)
            row_id, own_id = f"row{number}", f"$own{number}"
            drawn = say.picture is not None
            row = Row(number, row_id, KEY, say.urgent, drawn, say.question, player.now, own_id)
            reply = event_id if "frame" in what else None
            self.rows.outbox.append(row)
            self.heard.append(Heard(own_id, row_id, ROOM, say.body, None, reply))

    def wrong(self) -> list[str]:
        """What the checks say."""

        def measured(number: int, pixels: tuple[int, int] | None) -> FrameReport:
            del pixels
            return list(REPORTS.values())[number]

        known = Known(
            sent_at={
                sent.event_id: self.rows.taken_at.get(sent.event_id, START) for sent in self.sent
            },
            taken_at=self.rows.taken_at,
            questions={row.event_id or "": (row.key, row.question) for row in self.rows.outbox},
            measure=measured,
        )
        said = checks.by_person(self.rows, self.heard)[PERSON]
        return [
            *checks.taken_in(self.rows, self.sent),
            *checks.messages_and_rows(self.rows, self.heard),
            *checks.order_in_rooms(self.rows, self.heard),
            *checks.threads(self.rows, self.heard),
            *checks.said_by_dialogue(PERSON, known, self.sent, said),
        ]


@pytest.fixture(scope="module")
def played() -> Talk:
    """One talk, played once."""
    return Talk()


def test_a_talk_without_faults_passes(played: Talk) -> None:
    """What the dialogue says to the same messages is right."""
    assert played.wrong() == []


def _lose_answer(talk: Talk) -> None:
    del talk.rows.outbox[2], talk.heard[2]


def _lose_last_answer(talk: Talk) -> None:
    del talk.rows.outbox[-2:], talk.heard[-2:]


def _lose_message(talk: Talk) -> None:
    del talk.heard[2]


def _double_message(talk: Talk) -> None:
    talk.heard.append(replace(talk.heard[2], event_id="$copy"))


def _double_answer(talk: Talk) -> None:
    row = replace(talk.rows.outbox[-1], position=99, row_id="row99", event_id="$own99")
    talk.rows.outbox.append(row)
    talk.heard.append(replace(talk.heard[-1], row_id="row99", event_id="$own99"))


def _swap_in_room(talk: Talk) -> None:
    talk.heard[1], talk.heard[2] = talk.heard[2], talk.heard[1]


def _swap_answers(talk: Talk) -> None:
    first, second = talk.heard[1], talk.heard[2]
    talk.heard[1] = replace(first, body=second.body)
    talk.heard[2] = replace(second, body=first.body)


def _answer_other_frame(talk: Talk) -> None:
    talk.heard[-2:] = [replace(message, replies_to="$event1") for message in talk.heard[-2:]]


def _never_taken_in(talk: Talk) -> None:
    del talk.rows.taken_at["$event2"]


def _other_thread(talk: Talk) -> None:
    key = replace(KEY, thread_key="$root")
    talk.rows.outbox[0] = replace(talk.rows.outbox[0], key=key)


def _stray(talk: Talk) -> None:
    talk.heard.append(Heard("$stray", "", ROOM, "hello", None, None))


@pytest.mark.parametrize(
    ("spoil", "told"),
    [
        (_lose_answer, "are what the dialogue says"),
        (_lose_last_answer, "are what the dialogue says"),
        (_lose_message, "was never sent"),
        (_double_message, "stands 2 times"),
        (_double_answer, "are what the dialogue says"),
        (_swap_in_room, "out of order"),
        (_swap_answers, "are what the dialogue says"),
        (_answer_other_frame, "are what the dialogue says"),
        (_never_taken_in, "never taken in"),
        (_other_thread, "not in $root"),
        (_stray, "no row"),
    ],
)
def test_each_fault_is_told(played: Talk, spoil: Callable[[Talk], None], told: str) -> None:
    """Lost, doubled, reordered, misplaced: each is a line of its own."""
    talk = deepcopy(played)
    spoil(talk)
    assert any(told in line for line in talk.wrong()), talk.wrong()
