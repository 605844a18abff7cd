#!/bin/sh
# Makes the environment and runs every test with branch coverage; arguments go to pytest.
# FRAMES_DIR may name a folder of real photographs for the tests that want some.
set -eu
# shellcheck source=deploy/environment.sh
. "$(dirname "$0")/environment.sh"

exec "$python" -m pytest --cov --cov-report=term:skip-covered "$@"
