"""Corners of lateness that no walk shows: cameras without names, group rooms, stored questions."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta

import pytest

from bot.dialogue.context import Context, Conversation
from bot.dialogue.steps.frames.frame_time import learn_clock
from bot.dialogue.turn import Turn
from bot.dialogue.walk_state import Question, Walk
from bot.dialogue.way_out import zone_told
from core.frame.report import FrameMetadata
from tests.dialogue.player import START, Player

STAMPED = FrameMetadata(maker="Alder", model="Two", taken_at="2027-06-18T09:00:00", present=True)


def learned(*frames: FrameMetadata) -> dict[str, float]:
    """The clocks that are kept after frames taken at noon."""
    turn = Turn(Context(), Player().origin(), START)
    for metadata in frames:
        learn_clock(turn, metadata, START)
    return turn.context.person.clocks


def test_a_clock_is_kept_by_camera() -> None:
    """One that states its zone is off by something else than one that does not."""
    zoned = replace(STAMPED, taken_offset_min=-240)
    assert learned(STAMPED, zoned) == {"Alder Two": -10800.0, "Alder Two, with its zone": 3600.0}


@pytest.mark.parametrize(
    "metadata",
    [
        replace(STAMPED, from_phone=True),
        replace(STAMPED, maker=None, model=None),
        replace(STAMPED, taken_at=None),
    ],
    ids=["phone", "nameless", "no stamp"],
)
def test_no_clock_to_learn(metadata: FrameMetadata) -> None:
    """Networks set the clocks of phones; a camera without a name may be any."""
    assert learned(metadata) == {}


def test_few_clocks_are_kept() -> None:
    """The eight cameras that were seen last (own rule)."""
    kept = learned(*(replace(STAMPED, model=f"{number}") for number in range(12)))
    assert list(kept) == [f"Alder {number}" for number in range(4, 12)]


def test_the_zone_of_a_place_stays_in_its_room() -> None:
    """A clock time in a group room does not tell where somebody is."""
    player = Player()
    player.happen("place 44.1512 -71.3498")
    assert player.context is not None
    here = player.origin()
    group = here.model_copy(update={"direct": False, "room_id": "!group"})
    same = here.model_copy(update={"direct": False})
    zones = [zone_told(Turn(player.context, o, START)) for o in (here, same, group)]
    assert [str(zone) for zone in zones] == ["America/New_York", "America/New_York", "None"]


def test_a_stored_question_whose_report_is_gone() -> None:
    """An older context may hold the question without what waited: the walk goes on."""
    player = Player()
    question = Question(name="light_still", asked_at=START, values={"when": "then"})
    paused = Question(name="top", asked_at=START)
    talk = Conversation(walk=Walk(), question=question, paused=paused)
    player.context = Context(conversation=talk)
    assert player.say("1")[0].question == "top"


@pytest.mark.parametrize(
    ("reply", "key"),
    [("2", "late.new_frame"), ("4", "review.dark"), ("1", "ask.settings")],
)
def test_light_of_then_before_any_walk(reply: str, key: str) -> None:
    """A first message about light of then begins no walk before the light is known."""
    player = Player()
    assert player.say("an hour ago it was too dark")[0].question == "light_still"
    assert player.context is not None
    assert player.context.conversation.walk is None
    assert key in player.say(reply)[0].keys


def test_a_reply_of_then_is_reviewed_as_what_it_chose() -> None:
    """A number to the blinking, 90 minutes old, after they have left."""
    player = Player()
    for line in ("12 m tall, 18 m away, rock at 1.5 m, full frame 24-70", "1", "1"):
        player.say(line)
    player.now += timedelta(hours=2)
    assert player.happen("old 90 3")[0].question == "light_still"
    (said,) = player.say("we have left")
    assert said.keys == ("review.clipped", "review.next")


def test_a_wrong_clock_is_learned_from_the_answer() -> None:
    """A frame of now that its camera dates two hours back: the next one is dated right."""
    player = Player()
    player.happen("place 44.1512 -71.3498")
    assert player.happen("stamped 2027-06-18T06:00 dark")[0].question == "light_still_frame"
    player.now += timedelta(minutes=1)
    answer, picture = player.say("its clock is off")
    assert "highlights.brighter" in answer.keys
    assert picture.picture is not None
    assert "highlights.held" in player.happen("stamped 2027-06-18T06:00 clean")[0].keys


def test_a_late_frame_without_a_stamp_has_no_clock_to_be_off() -> None:
    """Its age is that of its message; the question offers no camera's clock."""
    player = Player()
    player.say("12 m tall, 18 m away, rock at 1.5 m, full frame 24-70")
    player.share(minutes=70)
    assert player.result("nothing_known")[0].question == "light_still"


def test_a_frame_without_settings_teaches_no_clock() -> None:
    """Nothing shows that it is the frame that was asked for: it is as old as its stamp says."""
    player = Player()
    player.happen("place 44.1512 -71.3498")
    for line in ("skip", "12 m tall, 18 m away, rock at 1.5 m, full frame 24-70", "1", "1"):
        player.say(line)
    assert player.happen("stamped 2027-06-18T06:00 copy")[0].question == "light_still_frame"


def test_a_reminder_whose_time_has_passed_is_left_to_the_next() -> None:
    """That 15 minutes are left is not said after the turn-back time."""
    player = Player()
    player.happen("place 44.1512 -71.3498")
    player.say("3 km walk out, 150 m climb")
    player.now += timedelta(hours=10, minutes=20)  # 18:20 at the creek; turn back at 18:15
    assert player.happen("timer_late 20 turn_back_soon") == []
    assert player.happen("timer_late 5 turn_back_now")[0].keys == ("timer.turn_back_now_late",)
