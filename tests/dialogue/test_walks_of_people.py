"""What people say on whole walks, as eight of them did: each line answered as it was meant."""

from __future__ import annotations

import pytest

from bot.dialogue.meaning import arrival, group
from bot.dialogue.meaning.rests import with_rest
from bot.dialogue.meaning.visit_words import speaks_of_day_to_come
from bot.dialogue.reading import read
from tests.dialogue.player import Player
from tests.dialogue.walked import keys_of, walked

#: A fall of 22 m in an open gorge, with a near rock.
GORGE = "22 m tall, 30 m away, rock at 1.8 m, full frame 16-35, open gorge"


@pytest.mark.parametrize(
    "text",
    [
        "fall 22 m high, eye height 1.6 m",
        "The eye height is 1.6 m. The fall is 22 m high.",
        "The fall is 22 m high. 1.6 m is the height of the camera above the ground.",
    ],
)
def test_the_height_of_the_eye_is_the_cameras(text: str) -> None:
    """It never makes a fall of 1.6 m."""
    assert read(text).known() == {"fall_height_m": 22.0, "camera_height_m": 1.6}


@pytest.mark.parametrize(
    ("text", "look"),
    [
        ("I want that smooth water look", "silky"),
        ("he always made it look like a veil", "silky"),
        ("I'd love soft flowing water", "silky"),
        ("lovely smooth water", None),
        ("I like the smooth rock", None),
        ("make it less smooth", None),
        ("it's misty grey all over", None),
    ],
)
def test_smooth_water_is_a_look_where_it_is_wished(text: str, look: str | None) -> None:
    """A beginner's smooth is the trade's silky; praise and rock are none."""
    assert read(text).look == look


@pytest.mark.parametrize(
    ("text", "light"),
    [
        ("it is a dull day, we've got big old beeches over us", "light canopy"),
        ("overcast, beeches on the far bank", "overcast"),
    ],
)
def test_trees_over_people_are_a_canopy(text: str, light: str) -> None:
    """Three stops lie between a dull sky and the wood below it."""
    assert read(text).light == light


@pytest.mark.parametrize(
    ("text", "key"),
    [
        ("spray everywhere", "symptom.spots"),
        ("wind", "keep.leaf_frame"),
        ("which of the little wheel's A S M shall I use?", "asked.mode"),
        ("what does portrait mean", "asked.form_means"),
        ("what look would you go for?", "asked.time"),
        ("and mine, what do I set for the same look", "where.given"),
        ("how do I make them judge each other's pictures", "asked.group_review"),
        ("is f/13 enough for the boulder at 1.8 m?", "verdict.enough_yes"),
    ],
)
def test_short_words_at_the_water(text: str, key: str) -> None:
    """Each is about what it says, and no answer to what blinks."""
    assert key in keys_of(walked(told=GORGE), text)


def test_a_decimal_ends_no_question() -> None:
    """The boulder at 1.8 m leaves no .8 m behind."""
    assert "unread_rest" not in keys_of(walked(told=GORGE), "is f/13 enough for 1.8 m?")


def test_no_tripod_shook_nothing() -> None:
    """Who has none hears how to do without; a frame that is soft is another thing."""
    assert "symptom.shake_hand" not in keys_of(walked(told=GORGE), "I have no tripod")
    assert "symptom.shake_hand" in keys_of(walked(told=GORGE), "no tripod and it is all blurred")


def test_who_zooms_in_where_the_fall_does_not_fit_means_a_part() -> None:
    """The settings for that part follow; a lens a little long is asked about."""
    close = "6 m tall, 4 m away, rock at 1 m, aps-c 18-55, overcast"
    walk = Player()
    walk.say(close)
    assert "lens.section" in keys_of(walk, "ok I zoomed in to 55, what settings now")
    wide = Player()
    wide.say(close)
    said = wide.say("I'm at 22 mm")[0]
    assert "ask.too_near" in said.keys
    assert "your widest, 18 mm" in said.body


def test_averaging_is_reckoned_into_the_wished_look() -> None:
    """Two frames of 1/500 s make no textured water of what 1/60 s would."""
    told = "6 m tall, 7 m away, log at 0.9 m, aps-c 18-55, full sun, no filters, tripod"
    walk = walked(told=told)
    answers = "\n".join(message.body for message in walk.say("4"))
    assert "average 11 frames of 1/500 s" in answers


def test_a_look_that_holds_keeps_its_own_ways_out() -> None:
    """Where the frame had the wished look, its own plan names them."""
    walk = walked(told="9 m tall, 14 m away, rock 2 m, full frame 24-70, no filters, overcast")
    assert "adjust.for_look" in keys_of(walk, "3") + keys_of(walk, "3") + keys_of(walk, "3")


@pytest.mark.parametrize(
    ("kit", "text", "key"),
    [
        ("CPL and a 6 stop ND", "which of them should be on?", "asked.filter_choice"),
        ("no filters", "which of them should be on?", "asked.polariser_first"),
        ("tripod", "do I need an ND here?", "asked.nd_no"),
    ],
)
def test_which_filter_and_whether(kit: str, text: str, key: str) -> None:
    """The one whose time is nearest to the wished; none where none is there."""
    assert key in keys_of(walked(kit, told=GORGE), text)


@pytest.mark.parametrize(
    ("told", "key"),
    [
        ("9 m tall, 14 m away, full frame 24-70, bright cloud", "asked.nd_yes"),
        ("tomorrow we want to see a fall in a gorge", "asked.nd_polariser"),
        (
            "60 m tall, 80 m away, rock at 6 m, full frame 24-70, open gorge, no polariser",
            "asked.nd_aperture",
        ),
    ],
)
def test_what_polariser_or_aperture_take_calls_for_no_nd(told: str, key: str) -> None:
    """The trade's order: polariser, aperture, then an ND."""
    walk = Player()
    walk.say(told)
    light = " if it's overcast in the gorge" if "tomorrow" in told else ""
    assert key in keys_of(walk, f"do I need an ND filter{light}?")


def test_what_if_before_any_settings_is_reckoned_from_what_is_known() -> None:
    """Fall and lens are told: nobody is sent away until there are settings."""
    walk = Player()
    walk.say("stream, I'm 4 m away, rock at 0.8 m, full frame with a 20 mm, tripod, shade")
    assert "what_if.geometry" in keys_of(walk, "what if I use 35 mm instead")
    assert "what_if.time" in keys_of(walk, "why not 1 s then")
    assert "what_if.light" in keys_of(walk, "what if the sun comes out")


def test_what_if_of_nothing_says_what_it_takes() -> None:
    """Without a fall there is nothing to compare with."""
    assert "what_if.nothing" in keys_of(Player(), "what if f/16")
    assert "what_if.time" not in keys_of(Player(), "what would 1 s give me?")


@pytest.mark.parametrize(
    ("text", "key"),
    [
        ("what would 1 s give me?", "what_if.time"),
        ("f/11?", "what_if.exposure"),
        ("why not f/22?", "asked.why_not_f22"),
    ],
)
def test_one_setting_is_tried_in_any_words(text: str, key: str) -> None:
    """The number that was asked about is the one that is answered."""
    assert key in keys_of(walked(told=GORGE), text)


def test_one_of_a_teachers_people_has_a_camera_of_their_own() -> None:
    """Their look makes their time; the teacher's own camera beside it is learnt."""
    walk = Player()
    kit = "a four thirds body with a 12-40 and wants silky water"
    body = walk.say(f"One of mine has {kit}, I have APS-C. What do I tell her?")[0].body
    assert body.startswith("One of mine: f/4.5, 0.6 s, 12 mm")
    assert walk.context is not None
    assert walk.context.person.kit.camera_format == "aps-c"
    assert "group.some" in keys_of(walk, "she has no ND, only a polariser")
    assert walk.context.person.kit.nd_stops is None
    assert "asked.group" in keys_of(walk, "her f-number please")
    assert "asked.group" in keys_of(walk, "what do they all set for textured water")
    assert "group.some" not in keys_of(walk, "one of them has a 10 stop ND, should he use it?")


def test_one_is_nobody() -> None:
    """What is one's own thing is nobody else's."""
    assert group.someone("one has a 24-70") is None
    assert group.someone("mine has a 24-70") is None


@pytest.mark.parametrize(
    ("text", "here"),
    [
        ("ok we are here now. It's cloudy", True),
        ("just arrived, 20 m tall", True),
        ("wir sind jetzt da, bedeckt", True),
        ("ya estamos aquí, nublado", True),
        ("we are there at nine", False),
    ],
)
def test_who_says_here_has_arrived(text: str, *, here: bool) -> None:
    """Whatever else the message tells."""
    assert arrival.says_here(text) is here


def test_a_plan_ends_where_somebody_arrives() -> None:
    """The walk goes on from what was planned; nothing of it is asked again."""
    walk = Player()
    walk.say("Tomorrow I'd like to photograph a waterfall")
    walk.say("4 km one way with 250 m of climb, sunset 20:40")
    walk.say("18 m tall")
    walk.say("24-70 on full frame, polariser and a 3 stop")
    assert "ask.distance" in keys_of(walk, "ok we are here now. It's cloudy, all is soaked")
    assert "lens.tilted" in keys_of(walk, "I'm 25 m from it, moss rock at 2 m")


@pytest.mark.parametrize(
    ("text", "ahead"),
    [
        ("Tomorrow I want to photograph a waterfall", True),
        ("we'd like to see it on Sunday", True),
        ("I want to photograph a waterfall", False),
    ],
)
def test_a_wish_for_tomorrow_is_a_plan(text: str, *, ahead: bool) -> None:
    """Nobody has to say the word plan."""
    assert speaks_of_day_to_come(text) is ahead


@pytest.mark.parametrize(
    "text", ["nothing really in front. just the water", "nothing", "no rocks near"]
)
def test_nothing_near_answers_what_is_nearest(text: str) -> None:
    """It is not asked again."""
    walk = Player()
    walk.say("6 m tall, 12 m away")
    assert "ask.kit" in keys_of(walk, text)


@pytest.mark.parametrize(
    ("text", "told"),
    [
        ("as high as a two storey house, 10 steps away", {"fall_height_m": 6.0, "distance_m": 7.5}),
        ("maybe four storeys tall, 20 paces from me", {"fall_height_m": 12.0, "distance_m": 15.0}),
        ("18 paces away, call it 14 m", {"distance_m": 14.0}),
        ("perhaps three steps to the water", {"distance_m": 2.25}),
        ("20 steps down to the water", {}),
        ("one step back", {}),
    ],
)
def test_paces_and_storeys_are_lengths(text: str, told: dict[str, float]) -> None:
    """Who has no tape counts what is at hand; stairs measure nothing."""
    assert read(text).known() == told


@pytest.mark.parametrize(
    ("text", "hand_held"),
    [
        ("I rest it on the bench", False),
        ("no tripod, but there's a wall", False),
        ("no tripod, rock at 2 m", None),
        ("there's a rock at 2 m", None),
        ("shooting handheld, I rest it on the bench", True),
    ],
)
def test_what_a_camera_rests_on(text: str, *, hand_held: bool | None) -> None:
    """A bench holds it as a tripod does; a near rock is only a near rock."""
    assert with_rest(read(text), text).hand_held is hand_held


def test_a_rest_gives_longer_times() -> None:
    """By hand 1/15 s is the most; on the bench the look decides again."""
    walk = Player()
    walk.say("stream, 2 m away, stone at 1 m, aps-c 18-55, light canopy, no tripod")
    walk.say("leaf 3 m in 5 s")
    walk.say("1")
    assert "adjust.by_hand" in keys_of(walk, "it looks like glass needles, frozen hard")
    said = walk.say("if I rest it on the bench it holds")[0]
    assert "base.rested" in said.keys
    assert "1/15 s" not in said.body


def test_a_rest_before_any_settings_is_answered_as_ever() -> None:
    """Nothing is to be reckoned anew yet."""
    assert "asked.support" in keys_of(Player(), "I put it on the wall")


def test_a_phone_that_rests_keeps_its_settings() -> None:
    """It was propped already."""
    walk = walked("1", told="6 m tall, 15 m away, phone, overcast, no tripod")
    assert "asked.support" in keys_of(walk, "I can put it on the wall")


def test_shade_that_is_not_enough_is_said_so() -> None:
    """Three stops of shade make no silk of 1/250 s."""
    told = "6 m tall, 7 m away, log at 0.9 m, aps-c 18-55, full sun, no filters, silky water"
    walk = Player()
    walk.say(told)
    walk.say("1")
    assert "wait for cloud or shade (about 3 of the 5 2/3 stops)" in walk.say("1")[0].body


def test_who_greets_is_greeted() -> None:
    """A few words about oneself are no riddle; a question is no greeting."""
    assert "hello" in keys_of(Player(), "hi! my cousin told me to write you")
    assert "hello" not in keys_of(walked(told=GORGE), "hi! my cousin told me to write you")


@pytest.mark.parametrize(
    ("text", "noted"),
    [
        ("I moved, now there's leaves", True),
        ("the leaves are moving now", False),
    ],
)
def test_what_covers_the_sky_now_settles_it(text: str, *, noted: bool) -> None:
    """It was asked for; leaves that stir have their own answer."""
    walk = Player()
    walk.say(GORGE)
    walk.say("2")
    assert ("edges.noted" in keys_of(walk, text)) is noted


def test_whether_to_come_back_is_about_the_shade() -> None:
    """Yes, with what it needs."""
    walk = walked(told="6 m tall, 7 m away, aps-c 18-55, full sun, no filters, tripod")
    assert "asked.come_back" in keys_of(walk, "so should I come back in the evening?")


@pytest.mark.parametrize(
    ("text", "key"),
    [
        ("when does the sun reach it? It faces east", "asked.shade_east"),
        ("it is facing west, when does it get shade?", "asked.shade_west"),
        ("when does the fall get shade?", "asked.shade"),
        ("what should I pack?", "asked.pack_camera"),
    ],
)
def test_the_evening_before(text: str, key: str) -> None:
    """Which half of the day has sun, and the camera's own things."""
    walk = Player()
    walk.say("tomorrow we want to see a fall")
    assert key in keys_of(walk, text)


def test_a_phone_packs_no_filters() -> None:
    """It takes none."""
    walk = Player()
    assert "asked.pack_camera" not in keys_of(Player(), "should I bring gloves?")
    walk.say("just my phone")
    assert "asked.pack_camera" not in keys_of(walk, "what should I pack?")


def test_no_cloud_is_waited_for_under_cloud() -> None:
    """Nor is the lever of the plan itself offered instead of it."""
    walk = walked(told="9 m tall, 14 m away, rock 2 m, full frame 24-70, overcast")
    walk.say("3")
    assert "cloud or shade" not in "\n".join(m.body for m in walk.say("3"))
    dark = walked(told="9 m tall, 14 m away, rock 2 m, full frame 24-70, dusk")
    body = dark.say("too dark")[0].body
    assert "Instead" in body
    assert "or ISO 1000" not in body


def test_what_is_told_beside_a_rest_is_kept() -> None:
    """The camera is not asked for again."""
    walk = Player()
    walk.say("12 m tall, 18 m away, rock at 2 m")
    keys = keys_of(walk, "a four thirds with a 14-42, no tripod but I can put it on the railing")
    assert "ask.kit" not in keys
    assert "lens.tilted" in keys


def test_the_fall_of_a_group_is_kept() -> None:
    """Its height and distance hold for everybody, and are reckoned with at once."""
    walk = Player()
    people = "We are four, my students: a full frame, an APS-C, a four thirds and a phone."
    said = walk.say(f"{people} I teach them at a 25 m fall, we stand 35 m off")[0]
    # 4 % of the 26 m that a frame of the whole fall covers, at √(2 × 9.81 × 25) / 2 = 11 m/s
    assert said.body.startswith("All keep 1/10 s")
    assert "ask.height" not in keys_of(walk, "overcast, a rock at 2 m")


def test_a_group_that_tells_its_fall_first_is_cautioned_and_asked_no_more_of_it() -> None:
    """One line for all cameras is a beginning, too."""
    walk = Player()
    fall = "the fall is 12 m tall, 18 m away"
    people = "we are three with different cameras, full frame, aps-c and a phone"
    said = walk.say(f"{people}, {fall}. one setting for all?")[0]
    assert "caution.arrive_short" in said.keys
    assert "ask.height" not in keys_of(walk, "overcast, a rock at 2 m")


def test_a_group_at_a_fall_that_is_walked_begins_no_other_walk() -> None:
    """The fall is learnt into the walk that is under way."""
    walk = Player()
    walk.say("start")
    people = "We are four, my students: a full frame, an APS-C, a four thirds and a phone."
    said = walk.say(f"{people} I teach them at a 25 m fall, we stand 35 m off")[0]
    # 4 % of the 26 m that a frame of the whole fall covers, at √(2 × 9.81 × 25) / 2 = 11 m/s
    assert said.body.startswith("All keep 1/10 s")


def test_nothing_near_is_heard_before_it_is_asked() -> None:
    """It is no complaint of a soft front, and is not asked for then."""
    walk = Player()
    walk.say("start")
    assert "noted" in keys_of(walk, "nothing in the foreground, just railings")
    assert "ask.kit" in keys_of(walk, "12 m tall, 18 m away")
