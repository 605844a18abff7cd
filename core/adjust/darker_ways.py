"""When it stays too bright: ND to get, waiting, averaging, a shaded section, crisper water."""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import replace
from itertools import combinations_with_replacement
from typing import Final

from core.adjust.moves import State
from core.adjust.offers import offer, other_aperture, other_time
from core.adjust.ranges import aperture_range, marks_of
from core.adjust.situation import Lever, Note, Price, Situation, Step
from core.adjust.telling import nd_numbers
from core.exposure import averaging_noise, frames_for
from core.series import EQUAL, EQUAL_STOPS

#: Strengths in which ND filters are sold [stops] (common practice).
ND_GRADES: Final = (1.0, 2.0, 3.0, 4.0, 6.0, 10.0)
#: What aperture and ISO can usually give back when a filter is too strong [stops] (own rule).
MOST_EXCESS_STOPS: Final = 1.5
#: From full sun (EV 15) to open shade (EV 12) [stops] (ANSI PH2.7 table of light, from memory).
SHADE_STOPS: Final = 3.0
#: Frames to average: 8 to 16 useful, 30 a practical top (common practice); 64 is the end here.
MANY_FRAMES: Final = 30
MOST_FRAMES: Final = 64


def darker_ways(end: State, situation: Situation) -> Iterator[Step]:
    """The levers left when a frame is still too bright, the least trouble first."""
    need = -end.remaining
    yield _nd_to_get(end, need)
    stops = -SHADE_STOPS if situation.in_sun is not False else end.remaining
    yield offer(Lever.WAIT, end, stops, Price.PATIENCE, {"stops": abs(stops), "need_stops": need})
    yield from _average(end, situation, need)
    yield offer(Lever.SECTION, end, end.remaining, Price.PICTURE)
    yield from other_time(Lever.SHORTER_TIME, end, situation)
    yield from _narrower_than_good(end, situation)


def _nd_to_get(end: State, need: float) -> Step:
    """The weakest grade that is enough and not far too strong, else two of them together."""
    wanted = end.nd_on + need
    singles = [(g,) for g in ND_GRADES if -EQUAL_STOPS <= g - wanted <= MOST_EXCESS_STOPS]
    pairs = combinations_with_replacement(ND_GRADES, 2)
    doubles = [pair for pair in pairs if sum(pair) >= wanted - EQUAL_STOPS]
    choices: list[tuple[float, ...]] = [*singles] or [*doubles]
    parts = min(choices, key=sum, default=(wanted,))
    total = sum(parts)
    numbers = {**nd_numbers(total), "needed_stops": wanted, "excess_stops": total - wanted}
    if len(parts) == 2:
        numbers |= {"first_stops": parts[1], "second_stops": parts[0]}
    notes = (Note.FOCUS_FIRST,)
    stops = end.nd_on - total
    return offer(Lever.ND, end, stops, Price.TINT, numbers, notes=notes, nd_on=total)


def _average(end: State, situation: Situation, need: float) -> Iterator[Step]:
    """Short frames that together last as long as the one: the look stays, each frame is darker."""
    whole_s = end.settings.shutter_s
    times = [mark.exact for mark in marks_of(Lever.TIME, situation.camera.dial)]
    shortest_s = situation.camera.shortest_s / EQUAL
    fitting = [s for s in times if s >= shortest_s and math.log2(whole_s / s) >= need - EQUAL_STOPS]
    if not fitting:
        return
    each_s = max(fitting)
    stops = math.log2(whole_s / each_s)
    if stops > math.log2(MOST_FRAMES) + EQUAL_STOPS:
        return
    frames = frames_for(stops)
    notes = {
        Note.MANY_FRAMES: frames > MANY_FRAMES,
        Note.BURST_BY_HAND: not situation.tripod,
        Note.WIND: situation.wind,
    }
    numbers = {"frames": float(frames), "each_s": each_s, "noise_ratio": averaging_noise(frames)}
    held = tuple(note for note, holds in notes.items() if holds)
    settings = replace(end.settings, shutter_s=each_s)
    yield offer(Lever.AVERAGE, end, -stops, Price.BEADS, numbers, settings, held)


def _narrower_than_good(end: State, situation: Situation) -> Iterator[Step]:
    """Past the format's limit to the lens's: a last resort."""
    limits = aperture_range(situation)
    narrowest = situation.narrowest_f
    if narrowest <= limits.darkest * EQUAL:
        return
    yield from other_aperture(Lever.APERTURE, end, situation, narrowest, (Note.LAST_RESORT,))
