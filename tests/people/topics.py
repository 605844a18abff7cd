"""Topics of `questions.jsonl`: how often the right one is found, and a topic in other talk."""

from __future__ import annotations

import json
from collections.abc import Iterable, Mapping, Sequence
from typing import Any, Final, TypeAlias

from bot.dialogue.meaning.said import OWN_TABLES, Said
from bot.dialogue.meaning.topics import topic_of
from bot.dialogue.reading import read
from bot.dialogue.reading.foreign import glossed
from bot.dialogue.steps.asked.questions_asked import topic_asked
from bot.dialogue.steps.asked.topic_or_cause import topic_meant
from bot.dialogue.steps.asked.which_topic import meant_by
from tests.people.rate import BLIND, Half, Rate, lines_of

Row: TypeAlias = dict[str, Any]

#: The right topic of what asks for one; any topic in other talk.
AIM: Final = 0.9
MOST_FALSE: Final = 0.05
#: The corpus's numbers of questions (Q) and mistakes (M) that a topic's answer treats.
NUMBERS: Final[Mapping[str, str]] = {
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
    """The right topic among what has one, a topic among what has none; in each language."""
    rows = _rows(half)
    meant = [row for row in rows if row["topic"] != "none"]
    yield from _rates("topics", half, meant, [row for row in rows if row["topic"] == "none"])
    for language in OWN_TABLES if half in BLIND else ():
        asked = [json.loads(line) for line in lines_of(f"{language}_questions.jsonl", half)]
        others = [
            {"text": line, "topic": "none"} for line in lines_of(f"{language}_other.txt", half)
        ]
        yield from _rates(f"topics in {language}", half, asked, others, language)


def _rates(
    name: str,
    half: Half,
    meant: Sequence[Row],
    others: Sequence[Row],
    language: str = "en",
) -> Iterable[Rate]:
    right = sum(_is_right(row, language) for row in meant)
    false = sum(not _is_right(row, language) for row in others)
    yield Rate(name, half, "right topic", right, len(meant), AIM)
    yield Rate(name, half, "topic in other talk", false, len(others), MOST_FALSE, at_least=False)


def misses() -> Iterable[str]:
    """Messages of the even half whose topic is another one."""
    for row in _rows("even"):
        if not _is_right(row):
            yield f"{row['text']!r}: {row['topic']}, found {_found(row['text'])}"


def _is_right(row: Row, language: str = "en") -> bool:
    """One of the right names or numbers; no topic but small talk where there is none."""
    found = _found(row["text"], language)
    names = {found, *NUMBERS.get(found, "none").split()}
    return bool(names & {row["topic"], *row.get("or", ())})


def _found(text: str, language: str = "en") -> str:
    """The topic: in English by its meaning alone, else as the dialogue finds it."""
    said = Said(glossed(text, language), text, language)
    if language == "en":
        return topic_of(said) or ""
    named = topic_asked(said.english)
    if named is not None:
        return meant_by(said, named)
    return topic_meant(said, read(said.english)) or ""


def _rows(half: Half) -> list[Row]:
    return [json.loads(line) for line in lines_of("questions.jsonl", half)]
