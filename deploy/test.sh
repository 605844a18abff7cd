#!/bin/sh
# Makes the environment and runs every test with branch coverage; arguments go to pytest.
# FRAMES_DIR may name a folder of real photographs for the tests that want some.
set -eu
# shellcheck source=deploy/environment.sh
. "$(dirname "$0")/environment.sh"

if [ $# -gt 0 ]; then
    exec "$python" -m pytest --cov --cov-report=term:skip-covered "$@"
fi
# What computes takes every core; what talks with a homeserver then has the machine to itself.
failed=0
"$python" -m pytest -m "not server" --numprocesses=auto --dist=loadfile --cov --cov-report= ||
    failed=1
"$python" -m pytest -m server --cov --cov-append --cov-report=term:skip-covered || failed=1
exit $failed
