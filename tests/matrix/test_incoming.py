"""From a room's event to what a conversation understands."""

from __future__ import annotations

from datetime import UTC, datetime
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.dialogue.events import (
    Event,
    FrameReceived,
    Origin,
    OtherReceived,
    PlaceReceived,
    TextReceived,
    Withdrawn,
)
from bot.matrix.incoming import (
    Relation,
    mentions,
    read_event,
    relation_of,
    sent_at,
    without_call,
    without_mention,
)

NAMES = ("@linn:example.org", "linn", "Linn at the Fall")
ORIGIN = Origin(
    event_id="$e",
    room_id="!r",
    person_id="@ada:example.org",
    sent_at=datetime(2027, 6, 1, tzinfo=UTC),
)
ADDRESS = "mxc://example.org/leaf"
KEYS = {"key": {"k": "K", "kty": "oct"}, "iv": "I", "hashes": {"sha256": "H"}, "v": "v2"}


def _read(content: object, kind: str = "m.room.message", **more: Any) -> Event | None:
    source = {"type": kind, "content": content, **more}
    return read_event(source, ORIGIN, relation_of(source), NAMES)


@pytest.mark.parametrize(
    ("content", "text", "replies_to"),
    [
        ({"msgtype": "m.text", "body": "f/11"}, "f/11", None),
        ({"msgtype": "m.emote", "body": "waits"}, "waits", None),
        ({"msgtype": "m.text", "body": "Linn: start"}, "start", None),
        ({"msgtype": "m.text", "body": "@linn:example.org, start"}, "start", None),
        ({"msgtype": "m.text", "body": "linn at the fall : start"}, "start", None),
        ({"msgtype": "m.text", "body": "linnet: a bird"}, "linnet: a bird", None),
        ({"msgtype": "m.text", "body": "> mine, no quote"}, "> mine, no quote", None),
        ({"msgtype": "m.text", "body": "nul\0 and half \ud83d"}, "nul and half ?", None),
        (
            {
                "msgtype": "m.text",
                "body": "> <@linn:example.org> Which?\n> 1 a\n\nthe first",
                "m.relates_to": {"m.in_reply_to": {"event_id": "$q"}},
            },
            "the first",
            "$q",
        ),
        (
            {
                "msgtype": "m.text",
                "body": "> * <@linn:example.org> waves\n\nhello",
                "m.relates_to": {"m.in_reply_to": {"event_id": "$q"}},
            },
            "hello",
            "$q",
        ),
        (
            {
                "msgtype": "m.text",
                "body": "> a line of mine\nhello",
                "m.relates_to": {"m.in_reply_to": {"event_id": "$q"}},
            },
            "> a line of mine\nhello",
            "$q",
        ),
    ],
)
def test_words(content: dict[str, Any], text: str, replies_to: str | None) -> None:
    """The text without what clients and courtesy put around it."""
    assert _read(content) == TextReceived(origin=ORIGIN, text=text, replies_to=replies_to)


@pytest.mark.parametrize(
    ("kind", "content"),
    [
        ("m.room.message", {"msgtype": "m.notice", "body": "another bot"}),
        ("m.room.message", {"msgtype": "m.key.verification.request", "body": "verify"}),
        ("m.room.message", {"msgtype": "m.text", "body": "  "}),
        ("m.room.message", {"msgtype": "m.text", "body": 7}),
        ("m.room.message", {"msgtype": ["m.text"], "body": "list"}),
        ("m.room.message", {"body": "no kind"}),
        ("m.room.message", {}),
        ("m.room.message", None),
        ("m.room.message", []),
        (
            "m.reaction",
            {"m.relates_to": {"rel_type": "m.annotation", "event_id": "$a", "key": "1"}},
        ),
        ("m.room.topic", {"topic": "falls"}),
        ("m.room.redaction", {}),
    ],
)
def test_what_means_nothing(kind: str, content: object) -> None:
    """Notices, verification, state, reactions and malformed events are no events for anybody."""
    assert _read(content, kind) is None


@pytest.mark.parametrize(
    ("content", "text"),
    [
        ({"m.new_content": {"msgtype": "m.text", "body": "Linn: f/11"}}, "f/11"),
        (
            {"m.new_content": {"msgtype": "m.image", "body": "1/4 s", "filename": "leaf.jpg"}},
            "1/4 s",
        ),
        ({"m.new_content": {"msgtype": "m.image", "body": "leaf.jpg"}}, None),
        ({"m.new_content": {"msgtype": "m.notice", "body": "status"}}, None),
        ({"m.new_content": {"msgtype": "m.text", "body": ""}}, None),
        ({}, None),
    ],
)
def test_edits(content: dict[str, Any], text: str | None) -> None:
    """An edit is the new text, or the new caption, of the message that it names."""
    relation = {"m.relates_to": {"rel_type": "m.replace", "event_id": "$old"}}
    event = _read({"msgtype": "m.text", "body": "* f/11"} | content | relation)
    expected = TextReceived(origin=ORIGIN, text=text, corrects="$old") if text else None
    assert event == expected


@pytest.mark.parametrize(
    ("content", "stated_type", "stated_bytes", "caption", "encrypted"),
    [
        (
            {
                "msgtype": "m.image",
                "url": ADDRESS,
                "body": "l.jpg",
                "info": {"mimetype": "image/JPEG", "size": 9},
            },
            "image/jpeg",
            9,
            "",
            False,
        ),
        (
            {"msgtype": "m.image", "url": ADDRESS, "body": "Linn: 1/4 s", "filename": "l.jpg"},
            "",
            None,
            "1/4 s",
            False,
        ),
        (
            {"msgtype": "m.image", "url": ADDRESS, "body": "l.jpg", "filename": "l.jpg"},
            "",
            None,
            "",
            False,
        ),
        (
            {
                "msgtype": "m.image",
                "file": {"url": ADDRESS, **KEYS},
                "body": "l.jpg",
                "info": {"size": True},
            },
            "",
            None,
            "",
            True,
        ),
        (
            {
                "msgtype": "m.file",
                "url": ADDRESS,
                "body": "l.heic",
                "info": {"mimetype": "image/heic", "size": -1},
            },
            "image/heic",
            None,
            "",
            False,
        ),
        (
            {
                "msgtype": "m.file",
                "url": ADDRESS,
                "info": {"mimetype": "application/octet-stream", "size": 2**60},
            },
            "application/octet-stream",
            None,
            "",
            False,
        ),
    ],
)
def test_frames(
    content: dict[str, Any],
    stated_type: str,
    stated_bytes: int | None,
    caption: str,
    encrypted: bool,
) -> None:
    """Plain and encrypted, as picture and as file, with caption or only a file name."""
    event = _read(content)
    assert isinstance(event, FrameReceived)
    assert event.media.address == ADDRESS
    assert (event.media.stated_type, event.media.stated_bytes) == (stated_type, stated_bytes)
    assert event.caption == caption
    expected = {"key": {"k": "K"}, "iv": "I", "hashes": {"sha256": "H"}} if encrypted else None
    assert event.media.encryption == expected


@pytest.mark.parametrize(
    ("content", "what"),
    [
        ({"msgtype": "m.audio", "url": ADDRESS, "org.matrix.msc3245.voice": {}}, "voice"),
        ({"msgtype": "m.video", "url": ADDRESS}, "video"),
        ({"msgtype": "m.file", "url": ADDRESS, "info": {"mimetype": "application/pdf"}}, "unknown"),
        ({"msgtype": "m.image", "body": "no address"}, "unknown"),
        ({"msgtype": "m.image", "url": "https://example.org/a.jpg"}, "unknown"),
        ({"msgtype": "m.image", "url": "mxc://example.org/../a"}, "unknown"),
        ({"msgtype": "m.image", "file": {"url": ADDRESS, "iv": "I"}}, "unknown"),
        ({"msgtype": "m.location", "body": "here"}, "unknown"),
        ({"msgtype": "m.location", "geo_uri": "geo:91,0"}, "unknown"),
        ({"msgtype": "m.location", "geo_uri": "geo:0,181"}, "unknown"),
        ({"msgtype": "m.location", "geo_uri": "geo:north,east"}, "unknown"),
        ({"msgtype": "com.example.dice", "body": "6"}, "unknown"),
    ],
)
def test_what_carries_no_words(content: dict[str, Any], what: str) -> None:
    """Each of them is told apart as far as the answer differs."""
    event = _read(content)
    assert isinstance(event, OtherReceived)
    assert event.what == what


def test_a_sticker_is_a_sticker() -> None:
    """It is an event type of its own."""
    assert _read({"body": "wave"}, "m.sticker") == OtherReceived(origin=ORIGIN, what="sticker")


@pytest.mark.parametrize(
    ("content", "latitude", "longitude"),
    [
        ({"geo_uri": "geo:47.25,-12.5"}, 47.25, -12.5),
        ({"geo_uri": "geo:-90,180,1200;crs=wgs84;u=35"}, -90, 180),
        ({"org.matrix.msc3488.location": {"uri": "geo:1,2"}}, 1, 2),
    ],
)
def test_places(content: dict[str, Any], latitude: float, longitude: float) -> None:
    """RFC 5870: latitude first, then longitude; altitude and accuracy are not read."""
    expected = PlaceReceived(origin=ORIGIN, latitude=latitude, longitude=longitude)
    assert _read({"msgtype": "m.location", "body": "here"} | content) == expected


@pytest.mark.parametrize(
    "source", [{"content": {"redacts": "$x"}}, {"content": {}, "redacts": "$x"}]
)
def test_withdrawals(source: dict[str, Any]) -> None:
    """Room versions before and from 11 put the id in different places."""
    event = _read(source.pop("content"), "m.room.redaction", **source)
    assert event == Withdrawn(origin=ORIGIN, event_id="$x")


@pytest.mark.parametrize(
    ("relation", "expected"),
    [
        (None, Relation()),
        ({"rel_type": "m.thread"}, Relation()),
        ({"rel_type": "m.thread", "event_id": "$t"}, Relation(thread_id="$t")),
        (
            {
                "rel_type": "m.thread",
                "event_id": "$t",
                "is_falling_back": True,
                "m.in_reply_to": {"event_id": "$a"},
            },
            Relation(thread_id="$t"),
        ),
        (
            {"rel_type": "m.thread", "event_id": "$t", "m.in_reply_to": {"event_id": "$a"}},
            Relation(thread_id="$t", replies_to="$a"),
        ),
        ({"rel_type": "m.replace", "event_id": "$o"}, Relation(corrects="$o")),
        ({"rel_type": "m.replace", "event_id": 5}, Relation()),
        ({"m.in_reply_to": {"event_id": "$a"}}, Relation(replies_to="$a")),
        ({"m.in_reply_to": "$a"}, Relation()),
    ],
)
def test_relations(relation: object, expected: Relation) -> None:
    """Threads, replies inside and outside of them, and edits; a fall-back is no reply."""
    assert relation_of({"content": {"m.relates_to": relation}}) == expected


@pytest.mark.parametrize(
    ("content", "expected"),
    [
        ({"body": "x", "m.mentions": {"user_ids": ["@linn:example.org"]}}, True),
        ({"body": "x", "m.mentions": {"user_ids": ["@ada:example.org"]}}, False),
        ({"body": "x", "m.mentions": {"user_ids": "@linn:example.org"}}, False),
        ({"body": "x"}, False),
        ({"body": "ask @linn:example.org for it"}, True),
        ({"body": "ask @linn:example.org for it", "m.mentions": {}}, False),
        ({"body": "Linn: start", "m.mentions": {}}, True),
        ({"body": "I was at Linn: it rained"}, False),
        ({}, False),
    ],
)
def test_who_is_called(content: dict[str, Any], expected: bool) -> None:
    """A mention counts; where a client sends none, the id in the text; a name at the start."""
    assert mentions({"content": content}, NAMES[0], NAMES) is expected


@pytest.mark.parametrize(
    ("body", "said"),
    [
        ("@linn start", "start"),
        ("Linn at the Fall short", "short"),
        ("@Linn at the Fall: 1", "1"),
        ("[Linn](https://matrix.to/#/@linn:example.org) 12 m tall", "12 m tall"),
        ("@linn:example.org start", "start"),
        ("is that sharp, @linn?", "is that sharp?"),
        ("silky please [Linn at the Fall](https://matrix.to/#/@linn:example.org)", "silky please"),
        ("linnets sing", "linnets sing"),
        ("a frame of berlinn", "a frame of berlinn"),
        ("@linn", "@linn"),
        ("where does linn stand in this", "where does linn stand in this"),
    ],
)
def test_a_mention_is_cut_as_clients_write_it(body: str, said: str) -> None:
    """Without a colon, as a link, at the end; nothing within the words."""
    mentioned = {"m.mentions": {"user_ids": ["@linn:example.org"]}}
    assert without_mention(mentioned, body, NAMES) == said
    assert without_mention({}, body, ()) == body


def test_a_name_without_a_mention_is_a_word() -> None:
    """Who is not mentioned may be spoken of."""
    assert without_mention({}, "linn is nice", NAMES) == "linn is nice"
    assert without_mention({}, "linn: start", NAMES) == "start"


def test_without_names_nothing_is_cut() -> None:
    """A bot whose name is not known yet leaves the text as it is."""
    assert without_call("Linn: start", ("", "")) == "Linn: start"


@pytest.mark.parametrize(
    ("stamp", "expected"),
    [
        (1_000, datetime(1970, 1, 1, 0, 0, 1, tzinfo=UTC)),
        (-1, None),
        (2**63, None),
        (True, None),
        ("1000", None),
        (1.5, None),
        (None, None),
    ],
)
def test_stamps(stamp: object, expected: datetime | None) -> None:
    """Milliseconds since 1970, or nothing."""
    assert sent_at({"origin_server_ts": stamp}) == expected


JSON = st.recursive(
    st.none()
    | st.booleans()
    | st.integers()
    | st.floats()
    | st.text()
    | st.sampled_from(
        ["m.text", "m.image", "m.file", "m.location", "m.replace", "m.thread", ADDRESS, "geo:1,2"]
    ),
    lambda inner: (
        st.lists(inner)
        | st.dictionaries(
            st.sampled_from(
                [
                    "msgtype",
                    "body",
                    "url",
                    "file",
                    "info",
                    "key",
                    "k",
                    "iv",
                    "hashes",
                    "geo_uri",
                    "size",
                    "m.relates_to",
                    "rel_type",
                    "event_id",
                    "m.new_content",
                    "m.in_reply_to",
                    "redacts",
                ]
            ),
            inner,
        )
    ),
    max_leaves=12,
)


@given(JSON, st.sampled_from(["m.room.message", "m.room.redaction", "m.sticker", "x"]))
def test_no_event_breaks_the_reader(content: object, kind: str) -> None:
    """Whatever a stranger's client sends, the result can be stored as JSON text or is nothing."""
    event = _read(content, kind)
    mentions({"content": content}, NAMES[0], NAMES)
    if event is not None:
        assert event.model_dump_json().encode()
