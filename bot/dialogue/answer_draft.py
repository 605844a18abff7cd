"""The draft of one answer: the parts said so far, and the reasons kept for `why`."""

from __future__ import annotations

from collections.abc import Sequence

from bot.dialogue.actions import Say
from bot.dialogue.compose import AT_HOME, WHOLE, Part, Role, answer, has_room, leads
from bot.dialogue.context import Length, Person
from bot.dialogue.walk_state import Note


class AnswerDraft:
    """Grows part by part; `messages` cuts it to what a message may hold."""

    def __init__(self) -> None:
        self.parts: list[Part] = []
        self.notes: list[Note] = []
        #: Danger is never cut short, nor put as a poll.
        self.urgent = False
        #: Read at home, where there is light and time: the answer may be longer.
        self.roomy = False
        #: Asked for as a whole, like `where am i`: a person's short messages do not cut it.
        self.in_full = False
        self._keeps_why = False

    def say(self, role: Role, key: str, **values: str) -> None:
        """Add a part to the answer, once: a question and a fact may both lead to it."""
        part = Part(role, key, values)
        if part not in self.parts:
            self.parts.append(part)

    def say_list(self, role: Role, key: str, pieces: Sequence[str], joint: str = ", ") -> None:
        """Add a part with a list; what a first line has no room for stands in a line of its own."""
        fitting = len(pieces)
        while fitting > 1 and not leads(Part(role, key, {"list": joint.join(pieces[:fitting])})):
            fitting -= 1
        self.say(role, key, list=joint.join(pieces[:fitting]))
        if pieces[fitting:]:
            self.say(role, "list_on", list=joint.join(pieces[fitting:]))

    def say_or_keep(self, role: Role, key: str, **values: str) -> None:
        """Add a part where nothing else has to go for it; else keep it for `why`."""
        part = Part(role, key, values)
        if self.has_room_for(part):
            self.parts.append(part)
        else:
            self.reason(key, **values)

    def reason(self, key: str, **values: str) -> None:
        """Keep a line of reasoning for `why`."""
        self.notes.append(Note(key=key, values=values))

    def keep_why(self) -> None:
        """The reasons of the answer before stay the ones that `why` tells."""
        self._keeps_why = True

    def has_room_for(self, part: Part) -> bool:
        """Whether a part fits beside what is said so far."""
        return has_room(self.parts, part)

    def end_with(self, question: Part | None) -> None:
        """Let the answer end with a question, in the place of another, or with none."""
        self.parts = [part for part in self.parts if part.role is not Role.QUESTION]
        if question is not None:
            self.parts.append(question)

    def messages(self, person: Person, question: str, *, at_home: bool) -> list[Say]:
        """The answer in one or two messages; what finds no room in them is kept for `why`.

        Args:
            person: to whom it goes, with how they want messages.
            question: the name of the question that it ends with, "" for none.
            at_home: whether they are home from the water.
        """
        said, left = answer(
            self.parts,
            [Part(Role.ASSUMPTION, note.key, note.values) for note in self.notes],
            question=question,
            length=self._length(person.length, at_home=at_home),
            whole=AT_HOME if self.roomy else WHOLE,
            urgent=self.urgent,
            taps=person.taps and not self.urgent,
        )
        self.notes += [Note(key=part.key, values=dict(part.values)) for part in left]
        return said

    def _length(self, wanted: Length, *, at_home: bool) -> Length:
        """As the person wants messages, but what has to be whole is never short."""
        in_full = self.in_full or at_home
        if self.urgent or self._keeps_why or (in_full and wanted == "short"):
            return "usual"
        return wanted
