"""What a file of a hostile corpus is, and what became of it."""

from __future__ import annotations

import asyncio
import time
from collections import Counter, defaultdict
from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from bot.dialogue.texts.frames import fault_line
from bot.runtime.frames import FrameServer
from bot.runtime.outcomes import Outcome
from core.frame.report import FrameReport

REPORT = "report"


@dataclass(frozen=True)
class Case:
    """One file: of which kind, what it is called, its bytes, and what may become of it."""

    kind: str
    name: str
    data: bytes
    #: Outcomes that are right; empty: any that keeps the promises.
    allowed: frozenset[str] = frozenset()


@dataclass(frozen=True)
class Seen:
    """What became of a case: `report` or the name of a fault, and how long it took [s]."""

    case: Case
    outcome: str
    took_s: float
    report: FrameReport | None
    sentence: str

    @property
    def wrong(self) -> str:
        """What is wrong with it, empty when nothing is."""
        allowed = self.case.allowed
        if allowed and self.outcome not in allowed:
            return f"{self.outcome}, not {' or '.join(sorted(allowed))}"
        if self.report is not None:
            return _odd_report(self.report)
        return "" if self.sentence.endswith(".") else "no sentence"


def _odd_report(report: FrameReport) -> str:
    metadata = report.metadata
    texts = (metadata.maker or "", metadata.model or "")
    if not all(text.isprintable() and len(text) <= 64 for text in texts):
        return "a name that can't be shown"
    return "" if 0 <= report.clipping.share <= 1 else "a share that is none"


async def measure_all(server: FrameServer, cases: Iterable[Case], at_once: int = 2) -> list[Seen]:
    """Measure each file in a process of its own, some at the same time; in the order given."""
    slots = asyncio.Semaphore(at_once)

    async def one(case: Case) -> Seen:
        async with slots:
            began = time.monotonic()
            outcome = await server.check(case.data)
            return _seen(case, outcome, time.monotonic() - began)

    async with asyncio.TaskGroup() as group:
        tasks = [group.create_task(one(case)) for case in cases]
    return [task.result() for task in tasks]


def _seen(case: Case, outcome: Outcome, took_s: float) -> Seen:
    if outcome.fault is None:
        return Seen(case, REPORT, took_s, outcome.report, "")
    sentence = fault_line(outcome.fault, outcome.numbers)
    return Seen(case, outcome.fault.value, took_s, None, sentence)


def table(seen: Sequence[Seen]) -> list[str]:
    """Kinds of files by outcomes, as lines; the last column is the slowest [s]."""
    counts: defaultdict[str, Counter[str]] = defaultdict(Counter)
    slowest: defaultdict[str, float] = defaultdict(float)
    for one in seen:
        for kind in (one.case.kind, "all"):
            counts[kind][one.outcome] += 1
            slowest[kind] = max(slowest[kind], one.took_s)
    if not counts:
        return ["no files"]
    outcomes = sorted(counts["all"], key=lambda name: (name != REPORT, name))
    width = max(len(kind) for kind in counts)
    rows = [f"{'':{width}} " + " ".join(f"{name:>15}" for name in outcomes) + "   slowest"]
    for kind in (*sorted(set(counts) - {"all"}), "all"):
        numbers = " ".join(f"{counts[kind][name] or '·':>15}" for name in outcomes)
        rows.append(f"{kind:{width}} {numbers} {slowest[kind]:7.2f} s")
    return rows
