"""Why no lever goes further."""

from __future__ import annotations

from core.adjust.moves import State, has_polariser
from core.adjust.ranges import block_of, range_of
from core.adjust.situation import Lever, Limit, Situation


def blocks(state: State, situation: Situation) -> tuple[tuple[Lever, Limit], ...]:
    """For each lever, why it does not go further in the direction that is still wanted."""
    darker = state.remaining < 0
    found: list[tuple[Lever, Limit]] = []
    for lever in (Lever.ISO, Lever.TIME, Lever.APERTURE):
        limits = range_of(lever, situation)
        end = limits.darkest_by if darker else limits.brightest_by
        found.append((lever, block_of(lever, situation) or end))
    found.append((Lever.POLARISER, _polariser_block(state, situation, darker)))
    found.append((Lever.ND, _nd_block(state, situation, darker)))
    return tuple(found)


def _polariser_block(state: State, situation: Situation, darker: bool) -> Limit:
    if not has_polariser(situation):
        return Limit.NOT_OWNED
    if "polariser" in situation.keep:
        return Limit.KEPT
    return Limit.IN_USE if state.polariser_on == darker else Limit.NOT_FITTING


def _nd_block(state: State, situation: Situation, darker: bool) -> Limit:
    strongest = max((*situation.nd_owned, situation.nd_on), default=0.0)
    if strongest == 0:
        return Limit.NOT_OWNED
    if "nd" in situation.keep:
        return Limit.KEPT
    spent = state.nd_on >= strongest if darker else state.nd_on == 0
    return Limit.IN_USE if spent else Limit.NOT_FITTING
