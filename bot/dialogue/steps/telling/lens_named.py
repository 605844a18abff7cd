"""A lens of the bag that is chosen by its number alone: "going with 35", "so the 35 does it"."""

from __future__ import annotations

import re
from typing import Final

from bot.dialogue import reckoning
from bot.dialogue.facts import Facts
from bot.dialogue.meaning.asking import asks
from bot.dialogue.meaning.lens_put_on import CLAUSES, NOT
from bot.dialogue.meaning.said import Said
from bot.dialogue.reading.phrases import plain
from bot.dialogue.tongues import in_any
from bot.dialogue.turn import Turn

#: A focal length, and nothing that is counted or measured.
_NUMBER: Final = (
    r"(?P<{name}>\d{{2,3}})(?: ?mm)?(?: (?:prime|lens))?(?![\w./,:%-]*\d)"
    r"(?! ?(?:%|(?:m|ft|feet|foot|cm|s|sec\w*|min\w*|stops?|degrees?|people|of us|times|frames)\b))"
)
_TAKEN: Final = re.compile(
    rf"\b{in_any('lens_named.taken')} (?:{in_any('lens_named.the')} )?"
    rf"{_NUMBER.format(name='taken')}"
)
_ENOUGH: Final = re.compile(
    rf"(?<![\w./,-]){_NUMBER.format(name='enough')} {in_any('lens_named.enough')}\b"
)


def with_lens(turn: Turn, said: Said, told: Facts) -> Facts:
    """What was read, with the lens that is chosen from the bag in the focal length's place.

    Args:
        turn: the answer under construction; it knows the bag.
        said: the message.
        told: what was read in it; lenses told in the same message are in the bag, too.

    Returns:
        The facts; numbers that only name what is known are no longer told as not placed.
    """
    if told.focal_mm is None and not told.ask_what_if:
        chosen = _chosen(turn, said, told)
        if chosen is not None:
            told = told.updated(Facts(focal_mm=chosen))
    return _without_known(turn, told)


def _chosen(turn: Turn, said: Said, told: Facts) -> float | None:
    """The focal length of a prime in the bag that a clause chooses."""
    bag = {
        lens.shortest_mm
        for lens in (*turn.facts.lenses, *told.lenses)
        if lens.shortest_mm == lens.longest_mm
    }
    for clause in CLAUSES.split(plain(said.english)):
        found = _ENOUGH.search(clause) or _TAKEN.search(clause)
        if (
            found is None
            or NOT.search(clause)
            or _is_asked(clause, enough="enough" in found.groupdict())
        ):
            continue
        number = float(found[found.lastgroup or 0])
        if number in bag:
            return number
    return None


def _is_asked(clause: str, *, enough: bool) -> bool:
    """Whether a clause only asks: "35 does it" without a sign tells, though "does" may ask."""
    return "?" in clause or (not enough and asks(Said(clause, clause)))


def _without_known(turn: Turn, told: Facts) -> Facts:
    """Numbers that found no place, without those that only say again what is known."""
    known = _known_numbers(turn, told)
    left = tuple(piece for piece in told.unread if _number_of(piece) not in known)
    return told if left == told.unread else told.model_copy(update={"unread": left})


def _known_numbers(turn: Turn, told: Facts) -> frozenset[float]:
    """Lenses of the bag, and lengths that were told, as people type them."""
    facts = turn.facts.updated(told)
    ends = {end for lens in facts.lenses for end in (lens.shortest_mm, lens.longest_mm)}
    lengths = {facts.fall_height_m, facts.distance_m, facts.nearest_m, reckoning.focal_of(facts)}
    return frozenset(round(one, 1) for one in ends | lengths if one is not None)


def _number_of(piece: str) -> float | None:
    found = re.fullmatch(r"(\d+(?:\.\d+)?) ?(?:mm|m)?", piece.strip())
    return float(found[1]) if found else None
