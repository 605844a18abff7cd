"""A number with which nothing can be reckoned is refused; whatever else was told is kept."""

from __future__ import annotations

import math

import pytest

from bot.dialogue import engine
from bot.dialogue.context import Context
from bot.dialogue.events import Event, TextReceived, TimerFired
from bot.dialogue.out_of_range import answered
from bot.dialogue.turn import Turn
from core.errors import OutOfDomainError
from tests.dialogue.player import Player
from tests.dialogue.walked import keys_of, walked

#: A rock nearer than this lens can be focused.
_TOO_NEAR = "12 m tall, 18 m away, rock at 1 m, full frame 600 mm"
_ERROR = OutOfDomainError("near_m", 1.0, "m", 1.2, math.inf)


def seen(player: Player) -> Context:
    """What is known of somebody who has written."""
    assert player.context is not None
    return player.context


def test_a_number_told_before_is_left_out_and_the_walk_goes_on() -> None:
    """The answer to the last check is kept: without that, nothing would end the refusal."""
    player = Player()
    for line in (_TOO_NEAR, "1"):
        player.say(line)
    assert keys_of(player, "1") == ("out_of_domain_below", "ask.anchor")
    facts = seen(player).facts
    assert (facts.nearest_m, facts.distance_m, facts.focal_mm) == (None, 18.0, 600.0)
    assert keys_of(player, "1")[0] == "base.settings"


@pytest.mark.parametrize(
    "text",
    [
        "600 mm, rock at 50 cm, no tripod",
        "no tripod today, 600 mm on, and the nearest stone is half a metre away from me",
        "i'm on 600 mm now. rock at 0.5 m. no tripod",
    ],
)
def test_what_is_told_beside_it_is_kept(text: str) -> None:
    """Only the number that was refused has to be sent again."""
    player = walked()
    assert keys_of(player, text)[0] == "out_of_domain_below"
    facts = seen(player).facts
    assert (facts.focal_mm, facts.nearest_m, facts.has_tripod) == (600.0, None, False)


def test_units_are_kept_beside_it() -> None:
    """Who tells feet is answered in feet, the refusal too."""
    player = walked()
    said = player.say("600 mm, rock at 2 ft")
    assert "2 ft" in said[0].body
    assert seen(player).person.units is not None


def _never(turn: Turn, event: Event) -> None:
    del turn, event
    raise _ERROR


def test_a_number_that_no_fact_holds_is_refused_alone() -> None:
    """Nothing else can be said then: neither with a fact left out that only looks the same."""
    player = walked()
    timer = TimerFired(origin=player.origin(), name="turn_back", due=player.now)
    for event in (TextReceived(origin=player.origin(), text="rock at 1 m"), timer):
        turn = answered(seen(player), event, player.now, _ERROR, _never)
        assert [part.key for part in turn.parts] == ["out_of_domain_below"]
        assert turn.context == seen(player)


def test_the_question_is_put_again_behind_a_lone_refusal(monkeypatch: pytest.MonkeyPatch) -> None:
    """Whatever is refused, the person knows what to send next."""
    player = walked()
    monkeypatch.setattr(engine, "_answered", _never)
    first, *_, last = keys_of(player, "rock at 1 m")
    assert first == "out_of_domain_below"
    assert last.startswith("ask.")
