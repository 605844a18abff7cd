"""What is said on the walk: questions, answers of the seven steps, levers and their prices."""

from __future__ import annotations

from typing import Final

WALK: Final[dict[str, str]] = {
    # arrive
    "caution.arrive": (
        "Wet rock and moss slide even where they look dry; nobody on or above the lip. "
        "Signs, closures and rangers come first."
    ),
    "caution.arrive_short": "Wet rock slides; nobody on or above the lip; signs and rangers first.",
    # Traction on ice, nobody below icicles, batteries warm: common practice.
    "caution.ice": (
        "Ice: traction on before the next step, nobody under hanging ice; batteries and phone "
        "inside the jacket."
    ),
    "arrive.offer": (
        "For a turn-back time send `3 km walk out, 150 m climb, sunset 18:40`, or your location."
    ),
    "arrive.offer_feet": (
        "For a turn-back time send `2 miles out, 500 ft climb, sunset 18:40`, or your location."
    ),
    "ask.geometry": (
        "How tall is the fall, how far are you, what is nearest? "
        "Like `12 m tall, 18 m away, rock at 1.5 m`"
    ),
    "ask.geometry_feet": (
        "How tall is the fall, how far are you, what is nearest? "
        "Like `40 ft tall, 60 ft away, rock at 5 ft`"
    ),
    "ask.height": "How tall is the fall? Like `12 m tall`, or `stream` if the water only runs.",
    "ask.height_feet": (
        "How tall is the fall? Like `40 ft tall`, or `stream` if the water only runs."
    ),
    "ask.distance": "How far are you from the water you want? Like `18 m away`",
    "ask.distance_feet": "How far are you from the water you want? Like `60 ft away`",
    "ask.nearest": (
        "What is the nearest thing that must be sharp? Like `rock at 1.5 m`, or `skip`."
    ),
    "ask.nearest_feet": (
        "What is the nearest thing that must be sharp? Like `rock at 5 ft`, or `skip`."
    ),
    "ask.stream": (
        "How far is the water, what is nearest, how fast does a leaf go? "
        "Like `3 m away, rock at 1 m, leaf 3 m in 2 s`"
    ),
    "ask.stream_feet": (
        "How far is the water, what is nearest, how fast does a leaf go? "
        "Like `10 ft away, rock at 3 ft, leaf 10 ft in 2 s`"
    ),
    "ask.water_speed": (
        "Time a leaf: how many seconds for how far? Like `leaf 3 m in 2 s`, or `skip`."
    ),
    "ask.water_speed_feet": (
        "Time a leaf: how many seconds for how far? Like `leaf 10 ft in 2 s`, or `skip`."
    ),
    "ask.walk_out": "How long is the walk out? Like `3 km, 150 m climb, sunset 18:40`, or `skip`.",
    "ask.walk_out_feet": (
        "How long is the walk out? Like `2 miles, 500 ft climb, sunset 18:40`, or `skip`."
    ),
    "arrive.turn_back": "Turn back by {time}, however good the light is.",
    "arrive.turn_back_past": "Your turn-back time was {time}: pack up and walk out now.",
    "arrive.sunset": "Sunset {time}.",
    "arrive.sunset_missing": (
        "For the turn-back time I still need the sunset: `sunset 18:40`, or share your location."
    ),
    "arrive.no_sunset_yet": (
        "If the sun sets before {latest}, earlier: send `sunset 18:40`, or your location."
    ),
    "arrive.way_missing": (
        "Back by {back}, noted. For the turn-back time I still need the way in minutes, or "
        "`3 km walk out, 150 m climb`."
    ),
    "arrive.no_sunset": "No sunset there today; tell me when you want to be out: `sunset 18:40`.",
    "arrive.place_kept": "Your position is noted for an emergency and for the sunset only.",
    "timer.turn_back_soon": (
        "15 minutes to your turn-back time, {time}: last frame, count the gear."
    ),
    "timer.turn_back_soon_late": (
        "This reminder is {late} late: {left} to your turn-back time, {time}. Count the gear, go."
    ),
    "timer.turn_back_now_late": (
        "This reminder is {late} late: your turn-back time was {time}. Leave now. Count people "
        "and gear."
    ),
    "timer.turn_back_long_past": (
        "This reminder is {late} late: your turn-back time was {time}. Anyone still out: together, "
        "lamps on, on the path; unsure, call the emergency number."
    ),
    "timer.turn_back_now": "Turn-back time {time}: leave now, in the light. Count people and gear.",
    # kit
    "ask.kit": (
        "Which camera and lenses? Like `full frame, 16-35 and 24-105, tripod, polariser`, "
        "or just `phone`."
    ),
    "ask.format": "Which sensor has your camera?",
    "ask.format.full_frame": "full frame",
    "ask.format.aps_c": "APS-C",
    "ask.format.four_thirds": "four thirds",
    "ask.format.one_inch": "1-inch",
    "ask.format.phone": "a phone",
    "ask.lenses": "Which lenses are with you? Like `16-35 and 24-105`",
    "ask.focal": "Which focal length is set? Like `24 mm`",
    "ask.other_lens": "Which lens or focal length is on now? Like `70-200` or `100 mm`",
    # the water
    "water.free_drop": (
        "I reckon with a free drop, {speed} on average: over rock it runs slower, and the same "
        "look takes a little longer."
    ),
    # lens
    "ahead.focal": "{focal}, {form}: that holds the whole fall with 5 % to spare.",
    "ahead.depth": "{f_number}, focus at {focus}: sharp from {near} to {far}.",
    "ahead.times": "{look} there from {short} to {long}; begin with {aim}.",
    "ahead.times_up_to": "{look} there up to {long}; begin with {aim}.",
    "ahead.times_from": "{look} there from {short} on; begin with {aim}.",
    "lens.level": "{focal}, {form}, camera level: the whole fall with {spare} to spare.",
    "lens.tilted": "{focal}, {form}, tilted {tilt}: the whole fall with {spare} to spare.",
    "lens.tight": "{focal}, {form}, tilted {tilt}: the whole fall, just; watch the edges.",
    "tilt.up": "{angle} up",
    "tilt.down": "{angle} down",
    "lens.yours": "Your {lenses} does it.",
    "lens.set_fits": "Your {focal} holds the whole fall, {form}.",
    "lens.set_too_long": "Your {focal} cuts the fall: {needed} would hold all of it from there.",
    "lens.near_out": (
        "{focal}, {form}, tilted {tilt}: the whole fall, but the rock at {near} stays "
        "outside; all of it takes {needed}."
    ),
    "lens.lower": "Camera low, about {height} up: that brings the near rock in.",
    "lens.wider_for_depth": (
        "Wider than the fall needs: one frame then holds what is {near} off sharp, too."
    ),
    "lens.set_too_deep": "At {focal} one frame would hold what is {near} off sharp, too.",
    "lens.level_crop": "Or keep it level: the top still fits, and the ground is cropped at home.",
    "lens.lean": "Tilted up, walls lean in: from {distance} back a level camera holds the top.",
    "lens.lean_or_level": "Tilted up, walls lean in: level at {focal} the top fits too.",
    "lens.stream": "{focal}, {form}, low: the near rock leads in. It shows {coverage} of the flow.",
    "lens.stream_part": "{focal}, {form}: it shows {coverage} of the flow. Leave out what is busy.",
    "lens.section": "{focal}, {form}: it shows a section of {section}. Choose the best ledge.",
    "lens.by_eye": "{focal}, {form}: zoom until all of it fits with a little air around.",
    "ask.too_near": (
        "From there the fall needs {needed}; your widest, {widest}, shows {section} of it."
    ),
    "ask.too_near.farther": "go back to {distance}",
    "ask.too_near.farther.tap": "back to {distance}",
    "ask.too_near.section": "take a section",
    "ask.section": "How much of the fall shall the frame show? Like `4 m`",
    "ask.section_feet": "How much of the fall shall the frame show? Like `12 ft`",
    "lens.go_back": "Only where path and signs allow. Tell me the new distance when you stand.",
    "form.portrait": "portrait",
    "form.landscape": "landscape",
    # composition
    "ask.top": "Look along the top edge.",
    "ask.top.covered": "leaves or rock",
    "ask.top.sky": "white sky",
    "nearest.how_far": "How far is it from the camera? A guess in steps is enough.",
    "ask.top.lip": "the lip touches the edge",
    "ask.top.lip.tap": "lip touches the edge",
    "ask.sides": "Now the sides and corners:",
    "ask.sides.clean": "clean",
    "ask.sides.twig": "a twig or trunk comes in",
    "ask.sides.twig.tap": "twig or trunk enters",
    "ask.sides.bright": "something bright",
    "ask.light": "The light on the water:",
    "ask.light.sun": "full sun",
    "ask.light.cloud": "cloud or open shade",
    "ask.light.cloud.tap": "cloud or shade",
    "ask.light.trees": "under trees",
    "ask.light.dark": "deep or dark",
    "ask.anchor": "The bottom third:",
    "ask.anchor.clear": "one clear rock or log",
    "ask.anchor.clear.tap": "clear rock or log",
    "ask.anchor.none": "nothing near",
    "ask.anchor.cut": "cut by the edge",
    "top.sky": (
        "White sky will be the brightest thing in the picture. "
        "Move until leaves cover it, or tilt down and let the lip go."
    ),
    "edges.noted": "Good, that edge is checked.",
    "top.lip": "Touching looks like a mistake: give the lip 3 to 5 % of air, or cut it on purpose.",
    "sides.twig": "Move 10 to 30 cm, or zoom in a little; keep it only if you mean it.",
    "sides.twig_feet": "Move 4 to 12 inches, or zoom in a little; keep it only if you mean it.",
    # Common practice: algae is as slick as ice.
    "sides.slick": (
        "Don't step there: algae and wet stone are slick as ice. Zoom in a little instead, or "
        "leave it in."
    ),
    "sides.bright": "Bright at a corner pulls the eye hardest: move, zoom, or crop it off.",
    "anchor.none": "Go lower, or bring one rock with a clear outline into the bottom third.",
    "anchor.cut": "Step back or tilt down until its outline is whole, clear of the edge.",
    # base
    "base.settings": "{settings}{filters}. Focus at {focus}.",
    "base.settings_no_focus": "{settings}{filters}. Focus on the rock beside the water.",
    "base.stack": (
        "{settings}{filters}. Too near for one frame: {frames} frames, focus from {near} to {far}."
    ),
    "base.stack_too_many": (
        "{settings}{filters}. Focus at {far}: the rock at {near} stays soft, so step back from it "
        "or go wider."
    ),
    "base.phone": (
        "{settings}{filters}, phone propped on rock or bag. Tap the rock beside the water to focus."
    ),
    "base.polariser": ", polariser turned until the rock stops shining",
    "base.offer_polariser": (
        "Rock or leaves shine? `polariser on`, turned until they stop: about 1.7 stops, {time} "
        "becomes {longer}."
    ),
    "base.leave_polariser": "Leave the polariser off: in {light} it takes light that you need.",
    "base.polariser_off": ", take the polariser off",
    "base.bare": ", no filter",
    "base.nd": ", {stops}-stop ND on",
    "base.nd_off": ", take the ND off",
    "base.tripod": "Timer 2 s, stabiliser off. Take one.",
    "base.no_tripod": "No tripod: rest it on rock or bag, timer 2 s, stabiliser on, take five.",
    "base.rested": "Rested like that: timer 2 s, hands off, five frames; keep the sharpest.",
    "base.manual": "Turn the dial to M, ISO to its number, not to automatic; timer 2 s. Take one.",
    "base.phone_take": (
        "Manual or long-exposure mode if it has one, timer on. Take one, zoom in: "
        "pure white counts as blinking."
    ),
    "base.phone_average": (
        "Longer: {frames} frames averaged make about {time}; long-exposure mode does that. Timer "
        "on. Zoom in: pure white counts as blinking."
    ),
    # Common practice: a stop is twice the time, or twice the ISO.
    "light_changed.darker": (
        "Meter again: each stop darker doubles the time, {time} becomes {then}; or {iso}. Tell me "
        "by how many stops it got darker, or the light by its name."
    ),
    "light_changed.brighter": (
        "Meter again: each stop brighter halves the time, {time} becomes {then}. Tell me by how "
        "many stops it got brighter, or the light by its name."
    ),
    "base.level_ok": "In {light} that is about right on the meter.",
    "base.level_at_least": (
        "Your last frame was darker than can be told: this may be too dark still."
    ),
    "base.light_untold": "Light not told: name it, like `overcast`, and the time follows.",
    "base.borders_first": "First look round all four borders.",
    "base.by_turns": "Sun by turns: shoot while cloud covers all of it; sun is about 3 stops more.",
    "base.level_over": "In {light} it stays about {stops} too bright: {others}.",
    "base.bright_gives": "In {light} no longer time fits: {look}. For {wished} water: {others}.",
    "base.level_over_phone": (
        "In {light} one frame gives no longer time: for {wished} water take the long-exposure "
        "mode, or wait for less light. Zoom in: pure white counts as blinking."
    ),
    "base.level_over_dusk": (
        "In {light} no longer time fits yet: {look}; the light falls by itself, minute by minute."
    ),
    "base.dark_gives": "In {light} no shorter time fits: {look}. For {wished} water: {others}.",
    "base.level_under": "In {light} it stays about {stops} too dark: {others}.",
    "ask.blink": "Does the main water blink?",
    "ask.blink.nothing": "no",
    "ask.blink.dots": "dots",
    "ask.blink.patches": "patches",
    "ask.blink.sheet": "all of it",
    "ask.blink_again": "Take it. Blinking now?",
    "ask.blink_again.nothing": "no",
    "ask.blink_again.dots": "dots",
    "ask.blink_again.patches": "patches",
    "ask.blink_again.sheet": "all of it",
    # highlights
    "highlights.brighter": "Nothing lost: there is room. Next: {settings}, {stops} brighter{look}.",
    "highlights.more_by_iso": "More only by ISO: lift it at home, or say `too dark`.",
    "highlights.brighter_lamp": "There is room. Next: {settings}, {stops} brighter{look}.",
    "highlights.back": "That was the edge. Back to {settings}: {look}.",
    "highlights.dots": "Dots are sparkle, fine. {settings} holds the white: {look}.",
    "highlights.held": "The white holds. {settings}: {look}.",
    "highlights.held_own": (
        "The white holds: keep {settings}: {look}. Up to a third more light may still fit."
    ),
    "highlights.held_by_iso": (
        "The white holds. {settings}: {look}. More only by ISO: lift it at home, or say `too dark`."
    ),
    "highlights.far_brighter": "Too dark. Next: {settings}, {stops} brighter{look}.",
    "highlights.darker": "Patches are lost texture. Next: {settings}{look}.",
    "highlights.heard": "Heard: patches. Next is still {settings}.",
    "highlights.much_darker": "All of it is lost texture. Next: {settings}{look}.",
    "highlights.look": "; still {look}, water crosses {share} of the frame",
    "highlights.look_now": "; now {look}, water crosses {share} of the frame",
    "highlights.look_whole": "; still {look}, water runs through the whole frame",
    "highlights.look_now_whole": "; now {look}, water runs through the whole frame",
    "highlights.look_usual": "; still {look} for a usual view",
    "highlights.look_now_usual": "; now {look} for a usual view",
    "highlights.shade_holds": (
        "Wait for the cloud: in its shade {settings} holds the white. Sun is about 3 stops more."
    ),
    "highlights.sun_on_part": (
        "Sun on a part of it: wait until cloud or shade covers all, then {settings} again."
    ),
    "highlights.sun_is_more": "Sun is about 3 stops more. Or frame a shaded section.",
    "highlights.sky": (
        "Only sky blinks: the water holds. Move or tilt until leaves cover the gap, "
        "or bracket with the time: one darker frame for the sky."
    ),
    "ask.sky_gap": "What will you do?",
    "ask.sky_gap.moved": "moved, new frame",
    "ask.sky_gap.bracket": "bracket it",
    "highlights.bracket": (
        "Bracket: {settings} for the water, {darker} for the sky, all else fixed."
    ),
    "highlights.meter_under": (
        "{stops} under on the meter is right for white water: keep {settings}."
    ),
    # adjust
    "adjust.next": "Next: {settings}{look}.",
    "adjust.by_hand": (
        "{time} is about the most that hands hold. On a wall, bag or bench, timer on: {longer}."
    ),
    "adjust.keep": "Keep {settings}{look}.",
    "adjust.cant": "{settings} is the nearest: still {stops} too {side}.",
    "adjust.light_gives": "The light gives {settings}{look}.",
    "adjust.beyond_light": "{time} is still {stops} too {side}: {others}.",
    "adjust.for_look": "For {look} water instead: {others}.",
    "adjust.beyond": "For the rest: {others}.",
    "adjust.how": "{steps}.",
    "adjust.shorter_next": "Still mush? Then {time}.",
    "adjust.longer_next": "Still frozen? Then {time}.",
    "adjust.not_the_time": "{time} is short enough: {look}.",
    "adjust.what_else": (
        "Rock beside it soft too: shake, focus or wet glass. Rock sharp, water white: too bright."
    ),
    "adjust.path": "In steps: {path}.",
    "adjust.or_darker": "Or keep {settings}: {stops} darker.",
    "adjust.instead": "Instead: {others}.",
    "phone.no_warning": (
        "Good. A phone shows no such warning: zoom in, the white should keep its lines."
    ),
    "plain.holds": "Then the white holds.",
    # without numbers: a stop of time, two thirds of light (common practice)
    "plain.no_texture": "Too long: halve the time, again if it is still milk.",
    "plain.too_frozen": "Too short: double the time, again if it is still hard.",
    "plain.just_white": "Too much light: one stop less, then look at the white again.",
    "plain.too_bright": "Too much light: one stop less, then look at the white again.",
    "plain.too_dark": "Too little light: one stop more, until the white begins to blink.",
    "phone.darker": "Tap the white water until it locks, slide the brightness down a stop.",
    "phone.brighter": "Tap the white water until it locks, slide up while it keeps its lines.",
    "phone.shorter": (
        "Night mode and long exposure off, and brighter light: a phone makes its time by itself."
    ),
    "phone.longer": ("Long exposure or night mode on, phone propped on rock or bag, timer 3 s."),
    "phone.kept": "Keep it. Take a second one a little darker; choose at home.",
    "ask.phone_again": "Take it again. What is wrong now?",
    "ask.phone_again.nothing": "nothing",
    "ask.phone_again.white": "still white",
    "ask.phone_again.dark": "too dark",
    "ask.phone_again.mush": "no texture",
    "ask.strength": "How strong is the filter? Like `6-stop ND on`",
    "ask.settings": "Which settings gave that frame? Like `f/11, 1/4 s, ISO 100`",
    "ask.seen": "What is wrong with it?",
    "ask.seen.no_texture": "no texture",
    "ask.seen.too_white": "too white",
    "ask.seen.too_dark": "too dark",
    "ask.seen.soft": "soft",
    "ask.seen.nothing": "nothing",
    "look.frozen": "frozen",
    "look.crisp": "crisp",
    "look.textured": "textured",
    "look.silky": "silky",
    "look.misty": "misty",
    "side.bright": "bright",
    "side.dark": "dark",
    "over": "over",
    "under": "under",
    # keep
    "keep.all_sharp": "Good: sharp where it counts.",
    "keep.ladder": "Now the ladder, same frame: {ladder}. Choose at home.",
    "ask.leaves": "Do the leaves move?",
    "ask.leaves.no": "no",
    "ask.leaves.yes": "yes",
    "keep.leaf_frame": (
        "Leaf frame: {settings}, same brightness, touch nothing else. Five to ten, in a lull."
    ),
    "keep.leaf_frame_dark": (
        "Leaf frame: {settings}, {stops} darker: lift it at home; or {time}, as bright, in a lull."
    ),
    "keep.check": "At 100 %: nearest rock, rock beside the fall, a far corner, drops on the glass.",
    "ask.next": "What next?",
    "ask.next.again": "another frame here",
    "ask.next.other_lens": "another lens",
    "ask.next.finish": "finish",
    "keep.log_line": (
        "Note: {settings}, kept here. Copy the files twice before the card is used again."
    ),
    "keep.finished": (
        "Walk closed, your kit is kept. `start` opens the next. Walk out with dry hands."
    ),
    # what is meant by a question
    "explain.geometry": (
        "Guessed is enough: a person is 1.7 m, five of them stacked are 8.5 m; a long step is 1 m."
    ),
    "explain.nearest": "The closest rock or plant that shall be sharp, measured from the camera.",
    "explain.water_speed": (
        "Drop a leaf in and count the seconds for 3 m: that tells how long the time may be."
    ),
    "explain.kit": "The camera, and the numbers on the lens: `18-55` is enough to begin.",
    "explain.format": (
        "The size of the sensor. Kit zoom 18-55 or 16-50: APS-C; 14-42: four thirds; 24-70 or "
        "28-70: full frame. Unsure: `skip`."
    ),
    "explain.lenses": "The numbers in mm on the lens: `18-55` is a zoom, `35` a fixed one.",
    "explain.focal": "The number on the zoom ring that stands at the mark: `24` is 24 mm.",
    "explain.top": "Look through the finder along the upper edge: what lies right at the border?",
    "explain.sides": "Look along left, right and into the corners: what pokes in, what shines?",
    "explain.anchor": "Something near and whole at the bottom that holds the eye: a rock, a log.",
    "explain.blink": (
        "Play the frame back with the highlight warning on: pure white blinks. No warning? Zoom "
        "in: water without lines counts as blinking."
    ),
    "explain.settings": "Play the frame back with its data: f-number, time and ISO stand there.",
    "explain.seen": "Zoom in on the water: lines are texture, milk is none; then at the rock.",
    "explain.leaves": "Leaves in the wind of the fall smear; a second, short frame holds them.",
    "explain.any": "A number from the list is enough; `skip` leaves it out.",
}
