"""Reads the settings and says what each of them is, without telling secrets."""

from __future__ import annotations

import sys

from pydantic import SecretStr

from bot.exits import Exit
from bot.settings import PREFIX, Settings, SettingsError, load_settings


def check_config() -> int:
    """Print every setting, or on the error output what is wrong with them."""
    try:
        settings = load_settings()
    except SettingsError as error:
        for problem in error.problems:
            print(problem, file=sys.stderr)
        return Exit.CONFIG
    for name in Settings.model_fields:
        print(f"{PREFIX}{name.upper()}: {_shown(getattr(settings, name))}")
    if not settings.allowed:
        print(f"{PREFIX}ALLOWED is empty: the bot will answer nobody.", file=sys.stderr)
    return Exit.DONE


def _shown(value: object) -> str:
    if isinstance(value, SecretStr):
        return "set (not shown)"
    if value is None:
        return "not set"
    if isinstance(value, tuple):
        return ", ".join(str(part) for part in value) or "empty"
    return str(value)
