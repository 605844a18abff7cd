"""The white of a frame told beside a question, a complaint or settings: nothing of it is lost."""

from __future__ import annotations

import pytest

from tests.dialogue.player import Player
from tests.dialogue.walked import keys_of, known, walked


def _blinked(*more: str) -> Player:
    """Somebody at a frame of which patches blinked, at 1/4 s, and what they said since."""
    return walked("f/11 1/4 s iso 100", "3", *more)


#: Without a sign between what it tells and what it asks.
_DICTATED = (
    "right waited got one in the shade at an eighth only dots now but the rocks look a bit yellowy"
    " green is that the filter"
)


@pytest.mark.parametrize(
    ("text", "answer"),
    [
        ("only dots, but why is the rock so blue?", "symptom.blue"),
        ("i said dots. why does f/22 make it soft?", "asked.why_not_f22"),
        ("just a couple tiny dots but it all looks soft, even the rocks", "symptom.shake"),
        (_DICTATED, "cause.nd_cast"),
    ],
)
def test_dots_beside_something_else(text: str, answer: str) -> None:
    """That is answered first, and the next question is the one behind dots."""
    keys = keys_of(_blinked(), text)
    assert keys[0] == answer
    assert "ask.leaves" in keys


@pytest.mark.parametrize(
    "text",
    [
        "1 moved it already. went to 1/8, still a patch but smaller. and drizzle on the lens now",
        "a patch, smaller. is the ferry cold?",
        "still a blob in the fall, and is the polariser supposed to be on?",
        "not only sky, the water blinks too. how much darker for the patch",
        "a fist sized patch, and why does f/22 make it soft?",
    ],
)
def test_a_patch_beside_something_else(text: str) -> None:
    """The next settings stand first, since the next frame is taken with them."""
    keys = keys_of(_blinked(), text)
    assert keys[0] == "highlights.darker"
    assert "ask.blink_again" in keys


def test_patches_that_are_told_again_are_no_new_frame() -> None:
    """Who says that it was said already gets the plan that stands, and no further step."""
    player = walked("f/11 1/4 s iso 100", "3")
    (said,) = player.say("a patch, smaller, i told you that")
    assert said.keys[0] == "highlights.heard"
    assert "1/6 s" in said.body


@pytest.mark.parametrize(
    ("language", "text"),
    [
        ("deutsch", "immer noch ein Fleck, und wieso ist der Fels so blau?"),
        ("español", "sigue una mancha, y por qué la roca sale tan azul?"),
    ],
)
def test_a_patch_beside_a_question_in_other_languages(language: str, text: str) -> None:
    """The sentence that asks is answered, too."""
    player = walked("f/11 1/4 s iso 100", "3", language)
    keys = keys_of(player, text)
    assert keys[0] == "highlights.darker"
    assert len(keys) > 2


def test_the_leaf_frame_is_as_bright_as_the_next_frame_of_the_water() -> None:
    """What clips is no frame to match the leaves to."""
    player = walked("f/11 1/4 s iso 100")
    (said,) = player.say("a fist sized patch. the leaves are smeared, too")
    assert said.keys[:2] == ("highlights.darker", "keep.leaf_frame")
    assert "1/6 s" in said.body
    assert "ISO 2000" in said.body  # 1/125 s against 1/6 s, not against 1/4 s


def test_a_complaint_of_brightness_is_reckoned_with_what_blinks() -> None:
    """One plan for both."""
    keys = keys_of(_blinked(), "half of it blinks and the meter says 2 stops over")
    assert keys[0] == "adjust.next"


def test_another_lens_leads_on_by_itself() -> None:
    """What blinked was of the frame before."""
    keys = keys_of(
        walked("f/11 1/4 s iso 100"),
        "only dots. i put 50 mm on now and went back to 30 m. should i focus on the rock?",
    )
    assert "highlights.dots" not in keys
    assert "ask.nearest" in keys


def test_settings_for_another_place_stand() -> None:
    """Where all is told for them, they are given, and what blinked before is no word on them."""
    keys = keys_of(
        walked("f/11 1/4 s iso 100"),
        "only dots. i went back to 30 m, rock at 2 m now. should i focus on the rock?",
    )
    assert "highlights.dots" not in keys
    assert "base.settings" in keys


@pytest.mark.parametrize(
    "text",
    [
        "got one only dots now but the red number in the corner is nine",
        "got one only dots now and my friend eats her sandwich",
        "got one only dots now, no that is the filter that makes it all green",
    ],
)
def test_a_clause_that_asks_nothing_is_left_alone(text: str) -> None:
    """Only what is answered stands in front of the white."""
    assert keys_of(_blinked(), text)[0] == "highlights.dots"


def test_an_interruption_that_asks_goes_first() -> None:
    """Which of two causes it is comes before the walk's own question."""
    keys = keys_of(walked(), "a patch blinks. took one and everything in it is wobbly, trees too")
    assert "ask.cause" in keys
    assert "highlights.darker" not in keys


def test_light_that_has_passed_gets_no_settings() -> None:
    """A size beside a question is of its own hour, too."""
    player = walked("f/11 1/4 s iso 100")
    (said,) = player.happen("old 100 a fist sized patch, and why is the rock so blue?")
    assert "highlights.darker" not in said.keys


def test_a_wish_for_a_look_begins_where_the_white_held() -> None:
    """Not at the frame that clips."""
    player = walked("f/11 1/4 s iso 100")
    player.say("a patch blinks. how do i get it more silky?")
    walk = known(player).conversation.walk
    assert walk is not None
    assert walk.clipped_stops is not None


def test_what_is_only_tried_moves_nothing() -> None:
    """A question of what would be is answered as one."""
    keys = keys_of(walked("f/11 1/4 s iso 100"), "what if a patch blinks at f/16")
    assert not any(key.startswith("highlights.") for key in keys)


def test_before_any_frame_it_is_a_fact_like_others() -> None:
    """Without settings they are asked for."""
    player = Player()
    keys = keys_of(player, "some blinkies in the main drop, plus a white sliver of sky. why?")
    assert "highlights.sky" not in keys


# sun and shade


def test_sun_on_a_part_is_waited_for() -> None:
    """A stop or two of darkness leaves the contrast; the next time there are settings."""
    player = walked("f/11 1/5 s iso 100")
    text = "the top half is blinking when the sun is on it, the bottom is fine"
    assert keys_of(player, text)[:2] == ("highlights.sun_on_part", "highlights.sun_is_more")
    assert keys_of(player, text)[0] == "highlights.darker"


def test_the_frame_of_the_shade_holds() -> None:
    """Who asks whether to wait hears that the shade does it, and the walk goes on."""
    player = walked("f/11 1/8 s iso 100")
    keys = keys_of(
        player,
        "still blinking only when the sun comes out though when the cloud goes over its just a few"
        " dots do i wait or what",
    )
    assert "highlights.shade_holds" in keys
    assert "ask.leaves" in keys


def test_a_part_in_told_sun_is_of_the_sun() -> None:
    """What was told of the light counts with what blinks."""
    player = walked("full sun", "f/11 1/200 s iso 100")
    keys = keys_of(player, "the left side is blinking, the rest is ok")
    assert keys[0] == "highlights.sun_on_part"


# questions that were put often enough


def test_a_question_put_twice_is_left_out_of_the_third_answer() -> None:
    """And it stays open: the number is still an answer."""
    player = walked()
    assert "ask.blink" in keys_of(player, "why not f/22?")
    assert keys_of(player, "can i shoot raw?") == ("asked.raw",)
    assert keys_of(player, "what about white balance?") == ("asked.white_balance",)
    assert keys_of(player, "2")[0] == "highlights.dots"


def test_where_nothing_else_is_said_it_is_named() -> None:
    """A message that was not understood needs a way on."""
    player = walked("why not f/22?", "can i shoot raw?")
    assert keys_of(player, "twig") == ("not_understood", "still_open")


def test_the_same_frame_is_not_asked_about_again() -> None:
    """Who repeats the settings of a frame that was judged has taken no new one."""
    player = walked("f/11 1/8 s iso 100", "2")
    assert "ask.blink" not in keys_of(player, "im at f eleven, iso 100 and an eighth")
