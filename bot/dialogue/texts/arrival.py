"""What is said and asked on arrival: cautions, the fall, the way out and its reminders."""

from __future__ import annotations

from typing import Final

ARRIVAL: Final[dict[str, str]] = {
    "caution.arrive": (
        "Wet rock and moss slide even where they look dry; nobody on or above the lip. "
        "Signs, closures and rangers come first."
    ),
    "caution.arrive_short": "Wet rock slides; nobody on or above the lip; signs and rangers first.",
    # Traction on ice, nobody below icicles, batteries warm: common practice.
    "caution.ice": (
        "Ice: traction on before the next step, nobody under hanging ice; batteries and phone "
        "inside the jacket."
    ),
    "arrive.offer": (
        "For a turn-back time send `3 km walk out, 150 m climb, sunset 18:40`, or your location."
    ),
    "arrive.offer_feet": (
        "For a turn-back time send `2 miles out, 500 ft climb, sunset 18:40`, or your location."
    ),
    "ask.geometry": (
        "How tall is the fall, how far are you, what is nearest? "
        "Like `12 m tall, 18 m away, rock at 1.5 m`"
    ),
    "ask.geometry_feet": (
        "How tall is the fall, how far are you, what is nearest? "
        "Like `40 ft tall, 60 ft away, rock at 5 ft`"
    ),
    "ask.height": "How tall is the fall? Like `12 m tall`, or `stream` if the water only runs.",
    "ask.height_feet": (
        "How tall is the fall? Like `40 ft tall`, or `stream` if the water only runs."
    ),
    "ask.distance": "How far are you from the water you want? Like `18 m away`",
    "ask.distance_feet": "How far are you from the water you want? Like `60 ft away`",
    "ask.nearest": (
        "What is the nearest thing that must be sharp? Like `rock at 1.5 m`, or `skip`."
    ),
    "ask.nearest_feet": (
        "What is the nearest thing that must be sharp? Like `rock at 5 ft`, or `skip`."
    ),
    "ask.stream": (
        "How far is the water, what is nearest, how fast does a leaf go? "
        "Like `3 m away, rock at 1 m, leaf 3 m in 2 s`"
    ),
    "ask.stream_feet": (
        "How far is the water, what is nearest, how fast does a leaf go? "
        "Like `10 ft away, rock at 3 ft, leaf 10 ft in 2 s`"
    ),
    "ask.water_speed": (
        "Time a leaf: how many seconds for how far? Like `leaf 3 m in 2 s`, or `skip`."
    ),
    "ask.water_speed_feet": (
        "Time a leaf: how many seconds for how far? Like `leaf 10 ft in 2 s`, or `skip`."
    ),
    "ask.walk_out": "How long is the walk out? Like `3 km, 150 m climb, sunset 18:40`, or `skip`.",
    "ask.walk_out_feet": (
        "How long is the walk out? Like `2 miles, 500 ft climb, sunset 18:40`, or `skip`."
    ),
    "arrive.turn_back": "Turn back by {time}, however good the light is.",
    "arrive.turn_back_past": "Your turn-back time was {time}: pack up and walk out now.",
    "arrive.sunset": "Sunset {time}.",
    "arrive.sunset_missing": (
        "For the turn-back time I still need the sunset: `sunset 18:40`, or share your location."
    ),
    "arrive.no_sunset_yet": (
        "If the sun sets before {latest}, earlier: send `sunset 18:40`, or your location."
    ),
    "arrive.way_missing": (
        "Back by {back}, noted. For the turn-back time I still need the way in minutes, or "
        "`3 km walk out, 150 m climb`."
    ),
    "arrive.no_sunset": "No sunset there today; tell me when you want to be out: `sunset 18:40`.",
    "arrive.place_kept": "Your position is noted for an emergency and for the sunset only.",
    "timer.turn_back_soon": (
        "15 minutes to your turn-back time, {time}: last frame, count the gear."
    ),
    "timer.turn_back_soon_late": (
        "This reminder is {late} late: {left} to your turn-back time, {time}. Count the gear, go."
    ),
    "timer.turn_back_now_late": (
        "This reminder is {late} late: your turn-back time was {time}. Leave now. Count people "
        "and gear."
    ),
    "timer.turn_back_long_past": (
        "This reminder is {late} late: your turn-back time was {time}. Anyone still out: together, "
        "lamps on, on the path; unsure, call the emergency number."
    ),
    "timer.turn_back_now": "Turn-back time {time}: leave now, in the light. Count people and gear.",
}
