"""Danger told in a part of a message: by itself, beside plain talk, facts, or with a cry."""

from __future__ import annotations

import math
from collections.abc import Mapping

import pytest

from bot.dialogue.danger import DangerKind, beside
from bot.dialogue.danger.likelihood import Likely
from tests.dialogue.unsure import FACTS


def judge(monkeypatch: pytest.MonkeyPatch, odds: Mapping[str, float]) -> None:
    """From now on these words have such odds, and all others are plain talk."""
    plain = Likely(-9.0, DangerKind.UNCLEAR, 0.0)
    monkeypatch.setattr(
        beside, "judged", lambda text: plain._replace(odds=odds.get(text, plain.odds))
    )


PLAIN = "tripod is up, lens is clean, hat is on, tea is hot, dog is here"


@pytest.mark.parametrize(
    ("text", "odds", "heard"),
    [
        ("she sways over there", {"she sways over there": 9.0}, None),  # one part is the whole
        ("tea is hot, she sways over there", {"she sways over there": 3.5}, 3.5),
        ("tea is hot, she sways over there", {"she sways over there": 1.0}, None),
        ("tea is hot, she sways", {"she sways": 9.0}, None),  # too few words alone
        (f"{PLAIN}, she sways", {"she sways": 0.5}, 0.5),  # all else is plain
        (f"{PLAIN}, she sways", {"she sways": -0.5}, None),
        (PLAIN, {}, None),  # nothing is left
        ("it is 5 m tall, she sways over there", {"she sways over there": 0.5}, 0.5),
        ("it is 5 m tall, she sways over there", {"she sways over there": -0.5}, None),
    ],
)
def test_danger_is_heard_in_a_part(
    monkeypatch: pytest.MonkeyPatch, text: str, odds: Mapping[str, float], heard: float | None
) -> None:
    """Its odds are told: by itself, beside plain talk, or beside facts."""
    judge(monkeypatch, odds)
    assert beside.heard_beside(text, -9.0) == heard


def test_a_call_for_help_is_a_part_of_its_own(monkeypatch: pytest.MonkeyPatch) -> None:
    """Unless the whole is far from any danger."""
    judge(monkeypatch, {})
    text = "help! she sways"
    assert beside.heard_beside(text, 0.0) == math.inf
    assert beside.heard_beside(text, -9.0) is None


@pytest.mark.parametrize(
    ("text", "left"),
    [
        (f"{FACTS}, she sways over there", "she sways over there"),
        (f"{FACTS}, she sways", ""),  # too few words
        (FACTS, ""),
        ("she sways over there, he sits", ""),  # no facts
    ],
)
def test_what_stands_beside_facts(text: str, left: str) -> None:
    """Whatever it says."""
    assert beside.beside_facts(text) == left
