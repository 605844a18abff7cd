#!/bin/sh
# Makes the environment and measures: frame checks, starts, answers, bursts, memory; as ratios.
set -eu
# shellcheck source=deploy/environment.sh
. "$(dirname "$0")/environment.sh"
export PYTHONPATH="$root"

"$python" deploy/bench_handle.py
"$python" deploy/bench_frame.py
"$python" deploy/bench_evening.py
"$python" deploy/bench_start.py
"$python" deploy/bench_answers.py
exec "$python" deploy/bench_burst.py
