"""The look of a frame's water: by the person's numbers, else by the picture alone, or in doubt."""

from __future__ import annotations

from typing import Final

from bot.dialogue import reckoning
from bot.dialogue.by_numbers import of_frame, share_told
from bot.dialogue.compose import Role
from bot.dialogue.states import State
from bot.dialogue.steps.anywhere import repeat
from bot.dialogue.texts import TEXTS, measures
from bot.dialogue.turn import Turn
from core.frame.report import FrameReport
from core.water import Look, look_of

#: A share by the numbers that lies outside the picture's bounds by more than this factor is worth
#: a question (own rule: one stop of time).
_FAR: Final = 2.0


def line(turn: Turn, report: FrameReport) -> tuple[str, dict[str, str]] | None:
    """What is known of the look, and from what: key and values; None where nothing is."""
    share, seen = _told(turn, report), report.look
    if share is not None:
        agrees = seen is not None and look_of(share) in {seen.look, seen.neighbour}
        key = "seen.look.both" if agrees else "seen.look.numbers"
        return key, {"look": _word(look_of(share)), "share": measures.crossed(share)}
    return line_of_picture(report)


def line_of_picture(report: FrameReport) -> tuple[str, dict[str, str]] | None:
    """What the picture alone tells of the look, or why it can't be told."""
    seen = report.look
    if seen is None:
        return None
    if seen.doubt is not None:
        return f"seen.look.{seen.doubt.value.replace(' ', '_')}", {}
    if seen.look is None:
        return None
    if seen.neighbour is None:
        return "seen.look.picture", {"look": _word(seen.look)}
    return "seen.look.or", {"look": _word(seen.look), "neighbour": _word(seen.neighbour)}


def in_picture(turn: Turn, report: FrameReport) -> str | None:
    """The look in a few words as the picture shows it, where no numbers tell it."""
    seen = report.look
    if seen is None or seen.look is None or _told(turn, report) is not None:
        return None
    look = _word(seen.look)
    if seen.neighbour is not None:
        look = measures.listing([look, _word(seen.neighbour)], TEXTS["or"])
    return TEXTS["seen.look.in_picture"].format(look=look)


def misses_wish(turn: Turn, report: FrameReport) -> bool:
    """Whether the frame has, by the numbers, another look than the one that was asked for.

    Once a frame is kept the others are rungs of its ladder: they may look as they do.
    """
    before, share = turn.before.conversation.walk, _told(turn, report)
    kept = before is not None and before.state is State.KEEP
    if kept or share is None or turn.facts.look is None:
        return False
    return look_of(share) is not reckoning.wished_look(turn.facts)


def _word(look: Look) -> str:
    return TEXTS[f"look.{look.value}"]


def _told(turn: Turn, report: FrameReport) -> float | None:
    """The share of this frame by the person's numbers.

    Its time is the file's; without data, the one that was given before the frame came.
    """
    before, shutter_s = turn.before.conversation.walk, report.metadata.settings.shutter_s
    given = before.given if before is not None else None
    if shutter_s is None and not report.metadata.present and given is not None:
        shutter_s = given.shutter_s
    return share_told(of_frame(turn.facts, report), shutter_s)


def again(turn: Turn, report: FrameReport) -> None:
    """After a frame was measured again: what is known of its look now.

    Which settings a frame without data had is not known any more: others were given since.
    """
    timed = report.metadata.settings.shutter_s is not None
    said = (line(turn, report) if timed else line_of_picture(report)) or ("seen.look.wide", {})
    turn.say(Role.SETTINGS, said[0], **said[1])
    found = odds(turn, report)
    if found is not None:
        ask_odds(turn, found)


def odds(turn: Turn, report: FrameReport) -> tuple[Look, Look] | None:
    """The look by the numbers and that of the picture, where they disagree.

    None too when it was asked about on this walk already.
    """
    taken, seen = of_frame(turn.facts, report), report.look
    share = share_told(taken, report.metadata.settings.shutter_s)
    if share is None or seen is None or seen.look is None or turn.asked_before("look_odds"):
        return None
    low, high = seen.share_low or 0.0, seen.share_high or 1.0
    outside = share < low / _FAR or share > high * _FAR
    agree = look_of(share) in {seen.look, seen.neighbour}
    return (look_of(share), seen.look) if outside and not agree else None


def ask_odds(turn: Turn, found: tuple[Look, Look]) -> None:
    """Ask which of the two it is: nothing is asserted against the person's numbers."""
    told, seen = found
    turn.ask("look_odds", told=_word(told), seen=_word(seen))


def answer_odds(turn: Turn, value: str) -> None:
    """What the person sees decides; the numbers are theirs to correct."""
    turn.resume_question()
    turn.say(Role.SETTINGS, f"look_odds.{value}")
    repeat.put_again(turn)
