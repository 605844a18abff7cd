"""A claimed difference of brightness, reckoned: yes or no, with the numbers."""

from __future__ import annotations

import re
from collections.abc import Mapping
from typing import Final

from bot.dialogue import reckoning, solving
from bot.dialogue.compose import Role
from bot.dialogue.facts import Facts
from bot.dialogue.meaning.claims import Claim, claim_in
from bot.dialogue.meaning.compared import weighed_in
from bot.dialogue.meaning.said import Said
from bot.dialogue.meaning.values_named import named_in, plainly
from bot.dialogue.reading import read
from bot.dialogue.solving import watch_text
from bot.dialogue.steps.asked.as_bright import with_time
from bot.dialogue.steps.asked.supposing import settings_now
from bot.dialogue.steps.asked.told_around import rest_of
from bot.dialogue.steps.walk import base
from bot.dialogue.steps.walk.base_said import RIGHT_STOPS
from bot.dialogue.texts import TEXTS, measures
from bot.dialogue.tongues import in_any
from bot.dialogue.turn import Turn
from bot.dialogue.walk_state import GivenSettings
from core.exposure import Settings
from core.series import SAME_STOPS, f_number_label

#: "Took f/8 iso 200 1/10": that frame is told, with all that stands beside it.
_TELLS: Final = re.compile(rf"\W*{in_any('compared.tells')}\b")
#: A claim that is off by no more is right (own rule: a mark of the dial).
RIGHT: Final = 0.34


def answer(turn: Turn, said: Said) -> str | None:
    """Check what a message claims.

    Args:
        turn: the answer under construction.
        said: the message.

    Returns:
        What else the message tells of the scene; None when it claims nothing to be checked.
    """
    claim = claim_in(said)
    now = settings_now(turn)
    if claim is not None and claim.stops == 0.0 and weighed_in(said) is not None:
        return None  # "1/15 against 1/2 s, same brightness": the two are weighed
    if claim is None or (now is None and not (claim.one and claim.other)):
        return None
    now = now or _plain(turn)
    one = _completed(turn, claim.one, now)
    if claim.of_light and not claim.other:
        _say_light(turn, claim, one)
        return rest_of(claim.rest)
    if claim.other:
        other: GivenSettings | None = _completed(turn, claim.other, now, claim.told)
    else:
        other = now if claim.one else _before(turn, one)
    if other is None:
        return None
    _say_difference(turn, claim, one, other)
    return claim.rest if _TELLS.match(claim.taken) else rest_of(claim.rest)


def _plain(turn: Turn) -> GivenSettings:
    """What the dials stand at where nothing was said of them."""
    camera = turn.camera
    return GivenSettings(f_number=camera.sensor.best_f[0], shutter_s=1.0, iso=camera.base_iso)


def _completed(
    turn: Turn, named: Mapping[str, float], now: GivenSettings, told: str = ""
) -> GivenSettings:
    """Named settings with the rest as it was said with them, else as it is set now."""
    if not named:
        return now
    values = dict(_said_with(turn, named)) | dict(named)
    f_number, shutter_s, iso = reckoning.exact_settings(Facts.model_validate(values))
    exact = {"f_number": f_number, "shutter_s": shutter_s, "iso": iso}
    facts = read(told) if told else Facts()
    filters = {"polariser_on": facts.polariser_on, "nd_on_stops": facts.nd_on_stops}
    changes = {slot: value for slot, value in (exact | filters).items() if value is not None}
    return now.model_copy(update=changes)


def _said_with(turn: Turn, named: Mapping[str, float]) -> Mapping[str, float]:
    """The settings that the bot said last in which the named ones stand."""
    for note in reversed(turn.context.conversation.own):
        said = {one.slot: one.value for one in named_in(plainly(note.values.get("settings", "")))}
        if said and all(said.get(slot) == value for slot, value in named.items()):
            return said
    return {}


def _before(turn: Turn, one: GivenSettings) -> GivenSettings | None:
    """The settings that were given before the last ones."""
    walks = (snapshot.walk for snapshot in reversed(turn.context.conversation.history))
    given = (walk.given for walk in walks if walk is not None and walk.given is not None)
    return next((before for before in given if before != one), None)


def _say_difference(turn: Turn, claim: Claim, one: GivenSettings, other: GivenSettings) -> None:
    stops = solving.level_of(one) - solving.level_of(other)
    values = {
        "one": solving.settings_on(one, turn.camera),
        "other": solving.settings_on(other, turn.camera),
        "stops": measures.stops(stops),
        "side": TEXTS["brighter" if stops > 0 else "darker"],
    }
    yes = _holds(claim, stops)
    if abs(stops) < SAME_STOPS:
        turn.say(Role.SETTINGS, "checked.same_yes" if yes else "checked.same_no", **values)
        return
    turn.say(Role.SETTINGS, "checked.differs_yes" if yes else "checked.differs_no", **values)
    same_f_s = other.shutter_s * (one.f_number / other.f_number) ** 2
    moved_s = same_f_s * 2 ** (one.filter_stops - other.filter_stops)
    as_bright = other.model_copy(update={"f_number": one.f_number, "shutter_s": moved_s})
    equal = with_time(as_bright, one.shutter_s, turn.camera, turn.facts)
    if one.f_number != other.f_number and "f/" not in equal:
        equal = f"{f_number_label(one.f_number, turn.camera.dial)} {equal}"
    turn.say(Role.CHECK, "checked.as_bright", other=values["other"], setting=equal)


def _holds(claim: Claim, stops: float) -> bool:
    """Whether a claim is right about this difference."""
    if claim.stops is None:
        return stops * claim.side >= SAME_STOPS
    claimed = claim.stops * (claim.side or (1 if stops > 0 else -1))
    return abs(stops - claimed) <= RIGHT


def _say_light(turn: Turn, claim: Claim, one: GivenSettings) -> None:
    """Settings against the light that was told or that frames have shown."""
    filters = Facts(polariser_on=one.polariser_on, nd_on_stops=one.nd_on_stops)
    settings = Settings(one.f_number, one.shutter_s, one.iso)
    over = base.over_stops(turn, turn.facts.updated(filters), settings)
    values = {"one": solving.settings_on(one, turn.camera)}
    if over is None:
        turn.say(Role.SETTINGS, "checked.light_unknown", **values)
    elif abs(over) <= RIGHT_STOPS:
        turn.say(Role.SETTINGS, "checked.light_right", **values)
    else:
        turn.say(
            Role.SETTINGS,
            "checked.light_yes" if _holds(claim, over) else "checked.light_no",
            stops=measures.stops(over),
            side=TEXTS["side.bright" if over > 0 else "side.dark"],
            time=watch_text(one.shutter_s * 2**-over, turn.camera),
            **values,
        )
