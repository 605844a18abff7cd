"""What was told of an edge is kept whatever else the message says, and asked no more."""

from __future__ import annotations

import pytest

from bot.dialogue.danger import DangerKind
from bot.dialogue.reading import read
from bot.dialogue.reading.edges import things_told
from bot.dialogue.reading.foreign import glossed
from bot.dialogue.steps.safety import danger_here
from tests.dialogue.player import Player
from tests.dialogue.walked import TOLD, keys_of, known, turn_of

_TOLD = {
    "en": TOLD,
    "de": "12 m hoch, 18 m weg, Fels bei 1,5 m, Vollformat 24-70, Stativ",
    "es": "12 m de alto, a 18 m, roca a 1,5 m, full frame 24-70, trípode",
}


def _at(check: str, language: str = "en") -> Player:
    """Somebody who is asked about the top edge, or about the sides."""
    player = Player()
    if language != "en":
        player.say({"de": "Deutsch", "es": "español"}[language])
    player.say(_TOLD[language])
    if check == "sides":
        player.say("1")
    return player


def _checks(player: Player) -> dict[str, str]:
    walk = known(player).conversation.walk
    assert walk is not None
    return dict(walk.checks)


@pytest.mark.parametrize(
    ("language", "asked", "text", "told"),
    [
        ("en", "top", "lip just kissing the frame, bit of holly hanging in",
         (("top", "lip"), ("sides", "twig"))),
        ("en", "top", "lip's right at the edge of the frame", (("top", "lip"),)),
        ("en", "top", "it kisses the border", (("top", "lip"),)),
        ("en", "top", "a strip of bright sky between the trees", (("top", "sky"),)),
        ("en", "top", "bit of sky top left, otherwise trees", (("top", "sky"),)),
        ("en", "top", "leaves above the lip, the lip touches the edge",
         (("top", "covered"), ("top", "lip"))),
        ("en", "sides", "dead branch poking in bottom right, wet pale stone lh edge. tops fixed",
         (("top", "covered"), ("sides", "twig"), ("sides", "bright"))),
        ("en", "sides", "tree trunk down the left side, right is clean", (("sides", "twig"),)),
        ("en", "sides", "a shiny wet rock at the left", (("sides", "bright"),)),
        ("en", "sides", "fern frond in the lower right corner", (("sides", "twig"),)),
        ("en", "sides", "moved left so the twig is gone, now a white stone in the right corner",
         (("sides", "bright"),)),
        ("en", "", "one bright twig poking in on the left", (("sides", "twig"),)),
        ("en", "sides", "the branches on the left are moving a lot", ()),
        ("en", "sides", "no branches on the left", ()),
        ("en", "top", "it's gone brown", ()),  # the water
        ("de", "top", "oben guckt n Stück Himmel durch die Zweige. rechts hängt auch n Ast rein",
         (("top", "sky"), ("sides", "twig"))),
        ("de", "top", "die Kante berührt grad so den Rand", (("top", "lip"),)),
        ("de", "sides", "der Ast is auch raus", (("sides", "clean"),)),
        ("es", "top", "el labio toca justo el borde", (("top", "lip"),)),
        ("es", "sides", "abajo a la derecha entra una rama, y a la izquierda hay una piedra clara",
         (("sides", "twig"), ("sides", "bright"))),
    ],
)  # fmt: skip
def test_all_things_at_the_edges_are_read(
    language: str, asked: str, text: str, told: tuple[tuple[str, str], ...]
) -> None:
    """A thing and a place are enough while edges are asked about; two things are two."""
    assert things_told(glossed(text, language), asked) == told


def test_two_things_in_one_message_have_both_remedies() -> None:
    """A branch on the right and a pale stone on the left; that the top is mended is kept, too."""
    player = _at("sides")
    said = keys_of(player, "dead branch poking in bottom right, wet pale stone lh edge. top fixed")
    assert {"sides.twig", "sides.bright"} <= set(said)
    assert "edges.noted" not in said
    player = _at("sides")
    said = keys_of(player, "3. and a branch in the left corner")
    assert {"sides.twig", "sides.bright"} <= set(said)


@pytest.mark.parametrize(
    ("language", "text", "checks"),
    [
        ("en", "Leaves. And the twig's gone, shifted the tripod a foot to the right",
         {"top": "covered", "sides": "clean"}),
        ("en", "leaves, again. it's overcast, f/11", {"top": "covered"}),
        ("en", "birch branches across the top so no sky. how long for silky?", {"top": "covered"}),
        ("en", "all rock up there, no sky, edges clean. so how long is silky?",
         {"top": "covered", "sides": "clean"}),
        ("de", "nur Blätter oben. welche ISO nehm ich?", {"top": "covered"}),
        ("es", "hojas arriba. ¿qué ISO pongo?", {"top": "covered"}),
    ],
)  # fmt: skip
def test_an_edge_told_beside_something_else_is_not_asked(
    language: str, text: str, checks: dict[str, str]
) -> None:
    """Facts, questions and what was done stand in the same message."""
    player = _at("top", language)
    said = keys_of(player, text)
    assert "ask.top" not in said
    assert _checks(player).items() >= checks.items()
    assert known(player).facts.distance_m == 18


def test_what_is_told_of_one_edge_beside_the_other_that_is_mended_is_kept() -> None:
    """The leaves cover the gap now, and the side has its remedy at once."""
    player = _at("top")
    player.say("sky pokes through the top a bit, whitish")
    keys = keys_of(player, "moved left, leaves cover it now. right side has a bright stick")
    assert (_checks(player)["top"], _checks(player)["sides"]) == ("covered", "bright")
    assert "sides.bright" in keys
    assert keys[-1] != "ask.sides"


def test_a_sky_at_the_asked_edge_is_no_light_and_no_complaint() -> None:
    """Bright sky through branches is the answer: no light canopy, and nothing is too bright."""
    for language, text in (
        ("de", "oben guckt n Stück Himmel durch die Zweige, recht hell"),
        ("es", "arriba asoma un trozo de cielo entre las ramas, bastante claro"),
        ("en", "sky through the branches, quite bright"),
    ):
        player = _at("top", language)
        assert "top.sky" in keys_of(player, text)
        facts = known(player).facts
        assert (facts.light, facts.symptoms) == (None, ())


def test_edges_told_in_a_message_of_danger_are_kept_and_remedied_later() -> None:
    """Nobody climbs; once nobody is there, the remedy is said and the edge is not asked again."""
    player = _at("top")
    player.say("branches across the top, no sky. my brother wants to climb up beside the fall")
    player.say("and a twig poking in on the left")
    assert known(player).conversation.closed
    said = keys_of(player, "nobody is out there")
    assert "sides.twig" in said
    assert not {"ask.top", "ask.sides"} & set(said)
    assert not [name for name in _checks(player) if name.endswith(".waits")]


def test_the_number_of_an_option_behind_the_all_clear_counts() -> None:
    """It answers the walk's question, which waited."""
    player = _at("top")
    player.say("my brother wants to climb up beside the fall")
    said = keys_of(player, "nobody is there. meant the lip in the picture. option 3")
    assert "top.lip" in said
    assert said[-1] == "ask.sides"


@pytest.mark.parametrize(
    ("language", "asked", "text"),
    [
        (
            "en",
            "top",
            "going with 35. top edge: lip just kissing the frame, bit of holly hanging in",
        ),
        ("en", "top", "a tree hanging over the lip"),
        ("en", "sides", "I see a dead branch hanging over the edge on the left"),
        ("de", "top", "ein Ast hängt über die Kante"),
        ("es", "top", "el filo de la cascada toca el borde"),
    ],
)
def test_the_lip_in_the_frame_is_no_danger(language: str, asked: str, text: str) -> None:
    """While that edge is asked about, and nobody is named."""
    assert danger_here.danger_in(turn_of(_at(asked, language)), text) is None


@pytest.mark.parametrize(
    "text",
    [
        "I'm standing on the lip, it touches the frame",
        "lip just kissing the frame. Max is up there on the edge",
        "lip right at the edge of the picture, standing there now",
        "on the lip, a branch hanging in",
        "out on the log over the edge",
        "hanging over the edge by a branch",
        "dangling over the edge, leaves on top",
        "my son is at the edge, the lip touches the frame",
    ],
)
def test_somebody_at_the_lip_is_danger_whatever_is_asked(text: str) -> None:
    """Named or not: who stands, hangs or is placed there is no part of the frame."""
    for asked in ("top", "sides"):
        assert danger_here.danger_in(turn_of(_at(asked)), text) is not None


def test_what_else_the_message_tells_is_still_danger() -> None:
    """Water that rises beside a lip in the frame."""
    danger = danger_here.danger_in(turn_of(_at("top")), "lip touches the frame, water is rising")
    assert danger is not None
    assert danger.kind is DangerKind.FLOOD


def test_no_edge_is_asked_a_third_time() -> None:
    """Whatever comes between; then an assumption stands in, which is said."""
    player = _at("top")
    assert keys_of(player, "what iso?")[-1] == "ask.top"
    said = keys_of(player, "do I need a timer?")
    assert "let_go.top" in said
    assert said[-1] == "ask.sides"
    keys_of(player, "what's a stop?")
    assert "let_go.sides" in keys_of(player, "which filter first?")
    assert "ask.top" not in keys_of(player, "it's 20 m away, not 18")


def test_who_asks_to_see_the_question_sees_it() -> None:
    """A word that works anywhere shows it however often it was put."""
    player = _at("top")
    for _ in range(4):
        assert keys_of(player, "what do I do now?")[-1] == "ask.top"


def test_edges_stay_checked_after_a_correction() -> None:
    """Another distance, the lens named anew: nobody has to look again."""
    player = _at("top")
    player.say("1")
    said = keys_of(player, "no, it's 20 m away")
    assert said[-1] == "ask.sides"
    player.say("1")
    assert not {"ask.top", "ask.sides"} & set(keys_of(player, "the nearest rock is at 2 m"))


def test_a_step_aside_is_no_distance() -> None:
    """So far the tripod went over; the fall is as far as it was."""
    for text in ("shifted the tripod a foot to the right", "moved it 30 cm over", "moved 1 m left"):
        facts = read(text)
        assert (facts.distance_m, facts.nearest_m, facts.unread) == (None, None, ())
