#!/bin/sh
# Remakes requirements.lock, the packages that running, trying, testing and building need.
# With hashes, for every system and every Python from 3.11 up, and without any index address.
# Needs `uv`. Arguments go to it (for instance --upgrade, or --upgrade-package pillow).
set -eu
cd "$(dirname "$0")/.."
uv=$(command -v uv || echo .venv/bin/uv)

"$uv" pip compile pyproject.toml --extra trial --group dev \
    --universal --python-version 3.11 --generate-hashes \
    --no-header --no-annotate --quiet --output-file deploy/requirements.lock "$@" >/dev/null
echo "deploy/requirements.lock: $(grep -c '^[a-z].*==' deploy/requirements.lock) packages"
