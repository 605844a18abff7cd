#!/bin/sh
# Makes the environment and tortures the bot: kills, restarts, a faulty line. A seed may be given.
set -eu
# shellcheck source=deploy/environment.sh
. "$(dirname "$0")/environment.sh"
export PYTHONPATH="$root"

exec "$python" -m tests.torture.torture "$@"
