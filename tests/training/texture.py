"""Train what the look of a picture is read with: `python -m tests.training.texture`."""

from __future__ import annotations

import io
import math
import zipfile
from pathlib import Path
from typing import Final

import cv2
import numpy as np
from numpy.typing import NDArray

from core.frame.texture_features import features
from core.frame.water_area import water_pixels
from core.frame.working import WorkingCopy
from core.water import BANDS
from tests.scenes.noise import Field
from tests.training.pictures import TRAINING, light_of
from tests.training.streaks import Lens, Pixels, Streaks, rendered, shifted
from tests.training.trees import Growth, grown

#: Samples of each material, and the seed of each: the recipe.
RENDERED: Final = 1000
SHIFTED: Final = 560
SEED: Final = 20_261_125
#: Short side of the frame from which a patch is thought to come [px].
SHORT_SIDE: Final = 1067
#: Least and most share of the shortest and longest streaks.
_ENDS: Final = (0.0004, 0.7)
#: How often the axis is given, and how far from the truth [deg, standard deviation].
_GIVEN: Final = 0.3
_GIVEN_OFF_DEG: Final = 8.0
#: Crops of a picture from which the one with the most detail is taken.
_CROPS: Final = 5

NUMBERS: Final = Path(__file__).parents[2] / "core" / "frame" / "texture_numbers.npz"
TABLE: Final = Path(__file__).with_name("texture_table.npz")


def drawn_length(rng: np.random.Generator, short_side: float = SHORT_SIDE) -> float:
    """A length [px] with all looks alike likely, and within a look all stops."""
    edges = (_ENDS[0], *BANDS, _ENDS[1])
    look = int(rng.integers(len(edges) - 1))
    low, high = math.log(edges[look]), math.log(edges[look + 1])
    return short_side * math.exp(rng.uniform(low, high))


def sample(index: int) -> tuple[NDArray[np.float64], float]:
    """Features of one patch of the recipe, and its length [log2 px]."""
    rng = np.random.default_rng((SEED, index))
    length = drawn_length(rng)
    drawn = rendered_patch if index < RENDERED else shifted_patch
    pixels, axis_deg = drawn(rng, length)
    given = (axis_deg + rng.normal(0, _GIVEN_OFF_DEG)) % 180 if rng.random() < _GIVEN else None
    luminance = WorkingCopy(pixels, 1.0).luminance
    inside = water_pixels(luminance, np.ones(luminance.shape, np.bool_), SHORT_SIDE)
    found, _ = features(luminance, inside, given)
    return found, math.log2(length)


def rendered_patch(rng: np.random.Generator, length_px: float) -> tuple[Pixels, float]:
    """A file's pixels of rendered water, and the axis of its flow."""
    cell = (267, 400) if rng.random() < 0.5 else (400, 267)
    size = (cell[0] * int(rng.integers(1, 3)), cell[1] * int(rng.integers(1, 3)))
    plan = Streaks.drawn(rng, size, length_px)
    light, _ = rendered(plan, rng)
    return Lens.drawn(rng).file_of(light, rng), plan.axis_deg


def shifted_patch(
    rng: np.random.Generator, length_px: float, sources: tuple[str, ...] = TRAINING
) -> tuple[Pixels, float]:
    """A file's pixels of a real picture averaged along an axis, and that axis."""
    light = light_of(sources[int(rng.integers(len(sources)))])
    return shifted_light(rng, _cropped(rng, light), length_px)


def _cropped(rng: np.random.Generator, light: Field) -> Field:
    """Of some crops the one with the most fine detail: an even sky shows no length."""
    return max((_crop(rng, light) for _ in range(_CROPS)), key=_detail)


def _detail(light: Field) -> float:
    grey = light.mean(axis=2)
    fine = grey - cv2.GaussianBlur(grey, (0, 0), 2.0)
    return float(fine.std() / max(float(grey.mean()), 1e-4))


def _crop(rng: np.random.Generator, light: Field) -> Field:
    height, width = (min(int(rng.integers(260, 560)), side) for side in light.shape[:2])
    top = int(rng.integers(light.shape[0] - height + 1))
    left = int(rng.integers(light.shape[1] - width + 1))
    return light[top : top + height, left : left + width]


def shifted_light(rng: np.random.Generator, light: Field, length_px: float) -> tuple[Pixels, float]:
    """The same for light that is given, shape (h, w, 3)."""
    axis = float(rng.uniform(0, 180))
    moved = shifted(light, length_px, axis)
    if rng.random() < 0.5:  # two speeds a quarter apart
        moved = 0.5 * moved + 0.5 * shifted(light, 1.25 * length_px, axis)
    lens = Lens.drawn(rng)
    # The picture had its own lens: only a little blur is added.
    lens = Lens(0.3, lens.level / max(float(np.percentile(moved, 99)), 1e-3), lens.full_well,
                lens.gamma, lens.quality)  # fmt: skip
    return lens.file_of(np.asarray(moved, np.float32), rng), axis


def table() -> tuple[NDArray[np.float16], NDArray[np.float32]]:
    """All samples of the recipe: features (n, m) as they are stored, and lengths (n,)."""
    rows = [sample(index) for index in range(RENDERED + SHIFTED)]
    found = np.stack([row for row, _ in rows]).astype(np.float16)
    return found, np.array([length for _, length in rows], np.float32)


def written(arrays: dict[str, NDArray[np.generic]], path: Path) -> None:
    """Write arrays as an .npz whose bytes depend on the arrays alone."""
    with zipfile.ZipFile(path, "w", zipfile.ZIP_DEFLATED) as archive:
        for name, array in arrays.items():
            data = io.BytesIO()
            np.lib.format.write_array(data, array, allow_pickle=False)
            archive.writestr(zipfile.ZipInfo(f"{name}.npy"), data.getvalue(),
                             zipfile.ZIP_DEFLATED, 9)  # fmt: skip


def main() -> None:
    """Make the table of samples, grow the trees, write both."""
    cv2.setNumThreads(1)
    found, lengths = table()
    written({"features": found, "lengths": lengths}, TABLE)
    written(grown(found.astype(np.float32), lengths, Growth()), NUMBERS)


if __name__ == "__main__":
    main()
