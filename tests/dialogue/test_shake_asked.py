"""Soft all over with a long time is a camera that moved; who asks whether it was hears so."""

from __future__ import annotations

import pytest

from tests.dialogue.player import Player
from tests.dialogue.walked import keys_of, walked

_BLURRY = "everything is blurry, even the rock"


@pytest.mark.parametrize(
    ("told", "key"),
    [
        ("1/2 s at f/16. ", "symptom.shake"),  # f/16 is the format's limit
        ("1/2 s at f/18. ", "symptom.shake"),  # one mark past it
        ("1/2 s at f/32. ", "symptom.diffraction"),
    ],
)
def test_diffraction_of_one_mark_blurs_not_everything(told: str, key: str) -> None:
    """Movement comes first (common practice)."""
    assert key in keys_of(walked(), told + _BLURRY)


@pytest.mark.parametrize(
    ("language", "text", "key"),
    [
        ((), "So was it the wobble?", "shake.likely"),
        ((), "Put the column down now. sharper! So was it the tripod?", "shake.yes"),
        (("deutsch",), "Lag es am Wackeln?", "shake.likely"),
        (("deutsch",), "Jetzt ist es schärfer. War es das Stativ?", "shake.yes"),
        (("español",), "¿fue el trípode?", "shake.likely"),
    ],
)
def test_whether_it_was_the_camera(language: tuple[str, ...], text: str, key: str) -> None:
    """Likely, with the time; yes where it is sharper since."""
    (said,) = walked(*language, "1/2 s f/11 ISO 100").say(text)
    assert said.keys[0] == key
    assert "1/2 s" in said.body


@pytest.mark.parametrize("time", ["1/500 s f/8 ISO 800", "f/11 1/2 s ISO 100"])
def test_what_is_no_such_question(time: str) -> None:
    """A time so short shows no tripod; a statement asks nothing."""
    text = "was it the tripod?" if "500" in time else "it was the tripod."
    assert not any(key.startswith("shake.") for key in keys_of(walked(time), text))


def test_before_settings_nothing_is_known() -> None:
    """No frame was told of."""
    assert not any(key.startswith("shake.") for key in keys_of(Player(), "was it the tripod?"))


@pytest.mark.parametrize(
    ("tried", "text"),
    [("what if 1/2 s", "averaged"), ("what if 30 s", "darker light")],
)
def test_who_has_no_nd_is_given_none(tried: str, text: str) -> None:
    """Another time as bright is made of short frames, or takes darker light."""
    told = "12 m tall, 18 m away, rock at 1.5 m, full frame 24-70, tripod, no filters, bright cloud"
    (said,) = walked("f/11 1/60 s ISO 100", told=told).say(tried)
    assert text in said.body
    assert "ND" not in said.body
