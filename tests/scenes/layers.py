"""The light of a scene, laid down from far to near, white water and sky kept apart."""

from __future__ import annotations

import numpy as np

from tests.scenes.noise import Field, Size

Colour = tuple[float, float, float]

#: Linear reflectances over a mid-tone of 0.18 (own choice, by eye).
STONE: Colour = (0.56, 0.545, 0.53)
WET_STONE: Colour = (0.25, 0.245, 0.24)
LICHEN: Colour = (0.40, 0.345, 0.26)
MOSS: Colour = (0.26, 0.40, 0.085)
LEAF: Colour = (0.22, 0.46, 0.08)
POOL: Colour = (0.10, 0.17, 0.16)
HAZE: Colour = (0.86, 0.95, 1.0)
#: White water under a grey sky, a little blue.
WATER: Colour = (0.955, 0.99, 1.0)


class Layers:
    """What has been laid down so far; 1 is the scene's mid-tone.

    Attributes:
        base: shape (H, W, 3), all that is neither white water nor sky.
        white: shape (H, W), the share of white water in what is seen; its level comes later.
        sky: shape (H, W), the share of open sky in what is seen.
    """

    def __init__(self, size: Size) -> None:
        self.size = size
        self.base = np.zeros((*size, 3), np.float32)
        self.white = np.zeros(size, np.float32)
        self.sky = np.zeros(size, np.float32)

    def window(self, rows: slice, columns: slice = slice(None)) -> Layers:
        """A part of the frame; what is laid there is laid here."""
        part = Layers((0, 0))
        part.base = self.base[rows, columns]
        part.white = self.white[rows, columns]
        part.sky = self.sky[rows, columns]
        part.size = (part.white.shape[0], part.white.shape[1])
        return part

    def cover(self, share: Field, light: Field, colour: Colour) -> None:
        """Lay a thing over all: `share` 0 to 1 hides what is behind, `light` is its level."""
        self._hide(share)
        for channel, reflectance in enumerate(colour):
            self.base[..., channel] += share * light * np.float32(reflectance)

    def cover_white(self, share: Field, level: Field) -> None:
        """Lay white water over all; `level` scales it, 1 = the full white of the scene."""
        self._hide(share)
        self.white += share * level

    def cover_sky(self, share: Field) -> None:
        """Open a gap to the sky."""
        self._hide(share)
        self.sky += share

    def tint(self, share: Field, colour: Colour) -> None:
        """Turn what is there towards a colour by `share`, at the same level."""
        level = self.base.mean(axis=2)
        brightness = sum(colour) / 3
        for channel, reflectance in enumerate(colour):
            plane = self.base[..., channel]
            plane += share * (level * np.float32(reflectance / brightness) - plane)

    def _hide(self, share: Field) -> None:
        left = 1 - share
        for channel in range(3):
            self.base[..., channel] *= left
        self.white *= left
        self.sky *= left
