"""One question where two causes are nearly as likely and their remedies differ."""

from __future__ import annotations

from typing import Final

from bot.dialogue.facts import TOO_MUCH_LIGHT, Facts, Symptom
from bot.dialogue.meaning.said import Said
from bot.dialogue.steps.anywhere import repeat
from bot.dialogue.steps.asked import by_meaning, topic_or_cause
from bot.dialogue.steps.walk import adjust
from bot.dialogue.texts import TEXTS
from bot.dialogue.turn import Turn

#: Two causes nearer than this are not told apart by the words (own rule: 12 of 100 complaints
#: are so near; where a symptom was read plainly, it decides).
_CLOSE: Final = 0.5
#: What is to be seen where a cause is behind it; others are not asked about.
_TELLS: Final = {
    "water_clipped": "tells.water_clipped",
    "contrast_too_great": "tells.contrast_too_great",
    "time_too_long": "tells.time_too_long",
    "time_too_short": "tells.time_too_short",
    "underexposed": "tells.underexposed",
    "shake": "tells.shake",
    "focused_wrong": "tells.focused_wrong",
    "near_too_close": "tells.near_too_close",
    "diffraction": "tells.diffraction",
    "wind_in_leaves": "tells.wind_in_leaves",
    "wet_glass": "tells.wet_glass",
    "fogged_glass": "tells.fogged_glass",
    "stray_light": "tells.stray_light",
    "iso_raised": "tells.iso_raised",
    "sky_gap": "tells.sky_gap",
    "unturned_polariser": "tells.unturned_polariser",
}


def ask(turn: Turn, said: Said, told: Facts) -> bool:
    """Ask which of two causes it is; whether there was a doubt.

    Args:
        turn: the answer under construction.
        said: the message.
        told: what was read in it.
    """
    pair = _in_doubt(turn, said, told)
    if pair is None:
        return False
    first, second = pair
    turn.ask(
        "cause",
        first=TEXTS[_TELLS[first]],
        second=TEXTS[_TELLS[second]],
        causes=f"{first} {second}",
    )
    return True


def _in_doubt(turn: Turn, said: Said, told: Facts) -> tuple[str, str] | None:
    found = topic_or_cause.complaint(turn, said, told)
    if len(found) < 2 or found[0].score - found[1].score >= _CLOSE:
        return None
    first, second = found[0].name, found[1].name
    if "shake" in {first, second} and (told.hand_held or told.has_tripod is False):
        return None  # nothing held the camera
    read = tuple(symptom for symptom in told.symptoms if symptom is not Symptom.SOFT_ALL)
    if TOO_MUCH_LIGHT & set(read) or {first, second} & topic_or_cause.treated(read):
        return None  # the words say what it is; "all soft" alone has many causes
    if not {first, second} <= _TELLS.keys() or _remedy(first) == _remedy(second):
        return None
    return first, second


def _remedy(cause: str) -> object:
    return topic_or_cause.SYMPTOMS.get(cause) or by_meaning.CAUSES.get(cause)


def answer(turn: Turn, value: str) -> None:
    """Answer the cause that was chosen, as if the words had named it alone."""
    question = turn.context.conversation.question
    first, second = (question.values["causes"] if question else " ").split(" ")
    turn.resume_question()
    cause = first if value == "first" else second
    symptom = topic_or_cause.SYMPTOMS.get(cause)
    if symptom is not None:
        adjust.trouble(turn, Facts(symptoms=(symptom,)))
        return
    by_meaning.CAUSES[cause](turn, "")
    if repeat.standing(turn) is not None:
        repeat.put_again(turn)
