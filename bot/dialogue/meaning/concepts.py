"""Words and phrases that mean the same, by the idea that they stand for."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

#: Own collection. A phrase counts as its idea beside its own words; longer phrases win.
CONCEPTS: Final[Mapping[str, str]] = {
    # filters
    "polariser": (
        "polariser|polarizer|polarisers|pola|polar|pol filter|polfilter|cpl|pl filter|polarising"
        "|polarizing|polarised|anti glare ring|anti glare|antiglare|anti reflection|against shine"
        "|against glare|circular filter|glare filter|shine filter|glare killer|shine killer"
        "|rotating filter|turning filter|filter that turns|filter you turn|twisty filter"
    ),
    "nd": (
        "nd|nds|nd filter|neutral density|neutral density filter|grey filter|gray filter"
        "|dark filter|dark glass|black glass|dark one|darkener|darkening|darkens|darken|stopper"
        "|six stop|ten stop|three stop|6 stop|10 stop|3 stop|big stop|sunglasses|eats light"
        "|steals light|light eater|smoked glass|tinted glass|near black glass|grey glass"
        "|grey thing|dark thing|dimmer|nd8|nd64|nd1000|six stopper|ten stopper|heavy filter"
        "|grey one|black filter|strong filter|dark grey"
    ),
    "filter": "filter|filters|screw in|screw on|stack|stacked",
    "turn": "turn|turning|turned|rotate|rotated|rotating|twist|twisting|spin|twiddle|direction|which way",
    "shine": (
        "shine|shiny|shines|shining|glare|glary|gloss|glossy|sheen|glint|glints|glinting|glinty"
        "|glitter|glisten|glistening|reflection|reflections|reflecting|mirror|gleam|gleaming"
        "|varnished|lacquered|plastic wrap|cling film|oily"
    ),
    # exposure
    "time": (
        "shutter|shutter speed|shutter time|exposure time|exposure|seconds|second|secs|speed"
        "|how long|time on the dial|fraction|tenth|quarter second|half second"
    ),
    "silky": (
        "silk|silky|smooth|smoothed|satin|velvet|veil|cloth|dreamy|flowing|flowy|soft water"
        "|creamy|ribbon|ribbons|misty|ghostly|blurry water|milky water|magic water"
    ),
    "mush": (
        "mush|mushy|soup|cotton|cotton wool|candy floss|wool|fog|foggy|dry ice|steam|smoke|porridge"
        "|milk|milky|cream|shaving foam|marshmallow|featureless|no texture|zero structure"
        "|no structure|no detail in the water|texture gone|no threads|no strands|smear|yoghurt"
        "|cloud|ghost|toothpaste|whipped|snow|mist|flour|custard|melted|ice cream|gauze|wadding"
    ),
    "frozen": (
        "frozen|freeze|freezes|ice|icicle|icicles|crunchy|spiky|stands still|hard|static|stopped"
        "|hanging in the air|hangs in the air|no flow|not moving|no motion|no movement|crispy"
        "|glass beads|needles|stiff|doesnt move|isnt moving|stuck|motionless|nails|pearls|spikes"
        "|shattered|crystal|crystals|splinters|every drop|single drops|jagged|brittle|lifeless"
    ),
    "white": (
        "white|whites|blown|blow|blows|blowing out|blown out|burn|burnt|burned|burn out|burnt out"
        "|bleached|blank|blank paper|washed out|clip|clipped|clips|clipping|overexposed"
        "|overexpose|over exposed|too bright|whited out|no detail|empty white|paper white"
        "|blinding|chalk|chalky|bright sheet|eaten away|nuked|torched|fried|glaring white|blob"
        "|bedsheet|tipp ex|paint|toilet paper"
    ),
    "blinking": "blink|blinks|blinking|warning|warnings|highlight alert|flash|flashing|flashes|zebra",
    "histogram": (
        "histogram|histo|graph|hump|curve|mountain|chart|bars|heap|hill|pile|right hand edge"
        "|right edge|right wall|right side of the graph|against the wall"
    ),
    "meter": (
        "meter|metering|metered|measure|measuring|spot|spot meter|light reading|reading|exposure lock"
        "|meter off|measure off|read off|light meter"
    ),
    "dark": (
        "dark|darkness|dim|gloom|gloomy|murky|underexposed|under exposed|too dark|night|dusk"
        "|nearly night|forest floor|black|coal|cave|cellar|lights off|lights went off|muddy|dull"
        "|dingy|gutter|blacked"
    ),
    "iso": "iso|asa|sensitivity|sensitive|gain|sensor sensitivity|film speed|iso value|auto iso",
    "noise": (
        "noise|noisy|grain|grainy|sand|sandy|sandpaper|speckle|speckles|speckled|coloured dots"
        "|confetti|pepper|salt and pepper|gritty|gravel|snowstorm|fuzz|static noise|rough"
    ),
    "aperture": (
        "aperture|apertures|f stop|f number|fstop|f value|opening|iris|diaphragm|which f|what f|hole"
        "|f|fnumber|depth of field|stop down"
    ),
    "smallest": (
        "smallaperture|smallest opening|smallest hole|tiniest hole|smallest aperture|stopped all the way down|closed down"
        "|stopped right down|stopped down|closed all the way|closed right up|biggest number|highest number"
        "|largest f|maximum depth|max depth|minimum aperture|as far as it goes|highest f|end stop"
        "|tightest"
    ),
    "diffraction": "diffraction|evenly soft|soft everywhere|same softness|no bite|no crispness",
    "raw": "raw|dng|jpeg|jpg|jpegs|jpgs|file format|file type|format of file|negative|compressed",
    "colour": (
        "white balance|wb|kelvin|colour temperature|color temperature|auto colour|colour setting"
        "|daylight setting|cloudy setting|cloud symbol|sun symbol|presets|awb|tungsten|warmth"
        "|colour cast|color cast|tint|tinted|hue"
    ),
    "blue": (
        "blue|bluish|cold|cool|cyan|icy|smurf|smurfs|swimming pool|arctic|steel|aquarium"
        "|underwater|frostbitten|corpse|moonlit"
    ),
    "magenta": "magenta|purple|pink|brown|brownish|violet|reddish|rosy|sepia|greenish|tea|yellowish",
    # focus
    "focus": (
        "focus|focusing|focussing|focused|focussed|refocus|af|autofocus|af point|focus point"
        "|focus box|focus square|focus ring|plane of focus|manual focus|green box|distance scale|focus on"
    ),
    "hunt": (
        "hunt|hunts|hunting|lock|locks|never locks|wont lock|refuse to lock|bzz|whirr|whirrs"
        "|whirred|whirring|back and forth|in and out|searching|searches|pump|pumps|pumping|beep"
        "|beeps|seeking|cant find|cannot find|gives up|zooms in and out|goes crazy|grinding"
    ),
    "near": (
        "near|nearest|closest|close|foreground|front|at my feet|in front|first rock|near rock"
        "|nearby|boulder|near stones|closest to me|first metre|first meter|bottom of the picture"
        "|bottom of the frame|along the bottom|lower part|lower third|near end|my toes|front rock"
        "|lower edge|front part|front bit|under my nose|pebbles at my feet"
    ),
    "far": "far|distance|background|far bank|far wall|back|horizon distance|infinity|cliff|behind",
    "both_ends": (
        "from here to|front to back|both sharp|cant have both|have both|all sharp|sharp from|either or"
        "|one or the other|everything sharp"
    ),
    "soft": (
        "soft|blur|blurry|blurred|blurs|unsharp|fuzzy|mushy|woolly|not sharp|isnt sharp|not crisp"
        "|smudged|smudgy|out of focus|not in focus|isnt crisp|never crisp|hazy|vague|melt"
    ),
    "sharp": "sharp|crisp|tack sharp|crispness|sharpness|pin sharp|detailed",
    "all_over": (
        "everywhere|all over|whole picture|everything|the lot|corner to corner|nothing at all"
        "|whole frame|nothing is|all of it|overall|across the frame|entire|edge to edge"
    ),
    # support
    "tripod": (
        "tripod|tripods|sticks|legs|three legs|stand|monopod|gorillapod|centre column"
        "|center column|middle pole|column|head|ball head|ballhead|support|aluminium|carbon legs"
    ),
    "shake": (
        "shake|shakes|shaky|shaken|shaking|wobble|wobbles|wobbly|tremble|trembled|tremor|vibrate"
        "|vibrates|vibration|vibrations|shiver|shivers|jitter|double edges|doubled edges|ghosted"
        "|moved sideways|smudged sideways|jolt|jerk|jerky|jumped|nudge|quiver|rattle|sway|swaying"
    ),
    "press": (
        "finger|thumb|press|pressing|push|jab|poke|shutter button|release|button|cable release"
        "|remote|self timer|timer|stabiliser|stabilizer|stabilisation|stabilization|ibis|is switch"
        "|vr|anti shake|steady shot"
    ),
    "by_hand": (
        "by hand|handheld|hand held|hand holding|freehand|free hand|steady grip|in my hands|no tripod"
        "|without tripod|without a tripod|without support|holding it|hold it still|holding still|elbows|held in hand"
        "|from the hand|steady hands|without legs|left my sticks|left the legs|forgot the legs|forgot my tripod"
        "|forgot the tripod|lean against|brace|braced"
    ),
    "current": "current|in the stream|in the water|standing in water|legs in|gravel|sand bank|soft ground|sinking|sunk",
    # parts of the scene
    "water": (
        "water|fall|falls|waterfall|cascade|cascades|stream|creek|brook|river|linn|beck|burn water"
        "|rapids|torrent|chute|drop|plunge|foam|froth|curtain|spout"
    ),
    "leaves": (
        "leaves|leaf|foliage|fern|ferns|greenery|branch|branches|bush|bushes|grass|twigs|plants|shrubs|reeds"
        "|flowers|vegetation|greens|bracken|willow|undergrowth|ivy|trees around"
    ),
    "wind": "wind|windy|breeze|gust|gusts|draught|draft|air moves|moving air|blowing|sway in|flutter|fluttering|waving|wave about",
    "twice": "twice|double|doubled|two copies|ghosting|duplicate|echo",
    "rock": "rock|rocks|stone|stones|slab|slabs|cliff|cliffs|wall|walls|pebbles|bank|bark",
    "sky": (
        "sky|skies|white patch above|hole above|gap above|above the trees|over the lip|over the drop|above the edge"
        "|top of the frame|bright hole|notch|strip on top|above the fall|gap in the trees|hole in the trees|bright wedge"
        "|upper edge|over the top|pale patch|bright triangle|bright gap|white triangle|white hole|opening in the canopy"
    ),
    "edges": (
        "edge|edges|border|borders|corner|corners|rim|margin|margins|sides of the picture|sides of the frame"
        "|side of the frame|frame edge|round the outside|outer part|perimeter"
    ),
    "clutter": (
        "clutter|cluttered|twig|twigs|stick|sticks out|poking|pokes|poke in|sticking in|rubbish|litter|junk|stray|intrude|intruder"
        "|coming in|comes in|came in|half a|bits|dead wood|debris|bright bits|bright pebbles|distraction|distracting|messy|mess"
        "|tripod foot|strap in|my foot|bag in|somebody else|cut off|photobomb|sneaks in|creeping in|elbow"
    ),
    "lens_glass": (
        "on the lens|front glass|lens glass|on the glass|on my glass|front element|filter glass|lens gets wet|lens wet|wet lens"
        "|wet glass|on the front|the glass|wiped|wipe|wiping|cloth|microfibre|lens cloth|lens hood"
    ),
    "spray": (
        "spray|sprays|spraying|droplet|droplets|splash|splashes|drops|water drops|raindrops|rain"
        "|drizzle|wet|soaked|damp|spatter|mist from the fall|spots|dots|specks|blobs|discs|circles|bubbles|splotches|blotches"
    ),
    "fogged": (
        "fog up|fogged|fogging|steamed|steamed up|steams up|breath|breathed|condensation|misted|misted up|haze|hazy veil|milky veil"
        "|dew|came from the cold|warm car|from the car|low contrast|humid"
    ),
    "flare": (
        "flare|flares|veil|veiled|sun in the frame|towards the sun|into the sun|against the light|against the sun|sun peeks|hood"
        "|many sided|hexagon|hexagons|polygons|light spots in a line|row of spots|washed out veil|backlight|backlit|stray light"
        "|streaks of light|rainbow spots|ghost spots|sun behind|sun just out"
    ),
    "vignette": (
        "keyhole|peeping|porthole|tunnel|black corners|dark corners|corners black|corners dark|vignette|vignetting|rings show|round frame"
        "|corners go|corners cut|looking through a tube|telescope|black in the corners|shaded corners|four corners"
    ),
    # framing
    "wide": (
        "tiny|small|too small|matchstick|wide|too wide|ultra wide|lost in|needle|speck of a fall|magnifying glass|dwarfed|toy|ant"
        "|disappears|far away in|middle of nowhere|hard to find|postage stamp|thread in|pin|insignificant|shrunk|shrinks|huge in real"
        "|looked huge|bigger in real life|was big|impressive in real|toothpick|puny"
    ),
    "leaning": (
        "lean|leans|leaning|tilt back|fall over|falling over|falling backwards|converge|converging|tent|close up like|tip over|topple"
        "|toppling|drunk|drunks|pyramid|narrow at the top|narrower|trunks meet|bend inwards|look upward|looking up at|pointed up"
        "|pointing up|pointed the lens|aimed up|tipped up|tilted up|tilted upwards|lens up|keystone|wedge shape|squeeze the top"
        "|steeple|spire|backwards"
    ),
    "tilted": (
        "tilted|tilt|crooked|slanted|slanting|level|not level|wonky|horizon|slope|slopes|sloping|downhill|uphill|askew|skewed"
        "|running out of the frame|spirit level|bubble|lopsided|slides off|plumb|pool leans|one side higher|straight|straighten"
    ),
    "height": (
        "eye height|eye level|standing height|head height|standing|kneel|kneeling|knees|crouch|low down|get low|get down|ground level"
        "|same height|chin height|full height|legs out|bend the legs|viewpoint height|frog|from the ground|near the ground|belly"
    ),
    "lens": (
        "lens|lenses|focal length|zoom|tele|telephoto|wide angle|prime|24 70|70 200|16 35|millimetres|glass to bring|long lens|focal"
    ),
    # light and place
    "sun": (
        "sun|sunny|sunshine|noon|midday|cloudless|full sun|middle of the day|high sun|bright day|blazing|lunchtime|harsh light|blue sky|glaring day|twelve o clock"
    ),
    "mixed": (
        "sun and shade|half sun|half shade|half lit|one bank lit|lit and|patchy|dappled|blotchy|coins of sun|spots of sun|sun patches"
        "|patches of sun|sun through|light and shadow|stripes of light|leopard|zebra light|part in shade|partly lit|speckled light"
        "|one side lit|one side bright|shadow line|half in the sun|half in shadow"
    ),
    "contrast": "contrast|both ends|dynamic range|too much range|bright and dark|black and white only|either the rock or|either the water",
    "when": (
        "when|best time|what time|time of day|hour|morning|evening|after rain|season|weather|overcast|sort of day|which day|which month"
        "|autumn|spring|conditions|forecast|dawn|sunrise|what day"
    ),
    "stay": (
        "stay|how long to stay|hang around|minutes there|hours there|enough time|long enough|spend|twenty minutes|half an hour|an hour enough"
        "|one hour|linger|allow for|time to plan|plan for"
    ),
    "late": (
        "late|lost track|track of time|forgot the time|forget the time|eye on the hour|watch the clock|clock|walked back in the dark"
        "|headlamp|torch|after dark|before dark|turn back|turnaround|missed the bus|got carried away|so absorbed|got into it"
        "|in the zone|time flies|watch"
    ),
    "permit": (
        "permit|permission|allowed|paperwork|licence|license|legal|rules|fee|authority|ranger|land manager|forbidden|fine|ban|banned"
        "|workshop|teaching|course|clients|commercial|insurance|ask anyone|law"
    ),
    "wade": (
        "wade|wading|shin deep|knee deep|ankle deep|step into|stand in the stream|stand in the water|stand in the river|get in the water|go in the water|wellies"
        "|waders|rubber boots|midstream|middle of the stream|walk into|feet in the water|in the creek|in the brook|cross the stream|wet feet|stepping into"
        "|out into the water|barefoot"
    ),
    "climb": (
        "climb|climbing|scramble|scrambling|top of the fall|above the fall|go up there|get up there|where it drops|upper ledge|ledge|lip"
        "|view down|from the top|view from above|over the fence|behind the railing|overhang|crest|brink|rim of the fall|higher spot|up the rocks|up the side"
    ),
    "choose": (
        "choose|pick|decide|select|winner|keeper|best one|which one|which is best|compare|comparing|cull|sort out|favourite|cant decide|which of"
        "|rank|narrow down|whole series|my series|several exposures|five versions|all look the same|row of exposures"
    ),
    "one_frame": (
        "only one|one frame|one shot|single frame|just one|took one|more than one|first and left|one and done|only a single|once|one picture|just the one"
        "|series of times|different times|several speeds|bracket|variations|more versions|ladder|vary|second frame|packed up"
    ),
    "carry": (
        "carry|carries|carrying|shoulder|over my shoulder|on my shoulder|slung|whole rig|walk with the camera|between spots|moving about with|mounted while walking"
        "|lug|camera on the tripod|set up while|hike with"
    ),
    "look_up": (
        "look up|looking up|looked up|never look up|eye glued|glued to|viewfinder|tunnel vision|above my head|overhead|loose slab|rockfall|dead branch|what hangs"
        "|over the spot|staring at the screen|didnt notice|branch above|hanging over|over my head|rocks above"
    ),
    "phone": "phone|phones|mobile|smartphone|cell|cellphone|handy|telephone|pocket camera on my phone",
    "auto": (
        "auto|automatic|by itself|by its own|on its own|program|priority|picked by the camera|camera decides|camera picks|camera chooses|sneaking"
        "|changes by itself|changed by itself|undoes|fights me|green mode|p mode|av|tv|did not ask|overrides|compensates|wont let me|mind of its own|i didnt ask"
    ),
    "habit": "always|habit|since i bought|every time|never change|all day|forgot|forget|left it|left on|still on|still at|never touched|years|from last night",
    "money": "money|buy|buying|afford|budget|one filter only|only one filter|first purchase|spend on|get first",
    "amount": "how many|how much|cost|costs|loss|lose|takes away|swallow|swallows|eat|eats|price|worth of light",
    "need": "need|needed|necessary|must|have to|required|do without|doable without|without any|skip",
    "together": "together|both|on top|over it|combine|combined|stacking|with a|plus|and|at once|at the same time|one on the other",
    "low_flow": (
        "trickle|thin film|film of water|dribble|barely any water|dried up|low water|drought|hardly any water|dripping|drips|little water|no volume|weak flow"
        "|nearly dry|too little water|summer low|few drops|starved|only wet"
    ),
    "grey_rock": "metered the rock|metered the dark|exposed for the rock|measured the rock",
}
