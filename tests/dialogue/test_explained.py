"""Emergencies end in plain words, and only for those whom the words are of."""

from __future__ import annotations

import pytest

from bot.dialogue.danger.explained import explained
from bot.dialogue.danger.kinds import DangerKind
from bot.dialogue.danger.replies import Safe, who_is_safe
from tests.dialogue.player import Player


def held_after(*lines: str) -> bool:
    """Whether an emergency is held after these lines."""
    player = Player()
    for line in lines:
        player.say(line)
    assert player.context is not None
    return player.context.conversation.emergency is not None


@pytest.mark.parametrize(
    ("told", "over"),
    [
        ("she cut her hand, bleeding", "stopped bleeding, all ok"),
        ("she cut her hand, bleeding", "bandaged, we're all fine"),
        ("someone is hurt", "no worries, all good"),
        ("someone is hurt", "everything sorted, everyone's okay"),
        ("someone is hurt", "all cool now"),
        ("my friend fell and his wrist looks odd", "all good, he is fine, just a bruise"),
        ("mi amigo se cayó y sangra", "todo bien, solo un rasguño"),
        ("dog fell in the river", "dog is out and fine"),
        ("I'm shivering", "warm again"),
        ("I'm shivering", "im in car heater on"),
        ("she is shivering and mumbling", "warm now, in the hut"),
        ("my wife hasn't come back", "she's here now"),
        ("my wife hasn't come back", "never mind she is here"),
        ("my wife hasn't come back", "we're all at the car"),
        ("we are lost", "ok I know where we are, at the bridge"),
        ("mein Freund ist ins Wasser gefallen", "er ist draußen, alles gut"),
        ("ich zittere vor Kälte", "wieder warm"),
        ("ich zittere vor Kälte", "sitz im Auto, Heizung an"),
        ("ich zittere vor Kälte", "geht schon wieder"),
        ("ich hab mir die Hand aufgeschnitten, es blutet", "Pflaster drauf, alles gut"),
        ("ich hab mir die Hand aufgeschnitten, es blutet", "blutet nicht mehr, alles ok"),
        ("es donnert", "sind im Auto"),
        ("meine Frau ist nicht zurück", "jetzt ist sie hier"),
        ("wir haben uns verlaufen", "sind wieder am Weg"),
        ("das Wasser steigt und ist braun", "wir sind oben an der Straße"),
        ("estoy temblando de frío", "ya entré en calor"),
        ("me corté la mano y sangra", "ya no sangra, todo bien"),
        ("mi mujer no ha vuelto", "ya está aquí"),
        ("mein Freund ist gestürzt und blutet", "alles gut, nur ein Kratzer"),
        ("mein Freund ist gestürzt und blutet", "alles ok, ist nur ein blauer Fleck"),
        ("my friend fell and he bleeds", "all good, only a scratch"),
        ("das Wasser steigt und ist braun", "alle sieben da, oben auf der Straße"),
        ("das Wasser steigt und ist braun", "wir sind alle raus, keinem fehlt was"),
        ("el agua sube y baja marrón", "sí, ya estamos todos arriba en el camino, nadie herido"),
        ("el agua sube y baja marrón", "ya salimos todos del barranco, no falta nadie"),
        ("el agua sube y baja marrón", "todos contados, siete, en la carretera"),
    ],
)
def test_plain_words_end_it(told: str, over: str) -> None:
    """A cold person need not find the one word that the bot waits for."""
    assert held_after("start", told)
    assert not held_after("start", told, over)


@pytest.mark.parametrize(
    ("told", "said"),
    [
        ("my friend fell into the pool", "all good apart from the blood"),
        ("my friend fell and he bleeds", "all good, just a scratch but he won't wake"),
        ("my friend fell and hit his head", "just a bruise on the head"),
        ("mein Freund ist gestürzt und blutet", "nur ein Kratzer am Kopf"),
        ("das Wasser steigt und ist braun", "alle da außer Jonas"),
        ("el agua sube y baja marrón", "todos menos Lucía"),
        ("el agua sube y baja marrón", "estamos todos pero Pedro no responde"),
        ("my friend fell into the pool", "we're at the car"),
        ("my friend fell into the pool", "back at the car"),
        ("my wife hasn't come back", "I'm at the car"),
        ("my wife hasn't come back", "we're back at the car"),
        ("my wife hasn't come back", "found the trail"),
        ("my wife hasn't come back", "she is here in the water"),
        ("she is shivering and mumbling", "better"),
        ("she is shivering and mumbling", "I'm warm again"),
        ("mein Freund ist ins Wasser gefallen", "alles gut bis auf das Blut"),
        ("meine Frau ist nicht zurück", "wir sind am Auto"),
        ("mi amigo cayó al agua", "todo bien menos la sangre"),
        ("mi mujer no ha vuelto", "estamos en el coche"),
    ],
)
def test_half_good_news_ends_nothing(told: str, said: str) -> None:
    """Where who writes is finds nobody, and what is excepted is asked about."""
    assert held_after("start", told, said)


@pytest.mark.parametrize(
    ("text", "kind", "safe"),
    [
        ("I'm warm again", DangerKind.COLD, Safe.OWN),
        ("she is warm again", DangerKind.COLD, Safe.ONE),
        ("warm again, he fell", DangerKind.COLD, None),
        ("warm again?", DangerKind.COLD, None),
        ("it was a truck", DangerKind.THUNDER, Safe.RETRACTED),
        ("it was a truck", DangerKind.HURT, None),
    ],
)
def test_what_only_one_kind_can_have(text: str, kind: DangerKind, safe: Safe | None) -> None:
    """Whose it is, and nothing for another danger."""
    assert explained(text, kind) is safe


def test_comfort_alone_says_nothing() -> None:
    """It stands before an answer; alone it is none."""
    assert who_is_safe("no worries, all good") is Safe.ALL
    assert who_is_safe("never mind") is not Safe.ALL


def test_an_emergency_of_an_older_kind_ends_as_others_do() -> None:
    """A kind that is known no more is ended by all of them being safe."""
    player = Player()
    player.say("someone is hurt")
    assert player.context is not None
    conversation = player.context.conversation
    assert conversation.emergency is not None
    older = conversation.emergency.model_copy(update={"kind": "older"})
    conversation = conversation.model_copy(update={"emergency": older})
    player.context = player.context.model_copy(update={"conversation": conversation})
    player.say("all safe")
    assert player.context.conversation.emergency is None


def test_good_news_of_everybody_opens_a_closed_place_too() -> None:
    """Who stood at the lip before the flood came is with the others: nobody is asked for again."""
    told = ("start", "12 m tall, 15 m away, rock at 1.5 m", "one of them wants to climb to the lip")
    player = Player()
    for line in (*told, "the water is rising and brown", "all seven are on the path, nobody hurt"):
        player.say(line)
    assert player.context is not None
    assert player.context.conversation.emergency is None
    assert not player.context.conversation.closed
