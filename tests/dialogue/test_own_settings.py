"""What a person set, wishes and sees stays the measure of what is answered."""

from __future__ import annotations

import pytest

from bot.dialogue.meaning.said import Said
from bot.dialogue.meaning.settings_asked import asked
from bot.dialogue.meaning.soft_strands import wished
from bot.dialogue.reading import read
from bot.dialogue.reading.foreign import glossed
from tests.dialogue.player import Player
from tests.dialogue.walked import keys_of, known, walked


def _said(language: str, text: str) -> Said:
    return Said(glossed(text, language), text, language)


# the look


@pytest.mark.parametrize(
    ("language", "text", "look"),
    [
        ("en", "i want the water soft but you should still see strands", "silky"),
        ("en", "silky with some texture left", "silky"),
        ("en", "strands yet soft", "silky"),
        ("de", "will das wasser schön weich aber man soll noch strähnen sehn", "silky"),
        ("de", "weich soll es sein, fäden sollen aber noch sichtbar bleiben", "silky"),
        ("es", "suave pero con hilos", "silky"),
        ("en", "textured, not silk", "textured"),
        ("en", "silky or with texture?", None),
        ("en", "too soft and with no strands", None),
        ("en", "it looks soft with lines in it", None),
        ("en", "f/11 1/4 s soft but with strands", None),
        ("de", "zu weich, keine strähnen mehr", None),
        ("en", "milky please", "misty"),
    ],
)
def test_soft_water_with_strands_is_silky(language: str, text: str, look: str | None) -> None:
    """The band in which water is soft and keeps its direction; a frame is only described."""
    said = _said(language, text)
    assert wished(said, read(said.english)).look == look


def test_the_wished_look_stays_the_aim_when_patches_blink() -> None:
    """One step darker, still soft; nothing jumps to crisp water."""
    told = "1.5 m tall, 4 m away, rock at 1 m, aps-c, 18-55, tripod"
    player = walked(told=told)
    player.say("soft but strands, at 24 mm")
    player.say("f/11 1/4 iso 100")
    (said,) = player.say("a fist sized white patch, without texture")
    assert "f/11, ISO 100, 1/6 s" in said.body
    assert "silky" in said.body


def test_who_is_happy_with_a_frame_that_holds_goes_on() -> None:
    """Another look that was wished before is no reason to undo it."""
    player = walked("i want it silky", "f/11 1/13 s iso 100")
    keys = keys_of(player, "f/11 1/8 iso 100, nothing blinks, strands are there, i love it")
    assert "frame.for_look" not in keys
    assert "ask.leaves" in keys


@pytest.mark.parametrize(
    "text",
    ["strähnen sieht man. freu mich grad wie bolle", "bin ganz happy, fäden sind da"],
)
def test_joy_is_heard_in_german(text: str) -> None:
    """A frame that somebody is glad of is liked."""
    player = walked("i want it silky", "deutsch")
    player.say(f"1/8 gemacht, f11, iso 100. blinkt nix mehr, {text}")
    walk = known(player).conversation.walk
    assert walk is not None
    assert "liked" in walk.stays.values()


# another time


@pytest.mark.parametrize(
    ("text", "key", "shown"),
    [
        ("1/13 is too hard, isn't 1/6 enough?", "time_enough.yes", "f/11, ISO 100, 1/6 s"),
        ("would 1/4 do?", "time_enough.no", "1/13 s"),
        ("could i get away with a quarter", "time_enough.no", "1/4 s"),
    ],
)
def test_another_time_is_judged_by_what_blinked(text: str, key: str, shown: str) -> None:
    """Of the frame at 1/4 s patches blinked: 1/6 s is the step that a warning asks for."""
    player = walked("f/11 1/4 s iso 100", "3", "f/11 1/13")
    (said,) = player.say(text)
    assert said.keys[0] == key
    assert shown in said.body


@pytest.mark.parametrize(
    ("language", "text"),
    [("deutsch", "reicht nich ein sechstel?"), ("español", "no basta con 1/6?")],
)
def test_another_time_is_judged_in_other_languages(language: str, text: str) -> None:
    """The clause that asks is found by its own words."""
    player = walked("f/11 1/4 s iso 100", "3", "f/11 1/13", language)
    assert keys_of(player, text)[:2] == ("time_enough.yes", "time_enough.under")


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ("cotton wool at 1/2, could i get away with 1/4?", "1/4 s: 1 stop darker"),
        ("can i go to 1 s?", "1 s: 1 stop brighter"),
    ],
)
def test_before_anything_blinked_the_difference_is_said(text: str, said: str) -> None:
    """Nothing tells whether the white holds it."""
    assert said in walked("f/11 1/2 s iso 100").say(text)[0].body


@pytest.mark.parametrize("text", ["can i use 1/125 for the leaves?", "can i use f/8?"])
def test_a_leaf_frame_and_an_f_number_are_no_other_time(text: str) -> None:
    """They have answers of their own."""
    keys = keys_of(walked("f/11 1/2 s iso 100"), text)
    assert not any(key.startswith("time_enough.") for key in keys)


def test_a_phone_sets_no_time() -> None:
    """What it does is told by its own advice."""
    player = walked(told="12 m tall, 18 m away, rock at 1.5 m, phone, overcast")
    keys = keys_of(player, "isn't 1/6 enough?")
    assert not any(key.startswith("time_enough.") for key in keys)


def test_a_longer_time_may_be_brighter_where_it_does_not_blink() -> None:
    """Water that is too hard gets it by the time alone, up to the step under what blinked."""
    player = walked("f/11 1/4 s iso 100", "3", "f/11 1/13", "2")
    (said,) = player.say("it looks too hard at 1/13, frozen")
    assert "Next: f/11, ISO 100, 1/6 s" in said.body


# settings of their own


def test_answers_speak_of_the_f_number_that_is_set() -> None:
    """Never of the plan made before it."""
    player = walked("f/11 1/8 s iso 100", "2")
    (said,) = player.say("the boulder in front is blurry")
    assert "f/11" in said.body
    assert "symptom.else_shake" in said.keys
    (said,) = player.say("do i need an nd? it's overcast")
    assert "1/8 s at f/11" in said.body


def test_an_f_number_of_their_own_stays_in_another_light() -> None:
    """The time moves with the light."""
    player = walked("f/11 1/8 s iso 100", "2")
    (said,) = player.say("open gorge")
    assert said.body.startswith("f/11, ISO 100")


def test_one_that_does_not_hold_the_depth_is_let_go() -> None:
    """A wide one was for another picture."""
    player = walked("f/4 1/60 s iso 100", "2")
    (said,) = player.say("open shade")
    assert not said.body.startswith("f/4")


def test_a_new_lens_has_its_own_f_number() -> None:
    """What was set on the other one says nothing here."""
    player = walked("f/16 1/8 s iso 100", "2", "1")
    player.say("2")
    player.say("50 mm, nothing near")
    player.say("2")
    walk = known(player).conversation.walk
    assert walk is not None
    assert "own_f_number" not in walk.checks


@pytest.mark.parametrize(
    ("told", "more", "key"),
    [
        (
            "12 m tall, 18 m away, rock at 1.5 m, full frame 24-70, tripod",
            (),
            "asked.f_number_blur",
        ),
        (
            "12 m tall, 18 m away, rock at 1.5 m, full frame 24-70, tripod",
            ("f/4 1/60 s iso 100",),
            "asked.f_number_open",
        ),
        (
            "12 m tall, 18 m away, rock at 0.4 m, full frame, 35 mm, tripod",
            (),
            "asked.f_number_stack",
        ),
        (
            "12 m tall, 18 m away, rock at 1.5 m, full frame 24-70, tripod",
            ("f/8 1/15 s iso 100",),
            "asked.f_number",
        ),
    ],
)
def test_why_this_f_number(told: str, more: tuple[str, ...], key: str) -> None:
    """Depth, least blur, or neither in one frame: the sentence fits its own numbers."""
    assert key in keys_of(walked(*more, told=told), "why this f-number?")


# filters and frames that held


def test_a_polariser_that_was_put_on_stays_on() -> None:
    """In less light too, and on the next lens; where light is short it comes off."""
    player = walked("polariser on, open gorge", "f/8 1/4 s iso 200", "2", "1")
    (said,) = player.say("2, 50 mm on now, nothing near, what time")
    assert "polariser off" not in said.body
    player = walked("polariser on, overcast")
    (said,) = player.say("light canopy now")
    assert "polariser turned" in said.body
    (said,) = player.say("dense canopy now")
    assert "polariser off" in said.body


def test_an_f_number_with_a_light_asks_for_the_time() -> None:
    """Nothing was taken yet: the settings follow from what is told."""
    (said,) = walked().say("f11 then. polariser's on, eaten about 1.5. open gorge, no sun. time?")
    assert said.body.startswith("f/11")
    assert "polariser turned" in said.body
    assert "unread_rest" not in said.keys


@pytest.mark.parametrize(
    "text",
    [
        "the wide frame was fine at f/11, 1/15, iso 100, light's the same",
        "first one held at f/11 1/15 iso 100",
    ],
)
def test_a_frame_that_held_is_the_measure(text: str) -> None:
    """Brightness follows from it, whatever light was assumed."""
    player = walked("full sun")
    (said,) = player.say(text)
    assert said.keys[0] == "base.settings"
    walk = known(player).conversation.walk
    assert walk is not None
    assert walk.light_is_measured


@pytest.mark.parametrize(
    "text",
    [
        "was the wide frame fine at f/11, 1/15, iso 100?",
        "the wide frame was not fine at f/11, 1/15, iso 100",
        "the wide frame was fine",
    ],
)
def test_others_are_no_measure(text: str) -> None:
    """Asked, denied, or without numbers."""
    player = walked("full sun")
    player.say(text)
    walk = known(player).conversation.walk
    assert walk is not None
    assert walk.clean_stops is None


def test_a_measure_is_kept_for_the_next_lens() -> None:
    """Before its settings are known nothing is given."""
    player = walked("f/11 1/8 s iso 100")
    player.say("i am 25 m away now")
    keys = keys_of(player, "the last frame was good at f/11 1/15 iso 100")
    assert "base.settings" not in keys


# asked outright


@pytest.mark.parametrize(
    ("language", "text"),
    [
        ("en", "what do i set"),
        ("en", "just give me a shutter number please, overcast, wooded gorge"),
        ("en", "can we do the settings, its overcast"),
        ("en", "time?"),
        ("en", "same look. what time"),
        ("de", "was stell ich ein??"),
        ("de", "gib mir einfach ne zeit"),
        ("de", "welche zeit dann?"),
        ("es", "que pongo?"),
        ("es", "dame los ajustes"),
    ],
)
def test_settings_are_asked_for(language: str, text: str) -> None:
    """In many words."""
    assert asked(_said(language, text))


@pytest.mark.parametrize(
    "text",
    ["what time is it?", "how much time do we have", "set up the tripod", "what's the time?"],
)
def test_the_hour_is_another_question(text: str) -> None:
    """And setting up is no question."""
    assert not asked(_said("en", text))


def test_who_asks_for_settings_gets_them_at_any_step() -> None:
    """With what is assumed, and the borders named."""
    player = Player()
    player.say("12 m tall, 18 m away, full frame 24-70, tripod")
    (said,) = player.say("what do i set?")
    assert said.keys[0].startswith("base.settings")
    assert "base.light_untold" in said.keys
    assert "ask.blink" in said.keys
    player = walked()
    player.say("i am 25 m away now")
    (said,) = player.say("rock at 2 m. what do i set?")
    assert "base.settings" in said.keys
    assert "where.given" not in said.keys


def test_settings_asked_for_in_a_told_light() -> None:
    """What was told, and the borders that were looked at, are not named again."""
    player = walked("overcast")
    player.say("i am 25 m away now")
    keys = keys_of(player, "what do i set?")
    assert keys[0] == "base.settings"
    assert not {"base.light_untold", "base.borders_first"} & set(keys)


def test_settings_asked_for_beside_a_reply() -> None:
    """The reply is taken, and the settings given at once."""
    player = Player()
    player.say("12 m tall, 18 m away, rock at 1.5 m, full frame 24-70, tripod")
    (said,) = player.say("leaves. what do i set?")
    assert said.keys[0] == "base.settings"
    assert "ask.top" not in said.keys


def test_nobody_gets_settings_before_a_walk_or_while_planning() -> None:
    """A plan has its own card, and without a walk nothing is known."""
    assert "base.settings" not in keys_of(Player(), "what do i set?")
    player = Player()
    player.say("plan")
    player.say("12 m tall fall, tomorrow, full frame 24-70")
    assert "base.settings" not in keys_of(player, "what do i set?")


def test_a_lens_of_the_kit_is_known_by_its_number() -> None:
    """It is the prime that was told; other numbers stay what they are."""
    told = "14 m tall, 22 m away, rock at 1.8 m, full frame, 20, 35 and 85 mm primes, tripod"
    player = walked("1", told=told)
    player.say("going for the 85")
    assert known(player).facts.focal_mm == 85
    player.say("about 60 % of it on the 35 % line")
    assert known(player).facts.focal_mm == 85
