#!/bin/sh
# Makes the environment and runs every test with branch coverage; arguments go to pytest.
# FRAMES_DIR may name a folder of real photographs for the tests that want some.
set -eu
# shellcheck source=deploy/environment.sh
. "$(dirname "$0")/environment.sh"

if [ $# -gt 0 ]; then
    exec "$python" -m pytest --cov --cov-report=term:skip-covered "$@"
fi

# What talks with a homeserver waits most of the time, so it runs beside what computes, which
# takes all that is left of every core. Each has coverage data of its own.
parts=$(mktemp -d)
talking=
stop() {
    if [ -n "$talking" ]; then
        kill -INT "$talking" 2>/dev/null || true
        wait "$talking" || true
    fi
    rm -rf "$parts"
}
trap stop EXIT
trap 'exit 130' INT
trap 'exit 143' TERM

# A shell lets what runs behind ignore Ctrl-C; these tests have servers to end.
COVERAGE_FILE=$parts/talking "$python" -c '
import signal, sys
import pytest
signal.signal(signal.SIGINT, signal.default_int_handler)
sys.exit(pytest.main(sys.argv[1:]))
' -m server --cov --cov-report= tests/server tests/torture tests/trial >"$parts/said" 2>&1 &
talking=$!
failed=0
COVERAGE_FILE=$parts/computing "$python" -m pytest -m "not server" \
    --numprocesses=auto --dist=loadfile --no-loadscope-reorder --cov --cov-report= || failed=1
wait "$talking" || failed=1
talking=
cat "$parts/said"
"$python" -m coverage combine --quiet "$parts/talking" "$parts/computing" || failed=1
"$python" -m coverage report --skip-covered || failed=1
exit $failed
