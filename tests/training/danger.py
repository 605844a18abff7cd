"""Train how likely a message tells of danger, and of which: `python -m tests.training.danger`."""

from __future__ import annotations

import json
from collections import Counter
from collections.abc import Iterable
from itertools import chain, product
from pathlib import Path
from typing import Any, Final, NamedTuple

import numpy as np
from sklearn.feature_extraction import DictVectorizer
from sklearn.linear_model import LogisticRegression

from bot.dialogue.danger.likelihood import features_of
from bot.dialogue.danger.meaning import cues_of
from tests.people.dangers import dangers_of, harmless_of
from tests.people.rate import PEOPLE, lines_of

NUMBERS: Final = Path(__file__).parents[2] / "bot" / "dialogue" / "danger" / "weights.json"
_CORPUS: Final = PEOPLE.parent
_OLDER: Final = ("", "fresh_", "last_", "unseen_", "final_")
_LANGUAGES: Final = ("", "de_", "es_")
#: Written for training, by one who knew the wordings, and by strangers.
_MADE: Final = ("imagined_", "voices_", "more_", "other_")
#: Questions about dangers: neither harmless talk nor danger.
_BETWEEN: Final = frozenset({"Q26", "Q27", "M20", "M21"})
#: What is danger, or like it, counts more than plain talk (own rule).
_COUNTS: Final = 2.0
#: The older harmless lines are the nearest to danger of all (own rule).
_OLDER_HARMLESS_COUNTS: Final = 2.5
#: Messages full of facts count a little more than plain talk (own rule).
_TALK_COUNTS: Final = 1.2
#: Inverse strength of the pull of weights towards zero; own rules, from messages left out in five
#: parts while the wordings did not know them.
_LOOSENESS: Final = 1.3
#: A feature counts from so many messages on (own rule: what one person said once tells nothing).
_OFTEN: Final = 2
#: Weights are written with so many decimals.
_DECIMALS: Final = 2


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
            found.append(Message(text, kind, _COUNTS))
        for _, text in harmless_of(language, "even"):
            found.append(Message(text, "", _COUNTS))
    return found + [Message(text, "", _TALK_COUNTS) for text in _talk()]


def _pair(name: str, counts: float, harmless_counts: float) -> Iterable[Message]:
    for row in _rows(_CORPUS / f"{name}dangers.tsv"):
        yield Message(row[-1], row[0], counts)
    for row in _rows(_CORPUS / f"{name}harmless.tsv"):
        yield Message(row[-1], "", harmless_counts)


def _rows(path: Path) -> list[list[str]]:
    return [line.split("\t") for line in path.read_text("utf-8").splitlines()[1:]]


def _talk() -> Iterable[str]:
    """Messages full of facts, and the even halves of people's other messages."""
    for path in sorted(_CORPUS.glob("*.jsonl")):
        yield from (json.loads(line)["text"] for line in path.read_text("utf-8").splitlines())
    for name in ("facts", "de_facts", "es_facts", "questions", "symptoms"):
        for line in lines_of(f"{name}.jsonl", "even"):
            row = json.loads(line)
            if row.get("topic") not in _BETWEEN:
                yield row["text"]


def fitted(found: list[Message]) -> dict[str, Any]:
    """Logistic regression: danger or not."""
    said = [features_of(message.text, cues_of(message.text)) for message in found]
    often = Counter(chain.from_iterable(said))
    features = [
        dict.fromkeys((name for name in sorted(names) if often[name] >= _OFTEN), 1)
        for names in said
    ]
    counts = np.array([message.counts for message in found])
    danger = np.array([bool(message.kind) for message in found])
    vectors = DictVectorizer()
    rows = vectors.fit_transform(features)
    names = list(vectors.get_feature_names_out())
    model = LogisticRegression(C=_LOOSENESS, class_weight="balanced", max_iter=5000)
    model.fit(rows, danger, sample_weight=counts)
    return {
        "bias": round(float(model.intercept_[0]), _DECIMALS),
        "features": _rounded(names, model.coef_[0]),
    }


def _rounded(names: Iterable[str], weights: Iterable[float]) -> dict[str, float]:
    pairs = (
        (str(name), round(float(weight), _DECIMALS))
        for name, weight in zip(names, weights, strict=True)
    )
    return {name: weight for name, weight in pairs if weight}


def main() -> None:
    """Fit and write."""
    text = json.dumps(fitted(messages()), ensure_ascii=False, indent=0, sort_keys=True)
    NUMBERS.write_text(text + "\n", encoding="utf-8")


if __name__ == "__main__":
    main()
