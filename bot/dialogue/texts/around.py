"""Answers around the picture: film, a phone's lenses, counts of frames and looks, the way down."""

from __future__ import annotations

from typing import Final

#: Rules without a number of the person's own are common practice of the trade's teachers.
AROUND: Final[dict[str, str]] = {
    # log2 of the number: the times add up.
    "asked.frames": (
        "{number} frames averaged smooth like {stops} of ND; {double} add one stop. 8 to 16 do, "
        "past 30 little changes; nothing may move between them."
    ),
    # Each stop doubles the time (definition of a stop).
    "asked.nd_time": "{bare} without it becomes {time} with {stops} of ND.",
    "asked.nd_time_bulb": (
        "{bare} without it becomes {time} with {stops} of ND: bulb, a release and a watch."
    ),
    # own rule: from two stops past the shortest misty time on
    "asked.nd_past_misty": "Little sense: the water is misty from {time} on, longer adds little.",
    "asked.nd_look": "There: {look}.",
    # stops of opening, ISO and filters, by definition
    "time_sum.is": "{time} at {f_number}, {iso}, {filters}: {look}.",
    "time_sum.as_bright": "That is as bright as {right}.",
    # 1.3 to 2 stops: common practice
    "asked.polariser_takes": "The polariser takes about 1.7 stops (1.3 to 2).",
    "asked.nd_takes": "That takes {stops}: {factor} times the time.",
    # Every 15 to 20 min, at 100 % (common practice).
    "asked.rounds": (
        "Each student every 15 to 20 min; {number} of them: {minutes} min each. Rear screen at "
        "100 %, ask what it is about, change one thing."
    ),
    "asked.last_none": (
        "No settings of a frame yet: send your last ones, like `f/11, 1/4 s, ISO 100`."
    ),
    "asked.warning_where": (
        "In playback, up, down or info until lost white flashes; the playback menu switches it on "
        "(highlights, overexposure). Nothing flashes: nothing is lost."
    ),
    "asked.warning_phone": (
        "A phone mostly shows none: zoom into the picture; white without any structure counts as "
        "blinking."
    ),
    # +2 by a spot meter keeps texture (core/exposure); slides hold less (common practice).
    "asked.film": (
        "Times and look hold on film; nothing blinks there. Spot-meter the white with texture: +2 "
        "on negative, +1 2/3 on slide. Bracket 1/3 to 2/3 stop."
    ),
    # Films differ from "none up to a minute" to one stop at 1 s and two at 10 s (data sheets of
    # several films; from memory).
    "asked.reciprocity": (
        "From about 1 s many films need more: up to 1 stop at 1 s, 2 at 10 s, some none; the "
        "film's data sheet counts. At 1/2 s or less: nothing."
    ),
    "asked.phone_lens": (
        "The main one, 1x (24 to 28 mm as full frame): most light, sharpest. 2x is often its "
        "middle, cropped; the long and the wide one have less light."
    ),
    "asked.why_look": (
        "The look is how far water runs across the frame meanwhile: speed × time × focal length / "
        "distance. Half the distance or twice the focal length: half the time."
    ),
    "asked.slippery": (
        "Wet rock, roots and boards slide, most going down: hands free, short steps, camera "
        "packed, poles. More rain: go now. The land manager knows the path."
    ),
}
