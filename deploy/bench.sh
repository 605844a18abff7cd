#!/bin/sh
# Makes the environment and measures: frame checks, starts, text answers, memory; all as ratios in one run.
set -eu
# shellcheck source=deploy/environment.sh
. "$(dirname "$0")/environment.sh"
export PYTHONPATH="$root"

"$python" deploy/bench_frame.py
"$python" deploy/bench_start.py
exec "$python" deploy/bench_answers.py
