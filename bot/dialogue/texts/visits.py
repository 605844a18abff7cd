"""What is said of a visit as a whole: its plan, the text for home, the way out at dusk."""

from __future__ import annotations

from typing import Final

VISITS: Final[dict[str, str]] = {
    # the plan of the day
    "arrive.turn_back_moved": "Turn back by {time}, not {before}, however good the light is.",
    "arrive.way": "Each way {out}: {bare} × {factor} ({why}).",
    "arrive.back": "Back at the car by {back}.",
    "arrive.back_due": "There by {back}.",
    "arrive.hours": "Start {start}, there {there}, {stay} at the fall, back by {back}.",
    "arrive.hours_short": (
        "Start {start}, there {there}, only {stay} at the fall, back by {back}: an earlier start?"
    ),
    "arrive.start_too_late": (
        "Start {start} is too late: there {there}, past the time to turn. Earlier, or another day."
    ),
    "arrive.note_too": "Change it in the note home, too: back by {back}, call at {call}.",
    # why a pace: behind the factor of a way
    "pace.wet": "wet rock, pack, tripod",
    "pace.child": "a child sets the pace",
    "pace.old": "the oldest sets the pace",
    "pace.lame": "a bad joint sets the pace",
    "pace.slow": "the slowest sets the pace",
    "pace.students": "a mixed group, its slowest",
    "pace.group": "a mixed group, its slowest",
    "pace.many": "five or more, the slowest",
    # a visit that is planned at home
    "ask.plan_start": "When do you start, and who walks along? Like `9:30, two of us, one slow`",
    "ask.plan_hour": "When do you start? Like `9:30`",
    "ask.plan_party": "Who walks along? Like `two of us, one slow`",
    # A storm above floods a gorge from rain that is not seen there (common practice).
    "planning.thunder": (
        "Storms forecast: nobody in the gorge or creek bed then. Be back at the car before they "
        "are due, or take another day; look again in the morning."
    ),
    "planning.takes": (
        "For the plan I take: way and climb, sunset, start, who walks along, the fall's height, "
        "forecast, kit."
    ),
    "ahead.stand": ("{height}: stand {near} to {far} off, 1 to 1.5 heights (common practice)."),
    "ahead.stand_focal": "{form}: {short} to {long} with a level camera, up to {tilted} tilted.",
    "ahead.stand_yours": "Your {lens} does it.",
    "ahead.stand_other": "Your lenses are longer: stand farther off, or take a part of it.",
    # when to start: 2 to 3 h at one fall, under clouds (common practice)
    "start.best": "Start by {start}: there {there}, {stay} at the fall, turn back by {turn}.",
    "start.best_clouds": (
        "Start at {start}: there {there}, {sky} from {since}, {stay} at the fall, turn back by "
        "{turn}."
    ),
    "start.good": "Yes, start {start}: there {there}, {stay} at the fall, turn back by {turn}.",
    "start.good_clouds": (
        "Yes, start {start}: there {there}, {sky} from {since}, turn back by {turn}. Later only "
        "costs time at the fall."
    ),
    "start.early": (
        "Later will do: start {best}, there {best_there}, {sky} from {since}. From {start} on you "
        "wait in the sun. Turn back by {turn}."
    ),
    "start.late": (
        "Earlier: from {start} on you are there {there}, {stay} before the time to turn back, "
        "{turn}. Start by {best}."
    ),
    "start.rain": "Rain from {since}: cover in the bag, and {turn} holds: the way down is slick.",
    "start.rain_all_day": (
        "Rain all day: cover in the bag, and {turn} holds: the way down is slick."
    ),
    "start.storm": "Storms from {since}: be at the car before, so turn back by {turn}.",
    "start.storm_all_day": "Storms all day: take another day; nobody in a gorge then.",
    "sky.sun": "sun",
    "sky.partly": "sun and clouds",
    "sky.cloud": "clouds",
    "sky.overcast": "overcast",
    "sky.rain": "rain",
    "sky.storm": "storms",
    "sky.since": "{sky} from {since}",
    # when to leave the water
    "leave.due": "Set off by {time}: {due} less {out} for the way and {margin} spare.",
    "leave.due_last": "At the very latest {last}, without a stop.",
    "leave.left": "{left} left, packing included.",
    "leave.now": (
        "Go now: {time} was the time to leave. You are out by {arrival}; short steps on wet rock."
    ),
    "leave.too_late": (
        "Go now: you are out by {arrival}, after {due}. Ring whoever shuts it or waits; nobody "
        "runs on wet rock."
    ),
    # the text for who waits at home
    "note.copy": "To copy and send yourself, I can't:",
    "note.who": "{place}, {party}.",
    "note.who_way": "{place}, {party}. Way {way}, out and back the same.",
    "note.hours": (
        "Start {start}, turn back {turn}, back by {back}. No word by {call}: ring me, then call "
        "the local emergency number."
    ),
    "note.start": (
        "Start {start}. Not back 2 h after the time we agree on: ring me, then call the local "
        "emergency number."
    ),
    "note.car": "Car: {car}.",
    "note.cant": "Closures and weather I can't know: ask the land manager tonight and tomorrow.",
    "note.people": "{number} people",
    "note.alone": "alone",
    "note.place_open": "(which fall)",
    "note.party_open": "(who)",
    "note.start_open": "(when)",
    "note.gap.place": "which fall",
    "note.gap.party": "who goes",
    "note.gap.start": "your start",
    "note.gap.way": "km and climb",
    "note.gap.sunset": "the sunset",
    "note.gap.car": "the car and where it stands",
    "ask.note": "Still missing for it: {list}?",
    # the way out when light is short
    "dusk.go": "Go now: {told} on foot are about {out} here (× {factor}: {why}).",
    "dusk.half_an_hour": "Dusk shows a path for about half an hour after sunset, less under trees.",
    "dusk.left": "Dusk lasts {left} more, to {time}: no stop.",
    "dusk.left_too_short": "Dusk lasts only {left} more, to {time}: the end is in the dark.",
    "dusk.gone": "Dusk ended at {time}: lamps on.",
    "dusk.one_lamp": (
        "Few lamps: stay close together, slowest in front, the way you came, no shortcuts; a phone "
        "is a spare light. Unsure of the way: stop, call the local emergency number."
    ),
    "dusk.one_lamp_alone": (
        "Few lamps: the way you came, no shortcuts, short steps; a phone is a spare light. Unsure "
        "of the way: stop, call the local emergency number."
    ),
    "dusk.lamps_alone": (
        "Lamp on early, the way you came, no shortcuts, short steps. Unsure of the way: stop, call "
        "the local emergency number."
    ),
    "dusk.lamps": (
        "Lamps on early, stay together, slowest in front, the way you came, no shortcuts. Unsure "
        "of the way: stop, call the local emergency number."
    ),
}
