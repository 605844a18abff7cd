"""What the operator grants one person, and what the person has used of it; frozen and storable."""

from __future__ import annotations

from pydantic import AwareDatetime, BaseModel, ConfigDict

from bot.dialogue.stored import Stored


class Companion(BaseModel):
    """Somebody else in a group room, as far as they told there.

    Attributes:
        name: how the room calls them.
        step: the step of their walk, "" for none.
        waits_since: when the question was put that they have not answered, and how often.
        times: see `waits_since`.
        frames: how many they have shared.
        kept: whether they have kept one.
        emergency: whether they told of one that is not said to be over.
    """

    model_config = ConfigDict(frozen=True)

    name: str
    step: str = ""
    waits_since: AwareDatetime | None = None
    times: int = 0
    frames: int = 0
    kept: bool = False
    emergency: bool = False


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
    #: The others of the group room, where who leads it asks how far they are.
    company: tuple[Companion, ...] = ()


class Spent(Stored):
    """What a person has used of one limit since its period began."""

    since: AwareDatetime
    count: int = 0
    #: Whether the person was told in this period that the limit is reached.
    told: bool = False
