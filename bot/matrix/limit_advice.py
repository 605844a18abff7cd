"""What an operator can do about a homeserver that limits how often the bot may send."""

from __future__ import annotations

import logging
from typing import Final

_log: Final = logging.getLogger(__name__)


class LimitAdvice:
    """Tells the operator once what to raise; the limit of others is not the bot's business."""

    def __init__(self) -> None:
        self._told = False

    def tell(self, user_id: str) -> None:
        """Say it, unless it was said since the start.

        Args:
            user_id: of the bot.
        """
        if self._told:
            return
        self._told = True
        # Both names are Synapse's, read from version 1.163; its default is 0.2 messages a second
        # after a burst of ten.
        _log.warning(
            "The homeserver limits how often %s may send. Nothing is lost and the order holds, but "
            "answers come late. To lift it, raise rc_message (per_second, burst_count) in the "
            "homeserver's configuration, or override it for the bot alone, as an administrator: "
            'POST /_synapse/admin/v1/users/%s/override_ratelimit with {"messages_per_second": 0, '
            '"burst_count": 0}',
            user_id,
            user_id,
        )
