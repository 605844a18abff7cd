"""The process ends at any point: after the next start, each message is answered exactly once."""

from __future__ import annotations

import asyncio
from contextlib import suppress
from dataclasses import dataclass, field

import pytest

from bot.dialogue.events import Event
from bot.pauses import Wake
from bot.runtime.runtime import Runtime
from tests.runtime.fakes import World, frame, text

#: Politeness that no answer waits for.
_MARKS = {"mark_read", "set_typing"}


@dataclass
class Kill:
    """Ends the process at the n-th step of all that it does: requests and transactions."""

    at: int
    runtime: Runtime | None = None
    bell: Wake = field(default_factory=Wake)
    loop: asyncio.AbstractEventLoop | None = None
    steps: list[str] = field(default_factory=list)

    @property
    def dead(self) -> bool:
        """Whether the end has come."""
        return len(self.steps) >= self.at

    def __call__(self, step: str) -> None:
        """One step; the end comes before it, or it happens."""
        if step in _MARKS:
            return
        if not self.dead:
            self.steps.append(step)
        if self.dead:  # nothing that is under way gets any further
            if self.loop is not None:  # a transaction's steps are in another thread
                self.loop.call_soon_threadsafe(self._end)
            raise asyncio.CancelledError

    def _end(self) -> None:
        self.bell.ring()
        if self.runtime is not None and self.runtime._task is not None:
            self.runtime._task.cancel()


@dataclass(frozen=True)
class Story:
    """What comes in, and what must have been said in the end."""

    words: tuple[str, ...]
    said: tuple[str, ...]
    steps: int  # how many there are to end at, pins current behaviour

    def events(self) -> list[Event]:
        """The events; `frame` is a shared frame."""
        return [frame() if word == "frame" else text(word) for word in self.words]


async def _run(world: World, story: Story, events: list[Event], kill: Kill) -> None:
    """Take the events in unless that was done, and run until all is said or the end comes."""
    with suppress(asyncio.CancelledError):
        async with world.running(hook=kill) as runtime:
            kill.runtime, kill.bell = runtime, world.server.bell
            kill.loop = asyncio.get_running_loop()
            if await runtime.sync_token() is None:
                await runtime.take_in(events, "token")
            async with asyncio.timeout(20):
                while not kill.dead and story.said[-1] not in world.server.bodies:
                    await world.server.bell.sleep()  # drain does not wait for reminders
                await runtime.drain()


TEXTS = Story(("a", "b"), ("1: a", "2: b"), 22)
FRAME = Story(("frame",), ("measuring", "checked: not_a_picture"), 37)
CARD = Story(("card 1/4 s",), ("the card",), 27)
TIMER = Story(("timer turn back",), ("reminder: turn back",), 20)
#: Three steps fewer when the answer is forgotten before it is known to be sent.
FORGET = Story(("a", "forget me"), ("1: a", "all deleted"), 39)
CASES = [
    pytest.param(story, at, id=f"{story.words[0]}-{at}")
    for story in (TEXTS, FRAME, CARD, TIMER)
    for at in range(1, story.steps + 1)
]


@pytest.mark.parametrize(("story", "at"), CASES)
async def test_an_end_at_any_step_loses_nothing_and_says_nothing_twice(
    world: World, story: Story, at: int
) -> None:
    """After the next start all is said that would have been said, once and in order."""
    events = story.events()
    await _run(world, story, events, Kill(at))
    await _run(world, story, events, Kill(10_000))
    assert world.server.bodies == list(story.said)


@pytest.mark.parametrize("at", range(1, FORGET.steps + 1))
async def test_an_end_at_any_step_of_forgetting_leaves_nothing(world: World, at: int) -> None:
    """The farewell is said once, and what else was sent is taken back."""
    events = FORGET.events()
    await _run(world, FORGET, events, Kill(at))
    await _run(world, FORGET, events, Kill(10_000))
    bodies = world.server.bodies
    assert (bodies.count("all deleted"), bodies.count("deleting")) == (1, 1)
    answers = [event_id for event_id, outgoing in world.server.sent if outgoing.body == "1: a"]
    assert len(answers) <= 1  # it may have been forgotten before it was sent
    assert world.server.redacted == answers


@pytest.mark.parametrize("story", [TEXTS, FRAME, CARD, TIMER, FORGET], ids=lambda s: s.words[0])
async def test_the_table_of_ends_is_complete(world: World, story: Story) -> None:
    """An undisturbed run has no more steps than the table ends at."""
    kill = Kill(10_000)
    await _run(world, story, story.events(), kill)
    assert story.steps - 3 <= len(kill.steps) <= story.steps, kill.steps
