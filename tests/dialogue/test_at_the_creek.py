"""What newcomers at a creek met: polariser, mush, leaf frames, frames of others, home, the plan."""

from __future__ import annotations

import math

import pytest

from bot.dialogue.meaning.at_home import brings_frame, is_home, wants_review
from bot.dialogue.meaning.frame_owner import is_of_the_last, is_theirs, tells_whose
from core.exposure import ev100
from tests.dialogue.player import Player
from tests.dialogue.walked import TOLD, keys_of, walked


def given_of(player: Player) -> tuple[float, float, float]:
    """The settings given last: f-number, time [s], speed."""
    assert player.context is not None
    walk = player.context.conversation.walk
    assert walk is not None
    assert walk.given is not None
    return walk.given.f_number, walk.given.shutter_s, walk.given.iso


def is_on(player: Player) -> bool:
    """Whether a polariser counts as on the lens."""
    assert player.context is not None
    walk = player.context.conversation.walk
    assert walk is not None
    assert walk.given is not None
    return walk.given.polariser_on


# the polariser in the bag


@pytest.mark.parametrize(
    ("light", "key", "on"),
    [
        ("", "base.offer_polariser", False),
        (", overcast", "base.offer_polariser", False),
        (", under dense trees", "base.leave_polariser", False),
        (", dusk", None, False),
        (", full sun", None, True),
    ],
)
def test_a_polariser_in_the_bag(light: str, key: str | None, *, on: bool) -> None:
    """Offered where its light is there, left off where it is short, used where it is too much."""
    player = Player()
    for line in (f"{TOLD}, polariser{light}", "1"):
        player.say(line)
    keys = keys_of(player, "1")
    assert {one for one in keys if one.endswith("_polariser")} == ({key} if key else set())
    assert is_on(player) is on


def test_a_polariser_is_offered_once() -> None:
    """New base settings on the same walk do not offer it again; a kit without one never does."""
    player = walked(told=f"{TOLD}, polariser")
    assert "base.offer_polariser" not in keys_of(player, "rock at 2 m")
    assert "base.offer_polariser" not in keys_of(walked(), "rock at 2 m")


def test_shine_is_answered_with_settings_of_one_brightness() -> None:
    """The polariser takes 1.7 stops (common practice), which the settings give back."""
    player = walked(told=f"{TOLD}, polariser")
    before = given_of(player)
    assert "symptom.glare_time" in keys_of(player, "the rocks shine so much")
    assert is_on(player)
    stops = ev100(*before) - ev100(*given_of(player))
    assert stops == pytest.approx(1.7, abs=0.2)


def test_a_polariser_that_is_not_there_is_not_on() -> None:
    """Words that there is none take it from the lens and from the kit."""
    player = walked("polariser on", told=f"{TOLD}, polariser")
    assert is_on(player)
    player.say("no polariser")
    assert not is_on(player)
    assert "symptom.glare_if" in keys_of(walked(), "the rocks shine so much")


# mush


def test_mush_goes_one_rung_at_a_time() -> None:
    """A stop of time for each complaint, the next one named; past the look it is not the time."""
    player = walked("1")
    _, before, _ = given_of(player)
    for place, words in enumerate(("mush", "soup", "mush", "cotton")):
        keys = keys_of(player, words)
        _, now, _ = given_of(player)
        stops = math.log2(before / now)
        assert stops <= 1.02 if place else stops <= 2
        assert "adjust.shorter_next" in keys
        before = now
    assert keys_of(player, "mush")[:2] == ("adjust.not_the_time", "adjust.what_else")
    assert given_of(player)[1] == before


def test_too_frozen_goes_one_rung_back() -> None:
    """The other way round, too, as far as the look is not reached at once."""
    player = walked("i took f/11 1/8 s iso 100")
    _, before, _ = given_of(player)
    player.say("the water is too frozen")
    assert math.log2(given_of(player)[1] / before) == pytest.approx(1, abs=0.02)


# the leaf frame


@pytest.mark.parametrize(
    ("lines", "water"),
    [
        (("i took f/11 1/4 s iso 100", "leaf frame"), (11.3, 1 / 4, 100)),
        (("the leaves are smeared, f/8 1/8 s iso 400",), (8, 1 / 8, 400)),
        (("! frame clean", "keep", "leaf frame"), (12.7, 1 / 12.7, 100)),
    ],
)
def test_a_leaf_frame_is_as_bright_as_the_frame_before(
    lines: tuple[str, ...], water: tuple[float, float, float]
) -> None:
    """Same brightness (to a sixth of a stop) as what was told, kept or measured last."""
    player = walked()
    said = []
    for line in lines:
        said = player.happen(line[2:]) if line.startswith("!") else player.say(line)
    assert "keep.leaf_frame" in said[0].keys
    assert given_of(player) == pytest.approx(water, rel=0.02)
    f_number, iso, _ = said[0].body.removeprefix("Leaf frame: ").split(", ")[:3]
    leaf = (float(f_number[2:]), 1 / 125, float(iso.removeprefix("ISO ")))
    assert ev100(*leaf) == pytest.approx(ev100(*water), abs=1 / 6)


def test_a_leaf_frame_before_any_frame_is_a_rule() -> None:
    """Without a frame to match there is only the rule of the trade."""
    assert "symptom.leaves" in keys_of(Player(), "leaf frame")


# frames of others


@pytest.mark.parametrize(
    ("text", "theirs"),
    [
        ("from my friend", True),
        ("lena's frame", True),
        ("not mine", True),
        ("my brother took this", True),
        ("off the internet", True),
        ("von meiner Freundin", True),
        ("nicht von mir", True),
        ("de mi amiga", True),
        ("my frame", False),
        ("today's frame", False),
        ("it's mine, with a lens from my brother", False),
        ("f/11, 1/4 s", False),
    ],
)
def test_whose_a_frame_is(text: str, *, theirs: bool) -> None:
    """Words for other people make a frame theirs; lent kit does not."""
    assert is_theirs(text) is theirs


def test_which_frame_is_meant() -> None:
    """One to come is announced, the last one is pointed at; a question tells of none."""
    assert tells_whose("here is lena's frame")
    assert not is_of_the_last("here is lena's frame")
    assert is_of_the_last("that was my friend's frame")
    assert not tells_whose("is that my friend's frame?")
    assert not tells_whose("my friend took 3 m of rope")
    assert not tells_whose("from my friend")


def test_a_frame_of_somebody_else_moves_nothing() -> None:
    """By its caption, announced, or said afterwards: walk and looks stay as they are."""
    player = walked()
    own = given_of(player)
    player.happen("caption half from my friend")
    assert given_of(player) == own
    player.say("here is lena's frame")
    player.happen("frame half")
    assert given_of(player) == own
    player.happen("frame half")
    assert given_of(player) != own
    assert "home.foreign_last" in keys_of(player, "that one is not mine")
    assert given_of(player) == own
    keys = keys_of(player, "keep")
    assert "my_look.kept_walk" in keys
    assert player.context is not None
    assert player.context.person.kept_shares == {}


def test_an_announcement_does_not_last() -> None:
    """Five minutes after it a frame is the person's own again."""
    player = walked("here is lena's frame")
    player.happen("later 10 m")
    own = given_of(player)
    player.happen("frame half")
    assert given_of(player) != own


def test_a_kept_frame_has_the_look_of_its_own_walk() -> None:
    """Other numbers told since belong to another walk: the kept share stays what it was."""
    player = walked()
    player.happen("frame half")
    player.say("another fall, 40 m tall, 60 m away")
    (message,) = player.happen("on 1 keep")
    # 7.7 m/s × 1/2 s ÷ 24 m, the numbers of the walk on which it was taken
    assert "16 %" in message.body


# at home


@pytest.mark.parametrize(
    ("text", "home"),
    [
        ("i'm home, here is the frame", True),
        ("back home", True),
        ("at the hotel now, we're at the hotel", True),
        ("home", True),
        ("bin wieder zu Hause", True),
        ("ya estoy en casa", True),
        ("we are going home", False),
        ("i left it at home", False),
        ("lift it at home", False),
        ("home now, 6 frames from the creek", True),
        ("home again. what went wrong?", True),
        ("home, sweet home is far", False),
        ("home is far", False),
        ("I'm at home, going through my frames", True),
        ("going home to go through my frames", False),
    ],
)
def test_who_is_home(text: str, *, home: bool) -> None:
    """On the way is not home, and what lies there is not who is there."""
    assert is_home(text) is home


def test_what_is_wanted_at_home() -> None:
    """Frames gone through, and whether one comes along."""
    assert wants_review("let's go through my frames")
    assert wants_review("I'm at home, going through my frames")
    assert wants_review("Bilder besprechen")
    assert not wants_review("review of the path")
    assert brings_frame("here it is")
    assert not brings_frame("i'm home")


@pytest.mark.parametrize(
    ("frame", "right", "to_try"),
    [
        ("clipped", ("look",), "2/3 stop darker"),
        ("clean", ("whites", "look"), "1/25 s and 1/6 s"),
        ("half", ("whites",), "1/30 s to 0.3 s"),
        ("dark", ("whites", "look"), "1 stop brighter"),
        ("sky", ("whites", "look"), "leaves over the sky gap"),
        ("unsure", ("look",), "2/3 stop darker"),
        ("shaken", ("whites", "look"), "the camera moved"),
        ("bordered", ("whites", "look"), "edges"),
        ("clean_borders", ("whites", "look"), "clean borders"),
        ("soft_top", ("whites", "look"), "1/15 s and 1/4 s"),
        ("time_alone", ("whites", "look"), "1/15 s and 1/4 s"),
        ("untimed", ("whites",), "half and at double"),
        ("looks_nothing", ("whites", "look"), "beside it"),
        ("nothing_known", (), "2/3 stop darker"),
    ],
)
def test_each_frame_at_home(frame: str, right: tuple[str, ...], to_try: str) -> None:
    """What was right with it, and one thing to try next time; no question, no settings for now."""
    player = walked("i'm home")
    message, *_ = player.happen(f"frame {frame}")
    assert message.keys[0] == "home.frame"
    named = {"whites": "the whites hold", "look": "the look you wanted"}
    line = next((row for row in message.body.split("\n") if row.startswith("Right")), "")
    assert all((named[one] in line) is (one in right) for one in named)
    assert to_try in message.body
    assert not message.question


def test_a_review_without_being_home() -> None:
    """Before any walk it waits for frames; at the water it goes through the one that is there."""
    fresh = Player()
    assert keys_of(fresh, "review") == ("asked.review",)
    fresh.happen("frame clean")
    keys = keys_of(fresh, "review")
    assert keys[0] == "home.frame"
    assert "home.next" in keys
    live = walked()
    live.happen("frame clean")
    assert keys_of(live, "can we look at my frames together")[-1] == "ask.leaves"


def test_home_ends_with_a_new_walk() -> None:
    """Whoever stands at a fall again gets settings again."""
    player = walked("i'm home", "start", "2")
    message, *_ = player.happen("frame clean")
    assert message.keys[0] != "home.frame"


# the plan


def test_the_plan_grows_with_what_is_told() -> None:
    """First what to send, then the way, at last the whole day."""
    player = Player()
    assert "asked.plan" in keys_of(player, "plan")
    player.say("3 km walk out, 150 m climb")
    assert "arrive.way" in keys_of(player, "plan")
    player.say("sunset 18:40")
    keys = keys_of(player, "plan")
    assert "arrive.turn_back" in keys
    assert "plan.home" in keys


def test_the_plan_names_kit_in_private_alone() -> None:
    """What somebody carries stands under `why`, with packing and notices."""
    player = Player()
    player.say("full frame 24-70, tripod")
    player.say("plan")
    assert player.context is not None
    notes = [note.key for note in player.context.conversation.why]
    assert notes[0] == "plan.kit"
    assert {"asked.pack", "asked.path_open", "asked.card"} <= set(notes)


def test_mush_is_not_gone_back_to() -> None:
    """Whose water was mush is not sent back to that time because the white leaves room."""
    player = walked()
    player.say("water looks like mush, was 1/4 f/11 iso 100")
    shorter = given_of(player)
    assert keys_of(player, "nothing blinks now")[0] == "highlights.held_own"
    assert given_of(player) == shorter


def test_a_file_without_camera_data_is_kept_by_the_settings_of_the_walk() -> None:
    """It was judged by them, too; nothing that was told is asked for."""
    player = walked()
    player.say("1/8 s f/11 iso 100")
    player.happen("frame dots")
    assert "my_look.kept_walk" in keys_of(player, "keep")


# what if, with what is in the bag


@pytest.mark.parametrize(
    ("tried", "stops", "time"),
    [
        ("what if i put the nd on", "3 stops darker", "2 s"),
        ("what if i use my grey filter", "3 stops darker", "2 s"),
        ("what if i use the 6 stop nd", "6 stops darker", "15 s"),
    ],
)
def test_an_own_filter_is_tried_without_its_strength(tried: str, stops: str, time: str) -> None:
    """The nd is the person's own, the weakest of several; a strength that is told is that one.

    1/4 s by 2 to the third is 2 s, to the sixth 16 s, which dials mark 15 s (ISO 516).
    """
    player = walked(told=f"{TOLD}, 3 stop nd, 6 stop nd")
    player.say("f/11 iso 100 1/4 s")
    (message,) = player.say(tried)
    named = f"f/11, ISO 100, {stops[0]}-stop ND: {stops}; {time} instead of 1/4 s"
    assert message.body.startswith(named)


def test_a_filter_nobody_has_is_not_tried() -> None:
    """Without an nd in the bag the question is whether one is called for."""
    player = walked(told=f"{TOLD}, no nd")
    player.say("f/11 iso 100 1/4 s")
    assert not any(key.startswith("what_if") for key in keys_of(player, "what if i put the nd on"))


@pytest.mark.parametrize("cold", ["my fingers are frozen", "we are frozen stiff"])
def test_frozen_people_are_no_frozen_water(cold: str) -> None:
    """Cold hands change no settings."""
    player = walked()
    player.say("f/11 iso 100 1/4 s")
    before = given_of(player)
    keys = keys_of(player, cold)
    assert not any(key.startswith("adjust.") for key in keys)
    assert given_of(player) == before


def test_short_messages_keep_what_is_asked_for_as_a_whole() -> None:
    """`where am I` and what is said at home are whole, whatever the cold hands asked for."""
    player = walked()
    player.say("short")
    player.say("f/11 iso 100 1/4 s")
    assert {"where.known", "where.given"} <= set(keys_of(player, "where am i"))
