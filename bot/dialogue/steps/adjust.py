"""Adjust: from what is wrong with a frame to the next settings, each lever with its price."""

from __future__ import annotations

from typing import Final

from bot.dialogue import reckoning, solving
from bot.dialogue.compose import Role
from bot.dialogue.context import GivenSettings
from bot.dialogue.facts import Blink, Facts, Symptom
from bot.dialogue.solving import Solved
from bot.dialogue.states import State, Trigger
from bot.dialogue.steps import base, diagnosis, keep, repeat
from bot.dialogue.texts import TEXTS, measures
from bot.dialogue.turn import Turn
from core.adjust import Price
from core.camera import POLARISER_STOPS
from core.exposure import Settings
from core.light import LIGHTS, metered_level
from core.series import nearest, step_by, time_marks
from core.water import AIM, look_of

#: Step for a blinking patch, and for a whole sheet of water [stops] (common practice: the
#: camera's preview overstates by half a stop to one, so 1/3 to 2/3; own rule: one for a sheet).
PATCH_STOPS: Final = 2 / 3
SHEET_STOPS: Final = 1.0
#: First and later steps up while nothing is lost [stops] (common practice: thirds).
UP_STOPS: Final = 2 / 3
UP_AGAIN_STOPS: Final = 1 / 3
#: An upward search ends after this much [stops] (own rule).
UP_LIMIT_STOPS: Final = 2.0
#: As much under on the meter is right for white water (common practice: -0.7 to -1 for a scene
#: metered as a whole).
RIGHT_UNDER_STOPS: Final = 0.7
#: "Too bright", "too dark" without a number [stops] (own rule).
UNSAID_STOPS: Final = 1.0
#: Nearer than this two brightnesses are the same [stops] (own rule: half a third).
SAME_STOPS: Final = 1 / 6
#: A time that the person's eye calls too long is at least halved twice (own rule: one halving of
#: the streaks is barely seen).
EYE_STOPS: Final = 2.0

#: Above this share water is no longer textured; see `core.water`.
BANDS_TOP: Final = 0.10
#: A new time after a wrong look lies within this factor of the aim (own rule: not at the edge).
WELL_INSIDE: Final = 1.5

_BLINK_CHANGE: Final = {Blink.PATCHES: -PATCH_STOPS, Blink.SHEET: -SHEET_STOPS}
#: Symptoms that are about brightness or the look; the others have their own short answers.
_EXPOSURE: Final = frozenset(
    {
        Symptom.NO_TEXTURE,
        Symptom.TOO_FROZEN,
        Symptom.JUST_WHITE,
        Symptom.TOO_BRIGHT,
        Symptom.TOO_DARK,
    }
)
#: What a message must hold to be a complaint about a frame.
COMPLAINTS: Final = frozenset({"symptoms", "meter_stops", "change_stops", "blink"})


def is_complaint(facts: Facts) -> bool:
    """Whether a message says what is wrong with (or right about) a frame that was taken."""
    return bool(COMPLAINTS & set(facts.known())) or facts.histogram_at_right is not None


def trouble(turn: Turn, told: Facts) -> None:
    """Answer a complaint from what was told and what was known before."""
    others = [symptom for symptom in told.symptoms if symptom not in _EXPOSURE]
    exposure = set(told.symptoms) & _EXPOSURE
    quiet = told.blink in {None, Blink.NOTHING, Blink.DOTS} and not exposure
    if others and quiet and told.meter_stops is None and told.change_stops is None:
        diagnosis.answer(turn, others[0])
        return
    if take_settings(turn) is None:
        if others:
            diagnosis.answer(turn, others[0])
            return
        _need_settings(turn)
        return
    if told.blink is Blink.SKY:
        _to_highlights(turn)
        turn.say(Role.SETTINGS, "highlights.sky")
        turn.ask("sky_gap")
        return
    if told.blink is not None and not exposure and told.meter_stops is None:
        blinked(turn, told.blink)
        return
    _solve_complaint(turn, told, exposure)


def _need_settings(turn: Turn) -> None:
    """Without settings nothing can be reckoned; a phone that shows none gets its own advice."""
    if reckoning.is_phone(turn.facts):
        turn.say(Role.SETTINGS, "phone.no_settings")
    turn.ask("settings")


def take_settings(turn: Turn) -> GivenSettings | None:
    """The settings of the frame in question: those told, the rest as given or assumed."""
    facts, given = turn.facts, turn.walk.given
    f_number, shutter_s, iso = reckoning.exact_settings(facts)
    if shutter_s is None and given is None:
        return None
    assumed = reckoning.Assumed()
    camera = reckoning.camera_of(facts, assumed)
    focal_mm = reckoning.focal_of(facts)
    if given is None:
        used_mm = focal_mm or reckoning.USUAL_FULL_FRAME_MM / camera.sensor.crop_factor
        depth = reckoning.depth_of(facts, used_mm, assumed)
        given = GivenSettings(f_number=depth.exact, shutter_s=shutter_s or 1.0, iso=camera.base_iso)
        if f_number is None and camera.sensor.fixed_f_number is None:
            turn.reason("why.assumed_f_number")
    changes = {
        "f_number": f_number,
        "shutter_s": shutter_s,
        "iso": iso,
        "focal_mm": focal_mm,
        "polariser_on": facts.polariser_on,
        "nd_on_stops": facts.nd_on_stops,
    }
    told = {name: value for name, value in changes.items() if value is not None}
    given = given.model_copy(update=told)
    turn.change_walk(given=given)
    turn.unlearn("f_number", "shutter_s", "iso")  # they live on in what was given
    return given


# complaints in words and numbers


def _solve_complaint(turn: Turn, told: Facts, exposure: set[Symptom]) -> None:
    facts = turn.facts
    given = turn.walk.given
    assert given is not None  # noqa: S101  # the caller has taken the settings
    settings = Settings(given.f_number, given.shutter_s, given.iso)
    change = _with_told_light(turn, given, _wanted_change(told, exposure))
    times = _times_for(turn, exposure, settings)
    solved = solving.solve(_with_filters(facts, given), settings, change, look_times=times)
    if not solved.plan.steps and not exposure and solved.plan.met:
        _keep_as_it_is(turn, solved, told)
        return
    _note_levels(turn, given, clipped=change < 0)
    turn.be_in(State.ADJUST, Trigger.TROUBLE)
    say_plan(turn, solved)
    turn.move(Trigger.ADJUSTED)
    turn.ask("blink_again")


def _with_filters(facts: Facts, given: GivenSettings) -> Facts:
    """What is known, with the filters as they were given last."""
    on = {"polariser_on": True} if given.polariser_on and facts.polariser_on is None else {}
    nd = {"nd_on_stops": given.nd_on_stops} if given.nd_on_stops else {}
    return facts.model_copy(update=on | nd)


def _with_told_light(turn: Turn, given: GivenSettings, change: float) -> float:
    """A warning says little of how far over it is; the light, if it was told, says more."""
    light = LIGHTS.get(turn.facts.light or "")
    if light is None or change >= 0:
        return change
    filters = given.nd_on_stops + (POLARISER_STOPS if given.polariser_on else 0.0)
    settings = Settings(given.f_number, given.shutter_s, given.iso)
    over = metered_level(settings, light.ev100, filters)
    return min(change, -over)


def _wanted_change(told: Facts, exposure: set[Symptom]) -> float:
    """The change of brightness that a complaint asks for [stops], positive: brighter."""
    if told.change_stops is not None:
        return told.change_stops
    if told.blink in _BLINK_CHANGE:
        return _BLINK_CHANGE[told.blink]
    if told.meter_stops is not None:
        dark = Symptom.TOO_DARK in exposure
        right = -RIGHT_UNDER_STOPS <= told.meter_stops <= SAME_STOPS and not dark
        return 0.0 if right else -told.meter_stops
    if Symptom.JUST_WHITE in exposure:
        return -SHEET_STOPS
    if Symptom.TOO_BRIGHT in exposure:
        return -UNSAID_STOPS
    return UNSAID_STOPS if Symptom.TOO_DARK in exposure else 0.0


def _times_for(
    turn: Turn, exposure: set[Symptom], settings: Settings
) -> tuple[float, float] | None:
    """Limits of the time [s]: the wished look; the person's eye where it contradicts the sum."""
    facts = turn.facts
    flow = reckoning.flowing_or_usual(facts, reckoning.focal_of(facts), reckoning.Assumed())
    look = reckoning.wished_look(facts)
    shortest_s, longest_s = flow.times(look)
    white = Symptom.JUST_WHITE in exposure and flow.share(settings.shutter_s) > BANDS_TOP
    if Symptom.NO_TEXTURE in exposure or white:
        eye_s = settings.shutter_s / 2**EYE_STOPS
        inside_s = flow.time_for(AIM[look] * WELL_INSIDE)
        longest_s = min(longest_s, inside_s if inside_s < settings.shutter_s else eye_s)
        return min(shortest_s, longest_s), longest_s
    if Symptom.TOO_FROZEN in exposure:
        eye_s = settings.shutter_s * 2**EYE_STOPS
        inside_s = flow.time_for(AIM[look] / WELL_INSIDE**2)  # light is what is short here
        shortest_s = max(shortest_s, inside_s if inside_s > settings.shutter_s else eye_s)
        return shortest_s, max(shortest_s, longest_s)
    if look_of(flow.share(settings.shutter_s)) is not look and not exposure and not facts.look:
        return min(settings.shutter_s, shortest_s), max(settings.shutter_s, longest_s)
    return None


def _keep_as_it_is(turn: Turn, solved: Solved, told: Facts) -> None:
    """Nothing to change: a third under on the meter is right for white water."""
    turn.change_walk(given=_merged(turn, solved))
    key = "adjust.keep"
    values = {
        "settings": solving.settings_text(solved.given, solved.camera),
        "look": solving.look_text(solved),
    }
    if told.meter_stops is not None and told.meter_stops < 0:
        key = "highlights.meter_under"
        values["stops"] = measures.stops(told.meter_stops)
    turn.say(Role.SETTINGS, key, **values)
    _to_highlights(turn)
    turn.ask("blink")


def _to_highlights(turn: Turn) -> None:
    turn.be_in(State.HIGHLIGHTS, Trigger.NEW_FRAME)


def _merged(turn: Turn, solved: Solved) -> GivenSettings:
    """Where a plan ends, with the focus that was given before."""
    given = turn.walk.given
    focus_m = given.focus_m if given else None
    return solved.given.model_copy(update={"focus_m": focus_m or reckoning.focus_of(turn.facts)})


# what the camera's warning shows


def blinked(turn: Turn, blink: Blink) -> None:
    """Answer what blinks after a test frame."""
    given = take_settings(turn)
    if given is None:
        _need_settings(turn)
        return
    _to_highlights(turn)
    match blink:
        case Blink.NOTHING:
            _note_levels(turn, given, clipped=False)
            _up(turn, given)
        case Blink.DOTS:
            _note_levels(turn, given, clipped=False)
            holds(turn, "highlights.dots")
        case Blink.SKY:
            turn.say(Role.SETTINGS, "highlights.sky")
            turn.ask("sky_gap")
        case Blink.PATCHES:
            darker(turn, PATCH_STOPS, "highlights.darker")
        case Blink.SHEET:
            darker(turn, SHEET_STOPS, "highlights.much_darker")


def _note_levels(turn: Turn, given: GivenSettings, *, clipped: bool) -> None:
    """Keep the brightest level known to hold and the darkest known to clip."""
    level = solving.level_of(given)
    walk = turn.walk
    if clipped:
        known = walk.clipped_stops
        turn.change_walk(clipped_stops=level if known is None else min(known, level))
    else:
        known = walk.clean_stops
        turn.change_walk(clean_stops=level if known is None else max(known, level))


def _up(turn: Turn, given: GivenSettings) -> None:
    """Nothing lost: brighter, until the edge is known or the search has gone far enough."""
    walk = turn.walk
    level = solving.level_of(given)
    edge = walk.clipped_stops
    first = walk.first_stops if walk.first_stops is not None else level
    turn.change_walk(first_stops=first)
    near_edge = edge is not None and edge - level <= PATCH_STOPS + SAME_STOPS
    if near_edge or level - first >= UP_LIMIT_STOPS - SAME_STOPS:
        holds(turn, "highlights.held")
        return
    brighter(turn, UP_STOPS if level - first < SAME_STOPS else UP_AGAIN_STOPS)


def brighter(turn: Turn, stops: float) -> None:
    """There is room: the next frame is brighter."""
    given = take_settings(turn)
    if given is None:
        turn.ask("settings")
        return
    stops = min(stops, SHEET_STOPS)
    solved = _plan_from(turn, given, stops)
    if not solved.plan.steps:
        holds(turn, "highlights.held")
        return
    turn.change_walk(given=_merged(turn, solved))
    turn.say(
        Role.SETTINGS,
        "highlights.brighter",
        settings=solving.settings_text(solved.given, solved.camera) + solving.filters_text(solved),
        stops=measures.stops(solved.situation.change_stops - solved.plan.remaining_stops),
        look=solving.look_text(solved),
    )
    turn.reason("why.to_the_right")
    base.explain_share(turn, solved.flow, solved.given.shutter_s, solved.camera)
    turn.ask("blink_again")


def darker(turn: Turn, stops: float, key: str) -> None:
    """The water clips: the next frame is darker by this step, or back where it held."""
    given = take_settings(turn)
    if given is None:
        _need_settings(turn)
        return
    _note_levels(turn, given, clipped=True)
    clean = turn.walk.clean_stops
    level = solving.level_of(given)
    back = clean is not None and SAME_STOPS < level - clean <= stops + SAME_STOPS
    if back and clean is not None:
        stops = level - clean
    solved = _plan_from(turn, given, -stops)
    turn.be_in(State.ADJUST, Trigger.TROUBLE)
    if back and solved.plan.met:
        turn.change_walk(given=_merged(turn, solved))
        holds(turn, "highlights.back")
        return
    say_plan(turn, solved, key)
    turn.move(Trigger.ADJUSTED)
    turn.ask("blink_again")


def _plan_from(turn: Turn, given: GivenSettings, change: float) -> Solved:
    settings = Settings(given.f_number, given.shutter_s, given.iso)
    times = _times_for(turn, set(), settings)
    return solving.solve(_with_filters(turn.facts, given), settings, change, look_times=times)


def holds(turn: Turn, key: str = "highlights.held") -> None:
    """The whites hold and the look is right: keep."""
    given = take_settings(turn)
    if given is None:
        repeat.put_again(turn)
        return
    camera = reckoning.camera_of(turn.facts, reckoning.Assumed())
    flow = reckoning.flowing_or_usual(
        turn.facts, reckoning.focal_of(turn.facts), reckoning.Assumed()
    )
    share = flow.share(given.shutter_s)
    look = TEXTS["highlights.look_is"].format(
        look=TEXTS[f"look.{look_of(share).value}"], share=measures.percent(share)
    )
    settings = solving.settings_text(given, camera)
    turn.say(Role.SETTINGS, key, settings=settings, look=look)
    base.explain_share(turn, flow, given.shutter_s, camera)
    keep.reached(turn)


def bracket(turn: Turn) -> None:
    """One darker frame for the sky, by the time alone."""
    given = take_settings(turn)
    if given is None:
        return
    camera = reckoning.camera_of(turn.facts, reckoning.Assumed())
    shorter = step_by(time_marks(camera.dial), given.shutter_s, 2 * camera.dial.value)
    turn.say(
        Role.SETTINGS,
        "highlights.bracket",
        settings=solving.settings_text(given, camera),
        darker=nearest(time_marks(camera.dial), shorter.exact).label,
    )


# the plan in words


def say_plan(turn: Turn, solved: Solved, key: str = "adjust.next") -> None:
    """Say where a plan ends, its levers and prices, and what lies beyond it."""
    plan = solved.plan
    settings = solving.settings_text(solved.given, solved.camera)
    filters = solving.filters_text(solved)
    turn.change_walk(given=_merged(turn, solved))
    turn.learn(_filters_now(solved))
    if plan.met:
        turn.say(Role.SETTINGS, key, settings=settings + filters, look=solving.look_text(solved))
    else:
        turn.say(
            Role.SETTINGS,
            "adjust.cant",
            settings=settings + filters,
            stops=measures.stops(plan.remaining_stops),
            side=TEXTS["side.dark" if plan.remaining_stops > 0 else "side.bright"],
        )
        turn.say(Role.CHECK, "adjust.beyond", others=solving.others_text(solved))
    base.explain_share(turn, solved.flow, solved.given.shutter_s, solved.camera)
    _say_steps(turn, solved)
    base.tell_assumed(turn, solved.assumed, solved.camera)


def _filters_now(solved: Solved) -> Facts:
    plan, situation = solved.plan, solved.situation
    changed = Facts()
    if plan.polariser != situation.polariser:
        changed = changed.updated(Facts(polariser_on=plan.polariser == "on"))
    if plan.nd_on != situation.nd_on:
        changed = changed.updated(Facts(nd_on_stops=plan.nd_on))
    return changed


def _say_steps(turn: Turn, solved: Solved) -> None:
    """Each lever with its price; the way in small steps where it was wished."""
    path = solving.path_text(solved)
    if path:
        turn.say(Role.CHECK, "adjust.path", path=path)
    steps = solved.plan.steps
    texts = [solving.step_text(step, solved.camera) for step in steps]
    if len(texts) > 1 or any(step.price in _PRICED for step in steps):
        turn.say(Role.CHECK, "adjust.how", steps=_sentence("; ".join(texts)))
    for text in texts:
        turn.reason("why.step", step=_sentence(text))
    _say_instead(turn, solved)


def _sentence(text: str) -> str:
    return text[:1].upper() + text[1:]


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
        others = [solving.other_text(step, solved.camera) for step in solved.plan.instead[:3]]
        turn.say(Role.ASSUMPTION, "adjust.instead", others=measures.listing(others, TEXTS["or"]))


#: Prices that are said with the answer, not only under `why`.
_PRICED: Final = frozenset({Price.DIFFRACTION, Price.NOISE})
