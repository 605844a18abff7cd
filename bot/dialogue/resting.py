"""Whether a person is home from the water, as far as they said."""

from __future__ import annotations

from datetime import datetime, timedelta
from typing import Final

from bot.dialogue.context import Context

#: So long after "I am home" frames are gone through; then they may be of a new day (own rule).
AT_HOME: Final = timedelta(hours=8)


def is_at_home(context: Context, now: datetime) -> bool:
    """Whether the person is home from the water, as far as they said."""
    home_at = context.conversation.home_at
    return home_at is not None and now - home_at <= AT_HOME
