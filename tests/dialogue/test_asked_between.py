"""Stops between two settings, seconds of a fraction, and who cannot move, crops or lifts rock."""

from __future__ import annotations

import pytest

from bot.dialogue.meaning.wordings import topic_by_words
from tests.dialogue.walked import keys_of, walked

_PHONE = "phone, 12 m tall, 18 m away, rock at 2 m, overcast"


@pytest.mark.parametrize(
    ("question", "told"),
    [
        ("How many stops lie between 1/125 and 0.8 s?", "6 2/3 stops"),
        ("how many stops from f/8 to f/11", "1 stop"),
        ("what's the difference between iso 100 and iso 400?", "2 stops"),
        ("how many stops is 1/4 to 1/15", "2 stops"),
        ("How many second is 1/25? It is short?", "0.04 s"),
        ("how long is 1/8 s?", "0.125 s"),
        ("how long is 1/8000 s?", "0.000125 s"),
    ],
)
def test_numbers_of_a_question_are_reckoned(question: str, told: str) -> None:
    """From its own numbers alone; the walk stays where it stands."""
    assert told in walked().say(question)[0].body


@pytest.mark.parametrize(
    "question",
    [
        "how many stops does the polariser take",
        "how many stops is my nd",
        "how long is the walk",
        "how many stops between 0 and 0.8 s?",
        "how long do i have with 2 km out",
        "how long is 1/0 s?",
        "how many stops between 1/0 and 1/4?",
    ],
)
def test_other_numbers_are_not(question: str) -> None:
    """Nor is a setting that no camera has."""
    keys = keys_of(walked(), question)
    assert not {"asked.stops_between", "asked.seconds"} & set(keys)


@pytest.mark.parametrize(
    ("text", "key"),
    [
        ("I cannot go other place, is only a small platform", "asked.cannot_move"),
        ("i can't go anywhere else from here", "asked.cannot_move"),
        ("can i crop it later?", "asked.crop"),
        ("how do i make the dark rocks lighter without ruining the water", "asked.lift_rock"),
        ("anything else i should try before i go?", "answer.one_frame"),
        ("do i need more filters or should i just wait for clouds, and what iso", "asked.nd_plain"),
        ("why did you say 2 s timer", "asked.timer"),
        ("whats the self-timer for", "asked.timer"),
        ("remote or timer?", "asked.timer"),
    ],
)
def test_what_has_an_answer_of_its_own(text: str, key: str) -> None:
    """Each by its words."""
    assert keys_of(walked(), text)[0] == key


@pytest.mark.parametrize(
    "text",
    [
        "i can't move",
        "can't move, i'm stuck on a ledge",
        "we can't go back, the water is rising",
        "he can't move to the left",
        "can't move my leg",
        "cant go elsewhere im trapped",
    ],
)
def test_who_may_be_in_trouble_is_told_nothing_of_pictures(text: str) -> None:
    """Only who stands where they stand, and says why."""
    assert topic_by_words(text) != "cannot_move"


def test_a_phone_is_focused_by_a_tap() -> None:
    """It has no distance to set."""
    assert keys_of(walked(told=_PHONE), "where do i tap to focus")[0] == "asked.focus_phone"


def test_a_look_at_full_size_is_no_crop() -> None:
    """Nor is one that was made already."""
    player = walked()
    for text in ("Is 0.8 s at 100 % crop going to show tripod shake?", "i cropped it out"):
        assert "asked.crop" not in keys_of(player, text)
