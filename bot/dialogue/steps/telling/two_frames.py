"""Two frames told in one message: which of their times is the better one."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue import reckoning, solving
from bot.dialogue.compose import Role
from bot.dialogue.facts import Facts, Symptom
from bot.dialogue.reading import read
from bot.dialogue.states import State, Trigger
from bot.dialogue.steps.walk import adjust, reasons
from bot.dialogue.steps.walk.taken import take_settings
from bot.dialogue.turn import Turn
from core.adjust import Candidate, better_time
from core.series import shutter_label


def answer(turn: Turn, text: str) -> bool:
    """Two times with what was seen at each: take the better one; whether that was the case."""
    parts = _CLAUSE.split(text)
    clauses = [read(clause, units=turn.units) for clause in parts] if len(parts) > 1 else []
    seen = [c for c in clauses if c.shutter_s is not None and adjust.is_complaint(c)]
    times = {c.shutter_s for c in seen}
    if len(times) < 2:
        return False
    facts = turn.facts
    flow = reckoning.flow_of(facts)
    found = better_time([_candidate(c) for c in seen], flow.times(reckoning.wished_look(facts)))
    best = seen[found.index]
    turn.learn(Facts(shutter_s=best.shutter_s))
    take_settings(turn)
    given, camera = turn.given, turn.camera
    turn.be_in(State.HIGHLIGHTS, Trigger.NEW_FRAME)
    turn.say(
        Role.SETTINGS,
        "told.better_time",
        settings=solving.settings_on(given, camera),
        look=solving.look_is(facts, given.shutter_s),
    )
    turn.reason("why.better_time", time=shutter_label(given.shutter_s, camera.dial))
    reasons.explain_share(turn, flow, given.shutter_s, camera)
    turn.ask("blink_again")
    return True


#: Where one frame's report ends and the next begins.
_CLAUSE: Final = re.compile(r"[;\n]|\.\s|,\s*(?=(?:and |but )?(?:at|with)\b)|\b(?:but|then)\b")


def _candidate(facts: Facts) -> Candidate:
    clipped = facts.blink is not None and facts.blink.value in {"patches", "sheet"}
    white = Symptom.JUST_WHITE in facts.symptoms
    mush = Symptom.NO_TEXTURE in facts.symptoms
    return Candidate(
        shutter_s=reckoning.exact_settings(facts)[1] or 1.0,
        level_stops=facts.meter_stops,
        clipped=True if clipped or white else None,
        textured=False if mush else None,
    )
