"""The rules for messages at the water hold for every answer, whatever is typed."""

from __future__ import annotations

import re
import string
from collections.abc import Sequence
from datetime import timedelta
from html.parser import HTMLParser

from hypothesis import given, settings
from hypothesis import strategies as st

from bot.dialogue.actions import Say
from bot.dialogue.compose import FIRST_LINE, WHOLE, Part, Role, body_of, fit
from bot.dialogue.context import Context
from bot.dialogue.facts import Facts
from bot.dialogue.lateness import Standing, standing
from bot.dialogue.questions import QUESTIONS
from bot.dialogue.texts import TEXTS
from bot.dialogue.way_out import day_around
from tests.dialogue.made_frames import FAULTS, REPORTS
from tests.dialogue.made_results import COMPARISONS
from tests.dialogue.player import Player

#: Things that people do on a walk; drawn at random they reach most corners of the dialogue.
DOINGS = [
    "at 10:10 it was all white, f/11 1/4 s",
    "an hour ago it blinked in patches",
    "yesterday's frame was mush",
    "it is the same",
    "darker",
    "we left",
    "start",
    "back",
    "skip",
    "why",
    "where am i",
    "kit",
    "card",
    "units",
    "help",
    "stop",
    "plan",
    "forget me",
    "taps",
    "thanks",
    "1",
    "2",
    "3",
    "4",
    "7",
    "no",
    "yes",
    "12 m tall, 18 m away, rock at 1.5 m",
    "40 ft tall, 25 ft away",
    "stream, 3 m away, rock at 1 m, leaf 3 m in 2 s",
    "full frame, 16-35 and 70-200, tripod, polariser",
    "aps-c, 50 mm",
    "just my phone, no tripod",
    "four thirds 12-40, 3-stop nd",
    "full sun",
    "dense canopy",
    "f/22, iso 400, 1 s, no texture",
    "f/11, 1/4 s, iso 100, 2 stops under",
    "200 mm f/8 1/4 s, mush",
    "all of it blinks",
    "too dark",
    "one stop over, keep the time",
    "soft at the back",
    "leaves smeared",
    "everything soft",
    "round soft spots",
    "walls lean",
    "fall looks tiny",
    "black rock",
    "what if f/16",
    "what if 1/30 s",
    "what if 70 mm",
    "what if iso 800",
    "3 km walk out, 150 m climb, sunset 18:40",
    "four of us, one slow",
    "we start at 9:30",
    "it is a 45 minute walk each way, sunset 6:40 pm",
    "25 minutes to the car, dusk, one headlamp",
    "we go to Thornwick Spout tomorrow",
    "moved to 40 m away",
    "I want it silky",
    "section of 4 m",
    "camera on automatic",
    "blub",
    "f/0.1 and a fall 3000 km tall",
    "compare",
    "compare 3",
    "average",
    "average 4",
    "as 1/4 s",
    "illustrate",
    "grid",
    "b2 b3 c2",
    "down left",
    "keep",
    "my look",
    "reset my look",
    "cancel",
]
#: What comes late: by its age, in a queue, by a camera's stamp.
LATE = [
    "old 20 3",
    "old 50 all of it blinks",
    "old 200 f/11, 1/4 s, iso 100, 2 stops under",
    "old 700 too dark",
    "behind 2 50 3",
    "behind 1 0 leaves smeared",
    "behind 1 90 24-105 is with me",
    "old 90 my friend fell in",
    "stamped 2027-06-18T11:20+0 clipped",
    "stamped 2027-06-18T10:00 dark",
    "stamped 2027-06-17T10:00+120 clean",
    "old_frame 80 2027-06-18T10:30+0 unsure",
    "timer_late 9 turn_back_soon",
    "timer_late 300 turn_back_now",
]
#: What tells of light, and what gives or repeats settings.
OF_LIGHT = [
    *LATE,
    "later 11 min",
    "later 25 min",
    "later 35 min",
    "later 3 h",
    "later 9 h",
    "place 44.1512 -71.3498",
    "frame clipped",
    "frame clean",
]
HAPPENINGS = [
    *(f"frame {name}" for name in (*REPORTS, *FAULTS)),
    "place 44.1512 -71.3498",
    "place 78.2 15.6",
    "later 10 h",
    "later 40 min",
    "voice",
    "edit 2 15 m tall, 20 m away",
    "edit 2 2",
    "tap top 2",
    "tap blink 3",
    "tap blink no",
    "tap safe 2",
    "tap safe",
    "untap",
    *LATE,
    *(f"found {name}" for name in (*COMPARISONS, "looks_silky", "dark", "broken", "one_broken")),
    "on 1 compare",
    "on 1 keep",
]


def check(said: list[Say]) -> None:
    """The rules of one message."""
    for message in said:
        lines = message.body.split("\n")
        assert all(line.strip() for line in lines), "no blank line inside a message"
        assert len(lines[0]) <= FIRST_LINE, lines[0]
        assert len(message.body) <= WHOLE, message.body
        assert "{" not in message.body
        assert "`" not in message.body
        assert message.picture is None or message.alt
    assert len([message for message in said if message.question]) <= 1, "one question at most"


def walks(happenings: Sequence[str], least: int, most: int) -> st.SearchStrategy[list[str]]:
    """What a person does and what happens, in any order, as lines of the player."""
    happening = st.sampled_from([f"! {happening}" for happening in happenings])
    return st.lists(
        st.one_of(st.sampled_from(DOINGS), happening),
        min_size=least,
        max_size=most,
    )


@settings(max_examples=250)
@given(walks(HAPPENINGS, 1, 14))
def test_any_walk_keeps_the_message_rules(doings: list[str]) -> None:
    """Nothing raises, and each answer fits: 160 characters first, 320 in all, one question."""
    player = Player()
    for doing in doings:
        said = player.happen(doing[2:]) if doing.startswith("! ") else player.say(doing)
        check(said)
        if not doing.startswith("!"):
            assert player.actions, f"an answer to {doing!r}"


#: Texts that give settings for a light, whose light must be named when it is old.
SETTINGS_FOR_LIGHT = ("highlights.", "adjust.", "frame.next", "keep.leaf_frame", "told.better")
#: Those among them that give none.
NO_SETTINGS = {"highlights.sky", "highlights.new_frame"}
#: Words that bind settings to their light, by a condition or by its clock time.
BOUND = {"light.if", "light.if_silent", "light.at"}


def gives_settings(message: Say) -> bool:
    """Whether a message gives settings that were made for a light."""
    return any(
        key.startswith(SETTINGS_FOR_LIGHT) and key not in NO_SETTINGS for key in message.keys
    )


@settings(max_examples=120)
@given(walks(OF_LIGHT, 2, 16))
def test_old_light_is_named_with_its_settings(doings: list[str]) -> None:
    """No setting for light that may be older than it holds stands without time or condition."""
    player = Player()
    for doing in ("12 m tall, 18 m away, rock at 1.5 m, full frame 24-70", "1", "1", *doings):
        said = player.happen(doing[2:]) if doing.startswith("! ") else player.say(doing)
        assert player.context is not None
        walk = player.context.conversation.walk
        if walk is None or walk.light is None:
            continue
        day = day_around(player.context, player.now)
        stands = standing(walk.light, player.now, day)
        for message in said:
            if gives_settings(message) and stands is not Standing.LIVE:
                assert BOUND & set(message.keys), (doing, message.body)
            assert stands is not Standing.GONE or not gives_settings(message)


@settings(max_examples=60)
@given(
    st.lists(
        st.tuples(
            st.sampled_from(
                ["3", "all of it blinks", "rock at 2 m", "too dark", "full sun", "blub"]
            ),
            st.integers(0, 600),
        ),
        min_size=2,
        max_size=6,
    )
)
def test_a_queue_gets_one_question(queue: list[tuple[str, int]]) -> None:
    """Messages that waited are answered once each; the last answer alone ends with a question."""
    player = Player()
    for line in ("12 m tall, 18 m away, rock at 1.5 m, full frame 24-70", "1", "1"):
        player.say(line)
    player.now += timedelta(hours=12)
    ages = sorted((40 + age for _, age in queue), reverse=True)
    for number, ((text, _), age) in enumerate(zip(queue, ages, strict=True)):
        behind = len(queue) - number - 1
        (message,) = player.happen(f"behind {behind} {age} {text}")
        assert not (behind and message.question)


@settings(max_examples=200)
@given(st.text(max_size=300))
def test_any_text_gets_an_answer(text: str) -> None:
    """Whatever is typed, something is said, and nothing that was given is lost."""
    player = Player()
    player.say("12 m tall, 18 m away, rock at 1.5 m, full frame, 24-70")
    before = player.context
    check(player.say(text))
    assert player.actions
    assert before is not None
    assert player.context is not None


def test_a_refused_message_leaves_the_walk_as_it_was() -> None:
    """Nonsense in a step changes nothing but times, and how often its question was put."""
    player = Player()
    for line in ("start", "12 m tall, 18 m away", "skip"):
        player.say(line)
    before = _without_times(player.context)
    player.say("blub")
    assert _without_times(player.context) == before


def _without_times(context: Context | None) -> str:
    assert context is not None
    return re.sub(r'"(?:asked_at|last_at)":"[^"]*"|"times":\d+', "", context.model_dump_json())


def test_the_least_important_part_goes_first() -> None:
    """Safety, cautions, settings, checks, the question, assumptions: in this order they stay."""
    parts = [Part(role, "thanks") for role in Role]  # 15 characters each, and line breaks
    for room in range(1, len(parts) + 1):
        kept, left = fit(parts, 16 * room - 1)
        assert [part.role for part in kept] == list(Role)[:room]
        assert [part.role for part in left] == list(Role)[room:]


def test_the_question_stands_last() -> None:
    """The thumb is at the bottom of the screen."""
    parts = [Part(Role.QUESTION, "ask.top", {}, ("ask.top.sky",)), Part(Role.SETTINGS, "thanks")]
    assert body_of(parts).split("\n")[-1] == "Look along the top edge. 1 white sky"


def test_every_question_has_its_texts() -> None:
    """Each question and each option has words; options are short enough for a phone's line."""
    for asked in QUESTIONS.values():
        assert asked.key in TEXTS, asked.key
        for key in asked.option_keys:
            assert len(TEXTS[key]) <= 32, key


def test_options_never_look_like_values() -> None:
    """A question that expects a bare number has no numbered options."""
    numbers = {
        slot for slot, field in Facts.model_fields.items() if "float" in f"{field.annotation}"
    }
    for asked in QUESTIONS.values():
        if numbers.intersection(asked.expects) - {"shutter_s"}:
            assert not asked.options, asked.name


class _Tags(HTMLParser):
    def __init__(self) -> None:
        super().__init__()
        self.tags: set[str] = set()

    def handle_starttag(self, tag: str, attrs: object) -> None:
        del attrs
        self.tags.add(tag)


def test_formatted_bodies_use_the_small_subset() -> None:
    """Only bold, breaks and code; what was typed is escaped."""
    player = Player()
    parser = _Tags()
    for line in ("start", "12 m tall <b>& 18 m away", "full frame, 24-70", "1", "1", "why"):
        for message in player.say(line):
            parser.feed(message.formatted_body or "")
    assert parser.tags <= {"b", "br", "code"}


def test_texts_name_no_colour_alone_and_shout_never() -> None:
    """No exclamation marks; letters, digits and a few signs of the trade only."""
    allowed = set(string.printable) | set("°µ×÷√−‘’–…")
    for key, text in TEXTS.items():
        assert "!" not in text, key
        assert set(text) <= allowed, key
