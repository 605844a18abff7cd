"""What is said at any step: commands, misreadings, assumptions, small talk."""

from __future__ import annotations

from typing import Final

EVERYWHERE: Final[dict[str, str]] = {
    "and": "and",
    "or": "or",
    # What a line before it had no room for.
    "list_on": "And: {list}.",
    "brighter": "brighter",
    "darker": "darker",
    "far_wall": "the far wall",
    "begin": "Send `start` at the water, or tell me what is wrong with a frame.",
    "hello": "Linn here, for waterfalls and streams: lens, settings, whites, turn-back time.",
    "thanks": "You're welcome.",
    # steps by name
    "step.arrive": "arriving",
    "step.lens": "the lens",
    "step.composition": "the composition",
    "step.base": "the base settings",
    "step.highlights": "the highlights",
    "step.adjust": "adjusting",
    "step.keep": "keeping",
    # commands
    # A bare call for help may be a cry: `danger.cry` stands before it (own rule).
    "help.how": "What can be typed: `commands`. A walk begins with `start`.",
    "help.first": (
        "I walk you from lens to keeper: `start`. Tell facts, answer with numbers, share frames or "
        "your location."
    ),
    "help.words": (
        "Words: `back`, `skip`, `why`, `where am I`, `kit`, `plan`, `card`, `units`, `taps`, "
        "`my data`, `forget me`, `stop`; `what if f/16`. "
        "Frames: `compare`, `average`, `as 1/4 s`, `grid`, `keep`, `my look`, `cancel`."
    ),
    "plan.home": "Note home: who, where, your way, the car; back by {back}, at {call} they call.",
    "plan.sunset": "Sunset {time}. The way out is missing.",
    "plan.light": "Soft light: cloud, shade, or {rise} to {morning} and {evening} to {set}.",
    "plan.light_morning": (
        "Soft light: cloud, shade, or {rise} to {morning}; the evening is too late for you."
    ),
    "plan.kit": "Your kit: {list}.",
    "plan.more": "`why` has packing, the notices to read and rough settings.",
    "to_come.log": "The log of a place is not built yet. Note the settings I name when you keep.",
    "back.done": "Undone.",
    "back.nothing": "Nothing to undo on this walk.",
    "skip.nothing": "No question is open.",
    "skip.no_settings": "Then without them.",
    "skip.needed": "Without that I can't go on.",
    "now.lens": "Now: measures and kit; from them come lens, settings and focus.",
    "now.composition": "Now: look through the finder at the edges, and send the number that fits.",
    "now.frame": "Now: take a frame with {settings}, look at it, and send the number that fits.",
    "now.take": "Now: take a frame, look at it, and send the number that fits.",
    "now.keep": "Now: {settings} is kept. The rest is small.",
    "why.more": "`why` goes on.",
    "why.rests_on": "It rests on {list}. Wrong? Send the right number.",
    "why.all": "That was all behind it.",
    "why.nothing": "No numbers behind my last message yet.",
    "where.step": "We are at {step}.",
    "where.no_walk": "No walk is under way; `start` begins one.",
    "where.known": "Known: {list}.",
    "where.planned": "We plan your visit.",
    "where.turn_back": "Turn back by {time}.",
    "where.given": "Last settings: {settings}.",
    "kit.known": "Your kit: {list}.",
    "kit.unknown": "I don't know your kit yet.",
    "kit.how": (
        "Add or correct in words: `full frame, 16-35 f/4, tripod, polariser, 3-stop ND`; `no ND`."
    ),
    "units.metric": "Metres from now on. `units` switches back.",
    "units.imperial": "Feet from now on. `units` switches back.",
    "taps.on": (
        "Questions come as polls from now on: tap an option; numbers work too. No poll below the "
        "next question? `taps` switches back."
    ),
    "taps.off": "Questions come as plain words again. A reaction with a digit answers too.",
    "stop.done": "Stopped. Your kit is kept; `start` begins a new walk.",
    "stop.nothing": "No walk is under way.",
    "restart": "A walk is under way, at {step}. A new one drops its answers.",
    "ask.restart": "Which?",
    "ask.restart.go_on": "go on",
    "ask.restart.new": "new walk",
    "resume": "Your last walk stands at {step}.",
    "ask.resume": "Go on or new?",
    "ask.resume.go_on": "go on",
    "ask.resume.new": "new walk",
    # misreadings
    "not_understood": "I read no number or word I know in that.",
    "which_one": "A yes or no does not answer that one.",
    "unread": "I can't place {pieces}: what is it? Like `12 m tall` or `f/11`.",
    "unanswered.among": "Not answered: {question} Ask it alone, in few words.",
    "unanswered.alone": "I have no answer to {question} Other words may help.",
    "unread_rest": "Not placed: {pieces}.",
    "noted": "Noted: {list}.",
    "still_open": "Still open: {question}",
    "let_go": "I go on without an answer to that.",
    "let_go.top": "I take the top edge as clean: tell me if sky or the lip is there.",
    "let_go.section": "Half of the fall, unless you tell me another part.",
    "let_go.sides": "I take sides and corners as clean: tell me if anything comes in.",
    "no_such_option": "There is no {number} here: 1 to {most}.",
    "old_answer": "Your {number} came before this question, so I don't count it.",
    "out_of_domain": (
        "{name} of {value} can't be: I reckon from {low} to {high}. Send it again with its unit."
    ),
    "out_of_domain_below": (
        "{name} of {value} can't be: I reckon from {low} up. Send it again with its unit."
    ),
    "failed": (
        "Something broke on my side (reference {reference}). Your answers are kept; "
        "send it again, or `where am I`."
    ),
    # while frames are being measured
    "progress.one": "Measuring your frame… ‘cancel’ ends it.",
    "progress.several": "Measuring your frames, {number} of {total}… ‘cancel’ ends it.",
    # languages
    "language.now": "English from now on. `language` lists the others.",
    "language.list": "I speak {list}: send its name, like `english` or `deutsch`.",
    "language.offer": "In English? Send `english`.",
    "language.offered": "{offer}",
    "language.own_name": "English",
    # lengths of messages
    "length.short": "Short from now on: the first line and the question. `why` has the rest.",
    "length.usual": "Messages of the usual length from now on.",
    "length.hands": (
        "Short from now on: a digit is enough. `taps` makes the options buttons to tap."
    ),
    "length.hands_taps": "Short from now on: a tap or a digit is enough.",
    "length.long": "Long from now on: reasons come with the answer. `usual` or `short` ends it.",
    # other kinds of messages
    "other.voice": "I can't listen to voice messages. Type it, a few words are enough.",
    "other.video": "I can't look at videos. Share a single frame.",
    "other.sticker": "A sticker tells me nothing I can reckon with. Type a number or a word.",
    "other.undecryptable": (
        "I can't decrypt your last message. Please send it again; if that fails, "
        "open a new room with me."
    ),
    "other.unknown": "I can't read that kind of message. Type it, or share a picture.",
    # assumptions
    "assumed": "Assumed: {list}.",
    "assumed.full_frame": "full frame",
    "assumed.camera_height": "camera {height_m} up",
    "assumed.stream_speed": "water at {speed_mps}",
    "assumed.crest_speed": "water over the lip at {speed_mps}",
    "assumed.free_drop": "a free drop, {speed_mps} on average (over rock slower)",
    "assumed.focal": "{focal_mm}",
    "assumed.distance": "{distance_m} away",
    "assumed.height": "a fall of {height_m}",
    "guessed.metric": "Numbers without a unit I took as metres.",
    "guessed.imperial": "Numbers without a unit I took as feet.",
    # cards
    "card.title": "Linn",
    "card.settings": "Set",
    "card.lens": "Lens",
    "card.focus": "Focus",
    "card.stack": "{frames} frames, {near} to {far}",
    "card.filter": "Filter",
    "card.ladder": "Ladder",
    "card.with_polariser": "polariser {time}",
    "card.with_nd": "{stops}-stop ND {time}",
    "card.turn_back": "Turn back",
    "card.turn_back_unknown": "not known yet",
    "card.footer": "Nobody on or above the lip. Signs and rangers first. Too white: shorter time.",
    "card.caption": "Save this before the signal goes.",
    "card.alt": "Card in large black letters: {lines}.",
    "card.nothing": "No settings yet to put on a card; they come with the base settings.",
    # lights, as they are named to a person
    "light_measured": "the light of your last frames",
    "light.snow in sun": "sun on snow",
    "light.full sun": "full sun",
    "light.hazy sun": "hazy sun",
    "light.bright cloud": "bright cloud",
    "light.overcast": "heavy overcast",
    "light.open shade": "open shade",
    "light.before sunset": "the last light before sunset",
    "light.sunset": "the light at sunset",
    "light.after sunset": "the light after sunset",
    "light.open gorge": "an open gorge",
    "light.light canopy": "light canopy",
    "light.wooded gorge": "a wooded gorge",
    "light.dense canopy": "dense canopy",
    "light.deep slot": "a deep slot",
    "light.dusk": "dusk",
    "light.full moonlight": "moonlight",
}
