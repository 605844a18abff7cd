"""Light, blinking, complaints, looks and other words."""

from __future__ import annotations

from typing import Any

import pytest

from bot.dialogue.facts import Blink, Flow, Symptom
from bot.dialogue.reading import light_words, look, read
from core.light import LIGHTS
from core.water import Look
from tests.dialogue.reading_checks import told


@pytest.mark.parametrize(
    ("text", "key"),
    [
        ("full sun", "full sun"),
        ("clear sky", "full sun"),
        ("open shade, blue sky above", "open shade"),
        ("overcast", "overcast"),
        ("overcast under the trees", "light canopy"),
        ("golden hour", "before sunset"),
        ("deep canyon", "deep slot"),
        ("sun on it but the rocks in shade", None),
        ("white balance cloudy", None),
        ("no sun, no shade", None),
        ("wait until dusk", None),
    ],
)
def test_light(text: str, key: str | None) -> None:
    """The most enclosed light counts; a mixture, a wish and a white balance are none."""
    assert read(text).light == key


def test_every_light_and_look_is_one_of_the_core() -> None:
    """The words lead to keys that the light table and the looks know."""
    assert {key for key, _ in light_words.LIGHTS} <= LIGHTS.keys()
    assert {name for name, _ in look._LOOKS} == {one.value for one in Look}


@pytest.mark.parametrize(
    ("text", "blink"),
    [
        ("nothing blinks", Blink.NOTHING),
        ("just dots", Blink.DOTS),
        ("patches in the water blink", Blink.PATCHES),
        ("it blinks", Blink.PATCHES),
        ("the whole fall blinks", Blink.SHEET),
        ("sky blinks", Blink.SKY),
        ("none", None),
        ("warning sign at the edge", None),
        ("flash flood", None),
    ],
)
def test_blinking(text: str, blink: Blink | None) -> None:
    """The size of what blinks; without a size it is patches; other warnings are none."""
    assert read(text).blink is blink


def test_bare_sizes_answer_the_question() -> None:
    """`none` and `all of it` are answers only where blinking was asked for."""
    assert read("none", expecting=frozenset({"blink"})).blink is Blink.NOTHING
    assert read("all of it", expecting=frozenset({"blink"})).blink is Blink.SHEET


@pytest.mark.parametrize(
    ("text", "at_right"),
    [
        ("histogram touches the right edge", True),
        ("histogram stops short of the right", False),
        ("histogram looks fine", None),
        ("turn right at the fork", None),
    ],
)
def test_histogram(text: str, at_right: bool | None) -> None:
    """Only a histogram with a right-hand edge says something."""
    assert read(text).histogram_at_right is at_right


@pytest.mark.parametrize(
    ("text", "symptoms"),
    [
        ("mush", {Symptom.NO_TEXTURE}),
        ("no texture", {Symptom.NO_TEXTURE}),
        ("just white", {Symptom.JUST_WHITE}),
        ("everything is way over", {Symptom.JUST_WHITE}),
        ("way over there", set()),
        ("the meter says way under", {Symptom.TOO_DARK}),
        ("too frozen", {Symptom.TOO_FROZEN}),
        ("I want it frozen", set()),
        ("soft", {Symptom.SOFT_ALL}),
        ("everything soft, the foreground worst: foreground soft", {Symptom.SOFT_NEAR}),
        ("soft at the back", {Symptom.SOFT_FAR}),
        ("its sharp but a bit soft in the corners", {Symptom.SOFT_FAR}),
        ("the corners are blurry", {Symptom.SOFT_FAR}),
        ("soft in the bottom left corner", {Symptom.SOFT_NEAR}),
        ("lower corners not sharp", {Symptom.SOFT_NEAR}),
        ("soft light in the corners", set()),
        ("corners are sharp", set()),
        ("corners not soft", set()),
        ("the foreground isn't soft any more", set()),
        ("the foreground isn't really sharp", {Symptom.SOFT_NEAR}),
        ("round soft spots", {Symptom.SOFT_SPOTS}),
        ("no glare, not too dark, isn't soft", set()),
        ("dark forest, pretty dark", set()),
        ("dark forest, still too dark", {Symptom.TOO_DARK}),
        ("too dark, black pools", {Symptom.TOO_DARK, Symptom.BLACK_ROCK}),
    ],
)
def test_complaints(text: str, symptoms: set[Symptom]) -> None:
    """Complaints in their words; what is denied or wished is none."""
    assert set(read(text).symptoms) == symptoms


@pytest.mark.parametrize(
    ("text", "wish"),
    [
        ("silky", "silky"),
        ("not silky", None),
        ("too silky", None),
        ("frozen", "frozen"),
        ("nearly frozen", "crisp"),
        ("between frozen and silky", None),
        ("misty morning", None),
        ("misty", "misty"),
        ("strands", "textured"),
    ],
)
def test_looks(text: str, wish: str | None) -> None:
    """The look that is wished, not what is complained of or denied."""
    assert read(text).look == wish


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ("towards me", {"flow": Flow.TOWARDS}),
        ("left to right", {"flow": Flow.ACROSS}),
        ("down", {"flow": Flow.DOWN}),
        ("portrait, flowing along the long side", {"portrait": True, "flow": Flow.DOWN}),
        ("landscape, along the long side", {"portrait": False, "flow": Flow.ACROSS}),
        ("landscape, along the short side", {"portrait": False, "flow": Flow.DOWN}),
        ("portrait", {"portrait": True}),
        ("portrait or landscape", {}),
        ("the whole fall", {"section": False}),
        ("section", {"section": True}),
        ("the lower part blinks", {"blink": Blink.PATCHES}),
        ("creek", {"stream": True}),
        ("waterfall", {"stream": False}),
        ("standing in the stream", {}),
        ("windy", {"wind": True}),
        ("calm", {"wind": False}),
        ("mixed group", {"group_mixed": True}),
        ("I'm alone", {"group_mixed": False}),
        ("sunset at 18:40", {"sunset": "18:40"}),
        ("18:40 sunset", {"sunset": "18:40"}),
        ("sunset 6:40 pm", {"sunset": "18:40"}),
        ("sunset 6 am", {"sunset": "06:00"}),
        ("sunset at 7", {}),
        ("sunset 25:00", {}),
        ("sunset 1840, 1/4 s", {"sunset": "18:40", "shutter_s": 0.25}),
    ],
)
def test_other_words(text: str, expected: dict[str, Any]) -> None:
    """Flow, format, extent, kind of water, wind, group, sunset."""
    assert told(text) == expected
