"""A lone length, or paces, answer how far the water is; an unsure number chooses an option."""

from __future__ import annotations

import pytest

from bot.dialogue.context import Conversation
from bot.dialogue.meaning.said import Said
from bot.dialogue.numbered_reply import numbered
from bot.dialogue.questions import QUESTIONS
from bot.dialogue.reading import read
from bot.dialogue.reading.foreign import glossed
from bot.dialogue.reading.paces import answered
from tests.dialogue.player import Player


def _talk(player: Player) -> Conversation:
    """What the bot keeps of the talk."""
    assert player.context is not None
    return player.context.conversation


_FAR = frozenset({"distance_m"})


@pytest.mark.parametrize(
    ("text", "language", "distance_m"),
    [
        ("1.5m ok?? what do i press", "en", 1.5),
        ("don't know like 2 steps away?? there's a mossy rock", "en", 1.5),
        ("3 steps", "en", 2.25),
        ("i said 2 steps. the rock is wet", "en", 1.5),
        ("water is like 1 or 2m away", "en", 1.5),
        ("drei Schritte", "de", 2.25),
        ("so drei schritte.. vielleicht 2,5m", "de", 2.5),
        ("3 m ok? was drück ich", "de", 3.0),
        ("2 pasos", "es", 1.5),
        ("unos 3 m, vale?", "es", 3.0),
        ("what is 5 m in feet?", "en", None),
        ("5 m of rope is ok?", "en", None),
        ("3 m or 4 m away", "en", None),
    ],
)
def test_how_far(text: str, language: str, distance_m: float | None) -> None:
    """The one length whose clause says nothing else is the answer."""
    assert read(glossed(text, language), expecting=_FAR).distance_m == distance_m


def test_steps_that_answer_nothing_stay_steps() -> None:
    """Only a whole answer is made metres, and only where no length stands beside."""
    assert answered("two steps down to the pool") == "two steps down to the pool"
    assert answered("3 steps, 2 m") == "3 steps, 2 m"
    assert read("like 2 or 9 m away").distance_m != 5.5


def test_the_length_beside_a_question_answers() -> None:
    """A length and a question in one message are both heard."""
    player = Player()
    for line in ("deutsch", "start", "1 m hoch"):
        player.say(line)
    player.say("so drei schritte.. vielleicht 2,5m. vorne liegt ein stein, is das wichtig?")
    walk = _talk(player).walk
    assert walk is not None
    assert walk.facts.distance_m == 2.5


@pytest.mark.parametrize(
    ("text", "language", "value"),
    [
        ("um not sure, 2 i think. it says aps somewhere", "en", "aps_c"),
        ("öhm weiß nich, 2 glaub ich. steht irgendwo aps drauf", "de", "aps_c"),
        ("no sé, 2 creo", "es", "aps_c"),
        ("i think 2 years old", "en", None),
        ("not sure, 2 or 3", "en", None),
        ("maybe 3 m away", "en", None),
    ],
)
def test_who_is_unsure_chooses(text: str, language: str, value: str | None) -> None:
    """Words of doubt before the number of an option take nothing from it."""
    found = numbered(QUESTIONS["format"], Said(glossed(text, language), text, language))
    assert (None if found is None else found.value) == value
