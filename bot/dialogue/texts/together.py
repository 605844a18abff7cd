"""What is said of frames measured together, of averages, of other times, and of the grid."""

from __future__ import annotations

from typing import Final

TOGETHER: Final[dict[str, str]] = {
    # what is missing
    "together.two_needed": "That takes two frames of one view: share both, then `compare`.",
    "together.alike_needed": (
        "That takes two or more frames of one view and one time. Share them, then `average`, "
        "or say how many: `average 4`."
    ),
    "together.one_needed": "That takes a frame: share one first.",
    "together.failed": "I could not measure those frames together.",
    "together.left_out": "{number} of them can't be read.",
    "together.offer": "Same view as your last? `compare` lays them on each other.",
    "together.ended": "Stopped measuring.",
    "together.ended_before": "That is measured already. `stop` ends the walk.",
    "together.frame": "{letter} ({time})",
    "together.frame_untimed": "{letter}",
    # two frames and more
    "compared.share": ("Take {frame}: {look} by your numbers, water crosses {share} of the frame."),
    "compared.seen": "Take {frame}: its water looks {look}.",
    "compared.smoothest": "For {look} take {frame}: its water is the smoothest of them.",
    "compared.crispest": "For {look} take {frame}: its water is the crispest of them.",
    "compared.between": "For {look} take {frame}, between the crispest and the smoothest.",
    "compared.too_short": "By your numbers none is {look} yet; {frame} comes nearest. {go}.",
    "compared.too_long": "By your numbers none is {look}; {frame} comes nearest. {go}.",
    "compared.too_short_seen": (
        "By the pictures alone none is {look} yet; {frame} comes nearest. {go}."
    ),
    "compared.too_long_seen": "By the pictures alone none is {look}; {frame} comes nearest. {go}.",
    "compared.go.too_short": "Go longer{time}",
    "compared.go.too_long": "Go shorter{time}",
    "compared.go.too_short_then": "Next time go longer{time}",
    "compared.go.too_long_then": "Next time go shorter{time}",
    "compared.try": ": {time}",
    "compared.alone": "Only {frame} can be judged: the others are not of its view.",
    "compared.alike": "The water is alike in all of them; {frame} is the better one otherwise.",
    "compared.no_water": "I find no water to compare. `grid` shows the cells to name it by.",
    "compared.same": "{first} and {second} are one and the same picture.",
    "compared.order": "Crispest to smoothest: {frames}.",
    "compared.misfit.other_view": (
        "{second} is not the view of {first}, so I can't lay one on the other."
    ),
    "compared.misfit.other_shape": (
        "{second} is cropped or turned against {first}, so I can't lay one on the other."
    ),
    "compared.misfit.few_marks": (
        "Too little stands still in {first} and {second} to lay one on the other."
    ),
    "compared.drops": (
        "But both are soft at the same spots: drops on the front glass? Wipe it, look at 100 %."
    ),
    "compared.caveat.clipped": "{letter}: more of its white is lost than needs be.",
    "compared.caveat.leaves_moved": "{letter}: its leaves moved.",
    "compared.caveat.still_parts_soft": "{letter}: its rock is softer than in another.",
    "compared.caveat.look_not_sure": "{letter}: how it looks I can't be sure of; judge by eye.",
    "compared.leaves_from": "Leaves sharper in {letter}: take them from there.",
    "compared.disagree": (
        "{second} is {measured} {first}, by its settings {stated}: did the light or a filter "
        "change?"
    ),
    "compared.brighter": "about {stops} brighter than",
    "compared.darker": "about {stops} darker than",
    "compared.as_bright": "as bright as",
    "compared.stated_brighter": "{stops} brighter",
    "compared.stated_darker": "{stops} darker",
    "compared.stated_same": "the same",
    "compared.leaf.good": "Leaf frame {leaf}: leaves sharp, as bright as {main}.",
    "compared.leaf.moved": "Leaf frame {leaf}: its leaves moved too. Shorter, or wait for a lull.",
    "compared.leaf.darker": "Leaf frame {leaf}: leaves sharp; lift it by about {stops} at home.",
    "compared.leaf.brighter": "Leaf frame {leaf}: leaves sharp; darken it about {stops} at home.",
    "compared.gap": "Between {crisper} and {smoother} nothing is taken yet: {time} would be.",
    "compared.gap_then": "Next time take {time} too, between {crisper} and {smoother}.",
    "why.compared.suited": "For {look} water: {letter}.",
    "why.compared.share": "{frame}: {share} of the frame by your numbers.",
    "why.compared.texture": (
        "{frame}: {texture} of the fine detail of the crispest water, at equal brightness."
    ),
    # averages
    "average.made": "{number} frames in one: noise {noise} of a single frame's{time}.",
    "average.as_long": ", water as if {time} had passed",
    "average.look": ", {look}",
    "average.only_one": "They can't be averaged: {reasons}.",
    "average.left_out": "Left out: {reasons}.",
    "average.out.misfit": "{letter}, another view",
    "average.out.moved": "{letter}, something large moved",
    "average.out.brightness": "{letter}, too bright or too dark",
    "average.out.same": "{letter}, a frame sent twice",
    "why.average": "Noise by the law 1 ÷ √n for {number} frames: {law} (averaging, statistics).",
    # other times
    "drawn.offer": "To see it longer, `as 1/4 s` draws it.",
    "drawn.made": "An illustration, not a photograph: {times}.",
    "drawn.time": "{time} {look}, {low} to {high}",
    "drawn.time_alone": "{time} {look}",
    "drawn.correct": "Wrong water or direction? Name its cells, `b2 b3 c2`, or say `down left`.",
    "drawn.not_plunging": (
        "I draw other times of plunging falls only: in a stream the streaks would run over its "
        "stones."
    ),
    "drawn.runs_across": (
        "Its water runs across there, as far as I know, and I draw plunging falls only. If it "
        "falls, say `down`."
    ),
    "drawn.soft": "That takes a sharp frame; this one is soft.",
    "drawn.water_unknown": "I find no water in it. `grid` shows the cells to name it by.",
    "drawn.smooth_already": (
        "That can't be drawn: its water is smooth already, or its own time is as long."
    ),
    "drawn.speed_unknown": (
        "For that I need the speed: `12 m tall, 18 m away, 24 mm`, or a timed leaf, "
        "`leaf 3 m in 2 s`."
    ),
    "drawn.tiny": "Its water is too small to draw. A longer lens, or a larger file.",
    # where the water is
    "water.proposed": "I take the water to be in {cells}; the picture shows the cells.",
    "water.as_told": (
        "The water is in {cells}, as you said. To change it, name other cells, like `b2 b3 c2`."
    ),
    "water.none_found": "I find no water by myself. Name its cells, like `b2 b3 c2`.",
    "water.name_them": "Name its cells, like `b2 b3 c2`; `grid` shows them again.",
    "together.no_cell": (
        "The grid has no such cell: rows A to D from the top, columns 1 to 4 from the left, like "
        "b2."
    ),
    "ask.water_cells": "Is that right?",
    "ask.water_cells.yes": "yes",
    "ask.water_cells.no": "no",
    # pictures
    "caption.together.whole": "The whole frames, same size.",
    "caption.together.water": "The same water, pixel by pixel, at equal brightness.",
    "caption.together.leaves": "The same leaves, pixel by pixel, at equal brightness.",
    "caption.together.average": "One frame, and the average of all.",
    "caption.together.illustration": "An illustration, not a photograph.",
    "caption.together.grid": "Rows A to D from the top, columns 1 to 4 from the left.",
    "caption.together.marked": "What was measured, marked.",
    "alt.together": "{what} Frames {frames}.",
}
