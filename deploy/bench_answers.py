"""Times Linn's text answers against a bare echo bot on the same homeserver, and its idle memory."""

from __future__ import annotations

import contextlib
import statistics
import sys
from collections.abc import Iterator, Mapping, Sequence
from pathlib import Path
from typing import Final

from deploy.bench_pair import BOTS, KINDS, WORD, Line, Pair, print_measured

ROUNDS: Final = 100
#: Rounds that are not counted: keys are exchanged, caches fill.
WARM_UP: Final = 10
AIM: Final = 1.2


async def alternate(lines: Mapping[str, Line]) -> dict[str, list[float]]:
    """Answer times of each bot, one message to the one, one to the other [s]."""
    for line in lines.values():
        await line.start()
    times: dict[str, list[float]] = {bot: [] for bot in lines}
    for number in range(WARM_UP + ROUNDS):
        for bot, line in lines.items():
            taken = await line.answer_s(WORD)
            if number >= WARM_UP:
                times[bot].append(taken)
    for line in lines.values():
        await line.person.stop()
    return times


def resident_mb(pid: int) -> list[float]:
    """Resident memory of a process and of those that it started [MB]; empty without /proc."""
    sizes = []
    for process_id in (pid, *_children(pid)):
        with contextlib.suppress(OSError):
            status = Path(f"/proc/{process_id}/status").read_text()
            sizes.append(int(status.partition("VmRSS:")[2].split()[0]) / 1024)
    return sizes


def _children(pid: int) -> Iterator[int]:
    for path in Path("/proc").glob("[0-9]*/stat"):
        with contextlib.suppress(OSError):
            # The name in parentheses may hold spaces; the parent stands second after it.
            if int(path.read_text().rpartition(")")[2].split()[1]) == pid:
                child = int(path.parent.name)
                yield child
                yield from _children(child)


def table(kind: str, times: Mapping[str, Sequence[float]]) -> str:
    """The figures of one kind of room as text, with the ratios that are aimed at."""
    rows = [f"answers in turn, {kind} room    p50        p95"]
    p50 = {bot: statistics.median(taken) for bot, taken in times.items()}
    p95 = {bot: statistics.quantiles(taken, n=20)[-1] for bot, taken in times.items()}
    rows += [f"{bot:26} {p50[bot] * 1000:6.0f} ms  {p95[bot] * 1000:6.0f} ms" for bot in times]
    echo, linn = BOTS
    rows.append(f"p50 of linn over echo: {p50[linn] / p50[echo]:.2f} (aim: at most {AIM})")
    rows.append(f"p95 of linn over echo: {p95[linn] / p95[echo]:.2f}")
    return "\n".join(rows)


def memory(pids: Mapping[str, int]) -> str:
    """Idle memory of both bots and of the processes that they started, as text."""
    rows = [
        f"idle memory of {bot}: " + " + ".join(f"{size:.0f} MB" for size in resident_mb(pid))
        for bot, pid in pids.items()
    ]
    return "\n".join((*rows, "aim: at most 150 MB for linn itself"))


async def measure(pair: Pair) -> str:
    """Talk to both bots in turn, in both kinds of room, and return the tables.

    Raises:
        TimeoutError: a bot did not answer.
    """
    tables = []
    for kind, encrypted in KINDS.items():
        lines = {bot: pair.line(bot, f"one-{kind}", encrypted=encrypted) for bot in BOTS}
        tables.append(table(kind, await alternate(lines)))
    return "\n".join((*tables, memory(pair.pids)))


if __name__ == "__main__":
    sys.exit(print_measured(measure))
