"""The evening before, as people tell it: the way, who goes, the hours in their own form."""

from __future__ import annotations

import pytest

from bot.dialogue.reading import read
from bot.dialogue.reading.foreign import glossed
from bot.dialogue.reading.visit import read_visit
from bot.dialogue.texts import TEXTS
from bot.dialogue.texts.languages import speaking
from tests.dialogue.player import Player

#: The walk of most talks here: 2.2 mi are 3.54 km, 650 ft are 198 m: 42.5 + 19.8 = 62.3 min by
#: the rule, × 1.5 = 93.4, up to 94 min; 18:10 − 60 min − 94 min = 15:36.
TOMORROW = (
    "hi, i'm driving up to Thornwick Falls tomorrow for the first time, just me. sunset is 6:10 pm "
    "and the trail is 2.2 miles in with about 650 ft of climbing. when do i have to turn around?"
)


def body(player: Player, text: str) -> str:
    """What is answered to one more line."""
    return "\n".join(message.body for message in player.say(text))


@pytest.mark.parametrize(
    ("language", "text", "km"),
    [
        ("en", "I'm driving up to the lake. the trail is 2.2 miles in", 3.54),
        ("en", "it's a 40 mile drive, then 2 miles on foot", 3.22),
        ("en", "it's a 2 mile hike each way", 3.22),
        ("en", "after a two hour drive it's 5 km each way", 5.0),
        ("en", "the fall is 3 miles in", 4.83),
        ("en", "the fall sits 3 miles up the trail", 4.83),
        ("en", "it's 1.5 miles up to the falls", 2.41),
        ("de", "der Weg ist 4 km hinein, 200 m Anstieg", 4.0),
        ("de", "nach 40 km Fahrt sind es 3 km zu Fuß", 3.0),
        ("es", "el sendero son 3 km de ida y 200 m de subida", 3.0),
        ("es", "son 2,5 km de subida", 2.5),
        # a drive, and another fall's way, are none
        ("en", "I drive 40 miles to the trailhead", None),
        ("en", "it's 60 km by car", None),
        ("en", "another fall is 2 km up the trail", None),
    ],
)
def test_the_way_in_as_people_tell_it(language: str, text: str, km: float | None) -> None:
    """On foot to the fall, whatever was driven before; kilometres "up" are no climb."""
    told = read(glossed(text, language))
    assert told.walk_km == (None if km is None else pytest.approx(km, abs=0.01))
    assert told.climb_m in {None, 200.0}
    assert told.fall_height_m is None


def test_heights_in_kilometres() -> None:
    """Where words of a height stand beside them."""
    assert read("a 1 km tall fall").fall_height_m == 1000
    assert read("1.2 km of climbing").climb_m == 1200


@pytest.mark.parametrize(
    ("language", "text", "people"),
    [
        ("en", "for the first time, just me. it's 3 miles in", 1),
        ("en", "just me, like i said. what hour should i leave?", 1),
        ("en", "everybodys safe, its only me", 1),
        ("en", "3 km in, solo", 1),
        ("de", "diesmal nur ich, 3 km Weg", 1),
        ("es", "solo yo, 3 km de ida", 1),
        ("en", "just me, my wife and two kids", None),
        ("en", "it's just me and my dog", None),
        ("en", "is it just me or is it dark", None),
        ("en", "leave the fern alone", None),
    ],
)
def test_who_goes_alone(language: str, text: str, people: int | None) -> None:
    """Told in a breath of its own, with nobody named behind it."""
    assert read_visit(glossed(text, language)).people == people


def test_a_number_of_a_way_is_no_age() -> None:
    """Who has a mile and a half to walk is no child of one year."""
    assert read_visit("I have a mile and a half to walk back").slowest is None


def test_the_first_message_of_a_visit() -> None:
    """The way behind the drive counts, who goes alone is not asked again, hours are am and pm."""
    said = body(Player(), TOMORROW)
    assert "Turn back by 3:36 pm" in said
    assert "Back at the car by 5:10 pm" in said
    assert said.endswith("When do you start? Like ‘9:30 am’")


def test_what_is_asked_of_the_start() -> None:
    """The hour, or who walks along, alone where the other is told."""
    player = Player()
    player.say("tomorrow I go to Thornwick Spout, sunset 18:40, we start at 9:30")
    assert body(player, "4 km each way").endswith("Who walks along? Like ‘two of us, one slow’")
    player = Player()
    player.say("tomorrow I go to Thornwick Spout, sunset 18:40, it's just me")
    said = body(player, "4 km each way")
    assert said.endswith("When do you start? Like ‘9:30’")
    assert "Start 10:00, there 11:12" in body(player, "10:00")


def test_examples_in_the_hours_of_the_person() -> None:
    """A text's own times of day follow the person's form, in any language."""
    assert "sunset 18:40" in TEXTS["arrive.offer"]
    for language in ("en", "de", "es"):
        with speaking(language, halves=True):
            assert "6:40 pm" in TEXTS["arrive.offer"]
            assert "18:40" not in TEXTS["arrive.offer"]
