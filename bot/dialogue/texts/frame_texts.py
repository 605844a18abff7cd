"""What is said of a shared frame: areas, room, faults; and the words on and beside its picture."""

from __future__ import annotations

from typing import Final

FRAMES: Final[dict[str, str]] = {
    "frame.white_water": (
        "Area {letter}, {position}: white water without texture, {share} of the frame, {channels}."
    ),
    "frame.holds": "The whites hold.",
    "frame.for_look": "The white holds. For your look: {settings}{look}.",
    "frame.leaf": (
        "I take that for your leaf frame; the water's settings stay. `compare` tells whether its "
        "leaves are sharp, and as bright."
    ),
    "frame.next": "Next: {settings}{look}.",
    "frame.screenshot": (
        "That looks like a screenshot, so I don't judge it. Send the picture itself, as a file."
    ),
    "frame.several": (
        "That looks like several pictures in one, so I don't judge it. Send each by itself."
    ),
    "frame.mat": "The even border around it I left out.",
    "frame.neither": "Lost there is no fault of the water; a third darker if you want its detail.",
    "frame.nothing": (
        "That frame shows no detail at all: is the cap off, the glass clear? Else it is far too "
        "dark, or all mist."
    ),
    "frame.sparkle": "{letters}: sparkle, fine.",
    "frame.sky": (
        "Area {letter}, {position}: a sky gap, {share} of the frame. Else the whites hold."
    ),
    "frame.unsure": "Area {letter}, {position}, {share} of the frame, is white without detail.",
    "frame.unsure_part": (
        "Area {letter}, {position}, {share} of the frame, has lost detail, {channels}."
    ),
    "frame.mostly_white": "{share} of the frame is white without detail.",
    "ask.area": "Is {letter} water or sky?",
    "ask.area.water": "water",
    "ask.area.sky": "sky",
    "ask.area.neither": "neither",
    "frame.room": "About {stops} of room to the right, from a {kind}.",
    "frame.room_or_more": "At least {stops} of room to the right, from a {kind}.",
    "raw.room": "The raw has {stops} of room to the right; {channel} ends first.",
    "raw.room_stated": (
        "By its stated white the raw has {stops} of room to the right; {channel} ends first."
    ),
    "raw.preview_over": "Your camera's own warning overstates by about {stops}.",
    "raw.counted_on": "Counted for your raw: your camera's pictures clip about {stops} early.",
    "raw.holds": "Lost in the picture, but the raw should hold it.",
    "frame.resized": "A small copy: tiny sparkle is lost in it and shares read low.",
    "frame.no_metadata": "No data in the file: I take {settings}.",
    "frame.from_phone": "A phone took this picture, but your kit has a camera.",
    "ask.rear_screen": "Is this a picture of your camera's screen?",
    "ask.rear_screen.yes": "yes",
    "ask.rear_screen.no": "no, the frame itself",
    "frame.screen_unusable": (
        "Its brightness is the screen's, not the frame's, so I don't measure it."
    ),
    "ask.screen_says": "What does the screen show in the water?",
    "ask.screen_says.nothing": "no blinking",
    "ask.screen_says.dots": "dots blink",
    "ask.screen_says.patches": "patches",
    "ask.screen_says.sheet": "all of it",
    "ask.screen_says.histogram": "histogram at the right edge",
    "ask.screen_says.histogram.tap": "histogram at the right",
    "highlights.histogram": "It touches the right edge: a third back. Next: {settings}{look}.",
    "highlights.new_frame": "Good. Take the new frame.",
    "highlights.look_is": "{look} by your numbers, water crosses {share} of the frame",
    "highlights.look_is_whole": "{look} by your numbers, water runs through the whole frame",
    "highlights.look_is_usual": "{look} for a usual view",
    "channels.all": "all channels",
    "channels.one": "{names} only",
    "red": "red",
    "green": "green",
    "blue": "blue",
    "fault.empty": "That file is empty. Send the picture again.",
    "fault.not_a_picture": (
        "I can't find a picture in that file. Send a raw file, JPEG, HEIC, PNG or TIFF."
    ),
    "fault.kind_not_read": (
        "I can't read that kind of file. Send a raw file, JPEG, HEIC, PNG or TIFF."
    ),
    "fault.stored_not_read": (
        "That file keeps its pixels in a way I can't read. Save it as a JPEG, or as a TIFF or PNG "
        "with 8 bits."
    ),
    "fault.raw_not_read": (
        "That raw file is cut off, or of a camera I don't know. Send it again, or its JPEG."
    ),
    "fault.damaged": "That picture is cut off or damaged, so I don't judge it. Send it again.",
    "fault.too_many_bytes": (
        "That file is too large ({limit_mb} MB is the limit). Send a JPEG instead."
    ),
    "fault.too_many_pixels": (
        "That picture has too many pixels ({limit_megapixels} million is the limit). "
        "Send a smaller copy."
    ),
    "fault.too_small": "That picture is too small to judge. Send the file from the camera.",
    "fault.too_slow": (
        "That picture took too long to read, so I stopped. Send it again, or a smaller JPEG."
    ),
    "fault.too_much_memory": "That picture needs more memory than I may use. Send a smaller copy.",
    "fault.crashed": "That file broke its reader; nothing else was harmed. Save it anew as a JPEG.",
    "fault.gone": "That file can't be fetched any more. Send it again.",
    # linn frame, on the command line
    "line.clipped": "clipped: {share} of the frame (red {red}, green {green}, blue {blue})",
    "line.area": "{letter}: {kind}, {position}, {share}, {channels}",
    "line.room": "room to the right: about {stops}",
    "line.room_or_more": "room to the right: at least {stops}",
    "line.raw_room": "room to the right, by the sensor: red {red}, green {green}, blue {blue}",
    "line.preview_over": "the embedded preview clips {stops} early",
    "line.step": "next frame: {stops} darker",
    "line.no_room": "how far to move can't be said",
    "line.settings": "settings: {settings}",
    "line.no_settings": "settings: not in the file",
    "line.head": "{kind}, {width} × {height}",
    "advice.keep": "the whites hold",
    "advice.brighter": "there is room: brighter",
    "advice.darker": "white water is lost: darker",
    "advice.lost": "most of the frame is white: darker",
    "advice.reframe": "a sky gap: move, tilt, or bracket",
    "advice.ask": "water or sky? look at the marked area",
    "caption.areas": "Clipped areas outlined and lettered; below, red, green, blue.",
    "caption.none": "Nothing clipped; below, red, green, blue.",
    "kind.white_water": "white water",
    "kind.sparkle": "sparkle",
    "kind.sky_gap": "sky gap",
    "kind.lamp": "lamp or sun",
    "kind.unsure": "unsure",
    "kind.bright": "bright area",
    "position.top_left": "top left",
    "position.top_centre": "top centre",
    "position.top_right": "top right",
    "position.middle_left": "middle left",
    "position.middle_centre": "centre",
    "position.middle_right": "middle right",
    "position.bottom_left": "bottom left",
    "position.bottom_centre": "bottom centre",
    "position.bottom_right": "bottom right",
    "alt.frame": "Your frame, {areas}. Below it three histograms: {histograms}.",
    "alt.area": "area {letter}, {kind}, {position}",
    "alt.borders": "Brackets at the border: {places}.",
    "alt.no_area": "no clipped area",
    "alt.channel": "{name} {share} at the right edge",
    # drawn on pictures
    "picture.smaller": "and {number} smaller",
    "picture.scattered": "{area}, scattered",
    "picture.clipped": "clipped {share}",
    "picture.illustration": "illustration, not a photograph",
    "picture.average": "average",
    "picture.in_all": "{time} in all",
    "picture.as_if": "as if {time}",
    "picture.gain": "{stops} stops",
    "picture.unknown_time": "time unknown",
}
