"""The table of moves: every listed move, every other one refused, the diagram in step."""

from __future__ import annotations

import re
from itertools import product
from pathlib import Path

import pytest

from bot.dialogue.states import MOVES, IllegalMoveError, State, Trigger, diagram, move, way

LISTED = {(trigger, source): target for trigger, sources, target in MOVES for source in sources}


@pytest.mark.parametrize(("trigger", "source"), LISTED, ids=str)
def test_listed_move(trigger: Trigger, source: State) -> None:
    """A listed move leads where the table says."""
    assert move(source, trigger) is LISTED[trigger, source]


@pytest.mark.parametrize(
    ("trigger", "source"),
    [pair for pair in product(Trigger, State) if pair not in LISTED],
    ids=str,
)
def test_other_moves_are_bugs(trigger: Trigger, source: State) -> None:
    """What the table does not list raises."""
    with pytest.raises(IllegalMoveError):
        move(source, trigger)


@pytest.mark.parametrize(("state", "goal"), list(product(State, list(State)[1:])), ids=str)
def test_every_state_leads_to_every_other_by_listed_moves(state: State, goal: State) -> None:
    """The way from one state to another takes listed moves alone, and begins no new walk."""
    for trigger in way(state, goal):
        assert trigger is not Trigger.START
        state = move(state, trigger)
    assert state is goal


def test_every_step_leads_to_keeping() -> None:
    """From each step some moves lead to keep: nobody is stuck."""
    reached = {State.KEEP}
    while True:
        more = {source for (_, source), target in LISTED.items() if target in reached}
        if more <= reached:
            break
        reached |= more
    assert reached == set(State)


def test_diagram_in_the_document_is_the_table() -> None:
    """DEVELOPERS.md shows the diagram that the table draws."""
    text = (Path(__file__).parents[2] / "DEVELOPERS.md").read_text(encoding="utf-8")
    drawn = re.search(r"```mermaid\n(.*?)\n```", text, re.DOTALL)
    assert drawn is not None
    assert drawn[1] == diagram()
