"""English wordings of danger, as cues."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

from bot.dialogue.danger.lexicon import Lexicon
from bot.dialogue.danger.spelling import sentences

_PEOPLE: Final[Mapping[str, str]] = {
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
_WATER: Final[Mapping[str, str]] = {
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
_BODY: Final[Mapping[str, str]] = {
    "limb": """
        (ankle|knee|wrist|elbow|shoulder|shin|thigh|rib|ribs|finger|fingers|thumb|hand|hands|
        arm|arms|leg|legs|foot|feet|toe|toes|neck|nose|eye|eyes|skull|hip|calf|face|forehead|
        chin|lip|tooth|teeth|scalp|palm|spine|collarbone|jaw|heel|eyebrow|cheek|ear|ears|groin),
        (his|her|my) (back|head)""",
    "damaged": """
        cut ~ open, (broken|broke|fractured|sprained|twisted|dislocated|swollen|swelling|
        swelled|swells|snapped|crushed|popped|gash|gashed|torn|split open|ripped open|puffed|
        ballooned|bleeding|bleeds|bloody|burnt|burned|scalded|shattered|mangled|throbbing|
        bruised), (cut|sliced) (open|deep|to the bone|badly), deep cut, bad cut, went crack,
        (wrong|funny|odd|strange|weird) (angle|way|shape), sticking out, looks wrong, hurts (so|
        like|really|a lot|badly|too), in agony, really hurts, gave way, will not (bend|move|
        straighten|hold), cannot (move|bend|straighten|lift|feel) (his|her|my|it|the), purple,
        twice (the|its|it is) size, went through (his|her|my|the), out of (its|the|it is)?
        (socket|joint), blood""",
    "injured": """
        (speech|mouth|face|smile) ~ (funny|hangs|hanging|droops|drooping|lopsided|slurred|
        crooked), (my|his|her) collarbone, (swelling|swollen|swelled) (shut|up), blood ~ (ear|
        ears|nose|mouth), (rock|stone|branch|boulder|icicle|tree) ~ came down and (hit|got|
        struck|caught), (hit|banged|smashed|cracked|knocked|cut|split|caught|trapped|crushed|
        jammed|burned|burnt|scalded) (his|her|my) (chin|nose|eye|face|head|knee|elbow|mouth|
        hand|leg|foot|finger|fingers|thumb|arm|shin|hip|ribs|forehead|brow|teeth|ankle|wrist|
        palm|back), tooth (is)? (missing|out|knocked|broken), (stone|rock|branch|boulder) ~
        (got|hit|struck|caught) (him|her|me|one|my|pim|a|the) ~ (head|shoulder|back|leg|arm|
        foot|hand|face)?, (broke|broken|torn|pulled|done) something, heard (a|it|something)
        (crack|snap|pop|go), (crack|snap|pop) when (i|he|she), lot of red, feel* faint, (hook|
        thorn|splinter|glass|spike|stick|wire|grit) ~ (in|into|through) (his|her|my) (eye|hand|
        foot|leg|palm|finger|arm|heel), legs tingle, cannot move (my|his|her) *, (acting|acts)
        (drunk|strange|weird|confused|funny), (get|send|fetch) (an|a|the|us)? (ambulance|doctor|
        medic|help quick), need (a)? (rescue|rescuing|rescuers), (rock|stone|branch|boulder|
        tree|log|icicle|stones|tripod) (just)? (fell|came down|rolled|landed|dropped|crashed|
        toppled) (down)? (on|onto), hit by a (falling)? (rock|stone|branch|boulder|icicle),
        (nail|spike|stick|branch|glass|wire|hook|knife) ~ (through|into|in) (my|his|her) (foot|
        hand|leg|arm|eye|palm|thigh|calf|boot), (is|are|was|got|been|badly|seriously) (hurt|
        injured|wounded|unconscious), cannot (put|get) ~ weight, (cannot|not|unable to) (walk|
        stand) ~ (on it|anymore|any more|at all|hurts|pain), (broke|broken|fractured|dislocated|
        sprained|twisted) (his|her|my|their|a|an) ~ (ankle|leg|arm|wrist|knee|collarbone|rib|
        ribs|shoulder|finger|hand|hip|foot|nose|neck|back|thumb|elbow), heart attack, (having|
        had) a (stroke|seizure|fit|heart attack), allergic (reaction|shock), anaphyla*, epipen,
        concuss*, first aid, need (a|an) (ambulance|doctor|medic|paramedic|helicopter), call
        (an|the)? (ambulance|911|112|999), asthma (attack)?, lost (his|her|the) inhaler,
        bleeding (badly|heavily|a lot|out|like|from|everywhere|quite), will not stop bleeding,
        bone (is)? (sticking|showing|poking|out), screaming (in|with) pain, in (a lot of|
        terrible|agony|so much|awful|real|great) pain, diabetic, low sugar, hypo, insulin, snake
        (bite|bit), bitten by, stung by, cannot feel (his|her|my) (legs|leg|arm|face)""",
    "collapsed": """
        (fainted|collapsed|unconscious|blacked out|passed out|keeled over), fainted, not
        (responding|waking|breathing|conscious|responsive), no pulse, (eyes|eye) rolled,
        (convulsing|convulsions|fitting|seizure), (is|was) out cold, will not wake (up)?,
        knocked (him|her|me|himself|herself)? out, lying (there)? (very)? still, stopped
        breathing, lips are swelling, face is drooping, throat (is|closing|swelling|swells|
        tight)*""",
    "heavy_blood": """
        blood (everywhere|all over|running|pouring|spurting|dripping|coming|gushing|on (his|her|
        my)|in (his|her|my)|from (his|her|my|the)|down (his|her|my)), (lot|lots|pool|so much|
        loads|losing|lost|covered in|full of|soaked with) (of)? (blood)? blood, losing (a lot
        of)? blood, covered in blood, so much blood, lots of blood, lot of blood, (pouring|
        streaming|gushing) with blood, bleeding""",
    "chest": """
        (chest|heart|left arm|jaw)""",
    "pain": """
        (pain|pains|tight|tightness|pressure|hurts|hurting|squeezing|ache|aching|stabbing|
        clutching|grey|gray|sweating|numb|racing)""",
    "breath_hard": """
        (cannot|hard to|trouble|difficulty|struggling to|struggles to|not) (breathe|breathing|
        get (a|his|her|my) breath|catch), wheez*, gasping, short of breath, out of breath and
        (grey|pale|chest), choking, lips ~ blue""",
    "no_standing": """
        (cannot|not|unable to) (stand|walk|get up|move|step|put|climb|go on|carry on|continue|
        hobble), cannot bear, (cannot|no) weight, limping, (will|would) not take weight,
        hobbling, carry (him|her|me) (out|down)""",
    "fell_far": """
        (fell|fallen|tumbled) from the (top|ledge|cliff|bridge|wall|viewpoint|rocks), (fell|
        fallen|slipped|slid|tumbled|dropped|plunged|came|went|gone|rolled) ~ (off|over|down|
        from) ~ (ledge|cliff|edge|bank|slope|wall|rocks|boulder|path|bridge|steps|ladder|gully|
        slab|viewpoint|rail|railing|ravine), (fell|fallen|slid|tumbled|dropped|plunged) (about|
        like|maybe|at least|some)? (two|three|four|five|six|ten|2|3|4|5|6|8|10|\\d+) (m|metres|
        meters|ft|feet), had a (bad|nasty|big) fall, took a (bad|nasty|big|hard) (fall|tumble),
        landed (on|hard|badly|awkwardly)""",
    "head_hit": """
        (hit|banged|bumped|cracked|smacked|knocked|bashed|struck) (his|her|my|their|the) head,
        (head|skull) (hit|against|on) ~ (rock|stone|ground), (rock|stone|branch|log|icicle)
        (hit|fell on|landed on|struck) (him|her|me|them|my|his), (rock|stone|branch) on (the|
        his|her|my) head""",
    "bitten": """
        (bitten|bit|stung) (by|me|him|her|my|on|in), (snake|adder|viper|rattlesnake|wasp|hornet|
        bees|bee|tick|scorpion) (bit|bite|stung|got|sting) (me|him|her|us|my)?, (snakebite|
        viperbite), wasps* nest""",
    "dazed": """
        acting (drunk|strange|weird|odd|funny), cannot remember, (dazed|confused|woozy|dizzy|
        groggy|vomiting|vomits|throwing up|threw up|sick|delirious), does not (know|remember)
        (what|where|who|his|her), talking nonsense, makes no sense, slurring, seeing double,
        pale""",
    "hypothermic": """
        (stopped|not) making (any)? sense and, blue (around|round) the (mouth|lips), (soaked|
        wet|drenched|cold) ~ (stopped|not) making (any)? sense, (stopped|not) making (any)?
        sense ~ (soaked|wet|drenched|cold), (keep|keeps) dropping (things|everything) , (i|he|
        she|they|we|kids|feet|hands|fingers) (am|is|are) (so|too|awfully|unbelievably|freezing|
        frozen) cold (i|he|she|we|.), (so|too) cold (i|he|she|we|to), hypotherm*, frostbit*,
        frost nip*, (stopped|has stopped) shivering, (says|said|claims) (he|she) (is|feels)
        warm, wants to (sleep|lie down) ~ (cold|wet|snow|spray), cannot stop (shaking|
        shivering), teeth ~ chattering, chattering teeth""",
    "shivers": """
        jaw (will not|does not|keeps|cannot), (shivering|shivers|shivery|trembling) (all|badly|a
        lot|like|so|hard|and|really|non stop|uncontrollably|for|since|too), (is|are|am|keeps|
        keep|been|started|cannot stop|violently|still|constantly) (shivering|trembling), (he|
        she|they|we|i|her|his|body|hands) ~ shaking (and|with|so|now|.|since|all), (cannot|not)
        stop (shaking|shivering|trembling), shaking (all over|like a leaf|with cold|from the
        cold|uncontrollably), shivering""",
    "numb": """
        (do|does|will|would) not (do|obey) (what|as|anything|my), stopped working, (not|cannot|
        do not|will not) (work|turn|feel|close|obey) (the|my|any|anymore|properly)?, like ice,
        are ice, numb, no feeling, (cannot|not) feel, (gone|went|turned|are|is) (white|blue|
        dead|stiff|waxy|purple|like wood), (lost|no) (all)? feeling, like (ice|wood|blocks|
        marble|stone), useless, (cannot|not) (work|hold|grip|press|do up|zip|button|undo|bend|
        close|open) (the|my|his|her|a|anything|it|any)*""",
    "lips_blue": """
        (blue|purple|white) (lips|fingers|face|fingertips), lips (are|have|is|gone|went|turned|
        all|going|turning|look)? ~ (blue|purple), (fingers|toes|face|hands|fingertips) (are|
        have|is|gone|went|turned|all)? ~ (blue|purple|waxy)""",
    "soaked": """
        (soaked|soaking|drenched|sodden|wringing|sopping|wet (through|clothes|jeans|socks|feet|
        gloves|jacket|cotton|to)), everything ~ (is|own|wet)? wet, (clothes|sleeves|jeans|socks|
        boots|gloves|jacket) (are|is|all)? (wet|soaked), fell in, no dry, nothing dry, all wet,
        (am|is|are) wet""",
    "freezing": """
        cold to (the)? touch, (freezing|frozen|so cold|icy|perishing|chilled|very cold|really
        cold|too cold|bitterly cold|frozen stiff|cold|chilly)""",
    "dull": """
        giggling, (cannot|not) work the, laughing at nothing, sleepy, quiet, fumbling, shaking,
        trembling, (not|will not) talk, (not|stopped) talking, (clumsy|mumbling|mumbles|
        stumbling|stumbles|slurred|slurring|drowsy|sleepy|confused|dopey|listless|apathetic|
        quiet|vague|floppy|limp|unsteady|sluggish|weak|exhausted|giddy), cannot (think|speak|
        talk|remember|stand|walk|hold|grip|keep), stopped talking, not (making|thinking|
        answering|talking|speaking), (wants to|falling|fell|just wants to) (sleep|asleep|sit
        down|lie down), funny speech, dropping (things|everything)""",
    "pale": """
        (pale|marble|white as|grey|gray|waxy|cold|wet|soaked|blue)""",
}
_ALONE: Final[Mapping[str, str]] = {
    "thunder": """
        thundered, (hear|heard) it rumble, (strike|bolt|one) was ~ (close|near), (sky|clouds|
        cloud|heavens) ~ (growl|growls|growling|rumbling|rumbles|grumbling), flicker* (behind|
        over|in the (sky|clouds|west|east|north|south)), when it flashes, electric storm, (is|
        was|starts|started|keeps) (to)? thunder*, (hear|heard|hearing|distant|and|cloud|clouds|
        sky) (a|some|the|deep|loud)? (distant|low|deep|loud)? (rumble|rumbling|rumbles|rumbled),
        thunder, thunderstorm*, thundering (now|again|closer|here), thunderclap*, thunderhead*,
        thunderous sky""",
    "lightning": """
        lightning, struck by, thunderbolt*""",
    "storm": """
        (storm|storms|electrical storm|thunderstorm|cell|squall|lightning|thunder|tempest)""",
    "near": """
        in the (cloud|clouds|sky), clouds, (over|above|behind|near|on|onto|towards) (the|us|our)
        ~ (ridge|hill|mountain|valley|us|head|heads|peak|top|gorge|col|summit), (coming|rolling|
        moving|building|closing|getting|drawing|heading) ~ (in|closer|near|nearer|up|our way|
        this way|over|fast|towards us|here), overhead, on top of us, almost here, nearly here,
        right above, approaching, about to (break|hit), before it (is|gets|hits|arrives|
        reaches), breaking, started, catching us, caught us""",
    "shelter": """
        (shelter|sheltering|hide|wait|hiding|waiting|huddled|huddling|stand|standing|sit|
        sitting|safe) ~ (under|beneath|below|by|against|until) ~ (tree|trees|pine|oak|fir|
        spruce|larch|overhang|passes|metal|pole|over|through)""",
    "flash": """
        (first|second|another|big) bolt, flashes (in|over|behind|above), (flash|flashes|flashed|
        flashing|bolt|fork) (over|behind|in|and|that|was|then|of light|above|across|on the|from
        the|just|every)*""",
    "bang": """
        counted *, counting *, (bang|boom|rumble|rumbling|rumbles|crack|clap|grumble|grumbling|
        crash) ~ (later|after|seconds|behind|sky|closer|distance|far|away|again|away|over)?,
        seconds (later|after|between|apart)""",
    "hair_stands": """
        everything (hums|buzzes|is humming|is buzzing|crackles), (gave me|got) a ~ shock, hair ~
        (standing|stands|on end|up|rising|lifting|prickling), hairs ~ (standing|stand|on end|
        prickling), (tripod|poles|pole|metal|rocks|fence|ice axe|air|umbrella) (is|are|starts|
        started|keeps)? (humming|buzzing|crackling|fizzing|tingling), (buzzing|humming|
        crackling) ~ (tripod|poles|metal|rocks|air|legs), smell* ~ ozone""",
    "sky_black": """
        sky ~ (gone|turned|turning|going|went|is|goes|getting) ~ (black|inky|green|purple) ~
        (hail|rumbl*|wind|growl*|west|fast|quickly|us), (huge|big|black|massive|towering)
        anvil*, hail (is|has|started|the|big)* (coming|falling|started|size)*, anvil (cloud|
        over|above|building)*""",
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
    "stonefall": """
        (stone|rock|boulder|block|pebble|icicle|branch) (just)? (landed|hit|came down|fell|
        crashed|smashed|bounced|whizzed|dropped) (right|just)? (next|near|beside|by|behind|in
        front|past|a metre|two metres|at my|close), (rocks|stones|pebbles|boulders|gravel|grit|
        ice|rubble) (keep|keeps|are|is|just|start|started)? (on)? (falling|fall|fell|raining|
        coming|come|came|dropping|bouncing|rolling|whizzing|rattling|pinging|crashing|flying)
        (down|around|from|past|next|on|off|beside|near), rockfall ~ (now|just|above|again|
        close), stonefall""",
    "climb_bad": """
        (gonna|going to|want to|will|could|can) climb (that|it|this|there|up there), up the
        (chute|cascade|slabs|spillway|water slide), halfway up ~ (hand|wall|rock), (ledge|shelf|
        tier|platform) ~ (metres|meters|m|feet|ft) up, (get|got|getting|climbed|climb) halfway
        up, (going|go|went|get) up the (rocks|rock|side|wall|slab|face|cliff|gully), (climb|
        climbing|climbs|scramble|scrambling|clamber|clambering|shimmy|shinning|free climb|free
        climbing|bouldering|scale|scaling) (up|down|over|onto|along|on|out)? (the|that|this|a)?
        ~ (waterfall|fall|falls|wall|cliff|face|slab|slabs|rock face|boulders|gully|crag|
        chimney|cascade|headwall|wet|slimy|mossy|slippery|rocks|ledge|tier)""",
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
_DARK: Final[Mapping[str, str]] = {
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
_PLACES: Final[Mapping[str, str]] = {
    "brink": """
        before it (tumbles|falls|drops|goes|plunges|spills|tips|pours) (over|down|off), round to
        the top, (lip|brink|crest), (top|head|edge|brow|rim|verge|tip|crown) of (the|this|that|
        a)? ~ (fall|falls|waterfall|drop|cascade|cliff|gorge|canyon|precipice|abyss|ledge|
        ravine), (cliff|canyon|gorge|clifftop) (edge|rim), (right|up|just|directly|pool|water|
        rocks|slabs|stream|river|stones|ledge|crossing) (above|over) the (fall|falls|waterfall|
        drop|plunge|lip|cascade|abyss), (above|over) the (drop|falls|fall|waterfall|abyss|void),
        where (it|the (water|stream|river|creek)) ~ (drops|falls|goes over|tips|plunges|leaves|
        goes off|spills|pours|shoots|disappears|topples), (very|outer|outermost) edge, edge of
        the (drop|fall|falls|ledge|cliff|void|abyss|rock), (top|upper) (edge|lip) of, the top
        where, from above the fall*, overhanging (slab|rock|ledge) (above|over), up top, where
        the water goes off, (on|at) (the)? (very)? top of the (fall|falls|waterfall|cascade),
        (right|standing|stand|sit|sitting|step|walk|crawl|crawling|lie|lying|shuffle|me|up) ~
        (at|on|to|near|over|off) the (very|outer|outermost)? (edge|drop|rim), upstream of the
        (fall|falls|drop|lip|waterfall), across ~ at the top, at the top""",
    "goes": """
        lunch, camping, picnic, tucked, (stand|standing|stands|sit|sitting|sits|lie|lying|lies|
        kneel|kneeling|crouch|crouching|crawl|crawling|crawls|walk|walking|walks|step|stepping|
        climb|climbing|hop|hopping|jump|jumping|cross|crossing|wade|wading|paddle|paddling|swim|
        swimming|perch|perched|perching|balance|balancing|balances|shuffle|shuffling|edging|
        inch|inching|scoot|squat|squatting|pose|posing|dance|dancing|play|playing|picnic|
        picnicking|camp|bathe|bathing|splash|splashing|wander), go, goes, going, gonna, want to,
        wants to, wanna, (set|setting|sets|put|putting|plant|planting) (up|the|my|our|a|it|one|
        his|her), (i|we) (am|are) (at|on|in|right|up|by|under|behind|here|below|inside|just),
        (he|she|they|kids|lads) (is|are) (at|on|in|right|up|by|under|behind|over), (get|getting|
        squeeze|squeezing|duck|ducking|sneak|slip|hang|hanging|hangs|lean|leaning|dangle|
        dangling|shoot|shooting|work|working) (on|onto|to|into|in|under|behind|out|over|from|
        down|closer|right|straight|up|off|beneath|below|through|at|inside|between|my|the), (is|
        can|could|may|should|shall|will) (i|we|he|she|they|it|my|the|there|kai|one), (i|we)
        (will|would|could|can|may|might) , (perfect|great|best|nice|good|ideal|fine) (for|spot|
        place|view|angle|selfie), selfie, tripod (on|at|in|right), i am, we are, me (on|at|in),
        let the (kids|bride|model|group), if i, tell them to""",
    "sits": """
        (sit|sits|sitting|stand|stands|standing|lies|lying|paddling|playing|leaning|lean|
        dancing|posing|feet|legs|toes|wade|wading|crossing|jumping|running|messing|about)""",
    "look_down": """
        (straight|looking|look|peer|peering|peek|shoot|shooting|photograph|photographing|view|
        point|pointing|aim) (right|straight|it)? (down|over), down (from|over|into|the fall|the
        drop|along the), from above, (look|peek|peer) over, over the side""",
    "lean_out": """
        (closer|nearer|close|near) to the ~ (edge|drop|rim|brink), (one|a|two|half a) (step|
        foot|metre|pace) (from|off|away from) the (drop|edge|rim|void|brink), (slopes|slopes
        down|slanting|drops) (to|towards|into|over) the (drop|edge|void|brink), (leg|foot|legs|
        feet) over the (edge|drop|rim), (lean|leaning|leans|hang|hanging|hangs|dangle|dangling|
        reach|reaching|bend|bending|stretch|stretching) (myself|him|her|the camera|the tripod|my
        camera|right|far|way|me|a bit|a little|further)? (out|over (the|it|and)), (hold|holding|
        holds|grab|grabbing|grip|gripping) (on to|onto)? (my|his|her|me by the|him by the|her by
        the|the) (belt|jacket|backpack|rucksack|ankles|legs|feet|hood|strap|collar|hand) (while|
        so|and|when|as), on my (belly|stomach) ~ (edge|over|out|rim|drop)""",
    "dangle": """
        (legs|feet|toes) (are|is)? (dangling|hanging|dangle|hang|over) ~ (over|edge|drop|abyss|
        off|void|nothing|it|fall|falls)*, dangling (his|her|their|our|my|legs|feet), dangle ~
        (legs|feet)""",
    "drop_below": """
        (a|the) (big)? drop (somewhere|on|to|right|below|ahead), (nothing|long way|straight|
        metres|meters|feet|m) (below|down|beneath|under), (big|sheer|huge|massive|long) drop,
        (right|just) (next to|beside|at) (me|my|us), one step (away|from|further)""",
    "tripod": """
        (tripod|legs|camera) (on|at|over|right|is|stands|up)""",
    "ice": """
        ice, icy, frozen (pool|lake|fall|falls|waterfall|river|stream|curtain|pond|over|surface|
        cascade|creek), icefall, icicle, icicles, (ice|frozen) (curtain|shelf|bridge|cave|sheet|
        column|wall|edge|ledge|plate), snow bridge, verglas""",
    "goes_on": """
        how thick (must|does|should) ~ (be|ice), (walk|walking|walks|walked|go|going|goes|went|
        step|stepping|stand|standing|stands|crawl|crawling|lie|lying|sit|sitting|set|setting|
        skate|skating|slide|sliding|jump|jumping|cross|crossing|run|running|put|climb|climbing|
        venture|get|getting|halfway|shuffle) ~ (on|onto|across|over|out|in|into|through|behind|
        inside|up) (it|the|to|this|that|there|a|here)?, setting up on, (is|will|would|does|did|
        looks) (it)? ~ (hold|holds|held|thick|bear|safe|solid|strong) (enough)?, (i|we) (am|are)
        (on|in) (it|the), on the ice, onto the ice, cross the, out on the, (hold|holds|held|
        bear|bears) (me|us|my|him|her|weight|so|fine|up|the)*""",
    "creaks": """
        sounds hollow, hollow, thin, (creak|creaks|creaked|creaking|crack|cracks|cracked|
        cracking|groan|groans|groaned|groaning|bends|bending|gives|gave|dripping) , (crack|
        cracks) (in|under|through)""",
    "below": """
        (over|above) (my|me|us|our) (head|heads|spot|tripod|me|camera)?, (below|beneath|
        underneath|under) (it|them|the|us|that|a|an|those|this|here|there), (right|directly|
        just|straight) (below|beneath|under|underneath), (stand|standing|sit|sitting|set up|
        tripod|me|we are|i am|walk|crouching) ~ (below|beneath|under|underneath|behind),
        (around|round|at|next to|beside|near|by) (my|our) (feet|me|us|tripod|bag), above (us|me|
        my|our|the tripod|where i), (next to|beside|near) (me|us), behind it, crawl ~ behind, in
        the alcove""",
    "chunks": """
        (chunks|chunk|pieces|piece|bits|lumps|blocks|icicles|icicle|slabs|ice) ~ (coming|come|
        came|falling|fall|falls|fell|dropping|drop|dropped|breaking|broke|crashing|crashed|
        raining|off|down)""",
    "behind_fall": """
        (below|under|beneath) the falling water, (behind|beneath|underneath|inside) (the|that|
        this)? ~ (fall|falls|waterfall|curtain|water|cascade|veil|spout|sheet), (under|beneath|
        below|underneath) (the|that|this) ~ (fall|falls|waterfall|spout|cascade|jet|shower|lip|
        stream|water jet), (cave|grotto|hollow|ledge|space|gap|alcove) (behind|under|beneath)
        (the|it|that), (through|from behind|from inside|out through) (the|it) ~ (curtain|fall|
        falls|veil|water|sheet|cascade), in the (shower|spout)""",
    "ask": """
        (can|could|may|is there|is it|how do|how can|should|shall|ok to|safe to|allowed to|any
        way|possible to|want to|i will|we will|let us|who wants)""",
    "landing": """
        where (it|the (water|fall)) (lands|hits|strikes|comes down|crashes|pounds|falls),
        (right|directly|straight) (at|in|under|below|beneath|into) the (foot|base|bottom|impact|
        fall|falls|spout|waterfall), (impact|landing|splash|drop) zone, foot of the (fall|falls)
        (in the|right|under|getting)""",
    "overhang": """
        (leaning|hanging|balanced|wobbly|perched) (boulder|rock|block|tree|slab), (overhang|
        overhanging|undercut|loose (rock|rocks|stones|boulder|slab|cliff)), (under|beneath|
        below) (the|that|a|this) (rock|cliff|wall|roof|crag|face|boulder|slab|ledge|overhang|
        loose|hanging|icicles|dead tree|leaning tree), (cave|roof)""",
    "fresh_rock": """
        splinters of rock, rock splinters, (fresh|new|recent|pale|white) ~ (rockfall|rock|rocks|
        scar|scars|blocks|splinters|debris|boulders|rubble|stones|landslide|chips), (pebbles|
        stones|rocks|gravel|grit|boulders|bits|rock) (keep|keeps|are|is|just|came|come|have)? ~
        (falling|fall|fell|raining|coming down|rattling|dropping|trickling|bouncing|rolling|
        whizzing|landing|pinging) ~ (down|us|me|around|here|above|past|every|off|from)*,
        rockfall, stonefall, landslip, landslide, rock slide""",
    "wade_in": """
        carry ~ across, rock hop*, hop* across, log jam ~ (walk|stand|cross), logjam ~ (walk|
        stand|cross), (feet|foot|boots|legs) in the ~ (water|creek|stream|river|brook|pool),
        (walk|step|go|hop|jump|get) (straight|right)? (across|through) the (stream|river|creek|
        water|brook|beck|burn), wading (here|fine|ok|safe|possible|across), (wade|wading|wades|
        waded) (in|into|out|across|over|through|to|up|upstream|in to|a bit|further|deeper),
        (step|walk|get|go|going|walking|stepping|climb|jump|hop|stand|standing|set up|setting
        up|sit|kneel) ~ (in|into) (the|that|this)? ~ (water|river|creek|stream|brook|beck|burn|
        current|rapid|rapids|torrent|pool|shallows|middle of the (river|stream|creek)), tripod
        in the ~ (water|river|creek|stream|current|pool|middle), ford (the|it|this), cross (the|
        this|that) (river|stream|creek|beck|burn|brook|rapid|rapids|torrent|water|current)""",
    "waders": """
        (waders|wading boots|wetsuit|wet suit|drysuit|neoprene|barefoot|bare feet|bare foot|
        wellies|trousers rolled|shoes off|boots off|bathers|swimsuit|sandals)""",
    "go_in": """
        (going in|go in|walk in|step in|get in|straight in|in i go|in we go|into the|going into|
        go into|across|through|midstream|out to|to the (island|rock|boulder|middle|other)|wade|
        wading|in the (water|stream|river|creek|pool|current|middle)|mid stream|the middle|in
        there)""",
    "deep": """
        (ankle|knee|thigh|waist|hip|chest|shin|neck|belly) (deep|high), (up to|over|above|past|
        to|at) (my|the|her|his|our|their|your|mid) (knee|knees|thigh|thighs|waist|hip|hips|
        chest|belly|neck|shin|shins|shoulders|crotch|armpits|ribs), (cannot be|not|only|just|
        how|too|pretty|quite|that|about|is it|a bit) (that|very|too|so)? deep, (cm|m|metre|
        metres|meter|meters|ft|foot|feet) deep, deep""",
    "water_speed": """
        (m s|metres per second|meters per second|metre per second|m per second|ft s|feet per
        second|kmh|km h|m/s)""",
    "bottom_unseen": """
        (cannot|not|hardly|barely|never) ~ (see|make out|find|feel|touch) (the|a|any) (bottom|
        ground|bed|floor), (bottom|ground) (is)? (not|cannot be) (visible|seen)""",
    "island_target": """
        out in the middle, (in|to) the middle ~ (fast|rapid|water|stream|river), (island|islet|
        gravel bar|sandbar|far bank|far side|other side|other bank|opposite bank|opposite side|
        mid river|midstream (rock|boulder)|logjam|log jam), (rock|boulder|stone|log) (in|out)
        (the)? ~ (middle|rapid|rapids|river|stream|water|current|pool), middle of the (river|
        stream|creek|rapid|rapids|water|current), (boulder|rock) in the""",
    "swim_in": """
        jumping in (from|off|at), (jump|dive) in (from|off), (swim|swimming|swims|dive|diving|
        bathe|bathing|jump|jumping|leap|leaping|dip|skinny dip|float|tubing|snorkel) (across|in|
        into|to|over|under|through|out|off|from|for) (the|to|a|it|that|this|there|here) ~ (pool|
        plunge|fall|falls|waterfall|river|stream|far side|other side|rapid|rapids|water|basin|
        boulder|island|curtain|rock|pot)*, (quick|a) (swim|dip) (in|across|under|before|to|at)""",
    "pushes_me": """
        (current|water|river|stream|flow|it) (is|keeps|really)? (pushing|pulling|tugging|
        dragging|shoving|pushes|pulls|tugs|drags|shoves) (me|at my|my|us|at me|him|her|hard|on
        my|on me), (legs|knees) ~ (shaking|trembling|wobbly|wobbling|giving) ~ (water|current|
        stream|river), (almost|nearly|just about) (swept|knocked|lost my) ~ (feet|footing|over|
        off)""",
    "climb_up": """
        (pulling|pull|haul|hauling|heaving|dragging) myself up, handholds, holds, going up,
        (climb|climbing|climbs|climbed|scramble|scrambling|scrambles|scrambled|clamber|
        clambering|shin|shinning|boulder|bouldering|haul|pull myself|scale|scaling|go up|going
        up|get up|getting up|free climb|trying|try|walk up|walking up|crawl up|crawling up|work
        my way up|heave|ascend|ascending), up (the|a|that|along|this|wet|onto|those|there|
        beside|next|on)""",
    "wet_rock": """
        (wet|slimy|slippery|mossy|greasy|slick|dripping|algae|soaking|glistening|damp|polished|
        green) ~ (rock|rocks|slab|slabs|wall|face|stone|stones|boulder|boulders|cliff|ledge|
        chimney|gully|step|steps|crack|crag|cliffs), (rock|rocks|slab|slabs|wall|face|cliff|
        boulders) (is|are|looks|look|all|a bit|pretty|really|so|very)? ~ (wet|slimy|slippery|
        mossy|greasy|slick|dripping|damp|green), (slab|moss|crag|cliff face|rock face|cliff
        wall)""",
    "fall_side": """
        (beside|next to|alongside|along|by|right of|left of|side of|up) (the|it|this) (fall|
        falls|waterfall|cascade|water|curtain|chute), (left|right|steep) (side|flank|bank|wall),
        up the (fall|falls|waterfall|cascade|cliff|wall|face|gully|chimney|crag|headwall|rock|
        rocks)""",
    "no_rope": """
        (no|without|without a|not have a|without any|forgot the) (rope|ropes|harness|helmet|
        protection|gear), unroped, unprotected, in (flip flops|sandals|trainers|sneakers|socks),
        one handed, with one hand""",
    "solo": """
        one hand for the camera, free solo, soloing, freesolo""",
    "next_step": """
        (second|next|upper|middle|third|top|first|higher) (step|tier|ledge|level|pool|terrace|
        drop|basin|stage|shelf|cascade|fall)""",
    "stuck_up": """
        (cannot|not|how do i) (get|come|climb|go) (back)? (down|up|off)*, (stuck|trapped|
        stranded) (on|halfway|up|here|half)*, halfway up, no way (down|back)""",
    "bar": """
        (rope|chain|fence|tape) is (only|just), (rail|rails|railing|railings|guardrail|guard
        rail|handrail|fence|barrier|barriers|chain|chains|wire|gate|tape|rope|ropes|parapet|
        balustrade|wall of the viewpoint|barricade|cordon|cones|no entry|keep out|do not enter|
        no access|no trespassing|private|forbidden|prohibited|off limits|closure|signs?|sign|
        signpost|board|notice|warning|roped off|fenced off|taped off|closed off|cordoned off)""",
    "closed": """
        (trail|path|track|gate|bridge|viewpoint|gorge|area|steps|stairs|road|section|canyon|
        ledge|platform|bit|part) ~ (is|are|was|has been)? ~ (closed|shut|locked|off limits|roped
        off|blocked|barred|sealed|taped|forbidden|prohibited|cordoned), closed (trail|path|
        track|section|area|gate|bridge|viewpoint|gorge|bit|part|sign), closure, (danger|warning|
        keep out|no entry|no access|do not (enter|climb|cross|pass)) (sign|signs|board|tape|
        notice)*, sign (says|saying|said|reads) (no|do not|danger|closed|keep|stay|forbidden|
        not|stop), signs? (say|saying) (no|do not|danger|closed|keep|stay|forbidden|not|stop)""",
    "pass_it": """
        duck under, keep out (but|sign but), past the (locked|closed) (gate|door|fence), moved
        the (cones|barrier|tape|sign|fence|gate), (over|under|past|through|beyond|beneath|
        around|across|outside) (the|it|that|this|them|a) ~ (rail|railing|railings|guardrail|
        handrail|fence|barrier|chain|tape|rope|gate|wire|parapet|sign|wall|cordon|barricade)*,
        (hop|hopping|hopped|climb|climbing|climbed|jump|jumping|jumped|step|stepping|stepped|
        swing|swinging|duck|ducking|ducked|squeeze|squeezing|squeezed|crawl|crawling|vault|slip|
        slipping|slipped|sneak|sneaking|nip|nipping|hoist|straddle|straddling|clamber|unhook|
        unclip) ~ (over|under|past|through|beyond|behind|around|round|beneath|across|it|the|
        outside), (other|wrong|far|outer|water|river) side of (the|it), on the other side, (leg|
        legs|knee) over, outside the""",
    "go_anyway": """
        how else, everybody else, past the locked, (only|just) (there)? for (tourists|show|kids|
        idiots|beginners|liability|insurance|winter|cars|others|old), what happens if (i|we), a
        hole in, looks fine, seems fine, gorgeous, squeeze (round|around|past|through|by),
        anyone care, everybody does, worth, ok to, sneak, anyway, ignore*, ignoring, nobody
        (cares|minds|is looking|looks|watches|checks|is here|around|would|will), no one (cares|
        is looking|around|minds), (everybody|everyone|others|people|locals|they all|loads of
        people|all the) (does|do|seem|seems|go|goes|went|ignore|ignores|walks|is|are|climb|walk|
        just), (just|only|quick|quickly|for a) (a)? ~ (sec|second|minute|minutes|moment|shot|
        frame|frames|look), probably (for|just|only|old|from|does|do), (cannot|not) be (that|so)
        (bad|serious|dangerous), shall (we|i), should (we|i), (can|could|may) (we|i), (we|i)
        (will|am going|are going|went|go|want|would), going (in|past|through|round), does (it|
        that) (count|apply|matter), who cares, worth it, risk it, old sign, surely, doubt""",
    "in_picture": """
        (in|spoils|ruins|blocks|in my|disturbs|messes) (the|my)? (frame|picture|shot|view|photo|
        composition|way|foreground), clean foreground, (better|best|clean|clear|nicer|free)
        (view|angle|shot|foreground|spot|frame)""",
}
_AGAINST: Final[Mapping[str, str]] = {
    "past": """
        last (year|time|week|month|summer|winter|spring|autumn|season|trip|visit|weekend|monday|
        tuesday|wednesday|thursday|friday|saturday|sunday|night), (years|year|months|month|
        weeks|week|days) ago, yesterday, used to, in (19|20)\\d\\d, in the (eighties|nineties|
        seventies|sixties), (on|since) (monday|tuesday|wednesday|thursday|friday|saturday|
        sunday), once (i|we|he|she|a|my|had|the|upon), the other day, back in (the|19*|20*),
        when i was (a|young|little|small|\\d+|at), every (christmas|year|time), in \\d\\d, as a
        (kid|child|boy|girl)""",
    "told": """
        lightning (trigger|remote|app), where do (i|we) go next, goes black, (called|named|
        titled) *, lightning (talk|quick|round|fast|bolt logo), (thunder|lightning) (falls|
        creek|canyon|gorge|point|ridge cafe), thunder thighs, tripod is (foot|leg), (left|right|
        end of the) (gone)? home already, searching for (a|the) (title|name|word|good), (dipper|
        bird|wagtail|otter|trout|salmon|heron|fish) ~ (swims|dives|under|jumps|behind), next
        (step|question|task|slide|picture|lesson|page), rope of foam, light is gone flat, has
        gone flat, (he|she|they|everyone) (is|has|have|are) gone home, i was home, i drop, fog
        was rising, (home|left|inside|in bed) by then, viewpoint please, (sign|signs|board|
        notice|letters|graffiti) (in the|on the) (frame|wall|picture|foreground|left|right|
        corner), (fell|fallen|falls|falling) (in love|asleep|for|short|flat|apart|behind), in
        love, (watched|story|stories|film|movie|book|article|podcast|novel|poster|poem|song|
        soundtrack|quiz|crossword|legend|dream|dreamt|dreamed|nightmare|joke|titled|caption|
        spell|translation|chapter|documentary|painting|exhibition|lecture|headline), (heard|
        read) (that|about|of a), (like|as|sounds like|than) (a|the)? (thunder|lightning|storm|
        flood|ice), (steals|steal|stole|stealing) ~ thunder, lightning (cable|port|charger|fast|
        adapter|connector), tells it, they say, people say, it says in, rumour, (according|
        thanks) to, named, nicknamed, means, kiosk""",
    "editing": """
        goes (black|white|grey|flat), dusk light, (is|as) my subject, light (is)? flat, in with
        (a|the|24|35|16|20|50|28|70)?, focus rail, rail for, focus rail, (whites|colours|colors|
        picture|tones|light|image|photo|portrait) (is|are|look|looks) (too|a bit|very)? (cold|
        warm|dark|blue|brown), too dark (and|to focus|for|.), (detail|details), (rising|
        drifting|floating) mist, sun is rising, (colour|color|colours|reds|greens|blues|whites|
        tones) (bleed|bleeding|bleeds), bleeding edge, broken (water|light|lines), broken by
        leaves, brightest, with (these|the|all these|those) (numbers|settings|menus|figures),
        looks like, (histogram|crop|cropped|cropping|highlights|highlight|shadows|saturation|
        clarity|slider|sliders|contrast|texture|pixels|pixel|raw|jpeg|jpg|noise|sharpness|
        sharpen|vignette|curve|curves|layer|layers|mask|clone|cloned|dodge|preset|thumbnail|
        thumbnails|print|prints|printed|album|folder|upload|gallery|vote|votes|voting|critique|
        feedback|judge|judges|jury|competition|contest|monochrome|white balance|kelvin|magenta|
        tint|midtones|whites|blacks|meter|metering|autofocus|menu|menus|firmware|bokeh|aperture
        ring|aspect ratio|composition|compositions|balanced|leading line|leading lines|thirds|
        exhibition|postcard|wallpaper|calendar|negatives|darkroom|slide|slides|caption|clip|
        clipped|clipping|blown|overexposed|underexposed|moire|stacking|panorama|frames of|
        keeper|keepers|hit rate|editing|edit|edited|processing|converted|conversion), (in|into|
        out of|fills|across|splits|leads) the (frame|picture|image|photo|composition|file|
        corner), left third, right third, (left|right|top|bottom|upper|lower) (edge|corner|half)
        of the (frame|picture|image|photo)""",
    "over": """
        (he|she|they) (is|are|got|climbed) (safely|back|just|already)? out (again|of the water|
        of it|.), false alarm, (all|everyone|everybody|we are all|both|he is|she is|they are|
        now) (is|are|is all|safe and)? (safe|fine|ok|okay|alright|well|unhurt|sound) (and|now|
        again|with|back|at|thanks|after)*, (back|home) (home|safe|again|safely|at the (car|hut|
        hotel|cars|bus)), home again, kettle is on, (we|i|he|she|they) (got|have|had|made it|
        came|turned) ~ (back|home|round|around) (safely|safe|fine|early|in time), turned (round|
        around|back), no harm done, (is|are|was|were) found, (laughed|laughing) about it,
        nothing happened, nobody (is|was|got)? (hurt|injured|slipped|fell)""",
    "supposed": """
        (i|my) ~ but i am (fine|ok|okay|alright|unhurt), (feelings|pride|ego) (are|is)? hurt,
        (if|in case|suppose|supposing|imagine|what if|unless) (someone|somebody|anyone|anybody|
        one|it|there|the|a|you|people) ~ (falls|fell|gets|got|slips|slipped|goes|were|should|
        rises|comes|happens|is|hurts|disappears), risk of, (danger|chance|odds|probability|
        likelihood) of, (afraid|scared|worried|nervous) (of|about), (how|what) (to do|should one
        do|do you do|do leaders) (if|when), (to avoid|to prevent|avoiding|preventing|insurance|
        practice|practise|practised|practising|drill|exercise|training|course|lesson|test|
        rehears*|simulat*)""",
    "denied": """
        shot from the (path|road|bridge|platform|bank|car park), behind the (rail|railing|fence|
        barrier|handrail|guardrail), (no|without|any) (thunder|lightning|storm|ice|danger|flood|
        flooding), not (near|at|on|close to|anywhere near) the (edge|lip|brink|top|water),
        (nobody|none of us|no one|never|will not|would not|not going to|should not|must not|
        without) ~ (go|goes|going|went|near|climb|climbing|stand|standing|wade|wading|cross|
        crossing|step|stepping|enter|entering|get|getting|leave|leaving|leaning|over|past|on|
        onto|in|into|closer|slipped|fell|hurt|lost|missing) , (stay|stayed|staying|keep|keeping|
        kept|remain|remained) (behind|outside|off|away|clear|back|out|well|on (this|the) (side|
        path|trail|visitor)|this side|from the (path|bridge|platform)), (from|on) (the|a) ~
        (bridge|platform|viewpoint|overlook|deck|boardwalk|footbridge|car park|meadow|terrace|
        visitor side|marked path|far bank|official|lookout|bench|main road), instead of (going|
        climbing|standing|wading), (not|no) (need|intention|plan|plans), visitor side""",
    "plan": """
        tomorrow, forecast*, next (week|month|year|time|weekend|summer|winter|monday|friday|
        saturday|sunday), (cancelled|canceled|postponed|moved to|called off|rescheduled), (on|
        by|until) (monday|tuesday|wednesday|thursday|friday|saturday|sunday), in (spring|summer|
        autumn|winter), for sale, secondhand""",
    "now": """
        since yesterday, right now, (at the|this very) moment, this (minute|second|instant),
        (seconds|second|minutes|minute|mins) ago, just (fell|slipped|now|went|got|saw|heard),
        now""",
    "help": """
        help, sos, mayday, emergency, urgent, urgently, please hurry, 112, 911, 999, what do
        (we|i) do, what now""",
}

ENGLISH: Final = Lexicon(
    common="""
        the is i my and to of at we it you are was this that they have not with for she his her from
        what how your our but""",
    wordings={**_PEOPLE, **_WATER, **_BODY, **_ALONE, **_DARK, **_PLACES, **_AGAINST},
    spelling=lambda text: " . ".join(sentences(text)),
)
