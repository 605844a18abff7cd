"""Texts: none is left over, none is missing, and limits are told in the person's units."""

from __future__ import annotations

import ast
import math
import re
from functools import cache
from pathlib import Path
from typing import Final

import pytest

from bot.dialogue import texts
from bot.dialogue.compose import Part, Role
from bot.dialogue.facts import Units
from bot.dialogue.questions import QUESTIONS, Asked, in_units
from bot.dialogue.texts import TEXTS, domain_key, domain_values, measures
from core.adjust import Lever
from core.errors import OutOfDomainError
from core.light import LIGHTS
from core.water import Look, band_of

_BOT: Final = Path(texts.__file__).parents[2]


@cache
def _nodes() -> list[list[ast.AST]]:
    """Of each module of the bot; that of the questions composes every key that begins `ask.`."""
    return [
        list(ast.walk(ast.parse(path.read_text(encoding="utf-8"))))
        for path in _BOT.rglob("*.py")
        if path.name != "questions.py"
    ]


def _inside(nodes: list[ast.AST]) -> set[int]:
    """Strings that use no text: keys of a table, and pieces of a composed string."""
    keys = [key for node in nodes if isinstance(node, ast.Dict) for key in node.keys]
    pieces = [piece for node in nodes if isinstance(node, ast.JoinedStr) for piece in node.values]
    return {id(node) for node in (*keys, *pieces)}


@cache
def _written() -> set[str]:
    """Every string in the source that may name a text."""
    return {
        node.value
        for nodes in _nodes()
        for inside in [_inside(nodes)]
        for node in nodes
        if isinstance(node, ast.Constant) and isinstance(node.value, str) and id(node) not in inside
    }


@cache
def _composed() -> list[re.Pattern[str]]:
    """Every composed string with a literal beginning up to a dot, as a pattern of one word each."""
    found = []
    for nodes in _nodes():
        for node in nodes:
            if isinstance(node, ast.JoinedStr) and _begins(node):
                pieces = [
                    re.escape(str(piece.value)) if isinstance(piece, ast.Constant) else r"[\w -]*"
                    for piece in node.values
                ]
                found.append(re.compile("".join(pieces)))
    return found


def _begins(node: ast.JoinedStr) -> bool:
    first = node.values[0]
    return isinstance(first, ast.Constant) and bool(re.match(r"[a-z_]+\.", str(first.value)))


def _is_used(key: str) -> bool:
    if key.startswith("ask."):
        asked = QUESTIONS.get(key.split(".")[1])
        named = asked is not None and key.removesuffix(".tap") in {asked.key, *asked.option_keys}
        return named and key.split(".")[1].removesuffix("_feet") in _written()
    return key in _written() or any(pattern.fullmatch(key) for pattern in _composed())


def test_every_text_is_used() -> None:
    """A text whose key nobody writes or composes is left over from something that is gone."""
    assert [key for key in TEXTS if not _is_used(key)] == []


def test_a_left_over_text_would_be_found() -> None:
    """The search does not simply find everything."""
    assert not _is_used("lens.nobody_says_this")
    assert not _is_used("ask.nobody_asks_this")


@pytest.mark.parametrize("asked", QUESTIONS.values(), ids=QUESTIONS)
def test_every_question_has_its_texts(asked: Asked) -> None:
    """The question and each of its options can be said."""
    assert {asked.key, *asked.option_keys} <= set(TEXTS)


@pytest.mark.parametrize("asked", QUESTIONS.values(), ids=QUESTIONS)
def test_a_polls_options_are_short(asked: Asked) -> None:
    """Four words at most: clients cut longer ones off on a phone (own rule)."""
    values = {"distance": "12 m", "first": "round pale discs", "second": "the white is sky"}
    taps = Part(Role.QUESTION, asked.key, values, asked.option_keys).taps()
    assert len(taps) == len(asked.options)
    assert all(len(tap.split()) <= 4 for tap in taps), taps


@pytest.mark.parametrize("light", LIGHTS)
def test_every_light_has_a_name(light: str) -> None:
    """A light that can be told can be told back."""
    assert TEXTS[f"light.{light}"]


@pytest.mark.parametrize("lever", [lever for lever in Lever if lever.value != "bracket"])
def test_every_lever_beyond_has_words(lever: Lever) -> None:
    """Each way out that the plan may offer can be said; bracketing has a sentence of its own."""
    assert TEXTS[f"other.{lever.value}"]


@pytest.mark.parametrize(
    ("name", "units", "asked"),
    [
        ("nearest", Units.IMPERIAL, "nearest_feet"),
        ("nearest_feet", Units.IMPERIAL, "nearest_feet"),
        ("nearest_feet", Units.METRIC, "nearest"),
        ("nearest", None, "nearest"),
        ("blink", Units.IMPERIAL, "blink"),  # nothing in it has a unit
    ],
)
def test_questions_follow_the_units(name: str, units: Units | None, asked: str) -> None:
    """An example stands in the units of now, whichever were in use when the question was put."""
    assert in_units(name, units) == asked


_TOO_NEAR: Final = OutOfDomainError("near_m", 0.0125, "m", 0.05, math.inf)
_TOO_HIGH: Final = OutOfDomainError("height_m", 1524.0, "m", 0.0, 1000.0)
_TOO_FAST: Final = OutOfDomainError("speed_mps", 304.8, "m/s", 0.0, 60.96)
_TOO_LONG: Final = OutOfDomainError("distance_km", 1609.344, "km", 0.0, 160.9344)
_TOO_SMALL: Final = OutOfDomainError("iso", 0.0, "", 25.0, 6400.0)


@pytest.mark.parametrize(
    ("error", "units", "sentence"),
    [
        (_TOO_NEAR, None, "A nearest distance of 0.0125 m can't be: I reckon from 0.05 m up."),
        (_TOO_HIGH, Units.METRIC, "A height of 1524 m can't be: I reckon from 0 m to 1000 m."),
        # exact: 1 ft is 0.3048 m, 1 mi is 1.609344 km
        (_TOO_HIGH, Units.IMPERIAL, "A height of 5000 ft can't be: I reckon from 0 ft to"),
        (_TOO_FAST, Units.IMPERIAL, "A speed of water of 1000 ft/s can't be: I reckon from 0 ft/s"),
        (_TOO_LONG, Units.IMPERIAL, "A walk of 1000 mi can't be: I reckon from 0 mi to 100 mi."),
        (_TOO_SMALL, Units.IMPERIAL, "An ISO of 0 can't be: I reckon from 25 to 6400."),
    ],
)
def test_limits_in_the_units_of_the_person(
    error: OutOfDomainError, units: Units | None, sentence: str
) -> None:
    """What can't be, and the range that can, without an end where there is none."""
    said = TEXTS[domain_key(error)].format(**domain_values(error, units))
    assert said.startswith(sentence)


@pytest.mark.parametrize(
    ("look", "shown"),
    [
        (Look.FROZEN, "under 0.15 %"),
        (Look.TEXTURED, "1 to 10 %"),
        (Look.MISTY, "over 35 %"),
    ],
)
def test_bands_of_the_looks_in_words(look: Look, shown: str) -> None:
    """The shares of `core.water.BANDS` (own rule), as `why` tells them."""
    assert measures.band(*band_of(look)) == shown
