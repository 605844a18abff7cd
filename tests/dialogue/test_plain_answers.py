"""A reply that begins with the plain answer ends a question of safety; who is left out holds it."""

from __future__ import annotations

import pytest

from tests.dialogue.player import Player

WALK = ("start", "12 m tall, 18 m away, rock at 1.5 m, full frame, 24-70, tripod", "1", "1")
FLOOD = "the water is brown and rising"
FELL = "my friend fell in"
LEAP = "my mates wanna jump in from the top, is that ok"
LIP = "I'm at the lip"


def holds(*lines: str) -> bool:
    """Whether an emergency or a closed place is still open after these messages of a walk."""
    player = Player()
    for line in (*WALK, *lines):
        player.say(line)
    assert player.context is not None
    conversation = player.context.conversation
    return conversation.emergency is not None or conversation.closed


@pytest.mark.parametrize(
    ("danger", "reply"),
    [
        (FLOOD, "ja alle in sicherheit, seit stunden"),
        (FLOOD, "yes everyone is safe, for hours"),
        (FLOOD, "sí, todos a salvo, desde hace horas"),
        (FELL, "ja alle in sicherheit, seit stunden"),
        (
            FLOOD,
            (
                "sind raus, jonas hab ich an der hand, stehn am auto. stativ hab ich stehnlassen "
                "mist. bring mirs wieder, oder hol ichs morgen?"
            ),
        ),
        (FLOOD, "we're out, got jonas by the hand, standing at the car. left the tripod there"),
        (
            FLOOD,
            (
                "sind daheim, trocken, kakao. hab mir die bilder am laptop angeschaut. das mit 1/4 "
                "gefällt mir vom wasser, aber der stein vorn ist unscharf"
            ),
        ),
        (FLOOD, "home, dry, cocoa. looked at the pictures"),
        (LEAP, "nah jake came back down, hes just sulking on the towel w mia"),
        (LEAP, "no everyones on the bank"),
        (LEAP, "nope, all of them are on the towels"),
        (LEAP, "nein alle sind am ufer"),
        (LEAP, "nee, jonas ist wieder runtergekommen, er sitzt auf dem handtuch"),
        (LEAP, "no, ya bajaron"),
        (LEAP, "no, están todos en la orilla"),
        (LIP, "sind alle am auto, jonas, oma und ich"),
        (LIP, "ja alle in sicherheit, seit stunden"),
    ],
)
def test_the_plain_answer_ends_it(danger: str, reply: str) -> None:
    """Whatever harmless stands behind it."""
    assert not holds(danger, reply)


@pytest.mark.parametrize(
    ("danger", "reply"),
    [
        (FLOOD, "all fine except Ben"),
        (FLOOD, "yes all safe, ben lies there"),
        (FLOOD, "ja alle in sicherheit, nur ben noch nicht"),
        (FLOOD, "ja alle in sicherheit, aber opa hinkt"),
        (FLOOD, "yes all safe, mia is up top"),
        (FLOOD, "sind raus, stehn am auto. stativ steht noch dort, ben holt es gleich"),
        (FELL, "sind daheim, trocken, kakao"),
        (FELL, "we're at the car"),
        (LEAP, "no everyones on the bank except ben"),
        (LEAP, "no everyone's on the bank, ben is on the top"),
        (LEAP, "no everyones on the bank but mia's at the top having a look"),
        (LEAP, "nah jake came back down, mia is still up there"),
        (LEAP, "nah they wont listen"),
        (LEAP, "they're on the towels, only ben's jumping"),
        (LEAP, "no everyone's on the bank now, water's up to the rocks"),
        (FLOOD, "alle in sicherheit, stativ stehen gelassen, papa holt es"),
        (FLOOD, "sind am auto, mia fehlt"),
        (LEAP, "nein alle am ufer, nur ben ist da oben"),
        (LEAP, "no, todos en la orilla, pero ben sigue allí arriba"),
    ],
)
def test_who_is_left_out_holds_it(danger: str, reply: str) -> None:
    """An exception, a person left there, or one alone who speaks of themselves."""
    assert holds(danger, reply)


def test_all_out_of_a_flood_are_at_no_edge_either() -> None:
    """No older question of who is out there comes back when all have left that water."""
    assert not holds(LIP, FLOOD, "2")
    assert holds(LIP, "my wife broke her leg", "2")
