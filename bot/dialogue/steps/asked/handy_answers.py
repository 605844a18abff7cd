"""What is said on worries at the water that name a thing: shoes, a coat, white water, the log."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue import reckoning
from bot.dialogue.compose import Part, Role
from bot.dialogue.reading import read
from bot.dialogue.steps.asked import what_is_white
from bot.dialogue.steps.walk import keep
from bot.dialogue.texts import TEXTS, measures
from bot.dialogue.tongues import in_any, whole_words
from bot.dialogue.turn import Turn

#: Who walks on stones beside the water, or asks about shoes, is on no way down.
_ON_STONES: Final = re.compile(
    rf"\b{in_any('handy.shoes')}\b"
    rf"|\b{in_any('handy.stones')}\b.*\b{in_any('handy.beside')}\b"
    rf"|\b{in_any('handy.beside')}\b.*\b{in_any('handy.stones')}\b"
)
_COAT: Final = whole_words("handy.coat")
_ASKS_CAUSE: Final = whole_words("handy.cause")


def say_slippery(turn: Turn, text: str) -> None:
    """Wet stones beside the water, or wet ways down: the usual cautions, and who decides."""
    on_stones = _ON_STONES.search(text.casefold()) is not None
    turn.say(Role.SAFETY, "asked.slippery_shoes" if on_stones else "asked.slippery")


def say_after_flood(turn: Turn, text: str) -> None:
    """When to go back to water that rose: not today."""
    del text
    turn.say(Role.SAFETY, "asked.after_flood")


def say_leave_gear(turn: Turn, text: str) -> None:
    """Gear that was left at the water: nobody goes back for it."""
    del text
    turn.say(Role.SAFETY, "asked.leave_gear")


def say_people(turn: Turn, text: str) -> None:
    """Where somebody may stand for scale; a bright coat is nobody's rule."""
    turn.say(Role.SETTINGS, "asked.people")
    if _COAT.search(text.casefold()):
        turn.say(Role.CHECK, "asked.people_coat")


def say_white_or_long(turn: Turn, text: str) -> None:
    """How white that is too bright is told from a time that is too long; what this time makes."""
    what_is_white.say_which(turn, read(text).shutter_s)


def say_log_line(turn: Turn, text: str) -> None:
    """A line to keep of what was set; before that, what belongs in it."""
    del text
    given = turn.walk.given or turn.walk.kept
    if given is None:
        turn.say(Role.SETTINGS, "asked.log_line")
        return
    light = turn.facts.light
    turn.say(
        Role.SETTINGS,
        "asked.log_line_now",
        settings=keep.noted(turn, given),
        light=f", {TEXTS[f'known.light.{light}']}" if light else "",
    )


def say_leaves(turn: Turn, text: str) -> None:
    """Leaves that move: a frame of their own, and why they smear where that is asked."""
    keep.leaf_frame(turn)
    say_why_leaves(turn, text)


def say_why_leaves(turn: Turn, text: str) -> None:
    """Why leaves smear beside a sharp rock, in front of what helps; where that is asked."""
    if _ASKS_CAUSE.search(text.casefold()):
        turn.parts = [Part(Role.SETTINGS, "verdict.wind"), *turn.parts]


def say_focus_on_water(turn: Turn, text: str) -> None:
    """Why water gives focus nothing to hold on to, and what does, with its distance."""
    del text
    focus_m = reckoning.focus_of(turn.facts)
    if turn.facts.nearest_m is None or focus_m is None or reckoning.is_phone(turn.facts):
        turn.say(Role.SETTINGS, "answer.focus_on_water")
        return
    focus = measures.length(focus_m, turn.units)
    turn.say(Role.SETTINGS, "asked.focus_water", focus=focus)
