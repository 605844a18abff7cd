"""Parts of a message that only sound of danger: seen in a frame, on a screen, under a tree."""

from __future__ import annotations

import pytest

from bot.dialogue.danger import read_danger
from tests.dialogue.player import Player


@pytest.mark.parametrize(
    "text",
    [
        # Dry ground, some metres off.
        (
            "Well, I'm there now. Standing on a flat gravel bit about 6 metres from the fall, "
            "water on my left, tripod is up. What do I set it to?"
        ),
        "standing on grass about 8 m from the waterfall, creek to my right, what settings",
        "Ich stehe auf trockenem Kies 6 m vom Fall weg, Wasser links von mir. Was stell ich ein?",
        # The bot's own word.
        "leaves tremble a bit. And what is a ladder, you don't mean I climb something?",
        "whats a ladder? u dont mean i have to climb something",
        "was ist eine zeitenleiter, du meinst nicht dass ich klettern soll?",
        # Water as a short time makes it, and shade.
        (
            "water looks all frozen n spiky tho. we moved in under the trees bit further up, way "
            "darker here, want it silky"
        ),
        "we went back under the trees, water came out frozen and hard",
        "das wasser sieht ganz gefroren und hart aus, sind jetzt unter den bäumen",
        # Where the fall lands, of a picture; a deck that shakes the tripod.
        (
            "schaut gut aus, nur unten wo der fall aufschlägt blinkts noch a bissl. is des "
            "schlimm? der steg wackelt auch wenn jonas hüpft"
        ),
        "at the bottom where it hits the pool it still blinks a bit",
        "abajo donde cae el agua parpadea todavía un poco",
        "it flashes a little at the bottom, is that bad?",
        "it flashes at the bottom, the waterfall is loud",
        # What the camera shows.
        "weiß nicht wo ich das sehe",
        "keine ahnung wo das steht",
        "no sé dónde se ve eso",
        "no idea where to see that",
        "don't know where to find that on my camera",
        "ni idea dónde sale",
        # How long somebody has been there, and who asks when they are back.
        (
            "My friend texts asking when im back, could you tell me roughly how long it takes for "
            "the walk out? been here almost an hour now i think"
        ),
        "wir sind jetzt fast eine Stunde hier, meine Frau fragt wann wir zurück sind",
        "mi amiga pregunta a que hora regreso. llevo como una hora aqui",
        # A plan for the day.
        (
            "Starting 8am like i said, just me walking. No idea about sunset, ill be back for "
            "lunch. You didn't say though... is it even worth going without a filter?"
        ),
        (
            "Ich gehe um 8 los, nur ich. Keine Ahnung wann die Sonne untergeht, zum Mittagessen "
            "bin ich zurück"
        ),
        "salgo a las 8, voy sola. ni idea de la puesta de sol, regreso para comer",
        # Who throws stones in.
        "der jonas wirft steine rein, dem is langweilig",
        "my son is throwing stones into the pool, he's bored",
        "mi hijo tira piedras al agua, esta aburrido",
        # A sign that is kept.
        (
            "im standing on the gravel bank maybe 40 ft in front of the fall, dry feet. sign says "
            "stay on the path and the bank is where the path ends. what do i set on the camera?"
        ),
    ],
)
def test_no_danger(text: str) -> None:
    """Nobody is asked whether anybody is hurt."""
    assert read_danger(text) is None


@pytest.mark.parametrize(
    "text",
    [
        "standing on dry gravel 5 m from the fall. water is rising",
        "been here two hours, can't find the way out",
        "been here an hour, she hasn't come back",
        "wir sind seit zwei stunden hier und finden nicht zurück",
        "somebody throws rocks over the edge onto us",
        "kids are throwing rocks from the lip, one hit my wife",
        "my son throws stones into the pool and he slipped in",
        "mi hijo se tiro al agua",
        "no idea about sunset, it's getting dark and we have no lamp",
        "just me walking, she is gone",
        "the water looks frozen, can I walk on it?",
        "we moved under the trees, thunder is close",
        "blitze und wir stehen unter den bäumen",
        "the water looks frozen and hard, we walk on it",
        "I'm standing where the water lands, it blinks a bit",
        "ich steh unten wo der fall aufschlägt, es blinkt",
        "the bridge is shaking and the water is over it",
        "ich weiß nicht wo wir sind",
        "weiß nicht wo er steht",
        "keine ahnung wo die stehen",
        "don't know where to find my son",
        "no idea where the path is",
        "no idea where this is shown, the water is rising",
        "no sé dónde está mi hijo",
        "flashing at the bottom, and it rumbles",
        "it flashes a little at the bottom, and it rumbles",
        "still flashing at the bottom, dark clouds coming",
        "es blinkt unten wo das Wasser landet, und es grummelt",
        "es blinkt unten wo der Fall aufschlägt, in der Ferne grollt es",
        "parpadea abajo donde cae el agua, y el cielo retumba",
    ],
)
def test_danger_all_the_same(text: str) -> None:
    """People, the way and the water are none of a camera's."""
    assert read_danger(text) is not None


@pytest.mark.parametrize(
    "text",
    [
        (
            "Right, I'm putting the 6 stop filter on now. How long will the shutter be then? My "
            "fingers are cold so big steps pls"
        ),
        "6 stop filter is on, which time? hands are freezing, so short answers",
    ],
)
def test_cold_hands_stand_beside_the_answer(text: str) -> None:
    """A caution first, and what was asked."""
    player = Player()
    for line in ("start", "12 m tall, 18 m away, rock at 1.5 m, full frame, 16-35", "1", "1"):
        player.say(line)
    keys = [key for one in player.say(text) for key in one.keys]
    assert keys[0] == "precaution.cold_hands"
    assert len(keys) > 1
    assert not {"ask.in_danger", "danger.hint"} & {*keys}


def test_clammy_fingers_that_hardly_type() -> None:
    """They are warmed; nothing else is asked."""
    player = Player()
    said = player.say("is gar nich so leicht mit den klammen fingern zu tippen")
    assert [key for one in said for key in one.keys] == ["precaution.cold_hands"]
