"""A visit planned at home: way, pace, hours, the text for home, a card; and the way out at dusk."""

from __future__ import annotations

from datetime import date

import pytest

from bot.dialogue.actions import SetTimer
from bot.dialogue.facts import Facts
from bot.dialogue.steps.anywhere import planning
from bot.dialogue.trip import Trip
from bot.dialogue.turn import Turn
from bot.dialogue.way_out import way_of
from tests.dialogue.player import Player

PLANNED = "We go to Thornwick Spout tomorrow, I'd like to plan it properly"
WAY = "it's 4 km each way with 250 m of climb"
FATHER = "There's two of us, me and my father, he's 71 and slow when it's slippery"
KIT = "full frame with 24-105, a tripod, polariser, two NDs of 3 and 6 stops"


def talked(*lines: str) -> Player:
    """Somebody who has written these lines."""
    player = Player()
    for line in lines:
        player.say(line)
    return player


def body(player: Player, text: str) -> str:
    """What is answered to one more line."""
    return "\n".join(message.body for message in player.say(text))


def keys(player: Player, text: str) -> set[str]:
    """The keys of what is answered to one more line."""
    return {key for message in player.say(text) for key in message.keys}


# the way: 1 h for 5 km and 1 h for 600 m of climb; times 1.5 wet and loaded, times 2 for a mixed
# group. Expected minutes are worked by hand from that rule, and stand in the trade's own table.


@pytest.mark.parametrize(
    ("km", "climb_m", "bare", "wet", "mixed"),
    [
        (2.0, 100.0, 34, 51, 68),
        (3.2, 180.0, 56.4, 85, 113),
        (4.0, 250.0, 73, 110, 146),
        (5.2, 280.0, 90.4, 136, 181),
        (6.0, 400.0, 112, 168, 224),
    ],
)
def test_the_time_of_a_way(
    km: float, climb_m: float, bare: float, wet: float, mixed: float
) -> None:
    """Bare by the rule; with its factor rounded up to the minute."""
    facts = Facts(walk_km=km, climb_m=climb_m)
    way = way_of(facts, Trip())
    slow = way_of(facts.updated(Facts(group_mixed=True)), Trip(slowest="old"))
    assert way is not None
    assert slow is not None
    assert way.bare_min == pytest.approx(bare)
    assert (way.out_min, way.why) == (wet, "wet")
    assert (slow.out_min, slow.why) == (mixed, "old")


@pytest.mark.parametrize(
    ("trip", "mixed", "why"),
    [
        (Trip(people=4), None, "wet"),
        (Trip(people=5), None, "many"),
        (Trip(people=9), False, "wet"),
        (Trip(), True, "group"),
    ],
)
def test_many_are_mixed_until_they_say_otherwise(
    trip: Trip, why: str, *, mixed: bool | None
) -> None:
    """Five or more are taken for a group of mixed fitness (own rule)."""
    way = way_of(Facts(walk_km=4, group_mixed=mixed), trip)
    assert way is not None
    assert way.why == why


def test_a_way_told_in_time_and_a_round_trip() -> None:
    """45 min × 1.5 = 67.5, up to 68; 8 km there and back are 4 km: 48 min × 1.5 = 72."""
    told, both = way_of(Facts(), Trip(walk_min=45)), way_of(Facts(walk_km=8), Trip(round_trip=True))
    assert told is not None
    assert both is not None
    assert (told.out_min, both.out_min) == (68, 72)
    longer = way_of(
        Facts(walk_km=4), Trip(walk_min=70)
    )  # 48 min by the rule: the longer one counts
    assert longer is not None
    assert longer.bare_min == 70
    assert way_of(Facts(), Trip()) is None


# the plan. 18:40 − 60 min − 110 min = 15:50; with the father 18:40 − 60 min − 146 min = 15:14;
# 09:30 + 146 min = 11:56; 15:14 − 11:56 = 3 h 18 min; back 15:14 + 146 min = 17:40, called 19:40.


def test_the_evening_before() -> None:
    """Every time is said once, the slow one moves all of them, and nothing is asked again."""
    player = talked(PLANNED)
    first = body(player, WAY)
    assert "1 h 50 min: 1 h 13 min × 1.5 (wet rock, pack, tripod)" in first
    assert "15:50" in body(player, "the sun sets at 18:40")
    moved = body(player, FATHER)
    assert "Turn back by 15:14, not 15:50" in moved
    assert "2 h 26 min: 1 h 13 min × 2 (the oldest sets the pace)" in moved
    assert "how far are you" not in body(player, "Forecast: overcast and bright, hardly any wind")
    plan = body(player, "we'd start at half past nine, when must we turn round?")
    assert "Start 09:30, there 11:56, 3 h 18 min at the fall, back by 17:40." in plan
    assert plan.count("Turn back") == 1
    where = body(player, "where am I")
    assert "2 people" in where
    assert "slowest: the oldest" in where
    assert "15:14" in where


def test_the_text_for_home() -> None:
    """It is filled in with the person's words, and its gap is asked for once."""
    player = talked(PLANNED, WAY, "the sun sets at 18:40", FATHER, "we'd start at half past nine")
    told = body(player, "My sister Agathe stays at home, what should I write to her")
    assert "Thornwick Spout, me and my father (2 people). Way 4 km, 250 m climb" in told
    assert "Start 09:30, turn back 15:14, back by 17:40. No word by 19:40" in told
    assert "the local emergency number" in told
    assert "I can't" in told
    assert told.endswith("the car and where it stands?")
    whole = body(player, "car stands at the old quarry car park, small grey van")
    assert "Car: at the old quarry car park, small grey van." in whole
    assert "missing" not in whole
    # a child: the same factor, so the same hours; a shorter way: 18:40 − 60 min − 2 × 36 min
    assert "note home" in body(player, "sorry, it's 3 km each way with no climb")


def test_a_text_for_home_with_gaps() -> None:
    """What is not known is named: first the place and who goes."""
    player = Player()
    assert keys(player, "what should I text my wife before the walk?") >= {"note.start", "ask.note"}
    assert "(which fall), (who)." in body(player, "what do I leave at home?")
    player = talked("plan", "I go alone, start at 8")
    assert "alone" in body(player, "what should I write to her?")
    assert "the sunset" in body(talked("plan", WAY), "what should I write to her?")
    player = talked("plan", "what should I write to her?")
    assert "note.copy" in keys(player, "four of us")
    assert "4 people" in body(player, "what should I write to her?")


def test_the_open_gap_is_no_question_of_the_walk() -> None:
    """At the water the walk's question comes back once the text is whole."""
    player = talked(
        "start",
        "4 km walk out, 250 m climb, sunset 18:40, two of us, start at 9",
        "our van is parked at the dam car park",
    )
    assert "note.copy" in keys(player, "what should I write to her?")


def test_a_whole_text_asks_nothing() -> None:
    """With nothing missing no question is put, and one that stood open for something else stays."""
    whole = (
        "4 km each way, 250 m climb, sunset 18:40, I go alone, start at 8, the car is at the dam"
    )
    player = talked(PLANNED, whole)
    assert "ask.note" not in keys(player, "what should I write to her?")
    quiet = talked(PLANNED, whole, "thanks, bye")
    assert "ask.note" not in keys(quiet, "what should I write to her?")


def test_who_has_left_a_note_hears_what_belongs_into_it() -> None:
    """With the turn-back time, 18:40 − 60 min − 110 min."""
    player = talked("4 km walk out, 250 m climb, sunset 18:40")
    said = body(player, "who do I tell where I am?")
    assert "Your turn-back time for it: 15:50." in said


def test_a_start_may_be_late_or_short() -> None:
    """12:30 + 110 min = 14:20, an hour and a half before 15:50; 15:00 is too late to arrive."""
    player = talked(PLANNED, WAY, "sunset 18:40")
    assert "only 1 h 30 min" in body(player, "start at 12:30")
    assert "Start 15:00 is too late: there 16:50" in body(player, "we start at 15:00")


def test_hours_as_the_person_tells_them() -> None:
    """Who writes am and pm reads them; 45 min × 2 = 90 min, 6:40 − 1 h − 1 h 30 min = 4:10 pm."""
    player = talked("plan", "it's a 45 minute walk each way", "sunset 6:40 pm")
    assert "Turn back by 4:10 pm, not 4:32 pm" in body(player, "we've two kids along")
    plan = body(player, "start at 8:30 am")
    assert "Start 8:30 am, there 10:00 am, 6 h 10 min at the fall, back by 5:40 pm." in plan
    assert "sunset 6:40 pm, start 8:30 am" in body(player, "where am I")
    assert "back by 17:40" in body(player, "sunset 18:40")


def test_the_day_that_is_planned() -> None:
    """A place tells the sunset of that day; in the evening nobody at home is told to walk out."""
    player = Player()
    player.happen("later 12 h")
    player.happen("place 44.1512 -71.3498")
    player.say("we go tomorrow and want to plan the trip")
    said = body(player, WAY)
    assert "pack up" not in said
    timers = [action for action in player.actions if isinstance(action, SetTimer)]
    assert [timer.due.date() for timer in timers] == [date(2027, 6, 19)] * 2


def test_a_height_alone_tells_where_to_stand() -> None:
    """18 m: 18 to 27 m off. Level: 16.4 m of it above the eye at 1.6 m, with 5 % to spare."""
    player = talked(PLANNED, WAY, KIT)
    said = body(player, "the fall is said to be 18 metres")
    assert "stand 18 m to 27 m off" in said
    assert "Your 24-105 does it." in said
    long = talked(PLANNED, WAY, "full frame, 100-400")
    assert "Your lenses are longer" in body(long, "fall 18 m tall")
    assert "Your" not in body(talked(PLANNED, WAY), "fall 18 m tall").split("\n")[0]
    assert "ahead.stand" not in keys(talked(PLANNED, WAY), "fall 18 m tall, only a section of 4 m")
    wide = talked(PLANNED, WAY, "full frame, 8-12")
    assert "does it" not in body(wide, "fall 18 m tall")


def test_a_card_for_the_light_that_is_forecast() -> None:
    """Bright cloud is EV 13: at f/8 and ISO 100 that is 64 / 2^13 = 1/128 s.

    Three stops more are 1/16 s, six 1/2 s, the polariser's 1.7 1/40 s; a light canopy takes three.
    """
    player = talked(PLANNED, WAY, KIT, "Forecast: overcast and bright")
    said = body(player, "could you give me a rough setting for tomorrow so I can put it on a card")
    assert "If still bright cloud: f/8, ISO 100: 1/125 s in the open" in said
    assert "polariser 1/40 s, 3-stop ND 1/15 s, 6-stop ND 1/2 s; under trees 1/15 s" in said


def test_the_card_while_a_visit_is_planned() -> None:
    """`card` needs no settings that were given before; a gorge in a name is no forecast."""
    player = talked("We go to the Raven Gorge tomorrow and plan the trip", KIT)
    assert player.context is not None
    assert player.context.trip.forecast is None
    assert "If still overcast" in body(player, "card")


def test_a_card_without_filters_and_in_full_sun() -> None:
    """EV 15: 64 / 2^15 = 1/512 s; under a light canopy, EV 9, it is 1/8 s whatever the sky."""
    player = talked(PLANNED, WAY, "full frame 24-105, no filters at all", "Forecast: full sun")
    said = body(player, "rough settings please")
    assert "1/500 s in the open; under trees 1/8 s" in said


@pytest.mark.parametrize(
    ("lines", "moved", "hours"),
    [
        (
            (
                "Deutsch",
                "Morgen wollen wir zum Silberfall, ich möchte das gut planen",
                "4 km je Weg, 250 Höhenmeter",
                "Sonnenuntergang um 18:40",
                "wir sind zu zweit, mein Vater und ich, er ist 71 und langsam",
                "wir würden um halb zehn los, wann müssen wir umkehren?",
                "Meine Schwester bleibt daheim, was soll ich ihr schreiben?",
            ),
            "15:14 um, nicht um 15:50",
            "Start 09:30, dort 11:56, 3 h 18 min am Fall, zurück bis 17:40.",
        ),
        (
            (
                "español",
                "Mañana vamos a la Cascada del Silbo y quiero planearlo bien",
                "son 4 km por trayecto con 250 m de desnivel",
                "el sol se pone a las 18:40",
                "somos dos, mi padre y yo, tiene 71 años y va lento cuando resbala",
                "saldríamos a las nueve y media, ¿a qué hora hay que volver?",
                "mi hermana se queda en casa, ¿qué le escribo?",
            ),
            "15:14, no 15:50",
            "Salida 09:30, allí 11:56, 3 h 18 min en la cascada, de vuelta a las 17:40.",
        ),
    ],
)
def test_the_evening_before_in_other_languages(
    lines: tuple[str, ...], moved: str, hours: str
) -> None:
    """The same hours, worked in the same way."""
    player = talked(*lines[:4])
    assert moved in body(player, lines[4])
    assert hours in body(player, lines[5])
    note = body(player, lines[6])
    assert "19:40" in note
    assert "15:14" in note


# at home nothing of the water is asked; there it is


def test_arriving_ends_the_planning() -> None:
    """From then on the questions at the water are put, and what was planned is kept."""
    player = talked(PLANNED, WAY, "sunset 18:40", FATHER)
    player.happen("later 7 h")
    assert "how far are you" in body(player, "we are at the fall")
    assert "15:14" in body(player, "when do we have to turn round?")


def test_start_of_a_planned_day_keeps_its_plan() -> None:
    """`start` begins the day with the turn-back time; nothing of the plan is dropped."""
    player = talked(PLANNED, WAY, "sunset 18:40", FATHER)
    said = body(player, "start")
    assert "Turn back by 15:14." in said
    assert "how far are you" in said
    assert "where.turn_back" not in keys(talked(PLANNED), "start")


def test_offers_are_made_once() -> None:
    """Way, start, height, kit; after that a plan asks for nothing."""
    player = talked(PLANNED)
    assert "ask.plan_start" in keys(player, "skip")
    assert "ask.height" in keys(player, "skip")
    assert "ask.kit" in keys(player, "skip")
    assert not [key for key in keys(player, "skip") if key.startswith("ask.")]
    assert "planning.takes" in keys(player, "blub")
    assert "noted" in keys(player, "two of us, start at 9")
    assert "noted" in keys(player, "full frame 24-105")


def test_a_plan_goes_on_with_plan() -> None:
    """`plan` says what is known by now, and what could be told next."""
    player = talked("plan", WAY)
    assert {"arrive.way", "ask.height"} <= keys(player, "plan")
    assert "not known" not in body(player, "tomorrow we go there, is it open?")


def test_a_forecast_is_no_light_of_now() -> None:
    """It is kept for the card, and not for the settings at the water."""
    player = talked(PLANNED, "Forecast: overcast")
    assert player.context is not None
    assert player.context.facts.light is None
    assert player.context.trip.forecast == "overcast"


def test_who_stands_at_the_water_plans_nothing() -> None:
    """A word of tomorrow beside a walk that is under way changes nothing."""
    player = talked("start", "12 m tall, 18 m away, rock at 1.5 m", "full frame 24-70", "1", "1")
    player.say("tomorrow we go home, plan or not")
    assert player.context is not None
    assert player.context.trip.planning_at is None
    standing = talked("start", "18 m away")
    standing.say("tomorrow we visit it again")
    assert standing.context is not None
    assert standing.context.trip.planning_at is None


def test_the_next_visit_is_planned_from_home() -> None:
    """Who goes through frames and wants a plan leaves the old fall; a mention changes nothing."""
    lines = (
        "start",
        "12 m tall, 18 m away, rock at 1.5 m",
        "full frame 24-70",
        "1",
        "1",
        "home now",
    )
    player = talked(*lines)
    player.say("tomorrow we go again")
    assert player.context is not None
    assert player.context.trip.planning_at is None
    player.say(PLANNED)
    assert player.context.facts.fall_height_m is None
    assert "1 h 50 min" in body(player, WAY)


def test_planning_ends_after_a_night() -> None:
    """Half a day after its last word the visit has begun, or is spoken of anew."""
    player = talked(PLANNED)
    assert player.context is not None
    origin = player.origin()
    assert planning.is_planning(Turn(player.context, origin, player.now))
    player.happen("later 13 h")
    assert not planning.is_planning(Turn(player.context, origin, player.now))


def test_words_of_the_visit_before_a_walk() -> None:
    """The caution of a new walk is said with the first facts all the same."""
    assert "caution.arrive_short" in keys(Player(), "four of us today")
    player = talked("I have eight students today, all with different cameras")
    assert "caution.arrive_short" in keys(player, "12 m tall")


def test_who_is_fit_again_slows_nobody() -> None:
    """18:40 − 60 min − 146 min = 15:14, and 15:50 once the knee is fine."""
    player = talked("4 km walk out, 250 m climb, sunset 18:40", "my knee is bad")
    assert "15:50, not 15:14" in body(player, "the knee is fine again")
    assert "joint" not in body(player, "where am I")


def test_a_round_trip_is_named_with_what_is_known() -> None:
    """So that 8 km are not taken for those of one way."""
    assert "that is both ways" in body(talked("8 km round trip"), "where am I")


def test_a_new_length_is_that_of_one_way() -> None:
    """4 km after 8 km there and back: 48 min × 1.5 = 72 both times."""
    player = talked("8 km round trip")
    assert "1 h 12 min" in body(player, "4 km walk out")


def test_no_climb_is_told_under_why() -> None:
    """100 m of climb are 10 min by the rule."""
    player = talked("4 km walk out, sunset 18:40")
    assert "10 min more" in body(player, "why") + body(player, "why")


# the way out at dusk: 25 min × 1.5 = 37.5, up to 38


DUSK = ("start", "12 m tall, 18 m away, rock at 2 m", "full frame 24-70", "1", "1")


@pytest.mark.parametrize(
    "text",
    [
        "We have 25 minutes to walk to the car and one headlamp.",
        "We have 25 minutes to walk to the car and only one headlamp",
    ],
)
def test_few_lamps_and_a_way_out(text: str) -> None:
    """Go now, by what the dusk gives; no question is put after it."""
    player = talked(*DUSK, "the sun has just set")
    said = body(player, text)
    assert "25 min on foot are about 38 min here" in said
    assert "half an hour after sunset" in said
    assert "stay close together" in said
    assert "no shortcuts" in said
    assert "blink" not in said


def test_a_way_out_by_day_moves_the_turn_back_time_alone() -> None:
    """Without dusk, lamps or a late hour it is the length of the way: 18:40 − 60 − 38 = 17:02."""
    player = talked(*DUSK, "sunset 18:40")
    assert "17:02" in body(player, "it's 25 minutes to the car")


@pytest.mark.parametrize(
    ("minutes", "key"),
    [(20, "dusk.left"), (36, "dusk.left_too_short"), (75, "dusk.gone")],
)
def test_how_long_the_dusk_lasts(minutes: int, key: str) -> None:
    """From 20:00 EDT on; sunset is at 20:31, and civil twilight ends some 35 min after it."""
    player = talked(*DUSK)
    player.happen("place 44.1512 -71.3498")
    player.happen("later 6 h")
    player.say("thanks")
    player.happen("later 6 h")
    player.happen(f"later {minutes} min")
    said = keys(player, "it's getting dark, 25 minutes to the car")
    assert {"dusk.go", "dusk.lamps", key} <= said


def test_lamps_alone_are_no_way_out() -> None:
    """Before anything was reckoned one lamp and a walk are kit and a length."""
    assert "dusk.go" not in keys(talked("start"), "25 minutes to the car, I have one headlamp")
    assert "dusk.go" not in keys(talked(PLANNED), "25 minutes to the car, I have one headlamp")


def test_few_lamps_and_more_are_danger() -> None:
    """Whoever lost the path stays where it is safe."""
    player = talked(*DUSK, "dusk")
    said = body(player, "25 minutes to the car, only one headlamp, and we can't find the path")
    assert "38 min" not in said


# what is asked and told the evening before


@pytest.mark.parametrize(
    ("language", "text"),
    [
        ("english", "the forecast says thunderstorms in the afternoon"),
        ("deutsch", "Der Wetterbericht sagt bedeckt und nachmittags Gewitter möglich"),
        ("español", "mañana dan tormentas por la tarde"),
    ],
)
def test_a_storm_that_is_forecast_is_warned_of_once(language: str, text: str) -> None:
    """Nobody in the gorge at that hour: said in front, and not again on the same plan."""
    player = talked(PLANNED, language)
    (said,) = player.say(text)
    assert said.keys[0] == "planning.thunder"
    assert "planning.thunder" not in keys(player, text)
    assert "planning.thunder" not in keys(talked(PLANNED), "no thunder, they say, only clouds")


@pytest.mark.parametrize(
    ("language", "text", "begins"),
    [
        ("english", "roughly what settings if it clouds over?", "If still overcast: f/8"),
        ("english", "rough settings if the sun is out?", "If still full sun: f/8"),
        ("deutsch", "welche Einstellung ungefähr, wenn es bedeckt ist?", "Bleibt es so (dichte"),
        ("español", "¿qué ajustes más o menos para mañana si está nublado?", "Si sigue así (cub"),
    ],
)
def test_rough_settings_for_a_light_to_come(language: str, text: str, begins: str) -> None:
    """A starting point for the light that is asked about; it does not become the forecast."""
    player = talked(PLANNED, KIT, language)
    assert body(player, text).startswith(begins)
    assert player.context is not None
    assert player.context.conversation.walk is not None
    assert player.context.conversation.walk.trip.forecast is None


def test_sun_that_comes_and_goes_is_planned_for_as_sun() -> None:
    """The harder of the two lights; with the filters that are there, at f/8 and ISO 100.

    EV 15 at f/8, ISO 100 is 1/512 s; 3 stops make 1/64, 6 stops 1/8.
    """
    player = talked(PLANNED, KIT)
    assert body(player, "forecast is sun with some clouds").startswith("Noted: full sun.")
    told = body(player, "is the 6 stop any use or leave it at home?")
    assert told.startswith("Yes, take the 6-stop ND: in full sun it makes 1/8 s.")
    assert "bare 1/500 s" in told
    assert "3-stop ND 1/60 s, 6-stop ND 1/8 s" in told
    assert "6-stop ND 1/8 s" in body(player, "and if the sun stays out?")


@pytest.mark.parametrize(
    ("language", "text", "key"),
    [
        ("english", "it rained all night, should we go another day?", "asked.after_rain"),
        ("español", "si anoche llovió mucho, ¿mejor vamos otro día?", "asked.after_rain"),
        ("deutsch", "es hat heute Nacht stark geregnet, lieber warten?", "asked.after_rain"),
        ("english", "can I fly a drone there", "asked.drone"),
        ("español", "¿se puede volar un dron allí?", "asked.drone"),
        ("english", "how many cloths do I need", "asked.pack"),
        ("deutsch", "Was muss alles in den Rucksack", "asked.pack"),
        ("español", "¿qué llevamos en la mochila?", "asked.pack"),
        ("deutsch", "Wie lange sollte ich dort bleiben", "asked.stay"),
        ("español", "¿cuánto tiempo deberíamos quedarnos?", "asked.stay"),
        ("english", "what do I write for my husband", "note.copy"),
    ],
)
def test_questions_of_the_evening_before(language: str, text: str, key: str) -> None:
    """Asked in their own words, in three languages."""
    assert key in keys(talked(PLANNED, language), text)


def test_words_of_no_frame_are_no_fault_of_one() -> None:
    """While a visit is planned nothing is wrong with a frame yet."""
    told = keys(talked(PLANNED), "drops on everything, that is what my friend said of that place")
    assert not any(key.startswith(("symptom", "cause", "ask.cause")) for key in told)
