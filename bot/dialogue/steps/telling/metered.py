"""Settings that the meter gives, told as the light: "meter says 1/15 at f/11, ISO 100"."""

from __future__ import annotations

from typing import Final

from bot.dialogue import reckoning, solving
from bot.dialogue.facts import Facts
from bot.dialogue.folding import folded
from bot.dialogue.meaning.claims import claim_in
from bot.dialogue.meaning.dark_order import told_beside
from bot.dialogue.meaning.light_changed import light_change_in
from bot.dialogue.meaning.said import Said
from bot.dialogue.reading import read
from bot.dialogue.steps.anywhere import repeat
from bot.dialogue.steps.asked import dark_order
from bot.dialogue.steps.telling import told
from bot.dialogue.steps.walk import adjust, base
from bot.dialogue.steps.walk.taken import take_settings
from bot.dialogue.tongues import whole_words
from bot.dialogue.turn import Turn

_GIVES: Final = whole_words("metered.gives")


def answer(turn: Turn, said: Said, facts: Facts) -> bool:
    """Take metered settings for the light, and give those that follow from it; whether there are.

    Args:
        turn: the answer under construction.
        said: the message.
        facts: what was read in it.
    """
    if turn.is_at_home:
        return False
    order = told_beside(said)
    if order is not None:
        said, facts = order, read(order.english, units=turn.units)
    if not _is_metered(turn, said, facts):
        return False
    turn.remember_for_back()
    told.keep(turn, facts)
    told.note_filters(turn, facts)
    _may_go_on(turn)
    take_settings(turn)
    turn.change_walk(clean_stops=solving.level_of(turn.given), clipped_stops=None, first_stops=None)
    if order is None:
        base.give(turn)
    else:
        dark_order.say(turn, turn.given)
        repeat.put_again_if_open(turn)
    return True


def _may_go_on(turn: Turn) -> None:
    """An ND that is not on while the light is metered may go on for the look."""
    checks = {name: check for name, check in turn.walk.checks.items() if name != "nd"}
    if turn.walk.checks.get("nd") == "off":
        turn.change_walk(checks=checks)


def _is_metered(turn: Turn, said: Said, facts: Facts) -> bool:
    """Whether a message tells a whole reading, and claims or complains of nothing."""
    if facts.ask_what_if or adjust.is_complaint(facts) or claim_in(said) is not None:
        return False
    fixed = reckoning.is_phone(turn.facts.updated(facts))
    darker = turn.walk.given is not None and light_change_in(said.typed, said.language) is not None
    whole = facts.shutter_s is not None and (facts.f_number is not None or fixed or darker)
    return whole and _GIVES.search(folded(said.typed)) is not None
