"""English wordings: illnesses that turn bad in minutes, what was eaten, and how it shows."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

ILLNESS: Final[Mapping[str, str]] = {
    "illness": """
        diabet*, insulin, blood sugar, (sugar|glucose) (is|at|low|dropped|dropping|crash|crashed|
        down), hypo, glucose, asthma*, inhaler, allerg*, epipen, (forgot|left|no|lost) ~ pen,
        epilep*, seizure, (has|having|had) (a|some) (fit|fits|spasm), dementia, alzheimer*,
        pregnan*, waters broke, contractions, (weeks|months) along, heart (attack|condition|pills|
        trouble|pain), pacemaker, nitro spray, stroke, (heat|sun) stroke, heatstroke, sunstroke,
        anaphyla*, concuss*, appendix, (blood thinner|blood thinners), overdose, pills, (wasp|wasps|
        bee|bees|hornet|hornets|snake|adder|viper|spider|scorpion)""",
    "unwell": """
        (confused|delirious|sweating|sweaty|clammy|shaky|wheezing|wheezes|wheezy|faint|fainted|
        fainting|collapsed|unresponsive|limp|floppy|drowsy|dizzy|vomiting|nauseous|
        throwing up|threw up|puking|seizing|twitching|convulsing|swelling|swollen|hives|rash|
        blotchy|croaky|gasping|choking|foaming), (talking|making|speaking) (nonsense|rubbish|
        gibberish|no sense|funny), not making (any)? sense, (acting|behaving|seems|sounds|
        looks) (drunk|odd|strange|weird|off|funny), (cannot|not) ~ (words|speak|swallow|breathe)
        (out|up)?, (whistling|rattling|snoring) (when|noises|sounds|breath)*, keeps (asking|
        repeating) (the)? (same)?, same question, (is|has|going|gone|turned|goes) (grey|gray|
        white|blue|pale|yellow), (so|very|really) sleepy, not (himself|herself|right), (is|runs|
        ran) empty, (in the|at the|left in the) (other bag|car|hut|tent|hotel|van), tingly,
        tingling, pressure (in|on), (throat|tongue|lips|lip|face|eyes) ~ (swelling|swell|closing|
        thick|puffing|swollen|up)""",
    "ate_bad": """
        (ate|eaten|eat|tried|tasted|swallowed|chewed|nibbled) ~ (mushroom|mushrooms|berries|berry|
        toadstool|plant|leaf|leaves|root|roots|seeds|fungus|something|pills|bulb), (drank|drunk|
        swallowed) ~ (creek|stream|river|petrol|fuel|bleach|meths)""",
}
