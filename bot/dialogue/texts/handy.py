"""Answers with the camera in hand: filters that turn, clouds, rain, twigs, gear, a line to keep."""

from __future__ import annotations

from typing import Final

#: Rules without a number of the person's own are common practice of the trade's teachers.
HANDY: Final[dict[str, str]] = {
    # A variable ND is two polarisers: crossed too far they darken unevenly, most with wide lenses
    # (common practice; that it begins in the last third is an own rule).
    "asked.variable": (
        "Set {f_number}, {iso}, {time}, then turn until the meter agrees: about {stops} in "
        "{light}. Not into the last third of the ring: a dark cross comes there."
    ),
    "asked.variable_weak": (
        "Take it off: in {light} {time} at {f_number} needs no filter, and even at its weakest it "
        "takes 1 to 2 stops."
    ),
    "asked.variable_strong": (
        "In {light} {time} at {f_number} is {stops} too bright: more than it takes without a dark "
        "cross. Wait for shade (3 stops less) or shorten; then turn it."
    ),
    "asked.variable_plain": (
        "Set f-number, ISO and the time you want, then turn it from its weak end until the meter "
        "agrees. Keep off the last third of the ring: a dark cross comes there."
    ),
    "asked.variable_cross": (
        "Not broken: near its strong end a variable ND draws a dark cross, most with wide lenses. "
        "Turn back until that goes; the rest takes a higher f-number or shade."
    ),
    "asked.variable_polariser": (
        "Not both: a variable ND is two polarisers itself, so a third goes dark or blotchy, and "
        "corners darken. Take one. A dark cross: turn the variable back."
    ),
    # Which of the two, by the light
    "asked.first_neither": (
        "No ND: in {light} {time} at {f_number} needs none. The polariser only if rock or leaves "
        "shine: {longer} with it."
    ),
    "asked.first_polariser": (
        "Only the polariser: in {light} {time} at {f_number} is {stops} too bright, and it takes "
        "1.7. No ND."
    ),
    "asked.first_both": (
        "Polariser if the rock shines, and an ND: in {light} {time} at {f_number} is {stops} too "
        "bright."
    ),
    # A cloud, or the wall's shade, takes about 3 stops (from sun at EV 15 to 12).
    "asked.wait_cloud": (
        "Wait for the cloud, release in hand: it takes about 3 stops and most of the contrast. "
        "None coming: a section that lies in shade, or another hour."
    ),
    # Time over time of one round is the part of the ring that is drawn.
    "asked.eddy": (
        "An eddy: behind a rock water turns back and takes foam round. Yes, it shows: count one "
        "round of a fleck; so many seconds draw the ring, half of them an arc."
    ),
    # Small catchments rise within hours and fall in hours to a day; clear again after one to three
    # days (common practice).
    "asked.after_flood": (
        "Not today: it can rise again for hours. Another day, when it is low and clear, mostly one "
        "to three days after rain; gauge and rangers decide."
    ),
    "asked.leave_gear": (
        "Nobody goes back to rising, brown or loud water for gear: leave it until that is over. "
        "Elsewhere take it along, in the bag, both hands free."
    ),
    # the same while an emergency is held
    "danger.gear_stays": "Leave it: nobody goes back to that water for gear.",
    "danger.not_today": "Not today: it can rise again for hours.",
    "asked.can_do": (
        "I go with you through lens, edges, settings, whites and leaves at a fall, read frames "
        "that you share, answer questions; danger first. Ask, or send `start`."
    ),
    "asked.wipe": (
        "Clean, dry cotton will do, a T-shirt, too: blow grit off first, dab, then wipe from the "
        "middle out. No paper, no fleece; dry cloths in a bag next time."
    ),
    "asked.in_the_way": (
        "Leave it out: move 10 to 30 cm, zoom in a little, or raise the camera; else crop at home. "
        "Break nothing off, roll nothing, and stay out of the water."
    ),
    "asked.no_polariser": (
        "Yes, without a polariser: move until the shine leaves rock and leaves, or wait for cloud; "
        "some of it stays. It saves you 1.7 stops."
    ),
    "asked.log_line": (
        "Place, day, hour, light, water level, lens, f-number, ISO, time, filter, what you kept, "
        "and one thing to do differently."
    ),
    "asked.log_line_now": (
        "Note: {settings}{light}. Add place, day, hour, water level, and one thing to do "
        "differently."
    ),
    # Opinions differ about bright jackets in a picture (common practice).
    "asked.people_coat": "A bright coat is a matter of taste.",
    "asked.slippery_shoes": (
        "Better not: wet leaves and moss on rock slide, smooth soles hold nothing. Stay on path "
        "or gravel, try each step; nobody at the water's edge or on the lip."
    ),
    "asked.focus_water": (
        "Foam gives focus no edge: focus at {focus}, on rock with a clear edge, then manual."
    ),
    # 8 to 16 frames of a burst average to soft water (common practice).
    "asked.phone_by_hand": (
        "Free hand a phone holds about 1/15 s: no soft water. Rest it on a rock or the bag, timer: "
        "long-exposure mode, or average 8 to 16 frames of a burst."
    ),
    "asked.length_is": "{told} is {length}.",
}
