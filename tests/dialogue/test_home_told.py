"""Frames told in words at home: their shares, what is wrong with them, the one to keep.

Numbers are worked by hand from the formulas, each beside its test: share = speed x time / frame
covered, frame covered = distance x side / focal length, speed of a whole fall = sqrt(2 g h) / 2,
diffraction = 2.44 x 0.55 um x f-number; marked values by their exact thirds (1/15 s is 1/16 s,
f/11 is 11.31, f/22 is 22.63).
"""

from __future__ import annotations

from datetime import timedelta
from typing import Final

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from bot.dialogue.compose import AT_HOME, FIRST_LINE
from bot.dialogue.context import Context
from bot.dialogue.kept import Review
from bot.dialogue.steps.home import home_words
from bot.dialogue.turn import Turn
from tests.dialogue.player import Player
from tests.dialogue.walked import keys_of, walked

#: 10 m: sqrt(2 x 9.80665 x 10) / 2 = 7.00 m/s; 15 m x 36 mm / 24 mm = 22.5 m covered.
PLACE: Final = "a ten metre fall, I was 15 m away with the 24, upright, full frame"
FIVE: Final = "1/15, 1/8, 1/4, 1/2 and 2 s, all f/11 except the last at f/22"


def at_home(*lines: str) -> Player:
    """Somebody who is home, and what they told since."""
    player = Player()
    for line in ("I'm home", *lines):
        player.say(line)
    return player


def body(player: Player, text: str) -> str:
    """The one answer to a message."""
    (message,) = player.say(text)
    return message.body


def review_of(player: Player) -> Review:
    """What is kept of what was told."""
    assert player.context is not None
    assert player.context.conversation.review is not None
    return player.context.conversation.review


# shares and brightness


def test_a_place_told_at_home() -> None:
    """22.5 m covered; 1 % of it is 0.225 m, 0.032 s at 7 m/s; 10 % is 0.32 s. No directing."""
    (message,) = at_home().say(PLACE)
    assert "24 mm the frame covers 22 m" in message.body  # halves go to the even number
    assert "1/30 s to 0.3 s" in message.body
    assert not message.question
    assert "Wet rock" not in message.body


@pytest.mark.parametrize(
    ("frame", "line"),
    [
        # 7.002 m/s x 1/16 s / 22.5 m = 1.95 %, textured from 1 %; 1/16 to 1/2 s are 3 stops
        ("1/15 s", "1/15 s: 1.9 %, textured; 3 stops under 1/2 s"),
        # x 1/8 s: 3.89 %
        ("1/8 s", "1/8 s: 3.9 %, textured; 2 stops under 1/2 s"),
        # x 1/4 s: 7.78 %
        ("1/4 s", "1/4 s: 7.8 %, textured; 1 stop under 1/2 s"),
        # x 1/2 s: 15.6 %, silky from 10 %; the brightest, against which the others are told
        ("1/2 s", "1/2 s: 15.6 %, silky"),
        # x 2 s: 62.2 %, misty from 35 %; 2 stops more time, 2 stops less by f/22 for f/11
        ("2 s", "2 s f/22: 62 %, misty; as bright as 1/2 s"),
    ],
)
def test_each_frame_has_its_share_and_its_stops(frame: str, line: str) -> None:
    """One short line a frame, in one message."""
    lines = body(at_home(PLACE), FIVE).split("\n")
    assert line in lines
    assert next(one for one in lines if one.startswith(frame)) == line
    assert len(lines) == 5 + 1  # and what to say next


def test_a_stream_from_the_table_of_the_trade() -> None:
    """3 m covered at 2 m/s: 1/60 to 1/6 s are textured (3 m x 0.01 / 2 = 1/67, x 0.1: 1/6.7)."""
    told = body(at_home(), "a stream, 3 m away at 36 mm, full frame, leaf 2 m in 1 s")
    assert "covers 3 m" in told
    assert "1/60 s to 1/6 s" in told


def test_feet_and_another_format() -> None:
    """20 ft = 6.10 m: 5.47 m/s; 30 ft x 23.6 / 35 = 20.2 ft = 6.17 m; 1/32 s crosses 2.8 %."""
    player = at_home("20 ft fall, from 30 ft with the 35, crop camera")
    lines = body(player, "1/30 and 1/8 at f/8, 1/2 at f/16").split("\n")
    assert lines[0] == "1/30 s: 2.8 %, textured; 2 stops under 1/8 s"
    assert lines[1] == "1/8 s: 11.1 %, silky"  # 5.47 x 0.125 / 6.17
    assert lines[2] == "1/2 s f/16: 44 %, misty; as bright as 1/8 s"


def test_shares_of_a_usual_fall_until_the_place_is_told() -> None:
    """What had to be assumed is named; the table comes anew with the place."""
    player = at_home()
    assert "Assumed: full frame, 24 mm, 15 m" in body(player, "1/4 and 1 s at f/16")
    # 12 m: 7.67 m/s; 20 m x 36 / 50 = 14.4 m; 1/4 s: 13.3 %, 1 s: 53 %
    told = body(player, "12 m tall, 20 m away at 50 mm, full frame, upright")
    assert told.split("\n")[:2] == [
        "1/4 s: 13.3 %, silky; 2 stops under 1 s",
        "1 s: 53 %, misty",
    ]


def test_the_meter_in_the_light_that_was_told() -> None:
    """EV 8 at ISO 100: f/11.31 squared is 128 = 2^7, so 2^(7 - 8) = 1/2 s is right."""
    player = at_home(PLACE, FIVE)
    told = body(player, "iso 100 all of them, it was a wooded gorge, overcast")
    assert "wants about f/11, ISO 100, 1/2 s, 1 stop either way" in told
    assert "1/15 s 3 stops under, 1/8 s 2 stops under, 1/4 s 1 stop under, 1/2 s right" in told
    player = at_home(PLACE, "it was a wooded gorge, overcast")
    table = body(player, FIVE + ", iso 100")
    assert "1/8 s: 3.9 %, textured; 2 stops under the meter" in table
    assert "1/2 s: 15.6 %, silky; as metered" in table


def test_frames_told_with_their_light() -> None:
    """The table tells them against the meter; they are not listed twice."""
    keys = keys_of(at_home(PLACE), "1/8 and 1/4 s, f/11, iso 100 in a wooded gorge")
    assert keys.count("home.listed") == 2
    assert "home.metered" in keys
    assert "home.against" not in keys


def test_a_frame_that_was_metered() -> None:
    """The others are told against it."""
    player = at_home(PLACE, FIVE)
    assert "home.is_metered" in keys_of(player, "the eighth was what the meter said")
    assert "1 stop over 1/8 s" in body(player, "the quarter")
    assert "as bright as" not in body(player, "the eighth")


def test_a_filter_takes_its_light_from_the_meter() -> None:
    """EV 8 through 3 stops: the meter wants 8 x 1/2 s."""
    player = at_home(PLACE, "1/2 and 4 s at f/11, iso 100")
    assert "ISO 100, 4 s" in body(player, "a wooded gorge, with the 3-stop nd on")


# depth


@pytest.mark.parametrize(
    ("frames", "told", "key", "words"),
    [
        # At 24 mm behind the lens 1.5 m lies at 24.390 mm, 15 m at 24.038 mm: 0.352 mm apart,
        # over 2 x 0.02884 mm (diagonal / 1500): f/6.1, so the mark f/6.3. Hyperfocal at f/11:
        # 576 / (11.31 x 0.02884) + 24 = 1.79 m; near limit 3 x 1.765 / (1.79 + 3 - 0.048) = 1.1 m.
        ("1/4 s at f/11", "rock at 1.5 m, focus on three", "ample", "f/6.3: f/11 was ample"),
        ("1/4 s at f/4", "rock at 1.5 m", "short", "f/6.3: at f/4"),
        ("1/4 s at f/11", "rock at 1.5 m, focused at 15 m", "missed", "focus at 15 m"),
        ("1/4 s at f/11", "rock at 30 cm", "stack", "step back"),
        ("1/4 s", "rock at 1.5 m", "wants", "wants f/6.3"),
    ],
)
def test_depth_at_home(frames: str, told: str, key: str, words: str) -> None:
    """What the near rock wanted, against what was set and where it was focused."""
    player = at_home(PLACE, frames)
    (message,) = player.say(told)
    assert message.keys == (f"home.depth.{key}",)
    assert words in message.body
    assert f"sharp from {'1.1 m to the far wall' if key == 'ample' else ''}" in message.body or (
        key != "ample"
    )


def test_a_focus_in_feet_and_one_that_tells_nothing() -> None:
    """A bare number is in the person's units; without a lens depth can't be told."""
    player = at_home("a 30 ft fall, from 45 ft with the 24, full frame, upright", "1/4 s at f/11")
    assert "focus at 10 ft" in body(player, "rock at 5 ft, focus on 10")
    assert "focus at 12 ft" in body(player, "focus on 12 ft")
    player = at_home("1/4 s at f/11")
    assert keys_of(player, "rock at 1.5 m, focus on 3") == ("noted",)


# what is seen


def test_the_two_second_frame() -> None:
    """62 % is too long; f/22 blurs 2.44 x 0.55 x 22.63 = 30 um, f/11 half of it."""
    told = body(at_home(PLACE, FIVE), "the two second one is mush, and a bit soft on the rocks")
    assert "2 s f/22: water crosses 62 %, misty: the time is too long" in told
    assert "Diffraction 30 µm wide against 15 at f/11; not the focus" in told


@pytest.mark.parametrize(
    ("text", "key", "words"),
    [
        ("the eighth is mush", "home.mush_not", "3.9 % is textured"),
        ("the half is mush", "home.mush", "15.6 %"),
        # the aim: 4 % x 22.5 m / 7.002 m/s = 0.129 s; 7.8 % is a third of a stop past it and more
        ("the quarter is mush", "home.mush_within", "long end of textured: shorter, about 1/8 s"),
        (
            "the 1/15 is hard as ice",
            "home.hard_within",
            "short end of textured: longer, about 1/8 s",
        ),
        ("the quarter is hard as ice", "home.hard_not", "7.8 % is textured"),
        ("the eighth has soft pale discs", "home.drops", "drops on the glass"),
        ("the quarter is soft all over", "home.moved", "a camera that moved"),
        ("a white triangle top right in all five", "home.sky", "only a crop takes it"),
        ("a twig comes in at the left", "home.clutter", "the same in all of them"),
        ("the horizon is tilted in all", "home.tilted", "All of them: turn it level"),
        ("nothing blinked", "home.holds", "The white holds in all of them"),
        # 1/2 s at f/11 is as bright as 2 s at f/22; the next darker one is 1/4 s, 1 stop down
        ("the half blinked in patches", "home.clipped_other", "1/4 s, 1 stop darker"),
        ("the 1/15 blinked", "home.clipped", "lost"),
        ("the 1/15 is too dark", "home.dark", "3 stops under 1/2 s"),
        ("the half is too dark", "home.dark_alone", "up to 3 stops"),
        # 1/2 s to 1/16 s are 3 stops
        ("leaves smeared in the half", "home.leaves_from", "from 1/15 s"),
        ("leaves smeared in the 1/15", "home.leaves", "no shorter frame"),
        ("what do you think of the half?", "home.no_sight", "15.6 %, silky"),
        ("is the two second one mush?", "home.mush", "62 %"),
        ("how do i fix the blue cast", "home.blue", "6500 to 8000 K"),
        ("the quarter is lovely", "home.good", "7.8 %, textured; that holds"),
        ("the quarter", "home.no_sight", "1 stop under 1/2 s"),
        ("the quarter is darker than the half", "home.compared", "1 stop darker than 1/2 s"),
        ("the half is brighter than the quarter", "home.compared", "1 stop brighter than 1/4 s"),
        ("the two second one is as bright as the half", "home.compared_same", "as they are"),
        ("it is soft", "home.name_it", "like 1/15 s"),
        ("blub", "home.name_it", "1/15 s"),
        ("all of them", "home.name_it", "1/15 s"),
    ],
)
def test_what_is_seen_in_a_frame(text: str, key: str, words: str) -> None:
    """The cause by the numbers, and what is left to do at home."""
    (message,) = at_home(PLACE, FIVE).say(text)
    assert key in message.keys
    assert words in message.body
    assert not message.question


def test_softness_has_several_causes() -> None:
    """Too open for the near rock, a phone, or no f-number to judge by."""
    told = "1/4 s at f/4"
    player = at_home(PLACE, told, "rock at 1.5 m")
    assert "wants f/6.3" in body(player, "it is soft all over")
    player = at_home("a 10 m fall from 15 m, just my phone", "1/4 s")
    assert keys_of(player, "it is soft") == ("home.soft_phone",)
    assert keys_of(at_home(PLACE, "1/4 s"), "it is soft") == ("home.moved",)
    player = at_home("1/4 s at f/5.6", "rock at 1.5 m")
    assert keys_of(player, "it is soft") == ("home.moved",)


def test_what_is_said_goes_on_with_the_frame_before() -> None:
    """The frame that was spoken of last is meant by "it"; the only frame needs no name."""
    player = at_home(PLACE, FIVE, "the eighth has drops")
    assert body(player, "and it is too dark").startswith("1/8 s: 2 stops under 1/2 s")
    assert "1/4 s: soft discs" in body(at_home("1/4 s at f/11"), "drops on the glass")


def test_the_later_word_counts() -> None:
    """A frame that blinked and then did not holds; drops stay."""
    player = at_home(PLACE, FIVE, "the half blinked", "the half has drops", "the half didn't blink")
    assert review_of(player).frames[3].sights == ("drops", "holds")


def test_a_list_with_the_question_which() -> None:
    """The frames are kept, and one of them is named at once."""
    player = at_home(PLACE)
    told = body(player, "1/60, 1/8 and 2 s, all f/11, which would you keep?")
    assert told.startswith("Keep 1/8 s: textured at 3.9 %")
    assert len(review_of(player).frames) == 3


def test_a_question_keeps_nothing_as_seen() -> None:
    """Whether a frame is soft is asked, not told."""
    player = at_home(PLACE, FIVE, "is the quarter soft?")
    assert review_of(player).frames[2].sights == ()
    assert "home.no_sight" not in keys_of(player, "is f/16 bad?")
    player.say("the idea was the bend of the stream")
    assert keys_of(player, "is the quarter the best?") == ("home.no_sight",)
    assert keys_of(player, "the quarter") == ("home.best",)


def test_leaves_of_a_frame_that_is_as_bright() -> None:
    """1/15 s at ISO 400 is as bright as 1/4 s at ISO 100."""
    player = at_home(PLACE, "1/4 f/11 iso 100 and 1/15 f/11 iso 400")
    keys = keys_of(player, "first has nice threads but the leaves are a mess")
    assert keys == ("home.good", "home.leaves_equal")


def test_frames_by_their_place_in_the_row() -> None:
    """Third, fourth and fifth are places here, not times; praise stays in mind."""
    player = at_home(PLACE, "1/15 1/8 1/4 1/2 1 second, all f/11")
    player.say("the first two feel dead, the third sings, the fourth and fifth are candyfloss")
    sights = [frame.sights for frame in review_of(player).frames]
    assert sights == [(), (), ("good",), ("mush",), ("mush",)]
    assert body(player, "the third is a bit dark compared to the fourth") == (
        "1/4 s is 1 stop darker than 1/2 s: make them equal before you compare."
    )


def test_a_place_without_its_format() -> None:
    """The format is assumed and named."""
    told = body(at_home(), "15 m fall, 20 m away, at 35 mm")
    assert "covers 21 m" in told
    assert "Assumed: full frame" in told


# liking


def test_the_favourite_is_learnt_as_a_look() -> None:
    """7.78 % is kept once as a share of textured water; without a place nothing is learnt."""
    player = at_home(PLACE, FIVE)
    text = (
        "In the quarter one the threads are there, I like that one best, but darker than the half"
    )
    (message,) = player.say(text)
    assert message.keys == ("home.best", "home.compared")
    player.say("the quarter is my favourite")
    assert player.context is not None
    (share,) = player.context.person.kept_shares["textured"]
    assert share == pytest.approx(0.0778, abs=0.0001)
    player.say("no, the eighth is the best")
    assert [frame.liked for frame in review_of(player).frames] == [False, True, False, False, False]
    player = at_home(FIVE, "the quarter is the best")
    assert player.context is not None
    assert player.context.person.kept_shares == {}


@pytest.mark.parametrize(
    "said", [("keep", "the 1/2 is my favourite"), ("the 1/2 is my favourite", "keep")]
)
def test_a_shared_frame_teaches_once(said: tuple[str, str]) -> None:
    """Whether it is kept as the shared one or liked as the told one first."""
    player = at_home(PLACE)
    player.happen("frame half")
    for line in said:
        player.say(line)
    assert player.context is not None
    assert len(player.context.person.kept_shares["silky"]) == 1


def test_keep_at_home() -> None:
    """`keep` is the frame that was spoken of; else it is asked which."""
    player = at_home(PLACE, FIVE)
    assert keys_of(player, "keep") == ("home.name_it",)
    player.say("the quarter is lovely")
    assert keys_of(player, "keep") == ("home.best",)
    walk = walked("I'm home")
    assert keys_of(walk, "keep") == ("my_look.kept_walk",)
    shared = at_home()
    shared.happen("frame half")
    shared.happen("frame clipped")
    shared.say("the 1/8 is lovely")
    assert keys_of(shared, "keep")[0].startswith("my_look.kept")


# the intent


def test_the_intent_is_kept_and_judged_by() -> None:
    """Frozen to textured frames show the water's way; the frame that is named then is the best."""
    player = at_home(PLACE, FIVE)
    told = body(player, "what I wanted to show is how the water splits round the black stone")
    assert '"how the water splits round the black stone"' in told
    assert "In 1/15 s, 1/8 s and 1/4 s threads draw" in told
    assert "in 1/2 s and 2 s f/22 they have run together" in told
    assert keys_of(player, "the quarter one") == ("home.best",)
    assert "home.intent_decides" in keys_of(player, "which would you keep?")
    assert keys_of(at_home(), "the idea was the bend") == ("home.intent", "home.intent_shows")
    assert "home.intent_ask" in keys_of(at_home("1/8 and 1/4 s at f/11"), "the idea was the bend")


# the choice


def test_which_to_keep() -> None:
    """The favourite, a sound one of another look, those out, then copies, log, next time."""
    player = at_home(
        f"it's Ambry Force, {PLACE}",
        FIVE,
        "iso 100, a wooded gorge",
        "the two second one is mush and soft",
        "the quarter is the best",
        "the eighth has drops",
        "a white triangle in all of them",
    )
    lines = body(player, "so which would you keep?").split("\n")
    assert lines == [
        "Keep 1/4 s: the one you like best, textured at 7.8 % and nothing against it.",
        "Beside it at most 1/2 s, for another look.",
        "Out: 1/8 s (drops), 2 s f/22 (soft, too long).",
        # among 1/15, 1/4 and 1/2 s the brightest is 1/2 s
        (
            "Make them equal first: 1/4 s up 1 stop, 1/15 s up 3 stops. Then shape at screen size; "
            "100 % only to rule out."
        ),
        "Two copies before the card is used again.",
        "Log: Ambry Force, fall 10 m, from 15 m, at 24 mm, f/11, ISO 100, 1/4 s, wooded gorge.",
        (
            "Next time: f/11 instead of f/22; a dry cloth over the glass until the shot; a place "
            "where leaves cover the white at the border; 1/8 s, 1/4 s and 1/2 s again."
        ),
    ]
    keys = keys_of(player, "what shall I do differently next time?")
    assert keys == ("home.next_time", "home.log")
    assert keys_of(player, "a log line please") == ("home.log",)
    assert "1/15 s up 3 stops" in body(player, "how do I make them equally bright?")


def test_nothing_holds() -> None:
    """The least evil is named; the next ladder stands around the aim: 4 % x 22.5 / 7 = 0.13 s."""
    player = at_home(PLACE, "1/60 and 2 s at f/11", "the 1/60 is hard as ice", "the 2 s is mush")
    told = body(player, "which one would you keep?")
    assert "Keep 1/60 s: crisp at 0.49 % and the least against it." in told  # 7 x 1/64 / 22.5
    assert "Next time: 1/15 s, 1/8 s and 1/4 s again." in told


def test_faults_of_the_time_by_the_share() -> None:
    """Mush at the aim, 4 %, is called no texture, hardness beyond it hard: not the time."""
    player = at_home(PLACE, "1/15, 1/8 and 1/4 s", "the eighth is mush", "the 1/4 is hard as ice")
    assert "Out: 1/8 s (no texture), 1/4 s (hard)." in body(player, "which would you keep?")


def test_frames_that_are_equally_bright() -> None:
    """Nothing is lifted; a single frame is compared with none."""
    player = at_home(PLACE, "1/8 s iso 400, 1/2 s iso 100, f/11")
    assert "home.equal_already" in keys_of(player, "which would you keep?")
    player = at_home(PLACE, "1/8 s at f/11")
    assert keys_of(player, "are they equally bright?") == ("home.which_frames",)
    keys = keys_of(player, "which would you keep?")
    assert not {"home.equal", "home.equal_already", "home.out"} & set(keys)


@pytest.mark.parametrize(
    ("told", "remedy"),
    [
        ("the half is soft", "timer, stabiliser off"),
        ("leaves smeared in the half", "a short frame for the leaves"),
        ("the half blinked in patches", "a third to two thirds less light"),
        ("a twig comes in at the left", "the eye round all four sides"),
        ("the rock shines in all of them", "a polariser"),
    ],
)
def test_what_was_found_comes_next_time(told: str, remedy: str) -> None:
    """Each thing that was found has its remedy."""
    player = at_home(PLACE, FIVE, told)
    assert remedy in body(player, "what do I do next time?")


def test_too_open_for_the_rock_comes_next_time() -> None:
    """f/6.3, as above."""
    player = at_home(PLACE, "1/4 s at f/4", "rock at 1.5 m", "the foreground is soft")
    assert "f/6.3 for the near rock" in body(player, "what do I do next time?")


# frames that come otherwise


def test_shared_frames_stand_among_those_told() -> None:
    """Both are named by their times; what the picture shows is kept with the frame."""
    player = at_home("12 m tall, 18 m away, full frame, at 24 mm, upright")
    player.happen("frame half")
    player.happen("frame clipped")
    player.happen("frame shaken")
    player.happen("frame untimed")
    frames = review_of(player).frames
    assert [frame.shutter_s for frame in frames] == pytest.approx([1 / 2, 1 / 8])
    assert frames[1].sights == ("clipped", "soft")
    assert "1/2 s" in body(player, "the half second one is mush")
    assert keys_of(player, "1/4 s at f/13, that one is the best") == ("home.best",)
    assert body(player, "which would you keep?").startswith("Keep 1/4 s")


def test_a_told_frame_that_is_shared_later_is_the_same() -> None:
    """Same time and f-number: one frame; another f-number: two."""
    player = at_home("1/2 s at f/13, iso 100", "1/8 s at f/8")
    player.happen("frame half")
    assert len(review_of(player).frames) == 2
    player.happen("frame clipped")
    assert len(review_of(player).frames) == 3
    assert "1/8 s f/8" in body(player, "the last one") or review_of(player).frames[2].f_number


def test_frames_of_others_are_not_among_them() -> None:
    """Somebody else's frame is gone through on its own."""
    player = at_home("1/2 s at f/13")
    player.happen("caption clipped from my friend")
    player.say("the half is soft")
    assert len(review_of(player).frames) == 1


def test_frames_of_two_lenses_are_named_by_them() -> None:
    """Each frame's own focal length makes its share: 50 mm sees half of what 25 mm sees."""
    player = at_home("a ten metre fall, 15 m away, full frame, upright")
    lines = body(player, "1/4 and 1/4 s, the first at 25 mm, the second at 50 mm").split("\n")
    assert lines[0].startswith("1/4 s: 8.1 %")  # 7.002 x 0.25 / (15 x 36 / 25)
    assert lines[1].startswith("1/4 s 50 mm: 16.2 %")


def test_the_last_frame_of_the_walk_needs_no_telling() -> None:
    """Who comes home from a walk speaks of its frame."""
    player = walked("I'm home")
    assert "1/8 s" in body(player, "it's mush")
    assert "leaves" in body(player, "the leaves moved")


def test_frames_are_taken_back() -> None:
    """By name, or with the last answer."""
    player = at_home(PLACE, FIVE)
    assert keys_of(player, "forget the 2 s one") == ("home.dropped",)
    assert len(review_of(player).frames) == 4
    player.say("back")
    assert len(review_of(player).frames) == 5
    assert "home.dropped" not in keys_of(player, "I deleted something")


def test_a_number_that_is_put_right() -> None:
    """The frame that is named gets its new f-number: one stop more light, 3 stops under."""
    player = at_home(PLACE, FIVE)
    assert "1/8 s f/8: 3.9 %, textured; 1 stop under 1/2 s" in body(player, "the 1/8 was at f/8")


# what is no frame


@pytest.mark.parametrize(
    ("text", "key"),
    [
        ("the water is mush", "home.which_frames"),
        ("lovely evening", "aside.good"),
        ("thanks", "thanks"),
        ("it was overcast", "noted"),
        ("i haven't copied the card yet, is that urgent", "asked.copy"),
        ("what if f/16", "what_if.nothing"),
        ("which would you keep?", "asked.choose"),
        ("12 m tall", "noted"),
        ("12 m tall, and 77 of something", "noted"),
        ("is 12 m tall too small?", "noted"),
    ],
)
def test_messages_without_frames(text: str, key: str) -> None:
    """What is no frame is answered as elsewhere, without directing anybody."""
    (message,) = at_home().say(text)
    assert key in message.keys
    assert "caution.arrive_short" not in message.keys


def test_numbers_without_a_place_are_told() -> None:
    """A number that is no setting of a frame is named."""
    assert "Not placed: ‘900 m’" in body(at_home(FIVE), "1/60 at f/8, rock at 900 m")


def test_words_by_the_way_tell_no_light() -> None:
    """Words like "between the trees" beside something seen are no light."""
    player = at_home(PLACE, FIVE, "a white triangle in all of them, between the trees")
    assert review_of(player).facts.light is None
    assert review_of(player).facts.fall_height_m == 10


def test_a_thing_in_a_picture_is_no_danger() -> None:
    """What only sounds like danger is asked about, unless it is seen in a frame, by nobody."""
    text = "oben rechts ist in allen fünf ein weißes Dreieck zwischen den Bäumen"
    player = Player()
    for line in ("deutsch", "Ich bin zu Hause", FIVE):
        player.say(line)
    assert player.context is not None
    turn = Turn(player.context, player.origin(), player.now)
    assert home_words.is_of_frames(turn, text)
    assert not home_words.is_of_frames(turn, "blub")
    assert keys_of(player, text) == ("home.sky",)
    away = Turn(Context.fresh(player.origin()), player.origin(), player.now)
    assert not home_words.is_of_frames(away, text)
    fresh = Player()
    fresh.say("deutsch")
    assert "home.sky" not in keys_of(fresh, text)


def test_home_ends() -> None:
    """With a walk, with `stop`, and after eight hours; then nothing of it is left."""
    player = at_home(PLACE, FIVE)
    player.say("stop")
    assert player.context is not None
    assert player.context.conversation.review is None
    player = at_home(PLACE, FIVE)
    player.say("tomorrow: 20 m tall, 30 m away")
    assert player.context is not None
    assert player.context.conversation.review is None
    player = at_home(PLACE, FIVE)
    player.now += timedelta(hours=9)
    player.say("blub")
    assert player.context is not None
    assert player.context.conversation.review is None


def test_home_told_with_the_place() -> None:
    """The words "I am home" may stand in a message that tells more."""
    player = Player()
    assert "covers 22 m" in body(player, f"I'm home. It was {PLACE}")


SAID: Final = [
    PLACE,
    FIVE,
    "1/8, 1/4 and 1 s, f/16 iso 64",
    "20 ft fall, from 30 ft with the 35, crop camera",
    "the two second one is mush, and soft on the rocks",
    "the quarter is the best but darker than the half",
    "the eighth has drops",
    "a white triangle top right in all of them",
    "nothing blinked",
    "leaves smeared in the longest",
    "the shortest is hard as ice and too dark",
    "rock at 1.5 m, focus on three",
    "it was overcast in the woods",
    "what I wanted to show is how the water splits round the black stone",
    "which would you keep?",
    "what do I do next time",
    "how do I make them equally bright?",
    "a log line please",
    "keep",
    "back",
    "why",
    "short",
    "long",
    "deutsch",
    "español",
    "english",
    "forget the last one",
    "just my phone",
    "iso 100 all of them",
    "! frame clipped",
    "! frame half",
    "blub",
    "2",
]


@settings(max_examples=60)
@given(st.lists(st.sampled_from(SAID), min_size=1, max_size=14))
def test_any_evening_keeps_its_rules(lines: list[str]) -> None:
    """Nothing raises; the first line answers, messages fit a screen, nobody is directed."""
    player = at_home()
    for line in lines:
        said = player.happen(line[2:]) if line.startswith("! ") else player.say(line)
        for message in said:
            assert len(message.body.split("\n")[0]) <= FIRST_LINE, message.body
            assert len(message.body) <= max(AT_HOME, 1000 if "long" in lines else 0)
            assert "{" not in message.body
            assert not message.question
            assert "caution.arrive_short" not in message.keys


@settings(max_examples=80)
@given(st.text(max_size=200))
def test_any_text_is_answered_at_home(text: str) -> None:
    """Whatever is typed, something is said."""
    player = at_home(PLACE, FIVE)
    player.say(text)
    assert player.actions


# a list without a word of home, and what else is asked of it

FOUR: Final = "1/250 f/2.8 iso 3200, 1/10 f/11 iso 100, 0.6 s f/16 iso 100 and 6 s f/11 iso 100"


@pytest.mark.parametrize(
    "text",
    [
        f"I shot four frames today: {FOUR}",
        "habe heute drei Bilder gemacht: 1/8, 1/4 und 1/2 s, alle f/11",
        "hice tres fotos: 1/8, 1/4 y 1/2 s, todas a f/11",
    ],
)
def test_a_list_of_taken_frames_is_a_review(text: str) -> None:
    """Whoever tells a list of what was taken, before any walk, goes through it."""
    player = Player()
    player.say(text)
    assert len(review_of(player).frames) >= 3


@pytest.mark.parametrize(
    "text",
    ["what about 1/15, 1/8 or 1/4 s?", "I shot one frame at 1/8 s", "I took two frames: 1/8, 1/4"],
)
def test_other_times_begin_no_review(text: str) -> None:
    """Times that are asked about, and a frame or two, are of the water."""
    player = Player()
    player.say(text)
    assert player.context is not None
    assert player.context.conversation.review is None


def test_at_the_water_a_list_is_no_review() -> None:
    """Frames of an open walk are the walk's."""
    player = walked()
    player.say(f"I took these frames: {FOUR}")
    assert player.context is not None
    assert player.context.conversation.review is None


def test_a_filter_belongs_to_its_frame() -> None:
    """6 s at f/11, ISO 100 behind 6 stops are as bright as 1/10 s bare: EV 4.33 + 6 = 10.32."""
    told = body(at_home(), f"{FOUR.removesuffix(' iso 100')} with a 6 stop, iso 100")
    assert "1/10 s: 3.1 %, textured; 4 1/3 stops under 1/250 s f/2.8" in told
    assert "6 s: 198 %, misty; 4 1/3 stops under 1/250 s f/2.8" in told
    every = at_home("1/4 and 1/2 s at f/11, all with a 3 stop nd")
    assert [frame.nd_on_stops for frame in review_of(every).frames] == [3, 3]


def test_drops_in_the_air_are_no_wet_glass() -> None:
    """The fall's own drops, held by a short time."""
    player = at_home(f"{FOUR}, {PLACE}")
    text = "the first one has all the droplets hanging in the air"
    assert "home.drops" not in keys_of(player, text)
    assert "home.drops" in keys_of(player, "the second has drops in the upper left")


def test_white_cotton_is_mush_and_not_blown() -> None:
    """Nothing was said to blink."""
    keys = keys_of(at_home(FOUR), "the six second one is just white cotton")
    assert "home.mush" in keys
    assert "home.clipped" not in keys


def test_how_to_compare_fairly() -> None:
    """Equal brightness first, by how much each is to be lifted."""
    player = at_home("1/250 f/2.8 iso 3200, 1/10 f/11 iso 100")
    told = body(player, "how do I compare the first and the second fairly?")
    assert told.startswith("Make them equal first: 1/10 s f/11 up 4 1/3 stops")


def test_the_size_of_a_print_is_none_of_the_fall() -> None:
    """Grain by the highest ISO among the frames; past 1600 it shows."""
    player = at_home(FOUR)
    assert "ISO 3200 shows grain" in body(player, "is the grain a problem printed 40 cm wide?")
    assert player.context is not None
    assert player.context.facts.fall_width_m is None
    assert "ISO 400: 200 to 800" in body(at_home("1/8 and 1/4 s, iso 400"), "is grain a problem?")
    player.say("the fall is 3 m wide, it looks good on paper")
    assert player.context.facts.fall_width_m is None
