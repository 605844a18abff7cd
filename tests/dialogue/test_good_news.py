"""Good news ends an emergency only where nothing else stands beside it."""

from __future__ import annotations

import pytest

from bot.dialogue.danger import anyone_out_there, in_danger, who_is_safe
from bot.dialogue.danger.replies import Safe
from tests.dialogue.player import Player

IN_THE_WATER = ("12 m tall, 18 m away, rock at 1.5 m", "help, my friend fell into the water")


@pytest.mark.parametrize(
    "text",
    [
        "all good, he's breathing",
        "all clear, he just lies there",
        "we're fine. the kids went to look for her",
        "we're all together on the island",
        "all of us are up on the ledge",
        "we are back on the path minus Leo",
        "everyone fine apart from a broken arm",
        "we're all ok and he's in the water again",
        "all good we go back in for the bag",
        "all good now I'm going back to the edge",
        "niemand verletzt, einer fehlt",
        "uns geht es gut wir sitzen auf der insel",
        "ja alle sicher, ich geh nochmal runter zum stativ",
        "estamos bien en una roca en medio del río",
        "todo bien, solo está inconsciente",
        "estamos bien, se lo llevó el agua",
        "sí, todos a salvo, bajo otra vez por el trípode",
    ],
)
def test_trouble_beside_good_news_is_asked_about(text: str) -> None:
    """Words that calm are known ones: what else is said may be worse than any list knows."""
    assert who_is_safe(text) is not Safe.ALL
    player = Player()
    for line in (*IN_THE_WATER, text):
        player.say(line)
    assert player.context is not None
    assert player.context.conversation.emergency is not None


@pytest.mark.parametrize(
    "text",
    [
        "all good, gloves are on now",
        "ja alles guat, handschuh san jetzt drauf",
        "todo bien, guantes puestos",
        "we're all safe now, thank you so much",
        "everybody is safe, we're sitting in the car with the heating on",
        "all safe, everybody is out of the water",
        "we are all fine, that was scary",
        "alle wohlauf, sitzen im Auto mit Heizung",
        "alle heil am Auto, fahren heim",
        "ya estamos todos en el camino, qué susto",
        "sí, todos bien, el perro también",
    ],
)
def test_small_words_beside_good_news_leave_it_good(text: str) -> None:
    """Nobody is asked again for a cup of tea."""
    assert who_is_safe(text) is Safe.ALL


@pytest.mark.parametrize(
    "text",
    [
        "nobody hurt, one missing",
        "niemand verletzt, einer fehlt",
        "nadie herido, falta uno",
        "we go back in for the bag",
        "ich geh nochmal runter zum Bach",
        "ya bajamos al río",
    ],
)
def test_a_nobody_with_an_exception_calms_nothing(text: str) -> None:
    """One is missing; or somebody goes where nobody should be."""
    assert anyone_out_there(text) is not False
    assert in_danger(text, others=True) is not False


@pytest.mark.parametrize(
    "text", ["I stepped back", "wir gehen runter zum Auto", "ya bajamos al coche", "nobody at all"]
)
def test_a_step_back_stays_one(text: str) -> None:
    """To the car, or simply away."""
    assert anyone_out_there(text) is False
