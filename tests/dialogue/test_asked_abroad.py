"""Questions and replies of German and Spanish walks, each where it was asked."""

from __future__ import annotations

from copy import deepcopy
from functools import cache
from typing import Final

import pytest

from tests.dialogue.player import Player
from tests.dialogue.walked import keys_of, known, walked

_TOLD: Final = {
    "de": (
        "deutsch",
        "12 m hoch, 18 m weg, Fels bei 1,5 m",
        "Vollformat 24-70, Stativ, Polfilter, 3-Stufen-ND",
    ),
    "es": (
        "español",
        "12 m de alto, a 18 m, roca a 1,5 m",
        "full frame 24-70, trípode, polarizador, nd de 3 pasos",
    ),
}


@cache
def _at(language: str, *replies: str) -> Player:
    player = Player()
    for line in (*_TOLD[language], *replies):
        player.say(line)
    return player


def _keys(player: Player, text: str) -> tuple[str, ...]:
    return deepcopy(player).say(text)[0].keys


@pytest.mark.parametrize(
    ("language", "text", "key"),
    [
        ("de", "Kann ich das Weiß nachher am Rechner zurückholen?", "asked.recover_white"),
        ("es", "¿Lo quemado se recupera después en la compu?", "asked.recover_white"),
        ("de", "Warum der Selbstauslöser?", "asked.timer"),
        ("es", "¿Por qué el temporizador de 2 s?", "asked.timer"),
        ("de", "Darf ich den Zweig abbrechen?", "asked.gardening"),
        ("es", "¿Puedo cortar esa ramita?", "asked.gardening"),
        ("de", "Mir laufen dauernd Wanderer durchs Bild, was tun?", "asked.people"),
        ("es", "¿Qué hago con los turistas que salen en la foto?", "asked.people"),
        ("de", "Wie bekomme ich mehr Vordergrund ins Bild?", "asked.foreground"),
        ("es", "¿Cómo meto más primer plano?", "asked.foreground"),
        ("de", "Was meinst du mit Abbruchkante?", "asked.lip_word"),
        ("es", "no sé qué es la cima", "asked.lip_word"),
        ("de", "Um wie viel soll ich abdunkeln?", "asked.how_much_darker"),
        ("es", "¿Cuánto más oscuro tengo que ir?", "asked.how_much_darker"),
        ("de", "Wie trockne ich die Sachen nachher?", "asked.dry_gear"),
        ("es", "¿Cómo seco el equipo después?", "asked.dry_gear"),
        ("de", "Was mach ich, wenn es zu regnen anfängt?", "asked.rain_now"),
        ("es", "qué hago si empieza a llover", "asked.rain_now"),
        ("de", "Kann ich jetzt näher ran?", "lens.go_back"),
        ("es", "¿Cómo sé si el río va a crecer?", "asked.rising_signs"),
        ("de", "Wie weit muss ich vom Ufer wegbleiben?", "asked.keep_back"),
        ("es", "¿Cuándo pongo el ND?", "asked.nd_plain"),
        ("es", "¿Qué quiere decir que parpadea?", "explain.blink"),
        ("de", "Was meinst du mit blinken?", "explain.blink"),
        ("de", "in welche richtung den pol drehen", "asked.polariser_turn"),
    ],
)
def test_a_question_has_its_answer_behind_the_base_settings(
    language: str, text: str, key: str
) -> None:
    """Whatever is asked next by the walk, and however much of it a gloss keeps."""
    assert key in _keys(_at(language, "1", "1"), text)


@pytest.mark.parametrize(
    ("language", "text"),
    [
        ("de", "Welche Zeit für ganz weiches Wasser?"),
        ("es", "cuanto tiempo para que el agua quede como seda"),
    ],
)
def test_the_time_is_of_the_look_that_is_named(language: str, text: str) -> None:
    """A question is glossed as a whole, yet its words say which look."""
    said = deepcopy(_at(language, "1", "1")).say(text)[0].body
    assert said.startswith(("Seidig", "Sedosa"))


@pytest.mark.parametrize(
    ("language", "replies", "text", "key"),
    [
        ("de", (), "nur blätter oben", "ask.sides"),
        ("de", (), "Oben sind nur Bäume.", "ask.sides"),
        ("es", ("1",), "Está limpio todo, che", "base.settings"),
        ("de", ("1",), "Ein Zweig ragt links rein, was tun?", "sides.twig"),
        ("de", ("1",), "ich glaub da ist unten rechts was helles, ein papier", "sides.bright"),
        ("es", ("1",), "hay una rama que se mete por la izquierda, ¿qué hago?", "sides.twig"),
        (
            "es",
            ("1",),
            "Abajo a la derecha hay una piedra muy brillante. ¿Qué hago?",
            "sides.bright",
        ),
        ("es", ("1", "1"), "si pero solo una manchita en el agua", "highlights.darker"),
    ],
)
def test_a_reply_in_own_words_is_one(
    language: str, replies: tuple[str, ...], text: str, key: str
) -> None:
    """In few words an option that is named is meant, whatever topic is near."""
    assert key in _keys(_at(language, *replies), text)


@pytest.mark.parametrize(
    "text",
    [
        "jetzt 600 mm drauf, der nächste Stein ist bei 50 cm und kein Stativ",
        "ahora 600 mm, la roca más cercana está a 50 cm y no tengo trípode",
    ],
)
def test_beside_a_number_that_is_refused_all_else_is_kept(text: str) -> None:
    """By who has not chosen a language, too: the message is read as it is written."""
    player = walked()
    assert keys_of(player, text)[0] == "out_of_domain_below"
    facts = known(player).facts
    assert (facts.focal_mm, facts.nearest_m, facts.has_tripod) == (600.0, None, False)
