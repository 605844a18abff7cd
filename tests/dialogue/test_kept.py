"""What is kept of frames and answers: looks that move an aim, truths about borders, group rooms."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st
from pydantic import ValidationError

from bot.dialogue.actions import FrameRef, MeasureFrames, Say
from bot.dialogue.aims import LEAST_KEPT, MOST_KEPT, own_aim, with_kept
from bot.dialogue.context import Context, Person
from bot.dialogue.engine import handle
from bot.dialogue.events import MediaRef, TextReceived
from bot.dialogue.kept import MOST_BORDER_ANSWERS
from bot.dialogue.steps.walk import highlights
from bot.dialogue.terms import Terms
from bot.dialogue.texts.progress import progress_line
from bot.dialogue.turn import Turn
from core.water import Look, band_of, look_of
from tests.dialogue.made_frames import REPORTS
from tests.dialogue.player import Player

WALK = ("12 m tall, 18 m away, rock at 1.5 m, full frame 24-70, tripod", "1", "1")


@given(st.lists(st.floats(1e-4, 2.0), min_size=1, max_size=40))
def test_an_own_aim_lies_in_its_look(shares: list[float]) -> None:
    """The aim of a look never leaves its band, needs three frames, and rests on the newest nine."""
    person = Person()
    for share in shares:
        person = person.model_copy(update={"kept_shares": with_kept(person, share)})
    for look in Look:
        kept = person.kept_shares.get(look.value, ())
        own = own_aim(person, look)
        assert len(kept) <= MOST_KEPT
        assert (own is None) is (len(kept) < LEAST_KEPT)
        if own is not None:
            low, high = band_of(look)
            assert low * 0.999 <= own <= high * 1.001
        assert all(look_of(share) is look for share in kept)


def test_answers_about_borders_are_kept_with_their_numbers() -> None:
    """The person's answer stands beside what was measured, until they are forgotten."""
    player = Player()
    for line in WALK:
        player.say(line)
    player.frame("bordered")
    player.say("2")
    player.say("3")
    assert player.context is not None
    answers = player.context.person.border_answers
    asked = [finding for finding in REPORTS["bordered"].borders or () if not finding.stated]
    assert [(answer.finding, answer.said) for answer in answers] == [
        (asked[0], "no"),
        (asked[1], "none"),
    ]
    assert {answer.frame_event_id for answer in answers} == {player.frames[-1].origin.event_id}


def test_no_more_answers_are_kept_than_fit() -> None:
    """The newest stay."""
    player = Player()
    for line in WALK:
        player.say(line)
    for _ in range(3):
        player.frame("stick")
        player.say("1")
        player.context = _as_if_new(player.context)
    assert player.context is not None
    many = player.context.person.border_answers * MOST_BORDER_ANSWERS
    person = player.context.person.model_copy(update={"border_answers": many})
    player.context = player.context.model_copy(update={"person": person})
    player.frame("stick")
    player.say("2")
    kept = player.context.person.border_answers
    assert (len(kept), kept[-1].said) == (MOST_BORDER_ANSWERS, "no")


def _as_if_new(context: Context | None) -> Context:
    """The same walk, with nothing told of its borders yet."""
    assert context is not None
    walk = context.conversation.walk
    assert walk is not None
    walk = walk.model_copy(update={"borders_told": ()})
    conversation = context.conversation.model_copy(update={"walk": walk})
    return context.model_copy(update={"conversation": conversation})


def test_an_answer_whose_question_is_gone_says_nothing_of_borders() -> None:
    """A frame without such things came before the answer: nothing is kept of it."""
    player = Player()
    for line in WALK:
        player.say(line)
    player.frame("stick")
    assert player.context is not None
    walk = player.context.conversation.walk
    assert walk is not None
    emptied = walk.model_copy(update={"borders_open": ()})
    conversation = player.context.conversation.model_copy(update={"walk": emptied})
    player.context = player.context.model_copy(update={"conversation": conversation})
    player.say("2")
    assert player.context.person.border_answers == ()


def _who_keeps_silky() -> Player:
    """Somebody on a walk who kept as many silky frames as move an aim."""
    player = Player()
    for line in WALK:
        player.say(line)
    for _ in range(LEAST_KEPT):
        player.frame("half")
        player.say("keep")
    return player


def _in_a_group(player: Player, text: str) -> list[Say]:
    """The same person, asking in a group room."""
    assert player.context is not None
    origin = player.origin().model_copy(update={"direct": False, "room_id": "!group"})
    room = player.context.room.model_copy(update={"direct": False})
    context = player.context.model_copy(update={"room": room})
    _, actions = handle(context, TextReceived(origin=origin, text=text), player.now)
    return [action for action in actions if isinstance(action, Say)]


def test_what_is_kept_stays_in_the_direct_room() -> None:
    """In a group nothing is said of a person's looks, and their aim is the usual one."""
    player = _who_keeps_silky()
    (direct,) = player.say("I want it silky")
    assert "Your silky is about 16 %" in direct.body
    player.say("3 m away")
    for text in ("my look", "I want it silky", "keep"):
        for said in _in_a_group(player, text):
            assert not {"my_look.used", "my_look.list", "my_look.aims_now"} & set(said.keys)


def test_kept_frames_move_what_a_comparison_aims_at() -> None:
    """Who kept three frames of a look has the next ones judged by their share."""
    player = _who_keeps_silky()
    player.say("I want it silky")
    for name in ("fifteenth", "quarter"):
        player.frame(name)
    player.say("compare")
    (wish,) = [one for one in player.actions if isinstance(one, MeasureFrames)]
    assert wish.options.aim == pytest.approx(0.16, abs=0.005)


def test_a_result_that_nobody_waits_for_is_said_all_the_same() -> None:
    """What was asked before the conversation was forgotten, or by an older bot, still comes."""
    player = Player()
    for line in WALK:
        player.say(line)
    for name in ("fifteenth", "quarter"):
        player.frame(name)
    player.say("compare")
    assert player.context is not None
    forgotten = player.context.conversation.model_copy(update={"together": None})
    player.context = player.context.model_copy(update={"conversation": forgotten})
    said = player.happen("found two")
    assert "compared.share" in said[0].keys


def test_nothing_is_kept_without_settings() -> None:
    """Who has told none hears how to begin."""
    player = Player()
    turn = Turn(Context(), player.origin(), player.now)
    highlights.holds(turn)
    assert [part.key for part in turn.parts] == ["begin"]


def test_measuring_together_counts_as_a_frame_of_the_day() -> None:
    """Who has used their frames of the day is told so, and nothing is measured."""
    player = Player()
    for line in WALK:
        player.say(line)
    for name in ("fifteenth", "quarter"):
        player.frame(name)
    assert player.context is not None
    terms = Terms(frames_a_day=1)
    player.context = player.context.model_copy(update={"terms": terms})
    player.say("compare")
    assert player.context is not None
    player.context = player.context.model_copy(update={"terms": terms})
    (said,) = player.say("compare")
    assert "limit.frames" in said.keys
    assert not any(isinstance(action, MeasureFrames) for action in player.actions)


@pytest.mark.parametrize(("total", "line"), [(1, "frame…"), (5, "frames, 2 of 5…")])
def test_progress_says_how_to_end_it(total: int, line: str) -> None:
    """One frame is not counted; several are, and the word that ends it stands there."""
    assert progress_line(2, total) == f"Measuring your {line} ‘cancel’ ends it."


@pytest.mark.parametrize(("what", "number"), [("compare", 1), ("compare", 7), ("grid", 2)])
def test_frames_are_measured_in_the_numbers_that_it_takes(what: str, number: int) -> None:
    """Too few and too many are refused where the wish is made."""
    frame = FrameRef(event_id="$f", media=MediaRef(address="mxc://example.org/frame"))
    with pytest.raises(ValidationError):
        MeasureFrames.model_validate({"what": what, "frames": (frame,) * number})
