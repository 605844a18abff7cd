"""What people ask and get wrong: examples of each topic, in wordings of our own."""

from __future__ import annotations

from collections.abc import Mapping
from functools import cache
from typing import Final

from bot.dialogue.meaning.nearest import Meanings

#: Talk that is not about pictures; by kind, each answered with a line of its own.
SMALL_TALK: Final[Mapping[str, tuple[str, ...]]] = {
    "talk.thanks": (
        "ta very much", "super, thank you", "great help", "awesome", "cool, thx", "you saved my day", "ok great", "that is all i needed", "merci", "so kind of you",
        "thanks a lot", "thank you very much", "many thanks friend", "cheers mate", "that helped me",
        "you are great", "good bot", "well done you", "brilliant, thanks", "much appreciated", "perfect",
        "i am grateful", "nice one", "thanks, that was useful", "love you",
    ),
    "talk.greeting": (
        "yo", "hullo", "howdy", "are you there", "you awake", "good afternoon everyone", "what's new", "how was your weekend", "how was your day", "how did you sleep", "have a nice day", "sorry to bother you", "happy new year", "morning everybody",
        "hello there", "good morning", "morning", "evening all", "how are you", "how are you today",
        "how is it going", "what's up", "greetings", "good day to you", "nice to meet you", "hi again",
        "how do you do", "hope you slept well", "goodbye", "bye bye", "see you tomorrow", "good night",
    ),
    "talk.robot": (
        "what are you exactly", "am i talking to a computer", "do you know everything", "can you think", "do you speak italian", "do you understand german", "is there a human i can talk to", "do you learn", "are you alive", "who is behind this", "who wrote you", "which company owns you", "can you hear me", "do you have eyes",
        "are you a robot", "are you a person", "are you human", "who are you", "what is this thing",
        "are you a machine", "who made you", "what can you do", "are you real", "is this a bot",
        "do you know it all", "are you an ai", "how do you work", "is somebody reading this",
        "what languages do you speak", "do you speak french", "can you see me",
    ),
    "talk.insult": (
        "what an idiotic bot", "worst helper ever", "you are wrong about everything", "bloody useless machine", "you are a joke", "pathetic", "nonsense", "you understand nothing", "go to hell", "you clown",
        "you are stupid", "stupid bot", "idiot", "this is useless", "you suck", "dumb machine",
        "rubbish program", "what a moron", "shut up", "piece of junk", "you are no help at all",
        "hate you", "silly thing", "go away", "this thing is broken crap",
    ),
    "talk.rescue": (
        "get help for me", "could you dial the emergency number for me", "notify the rangers for me", "tell my wife where i am",
        "call rescue for me", "can you call the ambulance", "phone somebody for me",
        "call mountain rescue please", "ring the police for me", "alert my wife for me",
        "send a message to my friend", "can you call someone", "contact the ranger for me",
    ),
    "talk.weather": (
        "is it raining at the fall now", "what's the temperature", "how windy will it be", "when does the sun set tomorrow in the valley", "has the snow melted up there", "is the road to the fall open", "is the park closed", "how much water is in the river now",
        "what's the weather", "will it rain tomorrow", "weather forecast for saturday",
        "is it going to snow", "how warm will it be", "is there a storm coming", "any rain today",
        "how high is the river today", "is the trail open", "is the road closed", "what is the flow today",
    ),
    "talk.other": (
        "tell me a story", "sing a song", "what is the capital of france", "who won the match",
        "my cat is ill", "i am hungry", "what shall i cook tonight", "do you like music",
        "my brother lives by the sea", "what time is it in tokyo", "i love cats", "the bus was late",
        "i have a new job", "my wife says hi", "how old are you", "what is two plus two",
        "help me with my homework", "recommend a film", "who is the president", "i lost my keys",
        "our team lost again", "football tonight", "nice car", "my mother is called rose",
        "write me a poem", "what's the news", "is pizza healthy", "my back is better now",
        "i am bored", "haha", "lol", "hmm", "whatever", "ok then", "asdf", "blah blah", "banana",
        "who wins the cup", "the dog is asleep", "never mind", "forget it", "wrong chat, sorry",
        "i was talking to my sister", "did you see the game", "the tax office called", "my knee hurts less",
        "what is for lunch", "i need coffee", "my birthday is in may", "where do you live",
        "translate this for me", "book a table for two", "play some music", "tell me something funny",
        "i think so", "maybe later", "sorry, that was for somebody else", "happy easter",
        "my boss is on holiday", "we painted the kitchen", "the train leaves at nine", "i bought new boots", "grandma says hello",
        "who is the best singer", "can you do my taxes", "i need a plumber", "the baby sleeps", "how do i bake bread",
        "how many people live in peru", "when was the war", "what does this word mean", "is the moon made of cheese",
        "my car broke down", "the shop closes at six", "we had pasta", "school starts on monday", "my neighbour is loud",
        "do you have a family", "do you sleep", "are you happy", "what is your favourite colour", "what is your name",
        "do you get tired", "can you keep a secret", "will you marry me", "how much do you cost", "what's the meaning of life",
        "did you get my mail", "see you at the station", "call me later", "i am on my way", "be there at eight",
        "just testing", "test", "is anyone there", "why are you so slow", "you again", "long day", "so tired",
        "my dog ate my lunch", "the kids are at school", "we are on the bus", "i forgot my sandwich", "my feet hurt",
        "nice view here", "lovely day", "what a beautiful place", "it is cold here", "birds are singing", "i saw a deer",
        "we lost the cup final", "the goalkeeper was awful", "three nil", "the referee was blind", "my team is bad",
        "which phone should i buy", "my phone battery is empty", "the screen of my laptop is broken", "wifi password",
        "how do i reset my computer", "can you remind me to buy milk", "set an alarm for seven", "what day is it",
        "how tall is the tower", "what is the best restaurant", "any good books", "do you believe in ghosts",
        "stop texting me", "who gave you my number", "i am getting married in spring", "my aunt has a house by the river",
        "my surname is brook", "we named the cat misty", "there is a film called the waterfall", "our club is called cascade",
        "the shower at home is broken", "the tap in the kitchen drips", "the pool at the hotel is closed", "my glasses are dirty",
        "the photo on your profile is nice", "my uncle was a photographer", "i sold my old camera", "the bank is closed today",
        "he focused on his work", "the stock market is low", "my hair is white now", "i cut my finger while cooking",
        "we play cards on sunday", "the sky is the limit", "time flies", "long time no see", "the lights went out at home",
        "the exam was hard", "i have to choose a school for my son", "my doctor says i need rest", "turn the music down",
        "do you have a permit for that joke", "climbing the career ladder", "the boss gave me a raise", "the bread is burnt",
        "where can i park the car", "is there a toilet", "how far is the pub", "which bus goes there",
    ),
}

#: By topic: ways to ask for it or to tell of it.
TOPICS: Final[Mapping[str, tuple[str, ...]]] = {
    "silky_time": (
        "what shutter speed makes water silky", "how slow for smooth water", "how long for the silk effect",
        "which speed gives that dreamy flow", "time for a creamy fall", "how do i make the water look like a veil",
        "want milky water, which exposure time", "how many seconds for soft water", "what exposure turns a stream into ribbons",
        "seconds for flowing water", "how long should the shutter stay open for smooth water",
        "i want that soft water look, what do i dial in", "shutter for a waterfall like satin",
        "is half a second enough to make it smooth", "what do people use to get the misty look",
        "where do i put the shutter for threads of water", "which fraction of a second gives texture in the water",
        "shutter speed for waterfalls", "exposure time for a creek", "how slow do i have to go for silk",
        "how do they make rivers look like mist", "the soft flowing effect, what speed",
    ),
    "just_white": (
        "why is my water just white", "the water is only a white blob", "waterfall comes out blank white",
        "my falls are always burnt out", "i blow the highlights in the water every time", "no detail in the white water",
        "there is nothing in the fall but white", "why does the cascade look bleached", "whites clip in the fall",
        "i overexpose the water again and again", "water overexposed in all my shots", "white parts of the fall are gone",
        "the foam has no detail, it is paper white", "fall looks like a white sheet", "how come the stream is a white hole",
        "highlights in the cascade keep blowing", "my teacher says my whites are burnt", "i always lose the white of the water",
        "the main stream of the fall is pure white without any drawing", "blown water in every frame",
        "i torch the water each time", "the fall is a bright nothing",
    ),
    "too_long": (
        "my water has no texture, like cotton wool", "all my falls look like fog", "water turns to mush",
        "the fall is featureless like milk", "everything i shoot looks like candy floss", "ten seconds and it is all soup",
        "i always expose for many seconds and the water is dead smooth", "too silky, no structure left",
        "water like dry ice in all my shots", "smooth as plastic, no strands", "i leave the shutter open for ages and lose the threads",
        "my streams look like steam", "long exposure killed the shape of the water", "it looks like whipped cream",
        "why does my water turn into cloud", "no lines left in the water, only haze", "30 seconds each time and it is porridge",
        "the water lost its life, just a smear", "my cascades look like smoke", "exposed for eternity, the flow has no form",
    ),
    "need_nd": (
        "do i need an nd filter", "is a neutral density filter necessary", "can i do it without a grey filter",
        "do i have to buy a dark filter", "is an nd worth it in shade", "how strong an nd should i get", "six stop or ten stop",
        "what nd for daylight", "which dark glass do i bring", "need a filter to slow it down?", "must i own a nd for waterfalls",
        "without any filters possible?", "no nd at home, can i still do long exposures", "which grey filter is right for a bright day",
        "does one need those dark glasses for the lens", "which strength of nd", "is it possible without something that darkens",
        "how dark should the filter be", "do i need sunglasses for the camera", "can i skip the nd",
    ),
    "noon": (
        "can i do it at noon in full sun", "midday sun, is it hopeless", "it is sunny, what now", "bright sunshine on the fall, possible?",
        "only have time at lunchtime with the sun high", "blazing sun, any chance", "shooting a waterfall on a cloudless day",
        "is harsh light a problem", "the fall is in full sun, should i go home", "what can i do in strong sunlight",
        "sun straight above, contrast is terrible", "half the scene in sun and half in shade looks awful",
        "patchy light everywhere in my pictures", "sun and shade mixed, bad pictures", "one half lit, one half dark",
        "spots of sun through the leaves ruin it", "dappled light in all my frames", "dark shade and bright sun in one picture",
        "harsh shadows over the fall", "the sun comes over the rim at noon, is that bad", "can anything be done in glaring daylight",
    ),
    "polariser_first": (
        "polariser or nd first", "which filter should i buy first", "polariser or grey filter, if only one",
        "money for one filter, which", "is the cpl or the nd more important", "if i had to choose between polariser and nd",
        "first filter for waterfalls", "what is more useful, a pola or a dark filter", "which of the two filters goes first on the budget",
        "would you get the polariser before the nd", "one filter only: against shine or against light",
        "cpl vs nd", "can afford just one piece of filter glass",
    ),
    "polariser_stops": (
        "how many stops does the polariser take", "how much light does a cpl cost", "what do i lose with a polariser",
        "light loss of a polarising filter", "does the pola make it darker and by how much", "polariser eats how many stops",
        "how much longer is the exposure with the polariser", "what is the filter factor of a cpl", "stops lost with a pola",
        "is a polariser like a weak nd, how strong", "with the polariser on, what changes in the time",
        "price in light of the polariser", "how much does it swallow", "pola on, one stop or two",
    ),
    "polariser_turn": (
        "which way do i turn the polariser", "how do i use the polariser", "how far to rotate the cpl", "what do i look for when i turn the pola",
        "turn the polariser until what", "the ring on the filter turns, what is it for", "how do i set the polarising filter",
        "does it matter how the polariser is rotated", "i turn the filter and see no difference", "when is the cpl turned right",
        "how do i know the polariser is at its best", "polariser turned clockwise or what", "where do i stop turning the ring",
        "i twist the cpl but what should happen", "how to adjust a circular polariser",
    ),
    "polariser_left": (
        "i never turn my polariser", "didn't know you have to rotate the polariser", "just screw the cpl on and leave it",
        "polariser left on in the dark forest", "the polariser stayed on at dusk", "i keep the pola on all the time",
        "forgot the polariser was on and the exposures were ages", "is it bad to leave the cpl on when it gets dark",
        "left the anti reflection filter on in the gloom", "polariser always on the lens, day and night",
        "in the dark gorge i still had the pola mounted", "my polariser sits on the lens permanently, never touched it",
        "had the cpl on under thick trees and needed four seconds", "should the polariser come off in dim light",
    ),
    "both_filters": (
        "polariser and nd together", "can i stack nd and cpl", "both filters at the same time", "put the grey filter on top of the pola",
        "is it ok to combine polariser with a six stop", "stacking two filters", "pola plus nd any problem",
        "two filters on one lens, dark corners?", "do i screw the nd onto the polariser", "cpl under a ten stop",
        "nd over polariser in which order", "can they be used at once, the pola and the dark one",
    ),
    "f_number": (
        "what is the best f number", "which aperture should i use", "what f stop for waterfalls", "which f on aps-c", "best aperture for full frame",
        "f/8 or f/11", "how far do i stop down", "sharpest aperture", "what aperture on four thirds", "what opening do you recommend",
        "where do i set the aperture", "ideal f stop for landscapes", "f value for a stream", "sweet spot of my lens", "which f do i take",
        "what should the aperture be", "how wide should the iris be",
    ),
    "why_not_f22": (
        "why not f/22", "what is wrong with f/22", "i always use f/22", "is the smallest aperture bad", "smallest opening gives the slowest time, so why not",
        "stop down all the way for long exposures?", "my aperture is closed all the way every time", "f/32 for more depth?",
        "why should i not close the iris fully", "people say f22 is soft, true?", "shot everything at f22 out of habit",
        "diffraction, what is that", "highest f number for the longest time", "lens stays at minimum aperture since years",
        "i just close it down as far as it goes", "what is the catch with a tiny hole", "all my waterfalls are taken with the smallest hole",
        "isn't more depth always better, f/22 then", "stopping down to the end", "maximum depth of field by closing completely",
    ),
    "focus_where": (
        "where do i focus", "what do i focus on", "where to put the focus point", "focus distance for everything sharp",
        "how do i get front and back sharp", "at what distance should i set the focus ring", "do i focus on the rock or the fall",
        "hyperfocal distance", "focus one third in?", "which spot do i focus on to have it all sharp", "near rock or far wall, what gets the focus",
        "how do i get sharpness from the first stone to the cliff", "set focus where", "what distance on the lens",
        "manual focus at how many metres", "point of focus for a stream with a foreground",
    ),
    "focus_on_water": (
        "i focused on the water", "autofocus point was on the fall", "af square on the moving water", "is it wrong to focus on the foam",
        "my focus box sits on the cascade", "put the focus point on the white stuff", "always aim the focus at the waterfall itself",
        "camera focused on the falling water", "i let it focus on the rapids", "focus locked on the moving bit",
        "focus was in the middle of the flow", "af on the splashing part", "focus set on the current",
    ),
    "front_soft": (
        "why is the front soft", "foreground is blurry", "the near rock is not sharp", "nearest stones out of focus", "front rocks soft, the fall is fine",
        "the bottom of my pictures is never sharp", "can't get the closest rock crisp", "foreground always mushy",
        "far bank sharp, near stones not", "things at my feet are fuzzy", "the first metre is blurred in every frame",
        "only the background is sharp", "the boulder in front of me isn't crisp, reason?", "near part soft",
        "stuff near the camera is unsharp", "my foregrounds lack sharpness",
    ),
    "tripod_blur": (
        "it is on a tripod and still blurred", "why is it shaky on a tripod", "pictures blurred in spite of the tripod",
        "blurry although the camera is on legs", "why would a frame on a tripod be unsharp", "still camera shake with a tripod",
        "i press the button with my finger, is that bad", "stabiliser on with the tripod", "i leave the image stabiliser on",
        "centre column all the way up", "i push the shutter button by hand", "touching the camera when it fires", "should i use a remote or the timer",
        "shake although it stands on three legs", "everything double edged on the tripod", "tripod wobbles in the current",
        "i extend the column to the maximum", "no self timer, i just press", "is it my finger that shakes the camera",
        "stabilisation switched on while on the legs", "the camera trembles when i trigger it", "do i need a cable release",
    ),
    "iso": (
        "what iso", "which iso should i use", "iso for waterfalls", "how high can the iso go", "how sensitive should the camera be",
        "is iso 400 ok", "iso left at 1600 from last night", "my iso is always on auto", "forgot to lower the iso", "auto iso all day, noticed too late",
        "sensitivity was still high", "iso was left up", "should i leave iso on automatic", "the camera picked iso 3200 by itself",
        "what gain do i set", "base iso or higher", "do i raise the iso", "shot the whole day at iso 800 without noticing", "lowest iso always?",
        "why are my pictures noisy, iso was up", "iso still at night value",
    ),
    "leaves": (
        "why do the leaves blur", "leaves are smeared", "ferns blurred in all my pictures", "how do i get sharp leaves", "foliage moves in the wind",
        "branches next to the water are never crisp", "the green is one smear", "trees around the fall are fuzzy", "how to freeze leaves and blur water",
        "plants shake in the breeze of the fall", "leaves sharp and water silky, how", "grass looks like streaks", "wind in the bushes ruins it",
        "bushes by the pool are a green mess", "my ferns look like green fog", "what do i do about moving leaves", "leaf frame", "wobbly foliage in long exposures",
    ),
    "spray": (
        "how do i keep spray off", "drops on the lens", "how do i keep the lens dry", "water on my front glass", "spray everywhere, what to do",
        "blurry spots from droplets", "i noticed the wet glass only at home", "soft discs in all frames from the drops", "never looked at the front glass",
        "the lens gets wet all the time", "mist from the fall on my filter", "what do you do against splashes", "didn't see the water on the lens",
        "wipe the lens how often", "protect the camera from spray", "every frame has blobs from water", "is there a way to avoid drops on the glass",
        "lens cloth or umbrella against the spray", "i forgot to wipe", "rain on the front element",
    ),
    "raw": (
        "raw or jpeg", "should i shoot raw", "is jpg good enough", "do i need raw files", "which file format", "jpeg only, is that a mistake",
        "what quality setting, raw or fine", "can i stay with jpeg", "raw plus jpeg?", "does raw matter for waterfalls", "file type to record",
        "i only ever take jpgs", "why does everybody say raw",
    ),
    "white_balance": (
        "which white balance", "what wb in shade", "auto white balance or daylight", "what kelvin for a shady gorge", "white balance setting for waterfalls",
        "leave wb on auto?", "cloudy or shade preset", "how do i set the colour temperature", "which colour setting on the camera",
        "colours differ from frame to frame", "little cloud or little sun in the colour menu", "should the colour be automatic", "wb fixed or auto",
    ),
    "histogram": (
        "histogram touches the right, is it lost", "graph hits the right edge", "the histogram is cut at the right", "is it bad when the curve touches the right side",
        "the hump runs into the wall on the right", "right edge of the histogram climbs, ruined?", "what should the histogram look like", "how do i read the graph",
        "histogram clipped, is the picture gone", "bars pile up at the right hand end", "the chart is squashed against the right", "blinking highlights, is it lost",
    ),
    "meter": (
        "what do i meter on", "where do i point the spot meter", "meter on the water or the rock", "spot metering for white water", "how do i measure the exposure",
        "which part do i take the light reading from", "measure the light on the foam?", "matrix or spot metering", "expose for the rock or the water",
        "meter off the cliff or the whites", "how do i meter a waterfall", "evaluate exposure from which area", "spot on the brightest white?",
    ),
    "by_hand": (
        "can i do it by hand", "handheld possible?", "no tripod with me, any chance", "forgot the tripod", "without a tripod, what speed can i hold",
        "how slow can i hold it", "left the tripod in the car", "is a tripod necessary", "hand held silky water?", "can i brace it on a rock",
        "slowest time freehand", "my legs stayed at home", "steady hands, half a second ok?", "shooting from the hand", "do i really need a tripod",
        "what if i have no support", "my tripod broke, anything i can do",
    ),
    "phone": (
        "can i do it with a phone", "only have my mobile", "smartphone waterfall", "phone camera good enough?", "how do i do it on a cell phone",
        "silky water with a phone", "i only brought my phone, worth it?", "my handy is all i have", "does it work with an ordinary telephone camera",
        "long exposure on the mobile", "no real camera, just the phone",
    ),
    "lens": (
        "which lens", "what lens should i bring", "which focal length", "wide or tele for a gorge", "24-70 or 70-200", "is a wide angle enough",
        "do i need a telephoto", "best lens for waterfalls", "which glass do i pack", "what zoom to carry", "one lens only, which", "what millimetres for a fall",
        "prime or zoom for the hike", "should i bring the long lens",
    ),
    "best_time": (
        "when is the best time", "what weather is best", "best time of day for waterfalls", "morning or evening", "which day should i go", "should i wait for rain",
        "best season", "overcast or sunny, what is better", "when would you go", "is cloudy good", "what light is best for a stream", "how long after rain",
        "what kind of day suits a gorge", "at what hour is the light good", "which month for falls", "good conditions to photograph a creek",
    ),
    "sky": (
        "how do i avoid the white sky", "white sky at the top", "bright hole of sky above the fall", "the sky is burnt out in my pictures", "a white gap over the lip",
        "sky always white in the corner", "how do i keep the sky out", "patch of bright sky pulls the eye", "that glaring bit of sky in each frame",
        "top of my frames has a white hole", "the opening in the trees is blown out", "pale triangle of sky between the trees", "there is a bright spot at the top edge",
        "what to do with the blank sky", "bright notch above the drop", "get rid of the sky",
    ),
    "edges": (
        "twigs at the edge of the frame", "bright bits in the corners", "branches poke into my pictures", "half a stick at the border", "my borders are messy",
        "rubbish along the edges that i don't notice", "something always sneaks in at the side", "cluttered corners", "stray leaves at the frame edge",
        "my pictures have junk at the margins", "distracting stuff along the rim", "people tell me to check my edges", "cut off stones at the border",
        "a twig comes in from the left every time", "my own strap in the corner", "shiny stones at the border",
    ),
    "tilted": (
        "my horizon is tilted", "pictures are crooked", "the pool is slanting", "never get it level", "water runs out of the frame to one side", "everything leans to the left",
        "how do i keep it level", "all my ponds slope", "do i need a spirit level", "my frames are wonky", "surface of the lake tips", "always a degree off straight",
        "the water surface is sloped",
    ),
    "one_frame": (
        "i only took one frame", "one shot and done", "do i need several shutter speeds", "is one picture enough", "i took just one exposure and left",
        "should i take different times", "why take a series", "single shot at one speed, then home", "i never vary the time", "do people really take the same frame five times",
        "one exposure only, was that a mistake", "i never bracket the shutter", "are more versions worth it", "i took a single time and packed up",
    ),
    "too_wide": (
        "the fall is tiny in the picture", "waterfall looks so small", "everything with the widest lens and the fall is lost", "always shoot at the widest end",
        "the cascade disappears in the frame", "in real life it was huge, in the picture a dot", "fall gets lost in the scene", "my falls look like toys",
        "it looked impressive but the photo makes it puny", "too much around it, hardly see the fall", "wide angle makes the fall tiny", "you can barely find the waterfall",
    ),
    "tilted_up": (
        "trees lean inwards", "camera tilted up at a tall fall", "walls fall backwards", "the trunks converge", "i point the camera up and everything leans",
        "the cliff tips over backwards", "verticals are not straight when i look up", "tall fall, had to tilt the camera up", "the walls close in at the top",
        "trees like a tent when i aim upwards", "tilt the lens up to get the top in", "everything topples when i shoot upwards", "pines meet above the fall in the photo",
    ),
    "eye_height": (
        "tripod always at eye height", "i always shoot standing up", "never go low", "should i get down low", "is head height wrong", "my camera is always at my eyes",
        "do i need to kneel", "legs fully extended every time", "how high should the tripod be", "never splay the legs", "i hate kneeling so all is shot from standing height",
        "all my pictures are from the same height", "lower viewpoint worth it?",
    ),
    "carrying": (
        "carry the camera on the tripod over the shoulder", "i walk around with the tripod on my shoulder", "is it ok to walk with the camera mounted", "hop between rocks with the tripod slung",
        "move spots with everything attached over wet stones", "camera stays on the legs while i walk", "carrying the whole set up across slippery rocks", "i lug the rig over the boulders",
        "don't want to unmount the camera each time i move", "balanced the tripod with camera over the slimy rocks",
    ),
    "looking_up": (
        "i never look up", "should i check what is above me", "stones falling from above", "was staring at the screen and didn't see the loose rock above", "dead branches overhead",
        "only looked into the viewfinder", "i don't watch what hangs over my spot", "forgot to look around and above", "someone noticed a rock hanging over me", "tunnel vision when i photograph",
        "eyes on the camera the whole time", "what should i look for overhead",
    ),
    "time_forgotten": (
        "i forget the time", "always lose track of time at the water", "walked out in the dark again", "how do i keep track of the hour", "came back after sunset", "i am always late from a fall",
        "forgot the clock and had no light", "got carried away and it was night", "when do i have to turn back", "missed my turnaround", "my family waits because i never watch the clock",
        "how do others remember to leave", "so absorbed that dusk surprised us", "we needed the headlamp on the way out",
    ),
    "stay": (
        "how long should i stay", "is half an hour enough", "how much time do i need at a fall", "how many hours to plan", "can i do it in twenty minutes", "how long do you spend at one place",
        "is a short stop enough", "time to allow for a waterfall", "is an hour there enough for good pictures", "a quick visit, worth it?",
    ),
    "permit": (
        "do i need a permit", "are tripods allowed", "is it legal to photograph there", "permission for a workshop", "who do i ask for a licence", "do i need to pay a fee", "teaching a group, need papers?",
        "may i use a tripod in the park", "are there rules for photo courses", "commercial shoot permit", "can they forbid tripods", "i bring eight students, do i have to tell anyone",
    ),
    "choose": (
        "how do i choose between five shutter speeds", "which of the frames is best", "how do i pick the keeper", "i have ten versions and can't decide", "compare different exposures at home",
        "how to select the best one", "all my frames look alike, which to keep", "what do you look at when you sort", "picking a winner from a series", "how do i judge which time is best",
        "so many similar shots, how do i cull", "which one goes on the wall",
    ),
    "wading": (
        "is it all right to stand in the stream", "can i step into the water", "may i wade out", "is it safe to walk into the creek", "shin deep only, ok to stand there", "tripod in the middle of the stream with me",
        "how deep can i go in", "wellies on, can i go into the water", "is it ok to get my feet wet for a better view", "cross to the other side for the picture", "stand midstream for the shot",
    ),
    "climb": (
        "may i climb up for a better view", "can i go to the top of the fall", "is it ok to scramble up beside it", "stand on the ledge above the drop", "climb over the fence for the shot", "picture from the lip",
        "view from above the fall, can i go there", "is there harm in climbing the rocks", "get to the crest for a photo", "walk up to the edge of the drop",
    ),
    "hunting": (
        "autofocus hunts behind the nd", "focus won't lock with the dark filter", "camera can't focus through the black glass", "af goes back and forth with the ten stop on",
        "lens searches and never finds focus with the nd", "with the filter on it doesn't focus", "how do i focus through a six stop", "it beeps and refuses with the dark filter mounted",
        "focusing hunting in the dark glass", "autofocus fails behind the stopper", "af whirrs endlessly with the grey filter",
    ),
    "stabiliser": (
        "stabiliser on or off", "should the stabilisation be off", "ibis on a tripod", "vr on or off",
    ),
    "form": (
        "portrait or landscape", "vertical or horizontal frame", "upright or wide format", "hold the camera upright?",
    ),
    "mode": (
        "which mode", "manual or aperture priority", "should i use m or av", "how do i set the camera to manual", "which mode dial setting",
    ),
}

#: A topic is meant from this nearness on, and this far before the next one (own choice, on the
#: examples left out in turn and on the half of the messages on which rules may be written).
NEAR: Final = 0.25
MARGIN: Final = 0.0


@cache
def model() -> Meanings:
    """The model of all topics and of small talk, learnt when it is first asked."""
    return Meanings({**TOPICS, **SMALL_TALK})


def topic_of(text: str) -> str | None:
    """The topic of a message, a kind of small talk among them; None where nothing is near.

    Args:
        text: the message in English, as typed.
    """
    near = model().nearness(text)
    first, second = sorted(near, key=lambda label: -near[label])[:2]
    if near[first] < NEAR or near[first] - near[second] < MARGIN:
        return None
    return first
