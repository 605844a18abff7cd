"""Who is answered."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.matrix.policy import Policy


@pytest.mark.parametrize(
    ("entries", "user_id", "allowed"),
    [
        ([], "@ada:example.org", False),
        (["@ada:example.org"], "@ada:example.org", True),
        (["@ada:example.org"], "@Ada:example.org", False),
        (["@ada:example.org"], "@ada:example.org.evil", False),
        (["@ada:example.org"], "@bo:example.org", False),
        (["*:example.org"], "@bo:example.org", True),
        (["*:example.org"], "@bo:sub.example.org", False),
        (["*:example.org"], "@bo:evil-example.org", False),
        (["*:example.org:8448"], "@bo:example.org:8448", True),
        (["*:example.org"], "@bo:example.org:8448", False),
        ([" @ada:example.org ", "*:two.example"], "@eve:two.example", True),
        (["*:example.org"], "bo:example.org", False),
        (["*:example.org"], "@bo", False),
        (["*:example.org"], "", False),
    ],
)
def test_only_the_named_are_allowed(entries: list[str], user_id: str, allowed: bool) -> None:
    """Exact ids and exact servers; the default is nobody."""
    assert Policy.of(entries).allows(user_id) is allowed


@pytest.mark.parametrize("entry", ["", "*", "*:*", "@*:example.org", "ada", "example.org", ".*"])
def test_a_slip_in_the_list_is_an_error(entry: str) -> None:
    """An entry that is neither a person nor a server neither lets in nor locks out in silence."""
    with pytest.raises(ValueError, match="neither"):
        Policy.of([entry])


@given(st.text())
def test_nobody_is_allowed_by_an_empty_policy(user_id: str) -> None:
    """Whatever the id looks like."""
    assert not Policy().allows(user_id)
