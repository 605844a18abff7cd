"""The order of the levers: which move, how far, and when two ways compete."""

from __future__ import annotations

from itertools import product

from core.adjust.beyond import instead_of, others_of
from core.adjust.blocked import blocks
from core.adjust.moves import (
    State,
    brightened,
    closed,
    darkened,
    given_back,
    has_polariser,
    held_too_long,
    may_stay,
    opened_back,
    out_of_extended,
    start_of,
    time_into_look,
)
from core.adjust.ranges import in_look
from core.adjust.situation import Note, Plan, Polariser, Situation
from core.adjust.telling import steps_between
from core.adjust.tolls import is_met, toll
from core.series import EQUAL


def plan(situation: Situation) -> Plan:
    """The levers to move for a wanted change of brightness, in order, with limits and prices.

    Too bright: a time outside the look comes inside; a lens stopped down past the format's limit
    opens as far as a high ISO pays for it; ISO to base; the time inside a known look, unless kept;
    polariser (then open by the excess), a click or two of f-number, or ND, whichever costs least;
    f-number to the format's limit. Too dark: filters that do not fit come off or are swapped for
    a weaker one; the time inside a known look, unless kept; f-number as the depth allows; ISO.
    A time that is neither kept nor given a look moves last. A kept setting never moves, and no
    value leaves the limits of camera, lens and `Situation`. No filter goes on or comes off that
    would lead further past the goal than may stay.

    Args:
        situation: the frame, the wish, the kit.

    Returns:
        Steps and where they end. The sum of their stops and what remains is the wanted change.
        No steps when nothing is wanted and the time is inside the look.

    Source: the order is common practice among teachers of the trade; the weights between ways,
    and what may be left, are own rules (`core.adjust.tolls`).
    """
    start = start_of(situation)
    inside = time_into_look(start, situation)
    if inside is start and abs(start.remaining) <= situation.half_step:
        return _told(start, start, situation, too_bright=start.remaining < 0)
    # Darker was wanted and the look has given a little more than that: it may stay, as below.
    too_bright = inside.remaining < 0 or (start.remaining < 0 and may_stay(inside.remaining))
    end = _best_end(inside, situation, too_bright)
    return _told(start, end, situation, too_bright=too_bright)


def _best_end(state: State, situation: Situation, too_bright: bool) -> State:
    """The cheapest of the ways that differ in what stands before the lens."""
    if too_bright:
        state = darkened(opened_back(state, situation), situation)
        ends = [
            _after_darker_filters(state.with_filters(*filters), situation)
            for filters in _darker_filters(state, situation)
        ]
    else:
        state = out_of_extended(state, situation)
        ends = [
            _after_weaker_filters(state.with_filters(*filters), situation)
            for filters in _weaker_filters(state, situation)
        ]
    # The first way changes no filter and never overshoots; others must not overshoot either.
    fitting = [end for end in ends[1:] if not _overshoots(end, situation, too_bright)]
    return min(
        [ends[0], *fitting],
        key=lambda end: toll(state, end, situation, too_bright=too_bright),
    )


def _overshoots(end: State, situation: Situation, too_bright: bool) -> bool:
    """Whether a way leads past the goal by more than may stay."""
    past = end.remaining if too_bright else -end.remaining
    return past > 0 and not is_met(end.remaining, situation, too_bright=too_bright)


def _after_darker_filters(state: State, situation: Situation) -> State:
    """Close what is still too bright, or open by the excess; noise only for a dark frame."""
    state = closed(opened_back(state, situation), situation)
    return given_back(state, situation)


def _after_weaker_filters(state: State, situation: Situation) -> State:
    """Brighten what is still too dark; take back what the filter gave too much."""
    state = opened_back(state, situation)
    state = closed(darkened(state, situation), situation)
    return brightened(state, situation)


def _darker_filters(state: State, situation: Situation) -> list[tuple[bool, float]]:
    """What may stand before the lens when darker is wanted, the present first."""
    polariser = [state.polariser_on]
    if has_polariser(situation) and not (state.polariser_on or "polariser" in situation.keep):
        polariser.append(True)
    stronger = sorted({nd for nd in situation.nd_owned if nd > state.nd_on})
    if "nd" in situation.keep:
        stronger = []
    return list(product(polariser, [state.nd_on, *stronger]))


def _weaker_filters(state: State, situation: Situation) -> list[tuple[bool, float]]:
    """What may stand before the lens when brighter is wanted, the present first."""
    kept = state.polariser_on and "polariser" in situation.keep
    polariser = [True, False] if state.polariser_on and not kept else [state.polariser_on]
    weaker = sorted({0.0, *situation.nd_owned} - {state.nd_on}, reverse=True)
    if "nd" in situation.keep:
        weaker = []
    return list(product(polariser, [state.nd_on, *(nd for nd in weaker if nd < state.nd_on)]))


def _told(start: State, end: State, situation: Situation, *, too_bright: bool) -> Plan:
    met = is_met(end.remaining, situation, too_bright=too_bright)
    steps = steps_between(start, end, situation, too_bright=too_bright)
    wished = situation.look_times is not None
    polariser: Polariser = situation.polariser
    if polariser != "none":
        polariser = "on" if end.polariser_on else "off"
    return Plan(
        steps=steps,
        settings=end.settings,
        polariser=polariser,
        nd_on=end.nd_on,
        remaining_stops=end.remaining,
        met=met,
        look_met=in_look(end.settings.shutter_s, situation) if wished else None,
        others=others_of(end, situation, met=met),
        instead=instead_of(steps, end, situation),
        blocked=() if met else blocks(end, situation),
        notes=_notes(end, situation),
    )


def _notes(end: State, situation: Situation) -> tuple[Note, ...]:
    found = {
        Note.BY_HAND: held_too_long(end.settings.shutter_s, situation),
        Note.EXTENDED_ISO: end.settings.iso < situation.camera.base_iso / EQUAL,
    }
    return tuple(note for note, holds in found.items() if holds)
