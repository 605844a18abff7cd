"""Lens: what has to be known of fall and kit before a focal length is chosen."""

from __future__ import annotations

from typing import Final

from bot.dialogue import reckoning
from bot.dialogue.compose import Role
from bot.dialogue.facts import Facts
from bot.dialogue.questions import in_units
from bot.dialogue.states import State, Trigger
from bot.dialogue.steps.anywhere import planning, repeat
from bot.dialogue.steps.walk import lens_choice
from bot.dialogue.turn import Turn

#: Questions of this step in the order of what matters most, each with what answers it.
_FALL: Final = (
    ("height", ("fall_height_m", "stream", "section")),
    ("distance", ("distance_m",)),
    ("nearest", ("nearest_m",)),
)
_STREAM: Final = (
    ("distance", ("distance_m",)),
    ("nearest", ("nearest_m",)),
    ("water_speed", ("water_speed_mps", "water_depth_m")),
)
_KIT: Final = (
    ("format", ("camera_format",)),
    ("lenses", ("lenses", "focal_mm")),
)
#: Questions that may be skipped: put once, then an assumption stands in.
_ONCE: Final = frozenset({"nearest", "water_speed", "lenses", "format"})


def go_on(turn: Turn) -> None:
    """Ask for what is missing, or choose the lens and move to the composition."""
    turn.be_in(State.LENS, Trigger.ARRIVED)
    if planning.is_planning(turn):
        planning.go_on(turn)
        return
    question = missing(turn)
    if question is not None:
        repeat.ask(turn, in_units(question, turn.units))
        return
    lens_choice.choose(turn)


def missing(turn: Turn) -> str | None:
    """The question that matters most among what is still unknown, None when enough is known."""
    facts = turn.facts
    geometry = _STREAM if reckoning.is_stream(facts) else _FALL
    unknown = [name for name, slots in geometry if not _filled(facts, slots)]
    if facts.section and facts.focal_mm and "nearest" in unknown:
        unknown.remove("nearest")  # no near rock stands in a part of the fall
    if turn.walk.checks.get("geometry") == "skipped":
        unknown = []
    if len(unknown) == len(geometry):
        return "stream" if geometry is _STREAM else "geometry"
    kit = [name for name, slots in _KIT if not _filled(facts, slots)]
    if reckoning.is_phone(facts):
        kit = []
    if len(kit) == len(_KIT) and not _put(turn, "kit"):
        kit = ["kit"]
    open_ones = [name for name in (*unknown, *kit) if name not in _ONCE or not _put(turn, name)]
    return open_ones[0] if open_ones else None


def _put(turn: Turn, name: str) -> bool:
    """Whether it was asked for, alone or with others: nobody is sent to the water twice."""
    names = (name, "stream") if name == "water_speed" else (name,)
    return any(turn.asked_before(f"{n}{ending}") for n in names for ending in ("", "_feet"))


def _filled(facts: Facts, slots: tuple[str, ...]) -> bool:
    known = facts.known()
    return any(known.get(slot) for slot in slots)


def answer_format(turn: Turn, value: str) -> None:
    """The sensor format by number."""
    keys = {
        "full_frame": "full frame",
        "aps_c": "aps-c",
        "four_thirds": "four thirds",
        "one_inch": "1-inch",
        "phone": "phone",
    }
    turn.learn(Facts(camera_format=keys[value]))
    go_on(turn)


def answer_too_near(turn: Turn, value: str) -> None:
    """Go back, or take a section."""
    if value == "farther":
        turn.unlearn("distance_m")
        turn.say(Role.CAUTION, "lens.go_back")
        turn.ask(in_units("distance", turn.units))
        return
    turn.learn(Facts(section=True))
    if turn.walk.checks.get("focal") == "chosen":
        turn.unlearn("focal_mm")
    lens_choice.choose(turn)
