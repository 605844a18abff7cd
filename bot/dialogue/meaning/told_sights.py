"""What a message says of single frames at home: of which, and what is seen in them."""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from functools import lru_cache
from typing import Final

from bot.dialogue.facts import Blink, Facts, Symptom
from bot.dialogue.kept import ToldFrame
from bot.dialogue.meaning import sights, topics
from bot.dialogue.meaning.frame_named import named_in
from bot.dialogue.meaning.review_words import focus_told
from bot.dialogue.meaning.said import in_english
from bot.dialogue.meaning.words import tokens
from bot.dialogue.reading import read
from bot.dialogue.reading.frame_times import times_in
from bot.dialogue.reading.phrases import any_of
from bot.dialogue.tongues import in_any, whole_words

#: Names of what is seen, by the symptom or the warning that was read.
_OF_SYMPTOM: Final[Mapping[Symptom, str]] = {
    Symptom.NO_TEXTURE: "mush",
    Symptom.TOO_FROZEN: "hard",
    Symptom.JUST_WHITE: "clipped",
    Symptom.TOO_BRIGHT: "bright",
    Symptom.TOO_DARK: "dark",
    Symptom.BLACK_ROCK: "dark",
    Symptom.SOFT_NEAR: "depth",
    Symptom.SOFT_FAR: "depth",
    Symptom.SOFT_ALL: "soft",
    Symptom.SOFT_SPOTS: "drops",
    Symptom.LEAVES_SMEARED: "leaves",
    Symptom.GLARE: "glare",
    Symptom.BLUE_CAST: "blue",
    Symptom.LEANING: "leaning",
    Symptom.TOO_SMALL: "small",
}
_OF_BLINK: Final[Mapping[Blink, str]] = {
    Blink.NOTHING: "holds",
    Blink.DOTS: "holds",
    Blink.PATCHES: "clipped",
    Blink.SHEET: "clipped",
    Blink.SKY: "sky",
}
#: The same by meaning, where no symptom was read.
_OF_CAUSE: Final[Mapping[str, str]] = {
    "time_too_long": "mush",
    "time_too_short": "hard",
    "water_clipped": "clipped",
    "underexposed": "dark",
    "near_too_close": "depth",
    "shake": "soft",
    "diffraction": "soft",
    "focused_wrong": "soft",
    "wet_glass": "drops",
    "wind_in_leaves": "leaves",
    "unturned_polariser": "glare",
    "cool_white_balance": "blue",
    "tilted_camera": "leaning",
    "too_wide": "small",
    "sky_gap": "sky",
    "border_clutter": "clutter",
    "horizon_tilted": "tilted",
}
#: A part that tells more than these tells of the place.
_OF_A_FRAME: Final = frozenset({"shutter_s", "f_number", "iso", "symptoms", "blink"})
#: A sight is meant from this nearness on: no question is asked, so that more is sure (own rule).
_NEAR: Final = 0.4
#: What is the same in all frames of one view, unless one of them is named.
OF_THE_VIEW: Final = frozenset(
    {"holds", "sky", "clutter", "tilted", "leaning", "small", "blue", "glare"}
)
_PART: Final = re.compile(rf"[;:!?]|\.(?!\d)|,(?!\d)|\s-\s|\b{in_any('told_sights.but')}\b")
_SENTENCE: Final = re.compile(r"[;!?]|\.(?!\d)")
_AND: Final = whole_words("told_sights.and")
_SOFT: Final = any_of(
    rf"{in_any('told_sights.soft')}(?!(?: {in_any('told_sights.and')})?(?: \w+){{0,2}}"
    rf" {in_any('told_sights.discs')})"
)
_DROPS: Final = whole_words("told_sights.drops")
#: Drops of the fall itself, that a short time holds.
_IN_AIR: Final = whole_words("told_sights.in_air")
_LEAVES: Final = whole_words("told_sights.leaves")
_MOVED: Final = whole_words("told_sights.moved")
_BORDER: Final = any_of(
    rf"{in_any('told_sights.white')} (?:\w+ )?{in_any('told_sights.gap')}",
    in_any("told_sights.gap_of_sky"),
)
_HOLDS: Final = any_of(
    rf"{in_any('told_sights.nothing')}(?: \w+){{0,3}}? {in_any('told_sights.blinks')}",
    in_any("told_sights.holds"),
)
_GOOD: Final = any_of(
    rf"{in_any('told_sights.threads')}(?: \w+){{0,3}}? {in_any('told_sights.seen')}",
    in_any("told_sights.good"),
)
_BEST: Final = any_of(
    in_any("told_sights.best"),
    rf"{in_any('told_sights.like')}(?: \w+){{0,3}} {in_any('told_sights.most')}",
)
#: "Lovely evening", "good light": praise, but of no frame.
_OF_ELSE: Final = whole_words("told_sights.of_else")
_NOT: Final = whole_words("told_sights.no")
_METERED: Final = whole_words("told_sights.metered")
_ALL: Final = whole_words("told_sights.all")
_HARD: Final = whole_words("told_sights.hard")
_CLIPPED: Final = whole_words("told_sights.clipped")
_WHITE_BLOBS: Final = whole_words("told_sights.white_blobs")
_SPARKS: Final = whole_words("told_sights.sparks")


#: A part with none of these only names frames, for the next part to speak of.
_SAYS: Final = whole_words("told_sights.says")


@dataclass(frozen=True)
class Remark:
    """What one part of a message says: of which frames, what, and against which other.

    Args:
        places: of the frames; () where the part names none.
        seen: names of what is seen.
        against: the frame that it is compared with.
        in_all: whether it speaks of all of them.
    """

    places: tuple[int, ...]
    seen: tuple[str, ...]
    against: int | None
    in_all: bool


def remarks(said: str, frames: tuple[ToldFrame, ...]) -> tuple[Remark, ...]:
    """What a message says of frames, part by part; frames named alone join the next part.

    Args:
        said: the message in English, as `plain_times` leaves it.
        frames: that were told of.
    """
    found: list[Remark] = []
    waiting: tuple[int, ...] = ()
    for part, begins in _parts(said, frames):
        named = named_in(part, frames)
        seen = _seen_in(part)
        if waiting and named.places and (begins or _names_behind(part)):
            found.append(Remark(waiting, (), None, in_all=False))
            waiting = ()
        places = tuple(dict.fromkeys((*waiting, *named.places)))
        waiting = ()
        in_all = _ALL.search(part) is not None and not places
        if seen or named.against is not None or in_all:
            found.append(Remark(places, seen, named.against, in_all))
        elif places and not _SAYS.search(part):
            waiting = places
        elif places:
            found.append(Remark(places, (), None, in_all=False))
    return (*found, Remark(waiting, (), None, in_all=False)) if waiting else tuple(found)


#: So far into a part its first words name its frame: "and the 1/8" (own rule) [characters].
_AT_FIRST: Final = 8


def _names_behind(part: str) -> bool:
    """Whether a part names its frame behind what it says: "the leaves moved in the 1/15"."""
    times = times_in(part)
    return bool(times) and times[0].start > _AT_FIRST


def _parts(said: str, frames: tuple[ToldFrame, ...]) -> Iterator[tuple[str, bool]]:
    """The message part by part, and whether a sentence begins with it."""
    for sentence in _SENTENCE.split(said):
        begins = True
        for part in _of_sentence(sentence, frames):
            yield part, begins
            begins = False


def _of_sentence(sentence: str, frames: tuple[ToldFrame, ...]) -> Iterator[str]:
    """The parts of a sentence; "and" parts only where another frame is named behind it."""
    for clause in _PART.split(sentence):
        begun = ""
        for piece in _AND.split(clause):
            other = bool(begun) and bool(named_in(piece, frames).places)
            if other and _seen_in(begun.strip()) and _seen_in(piece.strip()):
                yield begun
                begun = piece
            else:
                begun = f"{begun.strip()} and {piece.strip()}" if begun else piece
        if begun.strip():
            yield begun.strip()


@lru_cache(maxsize=64)
def _seen_in(part: str) -> tuple[str, ...]:
    """The names of what a part tells, each once; a part is looked into before it is taken."""
    return tuple(dict.fromkeys(_seen(part)))


def _seen(part: str) -> Iterator[str]:
    """The names of what a part tells, the surest first."""
    if focus_told(part) is not None:
        return
    told = read(part)
    if _HOLDS.search(part):
        yield "holds"
        return
    yield from _liked(part, told)
    read_as = list(_read_as(part, told))
    yield from read_as
    placed = set(told.known()) - _OF_A_FRAME
    if not (read_as or placed) and (name := _by_meaning(part)) is not None:
        yield name


def _liked(part: str, told: Facts) -> Iterator[str]:
    """Praise, and what is liked best."""
    if _METERED.search(part):
        yield "metered"
    if told.symptoms or _NOT.search(part):
        return
    if _BEST.search(part):
        yield "best"
    elif _GOOD.search(part) and not _OF_ELSE.search(part):
        yield "good"


def _read_as(part: str, told: Facts) -> Iterator[str]:
    if _WHITE_BLOBS.search(part) and not _NOT.search(part):
        yield "clipped"  # of the water, no drops on the glass
    else:
        yield from _read_by_words(part, told)


def _read_by_words(part: str, told: Facts) -> Iterator[str]:
    for symptom in told.symptoms:
        yield _OF_SYMPTOM[symptom]
    if told.blink is not None:
        yield _OF_BLINK[told.blink]
    if _DROPS.search(part) and not _IN_AIR.search(part):
        yield "drops"
    elif _LEAVES.search(part) and (_SOFT.search(part) or _MOVED.search(part)):
        yield "leaves"
    elif _SOFT.search(part) and not set(told.symptoms) & {Symptom.SOFT_NEAR, Symptom.SOFT_FAR}:
        yield "soft"
    elif _BORDER.search(part):
        yield "sky"
    elif not told.symptoms and told.blink is None:
        yield from _of_the_water(part)


def _of_the_water(part: str) -> Iterator[str]:
    """Plain words for water that is frozen, or white that is lost."""
    if _HARD.search(part):
        yield "hard"
    elif _CLIPPED.search(part) and not _NOT.search(part):
        yield "holds" if _SPARKS.search(part) else "clipped"


def _by_meaning(part: str) -> str | None:
    """What the words are nearest to, where they are near to a sight and no question."""
    if len(tokens(part)) < topics.LEAST_WORDS or _GOOD.search(part) or _BEST.search(part):
        return None
    cause, near = sights.nearest(in_english(part))
    return _OF_CAUSE.get(cause) if near >= _NEAR else None
