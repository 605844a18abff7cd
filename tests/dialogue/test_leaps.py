"""Who wishes to jump, dive or slide in gets a plain no, whatever is told beside it."""

from __future__ import annotations

import pytest

from bot.dialogue.danger import DangerKind, Level, read_danger
from bot.dialogue.danger.leaps import wishes_to_leap
from tests.dialogue.player import Player

WALK = ("start", "12 m tall, 18 m away, rock at 1.5 m, full frame, 16-35", "1")


def answered(text: str) -> list[str]:
    """What a walk at its edges says to a message, by the keys of its texts."""
    player = Player()
    for line in WALK:
        player.say(line)
    return [key for one in player.say(text) for key in one.keys]


@pytest.mark.parametrize(
    "text",
    [
        "corners r fine, its on 1x. also my mates wanna jump in from the top of it is that ok",
        "sides are clean. btw some lads are about to jump off the ledge",
        "1. the kids want to slide down the rock into the pool, ok?",
        "ecken sind sauber. meine kumpels wollen oben reinspringen, geht das?",
        "esquinas limpias. mi hijo se quiere tirar desde el puente",
        "can they jump off it or not tho, water looks deep ish",
        "darf man da vom felsen reinspringen?",
        "is a jump from the rock ok?",
    ],
)  # fmt: skip
def test_a_leap_gets_a_plain_no(text: str) -> None:
    """No settings, no picture in its place: the no, and whether anybody is out there."""
    assert answered(text) == ["danger.leap", "ask.out_there"]


@pytest.mark.parametrize(
    "text",
    [
        "can the tripod slide off the rock?",
        "the water is leaping off the ledge, how long an exposure",
        "they dont wanna jump off it any more",
        "my mate jumped off the top and is not coming up",
        "he wants to jump in after her, she is in the water",
        "can I jump to the next step",
        "kann ich zum nächsten schritt springen",
        "darf ich von 24 mm auf 70 springen",
        "puedo saltar al paso siguiente?",
        "quiero tirar desde la roca con 24 mm",
    ],
)  # fmt: skip
def test_what_is_no_wish_to_leap(text: str) -> None:
    """Things, water, steps of the walk; what was done, and who goes in after somebody."""
    assert not wishes_to_leap(text)


@pytest.mark.parametrize(
    "text",
    [
        "a trout keeps jumping in the pool, which shutter?",
        "a dipper is diving into the water, which shutter freezes it?",
        "can I catch the otter diving into the pool?",
        "there are two little ducks jumping off the ledge, what shutter",
        "the leaves are sliding down the slab, which shutter?",
        "light is jumping off the water, what now",
        "die Wasseramsel will gleich vom Stein springen, welche Zeit?",
        "las ranas van a saltar al agua, ¿qué velocidad?",
        "ok " * 60,
    ],
)
def test_animals_leap_by_nature(text: str) -> None:
    """So do leaves and light: no wish of anybody."""
    assert not wishes_to_leap(text)


@pytest.mark.parametrize(
    "text",
    [
        "my son and the ducks are jumping off the rock",
        "a duck and my son are diving into the pool",
        "the kids with the fish are diving into the pool",
        "Ben in this light wants to jump in the pool",
        "my son wants to jump in the pool like a fish",
        "the trout are nice, can we jump off the ledge?",
        "mein sohn will ins wasser springen, da sind fische",
        "quiero saltar al agua con los peces",
    ],
)
def test_people_beside_animals_leap_all_the_same(text: str) -> None:
    """A duck beside them takes nothing away."""
    assert wishes_to_leap(text)


def test_a_wish_is_no_fall() -> None:
    """Children who want to jump are not in the water yet; who fell in is, whatever others want."""
    danger = read_danger("die kinder wollen von der brücke ins becken springen")
    assert danger is not None
    assert danger.level is Level.STOP
    fell = read_danger("she fell in and can't swim! my mates want to jump off the ledge")
    assert fell is not None
    assert fell.kind is DangerKind.IN_WATER
