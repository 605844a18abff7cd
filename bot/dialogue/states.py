"""The seven steps as states, the table of moves, and the one function that moves."""

from __future__ import annotations

from enum import Enum
from functools import cache
from typing import Final

from transitions import Machine, MachineError


class State(Enum):
    """Where a walk stands; the value is what the database stores."""

    ARRIVE = "arrive"
    LENS = "lens"
    COMPOSITION = "composition"
    BASE = "base"
    HIGHLIGHTS = "highlights"
    ADJUST = "adjust"
    KEEP = "keep"


class Trigger(Enum):
    """What makes a walk move."""

    START = "start"  # a new walk
    ARRIVED = "arrived"  # cautions said, the geometry is next
    LENS_CHOSEN = "lens_chosen"
    COMPOSED = "composed"
    SET = "set"  # base settings given, a test frame is next
    TO_BASE = "to_base"  # new geometry, lens or look: the base is computed again
    TROUBLE = "trouble"  # too bright, too dark, clipped, the wrong look
    ADJUSTED = "adjusted"  # new settings given, the next frame decides
    HELD = "held"  # the whites hold, the look is right
    NEW_FRAME = "new_frame"  # a frame was shared, wherever the walk stands
    ANEW = "anew"  # another picture here, with the same lens
    TO_LENS = "to_lens"  # another lens, or another place to stand


_ANY: Final = list(State)
#: Before the lens is chosen.
BEFORE_LENS: Final = (State.ARRIVE, State.LENS)
#: Where no settings were given yet.
BEFORE_BASE: Final = (State.ARRIVE, State.LENS, State.COMPOSITION)

#: (trigger, from, to). A move that is not listed here is a bug and raises.
MOVES: Final[list[tuple[Trigger, list[State], State]]] = [
    (Trigger.START, _ANY, State.ARRIVE),
    (Trigger.ARRIVED, [State.ARRIVE], State.LENS),
    (Trigger.LENS_CHOSEN, [State.ARRIVE, State.LENS], State.COMPOSITION),
    (Trigger.COMPOSED, [State.COMPOSITION], State.BASE),
    (Trigger.SET, [State.BASE], State.HIGHLIGHTS),
    (Trigger.TO_BASE, [*BEFORE_BASE, State.HIGHLIGHTS, State.KEEP], State.BASE),
    (Trigger.TROUBLE, [*BEFORE_BASE, State.BASE, State.HIGHLIGHTS, State.KEEP], State.ADJUST),
    (Trigger.ADJUSTED, [State.ADJUST], State.HIGHLIGHTS),
    (Trigger.HELD, [State.HIGHLIGHTS, State.ADJUST], State.KEEP),
    (Trigger.NEW_FRAME, [*BEFORE_BASE, State.BASE, State.ADJUST, State.KEEP], State.HIGHLIGHTS),
    (Trigger.ANEW, [State.KEEP], State.COMPOSITION),
    (
        Trigger.TO_LENS,
        [State.ARRIVE, State.COMPOSITION, State.BASE, State.HIGHLIGHTS, State.KEEP],
        State.LENS,
    ),
]


class IllegalMoveError(Exception):
    """A move that the table does not list: a bug of the caller."""


class _Walker:
    """The model of one call: `transitions` writes the state here and nowhere else."""

    state: State


def _machine(walker: _Walker, state: State) -> Machine:
    return Machine(
        model=walker,
        states=State,
        initial=state,
        transitions=[
            {"trigger": trigger.value, "source": sources, "dest": target}
            for trigger, sources, target in MOVES
        ],
        auto_transitions=False,
        model_override=False,
    )


@cache
def move(state: State, trigger: Trigger) -> State:
    """The state that `trigger` leads to from `state`.

    Raises:
        IllegalMoveError: the table of moves does not list it.
    """
    walker = _Walker()
    machine = _machine(walker, state)
    try:
        machine.events[trigger.value].trigger(walker)
    except MachineError as error:
        raise IllegalMoveError(f"{trigger.value} from {state.value}") from error
    return walker.state


def is_listed(state: State, trigger: Trigger) -> bool:
    """Whether the table lists a move from a state by this trigger."""
    return any(trigger is by and state in sources for by, sources, _ in MOVES)


@cache
def way(state: State, goal: State) -> tuple[Trigger, ...]:
    """The fewest listed moves from one state to another, without beginning a new walk.

    Args:
        state: where the walk stands.
        goal: where it is to stand; any but the first state, which only a new walk is in.

    Returns:
        The triggers in their order; none where it stands there.
    """
    ways: dict[State, tuple[Trigger, ...]] = {state: ()}
    while goal not in ways:
        ways = _one_move_on(ways) | ways
    return ways[goal]


def _one_move_on(ways: dict[State, tuple[Trigger, ...]]) -> dict[State, tuple[Trigger, ...]]:
    """The ways to all states that one more move leads to."""
    return {
        target: (*ways[here], trigger)
        for trigger, sources, target in MOVES
        for here in sources
        if here in ways and trigger is not Trigger.START
    }


def diagram() -> str:
    """The table of moves as a Mermaid state diagram, as DEVELOPERS.md shows it."""
    lines = ["stateDiagram-v2", "    [*] --> arrive"]
    for trigger, sources, target in MOVES:
        if sources == _ANY:
            lines.append(f"    note right of {target.value}: from every state by {trigger.value}")
            continue
        lines += [f"    {source.value} --> {target.value}: {trigger.value}" for source in sources]
    return "\n".join(lines)
