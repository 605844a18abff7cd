"""`linn check-config`."""

from __future__ import annotations

import pytest

from bot.__main__ import main
from bot.exits import Exit

GOOD = {
    "LINN_HOMESERVER": "https://matrix.example.org",
    "LINN_USER": "@linn:example.org",
    "LINN_PASSWORD": "a secret",
}


@pytest.fixture
def _settings(monkeypatch: pytest.MonkeyPatch) -> None:
    for name, value in GOOD.items():
        monkeypatch.setenv(name, value)


@pytest.mark.usefixtures("_settings")
def test_good_settings_are_listed(capsys: pytest.CaptureFixture[str]) -> None:
    """Each setting has its line; secrets are not shown; an empty allow-list is pointed out."""
    assert main(["check-config"]) == Exit.DONE
    said = capsys.readouterr()
    lines = said.out.splitlines()
    assert "LINN_USER: @linn:example.org" in lines
    assert "LINN_PASSWORD: set (not shown)" in lines
    assert "LINN_ACCESS_TOKEN: not set" in lines
    assert "LINN_ALLOWED: empty" in lines
    assert "a secret" not in said.out + said.err
    assert "will answer nobody" in said.err


@pytest.mark.usefixtures("_settings")
def test_allowed_people_end_the_warning(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    """With somebody to answer there is nothing to point out."""
    monkeypatch.setenv("LINN_ALLOWED", "*:example.org, @ada:example.org")
    monkeypatch.setenv("LINN_LEADERS", "@ada:example.org")
    assert main(["check-config"]) == Exit.DONE
    said = capsys.readouterr()
    assert "LINN_ALLOWED: *:example.org, @ada:example.org" in said.out.splitlines()
    assert "LINN_LEADERS: @ada:example.org" in said.out.splitlines()
    assert said.err == ""


@pytest.mark.usefixtures("_settings")
def test_each_problem_has_its_line(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    """Wrong settings end with a code of their own, one sentence for each."""
    monkeypatch.setenv("LINN_USERS", "x")
    assert main(["check-config"]) == Exit.CONFIG
    said = capsys.readouterr()
    assert said.out == ""
    assert "LINN_USERS is no setting" in said.err
