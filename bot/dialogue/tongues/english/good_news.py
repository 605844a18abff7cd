"""English words that may stand beside good news without making it doubtful."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

# Words that tell of nobody's trouble; own list.
_KNOWN: Final = """
    a an the and so just very really now again all both each everyone everybody we i you he she they
    it me us him her them my our his their ours mine is are was were am be been got get have has had
    did that this these those there here at in on to of from for with by up back as too also then
    car cars path trail road track hut shelter hotel home house tent bus van parking park lot bridge
    viewpoint platform deck trailhead meadow lawn grass bench table picnic sun shade shore bank
    blanket blankets tea cocoa soup coffee clothes socks jacket jackets dry warm wet muddy dirty
    tired hungry thirsty scared shaken frightened happy relieved fine ok okay safe sound good well
    great alright right unhurt thanks thank thx cheers phew whew wow lol haha god lucky luck sorry
    yes yep yeah yup finally already close call scare lesson learned learnt friend friends wife
    husband son daughter brother sister mum mom dad kid kids child children dog group people came
    made sitting sit sat standing waiting together inside indoors drinking eating heading driving
    drove going moment minute minutes ago one two three four five six seven eight nine ten pm old
    seen your much many only bit little quite scary heating counting counted count heads complete
    fuss storm thunder rain sky passed over stopped linn everything calm worry worries helping kind
    heater sorted anymore more any plaster bandage easily himself herself themselves laughing
    glove gloves hat hats mittens on just bruise bruises bruised scratch scratches scratched graze
    nice hug hugs proper safely soundly crew team class high higher ground out but no nothing nobody
    students pupils participants for since long ago hour hours lunch noon ages nah nope towel towels
"""

WORDS: Final[Mapping[str, str]] = {
    "good_news.known": _KNOWN,
    # What they came away from, and where they went themselves.
    "good_news.left_behind": (
        r"(?:away |far )?(?:of|from|off) the"
        r" (?:water|river|creek|stream|pool|gorge|canyon|edge|cliff|falls?)"
        r"|(?:we|i) (?:all )?(?:left|went (?:up|back|inside|home))"
    ),
    # What warms, beside the news that somebody is warm again.
    "good_news.warmth": """
        hands hand fingers feet toes heater put layer layers fleece feel feeling better much hot
        drank drink moving around walked never mind map gps the""",
}
