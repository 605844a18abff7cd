"""What all that is stored of a conversation has in common."""

from __future__ import annotations

from pydantic import BaseModel, ConfigDict


class Stored(BaseModel):
    """Frozen; fields that only another version of the bot knows are left out."""

    model_config = ConfigDict(frozen=True, extra="ignore")
