"""Beside a frame's answer: one offer in a line, and one question that may wait no longer."""

from __future__ import annotations

from typing import Final

from bot.dialogue import reckoning
from bot.dialogue.by_numbers import of_frame, share_told
from bot.dialogue.compose import Part, Role
from bot.dialogue.facts import Symptom
from bot.dialogue.steps.anywhere import repeat
from bot.dialogue.steps.frames import border_said, findings_said, look_said, views
from bot.dialogue.steps.walk import diagnosis
from bot.dialogue.turn import Turn
from core.frame.report import FrameReport, SizeNote
from core.water import Look, look_of

#: Questions that decide the next setting: nothing comes between them and their answer.
_DECIDING: Final = frozenset({"area", "sky_gap", "settings", "phone_again"})
_SHARP: Final = (Look.FROZEN, Look.CRISP)


def say(turn: Turn, report: FrameReport) -> None:
    """What is offered and asked beside what the frame asks for."""
    border_said.ask_later(turn, report)
    border_said.note(turn, border_said.stated(report))
    _offer_comparison(turn)
    _offer_times(turn, report)
    if turn.question_name not in _DECIDING:
        _ask(turn, report)


def _ask(turn: Turn, report: FrameReport) -> None:
    """At most one question, in place of the walk's, which waits."""
    glass, odds = _glass_is_asked(turn, report), look_said.odds(turn, report)
    if not glass and odds is None and not turn.walk.borders_open:
        return
    turn.leave_question_unsaid()
    if glass:
        turn.ask("glass")
    elif odds is not None:
        look_said.ask_odds(turn, odds)
    else:
        border_said.ask_next(turn)


def _glass_is_asked(turn: Turn, report: FrameReport) -> bool:
    soft = findings_said.is_soft(report.sharpness) and report.size_note is SizeNote.FULL
    return soft and not turn.asked_before("glass")


def answer_glass(turn: Turn, value: str) -> None:
    """Drops on the front glass, or none: then it is the focus."""
    turn.resume_question()
    if value == "drops":
        diagnosis.answer(turn, Symptom.SOFT_SPOTS)
        return
    turn.say(Role.SETTINGS, "glass.dry")
    repeat.put_again(turn)


# offers, each once on a walk, where there is room for its line


def _offer_comparison(turn: Turn) -> None:
    """Two frames of one view at different times have come."""
    frames = turn.context.conversation.measured
    view = views.of_one_view(frames)
    if len(view) > 1 and not views.same_time(frames[view[-1]], frames[view[-2]]):
        _offer(turn, "together.offer")


def _offer_times(turn: Turn, report: FrameReport) -> None:
    """A sharp frame of a plunging fall whose water is crisper than wished."""
    facts = turn.facts
    share = share_told(of_frame(facts, report), report.metadata.settings.shutter_s)
    if share is None or report.water is None or reckoning.is_stream(facts):
        return
    looks, wished = list(Look), reckoning.wished_look(facts)
    longer = look_of(share) in _SHARP and looks.index(wished) > looks.index(look_of(share))
    if longer and findings_said.fault_of(turn, report) is None:
        _offer(turn, "drawn.offer")


def _offer(turn: Turn, key: str) -> None:
    part = Part(Role.CHECK, key)
    if key not in turn.walk.checks and turn.has_room_for(part):
        turn.say(part.role, part.key)
        turn.change_walk(checks=turn.walk.checks | {key: "made"})
