"""Topics of `questions.jsonl`: how often the right one is found, and a topic in other talk."""

from __future__ import annotations

import json
from collections.abc import Iterable, Mapping
from typing import Any, Final

from bot.dialogue.meaning.topics import topic_of
from tests.people.rate import Half, Rate, lines_of

#: The right topic of what asks for one; any topic in other talk.
AIM: Final = 0.9
MOST_FALSE: Final = 0.05
#: The corpus's numbers of questions (Q) and mistakes (M) that a topic's answer treats.
_NUMBERS: Final[Mapping[str, str]] = {
    "silky_time": "Q1", "just_white": "Q2 M1", "need_nd": "Q3", "noon": "Q4 M19",
    "polariser_first": "Q5", "polariser_stops": "Q6", "polariser_turn": "Q7",
    "both_filters": "Q8", "f_number": "Q9", "why_not_f22": "Q10 M7", "focus_where": "Q11",
    "front_soft": "Q12 M11", "tripod_blur": "Q13 M6", "iso": "Q14 M8", "leaves": "Q15 M13",
    "spray": "Q16 M3", "raw": "Q17", "white_balance": "Q18", "histogram": "Q19", "meter": "Q20",
    "by_hand": "Q21", "phone": "Q22", "lens": "Q23", "best_time": "Q24", "sky": "Q25 M4",
    "wading": "Q26", "climb": "Q27", "stay": "Q28", "permit": "Q29", "choose": "Q30",
    "too_long": "M2", "edges": "M5", "focus_on_water": "M9", "hunting": "M10", "tilted": "M12",
    "polariser_left": "M14", "one_frame": "M15", "too_wide": "M16", "tilted_up": "M17",
    "eye_height": "M18", "carrying": "M20", "looking_up": "M21", "time_forgotten": "M22",
}  # fmt: skip


def figures(half: Half) -> Iterable[Rate]:
    """The right topic among what has one, a topic among what has none."""
    rows = _rows(half)
    meant = [row for row in rows if row["topic"] != "none"]
    others = [row for row in rows if row["topic"] == "none"]
    right = sum(map(_is_right, meant))
    false = sum(not _is_right(row) for row in others)
    yield Rate("topics", half, "right topic", right, len(meant), AIM)
    yield Rate(
        "topics", half, "topic in other talk", false, len(others), MOST_FALSE, at_least=False
    )


def misses() -> Iterable[str]:
    """Messages of the even half whose topic is another one."""
    for row in _rows("even"):
        if not _is_right(row):
            yield f"{row['text']!r}: {row['topic']}, found {topic_of(row['text'])}"


def _is_right(row: dict[str, Any]) -> bool:
    """One of the right names or numbers; no topic but small talk where there is none."""
    found = topic_of(row["text"]) or ""
    names = {found, *_NUMBERS.get(found, "none").split()}
    return bool(names & {row["topic"], *row.get("or", ())})


def _rows(half: Half) -> list[dict[str, Any]]:
    return [json.loads(line) for line in lines_of("questions.jsonl", half)]
