"""What is said of light that has passed: when it was, whether it still is, and reviews."""

from __future__ import annotations

from typing import Final

LATE: Final[dict[str, str]] = {
    "late.seen": "That was {when}, {age} ago: first the light, then settings.",
    "late.seen_about": "That was {when}: first the light, then settings.",
    "ask.light_still": "Is the light still as {when}?",
    "ask.light_still.yes": "yes",
    "ask.light_still.darker": "darker",
    "ask.light_still.brighter": "brighter",
    "ask.light_still.left": "we have left",
    "ask.light_still_frame": "Is the light still as {when}?",
    "ask.light_still_frame.yes": "yes",
    "ask.light_still_frame.darker": "darker",
    "ask.light_still_frame.brighter": "brighter",
    "ask.light_still_frame.left": "we have left",
    "ask.light_still_frame.clock": "its clock is off",
    "late.new_frame": "The old frame says nothing for this light: a new one decides.",
    "late.noted": "Noted.",
    "late.settings": "settings",
    "light.at": "For the light {when}.",
    "light.time_left": "{left} to your turn-back time, {time}.",
    "light.if": "Only if the light is still as {when}.",
    "light.if_silent": "Only if the light is still as you said: nothing came for {age}.",
    "card.light": "Light",
    # reviews
    "review.held": "{when}: that held.",
    "review.room": "{when}: nothing was lost; up to {stops} brighter would have been room.",
    "review.clipped": "{when}: too bright; {stops} darker would have been the next try.",
    "review.dark": "{when}: too dark by about {stops}.",
    "review.sky": "{when}: only sky was clipped, the water held.",
    "review.look": "{when}: for {look} water from there, {shortest} to {longest}.",
    "review.settings": "{when}: {settings}; {look}.",
    "review.light": "{when}: {light}, noted.",
    "review.leaves": "{when}: moving leaves wanted a second, short frame.",
    "review.frame_held": "{when}: the whites hold.",
    "review.frame_room": "{when}: nothing lost; about {stops} of room to the right was left.",
    "review.frame_room_or_more": (
        "{when}: nothing lost; at least {stops} of room to the right was left."
    ),
    "review.frame_nothing": "{when}: no detail at all; a cap, fogged glass, or far too dark.",
    "review.frame_darker": "{when}: {stops} darker would have been the next try.",
    "review.frame_sky": (
        "{when}: a sky gap, {position}, {share} of the frame; else the whites held."
    ),
    "review.frame_unsure": (
        "{when}: area {letter}, {position}, is white without detail; a fault in water, not in sky."
    ),
    "review.frame_unsure_part": (
        "{when}: area {letter}, {position}, has lost detail, {channels}; a fault in water, not in "
        "sky."
    ),
    "review.next": "For the next light send a new frame.",
    "review.leave": "Your turn-back time was {time}: pack up and walk out now.",
    # at home
    "home.frame": "{frame}.",
    "home.no_settings": "A frame without its settings",
    "home.right": "Right: {list}.",
    "home.right.whites": "the whites hold",
    "home.right.look": "the look you wanted",
    "home.right.sharp": "sharp from near to far",
    "home.right.borders": "clean borders",
    "home.try": "Next time: {what}",
    "home.try.sharp": "{fault}, so {remedy}.",
    "home.try.darker": "{stops} darker; the white lost its texture.",
    "home.try.unsure": ("{stops} darker if {letter}, {position}, is water; in sky it is no fault."),
    "home.try.far_brighter": "at least {stops} brighter.",
    "home.try.brighter": "{stops} brighter; the white had room.",
    "home.try.sky": "leaves over the sky gap, or tilt down.",
    "home.try.look": "{shortest} to {longest} for {look} water from there.",
    "home.try.border": "look along the edges once more. {what}",
    "home.try.times": "{shorter} and {longer} beside it, to choose at home.",
    "home.try.ladder": "the same at half and at double the time, to choose at home.",
    "home.send": "Good that you are back. Each frame: what is right, and one thing for next time.",
    "home.next": "The next frame, or `compare` for two of one view.",
    "home.several": "That was the last of {number}: `compare`, or send the next to go through.",
    "home.foreign": "Not your frame: your walk and your look stay as they are.",
    "home.foreign_next": "Then I go through it on its own; your walk stays as it is.",
    "home.foreign_last": "Then it does not count: your walk is back where it was before it.",
    "when.at": "at {time}",
    "when.yesterday": "yesterday at {time}",
    "when.day": "on {date} at {time}",
    "when.by_camera": "on {date} at {time} by the camera's clock",
    "when.this.morning": "this morning",
    "when.this.afternoon": "this afternoon",
    "when.this.evening": "this evening",
    "when.ago": "{age} ago",
}
