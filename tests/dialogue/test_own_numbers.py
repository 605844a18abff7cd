"""Questions about the bot's own numbers: the sum with its numbers, and what it rests on."""

from __future__ import annotations

import pytest

from bot.dialogue.compose import Part, Role
from bot.dialogue.own_sums import remembered
from bot.dialogue.walk_state import Note
from tests.dialogue.player import Player
from tests.dialogue.test_two_settings import in_the_gorge
from tests.dialogue.walked import keys_of, known, walked

_SUM = "7 m/s × 1/4 s ÷ 20.1 m = 8.7 %"


@pytest.mark.parametrize(
    ("language", "line", "told"),
    [
        ("en", "what lens and water speed you working that 8.7% from", (_SUM, "I have: at 27 mm")),
        ("en", "why 8.7, I get about 6", (_SUM, "I have: fall 10 m, from 15 m, at 27 mm")),
        ("en", "8.7 %? how come", (_SUM,)),
        ("en", "that 8.7 can't be right, how did you get it", (_SUM,)),
        ("en", "what's the 8.7 percent based on", (_SUM,)),
        ("en", "What fall, lens and distance did you assume for that quarter?", (_SUM,)),
        ("en", "what did you assume?", (_SUM, "I have")),
        ("en", "where do those numbers come from?", (_SUM,)),
        ("en", "why 1/4?", (_SUM,)),
        ("en", "how tall have you got this fall down as?", ("I have: fall 10 m",)),
        ("en", "how far away do you think i am?", ("I have: from 15 m",)),
        ("en", "which focal length are you using?", ("I have: at 27 mm",)),
        ("en", "what light are you assuming", ("wooded gorge: EV 8",)),
        ("en", "why f/8?", ("needs f/7.6 at least", "least at f/12.8")),
        ("en", "iso 100?", ("ISO 100, the lowest",)),
        ("en", "why 27? fall goes tiny", ("30 mm or shorter", "58 mm or shorter", "fills 50 %")),
        ("en", "where does the 2.7 m come from", ("= 2.73 m",)),
        ("de", "mit welcher Brennweite rechnest du die 8,7 %?", ("7 m/s × 1/4 s", "bei 27 mm")),
        ("de", "warum 8,7? ich komme auf 6", ("7 m/s × 1/4 s",)),
        ("de", "wie hoch hast du den Fall?", ("Ich habe: Fall 10 m",)),
        ("de", "wieso f/8?", ("mindestens f/7,6",)),
        ("de", "woher kommen die 2,7 m?", ("= 2,73 m",)),
        ("de", "welches Licht nimmst du an?", ("LW 8",)),
        ("es", "¿por qué 8,7? a mí me sale 6", ("7 m/s × 1/4 s",)),
        ("es", "¿qué altura tienes apuntada?", ("Tengo: cascada 10 m",)),
        ("es", "¿con qué focal calculas ese 8,7 %?", ("7 m/s × 1/4 s", "a 27 mm")),
        ("es", "¿de dónde salen los 2,7 m?", ("= 2,73 m",)),
    ],
)
def test_where_a_number_comes_from(language: str, line: str, told: tuple[str, ...]) -> None:
    """Its sum, and what that rests on, asked for first; the walk and its question stay."""
    player = in_the_gorge(language)
    walk = known(player).conversation.walk
    said = player.say(line)[0]
    assert all(piece in said.body for piece in told), said.body
    assert known(player).conversation.walk == walk
    assert "ask.blink" in said.keys


def test_before_any_scene_the_usual_one_is_named() -> None:
    """Its own 0.6 s is no time that was set, and no scene was told."""
    player = Player()
    player.say("what shutter speed makes the water silky?")
    said = player.say("What fall, lens and distance did you assume for that 0.6 s?")[0]
    assert "7 m/s (23 ft/s) × 0.6 s ÷ 22.5 m (73.8 ft) = 18.7 %" in said.body
    assert "Assumed: a fall of 10 m (33 ft), 15 m (49 ft) away, 24 mm and full frame." in said.body
    assert known(player).facts.shutter_s is None
    assert "why.nothing" in keys_of(Player(), "what did you base that on?")


def test_two_shares_that_do_not_agree() -> None:
    """Both sums are done again, and what changed between them is named."""
    player = in_the_gorge()
    player.say("12 m away now")
    player.say("f/8, 1/2 s, iso 100")
    body = player.say("why 19.5 % now? a minute ago a quarter was 8.7 %, that doesn't add up")[
        0
    ].body
    assert "7 m/s × 1/2 s ÷" in body
    assert "Before: 7 m/s × 1/4 s ÷ 20.1 m = 8.7 %." in body
    assert "The frame covers" in body
    body = player.say("why 8.7 %?")[0].body  # said before: with the sum of now behind it
    assert f"{_SUM}.\nNow: 7 m/s × 1/2 s" in body


def test_two_shares_at_another_speed() -> None:
    """What is shown of the fall makes another speed."""
    player = in_the_gorge()
    player.say("the water runs at 5 m/s")
    player.say("f/8, 1/2 s, iso 100")
    body = player.say("why 12.4 % when 1/4 s was 8.7 %?")[0].body
    assert "The water is reckoned at 5 m/s now, 7 m/s then." in body


def test_two_shares_of_one_frame() -> None:
    """Where the time alone differs the two sums say all; a share never said has none."""
    player = in_the_gorge()
    player.say("f/8, 1/2 s, iso 100")
    body = player.say("why 17.4 % and 8.7 %?")[0].body
    assert "Before: 7 m/s × 1/4 s ÷ 20.1 m = 8.7 %." in body
    assert "covers {" not in body
    body = player.say("what did you assume for 17.4 % and 3.3 %?")[0].body
    assert "7 m/s × 1/2 s ÷ 20.1 m = 17.4 %" in body
    assert "Before" not in body


def test_water_towards_the_camera_has_a_sum_of_its_own() -> None:
    """Its sine belongs to it, before and now."""
    player = walked(told="stream, 3 m away, leaf 3 m in 2 s, it flows towards me, 24 mm")
    player.say("1")
    player.say("f/8, 1/8 s, iso 100")
    share = player.say("why 1/8?")[0].body
    assert "sin" in share
    player.say("f/8, 1/4 s, iso 100")
    assert "sin" in player.say("why 1/8?")[0].body


_NO_NEAR = "12 m tall, 18 m away, nothing near, full frame 24-70, 52 mm"


@pytest.mark.parametrize(
    ("told", "line", "piece"),
    [
        ("phone, 12 m tall, 18 m away, rock at 2 m, overcast", "why f/1.8?", "f-number is fixed"),
        (_NO_NEAR, "why f/8?", "nothing near has to be sharp"),
        (_NO_NEAR, "why 52 mm?", "the whole fall takes 58 mm"),
        ("stream, 3 m away, rock at 1 m, 24 mm", "why 24 mm?", "24 to 70 mm as on full frame"),
    ],
)
def test_other_scenes(told: str, line: str, piece: str) -> None:
    """A phone's opening, nothing near, a stream, no light: each has its own reason."""
    body = walked(told=told).say(line)[0].body
    assert piece in body, body


def test_light_that_none_or_frames_told() -> None:
    """None is said to be none; what frames have shown counts more than words."""
    player = walked()
    assert "own.light_none" in keys_of(player, "what light are you assuming?")
    told = "why f/13? And what light are you assuming, I said wooded gorge"
    assert "own.light_none_yet" in keys_of(player, told)
    assert known(player).facts.light == "wooded gorge"
    player.say("f/8, 1/4 s, iso 100")
    player.say("nothing blinks")
    assert "own.light_frames" in keys_of(player, "what light are you assuming?")


@pytest.mark.parametrize(
    ("line", "key"),
    [
        ("what speed do you use for silky?", "asked.time"),
        ("what iso do you use?", "asked.iso"),
        ("why not 1/8?", "what_if.time"),
        ("why 1/4 and not 1 s", "asked.why_time"),
        ("why so long?", "asked.why_time"),
        ("why 400?", "unread"),
        ("I get 6 % more battery", "talk.other_told"),
        # 1.5 m is the rock's distance: by chance the same number
        ("I get 1.5 more of them on a card, are you sure it is full?", ""),
    ],
)
def test_what_is_of_no_own_number(line: str, key: str) -> None:
    """Advice that is asked for, a try, and numbers that were never said."""
    keys = keys_of(in_the_gorge(), line)
    assert not key or key in keys
    assert not {"why.share", "why.focus", "own.inputs"} & set(keys)


@pytest.mark.parametrize(
    "line",
    [
        "does your 2.7 m include the pool?",
        "and that 1/4 s, is it fine for people?",
        "would your 15 m be measured to the pool?",
    ],
)
def test_a_number_that_is_pointed_at_is_no_fact(line: str) -> None:
    """Neither is it called unread."""
    player = in_the_gorge()
    walk = known(player).conversation.walk
    keys = keys_of(player, line)
    assert not {"unread", "unread_rest", "noted", "told.settings"} & set(keys)
    assert known(player).conversation.walk == walk


def test_a_length_that_no_sum_holds() -> None:
    """Then what it may rest on is said."""
    player = in_the_gorge()
    player.say("trunks lean inwards")
    assert "why.stand_back" in keys_of(player, "where does the 14 m come from")
    assert "own.inputs" in keys_of(player, "why 1.5 m?")


def test_what_is_remembered_is_numbers() -> None:
    """Of parts and sums those with digits, each once, the newest last, and not for ever."""
    parts = [Part(Role.SETTINGS, "a", {"x": "7 m"}), Part(Role.QUESTION, "b", {"x": "1"})]
    sums = [Note(key="why.share", values={"x": "8 %"}), Note(key="why.depth", values={"x": "1"})]
    own = remembered((Note(key="a", values={"x": "7 m"}),), parts, sums)
    assert [note.key for note in own] == ["a", "why.share"]
    assert remembered((), [Part(Role.SETTINGS, "a", {"x": "no"})], []) == ()
    many = tuple(Note(key=f"n{n}", values={"x": "1"}) for n in range(40))
    assert len(remembered(many, parts, [])) == 32
