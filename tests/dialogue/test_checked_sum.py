"""A claimed difference of brightness is checked: yes or no with the numbers, and no order."""

from __future__ import annotations

import pytest

from bot.dialogue.meaning.claims import claim_in
from bot.dialogue.meaning.said import Said
from bot.dialogue.reading.foreign import glossed
from tests.dialogue.player import Player
from tests.dialogue.test_two_settings import in_the_gorge
from tests.dialogue.walked import keys_of, known, walked


@pytest.mark.parametrize(
    ("language", "line", "told"),
    [
        (
            "en",
            "f/8 to f/16 is two stops, isn't it?",
            "Yes: f/16, ISO 100, 1/4 s is 2 stops darker",
        ),
        ("en", "1/4 to 1/30 is three stops, right?", "Yes: f/8, ISO 100, 1/30 s is 3 stops darker"),
        (
            "en",
            "isn't f/11 two stops darker than f/8?",
            "No: f/11, ISO 100, 1/4 s is 1 stop darker",
        ),
        ("en", "f/11 1/2 is as bright as f/8 1/4, correct?", "Yes, equally bright: f/11"),
        ("en", "so 1/2 at f/11 gives the same brightness?", "Yes, equally bright: f/11"),
        ("en", "is 1/8 at iso 200 the same as 1/4 at iso 100?", "Yes, equally bright"),
        (
            "en",
            "isn't that brighter?",
            "Yes: f/8, ISO 100, 1/4 s is 2 1/3 stops brighter than f/13",
        ),
        ("en", "so that's 3 stops, right?", "No: f/8, ISO 100, 1/4 s is 2 1/3 stops brighter"),
        ("en", "is that a stop brighter than before?", "No: f/8, ISO 100, 1/4 s is 2 1/3 stops"),
        ("en", "that'd be 2 over", "No: f/8, ISO 100, 1/4 s is about right"),
        ("en", "wouldn't that be 2 stops too bright?", "about right in this light"),
        ("en", "is that too dark?", "about right in this light"),
        (
            "en",
            "wide frame was fine at f11 1/6 iso100 with the CPL on. that'd be 3.3 over",
            (
                "Yes: f/8, ISO 100, 1/4 s is 3 1/3 stops brighter than f/11, ISO 100, 1/6 s with"
                " polariser"
            ),
        ),
        ("de", "1/4 zu 1/30 sind drei Stufen, stimmts?", "Ja: f/8, ISO 100, 1/30 s"),
        ("de", "ist das nicht heller?", "Ja: f/8, ISO 100, 1/4 s ist"),
        ("de", "das wären 2 Stufen drüber", "Nein: f/8, ISO 100, 1/4 s stimmt"),
        ("de", "ist f/11 1/2 gleich hell wie f/8 1/4?", "Ja, gleich hell"),
        ("es", "de 1/4 a 1/30 son tres pasos, ¿verdad?", "Sí: f/8, ISO 100, 1/30 s queda 3 pasos"),
        ("es", "¿no es más claro eso?", "Sí: f/8, ISO 100, 1/4 s queda"),
        ("es", "serían 2 pasos de más", "No: f/8, ISO 100, 1/4 s es más o menos lo justo"),
        ("es", "¿f/11 1/2 es igual de claro que f/8 1/4?", "Sí, igual de claro"),
    ],
)
def test_yes_or_no(language: str, line: str, told: str) -> None:
    """The walk and its question stay: nothing was ordered, and nothing was wrong."""
    player = in_the_gorge(language)
    walk = known(player).conversation.walk
    said = player.say(line)[0]
    assert told in said.body
    assert known(player).conversation.walk == walk
    assert "ask.blink" in said.keys


def test_against_settings_that_were_given_before() -> None:
    """What was said with them belongs to them; what is as bright as they were is told."""
    player = in_the_gorge()
    player.say("f/14, 1/5 s, iso 100")
    body = player.say("That's two stops darker than the f/8 quarter you gave me, isn't it?")[0].body
    assert "Yes: f/14, ISO 100, 1/5 s is 2 stops darker than f/8, ISO 100, 1/4 s." in body
    assert "As bright as f/8, ISO 100, 1/4 s: f/14 1/5 s ISO 400." in body
    player.say("f/14, 1/5 s, iso 400")
    body = player.say("isn't that darker than the f/14 fifth at iso 100?")[0].body
    assert "No: f/14, ISO 400, 1/5 s is 2 stops brighter than f/14, ISO 100, 1/5 s." in body


def test_against_the_light() -> None:
    """What frames have shown or words told; before either it can't be known."""
    player = walked("f/8, 1/4 s, iso 100")
    assert "checked.light_unknown" in keys_of(player, "isn't that 2 stops too bright?")
    player = in_the_gorge()
    player.say("f/8, 1 s, iso 100")
    body = player.say("wouldn't that be 2 stops too bright?")[0].body
    assert "Yes: f/8, ISO 100, 1 s is 2 stops too bright in this light; 1/4 s is right." in body
    body = player.say("wouldn't that be 2 stops too dark?")[0].body
    assert "No: f/8, ISO 100, 1 s is 2 stops too bright" in body


def test_before_any_walk() -> None:
    """Two settings need no other; one alone has nothing to be held against."""
    body = Player().say("1/4 to 1/30 is three stops, right?")[0].body
    assert "1/30 s is 3 stops darker than" in body
    assert "checked" not in "".join(keys_of(Player(), "isn't that brighter?"))
    told = "10 m tall, 15 m away, boulder at 1.5 m, full frame, 24 mm prime"
    assert "checked" not in "".join(keys_of(walked(told=told), "isn't that brighter?"))


@pytest.mark.parametrize(
    ("language", "line"),
    [
        ("en", "that's 2 stops too dark"),
        ("en", "go two stops darker"),
        ("en", "can you make it two stops darker?"),
        ("en", "how do I get the same brightness?"),
        ("en", "the cliff is two stops darker, right?"),
        ("en", "will it be darker at 6?"),
        ("en", "is there more water in spring?"),
        ("en", "isn't that less sharp?"),
        ("en", "isn't it too dark already?"),
        ("en", "is that over the lip?"),
        ("en", "the 2 stop filter is in the bag"),
        ("en", "is that the 6 stop filter?"),
        ("en", "is that 2 stops of filter, right?"),
        ("de", "zwei Stufen zu dunkel"),
        ("es", "dos pasos demasiado oscuro"),
    ],
)
def test_what_claims_nothing(language: str, line: str) -> None:
    """Complaints, orders, the scene, the evening and filters are no claims of settings."""
    assert claim_in(Said(glossed(line, language), line, language)) is None
