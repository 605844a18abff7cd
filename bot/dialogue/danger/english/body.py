"""English wordings: what hurts, bleeds, or is too cold."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

BODY: Final[Mapping[str, str]] = {
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
