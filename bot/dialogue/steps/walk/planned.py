"""A plan of levers: its limits of time, and how it is said."""

from __future__ import annotations

import math
from dataclasses import replace
from typing import Final

from bot.dialogue import reckoning, solving
from bot.dialogue.aims import aim_of
from bot.dialogue.compose import Role
from bot.dialogue.facts import Facts, Symptom
from bot.dialogue.solving import Solved
from bot.dialogue.steps.walk import reasons
from bot.dialogue.texts import TEXTS, measures
from bot.dialogue.turn import Turn
from bot.dialogue.walk_state import GivenSettings
from bot.dialogue.within_light import within_light
from core.adjust import Price, plan
from core.exposure import Settings
from core.series import Mark, f_number_marks, iso_marks, nearest, time_marks
from core.water import Look, band_of, look_of

#: A time that the person's eye calls wrong, whatever the sum says, moves by one rung of the ladder
#: (common practice: whole stops of time, 1/15 to 1 s); the next rung is named with it.
EYE_STOPS: Final = 1.0

#: For a step as small as a warning asks for, the time may leave the look (own rule); who is
#: further out hears what it takes instead.
_SMALL_STOPS: Final = 1.0 + 1 / 6
#: Above this share water is no longer textured.
BANDS_TOP: Final = band_of(Look.TEXTURED)[1]
#: A new time after a wrong look lies within this factor of the aim (own rule: not at the edge).
WELL_INSIDE: Final = 1.5


def times_for(turn: Turn, exposure: set[Symptom], settings: Settings) -> tuple[float, float] | None:
    """Limits of the time [s]: the wished look; the person's eye where it contradicts the sum."""
    facts = turn.facts
    flow = reckoning.flow_of(facts)
    look = reckoning.wished_look(facts)
    shortest_s, longest_s = flow.times(look)
    white = Symptom.JUST_WHITE in exposure and flow.share(settings.shutter_s) > BANDS_TOP
    if Symptom.NO_TEXTURE in exposure or white:
        eye_s = settings.shutter_s / 2**EYE_STOPS
        inside_s = flow.time_for(aim_of(turn, look) * WELL_INSIDE)
        longest_s = min(longest_s, inside_s if inside_s < settings.shutter_s else eye_s)
        return min(shortest_s, longest_s), longest_s
    if Symptom.TOO_FROZEN in exposure:
        eye_s = settings.shutter_s * 2**EYE_STOPS
        inside_s = flow.time_for(aim_of(turn, look) / WELL_INSIDE**2)  # light is what is short here
        shortest_s = max(shortest_s, inside_s if inside_s > settings.shutter_s else eye_s)
        return shortest_s, max(shortest_s, longest_s)
    if look_of(flow.share(settings.shutter_s)) is not look and not exposure and not facts.look:
        return min(settings.shutter_s, shortest_s), max(settings.shutter_s, longest_s)
    return None


def well_inside(turn: Turn) -> tuple[float, float]:
    """Times around the aim of the wished look [s], not at its edge."""
    facts = turn.facts
    flow = reckoning.flow_of(facts)
    aim_s = flow.time_for(aim_of(turn, reckoning.wished_look(facts)))
    return aim_s / WELL_INSIDE, aim_s * WELL_INSIDE


def merged(turn: Turn, solved: Solved) -> GivenSettings:
    """Where a plan ends, with the focus that was given before."""
    given = turn.walk.given
    focus_m = given.focus_m if given else None
    return solved.given.model_copy(update={"focus_m": focus_m or reckoning.focus_of(turn.facts)})


def say_within_reach(turn: Turn, solved: Solved, key: str = "adjust.next") -> None:
    """Say a plan; where the look can't hold the white, a shorter time does, and what would.

    White without texture is the worse fault (common practice: halve the time first). Where the
    light gives no such time at all, the one that it gives is set.
    """
    shorter = None if solved.plan.met else _shorter(solved)
    lit = within_light(solved) if shorter is None else None
    if shorter is not None:
        say_plan(turn, shorter, key)
        look = TEXTS[f"look.{reckoning.wished_look(turn.facts).value}"]
        others = solving.others_text(_into_the_look(turn, solved), most=2)
        turn.say(Role.CHECK, "adjust.for_look", look=look, others=others)
    elif lit is not None:
        say_plan(turn, lit, "adjust.light_gives")
        _say_beyond_light(turn, solved)
    else:
        say_plan(turn, solved, key)


def _into_the_look(turn: Turn, solved: Solved) -> Solved:
    """The plan that ends in the wished look, where the frame before it had another."""
    wished = reckoning.wished_look(turn.facts)
    if solved.look(solved.plan.settings.shutter_s) is wished:
        return solved
    look_times = solving.timed(solved.flow.times(wished))
    situation = replace(solved.situation, look_times=look_times)
    return replace(solved, plan=plan(situation), situation=situation)


def _say_beyond_light(turn: Turn, solved: Solved) -> None:
    """How far the wished time is out of the light's reach, and what would bring it."""
    rest = solved.plan.remaining_stops
    crowded = any(part.role in {Role.CAUTION, Role.CHECK} for part in turn.parts)
    turn.say(
        Role.CHECK,
        "adjust.beyond_light",
        time=solving.time_text(solved.plan.settings.shutter_s, solved.camera),
        stops=measures.stops(rest),
        side=TEXTS["side.dark" if rest > 0 else "side.bright"],
        others=solving.others_text(solved, most=1 if crowded else 3, for_look=True),
    )


def _shorter(solved: Solved) -> Solved | None:
    """The same darker step by the time, past the look; None where that does not do it."""
    change, time_s = solved.situation.change_stops, solved.situation.settings.shutter_s
    if not (-_SMALL_STOPS <= change < 0 and solved.plan.remaining_stops < 0):
        return None
    times = (time_s * 2**change / 2, time_s)
    situation = replace(solved.situation, look_times=solving.timed(times))
    found = replace(solved, plan=plan(situation), situation=situation)
    return found if found.plan.met else None


def say_plan(turn: Turn, solved: Solved, key: str = "adjust.next") -> None:
    """Say where a plan ends, its levers and prices, and what lies beyond it."""
    settings = solving.settings_text(solved.given, solved.camera)
    filters = solving.filters_text(solved)
    turn.change_walk(planned_from=turn.walk.given, given=merged(turn, solved))
    turn.learn(_filters_now(solved))
    if solved.plan.met:
        turn.say(Role.SETTINGS, key, settings=settings + filters, look=solving.look_text(solved))
    else:
        turn.say(
            Role.SETTINGS,
            "adjust.cant",
            settings=settings + filters,
            stops=measures.stops(solved.plan.remaining_stops),
            side=TEXTS["side.dark" if solved.plan.remaining_stops > 0 else "side.bright"],
        )
        turn.say(Role.CHECK, "adjust.beyond", others=solving.others_text(solved))
    reasons.explain_share(turn, solved.flow, solved.given.shutter_s, solved.camera)
    _say_steps(turn, solved)
    reasons.tell_assumed(turn, solved.assumed, solved.camera)


def _filters_now(solved: Solved) -> Facts:
    end, situation = solved.plan, solved.situation
    changed = Facts()
    if end.polariser != situation.polariser:
        changed = changed.updated(Facts(polariser_on=end.polariser == "on", has_polariser=True))
    if end.nd_on != situation.nd_on:
        changed = changed.updated(Facts(nd_on_stops=end.nd_on))
    return changed


def _say_steps(turn: Turn, solved: Solved) -> None:
    """Each lever with its price; the way in small steps where it was wished."""
    path = solving.path_text(solved)
    if path:
        turn.say(Role.CHECK, "adjust.path", path=path)
    steps = solved.plan.steps
    texts = [solving.step_text(step, solved.camera) for step in steps]
    if len(texts) > 1 or any(step.price in _PRICED for step in steps):
        turn.say(Role.ASSUMPTION, "adjust.how", steps=_sentence("; ".join(texts)))
    for text in texts:
        turn.reason("why.step", step=_sentence(text))
    _say_instead(turn, solved)


def say_path(turn: Turn) -> bool:
    """The marks between the frame and the plan made for it; whether there is such a plan."""
    start, end = turn.walk.planned_from, turn.walk.given
    if start is None or end is None:
        return False
    dial = reckoning.dial_of(turn.facts)
    paths = [
        _between(time_marks(dial), start.shutter_s, end.shutter_s),
        _between(f_number_marks(dial), start.f_number, end.f_number),
        _between(iso_marks(dial), start.iso, end.iso),
    ]
    path = "; ".join(path for path in paths if path)
    if path:
        turn.say(Role.SETTINGS, "adjust.path", path=path)
    return bool(path)


def _between(marks: tuple[Mark, ...], start: float, end: float) -> str:
    """Labels of the marks behind `start` up to `end`, in the order of turning the dial."""
    low, high = sorted((start, end))
    passed = [mark for mark in marks if low * _SAME < mark.exact < high / _SAME]
    on_way = sorted(passed, key=lambda mark: abs(math.log(mark.exact / start)))
    goal = nearest(marks, end)
    return ", ".join(mark.label for mark in (*on_way, goal)) if start != end else ""


#: Values nearer than this factor are the same mark (own rule: a tenth of a stop in time).
_SAME: Final = 2**0.1


def _sentence(text: str) -> str:
    return text if text.startswith("f/") else text[:1].upper() + text[1:]


def _say_instead(turn: Turn, solved: Solved) -> None:
    """What else would do: a darker frame without the last step, or ways that spare a price."""
    steps = solved.plan.steps
    for before, step in zip((None, *steps), steps, strict=False):
        if step.optional and before is not None:
            turn.say(
                Role.ASSUMPTION,
                "adjust.or_darker",
                settings=solving.settings_text(before.settings, solved.camera),
                stops=measures.stops(step.stops),
            )
    if solved.plan.instead:
        able = [step for step in solved.plan.instead if not (solved.no_nd and step.nd_on)]
        in_sun = solved.situation.in_sun
        on = solved.plan.nd_on
        others = [
            solving.other_text(step, solved.camera, in_sun=in_sun, nd_on=on) for step in able[:3]
        ]
        turn.say(Role.ASSUMPTION, "adjust.instead", others=measures.listing(others, TEXTS["or"]))


#: Prices that are said with the answer, not only under `why`.
_PRICED: Final = frozenset({Price.DIFFRACTION, Price.NOISE})
