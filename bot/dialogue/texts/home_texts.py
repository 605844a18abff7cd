"""What is said at home of frames that were told in words: shares, faults, the one to keep."""

from __future__ import annotations

from typing import Final

HOME: Final[dict[str, str]] = {
    # the place, the list of frames, their brightness
    "home.place": (
        "From {distance} at {focal} the frame covers {covers} along the water: {look} there is "
        "{shortest} to {longest}."
    ),
    "home.begin": (
        "Gladly: all frames in one message, like `1/8 and 1/2 s, f/11, ISO 100`, then what you "
        "see in each, by its time; or share the files."
    ),
    "home.which_frames": (
        "Which frames? Like `1/8 and 1/2 s, f/11, ISO 100`, then what you see in each."
    ),
    "home.listed": "{frame}: {share}, {look}{level}",
    "home.level.under": "; {stops} under {other}",
    "home.level.over": "; {stops} over {other}",
    "home.level.same": "; as bright as {other}",
    "home.level.metered": "; as metered",
    "home.the_meter": "the meter",
    "home.frame_f": "{time} {f_number}",
    "home.frame_focal": "{time} {focal}",
    "home.what_seen": "What do you see in each? Name it by its time; which do you like best?",
    "home.metered": "The meter there ({light}) wants about {settings}, {stops} either way.",
    "why.metered": "{light}: about EV {ev} at ISO 100, {low} to {high} (common practice).",
    "home.against": "Against that: {list}.",
    "home.piece.under": "{frame} {stops} under",
    "home.piece.over": "{frame} {stops} over",
    "home.piece.same": "{frame} right",
    "home.depth.ample": (
        "For rock at {near}, {focal} wants {needed}: {f_number} was ample, sharp from {from_m} to "
        "{to_m} with the focus at {focus}."
    ),
    "home.depth.short": (
        "For rock at {near}, {focal} wants {needed}: at {f_number} it is soft in front or behind."
    ),
    "home.depth.missed": (
        "{f_number} was enough for rock at {near}, but with the focus at {focus} it is sharp only "
        "from {from_m} to {to_m}."
    ),
    "home.depth.wants": "For rock at {near}, {focal} wants {needed}.",
    "home.far_wall": "the far wall",
    "home.depth.stack": (
        "Rock at {near} is too near for one frame at {focal}: next time step back, or {frames} "
        "focus frames."
    ),
    # what was seen in single frames
    "home.mush": (
        "{named}: water crosses {share}, {look}: the time is too long. {wished} is {shortest} to "
        "{longest} from there."
    ),
    "home.mush_not": (
        "{named}: {share} is {look}, so it is not the time: look for lost white, or rock that is "
        "soft, too."
    ),
    "home.mush_within": "{named}: {share} is the long end of {look}: shorter, about {aim}.",
    "home.hard_within": "{named}: {share} is the short end of {look}: longer, about {aim}.",
    "home.hard": (
        "{named}: water crosses {share}, {look}: the time is too short. {wished} is {shortest} "
        "to {longest} from there."
    ),
    "home.hard_not": (
        "{named}: {share} is {look}: hard edges then come from sharpening or contrast."
    ),
    "home.diffraction": (
        "{named}: {f_number} softens all of it, rock too. Diffraction {blur} µm wide against "
        "{better_blur} at {better}; not the focus."
    ),
    "home.too_open": (
        "{named}: {f_number} is too open for rock at {near}, which wants {needed} at {focal}."
    ),
    "home.soft_phone": "{named}: the phone moved, or focused on the water.",
    "home.moved": (
        "{named}: soft all over is a camera that moved; if something is sharp, it is the focus."
    ),
    # the near part alone: common practice
    "home.depth_plain": (
        "{named}: soft in front or far off alone is depth, not shake: f/8 to f/11 on full frame, "
        "a step back, or focus at twice the near rock's distance."
    ),
    "home.drops": (
        "{named}: soft discs are drops on the glass, not focus. Out, unless they lie where they "
        "can be retouched."
    ),
    "home.leaves_from": (
        "{named}: leaves moved. Take them from {other}, if they are still there, lifted by {stops}."
    ),
    "home.leaves_equal": (
        "{named}: leaves moved. Take them from {other}, if they are still there, made as bright."
    ),
    "home.leaves": "{named}: leaves moved, and no shorter frame has them still.",
    "home.dark": (
        "{named}: {stops} under {other}. Lift it by that; from raw up to 3 stops stay clean."
    ),
    "home.dark_alone": (
        "{named}: lift it, from raw up to 3 stops stay clean; rock alone if the water holds."
    ),
    "home.bright": "{named}: bring it down at home as long as the white has texture.",
    "home.clipped": "{named}: what blinks in the water is lost, unless raw has it.",
    "home.clipped_other": (
        "{named}: what blinks in the water is lost, unless raw has it; {other}, {stops} darker, "
        "holds more."
    ),
    "home.holds": (
        "The white holds in {frames}; a spark or two is fine, so dark frames can be lifted."
    ),
    "home.glare": "{named}: shine on rock stays; only a polariser takes it, next time.",
    # what is done at home about dull and blue frames (common practice)
    "home.edit_blue": "Blue is the white balance: 6500 to 8000 K at home, until rock is grey.",
    "home.edit_dull": (
        "Lift the exposure until the brightest water is just short of white, then some "
        "contrast, blacks a little down; saturation last, little."
    ),
    "home.edit_lost": "White that is lost stays lost: darkened it only turns grey.",
    "home.blue": "{named}: blue is the white balance: 6500 to 8000 K at home, until rock is grey.",
    "home.leaning": "{named}: straighten it at home, which costs the borders.",
    "home.small": "{named}: crop to the fall, as far as the pixels last.",
    "home.sky": (
        "White at the border pulls the eye. At home only a crop takes it, the same in {frames}; "
        "next time stand where leaves cover it."
    ),
    "home.clutter": (
        "What comes in at the border: crop or retouch it, the same in {frames}; next time run the "
        "eye round all four sides first."
    ),
    "home.tilted": "{named}: turn it level at home, which costs the corners.",
    "home.good": "{named}: {share}, {look}; that holds.",
    "home.best": "{named} it is: {share}, {look}. Noted as the look you like.",
    "home.compared": "{frame} is {stops} {side} than {other}: make them equal before you compare.",
    "home.compared_same": "{frame} and {other} got the same light: compare them as they are.",
    "home.darker": "darker",
    "home.brighter": "brighter",
    "home.is_metered": "{named} is what the meter wanted: the others are told against it.",
    "home.name_it": "Which frame? Name it by its time, like {frame}.",
    "home.no_sight": "{named}: {share}, {look}{level}.",
    "home.all": "all of them",
    "home.all_named": "All of them",
    "home.dropped": "{named} left out.",
    # what it was to show
    "home.intent": 'Then judge by that first: "{intent}".',
    "home.intent_look": (
        "In {shows} threads draw the water's way; in {melts} they have run together."
    ),
    "home.intent_shows": (
        "Look at screen size whether it reads at once; threads draw the water's way."
    ),
    "home.intent_ask": "In which frame does it show best?",
    # the choice
    "home.keep": "Keep {frame}: {why}.",
    "home.why.best": "the one you like best",
    "home.why.look": "{look} at {share}",
    "home.why.clean": "nothing against it",
    "home.why.least": "the least against it",
    "home.keep_more": "Beside it at most {frames}, for another look.",
    "home.out": "Out: {list}.",
    "home.out_piece": "{frame} ({faults})",
    "home.equal": (
        "Make them equal first: {list}. Then shape at screen size; 100 % only to rule out."
    ),
    "home.equal_piece": "{frame} up {stops}",
    "home.equal_already": "They are equally bright: shape at screen size; 100 % only to rule out.",
    "home.intent_decides": 'What decides: "{intent}".',
    "home.copies": "Two copies before the card is used again.",
    "home.log": "Log: {list}.",
    "home.log_hours": "{first} to {last}",
    # how to choose, by the numbers of the walk
    "home.looks": "By your numbers: {list}.",
    "home.looks_group": "{frames} {look} ({shares})",
    "home.nearest": "Nearest to the look you want: {frame}.",
    "home.copied": "Copied twice: then the card is free.",
    # White without texture: over 1 % of the width in all channels is lost, under 0.5 % is fine (own
    # rule of the trade); raw often holds 1/2 to 1 stop more (common practice).
    "white.it": "That white",
    "white.fine": "{named}: dots and specks under 0.5 % of the width are sparkle. A keeper.",
    "white.one": "{named}: one channel alone comes back as near-white. Keep it.",
    "white.limit": "{named}: {share} of the width is at the limit of 1 %; raw decides.",
    "white.lost": (
        "{named}: a patch of {share} of the width, all three graphs at the edge, is lost as it "
        "stands; 1 % is the limit."
    ),
    "white.lost_if": (
        "{named}: a patch of {share} of the width is lost if all three graphs stand at the edge; "
        "one of them alone comes back."
    ),
    "white.ask": (
        "{named}: dots are fine; one patch over 1 % of the width, in all three graphs, is lost. "
        "How wide is it, in how many graphs?"
    ),
    "white.raw": (
        "Raw may hold 1/2 to 1 stop more: pull the whites down {pull}. No strands then: next time "
        "{pull} less light."
    ),
    "white.raw_other": (
        "Raw may hold 1/2 to 1 stop more: pull the whites down {pull}. No strands then: take "
        "{other}, {stops} darker."
    ),
    "white.no_file": "No picture has come yet: this is by your words.",
    "home.next_time": "Next time: {list}.",
    "home.fault.mush": "too long",
    "home.fault.hard": "too short",
    "home.fault.mush_not": "no texture",
    "home.fault.hard_not": "hard",
    "home.fault.soft": "soft",
    "home.fault.depth": "soft",
    "home.fault.drops": "drops",
    "home.fault.clipped": "white lost",
    "home.fault.leaves": "leaves moved",
    "home.remedy.diffraction": "{better} instead of {f_number}",
    "home.remedy.depth": "{needed} for the near rock",
    "home.remedy.soft": "timer, stabiliser off",
    "home.remedy.drops": "a dry cloth over the glass until the shot",
    "home.remedy.leaves": "a short frame for the leaves",
    "home.remedy.clipped": "a third to two thirds less light",
    "home.remedy.glare": "a polariser",
    "home.remedy.sky": "a place where leaves cover the white at the border",
    "home.remedy.clutter": "the eye round all four sides",
    "home.remedy.leaning": "a level camera, from further back",
    "home.remedy.tilted": "a level camera",
    "home.remedy.small": "a longer lens",
    "home.remedy.times": "{list} again",
}
