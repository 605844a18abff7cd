"""Times the answer to a message in words, and the memory that many messages leave behind."""

from __future__ import annotations

import resource
import statistics
import sys
import time
from datetime import UTC, datetime, timedelta
from typing import Final

from bot.dialogue.context import Context
from bot.dialogue.danger import read_danger
from bot.dialogue.engine import handle
from bot.dialogue.events import Origin, TextReceived

#: Messages when none are named on the command line.
MESSAGES: Final = 100_000
#: Messages before the first count of memory: tables are read and models learnt once.
WARM_UP: Final = 500
#: What people type, in turn: facts, answers, complaints, questions, what-ifs, talk.
WORDS: Final = (
    "12 m tall, 18 m away, rock at 1.5 m",
    "full frame, 24-70, tripod, polariser, 3-stop nd",
    "1",
    "1",
    "which shutter speed makes the water look like silk?",
    "the foam looks like shaving cream",
    "f/11, 1/4 s, iso 100",
    "what if I go to f/8",
    "and with the 3-stop",
    "all four corners are dark, as through a tube",
    "why",
    "my brother has a new bicycle",
    "two stops over, keep the time",
    "the ferns beside the water are green streaks",
    "are you a robot",
    "stop",
)
#: What a message may take [s], in the middle, and what reading it for danger may (own rules).
AIM_S: Final = 0.005
DANGER_AIM_S: Final = 0.001
#: The longest message that is read, full of words that stand in many rules.
LONGEST: Final = "the water is in the river and i am not so " * 200


def answered(messages: int) -> tuple[list[float], float]:
    """The times of all answers [s], and by how much the process has grown meanwhile [MB]."""
    now = datetime(2027, 6, 18, 12, 0, tzinfo=UTC)
    context: Context | None = None
    times: list[float] = []
    peak_mb = 0.0
    for number in range(WARM_UP + messages):
        if number == WARM_UP:
            peak_mb = _peak_mb()
        now += timedelta(seconds=30)
        event = TextReceived(origin=_origin(number, now), text=WORDS[number % len(WORDS)])
        begun = time.perf_counter()
        context, _ = handle(context or Context.fresh(event.origin), event, now)
        times.append(time.perf_counter() - begun)
    return times[WARM_UP:], _peak_mb() - peak_mb


def danger_read(text: str, times: int) -> float:
    """The middle time of reading a text for danger [s]."""
    found = []
    for _ in range(times):
        begun = time.perf_counter()
        read_danger.__wrapped__(text)
        found.append(time.perf_counter() - begun)
    return statistics.median(found)


def _peak_mb() -> float:
    """The most memory that this process has had so far."""
    return resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1024


def _origin(number: int, now: datetime) -> Origin:
    return Origin(
        event_id=f"$event{number}",
        room_id="!creek",
        person_id="@fern:mill.example",
        sent_at=now,
        age_s=0.0,
    )


def main(messages: int) -> int:
    """Print the middle time, the slowest hundredth, and the growth; 1 beyond the aim."""
    times, grown_mb = answered(messages)
    middle_s = statistics.median(times)
    slow_s = statistics.quantiles(times, n=100)[-1]
    print(f"answer to a text: median {middle_s * 1000:.2f} ms, 99 of 100 in {slow_s * 1000:.1f} ms")
    print(f"memory grown over {messages} messages: {grown_mb:.1f} MB")
    danger_s = statistics.fmean(danger_read(words, 50) for words in WORDS)
    longest_s = danger_read(LONGEST, 5)
    print(f"read for danger: {danger_s * 1000:.2f} ms, the longest {longest_s * 1000:.0f} ms")
    return 0 if middle_s <= AIM_S and danger_s <= DANGER_AIM_S else 1


if __name__ == "__main__":
    sys.exit(main(int(sys.argv[1]) if len(sys.argv) > 1 else MESSAGES))
