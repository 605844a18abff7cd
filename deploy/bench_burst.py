"""Times bursts of 200 messages from ten people, against an echo bot that sends eight at a time."""

from __future__ import annotations

import asyncio
import statistics
import sys
import time
from collections.abc import Mapping, Sequence
from typing import Final

from deploy.bench_pair import AT_ONCE, BOTS, KINDS, WORD, Line, Pair, print_measured

PEOPLE: Final = 10
#: Messages of each person in one burst.
EACH: Final = 20
#: Bursts of each bot that count; they take turns, and one before that does not count.
ROUNDS: Final = 3
AIM: Final = 0.9


async def burst_s(lines: Sequence[Line]) -> float:
    """Time from the first message until the last answer is decrypted [s]."""
    started = time.perf_counter()
    async with asyncio.TaskGroup() as group:
        for line in lines:
            group.create_task(line.burst(WORD, EACH))
    return time.perf_counter() - started


async def alternate(lines: Mapping[str, Sequence[Line]]) -> dict[str, list[float]]:
    """Replies per second of each bot, burst by burst in turn."""
    rates: dict[str, list[float]] = {bot: [] for bot in lines}
    for number in range(ROUNDS + 1):
        for bot in BOTS if number % 2 else reversed(BOTS):
            taken_s = await burst_s(lines[bot])
            if number:
                rates[bot].append(PEOPLE * EACH / taken_s)
    return rates


def table(kind: str, rates: Mapping[str, Sequence[float]]) -> str:
    """The figures of one kind of room as text, with the ratio that is aimed at."""
    rows = [
        f"bursts of {PEOPLE * EACH} messages from {PEOPLE} people, {kind} rooms",
        f"replies per second, echo with {AT_ONCE} at a time",
    ]
    rows += [f"{bot:6} " + "  ".join(f"{rate:5.1f}" for rate in rates[bot]) for bot in BOTS]
    echo, linn = (statistics.median(rates[bot]) for bot in BOTS)
    rows.append(f"linn over echo: {linn / echo:.2f} (aim: at least {AIM})")
    return "\n".join(rows)


async def measure(pair: Pair) -> str:
    """Bursts to both bots in turn, in both kinds of room, and the tables.

    Raises:
        TimeoutError: a bot did not answer.
    """
    tables = []
    for kind, encrypted in KINDS.items():
        lines = {
            bot: [
                pair.line(bot, f"{kind}{number}", encrypted=encrypted) for number in range(PEOPLE)
            ]
            for bot in BOTS
        }
        everybody = [line for some in lines.values() for line in some]
        await asyncio.gather(*(line.start() for line in everybody))
        tables.append(table(kind, await alternate(lines)))
        for line in everybody:
            await line.person.stop()
    return "\n".join(tables)


if __name__ == "__main__":
    sys.exit(print_measured(measure))
