"""Words of the trade explained in a sentence each."""

from __future__ import annotations

from typing import Final

#: All of it common practice; the polariser's cost as in `core.camera`.
TERMS: Final[dict[str, str]] = {
    "term.nd": (
        "A grey filter: it takes light, so the time can be longer. 3 stops (ND8) make it 8 times "
        "as long, 6 stops (ND64) 64 times."
    ),
    "term.polariser": (
        "A filter that you turn: it takes the shine off wet rock and leaves, and about 1.7 stops "
        "(1.3 to 2) of light. Nothing replaces it later; it works without, too."
    ),
    "term.diffraction": (
        "Light spreads at a small opening, so all of it goes softer: on this format past {limit}."
    ),
    "term.diffraction_phone": (
        "Light spreads at a small opening, so all of it goes softer. A phone's opening is fixed."
    ),
    "term.iso": (
        "How much the camera amplifies: twice the ISO is one stop brighter, with more grain. On a "
        "support the lowest."
    ),
    "term.f_number": (
        "The opening of the lens: a larger number is a smaller hole, so less light and more depth. "
        "f/8 to f/11 is one stop less light."
    ),
    "term.stop": "Twice the light, or half: 1/4 to 1/2 s, ISO 100 to 200, f/11 to f/8.",
    "term.histogram": (
        "How many pixels are how bright, dark left, bright right. Piled up at the right-hand edge "
        "is white without texture."
    ),
    "term.blink": (
        "Most cameras flash pure white when a picture is played back. Dots are sparkle; patches in "
        "the main water are lost texture. No warning: zoom in and look."
    ),
    "term.bracket": (
        "The same frame several times, darker and brighter (−2, 0, +2 stops by the time), joined "
        "at home."
    ),
    "term.long_exposure": (
        "Time in which moving water flows together. A phone's mode averages many short frames: "
        "the rock stays sharp if it is propped."
    ),
    "term.stack": (
        "Several frames, each focused a little farther, joined at home: sharp from the near rock "
        "to the far wall."
    ),
    "term.depth": (
        "How far it looks sharp from near to far: more with a larger f-number, a wider lens, or "
        "the near rock farther off."
    ),
    "term.shutter": (
        "How long the light comes in. For a usual fall 1/500 s freezes drops, 1/8 to 1/3 s keeps "
        "strands, 1 s smooths them."
    ),
    # the bands of `core.water`, in words
    "term.look": (
        "How long the water's streaks are: crisp, short trails; textured, strands that you can "
        "follow, 1 to 10 % of the frame; silky, soft veils; misty, all fog."
    ),
    "term.clipped": (
        "White beyond what the file holds: plain paper without lines. Dots of it are sparkle; in "
        "the main water take 1/3 to 2/3 stop less light."
    ),
    "term.burst": (
        "Many frames in a row while the finger stays on the button: the sharpest is kept, or they "
        "are averaged into soft water."
    ),
    "term.hyperfocal": (
        "The distance at which to focus so that all from half of it to the far wall looks sharp; "
        "twice the nearest rock comes to the same."
    ),
    "term.format": (
        "The size of the sensor: APS-C is smaller than full frame, so there 18 mm shows what 27 mm "
        "shows on full frame."
    ),
    "term.focal": (
        'How much a lens takes in: 24 mm most of the scene, 100 mm a small part. "As full frame" '
        "compares cameras."
    ),
    "term.ladder": (
        "The same frame at several times, each twice the last; you choose at home on a large "
        "screen."
    ),
    # what stands in Linn's own lines; the bands of the share as in `core.water`
    "term.share": (
        "How far the water runs while the shutter is open, as part of the picture's side: to 1 % "
        "crisp, to 10 % textured strands, to 35 % silky, above that misty."
    ),
    "term.meter": (
        "With these settings the camera's needle stands near its middle in that light. White water "
        "can still be too bright: play the frame back, and look whether it blinks."
    ),
    "term.last_frames": (
        "What your frames and their blinking have shown of the light; it counts more than the word "
        "for the weather."
    ),
    "term.letters": (
        "Each outlined area in the marked picture has a letter; the line with that letter says "
        "what it is, and how much of the frame."
    ),
    "term.sparkle": (
        "Tiny points where wet rock or drops mirror the light: they may be pure white, no texture "
        "is lost there."
    ),
    "term.leaf_frame": (
        "A second frame at a short time, for the leaves alone: at home its sharp leaves are laid "
        "over the blurred ones."
    ),
    "term.turn_back": (
        "The clock time at which you turn round, however good the light is, so that you are out "
        "before dark: it follows from sunset and the way."
    ),
    "term.tilt": (
        "How far the camera looks up from level. Level keeps trees and walls upright; tilted up, "
        "they lean in."
    ),
    "term.spare": (
        "So much of the picture's side is left beside the whole fall: room to straighten it later."
    ),
    "term.nearest": (
        "The thing closest to the camera that shall be sharp, mostly a rock in front: its distance "
        "sets f-number and focus."
    ),
    "term.overcast": (
        "Cloud over the whole sky, no shadows. Bright where it dazzles, heavy where it is dull: "
        "soft light, good for white water."
    ),
    "term.focal_phone": (
        "What your phone takes in, told as on a full-frame camera: 26 mm is 1x, its usual camera "
        "unzoomed; 13 mm is 0.5x, 78 mm is 3x."
    ),
}
