"""Home talks drawn at random: frames told in many shapes, none to six, beside whatever else.

A message told a frame and took one back in one breath ("at 1/8 f/10 there is a white blob, keeper
or toss"), and what was said of it was looked up among the frames that were kept before it.
"""

from __future__ import annotations

from typing import Final

from hypothesis import given, settings
from hypothesis import strategies as st

from bot.dialogue.compose import AT_HOME, FIRST_LINE
from tests.dialogue.player import Player

#: Times as people write them.
_TIMES: Final = (
    *("1/8", "1/15 s", "half a second", "a fifth", "0.6 s", "2 s", "1/250", "a fifteenth"),
    *("one second", "eine achtel Sekunde", "1/4 de segundo", "30 s"),
)
_SETTINGS: Final = ("", "f10 iso 100", "f/11", "at f/8", "iso 400", "f16", "50 mm", "with a 3-stop")
#: What opens a message, and ties frames to it.
_OPENINGS: Final = (
    *("", "at", "the", "here's the", "have the same shot at", "I took", "never mind the file. at"),
    *("forget the", "which of", "the first was", "der erste war", "the last two at", "ich habe"),
)
#: What else is said of frames, or asked.
_BESIDE: Final = (
    *("", "there is a white blob in the drop, no strands", "all three channels at the right"),
    *("keeper or toss", "toss it", "drop the last one", "delete the first", "forget the third"),
    *("which do I keep?", "how do I pick", "is the white gone or can I still use it"),
    *("can I save it in the raw or is it toast", "nothing blinks", "it's mush", "soft all over"),
    *("the leaves moved", "the best one", "2 is the best", "darker than the 1/4", "too dark"),
    *("write me a line for my notebook", "what do I do differently next time"),
    *("make them equally bright", "it was overcast", "a 15 m fall from 20 m", "my favourite"),
    *("what I wanted to show is the split", "kann weg", "borra la primera", "alle sind unscharf"),
    *("metered", "the longest is mush", "all of them are soft", "number 4 has drops on the glass"),
)
_LINES: Final = (
    *("I'm home", "Home now, dry socks on", "keep", "back", "why", "1", "2", "6", "review"),
    *("! frame clipped", "! frame half", "! frame patch", "thanks", "hello?", "! later 9 h"),
    *("12 m tall, 18 m away, rock at 1.5 m, full frame 24-70, tripod", "deutsch", "español"),
)


@st.composite
def _told(draw: st.DrawFn) -> str:
    """A message that tells of none to six frames and says, or asks, something beside them."""
    opening = draw(st.sampled_from(_OPENINGS))
    times = draw(st.lists(st.sampled_from(_TIMES), max_size=6))
    frames = [f"{time} {draw(st.sampled_from(_SETTINGS))}".strip() for time in times]
    joint = draw(st.sampled_from((", ", " and ", "; ")))
    beside = draw(st.lists(st.sampled_from(_BESIDE), max_size=3))
    return ". ".join(filter(None, (f"{opening} {joint.join(frames)}".strip(), *beside))) or "hm"


_MESSAGES: Final = st.one_of(_told(), st.sampled_from(_LINES))


@settings(max_examples=80)
@given(st.lists(_MESSAGES, min_size=1, max_size=6), st.booleans())
def test_any_home_talk_is_answered(lines: list[str], home_first: bool) -> None:
    """Nothing raises, whatever is told of frames that were told before, just now, or never."""
    player = Player()
    for line in ("I'm home", *lines) if home_first else lines:
        said = player.happen(line[2:]) if line.startswith("! ") else player.say(line)
        for message in said:
            assert len(message.body.split("\n")[0]) <= FIRST_LINE, message.body
            assert len(message.body) <= AT_HOME, message.body
            assert "{" not in message.body


def test_a_frame_told_and_taken_back_in_one_breath() -> None:
    """What is dropped is one that was told before; a new frame is told of, not dropped."""
    for lines in (
        ("I'm home", "at 1/8 f10 iso 100 there is a white blob in the drop. keeper or toss"),
        ("I'm home", "the 1/8 and the 1/4, toss the 1/4"),
        ("Bin zu Hause", "bei 1/8 und 1/4 ist alles weich, die 1/4 kann weg"),
        ("I'm home", "1/8 s", "the third at 1/2 s, drop it"),
    ):
        player = Player()
        for line in lines:
            assert player.say(line)


def test_a_list_too_long_for_the_first_line() -> None:
    """Seven frames that have to be lifted: what the first line can't hold stands in the next."""
    player = Player()
    player.say("I'm home")
    player.say("1/500, 1/250, 1/125, 1/60, 1/30, 1/15, 1/8 and 1/2 s, all f/11")
    (message,) = player.say("make them equally bright")
    first, second = message.body.split("\n")
    assert message.keys == ("home.equal", "list_on")
    assert "1/500 s up 8 stops" in first
    assert second.startswith("And: ")
    assert second.endswith("1/8 s up 2 stops.")
