"""What blinks, told in a few words that are near to a topic."""

from __future__ import annotations

import pytest

from tests.dialogue.walked import keys_of, walked


@pytest.mark.parametrize(
    "text",
    [
        "a bit in the middle",
        "a little at the top",
        "yes, a tiny bit near the lip",
        "only some in the foam",
        "still a bit of it on the left",
    ],
)
def test_part_of_it_blinks(text: str) -> None:
    """Where it was asked for, and nowhere else."""
    assert keys_of(walked(), text)[0] == "highlights.darker"


def test_other_bits_are_no_answer() -> None:
    """Who asks, or tells of the light, has not told what blinks."""
    for text in ("is it bad if the sky blinks?", "can i go a bit brighter?", "a bit darker now"):
        assert keys_of(walked(), text)[0] != "highlights.darker"
