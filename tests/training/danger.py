"""Train how likely a message tells of danger, and of which: `python -m tests.training.danger`."""

from __future__ import annotations

import json
from collections import Counter
from collections.abc import Iterable, Sequence
from itertools import chain, product
from pathlib import Path
from typing import Final, NamedTuple

import numpy as np
from scipy.sparse import csr_array, diags_array
from scipy.sparse.linalg import norm
from sklearn.feature_extraction.text import TfidfTransformer
from sklearn.linear_model import LogisticRegression

from bot.dialogue.danger.beside import beside_facts
from bot.dialogue.danger.features import heard_in
from bot.dialogue.danger.kinds import DangerKind
from bot.dialogue.danger.likelihood import PLACES, Weights, length_of, places_of
from bot.dialogue.meaning.said import OWN_TABLES, table_of
from bot.dialogue.meaning.tables import examples
from tests.people.dangers import dangers_of, harmless_of
from tests.people.rate import PEOPLE, lines_of
from tests.training.ingredients import fingerprint

NUMBERS: Final = Path(__file__).parents[2] / "bot" / "dialogue" / "danger" / "weights.npz"
_CORPUS: Final = PEOPLE.parent
_LENGTHS: Final = _CORPUS / "lengths"
_OLDER: Final = ("", "fresh_", "last_", "unseen_", "final_")
_LANGUAGES: Final = ("", "de_", "es_")
#: Written for training, by one who knew the wordings, and by strangers.
_MADE: Final = (
    "imagined_",
    "voices_",
    "more_",
    "other_",
    "still_",
    "further_",
    "beyond_",
    "again_",
    "anew_",
    "folk_",
    "terse_",
    "trail_",
    "paths_",
    "hikers_",
    "gloves_",
    "everyday_",
    "daily_",
    "settled_",
    "strolls_",
)
#: Questions about dangers: neither harmless talk nor danger.
_BETWEEN: Final = frozenset({"Q26", "Q27", "M20", "M21"})
#: What is asked, by topic, that is no plain talk either.
TOPICS_BETWEEN: Final = frozenset({"wading", "climb", "carrying", "looking_up", "time_forgotten"})
#: Small talk of who needs help.
_ALARMING: Final = frozenset({"talk.rescue"})
#: Questions near edges, rising water, cold and people: what is typed there may be told in danger,
#: too (own rule: those of which the most lines were suspected, or tell where somebody stands).
_NEAR_TOPICS: Final = frozenset(
    {
        "after_flood",
        "battery_cold",
        "eddy",
        "gardening",
        "keep_back",
        "leave_gear",
        "lip_word",
        "move_nearer",
        "path_open",
        "people_in_frame",
        "permit",
        "rain_now",
        "rising_signs",
        "support",
        "tell_home",
    }
)
#: Replies that tell of the dark, of an edge, a way or an overhang, as those in danger do.
_NEAR_REPLIES: Final = frozenset({"light.dark", "too_near.farther", "top.covered", "top.lip"})
#: Replies to questions of safety that say that nobody is in danger; the others tell of some.
_NOBODY: Final = frozenset({"in_danger.no", "out_there.no", "safe.yes"})
#: Replies that answer nothing may be anything.
_ANYTHING: Final = ".other"
_UNSETTLED: Final = TOPICS_BETWEEN | _ALARMING | _NEAR_TOPICS | _NEAR_REPLIES
#: What is danger, or like it, counts more than plain talk (own rule).
_COUNTS: Final = 2.0
#: The older harmless lines are the nearest to danger of all (own rule).
_OLDER_HARMLESS_COUNTS: Final = 5.0
#: People's messages have no twins (own rule).
_PEOPLE_COUNT: Final = 5.0
#: Messages full of facts are typed on every walk (own rule).
_TALK_COUNTS: Final = 2.5
#: Questions, complaints and replies of the tables: they are many, and more weight makes dangers of
#: the same words unheard (own rule, from files that were left out).
_ASKED_COUNTS: Final = 1.0
#: With the tables danger is rarer among what is trained on, which tells nothing of how often it
#: is typed: no danger is set back by so much [log odds]. Own rule: with it as many dangers
#: of left-out files are heard as without the tables; the way is King & Zeng (2001), "Logistic
#: regression in rare events data", prior correction; from memory.
_RARER: Final = 0.9
#: Inverse strength of the pull of weights towards zero; own rule, from strangers' messages that
#: were left out in five parts.
_LOOSENESS: Final = 10.0
_ROUNDS: Final = 400
#: A fit that ends by its rounds goes on so often (own rule: then a further one moves little).
_AGAIN: Final = 2
#: The fit ends where no slope is steeper (own rule: there another start ends, too).
_NEAR: Final = 1e-5
#: A feature counts from so many messages on (own rule: what one person said once tells nothing).
_OFTEN: Final = 2
#: One message in so many is fingerprinted with all that is found in it.
_LOOKED_AT: Final = 40
#: Scores are written in so many steps to either side.
_STEPS: Final = 127
#: What may be told apart, after no danger.
#: A wish to die is heard by words alone.
_KINDS: Final = tuple(
    kind for kind in DangerKind if kind not in {DangerKind.UNCLEAR, DangerKind.DESPAIR}
)
_NUMBER_OF: Final = {kind.value: number for number, kind in enumerate(_KINDS, start=1)}
_AS_BEFORE: Final = np.array([_RARER, *(0.0 for _ in _KINDS)])


class Message(NamedTuple):
    """One message, the kind of danger in it ("" for none), and how much it counts."""

    text: str
    kind: str
    counts: float


def messages() -> list[Message]:
    """All that may be learned from: the older corpora, the imagined, people's even halves."""
    found = [message for name in _OLDER for message in _pair(name, _COUNTS, _OLDER_HARMLESS_COUNTS)]
    for made, language in product(_MADE, _LANGUAGES):
        found += _pair(f"{made}{language}", _COUNTS, _COUNTS)
    for language in _LANGUAGES:
        for kind, _, text in dangers_of(language, "even"):
            found.append(Message(text, kind, _PEOPLE_COUNT))
        for _, text in harmless_of(language, "even"):
            found.append(Message(text, "", _PEOPLE_COUNT))
    found += [Message(text, "", _TALK_COUNTS) for text in chain(_walked(), _talk())]
    return found + [Message(text, "", _ASKED_COUNTS) for text in chain(_asked(), _measured())]


def _pair(name: str, counts: float, harmless_counts: float) -> Iterable[Message]:
    for row in _rows(_CORPUS / f"{name}dangers.tsv"):
        yield Message(row[-1], row[0], counts)
    for row in _rows(_CORPUS / f"{name}harmless.tsv"):
        yield Message(row[-1], "", harmless_counts)


def _rows(path: Path) -> list[list[str]]:
    return [line.split("\t") for line in path.read_text("utf-8").splitlines()[1:]]


def _walked() -> Iterable[str]:
    """What people say on the walks of the transcripts, but for their dangers."""
    yield from (row[-1] for row in _rows(_CORPUS / "walks_harmless.tsv"))


def _asked() -> Iterable[str]:
    """Wordings of the tables in all languages: what is asked of the trade raises no alarm."""
    tables = product(("en", *OWN_TABLES), ("topics", "small_talk", "sights", "options"))
    for language, table in tables:
        for label, texts in examples(table_of(table, language)).items():
            settled = not label.endswith(_ANYTHING) or table != "options"
            yield from texts if settled and label not in _UNSETTLED else ()
    for language in ("en", *OWN_TABLES):
        replies = examples(table_of("safety", language))
        yield from chain.from_iterable(replies[label] for label in sorted(_NOBODY))


def _measured() -> Iterable[str]:
    """Messages that tell lengths, but for those that tell of where nobody should stand, too."""
    unsettled = frozenset((_LENGTHS / "unsettled.txt").read_text("utf-8").splitlines())
    for path in sorted(_LENGTHS.glob("*.tsv")):
        texts = (line.split("\t")[1] for line in path.read_text("utf-8").splitlines())
        yield from (text for text in texts if text not in unsettled)


def _talk() -> Iterable[str]:
    """Messages full of facts, and the even halves of people's other messages."""
    for path in sorted(_CORPUS.glob("*.jsonl")):
        for row in map(json.loads, path.read_text("utf-8").splitlines()):
            if row.get("topic") not in TOPICS_BETWEEN:
                yield row["text"]
                # what stands beside told facts is read for itself, too
                yield from filter(None, [beside_facts(row["text"])])
    for name in ("facts", "de_facts", "es_facts", "questions", "symptoms"):
        for line in lines_of(f"{name}.jsonl", "even"):
            row = json.loads(line)
            if row.get("topic") not in _BETWEEN:
                yield row["text"]


def ingredients(found: Sequence[Message]) -> str:
    """The fingerprint of what the weights hang on: messages, what is found in some, constants."""
    features = [sorted(heard_in(message.text).features) for message in found[::_LOOKED_AT]]
    constants = (_RARER, _LOOSENESS, _ROUNDS, _AGAIN, _NEAR, _OFTEN, _STEPS)
    return fingerprint(found, features, constants)


def fitted(found: Sequence[Message], start: Weights | None = None) -> Weights:
    """Logistic regression on rare features first: no danger, or which.

    Args:
        found: what to learn from.
        start: weights from which the fit sets out; the same end is reached sooner.
    """
    table = _table([heard_in(message.text).features for message in found])
    seen = np.flatnonzero(np.diff(table.tocsc().indptr))
    weighed = TfidfTransformer(norm=None)
    rows = weighed.fit_transform(table[:, seen])
    rows = diags_array(1 / length_of(norm(rows, axis=1))) @ rows
    model = LogisticRegression(C=_LOOSENESS, tol=_NEAR, max_iter=_ROUNDS, warm_start=True)
    kinds = np.array([_NUMBER_OF.get(message.kind, 0) for message in found])
    if start is not None:
        model.classes_ = np.unique(kinds)
        model.coef_ = start.scores[seen].T * start.step
        model.intercept_ = start.bias + _AS_BEFORE
    model.fit(rows, kinds, sample_weight=[message.counts for message in found])
    step = float(np.abs(model.coef_).max()) / _STEPS
    scores = np.zeros((PLACES, len(model.classes_)), dtype=np.int8)
    scores[seen] = np.rint(model.coef_.T / step)
    rarity = np.zeros(PLACES, dtype=np.float32)
    rarity[seen] = weighed.idf_
    return Weights(_KINDS, model.intercept_ - _AS_BEFORE, scores, step, rarity)


def _table(said: Sequence[frozenset[str]]) -> csr_array:
    """Which message has which feature, of those that were said often enough; shape (n, PLACES)."""
    often = Counter(chain.from_iterable(said))
    places = [places_of(name for name in names if often[name] >= _OFTEN) for names in said]
    ends = np.cumsum([0, *map(len, places)])
    where = np.concatenate(places)
    return csr_array((np.ones(where.size), where, ends), shape=(len(said), PLACES))


def main() -> None:
    """Fit, go on from where that ended until little moves, and write."""
    said = messages()
    found = fitted(said)
    for _ in range(_AGAIN):
        found = fitted(said, start=found)
    np.savez_compressed(
        NUMBERS,
        kinds=np.array([kind.value for kind in found.kinds]),
        bias=found.bias,
        scores=found.scores,
        step=found.step,
        rarity=found.rarity,
        learned_from=np.array(ingredients(said)),
    )


if __name__ == "__main__":
    main()
