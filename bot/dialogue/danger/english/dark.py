"""English wordings: caught by the dark, lost, off the path."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

DARK: Final[Mapping[str, str]] = {
    "dark": """
        no light left, pitch dark, (be|going) black, dark, darkness, pitch black, black as,
        night, nightfall, dusk, gloom, (sun|light|daylight) (is|has)? (gone|set|down|going|
        fading), (sun|it) (went|has gone) (down|dark), after sundown, getting dark, blackness,
        no moon, black out here""",
    "blind": """
        cannot (see|make out|tell) (a thing|anything|nothing|path|the path|my hand), not see a
        thing, cannot see (my|the|your|his|her) (feet|hands|hand|path|trail|steps|edge|markers|
        way|ground), (cannot|not|unable to|hardly|barely|too dark to) (see|tell|make|find|read|
        spot|recogni*) (anything|out|the|my|where|a|which|our|if|it|more), cannot see, (see|
        seeing) (nothing|nowt|zilch|no path|no trail), not see (a thing|my|the), too dark to, no
        idea which way, which (side|way) (is|of|the|to)""",
    "still_out": """
        (hour|hours|miles|km) from the (road|car|car park|village|hut), not (yet)? out of the
        (woods|gorge|canyon|valley|forest), (miles|km|kilometres) (left|to go|still|yet),
        (still|are|am|we|halfway|half way|stuck) ~ (on the (trail|path|ledge|rock|slope|wrong|
        mountain|hill|far)|in the (gorge|canyon|valley|woods|forest|ravine|slot|wood)|at the
        (fall|falls|pool|foot|bottom|top|water)|up here|down here|out here|ahead of us|to go|
        miles|km|from the car|away from|above us|below us|in there), (hour|hours) (from|to|back|
        out|away|left|walk), (way|path|trail) (back|out|down|home) (is|still|to), way to go,
        (get|getting|find|walk|go|climb|come|make) (my|our|the|his|her)? (way)? (back|down|out|
        home|off) ~ (in|with|without|no|now|how|safely)?, steep (bit|part|section|steps|path) ~
        (ahead|to come|left|still), staircase, steps""",
    "light_gone": """
        (headlamps|torches|lamps|lights|batteries) none, moon is gone, (torch|headlamp|
        flashlight|lamp|light) (is)? ~ (yellow|dim|dimming|fading|weak|gone completely|red), no
        batteries, (sun|light|daylight) went ~ ago, black in (ten|five|twenty|a few|\\d+)
        (minutes|mins), (has|nobody has|none of us has) (a)? (no)? (lamp|torch|light|headlamp),
        (torch|headlamp|headtorch|flashlight|lamp|light|lantern|torches|headlamps) (has|have|is|
        are)? (just)? (died|dead|gone|broke|broken|out|empty|flat|failed|packed|flickering|
        dying|stopped|kaput|does not work|will not|ran out), (torch|headlamp|flashlight|lamp) ~
        (died|dead|flat|broken|failed|empty|fell in), (no|without|without a|without any|forgot
        (my|the|our)|not have a|not bring a|none of us has a|nobody has a|left the|left my)
        (torch|headlamp|head torch|flashlight|lamp|lamps|torches|light) (with|and|now|left|for|
        between|at|on|in|down|asking|back)*""",
    "light_low": """
        (phone|phones|torch|battery|mobile|headlamp|lamp|flashlight|light) ~ (at|on|is|has|down
        to|only|with|about|left|of) ~ (\\d+|one bar|low|dying|nearly|almost|few|last|going|
        flicker*), (one|only|single|just) ~ (phone|torch|headlamp|lamp|light) (torch|light|lamp|
        between|for|left|at|has|and)*, (phone|mobile) (torch|light|lamp), last (of the)? battery""",
    "night_caught": """
        benighted, (caught|overtaken|surprised|benighted|stuck|trapped|stranded) ~ (dark|night|
        nightfall|darkness), (night|dark|darkness) ~ (caught|overtook|fell|fallen|falling) (on)?
        (us|me|them|him|her), spend the night (here|out|up|in)""",
    "way": """
        (way|path|trail|track|road|steps|ledge|bridge|route|markers|car|back|down|out|home|exit|
        descent)""",
    "scared": """
        (scared|frightened|afraid|panicking|terrified|crying|help|worried)""",
    "lost_self": """
        (no|not a) (clue|idea) (which|what) (side|way|path|valley|trail|direction), where the
        (hell|heck|devil) (am|are) (i|we), stuck out here, (every tree|everything|it all|all|
        every path|every rock) looks the same, where do (i|we) go (now|from)?, which way (is|to)
        the (car park|car|road|path|trail|parking|hut|village), (stuck|trapped|ended up) in ~
        (bush|undergrowth|brambles|thicket|scrub|swamp|bog), do not recogni*, does not look
        right, walking for (hours|two|three|four|an), lost in the (woods|forest|fog|mist|dark|
        valley|gorge|trees|bush|canyon|wood), do not know (how to get|how i get|the way|which
        way) (to|back|out|home|down|.), been lost (for|since), are we lost ., (we are|i am) (so|
        completely|totally|hopelessly)? lost ., wandering (around|about) ~ (looking|hours|
        trying), (we|i|us|am|are|is|got|been|completely|totally|hopelessly|a bit|kinda|maybe|
        think|properly|both|all) (i am|we are|are|am|got)? (completely|totally|hopelessly|so|
        all|properly|really|well|utterly|a bit|badly|kind of)? lost (here|now|in the (woods|
        forest|fog|mist|dark|valley|gorge)|and|on|up|somewhere|help|again|please|off|without),
        (do|does|did) not (know|no|recogni*) (where|were) (i|we|he|she|they|am|are), (no|not a|
        not the faintest|not any) (idea|clue) (where|were) (i|we|am|are), (nobody|none of us|no
        one|not one of us) (knows|know|has a clue|has any idea|is sure) where, (we|i) (are|am|
        have) (got)? lost, where (am|are) (i|we) (now)? (help|please)?, lost (our|my|the) (way|
        bearings|path|trail|route), (not|cannot) find (our|my|the|a) way""",
    "lost_word": """
        (lost|where|which way|no idea|anymore|wrong|help|disoriented)""",
    "circles": """
        (same|this|that) (dead)? (tree|rock|stump|bend|bridge|stone|boulder|log|sign|place|spot|
        clearing|cairn|fence|junction|gate|pool) (again|three|twice|for|a third|before|now|
        already), (passed|seen|walked past|been past|passing) ~ (same|before|already|twice|three
        times|third time), (going|walking|went|walked|been going) (round|around)? (and round)?
        in circles, going round (and round|in), back where (we|i) (started|began|were)""",
    "wrong_way": """
        took a (shortcut|short cut), shortcut ~ (mistake|cliffs|bad|lost|gone), (in|on|into|
        down|up|took|taken|taking|followed) (the|a) wrong (valley|path|trail|track|turn|turning|
        side|ridge|way|gully|fork|bank|stream|gorge|road), wrong (valley|trail|turning|turn),
        (should|ought to) have (reached|been|seen|come|hit|got) ~ (by now|already|ago|long|to
        the), (missed|overshot) (the|our|a) (turn|turning|junction|fork|path), this is not the
        (way|path|trail) (we|i|back), (not|never) (come|came|been) (this|past|through) (way|
        here|this), off (the)? (trail|path|route) (and|now|somewhere), none of this looks
        familiar, nothing looks familiar, does not look familiar""",
    "path_gone": """
        (not|no) (seen|see|passed|found) ~ (marker|markers|sign|signs|blaze|blazes|cairn|cairns|
        waymark|path|trail) ~ (for|since|in|anymore|any more), no more (signs|markers|blazes|
        cairns|path|trail|waymarks), (no|not a|no real) (path|track|trail) (at all|here|
        anymore), (path|trail|track|markers|marks|blazes|cairns|way|waymarks|paint marks|route)
        (has|have|is|are|just|simply|suddenly)* (gone|ends|ended|stops|stopped|peters|petered|
        vanished|disappeared|ran out|runs out|fades|faded|lost|no more|disappears|finished),
        (cannot|not) (find|see) (the|a|any|our|my) (path|trail|track|markers|marks|way|blazes|
        cairns|turn|turning|route|exit) (back|out|anymore|any more|again|down|in|at|anywhere|
        now)*, (no|lost the|off the|left the) (path|trail|track) (anymore|any more|left|here|
        anywhere|and|in|now|a while)*, ended up in ~ (brambles|thicket|bushes|bog|scrub)""",
    "map_fails": """
        (no|without|lost|not got) ~ (signal|map|gps|reception|compass|coverage), (map|gps|blue
        dot|dot|compass|app|phone|navigation|arrow) ~ (is|has|been|does|keeps|just|shows|says) ~
        (frozen|wrong|useless|dead|nonsense|not|stuck|jumping|spinning|blank|empty|middle of|
        grey), (map|gps) (does not|will not) (match|load|fit|help|work)""",
    "whereabouts_own": """
        where (am i|are we), where (i|we) (are|am), which way (is|to|do|should|back|out|down|
        home|now|from), how do (i|we) get (back|out|home)""",
    "fog": """
        (fog|mist|cloud|whiteout|snow|snowing) (is|has|have|are)? (just)? (come|came|rolled|
        rolling|coming|closed|closing|down|in|thick|so thick|everywhere|all around|too), (in|
        into|by) (the|thick|dense)? (fog|cloud|whiteout), fogged in, clag""",
}
