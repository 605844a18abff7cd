"""English wordings: what speaks against a danger: over, supposed, denied, of the picture."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

AGAINST: Final[Mapping[str, str]] = {
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
