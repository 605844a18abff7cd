"""English wordings: people in the water, and water that rises."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

WATER: Final[Mapping[str, str]] = {
    "drowning": """
        drowning, is drowned, has drowned, going to drown, face down in, floating face down, not
        breathing ~ water, (swallowing|swallowed|breathing) (a)? (lot)? (of)? water""",
    "submerged": """
        not (yet)? coming (back)? up, gone under, going under, goes under, went under, go under
        (again)?, (has|have) not (come|surfaced) (back)? up, not come (back)? up, not (yet)?
        come up, not surfaced, did not (come up|surface|resurface), pulled under, sucked under,
        dragged under, head (is|was|keeps)? ~ (under|below) (the)? (water|surface)?, disappeared
        (under|below|beneath) the, vanished (under|below|beneath|in) the (water|pool|foam|
        river), held under, trapped under (the)? water, underwater and not, only ~ (head|arm|
        hand|hat) ~ (above|out of) ~ (water|surface), keeps (sinking|going under|bobbing)""",
    "adrift": """
        (river|water|current|whirlpool|eddy|stream|undertow) (has|has got|got|took) (him|her|
        them|me|us), coming past (you|us|me), (swept|carried|taken) (round|around|by), (is|are|
        am|was|he|she|they) drifting, carried (away|off|down|along|downstream|out), being
        (carried|swept|dragged|washed|taken|pulled|pushed) *, swept ~ (away|off|down|under|
        along|downstream|over|in|past), washed (away|off|down|over|downstream|past), (was|were|
        got|getting|gets|is|are) swept, drift* ~ (away|off|down|downstream|towards|back|past|
        out), (dragged|pulled|pushed|taken|sucked|rolled|tumbled) ~ (downstream|by the current|
        by the water|into the rapid|towards the drop|over the edge|away|in by|off), (river|
        current|water|stream|flow) (has|took|takes|is taking|is pulling|pulled|dragged|got|
        swept|carried|has got|is carrying) (him|her|them|me|us|my *|the *), going round and
        round in, float* ~ (downstream|away|past|down), heading (for|towards) the (drop|lip|
        edge|fall|falls|rapids), knocked (off|over) ~ by the (water|current|stream|wave|river),
        going downstream, (towards|over) the (drop|weir|falls) on (his|her) back, went over the
        (fall|falls|edge|weir|lip|drop), gone over the (fall|falls|edge|weir|lip|drop), over the
        falls""",
    "into_water": """
        was swimming and (then|now), (went|fell|gone) through the ice, in the (pothole|plunge
        pool|pot|gorge pool) and, (man|woman|someone|somebody|kid|child|boy|girl|person|dog|
        student|friend|lady|guy|tourist|toddler) in (the|a)? (water|river|creek|stream|rapids|
        pool|current|weir), (slipping|sliding|falling|pulled|sucked) (back)? (in|into) (the|a)?
        (water|river|rapid|rapids|current|pool|stream), (canoe|kayak|raft|boat|paddler) ~
        (tipped|flipped|capsized|over|overturned|upside), fell through, broke through the ice,
        went in (after|head|up to|feet|with), (man|woman|someone|somebody|kid|child|boy|girl|
        person|kayaker|swimmer|dog|students|student|he|she|friend|people|tourist) (is|are|just)?
        (still)? in the (water|river|creek|stream|rapids|rapid|pool|current), (kayaker|canoe|
        raft|boat|swimmer) (is)? (upside down|capsized|overturned), (fell|fallen|falls|slipped|
        slid|tumbled|toppled|stumbled|went|gone|dropped|plunged|rolled|pushed|jumped|splashed|
        knocked|dragged|pulled) ~ in (the|to|a)? (water|river|creek|stream|brook|pool|current|
        rapid|rapids|torrent|beck|burn|lake), (fell|fallen|slipped|slid|tumbled|toppled|went|
        gone|dropped|plunged|rolled|pushed) ~ into (the|a)? ~ (water|river|creek|stream|brook|
        pool|current|rapid|rapids|torrent|beck|burn|lake|gorge|plunge), (fell|fallen|slipped|
        slid|tumbled|toppled|knocked|slid) in, fell off ~ (stones|stone|rock|rocks|log|bridge|
        ledge|boulder|bank), came off the (stones|stepping stones|rock|log|bridge|boulder|bank),
        gone in, went in, is in the (water|river|creek|stream|rapids|pool) (and|now|help|cannot|
        she|he), slipped off ~ (stones|stone|rock|rocks|log|bridge|ledge|boulder|bank), (big|
        huge|loud) splash, landed in the (water|pool|river|stream), in the (water|river|creek|
        stream|rapids|pool) and (cannot|not|she|he|nobody|we|it|i), still in the (water|river|
        creek|stream|rapids|pool)""",
    "out_of_reach": """
        (in trouble|going to drown|will drown), filled up, filled with water, (getting|so)
        tired, cannot get back, (lost|losing) sight of (him|her|them), (cannot|can not|not|
        nobody can|none of us can|unable to) ~ (reach|get to|grab|pull) (him|her|them|me|it)?,
        (cannot|not|nobody can) ~ get (back)? out, not getting out, cannot swim, not swim, never
        learned to swim, (not|cannot) ~ get (him|her|them|me) out, is not moving, not (able)?
        (to)? (climb|get) (back)? (up|out), throw ~ (rope|stick|branch|strap|something), need a
        rope, get (him|her|them|me) out, out of reach, cannot stand up, cannot hold on (much)?
        (longer)?, no way to (reach|get), trying to (reach|grab|pull|get) (him|her|them), cannot
        see (him|her|them), too strong (for|to), losing (his|her|my|their) grip""",
    "fell": """
        fell, fallen, slipped, slid, tumbled, toppled, went over, lost (his|her|their|my)
        (footing|balance|grip), knocked (over|off|down), swept off ~ feet, went down, took a
        tumble""",
    "clinging": """
        (holding|grabbed|caught|gripping) (a|the|onto a) (branch|log|rock|root|rope), (hanging|
        holding|clinging|clings|hangs|holds|hold|hang|grabbing|clutching) (on)? (to|onto) ~
        (log|branch|rock|root|roots|rope|stone|boulder|tree|trunk|strap|sleeve|leg|pole),
        (hanging|holding|clinging) on, hold on to (him|her|me), stuck on (a|the|that) (rock|
        boulder|log|island|stone) ~ (middle|midstream|river|water|stream)""",
    "jammed": """
        (stuck|trapped|caught) in the (river|current|water|stream|creek|rapids|hydraulic|eddy|
        whirlpool|mud), (foot|leg|boot|ankle|arm|shoe|hand|strap|knee) ~ (jammed|wedged|stuck|
        trapped|caught|pinned), (jammed|wedged|pinned|trapped) ~ (between|under|against) ~
        (rock|rocks|boulder|boulders|log|logs|branches|root|stones|tree|trunk), (pinned|held|
        pressed) (by|against)""",
    "midstream": """
        midstream, mid stream, in the middle of the (river|stream|creek|water|current|ford|
        crossing), halfway (across|over), mid crossing, mid river, mid current, at the crossing""",
    "struggling": """
        (hand|hands|arm|arms) (waving|sticking|reaching), (struggling|thrashing|flailing|
        splashing about|paddling like mad|fighting), waving (his|her|their|both) arms, (calling|
        screaming|shouting|yelling) for help, gasping, panicking, going blue""",
    "flooding": """
        wave (just)? (came|coming|is coming|went|rolled) (round|down|past|through|over), (sound|
        noise|roar) (has|is)? (changed|changing|getting louder|louder|different), like a (train|
        lorry|truck|jet) ~ (canyon|gorge|valley|upstream|coming), coming (up)? over my (boots|
        shoes|feet), (crossed|walked|stood|sat|waded) ~ (now)? (is|it is) ~ (deep|underwater|
        gone|torrent) (now)?, flooding, (brown|muddy|dirty) (brown|muddy|foaming|cold)? (water|
        wave|torrent|flood|river|surge), (path|trail|crossing|stones|rock|rocks|ford|bridge|way|
        track|steps|island|beach|road|car park) (i|we)? (just|have)? (marked|back|home|down|
        out)? (is|are|was|now|has|have|got)? (all|now|already|completely|just)? (underwater|
        submerged|flooded|washed away|awash|disappeared in the water), level (has|is|just|
        suddenly)* (jumped|rose|risen|rising|up|coming up|went up|gone up), flash flood*, flood
        water*, floodwater*, flood wave, (is|are|was|getting|now|all) flooded, river (has)?
        burst, burst (its|the|it is) bank*, wall of water, wave of (brown|muddy)? water""",
    "rising": """
        (is|are|was|keeps|it|still|started|starting|now|been|slowly|suddenly) rising, rises,
        rising (fast|quickly|quick|now|by|every|and), risen, rose, (coming|come|came|comes|
        creeping|crept|gone|going|went) up, (jumped|climbed) ~ (cm|inch|inches|foot|feet|hand|
        hands|knuckle|metre|meter|width|ankle), (higher|deeper) (than|now|every|by|and), getting
        (higher|deeper), is higher, got higher, gaining on us, swelling, swollen, over its
        banks, surging, rise in""",
    "siren": """
        (siren|sirens|horn|hooter|alarm) ~ (went|going|sounding|sounded|wailing|upstream|
        blowing|blown|blew|off), dam (is)? (releasing|opened|opening|broke|burst), (heard|hear|
        hearing) ~ (siren|dam horn|hooter), water release""",
    "dirty": """
        brown, brownish, browner, muddy, murky, mucky, dirty, dirtier, chocolate, coffee,
        cloudy, silty, mud, milky brown, cocoa, gravy, turbid, clear anymore, tea""",
    "sudden": """
        got, within a minute, within minutes, suddenly, all of a sudden, out of nowhere, all at
        once, now, turned, turning, turns, went, gone, getting, became, becoming, minutes ago,
        (an|half an) hour ago, this morning, in (five|ten|two|three|10|5|15) minutes, since (we|
        i|lunch|breakfast|this), keeps, more and more, was clear, used to be clear, in no time,
        every minute, just (came|started|changed|got), starting to, than before, than earlier,
        fast""",
    "debris": """
        (twig|twigs|leaves|branches|branch|logs|trunk|trunks|debris|sticks|driftwood|foam|wood|
        rubbish|trees|tree|bushes|planks|fence posts|pinecones|cones|stones|boulders|grass|mud)""",
    "coming": """
        (coming|come|comes|came|shooting|rushing|floating|washing|tumbling|racing|sailing|
        barrelling|crashing|bobbing|sweeping|pouring|being carried|carried) (down|past|by|over|
        through|along|at us), go past, going past, went past, down the (river|stream|creek|
        water)""",
    "cut_off": """
        cut off, (we are|i am|are|all|now) (stranded|marooned|trapped) (on|by|here), cannot
        (get|cross|go) back (across|over)?, (no|only) way (back|across), stuck on ~ (island|
        gravel|bank|side|rock|bar|sandbar|stone|boulder), (stranded|marooned)""",
    "swallowed": """
        bridge ~ (is|was)? (gone|washed|collapsed), (exit|way out|way back|ruckweg|route) is (a
        river|underwater|flooded|gone), (pool|river|creek|stream|water|brook) ~ (doubled|
        tripled|twice), (stones|stone|rocks|rock|path|bridge|crossing|ford|mark|ledge|steps|
        bank) ~ (under now|under already|under .|gone now|is gone), (over|into|round) (my|our|
        the) (boots|shoes|feet|ankles|bags|bag|tent|rucksack), (legs|boots|bag|bags|feet|rocks|
        stones|tripod) ~ wet ~ (not wet|were not|was not|before|dry), (waist|knee|thigh|ankle)
        deep now, is (knee|waist|ankle|thigh) deep, (over|across) the (path|trail|track|bridge|
        stones|stepping stones|road|boardwalk|car park|steps|ford|bank|rock), (path|trail|
        stones|stone|steps|bridge|rock|rocks|bank|beach|gravel|ledge|road|mark|ford|island|
        tripod) ~ (is|are|has|have|was|got|now|been|just)? ~ (under|underwater|gone|disappeared|
        vanished|covered|swallowed|washed away|drowned|submerged|flooded), (is|was|are) (a)? ~
        (torrent|river) now, is a torrent, (lapping|reached|reaches|touching|licking) ~ (boots|
        feet|shoes|tripod|bag|bags|path|knees|tent|toes), (stones|rocks) ~ (cannot be seen|not
        there anymore|no longer), where ~ (stood|sat|standing|sitting|walked|had) ~ is (now)?
        (underwater|water), island ~ (smaller|shrinking), shrinking""",
    "bigger": """
        (bigger|louder|angrier|stronger|wilder|wider|faster|fiercer|heavier|rougher|noisier|
        fuller|higher|deeper)""",
    "roar_new": """
        (roar|rumble|rumbling|boom|noise) (from)? (up|upstream|upriver|further up), (loud|
        louder|deep|big) (roar|rumble|rumbling), (rumble|rumbling|roar|roaring|noise|growl|
        grumbling|grinding) ~ (upstream|up the valley|up the gorge|from above|above us|louder|
        closer|growing|getting), (new|strange|odd|weird|deep) (roar|rumble|rumbling|noise),
        (gone|suddenly) quiet upstream""",
    "was_dry": """
        was dry, were dry, was on dry, used to be dry, dry (ten|five|twenty|half|an|a|minutes|
        this), (earlier|before|ago) ~ dry, dry land""",
}
