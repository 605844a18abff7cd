"""Numbers that tell what a clipped area is: its shape, its place, and what lies around it."""

from __future__ import annotations

from typing import Final

import numpy as np
from numpy.typing import NDArray

from core.frame.area_features import AREA_FEATURES, Company, area_features
from core.frame.patches import Coverage, Patches

Floats = NDArray[np.float64]

#: Outer ends of the shells around an area, in shares of the frame's short side. Own rule, after
#: the widths at which foam, glow and leaves were seen to differ.
_SHELLS: Final = np.array([0.006, 0.016, 0.04, 0.09], np.float32)
_COUNT: Final = len(_SHELLS)
_SECTORS: Final = 8
#: The shell in which the sectors are compared.
_SECTOR_SHELL: Final = 2
_PALE_LIGHTNESS: Final = 85.0  # foam that is not yet clipped
_DARK_LIGHTNESS: Final = 25.0
_GREY_CHROMA: Final = 12.0
#: Rows at the top border whose colour tells whether there is sky, in shares of the height.
_TOP_ROWS: Final = 0.04
#: Lightness of one code of OpenCV's 8-bit L*.
_L_PER_CODE: Final = 100 / 255

#: Numbers of one area.
FEATURES: Final = 64 + AREA_FEATURES


def body_features(
    coverage: Coverage,
    body: Patches,
    chosen: NDArray[np.intp],
    weights: tuple[Floats, Floats],
    company: Company,
) -> Floats:
    """Numbers of the chosen areas.

    Args:
        coverage: the frame's working copy.
        body: areas on it.
        chosen: labels of the areas that are asked for, shape (n,).
        weights: what is clipped in each area, shape (count,), and by channel, (count, 3).
        company: small patches of the frame.

    Returns:
        Shape (n, FEATURES); 0 where an area has nothing around it.
    """
    clipped, channels = weights
    frame = _of_frame(coverage, clipped, body.count)
    columns = [
        _of_shape(body, chosen, clipped, channels),
        _of_shells(coverage, body, chosen),
        np.broadcast_to(frame, (len(chosen), len(frame))),
        area_features(coverage, body, chosen, company),
    ]
    return np.concatenate(columns, axis=1)


def _of_shape(body: Patches, chosen: NDArray[np.intp], clipped: Floats, channels: Floats) -> Floats:
    """Size, place and form of each area; shape (n, 20)."""
    height, width = body.labels.shape
    left, top, wide, high = body.boxes[chosen].T.astype(np.float64)
    sizes = np.maximum(body.sizes[chosen], 1)
    weight = np.maximum(clipped[chosen], 1)
    top_contact, rims, upright = _contacts(body)
    return np.stack(
        [
            np.log2(weight / (255 * height * width)),
            wide / width,
            high / height,
            np.log2(high / wide),
            body.middles[chosen, 0] / width,
            body.middles[chosen, 1] / height,
            top / height,
            (top + high) / height,
            (top <= 1).astype(np.float64),
            ((left <= 1) | (left + wide >= width - 1)).astype(np.float64),
            (top + high >= height - 1).astype(np.float64),
            top_contact[chosen] / wide,
            sizes / (wide * high),
            weight / (255 * sizes),
            rims[chosen] ** 2 / (4 * np.pi * sizes),
            upright[chosen],
            *(channels[chosen] / weight[:, None]).T,
            weight / max(float(clipped.max()), 1.0),
        ],
        axis=1,
    )


def _contacts(body: Patches) -> tuple[Floats, Floats, Floats]:
    """Contact with the top border, rim [px], and the rim's upright part; shape (count,) each."""
    labels, count = body.labels, body.count
    contact = np.bincount(labels[:2].max(axis=0), minlength=count).astype(np.float64)
    lengths = []
    for first, second in ((labels[:, 1:], labels[:, :-1]), (labels[1:], labels[:-1])):
        edge = first != second
        owners = np.concatenate([first[edge], second[edge]])
        lengths.append(np.bincount(owners, minlength=count).astype(np.float64))
    upright, level = lengths
    rims = upright + level
    return contact, rims, upright / np.maximum(rims, 1)


def _of_shells(coverage: Coverage, body: Patches, chosen: NDArray[np.intp]) -> Floats:
    """What lies around each chosen area, shell by shell; shape (n, 38)."""
    distances, owners = body.surroundings
    ends = _SHELLS * np.float32(min(body.labels.shape))
    places = np.full(body.count, len(chosen), np.intp)
    places[chosen] = np.arange(len(chosen))
    at = np.flatnonzero((distances > 0) & (distances <= ends[-1]))
    areas = places[owners[at]]
    at, areas = at[areas < len(chosen)], areas[areas < len(chosen)]
    shells = np.searchsorted(ends, distances[at])
    groups = areas * _COUNT + shells
    size = len(chosen) * _COUNT
    numbers = np.maximum(np.bincount(groups, minlength=size), 1).reshape(-1, _COUNT)

    def mean(values: NDArray[np.generic]) -> Floats:
        sums = np.bincount(groups, values, size).reshape(-1, _COUNT)
        return np.asarray(sums / numbers, np.float64)

    lab = coverage.half_lab.reshape(-1, 3)
    light = lab[at, 0].astype(np.float32) * np.float32(_L_PER_CODE)
    red_green, yellow_blue = (lab[at, index].astype(np.float32) - 128 for index in (1, 2))
    detail = coverage.half_detail
    across, down = (mean(np.abs(slope.ravel()[at])) for slope in coverage.half_slopes)
    level = mean(light)
    inner = slice(0, 2)
    columns = [
        level,
        np.sqrt(np.maximum(mean(light * light) - level**2, 0)),
        mean(red_green),
        mean(yellow_blue),
        mean(light > _PALE_LIGHTNESS)[:, inner],
        mean(light < _DARK_LIGHTNESS),
        mean(red_green**2 + yellow_blue**2 < _GREY_CHROMA**2)[:, :3],
        mean(detail.ravel()[at])[:, :3],
        ((across - down) / (across + down + 1e-6))[:, 1:3],
        level[:, :3] - level[:, 1:],
        _of_sectors(coverage, body.middles[chosen], at, shells, areas, light),
    ]
    return np.concatenate(columns, axis=1)


def _of_sectors(
    coverage: Coverage,
    middles: Floats,
    at: NDArray[np.intp],
    shells: NDArray[np.intp],
    areas: NDArray[np.intp],
    light: NDArray[np.float32],
) -> Floats:
    """How unlike the directions around each area are, and lightness above and below it.

    Returns:
        Shape (n, 5): spread over the directions that there are, how many, above, below,
        and above less below.
    """
    kept = np.flatnonzero(shells == _SECTOR_SHELL)
    rows, columns = np.divmod(at[kept], coverage.half_lab.shape[1])
    places = middles[areas[kept]] / 2
    turn = np.arctan2(rows - places[:, 1], columns - places[:, 0])
    sector = np.floor((turn / (2 * np.pi) + 0.5) * _SECTORS).astype(np.intp) % _SECTORS
    groups = areas[kept] * _SECTORS + sector
    size = len(middles) * _SECTORS
    numbers = np.bincount(groups, minlength=size).reshape(-1, _SECTORS)
    sums = np.bincount(groups, light[kept], size).reshape(-1, _SECTORS)
    there = numbers > 0
    means = sums / np.maximum(numbers, 1)
    count = np.maximum(there.sum(axis=1), 1)
    mean = means.sum(axis=1) / count
    spread = np.sqrt((np.where(there, means - mean[:, None], 0) ** 2).sum(axis=1) / count)
    half = _SECTORS // 2  # turns from -pi to 0 are above: rows count downwards
    above = sums[:, :half].sum(axis=1) / np.maximum(numbers[:, :half].sum(axis=1), 1)
    below = sums[:, half:].sum(axis=1) / np.maximum(numbers[:, half:].sum(axis=1), 1)
    return np.stack([spread, there.sum(axis=1), above, below, above - below], axis=1)


def _of_frame(coverage: Coverage, clipped: Floats, count: int) -> Floats:
    """What the frame as a whole is like; shape (6,)."""
    lab = coverage.half_lab
    sample = lab[::4, ::4, 0] * np.float32(_L_PER_CODE)
    top = lab[: max(1, round(_TOP_ROWS * lab.shape[0]))].reshape(-1, 3).mean(axis=0)
    return np.array(
        [
            float(np.median(sample)),
            float((sample < _DARK_LIGHTNESS).mean()),
            top[0] * _L_PER_CODE,
            top[2] - 128,
            np.log2(max(clipped.sum(), 1.0) / (255 * coverage.clipped.size)),
            np.log2(1 + count),
        ]
    )
