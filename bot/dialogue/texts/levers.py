"""Levers, filters, prices and symptoms in a few words each."""

from __future__ import annotations

from typing import Final

LEVERS: Final[dict[str, str]] = {
    # whether a time can be had behind a filter
    "reach.right": "Yes: behind the {filters} {light} gives about {time} at {f_number}, {iso}.",
    "reach.narrower": "Yes, at {narrower}, {iso} behind the {filters}: {time} is {look}.",
    "reach.bright": (
        "No: behind the {filters} {light} gives {gives} at {f_number}, {iso}; {time} takes {all} "
        "of filter in all."
    ),
    "reach.dark": "Not with it: behind the {filters} {light} gives {gives} at {f_number}, {iso}.",
    "reach.unknown": (
        "Where the meter shows {bare} bare, the {filters} makes it {time}. Tell me the light, like "
        "`overcast`, and I say yes or no."
    ),
    "filter.polariser": "polariser",
    "filter.both": "both",
    "filter.beside": "{settings} with {filters}",
    "filter.none": "no filter",
    "filter.polariser_on": "polariser on",
    "filter.polariser_off": "take the polariser off",
    "filter.nd": "{stops}-stop ND",
    "filter.averaged": "as {frames} averaged frames of {time}",
    "filter.darker_light": "in darker light",
    "filter.nd_on": "{stops}-stop ND on",
    "filter.nd_off": "take the ND off",
    "filters.now": "With {filters}: {settings}.",
    "filters.now_none": "Without a filter: {settings}.",
    "checked_time.yes": "Yes: {bare} and {stops} make {time}.",
    "checked_time.no": "No: {bare} and {stops} make {time}.",
    # A time that is too short for the look is what an ND is for (common practice).
    "filters.bring": (
        "Bring it: it makes the time longer, which soft water needs in daylight. Bring a rest or "
        "a small tripod with it."
    ),
    "asked.hold_phone": (
        "No: holding the button changes nothing. Long-exposure or night mode, or pro mode at "
        "{time}; phone propped, timer 3 s."
    ),
    "asked.hold_camera": (
        "No: only in bulb does the button hold the time. Set {time} on the dial, timer 2 s."
    ),
    # Doubling the time is one stop by definition; metering with and without is common practice.
    "filters.measure": (
        "No number on it? Meter one scene without it, then with it, ISO and f-number fixed: each "
        "doubling of the time is 1 stop, 5 doublings an ND32."
    ),
    "lever.time.darker": "time to {time}, {stops} darker",
    "lever.time.brighter": "time to {time}, {stops} brighter",
    "lever.iso.darker": "{iso}, {stops} darker",
    "lever.iso.brighter": "{iso}, {stops} brighter",
    "lever.aperture.darker": "{f_number}, {stops} darker",
    "lever.aperture.brighter": "{f_number}, {stops} brighter",
    "lever.polariser.darker": "polariser on, about 1.7 stops darker",
    "lever.polariser.brighter": "polariser off, about 1.7 stops brighter",
    "lever.nd.darker": "{nd}-stop ND on",
    "lever.nd.brighter": "ND off or weaker, {stops} brighter",
    "price.diffraction": " (diffraction {blur_um_before} to {blur_um_after} µm)",
    "price.noise": " (noise × {noise_ratio})",
    "price.glare": " (shine returns)",
    "other.nd": "an ND of {nd_stops}",
    "other.nd_instead": "an ND of {nd_stops} in place of the {on}-stop",
    "other.wait": "wait for cloud or shade (about 3 stops)",
    "other.wait_part": "wait for cloud or shade (about 3 of the {need})",
    "other.wait_darker": "wait for darker light",
    "other.wait_brighter": "wait for more light",
    "other.average": "average {frames} frames of {time}",
    "other.section": "a shaded section with a longer lens",
    "other.shorter_time": "crisper water at {time}",
    "other.longer_time": "silkier water at {time}",
    "other.stack": "{f_number} and a focus stack",
    "other.average_rock": "average {frames} frames at {iso}, for the rock only",
    "other.support": "rest the camera on rock or bag",
    "other.bracket": "bracket",
    "other.time": "{time}",
    "other.iso": "{iso}",
    "other.polariser": "the polariser",
    "other.aperture": "{f_number} as a last resort",
    # what if
    "what_if.exposure": (
        "{f_number}, {iso}: {stops} {side}; {time} instead of {old_time}, as bright: {look}."
    ),
    "what_if.time": "{time}: {stops} {side} than {old_time}, {look}.",
    "what_if.geometry": "At {time} then: {look}.",
    "what_if.view": "{focal} from {distance} shows {shown}.",
    "what_if.cuts": (
        "{focal} from {distance} shows {shown} and cuts the fall: all of it takes {needed}."
    ),
    "what_if.set": "That is what is set: {settings}; {look}.",
    "what_if.same": "No difference in brightness; at {time} {look}.",
    "what_if.softer": "Fine detail softer: diffraction {new} µm against {old}.",
    "what_if.crisper": "Fine detail crisper: diffraction {new} µm against {old}; less depth.",
    "what_if.fixed": "A phone's f-number is fixed; its time and ISO can change.",
    "what_if.nothing": "I can compare once there are settings: `what if f/16`, `what if 35 mm`.",
    # told
    "told.better": "Same brightness, sharper: {settings}, {look}.",
    "told.settings": "{settings}: {look}.",
    "told.past_limit": "Past {limit} diffraction softens everything on this format.",
    "told.too_near": "No f-number keeps the rock at {near} crisp then: leave it out or step back.",
    "told.too_open": "The rock at {near} goes soft: it needs f/{needed}.",
    "told.better_time": "Take {settings}: {look}, and the white keeps its texture.",
    # symptoms
    "symptom.soft_depth": (
        "Focus at twice the distance of the nearest thing that must be sharp; stop down one, step "
        "back or stack 2 to 5 frames."
    ),
    "symptom.soft_depth_numbers": (
        "Focus at {focus} with {f_number}: sharp from {near} to {far}. Check both ends at 100 %."
    ),
    "symptom.else_shake": "Soft there still? Then shake: timer, stabiliser off, column down.",
    "symptom.soft_depth_stack": (
        "Too near for one frame: {f_number}, {frames} frames, focus from {near} to {far}; "
        "or step back."
    ),
    "symptom.soft_phone": (
        "Tap the rock beside the fall to focus and step back from the nearest one."
    ),
    "symptom.diffraction": (
        "{f_number} softens everything by diffraction: use {better}. "
        "Then timer 2 s, stabiliser off, column down."
    ),
    "symptom.shake_hand": (
        "The camera moved: rest it on a wall, post or bag, timer 2 s, stabiliser on, five frames. "
        "In the hands about 1/15 s at most."
    ),
    "symptom.shake_phone": (
        "The phone moved: rest it on a wall, post or bag, timer 3 s, a burst of ten; keep the "
        "sharpest or average them."
    ),
    "symptom.shake": (
        "Likely the camera moved: timer 2 s, stabiliser off, column down, legs pushed in and out "
        "of the current, strap tucked. Then look at a rock at 100 %."
    ),
    "shake.yes": (
        "Yes: a camera that moves in {time} blurs all alike, rock too; now it stood still."
    ),
    "shake.likely": (
        "Likely: a camera that moves in {time} blurs all alike; moving water leaves the rock sharp."
    ),
    "symptom.spots": (
        "Drops on the glass: step back, cloth over the lens until the shot, wipe, uncover, "
        "shoot, cover. Five frames."
    ),
    # Off the wind's axis, between gusts, farther with a longer lens: common practice.
    "symptom.spots_again": (
        "Spray finds it again: out of its way, farther back with a longer lens. Wipe before each "
        "frame, shoot between gusts; drops never fall twice in the same place."
    ),
    "symptom.leaves": (
        "A second frame for the leaves: 1/125 s, ISO up by the same stops, nothing else touched."
    ),
    "symptom.glare": (
        "Turn the polariser until rock and leaves stop shining, before the water dies."
    ),
    "symptom.glare_time": (
        "Polariser on, turned until the shine goes; about 1.7 stops, so {settings}."
    ),
    "symptom.glare_if": (
        "A polariser, if you have one, turned until the shine goes: about 1.7 stops. Else move "
        "until it leaves the rock, or wait for cloud."
    ),
    "symptom.glare_none": (
        "Without a polariser: move until the shine leaves the rock, or wait for cloud."
    ),
    "symptom.blue": (
        "Shade is blue: fix the white balance at 6500 to 8000 K until rock looks grey; "
        "leave the water slightly cool."
    ),
    "symptom.leaning": "Keep the camera level: back off, go higher where it is safe, crop later.",
    "symptom.leaning_numbers": (
        "At {focal} a level camera holds the top from {distance} back; or tilt hard, on purpose."
    ),
    "symptom.too_small": (
        "Step back and go longer: twice as far at twice the focal length keeps the fall."
    ),
    "symptom.too_small_numbers": (
        "From there {focal} fills the frame with the fall, {longer} with its half."
    ),
    # Full effect can make pools black: try half (common practice).
    "symptom.black_polariser": (
        "Fully turned, the polariser blackens pools and wet rock: turn it half back; in dim light "
        "take it off."
    ),
    "symptom.black_rock": (
        "Expose for the white and lift the rock at home, up to 3 stops; or two frames by the time."
    ),
    "symptom.black_rock_numbers": (
        "Keep {settings} for the white; lift the rock at home, or a second frame at {time} "
        "for it. Water from one frame only."
    ),
}
