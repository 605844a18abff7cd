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
from bot.dialogue.reading.phrases import any_of

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
#: A sight is meant from this nearness on (as for sights on the walk: own rule).
_NEAR: Final = 0.32
#: What is the same in all frames of one view, unless one of them is named.
OF_THE_VIEW: Final = frozenset(
    {"holds", "sky", "clutter", "tilted", "leaning", "small", "blue", "glare"}
)
_PART: Final = re.compile(
    r"[;:!?]|\.(?!\d)|,(?!\d)|\s-\s"
    r"|\b(?:but|though|although|while|whereas|aber|sondern|während|pero|mientras|sino)\b"
)
_AND: Final = re.compile(r"\b(?:and|und|y)\b")
_SOFT: Final = any_of(
    r"(?:soft|blurred|blurry|unsharp|fuzzy|weich\w*|unscharf\w*|bland[oa]s?|borros[oa]s?"
    r"|desenfocad\w+|movid[oa]s?|out of focus|shaken|shaky|(?:not|isn't|nicht) (?:\w+ )?sharp)"
    r"(?!(?: and| und| y)?(?: \w+){0,2} (?:discs?|disks?|spots?|circles?|dots?|blobs?|light"
    r"|scheiben"
    r"|flecken|manchas|discos))"
)
_DROPS: Final = any_of(
    r"(?:drops?|droplets?|discs?|disks?|tropfen|gotas?|wet (?:glass|lens))",
    r"(?:water|spray)(?: \w+)? on (?:the|my) (?:front )?(?:glass|lens|element)",
    r"(?:glass|lens|front element) (?:was|is|got) wet",
)
#: Drops of the fall itself, that a short time holds.
_IN_AIR: Final = any_of(
    r"(?:in|through) (?:the )?(?:mid-?)?air|mid-?air|hang(?:s|ing)?|frozen|freez\w*|stand(?:s|ing)?"
    r" still|fly\w*|single|in der luft|schweb\w*|stehen|einzeln\w*|(?:en|por) el aire|colgand\w+"
    r"|congelad\w+|suspendid\w+"
)
_LEAVES: Final = any_of(r"leaves|ferns?|foliage|branch(?:es)?|grass|blätter|laub|hojas|ramas")
_MOVED: Final = any_of(
    r"moved|moving|smear\w*|mess\w*|blur\w*|swaying|verwischt|bewegt|verwackelt|barrid[oa]s"
    r"|movid[oa]s"
)
_BORDER: Final = any_of(
    r"(?:white|bright|pale|weiss\w*|hell\w*|blanc[oa]s?|clar[oa]s?) (?:\w+ )?(?:triangle|wedge|gap"
    r"|corner|strip|hole|sliver|dreieck\w*|ecke|streifen|loch|triangulo|esquina|hueco|franja)",
    r"(?:triangulo|esquina|hueco|franja|trozo) (?:white|blanc\w+|clar\w+|de cielo)",
    r"(?:triangle|gap|dreieck\w*|triangulo) of (?:sky|light|white)|sky gap|himmelsloch",
)
_HOLDS: Final = any_of(
    r"(?:nothing|no|none|never|nichts|nada|not a thing)(?: \w+){0,3}? (?:blink\w*|flash\w*"
    r"|flicker\w*"
    r"|clip\w*|geblinkt|parpade\w*|geflackert)",
    r"(?:whites?|highlights?) (?:all )?(?:hold|held|are (?:fine|ok|good|intact))",
    r"(?:didn't|did not|doesn't) (?:blink|flash|clip)",
)
_GOOD: Final = any_of(
    r"(?:threads?|strands?|textured?|lines|hilos|fäden|structure)(?: \w+){0,3}? (?:there|visible"
    r"|nice"
    r"|good|lovely|clear|right|da|estan|ahi|schön|beautiful|sichtbar)",
    r"(?:lovely|beautiful|gorgeous|great|perfect|wonderful|nicer?|good|better|fine|sharp|sings?"
    r"|schön|toll"
    r"|bonit[oa]"
    r"|precios[oa]|perfekt|perfect[oa]|genial|works|klasse)",
    r"(?:love|like) (?:it|this|that|the|how)",
)
_BEST: Final = any_of(
    r"(?:best|favou?rite|prefer\w*|nicest|liebst\w*|lieblings\w*|besten?|schönste[nrs]?|favorit[oa]"
    r"|prefier\w*|(?:la|lo|el|the) mejor|(?:mas me|me) (?:gusta|like) mas|(?:mas"
    r"|more) me (?:gusta|like))",
    r"(?:my|the) (?:winner|pick|keeper|one (?:for me|i'?d? (?:keep|take|want|choose)))",
    r"i (?:really |just )?love|me encantan?|liebe ich|ich liebe",
    r"(?:like|love|mag)(?: \w+){0,3} (?:best|most|liebsten|mas)",
)
#: "Lovely evening", "good light": praise, but of no frame.
_OF_ELSE: Final = any_of(
    r"evening|day|time|walk|place|light|weather|trip|idea|abend|tag|licht|wetter|tarde|luz|dia|news"
)
_NOT: Final = any_of(
    r"not|no|isn't|aren't|never|nothing|don't|doesn't|nicht|kein\w*|too|less|worst"
)
_METERED: Final = any_of(
    r"(?:on the|by the|what the|the) (?:light )?meter(?:ed)?|metered|as metered|auf dem messer"
    r"|belichtungsmesser|fotometro|exposimetro"
)
_ALL: Final = any_of(
    r"all(?: of (?:them|it))?|each|every(?: one| frame| time)?|everywhere|both|alle[nrsm]?"
    r"|jede[nrsm]?"
    r"|beide[nrsm]?|überall|tod[oa]s|cada|amb[oa]s|(?:in|at|of) the (?:two|three|four|five|six"
    r"|\d)(?! \w)"
)
_HARD: Final = any_of(
    r"(?:like|as) ice|icy|frozen|crunchy|hard as \w+|eingefroren|gefroren|\w+hart|zu hart"
    r"|congelad[oa]s?"
    r"|hart wie \w+"
)
_CLIPPED: Final = any_of(
    r"blown|burn(?:t|ed)|clipp\w+|patches|blink\w*|flash(?:ed|es|ing)|ausgefressen|ausgebrannt"
    r"|geblinkt|quemad[oa]s?|parpade\w+|(?:white|whites) (?:is|are|was|were) (?:lost|gone)"
)
_SPARKS: Final = any_of(r"sparks?|sparkles?|dots?|points?|specks?|funken|punkte?|chispas?|puntos?")


#: A part with none of these only names frames, for the next part to speak of.
_SAYS: Final = any_of(
    r"is|are|was|were|isn't|aren't|wasn't|has|have|had|hasn't|looks?|ist|sind|war|waren|hat|haben"
    r"|son|estan?|tienen?|feels?|sings?|works?|shows?|lost|came|went|got|wirk\w*|zeig\w*|parec\w+"
)


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
    for part in _parts(said, frames):
        named = named_in(part, frames)
        seen = _seen_in(part)
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


def _parts(said: str, frames: tuple[ToldFrame, ...]) -> Iterator[str]:
    """The message part by part; "and" parts only where another frame is named behind it."""
    for clause in _PART.split(said):
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
