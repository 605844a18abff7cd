"""The one lens that there is, the one that is on now, and what stands near it."""

from __future__ import annotations

import pytest

from bot.dialogue.context import Context
from bot.dialogue.meaning.lens_put_on import put_on
from bot.dialogue.reading import read
from bot.dialogue.reading.foreign import glossed
from bot.dialogue.walk_state import Walk
from tests.dialogue.player import Player


def _walk(context: Context | None) -> Walk:
    assert context is not None
    walk = context.conversation.walk
    assert walk is not None
    return walk


@pytest.mark.parametrize(
    ("text", "language", "mm"),
    [
        ("only brought the 35 on my full frame", "en", 35),
        ("my only lens is the 35", "en", 35),
        ("all i have is a 50", "en", 50),
        ("just have the 85 with me", "en", 85),
        ("I've only got 35 mm, no zoom!!", "en", 35),
        ("hab nur das 35er dabei", "de", 35),
        ("solo traje el 35", "es", 35),
        ("only got 24 shots left", "en", None),
        ("I only have 35 minutes", "en", None),
        ("only got 50 m of rope", "en", None),
        ("only the 20 people of the group", "en", None),
    ],
)
def test_the_only_lens(text: str, language: str, mm: float | None) -> None:
    """A number behind "only" is a lens where nothing is counted by it."""
    lenses = read(glossed(text, language)).lenses
    assert [lens.shortest_mm for lens in lenses] == ([] if mm is None else [mm])


def test_one_prime_is_all_that_is_proposed() -> None:
    """With one lens no other focal length is named, whatever would hold the whole fall."""
    player = Player()
    lines = ("start", "only brought the 35 on my full frame. no tripod", "18 m high, 25 m away")
    said = [one.body for line in lines for one in player.say(line)]
    said += [one.body for one in player.say("rock at 5 m")]
    assert not any("49 mm" in body for body in said)
    assert any("35 mm" in body for body in said)


@pytest.mark.parametrize(
    ("text", "language", "zoom"),
    [
        ("switching to 70-200, just the middle ledge", "en", "70-200"),
        ("ledge done. back on 10-20, low by the pool", "en", "10-20"),
        ("no, I'm on the 70-200 at 120 now", "en", "70-200"),
        ("the 16-35 is on now", "en", "16-35"),
        ("wechsle auf 70-200", "de", "70-200"),
        ("wieder das 10-20 drauf", "de", "10-20"),
        ("cambio al 70-200", "es", "70-200"),
        ("not switching to 70-200", "en", None),
        ("should i switch to 70-200?", "en", None),
        ("i have a 10-20 and a 70-200", "en", None),
    ],
)
def test_the_zoom_that_is_put_on(text: str, language: str, zoom: str | None) -> None:
    """A lens that is named as now on."""
    assert put_on(glossed(text, language)) == zoom


def _with_two_zooms() -> Player:
    player = Player()
    kit = "aps-c, 10-20 and 70-200, tripod, polariser"
    for line in ("start", f"9 m tall, 10 m away, rock at 1.2 m. {kit}", "1", "1", "open shade"):
        player.say(line)
    return player


def test_a_tele_for_a_part_and_the_wide_one_again() -> None:
    """The part of the fall has no near rock; the wide lens shows the whole fall again."""
    player = _with_two_zooms()
    player.say("switching to 70-200, just the middle ledge, about 120mm. shutter for strands")
    walk = _walk(player.context)
    assert (walk.facts.focal_mm, walk.facts.section, walk.facts.nearest_m) == (120.0, True, None)
    player.say("ledge done. back on 10-20, low by the pool, wet stone 60cm in front. f and focus")
    walk = _walk(player.context)
    assert walk.facts.nearest_m == 0.6
    assert not walk.facts.section
    assert walk.given is not None
    assert (walk.given.focal_mm or 99.0) <= 20.0


def test_a_rock_that_is_out_of_the_frame() -> None:
    """Told beside facts, it takes the nearest back."""
    player = _with_two_zooms()
    player.say("boulder's out of frame. light is overcast now")
    assert _walk(player.context).facts.nearest_m is None


@pytest.mark.parametrize(
    ("text", "language"),
    [
        ("nearest is the post, maybe 1 m, then nothing until some boulders at 10 m", "en"),
        ("closest is a railing at 1 m, after that nothing till a log at 8 m", "en"),
        ("lo más cercano es la barandilla, 1 m, después nada hasta unas rocas a 10 m", "es"),
    ],
)
def test_what_lies_behind_the_nearest(text: str, language: str) -> None:
    """It is neither the nearest nor the distance of the fall, and no number not placed."""
    told = read(glossed(text, language), expecting=frozenset({"nearest_m"}))
    assert (told.nearest_m, told.distance_m, told.unread) == (1.0, None, ())


def test_the_fall_behind_nothing_is_the_distance() -> None:
    """Of the water it tells how far it is."""
    told = read("rock at 1.5 m, then nothing until the fall at 25 m")
    assert (told.nearest_m, told.distance_m) == (1.5, 25.0)


@pytest.mark.parametrize(
    ("text", "height_m"),
    [
        ("I am at a fourteen metre fall in a limestone gorge, heavy overcast", 14.0),
        ("i'm at a 14 m fall, overcast", 14.0),
        ("we stand at a 30 ft fall", 9.144),
        ("a 14 metre waterfall here", 14.0),
    ],
)
def test_a_fall_by_its_height(text: str, height_m: float) -> None:
    """A length before the name of the fall is its height, wherever somebody stands."""
    asked = frozenset({"fall_height_m", "distance_m", "nearest_m"})
    for expecting in (frozenset[str](), asked):
        told = read(text, expecting=expecting)
        assert told.fall_height_m == pytest.approx(height_m)
        assert told.distance_m is None


def test_so_far_from_the_fall_is_no_height() -> None:
    """The distance stays one."""
    told = read("i'm 14 m from the fall")
    assert (told.fall_height_m, told.distance_m) == (None, 14.0)
