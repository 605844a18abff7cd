"""Which of one's own filters go into the bag: for the light to come, and for an open spot."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

from bot.dialogue.compose import Role
from bot.dialogue.solving import watch_text
from bot.dialogue.steps.asked import filter_answers
from bot.dialogue.steps.visits import rough_card
from bot.dialogue.steps.walk import base
from bot.dialogue.texts import TEXTS, measures
from bot.dialogue.turn import Turn
from core.exposure import Settings
from core.light import LIGHTS, metered_level
from core.series import f_number_label, shutter_label

#: What is packed for while no light is told, and what stands for a canopy (common practice).
_USUAL: Final = "overcast"
_TREES: Final = "wooded gorge"
#: A filter may take so much more than the light asks for [stops] (own rule: the textured look
#: leaves more room than that).
_TOLERANCE: Final = 2 / 3
#: From this much too bright on a filter is worth naming [stops] (own rule).
_WORTH_A_FILTER: Final = 1.0


@dataclass(frozen=True)
class _Coming:
    """The light that is coming, and how much too bright the wished time is in it [stops]."""

    sky: str
    open_stops: float
    shade: str
    shade_stops: float

    def wants(self, stops: float) -> bool:
        """Whether a grey filter is of use in one of the two."""
        return stops <= max(self.open_stops, self.shade_stops) + _TOLERANCE


def usual_or_own(turn: Turn) -> str:
    """The filters of a packing list: those of one's own that are of use, else the usual ones."""
    facts, usual = turn.facts, [TEXTS["bag.usual_nd"]]
    bring, _ = _chosen(turn, _coming(turn, None))
    polariser = [TEXTS["filter.polariser"]] if facts.has_polariser is None else []
    return ", ".join([*polariser, *bring, *(usual if facts.nd_stops is None else [])])


def choose(turn: Turn, light: str | None) -> None:
    """Say which filters to bring, which to leave, and for which light.

    Args:
        turn: the answer under construction.
        light: that the question names.
    """
    coming = _coming(turn, light)
    bring, leave = _chosen(turn, coming)
    if not (bring or leave):
        turn.say(Role.SETTINGS, "bag.filters_usual", list=usual_or_own(turn))
    elif not leave:
        turn.say(Role.SETTINGS, "bag.filters_all", bring=measures.listing(bring, TEXTS["and"]))
    elif not bring:
        turn.say(Role.SETTINGS, "bag.filters_none", leave=measures.listing(leave, TEXTS["and"]))
    else:
        listed = {"bring": measures.listing(bring, TEXTS["and"])}
        listed["leave"] = measures.listing(leave, TEXTS["and"])
        turn.say(Role.SETTINGS, "bag.filters", **listed)
    _say_light(turn, coming)


def judge(turn: Turn, stops: float, light: str | None, *, leave: bool) -> None:
    """Say whether one grey filter may stay at home.

    Args:
        turn: the answer under construction.
        stops: that it takes.
        light: that the question names.
        leave: it is asked whether it can stay; else whether it is needed.
    """
    coming = _coming(turn, light)
    stays, now = not coming.wants(stops), base.standing(turn)
    behind_s = now.wanted.shutter_s * 2 ** (stops - coming.open_stops)
    thing = TEXTS["filter.nd"].format(stops=measures.plain(stops, 0))
    turn.say(
        Role.SETTINGS,
        "bag.nd",
        word=TEXTS["bag.yes" if stays is leave else "bag.no"],
        what=TEXTS["bag.leave" if stays else "bag.take"].format(thing=thing),
        sky=TEXTS[f"light.{coming.sky}"],
        time=watch_text(behind_s, now.camera),
    )
    _say_light(turn, coming)


def _coming(turn: Turn, light: str | None) -> _Coming:
    """The sky that is coming and the shade that may be there; a named light is one of them."""
    named = light or turn.trip.forecast or turn.facts.light or _USUAL
    of_sky = named in rough_card.OF_THE_SKY
    sky = named if of_sky else (_sky_forecast(turn) or _USUAL)
    shade = _TREES if of_sky else named
    wanted = base.standing(turn).wanted
    return _Coming(sky, _over(wanted, sky), shade, _over(wanted, shade))


def _sky_forecast(turn: Turn) -> str | None:
    forecast = turn.trip.forecast
    return forecast if forecast in rough_card.OF_THE_SKY else None


def _over(wanted: Settings, light: str) -> float:
    return metered_level(wanted, LIGHTS[light].ev100)


def _chosen(turn: Turn, coming: _Coming) -> tuple[list[str], list[str]]:
    """The names of the filters that are of use, and of those that are none."""
    facts = turn.facts
    bring = [TEXTS["filter.polariser"]] if facts.has_polariser else []
    leave: list[str] = []
    for stops in sorted(facts.nd_stops or ()):
        name = TEXTS["filter.nd"].format(stops=measures.plain(stops, 0))
        (bring if coming.wants(stops) else leave).append(name)
    return bring, leave


def _say_light(turn: Turn, coming: _Coming) -> None:
    """What each light takes for the wished time."""
    now = base.standing(turn)
    values = {
        "time": shutter_label(now.wanted.shutter_s, now.camera.dial),
        "f_number": f_number_label(now.wanted.f_number, now.camera.dial),
        "sky": TEXTS[f"light.{coming.sky}"],
        "open": _takes(coming.open_stops),
        "shade": TEXTS[f"light.{coming.shade}"],
        "trees": _takes(coming.shade_stops),
    }
    turn.say(Role.CHECK, "bag.light", **values)
    filter_answers.say_filter_times(turn, now, LIGHTS[coming.sky])
    if turn.facts.has_polariser and coming.shade_stops < _WORTH_A_FILTER:
        turn.say(Role.CHECK, "bag.polariser_dim")


def _takes(over_stops: float) -> str:
    """How many stops of filter; none below one stop."""
    if over_stops < _WORTH_A_FILTER:
        return TEXTS["bag.no_filter"]
    return TEXTS["bag.of_filter"].format(stops=measures.stops(over_stops))
