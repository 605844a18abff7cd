"""Answers to what was matched by meaning: topics of the trade, causes, small talk."""

from __future__ import annotations

from typing import Final

#: Rules without a number of the person's own are common practice of the trade's teachers.
ANSWERS: Final[dict[str, str]] = {
    "answer.just_white": (
        "Too bright or too long. If the main water blinks, 2/3 stop less; if not, halve the time."
    ),
    "answer.just_white_now": (
        "{less} if the main water blinks; if not, halve the {time}: water crosses {share} there."
    ),
    "answer.edges": (
        "Look round all four borders before each frame: a step aside or a little zoom clears them."
    ),
    "answer.tilted": (
        "Level by the pool's surface or the camera's level, again after each move of the tripod."
    ),
    "answer.one_frame": (
        "The same frame at {shorter}, {time} and {longer}; choose at home on a large screen."
    ),
    "answer.eye_height": (
        "Try knee height with the legs splayed: a near rock grows and leads in. Then compare."
    ),
    "answer.carrying": (
        "Camera off the tripod and in the bag, both hands free: wet rock slides under the feet."
    ),
    "answer.looking_up": (
        "Look up for loose stones and dead branches before you set up, and again now and then."
    ),
    "answer.focus_on_water": (
        "Foam gives focus no edge. Focus on the rock beside it, then switch to manual."
    ),
    "answer.hunting": "Focus first, switch to manual, then mount the dark filter.",
    "answer.polariser_left": (
        "Polariser off where light is short: {longer} becomes {time}. While on, turn it until the "
        "shine drops, again each time the camera is turned."
    ),
    "answer.wading": (
        "The bank is the safe place. Nobody stands in water above a fall, nor in brown, rising or "
        "fast water; signs and rangers decide."
    ),
    "answer.turn_back_at_once": (
        "At once, uphill and out, gear or no gear: when the water rises, browns, carries wood or "
        "roars, and at the first thunder. What rangers say comes first."
    ),
    "answer.climb": (
        "No: nobody stands on or above the lip, and the rock beside it slides. A longer lens from "
        "the path shows it."
    ),
    # causes without an answer elsewhere
    "cause.iso_raised": "Noise of {iso}: set {base}; on a tripod the time can be longer instead.",
    "cause.iso_raised_plain": (
        "Noise of a raised ISO: set {base}; on a tripod the time can be longer instead."
    ),
    "cause.contrast_too_great": (
        "More contrast than one frame holds: wait for cloud or shade, or two frames by the time. "
        "Water from one frame only."
    ),
    "cause.nd_cast": (
        "The filter's own tint: one frame without it, then match the colours of the others to it."
    ),
    "cause.filter_corners": (
        "Filter rings in the corners: zoom in past 20 mm as on full frame, or take one ring off."
    ),
    "cause.fogged_glass": (
        "Fog on cold glass: warm it in the jacket, don't rub. Seal it in the bag before it comes "
        "into warm air."
    ),
    "cause.stray_light": (
        "Sun on the front glass: shade the lens with the hand or a hat just outside the frame."
    ),
    "cause.low_flow": (
        "Too little water for strands: go near to the strongest thread, or come after rain."
    ),
    "why.practice": "Common practice; the numbers in it are yours where I know them.",
    "why.causes": "Likeliest first: {list}. Weighed from your words and your numbers (own rule).",
    # small talk, and what can't be known
    "talk.robot": (
        "A program, not a person. I reckon and read frames; I see no place and can be wrong."
    ),
    "talk.insult": "Fair enough. Tell me what went wrong and I try again.",
    "talk.rescue": (
        "I can't call anyone. If somebody is in danger, call 112, 911 or the local number now."
    ),
    "talk.weather": (
        "Weather, flow and closures I can't know: ask the forecast and the land manager."
    ),
    "talk.other": "That is beyond me: I know only water, light and cameras.",
    # two causes that are nearly as likely
    "ask.cause": "Two things look like that. Which fits?",
    "ask.cause.first": "{first}",
    "ask.cause.second": "{second}",
    "tells.water_clipped": "the white blinks",
    "tells.contrast_too_great": "white water and black rock at once",
    "tells.time_too_long": "no blinking, but no threads",
    "tells.time_too_short": "drops stand still",
    "tells.underexposed": "all of it is dark",
    "tells.shake": "all of it doubled the same way",
    "tells.focused_wrong": "something else is sharp",
    "tells.near_too_close": "only the near part is soft",
    "tells.diffraction": "evenly soft, f/16 or more",
    "tells.wind_in_leaves": "only leaves are smeared",
    "tells.wet_glass": "round pale discs",
    "tells.fogged_glass": "a veil all over",
    "tells.stray_light": "a veil towards the sun",
    "tells.iso_raised": "grain in the dark parts",
    "tells.sky_gap": "the white is sky",
    "tells.unturned_polariser": "rock and leaves shine",
    # light and wind as they are told
    "light_told.sun": (
        "Sun is the hard case: shade first, else a shaded section, else a 6-stop ND; the contrast "
        "stays."
    ),
    "light_told.by_turns": (
        "Sun and shade mixed is the hardest light: frame now, shoot while cloud covers all of it."
    ),
    "light_told.sun_bare": (
        "Sun is the hard case: shade first, else a shaded section; the contrast stays."
    ),
    "light_told.sun_phone": (
        "Sun is the hard case: wait for shade, or take a part that lies in it; the contrast stays."
    ),
    "light_told.dusk_phone": (
        "Light is short: prop the phone, timer. The time to turn back is past; lamp ready."
    ),
    "light_told.dusk_bare": (
        "Light is short: ISO and time must give it. The time to turn back is past; lamp ready."
    ),
    "light_told.dusk": (
        "Light is short: polariser off, no ND. The time to turn back is past; lamp ready."
    ),
    "wind.lull": "Lulls come every 10 to 60 s: wait with the release in your hand.",
    "wind.calm": "Good: then one frame does for water and leaves.",
    "talk.other_told": "I hear you; my part is water, light and cameras.",
    # good news, pauses, goodbyes
    "aside.good": "Good.",
    "aside.kept": "Good: then {settings} stays.",
    "aside.both_frames": "Good: water and leaves are both taken.",
    "aside.wait": "Good, no hurry. Write when you stand ready or the light has changed.",
    "aside.wait_sun": (
        "Good: shade takes about 3 stops and most of the contrast. Write when it has come."
    ),
    "aside.bye": "Goodbye, and dry feet.",
    "aside.bye_plan": "Good. What you told me is kept: write again at the water and we go on.",
    "aside.bye_kept": (
        "Safe way back. Last settings: {settings}. Copy the files twice before the card is used "
        "again."
    ),
    # causes by name
    "cause_name.time_too_long": "time too long",
    "cause_name.time_too_short": "time too short",
    "cause_name.water_clipped": "water too bright",
    "cause_name.underexposed": "too little light",
    "cause_name.contrast_too_great": "contrast too great",
    "cause_name.mixed_light": "sun and shade mixed",
    "cause_name.iso_raised": "raised ISO",
    "cause_name.automatic_mode": "automatic mode",
    "cause_name.diffraction": "f-number too high",
    "cause_name.shake": "shake",
    "cause_name.focused_wrong": "focus in the wrong place",
    "cause_name.near_too_close": "nearest thing too near",
    "cause_name.wind_in_leaves": "wind in the leaves",
    "cause_name.unturned_polariser": "polariser off or not turned",
    "cause_name.polariser_in_the_dark": "polariser on in dim light",
    "cause_name.nd_cast": "tint of the filter",
    "cause_name.filter_corners": "filter rings",
    "cause_name.cool_white_balance": "white balance too cool",
    "cause_name.wet_glass": "drops on the glass",
    "cause_name.fogged_glass": "fogged glass",
    "cause_name.stray_light": "sun on the glass",
    "cause_name.sky_gap": "gap of sky",
    "cause_name.border_clutter": "things at the border",
    "cause_name.horizon_tilted": "camera not level",
    "cause_name.tilted_camera": "camera tilted up",
    "cause_name.too_wide": "view too wide",
    "cause_name.low_flow": "too little water",
    # what if
    "what_if.look": "Before: {look}, {share} of the frame.",
    "what_if.light_time": "In {light} {time} at {f_number}, {iso}: {look}.",
    "what_if.light": (
        "In {light} {settings} is {stops} {side} than right; {time} is right there: {look}."
    ),
    # the camera's preview overstates by 0.5 to 1 stop against raw: common practice.
    "asked.recover_white": (
        "White clipped in the raw is gone; what only the preview clips, half a stop to one, comes "
        "back. Rather darker: rock can be lifted later."
    ),
    # wheels and menus as most makers have them; ring on the lens for f: common practice
    "asked.find_setting": (
        "Mode dial to M: one wheel turns the time, the other, or with the +/- button held, the f. "
        "ISO and timer: a button or the quick menu. Warnings: the playback menu."
    ),
    "asked.find_setting_phone": (
        "In the camera's manual or pro mode, if it has one. Else hold a finger on the white until "
        "it locks, slide for brightness; timer and long exposure are in its menu."
    ),
    "asked.sharp_check": (
        "Zoom in on the screen to 100 %: nearest rock, rock beside the fall, a far corner. All "
        "crisp: sharp. All soft the same way: it moved. Near or far alone: focus."
    ),
    "asked.meter_after": (
        "Polariser first: on, turned, then meter and focus through it. A dark ND last: focus and "
        "meter without it, then count its stops."
    ),
    # the warning comes from the preview; raw holds more: common practice
    "asked.histogram_trust": (
        "Yes, filter and all. But it shows the JPEG preview: raw often holds 1/2 to 1 stop more. "
        "Look at all three channels, not the average."
    ),
    "asked.save_drops": (
        "Where they lie on plain rock or leaves: clone them out, or take that part from another "
        "frame. Over the strands of the water it shows: then another frame."
    ),
    # own rule: steps die down in some seconds
    "asked.wobbly": (
        "Wait until nobody walks and 5 s more, timer on, several frames; under 1/60 s or off the "
        "planks on firm ground beside the path it is surest."
    ),
    # thick sections first, pushed in, shaken; a drift is seen from first to last frame: common
    # practice
    "asked.sinking": (
        "Feet on rock, not gravel or moss; push each leg in and shake it. A rock that drifts from "
        "first to last frame at 100 % shows a leg that sinks."
    ),
    # near-white looks well on a screen and bare on paper: common practice
    "asked.print_big": (
        "If the rock is crisp at 100 %, print it big. White water prints as bare paper when near "
        "the limit: keep its body at 95 to 98 %, then make a small proof."
    ),
    "asked.clone_sky": (
        "A small corner of sky: crop it, or clone leaves over it. Along the lip that shows: crop "
        "below it, and next time move until leaves cover it."
    ),
    "asked.bracket_or_not": (
        "In shade or under cloud one frame holds it: no. Sun and shade mixed, or sky in it: three "
        "frames, −2, 0, +2 by the time, and all water from one of them."
    ),
    # five minutes at the car, one at the water: common practice of teachers
    "asked.briefing": (
        "Route and times, where nobody stands (lip, above the fall, fast water), pairs, meeting "
        "point, three whistles: come. Who is cold or unsure? Anyone may say no."
    ),
    # a second look after 2 to 7 days, copies first: common practice
    "asked.rejects": (
        "Until the picks are made and copied twice: look again after 2 to 7 days, then delete "
        "what is soft, shaken or wet. Keep one failure that teaches you something."
    ),
    "asked.stabiliser_seen": (
        "It may: look at a rock at 100 %. Doubled or soft edges in rock and water alike: it "
        "wandered. Crisp rock: no harm done. Next time off on the tripod."
    ),
    "asked.gardening": (
        "Let it grow: move 10 to 30 cm, zoom, or hold the twig aside for the shot. Nothing broken "
        "off, pulled out or rolled."
    ),
    "asked.people": (
        "One still person on the path or behind the rail gives scale; nobody on wet rock, at the "
        "foot or the lip. Others in it: wait for a gap, or take a section."
    ),
    # two metres from any edge: own rule.
    "asked.keep_back": (
        "2 m (6 ft) from any edge of soil or ledge: banks can be hollow below. On wet rock try "
        "each step first; signs and rails decide."
    ),
    "asked.dry_gear": (
        "Bag open, cloths out, glass wiped and left to air, tripod rinsed with its legs apart. Not "
        "on a heater."
    ),
    "asked.foreground": (
        "Camera at knee height, nearer to one rock with a clear outline, 16 to 24 mm on full "
        "frame; see that the fall still counts."
    ),
    "asked.lip_word": (
        "The lip is the upper edge over which the water drops: the top of the fall in the picture. "
        "On foot nobody goes there."
    ),
    "asked.how_much_darker": (
        "Dots: not at all. Patches in the water: 1/3 to 2/3 stop. A whole sheet: one stop. Then "
        "look again."
    ),
    "asked.rain_now": (
        "A little rain harms few cameras, and rock goes dark: cover, wipe, shoot, cover; change no "
        "lens. If the creek rises or turns brown: up and out at once."
    ),
    "asked.rising_signs": (
        "Rising, brown, twigs and leaves on it, a new roar, thunder upstream: up and out at once. "
        "Mark a stone at the edge, look every 15 min."
    ),
    # One per idea, at most three of a fall; days cure the bias of what was hard to get (common
    # practice).
    "asked.keep_few": (
        "One per idea, at most three of a fall. Sort out the soft and shaken today; choose among "
        "the rest after a few days, on a large screen."
    ),
    # Every 45 to 60 min; late by 10 and by 15 min (common practice, the minutes are an own rule).
    "asked.head_count": (
        "Every 45 to 60 min at one dry place that all can see: count aloud, by name. 10 min late: "
        "the buddy asks; 15: the leader looks, the others stay together."
    ),
    # what words alone ask
    "asked.stops_between": "{stops}: one stop is twice the light, or half.",
    "asked.seconds": "{time} s is {seconds} s.",
    "asked.focus_phone": "Tap the rock beside the water and hold until it locks.",
    # Up to 3 stops, as where the white is exposed for (common practice).
    "asked.lift_rock": (
        "Lift the shadows at home: up to about 3 stops at base ISO stays clean, and the water "
        "stays as it is. On site: expose for the water."
    ),
    "asked.cannot_move": (
        "Then stay: zoom in, tilt, or turn the frame, and crop at home. What the edge cuts is cut "
        "on purpose; no step over a fence or barrier."
    ),
    # Room at the borders as before the frame is taken (common practice).
    # what stands at a border is moved out of the frame before it is cut off: common practice
    "asked.crop_or_move": (
        "Move: 10 to 30 cm, or zoom in a little. Crop only where neither goes; leave 3 to 5 % of "
        "air around the fall."
    ),
    "asked.crop": (
        "Yes, crop at home: leave 3 to 5 % of air around the fall. It costs pixels only."
    ),
}
