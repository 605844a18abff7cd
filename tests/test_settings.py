"""Settings: read from environment and secret files, typos refused, the sample kept true."""

from __future__ import annotations

import errno
import os
import subprocess
import sys
from pathlib import Path

import pytest

from bot import settings as settings_module
from bot.settings import Settings, SettingsError, load_settings, render_sample

SAMPLE = Path(__file__).parent.parent / "deploy" / "env.sample"
RENDERED = render_sample()  # before a test changes where secrets usually are
NEEDED = {
    "LINN_HOMESERVER": "https://matrix.mill.example/",
    "LINN_USER": "@linn:mill.example",
    "LINN_PASSWORD": "a word",
}


@pytest.fixture(autouse=True)
def _empty_environment(monkeypatch: pytest.MonkeyPatch, tmp_path: Path) -> None:
    """No setting comes from the machine that runs the tests."""
    for name in [name for name in os.environ if name.upper().startswith("LINN_")]:
        monkeypatch.delenv(name)
    monkeypatch.setattr(settings_module, "USUAL_SECRETS_DIR", tmp_path / "none")


def load(monkeypatch: pytest.MonkeyPatch, **variables: str) -> Settings:
    """The settings of an environment."""
    for name, value in (NEEDED | variables).items():
        monkeypatch.setenv(name, value)
    return load_settings()


def test_defaults_answer_nobody_and_keep_frames_for_a_month(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    """With the least that is needed, the rest is safe."""
    settings = load(monkeypatch)
    assert settings.homeserver == "https://matrix.mill.example"
    assert settings.allowed == ()
    assert (settings.frames_days, settings.workers, settings.frame_bytes) == (30, None, 60_000_000)
    assert settings.database == f"sqlite:///{Path('data').absolute() / 'linn.db'}"


def test_lists_are_written_with_commas(monkeypatch: pytest.MonkeyPatch) -> None:
    """People and servers, spaces and a last comma forgiven."""
    settings = load(monkeypatch, LINN_ALLOWED="@fern:mill.example, *:brook.example:8448,")
    assert settings.allowed == ("@fern:mill.example", "*:brook.example:8448")


@pytest.mark.parametrize(
    ("written", "workers", "processes", "scheduler"),
    [
        ("", None, 3, None),
        ("2", 2, 2, None),
        ("tcp://brook.example:8786", "tcp://brook.example:8786", 1, "tcp://brook.example:8786"),
        ("tls://[2001:db8::7]:8786", "tls://[2001:db8::7]:8786", 1, "tls://[2001:db8::7]:8786"),
    ],
)
def test_workers_are_a_number_or_a_cluster(
    monkeypatch: pytest.MonkeyPatch,
    written: str,
    workers: int | str | None,
    processes: int,
    scheduler: str | None,
) -> None:
    """So many processes, as many as there are processors, or a cluster and one in its stead."""
    monkeypatch.setattr(settings_module, "_processors", lambda: 3)
    settings = load(monkeypatch, LINN_WORKERS=written)
    assert (settings.workers, settings.processes) == (workers, processes)
    assert settings.scheduler == scheduler


def test_no_more_processes_than_processors(monkeypatch: pytest.MonkeyPatch) -> None:
    """Where a container may use fewer than the machine has, and where nobody can tell."""
    monkeypatch.setattr(os, "sched_getaffinity", lambda _: {0, 1})
    assert load(monkeypatch).processes == 2
    monkeypatch.delattr(os, "sched_getaffinity")
    monkeypatch.setattr(os, "cpu_count", lambda: None)
    assert load(monkeypatch).processes == 1


def test_leaders_are_among_the_allowed(monkeypatch: pytest.MonkeyPatch) -> None:
    """By name or by their server; by default nobody is named."""
    allowed = "@fern:mill.example, *:brook.example:8448"
    assert load(monkeypatch, LINN_ALLOWED=allowed).leaders == ()
    named = "@fern:mill.example,@moss:brook.example:8448"
    settings = load(monkeypatch, LINN_ALLOWED=allowed, LINN_LEADERS=named)
    assert settings.leaders == ("@fern:mill.example", "@moss:brook.example:8448")


def test_secrets_come_from_files_and_are_not_shown(
    monkeypatch: pytest.MonkeyPatch, tmp_path: Path
) -> None:
    """A file of the secrets folder fills a setting; printing the settings does not tell it."""
    (tmp_path / "linn_database_url").write_text("postgresql+asyncpg://linn:heron@db/linn\n")
    settings = load(monkeypatch, LINN_SECRETS_DIR=str(tmp_path))
    assert settings.database == "postgresql+asyncpg://linn:heron@db/linn"
    assert "heron" not in repr(settings)
    assert "a word" not in repr(settings)


@pytest.mark.parametrize(
    ("variables", "says"),
    [
        ({"LINN_ALOWED": "x"}, "LINN_ALOWED is no setting of Linn; did you mean LINN_ALLOWED?"),
        ({"LINN_SECRET_DIR": "x"}, "did you mean LINN_SECRETS_DIR?"),
        ({"LINN_HOMESERVER": "matrix"}, "LINN_HOMESERVER: “matrix” is no address"),
        ({"LINN_HOMESERVER": ""}, "LINN_HOMESERVER is missing: Base address"),
        ({"LINN_USER": "linn"}, "LINN_USER: “linn” is no full user id; write it like @name:"),
        ({"LINN_USER": "@linn:mill/x"}, "is no full user id"),
        ({"LINN_ALLOWED": "*"}, "would let in too many"),
        ({"LINN_LEADERS": "*:mill.example"}, "is no full user id"),
        (
            {"LINN_ALLOWED": "@moss:mill.example", "LINN_LEADERS": "@fern:mill.example"},
            "“@fern:mill.example”, who is not among LINN_ALLOWED",
        ),
        ({"LINN_ALLOWED": "*:*"}, "would let in too many"),
        ({"LINN_ALLOWED": "@.*:mill.example, fern"}, "“fern” is no full user id"),
        ({"LINN_PASSWORD": ""}, "LINN_PASSWORD is missing"),
        ({"LINN_ACCESS_TOKEN": "t"}, "LINN_ACCESS_TOKEN needs LINN_DEVICE_ID"),
        ({"LINN_DATABASE_URL": "mysql://x"}, "LINN_DATABASE_URL: this is no address of a"),
        ({"LINN_DATABASE_URL": "postgresql://linn@db/x"}, "like postgresql+asyncpg://"),
        ({"LINN_DATABASE_URL": "postgresql+asyncpg://db:port/x"}, "is no address of a database"),
        ({"LINN_DATABASE_URL": "sqlite://"}, "is no address of a database"),
        ({"LINN_DATABASE_URL": "linn.db"}, "is no address of a database"),
        ({"LINN_FRAMES_DAYS": "0"}, "LINN_FRAMES_DAYS: input should be greater than or equal"),
        ({"LINN_WORKERS": "many"}, "LINN_WORKERS: “many” is neither a number nor a scheduler"),
        ({"LINN_WORKERS": "tcp://brook"}, "“tcp://brook” is neither a number nor a scheduler"),
        ({"LINN_WORKERS": "0"}, "LINN_WORKERS: 0 workers can't be; 1 to 64 can"),
        ({"LINN_LOG_LEVEL": "LOUD"}, "LINN_LOG_LEVEL: input should be 'DEBUG'"),
        ({"LINN_SECRETS_DIR": "nowhere-here"}, "which is no folder"),
    ],
)
def test_what_is_wrong_is_said_in_one_sentence(
    monkeypatch: pytest.MonkeyPatch, variables: dict[str, str], says: str
) -> None:
    """Each mistake is named with its variable and what to write in its place."""
    with pytest.raises(SettingsError) as caught:
        load(monkeypatch, **variables)
    (problem,) = caught.value.problems
    assert says in problem


def test_a_secret_file_that_nobody_knows_is_an_error(
    monkeypatch: pytest.MonkeyPatch, tmp_path: Path
) -> None:
    """A misnamed secret is pointed out; files of other programs are not ours to judge."""
    (tmp_path / "linn_pasword").write_text("x")
    (tmp_path / "other_program").write_text("x")
    with pytest.raises(SettingsError, match=r"LINN_PASWORD is no setting.*LINN_PASSWORD"):
        load(monkeypatch, LINN_SECRETS_DIR=str(tmp_path))


def test_the_usual_secrets_folder_is_used_when_it_exists(
    monkeypatch: pytest.MonkeyPatch, tmp_path: Path
) -> None:
    """Containers need not say where their secrets are."""
    (tmp_path / "linn_device_id").write_text("DEVICE")
    monkeypatch.setattr(settings_module, "USUAL_SECRETS_DIR", tmp_path)
    assert load(monkeypatch).device_id == "DEVICE"


@pytest.mark.parametrize(
    "address", ["mysql://linn:heron@db/linn", "postgresql+asyncpg://linn:heron@db:port/linn"]
)
def test_no_problem_quotes_a_secret(monkeypatch: pytest.MonkeyPatch, address: str) -> None:
    """The message about a wrong address of the database does not show its password."""
    with pytest.raises(SettingsError) as caught:
        load(monkeypatch, LINN_DATABASE_URL=address)
    assert "heron" not in str(caught.value)


@pytest.mark.parametrize("method", ["iterdir", "read_text"])
def test_secrets_that_cannot_be_read_are_named(
    monkeypatch: pytest.MonkeyPatch, tmp_path: Path, method: str
) -> None:
    """A folder or a file that belongs to somebody else is no traceback but a sentence."""
    file = tmp_path / "linn_password"
    file.write_text("heron")

    def refuse(*_: object, **__: object) -> str:
        raise PermissionError(errno.EACCES, "Permission denied", str(file))

    monkeypatch.setattr(Path, method, refuse)
    with pytest.raises(SettingsError) as caught:
        load(monkeypatch, LINN_SECRETS_DIR=str(tmp_path))
    assert caught.value.problems == (f"{file} can't be read: Permission denied.",)


def test_a_secret_that_is_no_text_is_an_error(
    monkeypatch: pytest.MonkeyPatch, tmp_path: Path
) -> None:
    """A key file put there by mistake."""
    (tmp_path / "linn_password").write_bytes(b"\xff\xfe\x00")
    with pytest.raises(SettingsError, match="can't be read as text"):
        load(monkeypatch, LINN_SECRETS_DIR=str(tmp_path))


def test_the_sample_is_what_the_settings_say() -> None:
    """`deploy/env.sample` names every setting with its description and default."""
    assert SAMPLE.read_text(encoding="utf-8") == RENDERED


def test_running_the_module_prints_the_sample() -> None:
    """The command that renews the sample gives the whole of it."""
    made = subprocess.run(
        [sys.executable, "-m", "bot.settings"], capture_output=True, text=True, check=True
    )
    assert made.stdout == RENDERED


def test_every_setting_is_described() -> None:
    """A setting without a sentence would be a blank line in the sample."""
    assert [name for name, field in Settings.model_fields.items() if not field.description] == []
