"""What is said of a group's day and of its frames: when to count heads, tasks, what to keep."""

from __future__ import annotations

from typing import Final

TEACHING: Final[dict[str, str]] = {
    # One per idea, at most three of a fall; days cure the bias of what was hard to get (common
    # practice).
    "asked.keep_few": (
        "One per idea, at most three of a fall. Sort out the soft and shaken today; choose among "
        "the rest after a few days, on a large screen."
    ),
    # Every 45 to 60 min; late by 10 and by 15 min (common practice, the minutes are an own rule).
    "asked.head_count": (
        "Every 45 to 60 min at one dry place that all can see: count aloud, by name. 10 min late: "
        "the buddy asks; 15: the leader looks, the others stay together."
    ),
    # Usual tasks of workshops (common practice).
    "asked.exercise": (
        "All from dry ground, half an hour: the same frame at 1/15, 1/8, 1/4, 1/2 and 1 s; one "
        "with clean borders and no sky; phones: borders. From the railing it works, too."
    ),
    # Intent half a minute, silence, what holds, what pulls away, one technical, next time.
    "asked.group_review": (
        "About 4 min a picture: intent, a look in silence, three things that hold, one change, one "
        "technical, next time. {number} pictures: {minutes} min."
    ),
}
