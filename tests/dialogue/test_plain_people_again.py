"""What a second round of fresh people typed: kit, edges, complaints, leave that is let be."""

from __future__ import annotations

import pytest

from bot.dialogue.danger import read_danger
from bot.dialogue.danger.given_up import gives_up
from bot.dialogue.facts import Blink, Symptom
from bot.dialogue.meaning.review_words import conditions_of
from bot.dialogue.reading import read
from bot.dialogue.reading.asked_behind import tried_in
from bot.dialogue.reading.edges import edges_told
from bot.dialogue.steps.asked.questions_asked import topic_asked
from tests.dialogue.player import Player
from tests.dialogue.walked import keys_of, known, walked

# kit and lengths


@pytest.mark.parametrize(
    ("text", "ends"),
    [
        ("1 inch compact, zoom 25-400", (9.2, 146.7)),
        ("1 inch sensor, 10-30 lens", (10, 30)),
        ("1 inch body, 30-110", (30, 110)),
        ("full frame, 24-200", (24, 200)),
        ("crop 18 55", (18, 55)),
        ("crop 18 56 m", None),
    ],
)
def test_zooms_as_their_glass_is(text: str, ends: tuple[float, float] | None) -> None:
    """A compact's zoom is printed as full frame; two ends may stand without a dash."""
    lenses = read(text).lenses
    assert len(lenses) == (ends is not None)
    if ends is not None:
        assert (lenses[0].shortest_mm, lenses[0].longest_mm) == pytest.approx(ends, rel=0.02)


def test_a_focal_length_for_a_detail() -> None:
    """A bare number that a detail is taken with."""
    assert read("now a close-up with the 90").focal_mm == 90


def test_a_thing_so_far_from_my_feet_is_near() -> None:
    """What was named just before is what is so far away."""
    told = read("There is a log in the foreground, perhaps five feet from my boots.")
    assert told.nearest_m == pytest.approx(1.524)
    assert told.distance_m is None


def test_what_somebody_meant_to_say() -> None:
    """A correction of the number before, over two messages."""
    player = Player()
    player.say("it is 20 ft tall and I'm 30 ft away")
    player.say("sorry, I meant to write 50 feet")
    assert known(player).facts.distance_m == pytest.approx(15.24)


# light, edges, complaints


@pytest.mark.parametrize(
    ("text", "light"),
    [
        ("the sun is behind big clouds", "bright cloud"),
        ("sun behind thin clouds", "hazy sun"),
        ("we are in Hazelwick", None),
        ("hazy today", "hazy sun"),
    ],
)
def test_sun_and_clouds(text: str, light: str | None) -> None:
    """A cloud takes the sun away, haze does not; names are no haze."""
    assert read(text).light == light


@pytest.mark.parametrize(
    ("text", "told"),
    [
        ("bushes on top", {"top": "covered"}),
        ("top: a dark cliff", {"top": "covered"}),
        ("ferns cover the top", {"top": "covered"}),
        ("tilted down, sky gone", {"top": "covered"}),
        ("nothing spoils the corners", {"sides": "clean"}),
        ("white stone lower right", {"sides": "bright"}),
        ("a root bottom left", {"sides": "twig"}),
    ],
)
def test_edges_in_few_words(text: str, told: dict[str, str]) -> None:
    """Without verbs and prepositions, too."""
    assert edges_told(text) == told


@pytest.mark.parametrize(
    ("text", "symptom"),
    [
        ("the stones came out a bit blurry", Symptom.SOFT_ALL),
        ("the water isn't silky at all", Symptom.TOO_FROZEN),
    ],
)
def test_complaints_in_plain_words(text: str, symptom: Symptom) -> None:
    """What should be sharp is soft; what should flow does not."""
    assert read(text).symptoms == (symptom,)


def test_specks_that_flash_on_something() -> None:
    """A place behind the word is no flash that is switched on."""
    assert read("some specks flash on the wet rock").blink is Blink.DOTS


def test_wet_hands_are_no_danger() -> None:
    """Who asks for short answers is not cold."""
    assert read_danger("fingers wet, short answers please") is None


# what is asked


@pytest.mark.parametrize(
    ("text", "topic"),
    [
        ("why f/9 and not f/5.6", "f_number"),
        ("is f/10 alright on this sensor?", "f_number"),
        ("do you trust the histogram?", "histogram_trust"),
        ("should I wash the boots", "dry_gear"),
        ("can the droplets be retouched", None),
        ("how do I remove the water spots", "save_drops"),
        ("how do i take a long exposure", "silky_time"),
        ("what does the polariser do for me", "term.polariser"),
    ],
)
def test_questions_of_the_second_round(text: str, topic: str | None) -> None:
    """Each has its own answer."""
    assert (topic_asked(text) == topic) or topic is None


def test_a_deck_that_shakes() -> None:
    """Other people's steps are waited for."""
    assert keys_of(walked(), "the platform shakes with every step")[0] == "asked.wobbly"


def test_a_filter_that_would_be_on() -> None:
    """What time it makes is reckoned, and nothing is set."""
    assert tried_in("with the 6 stop on, how long?") == "I put the 6 stop on"
    player = walked(told="12 m tall, 18 m away, rock at 1.5 m, full frame 24-70, 6 stop nd")
    assert keys_of(player, "6 stop on, what time do I get?")[0] == "asked.nd_time"


def test_settings_with_a_question_mark() -> None:
    """Three settings and a "right?" are judged, not taken for a question of one of them."""
    player = walked("overcast")
    assert keys_of(player, "f8 1/8 100, right?")[0].startswith("verdict")


def test_where_to_focus_with_nothing_near() -> None:
    """The distance that was given with the settings."""
    player = Player()
    for line in ("9 m tall, 14 m away, nothing close in front", "full frame 24-70", "1", "1"):
        player.say(line)
    assert keys_of(player, "where do I focus?")[0] == "asked.focus"


def test_a_rail_that_could_be_used() -> None:
    """What would hold the camera is told, not asked."""
    player = Player()
    player.say("9 m tall, 14 m away, rock at 2 m")
    player.say("no tripod, I could use the railing")
    assert known(player).facts.hand_held is False


def test_nothing_near_in_two_words() -> None:
    """Asked or not, no rock is nothing near."""
    player = Player()
    for line in ("9 m tall, 14 m away", "full frame 24-70"):
        player.say(line)
    assert "noted" in keys_of(player, "no rocks") or known(player).conversation.walk is not None


# leave that is let be


@pytest.mark.parametrize(
    ("text", "given_up"),
    [
        ("never mind, I'll stay on the path", True),
        ("ok forget it", True),
        ("just wondering", True),
        ("we won't go up then", True),
        ("staying at the lip", False),
        ("never mind, she slipped", False),
        ("no", False),
    ],
)
def test_who_lets_it_be(text: str, *, given_up: bool) -> None:
    """A few known words and nothing else."""
    assert gives_up(text) is given_up


def test_leave_that_was_only_asked_is_let_be() -> None:
    """Who only asked, and lets it be, goes on; who was told to be there does not."""
    asked = walked("can I go behind the fall for a picture?")
    assert keys_of(asked, "nvm, staying here")[0] == "danger.nobody_there"
    there = walked("I'm standing on the lip")
    assert "danger.nobody_there" not in keys_of(there, "nvm, staying here")


# home


def test_soft_in_front_alone_is_depth() -> None:
    """Not a camera that moved, said or asked; and the log takes the water's level along."""
    player = Player()
    for line in ("I'm home", "1/8 and 1/2 s, f/5.6, ISO 200"):
        player.say(line)
    assert keys_of(player, "in the 1/8 the rock in front is soft")[0] == "home.depth_plain"
    assert "home.depth_plain" in keys_of(player, "why is the rock soft in the 1/8")
    (said,) = player.say("log it, gauge 0.8 m, rising")
    assert "gauge 0.8 m" in said.body
    assert conditions_of("after two days of rain, low water. bye") == (
        "after two days of rain, low water"
    )


def test_filters_that_are_denied_beside_a_question_are_not_owned() -> None:
    """The list is parted from its "don't" by the question behind it."""
    player = walked("open shade")
    player.say(
        "I dont own any of those filters, polarizer or the ND thing. can I still go or do i need "
        "to buy one first?"
    )
    assert known(player).person.kit.has_polariser is False
