"""Who asks of a gorge after rain before they set out gets that answered: no emergency."""

from __future__ import annotations

import pytest

from bot.dialogue.danger.rain_asked import asks_of_rain
from tests.dialogue.player import Player

ASKED = "rain.asked"


def answered(*lines: str) -> list[str]:
    """The keys of what is said to the last of some messages."""
    player = Player()
    said = [player.say(line) for line in lines][-1]
    return [key for one in said for key in one.keys]


@pytest.mark.parametrize(
    "text",
    [
        (
            "ich will gleich mit meinem enkel jonas (9) los zum wasserfall in der klamm, so 7 m "
            "hoch. hat die ganze nacht geregnet, jetz hörts grad auf"
        ),
        (
            "is die klamm nach so nem regen nicht gefährlich für ein kind? woran merk ich das wir "
            "umdrehen müssen"
        ),
        "ob das mit dem buben in die klamm geht nach so viel regen",
        "it rained all night, is the gorge ok with a kid?",
        (
            "I want to take my grandson (9) to the fall in the gorge this morning, it poured all "
            "night and just stopped"
        ),
        "ha llovido toda la noche, quiero ir con mi nieto al barranco, es peligroso?",
    ],
)
def test_with_a_child(text: str) -> None:
    """When to go, the signs to turn back, and the child within reach."""
    assert answered(text) == [ASKED, "rain.signs_child"]


@pytest.mark.parametrize(
    "text",
    [
        "steigt so ein bach nach dem regen noch weiter an oder is das schlimmste dann vorbei",
        "wann müssen wir in der schlucht umdrehen nach dem regen?",
        "wir sind ja noch daheim. aber beantwort mir bitte erst das mit dem hochwasser",
        "does a creek keep rising after the rain stops or is the worst over?",
        "what are the signs that we must turn around in the gorge",
        "is it safe to go to the waterfall tomorrow after all that rain",
        "¿un arroyo sigue subiendo después de la lluvia o ya pasó lo peor?",
        "¿cómo sabemos cuándo hay que dar la vuelta en el barranco?",
    ],
)
def test_without_one(text: str) -> None:
    """The same for who names no child."""
    assert answered(text) == [ASKED, "rain.signs"]


def test_what_to_pack_is_answered_beside_it() -> None:
    """In the place of the signs; the kit that is told is kept."""
    text = (
        "ob das mit dem buben in die klamm geht nach so viel regen und was ich einpacken soll. hab "
        "24-70, vollformat und stativ"
    )
    player = Player()
    player.say("sprache deutsch")
    said = player.say(text)
    assert [key for one in said for key in one.keys] == [ASKED, "asked.pack"]
    assert player.context is not None
    assert [lens.shortest_mm for lens in player.context.facts.lenses] == [24]


@pytest.mark.parametrize(
    "text",
    [
        "the creek is rising, does it keep rising after the rain stops?",
        "water is rising in the gorge after the rain, is it safe?",
        "der bach in der klamm steigt nach dem regen, ist das gefährlich?",
        "der bach is aber jetz braun geworden und lauter, war der vorhin nich klarer?",
        "we are in the gorge and it started to rain, is it dangerous?",
        "we can't get out of the gorge after the rain, is it dangerous?",
        "it's raining and my kid slipped, is the creek dangerous?",
        "estamos en el barranco y empieza a llover, es peligroso?",
        "it rained all night so the fall is strong, is 1/4 s ok",
        "is my tripod safe in the rain by the creek?",
        "hat geregnet, fels ist nass, welche blende?",
        "in der klamm ist es dunkel, es regnet, welche zeit?",
    ],
)
def test_who_is_there_is_heard_as_ever(text: str) -> None:
    """What the water does now, who is in it, and a picture in the rain."""
    assert not asks_of_rain(text)


@pytest.mark.parametrize(
    "text",
    [
        "can't get back across, does the creek go on rising once rain stops?",
        "we are cut off, how long will the river keep rising?",
        "we're on a rock in the middle, does the creek go on rising after rain?",
        "kommen nicht mehr rüber, steigt der Bach noch weiter wenn der Regen aufhört?",
        "no podemos cruzar de vuelta, ¿sigue subiendo el río cuando deja de llover?",
    ],
)
def test_who_is_cut_off_is_in_a_flood(text: str) -> None:
    """The way up, not when to set out."""
    assert answered(text)[0] == "danger.flood"


@pytest.mark.parametrize(
    "text",
    [
        "the children are down in the gorge and it is pouring, can they get out?",
        "can't get across, will the creek go on rising after it stops raining?",
        "My kids are in the gorge and it's pouring, what should I do?",
        "is the worst over? the creek took our bridge",
        "Wir sind abgeschnitten, wie lange steigt der Bach noch?",
        "der Sohn ist unten in der Klamm und es hat geregnet, ist das gefährlich?",
        "estamos atrapados, ¿lo peor ya ha pasado?",
        "los niños están en el barranco y llueve, ¿es peligroso?",
    ],
)
def test_who_may_be_in_trouble_is_asked(text: str) -> None:
    """Whether anybody is in danger, or the flood outright; never when to set out."""
    assert answered(text)[0] in {"danger.doubt", "danger.flood"}


@pytest.mark.parametrize(
    "text",
    [
        "is it safe to stand on the rock by the creek after rain?",
        "it rained, is it dangerous if the kids are in the gorge tomorrow?",
        "I'm stuck at home, does a creek go on rising after rain?",
        "ist die Klamm nach Regen gefährlich, wenn die Kinder in der Klamm sind?",
        "¿es peligroso pararse en la roca del río después de la lluvia?",
    ],
)
def test_what_is_supposed_is_no_trouble(text: str) -> None:
    """Nobody is there yet: when to set out, and the signs."""
    assert answered(text)[0] == ASKED


def test_an_emergency_goes_first() -> None:
    """While one is held, its question alone is asked."""
    keys = answered("the water is brown and rising", "does a creek keep rising after the rain?")
    assert ASKED not in keys
    assert keys[-1] == "ask.safe"


@pytest.mark.parametrize(
    "text",
    ["in der klamm bricht man nix ab", "is the gorge dangerous for a kid?", "im Tal ist es schön"],
)
def test_a_gorge_that_is_spoken_of_is_no_light(text: str) -> None:
    """A rule of conduct, or a question of danger, names no light."""
    player = Player()
    player.say(text)
    assert player.context is not None
    assert player.context.facts.light is None
