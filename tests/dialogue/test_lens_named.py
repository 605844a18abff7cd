"""Lenses that are named by their number alone, lengths that are no news, and how much is framed."""

from __future__ import annotations

import pytest

from bot.dialogue.reading import read
from bot.dialogue.reading.foreign import glossed
from tests.dialogue.player import Player
from tests.dialogue.walked import keys_of, known, walked

#: A bag of primes, and a fall that more than one of them holds.
BAG = "full frame, 20, 35, 85 primes and a 70-200. fall 14 m tall, 22 m away, boulder at 1.8 m"


def _told(*lines: str) -> Player:
    player = Player()
    for line in lines:
        player.say(line)
    return player


@pytest.mark.parametrize(
    ("language", "text", "ends"),
    [
        ("en", "FF. 20, 35, 85 primes, 70-200. 6 and 10 stop", {20, 35, 85, 70}),
        ("en", "a 20, a 35 and an 85 prime", {20, 35, 85}),
        ("en", "three primes, 24 35 50", {24, 35, 50}),
        ("en", "35 and 85 mm primes", {35, 85}),
        ("de", "Vollformat, Festbrennweiten 20, 35 und 85 mm", {20, 35, 85}),
        ("es", "full frame, fijos de 20 mm, 35 mm y 85 mm", {20, 35, 85}),
        ("en", "20, 37, 85 primes", set()),  # no 37 is made: it is no list
        ("en", "20 people, 85 of us", set()),
    ],
)
def test_a_list_of_primes_is_read_as_a_whole(language: str, text: str, ends: set[int]) -> None:
    """Whether it is named before or behind."""
    assert {lens.shortest_mm for lens in read(glossed(text, language)).lenses} == ends


@pytest.mark.parametrize(
    ("text", "focal_mm"),
    [
        ("going with 35", 35),
        ("now the 35 prime, only the lower steps and the pool", 35),
        ("shooting it on the 35", 35),
        ("So 35 does it from here surely", 35),
        ("the 85 it is", 85),
        ("35 then", 35),
        ("I'll take the 35 and f/11", 35),
        ("not the 35", 20),  # what Linn chose
        ("what if I took the 35?", 20),
        ("with 35 people here", 20),
        ("35 m away", 20),
        ("going with 50", 20),  # not in the bag
        ("going with f/11", 20),
    ],
)
def test_a_lens_of_the_bag_is_chosen_by_its_number(text: str, focal_mm: float) -> None:
    """Nothing that is counted, denied or tried on paper is."""
    assert known(_told(BAG, text)).facts.focal_mm == focal_mm


def test_a_lens_is_chosen_in_other_languages() -> None:
    """In the words that people use there."""
    told = "Vollformat, Festbrennweiten 20, 35 und 85 mm. Fall 14 m hoch, 22 m weg"
    assert known(_told("Deutsch", told, "ich nehm das 35er")).facts.focal_mm == 35
    told = "full frame, fijos de 20 mm, 35 mm y 85 mm. cascada de 14 m de alto, a 22 m"
    assert known(_told("español", told, "voy con el 35")).facts.focal_mm == 35


def test_numbers_that_are_known_are_not_told_as_not_placed() -> None:
    """Lenses of the bag, and the distance again."""
    player = _told(BAG)
    assert "unread_rest" not in keys_of(player, "shooting it on the 35. redo it at 35, 22 m")


@pytest.mark.parametrize(
    ("text", "height_m", "distance_m"),
    [
        ("35 tilted a touch covers 22m of height", None, None),
        ("22 was what the lens took in", None, None),
        ("24 mm covers 15 m", None, None),
        ("it's a 14m fall, not 22, 22 was what the lens took in", 14, None),
        ("the fall is 22 m tall", 22, None),
    ],
)
def test_what_a_lens_covers_is_no_fall(
    text: str, height_m: float | None, distance_m: float | None
) -> None:
    """Neither its height nor how far it is."""
    facts = read(text)
    assert (facts.fall_height_m, facts.distance_m) == (height_m, distance_m)


def test_a_height_that_is_put_right_is_the_height() -> None:
    """Whatever length was told last."""
    player = _told("22 m tall, 15 m away, rock at 2 m, full frame, 85 mm", "I'm 15 m away")
    player.say("4 m. and it's a 14m fall, not 22, 22 was what the lens took in")
    facts = known(player).facts
    assert (facts.fall_height_m, facts.distance_m) == (14, 15)


@pytest.mark.parametrize(
    "text",
    [
        "nothing near, just the ledge n the wall behind it, all abt 15",
        "everything at about 15 m",
        "15 m, all of it",
        "i told you 15 m",
    ],
)
def test_all_of_it_so_far_away_answers_for_the_nearest(text: str) -> None:
    """Where that is asked, and nothing else is spoken of."""
    player = _told("14 m tall, 22 m away")
    keys_of(player, text)
    assert known(player).facts.nearest_m == 15


def test_who_says_it_again_moves_nowhere() -> None:
    """The boulder and the camera that are known: no lens is chosen anew."""
    player = walked()
    said = keys_of(player, "rock at 1.5 m like i said, full frame")
    assert not [key for key in said if key.startswith("lens.")]
    assert said[-1] == "ask.blink"
    assert known(player).facts.distance_m == 18


# how much of the fall


def test_how_much_is_not_asked_where_a_lens_is_known() -> None:
    """The lens that is on shows what it shows; of a bag half of the fall is taken, and said."""
    player = _told("14 m tall, 15 m away, rock at 2 m, full frame, 70-200")
    said = keys_of(player, "2")
    assert {"lens.section", "let_go.section"} <= set(said)
    assert "ask.section" not in said
    player = _told("14 m tall, 15 m away, rock at 2 m, full frame, 85 mm")
    said = keys_of(player, "section")
    assert "lens.section" in said
    assert "let_go.section" not in said


def test_a_part_that_no_lens_shows_is_the_whole() -> None:
    """A wide zoom alone holds all of the fall, whatever was said."""
    player = _told("30 m tall, 40 m away, crop sensor, 10-18, boulder at 3 m")
    assert "lens.section" not in keys_of(player, "just a section of it please")
    assert not known(player).facts.section


def test_how_much_is_asked_twice_at_most() -> None:
    """Without a lens it is asked; then half of the fall is taken."""
    player = _told("start", "14 m tall, 15 m away, rock at 2 m, a section of it", "full frame")
    asked = [keys_of(player, "blub") for _ in range(6)]
    assert sum(said[-1] == "ask.section" for said in asked) == 2
    assert "lens.section" in [key for said in asked for key in said]


def test_part_of_the_water_that_blinks_is_no_wish_for_a_part() -> None:
    """While blinking is asked about."""
    player = walked()
    player.say("i said the top, just a section of it")
    assert not known(player).facts.section


def test_what_stands_beside_another_lens_is_of_the_next_frame() -> None:
    """The lens, the place and the part in the same message: none of them is asked again."""
    player = _told(BAG, "1", "1", "nothing blinks", "leaves are still")
    assert known(player).conversation.question is not None
    player.say("all is fine, keep it")
    said = keys_of(player, "2. going for the 85. closer in, 15 m off, about 4 m of it")
    facts = known(player).facts
    assert (facts.focal_mm, facts.distance_m) == (85, 15)
    assert "ask.other_lens" not in said


def test_a_phone_that_is_named_in_a_message_of_danger_is_kept() -> None:
    """Whatever else it tells of; nobody has to name it twice."""
    player = _told("just my phone here, and my brother wants to climb up beside the fall")
    assert known(player).conversation.closed
    assert known(player).person.kit.camera_format == "phone"
