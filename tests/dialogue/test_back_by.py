"""By when somebody must be back: how it is told, and the turn-back time that it gives."""

from __future__ import annotations

import pytest

from bot.dialogue.reading.foreign import glossed
from bot.dialogue.reading.visit import read_visit
from tests.dialogue.player import Player
from tests.dialogue.walked import keys_of

_FALL = {
    "english": "12 m tall, 18 m away, rock at 1.5 m, full frame 24-70",
    "deutsch": "12 m hoch, 18 m weg, Fels bei 1,5 m, Vollformat 24-70",
    "español": "12 m de alto, a 18 m, roca a 1,5 m, full frame 24-70",
}


def at_fall(word: str) -> Player:
    """Somebody whose fall and kit are known."""
    player = Player()
    for line in (word, _FALL[word]):
        player.say(line)
    return player


@pytest.mark.parametrize(
    ("language", "text", "hour"),
    [
        ("en", "I need to be back at the car by 5", "17:00"),
        ("en", "have to be home by half past six", "18:30"),
        ("en", "the last bus leaves at 17:10", "17:10"),
        ("en", "the car park closes at 8 pm", "20:00"),
        ("en", "must be back at the van by 11", "11:00"),
        ("en", "must be back at the van by 25", None),
        ("en", "the gate at the car park shuts at 5, its 2.45 now", "17:00"),
        ("en", "so when do we leave for the gate, 2 miles, shuts at 5?", "17:00"),
        ("en", "they lock the lot at 6", "18:00"),
        ("en", "the park shuts 5pm sharp", "17:00"),
        ("en", "last shuttle 5:15", "17:15"),
        ("en", "20 minutes walk to the bus at 17:20", "17:20"),
        ("en", "I have to catch the 5:20 train", "17:20"),
        ("en", "my last train home is at six", "18:00"),
        ("en", "train home 6:10 pm", "18:10"),
        ("en", "bus 18:05, 25 minutes walk", "18:05"),
        ("en", "my brother picks me up at 5", "17:00"),
        ("en", "we came on the 9:20 bus", None),
        ("en", "the bus there is at 9:20", None),
        ("en", "the bus goes every 20 minutes", None),
        ("en", "catch the bus at 24", None),
        ("en", "get back 5 steps", None),
        ("en", "the last bus 12 was full", None),
        ("en", "be back here later", None),
        ("en", "we are at the car at 8", None),
        ("de", "ich muss bis 16 Uhr wieder am Auto sein", "16:00"),
        ("de", "wir sollten spätestens um fünf am Parkplatz sein", "17:00"),
        ("de", "unser letzter Bus fährt um 18:20", "18:20"),
        ("de", "die Schranke macht um 19 Uhr zu", "19:00"),
        ("de", "um 17 Uhr 20 geht mein Bus", "17:20"),
        ("de", "meine Bahn ist um 18:10", "18:10"),
        ("es", "tengo el bus a las 17:20", "17:20"),
        ("es", "a las 18:10 sale el último tren", "18:10"),
        ("es", "tenemos que estar de vuelta a las 17:30", "17:30"),
        ("es", "debo regresar al auto antes de las 6", "18:00"),
        ("es", "el último bus pasa a las 18:15", "18:15"),
        ("es", "cierran el parque a las 18:00", "18:00"),
        ("es", "la puerta del aparcamiento cierra a las 17", "17:00"),
    ],
)
def test_hours_are_read(language: str, text: str, hour: str | None) -> None:
    """In 24 hours; a bare small hour is one after noon."""
    told = read_visit(glossed(text, language))
    assert told.back_by == hour
    assert told.start_at is None or hour is None


@pytest.mark.parametrize(
    ("word", "text", "time"),
    [
        # 40 min × 1.5 = 60 min, and 15 min spare (own rule)
        ("english", "have to be back at the car by 17:00, it's a 40 min walk", "15:45"),
        ("deutsch", "muss um halb sechs wieder am Auto sein, gehen 20 Minuten", "16:45"),
        ("español", "hay que volver antes de las 18, se tarda 40 minutos", "16:45"),
    ],
)
def test_the_way_comes_off_that_hour(word: str, text: str, time: str) -> None:
    """With its factor; the sunset that is not known is named."""
    player = at_fall(word)
    (said,) = player.say(text)
    assert time in said.body.split("\n", maxsplit=1)[0]
    assert "arrive.no_sunset_yet" in said.keys
    assert "why.turn_back_due" in keys_of(player, "why")


def test_the_earlier_of_sun_and_hour_counts() -> None:
    """An hour before the sunset at the car, or the hour that was told."""
    player = at_fall("english")
    for line in ("40 min walk, sunset 16:30", "must be back at the car by 17:00"):
        player.say(line)
    assert "14:30" in "".join(one.body for one in player.say("when do we turn back?"))
    assert "why.turn_back" in keys_of(player, "why")
    assert "13:45" in "".join(one.body for one in player.say("must be back at the car by 15:00"))
    assert "why.turn_back_due" in keys_of(player, "why")


def test_the_way_is_asked_for() -> None:
    """The hour alone gives no turn-back time."""
    assert "arrive.way_missing" in keys_of(at_fall("english"), "must be back at the car by 17:00")
