"""Short answers to what people ask beside the walk, with their own numbers put in."""

from __future__ import annotations

from typing import Final

#: Rules without a number of the person's own are common practice of the trade's teachers.
ASKED: Final[dict[str, str]] = {
    "asked.iso": "{iso}, the lowest: raise it only to shorten the time.",
    "asked.iso_raised": "{iso} here, to keep {time}; otherwise the lowest, {base}.",
    "asked.f_number": "{f_number} here: the depth needs at least f/{needed}.",
    "asked.f_number_open": "{f_number} is too open: the depth needs f/{needed}, so {better}.",
    "asked.f_number_stack": (
        "No single f-number: the depth needs f/{needed}, past {limit} all softens. So {frames} "
        "frames at {better}."
    ),
    "asked.f_number_blur": (
        "{f_number} blurs least in all; the depth alone needs f/{needed}: {least} does, too."
    ),
    "one.f_number": "{f_number}, focus at {focus}: the depth needs at least f/{needed}.",
    "one.f_number_stack": (
        "Not in one frame, it needs f/{needed}: {frames} frames at {f_number}, or step back from "
        "it. Single frame: focus at {focus}."
    ),
    "one.how_far": "{distance} back: there {focal}, camera level, holds the top.",
    "asked.nd_by_turns": (
        "No filter evens out sun in patches: wait for cloud, or frame a shaded section. An ND only "
        "makes the time longer."
    ),
    "time_enough.yes": "Yes: {settings}: {look}.",
    "time_enough.no": "No: {time} is as bright as what blinked. Stay at {settings}.",
    "time_enough.under": "That is {stops} under the frame that blinked.",
    "asked.f_number_plain": "{low} to {high} on this format: sharpest, with enough depth.",
    "asked.f_number_phone": "A phone's f-number is fixed: only ISO and time can change.",
    "asked.why_not_f22": ("Past {limit} diffraction softens all of it; {f_number} is enough here."),
    "asked.time": "{look}: {shortest} to {longest} here; begin at {time}.",
    # a phone has no dial: its mode makes the time
    "asked.time_phone": (
        "{look}: about {time} here. Long-exposure or night mode, phone propped, timer 3 s, in "
        "shade; without one average a burst, or a clip-on ND."
    ),
    "asked.time_long": "{look}: {shortest} or longer here; begin at {time}.",
    "asked.focus": "Focus at {focus}, then manual. Check the nearest and the far rock at 100 %.",
    "asked.focus_plain": (
        "At twice the distance of the nearest thing that must be sharp. Check both ends at 100 %."
    ),
    "asked.nd_yes": (
        "Yes, an ND: in {light} it takes about {stops} of filter for {time} at {f_number}."
    ),
    # a yes or a no first
    "verdict.polariser_yes": (
        "Yes: the polariser takes about 1.7 stops (1.3 to 2), {time} becomes {longer}; off in "
        "dim light."
    ),
    "verdict.polariser_no": (
        "No: this light has the polariser's 1.7 stops (1.3 to 2) to spare; {time} becomes {longer}."
    ),
    "verdict.distance_unknown": "1 to 1.5 heights of the fall away is usual (common practice).",
    "verdict.distance_usual": (
        "No: {heights} heights of the fall; 1 to 1.5 is usual (common practice). {focal} holds it."
    ),
    "verdict.far_little": (
        "No: {heights} heights of the fall, a little past the usual 1 to 1.5 (common practice). "
        "{focal} holds it."
    ),
    "verdict.far_yes": (
        "Rather: {heights} heights of the fall, 1 to 1.5 is usual (common practice). From there "
        "{focal} fills the frame with it."
    ),
    "verdict.near_yes": (
        "Rather: {heights} heights of the fall, 1 to 1.5 is usual (common practice): the camera "
        "tilts and walls lean in."
    ),
    "verdict.wind": "Wind, often the fall's own: what stands still beside them is sharp.",
    "verdict.focus_no": "No, that is wind: at {f_number} it is sharp from {near} on.",
    "verdict.focus_unless": (
        "No, wind; unless they are nearer than {near}, from where on it is sharp at {f_number}."
    ),
    "verdict.focus_plain": "No, where the rock beside them is sharp: that is wind.",
    "verdict.enough_yes": "Yes: {near} at {focal} needs about {needed}; the far side holds, too.",
    "verdict.enough_no": (
        "No: {near} at {focal} needs about {needed}. Or step back, or let the near thing go."
    ),
    "verdict.enough_soft": (
        "More than enough: {near} at {focal} needs about {needed}; past {limit} all goes softer."
    ),
    "verdict.enough_plain": (
        "Yes, with nothing near: {low} to {high} is sharpest on this format. Tell me the nearest "
        "thing, like `rock at 1.5 m`, and I reckon it."
    ),
    "verdict.right_yes": "Yes: in {light} that is about right{filters}.",
    "verdict.right_no": "No: in {light} that is {stops} too {side}{filters}; {time} is right.",
    "verdict.bare": " without a filter",
    "verdict.filtered": " behind what is on the lens",
    "verdict.right_polariser": "With the polariser on: {stops} too {side}.",
    "verdict.look_yes": "Yes for {look} water; what blinks then tells of the light.",
    "verdict.look_no": "Not for {look} water: {time} there; what blinks tells of the light.",
    "asked.filter_times": "{f_number}, {iso} there: bare {bare}{list}.",
    "asked.nd_no": "No ND: in {light} {time} at {f_number} needs none.",
    "asked.nd_polariser": (
        "No ND: in {light} {time} at {f_number} is {stops} too bright, and a polariser takes 1.7."
    ),
    "asked.nd_aperture": (
        "No ND: in {light} {time} at {f_number} is {stops} too bright, and {narrower} takes that."
    ),
    # asked the other way round: does it work without?
    "asked.nd_yes_without": (
        "Not without an ND: in {light} it takes about {stops} for {time} at {f_number}."
    ),
    "asked.nd_no_without": "Yes, without an ND: in {light} {time} at {f_number} needs none.",
    "asked.nd_polariser_without": (
        "Yes, without an ND: in {light} {time} at {f_number} is {stops} too bright, and a "
        "polariser takes 1.7."
    ),
    "asked.nd_aperture_without": (
        "Yes, without an ND: in {light} {time} at {f_number} is {stops} too bright, and "
        "{narrower} takes that."
    ),
    "asked.filter_choice": "{filter}: {time} in {light}, {look}.",
    "asked.nd_plain": "No ND in shade or under trees; in open daylight 3 to 6 stops.",
    "asked.nd_plain_without": (
        "In shade or under trees it works without an ND. Open daylight takes 3 to 6 stops."
    ),
    "asked.polariser_first": (
        "Polariser first, if the rock shines; ND only if it is still too bright."
    ),
    "asked.polariser_stops": (
        "The polariser takes about 1.7 stops (1.3 to 2): {time} becomes {longer}."
    ),
    "asked.polariser_turn": (
        "Turn until the shine on rock and leaves drops; stop before the water dies. Then meter. "
        "Camera upright: turn anew."
    ),
    "asked.polariser_on": (
        "Polariser on, if rock or leaves shine: about 1.7 stops, {time} becomes {longer}."
    ),
    "asked.polariser_off": "Polariser off: in {light} it takes light that you need.",
    "asked.both_filters": (
        "Both together work: focus and turn first, then the ND. Watch the corners below 20 mm."
    ),
    "asked.both_filters_now": (
        "Both work: {time} becomes {longer}, {look}. Focus and turn first, then the ND; watch the "
        "corners below 20 mm."
    ),
    "asked.by_hand": (
        "Not {time}: about 1/15 s braced, several tries. Better rest it on a rock or the bag."
    ),
    "asked.tripod": "For {time}, yes; else a rock or the bag, timer 2 s. Braced about 1/15 s.",
    "asked.by_hand_short": (
        "{time} perhaps: braced, stabiliser on, several tries. Else rest it on a rock or the bag."
    ),
    "asked.phone": (
        "A phone can: prop it, timer, shade. A long-exposure mode averages a burst; or a clip-on "
        "ND."
    ),
    "asked.raw": (
        "RAW: it keeps the whites and the white balance open. A small JPEG beside it to share."
    ),
    "asked.white_balance": (
        "Fixed, daylight or cloudy, and decide later. Shade is blue: 6500 to 8000 K brings the "
        "rock to grey."
    ),
    "asked.histogram": (
        "Look where: dots are sparkle, fine. Patches in the main water: back off 1/3 to 2/3 stop."
    ),
    "asked.meter": (
        "Spot-meter the brightest white with texture and place it at +2; or trust the warning "
        "for the main water."
    ),
    "asked.lens": "From there {focal} holds the whole fall.",
    "asked.lens_plain": "24 to 70 mm as on full frame does most; 70 to 200 for sections.",
    "asked.form": (
        "Portrait for a tall fall or a near rock, landscape for a wide one; both if in doubt."
    ),
    "asked.come_back": (
        "Yes, if the whole fall is in shade by then: that takes about 3 stops and most of the "
        "contrast. Keep the turn-back time; your location tells me the sun's."
    ),
    "asked.form_means": (
        "Portrait is the camera upright, landscape is flat; upright for a tall fall or a near rock."
    ),
    "asked.best_time": "Overcast, or the whole fall in shade; a day to three after rain.",
    "asked.noon": (
        "Wait for cloud or shade, take a shaded section with a longer lens, or a 6-stop ND; "
        "the contrast stays."
    ),
    "asked.noon_bare": (
        "Wait for cloud or shade, or take a shaded section with a longer lens; the contrast stays."
    ),
    "asked.sky": (
        "Leave it out: move until leaves cover the gap, tilt down, go longer, or cut the lip."
    ),
    "asked.stay": "Two hours at least, and leave at the turn-back time.",
    # Small catchments rise within hours of rain and fall in hours to a day; clear again after one
    # to three days (common practice).
    "asked.after_rain": (
        "Better one to three days after rain: then it has cleared, and rock is still dark. Brown "
        "or rising water: stay away. Gauge and land manager say how it stands."
    ),
    # Usual tasks of workshops (common practice).
    "asked.exercise": (
        "From dry ground, half an hour: the same frame at 1/15, 1/8, 1/4, 1/2 and 1 s; one with "
        "clean borders, no sky; phones: borders. From the railing, too."
    ),
    # Intent half a minute, silence, what holds, what pulls away, one technical, next time.
    "asked.group_review": (
        "About 4 min a picture: intent, a look in silence, three things that hold, one change, one "
        "technical, next time. {number} pictures: {minutes} min."
    ),
    # Many parks forbid them; elsewhere rules differ (common practice).
    "asked.drone": "Ask the land manager: many parks forbid drones, and none flies over people.",
    # The slowest sets the pace, and whoever is lame or cold turns all back (common practice).
    "asked.tired": (
        "Then turn back earlier than planned: the slowest sets the pace. Sit, eat, drink, a warm "
        "layer on; back together, nobody stays behind."
    ),
    "asked.permit": (
        "Ask the land manager: tripods may be barred on platforms and narrow bridges; workshops "
        "usually need a permit, and where you sell, rules differ."
    ),
    "asked.choose": "On a large screen at equal brightness: shape first, 100 % only to rule out.",
    "asked.stabiliser": "Off on the tripod: it can chase its own motion. On by hand.",
    # Warnings come from the preview; raw often holds half a stop to a stop more (common practice).
    "asked.raw_means": (
        "RAW is all that the sensor saw; what blinks is the small finished picture made from it. "
        "Raw often holds 1/2 to 1 stop more."
    ),
    "asked.pack_short": "Not yet.",
    "asked.pack": (
        "Four dry cloths or more, a headlamp each, warm layer, dry socks, whistle, food, water, "
        "paper map, a pole; batteries and phone, in flight mode, inside."
    ),
    "asked.tell_home": (
        "Who, where, your way, the car and its place, start, back by when; and the hour, 1 to 2 h "
        "later, at which they call whom."
    ),
    "asked.tell_home_time": "Your turn-back time for it: {time}.",
    "asked.path_open": (
        "I can't know that. Read the land manager's notices tonight and again in the morning; "
        "closed means closed."
    ),
    "asked.card": (
        "If still {light}: {f_number}, {iso}: {open} in the open{filters}; under trees {trees} "
        "without a filter."
    ),
    "asked.card_phone": (
        "If still {light}: {iso}, {open} in the open, {trees} under trees; phone propped, timer, "
        "a burst."
    ),
    "asked.card_look": "For {look} water aim at {time}.",
    "asked.shade": (
        "When the sun stands lower than the wall on its side: a fist at arm's length is 10°. Shade "
        "takes about 3 stops and most of the contrast."
    ),
    "asked.shade_east": (
        "Facing east: sun from the morning on, shade from about noon, earlier behind a wall. With "
        "your location I tell the sun's way; each wall counts in fists, 10° each."
    ),
    "asked.shade_west": (
        "Facing west: shade until about noon, sun from then on until a wall takes it. With your "
        "location I tell the sun's way; each wall counts in fists, 10° each."
    ),
    "asked.shade_told": (
        "From about {time} then, once the sun stands lower than the wall: shade takes about 3 "
        "stops and most of the contrast. Worth the wait; a shaded section till then."
    ),
    # Vibration of a pressed camera dies away within about two seconds: common practice.
    "asked.timer": (
        "The press shakes the camera; 2 s later it is still. A cable release, a remote or the "
        "camera's app does the same."
    ),
    "asked.filter_order": (
        "Polariser on and turned, meter, focus, switch to manual, then the ND; nothing is turned "
        "after that."
    ),
    "asked.polariser_seen": (
        "Watch one wet stone, not the colours: turn slowly until its shine is least; then the "
        "pool's bottom shows."
    ),
    "asked.join": (
        "At home: leaf frame as a layer over the water frame, equal brightness first, then a mask "
        "that lets only the leaves through."
    ),
    "asked.battery": (
        "Not broken: batteries sag in the cold and recover when warm. Carry both in an inside "
        "pocket and change them in turn."
    ),
    "asked.why_time": "{time} is {look} of the frame; {other} is {other_look}.",
    "asked.group": (
        "All keep {time}, it makes the look: {list}; ISO by each meter, an ND where that ends."
    ),
    "group.for_all": "For all here: {list}.",
    "roster.in_group": "Ask me that in the group room: there I tell what was said to me there.",
    "roster.leads": "That I tell who leads here.",
    "roster.emergency": "Emergency told, not said to be over: {list}.",
    "roster.waiting": "Waiting longest: {list}.",
    "roster.waits": "{who} {age} ({step})",
    "roster.nobody_waits": "Nobody has waited longer than {limit}.",
    "roster.step": "{step}: {list}.",
    "roster.no_frame": "No frame kept yet: {list}.",
    "roster.not_begun": "Not begun: {list}.",
    "roster.alone": "Nobody else is here.",
    "why.roster": "From what was told to me in this room alone; a frame is kept once it holds.",
    "group.view": "Same view: {list}.",
    "group.phones": "Phones: propped, timer, long exposure or a burst.",
    "group.phone": "{who}: propped, timer 2 s, long exposure or a burst. Your own walk stays.",
    "group.some": "{who}: {time} there, too, and by format {list}. Your own walk stays.",
    "group.wish": (
        "{who}: {look} is {shortest} to {longest} from here; begin at {time}. Your own look stays."
    ),
    "group.wish_frozen": "{who}: {look} is {longest} or shorter here. Your own look stays.",
    "group.one": (
        "{who}: {f_number}, {time}, {focal}, ISO by the meter from {iso} up. Your own walk stays."
    ),
    "group.format.44x33": "44×33",
    "group.format.full frame": "full frame",
    "group.format.aps-c": "APS-C",
    "group.format.aps-c 1_6": "APS-C 1.6×",
    "group.format.four thirds": "four thirds",
    "group.format.1-inch": "1-inch",
    "asked.grain": (
        "{iso}: 200 to 800 hardly show grain. It sits in shadows that got too little light: expose "
        "longer rather than lift them."
    ),
    # 400 to 800 without worry, 1600 on large sensors, more for leaves only: common practice.
    "asked.grain_high": (
        "{iso} shows grain: 800 hardly does, 1600 will do on a large sensor. It sits in shadows: "
        "expose longer rather than lift them."
    ),
    "asked.channel": (
        "One channel alone is often sparkle or tinted light. Look where it blinks: dots are fine, "
        "patches in the water want 1/3 stop less."
    ),
    "asked.channel_now": (
        "One channel alone is often only sparkle: dots, keep {settings}; patches in the water, "
        "{less}."
    ),
    "asked.next_time": (
        "The same frame at {shorter}, {time} and {longer}, and a dry cloth over the glass until "
        "the shot. Choose at home."
    ),
    "asked.copy": "Two copies before the card is used again; until then leave the card alone.",
    "asked.no_wait": (
        "Then a shaded section with a longer lens, or a 6-stop ND: {f_number}, ISO 100, {time}. "
        "The contrast stays."
    ),
    "asked.no_wait_bare": (
        "Then a shaded section with a longer lens; in the sun {f_number}, {iso}, {time} is what it "
        "gives. The contrast stays."
    ),
    "asked.support": "Good, that holds it. Timer 2 s, hands off, five frames; keep the sharpest.",
    "asked.plan": (
        "Gladly. Send the way in km and climb, the sunset, the fall's height and your kit: "
        "turn-back time and rough settings come from that."
    ),
    "asked.review": (
        "Gladly, one frame at a time: its settings and what you see, like `1/4 s, f/11, ISO 100, "
        "no texture`; or share the file."
    ),
    "asked.mode": (
        "Dial to M, ISO to its number, focus to manual after focusing; then f-number and time "
        "as I give them."
    ),
}
