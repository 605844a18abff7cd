"""Results of frames measured together or again: said, with their pictures behind them."""

from __future__ import annotations

from typing import Final

from bot.dialogue.actions import Say
from bot.dialogue.compose import Role
from bot.dialogue.events import FramesMeasured, NamedPicture
from bot.dialogue.steps.anywhere import access, repeat
from bot.dialogue.steps.frames import compared, drawn, look_said, measuring
from bot.dialogue.steps.incoming import shared
from bot.dialogue.texts import TEXTS, measures
from bot.dialogue.texts import frames as frame_texts
from bot.dialogue.turn import Turn
from core.errors import FrameFault
from core.frame.report import FrameReport

#: A thing at a border that was asked about so often is only named (own rule).
_ASKED: Final = 3


def came(turn: Turn, event: FramesMeasured) -> None:
    """Say what was found; a result of frames that were withdrawn meanwhile says nothing."""
    conversation = turn.context.conversation
    if not set(event.frame_event_ids) <= set(conversation.frames):
        return
    _no_longer_awaited(turn, event)
    if event.fault is not None:
        _say_fault(turn, event, event.fault)
    else:
        _say(turn, event)
        _show(turn, event)
        if event.left_out:
            turn.say(Role.ASSUMPTION, "together.left_out", number=str(len(event.left_out)))
    if not turn.question_put:
        _question_again(turn)


def _question_again(turn: Turn) -> None:
    """What stood open before: a thing at the border, which answered the walk's own, or that."""
    question = turn.context.conversation.question
    if question is not None and question.name == "border" and turn.walk.borders_open:
        turn.ask_again(question, briefly=question.times >= _ASKED)
    else:
        repeat.put_again_if_open(turn, whole=False)


def _say_fault(turn: Turn, event: FramesMeasured, fault: FrameFault) -> None:
    """Of several frames the first that could not be read says why."""
    key = frame_texts.fault_key(fault, event.fault_numbers)
    role = Role.SETTINGS
    if event.what in {"compare", "average"}:
        turn.say(role, "together.failed")
        role = Role.CHECK
    turn.say(role, key, **frame_texts.fault_values(event.fault_numbers))


def _no_longer_awaited(turn: Turn, event: FramesMeasured) -> None:
    together = turn.context.conversation.together
    if together is not None:
        pending = together.pending and together.what != event.what
        turn.change_conversation(together=together.model_copy(update={"pending": pending}))


def _say(turn: Turn, event: FramesMeasured) -> None:
    found = event.comparison
    if event.what == "grid":
        _grid(turn, event.report)
    elif event.what == "recheck" and event.report is not None:
        _rechecked(turn, event.frame_event_ids, event.report)
    elif found is not None and found.average is not None:
        drawn.average(turn, found.average)
    elif found is not None and found.illustration is not None:
        drawn.illustration(turn, found.illustration)
    elif found is not None:
        compared.say(turn, found)
    else:
        turn.say(Role.SETTINGS, "together.failed")


# where the water is


def _grid(turn: Turn, report: FrameReport | None) -> None:
    """The cells, and those in which the water seems to be."""
    water = report.water if report is not None else None
    if water is None:
        turn.say(Role.SETTINGS, "water.none_found")
        return
    cells = measures.listing(list(water.cells), TEXTS["and"])
    if water.by_person:
        turn.say(Role.SETTINGS, "water.as_told", cells=cells)
        return
    turn.say(Role.SETTINGS, "water.proposed", cells=cells)
    turn.ask("water_cells", cells=" ".join(water.cells))


def answer_cells(turn: Turn, value: str) -> None:
    """Whether the proposed cells hold the water; then the frame is measured again with them."""
    question = turn.context.conversation.question
    cells = question.values.get("cells", "") if question is not None else ""
    turn.resume_question()
    if value == "yes" and cells:
        measuring.place_water(turn, tuple(cells.split()))
    else:
        turn.say(Role.SETTINGS, "water.name_them")


def _rechecked(turn: Turn, names: tuple[str, ...], report: FrameReport) -> None:
    """A frame measured again, with the water where the person said that it is."""
    for name in names:
        shared.note_measured(turn, name, report)
    look_said.again(turn, report)


# pictures


def _show(turn: Turn, event: FramesMeasured) -> None:
    """The pictures go after the answer, each with a caption of its own."""
    letters = [chr(ord("A") + place) for place in range(len(event.frame_event_ids))]
    for picture in event.pictures:
        turn.do(_captioned(turn, picture, letters))


def _captioned(turn: Turn, picture: NamedPicture, letters: list[str]) -> Say:
    key = f"caption.together.{picture.shows}"
    caption = TEXTS.get(key, TEXTS["caption.together.marked"])
    shown = letters if picture.frame is None else letters[picture.frame : picture.frame + 1]
    frames_named = measures.listing(shown, TEXTS["and"])
    alt = TEXTS["alt.together"].format(what=caption, frames=frames_named)
    return Say(body=access.caption(turn, caption, alt), keys=(key,), picture=picture.name, alt=alt)
