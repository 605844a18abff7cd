"""What is said and asked from the kit to the borders: lens, place, light, composition."""

from __future__ import annotations

from typing import Final

FRAMING: Final[dict[str, str]] = {
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
}
