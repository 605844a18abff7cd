"""Water that is too streaky, or wished softer but no mush: a longer time, never a shorter one."""

from __future__ import annotations

import pytest

from bot.dialogue.facts import Symptom
from bot.dialogue.reading import read
from tests.dialogue.walked import keys_of, known, walked

_FRAME = "f/11 1/25 s ISO 100"


def _time_after(language: tuple[str, ...], text: str) -> float:
    player = walked(*language, _FRAME, text)
    walk = known(player).conversation.walk
    assert walk is not None
    assert walk.given is not None
    return walk.given.shutter_s


@pytest.mark.parametrize(
    ("language", "text"),
    [
        ((), "the water is too streaky"),
        ((), "too stripy for me"),
        ((), "i'd like the water softer without it turning to mush"),
        (("deutsch",), "mir ist das Wasser zu streifig"),
        (
            ("deutsch",),
            "Mir ist das Wasser zu streifig, ich hätte es gern weicher, ohne dass es zu Watte wird",
        ),
        (("español",), "el agua sale demasiado rayada"),
        (("español",), "quisiera el agua más suave sin que parezca algodón"),
    ],
)
def test_time_becomes_longer(language: tuple[str, ...], text: str) -> None:
    """In each language, with a limit and without."""
    assert _time_after(language, text) > 1 / 20


def test_softer_alone_is_as_it_was() -> None:
    """Without a limit or streaks other words decide."""
    assert _time_after((), "i want it silky, softer than this") >= 1 / 25


def test_leaves_that_are_streaky_are_no_water() -> None:
    """They moved; the time for the water stays."""
    assert "keep.leaf_frame" in keys_of(walked(_FRAME), "ferns are too streaky")
    assert Symptom.NO_TEXTURE not in read("ferns are too streaky").symptoms


def test_what_is_suggested_is_answered_by_the_settings() -> None:
    """Who asks for a suggestion with the wish has it in the next settings."""
    keys = keys_of(walked(_FRAME), "the water is too streaky. What do you suggest?")
    assert not any(key.startswith("unanswered.") for key in keys)


@pytest.mark.parametrize(
    ("text", "look"),
    [
        ("Is crisp bad? they showed that soft milky look and i want that", "silky"),
        ("what's wrong with crisp? i want it silky", "silky"),
        ("I want crisp water", "crisp"),
    ],
)
def test_look_whose_worth_is_asked_is_not_wished(text: str, look: str) -> None:
    """The look that is wished counts."""
    assert read(text).look == look
