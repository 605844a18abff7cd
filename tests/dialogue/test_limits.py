"""Limits of one person: told once a period, exact in their promise, and never in danger's way."""

from __future__ import annotations

from datetime import timedelta

import pytest

from bot.dialogue.actions import CheckFrame
from bot.dialogue.context import Position
from bot.dialogue.events import FrameReceived, MediaRef, TextReceived
from bot.dialogue.terms import Terms
from bot.dialogue.texts import measures
from tests.dialogue.player import START, Player
from tests.dialogue.test_message_rules import check

TIGHT = Terms(messages_a_minute=3, frames_a_day=2, most_bytes=5_000_000)


def limited(**terms: object) -> Player:
    """A person with few of everything."""
    player = Player()
    player.say("start")
    grant(player, **terms)
    assert player.context is not None
    person = player.context.person.model_copy(update={"spent": {}})
    player.context = player.context.model_copy(update={"person": person})
    return player


def grant(player: Player, **terms: object) -> None:
    """Lay other terms into the context, as the runtime does for each event."""
    assert player.context is not None
    update = {"terms": TIGHT.model_copy(update=terms)}
    player.context = player.context.model_copy(update=update)


def keys(player: Player, text: str) -> list[str]:
    """The texts that an answer to this message is made of."""
    said = player.say(text)
    check(said)
    return [key for message in said for key in message.keys]


def test_too_many_messages_are_told_once_and_for_how_long() -> None:
    """The fourth within a minute stays unread and says so; the fifth is met with silence."""
    player = limited()
    for _ in range(3):
        assert "limit.messages" not in keys(player, "thanks")
    player.now += timedelta(seconds=20)
    said = player.say("full frame, 24-70")
    assert said[0].body.startswith("Not read: more than 3 messages within a minute.")
    assert "Send it again in 40 s" in said[0].body
    assert keys(player, "full frame, 24-70") == []
    assert player.context is not None
    assert not player.context.person.kit.known()
    player.now += timedelta(seconds=40)
    assert keys(player, "full frame, 24-70")
    assert player.context.person.kit.known()


def test_a_new_minute_tells_anew() -> None:
    """Each period in which the limit is reached hears of it once."""
    player = limited()
    told = 0
    for _ in range(3):
        for _ in range(6):
            told += keys(player, "thanks").count("limit.messages")
        player.now += timedelta(minutes=1)
    assert told == 3


def test_messages_that_waited_were_not_sent_in_one_minute() -> None:
    """The homeserver's stamps count: what piled up while the bot was down is all read."""
    player = limited()
    for number in range(10):
        origin = player.origin().model_copy(
            update={"sent_at": START - timedelta(minutes=10 - number)}
        )
        event = player_text(player, "thanks").model_copy(update={"origin": origin})
        assert next(key for say in player.take(event) for key in say.keys) == "thanks"


def player_text(player: Player, text: str) -> TextReceived:
    """A message that was not taken in yet."""
    return TextReceived(origin=player.origin(), text=text)


@pytest.mark.parametrize(
    ("text", "key"),
    [
        ("my friend fell in", "danger.in_water"),
        ("can I wade above the fall to the lip?", "danger."),
        ("stop", "stop.done"),
        ("forget me", "forget.what"),
        ("help", "help.how"),
    ],
)
def test_danger_and_the_way_out_are_always_read(text: str, key: str) -> None:
    """No limit stands before an emergency, nor before stop, forget me and help."""
    player = limited(messages_a_minute=1)
    for _ in range(4):
        player.say("thanks")
    assert any(said.startswith(key) or "danger" in key for said in keys(player, text))
    assert "limit.messages" not in keys(player, text)


def test_the_answer_to_sure_is_always_read() -> None:
    """Whoever asks to be forgotten can say yes to it at once, flood or not."""
    player = limited(messages_a_minute=1)
    for _ in range(3):
        player.say("thanks")
    player.say("forget me")
    player.say("yes")
    assert [action.kind for action in player.actions] == ["forget_person"]


def test_in_an_emergency_nothing_is_counted() -> None:
    """Frames, places and words are met as an emergency is, however many came."""
    player = limited(messages_a_minute=1, frames_a_day=1)
    player.say("my friend fell in")
    for _ in range(5):
        assert "danger.held" in keys(player, "what now")
        assert "limit.frames" not in [k for say in player.share() for k in say.keys]


@pytest.mark.parametrize("happening", ["place 44.1512 -71.3498", "voice", "late"])
def test_what_has_no_words_counts_as_a_message(happening: str) -> None:
    """A flood of places, voice messages or frames is a flood."""
    player = limited(messages_a_minute=1)
    player.happen(happening)
    said = player.happen(happening)
    assert [message.keys[0] for message in said] == ["limit.messages"]


def test_messages_to_others_do_not_count() -> None:
    """In a group room only what is for the bot is counted, and the rest leaves no trace."""
    player = limited(messages_a_minute=1)
    before = player.context
    for _ in range(5):
        assert player.happen("aside nice light today") == []
    assert player.context == before


def test_frames_of_a_day() -> None:
    """The third frame is not measured, says when one is again, and its caption is still read."""
    player = limited(messages_a_minute=None)
    for _ in range(2):
        player.share()
        assert any(isinstance(action, CheckFrame) for action in player.actions)
    player.now += timedelta(hours=1)
    said = player.share("full frame, 24-70")
    check(said)
    assert said[0].keys == ("limit.frames", "limit.frames.why")
    assert "after 19 June, 12:00 UTC" in said[0].body
    assert not any(isinstance(action, CheckFrame) for action in player.actions)
    assert player.context is not None
    assert player.context.person.kit.known()
    assert player.share() == []
    player.now += timedelta(hours=23)
    player.share()
    assert any(isinstance(action, CheckFrame) for action in player.actions)


@pytest.mark.parametrize(
    ("room", "direct", "written"),
    [
        ("!creek", True, "19 June, 08:00 EDT"),
        ("!elsewhere", True, "19 June, 08:00 EDT"),
        ("!creek", False, "19 June, 08:00 EDT"),
        ("!elsewhere", False, "19 June, 12:00 UTC"),
    ],
)
def test_times_stand_in_the_zone_of_the_place(room: str, direct: bool, written: str) -> None:
    """Unless that would tell a group room where the person is."""
    player = limited(messages_a_minute=None, frames_a_day=0)
    assert player.context is not None
    position = Position(latitude=44.15, longitude=-71.35, shared_at=START, room_id=room)
    person = player.context.person.model_copy(update={"position": position})
    player.context = player.context.model_copy(update={"person": person})
    event = player_frame(player, direct=direct)
    assert written in player.take(event)[0].body


def player_frame(player: Player, *, direct: bool) -> FrameReceived:
    """A shared frame that was not taken in yet."""
    origin = player.origin().model_copy(update={"direct": direct})
    return FrameReceived(origin=origin, media=MediaRef(address="mxc://example.org/frame"))


def test_a_full_disk_share() -> None:
    """A frame that would not fit is refused once a day with the day on which it fits again."""
    player = limited(messages_a_minute=None, frames_a_day=None, kept_bytes=5_000_000)
    grant(
        player,
        messages_a_minute=None,
        frames_a_day=None,
        kept_bytes=5_000_000,
        room_again_at=START + timedelta(days=3),
    )
    said = player.share()
    check(said)
    assert "fill 5 MB" in said[0].body
    assert "after 21 June, 12:00 UTC" in said[0].body
    assert player.share() == []
    player.now += timedelta(days=1)
    grant(player, messages_a_minute=None, frames_a_day=None, kept_bytes=5_000_000)
    assert "after 19 July, 12:00 UTC" in player.share()[0].body
    grant(player, messages_a_minute=None, frames_a_day=None, kept_bytes=0)
    player.share()
    assert any(isinstance(action, CheckFrame) for action in player.actions)
    grant(player, messages_a_minute=None, frames_a_day=None, kept_bytes=9_000_000)
    assert player.share()[0].keys[0] == "limit.bytes"


def test_impossible_numbers_count_too() -> None:
    """What is refused for its numbers was read all the same."""
    player = limited()
    for _ in range(3):
        assert "limit.messages" not in keys(player, "f/0.1 and a fall 3000 km tall")
    assert "limit.messages" in keys(player, "f/0.1 and a fall 3000 km tall")


@pytest.mark.parametrize(("value_s", "told"), [(0.0, "1 s"), (33.2, "34 s"), (60.0, "60 s")])
def test_a_wait_is_never_told_too_short(value_s: float, told: str) -> None:
    """Seconds are rounded up (own rule)."""
    assert measures.wait(value_s) == told
