"""Lengths as a hundred people tell them: beside heights, tapes, tents, signs and other falls."""

from __future__ import annotations

import pytest

from bot.dialogue.reading import read
from tests.dialogue.test_reading_whose_length import FOOT_M, LENGTHS


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        (
            "evening linn. 22 metres from me to the foot of it, 17 of fall, stone at my knee 60 cm",
            {"distance_m": 22, "fall_height_m": 17, "nearest_m": 0.6},
        ),
        ("we measured with the kids' tape: 9.4 m top to bottom", {"fall_height_m": 9.4}),
        ("I'm perched 3 m above the pool and 25 m from the fall", {"distance_m": 25}),
        ("cable car climbs 400 m, fall itself is 35 m", {"fall_height_m": 35}),
        ("there's a 2 m gap between the rail and the edge, fall is 18 m away", {"distance_m": 18}),
        ("fall's about as high as a double decker, 4.4 m", {"fall_height_m": 4.4}),
        ("gran waits on a bench 15 m from the water, me I'm 30 m off it", {"distance_m": 30}),
        ("first wanted 10 m, spray too bad, backed off to 18", {"distance_m": 18}),
        (
            "cam 4 foot up, falls 60 foot out, nearest root 5 foot",
            {"camera_height_m": 4 * FOOT_M, "distance_m": 60 * FOOT_M, "nearest_m": 5 * FOOT_M},
        ),
        ("across the pool to the fall it's 20 m", {"distance_m": 20}),
        ("boulder field starts at 3 m, cliff ends at 45 m", {"nearest_m": 3, "farthest_m": 45}),
        ("sharp from 1 m to 30 m please", {}),
        (
            "I want sharpness between the fern (70 cm) and the back wall (25 m)",
            {"nearest_m": 0.7, "farthest_m": 25},
        ),
        ("the tree in the middle is 10 m away, fall 16 m away", {"distance_m": 16}),
        ("my lens hood is 10 cm long", {}),
        ("the filter pouch is 20 cm wide", {}),
        ("strap hangs 40 cm down from the tripod", {}),
        ("the next viewpoint is 300 m further down", {}),
        ("not the 80 m one. ours is 12 m tall", {"fall_height_m": 12}),
        ("I read it's 45 m but it looks like 30 m to me", {}),
        ("signpost: waterfall 250 m", {}),
        ("waterfall 250 m on the arrow, 5 minutes", {}),
        ("I'm standing where the path ends, 35 m short of the fall", {"distance_m": 35}),
        ("half a football pitch away, so 50 m", {"distance_m": 50}),
        ("about two buses away from it, 24 m", {"distance_m": 24}),
        ("lens height: two hand widths over the stream, 20 cm", {"camera_height_m": 0.2}),
        ("I splayed the legs, so 25 cm now", {"camera_height_m": 0.25}),
        ("centre column up, that's 1.75 m", {"camera_height_m": 1.75}),
        ("squatting, eye height 1 m", {"camera_height_m": 1}),
        (
            "foreground: 80 cm. main: 15 m. back: 40 m",
            {"nearest_m": 0.8, "distance_m": 15, "farthest_m": 40},
        ),
        ("near 1m / mid 12m / far 35m", {"nearest_m": 1, "farthest_m": 35}),
        (
            "width: 9 m. drop: 6 m. me: 20 m.",
            {"fall_width_m": 9, "fall_height_m": 6, "distance_m": 20},
        ),
        (
            "it's a wide one, 15 m from bank to bank, only 3 m of drop",
            {"fall_width_m": 15, "fall_height_m": 3},
        ),
        ("two drops, 8 m and 5 m", {}),
        ("the upper step is 8 m, lower 5 m, total 13 m", {"fall_height_m": 13}),
        (
            "fallen pine at 4 yards, fall at 30 yards",
            {"nearest_m": 12 * FOOT_M, "distance_m": 90 * FOOT_M},
        ),
        ("the stream's 2 m wide where I am", {"fall_width_m": 2}),
        ("snow wall 3 m high left of the path", {}),
        ("safety line is 10 m back from the edge, I stand on it", {}),
        ("heron at 12 m, fall behind it at 20 m", {"distance_m": 20}),
        ("dog's lead is 5 m, she keeps walking into the frame", {}),
        ("my shadow is 4 m long already", {}),
        ("sun stands two fingers over the ridge, ridge is 600 m away", {"farthest_m": 600}),
        ("path's washed out 30 m before the fall so I stay there, 30 m", {"distance_m": 30}),
        ("I'd guess the drop at 11 m, us at 19", {"fall_height_m": 11, "distance_m": 19}),
        (
            "stood 20 m off, crouched, cam 60 cm over the shingle",
            {"distance_m": 20, "camera_height_m": 0.6},
        ),
        (
            "camera 3 foot off the deck and 45 foot from the water",
            {"camera_height_m": 3 * FOOT_M, "distance_m": 45 * FOOT_M},
        ),
        ("from the railing it is 33 m straight across to the curtain", {"distance_m": 33}),
        ("my tripod plate is at 1.35 m", {"camera_height_m": 1.35}),
        ("sensor's about 70 cm above the stream", {"camera_height_m": 0.7}),
        ("umbrella man stands 10 m from the fall and ruins it", {}),
        ("there's spray up to 15 m out so I'm at 22 m", {"distance_m": 22}),
        ("they closed the last 50 m of the path. I'm 70 m away then", {"distance_m": 70}),
        ("the mist reaches 10 m up", {}),
        ("guide claims 25 m, it's never more than 18 m", {}),
        ("wade 5 m to the rock, then 12 m to the fall", {"distance_m": 12}),
        ("rock 12 m away, tall as me, 1.8 m", {"nearest_m": 12}),
        (
            "it is one hundred and twenty feet tall and we're two hundred feet away",
            {"fall_height_m": 120 * FOOT_M, "distance_m": 60.96},
        ),
        (
            "nearest fern two feet from the lens, farthest ridge a thousand feet",
            {"nearest_m": 2 * FOOT_M, "farthest_m": 304.8},
        ),
        (
            "close: 0.5 m. far: 30 m. fall: in between, 14 m",
            {"nearest_m": 0.5, "farthest_m": 30, "distance_m": 14},
        ),
        ("I only see the upper 6 m of it", {"section_height_m": 6}),
        ("the lower four metres are hidden by trees", {}),
        ("lasered: 41 m to the lip, 38 m to the base", {}),
        ("the bridge I'm on hangs 8 m over the gorge", {}),
        (
            "water's 30 cm deep at my boots, camera 50 cm above it",
            {"water_depth_m": 0.3, "camera_height_m": 0.5},
        ),
        ("tent pole as monopod, 1.3 m", {}),
        (
            "14 metres wide and 4 metres tall, more a weir than a fall",
            {"fall_width_m": 14, "fall_height_m": 4},
        ),
        ("I'm at the 20 m mark on the path", {}),
        ("fall 1 is 8 m, fall 2 is 12 m, I'm at fall 2", {}),
        ("we hiked past a 40 m fall, this one has 9 m", {"fall_height_m": 9}),
        ("tree trunk 30 cm thick at 2 m", {"nearest_m": 2}),
        ("distance: hm, 25 m? no the app says 31 m", {"distance_m": 31}),
        ("height 18 m, sorry, that's the distance", {"distance_m": 18}),
        ("I moved from 20 m to 12 m, better", {"distance_m": 12}),
        ("lowered it from eye height to 40 cm", {"camera_height_m": 0.4}),
        ("the puddle in front is 3 m long, reflects nicely", {}),
        ("drone no. just me 16 m from the falls", {"distance_m": 16}),
        ("wife holds the umbrella 1 m over the camera", {}),
        ("sitting, lens roughly 3 ft", {"camera_height_m": 3 * FOOT_M}),
        ("beach towel's 2 m, fall's 11 m", {"fall_height_m": 11}),
        ("depth's no issue, nothing nearer than 10 m", {"nearest_m": 10}),
    ],
)
def test_what_a_length_measures_is_told_by_its_words(text: str, expected: dict[str, float]) -> None:
    """A wrongly read number is worse than an unread one."""
    told = {name: value for name, value in read(text).known().items() if name in LENGTHS}
    assert told == pytest.approx(expected)
