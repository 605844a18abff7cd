"""What goes into the bag the day before: a lens to leave, filters to choose, a list, a permit.

Numbers by hand: 17 m seen with a level camera at 1.5 m from 17 m takes 18 mm / (15.5 m + 5 %)
x 17 m = 19 mm upright, so 24 mm from 21 m; f/8 and 1/10 s in heavy overcast (EV 12) are 2 2/3
stops over, under trees (EV 8) 1 1/3 under; behind ten stops 1/10 s x 2^(10 - 2 2/3) = 16 s.
"""

from __future__ import annotations

import pytest

from tests.dialogue.player import Player
from tests.dialogue.walked import keys_of, known, walked

PLAN = "we go to Thornwick Spout tomorrow, full frame"


def planning(*lines: str) -> Player:
    """Somebody who plans a visit, and what they said since."""
    player = Player()
    for line in (PLAN, *lines):
        player.say(line)
    return player


def body(player: Player, text: str) -> str:
    """What is answered to one more line."""
    return "\n".join(message.body for message in player.say(text))


# lenses


def test_a_wide_lens_stays_where_another_holds_the_fall() -> None:
    """By the framing, told in the same message; asked again, the same; nothing is learnt twice."""
    player = planning()
    said = body(
        player,
        "I've got a 24-70 and a 70-200 and an old 14 prime thats heavy as a brick. can i leave the "
        "14 at home? fall's about 17 m supposedly",
    )
    assert said.startswith("Yes, leave the 14 mm: from 21 m off your 24-70 at 24 mm holds all 17 m")
    assert "Bring the 24-70 for the whole fall, the 70-200 for sections." in said
    assert body(player, "so the 14 stays home, yes or no?").startswith("Yes, leave the 14 mm")
    assert body(player, "do I need the 14?").startswith("No, leave the 14 mm")
    assert len(known(player).facts.lenses) == 3


@pytest.mark.parametrize(
    ("kit", "asked", "answer"),
    [
        # 35 mm level takes 2 heights; tilted it holds 20 m from 1.5 of them
        (
            "I have a 35mm prime and a 14mm prime, the fall is 20 m tall",
            "can I leave the 14 at home?",
            "Yes, leave the 14 mm: from 30",
        ),
        (
            "a 14 and a 70-200, the fall is 20 m tall",
            "can I leave the 14 mm at home?",
            "No, take the 14 mm",
        ),
        ("a 14 mm and a 70-200", "can I leave the 14 mm at home?", "No, take the 14 mm: nothing"),
        ("a 14 mm and a 24-70", "can I leave the 14 mm at home?", "Yes, leave the 14 mm: 24 to 70"),
        ("i like cake", "can I leave the 14 at home?", "Yes, leave the 14 mm: 24 to 70"),
        ("a 24-70 and a 70-200", "can I leave the 70-200?", "Yes, leave the 70-200 if its weight"),
        ("a 24-70 and a 70-200", "should I bring the 70-200?", "Yes, take the 70-200 if you can"),
        ("a 24-70 and a 70-200", "is the 100-400 worth carrying?", "Yes, take the 100-400"),
        ("a 24-70 and a 70-200", "can the 24-70 stay home?", "No, take the 24-70: 24 to 70 mm"),
        ("a 24-105 and a 24-70", "can the 24-70 stay home?", "Yes, leave the 24-70: your 24-105"),
        ("a 70-200", "can I leave the 70-200?", "No, take the 70-200: you have named no other"),
    ],
)
def test_which_lens_may_stay(kit: str, asked: str, answer: str) -> None:
    """By what the others hold, and what it is for; yes or no by how it was asked."""
    assert body(planning(kit), asked).startswith(answer)


# filters

OWNED = "I own a polarizer, a 3 stop and a 10 stop"


def test_which_filters_to_bring() -> None:
    """Those of use in the light to come; told beside the question, they are the person's."""
    player = planning("forecast: overcast", "the fall is 17 m tall")
    said = body(player, f"and which filters do i bring, {OWNED}")
    assert said.startswith("Bring polariser and 3-stop ND; leave 10-stop ND.")
    assert "heavy overcast takes 2 2/3 stops of filter, a wooded gorge no filter" in said
    assert "even the polariser may take too much" in said
    assert known(player).facts.nd_stops == (3, 10)


def test_a_filter_that_is_too_strong() -> None:
    """The shade that is named counts, and the sky above it; a number alone names what is owned."""
    player = planning("forecast: overcast", "the fall is 17 m tall", OWNED)
    said = body(player, "Do I need the 10 stop under heavy clouds in a wooded hollow?")
    assert said.startswith("No, leave the 10-stop ND: in heavy overcast it makes 15 s.")
    assert "a wooded gorge no filter" in said
    assert body(player, "can I leave the 10 at home?").startswith("Yes, leave the 10-stop ND")
    assert body(player, "do I need the 3 stop?").startswith("Yes, take the 3-stop ND")
    assert body(player, "do I need the ND1000?").startswith("No, leave the 10-stop ND")
    assert known(player).facts.nd_stops == (3, 10)


@pytest.mark.parametrize(
    ("told", "first"),
    [
        ("forecast: full sun. I have ND64, no polariser", "Bring 6-stop ND."),
        ("forecast: overcast. no polariser, I have an ND1000", "Leave 10-stop ND: none of it"),
        ("nothing to say", "Most carry polariser, 3- and 6-stop ND"),
        ("it's a wooded gorge, I own a 3 stop", "Bring 3-stop ND."),
    ],
)
def test_filters_of_every_kind_of_bag(told: str, first: str) -> None:
    """All of it, none of it, or what most carry."""
    assert body(planning(told), "which filters should I bring?").startswith(first)


def test_a_filter_that_does_not_exist() -> None:
    """No filter takes fifty stops: nothing is judged."""
    assert "bag.nd" not in keys_of(planning(OWNED), "do I need the 50 stop?")


# the list


def test_the_list_names_what_is_owned_and_the_weather() -> None:
    """Rain cover and gloves for what is told; of one's own filters those that are of use."""
    player = planning("forecast: overcast", OWNED)
    said = body(
        player,
        "hm 2 2/3 isn't 10 so I'll take the 3. what else goes in the bag, it'll be low 40s and "
        "drizzly by the time i'm headed down",
    )
    assert "tripod, polariser, 3-stop ND, release" in said
    assert "Rain: a cover" in said
    assert "Cold: gloves" in said
    assert "Not placed" not in said
    assert "40 s" not in said
    assert "Rain: a cover" in body(player, "packing list please")


def test_a_list_without_filters() -> None:
    """Who has none is told of none."""
    said = body(planning("no filters at all"), "packing list please")
    assert "Camera: tripod, release" in said
    assert "tripod, polariser, 3- and 6-stop ND, release" in body(planning(), "packing list please")


# permits


@pytest.mark.parametrize(
    ("text", "keys"),
    [
        (
            "Do I need some kind of permit for the tripod? i sell a print now and then",
            ("permit.ask", "permit.usual"),
        ),
        ("do I need a permit for my workshop?", ("permit.ask", "permit.usual")),
        ("do I need a permit there?", ("asked.permit",)),
    ],
)
def test_what_a_permit_is_asked_for(text: str, keys: tuple[str, ...]) -> None:
    """In general words, deferring to who owns the land."""
    (message,) = planning().say(text)
    assert message.keys[: len(keys)] == keys
    if "tripod" in text:
        assert "tripods are barred on platforms" in message.body
        assert "and whether selling prints" in message.body


# what is no bag


def test_other_languages() -> None:
    """The same questions, with the same numbers behind them."""
    player = Player()
    for line in (
        "deutsch",
        "morgen will ich zum Farnfall, Vollformat mit 14, 24-70 und 70-200, 17 m hoch",
    ):
        player.say(line)
    assert body(player, "kann ich das 14er zu Hause lassen?").startswith("Ja, 14 mm bleibt")
    said = body(player, "welche Filter nehme ich mit? Ich habe Polfilter, ND 8 und ND 1000")
    assert said.startswith("Nimm Polfilter und 3-Stufen-ND mit; zu Hause bleibt: 10-Stufen-ND.")
    assert body(player, "brauche ich den 10er?").startswith("Nein, 10-Stufen-ND bleibt zu Hause")
    player = Player()
    for line in ("español", "mañana voy al Salto del Roble, tengo un 14 mm y un 24-70, 17 m"):
        player.say(line)
    assert body(player, "¿puedo dejar el 14 en casa?").startswith("Sí, deja 14 mm")


def test_at_the_water_the_bag_is_packed() -> None:
    """There, and before any plan, the older answers hold, but for words of packing."""
    assert "bag.nd" not in keys_of(walked(), "do I need the 10 stop?")
    assert "bag.nd" not in keys_of(Player(), "do I need a 3 stop nd in the shade")
    assert "bag.nd" in keys_of(Player(), "I'm packing: can the 10 stop stay home?")
    assert "bag.lens_luxury" not in keys_of(planning(), "can I leave the water white?")


def test_what_is_told_around_a_question_of_the_bag_is_kept_and_not_asked_again() -> None:
    """At the water the next thing that is missing is asked for."""
    player = Player()
    player.say("start")
    player.say(
        "It drops roughly eight metres. I can stand ten metres back, a boulder about a metre in "
        "front of me. Which of my filters should I pack, I own a polariser and a 6-stop ND?"
    )
    assert player.context is not None
    facts = player.context.facts
    assert (facts.fall_height_m, facts.distance_m, facts.nearest_m) == (8.0, 10.0, 1.0)
    assert facts.has_polariser
    assert facts.nd_stops == (6.0,)
    assert player.context.conversation.question is not None
    assert player.context.conversation.question.name == "kit"
