"""What is tried behind a sentence that tells nothing is tried all the same."""

from __future__ import annotations

import pytest

from bot.dialogue.meaning.said import in_english
from bot.dialogue.steps.asked import tried_behind
from tests.dialogue.walked import keys_of, walked

_FRAME = "f/11 1/5 s ISO 100"


@pytest.mark.parametrize(
    ("language", "text"),
    [
        ((), "No mush here, on the contrary. What if I add the 3-stop ND, aperture stays f/11?"),
        (
            ("deutsch",),
            "Brei habe ich nicht, im Gegenteil. Was wäre, wenn ich den 3-Blenden-ND dazunehme?",
        ),
        (
            ("español",),
            "No, papilla no es, al contrario. ¿Qué pasa si pongo el ND de 3 pasos y dejo f/11?",
        ),
    ],
)
def test_an_nd_is_tried_behind_a_contradiction(language: tuple[str, ...], text: str) -> None:
    """1/5 s behind three stops is 1.6 s (definition of a stop); depth is not asked."""
    player = walked(*language, _FRAME)
    (said,) = player.say(text)
    assert said.keys[0].startswith("what_if.")
    assert "1.6 s" in said.body.replace(",", ".")
    assert not any("depth" in key or "enough" in key for key in said.keys)


@pytest.mark.parametrize(
    ("language", "text"),
    [
        ((), "No, on the contrary. What if ISO 400?"),
        (("deutsch",), "Nein, ganz im Gegenteil. Was passiert bei ISO 400?"),
        (("español",), "No, al contrario. ¿Qué pasa con ISO 400?"),
    ],
)
def test_a_contradiction_is_no_reply_of_the_white(language: tuple[str, ...], text: str) -> None:
    """Whether it blinks stays open."""
    keys = keys_of(walked(*language, _FRAME), text)
    assert keys[0].startswith("what_if.")
    assert not any(key.startswith(("highlights.", "keep.")) for key in keys)


@pytest.mark.parametrize("text", ["That can't be right.", "No, the opposite."])
def test_a_contradiction_alone_answers_nothing(text: str) -> None:
    """The white is still asked about."""
    keys = keys_of(walked(_FRAME), text)
    assert not any(key.startswith(("highlights.", "keep.")) for key in keys)


@pytest.mark.parametrize(
    "text",
    ["The rock is at 2 m. What if I use f/8?", "what iso? and what about the leaves?"],
)
def test_what_is_told_or_asked_in_front_is_kept(text: str) -> None:
    """Facts and questions before the what-if are not dropped."""
    said = in_english(text)
    assert tried_behind.alone(said) is said
