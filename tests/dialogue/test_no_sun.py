"""Sun that is denied is never full sun: the fall lies in shade."""

from __future__ import annotations

import pytest

from bot.dialogue.context import Conversation
from bot.dialogue.reading import read
from bot.dialogue.reading.foreign import glossed
from bot.dialogue.reading.light import only_lacks_sun
from tests.dialogue.player import Player


def _talk(player: Player) -> Conversation:
    """What the bot keeps of the talk."""
    assert player.context is not None
    return player.context.conversation


SETTINGS = "12 m tall, 18 m away, rock at 1.5 m. full frame, 24-70, tripod"


@pytest.mark.parametrize(
    ("text", "language", "light"),
    [
        ("nope no sun on it", "en", "open shade"),
        ("sun not on the water yet", "en", "open shade"),
        ("no NOT sun! shade. clear sky above but none on the fall", "en", "open shade"),
        ("clear sky, but the fall itself gets none", "en", "open shade"),
        ("told you theres no sun here", "en", "open shade"),
        ("the sun isn't on the water", "en", "open shade"),
        ("sun is not out", "en", "open shade"),
        ("no sun yet but it's sunny on the rocks", "en", "open shade"),
        ("not in full sun, it's cloudy", "en", "overcast"),
        ("no sun, we're under the trees", "en", "light canopy"),
        ("keine sonne drauf", "de", "open shade"),
        ("die sonne scheint nicht direkt auf den fall", "de", "open shade"),
        ("nein, NICHT sonne! schatten", "de", "open shade"),
        ("die sonne ist noch nicht auf dem wasser", "de", "open shade"),
        ("klarer himmel, aber keine sonne auf dem fall", "de", "open shade"),
        ("no hay sol en el agua", "es", "open shade"),
        ("el sol todavía no llega al agua", "es", "open shade"),
        ("cielo despejado pero en la cascada nada de sol", "es", "open shade"),
        # What stays, or is only spoken of.
        ("the sun won't go away, full sun on the rocks", "en", "full sun"),
        ("sun on the water, no clouds", "en", "full sun"),
        ("sun's not too strong, hazy", "en", "hazy sun"),
        ("nobody said sun", "en", None),
        ("is there no sun on it?", "en", None),
        ("sun's not up yet", "en", None),
        ("no sun, no shade", "en", None),
        ("wait until there is no sun", "en", None),
    ],
)
def test_denied_sun(text: str, language: str, light: str | None) -> None:
    """The light is that of the other words, else at least open shade."""
    assert read(glossed(text, language)).light == light


def test_told_lack_of_sun_says_no_more() -> None:
    """Whether nothing but the lack of sun is told."""
    assert only_lacks_sun("no sun on it")
    assert not only_lacks_sun("no sun, it's overcast")
    assert not only_lacks_sun("full sun")


def test_no_sun_takes_full_sun_back() -> None:
    """Who denies a full sun gets the settings of shade."""
    player = Player()
    for line in ("start", SETTINGS, "1", "1", "full sun"):
        player.say(line)
    player.say("no sun on the fall, I told you")
    walk = _talk(player).walk
    assert walk is not None
    assert walk.facts.light == "open shade"


def test_no_sun_keeps_a_darker_light() -> None:
    """Under trees "no sun" says nothing new: open shade would be brighter than it is."""
    player = Player()
    for line in ("start", SETTINGS, "1", "1", "under dense trees"):
        player.say(line)
    before = _talk(player).walk
    player.say("no sun here, as I said")
    after = _talk(player).walk
    assert before is not None
    assert after is not None
    assert after.facts.light == before.facts.light == "dense canopy"


def test_no_sun_changes_the_forecast() -> None:
    """While a visit is planned a clear forecast gives way to shade on the fall."""
    player = Player()
    player.say("going to a fall tomorrow, forecast says clear and sunny")
    player.say("12 m tall")
    player.say("no sun on it at that hour")
    walk = _talk(player).walk
    assert walk is not None
    assert walk.trip.forecast == "open shade"


@pytest.mark.parametrize("light", ["full sun", "hazy sun", "snow in the sun"])
def test_sun_that_is_gone_takes_every_sunny_light_away(light: str) -> None:
    """Snow in the sun lies in no sun then, either."""
    player = Player()
    player.say(f"{SETTINGS}, {light}")
    player.say("no sun on it now")
    walk = _talk(player).walk
    assert walk is not None
    assert walk.facts.light == "open shade"


@pytest.mark.parametrize(
    ("text", "language"),
    [
        ("sun full on the fall", "en"),
        ("Sonne voll auf dem Fall", "de"),
        ("Sonne frontal aufs Wasser", "de"),
        ("die Sonne steht genau auf dem Wasser", "de"),
        ("Jetzt kommt die Sonne durch und steht genau auf dem Wasser", "de"),
        ("el sol da de lleno en la cascada", "es"),
    ],
)
def test_sun_right_on_the_water_is_full_sun(text: str, language: str) -> None:
    """However it gets there."""
    assert read(glossed(text, language)).light == "full sun"
