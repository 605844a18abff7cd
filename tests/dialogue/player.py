"""Plays a conversation through the engine, without a network or a clock.

A transcript is a text file: `> ` is what the person types, `< ` what the bot says, and `! ` is
something else that happens: `! later 9 h`, `! place 44.1512 -71.3498`, `! frame NAME` (a report
from `REPORTS` or a fault from `FAULTS`), `! caption NAME words` (a frame with words),
`! late NAME` (a frame whose result comes with the next `! result`), `! withdraw` (the last frame),
`! voice`, `! edit N text` (the N-th event of the person gets a new text), `! early text` (typed
before the open question was put), `! reply QUESTION text` (to an older question of the bot),
`! tap QUESTION option` (on the message of that question; `blink#2` is another one than `blink`;
without an option a poll's answer is taken back), `! untap` (the last tap is taken back),
`! timer NAME`, `! timer_late N NAME` (due N minutes ago), `! old N text` (sent N minutes ago),
`! behind M N text` (so too, with M more waiting behind it), `! old_place N LATITUDE LONGITUDE`,
`! stamped STAMP NAME words` (a frame with the camera's stamp, as `2027-06-18T08:10+120` with its
zone in minutes, or without), `! old_frame N STAMP NAME` (so too, sent N minutes ago),
`! result_of K STAMP NAME` (the result of the K-th shared frame), `! unpainted` (a result without
a picture), `! found NAME` (the result of what was asked of frames last, from `made_results`),
`! on K text` (a reply to the K-th shared frame), `! aside text` and `! aside_voice` (in a group
room, to nobody in particular).
`python -m tests.dialogue.player FILE…` plays the person's side again and writes what the bot
says now; read the difference before you keep it.
"""

from __future__ import annotations

import sys
from collections.abc import Callable, Iterable
from dataclasses import replace
from datetime import UTC, datetime, timedelta
from pathlib import Path
from typing import Final

from bot.dialogue.actions import Action, DrawCard, MeasureFrames, Say
from bot.dialogue.context import Context
from bot.dialogue.engine import handle
from bot.dialogue.events import (
    Event,
    FrameChecked,
    FrameReceived,
    MediaRef,
    Origin,
    OtherReceived,
    PlaceReceived,
    TextReceived,
    TimerFired,
    Withdrawn,
)
from core.frame.report import FrameMetadata
from tests.dialogue import made_results
from tests.dialogue.made_frames import FAULTS, REPORTS, report

__all__ = ["FAULTS", "REPORTS", "START", "Player", "play", "report"]

START: Final = datetime(2027, 6, 18, 12, 0, tzinfo=UTC)


class Player:
    """One person in one direct room; keeps context and clock between messages."""

    def __init__(self) -> None:
        self.context: Context | None = None
        self.now = START
        self.actions: tuple[Action, ...] = ()
        self.frames: list[FrameReceived] = []
        self.tap_id = ""
        self.asked: list[MeasureFrames] = []
        self._count = 0

    def origin(self, minutes: float = 0.0) -> Origin:
        """Where the next event comes from, sent so many minutes ago."""
        self._count += 1
        age = timedelta(minutes=minutes)
        return Origin(
            event_id=f"$event{self._count}",
            room_id="!creek",
            person_id="@fern:example.org",
            sent_at=self.now - age,
            age_s=age.total_seconds(),
        )

    def take(self, event: Event) -> list[Say]:
        """Answer an event; the context survives being stored between two events."""
        context = self.context or Context.fresh(event.origin)
        context, self.actions = handle(context, event, self.now)
        self.context = Context.model_validate_json(context.model_dump_json())
        self.asked += [action for action in self.actions if isinstance(action, MeasureFrames)]
        return [action for action in self.actions if isinstance(action, Say)]

    def say(self, text: str) -> list[Say]:
        """The person types a message."""
        return self.take(TextReceived(origin=self.origin(), text=text))

    def edit(self, number: int, text: str) -> list[Say]:
        """The person corrects their message of that number."""
        event = TextReceived(origin=self.origin(), text=text, corrects=f"$event{number}")
        return self.take(event)

    def frame(self, name: str, caption: str = "") -> list[Say]:
        """The person shares a frame; it is measured and the result comes back."""
        return self.share(caption) + self.result(name)

    def share(self, caption: str = "", minutes: float = 0.0) -> list[Say]:
        """The person shares a frame whose result has not come yet."""
        media = MediaRef(address="mxc://example.org/frame")
        received = FrameReceived(origin=self.origin(minutes), media=media, caption=caption)
        self.frames.append(received)
        return self.take(received)

    def result(
        self, name: str, picture: str | None = "picture", *, stamp: str = "", number: int = -1
    ) -> list[Say]:
        """The result of a shared frame comes, with or without a marked picture and a stamp."""
        shared, found = self.frames[number], REPORTS.get(name)
        if stamp and found is not None:
            found = replace(found, metadata=_stamped_at(found.metadata, stamp))
        checked = FrameChecked(
            origin=shared.origin.model_copy(update={"sent_at": self.now, "age_s": 0.0}),
            frame_event_id=shared.origin.event_id,
            report=found,
            fault=FAULTS.get(name),
            picture=picture if name in REPORTS else None,
        )
        return self.take(checked)

    def happen(self, what: str) -> list[Say]:
        """Something that is no message, by its line in a transcript."""
        self.actions = ()
        word, _, rest = what.partition(" ")
        return _HAPPENINGS[word](self, rest)


def _later(player: Player, rest: str) -> list[Say]:
    amount, unit = rest.split()
    player.now += (
        timedelta(hours=float(amount)) if unit == "h" else timedelta(minutes=float(amount))
    )
    return []


def _place(player: Player, rest: str) -> list[Say]:
    latitude, longitude = (float(part) for part in rest.split())
    event = PlaceReceived(origin=player.origin(), latitude=latitude, longitude=longitude)
    return player.take(event)


def _edit(player: Player, rest: str) -> list[Say]:
    number, _, text = rest.partition(" ")
    return player.edit(int(number), text)


def _caption(player: Player, rest: str) -> list[Say]:
    name, _, words = rest.partition(" ")
    return player.frame(name, words)


def _withdraw(player: Player, rest: str) -> list[Say]:
    frame_id = rest or player.frames[-1].origin.event_id
    return player.take(Withdrawn(origin=player.origin(), event_id=frame_id))


def _early(player: Player, rest: str) -> list[Say]:
    origin = player.origin().model_copy(update={"sent_at": player.now - timedelta(minutes=1)})
    return player.take(TextReceived(origin=origin, text=rest))


def _reply(player: Player, rest: str) -> list[Say]:
    question, _, text = rest.partition(" ")
    return player.take(TextReceived(origin=player.origin(), text=text, answers=question))


def _tap(player: Player, rest: str) -> list[Say]:
    message, _, option = rest.partition(" ")
    event = TextReceived(
        origin=player.origin(),
        text=option,
        replies_to=f"$asked-{message}",
        answers=message.partition("#")[0] if message != "nothing" else None,
        tapped=True,
    )
    player.tap_id = event.origin.event_id
    return player.take(event)


def _untap(player: Player, rest: str) -> list[Say]:
    del rest
    return player.take(Withdrawn(origin=player.origin(), event_id=player.tap_id))


def _timer(player: Player, rest: str) -> list[Say]:
    return player.take(TimerFired(origin=player.origin(), name=rest, due=player.now))


def _timer_late(player: Player, rest: str) -> list[Say]:
    minutes, name = rest.split()
    due = player.now - timedelta(minutes=float(minutes))
    return player.take(TimerFired(origin=player.origin(), name=name, due=due))


def _old(player: Player, rest: str) -> list[Say]:
    return _behind(player, f"0 {rest}")


def _behind(player: Player, rest: str) -> list[Say]:
    behind, minutes, text = rest.split(" ", 2)
    origin = player.origin(float(minutes)).model_copy(update={"behind": int(behind)})
    return player.take(TextReceived(origin=origin, text=text))


def _old_place(player: Player, rest: str) -> list[Say]:
    minutes, latitude, longitude = (float(part) for part in rest.split())
    origin = player.origin(minutes)
    return player.take(PlaceReceived(origin=origin, latitude=latitude, longitude=longitude))


def _stamped(player: Player, rest: str) -> list[Say]:
    stamp, name, *words = rest.split(" ", 2)
    return player.share(" ".join(words)) + player.result(name, stamp=stamp)


def _old_frame(player: Player, rest: str) -> list[Say]:
    minutes, stamp, name = rest.split()
    return player.share(minutes=float(minutes)) + player.result(name, stamp=stamp)


def _result_of(player: Player, rest: str) -> list[Say]:
    number, stamp, name = rest.split()
    return player.result(name, stamp=stamp, number=int(number) - 1)


def _found(player: Player, rest: str) -> list[Say]:
    if not player.asked:
        return []
    origin = player.origin().model_copy(update={"age_s": 0.0})
    return player.take(made_results.result(rest, player.asked[-1], origin))


def _on(player: Player, rest: str) -> list[Say]:
    number, _, text = rest.partition(" ")
    shared = player.frames[int(number) - 1 :]
    frame = shared[0].origin.event_id if shared else "$nothing"
    return player.take(TextReceived(origin=player.origin(), text=text, replies_to=frame))


def _stamped_at(metadata: FrameMetadata, stamp: str) -> FrameMetadata:
    """The camera's stamp and, behind its sign, the zone in minutes."""
    local, sign, zone = stamp.partition("+")
    offset_min = int(zone) if sign else None
    return replace(metadata, taken_at=f"{local}:00", taken_offset_min=offset_min)


def _aside(player: Player, rest: str) -> list[Say]:
    origin = player.origin().model_copy(update={"direct": False, "addressed": False})
    return player.take(TextReceived(origin=origin, text=rest))


def _aside_voice(player: Player, rest: str) -> list[Say]:
    del rest
    origin = player.origin().model_copy(update={"direct": False, "addressed": False})
    return player.take(OtherReceived(origin=origin, what="voice"))


_HAPPENINGS: Final[dict[str, Callable[[Player, str], list[Say]]]] = {
    "later": _later,
    "place": _place,
    "edit": _edit,
    "frame": lambda player, rest: player.frame(rest),
    "caption": _caption,
    "late": lambda player, rest: player.share(rest),
    "result": lambda player, rest: player.result(rest),
    "unpainted": lambda player, _: player.result("clean", None),
    "aside_voice": _aside_voice,
    "withdraw": _withdraw,
    "early": _early,
    "reply": _reply,
    "tap": _tap,
    "untap": _untap,
    "timer": _timer,
    "timer_late": _timer_late,
    "old": _old,
    "behind": _behind,
    "old_place": _old_place,
    "stamped": _stamped,
    "old_frame": _old_frame,
    "result_of": _result_of,
    "found": _found,
    "on": _on,
    "aside": _aside,
    "voice": lambda player, _: player.take(OtherReceived(origin=player.origin(), what="voice")),
}


def play(lines: Iterable[str]) -> list[str]:
    """The whole transcript as it goes now, from the person's lines of an old one."""
    player = Player()
    written: list[str] = []
    for line in lines:
        if line.startswith("#"):
            written.append(line)
        elif line.startswith(("> ", "! ")):
            if written:
                written.append("")
            written.append(line)
            said = player.say(line[2:]) if line[0] == ">" else player.happen(line[2:])
            for message in said:
                written += [f"< {row}" for row in message.body.split("\n")]
            written += [f"= {_told(a)}" for a in player.actions if not isinstance(a, Say)]
    return written


def _told(action: Action) -> str:
    if isinstance(action, DrawCard):
        return "card: " + "; ".join(f"{line.label} {line.value}" for line in action.lines)
    if isinstance(action, MeasureFrames):
        frames = " ".join(frame.event_id for frame in action.frames)
        options = action.options.model_dump(mode="json", exclude_defaults=True)
        told = "; ".join(f"{name} {value}" for name, value in options.items())
        return f"measure_frames: {action.what} {frames}; {told}"
    return action.kind


def main() -> None:
    """Write the named transcripts anew."""
    for name in sys.argv[1:]:
        path = Path(name)
        path.write_text("\n".join(play(path.read_text().splitlines())) + "\n")


if __name__ == "__main__":
    main()
