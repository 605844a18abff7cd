"""What is said of whites, looks and levels of a frame, and the settings that follow."""

from __future__ import annotations

from typing import Final

ADJUSTING: Final[dict[str, str]] = {
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
}
