"""Train which topic, sight or reply a message means: `python -m tests.training.meanings [NAME]`."""

from __future__ import annotations

import json
import sys
from collections.abc import Callable, Iterable, Mapping, Sequence
from itertools import chain
from pathlib import Path
from typing import Final

import numpy as np
from numpy.typing import NDArray
from scipy.linalg import cholesky, solve_triangular
from scipy.sparse import csr_array, diags_array

from bot.dialogue.meaning import options, sights, topics
from bot.dialogue.meaning.asking import is_asking
from bot.dialogue.meaning.likeness import OF_WORDS, TOLD, Axes, Likeness, Stepped, likeness
from bot.dialogue.meaning.pieces import PLACES, places_of
from bot.dialogue.meaning.said import in_all
from bot.dialogue.sense import seen_from, senses_of
from tests.people.rate import PEOPLE, lines_of

_FOLDER: Final = Path(__file__).parents[2] / "bot" / "dialogue" / "meaning"
_CORPUS: Final = PEOPLE.parent
#: Facts that a complaint of a frame is read as.
_COMPLAINED: Final = frozenset({"symptoms", "blink"})


def topics_told() -> Mapping[str, Sequence[str]]:
    """Wordings of each topic and kind of small talk, in every language; and what tells facts."""
    return {**in_all(("topics", "small_talk")), TOLD: told(frozenset())}


def sights_told() -> Mapping[str, Sequence[str]]:
    """Wordings of the sights of each cause, in every language, and what tells of no frame."""
    talk = [text for texts in in_all(("small_talk",)).values() for text in texts]
    return {**in_all(("sights",)), sights.TALK: talk, TOLD: told(_COMPLAINED)}


def told(without: frozenset[str]) -> list[str]:
    """Messages that tell facts and ask nothing, of the files that rules may be written on.

    Args:
        without: facts that none of them tells.
    """
    rows = [json.loads(line) for line in _told_lines()]
    texts = [row["text"] for row in rows if row.get("facts") and not without & row["facts"].keys()]
    return [text for text in dict.fromkeys(texts) if not is_asking(text)]


def _told_lines() -> Iterable[str]:
    files = [*_CORPUS.glob("*facts.jsonl"), *_CORPUS.glob("later_*.jsonl")]
    for path in sorted([*files, *(_CORPUS / "walkers").glob("*.jsonl")]):
        yield from path.read_text("utf-8").splitlines()
    for name in ("facts", "de_facts", "es_facts"):
        yield from lines_of(f"{name}.jsonl", "even")


_EDGES: Final = frozenset({"edges", "sky", "border_clutter", "sky_gap"})
_WHITE: Final = frozenset({"just_white", "histogram", "one_channel", "water_clipped"})
_SEEN: Final = _WHITE | {"too_long", "time_too_long", "time_too_short", "underexposed", "shake"}
_LIGHT: Final = frozenset({"noon", "shade_when", "mixed_light", "no_wait"})
#: Topics and sights that the replies to a question tell of, too; all others answer no question.
_ABOUT: Final[Mapping[str, frozenset[str]]] = {
    "top": _EDGES,
    "sides": _EDGES,
    "anchor": _EDGES | {"foreground"},
    "border": _EDGES | {"gardening"},
    "sky_gap": _EDGES | {"tilted_up", "join_frames"},
    "area": _WHITE | {"sky", "sky_gap"},
    "blink": _WHITE,
    "seen": _SEEN | {"focused_wrong"},
    "phone_again": _SEEN | {"phone"},
    "leaves": frozenset({"leaves", "wind_in_leaves"}),
    "glass": frozenset({"spray", "fogged", "wet_glass", "fogged_glass"}),
    "too_near": frozenset({"too_wide", "lens", "move_nearer"}),
    "light": _LIGHT,
    "light_still": _LIGHT,
    "format": frozenset({"phone"}),
}
#: Of each topic, sight and kind of talk one line, of what tells facts so many, is no reply to a
#: question (own rule: with twice as many a tenth fewer replies are heard).
_NO_REPLIES: Final = 25


#: Where a frame has been taken it may have any fault: of each sight so many lines are no reply.
_OF_A_FRAME: Final = frozenset({"blink", "leaves", "next", "sky_gap", "glass"})
_OF_EACH_SIGHT: Final = 6
#: Options that say what they are of, so that at another question they are no reply.
_PLAIN: Final = (
    *(
        "top.sky",
        "top.lip",
        "sides.twig",
        "anchor.clear",
        "anchor.cut",
        "leaves.yes",
        "glass.drops",
    ),
    *("light.sun", "light.cloud", "light.trees", "format.full_frame", "format.phone"),
    *("blink.dots", "blink.patches", "next.other_lens", "too_near.farther"),
)
#: Questions that hear the same things, by one of them.
_ALIKE: Final[Mapping[str, str]] = {
    **dict.fromkeys(("top", "sides", "anchor", "border", "sky_gap"), "edges"),
    **dict.fromkeys(("blink", "seen", "phone_again", "area"), "water"),
    **dict.fromkeys(("light", "light_still"), "light"),
    **dict.fromkeys(("next", "too_near", "format"), "lens"),
}
#: One in so many of their lines (own rule).
_ONE_IN: Final = 12


def options_told() -> Mapping[str, Sequence[str]]:
    """Replies in every language to each question, and what answers something else."""
    found = {label: list(texts) for label, texts in in_all(("options",)).items()}
    others = _no_replies()
    for label, texts in found.items():
        if label.endswith(f".{options.OTHER}"):
            about = _ABOUT.get(options.question_of(label), frozenset())
            texts.extend(text for other, text in others if other not in about)
            texts.extend(_of_other_questions(options.question_of(label)))
            texts.extend(_of_frames(options.question_of(label), about))
    return found


def _no_replies() -> list[tuple[str, str]]:
    """What answers no question by itself, each with its label: topics, sights, facts."""
    others = [(label, texts[len(texts) // 2]) for label, texts in topics_told().items()]
    others += [(label, texts[len(texts) // 2]) for label, texts in in_all(("sights",)).items()]
    facts = told(frozenset())
    return others + [(TOLD, text) for text in facts[:: len(facts) // _NO_REPLIES]]


def safety_told() -> Mapping[str, Sequence[str]]:
    """Replies in every language to whether anybody is in danger, out there, safe; and others."""
    found = {label: list(texts) for label, texts in in_all(("safety",)).items()}
    others = [text for label, text in _no_replies() if not label.startswith(topics.TALK)]
    for label, texts in found.items():
        if label.endswith(f".{options.OTHER}"):
            texts.extend(others)
    return found


def _of_frames(question: str, about: frozenset[str]) -> Iterable[str]:
    """What is wrong with a frame, where something else of it is asked."""
    for label, texts in in_all(("sights",)).items() if question in _OF_A_FRAME else ():
        if label not in about:
            yield from texts[:: len(texts) // _OF_EACH_SIGHT]


def _of_other_questions(question: str) -> Iterable[str]:
    """What answers another question, and so not this one."""
    replies = in_all(("options",))
    for label in _PLAIN:
        other = options.question_of(label)
        if _ALIKE.get(other, other) != _ALIKE.get(question, question):
            yield from replies[label][::_ONE_IN]


#: What is learned from, by the name of the file with what was learned.
TABLES: Final[Mapping[str, Callable[[], Mapping[str, Sequence[str]]]]] = {
    "topics": topics_told,
    "sights": sights_told,
    "options": options_told,
    "safety": safety_told,
}
#: Where labels of different groups never stand beside each other, each group is fitted alone.
_GROUPS: Final = {"options": options.question_of, "safety": options.question_of}
#: How much a fit distrusts its examples (own rule, on writers left out in turn).
RIDGE: Final = 0.1
#: So many examples are compared at once with all (own rule: little room, no time lost).
_BLOCK: Final = 1000
#: Directions of sense that count (own rule, as above: of all 512 one message in two hundred more
#: was right, at four times the time).
_DEPTH: Final = 128


def _no_group(_label: str) -> str:
    return ""


class Rows:
    """Examples as they are compared.

    Args:
        examples: wordings by label.
        group_of: the group of a label; examples of different groups are not compared.
        senses: of the examples as they were kept; None looks at them anew.
    """

    def __init__(
        self,
        examples: Mapping[str, Sequence[str]],
        group_of: Callable[[str], str] = _no_group,
        senses: NDArray[np.float32] | None = None,
    ) -> None:
        self.labels: Final = tuple(examples)
        said = [(label, text) for label, texts in examples.items() for text in texts]
        texts = [text for _, text in said]
        groups: dict[str, int] = {}
        self.groups: Final = np.array(
            [groups.setdefault(group_of(own), len(groups)) for own, _ in said]
        )
        if senses is None:
            found = senses_of(texts)
            self.axes = _axes(found)
            senses = Stepped.of(self.axes.seen(found)).values()
        self.senses: Final = senses
        self.rarity: Final = _rarity(texts)
        self.words: Final = _weighed(texts, self.rarity)
        self.truth: Final = np.array(
            [[label == own for label in self.labels] for own, _ in said], np.float32
        )

    def alike(self, chosen: slice | NDArray[np.intp] = slice(None)) -> NDArray[np.float32]:
        """How like some examples are to all; shape (chosen, examples)."""
        in_words = (self.words[chosen] @ self.words.T).toarray()
        alike: NDArray[np.float32] = likeness(self.senses, self.senses[chosen])
        alike += np.float32(OF_WORDS) * in_words
        alike *= self.groups[chosen, None] == self.groups
        return alike


def rows_of(name: str, senses: NDArray[np.float32] | None = None) -> Rows:
    """The examples of a table; their senses as they were kept, or looked at anew."""
    return Rows(TABLES[name](), _GROUPS.get(name, _no_group), senses)


def fitted(rows: Rows) -> Likeness:
    """The fit of all examples to their labels."""
    alike = _alike_in_blocks(rows)
    alike[np.diag_indices(len(alike))] += RIDGE
    weights = _solved(alike, rows.truth).astype(np.float32)
    words = np.float32(OF_WORDS) * (rows.words.T @ weights)
    return Likeness(
        rows.labels, rows.axes, rows.senses, weights, rows.rarity, Stepped.of(np.asarray(words))
    )


def _alike_in_blocks(rows: Rows) -> NDArray[np.float32]:
    """How like all examples are to all, a block at a time: the shares of words need much room."""
    size = len(rows.truth)
    alike = np.empty((size, size), np.float32)
    for start in range(0, size, _BLOCK):
        alike[start : start + _BLOCK] = rows.alike(slice(start, start + _BLOCK))
    return alike


def _solved(alike: NDArray[np.float32], truth: NDArray[np.float32]) -> NDArray[np.float32]:
    """The solution of `alike` x = `truth`, by Cholesky factors of its two halves.

    The threads of the linear algebra library fail on a factor of more than some 35 000 rows.
    """
    half = len(alike) // 2
    upper = cholesky(alike[:half, :half], lower=True)
    across = solve_triangular(upper, alike[:half, half:], lower=True)
    lower = cholesky(alike[half:, half:] - across.T @ across, lower=True)
    first = solve_triangular(upper, truth[:half], lower=True)
    second = solve_triangular(lower, truth[half:] - across.T @ first, lower=True)
    low = solve_triangular(lower, second, lower=True, trans="T")
    high = solve_triangular(upper, first - across @ low, lower=True, trans="T")
    return np.vstack([high, low])


def _axes(senses: NDArray[np.float32]) -> Axes:
    middle = senses.mean(axis=0)
    apart = seen_from(middle, senses).astype(float)
    _, along = np.linalg.eigh(apart.T @ apart)
    return Axes(middle, along[:, : -_DEPTH - 1 : -1].astype(np.float32))


def _rarity(texts: Sequence[str]) -> NDArray[np.float32]:
    counts = np.bincount(np.concatenate([places_of(text) for text in texts]), minlength=PLACES)
    return np.log(1 + len(texts) / np.maximum(counts, 1)).astype(np.float32)


def _weighed(texts: Sequence[str], rarity: NDArray[np.float32]) -> csr_array:
    """The features of each text, each row of length 1; shape (texts, `PLACES`)."""
    places = [places_of(text) for text in texts]
    ends = np.cumsum([0, *map(len, places)])
    columns = np.fromiter(chain.from_iterable(places), np.intp, ends[-1])
    rows = csr_array((rarity[columns], columns, ends), shape=(len(texts), PLACES))
    lengths = np.sqrt(rows.multiply(rows).sum(axis=1))
    return diags_array(1 / np.maximum(lengths, np.finfo(np.float32).eps)).astype(np.float32) @ rows


def write(name: str, found: Likeness) -> None:
    """Write what was learned, in steps."""
    kept = Stepped.of(found.examples)
    np.savez_compressed(
        _FOLDER / f"{name}.npz",
        labels=np.array(found.labels),
        middle=found.axes.middle,
        along=found.axes.along,
        examples=kept.steps,
        examples_step=kept.step,
        weights=found.weights.astype(np.float16),
        rarity=found.rarity,
        words=found.words.steps,
        words_step=found.words.step,
    )


def main() -> None:
    """Fit and write the named tables, or all."""
    for name in sys.argv[1:] or TABLES:
        write(name, fitted(rows_of(name)))


if __name__ == "__main__":
    main()
