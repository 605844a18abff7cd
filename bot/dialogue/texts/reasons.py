"""What `why` says: the formula in words, the numbers put in, the source."""

from __future__ import annotations

from typing import Final

REASONS: Final[dict[str, str]] = {
    "why.share": (
        "Share = speed × time ÷ what the frame covers: {speed} × {time} ÷ {coverage} = {share}."
    ),
    "why.speed.leaf": "Speed {speed}: your timed leaf.",
    "why.speed.mean_fall": "Speed {speed}: mean of a free fall, √(2gh) ÷ 2 (mechanics).",
    "why.speed.foot": (
        "Speed {speed}: near the foot, between drag and free fall (Gunn & Kinzer 1949)."
    ),
    "why.speed.crest": (
        "Speed {speed}: over the lip, √(g × depth) of a shallow creek (own rule); a timed leaf is "
        "better."
    ),
    "why.speed.chute": "Speed {speed}: a chute, √(g × depth) (Chow 1959; Grant 1997).",
    "why.speed.stream_guess": "Speed {speed}: a lively stream (own rule); a timed leaf is better.",
    "why.band": "{look} is {band} of the frame (own rule, set on common practice).",
    "why.f_number": (
        "Depth needs f/{needed} (blur disc: diagonal ÷ 1500), least blur with diffraction at "
        "f/{best}: so {chosen}."
    ),
    "why.assumed_f_number": "You named no f-number, so I took what the depth needs.",
    "why.framing": (
        "{height} seen from {distance}, camera {eye} up: {needed}. {side} mm of sensor ÷ 2 ÷ "
        "tan(half of it): {tight} mm, {spare} mm with 5 % spare."
    ),
    "why.coverage": (
        "{side} mm of sensor × {distance} ÷ {focal} mm = {coverage} along the frame (similar "
        "triangles)."
    ),
    "why.stream_lens": "16 to 24 mm as full frame lets a near rock lead in (common practice).",
    "why.stream_part": "From 70 mm as full frame on, parts of a stream fill it (common practice).",
    "why.by_eye": (
        "24 mm as full frame holds most falls from their pool (common practice); with height and "
        "distance I reckon it."
    ),
    "why.no_climb": "Climb not told: each 100 m of it take 10 min more, before the factor.",
    "why.turn_back": (
        "Sunset {sunset} − {margin} − walk out {out} ({walk}, 5 km/h and 600 m/h, × {factor}). "
        "Naismith's rule; margin and factor: own rule."
    ),
    "why.to_the_right": (
        "As bright as the white water allows: thirds up until patches blink, then back "
        "(common practice)."
    ),
    "why.ladder": (
        "A ladder, because one number never fits all water; the shape is chosen on a large screen "
        "(common practice)."
    ),
    "why.leaf_frame_of": "As bright as your water frame, {settings}: what time loses ISO gives.",
    "why.leaf_frame": (
        "1/125 s holds leaves in a light wind; same brightness by ISO (common practice)."
    ),
    "why.group": (
        "The look is time and coverage, on any format. Depth at the same view: f-number ÷ crop "
        "factor, up to where diffraction softens the format."
    ),
    "why.step": "{step}.",
    "why.frame_none": "No channel is at its end anywhere in the frame.",
    "why.frame_exact": "{share} of the frame has a channel at its end; by how much can't be known.",
    "why.frame": (
        "{share} of the frame has a channel at its end. From a {kind} that is about; "
        "how far over can't be known."
    ),
    "why.raw": (
        "Room by channel, from the sensor's own data: red {red_room}, green {green_room}, blue "
        "{blue_room}; clipped: red {red_clipped}, green {green_clipped}, blue {blue_clipped}."
    ),
    "why.raw_stated": (
        "Room by channel, by the white that the file states: red {red_room}, green {green_room}, "
        "blue {blue_room}; clipped: red {red_clipped}, green {green_clipped}, blue {blue_clipped}."
    ),
    "why.better_time": "At {time} the white holds and strands show; dark is lifted at home.",
}
