"""Train which length a number is: `python -m tests.training.lengths`."""

from __future__ import annotations

import json
import re
from collections import Counter
from collections.abc import Iterable, Mapping, Sequence
from itertools import chain
from pathlib import Path
from typing import Any, Final, NamedTuple

import numpy as np
from scipy.sparse import csr_array
from sklearn.linear_model import LogisticRegression

from bot.dialogue.reading.draft import Draft
from bot.dialogue.reading.foreign import glossed
from bot.dialogue.reading.length_candidates import ARM_M, Candidate, candidates_in
from bot.dialogue.reading.length_features import PLACES, features_of, number_of, tokens_of
from bot.dialogue.reading.length_sense import FIRST, KINDS, SLOTS, Weights
from bot.dialogue.reading.paces import PACE_M
from bot.dialogue.reading.unit_words import METRES
from tests.people.rate import PEOPLE
from tests.training.ingredients import fingerprint

NUMBERS: Final = Path(__file__).parents[2] / "bot" / "dialogue" / "reading" / "lengths.npz"
_CORPUS: Final = PEOPLE.parent
LENGTHS: Final = _CORPUS / "lengths"
_KNOWN: Final = LENGTHS / "known.jsonl"
OTHER: Final = KINDS.index("other")
_SIGNS: Final = {"h": 0, "d": 1, "n": 2, "s": 3, "o": OTHER}
_LABEL: Final = re.compile(r"([hdnso])=([\d.]+)([a-z]+)")
_METRES: Final = METRES | {"step": PACE_M, "arm": ARM_M}
#: A label is of a candidate when both are as long, to a part in so many (own rule).
_ALIKE: Final = 0.03
#: A word is known from so many messages on; rarer ones stand for each other (own rule).
_OFTEN: Final = 3
#: Messages of other files count less: what is no fact there may be a length all the same; those
#: whose reading the tests hold fast count more (own rules).
_FACTS_COUNT: Final = 0.5
_KNOWN_COUNT: Final = 5.0
#: Known messages of so many letters are joined, each with those so many places further on.
_SHORT: Final = 40
_STEPS_APART: Final = (17, 101, 211)
#: So many lists of terse facts, as people send who know what is asked (own rule).
_LISTS: Final = 1500
_TERSE: Final[Mapping[str, Sequence[str]]] = {
    "h": ("{} m tall", "fall is {} m high", "height {} m", "a {} m waterfall"),
    "d": ("{} m away", "I'm {} m from the fall", "standing {} m back", "{} m off"),
    "n": ("rock at {} m", "closest stone {} m away", "boulder {} m in front of me"),
    "camera": ("camera 90 cm above the water", "camera height 1.2 m"),
    "way": ("{} km walk", "4 km walk", "3 km walk out, 150 m climb"),
    "speed": ("leaf takes 3 s for 3 m", "water 1 m/s", "leaf 3 m in 2 s"),
    "f": ("f/11", "f11", "aperture 11", "at f/8"),
    "time": ("1/4", "1/4 s", "a quarter of a second", "shutter 1/4"),
    "iso": ("iso 100", "ISO200", "100 iso"),
    "lens": ("24mm", "at 24 mm", "16-35 and 24-105", "at 35"),
    "format": ("m43", "micro four thirds", "full frame", "24 MP", "phone"),
    "light": ("under the trees", "overcast", "1 stop under", "sunset 18:40"),
    "form": ("portrait", "vertical", "tripod", "polariser on"),
}
_SIZES: Final = {"h": (2, 60), "d": (2, 80), "n": (0.4, 6)}
_BETWEEN: Final = (", ", "; ", "\n", ". ", " and ", " ")
_LOOSENESS: Final = 1.0
_ROUNDS: Final = 400
_STEPS: Final = 127
#: One message in so many is fingerprinted with its features.
_LOOKED_AT: Final = 25


class Row(NamedTuple):
    """One message, its candidates, what each is (a number of `KINDS`), and how much it counts."""

    text: str
    candidates: Sequence[Candidate]
    kinds: Sequence[int]
    counts: float


class Told(NamedTuple):
    """A message and the lengths in it: sign, number, unit.

    Args:
        text: as typed.
        language: of it, by its code.
        labels: in the order of the text, or in none.
        counts: how much the message counts.
        ordered: whether the labels are in the order of the text.
    """

    text: str
    language: str
    labels: Sequence[tuple[str, float, str]]
    counts: float = 1.0
    ordered: bool = True


def messages() -> list[Told]:
    """All that is learned from: labelled lengths, facts, known ones joined, terse lists."""
    return [*labelled(), *_of_facts(), *_joined(), *_listed()]


def _listed() -> Iterable[Told]:
    """Terse facts in any order and number: what stands beside one says nothing of it."""
    draw = np.random.default_rng(0)
    for _ in range(_LISTS):
        signs = draw.permutation(sorted(_TERSE))[: draw.integers(1, len(_TERSE))]
        said, labels = [], []
        for sign in signs.tolist():
            number = round(float(draw.uniform(*_SIZES.get(sign, (1, 9)))), int(draw.integers(2)))
            said.append(str(draw.choice(_TERSE[sign])).format(f"{number:g}"))
            labels += [(sign, number, "m")] if sign in _SIZES else []
        yield Told(str(draw.choice(_BETWEEN)).join(said), "en", labels)


def labelled() -> list[Told]:
    """Messages with each length labelled, of all languages."""
    found = []
    for path in sorted(LENGTHS.glob("*.tsv")):
        for line in path.read_text("utf-8").splitlines():
            said, text = line.split("\t")
            labels = [(sign, float(n), unit) for sign, n, unit in _LABEL.findall(said)]
            found.append(Told(text, path.stem[:2], labels))
    return found


def _of_facts() -> Iterable[Told]:
    """Messages of the files on which rules may be written, their lengths by what they fill."""
    files = [*_CORPUS.glob("*facts.jsonl"), *_CORPUS.glob("later_*.jsonl")]
    for path in sorted([*files, *(_CORPUS / "walkers").glob("*.jsonl"), _KNOWN]):
        language = next((code for code in ("de", "es") if f"_{code}_" in path.name), "en")
        counts = _KNOWN_COUNT if path == _KNOWN else _FACTS_COUNT
        for line in path.read_text("utf-8").splitlines():
            row = json.loads(line)
            yield Told(row["text"], language, _labels(row["facts"]), counts, ordered=False)


def _joined() -> Iterable[Told]:
    """Known messages with another one before or behind: what stands beside changes nothing."""
    known = [json.loads(line) for line in _KNOWN.read_text("utf-8").splitlines()]
    short = [row for row in known if len(row["text"]) <= _SHORT]
    for step in _STEPS_APART:
        for one, other in zip(short, short[step:] + short[:step], strict=True):
            if not one["facts"].keys() & other["facts"].keys():
                labels = _labels(one["facts"] | other["facts"])
                text = f"{one['text']}, {other['text']}"
                yield Told(text, "en", labels, _FACTS_COUNT, ordered=False)


def _labels(facts: Mapping[str, Any]) -> list[tuple[str, float, str]]:
    """The lengths among some facts as labels."""
    return [("hdns"[kind], facts[slot], "m") for slot, kind in SLOTS.items() if slot in facts]


def rows(found: Iterable[Told]) -> list[Row]:
    """The messages that hold candidates, and what each is."""
    made = (_row(one) for one in found)
    return [row for row in made if row.candidates]


def _row(one: Told) -> Row:
    draft = Draft(glossed(one.text, one.language), frozenset(), None)
    candidates = candidates_in(draft.text, draft.quantities)
    kinds, start = [OTHER] * len(candidates), 0
    for sign, number, unit in one.labels:
        for place in range(start, len(candidates)):
            if kinds[place] == OTHER and _is_told(candidates[place], number, unit, one):
                kinds[place] = _SIGNS[sign]
                start = place + 1 if one.ordered else 0
                break
    return Row(draft.text, candidates, kinds, one.counts)


def _is_told(candidate: Candidate, number: float, unit: str, one: Told) -> bool:
    """Whether a candidate is as long as a label says; a bare one of a fact may be in feet."""
    feet = not one.ordered and not candidate.unit
    return _is_same(candidate, number, unit) or (
        feet and _is_same(candidate, number / METRES["ft"], unit)
    )


def _is_same(candidate: Candidate, number: float, unit: str) -> bool:
    """Whether a candidate is as long as a label says, or the same number."""
    said = {number, number * _METRES.get(unit, 1.0)}
    return any(
        abs(length - other) <= _ALIKE * max(other, METRES["cm"])
        for length in (candidate.value, candidate.metres)
        for other in said
    )


def known_words(found: Sequence[Row]) -> frozenset[int]:
    """The numbers of the words that stand in several messages."""
    often = Counter(word for row in found for word in set(tokens_of(row.text)))
    return frozenset(number_of(word) for word, times in often.items() if times >= _OFTEN)


def ingredients(found: Sequence[Told]) -> str:
    """The fingerprint of what the weights hang on: messages, some features, constants."""
    some = rows(found[::_LOOKED_AT])
    known = known_words(some)
    features = [
        [sorted(one) for one in features_of(row.text, row.candidates, known)] for row in some
    ]
    return fingerprint(found, features, (_OFTEN, _LOOSENESS, _ROUNDS, _STEPS))


def fitted(found: Sequence[Row]) -> Weights:
    """The regression; each number is learned behind what the one before it truly is."""
    known = known_words(found)
    numbers: list[list[int]] = []
    for row in found:
        before = FIRST
        for features, kind in zip(
            features_of(row.text, row.candidates, known), row.kinds, strict=True
        ):
            numbers.append([number_of(name) for name in {*features, f"before {before}"}])
            before = KINDS[kind]
    ends = np.cumsum([0, *map(len, numbers)])
    places = np.fromiter(chain.from_iterable(numbers), np.intp, ends[-1])
    table = csr_array((np.ones(places.size), places, ends), shape=(len(numbers), PLACES))
    table.sum_duplicates()
    model = LogisticRegression(C=_LOOSENESS, max_iter=_ROUNDS)
    counts = [row.counts for row in found for _ in row.kinds]
    model.fit(table, [kind for row in found for kind in row.kinds], sample_weight=counts)
    step = float(np.abs(model.coef_).max()) / _STEPS
    scores = np.rint(model.coef_.T / step).astype(np.int8)
    return Weights(model.intercept_.astype(np.float32), scores, step, known)


def main() -> None:
    """Fit and write."""
    found = messages()
    weights = fitted(rows(found))
    np.savez_compressed(
        NUMBERS,
        bias=weights.bias,
        scores=weights.scores,
        step=np.float64(weights.step),
        known=np.array(sorted(weights.known), dtype=np.uint32),
        learned_from=np.array(ingredients(found)),
    )


if __name__ == "__main__":
    main()
