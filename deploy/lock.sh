#!/bin/sh
# Remakes requirements.lock (to run, try, test and build Linn) and runtime.lock (to run it).
# With hashes, for every system and every Python from 3.11 up, and without any index address.
# Needs `uv`. Arguments go to it (for instance --upgrade, or --upgrade-package pillow).
set -eu
cd "$(dirname "$0")/.."
uv=$(command -v uv || echo .venv/bin/uv)

compile() {
    name=$1
    shift
    "$uv" pip compile pyproject.toml --universal --python-version 3.11 --generate-hashes \
        --no-header --no-annotate --quiet --output-file "deploy/$name" "$@" >/dev/null
    echo "deploy/$name: $(grep -c '^[a-z].*==' "deploy/$name") packages"
}

compile requirements.lock --extra trial --group dev "$@"
# The same versions, and only what a server needs.
compile runtime.lock --group build --constraint deploy/requirements.lock
