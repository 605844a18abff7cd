"""From a frame and what is wrong with it to the core's plan, and the plan in words."""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import Final

from bot.dialogue import reckoning
from bot.dialogue.by_numbers import rests_on_usual
from bot.dialogue.facts import Facts
from bot.dialogue.flowing import Flowing
from bot.dialogue.reckoning import Assumed
from bot.dialogue.texts import TEXTS, measures
from bot.dialogue.walk_state import GivenSettings
from core.adjust import Lever, Plan, Polariser, Situation, Step, plan
from core.adjust.darker_ways import SHADE_STOPS
from core.adjust.situation import LONGEST_S, MOST_STOPS
from core.camera import Camera
from core.exposure import Settings, ev100
from core.light import LIGHTS
from core.series import f_number_label, iso_label, nearest, shutter_label, time_marks
from core.water import Look, look_of


@dataclass(frozen=True)
class Solved:
    """A plan with what it was made from."""

    plan: Plan
    situation: Situation
    flow: Flowing
    camera: Camera
    assumed: Assumed
    #: The person has no ND: none is named.
    no_nd: bool = False

    @property
    def given(self) -> GivenSettings:
        """Where the plan ends, as the conversation keeps it."""
        end = self.plan.settings
        return GivenSettings(
            f_number=end.f_number,
            shutter_s=end.shutter_s,
            iso=end.iso,
            focal_mm=self.situation.focal_mm,
            polariser_on=self.plan.polariser == "on",
            nd_on_stops=self.plan.nd_on,
        )

    def look(self, shutter_s: float) -> Look:
        """The look that a time gives here."""
        return look_of(self.flow.share(shutter_s))


def level_of(given: GivenSettings) -> float:
    """Brightness of a frame against others of the same light [stops], filters counted."""
    return -ev100(given.f_number, given.shutter_s, given.iso) - given.filter_stops


def solve(
    facts: Facts,
    settings: Settings,
    change_stops: float,
    *,
    look_times: tuple[float, float] | None = None,
    keep_time: bool = False,
) -> Solved:
    """Plan a change of brightness, or the way into the wished look, for this person's kit.

    Args:
        facts: all that is known.
        settings: of the frame that was taken, exact values.
        change_stops: wanted [stops], positive: brighter.
        look_times: limits of the time [s]; None: those of the wished look.
        keep_time: the time stays in any case.
    """
    assumed = Assumed()
    camera = reckoning.camera_of(facts, assumed)
    flow = reckoning.flowing_or_usual(facts, reckoning.focal_of(facts), assumed)
    keep = {kept.value for kept in facts.keep} | ({"time"} if keep_time else set())
    situation = replace(
        _situation(facts, settings, change_stops, camera, assumed),
        look_times=timed(look_times or flow.times(reckoning.wished_look(facts))),
        keep=frozenset(keep),  # type: ignore[arg-type]  # the values of Keep are the names
    )
    no_nd = reckoning.has_no_nd(facts)
    return Solved(plan(situation), situation, flow, camera, assumed, no_nd)


def _situation(
    facts: Facts, settings: Settings, change_stops: float, camera: Camera, assumed: Assumed
) -> Situation:
    """What is given and what may move, the time left free."""
    focal_mm = reckoning.focal_of(facts)
    used_mm = focal_mm or reckoning.usual_focal_mm(facts)
    depth = reckoning.depth_of(facts, used_mm, assumed)
    return Situation(
        settings=settings,
        change_stops=min(max(change_stops, -MOST_STOPS), MOST_STOPS),
        camera=camera,
        widest_f=min(_widest(facts, used_mm), settings.f_number),
        narrowest_f=max(reckoning.lens_at(facts, used_mm).narrowest, settings.f_number),
        depth_f=depth.needed or None,
        wished_f=depth.exact,
        polariser=polariser_of(facts),
        nd_owned=facts.nd_stops or (),
        nd_on=facts.nd_on_stops or 0.0,
        tripod=not reckoning.by_hand(facts),
        small_steps=bool(facts.small_steps),
        focal_mm=focal_mm,
        near_m=reckoning.nearest_of(facts),
        far_m=reckoning.farthest_of(facts),
        in_sun=_in_sun(facts.light),
        wind=bool(facts.wind),
    )


def _in_sun(light: str | None) -> bool | None:
    """Whether the water lies in the sun; None where sun may come and go, or no light was told."""
    if light in SUNLIT:
        return True
    return None if light is None or LIGHTS[light].ev100 > _EVEN_EV else False


#: Levers that give up the wished look of the water.
_OTHER_LOOK: Final = frozenset({Lever.SHORTER_TIME, Lever.LONGER_TIME, Lever.AVERAGE_ROCK})
#: Shade that leaves less than this to do is enough [stops] (own rule).
_HALF_A_STOP: Final = 0.5
#: Lights of the sun itself.
SUNLIT: Final = frozenset({"snow in sun", "full sun", "hazy sun"})
#: Up to this light no cloud and no shade is left to wait for [EV] (heavy overcast, open shade).
_EVEN_EV: Final = 12.0


def timed(look_times: tuple[float, float]) -> tuple[float, float]:
    """Times of a look, its short end not longer than anybody waits."""
    shortest_s, longest_s = look_times
    return min(shortest_s, LONGEST_S), longest_s


def _widest(facts: Facts, focal_mm: float) -> float:
    sensor = reckoning.sensor_of(facts)
    if sensor.fixed_f_number is not None:
        return sensor.fixed_f_number
    return reckoning.lens_at(facts, focal_mm).widest_at(focal_mm)


def polariser_of(facts: Facts) -> Polariser:
    """On the lens, in the bag, or not owned; one that is on is owned."""
    if facts.polariser_on:
        return "on"
    return "off" if facts.has_polariser else "none"


# in words


def settings_text(settings: Settings | GivenSettings, camera: Camera) -> str:
    """Settings as the dials show them: `f/11, ISO 100, 1/4 s`; a phone has no f-number to set."""
    iso = iso_label(settings.iso, camera.dial)
    time = shutter_label(settings.shutter_s, camera.dial)
    if camera.sensor.fixed_f_number is not None:
        return f"{iso}, {time}"
    return f"{f_number_label(settings.f_number, camera.dial)}, {iso}, {time}"


def settings_on(given: GivenSettings, camera: Camera) -> str:
    """Settings with what is on the lens."""
    filters = filters_on(given)
    text = settings_text(given, camera)
    return TEXTS["filter.beside"].format(settings=text, filters=filters) if filters else text


def filters_on(given: GivenSettings) -> str:
    """What is on the lens, for the card; "" for nothing."""
    names = [TEXTS["filter.polariser"]] if given.polariser_on else []
    if given.nd_on_stops:
        names.append(TEXTS["filter.nd"].format(stops=measures.plain(given.nd_on_stops)))
    return measures.listing(names, TEXTS["and"])


def time_text(time_s: float, camera: Camera) -> str:
    """The mark on the dial nearest to a time, no further than the camera goes: `1/4 s`."""
    within_s = min(max(time_s, camera.shortest_s), camera.longest_s)
    return nearest(time_marks(camera.dial), within_s).label


def watch_text(time_s: float, camera: Camera) -> str:
    """The mark on the dial nearest to a time; beyond the dial what the watch shall show."""
    if time_s > camera.longest_s:
        return shutter_label(time_s, camera.dial)
    return time_text(time_s, camera)


def look_is(facts: Facts, shutter_s: float) -> str:
    """The look that a time makes, and by which numbers: the person's, or those of a usual fall."""
    assumed = Assumed()
    flow = reckoning.flowing_or_usual(facts, reckoning.focal_of(facts), assumed)
    share = flow.share(shutter_s)
    look = TEXTS[f"look.{look_of(share).value}"]
    key = f"highlights.look_is{_how_far(share, assumed)}"
    return TEXTS[key].format(look=look, share=measures.percent(share))


def _how_far(share: float, assumed: Assumed) -> str:
    """Ends the name of a sentence about a look: by usual numbers, or through the whole frame."""
    if rests_on_usual(assumed):
        return "_usual"
    return "_whole" if share > 1 else ""


def filters_text(solved: Solved) -> str:
    """What is on the lens in a plan, and what comes off it, ready to follow the settings."""
    start, end = solved.situation, solved.plan
    pieces: list[str] = []
    if end.polariser == "on" or end.polariser != start.polariser:
        pieces.append(TEXTS[f"filter.polariser_{end.polariser}"])
    if end.nd_on or end.nd_on != start.nd_on:
        key = "filter.nd_on" if end.nd_on else "filter.nd_off"
        pieces.append(TEXTS[key].format(stops=measures.plain(end.nd_on)))
    return "".join(f", {piece}" for piece in pieces)


def look_text(solved: Solved) -> str:
    """The look at the end of the plan: `; still textured, water crosses 5.3 % of the frame`."""
    shutter_s = solved.plan.settings.shutter_s
    before, after = solved.look(solved.situation.settings.shutter_s), solved.look(shutter_s)
    now = "" if before is after else "_now"
    share = solved.flow.share(shutter_s)
    key = f"highlights.look{now}{_how_far(share, solved.assumed)}"
    look = TEXTS[f"look.{after.value}"]
    return TEXTS[key].format(look=look, share=measures.percent(share))


def step_text(step: Step, camera: Camera) -> str:
    """One lever in a few words, with its price where there is one."""
    values = _step_values(step, camera)
    key = f"lever.{step.lever.value}.{'brighter' if step.stops > 0 else 'darker'}"
    priced = f"price.{step.price.value}"
    text = TEXTS[key].format(**values)
    return text + (TEXTS[priced].format(**values) if priced in TEXTS else "")


def other_text(
    step: Step, camera: Camera, *, in_sun: bool | None = None, nd_on: float = 0.0
) -> str:
    """A lever beyond dials and filters, in a few words.

    Args:
        step: with what it takes.
        camera: whose dials it moves.
        in_sun: the water is in the sun; None: unknown.
        nd_on: ND that is on the lens already [stops].
    """
    key = f"other.{step.lever.value}"
    if step.lever is Lever.ND and nd_on:
        key = "other.nd_instead"
    if step.lever is Lever.WAIT and (step.stops > 0 or in_sun is False):
        key = "other.wait_brighter" if step.stops > 0 else "other.wait_darker"
    elif step.lever is Lever.WAIT and step.numbers["need_stops"] > SHADE_STOPS + _HALF_A_STOP:
        key = "other.wait_part"
    return TEXTS[key].format(**_step_values(step, camera), on=measures.plain(nd_on))


def _step_values(step: Step, camera: Camera) -> dict[str, str]:
    values = {name: measures.plain(number) for name, number in step.numbers.items()}
    return values | {
        "f_number": f_number_label(step.settings.f_number, camera.dial),
        "time": shutter_label(step.settings.shutter_s, camera.dial),
        "iso": iso_label(step.settings.iso, camera.dial),
        "stops": measures.stops(step.stops),
        "need": measures.stops(step.numbers.get("need_stops", 0.0)),
        "nd": measures.plain(step.nd_on),
        "nd_stops": measures.stops(step.nd_on),
    }


def path_text(solved: Solved) -> str:
    """The marks on the way, where small steps were wished."""
    paths = [", ".join(mark.label for mark in step.path) for step in solved.plan.steps]
    return "; ".join(path for path in paths if path)


def others_text(solved: Solved, most: int = 3, *, for_look: bool = False) -> str:
    """The first few levers beyond, joined.

    Args:
        solved: the plan that ends before the wish is met.
        most: how many.
        for_look: only what keeps the wished look.
    """
    left_out = {Lever.BRACKET} | ({Lever.ND} if solved.no_nd else set())
    left_out |= _OTHER_LOOK if for_look else set()
    others = [step for step in solved.plan.others if step.lever not in left_out][:most]
    in_sun = solved.situation.in_sun
    on = solved.plan.nd_on
    texts = [other_text(step, solved.camera, in_sun=in_sun, nd_on=on) for step in others]
    return measures.listing(texts, TEXTS["or"])
