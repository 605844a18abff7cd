"""What the operator grants one person, and what the person has used of it; frozen and storable."""

from __future__ import annotations

from pydantic import AwareDatetime, BaseModel, ConfigDict

from bot.dialogue.stored import Stored


class Terms(BaseModel):
    """What one person may use, as it stands at this event; laid into the context, never stored.

    None means without a limit. The runtime fills it in for each event from the settings and from
    what is stored, so that the dialogue decides with nothing but what it was given: only the
    dialogue knows which messages are danger and which words are always read.
    """

    model_config = ConfigDict(frozen=True)

    messages_a_minute: int | None = None
    frames_a_day: int | None = None
    #: Most that a person's pictures may fill, and what they fill now [bytes].
    most_bytes: int | None = None
    kept_bytes: int = 0
    #: When enough of the person's pictures will have gone by themselves.
    room_again_at: AwareDatetime | None = None
    #: How long pictures, and backups of all that is stored, are kept [days].
    frames_days: int = 30
    backup_days: int = 30


class Spent(Stored):
    """What a person has used of one limit since its period began."""

    since: AwareDatetime
    count: int = 0
    #: Whether the person was told in this period that the limit is reached.
    told: bool = False
