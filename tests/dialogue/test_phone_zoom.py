"""A phone's cameras: told by their buttons, or in millimetres as on full frame."""

from __future__ import annotations

import pytest

from bot.dialogue.facts import Facts
from tests.dialogue.player import Player
from tests.dialogue.walked import walked

_PHONE = "phone, 2 m tall, 5 m away, rock at 1 m"


def _facts(player: Player) -> Facts:
    assert player.context is not None
    return player.context.facts


@pytest.mark.parametrize(
    ("line", "focal_mm"),
    [
        ("using the 1x, whole thing fits", 26.0),
        ("its on 1x not zoomed", None),
        ("zoomed to 3x", 78.0),
        ("0.5x", 13.0),
        ("mit dem 2x", 52.0),
        ("uso el 0,5x", 13.0),
        ("i only got 0.5 1x n 3x buttons", None),
        ("my widest is the 0.5 one, normal is 1x", None),
        ("should i go with 3x?", None),
    ],
)
def test_the_button_that_is_used_sets_the_focal_length(line: str, focal_mm: float | None) -> None:
    """Buttons that are listed, denied or asked about set nothing."""
    player = walked(told=_PHONE)
    before = _facts(player).focal_mm
    body = player.say(line)[0].body
    assert _facts(player).focal_mm == (before if focal_mm is None else focal_mm)
    assert "Not placed" not in body


def test_a_camera_has_no_such_buttons() -> None:
    """On a camera "3x" is no focal length."""
    player = walked(told="full frame 24-70, 2 m tall, 5 m away, rock at 1 m")
    before = _facts(player).focal_mm
    player.say("zoomed to 3x")
    assert _facts(player).focal_mm == before


def test_lenses_in_millimetres_are_as_on_full_frame() -> None:
    """No phone's widest is 118 mm."""
    player = walked(told=_PHONE)
    body = player.say("i have 26mm and 52mm")[0].body
    assert "26 mm as full frame holds the whole fall" in body


@pytest.mark.parametrize(
    ("line", "slot", "value"),
    [
        ("my lens is 26", "focal_mm", 26.0),
        ("the zoom's on 35", "focal_mm", 35.0),
        ("whoops, iso was still 3200", "iso", 3200.0),
        ("my lens is 20 years old", "focal_mm", None),
    ],
)
def test_a_number_beside_a_dials_name_is_of_that_dial(
    line: str, slot: str, value: float | None
) -> None:
    """Never the time, which a bare number would be while blinking is asked about."""
    player = walked()
    before = player.context
    assert before is not None
    body = player.say(line)[0].body
    assert "misty" not in body
    after = player.context
    assert after is not None
    given = after.conversation.walk.given if after.conversation.walk else None
    assert given is not None
    if value is None:
        assert after.facts.focal_mm == before.facts.focal_mm
    elif slot == "iso":
        assert given.iso == pytest.approx(value, rel=0.02)
    else:
        assert getattr(after.facts, slot) == value
