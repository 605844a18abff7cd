"""What `why` says: the formula in words, the numbers put in, the source."""

from __future__ import annotations

from typing import Final

REASONS: Final[dict[str, str]] = {
    "why.share": (
        "Share = speed × time ÷ what the frame covers: {speed} × {time} ÷ {coverage} = {share}."
    ),
    "why.speed.leaf": "Speed {speed}: your timed leaf.",
    "why.share_towards": (
        "Share = speed × time × sin of the flow ÷ what the frame covers: {speed} × {time} × "
        "sin {angle} ÷ {coverage} = {share}."
    ),
    "why.speed.mean_fall": (
        "Speed {speed}: mean of a free fall, √(2 × {gravity} × {height}) ÷ 2 (mechanics)."
    ),
    "why.speed.foot": (
        "Speed {speed}: near the foot, √({low} × {high}), with drag and in free fall "
        "(Gunn & Kinzer 1949; the middle: own rule)."
    ),
    "why.speed.crest": (
        "Speed {speed}: over the lip, √(g × depth) of a shallow creek (own rule); a timed leaf is "
        "better."
    ),
    "why.speed.chute": (
        "Speed {speed}: a chute, √({gravity} × {height} deep) (Chow 1959; Grant 1997)."
    ),
    "why.speed.stream_guess": "Speed {speed}: a lively stream (own rule); a timed leaf is better.",
    "why.band": "{look} is {band} of the frame (own rule, set on common practice).",
    "why.depth": (
        "Depth, in mm: {focal} × {focal} ÷ ({near} − {focal}) − {focal} × {focal} ÷ "
        "({far} − {focal}) = {spread}; ÷ 2 ÷ {disc} (blur disc: diagonal ÷ 1500) = "
        "f/{needed} at least."
    ),
    "why.depth_far": (
        "Depth, in mm: {focal} × {focal} ÷ ({near} − {focal}) = {spread}; ÷ 2 ÷ {disc} (blur disc: "
        "diagonal ÷ 1500) = f/{needed} at least."
    ),
    "why.f_number.least_blur": (
        "Least blur with diffraction: √({spread} ÷ 0.00268) = f/{best}, so {chosen} (Hansma 1996)."
    ),
    "why.f_number.depth": (
        "Least blur with diffraction: √({spread} ÷ 0.00268) = f/{best}; the depth wants more: "
        "{chosen} (Hansma 1996)."
    ),
    "why.f_number.format": (
        "Least blur with diffraction: √({spread} ÷ 0.00268) = f/{best}; this format is at its best "
        "from {low} and softens past {limit}, so {chosen} (common practice)."
    ),
    "why.f_number.lens": (
        "Least blur with diffraction: √({spread} ÷ 0.00268) = f/{best}; what the lens can do "
        "decides: {chosen}."
    ),
    "why.f_number.stack": (
        "Past {limit} this format softens; a stack at {chosen} takes {frames} frames, a quarter "
        "of each shared (common practice)."
    ),
    "why.no_near": "Nothing near has to be sharp: {chosen}, where this format is at its best.",
    "why.focus": (
        "Focus = 2 × near × far ÷ (near + far): 2 × {near} × {far} ÷ ({near} + {far}) = {focus} "
        "(optics)."
    ),
    "why.focus_far": "Focus at twice the nearest: 2 × {near} = {focus}, far is infinity (optics).",
    "why.level": (
        "EV set = log2({f_number} × {f_number} ÷ {time} × 100 ÷ {iso}) = {set}. Level = light − "
        "set − filters: {light} (ANSI PH2.7) − {set} − {filters} = {level}."
    ),
    "why.level_estimate": (
        "EV set = log2({f_number} × {f_number} ÷ {time} × 100 ÷ {iso}) = {set}. Level = light − "
        "set − filters: {light} (an estimate) − {set} − {filters} = {level}."
    ),
    "why.diffraction": "Disc of diffraction = 2.44 × 0.55 µm × f-number (Airy): {list}.",
    "why.disc_at": "{f_number} {disc} µm",
    "why.polariser": (
        "{stops} stops (common practice: 1.3 to 2) are 2^{stops} = {factor} times the time: {time} "
        "becomes {longer}."
    ),
    "why.filter_stops": (
        "Each stop of filter doubles the time; a polariser counts {stops} (common practice)."
    ),
    "why.stand_back": (
        "Back = height above the camera × focal ÷ half the side: {above} × {focal} ÷ ({side} ÷ 2) "
        "= {distance} (similar triangles)."
    ),
    "why.heights": "{distance} ÷ {height} = {heights} heights of the fall.",
    "why.assumed_f_number": "You named no f-number, so I took what the depth needs.",
    "why.angle": (
        "Camera {eye} up: top atan({above} ÷ {distance}) = {up}, lowest atan({eye} ÷ {near}) = "
        "{down}; together {needed}."
    ),
    "why.framing": (
        "{side} mm of sensor ÷ 2 ÷ tan({half}) = {tight} mm; × 0.9 for 5 % of air at both ends: "
        "{spare} mm (geometry; the air: own rule)."
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
    "why.turn_back_due": (
        "Back by {sunset} − {margin} − walk out {out} ({walk}, × {factor}); margin and factor: own "
        "rule."
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
