"""English wordings of a plain day out: errands, small complaints, a hand's breadth of water."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

EVERYDAY: Final[Mapping[str, str]] = {
    "errand": """
        (coffee|coffees|ice creams|icecream|lunch|picnic|snack|snacks|sandwiches|sandwich|cake|
        cakes|beer|toilet|loo|bathroom|shop|kiosk|cafe|pub|restaurant), (for|fetch|fetching|
        buying|getting|get|gets|bring|brings|bringing|grab|grabbing) (a|an|the|us|some|more|
        another)? (coffee|tea|ice cream|lunch|drink|drinks|food|long lens|lens|filter|jacket|
        jackets|battery|tripod|snack|bread), (to|at|in) (the)? (car|loo|toilet|hut|cafe|kiosk|
        van|bus|hotel|picnic place|picnic tables|picnic table|meadow|playground|bench|shop),
        (changing|changes|swapping) (a|the|his|her|my|their)? (lens|lenses|shoes|battery|card|
        nappy|film|filter), back in (a|two|five|ten|\\d+) (minute|minutes|min|sec|second|moment),
        meet (at|again|for|by) ~ (bridge|car|hut|four|five|lunch|\\d+), (with|has) (a|his|her|
        their) (book|film camera|knitting|sketchbook|phone), (portraits|sketching|painting|
        knitting|reading|napping|asleep)""",
    "mild": """
        (bit|little|slightly|touch|tad|somewhat) (cold|chilly|stiff|tired|sore|wet|damp|sweaty|
        hungry|thirsty|fresh|nippy|muddy|out of breath|bored|scratched), (plaster|plasters|
        blister|blisters|mosquito|mosquitoes|mosquitos|midge|midges|nettle|nettles|itches|itchy|
        itching|pollen|sneeze|sneezing|hay fever|sunburn|sunburnt|sunburned|hungry|thirsty|
        knackered|yawn|yawning|sore), (legs|feet|arms|eyes|back|knees|shoulders) (are|is|feel|
        feels) (tired|sore|stiff|aching|achy), (warming|warm) (up|them|again|now), (gloves|
        jacket|fleece|hat|coat|rain shell|hood) (on|now), (sitting|sit|rest|resting) (down|for)
        ~ (bench|five|bit|minute|minutes|grass), (asleep|cramp|numb) from (crouching|kneeling|
        sitting|squatting), too much coffee, (new|old) boots, all (good|fine|well)""",
    "shallow": """
        (barely|hardly|scarcely|just|not even|only) ~ (ankle|ankles|toes|toe|sole|soles|boots|
        boot|shoes|wet), ankle (deep|high) (at (best|most))*, (toes|toe|tip|tips|soles|sole) of
        (my|the|his|her|our) (boots|boot|shoes|shoe|wellies), (puddle|puddles|trickle), (a
        couple of|two|three|five|ten|\\d+) (cm|centimetres|centimeters|inches) (of water|deep|at
        most), (half a|one) (boot|shoe|step|stride) (deep|wide|across), (dry|on) (gravel|grass|
        shore|bank|ground|land), water (is)? low, low water, did not (even)? get wet""",
}
