"""People of a room as words name them."""

from __future__ import annotations

import pytest

from bot.matrix.people_named import is_called, names_in, names_of

PEOPLE = (("ben7", "Ben Ahorn", "Ben"), ("tove",))


def test_how_people_are_called() -> None:
    """The local part, the whole name, its first word; what is too short is no name."""
    assert names_of("@ben7:example.org", "Ben Ahorn") == ("ben7", "Ben Ahorn", "Ben")
    assert names_of("@tove:example.org", None) == ("tove",)
    assert names_of("@j:example.org", "*") == ()


@pytest.mark.parametrize(
    ("text", "called"),
    [
        ("Ben, look", True),
        ("@tove look", True),
        ("ben ahorn! here", True),
        ("Ben: m43 12-40", False),
        ("look, Ben", False),
        ("Benny, look", False),
        ("", False),
    ],
)
def test_a_call_stands_at_the_start(text: str, *, called: bool) -> None:
    """With a comma or an at sign; a colon tells of somebody's kit."""
    assert is_called(text, PEOPLE) is called
    assert not is_called(text, ())


def test_names_in_a_text() -> None:
    """As they are typed, each once."""
    assert names_in("BEN and tove, ben and Benny", PEOPLE) == ("BEN", "tove", "ben")
    assert names_in("Ben Ahorn slipped in", PEOPLE) == ("Ben Ahorn",)
    assert names_in("anybody", ()) == ()
    assert names_in("so it is", [("so",)]) == ()
    assert is_called("Bo, is it?", [("bo",)])
