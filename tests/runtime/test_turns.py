"""People take turns, however much one of them has brought."""

from __future__ import annotations

import asyncio

import pytest

from bot.runtime.ending import Endings, WorkEndedError
from bot.runtime.turns import Fairness, Turns


async def served(people: str, at_once: int = 1, given_up: str = "") -> str:
    """In which order people have their turns who have asked for them in this order."""
    turns, order, begun = Turns(lambda: at_once), "", asyncio.Event()

    async def have(person: str) -> None:
        nonlocal order
        async with turns.turn(person):
            await begun.wait()
            order += person
            await asyncio.sleep(0)

    async with asyncio.TaskGroup() as group:
        tasks = [(person, group.create_task(have(person))) for person in people]
        await asyncio.sleep(0)
        for person, task in tasks:
            if person in given_up:
                task.cancel()
        begun.set()
    return order


@pytest.mark.parametrize(
    ("people", "at_once", "order"),
    [
        ("aaaa", 1, "aaaa"),
        ("aaab", 1, "abaa"),
        ("aaaabbc", 1, "abcabaa"),
        ("aaaabb", 2, "aababa"),
        ("abab", 4, "abab"),
        ("", 1, ""),
    ],
)
async def test_each_person_in_turn(people: str, at_once: int, order: str) -> None:
    """Whoever has waited longest for a turn is next, not who has asked most often."""
    assert await served(people, at_once) == order


async def test_who_gives_up_leaves_no_gap() -> None:
    """A turn that was asked for and given up, before or in it, goes to the next."""
    assert await served("abbcb", given_up="b") == "ac"
    assert await served("bba", given_up="b") == "a"


async def test_many_give_up_at_the_same_moment() -> None:
    """As at a stop: all tickets are cancelled before any of their owners hears of it."""
    turns = Turns(lambda: 1)

    async def have(person: str) -> None:
        async with turns.turn(person):
            await asyncio.sleep(60)

    tasks = [asyncio.create_task(have(person)) for person in "aabb"]
    await asyncio.sleep(0)
    for task in tasks:
        task.cancel()
    assert await asyncio.gather(*tasks, return_exceptions=True)
    async with asyncio.timeout(1), turns.turn("c"):
        pass


async def test_a_new_number_counts_from_the_next_turn_on() -> None:
    """When a cluster goes away, or comes back, that many turns are given from then on."""
    at_once, running, most = 2, 0, 0
    turns = Turns(lambda: at_once)

    async def have(person: str) -> None:
        nonlocal running, most
        async with turns.turn(person):
            running += 1
            most = max(most, running)
            await asyncio.sleep(0)
            running -= 1

    await asyncio.gather(*(have(person) for person in "abc"))
    assert most == 2
    at_once, most = 1, 0
    await asyncio.gather(*(have(person) for person in "abc"))
    assert most == 1


def test_nobody_is_behind_once_all_are_done() -> None:
    """What somebody was served yesterday is not held against them today."""
    fairness = Fairness()
    fairness.serve("a")
    assert fairness.next("ab") == "b"
    fairness.forget()
    assert fairness.next("ab") == "a"


async def test_work_is_ended_only_while_it_may_be() -> None:
    """Ending stops what waits inside; before and after, and for others, it does nothing."""
    endings, steps = Endings(), []

    async def work() -> None:
        async with endings.until_ended("job"):
            endings.end(["other"])
            await asyncio.sleep(0)
            steps.append("inside")
            endings.end(["job"])
            await asyncio.sleep(60)

    endings.end(["job"])
    with pytest.raises(WorkEndedError):
        await work()
    endings.end(["job"])
    await asyncio.sleep(0)
    assert steps == ["inside"]


async def test_a_limit_of_the_work_itself_is_no_ending() -> None:
    """A request that takes too long inside is told as what it is."""

    async def work() -> None:
        async with Endings().until_ended("job"), asyncio.timeout(0):
            await asyncio.sleep(60)

    with pytest.raises(TimeoutError):
        await work()
