"""What people tell of the frame's edges, before or beside the question about them."""

from __future__ import annotations

import pytest

from bot.dialogue.reading.edges import edges_told
from tests.dialogue.player import Player


@pytest.mark.parametrize(
    ("text", "told"),
    [
        ("leaves come right over the top so there's no sky in it", {"top": "covered"}),
        ("the frame's clean all round, leaves above the lip", {"top": "covered", "sides": "clean"}),
        ("there is a strip of white sky along the top", {"top": "sky"}),
        ("sky peeking through up there", {"top": "sky"}),
        ("lip is touching the edge", {"top": "lip"}),
        ("nothing bright at the edges I think", {"top": "covered", "sides": "clean"}),
        ("corners are all clean", {"sides": "clean"}),
        ("a branch sticking in from the left", {"sides": "twig"}),
        ("a branch in the left corner I'll move over a bit okay it's gone", {"sides": "clean"}),
        ("top is covered with trees, a twig on the right that i cut off by zooming a bit",
         {"top": "covered", "sides": "clean"}),
        ("bright pebble in the left corner which I moved away from", {"sides": "clean"}),
        ("something white on the right side", {"sides": "bright"}),
    ],
)  # fmt: skip
def test_edges_are_read(text: str, told: dict[str, str]) -> None:
    """Each check is answered by the option that the words mean."""
    assert edges_told(text) == told


@pytest.mark.parametrize(
    "text",
    [
        "white patches blink at the top",
        "the left corner is soft",
        "can I stand at the edge with the branch?",
        "branches smeared on the right side",
        "f/11 at the top of the trail",
        "I'd like more sky",
    ],
)
def test_other_talk_is_no_composition(text: str) -> None:
    """Blinking, softness and questions about where to stand answer no check."""
    assert edges_told(text) == {}


_FALL = {
    "en": "12 m tall, 15 m away, rock at 1.5 m, full frame, 24-70",
    "de": "Wir sind da: 12 m hoch, 15 m weg, Fels bei 1,5 m, Vollformat und 24-70",
    "es": "estamos aquí: 12 m de alto, a 15 m, una roca a 1,5 m, full frame con 24-70",
}


@pytest.mark.parametrize(
    ("language", "text", "told"),
    [
        ("de", "Oben sind Blätter, glaub ich", {"top": "covered"}),
        ("de", "oben hab ich nur Laub", {"top": "covered"}),
        ("de", "am oberen Rand ist Fels", {"top": "covered"}),
        ("de", "Oben ist ein Streifen weißer Himmel zu sehen", {"top": "sky"}),
        ("de", "oben sieht man noch ein bisschen Himmel", {"top": "sky"}),
        (
            "de",
            "oben schaut etwas heller Himmel durch die Bäume, links und rechts ist es sauber",
            {"top": "sky", "sides": "clean"},
        ),
        ("es", "hojas arriba", {"top": "covered"}),
        ("es", "en el borde superior hay roca", {"top": "covered"}),
        ("es", "arriba se ve un cachito de cielo blanco", {"top": "sky"}),
    ],
)
def test_the_top_in_other_languages(language: str, text: str, told: dict[str, str]) -> None:
    """The top edge in words, as it is asked about."""
    player = Player()
    player.say(_FALL[language])
    player.say(text)
    assert player.context is not None
    assert player.context.conversation.walk is not None
    assert dict(player.context.conversation.walk.checks).items() >= told.items()


@pytest.mark.parametrize(
    ("language", "lines", "sides"),
    [
        ("en", ("leaves", "leaves at the top"), None),
        ("en", ("leaves", "a branch on the left side", "moved left, now it's gone"), "clean"),
        ("de", ("Laub", "Blätter oben"), None),
        ("de", ("Laub", "An der rechten Seite hängt ein Ast rein"), "twig"),
        ("de", ("Laub", "da schaut so ein Ast von rechts rein"), "twig"),
        ("de", ("Laub", "links ragt ein zweig rein",
                "hab mich nach links gestellt, jetzt ist er weg"),
         "clean"),
        ("de", ("Laub", "links ragt ein zweig rein",
                "zweig ist jetzt weg ich bin einen halben schritt rüber"),
         "clean"),
        ("de", ("Laub", "die Seiten sind frei"), "clean"),
        ("es", ("hojas", "hojas arriba"), None),
        ("es", ("hojas", "a la derecha se me mete una rama"), "twig"),
        ("es", ("hojas", "se asoma una rama por la izquierda", "me moví un poco y ya no se ve"),
         "clean"),
        ("es", ("Arriba hay hojas; a los lados está limpio",), "clean"),
    ],
)  # fmt: skip
def test_the_sides_in_other_languages(
    language: str, lines: tuple[str, ...], sides: str | None
) -> None:
    """What comes in from a side, and that it went out by a step: no danger, and no other edge."""
    player = Player()
    for line in (_FALL[language], *lines):
        player.say(line)
    assert player.context is not None
    conversation = player.context.conversation
    assert conversation.doubted is None
    assert conversation.emergency is None
    assert conversation.walk is not None
    assert conversation.walk.checks.get("sides") == sides


@pytest.mark.parametrize(
    "text",
    [
        "jetzt ist er weg",
        "mein Bruder ist jetzt weg",
        "now he is gone",
        "ich bin rüber, jetzt ist mein Freund weg",
    ],
)
def test_somebody_who_is_gone_is_no_twig(text: str) -> None:
    """Looking at the frame's edges, too, somebody may be missing."""
    player = Player()
    for line in (_FALL["en"], "leaves", "a branch on the left side"):
        player.say(line)
    player.say(text)
    assert player.context is not None
    conversation = player.context.conversation
    assert conversation.emergency is not None or conversation.doubted is not None


def _keys(player: Player, text: str) -> list[str]:
    return [key for said in player.say(text) for key in said.keys]


def test_edges_told_ahead_are_not_asked() -> None:
    """Who tells of both edges before they are asked gets the base settings at once."""
    player = Player()
    for line in ("start", "12 m tall, 18 m away, rock at 1.5 m", "leaves above the lip"):
        player.say(line)
    player.say("nothing at the edges")
    keys = _keys(player, "full frame, 24-105, tripod, overcast")
    assert not {"ask.top", "ask.sides"} & set(keys)


def test_a_fault_told_ahead_gets_its_remedy() -> None:
    """A twig that is told is answered as if it had been asked about."""
    player = Player()
    player.say("start")
    assert "sides.twig" in _keys(player, "a twig comes in from the left")


def test_after_the_frame_edges_are_no_news() -> None:
    """Without a walk, or once the settings are given, nothing is noted."""
    assert "edges.noted" not in _keys(Player(), "corners are clean")


def test_the_answer_to_one_check_may_tell_of_the_other() -> None:
    """Leaves above and clean corners in one message answer both, asked or not."""
    player = Player()
    for line in ("start", "12 m tall, 18 m away, rock at 1.5 m", "full frame, 24-105, tripod"):
        player.say(line)
    assert "ask.sides" not in _keys(player, "leaves over the top, corners are clean")


@pytest.mark.parametrize(
    ("text", "asked", "told"),
    [
        ("moved over a bit, it's gone", "sides", {"sides": "clean"}),
        ("moved left, a tree covers it now. polariser first?", "top", {"top": "covered"}),
        ("nothing bright, just leaves", "top", {"top": "covered"}),
        ("nothing bright, just leaves", "", {}),
        ("it's gone", "blink", {}),
        ("left corner had a can, which I took away", "top", {"sides": "clean"}),
        ("edges fine", "top", {"top": "covered", "sides": "clean"}),
        ("clouds, and a bit of leaves above", "sides", {}),
    ],
)
def test_an_asked_edge_is_settled_without_its_name(
    text: str, asked: str, told: dict[str, str]
) -> None:
    """What names no edge is of the one that was asked about; leaves overhead are none."""
    assert edges_told(text, asked) == told


def test_clean_edges_are_good_news_after_the_frame() -> None:
    """A fault at an edge then has its own answer."""
    player = Player()
    for line in ("start", "12 m tall, 18 m away, rock at 1.5 m", "full frame, 24-105, tripod"):
        player.say(line)
    player.say("edges fine")
    assert "edges.noted" in _keys(player, "borders are clean, I checked again")
    assert "edges.noted" not in _keys(player, "a twig comes in from the left")
