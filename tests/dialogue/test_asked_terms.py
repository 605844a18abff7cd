"""Words that are asked the meaning of, times behind a filter, and several questions at once."""

from __future__ import annotations

import pytest

from bot.dialogue.steps.asked.terms import asked
from tests.dialogue.player import Player
from tests.dialogue.walked import keys_of, walked

_SUNNY = "12 m tall, 18 m away, rock at 2 m, full frame 16-35, sunny"


@pytest.mark.parametrize(
    ("question", "term"),
    [
        ("what's an nd?", "nd"),
        ("ok and what is an nd8?", "nd"),
        ("sorry what does nd mean?", "nd"),
        ("what is a 6-stop filter", "nd"),
        ("no idea what iso is", "iso"),
        ("what means polarizer?", "polariser"),
        ("i don't know what a polariser is", "polariser"),
        ("what precisely is diffraction", "diffraction"),
        ("what do you mean by blinking?", "blink"),
        ("explain bracketing", "bracket"),
        ("what does long exposure mode do", "long_exposure"),
        ("what is f/8", "f_number"),
        ("what is shutter speed", "shutter"),
    ],
)
def test_a_term_is_explained(question: str, term: str) -> None:
    """However its meaning is asked."""
    assert asked(question) == f"term.{term}"


@pytest.mark.parametrize(
    "question",
    [
        "what's the iso",
        "what is my aperture",
        "what is the best f-number",
        "what iso",
        "what is wrong with the nd",
        "what does the nd do to my colours",
        "what's a good shutter speed",
        "what nd do i need",
        "what is better nd or polariser",
        "what is that bird",
    ],
)
def test_other_questions_want_no_meaning(question: str) -> None:
    """Who asks for a number, or what to take, knows the word."""
    assert asked(question) is None


def test_terms_are_answered_with_what_is_known() -> None:
    """Diffraction by the format; a phone has one opening alone."""
    assert "f/16" in walked().say("what is diffraction?")[0].body
    phone = walked(told="phone, 12 m tall, 18 m away, rock at 1 m")
    assert keys_of(phone, "what is diffraction?")[0] == "term.diffraction_phone"


@pytest.mark.parametrize(
    ("question", "key"),
    [
        ("can I do 2 seconds with an ND8", "reach.bright"),
        ("is 1/8 s possible with the polariser?", "reach.bright"),
        ("would an nd1000 get me 4 s", "reach.right"),
        ("can we use 1/2 s with a 6 stop?", "reach.narrower"),
        ("could I shoot 1/4 s with an nd1000?", "reach.dark"),
        ("can I do 5 s at f/16 with an nd1000 and the polariser on", "reach.dark"),
    ],
)
def test_a_time_behind_a_filter_is_had_or_not(question: str, key: str) -> None:
    """Yes or no for the light that was told."""
    player = Player()
    player.say(_SUNNY)
    assert keys_of(player, question)[0] == key


def test_without_a_light_the_filter_is_reckoned() -> None:
    """What the meter would have to show bare; a phone's opening is fixed."""
    assert "1/4 s" in walked().say("can I do 2 s with an nd8?")[0].body
    phone = walked("overcast", told="phone, 12 m tall, 18 m away, rock at 1 m")
    assert keys_of(phone, "can I get 1 s with an nd8?")[0] == "reach.bright"


def test_the_light_of_a_frame_counts() -> None:
    """What the last frames showed is nearer to the truth than a word."""
    player = walked("1")
    assert "last frames" in player.say("can I get 8 s with an nd8?")[0].body


@pytest.mark.parametrize(
    ("text", "key"),
    [
        ("can I do that with the polariser", "reach"),
        ("can I do 2 s", "reach"),
        ("can I get the whole fall with 24 mm", "reach"),
        ("took 2 s with an nd8, can we go now", "reach"),
    ],
)
def test_no_time_behind_a_filter_is_asked(text: str, key: str) -> None:
    """Time and filter have to be asked for in one clause."""
    player = Player()
    player.say(_SUNNY)
    assert not any(said.startswith(key) for said in keys_of(player, text))


def test_all_questions_of_a_message_are_answered() -> None:
    """The first in full, the others behind it."""
    player = Player()
    player.say(_SUNNY)
    said = keys_of(player, "can I do 2 seconds with an ND8 and is f/16 ok and where do I focus")
    assert said[:2] == ("reach.bright", "asked.f_number_blur")
    assert player.context is not None
    assert player.context.facts.f_number is None
    assert keys_of(player, "whats an ND? and what does iso mean")[:2] == ("term.nd", "term.iso")


def test_answers_that_move_the_walk_stand_alone() -> None:
    """The same answer is not given twice either."""
    player = walked()
    said = keys_of(player, "what iso? and what about the leaves?")
    assert said[0] == "asked.iso"
    assert not any(key.startswith("keep.leaf") for key in said)
    assert keys_of(player, "which iso? what iso then?").count("asked.iso") == 1
