"""English wordings: who and what a message speaks of."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

PEOPLE: Final[Mapping[str, str]] = {
    "person": """
        i, me, we, us, he, she, they, him, her, them, someone, somebody, everyone, everybody,
        one of, (man|woman|boy|girl|kid|kids|child|children|toddler|baby|son|daughter|brother|
        sister|mother), (father|mum|mom|dad|grandad|grandpa|grandma|granny|gran|uncle|aunt|
        cousin|nephew|niece|wife), (husband|friend|friends|mate|buddy|partner|boyfriend|
        girlfriend|colleague|student|students), (pupil|pupils|teacher|sir|leader|guide|hiker|
        hikers|photographer|tourist|tourists|lad|lads), (guy|guys|lady|ladies|gentleman|
        gentlemen|youngest|eldest|oldest|group|couple|bride|model), (twins|class|team|walker|
        walkers|climber|swimmer|stranger|dog|others|people|member|members)""",
    "other": """
        he, she, they, him, her, them, someone, somebody, one of, two of, three of, both of,
        (man|woman|boy|girl|kid|kids|child|children|toddler|son|daughter|brother|sister|mother),
        (father|mum|mom|dad|grandad|grandpa|grandma|granny|gran|uncle|aunt|cousin|nephew|niece|
        wife), (husband|friend|friends|mate|buddy|partner|boyfriend|girlfriend|colleague|
        student|students), (pupil|pupils|teacher|sir|leader|guide|hiker|hikers|photographer|
        tourist|lad|lads|guy|guys), (lady|gentleman|youngest|eldest|oldest|couple|twins|walker|
        dog|others|member|members), (mr|mrs|ms|old|little|our|my) (man|woman|lady|chap|boy|girl|
        one|two|three)""",
    "thing": """
        (cap|hat|lens|tripod|camera|phone|bag|leaf|leaves|log|logs|branch|stick|duck|filter|
        strap), (bottle|glove|umbrella|cloth|battery|card|foam|bubbles|hood|twig|light|drone|
        sunglasses)""",
    "thing_adrift": """
        (ferns|moss|ivy|trunks|icicles|ring|rings|ducks|duck|bubbles|thumbnail), (cap|hat|lens|
        leaf|leaves|duck|filter|bottle|glove|cloth|foam|bubbles|hood|twig|boat|mist|eye),
        (frames|smoke|fog|spray|petal|focus|conversation|horizon|clouds)""",
    "water": """
        water, waters, river, creek, stream, brook, beck, burn, pool, current, rapid, rapids,
        torrent, flow, pond, lake, weir, eddy, whirlpool, plunge pool, ford, falls, fall,
        waterfall, cascade""",
}
