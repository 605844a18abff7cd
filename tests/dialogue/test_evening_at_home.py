"""The evening at home: how to choose among told times, white that may be lost, a line for the log.

Shares by hand: 12 m fall, sqrt(2 g h) / 2 = 7.67 m/s; 27 mm from 18 m upright covers 24 m; 1/16 s
is 2.0 %, 1/4 s 7.9 %, 1/2 s 15.8 %. A thumb is 2 cm: on 15 inches x 0.87 = 33 cm, 6 %; on an
unknown screen of 30 cm 7 %.
"""

from __future__ import annotations

import pytest

from bot.dialogue.meaning.at_home import is_home
from bot.dialogue.meaning.white_asked import White, asks_of_white, white_in
from tests.dialogue.player import Player
from tests.dialogue.walked import keys_of, known, walked


def body(player: Player, text: str) -> str:
    """What is answered to one more line."""
    return "\n".join(message.body for message in player.say(text))


# home


@pytest.mark.parametrize(
    ("text", "home"),
    [
        ("Home now, dry socks on. copied the card to the laptop and a backup drive", True),
        ("Home, socks off, feet up", True),
        ("I'm home, no more blinking talk!", True),
        ("Bin zu Hause. Die Karte liegt noch in der Kamera", True),
        ("I'm driving home now", False),
        ("when I'm home I will look", False),
        ("i left the tripod at home", False),
    ],
)
def test_who_is_home(text: str, *, home: bool) -> None:
    """Each sentence for itself: a backup drive is no way home."""
    assert is_home(text) is home


def test_home_closes_the_question_of_the_walk() -> None:
    """What the water does is asked no more."""
    player = walked()
    (message,) = player.say(
        "Home now, dry socks on, made it down by 5. copied the card to the laptop and a backup "
        "drive. have the same shot at 1/2, 1/4 and 1/15, how do I pick"
    )
    assert "blink" not in message.body
    assert known(player).conversation.question is None


# how to choose


def test_how_to_choose_by_the_walk_s_numbers() -> None:
    """The rule, the look of each time, and the one that is nearest to the look wanted."""
    said = body(walked("I'm home"), "I have 1/2, 1/4 and 1/15 s, how do I pick")
    assert said.startswith("On a large screen at equal brightness: shape first")
    assert "1/15 s and 1/4 s textured (2 %, 7.9 %); 1/2 s silky (15.8 %)" in said
    assert "Nearest to the look you want: 1/4 s." in said
    assert "Two copies" in said


@pytest.mark.parametrize(
    ("told", "copied"),
    [
        ("I copied the card to the laptop and a drive", True),
        ("i haven't copied the card yet", False),
        ("die Karte ist kopiert", True),
    ],
)
def test_copies_that_are_made(told: str, *, copied: bool) -> None:
    """Who has copied the card is not told to."""
    player = walked("I'm home", told, "1/2, 1/4 and 1/15 s")
    how = keys_of(player, "how should I decide?")
    assert ("home.copied" in how, "home.copies" in how) == (copied, not copied)
    assert ("home.copies" in keys_of(player, "which would you keep?")) is not copied


# white that may be lost


@pytest.mark.parametrize(
    ("text", "white"),
    [
        (
            "a white blob as wide as my thumb on a 15 inch screen, all three channels jammed",
            White(pytest.approx(2 / (15 * 2.54 * 0.87)), "all", dots=False),  # type: ignore[arg-type]
        ),
        ("a patch of 3% of the width, only in the blue channel", White(0.03, "one", dots=False)),
        ("just scattered dots", White(None, None, dots=True)),
        ("a patch 5 mm wide on the back of the camera", White(0.5 / 6.5, None, dots=False)),
        ("ein daumenbreiter Fleck, alle drei Kurven", White(2 / 30, "all", dots=False)),
        ("del ancho de un puño, en los tres canales", White(8 / 30, "all", dots=False)),
        ("a fist on the 8 inch screen", White(pytest.approx(0.45, abs=0.01), None, dots=False)),  # type: ignore[arg-type]
        ("some white", White(None, None, dots=False)),
    ],
)
def test_how_wide_it_is(text: str, white: White) -> None:
    """In percent, by a ruler, or by a thing held against the screen; in which graphs."""
    assert white_in(text) == white


@pytest.mark.parametrize(
    ("text", "asks"),
    [
        ("is the white in the drop gone or can I still use it", True),
        ("white spot in the drop, can I save it in the raw or is it toast", True),
        ("a white blob in it. keeper or toss", True),
        ("just dots in it. usable?", True),
        ("ein weißer Fleck, ist es hin?", True),
        ("una mancha blanca, ¿puedo salvarla?", True),
        ("is the white patch lost?", True),
        ("the white is gone in the last one", False),
        ("which would you keep?", False),
    ],
)
def test_who_asks_of_white(text: str, *, asks: bool) -> None:
    """Asked of its fate, and not only told."""
    assert asks_of_white(text) is asks


@pytest.mark.parametrize(
    ("told", "key"),
    [
        ("thumb wide white spot in the 1/4, all three graphs. can I save it?", "white.lost"),
        ("white patch, 3 % of the width, in the 1/4. usable?", "white.lost_if"),
        ("white patch, 0.8 % of the width, in the 1/4. usable?", "white.limit"),
        ("white patch, 0.3 % of the width, in the 1/4. usable?", "white.fine"),
        ("only dots in the 1/4. usable?", "white.fine"),
        ("white patch in the 1/4, only the red channel. usable?", "white.one"),
        ("is the white in the 1/4 gone?", "white.ask"),
    ],
)
def test_a_verdict_on_white(told: str, key: str) -> None:
    """By the trade: over 1 % in all channels lost, under 0.5 % fine; raw where it may help."""
    keys = keys_of(walked("I'm home", "1/2, 1/4 and 1/15 s"), told)
    assert keys[0] == key
    assert ("white.raw_other" in keys) is (key in {"white.lost", "white.lost_if", "white.limit"})


def test_the_darker_frame_instead() -> None:
    """What is lost in one frame is lost in the brighter ones; the next darker one is named."""
    player = walked("I'm home", "1/2, 1/4 and 1/15 s")
    said = body(player, "thumb wide white blob in the 1/4, all three channels. can I save it?")
    assert said.startswith("1/4 s: a patch of 7 % of the width, all three graphs")
    assert "take 1/15 s, 2 stops darker" in said
    assert "Keep 1/15 s" in body(player, "which would you keep?")


def test_white_of_frames_told_in_the_same_breath() -> None:
    """A frame that is told with its white, the walk's own, one spoken of, or none at all."""
    player = walked("I'm home")
    told = (
        "at 1/8 f10 iso 100 there is a white blob, thumb wide, all three channels. keeper or toss"
    )
    assert body(player, told).startswith("1/8 s: a patch of 7 %")
    assert "next time 2/3 stop less light" in body(walked("I'm home"), told)
    own = body(walked("I'm home"), "is the white in the drop gone or can I still use it")
    assert own.startswith("1/8 s: dots are fine")
    several = walked("I'm home", "1/2 and 1/4 s")
    assert body(several, "is the white gone?").startswith("That white: dots are fine")
    assert body(several, "white in the 1/4, only blue channel. usable?").startswith("1/4 s: one")
    assert body(several, "all three channels, fist sized. toast?").startswith("1/4 s: a patch")
    fresh = Player()
    fresh.say("I'm home")
    assert "That white: a patch" in body(fresh, "white patch, fist sized, all channels. toast?")


def test_a_frame_that_is_only_spoken_of() -> None:
    """No file has come with such words."""
    text = "here's the 1/8 one, is the white in the drop gone or can I still use it"
    assert "white.no_file" in keys_of(walked("I'm home"), text)
    shared = walked("I'm home")
    shared.frame("clipped")
    assert "white.no_file" not in keys_of(shared, text)


# the line for the log


def test_the_line_for_the_notebook() -> None:
    """Place, day, hours, where one stood, the settings, the light; what to change where asked."""
    player = Player()
    for line in (
        "i'm driving to Thornwick Falls tomorrow, just me",
        "Morning. made it to the falls, 11:50 so a bit behind. 12 m tall, 18 m away",
        "rock at 1.5 m, full frame 24-70, tripod, overcast",
        "f/10, 1/8 s, iso 100, drizzle",
        "its 2:20, when do I need to be walking again?",
        "Home now, dry",
        "1/8 and 1/15 s",
        "thumb wide white blob in the 1/8, all three channels. toast?",
    ):
        player.say(line)
    log, then, *_ = body(
        player,
        "write me a line for my notebook about today so I know what to do different next trip",
    ).split("\n")
    assert log.startswith(
        "Log: Thornwick Falls, 18 June 2027, 11:50 am to 2:20 pm, fall 12 m, from 18 m"
    )
    assert "f/10, ISO 100, 1/15 s" in log
    assert log.endswith("overcast, rain.")
    assert then.startswith("Next time: a third to two thirds less light")


def test_a_line_of_the_walk_s_own_frame() -> None:
    """Without told frames it is the kept one; without any, frames are asked for."""
    player = walked("its 10:15 now", "I'm home")
    assert "Log: 18 June 2027, 10:15, fall 12 m" in body(player, "a line for my log please")
    fresh = Player()
    fresh.say("I'm home")
    assert keys_of(fresh, "write a line for my notebook") == ("home.which_frames",)


@pytest.mark.parametrize(
    ("language", "home", "asked", "first"),
    [
        ("deutsch", "Bin zu Hause", "schreib mir eine Zeile für mein Notizbuch", "Notiz: "),
        ("español", "Ya estoy en casa", "una nota para mi cuaderno sobre hoy", "Nota: "),
    ],
)
def test_a_line_in_other_languages(language: str, home: str, asked: str, first: str) -> None:
    """The same line."""
    player = Player()
    for line in (language, home, "1/8 s, f/11, ISO 100"):
        player.say(line)
    assert body(player, asked).startswith(first)


def test_hours_told_at_the_water() -> None:
    """The first one told is the arrival, the last one the end; at home none counts."""
    player = walked("it's 9:40 now", "its 10:15", "its 2:20 now")
    assert (known(player).trip.there_at, known(player).trip.seen_at) == ("09:40", "14:20")
    player.say("I'm home, its 7:30 pm")
    assert known(player).trip.seen_at == "14:20"
