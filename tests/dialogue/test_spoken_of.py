"""What speaks of danger without being in it, and leave that is asked for a bad place."""

from __future__ import annotations

import pytest

from bot.dialogue.danger import DangerKind, read_danger
from bot.dialogue.danger.cry import Cry, cry_of
from bot.dialogue.danger.permission import leave_asked
from bot.dialogue.danger.spoken_of import Talk, only_talk, without_talk
from tests.dialogue.player import Player


@pytest.mark.parametrize(
    "text",
    [
        "where can't I stand?",
        "where am i not allowed to stand",
        "where must I not stand at a waterfall",
        "where should nobody stand",
        "what places are off limits",
        "is there anywhere I can't set up my tripod",
        "what spots should I avoid at the lip",
        "so I can't stand where exactly?",
        "wo darf ich nicht stehen",
        "wo darf man nicht hin",
        "wo ist es verboten zu stehen",
        "dónde no puedo ponerme",
        "en qué sitios no se puede estar",
    ],
)
def test_who_asks_where_not_to_stand_is_told(text: str) -> None:
    """Who asks that goes nowhere bad: no alarm, the places are named."""
    assert read_danger(text) is None
    player = Player()
    player.say("start")
    (said,) = player.say(text)
    assert said.keys[0] == "precaution.where_not"


@pytest.mark.parametrize(
    "text",
    [
        "note for home: where I am, and if I'm not back by six call the rangers",
        "I leave a note saying where I am and if I'm not back by six call mountain rescue",
        "told my wife: if I am not back by eight, call the ranger",
        "call the rangers if we are not back by nine",
        "my sister knows where I am and calls if I am late",
        "i texted my mom where we are and when to call for help",
        "Zettel für daheim: wo ich bin, und wenn ich bis 18 Uhr nicht da bin, Bergrettung rufen",
        "wenn ich um sechs nicht zurück bin, ruf die Bergrettung",
        "dejo una nota en casa: dónde estoy y si no vuelvo a las seis llamad al 112",
        "si no he vuelto a las seis, llama a emergencias",
    ],
)
def test_a_note_for_home_is_praised(text: str) -> None:
    """That somebody at home knows when to call is good practice, and never an alarm."""
    assert read_danger(text) is None
    (said,) = Player().say(text)
    assert said.keys[:2] == ("precaution.note_home", "asked.tell_home")


@pytest.mark.parametrize(
    ("text", "kind"),
    [
        ("where can I not stand? my friend fell in", DangerKind.IN_WATER),
        ("if I'm not back by six call 112, I'm lost", DangerKind.LOST),
        ("where the hell are we, we cannot find the trail", DangerKind.LOST),
        ("nobody knows where I am, I am lost", DangerKind.LOST),
        ("ehrlich gesagt haben wir beide keinen schimmer wo wir sind", DangerKind.LOST),
        ("I'm on the lip and focus on the edge", DangerKind.LIP),
    ],
)
def test_danger_beside_such_talk_is_heard(text: str, kind: DangerKind) -> None:
    """Only the talk itself is left out; all else is read."""
    danger = read_danger(text)
    assert danger is not None
    assert danger.kind is kind


@pytest.mark.parametrize(
    "text",
    ["niemand ist im Wasser", "nadie está en el agua", "kann ich auf die Kante scharfstellen",
     "can I focus on the lip", "puedo enfocar al borde"],
)  # fmt: skip
def test_nobody_and_the_picture_are_no_danger(text: str) -> None:
    """That nobody is there, and focus on an edge, alarm nobody."""
    assert read_danger(text) is None


def test_talk_is_told_from_the_rest() -> None:
    """What stands beside it is kept; without any of its words nothing is looked for."""
    assert without_talk("f/11, 1/4 s") == ("f/11, 1/4 s", frozenset())
    assert without_talk("what is it") == ("what is it", frozenset())
    assert only_talk(f"where may I not stand? {'word ' * 9}") == frozenset()
    assert only_talk("hi linn, where may I not stand?") == {Talk.WHERE_NOT}
    (said,) = Player().say("where may I not stand? 12 m tall, 18 m away")
    assert "precaution.where_not" not in said.keys
    assert "precaution.where_not" not in Player().say("niemand ist im Wasser")[0].keys


@pytest.mark.parametrize(
    ("text", "kind"),
    [
        ("darf ich auf die Abbruchkante", DangerKind.LIP),
        ("darf ich auf die Abbruchkante?", DangerKind.LIP),
        ("ist die Kante erlaubt", DangerKind.LIP),
        ("wie nah darf ich an die Kante", DangerKind.LIP),
        ("puedo ir al borde", DangerKind.LIP),
        ("¿puedo subirme al borde?", DangerKind.LIP),
        ("hasta dónde puedo acercarme al borde", DangerKind.LIP),
        ("is the rim ok to shoot from", DangerKind.LIP),
        ("darf ich ins Wasser", DangerKind.WADING),
        ("12 m tall, 18 m away, which settings from the lip?", DangerKind.LIP),
        ("welche Blende von der Kante?", DangerKind.LIP),
        ("qué ajustes desde el labio", DangerKind.LIP),
        ("my kid is near the edge", DangerKind.LIP),
        ("mein Sohn steht an der Kante", DangerKind.LIP),
        ("mi hija juega cerca del borde", DangerKind.LIP),
        ("kann ich mich an den Rand stellen?", DangerKind.LIP),
        ("darf ich zum Rand rauf?", DangerKind.LIP),
        ("Mi hija viene y tiene 9 años. ¿Puede meterse al agua para la foto?", DangerKind.WADING),
        ("¿pueden los niños entrar en el río?", DangerKind.WADING),
        ("ich möchte am oberen Rand stehen", DangerKind.LIP),
    ],
)
def test_leave_for_a_bad_place_is_heard(text: str, kind: DangerKind) -> None:
    """Who asks whether they may go there is stopped, in each language."""
    danger = read_danger(text)
    assert danger is not None
    assert danger.kind is kind


@pytest.mark.parametrize(
    "text",
    [
        "¿puede entrar más agua en el encuadre?",
        "soll ich am Rand mehr stehen lassen",
        "kann ich zum Rand vom Bild mehr Platz lassen",
        "darf ich am Rand des Weges stehen",
        "kann ich die Kante im Bild lassen",
        "wir wollen nicht an die Kante",
        "puedo dejar hojas en el borde de la imagen",
        "darf ich ein Foto machen",
        "18 m from the lip",
        "the tree is near the edge of the frame",
        "der junge im bild ist von der kante abgeschnitten",
    ],
)
def test_no_leave_is_asked(text: str) -> None:
    """The picture's edges, and who stays away, ask no leave."""
    assert leave_asked(text) is None


@pytest.mark.parametrize(
    ("text", "cry"),
    [
        *((text, Cry.SHOUTED) for text in ("help!!", "HELP!!!", "heeelp", "help help", "hilfe!!",
          "¡ayuda!!", "socorro", "auxilio", "Notfall", "help us now", "schnell, hilfe")),
        *((text, Cry.PLAIN) for text in ("help", "help!", "please help me", "i need help",
          "hilfe", "ich brauche hilfe", "hilf mir", "ayuda", "ayúdame", "necesito ayuda")),
        *((text, None) for text in ("i need help with my settings", "please", "now", "commands",
          "Hilfe, mein Bruder ist weg", "")),
    ],
)  # fmt: skip
def test_bare_calls_for_help(text: str, cry: Cry | None) -> None:
    """A shout leans to danger; a plain word may be looked up."""
    assert cry_of(text) is cry
