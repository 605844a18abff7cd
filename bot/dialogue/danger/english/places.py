"""English wordings: where nobody stands, ways that nobody takes, stones that fall."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

PLACES: Final[Mapping[str, str]] = {
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
}
