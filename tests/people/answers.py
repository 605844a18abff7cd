"""Questions answered in a talk at the first settings: from the words typed to the answer sent."""

from __future__ import annotations

import json
from collections.abc import Iterable, Mapping
from copy import deepcopy
from functools import cache
from typing import Final

from bot.dialogue.meaning.said import OWN_TABLES
from bot.dialogue.steps.asked.topic_answers import TOPICS
from bot.dialogue.turn import Turn
from tests.dialogue.player import Player
from tests.people.rate import BLIND, Half, Rate, lines_of
from tests.people.topics import NUMBERS, Row

#: As for the topic alone.
AIM: Final = 0.9
#: What is said first in each language: a fall, a near rock, kit, light; then two clean borders.
_TOLD: Final[Mapping[str, tuple[str, ...]]] = {
    "en": ("12 m tall, 18 m away, rock at 1.5 m, full frame 24-70, tripod, polariser, 3 stop nd",),
    "de": (
        "deutsch",
        "12 m hoch, 18 m weg, Fels bei 1,5 m, Vollformat 24-70, Stativ, Polfilter, 3-Stufen-ND",
    ),
    "es": (
        "español",
        "12 m de alto, a 18 m, roca a 1,5 m, full frame 24-70, trípode, polarizador, nd de 3 pasos",
    ),
}
#: Of these a warning is the answer.
_WARNED: Final = frozenset({"wading", "climb", "carrying", "looking_up", "time_forgotten"})
#: Where these are told of a frame, the next settings are the answer, or a question of the cause.
_COMPLAINED: Final = frozenset(
    {"just_white", "too_long", "front_soft", "tripod_blur", "too_wide", "spray", "fogged", "leaves"}
    | {"tilted", "tilted_up", "focus_on_water", "grain", "iso", "one_channel", "sky", "edges"}
    | {"polariser_left"}
)
_TREATED: Final = ("adjust.", "symptom.", "cause.", "ask.cause", "highlights.darker")


def figures(half: Half) -> Iterable[Rate]:
    """How many questions have the answer of their topic, in each language."""
    asked = [json.loads(line) for line in lines_of("questions.jsonl", half)]
    yield _rate("answers", half, "en", [row for row in asked if row["topic"] != "none"])
    for language in OWN_TABLES if half in BLIND else ():
        rows = [json.loads(line) for line in lines_of(f"{language}_questions.jsonl", half)]
        yield _rate(f"answers in {language}", half, language, rows)


def misses() -> Iterable[str]:
    """Questions of the even half with another answer."""
    for row in map(json.loads, lines_of("questions.jsonl", "even")):
        if row["topic"] != "none" and not _is_answered(row, "en"):
            yield f"{row['text']!r}: {row['topic']}, answered {sorted(_keys(row['text'], 'en'))}"


def _rate(name: str, half: Half, language: str, rows: list[Row]) -> Rate:
    right = sum(_is_answered(row, language) for row in rows)
    return Rate(name, half, "question answered", right, len(rows), AIM)


def _is_answered(row: Row, language: str) -> bool:
    told = {row["topic"], *row.get("or", ())}
    meant = {topic for topic in TOPICS if told & {topic, *NUMBERS.get(topic, "").split()}}
    keys = _keys(row["text"], language)
    if any(keys & _answer(topic, language) for topic in meant):
        return True
    warned = any(key.startswith("danger.") for key in keys)
    treated = any(key.startswith(_TREATED) for key in keys)
    return bool((warned and meant & _WARNED) or (treated and meant & _COMPLAINED))


def _keys(text: str, language: str) -> set[str]:
    """The keys of what a message is answered with, but for the walk's question."""
    player = deepcopy(_begun(language))
    return {key for message in player.say(text) for key in message.keys} - {"ask.blink"}


@cache
def _answer(topic: str, language: str) -> frozenset[str]:
    """The keys of a topic's answer."""
    player = deepcopy(_begun(language))
    assert player.context is not None
    turn = Turn(player.context, player.origin(), player.now)
    TOPICS[topic](turn, "")
    return frozenset(part.key for part in turn.parts) - {"ask.blink"}


@cache
def _begun(language: str) -> Player:
    player = Player()
    for line in (*_TOLD[language], "1", "1"):
        player.say(line)
    return player
