"""What is said of a frame beside its whites: borders, sharpness, look, contrast, cast."""

from __future__ import annotations

import math
from typing import Final

from core.frame.findings import Border, BorderFinding

SEEN: Final[dict[str, str]] = {
    # sharpness
    "seen.unsharp": "Not a keeper: {fault}. Once more {settings}.",
    "seen.remedy": "{remedy}.",
    "seen.same_settings": "with the same settings",
    "seen.shake": "The camera moved, {direction}: {remedy}.",
    "seen.shake_short": "the camera moved, {direction}",
    "seen.shake_by_hand": "rest it on rock or bag, timer 2 s, take five",
    "seen.shake_remedy": "timer 2 s, stabiliser off, column down, legs out of the current",
    "direction.level": "sideways",
    "direction.rising": "from bottom left to top right",
    "direction.upright": "up and down",
    "direction.falling": "from top left to bottom right",
    "seen.soft": "The rock is soft all over: focus again, magnified, on a hard edge.",
    "seen.soft_short": "the rock is soft all over",
    "seen.soft_remedy": "focus again, magnified, on a hard edge",
    "seen.softer.0": "The top third is softer than the rest: the focus may have been nearer.",
    "seen.softer.1": "The middle third is softer than the rest: the focus lay elsewhere.",
    "seen.softer.2": "The bottom third is softer than the rest: the focus may have been farther.",
    "seen.then.shake": "The camera moved, {direction}.",
    "seen.then.soft": "The rock is soft all over.",
    "seen.then.contrast": "White to dark rock was {stops}, more than one frame holds.",
    "seen.noise": "Noise is plain: a lower ISO, as far as the time allows.",
    "ask.glass": "Look at the front glass against the light.",
    "ask.glass.dry": "dry",
    "ask.glass.drops": "drops",
    "glass.dry": "Then it is the focus: magnify, focus on a hard edge of rock, focus to manual.",
    # whites and darks
    "seen.lamp": "{letter}, {position}: a lamp or the sun. Leave it, or frame it out.",
    "seen.about": "about {stops}",
    "seen.at_least": "at least {stops}",
    "seen.bracket": "White to dark rock is {stops}, more than one frame holds: {frames}.",
    "seen.bracket_times": "bracket {times}",
    "seen.bracket_frames": "bracket {number} frames, {step} apart",
    "seen.contrast": "White to dark rock is {stops}: one frame holds it.",
    "seen.contrast_darker": "White to dark rock is {stops}: one frame holds it, a darker one.",
    "seen.white": "The white of the water is about {stops} below clipping.",
    # look
    "seen.look.numbers": "Look by your numbers: {look}, {share}.",
    "seen.look.both": "Look by your numbers: {look}, {share}; the picture agrees.",
    "seen.look.in_picture": "{look} in the picture",
    "seen.look.picture": "Look by the picture alone: {look}.",
    "seen.look.or": "Look by the picture alone: {look} or {neighbour}.",
    "seen.look.still_parts_soft": "The look can't be told from the picture: its rock is soft too.",
    "seen.look.clipped": "The look can't be told from the picture: its water is clipped.",
    "seen.look.tiny": "The look can't be told from the picture: its water is too small.",
    "seen.look.no_water": "I find no water in the picture: `grid` shows the cells to name it by.",
    "seen.look.wide": (
        "The look can't be told from this picture alone; a second frame at another time helps."
    ),
    "ask.look_odds": (
        "By your numbers the water is {told}, in the picture {seen}. Which do you see?"
    ),
    "ask.look_odds.numbers": "as by my numbers",
    "ask.look_odds.picture": "as in the picture",
    "look_odds.numbers": "Good, I stay with your numbers.",
    "look_odds.picture": (
        "Then height, distance or speed is off; a timed leaf settles it: `leaf 3 m in 2 s`."
    ),
    # cast
    "seen.cast.cold": "The {surface} is about {mired} mired cold: {kelvin} K where 5500 K is set.",
    "seen.cast.warm": "The {surface} is about {mired} mired warm: {kelvin} K where 5500 K is set.",
    "seen.cast.tint": "The {surface} is {tint}: the tint slider, not the temperature.",
    "surface.water": "water",
    "surface.rock": "rock",
    "tint.neutral": "neutral",
    "tint.blue": "blue",
    "tint.warm": "warm",
    "tint.green": "green",
    "tint.magenta": "magenta",
    # borders
    "border.clean": "Nothing enters or glares at the borders of that frame.",
    "border.bright": "Something bright {place}: {remedy}.",
    "border.sky": "White sky {place}: {remedy}.",
    "border.line": "{shade} line comes in {place}: {remedy}.",
    "border.cut": "{shade} shape is cut off {place}: {remedy}.",
    "border.busy": "Much comes in {place}: {remedy}.",
    "ask.border": "{thing} {place}: meant to be there?",
    "ask.border.yes": "yes",
    "ask.border.no": "no",
    "ask.border.none": "nothing there",
    "border.thing.line": "{shade} line",
    "border.thing.cut": "{shade} shape, cut off,",
    "border.thing.bright": "Something bright",
    "border.thing.sky": "White sky",
    "border.thing.busy": "Much that comes in",
    "border.dark": "A dark",
    "border.pale": "A pale",
    "border.then": "{thing} {place}.",
    "border.then_crop": "{thing} {place}: a crop of {part} takes it out.",
    "border.meant": "Kept as it is.",
    "border.not_there": "Then I saw too much; noted.",
    "border.out": "Out with it: {remedy}.",
    "remedy.turn.left": "turn right about {angle}",
    "remedy.turn.right": "turn left about {angle}",
    "remedy.turn.top": "tilt down about {angle}",
    "remedy.turn.bottom": "tilt up about {angle}",
    "remedy.leaves": "{turn}, or move until leaves cover it",
    "remedy.crop": "{turn}, or crop {part}",
    "remedy.crop_alone": "crop {part}, or move",
    "remedy.move": "move 10 to 30 cm, or go longer",
    "remedy.move_feet": "move 4 to 12 inches, or go longer",
    # a look of one's own
    "my_look.used": "Your {look} is about {share}, by the frames you kept.",
    "my_look.kept": "Kept: {look}, water crosses {share} of the frame.",
    "my_look.kept_only": (
        "Noted. To learn its look I need its time and your numbers: `12 m tall, 18 m away, 24 mm`."
    ),
    "my_look.aims_now": "From now on I aim for that: your {look} is about {share}.",
    "my_look.nothing": (
        "You have taught me no look yet. `keep` after a frame does, three times for one look."
    ),
    "my_look.list": "Your looks, by the frames you kept: {list}.",
    "my_look.one": "{look} about {share}",
    "my_look.few": "{look} {number} of {least} frames",
    "my_look.reset_how": "`reset my look` forgets them.",
    "my_look.reset": "Forgotten: I aim for the usual looks again.",
    "my_look.in_private": "What you keep I tell in our direct room only. Ask me there.",
    "keep.which": "Keep which? Share the frame first.",
}

#: Where along a side, by its place from the top or the left; ends of the ranges (own rules).
_DOWN: Final = (
    (0.12, "near the top"),
    (0.42, "a third down"),
    (0.58, "half way down"),
    (0.88, "two thirds down"),
    (math.inf, "near the bottom"),
)
_ACROSS: Final = (
    (0.12, "near the left corner"),
    (0.42, "left of the middle"),
    (0.58, "in the middle"),
    (0.88, "right of the middle"),
    (math.inf, "near the right corner"),
)
#: A finding that takes more of a side than this lies along it (own rule).
_ALONG: Final = 0.5


def border_place(finding: BorderFinding) -> str:
    """Where a thing lies, as seen in the frame: `at the left, two thirds down`."""
    if finding.width >= _ALONG:
        return f"along the {finding.border.value}"
    upright = finding.border in {Border.LEFT, Border.RIGHT}
    places = _DOWN if upright else _ACROSS
    where = next(words for end, words in places if finding.position <= end)
    return f"at the {finding.border.value}, {where}"
