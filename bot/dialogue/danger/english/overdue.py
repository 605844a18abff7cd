"""English wordings: who is overdue, does not answer, or went off alone."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

OVERDUE: Final[Mapping[str, str]] = {
    "overdue": """
        was meant to (text|call|ring|meet|be|come|arrive|check), (never|not) turned up, (said|
        promised|told us|reckoned) (he|she|they)? (would be|will be|be)? (five|ten|fifteen|
        twenty|thirty|two|an|one|half|a|only|back|5|10|15|20|30) (minutes|minute|mins|hour|an
        hour|in|by|at|moment|sec), (was|were|is|are|should|supposed|meant|promised|due) ~ (due|
        back|returned|meet|meeting|here) ~ (hour|hours|minutes|ago|half|past|at|by|noon|lunch|
        long) ~ (not|no|nobody|still|half past|past|never|nothing|gone|it is)*, (should|was
        supposed to|were supposed to|was meant to|were meant to|said) ~ (have)? ~ be(en)? back
        (ages|an|half|by|at|long|before|already|now|two|an hour|in), (has|have|had|is|are|did|
        does) (still)? not ~ (come|came|been|made it|got|shown|turned|checked|returned|show|
        reach|arrive|arrived|reappeared|rejoined) (back|up|in|down|us|out|yet|the car|at)?,
        (not|nobody) back (yet|from|at|and|after), overdue, never (came|come|made it|showed|
        turned|returned|got) (back|up|down|out)?, (was|were) due (back|at), no show, not
        (turned|shown) up, not returned, was (only|just)? (going|gone|nipping|popping) ~
        (minute|minutes|second|moment|loo)""",
    "whereabouts": """
        (walked|wandered|gone|ran) off and, and that was it, (he|she|they) has (walked|wandered|
        run) off, know where ~ (is|are|went|has), not with (me|us|you|them|the|anyone), without
        (him|her|them), but not (him|her|them), (now|suddenly) (he|she|they) (is|are) not, (he|
        she|they) (is|are) not (on|at|there|here|anymore|any more|.), is not on (his|her) (rock|
        spot|ledge), (everyone|everybody|all) ~ except, no word (since|from|yet), (was|were)
        (right|just) (behind|next|beside|here|there), nobody has answered, (shouting|calling|
        yelling|screaming|whistling) for, where ~ (is|are|did|has|have) (he|she|they|my|the|our|
        everyone|everybody) (gone|go|got to|now|went|son|daughter|brother|sister|others|kids|
        dog)*, (anyone|anybody|has anyone|did anyone|who|nobody|no one|you) (has|have)? (seen|
        saw|spotted|heard) (from)? (of)?, (cannot|not|unable to) (find|see|spot|locate) (him|
        her|them|my|our|the|one|any), no (sign|trace|sight) of, lost (sight|track|contact) (of|
        with), (is|are|has|have|gone|went) (missing|disappeared|vanished), not (here|there|with
        us|at the (meeting|car|hut|bridge)), nowhere (to be)? (seen|found|in sight), looking for
        (him|her|them|my|our|one), have not (seen|heard) (from|of)? (him|her|them|my|our|from)?,
        last (seen|saw|heard), is (gone|nowhere), not in (his|her|the) (spot|place)""",
    "gone_off": """
        (went|gone|wandered|walked|ran|run|headed|set|strayed|slipped|sneaked|stormed|climbed|
        hiked|nipped|popped|nip|pop|left|disappeared|dashed|hurried|rushed|continued|stayed|
        going|trotted) (off|away|ahead|back|on|out|up|down|alone|for|to|round|around|behind|
        into|upstream|downstream|without|along|across|by|just|over)""",
    "long_since": """
        (hour|hours|minutes|mins|ages|long) ago, (an|half an|one|two|three|over an|nearly an)
        hour*, since (then|lunch|noon|breakfast|this|we|one|two|three|\\d+), before (lunch|noon|
        breakfast|dark|tea), (that|it) was ~ (ago|before|hours|hour|lunch|noon|ages), for (ages|
        hours|an hour|half|\\d+|twenty|thirty|forty|ten), (ages|forever|too long|a long time|all
        day|all morning|all afternoon), by now, still not, and (now)? (nothing|no sign), in
        (the)? spray""",
    "no_answer": """
        nobody is answered, nobody has answered, (has|have) not answered, (no|not|without|
        nothing) ~ (answer|answers|answering|reply|replies|replying|response|responding|pick up|
        picking up|back from|signal from|respond|answered|heard), (does|do|will|is|are|did) not
        (answer|answering|reply|respond|pick|call|come), (phone|mobile|cell|radio) (is|goes|
        went)? (off|dead|straight|rings|rang|switched|out|voicemail|unanswered), goes
        (straight)? to voicemail, voicemail, (nothing|silence|only (the)? echo|just (the)? echo|
        zero) (back|but|from|in|comes|came|answer*)*, nobody (answers|answered|replies|replied),
        no (sign|word) (of|from)""",
    "calling": """
        (whistle|whistles|whistled|whistling|shout|shouts|shouted|shouting|call|calls|called|
        calling|yell|yelled|yelling|rang|ring|ringing|phoned|texted|radioed|blew|messages|
        bellowed|hollered|screamed|tried)""",
    "deep_in": """
        (nearly|almost|about|already|well) (knee|thigh|waist|hip) deep, (took|taking|takes|
        swept) my (legs|feet), (only|just) (up)? to my (knees|knee|hips|waist|thighs|thigh|
        chest), at my belt, link arms ~ (walk|cross|through|wade), one foot ~ in the (rapids|
        current|water|flow), (standing|stand|stood|am|are|wade|go|me) ~ (knee|thigh|waist|hip|
        chest|neck|belly) (deep|high), (thigh|waist|hip|chest|neck) (deep|high), (in|water|me|
        standing|stand|creek|stream|river|current|is|comes) ~ (up to|over|above|at|to|past) (my|
        his|her|our|the|their) (knee|knees|thigh|thighs|waist|hips|hip|chest|belly|crotch|ribs|
        neck)""",
    "wandered": """
        (walked) off, dementia, (wandered|strayed|wander|wandering|sneaked|snuck|ran|run) off""",
    "abandoned": """
        (tripod|camera|bag|rucksack|backpack|jacket|shoes|boots|clothes|stuff|gear|coat|phone|
        pack|kit|towel|things|poles|glasses) ~ (and|but|with|without) (nobody|no one|no sign|no
        owner|no person|not a soul|no trace|him|her|he|she|i cannot) ~ (with|near|around|about|
        there|here|to|of|anywhere|nowhere|is|in|by|at)*, nobody (with|near|beside|around) it,
        (empty|abandoned) (tripod|tent|jacket|rucksack|backpack|boots|shoes|kayak|car|camera|
        bag), left ~ (tripod|camera|bag|rucksack|jacket|shoes|phone) ~ and ~ (gone|vanished|
        disappeared|nowhere)""",
    "one_short": """
        there should be (two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|\\d+),
        should (have been|be) (five|six|seven|eight|nine|ten|eleven|twelve) of, (counted|count|
        counting) ~ (one|someone|somebody|two) (is|are)? (gone|missing|short|less|not),
        (everyone|everybody) (is)? ~ (except|but|apart from) (mr|mrs|ms|one|for|him|her|my|our|
        the|old), (one|two|three) (short|missing|too few|fewer|less), (we|group|count|headcount|
        i|only) ~ (count|counted|counting|are|were|have|had) (only)? (now)? (two|three|four|
        five|six|seven|eight|nine|ten|eleven|twelve|thirteen|\\d+) ~ (instead of|not|should be|
        were|was|set off|of us|but|and now|started|there were|out of), (count|headcount|head
        count|numbers) (is|are|comes|does|do) (off|short|wrong|not|one|to), (somebody|someone|
        one of us|one of ours|one kid|one child|one pupil|a kid|a child) (is)? (missing|not
        here|gone), unaccounted""",
    "search": """
        (searching|search) (for|party|him|her|them), search and rescue, mountain rescue, been
        missing, (is|are|went|gone|still|goes) missing (since|for|and|now|here|help), reported
        missing, missing (child|person|boy|girl|kid|hiker)""",
}
