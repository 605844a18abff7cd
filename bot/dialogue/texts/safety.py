"""What is said in danger: the instruction that protects first, never a setting."""

from __future__ import annotations

from typing import Final

SAFETY: Final[dict[str, str]] = {
    # Throw, don't go: common practice of lifeguards; float first, then breathe, feet first
    # downstream in moving water: RNLI's advice to float and common practice of river rescue.
    "danger.in_water": (
        "Call the emergency number now (112, 911 or the local one): I can't call. "
        "Throw a rope or branch, don't go in."
    ),
    "danger.in_water.again": (
        "Keep eyes on them, stay on the bank. Shout: float, breathe, feet first downstream. "
        "Meet them below with something to throw."
    ),
    # Up and out at once, gear stays: US National Weather Service, flash floods. 15 cm of fast
    # water knocks a person over (same source).
    "danger.flood": (
        "Leave now, up and out of the gorge; leave the gear. Don't cross the water. "
        "If anybody is cut off, call the emergency number: I can't."
    ),
    "danger.flood.again": (
        "Higher still, away from the water, everybody by name. Cut off: stay high, call the "
        "emergency number, wait. Nobody wades back."
    ),
    # First aid in short: common practice of first-aid courses.
    "danger.hurt": (
        "Call the emergency number now (112, 911 or the local one): I can't call. "
        "Press hard on bleeding, keep them warm and still."
    ),
    "danger.hurt.again": (
        "Follow what the emergency number says. Something dry under them and over them, away "
        "from spray; one stays, one shows rescuers the way."
    ),
    # Never alone, no means at hand, help called at once: common practice of crisis lines.
    "danger.despair": (
        "Call the emergency number or a crisis line now: I can't call. Nobody stays alone: sit "
        "down together away from edge and water, and keep talking."
    ),
    "danger.despair.again": (
        "Stay with them, well back from edge and water; listen, don't argue, don't leave. The "
        "emergency number sends help: say where you are."
    ),
    # Any thunder means shelter, 30 minutes after the last: US National Weather Service.
    "danger.thunder": (
        "Leave the water and the gorge now: a storm above floods it. Into a car or a house, off "
        "ridges, away from lone trees. Wait 30 min after the last thunder."
    ),
    "danger.thunder.again": (
        "Up and out of the gorge, away from water, ridges, lone trees, metal; no shelter: crouch "
        "low, apart. 30 min after the last thunder, not less."
    ),
    # Nobody turns back for gear, heads counted by name: common practice of group leaders.
    "danger.thunder.going": (
        "Good, go on: all together, nobody back for gear. Into a house or car; count by name "
        "there. 30 min after the last thunder, not less."
    ),
    "danger.flood.going": (
        "Good, go on up: all together, nobody back for gear, higher than you think. Count by "
        "name there. Cut off: stay high, call the emergency number."
    ),
    "danger.flood.way": (
        "A way that stays high above the water is right. A bridge only if it stands well clear; "
        "in doubt stay high, call the emergency number: I can't."
    ),
    "danger.thunder.sheltered": (
        "Stay in the shelter: each thunder begins the 30 minutes anew. Nobody goes back to the "
        "water before."
    ),
    "danger.missing.lead": (
        "Ring them. Leader and buddy look there first, on the path; the rest stay in a safe "
        "place, counted. Not there: call the emergency number, I can't."
    ),
    # Buddy first, nobody alone into water: common practice of group leaders.
    "danger.missing": (
        "Call by name, three whistles, count all. Two search on the path, the rest stay put, "
        "nobody enters the water. No answer: call the emergency number."
    ),
    "danger.missing.again": (
        "Call the emergency number now, I can't: who, clothing, last seen where and when. "
        "One stays at the meeting point; nobody searches alone."
    ),
    # Hypothermia from 35 °C body temperature; handle gently: common practice of first aid.
    # Useful movement ends within about 10 minutes in cold water (Giesbrecht's 1-10-1).
    "danger.cold": (
        "Stop here: out of wind and spray, wet things off, dry layers on, warm sweet drink, then "
        "walk out together. Confused or sleepy: call 112 or 911."
    ),
    # A child cools faster, and is warmed before it asks: common practice of first aid.
    "danger.cold.child": (
        "Go now: wet things off, a dry layer of yours on, warm sweet drink, all out together. "
        "Sleepy, confused, or shivering that won't stop: call 112 or 911."
    ),
    "danger.cold.again": (
        "Shivering that won't stop, slurring or stumbling is an emergency: call now, I can't. "
        "Wrap the body, keep them lying and gentle, no rubbing."
    ),
    # Stay put; signals in threes: common practice of mountain rescue.
    "danger.dark": (
        "Stay where the ground is safe, away from edge and water. Headlamp or phone light on the "
        "path only; if unsure, stay and call the emergency number."
    ),
    "danger.dark.again": (
        "Stay put and warm. Light or whistle three times, pause a minute, again. Save the "
        "phone's battery for the emergency number: I can't call."
    ),
    "danger.lost": (
        "Stop, stay together where you are, away from edge and water. Look at the map; if you "
        "don't know the way back, call the emergency number: I can't."
    ),
    "danger.lost.again": (
        "Stay put and warm: rescuers search from where you were last seen. Whistle or light three "
        "times each minute. Save the phone's battery."
    ),
    # Places where nobody stands. Typical fatal accident: a slip at the top, or being swept over
    # while wading above (common practice; park services' warnings).
    "danger.lip": (
        "Step back from the edge first. Nobody stands on or above the lip: wet rock there is "
        "slick, and the water leaves no second try."
    ),
    # 15 cm of fast water can knock a person over: US National Weather Service. Never above the
    # knee, above a fall, brown, rising or alone: common practice.
    "danger.wading": (
        "Stay on the bank. Fast water to mid-shin can take you down: never above a fall, above "
        "the knee, brown, rising or alone. Signs and rangers decide."
    ),
    # Hidden rock, depth that nobody sees, cold shock, water that holds under at the foot of a fall:
    # common practice of lifeguards.
    "danger.leap": (
        "No: nobody jumps, dives or slides in. Rock hides under water, depth deceives, cold takes "
        "the breath, current holds under. Signs and rangers decide."
    ),
    "danger.barrier": (
        "Stay on this side. Rail, rope and closure are there for what can't be seen from here: "
        "signs, rangers and the local law decide, for everybody."
    ),
    "danger.climb": (
        "Stay down, or come down the way you went, three points on rock. Wet rock and moss hold "
        "no boot, and down is harder than up."
    ),
    # Falls throw down stone, wood and ice, more when high, thawing or windy: common practice.
    "danger.under": (
        "Come out from under it first. Falls and overhangs throw down stone, wood and ice "
        "without warning; nobody works below them or behind the water."
    ),
    # No ice over moving water is safe: common practice.
    "danger.ice": (
        "Stay off the ice, and out from under it. Ice over moving water is thin where it looks "
        "thick, and icicles fall without warning."
    ),
    # While a visit is planned nobody is there yet: the place is left out of the plan.
    "danger.lip.planned": (
        "Leave the top out of the plan: nobody stands on or above the lip. Wet rock there is "
        "slick, and the water leaves no second try."
    ),
    "danger.under.planned": (
        "Not there: falls and overhangs throw down stone, wood and ice without warning. Nobody "
        "works or plays below them, behind the water or in the pool at the foot."
    ),
    "danger.climb.planned": (
        "Leave the climb out of the plan: wet rock and moss hold no boot, and down is harder "
        "than up. Signs and rangers decide."
    ),
    "danger.position": (
        "Your last shared position: {place} at {time}, {age} ago. Read it to rescuers."
    ),
    "danger.on_map": "To show rescuers: {place}, shared at {time}.",
    "danger.position_unknown": (
        "No shared position here: read the coordinates or the last sign from your phone's map."
    ),
    "danger.position_elsewhere": (
        "Your shared position stays in our direct room: share it here, or read it from your "
        "phone's map."
    ),
    "danger.late": "Sent {age} ago.",
    "danger.held": "First the people. Everything else waits, your walk is kept.",
    "danger.bye_open": (
        "Before you go, one last thing, so that nobody is left out there: who is near water or an "
        "edge, goes up and away from it."
    ),
    "danger.in_room": (
        "An emergency was told of in this room {age} ago. First the people, everything else waits."
    ),
    "danger.room_waits": (
        "Noted. Walks here wait until who told of it, or who leads, says that all are safe."
    ),
    # Whose emergency it is: who is safe speaks for nobody else (own rule).
    "danger.others_left": "Good. And the others? What I said holds until they are safe, too.",
    "danger.you_left": "Good. And you? What I said holds until you are safe, too.",
    "danger.retracted": "Good that nobody is in danger.",
    "danger.cry": (
        "If anybody is in danger, call the emergency number now (112, 911 or the local one): I "
        "can't call. Then tell me what happened."
    ),
    "danger.over": "Good. Warm, dry, sit down before anything else.",
    # Floods come in more than one crest, away from the rain that made them: common practice.
    "danger.flood.over": (
        "Good. Warm and dry first. Nobody goes back to that water today: more may be on its way. "
        "Rangers say when."
    ),
    "danger.thunder.over": "Good. Stay in shelter until 30 minutes after the last thunder.",
    # After a fright: common practice.
    "danger.shaken": "Sit down, drink something warm; nobody walks or drives on shaking legs.",
    "danger.walk_waits": "Your walk is kept: `start` opens it, or a new one elsewhere.",
    "danger.walk_kept": "The walk is as it was.",
    "danger.call_back": (
        "Call them back now, one at a time, three points on rock, away from the edge. "
        "Nobody jumps, nobody wades above the fall."
    ),
    "danger.nobody_there": "Good. Stay on the path side; local signs and rangers decide.",
    "danger.from_afar": (
        "A longer lens from the path or the railing makes much the same picture: 100 to 200 mm as "
        "on full frame."
    ),
    "danger.from_afar_phone": (
        "From the path or the railing, zoomed in or cropped at home, it makes much the same "
        "picture."
    ),
    # Small catchments rise within hours of rain (US National Weather Service); a marked stone,
    # looked at every 15 minutes: common practice.
    "rain.before": (
        "After such rain mark a stone at the edge, look every 15 min: rising, brown, twigs: up "
        "and out."
    ),
    # Before somebody sets out. Small creeks rise within hours of rain, and go on when it has ended;
    # brown, louder, wood in it: common practice of gorge wardens and flood services.
    "rain.asked": (
        "After heavy rain stay out of gorges until the level has fallen and the water is clear: "
        "ask the ticket office or land manager first."
    ),
    "rain.signs": (
        "A small creek peaks hours after the rain, under dry sky, too. Turn back at once when it "
        "rises, browns, gets louder or carries wood."
    ),
    "rain.signs_child": (
        "A small creek peaks hours after the rain, under dry sky, too. Turn back at once when it "
        "rises, browns, gets louder or carries wood. A child stays within arm's reach."
    ),
    "rain.now": "Drizzle: glass covered until the shot.",
    "danger.from_there": (
        "From where you said, {distance} off, {focal} shows {shown}: stay at the path or railing."
    ),
    "ask.safe": "Are all safe now?",
    "ask.safe.not_yet": "not yet",
    "ask.safe.yes": "yes",
    "danger.insist": (
        "No boots and no care hold there: nobody stands in such a place, and I give no settings "
        "for it. Signs and rangers decide."
    ),
    "danger.insist_how": (
        "Kept. Type `no` once nobody stands there: then all that you told me counts and we go on."
    ),
    # What people ask and do so that nothing happens: common practice of group leaders.
    "precaution.where_not": (
        "Nowhere on or above the lip, past a rail or sign, under or behind the fall, on ice, or in "
        "fast water. Stay on the path side; signs and rangers decide."
    ),
    "precaution.note_home": (
        "Good practice: that is what brings help in time. Leave it with a person: I can't call."
    ),
    # Core first, bare hands in the armpits, no rubbing; numbness that stays is a sign to turn back:
    # common practice of outdoor first aid. Ten minutes: own rule.
    "precaution.cold_hands": (
        "Warm them first: out of the spray, hands in armpits, dry gloves, hot drink, another "
        "layer. Numb after 10 min, or shivering that won't stop: walk out."
    ),
    # Layers, food, movement; what tells of more than being cold: common practice of first aid.
    "precaution.cold": (
        "Warm up first: out of wind and spray, a dry layer, hat, hot drink, food, some steps. "
        "Shivering that won't stop, clumsy hands or words: tell me, walk out."
    ),
    "danger.doubt": "That sounds like danger.",
    # Most such words tell of none: said first, and the answer goes on (own rule).
    "danger.hint": "Anybody hurt, lost, in the water or near an edge? Then send `sos`. If not:",
    "ask.in_danger": "Is anybody hurt, lost, in the water or near an edge?",
    "danger.doubt_again": "Kept. But no settings before I know that nobody is in danger.",
    "danger.doubt_why": (
        "What you wrote can mean that somebody is in danger: until I know that nobody is, I give "
        "no settings."
    ),
    "danger.doubt_open": (
        "Kept. No settings until I know: type `no` if nobody is in danger, `yes` if somebody is."
    ),
    "ask.in_danger.no": "no",
    "ask.in_danger.yes": "yes",
    "danger.unclear": (
        "If anybody is hurt, lost or cut off, call the emergency number now (112, 911 or the "
        "local one): I can't. Away from edge and water. What happened?"
    ),
    "danger.unclear.again": (
        "Stay together, away from edge and water. Tell rescuers where you are. I can't call: "
        "what happened?"
    ),
    "ask.out_there": "Is anyone out there now?",
    "ask.out_there.no": "no",
    "ask.out_there.yes": "yes",
}
