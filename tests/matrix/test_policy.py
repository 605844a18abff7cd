"""Who is answered."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.matrix.policy import Policy

ADA = "@ada:example.org"
BO = "@bo:two.example"


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


@pytest.mark.parametrize("leader", ["@bo:example.org", "*:example.org", "ada"])
def test_a_leader_who_is_not_allowed_is_an_error(leader: str) -> None:
    """Somebody who is named by a slip would lead nobody."""
    with pytest.raises(ValueError, match="named a leader and not allowed"):
        Policy.of(["@ada:example.org"], [leader])


@pytest.mark.parametrize(
    ("leaders", "may"),
    [([], {ADA, BO}), ([ADA], {ADA}), ([ADA, BO], {ADA, BO})],
)
def test_where_leaders_are_named_they_alone_bring_the_bot_into_groups(
    leaders: list[str], may: set[str]
) -> None:
    """Without names anybody who is allowed may; nobody else ever."""
    policy = Policy.of([ADA, "*:two.example"], leaders)
    assert {
        name for name in (ADA, BO, "@eve:example.org") if policy.may_bring_into_groups(name)
    } == may
    assert {name for name in (ADA, BO) if policy.leads(name)} == set(leaders)


@pytest.mark.parametrize(
    ("entries", "nobody"), [([], True), ([ADA], False), (["*:a.example"], False)]
)
def test_an_empty_list_is_told_apart(entries: list[str], nobody: bool) -> None:
    """Nobody at all is more likely a slip than a wish."""
    assert Policy.of(entries).allows_nobody is nobody
