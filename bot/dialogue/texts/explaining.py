"""What each question of the walk means, for who does not know the word in it."""

from __future__ import annotations

from typing import Final

EXPLAINING: Final[dict[str, str]] = {
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
