"""How to choose among frames told at home: the rule, and the look of each by the walk's numbers."""

from __future__ import annotations

from typing import Final

from bot.dialogue.compose import Role
from bot.dialogue.steps.home import told_choice, told_frames, told_names, told_shares
from bot.dialogue.texts import TEXTS, measures
from bot.dialogue.turn import Turn
from core.water import Look

#: Looks in the order of their times.
_ORDER: Final = tuple(Look)


def how(turn: Turn) -> None:
    """Say the rule, the look of each frame, and which is nearest to the one that is wanted."""
    turn.say(Role.SETTINGS, "asked.choose")
    places = range(len(told_frames.frames_of(turn)))
    looks = {place: told_shares.look_in(turn, place) for place in places}
    groups = [[place for place in places if looks[place] is look] for look in _ORDER]
    turn.say(Role.CHECK, "home.looks", list="; ".join(_group(turn, one) for one in groups if one))
    best = told_choice.ranked(turn)[0]
    turn.say(Role.CHECK, "home.nearest", frame=told_names.name(turn, best))
    if told_frames.review_of(turn).copied:
        turn.say(Role.ASSUMPTION, "home.copied")
    else:
        turn.say(Role.CHECK, "home.copies")
    told_frames.change(turn, about=())


def _group(turn: Turn, places: list[int]) -> str:
    """Frames of one look, the shortest first, with the share of each."""
    frames = told_frames.frames_of(turn)
    ordered = sorted(places, key=lambda place: frames[place].shutter_s)
    shares = [measures.percent(told_shares.share_of(turn, place)) for place in ordered]
    return TEXTS["home.looks_group"].format(
        frames=measures.listing([told_names.name(turn, place) for place in ordered], TEXTS["and"]),
        look=TEXTS[f"look.{told_shares.look_in(turn, ordered[0]).value}"],
        shares=", ".join(shares),
    )
