"""Replies to a question of safety with more behind them: each part is heard for itself.

The talks are our own; what is to be held, and what is to be let go, follows the caution of
`bot.dialogue.steps.safety`: nobody gets settings for a place where somebody may stand.
"""

from __future__ import annotations

import pytest

from bot.dialogue.danger import DangerKind, read_danger
from bot.dialogue.danger.high_things import without_high_things
from bot.dialogue.meaning.sentences import clauses_of
from tests.dialogue.player import Player

WALK = "fall 8 m tall, 12 m away, rock at 1.5 m, full frame, 24-70 and tripod"
LIP = "can I stand on the lip?"
STREAM = "can I stand in the stream there? it is ankle deep"
CHILD = "my son wants to climb up on the wet rocks, is that ok"
FLOOD = "the water is brown and rising"


def after(*lines: str) -> Player:
    """A walk with settings, and then these messages."""
    player = Player()
    for line in (WALK, "1", "1", *lines):
        said = player.say(line)
        assert said or line == ""
    return player


def closed_after(*lines: str) -> bool:
    context = after(*lines).context
    assert context is not None
    return context.conversation.closed


def held_after(*lines: str) -> bool:
    context = after(*lines).context
    assert context is not None
    return context.conversation.emergency is not None


def last_said(*lines: str) -> str:
    player = after(*lines[:-1])
    return "\n".join(say.body for say in player.say(lines[-1]))


@pytest.mark.parametrize(
    "lines",
    [
        (LIP, "1, nobody is out there. how do I lose that twig on the left?"),
        (LIP, "nobody's up there, we're both on the path. so how do I get the twig out?"),
        (LIP, "no one, all good, staying put. is a 10 stop worth it today"),
        (LIP, "Nobody. I'm at the bottom of it, meant the lip in the picture"),
        (STREAM, "nope both of us are on the bank. so why is the rock soft?"),
        (STREAM, "no im on the path shes next to me nobodys in there how do i lose the log"),
        (CHILD, "ok he's down. there's a bright twig poking in on the left"),
        (CHILD, "both kids are next to me on the path. what about the twig"),
        ("darf ich auf die Kante?", "nein schon gut, ich bleib unten. wie lang belichten?"),
        ("kann ich da kurz in den Bach?", "niemand im wasser. warum ist der Fels unscharf?"),
        ("kann ich da kurz in den Bach?", "na gut, dann bleib ich am ufer. ist f/11 gut?"),
        ("puedo subir al borde?", "no, me quedo abajo. que tiempo pongo?"),
    ],
)
def test_nobody_is_there_whatever_follows(lines: tuple[str, ...]) -> None:
    assert closed_after(lines[0])
    assert not closed_after(*lines)


@pytest.mark.parametrize(
    "lines",
    [
        (LIP, "nobody is there. but my tripod is still up there, which shutter for it?"),
        (LIP, "no. just tell me the shutter I would use from up there"),
        (LIP, "nobody except my brother. which shutter?"),
        (LIP, "nobody. my brother is just getting his shot"),
        (LIP, "nobody, he stays a minute"),
        (LIP, "no. she likes it there"),
        (LIP, "2. my wife is. which shutter?"),
        (LIP, "1. my wife is still standing on the edge"),
        (LIP, "hopefully nobody, I think. which shutter?"),
        (LIP, "3. which shutter?"),
        (LIP, "no, I'm sitting. which shutter?"),
        ("darf ich auf die Kante?", "nein. und welche Zeit von dort oben?"),
        ("puedo subir al borde?", "no. que tiempo pongo desde alli arriba?"),
    ],
)
def test_what_is_left_open_stays_closed(lines: tuple[str, ...]) -> None:
    """No settings for a tripod at the edge, nor for who is sitting there."""
    assert closed_after(*lines)


def test_what_is_asked_behind_it_is_answered() -> None:
    """And the walk's own question stands last, once."""
    said = last_said(LIP, "1, nobody is there. when is the best day after rain?")
    assert said.startswith("Good. Stay on the path side")
    assert "after rain" in said
    assert said.count("Does the main water blink?") == 1


def test_another_leave_beside_it_is_answered_with_its_numbers() -> None:
    """0.3 m deep at 1.5 m/s is 0.45 m²/s, over the ceiling of 0.4 (core.wading)."""
    said = last_said(
        LIP,
        "No, nobody there. May they stand in the stream if it's 30 cm deep and a leaf takes"
        " 2 seconds over 3 m?",
    )
    assert "0.45" in said


@pytest.mark.parametrize(
    "lines",
    [
        ("it is dark and we have no lamp", "we're at the hut now, both fine. what about f/16?"),
        (FLOOD, "2 yes we're safe, both on the trail. how do I choose between five frames?"),
        (FLOOD, "2 yes we're safe. its still sitting on the rock by the creek on my backpack"),
        (FLOOD, "2, alle sicher. mann. ich geh heut nicht mehr runter"),
        (FLOOD, "ja bin in sicherheit, ganz ehrlich, sind nur ich und mein Hut"),
        (FLOOD, "2, si todos a salvo, estoy con mi hermano que mira el mapa"),
        (FLOOD, "we moved up to the trail. everybody's safe, its only me"),
        ("my son is shivering and can't stop", "wet jumper off, cocoa in. so we're ok. and f/8?"),
        ("my son is shivering and can't stop", "he's chatting again and not shivering, so so"),
        ("my friend slipped in", "2. he's out, wet and laughing. is f/16 ok?"),
    ],
)
def test_all_are_safe_whatever_follows(lines: tuple[str, ...]) -> None:
    assert held_after(lines[0])
    assert not held_after(*lines)


@pytest.mark.parametrize(
    "lines",
    [
        (FLOOD, "all fine except Ben, he is still down there. which shutter?"),
        (FLOOD, "1 - ben is still down there"),
        ("my friend slipped in", "2 of us are fine but he is not"),
        ("my friend slipped in", "2 people went after him"),
        ("my friend slipped in", "yes, I am safe. he is not out yet"),
        ("my friend slipped in", "I am fine. which shutter for the fall?"),
        ("my friend slipped in", "hopefully all fine, not sure. which shutter?"),
        ("my son is shivering and can't stop", "is he not shivering? he just lies there"),
        ("my friend slipped in", "all clear, he just lies there"),
        ("my friend slipped in", "2. all good but he is asleep and I can't wake him"),
        ("my friend slipped in", "we are all safe. ben went back for the tripod"),
        ("my friend slipped in", "safe and sound, everyone. hold on, where is lena"),
        ("mein freund ist reingerutscht", "alles gut, er liegt nur da"),
        ("mein freund ist reingerutscht", "2, alle raus. er atmet komisch"),
        ("my friend slipped in", "todos bien, pero el no se mueve"),
        ("my son is shivering and can't stop", "all warm, he talks nonsense"),
        ("I fell and my leg is bent", "2. all good. there is a bone sticking out"),
        (FLOOD, "2, all safe. my wife is fetching the bag"),
        (FLOOD, "we are safe. two students are on the other side"),
        (LIP, "we're all on the path. my friend slipped in though"),
    ],
)
def test_who_is_left_holds_the_walk(lines: tuple[str, ...]) -> None:
    assert held_after(*lines)


def test_after_an_emergency_the_question_behind_is_answered() -> None:
    """Once, and the walk's question behind it."""
    said = last_said("my friend slipped in", "2. he's out, wet and laughing. is f/16 ok?")
    assert "f/16" in said or "f/1" in said
    assert said.count("Does the main water blink?") == 1
    assert "start" not in said


def test_after_rising_water_only_the_day_is_answered() -> None:
    """Nobody goes back to that water, so nobody gets settings for it."""
    said = last_said(FLOOD, "2, all safe at the car. which shutter do I take?")
    assert "1/" not in said
    said = last_said(FLOOD, "2, all safe at the car. which days after rain are best?")
    assert "after rain" in said


def test_on_the_way_from_rising_water_nothing_is_asked_of_the_frame() -> None:
    """Until somebody begins again, by the word or with settings."""
    away = (FLOOD, "2, all safe at the car")
    said = last_said(*away, "is the lens ruined when it fogs up inside?")
    assert "blink" not in said
    assert "Does the main water blink?" in last_said(*away, "start", "1")
    assert "blink" in last_said(*away, "f/11, 1/8 s, ISO 100, patches blink").lower()


@pytest.mark.parametrize(
    ("told", "explained"),
    [
        (FLOOD, "its see through, like weak tea, no twigs, not rising"),
        (FLOOD, "das wasser ist klar, man sieht den grund, und es ist nicht gestiegen"),
        (FLOOD, "el agua baja clara y no ha subido"),
        ("it's dark and we have no lamp", "its 2 in the afternoon, I meant dark for photos"),
        ("it's dark and we have no lamp", "no es de noche, es de la tarde"),
    ],
)
def test_what_was_no_danger_is_taken_back(told: str, explained: str) -> None:
    """Brown as tea is by its bog, and dark is a gorge in the afternoon."""
    assert held_after(told)
    assert not held_after(told, explained)


def test_who_is_at_the_car_tells_of_no_new_danger() -> None:
    """Words that sound like it count less behind good news of everybody."""
    told = "some guy coming up the trail had grabbed it. we're at the car now, just soaked"
    assert read_danger(told) is not None
    assert not held_after(FLOOD, "2, all safe on the trail", told)


def test_water_that_may_rise_is_not_taken_back() -> None:
    assert held_after(FLOOD, "it is clear again but I'm not sure that it is not rising")


@pytest.mark.parametrize(
    "text",
    [
        "I only have my phone and a little tripod about knee high, on the gorge trail with my kids",
        "hab nur ein kleines stativ, kniehoch, und bin mit den kindern am weg",
        "solo llevo un trípode a la altura de la rodilla, estoy con mis hijos en el sendero",
    ],
)
def test_a_tripod_as_high_as_a_knee_is_no_depth(text: str) -> None:
    danger = read_danger(text)
    assert danger is None or not danger.is_told


@pytest.mark.parametrize(
    "text",
    [
        "the stones I could see by the edge when we got here, they're gone under now",
        "my marker rock is under water now",
        "die trittsteine von vorhin sind jetzt unter wasser",
        "las piedras de la orilla ya estan cubiertas de agua",
    ],
)
def test_stones_that_went_under_tell_of_rising_water(text: str) -> None:
    """A sign of flash floods: the water comes up over what was dry."""
    danger = read_danger(text)
    assert danger is not None
    assert danger.kind is DangerKind.FLOOD


@pytest.mark.parametrize(
    "text",
    [
        "the stones under water look green with the polariser",
        "die steine im klaren wasser leuchten grün",
        "quiero que se vean las piedras bajo el agua",
        "the rocks are covered in moss now",
    ],
)
def test_stones_under_clear_water_are_a_picture(text: str) -> None:
    danger = read_danger(text)
    assert danger is None or danger.kind is not DangerKind.FLOOD


def test_water_as_deep_as_a_knee_is_one() -> None:
    assert without_high_things("the water is knee high") == "the water is knee high"


def test_a_dark_picture_is_no_night() -> None:
    """A line about danger at most; the light that is told counts."""
    said = last_said("can we do the settings, its overcast and pretty dark down here")
    assert "Are all safe now" not in said


def test_a_hint_is_let_go_where_somebody_goes_on_about_the_picture() -> None:
    """Who needs help does not ask of filters."""
    player = after("twisted it nearly to the end and theres a dark cross in it is it broken")
    context = player.context
    assert context is not None
    player.say("can i stack the polariser on top of it?")
    assert player.context is not None
    assert player.context.conversation.doubted is None


def test_clauses_end_at_signs_and_before_questions() -> None:
    assert clauses_of("no im on the path how do i lose the log") == [
        "no im on the path",
        "how do i lose the log",
    ]
    assert clauses_of("1,5 m, all fine - really") == ["1,5 m,", "all fine", "really"]
