"""Answers to questions about numbers: two weighed against each other, and the bot's own."""

from __future__ import annotations

from typing import Final

NUMBERS_ASKED: Final[dict[str, str]] = {
    # two settings weighed against each other
    "weighed.row": "{setting}: {look}, {share}",
    "weighed.equal": "{rows} of the frame. {stops} between, equally bright.",
    "weighed.times": "{rows} of the frame. {stops} between.",
    "weighed.as_bright": "Equally bright: {list}.",
    # the grain of an ISO grows with each stop: common practice
    "weighed.grain": "{iso} has the more grain: only to shorten the time.",
    "weighed.f_number_alone": (
        "{one} to {other}: {stops} {side}; as bright with {factor} × the time."
    ),
    "weighed.iso_alone": (
        "{one} to {other}: {stops} {side}; as bright with {factor} × the time. "
        "Grain grows with ISO."
    ),
    "weighed.depth_all": "{near} at {focal} needs f/{needed}: all of them hold it.",
    "weighed.depth_some": "{near} at {focal} needs f/{needed}: {list} holds it.",
    "weighed.depth_none": "{near} at {focal} needs f/{needed}: none of them holds it.",
    "weighed.discs": "Fine detail, disc of diffraction: {list}.",
    "weighed.softening": "Disc of diffraction: {list}; past {limit} all goes softer.",
    "weighed.shows": "{setting} shows {shown}",
    "weighed.focals": "{rows}.",
    "weighed.focals_at": "{rows} at {time}.",
    "weighed.focal_alone": (
        "{other} shows {part} of what {one} does; the same look takes {part} of its time."
    ),
    "weighed.whole": "The whole fall takes {longest} or shorter: {list}.",
    "weighed.whole_none": "The whole fall takes {longest} or shorter: a part with these.",
    # an f-number or an ISO: opening costs depth, ISO grain (common practice)
    "either.open": "{f_number} first: depth holds ({near} needs f/{needed}), no grain is added.",
    "either.iso": "{iso} rather: {near} needs f/{needed}, at {f_number} it goes soft.",
    "either.plain": "{f_number} where the depth allows it: no grain is added. Else {iso}.",
    "either.equal": (
        "As bright as now: {f_number}, {f_iso}, {f_time}; or {iso_f}, {iso}, {iso_time}."
    ),
    # settings of the bot's that are disputed: sums of stops
    "disputed.from": "It follows the frame before, {before}: {stops} {side} is {after}.",
    "disputed.against": "Against {other} that is {stops} {side}.",
    "disputed.sum_yes": "Right: {one} is as bright as {other}.",
    "disputed.sum_no": "No: {one} is as bright as {other}.",
    "disputed.mine": "My {mine} is {stops} {side} than that.",
    # short of light, in this order: common practice
    "dark_order.open": "First {f_number}: {stops}, {time}. Depth needs no more than that.",
    "dark_order.kept": "The aperture stays: opened further, the depth no longer holds.",
    "dark_order.polariser": "Then the polariser off: {stops} stops, {time}. The shine comes back.",
    "dark_order.iso": "ISO last: {iso}, {time}. It adds grain, little up to {most}.",
    # what people wonder about: central projection, the rest common practice
    "wondered.tilt": (
        "Level is better where it holds the top: {level} does from here. Tilted {tilt}° up, "
        "upright lines at the border lean in {lean}°."
    ),
    "wondered.tilt_plain": (
        "Level, where it holds the top: tilted up, upright lines lean in, the wider the lens the "
        "more."
    ),
    "wondered.two_looks": (
        "Two looks take two exposures, tripod untouched: {time} for the fall, about {long} behind "
        "an ND for the pool. Join them along the foot."
    ),
    "wondered.polariser_water": (
        "Foam and drops hardly: they mix reflections of all angles and only dim. It takes the "
        "shine off rock, leaves and the smooth pool."
    ),
    "wondered.why_long": (
        "{short} or shorter freezes the water to drops; {long} draws threads. Only water shall "
        "move, so rest the camera."
    ),
    "wondered.why_long_phone": (
        "A short time freezes the water to drops, a long one draws threads. Only water shall "
        "move, so rest the phone."
    ),
    "wondered.filter_dark": (
        "Normal: the polariser takes about 1.7 stops. As bright as without: {time} becomes "
        "{longer}, or ISO three times as high."
    ),
    "wondered.long_mode": (
        "In the camera app's modes: long exposure, night or pro; or a moving picture with a "
        "long-exposure effect. Names differ by phone. Prop it, timer."
    ),
    # the bot's own numbers
    "own.now": "Now: {speed} × {time} ÷ {coverage} = {share}.",
    "own.before": "Before: {speed} × {time} ÷ {coverage} = {share}.",
    "own.changed_coverage": "The frame covers {new} now, {old} then.",
    "own.changed_speed": "The water is reckoned at {new} now, {old} then.",
    "own.f_number": (
        "{f_number}: {near} at {focal} needs f/{needed} at least; with diffraction the blur is "
        "least at f/{best}."
    ),
    "own.f_number_plain": (
        "{f_number}: nothing near has to be sharp; this format is at its best from {low} to {high}."
    ),
    "own.focal": (
        "{focal}: the fall with what lies at {near} takes {both} or shorter, the fall alone "
        "{alone} or shorter."
    ),
    "own.focal_fall": "{focal}: the whole fall takes {alone} or shorter from there.",
    "own.covers": "{focal} from {distance} covers {shown}; the fall fills {part} of it.",
    "own.inputs": "I have: {list}. Wrong? Send the right number.",
    "own.light": "I reckon with {light}: EV {level}. Another? Tell me.",
    "own.light_frames": "With the light that your test frames have shown.",
    "own.light_none_yet": "With no light till now: the time came from the look alone.",
    "own.light_none": (
        "With none: the time comes from the look, the test frame shows the light. Or tell me, like "
        "`overcast`."
    ),
    # a claimed difference, checked
    "checked.differs_yes": "Yes: {one} is {stops} {side} than {other}.",
    "checked.differs_no": "No: {one} is {stops} {side} than {other}.",
    "checked.same_yes": "Yes, equally bright: {one} and {other}.",
    "checked.same_no": "No, equally bright: {one} and {other}.",
    "checked.as_bright": "As bright as {other}: {setting}.",
    "checked.light_yes": "Yes: {one} is {stops} too {side} in this light; {time} is right.",
    "checked.light_no": "No: {one} is {stops} too {side} in this light; {time} is right.",
    "checked.light_right": "No: {one} is about right in this light.",
    "checked.light_unknown": (
        "I can't tell, no light was told: take {one} and tell me what blinks, or send the light, "
        "like `overcast`."
    ),
    # somebody else's scene or frame
    "others.line": "{line}",
    "others.lens": "{focal} holds the whole fall.",
    "others.look": "Water there: {look}, {share} of the frame.",
    "others.frame": "That is {look}. What is wrong with it?",
    # a warning is of the camera's preview; the time alone takes the lines: common practice
    "white.which": (
        "If the body of the water blinks, it is blown. If it does not blink and has no lines, the "
        "time was too long."
    ),
    "white.time": "{time} is {look}: try {shorter} and {shortest}, equally bright.",
    "white.time_short": "{time} is {look}, so rather blown: 2/3 stop darker.",
}
