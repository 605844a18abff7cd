"""Reactions and poll answers, as the options that they name."""

from __future__ import annotations

from datetime import UTC, datetime
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.dialogue.events import Origin, TextReceived
from bot.matrix.taps import read_tap, tapped_event

ORIGIN = Origin(
    event_id="$tap",
    room_id="!r",
    person_id="@ada:example.org",
    sent_at=datetime(2027, 6, 1, tzinfo=UTC),
)
UNSTABLE, STABLE = "org.matrix.msc3381.poll.response", "m.poll.response"


def _reaction(key: object) -> dict[str, Any]:
    relation = {"rel_type": "m.annotation", "event_id": "$asked", "key": key}
    return {"type": "m.reaction", "content": {"m.relates_to": relation}}


def _answer(chosen: object, kind: str = UNSTABLE) -> dict[str, Any]:
    named = {kind: {"answers": chosen}} if kind == UNSTABLE else {"m.selections": chosen}
    relation = {"rel_type": "m.reference", "event_id": "$asked"}
    return {"type": kind, "content": {**named, "m.relates_to": relation}}


def _read(source: dict[str, Any]) -> TextReceived | None:
    event = read_tap(source, ORIGIN, "$asked")
    assert event is None or isinstance(event, TextReceived)
    return event


@pytest.mark.parametrize(
    ("key", "option"),
    [
        ("1\ufe0f\u20e3", "1"),  # a keycap as phones send it
        ("9\u20e3", "9"),
        ("3", "3"),
        (" 2 ", "2"),
        ("\U0001f44d", "yes"),
        ("\U0001f44d\ufe0f", "yes"),
        ("\U0001f44d\U0001f3fd", "yes"),
        ("\U0001f44e\U0001f3ff", "no"),
    ],
)
def test_reactions_that_answer(key: str, option: str) -> None:
    """Keycaps and digits are numbers, thumbs are yes and no, whatever their skin."""
    assert _read(_reaction(key)) == TextReceived(
        origin=ORIGIN, text=option, replies_to="$asked", tapped=True
    )


@pytest.mark.parametrize("key", ["0\ufe0f\u20e3", "\U0001f51f", "12", "\U0001f389", "", 1, None])
def test_reactions_that_are_no_answer(key: object) -> None:
    """Zero, ten, hearts and things that are no text name no option."""
    assert _read(_reaction(key)) is None


@pytest.mark.parametrize("kind", [UNSTABLE, STABLE])
@pytest.mark.parametrize(
    ("chosen", "option"), [(["2"], "2"), (["3", "1"], "3"), ([], ""), (["x"], None), ("2", None)]
)
def test_answers_to_a_poll(kind: str, chosen: object, option: str | None) -> None:
    """The first choice counts, none at all takes the answer back, another id is none of ours."""
    event = _read(_answer(chosen, kind))
    assert (None if event is None else event.text) == option


@pytest.mark.parametrize(
    ("source", "target"),
    [
        (_reaction("1"), "$asked"),
        (_answer(["1"]), "$asked"),
        (_answer(["1"], STABLE), "$asked"),
        ({**_reaction("1"), "type": "m.room.message"}, None),
        ({**_reaction("1"), "type": UNSTABLE}, None),
        ({"type": "m.reaction", "content": {}}, None),
        ({"type": "m.reaction", "content": []}, None),
        ({"type": "m.reaction", "content": {"m.relates_to": {"event_id": 7}}}, None),
        ({"type": "org.matrix.msc3381.poll.end", "content": _answer([])["content"]}, None),
    ],
)
def test_what_is_tapped_on(source: dict[str, Any], target: str | None) -> None:
    """The event that the right kind of relation names, for reactions and poll answers only."""
    assert tapped_event(source) == target


_JSON = st.recursive(
    st.none() | st.booleans() | st.integers() | st.text(max_size=5),
    lambda inner: st.lists(inner, max_size=3) | st.dictionaries(st.text(max_size=5), inner),
    max_leaves=8,
)


@given(st.sampled_from(["m.reaction", UNSTABLE, STABLE]), _JSON, _JSON, _JSON)
def test_nothing_that_a_stranger_sends_breaks_the_reading(
    kind: str, content: object, relation: object, chosen: object
) -> None:
    """Any JSON is an option or nothing."""
    for body in (content, {"m.relates_to": relation, UNSTABLE: chosen, "m.selections": chosen}):
        source = {"type": kind, "content": body}
        target = tapped_event(source)
        assert target is None or target
        event = _read(source)
        assert event is None or event.text in {"", "yes", "no", *"123456789"}
