"""From a message to its event's content."""

from __future__ import annotations

from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.matrix.content import MAX_CONTENT_BYTES, ROW_KEY, content_of, size_of
from bot.runtime.ports import Outgoing, UploadedMedia, UploadedPicture

KEYS: dict[str, object] = {"v": "v2", "key": {"k": "abc"}, "iv": "iv", "hashes": {"sha256": "h"}}
PLAIN = UploadedMedia("mxc://example.org/a")
SEALED = UploadedMedia("mxc://example.org/a", KEYS)


def _picture(media: UploadedMedia, thumbnail: UploadedMedia | None = None) -> UploadedPicture:
    return UploadedPicture(
        media,
        "image/png",
        1200,
        900,
        54_321,
        "marked.png",
        "a fall",
        thumbnail,
        "image/png",
        600,
        450,
        9876,
    )


@pytest.mark.parametrize(
    ("outgoing", "expected"),
    [
        (Outgoing("r", "!a", "1/4 s"), {"msgtype": "m.text", "body": "1/4 s", "m.mentions": {}}),
        (
            Outgoing("r", "!a", "measuring", notice=True),
            {"msgtype": "m.notice", "body": "measuring", "m.mentions": {}},
        ),
        (
            Outgoing("r", "!a", "a\nb", formatted_body="a<br>b", mentions=("@ada:example.org",)),
            {
                "msgtype": "m.text",
                "body": "a\nb",
                "format": "org.matrix.custom.html",
                "formatted_body": "a<br>b",
                "m.mentions": {"user_ids": ["@ada:example.org"]},
            },
        ),
        (
            Outgoing("r", "!a", "yes", reply_to="$q"),
            {
                "msgtype": "m.text",
                "body": "yes",
                "m.mentions": {},
                "m.relates_to": {"m.in_reply_to": {"event_id": "$q"}},
            },
        ),
    ],
    ids=["text", "notice", "formatted", "reply"],
)
def test_words(outgoing: Outgoing, expected: dict[str, Any]) -> None:
    """Plain body always, mentions always, formatting and relation when there are some."""
    assert content_of(outgoing) == expected | {ROW_KEY: "r"}


@pytest.mark.parametrize(("reply_to", "inside"), [("$q", "$q"), (None, "$root")])
def test_a_thread_names_its_root(reply_to: str | None, inside: str) -> None:
    """The root's id, and a fall-back reply for clients that know no threads."""
    content = content_of(Outgoing("r", "!a", "b", thread_id="$root", reply_to=reply_to))
    assert content["m.relates_to"] == {
        "rel_type": "m.thread",
        "event_id": "$root",
        "is_falling_back": True,
        "m.in_reply_to": {"event_id": inside},
    }


def test_a_picture_has_its_caption_beside_the_file_name() -> None:
    """Body and filename differ: that is what makes it a caption."""
    outgoing = Outgoing("r", "!a", "Pull back.", "<b>Pull</b> back.", picture=_picture(PLAIN))
    content = content_of(outgoing)
    assert content["msgtype"] == "m.image"
    assert (content["body"], content["filename"]) == ("Pull back.", "marked.png")
    assert content["formatted_body"] == "<b>Pull</b> back."
    assert content["url"] == "mxc://example.org/a"
    assert content["info"] == {"mimetype": "image/png", "w": 1200, "h": 900, "size": 54_321}


def test_a_picture_without_caption_says_what_it_shows() -> None:
    """Who cannot see the picture reads the words for it."""
    content = content_of(Outgoing("r", "!a", "", "", picture=_picture(PLAIN)))
    assert content["body"] == "a fall"
    assert "formatted_body" not in content


def test_an_encrypted_picture_carries_its_keys_and_no_open_address() -> None:
    """`file` in place of `url`, for the picture and for the thumbnail."""
    content = content_of(Outgoing("r", "!a", "c", picture=_picture(SEALED, SEALED)))
    file = {**KEYS, "url": "mxc://example.org/a", "mimetype": "image/png"}
    assert content["file"] == content["info"]["thumbnail_file"] == file
    assert "url" not in content
    assert "thumbnail_url" not in content["info"]
    shown = content["info"]["thumbnail_info"]
    assert shown == {"mimetype": "image/png", "w": 600, "h": 450, "size": 9876}


def test_a_plain_picture_shows_where_its_thumbnail_is() -> None:
    """The open address of the thumbnail stands in the info."""
    content = content_of(Outgoing("r", "!a", "c", picture=_picture(PLAIN, PLAIN)))
    assert content["info"]["thumbnail_url"] == "mxc://example.org/a"


def test_what_is_too_large_loses_its_formatting_first() -> None:
    """The words stay whole when they fit alone."""
    body = "x" * 30_000
    content = content_of(Outgoing("r", "!a", body, formatted_body=body))
    assert content["body"] == body
    assert "formatted_body" not in content


@given(st.text(min_size=1).map(lambda text: text * (60_000 // len(text))))
def test_no_content_is_larger_than_a_server_takes(body: str) -> None:
    """Any body, also of letters that take many bytes, is cut so that it fits."""
    content = content_of(Outgoing("r", "!a", body))
    assert size_of(content) <= MAX_CONTENT_BYTES
    assert content["body"].endswith(" …")
    assert body.startswith(content["body"].removesuffix(" …"))


def test_a_file_to_be_saved_has_no_sides() -> None:
    """It goes under its own name as a file, plain or encrypted."""
    media = UploadedMedia("mxc://mill.example/1", {"v": "v2"})
    data = UploadedPicture(media, "application/json", 0, 0, 7, "linn-my-data.json", as_file=True)
    content = content_of(Outgoing("row", "!room", "", picture=data))
    assert (content["msgtype"], content["body"]) == ("m.file", "linn-my-data.json")
    assert content["info"] == {"mimetype": "application/json", "size": 7}
    assert content["file"]["url"] == "mxc://mill.example/1"


def test_other_words_for_an_event_name_it() -> None:
    """A replacement carries the whole new message; older clients see its words with a star."""
    outgoing = Outgoing("r", "!a", "2 of 3", thread_id="$root", notice=True, replaces="$first")
    assert content_of(outgoing) == {
        "msgtype": "m.notice",
        "body": "* 2 of 3",
        "m.mentions": {},
        ROW_KEY: "r",
        "m.new_content": {"msgtype": "m.notice", "body": "2 of 3", "m.mentions": {}},
        "m.relates_to": {"rel_type": "m.replace", "event_id": "$first"},
    }
