"""What must hold for any text at all."""

from __future__ import annotations

import json
import re
import time
from pathlib import Path

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from bot.dialogue.facts import Facts, Units
from bot.dialogue.reading import number_answer, read
from bot.dialogue.reading.draft import RANGES
from tests.every import holds_for_every

CORPORA = {
    path.stem: [json.loads(line)["text"] for line in path.read_text("utf-8").splitlines()]
    for path in sorted((Path(__file__).parent / "corpus").glob("*.jsonl"))
}
TEXTS = [text for texts in CORPORA.values() for text in texts]
SLOTS = sorted(Facts.model_fields)
UNITS = st.sampled_from([None, *Units])
EXPECTING = st.frozensets(st.sampled_from(SLOTS), max_size=4)
#: Words and numbers of the trade in any order: far more likely to hit a rule than plain noise.
PIECES = st.lists(
    st.one_of(
        st.sampled_from(sorted({word for text in TEXTS for word in text.split()})),
        st.floats(-10, 10_000).map(lambda number: f"{number:.3g}"),
        st.integers(0, 5000).map(str),
    ),
    max_size=12,
).map(" ".join)


@given(text=st.text(max_size=200), units=UNITS, expecting=EXPECTING)
def test_any_text_is_read_without_a_fault(
    text: str, units: Units | None, expecting: frozenset[str]
) -> None:
    """Whatever is typed, there are facts, and numbers that answer are small."""
    assert isinstance(read(text, units=units, expecting=expecting), Facts)
    answer = number_answer(text)
    assert answer is None or 0 <= answer <= 99


@given(text=PIECES, units=UNITS, expecting=EXPECTING)
def test_no_slot_holds_an_implausible_value(
    text: str, units: Units | None, expecting: frozenset[str]
) -> None:
    """Numbers out of the ranges are never stored; every lens is a lens."""
    facts = read(text, units=units, expecting=expecting)
    for slot, (low, high) in RANGES.items():
        value = getattr(facts, slot)
        assert value is None or low <= value <= high
    for lens in facts.lenses:
        assert 3 <= lens.shortest_mm <= lens.longest_mm <= 1500
    assert all(0 < stops < 25 for stops in facts.nd_stops or ())


#: Words that stand for a number or a part of one, as a piece of a longer word too.
NUMBER_WORDS = re.compile(
    r"one|two|three|four|five|six|seven|eight|nine|ten|eleven|twel|teen|twent|thirt|fourt|fort|fift"
    r"|eigh|nint|zero|hundred|thousand|half|halv|third|quarter|tenth|couple|fore|ate|double|single"
    r"|point|\bani?\b|\ba\b|inch"
)
#: Words of the trade without any number; "knee", "centre" and "off" tell measures of their own.
PLAIN_PIECES = st.lists(
    st.sampled_from(
        sorted(
            {
                word
                for text in TEXTS
                for word in text.split()
                if not any(character.isnumeric() for character in word)
                and not NUMBER_WORDS.search(word.lower())
            }
        )
    ),
    max_size=14,
).map(" ".join)
WORDED = {"camera_height_m", "water_depth_m", "nd_on_stops", "meter_stops"}


@given(
    text=st.one_of(PLAIN_PIECES, st.text(st.characters(categories=["L", "P", "Z"]))),
    units=UNITS,
    expecting=EXPECTING,
)
def test_without_a_number_none_is_read(
    text: str, units: Units | None, expecting: frozenset[str]
) -> None:
    """Where neither a digit nor a number word is typed, no measure is told and none is left."""
    assume(not NUMBER_WORDS.search(text.lower()))
    facts = read(text, units=units, expecting=expecting)
    told = {slot for slot in RANGES if getattr(facts, slot) is not None}
    assert told <= WORDED
    assert facts.lenses == ()
    assert facts.nd_stops in (None, ())
    assert facts.sunset is None
    assert facts.unread == ()


@given(text=PIECES)
def test_a_number_is_never_used_twice(text: str) -> None:
    """There are never more facts from numbers than numbers in the message."""
    facts = read(text)
    settings = [slot for slot in RANGES if getattr(facts, slot) is not None]
    worded = {"camera_height_m", "water_depth_m", "nd_on_stops", "meter_stops"}
    digits = sum(character.isdigit() for character in text)
    words = sum(
        word in text.lower() for word in ("one", "two", "half", "third", "quarter", "a stop")
    )
    assert len(set(settings) - worded) + len(facts.lenses) <= digits + 6 * words


@pytest.mark.parametrize("name", CORPORA)
def test_case_and_spaces_do_not_matter(name: str) -> None:
    """Shouting and double spaces change nothing."""
    holds_for_every(CORPORA[name], _typed_otherwise_reads_alike)


def _typed_otherwise_reads_alike(text: str) -> None:
    plain = read(text)
    assert read(text.upper()).model_copy(update={"unread": ()}) == plain.model_copy(
        update={"unread": ()}
    )
    assert read(f"  {'  '.join(text.split(' '))} ") == plain


@given(metres=st.floats(1, 200).map(lambda number: round(number, 2)))
def test_metres_and_feet_agree(metres: float) -> None:
    """The same length in metres, centimetres, feet and yards is the same fact."""
    same = [
        f"fall {metres} m away",
        f"fall {metres * 100:.2f} cm away",
        f"fall {metres / 0.3048:.6f} ft away",
        f"fall {metres / 0.9144:.6f} yards away",
    ]
    assert [read(text).distance_m for text in same] == pytest.approx([metres] * 4, rel=1e-5)


@given(text=PIECES)
def test_reading_takes_nothing_from_the_question_when_nothing_is_typed(text: str) -> None:
    """An expectation alone fills no slot: without digits or words of the trade there are none."""
    assert read("", expecting=frozenset(SLOTS)) == Facts()
    assert read(text) == read(text)


def test_reading_is_quick() -> None:
    """A message takes about a millisecond of the processor (own rule; measured 0.4 ms)."""
    read("warm up")
    begin = time.process_time()
    for text in TEXTS:
        read(text)
    assert (time.process_time() - begin) / len(TEXTS) < 0.005  # room for a slow, busy machine


def test_the_longest_text_is_quick() -> None:
    """No message can stall the bot: patterns stay linear on hostile text."""
    begin = time.process_time()
    for piece in ("1 ", "1-", "a ", "leaves ", "1/4 s ", "no ", "f/", "rock "):
        read(piece * 5000)
    assert time.process_time() - begin < 4


#: Ways to say one fact; each reads alike wherever in the message it stands.
SAYINGS: dict[str, tuple[float | str | bool, list[str]]] = {
    "fall_height_m": (12.0, ["12 m tall", "fall is 12 m high", "height 12 m", "a 12 m waterfall"]),
    "distance_m": (18.0, ["18 m away", "I'm 18 m from the fall", "standing 18 m back"]),
    "nearest_m": (
        1.5,
        ["rock at 1.5 m", "closest stone 1.5 m away", "boulder 1.5 m in front of me"],
    ),
    "camera_height_m": (0.9, ["camera 90 cm above the water"]),
    "f_number": (11.0, ["f/11", "f11", "aperture 11", "at f/11"]),
    "shutter_s": (0.25, ["1/4", "1/4 s", "1/4s", "a quarter of a second", "shutter 1/4"]),
    "iso": (100.0, ["iso 100", "ISO100", "100 iso"]),
    "focal_mm": (24.0, ["24mm", "at 24 mm"]),
    "camera_format": ("four thirds", ["m43", "micro four thirds"]),
    "meter_stops": (-1.0, ["1 stop under", "meter says -1"]),
    "megapixels": (24.0, ["24 MP"]),
    "light": ("light canopy", ["under the trees"]),
    "portrait": (True, ["portrait", "vertical"]),
    "walk_km": (4.0, ["4 km walk"]),
    "water_speed_mps": (1.0, ["leaf takes 3 s for 3 m", "water 1 m/s"]),
}
SAID = st.lists(
    st.sampled_from(sorted(SAYINGS)).flatmap(
        lambda slot: st.tuples(st.just(slot), st.sampled_from(SAYINGS[slot][1]))
    ),
    min_size=1,
    max_size=7,
    unique_by=lambda said: said[0],
)


@given(said=SAID, between=st.sampled_from([", ", "; ", "\n", ". ", " and ", " "]))
def test_facts_are_read_in_any_order(said: list[tuple[str, str]], between: str) -> None:
    """Several facts in one message are all read, whatever their order and what parts them."""
    facts = read(between.join(words for _, words in said))
    expected = {slot: SAYINGS[slot][0] for slot, _ in said}
    assert {slot: getattr(facts, slot) for slot in expected} == expected
    assert facts.unread == ()
