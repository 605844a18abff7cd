# Makes the environment in .venv, once for each requirements.lock; sourced by the other scripts.
# Leaves in $python its interpreter and in $root the checkout.
# shellcheck shell=sh

root=$(cd "$(dirname "$0")/.." && pwd)
cd "$root" || exit 1
lock=$root/deploy/requirements.lock
python=$root/.venv/bin/python
stamp=$root/.venv/fits

say() { echo "$*" >&2; }
give_up() { say "$*"; exit 1; }
have() { command -v "$1" >/dev/null 2>&1; }
runs_311() { "$1" -c 'import sys; sys.exit(sys.version_info < (3, 11))' >/dev/null 2>&1; }
imports() { "$1" -c "import $2" >/dev/null 2>&1; }

# What the environment was made for: the lock, the project's own metadata, and where it lies
# (an environment that was moved has wrong paths inside).
fingerprint() { echo "$root $(cat "$lock" pyproject.toml | cksum)"; }

find_base_python() {
    for base in ${PYTHON:-} python3 python3.14 python3.13 python3.12 python3.11 python; do
        if have "$base" && runs_311 "$base"; then return; fi
    done
    have python3 && give_up "Linn needs Python 3.11 or newer; python3 here is $(python3 -V 2>&1)."
    give_up "Linn needs Python 3.11 or newer; there is no python3 here. Install it and start again."
}

# Debian leaves out the module that puts pip into an environment. Root may add it.
add_debian_venv() {
    if ! have apt-get || [ "$(id -u)" -ne 0 ]; then return 0; fi
    say "Python's venv module is missing; installing the system's package python3-venv ..."
    { DEBIAN_FRONTEND=noninteractive apt-get update -qq &&
        DEBIAN_FRONTEND=noninteractive apt-get install -y -qq --no-install-recommends \
            python3-venv; } >&2 || say "apt-get could not install python3-venv."
}

# Whether what lies there can be filled; an interrupted start leaves an environment without pip.
is_usable() {
    [ -x "$python" ] && runs_311 "$python" && { imports "$python" pip || have uv; }
}

make_environment() {
    find_base_python
    rm -rf "$root/.venv"
    if ! imports "$base" "ensurepip, venv" && ! have uv; then add_debian_venv; fi
    if imports "$base" "ensurepip, venv"; then
        "$base" -m venv "$root/.venv"
    elif have uv; then
        uv venv --quiet --python "$base" "$root/.venv"
    elif imports "$base" "pip, venv"; then
        "$base" -m venv --without-pip "$root/.venv"
    elif imports "$base" virtualenv; then
        "$base" -m virtualenv --quiet "$root/.venv"
    else
        give_up "Python's venv module is missing: install it (on Debian, as root:" \
            "apt-get install python3-venv) and start again."
    fi || give_up "No environment could be made in $root/.venv."
}

# pip inside the environment, or one outside that works on it (pip 22.3 and newer can).
pip_in_environment() {
    if imports "$python" pip; then
        "$python" -m pip "$@"
    else
        find_base_python
        "$base" -m pip --python "$python" "$@"
    fi
}

# A machine whose pip was told of an index of its own (a mirror) keeps using it: uv reads only
# its own settings.
pip_has_an_index() {
    pip_in_environment config list 2>/dev/null | grep -qE "\.(extra-)?index-url="
}

# The lock names everything there is to install, so nothing is resolved (--no-deps). An older pip
# takes an extra that a library asks for (as coverage[toml]) at its newest version, whatever the
# lock says, and refuses all once a newer one is published.
install_with_uv() {
    have uv || return 1
    if pip_has_an_index && [ -z "${UV_INDEX_URL:-}${UV_DEFAULT_INDEX:-}" ]; then return 1; fi
    uv pip install --python "$python" --no-deps --require-hashes -r "$lock" >&2 &&
        uv pip install --python "$python" --quiet --offline --no-deps --no-build-isolation \
            --editable "$root" >&2
}

# Only what is used is compiled, when it first is: that is a small part of all.
install_with_pip() {
    pip_in_environment install --no-compile --no-deps --require-hashes -r "$lock" >&2 &&
        pip_in_environment install --quiet --no-index --no-deps --no-build-isolation \
            --editable "$root" >&2
}

fill_environment() {
    say "Installing $(grep -c '^[a-z].*==' "$lock") packages into .venv (once; a minute or two) ..."
    install_with_uv || install_with_pip ||
        give_up "The packages could not be installed; the lines above say why."
    fingerprint >"$stamp"
    say "The environment is ready."
}

prepare_environment() {
    # Ctrl-C while installing ends the script too, and not only the installer.
    trap 'exit 130' INT
    trap 'exit 143' TERM
    export PIP_DISABLE_PIP_VERSION_CHECK=1 PIP_USER=0
    # Without a home that can be written to, nothing is cached (and nothing lands in /).
    if [ -z "${HOME:-}" ] || [ ! -w "$HOME" ]; then
        export PIP_NO_CACHE_DIR=1 UV_NO_CACHE=1
    fi
    if [ -x "$python" ] && [ "$(cat "$stamp" 2>/dev/null)" = "$(fingerprint)" ]; then return; fi
    is_usable || make_environment
    fill_environment
}

# What is compiled is kept: Linn starts processes all the time, which would each compile anew.
unset PYTHONDONTWRITEBYTECODE

# Two starts at once take turns, where the system can do that.
if have flock && { : >"$root/.venv.turn"; } 2>/dev/null; then
    exec 9>"$root/.venv.turn"
    flock 9
    prepare_environment
    exec 9>&-
else
    prepare_environment
fi
