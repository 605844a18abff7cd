"""Wind in the leaves, and who walks along."""

from __future__ import annotations

from typing import Final

from bot.dialogue.reading.draft import Draft
from bot.dialogue.reading.party import slowest_in
from bot.dialogue.reading.phrases import any_of, exactly
from bot.dialogue.tongues.english.people import KIN

_LEAVES: Final = (
    r"(?:branch tips|tips|leaves|leafs|leaf|foliage|ferns?|branches|twigs|trees|grass(?:es)?|bushes"
    r"|greenery|fronds|reeds|willows?|birch(?:es)?|beech(?:es)?|aspens?|alders?|plants|flowers|moss)"
)
_STILL: Final = (
    r"(?:still|motionless|stock[ -]still|dead still|quiet|calm|at rest|limp|as if painted|like"
    r" (?:statues|stone))"
)
_STIRRING: Final = (
    r"(?:moving|shak(?:ing|es?)|wav(?:ing|es?)|flutter(?:ing|s)?|danc(?:ing|es?)|sway(?:ing|s)?"
    r"|trembl(?:ing|es?)|jiggl(?:ing|es?)|wobbl(?:ing|es?)|flapp?(?:ing|s)?|rustl(?:ing|es?)"
    r"|quiver(?:ing|s)?|nodding|bouncing|twitch(?:ing|es)?|bobb(?:ing|s)|shiver(?:ing|s)?"
    r"|thrash(?:ing|es)?|swing(?:ing|s)?|jitter(?:ing|s|y)?|restless|all over the (?:place|shop))"
)
#: "The leaves on the ash tree beside it are": the place of a thing stands behind its name.
_PLACED: Final = (
    r"(?: (?:on|of|above|over|beside|behind|near|by|at|along|around|in)\b[^.;,!?]{1,36}?)?"
)
_BE: Final = (
    r"(?:'re|'s| are| is| all| keep(?:s)?| won't stop| just| never stop(?:s)?| hang(?:s)?"
    r"| stand(?:s)?"
    r"| look(?:s)?| seem(?:s)?)"
)
_CALM: Final = any_of(
    rf"{_LEAVES}{_PLACED}{_BE}+ (?:\w+ ){{0,2}}{_STILL}",
    r"(?!(?:people|cars|clouds|birds|ducks|kids|legs|bubbles|fish|tourists|guests|its|it's|his|hers)\b)"
    r"\w{3,}s (?:aren't|are not|ain't|not) (?:even )?(?:moving|stirring|budging|swaying)",
    r"(?:everything|it all|all)(?:'s| is)? (?:completely |totally |perfectly )?(?:motionless"
    r"|dead still|stock still)",
    r"(?:air|everything|it all)(?:'s| is) (?:dead |so |very |completely |totally |perfectly )?still"
    r"(?=\W*$|[,.;!?])",
    rf"(?:^|(?<=[,.;] )|(?<=and ))(?:the |my |all )*{_LEAVES}(?: are|'re| is)?"
    r" (?:(?:all|quite|pretty|totally) )?(?:fine|ok|okay|good|steady)(?=\W*$|[,.;!])",
    r"(?:no|zero) (?:wind|breeze)",
    r"(?:wind|breeze)(?:'s| is|:| =)? (?:zero|0|nil|none|nonexistent|non-existent)",
    r"windless|dead calm|wind[?:]+ (?:none|no|nope|nothing|zero|nil)",
    r"(?:wind|breeze)(?:'s| is| has)? (?:gone|stopped|dropped|died|ceased)",
    r"hardly any (?:wind|breeze)",
    r"not (?:much|a breath of|any) (?:wind|breeze)|never any (?:wind|breeze)",
    r"(?:it's|all|totally|now|(?:air|weather|wind|everything|place) is) calm",
    rf"{_LEAVES} (?:are )?(?:still(?! (?:life|moving|move|shak\w+|blow\w*|wav\w*))|not moving"
    r"|don't move|aren't moving|hang still)",
    r"(?:nothing|no leaf|not a (?:leaf|twig|branch|blade|thing)) (?:is )?(?:moves|moving|stirs"
    r"|stirring|moved)",
    r"(?:still|no moving) air|air(?:'s| is) (?:\w+ )?still|flat calm|not windy|no gusts|breathless",
    r"(?:barely|hardly|not even|without) a (?:breath|breeze|whisper|puff)",
    r"(?:wind|breeze)(?:'s| is| has)? (?:\w+ )?(?:eased|calmed|let up|quiet|dead|over|away|nil)",
    rf"{_LEAVES} (?:are |is )?(?:\w+ )?(?:motionless|stock still|dead still|quiet|calm|at rest)",
)
_CALM_ALONE: Final = exactly(
    "calm",
    r"(?:it's |its |all |so |very |as )*still(?: as (?:anything|can be|glass|the grave"
    r"|an? \w+))?(?: here| now| today)?",
    r"(?:there's |there is )?(?:not|no|hardly) (?:a |even a |one )?(?:breath|puff|whisper|breeze)"
    r"(?: of (?:wind|air))?",
    "(?:it's |its )?(?:dead|totally|completely|perfectly) still",
)
_WINDY: Final = any_of(
    rf"{_LEAVES}{_PLACED}{_BE}+ (?:\w+ ){{0,2}}{_STIRRING}",
    rf"(?:wind|breeze)\b[^.;,!?]{{0,24}}\b(?:{_LEAVES}|everything) (?:{_STIRRING}|dance|move|sway)",
    r"(?:draught|draft) (?:from|of|off|coming)|windy|breezy|blowy|blustery|draughty|drafty",
    r"wind (?:in|through|on|keeps|gets|getting|won't|doesn't|never) (?:everything|all|the|my"
    r"|stop\w*"
    r"|let|up|those)",
    r"wind(?:'s| is) (?:\w+ )?(?:up|strong|bad|back|picking|getting|in|through|moving|annoying"
    r"|playing)",
    r"(?:(?:a )?bit of a|proper|quite a|hell of a|fair|nasty|annoying|constant|cold) (?:wind|breeze"
    r"|blow)",
    rf"{_LEAVES} (?:just )?(?:won't|don't|never|can't|not|aren't) (?:stay|keep|hold|sit|staying"
    r"|keeping|holding|be) (?:still|quiet)",
    r"blowing (?:hard|through|like|everything|a|in|up|down|all|about|around)",
    r"gust\w*",
    r"(?:strong|bit of|some|light|much|little|slight|gentle|soft|faint|steady) (?:wind|breeze)",
    r"(?:wind|breeze) (?:is|from|moves|picks|blows|comes?|coming|shakes)",
    r"wind keeps (?:mov|blow|shak)\w+",
    r"(?:there's|theres|there is|it has|we have|now|yes) (?:a |an |the )?(?:\w+ ){0,2}"
    r"(?:wind|breeze)",
    r"(?:wind|breeze|draught|air)(?: \w+){0,4} (?:shak|mov|wav|sway|danc|push|wobbl)(?:ing|es)",
    r"breeze (?:from|in|on|keeps|is|picks)|(?:it's|its|is|been) blowing",
    r"(?<!out of )(?<!out )(?:from|in|by) the wind",
    rf"{_LEAVES} (?:\w+ )?(?:moving|move|moves|(?<!have )(?<!has )moved|in the wind|shak\w+|wav\w+"
    r"|flutter\w*|danc\w+"
    r"|sway\w*|trembl\w*|jiggl\w*|wobbl\w*|flap\w*|rustl\w*|quiver\w*|nodding|bounc\w*|twitch\w*"
    r"|blowing|all over the place)",
)


#: "A breeze now and then", "calm between gusts": leaves move, though not all the time.
_AIR: Final = (
    r"(?:wind\w*|breezes?|gusts?|draughts?|drafts?|puffs?|air|(?:it|that) (?:blows|gusts)|blowing"
    r"|breath of (?:wind|air))"
)
_NOW_AND_THEN: Final = (
    r"(?:(?:every )?now and (?:then|again)|(?:every )?once in a while|from time to time|on and off"
    r"|off and on|occasional(?:ly)?|at times|sometimes|some of the time|intermittent(?:ly)?|every"
    r" so often|every (?:\w+ )?(?:minutes?|seconds?)|comes? and goes?|the odd|in bursts|in between)"
)
_BY_TURNS: Final = any_of(
    rf"{_AIR}\b[^.;!?]{{0,24}}\b{_NOW_AND_THEN}",
    rf"{_NOW_AND_THEN}\b[^.;!?]{{0,24}}\b{_AIR}",
    r"(?:between|in between) (?:the )?(?:gusts?|puffs?)|lulls?",
)


#: "It was windy before": no wind of now.
_WAS_WINDY: Final = any_of(
    r"(?:was|were|had been) (?:\w+ )?(?:windy|breezy|blowy|gusty|blustery)(?! (?:all|and|but)\b)",
    r"(?:windy|breezy|blowy) (?:before|earlier|at first|this morning|yesterday|when)",
)


def read_wind(draft: Draft) -> None:
    """Whether leaves move; wind that comes and goes moves them."""
    if _BY_TURNS.search(draft.text):
        draft.note("wind", value=True)
    elif _CALM.search(draft.text) or _CALM_ALONE.match(draft.text):
        draft.note("wind", value=False)
    elif _WINDY.search(_WAS_WINDY.sub("", draft.text)):
        draft.note("wind", value=True)


#: Who walks at another pace than the others.
_FRAIL: Final = (
    r"(?:kids?|children|toddlers?|teens?|teenagers?|babies|baby|pensioners?|retirees|seniors"
    r"|elderly|old folks|grand(?:ma|pa|dad|mother|father|parents)|gran(?:ny)?|runners?|athletes?"
    r"|beginners|bad (?:knees?|hips?|backs?))"
)
_QUICK: Final = r"(?:quick|fast|fit|strong|sporty|young)"
#: Among those who walk along: some of them.
_SOME: Final = (
    r"(?:some|one|two|three|a few|half|a couple|2|3|most)"
    r"(?: of (?:us|them|my (?:group|lot)|the (?:group|party)))"
)
_MIXED: Final = any_of(
    rf"(?:{KIN})(?:'s| has| is)?(?: got)?(?: an?| his| her)? (?:\w+ )?(?:bad|dodgy|sore|stiff|weak"
    r"|gammy|new|replaced"
    r"|artificial|hurting) (?:knees?|hips?|ankles?|backs?|legs?|foot|feet)",
    r"(?:very |quite |all )?different (?:pace|fitness|level|age|abilit)\w*",
    r"(?:we|us|they|them|group|people|walk\w*|hik\w*)\b[^.;,]{0,24}\bdifferent speeds?",
    rf"{_SOME}(?:'s| is| are)? (?:\w+ ){{0,3}}(?:seventy|eighty|7\d|8\d|70s|80s|seventies"
    r"|eighties|old|elderly|unfit|frail)",
    rf"{_SOME}(?: walks?| goes| go)? (?:\w+ )?(?:on crutches|with (?:a |her |his )?(?:stick|cane"
    r"|frame|walker)|limp\w*)",
    r"some(?: of us)?(?: are)? (?:quick|fast|fit|strong)\b[^.;]{0,24}\b(?:dawdl\w+|slow\w*"
    r"|crawl\w*|plod\w*|puff\w*)",
    r"(?:fit|fast|strong|young) (?:ones|people|folk)? ?and (?:\w+ )?(?:slow|old|unfit|elderly)",
    r"(?<!not a )(?<!no )mixed (?:group|fitness|bunch|party|abilities|ability|levels|ages|lot"
    r"|crowd)",
    r"(?:group|party|we|us)\b.{0,40}\bmixed(?! (?:cameras?|kit|gear|lenses|brands|light|systems"
    r"|formats"
    r"|feelings|weather|media))",
    r"slow (?:walkers|group|people|ones)",
    r"(?:of us|people|walkers|some) (?:are |is )?slow",
    r"with (?:(?:small|little|young|two|three|our|my|the|2|3) )*(?:kids|children|toddlers?)",
    r"(?:half|part|one|some|two|2|a few|most)(?: of)?(?: (?:the|my) (?:group|party|team)| us| them)"
    r"(?: are| is|'s)? (?:\w+ )?slow(?:er)?",
    r"(?:one|some|two|2) of (?:us|them) (?:has|have|with)(?: an?)? (?:\w+ )?(?:knees?|hips?|ankles?"
    r"|backs?|legs?|foot|feet)",
    rf"{_FRAIL}\b[^.;!?]{{0,28}}(?:\band\b|\bplus\b|\bwith\b|\bto\b"
    rf"|[+&,])[^.;!?]{{0,20}}\b(?:{_FRAIL}|nan(?:a|ny)?|granny|grand(?:ad|pa|ma)|the missus)",
    rf"(?:some|one|a few|half)(?: of us)?(?: are| is)? (?:\w+ )?{_QUICK}\b[^.;]{{0,30}}"
    r"\b(?:slow\w*|not|less|bad (?:knees?|hips?|backs?)|unfit|limp\w*|stick|crutch\w*)",
    r"some (?:fit|fast|quick)\b[^.;]{0,20}\bsome (?:not|slow|less)",
)
_EVERYBODY: Final = (
    r"(?:every(?:one|body)|all of (?:us|them)|(?:we|they)(?:'re| are)(?: all| both)|(?:us )?all)"
)
_ABLE: Final = r"(?:fit|fast|quick|strong|sporty|runners|athletes|athletic|in (?:good|great) shape)"
_ALIKE: Final = any_of(
    r"(?:\d+|two|three|four|five|six|seven|eight|all)(?: of us)?,? (?:very |pretty |quite )?(?:fit"
    r"|sporty|strong)"
    r" (?:adults|people|walkers|hikers|friends|mates|men|women|folks?|lads)",
    rf"{_EVERYBODY}(?:'s| is| are)? (?:(?!not\b)\w+ ){{0,2}}{_ABLE}",
    r"(?:nobody|no one|none of us)(?:'s| is| are)? (?:\w+ )?(?:slow|unfit|frail)",
    r"(?:all|same) (?:of )?(?:the )?same (?:pace|speed|fitness|level)|same pace all round",
    r"not (?:a )?mixed|all (?:of us |are |about |pretty |equally |quite |the same )*(?:equally fit"
    r"|(?:about )?as fit|fit|same (?:pace|fitness|level)|fast|quick)",
    r"both (?:of us )?(?:are )?(?:\w+ )?(?:fit|fast|quick|strong)",
    r"everyone(?:'s| is) (?:\w+ )?(?:fit|fast)",
)
_ALONE: Final = any_of(
    r"(?:i'm|im|i am|going|walking|hiking|here) (?:all |here )?(?:alone|solo|by myself|on my own)"
)
_ONLY_ME: Final = exactly(
    r"(?:i'm |im |i am )?(?:all )?alone(?: today| here)?",
    "solo(?: today| here)?",
    "(?:it's |its )?(?:just|only) me(?: today| here| this time)?",
    r"(?:i'm |im |i am )?(?:all )?(?:on my own|by myself)(?: today| here| this time)?",
)


_COMES: Final = any_of("along|comes|coming|with us|with me|joins?|walks? with")


def read_group(draft: Draft) -> None:
    """Whether the group's fitness is mixed."""
    if _ALIKE.search(draft.text):
        draft.note("group_mixed", value=False)
    elif _MIXED.search(draft.text) or (
        _COMES.search(draft.text) and slowest_in(draft.text) in {"old", "child"}
    ):
        draft.note("group_mixed", value=True)
    elif _ALONE.search(draft.text) or _ONLY_ME.match(draft.text):
        draft.note("group_mixed", value=False)
