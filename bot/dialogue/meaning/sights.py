"""What people see in a frame that went wrong: examples by what is behind it, in our own words."""

from __future__ import annotations

from collections.abc import Mapping
from functools import cache
from typing import Final

from bot.dialogue.meaning.nearest import Meanings
from bot.dialogue.meaning.topics import SMALL_TALK

#: By cause: what it looks like, and what people did. Many sights have more than one cause.
SIGHTS: Final[Mapping[str, tuple[str, ...]]] = {
    "time_too_long": (
        "looks like cotton wool", "water turned to mush", "the fall is soup", "like fog running down", "all milk, no threads", "no texture left in the water",
        "candy floss again", "featureless white smear", "the strands are gone", "water looks like steam", "smooth as porcelain and dead", "like a bride's veil without lace",
        "the cascade is one ghost", "whipped cream all over", "too silky for me", "lost all lines in the water", "a smear instead of a waterfall", "as if somebody poured yoghurt",
        "dry ice from a stage", "looks like smoke", "i wanted structure but got a cloud", "water has melted", "like a sheep's fleece", "shaving foam",
    ),
    "time_too_short": (
        "the water is frozen like ice", "looks crunchy", "drops hang in the air", "no flow in it at all", "water looks spiky", "like broken glass", "icicles instead of a stream",
        "too static, no movement", "every drop stands still", "the stream looks hard", "looks like plastic beads", "too crisp, i wanted it softer", "not silky at all", "as if somebody paused it",
        "water stopped dead", "does not look as if it flows", "needles and splinters", "where is the silk", "water like gravel",
    ),
    "water_clipped": (
        "fall is just white", "water has no detail, pure white", "blown out water", "the foam blinks all over", "burnt out whites", "it is a white hole", "the white is clipped",
        "sheet of blinking in the main drop", "overexposed", "nothing left in the water but paper", "everything blinks", "the cascade is bleached", "graph climbs up the right wall",
        "highlights gone in the fall", "white blob where the fall should be", "way too bright", "as if cut out with scissors, blank", "washed out", "water is chalk white", "the middle of the fall has no drawing, warnings everywhere",
    ),
    "underexposed": (
        "everything is too dark", "murky", "the whites are grey", "picture is dull and dark", "graph stuck to the left", "space on the right of the histogram", "rocks are black holes", "looks like night",
        "dingy, grey foam", "underexposed", "black everywhere", "all in the gloom", "water looks like dishwater, dark", "the frame is two stops under", "like looking through sunglasses", "can't see anything in the shadows", "heap on the left side",
    ),
    "contrast_too_great": (
        "white burnt and rock black in the same frame", "histogram hits both ends", "either the water or the rock, never both", "too much contrast", "bright bits clip and dark bits block up", "no time fits both the fall and the wall",
        "blown highlights and blocked shadows together", "when the rock looks right the fall is gone", "expose for the fall and the cliff is ink", "sun on the top half, black gorge below", "the range is too much for the camera",
    ),
    "mixed_light": (
        "patches of sun all over", "blotchy light", "dappled and messy", "half the fall in sun, half in shade", "bright spots of sun on dark rock", "stripes of light across it", "sun through the leaves makes spots", "like a leopard skin",
        "one side glows and the other is dull", "a bar of sun cuts the fall in two", "speckled with light",
    ),
    "iso_raised": (
        "grainy", "noise everywhere", "speckles in the shadows", "coloured dots in the dark parts", "like sand", "gritty rock", "looks like an old newspaper", "coarse grain in the picture", "snow in the shadows", "peppered all over", "rough texture in smooth areas, noisy", "confetti in the blacks",
    ),
    "automatic_mode": (
        "camera changes the time by itself", "each frame has another brightness", "it undoes what i set", "i change the f number and the speed changes too", "brightness stays the same whatever i set", "iso goes up on its own", "the camera fights me",
        "i turn one dial and another one moves", "compensates every change", "exposure jumps between frames without me touching anything", "it never gets darker whatever i do", "has a mind of its own", "i asked for a slow time and it flashed the iso up",
    ),
    "diffraction": (
        "everything a bit soft and nothing moved", "evenly soft from corner to corner", "no bite at 100 percent", "lacks crispness everywhere", "the whole frame is slightly soft", "sharp nowhere but not shaken", "fine detail is gone all over", "soft like a thin veil on every leaf and stone alike",
        "details look rubbed out, same all over the picture", "stopped right down and now it is dull at full size", "detail melts evenly", "less detail than i expected in all corners",
    ),
    "shake": (
        "blurred all over", "everything has double edges", "rocks are shaky too", "camera shake", "the whole picture trembles", "rocks smudged in one direction", "it wobbled", "like an earthquake", "even the bank is blurred", "pressed the button with my finger and it is blurry",
        "centre column up and everything is smeared", "legs stand in the current and the rocks shiver", "stabiliser on, tripod, blurry", "handheld and blurry", "tripod sinks in gravel, picture drifts", "a gust hit the tripod", "strap flapped and the frame is soft", "cliff smeared sideways", "all edges twice", "blurry everywhere, rock included",
    ),
    "focused_wrong": (
        "focused on the foam and the rocks are soft", "autofocus hunted and missed", "focus went somewhere else", "behind the nd the focus failed", "background sharp but the fall is not", "lens searched and then took it unsharp", "fall out of focus, the front rock is sharp", "nothing sharp after the filter went on",
        "the twig in front is sharp and the fall soft", "af point on the water", "focus ring got knocked", "sharp plane is in the wrong place", "a branch close by is crisp, the waterfall woolly", "it whirred and beeped and took a blurred one", "refocused by itself before the shot", "the far wall is soft, the stones in front are sharp",
    ),
    "near_too_close": (
        "foreground soft", "the nearest rock is not sharp", "front is blurry, the fall is sharp", "stones at my feet are fuzzy", "bottom of the frame out of focus", "near and far never both sharp", "can't have the rock and the wall in focus", "the moss in front is mush", "lower third of the picture is unsharp",
        "sharp in the distance, soft close up", "boulder in front woolly", "first metre is blurred", "either the stone or the wall, not both", "upper half great, lower half soft",
    ),
    "wind_in_leaves": (
        "leaves smeared", "ferns are blurred", "branches moved", "green streaks beside the fall", "the grass is a smudge", "rocks sharp but leaves soft", "foliage is fuzzy", "twigs double in the merged frames", "bushes look like green fog", "plants waved about", "leaves dance in the draught of the fall",
        "flowers are a blur", "everything sharp but the trees", "the willow is a brush stroke", "double leaves after stacking",
    ),
    "unturned_polariser": (
        "rock shines like plastic", "glare on the leaves", "shiny wet rock", "white sheen on the stones", "the pool mirrors the sky", "reflections hide the bottom of the pool", "leaves look washed out and shiny", "rocks glint", "glossy stones pull the eye", "everything looks varnished", "wet slabs like mirrors",
        "can't see into the water for the reflections", "after i turned the camera the shine came back", "greens are pale from glare", "bright patches of shine on the cliff",
    ),
    "polariser_in_the_dark": (
        "polariser on in deep forest and the times are endless", "pools went black with the polariser", "exposure takes ages in the gloom, the pola is on", "black pools and long times", "cpl on under the canopy, far too dark", "left the polariser on at dusk", "water in the pool became a black hole after turning the filter",
        "too dark in here with the cpl, eight seconds", "no light left since the polariser went on",
    ),
    "nd_cast": (
        "brown tint since the filter is on", "magenta cast with the nd", "the dark glass makes it purple", "colours go warm with the ten stop", "tint comes with the grey filter", "pink rocks behind the nd", "everything looks like tea with the dark filter", "without the filter the colours are right", "the stopper turns it all blue", "strange colour only when the nd is mounted", "rust coloured picture",
    ),
    "filter_corners": (
        "dark corners", "black corners with two filters", "corners cut off", "like looking through a tube", "vignette at the wide end", "round black edges", "the filter ring shows in the corners", "corners are black when wide, fine when zoomed in", "shadow in all four corners", "as through a porthole", "stacked filters and the corners go dark",
    ),
    "cool_white_balance": (
        "everything is blue", "blue cast", "looks cold", "rocks are bluish", "faces look blue in the shade", "like underwater", "the picture is icy in colour", "white water is blue", "like moonlight", "colours are too cool", "grey rock came out steel blue", "people look frozen, blue skin", "as if through blue glass",
    ),
    "wet_glass": (
        "round soft spots", "pale discs in the picture", "smudgy patches where spray hit", "drops on the lens", "blobs in the dark parts", "blurry dots on every frame", "soft circles against the trees", "water on the front glass", "some areas are soft and others sharp, spray everywhere", "bright bubbles in the picture", "it spat on my lens", "same blotch in the same place in every frame",
        "wiped it and now there are streaks", "one corner is smeared as if greased", "a jellyfish in the middle of the cliff",
    ),
    "fogged_glass": (
        "milky veil over the whole frame", "came from the warm car and it is all hazy", "lens fogged up", "i breathed on the glass", "low contrast, like mist inside the lens", "filter steamed up", "soft glow around everything since i came from the cold", "condensation on the front", "cold morning and each frame is paler", "haze that doesn't wipe off", "lens is misted over", "foggy picture though the air is clear", "under my jacket and now it is clouded",
    ),
    "stray_light": (
        "washed out towards the sun", "flare", "row of light spots", "veil when the sun comes in", "rainbow blobs in a line", "low contrast against the light", "many sided spots", "hood was off and there is a haze", "streaks from the sun", "sun just outside the frame and the blacks are grey", "ghost shapes opposite the sun", "gone when i shade the lens with my hand", "light leaking in", "coloured polygons",
    ),
    "sky_gap": (
        "bright strip of sky at the top", "white hole above the fall", "sky blown out over the lip", "glaring triangle between the trees", "the eye goes to the white top", "a patch of sky burns", "blinking only at the top in the gap", "white notch over the edge", "bright wedge in the upper corner", "sky shines through the branches", "top edge is a white bar",
    ),
    "border_clutter": (
        "a twig pokes in from the side", "stick at the edge", "half a rock in the corner", "my tripod leg is in the picture", "rubbish at the border", "something sticks in from the right", "bright pebble in the corner", "strap in the frame", "a branch end comes in from above", "cut off log at the bottom edge", "messy corners", "my own boot in it", "somebody's backpack at the margin",
    ),
    "horizon_tilted": (
        "pool slopes", "the water surface runs downhill", "picture is crooked", "horizon not level", "everything slides to the left", "the lake leans", "slanted", "one bank is higher than it was", "the pool would run out of the frame", "tilted by some degrees", "my frame is wonky", "still water is not straight",
    ),
    "tilted_camera": (
        "trees lean inwards", "walls fall backwards", "cliff tips over", "trunks meet at the top", "converging walls", "the gorge closes like a tent", "looked up and now everything leans", "the fall gets narrow at the top", "verticals are bent inwards", "pines fall backwards", "like a pyramid", "walls are closing in above", "the tall fall looks as if it topples",
    ),
    "too_wide": (
        "fall is tiny", "waterfall lost in the frame", "too small in the picture", "a thread in a huge forest", "the fall is a dot", "you need a magnifying glass", "it was huge and now it is small", "nothing but rock around a tiny fall", "stands far away in the middle", "where is the waterfall in it", "like a toothpick", "the fall drowns in its surroundings",
    ),
    "low_flow": (
        "only a trickle", "thin film of water", "hardly any water", "no foam, only wet rock", "water too weak to show streaks", "dribble over the slab", "the fall is nearly dry", "a few drips, no lines", "summer drought, nothing flows", "wet stone and no strands whatever the time", "water as thin as a coat of paint", "barely moist",
    ),
}


@cache
def model() -> Meanings:
    """The model of all sights and of small talk, learnt when it is first asked."""
    return Meanings({**SIGHTS, "talk": tuple(text for texts in SMALL_TALK.values() for text in texts)})


def nearness(text: str) -> dict[str, float]:
    """How near a message is to the sights of each cause, and to `talk` of other things.

    Args:
        text: the message in English, as typed.
    """
    return model().nearness(text)
